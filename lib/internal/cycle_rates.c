/* SPDX-License-Identifier: MIT */
/* Physics of the crank-angle model: volumes, orifices, valves, wall heat. */
#include "internal/cycle.h"

#include "internal/check.h"
#include "internal/machine.h"

#include <string.h>

static const double pi = 3.14159265358979323846;
/* Below this relative pressure difference the orifice law is continued by a
 * quadratic with equal value and slope. */
static const double smooth_below = 1e-3;

/* Nozzle function psi = sqrt(2k/(k-1)) (r/y) sqrt(1 - y), y = r^((k-1)/k), over
 * sqrt(x), x = 1 - r: smooth down to x = 0. */
static double nozzle_factor(double k, double x)
{
  double beta = (k - 1.0) / k;
  double log_r = log1p(-x);
  double one_minus_y = -expm1(beta * log_r);
  double over_x = x > 0.0 ? one_minus_y / x : beta;
  return sqrt(2.0 / beta * over_x) * exp(log_r / k);
}

/* Interpolates the factor at Chebyshev points and keeps it as a power series in
 * s in [-1,1]; good to 1e-10 for k in [1.05,1.7]. */
static void build_nozzle(freeair__cycle *c)
{
  enum { n = FREEAIR__NOZZLE_TERMS };
  double k = c->k;
  c->nozzle_critical = 1.0 - exp(k / (k - 1.0) * log(2.0 / (k + 1.0)));
  double chebyshev[n];
  double value[n];
  for (int i = 0; i < n; i++) {
    double s = cos(pi * (i + 0.5) / n);
    value[i] = nozzle_factor(k, 0.5 * c->nozzle_critical * (1.0 + s));
  }
  for (int j = 0; j < n; j++) {
    double sum = 0.0;
    for (int i = 0; i < n; i++) sum += value[i] * cos(pi * j * (i + 0.5) / n);
    chebyshev[j] = sum * (j == 0 ? 1.0 : 2.0) / n;
  }
  double before[n] = {1.0};
  double now[n] = {0.0, 1.0};
  for (int i = 0; i < n; i++) c->nozzle[i] = chebyshev[0] * before[i] + chebyshev[1] * now[i];
  for (int j = 2; j < n; j++) {
    double next[n];
    for (int i = 0; i < n; i++) next[i] = (i > 0 ? 2.0 * now[i - 1] : 0.0) - before[i];
    for (int i = 0; i < n; i++) {
      c->nozzle[i] += chebyshev[j] * next[i];
      before[i] = now[i];
      now[i] = next[i];
    }
  }
  c->nozzle_choked = nozzle_factor(k, c->nozzle_critical) * sqrt(c->nozzle_critical);
  double psi = nozzle_factor(k, smooth_below) * sqrt(smooth_below);
  double h = 1e-3 * smooth_below;
  double slope = (nozzle_factor(k, smooth_below + h) * sqrt(smooth_below + h) -
                  nozzle_factor(k, smooth_below - h) * sqrt(smooth_below - h)) /
                 (2.0 * h);
  c->nozzle_linear = 2.0 * psi / smooth_below - slope;
  c->nozzle_quadratic = (slope - psi / smooth_below) / smooth_below;
}

static int add_link(freeair__cycle *c, int a, int b, int law, double area, double leak, double lift)
{
  freeair__link *l = &c->link[c->n_links];
  l->a = a;
  l->b = b;
  l->law = law;
  l->area = area;
  l->leak = leak;
  l->lift = 1.0 / lift;
  l->set = 0.0;
  l->series = 0.0;
  return c->n_links++;
}

static void add_cylinder(freeair__cycle *c, int stage, int number)
{
  const freeair_machine *m = &c->m;
  int i = c->n_cylinders++;
  freeair__cylinder *y = &c->cylinder[i];
  int hp = stage == 2;
  double stroke = hp ? m->hp_stroke_m : m->lp_stroke_m;
  y->bore = hp ? m->hp_bore_m : m->lp_bore_m;
  y->area = 0.25 * pi * y->bore * y->bore;
  y->radius = 0.5 * stroke;
  y->swept = y->area * stroke;
  y->clearance = (hp ? m->hp_clearance : m->lp_clearance) * y->swept;
  y->lag = hp ? m->phase_rad + number * m->hp_spread_rad : number * m->lp_spread_rad;
  y->lag_cos = cos(y->lag);
  y->lag_sin = sin(y->lag);
  y->wall_ua = hp ? m->hp_wall_ua_w_k : m->lp_wall_ua_w_k;
  y->stage = stage;
}

