/* SPDX-License-Identifier: MIT */
#include "truth.h"

#include "air.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const double rating_pa = 101325.0;

double truth_displacement_m3_s(const freeair_machine *m)
{
  return m->lp_cylinders * pi / 4.0 * m->lp_bore_m * m->lp_bore_m * m->lp_stroke_m * m->speed_rev_s;
}

double truth_pressure_pa(const truth *t, double share)
{
  return t->site.barometric_pa + share * (t->m.cut_out_pa - t->site.barometric_pa);
}

int truth_point(const truth *t, double receiver_pa, pump_result *r)
{
  freeair_machine m = t->m;
  double load = (receiver_pa - t->site.barometric_pa) / (t->m.cut_out_pa - t->site.barometric_pa);
  m.belt_slip = fmin(0.6, t->belt_slip * (1.0 - t->belt_load_share + t->belt_load_share * load));
  return pump_point(&m, &t->site, &t->by, receiver_pa, r) != PUMP_FAILED; /* unsettled is as good as the real one */
}

int truth_map(const truth *t, pump_map *map)
{
  double first = sqrt(t->site.barometric_pa);
  double last = sqrt(t->m.cut_out_pa * 1.03);
  for (int i = 0; i < MAP_POINTS; i++) {
    double root = first + (last - first) * i / (MAP_POINTS - 1);
    pump_result *r = &map->point[i];
    map->pa[i] = root * root;
    if (!truth_point(t, map->pa[i], r)) return 0;
    /* a tight check valve lets nothing back */
    int shut = r->delivery_kg_s < 0.0 && !(t->m.check_valve_leak_m2 > 0.0);
    map->flow_kg_s[i] = shut ? 0.0 : r->delivery_kg_s;
    map->flow_w[i] = shut ? 0.0 : r->delivery_w;
  }
  return 1;
}

double truth_net_m3_s(const truth *t, const pump_result *r, double receiver_pa)
{
  air gas = air_at(&t->m, &t->site);
  double pa = t->site.barometric_pa;
  double k = t->site.ambient_k;
  double leak_kg_s = air_through(&gas, t->m.downstream_leak_m2, receiver_pa, k, pa);
  return r->delivery_m3_s - leak_kg_s * gas.gas_j_kg_k * k / pa - t->m.demand_m3_s;
}

/* ---- the make ---- */

static void design(dice *d, int family, freeair_machine *m)
{
  m->stages = family == 2 ? 1 : 2;
  m->arrangement = family == 0 ? FREEAIR_MACHINE_V : FREEAIR_MACHINE_SIDE_BY_SIDE;
  m->lp_cylinders = family == 2 ? 2 : 1;
  m->lp_bore_m = dice_uniform(d, 0.07, 0.14);
  m->lp_stroke_m = m->lp_bore_m * dice_uniform(d, 0.55, 0.95);
  m->speed_rev_s = dice_uniform(d, 8.0, 17.0);
  if (family != 2) m->hp_bore_m = m->lp_bore_m * dice_uniform(d, 0.48, 0.62);
  m->cut_out_pa = family == 2 ? dice_uniform(d, 8.5e5, 11e5) : dice_uniform(d, 10.5e5, 14.5e5);
  m->cut_in_pa = m->cut_out_pa - dice_uniform(d, 1.6e5, 3e5);
  m->receiver_m3 = truth_displacement_m3_s(m) * dice_uniform(d, 13.0, 38.0);
  m->motor_synchronous_rev_s = dice_chance(d, 0.5) ? 30.0 : 25.0;
}

static laws choose_laws(dice *d)
{
  laws by;
  double which = dice_uniform(d, 0.0, 1.0);
  by.valve = which < 0.6 ? VALVE_REED : which < 0.8 ? VALVE_LINEAR : VALVE_SMOOTH;
  by.reed_hz = dice_log_uniform(d, 90.0, 280.0);
  by.reed_damping = dice_uniform(d, 0.25, 0.8);
  by.heat = dice_chance(d, 0.4) ? HEAT_PRESSURE : HEAT_REYNOLDS;
  by.receiver_exponent = dice_uniform(d, 0.4, 0.8);
  return by;
}

