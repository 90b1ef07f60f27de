/* SPDX-License-Identifier: MIT */
/* Humid air as an ideal gas whose heat capacity rises with temperature, and its
 * flow through openings. */
#ifndef FREEAIR_INDEPENDENT_AIR_H
#define FREEAIR_INDEPENDENT_AIR_H

#include <freeair/freeair.h>

/* Ratio of heat capacities, for flow through openings and for the cool receiver. */
#define AIR_K 1.4

typedef struct air {
  double gas_j_kg_k;     /* gas constant */
  double critical_drop;  /* share of the upstream pressure at which the flow chokes */
  double critical_psi;   /* and its flow function */
  double creep_slope;    /* flow function a x + b x^2 for the smallest drops x */
  double creep_curvature;
} air;

air air_at(const freeair_machine *m, const freeair_machine_site *site);

double air_enthalpy(const air *a, double k);                       /* J/kg */
double air_internal_energy(const air *a, double k);                /* J/kg */
double air_temperature(const air *a, double internal_energy_j_kg); /* K */

/* Flow in kg/s through an effective area from p1, t1 to a lower p2. */
double air_through(const air *a, double area_m2, double p1_pa, double t1_k, double p2_pa);

/* A ramp from 0 to 1 without a kink at its ends. */
double smooth_step(double x);

#endif
