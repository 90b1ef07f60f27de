/* SPDX-License-Identifier: MIT */
#include <freeair/diagnosis_subject.h>
#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>

static int32_t n_causes(void)
{
  return freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE);
}

/* What is not said is left open. */
START_TEST(an_unknown_machine_can_have_anything)
{
  freeair_diagnosis_subject s;
  ck_assert_int_eq(freeair_diagnosis_subject_init(&s, sizeof s), FREEAIR_OK);
  for (int32_t c = 1; c < n_causes(); c++) {
    double factor;
    ck_assert_int_eq(freeair_diagnosis_subject_cause(&s, c, &factor), FREEAIR_OK);
    ck_assert_double_eq(factor, 1.0);
  }
  for (int32_t r = 1; r < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_READING); r++) {
    int32_t applies;
    ck_assert_int_eq(freeair_diagnosis_subject_reading(&s, r, &applies), FREEAIR_OK);
    ck_assert_int_eq(applies, 1);
  }
}
END_TEST

/* Every machine can be healthy, or have something else, or a bad first-stage valve. */
START_TEST(some_causes_fit_every_machine)
{
  static const int32_t always[] = {FREEAIR_EVIDENCE_HEALTHY, FREEAIR_EVIDENCE_OTHER, FREEAIR_EVIDENCE_LP_SUCTION_VALVE,
                                   FREEAIR_EVIDENCE_DOWNSTREAM};
  for (int32_t stages = 0; stages <= 2; stages++)
    for (int32_t head = 0; head <= 2; head++)
      for (int32_t drive = 0; drive <= 2; drive++)
        for (int32_t supply = 0; supply <= 3; supply++) {
          freeair_diagnosis_subject s = FREEAIR_DIAGNOSIS_SUBJECT_INIT;
          s.stages = stages;
          s.head = head;
          s.drive = drive;
          s.supply = supply;
          for (size_t i = 0; i < 4; i++) {
            double factor;
            ck_assert_int_eq(freeair_diagnosis_subject_cause(&s, always[i], &factor), FREEAIR_OK);
            ck_assert_double_eq(factor, 1.0);
          }
        }
}
END_TEST

START_TEST(machines_lack_what_they_lack)
{
  freeair_diagnosis_subject s = FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  double factor;
  int32_t applies;
  s.stages = 1;
  freeair_diagnosis_subject_cause(&s, FREEAIR_EVIDENCE_HP_SUCTION_VALVE, &factor);
  ck_assert_double_eq(factor, 0.0);
  freeair_diagnosis_subject_reading(&s, FREEAIR_EVIDENCE_INTERSTAGE, &applies);
  ck_assert_int_eq(applies, 0);
  s.head = FREEAIR_DIAGNOSIS_HEAD_SHARED;
  freeair_diagnosis_subject_cause(&s, FREEAIR_EVIDENCE_GASKET_BETWEEN, &factor);
  ck_assert_double_eq(factor, 2.0);
  s.cylinders = 1;
  freeair_diagnosis_subject_cause(&s, FREEAIR_EVIDENCE_GASKET_BETWEEN, &factor);
  ck_assert_double_eq(factor, 0.0);
  s.supply = FREEAIR_DIAGNOSIS_ENGINE;
  freeair_diagnosis_subject_cause(&s, FREEAIR_EVIDENCE_LOW_VOLTAGE, &factor);
  ck_assert_double_eq(factor, 0.0);
  freeair_diagnosis_subject_reading(&s, FREEAIR_EVIDENCE_MOTOR_CURRENT, &applies);
  ck_assert_int_eq(applies, 0);
  freeair_diagnosis_subject_reading(&s, FREEAIR_EVIDENCE_MOTOR_SPEED, &applies);
  ck_assert_int_eq(applies, 1);
}
END_TEST

int main(void)
{
  TCase *tests = tcase_create("diagnosis_subject");
  tcase_add_test(tests, an_unknown_machine_can_have_anything);
  tcase_add_test(tests, some_causes_fit_every_machine);
  tcase_add_test(tests, machines_lack_what_they_lack);
  return run_case("diagnosis_subject", tests);
}
