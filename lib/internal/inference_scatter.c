/* SPDX-License-Identifier: MIT */
#include "internal/inference_scatter.h"

#include "internal/check.h"

#include <freeair/status.h>

#include <string.h>

enum { COLUMNS = FREEAIR__SCATTER_COLUMNS, MACHINES = FREEAIR__SCATTER_MACHINES };

static double up(double relative)
{
  return exp(relative);
}

/* One unknown of the machine, a standard deviation off; 0 where it has none. */
static int step_machine(int k, const freeair_inference_scatter *sd, freeair_machine *m)
{
  int two = m->stages == 2;
  double f;
  switch (k) {
    case 0: m->lp_clearance = fmin(m->lp_clearance * up(sd->clearance), 0.5); return 1;
    case 1: m->hp_clearance = fmin(m->hp_clearance * up(sd->clearance), 0.5); return two;
    case 2:
      f = up(-sd->valves);
      m->lp_suction_area_m2 = fmax(m->lp_suction_area_m2 * f, m->lp_suction_leak_m2);
      m->lp_discharge_area_m2 = fmax(m->lp_discharge_area_m2 * f, m->lp_discharge_leak_m2);
      return 1;
    case 3:
      f = up(-sd->valves);
      m->hp_suction_area_m2 = fmax(m->hp_suction_area_m2 * f, m->hp_suction_leak_m2);
      m->hp_discharge_area_m2 = fmax(m->hp_discharge_area_m2 * f, m->hp_discharge_leak_m2);
      return two;
    case 4:
      f = up(sd->valve_lift);
      m->lp_suction_lift_pa *= f;
      m->lp_discharge_lift_pa *= f;
      m->hp_suction_lift_pa *= f;
      m->hp_discharge_lift_pa *= f;
      return 1;
    case 5: m->heat_coefficient *= up(sd->wall_heat); return 1;
    case 6: m->intercooler_ua_w_k *= up(-sd->cooler_ua); return two;
    case 7: m->suction_ua_w_k *= up(sd->suction_heating); return 1;
    case 8: m->filter_area_m2 *= up(-sd->filter); return 1;
    case 9:
      m->lp_ring_area_m2 *= up(sd->rings);
      m->hp_ring_area_m2 *= up(sd->rings);
      return 1;
    default: m->phase_rad += sd->phase_rad; return two;
  }
}

/* Maps the base where it needs operating points of its own, and its machine
 * with each unknown a step off. */
static int32_t map_machines(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                            const freeair__scatter_base *base, int k, freeair__plant_walk *walk,
                            freeair__plant_map *map)
{
  const freeair__plant *plant = s->plant;
  freeair_machine m = plant->c.m;
  freeair_machine_site site = plant->c.site;
  int32_t status = FREEAIR_OK;
  if (k >= 0 && !step_machine(k, sd, &m)) return FREEAIR_ERR_UNSUPPORTED;
  for (int i = 0; i < base->n_faults && status >= 0; i++)
    status = freeair_fault_apply(&m, &site, base->fault[i], base->severity[i], &m, &site);
  if (status < 0) return status;
  status = freeair__plant_map_build(plant, &m, &site, 2, walk, map);
  if (status >= 0) freeair__plant_stretch(plant, map);
  return status;
}

/* Scales the flow, and everything with it, as speed does. */
static void at_speed(freeair__plant_map *map, double factor)
{
  for (int i = 0; i < FREEAIR__PLANT_POINTS; i++) {
    map->q[i][FREEAIR__PLANT_MASS] *= factor;
    map->q[i][FREEAIR__PLANT_ENTHALPY] *= factor;
    map->q[i][FREEAIR__PLANT_POWER] *= factor;
    map->q[i][FREEAIR__PLANT_SPEED] *= factor;
  }
}

static void scale_flow(const freeair__plant *plant, double bias, double slope, freeair__plant_map *map)
{
  double pa = plant->c.site.barometric_pa;
  for (int i = 0; i < FREEAIR__PLANT_POINTS; i++) {
    double root = plant->root_low + plant->root_step * i;
    double f = exp(bias + slope * ((root * root - pa) / (plant->c.m.cut_out_pa - pa) - 0.5));
    map->q[i][FREEAIR__PLANT_MASS] *= f;
    map->q[i][FREEAIR__PLANT_ENTHALPY] *= f;
  }
}

