/* SPDX-License-Identifier: MIT */
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { WATER = FREEAIR_SATURATION_OVER_WATER, ICE = FREEAIR_SATURATION_OVER_ICE };

static double pressure(double t, int32_t over)
{
  double p;
  ck_assert_int_eq(freeair_saturation_pressure(t, over, &p), FREEAIR_OK);
  return p;
}

START_TEST(there_and_back)
{
  for (int32_t over = WATER; over <= ICE; over++) {
    double last = 0.0;
    for (double t = over == ICE ? 50.0 : 123.0; t <= 647.0; t += 0.37) {
      const double p = pressure(t, over);
      double found;
      ck_assert_double_gt(p, last);
      last = p;
      ck_assert_int_eq(freeair_saturation_temperature(p, over, &found), FREEAIR_OK);
      /* at the triple point the equations of both sides differ in the eighth digit */
      ck_assert_double_eq_tol(found, t, fabs(t - 273.16) < 0.01 ? 1e-5 : 1e-9);
    }
  }
}
END_TEST

START_TEST(water_and_ice)
{
  for (double t = 123.0; t < 273.15; t += 1.0) ck_assert_double_gt(pressure(t, WATER), pressure(t, ICE));
  for (double t = 273.16; t < 640.0; t += 1.0) ck_assert_double_eq(pressure(t, WATER), pressure(t, ICE));
  /* the three equations meet at the triple point */
  const double triple = pressure(273.16, WATER);
  ck_assert_double_eq_tol(triple, 611.657, 611.657e-7);
  ck_assert_double_eq_tol(pressure(nextafter(273.16, 0.0), WATER), triple, 2e-7 * triple);
  ck_assert_double_eq_tol(pressure(nextafter(273.16, 0.0), ICE), triple, 2e-7 * triple);
}
END_TEST

/* The functions of one equation each agree with the one that joins them. */
START_TEST(pieces)
{
  double p;
  double t;
  for (double x = 273.16; x < 647.0; x += 7.3) {
    ck_assert_int_eq(freeair_saturation_pressure_water(x, &p), FREEAIR_OK);
    ck_assert_double_eq(p, pressure(x, WATER));
    ck_assert_int_eq(freeair_saturation_temperature_water(p, &t), FREEAIR_OK);
    ck_assert_double_eq_tol(t, x, 1e-9);
  }
  for (double x = 123.0; x < 273.16; x += 7.3) {
    ck_assert_int_eq(freeair_saturation_pressure_ice(x, &p), FREEAIR_OK);
    ck_assert_double_eq(p, pressure(x, ICE));
    ck_assert_int_eq(freeair_saturation_pressure_supercooled(x, &p), FREEAIR_OK);
    ck_assert_double_eq(p, pressure(x, WATER));
  }
  /* where the liquid is stable too, supercooled and IF97 tell the same: Murphy and Koop claim 0.05 % */
  for (double x = 273.16; x < 332.0; x += 1.0) {
    ck_assert_int_eq(freeair_saturation_pressure_supercooled(x, &p), FREEAIR_OK);
    ck_assert_double_eq_tol(p, pressure(x, WATER), 5e-4 * p);
  }
}
END_TEST

/* Clausius and Clapeyron: the slope of ln p is L/(T p dv), with v of the vapour
 * that of an ideal gas and its second virial coefficient; three formulations agree. */
START_TEST(clapeyron)
{
  for (double t = 245.0; t < 330.0; t += 5.0)
    for (int32_t over = WATER; over <= ICE; over++) {
      if (fabs(t - 273.16) < 1.0) continue;
      double heat;
      ck_assert_int_eq(freeair_saturation_latent_heat(t, over, &heat), FREEAIR_OK);
      const double p = pressure(t, over);
      const double slope = (log(pressure(t + 0.01, over)) - log(pressure(t - 0.01, over))) / 0.02;
      const double b = -0.00120 / 0.018015268 * exp(6.5 * (300.0 / t - 1.0));
      const double dv = 461.51805 * t / p + b - 0.00105;
      ck_assert_double_eq_tol(heat, t * p * slope * dv, 1.5e-3 * heat);
    }
}
END_TEST

/* Melting: sublimation less vaporisation at 0 degC is the heat of fusion, 333.4 kJ/kg (IAPWS R10-06, Table 6). */
START_TEST(fusion)
{
  double sublimation;
  double vaporisation;
  ck_assert_int_eq(freeair_saturation_latent_heat(273.1599999, ICE, &sublimation), FREEAIR_OK);
  ck_assert_int_eq(freeair_saturation_latent_heat(273.1599999, WATER, &vaporisation), FREEAIR_OK);
  ck_assert_double_eq_tol(sublimation - vaporisation, 333444.254 + 0.612, 1.0);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, there_and_back);
  tcase_add_test(all, water_and_ice);
  tcase_add_test(all, pieces);
  tcase_add_test(all, clapeyron);
  tcase_add_test(all, fusion);
  return run_case("saturation", all);
}