static void add_cylinder_links(freeair__cycle *c, int i, int number)
{
  const freeair_machine *m = &c->m;
  freeair__cylinder *y = &c->cylinder[i];
  int hp = y->stage == 2;
  int leaking = hp ? m->hp_leaking_cylinders : m->lp_leaking_cylinders;
  double has_leak = leaking == 0 || number < leaking ? 1.0 : 0.0;
  int from = hp ? c->intercooler : c->plenum;
  int to = hp || c->intercooler < 0 ? c->line : c->intercooler;
  int ambient = c->n_volumes;
  y->suction = add_link(c, from, i, FREEAIR__VALVE, hp ? m->hp_suction_area_m2 : m->lp_suction_area_m2,
                        has_leak * (hp ? m->hp_suction_leak_m2 : m->lp_suction_leak_m2),
                        hp ? m->hp_suction_lift_pa : m->lp_suction_lift_pa);
  if (hp) c->link[y->suction].series = 1.0 / (m->intercooler_area_m2 * m->intercooler_area_m2);
  y->discharge = add_link(c, i, to, FREEAIR__VALVE, hp ? m->hp_discharge_area_m2 : m->lp_discharge_area_m2,
                          has_leak * (hp ? m->hp_discharge_leak_m2 : m->lp_discharge_leak_m2),
                          hp ? m->hp_discharge_lift_pa : m->lp_discharge_lift_pa);
  y->ring = add_link(c, i, ambient + 1, FREEAIR__ORIFICE, hp ? m->hp_ring_area_m2 : m->lp_ring_area_m2, 0.0, 1.0);
  y->gasket = -1;
  double gasket = hp ? m->hp_gasket_leak_m2 : m->lp_gasket_leak_m2;
  if (number == 0 && gasket > 0.0) y->gasket = add_link(c, i, ambient, FREEAIR__ORIFICE, gasket, 0.0, 1.0);
}

void freeair__cycle_receiver(freeair__cycle *c, double receiver_p, double receiver_t)
{
  int receiver = c->n_volumes + 2;
  c->receiver_p = receiver_p;
  c->receiver_t = receiver_t;
  c->node_p[receiver] = receiver_p;
  c->node_t[receiver] = receiver_t;
}

/* Gas constant of moist air: water vapour by the Magnus formula. */
static double moist_gas_constant(double r, const freeair_machine_site *site)
{
  if (!(site->humidity > 0.0)) return r;
  double celsius = site->ambient_k - 273.15;
  double vapour = site->humidity * 611.2 * exp(17.62 * celsius / (243.12 + celsius));
  double ratio = 0.62198 * vapour / (site->barometric_pa - vapour);
  return r * (1.0 + 1.60776 * ratio) / (1.0 + ratio);
}

