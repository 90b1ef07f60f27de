/* SPDX-License-Identifier: MIT */
#include <freeair/real_compression.h>
#include <freeair/real_polytropic.h>
#include <freeair/status.h>

#include "internal/power.h"
#include "internal/real_gas.h"

static const double precision = 1e-12;
/* Hotter than any answer may be, so that a search may step past one. */
static const double hottest = 4000.0;

enum { columns = 8, most_steps = 2000 };

/* One point of a path: ln(T/T1) and the head so far. */
typedef struct point {
  double rise;
  double head;
} point;

typedef struct path {
  double t1_k;
  double inverse; /* 1/efficiency */
  double rho_t;   /* last density times temperature over pressure, where the search for the next starts */
} path;

static int32_t slope(path *c, double p_pa, point at, point *by_log_p)
{
  const double t = c->t1_k * exp(at.rise);
  freeair__real_state state;
  if (!(t < hottest) || !(t > 0.9 * FREEAIR__REAL_T_LEAST)) return FREEAIR_ERR_NO_SOLUTION;
  int32_t status = freeair__real_state_at(p_pa, t, c->rho_t * p_pa / t, &state);
  if (status < 0) return status;
  c->rho_t = state.rho_kg_m3 * t / p_pa;
  by_log_p->rise = state.zr_cp * (c->inverse + state.x);
  by_log_p->head = p_pa / state.rho_kg_m3;
  return FREEAIR_OK;
}

/* Gragg's midpoint rule over a step in ln p, of an even number of parts, smoothed at the end. */
static int32_t midpoint(path *c, double p_pa, double step, int parts, point start, point first, point *end)
{
  const double h = step / parts;
  point before = start;
  point now = {start.rise + h * first.rise, start.head + h * first.head};
  point k;
  for (int i = 1; i <= parts; i++) {
    int32_t status = slope(c, p_pa * exp(i * h), now, &k);
    if (status < 0) return status;
    if (i == parts) break;
    const point next = {before.rise + 2.0 * h * k.rise, before.head + 2.0 * h * k.head};
    before = now;
    now = next;
  }
  end->rise = 0.5 * (now.rise + before.rise + h * k.rise);
  end->head = 0.5 * (now.head + before.head + h * k.head);
  return FREEAIR_OK;
}

/* One step by extrapolation; 1 when it is exact enough, 0 when it is too long. */
static int extrapolated(path *c, double p_pa, double step, point *at)
{
  point first;
  point row[columns];
  if (slope(c, p_pa, *at, &first) < 0) return 0;
  for (int j = 0; j < columns; j++) {
    point found;
    if (midpoint(c, p_pa, step, 2 * (j + 1), *at, first, &found) < 0) return 0;
    point last = found;
    for (int i = 0; i < j; i++) {
      /* from 2(j - i) parts to 2(j + 1) */
      const double ratio = (j + 1.0) / (j - i);
      const double weight = 1.0 / (ratio * ratio - 1.0);
      const point before = row[i];
      row[i] = found;
      last = found;
      found.rise += weight * (found.rise - before.rise);
      found.head += weight * (found.head - before.head);
    }
    row[j] = found;
    if (j >= 2 && fabs(found.rise - last.rise) <= precision * fabs(found.rise - at->rise) &&
        fabs(found.head - last.head) <= precision * fabs(found.head - at->head)) {
      *at = found;
      return 1;
    }
  }
  return 0;
}

