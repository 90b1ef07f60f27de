/* SPDX-License-Identifier: MIT */
#include <freeair/compression.h>
#include <freeair/rotary.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double work(double p2, double u)
{
  double w;
  ck_assert_int_eq(freeair_rotary_work(287.05, 300.0, 1e5, p2, 1.4, u, &w), FREEAIR_OK);
  return w;
}

START_TEST(least_where_the_pressures_meet)
{
  for (double p2 = 1.05e5; p2 < 12e5; p2 *= 1.25) {
    double u;
    double isentropic;
    ck_assert_int_eq(freeair_rotary_volume_ratio(1e5, p2, 1.4, &u), FREEAIR_OK);
    ck_assert_int_eq(freeair_compression_work_isentropic(287.05, 300.0, 1e5, p2, 1.4, &isentropic), FREEAIR_OK);
    ck_assert_double_eq_tol(work(p2, u), isentropic, 1e-13 * isentropic);
    for (double other = 0.1; other <= 1.0; other += 0.09)
      ck_assert_double_ge(work(p2, other), isentropic * (1.0 - 1e-14));
  }
}
END_TEST

START_TEST(lobe_blower)
{
  for (double p2 = 1e5; p2 < 5e5; p2 += 0.3e5)
    ck_assert_double_eq_tol(work(p2, 1.0), 287.05 * 300.0 * (p2 - 1e5) / 1e5, 1e-9);
}
END_TEST

/* The series and the closed form meet. */
START_TEST(no_jump)
{
  double edge = exp(-0.2);
  for (double step = 1e-3; step > 1e-12; step /= 10.0)
    ck_assert_double_eq_tol(work(1e5, edge - step), work(1e5, edge + step), 2e5 * step + 1e-9);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("rotary");
  tcase_add_test(tc, least_where_the_pressures_meet);
  tcase_add_test(tc, lobe_blower);
  tcase_add_test(tc, no_jump);
  return run_case("rotary", tc);
}
