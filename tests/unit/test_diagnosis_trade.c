/* SPDX-License-Identifier: MIT */
/* What the diagnosis says of healthy machines and of the faults that the trade knows. */
#include "../suite.h"
#include "diagnosis.h"

#include <freeair/verdict.h>

#include <check.h>

static const double psi = 6894.757293168361;

/* ---- never a confident wrong answer on a healthy machine ---- */

/* Healthy machines with the scatter that expectations have, read with ordinary instruments. */
START_TEST(healthy_machines_are_not_accused)
{
  uint32_t state = 2024;
  const int n = 200;
  int accused = 0;
  int condemned = 0;
  int first = 0;
  for (int k = 0; k < n; k++) {
    visit v = new_visit();
    v.subject.service_valve_closed = FREEAIR_EVIDENCE_YES;
    const freeair_evidence_readings e = v.expected;
    const double unit = 0.05 * normal(&state);
    v.found.t_empty_to_cutout_s = e.t_empty_to_cutout_s * exp(unit + 0.02 * normal(&state));
    v.found.t_cutin_to_cutout_s = e.t_cutin_to_cutout_s * exp(unit + 0.03 * normal(&state));
    if (k % 2 == 0) v.found.p_interstage_pa = e.p_interstage_pa * exp(0.08 * normal(&state));
    if (k % 4 == 0) {
      v.found.t_lp_discharge_k = e.t_lp_discharge_k + 13.0 * normal(&state);
      v.found.motor_speed_rev_s = e.motor_speed_rev_s * exp(0.008 * normal(&state));
      v.found.pump_speed_rev_s = e.pump_speed_rev_s * exp(0.012 * normal(&state));
      v.found.leak_isolated_m3_s = fabs(0.01 * normal(&state)) * e.delivery_m3_s;
      /* a few per cent of leak is usual, and no fault */
      v.found.leak_open_m3_s = fmax(0.0, 0.05 + 0.04 * normal(&state)) * e.delivery_m3_s;
    }
    diagnose(&v);
    first += v.summary.cause == FREEAIR_EVIDENCE_HEALTHY;
    accused += v.summary.cause != FREEAIR_EVIDENCE_HEALTHY && v.causes[0].probability > 0.5;
    condemned += v.summary.verdict == FREEAIR_VERDICT_FAILS;
  }
  ck_assert_int_le(accused, n / 100);
  ck_assert_int_le(condemned, n / 50);
  ck_assert_int_ge(first, n * 9 / 10);
}
END_TEST

/* An expectation reckoned for another site accuses nobody: it is named instead. */
START_TEST(a_wrong_site_is_named)
{
  visit v = new_visit();
  v.found.t_ambient_k = 313.15;
  v.found.p_ambient_pa = 80000.0;
  v.found.t_empty_to_cutout_s = v.expected.t_empty_to_cutout_s * 1.27;
  v.found.t_cutin_to_cutout_s = v.expected.t_cutin_to_cutout_s * 1.27;
  diagnose(&v);
  ck_assert_int_eq(v.status, FREEAIR_WARN_INCONSISTENT);
  ck_assert_int_eq(finding_of(&v, FREEAIR_EVIDENCE_AMBIENT)->use, FREEAIR_DIAGNOSIS_CONTRADICTS);
  ck_assert_int_eq(finding_of(&v, FREEAIR_EVIDENCE_BAROMETER)->use, FREEAIR_DIAGNOSIS_CONTRADICTS);
  ck_assert_int_ne(v.summary.verdict, FREEAIR_VERDICT_FAILS);
  ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_HEALTHY);
}
END_TEST

