/* SPDX-License-Identifier: MIT */
/* Sorting numbers in place, without recursion or memory. */
#ifndef FREEAIR_INTERNAL_ORDER_H
#define FREEAIR_INTERNAL_ORDER_H

#include <math.h>
#include <stddef.h>

static inline void freeair__sift(double *x, size_t root, size_t n)
{
  const double value = x[root];
  for (size_t child; (child = 2 * root + 1) < n; root = child) {
    if (child + 1 < n && x[child] < x[child + 1]) child++;
    if (!(value < x[child])) break;
    x[root] = x[child];
  }
  x[root] = value;
}

/* From the least to the greatest, NaN last; returns how many are not NaN. Heapsort. */
static inline size_t freeair__order(double *x, size_t n)
{
  size_t m = 0;
  for (size_t i = 0; i < n; i++) {
    if (isnan(x[i])) continue;
    const double value = x[i];
    x[i] = x[m];
    x[m++] = value;
  }
  for (size_t i = m / 2; i-- > 0;) freeair__sift(x, i, m);
  for (size_t last = m; last-- > 1;) {
    const double greatest = x[0];
    x[0] = x[last];
    x[last] = greatest;
    freeair__sift(x, 0, last);
  }
  return m;
}

#endif
