/* SPDX-License-Identifier: MIT */
#include "internal/inference_hypotheses.h"

#include "internal/array.h"
#include "internal/check.h"

#include <freeair/status.h>

#include <string.h>

enum {
  FILTER,
  LP_SUCTION,
  LP_DISCHARGE,
  HP_SUCTION,
  HP_DISCHARGE,
  BETWEEN,
  LP_OUTSIDE, /* also the rings of a single cylinder: the same opening, into the crankcase */
  HP_OUTSIDE,
  INTERSTAGE,
  COOLER,
  RELIEF,
  SPEED,
  LP_RINGS, /* of every cylinder of a stage of several */
  ALL_SUCTION, /* valves of every cylinder of such a first stage */
  ALL_DISCHARGE,
  N_FAMILIES
};

_Static_assert((int)N_FAMILIES <= (int)FREEAIR__FAMILIES, "room for every family");

/* share of the prior that knows severities alone */
static const double even = 0.1;

/* share of a belt's slip that is not there when it is not loaded */
static const double slip_with_load = 0.4;

enum { SEVERITIES = FREEAIR__PLANT_NODES - 1 };

/* Severities at which each is mapped, up from where it is first felt; every how
 * many pressures, where it acts at all pressures alike. */
static const struct {
  int32_t fault;
  int32_t skip;
  double bend;
  double severity[SEVERITIES]; /* 0: no more */
} families[N_FAMILIES] = {
    {FREEAIR_FAULT_INTAKE_FILTER, 2, 0.0, {0.45, 0.7, 0.85, 1.0}},
    {FREEAIR_FAULT_LP_SUCTION_VALVE, 1, 0.04, {0.08, 0.16, 0.3, 0.6, 1.0}},
    {FREEAIR_FAULT_LP_DISCHARGE_VALVE, 1, 0.04, {0.08, 0.16, 0.3, 0.6, 1.0}},
    {FREEAIR_FAULT_HP_SUCTION_VALVE, 1, 1.0, {0.12, 0.21, 0.32, 0.5, 1.0}},
    {FREEAIR_FAULT_HP_DISCHARGE_VALVE, 1, 1.0, {0.12, 0.21, 0.32, 0.5, 1.0}},
    {FREEAIR_FAULT_GASKET_BETWEEN, 1, 1.0, {0.2, 0.4, 0.65, 1.0}},
    {FREEAIR_FAULT_LP_GASKET_OUTSIDE, 1, 1.0, {0.25, 0.5, 0.75, 1.0}},
    {FREEAIR_FAULT_HP_GASKET_OUTSIDE, 1, 1.0, {0.25, 0.45, 0.7, 1.0}},
    {FREEAIR_FAULT_INTERSTAGE_LEAK, 1, 1.0, {0.25, 0.5, 0.75, 1.0}},
    {FREEAIR_FAULT_INTERCOOLER_FOULED, 2, 0.0, {0.5, 1.0, 0.0, 0.0}},
    {FREEAIR_FAULT_RELIEF_WEAK, 1, 0.0, {0.25, 0.45, 0.7, 1.0}},
    {FREEAIR_FAULT_BELT_SLIP, 2, 0.0, {0.4, 1.0, 0.0, 0.0}},
    {FREEAIR_FAULT_LP_RINGS, 1, 1.0, {0.3, 0.55, 0.8, 1.0}},
    {FREEAIR_FAULT_LP_SUCTION_VALVE, 1, 0.04, {0.08, 0.16, 0.3, 0.6, 1.0}},
    {FREEAIR_FAULT_LP_DISCHARGE_VALVE, 1, 0.04, {0.08, 0.16, 0.3, 0.6, 1.0}},
};

static int severities(int family)
{
  int n = 0;
  while (n < SEVERITIES && families[family].severity[n] > 0.0) n++;
  return n;
}

/* ---- the ways ---- */

static freeair__way *add(freeair__hypotheses *h, int32_t cause, int32_t kind, int32_t fault, double share, int first)
{
  freeair__way *w = &h->way[h->n_ways < FREEAIR__WAYS - 1 ? h->n_ways++ : h->n_ways];
  double cost;
  int32_t two_sided;
  *w = (freeair__way){.cause = cause, .kind = kind, .fault = fault, .share = share, .first = first, .second = -1,
                      .sign = 1.0, .seen = 1.0};
  freeair_likelihood_size(cause, &w->typical, &cost, &two_sided);
  return w;
}

