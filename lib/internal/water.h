/* SPDX-License-Identifier: MIT */
/* Water as vapour, liquid and ice, for moist air: the IAPWS-95 formulation, IAPWS
 * R10-06 for ice Ih, and saturation pressures. Nothing here tests its arguments. */
#ifndef FREEAIR_INTERNAL_WATER_H
#define FREEAIR_INTERNAL_WATER_H

#include "internal/helmholtz.h"

#define FREEAIR__WATER_MOLAR_MASS 0.018015268 /* kg/mol */
#define FREEAIR__WATER_GAS_CONSTANT 461.51805 /* J/(kg K) */
#define FREEAIR__WATER_TRIPLE_T 273.16
#define FREEAIR__WATER_TRIPLE_PA 611.657

enum { FREEAIR__WATER_TERMS = 51 };

/* All that the equation needs of a temperature. */
typedef struct freeair__water_isotherm {
  double t_k;
  double tau;
  double amplitude[FREEAIR__WATER_TERMS];
} freeair__water_isotherm;

/* Reduced parts at one state. In the ideal part the logarithm of delta is in a only. */
typedef struct freeair__water_point {
  double rho_kg_m3;
  freeair__helmholtz ideal;
  freeair__helmholtz residual;
} freeair__water_point;

/* The two non-analytic terms of IAPWS-95 are left out: below 580 K and away from
 * the critical density they are smaller than rounding. */
void freeair__water_isotherm_at(double t_k, freeair__water_isotherm *isotherm);
void freeair__water_point_at(const freeair__water_isotherm *isotherm, double rho_kg_m3, freeair__water_point *point);

/* Second and third virial coefficient, per mole. */
void freeair__water_virials(double t_k, double *b_m3_mol, double *c_m6_mol2);

/* Density of the liquid, or of the vapour, at a pressure; the liquid also a little supercooled or expanded. */
double freeair__water_density(const freeair__water_isotherm *isotherm, double p_pa, int liquid);

double freeair__water_enthalpy(const freeair__water_isotherm *isotherm, const freeair__water_point *point);

/* Specific volume and enthalpy of ice Ih. */
void freeair__ice(double t_k, double p_pa, double *v_m3_kg, double *h_j_kg);

/* Saturation pressure over ice, 50 K to 273.16 K, and over supercooled water, 123 K to 332 K. */
double freeair__ice_pressure_pa(double t_k);
double freeair__supercooled_pressure_pa(double t_k);

/* Over liquid water, supercooled below the triple point; or over ice below it. */
double freeair__saturation_over_pa(double t_k, int ice);

/* The slope of the logarithm of those by temperature. */
double freeair__ice_log_slope(double t_k);
double freeair__supercooled_log_slope(double t_k);
double freeair__saturation_log_slope(double t_k, int ice);

/* The inverse of freeair__saturation_over_pa; NaN below 50 K or 123 K. */
double freeair__saturation_temperature_k(double p_pa, int ice);

#endif
