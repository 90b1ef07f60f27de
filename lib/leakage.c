/* SPDX-License-Identifier: MIT */
#include <freeair/flow.h>
#include <freeair/leakage.h>
#include <freeair/status.h>

#include "internal/air.h"
#include "internal/check.h"

static const double pi = 3.14159265358979323846;

static int volume_valid(double v_m3)
{
  return freeair__closed(v_m3, 1e-6, 1e6);
}

static int temperature_valid(double t_k)
{
  return freeair__closed(t_k, 50.0, 2000.0);
}

static int reference_valid(double p_ref_pa, double t_ref_k)
{
  return freeair__closed(p_ref_pa, 1000.0, 1e6) && temperature_valid(t_ref_k);
}

static int barometer_valid(double p_atm_pa)
{
  return freeair__closed(p_atm_pa, 1000.0, 120000.0);
}

int32_t freeair_leakage_share_from_cycle(double load_s, double unload_s, double *share)
{
  if (share == NULL) return FREEAIR_ERR_NULL;
  *share = NAN;
  if (!freeair__closed(load_s, 0.0, 1e7) || !freeair__closed(unload_s, 0.0, 1e7) || !(load_s + unload_s > 0.0))
    return FREEAIR_ERR_DOMAIN;
  *share = load_s / (load_s + unload_s);
  return FREEAIR_OK;
}

