/* SPDX-License-Identifier: MIT */
/* A root between two ends by false position: the value at an end that stays
 * counts half, so that both ends move, and now and then the middle is tried. */
#ifndef FREEAIR_INTERNAL_BRACKET_H
#define FREEAIR_INTERNAL_BRACKET_H

#include <math.h>

typedef struct freeair__bracket {
  double lo; /* the ends, in either order */
  double hi;
  double at_lo; /* the values there, of opposite sign */
  double at_hi;
} freeair__bracket;

/* Where to look in a step; the middle in every period-th. */
static inline double freeair__bracket_next(const freeair__bracket *b, int step, int period)
{
  const double x = b->lo + (b->hi - b->lo) * b->at_lo / (b->at_lo - b->at_hi);
  const int inside = x > fmin(b->lo, b->hi) && x < fmax(b->lo, b->hi);
  return inside && step % period != period - 1 ? x : 0.5 * (b->lo + b->hi);
}

/* Draws the end in of which the value has the sign of that at x. */
static inline void freeair__bracket_draw(freeair__bracket *b, double x, double at_x)
{
  if ((at_x > 0.0) == (b->at_lo > 0.0)) {
    b->lo = x;
    b->at_lo = at_x;
    b->at_hi *= 0.5;
  } else {
    b->hi = x;
    b->at_hi = at_x;
    b->at_lo *= 0.5;
  }
}

#endif