/* Either law about as strong as the other at the Reynolds numbers of such cylinders. */
static void spread_wall_heat(dice *d, truth *t)
{
  const double typical_reynolds = 1.2e4;
  int other = t->by.heat == HEAT_PRESSURE;
  t->m.heat_coefficient = 0.7 * (other ? 1.7 : 1.0) * dice_log_uniform(d, 0.6, 1.6);
  t->m.heat_exponent = 0.7;
  if (other) return;
  double exponent = dice_uniform(d, 0.64, 0.76);
  t->m.heat_coefficient *= pow(typical_reynolds, 0.7 - exponent);
  t->m.heat_exponent = exponent;
}

static void spread_make(dice *d, freeair_machine *m)
{
  double lift = dice_log_uniform(d, 0.4, 2.5);
  m->lp_suction_lift_pa *= lift * dice_factor(d, 0.2);
  m->lp_discharge_lift_pa *= lift * dice_factor(d, 0.2);
  m->hp_suction_lift_pa *= lift * dice_factor(d, 0.2);
  m->hp_discharge_lift_pa *= lift * dice_factor(d, 0.2);
  m->intercooler_m3 *= dice_log_uniform(d, 0.45, 2.2);
  m->line_m3 *= dice_log_uniform(d, 0.5, 2.0);
  m->plenum_m3 *= dice_log_uniform(d, 0.5, 2.5);
  m->phase_rad += dice_uniform(d, -0.3, 0.3);
  m->suction_ua_w_k *= dice_log_uniform(d, 0.6, 1.6);
  m->intercooler_ua_w_k *= dice_log_uniform(d, 0.65, 1.5);
  m->line_ua_w_k *= dice_log_uniform(d, 0.5, 2.0);
  m->receiver_gas_ua_w_k *= dice_log_uniform(d, 0.55, 1.8);
  m->receiver_wall_ua_w_k *= dice_log_uniform(d, 0.5, 2.0);
  m->receiver_wall_j_k *= dice_log_uniform(d, 0.7, 1.4);
  m->fmep_pa = dice_uniform(d, 2e4, 4.5e4);
  m->rod_ratio = dice_uniform(d, 0.2, 0.32);
  m->lp_clearance = dice_uniform(d, 0.035, 0.075);
  m->hp_clearance = dice_uniform(d, 0.05, 0.1);
  m->lp_wall_ua_w_k *= dice_log_uniform(d, 0.75, 1.35);
  m->hp_wall_ua_w_k *= dice_log_uniform(d, 0.75, 1.35);
  double areas = dice_factor(d, 0.1);
  m->lp_suction_area_m2 *= areas * dice_factor(d, 0.1);
  m->lp_discharge_area_m2 *= areas * dice_factor(d, 0.1);
  m->hp_suction_area_m2 *= areas * dice_factor(d, 0.1);
  m->hp_discharge_area_m2 *= areas * dice_factor(d, 0.1);
  m->intercooler_area_m2 *= dice_factor(d, 0.2);
  m->check_valve_area_m2 *= dice_log_uniform(d, 0.6, 1.3);
  m->motor_rated_slip = dice_uniform(d, 0.02, 0.05);
  m->belt_efficiency = dice_uniform(d, 0.93, 0.97);
  m->motor_rated_w *= dice_uniform(d, 0.95, 1.25);
  m->pulley_ratio = m->speed_rev_s / (m->motor_synchronous_rev_s * (1.0 - m->motor_rated_slip));
}

/* The motor's plate gives its speed to 5 revolutions a minute, its power to 100 W. */
static void stamp_motor(const freeair_machine *m, freeair_machine *nameplate)
{
  double synchronous_rpm = m->motor_synchronous_rev_s * 60.0;
  double rated_rpm = floor(synchronous_rpm * (1.0 - m->motor_rated_slip) / 5.0 + 0.5) * 5.0;
  nameplate->motor_rated_slip = 1.0 - rated_rpm / synchronous_rpm;
  nameplate->motor_rated_w = floor(m->motor_rated_w / 100.0 + 0.5) * 100.0;
}

