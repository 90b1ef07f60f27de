/* SPDX-License-Identifier: MIT */
#include "visit.h"

#include <math.h>
#include <string.h>

static const double tau = 6.28318530717958647693;

/* ---- random numbers ---- */

typedef struct dice {
  uint64_t state;
  double width; /* factor on what is not known of a unit */
} dice;

static uint64_t roll(dice *d)
{
  uint64_t z = d->state += 0x9e3779b97f4a7c15u;
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
  return z ^ (z >> 31);
}

static double uniform(dice *d, double lo, double hi)
{
  return lo + (hi - lo) * ((double)(roll(d) >> 11) + 0.5) / 9007199254740992.0;
}

static double normal(dice *d, double sd)
{
  double r = sqrt(-2.0 * log(uniform(d, 0.0, 1.0)));
  return sd * r * cos(tau * uniform(d, 0.0, 1.0));
}

static double scatter(dice *d, double relative)
{
  return exp(normal(d, relative));
}

static double spread(dice *d, double relative)
{
  return scatter(d, relative * d->width);
}

static int chance(dice *d, double probability)
{
  return uniform(d, 0.0, 1.0) < probability;
}

/* ---- classes ---- */

static const struct {
  const char *name;
  double share;
  double least; /* severities that are met */
  double most;
} classes[N_CLASSES] = {
    {"healthy", 0.25, 0, 0},
    {"intake filter", 0.055, 0.45, 0.9},
    {"LP suction valve", 0.13, 0.07, 0.6},
    {"LP discharge valve", 0.045, 0.07, 0.6},
    {"HP suction valve", 0.035, 0.05, 0.45},
    {"HP discharge valve", 0.04, 0.05, 0.45},
    {"gasket between", 0.035, 0.2, 0.9},
    {"piston rings", 0.05, 0.15, 0.75},
    {"interstage leak", 0.035, 0.2, 0.8},
    {"check valve", 0.06, 0.03, 0.15},
    {"downstream", 0.11, 0.25, 0.75},
    {"unloader leak", 0.045, 0.2, 0.75},
    {"relief weak", 0.02, 0.25, 0.8},
    {"belt slip", 0.06, 0.12, 0.8},
    {"low motor speed", 0.03, 0.15, 0.8},
};

const char *visit_class_name(int which)
{
  return classes[which].name;
}

double visit_share(int which)
{
  return classes[which].share;
}

const char *visit_level_name(int level)
{
  static const char *const names[] = {"A two times", "B + log", "C + interstage", "D + temperatures, leaks, speeds",
                                      "E + power, observations"};
  return names[level];
}

int visit_class_of(int32_t cause)
{
  switch (cause) {
    case FREEAIR_EVIDENCE_HEALTHY: return CLASS_HEALTHY;
    case FREEAIR_EVIDENCE_INTAKE_FILTER: return CLASS_FILTER;
    case FREEAIR_EVIDENCE_LP_SUCTION_VALVE: return CLASS_LP_SUCTION;
    case FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE: return CLASS_LP_DISCHARGE;
    case FREEAIR_EVIDENCE_HP_SUCTION_VALVE: return CLASS_HP_SUCTION;
    case FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE: return CLASS_HP_DISCHARGE;
    case FREEAIR_EVIDENCE_GASKET_BETWEEN: return CLASS_GASKET;
    case FREEAIR_EVIDENCE_PISTON_RINGS: return CLASS_RINGS;
    case FREEAIR_EVIDENCE_INTERSTAGE_LEAK: return CLASS_INTERSTAGE_LEAK;
    case FREEAIR_EVIDENCE_CHECK_VALVE: return CLASS_CHECK_VALVE;
    case FREEAIR_EVIDENCE_DOWNSTREAM: return CLASS_DOWNSTREAM;
    case FREEAIR_EVIDENCE_UNLOADER_LEAK: return CLASS_UNLOADER;
    case FREEAIR_EVIDENCE_RELIEF_WEAK: return CLASS_RELIEF;
    case FREEAIR_EVIDENCE_BELT_SLIP:
    case FREEAIR_EVIDENCE_WRONG_PULLEY: return CLASS_BELT;
    case FREEAIR_EVIDENCE_LOW_VOLTAGE:
    case FREEAIR_EVIDENCE_RUN_CAPACITOR:
    case FREEAIR_EVIDENCE_MOTOR: return CLASS_MOTOR;
    default: return -1;
  }
}

