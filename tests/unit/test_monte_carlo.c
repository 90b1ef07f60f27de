/* SPDX-License-Identifier: MIT */
#include <freeair/freeair.h>

#include "../suite.h"

#include <check.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { TRIALS = 200000 };

static const int32_t normal = FREEAIR_COVERAGE_NORMAL;
static const int32_t rectangular = FREEAIR_COVERAGE_RECTANGULAR;
static const int32_t triangular = FREEAIR_COVERAGE_TRIANGULAR;
static const int32_t arcsine = FREEAIR_COVERAGE_ARCSINE;
static const int32_t student = FREEAIR_COVERAGE_STUDENT;

static double *memory(size_t n)
{
  double *m = malloc(n * sizeof *m);
  ck_assert_ptr_nonnull(m);
  return m;
}

static double *drawn(size_t n_in, const double *x, const double *u, const int32_t *kind, const double *nu,
                     const double *r, uint32_t seed)
{
  double *sample = memory(n_in * TRIALS);
  ck_assert_int_eq(freeair_monte_carlo_draw(x, u, kind, nu, n_in, r, r != NULL ? n_in * n_in : 0, seed, 0, sample,
                                            n_in * TRIALS),
                   FREEAIR_OK);
  return sample;
}

typedef struct summary {
  double mean, u, mean_error, u_error, skewness;
} summary;

static summary summary_of(const double *y, size_t n)
{
  summary s;
  ck_assert_int_eq(freeair_monte_carlo_summary(y, n, &s.mean, &s.u, &s.mean_error, &s.u_error, &s.skewness),
                   FREEAIR_OK);
  return s;
}

static void interval_is(double *y, double p, int32_t kind, double low, double high)
{
  double l, h, le, he;
  double *ordered = memory(TRIALS);
  ck_assert_int_eq(freeair_monte_carlo_interval(y, TRIALS, p, kind, ordered, &l, &h, &le, &he), FREEAIR_OK);
  /* the ends of the shortest interval wander more than an order statistic does */
  const double wander = kind == FREEAIR_MONTE_CARLO_SHORTEST ? 20.0 : 4.0;
  ck_assert_msg(fabs(l - low) < wander * le + 1e-12 * fabs(low), "low %g, wanted %g +- %g", l, low, le);
  ck_assert_msg(fabs(h - high) < wander * he, "high %g, wanted %g +- %g", h, high, he);
  for (size_t i = 1; i < TRIALS; i++) ck_assert(ordered[i] >= ordered[i - 1]);
  free(ordered);
}

/* Mean, standard deviation and fourth moment of each distribution. */
START_TEST(moments)
{
  const double x = 5.0, u = 0.5, nu = 9.0;
  const struct {
    int32_t kind;
    double u, kurtosis;
  } known[] = {{normal, 0.5, 3.0},
               {rectangular, 0.5, 1.8},
               {triangular, 0.5, 2.4},
               {arcsine, 0.5, 1.5},
               {student, 0.5 * 1.1338934190276817, 3.0 + 6.0 / 5.0}};
  for (size_t k = 0; k < sizeof known / sizeof known[0]; k++) {
    double *y = drawn(1, &x, &u, &known[k].kind, &nu, NULL, 42);
    summary s = summary_of(y, TRIALS);
    ck_assert_double_lt(fabs(s.mean - 5.0), 4.0 * s.mean_error);
    ck_assert_double_lt(fabs(s.u - known[k].u), 4.0 * s.u_error);
    ck_assert_double_lt(fabs(s.skewness), 0.05);
    double expected = s.u * sqrt((known[k].kurtosis - 1.0) / (4.0 * TRIALS));
    ck_assert_double_lt(fabs(s.u_error / expected - 1.0), 0.05);
    free(y);
  }
}
END_TEST

static int ascending(const void *a, const void *b)
{
  const double *p = a, *q = b;
  return (*p > *q) - (*p < *q);
}

/* Largest distance of the distribution drawn from the one meant (Kolmogorov and Smirnov): 1.95/sqrt(n) would be
 * exceeded once in a thousand. */
