/* SPDX-License-Identifier: MIT */
#include <freeair/compression.h>
#include <freeair/cylinder.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static void same(double a, double b, double relative)
{
  ck_assert_msg(fabs(a - b) <= relative * fmax(fabs(a), fabs(b)), "%.17g is not %.17g", a, b);
}

static double efficiency(double p2, double c, double n)
{
  double e;
  ck_assert_int_eq(freeair_cylinder_volumetric_efficiency(1e5, p2, c, n, &e), FREEAIR_OK);
  return e;
}

START_TEST(falls_with_pressure_and_clearance)
{
  for (double c = 0.02; c < 0.15; c += 0.02)
    for (double p2 = 1e5; p2 < 10e5; p2 += 0.5e5) {
      ck_assert_double_gt(efficiency(p2, c, 1.3), efficiency(p2 + 0.5e5, c, 1.3));
      if (p2 > 1e5) ck_assert_double_gt(efficiency(p2, c, 1.3), efficiency(p2, c + 0.02, 1.3));
      if (p2 > 1e5) ck_assert_double_lt(efficiency(p2, c, 1.2), efficiency(p2, c, 1.4));
    }
  ck_assert_double_eq(efficiency(1e5, 0.1, 1.3), 1.0);
  ck_assert_double_eq(efficiency(9e5, 0.0, 1.3), 1.0);
}
END_TEST

START_TEST(zero_delivery_and_clearance_are_inverse)
{
  for (double c = 0.01; c < 0.5; c *= 1.4)
    for (double n = 1.0; n <= 1.4; n += 0.1) {
      double p0;
      double back;
      double e;
      ck_assert_int_eq(freeair_cylinder_zero_delivery_pressure(1e5, c, n, &p0), FREEAIR_OK);
      ck_assert_int_eq(freeair_cylinder_clearance_from_zero_delivery(1e5, p0, n, &back), FREEAIR_OK);
      same(back, c, 1e-13);
      ck_assert_int_ge(freeair_cylinder_volumetric_efficiency(1e5, p0, c, n, &e), 0);
      ck_assert_double_eq_tol(e, 0.0, 1e-13);
      ck_assert_int_eq(freeair_cylinder_volumetric_efficiency(1e5, p0 * 1.001, c, n, &e), FREEAIR_WARN_LIMIT);
      ck_assert_double_eq(e, 0.0);
      e = efficiency(0.5 * (1e5 + p0), c, n);
      ck_assert_int_eq(freeair_cylinder_clearance_from_volumetric_efficiency(1e5, 0.5 * (1e5 + p0), n, e, &back), 0);
      same(back, c, 1e-12);
    }
}
END_TEST

static double mep(double p2, double c, double nc, double ne)
{
  double p;
  ck_assert_int_eq(freeair_cylinder_mean_effective_pressure(1e5, p2, c, nc, ne, &p), FREEAIR_OK);
  return p;
}

/* With one exponent the work goes into the air delivered alone: clearance costs capacity, not work. */
START_TEST(one_exponent)
{
  for (double c = 0.0; c < 0.1; c += 0.01)
    for (double n = 1.0; n <= 1.4; n += 0.1)
      for (double p2 = 1.001e5; p2 < 10e5; p2 *= 1.5) {
        double w;
        ck_assert_int_eq(freeair_compression_free_air_work(1e5, 300.0, 300.0, 1e5, p2, n, &w), FREEAIR_OK);
        same(mep(p2, c, n, n), w * efficiency(p2, c, n), 1e-13);
      }
}
END_TEST

/* A lower exponent of re-expansion returns less work and leaves less room. */
START_TEST(two_exponents)
{
  ck_assert_double_gt(mep(8e5, 0.05, 1.35, 1.2), mep(8e5, 0.05, 1.3, 1.2));
  ck_assert_double_eq(mep(8e5, 0.0, 1.3, 1.1), mep(8e5, 0.0, 1.3, 1.3));
  double before = mep(8e5, 0.05, 1.3, 1.3);
  for (int e = 4; e < 40; e++)
    same(mep(8e5, 0.05, 1.3, 1.3 + ldexp(1.0, -e)), before, 0.5 * ldexp(1.0, -e) + 1e-14);
}
END_TEST

START_TEST(geometry)
{
  double one;
  double both;
  double v;
  double c;
  double speed;
  ck_assert_int_eq(freeair_cylinder_swept_volume(0.2, 0.3, &one), FREEAIR_OK);
  ck_assert_int_eq(freeair_cylinder_swept_volume_double_acting(0.2, 0.3, 0.0, &both), FREEAIR_OK);
  same(both, 2.0 * one, 1e-15);
  ck_assert_int_eq(freeair_cylinder_swept_volume_double_acting(0.2, 0.3, 0.05, &both), FREEAIR_OK);
  ck_assert_int_eq(freeair_cylinder_swept_volume(0.05, 0.3, &v), FREEAIR_OK);
  same(both, 2.0 * one - v, 1e-15);
  ck_assert_int_eq(freeair_cylinder_clearance_volume(one, 0.06, &v), FREEAIR_OK);
  ck_assert_int_eq(freeair_cylinder_clearance_from_volume(one, v, &c), FREEAIR_OK);
  same(c, 0.06, 1e-15);
  ck_assert_int_eq(freeair_cylinder_piston_speed(0.3, 10.0, &speed), FREEAIR_OK);
  same(speed, 6.0, 1e-15);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("cylinder");
  tcase_add_test(tc, falls_with_pressure_and_clearance);
  tcase_add_test(tc, zero_delivery_and_clearance_are_inverse);
  tcase_add_test(tc, one_exponent);
  tcase_add_test(tc, two_exponents);
  tcase_add_test(tc, geometry);
  return run_case("cylinder", tc);
}
