/* SPDX-License-Identifier: MIT */
/* What is true of every diagnosis. */
#include "../suite.h"
#include "diagnosis.h"

#include <freeair/likelihood.h>
#include <freeair/verdict.h>

#include <check.h>

/* ---- what is always true ---- */

START_TEST(no_evidence_leaves_the_priors)
{
  visit v = new_visit();
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_OK);
  ck_assert_uint_eq(v.n_causes, 24);
  ck_assert_uint_eq(v.n_reasons, 0);
  ck_assert_uint_eq(v.n_findings, 0);
  ck_assert_int_eq(v.summary.verdict, FREEAIR_VERDICT_CANNOT_TELL);
  for (size_t i = 0; i < v.n_causes; i++) {
    ck_assert_double_eq_tol(v.causes[i].probability, v.causes[i].prior, 1e-12);
    ck_assert_double_eq_tol(v.causes[i].support, 0.0, 1e-9);
  }
  v.options.pair_share = 0.0;
  diagnose(&v);
  for (size_t i = 0; i < v.n_causes; i++) {
    double prior;
    freeair_likelihood_prior(v.causes[i].cause, &prior);
    ck_assert_double_eq_tol(v.causes[i].probability, prior, 1e-12);
    ck_assert_double_eq(v.causes[i].probability, v.causes[i].probability_alone);
  }
}
END_TEST

static void fill(visit *v, uint32_t *state)
{
  const freeair_evidence_readings e = v->expected;
  if (uniform(state) < 0.7) v->found.t_empty_to_cutout_s = e.t_empty_to_cutout_s * exp(0.3 * uniform(state));
  if (uniform(state) < 0.5) v->found.t_cutin_to_cutout_s = e.t_cutin_to_cutout_s * exp(0.4 * uniform(state));
  if (uniform(state) < 0.5) v->found.p_interstage_pa = e.p_interstage_pa * exp(0.3 * normal(state));
  if (uniform(state) < 0.4) v->found.t_lp_discharge_k = e.t_lp_discharge_k + 20.0 * normal(state);
  if (uniform(state) < 0.4) v->found.motor_speed_rev_s = e.motor_speed_rev_s * exp(-0.03 * uniform(state));
  if (uniform(state) < 0.4) v->found.pump_speed_rev_s = e.pump_speed_rev_s * exp(-0.1 * uniform(state));
  if (uniform(state) < 0.3) v->found.run_capacitance_f = e.run_capacitance_f * exp(-0.2 * uniform(state));
  if (uniform(state) < 0.3) v->found.leak_isolated_m3_s = 0.001 * uniform(state);
  if (uniform(state) < 0.3) v->found.leak_open_m3_s = 0.004 * uniform(state);
  for (int32_t o = 1; o < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_OBSERVATION); o++)
    if (uniform(state) < 0.25) say(v, o, uniform(state) < 0.2 ? FREEAIR_EVIDENCE_YES : FREEAIR_EVIDENCE_NO);
}

/* Each hypothesis once: causes alone and pairs make one; a pair counts for two causes. */
START_TEST(probabilities_make_one)
{
  uint32_t state = 17;
  for (int k = 0; k < 40; k++) {
    visit v = new_visit();
    fill(&v, &state);
    diagnose(&v);
    ck_assert_int_ge(v.status, 0);
    double alone = 0.0;
    double present = 0.0;
    for (size_t i = 0; i < v.n_causes; i++) {
      const freeair_diagnosis_cause *c = &v.causes[i];
      ck_assert(c->probability >= 0.0 && c->probability <= 1.0 && c->probability_alone <= c->probability + 1e-12);
      ck_assert(c->support >= 0.0 && c->contradiction <= 0.0);
      if (c->cause != FREEAIR_EVIDENCE_OTHER)
        ck_assert(c->severity >= 0.0 && c->severity < 1.0 && c->u_severity >= 0.0);
      if (i > 0) ck_assert_double_le(c->probability, v.causes[i - 1].probability);
      alone += c->probability_alone;
      present += c->probability;
    }
    ck_assert_double_eq_tol(alone + v.summary.probability_pair, 1.0, 1e-12);
    ck_assert_double_eq_tol(present - alone, 2.0 * v.summary.probability_pair, 1e-12);
    ck_assert_double_eq_tol(v.summary.probability_healthy, probability_of(&v, FREEAIR_EVIDENCE_HEALTHY), 1e-15);
    ck_assert_int_eq(v.summary.cause, v.causes[0].cause);
    ck_assert_int_eq(v.summary.observations_used, (int32_t)v.n_observations);
  }
}
END_TEST

