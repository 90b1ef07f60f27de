/* SPDX-License-Identifier: MIT */
/* The two elementary functions behind every power law of two states, written
 * so that nothing is lost where the states are close or the exponent vanishes. */
#ifndef FREEAIR_INTERNAL_POWER_H
#define FREEAIR_INTERNAL_POWER_H

#include <math.h>

/* ln(b / a) for positive a and b. The difference of two doubles within a factor
 * of two of one another is exact, hence so is all but the last digit here. */
static inline double freeair__log_ratio(double b, double a)
{
  double ratio = b / a;
  return ratio > 0.5 && ratio < 2.0 ? log1p((b - a) / a) : log(ratio);
}

/* (exp(m x) - 1) / m, which is x at m = 0. */
static inline double freeair__power_excess(double x, double m)
{
  return m != 0.0 ? expm1(m * x) / m : x;
}

#endif
