/* SPDX-License-Identifier: MIT */
/* Visits to invented machines of three families, read by the model itself, and
 * their diagnosis on it, for the tests of the inference. */
#ifndef FREEAIR_TESTS_INFERENCE_H
#define FREEAIR_TESTS_INFERENCE_H

#include <freeair/freeair.h>

#include <check.h>
#include <math.h>
#include <string.h>

static const double psi = 6894.757293168361;

enum { ROWS = 30, OBSERVATIONS = 48, REASONS = 400 };

/* A visit to one of our own invented machines, and its diagnosis. */
typedef struct visit {
  freeair_machine machine;
  freeair_machine_site site;
  freeair_diagnosis_subject subject;
  freeair_inference_visit how;
  freeair_inference_scatter scatter;
  freeair_evidence_readings expected;
  freeair_evidence_readings found;
  freeair_diagnosis_options options;
  double log_t_s[8];
  double log_p_pa[8];
  size_t n_log;
  int32_t observation[OBSERVATIONS];
  int32_t answer[OBSERVATIONS];
  size_t n_observations;
  double prior[ROWS];
  size_t n_prior;
  freeair_diagnosis_cause causes[ROWS];
  freeair_inference_effect effects[ROWS];
  freeair_diagnosis_reason reasons[REASONS];
  freeair_diagnosis_finding findings[ROWS];
  freeair_diagnosis_summary summary;
  size_t n_causes;
  size_t n_effects;
  size_t n_reasons;
  size_t n_findings;
  int32_t status;
} visit;

enum { V, SIDE_BY_SIDE, TWIN };

static inline visit *new_visit(int family)
{
  static visit v;
  memset(&v, 0, sizeof v);
  v.machine = (freeair_machine)FREEAIR_MACHINE_INIT;
  v.machine.lp_bore_m = family == TWIN ? 0.08 : 0.105;
  v.machine.lp_stroke_m = family == TWIN ? 0.06 : 0.08;
  v.machine.speed_rev_s = 14.0;
  v.machine.receiver_m3 = family == TWIN ? 0.15 : 0.3;
  v.machine.stages = family == TWIN ? 1 : 2;
  v.machine.lp_cylinders = family == TWIN ? 2 : 1;
  v.machine.arrangement = family == V ? FREEAIR_MACHINE_V : FREEAIR_MACHINE_SIDE_BY_SIDE;
  v.site = (freeair_machine_site)FREEAIR_MACHINE_SITE_INIT;
  v.subject = (freeair_diagnosis_subject)FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  v.subject.drive = FREEAIR_DIAGNOSIS_DRIVE_BELT;
  v.subject.service_valve_closed = FREEAIR_EVIDENCE_YES;
  v.how = (freeair_inference_visit)FREEAIR_INFERENCE_VISIT_INIT;
  v.scatter = (freeair_inference_scatter)FREEAIR_INFERENCE_SCATTER_INIT;
  v.expected = v.found = (freeair_evidence_readings)FREEAIR_EVIDENCE_READINGS_INIT;
  v.options = (freeair_diagnosis_options)FREEAIR_DIAGNOSIS_OPTIONS_INIT;
  ck_assert_int_eq(freeair_machine_complete(&v.machine, &v.machine), FREEAIR_OK);
  return &v;
}

static inline void say(visit *v, int32_t observation, int32_t answer)
{
  ck_assert_uint_lt(v->n_observations, OBSERVATIONS);
  v->observation[v->n_observations] = observation;
  v->answer[v->n_observations++] = answer;
}

