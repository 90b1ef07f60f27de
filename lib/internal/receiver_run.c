/* SPDX-License-Identifier: MIT */
#include "internal/receiver_run.h"

#include "internal/check.h"
#include <freeair/status.h>

#include <string.h>

/* Slopes of a monotone cubic on evenly spaced nodes (Fritsch and Carlson). */
static void monotone_slopes(int n, double step, const double *y, double *slope)
{
  for (int i = 0; i < n; i++) {
    if (i == 0 || i == n - 1) {
      int a = i == 0 ? 0 : n - 2;
      int other = i == 0 ? 1 : n - 3;
      double d = (y[a + 1] - y[a]) / step;
      double next = (y[other + 1] - y[other]) / step;
      double end = 1.5 * d - 0.5 * next;
      if (end * d <= 0.0) end = 0.0;
      else if (fabs(end) > 3.0 * fabs(d)) end = 3.0 * d;
      slope[i] = end;
      continue;
    }
    double left = (y[i] - y[i - 1]) / step;
    double right = (y[i + 1] - y[i]) / step;
    slope[i] = left * right > 0.0 ? 2.0 * left * right / (left + right) : 0.0;
  }
}

/* What the search for operating points carries from one to the next. */
typedef struct searcher {
  freeair__cycle *c;
  double accuracy;
  freeair__cycle_start at;
  freeair__cycle_sums sums;
  freeair__cycle_effort effort;
  int32_t *evaluations;
} searcher;

/* One operating point; begins anew where the neighbour's state does not serve. */
static int32_t search(searcher *q, double root_p)
{
  freeair__cycle_receiver(q->c, root_p * root_p, q->c->site.ambient_k);
  int known = q->at.state.known;
  int32_t status = freeair__cycle_solve(q->c, q->accuracy, &q->at.state, &q->at.work, &q->sums, &q->effort);
  *q->evaluations += q->effort.evaluations;
  if (status < 0 && known) {
    q->at.state.known = 0;
    status = freeair__cycle_solve(q->c, q->accuracy, &q->at.state, &q->at.work, &q->sums, &q->effort);
    *q->evaluations += q->effort.evaluations;
  }
  return status;
}

/* The pressure at which it stalls, between a node that delivers and one that does not. */
static int32_t find_stall(searcher *q, double lo, double hi, double least, double *stall)
{
  for (int i = 0; i < 9; i++) {
    double middle = 0.5 * (lo + hi);
    int32_t status = search(q, middle);
    if (status < 0) return status;
    if (q->sums.mass[q->c->link_check] > least) lo = middle;
    else hi = middle;
  }
  *stall = hi;
  return FREEAIR_OK;
}

static void note_node(const searcher *q, freeair__delivery_map *map, int i, double root, freeair__cycle_start *starts,
                      freeair_cycle_result *points)
{
  double per_s = q->at.state.omega / 6.28318530717958647693;
  map->root_p[i] = root;
  map->mass[i] = q->sums.mass[q->c->link_check] * per_s;
  map->enthalpy[i] = q->sums.enthalpy[q->c->link_check] * per_s;
  map->power[i] = freeair__cycle_shaft(q->c, &q->sums, q->at.state.omega);
  if (starts != NULL) starts[i] = q->at;
  if (points != NULL) freeair__cycle_report(q->c, &q->at.state, &q->sums, &q->effort, &points[i]);
}

int32_t freeair__delivery_map_build(freeair__cycle *c, double low_p, double high_p, int n, double accuracy,
                                    freeair__delivery_map *map, freeair__cycle_start *starts,
                                    freeair_cycle_result *points, int32_t *evaluations)
{
  searcher q = {.c = c, .accuracy = accuracy, .evaluations = evaluations};
  double low = sqrt(low_p);
  double high = sqrt(high_p);
  double least = 2e-4 * c->mass_scale; /* less than this a revolution is no delivery */
  map->n = n;
  for (int pass = 0; pass < 2; pass++) {
    int last = -1; /* last node with delivery */
    for (int i = 0; i < n; i++) {
      double root = low + (high - low) * i / (n - 1);
      if (starts != NULL && starts[i].state.known) q.at = starts[i];
      int32_t status = search(&q, root);
      if (status < 0) return status;
      note_node(&q, map, i, root, starts, points);
      if (q.sums.mass[c->link_check] > least) last = i;
      else if (pass == 0 && last >= 0) break;
    }
    if (last < 0 || last == n - 1 || pass == 1) break;
    /* put the nodes below the pressure at which it stalls, the last one on it */
    int32_t status = find_stall(&q, map->root_p[last], map->root_p[last + 1], least, &high);
    if (status < 0) return status;
  }
  double step = (high - low) / (n - 1);
  monotone_slopes(n, step, map->mass, map->mass_slope);
  monotone_slopes(n, step, map->enthalpy, map->enthalpy_slope);
  monotone_slopes(n, step, map->power, map->power_slope);
  return FREEAIR_OK;
}

