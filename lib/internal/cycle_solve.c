/* SPDX-License-Identifier: MIT */
/* The search for the state that repeats: Newton's method with derivatives from
 * coarse revolutions, the rest mixed after Anderson, and fallbacks. */
#include "internal/cycle.h"

#include "internal/check.h"
#include <freeair/status.h>

#include <string.h>

static const double pi = 3.14159265358979323846;

enum { UNKNOWNS = FREEAIR__STATES + FREEAIR__CYLINDERS + 1, DEPTH = 6 };

/* The unknowns in comparable units: masses and energies by the flow of a
 * revolution, so that a large volume cannot hide a drift; temperatures of the
 * walls and speed relative. */
static int pack(const freeair__cycle *c, const freeair__cycle_state *s, double *z)
{
  int n = 0;
  for (int v = 0; v < c->n_volumes; v++) {
    z[n++] = s->y[2 * v] / c->mass_scale;
    z[n++] = s->y[2 * v + 1] / (c->mass_scale * c->cv * 400.0);
  }
  for (int v = 0; v < c->n_cylinders; v++) z[n++] = s->wall[v] / 400.0;
  z[n++] = log(s->omega);
  return n;
}

static int unpack(const freeair__cycle *c, const double *z, freeair__cycle_state *s)
{
  int n = 0;
  for (int v = 0; v < c->n_volumes; v++) {
    double mass = z[n++] * c->mass_scale;
    double energy = z[n++] * (c->mass_scale * c->cv * 400.0);
    if (!(mass > 0.0 && energy > 0.0)) return 0;
    double t = energy / (mass * c->cv);
    if (!(t > 30.0 && t < 2e4)) return 0;
    s->y[2 * v] = mass;
    s->y[2 * v + 1] = energy;
  }
  for (int v = 0; v < c->n_cylinders; v++) {
    s->wall[v] = z[n++] * 400.0;
    if (!(s->wall[v] > 50.0 && s->wall[v] < 2e4)) return 0;
  }
  s->omega = exp(z[n++]);
  return s->omega > 1e-3 && s->omega < 1e5;
}

/* Least squares by modified Gram-Schmidt on the differences of residuals; the
 * oldest, nearly dependent ones drop out. */
static void mix(int n, int depth, double dr[DEPTH][UNKNOWNS], double dg[DEPTH][UNKNOWNS], const double *r,
                const double *g, double *z)
{
  double q[DEPTH][UNKNOWNS];
  double upper[DEPTH][DEPTH];
  int used[DEPTH];
  int m = 0;
  for (int i = 0; i < depth; i++) {
    double norm0 = 0.0;
    for (int a = 0; a < n; a++) {
      q[m][a] = dr[i][a];
      norm0 += dr[i][a] * dr[i][a];
    }
    for (int j = 0; j < m; j++) {
      double dot = 0.0;
      for (int a = 0; a < n; a++) dot += q[j][a] * q[m][a];
      upper[j][m] = dot;
      for (int a = 0; a < n; a++) q[m][a] -= dot * q[j][a];
    }
    double norm = 0.0;
    for (int a = 0; a < n; a++) norm += q[m][a] * q[m][a];
    if (!(norm > 1e-8 * norm0) || !(norm0 > 0.0)) continue;
    norm = sqrt(norm);
    upper[m][m] = norm;
    for (int a = 0; a < n; a++) q[m][a] /= norm;
    used[m++] = i;
  }
  double weight[DEPTH];
  for (int j = 0; j < m; j++) {
    double dot = 0.0;
    for (int a = 0; a < n; a++) dot += q[j][a] * r[a];
    weight[j] = dot;
  }
  for (int j = m - 1; j >= 0; j--) {
    for (int i = j + 1; i < m; i++) weight[j] -= upper[j][i] * weight[i];
    weight[j] /= upper[j][j];
  }
  for (int a = 0; a < n; a++) z[a] = g[a];
  for (int j = 0; j < m; j++)
    for (int a = 0; a < n; a++) z[a] -= weight[j] * dg[used[j]][a];
}

double freeair__cycle_friction(const freeair__cycle *c, int cylinder, double omega)
{
  return c->m.fmep_pa * c->cylinder[cylinder].swept * omega / (2.0 * pi);
}

