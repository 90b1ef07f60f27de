/* SPDX-License-Identifier: MIT */
#include "internal/inference_scatter.h"

#include "internal/check.h"

#include <freeair/status.h>

enum { COLUMNS = 32, MACHINES = 11, SYSTEMS = 9, METERS = 7 };

/* What one standard deviation of each unknown moves. */
typedef struct columns {
  int n;
  double by[COLUMNS][FREEAIR__SYMPTOMS];
  double rating[COLUMNS]; /* of ln delivery at the rated pressure */
} columns;

/* of the uncertainty of the temperatures, in that behind the cooler */
static const double cooler_share = 0.6;

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
static void step_meters(const freeair__symptoms *s, const freeair_inference_scatter *sd, columns *to)
{
  const freeair__plant *plant = s->plant;
  double pa = plant->c.site.barometric_pa;
  for (int k = 0; k < METERS && to->n < COLUMNS; k++) {
    double *by = to->by[to->n];
    to->rating[to->n++] = 0.0;
    for (int i = 0; i < s->n; i++) {
      const freeair__symptom *y = &s->symptom[i];
      int32_t r = y->reading;
      double x = (y->to_p - pa) / (plant->c.m.cut_out_pa - pa) - 0.5;
      double gauge = y->reference > 0.0 ? fmax(y->reference - pa, 0.0) / y->reference : 0.0;
      int warm = r == FREEAIR_EVIDENCE_LP_DISCHARGE || r == FREEAIR_EVIDENCE_HP_DISCHARGE;
      by[i] = 0.0;
      if (k == 0 && r == FREEAIR_EVIDENCE_INTERSTAGE) by[i] = sd->interstage * gauge;
      if (k == 1 && r == FREEAIR_EVIDENCE_INTERSTAGE) by[i] = sd->interstage * gauge * x;
      if (k == 2 && (warm || r == FREEAIR_EVIDENCE_INTERCOOLER_OUTLET)) by[i] = 0.5 * sd->temperature_k;
      if (k == 3 && r == FREEAIR_EVIDENCE_LP_DISCHARGE) by[i] = sd->temperature_k;
      if (k == 4 && r == FREEAIR_EVIDENCE_HP_DISCHARGE) by[i] = sd->temperature_k;
      if (k == 5 && r == FREEAIR_EVIDENCE_POWER) by[i] = sd->motor_efficiency;
      if (k == 6 && r == FREEAIR_EVIDENCE_INTERCOOLER_OUTLET) by[i] = cooler_share * sd->temperature_k;
    }
  }
}

/* One more column, of what a condition predicts; seen is the share that the rating sees. */
static void put(const freeair__symptoms *s, const freeair__condition *c, double seen, columns *to)
{
  if (to->n == COLUMNS) return;
  double y[FREEAIR__SYMPTOMS];
  freeair__symptoms_predict(s, c, y);
  for (int i = 0; i < s->n; i++)
    to->by[to->n][i] = s->symptom[i].kind == FREEAIR__SYMPTOM_TABLE ? 0.0 : y[i] - s->sound[i];
  double rated = fmin(s->plant->c.m.rated_pa, s->plant->c.m.cut_out_pa);
  double sound = freeair__plant_at(s->plant, &s->plant->sound, FREEAIR__PLANT_MASS, rated);
  double mass = fmax(freeair__plant_at(s->plant, &c->map, FREEAIR__PLANT_MASS, rated), 1e-12);
  to->rating[to->n++] = seen * log(mass / sound);
}

/* Steps the unknowns of the machine, which need operating points of their own. */
static int32_t step_machines(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                             const freeair__condition *sound, columns *to)
{
  freeair__plant_walk walk = s->plant->walk;
  for (int k = 0; k < MACHINES; k++) {
    freeair_machine m = s->plant->c.m;
    freeair__condition c = *sound;
    if (!step_machine(k, sd, &m)) continue;
    int32_t status = freeair__plant_map_build(s->plant, &m, &s->plant->c.site, 2, &walk, &c.map);
    if (status < 0) return status;
    freeair__plant_stretch(s->plant, &c.map);
    put(s, &c, 1.0, to);
  }
  return FREEAIR_OK;
}

int32_t freeair__scatter_covariance(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                                    freeair__covariance *of)
{
  columns to = {.n = 0};
  freeair__condition sound;
  freeair__symptoms_condition(s, &sound);
  int32_t status = step_machines(s, sd, &sound, &to);
  if (status < 0) return status;
  for (int k = 0; k < SYSTEMS; k++) {
    freeair__condition c = sound;
    double seen = step_system(s, sd, k, &c);
    put(s, &c, seen, &to);
  }
  step_meters(s, sd, &to);
  for (int i = 0; i < s->n; i++)
    for (int j = 0; j <= i; j++) {
      of->c[i][j] = 0.0;
      for (int k = 0; k < to.n; k++) of->c[i][j] += to.by[k][i] * to.by[k][j];
    }
  if (!freeair__given(s->plant->c.m.rated_delivery_m3_s)) return FREEAIR_OK;
  /* the rating, met within its tolerance, takes away what it would contradict */
  double variance = sd->rating * sd->rating;
  double with[FREEAIR__SYMPTOMS] = {0.0};
  for (int k = 0; k < to.n; k++) {
    variance += to.rating[k] * to.rating[k];
    for (int i = 0; i < s->n; i++) with[i] += to.by[k][i] * to.rating[k];
  }
  for (int i = 0; i < s->n; i++)
    for (int j = 0; j <= i && variance > 0.0; j++) of->c[i][j] -= with[i] * with[j] / variance;
  return FREEAIR_OK;
}