/* Nothing stands alone that the evidence does not tell from something else, and every group has its check. */
START_TEST(groups_leave_nobody_out)
{
  uint32_t state = 23;
  int grouped = 0;
  for (int k = 0; k < 40; k++) {
    visit v = new_visit();
    fill(&v, &state);
    diagnose(&v);
    for (size_t i = 0; i < v.n_causes; i++) {
      const freeair_diagnosis_cause *a = &v.causes[i];
      int alike = 0;
      int with = 0;
      for (size_t j = 0; j < v.n_causes; j++) {
        const freeair_diagnosis_cause *b = &v.causes[j];
        if (i == j || a->probability < 0.02 || b->probability < 0.02) continue;
        const double factor = a->probability / a->prior / (b->probability / b->prior);
        if (factor < 3.0 && factor > 1.0 / 3.0 && a->probability + b->probability < 1.25) alike++;
        with += a->group != 0 && a->group == b->group;
      }
      ck_assert_int_eq(a->group != 0, alike > 0);
      ck_assert_int_eq(a->group != 0, with > 0);
      grouped += a->group != 0;
    }
  }
  ck_assert_int_gt(grouped, 40);
}
END_TEST

START_TEST(order_of_answers_does_not_matter)
{
  uint32_t state = 99;
  for (int k = 0; k < 10; k++) {
    visit v = new_visit();
    fill(&v, &state);
    diagnose(&v);
    visit w = v;
    for (size_t i = 0; i < v.n_observations; i++) {
      w.observation[i] = v.observation[v.n_observations - 1 - i];
      w.answer[i] = v.answer[v.n_observations - 1 - i];
    }
    /* what is said twice is said once */
    if (v.n_observations > 0) say(&w, v.observation[0], v.answer[0]);
    diagnose(&w);
    ck_assert_uint_eq(w.n_causes, v.n_causes);
    ck_assert_uint_eq(w.n_reasons, v.n_reasons);
    for (size_t i = 0; i < v.n_causes; i++) {
      ck_assert_int_eq(w.causes[i].cause, v.causes[i].cause);
      ck_assert_double_eq(w.causes[i].probability, v.causes[i].probability);
    }
  }
}
END_TEST

START_TEST(not_checked_is_no_evidence)
{
  visit v = new_visit();
  v.found.t_empty_to_cutout_s = 380.0;
  diagnose(&v);
  visit w = v;
  for (int32_t o = 1; o < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_OBSERVATION); o++)
    say(&w, o, FREEAIR_EVIDENCE_NOT_CHECKED);
  diagnose(&w);
  ck_assert_int_eq(w.summary.observations_used, 0);
  for (size_t i = 0; i < v.n_causes; i++) {
    ck_assert_int_eq(w.causes[i].cause, v.causes[i].cause);
    ck_assert_double_eq(w.causes[i].probability, v.causes[i].probability);
  }
}
END_TEST

/* A yes speaks for the causes that bring it and a no against them, whatever else is known. */
START_TEST(answers_push_the_right_way)
{
  uint32_t state = 5;
  for (int32_t o = 1; o < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_OBSERVATION); o++) {
    int32_t best = 0;
    double most = 0.0;
    double false_alarm;
    for (int32_t c = 1; c < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE); c++) {
      double hit;
      int32_t basis;
      freeair_likelihood_observation(c, o, &hit, &false_alarm, &basis);
      if (hit > most) {
        most = hit;
        best = c;
      }
    }
    visit v = new_visit();
    fill(&v, &state);
    v.n_observations = 0;
    diagnose(&v);
    const double before = probability_of(&v, best);
    say(&v, o, FREEAIR_EVIDENCE_YES);
    diagnose(&v);
    ck_assert_double_gt(probability_of(&v, best), before);
    v.answer[0] = FREEAIR_EVIDENCE_NO;
    diagnose(&v);
    ck_assert_double_lt(probability_of(&v, best), before);
  }
}
END_TEST

