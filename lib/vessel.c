/* SPDX-License-Identifier: MIT */
#include <freeair/flow.h>
#include <freeair/status.h>
#include <freeair/verdict.h>
#include <freeair/vessel.h>

#include "internal/air.h"
#include "internal/check.h"

static const double test_tnt_j_kg = 4266920.0; /* ASME PCC-2 */

static int contents_valid(double p_pa, double p_atm_pa, double v_m3)
{
  return freeair__closed(p_pa, 1.0, 1e9) && freeair__closed(p_atm_pa, 1000.0, 120000.0) &&
         freeair__closed(v_m3, 1e-9, 1e6) && p_pa >= p_atm_pa;
}

/* (1 + x) ln(1 + x) - x for x >= 0, by its series where the terms nearly cancel */
static double availability(double x)
{
  if (x > 0.25) return (1.0 + x) * log1p(x) - x;
  double sum = 0.0;
  double power = x * x;
  for (int j = 2; j < 40; j++) {
    sum += (j % 2 == 0 ? power : -power) / (j * (j - 1.0));
    power *= x;
  }
  return sum;
}

int32_t freeair_vessel_stored_energy(double p_pa, double p_atm_pa, double v_m3, double k, double *brode_j,
                                     double *isentropic_j, double *isothermal_j, double *available_j)
{
  freeair__set_nan(brode_j);
  freeair__set_nan(isentropic_j);
  freeair__set_nan(isothermal_j);
  freeair__set_nan(available_j);
  if (brode_j == NULL || isentropic_j == NULL || isothermal_j == NULL || available_j == NULL) return FREEAIR_ERR_NULL;
  if (!contents_valid(p_pa, p_atm_pa, v_m3) || !freeair__upto(k, 1.0, 2.0)) return FREEAIR_ERR_DOMAIN;
  double excess = (p_pa - p_atm_pa) / p_atm_pa;
  double log_ratio = log1p(excess);
  *brode_j = (p_pa - p_atm_pa) * v_m3 / (k - 1.0);
  *isentropic_j = -p_pa * v_m3 / (k - 1.0) * expm1(-(k - 1.0) / k * log_ratio);
  *isothermal_j = p_pa * v_m3 * log_ratio;
  *available_j = p_atm_pa * v_m3 * availability(excess);
  return FREEAIR_OK;
}

int32_t freeair_vessel_test_energy(double p_pa, double p_atm_pa, double v_m3, double *energy_j, double *tnt_kg)
{
  freeair__set_nan(energy_j);
  freeair__set_nan(tnt_kg);
  if (energy_j == NULL || tnt_kg == NULL) return FREEAIR_ERR_NULL;
  if (!contents_valid(p_pa, p_atm_pa, v_m3)) return FREEAIR_ERR_DOMAIN;
  *energy_j = -2.5 * p_pa * v_m3 * expm1(-0.286 * log1p((p_pa - p_atm_pa) / p_atm_pa));
  *tnt_kg = *energy_j / test_tnt_j_kg;
  return FREEAIR_OK;
}

int32_t freeair_vessel_tnt_equivalent(double energy_j, double tnt_j_kg, double *tnt_kg)
{
  if (tnt_kg == NULL) return FREEAIR_ERR_NULL;
  *tnt_kg = NAN;
  if (!freeair__closed(energy_j, 0.0, 1e15) || !freeair__closed(tnt_j_kg, 1e6, 1e7)) return FREEAIR_ERR_DOMAIN;
  *tnt_kg = energy_j / tnt_j_kg;
  return FREEAIR_OK;
}

int32_t freeair_vessel_test_distance(double energy_j, double *distance_m)
{
  if (distance_m == NULL) return FREEAIR_ERR_NULL;
  *distance_m = NAN;
  if (!freeair__closed(energy_j, 0.0, 1e15)) return FREEAIR_ERR_DOMAIN;
  double scaled = 20.0 * cbrt(2.0 * energy_j / test_tnt_j_kg);
  double least = energy_j <= 135.5e6 ? 30.0 : energy_j <= 271e6 ? 60.0 : 0.0;
  *distance_m = scaled > least ? scaled : least;
  return FREEAIR_OK;
}

static int shell_valid(double dp_pa, double radius_m, double wall_m)
{
  return freeair__closed(dp_pa, 0.0, 1e9) && freeair__closed(radius_m, 1e-3, 100.0) &&
         freeair__closed(wall_m, 1e-5, 10.0);
}

static int32_t thin_wall_status(double radius_m, double wall_m)
{
  return 10.0 * wall_m > radius_m ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}

int32_t freeair_vessel_shell_stress(double dp_pa, double radius_m, double wall_m, double *hoop_pa,
                                    double *longitudinal_pa)
{
  freeair__set_nan(hoop_pa);
  freeair__set_nan(longitudinal_pa);
  if (hoop_pa == NULL || longitudinal_pa == NULL) return FREEAIR_ERR_NULL;
  if (!shell_valid(dp_pa, radius_m, wall_m)) return FREEAIR_ERR_DOMAIN;
  *hoop_pa = dp_pa * radius_m / wall_m;
  *longitudinal_pa = 0.5 * *hoop_pa;
  return thin_wall_status(radius_m, wall_m);
}

