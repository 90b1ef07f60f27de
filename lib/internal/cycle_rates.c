/* SPDX-License-Identifier: MIT */
/* Physics of the crank-angle model: orifices, valves, wall heat. */
#include "internal/cycle.h"

#include "internal/check.h"

#include <string.h>

static const double pi = 3.14159265358979323846;
void freeair__cycle_cylinder_volume(const freeair__cycle *c, int i, double sin_a, double cos_a, double *v,
                                    double *dv, double *ddv)
{
  const freeair__cylinder *y = &c->cylinder[i];
  double lambda = c->m.rod_ratio;
  double s = sin_a * y->lag_cos - cos_a * y->lag_sin;
  double q = cos_a * y->lag_cos + sin_a * y->lag_sin;
  double root = sqrt(1.0 - lambda * lambda * s * s);
  double over = 1.0 / root;
  double x = 1.0 - q + lambda * s * s / (1.0 + root);
  double dx = s + lambda * s * q * over;
  double ddx = q + lambda * over * (q * q - s * s + lambda * lambda * s * s * q * q * over * over);
  *v = y->clearance + y->area * y->radius * x;
  *dv = y->area * y->radius * dx;
  *ddv = y->area * y->radius * ddx;
}

/* Area of a path and its derivative by the pressure that drives it. */
static inline double path_area(const freeair__link *l, double p_a, double dp, double *slope)
{
  double x;
  *slope = 0.0;
  if (l->law == FREEAIR__ORIFICE) return l->area;
  x = l->law == FREEAIR__VALVE ? dp * l->lift : (p_a - l->set) * l->lift;
  double area = l->leak;
  if (x >= 1.0) {
    area = l->area;
  } else if (x > 0.0) {
    area += (l->area - l->leak) * x * x * (3.0 - 2.0 * x);
    *slope = (l->area - l->leak) * 6.0 * x * (1.0 - x) * l->lift;
  }
  if (l->series > 0.0 && area > 0.0) {
    double share = 1.0 / (1.0 + area * area * l->series);
    double root = sqrt(share);
    area *= root;
    *slope *= root * share;
  }
  return area;
}

static inline double nozzle(const freeair__cycle *c, double x, double *slope)
{
  if (x >= c->nozzle_critical) {
    *slope = 0.0;
    return c->nozzle_choked;
  }
  if (x < FREEAIR__SMOOTH_BELOW) {
    *slope = c->nozzle_linear + 2.0 * c->nozzle_quadratic * x;
    return x * (c->nozzle_linear + c->nozzle_quadratic * x);
  }
  double scale = 2.0 / c->nozzle_critical;
  double s = x * scale - 1.0;
  double g = c->nozzle[FREEAIR__NOZZLE_TERMS - 1];
  double dg = 0.0;
  for (int i = FREEAIR__NOZZLE_TERMS - 2; i >= 0; i--) {
    dg = dg * s + g;
    g = g * s + c->nozzle[i];
  }
  double root = sqrt(x);
  *slope = 0.5 * g / root + root * dg * scale;
  return root * g;
}

static inline double nozzle_value(const freeair__cycle *c, double x)
{
  if (x >= c->nozzle_critical) return c->nozzle_choked;
  if (x < FREEAIR__SMOOTH_BELOW) return x * (c->nozzle_linear + c->nozzle_quadratic * x);
  double s = x * (2.0 / c->nozzle_critical) - 1.0;
  double g = c->nozzle[FREEAIR__NOZZLE_TERMS - 1];
  for (int i = FREEAIR__NOZZLE_TERMS - 2; i >= 0; i--) g = g * s + c->nozzle[i];
  return sqrt(x) * g;
}

/* Viscosity and conductivity of air by Sutherland's law; root = sqrt(t). */
static inline double viscosity(double t, double root)
{
  return 1.458e-6 * t * root / (t + 110.4);
}

static inline double conductivity(double t, double root)
{
  return 2.4947e-3 * t * root / (t + 194.0);
}

