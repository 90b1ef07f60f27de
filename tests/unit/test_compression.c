/* SPDX-License-Identifier: MIT */
#include <freeair/compression.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <float.h>
#include <math.h>

static const double r = 287.05;

static double work(double t1, double p1, double p2, double n)
{
  double w;
  ck_assert_int_eq(freeair_compression_work_polytropic(r, t1, p1, p2, n, &w), FREEAIR_OK);
  return w;
}

static double temperature(double t1, double p1, double p2, double n)
{
  double t2;
  ck_assert_int_eq(freeair_compression_temperature(t1, p1, p2, n, &t2), FREEAIR_OK);
  return t2;
}

static void same(double a, double b, double relative)
{
  ck_assert_msg(fabs(a - b) <= relative * fmax(fabs(a), fabs(b)), "%.17g is not %.17g", a, b);
}

static const double ratios[] = {1.0 + 1e-12, 1.001, 1.5, 3.0, 9.0, 40.0, 400.0, 0.2};
static const double exponents[] = {0.7, 1.0, 1.0 + 1e-12, 1.05, 1.2, 1.3, 1.4, 1.67};
#define COUNT(a) (sizeof(a) / sizeof((a)[0]))

START_TEST(work_grows_with_exponent_and_pressure)
{
  for (double p2 = 1.1e5; p2 < 50e5; p2 *= 1.3)
    for (double n = 0.6; n < 2.0; n += 0.05) {
      ck_assert_double_lt(work(300.0, 1e5, p2, n), work(300.0, 1e5, p2, n + 0.05));
      ck_assert_double_lt(work(300.0, 1e5, p2, n), work(300.0, 1e5, p2 * 1.001, n));
    }
}
END_TEST

START_TEST(no_jump_at_the_isothermal)
{
  for (size_t i = 0; i < COUNT(ratios); i++) {
    double isothermal;
    ck_assert_int_eq(freeair_compression_work_isothermal(r, 300.0, 1e5, 1e5 * ratios[i], &isothermal), FREEAIR_OK);
    ck_assert_double_eq(work(300.0, 1e5, 1e5 * ratios[i], 1.0), isothermal);
    for (int e = 8; e <= 52; e++) {
      double step = ldexp(1.0, -e);
      /* the slope at n = 1 is L^2/2 for the head L */
      same(work(300.0, 1e5, 1e5 * ratios[i], 1.0 + step), isothermal, 6.0 * step + 1e-15);
      same(work(300.0, 1e5, 1e5 * ratios[i], 1.0 - step), isothermal, 6.0 * step + 1e-15);
    }
  }
}
END_TEST

/* A compression in two steps without cooling is the compression in one. */
START_TEST(steps_add_up)
{
  for (size_t i = 0; i < COUNT(ratios); i++)
    for (size_t k = 0; k < COUNT(exponents); k++) {
      double n = exponents[k];
      double p2 = 1e5 * ratios[i];
      double p3 = p2 * 1.7;
      double t2 = temperature(300.0, 1e5, p2, n);
      double first = work(300.0, 1e5, p2, n);
      double second = work(t2, p2, p3, n);
      ck_assert_double_eq_tol(first + second, work(300.0, 1e5, p3, n), 1e-13 * (fabs(first) + fabs(second)));
      same(temperature(t2, p2, p3, n), temperature(300.0, 1e5, p3, n), 1e-14);
      /* and back again returns the work */
      same(work(t2, p2, 1e5, n), -first, 1e-12);
    }
}
END_TEST

