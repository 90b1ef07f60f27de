/* SPDX-License-Identifier: MIT */
#include <freeair/describe.h>
#include <freeair/enhancement.h>
#include <freeair/humidity.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>
#include <stddef.h>

/* The measures, as they are named in what is given and in what is found. */
static const struct {
  size_t given;
  size_t found;
} measure[] = {
    {offsetof(freeair_humidity_given, mole_fraction), offsetof(freeair_humidity_found, mole_fraction)},
    {offsetof(freeair_humidity_given, vapour_pressure_pa), offsetof(freeair_humidity_found, vapour_pressure_pa)},
    {offsetof(freeair_humidity_given, humidity_ratio), offsetof(freeair_humidity_found, humidity_ratio)},
    {offsetof(freeair_humidity_given, specific_humidity), offsetof(freeair_humidity_found, specific_humidity)},
    {offsetof(freeair_humidity_given, relative_humidity), offsetof(freeair_humidity_found, relative_humidity)},
    {offsetof(freeair_humidity_given, dew_point_k), offsetof(freeair_humidity_found, dew_point_k)},
    {offsetof(freeair_humidity_given, frost_point_k), offsetof(freeair_humidity_found, frost_point_k)},
    {offsetof(freeair_humidity_given, wet_bulb_k), offsetof(freeair_humidity_found, wet_bulb_k)},
    {offsetof(freeair_humidity_given, vapour_density_kg_m3), offsetof(freeair_humidity_found, vapour_density_kg_m3)}};
enum { MEASURES = sizeof measure / sizeof measure[0] };

static double *field(void *structure, size_t offset)
{
  return (double *)(void *)((char *)structure + offset);
}

/* From any measure to any other: all give the same air. */
START_TEST(every_pair)
{
  for (int32_t model = FREEAIR_ENHANCEMENT_NONE; model <= FREEAIR_ENHANCEMENT_VIRIAL; model++)
    for (int32_t wick = FREEAIR_SATURATION_OVER_WATER; wick <= FREEAIR_SATURATION_OVER_ICE; wick++)
      for (double p = 6e4; p <= 4e6; p *= 2.3)
        for (double t = 248.15; t <= 428.15; t += 30.0)
          for (double rh = 0.1; rh <= 0.7; rh += 0.3) {
            freeair_humidity_given g = FREEAIR_HUMIDITY_GIVEN_INIT;
            freeair_humidity_found first = FREEAIR_HUMIDITY_FOUND_INIT;
            g.p_pa = p;
            g.t_k = t;
            g.model = model;
            g.wick = wick;
            g.relative_humidity = rh;
            if (freeair_humidity_convert(&g, &first) < 0) {
              ck_assert_double_gt(t, 350.0); /* no air left */
              continue;
            }
            g.relative_humidity = NAN;
            for (size_t i = 0; i < MEASURES; i++) {
              freeair_humidity_found again = FREEAIR_HUMIDITY_FOUND_INIT;
              *field(&g, measure[i].given) = *field(&first, measure[i].found);
              if (isnan(*field(&g, measure[i].given))) continue;
              /* where ice and water meet under pressure two frost points belong to the same air */
              if (fabs(first.frost_point_k - 273.16) < 0.5) break;
              ck_assert_msg(freeair_humidity_convert(&g, &again) >= 0, "%zu: %g Pa %g K %g", i, p, t, rh);
              for (size_t k = 0; k < MEASURES; k++) {
                const double want = *field(&first, measure[k].found);
                const double got = *field(&again, measure[k].found);
                ck_assert_msg(fabs(got - want) <= 1e-7 * want, "%zu from %zu: %g Pa %g K %g", k, i, p, t, rh);
              }
              *field(&g, measure[i].given) = NAN;
            }
          }
}
END_TEST

/* The enhancement factor lets the same relative humidity mean more vapour. */
START_TEST(enhancement)
{
  for (double t = 233.15; t <= 330.0; t += 10.0) {
    double with;
    double without;
    double rh;
    ck_assert_int_eq(freeair_humidity_ratio_from_relative(8e5, t, 0.5, FREEAIR_ENHANCEMENT_VIRIAL, &with), FREEAIR_OK);
    ck_assert_int_eq(freeair_humidity_ratio_from_relative(8e5, t, 0.5, FREEAIR_ENHANCEMENT_NONE, &without), FREEAIR_OK);
    ck_assert(with > 1.02 * without && with < 1.06 * without);
    ck_assert_int_eq(freeair_humidity_relative_from_ratio(8e5, t, with, FREEAIR_ENHANCEMENT_VIRIAL, &rh), FREEAIR_OK);
    ck_assert_double_eq_tol(rh, 0.5, 1e-13);
  }
}
END_TEST

/* Dry air: everything that can be is zero, and there is no dew point. */
START_TEST(dry)
{
  freeair_humidity_given g = FREEAIR_HUMIDITY_GIVEN_INIT;
  freeair_humidity_found q = FREEAIR_HUMIDITY_FOUND_INIT;
  g.p_pa = 8e5;
  g.t_k = 300.0;
  g.humidity_ratio = 0.0;
  ck_assert_int_eq(freeair_humidity_convert(&g, &q), FREEAIR_OK);
  ck_assert_double_eq(q.mole_fraction, 0.0);
  ck_assert_double_eq(q.relative_humidity, 0.0);
  ck_assert_double_eq(q.vapour_density_kg_m3, 0.0);
  ck_assert(isnan(q.dew_point_k) && isnan(q.frost_point_k));
  ck_assert(q.wet_bulb_k < 300.0 && q.wet_bulb_k > 290.0);
}
END_TEST

/* The defaults are the constants whose numbers the initialiser has. */
START_TEST(defaults)
{
  freeair_humidity_given g;
  ck_assert_int_eq(freeair_humidity_given_init(&g, sizeof g), FREEAIR_OK);
  ck_assert_int_eq(g.model, FREEAIR_ENHANCEMENT_VIRIAL);
  ck_assert_int_eq(g.wick, FREEAIR_SATURATION_OVER_ICE);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 60);
  tcase_add_test(all, every_pair);
  tcase_add_test(all, enhancement);
  tcase_add_test(all, dry);
  tcase_add_test(all, defaults);
  return run_case("humidity", all);
}
