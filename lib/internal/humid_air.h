/* SPDX-License-Identifier: MIT */
/* Moist air: the Helmholtz energy of IAPWS G8-10, dry air and vapour each by its
 * own equation and joined by cross virial coefficients; saturation by the virial
 * fugacity equation of IAPWS G9-15. Nothing here tests its arguments. */
#ifndef FREEAIR_INTERNAL_HUMID_AIR_H
#define FREEAIR_INTERNAL_HUMID_AIR_H

#include <freeair/status.h>

#include "internal/check.h"
#include "internal/dry_air.h"
#include "internal/water.h"

/* Molar mass of water over that of dry air. */
#define FREEAIR__HUMID_MASS_RATIO (FREEAIR__WATER_MOLAR_MASS / FREEAIR__DRY_AIR_MOLAR_MASS)

static inline double freeair__humid_ratio_of_fraction(double mole_fraction)
{
  return FREEAIR__HUMID_MASS_RATIO * mole_fraction / (1.0 - mole_fraction);
}

static inline double freeair__humid_fraction_of_ratio(double humidity_ratio)
{
  return humidity_ratio / (FREEAIR__HUMID_MASS_RATIO + humidity_ratio);
}

/* The ranges of all functions of moist air, and those that the equations are made for. */
static inline int freeair__humid_in_range(double p_pa, double t_k)
{
  return freeair__closed(p_pa, 1.0, 1e7) && freeair__closed(t_k, 173.15, 573.15);
}

static inline int32_t freeair__humid_status(double p_pa, double t_k)
{
  return p_pa > 5e6 || t_k < 193.0 || t_k > 473.15 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

/* Virial coefficients: a dry air, w water. */
typedef struct freeair__humid_virials {
  double aa;
  double aw;
  double ww;
  double aaa;
  double aaw;
  double aww;
  double www;
} freeair__humid_virials;

void freeair__humid_virials_at(double t_k, freeair__humid_virials *v);

/* Logarithm of the fugacity coefficient of the vapour. */
double freeair__humid_log_fugacity(const freeair__humid_virials *v, double t_k, double p_pa, double mole_fraction);

/* Mole fraction of vapour in saturated air, 1 and more where the air would boil. */
double freeair__humid_saturation(double t_k, double p_pa, int ice, int real);

/* Temperature at which air of a mole fraction of vapour is saturated; NaN outside
 * 173.15 K to 573.15 K. */
double freeair__humid_dew_k(double p_pa, double mole_fraction, int ice, int real);

/* Relative humidity over water; where water would boil, by the saturation pressure alone. */
double freeair__humid_relative(double p_pa, double t_k, double mole_fraction, int real);

/* What the equation needs of a temperature and a composition. */
typedef struct freeair__humid_isotherm {
  double dry_share; /* mass of dry air in the whole */
  double t_k;
  freeair__dry_air_isotherm dry;
  freeair__water_isotherm water;
  /* the interaction energy is rho first + rho^2 second; and their derivatives by T */
  double first[3];
  double second[3];
} freeair__humid_isotherm;

typedef struct freeair__humid_point {
  double rho_kg_m3;
  double p_pa;
  double h_j_kg;
  double s_j_kg_k;
  double cv_j_kg_k;
  double cp_j_kg_k;
  double pressure_by_density;     /* at constant temperature */
  double pressure_by_temperature; /* at constant density */
  double throttling;              /* T dp/dT - rho dp/drho, without what cancels in an ideal gas */
} freeair__humid_point;

void freeair__humid_isotherm_at(double t_k, double humidity_ratio, freeair__humid_isotherm *isotherm);
void freeair__humid_point_at(const freeair__humid_isotherm *isotherm, double rho_kg_m3, freeair__humid_point *point);

/* Density of the gas at a pressure, and its enthalpy for each kilogram of dry air. */
double freeair__humid_density(const freeair__humid_isotherm *isotherm, double p_pa);
double freeair__humid_enthalpy(double p_pa, double t_k, double humidity_ratio);

/* Enthalpy of water, or of ice below the triple point. */
double freeair__humid_condensed_enthalpy(double p_pa, double t_k, int ice);

/* Wet bulb temperature, and the humidity ratio that one has; NaN where there is none. */
double freeair__humid_wet_bulb(double p_pa, double t_k, double humidity_ratio, int ice);
double freeair__humid_ratio_of_wet_bulb(double p_pa, double t_k, double wet_bulb_k, int ice);

#endif
