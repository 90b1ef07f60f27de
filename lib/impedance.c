/* SPDX-License-Identifier: MIT */
#include <freeair/impedance.h>
#include <freeair/status.h>

#include "internal/check.h"

int32_t freeair_impedance_from_phase(double voltage_v, double current_a, double phase_rad, double *r_ohm,
                                     double *x_ohm, double *z_ohm)
{
  freeair__set_nan(r_ohm);
  freeair__set_nan(x_ohm);
  freeair__set_nan(z_ohm);
  if (r_ohm == NULL || x_ohm == NULL || z_ohm == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__upto(voltage_v, 0.0, 1e6) || !freeair__closed(current_a, 1e-9, 1e6) ||
      !freeair__closed(phase_rad, -1.5708, 1.5708))
    return FREEAIR_ERR_DOMAIN;
  *z_ohm = voltage_v / current_a;
  *r_ohm = *z_ohm * cos(phase_rad);
  *x_ohm = *z_ohm * sin(phase_rad);
  return FREEAIR_OK;
}

int32_t freeair_impedance_from_power(double voltage_v, double current_a, double power_w, double *r_ohm,
                                     double *x_ohm, double *z_ohm, double *power_factor)
{
  freeair__set_nan(r_ohm);
  freeair__set_nan(x_ohm);
  freeair__set_nan(z_ohm);
  freeair__set_nan(power_factor);
  if (r_ohm == NULL || x_ohm == NULL || z_ohm == NULL || power_factor == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__upto(voltage_v, 0.0, 1e6) || !freeair__closed(current_a, 1e-9, 1e6) ||
      !freeair__closed(power_w, 0.0, 1e12))
    return FREEAIR_ERR_DOMAIN;
  const double apparent = voltage_v * current_a;
  if (power_w > apparent) return FREEAIR_ERR_NO_SOLUTION;
  *power_factor = power_w / apparent;
  *z_ohm = voltage_v / current_a;
  *r_ohm = *z_ohm * *power_factor;
  *x_ohm = *z_ohm * sqrt((apparent - power_w) / apparent * (1.0 + *power_factor));
  return FREEAIR_OK;
}
