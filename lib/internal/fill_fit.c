/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>

#include <string.h>

#include "internal/fill_fit.h"
#include "internal/invert.h"
#include "internal/robust.h"

#define N FREEAIR__FILL_PARAMETERS

static const double step = 1e-5;      /* of a parameter, for the derivatives */
static const double huber = 1.345;    /* residuals beyond this many standard deviations are drawn in */
static const size_t few_readings = 8; /* with fewer the scatter says nothing */
static const int iterations = 100;

/* Sums over all readings at one set of parameters. */
typedef struct sums {
  double a[N][N]; /* normal matrix of the readings, in units of one reading's variance */
  double b[N];
  double cost;
  double square;
  double lagged;
  double p_end_gradient[N];
  double t_end_gradient[N];
  freeair__tank_state end;
  freeair__spread spread;
} sums;

double freeair__fill_pressure(const freeair__fill_readings *readings, size_t i)
{
  return readings->ambient_pa + readings->scale * (readings->p_pa[i] - readings->ambient_read_pa);
}

double freeair__fill_time(const freeair__fill_readings *readings, size_t i)
{
  return (readings->t_s[i] - readings->t_s[0]) * readings->stretch;
}

static freeair__inflow inflow_of(const freeair__fill_model *model, double w_scale_kg_s, const double *theta)
{
  freeair__inflow inflow = {theta[1] * w_scale_kg_s, theta[2], theta[3], model->p0_pa, model->span_pa};
  return inflow;
}

freeair__inflow freeair__fill_inflow(const freeair__fill_model *model, const freeair__fill_fit *fit)
{
  return inflow_of(model, fit->w_scale_kg_s, fit->theta);
}

/* Value at share x of a step from the values and slopes at both ends. */
static double hermite(double y0, double d0, double y1, double d1, double h, double x)
{
  double rise = y1 - y0;
  return y0 + x * (h * d0 + x * (3.0 * rise - h * (2.0 * d0 + d1) + x * (h * (d0 + d1) - 2.0 * rise)));
}

typedef struct run {
  freeair__inflow inflow;
  freeair__tank_state state;
  double p_pa[2]; /* at the start and the end of the step */
  double rate_pa_s[2];
} run;

static int note(const freeair__fill_model *model, run *r, int at)
{
  r->p_pa[at] = freeair__tank_pressure(&model->tank, &r->state);
  if (!(r->p_pa[at] > 0.0 && r->state.m_kg > 0.0 && r->p_pa[at] < INFINITY)) return 0;
  freeair__tank_state rate =
      freeair__tank_rate(&model->tank, &r->state, freeair__inflow_at(&r->inflow, r->p_pa[at]));
  r->rate_pa_s[at] = freeair__tank_pressure_rate(&model->tank, &rate);
  return 1;
}

/* Runs the tank with the parameters and with each of them moved a little,
 * side by side, and sums what the readings say. */
