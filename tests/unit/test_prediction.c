/* SPDX-License-Identifier: MIT */
#include <freeair/cycle.h>
#include <freeair/fault.h>
#include <freeair/outlook.h>
#include <freeair/prediction.h>
#include <freeair/rating.h>
#include <freeair/status.h>

#include "../suite.h"
#include "random_machine.h"

#include <check.h>
#include <stdlib.h>

enum { POINTS = 41 };

typedef struct outcome {
  freeair_prediction_result r;
  double t[POINTS];
  double p[POINTS];
  double gas[POINTS];
  double delivery[POINTS];
  int32_t status;
} outcome;

/* A two-stage unit of the 300-litre class; dimensions are our own. */
static freeair_machine shop_unit(void)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  m.lp_bore_m = 0.12;
  m.lp_stroke_m = 0.09;
  m.speed_rev_s = 11.0;
  m.receiver_m3 = 0.3;
  m.arrangement = FREEAIR_MACHINE_SIDE_BY_SIDE;
  return m;
}

static outcome pumpup_of(const freeair_machine *m, const freeair_machine_site *s, double from, double to,
                         int32_t start, int32_t nodes)
{
  outcome o;
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  o.r = (freeair_prediction_result)FREEAIR_PREDICTION_RESULT_INIT;
  run.from_pa = from;
  run.to_pa = to;
  run.start = start;
  run.nodes = nodes;
  o.status = freeair_prediction_pumpup(m, s, &run, &o.r, o.t, o.p, o.gas, o.delivery, POINTS);
  ck_assert_int_ge(o.status, FREEAIR_OK);
  return o;
}

static outcome faulty(int32_t fault, double severity)
{
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  ck_assert_int_eq(freeair_fault_apply(&m, &s, fault, severity, &m, &s), FREEAIR_OK);
  return pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 7);
}

static double level_off(int32_t fault, double severity, int32_t other, double other_severity)
{
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  ck_assert_int_eq(freeair_fault_apply(&m, &s, fault, severity, &m, &s), FREEAIR_OK);
  ck_assert_int_eq(freeair_fault_apply(&m, &s, other, other_severity, &m, &s), FREEAIR_OK);
  double p;
  ck_assert_int_ge(freeair_prediction_level_off(&m, &s, NAN, &p), FREEAIR_OK);
  return p;
}

static const double psi = 6894.757293168;
static const double ambient = 101325.0;

/* Common practice, no source: about five minutes to 175 psig, the last quarter
 * of the pressure (135 to 175 psig) in just over one. */
START_TEST(sound_unit_takes_five_minutes)
{
  outcome o = faulty(FREEAIR_FAULT_NONE, 0.0);
  ck_assert_int_eq(o.status, FREEAIR_OK);
  ck_assert_double_eq_tol(o.r.time_s, 300.0, 30.0);
  ck_assert_double_eq_tol(o.r.time_s - o.r.cut_in_s, 70.0, 10.0);
}
END_TEST

/* Common practice, no source: V dp / (p_a t) over-reads the true delivery by
 * several percent from empty, and by far more over the narrow band. */
START_TEST(isothermal_rule_reads_too_much)
{
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  outcome whole = pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 7);
  outcome band = pumpup_of(&m, &s, 10.32e5, NAN, FREEAIR_PREDICTION_DRAWN_DOWN, 7);
  double over_whole = whole.r.apparent_m3_s / whole.r.mean_delivery_m3_s - 1.0;
  double over_band = band.r.apparent_m3_s / band.r.mean_delivery_m3_s - 1.0;
  ck_assert_double_gt(over_whole, 0.03);
  ck_assert_double_lt(over_whole, 0.30);
  ck_assert_double_gt(over_band, 2.0 * over_whole);
}
END_TEST

