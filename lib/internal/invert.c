/* SPDX-License-Identifier: MIT */
#include <math.h>

#include "internal/invert.h"

int freeair__invert(size_t n, const double *a, double damping, double *inverse)
{
  double l[FREEAIR__INVERT_MOST][FREEAIR__INVERT_MOST] = {{0.0}};
  if (n > FREEAIR__INVERT_MOST) return 0;
  for (size_t i = 0; i < n; i++)
    for (size_t j = 0; j <= i; j++) {
      double sum = a[i * n + j] * (i == j ? 1.0 + damping : 1.0);
      for (size_t k = 0; k < j; k++) sum -= l[i][k] * l[j][k];
      if (i == j) {
        if (!(sum > 0.0)) return 0;
        l[i][i] = sqrt(sum);
      } else {
        l[i][j] = sum / l[j][j];
      }
    }
  for (size_t c = 0; c < n; c++) {
    double y[FREEAIR__INVERT_MOST];
    for (size_t i = 0; i < n; i++) {
      y[i] = i == c ? 1.0 : 0.0;
      for (size_t k = 0; k < i; k++) y[i] -= l[i][k] * y[k];
      y[i] /= l[i][i];
    }
    for (size_t i = n; i-- > 0;) {
      for (size_t k = i + 1; k < n; k++) y[i] -= l[k][i] * inverse[k * n + c];
      inverse[i * n + c] = y[i] / l[i][i];
    }
  }
  return 1;
}
