/* SPDX-License-Identifier: MIT */
#include <freeair/coverage.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double factor(double probability, double nu)
{
  double k;
  ck_assert_int_eq(freeair_coverage_factor(probability, nu, &k), FREEAIR_OK);
  return k;
}

static double probability(double k, double nu)
{
  double p;
  ck_assert_int_eq(freeair_coverage_probability(k, nu, &p), FREEAIR_OK);
  ck_assert(p >= 0.0 && p <= 1.0);
  return p;
}

static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

START_TEST(factor_and_probability_are_inverse)
{
  for (int i = 0; i < 60; i++) {
    double nu = spread(i, 60, 1.0, 1e9);
    for (int j = 0; j < 60; j++) {
      double p = spread(j, 60, 1e-8, 0.999999);
      ck_assert_double_le(fabs(probability(factor(p, nu), nu) / p - 1.0), 1e-14);
    }
  }
}
END_TEST

/* The expansion for many degrees of freedom joins the continued fraction for fewer. */
START_TEST(many_degrees_of_freedom_join_fewer)
{
  for (int j = 0; j < 200; j++) {
    double k = spread(j, 200, 1e-6, 9.0);
    double below = probability(k, 1000.0 * (1.0 - 1e-13));
    double above = probability(k, 1000.0 * (1.0 + 1e-13));
    ck_assert_double_le(fabs(above / below - 1.0), 1e-14);
  }
}
END_TEST

START_TEST(more_degrees_of_freedom_narrow_the_interval)
{
  for (int j = 0; j < 20; j++) {
    double p = spread(j, 20, 0.01, 0.9999);
    double last = INFINITY;
    for (int i = 0; i < 100; i++) {
      double k = factor(p, spread(i, 100, 1.0, 1e7));
      ck_assert_double_lt(k, last);
      last = k;
    }
    ck_assert_double_lt(factor(p, INFINITY), last);
    ck_assert_double_le(fabs(factor(p, 1e12) / factor(p, INFINITY) - 1.0), 1e-11);
  }
}
END_TEST

/* Closed forms of the distribution for one, two and four degrees of freedom. */
START_TEST(closed_forms)
{
  for (int j = 0; j < 100; j++) {
    double p = spread(j, 100, 1e-6, 0.99999);
    ck_assert_double_le(fabs(factor(p, 1.0) / tan(1.5707963267948966 * p) - 1.0), 1e-10);
    ck_assert_double_le(fabs(factor(p, 2.0) / (p * sqrt(2.0 / (1.0 - p * p))) - 1.0), 1e-10);
    double k = spread(j, 100, 1e-3, 100.0);
    double s = k / sqrt(4.0 + k * k);
    ck_assert_double_le(fabs(probability(k, 4.0) / (0.5 * s * (3.0 - s * s)) - 1.0), 1e-13);
  }
}
END_TEST

START_TEST(factors_at_the_ends_of_their_range)
{
  ck_assert(isfinite(factor(1.0 - 0x1p-53, 1.0)));
  ck_assert(isfinite(factor(1.0 - 0x1p-53, INFINITY)));
  ck_assert(factor(5e-324, 3.0) >= 0.0);
  ck_assert(factor(1e-300, INFINITY) > 0.0);
  ck_assert_double_eq(probability(1e16, INFINITY), 1.0);
  ck_assert_double_eq(probability(0.0, 1.0), 0.0);
  ck_assert(probability(1e16, 1.0) < 1.0 || probability(1e16, 1.0) == 1.0);
}
END_TEST

/* A shift of all readings shifts the mean, a stretch stretches mean and scatter. */
START_TEST(mean_shifts_and_stretches)
{
  double x[25];
  double y[25];
  for (int i = 0; i < 25; i++) {
    x[i] = ldexp(floor(1000.0 * sin(3.0 * i)), -10);
    y[i] = 8.0 * x[i] + 1024.0;
  }
  double mx, sx, ux, nx, my, sy, uy, ny;
  ck_assert_int_eq(freeair_coverage_mean(x, 25, &mx, &sx, &ux, &nx), FREEAIR_OK);
  ck_assert_int_eq(freeair_coverage_mean(y, 25, &my, &sy, &uy, &ny), FREEAIR_OK);
  ck_assert_double_le(fabs(my - (8.0 * mx + 1024.0)), 1e-12);
  ck_assert_double_le(fabs(sy / (8.0 * sx) - 1.0), 1e-12);
  ck_assert_double_le(fabs(uy / (8.0 * ux) - 1.0), 1e-12);
  ck_assert_double_le(fabs(ux * 5.0 / sx - 1.0), 1e-15);
  ck_assert_double_eq(nx, 24.0);
  ck_assert_double_eq(ny, 24.0);
  double r;
  ck_assert_int_eq(freeair_coverage_correlation(x, y, 25, &r), FREEAIR_OK);
  ck_assert_double_le(fabs(r - 1.0), 1e-15);
}
END_TEST

START_TEST(equal_readings_have_no_scatter)
{
  double x[] = {0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1};
  double mean, deviation, uncertainty, nu;
  ck_assert_int_eq(freeair_coverage_mean(x, 7, &mean, &deviation, &uncertainty, &nu), FREEAIR_OK);
  ck_assert_double_eq(mean, 0.1);
  ck_assert_double_eq(deviation, 0.0);
}
END_TEST

/* Never more than the sum of the degrees of freedom, never fewer than the least. */
START_TEST(effective_degrees_of_freedom_are_bounded)
{
  double freedom[] = {3.0, 8.0, 21.0};
  for (int i = 0; i < 200; i++) {
    double u[] = {fabs(sin(i + 0.1)), fabs(sin(2.0 * i + 0.2)), fabs(sin(3.0 * i + 0.3))};
    double nu;
    ck_assert_int_eq(freeair_coverage_degrees_of_freedom(NAN, u, freedom, 3, &nu), FREEAIR_OK);
    ck_assert(nu >= 3.0 * (1.0 - 1e-15) && nu <= 32.0 * (1.0 + 1e-15));
  }
  double equal[] = {1.0, 1.0, 1.0, 1.0};
  double same[] = {5.0, 5.0, 5.0, 5.0};
  double nu;
  ck_assert_int_eq(freeair_coverage_degrees_of_freedom(NAN, equal, same, 4, &nu), FREEAIR_OK);
  ck_assert_double_le(fabs(nu - 20.0), 1e-14);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, factor_and_probability_are_inverse);
  tcase_add_test(all, many_degrees_of_freedom_join_fewer);
  tcase_add_test(all, more_degrees_of_freedom_narrow_the_interval);
  tcase_add_test(all, closed_forms);
  tcase_add_test(all, factors_at_the_ends_of_their_range);
  tcase_add_test(all, mean_shifts_and_stretches);
  tcase_add_test(all, equal_readings_have_no_scatter);
  tcase_add_test(all, effective_degrees_of_freedom_are_bounded);
  return run_case("coverage", all);
}
