/* SPDX-License-Identifier: MIT */
/* The receiver over time: an explicit pair of high order while the problem lets
 * it, a linearly implicit one once the time constants of gas or wall are far
 * below the time of interest. */
#include "internal/receiver_run.h"

#include "internal/check.h"
#include "internal/rosenbrock.h"

#include <string.h>

/* mass, energy, wall; then what is only added up: delivered, work */
enum { STATES = 3, SIZE = 5 };

static void rates(const freeair__receiver *r, double slope, const double *y, double *f)
{
  const freeair__cycle *c = r->c;
  double p = (c->k - 1.0) * y[1] / r->volume;
  double t = y[1] / (y[0] * c->cv);
  double heat = c->m.receiver_gas_ua_w_k * pow(p / c->site.barometric_pa, 2.0 / 3.0) * (t - y[2]);
  f[2] = (heat - c->m.receiver_wall_ua_w_k * (y[2] - c->site.ambient_k)) / c->m.receiver_wall_j_k;
  f[3] = f[4] = 0.0;
  if (slope < 0.0) {
    /* drawn down: the energy is told to fall, and takes what mass that needs */
    f[0] = (slope + heat) / (c->cp * t);
    f[1] = slope;
    return;
  }
  double pump[FREEAIR__DELIVERY_QUANTITIES] = {0.0};
  if (r->map != NULL) freeair__delivery_map_at(r->map, p, pump);
  double in = pump[FREEAIR__DELIVERY_MASS];
  /* what goes back takes the receiver's own temperature with it */
  double enthalpy = pump[FREEAIR__DELIVERY_ENTHALPY] +
                    pump[FREEAIR__DELIVERY_BACK] * c->cp * (c->site.ambient_k - t);
  double leak = freeair__receiver_orifice(c, r->leak_area, p, t);
  /* use stops as the pressure comes down to ambient */
  double demand = r->demand_kg_s * fmin(fmax((p / c->site.barometric_pa - 1.0) * 50.0, 0.0), 1.0);
  double out = leak + demand;
  f[0] = in - out;
  f[1] = enthalpy - c->cp * (leak < 0.0 ? demand * t + leak * c->site.ambient_k : out * t) - heat;
  f[3] = in;
  f[4] = pump[FREEAIR__DELIVERY_POWER];
}

/* What a step starts from. */
typedef struct walk {
  const freeair__receiver *r;
  double slope; /* of the energy, when drawn down */
  int implicit;
  double y[SIZE];
  double f[SIZE];        /* implicit only */
  double j[STATES][SIZE]; /* implicit only: by each state, over its size */
} walk;

static int physical(const double *y)
{
  return y[0] > 0.0 && y[1] > 0.0 && y[2] > 0.0 && y[0] < 1e300 && y[1] < 1e300 && y[2] < 1e300;
}

static double worst_of(const double *y, const double *error)
{
  double worst = 0.0;
  for (int i = 0; i < STATES; i++) {
    double e = fabs(error[i]) / (1e-8 * fabs(y[i]));
    if (!(e <= worst)) worst = e;
  }
  return worst == worst ? worst : INFINITY;
}

/* Dormand and Prince, order 5(4). Returns the error over the tolerance. */
static double explicit_step(const walk *w, double h, double *out)
{
  static const double a[7][6] = {
      {0.0},
      {1.0 / 5.0},
      {3.0 / 40.0, 9.0 / 40.0},
      {44.0 / 45.0, -56.0 / 15.0, 32.0 / 9.0},
      {19372.0 / 6561.0, -25360.0 / 2187.0, 64448.0 / 6561.0, -212.0 / 729.0},
      {9017.0 / 3168.0, -355.0 / 33.0, 46732.0 / 5247.0, 49.0 / 176.0, -5103.0 / 18656.0},
      {35.0 / 384.0, 0.0, 500.0 / 1113.0, 125.0 / 192.0, -2187.0 / 6784.0, 11.0 / 84.0}};
  static const double e[7] = {71.0 / 57600.0,      0.0,          -71.0 / 16695.0, 71.0 / 1920.0,
                              -17253.0 / 339200.0, 22.0 / 525.0, -1.0 / 40.0};
  double k[7][SIZE];
  for (int s = 0; s < 7; s++) {
    for (int i = 0; i < SIZE; i++) {
      double sum = 0.0;
      for (int j = 0; j < s; j++) sum += a[s][j] * k[j][i];
      out[i] = w->y[i] + h * sum;
    }
    if (!physical(out)) return INFINITY;
    rates(w->r, w->slope, out, k[s]);
  }
  double error[STATES];
  for (int i = 0; i < STATES; i++) {
    error[i] = 0.0;
    for (int s = 0; s < 7; s++) error[i] += h * e[s] * k[s][i];
  }
  return worst_of(w->y, error);
}

