/* SPDX-License-Identifier: MIT */
#include "internal/derivative.h"

#include <freeair/status.h>

#include <math.h>

/* Difference quotients at steps h, h/2, h/4, ... are extrapolated to h = 0
 * (Ridders, Advances in Engineering Software 4 (1982) 75). A central difference
 * errs by even powers of the step, a one-sided one by all. Of all the
 * extrapolations the one counts that agrees best with its neighbours: it is where
 * curvature no longer hurts and noise does not yet. */
enum { LEVELS = 8, HALVINGS = 12, CENTRAL = 0 };

/* Quotient at one step into q; side is CENTRAL, 1 or -1. */
static int32_t quotient(const freeair__function *f, double *x, const double *y0, size_t i, double h, int side,
                        double *q)
{
  double low[FREEAIR__RESULTS_MOST];
  const double at = x[i];
  x[i] = side == CENTRAL ? at + h : at + side * h;
  const double ahead = x[i];
  int32_t status = f->value(f->context, x, q);
  double behind = at;
  if (status >= 0 && side == CENTRAL) {
    x[i] = at - h;
    behind = x[i];
    status = f->value(f->context, x, low);
  }
  x[i] = at;
  if (status < 0) return status;
  for (size_t k = 0; k < f->n_y; k++) q[k] = (q[k] - (side == CENTRAL ? low[k] : y0[k])) / (ahead - behind);
  return status;
}

/* The largest step of h, h/2, ... at which there is a value; 0 if there is none. */
static double first_step(const freeair__function *f, double *x, const double *y0, size_t i, double h, int side,
                         double *q, int32_t *status)
{
  for (int halving = 0; halving < HALVINGS && h > 0.0; halving++, h *= 0.5) {
    *status = quotient(f, x, y0, i, h, side, q);
    if (*status >= 0) return h;
  }
  return 0.0;
}

int32_t freeair__derivative(const freeair__function *f, double *x, const double *y0, size_t i, double step,
                            double lower, double upper, double *slope, double *error)
{
  double row[2][LEVELS][FREEAIR__RESULTS_MOST];
  const double below = 0.999 * (x[i] - lower); /* the end itself may not belong to the range */
  const double above = 0.999 * (upper - x[i]);
  const double room = fmin(below, above);
  int32_t status = FREEAIR_ERR_DOMAIN;
  int side = CENTRAL;
  double h = room > 1e-3 * step ? first_step(f, x, y0, i, fmin(step, room), side, row[0][0], &status) : 0.0;
  if (!(h > 0.0)) {
    side = above >= below ? 1 : -1;
    h = first_step(f, x, y0, i, fmin(step, 0.5 * fmax(above, below)), side, row[0][0], &status);
  }
  if (!(h > 0.0)) {
    side = -side;
    h = first_step(f, x, y0, i, fmin(step, 0.5 * fmin(above, below)), side, row[0][0], &status);
  }
  if (!(h > 0.0)) return status;
  for (size_t k = 0; k < f->n_y; k++) {
    slope[k] = row[0][0][k];
    error[k] = INFINITY;
  }
  for (int level = 1; level < LEVELS; level++) {
    double(*now)[FREEAIR__RESULTS_MOST] = row[level % 2];
    double(*last)[FREEAIR__RESULTS_MOST] = row[(level + 1) % 2];
    h *= 0.5;
    if (quotient(f, x, y0, i, h, side, now[0]) < 0) break;
    int settled = 1;
    for (size_t k = 0; k < f->n_y; k++) {
      double power = 1.0;
      for (int order = 1; order <= level; order++) {
        power *= side == CENTRAL ? 4.0 : 2.0;
        now[order][k] = now[order - 1][k] + (now[order - 1][k] - last[order - 1][k]) / (power - 1.0);
        const double doubt =
          fmax(fabs(now[order][k] - now[order - 1][k]), fabs(now[order][k] - last[order - 1][k]));
        if (isless(doubt, error[k])) {
          error[k] = doubt;
          slope[k] = now[order][k];
        }
      }
      settled &= !isgreater(error[k], 1e-11 * fabs(slope[k]));
    }
    if (settled) break;
  }
  return FREEAIR_OK;
}

/* Value with x_i moved by a steps and x_j by b. */
static int32_t moved(const freeair__function *f, double *x, size_t i, double a, size_t j, double b, double *y)
{
  const double x_i = x[i];
  const double x_j = x[j];
  x[i] += a;
  x[j] += b;
  const int32_t status = f->value(f->context, x, y);
  x[j] = x_j;
  x[i] = x_i;
  return status;
}

int32_t freeair__second_order(const freeair__function *f, double *x, size_t n_x, const double *u, const double *step,
                              const double *y0, double *variance, double *shift)
{
  double y[8][FREEAIR__RESULTS_MOST];
  int32_t status = FREEAIR_OK;
  for (size_t k = 0; k < f->n_y; k++) variance[k] = shift[k] = 0.0;
  for (size_t i = 0; i < n_x; i++) {
    if (!(step[i] > 0.0)) continue;
    const double h = step[i];
    const double square = u[i] / h * (u[i] / h);
    static const int along[] = {-2, -1, 1, 2};
    for (int g = 0; g < 4; g++)
      if ((status = moved(f, x, i, along[g] * h, i, 0.0, y[g])) < 0) return status;
    for (size_t k = 0; k < f->n_y; k++) {
      const double near = 0.5 * (y[2][k] - y[1][k]);
      const double far = 0.5 * (y[3][k] - y[0][k]);
      const double first = (8.0 * near - far) / 6.0;
      const double second = y[2][k] - y0[k] - (y0[k] - y[1][k]);
      const double third = far - 2.0 * near;
      variance[k] += square * (first * first + square * (0.5 * second * second + first * third));
      shift[k] += 0.5 * square * second;
    }
    for (size_t j = 0; j < i; j++) {
      if (!(step[j] > 0.0)) continue;
      const double weight = square * (u[j] / step[j]) * (u[j] / step[j]);
      int g = 0;
      for (int a = -1; a <= 1; a++)
        for (int b = -1; b <= 1; b++)
          if ((a != 0 || b != 0) && (status = moved(f, x, i, a * h, j, b * step[j], y[g++])) < 0) return status;
      /* y: - -, - 0, - +, 0 -, 0 +, + -, + 0, + + */
      for (size_t k = 0; k < f->n_y; k++) {
        const double f_i = 0.5 * (y[6][k] - y[1][k]);
        const double f_j = 0.5 * (y[4][k] - y[3][k]);
        const double f_ij = 0.25 * (y[7][k] - y[5][k] - (y[2][k] - y[0][k]));
        const double f_ijj = 0.5 * (y[7][k] - y[2][k] + (y[5][k] - y[0][k])) - 2.0 * f_i;
        const double f_jii = 0.5 * (y[7][k] - y[5][k] + (y[2][k] - y[0][k])) - 2.0 * f_j;
        variance[k] += weight * (f_ij * f_ij + f_i * f_ijj + f_j * f_jii);
      }
    }
  }
  return FREEAIR_OK;
}
