/* SPDX-License-Identifier: MIT */
/* Sums of exponentials kept as logarithms, so that nothing underflows. */
#ifndef FREEAIR_INTERNAL_LOGSUM_H
#define FREEAIR_INTERNAL_LOGSUM_H

#include <math.h>

/* ln(exp(a) + exp(b)); -inf is the logarithm of nothing. */
static inline double freeair__logsum(double a, double b)
{
  const double most = a > b ? a : b;
  const double least = a > b ? b : a;
  return isinf(least) ? most : most + log1p(exp(least - most));
}

/* Adds the logarithm x to the running sum. */
static inline void freeair__logsum_add(double *sum, double x)
{
  *sum = freeair__logsum(*sum, x);
}

/* x ln(x), 0 at 0. */
static inline double freeair__xlogx(double x)
{
  return x > 0.0 ? x * log(x) : 0.0;
}

#endif