static void add_leaks(freeair__hypotheses *h, const freeair_diagnosis_subject *subject)
{
  const int turns = subject->service_valve_closed == FREEAIR_EVIDENCE_NOT_CHECKED ? 2 : 1;
  for (int turn = 0; turn < turns; turn++) {
    double seen = freeair__practice_seen(subject, turn);
    const int32_t cause = FREEAIR_EVIDENCE_DOWNSTREAM;
    add(h, cause, FREEAIR__WAY_LEAK, FREEAIR_FAULT_DOWNSTREAM_LEAK, 0.65 / turns, -1)->seen = seen;
  }
  /* nobody need use air while a test runs, though the service valve be open */
  const double idle = subject->service_valve_closed == FREEAIR_EVIDENCE_YES ? 0.0 : 0.1;
  const int32_t cause = FREEAIR_EVIDENCE_DOWNSTREAM;
  add(h, cause, FREEAIR__WAY_DEMAND, FREEAIR_FAULT_DEMAND, 0.35 - idle, -1)->seen = freeair__practice_seen(subject, 0);
  if (idle > 0.0) add(h, cause, FREEAIR__WAY_DEMAND, FREEAIR_FAULT_DEMAND, idle, -1)->seen = 0.1;
}

static void add_ways(freeair__hypotheses *h, const freeair_diagnosis_subject *subject, int32_t cause)
{
  const freeair_machine *m = &h->symptoms->plant->c.m;
  int two = m->stages == 2;
  int rings = m->lp_cylinders > 1 ? LP_RINGS : LP_OUTSIDE;
  static const struct {
    int32_t cause;
    int32_t fault;
    int family;
  } plain[] = {
      {FREEAIR_EVIDENCE_INTAKE_FILTER, FREEAIR_FAULT_INTAKE_FILTER, FILTER},
      {FREEAIR_EVIDENCE_LP_SUCTION_VALVE, FREEAIR_FAULT_LP_SUCTION_VALVE, LP_SUCTION},
      {FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE, FREEAIR_FAULT_LP_DISCHARGE_VALVE, LP_DISCHARGE},
      {FREEAIR_EVIDENCE_HP_SUCTION_VALVE, FREEAIR_FAULT_HP_SUCTION_VALVE, HP_SUCTION},
      {FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE, FREEAIR_FAULT_HP_DISCHARGE_VALVE, HP_DISCHARGE},
      {FREEAIR_EVIDENCE_GASKET_BETWEEN, FREEAIR_FAULT_GASKET_BETWEEN, BETWEEN},
      {FREEAIR_EVIDENCE_INTERSTAGE_LEAK, FREEAIR_FAULT_INTERSTAGE_LEAK, INTERSTAGE},
      {FREEAIR_EVIDENCE_RELIEF_WEAK, FREEAIR_FAULT_RELIEF_WEAK, RELIEF},
      {FREEAIR_EVIDENCE_LOW_VOLTAGE, FREEAIR_FAULT_LOW_VOLTAGE, SPEED},
      {FREEAIR_EVIDENCE_RUN_CAPACITOR, FREEAIR_FAULT_RUN_CAPACITOR, SPEED},
      {FREEAIR_EVIDENCE_MOTOR, FREEAIR_FAULT_NONE, SPEED},
  };
  const double each = 0.75; /* of several cylinders, one has the worn valve */
  for (size_t i = 0; i < FREEAIR__COUNT(plain); i++)
    if (plain[i].cause == cause) {
      int all = plain[i].family == LP_SUCTION ? ALL_SUCTION : plain[i].family == LP_DISCHARGE ? ALL_DISCHARGE : -1;
      if (m->lp_cylinders == 1) all = -1;
      add(h, cause, FREEAIR__WAY_FAMILY, plain[i].fault, all < 0 ? 1.0 : each, plain[i].family);
      if (all >= 0) add(h, cause, FREEAIR__WAY_FAMILY, plain[i].fault, 1.0 - each, all);
      return;
    }
  switch (cause) {
    case FREEAIR_EVIDENCE_GASKET_OUTSIDE:
      add(h, cause, FREEAIR__WAY_FAMILY, FREEAIR_FAULT_LP_GASKET_OUTSIDE, two ? 0.5 : 1.0, LP_OUTSIDE);
      if (two) add(h, cause, FREEAIR__WAY_FAMILY, FREEAIR_FAULT_HP_GASKET_OUTSIDE, 0.5, HP_OUTSIDE);
      break;
    case FREEAIR_EVIDENCE_PISTON_RINGS:
      add(h, cause, FREEAIR__WAY_FAMILY, FREEAIR_FAULT_LP_RINGS, two ? 0.25 : 1.0, rings);
      if (!two) break;
      add(h, cause, FREEAIR__WAY_FAMILY, FREEAIR_FAULT_HP_RINGS, 0.25, HP_OUTSIDE);
      add(h, cause, FREEAIR__WAY_FAMILY, FREEAIR_FAULT_LP_RINGS, 0.5, rings)->second = HP_OUTSIDE;
      break;
    case FREEAIR_EVIDENCE_INTERCOOLER_FOULED:
      add(h, cause, FREEAIR__WAY_FAMILY, FREEAIR_FAULT_INTERCOOLER_FOULED, 1.0, COOLER)->typical = 0.0;
      break;
    case FREEAIR_EVIDENCE_BELT_SLIP:
      add(h, cause, FREEAIR__WAY_BELT, FREEAIR_FAULT_BELT_SLIP, 1.0, SPEED);
      break;
    case FREEAIR_EVIDENCE_WRONG_PULLEY:
      add(h, cause, FREEAIR__WAY_BELT, FREEAIR_FAULT_PULLEY, 1.0, SPEED);
      break;
    case FREEAIR_EVIDENCE_UNLOADER_LEAK:
      add(h, cause, FREEAIR__WAY_UNLOADER, FREEAIR_FAULT_UNLOADER_LEAK, 1.0, -1);
      break;
    case FREEAIR_EVIDENCE_DOWNSTREAM: add_leaks(h, subject); break;
    case FREEAIR_EVIDENCE_RECEIVER_WATER:
      add(h, cause, FREEAIR__WAY_WATER, FREEAIR_FAULT_RECEIVER_WATER, 1.0, -1);
      break;
    case FREEAIR_EVIDENCE_GAUGE_OR_SWITCH:
      add(h, cause, FREEAIR__WAY_GAUGE, FREEAIR_FAULT_GAUGE, 0.5, -1);
      add(h, cause, FREEAIR__WAY_GAUGE, FREEAIR_FAULT_GAUGE, 0.5, -1)->sign = -1.0;
      break;
    case FREEAIR_EVIDENCE_CHECK_VALVE:
      add(h, cause, FREEAIR__WAY_TABLE, FREEAIR_FAULT_CHECK_VALVE, 1.0, -1);
      break;
    default: add(h, cause, FREEAIR__WAY_TABLE, FREEAIR_FAULT_NONE, 1.0, -1); break;
  }
}

