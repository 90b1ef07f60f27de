/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air.h>
#include <freeair/real_compression.h>
#include <freeair/status.h>

#include "internal/power.h"
#include "internal/real_gas.h"

enum { most_stages = 100 };

static int is_energy(double x_j_kg)
{
  return freeair__closed(x_j_kg, -5e6, 5e6);
}

static int are_ends(double p1_pa, double t1_k, double p2_pa)
{
  return freeair__is_real_pressure(p1_pa) && freeair__is_real_temperature(t1_k) && freeair__is_real_pressure(p2_pa);
}

/* Integral of p v over ln p from state one to p2_pa, at its entropy or its temperature. */
static int32_t head_between(const freeair__real_state *one, double p2_pa, int isothermal, double *head_j_kg)
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

/* The end of the isentrope at p2_pa, and the work to it. */
static int32_t isentropic(const freeair__real_state *one, double p2_pa, freeair__real_state *two, double *w_j_kg)
{
  double t;
  int32_t status = freeair_dry_air_temperature_from_entropy(p2_pa, one->s_j_kg_k, &t);
  if (status < 0) return status;
  status = freeair__real_state_at(p2_pa, t, NAN, two);
  if (status < 0) return status;
  *w_j_kg = two->h_j_kg - one->h_j_kg;
  if (fabs(freeair__log_ratio(p2_pa, one->p_pa)) >= 0.3) return FREEAIR_OK;
  return head_between(one, p2_pa, 0, w_j_kg);
}

int32_t freeair_real_compression_isentropic(double p1_pa, double t1_k, double p2_pa, double *w_j_kg, double *t2_k)
{
  freeair__set_nan(w_j_kg);
  freeair__set_nan(t2_k);
  if (w_j_kg == NULL || t2_k == NULL) return FREEAIR_ERR_NULL;
  if (!are_ends(p1_pa, t1_k, p2_pa)) return FREEAIR_ERR_DOMAIN;
  freeair__real_state one;
  freeair__real_state two;
  double w;
  int32_t status = freeair__real_state_at(p1_pa, t1_k, NAN, &one);
  if (status >= 0) status = isentropic(&one, p2_pa, &two, &w);
  if (status < 0) return status;
  *w_j_kg = w;
  *t2_k = two.t_k;
  return FREEAIR_OK;
}

int32_t freeair_real_compression_isothermal(double p1_pa, double t_k, double p2_pa, double *w_j_kg, double *q_j_kg)
{
  freeair__set_nan(w_j_kg);
  freeair__set_nan(q_j_kg);
  if (w_j_kg == NULL || q_j_kg == NULL) return FREEAIR_ERR_NULL;
  if (!are_ends(p1_pa, t_k, p2_pa)) return FREEAIR_ERR_DOMAIN;
  freeair__real_state one;
  freeair__real_state two;
  int32_t status = freeair__real_state_at(p1_pa, t_k, NAN, &one);
  if (status >= 0) status = freeair__real_state_at(p2_pa, t_k, NAN, &two);
  if (status < 0) return status;
  double q = t_k * (one.s_j_kg_k - two.s_j_kg_k);
  double w = two.h_j_kg - one.h_j_kg + q;
  if (fabs(freeair__log_ratio(p2_pa, p1_pa)) < 0.3) {
    status = head_between(&one, p2_pa, 1, &w);
    if (status < 0) return status;
    q = w - (two.h_j_kg - one.h_j_kg);
  }
  *w_j_kg = w;
  *q_j_kg = q;
  return FREEAIR_OK;
}

/* The temperature of gas of a density at a pressure: Newton's method on ln p
 * against ln T, on which a gas is nearly straight, in a bracket; after 30 steps
 * bisection alone, which ends. */
