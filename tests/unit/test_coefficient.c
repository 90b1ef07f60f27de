/* SPDX-License-Identifier: MIT */
#include <freeair/coefficient.h>
#include <freeair/conductance.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double relative(double a, double b)
{
  return a == b ? 0.0 : fabs(a - b) / fmax(fabs(a), fabs(b));
}

/* n values from low to high, evenly spaced on a logarithmic scale */
static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

/* Kv, Cv and conductance lead back to one another. */
START_TEST(coefficients_return_to_the_start)
{
  double c;
  double b;
  double kv;
  double cv;
  double x;
  ck_assert_int_eq(freeair_coefficient_kv_from_conductance(3e-8, 0.3, &kv, &x), FREEAIR_OK);
  ck_assert_int_eq(freeair_coefficient_conductance_from_kv(kv, x, &c, &b), FREEAIR_OK);
  ck_assert_double_le(relative(c, 3e-8), 1e-15);
  ck_assert_double_le(relative(b, 0.3), 1e-15);
  ck_assert_int_eq(freeair_coefficient_cv_from_kv(kv, &cv), FREEAIR_OK);
  ck_assert_int_eq(freeair_coefficient_kv_from_cv(cv, &x), FREEAIR_OK);
  ck_assert_double_le(relative(x, kv), 1e-15);
}
END_TEST

/* C and b of a Kv give the flow of the control valve equation choked and at a small drop. */
START_TEST(kv_matches_the_valve_equation_at_both_ends)
{
  const double kv = 2.2;
  const double x_t = 0.68;
  const double p1 = 8e5;
  double mass;
  double anr;
  double c;
  double b;
  ck_assert_int_eq(freeair_coefficient_conductance_from_kv(kv, x_t, &c, &b), FREEAIR_OK);
  double area = kv / 36000.0;
  double density = p1 / (287.05287 * 293.15);
  ck_assert_int_eq(freeair_conductance_flow(c, b, 0.5, p1, 293.15, 1e5, &mass, &anr), FREEAIR_OK);
  ck_assert_double_le(relative(mass, area * 2.0 / 3.0 * sqrt(x_t * p1 * density)), 1e-13);
  const double x = 1e-6;
  double valve = area * (1.0 - x / (3.0 * x_t)) * sqrt(x * p1 * density);
  ck_assert_int_eq(freeair_conductance_flow(c, b, 0.5, p1, 293.15, p1 * (1.0 - x), &mass, &anr), FREEAIR_OK);
  ck_assert_double_le(relative(mass, valve), 1e-5);
  /* in between the two curves stay within 2 % of one another */
  for (int i = 1; i < 68; i++) {
    double drop = i / 100.0;
    valve = area * (1.0 - drop / (3.0 * x_t)) * sqrt(drop * p1 * density);
    ck_assert_int_eq(freeair_conductance_flow(c, b, 0.5, p1, 293.15, p1 * (1.0 - drop), &mass, &anr), FREEAIR_OK);
    ck_assert_double_le(relative(mass, valve), 0.02);
  }
}
END_TEST

/* Cv from the flow of a Cv; near the outlet at 0.53 of the inlet the formula has its maximum. */
START_TEST(fluid_power_formula_returns_to_the_start)
{
  for (int i = 0; i < 30; i++) {
    double p2 = fmax(7e5 - spread(i, 30, 1e-3, 7e5), 0.0); /* rounding must not take it below */
    double q;
    double cv;
    ck_assert_int_eq(freeair_coefficient_air_flow_from_cv(1.7, 7e5, 293.15, p2, &q), FREEAIR_OK);
    ck_assert_int_eq(freeair_coefficient_cv_from_air_flow(q, 7e5, 293.15, p2, &cv), FREEAIR_OK);
    ck_assert_double_le(relative(cv, 1.7), 1e-14);
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("coefficient");
  tcase_add_test(tc, coefficients_return_to_the_start);
  tcase_add_test(tc, kv_matches_the_valve_equation_at_both_ends);
  tcase_add_test(tc, fluid_power_formula_returns_to_the_start);
  return run_case("coefficient", tc);
}
