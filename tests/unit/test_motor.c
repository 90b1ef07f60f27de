/* SPDX-License-Identifier: MIT */
#include <freeair/motor.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

START_TEST(slip_and_speed_are_inverses)
{
  for (int32_t poles = 2; poles <= 100; poles += 2)
    for (double slip = -0.2; slip < 1.0; slip += 0.013) {
      double speed;
      double back;
      ck_assert_int_eq(freeair_motor_speed_from_slip(50.0, poles, slip, &speed), FREEAIR_OK);
      ck_assert_int_eq(freeair_motor_slip(50.0, poles, speed, &back), FREEAIR_OK);
      ck_assert_double_eq_tol(back, slip, 3e-16);
    }
}
END_TEST

START_TEST(poles_are_found_at_any_rated_slip)
{
  for (int32_t poles = 2; poles <= 12; poles += 2)
    for (double slip = 0.0; slip <= 0.14; slip += 0.01) {
      double speed;
      int32_t found;
      ck_assert_int_eq(freeair_motor_speed_from_slip(60.0, poles, slip, &speed), FREEAIR_OK);
      int32_t status = freeair_motor_poles_from_speed(60.0, speed, &found);
      /* many poles lie close together: from ten on, 14 percent below one is below the next */
      if (slip < 2.0 / (poles + 2.0) - 1e-6) {
        ck_assert_int_eq(status, FREEAIR_OK);
        ck_assert_int_eq(found, poles);
      }
    }
}
END_TEST

START_TEST(power_and_torque_are_inverses)
{
  for (double n = 0.5; n < 100.0; n *= 1.7) {
    double torque;
    double power;
    ck_assert_int_eq(freeair_motor_torque_from_power(5500.0, n, &torque), FREEAIR_OK);
    ck_assert_int_eq(freeair_motor_power_from_torque(torque, n, &power), FREEAIR_OK);
    ck_assert_double_eq_tol(power, 5500.0, 1e-11);
  }
}
END_TEST

START_TEST(shaft_power_and_line_current_are_inverses)
{
  for (int32_t phases = 1; phases <= 3; phases += 2) {
    double current;
    double shaft;
    double input;
    ck_assert_int_eq(freeair_motor_line_current(3700.0, 230.0, 0.83, 0.86, phases, &current), FREEAIR_OK);
    ck_assert_int_eq(freeair_motor_shaft_power(230.0, current, 0.83, 0.86, phases, &shaft, &input), FREEAIR_OK);
    ck_assert_double_eq_tol(shaft, 3700.0, 1e-11);
    ck_assert_double_eq_tol(shaft / input, 0.86, 1e-14);
  }
}
END_TEST

START_TEST(torque_is_greatest_at_breakdown_and_straight_at_small_slip)
{
  double greatest;
  ck_assert_int_eq(freeair_motor_torque_at_slip(100.0, 0.2, 0.2, &greatest), FREEAIR_OK);
  ck_assert_double_eq(greatest, 100.0);
  for (double s = 0.0; s <= 1.0; s += 0.01) {
    double torque;
    int32_t status = freeair_motor_torque_at_slip(100.0, 0.2, s, &torque);
    ck_assert_int_eq(status, s > 0.2 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK);
    ck_assert_double_le(torque, greatest);
  }
  double one;
  double two;
  ck_assert_int_eq(freeair_motor_torque_at_slip(100.0, 0.2, 0.0001, &one), FREEAIR_OK);
  ck_assert_int_eq(freeair_motor_torque_at_slip(100.0, 0.2, 0.0002, &two), FREEAIR_OK);
  ck_assert_double_eq_tol(two / one, 2.0, 1e-5);
}
END_TEST

START_TEST(slip_at_supply_agrees_with_the_torque_curve)
{
  /* the same torque at nine tenths of the voltage, breakdown torque with its square */
  double torque;
  double slip;
  double lower;
  ck_assert_int_eq(freeair_motor_torque_at_slip(300.0, 0.25, 0.004, &torque), FREEAIR_OK);
  ck_assert_int_eq(freeair_motor_slip_at_supply(0.004, 0.9, 1.0, 1.0, &slip), FREEAIR_OK);
  ck_assert_int_eq(freeair_motor_torque_at_slip(300.0 * 0.81, 0.25, slip, &lower), FREEAIR_OK);
  ck_assert_double_eq_tol(lower / torque, 1.0, 3e-4);
}
END_TEST

START_TEST(unchanged_supply_changes_nothing)
{
  double x;
  ck_assert_int_eq(freeair_motor_slip_at_supply(0.03, 1.0, 1.0, 1.0, &x), FREEAIR_OK);
  ck_assert_double_eq(x, 0.03);
  ck_assert_int_eq(freeair_motor_locked_rotor_torque(80.0, 1.0, 1.0, &x), FREEAIR_OK);
  ck_assert_double_eq(x, 80.0);
  ck_assert_int_eq(freeair_motor_locked_rotor_current(60.0, 1.0, 1.0, &x), FREEAIR_OK);
  ck_assert_double_eq(x, 60.0);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("motor");
  tcase_add_test(tc, slip_and_speed_are_inverses);
  tcase_add_test(tc, poles_are_found_at_any_rated_slip);
  tcase_add_test(tc, power_and_torque_are_inverses);
  tcase_add_test(tc, shaft_power_and_line_current_are_inverses);
  tcase_add_test(tc, torque_is_greatest_at_breakdown_and_straight_at_small_slip);
  tcase_add_test(tc, slip_at_supply_agrees_with_the_torque_curve);
  tcase_add_test(tc, unchanged_supply_changes_nothing);
  return run_case("motor", tc);
}
