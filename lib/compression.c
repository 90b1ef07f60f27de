/* SPDX-License-Identifier: MIT */
#include <freeair/compression.h>
#include <freeair/status.h>

#include "internal/gas.h"

int32_t freeair_compression_work_isothermal(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double *w_j_kg)
{
  if (w_j_kg == NULL) return FREEAIR_ERR_NULL;
  *w_j_kg = NAN;
  if (!freeair__is_gas_constant(r_j_kg_k) || !freeair__is_temperature(t1_k) || !freeair__is_pressure(p1_pa) ||
      !freeair__is_pressure(p2_pa))
    return FREEAIR_ERR_DOMAIN;
  *w_j_kg = r_j_kg_k * t1_k * freeair__log_ratio(p2_pa, p1_pa);
  return FREEAIR_OK;
}

int32_t freeair_compression_work_isentropic(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double k,
                                            double *w_j_kg)
{
  if (w_j_kg == NULL) return FREEAIR_ERR_NULL;
  *w_j_kg = NAN;
  if (!freeair__is_heat_ratio(k)) return FREEAIR_ERR_DOMAIN;
  return freeair_compression_work_polytropic(r_j_kg_k, t1_k, p1_pa, p2_pa, k, w_j_kg);
}

int32_t freeair_compression_work_polytropic(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double n,
                                            double *w_j_kg)
{
  if (w_j_kg == NULL) return FREEAIR_ERR_NULL;
  *w_j_kg = NAN;
  if (!freeair__is_gas_constant(r_j_kg_k) || !freeair__is_temperature(t1_k) || !freeair__is_pressure(p1_pa) ||
      !freeair__is_pressure(p2_pa) || !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  *w_j_kg = r_j_kg_k * t1_k * freeair__polytropic_head(p1_pa, p2_pa, n);
  return FREEAIR_OK;
}

int32_t freeair_compression_free_air_work(double p_free_pa, double t_free_k, double t1_k, double p1_pa, double p2_pa,
                                          double n, double *w_j_m3)
{
  if (w_j_m3 == NULL) return FREEAIR_ERR_NULL;
  *w_j_m3 = NAN;
  if (!freeair__is_pressure(p_free_pa) || !freeair__is_temperature(t_free_k) || !freeair__is_temperature(t1_k) ||
      !freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  *w_j_m3 = p_free_pa * (t1_k / t_free_k) * freeair__polytropic_head(p1_pa, p2_pa, n);
  return FREEAIR_OK;
}

int32_t freeair_compression_power_from_mass_flow(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double n,
                                                 double m_kg_s, double efficiency, double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!freeair__closed(m_kg_s, 0.0, 1e6) || !freeair__is_efficiency(efficiency)) return FREEAIR_ERR_DOMAIN;
  double w_j_kg;
  int32_t status = freeair_compression_work_polytropic(r_j_kg_k, t1_k, p1_pa, p2_pa, n, &w_j_kg);
  if (status < 0) return status;
  *power_w = m_kg_s * w_j_kg / efficiency;
  return status;
}

int32_t freeair_compression_power_from_free_air(double p_free_pa, double t_free_k, double t1_k, double p1_pa,
                                                double p2_pa, double n, double fad_m3_s, double efficiency,
                                                double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!freeair__closed(fad_m3_s, 0.0, 1e6) || !freeair__is_efficiency(efficiency)) return FREEAIR_ERR_DOMAIN;
  double w_j_m3;
  int32_t status = freeair_compression_free_air_work(p_free_pa, t_free_k, t1_k, p1_pa, p2_pa, n, &w_j_m3);
  if (status < 0) return status;
  *power_w = fad_m3_s * w_j_m3 / efficiency;
  return status;
}

int32_t freeair_compression_temperature(double t1_k, double p1_pa, double p2_pa, double n, double *t2_k)
{
  if (t2_k == NULL) return FREEAIR_ERR_NULL;
  *t2_k = NAN;
  if (!freeair__is_temperature(t1_k) || !freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) ||
      !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  *t2_k = t1_k * exp(freeair__log_ratio(p2_pa, p1_pa) * ((n - 1.0) / n));
  return FREEAIR_OK;
}

int32_t freeair_compression_pressure_from_temperature(double t1_k, double t2_k, double p1_pa, double n,
                                                      double *p2_pa)
{
  if (p2_pa == NULL) return FREEAIR_ERR_NULL;
  *p2_pa = NAN;
  if (!freeair__is_temperature(t1_k) || !freeair__is_temperature(t2_k) || !freeair__is_pressure(p1_pa) ||
      !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  if (n == 1.0) return FREEAIR_ERR_NO_SOLUTION;
  double log_ratio = freeair__log_ratio(t2_k, t1_k) * n / (n - 1.0);
  if (!(fabs(log_ratio) < 20.0)) return FREEAIR_ERR_NO_SOLUTION;
  double p = p1_pa * exp(log_ratio);
  if (!freeair__is_pressure(p)) return FREEAIR_ERR_NO_SOLUTION;
  *p2_pa = p;
  return FREEAIR_OK;
}

int32_t freeair_compression_exponent_from_temperatures(double p1_pa, double t1_k, double p2_pa, double t2_k, double *n)
{
  if (n == NULL) return FREEAIR_ERR_NULL;
  *n = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_temperature(t1_k) || !freeair__is_pressure(p2_pa) ||
      !freeair__is_temperature(t2_k))
    return FREEAIR_ERR_DOMAIN;
  if (p1_pa == p2_pa) return FREEAIR_ERR_NO_SOLUTION;
  double rest = 1.0 - freeair__log_ratio(t2_k, t1_k) / freeair__log_ratio(p2_pa, p1_pa);
  if (!freeair__closed(rest, 0.1, 2.0)) return FREEAIR_ERR_NO_SOLUTION;
  *n = 1.0 / rest;
  return FREEAIR_OK;
}

int32_t freeair_compression_exponent_from_volumes(double p1_pa, double v1_m3, double p2_pa, double v2_m3, double *n)
{
  if (n == NULL) return FREEAIR_ERR_NULL;
  *n = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__closed(v1_m3, 1e-12, 1e6) || !freeair__is_pressure(p2_pa) ||
      !freeair__closed(v2_m3, 1e-12, 1e6))
    return FREEAIR_ERR_DOMAIN;
  if (v1_m3 == v2_m3) return FREEAIR_ERR_NO_SOLUTION;
  double exponent = freeair__log_ratio(p2_pa, p1_pa) / freeair__log_ratio(v1_m3, v2_m3);
  if (!freeair__is_exponent(exponent)) return FREEAIR_ERR_NO_SOLUTION;
  *n = exponent;
  return FREEAIR_OK;
}

int32_t freeair_compression_heat_rejected(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double n, double k,
                                          double *q_j_kg)
{
  if (q_j_kg == NULL) return FREEAIR_ERR_NULL;
  *q_j_kg = NAN;
  if (!freeair__is_heat_ratio(k)) return FREEAIR_ERR_DOMAIN;
  double w_j_kg;
  int32_t status = freeair_compression_work_polytropic(r_j_kg_k, t1_k, p1_pa, p2_pa, n, &w_j_kg);
  if (status < 0) return status;
  *q_j_kg = w_j_kg * (k - n) / (n * (k - 1.0));
  return status;
}