/* Common practice, no source: the state before the run matters. */
START_TEST(start_state_matters)
{
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  outcome soaked = pumpup_of(&m, &s, 10.32e5, NAN, FREEAIR_PREDICTION_SOAKED, 7);
  outcome drawn = pumpup_of(&m, &s, 10.32e5, NAN, FREEAIR_PREDICTION_DRAWN_DOWN, 7);
  ck_assert_double_lt(drawn.r.start_gas_k, soaked.r.start_gas_k - 3.0);
  ck_assert_double_gt(fabs(drawn.r.time_s / soaked.r.time_s - 1.0), 0.02);
}
END_TEST

/* Common practice, no source: a broken first-stage suction reed with an ordinary
 * leak or use levels off at 40 to 80 psig; a gasket breached between cylinders
 * side by side around 80 psig. */
START_TEST(level_off_pressures)
{
  double broken = level_off(FREEAIR_FAULT_LP_SUCTION_VALVE, 1.0, FREEAIR_FAULT_DEMAND, 0.23);
  ck_assert_double_gt(broken, ambient + 40.0 * psi);
  ck_assert_double_lt(broken, ambient + 80.0 * psi);
  double leaking = level_off(FREEAIR_FAULT_LP_SUCTION_VALVE, 1.0, FREEAIR_FAULT_DOWNSTREAM_LEAK, 0.75);
  ck_assert_double_gt(leaking, ambient + 40.0 * psi);
  ck_assert_double_lt(leaking, ambient + 80.0 * psi);
  double gasket = level_off(FREEAIR_FAULT_GASKET_BETWEEN, 0.93, FREEAIR_FAULT_NONE, 0.0);
  ck_assert_double_eq_tol((gasket - ambient) / psi, 80.0, 15.0);
  ck_assert(isinf(level_off(FREEAIR_FAULT_NONE, 0.0, FREEAIR_FAULT_NONE, 0.0)));
}
END_TEST

/* Common practice, no source: slip lengthens all times alike, a downstream leak
 * costs more at high pressure. */
START_TEST(shape_of_the_curve)
{
  outcome sound = faulty(FREEAIR_FAULT_NONE, 0.0);
  outcome slip = faulty(FREEAIR_FAULT_BELT_SLIP, 0.5);
  outcome leak = faulty(FREEAIR_FAULT_DOWNSTREAM_LEAK, 0.5);
  double sound_share = sound.r.cut_in_s / sound.r.time_s;
  ck_assert_double_gt(slip.r.time_s, 1.15 * sound.r.time_s);
  ck_assert_double_eq_tol(slip.r.cut_in_s / slip.r.time_s, sound_share, 0.01);
  ck_assert_double_lt(leak.r.cut_in_s / leak.r.time_s, sound_share - 0.01);
  ck_assert_double_lt(faulty(FREEAIR_FAULT_RECEIVER_WATER, 0.5).r.time_s, 0.7 * sound.r.time_s);
}
END_TEST

START_TEST(curve_is_consistent)
{
  outcome o = faulty(FREEAIR_FAULT_NONE, 0.0);
  ck_assert_double_eq(o.t[0], 0.0);
  ck_assert_double_eq_tol(o.p[0], ambient, 1e-3);
  ck_assert_double_eq(o.t[POINTS - 1], o.r.time_s);
  ck_assert_double_eq_tol(o.p[POINTS - 1], 13.08e5, 1.0);
  ck_assert_double_eq(o.gas[POINTS - 1], o.r.end_gas_k);
  for (int i = 1; i < POINTS; i++) {
    ck_assert_double_gt(o.p[i], o.p[i - 1]);
    ck_assert_double_gt(o.delivery[i], 0.0);
  }
  /* the same times, read off at pressures and out of order */
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  freeair_prediction_result r = FREEAIR_PREDICTION_RESULT_INIT;
  const double p[] = {o.p[30], 0.9e5, 13.08e5, o.p[10]};
  double t[4];
  ck_assert_int_eq(freeair_prediction_times(&m, &s, &run, &r, p, t, 4), FREEAIR_OK);
  ck_assert_double_eq_tol(t[0], o.t[30], 0.01);
  ck_assert_double_eq(t[1], 0.0);
  ck_assert_double_eq_tol(t[2], o.r.time_s, 0.01);
  ck_assert_double_eq_tol(t[3], o.t[10], 0.01);
}
END_TEST

