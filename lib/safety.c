/* SPDX-License-Identifier: MIT */
#include <freeair/safety.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"

static const struct {
  double contact_s;
  double t_k;
} burns[] = {
  {1.0, 338.15}, {10.0, 328.15}, {60.0, 324.15}, {600.0, 321.15}, {28800.0, 316.15},
};

int32_t freeair_safety_burn_threshold(double contact_s, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__closed(contact_s, 1.0, 1e6)) return FREEAIR_ERR_DOMAIN;
  const size_t last = FREEAIR__COUNT(burns) - 1;
  size_t i = 1;
  while (i < last && contact_s > burns[i].contact_s) i++;
  if (contact_s >= burns[last].contact_s) {
    *t_k = burns[last].t_k;
    return FREEAIR_OK;
  }
  double share = log(contact_s / burns[i - 1].contact_s) / log(burns[i].contact_s / burns[i - 1].contact_s);
  *t_k = burns[i - 1].t_k + share * (burns[i].t_k - burns[i - 1].t_k);
  return FREEAIR_OK;
}

int32_t freeair_safety_cleaning_pressure(double p_atm_pa, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__closed(p_atm_pa, 1000.0, 120000.0)) return FREEAIR_ERR_DOMAIN;
  *p_pa = p_atm_pa + 30.0 * 4.4482216152605 / (0.0254 * 0.0254);
  return FREEAIR_OK;
}

int32_t freeair_safety_stored_energy_hazard(double energy_j, int32_t *hazard)
{
  if (hazard == NULL) return FREEAIR_ERR_NULL;
  *hazard = FREEAIR_SAFETY_UNKNOWN;
  if (!freeair__closed(energy_j, 0.0, 1e15)) return FREEAIR_ERR_DOMAIN;
  *hazard = energy_j > 1e5 ? FREEAIR_SAFETY_HIGH : FREEAIR_SAFETY_LOWER;
  return FREEAIR_OK;
}