enum { SYSTEMS = 9 };

/* One unknown of drive, model, receiver or gauge; returns the share of it that
 * the rating sees. */
static double step_system(const freeair__symptoms *s, const freeair_inference_scatter *sd, int k, freeair__condition *c)
{
  const freeair__plant *plant = s->plant;
  double draw_down_s = s->draw_down_s;
  switch (k) {
    case 0: at_speed(&c->map, up(sd->motor)); return 1.0;
    case 1:
      at_speed(&c->map, up(sd->drive));
      c->motor_ratio /= up(sd->drive);
      return 1.0;
    case 2: scale_flow(plant, sd->delivery, 0.0, &c->map); return 1.0;
    case 3: scale_flow(plant, 0.0, sd->delivery_slope, &c->map); return 1.0;
    case 4: c->system.volume *= up(sd->receiver); return 0.0;
    case 5:
      c->system.gas_ua *= up(sd->receiver_ua);
      c->system.wall_ua *= up(sd->receiver_ua);
      break;
    case 6: c->system.wall_j_k *= up(sd->receiver_wall); break;
    case 7: draw_down_s *= up(sd->draw_down); break;
    default: c->gauge_pa += sd->gauge * (plant->c.m.cut_out_pa - plant->c.site.barometric_pa); return 0.0;
  }
  freeair__symptoms_draw_down(plant, &c->system, draw_down_s, &c->warm_k, &c->wall_k);
  return 0.0;
}

/* Errors that readings of a kind share, whatever the machine. */
static void step_meters(const freeair__symptoms *s, const freeair_inference_scatter *sd, const double *y,
                        freeair__scatter *of)
{
  const freeair__plant *plant = s->plant;
  double pa = plant->c.site.barometric_pa;
  for (int k = 0; k < 6 && of->n < COLUMNS; k++) {
    double *by = of->by[of->n++];
    for (int i = 0; i < s->n; i++) {
      const freeair__symptom *q = &s->symptom[i];
      int32_t r = q->reading;
      double x = (q->to_p - pa) / (plant->c.m.cut_out_pa - pa) - 0.5;
      double p = q->reference * exp(y[i]);
      double gauge = r == FREEAIR_EVIDENCE_INTERSTAGE ? fmax(p - pa, 0.0) / p : 0.0;
      int warm = r == FREEAIR_EVIDENCE_LP_DISCHARGE || r == FREEAIR_EVIDENCE_HP_DISCHARGE;
      by[i] = 0.0;
      if (k == 0) by[i] = sd->interstage * gauge;
      if (k == 1) by[i] = sd->interstage * gauge * x;
      if (k == 2 && (warm || r == FREEAIR_EVIDENCE_INTERCOOLER_OUTLET)) by[i] = 0.5 * sd->temperature_k;
      if (k == 3 && r == FREEAIR_EVIDENCE_LP_DISCHARGE) by[i] = sd->temperature_k;
      if (k == 4 && r == FREEAIR_EVIDENCE_HP_DISCHARGE) by[i] = sd->temperature_k;
      if (k == 5 && r == FREEAIR_EVIDENCE_POWER) by[i] = sd->motor_efficiency;
    }
  }
}

static double rated_mass(const freeair__symptoms *s, const freeair__plant_map *map)
{
  double rated = fmin(s->plant->c.m.rated_pa, s->plant->c.m.cut_out_pa);
  return fmax(freeair__plant_at(s->plant, map, FREEAIR__PLANT_MASS, rated), 1e-12);
}

/* One more column, of what a condition predicts. */
static void put(const freeair__symptoms *s, const freeair__condition *c, const double *y, freeair__scatter *of)
{
  if (of->n == COLUMNS) return;
  double z[FREEAIR__SYMPTOMS];
  double *by = of->by[of->n++];
  freeair__symptoms_predict(s, c, z);
  for (int i = 0; i < s->n; i++) {
    double gain = freeair__symptoms_gain(s, i, y[i]);
    by[i] = s->symptom[i].kind == FREEAIR__SYMPTOM_TABLE || !(gain > 0.1) ? 0.0 : fmax(fmin((z[i] - y[i]) / gain, 200.0), -200.0);
  }
}