/* Mass: what was delivered is what the receiver holds more. */
START_TEST(mass_is_kept)
{
  outcome o = faulty(FREEAIR_FAULT_NONE, 0.0);
  double r = 287.05;
  double gained = 0.3 / r * (o.r.end_pa / o.r.end_gas_k - ambient / 293.15);
  double delivered = o.r.mean_delivery_m3_s * o.r.time_s * ambient / (r * 293.15);
  ck_assert_double_eq_tol(delivered / gained, 1.0, 1e-6);
}
END_TEST

START_TEST(few_nodes_suffice)
{
  static const int32_t faults[] = {FREEAIR_FAULT_NONE, FREEAIR_FAULT_LP_SUCTION_VALVE, FREEAIR_FAULT_HP_RINGS};
  for (int i = 0; i < 3; i++) {
    freeair_machine m = shop_unit();
    freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
    ck_assert_int_eq(freeair_fault_apply(&m, &s, faults[i], 0.3, &m, &s), FREEAIR_OK);
    double fine = pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 25).r.time_s;
    ck_assert_double_eq_tol(pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 7).r.time_s / fine, 1.0, 1e-3);
    double few = faults[i] == FREEAIR_FAULT_NONE ? 1e-3 : 5e-3;
    ck_assert_double_eq_tol(pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 5).r.time_s / fine, 1.0, few);
  }
}
END_TEST

/* Little is left near the end: the relief lifts, the receiver leaks, and few
 * points would miss the bend. */
START_TEST(a_unit_that_hardly_arrives_gets_more_nodes)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  m.lp_bore_m = 0.11;
  m.lp_stroke_m = 0.08;
  m.speed_rev_s = 12.0;
  m.lp_cylinders = 2;
  m.downstream_leak_m2 = 1e-6;
  ck_assert_int_eq(freeair_fault_apply(&m, &s, FREEAIR_FAULT_HP_SUCTION_VALVE, 0.5, &m, &s), FREEAIR_OK);
  outcome few = pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 7);
  outcome many = pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 32);
  ck_assert_int_eq(many.r.reached, 1);
  ck_assert_double_eq_tol(few.r.time_s / many.r.time_s, 1.0, 3e-3);
}
END_TEST

START_TEST(what_is_not_reached_is_infinite)
{
  outcome o = faulty(FREEAIR_FAULT_UNLOADER_LEAK, 1.0);
  ck_assert_int_eq(o.status, FREEAIR_WARN_LIMIT);
  ck_assert_int_eq(o.r.reached, 0);
  ck_assert(isinf(o.r.time_s));
  ck_assert_double_eq_tol(o.t[POINTS - 1], 7200.0, 1e-9);
  double level = level_off(FREEAIR_FAULT_UNLOADER_LEAK, 1.0, FREEAIR_FAULT_NONE, 0.0);
  ck_assert_double_eq_tol(o.p[POINTS - 1], level, 0.05e5);
}
END_TEST

/* Common practice, no source: times right, but to a wrong pressure. */
START_TEST(a_wrong_gauge_shifts_readings)
{
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  outcome sound = pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 7);
  m.gauge_error_pa = 1e5;
  outcome wrong = pumpup_of(&m, &s, NAN, NAN, FREEAIR_PREDICTION_SOAKED, 7);
  ck_assert_double_eq_tol(wrong.r.time_s, sound.r.time_s, 1e-6);
  ck_assert_double_eq_tol(wrong.r.end_pa, sound.r.end_pa + 1e5, 1.0);
}
END_TEST

