/* SPDX-License-Identifier: MIT */
#include <freeair/multistage.h>
#include <freeair/status.h>

#include "internal/gas.h"

enum { most_stages = 100, most_steps = 200 };

static int is_stages(int32_t stages)
{
  return stages >= 1 && stages <= most_stages;
}

static int is_optimum_exponent(double n)
{
  return freeair__closed(n, 1.01, 10.0);
}

/* Work over R T1 of equal stages that all start at the same temperature. */
static double equal_head(double p1_pa, double p2_pa, double n, int32_t stages)
{
  return stages * freeair__power_excess(freeair__log_ratio(p2_pa, p1_pa) / stages, (n - 1.0) / n);
}

int32_t freeair_multistage_pressure(double p1_pa, double p2_pa, int32_t stages, int32_t after, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !is_stages(stages) || after < 0 ||
      after > stages)
    return FREEAIR_ERR_DOMAIN;
  *p_pa = after == stages ? p2_pa : p1_pa * exp(freeair__log_ratio(p2_pa, p1_pa) * after / stages);
  return FREEAIR_OK;
}

int32_t freeair_multistage_pressure_from_temperatures(double p1_pa, double p2_pa, double t1_k, double t3_k, double n,
                                                      double loss, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !freeair__is_temperature(t1_k) ||
      !freeair__is_temperature(t3_k) || !is_optimum_exponent(n) || !freeair__closed(loss, 0.0, 0.9))
    return FREEAIR_ERR_DOMAIN;
  double total = freeair__log_ratio(p2_pa, p1_pa) - log1p(-loss); /* what both stages share */
  double first = 0.5 * (total + freeair__log_ratio(t3_k, t1_k) * n / (n - 1.0));
  if (!(first >= 0.0 && first <= total)) return FREEAIR_ERR_NO_SOLUTION;
  *p_pa = p1_pa * exp(first);
  return FREEAIR_OK;
}

int32_t freeair_multistage_work_equal(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double n,
                                      int32_t stages, double *w_j_kg)
{
  if (w_j_kg == NULL) return FREEAIR_ERR_NULL;
  *w_j_kg = NAN;
  if (!freeair__is_gas_constant(r_j_kg_k) || !freeair__is_temperature(t1_k) || !freeair__is_pressure(p1_pa) ||
      !freeair__is_pressure(p2_pa) || !freeair__is_exponent(n) || !is_stages(stages))
    return FREEAIR_ERR_DOMAIN;
  *w_j_kg = r_j_kg_k * t1_k * equal_head(p1_pa, p2_pa, n, stages);
  return FREEAIR_OK;
}

int32_t freeair_multistage_power_from_mass_flow(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double n,
                                                int32_t stages, double m_kg_s, double efficiency, double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!freeair__closed(m_kg_s, 0.0, 1e6) || !freeair__is_efficiency(efficiency)) return FREEAIR_ERR_DOMAIN;
  double w_j_kg;
  int32_t status = freeair_multistage_work_equal(r_j_kg_k, t1_k, p1_pa, p2_pa, n, stages, &w_j_kg);
  if (status < 0) return status;
  *power_w = m_kg_s * w_j_kg / efficiency;
  return status;
}

int32_t freeair_multistage_power_from_free_air(double p_free_pa, double t_free_k, double t1_k, double p1_pa,
                                               double p2_pa, double n, int32_t stages, double fad_m3_s,
                                               double efficiency, double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!freeair__is_pressure(p_free_pa) || !freeair__is_temperature(t_free_k) || !freeair__is_temperature(t1_k) ||
      !freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !freeair__is_exponent(n) ||
      !is_stages(stages) || !freeair__closed(fad_m3_s, 0.0, 1e6) || !freeair__is_efficiency(efficiency))
    return FREEAIR_ERR_DOMAIN;
  *power_w = fad_m3_s * p_free_pa * (t1_k / t_free_k) * equal_head(p1_pa, p2_pa, n, stages) / efficiency;
  return FREEAIR_OK;
}

int32_t freeair_multistage_saving(double p1_pa, double p2_pa, double n, int32_t stages, double *saving)
{
  if (saving == NULL) return FREEAIR_ERR_NULL;
  *saving = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !freeair__is_exponent(n) || !is_stages(stages))
    return FREEAIR_ERR_DOMAIN;
  /* With y the logarithm of the temperature ratio of one stage, e^(N y) - 1 = (e^y - 1) sum e^(j y), j = 0..N-1;
   * taking N (e^y - 1) off it leaves terms of one sign. */
  double y = freeair__log_ratio(p2_pa, p1_pa) / stages * ((n - 1.0) / n);
  double sum = 0.0;
  for (int32_t j = 1; j < stages; j++) sum += expm1(j * y);
  *saving = y != 0.0 ? expm1(y) * sum / expm1(stages * y) : 0.0;
  return FREEAIR_OK;
}

