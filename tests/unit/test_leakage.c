/* SPDX-License-Identifier: MIT */
#include <freeair/blowdown.h>
#include <freeair/leakage.h>
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

/* The hole that is computed from a leak leaks as much, choked or not. */
START_TEST(hole_and_flow_return_to_the_start)
{
  for (int i = 0; i < 60; i++) {
    double p = 1e5 + spread(i, 60, 1e-3, 2e6);
    double q;
    double mass;
    double d;
    ck_assert_int_eq(freeair_leakage_flow_from_hole(0.0021, 0.65, p, 295.0, 1e5, 1e5, 293.15, &q, &mass), FREEAIR_OK);
    ck_assert_int_eq(freeair_leakage_hole_from_flow(q, 0.65, p, 295.0, 1e5, 1e5, 293.15, &d), FREEAIR_OK);
    ck_assert_double_le(relative(d, 0.0021), 1e-14);
    ck_assert_double_le(relative(q * 1e5 / (287.05287 * 293.15), mass), 1e-15);
  }
}
END_TEST

/* While choked at both pressures a leak is in proportion to the absolute pressure. */
START_TEST(choked_leaks_follow_the_absolute_pressure)
{
  double q;
  ck_assert_int_eq(freeair_leakage_flow_at_pressure(0.006, 8e5, 6e5, 1e5, &q), FREEAIR_OK);
  ck_assert_double_le(relative(q, 0.0045), 1e-15);
  ck_assert_int_eq(freeair_leakage_flow_at_pressure(0.006, 8e5, 1e5, 1e5, &q), FREEAIR_OK);
  ck_assert_double_eq(q, 0.0);
  double there;
  ck_assert_int_eq(freeair_leakage_flow_at_pressure(0.006, 8e5, 1.3e5, 1e5, &there), FREEAIR_OK);
  ck_assert_int_eq(freeair_leakage_flow_at_pressure(there, 1.3e5, 8e5, 1e5, &q), FREEAIR_OK);
  ck_assert_double_le(relative(q, 0.006), 1e-15);
}
END_TEST

/* A vessel that blows down slowly through a hole tells the leak of the hole at its pressure. */
START_TEST(decay_agrees_with_the_leak_that_made_it)
{
  const double area = 0.65 * 0.25 * 3.14159265358979323846 * 1e-6;
  freeair_blowdown_vessel v = FREEAIR_BLOWDOWN_VESSEL_INIT;
  v.v_m3 = 0.5;
  v.area_m2 = area;
  v.p_vessel_pa = 9e5;
  v.p_line_pa = 1e5;
  v.t_k = 295.0;
  v.exponent = 1.0;
  double t;
  double found;
  double made;
  double mass;
  ck_assert_int_eq(freeair_blowdown_time(&v, 6e5, &t), FREEAIR_OK);
  ck_assert_int_eq(freeair_leakage_at_pressure_from_decay(0.5, 9e5, 6e5, t, 295.0, 8e5, 1e5, 293.15, &found),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_leakage_flow_from_hole(1e-3, 0.65, 8e5, 295.0, 1e5, 1e5, 293.15, &made, &mass), FREEAIR_OK);
  ck_assert_double_le(relative(found, made), 1e-13);
  /* the mean lies between the leaks at both ends */
  double mean;
  ck_assert_int_eq(freeair_leakage_mean_from_decay(0.5, 9e5, 295.0, 6e5, 295.0, t, 1e5, 293.15, &mean, &mass),
                   FREEAIR_OK);
  ck_assert_double_gt(mean, made * 6.0 / 8.0);
  ck_assert_double_lt(mean, made * 9.0 / 8.0);
}
END_TEST

/* Pressure that falls with the temperature of a tight volume is no leak. */
START_TEST(cooling_looks_like_a_leak)
{
  double q;
  double mass;
  ck_assert_int_eq(freeair_leakage_mean_from_decay(0.5, 9e5, 300.0, 9e5 * 290.0 / 300.0, 290.0, 600.0, 1e5, 293.15, &q,
                                                   &mass),
                   FREEAIR_OK);
  ck_assert_double_le(fabs(q), 1e-15);
}
END_TEST

/* The share of load and that of the times exchanged add to one. */
START_TEST(cycle_shares_add_to_one)
{
  double a;
  double b;
  ck_assert_int_eq(freeair_leakage_share_from_cycle(37.0, 411.0, &a), FREEAIR_OK);
  ck_assert_int_eq(freeair_leakage_share_from_cycle(411.0, 37.0, &b), FREEAIR_OK);
  ck_assert_double_le(relative(a + b, 1.0), 1e-15);
  ck_assert_int_eq(freeair_leakage_share_from_cycle(10.0, 0.0, &a), FREEAIR_OK);
  ck_assert_double_eq(a, 1.0);
}
END_TEST

/* Readings on a straight line are reproduced, wherever the line is asked. */
START_TEST(readings_on_a_line_give_the_line)
{
  double p[5];
  double q[5];
  for (int i = 0; i < 5; i++) {
    p[i] = 2e5 + 1.3e5 * i;
    q[i] = 4e-9 * p[i] - 3e-4;
  }
  double at;
  double slope;
  ck_assert_int_eq(freeair_leakage_flow_from_readings(p, q, 5, 1e6, &at, &slope), FREEAIR_OK);
  ck_assert_double_le(relative(slope, 4e-9), 1e-13);
  ck_assert_double_le(relative(at, 4e-9 * 1e6 - 3e-4), 1e-13);
}
END_TEST

/* The whole chain of a published example: hole, mass flow, power, energy in a year (row CW-05). */
START_TEST(repaired_leak_of_the_textbook)
{
  /* Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, repairing an air leak: 3 mm, coefficient
   * 0.65, 700 kPa gauge at 101 kPa, 24 and 20 degC, 0.8 x 0.92, 4200 h: 11698 kWh with R = 287 J/(kg K); ours has
   * 287.05287, which is 0.01 % of the leak. */
  double q;
  double mass;
  double power;
  double energy;
  double cost;
  ck_assert_int_eq(freeair_leakage_flow_from_hole(0.003, 0.65, 801e3, 297.0, 101e3, 101e3, 293.0, &q, &mass),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_leakage_power(q, 101e3, 293.0, 101e3, 293.0, 801e3, 0.8 * 0.92, &power), FREEAIR_OK);
  ck_assert_int_eq(freeair_leakage_cost(power, 4200.0 * 3600.0, 0.078 / 3.6e6, &energy, &cost), FREEAIR_OK);
  ck_assert_double_le(fabs(energy / 3.6e6 - 11698.0), 1.7);
  ck_assert_double_le(relative(cost, energy / 3.6e6 * 0.078), 1e-15);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("leakage");
  tcase_add_test(tc, hole_and_flow_return_to_the_start);
  tcase_add_test(tc, choked_leaks_follow_the_absolute_pressure);
  tcase_add_test(tc, decay_agrees_with_the_leak_that_made_it);
  tcase_add_test(tc, cooling_looks_like_a_leak);
  tcase_add_test(tc, cycle_shares_add_to_one);
  tcase_add_test(tc, readings_on_a_line_give_the_line);
  tcase_add_test(tc, repaired_leak_of_the_textbook);
  return run_case("leakage", tc);
}