START_TEST(distributions)
{
  const double x = 0.0, u = 1.0, nu = 3.0;
  const int32_t kinds[] = {normal, rectangular, triangular, arcsine, student};
  for (size_t k = 0; k < 5; k++) {
    double *y = drawn(1, &x, &u, &kinds[k], &nu, NULL, 7);
    qsort(y, TRIALS, sizeof *y, ascending);
    double distance = 0.0;
    for (size_t i = 0; i < TRIALS; i++) {
      double p, t = y[i];
      if (kinds[k] == normal)
        p = 0.5 * erfc(-t * 0.70710678118654752440);
      else if (kinds[k] == rectangular)
        p = 0.5 + 0.5 * t / sqrt(3.0);
      else if (kinds[k] == triangular)
        p = t < 0.0 ? 0.5 * pow(1.0 + t / sqrt(6.0), 2.0) : 1.0 - 0.5 * pow(1.0 - t / sqrt(6.0), 2.0);
      else if (kinds[k] == arcsine)
        p = 0.5 + asin(fmax(-1.0, fmin(1.0, t / sqrt(2.0)))) / 3.14159265358979323846;
      else
        p = 0.5 + (atan(t / sqrt(3.0)) + t * sqrt(3.0) / (3.0 + t * t)) / 3.14159265358979323846;
      distance = fmax(distance, fabs(p - ((double)i + 0.5) / TRIALS));
    }
    ck_assert_double_lt(distance, 1.95 / sqrt(TRIALS));
    free(y);
  }
}
END_TEST

/* Neighbouring trials, inputs and seeds know nothing of one another. */
START_TEST(independence)
{
  const double x[] = {0.0, 0.0};
  const double u[] = {1.0, 1.0};
  const double nu[] = {1.0, 1.0};
  const int32_t kind[] = {normal, normal};
  double *a = drawn(2, x, u, kind, nu, NULL, 1);
  double *b = drawn(2, x, u, kind, nu, NULL, 2);
  double inputs = 0.0, trials = 0.0, seeds = 0.0;
  for (size_t t = 0; t + 1 < TRIALS; t++) {
    inputs += a[2 * t] * a[2 * t + 1] / TRIALS;
    trials += a[2 * t] * a[2 * t + 2] / TRIALS;
    seeds += a[2 * t] * b[2 * t] / TRIALS;
  }
  ck_assert_double_lt(fabs(inputs), 4.0 / sqrt(TRIALS));
  ck_assert_double_lt(fabs(trials), 4.0 / sqrt(TRIALS));
  ck_assert_double_lt(fabs(seeds), 4.0 / sqrt(TRIALS));
  free(a);
  free(b);
}
END_TEST

START_TEST(correlation_is_as_asked)
{
  const double x[] = {1.0, 2.0, 3.0};
  const double u[] = {0.1, 0.2, 0.3};
  const double nu[] = {1.0, 1.0, 1.0};
  const int32_t kind[] = {normal, normal, normal};
  const double r[] = {1.0, 0.9, -0.4, 0.9, 1.0, 0.0, -0.4, 0.0, 1.0};
  double *s = drawn(3, x, u, kind, nu, r, 3);
  double *one = memory(TRIALS);
  double *other = memory(TRIALS);
  for (size_t i = 0; i < 3; i++)
    for (size_t k = 0; k < i; k++) {
      for (size_t t = 0; t < TRIALS; t++) {
        one[t] = s[3 * t + i];
        other[t] = s[3 * t + k];
      }
      double got;
      ck_assert_int_eq(freeair_coverage_correlation(one, other, TRIALS, &got), FREEAIR_OK);
      ck_assert_double_lt(fabs(got - r[3 * i + k]), 4.0 / sqrt(TRIALS));
    }
  free(s);
  free(one);
  free(other);
  /* fully correlated: one deviate for both */
  const double full[] = {1.0, 1.0, 1.0, 1.0};
  double pair[8];
  ck_assert_int_eq(freeair_monte_carlo_draw(x, u, kind, nu, 2, full, 4, 9, 0, pair, 8), FREEAIR_OK);
  for (int t = 0; t < 4; t++)
    ck_assert_double_le(fabs((pair[2 * t] - 1.0) / 0.1 - (pair[2 * t + 1] - 2.0) / 0.2), 1e-12);
}
END_TEST