/* The smallest share of the sound delivery that any time leaves room for. */
static double least_share(const freeair__symptoms *s)
{
  double least = 1.0;
  int timed = 0;
  for (int i = 0; i < s->n; i++) {
    const freeair__symptom *y = &s->symptom[i];
    if (y->kind == FREEAIR__SYMPTOM_LEVEL) return 0.0;
    if (y->kind != FREEAIR__SYMPTOM_EMPTY && y->kind != FREEAIR__SYMPTOM_CUTIN && y->kind != FREEAIR__SYMPTOM_DELIVERY)
      continue;
    timed = 1;
    least = fmin(least, exp(-y->found) - 0.03);
  }
  return timed ? fmax(0.7 * least, 0.0) : 0.0;
}

void freeair__hypotheses_start(const freeair__symptoms *symptoms, const freeair_diagnosis_subject *subject,
                               const freeair__priors *prior, freeair__hypotheses *h)
{
  h->symptoms = symptoms;
  h->n_ways = 0;
  h->least_share = least_share(symptoms);
  freeair__symptoms_condition(symptoms, &h->sound);
  for (int f = 0; f < N_FAMILIES; f++) h->needed[f] = h->finished[f] = h->stopped[f] = 0;
  for (int32_t c = FREEAIR__FIRST_FAULT; c < FREEAIR__CAUSES; c++)
    if (prior->alone[c] > 0.0) add_ways(h, subject, c);
  for (int w = 0; w < h->n_ways; w++) {
    const int both[] = {h->way[w].first, h->way[w].second};
    for (int i = 0; i < 2; i++) {
      int f = both[i];
      if (f < 0 || h->needed[f]) continue;
      h->needed[f] = 1;
      freeair__plant_family_start(symptoms->plant, families[f].bend, &h->family[f]);
    }
  }
}

