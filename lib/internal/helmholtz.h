/* SPDX-License-Identifier: MIT */
/* Residual Helmholtz energy over RT as a sum of terms n delta^d tau^t exp(-delta^l),
 * with every derivative scaled: d stands for delta times the derivative by delta,
 * t for tau times the derivative by tau, and so on, so that each term's
 * derivatives are multiples of the term. */
#ifndef FREEAIR_INTERNAL_HELMHOLTZ_H
#define FREEAIR_INTERNAL_HELMHOLTZ_H

#include <stddef.h>

/* l = 0: without the exponential. d <= 15, l <= 6. */
typedef struct freeair__term {
  double n;
  double t;
  int d;
  int l;
} freeair__term;

typedef struct freeair__helmholtz {
  double a;
  double d;
  double dd;
  double t;
  double tt;
  double dt;
} freeair__helmholtz;

/* amplitude[i] = n tau^t, all that a term needs of the temperature. */
void freeair__helmholtz_isotherm(const freeair__term *terms, size_t n, double tau, double *amplitude);

/* The first two derivatives by density alone, for solvers. */
void freeair__helmholtz_density(const freeair__term *terms, size_t n, const double *amplitude, double delta, double *d,
                                double *dd);

/* Adds the terms to all derivatives. */
void freeair__helmholtz_add(const freeair__term *terms, size_t n, const double *amplitude, double delta,
                            freeair__helmholtz *sum);

/* The first two derivatives by delta of the terms at delta = 0: reduced virial coefficients. */
void freeair__helmholtz_virials(const freeair__term *terms, size_t n, const double *amplitude, double *first,
                                double *second);

/* Adds weight ln(1 - exp(-x)), x proportional to tau: one vibration of an ideal gas. */
void freeair__helmholtz_vibration(double weight, double x, freeair__helmholtz *sum);

#endif
