/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/unbalance.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

START_TEST(the_order_of_the_phases_does_not_matter)
{
  const double v[3] = {461.3, 455.9, 448.2};
  double first = NAN;
  double factor_first = NAN;
  for (int i = 0; i < 3; i++)
    for (int j = 0; j < 3; j++) {
      if (j == i) continue;
      double u;
      double mean;
      double f;
      ck_assert_int_eq(freeair_unbalance_voltage(v[i], v[j], v[3 - i - j], &u, &mean), FREEAIR_OK);
      ck_assert_int_eq(freeair_unbalance_factor(v[i], v[j], v[3 - i - j], &f), FREEAIR_OK);
      if (isnan(first)) {
        first = u;
        factor_first = f;
      }
      ck_assert_double_eq(u, first);
      ck_assert_double_eq(f, factor_first);
    }
}
END_TEST

START_TEST(scale_does_not_matter)
{
  double small;
  double large;
  double mean;
  ck_assert_int_eq(freeair_unbalance_voltage(4.613, 4.559, 4.482, &small, &mean), FREEAIR_OK);
  ck_assert_int_eq(freeair_unbalance_current(4613.0, 4559.0, 4482.0, &large, &mean), FREEAIR_OK);
  ck_assert_double_eq_tol(small, large, 1e-14);
}
END_TEST

START_TEST(the_factor_lies_close_to_the_deviation_when_both_are_small)
{
  for (double d = 0.5; d <= 20.0; d += 0.5) {
    double u;
    double mean;
    double f;
    ck_assert_int_eq(freeair_unbalance_voltage(460.0 + d, 460.0, 460.0 - 0.3 * d, &u, &mean), FREEAIR_OK);
    ck_assert_int_eq(freeair_unbalance_factor(460.0 + d, 460.0, 460.0 - 0.3 * d, &f), FREEAIR_OK);
    ck_assert_double_gt(f / u, 0.95);
    ck_assert_double_lt(f / u, 1.16); /* 2 / sqrt(3) at most */
  }
}
END_TEST

START_TEST(a_flat_triangle_is_all_negative_sequence)
{
  double f;
  ck_assert_int_eq(freeair_unbalance_factor(400.0, 200.0, 200.0, &f), FREEAIR_OK);
  ck_assert_double_eq_tol(f, 1.0, 1e-14);
  ck_assert_int_eq(freeair_unbalance_factor(400.0, 200.0, 199.999999, &f), FREEAIR_ERR_NO_SOLUTION);
  ck_assert(isnan(f));
}
END_TEST

START_TEST(derating_falls_without_a_jump_below_five_percent)
{
  double last = 1.0;
  for (int i = 0; i <= 500; i++) {
    double d;
    ck_assert_int_eq(freeair_unbalance_derating(i / 10000.0, &d), FREEAIR_OK);
    ck_assert_double_le(d, last + 1e-15);
    ck_assert_double_lt(last - d, 0.0008);
    last = d;
  }
  double d;
  ck_assert_int_eq(freeair_unbalance_derating(nextafter(0.05, 1.0), &d), FREEAIR_WARN_LIMIT);
  ck_assert_double_eq(d, 0.0);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("unbalance");
  tcase_add_test(tc, the_order_of_the_phases_does_not_matter);
  tcase_add_test(tc, scale_does_not_matter);
  tcase_add_test(tc, the_factor_lies_close_to_the_deviation_when_both_are_small);
  tcase_add_test(tc, a_flat_triangle_is_all_negative_sequence);
  tcase_add_test(tc, derating_falls_without_a_jump_below_five_percent);
  return run_case("unbalance", tc);
}