/* The slower the pump against a motor that is right, the more it is slip, and the worse. */
START_TEST(readings_push_the_right_way)
{
  double last = 0.0;
  double lost = -1.0;
  for (double ratio = 0.995; ratio > 0.87; ratio -= 0.01) {
    visit v = new_visit();
    v.found.motor_speed_rev_s = v.expected.motor_speed_rev_s;
    v.found.pump_speed_rev_s = v.expected.pump_speed_rev_s * ratio;
    diagnose(&v);
    ck_assert_double_gt(probability_of(&v, FREEAIR_EVIDENCE_BELT_SLIP), last);
    last = probability_of(&v, FREEAIR_EVIDENCE_BELT_SLIP);
    ck_assert_double_gt(row_of(&v, FREEAIR_EVIDENCE_BELT_SLIP)->severity, lost);
    lost = row_of(&v, FREEAIR_EVIDENCE_BELT_SLIP)->severity;
    if (ratio < 0.95) ck_assert_double_eq_tol(lost, 1.0 - ratio, 0.02);
  }
  ck_assert_double_gt(last, 0.8);
  double healthy = 1.0;
  for (double ratio = 1.0; ratio < 1.6; ratio *= 1.04) {
    visit v = new_visit();
    v.found.t_empty_to_cutout_s = v.expected.t_empty_to_cutout_s * ratio;
    diagnose(&v);
    ck_assert_double_lt(v.summary.probability_healthy, healthy);
    healthy = v.summary.probability_healthy;
  }
  ck_assert_double_lt(healthy, 0.001);
}
END_TEST

START_TEST(a_worse_instrument_says_less)
{
  double last = 1.0;
  for (double u = 0.001; u < 0.2; u *= 2.0) {
    visit v = new_visit();
    v.found.run_capacitance_f = 34e-6;
    v.found.u_run_capacitance_f = 34e-6 * u;
    diagnose(&v);
    ck_assert_double_lt(probability_of(&v, FREEAIR_EVIDENCE_RUN_CAPACITOR), last);
    last = probability_of(&v, FREEAIR_EVIDENCE_RUN_CAPACITOR);
  }
  ck_assert_double_lt(last, 0.1);
}
END_TEST

/* Two numbers from one test are no two witnesses. */
START_TEST(one_test_counts_once)
{
  visit one = new_visit();
  one.found.t_empty_to_cutout_s = one.expected.t_empty_to_cutout_s * 1.09;
  one.expected.u_t_empty_to_cutout_s = 15.0;
  one.found.u_t_empty_to_cutout_s = 0.0;
  visit both = one;
  both.found.delivery_m3_s = both.expected.delivery_m3_s / 1.09;
  both.expected.u_delivery_m3_s = both.expected.delivery_m3_s * 15.0 / 293.0;
  both.found.u_delivery_m3_s = 0.0;
  diagnose(&one);
  diagnose(&both);
  ck_assert_double_eq_tol(both.summary.probability_healthy, one.summary.probability_healthy, 0.03);
}
END_TEST

/* ---- what the machine can have ---- */

START_TEST(impossible_causes_are_not_named)
{
  visit v = new_visit();
  v.subject.stages = 1;
  v.subject.cylinders = 2;
  v.subject.head = FREEAIR_DIAGNOSIS_HEAD_SHARED;
  v.subject.drive = FREEAIR_DIAGNOSIS_DRIVE_DIRECT;
  v.subject.supply = FREEAIR_DIAGNOSIS_THREE_PHASE;
  v.found.p_interstage_pa = 2e5;
  v.found.belt_deflection_m = 0.1;
  v.found.run_capacitance_f = 1e-6;
  diagnose(&v);
  const int32_t gone[] = {FREEAIR_EVIDENCE_HP_SUCTION_VALVE, FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE,
                          FREEAIR_EVIDENCE_INTERSTAGE_LEAK,  FREEAIR_EVIDENCE_INTERCOOLER_FOULED,
                          FREEAIR_EVIDENCE_RELIEF_WEAK,      FREEAIR_EVIDENCE_BELT_SLIP,
                          FREEAIR_EVIDENCE_WRONG_PULLEY,     FREEAIR_EVIDENCE_RUN_CAPACITOR,
                          FREEAIR_EVIDENCE_START_CAPACITOR};
  for (size_t i = 0; i < sizeof gone / sizeof gone[0]; i++) ck_assert_int_eq(row_of(&v, gone[i])->cause, 0);
  ck_assert_uint_eq(v.n_causes, 15);
  ck_assert_int_eq(v.summary.readings_unused, 3);
  for (size_t i = 0; i < v.n_findings; i++) ck_assert_int_eq(v.findings[i].use, FREEAIR_DIAGNOSIS_NOT_APPLICABLE);
  /* health keeps its share, the other faults take what is left */
  ck_assert_double_eq_tol(v.summary.probability_healthy, 0.25, 1e-12);
  ck_assert_double_gt(row_of(&v, FREEAIR_EVIDENCE_GASKET_BETWEEN)->prior, 0.05);
}
END_TEST

