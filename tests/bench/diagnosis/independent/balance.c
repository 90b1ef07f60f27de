/* SPDX-License-Identifier: MIT */
/* Balances of mass and energy of every volume, and the motion of the reeds. */
#include "balance.h"

#include <math.h>
#include <string.h>

static const double pi = 3.14159265358979323846;

typedef struct gas_state {
  double pa;
  double k;
  double m3;
  double dm3_rad;
} gas_state;

typedef struct stream {
  double kg_s;
  double w; /* enthalpy */
} stream;

/* What the balances of one instant share. */
typedef struct instant {
  const pump *c;
  const double *state;
  double *rates;
  double *sums;
  double s_rad;
  gas_state at[MOST_VOLUMES];
} instant;

double pump_volume(const pump *c, const cylinder *y, double angle_rad, double *dm3_rad)
{
  double a = angle_rad - y->lag_rad;
  double r = 0.5 * y->stroke_m;
  double lambda = c->m->rod_ratio;
  double sine = sin(a);
  double cosine = cos(a);
  double root = sqrt(1.0 - lambda * lambda * sine * sine);
  double x = r * (1.0 - cosine);
  double slope = r * sine;
  if (lambda > 0.0) {
    x += r / lambda * (1.0 - root);
    slope += r * lambda * sine * cosine / root;
  }
  *dm3_rad = y->piston_m2 * slope;
  return y->piston_m2 * (x + y->clearance * y->stroke_m);
}

static double fixed_volume(const pump *c, int i)
{
  if (i == PLENUM) return c->m->plenum_m3;
  return i == LINE ? c->m->line_m3 : c->m->intercooler_m3;
}

static int find_gas(instant *now, double angle_rad)
{
  const pump *c = now->c;
  for (int i = 0; i < c->n_volumes; i++) {
    gas_state *g = &now->at[i];
    double kg = now->state[2 * i];
    double j = now->state[2 * i + 1];
    if (!(kg > 0.0 && j > 0.0)) return 0;
    g->dm3_rad = 0.0;
    g->m3 = i < c->first_cylinder ? fixed_volume(c, i)
                                  : pump_volume(c, &c->cylinders[i - c->first_cylinder], angle_rad, &g->dm3_rad);
    g->k = air_temperature(&c->gas, j / kg);
    g->pa = kg * c->gas.gas_j_kg_k * g->k / g->m3;
  }
  return 1;
}

/* From one gas to another; negative when it flows back. */
static stream flow(const pump *c, double area_m2, double p1_pa, double t1_k, double p2_pa, double t2_k)
{
  stream s = {0.0, 0.0};
  if (area_m2 <= 0.0 || p1_pa == p2_pa) return s;
  if (p1_pa > p2_pa) {
    s.kg_s = air_through(&c->gas, area_m2, p1_pa, t1_k, p2_pa);
    s.w = s.kg_s * air_enthalpy(&c->gas, t1_k);
  } else {
    s.kg_s = -air_through(&c->gas, area_m2, p2_pa, t2_k, p1_pa);
    s.w = s.kg_s * air_enthalpy(&c->gas, t2_k);
  }
  return s;
}

static void add(instant *now, int volume, stream s)
{
  now->rates[2 * volume] += s.kg_s;
  now->rates[2 * volume + 1] += s.w;
}

static void take(instant *now, int volume, stream s)
{
  now->rates[2 * volume] -= s.kg_s;
  now->rates[2 * volume + 1] -= s.w;
}

static stream between(instant *now, double area_m2, int from, int to)
{
  const gas_state *a = &now->at[from];
  const gas_state *b = &now->at[to];
  stream s = flow(now->c, area_m2, a->pa, a->k, b->pa, b->k);
  take(now, from, s);
  add(now, to, s);
  return s;
}

static stream to_outside(instant *now, double area_m2, int from, double outside_k)
{
  const gas_state *a = &now->at[from];
  stream s = flow(now->c, area_m2, a->pa, a->k, now->c->ambient_pa, outside_k);
  take(now, from, s);
  return s;
}