/* ---- the true machine ---- */

/* The true machine, and what its laws do that the crank-angle model's do not:
 * smooth distortions of the results over the receiver pressure. */
typedef struct truth {
  freeair_machine m;
  freeair_machine_site site;
  double delivery_bias;
  double delivery_slope; /* over the way from ambient to cut-out */
  double interstage_bias;
  double interstage_slope;
  double lp_discharge_k;
  double hp_discharge_k;
  double motor_efficiency;
  double draw_down_s;
} truth;

static void describe(dice *d, int family, freeair_machine *m)
{
  freeair_machine_init(m, sizeof *m);
  m->stages = family == 2 ? 1 : 2;
  m->arrangement = family == 0 ? FREEAIR_MACHINE_V : FREEAIR_MACHINE_SIDE_BY_SIDE;
  m->lp_cylinders = family == 2 ? 2 : 1;
  m->lp_bore_m = uniform(d, 0.08, 0.13);
  m->lp_stroke_m = m->lp_bore_m * uniform(d, 0.6, 0.9);
  m->speed_rev_s = uniform(d, 9.0, 18.0);
  m->lp_clearance = uniform(d, 0.04, 0.07);
  if (family != 2) {
    m->hp_bore_m = m->lp_bore_m * uniform(d, 0.5, 0.6);
    m->hp_clearance = uniform(d, 0.05, 0.09);
  }
  m->cut_out_pa = family == 2 ? uniform(d, 8.6e5, 11.0e5) : uniform(d, 11.0e5, 14.0e5);
  m->cut_in_pa = m->cut_out_pa - uniform(d, 1.8e5, 2.8e5);
  double displacement = m->lp_cylinders * 0.125 * tau * m->lp_bore_m * m->lp_bore_m * m->lp_stroke_m * m->speed_rev_s;
  m->receiver_m3 = displacement * uniform(d, 14.0, 35.0);
  m->motor_synchronous_rev_s = chance(d, 0.5) ? 30.0 : 25.0;
}

/* Laws that nobody knows, the same for a whole make, and scatter from unit to unit. */
static void perturb_make(dice *d, freeair_machine *m)
{
  m->heat_coefficient *= spread(d, 0.35);
  m->heat_exponent += normal(d, 0.02 * d->width);
  double lift = spread(d, 0.5);
  m->lp_suction_lift_pa *= lift;
  m->lp_discharge_lift_pa *= lift * spread(d, 0.2);
  m->hp_suction_lift_pa *= lift * spread(d, 0.2);
  m->hp_discharge_lift_pa *= lift * spread(d, 0.2);
  m->intercooler_m3 *= spread(d, 0.35);
  m->line_m3 *= spread(d, 0.3);
  m->plenum_m3 *= spread(d, 0.3);
  m->phase_rad += normal(d, 0.2 * d->width);
  m->suction_ua_w_k *= spread(d, 0.35);
  m->intercooler_ua_w_k *= spread(d, 0.25);
  m->receiver_gas_ua_w_k *= spread(d, 0.35);
  m->receiver_wall_ua_w_k *= spread(d, 0.35);
  m->receiver_wall_j_k *= spread(d, 0.2);
  m->fmep_pa *= spread(d, 0.2);
  m->rod_ratio *= spread(d, 0.1);
}

