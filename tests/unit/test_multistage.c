/* SPDX-License-Identifier: MIT */
#include <freeair/compression.h>
#include <freeair/multistage.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { MOST = 8 };

static void same(double a, double b, double relative)
{
  ck_assert_msg(fabs(a - b) <= relative * fmax(fabs(a), fabs(b)), "%.17g is not %.17g", a, b);
}

static double equal(double p2, double n, int32_t stages)
{
  double w;
  ck_assert_int_eq(freeair_multistage_work_equal(287.05, 300.0, 1e5, p2, n, stages, &w), FREEAIR_OK);
  return w;
}

START_TEST(more_stages_cost_less_down_to_the_isothermal)
{
  for (double p2 = 2e5; p2 < 9e7; p2 *= 3.0) {
    double isothermal;
    double single;
    double saving;
    ck_assert_int_eq(freeair_compression_work_isothermal(287.05, 300.0, 1e5, p2, &isothermal), FREEAIR_OK);
    ck_assert_int_eq(freeair_compression_work_polytropic(287.05, 300.0, 1e5, p2, 1.35, &single), FREEAIR_OK);
    same(equal(p2, 1.35, 1), single, 1e-15);
    for (int32_t s = 1; s < 100; s++) {
      double w = equal(p2, 1.35, s + 1);
      ck_assert_double_lt(w, equal(p2, 1.35, s));
      ck_assert_double_gt(w, isothermal);
      ck_assert_int_eq(freeair_multistage_saving(1e5, p2, 1.35, s + 1, &saving), FREEAIR_OK);
      same(1.0 - saving, w / single, 1e-14);
    }
    /* what is left above the isothermal falls as 1/N: (m/2) L^2/N */
    double logarithm = log(p2 / 1e5);
    ck_assert_double_lt(equal(p2, 1.35, 100) / isothermal - 1.0, 0.5 * (0.35 / 1.35) * logarithm / 100.0 * 1.05);
  }
}
END_TEST

/* Small but never lost: the saving near a ratio of one is m L (1 - 1/N)/2. */
START_TEST(saving_near_one)
{
  for (double excess = 1e-3; excess > 1e-13; excess /= 10.0) {
    double p2 = 1e5 * (1.0 + excess);
    double saving;
    ck_assert_int_eq(freeair_multistage_saving(1e5, p2, 1.3, 2, &saving), FREEAIR_OK);
    same(saving, 0.25 * (0.3 / 1.3) * log1p((p2 - 1e5) / 1e5), 2.0 * excess + 1e-13);
  }
}
END_TEST

static double total(const double *t, const double *n, const double *drop, const double *p, size_t stages)
{
  double each[MOST];
  double out[MOST];
  double w;
  if (freeair_multistage_work(287.05, 1e5, t, n, drop, p, stages, each, out, &w) < 0) return INFINITY;
  double sum = 0.0;
  for (size_t i = 0; i < stages; i++) sum += each[i];
  same(sum, w, 1e-14);
  return w;
}

static double chance(void)
{
  static uint32_t state = 12345u;
  state = state * 1664525u + 1013904223u;
  return state / 4294967296.0;
}

/* No neighbour of the optimum costs less; where there is none, leaving a stage out costs less. */
START_TEST(optimum_is_one)
{
  int found = 0;
  for (int trial = 0; trial < 3000; trial++) {
    size_t stages = 2 + (size_t)(chance() * (MOST - 1.001));
    double t[MOST];
    double n[MOST];
    double drop[MOST];
    double p[MOST];
    double p2 = 1e5 * exp(log(2.0) + chance() * log(400.0));
    for (size_t i = 0; i < stages; i++) {
      t[i] = 290.0 + 40.0 * chance();
      n[i] = 1.05 + 0.4 * chance();
      drop[i] = chance() < 0.5 ? 0.0 : 3000.0 * chance();
    }
    int32_t status = freeair_multistage_optimum(1e5, p2, t, n, drop, stages, p);
    if (status == FREEAIR_ERR_NO_SOLUTION) {
      for (size_t i = 0; i < stages; i++) ck_assert(isnan(p[i]));
      continue;
    }
    ck_assert_int_eq(status, FREEAIR_OK);
    found++;
    ck_assert_double_eq(p[stages - 1], p2);
    double least = total(t, n, drop, p, stages);
    ck_assert(isfinite(least));
    for (int k = 0; k < 20; k++) {
      double q[MOST];
      for (size_t i = 0; i < stages; i++) q[i] = i + 1 < stages ? p[i] * (1.0 + 0.02 * (chance() - 0.5)) : p2;
      ck_assert_double_ge(total(t, n, drop, q, stages), least * (1.0 - 1e-14));
    }
  }
  ck_assert_int_gt(found, 1000);
}
END_TEST