START_TEST(priors_are_the_callers)
{
  visit v = new_visit();
  v.n_prior = (size_t)freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE);
  for (size_t c = 0; c < v.n_prior; c++) v.prior[c] = 0.0;
  v.prior[FREEAIR_EVIDENCE_HEALTHY] = 30.0;
  v.prior[FREEAIR_EVIDENCE_BELT_SLIP] = 10.0;
  diagnose(&v);
  ck_assert_uint_eq(v.n_causes, 2);
  ck_assert_double_eq_tol(v.summary.probability_healthy, 0.75, 1e-12);
  v.found.t_empty_to_cutout_s = 400.0;
  diagnose(&v);
  ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_BELT_SLIP);
  v.prior[FREEAIR_EVIDENCE_HEALTHY] = NAN; /* its default again */
  v.prior[FREEAIR_EVIDENCE_BELT_SLIP] = 0.25;
  v.found.t_empty_to_cutout_s = NAN;
  diagnose(&v);
  ck_assert_double_eq_tol(v.summary.probability_healthy, 0.5, 1e-12);
  v.prior[FREEAIR_EVIDENCE_HEALTHY] = 0.0;
  v.prior[FREEAIR_EVIDENCE_BELT_SLIP] = 0.0;
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_ERR_NO_SOLUTION);
  v.prior[FREEAIR_EVIDENCE_BELT_SLIP] = -1.0;
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_ERR_DOMAIN);
}
END_TEST

/* ---- reasons, groups, contradictions ---- */

/* With nothing shared between items, a cause's reasons are what moved its log-odds. */
START_TEST(reasons_explain)
{
  visit v = new_visit();
  v.found.run_capacitance_f = 30e-6;
  diagnose(&v);
  const freeair_diagnosis_cause *c = row_of(&v, FREEAIR_EVIDENCE_RUN_CAPACITOR);
  const double moved = log(c->probability / (1.0 - c->probability)) - log(c->prior / (1.0 - c->prior));
  ck_assert_double_eq_tol(c->support, moved, 1e-9);
  ck_assert_int_eq(v.reasons[0].cause, FREEAIR_EVIDENCE_RUN_CAPACITOR);
  ck_assert_int_eq(v.reasons[0].reading, FREEAIR_EVIDENCE_RUN_CAPACITANCE);
  ck_assert_double_eq_tol(v.reasons[0].log_odds, moved, 1e-9);
  ck_assert_double_eq(v.reasons[0].found, 30e-6);
  ck_assert_double_eq_tol(v.reasons[0].expected, 40e-6, 1e-15);
  ck_assert_double_eq_tol(v.reasons[0].predicted, 30e-6, 2e-6);
  const freeair_diagnosis_finding *f = finding_of(&v, FREEAIR_EVIDENCE_RUN_CAPACITANCE);
  ck_assert_double_eq_tol(v.reasons[0].residual, log(30e-6 / v.reasons[0].predicted) / f->spread, 1e-12);
  ck_assert_double_lt(fabs(v.reasons[0].residual), 1.0);
  say(&v, FREEAIR_EVIDENCE_HUMS_AT_START, FREEAIR_EVIDENCE_YES);
  say(&v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, FREEAIR_EVIDENCE_NO);
  diagnose(&v);
  double sum = 0.0;
  double last = INFINITY;
  for (size_t i = 0; i < v.n_reasons && v.reasons[i].cause == v.causes[0].cause; i++) {
    const freeair_diagnosis_reason *r = &v.reasons[i];
    ck_assert((r->reading == 0) != (r->observation == 0));
    if (r->observation == FREEAIR_EVIDENCE_HUMS_AT_START) ck_assert_double_gt(r->log_odds, 0.0);
    ck_assert_double_le(fabs(r->log_odds), last);
    last = fabs(r->log_odds);
    sum += r->log_odds;
  }
  ck_assert_double_eq_tol(sum, v.causes[0].support + v.causes[0].contradiction, 0.1);
}
END_TEST