static void perturb_unit(dice *d, freeair_machine *m)
{
  m->lp_clearance *= spread(d, 0.12);
  m->hp_clearance *= spread(d, 0.12);
  m->lp_suction_area_m2 *= spread(d, 0.1);
  m->lp_discharge_area_m2 *= spread(d, 0.1);
  m->hp_suction_area_m2 *= spread(d, 0.1);
  m->hp_discharge_area_m2 *= spread(d, 0.1);
  m->filter_area_m2 *= spread(d, 0.12);
  m->lp_ring_area_m2 *= spread(d, 0.4);
  m->hp_ring_area_m2 *= spread(d, 0.4);
  m->intercooler_ua_w_k *= spread(d, 0.1);
  m->receiver_m3 *= 1.0 + normal(d, 0.01 * d->width);
  m->relief_set_pa *= 1.0 + normal(d, 0.03 * d->width);
  m->motor_rated_slip *= spread(d, 0.15);
  double speed = 1.0 + normal(d, 0.006 * d->width);
  m->pulley_ratio *= speed;
  m->speed_rev_s *= speed;
  m->gauge_error_pa += normal(d, 0.005 * d->width) * (m->cut_out_pa - 1e5);
}

/* ---- faults ---- */

static int can_have(const freeair_machine *m, int which)
{
  switch (which) {
    case CLASS_HP_SUCTION:
    case CLASS_HP_DISCHARGE:
    case CLASS_INTERSTAGE_LEAK:
    case CLASS_RELIEF: return m->stages == 2;
    case CLASS_GASKET: return m->arrangement == FREEAIR_MACHINE_SIDE_BY_SIDE;
    default: return 1;
  }
}

static int pick_fault(dice *d, const freeair_machine *m, int but)
{
  double total = 0.0;
  for (int c = 1; c < N_CLASSES; c++)
    if (c != but && can_have(m, c)) total += classes[c].share;
  double at = uniform(d, 0.0, total);
  for (int c = 1; c < N_CLASSES; c++) {
    if (c == but || !can_have(m, c)) continue;
    at -= classes[c].share;
    if (at <= 0.0) return c;
  }
  return CLASS_FILTER;
}

static void break_it(truth *t, int32_t fault, double severity)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  if (freeair_fault_apply(&t->m, &t->site, fault, fmin(severity, 1.0), &m, &site) < 0) return;
  t->m = m;
  t->site = site;
}

static void apply_class(dice *d, int which, double severity, truth *t)
{
  freeair_machine *m = &t->m;
  switch (which) {
    case CLASS_FILTER: break_it(t, FREEAIR_FAULT_INTAKE_FILTER, severity); break;
    case CLASS_LP_SUCTION:
      break_it(t, FREEAIR_FAULT_LP_SUCTION_VALVE, severity);
      m->lp_suction_area_m2 = fmax(m->lp_suction_area_m2 * uniform(d, 0.85, 1.0), m->lp_suction_leak_m2);
      break;
    case CLASS_LP_DISCHARGE:
      break_it(t, FREEAIR_FAULT_LP_DISCHARGE_VALVE, severity);
      m->lp_discharge_area_m2 = fmax(m->lp_discharge_area_m2 * uniform(d, 0.85, 1.0), m->lp_discharge_leak_m2);
      break;
    case CLASS_HP_SUCTION:
      break_it(t, FREEAIR_FAULT_HP_SUCTION_VALVE, severity);
      m->hp_suction_area_m2 = fmax(m->hp_suction_area_m2 * uniform(d, 0.85, 1.0), m->hp_suction_leak_m2);
      break;
    case CLASS_HP_DISCHARGE:
      break_it(t, FREEAIR_FAULT_HP_DISCHARGE_VALVE, severity);
      m->hp_discharge_area_m2 = fmax(m->hp_discharge_area_m2 * uniform(d, 0.85, 1.0), m->hp_discharge_leak_m2);
      break;
    case CLASS_GASKET: break_it(t, FREEAIR_FAULT_GASKET_BETWEEN, severity); break;
    case CLASS_RINGS:
      break_it(t, FREEAIR_FAULT_LP_RINGS, severity * uniform(d, 0.6, 1.1));
      if (m->stages == 2) break_it(t, FREEAIR_FAULT_HP_RINGS, severity * uniform(d, 0.4, 1.1));
      break;
    case CLASS_INTERSTAGE_LEAK: break_it(t, FREEAIR_FAULT_INTERSTAGE_LEAK, severity); break;
    case CLASS_CHECK_VALVE: break_it(t, FREEAIR_FAULT_CHECK_VALVE, severity); break;
    case CLASS_DOWNSTREAM:
      if (chance(d, 0.75)) break_it(t, FREEAIR_FAULT_DOWNSTREAM_LEAK, severity);
      else break_it(t, FREEAIR_FAULT_DEMAND, severity * severity);
      break;
    case CLASS_UNLOADER: break_it(t, FREEAIR_FAULT_UNLOADER_LEAK, severity); break;
    case CLASS_RELIEF: break_it(t, FREEAIR_FAULT_RELIEF_WEAK, severity); break;
    case CLASS_BELT: break_it(t, FREEAIR_FAULT_BELT_SLIP, severity); break;
    case CLASS_MOTOR:
      if (chance(d, 0.4)) break_it(t, FREEAIR_FAULT_LOW_VOLTAGE, severity);
      else m->motor_synchronous_rev_s *= 1.0 - 0.2 * severity;
      break;
    default: break;
  }
}

