/* SPDX-License-Identifier: MIT */
#include <freeair/condensate.h>
#include <freeair/enhancement.h>
#include <freeair/intercooler.h>
#include <freeair/saturation.h>
#include <freeair/status.h>
#include <freeair/wet_cooler.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* A flow at the outlet of a stage. */
static freeair_condensate_flow stage(double relative_humidity, double p_pa, double t_k)
{
  freeair_condensate_flow f = FREEAIR_CONDENSATE_FLOW_INIT;
  ck_assert_int_eq(freeair_condensate_inlet(0.1, 1e5, 303.15, relative_humidity, FREEAIR_ENHANCEMENT_VIRIAL,
                                            FREEAIR_SATURATION_OVER_WATER, &f),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_condensate_step(&f, p_pa, t_k, 0.0, &f), FREEAIR_OK);
  return f;
}

static freeair_condensate_flow cooled(int32_t arrangement, double ua, const freeair_condensate_flow *before,
                                      double coolant_w_k, double *coolant_out_k, double *heat_w)
{
  freeair_condensate_flow f = FREEAIR_CONDENSATE_FLOW_INIT;
  double e;
  ck_assert_int_eq(freeair_wet_cooler_outlet(arrangement, ua, before, before->p_pa, 0.0, coolant_w_k, 295.15, &f,
                                             coolant_out_k, heat_w, &e),
                   FREEAIR_OK);
  ck_assert(e >= 0.0 && e < 1.0);
  return f;
}

/* Energy and water are kept, and the size is found again from what the thermometers read. */
START_TEST(balances)
{
  for (int32_t a = FREEAIR_INTERCOOLER_COUNTERFLOW; a <= FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED; a++)
    for (double rh = 0.0; rh <= 0.91; rh += 0.45)
      for (double ua = 30.0; ua < 600.0; ua *= 4.0) {
        const freeair_condensate_flow before = stage(rh, 4e5, 430.0);
        double coolant;
        double heat;
        const freeair_condensate_flow after = cooled(a, ua, &before, 300.0, &coolant, &heat);
        ck_assert_double_eq_tol(before.enthalpy_w - after.enthalpy_w, heat, 1e-9 * heat);
        ck_assert_double_eq_tol(300.0 * (coolant - 295.15), heat, 1e-9 * heat);
        ck_assert_double_eq_tol(before.vapour_kg_s, after.vapour_kg_s + after.liquid_kg_s, 1e-15);
        ck_assert(after.t_k > 295.15 && after.t_k < 430.0);
        double again;
        double heat_again;
        double water;
        ck_assert_int_eq(freeair_wet_cooler_size_from_readings(a, &before, before.p_pa, after.t_k, 300.0, 295.15,
                                                               &again, &heat_again, &water),
                         FREEAIR_OK);
        ck_assert_double_eq_tol(again, ua, 1e-8 * ua);
        ck_assert_double_eq_tol(heat_again, heat, 1e-11 * heat);
        ck_assert_double_eq_tol(water, after.liquid_kg_s, 1e-12);
      }
}
END_TEST

/* Dry air in any arrangement: the cooler of topic intercooler, but for the heat capacity that it takes as constant. */
START_TEST(dry_air)
{
  for (int32_t a = FREEAIR_INTERCOOLER_COUNTERFLOW; a <= FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED; a++)
    for (double ua = 20.0; ua < 300.0; ua *= 2.0) {
      const freeair_condensate_flow before = stage(0.0, 4e5, 400.0);
      double coolant;
      double heat;
      double air_out;
      double coolant_out;
      double dry_heat;
      double e;
      const freeair_condensate_flow after = cooled(a, ua, &before, 400.0, &coolant, &heat);
      ck_assert_int_eq(freeair_intercooler_outlet(a, ua, heat / (400.0 - after.t_k), 400.0, 400.0, 295.15, &air_out,
                                                  &coolant_out, &dry_heat, &e),
                       FREEAIR_OK);
      ck_assert_double_eq_tol(after.t_k, air_out, 0.2);
      ck_assert_double_eq(after.liquid_kg_s, 0.0);
    }
}
END_TEST

/* More area cools more; damp air comes out warmer than dry of the same flow, and gives up more heat. */
START_TEST(more_area_and_damp_air)
{
  const freeair_condensate_flow dry = stage(0.0, 9e5, 420.0);
  freeair_condensate_flow damp = stage(0.9, 9e5, 420.0);
  double before = 420.0;
  double water = 0.0;
  for (double ua = 10.0; ua < 1000.0; ua *= 1.3) {
    double coolant;
    double heat;
    double heat_dry;
    const freeair_condensate_flow wet = cooled(FREEAIR_INTERCOOLER_COUNTERFLOW, ua, &damp, 400.0, &coolant, &heat);
    const freeair_condensate_flow other = cooled(FREEAIR_INTERCOOLER_COUNTERFLOW, ua, &dry, 400.0, &coolant, &heat_dry);
    ck_assert_double_lt(wet.t_k, before);
    ck_assert_double_ge(wet.liquid_kg_s, water);
    if (wet.liquid_kg_s > 1e-5) {
      ck_assert_double_gt(wet.t_k, other.t_k);
      ck_assert_double_gt(heat, heat_dry);
    }
    before = wet.t_k;
    water = wet.liquid_kg_s;
  }
  ck_assert_double_gt(water, 1e-3);
}
END_TEST

/* No cooler does nothing; a separator takes its share; a flow may be written over itself. */
START_TEST(ends)
{
  freeair_condensate_flow f = stage(0.9, 9e5, 420.0);
  const freeair_condensate_flow before = f;
  double coolant;
  double heat;
  double e;
  freeair_condensate_flow same = cooled(FREEAIR_INTERCOOLER_COUNTERFLOW, 0.0, &f, 300.0, &coolant, &heat);
  ck_assert_double_eq_tol(same.t_k, 420.0, 1e-12);
  ck_assert_double_eq_tol(heat, 0.0, 1e-6);
  ck_assert_int_eq(freeair_wet_cooler_outlet(FREEAIR_INTERCOOLER_COUNTERFLOW, 900.0, &f, 8.9e5, 0.75, 300.0, 295.15,
                                             &f, &coolant, &heat, &e),
                   FREEAIR_OK);
  ck_assert_double_gt(f.removed_kg_s, 0.0);
  ck_assert_double_eq_tol(f.removed_kg_s, 3.0 * f.liquid_kg_s, 1e-12);
  ck_assert_double_eq_tol(f.vapour_kg_s + f.liquid_kg_s + f.removed_kg_s, before.vapour_kg_s, 1e-15);
  ck_assert_double_eq_tol(f.relative_humidity, 1.0, 1e-9);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, balances);
  tcase_add_test(all, dry_air);
  tcase_add_test(all, more_area_and_damp_air);
  tcase_add_test(all, ends);
  return run_case("wet_cooler", all);
}