/* Split over calls, trials are the same. */
START_TEST(parts_are_the_whole)
{
  const double x[] = {24.0, 6.2, 81.0};
  const double u[] = {0.2, 0.05, 0.8};
  const double nu[] = {1.0, 4.0, 1.0};
  const int32_t kind[] = {rectangular, student, normal};
  double whole[100], part[100];
  int32_t failed;
  ck_assert_int_eq(freeair_monte_carlo_propagate("impedance_from_power", x, u, kind, nu, 3, NULL, 0, 11, 500, 1, whole,
                                                 100, &failed),
                   FREEAIR_OK);
  for (uint32_t k = 0; k < 100; k += 20)
    ck_assert_int_eq(freeair_monte_carlo_propagate("freeair_impedance_from_power", x, u, kind, nu, 3, NULL, 0, 11,
                                                   500 + k, 1, part + k, 20, &failed),
                     FREEAIR_OK);
  ck_assert_int_eq(memcmp(whole, part, sizeof whole), 0);
  /* the same trials by drawing and calling */
  double sample[300], r, reactance, z, factor;
  ck_assert_int_eq(freeair_monte_carlo_draw(x, u, kind, nu, 3, NULL, 0, 11, 500, sample, 300), FREEAIR_OK);
  for (int t = 0; t < 100; t++) {
    const double *s = sample + 3 * t;
    ck_assert_int_eq(freeair_impedance_from_power(s[0], s[1], s[2], &r, &reactance, &z, &factor), FREEAIR_OK);
    ck_assert_double_eq(reactance, whole[t]);
  }
}
END_TEST

/* JCGM 101:2008, 9.2: the sum of four inputs, normal, rectangular, and one rectangular ten times as wide. Printed
 * 95 % intervals +-3.92, +-3.88 and +-17.0 (from memory). */
START_TEST(additive_model)
{
  const double x[] = {0.0, 0.0, 0.0, 0.0};
  const double nu[] = {1.0, 1.0, 1.0, 1.0};
  const struct {
    int32_t kind;
    double u4, u, end, half_digit;
  } known[] = {{normal, 1.0, 2.0, 3.92, 0.005}, {rectangular, 1.0, 2.0, 3.88, 0.005},
               {rectangular, 10.0, sqrt(103.0), 17.0, 0.05}};
  for (size_t k = 0; k < 3; k++) {
    const double u[] = {1.0, 1.0, 1.0, known[k].u4};
    const int32_t kind[] = {known[k].kind, known[k].kind, known[k].kind, known[k].kind};
    double *s = drawn(4, x, u, kind, nu, NULL, 101);
    double *y = memory(TRIALS);
    for (size_t t = 0; t < TRIALS; t++) y[t] = s[4 * t] + s[4 * t + 1] + s[4 * t + 2] + s[4 * t + 3];
    summary all = summary_of(y, TRIALS);
    ck_assert_double_lt(fabs(all.u - known[k].u), 4.0 * all.u_error);
    double low, high, low_error, high_error;
    ck_assert_int_eq(freeair_monte_carlo_interval(y, TRIALS, 0.95, FREEAIR_MONTE_CARLO_SYMMETRIC, y, &low, &high,
                                                  &low_error, &high_error),
                     FREEAIR_OK);
    ck_assert_double_lt(fabs(high - known[k].end), 3.0 * high_error + known[k].half_digit);
    ck_assert_double_lt(fabs(low + known[k].end), 3.0 * low_error + known[k].half_digit);
    free(s);
    free(y);
  }
}
END_TEST

/* JCGM 101:2008, 9.4: y = x1^2 + x2^2 with u = 0.005. About zero, y is exponential with mean 50e-6: shortest 95 %
 * interval 0 to 150e-6. At x1 = 0.050 printed 2551e-6, 502e-6 and 1590e-6 to 3543e-6 (from memory). */
START_TEST(comparison_loss)
{
  const double u[] = {0.005, 0.005};
  const double nu[] = {1.0, 1.0};
  const int32_t kind[] = {normal, normal};
  double *y = memory(TRIALS);
  for (int far = 0; far < 2; far++) {
    const double x[] = {far ? 0.050 : 0.0, 0.0};
    double *s = drawn(2, x, u, kind, nu, NULL, 94);
    for (size_t t = 0; t < TRIALS; t++) y[t] = s[2 * t] * s[2 * t] + s[2 * t + 1] * s[2 * t + 1];
    free(s);
    summary all = summary_of(y, TRIALS);
    ck_assert_double_lt(fabs(all.mean - (far ? 2550e-6 : 50e-6)), 4.0 * all.mean_error);
    ck_assert_double_lt(fabs(all.u - (far ? sqrt(252500.0) * 1e-6 : 50e-6)), 4.0 * all.u_error);
    if (far) {
      interval_is(y, 0.95, FREEAIR_MONTE_CARLO_SHORTEST, 1590e-6, 3543e-6);
    } else {
      ck_assert_double_lt(fabs(all.skewness - 2.0), 0.1);
      interval_is(y, 0.95, FREEAIR_MONTE_CARLO_SHORTEST, 0.0, -50e-6 * log(0.05));
      interval_is(y, 0.95, FREEAIR_MONTE_CARLO_SYMMETRIC, -50e-6 * log(0.975), -50e-6 * log(0.025));
    }
  }
  free(y);
}
END_TEST

