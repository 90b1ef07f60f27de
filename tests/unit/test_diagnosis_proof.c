/* SPDX-License-Identifier: MIT */
#include "../suite.h"
#include "diagnosis.h"

#include <freeair/diagnosis_proof.h>
#include <freeair/verdict.h>

#include <check.h>

static freeair_diagnosis_proof proof;

static int32_t judge(const visit *v, int32_t cause)
{
  freeair_diagnosis_proof_init(&proof, sizeof proof);
  return freeair_diagnosis_proof_judge(cause, v->causes, sizeof v->causes[0], v->n_causes, v->findings,
                                       sizeof v->findings[0], v->n_findings, NAN, NAN, &proof);
}

/* An LP suction valve that was bad, and the test after the repair: from the same start, so many times as long as
 * a sound machine takes. Leaks, check valve and capacitors: nobody looked. */
static visit after_the_repair(double times, double interstage, int32_t blows_back)
{
  visit v = new_visit();
  v.subject.service_valve_closed = FREEAIR_EVIDENCE_YES;
  v.found.t_empty_to_cutout_s = times * v.expected.t_empty_to_cutout_s;
  v.found.t_cutin_to_cutout_s = times * v.expected.t_cutin_to_cutout_s;
  v.found.p_interstage_pa = interstage * v.expected.p_interstage_pa;
  say(&v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, blows_back);
  diagnose(&v);
  return v;
}

START_TEST(a_good_repair_is_proved_though_not_all_was_looked_at)
{
  const visit v = after_the_repair(1.01, 0.99, FREEAIR_EVIDENCE_NO);
  ck_assert_int_eq(v.summary.verdict, FREEAIR_VERDICT_CANNOT_TELL);
  ck_assert_int_eq(judge(&v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE), FREEAIR_OK);
  ck_assert_int_eq(proof.verdict, FREEAIR_VERDICT_MEETS);
  ck_assert_double_lt(proof.probability_even, 0.05);
  ck_assert_double_eq_tol(proof.delivery, 1.0 / 1.01, 1e-12);
  ck_assert_double_gt(proof.probability_delivery, 0.9);
}
END_TEST

START_TEST(a_repair_that_mended_nothing_is_not)
{
  const visit v = after_the_repair(1.5, 0.65, FREEAIR_EVIDENCE_YES);
  judge(&v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE);
  ck_assert_int_eq(proof.gone, FREEAIR_VERDICT_FAILS);
  ck_assert_int_eq(proof.delivers, FREEAIR_VERDICT_FAILS);
  ck_assert_int_eq(proof.verdict, FREEAIR_VERDICT_FAILS);
}
END_TEST

/* The reeds are sound, yet it stays short: something else is wrong too. */
START_TEST(the_cause_may_be_gone_and_the_air_still_missing)
{
  visit v = after_the_repair(1.3, 1.0, FREEAIR_EVIDENCE_NO);
  v.found.motor_speed_rev_s = v.expected.motor_speed_rev_s;
  v.found.pump_speed_rev_s = 0.77 * v.expected.pump_speed_rev_s;
  diagnose(&v);
  ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_BELT_SLIP);
  judge(&v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE);
  ck_assert_int_eq(proof.gone, FREEAIR_VERDICT_MEETS);
  ck_assert_int_eq(proof.delivers, FREEAIR_VERDICT_FAILS);
  ck_assert_int_eq(proof.verdict, FREEAIR_VERDICT_FAILS);
}
END_TEST

/* Without a test nothing is proved, of whatever cause. */
START_TEST(no_test_no_proof)
{
  visit v = new_visit();
  say(&v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, FREEAIR_EVIDENCE_NO);
  diagnose(&v);
  for (int32_t c = FREEAIR_EVIDENCE_INTAKE_FILTER; c < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE); c++) {
    ck_assert_int_eq(judge(&v, c), FREEAIR_OK);
    ck_assert_int_eq(proof.verdict, FREEAIR_VERDICT_CANNOT_TELL);
    ck_assert(isnan(proof.delivery));
    ck_assert_int_eq(proof.reading, 0);
  }
}
END_TEST

/* Nobody read anything: even odds stay even, however rare the cause. */
START_TEST(no_evidence_leaves_even_odds)
{
  visit v = new_visit();
  diagnose(&v);
  for (int32_t c = FREEAIR_EVIDENCE_INTAKE_FILTER; c < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE); c++) {
    judge(&v, c);
    ck_assert_double_eq_tol(proof.probability_even, 0.5, 1e-9);
    ck_assert_int_eq(proof.gone, FREEAIR_VERDICT_CANNOT_TELL);
  }
}
END_TEST

/* The slower, the less proved: never the other way. */
START_TEST(slower_is_never_better)
{
  double cause = 0.0;
  double delivers = 1.0;
  int meets = 0;
  int fails = 0;
  for (double times = 1.0; times < 1.6; times += 0.05) {
    const visit v = after_the_repair(times, 1.0 - 0.6 * (times - 1.0), FREEAIR_EVIDENCE_NOT_CHECKED);
    judge(&v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE);
    ck_assert_double_gt(proof.probability_even, cause);
    ck_assert_double_lt(proof.probability_delivery, delivers);
    if (fails > 0) ck_assert_int_ne(proof.verdict, FREEAIR_VERDICT_MEETS);
    meets += proof.verdict == FREEAIR_VERDICT_MEETS;
    fails += proof.verdict == FREEAIR_VERDICT_FAILS;
    cause = proof.probability_even;
    delivers = proof.probability_delivery;
  }
  ck_assert_int_gt(meets, 0);
  ck_assert_int_gt(fails, 5);
}
END_TEST

START_TEST(errors_leave_nothing_behind)
{
  const visit v = after_the_repair(1.0, 1.0, FREEAIR_EVIDENCE_NO);
  ck_assert_int_eq(judge(&v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE), FREEAIR_OK);
  const int32_t status = freeair_diagnosis_proof_judge(
      FREEAIR_EVIDENCE_LP_SUCTION_VALVE, v.causes, 16, v.n_causes, v.findings, sizeof v.findings[0], v.n_findings,
      NAN, NAN, &proof);
  ck_assert_int_eq(status, FREEAIR_ERR_VERSION);
  ck_assert(isnan(proof.probability) && isnan(proof.delivery));
  ck_assert_int_eq(proof.verdict, FREEAIR_VERDICT_CANNOT_TELL);
  ck_assert_int_eq(proof.gone, FREEAIR_VERDICT_CANNOT_TELL);
}
END_TEST

int main(void)
{
  TCase *tests = tcase_create("diagnosis_proof");
  tcase_set_timeout(tests, 60);
  tcase_add_test(tests, a_good_repair_is_proved_though_not_all_was_looked_at);
  tcase_add_test(tests, a_repair_that_mended_nothing_is_not);
  tcase_add_test(tests, the_cause_may_be_gone_and_the_air_still_missing);
  tcase_add_test(tests, no_test_no_proof);
  tcase_add_test(tests, no_evidence_leaves_even_odds);
  tcase_add_test(tests, slower_is_never_better);
  tcase_add_test(tests, errors_leave_nothing_behind);
  return run_case("diagnosis_proof", tests);
}
