/* SPDX-License-Identifier: MIT */
/* Facts of the trade (common practice, no source) over the families and their
 * ranges, and what is asked of a diagnosis on the model. */
#include "inference.h"

#include "../suite.h"

#include <check.h>
#include <pthread.h>
#include <stdlib.h>

enum { FAMILIES = 3 };

static const int32_t yes = FREEAIR_EVIDENCE_YES;
static const int32_t no = FREEAIR_EVIDENCE_NO;

static double psig(double gauge)
{
  return 101325.0 + gauge * psi;
}

static int32_t first(const visit *v)
{
  return v->causes[0].cause;
}

/* ---- facts of the trade: common practice, no source ---- */

START_TEST(levelling_off_at_40_to_80_psig_and_blowing_back_is_the_lp_valve)
{
  for (int family = V; family <= TWIN; family++)
    for (double gauge = 40.0; gauge <= 80.0; gauge += 10.0) {
      visit *v = new_visit(family);
      v->found.p_level_off_pa = psig(gauge);
      say(v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, yes);
      diagnose(v);
      ck_assert_msg(first(v) == FREEAIR_EVIDENCE_LP_SUCTION_VALVE, "family %d at %g psig: %s", family, gauge,
                    freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CAUSE, first(v)));
      ck_assert_double_gt(v->causes[0].probability, 0.55);
      ck_assert_int_eq(v->summary.verdict, FREEAIR_VERDICT_FAILS);
      if (fabs(gauge - 60.0) > 1.0) continue;
      /* it is the blowing back that says so */
      v->answer[0] = no;
      diagnose(v);
      ck_assert_double_lt(probability(v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE), 0.3);
    }
}
END_TEST

START_TEST(the_relief_popping_puts_the_hp_valves_first)
{
  for (int family = V; family <= SIDE_BY_SIDE; family++) {
    double both[2];
    for (int32_t answer = FREEAIR_EVIDENCE_YES; answer <= FREEAIR_EVIDENCE_NO; answer++) {
      visit *v = new_visit(family);
      say(v, FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS, answer);
      diagnose(v);
      both[answer - 1] = probability(v, FREEAIR_EVIDENCE_HP_SUCTION_VALVE) +
                         probability(v, FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE);
      const int named = rank_of(v, FREEAIR_EVIDENCE_HP_SUCTION_VALVE) < 2 &&
                        rank_of(v, FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE) < 2;
      ck_assert_int_eq(named, answer == yes);
    }
    ck_assert_double_gt(both[0], 4.0 * both[1]);
  }
  static const int32_t faults[] = {FREEAIR_FAULT_HP_SUCTION_VALVE, FREEAIR_FAULT_HP_DISCHARGE_VALVE};
  for (int i = 0; i < 2; i++)
    for (double severity = 0.2; severity < 0.5; severity += 0.1) {
      visit *v = new_visit(V);
      read_fault(v, faults[i], severity, 0);
      say(v, FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS, yes);
      diagnose(v);
      ck_assert(first(v) == FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE || first(v) == FREEAIR_EVIDENCE_HP_SUCTION_VALVE);
    }
}
END_TEST

START_TEST(side_by_side_levelling_off_near_80_psig_puts_the_gasket_high)
{
  for (double gauge = 75.0; gauge <= 85.0; gauge += 5.0) {
    visit *v = new_visit(SIDE_BY_SIDE);
    v->found.p_level_off_pa = psig(gauge);
    diagnose(v);
    const freeair_diagnosis_cause *gasket = &v->causes[rank_of(v, FREEAIR_EVIDENCE_GASKET_BETWEEN)];
    ck_assert_uint_lt(rank_of(v, FREEAIR_EVIDENCE_GASKET_BETWEEN), 2);
    ck_assert_double_gt(gasket->probability, 3.0 * gasket->prior);
    say(v, FREEAIR_EVIDENCE_HOT_BETWEEN_BORES, yes);
    diagnose(v);
    ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_GASKET_BETWEEN);
    ck_assert_double_gt(v->causes[0].probability, 0.6);
    /* heads of their own have no such gasket */
    v->machine.arrangement = FREEAIR_MACHINE_V;
    diagnose(v);
    ck_assert_double_eq(probability(v, FREEAIR_EVIDENCE_GASKET_BETWEEN), 0.0);
  }
}
END_TEST