double freeair__cycle_shaft(const freeair__cycle *c, const freeair__cycle_sums *sums, double omega)
{
  double power = 0.0;
  for (int v = 0; v < c->n_cylinders; v++)
    power += freeair__cycle_friction(c, v, omega) - sums->work[v] * omega / (2.0 * pi);
  return power;
}

static double motor_omega(const freeair__cycle *c, double shaft_w)
{
  double motor = c->m.motor_synchronous_rev_s * fmax(freeair__cycle_motor(c, shaft_w), 0.2);
  return 2.0 * pi * motor * c->m.pulley_ratio * (1.0 - c->m.belt_slip);
}

/* Temperature scale of the unknowns. */
static const double t_unit = 400.0;

static double unit_of(const freeair__cycle *c, int i)
{
  if (i >= 2 * c->n_volumes) return t_unit;
  return i % 2 == 0 ? c->mass_scale : c->mass_scale * c->cv * t_unit;
}

/* Factors the derivative of the residual, with row exchanges. */
static int factor_newton(const freeair__cycle *c, const freeair__cycle_tangent *g, const double *slope,
                         double period, freeair__cycle_work *work)
{
  int states = 2 * c->n_volumes;
  int n = states + c->n_cylinders;
  for (int i = 0; i < n; i++)
    for (int j = 0; j < n; j++) {
      double by = i < states ? g->state[i][j] : g->heat[i - states][j] / (period * slope[i - states]);
      double unit = i == j ? 1.0 : 0.0;
      work->lu[i][j] = (i < states ? 1.00001 * unit : 0.0) - by * unit_of(c, j) / unit_of(c, i);
      if (i >= states && i == j) {
        int v = i - states;
        double to_plenum = c->cylinder[v].stage == 1 ? c->m.suction_ua_w_k / c->m.lp_cylinders : 0.0;
        work->lu[i][j] += (c->cylinder[v].wall_ua + to_plenum) / slope[v];
      }
    }
  for (int k = 0; k < n; k++) {
    int best = k;
    for (int i = k + 1; i < n; i++)
      if (fabs(work->lu[i][k]) > fabs(work->lu[best][k])) best = i;
    work->order[k] = best;
    if (best != k)
      for (int j = 0; j < n; j++) {
        double swap = work->lu[k][j];
        work->lu[k][j] = work->lu[best][j];
        work->lu[best][j] = swap;
      }
    /* a line that nothing leaves is content with any mass */
    if (!(fabs(work->lu[k][k]) > 1e-6)) work->lu[k][k] = work->lu[k][k] < 0.0 ? -1e-6 : 1e-6;
    double over = 1.0 / work->lu[k][k];
    for (int i = k + 1; i < n; i++) {
      double l = work->lu[i][k] * over;
      work->lu[i][k] = l;
      for (int j = k + 1; j < n; j++) work->lu[i][j] -= l * work->lu[k][j];
    }
  }
  return 1;
}

static void newton_step(const freeair__cycle *c, const freeair__cycle_work *work, const double *r, double *x)
{
  int n = 2 * c->n_volumes + c->n_cylinders;
  for (int i = 0; i < n; i++) x[i] = r[i];
  for (int k = 0; k < n; k++) {
    double swap = x[k];
    x[k] = x[work->order[k]];
    x[work->order[k]] = swap;
  }
  for (int i = 1; i < n; i++)
    for (int j = 0; j < i; j++) x[i] -= work->lu[i][j] * x[j];
  for (int i = n - 1; i >= 0; i--) {
    for (int j = i + 1; j < n; j++) x[i] -= work->lu[i][j] * x[j];
    x[i] /= work->lu[i][i];
  }
  x[n] = r[n]; /* speed */
}

/* One application of the map: a revolution, then walls and speed as the
 * balances ask for. The walls move by the heat they are short of, over the heat
 * transfer of the revolution, which tames the bare update (its gain is below
 * -1). With a tangent, the derivative is factored too. */
