/* SPDX-License-Identifier: MIT */
/* Integration over a revolution by a linearly implicit Runge-Kutta pair of
 * order 4(3) with exact derivatives. Mass and energy sums are integrated by the
 * same formula as the states, so that the balances close to round-off. */
#include "internal/cycle.h"

#include "internal/check.h"
#include "internal/rosenbrock.h"

#include <string.h>

static const double pi = 3.14159265358979323846;

/* Factors w, stored by columns, in place without pivoting: every volume's own
 * flows dominate its rows. Two columns, the mass and the energy of a volume, go
 * at a time. The diagonal becomes its inverse. Returns 0 when a pivot is not
 * positive. */
static int factor(double *restrict w, int n)
{
  for (int k = 0; k < n; k += 2) {
    double *restrict c0 = w + k * n;
    double *restrict c1 = c0 + n;
    if (!(c0[k] > 0.0)) return 0;
    double over = 1.0 / c0[k];
    double l = c0[k + 1] * over;
    double u = c1[k];
    c0[k] = over;
    c0[k + 1] = l;
    double pivot = c1[k + 1] - l * u;
    if (!(pivot > 0.0)) return 0;
    double over1 = 1.0 / pivot;
    c1[k + 1] = over1;
    for (int i = k + 2; i < n; i++) {
      c0[i] *= over;
      c1[i] = (c1[i] - c0[i] * u) * over1;
    }
    for (int j = k + 2; j < n; j++) {
      double *restrict other = w + j * n;
      double t0 = other[k];
      double t1 = other[k + 1] - l * t0;
      if (t0 == 0.0 && t1 == 0.0) continue;
      other[k + 1] = t1;
      for (int i = k + 2; i < n; i++) other[i] -= c0[i] * t0 + c1[i] * t1;
    }
  }
  return 1;
}

static void solve(const double *restrict w, int n, double *restrict x)
{
  for (int k = 0; k < n; k += 2) {
    const double *c0 = w + k * n;
    const double *c1 = c0 + n;
    double t0 = x[k];
    double t1 = x[k + 1] - c0[k + 1] * t0;
    x[k + 1] = t1;
    for (int i = k + 2; i < n; i++) x[i] -= c0[i] * t0 + c1[i] * t1;
  }
  for (int k = n - 2; k >= 0; k -= 2) {
    const double *c0 = w + k * n;
    const double *c1 = c0 + n;
    double t1 = x[k + 1] * c1[k + 1];
    double t0 = (x[k] - c1[k] * t1) * c0[k];
    x[k] = t0;
    x[k + 1] = t1;
    for (int i = 0; i < k; i++) x[i] -= c0[i] * t0 + c1[i] * t1;
  }
}

/* The quantities that are integrated along: values at a stage, slopes at the
 * start of the step. */
typedef struct sums_of_stage {
  double mass[FREEAIR__LINKS];
  double enthalpy[FREEAIR__LINKS];
  double heat[FREEAIR__VOLUMES];
  double work[FREEAIR__CYLINDERS];
} sums_of_stage;

static void integrate_sums(const freeair__cycle *c, const freeair__cycle_slopes *d, const freeair__cycle_rates *r,
                           const double *u, double h, double time_weight, int stage, const sums_of_stage *k,
                           sums_of_stage *out, int full)
{
  double hg = h * gamma_;
  double ht = h * time_weight;
  double p1 = stage == 1 ? c21 : stage == 2 ? c31 : stage == 3 ? c41 : 0.0;
  double p2 = stage == 2 ? c32 : stage == 3 ? c42 : 0.0;
  double p3 = stage == 3 ? c43 : 0.0;
#define BEFORE(what, i) (p1 * k[0].what[i] + p2 * k[1].what[i] + p3 * k[2].what[i])
  for (int v = 0; v < c->n_cylinders; v++) {
    double w = r->work[v] + d->work[v][1] * u[2 * v + 1] + ht * d->work[v][2];
    if (c->gas.warm) w += d->work[v][0] * u[2 * v];
    out->work[v] = hg * w + gamma_ * BEFORE(work, v);
  }
  for (int v = 0; v < c->n_volumes; v++) {
    double q = r->heat[v] + d->heat[v][0] * u[2 * v] + d->heat[v][1] * u[2 * v + 1] + ht * d->heat[v][2];
    out->heat[v] = hg * q + gamma_ * BEFORE(heat, v);
  }
  if (!full) return;
  static const double none[2] = {0.0, 0.0};
  for (int i = 0; i < c->n_links; i++) {
    const freeair__link *l = &c->link[i];
    const double *ua = l->a < c->n_volumes ? u + 2 * l->a : none;
    const double *ub = l->b < c->n_volumes ? u + 2 * l->b : none;
    const double *g = d->mass[i];
    double q = r->mass[i] + g[0] * ua[0] + g[1] * ua[1] + g[2] * ub[0] + g[3] * ub[1] + ht * g[4];
    out->mass[i] = hg * q + gamma_ * BEFORE(mass, i);
    g = d->enthalpy[i];
    q = r->enthalpy[i] + g[0] * ua[0] + g[1] * ua[1] + g[2] * ub[0] + g[3] * ub[1] + ht * g[4];
    out->enthalpy[i] = hg * q + gamma_ * BEFORE(enthalpy, i);
  }
#undef BEFORE
}