/* ---- readings ---- */

/* Rarely a reading is simply wrong. */
static double misread(dice *d)
{
  return chance(d, 0.015) ? scatter(d, 0.25) : 1.0;
}

static int taken(dice *d)
{
  return chance(d, 0.92);
}

/* What a machine without its distortions would show, distorted: a delivery off
 * by so much makes times shorter by as much. */
static double distort_time(const truth *t, double time, double from_pa, double to_pa)
{
  double pa = t->site.barometric_pa;
  double middle = 0.5 * (from_pa + to_pa);
  double x = (middle - pa) / (t->m.cut_out_pa - pa) - 0.5;
  return time * exp(-t->delivery_bias - t->delivery_slope * x);
}

static int read_curve(dice *d, const truth *t, visit *v)
{
  const freeair_machine *m = &t->m;
  double pa = t->site.barometric_pa;
  double p[VISIT_LOG];
  double time[VISIT_LOG];
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  freeair_prediction_result result = FREEAIR_PREDICTION_RESULT_INIT;
  run.most_s = 14400.0;
  for (int i = 0; i < VISIT_LOG; i++) p[i] = pa + (m->cut_out_pa - pa) * (i + 1) / VISIT_LOG;
  int32_t status = freeair_prediction_times(m, &t->site, &run, &result, p, time, VISIT_LOG);
  if (status < 0) return 0;
  double before = 0.0;
  double sum = 0.0;
  double level = NAN;
  double gauge_noise = 0.002 * (m->cut_out_pa - pa);
  double wrong = misread(d);
  for (int i = 0; i < VISIT_LOG; i++) {
    if (!isfinite(time[i]) || time[i] > 6000.0) {
      level = i > 0 ? p[i - 1] : pa;
      break;
    }
    sum += distort_time(t, time[i] - before, i > 0 ? p[i - 1] : pa, p[i]);
    before = time[i];
    v->log_t_s[v->n_log] = sum + uniform(d, -0.5, 0.5);
    v->log_p_pa[v->n_log++] = p[i] + normal(d, gauge_noise);
  }
  if (isnan(level)) {
    if (taken(d)) v->readings.t_empty_to_cutout_s = (sum + uniform(d, -1.0, 1.0)) * scatter(d, 0.008) * wrong;
  } else {
    double found;
    if (freeair_prediction_level_off(m, &t->site, m->cut_out_pa, &found) < 0) return 0;
    if (!isfinite(found)) found = m->cut_out_pa;
    v->readings.p_level_off_pa = fmax(found + normal(d, 0.01) * (found - pa), pa + 1e3);
    return 1;
  }
  run.start = FREEAIR_PREDICTION_DRAWN_DOWN;
  run.from_pa = m->cut_in_pa;
  run.draw_down_s = t->draw_down_s;
  double again;
  status = freeair_prediction_times(m, &t->site, &run, &result, &m->cut_out_pa, &again, 1);
  if (status < 0) return 0;
  if (isfinite(again) && taken(d))
    v->readings.t_cutin_to_cutout_s =
        (distort_time(t, again, m->cut_in_pa, m->cut_out_pa) + uniform(d, -0.5, 0.5)) * scatter(d, 0.01) * misread(d);
  return 1;
}

