/* SPDX-License-Identifier: MIT */
#include <freeair/belt.h>
#include <freeair/pulley.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static const double pi = 3.14159265358979323846;

START_TEST(slip_undoes_the_driven_speed)
{
  for (double s = 0.0; s <= 1.0; s += 0.05) {
    double driven;
    double slip;
    double u;
    ck_assert_int_eq(freeair_pulley_driven_speed(29.1, 0.125, 0.5, s, &driven), FREEAIR_OK);
    ck_assert_int_eq(freeair_belt_slip(29.1, 0.0, driven, 0.0, 4.0, 0.0, &slip, &u), FREEAIR_OK);
    ck_assert_double_eq_tol(slip, s, 3e-16);
    ck_assert_double_eq(u, 0.0);
  }
}
END_TEST

START_TEST(slip_uncertainty_is_that_of_small_changes)
{
  double slip;
  double u;
  double moved;
  double none;
  ck_assert_int_eq(freeair_belt_slip(29.1, 0.02, 7.1, 0.01, 4.0, 0.008, &slip, &u), FREEAIR_OK);
  double sum = 0.0;
  ck_assert_int_eq(freeair_belt_slip(29.1 + 0.02, 0.0, 7.1, 0.0, 4.0, 0.0, &moved, &none), FREEAIR_OK);
  sum += (moved - slip) * (moved - slip);
  ck_assert_int_eq(freeair_belt_slip(29.1, 0.0, 7.1 + 0.01, 0.0, 4.0, 0.0, &moved, &none), FREEAIR_OK);
  sum += (moved - slip) * (moved - slip);
  ck_assert_int_eq(freeair_belt_slip(29.1, 0.0, 7.1, 0.0, 4.0 + 0.008, 0.0, &moved, &none), FREEAIR_OK);
  sum += (moved - slip) * (moved - slip);
  ck_assert_double_eq_tol(u / sqrt(sum), 1.0, 1e-3);
}
END_TEST

START_TEST(a_belt_cannot_gain)
{
  double slip;
  double u;
  ck_assert_int_eq(freeair_belt_slip(29.1, 0.01, 7.5, 0.01, 4.0, 0.0, &slip, &u), FREEAIR_WARN_INCONSISTENT);
  ck_assert_double_lt(slip, 0.0);
  /* within the uncertainty it is no contradiction */
  ck_assert_int_eq(freeair_belt_slip(29.1, 1.0, 7.5, 0.1, 4.0, 0.1, &slip, &u), FREEAIR_OK);
}
END_TEST

START_TEST(tensions_and_powers_close)
{
  for (double ratio = 1.001; ratio < 1e4; ratio *= 1.9)
    for (double v = 0.5; v < 40.0; v *= 2.0) {
      double tight;
      double slack;
      double rest;
      double own;
      double power;
      ck_assert_int_eq(freeair_belt_tensions_from_power(4000.0, v, 0.19, ratio, &tight, &slack, &rest, &own),
                       FREEAIR_OK);
      ck_assert_double_eq_tol((tight - slack) * v, 4000.0, 1e-8 * ratio / (ratio - 1.0));
      ck_assert_double_eq_tol((tight - own) / (slack - own) / ratio, 1.0, 1e-9);
      ck_assert_double_eq_tol(0.5 * (tight + slack) / rest, 1.0, 1e-14);
      ck_assert_int_eq(freeair_belt_power_from_tight_tension(tight, v, 0.19, ratio, &power), FREEAIR_OK);
      ck_assert_double_eq_tol(power, 4000.0, 1e-7);
      ck_assert_int_eq(freeair_belt_power_from_static_tension(rest, v, 0.19, ratio, &power), FREEAIR_OK);
      ck_assert_double_eq_tol(power, 4000.0, 1e-7);
    }
}
END_TEST

