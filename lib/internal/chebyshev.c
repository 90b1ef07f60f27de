/* SPDX-License-Identifier: MIT */
#include "internal/chebyshev.h"

#include <math.h>

static const double pi = 3.14159265358979323846;

double freeair__chebyshev_point(int i, int n)
{
  return cos(pi * (i + 0.5) / n);
}

void freeair__chebyshev_series(int n, const double *value, double *series)
{
  double before[FREEAIR__CHEBYSHEV_MOST] = {1.0};
  double now[FREEAIR__CHEBYSHEV_MOST] = {0.0, 1.0};
  for (int i = 0; i < n; i++) series[i] = 0.0;
  for (int j = 0; j < n; j++) {
    double sum = 0.0;
    for (int i = 0; i < n; i++) sum += value[i] * cos(pi * j * (i + 0.5) / n);
    const double weight = sum * (j == 0 ? 1.0 : 2.0) / n;
    /* before and now are the polynomials j and j+1 in powers of s */
    double shifted = 0.0;
    for (int i = 0; i < n; i++) {
      series[i] += weight * before[i];
      const double next = 2.0 * shifted - before[i];
      shifted = now[i];
      before[i] = now[i];
      now[i] = next;
    }
  }
}