static int32_t temperature_from_density(double p_pa, double rho_kg_m3, double start_k, double *t_k)
{
  double lo = FREEAIR__REAL_T_LEAST;
  double hi = FREEAIR__REAL_T_MOST;
  double t = start_k > lo ? start_k < hi ? start_k : hi : lo;
  for (int i = 0; i < 100; i++) {
    freeair__dry_air_isotherm isotherm;
    freeair__dry_air_point point;
    freeair__dry_air_isotherm_at(t, &isotherm);
    freeair__dry_air_point_at(&isotherm, rho_kg_m3, &point);
    const double missing = freeair__log_ratio(p_pa, freeair__dry_air_pressure(&isotherm, &point));
    const double slope = (1.0 + point.residual.d - point.residual.dt) / (1.0 + point.residual.d);
    double next = t * exp(missing / slope);
    if (fabs(next - t) <= 1e-9 * t) {
      if (next < lo * (1.0 - 1e-12) || next > hi * (1.0 + 1e-12)) return FREEAIR_ERR_NO_SOLUTION;
      *t_k = next;
      return FREEAIR_OK;
    }
    if (missing > 0.0) {
      if (t >= hi) return FREEAIR_ERR_NO_SOLUTION;
      lo = t;
    } else {
      if (t <= lo) return FREEAIR_ERR_NO_SOLUTION;
      hi = t;
    }
    if (!(next > lo)) next = lo > FREEAIR__REAL_T_LEAST ? 0.5 * (lo + hi) : lo;
    if (!(next < hi)) next = hi < FREEAIR__REAL_T_MOST ? 0.5 * (lo + hi) : hi;
    if (i > 30) next = 0.5 * (lo + hi);
    t = next;
  }
  *t_k = t;
  return FREEAIR_OK;
}

int32_t freeair_real_compression_from_exponent(double p1_pa, double t1_k, double p2_pa, double n, double *w_j_kg,
                                               double *q_j_kg, double *t2_k)
{
  freeair__set_nan(w_j_kg);
  freeair__set_nan(q_j_kg);
  freeair__set_nan(t2_k);
  if (w_j_kg == NULL || q_j_kg == NULL || t2_k == NULL) return FREEAIR_ERR_NULL;
  if (!are_ends(p1_pa, t1_k, p2_pa) || !freeair__closed(n, 0.5, 10.0)) return FREEAIR_ERR_DOMAIN;
  freeair__real_state one;
  freeair__real_state two;
  int32_t status = freeair__real_state_at(p1_pa, t1_k, NAN, &one);
  if (status < 0) return status;
  const double log_ratio = freeair__log_ratio(p2_pa, p1_pa);
  const double m = (n - 1.0) / n;
  const double rho = one.rho_kg_m3 * exp(log_ratio / n);
  /* denser than air at 100 MPa and 133 K */
  if (!(rho < 1200.0)) return FREEAIR_ERR_NO_SOLUTION;
  double t;
  status = temperature_from_density(p2_pa, rho, t1_k * exp(m * log_ratio), &t);
  if (status >= 0) status = freeair__real_state_at(p2_pa, t, rho, &two);
  if (status < 0) return status;
  const double w = p1_pa / one.rho_kg_m3 * freeair__power_excess(log_ratio, m);
  *w_j_kg = w;
  *q_j_kg = w - (two.h_j_kg - one.h_j_kg);
  *t2_k = t;
  return FREEAIR_OK;
}

int32_t freeair_real_compression_outlet(double p1_pa, double t1_k, double p2_pa, double w_j_kg, double q_j_kg,
                                        double *t2_k)
{
  if (t2_k == NULL) return FREEAIR_ERR_NULL;
  *t2_k = NAN;
  if (!are_ends(p1_pa, t1_k, p2_pa) || !is_energy(w_j_kg) || !is_energy(q_j_kg)) return FREEAIR_ERR_DOMAIN;
  freeair__real_state one;
  int32_t status = freeair__real_state_at(p1_pa, t1_k, NAN, &one);
  if (status < 0) return status;
  /* the inverse takes no enthalpy out of its range as an argument; out of range there is no such air */
  status = freeair_dry_air_temperature_from_enthalpy(p2_pa, one.h_j_kg + (w_j_kg - q_j_kg), t2_k);
  return status == FREEAIR_ERR_DOMAIN ? FREEAIR_ERR_NO_SOLUTION : status;
}

int32_t freeair_real_compression_throttled(double p1_pa, double t1_k, double p2_pa, double *t2_k)
{
  return freeair_real_compression_outlet(p1_pa, t1_k, p2_pa, 0.0, 0.0, t2_k);
}