void freeair__delivery_map_at(const freeair__delivery_map *map, double p, double *mass, double *enthalpy,
                              double *power)
{
  int n = map->n;
  double root = sqrt(p);
  root = fmin(fmax(root, map->root_p[0]), map->root_p[n - 1]);
  double step = (map->root_p[n - 1] - map->root_p[0]) / (n - 1);
  int i = (int)((root - map->root_p[0]) / step);
  if (i > n - 2) i = n - 2;
  if (i < 0) i = 0;
  double x = (root - map->root_p[i]) / step;
  double h01 = x * x * (3.0 - 2.0 * x);
  double h10 = x * (1.0 - x) * (1.0 - x) * step;
  double h11 = x * x * (x - 1.0) * step;
  *mass = map->mass[i] + h01 * (map->mass[i + 1] - map->mass[i]) + h10 * map->mass_slope[i] +
          h11 * map->mass_slope[i + 1];
  *enthalpy = map->enthalpy[i] + h01 * (map->enthalpy[i + 1] - map->enthalpy[i]) + h10 * map->enthalpy_slope[i] +
              h11 * map->enthalpy_slope[i + 1];
  *power = map->power[i] + h01 * (map->power[i + 1] - map->power[i]) + h10 * map->power_slope[i] +
           h11 * map->power_slope[i + 1];
}

double freeair__receiver_pressure(const freeair__receiver *r, const freeair__receiver_state *s)
{
  return (r->c->k - 1.0) * s->energy / r->volume;
}

void freeair__receiver_set(const freeair__receiver *r, double p, double gas_t, double wall_t,
                           freeair__receiver_state *s)
{
  memset(s, 0, sizeof *s);
  s->mass = p * r->volume / (r->c->gas_r * gas_t);
  s->energy = p * r->volume / (r->c->k - 1.0);
  s->wall = wall_t;
}

double freeair__receiver_orifice(const freeair__cycle *c, double area, double p, double t)
{
  double pa = c->site.barometric_pa;
  if (!(area > 0.0)) return 0.0;
  double up = fmax(p, pa);
  double r = fmin(p, pa) / up;
  double critical = pow(2.0 / (c->k + 1.0), c->k / (c->k - 1.0));
  r = fmax(r, critical);
  double psi;
  if (r > 1.0 - 1e-3) {
    /* quadratic below 1e-3, as in the crank-angle model */
    double x = 1.0 - r;
    psi = x * (c->nozzle_linear + c->nozzle_quadratic * x);
  } else {
    double y = pow(r, (c->k - 1.0) / c->k);
    psi = sqrt(2.0 * c->k / (c->k - 1.0) * (1.0 - y)) * r / y;
  }
  double flow = area * up * psi / sqrt(c->gas_r * (p >= pa ? t : c->site.ambient_k));
  return p >= pa ? flow : -flow;
}

enum { SIZE = 5 };

/* mass, energy, wall, delivered, work */
static void rates(const freeair__receiver *r, const double *y, double *f)
{
  const freeair__cycle *c = r->c;
  double p = (c->k - 1.0) * y[1] / r->volume;
  double t = y[1] / (y[0] * c->cv);
  double in = 0.0;
  double enthalpy = 0.0;
  double power = 0.0;
  if (r->map != NULL) freeair__delivery_map_at(r->map, p, &in, &enthalpy, &power);
  double leak = freeair__receiver_orifice(c, r->leak_area, p, t);
  /* use stops as the pressure comes down to ambient */
  double demand = r->demand_kg_s * fmin(fmax((p / c->site.barometric_pa - 1.0) * 50.0, 0.0), 1.0);
  double out = leak + demand;
  double heat = c->m.receiver_gas_ua_w_k * pow(p / c->site.barometric_pa, 2.0 / 3.0) * (t - y[2]);
  f[0] = in - out;
  f[1] = enthalpy - c->cp * (leak < 0.0 ? demand * t + leak * c->site.ambient_k : out * t) - heat;
  f[2] = (heat - c->m.receiver_wall_ua_w_k * (y[2] - c->site.ambient_k)) / c->m.receiver_wall_j_k;
  f[3] = in;
  f[4] = power;
}

