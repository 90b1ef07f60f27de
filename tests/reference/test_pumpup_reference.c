/* SPDX-License-Identifier: MIT */
/* Pump-up analysis and expectation against an integration of the balances of gas
 * mass, gas energy and wall by SUNDIALS CVODE. The receiver is filled here by a
 * known inflow until a pressure is reached; from that pressure and time alone the
 * library has to find the inflow again. */
#include <freeair/expectation.h>
#include <freeair/pumpup.h>
#include <freeair/status.h>

#include "../suite.h"
#include "adams.h"

#include <check.h>
#include <cvode/cvode.h>
#include <math.h>

static const double k = 1.4;
static const double r = 287.05287;

typedef struct tank {
  double volume;
  double ambient_pa;
  double ambient_k;
  double inlet_k;
  double ua_gas;
  double ua_wall;
  double wall_j_k;
  double inflow; /* kg/s at ambient pressure */
  double fall;   /* share of it lost up to end_pa; 0 with a clearance */
  double clearance; /* two stages, exponent 1.25 */
  double end_pa;
  double steady_kg_s; /* instead of the inflow, when not 0 */
} tank;

/* y: mass, internal energy, wall temperature */
static int balance(realtype time, N_Vector y, N_Vector slope, void *data)
{
  (void)time;
  const tank *a = data;
  double mass = NV_Ith_S(y, 0);
  double energy = NV_Ith_S(y, 1);
  double wall = NV_Ith_S(y, 2);
  double p = (k - 1.0) * energy / a->volume;
  double t = energy * (k - 1.0) / (mass * r);
  double in = a->inflow * (1.0 - a->fall * (p - a->ambient_pa) / (a->end_pa - a->ambient_pa));
  in *= 1.0 + a->clearance - a->clearance * pow(p / a->ambient_pa, 1.0 / 2.5);
  if (a->steady_kg_s != 0.0) in = a->steady_kg_s;
  double heat = a->ua_gas * pow(p / a->ambient_pa, 2.0 / 3.0) * (t - wall);
  NV_Ith_S(slope, 0) = in;
  NV_Ith_S(slope, 1) = in * k * r / (k - 1.0) * (in > 0.0 ? a->inlet_k : t) - heat;
  NV_Ith_S(slope, 2) = (heat - a->ua_wall * (wall - a->ambient_k)) / a->wall_j_k;
  return 0;
}

static int target(realtype time, N_Vector y, realtype *root, void *data)
{
  (void)time;
  const tank *a = data;
  root[0] = (k - 1.0) * NV_Ith_S(y, 1) / a->volume - a->end_pa;
  return 0;
}

/* Fills until end_pa (until_s infinite) or until a time. Returns the time. */
static double integrate(tank *a, double y[3], double until_s)
{
  const int to_pressure = isinf(until_s);
  const initial_value problem = {balance, to_pressure ? target : NULL, a, 1e-13, 3};
  return adams(&problem, y, to_pressure ? 1e6 : until_s);
}

static tank tank_of(double volume, double end_pa)
{
  tank a = {.volume = volume, .ambient_pa = 95000.0, .ambient_k = 298.15, .inlet_k = 350.0,
            .ua_gas = 29.0 * cbrt(volume * volume), .ua_wall = 58.0 * cbrt(volume * volume),
            .wall_j_k = 0.1 * volume * end_pa, .inflow = 0.012, .fall = 0.2, .end_pa = end_pa};
  return a;
}

static freeair_pumpup_test test_of(const tank *a, double start_pa)
{
  freeair_pumpup_test t = FREEAIR_PUMPUP_TEST_INIT;
  t.v_receiver_m3 = a->volume;
  t.p_ambient_pa = a->ambient_pa;
  t.t_ambient_k = a->ambient_k;
  t.t_in_k = a->inlet_k;
  t.p_start_pa = start_pa;
  t.p_end_pa = a->end_pa;
  t.start = FREEAIR_PUMPUP_SOAKED;
  return t;
}

static double relative(double a, double b)
{
  return fabs(a - b) / fabs(b);
}

START_TEST(mass_from_pressure_and_time)
{
  const double volumes[] = {0.02, 0.1, 0.3, 1.0, 5.0};
  const double starts[] = {95000.0, 3e5, 9e5};
  for (size_t v = 0; v < 5; v++)
    for (size_t s = 0; s < 3; s++) {
      tank a = tank_of(volumes[v], 1.3e6);
      double y[3] = {starts[s] * a.volume / (r * a.ambient_k), starts[s] * a.volume / (k - 1.0), a.ambient_k};
      double mass = y[0];
      freeair_pumpup_test t = test_of(&a, starts[s]);
      freeair_pumpup_result found = FREEAIR_PUMPUP_RESULT_INIT;
      t.duration_s = integrate(&a, y, INFINITY);
      t.duration_uncertainty_s = 0.0;
      ck_assert_int_eq(freeair_pumpup_analyse(&t, &found), FREEAIR_OK);
      ck_assert_double_le(relative(found.mass_kg, y[0] - mass), 2e-8);
      ck_assert_double_le(relative(found.t_wall_end_k, y[2]), 1e-8);
      ck_assert_double_le(relative(found.t_end_k, y[1] * (k - 1.0) / (y[0] * r)), 1e-8);
    }
}
END_TEST