/* No pump lives with hotter air, and no thermometer of the trade reads it. */
static const double hottest_k = 900.0;

static double mean_k(dice *d, double true_k, double bias_k)
{
  if (true_k > hottest_k) return NAN;
  return true_k + bias_k + normal(d, 4.0) + (chance(d, 0.015) ? normal(d, 40.0) : 0.0);
}

static int read_points(dice *d, const truth *t, visit *v)
{
  const freeair_machine *m = &t->m;
  double pa = t->site.barometric_pa;
  double top = m->cut_out_pa;
  if (!isnan(v->readings.p_level_off_pa)) top = fmax(0.97 * v->readings.p_level_off_pa, pa * 1.2);
  else top *= 0.97;
  v->receiver_pa = top;
  freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
  double gauge = scatter(d, 0.015);
  for (int i = 0; i < VISIT_INTERSTAGE && m->stages == 2; i++) {
    double at = pa + (top - pa) * (i + 2) / (VISIT_INTERSTAGE + 1);
    if (freeair_cycle_point(m, &t->site, at, NAN, 1e-3, &r) < 0) return 0;
    double distortion = exp(t->interstage_bias + t->interstage_slope * ((at - pa) / (m->cut_out_pa - pa) - 0.5));
    double p = pa + (r.interstage_mean_pa - pa) * distortion * gauge + normal(d, 2e3);
    if (!taken(d)) continue;
    v->interstage_at_pa[v->n_interstage] = at;
    v->interstage_pa[v->n_interstage++] = fmax(p * misread(d), 0.5 * pa);
  }
  if (freeair_cycle_point(m, &t->site, top, NAN, 1e-3, &r) < 0) return 0;
  freeair_evidence_readings *o = &v->readings;
  double meter = normal(d, 4.0);
  if (taken(d) && !isnan(r.lp_discharge_k))
    o->t_lp_discharge_k = mean_k(d, r.lp_discharge_k, t->lp_discharge_k + meter);
  if (m->stages == 2 && taken(d) && !isnan(r.hp_discharge_k))
    o->t_hp_discharge_k = mean_k(d, r.hp_discharge_k, t->hp_discharge_k + meter);
  if (m->stages == 2 && taken(d)) o->t_intercooler_out_k = mean_k(d, r.intercooler_k, meter);
  if (taken(d)) o->motor_speed_rev_s = r.motor_speed_rev_s * scatter(d, 0.002) * misread(d);
  if (taken(d)) o->pump_speed_rev_s = r.speed_rev_s * scatter(d, 0.003) * misread(d);
  if (taken(d)) o->power_w = r.motor_w / t->motor_efficiency * scatter(d, 0.02) * misread(d);
  return 1;
}

/* Leaks as free air, of the choked flow at some pressure below cut-out. */
static void read_leaks(dice *d, const truth *t, visit *v)
{
  const freeair_machine *m = &t->m;
  double pa = t->site.barometric_pa;
  double per_m2 = 0.6847 * 0.9 * m->cut_out_pa / sqrt(287.05 * t->site.ambient_k) * 287.05 * t->site.ambient_k / pa;
  double displacement =
      m->lp_cylinders * 0.125 * tau * m->lp_bore_m * m->lp_bore_m * m->lp_stroke_m * m->speed_rev_s;
  double check = m->check_valve_leak_m2 * per_m2;
  double system = m->downstream_leak_m2 * per_m2;
  double small = fabs(normal(d, 0.002)) * displacement;
  if (taken(d)) v->readings.leak_isolated_m3_s = fmax((check + small) * scatter(d, 0.08), 0.0);
  if (taken(d))
    v->readings.leak_open_m3_s =
        fmax((check + system + small + fabs(normal(d, 0.02)) * displacement) * scatter(d, 0.08), 0.0);
}

/* Observations by the practice table, with hits and false alarms of this
 * technician, and some plainly wrong. */