/* Dormand and Prince, order 5(4). Returns the error over the tolerance. */
static double embedded_step(const freeair__receiver *r, const double *y, double h, double *out)
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
      out[i] = y[i] + h * sum;
    }
    if (!(out[0] > 0.0 && out[1] > 0.0 && out[2] > 0.0)) return INFINITY;
    rates(r, out, k[s]);
  }
  double worst = 0.0;
  for (int i = 0; i < 3; i++) {
    double error = 0.0;
    for (int s = 0; s < 7; s++) error += e[s] * k[s][i];
    worst = fmax(worst, fabs(h * error) / (1e-8 * fabs(y[i])));
  }
  return worst == worst ? worst : INFINITY;
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

int freeair__receiver_advance(const freeair__receiver *r, double end_t, double end_p,
                              freeair__receiver_state *s)
{
  enum { most_steps = 1000000 };
  double target = end_p * r->volume / (r->c->k - 1.0); /* as energy */
  double y[SIZE];
  double out[SIZE];
  to_array(s, y);
  if (y[1] >= target) return 1;
  double h = fmin(0.1, end_t - s->t);
  for (int steps = 0; steps < most_steps && s->t < end_t; steps++) {
    int last = s->t + 1.000001 * h >= end_t;
    if (last) h = end_t - s->t;
    double error = embedded_step(r, y, h, out);
    if (error > 1.0) {
      h *= error < 1e6 ? fmax(0.1, 0.9 * pow(error, -0.2)) : 0.1;
      if (!(h > 1e-12)) return -1;
      continue;
    }
    if (out[1] >= target) {
      /* shorten the step until it ends on the target: bisection and secant in turn */
      double lo = 0.0;
      double hi = h;
      double low = y[1] - target;
      double high = out[1] - target;
      for (int i = 0; i < 100 && hi - lo > 1e-13 * h; i++) {
        double x = i % 3 == 2 ? 0.5 * (lo + hi) : lo - low * (hi - lo) / (high - low);
        embedded_step(r, y, x, out);
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
      embedded_step(r, y, hi, out);
      from_array(out, s);
      s->t += hi;
      return 1;
    }
    memcpy(y, out, sizeof y);
    from_array(y, s);
    s->t = last ? end_t : s->t + h;
    h *= error > 1e-6 ? fmin(4.0, 0.9 * pow(error, -0.2)) : 4.0;
  }
  return s->t >= end_t ? 0 : -1;
}

void freeair__receiver_draw_down(const freeair__receiver *r, double from_p, double to_p, double duration,
                                 freeair__receiver_state *s)
{
  enum { steps = 400 };
  const freeair__cycle *c = r->c;
  double ta = c->site.ambient_k;
  freeair__receiver_set(r, fmax(from_p, to_p), ta, ta, s);
  if (!(from_p > to_p)) return;
  double h = duration / steps;
  double slope = (to_p - from_p) / duration * r->volume / (c->k - 1.0); /* of energy */
  double mass = s->mass;
  double wall = s->wall;
  for (int i = 0; i < steps; i++) {
    double k[4][2];
    for (int q = 0; q < 4; q++) {
      double x = q == 0 ? 0.0 : q == 3 ? h : 0.5 * h;
      double m = mass + (q == 0 ? 0.0 : x * k[q - 1][0]);
      double w = wall + (q == 0 ? 0.0 : x * k[q - 1][1]);
      double energy = s->energy + slope * (i * h + x);
      double t = energy / (m * c->cv);
      double p = (c->k - 1.0) * energy / r->volume;
      double heat = c->m.receiver_gas_ua_w_k * pow(p / c->site.barometric_pa, 2.0 / 3.0) * (t - w);
      k[q][0] = (slope + heat) / (c->cp * t);
      k[q][1] = (heat - c->m.receiver_wall_ua_w_k * (w - ta)) / c->m.receiver_wall_j_k;
    }
    mass += h / 6.0 * (k[0][0] + 2.0 * k[1][0] + 2.0 * k[2][0] + k[3][0]);
    wall += h / 6.0 * (k[0][1] + 2.0 * k[1][1] + 2.0 * k[2][1] + k[3][1]);
  }
  s->mass = mass;
  s->energy = to_p * r->volume / (c->k - 1.0);
  s->wall = wall;
}