int32_t freeair__hypotheses_grow(freeair__hypotheses *h, int family, int coarse, freeair__plant_walk *walk)
{
  const freeair__plant *plant = h->symptoms->plant;
  freeair__plant_family *f = &h->family[family];
  if (f->n == 1) *walk = plant->walk;
  int32_t leaking = family == ALL_SUCTION || family == ALL_DISCHARGE ? plant->c.m.lp_cylinders : 0;
  double severity = families[family].severity[f->n - 1];
  int32_t status = freeair__plant_family_grow(plant, leaking, families[family].fault, severity,
                                               coarse ? 2 : families[family].skip, walk, f);
  if (status < 0) {
    h->finished[family] = 1;
    h->stopped[family] = f->n <= severities(family);
    /* what cannot be computed that far is known as far as it was */
    return f->n > 1 ? FREEAIR_OK : status;
  }
  if (f->n > severities(family)) h->finished[family] = 1;
  else if (freeair__plant_share(plant, &f->at[f->n - 1]) < h->least_share) freeair__hypotheses_stop(h, family);
  return FREEAIR_OK;
}

void freeair__hypotheses_stop(freeair__hypotheses *h, int family)
{
  h->finished[family] = h->stopped[family] = 1;
}

/* ---- conditions ---- */

/* Flow lost at each pressure over the sound delivery there, for a square metre
 * of opening, or for a kilogram a second that is drawn. */
static void lost_at(const freeair__hypotheses *h, int32_t kind, double lost[FREEAIR__PLANT_POINTS])
{
  const freeair__plant *plant = h->symptoms->plant;
  for (int i = 0; i < FREEAIR__PLANT_POINTS; i++) {
    double root = plant->root_low + plant->root_step * i;
    double t = kind == FREEAIR__WAY_UNLOADER ? plant->sound.q[i][FREEAIR__PLANT_LINE_K] : plant->c.site.ambient_k;
    double flow = kind == FREEAIR__WAY_DEMAND ? 1.0 : freeair__plant_orifice(plant, 1.0, root * root, t);
    lost[i] = flow / plant->sound.q[i][FREEAIR__PLANT_MASS];
  }
}

/* How much opening or draught leaves the share exp(-size) of the delivery, as
 * freeair__plant_share has it: what is gone at one pressure cannot go twice. */
static double amount_of(const freeair__hypotheses *h, int32_t kind, double size)
{
  double lost[FREEAIR__PLANT_POINTS];
  freeair__plant_map map = h->symptoms->plant->sound;
  lost_at(h, kind, lost);
  double lo = 0.0;
  double hi = 0.0;
  /* at ambient pressure nothing leaks, but for rounding */
  if (kind != FREEAIR__WAY_DEMAND) lost[0] = 0.0;
  for (int i = 1; i < FREEAIR__PLANT_POINTS; i++) hi = fmax(hi, 1.0 / lost[i]);
  for (int k = 0; k < 40; k++) {
    double x = 0.5 * (lo + hi);
    for (int i = 0; i < FREEAIR__PLANT_POINTS; i++)
      map.q[i][FREEAIR__PLANT_MASS] = h->symptoms->plant->sound.q[i][FREEAIR__PLANT_MASS] * (1.0 - x * lost[i]);
    if (-log(freeair__plant_share(h->symptoms->plant, &map)) < size) lo = x;
    else hi = x;
  }
  return 0.5 * (lo + hi);
}

static void add_map(const freeair__plant *plant, const freeair__plant_map *other, freeair__plant_map *map)
{
  for (int i = 0; i < FREEAIR__PLANT_POINTS; i++)
    for (int k = 0; k < FREEAIR__PLANT_QUANTITIES; k++) map->q[i][k] += other->q[i][k] - plant->sound.q[i][k];
}

/* Positions follow the severities of a family, not its sizes: what a valve that
 * hangs fully open costs is no more than one half open, and yet it shows. */
static double abscissa_of(const freeair__plant_family *f, double position)
{
  return f->abscissa[f->n - 1] * position * position;
}

