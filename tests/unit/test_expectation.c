/* SPDX-License-Identifier: MIT */
#include <freeair/cylinder.h>
#include <freeair/expectation.h>
#include <freeair/prediction.h>
#include <freeair/rating.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "../suite.h"

#include <check.h>

/* Invented: a two-stage shop unit of 22 cfm on 300 litres. */
static freeair_pumpup_test shop_test(void)
{
  freeair_pumpup_test t = FREEAIR_PUMPUP_TEST_INIT;
  t.v_receiver_m3 = 0.3;
  t.p_ambient_pa = 101325.0;
  t.t_ambient_k = 293.15;
  t.p_start_pa = 101325.0;
  t.p_end_pa = 101325.0 + 175.0 * 6894.757;
  t.start = FREEAIR_PUMPUP_SOAKED;
  return t;
}

static freeair_expectation_machine shop_machine(void)
{
  freeair_expectation_machine m = FREEAIR_EXPECTATION_MACHINE_INIT;
  m.rated_m3_s = 0.0104;
  m.rated_pa = 101325.0 + 175.0 * 6894.757;
  return m;
}

static freeair_expectation_result expect(const freeair_pumpup_test *t, const freeair_expectation_machine *m)
{
  freeair_expectation_result r = FREEAIR_EXPECTATION_RESULT_INIT;
  ck_assert_int_eq(freeair_expectation_of_run(t, m, &r), FREEAIR_OK);
  return r;
}

/* Common practice: about five minutes to 175 psig, the last quarter just over one. */
START_TEST(times_of_a_sound_shop_unit)
{
  freeair_pumpup_test t = shop_test();
  freeair_expectation_machine m = shop_machine();
  const double p[] = {101325.0 + 135.0 * 6894.757, 101325.0 + 175.0 * 6894.757};
  double time[2];
  double u[2];
  ck_assert_int_eq(freeair_expectation_times(&t, &m, p, 2, time, u), FREEAIR_OK);
  ck_assert_double_gt(time[1], 260.0);
  ck_assert_double_lt(time[1], 330.0);
  ck_assert_double_gt(time[1] - time[0], 60.0);
  ck_assert_double_lt(time[1] - time[0], 80.0);
  freeair_expectation_result r = expect(&t, &m);
  ck_assert_double_eq_tol(time[1] / r.time_s, 1.0, 1e-7);
  ck_assert_double_eq_tol(u[1] / r.time_uncertainty_s, 1.0, 1e-6);
  double parts = hypot(hypot(r.time_from_machine_s, r.time_from_receiver_s), r.time_from_readings_s);
  ck_assert_double_eq_tol(parts / r.time_uncertainty_s, 1.0, 1e-12);
}
END_TEST

/* Expected, then timed and analysed: the same delivery comes back. */
START_TEST(analysis_gives_back_what_was_expected)
{
  for (int32_t stages = 1; stages <= 2; stages++)
    for (int32_t start = FREEAIR_PUMPUP_SOAKED; start <= FREEAIR_PUMPUP_DRAWN_DOWN; start++) {
      freeair_pumpup_test t = shop_test();
      freeair_expectation_machine m = shop_machine();
      freeair_pumpup_result found = FREEAIR_PUMPUP_RESULT_INIT;
      m.stages = stages;
      m.clearance = 0.03;
      t.start = start;
      t.humidity = 0.5;
      if (start == FREEAIR_PUMPUP_DRAWN_DOWN) t.p_start_pa = 9e5;
      freeair_expectation_result r = expect(&t, &m);
      t.duration_s = r.time_s;
      ck_assert_int_eq(freeair_pumpup_analyse(&t, &found), FREEAIR_OK);
      ck_assert_double_eq_tol(found.delivery_m3_s / r.delivery_m3_s, 1.0, 0.01);
      ck_assert_double_eq_tol(found.t_end_k, r.t_end_k, 1.5);
    }
}
END_TEST

START_TEST(altitude_heat_and_slip_cost_time)
{
  freeair_pumpup_test t = shop_test();
  freeair_expectation_machine m = shop_machine();
  freeair_expectation_result sea = expect(&t, &m);
  double last_s = sea.time_s;
  for (double p = 95e3; p > 65e3; p -= 6e3) {
    t.p_ambient_pa = t.p_start_pa = p;
    freeair_expectation_result r = expect(&t, &m);
    ck_assert_double_gt(r.time_s, last_s); /* to the same absolute pressure */
    ck_assert_double_lt(r.delivery_m3_s, sea.delivery_m3_s); /* the ratio is larger */
    last_s = r.time_s;
  }
  t = shop_test();
  t.t_ambient_k = 313.15;
  ck_assert_double_gt(expect(&t, &m).time_s, sea.time_s); /* hardly: thinner air goes in, and stays */
  t = shop_test();
  m.speed_ratio = 0.9;
  double slow = expect(&t, &m).time_s / sea.time_s;
  ck_assert_double_gt(slow, 1.0 / 0.9); /* a little more than 1/0.9: the gas has time to cool, and more of it goes in */
  ck_assert_double_lt(slow, 1.03 / 0.9);
}
END_TEST

