/* SPDX-License-Identifier: MIT */
#include <freeair/conductance.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double relative(double a, double b)
{
  return a == b ? 0.0 : fabs(a - b) / fmax(fabs(a), fabs(b));
}

/* n values from low to high, evenly spaced on a logarithmic scale */
static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

static double iso_flow(double c, double b, double p1_pa, double p2_pa)
{
  double mass;
  double anr;
  ck_assert_int_eq(freeair_conductance_flow(c, b, 0.5, p1_pa, 293.15, p2_pa, &mass, &anr), FREEAIR_OK);
  ck_assert_double_le(relative(anr, mass / 1.185), 1e-15);
  return mass;
}

/* Flow through components in series by solving for the pressures between them:
 * the largest flow whose outlet pressure is not below p2. */
static double chain_flow(const double *c, const double *b, size_t n, double p1_pa, double p2_pa)
{
  double low = 0.0;
  double high = 1.185 * c[0] * p1_pa;
  for (int step = 0; step < 200; step++) {
    double mass = 0.5 * (low + high);
    double p = p1_pa;
    int passes = 1;
    for (size_t i = 0; passes && i < n; i++) {
      double next;
      passes = freeair_conductance_outlet_pressure(mass, c[i], b[i], 0.5, p, 293.15, &next) == FREEAIR_OK &&
               next >= 1.0;
      p = next;
    }
    if (passes && p >= p2_pa)
      low = mass;
    else
      high = mass;
  }
  return low;
}

/* Conductance and outlet pressure that are computed from a flow give it back. */
START_TEST(inverses_return_to_the_start)
{
  for (int i = 0; i < 30; i++) {
    double b = i / 31.0;
    for (int j = 0; j < 30; j++) {
      const double p1 = 7e5;
      double p2 = p1 - spread(j, 30, 1e-6, 6.9e5);
      double mass = iso_flow(3e-8, b, p1, p2);
      double c;
      double back;
      ck_assert_int_eq(freeair_conductance_from_flow(mass, b, 0.5, p1, 293.15, p2, &c), FREEAIR_OK);
      ck_assert_double_le(relative(c, 3e-8), 1e-14);
      if (p2 > (b + 0.01) * p1) {
        ck_assert_int_eq(freeair_conductance_outlet_pressure(mass, 3e-8, b, 0.5, p1, 293.15, &back), FREEAIR_OK);
        ck_assert_double_le(relative(back, p2), 1e-11);
      }
    }
  }
}
END_TEST

/* Below b the flow is C p1 and stays; at p2 = p1 it is nothing. */
START_TEST(choked_below_b)
{
  ck_assert_double_le(relative(iso_flow(3e-8, 0.4, 7e5, 2.8e5), 1.185 * 3e-8 * 7e5), 1e-14);
  ck_assert_double_eq(iso_flow(3e-8, 0.4, 7e5, 1e5), iso_flow(3e-8, 0.4, 7e5, 0.0));
  ck_assert_double_eq(iso_flow(3e-8, 0.4, 7e5, 7e5), 0.0);
}
END_TEST

/* Two components: the conductance agrees with the chain when choked, b with it at a small drop. */
START_TEST(series_is_exact_at_its_ends)
{
  for (int i = 0; i < 40; i++) {
    const double c[2] = {2e-8, spread(i, 40, 2e-10, 2e-6)};
    const double b[2] = {0.05 + 0.8 * (i % 5) / 5.0, 0.1 + 0.7 * (i % 7) / 7.0};
    double total;
    double ratio;
    ck_assert_int_eq(freeair_conductance_series(c, b, 2, &total, &ratio), FREEAIR_OK);
    ck_assert_double_ge(ratio, 0.0);
    ck_assert_double_lt(ratio, 1.0);
    ck_assert_double_le(total, fmin(c[0], c[1]) * (1.0 + 1e-15));
    ck_assert_double_le(relative(iso_flow(total, ratio, 7e5, 1.0), chain_flow(c, b, 2, 7e5, 1.0)), 1e-9);
    double drop = chain_flow(c, b, 2, 7e5, 7e5 - 7.0);
    ck_assert_double_le(relative(iso_flow(total, ratio, 7e5, 7e5 - 7.0), drop), 2e-5);
  }
}
END_TEST

/* Between the ends one ellipse stands for the chain within 3.5 % for usual valves, two to four of them. */
START_TEST(series_is_close_between_its_ends)
{
  double worst = 0.0;
  for (int i = 0; i < 60; i++) {
    const double c[4] = {2e-8, spread(i % 6, 6, 4e-9, 1e-7), spread(i % 10, 10, 4e-9, 1e-7), 3e-8};
    const double b[4] = {0.2 + 0.05 * (i % 6), 0.45 - 0.05 * (i % 5), 0.3, 0.25};
    double total;
    double ratio;
    size_t n = 2 + (size_t)(i % 3);
    ck_assert_int_eq(freeair_conductance_series(c, b, n, &total, &ratio), FREEAIR_OK);
    for (int j = 1; j < 20; j++) {
      double p2 = 7e5 * j / 20.0;
      worst = fmax(worst, relative(iso_flow(total, ratio, 7e5, p2), chain_flow(c, b, n, 7e5, p2)));
    }
  }
  ck_assert_double_lt(worst, 0.035);
  ck_assert_double_gt(worst, 1e-4); /* an approximation it is */
}
END_TEST

/* A single component in series or in parallel is itself, equal ones in parallel keep b. */
START_TEST(one_component_is_itself)
{
  const double c[3] = {2e-8, 2e-8, 2e-8};
  const double b[3] = {0.33, 0.33, 0.33};
  double total;
  double ratio;
  ck_assert_int_eq(freeair_conductance_series(c, b, 1, &total, &ratio), FREEAIR_OK);
  ck_assert(total == 2e-8 && ratio == 0.33);
  ck_assert_int_eq(freeair_conductance_parallel(c, b, 1, &total, &ratio), FREEAIR_OK);
  ck_assert_double_le(relative(ratio, 0.33), 1e-15);
  ck_assert_int_eq(freeair_conductance_parallel(c, b, 3, &total, &ratio), FREEAIR_OK);
  ck_assert_double_le(relative(total, 6e-8), 1e-15);
  ck_assert_double_le(relative(ratio, 0.33), 1e-15);
}
END_TEST

/* The conductance of the area of a conductance is that conductance. */
START_TEST(area_returns_to_the_start)
{
  double area;
  double c;
  ck_assert_int_eq(freeair_conductance_area(3e-8, 1.4, 287.05, &area), FREEAIR_OK);
  ck_assert_int_eq(freeair_conductance_from_area(area, 1.4, 287.05, &c), FREEAIR_OK);
  ck_assert_double_le(relative(c, 3e-8), 1e-15);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("conductance");
  tcase_add_test(tc, inverses_return_to_the_start);
  tcase_add_test(tc, choked_below_b);
  tcase_add_test(tc, series_is_exact_at_its_ends);
  tcase_add_test(tc, series_is_close_between_its_ends);
  tcase_add_test(tc, one_component_is_itself);
  tcase_add_test(tc, area_returns_to_the_start);
  return run_case("conductance", tc);
}
