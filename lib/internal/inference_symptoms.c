/* SPDX-License-Identifier: MIT */
#include "internal/inference_symptoms.h"

#include "internal/array.h"
#include "internal/check.h"
#include "internal/receiver_run.h"

#include <freeair/status.h>

#include <string.h>

/* Rates are compared as -ln(share of the sound rate + this), so that a machine
 * that levels off is far away, not infinitely far. */
static const double rate_floor = 0.03;

/* Leaks of a sound system, as shares of the delivery. */
static const double leak_open_mean = 0.02;
static const double leak_open_sd = 0.02;
static const double leak_isolated_sd = 0.005;

static double of_share(double share)
{
  return -log(share + rate_floor);
}

double freeair__symptoms_gain(const freeair__symptoms *s, int i, double y)
{
  int32_t kind = s->symptom[i].kind;
  if (kind != FREEAIR__SYMPTOM_DELIVERY && kind != FREEAIR__SYMPTOM_EMPTY && kind != FREEAIR__SYMPTOM_CUTIN) return 1.0;
  double both = exp(-y);
  return fmax(both - rate_floor, 0.0) / both * (1.0 + rate_floor);
}

/* ---- prediction ---- */

static double free_air(const freeair__plant *plant, double mass)
{
  return mass * plant->c.gas_r * plant->c.site.ambient_k / plant->c.site.barometric_pa;
}

/* True pressure of a reading: the gauge errs in proportion. */
static double true_p(const freeair__plant *plant, const freeair__condition *c, double p)
{
  double pa = plant->c.site.barometric_pa;
  return pa + (p - pa) * (1.0 - c->gauge_pa / (plant->c.m.cut_out_pa - pa));
}

/* Rising list of the pressures at which the run from empty is timed. */
static int timed(const freeair__symptoms *s, double *p)
{
  int n = 1;
  p[0] = s->from_p;
  for (int i = 0; i < s->n; i++) {
    const freeair__symptom *y = &s->symptom[i];
    if (y->kind != FREEAIR__SYMPTOM_EMPTY && y->kind != FREEAIR__SYMPTOM_DELIVERY) continue;
    const double ends[] = {y->from_p, y->to_p};
    for (int e = 0; e < 2; e++) {
      int at = 0;
      while (at < n && p[at] < ends[e]) at++;
      if ((at < n && !(p[at] > ends[e])) || n == FREEAIR__PLANT_TIMES) continue;
      for (int k = n; k > at; k--) p[k] = p[k - 1];
      p[at] = ends[e];
      n++;
    }
  }
  return n;
}

static double time_at(const double *p, const double *t, int n, double at)
{
  for (int i = 0; i < n; i++)
    if (!(p[i] < at)) return t[i];
  return INFINITY;
}

void freeair__symptoms_predict(const freeair__symptoms *s, const freeair__condition *c, double *y)
{
  const freeair__plant *plant = s->plant;
  double pa = plant->c.site.barometric_pa;
  double ta = plant->c.site.ambient_k;
  double read[FREEAIR__PLANT_TIMES];
  double p[FREEAIR__PLANT_TIMES];
  double t[FREEAIR__PLANT_TIMES];
  double gained = 0.0;
  int n = timed(s, read);
  for (int i = 0; i < n; i++) p[i] = true_p(plant, c, read[i]);
  if (n > 1)
    freeair__plant_run(plant, &c->map, &c->system, p[0] * c->system.volume / (plant->c.gas_r * ta), ta, p, n, t,
                       &gained);
  for (int i = 0; i < s->n; i++) {
    const freeair__symptom *q = &s->symptom[i];
    double at = true_p(plant, c, q->to_p);
    double value;
    switch (q->kind) {
      case FREEAIR__SYMPTOM_DELIVERY: {
        double time = time_at(read, t, n, q->to_p);
        y[i] = of_share(isfinite(time) ? free_air(plant, gained) / time / q->reference : 0.0);
        break;
      }
      case FREEAIR__SYMPTOM_EMPTY: {
        double time = time_at(read, t, n, q->to_p) - (q->from_p > s->from_p ? time_at(read, t, n, q->from_p) : 0.0);
        y[i] = of_share(isfinite(time) && time > 0.0 ? q->reference / time : 0.0);
        break;
      }
      case FREEAIR__SYMPTOM_CUTIN: {
        double ends[2] = {true_p(plant, c, q->from_p), at};
        double times[2];
        freeair__plant_run(plant, &c->map, &c->system, ends[0] * c->system.volume / (plant->c.gas_r * c->warm_k),
                           c->wall_k, ends, 2, times, &gained);
        y[i] = of_share(isfinite(times[1]) ? q->reference / times[1] : 0.0);
        break;
      }
      case FREEAIR__SYMPTOM_LEVEL:
        y[i] = freeair__plant_net(plant, &c->map, &c->system, at) / q->reference;
        break;
      case FREEAIR__SYMPTOM_RATIO:
        value = freeair__plant_at(plant, &c->map, q->quantity, at);
        y[i] = log(fmax(value, 1e-3 * q->reference) / q->reference);
        break;
      case FREEAIR__SYMPTOM_DIFFERENCE:
        y[i] = freeair__plant_at(plant, &c->map, q->quantity, at) - q->reference;
        break;
      case FREEAIR__SYMPTOM_MOTOR:
        y[i] = log(freeair__plant_at(plant, &c->map, FREEAIR__PLANT_SPEED, at) * c->motor_ratio / q->reference);
        break;
      case FREEAIR__SYMPTOM_FILTER:
        y[i] = (pa - freeair__plant_at(plant, &c->map, FREEAIR__PLANT_PLENUM, at) - q->reference) / pa;
        break;
      default: y[i] = 0.0; break;
    }
  }
}