/* The path from p1 to p2: ln(T2/T1) and the head. */
static int32_t follow(double p1_pa, double t1_k, double p2_pa, double inverse, point *end)
{
  path c = {t1_k, inverse, NAN};
  const double whole = freeair__log_ratio(p2_pa, p1_pa);
  double done = 0.0;
  double step = whole < 1.0 ? whole : 1.0;
  *end = (point){0.0, 0.0};
  for (int i = 0; i < most_steps && done < whole; i++) {
    const double left = whole - done;
    const int last = step >= left * (1.0 - 1e-12);
    if (extrapolated(&c, p1_pa * exp(done), last ? left : step, end)) {
      done = last ? whole : done + step;
    } else {
      step = 0.5 * (last ? left : step);
      if (step < 1e-6 * whole) return FREEAIR_ERR_NO_SOLUTION;
    }
    if (t1_k * exp(end->rise) > hottest) return FREEAIR_ERR_NO_SOLUTION;
  }
  return done < whole ? FREEAIR_ERR_NO_CONVERGENCE : FREEAIR_OK;
}

static double volume_slope(const freeair__real_state *state, double m)
{
  return state->y - m * (1.0 + state->x);
}

int32_t freeair_real_polytropic_exponents(double p_pa, double t_k, double efficiency, double *volume_exponent,
                                          double *temperature_exponent, double *x, double *y)
{
  freeair__set_nan(volume_exponent);
  freeair__set_nan(temperature_exponent);
  freeair__set_nan(x);
  freeair__set_nan(y);
  if (volume_exponent == NULL || temperature_exponent == NULL || x == NULL || y == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__is_real_pressure(p_pa) || !freeair__is_real_temperature(t_k) ||
      !freeair__closed(efficiency, 0.01, 1.0))
    return FREEAIR_ERR_DOMAIN;
  freeair__real_state state;
  int32_t status = freeair__real_state_at(p_pa, t_k, NAN, &state);
  if (status < 0) return status;
  const double m = state.zr_cp * (1.0 / efficiency + state.x);
  const double by_log_p = volume_slope(&state, m);
  if (!(by_log_p > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *volume_exponent = 1.0 / by_log_p;
  *temperature_exponent = m;
  *x = state.x;
  *y = state.y;
  return FREEAIR_OK;
}

int32_t freeair_real_polytropic_work(double p1_pa, double t1_k, double p2_pa, double efficiency, double *w_j_kg,
                                     double *head_j_kg, double *t2_k)
{
  freeair__set_nan(w_j_kg);
  freeair__set_nan(head_j_kg);
  freeair__set_nan(t2_k);
  if (w_j_kg == NULL || head_j_kg == NULL || t2_k == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__is_real_pressure(p1_pa) || !freeair__is_real_temperature(t1_k) || !freeair__is_real_pressure(p2_pa) ||
      !freeair__closed(efficiency, 0.01, 1.0) || !(p2_pa >= p1_pa))
    return FREEAIR_ERR_DOMAIN;
  point end;
  int32_t status = follow(p1_pa, t1_k, p2_pa, 1.0 / efficiency, &end);
  if (status < 0) return status;
  const double t2 = t1_k * exp(end.rise);
  if (t2 > FREEAIR__REAL_T_MOST) return FREEAIR_ERR_NO_SOLUTION;
  *w_j_kg = end.head / efficiency;
  *head_j_kg = end.head;
  *t2_k = t2;
  return FREEAIR_OK;
}

static int are_measured(double p1_pa, double t1_k, double p2_pa, double t2_k)
{
  return freeair__is_real_pressure(p1_pa) && freeair__is_real_temperature(t1_k) && freeair__is_real_pressure(p2_pa) &&
         freeair__is_real_temperature(t2_k) && p2_pa > p1_pa && t2_k > t1_k;
}

int32_t freeair_real_polytropic_efficiency(double p1_pa, double t1_k, double p2_pa, double t2_k, double *efficiency,
                                           double *head_j_kg)
{
  freeair__set_nan(efficiency);
  freeair__set_nan(head_j_kg);
  if (efficiency == NULL || head_j_kg == NULL) return FREEAIR_ERR_NULL;
  if (!are_measured(p1_pa, t1_k, p2_pa, t2_k)) return FREEAIR_ERR_DOMAIN;
  const double least = 0.2; /* 1/5 */
  const double most = 1000.0;
  const double target = freeair__log_ratio(t2_k, t1_k);
  freeair__real_state one;
  freeair__real_state two;
  int32_t status = freeair__real_state_at(p1_pa, t1_k, NAN, &one);
  if (status >= 0) status = freeair__real_state_at(p2_pa, t2_k, NAN, &two);
  if (status < 0) return status;
  /* ln(T2/T1) is nearly a straight line of 1/efficiency, whose slope the ends tell */
  const double log_ratio = freeair__log_ratio(p2_pa, p1_pa);
  const double zr_cp = 0.5 * (one.zr_cp + two.zr_cp);
  double by_inverse = zr_cp * log_ratio;
  double y = target / by_inverse - 0.5 * (one.x + two.x);
  double y_before = NAN;
  double off_before = NAN;
  point end;
  for (int i = 0; i < 40; i++) {
    y = y > least ? y < most ? y : most : least;
    status = follow(p1_pa, t1_k, p2_pa, y, &end);
    if (status < 0) return status;
    const double off = end.rise - target;
    if (y != y_before && i > 0 && off != off_before) by_inverse = (off - off_before) / (y - y_before);
    const double next = y - off / by_inverse;
    if (fabs(next - y) <= 1e-11 * y) {
      *efficiency = 1.0 / next;
      *head_j_kg = end.head;
      return next < 1.0 ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
    }
    if (!(next >= least) && y <= least) return FREEAIR_ERR_NO_SOLUTION;
    if (!(next <= most) && y >= most) return FREEAIR_ERR_NO_SOLUTION;
    y_before = y;
    off_before = off;
    y = next;
  }
  return FREEAIR_ERR_NO_CONVERGENCE;
}

int32_t freeair_real_polytropic_schultz(double p1_pa, double t1_k, double p2_pa, double t2_k, double *efficiency,
                                        double *head_j_kg, double *volume_exponent, double *factor)
{
  freeair__set_nan(efficiency);
  freeair__set_nan(head_j_kg);
  freeair__set_nan(volume_exponent);
  freeair__set_nan(factor);
  if (efficiency == NULL || head_j_kg == NULL || volume_exponent == NULL || factor == NULL) return FREEAIR_ERR_NULL;
  if (!are_measured(p1_pa, t1_k, p2_pa, t2_k)) return FREEAIR_ERR_DOMAIN;
  freeair__real_state one;
  freeair__real_state two;
  freeair__real_state ideal;
  double w;
  double t_ideal;
  int32_t status = freeair__real_state_at(p1_pa, t1_k, NAN, &one);
  if (status >= 0) status = freeair__real_state_at(p2_pa, t2_k, NAN, &two);
  if (status >= 0) status = freeair_real_compression_isentropic(p1_pa, t1_k, p2_pa, &w, &t_ideal);
  if (status >= 0) status = freeair__real_state_at(p2_pa, t_ideal, NAN, &ideal);
  if (status < 0) return status;
  const double log_ratio = freeair__log_ratio(p2_pa, p1_pa);
  const double shrunk = freeair__log_ratio(two.rho_kg_m3, one.rho_kg_m3) / log_ratio; /* 1/n */
  const double shrunk_ideal = freeair__log_ratio(ideal.rho_kg_m3, one.rho_kg_m3) / log_ratio;
  const double rise = two.h_j_kg - one.h_j_kg;
  if (!(rise > 0.0) || !(shrunk > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  /* (n - 1)/n = 1 - 1/n, and n/(n-1) (p2 v2 - p1 v1) = p1 v1 (exp(m L) - 1)/m */
  const double correction = w / (p1_pa / one.rho_kg_m3 * freeair__power_excess(log_ratio, 1.0 - shrunk_ideal));
  const double head = correction * p1_pa / one.rho_kg_m3 * freeair__power_excess(log_ratio, 1.0 - shrunk);
  *efficiency = head / rise;
  *head_j_kg = head;
  *volume_exponent = 1.0 / shrunk;
  *factor = correction;
  return *efficiency > 1.0 ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}