static double steady_opening(const pump *c, double difference_pa, double lift_pa)
{
  double x = difference_pa / lift_pa;
  return c->by->valve == VALVE_LINEAR ? fmin(1.0, fmax(0.0, x)) : smooth_step(x);
}

/* Effective area of a valve; a reed (lift, rate) seeks what a steady flow would open. */
static double valve_area(const pump *c, const valve *v, double difference_pa, const double *reed, double *reed_rates)
{
  double open = steady_opening(c, difference_pa, v->lift_pa);
  if (c->by->valve == VALVE_REED) {
    double w = 2.0 * pi * c->by->reed_hz;
    reed_rates[0] = reed[1];
    reed_rates[1] = w * w * (open - reed[0]) - 2.0 * c->by->reed_damping * w * reed[1];
    open = fmin(1.0, fmax(0.0, reed[0]));
  }
  return v->leak_m2 + (v->area_m2 - v->leak_m2) * open;
}

static double in_series(double a_m2, double b_m2)
{
  return a_m2 > 0.0 ? 1.0 / sqrt(1.0 / (a_m2 * a_m2) + 1.0 / (b_m2 * b_m2)) : 0.0;
}

static double heat_transfer(const pump *c, const cylinder *y, const gas_state *g)
{
  double piston_m_s = 2.0 * y->stroke_m * c->rev_s;
  if (c->by->heat == HEAT_PRESSURE)
    return c->m->heat_coefficient / 0.7 * 3.26 * pow(y->bore_m, -0.2) * pow(g->pa / 1e3, 0.8) * pow(g->k, -0.55) *
           pow(2.28 * piston_m_s, 0.8);
  double viscosity_pas = 1.458e-6 * g->k * sqrt(g->k) / (g->k + 110.4);
  double conductivity_w_m_k = 2.4947e-3 * g->k * sqrt(g->k) / (g->k + 194.0);
  double reynolds = g->pa / (c->gas.gas_j_kg_k * g->k) * piston_m_s * y->bore_m / viscosity_pas;
  return conductivity_w_m_k / y->bore_m * c->m->heat_coefficient * pow(reynolds, c->m->heat_exponent);
}

/* Heat to the wall, and work on the piston. */
static void balance_walls(instant *now, int i)
{
  const pump *c = now->c;
  const cylinder *y = &c->cylinders[i];
  int at = c->first_cylinder + i;
  const gas_state *g = &now->at[at];
  double area_m2 = 2.0 * y->piston_m2 + pi * y->bore_m * g->m3 / y->piston_m2;
  double heat_w = heat_transfer(c, y, g) * area_m2 * (g->k - y->wall_k);
  double work_w = g->pa * g->dm3_rad / now->s_rad;
  now->rates[2 * at + 1] -= heat_w + work_w;
  now->sums[SUM_HEAT_J + i] = heat_w;
  now->sums[y->hp ? SUM_HP_WORK_J : SUM_LP_WORK_J] -= work_w;
  if (!y->hp) now->rates[2 * PLENUM + 1] += c->m->suction_ua_w_k / c->n_lp * (y->wall_k - now->at[PLENUM].k);
}

static void balance_cylinder(instant *now, int i)
{
  const pump *c = now->c;
  const cylinder *y = &c->cylinders[i];
  int at = c->first_cylinder + i;
  int from = y->hp ? c->intercooler : PLENUM;
  int to = y->hp || c->n_hp == 0 ? LINE : c->intercooler;
  const double *reeds = now->state + 2 * c->n_volumes + 4 * i;
  double *reed_rates = now->rates + 2 * c->n_volumes + 4 * i;

  double area_m2 = valve_area(c, &y->suction, now->at[from].pa - now->at[at].pa, reeds, reed_rates);
  if (y->hp) area_m2 = in_series(area_m2, c->m->intercooler_area_m2);
  between(now, area_m2, from, at);

  area_m2 = valve_area(c, &y->discharge, now->at[at].pa - now->at[to].pa, reeds + 2, reed_rates + 2);
  stream out = between(now, area_m2, at, to);
  if (out.kg_s > 0.0) {
    now->sums[y->hp ? SUM_HP_OUT_KG : SUM_LP_OUT_KG] += out.kg_s;
    now->sums[y->hp ? SUM_HP_OUT_KG_K : SUM_LP_OUT_KG_K] += out.kg_s * now->at[at].k;
  }
  now->sums[y->hp ? SUM_HP_RING_KG : SUM_LP_RING_KG] += to_outside(now, y->ring_m2, at, c->m->crankcase_k).kg_s;
  to_outside(now, y->gasket_leak_m2, at, c->ambient_k);
  balance_walls(now, i);
}