/* What the parts of an evaluation share. */
typedef struct instant {
  const freeair__cycle *c;
  const freeair__cycle_state *s;
  const double *y;
  freeair__cycle_rates *r;
  freeair__cycle_slopes *d; /* null when only rates are wanted */
  double volume[FREEAIR__CYLINDERS];
  double dv[FREEAIR__CYLINDERS]; /* by time */
  double ddv[FREEAIR__CYLINDERS];
  double over_v[FREEAIR__VOLUMES];
  double root_rt[FREEAIR__NODES]; /* 1/sqrt(R T) */
  double p_time[FREEAIR__NODES];  /* partial derivative of the pressure by time */
} instant;

/* Pressures and temperatures; returns 0 when a state is not physical. */
static int look_at_volumes(instant *q, double time)
{
  const freeair__cycle *c = q->c;
  double omega = q->s->omega;
  double sin_a = sin(omega * time);
  double cos_a = cos(omega * time);
  int nv = c->n_volumes;
  for (int v = 0; v < nv; v++) {
    double mass = q->y[2 * v];
    double energy = q->y[2 * v + 1];
    if (!(mass > 0.0 && energy > 0.0 && mass < 1e300 && energy < 1e300)) return 0;
    if (v < c->n_cylinders) {
      freeair__cycle_cylinder_volume(c, v, sin_a, cos_a, &q->volume[v], &q->dv[v], &q->ddv[v]);
      q->dv[v] *= omega;
      q->ddv[v] *= omega * omega;
      q->over_v[v] = 1.0 / q->volume[v];
    } else {
      q->over_v[v] = 1.0 / c->volume[v];
    }
    double p;
    if (c->gas.warm) {
      double slope;
      double t = freeair__gas_temperature(&c->gas, energy / (mass * c->gas_r), &slope);
      p = mass * c->gas_r * t * q->over_v[v];
      q->r->t[v] = t;
      q->r->h[v] = energy / mass + c->gas_r * t;
      q->r->over_cv[v] = slope;
      q->r->bend[v] = energy * slope / (mass * c->gas_r * t);
    } else {
      p = (c->k - 1.0) * energy * q->over_v[v];
      q->r->t[v] = energy / (mass * c->cv);
      q->r->h[v] = c->cp * q->r->t[v];
      q->r->over_cv[v] = c->k - 1.0;
      q->r->bend[v] = 1.0;
    }
    q->r->p[v] = p;
    q->p_time[v] = v < c->n_cylinders ? -p * q->dv[v] * q->over_v[v] : 0.0;
    q->r->f[2 * v] = q->r->f[2 * v + 1] = 0.0;
  }
  for (int v = nv; v < nv + 3; v++) {
    q->r->p[v] = c->node_p[v];
    q->r->t[v] = c->node_t[v];
    q->r->h[v] = c->node_h[v];
    q->p_time[v] = 0.0;
  }
  for (int v = 0; v < nv + 3; v++) q->root_rt[v] = 1.0 / sqrt(c->gas_r * q->r->t[v]);
  return 1;
}

/* Enters the flow of a link and its enthalpy into the rates of one end, and
 * their derivatives into the columns of both; sign 1 where the flow arrives. */
static void enter(instant *q, int i, int end, int other, double sign)
{
  int n = 2 * q->c->n_volumes;
  freeair__cycle_slopes *d = q->d;
  q->r->f[2 * end] += sign * q->r->mass[i];
  q->r->f[2 * end + 1] += sign * q->r->enthalpy[i];
  if (d == NULL) return;
  const double *gm = d->mass[i];
  const double *gh = d->enthalpy[i];
  int own = end == q->c->link[i].a ? 0 : 2;
  double *column = d->j + 2 * end * n + 2 * end;
  column[0] += sign * gm[own];
  column[1] += sign * gh[own];
  column[n] += sign * gm[own + 1];
  column[n + 1] += sign * gh[own + 1];
  d->ft[2 * end] += sign * gm[4];
  d->ft[2 * end + 1] += sign * gh[4];
  if (2 * other >= n) return;
  int far = 2 - own;
  column = d->j + 2 * other * n + 2 * end;
  column[0] += sign * gm[far];
  column[1] += sign * gh[far];
  column[n] += sign * gm[far + 1];
  column[n + 1] += sign * gh[far + 1];
}

