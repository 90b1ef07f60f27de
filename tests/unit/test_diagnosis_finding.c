/* SPDX-License-Identifier: MIT */
#include "../suite.h"
#include "diagnosis.h"

#include <freeair/likelihood.h>

#include <check.h>

static freeair_diagnosis_finding rows[ROOM];
static size_t n;

static int32_t compare(const visit *v)
{
  for (size_t i = 0; i < ROOM; i++) freeair_diagnosis_finding_init(&rows[i], sizeof rows[i]);
  return freeair_diagnosis_finding_compare(&v->subject, &v->expected, &v->found, rows, sizeof rows[0], ROOM, &n);
}

/* A sound machine as expected deviates by nothing; what cannot be compared says so. */
START_TEST(as_expected)
{
  visit v = new_visit();
  v.found = sound_readings();
  v.found.p_level_off_pa = 6e5;
  v.found.leak_isolated_m3_s = 0.0;
  v.found.gauge_difference_pa = 0.0;
  v.found.water_m3 = 0.0;
  ck_assert_int_eq(compare(&v), FREEAIR_OK);
  ck_assert_uint_eq(n, 26);
  for (size_t i = 0; i < n; i++) {
    if (rows[i].reading == FREEAIR_EVIDENCE_WATER) {
      ck_assert_int_eq(rows[i].use, FREEAIR_DIAGNOSIS_NOT_USED); /* no receiver to compare with */
      continue;
    }
    ck_assert_int_eq(rows[i].use, FREEAIR_DIAGNOSIS_USED);
    ck_assert(isnan(rows[i].predicted) && isnan(rows[i].disagreement));
    if (rows[i].reading == FREEAIR_EVIDENCE_LEVEL_OFF) continue;
    ck_assert_double_eq_tol(rows[i].deviation, 0.0, 1e-12);
    ck_assert_double_eq_tol(rows[i].residual, 0.0, 1e-9);
    ck_assert_double_gt(rows[i].spread, 0.0);
  }
  v.subject.receiver_m3 = 0.3;
  v.found.water_m3 = 0.03;
  ck_assert_int_eq(compare(&v), FREEAIR_OK);
  const freeair_diagnosis_finding *water = NULL;
  for (size_t i = 0; i < n; i++)
    if (rows[i].reading == FREEAIR_EVIDENCE_WATER) water = &rows[i];
  ck_assert_double_eq_tol(water->deviation, 0.1, 1e-12);
}
END_TEST

START_TEST(without_an_expectation)
{
  visit v = new_visit();
  freeair_evidence_readings_init(&v.expected, sizeof v.expected);
  v.found = sound_readings();
  ck_assert_int_eq(compare(&v), FREEAIR_OK);
  for (size_t i = 0; i < n; i++)
    ck_assert_int_eq(rows[i].use, rows[i].reading == FREEAIR_EVIDENCE_FILTER_DROP ? FREEAIR_DIAGNOSIS_USED
                                                                                   : FREEAIR_DIAGNOSIS_NOT_USED);
}
END_TEST

/* value undoes deviation, in every scale. */
START_TEST(value_is_the_inverse)
{
  uint32_t state = 3;
  for (int32_t r = 1; r < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_READING); r++) {
    if (r == FREEAIR_EVIDENCE_LEVEL_OFF) continue;
    for (int k = 0; k < 20; k++) {
      const double expected = 0.1 + uniform(&state);
      const double found = 0.1 + uniform(&state);
      const double reference = 0.5 + uniform(&state);
      double deviation;
      double spread;
      double value;
      ck_assert_int_eq(freeair_likelihood_deviation(r, found, NAN, expected, NAN, reference, &deviation, &spread),
                       FREEAIR_OK);
      ck_assert_int_eq(freeair_diagnosis_finding_value(r, expected, reference, deviation, &value), FREEAIR_OK);
      ck_assert_double_eq_tol(value, found, 1e-14);
    }
  }
}
END_TEST

/* Two readings of one test, each with twice the variance of expectation: together worth one. */
START_TEST(a_family_shares_its_error)
{
  visit v = new_visit();
  v.found.t_empty_to_cutout_s = 293.0;
  v.found.u_t_empty_to_cutout_s = 0.0;
  ck_assert_int_eq(compare(&v), FREEAIR_OK);
  const double alone = rows[0].spread;
  v.found.delivery_m3_s = 0.0105;
  v.found.t_cutin_to_cutout_s = 62.0;
  ck_assert_int_eq(compare(&v), FREEAIR_OK);
  ck_assert_int_eq(rows[1].reading, FREEAIR_EVIDENCE_TIME_FROM_EMPTY);
  ck_assert_double_eq_tol(rows[1].spread, alone * sqrt(3.0), 1e-12);
}
END_TEST

START_TEST(another_site_widens)
{
  visit v = new_visit();
  v.found.t_empty_to_cutout_s = 293.0;
  v.found.t_hp_discharge_k = 446.0;
  v.found.p_interstage_pa = 4.2e5;
  v.found.motor_speed_rev_s = 29.0;
  compare(&v);
  double before[4];
  for (size_t i = 0; i < 4; i++) before[i] = rows[i].spread;
  v.found.t_ambient_k = v.expected.t_ambient_k + 20.0;
  v.found.p_ambient_pa = v.expected.p_ambient_pa * 0.85;
  compare(&v);
  ck_assert_double_gt(rows[0].spread, before[0] + 0.08);
  ck_assert_double_gt(rows[1].spread, before[1] + 0.08);
  ck_assert_double_gt(rows[2].spread, before[2] + 8.0);
  ck_assert_double_eq(rows[3].spread, before[3]);
  /* the same site changes nothing */
  v.found.t_ambient_k = v.expected.t_ambient_k;
  v.found.p_ambient_pa = v.expected.p_ambient_pa;
  compare(&v);
  for (size_t i = 0; i < 4; i++) ck_assert_double_eq(rows[i].spread, before[i]);
}
END_TEST

/* Absolute temperatures and pressures scaled alike leave logarithms alone: no unit is preferred. */
START_TEST(scale_does_not_matter)
{
  visit v = new_visit();
  v.found.t_empty_to_cutout_s = 350.0;
  compare(&v);
  const double deviation = rows[0].deviation;
  const double spread = rows[0].spread;
  v.found.t_empty_to_cutout_s = 350.0 / 60.0;
  v.expected.t_empty_to_cutout_s /= 60.0;
  compare(&v);
  ck_assert_double_eq_tol(rows[0].deviation, deviation, 1e-14);
  ck_assert_double_eq_tol(rows[0].spread, spread, 1e-14);
}
END_TEST

int main(void)
{
  TCase *tests = tcase_create("diagnosis_finding");
  tcase_add_test(tests, as_expected);
  tcase_add_test(tests, without_an_expectation);
  tcase_add_test(tests, value_is_the_inverse);
  tcase_add_test(tests, a_family_shares_its_error);
  tcase_add_test(tests, another_site_widens);
  tcase_add_test(tests, scale_does_not_matter);
  return run_case("diagnosis_finding", tests);
}
