/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air.h>
#include <freeair/dry_air_ideal.h>
#include <freeair/dry_air_transport.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static freeair_dry_air_properties at(double p, double t)
{
  freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
  ck_assert_int_ge(freeair_dry_air_state(p, t, &q), 0);
  return q;
}

/* A small generator of our own: the same numbers everywhere. */
static double uniform(void)
{
  static uint64_t state = 88172645463325252u;
  state ^= state << 13;
  state ^= state >> 7;
  state ^= state << 17;
  return (double)(state >> 11) / 9007199254740992.0;
}

/* The density found has the pressure asked for, anywhere in range but between
 * dew and bubble line. */
START_TEST(density_everywhere)
{
  int dome = 0;
  for (int i = 0; i < 100000; i++) {
    const double t = 60.0 * pow(2000.0 / 60.0, uniform());
    const double p = pow(10.0, -3.0 + uniform() * 12.30102);
    double rho;
    int32_t status = freeair_dry_air_density(p, t, &rho);
    if (status == FREEAIR_ERR_NO_SOLUTION) {
      double dew;
      double bubble;
      ck_assert_int_eq(freeair_dry_air_saturation(t, &dew, &bubble), FREEAIR_OK);
      ck_assert(p > dew && p < bubble);
      dome++;
      continue;
    }
    ck_assert_int_eq(status, FREEAIR_OK);
    freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
    ck_assert_int_ge(freeair_dry_air_state_from_density(rho, t, &q), 0);
    /* rounding of the density, times how steeply the pressure depends on it */
    const double steep = fmax(1.0, 1.0 / (p * q.compressibility_1_pa));
    ck_assert_double_eq_tol(q.p_pa, p, 2e-14 * steep * p);
    ck_assert(q.cv_j_kg_k > 0.0 && q.cp_j_kg_k > q.cv_j_kg_k && q.compressibility_1_pa > 0.0);
    ck_assert(q.viscosity_pas > 0.0 && q.conductivity_w_m_k > 0.0 && q.speed_of_sound_m_s > 0.0);
  }
  ck_assert_int_gt(dome, 0);
}
END_TEST

/* Both sides of the dome, and the last of it. */
START_TEST(dome)
{
  for (double t = 60.0; t <= 132.6; t += 0.1) {
    double dew;
    double bubble;
    double gas;
    double liquid;
    double none;
    ck_assert_int_eq(freeair_dry_air_saturation(t, &dew, &bubble), FREEAIR_OK);
    ck_assert(dew < bubble);
    ck_assert_int_eq(freeair_dry_air_density(dew * (1.0 - 1e-12), t, &gas), FREEAIR_OK);
    ck_assert_int_eq(freeair_dry_air_density(bubble * (1.0 + 1e-12), t, &liquid), FREEAIR_OK);
    ck_assert_int_eq(freeair_dry_air_density(0.5 * (dew + bubble), t, &none), FREEAIR_ERR_NO_SOLUTION);
    ck_assert(liquid > gas && isnan(none));
    freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
    ck_assert_int_eq(freeair_dry_air_state_from_density(0.5 * (gas + liquid), t, &q), FREEAIR_ERR_NO_SOLUTION);
    ck_assert(isnan(q.p_pa) && isnan(q.rho_kg_m3));
    ck_assert_int_ge(freeair_dry_air_state_from_density(gas * (1.0 - 1e-9), t, &q), 0);
    ck_assert_int_ge(freeair_dry_air_state_from_density(liquid * (1.0 + 1e-9), t, &q), 0);
  }
}
END_TEST

START_TEST(monotonic)
{
  for (double t = 132.7; t < 2000.0; t *= 1.07) {
    double last = 0.0;
    for (double p = 1.0; p <= 2e9; p *= 1.5) {
      const double rho = at(p, t).rho_kg_m3;
      ck_assert_double_gt(rho, last);
      last = rho;
    }
  }
  for (double p = 4e6; p <= 2e9; p *= 1.7) {
    double last = INFINITY;
    for (double t = 60.0; t <= 2000.0; t *= 1.02) {
      const double rho = at(p, t).rho_kg_m3;
      ck_assert_double_lt(rho, last);
      last = rho;
    }
  }
}
END_TEST

START_TEST(inverses)
{
  for (int i = 0; i < 20000; i++) {
    double dew = INFINITY;
    double bubble;
    double found;
    const double t = 60.0 * pow(2000.0 / 60.0, uniform());
    double p = pow(10.0, -3.0 + uniform() * 12.30102);
    if (t < 132.6312 && p < 3.79e6) {
      ck_assert_int_eq(freeair_dry_air_saturation(t, &dew, &bubble), FREEAIR_OK);
      if (p > dew) p = dew * uniform();
      if (p < 1e-3) continue;
    }
    const freeair_dry_air_properties q = at(p, t);
    /* rounding of h and s, over their slopes */
    const double h_noise = 3e-13 * (fabs(q.h_j_kg) + 287.0 * t * q.compressibility_factor) / q.cp_j_kg_k;
    const double s_noise = 3e-13 * (fabs(q.s_j_kg_k) + 5000.0) / q.cp_j_kg_k * t;
    ck_assert_int_eq(freeair_dry_air_temperature_from_enthalpy(p, q.h_j_kg, &found), FREEAIR_OK);
    ck_assert_double_eq_tol(found, t, 1e-12 * t + h_noise);
    ck_assert_int_eq(freeair_dry_air_temperature_from_entropy(p, q.s_j_kg_k, &found), FREEAIR_OK);
    ck_assert_double_eq_tol(found, t, 1e-12 * t + s_noise);
  }
}
END_TEST