int32_t freeair_vessel_sphere_stress(double dp_pa, double radius_m, double wall_m, double *stress_pa)
{
  if (stress_pa == NULL) return FREEAIR_ERR_NULL;
  *stress_pa = NAN;
  if (!shell_valid(dp_pa, radius_m, wall_m)) return FREEAIR_ERR_DOMAIN;
  *stress_pa = 0.5 * dp_pa * radius_m / wall_m;
  return thin_wall_status(radius_m, wall_m);
}

static int material_valid(double stress_pa, double joint_efficiency, double corrosion_m)
{
  return freeair__closed(stress_pa, 1e6, 1e9) && freeair__closed(joint_efficiency, 0.3, 1.0) &&
         freeair__closed(corrosion_m, 0.0, 0.1);
}

int32_t freeair_vessel_wall_required(double dp_pa, double radius_m, double stress_pa, double joint_efficiency,
                                     double corrosion_m, double *wall_m)
{
  if (wall_m == NULL) return FREEAIR_ERR_NULL;
  *wall_m = NAN;
  if (!freeair__closed(dp_pa, 0.0, 1e9) || !freeair__closed(radius_m, 1e-3, 100.0) ||
      !material_valid(stress_pa, joint_efficiency, corrosion_m))
    return FREEAIR_ERR_DOMAIN;
  double strength = stress_pa * joint_efficiency;
  if (dp_pa > 0.385 * strength) return FREEAIR_ERR_NO_SOLUTION;
  *wall_m = dp_pa * (radius_m + corrosion_m) / (strength - 0.6 * dp_pa) + corrosion_m;
  return FREEAIR_OK;
}

int32_t freeair_vessel_pressure_allowable(double wall_m, double outside_radius_m, double stress_pa,
                                          double joint_efficiency, double corrosion_m, double *dp_pa)
{
  if (dp_pa == NULL) return FREEAIR_ERR_NULL;
  *dp_pa = NAN;
  if (!freeair__closed(wall_m, 1e-5, 1.0) || !freeair__closed(outside_radius_m, 1e-3, 100.0) ||
      !material_valid(stress_pa, joint_efficiency, corrosion_m))
    return FREEAIR_ERR_DOMAIN;
  double wall = wall_m - corrosion_m;
  if (wall <= 0.0 || 3.0 * wall > outside_radius_m) return FREEAIR_ERR_NO_SOLUTION;
  *dp_pa = stress_pa * joint_efficiency * wall / (outside_radius_m - 0.4 * wall);
  return FREEAIR_OK;
}

int32_t freeair_vessel_relief_capacity(double area_m2, double coefficient, double p_relieving_pa, double t_k,
                                       double p_back_pa, double p_ref_pa, double t_ref_k, double *q_m3_s)
{
  if (q_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q_m3_s = NAN;
  if (!freeair__closed(area_m2, 1e-9, 1.0) || !freeair__closed(coefficient, 0.01, 1.0) ||
      !freeair__closed(p_relieving_pa, 1000.0, 1e8) || !freeair__closed(t_k, 50.0, 2000.0) ||
      !freeair__closed(p_back_pa, 0.0, 1e8) || !freeair__closed(p_ref_pa, 1000.0, 1e6) ||
      !freeair__closed(t_ref_k, 50.0, 2000.0))
    return FREEAIR_ERR_DOMAIN;
  double mass;
  int32_t status = freeair_flow_mass_flow(coefficient * area_m2, p_relieving_pa, t_k, p_back_pa, FREEAIR__AIR_K,
                                          FREEAIR__AIR_R, &mass);
  if (status < 0) return status;
  *q_m3_s = mass * FREEAIR__AIR_R * t_ref_k / p_ref_pa;
  return FREEAIR_OK;
}

int32_t freeair_vessel_relief_verdict(double capacity_m3_s, double capacity_uncertainty_m3_s, double delivery_m3_s,
                                      double delivery_uncertainty_m3_s, double confidence, double *margin,
                                      int32_t *verdict)
{
  freeair__set_nan(margin);
  if (verdict != NULL) *verdict = FREEAIR_VERDICT_CANNOT_TELL;
  if (margin == NULL || verdict == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(capacity_m3_s, 0.0, 1e4) || !freeair__closed(capacity_uncertainty_m3_s, 0.0, 1e4) ||
      !freeair__closed(delivery_m3_s, 1e-12, 1e4) || !freeair__closed(delivery_uncertainty_m3_s, 0.0, 1e4) ||
      !freeair__open(confidence, 0.5, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *margin = capacity_m3_s / delivery_m3_s;
  double uncertainty = hypot(capacity_uncertainty_m3_s, delivery_uncertainty_m3_s);
  return freeair_verdict_decide(capacity_m3_s - delivery_m3_s, uncertainty, 0.0, INFINITY, confidence, verdict);
}
