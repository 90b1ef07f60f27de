/* SPDX-License-Identifier: MIT */
#include <freeair/isothermal.h>
#include <freeair/pipe.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

static freeair_isothermal_pipe pipe_of(double length, double diameter)
{
  freeair_isothermal_pipe p = FREEAIR_ISOTHERMAL_PIPE_INIT;
  p.length_m = length;
  p.diameter_m = diameter;
  p.loss_coefficient = 3.0;
  return p;
}

/* Flow, outlet pressure, inlet pressure and diameter give one another. */
START_TEST(four_ways_round)
{
  int solved = 0;
  for (int i = 0; i < 12; i++)
    for (int j = 0; j < 12; j++) {
      freeair_isothermal_pipe p = pipe_of(spread(i, 12, 0.5, 5e3), spread((5 * i + j) % 12, 12, 0.005, 0.5));
      double p2 = 8e5 * (1.0 - spread(j, 12, 1e-4, 0.8));
      double mass, f, p1, out, velocity, d;
      int32_t status = freeair_isothermal_flow_from_pressures(&p, 8e5, p2, &mass, &f);
      if (status == FREEAIR_ERR_NO_SOLUTION) continue;
      ck_assert_int_ge(status, 0);
      ck_assert_int_ge(freeair_isothermal_outlet_pressure(&p, mass, 8e5, &out, &velocity, &f), 0);
      ck_assert_double_le(fabs(out / p2 - 1.0), 1e-9);
      ck_assert_int_ge(freeair_isothermal_inlet_pressure(&p, mass, p2, &p1, &f), 0);
      ck_assert_double_le(fabs(p1 / 8e5 - 1.0), 1e-12);
      double known = p.diameter_m;
      p.diameter_m = NAN;
      ck_assert_int_ge(freeair_isothermal_diameter(&p, mass, 8e5, p2, &d, &f), 0);
      ck_assert_double_le(fabs(d / known - 1.0), 1e-11);
      solved++;
    }
  ck_assert_int_ge(solved, 100);
}
END_TEST

/* No flow exceeds that at the choking pressure, which the equation gives too. */
START_TEST(choking_is_the_most)
{
  for (int i = 0; i < 40; i++) {
    double loss_number = spread(i, 40, 1e-4, 1e5);
    double choking, most, mass;
    ck_assert_int_eq(freeair_isothermal_choking(8e5, 300.0, 0.02, loss_number, 287.05, &choking, &most), FREEAIR_OK);
    for (int j = 0; j < 60; j++) {
      double p2 = fmin(choking + (8e5 - choking) * j / 59.0, 8e5);
      int32_t status = freeair_isothermal_mass_flow(8e5, p2, 300.0, 0.02, loss_number, 287.05, &mass);
      if (j == 0 && status == FREEAIR_ERR_NO_SOLUTION) continue; /* by rounding */
      ck_assert_int_eq(status, FREEAIR_OK);
      ck_assert_double_le(mass, most * (1.0 + 1e-14));
      if (j == 0) ck_assert_double_le(fabs(mass / most - 1.0), 1e-7);
    }
    ck_assert_int_eq(freeair_isothermal_mass_flow(8e5, 0.999 * choking, 300.0, 0.02, loss_number, 287.05, &mass),
                     FREEAIR_ERR_NO_SOLUTION);
  }
}
END_TEST

/* A small drop is that of an incompressible fluid. */
START_TEST(small_drop_is_incompressible)
{
  for (int i = 0; i < 30; i++) {
    double drop = spread(i, 30, 1e-2, 200.0);
    double mass, other;
    ck_assert_int_eq(freeair_isothermal_mass_flow(8e5, 8e5 - drop, 300.0, 0.05, 40.0, 287.05, &mass), FREEAIR_OK);
    ck_assert_int_eq(freeair_pipe_pressure_drop(mass, 0.05, 0.0, 0.0, 40.0, 8e5, 300.0, 287.05, &other), FREEAIR_OK);
    ck_assert_double_le(fabs(other / drop - 1.0), drop / 8e5 + 1e-9);
  }
}
END_TEST

/* Two halves of a pipe are the whole. */
START_TEST(halves_are_the_whole)
{
  freeair_isothermal_pipe whole = pipe_of(300.0, 0.03);
  freeair_isothermal_pipe half = pipe_of(150.0, 0.03);
  whole.loss_coefficient = half.loss_coefficient = 0.0;
  for (int i = 0; i < 20; i++) {
    double mass = spread(i, 20, 1e-4, 0.1);
    double end, middle, other, v, f;
    int32_t status = freeair_isothermal_outlet_pressure(&whole, mass, 8e5, &end, &v, &f);
    if (status < 0) break;
    ck_assert_int_ge(freeair_isothermal_outlet_pressure(&half, mass, 8e5, &middle, &v, &f), 0);
    ck_assert_int_ge(freeair_isothermal_outlet_pressure(&half, mass, middle, &other, &v, &f), 0);
    ck_assert_double_le(fabs(other / end - 1.0), 1e-11);
  }
}
END_TEST

START_TEST(defaults_are_as_documented)
{
  freeair_isothermal_pipe brief = FREEAIR_ISOTHERMAL_PIPE_INIT;
  freeair_isothermal_pipe full = FREEAIR_ISOTHERMAL_PIPE_INIT;
  brief.length_m = full.length_m = 40.0;
  brief.diameter_m = full.diameter_m = 0.02;
  full.roughness_m = 45e-6;
  full.loss_coefficient = 0.0;
  full.t_k = 293.15;
  full.viscosity_pas = 1.458e-6 * pow(293.15, 1.5) / (293.15 + 110.4);
  full.r_j_kg_k = 287.05287;
  double a, b, f;
  ck_assert_int_eq(freeair_isothermal_flow_from_pressures(&brief, 8e5, 7.5e5, &a, &f), FREEAIR_OK);
  ck_assert_int_eq(freeair_isothermal_flow_from_pressures(&full, 8e5, 7.5e5, &b, &f), FREEAIR_OK);
  ck_assert_double_le(fabs(a / b - 1.0), 1e-13);
  full.flags = 1;
  ck_assert_int_eq(freeair_isothermal_flow_from_pressures(&full, 8e5, 7.5e5, &b, &f), FREEAIR_ERR_VERSION);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, four_ways_round);
  tcase_add_test(all, choking_is_the_most);
  tcase_add_test(all, small_drop_is_incompressible);
  tcase_add_test(all, halves_are_the_whole);
  tcase_add_test(all, defaults_are_as_documented);
  return run_case("isothermal", all);
}
