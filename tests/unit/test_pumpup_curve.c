/* SPDX-License-Identifier: MIT */
#include <freeair/pumpup_curve.h>
#include <freeair/status.h>

#include "../suite.h"
#include "synthetic_plant.h"

#include <check.h>

enum { most = 400 };

typedef struct curve {
  size_t n;
  double t_s[most];
  double p_pa[most];
} curve;

static freeair_pumpup_curve_shape shape_of(const curve *c, double reading_pa)
{
  freeair_pumpup_curve_shape s = FREEAIR_PUMPUP_CURVE_SHAPE_INIT;
  ck_assert_int_eq(freeair_pumpup_curve_shape_from_readings(c->t_s, c->p_pa, c->n, reading_pa, &s), FREEAIR_OK);
  return s;
}

static curve exponential(size_t n, double level_pa, double approach_s, double duration_s, double noise_pa, luck *l)
{
  curve c = {.n = n};
  for (size_t i = 0; i < n; i++) {
    c.t_s[i] = duration_s * (double)i / (double)(n - 1);
    c.p_pa[i] = 1e5 - (level_pa - 1e5) * expm1(-c.t_s[i] / approach_s);
    if (noise_pa > 0.0) c.p_pa[i] += noise_pa * luck_normal(l);
  }
  return c;
}

START_TEST(exponential_comes_back)
{
  for (double level = 2e5; level < 5e6; level *= 1.7) {
    curve c = exponential(30, level, 200.0, 300.0, 0.0, NULL);
    freeair_pumpup_curve_shape s = shape_of(&c, NAN);
    ck_assert_int_eq(s.level_in_sight, 1);
    ck_assert_double_eq_tol(s.level_off_pa / level, 1.0, 1e-6);
    ck_assert_double_eq_tol(s.approach_1_s, 1.0 / 200.0, 1e-8);
    ck_assert_double_gt(s.slope_ratio, 2.0);
    ck_assert_double_gt(s.curvature, 0.5);
  }
}
END_TEST

/* The same curve on another clock and another gauge. */
START_TEST(shape_does_not_hang_on_scales)
{
  luck l = {.state = 5};
  curve c = exponential(60, 8e5, 150.0, 300.0, 800.0, &l);
  freeair_pumpup_curve_shape a = shape_of(&c, 800.0);
  for (size_t i = 0; i < c.n; i++) {
    c.t_s[i] = 1e6 + 3.0 * c.t_s[i];
    c.p_pa[i] = 2.0 * c.p_pa[i];
  }
  freeair_pumpup_curve_shape b = shape_of(&c, 1600.0);
  ck_assert_double_eq_tol(b.slope_ratio / a.slope_ratio, 1.0, 1e-9);
  ck_assert_double_eq_tol(b.slope_ratio_uncertainty / a.slope_ratio_uncertainty, 1.0, 1e-9);
  ck_assert_double_eq_tol(b.curvature / a.curvature, 1.0, 1e-9);
  ck_assert_double_eq_tol(b.level_off_pa / a.level_off_pa, 2.0, 1e-6);
  ck_assert_double_eq_tol(b.approach_1_s / a.approach_1_s, 1.0 / 3.0, 1e-6);
}
END_TEST

START_TEST(level_is_found_as_well_as_it_says)
{
  luck l = {.state = 99};
  int within_one = 0;
  int within_two = 0;
  int n = 0;
  for (int i = 0; i < 300; i++) {
    curve c = exponential(50, 9e5, 200.0, 300.0, 4000.0, &l);
    freeair_pumpup_curve_shape s = shape_of(&c, NAN);
    if (!s.level_in_sight) continue;
    double off = (s.level_off_pa - 9e5) / s.level_off_uncertainty_pa;
    n++;
    within_one += fabs(off) < 1.0;
    within_two += fabs(off) < 2.0;
    ck_assert_double_lt(s.level_off_least_pa, s.level_off_pa);
  }
  ck_assert_int_eq(n, 300);
  ck_assert_msg(within_one > 0.58 * n && within_one < 0.78 * n, "%d of %d within one", within_one, n);
  ck_assert_msg(within_two > 0.90 * n, "%d of %d within two", within_two, n);
}
END_TEST

START_TEST(straight_line_has_no_level)
{
  luck l = {.state = 3};
  int seen = 0;
  for (int i = 0; i < 100; i++) {
    curve c = {.n = 40};
    for (size_t k = 0; k < c.n; k++) {
      c.t_s[k] = 7.0 * (double)k;
      c.p_pa[k] = 1e5 + 4000.0 * c.t_s[k] + 3000.0 * luck_normal(&l);
    }
    freeair_pumpup_curve_shape s = shape_of(&c, NAN);
    seen += s.level_in_sight;
    if (!s.level_in_sight) ck_assert(isnan(s.level_off_pa));
  }
  ck_assert_int_le(seen, 9); /* 2.3 % are seen by chance at two standard deviations on one side */
}
END_TEST

/* A sound machine bends a little, one that loses air levels off where it does. */
START_TEST(sound_and_leaking_machine)
{
  for (int leaking = 0; leaking < 2; leaking++) {
    plant p = plant_of(0.3, 0.0115, 1.3e6);
    gas g = gas_at(&p, 101325.0, 293.15, 293.15);
    if (leaking) p.leak_kg_s = 0.009 * 1.2;
    curve c = {.n = 61};
    for (size_t i = 0; i < c.n; i++) {
      c.t_s[i] = (double)i * 5.0;
      c.p_pa[i] = gas_pressure(&p, &g);
      for (int k = 0; k < 25; k++) plant_step(&p, 0.0, 0.2, 1, &g);
    }
    for (int k = 0; k < 30000; k++) plant_step(&p, 0.0, 0.2, 1, &g);
    double level = gas_pressure(&p, &g);
    freeair_pumpup_curve_shape s = shape_of(&c, NAN);
    if (leaking) {
      ck_assert_double_gt(s.slope_ratio, 1.8);
      ck_assert_int_eq(s.level_in_sight, 1);
      ck_assert_double_eq_tol(s.level_off_pa / level, 1.0, 0.1);
    } else {
      ck_assert_double_gt(s.slope_ratio, 1.02);
      ck_assert_double_lt(s.slope_ratio, 1.4);
      ck_assert(!s.level_in_sight || s.level_off_pa > 2.0 * 1.3e6);
    }
  }
}
END_TEST

START_TEST(outlier_hardly_matters)
{
  luck l = {.state = 8};
  curve c = exponential(80, 9e5, 200.0, 300.0, 1000.0, &l);
  freeair_pumpup_curve_shape clean = shape_of(&c, NAN);
  c.p_pa[33] += 2e5;
  freeair_pumpup_curve_shape spoiled = shape_of(&c, NAN);
  ck_assert_double_lt(fabs(spoiled.level_off_pa - clean.level_off_pa), 2.0 * clean.level_off_uncertainty_pa);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("pumpup_curve");
  tcase_set_timeout(tc, 60);
  tcase_add_test(tc, exponential_comes_back);
  tcase_add_test(tc, shape_does_not_hang_on_scales);
  tcase_add_test(tc, level_is_found_as_well_as_it_says);
  tcase_add_test(tc, straight_line_has_no_level);
  tcase_add_test(tc, sound_and_leaking_machine);
  tcase_add_test(tc, outlier_hardly_matters);
  return run_case("pumpup_curve", tc);
}
