/* SPDX-License-Identifier: MIT */
#include <freeair/flow.h>
#include <freeair/status.h>

#include "internal/check.h"

/* Throughout, u = sqrt(1 - (p2/p1)^((k-1)/k)), the isentropic velocity as a
 * fraction of its limit: 0 at rest, sqrt((k-1)/(k+1)) at the critical state. In
 * u the mass flux is sqrt(2k/(k-1)) u (1 - u^2)^(1/(k-1)). */

static int k_valid(double k)
{
  return freeair__upto(k, 1.0, 2.0);
}

static int gas_valid(double k, double r_j_kg_k)
{
  return k_valid(k) && freeair__closed(r_j_kg_k, 10.0, 10000.0);
}

static int inlet_valid(double p1_pa, double t1_k)
{
  return freeair__closed(p1_pa, 1.0, 1e8) && freeair__closed(t1_k, 1.0, 5000.0);
}

static double critical_pressure_ratio(double k)
{
  return exp(-k / (k - 1.0) * log1p(0.5 * (k - 1.0)));
}

static double critical_coefficient(double k)
{
  return sqrt(k) * exp(-(k + 1.0) / (2.0 * (k - 1.0)) * log1p(0.5 * (k - 1.0)));
}

/* m sqrt(R T1) / (A p1), for p2 <= p1 */
static double mass_flux(double p1_pa, double p2_pa, double k)
{
  double drop = (p1_pa - p2_pa) / p1_pa;
  if (1.0 - drop <= critical_pressure_ratio(k)) return critical_coefficient(k);
  double log_ratio = log1p(-drop);
  return sqrt(-2.0 * k / (k - 1.0) * expm1((k - 1.0) / k * log_ratio)) * exp(log_ratio / k);
}

int32_t freeair_flow_critical_pressure_ratio(double k, double *ratio)
{
  if (ratio == NULL) return FREEAIR_ERR_NULL;
  *ratio = NAN;
  if (!k_valid(k)) return FREEAIR_ERR_DOMAIN;
  *ratio = critical_pressure_ratio(k);
  return FREEAIR_OK;
}

int32_t freeair_flow_critical_coefficient(double k, double *coefficient)
{
  if (coefficient == NULL) return FREEAIR_ERR_NULL;
  *coefficient = NAN;
  if (!k_valid(k)) return FREEAIR_ERR_DOMAIN;
  *coefficient = critical_coefficient(k);
  return FREEAIR_OK;
}

int32_t freeair_flow_mass_flow(double area_m2, double p1_pa, double t1_k, double p2_pa, double k, double r_j_kg_k,
                               double *mass_kg_s)
{
  if (mass_kg_s == NULL) return FREEAIR_ERR_NULL;
  *mass_kg_s = NAN;
  if (!freeair__upto(area_m2, 0.0, 100.0) || !inlet_valid(p1_pa, t1_k) || !freeair__closed(p2_pa, 0.0, 1e8) ||
      !gas_valid(k, r_j_kg_k) || p2_pa > p1_pa)
    return FREEAIR_ERR_DOMAIN;
  *mass_kg_s = area_m2 * p1_pa / sqrt(r_j_kg_k * t1_k) * mass_flux(p1_pa, p2_pa, k);
  return FREEAIR_OK;
}

int32_t freeair_flow_area_from_mass_flow(double mass_kg_s, double p1_pa, double t1_k, double p2_pa, double k,
                                         double r_j_kg_k, double *area_m2)
{
  if (area_m2 == NULL) return FREEAIR_ERR_NULL;
  *area_m2 = NAN;
  if (!freeair__upto(mass_kg_s, 0.0, 1e6) || !inlet_valid(p1_pa, t1_k) || !freeair__closed(p2_pa, 0.0, 1e8) ||
      !gas_valid(k, r_j_kg_k) || p2_pa >= p1_pa)
    return FREEAIR_ERR_DOMAIN;
  *area_m2 = mass_kg_s * sqrt(r_j_kg_k * t1_k) / (p1_pa * mass_flux(p1_pa, p2_pa, k));
  return FREEAIR_OK;
}

int32_t freeair_flow_outlet_pressure_from_mass_flow(double mass_kg_s, double area_m2, double p1_pa, double t1_k,
                                                    double k, double r_j_kg_k, double *p2_pa)
{
  if (p2_pa == NULL) return FREEAIR_ERR_NULL;
  *p2_pa = NAN;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(area_m2, 1e-15, 100.0) ||
      !inlet_valid(p1_pa, t1_k) || !gas_valid(k, r_j_kg_k))
    return FREEAIR_ERR_DOMAIN;
  double flux = mass_kg_s * sqrt(r_j_kg_k * t1_k) / (area_m2 * p1_pa);
  double choked = critical_coefficient(k);
  if (flux > choked) return FREEAIR_ERR_NO_SOLUTION;
  double scale = sqrt(2.0 * k / (k - 1.0));
  double low = 0.0;
  double high = sqrt((k - 1.0) / (k + 1.0));
  double u = flux / choked * high;
  for (int step = 0; flux > 0.0 && step < 100; step++) {
    double density = exp(log1p(-u * u) / (k - 1.0));
    double error = scale * u * density - flux;
    if (error > 0.0)
      high = u;
    else
      low = u;
    double slope = scale * density * (1.0 - 2.0 * u * u / ((k - 1.0) * (1.0 - u * u)));
    double next = slope > 0.0 ? u - error / slope : high;
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    double change = fabs(next - u);
    u = next;
    if (change <= 2e-16 * u) break;
  }
  *p2_pa = p1_pa * exp(k / (k - 1.0) * log1p(-u * u));
  return FREEAIR_OK;
}