START_TEST(optimum_without_losses_is_the_textbook_one)
{
  const double t[] = {300.0, 300.0, 300.0, 300.0};
  const double n[] = {1.3, 1.3, 1.3, 1.3};
  const double none[] = {0.0, 0.0, 0.0, 0.0};
  double p[4];
  ck_assert_int_eq(freeair_multistage_optimum(1e5, 160e5, t, n, none, 4, p), FREEAIR_OK);
  for (int32_t i = 1; i <= 4; i++) {
    double want;
    ck_assert_int_eq(freeair_multistage_pressure(1e5, 160e5, 4, i, &want), FREEAIR_OK);
    same(p[i - 1], want, 1e-13);
  }
  same(total(t, n, none, p, 4), equal(160e5, 1.3, 4), 1e-14);
  for (double t3 = 300.0; t3 < 340.0; t3 += 5.0) {
    const double two[] = {300.0, t3};
    double want;
    ck_assert_int_eq(freeair_multistage_pressure_from_temperatures(1e5, 12e5, 300.0, t3, 1.3, 0.0, &want), FREEAIR_OK);
    ck_assert_int_eq(freeair_multistage_optimum(1e5, 12e5, two, n, none, 2, p), FREEAIR_OK);
    same(p[0], want, 1e-13);
  }
}
END_TEST

/* With a proportional loss: the closed form is the least over all interstage pressures. */
START_TEST(proportional_loss)
{
  const double t[] = {300.0, 312.0};
  const double n[] = {1.32, 1.32};
  double best;
  ck_assert_int_eq(freeair_multistage_pressure_from_temperatures(1e5, 12e5, t[0], t[1], 1.32, 0.05, &best), FREEAIR_OK);
  double p[2] = {best, 12e5};
  double drop[2] = {0.0, 0.05 * best};
  double least = total(t, n, drop, p, 2);
  for (double factor = 0.9; factor < 1.1; factor += 0.01) {
    p[0] = best * factor;
    drop[1] = 0.05 * p[0];
    ck_assert_double_ge(total(t, n, drop, p, 2), least * (1.0 - 1e-15));
  }
}
END_TEST

START_TEST(a_stage_that_does_not_pay)
{
  /* intercooled air hotter than what the first stage would deliver: one stage is cheaper than any two */
  const double t[] = {300.0, 400.0};
  const double n[] = {1.3, 1.3};
  const double none[] = {0.0, 0.0};
  double p[2] = {1.0, 1.0};
  ck_assert_int_eq(freeair_multistage_optimum(1e5, 2e5, t, n, none, 2, p), FREEAIR_ERR_NO_SOLUTION);
  ck_assert(isnan(p[0]) && isnan(p[1]));
  double single = equal(2e5, 1.3, 1);
  for (double between = 1.05e5; between < 2e5; between += 0.05e5) {
    const double split[] = {between, 2e5};
    ck_assert_double_gt(total(t, n, none, split, 2), single);
  }
}
END_TEST

START_TEST(stages_for_a_temperature)
{
  for (double p2 = 1.5e5; p2 < 9e7; p2 *= 1.9)
    for (double limit = 330.0; limit < 600.0; limit += 31.0) {
      int32_t stages;
      double t2;
      double p;
      ck_assert_int_eq(freeair_multistage_stages(300.0, 1e5, p2, 1.3, limit, &stages), FREEAIR_OK);
      ck_assert_int_eq(freeair_multistage_pressure(1e5, p2, stages, 1, &p), FREEAIR_OK);
      ck_assert_int_eq(freeair_compression_temperature(300.0, 1e5, p, 1.3, &t2), FREEAIR_OK);
      ck_assert_double_le(t2, limit * (1.0 + 1e-12));
      if (stages == 1) continue;
      ck_assert_int_eq(freeair_multistage_pressure(1e5, p2, stages - 1, 1, &p), FREEAIR_OK);
      ck_assert_int_eq(freeair_compression_temperature(300.0, 1e5, p, 1.3, &t2), FREEAIR_OK);
      ck_assert_double_gt(t2, limit);
    }
}
END_TEST

START_TEST(too_many_stages)
{
  double x[2] = {1.0, 1.0};
  double w = 1.0;
  ck_assert_int_eq(freeair_multistage_optimum(1e5, 2e5, x, x, x, 0, x), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(freeair_multistage_optimum(1e5, 2e5, x, x, x, 101, x), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(freeair_multistage_work(287.0, 1e5, x, x, x, x, 101, x, x, &w), FREEAIR_ERR_DOMAIN);
  ck_assert(isnan(w));
  ck_assert_double_eq(x[0], 1.0); /* what cannot be sized is not written */
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("multistage");
  tcase_add_test(tc, more_stages_cost_less_down_to_the_isothermal);
  tcase_add_test(tc, saving_near_one);
  tcase_add_test(tc, optimum_is_one);
  tcase_add_test(tc, optimum_without_losses_is_the_textbook_one);
  tcase_add_test(tc, proportional_loss);
  tcase_add_test(tc, a_stage_that_does_not_pay);
  tcase_add_test(tc, stages_for_a_temperature);
  tcase_add_test(tc, too_many_stages);
  return run_case("multistage", tc);
}