/* Severity of a belt slip that slows the pump so much: delivery goes with speed. */
static double slip_of(double size)
{
  return -expm1(-size) / 0.4;
}

void freeair__hypotheses_condition(const freeair__hypotheses *h, const freeair__way *way, double position,
                                   double *size, double *severity, freeair__condition *c)
{
  const freeair__plant *plant = h->symptoms->plant;
  const freeair_machine *m = &plant->c.m;
  double displacement_m3 = m->lp_cylinders * plant->c.cylinder[0].swept * m->speed_rev_s;
  *c = h->sound;
  *severity = NAN;
  *size = 10.0 * way->typical * position * position;
  switch (way->kind) {
    case FREEAIR__WAY_FAMILY:
    case FREEAIR__WAY_BELT: {
      const freeair__plant_family *f = &h->family[way->first];
      double s = way->first == SPEED ? fmin(slip_of(*size), f->abscissa[f->n - 1])
                                     : freeair__plant_family_severity(f, abscissa_of(f, position));
      freeair__plant_family_at(f, s, &c->map);
      if (way->second >= 0) {
        freeair__plant_map other;
        freeair__plant_family_at(&h->family[way->second], s, &other);
        add_map(plant, &other, &c->map);
      }
      if (way->first != SPEED) *size = fmax(-log(freeair__plant_share(plant, &c->map)), 0.0);
      /* the belt family is one of pump speed: only for a belt does the motor keep its own */
      if (way->kind == FREEAIR__WAY_BELT) c->motor_ratio /= 1.0 - 0.4 * s;
      *severity = s;
      /* twice the area of the gasket's law opens at the severity of worn rings */
      if ((way->fault == FREEAIR_FAULT_LP_RINGS && way->first != LP_RINGS) || way->fault == FREEAIR_FAULT_HP_RINGS)
        *severity = fmin(1.0, 1.41421356 * s);
      if (way->cause == FREEAIR_EVIDENCE_LOW_VOLTAGE || way->cause == FREEAIR_EVIDENCE_RUN_CAPACITOR ||
          way->cause == FREEAIR_EVIDENCE_MOTOR)
        *severity = NAN;
      break;
    }
    case FREEAIR__WAY_LEAK: {
      double area = amount_of(h, way->kind, *size);
      c->system.leak_area += way->seen * area;
      double at_full = displacement_m3 * 101325.0 / (0.6847 * 290.08 * m->cut_out_pa);
      *severity = fmin(1.0, sqrt(area / at_full));
      break;
    }
    case FREEAIR__WAY_DEMAND: {
      double flow = amount_of(h, way->kind, *size);
      c->system.demand_kg_s += way->seen * flow;
      double free_m3_kg = plant->c.gas_r * plant->c.site.ambient_k / plant->c.site.barometric_pa;
      *severity = fmin(1.0, flow * free_m3_kg / displacement_m3);
      break;
    }
    case FREEAIR__WAY_UNLOADER: {
      double area = amount_of(h, way->kind, *size);
      c->system.unloader_area += area;
      *severity = fmin(1.0, sqrt(area / (0.1 * m->check_valve_area_m2)));
      break;
    }
    case FREEAIR__WAY_WATER: {
      c->system.volume *= exp(-*size);
      *severity = fmin(1.0, -expm1(-*size) / 0.8);
      break;
    }
    case FREEAIR__WAY_GAUGE:
      c->gauge_pa += way->sign * fmin(*size, 0.5) * (m->cut_out_pa - plant->c.site.barometric_pa);
      *severity = fmin(1.0, *size / 0.3);
      break;
    default:
      if (way->cause == FREEAIR_EVIDENCE_CHECK_VALVE)
        *severity = fmin(1.0, sqrt(amount_of(h, FREEAIR__WAY_LEAK, *size) / m->check_valve_area_m2));
      break;
  }
}

void freeair__hypotheses_worst(const freeair__hypotheses *h, const freeair__way *way, freeair__condition *c)
{
  const freeair__plant_family *f = &h->family[way->first];
  *c = h->sound;
  c->map = f->at[f->n - 1];
  if (way->second >= 0) {
    const freeair__plant_family *other = &h->family[way->second];
    add_map(h->symptoms->plant, &other->at[other->n - 1], &c->map);
  }
  if (way->kind == FREEAIR__WAY_BELT)
    c->motor_ratio /= 1.0 - 0.4 * freeair__plant_family_severity(f, f->abscissa[f->n - 1]);
}