/* The part of a flow in a step that goes forward: all or nothing by the sum, but
 * where it turns, that of a parabola with the flow at both ends and the sum. */
static double forward_part(double first, double last, double sum, double h)
{
  if (!(first * last < 0.0)) return fmax(sum, 0.0);
  double bulge = 3.0 * (2.0 * sum / h - first - last); /* flow = first (1-x) + last x + bulge x (1-x) */
  if (fabs(bulge) > 2.0 * fabs(last - first)) return fmax(sum, 0.0); /* too stiff for a parabola */
  double b = last - first + bulge;
  double root = sqrt(b * b + 4.0 * bulge * first);
  /* bulge x^2 - b x - first = 0 changes sign once within the step */
  double q = 0.5 * (b + (b >= 0.0 ? root : -root));
  double x = -first / q;
  if (!(x >= 0.0 && x <= 1.0)) x = q / bulge;
  if (!(x >= 0.0 && x <= 1.0)) return fmax(sum, 0.0);
  double until = h * x * (first + x * (0.5 * b - x * bulge / 3.0));
  return first > 0.0 ? until : sum - until;
}

static void add_sums(const freeair__cycle *c, freeair__cycle_sums *sums, const freeair__cycle_rates *before,
                     const freeair__cycle_rates *after, double h, const sums_of_stage *k, int full)
{
#define TOTAL(what, i) (b1 * k[0].what[i] + b2 * k[1].what[i] + b3 * k[2].what[i] + b4 * k[3].what[i])
  for (int v = 0; v < c->n_cylinders; v++) sums->work[v] += TOTAL(work, v);
  for (int v = 0; v < c->n_volumes; v++) sums->heat[v] += TOTAL(heat, v);
  if (!full) return;
  for (int i = 0; i < c->n_links; i++) {
    double mass = TOTAL(mass, i);
    double enthalpy = TOTAL(enthalpy, i);
    sums->mass[i] += mass;
    sums->enthalpy[i] += enthalpy;
    int tight = c->link[i].law == FREEAIR__VALVE && !(c->link[i].leak > 0.0);
    double forward = tight ? mass : forward_part(before->mass[i], after->mass[i], mass, h);
    sums->forward_mass[i] += forward;
    int a = c->link[i].a;
    if (forward == mass)
      sums->forward_enthalpy[i] += enthalpy;
    else if (forward != 0.0)
      sums->forward_enthalpy[i] += c->gas.warm ? forward * 0.5 * (before->h[a] + after->h[a])
                                               : forward * 0.5 * c->cp * (before->t[a] + after->t[a]);
  }
#undef TOTAL
}

/* Leaves points of the card between two accepted times by cubic Hermite
 * interpolation of mass and energy. */
