/* SPDX-License-Identifier: MIT */
/* The gas of the crank-angle model: temperature from internal energy, with a
 * constant heat capacity or one that rises with temperature. */
#ifndef FREEAIR_INTERNAL_CYCLE_GAS_H
#define FREEAIR_INTERNAL_CYCLE_GAS_H

enum { FREEAIR__GAS_TERMS = 16 };

/* Temperature over internal energy divided by the gas constant (a temperature
 * too): a power series in s of [-1;1], straight beyond both ends. What follows
 * from one series agrees to rounding: cv/R is the reciprocal of its slope. */
typedef struct freeair__gas {
  int warm; /* whether the heat capacity follows temperature */
  double r;
  double constant_cp;
  double middle; /* of the energy */
  double scale;  /* one over half of its range */
  double series[FREEAIR__GAS_TERMS];
  double ends[2][2]; /* temperature and slope at both ends */
} freeair__gas;

/* k at 293.15 K; share of the rise of dry air's heat capacity, 0 for none. */
void freeair__gas_build(freeair__gas *gas, double r, double k, double share);

static inline double freeair__gas_temperature(const freeair__gas *gas, double energy, double *slope)
{
  double s = (energy - gas->middle) * gas->scale;
  if (!(s > -1.0 && s < 1.0)) {
    const double *end = gas->ends[s >= 1.0];
    *slope = end[1];
    return end[0] + end[1] * (s >= 1.0 ? s - 1.0 : s + 1.0) / gas->scale;
  }
  double t = gas->series[FREEAIR__GAS_TERMS - 1];
  double d = 0.0;
  for (int i = FREEAIR__GAS_TERMS - 2; i >= 0; i--) {
    d = d * s + t;
    t = t * s + gas->series[i];
  }
  *slope = d * gas->scale;
  return t;
}

/* Specific enthalpy, and temperature from it. */
double freeair__gas_enthalpy(const freeair__gas *gas, double t);
double freeair__gas_temperature_of_enthalpy(const freeair__gas *gas, double h);

/* Internal energy over the gas constant. */
double freeair__gas_energy(const freeair__gas *gas, double t);

#endif