/* ---- the list ---- */

static freeair__symptom *add(freeair__symptoms *s, int32_t reading, int32_t kind)
{
  /* a place is kept free, so that a list too long loses its last entries only */
  freeair__symptom *y = &s->symptom[s->n < FREEAIR__SYMPTOMS - 1 ? s->n++ : s->n];
  memset(y, 0, sizeof *y);
  y->reading = reading;
  y->kind = kind;
  return y;
}

static void taken(const freeair_evidence_readings *found, int32_t reading, double *value, double *u)
{
  freeair_evidence_readings_get(found, reading, value, u);
}

static double usual(int32_t reading)
{
  double u;
  double none;
  int32_t scale;
  freeair_likelihood_spread(reading, &u, &none, &none, &none, &none, &scale);
  return u;
}

/* Time of the sound machine between two pressures of the run from empty, or of
 * the run from cut-in. */
static double sound_time(const freeair__symptoms *s, const freeair__condition *c, int cut_in, double from_p,
                         double to_p, double *gained)
{
  const freeair__plant *plant = s->plant;
  double p[3] = {cut_in ? from_p : s->from_p, from_p, to_p};
  double t[3];
  double warm = cut_in ? c->warm_k : plant->c.site.ambient_k;
  double wall = cut_in ? c->wall_k : plant->c.site.ambient_k;
  for (int i = 0; i < 3; i++) p[i] = true_p(plant, c, p[i]);
  freeair__plant_run(plant, &c->map, &c->system, p[0] * c->system.volume / (plant->c.gas_r * warm), wall, p, 3, t,
                     gained);
  return t[2] - t[1];
}

static void add_rate(freeair__symptoms *s, const freeair__condition *sound, int32_t reading, int32_t kind,
                     double from_p, double to_p, double time, double relative)
{
  double gained;
  double reference = sound_time(s, sound, kind == FREEAIR__SYMPTOM_CUTIN, from_p, to_p, &gained);
  if (!isfinite(reference) || !(reference > 0.0)) return;
  freeair__symptom *y = add(s, reading, kind);
  y->from_p = from_p;
  y->to_p = to_p;
  y->reference = reference;
  double share = reference / time;
  y->found = of_share(share);
  y->noise = relative * share / (share + rate_floor);
  y->form = 0.15;
  y->wide = 0.35;
}

