/* SPDX-License-Identifier: MIT */
#include <freeair/capacitor.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

START_TEST(current_and_capacitance_are_inverses)
{
  for (double c = 1e-6; c < 1e-3; c *= 1.9) {
    double a;
    double back;
    double u;
    ck_assert_int_eq(freeair_capacitor_current(c, 370.0, 60.0, &a), FREEAIR_OK);
    ck_assert_int_eq(freeair_capacitor_from_current(a, 0.01 * a, 370.0, 3.7, 60.0, &back, &u), FREEAIR_OK);
    ck_assert_double_eq_tol(back / c, 1.0, 1e-14);
    ck_assert_double_eq_tol(u / c, 0.01 * sqrt(2.0), 1e-14);
  }
}
END_TEST

START_TEST(discharge_time_residual_and_bleeder_agree)
{
  for (double end = 1.0; end < 600.0; end *= 1.31) {
    double t;
    double left;
    double r;
    double w;
    ck_assert_int_eq(freeair_capacitor_discharge_time(40e-6, 22000.0, 622.0, end, &t), FREEAIR_OK);
    ck_assert_int_eq(freeair_capacitor_residual_voltage(40e-6, 22000.0, 622.0, t, &left), FREEAIR_OK);
    ck_assert_double_eq_tol(left / end, 1.0, 1e-13);
    ck_assert_int_eq(freeair_capacitor_bleeder(40e-6, 622.0, end, t, &r, &w), FREEAIR_OK);
    ck_assert_double_eq_tol(r / 22000.0, 1.0, 1e-13);
    ck_assert_double_eq_tol(w, 622.0 * 622.0 / 44000.0, 1e-11);
  }
}
END_TEST

START_TEST(the_voltage_never_rises_and_never_underflows_loudly)
{
  double last = 622.0;
  for (double t = 1e-9; t < 1e9; t *= 3.0) {
    double left;
    ck_assert_int_eq(freeair_capacitor_residual_voltage(40e-6, 22000.0, 622.0, t, &left), FREEAIR_OK);
    ck_assert_double_le(left, last);
    ck_assert_double_ge(left, 0.0);
    last = left;
  }
  ck_assert_double_eq(last, 0.0);
}
END_TEST

START_TEST(series_is_less_than_either_and_parallel_more)
{
  for (double c = 1e-9; c < 1.0; c *= 7.0) {
    double series;
    double parallel;
    ck_assert_int_eq(freeair_capacitor_series(c, 35e-6, &series), FREEAIR_OK);
    ck_assert_int_eq(freeair_capacitor_parallel(c, 35e-6, &parallel), FREEAIR_OK);
    ck_assert_double_lt(series, fmin(c, 35e-6));
    ck_assert_double_gt(parallel, fmax(c, 35e-6));
    ck_assert_double_eq_tol(series * parallel / (c * 35e-6), 1.0, 1e-14);
  }
}
END_TEST

START_TEST(energy_adds_up_along_the_discharge)
{
  double whole;
  double rest;
  ck_assert_int_eq(freeair_capacitor_energy(45e-6, 523.0, &whole), FREEAIR_OK);
  ck_assert_int_eq(freeair_capacitor_energy(45e-6, 523.0 / sqrt(2.0), &rest), FREEAIR_OK);
  ck_assert_double_eq_tol(rest / whole, 0.5, 1e-15);
}
END_TEST

START_TEST(limits_hold_the_rated_value_and_widen_with_the_class)
{
  double last = 0.0;
  for (int32_t t = FREEAIR_CAPACITOR_RUN_5; t <= FREEAIR_CAPACITOR_START_23; t++) {
    double lower;
    double upper;
    ck_assert_int_eq(freeair_capacitor_limits(40e-6, t, &lower, &upper), FREEAIR_OK);
    ck_assert_double_le(lower, 40e-6);
    ck_assert_double_gt(upper, 40e-6);
    if (t >= FREEAIR_CAPACITOR_START_20) {
      ck_assert_double_eq(lower, 40e-6);
    } else {
      ck_assert_double_eq_tol(40e-6 - lower, upper - 40e-6, 1e-19);
      ck_assert_double_gt(upper - lower, last);
      last = upper - lower;
    }
  }
}
END_TEST

START_TEST(the_verdict_names_a_weak_capacitor)
{
  double lower;
  double upper;
  double u;
  ck_assert_int_eq(freeair_capacitor_limits(40e-6, FREEAIR_CAPACITOR_RUN_6, &lower, &upper), FREEAIR_OK);
  int seen[3] = {0, 0, 0};
  double last = 1.0;
  for (double c = 30e-6; c < 50e-6; c += 0.1e-6) {
    int32_t verdict;
    double in;
    double low;
    ck_assert_int_eq(freeair_capacitor_uncertainty_from_meter(c, 0.02, 5.0, 0.1e-6, &u), FREEAIR_OK);
    ck_assert_int_eq(freeair_capacitor_verdict(c, u, lower, upper, 0.95, &verdict, &in, &low), FREEAIR_OK);
    seen[verdict]++;
    ck_assert_double_le(in + low, 1.0 + 1e-15);
    ck_assert_double_le(low, last);
    last = low;
    if (verdict == FREEAIR_VERDICT_FAILS) ck_assert(c < lower ? low > 0.94 : low < 1e-3);
  }
  for (int i = 0; i < 3; i++) ck_assert_int_gt(seen[i], 5);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("capacitor");
  tcase_add_test(tc, current_and_capacitance_are_inverses);
  tcase_add_test(tc, discharge_time_residual_and_bleeder_agree);
  tcase_add_test(tc, the_voltage_never_rises_and_never_underflows_loudly);
  tcase_add_test(tc, series_is_less_than_either_and_parallel_more);
  tcase_add_test(tc, energy_adds_up_along_the_discharge);
  tcase_add_test(tc, limits_hold_the_rated_value_and_widen_with_the_class);
  tcase_add_test(tc, the_verdict_names_a_weak_capacitor);
  return run_case("capacitor", tc);
}
