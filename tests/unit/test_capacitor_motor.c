/* SPDX-License-Identifier: MIT */
#include <freeair/capacitor_motor.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* An invented motor of some 4 kW at 230 V. */
static freeair_capacitor_motor_windings shop_motor(void)
{
  freeair_capacitor_motor_windings w = FREEAIR_CAPACITOR_MOTOR_WINDINGS_INIT;
  w.main_r_ohm = 0.45;
  w.main_x_ohm = 1.1;
  w.auxiliary_r_ohm = 1.9;
  w.auxiliary_x_ohm = 2.3;
  w.turns_ratio = 1.4;
  w.rotor_r_ohm = 0.62;
  w.rotor_x_ohm = 0.9;
  w.magnetising_x_ohm = 24.0;
  return w;
}

static freeair_capacitor_motor_performance run(const freeair_capacitor_motor_windings *w, double voltage_v,
                                               double capacitance_f, double slip)
{
  freeair_capacitor_motor_performance p = FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_INIT;
  ck_assert_int_eq(freeair_capacitor_motor_run(w, voltage_v, 60.0, 4, capacitance_f, slip, &p), FREEAIR_OK);
  return p;
}

START_TEST(both_initialisers_agree)
{
  freeair_capacitor_motor_windings a = FREEAIR_CAPACITOR_MOTOR_WINDINGS_INIT;
  freeair_capacitor_motor_windings b;
  ck_assert_uint_eq(sizeof a, FREEAIR_CAPACITOR_MOTOR_WINDINGS_BASELINE);
  ck_assert_int_eq(freeair_capacitor_motor_windings_init(&b, sizeof b), FREEAIR_OK);
  ck_assert_uint_eq(a.struct_size, b.struct_size);
  ck_assert(isnan(b.main_r_ohm) && isnan(b.magnetising_x_ohm));
  freeair_capacitor_motor_performance p;
  ck_assert_uint_eq(sizeof p, FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_BASELINE);
  ck_assert_int_eq(freeair_capacitor_motor_performance_init(&p, sizeof p), FREEAIR_OK);
  ck_assert(isnan(p.torque_nm) && isnan(p.capacitor_v));
  ck_assert_int_eq(freeair_capacitor_motor_performance_init(&p, 8), FREEAIR_ERR_VERSION);
}
END_TEST

START_TEST(without_a_capacitor_it_runs_but_does_not_start)
{
  freeair_capacitor_motor_windings w = shop_motor();
  ck_assert_double_eq_tol(run(&w, 230.0, 0.0, 1.0).torque_nm, 0.0, 1e-12);
  ck_assert_double_gt(run(&w, 230.0, 0.0, 0.03).torque_nm, 1.0);
  ck_assert_double_eq(run(&w, 230.0, 0.0, 0.03).auxiliary_a, 0.0);
}
END_TEST

START_TEST(a_vanishing_capacitor_is_an_open_winding)
{
  freeair_capacitor_motor_windings w = shop_motor();
  freeair_capacitor_motor_performance open = run(&w, 230.0, 0.0, 0.04);
  freeair_capacitor_motor_performance tiny = run(&w, 230.0, 1e-15, 0.04);
  ck_assert_double_eq_tol(tiny.torque_nm / open.torque_nm, 1.0, 1e-9);
  ck_assert_double_eq_tol(tiny.capacitor_v / open.capacitor_v, 1.0, 1e-9);
}
END_TEST

START_TEST(power_in_is_power_out_and_losses)
{
  freeair_capacitor_motor_windings w = shop_motor();
  for (double s = 0.01; s <= 1.0; s += 0.03)
    for (double c = 0.0; c < 2e-4; c += 4e-5) {
      freeair_capacitor_motor_performance p = run(&w, 230.0, c, s);
      double stator = p.main_a * p.main_a * w.main_r_ohm + p.auxiliary_a * p.auxiliary_a * w.auxiliary_r_ohm;
      /* what is left is rotor loss: positive, and at least slip times the air-gap power */
      double rotor = p.input_w - stator - p.mechanical_w;
      double gap = p.torque_nm * 2.0 * 3.14159265358979323846 * 30.0;
      ck_assert_double_gt(rotor, 0.0);
      ck_assert_double_ge(rotor, s * gap - 1e-9 * p.input_w);
      ck_assert_double_eq_tol(p.mechanical_w, gap * (1.0 - s), 1e-9 * p.input_w);
      ck_assert_double_eq_tol(p.power_factor * p.line_a * 230.0, p.input_w, 1e-9 * p.input_w);
      double across = 6.28318530717958648 * 60.0 * c;
      ck_assert_double_eq_tol(p.capacitor_v * across, p.auxiliary_a, 1e-9 * p.line_a);
    }
}
END_TEST

