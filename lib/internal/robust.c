/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <string.h>

#include "internal/robust.h"

/* Selection by Hoare's method: afterwards x[k] is where sorting would put it. */
static double nth(double *x, size_t n, size_t k)
{
  size_t lo = 0;
  size_t hi = n - 1;
  while (lo < hi) {
    double pivot = x[lo + (hi - lo) / 2];
    size_t i = lo;
    size_t j = hi;
    for (;;) {
      while (x[i] < pivot) i++;
      while (x[j] > pivot) j--;
      if (i >= j) break;
      double swap = x[i];
      x[i++] = x[j];
      x[j--] = swap;
    }
    if (k <= j)
      hi = j;
    else
      lo = j + 1;
  }
  return x[k];
}

double freeair__median(double *x, size_t n)
{
  if (n == 0) return NAN;
  double upper = nth(x, n, n / 2);
  if (n % 2 == 1) return upper;
  double lower = x[0];
  for (size_t i = 1; i < n / 2; i++)
    if (x[i] > lower) lower = x[i];
  return 0.5 * (lower + upper);
}

void freeair__spread_clear(freeair__spread *spread)
{
  memset(spread, 0, sizeof *spread);
}

void freeair__spread_add(freeair__spread *spread, double x)
{
  spread->n++;
  int exponent;
  double fraction = frexp(fabs(x), &exponent); /* [0.5;1) */
  if (!(fraction > 0.0) || exponent < -63) {
    spread->n_zero++;
    return;
  }
  if (exponent > 64) exponent = 64;
  int eighth = (int)((fraction - 0.5) * 16.0);
  spread->count[(size_t)((exponent + 63) * 8 + (eighth > 7 ? 7 : eighth))]++;
}

double freeair__spread_quantile(const freeair__spread *spread, double share)
{
  double rank = share * (double)spread->n;
  double below = (double)spread->n_zero;
  if (spread->n == 0 || rank <= below) return 0.0;
  for (size_t i = 0; i < FREEAIR__SPREAD_CLASSES; i++) {
    double here = (double)spread->count[i];
    if (here > 0.0 && rank <= below + here) {
      double lower = 0.5 + (double)(i % 8) / 16.0;
      return ldexp(lower + (rank - below) / here / 16.0, (int)(i / 8) - 63);
    }
    below += here;
  }
  return ldexp(1.0, 64);
}

void freeair__blocks_clear(freeair__blocks *blocks)
{
  blocks->x0 = 0.0;
  blocks->per_block = 1;
  blocks->in_last = 1;
  blocks->n = 0;
}

void freeair__blocks_add(freeair__blocks *blocks, double x, double y)
{
  if (blocks->n == 0) blocks->x0 = x;
  x -= blocks->x0;
  if (blocks->n > 0 && blocks->in_last < blocks->per_block) {
    size_t last = blocks->n - 1;
    double weight = 1.0 / (double)++blocks->in_last;
    blocks->x[last] += (x - blocks->x[last]) * weight;
    blocks->y[last] += (y - blocks->y[last]) * weight;
    return;
  }
  if (blocks->n == FREEAIR__BLOCKS) {
    for (size_t i = 0; i < FREEAIR__BLOCKS / 2; i++) {
      blocks->x[i] = 0.5 * (blocks->x[2 * i] + blocks->x[2 * i + 1]);
      blocks->y[i] = 0.5 * (blocks->y[2 * i] + blocks->y[2 * i + 1]);
    }
    blocks->n = FREEAIR__BLOCKS / 2;
    blocks->per_block *= 2;
  }
  blocks->x[blocks->n] = x;
  blocks->y[blocks->n] = y;
  blocks->n++;
  blocks->in_last = 1;
}

int freeair__blocks_line(const freeair__blocks *blocks, size_t from, size_t to, double noise, freeair__line *line)
{
  if (to > blocks->n) to = blocks->n;
  if (to < from + 2) return 0;
  const double *x = blocks->x + from;
  const double *y = blocks->y + from;
  size_t n = to - from;
  double work[FREEAIR__BLOCKS * (FREEAIR__BLOCKS - 1) / 2];
  size_t pairs = 0;
  for (size_t i = 0; i < n; i++)
    for (size_t j = i + 1; j < n; j++)
      if (x[j] > x[i]) work[pairs++] = (y[j] - y[i]) / (x[j] - x[i]);
  if (pairs == 0) return 0;
  line->slope = freeair__median(work, pairs);

  double centre = 0.0;
  for (size_t i = 0; i < n; i++) centre += x[i] / (double)n;
  for (size_t i = 0; i < n; i++) work[i] = y[i] - line->slope * (x[i] - centre);
  line->centre = centre;
  line->level = freeair__median(work, n);

  double square = 0.0;
  double residual = 0.0;
  double lagged = 0.0;
  double total = 0.0;
  for (size_t i = 0; i < n; i++) {
    double previous = residual;
    residual = y[i] - line->level - line->slope * (x[i] - centre);
    square += (x[i] - centre) * (x[i] - centre);
    total += residual * residual;
    if (i > 0) lagged += residual * previous;
    work[i] = fabs(residual);
  }
  double scatter = n > 2 ? 1.4826 * freeair__median(work, n) * sqrt((double)n / (double)(n - 2)) : 0.0;
  line->scatter = scatter;
  double least = noise / sqrt((double)blocks->per_block);
  if (!(scatter > least)) scatter = least;
  /* residuals that hang together carry less information: effective number for
   * an autoregressive process of first order */
  double correlation = n > 4 && total > 0.0 ? lagged / total : 0.0;
  correlation = correlation < 0.0 ? 0.0 : correlation > 0.95 ? 0.95 : correlation;
  /* 1.0472 = pi/3: asymptotic variance of the estimator over least squares, normal errors */
  line->slope_uncertainty = scatter * sqrt(1.0472 * (1.0 + correlation) / (1.0 - correlation) / square);
  return 1;
}
