/* SPDX-License-Identifier: MIT */
/* Small symmetric positive definite matrices. */
#ifndef FREEAIR_INTERNAL_INVERT_H
#define FREEAIR_INTERNAL_INVERT_H

#include <stddef.h>

#define FREEAIR__INVERT_MOST 4

/* Inverse of an n by n matrix, row by row, by Cholesky's method, after its
 * diagonal has been raised by the share damping. 0 when it is not positive definite. */
int freeair__invert(size_t n, const double *a, double damping, double *inverse);

#endif
