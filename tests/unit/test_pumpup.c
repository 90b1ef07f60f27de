/* SPDX-License-Identifier: MIT */
#include <freeair/prediction.h>
#include <freeair/pumpup.h>
#include <freeair/rating.h>
#include <freeair/status.h>

#include "../suite.h"
#include "synthetic_plant.h"

#include <check.h>
#include <string.h>

/* Invented: a shop receiver of 300 litres filled from empty in five minutes. */
static freeair_pumpup_test shop_test(void)
{
  freeair_pumpup_test t = FREEAIR_PUMPUP_TEST_INIT;
  t.v_receiver_m3 = 0.3;
  t.p_ambient_pa = 101325.0;
  t.t_ambient_k = 293.15;
  t.p_start_pa = 101325.0;
  t.p_end_pa = 1.3e6;
  t.duration_s = 300.0;
  t.start = FREEAIR_PUMPUP_SOAKED;
  return t;
}

static freeair_pumpup_result analyse(const freeair_pumpup_test *t)
{
  freeair_pumpup_result r = FREEAIR_PUMPUP_RESULT_INIT;
  ck_assert_int_eq(freeair_pumpup_analyse(t, &r), FREEAIR_OK);
  return r;
}

START_TEST(heating_makes_the_plain_rule_read_too_much)
{
  freeair_pumpup_test t = shop_test();
  freeair_pumpup_result whole = analyse(&t);
  ck_assert_double_gt(whole.bias, 0.04); /* several percent from empty: common practice */
  ck_assert_double_lt(whole.bias, 0.20);
  t.p_start_pa = 9.3e5;
  t.duration_s = 75.0;
  freeair_pumpup_result band = analyse(&t);
  ck_assert_double_gt(band.bias, 1.7 * whole.bias); /* far more over the narrow band */
  t.start = FREEAIR_PUMPUP_DRAWN_DOWN; /* the state before matters */
  freeair_pumpup_result cold = analyse(&t);
  ck_assert_double_lt(cold.t_start_k, 285.0);
  ck_assert_double_lt(cold.delivery_m3_s, 0.95 * band.delivery_m3_s);
  t.start = FREEAIR_PUMPUP_UNKNOWN;
  freeair_pumpup_result unknown = analyse(&t);
  ck_assert_double_gt(unknown.delivery_uncertainty_m3_s, 1.2 * band.delivery_uncertainty_m3_s);
}
END_TEST

/* No heat exchange: the energy balance alone gives the mass, m = V dp / (k R T_in),
 * whatever the course of the inflow. Much exchange: isothermal, the plain rule. */
START_TEST(limits_of_heat_exchange)
{
  freeair_pumpup_test t = shop_test();
  for (int i = 0; i < 2; i++) {
    t.ua_gas_w_k = 0.0;
    t.fall = 0.5 * i;
    freeair_pumpup_result adiabatic = analyse(&t);
    double mass_kg = 0.3 * (1.3e6 - 101325.0) / (1.4 * 287.05287 * 353.15);
    ck_assert_double_eq_tol(adiabatic.mass_kg / mass_kg, 1.0, 1e-9);
  }
  t.ua_gas_w_k = 500.0;
  t.c_wall_j_k = 1e9;
  freeair_pumpup_result isothermal = analyse(&t);
  ck_assert_double_eq_tol(isothermal.bias, 0.0, 4e-3);
  double bias = 1.0;
  for (double ua = 1.0; ua < 500.0; ua *= 2.0) {
    t.ua_gas_w_k = ua;
    freeair_pumpup_result r = analyse(&t);
    ck_assert_double_lt(r.bias, bias);
    bias = r.bias;
  }
}
END_TEST

