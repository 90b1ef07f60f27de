/* SPDX-License-Identifier: MIT */
/* x - log(1 + x) with all its digits near 0, where the two nearly cancel: what
 * friction does to a gas near the speed of sound is of this form. */
#ifndef FREEAIR_INTERNAL_LOG_REST_H
#define FREEAIR_INTERNAL_LOG_REST_H

#include <math.h>

static inline double freeair__log_rest(double x)
{
  if (fabs(x) > 0.25) return x - log1p(x);
  /* with z = x/(2 + x): log(1 + x) = 2 (z + z^3/3 + z^5/5 + ...), x - 2 z = x z */
  const double z = x / (2.0 + x);
  const double z2 = z * z;
  double sum = 0.0;
  for (int n = 17; n >= 3; n -= 2) sum = sum * z2 + 1.0 / n;
  return z * (x - 2.0 * z2 * sum);
}

#endif
