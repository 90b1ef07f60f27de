/* SPDX-License-Identifier: MIT */
#include <freeair/pumpup_curve.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/invert.h"
#include "internal/robust.h"
#include "internal/structure.h"

#include <string.h>

#define N 3

static const freeair_pumpup_curve_shape initial_shape = FREEAIR_PUMPUP_CURVE_SHAPE_INIT;

static const double huber = 1.345;
static const size_t few_readings = 8;

/* (1 - exp(-b x)) / b and its derivative with respect to b, also near b = 0. */
static void approach(double b, double x, double *f, double *df)
{
  double z = b * x;
  if (fabs(z) < 1e-3) {
    *f = x * (1.0 - z * (0.5 - z * (1.0 / 6.0 - z * (1.0 / 24.0 - z / 120.0))));
    *df = -x * x * (0.5 - z * (1.0 / 3.0 - z * (0.125 - z / 30.0)));
    return;
  }
  *f = -expm1(-z) / b;
  *df = (x * exp(-z) - *f) / b;
}

/* Sums over all readings at parameters p0, s0, b; pressures in units of the
 * rise, time in units of the duration. */
typedef struct sums {
  double a[N * N];
  double g[N];
  double cost;
  double square;
  double lagged;
  freeair__spread spread;
} sums;

typedef struct curve {
  const double *t_s;
  const double *p_pa;
  size_t n;
  double rise_pa;
  double duration_s;
} curve;

static void sum_up(const curve *c, const double *theta, double sigma, sums *s)
{
  memset(s, 0, sizeof *s);
  double previous = 0.0;
  for (size_t i = 0; i < c->n; i++) {
    double x = (c->t_s[i] - c->t_s[0]) / c->duration_s;
    double d[N] = {1.0, 0.0, 0.0};
    approach(theta[2], x, &d[1], &d[2]);
    d[2] *= theta[1];
    double r = ((c->p_pa[i] - c->p_pa[0]) / c->rise_pa - theta[0] - theta[1] * d[1]) / sigma;
    int outlier = c->n >= few_readings && fabs(r) > huber;
    double weight = outlier ? huber / fabs(r) : 1.0;
    s->cost += outlier ? huber * (2.0 * fabs(r) - huber) : r * r;
    for (size_t k = 0; k < N; k++) {
      s->g[k] += weight * d[k] / sigma * r;
      for (size_t j = 0; j < N; j++) s->a[k * N + j] += weight * d[k] * d[j] / (sigma * sigma);
    }
    s->square += r * r;
    s->lagged += i > 0 ? r * previous : 0.0;
    freeair__spread_add(&s->spread, r * sigma);
    previous = r;
  }
}

/* Fits the curve; sigma is the standard deviation of a reading to begin with. */
static int32_t fit(const curve *c, int by_scatter, double *sigma, double *theta, double *cov)
{
  sums s;
  double damping = 0.0;
  double least = 1e-6;
  sum_up(c, theta, *sigma, &s);
  for (int i = 0; i < 100; i++) {
    if (by_scatter && i < 20) {
      /* the scatter settles within a few iterations and is then kept */
      double scatter = 1.4826 * freeair__spread_quantile(&s.spread, 0.5) * sqrt((double)c->n / (double)(c->n - N));
      *sigma = fmax(scatter, least);
      sum_up(c, theta, *sigma, &s);
    }
    int done = 0;
    for (;;) {
      if (damping > 1e9 || !freeair__invert(N, s.a, damping, cov)) return FREEAIR_ERR_NO_CONVERGENCE;
      double trial[N];
      double largest = 0.0;
      for (size_t k = 0; k < N; k++) {
        double move = 0.0;
        for (size_t j = 0; j < N; j++) move += cov[k * N + j] * s.g[j];
        trial[k] = theta[k] + move;
        largest = fmax(largest, fabs(move) / fmax(1e-11, 1e-5 * sqrt(cov[k * N + k])));
      }
      trial[2] = fmin(fmax(trial[2], -20.0), 100.0);
      sums t;
      sum_up(c, trial, *sigma, &t);
      done = largest < 1.0;
      if (done || t.cost <= s.cost + 1e-9 * (1.0 + s.cost)) {
        memcpy(theta, trial, sizeof trial);
        s = t;
        damping = damping > 1e-6 ? 0.1 * damping : 0.0;
        break;
      }
      damping = damping > 0.0 ? 10.0 * damping : 1e-4;
    }
    if (!done) continue;
    if (!freeair__invert(N, s.a, 0.0, cov)) return FREEAIR_ERR_NO_CONVERGENCE;
    if (c->n >= few_readings && s.square > 0.0) {
      /* residuals that hang together carry less information */
      double r = s.lagged / s.square;
      r = r < 0.0 ? 0.0 : r > 0.95 ? 0.95 : r;
      for (size_t k = 0; k < N * N; k++) cov[k] *= (1.0 + r) / (1.0 - r);
    }
    return FREEAIR_OK;
  }
  return FREEAIR_ERR_NO_CONVERGENCE;
}

