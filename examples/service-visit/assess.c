/* SPDX-License-Identifier: MIT */
#include "assess.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const double confidence = 0.9;
/* how well the model of a sound machine of this kind meets the mean of many: delivery, time */
static const double model_spread = 0.03;

static int refuse(assessment *a, const char *format, ...)
{
  va_list list;
  va_start(list, format);
  vsnprintf(a->message, sizeof a->message, format, list);
  va_end(list);
  return 0;
}

static double given_or(double x, double otherwise)
{
  return isnan(x) ? otherwise : x;
}

/* The machine as it was sold: unknown dimensions fitted so that it meets its rating at the rating's reference state.
 */
static int complete_machine(assessment *a)
{
  const visit *v = a->v;
  freeair_machine_site rated = FREEAIR_MACHINE_SITE_INIT;
  double delivery;
  int32_t state = v->rated_reference >= 0 ? v->rated_reference : FREEAIR_REFERENCE_ISO_1217;
  if (freeair_reference_conditions(state, &rated.barometric_pa, &rated.ambient_k, &rated.humidity) < 0)
    return refuse(a, "%s: /machine/rated_reference: unknown", v->path);
  a->p_rated_pa = rated.barometric_pa;
  a->t_rated_k = rated.ambient_k;
  snprintf(a->rated_state, sizeof a->rated_state, "%s%s", freeair_reference_text(state),
           v->rated_reference >= 0 ? "" : " (assumed)");
  int32_t status = freeair_rating_complete(&v->machine, &rated, &a->machine, &a->adjusted, &delivery);
  if (status < 0)
    return refuse(a, "%s: /machine: %s; give bore, stroke and speed, or the rated delivery with its pressure",
                  v->path, freeair_status_text(status));
  a->rating_inconsistent = status == FREEAIR_WARN_INCONSISTENT;
  return 1;
}

/* Does a run begin at ambient pressure, does it end at the switch? */
static int from_empty(const assessment *a, const visit_run *run)
{
  return run->p_from_pa < a->v->site.barometric_pa + 0.03 * (a->machine.cut_out_pa - a->v->site.barometric_pa);
}

static int near(double x, double y, double of)
{
  return fabs(x - y) < 0.03 * of;
}

static int assess_run(assessment *a, const visit_run *run)
{
  const visit *v = a->v;
  assessed_run *r = &a->run[a->n_runs];
  *r = (assessed_run){.run = run, .found = FREEAIR_PUMPUP_RESULT_INIT, .verdict = FREEAIR_VERDICT_CANNOT_TELL};
  freeair_pumpup_test test = FREEAIR_PUMPUP_TEST_INIT;
  test.v_receiver_m3 = a->machine.receiver_m3;
  test.v_piping_m3 = v->piping_m3;
  test.v_uncertainty_m3 = v->u_receiver_m3;
  test.p_ambient_pa = v->site.barometric_pa;
  test.p_ambient_uncertainty_pa =
      isnan(v->altitude_m) ? 300.0 : 1000.0; /* weather moves the estimate from altitude */
  test.t_ambient_k = v->site.ambient_k;
  test.p_start_pa = run->p_from_pa;
  test.p_end_pa = run->p_to_pa;
  test.duration_s = run->duration_s;
  test.t_in_k = a->point.line_k < 700.0 ? a->point.line_k : 700.0;
  test.start = run->start;
  int32_t status = run->n_points > 2
                       ? freeair_pumpup_analyse_table(&test, run->t_s, run->p_pa, run->n_points, &r->found)
                       : freeair_pumpup_analyse(&test, &r->found);
  if (status < 0) return refuse(a, "%s: /pumpups/%zu: %s", v->path, a->n_runs, freeair_status_text(status));

  freeair_prediction_run run_of = FREEAIR_PREDICTION_RUN_INIT;
  freeair_prediction_result sound = FREEAIR_PREDICTION_RESULT_INIT;
  double t[2], p[2], t_gas[2], flow[2];
  run_of.from_pa = run->p_from_pa;
  run_of.to_pa = run->p_to_pa;
  run_of.start = run->start == FREEAIR_PUMPUP_DRAWN_DOWN || run->start == FREEAIR_PUMPUP_CYCLING
                     ? FREEAIR_PREDICTION_DRAWN_DOWN
                     : FREEAIR_PREDICTION_SOAKED;
  freeair_machine alone = a->machine;
  alone.demand_m3_s = 0.0;
  status = freeair_prediction_pumpup(&alone, &v->site, &run_of, &sound, t, p, t_gas, flow, 2);
  if (status < 0) return refuse(a, "%s: /machine: no prediction: %s", v->path, freeair_status_text(status));
  /* the same rise on the gauge where the rating holds: what the site alone makes of it */
  freeair_machine_site rated = FREEAIR_MACHINE_SITE_INIT;
  freeair_prediction_result there = FREEAIR_PREDICTION_RESULT_INIT;
  rated.barometric_pa = a->p_rated_pa;
  rated.ambient_k = a->t_rated_k;
  run_of.from_pa += a->p_rated_pa - v->site.barometric_pa;
  run_of.to_pa += a->p_rated_pa - v->site.barometric_pa;
  r->rated_site_s =
      freeair_prediction_pumpup(&alone, &rated, &run_of, &there, t, p, t_gas, flow, 2) >= 0 ? there.time_s : NAN;
  const double u = hypot(v->rated_uncertainty, model_spread);
  r->expected_s = sound.time_s;
  r->u_expected_s = u * sound.time_s;
  r->expected_m3_s = sound.mean_delivery_m3_s;
  r->ratio = r->found.delivery_m3_s / r->expected_m3_s;
  r->u_ratio = r->ratio * hypot(r->found.delivery_uncertainty_m3_s / r->found.delivery_m3_s, u);
  freeair_verdict_probability(r->ratio, r->u_ratio, a->limit, INFINITY, &r->probability_enough);
  freeair_verdict_decide(r->ratio, r->u_ratio, a->limit, INFINITY, confidence, &r->verdict);
  a->n_runs++;
  return 1;
}

