/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air_ideal.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/dry_air.h"

static const double gas_constant = FREEAIR__DRY_AIR_GAS_CONSTANT;
static const double temperature_least = 60.0;
static const double temperature_most = 2000.0;

/* Enthalpy, heat capacity, and entropy at the reducing density, all over R or R T. */
typedef struct caloric {
  double enthalpy;
  double capacity;
  double entropy;
} caloric;

static caloric caloric_at(double t_k)
{
  freeair__helmholtz ideal;
  freeair__dry_air_ideal(FREEAIR__DRY_AIR_REDUCING_T / t_k, &ideal);
  return (caloric){1.0 + ideal.t, 1.0 - ideal.tt, ideal.t - ideal.a};
}

/* Entropy over R at a pressure. */
static double entropy(double p_pa, double t_k)
{
  return caloric_at(t_k).entropy - log(p_pa / (gas_constant * t_k * FREEAIR__DRY_AIR_REDUCING_KG_M3));
}

static int temperature_in_range(double t_k)
{
  return freeair__closed(t_k, temperature_least, temperature_most);
}

int32_t freeair_dry_air_ideal_density(double p_pa, double t_k, double *rho_kg_m3)
{
  if (rho_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  *rho_kg_m3 = NAN;
  if (!freeair__upto(p_pa, 0.0, 2e9) || !temperature_in_range(t_k)) return FREEAIR_ERR_DOMAIN;
  *rho_kg_m3 = p_pa / (gas_constant * t_k);
  return FREEAIR_OK;
}

int32_t freeair_dry_air_ideal_heat_capacity(double t_k, double *cp_j_kg_k)
{
  if (cp_j_kg_k == NULL) return FREEAIR_ERR_NULL;
  *cp_j_kg_k = NAN;
  if (!temperature_in_range(t_k)) return FREEAIR_ERR_DOMAIN;
  *cp_j_kg_k = gas_constant * caloric_at(t_k).capacity;
  return FREEAIR_OK;
}

int32_t freeair_dry_air_ideal_heat_capacity_ratio(double t_k, double *heat_capacity_ratio)
{
  if (heat_capacity_ratio == NULL) return FREEAIR_ERR_NULL;
  *heat_capacity_ratio = NAN;
  if (!temperature_in_range(t_k)) return FREEAIR_ERR_DOMAIN;
  const double capacity = caloric_at(t_k).capacity;
  *heat_capacity_ratio = capacity / (capacity - 1.0);
  return FREEAIR_OK;
}

int32_t freeair_dry_air_ideal_speed_of_sound(double t_k, double *speed_of_sound_m_s)
{
  if (speed_of_sound_m_s == NULL) return FREEAIR_ERR_NULL;
  *speed_of_sound_m_s = NAN;
  double k;
  int32_t status = freeair_dry_air_ideal_heat_capacity_ratio(t_k, &k);
  if (status < 0) return status;
  *speed_of_sound_m_s = sqrt(k * gas_constant * t_k);
  return FREEAIR_OK;
}

int32_t freeair_dry_air_ideal_enthalpy(double t_k, double *h_j_kg)
{
  if (h_j_kg == NULL) return FREEAIR_ERR_NULL;
  *h_j_kg = NAN;
  if (!temperature_in_range(t_k)) return FREEAIR_ERR_DOMAIN;
  *h_j_kg = gas_constant * t_k * caloric_at(t_k).enthalpy;
  return FREEAIR_OK;
}

int32_t freeair_dry_air_ideal_entropy(double p_pa, double t_k, double *s_j_kg_k)
{
  if (s_j_kg_k == NULL) return FREEAIR_ERR_NULL;
  *s_j_kg_k = NAN;
  if (!freeair__closed(p_pa, 1e-3, 2e9) || !temperature_in_range(t_k)) return FREEAIR_ERR_DOMAIN;
  *s_j_kg_k = gas_constant * entropy(p_pa, t_k);
  return FREEAIR_OK;
}

/* Enthalpy and entropy rise with temperature at slopes that change by a fifth at
 * most, so Newton's method from anywhere in range arrives. */
int32_t freeair_dry_air_ideal_temperature_from_enthalpy(double h_j_kg, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__closed(h_j_kg, -214000.0, 1980000.0)) return FREEAIR_ERR_DOMAIN;
  double t = 300.0;
  for (int i = 0; i < 30; i++) {
    const caloric c = caloric_at(t);
    const double next = t + (h_j_kg / gas_constant - c.enthalpy * t) / c.capacity;
    const double step = fabs(next - t);
    t = fmin(fmax(next, 40.0), 2500.0);
    if (step < 1e-9 * t) break;
  }
  if (!temperature_in_range(t)) return FREEAIR_ERR_NO_SOLUTION;
  *t_k = t;
  return FREEAIR_OK;
}

/* The temperature where the entropy over R is a given one more than at t1. */
static int32_t temperature_after(double p_pa, double target, double start, double *t_k)
{
  double t = start;
  for (int i = 0; i < 30; i++) {
    const double ratio = exp((target - entropy(p_pa, t)) / caloric_at(t).capacity);
    t = fmin(fmax(t * ratio, 40.0), 2500.0);
    if (fabs(ratio - 1.0) < 1e-9) break;
  }
  if (!temperature_in_range(t)) return FREEAIR_ERR_NO_SOLUTION;
  *t_k = t;
  return FREEAIR_OK;
}

int32_t freeair_dry_air_ideal_temperature_from_entropy(double p_pa, double s_j_kg_k, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__closed(p_pa, 1e-3, 2e9) || !freeair__closed(s_j_kg_k, -1e4, 1e4)) return FREEAIR_ERR_DOMAIN;
  return temperature_after(p_pa, s_j_kg_k / gas_constant, 300.0, t_k);
}

int32_t freeair_dry_air_ideal_isentropic_temperature(double t1_k, double pressure_ratio, double *t2_k)
{
  if (t2_k == NULL) return FREEAIR_ERR_NULL;
  *t2_k = NAN;
  if (!temperature_in_range(t1_k) || !freeair__closed(pressure_ratio, 1e-6, 1e6)) return FREEAIR_ERR_DOMAIN;
  return temperature_after(1e5, entropy(1e5, t1_k) + log(pressure_ratio), t1_k, t2_k);
}
