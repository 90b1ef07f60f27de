/* SPDX-License-Identifier: MIT */
#include <freeair/fitting.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* Every fitting has at least one value, and every value is one that a fitting can have. */
START_TEST(tables_are_complete)
{
  for (int32_t kind = FREEAIR_FITTING_ELBOW_90; kind <= FREEAIR_FITTING_EXIT; kind++) {
    double threaded, flanged;
    int32_t a = freeair_fitting_loss_coefficient(kind, FREEAIR_FITTING_THREADED, &threaded);
    int32_t b = freeair_fitting_loss_coefficient(kind, FREEAIR_FITTING_FLANGED, &flanged);
    ck_assert(a == FREEAIR_OK || b == FREEAIR_OK);
    if (a == FREEAIR_OK) ck_assert(threaded > 0.0 && threaded <= 10.0);
    if (a == FREEAIR_OK && b == FREEAIR_OK) ck_assert(flanged <= threaded);
  }
  double unused;
  ck_assert_int_eq(freeair_fitting_loss_coefficient(0, FREEAIR_FITTING_FLANGED, &unused), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(freeair_fitting_loss_coefficient(17, FREEAIR_FITTING_FLANGED, &unused), FREEAIR_ERR_DOMAIN);
}
END_TEST

/* The two tables tell of the same fittings: L/d times the factor of a rough 1 in pipe is near K where threaded. */
START_TEST(tables_agree_in_kind)
{
  const double factor = 0.023;
  for (int32_t kind = FREEAIR_FITTING_ELBOW_90; kind <= FREEAIR_FITTING_SWING_CHECK; kind++) {
    double ratio, k;
    if (freeair_fitting_length_ratio(kind, &ratio) != FREEAIR_OK) continue;
    ck_assert_int_eq(freeair_fitting_loss_coefficient(kind, FREEAIR_FITTING_THREADED, &k), FREEAIR_OK);
    ck_assert(ratio * factor < 3.0 * k && ratio * factor > 0.3 * k);
  }
}
END_TEST

START_TEST(length_and_coefficient_are_inverse)
{
  for (double k = 0.05; k < 100.0; k *= 1.7) {
    double length, back;
    ck_assert_int_eq(freeair_fitting_equivalent_length(k, 0.021, 0.0266, &length), FREEAIR_OK);
    ck_assert_int_eq(freeair_fitting_coefficient_from_length(length, 0.021, 0.0266, &back), FREEAIR_OK);
    ck_assert_double_le(fabs(back / k - 1.0), 1e-15);
  }
}
END_TEST

START_TEST(widening_and_narrowing)
{
  double last_out = -1.0;
  double last_in = -1.0;
  for (double d = 0.02; d < 1.0; d *= 1.2) {
    double out, in;
    ck_assert_int_eq(freeair_fitting_expansion(0.02, d, &out), FREEAIR_OK);
    ck_assert_int_eq(freeair_fitting_contraction(d, 0.02, &in), FREEAIR_OK);
    ck_assert(out > last_out && in > last_in && out < 1.0 && in < 0.5);
    ck_assert_double_le(fabs(4.0 * in * in - out), 1e-15); /* K out = (2 K in)^2 */
    last_out = out;
    last_in = in;
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, tables_are_complete);
  tcase_add_test(all, tables_agree_in_kind);
  tcase_add_test(all, length_and_coefficient_are_inverse);
  tcase_add_test(all, widening_and_narrowing);
  return run_case("fitting", all);
}
