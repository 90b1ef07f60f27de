/* SPDX-License-Identifier: MIT */
/* The periodic state. Unknowns are the state at the start of a revolution, the wall
 * temperatures and the motor's slip, each over its own measure. */
#include "anderson.h"
#include "balance.h"

#include <math.h>
#include <string.h>

enum { MOST_UNKNOWNS = MOST_STATES + MOST_CYLINDERS + 1, MOST_REVOLUTIONS = 300 };
_Static_assert((int)MOST_UNKNOWNS <= (int)ANDERSON_MOST, "the mixing has room for every unknown");

static const double pi = 3.14159265358979323846;
static const double settled = 5e-6;

typedef struct iteration {
  pump c;
  double state[MOST_STATES];
  double sums[N_SUMS];
  double measure[MOST_STATES];
  int n;
  double before[MOST_UNKNOWNS];
  double after[MOST_UNKNOWNS];
  double friction_w;
  double shaft_w;
  double error; /* of the last revolution */
  double least_error;
  anderson mixing;
} iteration;

/* ---- the machine ---- */

static cylinder lp_cylinder(const freeair_machine *m, int j)
{
  int leaks = m->lp_leaking_cylinders == 0 || j < m->lp_leaking_cylinders;
  cylinder y = {.bore_m = m->lp_bore_m, .stroke_m = m->lp_stroke_m, .clearance = m->lp_clearance,
                .lag_rad = j * m->lp_spread_rad, .ring_m2 = m->lp_ring_area_m2,
                .gasket_leak_m2 = j == 0 ? m->lp_gasket_leak_m2 : 0.0, .wall_ua_w_k = m->lp_wall_ua_w_k};
  y.suction = (valve){m->lp_suction_area_m2, leaks ? m->lp_suction_leak_m2 : 0.0, m->lp_suction_lift_pa};
  y.discharge = (valve){m->lp_discharge_area_m2, leaks ? m->lp_discharge_leak_m2 : 0.0, m->lp_discharge_lift_pa};
  return y;
}

static cylinder hp_cylinder(const freeair_machine *m, int j)
{
  int leaks = m->hp_leaking_cylinders == 0 || j < m->hp_leaking_cylinders;
  cylinder y = {.hp = 1, .bore_m = m->hp_bore_m, .stroke_m = m->hp_stroke_m, .clearance = m->hp_clearance,
                .lag_rad = m->phase_rad + j * m->hp_spread_rad, .ring_m2 = m->hp_ring_area_m2,
                .gasket_leak_m2 = j == 0 ? m->hp_gasket_leak_m2 : 0.0, .wall_ua_w_k = m->hp_wall_ua_w_k};
  y.suction = (valve){m->hp_suction_area_m2, leaks ? m->hp_suction_leak_m2 : 0.0, m->hp_suction_lift_pa};
  y.discharge = (valve){m->hp_discharge_area_m2, leaks ? m->hp_discharge_leak_m2 : 0.0, m->hp_discharge_lift_pa};
  return y;
}

static int describe(pump *c, const freeair_machine *m, const freeair_machine_site *site, const laws *by,
                    double receiver_pa)
{
  memset(c, 0, sizeof *c);
  c->m = m;
  c->by = by;
  c->gas = air_at(m, site);
  c->ambient_pa = site->barometric_pa;
  c->ambient_k = c->receiver_k = site->ambient_k;
  c->receiver_pa = receiver_pa;
  c->n_lp = m->lp_cylinders;
  c->n_hp = m->stages == 2 ? m->hp_cylinders : 0;
  c->n_cylinders = c->n_lp + c->n_hp;
  if (c->n_cylinders > MOST_CYLINDERS) return 0;
  c->intercooler = c->n_hp > 0 ? 2 : NO_VOLUME;
  c->first_cylinder = c->n_hp > 0 ? 3 : 2;
  c->n_volumes = c->first_cylinder + c->n_cylinders;
  c->n_states = 2 * c->n_volumes + (by->valve == VALVE_REED ? 4 * c->n_cylinders : 0);
  for (int i = 0; i < c->n_cylinders; i++) {
    cylinder *y = &c->cylinders[i];
    *y = i < c->n_lp ? lp_cylinder(m, i) : hp_cylinder(m, i - c->n_lp);
    y->piston_m2 = pi / 4.0 * y->bore_m * y->bore_m;
    y->swept_m3 = y->piston_m2 * y->stroke_m;
    y->wall_k = c->ambient_k + 50.0;
    c->swept_m3 += y->swept_m3;
    if (!y->hp) c->lp_swept_m3 += y->swept_m3;
  }
  c->displaced_kg = c->ambient_pa / (c->gas.gas_j_kg_k * c->ambient_k) * c->lp_swept_m3;
  c->displaced_j = c->displaced_kg * (c->gas.gas_j_kg_k / (AIR_K - 1.0)) * c->ambient_k;
  c->slip = m->motor_rated_slip;
  return 1;
}

/* ---- the start ---- */

