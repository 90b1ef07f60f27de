/* SPDX-License-Identifier: MIT */
#include <freeair/performance.h>
#include <freeair/status.h>

#include "internal/gas.h"

static int is_flow(double m_kg_s)
{
  return freeair__closed(m_kg_s, 0.0, 1e6);
}

/* A power that may be zero, and one that is divided by. */
static int is_power(double power_w)
{
  return freeair__closed(power_w, 0.0, 1e12);
}

static int is_divisor_power(double power_w)
{
  return freeair__closed(power_w, 0.001, 1e12);
}

static int is_rise(double p1_pa, double p2_pa)
{
  return freeair__is_pressure(p1_pa) && freeair__is_pressure(p2_pa) && p2_pa > p1_pa;
}

static int is_heating(double t1_k, double t2_k)
{
  return freeair__is_temperature(t1_k) && freeair__is_temperature(t2_k) && t2_k > t1_k;
}

/* Isentropic temperature rise over T1. */
static double isentropic_rise(double p1_pa, double p2_pa, double k)
{
  return expm1(freeair__log_ratio(p2_pa, p1_pa) * ((k - 1.0) / k));
}

static int32_t give(double value, double *efficiency)
{
  *efficiency = value;
  return value > 1.0 ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

int32_t freeair_performance_efficiency_isothermal(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                  double m_kg_s, double power_w, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!freeair__is_gas_constant(r_j_kg_k) || !freeair__is_temperature(t1_k) || !is_rise(p1_pa, p2_pa) ||
      !is_flow(m_kg_s) || !is_divisor_power(power_w))
    return FREEAIR_ERR_DOMAIN;
  return give(m_kg_s * r_j_kg_k * t1_k * freeair__log_ratio(p2_pa, p1_pa) / power_w, efficiency);
}

int32_t freeair_performance_efficiency_isentropic(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double k,
                                                  double m_kg_s, double power_w, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!freeair__is_gas_constant(r_j_kg_k) || !freeair__is_temperature(t1_k) || !is_rise(p1_pa, p2_pa) ||
      !freeair__is_heat_ratio(k) || !is_flow(m_kg_s) || !is_divisor_power(power_w))
    return FREEAIR_ERR_DOMAIN;
  return give(m_kg_s * r_j_kg_k * t1_k * freeair__polytropic_head(p1_pa, p2_pa, k) / power_w, efficiency);
}

int32_t freeair_performance_efficiency_isothermal_from_exponent(double p1_pa, double p2_pa, double n,
                                                                double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!is_rise(p1_pa, p2_pa) || !freeair__is_exponent(n)) return FREEAIR_ERR_DOMAIN;
  return give(freeair__log_ratio(p2_pa, p1_pa) / freeair__polytropic_head(p1_pa, p2_pa, n), efficiency);
}

int32_t freeair_performance_efficiency_isentropic_from_temperatures(double k, double p1_pa, double t1_k, double p2_pa,
                                                                    double t2_k, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!freeair__is_heat_ratio(k) || !is_rise(p1_pa, p2_pa) || !is_heating(t1_k, t2_k)) return FREEAIR_ERR_DOMAIN;
  return give(t1_k * isentropic_rise(p1_pa, p2_pa, k) / (t2_k - t1_k), efficiency);
}

int32_t freeair_performance_efficiency_polytropic_from_temperatures(double k, double p1_pa, double t1_k, double p2_pa,
                                                                    double t2_k, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!freeair__is_heat_ratio(k) || !is_rise(p1_pa, p2_pa) || !is_heating(t1_k, t2_k)) return FREEAIR_ERR_DOMAIN;
  return give((k - 1.0) / k * freeair__log_ratio(p2_pa, p1_pa) / freeair__log_ratio(t2_k, t1_k), efficiency);
}

int32_t freeair_performance_efficiency_mechanical(double indicated_w, double shaft_w, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!is_power(indicated_w) || !is_divisor_power(shaft_w)) return FREEAIR_ERR_DOMAIN;
  return give(indicated_w / shaft_w, efficiency);
}

int32_t freeair_performance_efficiency_overall(double ideal_w, double input_w, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!is_power(ideal_w) || !is_divisor_power(input_w)) return FREEAIR_ERR_DOMAIN;
  return give(ideal_w / input_w, efficiency);
}

int32_t freeair_performance_specific_power(double power_w, double fad_m3_s, double *specific_j_m3)
{
  if (specific_j_m3 == NULL) return FREEAIR_ERR_NULL;
  *specific_j_m3 = NAN;
  if (!is_power(power_w) || !freeair__closed(fad_m3_s, 1e-9, 1e6)) return FREEAIR_ERR_DOMAIN;
  *specific_j_m3 = power_w / fad_m3_s;
  return FREEAIR_OK;
}

int32_t freeair_performance_saving_from_pressure(double p1_pa, double p2_pa, double p2_reduced_pa, double n,
                                                 double *saving)
{
  if (saving == NULL) return FREEAIR_ERR_NULL;
  *saving = NAN;
  if (!is_rise(p1_pa, p2_pa) || !freeair__is_pressure(p2_reduced_pa) || !(p2_reduced_pa >= p1_pa) ||
      !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  /* the difference of the two works is the work between the two discharge pressures, from the hotter inlet */
  double m = (n - 1.0) / n;
  double factor = exp(m * freeair__log_ratio(p2_reduced_pa, p1_pa));
  *saving = factor * freeair__polytropic_head(p2_reduced_pa, p2_pa, n) / freeair__polytropic_head(p1_pa, p2_pa, n);
  return FREEAIR_OK;
}

int32_t freeair_performance_temperature_from_efficiency(double t1_k, double p1_pa, double p2_pa, double k,
                                                        double efficiency, double *t2_k)
{
  if (t2_k == NULL) return FREEAIR_ERR_NULL;
  *t2_k = NAN;
  if (!freeair__is_temperature(t1_k) || !freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) ||
      !(p2_pa >= p1_pa) || !freeair__is_heat_ratio(k) || !freeair__is_efficiency(efficiency))
    return FREEAIR_ERR_DOMAIN;
  *t2_k = t1_k + t1_k * isentropic_rise(p1_pa, p2_pa, k) / efficiency;
  return FREEAIR_OK;
}

int32_t freeair_performance_heat_from_power(double power_w, double m_kg_s, double cp_j_kg_k, double t1_k, double t2_k,
                                            double *heat_w)
{
  if (heat_w == NULL) return FREEAIR_ERR_NULL;
  *heat_w = NAN;
  if (!is_power(power_w) || !is_flow(m_kg_s) || !freeair__closed(cp_j_kg_k, 10.0, 100000.0) ||
      !freeair__is_temperature(t1_k) || !freeair__is_temperature(t2_k))
    return FREEAIR_ERR_DOMAIN;
  *heat_w = power_w - m_kg_s * cp_j_kg_k * (t2_k - t1_k);
  return FREEAIR_OK;
}
