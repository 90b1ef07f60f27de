/* SPDX-License-Identifier: MIT */
/* A function kept as a power series that passes through its values at Chebyshev points. */
#ifndef FREEAIR_INTERNAL_CHEBYSHEV_H
#define FREEAIR_INTERNAL_CHEBYSHEV_H

/* Most points: powers lose digits beyond. */
enum { FREEAIR__CHEBYSHEV_MOST = 32 };

/* Point i of n, in (-1,1). */
double freeair__chebyshev_point(int i, int n);

/* From the values at the n points, n at most FREEAIR__CHEBYSHEV_MOST, to series[0] + series[1] s + ... */
void freeair__chebyshev_series(int n, const double *value, double *series);

#endif