/* A table of exact readings gives the course of the inflow as well, though
 * something else was expected. */
START_TEST(course_from_a_table)
{
  tank a = tank_of(0.3, 1.3e6);
  a.fall = 0.4;
  double y[3] = {a.ambient_pa * a.volume / (r * a.ambient_k), a.ambient_pa * a.volume / (k - 1.0), a.ambient_k};
  double mass = y[0];
  double end_s = integrate(&a, y, INFINITY);
  double gained = y[0] - mass;
  enum { rows = 7 };
  double t[rows];
  double p[rows];
  for (int i = 0; i < rows; i++) {
    double z[3] = {mass, a.ambient_pa * a.volume / (k - 1.0), a.ambient_k};
    t[i] = end_s * i / (rows - 1);
    if (i > 0 && i < rows - 1) integrate(&a, z, t[i]);
    p[i] = i < rows - 1 ? (k - 1.0) * z[1] / a.volume : a.end_pa;
  }
  freeair_pumpup_test test = test_of(&a, NAN);
  test.p_end_pa = NAN;
  test.reading_uncertainty_pa = 10.0; /* almost exact: the readings prevail */
  freeair_pumpup_result found = FREEAIR_PUMPUP_RESULT_INIT;
  ck_assert_int_eq(freeair_pumpup_analyse_table(&test, t, p, rows, &found), FREEAIR_OK);
  ck_assert_double_eq_tol(found.fall, 0.4, 1e-5);
  ck_assert_double_le(relative(found.mass_kg, gained), 1e-6);
}
END_TEST

/* Load and rest, again and again until nothing changes, against the cycle that
 * the library finds at once. */
START_TEST(regular_cycles)
{
  tank a = tank_of(0.3, 1.1e6);
  double start_pa = 8.5e5;
  double rest_s = 300.0;
  double gas_k = a.ambient_k;
  double wall_k = a.ambient_k;
  double gained = 0.0;
  double load_s = 0.0;
  for (int cycle = 0; cycle < 60; cycle++) {
    double y[3] = {start_pa * a.volume / (r * gas_k), start_pa * a.volume / (k - 1.0), wall_k};
    double mass = y[0];
    a.steady_kg_s = 0.0;
    load_s = integrate(&a, y, INFINITY);
    gained = y[0] - mass;
    a.steady_kg_s = -gained / rest_s;
    integrate(&a, y, rest_s);
    gas_k = y[1] * (k - 1.0) / (y[0] * r);
    wall_k = y[2];
  }
  freeair_pumpup_test t = test_of(&a, start_pa);
  t.start = FREEAIR_PUMPUP_CYCLING;
  t.rest_s = rest_s;
  t.duration_s = load_s;
  freeair_pumpup_result found = FREEAIR_PUMPUP_RESULT_INIT;
  ck_assert_int_eq(freeair_pumpup_analyse(&t, &found), FREEAIR_OK);
  ck_assert_double_le(relative(found.mass_kg, gained), 1e-6);
  ck_assert_double_eq_tol(found.t_start_k, gas_k, 1e-3);
  ck_assert_double_eq_tol(found.t_wall_start_k, wall_k, 1e-3);
}
END_TEST

START_TEST(expected_time)
{
  const double volumes[] = {0.05, 0.3, 2.0};
  for (size_t v = 0; v < 3; v++) {
    tank a = tank_of(volumes[v], 1.3e6);
    a.fall = 0.0;
    a.clearance = 0.05;
    freeair_expectation_machine m = FREEAIR_EXPECTATION_MACHINE_INIT;
    m.swept_m3 = 0.001;
    m.speed_rev_s = 15.0;
    m.induction = 0.8;
    a.inflow = 0.012 * a.ambient_pa / (r * a.ambient_k);
    double y[3] = {a.ambient_pa * a.volume / (r * a.ambient_k), a.ambient_pa * a.volume / (k - 1.0), a.ambient_k};
    double mass = y[0];
    double time = integrate(&a, y, INFINITY);
    freeair_pumpup_test t = test_of(&a, a.ambient_pa);
    freeair_expectation_result expected = FREEAIR_EXPECTATION_RESULT_INIT;
    ck_assert_int_eq(freeair_expectation_of_run(&t, &m, &expected), FREEAIR_OK);
    ck_assert_double_le(relative(expected.time_s, time), 1e-7);
    double delivery = (y[0] - mass) * r * a.ambient_k / (a.ambient_pa * time);
    ck_assert_double_le(relative(expected.delivery_m3_s, delivery), 1e-7);
    ck_assert_double_le(relative(expected.t_end_k, y[1] * (k - 1.0) / (y[0] * r)), 1e-7);
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("pumpup reference");
  tcase_set_timeout(tc, 120);
  tcase_add_test(tc, mass_from_pressure_and_time);
  tcase_add_test(tc, course_from_a_table);
  tcase_add_test(tc, regular_cycles);
  tcase_add_test(tc, expected_time);
  return run_case("pumpup reference", tc);
}