static void look_at_link(instant *q, int i)
{
  const freeair__cycle *c = q->c;
  const freeair__link *l = &c->link[i];
  freeair__cycle_rates *r = q->r;
  freeair__cycle_slopes *d = q->d;
  int a = l->a;
  int b = l->b;
  double pa = r->p[a];
  double pb = r->p[b];
  double area_slope;
  double area = path_area(l, pa, pa - pb, &area_slope);
  if (area <= 0.0) {
    r->mass[i] = r->enthalpy[i] = 0.0;
    if (d == NULL) return;
    memset(d->mass[i], 0, sizeof d->mass[i]);
    memset(d->enthalpy[i], 0, sizeof d->enthalpy[i]);
    return;
  }
  int forward = pa >= pb;
  int up = forward ? a : b;
  double pu = forward ? pa : pb;
  double pd = forward ? pb : pa;
  double sign = forward ? 1.0 : -1.0;
  double x = (pu - pd) / pu;
  double slope = 0.0;
  double psi = d != NULL ? nozzle(c, x, &slope) : nozzle_value(c, x);
  double by_area = sign * pu * q->root_rt[up] * psi;
  double flow = area * by_area;
  double h = r->h[up];
  r->mass[i] = flow;
  r->enthalpy[i] = flow * h;
  if (d != NULL) {
    double conductance = sign * area * q->root_rt[up];
    double by_pu = conductance * (psi + slope * pd / pu);
    double by_pd = -conductance * slope;
    double by_pa = forward ? by_pu : by_pd;
    double by_pb = forward ? by_pd : by_pu;
    by_pa += area_slope * by_area;
    if (l->law == FREEAIR__VALVE) by_pb -= area_slope * by_area;
    double *gm = d->mass[i];
    double *gh = d->enthalpy[i];
    gm[0] = gm[2] = 0.0;
    gm[1] = a < c->n_volumes ? by_pa * r->over_cv[a] * q->over_v[a] : 0.0;
    gm[3] = b < c->n_volumes ? by_pb * r->over_cv[b] * q->over_v[b] : 0.0;
    if (c->gas.warm) {
      if (a < c->n_volumes) gm[0] = by_pa * pa * (1.0 - r->bend[a]) / q->y[2 * a];
      if (b < c->n_volumes) gm[2] = by_pb * pb * (1.0 - r->bend[b]) / q->y[2 * b];
    }
    gm[4] = by_pa * q->p_time[a] + by_pb * q->p_time[b];
    int at = forward ? 0 : 2;
    double over_m = 0.0; /* log derivatives of the upstream temperature */
    double over_u = 0.0;
    if (up < c->n_volumes) {
      over_m = r->bend[up] / q->y[2 * up];
      over_u = r->bend[up] / q->y[2 * up + 1];
      gm[at] += 0.5 * flow * over_m;
      gm[at + 1] -= 0.5 * flow * over_u;
    }
    for (int s = 0; s < 5; s++) gh[s] = h * gm[s];
    /* cp T; h itself when constant */
    double cpt = c->gas.warm && up < c->n_volumes ? (1.0 / r->over_cv[up] + 1.0) * c->gas_r * r->t[up] : h;
    gh[at] -= flow * cpt * over_m;
    gh[at + 1] += flow * cpt * over_u;
  }
  if (a < c->n_volumes) enter(q, i, a, b, -1.0);
  if (b < c->n_volumes) enter(q, i, b, a, 1.0);
}