void freeair__cycle_build(freeair__cycle *c, const freeair_machine *m, const freeair_machine_site *site,
                          double receiver_p, double receiver_t)
{
  memset(c, 0, sizeof *c);
  c->m = *m;
  c->site = *site;
  c->k = m->heat_capacity_ratio;
  c->gas_r = moist_gas_constant(m->gas_constant_j_kg_k, site);
  c->cv = c->gas_r / (c->k - 1.0);
  c->cp = c->k * c->cv;
  build_nozzle(c);
  int two = m->stages == 2;
  for (int j = 0; j < m->lp_cylinders; j++) add_cylinder(c, 1, j);
  for (int j = 0; two && j < m->hp_cylinders; j++) add_cylinder(c, 2, j);
  c->plenum = c->n_cylinders;
  c->intercooler = two ? c->n_cylinders + 1 : -1;
  c->line = c->n_cylinders + (two ? 2 : 1);
  c->n_volumes = c->line + 1;
  int ambient = c->n_volumes;
  int crankcase = ambient + 1;
  int receiver = ambient + 2;
  c->node_p[ambient] = c->node_p[crankcase] = site->barometric_pa;
  c->node_t[ambient] = site->ambient_k;
  c->node_t[crankcase] = m->crankcase_k;
  freeair__cycle_receiver(c, receiver_p, receiver_t);
  for (int i = 0; i < c->n_cylinders; i++)
    add_cylinder_links(c, i, c->cylinder[i].stage == 2 ? i - m->lp_cylinders : i);
  c->link_filter = add_link(c, ambient, c->plenum, FREEAIR__ORIFICE, m->filter_area_m2, 0.0, 1.0);
  c->link_check = add_link(c, c->line, receiver, FREEAIR__VALVE, m->check_valve_area_m2, m->check_valve_leak_m2,
                           m->check_valve_lift_pa);
  c->link_unloader = add_link(c, c->line, ambient, FREEAIR__ORIFICE, m->unloader_leak_m2, 0.0, 1.0);
  c->link_relief = c->link_leak = c->link_breach = -1;
  if (two) {
    c->link_relief = add_link(c, c->intercooler, ambient, FREEAIR__RELIEF, m->relief_area_m2, 0.0,
                              0.1 * m->relief_set_pa);
    c->link[c->link_relief].set = m->relief_set_pa;
    c->link_leak = add_link(c, c->intercooler, ambient, FREEAIR__ORIFICE, m->intercooler_leak_m2, 0.0, 1.0);
  }
  if (m->gasket_breach_m2 > 0.0 && c->n_cylinders >= 2)
    c->link_breach = add_link(c, 0, two ? m->lp_cylinders : 1, FREEAIR__ORIFICE, m->gasket_breach_m2, 0.0, 1.0);
  c->volume[c->plenum] = m->plenum_m3;
  c->volume[c->line] = m->line_m3;
  c->ua[c->line] = m->line_ua_w_k;
  if (two) {
    c->volume[c->intercooler] = m->intercooler_m3;
    c->ua[c->intercooler] = m->intercooler_ua_w_k;
  }
  c->mass_scale = m->lp_cylinders * c->cylinder[0].swept * site->barometric_pa / (c->gas_r * site->ambient_k);
}

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
  if (x < smooth_below) {
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
  if (x < smooth_below) return x * (c->nozzle_linear + c->nozzle_quadratic * x);
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
    double p = (c->k - 1.0) * energy * q->over_v[v];
    q->r->p[v] = p;
    q->r->t[v] = energy / (mass * c->cv);
    q->p_time[v] = v < c->n_cylinders ? -p * q->dv[v] * q->over_v[v] : 0.0;
    q->r->f[2 * v] = q->r->f[2 * v + 1] = 0.0;
  }
  for (int v = nv; v < nv + 3; v++) {
    q->r->p[v] = c->node_p[v];
    q->r->t[v] = c->node_t[v];
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
  double cpt = c->cp * r->t[up];
  r->mass[i] = flow;
  r->enthalpy[i] = flow * cpt;
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
    gm[1] = a < c->n_volumes ? by_pa * (c->k - 1.0) * q->over_v[a] : 0.0;
    gm[3] = b < c->n_volumes ? by_pb * (c->k - 1.0) * q->over_v[b] : 0.0;
    gm[4] = by_pa * q->p_time[a] + by_pb * q->p_time[b];
    int at = forward ? 0 : 2;
    double over_m = 0.0; /* log derivatives of the upstream temperature */
    double over_u = 0.0;
    if (up < c->n_volumes) {
      over_m = 1.0 / q->y[2 * up];
      over_u = 1.0 / q->y[2 * up + 1];
      gm[at] += 0.5 * flow * over_m;
      gm[at + 1] -= 0.5 * flow * over_u;
    }
    for (int s = 0; s < 5; s++) gh[s] = cpt * gm[s];
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
  d->heat[v][0] = (heat * exponent - by_t * t) / mass;
  d->heat[v][1] = by_t * t / energy;
  d->heat[v][2] = q->dv[v] * (h * over_wall * 4.0 / cy->bore - heat * exponent * over_v);
  d->work[v][0] = 0.0;
  d->work[v][1] = (c->k - 1.0) * over_v * q->dv[v];
  d->work[v][2] = q->p_time[v] * q->dv[v] + r->p[v] * q->ddv[v];
  d->heat_slope[v] = -ha;
  int n = 2 * c->n_volumes;
  double *column = d->j + 2 * v * n + 2 * v + 1;
  column[0] -= d->heat[v][0];
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
  d->heat[v][0] = -lost / q->y[2 * v];
  d->heat[v][1] = lost / q->y[2 * v + 1];
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
