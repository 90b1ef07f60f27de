/* SPDX-License-Identifier: MIT */
#include <freeair/dew_point.h>
#include <freeair/enhancement.h>
#include <freeair/humidity.h>
#include <freeair/saturation.h>
#include <freeair/status.h>
#include <freeair/wet_bulb.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { WATER = FREEAIR_SATURATION_OVER_WATER, ICE = FREEAIR_SATURATION_OVER_ICE };

static double ratio(double p, double t, double rh)
{
  double w;
  if (freeair_humidity_ratio_from_relative(p, t, rh, FREEAIR_ENHANCEMENT_VIRIAL, &w) < 0) return NAN;
  return w;
}

/* Between dew point and temperature, rising with humidity; and back. */
START_TEST(there_and_back)
{
  for (int32_t over = WATER; over <= ICE; over++)
    for (double p = 7e4; p <= 4e6; p *= 2.5)
      for (double t = 253.15; t <= 460.0; t += 20.0) {
        double last = 0.0;
        for (double rh = 0.0; rh <= 1.0; rh += 0.2) {
          const double w = ratio(p, t, rh);
          double wet;
          double back;
          if (!(w < 3.0)) continue;
          if (freeair_wet_bulb_temperature(p, t, w, over, &wet) < 0) {
            ck_assert(over == ICE && t < 273.16 && rh > 0.75);
            continue;
          }
          ck_assert(wet > last && wet <= t * (1.0 + 1e-12));
          last = wet;
          ck_assert_int_ge(freeair_wet_bulb_humidity_ratio(p, t, wet, over, &back), 0);
          ck_assert_double_eq_tol(back, w, 1e-8 * w + 1e-12);
          if (w > 0.0) {
            double dew;
            if (freeair_dew_point_from_ratio(p, w, over, FREEAIR_ENHANCEMENT_VIRIAL, &dew) < 0) continue;
            ck_assert_double_gt(wet, dew - 1e-9);
          }
        }
      }
}
END_TEST

START_TEST(saturated)
{
  for (double t = 255.0; t <= 365.0; t += 11.0) {
    double wet;
    ck_assert_int_eq(freeair_wet_bulb_temperature(1e5, t, ratio(1e5, t, 1.0), WATER, &wet), FREEAIR_OK);
    ck_assert_double_eq_tol(wet, t, 1e-8);
  }
}
END_TEST

/* The psychrometer equation of the meteorologists, e = ew - A p (t - tw) with A =
 * 6.53e-4 (1 + 0.000944 tw), a ventilated wet wick near 1 atm (WMO Guide to
 * Instruments and Methods of Observation, annex on psychrometers, from memory):
 * within 30 Pa of the thermodynamic wet bulb. */
START_TEST(psychrometer)
{
  for (double t = 278.15; t <= 313.15; t += 5.0)
    for (double depression = 1.0; depression <= 8.0; depression += 1.0) {
      const double wet = t - depression;
      double w;
      double saturation;
      if (freeair_wet_bulb_humidity_ratio(101325.0, t, wet, WATER, &w) < 0) continue;
      ck_assert_int_eq(freeair_saturation_pressure(wet, WATER, &saturation), FREEAIR_OK);
      const double vapour = 101325.0 * w / (0.62195 + w);
      const double meteorologists =
          1.0042 * saturation - 6.53e-4 * (1.0 + 0.000944 * (wet - 273.15)) * 101325.0 * depression;
      ck_assert_double_eq_tol(vapour, meteorologists, 30.0);
    }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 60);
  tcase_add_test(all, there_and_back);
  tcase_add_test(all, saturated);
  tcase_add_test(all, psychrometer);
  return run_case("wet_bulb", all);
}