/* What a sound machine shows on each instrument. The runs that were timed stand in for the standard ones. */
static int expect(assessment *a)
{
  const visit *v = a->v;
  freeair_evidence_readings *e = &a->expected;
  a->subject = (freeair_diagnosis_subject)FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  if (a->has_machine) {
    int32_t status =
        freeair_diagnosis_expectation_from_machine(&a->machine, &v->site, v->readings_at_pa, &a->subject, e);
    if (status < 0) return refuse(a, "%s: /machine: nothing to expect: %s", v->path, freeair_status_text(status));
  }
  const double u = hypot(v->rated_uncertainty, model_spread);
  for (size_t i = 0; i < a->n_runs; i++) {
    const assessed_run *r = &a->run[i];
    if (i == 0) {
      e->delivery_m3_s = r->expected_m3_s;
      e->u_delivery_m3_s = u * r->expected_m3_s;
    } else {
      *(from_empty(a, r->run) ? &e->t_empty_to_cutout_s : &e->t_cutin_to_cutout_s) = r->expected_s;
    }
  }
  for (size_t i = 0; i < v->n_capacitors; i++)
    *(v->capacitor[i].is_start ? &e->start_capacitance_f : &e->run_capacitance_f) = v->capacitor[i].rated_f;
  if (!a->has_machine && !isnan(v->machine.motor_rated_v)) e->supply_running_v = v->machine.motor_rated_v;
  e->gauge_difference_pa = given_or(e->gauge_difference_pa, 0.0);
  e->leak_isolated_m3_s = given_or(e->leak_isolated_m3_s, 0.0);
  e->leak_open_m3_s = given_or(e->leak_open_m3_s, 0.0);
  e->water_m3 = given_or(e->water_m3, 0.0);
  return 1;
}

/* What was read, the results of the tests included. Each test counts once: the first as a delivery, others as times.
 */
static void gather(assessment *a)
{
  const visit *v = a->v;
  freeair_evidence_readings *f = &a->found;
  *f = v->readings;
  f->t_ambient_k = given_or(f->t_ambient_k, v->site.ambient_k);
  f->p_ambient_pa = given_or(f->p_ambient_pa, v->site.barometric_pa);
  f->supply_running_v = given_or(f->supply_running_v, v->site.supply_v);
  for (size_t i = 0; i < a->n_runs; i++) {
    const visit_run *run = a->run[i].run;
    if (i == 0) {
      f->delivery_m3_s = a->run[i].found.delivery_m3_s;
      f->u_delivery_m3_s = a->run[i].found.delivery_uncertainty_m3_s;
    } else if (from_empty(a, run) && isnan(f->t_empty_to_cutout_s)) {
      f->t_empty_to_cutout_s = run->duration_s;
    } else if (near(run->p_to_pa, a->machine.cut_out_pa, a->machine.cut_out_pa) && isnan(f->t_cutin_to_cutout_s)) {
      f->t_cutin_to_cutout_s = run->duration_s;
    }
  }
  for (size_t i = 0; i < v->n_capacitors; i++) {
    const visit_capacitor *c = &v->capacitor[i];
    *(c->is_start ? &f->start_capacitance_f : &f->run_capacitance_f) = c->measured_f;
    *(c->is_start ? &f->u_start_capacitance_f : &f->u_run_capacitance_f) = c->u_measured_f;
  }
}

