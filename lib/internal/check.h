/* SPDX-License-Identifier: MIT */
/* Argument tests. Written in the accept form so that NaN fails, and with the
 * quiet comparison macros of C11 7.12.14, so that rejecting a NaN raises no
 * floating-point exception flag in the host. */
#ifndef FREEAIR_INTERNAL_CHECK_H
#define FREEAIR_INTERNAL_CHECK_H

#include <math.h>
#include <stddef.h>

/* (lo;hi) */
static inline int freeair__open(double x, double lo, double hi)
{
  return isgreater(x, lo) && isless(x, hi);
}

/* [lo;hi] */
static inline int freeair__closed(double x, double lo, double hi)
{
  return isgreaterequal(x, lo) && islessequal(x, hi);
}

/* [lo;hi) */
static inline int freeair__from(double x, double lo, double hi)
{
  return isgreaterequal(x, lo) && isless(x, hi);
}

/* (lo;hi] */
static inline int freeair__upto(double x, double lo, double hi)
{
  return isgreater(x, lo) && islessequal(x, hi);
}

/* An optional value: NaN means "not given". */
static inline int freeair__given(double x)
{
  return !isnan(x);
}

static inline double freeair__or(double x, double otherwise)
{
  return isnan(x) ? otherwise : x;
}

static inline void freeair__set_nan(double *out)
{
  if (out != NULL) *out = NAN;
}

#endif