/* After a repair the same call on new readings proves it. */
START_TEST(a_repair_is_proved)
{
  visit v = new_visit();
  v.subject.service_valve_closed = FREEAIR_EVIDENCE_YES;
  v.found.t_empty_to_cutout_s = 450.0;
  v.found.p_interstage_pa = 2.8e5;
  say(&v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, FREEAIR_EVIDENCE_YES);
  diagnose(&v);
  ck_assert_int_eq(v.summary.verdict, FREEAIR_VERDICT_FAILS);
  ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_LP_SUCTION_VALVE);
  v.found.t_empty_to_cutout_s = 296.0;
  v.found.t_cutin_to_cutout_s = 61.0;
  v.found.p_interstage_pa = 4.15e5;
  v.found.motor_speed_rev_s = 29.0;
  v.found.pump_speed_rev_s = 13.3;
  v.found.leak_isolated_m3_s = 0.00003;
  v.found.leak_open_m3_s = 0.0005;
  v.found.t_intercooler_out_k = 347.0;
  v.found.filter_drop_pa = 950.0;
  v.answer[0] = FREEAIR_EVIDENCE_NO;
  say(&v, FREEAIR_EVIDENCE_HUMS_AT_START, FREEAIR_EVIDENCE_NO);
  say(&v, FREEAIR_EVIDENCE_STOPS_AT_WRONG_PRESSURE, FREEAIR_EVIDENCE_NO);
  say(&v, FREEAIR_EVIDENCE_SYSTEM_STARVES, FREEAIR_EVIDENCE_NO);
  diagnose(&v);
  ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_HEALTHY);
  ck_assert_int_eq(v.summary.verdict, FREEAIR_VERDICT_MEETS);
}
END_TEST

/* ---- facts of the trade: common practice, no source ---- */

/* What a machine may be; those of two stages first. */
static const struct {
  int32_t stages;
  int32_t cylinders;
  int32_t head;
} kinds[] = {
    {2, 2, FREEAIR_DIAGNOSIS_HEAD_SEPARATE},
    {2, 2, FREEAIR_DIAGNOSIS_HEAD_SHARED},
    {1, 2, FREEAIR_DIAGNOSIS_HEAD_SHARED},
};
enum { KINDS = sizeof kinds / sizeof kinds[0] };

static visit visit_to(size_t kind)
{
  visit v = new_visit();
  v.subject.stages = kinds[kind].stages;
  v.subject.cylinders = kinds[kind].cylinders;
  v.subject.head = kinds[kind].head;
  return v;
}

START_TEST(levels_off_blowing_back_is_the_lp_suction_valve)
{
  for (size_t k = 0; k < KINDS; k++)
    for (double gauge = 40.0; gauge <= 80.0; gauge += 10.0) {
      visit v = visit_to(k);
      v.found.p_level_off_pa = 101325.0 + gauge * psi;
      say(&v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, FREEAIR_EVIDENCE_YES);
      diagnose(&v);
      ck_assert_msg(v.summary.cause == FREEAIR_EVIDENCE_LP_SUCTION_VALVE, "kind %zu at %g psig", k, gauge);
      ck_assert_double_gt(v.causes[0].probability, 0.5);
      /* it is the blowing back that says so */
      const double with = v.causes[0].probability;
      v.answer[0] = FREEAIR_EVIDENCE_NO;
      diagnose(&v);
      ck_assert_double_lt(probability_of(&v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE), 0.5 * with);
    }
}
END_TEST

START_TEST(relief_popping_is_the_hp_valves)
{
  for (size_t k = 0; kinds[k].stages == 2; k++) {
    visit v = visit_to(k);
    diagnose(&v);
    const double before = probability_of(&v, FREEAIR_EVIDENCE_HP_SUCTION_VALVE);
    say(&v, FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS, FREEAIR_EVIDENCE_YES);
    diagnose(&v);
    for (size_t i = 0; i < 2; i++)
      ck_assert(v.causes[i].cause == FREEAIR_EVIDENCE_HP_SUCTION_VALVE ||
                v.causes[i].cause == FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE);
    ck_assert_double_gt(probability_of(&v, FREEAIR_EVIDENCE_HP_SUCTION_VALVE), 4.0 * before);
    /* unless it pops below its setting */
    say(&v, FREEAIR_EVIDENCE_RELIEF_POPS_EARLY, FREEAIR_EVIDENCE_YES);
    diagnose(&v);
    ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_RELIEF_WEAK);
  }
}
END_TEST

START_TEST(side_by_side_levelling_off_is_the_gasket)
{
  for (double gauge = 75.0; gauge <= 90.0; gauge += 5.0) {
    visit v = new_visit();
    v.subject.stages = 2;
    v.subject.head = FREEAIR_DIAGNOSIS_HEAD_SHARED;
    v.found.p_level_off_pa = 101325.0 + gauge * psi;
    diagnose(&v);
    ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_GASKET_BETWEEN);
    ck_assert_double_gt(v.causes[0].probability, 3.0 * v.causes[0].prior);
    v.subject.head = FREEAIR_DIAGNOSIS_HEAD_SEPARATE;
    diagnose(&v);
    ck_assert_double_eq(probability_of(&v, FREEAIR_EVIDENCE_GASKET_BETWEEN), 0.0);
  }
}
END_TEST