static void look_at_cylinder(instant *q, int v)
{
  const freeair__cycle *c = q->c;
  const freeair__cylinder *cy = &c->cylinder[v];
  freeair__cycle_rates *r = q->r;
  freeair__cycle_slopes *d = q->d;
  double exponent = c->m.heat_exponent;
  double mass = q->y[2 * v];
  double energy = q->y[2 * v + 1];
  double t = r->t[v];
  double over_v = q->over_v[v];
  double root_t = sqrt(t);
  double speed = 2.0 * cy->radius * q->s->omega / pi; /* mean piston speed: 2 stroke times rev/s */
  double reynolds = mass * over_v * speed * cy->bore / viscosity(t, root_t);
  double h = c->m.heat_coefficient * conductivity(t, root_t) / cy->bore * pow(reynolds, exponent);
  double ha = h * (2.0 * cy->area + 4.0 * q->volume[v] / cy->bore);
  double over_wall = t - q->s->wall[v];
  double heat = ha * over_wall;
  r->heat[v] = heat;
  r->work[v] = r->p[v] * q->dv[v];
  r->f[2 * v + 1] -= heat + r->work[v];
  if (d == NULL) return;
  /* by temperature: h is proportional to conductivity times viscosity^-b */
  double by_log_t = 1.5 - t / (t + 194.0) - exponent * (1.5 - t / (t + 110.4));
  double by_t = ha + heat * by_log_t / t;
  d->heat[v][0] = (heat * exponent - by_t * t * r->bend[v]) / mass;
  d->heat[v][1] = by_t * t * r->bend[v] / energy;
  d->heat[v][2] = q->dv[v] * (h * over_wall * 4.0 / cy->bore - heat * exponent * over_v);
  d->work[v][0] = c->gas.warm ? r->p[v] * (1.0 - r->bend[v]) / mass * q->dv[v] : 0.0;
  d->work[v][1] = r->over_cv[v] * over_v * q->dv[v];
  d->work[v][2] = q->p_time[v] * q->dv[v] + r->p[v] * q->ddv[v];
  d->heat_slope[v] = -ha;
  int n = 2 * c->n_volumes;
  double *column = d->j + 2 * v * n + 2 * v + 1;
  column[0] -= d->heat[v][0] + d->work[v][0];
  column[n] -= d->heat[v][1] + d->work[v][1];
  d->ft[2 * v + 1] -= d->heat[v][2] + d->work[v][2];
}

/* Heat of plenum, intercooler and line. */
static void look_at_vessel(instant *q, int v)
{
  const freeair__cycle *c = q->c;
  freeair__cycle_slopes *d = q->d;
  double ua = c->ua[v];
  double sink = ua * c->site.ambient_k;
  if (v == c->plenum) {
    ua = c->m.suction_ua_w_k;
    sink = 0.0;
    for (int i = 0; i < c->m.lp_cylinders; i++) sink += ua / c->m.lp_cylinders * q->s->wall[i];
  }
  double lost = ua * q->r->t[v];
  q->r->heat[v] = lost - sink;
  q->r->f[2 * v + 1] -= q->r->heat[v];
  if (d == NULL) return;
  d->heat[v][0] = -lost * q->r->bend[v] / q->y[2 * v];
  d->heat[v][1] = lost * q->r->bend[v] / q->y[2 * v + 1];
  d->heat[v][2] = 0.0;
  int n = 2 * c->n_volumes;
  double *column = d->j + 2 * v * n + 2 * v + 1;
  column[0] -= d->heat[v][0];
  column[n] -= d->heat[v][1];
}

static int evaluate(const freeair__cycle *c, const freeair__cycle_state *s, double time, const double *y,
                    freeair__cycle_rates *r, freeair__cycle_slopes *d)
{
  instant q;
  q.c = c;
  q.s = s;
  q.y = y;
  q.r = r;
  q.d = d;
  if (!look_at_volumes(&q, time)) return 0;
  if (d != NULL) {
    size_t n = 2 * (size_t)c->n_volumes;
    memset(d->j, 0, sizeof(double) * n * n);
    memset(d->ft, 0, sizeof(double) * n);
  }
  for (int i = 0; i < c->n_links; i++) look_at_link(&q, i);
  for (int v = 0; v < c->n_cylinders; v++) look_at_cylinder(&q, v);
  for (int v = c->n_cylinders; v < c->n_volumes; v++) look_at_vessel(&q, v);
  return 1;
}

int freeair__cycle_rates_at(const freeair__cycle *c, const freeair__cycle_state *s, double time, const double *y,
                            freeair__cycle_rates *r)
{
  return evaluate(c, s, time, y, r, NULL);
}

int freeair__cycle_slopes_at(const freeair__cycle *c, const freeair__cycle_state *s, double time,
                             const double *y, freeair__cycle_rates *r, freeair__cycle_slopes *d)
{
  return evaluate(c, s, time, y, r, d);
}

double freeair__cycle_motor(const freeair__cycle *c, double shaft_w)
{
  const freeair_machine *m = &c->m;
  double volts = m->motor_rated_v / c->site.supply_v;
  double load = shaft_w / (m->belt_efficiency * m->motor_rated_w);
  double slip = m->motor_rated_slip * load * volts * volts / m->motor_torque_factor;
  return 1.0 - slip;
}