START_TEST(a_groove_holds_better_than_a_flat_pulley)
{
  double flat;
  double vee;
  ck_assert_int_eq(freeair_belt_tension_ratio(0.3, 2.9, pi, &flat), FREEAIR_OK);
  ck_assert_double_eq_tol(flat, exp(0.87), 1e-14);
  double last = flat;
  for (double groove = 3.1; groove > 0.35; groove -= 0.1) {
    ck_assert_int_eq(freeair_belt_tension_ratio(0.3, 2.9, groove, &vee), FREEAIR_OK);
    ck_assert_double_gt(vee, last);
    last = vee;
  }
}
END_TEST

START_TEST(power_is_greatest_at_the_best_speed)
{
  double best;
  double most;
  ck_assert_int_eq(freeair_pulley_best_belt_speed(700.0, 0.19, &best), FREEAIR_OK);
  ck_assert_int_eq(freeair_belt_power_from_tight_tension(700.0, best, 0.19, 5.0, &most), FREEAIR_OK);
  for (double v = 1.0; v < 1.7 * best; v += 0.5) {
    double power;
    ck_assert_int_eq(freeair_belt_power_from_tight_tension(700.0, v, 0.19, 5.0, &power), FREEAIR_OK);
    ck_assert_double_le(power, most);
  }
}
END_TEST

START_TEST(force_and_tension_are_inverses)
{
  for (double stiffness = 0.0; stiffness < 1e6; stiffness = 10.0 * stiffness + 100.0)
    for (double q = 1e-4; q < 0.1; q *= 2.0) {
      double force;
      double tension;
      ck_assert_int_eq(freeair_belt_deflection_force(310.0, 0.52, q, stiffness, 1.9, &force), FREEAIR_OK);
      ck_assert_int_eq(freeair_belt_tension_from_deflection(force, 0.52, q, stiffness, 1.9, &tension), FREEAIR_OK);
      ck_assert_double_eq_tol(tension, 310.0, 1e-12 * (310.0 + stiffness));
    }
}
END_TEST

START_TEST(the_rule_of_the_trade_is_statics_at_a_sixty_fourth)
{
  double q;
  double exact;
  double rule;
  const double stiffness = 55000.0;
  ck_assert_int_eq(freeair_belt_deflection_distance(0.52, &q), FREEAIR_OK);
  ck_assert_int_eq(freeair_belt_deflection_force(310.0, 0.52, q, stiffness, 1.9, &exact), FREEAIR_OK);
  ck_assert_int_eq(freeair_belt_deflection_force_by_rule(310.0, 0.52, stiffness / 2048.0, 1.9, &rule), FREEAIR_OK);
  ck_assert_double_eq_tol(rule / exact, 1.0, 1e-3);
  ck_assert_double_ne(rule, exact);
}
END_TEST

START_TEST(frequency_and_tension_are_inverses)
{
  for (double t = 1.0; t < 1e4; t *= 3.0) {
    double f;
    double back;
    ck_assert_int_eq(freeair_belt_span_frequency(t, 0.19, 0.52, &f), FREEAIR_OK);
    ck_assert_int_eq(freeair_belt_tension_from_frequency(f, 0.19, 0.52, &back), FREEAIR_OK);
    ck_assert_double_eq_tol(back / t, 1.0, 1e-14);
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("belt");
  tcase_add_test(tc, slip_undoes_the_driven_speed);
  tcase_add_test(tc, slip_uncertainty_is_that_of_small_changes);
  tcase_add_test(tc, a_belt_cannot_gain);
  tcase_add_test(tc, tensions_and_powers_close);
  tcase_add_test(tc, a_groove_holds_better_than_a_flat_pulley);
  tcase_add_test(tc, power_is_greatest_at_the_best_speed);
  tcase_add_test(tc, force_and_tension_are_inverses);
  tcase_add_test(tc, the_rule_of_the_trade_is_statics_at_a_sixty_fourth);
  tcase_add_test(tc, frequency_and_tension_are_inverses);
  return run_case("belt", tc);
}
