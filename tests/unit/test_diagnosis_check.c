/* SPDX-License-Identifier: MIT */
#include "../suite.h"
#include "diagnosis.h"

#include <freeair/caution.h>
#include <freeair/likelihood.h>

#include <check.h>

static freeair_diagnosis_check checks[ROOM];
static size_t n;

static int32_t rank(const visit *v, const freeair_diagnosis_cause *causes, size_t n_causes, const double *effort_s,
                    size_t n_effort)
{
  for (size_t i = 0; i < ROOM; i++) freeair_diagnosis_check_init(&checks[i], sizeof checks[i]);
  return freeair_diagnosis_check_rank(&v->subject, &v->found, v->observation, v->answer, v->n_observations, causes,
                                      sizeof causes[0], n_causes, effort_s, n_effort, checks, sizeof checks[0], ROOM,
                                      &n);
}

static const freeair_diagnosis_check *row_of_check(int32_t check)
{
  for (size_t i = 0; i < n; i++)
    if (checks[i].check == check) return &checks[i];
  return NULL;
}

static void two_causes(freeair_diagnosis_cause rows[2], int32_t a, int32_t b)
{
  for (size_t i = 0; i < 2; i++) freeair_diagnosis_cause_init(&rows[i], sizeof rows[i]);
  rows[0].cause = a;
  rows[1].cause = b;
  rows[0].probability = rows[1].probability = 0.5;
  rows[0].size = rows[1].size = 0.3;
  rows[0].u_size = rows[1].u_size = 0.1;
}

START_TEST(sorted_bounded_and_with_cautions)
{
  visit v = new_visit();
  diagnose(&v);
  ck_assert_int_eq(rank(&v, v.causes, v.n_causes, NULL, 0), FREEAIR_OK);
  ck_assert_uint_gt(n, 15);
  for (size_t i = 0; i < n; i++) {
    ck_assert(checks[i].information > 0.0 && checks[i].information <= v.summary.doubt);
    ck_assert_double_eq_tol(checks[i].information_rate_1_s, checks[i].information / checks[i].effort_s, 1e-15);
    if (i > 0) ck_assert_double_le(checks[i].information_rate_1_s, checks[i - 1].information_rate_1_s);
    ck_assert_int_eq(checks[i].qualification, (checks[i].cautions & FREEAIR_CAUTION_LIVE) != 0);
  }
  /* common practice: looking and listening comes before taking heads off */
  ck_assert_int_eq(checks[0].check, FREEAIR_EVIDENCE_LISTEN_AT_INLET);
  ck_assert_int_ne(checks[n - 1].check, FREEAIR_EVIDENCE_LISTEN_AT_HEADS);
}
END_TEST

START_TEST(nothing_to_learn_when_certain)
{
  visit v = new_visit();
  freeair_diagnosis_cause one = FREEAIR_DIAGNOSIS_CAUSE_INIT;
  one.cause = FREEAIR_EVIDENCE_BELT_SLIP;
  one.probability = 1.0;
  ck_assert_int_eq(rank(&v, &one, 1, NULL, 0), FREEAIR_OK);
  ck_assert_uint_eq(n, 0);
}
END_TEST

/* One observation between two causes: the closed form of the likelihood topic. */
START_TEST(one_observation_is_the_closed_form)
{
  visit v = new_visit();
  freeair_diagnosis_cause rows[2];
  two_causes(rows, FREEAIR_EVIDENCE_LP_SUCTION_VALVE, FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE);
  ck_assert_int_eq(rank(&v, rows, 2, NULL, 0), FREEAIR_OK);
  double hit;
  double other;
  double false_alarm;
  int32_t basis;
  double bits;
  freeair_likelihood_observation(rows[0].cause, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, &hit, &false_alarm, &basis);
  freeair_likelihood_observation(rows[1].cause, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, &other, &false_alarm, &basis);
  ck_assert_int_eq(freeair_likelihood_information(0.5, hit, other, &bits), FREEAIR_OK);
  ck_assert_double_eq_tol(row_of_check(FREEAIR_EVIDENCE_LISTEN_AT_INLET)->information, bits, 1e-12);
}
END_TEST

