/* SPDX-License-Identifier: MIT */
#include "../suite.h"
#include "diagnosis.h"

#include <freeair/cycle.h>
#include <freeair/diagnosis_expectation.h>
#include <freeair/fault.h>
#include <freeair/prediction.h>
#include <freeair/verdict.h>

#include <check.h>

/* An invented two-stage machine. */
static freeair_machine machine(void)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  m.speed_rev_s = 13.3;
  m.lp_bore_m = 0.12;
  m.lp_stroke_m = 0.08;
  m.receiver_m3 = 0.3;
  m.cut_in_pa = 10.3e5;
  m.cut_out_pa = 13.1e5;
  m.motor_synchronous_rev_s = 30.0;
  m.motor_rated_v = 230.0;
  return m;
}

static int32_t expect(const freeair_machine *m, const freeair_machine_site *site, double receiver_pa, visit *v)
{
  return freeair_diagnosis_expectation_from_machine(m, site, receiver_pa, &v->subject, &v->expected);
}

/* What instruments would read on a machine, by the crank-angle model. */
static void read_machine(const freeair_machine *m, const freeair_machine_site *site, freeair_evidence_readings *found)
{
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  freeair_prediction_result result = FREEAIR_PREDICTION_RESULT_INIT;
  freeair_cycle_result point = FREEAIR_CYCLE_RESULT_INIT;
  double t_s[2];
  double p_pa[2];
  double gas_k[2];
  double delivery_m3_s[2];
  *found = (freeair_evidence_readings)FREEAIR_EVIDENCE_READINGS_INIT;
  ck_assert_int_ge(freeair_prediction_pumpup(m, site, &run, &result, t_s, p_pa, gas_k, delivery_m3_s, 2), 0);
  if (result.reached)
    found->t_empty_to_cutout_s = result.time_s;
  else
    found->p_level_off_pa = result.end_pa;
  ck_assert_int_ge(freeair_cycle_point(m, site, 10.3e5, NAN, 1e-3, &point), 0);
  found->p_interstage_pa = point.interstage_mean_pa;
  found->t_lp_discharge_k = point.lp_discharge_k;
  found->t_hp_discharge_k = point.hp_discharge_k;
  found->motor_speed_rev_s = point.motor_speed_rev_s;
  found->pump_speed_rev_s = point.speed_rev_s;
  found->supply_running_v = isnan(site->supply_v) ? m->motor_rated_v : site->supply_v;
}

/* The machine as described, read by the model itself, is sound: also on a hot day, also at altitude. */
START_TEST(described_machines_are_sound)
{
  static const double sites[][2] = {{293.15, 101325.0}, {318.15, 101325.0}, {293.15, 79500.0}, {308.15, 84500.0}};
  for (size_t i = 0; i < 4; i++) {
    freeair_machine m = machine();
    freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
    site.ambient_k = sites[i][0];
    site.barometric_pa = sites[i][1];
    visit v = new_visit();
    ck_assert_int_eq(expect(&m, &site, 10.3e5, &v), FREEAIR_OK);
    ck_assert_int_eq(v.subject.stages, 2);
    ck_assert_int_eq(v.subject.head, FREEAIR_DIAGNOSIS_HEAD_SEPARATE);
    v.subject.service_valve_closed = FREEAIR_EVIDENCE_YES;
    read_machine(&m, &site, &v.found);
    v.found.t_ambient_k = sites[i][0];
    v.found.p_ambient_pa = sites[i][1];
    diagnose(&v);
    ck_assert_int_eq(v.status, FREEAIR_OK);
    ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_HEALTHY);
    for (size_t k = 0; k < v.n_findings; k++) ck_assert_double_lt(fabs(v.findings[k].residual), 0.5);
  }
}
END_TEST

/* The site moves the expectation, by what physics says: thin air fills a receiver slowly. */
START_TEST(expectations_carry_the_site)
{
  freeair_machine m = machine();
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  visit low = new_visit();
  visit high = new_visit();
  ck_assert_int_eq(expect(&m, &site, NAN, &low), FREEAIR_OK);
  site.barometric_pa = 75000.0;
  ck_assert_int_eq(expect(&m, &site, NAN, &high), FREEAIR_OK);
  ck_assert_double_gt(high.expected.t_empty_to_cutout_s, 1.25 * low.expected.t_empty_to_cutout_s);
  ck_assert_double_lt(high.expected.p_interstage_pa, low.expected.p_interstage_pa);
  ck_assert_double_eq(high.expected.p_ambient_pa, 75000.0);
}
END_TEST

/* Faults of the crank-angle model, which the signatures do not know, are among the first three, or in
 * the group of the first; and the machine is not called sound. */