int32_t freeair_leakage_flow_from_cycle(double load_s, double unload_s, double capacity_m3_s, double *q_m3_s)
{
  if (q_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q_m3_s = NAN;
  if (!freeair__closed(capacity_m3_s, 0.0, 1e4)) return FREEAIR_ERR_DOMAIN;
  double share;
  int32_t status = freeair_leakage_share_from_cycle(load_s, unload_s, &share);
  if (status < 0) return status;
  *q_m3_s = capacity_m3_s * share;
  return status;
}

int32_t freeair_leakage_mean_from_decay(double v_m3, double p1_pa, double t1_k, double p2_pa, double t2_k,
                                        double duration_s, double p_ref_pa, double t_ref_k, double *q_m3_s,
                                        double *mass_kg_s)
{
  freeair__set_nan(q_m3_s);
  freeair__set_nan(mass_kg_s);
  if (q_m3_s == NULL || mass_kg_s == NULL) return FREEAIR_ERR_NULL;
  if (!volume_valid(v_m3) || !freeair__closed(p1_pa, 1.0, 1e8) || !temperature_valid(t1_k) ||
      !freeair__closed(p2_pa, 1.0, 1e8) || !temperature_valid(t2_k) || !freeair__closed(duration_s, 1e-3, 1e7) ||
      !reference_valid(p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  /* p1/T1 - p2/T2, exact in the fall of pressure where the temperature stays */
  double lost = ((p1_pa - p2_pa) + p1_pa * ((t2_k - t1_k) / t1_k)) / t2_k;
  *q_m3_s = v_m3 * lost * t_ref_k / (p_ref_pa * duration_s);
  *mass_kg_s = v_m3 * lost / (FREEAIR__AIR_R * duration_s);
  return lost >= 0.0 ? FREEAIR_OK : FREEAIR_WARN_INCONSISTENT;
}

int32_t freeair_leakage_at_pressure_from_decay(double v_m3, double p1_pa, double p2_pa, double duration_s,
                                               double t_k, double p_pa, double p_ref_pa, double t_ref_k,
                                               double *q_m3_s)
{
  if (q_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q_m3_s = NAN;
  if (!volume_valid(v_m3) || !freeair__closed(p1_pa, 1.0, 1e8) || !freeair__closed(p2_pa, 1.0, 1e8) ||
      !freeair__closed(duration_s, 1e-3, 1e7) || !temperature_valid(t_k) || !freeair__closed(p_pa, 1.0, 1e8) ||
      !reference_valid(p_ref_pa, t_ref_k) || p2_pa > p1_pa)
    return FREEAIR_ERR_DOMAIN;
  double log_ratio = p1_pa < 2.0 * p2_pa ? log1p((p1_pa - p2_pa) / p2_pa) : log(p1_pa / p2_pa);
  *q_m3_s = v_m3 * log_ratio / duration_s * p_pa * t_ref_k / (t_k * p_ref_pa);
  return FREEAIR_OK;
}

int32_t freeair_leakage_flow_at_pressure(double q1_m3_s, double p1_pa, double p2_pa, double p_atm_pa,
                                         double *q2_m3_s)
{
  if (q2_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q2_m3_s = NAN;
  if (!freeair__closed(q1_m3_s, 0.0, 1e4) || !freeair__closed(p1_pa, 1000.0, 1e8) ||
      !freeair__closed(p2_pa, 1000.0, 1e8) || !barometer_valid(p_atm_pa) || p1_pa <= p_atm_pa || p2_pa < p_atm_pa)
    return FREEAIR_ERR_DOMAIN;
  const double any_area = 1.0;
  const double any_temperature = 300.0;
  double m1;
  double m2;
  freeair_flow_mass_flow(any_area, p1_pa, any_temperature, p_atm_pa, FREEAIR__AIR_K, FREEAIR__AIR_R, &m1);
  freeair_flow_mass_flow(any_area, p2_pa, any_temperature, p_atm_pa, FREEAIR__AIR_K, FREEAIR__AIR_R, &m2);
  *q2_m3_s = q1_m3_s * (m2 / m1);
  return FREEAIR_OK;
}

int32_t freeair_leakage_flow_from_readings(const double *p_pa, const double *q_m3_s, size_t n, double p_at_pa,
                                           double *q_at_m3_s, double *slope_m3_s_pa)
{
  freeair__set_nan(q_at_m3_s);
  freeair__set_nan(slope_m3_s_pa);
  if (p_pa == NULL || q_m3_s == NULL || q_at_m3_s == NULL || slope_m3_s_pa == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(p_at_pa, 0.0, 1e8) || n > 100000) return FREEAIR_ERR_DOMAIN;
  if (n < 2) return FREEAIR_ERR_DATA;
  double p_mean = 0.0;
  double q_mean = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!freeair__closed(p_pa[i], 0.0, 1e8) || !freeair__closed(q_m3_s[i], -1e4, 1e4)) return FREEAIR_ERR_DOMAIN;
    p_mean += (p_pa[i] - p_mean) / (double)(i + 1);
    q_mean += (q_m3_s[i] - q_mean) / (double)(i + 1);
  }
  double spread = 0.0;
  double product = 0.0;
  for (size_t i = 0; i < n; i++) {
    spread += (p_pa[i] - p_mean) * (p_pa[i] - p_mean);
    product += (p_pa[i] - p_mean) * (q_m3_s[i] - q_mean);
  }
  if (!(sqrt(spread) > 1e-12 * p_mean)) return FREEAIR_ERR_DATA;
  *slope_m3_s_pa = product / spread;
  *q_at_m3_s = q_mean + *slope_m3_s_pa * (p_at_pa - p_mean);
  return FREEAIR_OK;
}

static int hole_valid(double coefficient, double p_line_pa, double t_line_k, double p_atm_pa)
{
  return freeair__closed(coefficient, 0.01, 1.0) && freeair__closed(p_line_pa, 1000.0, 1e8) &&
         temperature_valid(t_line_k) && barometer_valid(p_atm_pa) && p_line_pa > p_atm_pa;
}

int32_t freeair_leakage_flow_from_hole(double diameter_m, double coefficient, double p_line_pa, double t_line_k,
                                       double p_atm_pa, double p_ref_pa, double t_ref_k, double *q_m3_s,
                                       double *mass_kg_s)
{
  freeair__set_nan(q_m3_s);
  freeair__set_nan(mass_kg_s);
  if (q_m3_s == NULL || mass_kg_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(diameter_m, 1e-6, 1.0) || !hole_valid(coefficient, p_line_pa, t_line_k, p_atm_pa) ||
      !reference_valid(p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  double area = 0.25 * pi * diameter_m * diameter_m * coefficient;
  int32_t status =
      freeair_flow_mass_flow(area, p_line_pa, t_line_k, p_atm_pa, FREEAIR__AIR_K, FREEAIR__AIR_R, mass_kg_s);
  if (status < 0) return status;
  *q_m3_s = *mass_kg_s * FREEAIR__AIR_R * t_ref_k / p_ref_pa;
  return status;
}

int32_t freeair_leakage_hole_from_flow(double q_m3_s, double coefficient, double p_line_pa, double t_line_k,
                                       double p_atm_pa, double p_ref_pa, double t_ref_k, double *diameter_m)
{
  if (diameter_m == NULL) return FREEAIR_ERR_NULL;
  *diameter_m = NAN;
  if (!freeair__closed(q_m3_s, 0.0, 1e4) || !hole_valid(coefficient, p_line_pa, t_line_k, p_atm_pa) ||
      !reference_valid(p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  /* the mass flow of one square metre; the flow is in proportion to the area */
  double mass;
  freeair_flow_mass_flow(1.0, p_line_pa, t_line_k, p_atm_pa, FREEAIR__AIR_K, FREEAIR__AIR_R, &mass);
  double area = q_m3_s * p_ref_pa / (FREEAIR__AIR_R * t_ref_k) / (mass * coefficient);
  *diameter_m = sqrt(4.0 * area / pi);
  return FREEAIR_OK;
}

int32_t freeair_leakage_power(double q_m3_s, double p_ref_pa, double t_ref_k, double p_in_pa, double t_in_k,
                              double p_line_pa, double efficiency, double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!freeair__closed(q_m3_s, 0.0, 1e4) || !reference_valid(p_ref_pa, t_ref_k) ||
      !freeair__closed(p_in_pa, 1000.0, 1e6) || !temperature_valid(t_in_k) ||
      !freeair__closed(p_line_pa, 1000.0, 1e8) || !freeair__closed(efficiency, 0.01, 1.0) || p_line_pa < p_in_pa)
    return FREEAIR_ERR_DOMAIN;
  const double g = (FREEAIR__AIR_K - 1.0) / FREEAIR__AIR_K;
  double inlet_flow_pa_m3_s = q_m3_s * p_ref_pa / t_ref_k * t_in_k; /* m R T_in */
  *power_w = inlet_flow_pa_m3_s / g * expm1(g * log1p((p_line_pa - p_in_pa) / p_in_pa)) / efficiency;
  return FREEAIR_OK;
}

int32_t freeair_leakage_cost(double power_w, double running_s, double price_1_j, double *energy_j, double *cost)
{
  freeair__set_nan(energy_j);
  freeair__set_nan(cost);
  if (energy_j == NULL || cost == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(power_w, 0.0, 1e8) || !freeair__closed(running_s, 0.0, 1e10) ||
      !freeair__closed(price_1_j, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *energy_j = power_w * running_s;
  *cost = *energy_j * price_1_j;
  return FREEAIR_OK;
}