static void observe(dice *d, visit *v)
{
  static const int32_t asked[] = {
      FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, FREEAIR_EVIDENCE_CHIRPING_AT_HEADS, FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS,
      FREEAIR_EVIDENCE_BREATHER_BLOWS,     FREEAIR_EVIDENCE_OIL_IN_DRAIN,      FREEAIR_EVIDENCE_BELT_DUST,
      FREEAIR_EVIDENCE_BELT_SQUEALS,       FREEAIR_EVIDENCE_HISS_AT_SWITCH,    FREEAIR_EVIDENCE_UNLOADER_BLOWS_STOPPED,
      FREEAIR_EVIDENCE_LEAKS_HEARD,        FREEAIR_EVIDENCE_FILTER_DIRTY,      FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES,
  };
  static const int32_t cause_of[N_CLASSES] = {
      FREEAIR_EVIDENCE_HEALTHY,          FREEAIR_EVIDENCE_INTAKE_FILTER,       FREEAIR_EVIDENCE_LP_SUCTION_VALVE,
      FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE, FREEAIR_EVIDENCE_HP_SUCTION_VALVE,  FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE,
      FREEAIR_EVIDENCE_GASKET_BETWEEN,   FREEAIR_EVIDENCE_PISTON_RINGS,        FREEAIR_EVIDENCE_INTERSTAGE_LEAK,
      FREEAIR_EVIDENCE_CHECK_VALVE,      FREEAIR_EVIDENCE_DOWNSTREAM,          FREEAIR_EVIDENCE_UNLOADER_LEAK,
      FREEAIR_EVIDENCE_RELIEF_WEAK,      FREEAIR_EVIDENCE_BELT_SLIP,           FREEAIR_EVIDENCE_MOTOR};
  for (size_t i = 0; i < sizeof asked / sizeof asked[0]; i++) {
    int two_stage_only = asked[i] == FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS ||
                         asked[i] == FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES;
    if (two_stage_only && v->family == 2) continue;
    double yes = 0.0;
    double hit;
    double false_alarm;
    int32_t basis;
    for (int f = 0; f < (v->n_faults > 0 ? v->n_faults : 1); f++) {
      int32_t cause = cause_of[v->n_faults > 0 ? v->fault[f] : CLASS_HEALTHY];
      freeair_likelihood_observation(cause, asked[i], &hit, &false_alarm, &basis);
      yes = fmax(yes, hit > 0.15 ? hit * uniform(d, 0.75, 1.05) : hit * uniform(d, 0.5, 2.0));
    }
    int seen = chance(d, fmin(yes, 0.97));
    if (chance(d, 0.02)) seen = !seen;
    if (!chance(d, 0.7)) continue;
    v->observation[v->n_observations] = asked[i];
    v->answer[v->n_observations++] = seen ? FREEAIR_EVIDENCE_YES : FREEAIR_EVIDENCE_NO;
  }
}

/* ---- the visit ---- */

static double delivery_at(const truth *t, double share)
{
  freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
  double pa = t->site.barometric_pa;
  if (freeair_cycle_point(&t->m, &t->site, pa + share * (t->m.cut_out_pa - pa), NAN, 3e-3, &r) < 0) return NAN;
  double at = 0.3 + 0.7 * share;
  double leak = t->m.downstream_leak_m2 * 0.6847 * at * t->m.cut_out_pa / sqrt(287.05 * t->site.ambient_k) * 287.05 *
                t->site.ambient_k / pa;
  return r.delivery_m3_s - leak - t->m.demand_m3_s;
}

/* A fault of a size that is noticed: at least 5 % of the delivery, where it takes any. */
static int make_fault(dice *d, int which, truth *t, double *severity, double *lost)
{
  const truth sound = *t;
  double before = delivery_at(&sound, 0.7);
  for (int attempt = 0; attempt < 12; attempt++) {
    *t = sound;
    *severity = uniform(d, classes[which].least, classes[which].most);
    apply_class(d, which, *severity, t);
    if (which == CLASS_CHECK_VALVE) return 1;
    double after = delivery_at(t, 0.7);
    *lost = 1.0 - after / before;
    if (after < (which == CLASS_MOTOR ? 0.98 : 0.95) * before && delivery_at(t, 0.15) > 0.15 * before) return 1;
  }
  return 0;
}