START_TEST(budget_adds_up_and_nothing_uncertain_is_nothing)
{
  freeair_pumpup_test t = shop_test();
  t.humidity = 0.5;
  freeair_pumpup_result r = analyse(&t);
  const double parts[] = {r.from_volume_m3_s,   r.from_readings_m3_s, r.from_scale_m3_s, r.from_time_m3_s,
                          r.from_barometer_m3_s, r.from_ambient_m3_s,  r.from_humidity_m3_s, r.from_start_m3_s,
                          r.from_end_m3_s,       r.from_inlet_m3_s,    r.from_exchange_m3_s, r.from_course_m3_s};
  double sum = 0.0;
  for (size_t i = 0; i < sizeof parts / sizeof parts[0]; i++) sum += parts[i] * parts[i];
  ck_assert_double_eq_tol(sqrt(sum) / r.delivery_uncertainty_m3_s, 1.0, 1e-12);
  t.humidity = NAN;
  t.v_uncertainty_m3 = t.p_ambient_uncertainty_pa = t.t_ambient_uncertainty_k = t.duration_uncertainty_s = 0.0;
  t.reading_uncertainty_pa = t.gauge_scale_uncertainty = t.t_gas_uncertainty_k = 0.0;
  t.t_start_k = t.t_end_k = 293.15;
  r = analyse(&t);
  ck_assert_double_eq(r.delivery_uncertainty_m3_s, 0.0);
  ck_assert_double_eq(r.bias_uncertainty, 0.0);
  ck_assert_double_eq_tol(r.bias, 0.0, 1e-14);
}
END_TEST

START_TEST(scales_with_volume_and_time)
{
  freeair_pumpup_test t = shop_test();
  t.t_start_k = 290.0;
  t.t_end_k = 310.0;
  freeair_pumpup_result one = analyse(&t);
  t.v_receiver_m3 *= 2.0;
  freeair_pumpup_result twice = analyse(&t);
  ck_assert_double_eq_tol(twice.delivery_m3_s / one.delivery_m3_s, 2.0, 1e-13);
  t.duration_s *= 4.0;
  freeair_pumpup_result slow = analyse(&t);
  ck_assert_double_eq_tol(slow.delivery_m3_s / twice.delivery_m3_s, 0.25, 1e-13);
  t.v_water_m3 = 0.3;
  freeair_pumpup_result wet = analyse(&t);
  ck_assert_double_eq_tol(wet.delivery_m3_s / slow.delivery_m3_s, 0.5, 1e-13);
}
END_TEST

START_TEST(table_of_two_rows_is_a_test)
{
  for (int32_t start = FREEAIR_PUMPUP_UNKNOWN; start <= FREEAIR_PUMPUP_CYCLING; start++) {
    freeair_pumpup_test t = shop_test();
    t.start = start;
    t.rest_s = 500.0;
    t.p_start_pa = 9e5;
    t.duration_s = 80.0;
    t.duration_uncertainty_s = 0.08;
    t.reading_uncertainty_pa = 4000.0;
    freeair_pumpup_result a = analyse(&t);
    freeair_pumpup_result b = FREEAIR_PUMPUP_RESULT_INIT;
    const double time[] = {1000.0, 1080.0};
    const double p[] = {9e5, 1.3e6};
    ck_assert_int_eq(freeair_pumpup_analyse_table(&t, time, p, 2, &b), FREEAIR_OK);
    ck_assert_double_eq_tol(b.delivery_m3_s / a.delivery_m3_s, 1.0, 1e-12);
    ck_assert_double_eq_tol(b.delivery_uncertainty_m3_s / a.delivery_uncertainty_m3_s, 1.0, 1e-9);
  }
}
END_TEST

