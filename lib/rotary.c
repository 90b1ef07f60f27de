/* SPDX-License-Identifier: MIT */
#include <freeair/rotary.h>
#include <freeair/status.h>

#include "internal/gas.h"

static int is_rise(double p1_pa, double p2_pa)
{
  return freeair__is_pressure(p1_pa) && freeair__is_pressure(p2_pa) && p2_pa >= p1_pa;
}

/* Work over R T1 of compression to y = -ln u and delivery back to p1: the loop (e^(c y) - 1)/c + e^(-y) - 1, with
 * c = k - 1, which begins with k y^2/2. */
static double loop(double y, double c)
{
  if (y > 0.2) return expm1(c * y) / c + expm1(-y);
  double sum = 0.0;
  double rise = c;  /* c^(j-1) y^j / j! without y^j/j! */
  double fall = 1.0;
  double term = 0.5 * y * y;
  for (int j = 2; j < 40; j++) {
    sum += term * (rise + fall);
    if (term * (rise + 1.0) <= 1e-17 * sum) break;
    rise *= c;
    fall = -fall;
    term *= y / (j + 1);
  }
  return sum;
}

int32_t freeair_rotary_work(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double k, double volume_ratio,
                            double *w_j_kg)
{
  if (w_j_kg == NULL) return FREEAIR_ERR_NULL;
  *w_j_kg = NAN;
  if (!freeair__is_gas_constant(r_j_kg_k) || !freeair__is_temperature(t1_k) || !is_rise(p1_pa, p2_pa) ||
      !freeair__is_heat_ratio(k) || !freeair__closed(volume_ratio, 0.05, 1.0))
    return FREEAIR_ERR_DOMAIN;
  /* both terms are positive: nothing cancels */
  double back_flow = (p2_pa - p1_pa) / p1_pa * volume_ratio;
  *w_j_kg = r_j_kg_k * t1_k * (loop(-log(volume_ratio), k - 1.0) + back_flow);
  return FREEAIR_OK;
}

int32_t freeair_rotary_volume_ratio(double p1_pa, double p2_pa, double k, double *volume_ratio)
{
  if (volume_ratio == NULL) return FREEAIR_ERR_NULL;
  *volume_ratio = NAN;
  if (!is_rise(p1_pa, p2_pa) || !freeair__is_heat_ratio(k)) return FREEAIR_ERR_DOMAIN;
  *volume_ratio = exp(-freeair__log_ratio(p2_pa, p1_pa) / k);
  return FREEAIR_OK;
}