/* Rates and their derivatives, by differences, where an implicit step starts. The
 * energy steps away from ambient pressure, where the gas that flows turns from
 * the receiver's to the ambient one. */
static void differentiate(walk *w)
{
  double above = (w->r->c->k - 1.0) * w->y[1] / w->r->volume - w->r->c->site.barometric_pa;
  rates(w->r, w->slope, w->y, w->f);
  for (int j = 0; j < STATES; j++) {
    double y[SIZE];
    double f[SIZE];
    memcpy(y, w->y, sizeof y);
    double d = j == 1 && above < 0.0 ? -1e-7 : 1e-7;
    y[j] *= 1.0 + d;
    rates(w->r, w->slope, y, f);
    for (int i = 0; i < SIZE; i++) w->j[j][i] = (f[i] - w->f[i]) / d;
  }
}

/* Solves (1/(h gamma) - J) x = b for the states over their sizes, then for the
 * sums. b holds rates on entry and increments on return. */
static void implicit_solve(const walk *w, double h, double *b)
{
  double over = 1.0 / (h * gamma_);
  double a[STATES][STATES + 1];
  for (int i = 0; i < STATES; i++) {
    for (int j = 0; j < STATES; j++) a[i][j] = (i == j ? over : 0.0) - w->j[j][i] / w->y[i];
    a[i][STATES] = b[i] / w->y[i];
  }
  for (int k = 0; k < STATES; k++) {
    int best = k;
    for (int i = k + 1; i < STATES; i++)
      if (fabs(a[i][k]) > fabs(a[best][k])) best = i;
    for (int j = k; j <= STATES; j++) {
      double swap = a[k][j];
      a[k][j] = a[best][j];
      a[best][j] = swap;
    }
    for (int i = k + 1; i < STATES; i++) {
      double l = a[i][k] / a[k][k];
      for (int j = k; j <= STATES; j++) a[i][j] -= l * a[k][j];
    }
  }
  double x[STATES];
  for (int i = STATES - 1; i >= 0; i--) {
    x[i] = a[i][STATES];
    for (int j = i + 1; j < STATES; j++) x[i] -= a[i][j] * x[j];
    x[i] /= a[i][i];
  }
  for (int i = STATES; i < SIZE; i++) {
    for (int j = 0; j < STATES; j++) b[i] += w->j[j][i] * x[j];
    b[i] /= over;
  }
  for (int i = 0; i < STATES; i++) b[i] = x[i] * w->y[i];
}

static double implicit_step(const walk *w, double h, double *out)
{
  const double a[3][2] = {{0.0, 0.0}, {a21, 0.0}, {a31, a32}};
  const double c[4][3] = {{0.0, 0.0, 0.0}, {c21, 0.0, 0.0}, {c31, c32, 0.0}, {c41, c42, c43}};
  const double b[4] = {b1, b2, b3, b4};
  const double e[4] = {e1, e2, e3, e4};
  double u[4][SIZE];
  double f[SIZE];
  memcpy(f, w->f, sizeof f);
  for (int s = 0; s < 4; s++) {
    if (s == 1 || s == 2) { /* the last stage shares the evaluation before it */
      for (int i = 0; i < SIZE; i++) {
        out[i] = w->y[i];
        for (int j = 0; j < s; j++) out[i] += a[s][j] * u[j][i];
      }
      if (!physical(out)) return INFINITY;
      rates(w->r, w->slope, out, f);
    }
    for (int i = 0; i < SIZE; i++) {
      u[s][i] = f[i];
      for (int j = 0; j < s; j++) u[s][i] += c[s][j] * u[j][i] / h;
    }
    implicit_solve(w, h, u[s]);
  }
  double error[SIZE];
  for (int i = 0; i < SIZE; i++) {
    out[i] = w->y[i];
    error[i] = 0.0;
    for (int s = 0; s < 4; s++) {
      out[i] += b[s] * u[s][i];
      error[i] += e[s] * u[s][i];
    }
  }
  return physical(out) ? worst_of(w->y, error) : INFINITY;
}

