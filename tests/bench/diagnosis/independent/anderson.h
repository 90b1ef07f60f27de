/* SPDX-License-Identifier: MIT */
/* Anderson's mixing: a fixed point x = g(x) from few evaluations of a costly g. */
#ifndef FREEAIR_INDEPENDENT_ANDERSON_H
#define FREEAIR_INDEPENDENT_ANDERSON_H

enum { ANDERSON_MOST = 48, ANDERSON_DEPTH = 6 };

typedef struct anderson {
  int n;    /* unknowns */
  int seen; /* is there a pair before this one? */
  int kept; /* differences kept */
  double x[ANDERSON_MOST];
  double f[ANDERSON_MOST];
  double dx[ANDERSON_DEPTH][ANDERSON_MOST];
  double df[ANDERSON_DEPTH][ANDERSON_MOST];
} anderson;

/* Takes in the pair x, g(x) and proposes where to go on: g itself, or a mixture. */
void anderson_next(anderson *a, const double *x, const double *g, int mix, double *next);

/* Forgets differences that led astray. */
void anderson_forget(anderson *a);

#endif