/* The log in segments of equal rise; only what lies in order counts. */
static void add_log(const freeair__symptom_input *in, const freeair__condition *sound, freeair__symptoms *s)
{
  if (in->n_log == 0) return;
  double top = s->from_p;
  for (size_t i = 0; i < in->n_log; i++) top = fmax(top, in->log_p_pa[i]);
  top = fmin(top, s->plant->c.m.cut_out_pa * 1.02);
  double rise = (top - s->from_p) / FREEAIR__SYMPTOM_SEGMENTS;
  double u_p = freeair__or(in->visit->u_log_pa, 0.003 * (s->plant->c.m.cut_out_pa - s->plant->c.site.barometric_pa));
  double u_t = freeair__or(in->visit->u_log_s, 0.5);
  double last_p = s->from_p;
  double last_t = 0.0;
  for (size_t i = 0; i < in->n_log; i++) {
    double p = in->log_p_pa[i];
    double t = in->log_t_s[i];
    if (!(p >= last_p + 0.95 * rise) || !(t > last_t) || p > top) continue;
    double relative = hypot(1.4 * u_t / (t - last_t), 1.4 * u_p / (p - last_p));
    add_rate(s, sound, FREEAIR_EVIDENCE_DELIVERY, FREEAIR__SYMPTOM_EMPTY, last_p, p, t - last_t, relative);
    last_p = p;
    last_t = t;
  }
}

static void add_test(const freeair__symptom_input *in, const freeair__condition *sound, freeair__symptoms *s)
{
  const freeair__plant *plant = s->plant;
  double value;
  double u;
  double gained;
  double top = plant->c.m.cut_out_pa;
  taken(in->found, FREEAIR_EVIDENCE_DELIVERY, &value, &u);
  if (freeair__given(value)) {
    double time = sound_time(s, sound, 0, s->from_p, top, &gained);
    freeair__symptom *y = add(s, FREEAIR_EVIDENCE_DELIVERY, FREEAIR__SYMPTOM_DELIVERY);
    y->from_p = s->from_p;
    y->to_p = top;
    y->reference = free_air(plant, gained) / time;
    double share = value / y->reference;
    y->found = of_share(share);
    y->noise = freeair__or(u / value, usual(FREEAIR_EVIDENCE_DELIVERY)) * share / (share + rate_floor);
    y->form = 0.15;
    y->wide = 0.35;
  }
  add_log(in, sound, s);
  taken(in->found, FREEAIR_EVIDENCE_TIME_FROM_EMPTY, &value, &u);
  if (freeair__given(value))
    add_rate(s, sound, FREEAIR_EVIDENCE_TIME_FROM_EMPTY, FREEAIR__SYMPTOM_EMPTY, s->from_p, top, value,
             freeair__or(u / value, usual(FREEAIR_EVIDENCE_TIME_FROM_EMPTY)));
  taken(in->found, FREEAIR_EVIDENCE_TIME_FROM_CUTIN, &value, &u);
  if (freeair__given(value))
    add_rate(s, sound, FREEAIR_EVIDENCE_TIME_FROM_CUTIN, FREEAIR__SYMPTOM_CUTIN, plant->c.m.cut_in_pa, top, value,
             freeair__or(u / value, usual(FREEAIR_EVIDENCE_TIME_FROM_CUTIN)));
  taken(in->found, FREEAIR_EVIDENCE_LEVEL_OFF, &value, &u);
  if (freeair__given(value)) {
    freeair__symptom *y = add(s, FREEAIR_EVIDENCE_LEVEL_OFF, FREEAIR__SYMPTOM_LEVEL);
    double pa = plant->c.site.barometric_pa;
    y->to_p = fmin(fmax(value, 1.01 * pa), 2.0 * top);
    y->reference = freeair__plant_at(plant, &plant->sound, FREEAIR__PLANT_MASS, y->to_p);
    /* delivery falls by about its own size over the pressure above ambient */
    y->noise = hypot(0.04, freeair__or(u, 0.02 * (y->to_p - pa)) / (y->to_p - pa));
    y->form = 0.22;
    y->wide = 0.5;
  }
}

static void add_quantity(freeair__symptoms *s, int32_t reading, int32_t kind, int quantity, double at, double value,
                         double u, double form, double wide)
{
  freeair__symptom *y = add(s, reading, kind);
  const freeair__plant *plant = s->plant;
  y->quantity = quantity;
  y->to_p = at;
  y->reference = freeair__plant_at(plant, &plant->sound, quantity, at);
  y->found = kind == FREEAIR__SYMPTOM_RATIO ? log(value / y->reference) : value - y->reference;
  y->noise = kind == FREEAIR__SYMPTOM_RATIO ? freeair__or(u / value, usual(reading)) : freeair__or(u, usual(reading));
  y->form = form;
  y->wide = wide;
}