START_TEST(oily_and_slow_with_a_blowing_breather_is_the_rings)
{
  for (int family = V; family <= TWIN; family++)
    for (double slow = 1.15; slow < 1.7; slow += 0.4) {
      visit *v = new_visit(family);
      read_machine(v, &v->machine, &v->site, 0);
      v->found.t_empty_to_cutout_s *= slow;
      v->found.t_cutin_to_cutout_s *= slow;
      say(v, FREEAIR_EVIDENCE_BREATHER_BLOWS, yes);
      say(v, FREEAIR_EVIDENCE_OIL_IN_DRAIN, yes);
      diagnose(v);
      ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_PISTON_RINGS);
      ck_assert_double_gt(v->causes[0].probability, 0.6);
      v->answer[0] = v->answer[1] = no;
      diagnose(v);
      ck_assert_double_lt(probability(v, FREEAIR_EVIDENCE_PISTON_RINGS), 0.1);
    }
}
END_TEST

static void read_speeds(visit *v, double motor, double pump)
{
  freeair_cycle_result point = FREEAIR_CYCLE_RESULT_INIT;
  ck_assert_int_eq(freeair_cycle_point(&v->machine, &v->site, v->machine.cut_out_pa, NAN, NAN, &point), FREEAIR_OK);
  v->found.motor_speed_rev_s = motor * point.motor_speed_rev_s;
  v->found.pump_speed_rev_s = pump * point.speed_rev_s;
}

START_TEST(pump_slow_with_the_motor_right_is_the_belt_over_the_range)
{
  static const double pump[] = {0.95, 0.87, 0.75};
  for (int family = V; family <= TWIN; family++)
    for (size_t i = 0; i < sizeof pump / sizeof pump[0]; i++) {
      visit *v = new_visit(family);
      read_speeds(v, 1.0, pump[i]);
      diagnose(v);
      ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_BELT_SLIP);
      ck_assert_double_gt(v->causes[0].probability, 0.5);
      /* both slow alike: not the belt */
      read_speeds(v, pump[i], pump[i]);
      diagnose(v);
      ck_assert_int_ne(first(v), FREEAIR_EVIDENCE_BELT_SLIP);
      ck_assert_double_lt(probability(v, FREEAIR_EVIDENCE_BELT_SLIP), 0.15);
    }
}
END_TEST

START_TEST(motor_slow_with_low_microfarads_is_the_capacitor_over_the_range)
{
  static const struct {
    double speed;
    double capacitance;
  } weak[] = {{0.98, 0.82}, {0.965, 0.7}, {0.95, 0.6}};
  for (int family = V; family <= TWIN; family++)
    for (size_t i = 0; i < sizeof weak / sizeof weak[0]; i++) {
      visit *v = new_visit(family);
      read_speeds(v, weak[i].speed, weak[i].speed);
      v->expected.run_capacitance_f = 50e-6;
      v->found.run_capacitance_f = weak[i].capacitance * 50e-6;
      diagnose(v);
      ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_RUN_CAPACITOR);
      ck_assert_double_gt(v->causes[0].probability, 0.7);
      ck_assert_int_eq(v->summary.contradictions, 0);
      /* the right microfarads: not the capacitor */
      v->found.run_capacitance_f = 50e-6;
      diagnose(v);
      ck_assert_int_ne(first(v), FREEAIR_EVIDENCE_RUN_CAPACITOR);
      ck_assert_double_lt(probability(v, FREEAIR_EVIDENCE_RUN_CAPACITOR), 0.15);
    }
}
END_TEST