static void balance_intercooler(instant *now)
{
  const pump *c = now->c;
  const freeair_machine *m = c->m;
  int i = c->intercooler;
  double relief_m2 = m->relief_area_m2 * smooth_step((now->at[i].pa - m->relief_set_pa) / (0.1 * m->relief_set_pa));
  now->sums[SUM_RELIEF_KG] = to_outside(now, relief_m2, i, c->ambient_k).kg_s;
  to_outside(now, m->intercooler_leak_m2, i, c->ambient_k);
  now->rates[2 * i + 1] -= m->intercooler_ua_w_k * (now->at[i].k - c->ambient_k);
  now->sums[SUM_INTERSTAGE_PA_S] = now->at[i].pa;
  now->sums[SUM_INTERSTAGE_K_S] = now->at[i].k;
}

static void balance_line(instant *now)
{
  const pump *c = now->c;
  const freeair_machine *m = c->m;
  const gas_state *g = &now->at[LINE];
  now->sums[SUM_UNLOADER_KG] = to_outside(now, m->unloader_leak_m2, LINE, c->ambient_k).kg_s;
  double area_m2 = m->check_valve_leak_m2 + (m->check_valve_area_m2 - m->check_valve_leak_m2) *
                                                steady_opening(c, g->pa - c->receiver_pa, m->check_valve_lift_pa);
  stream s = flow(c, area_m2, g->pa, g->k, c->receiver_pa, c->receiver_k);
  take(now, LINE, s);
  now->sums[s.kg_s > 0.0 ? SUM_DELIVERED_KG : SUM_RETURNED_KG] = fabs(s.kg_s);
  now->sums[SUM_DELIVERED_J] = s.w;
  now->rates[2 * LINE + 1] -= m->line_ua_w_k * (g->k - c->ambient_k);
}

int pump_rates(const pump *c, double angle_rad, const double *state, double *rates, double *sum_rates)
{
  instant now = {.c = c, .state = state, .rates = rates, .sums = sum_rates,
                 .s_rad = 1.0 / (2.0 * pi * c->rev_s)};
  memset(rates, 0, (size_t)c->n_states * sizeof *rates);
  memset(sum_rates, 0, N_SUMS * sizeof *sum_rates);
  if (!find_gas(&now, angle_rad)) return 0;

  stream in = flow(c, c->m->filter_area_m2, c->ambient_pa, c->ambient_k, now.at[PLENUM].pa, now.at[PLENUM].k);
  add(&now, PLENUM, in);
  sum_rates[in.kg_s > 0.0 ? SUM_INTAKE_KG : SUM_BLOW_BACK_KG] = fabs(in.kg_s);
  sum_rates[SUM_PLENUM_K_S] = now.at[PLENUM].k;
  for (int i = 0; i < c->n_cylinders; i++) balance_cylinder(&now, i);
  if (c->m->gasket_breach_m2 > 0.0 && c->n_cylinders > 1) {
    int neighbour = c->first_cylinder + (c->n_hp > 0 ? c->n_lp : 1);
    between(&now, c->m->gasket_breach_m2, c->first_cylinder, neighbour);
  }
  if (c->n_hp > 0) balance_intercooler(&now);
  balance_line(&now);

  for (int i = 0; i < c->n_states; i++) rates[i] *= now.s_rad;
  for (int i = 0; i < N_SUMS; i++) sum_rates[i] *= now.s_rad;
  return 1;
}
