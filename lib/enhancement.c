/* SPDX-License-Identifier: MIT */
#include <freeair/enhancement.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/humid_air.h"
#include "internal/structure.h"

static const freeair_enhancement_coefficients initial = FREEAIR_ENHANCEMENT_COEFFICIENTS_INIT;

int32_t freeair_enhancement_factor(double p_pa, double t_k, int32_t over, double *factor)
{
  if (factor == NULL) return FREEAIR_ERR_NULL;
  *factor = NAN;
  if (!freeair__humid_in_range(p_pa, t_k) ||
      (over != FREEAIR_SATURATION_OVER_WATER && over != FREEAIR_SATURATION_OVER_ICE))
    return FREEAIR_ERR_DOMAIN;
  const int ice = over == FREEAIR_SATURATION_OVER_ICE;
  const double pure = freeair__saturation_over_pa(t_k, ice);
  if (pure >= p_pa) return FREEAIR_ERR_NO_SOLUTION;
  *factor = freeair__humid_saturation(t_k, p_pa, ice, 1) * p_pa / pure;
  return freeair__humid_status(p_pa, t_k);
}

int32_t freeair_enhancement_fugacity(double p_pa, double t_k, double mole_fraction, double *fugacity_pa)
{
  if (fugacity_pa == NULL) return FREEAIR_ERR_NULL;
  *fugacity_pa = NAN;
  if (!freeair__humid_in_range(p_pa, t_k) || !freeair__closed(mole_fraction, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  freeair__humid_virials v;
  freeair__humid_virials_at(t_k, &v);
  const double log_coefficient = freeair__humid_log_fugacity(&v, t_k, p_pa, mole_fraction);
  if (!(fabs(log_coefficient) <= 2.0)) return FREEAIR_ERR_NO_SOLUTION;
  *fugacity_pa = mole_fraction * p_pa * exp(log_coefficient);
  return freeair__humid_status(p_pa, t_k);
}

int32_t freeair_enhancement_virials(double t_k, freeair_enhancement_coefficients *coefficients)
{
  if (coefficients == NULL) return FREEAIR_ERR_NULL;
  freeair_enhancement_coefficients q = initial;
  int32_t status =
      freeair__structure_write(coefficients, &q, sizeof q, FREEAIR_ENHANCEMENT_COEFFICIENTS_BASELINE);
  if (status < 0) return status;
  if (!freeair__humid_in_range(1e5, t_k)) return FREEAIR_ERR_DOMAIN;
  freeair__humid_virials v;
  freeair__humid_virials_at(t_k, &v);
  q.b_aa_m3_mol = v.aa;
  q.b_aw_m3_mol = v.aw;
  q.b_ww_m3_mol = v.ww;
  q.c_aaa_m6_mol2 = v.aaa;
  q.c_aaw_m6_mol2 = v.aaw;
  q.c_aww_m6_mol2 = v.aww;
  q.c_www_m6_mol2 = v.www;
  return freeair__structure_write(coefficients, &q, sizeof q, FREEAIR_ENHANCEMENT_COEFFICIENTS_BASELINE);
}