static void draw_card(const freeair__cycle *c, const freeair__cycle_state *s, const freeair__cycle_card *card,
                      double t0, double h, double last, const double *y0, const double *f0, const double *y1,
                      const double *f1)
{
  int v = card->volume;
  double period = 2.0 * pi / s->omega;
  size_t i = (size_t)ceil(t0 / period * (double)card->n - 1e-9);
  for (; i < card->n; i++) {
    double t = period * (double)i / (double)card->n;
    if (t >= t0 + h && !(last > 0.0)) break;
    double x = (t - t0) / h;
    double state[2];
    for (int q = 0; q < 2; q++) {
      int at = 2 * v + q;
      double dy = y1[at] - y0[at];
      double p = h * f0[at] - dy;
      double r = dy - h * f1[at];
      state[q] = y0[at] + x * dy + x * (1.0 - x) * ((1.0 - x) * p + x * r);
    }
    double volume = v < c->n_cylinders ? 0.0 : c->volume[v];
    double dv;
    double ddv;
    if (v < c->n_cylinders)
      freeair__cycle_cylinder_volume(c, v, sin(s->omega * t), cos(s->omega * t), &volume, &dv, &ddv);
    double kelvin = state[1] / (state[0] * c->cv);
    if (c->gas.warm) kelvin = freeair__gas_temperature(&c->gas, state[1] / (state[0] * c->gas_r), &dv);
    if (card->p != NULL)
      card->p[i] = c->gas.warm ? state[0] * c->gas_r * kelvin / volume : (c->k - 1.0) * state[1] / volume;
    if (card->v != NULL) card->v[i] = volume;
    if (card->t != NULL) card->t[i] = kelvin;
  }
}

/* Time integrals of pressure and temperature by the trapezoidal rule with end
 * correction, and extremes at the steps. */
static void note_levels(const freeair__cycle *c, freeair__cycle_sums *sums, const freeair__cycle_rates *before,
                        const freeair__cycle_rates *after, const double *y0, const double *y1, double h)
{
  for (int v = 0; v < c->n_volumes; v++) {
    double dp = 0.0;
    double dt = 0.0;
    if (v >= c->n_cylinders) {
      int m = 2 * v;
      int u = m + 1;
      dp = (c->k - 1.0) / c->volume[v] * (before->f[u] - after->f[u]);
      dt = before->bend[v] * before->t[v] * (before->f[u] / y0[u] - before->f[m] / y0[m]) -
           after->bend[v] * after->t[v] * (after->f[u] / y1[u] - after->f[m] / y1[m]);
      if (c->gas.warm)
        dp = before->over_cv[v] / c->volume[v] * before->f[u] - after->over_cv[v] / c->volume[v] * after->f[u] +
             before->p[v] * (1.0 - before->bend[v]) * before->f[m] / y0[m] -
             after->p[v] * (1.0 - after->bend[v]) * after->f[m] / y1[m];
    }
    sums->pressure[v] += h * (0.5 * (before->p[v] + after->p[v]) + h / 12.0 * dp);
    sums->temperature[v] += h * (0.5 * (before->t[v] + after->t[v]) + h / 12.0 * dt);
    sums->lowest[v] = fmin(sums->lowest[v], after->p[v]);
    sums->highest[v] = fmax(sums->highest[v], after->p[v]);
  }
}

/* How far the sums of a revolution miss the change of what is stored. */
static void close_balances(const freeair__cycle *c, const double *y0, const double *y1, freeair__cycle_sums *sums)
{
  double mass = 0.0;
  double energy = 0.0;
  for (int i = 0; i < c->n_links; i++) {
    double sign = (c->link[i].b < c->n_volumes ? 1.0 : 0.0) - (c->link[i].a < c->n_volumes ? 1.0 : 0.0);
    mass += sign * sums->mass[i];
    energy += sign * sums->enthalpy[i];
  }
  for (int v = 0; v < c->n_volumes; v++) {
    mass -= y1[2 * v] - y0[2 * v];
    energy -= y1[2 * v + 1] - y0[2 * v + 1] + sums->heat[v];
  }
  for (int v = 0; v < c->n_cylinders; v++) energy -= sums->work[v];
  sums->mass_error = mass / c->mass_scale;
  sums->energy_error = energy / (c->mass_scale * c->cp * c->site.ambient_k);
}