START_TEST(times_right_and_a_starving_system_put_demand_first)
{
  for (int family = V; family <= TWIN; family++)
    for (int32_t closed = FREEAIR_EVIDENCE_NOT_CHECKED; closed <= FREEAIR_EVIDENCE_YES; closed++)
      for (int all = 0; all < (closed == yes ? 2 : 1); all++) {
        visit *v = new_visit(family);
        v->subject.service_valve_closed = closed;
        read_machine(v, &v->machine, &v->site, all);
        diagnose(v);
        ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_HEALTHY);
        say(v, FREEAIR_EVIDENCE_SYSTEM_STARVES, yes);
        diagnose(v);
        ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_DOWNSTREAM);
      }
}
END_TEST

/* ---- what is asked and what is not ---- */

START_TEST(what_nobody_looked_at_is_no_evidence)
{
  visit *v = new_visit(V);
  read_fault(v, FREEAIR_FAULT_LP_SUCTION_VALVE, 0.15, 0);
  diagnose(v);
  const visit before = *v;
  for (int32_t o = 1; o < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_OBSERVATION); o++)
    say(v, o, FREEAIR_EVIDENCE_NOT_CHECKED);
  diagnose(v);
  ck_assert_int_eq(v->summary.observations_used, 0);
  ck_assert_uint_eq(v->n_reasons, before.n_reasons);
  for (size_t i = 0; i < v->n_causes; i++)
    ck_assert_double_eq(v->causes[i].probability, before.causes[i].probability);
  /* and one that was looked at is */
  v->answer[FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET - 1] = yes;
  diagnose(v);
  ck_assert_int_eq(v->summary.observations_used, 1);
  ck_assert_double_gt(probability(v, FREEAIR_EVIDENCE_LP_SUCTION_VALVE),
                      1.5 * before.causes[rank_of(&before, FREEAIR_EVIDENCE_LP_SUCTION_VALVE)].probability);
}
END_TEST

START_TEST(priors_are_the_callers)
{
  visit *v = new_visit(V);
  read_machine(v, &v->machine, &v->site, 0);
  v->found.t_empty_to_cutout_s *= 1.12;
  v->found.t_cutin_to_cutout_s *= 1.12;
  diagnose(v);
  const double complained = probability(v, FREEAIR_EVIDENCE_HEALTHY);
  /* a routine inspection, where nearly all are sound */
  v->n_prior = (size_t)freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE);
  for (size_t c = 0; c < v->n_prior; c++) v->prior[c] = NAN;
  v->prior[FREEAIR_EVIDENCE_HEALTHY] = 15.0;
  diagnose(v);
  ck_assert_double_gt(probability(v, FREEAIR_EVIDENCE_HEALTHY), 2.0 * complained);
  const freeair_diagnosis_cause *sound = &v->causes[rank_of(v, FREEAIR_EVIDENCE_HEALTHY)];
  ck_assert_double_eq_tol(sound->prior, 15.0 / 15.75, 1e-12); /* the others' defaults make 0.75 */
  /* what cannot be is not named */
  v->prior[FREEAIR_EVIDENCE_BELT_SLIP] = 0.0;
  diagnose(v);
  ck_assert_double_eq(probability(v, FREEAIR_EVIDENCE_BELT_SLIP), 0.0);
}
END_TEST

/* Faster than any sound machine, at a speed that no fault brings, and hungry for power: nothing listed does that. */
START_TEST(something_else_is_kept_when_nothing_fits)
{
  for (int family = V; family <= TWIN; family++) {
    visit *v = new_visit(family);
    read_machine(v, &v->machine, &v->site, 1);
    v->n_log = 0;
    v->found.t_empty_to_cutout_s *= 0.7;
    v->found.t_cutin_to_cutout_s *= 0.7;
    v->found.motor_speed_rev_s *= 1.4;
    v->found.pump_speed_rev_s *= 1.4;
    v->found.power_w *= 1.5;
    diagnose(v);
    ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_OTHER);
    ck_assert_double_gt(v->causes[0].probability, 0.8);
  }
}
END_TEST