static void add_points(const freeair__symptom_input *in, freeair__symptoms *s)
{
  const freeair__plant *plant = s->plant;
  double at = freeair__or(in->visit->receiver_pa, plant->c.m.cut_out_pa);
  int two = plant->c.m.stages == 2;
  double value;
  double u;
  taken(in->found, FREEAIR_EVIDENCE_INTERSTAGE, &value, &u);
  if (two && freeair__given(value))
    add_quantity(s, FREEAIR_EVIDENCE_INTERSTAGE, FREEAIR__SYMPTOM_RATIO, FREEAIR__PLANT_INTERSTAGE, at, value, u, 0.22,
                 0.35);
  for (size_t i = 0; two && i < in->n_interstage && i < FREEAIR__SYMPTOM_INTERSTAGE; i++)
    add_quantity(s, FREEAIR_EVIDENCE_INTERSTAGE, FREEAIR__SYMPTOM_RATIO, FREEAIR__PLANT_INTERSTAGE,
                 in->interstage_at_pa[i], in->interstage_pa[i], NAN, 0.22, 0.35);
  static const struct {
    int32_t reading;
    int quantity;
    int second;
    double form;
    double wide;
  } warm[] = {{FREEAIR_EVIDENCE_LP_DISCHARGE, FREEAIR__PLANT_LP_K, 0, 0.4, 40.0},
              {FREEAIR_EVIDENCE_HP_DISCHARGE, FREEAIR__PLANT_HP_K, 1, 0.4, 40.0},
              {FREEAIR_EVIDENCE_INTERCOOLER_OUTLET, FREEAIR__PLANT_COOLER_K, 1, 0.4, 25.0}};
  for (size_t i = 0; i < FREEAIR__COUNT(warm); i++) {
    taken(in->found, warm[i].reading, &value, &u);
    if (freeair__given(value) && (two || !warm[i].second))
      add_quantity(s, warm[i].reading, FREEAIR__SYMPTOM_DIFFERENCE, warm[i].quantity, at, value, u, warm[i].form,
                   warm[i].wide);
  }
  taken(in->found, FREEAIR_EVIDENCE_MOTOR_SPEED, &value, &u);
  if (freeair__given(value)) {
    add_quantity(s, FREEAIR_EVIDENCE_MOTOR_SPEED, FREEAIR__SYMPTOM_RATIO, FREEAIR__PLANT_SPEED, at, value, u, 0.05,
                 0.2);
    freeair__symptom *y = &s->symptom[s->n - 1];
    y->kind = FREEAIR__SYMPTOM_MOTOR;
    y->reference /= plant->c.m.pulley_ratio * (1.0 - plant->c.m.belt_slip);
    y->found = log(value / y->reference);
  }
  taken(in->found, FREEAIR_EVIDENCE_PUMP_SPEED, &value, &u);
  if (freeair__given(value))
    add_quantity(s, FREEAIR_EVIDENCE_PUMP_SPEED, FREEAIR__SYMPTOM_RATIO, FREEAIR__PLANT_SPEED, at, value, u, 0.05, 0.2);
  taken(in->found, FREEAIR_EVIDENCE_POWER, &value, &u);
  if (freeair__given(value)) /* as power of the motor shaft */
    add_quantity(s, FREEAIR_EVIDENCE_POWER, FREEAIR__SYMPTOM_RATIO, FREEAIR__PLANT_POWER, at,
                 value * s->motor_efficiency, u * s->motor_efficiency, 0.2, 0.3);
  taken(in->found, FREEAIR_EVIDENCE_FILTER_DROP, &value, &u);
  if (freeair__given(value)) {
    double pa = plant->c.site.barometric_pa;
    freeair__symptom *y = add(s, FREEAIR_EVIDENCE_FILTER_DROP, FREEAIR__SYMPTOM_FILTER);
    y->to_p = at;
    y->reference = fmax(pa - freeair__plant_at(plant, &plant->sound, FREEAIR__PLANT_PLENUM, at), 0.0);
    y->found = (value - y->reference) / pa;
    y->noise = hypot(freeair__or(u / pa, usual(FREEAIR_EVIDENCE_FILTER_DROP)), 0.3 * y->reference / pa);
    y->form = 0.4;
    y->wide = 0.1;
  }
}

/* Readings that move as the practice table says, about values that the
 * description knows. */
