/* SPDX-License-Identifier: MIT */
#include <freeair/dew_point.h>
#include <freeair/enhancement.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { WATER = FREEAIR_SATURATION_OVER_WATER, ICE = FREEAIR_SATURATION_OVER_ICE };
enum { NONE = FREEAIR_ENHANCEMENT_NONE, VIRIAL = FREEAIR_ENHANCEMENT_VIRIAL };

static double at_pressure(double p1, double dew1, int32_t over1, double p2, int32_t over2, int32_t model)
{
  double dew2;
  ck_assert_int_ge(freeair_dew_point_at_pressure(p1, dew1, over1, p2, over2, model, &dew2), 0);
  return dew2;
}

/* To another pressure and back; higher pressure, higher dew point; the same pressure changes nothing. */
START_TEST(pressures)
{
  for (int32_t model = NONE; model <= VIRIAL; model++)
    for (double dew = 203.15; dew <= 303.15; dew += 10.0)
      for (double p = 1e5; p <= 5e6; p *= 2.0) {
        const double atmospheric = at_pressure(p, dew, ICE, 1e5, ICE, model);
        ck_assert(p > 1e5 ? atmospheric < dew : fabs(atmospheric - dew) < 1e-9);
        ck_assert_double_eq_tol(at_pressure(1e5, atmospheric, ICE, p, ICE, model), dew,
                                fabs(dew - 273.16) < 0.5 ? 0.05 : 1e-9); /* under pressure ice melts below 0 degC */
        ck_assert_double_eq_tol(at_pressure(p, dew, WATER, p, WATER, model), dew, 1e-9);
      }
}
END_TEST

/* The frost point lies above the dew point of the same air below 0.01 degC, and is the same above it. */
START_TEST(frost_and_dew)
{
  for (double p = 1e5; p <= 4e6; p *= 2.0)
    for (double w = 1e-6; w < 3e-3; w *= 1.5) {
      double dew;
      double frost;
      if (freeair_dew_point_from_ratio(p, w, WATER, VIRIAL, &dew) < 0) continue;
      ck_assert_int_ge(freeair_dew_point_from_ratio(p, w, ICE, VIRIAL, &frost), 0);
      if (dew >= 273.2)
        ck_assert_double_eq(dew, frost);
      else if (dew < 273.1)
        ck_assert_double_gt(frost, dew);
    }
}
END_TEST

START_TEST(there_and_back)
{
  for (int32_t over = WATER; over <= ICE; over++)
    for (int32_t model = NONE; model <= VIRIAL; model++)
      for (double p = 1e4; p <= 1e7; p *= 3.0)
        for (double t = 183.0; t <= 560.0; t += 13.0)
          for (double dew = 175.0; dew < t; dew += 11.0) {
            double w;
            double rh;
            double found;
            if (freeair_dew_point_humidity_ratio(p, dew, over, model, &w) < 0) continue;
            if (fabs(dew - 273.16) < 1.0) continue;
            ck_assert_int_ge(freeair_dew_point_from_ratio(p, w, over, model, &found), 0);
            ck_assert_double_eq_tol(found, dew, 1e-9);
            if (freeair_dew_point_relative_humidity(p, t, dew, over, model, &rh) < 0) continue;
            ck_assert(rh > 0.0 && rh <= 1.001);
            if (rh > 1.0) continue;
            ck_assert_int_ge(freeair_dew_point_from_relative(p, t, rh, over, model, &found), 0);
            ck_assert_double_eq_tol(found, dew, 1e-9);
          }
}
END_TEST

/* Without the enhancement factor it is Dalton's law with the saturation pressures. */
START_TEST(dalton)
{
  for (double dew = 190.0; dew <= 350.0; dew += 7.0) {
    double e1;
    double e2;
    const double other = at_pressure(8e5, dew, ICE, 2e5, WATER, NONE);
    ck_assert_int_eq(freeair_saturation_pressure(dew, ICE, &e1), FREEAIR_OK);
    ck_assert_int_eq(freeair_saturation_pressure(other, WATER, &e2), FREEAIR_OK);
    ck_assert_double_eq_tol(e2, 0.25 * e1, 1e-10 * e1);
  }
}
END_TEST

/* Saturated air has its dew point at its temperature. */
START_TEST(saturated)
{
  for (double t = 180.0; t <= 360.0; t += 9.0) {
    double dew;
    double rh;
    ck_assert_int_ge(freeair_dew_point_from_relative(8e5, t, 1.0, WATER, VIRIAL, &dew), 0);
    ck_assert_double_eq_tol(dew, t, 1e-10);
    ck_assert_int_ge(freeair_dew_point_relative_humidity(8e5, t, t, WATER, VIRIAL, &rh), 0);
    ck_assert_double_eq_tol(rh, 1.0, 1e-12);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 60);
  tcase_add_test(all, pressures);
  tcase_add_test(all, frost_and_dew);
  tcase_add_test(all, there_and_back);
  tcase_add_test(all, dalton);
  tcase_add_test(all, saturated);
  return run_case("dew_point", all);
}
