/* SPDX-License-Identifier: MIT */
#include <freeair/impedance.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* The same load by its phase angle and by its power. */
START_TEST(two_ways_to_one_impedance)
{
  for (int i = 0; i <= 60; i++) {
    double phase = 1.5 * i / 60.0;
    double r, x, z, r_p, x_p, z_p, factor;
    ck_assert_int_eq(freeair_impedance_from_phase(230.0, 6.25, phase, &r, &x, &z), FREEAIR_OK);
    double power = 230.0 * 6.25 * cos(phase);
    ck_assert_int_eq(freeair_impedance_from_power(230.0, 6.25, power, &r_p, &x_p, &z_p, &factor), FREEAIR_OK);
    ck_assert_double_eq(z, z_p);
    ck_assert_double_le(fabs(r_p - r), 1e-13 * z);
    ck_assert_double_le(fabs(x_p - x), 1e-8 * z); /* near a power factor of 1 the power hardly tells the angle */
    ck_assert_double_le(fabs(factor - cos(phase)), 1e-15);
    ck_assert_double_le(fabs(hypot(r_p, x_p) - z), 1e-13 * z);
  }
}
END_TEST

START_TEST(sign_of_the_reactance)
{
  double r, x, z, r_c, x_c, z_c;
  ck_assert_int_eq(freeair_impedance_from_phase(10.0, 2.0, 0.7, &r, &x, &z), FREEAIR_OK);
  ck_assert_int_eq(freeair_impedance_from_phase(10.0, 2.0, -0.7, &r_c, &x_c, &z_c), FREEAIR_OK);
  ck_assert_double_eq(x, -x_c);
  ck_assert_double_eq(r, r_c);
  ck_assert(x > 0.0);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, two_ways_to_one_impedance);
  tcase_add_test(all, sign_of_the_reactance);
  return run_case("impedance", all);
}