/* Where the function is nearly straight, trial and the law of propagation agree within the numerical tolerance. */
START_TEST(agrees_with_the_law_of_propagation)
{
  const double x[] = {0.27, 1e5, 293.15, 8e5, 301.15, 150.0, 1e5, 293.15};
  const double u[] = {0.003, 500.0, 1.0, 3000.0, 3.0, 0.4, 0.0, 0.0};
  const double nu[] = {1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0};
  int32_t kind[8], failed;
  for (int i = 0; i < 8; i++) kind[i] = normal;
  double q, u_q, c[8], expanded, low, high, l, h, le, he, tolerance;
  double *y = memory(TRIALS);
  ck_assert_int_eq(freeair_uncertainty_propagate("receiver_free_air_from_pump_up", x, u, 8, NULL, 0, &q, &u_q, 1, c, 8),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_monte_carlo_propagate("receiver_free_air_from_pump_up", x, u, kind, nu, 8, NULL, 0, 5, 0, 0,
                                                 y, TRIALS, &failed),
                   FREEAIR_OK);
  ck_assert_int_eq(failed, 0);
  summary all = summary_of(y, TRIALS);
  ck_assert_double_lt(fabs(all.mean / q - 1.0), 5e-4);
  ck_assert_double_lt(fabs(all.u / u_q - 1.0), 0.01);
  ck_assert_int_eq(freeair_coverage_interval(q, u_q, 0.95, INFINITY, &expanded, &low, &high), FREEAIR_OK);
  ck_assert_int_eq(freeair_monte_carlo_interval(y, TRIALS, 0.95, FREEAIR_MONTE_CARLO_SYMMETRIC, y, &l, &h, &le, &he),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_monte_carlo_tolerance(u_q, 1, &tolerance), FREEAIR_OK);
  ck_assert_double_lt(fabs(l - low), tolerance);
  ck_assert_double_lt(fabs(h - high), tolerance);
  free(y);
}
END_TEST

START_TEST(nan_and_order)
{
  double y[1000], ordered[1000], sorted[1000];
  size_t n = 0;
  for (int i = 0; i < 1000; i++) {
    y[i] = i % 7 == 3 ? NAN : floor(1e4 * sin(i * 0.77)) * 0.25;
    if (!isnan(y[i])) sorted[n++] = y[i];
  }
  qsort(sorted, n, sizeof *sorted, ascending);
  double low, high, low_error, high_error;
  ck_assert_int_eq(freeair_monte_carlo_interval(y, 1000, 0.9, FREEAIR_MONTE_CARLO_SHORTEST, ordered, &low, &high,
                                                &low_error, &high_error),
                   FREEAIR_OK);
  ck_assert_int_eq(memcmp(ordered, sorted, n * sizeof *sorted), 0);
  for (size_t i = n; i < 1000; i++) ck_assert(isnan(ordered[i]));
  double again_low, again_high;
  ck_assert_int_eq(freeair_monte_carlo_interval(y, 1000, 0.9, FREEAIR_MONTE_CARLO_SHORTEST, y, &again_low, &again_high,
                                                &low_error, &high_error),
                   FREEAIR_OK);
  ck_assert_double_eq(low, again_low);
  ck_assert_double_eq(high, again_high);
}
END_TEST

START_TEST(tolerance_by_decades)
{
  for (int digits = 1; digits <= 9; digits++)
    for (double u = 1.2345e-20; u < 1e20; u *= 1.37) {
      double tolerance;
      ck_assert_int_eq(freeair_monte_carlo_tolerance(u, digits, &tolerance), FREEAIR_OK);
      double whole = u / (2.0 * tolerance); /* a number of so many digits, but for rounding */
      ck_assert(whole >= pow(10.0, digits - 1) * (1.0 - 0.51 / pow(10.0, digits - 1)));
      ck_assert(whole < pow(10.0, digits));
    }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 120);
  tcase_add_test(all, moments);
  tcase_add_test(all, distributions);
  tcase_add_test(all, independence);
  tcase_add_test(all, correlation_is_as_asked);
  tcase_add_test(all, parts_are_the_whole);
  tcase_add_test(all, additive_model);
  tcase_add_test(all, comparison_loss);
  tcase_add_test(all, agrees_with_the_law_of_propagation);
  tcase_add_test(all, nan_and_order);
  tcase_add_test(all, tolerance_by_decades);
  return run_case("monte_carlo", all);
}