static void judge_parts(assessment *a)
{
  const visit *v = a->v;
  const freeair_evidence_readings *f = &a->found;
  double probability;
  a->slip = a->u_slip = NAN;
  a->supply_verdict = -1;
  a->supply_deviation = NAN;
  for (size_t i = 0; i < v->n_capacitors; i++) {
    const visit_capacitor *c = &v->capacitor[i];
    freeair_capacitor_verdict(c->measured_f, c->u_measured_f, c->minimum_f, c->maximum_f, confidence,
                              &a->capacitor_verdict[i], &probability, &a->capacitor_low[i]);
  }
  const double nameplate_v = a->has_machine ? a->machine.motor_rated_v : v->machine.motor_rated_v;
  if (!isnan(f->supply_running_v) && !isnan(nameplate_v) &&
      freeair_supply_voltage_verdict(f->supply_running_v,
                                     given_or(f->u_supply_running_v, 0.005 * f->supply_running_v), nameplate_v, 0.1,
                                     confidence, &a->supply_verdict, &probability) >= 0)
    freeair_supply_deviation(f->supply_running_v, nameplate_v, &a->supply_deviation);
  if (a->has_machine && !isnan(f->motor_speed_rev_s) && !isnan(f->pump_speed_rev_s))
    freeair_belt_slip(f->motor_speed_rev_s, given_or(f->u_motor_speed_rev_s, 0.002 * f->motor_speed_rev_s),
                      f->pump_speed_rev_s, given_or(f->u_pump_speed_rev_s, 0.003 * f->pump_speed_rev_s),
                      1.0 / a->machine.pulley_ratio, 0.005 / a->machine.pulley_ratio, &a->slip, &a->u_slip);
}

static void observe(assessment *a, int32_t observation, int32_t answer)
{
  if (answer == FREEAIR_EVIDENCE_NOT_CHECKED || a->n_observations == VISIT_OBSERVATIONS) return;
  a->observation[a->n_observations] = observation;
  a->answer[a->n_observations++] = answer;
}

static int assess_log(assessment *a)
{
  const visit *v = a->v;
  freeair_pressure_log_options options = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;
  a->log_summary = (freeair_duty_summary)FREEAIR_DUTY_SUMMARY_INIT;
  if (v->log.file[0] == '\0') return 1;
  options.cut_in_pa = v->machine.cut_in_pa;
  options.cut_out_pa = v->machine.cut_out_pa;
  int32_t *state = NULL;
  if (a->log.loaded != NULL) {
    state = malloc(a->log.n * sizeof *state);
    if (state == NULL) return refuse(a, "out of memory");
    int32_t status = freeair_pressure_log_state_from_switch(a->log.loaded, a->log.n, FREEAIR_PRESSURE_LOG_LOADED,
                                                            FREEAIR_PRESSURE_LOG_IDLE, state);
    if (status < 0) {
      free(state);
      return refuse(a, "%s: /log/loaded: %s", v->path, freeair_status_text(status));
    }
  }
  for (size_t i = 0; i < ASSESS_PHASES; i++)
    a->phase[i] = (freeair_pressure_log_phase)FREEAIR_PRESSURE_LOG_PHASE_INIT;
  size_t found;
  int32_t status = freeair_pressure_log_segment(a->log.t_s, a->log.p_pa, state, a->log.n, &options, a->phase,
                                                sizeof a->phase[0], ASSESS_PHASES, &found);
  free(state);
  if (status < 0) return refuse(a, "%s: /log: %s", v->path, freeair_status_text(status));
  a->n_phases = found < ASSESS_PHASES ? found : ASSESS_PHASES;
  status = freeair_duty_from_phases(a->phase, sizeof a->phase[0], a->n_phases, &options, &a->log_summary);
  if (status < 0) return refuse(a, "%s: /log: %s", v->path, freeair_status_text(status));
  a->has_log = 1;
  return 1;
}

/* What the log says in the words of the trade. */
static void observe_log(assessment *a)
{
  if (!a->has_log) return;
  if (a->v->observation[FREEAIR_EVIDENCE_NEVER_REACHES_CUTOUT] == FREEAIR_EVIDENCE_NOT_CHECKED) {
    if (a->log_summary.findings & FREEAIR_DUTY_NEVER_CUTS_OUT)
      observe(a, FREEAIR_EVIDENCE_NEVER_REACHES_CUTOUT, FREEAIR_EVIDENCE_YES);
    else if (a->log_summary.n_cycles > 0)
      observe(a, FREEAIR_EVIDENCE_NEVER_REACHES_CUTOUT, FREEAIR_EVIDENCE_NO);
  }
}

