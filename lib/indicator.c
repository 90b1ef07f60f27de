/* SPDX-License-Identifier: MIT */
#include <freeair/indicator.h>
#include <freeair/status.h>

#include "internal/gas.h"

int32_t freeair_indicator_mep_from_card(double area_m2, double length_m, double scale_pa, double scale_m,
                                        double *mep_pa)
{
  if (mep_pa == NULL) return FREEAIR_ERR_NULL;
  *mep_pa = NAN;
  if (!freeair__closed(area_m2, 0.0, 1.0) || !freeair__closed(length_m, 0.001, 10.0) ||
      !freeair__is_pressure(scale_pa) || !freeair__closed(scale_m, 0.00001, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *mep_pa = area_m2 / length_m * (scale_pa / scale_m);
  return FREEAIR_OK;
}

static int all_in(const double *x, size_t points, double lo, double hi)
{
  for (size_t i = 0; i < points; i++)
    if (!freeair__closed(x[i], lo, hi)) return 0;
  return 1;
}

static int all_equal(const double *x, size_t points)
{
  for (size_t i = 1; i < points; i++)
    if (x[i] != x[0]) return 0;
  return 1;
}

int32_t freeair_indicator_work(const double *p_pa, const double *v_m3, size_t points, double *w_j, double *mep_pa)
{
  freeair__set_nan(w_j);
  freeair__set_nan(mep_pa);
  if (p_pa == NULL || v_m3 == NULL || w_j == NULL || mep_pa == NULL) return FREEAIR_ERR_NULL;
  if (points < 3) return FREEAIR_ERR_DATA;
  if (!all_in(p_pa, points, -1e8, 1e8) || !all_in(v_m3, points, 0.0, 1000.0)) return FREEAIR_ERR_DOMAIN;
  if (all_equal(v_m3, points)) return FREEAIR_ERR_DATA;
  /* a constant taken off the pressures leaves the loop as it is, and its rounding errors smaller */
  double base = p_pa[0];
  double w = 0.0;
  double least = v_m3[0];
  double most = v_m3[0];
  for (size_t i = 0; i < points; i++) {
    size_t next = i + 1 < points ? i + 1 : 0;
    w += 0.5 * ((p_pa[i] - base) + (p_pa[next] - base)) * (v_m3[i] - v_m3[next]);
    least = fmin(least, v_m3[i]);
    most = fmax(most, v_m3[i]);
  }
  *w_j = w;
  *mep_pa = w / (most - least);
  return FREEAIR_OK;
}

int32_t freeair_indicator_exponent(const double *p_pa, const double *v_m3, size_t points, double *n,
                                   double *n_uncertainty)
{
  freeair__set_nan(n);
  freeair__set_nan(n_uncertainty);
  if (p_pa == NULL || v_m3 == NULL || n == NULL || n_uncertainty == NULL) return FREEAIR_ERR_NULL;
  if (points < 3) return FREEAIR_ERR_DATA;
  if (!all_in(p_pa, points, 1.0, 1e8) || !all_in(v_m3, points, 1e-12, 1000.0)) return FREEAIR_ERR_DOMAIN;
  if (all_equal(v_m3, points)) return FREEAIR_ERR_DATA;
  /* logarithms from the first point on, then from their means */
  double mean_x = 0.0;
  double mean_y = 0.0;
  for (size_t i = 0; i < points; i++) {
    mean_x += freeair__log_ratio(v_m3[i], v_m3[0]) / (double)points;
    mean_y += freeair__log_ratio(p_pa[i], p_pa[0]) / (double)points;
  }
  double xx = 0.0;
  double xy = 0.0;
  for (size_t i = 0; i < points; i++) {
    double x = freeair__log_ratio(v_m3[i], v_m3[0]) - mean_x;
    xx += x * x;
    xy += x * (freeair__log_ratio(p_pa[i], p_pa[0]) - mean_y);
  }
  double exponent = -xy / xx;
  if (!freeair__is_exponent(exponent)) return FREEAIR_ERR_NO_SOLUTION;
  double rest = 0.0;
  for (size_t i = 0; i < points; i++) {
    double x = freeair__log_ratio(v_m3[i], v_m3[0]) - mean_x;
    double off = freeair__log_ratio(p_pa[i], p_pa[0]) - mean_y + exponent * x;
    rest += off * off;
  }
  *n = exponent;
  *n_uncertainty = sqrt(rest / (double)(points - 2) / xx);
  return FREEAIR_OK;
}

/* One of the two curves: steps + 1 points from p_from at v_from to p_to, equal in ln p, the ends exact. */
static void curve(double p_from, double v_from, double p_to, double v_to, double n, size_t steps, double *p_pa,
                  double *v_m3)
{
  double log_ratio = freeair__log_ratio(p_to, p_from);
  for (size_t i = 0; i <= steps; i++) {
    double part = log_ratio * (double)i / (double)steps;
    p_pa[i] = i == 0 ? p_from : i == steps ? p_to : p_from * exp(part);
    v_m3[i] = i == 0 ? v_from : i == steps ? v_to : v_from * exp(-part / n);
  }
}

/* One of the two strokes at constant pressure, without its ends. */
static void stroke(double p, double v_from, double v_to, size_t steps, double *p_pa, double *v_m3)
{
  for (size_t i = 1; i < steps; i++) {
    p_pa[i] = p;
    v_m3[i] = v_from + (v_to - v_from) * (double)i / (double)steps;
  }
}

int32_t freeair_indicator_ideal(double p1_pa, double p2_pa, double clearance, double swept_m3, double n_compression,
                                double n_expansion, double *p_pa, double *v_m3, size_t points)
{
  for (size_t i = 0; i < points; i++) {
    if (p_pa != NULL) p_pa[i] = NAN;
    if (v_m3 != NULL) v_m3[i] = NAN;
  }
  if (p_pa == NULL || v_m3 == NULL) return FREEAIR_ERR_NULL;
  if (points < 9) return FREEAIR_ERR_DATA;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !(p2_pa > p1_pa) ||
      !freeair__closed(clearance, 0.0, 2.0) || !freeair__closed(swept_m3, 1e-12, 1000.0) ||
      !freeair__is_exponent(n_compression) || !freeair__is_exponent(n_expansion))
    return FREEAIR_ERR_DOMAIN;
  double log_ratio = freeair__log_ratio(p2_pa, p1_pa);
  double v1 = (1.0 + clearance) * swept_m3;                              /* bottom dead centre */
  double v2 = v1 * exp(-log_ratio / n_compression);                      /* discharge opens */
  double v3 = clearance * swept_m3;                                      /* top dead centre */
  double v4 = v3 * exp(log_ratio / n_expansion);                         /* suction opens */
  if (!(v4 < v1 && v2 > v3)) return FREEAIR_ERR_NO_SOLUTION;
  size_t steps = points - 1;
  size_t on_curve = steps / 8 * 3;
  size_t discharge = (steps - 2 * on_curve) / 2;
  size_t suction = steps - 2 * on_curve - discharge;
  size_t at = 0;
  curve(p1_pa, v1, p2_pa, v2, n_compression, on_curve, p_pa, v_m3);
  at += on_curve;
  stroke(p2_pa, v2, v3, discharge, p_pa + at, v_m3 + at);
  at += discharge;
  curve(p2_pa, v3, p1_pa, v4, n_expansion, on_curve, p_pa + at, v_m3 + at);
  at += on_curve;
  stroke(p1_pa, v4, v1, suction, p_pa + at, v_m3 + at);
  p_pa[steps] = p1_pa;
  v_m3[steps] = v1;
  return FREEAIR_OK;
}
