/* SPDX-License-Identifier: MIT */
/* Derivatives by differences of a function of several variables with several
 * results, which may have limits, kinks, noise, and places where it has no value. */
#ifndef FREEAIR_INTERNAL_DERIVATIVE_H
#define FREEAIR_INTERNAL_DERIVATIVE_H

#include <stddef.h>
#include <stdint.h>

enum { FREEAIR__RESULTS_MOST = 256 };

typedef struct freeair__function {
  int32_t (*value)(const void *context, const double *x, double *y); /* a status */
  const void *context;
  size_t n_y; /* at most FREEAIR__RESULTS_MOST */
} freeair__function;

/* Partial derivatives of all results by x[i], and a bound of their error. y0 is
 * the value at x; step a typical change of x[i], lower and upper its limits. x is
 * used as scratch and left as it was. Returns the status of the function where it
 * has a value on neither side of x. */
int32_t freeair__derivative(const freeair__function *f, double *x, const double *y0, size_t i, double step,
                            double lower, double upper, double *slope, double *error);

/* The variance of each result by a series of second order, and the shift of its
 * expected value, for independent normal x with standard deviations u; derivatives
 * by differences over step, which is 0 where u is. Both err by the square of the
 * steps. x is used as scratch and left as it was. Returns the status of the
 * function where it has no value. */
int32_t freeair__second_order(const freeair__function *f, double *x, size_t n_x, const double *u, const double *step,
                              const double *y0, double *variance, double *shift);

#endif
