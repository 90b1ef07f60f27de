/* SPDX-License-Identifier: MIT */
#include <freeair/energy.h>
#include <freeair/status.h>

#include "internal/check.h"

int32_t freeair_energy_zero_load_share(int32_t control, double *share)
{
  freeair__set_nan(share);
  if (share == NULL) return FREEAIR_ERR_NULL;
  switch (control) {
  case FREEAIR_ENERGY_START_STOP: *share = 0.0; return FREEAIR_OK;
  case FREEAIR_ENERGY_LOAD_UNLOAD: *share = 0.25; return FREEAIR_OK;
  case FREEAIR_ENERGY_MODULATION: *share = 0.7; return FREEAIR_OK;
  case FREEAIR_ENERGY_VARIABLE_SPEED: *share = 0.1; return FREEAIR_OK;
  default: return FREEAIR_ERR_DOMAIN;
  }
}

static double part_load(double zero_load, double flow_share)
{
  return zero_load + (1.0 - zero_load) * flow_share;
}

int32_t freeair_energy_part_load(double full_w, double zero_load, double flow_share, double *power_w,
                                 double *specific_ratio)
{
  freeair__set_nan(power_w);
  freeair__set_nan(specific_ratio);
  if (power_w == NULL || specific_ratio == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(full_w, 0.0, 1e9) || !freeair__closed(zero_load, 0.0, 1.0) ||
      !freeair__closed(flow_share, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  const double share = part_load(zero_load, flow_share);
  *power_w = full_w * share;
  *specific_ratio = flow_share > 0.0 ? share / flow_share : INFINITY;
  return FREEAIR_OK;
}

int32_t freeair_energy_from_times(double load_w, double unload_w, double load_s, double unload_s, double *mean_w,
                                  double *energy_j)
{
  freeair__set_nan(mean_w);
  freeair__set_nan(energy_j);
  if (mean_w == NULL || energy_j == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(load_w, 0.0, 1e9) || !freeair__closed(unload_w, 0.0, 1e9) ||
      !freeair__closed(load_s, 0.0, 1e10) || !freeair__closed(unload_s, 0.0, 1e10) || !(load_s + unload_s > 0.0))
    return FREEAIR_ERR_DOMAIN;
  const double energy = load_w * load_s + unload_w * unload_s;
  *mean_w = energy / (load_s + unload_s);
  *energy_j = energy;
  return FREEAIR_OK;
}

int32_t freeair_energy_input_power(double shaft_w, double motor_efficiency, double drive_efficiency, double *input_w)
{
  freeair__set_nan(input_w);
  if (input_w == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(shaft_w, 0.0, 1e9) || !freeair__closed(motor_efficiency, 0.05, 1.0) ||
      !freeair__closed(drive_efficiency, 0.05, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *input_w = shaft_w / (motor_efficiency * drive_efficiency);
  return FREEAIR_OK;
}

int32_t freeair_energy_cost(double power_w, double running_s, double price_1_j, double emission_kg_j, double *energy_j,
                            double *cost, double *emission_kg)
{
  freeair__set_nan(energy_j);
  freeair__set_nan(cost);
  freeair__set_nan(emission_kg);
  if (energy_j == NULL || cost == NULL || emission_kg == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(power_w, 0.0, 1e9) || !freeair__closed(running_s, 0.0, 1e10) ||
      !freeair__closed(price_1_j, 0.0, 1.0) || !freeair__closed(emission_kg_j, 0.0, 1e-3))
    return FREEAIR_ERR_DOMAIN;
  const double energy = power_w * running_s;
  *energy_j = energy;
  *cost = energy * price_1_j;
  *emission_kg = energy * emission_kg_j;
  return FREEAIR_OK;
}

int32_t freeair_energy_from_profile(const double *flow_m3_s, const double *duration_s, size_t n, double capacity_m3_s,
                                    double full_w, double zero_load, double *energy_j, double *air_m3,
                                    double *missing_m3, double *specific_j_m3)
{
  freeair__set_nan(energy_j);
  freeair__set_nan(air_m3);
  freeair__set_nan(missing_m3);
  freeair__set_nan(specific_j_m3);
  if (flow_m3_s == NULL || duration_s == NULL || energy_j == NULL || air_m3 == NULL || missing_m3 == NULL ||
      specific_j_m3 == NULL)
    return FREEAIR_ERR_NULL;
  if (!freeair__closed(capacity_m3_s, 1e-9, 1e4) || !freeair__closed(full_w, 0.0, 1e9) ||
      !freeair__closed(zero_load, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  double energy = 0.0;
  double air = 0.0;
  double missing = 0.0;
  double time = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!freeair__closed(flow_m3_s[i], 0.0, 1e4) || !freeair__closed(duration_s[i], 0.0, 1e9))
      return FREEAIR_ERR_DOMAIN;
    const double made = fmin(flow_m3_s[i], capacity_m3_s);
    energy += full_w * part_load(zero_load, made / capacity_m3_s) * duration_s[i];
    air += made * duration_s[i];
    missing += (flow_m3_s[i] - made) * duration_s[i];
    time += duration_s[i];
  }
  if (!(time > 0.0)) return FREEAIR_ERR_DATA;
  *energy_j = energy;
  *air_m3 = air;
  *missing_m3 = missing;
  *specific_j_m3 = air > 0.0 ? energy / air : INFINITY;
  return missing > 0.0 ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}

int32_t freeair_energy_heat_recovery(double power_w, double running_s, double recoverable, double used,
                                     double heater_efficiency, double *heat_j, double *fuel_j)
{
  freeair__set_nan(heat_j);
  freeair__set_nan(fuel_j);
  if (heat_j == NULL || fuel_j == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(power_w, 0.0, 1e9) || !freeair__closed(running_s, 0.0, 1e10) ||
      !freeair__closed(recoverable, 0.0, 1.0) || !freeair__closed(used, 0.0, 1.0) ||
      !freeair__closed(heater_efficiency, 0.05, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *heat_j = power_w * running_s * recoverable * used;
  *fuel_j = *heat_j / heater_efficiency;
  return FREEAIR_OK;
}

int32_t freeair_energy_payback(double investment, double saving, double interest, double *simple, double *discounted)
{
  freeair__set_nan(simple);
  freeair__set_nan(discounted);
  if (simple == NULL || discounted == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(investment, 0.0, 1e15) || !freeair__closed(saving, 1e-6, 1e15) ||
      !freeair__closed(interest, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  const double periods = investment / saving;
  if (!(interest * periods < 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  *simple = periods;
  *discounted = interest > 0.0 ? -log1p(-interest * periods) / log1p(interest) : periods;
  return FREEAIR_OK;
}