static int apply(const freeair__cycle *c, const freeair__cycle_state *s, double tolerance,
                 freeair__cycle_work *work, int with_tangent, freeair__cycle_sums *sums, int full,
                 freeair__cycle_state *image, freeair__cycle_effort *effort)
{
  freeair__cycle_tangent tangent;
  *image = *s;
  if (!freeair__cycle_revolution(c, s, tolerance, &work->mesh, image->y, sums, full, NULL,
                                 with_tangent ? &tangent : NULL, effort))
    return 0;
  effort->revolutions++;
  double period = 2.0 * pi / s->omega;
  double suction = c->m.suction_ua_w_k / c->m.lp_cylinders;
  double walls = 0.0;
  for (int v = 0; v < c->m.lp_cylinders; v++) walls += suction * s->wall[v];
  double slope[FREEAIR__CYLINDERS];
  for (int v = 0; v < c->n_cylinders; v++) {
    double to_plenum = c->cylinder[v].stage == 1 ? suction : 0.0;
    double heat = sums->heat[v] / period + 0.5 * freeair__cycle_friction(c, v, s->omega) -
                  c->cylinder[v].wall_ua * (s->wall[v] - c->site.ambient_k);
    if (to_plenum > 0.0)
      heat -= to_plenum * (s->wall[v] - (sums->heat[c->plenum] / period + walls) / c->m.suction_ua_w_k);
    slope[v] = c->cylinder[v].wall_ua + to_plenum - sums->heat_slope[v] / period;
    image->wall[v] = s->wall[v] + heat / slope[v];
  }
  image->omega = motor_omega(c, freeair__cycle_shaft(c, sums, s->omega));
  if (with_tangent) work->factored = factor_newton(c, &tangent, slope, period, work);
  return 1;
}

void freeair__cycle_fill(const freeair__cycle *c, double p, double volume, double t, double *y)
{
  y[0] = p * volume / (c->gas_r * t);
  y[1] = c->gas.warm ? y[0] * c->gas_r * freeair__gas_energy(&c->gas, t) : p * volume / (c->k - 1.0);
}

static void guess(const freeair__cycle *c, freeair__cycle_state *s)
{
  double pa = c->site.barometric_pa;
  double ta = c->site.ambient_k;
  double interstage = c->receiver_p;
  if (c->intercooler >= 0) {
    double lp = c->m.lp_cylinders * c->cylinder[0].swept;
    double hp = c->m.hp_cylinders * c->cylinder[c->m.lp_cylinders].swept;
    interstage = pa * lp / hp;
    for (int i = 0; i < 8; i++) {
      double take = 1.0 - c->m.lp_clearance * (pow(fmax(interstage / pa, 1.0), 1.0 / c->k) - 1.0);
      double give = 1.0 - c->m.hp_clearance * (pow(fmax(c->receiver_p / interstage, 1.0), 1.0 / c->k) - 1.0);
      interstage = sqrt(interstage * pa * lp * fmax(take, 0.1) / (hp * fmax(give, 0.2)));
    }
    interstage = fmin(fmax(interstage, pa), fmin(1.05 * c->m.relief_set_pa, fmax(c->receiver_p, pa)));
  }
  for (int v = c->n_cylinders; v < c->n_volumes; v++) {
    double p = v == c->plenum ? 0.995 * pa : v == c->line ? fmax(c->receiver_p, 1.01 * pa) : interstage;
    double t = ta + (v == c->plenum ? 5.0 : v == c->line ? 100.0 : 25.0);
    freeair__cycle_fill(c, p, c->volume[v], t, &s->y[2 * v]);
  }
  for (int v = 0; v < c->n_cylinders; v++) {
    const freeair__cylinder *cy = &c->cylinder[v];
    int hp = cy->stage == 2;
    double p1 = hp ? interstage : 0.98 * pa;
    double t1 = ta + (hp ? 30.0 : 15.0);
    double p2 = fmax(hp || c->intercooler < 0 ? c->receiver_p : interstage, p1);
    double v0;
    double dv;
    double ddv;
    freeair__cycle_cylinder_volume(c, v, 0.0, 1.0, &v0, &dv, &ddv);
    double total = cy->clearance + cy->swept;
    double p = p1;
    double t = t1;
    if (dv < 0.0 || v0 < cy->clearance * 1.0001) {
      p = fmin(p1 * pow(total / v0, c->k), p2);
      t = t1 * pow(p / p1, (c->k - 1.0) / c->k);
    }
    freeair__cycle_fill(c, p, v0, t, &s->y[2 * v]);
    s->wall[v] = ta + (hp ? 70.0 : 60.0);
  }
  s->omega = motor_omega(c, 0.8 * c->m.motor_rated_w);
  s->known = 1;
}