/* Asserts nothing, so that threads may call it. */
static inline void infer(visit *v)
{
  for (size_t i = 0; i < ROWS; i++) {
    freeair_diagnosis_cause_init(&v->causes[i], sizeof v->causes[i]);
    freeair_inference_effect_init(&v->effects[i], sizeof v->effects[i]);
    freeair_diagnosis_finding_init(&v->findings[i], sizeof v->findings[i]);
  }
  for (size_t i = 0; i < REASONS; i++) freeair_diagnosis_reason_init(&v->reasons[i], sizeof v->reasons[i]);
  freeair_diagnosis_summary_init(&v->summary, sizeof v->summary);
  v->status = freeair_inference_rank(
      &v->machine, &v->site, &v->subject, &v->how, &v->scatter, &v->expected, &v->found, v->log_t_s, v->log_p_pa,
      v->n_log, NULL, NULL, 0, v->observation, v->answer, v->n_observations, v->prior, v->n_prior, &v->options,
      v->causes, sizeof v->causes[0], ROWS, &v->n_causes, v->effects, sizeof v->effects[0], ROWS, &v->n_effects,
      v->reasons, sizeof v->reasons[0], REASONS, &v->n_reasons, v->findings, sizeof v->findings[0], ROWS,
      &v->n_findings, &v->summary);
}

static inline void diagnose(visit *v)
{
  infer(v);
  ck_assert_int_ge(v->status, 0);
}

static inline double probability(const visit *v, int32_t cause)
{
  for (size_t i = 0; i < v->n_causes; i++)
    if (v->causes[i].cause == cause) return v->causes[i].probability;
  return 0.0;
}

static inline size_t rank_of(const visit *v, int32_t cause)
{
  for (size_t i = 0; i < v->n_causes; i++)
    if (v->causes[i].cause == cause) return i;
  return ROWS;
}

/* Reads what a machine shows at a site: all that the model gives, or the two
 * times alone. */
static inline void read_machine(visit *v, const freeair_machine *m, const freeair_machine_site *site, int all)
{
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  freeair_prediction_result r = FREEAIR_PREDICTION_RESULT_INIT;
  freeair_cycle_result point = FREEAIR_CYCLE_RESULT_INIT;
  double t[8];
  double p[8];
  double gas[8];
  double delivery[8];
  run.from_pa = v->how.from_pa;
  int32_t status = freeair_prediction_pumpup(m, site, &run, &r, t, p, gas, delivery, 8);
  ck_assert_int_ge(status, 0);
  if (status == FREEAIR_OK) {
    v->found.t_empty_to_cutout_s = r.time_s;
    run.start = FREEAIR_PREDICTION_DRAWN_DOWN;
    run.from_pa = v->machine.cut_in_pa;
    double again[2];
    ck_assert_int_ge(freeair_prediction_pumpup(m, site, &run, &r, again, again, gas, delivery, 2), 0);
    v->found.t_cutin_to_cutout_s = r.time_s;
  } else {
    v->found.p_level_off_pa = r.end_pa;
  }
  if (!all) return;
  v->n_log = 7;
  for (size_t i = 0; i < 7; i++) {
    v->log_t_s[i] = t[i + 1];
    v->log_p_pa[i] = p[i + 1];
  }
  v->how.receiver_pa = status == FREEAIR_OK ? m->cut_out_pa : 0.97 * r.end_pa;
  ck_assert_int_ge(freeair_cycle_point(m, site, v->how.receiver_pa, NAN, NAN, &point), 0);
  if (m->stages == 2) {
    v->found.p_interstage_pa = point.interstage_mean_pa;
    v->found.t_hp_discharge_k = point.hp_discharge_k;
    v->found.t_intercooler_out_k = point.intercooler_k;
  }
  v->found.t_lp_discharge_k = point.lp_discharge_k;
  v->found.motor_speed_rev_s = point.motor_speed_rev_s;
  v->found.pump_speed_rev_s = point.speed_rev_s;
  v->found.power_w = point.motor_w / 0.83;
}

static inline void read_fault(visit *v, int32_t fault, double severity, int all)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  ck_assert_int_eq(freeair_fault_apply(&v->machine, &v->site, fault, severity, &m, &site), FREEAIR_OK);
  read_machine(v, &m, &site, all);
}

#endif