START_TEST(torque_goes_with_the_square_of_the_voltage)
{
  freeair_capacitor_motor_windings w = shop_motor();
  for (double s = 0.02; s <= 1.0; s += 0.07)
    ck_assert_double_eq_tol(run(&w, 207.0, 5e-5, s).torque_nm / run(&w, 230.0, 5e-5, s).torque_nm, 0.81, 1e-12);
}
END_TEST

START_TEST(the_locked_rotor_formula_is_the_model_at_standstill)
{
  freeair_capacitor_motor_windings w = shop_motor();
  /* impedances of the windings with the rotor locked: own plus rotor beside magnetising branch */
  double r = w.rotor_r_ohm;
  double x = w.rotor_x_ohm;
  double m = w.magnetising_x_ohm;
  double d = r * r + (x + m) * (x + m);
  double rotor_r = m * m * r / d;
  double rotor_x = m * (r * r + x * (x + m)) / d;
  double a2 = w.turns_ratio * w.turns_ratio;
  double ratio;
  ck_assert_int_eq(freeair_capacitor_motor_starting_torque_ratio(
                       w.main_r_ohm + rotor_r, w.main_x_ohm + rotor_x, w.auxiliary_r_ohm + a2 * rotor_r,
                       w.auxiliary_x_ohm + a2 * rotor_x, 60.0, 180e-6, 250e-6, &ratio),
                   FREEAIR_OK);
  ck_assert_double_eq_tol(ratio, run(&w, 230.0, 180e-6, 1.0).torque_nm / run(&w, 230.0, 250e-6, 1.0).torque_nm, 1e-12);
}
END_TEST

START_TEST(quadrature_sets_the_currents_at_right_angles)
{
  double c;
  double x;
  ck_assert_int_eq(freeair_capacitor_motor_quadrature(1.2, 2.7, 3.3, 4.9, 50.0, &c, &x), FREEAIR_OK);
  ck_assert_double_eq_tol(1.2 * 3.3 + 2.7 * (4.9 - x), 0.0, 1e-14);
}
END_TEST

START_TEST(slip_is_the_inverse_of_torque_and_grows_as_things_get_worse)
{
  freeair_capacitor_motor_windings w = shop_motor();
  double last = 0.0;
  for (double torque = 0.0; torque < 25.0; torque += 1.0) {
    double slip;
    ck_assert_int_eq(freeair_capacitor_motor_slip(&w, 230.0, 60.0, 4, 5e-5, torque, &slip), FREEAIR_OK);
    ck_assert_double_gt(slip, last);
    ck_assert_double_eq_tol(run(&w, 230.0, 5e-5, slip).torque_nm, torque, 1e-10);
    double weak;
    double low;
    ck_assert_int_eq(freeair_capacitor_motor_slip(&w, 230.0, 60.0, 4, 3e-5, torque, &weak), FREEAIR_OK);
    ck_assert_int_eq(freeair_capacitor_motor_slip(&w, 200.0, 60.0, 4, 3e-5, torque, &low), FREEAIR_OK);
    if (torque > 0.0) {
      ck_assert_double_gt(weak, slip);
      ck_assert_double_gt(low, weak);
    }
    last = slip;
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("capacitor_motor");
  tcase_add_test(tc, both_initialisers_agree);
  tcase_add_test(tc, without_a_capacitor_it_runs_but_does_not_start);
  tcase_add_test(tc, a_vanishing_capacitor_is_an_open_winding);
  tcase_add_test(tc, power_in_is_power_out_and_losses);
  tcase_add_test(tc, torque_goes_with_the_square_of_the_voltage);
  tcase_add_test(tc, the_locked_rotor_formula_is_the_model_at_standstill);
  tcase_add_test(tc, quadrature_sets_the_currents_at_right_angles);
  tcase_add_test(tc, slip_is_the_inverse_of_torque_and_grows_as_things_get_worse);
  return run_case("capacitor_motor", tc);
}