/* The readings as the physical model takes them: times of the standard runs, anything else of a run from empty as
 * its log. */
static int32_t rank_on_model(assessment *a, const freeair_diagnosis_options *options)
{
  const visit *v = a->v;
  const freeair_inference_scatter scatter = FREEAIR_INFERENCE_SCATTER_INIT;
  freeair_inference_visit how = FREEAIR_INFERENCE_VISIT_INIT;
  freeair_evidence_readings found = a->found;
  double t_s[VISIT_POINTS], p_pa[VISIT_POINTS];
  size_t n_log = 0;
  how.receiver_pa = v->readings_at_pa;
  how.air_m3_s = v->air_m3_s;
  how.energy_price = v->energy_price;
  /* points of a run are read from a moving needle and a stopwatch, by eye */
  how.u_log_s = 1.0;
  how.u_log_pa = 0.01 * (a->machine.cut_out_pa - v->site.barometric_pa);
  found.delivery_m3_s = found.u_delivery_m3_s = NAN;
  found.t_empty_to_cutout_s = found.t_cutin_to_cutout_s = NAN;
  for (size_t i = 0; i < a->n_runs; i++) {
    const visit_run *run = a->run[i].run;
    const int to_cut_out = near(run->p_to_pa, a->machine.cut_out_pa, a->machine.cut_out_pa);
    if (from_empty(a, run)) {
      if (to_cut_out && isnan(found.t_empty_to_cutout_s)) found.t_empty_to_cutout_s = run->duration_s;
      if (n_log > 0 || (to_cut_out && run->n_points <= 2)) continue;
      how.from_pa = run->p_from_pa;
      for (size_t k = 1; k < run->n_points; k++) {
        t_s[n_log] = run->t_s[k] - run->t_s[0];
        p_pa[n_log++] = run->p_pa[k];
      }
      if (n_log > 0) continue;
      t_s[0] = run->duration_s;
      p_pa[n_log++] = run->p_to_pa;
    } else if (to_cut_out && near(run->p_from_pa, a->machine.cut_in_pa, a->machine.cut_out_pa) &&
               isnan(found.t_cutin_to_cutout_s)) {
      found.t_cutin_to_cutout_s = run->duration_s;
    }
  }
  for (size_t i = 0; i < ASSESS_CAUSES; i++) a->effect[i] = (freeair_inference_effect)FREEAIR_INFERENCE_EFFECT_INIT;
  return freeair_inference_rank(&a->machine, &v->site, &a->subject, &how, &scatter, &a->expected, &found, t_s, p_pa,
                                n_log, NULL, NULL, 0, a->observation, a->answer, a->n_observations, NULL, 0, options,
                                a->cause, sizeof a->cause[0], ASSESS_CAUSES, &a->n_causes, a->effect,
                                sizeof a->effect[0], ASSESS_CAUSES, &a->n_effects, a->reason, sizeof a->reason[0],
                                ASSESS_REASONS, &a->n_reasons, a->finding, sizeof a->finding[0], ASSESS_FINDINGS,
                                &a->n_findings, &a->summary);
}

/* Without a description, by the tables of the trade. */
static int32_t rank_by_table(assessment *a, const freeair_diagnosis_options *options)
{
  return freeair_diagnosis_rank(&a->subject, &a->expected, &a->found, a->observation, a->answer, a->n_observations,
                                NULL, 0, options, a->cause, sizeof a->cause[0], ASSESS_CAUSES, &a->n_causes,
                                a->reason, sizeof a->reason[0], ASSESS_REASONS, &a->n_reasons, a->finding,
                                sizeof a->finding[0], ASSESS_FINDINGS, &a->n_findings, &a->summary);
}