START_TEST(simulated_faults_are_found)
{
  static const struct {
    int32_t fault;
    double severity;
    int32_t cause;
  } cases[] = {
      {FREEAIR_FAULT_LP_SUCTION_VALVE, 0.25, FREEAIR_EVIDENCE_LP_SUCTION_VALVE},
      {FREEAIR_FAULT_LP_DISCHARGE_VALVE, 0.25, FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE},
      {FREEAIR_FAULT_HP_SUCTION_VALVE, 0.25, FREEAIR_EVIDENCE_HP_SUCTION_VALVE},
      {FREEAIR_FAULT_HP_DISCHARGE_VALVE, 0.25, FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE},
      {FREEAIR_FAULT_INTERSTAGE_LEAK, 0.5, FREEAIR_EVIDENCE_INTERSTAGE_LEAK},
      {FREEAIR_FAULT_UNLOADER_LEAK, 0.5, FREEAIR_EVIDENCE_UNLOADER_LEAK},
      {FREEAIR_FAULT_BELT_SLIP, 0.4, FREEAIR_EVIDENCE_BELT_SLIP},
      {FREEAIR_FAULT_PULLEY, 0.4, FREEAIR_EVIDENCE_WRONG_PULLEY},
      {FREEAIR_FAULT_LOW_VOLTAGE, 0.7, FREEAIR_EVIDENCE_LOW_VOLTAGE},
  };
  for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
    freeair_machine m = machine();
    freeair_machine bad = FREEAIR_MACHINE_INIT;
    freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
    freeair_machine_site bad_site = FREEAIR_MACHINE_SITE_INIT;
    visit v = new_visit();
    ck_assert_int_eq(expect(&m, &site, 10.3e5, &v), FREEAIR_OK);
    ck_assert_int_eq(freeair_fault_apply(&m, &site, cases[i].fault, cases[i].severity, &bad, &bad_site), FREEAIR_OK);
    read_machine(&bad, &bad_site, &v.found);
    v.subject.service_valve_closed = FREEAIR_EVIDENCE_YES;
    diagnose(&v);
    ck_assert_int_eq(v.summary.verdict, FREEAIR_VERDICT_FAILS);
    const freeair_diagnosis_cause *row = row_of(&v, cases[i].cause);
    int better = 0;
    for (size_t k = 0; k < v.n_causes; k++) better += v.causes[k].probability > row->probability;
    ck_assert_msg(better < 3 || (row->group != 0 && row->group == v.causes[0].group),
                  "%s: %s first with %.2f, it with %.2f", freeair_fault_name(cases[i].fault),
                  freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CAUSE, v.summary.cause), v.causes[0].probability,
                  row->probability);
  }
}
END_TEST

/* Nothing is expected that would rest on a mere default. */
START_TEST(defaults_are_no_expectation)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  visit v = new_visit();
  m.speed_rev_s = 13.3;
  m.lp_bore_m = 0.12;
  m.lp_stroke_m = 0.08;
  ck_assert_int_eq(expect(&m, &site, 9e5, &v), FREEAIR_OK);
  ck_assert(isnan(v.expected.t_empty_to_cutout_s) && isnan(v.expected.t_cutin_to_cutout_s));
  ck_assert(isnan(v.expected.motor_speed_rev_s) && isnan(v.expected.supply_running_v));
  ck_assert(isnan(v.expected.p_cutout_pa) && isnan(v.subject.receiver_m3));
  ck_assert(isfinite(v.expected.p_interstage_pa) && isfinite(v.expected.pump_speed_rev_s));
  m.stages = 1;
  ck_assert_int_eq(expect(&m, &site, 9e5, &v), FREEAIR_OK);
  ck_assert(isnan(v.expected.p_interstage_pa) && isnan(v.expected.t_hp_discharge_k));
  ck_assert_int_eq(v.subject.stages, 1);
  /* a machine that never gets there has no time */
  m = machine();
  m.downstream_leak_m2 = 1e-4;
  ck_assert_int_eq(expect(&m, &site, 9e5, &v), FREEAIR_WARN_LIMIT);
  ck_assert(isnan(v.expected.t_empty_to_cutout_s));
}
END_TEST

int main(void)
{
  TCase *tests = tcase_create("diagnosis_expectation");
  tcase_add_test(tests, described_machines_are_sound);
  tcase_add_test(tests, expectations_carry_the_site);
  tcase_add_test(tests, simulated_faults_are_found);
  tcase_add_test(tests, defaults_are_no_expectation);
  return run_case("diagnosis_expectation", tests);
}
