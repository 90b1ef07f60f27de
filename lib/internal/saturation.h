/* SPDX-License-Identifier: MIT */
/* Saturation of water over the liquid: IAPWS-IF97, region 4, one quadratic form
 * in the fourth root of pressure and in a shifted temperature, solved for either.
 * Valid from 273.15 K to 647.096 K; extrapolated over supercooled water the
 * pressure stays within 0.05 % down to 243 K and 1.5 % (0.1 Pa) at 223 K of the
 * equation of Murphy and Koop (2005). */
#ifndef FREEAIR_INTERNAL_SATURATION_H
#define FREEAIR_INTERNAL_SATURATION_H

#include <math.h>

/* Equation 30. */
static inline double freeair__saturation_pressure_pa(double t_k)
{
  const double theta = t_k - 0.23855557567849 / (t_k - 650.17534844798);
  const double a = (theta + 1167.0521452767) * theta - 724213.16703206;
  const double b = (-17.073846940092 * theta + 12020.824702470) * theta - 3232555.0322333;
  const double c = (14.915108613530 * theta - 4823.2657361591) * theta + 405113.40542057;
  const double fourth_root = 2.0 * c / (sqrt(b * b - 4.0 * a * c) - b);
  const double square = fourth_root * fourth_root;
  return square * square * 1e6;
}

/* Equation 31. */
static inline double freeair__saturation_temperature(double p_pa)
{
  const double beta = sqrt(sqrt(p_pa * 1e-6));
  const double e = (beta - 17.073846940092) * beta + 14.915108613530;
  const double f = (1167.0521452767 * beta + 12020.824702470) * beta - 4823.2657361591;
  const double g = (-724213.16703206 * beta - 3232555.0322333) * beta + 405113.40542057;
  const double d = 2.0 * g / (-f - sqrt(f * f - 4.0 * e * g));
  const double sum = 650.17534844798 + d;
  return 0.5 * (sum - sqrt(sum * sum - 4.0 * (-0.23855557567849 + 650.17534844798 * d)));
}

#endif
