/* SPDX-License-Identifier: MIT */
#include "internal/gauss.h"

#include <math.h>

enum { MOST = FREEAIR__GAUSS_MOST };

/* Cholesky factor in place of the lower triangle; the diagonal holds inverses. */
static int factor(double c[][MOST], int n, double *log_det)
{
  *log_det = 0.0;
  for (int j = 0; j < n; j++) {
    double d = c[j][j];
    for (int k = 0; k < j; k++) d -= c[j][k] * c[j][k];
    if (!(d > 0.0)) return 0;
    *log_det += log(d);
    double over = 1.0 / sqrt(d);
    c[j][j] = over;
    for (int i = j + 1; i < n; i++) {
      double s = c[i][j];
      for (int k = 0; k < j; k++) s -= c[i][k] * c[j][k];
      c[i][j] = s * over;
    }
  }
  return 1;
}

/* Inverse of the factor, in its place. */
static void invert(double l[][MOST], int n)
{
  for (int j = 0; j < n; j++)
    for (int i = j + 1; i < n; i++) {
      double s = 0.0;
      for (int k = j; k < i; k++) s += l[i][k] * l[k][j];
      l[i][j] = -s * l[i][i];
    }
}

/* ln Gamma((n + 1) / 2) - ln Gamma(n / 2) for whole n, by recursion. */
static double gamma_step(int n)
{
  double ratio = 0.56418958354775628695; /* n = 1: 1 / sqrt(pi) */
  for (int i = 1; i < n; i++) ratio = 0.5 * i / ratio;
  return log(ratio);
}

/* Log-density of n dimensions less its constant at n_all dimensions. */
static double student(double square, double log_det, int n, int n_all, int freedom)
{
  double constant = 0.0;
  for (int i = n; i < n_all; i++) constant -= gamma_step(freedom + i) - 0.5 * log(freedom * 3.14159265358979323846);
  return constant - 0.5 * log_det - 0.5 * (freedom + n) * log1p(square / freedom);
}

int freeair__gauss_student(double c[][MOST], const double *r, int n, int freedom,
                           const freeair__gauss_blocks *blocks, freeair__gauss_density *d)
{
  double log_det;
  if (!factor(c, n, &log_det)) return 0;
  invert(c, n);
  /* u = L^-1 r, then z = L^-T u: the precision times the residuals */
  double u[MOST];
  double z[MOST];
  double square = 0.0;
  for (int i = 0; i < n; i++) {
    u[i] = 0.0;
    for (int k = 0; k <= i; k++) u[i] += c[i][k] * r[k];
    square += u[i] * u[i];
  }
  for (int i = 0; i < n; i++) {
    z[i] = 0.0;
    for (int k = i; k < n; k++) z[i] += c[k][i] * u[k];
  }
  d->square = square;
  d->all = student(square, log_det, n, n, freedom);
  for (int b = 0; b < blocks->n; b++) {
    int first = blocks->first[b];
    int m = blocks->first[b + 1] - first;
    double p[MOST][MOST]; /* precision of the block */
    double block_det;
    for (int i = 0; i < m; i++)
      for (int j = 0; j <= i; j++) {
        p[i][j] = 0.0;
        for (int k = first + i; k < n; k++) p[i][j] += c[k][first + i] * c[k][first + j];
      }
    if (!factor(p, m, &block_det)) return 0;
    double taken = 0.0;
    double v[MOST];
    for (int i = 0; i < m; i++) {
      v[i] = z[first + i];
      for (int k = 0; k < i; k++) v[i] -= p[i][k] * v[k];
      v[i] *= p[i][i];
      taken += v[i] * v[i];
    }
    double rest = fmax(square - taken, 0.0);
    /* residuals given the others are the inverse of that precision times z */
    double w[MOST] = {0.0};
    double variance = 0.0;
    double shift = 0.0;
    for (int i = 0; i < m; i++) {
      double e = i == 0 ? 1.0 : 0.0;
      for (int k = 0; k < i; k++) e -= p[i][k] * w[k];
      w[i] = e * p[i][i];
      variance += w[i] * w[i];
      shift += w[i] * v[i];
    }
    d->shift[b] = shift;
    d->without[b] = student(rest, log_det + block_det, n - m, n, freedom);
    d->residual[b] = shift / sqrt(variance * (freedom + rest) / (freedom + n - m));
  }
  return 1;
}
