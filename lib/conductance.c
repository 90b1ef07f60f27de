/* SPDX-License-Identifier: MIT */
#include <freeair/conductance.h>
#include <freeair/flow.h>
#include <freeair/status.h>

#include "internal/check.h"

/* constants of ISO 6358 */
static const double t0_k = 293.15;
static const double rho0_kg_m3 = 1.185;

static int component_valid(double b, double index)
{
  return freeair__closed(b, 0.0, 0.99) && freeair__closed(index, 0.1, 2.0);
}

static int inlet_valid(double p1_pa, double t1_k)
{
  return freeair__closed(p1_pa, 1.0, 1e8) && freeair__closed(t1_k, 1.0, 5000.0);
}

/* flow as a share of the choked flow; with s = (1 - p2/p1) / (1 - b) the
 * bracket 1 - ((p2/p1 - b) / (1 - b))^2 is s (2 - s) */
static double subsonic_share(double b, double index, double p1_pa, double p2_pa)
{
  double s = (p1_pa - p2_pa) / (p1_pa * (1.0 - b));
  if (s >= 1.0) return 1.0;
  return pow(s * (2.0 - s), index);
}

static double choked_mass_flow(double c_m3_s_pa, double p1_pa, double t1_k)
{
  return c_m3_s_pa * rho0_kg_m3 * p1_pa * sqrt(t0_k / t1_k);
}

int32_t freeair_conductance_flow(double c_m3_s_pa, double b, double index, double p1_pa, double t1_k, double p2_pa,
                                 double *mass_kg_s, double *anr_m3_s)
{
  freeair__set_nan(mass_kg_s);
  freeair__set_nan(anr_m3_s);
  if (mass_kg_s == NULL || anr_m3_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(c_m3_s_pa, 1e-15, 0.01) || !component_valid(b, index) || !inlet_valid(p1_pa, t1_k) ||
      !freeair__closed(p2_pa, 0.0, 1e8) || p2_pa > p1_pa)
    return FREEAIR_ERR_DOMAIN;
  *mass_kg_s = choked_mass_flow(c_m3_s_pa, p1_pa, t1_k) * subsonic_share(b, index, p1_pa, p2_pa);
  *anr_m3_s = *mass_kg_s / rho0_kg_m3;
  return FREEAIR_OK;
}

int32_t freeair_conductance_from_flow(double mass_kg_s, double b, double index, double p1_pa, double t1_k,
                                      double p2_pa, double *c_m3_s_pa)
{
  if (c_m3_s_pa == NULL) return FREEAIR_ERR_NULL;
  *c_m3_s_pa = NAN;
  if (!freeair__upto(mass_kg_s, 0.0, 1e6) || !component_valid(b, index) || !inlet_valid(p1_pa, t1_k) ||
      !freeair__closed(p2_pa, 0.0, 1e8) || p2_pa >= p1_pa)
    return FREEAIR_ERR_DOMAIN;
  *c_m3_s_pa = mass_kg_s / (choked_mass_flow(1.0, p1_pa, t1_k) * subsonic_share(b, index, p1_pa, p2_pa));
  return FREEAIR_OK;
}

int32_t freeair_conductance_outlet_pressure(double mass_kg_s, double c_m3_s_pa, double b, double index,
                                            double p1_pa, double t1_k, double *p2_pa)
{
  if (p2_pa == NULL) return FREEAIR_ERR_NULL;
  *p2_pa = NAN;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(c_m3_s_pa, 1e-15, 0.01) ||
      !component_valid(b, index) || !inlet_valid(p1_pa, t1_k))
    return FREEAIR_ERR_DOMAIN;
  double share = mass_kg_s / choked_mass_flow(c_m3_s_pa, p1_pa, t1_k);
  if (share > 1.0) return FREEAIR_ERR_NO_SOLUTION;
  double bracket = pow(share, 1.0 / index);
  double s = bracket / (1.0 + sqrt(1.0 - bracket));
  *p2_pa = p1_pa - p1_pa * (1.0 - b) * s;
  return FREEAIR_OK;
}