static double first_pressure(const pump *c, int volume)
{
  if (volume == LINE) return c->receiver_pa;
  int interstage = volume == c->intercooler ||
                   (volume >= c->first_cylinder && c->cylinders[volume - c->first_cylinder].hp);
  if (!interstage) return c->ambient_pa;
  return fmin(c->ambient_pa * c->lp_swept_m3 / (c->swept_m3 - c->lp_swept_m3), fmax(c->receiver_pa, c->ambient_pa));
}

static void start(iteration *it)
{
  const pump *c = &it->c;
  for (int i = 0; i < c->n_volumes; i++) {
    double unused;
    double k = c->ambient_k + (i == LINE ? 80.0 : 20.0);
    double m3 = i == PLENUM ? c->m->plenum_m3 : i == LINE ? c->m->line_m3 : c->m->intercooler_m3;
    if (i >= c->first_cylinder) m3 = pump_volume(c, &c->cylinders[i - c->first_cylinder], 0.0, &unused);
    it->state[2 * i] = first_pressure(c, i) * m3 / (c->gas.gas_j_kg_k * k);
    it->state[2 * i + 1] = it->state[2 * i] * air_internal_energy(&c->gas, k);
    it->measure[2 * i] = c->displaced_kg;
    it->measure[2 * i + 1] = c->displaced_j;
  }
  for (int i = 2 * c->n_volumes; i < c->n_states; i++) it->measure[i] = i % 2 == 0 ? 1e1 : 1e4; /* reeds weigh little */
  it->n = c->n_states + c->n_cylinders + 1;
  it->least_error = INFINITY;
  it->mixing.n = it->n;
}

/* ---- a revolution ---- */

static void read_unknowns(const iteration *it, double *x)
{
  const pump *c = &it->c;
  for (int i = 0; i < c->n_states; i++) x[i] = it->state[i] / it->measure[i];
  for (int i = 0; i < c->n_cylinders; i++) x[c->n_states + i] = c->cylinders[i].wall_k / c->ambient_k;
  x[it->n - 1] = c->slip;
}

static void write_unknowns(iteration *it, const double *x)
{
  pump *c = &it->c;
  for (int i = 0; i < c->n_states; i++) it->state[i] = x[i] * it->measure[i];
  for (int i = 0; i < c->n_cylinders; i++) c->cylinders[i].wall_k = x[c->n_states + i] * c->ambient_k;
  c->slip = x[it->n - 1];
}

/* Temperature at which a wall would lose what it gets. */
static double steady_wall(const iteration *it, int i)
{
  const pump *c = &it->c;
  const cylinder *y = &c->cylinders[i];
  double period_s = 1.0 / c->rev_s;
  double to_suction_w =
      y->hp ? 0.0 : c->m->suction_ua_w_k / c->n_lp * (y->wall_k - it->sums[SUM_PLENUM_K_S] / period_s);
  double from_gas_w = it->sums[SUM_HEAT_J + i] / period_s;
  double from_friction_w = 0.5 * it->friction_w * y->swept_m3 / c->swept_m3;
  return c->ambient_k + (from_gas_w + from_friction_w - to_suction_w) / y->wall_ua_w_k;
}

/* Slip at a load by Kloss' equation: torque over breakdown torque is 2 / (s/sb + sb/s),
 * with a breakdown torque of 2.5 times the rated. */
static double motor_slip(const freeair_machine *m, const freeair_machine_site *site, double shaft_w,
                         double motor_rev_s)
{
  double breakdown = 2.5;
  double rated_nm = m->motor_rated_w / (2.0 * pi * m->motor_synchronous_rev_s * (1.0 - m->motor_rated_slip));
  double strength = pow(site->supply_v / m->motor_rated_v, 2.0) * m->motor_torque_factor;
  double breakdown_slip = m->motor_rated_slip * (breakdown + sqrt(breakdown * breakdown - 1.0));
  double load = shaft_w / m->belt_efficiency / (2.0 * pi * motor_rev_s) / (breakdown * rated_nm * strength);
  load = fmin(load, 0.97);
  return fmin(0.6, fmax(0.0, breakdown_slip * (1.0 - sqrt(1.0 - load * load)) / load));
}

/* What the revolution makes of the unknowns. Walls and slip move a part of the way
 * only: wholly, they would overshoot. */
static void find_after(iteration *it, const freeair_machine_site *site)
{
  pump *c = &it->c;
  double *g = it->after;
  double wall_error = 0.0;
  it->friction_w = c->m->fmep_pa * c->swept_m3 * c->rev_s;
  it->shaft_w = (it->sums[SUM_LP_WORK_J] + it->sums[SUM_HP_WORK_J]) / (1.0 / c->rev_s) + it->friction_w;
  for (int i = 0; i < c->n_states; i++) g[i] = it->state[i] / it->measure[i];
  for (int i = 0; i < c->n_cylinders; i++) {
    double wall_k = c->cylinders[i].wall_k;
    double steady_k = steady_wall(it, i);
    g[c->n_states + i] = (wall_k + 0.3 * (steady_k - wall_k)) / c->ambient_k;
    wall_error = fmax(wall_error, fabs(steady_k - wall_k) / c->ambient_k);
  }
  double slip = motor_slip(c->m, site, it->shaft_w, c->m->motor_synchronous_rev_s * (1.0 - c->slip));
  g[it->n - 1] = c->slip + 0.5 * (slip - c->slip);
  it->error = fmax(wall_error * 0.1, fabs(slip - c->slip));
  for (int i = 0; i < 2 * c->n_volumes; i++) it->error = fmax(it->error, fabs(g[i] - it->before[i]));
  it->least_error = fmin(it->least_error, it->error);
}