/* Each reading, wrong by itself: it alone is named, with what it should have been. */
START_TEST(a_reading_that_is_wrong_is_named_with_what_it_should_be)
{
  static const struct {
    int32_t reading;
    double factor;
  } wrong[] = {
      {FREEAIR_EVIDENCE_TIME_FROM_EMPTY, 2.5}, {FREEAIR_EVIDENCE_TIME_FROM_CUTIN, 3.0},
      {FREEAIR_EVIDENCE_INTERSTAGE, 1.6},      {FREEAIR_EVIDENCE_HP_DISCHARGE, 1.3},
      {FREEAIR_EVIDENCE_MOTOR_SPEED, 0.8},     {FREEAIR_EVIDENCE_PUMP_SPEED, 0.8},
      {FREEAIR_EVIDENCE_POWER, 2.0},
  };
  for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
    visit *v = new_visit(V);
    read_machine(v, &v->machine, &v->site, 1);
    double value;
    double u;
    freeair_evidence_readings_get(&v->found, wrong[i].reading, &value, &u);
    /* the fields lie in the order of the codes, each followed by its uncertainty */
    double *field = &v->found.delivery_m3_s + 2 * (wrong[i].reading - 1);
    ck_assert_double_eq(*field, value);
    *field *= wrong[i].factor;
    diagnose(v);
    ck_assert_int_eq(v->status, FREEAIR_WARN_INCONSISTENT);
    ck_assert_int_eq(v->summary.contradictions, 1);
    ck_assert_int_ne(v->summary.verdict, FREEAIR_VERDICT_FAILS);
    for (size_t k = 0; k < v->n_findings; k++) {
      const freeair_diagnosis_finding *f = &v->findings[k];
      ck_assert_int_eq(f->use == FREEAIR_DIAGNOSIS_CONTRADICTS, f->reading == wrong[i].reading);
      if (f->reading != wrong[i].reading) continue;
      ck_assert_double_gt(fabs(f->disagreement), 3.0);
      ck_assert_double_eq_tol(f->predicted, value, 0.05 * value);
    }
  }
}
END_TEST

/* A log that nothing else supports is named as the delivery that it shows. */
START_TEST(a_log_that_is_wrong_is_named)
{
  visit *v = new_visit(V);
  read_machine(v, &v->machine, &v->site, 1);
  for (size_t i = 0; i < v->n_log; i++) v->log_t_s[i] *= 2.0;
  diagnose(v);
  ck_assert_int_eq(v->status, FREEAIR_WARN_INCONSISTENT);
  ck_assert_int_eq(v->summary.contradictions, 1);
  ck_assert_int_eq(v->findings[0].reading, FREEAIR_EVIDENCE_DELIVERY);
  ck_assert_int_eq(v->findings[0].use, FREEAIR_DIAGNOSIS_CONTRADICTS);
  ck_assert_double_eq_tol(v->findings[0].found, 0.5 * v->findings[0].expected, 0.03 * v->findings[0].expected);
  ck_assert_double_eq_tol(v->findings[0].predicted, v->findings[0].expected, 0.05 * v->findings[0].expected);
  ck_assert_double_gt(fabs(v->findings[0].disagreement), 3.0);
}
END_TEST

/* Loggers log the start too: a receiver that was not empty is no mystery then. */
START_TEST(a_log_says_where_it_began)
{
  for (int family = V; family <= TWIN; family++) {
    visit *v = new_visit(family);
    v->how.from_pa = 4e5;
    read_machine(v, &v->machine, &v->site, 1);
    for (size_t i = v->n_log; i > 0; i--) {
      v->log_t_s[i] = v->log_t_s[i - 1];
      v->log_p_pa[i] = v->log_p_pa[i - 1];
    }
    v->n_log++;
    v->log_t_s[0] = 0.0;
    v->log_p_pa[0] = 4e5;
    diagnose(v);
    const double told = probability(v, FREEAIR_EVIDENCE_HEALTHY);
    v->how.from_pa = NAN;
    diagnose(v);
    ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_HEALTHY);
    ck_assert_double_eq(probability(v, FREEAIR_EVIDENCE_HEALTHY), told);
    ck_assert_int_eq(v->summary.contradictions, 0);
  }
}
END_TEST