/* Leak-down: choked flow from a receiver that keeps its temperature falls
 * exponentially, p = p0 exp(-t a A / V), a = 0.6847 sqrt(R T) (definition of choked flow). */
START_TEST(leak_down_tends_to_the_closed_form)
{
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  m.check_valve_leak_m2 = 2e-7;
  m.receiver_gas_ua_w_k = 1e4;
  m.receiver_wall_ua_w_k = 1e4;
  double t[5];
  double p[5];
  ck_assert_int_eq(freeair_prediction_leak_down(&m, &s, 10e5, NAN, NAN, 600.0, 1, 1, t, p, 5), FREEAIR_OK);
  double choked = sqrt(1.4) * pow(2.0 / 2.4, 3.0);
  double rate = choked * sqrt(287.05 * 293.15) * 2e-7 / 0.3;
  for (int i = 0; i < 5; i++) ck_assert_double_eq_tol(p[i] / (10e5 * exp(-rate * t[i])), 1.0, 1e-4);
  ck_assert_int_eq(freeair_prediction_leak_down(&m, &s, 10e5, NAN, NAN, 600.0, 0, 1, t, p, 5), FREEAIR_OK);
  ck_assert_double_eq_tol(p[4], 10e5, 1.0);
  m.downstream_leak_m2 = 2e-7;
  ck_assert_int_eq(freeair_prediction_leak_down(&m, &s, 10e5, NAN, NAN, 600.0, 0, 1, t, p, 5), FREEAIR_OK);
  ck_assert_double_eq_tol(p[4] / (10e5 * exp(-rate * t[4])), 1.0, 1e-4);
  ck_assert_int_eq(freeair_prediction_leak_down(&m, &s, 10e5, NAN, NAN, 600.0, 1, 0, t, p, 5), FREEAIR_OK);
  ck_assert_double_eq_tol(p[4] / (10e5 * exp(-rate * t[4])), 1.0, 1e-4);
}
END_TEST

/* Choked outflow without heat follows from m/m0 = (1 + (k-1)/2 b t)^(-2/(k-1)),
 * b = A/V sqrt(k R T0) (2/(k+1))^((k+1)/(2(k-1))) (algebra), however short it is;
 * in the end nothing is left but ambient pressure. */
START_TEST(a_tiny_receiver_empties_through_any_hole)
{
  const double volumes[] = {1e-3, 1e-5, 1e-9};
  const double holes[] = {1e-6, 1e-3, 0.99};
  for (int v = 0; v < 3; v++)
    for (int h = 0; h < 3; h++) {
      freeair_machine m = shop_unit();
      freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
      m.receiver_m3 = volumes[v];
      m.receiver_gas_ua_w_k = 0.0;
      m.downstream_leak_m2 = holes[h];
      double b = holes[h] / volumes[v] * sqrt(1.4 * 287.05 * 293.15) * pow(2.0 / 2.4, 3.0);
      double t[3];
      double p[3];
      ck_assert_int_eq(freeair_prediction_leak_down(&m, &s, 10e5, NAN, NAN, 1.0 / b, 1, 1, t, p, 3), FREEAIR_OK);
      for (int i = 0; i < 3; i++)
        ck_assert_double_eq_tol(p[i] / (10e5 * pow(1.0 + 0.2 * b * t[i], -7.0)), 1.0, 1e-7);
      ck_assert_int_eq(freeair_prediction_leak_down(&m, &s, 10e5, NAN, NAN, 1e7, 1, 1, t, p, 3), FREEAIR_OK);
      ck_assert_double_eq_tol(p[1], ambient, 1e-3);
      ck_assert_double_eq_tol(p[2], ambient, 1e-3);
    }
}
END_TEST

static int how_many(int few, int many)
{
  return getenv("FREEAIR_LONG") != NULL ? many : few;
}