/* A mixture must stay near the plain iteration. */
static int plausible(const iteration *it, const double *x)
{
  const pump *c = &it->c;
  const double *g = it->after;
  for (int i = 0; i < it->n; i++)
    if (!isfinite(x[i])) return 0;
  for (int i = 0; i < 2 * c->n_volumes; i++)
    if (!(x[i] > 0.5 * g[i] && x[i] < 2.0 * g[i])) return 0;
  for (int i = c->n_states; i < it->n - 1; i++)
    if (!(x[i] > 0.8 && x[i] < 4.0)) return 0;
  for (int i = 0; i < 2 * c->n_volumes; i += 2) {
    double hotter = x[i + 1] / x[i] / (g[i + 1] / g[i]);
    if (!(hotter > 0.6 && hotter < 1.6)) return 0;
  }
  return 1;
}

static void go_on(iteration *it, int revolution)
{
  double next[MOST_UNKNOWNS];
  anderson_next(&it->mixing, it->before, it->after, revolution > 3, next);
  int astray = revolution > 40 && it->error > 1e3 * it->least_error;
  if (!plausible(it, next)) {
    memcpy(next, it->after, sizeof next);
    astray = 1;
  }
  if (astray) anderson_forget(&it->mixing);
  write_unknowns(it, next);
}

/* ---- the result ---- */

static void report(const iteration *it, pump_result *r)
{
  const pump *c = &it->c;
  const double *q = it->sums;
  double period_s = 1.0 / c->rev_s;
  double density_kg_m3 = c->ambient_pa / (c->gas.gas_j_kg_k * c->ambient_k);
  int two = c->n_hp > 0;
  r->delivery_kg_s = (q[SUM_DELIVERED_KG] - q[SUM_RETURNED_KG]) / period_s;
  r->delivery_m3_s = r->delivery_kg_s / density_kg_m3;
  r->delivery_w = q[SUM_DELIVERED_J] / period_s;
  r->intake_kg_s = (q[SUM_INTAKE_KG] - q[SUM_BLOW_BACK_KG]) / period_s;
  r->inlet_backflow_kg_s = q[SUM_BLOW_BACK_KG] / period_s;
  r->interstage_mean_pa = two ? q[SUM_INTERSTAGE_PA_S] / period_s : NAN;
  r->interstage_min_pa = two ? c->interstage_min_pa : NAN;
  r->interstage_max_pa = two ? c->interstage_max_pa : NAN;
  r->intercooler_k = two ? q[SUM_INTERSTAGE_K_S] / period_s : NAN;
  r->lp_discharge_k = q[SUM_LP_OUT_KG_K] / q[SUM_LP_OUT_KG];
  r->hp_discharge_k = two ? q[SUM_HP_OUT_KG_K] / q[SUM_HP_OUT_KG] : NAN;
  r->lp_wall_k = c->cylinders[0].wall_k;
  r->hp_wall_k = two ? c->cylinders[c->n_lp].wall_k : NAN;
  r->motor_w = it->shaft_w / c->m->belt_efficiency;
  r->motor_speed_rev_s = c->m->motor_synchronous_rev_s * (1.0 - c->slip);
  r->speed_rev_s = c->rev_s;
  r->relief_kg_s = q[SUM_RELIEF_KG] / period_s;
  r->unloader_kg_s = q[SUM_UNLOADER_KG] / period_s;
  r->lp_ring_kg_s = q[SUM_LP_RING_KG] / period_s;
  r->hp_ring_kg_s = q[SUM_HP_RING_KG] / period_s;
}

int pump_point(const freeair_machine *m, const freeair_machine_site *site, const laws *by, double receiver_pa,
               pump_result *result)
{
  iteration it;
  memset(&it, 0, sizeof it);
  pump *c = &it.c;
  if (!describe(c, m, site, by, receiver_pa)) return PUMP_FAILED;
  start(&it);
  for (int revolution = 0; revolution < MOST_REVOLUTIONS; revolution++) {
    read_unknowns(&it, it.before);
    c->rev_s = m->motor_synchronous_rev_s * (1.0 - c->slip) * m->pulley_ratio * (1.0 - m->belt_slip);
    if (!pump_revolve(c, it.state, it.sums)) {
      if (!it.mixing.seen) return PUMP_FAILED;
      write_unknowns(&it, it.after); /* from where the plain iteration stood */
      anderson_forget(&it.mixing);
      it.mixing.seen = 0;
      continue;
    }
    find_after(&it, site);
    if (it.error < settled) break;
    go_on(&it, revolution);
  }
  report(&it, result);
  return it.least_error < 50.0 * settled ? PUMP_SETTLED : PUMP_UNSETTLED;
}