static int32_t components_check(const double *c_m3_s_pa, const double *b, size_t n, double *c_total_m3_s_pa,
                                double *b_total)
{
  freeair__set_nan(c_total_m3_s_pa);
  freeair__set_nan(b_total);
  if (c_m3_s_pa == NULL || b == NULL || c_total_m3_s_pa == NULL || b_total == NULL) return FREEAIR_ERR_NULL;
  if (n < 1 || n > 10000) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++)
    if (!freeair__closed(c_m3_s_pa[i], 1e-15, 0.01) || !freeair__closed(b[i], 0.0, 0.99)) return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

/* Puts the component (c2, b2) behind (*c, *b). The first chokes if c <= b c2.
 * Else the second does, at y p1, y the larger root of
 *   c2 y = c sqrt(1 - ((y - b) / (1 - b))^2).
 * The new b is 1 - C^2 ((1 - b)/c^2 + (1 - b2)/c2^2), written without cancellation. */
static void put_behind(double *c, double *b, double c2, double b2)
{
  double q = *c / c2;
  double w = 1.0 - *b;
  if (q <= *b) {
    *b -= (1.0 - b2) * q * q;
    return;
  }
  double s = sqrt(q * q + 1.0 - 2.0 * *b);
  double y = q * (q * *b + w * s) / (w * w + q * q);
  double one_less_y = w * (w * s + *b * q) / ((q + s) * (w * w + q * q));
  *c = c2 * y;
  *b = *b * one_less_y * one_less_y / w + b2 * y * y;
}

int32_t freeair_conductance_series(const double *c_m3_s_pa, const double *b, size_t n, double *c_total_m3_s_pa,
                                   double *b_total)
{
  int32_t status = components_check(c_m3_s_pa, b, n, c_total_m3_s_pa, b_total);
  if (status < 0) return status;
  double c = c_m3_s_pa[0];
  double ratio = b[0];
  for (size_t i = 1; i < n; i++) put_behind(&c, &ratio, c_m3_s_pa[i], b[i]);
  *c_total_m3_s_pa = c;
  *b_total = ratio;
  return FREEAIR_OK;
}

int32_t freeair_conductance_parallel(const double *c_m3_s_pa, const double *b, size_t n, double *c_total_m3_s_pa,
                                     double *b_total)
{
  int32_t status = components_check(c_m3_s_pa, b, n, c_total_m3_s_pa, b_total);
  if (status < 0) return status;
  double c = 0.0;
  double excess = 0.0; /* sum of Ci / sqrt(1 - bi), less c */
  for (size_t i = 0; i < n; i++) {
    double root = sqrt(1.0 - b[i]);
    c += c_m3_s_pa[i];
    excess += c_m3_s_pa[i] * b[i] / (root * (1.0 + root));
  }
  *c_total_m3_s_pa = c;
  *b_total = excess * (excess + 2.0 * c) / ((excess + c) * (excess + c));
  return FREEAIR_OK;
}

int32_t freeair_conductance_from_area(double area_m2, double k, double r_j_kg_k, double *c_m3_s_pa)
{
  if (c_m3_s_pa == NULL) return FREEAIR_ERR_NULL;
  *c_m3_s_pa = NAN;
  double critical;
  if (!freeair__upto(area_m2, 0.0, 100.0) || !freeair__closed(r_j_kg_k, 10.0, 10000.0) ||
      freeair_flow_critical_coefficient(k, &critical) < 0)
    return FREEAIR_ERR_DOMAIN;
  *c_m3_s_pa = critical * area_m2 / (rho0_kg_m3 * sqrt(r_j_kg_k * t0_k));
  return FREEAIR_OK;
}

int32_t freeair_conductance_area(double c_m3_s_pa, double k, double r_j_kg_k, double *area_m2)
{
  if (area_m2 == NULL) return FREEAIR_ERR_NULL;
  *area_m2 = NAN;
  double critical;
  if (!freeair__upto(c_m3_s_pa, 0.0, 0.01) || !freeair__closed(r_j_kg_k, 10.0, 10000.0) ||
      freeair_flow_critical_coefficient(k, &critical) < 0)
    return FREEAIR_ERR_DOMAIN;
  *area_m2 = c_m3_s_pa * rho0_kg_m3 * sqrt(r_j_kg_k * t0_k) / critical;
  return FREEAIR_OK;
}
