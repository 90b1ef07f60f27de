/* SPDX-License-Identifier: MIT */
#include <freeair/flow.h>
#include <freeair/nozzle.h>
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

/* The coefficient of the sharp edge falls with the pressure ratio and stays between its ends. */
START_TEST(a_sharp_edge_contracts_less_the_more_it_expands)
{
  double last = 1.0;
  for (int i = 0; i <= 100; i++) {
    double c;
    ck_assert_int_eq(freeair_nozzle_sharp_edged_coefficient(i / 100.0, &c), FREEAIR_OK);
    ck_assert_double_lt(c, last + 0.003); /* the fit has a shallow wave below 0.4 */
    ck_assert_double_ge(c, 0.6);
    ck_assert_double_le(c, 0.845);
    last = c;
  }
}
END_TEST

/* Lowest, usual and highest are in order for every shape. */
START_TEST(openings_lie_within_their_spread)
{
  for (int32_t opening = FREEAIR_NOZZLE_SHARP_EDGED; opening <= FREEAIR_NOZZLE_CONE; opening++) {
    double lowest;
    double usual;
    double highest;
    ck_assert_int_eq(freeair_nozzle_discharge_coefficient(opening, &lowest, &usual, &highest), FREEAIR_OK);
    ck_assert(0.0 < lowest && lowest <= usual && usual <= highest && highest <= 1.0);
  }
}
END_TEST

/* The trade table is 0.2 to 0.4 % below isentropic choked flow of dry air of the same density. */
START_TEST(trade_formula_stands_below_the_isentropic_one)
{
  const double area = 0.25 * 3.14159265358979323846 * 0.004 * 0.004;
  for (int i = 0; i < 20; i++) {
    double p1 = spread(i, 20, 2.1e5, 2e6);
    double trade;
    double mass;
    ck_assert_int_eq(freeair_nozzle_trade_flow(0.004, 1.0, p1, 294.26, 1e5, &trade), FREEAIR_OK);
    ck_assert_int_eq(freeair_flow_mass_flow(area, p1, 294.26, 1e5, 1.4, 287.05, &mass), FREEAIR_OK);
    double isentropic = mass / (0.07494 * 0.45359237 / (0.3048 * 0.3048 * 0.3048));
    ck_assert_double_lt(trade / isentropic, 0.998);
    ck_assert_double_gt(trade / isentropic, 0.996);
  }
}
END_TEST

/* Flow, Reynolds number and coefficient of the meter agree with one another. */
START_TEST(meter_closes_its_loop)
{
  for (int i = 0; i < 30; i++) {
    double p0 = spread(i, 30, 1e5, 5e6);
    for (int32_t meter = FREEAIR_NOZZLE_TOROIDAL_ACCURATE; meter <= FREEAIR_NOZZLE_CYLINDRICAL; meter++) {
      double mass;
      double reynolds;
      double coefficient;
      double alone;
      int32_t status = freeair_nozzle_meter_mass_flow(meter, 0.006, p0, 293.15, 0.685, 287.05, 1.84e-5, &mass,
                                                      &reynolds, &coefficient);
      ck_assert_int_ge(status, FREEAIR_OK);
      ck_assert_int_eq(freeair_nozzle_meter_coefficient(meter, reynolds, &alone), status);
      ck_assert_double_le(relative(alone, coefficient), 1e-14);
      ck_assert_double_le(relative(reynolds, 4.0 * mass / (3.14159265358979323846 * 0.006 * 1.84e-5)), 1e-14);
      ck_assert_double_gt(coefficient, 0.95);
      ck_assert_double_lt(coefficient, 1.0);
    }
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("nozzle");
  tcase_add_test(tc, a_sharp_edge_contracts_less_the_more_it_expands);
  tcase_add_test(tc, openings_lie_within_their_spread);
  tcase_add_test(tc, trade_formula_stands_below_the_isentropic_one);
  tcase_add_test(tc, meter_closes_its_loop);
  return run_case("nozzle", tc);
}