/* Walls that cannot lose their heat below 3000 K, where iron boils, are those of
 * an impossible description. */
static int walls_stand(const freeair__cycle *c, const freeair__cycle_state *s)
{
  for (int v = 0; v < c->n_cylinders; v++)
    if (!(s->wall[v] < 3000.0)) return 0;
  return 1;
}

/* Shortens a step from z to trial so that no mass, energy or temperature moves
 * by more than a sane factor; returns 0 when even a short step fails. */
static int limit_step(const freeair__cycle *c, int n, const double *z, double *trial, freeair__cycle_state *s)
{
  int states = 2 * c->n_volumes;
  double share = 1.0;
  for (int i = 0; i < n; i++) {
    double d = trial[i] - z[i];
    if (!(fabs(d) < 1e100)) return 0;
    double most = i < states ? (d < 0.0 ? 0.6 : 1.5) * z[i] : i < n - 1 ? 0.2 : 0.1;
    if (fabs(d) * share > most) share = most / fabs(d);
  }
  for (int attempt = 0; attempt < 6; attempt++) {
    double x[UNKNOWNS];
    for (int i = 0; i < n; i++) x[i] = z[i] + share * (trial[i] - z[i]);
    if (unpack(c, x, s)) {
      memcpy(trial, x, sizeof x);
      return 1;
    }
    share *= 0.4;
  }
  return 0;
}

/* The last residuals and images, for the mixing of Anderson. */
typedef struct history {
  double r[UNKNOWNS];
  double g[UNKNOWNS];
  double dr[DEPTH][UNKNOWNS];
  double dg[DEPTH][UNKNOWNS];
  int depth;
  int oldest;
  int known;
} history;

static void remember(history *a, int n, const double *r, const double *g)
{
  if (a->known) {
    int slot = a->depth < DEPTH ? a->depth : a->oldest;
    for (int i = 0; i < n; i++) {
      a->dr[slot][i] = r[i] - a->r[i];
      a->dg[slot][i] = g[i] - a->g[i];
    }
    if (a->depth < DEPTH) a->depth++;
    else a->oldest = (a->oldest + 1) % DEPTH;
  }
  memcpy(a->r, r, sizeof a->r);
  memcpy(a->g, g, sizeof a->g);
  a->known = 1;
}

static void forget(history *a)
{
  a->depth = a->oldest = a->known = 0;
}