/* A cycle found is one that repeats: load and rest from its start lead back to it. */
START_TEST(cycle_repeats)
{
  freeair_pumpup_test t = shop_test();
  t.start = FREEAIR_PUMPUP_CYCLING;
  t.p_start_pa = 9.3e5;
  t.duration_s = 75.0;
  t.rest_s = 400.0;
  freeair_pumpup_result r = analyse(&t);
  plant p = plant_of(0.3, 0.01, 1.3e6);
  gas g = gas_at(&p, 9.3e5, r.t_start_k, r.t_wall_start_k);
  p.fall = 0.0;
  double m_start = g.m_kg;
  double t_start = r.t_start_k;
  double wall_start = r.t_wall_start_k;
  /* the inflow by bisection */
  double low = 0.001;
  double high = 0.1;
  p.fall = 0.2;
  for (int i = 0; i < 60; i++) {
    p.w_kg_s = 0.5 * (low + high);
    g = gas_at(&p, 9.3e5, t_start, wall_start);
    for (int k = 0; k < 750; k++) plant_step(&p, 0.0, 0.1, 1, &g);
    if (gas_pressure(&p, &g) > 1.3e6)
      high = p.w_kg_s;
    else
      low = p.w_kg_s;
  }
  ck_assert_double_eq_tol((g.m_kg - m_start) / r.mass_kg, 1.0, 1e-7);
  /* rest with a steady loss */
  double lost = (g.m_kg - m_start) / 400.0;
  p.w_kg_s = 0.0;
  p.demand_kg_s = lost;
  p.demand_every_s = 1e9;
  p.demand_for_s = 1e9;
  for (int k = 0; k < 4000; k++) plant_step(&p, 0.0, 0.1, 0, &g);
  ck_assert_double_eq_tol(g.u_j / (g.m_kg * plant_cv), t_start, 1e-4);
  ck_assert_double_eq_tol(g.t_wall_k, wall_start, 1e-4);
  ck_assert_double_eq_tol(gas_pressure(&p, &g), 9.3e5, 0.5);
}
END_TEST

/* One invented test with everything off by chance as the defaults say. Returns how
 * many standard uncertainties the result is off, NaN when the machine never got there. */
static double one_chance(luck *l, size_t n, double from_share, int32_t start)
{
  double v_nominal = 0.1 + 0.4 * luck_uniform(l);
  double p_end = 8e5 + 6e5 * luck_uniform(l);
  plant p = plant_of(v_nominal, 0.0, p_end);
  p.p_a_pa = 8e4 + 2.2e4 * luck_uniform(l);
  p.t_a_k = 273.0 + 40.0 * luck_uniform(l);
  p.v_m3 = v_nominal * (1.0 + 0.03 * luck_normal(l));
  p.t_in_k = p.t_a_k + 20.0 + 80.0 * luck_uniform(l);
  p.ua_gas *= pow(2.0, 2.0 * luck_uniform(l) - 1.0);
  p.ua_wall *= pow(2.0, 2.0 * luck_uniform(l) - 1.0);
  p.c_wall *= pow(2.0, 2.0 * luck_uniform(l) - 1.0);
  p.fall = fmin(fmax(0.2 + 0.2 * luck_normal(l), 0.0), 0.7);
  p.bend = 0.05 * luck_normal(l);
  p.w_kg_s = v_nominal * p_end / (plant_r * p.t_a_k) / (150.0 + 450.0 * luck_uniform(l));
  double p_start = p.p_a_pa + from_share * (p_end - p.p_a_pa);
  double t_gas = p.t_a_k + (start == FREEAIR_PUMPUP_SOAKED ? luck_normal(l) : 30.0 * luck_uniform(l) - 15.0);
  double t_wall = start == FREEAIR_PUMPUP_SOAKED ? t_gas : p.t_a_k;
  gas g = gas_at(&p, p_start, t_gas, t_wall);
  double m_start = g.m_kg;
  double m[2] = {0.0, m_start};
  double pressure[2] = {0.0, p_start};
  const double h = 0.25;
  size_t steps = 0;
  double *curve = malloc(20000 * sizeof *curve);
  while (pressure[1] < p_end && steps < 19999) {
    curve[steps++] = pressure[1];
    plant_step(&p, 0.0, h, 1, &g);
    m[0] = m[1];
    pressure[0] = pressure[1];
    m[1] = g.m_kg;
    pressure[1] = gas_pressure(&p, &g);
  }
  double share = (p_end - pressure[0]) / (pressure[1] - pressure[0]);
  double duration = ((double)steps - 1.0 + share) * h;
  double gained = m[0] + share * (m[1] - m[0]) - m_start;
  double off = NAN;
  if (steps < 19999) {
    curve[steps] = pressure[1];
    freeair_pumpup_test t = FREEAIR_PUMPUP_TEST_INIT;
    freeair_pumpup_result r = FREEAIR_PUMPUP_RESULT_INIT;
    t.v_receiver_m3 = v_nominal;
    t.p_ambient_pa = p.p_a_pa + 300.0 * luck_normal(l);
    t.t_ambient_k = p.t_a_k + luck_normal(l);
    t.start = start;
    t.duration_uncertainty_s = 1.0;
    double scale = 1.0 + 0.01 * luck_normal(l);
    double timed = duration + luck_normal(l);
    double *time = malloc(n * sizeof *time);
    double *reading = malloc(n * sizeof *reading);
    for (size_t i = 0; i < n; i++) {
      double x = (double)i / (double)(n - 1) * ((double)steps - 1.0 + share);
      size_t k = (size_t)x;
      double true_pa = curve[k] + (x - (double)k) * (curve[k + 1] - curve[k]);
      time[i] = (double)i / (double)(n - 1) * timed;
      reading[i] = t.p_ambient_pa + scale * (true_pa - p.p_a_pa) + 0.005 * (p_end - p.p_a_pa) * luck_normal(l);
    }
    ck_assert_int_eq(freeair_pumpup_analyse_table(&t, time, reading, n, &r), FREEAIR_OK);
    double truth = gained / duration * plant_r * p.t_a_k / p.p_a_pa;
    off = (r.delivery_m3_s - truth) / r.delivery_uncertainty_m3_s;
    free(time);
    free(reading);
  }
  free(curve);
  return off;
}