START_TEST(oil_and_breather_are_the_rings)
{
  for (size_t k = 0; k < KINDS; k++)
    for (double slow = 1.1; slow < 1.8; slow += 0.2) {
      visit v = visit_to(k);
      v.found.t_empty_to_cutout_s = slow * v.expected.t_empty_to_cutout_s;
      say(&v, FREEAIR_EVIDENCE_OIL_IN_DRAIN, FREEAIR_EVIDENCE_YES);
      say(&v, FREEAIR_EVIDENCE_BREATHER_BLOWS, FREEAIR_EVIDENCE_YES);
      diagnose(&v);
      ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_PISTON_RINGS);
      ck_assert_double_gt(v.causes[0].probability, 0.8);
      v.answer[0] = v.answer[1] = FREEAIR_EVIDENCE_NO;
      diagnose(&v);
      ck_assert_double_lt(probability_of(&v, FREEAIR_EVIDENCE_PISTON_RINGS), 0.1);
    }
}
END_TEST

START_TEST(slow_pump_with_a_right_motor_is_the_belt)
{
  static const double pump[] = {0.93, 0.9, 0.85, 0.75};
  for (size_t k = 0; k < KINDS; k++)
    for (size_t i = 0; i < sizeof pump / sizeof pump[0]; i++) {
      visit v = visit_to(k);
      v.found.motor_speed_rev_s = v.expected.motor_speed_rev_s;
      v.found.pump_speed_rev_s = pump[i] * v.expected.pump_speed_rev_s;
      diagnose(&v);
      ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_BELT_SLIP);
      ck_assert_double_gt(v.causes[0].probability, 0.7);
      /* both slow alike: not the belt */
      v.found.motor_speed_rev_s = pump[i] * v.expected.motor_speed_rev_s;
      diagnose(&v);
      ck_assert_double_lt(probability_of(&v, FREEAIR_EVIDENCE_BELT_SLIP), 0.2);
    }
}
END_TEST

START_TEST(slow_motor_with_low_microfarads_is_the_capacitor)
{
  static const struct {
    double speed;
    double capacitance;
  } weak[] = {{0.985, 0.83}, {0.97, 0.75}, {0.95, 0.6}};
  for (size_t k = 0; k < KINDS; k++)
    for (size_t i = 0; i < sizeof weak / sizeof weak[0]; i++) {
      visit v = visit_to(k);
      v.found.motor_speed_rev_s = weak[i].speed * v.expected.motor_speed_rev_s;
      v.found.run_capacitance_f = weak[i].capacitance * v.expected.run_capacitance_f;
      diagnose(&v);
      ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_RUN_CAPACITOR);
      ck_assert_double_gt(v.causes[0].probability, 0.8);
      /* the right microfarads: not the capacitor */
      v.found.run_capacitance_f = v.expected.run_capacitance_f;
      diagnose(&v);
      ck_assert_int_ne(v.summary.cause, FREEAIR_EVIDENCE_RUN_CAPACITOR);
    }
}
END_TEST

START_TEST(right_times_and_a_starving_system_are_demand)
{
  for (size_t k = 0; k < KINDS; k++)
    for (int32_t closed = FREEAIR_EVIDENCE_NOT_CHECKED; closed <= FREEAIR_EVIDENCE_YES; closed++) {
      visit v = visit_to(k);
      v.subject.service_valve_closed = closed;
      v.found.t_empty_to_cutout_s = v.expected.t_empty_to_cutout_s;
      v.found.t_cutin_to_cutout_s = v.expected.t_cutin_to_cutout_s;
      diagnose(&v);
      ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_HEALTHY);
      say(&v, FREEAIR_EVIDENCE_SYSTEM_STARVES, FREEAIR_EVIDENCE_YES);
      diagnose(&v);
      ck_assert_int_eq(v.summary.cause, FREEAIR_EVIDENCE_DOWNSTREAM);
    }
}
END_TEST

