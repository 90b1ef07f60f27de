/* SPDX-License-Identifier: MIT */
#include "air.h"

#include <math.h>

static const double dry_air_j_kg_k = 287.05;
/* Below this share of the upstream pressure the root of the nozzle's equation has
 * too steep a slope for any integrator. */
static const double creep = 1e-3;

double smooth_step(double x)
{
  return x <= 0.0 ? 0.0 : x >= 1.0 ? 1.0 : x * x * (3.0 - 2.0 * x);
}

/* Flow function of an isentropic nozzle over the relative drop of pressure. */
static double psi(double drop)
{
  double r = 1.0 - drop;
  return sqrt(2.0 * AIR_K / (AIR_K - 1.0) * (pow(r, 2.0 / AIR_K) - pow(r, (AIR_K + 1.0) / AIR_K)));
}

/* The parabola through no flow that meets psi with its slope. */
static void fit_creep(air *a)
{
  double r = 1.0 - creep;
  double value = psi(creep);
  double slope = 2.0 * AIR_K / (AIR_K - 1.0) *
                 (-(2.0 / AIR_K) * pow(r, 2.0 / AIR_K - 1.0) + (AIR_K + 1.0) / AIR_K * pow(r, 1.0 / AIR_K)) /
                 (2.0 * value);
  a->creep_curvature = (slope * creep - value) / (creep * creep);
  a->creep_slope = slope - 2.0 * a->creep_curvature * creep;
}

/* Saturation pressure over water by Magnus' equation. */
static double humidity_ratio(const freeair_machine_site *site)
{
  double c = site->ambient_k - 273.15;
  double vapour = site->humidity * 611.2 * exp(17.62 * c / (243.12 + c));
  return 0.621945 * vapour / (site->barometric_pa - vapour);
}

air air_at(const freeair_machine *m, const freeair_machine_site *site)
{
  air a = {.gas_j_kg_k = m->gas_constant_j_kg_k};
  if (site->humidity > 0.0) {
    double w = humidity_ratio(site);
    a.gas_j_kg_k = (a.gas_j_kg_k + w * 461.52) / (1.0 + w);
  }
  a.critical_drop = 1.0 - pow(2.0 / (AIR_K + 1.0), AIR_K / (AIR_K - 1.0));
  a.critical_psi = psi(a.critical_drop);
  fit_creep(&a);
  return a;
}

/* cp = 1002.5 + 275e-6 (T - 200)^2 J/kg K follows dry air within half a percent from 250 to 700 K. */
double air_enthalpy(const air *a, double k)
{
  double d = k - 200.0;
  return a->gas_j_kg_k / dry_air_j_kg_k * (1002.5 * k + 275e-6 / 3.0 * d * d * d);
}

double air_internal_energy(const air *a, double k)
{
  return air_enthalpy(a, k) - a->gas_j_kg_k * k;
}

/* Newton's steps; the curvature is so small that four reach round-off. */
double air_temperature(const air *a, double internal_energy_j_kg)
{
  double k = internal_energy_j_kg / (2.5 * a->gas_j_kg_k);
  for (int i = 0; i < 4; i++) {
    double d = k - 200.0;
    double error = air_internal_energy(a, k) - internal_energy_j_kg;
    double cv = a->gas_j_kg_k / dry_air_j_kg_k * (1002.5 + 275e-6 * d * d) - a->gas_j_kg_k;
    k -= error / cv;
  }
  return k;
}

static double flow_function(const air *a, double drop)
{
  if (drop >= a->critical_drop) return a->critical_psi;
  if (drop < creep) return drop * (a->creep_slope + a->creep_curvature * drop);
  /* with k = 7/5 all powers are those of the seventh root */
  double root = exp(log(1.0 - drop) / 7.0);
  double root2 = root * root;
  double root10 = root2 * root2 * root2 * root2 * root2;
  return sqrt(7.0 * root10 * (1.0 - root2));
}

double air_through(const air *a, double area_m2, double p1_pa, double t1_k, double p2_pa)
{
  return area_m2 * p1_pa / sqrt(a->gas_j_kg_k * t1_k) * flow_function(a, (p1_pa - p2_pa) / p1_pa);
}