int truth_make(dice *d, int family, truth *t, freeair_machine *nameplate)
{
  freeair_machine_init(nameplate, sizeof *nameplate);
  freeair_machine_init(&t->m, sizeof t->m);
  freeair_machine_site_init(&t->site, sizeof t->site);
  t->belt_slip = t->belt_load_share = t->gauge_bias_pa = t->gauge_span = 0.0;
  design(d, family, nameplate);
  if (freeair_machine_complete(nameplate, &t->m) < 0) return 0;
  t->site.barometric_pa = rating_pa;
  t->site.ambient_k = 293.15;
  t->site.supply_v = 230.0;
  t->site.humidity = 0.0;
  t->by = choose_laws(d);
  spread_wall_heat(d, t);
  spread_make(d, &t->m);
  stamp_motor(&t->m, nameplate);
  pump_result r;
  if (!truth_point(t, t->m.cut_out_pa, &r)) return 0;
  nameplate->rated_delivery_m3_s = r.delivery_m3_s * (1.0 + dice_uniform(d, -0.04, 0.05));
  nameplate->rated_pa = t->m.cut_out_pa;
  /* a maker sets the relief valve so that a sound machine leaves it shut */
  if (family != 2) {
    double set_pa = t->m.relief_set_pa * (1.0 + dice_normal(d, 0.04));
    t->m.relief_set_pa = fmax(set_pa, 1.2 * r.interstage_max_pa);
  }
  return 1;
}

/* ---- the unit ---- */

static void spread_unit(dice *d, truth *t)
{
  freeair_machine *m = &t->m;
  m->lp_clearance *= dice_factor(d, 0.1);
  m->hp_clearance *= dice_factor(d, 0.1);
  m->lp_suction_area_m2 *= dice_factor(d, 0.08);
  m->lp_discharge_area_m2 *= dice_factor(d, 0.08);
  m->hp_suction_area_m2 *= dice_factor(d, 0.08);
  m->hp_discharge_area_m2 *= dice_factor(d, 0.08);
  m->filter_area_m2 *= dice_factor(d, 0.15);
  m->lp_ring_area_m2 *= dice_factor(d, 0.4);
  m->hp_ring_area_m2 *= dice_factor(d, 0.4);
  m->intercooler_ua_w_k *= dice_factor(d, 0.1);
  m->receiver_m3 *= 1.0 + dice_normal(d, 0.012);
  double pulley = 1.0 + dice_normal(d, 0.007);
  m->pulley_ratio *= pulley;
  m->speed_rev_s *= pulley;
  t->belt_slip = fabs(dice_normal(d, 0.006));
  t->gauge_bias_pa = dice_normal(d, 0.005) * (m->cut_out_pa - 1e5);
  t->gauge_span = dice_normal(d, 0.004);
}

void truth_place(dice *d, truth *t, freeair_machine *nameplate, freeair_machine_site *known)
{
  freeair_machine_site *site = &t->site;
  spread_unit(d, t);
  site->ambient_k = dice_uniform(d, 274.0, 314.0);
  site->barometric_pa = dice_chance(d, 0.2) ? dice_uniform(d, 7.8e4, 9.5e4) : dice_uniform(d, 9.7e4, 1.025e5);
  site->humidity = dice_uniform(d, 0.2, 0.8);
  site->supply_v = 230.0 * (1.0 + dice_normal(d, 0.015));
  if (dice_chance(d, 0.5)) t->m.motor_synchronous_rev_s *= 1.0 + dice_normal(d, 0.002); /* the mains' frequency */
  known->ambient_k = site->ambient_k + dice_normal(d, 1.2);
  known->barometric_pa = site->barometric_pa * (1.0 + dice_normal(d, 0.002));
  /* a pressure switch feels gauge pressure */
  t->m.cut_out_pa += site->barometric_pa - rating_pa;
  t->m.cut_in_pa += site->barometric_pa - rating_pa;
  nameplate->cut_out_pa = t->m.cut_out_pa;
  nameplate->cut_in_pa = t->m.cut_in_pa;
}