/* The rating, met within its tolerance, takes away what it would contradict. */
static void rate(const freeair__symptoms *s, const freeair__scatter_sound *sound, freeair__scatter *of)
{
  double with[FREEAIR__SYMPTOMS] = {0.0};
  for (int k = 0; k < of->n; k++)
    for (int i = 0; i < s->n; i++) with[i] += of->by[k][i] * sound->rating[k];
  for (int k = 0; k < of->n; k++)
    for (int i = 0; i < s->n; i++) of->by[k][i] -= sound->rating_root * sound->rating[k] * with[i];
}

int32_t freeair__scatter_start(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                               freeair__scatter_sound *sound)
{
  freeair__scatter_base base = {.n_faults = 0};
  const freeair__plant_map *plain = &s->plant->sound;
  freeair__plant_walk walk = s->plant->walk;
  freeair__symptoms_condition(s, &base.condition);
  memset(sound->rating, 0, sizeof sound->rating);
  sound->of.n = sound->n_maps = 0;
  sound->rating_root = 0.0;
  for (int k = 0; k < MACHINES; k++) {
    int32_t status = map_machines(s, sd, &base, k, &walk, &sound->map[sound->n_maps]);
    if (status == FREEAIR_ERR_UNSUPPORTED) continue;
    if (status < 0) return status;
    freeair__condition c = base.condition;
    c.map = sound->map[sound->n_maps++];
    sound->rating[sound->of.n] = log(rated_mass(s, &c.map) / rated_mass(s, plain));
    put(s, &c, s->sound, &sound->of);
  }
  for (int k = 0; k < SYSTEMS; k++) {
    freeair__condition c = base.condition;
    double seen = step_system(s, sd, k, &c);
    sound->rating[sound->of.n] = seen * log(rated_mass(s, &c.map) / rated_mass(s, plain));
    put(s, &c, s->sound, &sound->of);
  }
  step_meters(s, sd, s->sound, &sound->of);
  if (!freeair__given(s->plant->c.m.rated_delivery_m3_s)) return FREEAIR_OK;
  double square = 0.0;
  for (int k = 0; k < sound->of.n; k++) square += sound->rating[k] * sound->rating[k];
  /* the root of 1 - r r' / (r' r + u^2) is 1 - root r r' */
  if (square > 0.0) sound->rating_root = (1.0 - sqrt(1.0 - square / (square + sd->rating * sd->rating))) / square;
  rate(s, sound, &sound->of);
  return FREEAIR_OK;
}

int32_t freeair__scatter_of(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                            const freeair__scatter_sound *sound, const freeair__scatter_base *base,
                            freeair__scatter *of)
{
  const freeair__plant_map *plain = &s->plant->sound;
  freeair__plant_walk walk = s->plant->walk;
  freeair__condition about = base->condition;
  double y[FREEAIR__SYMPTOMS];
  of->n = 0;
  if (base->n_faults > 0) {
    int32_t status = map_machines(s, sd, base, -1, &walk, &about.map);
    if (status < 0) return status;
  }
  freeair__symptoms_predict(s, &about, y);
  int at = 0;
  for (int k = 0; k < MACHINES; k++) {
    freeair_machine m = s->plant->c.m;
    if (!step_machine(k, sd, &m)) continue;
    freeair__condition c = about;
    if (base->n_faults > 0) {
      int32_t status = map_machines(s, sd, base, k, &walk, &c.map);
      if (status < 0) return status;
    } else {
      for (int i = 0; i < FREEAIR__PLANT_POINTS; i++)
        for (int q = 0; q < FREEAIR__PLANT_QUANTITIES; q++) c.map.q[i][q] *= sound->map[at].q[i][q] / plain->q[i][q];
    }
    at++;
    put(s, &c, y, of);
  }
  for (int k = 0; k < SYSTEMS; k++) {
    freeair__condition c = about;
    step_system(s, sd, k, &c);
    put(s, &c, y, of);
  }
  step_meters(s, sd, y, of);
  rate(s, sound, of);
  return FREEAIR_OK;
}
