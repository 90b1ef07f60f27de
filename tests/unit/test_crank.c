/* SPDX-License-Identifier: MIT */
#include <freeair/crank.h>
#include <freeair/cylinder.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static const double pi = 3.14159265358979323846;
static const double stroke = 0.09;
static const double rod = 0.17;

static double position(double angle)
{
  double x;
  ck_assert_int_eq(freeair_crank_position(stroke, rod, angle, &x), FREEAIR_OK);
  return x;
}

static double velocity(double angle)
{
  double x;
  ck_assert_int_eq(freeair_crank_velocity(stroke, rod, 1.0 / (2.0 * pi), angle, &x), FREEAIR_OK);
  return x;
}

static double inertia(double angle)
{
  double x;
  ck_assert_int_eq(freeair_crank_inertia_load(1.0, stroke, rod, 1.0 / (2.0 * pi), angle, &x), FREEAIR_OK);
  return x;
}

START_TEST(dead_centres_and_symmetry)
{
  ck_assert_double_eq(position(0.0), 0.0);
  ck_assert_double_eq_tol(position(pi), stroke, 1e-17);
  double last = 0.0;
  for (double a = 0.01; a < pi; a += 0.01) {
    ck_assert_double_gt(position(a), last);
    last = position(a);
    ck_assert_double_eq(position(-a), position(a));
    ck_assert_double_eq_tol(position(2.0 * pi - a), position(a), 1e-16);
    ck_assert_double_eq_tol(velocity(-a), -velocity(a), 1e-16);
  }
  /* the finite rod: at a quarter turn the piston is past half stroke */
  ck_assert_double_gt(position(0.5 * pi), 0.5 * stroke);
}
END_TEST

START_TEST(angle_and_position_are_inverse)
{
  for (double a = 1e-8; a <= pi; a += 0.013) {
    double back;
    ck_assert_int_eq(freeair_crank_angle_from_position(stroke, rod, fmin(position(a), stroke), &back), FREEAIR_OK);
    ck_assert_double_eq_tol(back, a, pi - a < 0.1 || a < 0.1 ? 1e-14 / fmin(a, pi - a + 1e-9) : 1e-14);
  }
}
END_TEST

/* Velocity and acceleration are the derivatives of the position, by central differences. */
START_TEST(derivatives)
{
  const double h = 1e-4;
  for (double a = -7.0; a < 7.0; a += 0.1) {
    double slope = (position(a - 2.0 * h) - 8.0 * position(a - h) + 8.0 * position(a + h) - position(a + 2.0 * h)) /
                   (12.0 * h);
    double curve = (velocity(a - 2.0 * h) - 8.0 * velocity(a - h) + 8.0 * velocity(a + h) - velocity(a + 2.0 * h)) /
                   (12.0 * h);
    ck_assert_double_eq_tol(velocity(a), slope, 1e-12);
    ck_assert_double_eq_tol(inertia(a), -curve, 1e-12);
  }
}
END_TEST

START_TEST(a_long_rod_is_a_sine)
{
  double x;
  for (double a = 0.0; a < 7.0; a += 0.3) {
    ck_assert_int_eq(freeair_crank_position(0.001, 100.0, a, &x), FREEAIR_OK);
    ck_assert_double_eq_tol(x, 0.0005 * (1.0 - cos(a)), 2e-9);
  }
}
END_TEST

START_TEST(mean_piston_speed)
{
  double way = 0.0;
  double mean;
  const int steps = 20000;
  for (int i = 0; i < steps; i++) way += fabs(velocity(2.0 * pi * (i + 0.5) / steps)) * 2.0 * pi / steps;
  ck_assert_double_eq_tol(way, 2.0 * stroke, 1e-9);
  ck_assert_int_eq(freeair_cylinder_piston_speed(stroke, 15.0, &mean), FREEAIR_OK);
  ck_assert_double_eq_tol(mean, way * 15.0, 1e-7);
}
END_TEST

/* The torque of the ideal diagram, integrated over a revolution, is its work; inertia does none. */
START_TEST(torque_is_work)
{
  const double bore = 0.12;
  const double c = 0.06;
  const double p1 = 1e5;
  const double p2 = 8e5;
  const double n = 1.3;
  const int steps = 200000;
  double work = 0.0;
  double idle = 0.0;
  double mep;
  double swept;
  double clear;
  ck_assert_int_eq(freeair_cylinder_mean_effective_pressure(p1, p2, c, n, n, &mep), FREEAIR_OK);
  ck_assert_int_eq(freeair_cylinder_swept_volume(bore, stroke, &swept), FREEAIR_OK);
  ck_assert_int_eq(freeair_crank_volume(bore, stroke, c, rod, 0.0, &clear), FREEAIR_OK);
  ck_assert_double_eq_tol(clear, c * swept, 1e-18);
  for (int i = 0; i < steps; i++) {
    double a = 2.0 * pi * (i + 0.5) / steps;
    double v;
    double load;
    double torque;
    ck_assert_int_eq(freeair_crank_volume(bore, stroke, c, rod, a, &v), FREEAIR_OK);
    double p = a < pi ? fmax(p1, p2 * pow(clear / v, n)) : fmin(p2, p1 * pow((swept + clear) / v, n));
    ck_assert_int_eq(freeair_crank_gas_load(bore, 0.0, p, 1e5, 1e5, &load), FREEAIR_OK);
    ck_assert_int_eq(freeair_crank_torque(load, stroke, rod, a, &torque), FREEAIR_OK);
    work += torque * 2.0 * pi / steps;
    ck_assert_int_eq(freeair_crank_torque(inertia(a), stroke, rod, a, &torque), FREEAIR_OK);
    idle += torque * 2.0 * pi / steps;
  }
  ck_assert_double_eq_tol(work, mep * swept, 1e-7 * mep * swept);
  ck_assert_double_eq_tol(idle, 0.0, 1e-12);
}
END_TEST

START_TEST(double_acting_loads)
{
  double out;
  double in;
  /* equal pressures all round: nothing; a thick rod takes its part of the crank side */
  ck_assert_int_eq(freeair_crank_gas_load(0.3, 0.06, 1e5, 1e5, 1e5, &out), FREEAIR_OK);
  ck_assert_double_eq(out, 0.0);
  ck_assert_int_eq(freeair_crank_gas_load(0.3, 0.06, 9e5, 1e5, 1e5, &out), FREEAIR_OK);
  ck_assert_int_eq(freeair_crank_gas_load(0.3, 0.06, 1e5, 9e5, 1e5, &in), FREEAIR_OK);
  ck_assert_double_gt(out, 0.0);
  ck_assert_double_lt(in, 0.0);
  ck_assert_double_eq_tol(in / out, -(1.0 - 0.04), 1e-14);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("crank");
  tcase_add_test(tc, dead_centres_and_symmetry);
  tcase_add_test(tc, angle_and_position_are_inverse);
  tcase_add_test(tc, derivatives);
  tcase_add_test(tc, a_long_rod_is_a_sine);
  tcase_add_test(tc, mean_piston_speed);
  tcase_add_test(tc, torque_is_work);
  tcase_add_test(tc, double_acting_loads);
  return run_case("crank", tc);
}