/* The delivery is that of the cylinder topic's volumetric efficiency. */
START_TEST(efficiency_is_that_of_the_cylinder)
{
  for (int32_t stages = 1; stages <= 2; stages++) {
    freeair_pumpup_test t = shop_test();
    freeair_expectation_machine m = FREEAIR_EXPECTATION_MACHINE_INIT;
    m.swept_m3 = 0.001;
    m.speed_rev_s = 15.0;
    m.induction = 0.9;
    m.stages = stages;
    m.clearance = 0.04;
    m.n_expansion = 1.3;
    freeair_expectation_result r = expect(&t, &m);
    double first_stage_pa = stages == 1 ? t.p_end_pa : sqrt(t.p_end_pa * t.p_ambient_pa);
    double efficiency;
    ck_assert_int_eq(
        freeair_cylinder_volumetric_efficiency(t.p_ambient_pa, first_stage_pa, 0.04, 1.3, &efficiency), FREEAIR_OK);
    ck_assert_double_eq_tol(r.end_delivery_m3_s / (0.015 * 0.9 * efficiency), 1.0, 1e-13);
  }
}
END_TEST

/* The closed form against the crank-angle model that was fitted to the same rating. */
START_TEST(close_to_the_crank_angle_model)
{
  for (int32_t stages = 1; stages <= 2; stages++) {
    freeair_machine description = FREEAIR_MACHINE_INIT;
    freeair_machine complete = FREEAIR_MACHINE_INIT;
    freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
    description.stages = stages;
    description.lp_bore_m = 0.1;
    description.lp_stroke_m = 0.08;
    description.rated_delivery_m3_s = 0.0105;
    description.rated_pa = stages == 1 ? 9e5 : 13e5;
    description.receiver_m3 = 0.3;
    int32_t adjusted;
    double delivery;
    ck_assert_int_eq(freeair_rating_complete(&description, &site, &complete, &adjusted, &delivery), FREEAIR_OK);
    freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
    freeair_prediction_result predicted = FREEAIR_PREDICTION_RESULT_INIT;
    const double p[] = {4e5, description.rated_pa};
    double times[2];
    double expected[2];
    double u[2];
    site.barometric_pa = 83000.0;
    site.ambient_k = 308.15;
    ck_assert_int_eq(freeair_prediction_times(&complete, &site, &run, &predicted, p, times, 2), FREEAIR_OK);
    freeair_pumpup_test t = shop_test();
    t.p_ambient_pa = t.p_start_pa = 83000.0;
    t.t_ambient_k = 308.15;
    freeair_expectation_machine m = FREEAIR_EXPECTATION_MACHINE_INIT;
    m.rated_m3_s = 0.0105;
    m.rated_pa = description.rated_pa;
    m.rated_ambient_pa = 101325.0;
    m.stages = stages;
    ck_assert_int_eq(freeair_expectation_times(&t, &m, p, 2, expected, u), FREEAIR_OK);
    for (int i = 0; i < 2; i++) ck_assert_double_lt(fabs(expected[i] - times[i]), 2.0 * u[i]);
  }
}
END_TEST

START_TEST(verdict_is_guarded)
{
  double ratio;
  double u;
  int32_t verdict;
  /* the nearer to the requirement, the better it has to be known */
  for (double found = 0.5; found < 1.5; found += 0.01) {
    ck_assert_int_eq(freeair_expectation_compare(found, 0.05, 1.0, 0.03, 0.9, 0.95, &ratio, &u, &verdict), FREEAIR_OK);
    ck_assert_double_eq_tol(ratio, found, 1e-15);
    double margin = (ratio - 0.9) / u;
    int32_t want = margin >= 1.645 ? FREEAIR_VERDICT_MEETS
                   : margin <= -1.645 ? FREEAIR_VERDICT_FAILS
                                      : FREEAIR_VERDICT_CANNOT_TELL;
    if (fabs(fabs(margin) - 1.645) > 0.01) ck_assert_int_eq(verdict, want);
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("expectation");
  tcase_set_timeout(tc, 60);
  tcase_add_test(tc, times_of_a_sound_shop_unit);
  tcase_add_test(tc, analysis_gives_back_what_was_expected);
  tcase_add_test(tc, altitude_heat_and_slip_cost_time);
  tcase_add_test(tc, efficiency_is_that_of_the_cylinder);
  tcase_add_test(tc, close_to_the_crank_angle_model);
  tcase_add_test(tc, verdict_is_guarded);
  return run_case("expectation", tc);
}