/* A machine that can hardly make the air that is used runs all the time, and takes no more than that. */
START_TEST(waste_is_no_more_than_the_machine_takes)
{
  for (int family = V; family <= TWIN; family++) {
    visit *v = new_visit(family);
    freeair_cycle_result point = FREEAIR_CYCLE_RESULT_INIT;
    ck_assert_int_ge(freeair_cycle_point(&v->machine, &v->site, v->machine.cut_out_pa, NAN, NAN, &point), 0);
    v->found.p_level_off_pa = psig(60.0);
    v->how.air_m3_s = 0.3 * point.delivery_m3_s;
    v->how.energy_price = 1e-7;
    diagnose(v);
    for (size_t i = 0; i < v->n_effects; i++) {
      const freeair_inference_effect *e = &v->effects[i];
      if (isnan(e->waste_w)) continue;
      ck_assert_double_lt(e->waste_w, 1.3 * point.motor_w / 0.83);
      ck_assert_double_eq_tol(e->cost, 1e-7 * e->waste_w, 1e-12);
    }
  }
}
END_TEST

/* ---- after the repair ---- */

/* Common practice, no source: the same test from the same start, and what gave it away is gone. */
START_TEST(repairs_are_proved_or_not)
{
  static const struct {
    int family;
    int32_t fault;
    int32_t cause;
    int32_t sign;
    double left; /* of the fault, after a repair that did not take */
  } repairs[] = {
      {V, FREEAIR_FAULT_LP_SUCTION_VALVE, FREEAIR_EVIDENCE_LP_SUCTION_VALVE, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, 0.2},
      {V, FREEAIR_FAULT_HP_DISCHARGE_VALVE, FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE,
       FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS, 0.3},
      {SIDE_BY_SIDE, FREEAIR_FAULT_GASKET_BETWEEN, FREEAIR_EVIDENCE_GASKET_BETWEEN, FREEAIR_EVIDENCE_HOT_BETWEEN_BORES,
       0.4},
      {V, FREEAIR_FAULT_BELT_SLIP, FREEAIR_EVIDENCE_BELT_SLIP, FREEAIR_EVIDENCE_BELT_SQUEALS, 0.4},
      {V, FREEAIR_FAULT_UNLOADER_LEAK, FREEAIR_EVIDENCE_UNLOADER_LEAK, FREEAIR_EVIDENCE_HISS_AT_SWITCH, 0.5},
  };
  for (size_t i = 0; i < sizeof repairs / sizeof repairs[0]; i++)
    for (int mended = 0; mended < 2; mended++) {
      visit *v = new_visit(repairs[i].family);
      read_fault(v, repairs[i].fault, mended ? 0.0 : repairs[i].left, 1);
      say(v, repairs[i].sign, mended ? no : yes);
      diagnose(v);
      freeair_diagnosis_proof proof = FREEAIR_DIAGNOSIS_PROOF_INIT;
      ck_assert_int_eq(freeair_diagnosis_proof_judge(repairs[i].cause, v->causes, sizeof v->causes[0], v->n_causes,
                                                     v->findings, sizeof v->findings[0], v->n_findings, NAN, NAN,
                                                     &proof), FREEAIR_OK);
      ck_assert_msg(proof.verdict == (mended ? FREEAIR_VERDICT_MEETS : FREEAIR_VERDICT_FAILS),
                    "%s %s: verdict %d, from even odds %.3f, delivery %.3f",
                    freeair_fault_name(repairs[i].fault), mended ? "mended" : "not mended", (int)proof.verdict,
                    proof.probability_even, proof.delivery);
      /* and that though a sound machine is not certain */
      if (mended) ck_assert_int_ne(v->summary.verdict, FREEAIR_VERDICT_FAILS);
    }
}
END_TEST

