/* SPDX-License-Identifier: MIT */
#include <freeair/enhancement.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { WATER = FREEAIR_SATURATION_OVER_WATER, ICE = FREEAIR_SATURATION_OVER_ICE };

static double factor(double p, double t, int32_t over)
{
  double f;
  ck_assert_int_ge(freeair_enhancement_factor(p, t, over, &f), 0);
  return f;
}

/* It rises with pressure, from one at the saturation pressure; above freezing water and ice are one. */
START_TEST(rises_with_pressure)
{
  for (int32_t over = WATER; over <= ICE; over++)
    for (double t = 173.15; t <= 573.15; t += 10.0) {
      double e;
      ck_assert_int_eq(freeair_saturation_pressure(t, over, &e), FREEAIR_OK);
      double last = 1.0 - 1e-12;
      for (double p = fmax(e * 1.0001, 1000.0); p < 1e7; p *= 1.3) {
        const double f = factor(p, t, over);
        ck_assert_msg(f >= last, "%g K, %g Pa: %.12g after %.12g", t, p, f, last);
        last = f;
        if (t >= 273.16) ck_assert_double_eq(f, factor(p, t, WATER + ICE - over));
      }
      if (e >= 1.0 && e < 9e6) {
        ck_assert_double_eq_tol(factor(fmax(e * (1.0 + 1e-9), 1.0), t, over), 1.0, 1e-6);
        double none;
        ck_assert_int_eq(freeair_enhancement_factor(e * (1.0 - 1e-9), t, over, &none), FREEAIR_ERR_NO_SOLUTION);
      }
    }
}
END_TEST

/* The fugacity of saturated vapour in air is that of the liquid: at no pressure
 * beyond its own that of the saturated vapour, more under pressure. */
START_TEST(equal_fugacities)
{
  for (double t = 243.15; t <= 423.15; t += 15.0) {
    double e;
    double pure;
    ck_assert_int_eq(freeair_saturation_pressure(t, WATER, &e), FREEAIR_OK);
    ck_assert_int_eq(freeair_enhancement_fugacity(e, t, 1.0, &pure), FREEAIR_OK);
    for (double p = 1e5; p <= 4e6; p *= 2.0) {
      if (p < 1.1 * e) continue;
      double pressed;
      const double f = factor(p, t, WATER);
      ck_assert_int_eq(freeair_enhancement_fugacity(p, t, f * e / p, &pressed), FREEAIR_OK);
      /* Poynting: 18.0 to 19.7 cm3/mol over R T, less what air dissolves */
      const double poynting = 18.6e-6 * (p - e) / (8.314 * t);
      ck_assert_double_eq_tol(log(pressed / pure), poynting, 0.08 * poynting);
    }
  }
}
END_TEST

/* Without pressure an ideal gas. */
START_TEST(dilute)
{
  for (double t = 200.0; t <= 570.0; t += 37.0)
    for (double x = 0.0; x <= 1.0; x += 0.25) {
      double f;
      ck_assert_int_ge(freeair_enhancement_fugacity(1.0, t, x, &f), 0);
      ck_assert_double_eq_tol(f, x, 2e-5 * x + 1e-300);
    }
}
END_TEST

/* Boyle temperature of air: the second virial coefficient of dry air changes sign near 347 K. */
START_TEST(boyle)
{
  freeair_enhancement_coefficients c = FREEAIR_ENHANCEMENT_COEFFICIENTS_INIT;
  ck_assert_int_eq(freeair_enhancement_virials(340.0, &c), FREEAIR_OK);
  ck_assert_double_lt(c.b_aa_m3_mol, 0.0);
  ck_assert_int_eq(freeair_enhancement_virials(355.0, &c), FREEAIR_OK);
  ck_assert_double_gt(c.b_aa_m3_mol, 0.0);
  c.struct_size = 8;
  ck_assert_int_eq(freeair_enhancement_virials(355.0, &c), FREEAIR_ERR_VERSION);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, rises_with_pressure);
  tcase_add_test(all, equal_fugacities);
  tcase_add_test(all, dilute);
  tcase_add_test(all, boyle);
  return run_case("enhancement", all);
}