START_TEST(first_law)
{
  const double k = 1.4;
  for (size_t i = 0; i < COUNT(ratios); i++)
    for (size_t j = 0; j < COUNT(exponents); j++) {
      double n = exponents[j];
      double p2 = 1e5 * ratios[i];
      double q;
      ck_assert_int_eq(freeair_compression_heat_rejected(r, 300.0, 1e5, p2, n, k, &q), FREEAIR_OK);
      double rise = k / (k - 1.0) * r * (temperature(300.0, 1e5, p2, n) - 300.0);
      double w = work(300.0, 1e5, p2, n);
      /* the rise is a difference of temperatures near 300 K */
      ck_assert_double_eq_tol(w - q, rise, 1e-13 * (fabs(w) + fabs(q)) + 4.0 * DBL_EPSILON * 300.0 * 3.5 * r);
      if (n < k && ratios[i] > 1.0) ck_assert_double_gt(q, 0.0);
      if (n > k && ratios[i] > 1.0) ck_assert_double_lt(q, 0.0);
    }
}
END_TEST

START_TEST(isentropic_rejects_nothing_and_is_the_polytropic_of_k)
{
  double a;
  double q;
  ck_assert_int_eq(freeair_compression_work_isentropic(r, 300.0, 1e5, 8e5, 1.4, &a), FREEAIR_OK);
  ck_assert_double_eq(a, work(300.0, 1e5, 8e5, 1.4));
  ck_assert_int_eq(freeair_compression_heat_rejected(r, 300.0, 1e5, 8e5, 1.4, 1.4, &q), FREEAIR_OK);
  ck_assert_double_eq(q, 0.0);
}
END_TEST

START_TEST(exponents_come_back)
{
  for (size_t i = 1; i < COUNT(ratios); i++)
    for (size_t j = 0; j < COUNT(exponents); j++) {
      double n = exponents[j];
      double p2 = 1e5 * ratios[i];
      double t2 = temperature(300.0, 1e5, p2, n);
      double found;
      /* the last digit of t2 is worth this much in the exponent */
      double grain = 10.0 * DBL_EPSILON * n * (1.0 + n / fabs(log(ratios[i])));
      ck_assert_int_eq(freeair_compression_exponent_from_temperatures(1e5, 300.0, p2, t2, &found), FREEAIR_OK);
      ck_assert_double_eq_tol(found, n, grain);
      double v2 = 1e-3 * pow(ratios[i], -1.0 / n);
      ck_assert_int_eq(freeair_compression_exponent_from_volumes(1e5, 1e-3, p2, v2, &found), FREEAIR_OK);
      ck_assert_double_eq_tol(found, n, grain);
      if (fabs(n - 1.0) < 0.01) continue;
      double p;
      ck_assert_int_eq(freeair_compression_pressure_from_temperature(300.0, t2, 1e5, n, &p), FREEAIR_OK);
      same(p, p2, 1e-13 * (1.0 + n / fabs(n - 1.0)));
    }
}
END_TEST

START_TEST(free_air_is_mass_at_another_state)
{
  double per_volume;
  double power[2];
  const double density = 101325.0 / (r * 288.15);
  ck_assert_int_eq(freeair_compression_free_air_work(101325.0, 288.15, 305.0, 95e3, 8e5, 1.3, &per_volume), FREEAIR_OK);
  same(per_volume, work(305.0, 95e3, 8e5, 1.3) * density, 1e-14);
  ck_assert_int_eq(freeair_compression_power_from_free_air(101325.0, 288.15, 305.0, 95e3, 8e5, 1.3, 0.02, 0.8,
                                                           &power[0]),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_compression_power_from_mass_flow(r, 305.0, 95e3, 8e5, 1.3, 0.02 * density, 0.8, &power[1]),
                   FREEAIR_OK);
  same(power[0], power[1], 1e-14);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("compression");
  tcase_add_test(tc, work_grows_with_exponent_and_pressure);
  tcase_add_test(tc, no_jump_at_the_isothermal);
  tcase_add_test(tc, steps_add_up);
  tcase_add_test(tc, first_law);
  tcase_add_test(tc, isentropic_rejects_nothing_and_is_the_polytropic_of_k);
  tcase_add_test(tc, exponents_come_back);
  tcase_add_test(tc, free_air_is_mass_at_another_state);
  return run_case("compression", tc);
}
