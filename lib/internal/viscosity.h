/* SPDX-License-Identifier: MIT */
/* Viscosity of air at low pressure: US Standard Atmosphere 1976, equation 51. Within
 * 1 % of reference equations from 200 K to 400 K up to 16 bar. */
#ifndef FREEAIR_INTERNAL_VISCOSITY_H
#define FREEAIR_INTERNAL_VISCOSITY_H

#include <math.h>

static inline double freeair__air_viscosity(double t_k)
{
  return 1.458e-6 * t_k * sqrt(t_k) / (t_k + 110.4);
}

#endif
