/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air_transport.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/dry_air.h"

/* The state at a density. A vacuum stands for zero density: the dilute gas. */
static int32_t at_density(double rho_kg_m3, double t_k, freeair__dry_air_isotherm *isotherm,
                          freeair__dry_air_point *point)
{
  const double vacuum = 1e-30;
  if (!freeair__closed(rho_kg_m3, 0.0, 1530.0) || !freeair__closed(t_k, 60.0, 2000.0)) return FREEAIR_ERR_DOMAIN;
  freeair__dry_air_isotherm_at(t_k, isotherm);
  if (!freeair__dry_air_stable(isotherm, rho_kg_m3)) return FREEAIR_ERR_NO_SOLUTION;
  freeair__dry_air_point_at(isotherm, rho_kg_m3 > vacuum ? rho_kg_m3 : vacuum, point);
  return t_k < 70.0 || freeair__dry_air_pressure(isotherm, point) > 1e8 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

static int32_t at_pressure(double p_pa, double t_k, freeair__dry_air_isotherm *isotherm,
                           freeair__dry_air_point *point)
{
  if (!freeair__closed(p_pa, 1e-3, 2e9) || !freeair__closed(t_k, 60.0, 2000.0)) return FREEAIR_ERR_DOMAIN;
  double rho;
  freeair__dry_air_isotherm_at(t_k, isotherm);
  int32_t status = freeair__dry_air_density(isotherm, p_pa, NAN, &rho, NULL);
  if (status < 0) return status;
  freeair__dry_air_point_at(isotherm, rho, point);
  return t_k < 70.0 || p_pa > 1e8 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

int32_t freeair_dry_air_transport_viscosity(double p_pa, double t_k, double *viscosity_pas)
{
  if (viscosity_pas == NULL) return FREEAIR_ERR_NULL;
  *viscosity_pas = NAN;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  int32_t status = at_pressure(p_pa, t_k, &isotherm, &point);
  if (status >= 0) *viscosity_pas = freeair__dry_air_viscosity(t_k, point.rho_kg_m3);
  return status;
}

int32_t freeair_dry_air_transport_conductivity(double p_pa, double t_k, double *conductivity_w_m_k)
{
  if (conductivity_w_m_k == NULL) return FREEAIR_ERR_NULL;
  *conductivity_w_m_k = NAN;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  int32_t status = at_pressure(p_pa, t_k, &isotherm, &point);
  if (status >= 0) *conductivity_w_m_k = freeair__dry_air_conductivity(&isotherm, &point);
  return status;
}

int32_t freeair_dry_air_transport_viscosity_from_density(double rho_kg_m3, double t_k, double *viscosity_pas)
{
  if (viscosity_pas == NULL) return FREEAIR_ERR_NULL;
  *viscosity_pas = NAN;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  int32_t status = at_density(rho_kg_m3, t_k, &isotherm, &point);
  if (status >= 0) *viscosity_pas = freeair__dry_air_viscosity(t_k, point.rho_kg_m3);
  return status;
}

int32_t freeair_dry_air_transport_conductivity_from_density(double rho_kg_m3, double t_k, double *conductivity_w_m_k)
{
  if (conductivity_w_m_k == NULL) return FREEAIR_ERR_NULL;
  *conductivity_w_m_k = NAN;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  int32_t status = at_density(rho_kg_m3, t_k, &isotherm, &point);
  if (status >= 0) *conductivity_w_m_k = freeair__dry_air_conductivity(&isotherm, &point);
  return status;
}