START_TEST(other_signatures_of_the_trade)
{
  static const struct {
    int32_t observation[3];
    int32_t cause;
  } facts[] = {
      {{FREEAIR_EVIDENCE_BELT_SQUEALS, FREEAIR_EVIDENCE_BELT_DUST, 0}, FREEAIR_EVIDENCE_BELT_SLIP},
      {{FREEAIR_EVIDENCE_UNLOADER_BLOWS_STOPPED, FREEAIR_EVIDENCE_FALLS_WHEN_STOPPED, 0}, FREEAIR_EVIDENCE_CHECK_VALVE},
      {{FREEAIR_EVIDENCE_HISS_AT_SWITCH, FREEAIR_EVIDENCE_BETTER_UNLOADER_BLOCKED, 0}, FREEAIR_EVIDENCE_UNLOADER_LEAK},
      {{FREEAIR_EVIDENCE_BETTER_FILTER_OUT, 0, 0}, FREEAIR_EVIDENCE_INTAKE_FILTER},
      {{FREEAIR_EVIDENCE_WATER_DRAINED, FREEAIR_EVIDENCE_SHORT_CYCLES, 0}, FREEAIR_EVIDENCE_RECEIVER_WATER},
      {{FREEAIR_EVIDENCE_STOPS_AT_WRONG_PRESSURE, 0, 0}, FREEAIR_EVIDENCE_GAUGE_OR_SWITCH},
      {{FREEAIR_EVIDENCE_FINE_WHEN_ISOLATED, FREEAIR_EVIDENCE_RUNS_AT_NIGHT, 0}, FREEAIR_EVIDENCE_DOWNSTREAM},
      {{FREEAIR_EVIDENCE_HUMS_AT_START, FREEAIR_EVIDENCE_FINE_WHEN_ISOLATED, FREEAIR_EVIDENCE_CAPACITOR_BULGED},
       FREEAIR_EVIDENCE_START_CAPACITOR},
      {{FREEAIR_EVIDENCE_LIGHTS_DIM, FREEAIR_EVIDENCE_HUMS_AT_START, 0}, FREEAIR_EVIDENCE_LOW_VOLTAGE},
      {{FREEAIR_EVIDENCE_HOT_BETWEEN_BORES, FREEAIR_EVIDENCE_NEVER_REACHES_CUTOUT, 0}, FREEAIR_EVIDENCE_GASKET_BETWEEN},
      {{FREEAIR_EVIDENCE_AIR_AT_HEAD_JOINT, 0, 0}, FREEAIR_EVIDENCE_GASKET_OUTSIDE},
      {{FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES, 0, 0}, FREEAIR_EVIDENCE_INTERSTAGE_LEAK},
  };
  for (size_t i = 0; i < sizeof facts / sizeof facts[0]; i++) {
    visit v = new_visit();
    for (size_t k = 0; k < 3 && facts[i].observation[k] != 0; k++)
      say(&v, facts[i].observation[k], FREEAIR_EVIDENCE_YES);
    diagnose(&v);
    ck_assert_msg(v.summary.cause == facts[i].cause, "%s, not %s",
                  freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CAUSE, v.summary.cause),
                  freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CAUSE, facts[i].cause));
  }
}
END_TEST

int main(void)
{
  Suite *suite = suite_create("diagnosis_trade");
  TCase *healthy = tcase_create("healthy");
  tcase_set_timeout(healthy, 120);
  tcase_add_test(healthy, healthy_machines_are_not_accused);
  tcase_add_test(healthy, a_wrong_site_is_named);
  tcase_add_test(healthy, a_repair_is_proved);
  suite_add_tcase(suite, healthy);
  TCase *trade = tcase_create("trade");
  tcase_add_test(trade, levels_off_blowing_back_is_the_lp_suction_valve);
  tcase_add_test(trade, relief_popping_is_the_hp_valves);
  tcase_add_test(trade, side_by_side_levelling_off_is_the_gasket);
  tcase_add_test(trade, oil_and_breather_are_the_rings);
  tcase_add_test(trade, slow_pump_with_a_right_motor_is_the_belt);
  tcase_add_test(trade, slow_motor_with_low_microfarads_is_the_capacitor);
  tcase_add_test(trade, right_times_and_a_starving_system_are_demand);
  tcase_add_test(trade, other_signatures_of_the_trade);
  suite_add_tcase(suite, trade);
  return run_suite(suite);
}
