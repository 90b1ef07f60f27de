/* SPDX-License-Identifier: MIT */
#include <freeair/pulley.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static const double pi = 3.14159265358979323846;

START_TEST(centre_and_length_are_inverses)
{
  for (double d = 0.05; d < 1.0; d *= 1.6)
    for (double gap = 0.001; gap < 10.0; gap *= 2.7) {
      double centre = 0.5 * (d + 0.2) + gap;
      double length;
      double back;
      ck_assert_int_eq(freeair_pulley_open_length(d, 0.2, centre, &length), FREEAIR_OK);
      ck_assert_int_eq(freeair_pulley_centre_from_open_length(d, 0.2, length, &back), FREEAIR_OK);
      ck_assert_double_eq_tol(back / centre, 1.0, 1e-13);
      ck_assert_int_eq(freeair_pulley_crossed_length(d, 0.2, centre, &length), FREEAIR_OK);
      ck_assert_int_eq(freeair_pulley_centre_from_crossed_length(d, 0.2, length, &back), FREEAIR_OK);
      ck_assert_double_eq_tol(back / centre, 1.0, 1e-12);
    }
}
END_TEST

START_TEST(the_inverse_always_arrives_even_where_the_pulleys_touch)
{
  /* a hair longer than the shortest belt, down to the last bit */
  double touching = pi * (0.1 + 0.2);
  for (double more = 1e-16; more < 1.0; more *= 2.0) {
    double centre = 0.0;
    int32_t status = freeair_pulley_centre_from_crossed_length(0.1, 0.2, touching * (1.0 + more), &centre);
    ck_assert(status == FREEAIR_OK || status == FREEAIR_ERR_NO_SOLUTION);
    if (status == FREEAIR_OK) {
      double length;
      ck_assert_int_eq(freeair_pulley_crossed_length(0.1, 0.2, centre, &length), FREEAIR_OK);
      ck_assert_double_eq_tol(length / (touching * (1.0 + more)), 1.0, 3e-15);
    } else {
      ck_assert(isnan(centre));
    }
  }
}
END_TEST

START_TEST(equal_pulleys_wrap_half_and_span_the_centre)
{
  double smaller;
  double larger;
  double span;
  double length;
  ck_assert_int_eq(freeair_pulley_open_wrap(0.3, 0.3, 0.8, &smaller, &larger), FREEAIR_OK);
  ck_assert_double_eq_tol(smaller, pi, 1e-15);
  ck_assert_double_eq_tol(larger, pi, 1e-15);
  ck_assert_int_eq(freeair_pulley_span(0.3, 0.3, 0.8, &span), FREEAIR_OK);
  ck_assert_double_eq(span, 0.8);
  ck_assert_int_eq(freeair_pulley_open_length(0.3, 0.3, 0.8, &length), FREEAIR_OK);
  ck_assert_double_eq_tol(length, 1.6 + 0.3 * pi, 1e-15);
}
END_TEST

START_TEST(length_is_spans_and_wraps)
{
  for (double centre = 0.36; centre < 4.0; centre *= 1.3) {
    double smaller;
    double larger;
    double span;
    double length;
    ck_assert_int_eq(freeair_pulley_open_wrap(0.5, 0.2, centre, &smaller, &larger), FREEAIR_OK);
    ck_assert_int_eq(freeair_pulley_span(0.2, 0.5, centre, &span), FREEAIR_OK);
    ck_assert_int_eq(freeair_pulley_open_length(0.2, 0.5, centre, &length), FREEAIR_OK);
    ck_assert_double_eq_tol(length, 2.0 * span + 0.1 * smaller + 0.25 * larger, 1e-14);
    ck_assert_double_eq_tol(smaller + larger, 2.0 * pi, 1e-14);
    double wrap;
    ck_assert_int_eq(freeair_pulley_crossed_wrap(0.2, 0.5, centre, &wrap), FREEAIR_OK);
    ck_assert_int_eq(freeair_pulley_crossed_length(0.2, 0.5, centre, &length), FREEAIR_OK);
    ck_assert_double_eq_tol(length, 2.0 * sqrt((centre - 0.35) * (centre + 0.35)) + 0.35 * wrap, 1e-14);
    ck_assert_double_gt(wrap, larger);
  }
}
END_TEST

START_TEST(the_approximate_length_is_a_little_less)
{
  double exact;
  ck_assert_int_eq(freeair_pulley_open_length(0.2, 0.5, 0.9, &exact), FREEAIR_OK);
  double rule = 1.8 + 0.5 * pi * 0.7 + 0.09 / 3.6;
  ck_assert_double_gt(exact, rule);
  ck_assert_double_lt(exact - rule, 1e-3 * exact);
}
END_TEST

START_TEST(the_driver_that_is_asked_for_gives_the_speed)
{
  for (double slip = 0.0; slip <= 0.9; slip += 0.1) {
    double driver;
    double speed;
    ck_assert_int_eq(freeair_pulley_driver_diameter(29.1, 14.2, 0.45, slip, &driver), FREEAIR_OK);
    ck_assert_int_eq(freeair_pulley_driven_speed(29.1, driver, 0.45, slip, &speed), FREEAIR_OK);
    ck_assert_double_eq_tol(speed, 14.2, 1e-13);
  }
}
END_TEST

START_TEST(both_pulleys_move_the_belt_alike)
{
  double speed;
  double one;
  double other;
  ck_assert_int_eq(freeair_pulley_driven_speed(29.1, 0.12, 0.45, 0.0, &speed), FREEAIR_OK);
  ck_assert_int_eq(freeair_pulley_belt_speed(0.12, 29.1, &one), FREEAIR_OK);
  ck_assert_int_eq(freeair_pulley_belt_speed(0.45, speed, &other), FREEAIR_OK);
  ck_assert_double_eq_tol(one, other, 1e-13);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("pulley");
  tcase_add_test(tc, centre_and_length_are_inverses);
  tcase_add_test(tc, the_inverse_always_arrives_even_where_the_pulleys_touch);
  tcase_add_test(tc, equal_pulleys_wrap_half_and_span_the_centre);
  tcase_add_test(tc, length_is_spans_and_wraps);
  tcase_add_test(tc, the_approximate_length_is_a_little_less);
  tcase_add_test(tc, the_driver_that_is_asked_for_gives_the_speed);
  tcase_add_test(tc, both_pulleys_move_the_belt_alike);
  return run_case("pulley", tc);
}