int visit_make(uint64_t series, uint64_t n, double width, visit *v)
{
  dice d = {series * 0x2545f4914f6cdd1du + n * 0x9e6c63d0876a9a47u, width};
  for (int i = 0; i < 4; i++) roll(&d);
  memset(v, 0, sizeof *v);
  freeair_evidence_readings_init(&v->readings, sizeof v->readings);
  freeair_machine_site_init(&v->site, sizeof v->site);
  v->family = (int)(roll(&d) % 3);
  describe(&d, v->family, &v->nameplate);

  /* the make, and its rating by a test at the maker's site */
  truth t = {.m = FREEAIR_MACHINE_INIT, .site = FREEAIR_MACHINE_SITE_INIT};
  if (freeair_machine_complete(&v->nameplate, &t.m) < 0) return 0;
  perturb_make(&d, &t.m);
  t.delivery_bias = normal(&d, 0.015 * width);
  t.delivery_slope = normal(&d, 0.03 * width);
  t.interstage_bias = normal(&d, 0.04 * width);
  t.interstage_slope = normal(&d, 0.04 * width);
  t.lp_discharge_k = normal(&d, 6.0 * width);
  t.hp_discharge_k = normal(&d, 6.0 * width);
  t.motor_efficiency = uniform(&d, 0.78, 0.88);
  t.draw_down_s = uniform(&d, 30.0, 120.0);
  freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
  if (freeair_cycle_point(&t.m, &t.site, t.m.cut_out_pa, NAN, 1e-3, &r) < 0) return 0;
  double distortion = exp(t.delivery_bias + 0.5 * t.delivery_slope);
  v->nameplate.rated_delivery_m3_s = r.delivery_m3_s * distortion * spread(&d, 0.02);
  v->nameplate.rated_pa = t.m.cut_out_pa;
  v->nameplate.lp_clearance = v->nameplate.hp_clearance = NAN;

  /* the unit, where it stands */
  perturb_unit(&d, &t.m);
  t.site.ambient_k = uniform(&d, 275.0, 313.0);
  t.site.barometric_pa = chance(&d, 0.2) ? uniform(&d, 8.0e4, 9.5e4) : uniform(&d, 9.7e4, 1.025e5);
  v->site.ambient_k = t.site.ambient_k + normal(&d, 1.0);
  v->site.barometric_pa = t.site.barometric_pa * scatter(&d, 0.002);

  if (!chance(&d, classes[CLASS_HEALTHY].share)) {
    v->n_faults = chance(&d, 0.1) ? 2 : 1;
    v->fault[0] = pick_fault(&d, &t.m, CLASS_HEALTHY);
    v->fault[1] = pick_fault(&d, &t.m, v->fault[0]);
    for (int i = 0; i < v->n_faults; i++)
      if (!make_fault(&d, v->fault[i], &t, &v->severity[i], &v->lost[i])) return 0;
  }
  if (!read_curve(&d, &t, v) || !read_points(&d, &t, v)) return 0;
  read_leaks(&d, &t, v);
  observe(&d, v);
  return 1;
}

void visit_reduce(const visit *all, int level, visit *v)
{
  *v = *all;
  freeair_evidence_readings *o = &v->readings;
  if (level < LEVEL_LOG) v->n_log = 0;
  if (level < LEVEL_INTERSTAGE) v->n_interstage = 0;
  if (level < LEVEL_TEMPERATURES) {
    o->t_lp_discharge_k = o->t_hp_discharge_k = o->t_intercooler_out_k = NAN;
    o->leak_isolated_m3_s = o->leak_open_m3_s = NAN;
    o->motor_speed_rev_s = o->pump_speed_rev_s = NAN;
  }
  if (level < LEVEL_ALL) {
    o->power_w = NAN;
    v->n_observations = 0;
  }
}