/* Share of the sizes below one: of the density y exp(-y/typical)/typical^2. */
static double below(double size, double typical)
{
  double x = size / typical;
  return -expm1(-x) - x * exp(-x);
}

void freeair__hypotheses_node(const freeair__hypotheses *h, const freeair__way *way, int k, freeair__node *node,
                              freeair__condition *condition)
{
  double severity;
  double lower;
  double upper;
  freeair__condition edge;
  if (!(way->typical > 0.0) && way->first < 0) { /* all or nothing */
    freeair__hypotheses_condition(h, way, 0.0, &node->size, &severity, condition);
    node->weight = node->counted = k == 0 ? 1.0 : 0.0;
    return;
  }
  if (way->first >= 0 && way->first != SPEED && way->typical > 0.0) {
    freeair__hypotheses_condition(h, way, (double)k / FREEAIR__SIZES, &lower, &severity, &edge);
    freeair__hypotheses_condition(h, way, (k + 1.0) / FREEAIR__SIZES, &upper, &severity, &edge);
    node->weight = (1.0 - even) * fmax(below(upper, way->typical) - below(lower, way->typical), 0.0) +
                   even * (2.0 * k + 1.0) / (FREEAIR__SIZES * FREEAIR__SIZES);
    node->counted = node->weight;
    /* what was not computed would not fit, and counts all the same */
    if (k == FREEAIR__SIZES - 1 && h->stopped[way->first])
      node->counted += (1.0 - even) * (1.0 - below(upper, way->typical));
  } else {
    lower = (double)k / FREEAIR__SIZES;
    upper = (k + 1.0) / FREEAIR__SIZES;
    node->weight = way->typical > 0.0 ? below(10.0 * upper * upper, 1.0) - below(10.0 * lower * lower, 1.0)
                                      : upper * upper - lower * lower;
    node->counted = node->weight;
    double middle = (k + 0.5) / FREEAIR__SIZES;
    if (way->first == SPEED) {
      const freeair__plant_family *f = &h->family[SPEED];
      if (slip_of(10.0 * way->typical * middle * middle) > f->abscissa[f->n - 1]) {
        node->weight = 0.0;
        if (!h->stopped[SPEED]) node->counted = 0.0;
      }
    }
  }
  freeair__hypotheses_condition(h, way, (k + 0.5) / FREEAIR__SIZES, &node->size, &severity, condition);
}

void freeair__hypotheses_open(const freeair__hypotheses *h, const freeair__way *way, double size, double clearance,
                              const freeair__condition *c, float lost[FREEAIR__PLANT_POINTS])
{
  const freeair__plant *plant = h->symptoms->plant;
  freeair__plant_clearance(plant, &c->map, clearance, lost);
  if (way->fault != FREEAIR_FAULT_BELT_SLIP) return;
  double pa = plant->c.site.barometric_pa;
  for (int i = 0; i < FREEAIR__PLANT_POINTS; i++) {
    double root = plant->root_low + plant->root_step * i;
    lost[i] = (float)(-slip_with_load * size * fmax(1.0 - (root * root - pa) / (plant->c.m.cut_out_pa - pa), 0.0));
  }
}

void freeair__hypotheses_table(const freeair__hypotheses *h, const freeair__way *way, double size, double *y,
                               double *variance)
{
  const freeair__symptoms *s = h->symptoms;
  for (int i = 0; i < s->n; i++) {
    if (s->symptom[i].kind != FREEAIR__SYMPTOM_TABLE) continue;
    double slope;
    double limit;
    double spread;
    int32_t basis;
    int32_t r = s->symptom[i].reading;
    freeair_likelihood_reading(way->cause, r, &slope, &limit, &spread, &basis);
    if (way->cause == FREEAIR_EVIDENCE_DOWNSTREAM && r == FREEAIR_EVIDENCE_LEAK_OPEN) {
      /* a leak shows there whole; demand, when nobody draws air, not at all */
      slope = way->kind == FREEAIR__WAY_LEAK ? 1.0 : 0.0;
      spread = 0.35;
    }
    double shift = way->sign * copysign(fmin(fabs(slope * size), limit), slope);
    y[i] += shift;
    variance[i] += spread * spread * shift * shift;
  }
}
