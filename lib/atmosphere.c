/* SPDX-License-Identifier: MIT */
#include <freeair/atmosphere.h>
#include <freeair/status.h>

#include "internal/check.h"

static const double p0 = 101325.0;
static const double t0 = 288.15;
static const double lapse = 0.0065;
static const double g0 = 9.80665;
static const double gas_constant = 287.05287;
static const double earth_radius = 6356766.0;

static const double lowest = -5000.0;
static const double tropopause = 11000.0;

int32_t freeair_atmosphere_pressure_from_altitude(double altitude_m, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__closed(altitude_m, lowest, tropopause)) return FREEAIR_ERR_DOMAIN;
  /* log1p keeps the last digits near sea level */
  *p_pa = p0 * exp(g0 / (lapse * gas_constant) * log1p(-lapse * altitude_m / t0));
  return FREEAIR_OK;
}

int32_t freeair_atmosphere_altitude_from_pressure(double p_pa, double *altitude_m)
{
  if (altitude_m == NULL) return FREEAIR_ERR_NULL;
  *altitude_m = NAN;
  if (!freeair__closed(p_pa, 22632.0, 177688.0)) return FREEAIR_ERR_DOMAIN;
  *altitude_m = -t0 / lapse * expm1(lapse * gas_constant / g0 * log1p((p_pa - p0) / p0));
  return FREEAIR_OK;
}

int32_t freeair_atmosphere_temperature_from_altitude(double altitude_m, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__closed(altitude_m, lowest, tropopause)) return FREEAIR_ERR_DOMAIN;
  *t_k = t0 - lapse * altitude_m;
  return FREEAIR_OK;
}

int32_t freeair_atmosphere_density_from_altitude(double altitude_m, double *rho_kg_m3)
{
  if (rho_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  *rho_kg_m3 = NAN;
  double p_pa;
  double t_k;
  int32_t status = freeair_atmosphere_pressure_from_altitude(altitude_m, &p_pa);
  if (status < 0) return status;
  freeair_atmosphere_temperature_from_altitude(altitude_m, &t_k);
  *rho_kg_m3 = p_pa / (gas_constant * t_k);
  return status;
}

int32_t freeair_atmosphere_altitude_from_geometric(double geometric_m, double *altitude_m)
{
  if (altitude_m == NULL) return FREEAIR_ERR_NULL;
  *altitude_m = NAN;
  if (!freeair__closed(geometric_m, -5000.0, 20000.0)) return FREEAIR_ERR_DOMAIN;
  *altitude_m = earth_radius * geometric_m / (earth_radius + geometric_m);
  return FREEAIR_OK;
}

int32_t freeair_atmosphere_pressure_from_geometric(double geometric_m, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__closed(geometric_m, -4996.0, 11019.0)) return FREEAIR_ERR_DOMAIN;
  return freeair_atmosphere_pressure_from_altitude(earth_radius * geometric_m / (earth_radius + geometric_m), p_pa);
}
