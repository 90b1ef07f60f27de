/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>

#include "internal/real_gas.h"

int32_t freeair__real_state_at(double p_pa, double t_k, double guess_kg_m3, freeair__real_state *state)
{
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  double rho;
  freeair__dry_air_isotherm_at(t_k, &isotherm);
  int32_t status = freeair__dry_air_density(&isotherm, p_pa, guess_kg_m3, &rho, NULL);
  if (status < 0) return status;
  freeair__dry_air_point_at(&isotherm, rho, &point);
  const freeair__helmholtz *r = &point.residual;
  const double by_density = 1.0 + 2.0 * r->d + r->dd;
  state->p_pa = p_pa;
  state->t_k = t_k;
  state->rho_kg_m3 = rho;
  state->h_j_kg = freeair__dry_air_enthalpy(&isotherm, &point);
  state->s_j_kg_k = freeair__dry_air_entropy(&point);
  state->zr_cp = (1.0 + r->d) * FREEAIR__DRY_AIR_GAS_CONSTANT / freeair__dry_air_cp(&point);
  /* the ones of an ideal gas taken out before they cancel */
  state->x = -(r->d + r->dd + r->dt) / by_density;
  state->y = (1.0 + r->d) / by_density;
  return FREEAIR_OK;
}
