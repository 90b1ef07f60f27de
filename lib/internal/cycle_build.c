/* SPDX-License-Identifier: MIT */
/* From a description to the volumes and paths of the crank-angle model. */
#include "internal/cycle.h"

#include "internal/chebyshev.h"
#include "internal/check.h"

#include <string.h>

static const double pi = 3.14159265358979323846;

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
  double value[n];
  for (int i = 0; i < n; i++)
    value[i] = nozzle_factor(k, 0.5 * c->nozzle_critical * (1.0 + freeair__chebyshev_point(i, n)));
  freeair__chebyshev_series(n, value, c->nozzle);
  c->nozzle_choked = nozzle_factor(k, c->nozzle_critical) * sqrt(c->nozzle_critical);
  double psi = nozzle_factor(k, FREEAIR__SMOOTH_BELOW) * sqrt(FREEAIR__SMOOTH_BELOW);
  double h = 1e-3 * FREEAIR__SMOOTH_BELOW;
  double slope = (nozzle_factor(k, FREEAIR__SMOOTH_BELOW + h) * sqrt(FREEAIR__SMOOTH_BELOW + h) -
                  nozzle_factor(k, FREEAIR__SMOOTH_BELOW - h) * sqrt(FREEAIR__SMOOTH_BELOW - h)) /
                 (2.0 * h);
  c->nozzle_linear = 2.0 * psi / FREEAIR__SMOOTH_BELOW - slope;
  c->nozzle_quadratic = (slope - psi / FREEAIR__SMOOTH_BELOW) / FREEAIR__SMOOTH_BELOW;
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
  c->node_h[receiver] = freeair__gas_enthalpy(&c->gas, receiver_t);
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
  freeair__gas_build(&c->gas, c->gas_r, c->k, m->heat_capacity_rise);
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
  c->node_h[ambient] = freeair__gas_enthalpy(&c->gas, site->ambient_k);
  c->node_h[crankcase] = freeair__gas_enthalpy(&c->gas, m->crankcase_k);
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