static double step(const walk *w, double h, double *out)
{
  return w->implicit ? implicit_step(w, h, out) : explicit_step(w, h, out);
}

/* Shortens a step until it ends on the target: bisection and secant in turn.
 * Returns its length. */
static double end_on(const walk *w, double h, double target, double *out)
{
  double lo = 0.0;
  double hi = h;
  double low = w->y[1] - target;
  double high = out[1] - target;
  for (int i = 0; i < 100 && hi - lo > 1e-13 * h; i++) {
    double x = i % 3 == 2 ? 0.5 * (lo + hi) : lo - low * (hi - lo) / (high - low);
    step(w, x, out);
    double miss = out[1] - target;
    if (fabs(miss) < 1e-12 * target) {
      hi = x;
      break;
    }
    if (miss < 0.0) {
      lo = x;
      low = miss;
    } else {
      hi = x;
      high = miss;
    }
  }
  step(w, hi, out);
  return hi;
}

static void to_array(const freeair__receiver_state *s, double *y)
{
  y[0] = s->mass;
  y[1] = s->energy;
  y[2] = s->wall;
  y[3] = s->delivered;
  y[4] = s->work;
}

static void from_array(const double *y, freeair__receiver_state *s)
{
  s->mass = y[0];
  s->energy = y[1];
  s->wall = y[2];
  s->delivered = y[3];
  s->work = y[4];
}

static int advance(const freeair__receiver *r, double slope, double end_t, double end_p, freeair__receiver_state *s)
{
  enum { explicit_steps = 200, most_steps = 100000 };
  double target = end_p * r->volume / (r->c->k - 1.0); /* as energy */
  walk w = {.r = r, .slope = slope};
  double out[SIZE];
  to_array(s, w.y);
  if (w.y[1] >= target) return 1;
  double h = fmin(0.1, end_t - s->t);
  for (int steps = 0; steps < most_steps && s->t < end_t; steps++) {
    if (steps == explicit_steps) {
      w.implicit = 1;
      differentiate(&w);
    }
    int last = s->t + 1.000001 * h >= end_t;
    if (last) h = end_t - s->t;
    double error = step(&w, h, out);
    double power = w.implicit ? -0.25 : -0.2;
    if (error > 1.0) {
      h *= error < 1e6 ? fmax(0.1, 0.9 * pow(error, power)) : 0.1;
      if (!(h > 1e-300)) return -1;
      continue;
    }
    if (out[1] >= target) {
      h = end_on(&w, h, target, out);
      from_array(out, s);
      s->t += h;
      return 1;
    }
    memcpy(w.y, out, sizeof w.y);
    if (w.implicit) differentiate(&w);
    from_array(w.y, s);
    s->t = last ? end_t : s->t + h;
    h *= error > 1e-6 ? fmin(4.0, 0.9 * pow(error, power)) : 4.0;
  }
  return s->t >= end_t ? 0 : -1;
}

int freeair__receiver_advance(const freeair__receiver *r, double end_t, double end_p, freeair__receiver_state *s)
{
  return advance(r, 0.0, end_t, end_p, s);
}

int freeair__receiver_draw_down(const freeair__receiver *r, double from_p, double to_p, double duration,
                                freeair__receiver_state *s)
{
  double ta = r->c->site.ambient_k;
  freeair__receiver_set(r, fmax(from_p, to_p), ta, ta, s);
  if (!(from_p > to_p)) return 0;
  double slope = (to_p - from_p) / duration * r->volume / (r->c->k - 1.0);
  int reached = advance(r, slope, duration, INFINITY, s);
  s->energy = to_p * r->volume / (r->c->k - 1.0);
  return reached;
}