/* At no pressure the real gas is the ideal one. */
START_TEST(ideal_limit)
{
  for (double t = 60.0; t <= 2000.0; t += 20.0) {
    const freeair_dry_air_properties q = at(1e-3, t);
    double x;
    ck_assert_int_eq(freeair_dry_air_ideal_enthalpy(t, &x), FREEAIR_OK);
    ck_assert_double_eq_tol(q.h_j_kg, x, 1e-4);
    ck_assert_int_eq(freeair_dry_air_ideal_entropy(1e-3, t, &x), FREEAIR_OK);
    ck_assert_double_eq_tol(q.s_j_kg_k, x, 1e-5);
    ck_assert_int_eq(freeair_dry_air_ideal_heat_capacity(t, &x), FREEAIR_OK);
    ck_assert_double_eq_tol(q.cp_j_kg_k, x, 1e-5);
    ck_assert_int_eq(freeair_dry_air_ideal_heat_capacity_ratio(t, &x), FREEAIR_OK);
    ck_assert_double_eq_tol(q.isentropic_exponent, x, 1e-9);
    ck_assert_int_eq(freeair_dry_air_ideal_speed_of_sound(t, &x), FREEAIR_OK);
    ck_assert_double_eq_tol(q.speed_of_sound_m_s, x, 1e-5);
    ck_assert_double_eq_tol(q.compressibility_factor, 1.0, 1e-7);
    ck_assert_double_eq_tol(q.expansion_1_k, 1.0 / t, 1e-8);
    ck_assert_int_ge(freeair_dry_air_transport_viscosity_from_density(0.0, t, &x), 0);
    ck_assert_double_eq_tol(q.viscosity_pas, x, 1e-12);
    ck_assert_int_ge(freeair_dry_air_transport_conductivity_from_density(0.0, t, &x), 0);
    ck_assert_double_eq_tol(q.conductivity_w_m_k, x, 1e-9);
  }
}
END_TEST

/* What is defined one through the other. */
START_TEST(identities)
{
  for (double t = 150.0; t <= 2000.0; t *= 1.3)
    for (double p = 10.0; p <= 1e9; p *= 7.0) {
      const freeair_dry_air_properties q = at(p, t);
      ck_assert_double_eq_tol(q.u_j_kg + p / q.rho_kg_m3, q.h_j_kg, 1e-9 * fabs(q.h_j_kg) + 1e-6);
      ck_assert_double_eq_tol(q.cp_j_kg_k / q.cv_j_kg_k, q.heat_capacity_ratio, 1e-14);
      const double w = q.speed_of_sound_m_s;
      ck_assert_double_eq_tol(q.rho_kg_m3 * w * w / p, q.isentropic_exponent, 1e-12 * q.isentropic_exponent);
      ck_assert_double_eq_tol(q.heat_capacity_ratio / (p * q.compressibility_1_pa), q.isentropic_exponent,
                              1e-12 * q.isentropic_exponent);
      ck_assert_double_eq_tol(q.cp_j_kg_k - q.cv_j_kg_k,
                              t * q.expansion_1_k * q.expansion_1_k / (q.compressibility_1_pa * q.rho_kg_m3),
                              1e-10 * q.cp_j_kg_k);
      ck_assert_double_eq_tol(q.joule_thomson_k_pa * q.rho_kg_m3 * q.cp_j_kg_k, t * q.expansion_1_k - 1.0, 1e-10);
      ck_assert_double_eq_tol(q.viscosity_pas * q.cp_j_kg_k / q.conductivity_w_m_k, q.prandtl_number, 1e-14);
    }
}
END_TEST

/* Throttling cools air near room temperature, about 0.2 K a bar, and heats it when hot enough. */
START_TEST(throttling)
{
  double t;
  ck_assert_int_eq(freeair_dry_air_temperature_from_enthalpy(1e5, at(8e5, 293.15).h_j_kg, &t), FREEAIR_OK);
  ck_assert(t < 293.15 - 1.4 && t > 293.15 - 1.9);
  ck_assert(at(8e5, 293.15).joule_thomson_k_pa > 0.0 && at(8e5, 1000.0).joule_thomson_k_pa < 0.0);
}
END_TEST

START_TEST(structure)
{
  freeair_dry_air_properties q;
  ck_assert_int_eq(freeair_dry_air_properties_init(&q, sizeof q), FREEAIR_OK);
  ck_assert_uint_eq(q.struct_size, sizeof q);
  ck_assert(isnan(q.prandtl_number));
  ck_assert_int_eq(freeair_dry_air_properties_init(&q, 8), FREEAIR_ERR_VERSION);
  q.struct_size = 8;
  ck_assert_int_eq(freeair_dry_air_state(1e5, 300.0, &q), FREEAIR_ERR_VERSION);
  ck_assert_int_eq(freeair_dry_air_state(1e5, 300.0, NULL), FREEAIR_ERR_NULL);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 120);
  tcase_add_test(all, density_everywhere);
  tcase_add_test(all, dome);
  tcase_add_test(all, monotonic);
  tcase_add_test(all, inverses);
  tcase_add_test(all, ideal_limit);
  tcase_add_test(all, identities);
  tcase_add_test(all, throttling);
  tcase_add_test(all, structure);
  return run_case("dry_air", all);
}
