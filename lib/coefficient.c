/* SPDX-License-Identifier: MIT */
#include <freeair/coefficient.h>
#include <freeair/status.h>

#include "internal/air.h"
#include "internal/check.h"

/* constants of ISO 6358 */
static const double t0_k = 293.15;
static const double rho0_kg_m3 = 1.185;

static const double inch = 0.0254;

static double psi(void)
{
  return 4.4482216152605 / (inch * inch);
}

static int inlet_valid(double p1_pa, double t1_k)
{
  return freeair__closed(p1_pa, 1.0, 1e8) && freeair__closed(t1_k, 1.0, 5000.0);
}

/* m3/h and bar for a gallon a minute and a pound-force a square inch */
static double kv_of_cv_one(void)
{
  const double gallon = 231.0 * inch * inch * inch;
  return gallon * 60.0 * sqrt(1e5 / psi());
}

int32_t freeair_coefficient_kv_from_cv(double cv, double *kv)
{
  if (kv == NULL) return FREEAIR_ERR_NULL;
  *kv = NAN;
  if (!freeair__closed(cv, 0.0, 1e9)) return FREEAIR_ERR_DOMAIN;
  *kv = cv * kv_of_cv_one();
  return FREEAIR_OK;
}

int32_t freeair_coefficient_cv_from_kv(double kv, double *cv)
{
  if (cv == NULL) return FREEAIR_ERR_NULL;
  *cv = NAN;
  if (!freeair__closed(kv, 0.0, 1e9)) return FREEAIR_ERR_DOMAIN;
  *cv = kv / kv_of_cv_one();
  return FREEAIR_OK;
}

/* m2 a unit of Kv: water of 1000 kg/m3, 1 bar, m3/h */
static const double area_of_kv_one = 0.1 / 3600.0;

int32_t freeair_coefficient_conductance_from_kv(double kv, double x_t, double *c_m3_s_pa, double *b)
{
  freeair__set_nan(c_m3_s_pa);
  freeair__set_nan(b);
  if (c_m3_s_pa == NULL || b == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(kv, 1e-9, 1e6) || !freeair__closed(x_t, 0.02, 1.1)) return FREEAIR_ERR_DOMAIN;
  *c_m3_s_pa = 2.0 / 3.0 * area_of_kv_one * kv * sqrt(x_t / (FREEAIR__AIR_R * t0_k)) / rho0_kg_m3;
  *b = 1.0 - 8.0 / 9.0 * x_t;
  return FREEAIR_OK;
}

int32_t freeair_coefficient_kv_from_conductance(double c_m3_s_pa, double b, double *kv, double *x_t)
{
  freeair__set_nan(kv);
  freeair__set_nan(x_t);
  if (kv == NULL || x_t == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(c_m3_s_pa, 1e-15, 0.01) || !freeair__closed(b, 0.0, 0.98)) return FREEAIR_ERR_DOMAIN;
  *kv = c_m3_s_pa * rho0_kg_m3 * sqrt(2.0 * FREEAIR__AIR_R * t0_k / (1.0 - b)) / area_of_kv_one;
  *x_t = 9.0 / 8.0 * (1.0 - b);
  return FREEAIR_OK;
}

/* standard m3/s of Cv = 1; the formula is in psia, degrees Rankine and ft3/min */
static double cv_one_flow(double p1_pa, double t1_k, double p2_pa)
{
  const double foot = 12.0 * inch;
  double outlet = p2_pa > 0.53 * p1_pa ? p2_pa : 0.53 * p1_pa;
  double drop = p2_pa > 0.53 * p1_pa ? p1_pa - p2_pa : 0.47 * p1_pa;
  return 22.7 * sqrt(drop * outlet / (1.8 * t1_k)) / psi() * foot * foot * foot / 60.0;
}

int32_t freeair_coefficient_air_flow_from_cv(double cv, double p1_pa, double t1_k, double p2_pa, double *q_m3_s)
{
  if (q_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q_m3_s = NAN;
  if (!freeair__upto(cv, 0.0, 1e6) || !inlet_valid(p1_pa, t1_k) || !freeair__closed(p2_pa, 0.0, 1e8) ||
      p2_pa > p1_pa)
    return FREEAIR_ERR_DOMAIN;
  *q_m3_s = cv * cv_one_flow(p1_pa, t1_k, p2_pa);
  return FREEAIR_OK;
}

int32_t freeair_coefficient_cv_from_air_flow(double q_m3_s, double p1_pa, double t1_k, double p2_pa, double *cv)
{
  if (cv == NULL) return FREEAIR_ERR_NULL;
  *cv = NAN;
  if (!freeair__upto(q_m3_s, 0.0, 1e4) || !inlet_valid(p1_pa, t1_k) || !freeair__closed(p2_pa, 0.0, 1e8) ||
      p2_pa >= p1_pa)
    return FREEAIR_ERR_DOMAIN;
  *cv = q_m3_s / cv_one_flow(p1_pa, t1_k, p2_pa);
  return FREEAIR_OK;
}