/* Logarithm of the last discharge pressure when the first is exp(x) and every stage is at the optimum relative to
 * the one before, with its derivative; infinite where a drop leaves nothing. Writes the pressures if asked. */
static double last_pressure(double x, double p1_pa, const double *t_in_k, const double *n, const double *drop_pa,
                            size_t stages, double *derivative, double *p_out_pa)
{
  double inlet = p1_pa - drop_pa[0];
  double slope = 1.0;                                   /* d x / d x1 */
  double log_ratio = x - log(inlet);
  double ratio_slope = 1.0;                             /* d log_ratio / d x1 */
  if (p_out_pa != NULL) p_out_pa[0] = exp(x);
  for (size_t i = 1; i < stages; i++) {
    double p = exp(x);
    inlet = p - drop_pa[i];
    if (!(inlet > 0.0)) return -INFINITY;
    double m_before = (n[i - 1] - 1.0) / n[i - 1];
    double m = (n[i] - 1.0) / n[i];
    double log_kept = log1p(-drop_pa[i] / p);           /* ln(inlet / p) */
    double kept_slope = drop_pa[i] / inlet * slope;
    log_ratio = (freeair__log_ratio(t_in_k[i - 1], t_in_k[i]) + m_before * log_ratio + log_kept) / m;
    ratio_slope = (m_before * ratio_slope + kept_slope) / m;
    x += log_kept + log_ratio;
    slope += kept_slope + ratio_slope;
    if (x > 100.0) return INFINITY;
    if (x < -100.0) return -INFINITY;
    if (p_out_pa != NULL) p_out_pa[i] = exp(x);
  }
  *derivative = slope;
  return x;
}

static const double slack = 1e-12;    /* a ratio of 1 to within this is not an expansion */
static const double least_kept = 0.1; /* of the pressure ahead of a drop */

static int32_t solve_optimum(double p1_pa, double p2_pa, const double *t_in_k, const double *n, const double *drop_pa,
                             size_t stages, double *p_out_pa)
{
  double slope;
  double target = log(p2_pa);
  double lo = log(p1_pa - drop_pa[0]);
  double hi = target;
  if (stages > 1) {
    if (last_pressure(lo, p1_pa, t_in_k, n, drop_pa, stages, &slope, NULL) > target + slack ||
        last_pressure(hi, p1_pa, t_in_k, n, drop_pa, stages, &slope, NULL) < target - slack)
      return FREEAIR_ERR_NO_SOLUTION;
    double x = lo + (hi - lo) / (double)stages;
    /* Newton inside the bracket; every third step halves it, so that the limit is never what ends the loop */
    for (int step = 0; step < most_steps; step++) {
      double error = last_pressure(x, p1_pa, t_in_k, n, drop_pa, stages, &slope, NULL) - target;
      double newton = isfinite(error) ? error / slope : INFINITY;
      if (fabs(newton) <= 4e-16 * fabs(x) || hi - lo <= 4e-16 * fabs(x)) break;
      if (error > 0.0)
        hi = x;
      else
        lo = x;
      x = step % 3 < 2 && x - newton > lo && x - newton < hi ? x - newton : 0.5 * (lo + hi);
    }
    if (!isfinite(last_pressure(x, p1_pa, t_in_k, n, drop_pa, stages, &slope, p_out_pa)))
      return FREEAIR_ERR_NO_SOLUTION;
  }
  p_out_pa[stages - 1] = p2_pa;
  double before = p1_pa;
  for (size_t i = 0; i < stages; i++) {
    double inlet = before - drop_pa[i];
    if (!(inlet >= 1.0 && inlet >= least_kept * before && p_out_pa[i] >= inlet * (1.0 - slack)))
      return FREEAIR_ERR_NO_SOLUTION;
    before = p_out_pa[i];
  }
  return FREEAIR_OK;
}

