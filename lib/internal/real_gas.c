/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air.h>
#include <freeair/status.h>

#include "internal/power.h"
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

int32_t freeair__real_head(const freeair__real_state *one, double p2_pa, int isothermal, double *head_j_kg)
{
  static const double node[] = {0.18343464249564980494, 0.52553240991632898582, 0.79666647741362673959,
                                0.96028985649753623168};
  static const double weight[] = {0.36268378337836198297, 0.31370664587788728734, 0.22238103445337447054,
                                  0.10122853629037625915};
  const double half = 0.5 * freeair__log_ratio(p2_pa, one->p_pa);
  double sum = 0.0;
  for (int i = 0; i < 8; i++) {
    const double p = one->p_pa * exp(half * (1.0 + (i < 4 ? node[i] : -node[i - 4])));
    double t = one->t_k;
    freeair__real_state on;
    int32_t status = isothermal ? FREEAIR_OK : freeair_dry_air_temperature_from_entropy(p, one->s_j_kg_k, &t);
    if (status < 0) return status;
    status = freeair__real_state_at(p, t, NAN, &on);
    if (status < 0) return status;
    sum += weight[i % 4] * p / on.rho_kg_m3;
  }
  *head_j_kg = half * sum;
  return FREEAIR_OK;
}

int32_t freeair__real_isentropic(const freeair__real_state *one, double p2_pa, freeair__real_state *two,
                                 double *w_j_kg)
{
  double t;
  int32_t status = freeair_dry_air_temperature_from_entropy(p2_pa, one->s_j_kg_k, &t);
  if (status < 0) return status;
  status = freeair__real_state_at(p2_pa, t, NAN, two);
  if (status < 0) return status;
  *w_j_kg = two->h_j_kg - one->h_j_kg;
  if (fabs(freeair__log_ratio(p2_pa, one->p_pa)) >= 0.3) return FREEAIR_OK;
  return freeair__real_head(one, p2_pa, 0, w_j_kg);
}