static int diagnose(assessment *a)
{
  const visit *v = a->v;
  const freeair_diagnosis_options options = FREEAIR_DIAGNOSIS_OPTIONS_INIT;
  a->subject.drive = FREEAIR_DIAGNOSIS_DRIVE_BELT;
  if (v->n_capacitors > 0) a->subject.supply = FREEAIR_DIAGNOSIS_SINGLE_PHASE;
  if (a->n_runs > 0) a->subject.service_valve_closed = a->run[0].run->service_valve_closed;
  for (int32_t i = 1; i < VISIT_OBSERVATIONS; i++) observe(a, i, v->observation[i]);
  observe_log(a);

  a->summary = (freeair_diagnosis_summary)FREEAIR_DIAGNOSIS_SUMMARY_INIT;
  for (size_t i = 0; i < ASSESS_CAUSES; i++) a->cause[i] = (freeair_diagnosis_cause)FREEAIR_DIAGNOSIS_CAUSE_INIT;
  for (size_t i = 0; i < ASSESS_REASONS; i++) a->reason[i] = (freeair_diagnosis_reason)FREEAIR_DIAGNOSIS_REASON_INIT;
  for (size_t i = 0; i < ASSESS_FINDINGS; i++)
    a->finding[i] = (freeair_diagnosis_finding)FREEAIR_DIAGNOSIS_FINDING_INIT;
  for (size_t i = 0; i < ASSESS_CHECKS; i++) a->check[i] = (freeair_diagnosis_check)FREEAIR_DIAGNOSIS_CHECK_INIT;
  int32_t status = a->has_machine ? rank_on_model(a, &options) : rank_by_table(a, &options);
  if (status < 0) return refuse(a, "%s: no diagnosis: %s", v->path, freeair_status_text(status));
  if (a->n_causes > ASSESS_CAUSES) a->n_causes = ASSESS_CAUSES;
  if (a->n_effects > a->n_causes) a->n_effects = a->n_causes;
  if (a->n_reasons > ASSESS_REASONS) a->n_reasons = ASSESS_REASONS;
  if (a->n_findings > ASSESS_FINDINGS) a->n_findings = ASSESS_FINDINGS;
  status = freeair_diagnosis_check_rank(&a->subject, &a->found, a->observation, a->answer, a->n_observations,
                                        a->cause, sizeof a->cause[0], a->n_causes, NULL, 0, a->check,
                                        sizeof a->check[0], ASSESS_CHECKS, &a->n_checks);
  if (status < 0) return refuse(a, "%s: no next check: %s", v->path, freeair_status_text(status));
  if (a->n_checks > ASSESS_CHECKS) a->n_checks = ASSESS_CHECKS;
  a->proof = (freeair_diagnosis_proof)FREEAIR_DIAGNOSIS_PROOF_INIT;
  if (v->repaired == FREEAIR_EVIDENCE_CAUSE_NONE) return 1;
  status = freeair_diagnosis_proof_judge(v->repaired, a->cause, sizeof a->cause[0], a->n_causes, a->finding,
                                         sizeof a->finding[0], a->n_findings, a->limit, confidence, &a->proof);
  if (status == FREEAIR_ERR_DATA) return refuse(a, "%s: /repaired: this machine cannot have that", v->path);
  if (status < 0) return refuse(a, "%s: /repaired: %s", v->path, freeair_status_text(status));
  return 1;
}

int assess(assessment *a, const visit *v)
{
  *a = (assessment){.v = v,
                    .limit = 0.9,
                    .machine = FREEAIR_MACHINE_INIT,
                    .point = FREEAIR_CYCLE_RESULT_INIT,
                    .expected = FREEAIR_EVIDENCE_READINGS_INIT,
                    .found = FREEAIR_EVIDENCE_READINGS_INIT};
  /* the log first: a file that cannot be read stops everything */
  if (v->log.file[0] != '\0' && !logfile_read(&a->log, v, a->message)) return 0;
  a->has_machine = !isnan(v->machine.lp_stroke_m) && !isnan(v->machine.receiver_m3) && !isnan(v->site.ambient_k);
  if (a->has_machine) {
    if (!complete_machine(a)) return 0;
    double at = given_or(v->readings_at_pa, a->machine.cut_out_pa);
    int32_t status = freeair_cycle_point(&a->machine, &v->site, at, NAN, NAN, &a->point);
    if (status < 0) return refuse(a, "%s: /machine: no operating point: %s", v->path, freeair_status_text(status));
    for (size_t i = 0; i < v->n_runs; i++)
      if (!assess_run(a, &v->run[i])) return 0;
  } else if (v->n_runs > 0) {
    return refuse(a, "%s: /machine: bore, stroke and receiver are wanted to say what to expect of a pump-up",
                  v->path);
  }
  if (!expect(a)) return 0;
  gather(a);
  judge_parts(a);
  if (!assess_log(a) || !diagnose(a)) return 0;
  a->cautions = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY;
  for (size_t i = 0; i < a->n_causes && i < 3; i++) a->cautions |= a->cause[i].cautions;
  for (size_t i = 0; i < a->n_checks && i < 4; i++) a->cautions |= a->check[i].cautions;
  if (v->n_capacitors > 0) a->cautions |= FREEAIR_CAUTION_CAPACITOR | FREEAIR_CAUTION_LIVE;
  return 1;
}

void assessment_free(assessment *a)
{
  logfile_free(&a->log);
}