int32_t freeair_multistage_optimum(double p1_pa, double p2_pa, const double *t_in_k, const double *n,
                                   const double *drop_pa, size_t stages, double *p_out_pa)
{
  int sized = stages >= 1 && stages <= most_stages;
  if (p_out_pa != NULL && sized)
    for (size_t i = 0; i < stages; i++) p_out_pa[i] = NAN;
  if (t_in_k == NULL || n == NULL || drop_pa == NULL || p_out_pa == NULL) return FREEAIR_ERR_NULL;
  if (!sized || !freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < stages; i++)
    if (!freeair__is_temperature(t_in_k[i]) || !is_optimum_exponent(n[i]) || !freeair__closed(drop_pa[i], 0.0, 1e8))
      return FREEAIR_ERR_DOMAIN;
  if (!(p1_pa - drop_pa[0] >= 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  int32_t status = solve_optimum(p1_pa, p2_pa, t_in_k, n, drop_pa, stages, p_out_pa);
  if (status < 0)
    for (size_t i = 0; i < stages; i++) p_out_pa[i] = NAN;
  return status;
}

int32_t freeair_multistage_work(double r_j_kg_k, double p1_pa, const double *t_in_k, const double *n,
                                const double *drop_pa, const double *p_out_pa, size_t stages, double *stage_j_kg,
                                double *t_out_k, double *w_j_kg)
{
  int sized = stages >= 1 && stages <= most_stages;
  for (size_t i = 0; sized && i < stages; i++) {
    if (stage_j_kg != NULL) stage_j_kg[i] = NAN;
    if (t_out_k != NULL) t_out_k[i] = NAN;
  }
  freeair__set_nan(w_j_kg);
  if (t_in_k == NULL || n == NULL || drop_pa == NULL || p_out_pa == NULL || stage_j_kg == NULL || t_out_k == NULL ||
      w_j_kg == NULL)
    return FREEAIR_ERR_NULL;
  if (!sized || !freeair__is_gas_constant(r_j_kg_k) || !freeair__is_pressure(p1_pa)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < stages; i++)
    if (!freeair__is_temperature(t_in_k[i]) || !freeair__is_exponent(n[i]) ||
        !freeair__closed(drop_pa[i], 0.0, 1e8) || !freeair__is_pressure(p_out_pa[i]))
      return FREEAIR_ERR_DOMAIN;
  double before = p1_pa;
  for (size_t i = 0; i < stages; i++) {
    double inlet = before - drop_pa[i];
    if (!(inlet >= 1.0 && p_out_pa[i] >= inlet)) return FREEAIR_ERR_NO_SOLUTION;
    before = p_out_pa[i];
  }
  double total = 0.0;
  before = p1_pa;
  for (size_t i = 0; i < stages; i++) {
    double inlet = before - drop_pa[i];
    double log_ratio = freeair__log_ratio(p_out_pa[i], inlet);
    double m = (n[i] - 1.0) / n[i];
    stage_j_kg[i] = r_j_kg_k * t_in_k[i] * freeair__power_excess(log_ratio, m);
    t_out_k[i] = t_in_k[i] * exp(m * log_ratio);
    total += stage_j_kg[i];
    before = p_out_pa[i];
  }
  *w_j_kg = total;
  return FREEAIR_OK;
}

int32_t freeair_multistage_intercooler_heat(double m_kg_s, double cp_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                            double n, double t_cooled_k, double *heat_w)
{
  if (heat_w == NULL) return FREEAIR_ERR_NULL;
  *heat_w = NAN;
  if (!freeair__closed(m_kg_s, 0.0, 1e6) || !freeair__closed(cp_j_kg_k, 10.0, 100000.0) ||
      !freeair__is_temperature(t1_k) || !freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) ||
      !freeair__is_exponent(n) || !freeair__is_temperature(t_cooled_k))
    return FREEAIR_ERR_DOMAIN;
  double log_rise = freeair__log_ratio(p2_pa, p1_pa) * ((n - 1.0) / n);
  /* near the inlet temperature the rise is the better known, far from it the temperature */
  double cooling =
      fabs(log_rise) < 0.5 ? t1_k * expm1(log_rise) + (t1_k - t_cooled_k) : t1_k * exp(log_rise) - t_cooled_k;
  *heat_w = m_kg_s * cp_j_kg_k * cooling;
  return FREEAIR_OK;
}

int32_t freeair_multistage_stages(double t1_k, double p1_pa, double p2_pa, double n, double t_max_k, int32_t *stages)
{
  if (stages == NULL) return FREEAIR_ERR_NULL;
  *stages = 0;
  if (!freeair__is_temperature(t1_k) || !freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) ||
      !freeair__is_exponent(n) || !freeair__is_temperature(t_max_k))
    return FREEAIR_ERR_DOMAIN;
  double rise = freeair__log_ratio(p2_pa, p1_pa) * ((n - 1.0) / n); /* of ln T, in all */
  double allowed = freeair__log_ratio(t_max_k, t1_k);               /* in one stage */
  if (!(allowed > 0.0) && rise > allowed) return FREEAIR_ERR_NO_SOLUTION;
  double count = rise > allowed ? ceil(rise / allowed * (1.0 - 1e-12)) : 1.0;
  if (!(count <= most_stages)) return FREEAIR_ERR_NO_SOLUTION;
  *stages = (int32_t)count;
  return FREEAIR_OK;
}