static int evaluate(const freeair__fill_model *model, const freeair__fill_readings *readings, const double *theta,
                    double w_scale_kg_s, double sigma_pa, size_t steps, sums *s)
{
  memset(s, 0, sizeof *s);
  run runs[N + 1];
  for (size_t k = 0; k <= N; k++) {
    double moved[N];
    memcpy(moved, theta, sizeof moved);
    if (k > 0) moved[k - 1] += step;
    runs[k].inflow = inflow_of(model, w_scale_kg_s, moved);
    double p_start_pa = moved[0] * model->span_pa;
    if (!(p_start_pa > 0.0)) return 0;
    runs[k].state = freeair__tank_at(&model->tank, p_start_pa, model->t_start_k, model->t_wall_start_k);
    if (!note(model, &runs[k], 0)) return 0;
  }
  double h = freeair__fill_time(readings, readings->n - 1) / (double)steps;
  size_t next = 0;
  double previous = 0.0;
  for (size_t j = 1; j <= steps; j++) {
    for (size_t k = 0; k <= N; k++) {
      freeair__tank_step(&model->tank, &runs[k].inflow, h, &runs[k].state);
      if (!note(model, &runs[k], 1)) return 0;
    }
    double t_end = (double)j * h;
    while (next < readings->n && (j == steps || freeair__fill_time(readings, next) <= t_end)) {
      double x = next + 1 == readings->n ? 1.0 : (freeair__fill_time(readings, next) - (t_end - h)) / h;
      double p[N + 1];
      for (size_t k = 0; k <= N; k++)
        p[k] = hermite(runs[k].p_pa[0], runs[k].rate_pa_s[0], runs[k].p_pa[1], runs[k].rate_pa_s[1], h, x);
      double residual = (freeair__fill_pressure(readings, next) - p[0]) / sigma_pa;
      double size = fabs(residual);
      int outlier = readings->n >= few_readings && size > huber;
      double weight = outlier ? huber / size : 1.0;
      s->cost += outlier ? huber * (2.0 * size - huber) : residual * residual;
      for (size_t a = 0; a < N; a++) {
        double da = (p[a + 1] - p[0]) / (step * sigma_pa);
        s->b[a] += weight * da * residual;
        for (size_t b = 0; b <= a; b++) s->a[a][b] += weight * da * (p[b + 1] - p[0]) / (step * sigma_pa);
      }
      s->square += residual * residual;
      s->lagged += next > 0 ? residual * previous : 0.0;
      freeair__spread_add(&s->spread, residual * sigma_pa);
      previous = residual;
      next++;
    }
    for (size_t k = 0; k <= N; k++) {
      runs[k].p_pa[0] = runs[k].p_pa[1];
      runs[k].rate_pa_s[0] = runs[k].rate_pa_s[1];
    }
  }
  for (size_t a = 0; a < N; a++)
    for (size_t b = a + 1; b < N; b++) s->a[a][b] = s->a[b][a];
  s->end = runs[0].state;
  for (size_t k = 1; k <= N; k++) {
    s->p_end_gradient[k - 1] = (runs[k].p_pa[1] - runs[0].p_pa[1]) / step;
    s->t_end_gradient[k - 1] =
        (freeair__tank_temperature(&runs[k].state) - freeair__tank_temperature(&runs[0].state)) / step;
  }
  return 1;
}

/* Adds what is expected of the course of the inflow; its cost is returned. */
static double expected(const freeair__fill_model *model, const double *theta, double a[N][N], double *b)
{
  double precision[2] = {1.0 / (model->fall_uncertainty * model->fall_uncertainty),
                         1.0 / (model->bend_uncertainty * model->bend_uncertainty)};
  double off[2] = {model->fall - theta[2], -theta[3]};
  for (size_t i = 0; i < 2; i++) {
    a[2 + i][2 + i] += precision[i];
    b[2 + i] += precision[i] * off[i];
  }
  return precision[0] * off[0] * off[0] + precision[1] * off[1] * off[1];
}

/* left * middle * left, all symmetric, times a factor. */
static void sandwich(const double left[N][N], const double middle[N][N], double factor, double out[N][N])
{
  double half[N][N];
  for (size_t i = 0; i < N; i++)
    for (size_t j = 0; j < N; j++) {
      half[i][j] = 0.0;
      for (size_t k = 0; k < N; k++) half[i][j] += left[i][k] * middle[k][j];
    }
  for (size_t i = 0; i < N; i++)
    for (size_t j = 0; j < N; j++) {
      out[i][j] = 0.0;
      for (size_t k = 0; k < N; k++) out[i][j] += factor * half[i][k] * left[k][j];
    }
}

double freeair__fill_uncertainty(const double covariance[N][N], const double *gradient)
{
  double variance = 0.0;
  for (size_t i = 0; i < N; i++)
    for (size_t j = 0; j < N; j++) variance += gradient[i] * covariance[i][j] * gradient[j];
  return sqrt(fmax(variance, 0.0));
}

