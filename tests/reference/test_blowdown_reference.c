/* SPDX-License-Identifier: MIT */
/* Blow-down and filling against an integration of the balances of mass and
 * energy by SUNDIALS CVODE: nothing of the closed forms is in here. The vessel
 * is either kept at its temperature or given no heat at all; the orifice is
 * written in its textbook form. */
#include <freeair/blowdown.h>
#include <freeair/status.h>

#include "../suite.h"
#include "adams.h"

#include <check.h>
#include <cvode/cvode.h>
#include <math.h>

static const double k = 1.4;
static const double r = 287.05287;
static const double volume = 0.3;

typedef struct process {
  double area;
  double line_pa;
  double line_k;
  double target_pa;
  int isothermal;
} process;

static double orifice(double area, double p1, double t1, double p2)
{
  double critical = pow(2.0 / (k + 1.0), k / (k - 1.0));
  double ratio = fmax(p2 / p1, critical);
  return area * p1 * sqrt(2.0 * k / ((k - 1.0) * r * t1) * (pow(ratio, 2.0 / k) - pow(ratio, (k + 1.0) / k)));
}

/* y: mass, internal energy */
static double temperature(const process *a, double mass, double energy)
{
  return a->isothermal ? a->line_k : energy / (mass * r / (k - 1.0));
}

static int balance(realtype time, N_Vector y, N_Vector slope, void *data)
{
  (void)time;
  const process *a = data;
  double mass = NV_Ith_S(y, 0);
  double t = temperature(a, mass, NV_Ith_S(y, 1));
  double p = mass * r * t / volume;
  double heat = k * r / (k - 1.0); /* cp */
  if (p > a->line_pa) {
    double out = orifice(a->area, p, t, a->line_pa);
    NV_Ith_S(slope, 0) = -out;
    NV_Ith_S(slope, 1) = -out * heat * t;
  } else {
    double in = orifice(a->area, a->line_pa, a->line_k, p);
    NV_Ith_S(slope, 0) = in;
    NV_Ith_S(slope, 1) = in * heat * a->line_k;
  }
  return 0;
}

static int target(realtype time, N_Vector y, realtype *root, void *data)
{
  (void)time;
  const process *a = data;
  double mass = NV_Ith_S(y, 0);
  root[0] = mass * r * temperature(a, mass, NV_Ith_S(y, 1)) / volume - a->target_pa;
  return 0;
}

/* Time at which the pressure reaches the target; the temperature then. */
static double integrate(process *a, double p1, double t1, double *t2)
{
  const initial_value problem = {balance, target, a, 1e-14, 2};
  double y[] = {p1 * volume / (r * t1), p1 * volume / (k - 1.0)};
  const double time = adams(&problem, y, 1e9);
  *t2 = temperature(a, y[0], y[1]);
  return time;
}

static freeair_blowdown_vessel vessel(double area, double p_vessel, double p_line, double exponent)
{
  freeair_blowdown_vessel v = FREEAIR_BLOWDOWN_VESSEL_INIT;
  v.v_m3 = volume;
  v.area_m2 = area;
  v.p_vessel_pa = p_vessel;
  v.p_line_pa = p_line;
  v.t_k = 300.0;
  v.exponent = exponent;
  return v;
}

static double relative(double a, double b)
{
  return fabs(a - b) / fabs(b);
}

static const double targets[] = {0.95, 0.7, 0.4, 0.2, 0.1, 0.02};

START_TEST(blowing_down)
{
  for (int isothermal = 0; isothermal <= 1; isothermal++) {
    for (size_t i = 0; i < sizeof targets / sizeof targets[0]; i++) {
      double p2 = 1.01e5 + targets[i] * (11e5 - 1.01e5);
      process a = {8e-6, 1.01e5, 300.0, p2, isothermal};
      freeair_blowdown_vessel v = vessel(a.area, 11e5, 1.01e5, isothermal ? 1.0 : k);
      double t2;
      double expected = integrate(&a, 11e5, 300.0, &t2);
      double time;
      double back;
      double cold;
      ck_assert_int_eq(freeair_blowdown_time(&v, p2, &time), FREEAIR_OK);
      ck_assert_double_le(relative(time, expected), 1e-9);
      ck_assert_int_eq(freeair_blowdown_pressure(&v, expected, &back, &cold), FREEAIR_OK);
      ck_assert_double_le(relative(back, p2), 1e-9);
      ck_assert_double_le(relative(cold, t2), 1e-9);
    }
  }
}
END_TEST

START_TEST(filling)
{
  for (int isothermal = 0; isothermal <= 1; isothermal++) {
    for (size_t i = 0; i < sizeof targets / sizeof targets[0]; i++) {
      double p2 = 11e5 - targets[i] * (11e5 - 1.01e5);
      process a = {8e-6, 11e5, 300.0, p2, isothermal};
      freeair_blowdown_vessel v = vessel(a.area, 1.01e5, 11e5, isothermal ? 1.0 : k);
      double t2;
      double expected = integrate(&a, 1.01e5, 290.0, &t2);
      if (isothermal) expected = integrate(&a, 1.01e5, 300.0, &t2);
      double time;
      double back;
      ck_assert_int_eq(freeair_blowdown_fill_time(&v, p2, &time), FREEAIR_OK);
      ck_assert_double_le(relative(time, expected), 1e-9);
      ck_assert_int_eq(freeair_blowdown_fill_pressure(&v, expected, &back), FREEAIR_OK);
      ck_assert_double_le(relative(back, p2), 1e-9);
      if (!isothermal) {
        double warm;
        ck_assert_int_eq(freeair_blowdown_fill_temperature(1.01e5, 290.0, p2, 300.0, k, &warm), FREEAIR_OK);
        ck_assert_double_le(relative(warm, t2), 1e-9);
      }
    }
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("blowdown");
  tcase_set_timeout(tc, 120);
  tcase_add_test(tc, blowing_down);
  tcase_add_test(tc, filling);
  return run_case("blowdown against CVODE", tc);
}