/* Common practice, no source: what splits which. */
START_TEST(the_right_check_splits)
{
  static const struct {
    int32_t a;
    int32_t b;
    int32_t check;
  } pairs[] = {
      {FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE, FREEAIR_EVIDENCE_INTERSTAGE_LEAK, FREEAIR_EVIDENCE_SOAP_INTERSTAGE},
      {FREEAIR_EVIDENCE_BELT_SLIP, FREEAIR_EVIDENCE_MOTOR, FREEAIR_EVIDENCE_TACHOMETER},
      {FREEAIR_EVIDENCE_LP_SUCTION_VALVE, FREEAIR_EVIDENCE_HP_SUCTION_VALVE, FREEAIR_EVIDENCE_INTERSTAGE_GAUGE},
      {FREEAIR_EVIDENCE_UNLOADER_LEAK, FREEAIR_EVIDENCE_PISTON_RINGS, FREEAIR_EVIDENCE_BLOCK_UNLOADER},
      {FREEAIR_EVIDENCE_CHECK_VALVE, FREEAIR_EVIDENCE_UNLOADER_LEAK, FREEAIR_EVIDENCE_STOP_AND_WATCH},
      {FREEAIR_EVIDENCE_LOW_VOLTAGE, FREEAIR_EVIDENCE_MOTOR, FREEAIR_EVIDENCE_MEASURE_SUPPLY},
      {FREEAIR_EVIDENCE_RUN_CAPACITOR, FREEAIR_EVIDENCE_MOTOR, FREEAIR_EVIDENCE_MEASURE_CAPACITORS},
      {FREEAIR_EVIDENCE_HEALTHY, FREEAIR_EVIDENCE_GAUGE_OR_SWITCH, FREEAIR_EVIDENCE_SECOND_GAUGE},
  };
  for (size_t i = 0; i < sizeof pairs / sizeof pairs[0]; i++) {
    visit v = new_visit();
    freeair_diagnosis_cause rows[2];
    two_causes(rows, pairs[i].a, pairs[i].b);
    for (size_t k = 0; k < 2; k++) {
      double cost;
      int32_t two_sided;
      freeair_likelihood_size(rows[k].cause, &rows[k].size, &cost, &two_sided);
      rows[k].size *= 2.0;
      rows[k].u_size = 0.7 * rows[k].size;
    }
    ck_assert_int_eq(rank(&v, rows, 2, NULL, 0), FREEAIR_OK);
    /* among the three that tell most, whatever the time */
    const freeair_diagnosis_check *wanted = row_of_check(pairs[i].check);
    ck_assert_ptr_nonnull(wanted);
    int better = 0;
    for (size_t k = 0; k < n; k++) better += checks[k].information > wanted->information;
    ck_assert_msg(better < 3, "%s splits %s and %s only as number %d",
                  freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CHECK, pairs[i].check),
                  freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CAUSE, pairs[i].a),
                  freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CAUSE, pairs[i].b), better + 1);
  }
}
END_TEST

/* What is known is not news. */
START_TEST(known_things_are_not_proposed)
{
  visit v = new_visit();
  diagnose(&v);
  rank(&v, v.causes, v.n_causes, NULL, 0);
  ck_assert_ptr_nonnull(row_of_check(FREEAIR_EVIDENCE_LISTEN_AT_INLET));
  ck_assert_ptr_nonnull(row_of_check(FREEAIR_EVIDENCE_TACHOMETER));
  say(&v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, FREEAIR_EVIDENCE_NO);
  v.found.motor_speed_rev_s = 29.0;
  v.found.pump_speed_rev_s = 13.3;
  diagnose(&v);
  rank(&v, v.causes, v.n_causes, NULL, 0);
  ck_assert_ptr_null(row_of_check(FREEAIR_EVIDENCE_LISTEN_AT_INLET));
  ck_assert_ptr_null(row_of_check(FREEAIR_EVIDENCE_TACHOMETER));
  v.subject.drive = FREEAIR_DIAGNOSIS_DRIVE_DIRECT;
  v.subject.supply = FREEAIR_DIAGNOSIS_THREE_PHASE;
  v.subject.stages = 1;
  diagnose(&v);
  rank(&v, v.causes, v.n_causes, NULL, 0);
  ck_assert_ptr_null(row_of_check(FREEAIR_EVIDENCE_INTERSTAGE_GAUGE));
}
END_TEST