/* What one step needs and leaves. */
typedef struct stepper {
  freeair__cycle_rates rates[2];
  freeair__cycle_rates stage;
  freeair__cycle_slopes slopes;
  freeair__cycle_rates *now;
  freeair__cycle_rates *next;
  sums_of_stage k[4];
  double w[FREEAIR__STATES * FREEAIR__STATES];
  double u[4][FREEAIR__STATES];
  double x[FREEAIR__STATES]; /* state at the end of the step */
  double floor_m[FREEAIR__VOLUMES];
} stepper;

/* One step of size h from y; returns its error over the tolerance, or a
 * negative number when an intermediate state is not physical. */
static double take_step(const freeair__cycle *c, const freeair__cycle_state *s, stepper *p, double t, double h,
                        const double *y, double tolerance, freeair__cycle_effort *effort)
{
  int n = 2 * c->n_volumes;
  double *w = p->w;
  double *x = p->x;
  double(*u)[FREEAIR__STATES] = p->u;
  const double *ft = p->slopes.ft;
  double over_h = 1.0 / h;
  double over = over_h / gamma_;
  for (int i = 0; i < n * n; i++) w[i] = -p->slopes.j[i];
  for (int i = 0; i < n; i++) w[i * n + i] += over;
  if (!factor(w, n)) return -1.0;
  for (int i = 0; i < n; i++) u[0][i] = p->now->f[i] + h * d1 * ft[i];
  solve(w, n, u[0]);
  for (int i = 0; i < n; i++) x[i] = y[i] + a21 * u[0][i];
  effort->evaluations++;
  if (!freeair__cycle_rates_at(c, s, t + alpha2 * h, x, p->next)) return -1.0;
  for (int i = 0; i < n; i++) u[1][i] = p->next->f[i] + h * d2 * ft[i] + over_h * c21 * u[0][i];
  solve(w, n, u[1]);
  for (int i = 0; i < n; i++) x[i] = y[i] + a31 * u[0][i] + a32 * u[1][i];
  effort->evaluations++;
  if (!freeair__cycle_rates_at(c, s, t + alpha3 * h, x, &p->stage)) return -1.0;
  for (int i = 0; i < n; i++)
    u[2][i] = p->stage.f[i] + h * d3 * ft[i] + over_h * (c31 * u[0][i] + c32 * u[1][i]);
  solve(w, n, u[2]);
  for (int i = 0; i < n; i++)
    u[3][i] = p->stage.f[i] + h * d4 * ft[i] + over_h * (c41 * u[0][i] + c42 * u[1][i] + c43 * u[2][i]);
  solve(w, n, u[3]);
  double sum = 0.0;
  for (int v = 0; v < c->n_volumes; v++) {
    double over_scale = 1.0 / (fmin(y[2 * v], c->mass_scale) + p->floor_m[v]);
    for (int q = 0; q < 2; q++) {
      int i = 2 * v + q;
      x[i] = y[i] + b1 * u[0][i] + b2 * u[1][i] + b3 * u[2][i] + b4 * u[3][i];
      double e = (e1 * u[0][i] + e2 * u[1][i] + e3 * u[2][i] + e4 * u[3][i]) * over_scale;
      if (q == 1) e /= c->cv * p->now->t[v];
      sum += e * e;
    }
  }
  return sqrt(sum / n) / tolerance;
}

static int start(const freeair__cycle *c, const freeair__cycle_state *s, stepper *p, freeair__cycle_sums *sums,
                 freeair__cycle_effort *effort)
{
  p->now = &p->rates[0];
  p->next = &p->rates[1];
  memset(sums, 0, sizeof *sums);
  memset(p->k, 0, sizeof p->k);
  effort->evaluations++;
  if (!freeair__cycle_slopes_at(c, s, 0.0, s->y, p->now, &p->slopes)) return 0;
  for (int v = 0; v < c->n_volumes; v++) {
    sums->lowest[v] = sums->highest[v] = p->now->p[v];
    p->floor_m[v] = v < c->n_cylinders ? 0.1 * c->mass_scale * c->cylinder[v].swept /
                                             (c->m.lp_cylinders * c->cylinder[0].swept)
                                       : 0.0;
  }
  return 1;
}