START_TEST(leak_down_never_fails)
{
  int n = how_many(1000, 20000);
  for (int i = 0; i < n; i++) {
    chance c = chance_of(4000000u + (uint64_t)i);
    freeair_machine m = extreme_machine(&c, i % 2 == 0 ? 1.0 : 100.0);
    freeair_machine_site s = extreme_site(&c);
    m.receiver_m3 = log_between(&c, 1e-7, 10.0);
    m.downstream_leak_m2 = log_between(&c, 1e-10, 1.0);
    double from = log_between(&c, 1.5e5, 1e7);
    double gas = uniform(&c) < 0.5 ? NAN : between(&c, 240.0, 600.0);
    double t[9];
    double p[9];
    int32_t status = freeair_prediction_leak_down(&m, &s, from, gas, NAN, log_between(&c, 1e-4, 1e7), 1, 1, t, p, 9);
    ck_assert_msg(status == FREEAIR_OK, "leak-down %d: status %d", i, (int)status);
    for (int k = 1; k < 9; k++) {
      ck_assert(p[k] > 0.0);
      if (isfinite(gas)) continue; /* cooling draws the pressure down by itself */
      ck_assert_msg(p[k] <= p[k - 1] * (1.0 + 1e-6), "leak-down %d rises at %d", i, k);
      ck_assert_double_ge(p[k], s.barometric_pa * (1.0 - 1e-6));
    }
  }
}
END_TEST

/* Pump-up and level-off of machines at the ends of what could be built. */
START_TEST(extreme_runs_never_fail)
{
  int n = how_many(60, 2000);
  for (int i = 0; i < n; i++) {
    chance c = chance_of(3000000u + (uint64_t)i);
    freeair_machine m = extreme_machine(&c, i % 2 == 0 ? 1.0 : 5.0);
    freeair_machine_site s = extreme_site(&c);
    random_faults(&c, &m, &s);
    freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
    run.start = up_to(&c, 2);
    if (uniform(&c) < 0.5) run.from_pa = m.gauge_error_pa > 0.0 ? NAN : between(&c, 1.2e5, 4e5);
    outcome o;
    o.r = (freeair_prediction_result)FREEAIR_PREDICTION_RESULT_INIT;
    o.status = freeair_prediction_pumpup(&m, &s, &run, &o.r, o.t, o.p, o.gas, o.delivery, POINTS);
    ck_assert_msg(o.status >= 0, "pump-up %d: status %d", i, (int)o.status);
    for (int k = 0; k < POINTS; k++)
      ck_assert_msg(o.p[k] > 0.0 && o.gas[k] > 80.0 && o.gas[k] < 1500.0, "pump-up %d: %g Pa, %g K", i, o.p[k],
                    o.gas[k]);
    double level;
    int32_t status = freeair_prediction_level_off(&m, &s, NAN, &level);
    ck_assert_msg(status >= 0 && level > 0.0, "level-off %d: status %d", i, (int)status);
  }
}
END_TEST