/* The true delivery lies within the uncertainty as often as it says. */
START_TEST(uncertainty_is_honest)
{
  const size_t sizes[] = {2, 3, 7, 40};
  const double from[] = {0.0, 0.75};
  luck l = {.state = 20250307u};
  int within_one = 0;
  int within_two = 0;
  int n = 0;
  for (int i = 0; i < 160; i++) {
    double off = one_chance(&l, sizes[i % 4], from[i / 4 % 2],
                            i / 8 % 2 == 0 ? FREEAIR_PUMPUP_SOAKED : FREEAIR_PUMPUP_UNKNOWN);
    if (isnan(off)) continue;
    n++;
    within_one += fabs(off) < 1.0;
    within_two += fabs(off) < 2.0;
  }
  /* 68 % and 95 %, within three standard deviations of such counts and a little for rectangular parts */
  ck_assert_int_gt(n, 140);
  ck_assert_msg(within_one > 0.56 * n && within_one < 0.80 * n, "%d of %d within one", within_one, n);
  ck_assert_msg(within_two > 0.90 * n, "%d of %d within two", within_two, n);
}
END_TEST

/* A run that the crank-angle model predicts, analysed knowing only the receiver. */
START_TEST(agrees_with_the_crank_angle_model)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine complete = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  m.stages = 2;
  m.lp_bore_m = 0.1;
  m.lp_stroke_m = 0.08;
  m.rated_delivery_m3_s = 0.0105;
  m.rated_pa = 13e5;
  m.receiver_m3 = 0.3;
  int32_t adjusted;
  double delivery;
  ck_assert_int_eq(freeair_rating_complete(&m, &site, &complete, &adjusted, &delivery), FREEAIR_OK);
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  freeair_prediction_result predicted = FREEAIR_PREDICTION_RESULT_INIT;
  run.to_pa = 13e5;
  enum { points = 31 };
  double t[points];
  double p[points];
  double gas_k[points];
  double flow[points];
  ck_assert_int_eq(freeair_prediction_pumpup(&complete, &site, &run, &predicted, t, p, gas_k, flow, points),
                   FREEAIR_OK);
  freeair_pumpup_test test = shop_test();
  freeair_pumpup_result r = FREEAIR_PUMPUP_RESULT_INIT;
  ck_assert_int_eq(freeair_pumpup_analyse_table(&test, t, p, points, &r), FREEAIR_OK);
  ck_assert_double_lt(fabs(r.delivery_m3_s - predicted.mean_delivery_m3_s), 2.0 * r.delivery_uncertainty_m3_s);
  ck_assert_double_eq_tol(r.plain_m3_s / predicted.apparent_m3_s, 1.0, 0.01);
  ck_assert_double_lt(fabs(r.t_end_k - predicted.end_gas_k), 2.0 * r.t_end_uncertainty_k);
}
END_TEST