static void add_table(const freeair__symptom_input *in, freeair__symptoms *s)
{
  const freeair_machine *m = &s->plant->c.m;
  double pa = s->plant->c.site.barometric_pa;
  double gained;
  freeair__condition sound;
  freeair__symptoms_condition(s, &sound);
  double time = sound_time(s, &sound, 0, s->from_p, m->cut_out_pa, &gained);
  double delivery = free_air(s->plant, gained) / time;
  if (!isfinite(delivery) || !(delivery > 0.0))
    delivery = free_air(s->plant, s->plant->sound.q[FREEAIR__PLANT_POINTS - 1][FREEAIR__PLANT_MASS]);
  /* a leak that the description has is expected to be found */
  double leak = free_air(s->plant, freeair__plant_orifice(s->plant, m->downstream_leak_m2, 0.9 * m->cut_out_pa,
                                                          s->plant->c.site.ambient_k));
  double back = free_air(s->plant, freeair__plant_orifice(s->plant, m->check_valve_leak_m2, 0.9 * m->cut_out_pa,
                                                          s->plant->c.site.ambient_k));
  const struct {
    int32_t reading;
    double expected;
    double reference;
  } entries[] = {
      {FREEAIR_EVIDENCE_LEAK_ISOLATED, back, delivery},
      {FREEAIR_EVIDENCE_LEAK_OPEN, leak > 0.0 ? leak + back : NAN, delivery},
      {FREEAIR_EVIDENCE_GAUGE_DIFFERENCE, m->gauge_error_pa, m->cut_out_pa - pa},
      {FREEAIR_EVIDENCE_CUTOUT, m->cut_out_pa, NAN},
      {FREEAIR_EVIDENCE_RELIEF_OPENING, m->stages == 2 ? m->relief_set_pa : NAN, NAN},
      {FREEAIR_EVIDENCE_WATER, m->receiver_water_m3, m->receiver_m3},
      {FREEAIR_EVIDENCE_SUPPLY_RUNNING, NAN, NAN},
      {FREEAIR_EVIDENCE_SUPPLY_STARTING, NAN, NAN},
      {FREEAIR_EVIDENCE_MOTOR_CURRENT, NAN, NAN},
      {FREEAIR_EVIDENCE_RUN_CAPACITANCE, NAN, NAN},
      {FREEAIR_EVIDENCE_START_CAPACITANCE, NAN, NAN},
      {FREEAIR_EVIDENCE_BELT_DEFLECTION, NAN, NAN},
      {FREEAIR_EVIDENCE_DUTY, NAN, 1.0},
  };
  for (size_t i = 0; i < FREEAIR__COUNT(entries); i++) {
    double value;
    double u;
    double none;
    double wide;
    double usual_expected;
    int32_t scale;
    double deviation;
    double spread;
    int32_t r = entries[i].reading;
    taken(in->found, r, &value, &u);
    if (!freeair__given(value)) continue;
    freeair_likelihood_spread(r, &none, &none, &usual_expected, &wide, &none, &scale);
    double expected = entries[i].expected;
    double u_expected = NAN;
    if (r == FREEAIR_EVIDENCE_DUTY || scale == FREEAIR_LIKELIHOOD_LOG) {
      double given;
      taken(in->expected, r, &given, &u_expected);
      expected = freeair__or(expected, given);
    }
    double reference = entries[i].reference;
    if (!freeair__given(expected) && scale == FREEAIR_LIKELIHOOD_SHARE) expected = usual_expected * reference;
    if (r == FREEAIR_EVIDENCE_LEAK_OPEN) {
      if (!(leak > 0.0)) expected = leak_open_mean * reference;
      u_expected = leak_open_sd * reference;
    }
    if (r == FREEAIR_EVIDENCE_LEAK_ISOLATED) u_expected = leak_isolated_sd * reference;
    if (freeair_likelihood_deviation(r, value, u, expected, u_expected, reference, &deviation, &spread) < 0) continue;
    freeair__symptom *y = add(s, r, FREEAIR__SYMPTOM_TABLE);
    y->reference = expected;
    y->to_p = reference;
    y->found = deviation;
    y->noise = spread;
    y->wide = wide;
  }
}

/* Of the errors of form of two symptoms of a law, how much they share at one
 * pressure, and over which part of the range that fades. */
static const double form_shared = 0.9;
static const double form_reach = 0.7;

static int law_of(const freeair__symptom *y)
{
  if (y->kind == FREEAIR__SYMPTOM_DELIVERY || y->kind == FREEAIR__SYMPTOM_EMPTY || y->kind == FREEAIR__SYMPTOM_CUTIN)
    return 1;
  return y->reading == FREEAIR_EVIDENCE_INTERSTAGE ? 2 : 0;
}