/* What a reading says for or against a sound machine is told beside how far it lies from one. */
START_TEST(residuals_of_a_sound_machine_are_those_of_the_findings)
{
  uint32_t state = 31;
  int told = 0;
  for (int k = 0; k < 20; k++) {
    visit v = new_visit();
    fill(&v, &state);
    diagnose(&v);
    for (size_t i = 0; i < v.n_reasons; i++) {
      const freeair_diagnosis_reason *r = &v.reasons[i];
      if (r->reading == 0) ck_assert(isnan(r->residual));
      if (r->cause != FREEAIR_EVIDENCE_HEALTHY || r->reading == 0) continue;
      const freeair_diagnosis_finding *f = finding_of(&v, r->reading);
      ck_assert_double_eq_tol(r->residual, f->residual, 1e-9 * (1.0 + fabs(f->residual)));
      told++;
    }
  }
  ck_assert_int_gt(told, 20);
}
END_TEST

/* Two times alone tell little: nearly all faults look alike. Saying so, and what to check, is the answer. */
START_TEST(times_alone_leave_a_group)
{
  visit v = new_visit();
  v.found.t_empty_to_cutout_s = v.expected.t_empty_to_cutout_s * 1.35;
  v.found.t_cutin_to_cutout_s = v.expected.t_cutin_to_cutout_s * 1.4;
  diagnose(&v);
  const int32_t group = v.causes[0].group;
  ck_assert_int_gt(group, 0);
  int members = 0;
  for (size_t i = 0; i < v.n_causes; i++) {
    if (v.causes[i].group != group) continue;
    members++;
    ck_assert_int_eq(v.causes[i].check, v.causes[0].check);
  }
  ck_assert_int_ge(members, 4);
  ck_assert_int_gt(v.causes[0].check, 0);
  ck_assert_double_lt(v.causes[0].probability, 0.5);
}
END_TEST

/* Common practice, no source: an LP discharge valve against an interstage leak needs soap. */
START_TEST(soap_splits_valve_and_leak)
{
  visit v = new_visit();
  v.n_prior = (size_t)freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE);
  for (size_t c = 0; c < v.n_prior; c++) v.prior[c] = 0.0;
  v.prior[FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE] = 1.0;
  v.prior[FREEAIR_EVIDENCE_INTERSTAGE_LEAK] = 1.0;
  v.options.pair_share = 0.0;
  v.found.t_empty_to_cutout_s = 400.0;
  v.found.p_interstage_pa = 3.2e5;
  v.found.t_hp_discharge_k = 470.0;
  v.found.motor_current_a = 19.0;
  diagnose(&v);
  ck_assert_int_gt(v.causes[0].group, 0);
  ck_assert_int_eq(v.causes[1].group, v.causes[0].group);
  say(&v, FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES, FREEAIR_EVIDENCE_YES);
  diagnose(&v);
  ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_INTERSTAGE_LEAK);
  ck_assert_double_gt(v.causes[0].probability, 0.9);
  ck_assert_int_eq(v.causes[0].group, 0);
}
END_TEST

