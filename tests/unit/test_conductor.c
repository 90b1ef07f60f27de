/* SPDX-License-Identifier: MIT */
#include <freeair/conductor.h>
#include <freeair/status.h>
#include <freeair/supply.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

START_TEST(sizes_rise_and_resistances_fall)
{
  const int expected[] = {24, 22, 17};
  for (int32_t kind = FREEAIR_CONDUCTOR_COPPER; kind <= FREEAIR_CONDUCTOR_ALUMINIUM; kind++) {
    double last_area = 0.0;
    double last_r = INFINITY;
    double area;
    double r;
    int n = 0;
    for (; freeair_conductor_size(kind, n, &area, &r) == FREEAIR_OK; n++) {
      ck_assert_double_gt(area, last_area);
      ck_assert_double_lt(r, last_r);
      double found;
      ck_assert_int_eq(freeair_conductor_table_resistance(kind, area, &found), FREEAIR_OK);
      ck_assert_double_eq(found, r);
      last_area = area;
      last_r = r;
    }
    ck_assert_int_eq(n, expected[kind - 1]);
    ck_assert(isnan(area) && isnan(r));
  }
}
END_TEST

START_TEST(the_table_is_near_the_metal)
{
  for (int32_t kind = FREEAIR_CONDUCTOR_COPPER; kind <= FREEAIR_CONDUCTOR_ALUMINIUM; kind++) {
    double area;
    double table;
    for (int32_t i = 0; freeair_conductor_size(kind, i, &area, &table) == FREEAIR_OK; i++) {
      double metal;
      ck_assert_int_eq(freeair_conductor_resistance(kind, area, 293.15, &metal), FREEAIR_OK);
      ck_assert_double_gt(table, metal);
      ck_assert_double_lt(table, 1.17 * metal);
    }
  }
}
END_TEST

START_TEST(a_gauge_is_found_by_its_own_area)
{
  double last = INFINITY;
  for (int32_t n = -3; n <= 46; n++) {
    double d;
    double area;
    int32_t found;
    ck_assert_int_eq(freeair_conductor_gauge(n, &d, &area), FREEAIR_OK);
    ck_assert_double_lt(area, last);
    if (area >= 1e-8 && area <= 0.0001073) {
      ck_assert_int_eq(freeair_conductor_gauge_from_area(area, &found), FREEAIR_OK);
      ck_assert_int_eq(found, n);
    }
    last = area;
  }
}
END_TEST

START_TEST(six_gauges_halve_the_diameter)
{
  double thick;
  double thin;
  double area;
  ck_assert_int_eq(freeair_conductor_gauge(8, &thick, &area), FREEAIR_OK);
  ck_assert_int_eq(freeair_conductor_gauge(14, &thin, &area), FREEAIR_OK);
  ck_assert_double_eq_tol(thick / thin, 2.005, 0.001);
}
END_TEST

START_TEST(the_drop_is_that_of_the_supply_topic)
{
  for (int32_t phases = 1; phases <= 3; phases += 2) {
    double run;
    double loss;
    double same;
    ck_assert_int_eq(freeair_conductor_drop(40.0, 0.0089, 8e-5, 26.0, 0.86, phases, &run, &loss), FREEAIR_OK);
    ck_assert_int_eq(freeair_supply_voltage_drop(26.0, 0.0089 * 40.0, 8e-5 * 40.0, 0.86, phases, &same), FREEAIR_OK);
    ck_assert_double_eq_tol(run, same, 1e-13);
    ck_assert_double_eq_tol(loss, (phases == 1 ? 2.0 : 3.0) * 26.0 * 26.0 * 0.0089 * 40.0, 1e-10);
  }
}
END_TEST

START_TEST(the_size_found_is_the_first_that_does)
{
  double area;
  double last = 0.0;
  for (double length = 1.0; length < 400.0; length *= 1.3) {
    double drop;
    double r;
    double other;
    double loss;
    double smaller;
    ck_assert_int_eq(freeair_conductor_size_for_drop(FREEAIR_CONDUCTOR_COPPER, length, 343.15, 8e-5, 26.0, 0.9, 1,
                                                     6.9, &area, &drop),
                     FREEAIR_OK);
    ck_assert_double_le(drop, 6.9);
    ck_assert_double_ge(area, last);
    last = area;
    int32_t i = 0;
    while (freeair_conductor_size(FREEAIR_CONDUCTOR_COPPER, i, &smaller, &r) == FREEAIR_OK && smaller < area) i++;
    if (i == 0) continue;
    ck_assert_int_eq(freeair_conductor_size(FREEAIR_CONDUCTOR_COPPER, i - 1, &smaller, &r), FREEAIR_OK);
    ck_assert_int_eq(freeair_conductor_resistance_at(r, 0.004, 343.15, &r), FREEAIR_OK);
    ck_assert_int_eq(freeair_conductor_drop(length, r, 8e-5, 26.0, 0.9, 1, &other, &loss), FREEAIR_OK);
    ck_assert_double_gt(other, 6.9);
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("conductor");
  tcase_add_test(tc, sizes_rise_and_resistances_fall);
  tcase_add_test(tc, the_table_is_near_the_metal);
  tcase_add_test(tc, a_gauge_is_found_by_its_own_area);
  tcase_add_test(tc, six_gauges_halve_the_diameter);
  tcase_add_test(tc, the_drop_is_that_of_the_supply_topic);
  tcase_add_test(tc, the_size_found_is_the_first_that_does);
  return run_case("conductor", tc);
}
