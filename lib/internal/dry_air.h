/* SPDX-License-Identifier: MIT */
/* Dry air as one substance: the equation of state of Lemmon, Jacobsen,
 * Penoncello and Friend (2000) in reduced variables delta = rho/rho_r and
 * tau = T_r/T, its density solver, and the transport equations of Lemmon and
 * Jacobsen (2004). Nothing here tests its arguments. */
#ifndef FREEAIR_INTERNAL_DRY_AIR_H
#define FREEAIR_INTERNAL_DRY_AIR_H

#include "internal/helmholtz.h"

#include <stdint.h>

#define FREEAIR__DRY_AIR_R 8.31451               /* J/(mol K), of the equation */
#define FREEAIR__DRY_AIR_MOLAR_MASS 0.02896546   /* kg/mol */
#define FREEAIR__DRY_AIR_REDUCING_T 132.6312     /* K, also the highest temperature at which air can be liquid */
#define FREEAIR__DRY_AIR_REDUCING_RHO 10447.7    /* mol/m3 */
#define FREEAIR__DRY_AIR_GAS_CONSTANT (FREEAIR__DRY_AIR_R / FREEAIR__DRY_AIR_MOLAR_MASS)
#define FREEAIR__DRY_AIR_REDUCING_KG_M3 (FREEAIR__DRY_AIR_REDUCING_RHO * FREEAIR__DRY_AIR_MOLAR_MASS)

enum { FREEAIR__DRY_AIR_TERMS = 19 };

/* All that the equation needs of a temperature. */
typedef struct freeair__dry_air_isotherm {
  double t_k;
  double tau;
  double amplitude[FREEAIR__DRY_AIR_TERMS];
} freeair__dry_air_isotherm;

/* Reduced ideal-gas and residual parts at one state. In the ideal part the
 * logarithm of delta is in a only. */
typedef struct freeair__dry_air_point {
  double rho_kg_m3;
  freeair__helmholtz ideal;
  freeair__helmholtz residual;
} freeair__dry_air_point;

void freeair__dry_air_isotherm_at(double t_k, freeair__dry_air_isotherm *isotherm);

/* Scaled density derivatives of the residual part, alone and fast. */
void freeair__dry_air_density_slopes(const freeair__dry_air_isotherm *isotherm, double delta, double *d, double *dd);

void freeair__dry_air_point_at(const freeair__dry_air_isotherm *isotherm, double rho_kg_m3,
                               freeair__dry_air_point *point);

/* Second and third virial coefficient, per mole. */
void freeair__dry_air_virials(double t_k, double *b_m3_mol, double *c_m6_mol2);

/* Ideal-gas part less the logarithm of delta. */
void freeair__dry_air_ideal(double tau, freeair__helmholtz *ideal);

/* Pressures of the dew and the bubble line below the reducing temperature. */
double freeair__dry_air_dew_pa(double t_k);
double freeair__dry_air_bubble_pa(double t_k);

/* Density of the stable phase; FREEAIR_ERR_NO_SOLUTION between dew and bubble
 * line. guess_kg_m3 may be NaN. iterations may be null. */
int32_t freeair__dry_air_density(const freeair__dry_air_isotherm *isotherm, double p_pa, double guess_kg_m3,
                                 double *rho_kg_m3, int *iterations);

/* Whether a density lies outside the dome between dew and bubble line. */
int freeair__dry_air_stable(const freeair__dry_air_isotherm *isotherm, double rho_kg_m3);

double freeair__dry_air_pressure(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point);
double freeair__dry_air_enthalpy(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point);
double freeair__dry_air_entropy(const freeair__dry_air_point *point);
double freeair__dry_air_cv(const freeair__dry_air_point *point);
double freeair__dry_air_cp(const freeair__dry_air_point *point);

double freeair__dry_air_viscosity(double t_k, double rho_kg_m3);
double freeair__dry_air_conductivity(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point);

#endif