static double middle_of(const freeair__symptom *y)
{
  return law_of(y) == 1 ? 0.5 * (y->from_p + y->to_p) : y->to_p;
}

static void find_blocks(freeair__symptoms *s)
{
  /* in the order of the readings, those of one reading together */
  for (int i = 1; i < s->n; i++) {
    freeair__symptom y = s->symptom[i];
    int at = i;
    for (; at > 0 && s->symptom[at - 1].reading > y.reading; at--) s->symptom[at] = s->symptom[at - 1];
    s->symptom[at] = y;
  }
  s->blocks.n = 0;
  for (int i = 0; i < s->n; i++)
    if (i == 0 || s->symptom[i].reading != s->symptom[i - 1].reading) s->blocks.first[s->blocks.n++] = i;
  s->blocks.first[s->blocks.n] = s->n;
}

/* What a law gets wrong about a fault it gets wrong alike at neighbouring
 * pressures: rates share one such error, interstage pressures another. */
static void find_shared(freeair__symptoms *s)
{
  double pa = s->plant->c.site.barometric_pa;
  for (int i = 0; i < s->n; i++)
    for (int j = 0; j < i; j++) {
      const freeair__symptom *a = &s->symptom[i];
      const freeair__symptom *b = &s->symptom[j];
      s->shared[i][j] = 0.0f;
      if (law_of(a) == 0 || law_of(a) != law_of(b)) continue;
      double apart = fabs(middle_of(a) - middle_of(b)) / (s->plant->c.m.cut_out_pa - pa);
      s->shared[i][j] = (float)(form_shared * exp(-apart / form_reach));
    }
}

/* ---- the sound machine ---- */

void freeair__symptoms_draw_down(const freeair__plant *plant, const freeair__plant_system *s, double duration,
                                 double *gas_k, double *wall_k)
{
  freeair__cycle c = plant->c;
  c.m.receiver_gas_ua_w_k = s->gas_ua;
  c.m.receiver_wall_ua_w_k = s->wall_ua;
  c.m.receiver_wall_j_k = s->wall_j_k;
  freeair__receiver r = {.c = &c, .map = NULL, .volume = s->volume, .leak_area = 0.0, .demand_kg_s = 0.0};
  freeair__receiver_state state;
  freeair__receiver_draw_down(&r, c.m.cut_out_pa, c.m.cut_in_pa, duration, &state);
  *gas_k = state.energy / (state.mass * c.cv);
  *wall_k = state.wall;
}

void freeair__symptoms_condition(const freeair__symptoms *s, freeair__condition *sound)
{
  const freeair__plant *plant = s->plant;
  sound->map = plant->sound;
  freeair__plant_system_of(plant, &sound->system);
  sound->gauge_pa = plant->c.m.gauge_error_pa;
  sound->motor_ratio = 1.0 / (plant->c.m.pulley_ratio * (1.0 - plant->c.m.belt_slip));
  freeair__symptoms_draw_down(plant, &sound->system, s->draw_down_s, &sound->warm_k, &sound->wall_k);
}

/* A log that has the start itself says from where. */
static double start_of_log(const freeair__symptom_input *in, double ambient_pa)
{
  for (size_t i = 0; i < in->n_log; i++)
    if (!(in->log_t_s[i] > 0.0)) return fmax(in->log_p_pa[i], ambient_pa);
  return ambient_pa;
}

int32_t freeair__symptoms_start(const freeair__plant *plant, const freeair__symptom_input *in, freeair__symptoms *s)
{
  s->plant = plant;
  s->n = 0;
  s->from_p = freeair__or(in->visit->from_pa, start_of_log(in, plant->c.site.barometric_pa));
  s->draw_down_s = freeair__or(in->visit->draw_down_s, 60.0);
  s->motor_efficiency = freeair__or(in->visit->motor_efficiency, 0.83);
  if (!(s->from_p < plant->c.m.cut_in_pa)) return FREEAIR_ERR_DOMAIN;
  freeair__condition sound;
  freeair__symptoms_condition(s, &sound);
  add_test(in, &sound, s);
  add_points(in, s);
  add_table(in, s);
  find_blocks(s);
  find_shared(s);
  freeair__symptoms_predict(s, &sound, s->sound);
  return FREEAIR_OK;
}