/* A test that was made is not proposed again; one with the service valve open says nothing of the pump alone. */
START_TEST(a_test_that_was_made_is_not_proposed_again)
{
  for (int32_t closed = FREEAIR_EVIDENCE_NOT_CHECKED; closed <= FREEAIR_EVIDENCE_NO; closed++)
    for (int which = 0; which < 4; which++) {
      visit v = new_visit();
      v.subject.service_valve_closed = closed;
      if (which == 1) v.found.t_empty_to_cutout_s = 330.0;
      if (which == 2) v.found.delivery_m3_s = 0.009;
      if (which == 3) v.found.p_level_off_pa = 8e5;
      diagnose(&v);
      rank(&v, v.causes, v.n_causes, NULL, 0);
      const freeair_diagnosis_check *test = row_of_check(FREEAIR_EVIDENCE_PUMP_UP_TEST);
      ck_assert_int_eq(test == NULL, closed == FREEAIR_EVIDENCE_YES && which > 0);
    }
}
END_TEST

START_TEST(effort_is_the_callers)
{
  visit v = new_visit();
  double effort_s[ROOM];
  diagnose(&v);
  for (size_t i = 0; i < ROOM; i++) effort_s[i] = NAN;
  const size_t n_effort = (size_t)freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CHECK);
  rank(&v, v.causes, v.n_causes, effort_s, n_effort);
  const int32_t first = checks[0].check;
  effort_s[first] = 1e6; /* no access */
  effort_s[FREEAIR_EVIDENCE_HEADS_OFF] = 30.0; /* they are off already */
  ck_assert_int_eq(rank(&v, v.causes, v.n_causes, effort_s, n_effort), FREEAIR_OK);
  ck_assert_int_eq(checks[0].check, FREEAIR_EVIDENCE_HEADS_OFF);
  ck_assert_double_eq(checks[0].effort_s, 30.0);
  ck_assert_int_eq(checks[n - 1].check, first);
  effort_s[3] = 0.0;
  ck_assert_int_eq(rank(&v, v.causes, v.n_causes, effort_s, n_effort), FREEAIR_ERR_DOMAIN);
  ck_assert_uint_eq(n, 0);
  ck_assert(isnan(checks[0].information));
}
END_TEST

/* Electrical checks are for the qualified, and say so. */
START_TEST(efforts_carry_their_cautions)
{
  for (int32_t k = 1; k < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CHECK); k++) {
    double effort_s;
    uint32_t cautions;
    int32_t qualification;
    ck_assert_int_eq(freeair_diagnosis_check_effort(k, &effort_s, &cautions, &qualification), FREEAIR_OK);
    ck_assert(effort_s >= 60.0 && effort_s <= 7200.0);
    ck_assert_int_eq(qualification, (cautions & FREEAIR_CAUTION_LIVE) != 0);
    if (k == FREEAIR_EVIDENCE_MEASURE_CAPACITORS) ck_assert(cautions & FREEAIR_CAUTION_CAPACITOR);
    if (k == FREEAIR_EVIDENCE_HEADS_OFF) {
      ck_assert(cautions & FREEAIR_CAUTION_ISOLATE);
      ck_assert(cautions & FREEAIR_CAUTION_DEPRESSURISE);
      ck_assert(cautions & FREEAIR_CAUTION_STORED_ENERGY);
    }
  }
}
END_TEST

int main(void)
{
  TCase *tests = tcase_create("diagnosis_check");
  tcase_add_test(tests, efforts_carry_their_cautions);
  tcase_add_test(tests, sorted_bounded_and_with_cautions);
  tcase_add_test(tests, nothing_to_learn_when_certain);
  tcase_add_test(tests, one_observation_is_the_closed_form);
  tcase_add_test(tests, the_right_check_splits);
  tcase_add_test(tests, known_things_are_not_proposed);
  tcase_add_test(tests, a_test_that_was_made_is_not_proposed_again);
  tcase_add_test(tests, effort_is_the_callers);
  return run_case("diagnosis_check", tests);
}
