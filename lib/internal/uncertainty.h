/* SPDX-License-Identifier: MIT */
/* A function by its name as a model of measurement, and what its inputs may be. */
#ifndef FREEAIR_INTERNAL_UNCERTAINTY_H
#define FREEAIR_INTERNAL_UNCERTAINTY_H

#include <freeair/describe.h>

enum { FREEAIR__INPUTS_MOST = 512 };

typedef struct freeair__measurement {
  const freeair_function *f;
  size_t n_in;
  size_t n_out;
} freeair__measurement;

/* Finds the function and checks that it can be called on plain numbers. */
int32_t freeair__measurement_find(const char *function, freeair__measurement *m);

/* Value at x; context is a freeair__measurement. */
int32_t freeair__measurement_value(const void *context, const double *x, double *y);

/* Whether u are uncertainties of x that the function's inputs can have. */
int freeair__measurement_inputs_valid(const freeair__measurement *m, const double *x, const double *u);

/* FREEAIR_OK for a matrix of correlation of n quantities, or none at all. */
int32_t freeair__correlation_check(const double *r, size_t n_r, size_t n);

#endif
