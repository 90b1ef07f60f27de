/* SPDX-License-Identifier: MIT */
#include "anderson.h"

#include <math.h>
#include <string.h>

/* Weights of the differences that make the residual smallest, by the normal equations
 * with a whiff of damping; 0 when these are singular. */
static int least_squares(const anderson *a, const double *f, double *weight)
{
  double e[ANDERSON_DEPTH][ANDERSON_DEPTH + 1];
  int m = a->kept;
  for (int i = 0; i < m; i++) {
    for (int j = 0; j <= m; j++) {
      const double *other = j < m ? a->df[j] : f;
      e[i][j] = 0.0;
      for (int k = 0; k < a->n; k++) e[i][j] += a->df[i][k] * other[k];
    }
  }
  for (int i = 0; i < m; i++) e[i][i] *= 1.0 + 1e-9;
  for (int i = 0; i < m; i++) {
    int pivot = i;
    for (int j = i + 1; j < m; j++)
      if (fabs(e[j][i]) > fabs(e[pivot][i])) pivot = j;
    if (!(fabs(e[pivot][i]) > 0.0)) return 0;
    for (int k = 0; k <= m; k++) {
      double swap = e[i][k];
      e[i][k] = e[pivot][k];
      e[pivot][k] = swap;
    }
    for (int j = 0; j < m; j++) {
      if (j == i) continue;
      double factor = e[j][i] / e[i][i];
      for (int k = i; k <= m; k++) e[j][k] -= factor * e[i][k];
    }
  }
  for (int i = 0; i < m; i++) weight[i] = e[i][m] / e[i][i];
  return 1;
}

static void keep_difference(anderson *a, const double *x, const double *f)
{
  if (a->kept == ANDERSON_DEPTH) {
    memmove(a->dx[0], a->dx[1], sizeof a->dx[0] * (ANDERSON_DEPTH - 1));
    memmove(a->df[0], a->df[1], sizeof a->df[0] * (ANDERSON_DEPTH - 1));
    a->kept--;
  }
  for (int i = 0; i < a->n; i++) {
    a->dx[a->kept][i] = x[i] - a->x[i];
    a->df[a->kept][i] = f[i] - a->f[i];
  }
  a->kept++;
}

void anderson_next(anderson *a, const double *x, const double *g, int mix, double *next)
{
  double f[ANDERSON_MOST];
  double weight[ANDERSON_DEPTH];
  for (int i = 0; i < a->n; i++) {
    f[i] = g[i] - x[i];
    next[i] = g[i];
  }
  if (a->seen) keep_difference(a, x, f);
  if (a->seen && mix && least_squares(a, f, weight)) {
    for (int i = 0; i < a->n; i++)
      for (int j = 0; j < a->kept; j++) next[i] -= weight[j] * (a->dx[j][i] + a->df[j][i]);
  }
  memcpy(a->x, x, (size_t)a->n * sizeof *x);
  memcpy(a->f, f, (size_t)a->n * sizeof *f);
  a->seen = 1;
}

void anderson_forget(anderson *a)
{
  a->kept = 0;
}
