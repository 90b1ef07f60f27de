/* SPDX-License-Identifier: MIT */
#include <freeair/cylinder.h>
#include <freeair/indicator.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { MOST = 2000 };
static double p[MOST];
static double v[MOST];

START_TEST(ideal_diagram_has_the_ideal_work)
{
  const double exponents[][2] = {{1.3, 1.3}, {1.25, 1.35}, {1.0, 1.0}, {1.4, 1.1}};
  for (size_t e = 0; e < sizeof exponents / sizeof exponents[0]; e++)
    for (double p2 = 2e5; p2 < 13e5; p2 += 2e5)
      for (double c = 0.0; c < 0.08; c += 0.02) {
        double mep;
        double before = 1.0;
        ck_assert_int_eq(freeair_cylinder_mean_effective_pressure(1e5, p2, c, exponents[e][0], exponents[e][1], &mep),
                         FREEAIR_OK);
        for (size_t points = 100; points <= MOST; points *= 2) {
          double w;
          double found;
          ck_assert_int_eq(freeair_indicator_ideal(1e5, p2, c, 1e-3, exponents[e][0], exponents[e][1], p, v, points),
                           FREEAIR_OK);
          ck_assert_double_eq(p[0], p[points - 1]);
          ck_assert_double_eq(v[0], v[points - 1]);
          ck_assert_int_eq(freeair_indicator_work(p, v, points, &w, &found), FREEAIR_OK);
          double off = found / mep - 1.0;
          ck_assert_double_ge(off, 0.0);             /* chords lie outside a loop of convex curves */
          ck_assert_double_lt(off, 0.3 * before);    /* second order: a quarter with twice the points */
          before = off;
          if (points == 200) ck_assert_double_lt(off, 2e-4);
          ck_assert_double_eq_tol(w, found * 1e-3, 1e-12 * fabs(w));
        }
        ck_assert_double_lt(before, 4e-6);
      }
}
END_TEST

START_TEST(diagram_is_well_formed)
{
  for (size_t points = 9; points < 200; points++) {
    ck_assert_int_eq(freeair_indicator_ideal(1e5, 8e5, 0.05, 1e-3, 1.3, 1.25, p, v, points), FREEAIR_OK);
    double least = v[0];
    double most = v[0];
    for (size_t i = 0; i < points; i++) {
      ck_assert(p[i] >= 1e5 && p[i] <= 8e5);
      least = fmin(least, v[i]);
      most = fmax(most, v[i]);
      if (i > 0) ck_assert(p[i] != p[i - 1] || v[i] != v[i - 1]); /* no point twice */
    }
    ck_assert_double_eq_tol(least, 0.05e-3, 1e-18);
    ck_assert_double_eq_tol(most, 1.05e-3, 1e-18);
  }
}
END_TEST

START_TEST(a_loop_has_no_beginning)
{
  double w;
  double mep;
  double w0;
  ck_assert_int_eq(freeair_indicator_ideal(1e5, 8e5, 0.05, 1e-3, 1.3, 1.25, p, v, 101), FREEAIR_OK);
  ck_assert_int_eq(freeair_indicator_work(p, v, 100, &w0, &mep), FREEAIR_OK);
  for (int turn = 0; turn < 100; turn++) {
    double first_p = p[0];
    double first_v = v[0];
    for (int i = 0; i < 99; i++) {
      p[i] = p[i + 1];
      v[i] = v[i + 1];
    }
    p[99] = first_p;
    v[99] = first_v;
    ck_assert_int_eq(freeair_indicator_work(p, v, 100, &w, &mep), FREEAIR_OK);
    ck_assert_double_eq_tol(w, w0, 1e-13 * w0);
  }
  for (int i = 0; i < 50; i++) { /* backwards it is an engine */
    double swap = p[i];
    p[i] = p[99 - i];
    p[99 - i] = swap;
    swap = v[i];
    v[i] = v[99 - i];
    v[99 - i] = swap;
  }
  ck_assert_int_eq(freeair_indicator_work(p, v, 100, &w, &mep), FREEAIR_OK);
  ck_assert_double_eq_tol(w, -w0, 1e-13 * w0);
}
END_TEST

START_TEST(exponent_comes_back)
{
  for (double n = 0.9; n < 1.6; n += 0.1)
    for (int points = 3; points < 60; points += 7) {
      double found;
      double uncertainty;
      for (int i = 0; i < points; i++) {
        v[i] = 1e-3 * (1.0 - 0.7 * i / points);
        p[i] = 1e5 * pow(v[0] / v[i], n);
      }
      ck_assert_int_eq(freeair_indicator_exponent(p, v, (size_t)points, &found, &uncertainty), FREEAIR_OK);
      ck_assert_double_eq_tol(found, n, 1e-13);
      ck_assert_double_lt(uncertainty, 1e-13);
    }
}
END_TEST

/* Scatter shows at its true size: over many draws the spread of the exponent is what one fit says. */
START_TEST(scatter_is_the_uncertainty)
{
  uint32_t state = 1u;
  double sum = 0.0;
  double squares = 0.0;
  double said = 0.0;
  const int draws = 4000;
  for (int k = 0; k < draws; k++) {
    double n;
    double u;
    for (int i = 0; i < 25; i++) {
      double noise = 0.0;
      for (int j = 0; j < 12; j++) {
        state = state * 1664525u + 1013904223u;
        noise += state / 4294967296.0 - 0.5;
      }
      v[i] = 1e-3 * (1.0 - 0.025 * i);
      p[i] = 1e5 * pow(v[0] / v[i], 1.3) * exp(0.01 * noise);
    }
    ck_assert_int_eq(freeair_indicator_exponent(p, v, 25, &n, &u), FREEAIR_OK);
    sum += n - 1.3;
    squares += (n - 1.3) * (n - 1.3);
    said += u * u;
  }
  ck_assert_double_eq_tol(squares / said, 1.0, 0.06);
  ck_assert_double_lt(fabs(sum / draws), 4.0 * sqrt(squares / draws / draws));
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("indicator");
  tcase_add_test(tc, ideal_diagram_has_the_ideal_work);
  tcase_add_test(tc, diagram_is_well_formed);
  tcase_add_test(tc, a_loop_has_no_beginning);
  tcase_add_test(tc, exponent_comes_back);
  tcase_add_test(tc, scatter_is_the_uncertainty);
  return run_case("indicator", tc);
}