START_TEST(outlier_in_a_table_hardly_matters)
{
  plant p = plant_of(0.3, 0.0105, 1.3e6);
  gas g = gas_at(&p, 101325.0, 293.15, 293.15);
  enum { points = 41 };
  double t[points];
  double pressure[points];
  luck l = {.state = 77};
  for (int i = 0; i < points; i++) {
    t[i] = 7.0 * i;
    pressure[i] = gas_pressure(&p, &g) + 500.0 * luck_normal(&l);
    for (int k = 0; k < 70; k++) plant_step(&p, 0.0, 0.1, 1, &g);
  }
  freeair_pumpup_test test = shop_test();
  freeair_pumpup_result clean = FREEAIR_PUMPUP_RESULT_INIT;
  freeair_pumpup_result spoiled = FREEAIR_PUMPUP_RESULT_INIT;
  ck_assert_int_eq(freeair_pumpup_analyse_table(&test, t, pressure, points, &clean), FREEAIR_OK);
  pressure[20] += 3e5;
  ck_assert_int_eq(freeair_pumpup_analyse_table(&test, t, pressure, points, &spoiled), FREEAIR_OK);
  ck_assert_double_eq_tol(spoiled.delivery_m3_s / clean.delivery_m3_s, 1.0, 2e-3);
  /* more readings say more of the course of the inflow than is known beforehand */
  ck_assert_double_lt(clean.fall_uncertainty, 0.1);
  double fall = 0.2 * (clean.p_end_pa - 101325.0) / (1.3e6 - 101325.0);
  ck_assert_double_eq_tol(clean.fall, fall, 3.0 * clean.fall_uncertainty + 0.01);
}
END_TEST

/* The same mass of dry air counts more cubic metres as drawn in when the air is moist. */
START_TEST(moisture)
{
  freeair_pumpup_test t = shop_test();
  t.t_ambient_k = 303.15;
  freeair_pumpup_result dry = analyse(&t);
  t.humidity = 0.6;
  freeair_pumpup_result moist = analyse(&t);
  ck_assert_double_gt(moist.delivery_m3_s, 1.015 * dry.delivery_m3_s);
  ck_assert_double_lt(moist.delivery_m3_s, 1.035 * dry.delivery_m3_s);
  ck_assert_double_lt(moist.mass_kg, dry.mass_kg);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("pumpup");
  tcase_set_timeout(tc, 120);
  tcase_add_test(tc, heating_makes_the_plain_rule_read_too_much);
  tcase_add_test(tc, limits_of_heat_exchange);
  tcase_add_test(tc, budget_adds_up_and_nothing_uncertain_is_nothing);
  tcase_add_test(tc, scales_with_volume_and_time);
  tcase_add_test(tc, table_of_two_rows_is_a_test);
  tcase_add_test(tc, cycle_repeats);
  tcase_add_test(tc, uncertainty_is_honest);
  tcase_add_test(tc, agrees_with_the_crank_angle_model);
  tcase_add_test(tc, outlier_in_a_table_hardly_matters);
  tcase_add_test(tc, moisture);
  return run_case("pumpup", tc);
}