int32_t freeair__cycle_solve(const freeair__cycle *c, double accuracy, freeair__cycle_state *s,
                             freeair__cycle_work *work, freeair__cycle_sums *sums, freeair__cycle_effort *effort)
{
  enum { most_revolutions = 1000, turns = 200, patience = 15, first_tangents = 5, fresh_tangents = 10 };
  enum { careful_after = 30, most_retreats = 8 };
  memset(effort, 0, sizeof *effort);
  int cold = !s->known;
  if (cold) {
    guess(c, s);
    work->mesh.n = 0;
    work->factored = 0;
  }
  double finest = 0.1 * accuracy;    /* of a step */
  double target = 0.05 * accuracy;   /* of the residual */
  double coarse = fmax(finest, 5e-3);
  /* the solution of a similar machine: stay on its steps */
  int near = !cold && work->factored && work->mesh.n > 0 && work->tolerance <= 1.001 * finest;
  double tolerance = near ? finest : coarse;
  if (!near && work->mesh.n > 0) freeair__cycle_remesh(&work->mesh, work->tolerance / tolerance);
  int levelled = near ? 2 : 0; /* revolutions at this tolerance */
  int tangents = 0;
  int waiting = 0; /* revolutions since the residual last fell by half */
  int fresh = 0;   /* tangents still to be taken afresh, once mixing has stalled */
  double best = INFINITY;
  double norm_before = INFINITY;
  int retreats = 0;
  double norm_kept = INFINITY; /* at z_kept, the last state that was no worse than where it came from */
  double z_kept[UNKNOWNS] = {0.0};
  double z[UNKNOWNS] = {0.0};
  double g[UNKNOWNS] = {0.0};
  double r[UNKNOWNS] = {0.0};
  history past;
  forget(&past);
  int n = pack(c, s, z);
  freeair__cycle_state image;
  for (int revolution = 0; revolution < most_revolutions; revolution++) {
    /* in turns: Newton's way, and what the machine itself would do */
    int plain = revolution / turns % 2;
    if (revolution > 0 && revolution % turns == 0) {
      fresh = plain ? 0 : fresh_tangents;
      waiting = 0;
      retreats = 0;
      norm_kept = INFINITY;
      forget(&past);
      finest = 0.1 * accuracy;
      tolerance = plain ? coarse : finest;
      levelled = 0;
      best = INFINITY;
      freeair__cycle_remesh(&work->mesh, work->tolerance / tolerance);
    }
    int full = tolerance <= finest && levelled > 0;
    int with_tangent = !plain && (!work->factored || fresh > 0 ||
                       (norm_before > 0.02 && tolerance > finest && tangents < first_tangents));
    if (!apply(c, s, tolerance, work, with_tangent, sums, full, &image, effort)) {
      if (tolerance <= 1e-8) return FREEAIR_ERR_NO_CONVERGENCE;
      tolerance *= 0.1;
      finest = fmin(finest, tolerance);
      work->mesh.n = 0;
      continue;
    }
    if (plain && !walls_stand(c, s)) return FREEAIR_ERR_NO_SOLUTION;
    pack(c, &image, g);
    double norm = 0.0;
    double bare[UNKNOWNS];
    for (int i = 0; i < n; i++) {
      bare[i] = g[i] - z[i];
      norm = fmax(norm, fabs(bare[i]));
    }
    effort->residual = norm;
    work->tolerance = tolerance;
    if (norm <= target && full) return walls_stand(c, s) ? FREEAIR_OK : FREEAIR_ERR_NO_SOLUTION;
    if (near && revolution == 0 && norm > 0.1) {
      /* not so similar after all */
      tolerance = coarse;
      freeair__cycle_remesh(&work->mesh, work->tolerance / tolerance);
      levelled = 0;
      norm_before = norm;
      continue;
    }
    if (revolution >= careful_after && !plain && norm > 3.0 * norm_kept && retreats < most_retreats) {
      /* across the bend of a valve that opens: go back most of the way */
      retreats++;
      for (int i = 0; i < n; i++) z[i] = z_kept[i] + 0.3 * (z[i] - z_kept[i]);
      if (!unpack(c, z, s)) return FREEAIR_ERR_NO_SOLUTION;
      forget(&past);
      continue;
    }
    retreats = 0;
    norm_kept = norm;
    memcpy(z_kept, z, sizeof z_kept);
    if (work->factored && !plain) {
      newton_step(c, work, bare, r);
      for (int i = 0; i < n; i++) g[i] = z[i] + r[i];
    } else {
      memcpy(r, bare, sizeof r);
      for (int i = 2 * c->n_volumes; plain && i < n; i++) g[i] = z[i] + 0.3 * r[i];
    }
    int tightened = 0;
    waiting++;
    if (norm < 0.5 * best) {
      best = norm;
      waiting = 0;
    }
    if (fresh > 0) {
      if (--fresh == 0) {
        /* errors of the steps may be what keeps it from repeating */
        waiting = 0;
        tightened = finest > 1e-6;
        if (tightened) finest *= 0.1;
      }
    } else if (waiting >= patience && !plain) {
      fresh = fresh_tangents;
    }
    if (with_tangent) tangents++;
    if (with_tangent || plain) forget(&past);
    remember(&past, n, r, g);
    double mixed[UNKNOWNS];
    mix(n, past.depth, past.dr, past.dg, r, g, mixed);
    freeair__cycle_state trial = *s;
    if (!limit_step(c, n, z, mixed, &trial)) {
      forget(&past);
      pack(c, &image, mixed);
      if (!unpack(c, mixed, &trial)) return FREEAIR_ERR_NO_SOLUTION;
    }
    memcpy(z, mixed, sizeof z);
    *s = trial;
    norm_before = norm;
    double before = tolerance;
    levelled++;
    if (tolerance > finest && (norm < 2.0 * tolerance || waiting >= 6 || tightened)) {
      tolerance = finest;
      levelled = 0;
      best = INFINITY;
    }
    if (levelled < 2) {
      freeair__cycle_remesh(&work->mesh, before / tolerance);
      past.known = 0;
    }
  }
  return FREEAIR_ERR_NO_CONVERGENCE;
}
