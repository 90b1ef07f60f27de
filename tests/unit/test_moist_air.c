/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air.h>
#include <freeair/enhancement.h>
#include <freeair/moist_air.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double uniform(void)
{
  static uint64_t state = 88172645463325252u;
  state ^= state << 13;
  state ^= state >> 7;
  state ^= state << 17;
  return (double)(state >> 11) / 9007199254740992.0;
}

/* Humidity ratio of saturated air, at most ten. */
static double saturated(double p, double t)
{
  double e;
  double f;
  ck_assert_int_eq(freeair_saturation_pressure(t, FREEAIR_SATURATION_OVER_WATER, &e), FREEAIR_OK);
  if (freeair_enhancement_factor(p, t, FREEAIR_SATURATION_OVER_WATER, &f) < 0) return 10.0;
  const double x = f * e / p;
  return fmin(0.62195 * x / (1.0 - x), 10.0);
}

static freeair_moist_air_properties at(double p, double t, double w)
{
  freeair_moist_air_properties q = FREEAIR_MOIST_AIR_PROPERTIES_INIT;
  ck_assert_msg(freeair_moist_air_state(p, t, w, &q) >= 0, "%g Pa %g K %g", p, t, w);
  return q;
}

/* Any state that is a gas is found, and found again from its density. */
START_TEST(everywhere)
{
  for (int i = 0; i < 30000; i++) {
    const double t = 173.15 + 400.0 * uniform();
    const double p = pow(10.0, 7.0 * uniform());
    const double w = saturated(p, t) * uniform();
    const freeair_moist_air_properties q = at(p, t, w);
    freeair_moist_air_properties r = FREEAIR_MOIST_AIR_PROPERTIES_INIT;
    if (q.rho_kg_m3 > 200.0) continue;
    ck_assert_int_ge(freeair_moist_air_state_from_density(q.rho_kg_m3, t, w, &r), 0);
    ck_assert_double_eq_tol(r.p_pa, p, 3e-14 * p);
    ck_assert_double_eq(r.h_j_kg, q.h_j_kg);
    ck_assert(q.cv_j_kg_k > 0.0 && q.cp_j_kg_k > q.cv_j_kg_k && q.speed_of_sound_m_s > 0.0);
  }
}
END_TEST

/* Without vapour it is the dry air of the other topic, to rounding. */
START_TEST(dry)
{
  for (double t = 175.0; t <= 570.0; t += 45.0)
    for (double p = 1e3; p <= 1e7; p *= 5.0) {
      freeair_dry_air_properties d = FREEAIR_DRY_AIR_PROPERTIES_INIT;
      ck_assert_int_eq(freeair_dry_air_state(p, t, &d), FREEAIR_OK);
      const freeair_moist_air_properties q = at(p, t, 0.0);
      ck_assert_double_eq_tol(q.rho_kg_m3, d.rho_kg_m3, 1e-13 * d.rho_kg_m3);
      ck_assert_double_eq_tol(q.h_j_kg, d.h_j_kg, 1e-6);
      ck_assert_double_eq_tol(q.s_j_kg_k, d.s_j_kg_k, 1e-9);
      ck_assert_double_eq_tol(q.cp_j_kg_k, d.cp_j_kg_k, 1e-9);
      ck_assert_double_eq_tol(q.speed_of_sound_m_s, d.speed_of_sound_m_s, 1e-9);
      ck_assert_double_eq_tol(q.joule_thomson_k_pa, d.joule_thomson_k_pa, 1e-16);
      ck_assert_double_eq_tol(q.compressibility_factor, d.compressibility_factor, 1e-13);
    }
}
END_TEST

/* Moist air is lighter and holds more enthalpy than dry; vapour speeds up sound. */
START_TEST(monotonic)
{
  for (double t = 273.15; t <= 470.0; t += 20.0)
    for (double p = 1e5; p <= 4e6; p *= 2.0) {
      const double most = saturated(p, t);
      freeair_moist_air_properties last = at(p, t, 0.0);
      for (double share = 0.25; share <= 1.0; share += 0.25) {
        const freeair_moist_air_properties q = at(p, t, share * most);
        ck_assert_double_lt(q.rho_kg_m3, last.rho_kg_m3);
        ck_assert_double_gt(q.h_dry_j_kg, last.h_dry_j_kg);
        ck_assert_double_gt(q.v_dry_m3_kg, last.v_dry_m3_kg);
        last = q;
      }
    }
}
END_TEST

/* More vapour than saturated air holds is no gas; a thousandth more is the margin of the equations. */
START_TEST(fog)
{
  for (double t = 233.15; t <= 353.15; t += 20.0)
    for (double p = 1e5; p <= 2e6; p *= 2.0) {
      const double w = saturated(p, t);
      double h;
      double v;
      if (w >= 10.0) continue;
      ck_assert_int_eq(freeair_moist_air_enthalpy(p, t, 0.9999 * w, &h), FREEAIR_OK);
      ck_assert_int_eq(freeair_moist_air_volume(p, t, 0.9999 * w, &v), FREEAIR_OK);
      ck_assert_int_eq(freeair_moist_air_enthalpy(p, t, 1.02 * w, &h), FREEAIR_ERR_NO_SOLUTION);
      ck_assert(isnan(h));
      ck_assert_int_eq(freeair_moist_air_volume(p, t, 1.02 * w, &v), FREEAIR_ERR_NO_SOLUTION);
    }
}
END_TEST

/* The formula of legal metrology, within its uncertainty of 22e-6, all over its range. */
START_TEST(cipm)
{
  for (double p = 60e3; p <= 110e3; p += 5e3)
    for (double t = 288.15; t <= 300.15; t += 2.0)
      for (double rh = 0.0; rh <= 1.0; rh += 0.25) {
        double helmholtz;
        double metrology;
        ck_assert_int_eq(freeair_moist_air_density(p, t, rh, &helmholtz), FREEAIR_OK);
        ck_assert_int_eq(freeair_moist_air_density_cipm(p, t, rh, NAN, &metrology), FREEAIR_OK);
        ck_assert_double_eq_tol(helmholtz, metrology, 22e-6 * metrology);
      }
}
END_TEST

START_TEST(structure)
{
  freeair_moist_air_properties q;
  ck_assert_int_eq(freeair_moist_air_properties_init(&q, sizeof q), FREEAIR_OK);
  ck_assert_int_eq(freeair_moist_air_properties_init(&q, 16), FREEAIR_ERR_VERSION);
  q.struct_size = 8;
  ck_assert_int_eq(freeair_moist_air_state(1e5, 300.0, 0.01, &q), FREEAIR_ERR_VERSION);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 60);
  tcase_add_test(all, everywhere);
  tcase_add_test(all, dry);
  tcase_add_test(all, monotonic);
  tcase_add_test(all, fog);
  tcase_add_test(all, cipm);
  tcase_add_test(all, structure);
  return run_case("moist_air", all);
}