/* Books an accepted step and moves to its end. */
static int accept(const freeair__cycle *c, const freeair__cycle_state *s, stepper *p, double t, double h,
                  double *y, freeair__cycle_sums *sums, int full, const freeair__cycle_card *card, int last,
                  freeair__cycle_effort *effort)
{
  double heat_slope[FREEAIR__CYLINDERS];
  double f0[FREEAIR__STATES];
  size_t bytes = sizeof(double) * 2 * (size_t)c->n_volumes;
  integrate_sums(c, &p->slopes, p->now, p->u[0], h, d1, 0, p->k, &p->k[0], full);
  integrate_sums(c, &p->slopes, p->next, p->u[1], h, d2, 1, p->k, &p->k[1], full);
  integrate_sums(c, &p->slopes, &p->stage, p->u[2], h, d3, 2, p->k, &p->k[2], full);
  integrate_sums(c, &p->slopes, &p->stage, p->u[3], h, d4, 3, p->k, &p->k[3], full);
  if (card != NULL) memcpy(f0, p->now->f, bytes);
  memcpy(heat_slope, p->slopes.heat_slope, sizeof heat_slope);
  effort->evaluations++;
  if (!freeair__cycle_slopes_at(c, s, t + h, p->x, p->next, &p->slopes))
    return freeair__cycle_slopes_at(c, s, t, y, p->now, &p->slopes) ? 0 : -1;
  add_sums(c, sums, p->now, p->next, h, p->k, full);
  for (int v = 0; v < c->n_cylinders; v++)
    sums->heat_slope[v] += 0.5 * h * (heat_slope[v] + p->slopes.heat_slope[v]);
  if (full) note_levels(c, sums, p->now, p->next, y, p->x, h);
  if (card != NULL) draw_card(c, s, card, t, h, last ? 1.0 : 0.0, y, f0, p->x, p->next->f);
  memcpy(y, p->x, bytes);
  freeair__cycle_rates *swap = p->now;
  p->now = p->next;
  p->next = swap;
  effort->steps++;
  return 1;
}

/* The same solution for every column of a row-major matrix. */
static void solve_columns(const double *w, int n, int columns, double x[FREEAIR__STATES][FREEAIR__COLUMNS])
{
  for (int i = 1; i < n; i++)
    for (int j = 0; j < i; j++) {
      double l = w[j * n + i];
      if (l == 0.0) continue;
      for (int q = 0; q < columns; q++) x[i][q] -= l * x[j][q];
    }
  for (int i = n - 1; i >= 0; i--) {
    for (int j = i + 1; j < n; j++) {
      double l = w[j * n + i];
      if (l == 0.0) continue;
      for (int q = 0; q < columns; q++) x[i][q] -= l * x[j][q];
    }
    for (int q = 0; q < columns; q++) x[i][q] *= w[i * n + i];
  }
}

/* The trapezoidal rule asks for it before the step and after. */
static void add_half_of_the_heat(const freeair__cycle *c, const stepper *p, double h, int columns,
                                 freeair__cycle_tangent *g)
{
  for (int v = 0; v < c->n_cylinders; v++) {
    const double *slope = p->slopes.heat[v];
    double *row = g->heat[v];
    int at = 2 * v;
    for (int q = 0; q < columns; q++)
      row[q] += 0.5 * h * (slope[0] * g->state[at][q] + slope[1] * g->state[at + 1][q]);
  }
}

/* Carries the tangent over a step of which w is the factored matrix, by a
 * damped approximation of first order: it serves Newton's method alone. */
static void carry_tangent(const freeair__cycle *c, const stepper *p, double h, freeair__cycle_tangent *g)
{
  int n = 2 * c->n_volumes;
  int columns = n + c->n_cylinders;
  double once[FREEAIR__STATES][FREEAIR__COLUMNS];
  double twice[FREEAIR__STATES][FREEAIR__COLUMNS];
  double over = 1.0 / (h * gamma_);
  for (int i = 0; i < n; i++)
    for (int q = 0; q < columns; q++) once[i][q] = over * g->state[i][q];
  solve_columns(p->w, n, columns, once);
  for (int i = 0; i < n; i++)
    for (int q = 0; q < columns; q++) twice[i][q] = over * once[i][q];
  /* warmer walls heat the gas */
  double lead = (1.0 - gamma_) / gamma_;
  double share = c->m.suction_ua_w_k / c->m.lp_cylinders / lead;
  for (int v = 0; v < c->n_cylinders; v++) {
    twice[2 * v + 1][n + v] -= p->slopes.heat_slope[v] / lead;
    if (c->cylinder[v].stage == 1) twice[2 * c->plenum + 1][n + v] += share;
  }
  solve_columns(p->w, n, columns, twice);
  double minus = (1.0 - 2.0 * gamma_) / gamma_;
  add_half_of_the_heat(c, p, h, columns, g);
  for (int v = 0; v < c->n_cylinders; v++) g->heat[v][n + v] += h * p->slopes.heat_slope[v];
  for (int i = 0; i < n; i++)
    for (int q = 0; q < columns; q++) g->state[i][q] = lead * twice[i][q] - minus * once[i][q];
  add_half_of_the_heat(c, p, h, columns, g);
}