static void thirds(const curve *c, double sigma_pa, freeair_pumpup_curve_shape *r)
{
  freeair__blocks blocks;
  freeair__line line;
  freeair__blocks_clear(&blocks);
  for (size_t i = 0; i < c->n; i++) freeair__blocks_add(&blocks, c->t_s[i], c->p_pa[i]);
  size_t third = blocks.n / 3 > 2 ? blocks.n / 3 : 2;
  double whole_uncertainty = 0.0;
  if (freeair__blocks_line(&blocks, 0, blocks.n, sigma_pa, &line)) {
    r->slope_pa_s = line.slope;
    whole_uncertainty = line.slope_uncertainty;
  }
  if (freeair__blocks_line(&blocks, 0, third, sigma_pa, &line)) {
    r->early_slope_pa_s = line.slope;
    r->early_slope_uncertainty_pa_s = line.slope_uncertainty;
  }
  if (freeair__blocks_line(&blocks, blocks.n - third, blocks.n, sigma_pa, &line)) {
    r->late_slope_pa_s = line.slope;
    r->late_slope_uncertainty_pa_s = line.slope_uncertainty;
  }
  double u = hypot(r->early_slope_uncertainty_pa_s, r->late_slope_uncertainty_pa_s);
  if (r->slope_pa_s > 0.0) {
    r->curvature = (r->early_slope_pa_s - r->late_slope_pa_s) / r->slope_pa_s;
    r->curvature_uncertainty = hypot(u, r->curvature * whole_uncertainty) / r->slope_pa_s;
  }
  if (r->late_slope_pa_s > 0.0) {
    r->slope_ratio = r->early_slope_pa_s / r->late_slope_pa_s;
    r->slope_ratio_uncertainty =
        hypot(r->early_slope_uncertainty_pa_s, r->slope_ratio * r->late_slope_uncertainty_pa_s) / r->late_slope_pa_s;
  }
}

static void level(const curve *c, const double *theta, const double *cov, freeair_pumpup_curve_shape *r)
{
  double b = theta[2];
  double u_b = sqrt(cov[N * N - 1]);
  r->approach_1_s = b / c->duration_s;
  r->approach_uncertainty_1_s = u_b / c->duration_s;
  r->level_in_sight = b > 2.0 * u_b && theta[1] > 0.0;
  double f;
  double df;
  approach(b, 1.0, &f, &df);
  double p_end = theta[0] + theta[1] * f;
  double end_slope = fmax(theta[1] * exp(-b), 0.0);
  double steepest = b + 1.645 * u_b;
  if (steepest > 0.0) r->level_off_least_pa = c->p_pa[0] + c->rise_pa * (p_end + end_slope / steepest);
  if (!r->level_in_sight) return;
  double gradient[N] = {1.0, 1.0 / b, -theta[1] / (b * b)};
  double variance = 0.0;
  for (size_t k = 0; k < N; k++)
    for (size_t j = 0; j < N; j++) variance += gradient[k] * cov[k * N + j] * gradient[j];
  r->level_off_pa = c->p_pa[0] + c->rise_pa * (theta[0] + theta[1] / b);
  r->level_off_uncertainty_pa = c->rise_pa * sqrt(fmax(variance, 0.0));
}

static int32_t shape_of(const curve *c, double reading_uncertainty_pa, freeair_pumpup_curve_shape *r)
{
  int given = freeair__given(reading_uncertainty_pa);
  double known = given ? reading_uncertainty_pa / c->rise_pa : 0.005;
  double sigma = fmax(known, 1e-6);
  double theta[N] = {0.0, 1.0, 0.0};
  double cov[N * N];
  int32_t status = fit(c, !given && c->n >= few_readings, &sigma, theta, cov);
  if (status < 0) return status;
  r->scatter_pa = sigma * c->rise_pa;
  level(c, theta, cov, r);
  thirds(c, r->scatter_pa, r);
  return FREEAIR_OK;
}

int32_t freeair_pumpup_curve_shape_from_readings(const double *t_s, const double *p_pa, size_t n,
                                                 double reading_uncertainty_pa, freeair_pumpup_curve_shape *shape)
{
  if (shape == NULL) return FREEAIR_ERR_NULL;
  freeair_pumpup_curve_shape r = initial_shape;
  int32_t status = t_s == NULL || p_pa == NULL ? FREEAIR_ERR_NULL : FREEAIR_OK;
  if (status == FREEAIR_OK && !freeair__closed(freeair__or(reading_uncertainty_pa, 0.0), 0.0, 1e7))
    status = FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n && status == FREEAIR_OK; i++)
    if (!freeair__closed(t_s[i], -1e12, 1e12) || !freeair__closed(p_pa[i], 1e3, 1e8)) status = FREEAIR_ERR_DOMAIN;
  if (status == FREEAIR_OK && (n < 4 || !(p_pa[n - 1] > p_pa[0]))) status = FREEAIR_ERR_DATA;
  for (size_t i = 1; i < n && status == FREEAIR_OK; i++)
    if (!(t_s[i] > t_s[i - 1])) status = FREEAIR_ERR_DATA;
  if (status == FREEAIR_OK) {
    curve c = {t_s, p_pa, n, p_pa[n - 1] - p_pa[0], t_s[n - 1] - t_s[0]};
    status = shape_of(&c, reading_uncertainty_pa, &r);
  }
  if (status < 0) r = initial_shape;
  int32_t written = freeair__structure_write(shape, &r, sizeof r, FREEAIR_PUMPUP_CURVE_SHAPE_BASELINE);
  return status < 0 ? status : written;
}
