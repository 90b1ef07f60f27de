/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "../suite.h"

#include <check.h>
#include <fenv.h>
#include <math.h>

static double probability(double value, double uncertainty, double lower, double upper)
{
  double p;
  ck_assert_int_eq(freeair_verdict_probability(value, uncertainty, lower, upper, &p), FREEAIR_OK);
  ck_assert(p >= 0.0 && p <= 1.0);
  return p;
}

static int32_t decide(double value, double uncertainty, double lower, double upper, double confidence)
{
  int32_t verdict = -1;
  ck_assert_int_eq(freeair_verdict_decide(value, uncertainty, lower, upper, confidence, &verdict), FREEAIR_OK);
  return verdict;
}

START_TEST(certain_when_nothing_is_asked)
{
  ck_assert_double_eq(probability(3.0, 2.0, -INFINITY, INFINITY), 1.0);
  ck_assert_double_eq(probability(3.0, 0.0, -INFINITY, INFINITY), 1.0);
  ck_assert_double_eq(probability(1e308, 1e-300, -INFINITY, -1e308), 0.0);
  ck_assert_double_eq(probability(1e308, 1e300, -1e308, INFINITY), 1.0);
}
END_TEST

/* What lies below, between and above adds up to one. */
START_TEST(parts_make_the_whole)
{
  for (double lower = -6.0; lower <= 6.0; lower += 0.37)
    for (double width = 1e-6; width < 20.0; width *= 1.9) {
      double sum = probability(0.3, 1.1, -INFINITY, lower) + probability(0.3, 1.1, lower, lower + width) +
                   probability(0.3, 1.1, lower + width, INFINITY);
      ck_assert_double_eq_tol(sum, 1.0, 4e-16);
    }
}
END_TEST

/* The two ways to compute it meet without a step. */
START_TEST(narrow_limits_join_wide_ones)
{
  for (double middle = 0.0; middle < 30.0; middle += 0.125) {
    double edge = 1.0 / (middle + 1.0);
    double last = 0.0;
    for (int i = -4; i <= 4; i++) {
      double half = 0.5 * edge * (1.0 + i * 1e-3);
      double p = probability(0.0, 1.0, middle - half, middle + half);
      double parts = probability(0.0, 1.0, middle - half, middle) + probability(0.0, 1.0, middle, middle + half);
      ck_assert(p > last);
      ck_assert_double_eq_tol(p, parts, p * (1.0 + middle * middle) * 5e-16);
      last = p;
    }
  }
}
END_TEST

START_TEST(symmetric_and_free_of_scale)
{
  for (double value = -5.0; value <= 5.0; value += 0.61) {
    double p = probability(value, 0.7, -1.5, 2.25);
    ck_assert_double_eq_tol(probability(-value, 0.7, -2.25, 1.5), p, p * 1e-14);
    ck_assert_double_eq(probability(value * 1024.0, 0.7 * 1024.0, -1.5 * 1024.0, 2.25 * 1024.0), p);
  }
}
END_TEST

/* With one limit, conformance falls as the estimate nears it and passes it. */
START_TEST(monotonic_in_the_estimate)
{
  double last = 1.0;
  for (double value = -4.0; value <= 12.0; value += 0.05) {
    double p = probability(value, 0.5, -INFINITY, 1.0);
    ck_assert(p <= last);
    last = p;
  }
  ck_assert(last > 0.0 && last < 1e-100);
}
END_TEST

/* A vanishing uncertainty gives a bare threshold. */
START_TEST(limit_of_no_uncertainty)
{
  for (double value = 0.0; value <= 3.0; value += 0.25) {
    double p = probability(value, 1e-12, 0.9, 2.1);
    ck_assert_double_eq(p, probability(value, 0.0, 0.9, 2.1));
    ck_assert_int_eq(decide(value, 0.0, 0.9, 2.1, 0.95),
                     value >= 0.9 && value <= 2.1 ? FREEAIR_VERDICT_MEETS : FREEAIR_VERDICT_FAILS);
  }
}
END_TEST

/* The decision is the probability, cut at the confidence and at one less it. */
START_TEST(decision_follows_probability)
{
  for (double confidence = 0.6; confidence < 0.999; confidence += 0.05)
    for (double value = -1.0; value <= 4.0; value += 0.03) {
      double p = probability(value, 0.4, 0.0, 2.0);
      int32_t expected = p >= confidence         ? FREEAIR_VERDICT_MEETS
                         : p <= 1.0 - confidence ? FREEAIR_VERDICT_FAILS
                                                 : FREEAIR_VERDICT_CANNOT_TELL;
      ck_assert_int_eq(decide(value, 0.4, 0.0, 2.0, confidence), expected);
    }
}
END_TEST

/* More uncertainty or more confidence never makes a verdict firmer. */
START_TEST(doubt_never_firms_a_verdict)
{
  for (double value = 8.0; value <= 12.0; value += 0.1) {
    int firm = 1;
    for (double u = 0.01; u < 3.0; u *= 1.3) {
      int now = decide(value, u, -INFINITY, 10.0, 0.95) != FREEAIR_VERDICT_CANNOT_TELL;
      ck_assert(firm || !now);
      firm = now;
    }
    firm = 1;
    for (double confidence = 0.55; confidence < 1.0; confidence += 0.05) {
      int now = decide(value, 0.5, -INFINITY, 10.0, confidence) != FREEAIR_VERDICT_CANNOT_TELL;
      ck_assert(firm || !now);
      firm = now;
    }
  }
}
END_TEST

START_TEST(errors_leave_the_neutral_verdict)
{
  int32_t verdict = FREEAIR_VERDICT_FAILS;
  feclearexcept(FE_ALL_EXCEPT);
  ck_assert_int_eq(freeair_verdict_decide(NAN, 1.0, 0.0, 1.0, 0.95, &verdict), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_CANNOT_TELL);
  ck_assert_int_eq(freeair_verdict_decide(0.0, 1.0, 1.0, 1.0, 0.95, &verdict), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(freeair_verdict_decide(0.0, 1.0, 0.0, 1.0, 1.0, &verdict), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(freeair_verdict_decide(0.0, 1.0, 0.0, 1.0, 0.95, NULL), FREEAIR_ERR_NULL);
  ck_assert_int_eq(fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW), 0);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, certain_when_nothing_is_asked);
  tcase_add_test(all, parts_make_the_whole);
  tcase_add_test(all, narrow_limits_join_wide_ones);
  tcase_add_test(all, symmetric_and_free_of_scale);
  tcase_add_test(all, monotonic_in_the_estimate);
  tcase_add_test(all, limit_of_no_uncertainty);
  tcase_add_test(all, decision_follows_probability);
  tcase_add_test(all, doubt_never_firms_a_verdict);
  tcase_add_test(all, errors_leave_the_neutral_verdict);
  return run_case("verdict", all);
}