/* ---- a batch over the caller's threads, each visit on the caller's memory ---- */

enum { BATCH = 5, THREADS = 3 };

static visit *alone;
static visit *together[THREADS];

static void *run_batch(void *which)
{
  const size_t t = *(const size_t *)which;
  for (size_t k = 0; k < BATCH; k++) infer(&together[t][(k + 2 * t) % BATCH]);
  return NULL;
}

START_TEST(a_batch_over_threads_is_bit_by_bit_the_same)
{
  pthread_t thread[THREADS];
  size_t number[THREADS];
  alone = calloc(BATCH, sizeof *alone);
  ck_assert_ptr_nonnull(alone);
  for (int k = 0; k < BATCH; k++) {
    visit *v = new_visit(k % FAMILIES);
    read_fault(v, FREEAIR_FAULT_LP_SUCTION_VALVE, 0.03 + 0.07 * k, k % 2);
    if (k > 2) say(v, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, yes);
    alone[k] = *v;
  }
  for (size_t t = 0; t < THREADS; t++) {
    together[t] = malloc(BATCH * sizeof *alone);
    ck_assert_ptr_nonnull(together[t]);
    memcpy(together[t], alone, BATCH * sizeof *alone);
  }
  for (int k = 0; k < BATCH; k++) diagnose(&alone[k]);
  for (size_t t = 0; t < THREADS; t++) {
    number[t] = t;
    ck_assert_int_eq(pthread_create(&thread[t], NULL, run_batch, &number[t]), 0);
  }
  for (size_t t = 0; t < THREADS; t++) pthread_join(thread[t], NULL);
  for (size_t t = 0; t < THREADS; t++) {
    for (int k = 0; k < BATCH; k++) {
      const visit *a = &alone[k];
      const visit *b = &together[t][k];
      ck_assert_int_eq(a->status, b->status);
      ck_assert_uint_gt(a->n_causes, 10);
      ck_assert_mem_eq(a->causes, b->causes, sizeof a->causes);
      ck_assert_mem_eq(a->effects, b->effects, sizeof a->effects);
      ck_assert_mem_eq(a->reasons, b->reasons, sizeof a->reasons);
      ck_assert_mem_eq(a->findings, b->findings, sizeof a->findings);
      ck_assert_mem_eq(&a->summary, &b->summary, sizeof a->summary);
    }
    free(together[t]);
  }
  free(alone);
}
END_TEST

int main(void)
{
  TCase *tests = tcase_create("facts");
  tcase_set_timeout(tests, 600);
  tcase_add_test(tests, levelling_off_at_40_to_80_psig_and_blowing_back_is_the_lp_valve);
  tcase_add_test(tests, the_relief_popping_puts_the_hp_valves_first);
  tcase_add_test(tests, side_by_side_levelling_off_near_80_psig_puts_the_gasket_high);
  tcase_add_test(tests, oily_and_slow_with_a_blowing_breather_is_the_rings);
  tcase_add_test(tests, pump_slow_with_the_motor_right_is_the_belt_over_the_range);
  tcase_add_test(tests, motor_slow_with_low_microfarads_is_the_capacitor_over_the_range);
  tcase_add_test(tests, times_right_and_a_starving_system_put_demand_first);
  tcase_add_test(tests, what_nobody_looked_at_is_no_evidence);
  tcase_add_test(tests, priors_are_the_callers);
  tcase_add_test(tests, something_else_is_kept_when_nothing_fits);
  tcase_add_test(tests, a_reading_that_is_wrong_is_named_with_what_it_should_be);
  tcase_add_test(tests, a_log_that_is_wrong_is_named);
  tcase_add_test(tests, a_log_says_where_it_began);
  tcase_add_test(tests, waste_is_no_more_than_the_machine_takes);
  tcase_add_test(tests, repairs_are_proved_or_not);
  tcase_add_test(tests, a_batch_over_threads_is_bit_by_bit_the_same);
  return run_case("inference_facts", tests);
}