static void start_tangent(const freeair__cycle *c, freeair__cycle_tangent *g)
{
  int n = 2 * c->n_volumes;
  for (int i = 0; i < n; i++)
    for (int q = 0; q < n + c->n_cylinders; q++) g->state[i][q] = i == q ? 1.0 : 0.0;
  for (int v = 0; v < c->n_cylinders; v++)
    for (int q = 0; q < n + c->n_cylinders; q++) g->heat[v][q] = 0.0;
}

int freeair__cycle_revolution(const freeair__cycle *c, const freeair__cycle_state *s, double tolerance,
                              freeair__cycle_mesh *mesh, double *y, freeair__cycle_sums *sums, int full,
                              const freeair__cycle_card *card, freeair__cycle_tangent *tangent,
                              freeair__cycle_effort *effort)
{
  enum { most_steps = 100000 };
  stepper p;
  double period = 2.0 * pi / s->omega;
  float given[FREEAIR__STEPS];
  int n_given = mesh->n;
  if (n_given > 0) memcpy(given, mesh->h, sizeof given[0] * (size_t)n_given);
  double bearable = n_given > 0 ? 8.0 : 1.0;
  memcpy(y, s->y, sizeof(double) * 2 * (size_t)c->n_volumes);
  if (!start(c, s, &p, sums, effort)) return 0;
  if (tangent != NULL) start_tangent(c, tangent);
  double h = period / 1000.0;
  double t = 0.0;
  int at = 0;
  double node = n_given > 0 ? (double)given[0] * period : period;
  mesh->n = 0;
  int may_grow = 1;
  for (int steps = 0; steps < most_steps; steps++) {
    int to_node = 0;
    if (n_given > 0 && may_grow) h = node - t;
    if (t + 1.0001 * h >= node) {
      h = node - t;
      to_node = 1;
    }
    int last = to_node && at >= n_given - 1;
    double error = take_step(c, s, &p, t, h, y, tolerance, effort);
    if (error >= 0.0 && error <= bearable) {
      if (tangent != NULL) carry_tangent(c, &p, h, tangent);
      int moved = accept(c, s, &p, t, h, y, sums, full, card, last, effort);
      if (moved < 0) return 0;
      if (moved > 0) {
        if (mesh->n < FREEAIR__STEPS) {
          mesh->h[mesh->n] = (float)(h / period);
          mesh->error[mesh->n] = (float)error;
        }
        mesh->n++;
        if (last) {
          if (mesh->n > FREEAIR__STEPS) mesh->n = 0;
          if (full) close_balances(c, s->y, y, sums);
          return 1;
        }
        if (to_node) {
          t = node;
          node = ++at == n_given - 1 ? period : node + (double)given[at] * period;
        } else {
          t += h;
        }
        double grow = error > 1e-8 ? 0.9 / sqrt(sqrt(error)) : 4.0;
        grow = fmin(fmax(grow, 0.2), may_grow ? 5.0 : 1.0);
        may_grow = 1;
        h = fmin(h * grow, period / 8.0);
        continue;
      }
      error = -1.0;
    }
    may_grow = 0;
    effort->rejected++;
    h *= error > 0.0 ? fmin(fmax(0.9 / sqrt(sqrt(error)), 0.1), 0.5) : 0.25;
    if (!(h > period * 1e-12)) return 0;
  }
  return 0;
}
