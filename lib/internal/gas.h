/* SPDX-License-Identifier: MIT */
/* What the ideal-gas topics share: the ranges they accept, and the head. */
#ifndef FREEAIR_INTERNAL_GAS_H
#define FREEAIR_INTERNAL_GAS_H

#include "internal/check.h"
#include "internal/power.h"

static inline int freeair__is_gas_constant(double r_j_kg_k)
{
  return freeair__closed(r_j_kg_k, 10.0, 10000.0);
}

static inline int freeair__is_pressure(double p_pa)
{
  return freeair__closed(p_pa, 1.0, 1e8);
}

static inline int freeair__is_temperature(double t_k)
{
  return freeair__closed(t_k, 1.0, 5000.0);
}

/* Polytropic exponent. */
static inline int freeair__is_exponent(double n)
{
  return freeair__closed(n, 0.5, 10.0);
}

/* Ratio of specific heats. */
static inline int freeair__is_heat_ratio(double k)
{
  return freeair__closed(k, 1.01, 5.0);
}

static inline int freeair__is_efficiency(double efficiency)
{
  return freeair__closed(efficiency, 0.001, 1.0);
}

/* Polytropic work over R T1: n/(n-1) ((p2/p1)^((n-1)/n) - 1), which is ln(p2/p1) at n = 1. */
static inline double freeair__polytropic_head(double p1_pa, double p2_pa, double n)
{
  return freeair__power_excess(freeair__log_ratio(p2_pa, p1_pa), (n - 1.0) / n);
}

#endif