int32_t freeair_flow_inlet_pressure_from_mass_flow(double mass_kg_s, double area_m2, double t1_k, double p2_pa,
                                                   double k, double r_j_kg_k, double *p1_pa)
{
  if (p1_pa == NULL) return FREEAIR_ERR_NULL;
  *p1_pa = NAN;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(area_m2, 1e-15, 100.0) ||
      !freeair__closed(t1_k, 1.0, 5000.0) || !freeair__closed(p2_pa, 0.0, 1e8) || !gas_valid(k, r_j_kg_k))
    return FREEAIR_ERR_DOMAIN;
  double flux_force = mass_kg_s * sqrt(r_j_kg_k * t1_k) / area_m2;
  double choked = flux_force / critical_coefficient(k);
  if (choked * critical_pressure_ratio(k) >= p2_pa) {
    *p1_pa = choked;
    return FREEAIR_OK;
  }
  double scale = sqrt(2.0 * k / (k - 1.0)) * p2_pa;
  double u = 2.0 * flux_force / (scale + sqrt(scale * scale + 4.0 * flux_force * flux_force));
  *p1_pa = p2_pa * exp(-k / (k - 1.0) * log1p(-u * u));
  return FREEAIR_OK;
}

int32_t freeair_flow_isentropic_ratios(double mach, double k, double *pressure_ratio, double *temperature_ratio,
                                       double *density_ratio, double *area_ratio)
{
  freeair__set_nan(pressure_ratio);
  freeair__set_nan(temperature_ratio);
  freeair__set_nan(density_ratio);
  freeair__set_nan(area_ratio);
  if (pressure_ratio == NULL || temperature_ratio == NULL || density_ratio == NULL || area_ratio == NULL)
    return FREEAIR_ERR_NULL;
  if (!freeair__closed(mach, 1e-6, 10.0) || !k_valid(k)) return FREEAIR_ERR_DOMAIN;
  double heating = log1p(0.5 * (k - 1.0) * mach * mach);
  double to_critical = log1p((k - 1.0) / (k + 1.0) * (mach - 1.0) * (mach + 1.0));
  *pressure_ratio = exp(-k / (k - 1.0) * heating);
  *temperature_ratio = exp(-heating);
  *density_ratio = exp(-heating / (k - 1.0));
  *area_ratio = exp((k + 1.0) / (2.0 * (k - 1.0)) * to_critical) / mach;
  return FREEAIR_OK;
}

int32_t freeair_flow_mach_from_pressure_ratio(double pressure_ratio, double k, double *mach)
{
  if (mach == NULL) return FREEAIR_ERR_NULL;
  *mach = NAN;
  if (!freeair__closed(pressure_ratio, 1e-12, 1.0) || !k_valid(k)) return FREEAIR_ERR_DOMAIN;
  *mach = sqrt(2.0 / (k - 1.0) * expm1(-(k - 1.0) / k * log(pressure_ratio)));
  return FREEAIR_OK;
}

/* ln(A/A*) and its derivative with respect to x = ln M */
static double log_area_ratio(double x, double k, double *slope)
{
  double share = (k - 1.0) / (k + 1.0);
  double excess = share * expm1(2.0 * x);
  *slope = (1.0 - share) * expm1(2.0 * x) / (1.0 + excess);
  return 0.5 / share * log1p(excess) - x;
}

int32_t freeair_flow_mach_from_area_ratio(double area_ratio, int32_t branch, double k, double *mach)
{
  if (mach == NULL) return FREEAIR_ERR_NULL;
  *mach = NAN;
  if (!freeair__closed(area_ratio, 1.0, 1e6) || !k_valid(k) ||
      (branch != FREEAIR_FLOW_SUBSONIC && branch != FREEAIR_FLOW_SUPERSONIC))
    return FREEAIR_ERR_DOMAIN;
  double target = log(area_ratio);
  double slope;
  double x = -target - 0.7; /* ln(A/A*) exceeds the target here, for every k */
  if (branch == FREEAIR_FLOW_SUPERSONIC)
    for (x = 0.5; log_area_ratio(x, k, &slope) < target;) x *= 2.0;
  for (int step = 0; step < 100; step++) {
    double error = log_area_ratio(x, k, &slope) - target;
    if (!(error > 0.0)) break;
    double next = x - error / slope;
    if (next == x || next * x <= 0.0) break;
    x = next;
  }
  *mach = area_ratio > 1.0 ? exp(x) : 1.0;
  return FREEAIR_OK;
}