START_TEST(contradictions_are_named)
{
  visit v = new_visit();
  v.found.delivery_m3_s = 0.5 * v.expected.delivery_m3_s; /* yet the time is right */
  v.found.t_empty_to_cutout_s = v.expected.t_empty_to_cutout_s;
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_WARN_INCONSISTENT);
  ck_assert_int_eq(v.summary.contradictions, 2);
  ck_assert_int_eq(v.summary.verdict, FREEAIR_VERDICT_CANNOT_TELL);
  const freeair_diagnosis_finding *delivery = finding_of(&v, FREEAIR_EVIDENCE_DELIVERY);
  ck_assert_int_eq(delivery->use, FREEAIR_DIAGNOSIS_CONTRADICTS);
  ck_assert_double_lt(delivery->disagreement, -3.0);
  ck_assert_double_eq_tol(delivery->predicted, v.expected.delivery_m3_s, 0.0008);
  /* the pump slips by the tachometer, yet delivers and times are right: the tachometer is alone */
  visit w = new_visit();
  w.found.motor_speed_rev_s = w.expected.motor_speed_rev_s;
  w.found.pump_speed_rev_s = 0.8 * w.expected.pump_speed_rev_s;
  w.found.t_empty_to_cutout_s = w.expected.t_empty_to_cutout_s;
  w.found.motor_current_a = w.expected.motor_current_a;
  w.found.p_interstage_pa = w.expected.p_interstage_pa;
  diagnose(&w);
  ck_assert_int_eq(w.status, FREEAIR_WARN_INCONSISTENT);
  const freeair_diagnosis_finding *pump = finding_of(&w, FREEAIR_EVIDENCE_PUMP_SPEED);
  ck_assert_int_eq(pump->use, FREEAIR_DIAGNOSIS_CONTRADICTS);
  ck_assert_double_eq_tol(pump->predicted, w.expected.pump_speed_rev_s, 0.3);
  /* one reading alone, however far off, contradicts nothing */
  visit x = new_visit();
  x.found.t_empty_to_cutout_s = 4.0 * x.expected.t_empty_to_cutout_s;
  diagnose(&x);
  ck_assert_int_eq(x.status, FREEAIR_OK);
}
END_TEST

/* Nothing that is listed fits: something else keeps its probability. */
START_TEST(something_else_is_kept)
{
  visit v = new_visit();
  v.found.p_interstage_pa = 0.5 * v.expected.p_interstage_pa;
  v.found.t_empty_to_cutout_s = 0.8 * v.expected.t_empty_to_cutout_s;
  v.found.t_hp_discharge_k = v.expected.t_hp_discharge_k - 60.0;
  diagnose(&v);
  ck_assert_double_gt(probability_of(&v, FREEAIR_EVIDENCE_OTHER), 0.3);
}
END_TEST

START_TEST(two_faults_are_both_named)
{
  visit v = new_visit();
  v.found.motor_speed_rev_s = 28.8;
  v.found.pump_speed_rev_s = 10.6;
  v.found.run_capacitance_f = 29e-6;
  v.found.leak_isolated_m3_s = 0.0016;
  v.found.leak_open_m3_s = 0.0021;
  say(&v, FREEAIR_EVIDENCE_BELT_DUST, FREEAIR_EVIDENCE_YES);
  say(&v, FREEAIR_EVIDENCE_UNLOADER_BLOWS_STOPPED, FREEAIR_EVIDENCE_YES);
  v.found.run_capacitance_f = NAN;
  diagnose(&v);
  ck_assert_double_gt(probability_of(&v, FREEAIR_EVIDENCE_BELT_SLIP), 0.8);
  ck_assert_double_gt(probability_of(&v, FREEAIR_EVIDENCE_CHECK_VALVE), 0.8);
  ck_assert_double_gt(v.summary.probability_pair, 0.8);
}
END_TEST

int main(void)
{
  TCase *always = tcase_create("always");
  tcase_set_timeout(always, 120);
  tcase_add_test(always, no_evidence_leaves_the_priors);
  tcase_add_test(always, probabilities_make_one);
  tcase_add_test(always, groups_leave_nobody_out);
  tcase_add_test(always, order_of_answers_does_not_matter);
  tcase_add_test(always, not_checked_is_no_evidence);
  tcase_add_test(always, answers_push_the_right_way);
  tcase_add_test(always, readings_push_the_right_way);
  tcase_add_test(always, a_worse_instrument_says_less);
  tcase_add_test(always, one_test_counts_once);
  tcase_add_test(always, impossible_causes_are_not_named);
  tcase_add_test(always, priors_are_the_callers);
  tcase_add_test(always, reasons_explain);
  tcase_add_test(always, residuals_of_a_sound_machine_are_those_of_the_findings);
  tcase_add_test(always, times_alone_leave_a_group);
  tcase_add_test(always, soap_splits_valve_and_leak);
  tcase_add_test(always, contradictions_are_named);
  tcase_add_test(always, something_else_is_kept);
  tcase_add_test(always, two_faults_are_both_named);
  return run_case("diagnosis", always);
}