int32_t freeair_real_compression_efficiency(double p1_pa, double t1_k, double p2_pa, double t2_k, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!are_ends(p1_pa, t1_k, p2_pa) || !freeair__is_real_temperature(t2_k) || !(p2_pa > p1_pa) || !(t2_k > t1_k))
    return FREEAIR_ERR_DOMAIN;
  freeair__real_state one;
  freeair__real_state two;
  freeair__real_state ideal;
  double w;
  int32_t status = freeair__real_state_at(p1_pa, t1_k, NAN, &one);
  if (status >= 0) status = freeair__real_state_at(p2_pa, t2_k, NAN, &two);
  if (status >= 0) status = isentropic(&one, p2_pa, &ideal, &w);
  if (status < 0) return status;
  const double rise = two.h_j_kg - one.h_j_kg;
  if (!(rise > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *efficiency = w / rise;
  return *efficiency > 1.0 ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

static int32_t one_stage(double inlet_pa, double t_k, double efficiency, double p_out_pa, freeair__real_state *in,
                         freeair__real_state *out, double *w_j_kg)
{
  freeair__real_state ideal;
  double w;
  double t;
  int32_t status = freeair__real_state_at(inlet_pa, t_k, NAN, in);
  if (status >= 0) status = isentropic(in, p_out_pa, &ideal, &w);
  if (status < 0) return status;
  *w_j_kg = w / efficiency;
  if (!(in->h_j_kg + *w_j_kg <= 5e6)) return FREEAIR_ERR_NO_SOLUTION;
  status = freeair_dry_air_temperature_from_enthalpy(p_out_pa, in->h_j_kg + *w_j_kg, &t);
  return status < 0 ? status : freeair__real_state_at(p_out_pa, t, NAN, out);
}

int32_t freeair_real_compression_stages(double p1_pa, const double *t_in_k, const double *efficiency,
                                        const double *drop_pa, const double *p_out_pa, size_t stages,
                                        double *stage_j_kg, double *t_out_k, double *cooler_j_kg, double *w_j_kg)
{
  const int sized = stages >= 1 && stages <= most_stages;
  for (size_t i = 0; sized && i < stages; i++) {
    if (stage_j_kg != NULL) stage_j_kg[i] = NAN;
    if (t_out_k != NULL) t_out_k[i] = NAN;
    if (cooler_j_kg != NULL) cooler_j_kg[i] = NAN;
  }
  freeair__set_nan(w_j_kg);
  if (t_in_k == NULL || efficiency == NULL || drop_pa == NULL || p_out_pa == NULL || stage_j_kg == NULL ||
      t_out_k == NULL || cooler_j_kg == NULL || w_j_kg == NULL)
    return FREEAIR_ERR_NULL;
  if (!sized || !freeair__is_real_pressure(p1_pa)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < stages; i++)
    if (!freeair__is_real_temperature(t_in_k[i]) || !freeair__closed(efficiency[i], 0.01, 1.0) ||
        !freeair__closed(drop_pa[i], 0.0, 1e8) || !freeair__is_real_pressure(p_out_pa[i]))
      return FREEAIR_ERR_DOMAIN;
  int32_t status = FREEAIR_OK;
  freeair__real_state out = {0};
  double total = 0.0;
  for (size_t i = 0; i < stages && status >= 0; i++) {
    const double inlet = (i == 0 ? p1_pa : p_out_pa[i - 1]) - drop_pa[i];
    const double h_before = out.h_j_kg;
    freeair__real_state in;
    double w = NAN;
    status = inlet >= 100.0 && p_out_pa[i] >= inlet
                 ? one_stage(inlet, t_in_k[i], efficiency[i], p_out_pa[i], &in, &out, &w)
                 : FREEAIR_ERR_NO_SOLUTION;
    if (status < 0) break;
    stage_j_kg[i] = w;
    t_out_k[i] = out.t_k;
    cooler_j_kg[i] = i == 0 ? 0.0 : h_before - in.h_j_kg;
    total += w;
  }
  if (status >= 0) {
    *w_j_kg = total;
    return FREEAIR_OK;
  }
  for (size_t i = 0; i < stages; i++) stage_j_kg[i] = t_out_k[i] = cooler_j_kg[i] = NAN;
  return status;
}
