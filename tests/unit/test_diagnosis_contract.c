/* SPDX-License-Identifier: MIT */
/* The contract of the diagnosis: arrays too short, errors, sizes, absurd readings. */
#include "../suite.h"
#include "diagnosis.h"

#include <freeair/verdict.h>

#include <check.h>

START_TEST(short_arrays_say_how_much_there_is)
{
  visit v = new_visit();
  v.found.t_empty_to_cutout_s = 400.0;
  v.found.p_interstage_pa = 3.3e5;
  diagnose(&v);
  freeair_diagnosis_cause two[2] = {FREEAIR_DIAGNOSIS_CAUSE_INIT, FREEAIR_DIAGNOSIS_CAUSE_INIT};
  size_t n_causes;
  size_t n_reasons;
  size_t n_findings;
  const int32_t status = freeair_diagnosis_rank(&v.subject, &v.expected, &v.found, NULL, NULL, 0, NULL, 0, &v.options,
                                                two, sizeof two[0], 2, &n_causes, NULL, 0, 0, &n_reasons, NULL, 0, 0,
                                                &n_findings, &v.summary);
  ck_assert_int_eq(status, FREEAIR_WARN_TRUNCATED);
  ck_assert_uint_eq(n_causes, v.n_causes);
  ck_assert_uint_eq(n_reasons, v.n_reasons);
  ck_assert_uint_eq(n_findings, 2);
  for (size_t i = 0; i < 2; i++) {
    ck_assert_int_eq(two[i].cause, v.causes[i].cause);
    ck_assert_double_eq(two[i].probability, v.causes[i].probability);
  }
}
END_TEST

START_TEST(errors_leave_nothing_behind)
{
  visit v = new_visit();
  v.found.t_empty_to_cutout_s = -1.0;
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_ERR_DOMAIN);
  ck_assert(isnan(v.causes[0].probability) && isnan(v.summary.probability_healthy));
  ck_assert_int_eq(v.summary.cause, 0);
  ck_assert_int_eq(v.summary.verdict, FREEAIR_VERDICT_CANNOT_TELL);
  ck_assert_uint_eq(v.n_causes, 0);
  v = new_visit();
  say(&v, 1000, FREEAIR_EVIDENCE_YES);
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_ERR_NOT_FOUND);
  v = new_visit();
  say(&v, FREEAIR_EVIDENCE_BELT_DUST, 3);
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_ERR_DOMAIN);
  v = new_visit();
  say(&v, FREEAIR_EVIDENCE_BELT_DUST, FREEAIR_EVIDENCE_YES);
  say(&v, FREEAIR_EVIDENCE_BELT_DUST, FREEAIR_EVIDENCE_NO);
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_ERR_DOMAIN);
}
END_TEST

/* A row must say its own size, and fit its stride. */
START_TEST(rows_say_their_size)
{
  visit v = new_visit();
  freeair_diagnosis_cause rows[2] = {FREEAIR_DIAGNOSIS_CAUSE_INIT, FREEAIR_DIAGNOSIS_CAUSE_INIT};
  size_t n[3];
  rows[1].struct_size = 8;
  int32_t status = freeair_diagnosis_rank(&v.subject, &v.expected, &v.found, NULL, NULL, 0, NULL, 0, &v.options, rows,
                                          sizeof rows[0], 2, &n[0], NULL, 0, 0, &n[1], NULL, 0, 0, &n[2], &v.summary);
  ck_assert_int_eq(status, FREEAIR_ERR_VERSION);
  rows[1] = rows[0];
  status = freeair_diagnosis_rank(&v.subject, &v.expected, &v.found, NULL, NULL, 0, NULL, 0, &v.options, rows, 16, 2,
                                  &n[0], NULL, 0, 0, &n[1], NULL, 0, 0, &n[2], &v.summary);
  ck_assert_int_eq(status, FREEAIR_ERR_VERSION);
  /* rows inside something larger, of a caller that knows no more than the first release */
  struct {
    freeair_diagnosis_cause row;
    double mine;
  } wide[3];
  for (size_t i = 0; i < 3; i++) {
    freeair_diagnosis_cause_init(&wide[i].row, FREEAIR_DIAGNOSIS_CAUSE_BASELINE);
    wide[i].mine = 7.0;
  }
  status = freeair_diagnosis_rank(&v.subject, &v.expected, &v.found, NULL, NULL, 0, NULL, 0, &v.options, &wide[0].row,
                                  sizeof wide[0], 3, &n[0], NULL, 0, 0, &n[1], NULL, 0, 0, &n[2], &v.summary);
  ck_assert_int_eq(status, FREEAIR_WARN_TRUNCATED);
  for (size_t i = 0; i < 3; i++) {
    ck_assert_double_eq(wide[i].mine, 7.0);
    ck_assert_double_gt(wide[i].row.probability, 0.0);
  }
}
END_TEST

/* Absurd readings give an answer or an error, never NaN in an answer. */
START_TEST(absurd_readings_give_numbers)
{
  uint32_t state = 7;
  for (int k = 0; k < 30; k++) {
    visit v = new_visit();
    v.found.t_empty_to_cutout_s = pow(10.0, 12.0 * uniform(&state) - 5.0);
    v.found.p_interstage_pa = pow(10.0, 13.0 * uniform(&state) - 5.0);
    v.found.pump_speed_rev_s = pow(10.0, 8.0 * uniform(&state) - 5.0);
    v.found.run_capacitance_f = pow(10.0, -11.0 * uniform(&state));
    v.found.leak_open_m3_s = pow(10.0, 3.0 - 9.0 * uniform(&state));
    v.found.p_level_off_pa = pow(10.0, 13.0 * uniform(&state) - 5.0);
    for (int32_t o = 1; o < 47; o++) say(&v, o, uniform(&state) < 0.5 ? FREEAIR_EVIDENCE_YES : FREEAIR_EVIDENCE_NO);
    diagnose(&v);
    ck_assert_int_ge(v.status, 0);
    double alone = v.summary.probability_pair;
    for (size_t i = 0; i < v.n_causes; i++) {
      ck_assert(isfinite(v.causes[i].probability) && isfinite(v.causes[i].support));
      alone += v.causes[i].probability_alone;
    }
    ck_assert_double_eq_tol(alone, 1.0, 1e-9);
  }
}
END_TEST

int main(void)
{
  TCase *contract = tcase_create("contract");
  tcase_set_timeout(contract, 60);
  tcase_add_test(contract, short_arrays_say_how_much_there_is);
  tcase_add_test(contract, errors_leave_nothing_behind);
  tcase_add_test(contract, rows_say_their_size);
  tcase_add_test(contract, absurd_readings_give_numbers);
  return run_case("diagnosis_contract", contract);
}
