/* SPDX-License-Identifier: MIT */
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/saturation.h"
#include "internal/water.h"

static int is_over(int32_t over)
{
  return over == FREEAIR_SATURATION_OVER_WATER || over == FREEAIR_SATURATION_OVER_ICE;
}

int32_t freeair_saturation_pressure(double t_k, int32_t over, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!is_over(over)) return FREEAIR_ERR_DOMAIN;
  const int ice = over == FREEAIR_SATURATION_OVER_ICE;
  if (!freeair__closed(t_k, ice ? 50.0 : 123.0, 647.096)) return FREEAIR_ERR_DOMAIN;
  *p_pa = freeair__saturation_over_pa(t_k, ice);
  return FREEAIR_OK;
}

int32_t freeair_saturation_temperature(double p_pa, int32_t over, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__upto(p_pa, 0.0, 22.064e6) || !is_over(over)) return FREEAIR_ERR_DOMAIN;
  *t_k = freeair__saturation_temperature_k(p_pa, over == FREEAIR_SATURATION_OVER_ICE);
  return isnan(*t_k) ? FREEAIR_ERR_NO_SOLUTION : FREEAIR_OK;
}

int32_t freeair_saturation_pressure_water(double t_k, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__closed(t_k, 273.15, 647.096)) return FREEAIR_ERR_DOMAIN;
  *p_pa = freeair__saturation_pressure_pa(t_k);
  return FREEAIR_OK;
}

int32_t freeair_saturation_temperature_water(double p_pa, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__closed(p_pa, 611.213, 22.064e6)) return FREEAIR_ERR_DOMAIN;
  *t_k = freeair__saturation_temperature(p_pa);
  return FREEAIR_OK;
}

int32_t freeair_saturation_pressure_ice(double t_k, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__closed(t_k, 50.0, FREEAIR__WATER_TRIPLE_T)) return FREEAIR_ERR_DOMAIN;
  *p_pa = freeair__ice_pressure_pa(t_k);
  return FREEAIR_OK;
}

int32_t freeair_saturation_pressure_supercooled(double t_k, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__closed(t_k, 123.0, 332.0)) return FREEAIR_ERR_DOMAIN;
  *p_pa = freeair__supercooled_pressure_pa(t_k);
  return FREEAIR_OK;
}

int32_t freeair_saturation_latent_heat(double t_k, int32_t over, double *l_j_kg)
{
  if (l_j_kg == NULL) return FREEAIR_ERR_NULL;
  *l_j_kg = NAN;
  if (!freeair__closed(t_k, 238.15, 573.15) || !is_over(over)) return FREEAIR_ERR_DOMAIN;
  const int ice = over == FREEAIR_SATURATION_OVER_ICE && t_k < FREEAIR__WATER_TRIPLE_T;
  const double p = freeair__saturation_over_pa(t_k, ice);
  freeair__water_isotherm isotherm;
  freeair__water_point point;
  freeair__water_isotherm_at(t_k, &isotherm);
  freeair__water_point_at(&isotherm, freeair__water_density(&isotherm, p, 0), &point);
  const double vapour = freeair__water_enthalpy(&isotherm, &point);
  double v;
  double condensed;
  if (ice) {
    freeair__ice(t_k, p, &v, &condensed);
  } else {
    freeair__water_point_at(&isotherm, freeair__water_density(&isotherm, p, 1), &point);
    condensed = freeair__water_enthalpy(&isotherm, &point);
  }
  *l_j_kg = vapour - condensed;
  return FREEAIR_OK;
}
