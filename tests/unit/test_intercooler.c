/* SPDX-License-Identifier: MIT */
#include <freeair/cylinder.h>
#include <freeair/intercooler.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

static double effectiveness(int32_t arrangement, double ntu, double ratio)
{
  double e;
  ck_assert_int_eq(freeair_intercooler_effectiveness(arrangement, ntu, ratio, &e), FREEAIR_OK);
  ck_assert(e >= 0.0 && e <= 1.0);
  return e;
}

/* Counterflow does best, side by side worst, and more area never hurts where theory says so. */
START_TEST(order_of_arrangements)
{
  for (int i = 0; i < 40; i++)
    for (int j = 0; j <= 10; j++) {
      const double ntu = spread(i, 40, 0.01, 50.0);
      const double ratio = j / 10.0;
      const double best = effectiveness(FREEAIR_INTERCOOLER_COUNTERFLOW, ntu, ratio);
      const double worst = effectiveness(FREEAIR_INTERCOOLER_PARALLEL, ntu, ratio);
      for (int32_t a = FREEAIR_INTERCOOLER_COUNTERFLOW; a <= FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED; a++) {
        const double e = effectiveness(a, ntu, ratio);
        ck_assert(e <= best + 1e-14 && e >= worst - 1e-14);
        ck_assert_double_ge(effectiveness(a, 1.1 * ntu, ratio), e - 1e-14);
        ck_assert_double_le(e, ntu);
      }
      ck_assert_double_ge(effectiveness(FREEAIR_INTERCOOLER_CROSS_UNMIXED, ntu, ratio),
                          effectiveness(FREEAIR_INTERCOOLER_CROSS_LARGER_MIXED, ntu, ratio) - 1e-14);
    }
}
END_TEST

START_TEST(size_and_effectiveness_are_inverse)
{
  for (int32_t a = FREEAIR_INTERCOOLER_COUNTERFLOW; a <= FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED; a++)
    for (int i = 0; i < 30; i++)
      for (int j = 0; j <= 8; j++) {
        const double ntu = spread(i, 30, 1e-6, 4.0);
        double back;
        ck_assert_int_eq(freeair_intercooler_ntu(a, effectiveness(a, ntu, j / 8.0), j / 8.0, &back), FREEAIR_OK);
        ck_assert_double_le(fabs(back / ntu - 1.0), 1e-11);
      }
}
END_TEST

/* The well-known fit to the series is within four per cent of it. */
START_TEST(fit_to_the_series)
{
  for (int i = 0; i < 30; i++)
    for (int j = 1; j <= 10; j++) {
      const double ntu = spread(i, 30, 0.1, 10.0);
      const double c = j / 10.0;
      const double fit = 1.0 - exp(pow(ntu, 0.22) / c * (exp(-c * pow(ntu, 0.78)) - 1.0));
      ck_assert_double_le(fabs(fit / effectiveness(FREEAIR_INTERCOOLER_CROSS_UNMIXED, ntu, c) - 1.0), 0.04);
    }
}
END_TEST

/* The differential equations of a counterflow cooler, summed up over thin slices. */
START_TEST(counterflow_by_slices)
{
  double out, coolant, heat, e;
  ck_assert_int_eq(freeair_intercooler_outlet(FREEAIR_INTERCOOLER_COUNTERFLOW, 250.0, 120.0, 420.0, 300.0, 290.0, &out,
                                              &coolant, &heat, &e),
                   FREEAIR_OK);
  double air = 420.0;
  double water = coolant;
  const int n = 100000;
  for (int i = 0; i < n; i++) {
    const double middle = air - water - 0.5 * (250.0 / n) * (air - water) * (1.0 / 120.0 - 1.0 / 300.0);
    air -= 250.0 / n * middle / 120.0;
    water -= 250.0 / n * middle / 300.0;
  }
  ck_assert_double_le(fabs(air - out), 1e-6);
  ck_assert_double_le(fabs(water - 290.0), 1e-6);
  ck_assert_double_le(fabs(heat - 120.0 * (420.0 - out)), 1e-9);
  /* and the logarithmic mean gives the same heat */
  double mean;
  ck_assert_int_eq(freeair_intercooler_mean_difference(420.0 - coolant, out - 290.0, &mean), FREEAIR_OK);
  ck_assert_double_le(fabs(250.0 * mean / heat - 1.0), 1e-12);
}
END_TEST

START_TEST(mean_difference_lies_between)
{
  for (int i = 0; i < 40; i++)
    for (int j = 0; j < 40; j++) {
      const double a = spread(i, 40, 1e-3, 1e3);
      const double b = spread(j, 40, 1e-3, 1e3);
      double mean, other;
      ck_assert_int_eq(freeair_intercooler_mean_difference(a, b, &mean), FREEAIR_OK);
      ck_assert_int_eq(freeair_intercooler_mean_difference(b, a, &other), FREEAIR_OK);
      ck_assert_double_le(fabs(mean / other - 1.0), 1e-13);
      ck_assert(mean >= sqrt(a * b) * (1.0 - 1e-14) && mean <= 0.5 * (a + b) * (1.0 + 1e-14));
    }
}
END_TEST

/* The stages take what each other gives, by the cylinders' own functions. */
START_TEST(stages_balance)
{
  double last = 0.0;
  for (int i = 0; i < 30; i++) {
    freeair_intercooler_stages s = FREEAIR_INTERCOOLER_STAGES_INIT;
    s.displacement1_m3_s = 0.02;
    s.clearance1 = 0.05;
    s.displacement2_m3_s = 0.006;
    s.clearance2 = 0.07;
    s.exponent = 1.25;
    s.p1_pa = 1e5;
    s.t1_k = 300.0;
    s.p2_pa = 5e5 + 2e4 * i;
    s.t2_k = 315.0;
    s.drop_pa = 8e3;
    double p, e1, e2, q, c1, c2;
    ck_assert_int_eq(freeair_intercooler_pressure(&s, &p, &e1, &e2, &q), FREEAIR_OK);
    ck_assert_int_eq(freeair_cylinder_volumetric_efficiency(1e5, p, 0.05, 1.25, &c1), FREEAIR_OK);
    ck_assert_int_eq(freeair_cylinder_volumetric_efficiency(p - 8e3, s.p2_pa, 0.07, 1.25, &c2), FREEAIR_OK);
    ck_assert_double_le(fabs(c1 - e1), 1e-13);
    ck_assert_double_le(fabs(c2 - e2), 1e-13);
    ck_assert_double_le(fabs(0.02 * e1 * 1e5 / 300.0 / (0.006 * e2 * (p - 8e3) / 315.0) - 1.0), 1e-12);
    ck_assert_double_le(fabs(q / (0.02 * e1) - 1.0), 1e-12);
    ck_assert_double_gt(p, last); /* a leaky or loaded second stage raises the pressure between */
    last = p;
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, order_of_arrangements);
  tcase_add_test(all, size_and_effectiveness_are_inverse);
  tcase_add_test(all, fit_to_the_series);
  tcase_add_test(all, counterflow_by_slices);
  tcase_add_test(all, mean_difference_lies_between);
  tcase_add_test(all, stages_balance);
  return run_case("intercooler", all);
}
