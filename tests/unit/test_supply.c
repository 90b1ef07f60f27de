/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/supply.h>
#include <freeair/verdict.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

START_TEST(the_exact_drop_tends_to_the_approximate_one)
{
  double approximate;
  double load;
  double drop;
  ck_assert_int_eq(freeair_supply_voltage_drop(0.01, 0.1, 0.02, 0.8, 3, &approximate), FREEAIR_OK);
  ck_assert_int_eq(freeair_supply_voltage_at_load(400.0, 0.01, 0.1, 0.02, 0.8, 3, &load, &drop), FREEAIR_OK);
  ck_assert_double_eq_tol(drop / approximate, 1.0, 1e-6);
  ck_assert_double_ge(drop, approximate);
  ck_assert_double_eq_tol(load + drop, 400.0, 1e-12);
}
END_TEST

START_TEST(drop_grows_with_current_and_impedance)
{
  double last = -1.0;
  for (double a = 0.0; a <= 200.0; a += 5.0) {
    double load;
    double drop;
    ck_assert_int_eq(freeair_supply_voltage_at_load(400.0, a, 0.05 + 0.0005 * a, 0.02, 0.85, 3, &load, &drop),
                     FREEAIR_OK);
    ck_assert_double_gt(drop, last - (a == 0.0 ? 2.0 : 0.0));
    ck_assert_double_eq_tol(load, 400.0 - drop, 1e-10);
    last = drop;
  }
}
END_TEST

START_TEST(a_resistive_load_on_a_resistive_run_divides_plainly)
{
  double load;
  double drop;
  ck_assert_int_eq(freeair_supply_voltage_at_load(240.0, 10.0, 0.5, 0.0, 1.0, 1, &load, &drop), FREEAIR_OK);
  ck_assert_double_eq_tol(load, 230.0, 1e-12);
  ck_assert_double_eq_tol(drop, 10.0, 1e-13);
}
END_TEST

START_TEST(the_locked_motor_draws_what_its_voltage_gives)
{
  for (int32_t phases = 1; phases <= 3; phases += 2)
    for (double pf = 0.0; pf <= 1.0; pf += 0.125) {
      double volts;
      double amperes;
      double load;
      double drop;
      ck_assert_int_eq(freeair_supply_starting_voltage(240.0, 230.0, 130.0, pf, 0.08, 0.03, phases, &volts, &amperes),
                       FREEAIR_OK);
      ck_assert_double_eq_tol(amperes / 130.0, volts / 230.0, 1e-13);
      /* the same current at the same power factor through the same run */
      ck_assert_int_eq(freeair_supply_voltage_at_load(240.0, amperes, 0.08, 0.03, pf, phases, &load, &drop),
                       FREEAIR_OK);
      ck_assert_double_eq_tol(load, volts, 1e-10);
    }
}
END_TEST

START_TEST(the_verdict_is_firm_far_from_the_limits_only)
{
  int32_t verdict;
  double probability;
  int seen[3] = {0, 0, 0};
  for (double v = 190.0; v <= 270.0; v += 0.25) {
    ck_assert_int_eq(freeair_supply_voltage_verdict(v, 1.5, 230.0, 0.10, 0.95, &verdict, &probability), FREEAIR_OK);
    double margin = fmin(v - 207.0, 253.0 - v) / 1.5;
    seen[verdict]++;
    if (margin > 1.65) ck_assert_int_eq(verdict, FREEAIR_VERDICT_MEETS);
    if (margin < -1.65) ck_assert_int_eq(verdict, FREEAIR_VERDICT_FAILS);
    if (fabs(margin) < 1.64) ck_assert_int_eq(verdict, FREEAIR_VERDICT_CANNOT_TELL);
  }
  ck_assert_int_gt(seen[FREEAIR_VERDICT_CANNOT_TELL], 10);
}
END_TEST

START_TEST(wrong_input_leaves_a_neutral_verdict)
{
  int32_t verdict = 77;
  double probability = 1.0;
  ck_assert_int_eq(freeair_supply_voltage_verdict(NAN, 1.5, 230.0, 0.10, 0.95, &verdict, &probability),
                   FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_CANNOT_TELL);
  ck_assert(isnan(probability));
  probability = 1.0;
  ck_assert_int_eq(freeair_supply_voltage_verdict(230.0, 1.5, 230.0, 0.10, 0.95, NULL, &probability),
                   FREEAIR_ERR_NULL);
  ck_assert(isnan(probability));
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("supply");
  tcase_add_test(tc, the_exact_drop_tends_to_the_approximate_one);
  tcase_add_test(tc, drop_grows_with_current_and_impedance);
  tcase_add_test(tc, a_resistive_load_on_a_resistive_run_divides_plainly);
  tcase_add_test(tc, the_locked_motor_draws_what_its_voltage_gives);
  tcase_add_test(tc, the_verdict_is_firm_far_from_the_limits_only);
  tcase_add_test(tc, wrong_input_leaves_a_neutral_verdict);
  return run_case("supply", tc);
}