int32_t freeair__fill_fit_run(const freeair__fill_model *model, const freeair__fill_readings *readings, int warm,
                              freeair__fill_fit *fit)
{
  size_t last = readings->n - 1;
  double p_start_pa = freeair__fill_pressure(readings, 0);
  double p_end_pa = freeair__fill_pressure(readings, last);
  fit->duration_s = freeair__fill_time(readings, last);
  size_t steps = freeair__tank_steps(&model->tank, p_start_pa, p_end_pa, fit->duration_s);
  if (steps == 0) return FREEAIR_ERR_NO_CONVERGENCE;
  if (!warm) {
    fit->w_scale_kg_s = model->tank.v_m3 * (p_end_pa - p_start_pa) /
                        (FREEAIR__AIR_R * model->tank.t_ambient_k * fit->duration_s);
    fit->theta[0] = p_start_pa / model->span_pa;
    fit->theta[1] = 0.9;
    fit->theta[2] = model->fall;
    fit->theta[3] = 0.0;
  }
  int by_scatter = !warm && model->use_scatter && readings->n >= few_readings;
  double sigma = warm ? fit->scatter_pa : model->reading_pa;
  double damping = 0.0;
  sums s;
  if (!evaluate(model, readings, fit->theta, fit->w_scale_kg_s, sigma, steps, &s)) return FREEAIR_ERR_NO_SOLUTION;
  double a[N][N];
  double cov[N][N];
  int converged = 0;
  for (int i = 0; i < iterations && !converged; i++) {
    if (by_scatter && i < 12) {
      /* the scatter settles within a few iterations and is then kept */
      double scatter = 1.4826 * freeair__spread_quantile(&s.spread, 0.5) *
                       sqrt((double)readings->n / (double)(readings->n - N + 1));
      sigma = fmax(scatter, 1e-3 * model->reading_pa);
      if (!evaluate(model, readings, fit->theta, fit->w_scale_kg_s, sigma, steps, &s)) return FREEAIR_ERR_NO_SOLUTION;
    }
    double b[N];
    memcpy(a, s.a, sizeof a);
    memcpy(b, s.b, sizeof b);
    double cost = s.cost + expected(model, fit->theta, a, b);
    for (;;) {
      if (damping > 1e9 || !freeair__invert(N, &a[0][0], damping, &cov[0][0])) return FREEAIR_ERR_NO_CONVERGENCE;
      double trial[N];
      double largest = 0.0;
      for (size_t k = 0; k < N; k++) {
        double move = 0.0;
        for (size_t j = 0; j < N; j++) move += cov[k][j] * b[j];
        trial[k] = fit->theta[k] + move;
        /* two readings are met exactly; among more, a move is judged by what it is uncertain by */
        double scale = readings->n > 2 ? fmax(1e-10, 1e-5 * sqrt(cov[k][k])) : 1e-10;
        largest = fmax(largest, fabs(move) / scale);
      }
      converged = largest < 1.0;
      double unused_a[N][N] = {{0.0}};
      double unused_b[N] = {0.0};
      sums t;
      if (evaluate(model, readings, trial, fit->w_scale_kg_s, sigma, steps, &t)) {
        double trial_cost = t.cost + expected(model, trial, unused_a, unused_b);
        if (converged || trial_cost <= cost + 1e-9 * (1.0 + cost)) {
          memcpy(fit->theta, trial, sizeof trial);
          s = t;
          damping = damping > 1e-6 ? 0.1 * damping : 0.0;
          break;
        }
      }
      converged = 0;
      damping = damping > 0.0 ? 10.0 * damping : 1e-4;
    }
  }
  if (!converged) return FREEAIR_ERR_NO_CONVERGENCE;

  double of_course[N][N] = {{0.0}};
  double ignored[N] = {0.0};
  expected(model, fit->theta, of_course, ignored);
  for (size_t i = 0; i < N; i++)
    for (size_t j = 0; j < N; j++) a[i][j] = s.a[i][j] + of_course[i][j];
  if (!freeair__invert(N, &a[0][0], 0.0, &cov[0][0])) return FREEAIR_ERR_NO_CONVERGENCE;
  double inflation = 1.0;
  if (readings->n >= few_readings && s.square > 0.0) {
    /* residuals that hang together carry less information */
    double correlation = s.lagged / s.square;
    correlation = correlation < 0.0 ? 0.0 : correlation > 0.95 ? 0.95 : correlation;
    inflation = (1.0 + correlation) / (1.0 - correlation);
  }
  const double(*c)[N] = (const double(*)[N])cov;
  sandwich(c, (const double(*)[N])s.a, inflation, fit->from_readings);
  sandwich(c, (const double(*)[N])of_course, 1.0, fit->from_course);
  memset(fit->p_start_gradient, 0, sizeof fit->p_start_gradient);
  fit->p_start_gradient[0] = model->span_pa;
  memcpy(fit->p_end_gradient, s.p_end_gradient, sizeof s.p_end_gradient);
  memcpy(fit->t_end_gradient, s.t_end_gradient, sizeof s.t_end_gradient);
  fit->end = s.end;
  fit->p_start_pa = fit->theta[0] * model->span_pa;
  fit->p_end_pa = freeair__tank_pressure(&model->tank, &s.end);
  fit->t_end_k = freeair__tank_temperature(&s.end);
  fit->scatter_pa = sigma;
  return FREEAIR_OK;
}