START_TEST(outlook_is_times_and_points_together)
{
  static const int32_t faults[] = {FREEAIR_FAULT_NONE, FREEAIR_FAULT_LP_SUCTION_VALVE, FREEAIR_FAULT_HP_RINGS};
  for (int f = 0; f < 3; f++) {
    freeair_machine m = shop_unit();
    freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
    ck_assert_int_eq(freeair_fault_apply(&m, &s, faults[f], 0.25, &m, &s), FREEAIR_OK);
    freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
    freeair_prediction_result r = FREEAIR_PREDICTION_RESULT_INIT;
    const double p[] = {13e5, 5e5, 9e5};
    double t[3];
    double alone[3];
    freeair_cycle_result points[3] = {FREEAIR_CYCLE_RESULT_INIT, FREEAIR_CYCLE_RESULT_INIT, FREEAIR_CYCLE_RESULT_INIT};
    ck_assert_int_eq(freeair_outlook_readings(&m, &s, &run, &r, p, t, points, sizeof points[0], 3), FREEAIR_OK);
    ck_assert_int_eq(freeair_prediction_times(&m, &s, &run, &r, p, alone, 3), FREEAIR_OK);
    for (int i = 0; i < 3; i++) {
      ck_assert_double_eq(t[i], alone[i]);
      freeair_cycle_result exact = FREEAIR_CYCLE_RESULT_INIT;
      ck_assert_int_eq(freeair_cycle_point(&m, &s, p[i], NAN, NAN, &exact), FREEAIR_OK);
      double fine = f == 0 ? 5e-3 : 1e-2;
      ck_assert_double_eq_tol(points[i].delivery_m3_s / exact.delivery_m3_s, 1.0, fine);
      ck_assert_double_eq_tol(points[i].interstage_mean_pa / exact.interstage_mean_pa, 1.0, fine);
      ck_assert_double_eq_tol(points[i].shaft_w / exact.shaft_w, 1.0, fine);
      ck_assert_double_eq_tol(points[i].lp_discharge_k, exact.lp_discharge_k, 1.5);
      ck_assert_double_eq_tol(points[i].hp_discharge_k, exact.hp_discharge_k, 1.5);
      ck_assert_double_eq_tol(points[i].speed_rev_s / exact.speed_rev_s, 1.0, 1e-3);
    }
  }
}
END_TEST

START_TEST(rating_is_met_by_what_is_unknown)
{
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  for (int way = 0; way < 3; way++) {
    freeair_machine m = shop_unit();
    freeair_machine c = FREEAIR_MACHINE_INIT;
    m.rated_delivery_m3_s = 0.0095;
    m.rated_pa = 13e5;
    if (way == 1) m.speed_rev_s = NAN;
    if (way == 2) m.lp_bore_m = NAN;
    int32_t adjusted;
    double delivery;
    ck_assert_int_eq(freeair_rating_complete(&m, &s, &c, &adjusted, &delivery), FREEAIR_OK);
    ck_assert_double_eq_tol(delivery / 0.0095, 1.0, 1e-3);
    const int32_t expected[] = {FREEAIR_RATING_CLEARANCE, FREEAIR_RATING_SPEED, FREEAIR_RATING_BORE};
    ck_assert_int_eq(adjusted, expected[way]);
    freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
    ck_assert_int_eq(freeair_cycle_point(&c, &s, 13e5, NAN, 1e-4, &r), FREEAIR_OK);
    ck_assert_double_eq_tol(r.delivery_m3_s / 0.0095, 1.0, 2e-3);
  }
}
END_TEST

int main(void)
{
  TCase *tcase = tcase_create("prediction");
  tcase_set_timeout(tcase, 1800);
  tcase_add_test(tcase, sound_unit_takes_five_minutes);
  tcase_add_test(tcase, isothermal_rule_reads_too_much);
  tcase_add_test(tcase, start_state_matters);
  tcase_add_test(tcase, level_off_pressures);
  tcase_add_test(tcase, shape_of_the_curve);
  tcase_add_test(tcase, curve_is_consistent);
  tcase_add_test(tcase, mass_is_kept);
  tcase_add_test(tcase, few_nodes_suffice);
  tcase_add_test(tcase, a_unit_that_hardly_arrives_gets_more_nodes);
  tcase_add_test(tcase, what_is_not_reached_is_infinite);
  tcase_add_test(tcase, a_wrong_gauge_shifts_readings);
  tcase_add_test(tcase, leak_down_tends_to_the_closed_form);
  tcase_add_test(tcase, a_tiny_receiver_empties_through_any_hole);
  tcase_add_test(tcase, leak_down_never_fails);
  tcase_add_test(tcase, extreme_runs_never_fail);
  tcase_add_test(tcase, outlook_is_times_and_points_together);
  tcase_add_test(tcase, rating_is_met_by_what_is_unknown);
  return run_case("prediction", tcase);
}
