/* SPDX-License-Identifier: MIT */
#include <freeair/blowdown.h>
#include <freeair/flow.h>
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

static freeair_blowdown_vessel example(double p_vessel_pa, double p_line_pa, double exponent)
{
  freeair_blowdown_vessel v = FREEAIR_BLOWDOWN_VESSEL_INIT;
  v.v_m3 = 0.3;
  v.area_m2 = 5e-6;
  v.p_vessel_pa = p_vessel_pa;
  v.p_line_pa = p_line_pa;
  v.t_k = 300.0;
  v.exponent = exponent;
  return v;
}

static double time_to(const freeair_blowdown_vessel *v, double p2_pa)
{
  double t;
  ck_assert_int_eq(freeair_blowdown_time(v, p2_pa, &t), FREEAIR_OK);
  return t;
}

/* The pressure after the time to a pressure is that pressure, blowing down and filling. */
START_TEST(pressure_returns_to_the_start)
{
  for (int i = 0; i < 60; i++) {
    double exponent = 1.0 + 0.4 * (i % 5) / 4.0;
    freeair_blowdown_vessel v = example(12e5, 1.01e5, exponent);
    double p2 = 1.01e5 + spread(i, 60, 1.0, 10.9e5);
    double t = time_to(&v, p2);
    double back;
    double warm;
    ck_assert_int_eq(freeair_blowdown_pressure(&v, t, &back, &warm), FREEAIR_OK);
    ck_assert_double_le(relative(back, p2), 1e-12);
    ck_assert_double_le(relative(warm, 300.0 * pow(p2 / 12e5, (exponent - 1.0) / exponent)), 1e-12);
    v = example(1.01e5, 12e5, exponent);
    ck_assert_int_eq(freeair_blowdown_fill_time(&v, p2, &t), FREEAIR_OK);
    ck_assert_int_eq(freeair_blowdown_fill_pressure(&v, t, &back), FREEAIR_OK);
    ck_assert_double_le(relative(back, p2), 1e-13);
  }
}
END_TEST

/* Isothermal, the time is additive: start to middle and middle to end, wherever the middle lies. */
START_TEST(times_add_up_across_the_junction)
{
  freeair_blowdown_vessel whole = example(12e5, 1.01e5, 1.0);
  double total = time_to(&whole, 1.1e5);
  for (int i = 1; i < 50; i++) {
    double middle = 1.1e5 + (12e5 - 1.1e5) * i / 50.0;
    freeair_blowdown_vessel rest = example(middle, 1.01e5, 1.0);
    ck_assert_double_le(relative(time_to(&whole, middle) + time_to(&rest, 1.1e5), total), 1e-14);
  }
}
END_TEST

/* Over a small step the time is the mass lost over the mass flow. */
START_TEST(a_small_step_agrees_with_the_balance)
{
  for (int i = 0; i < 40; i++) {
    double p = 1.02e5 * pow(11.0, i / 39.0);
    double exponent = 1.0 + 0.4 * (i % 3) / 2.0;
    freeair_blowdown_vessel v = example(p, 1.01e5, exponent);
    double step = 1e-7 * (p - 1.01e5);
    double mass;
    ck_assert_int_eq(freeair_flow_mass_flow(5e-6, p, 300.0, 1.01e5, 1.4, 287.05287, &mass), FREEAIR_OK);
    double expected = 0.3 * (p - (p - step)) / (exponent * 287.05287 * 300.0 * mass);
    ck_assert_double_le(relative(time_to(&v, p - step), expected), 1e-6);
    v = example(1.01e5, p, exponent);
    double t;
    ck_assert_int_eq(freeair_flow_mass_flow(5e-6, p, 300.0, 1.01e5, 1.4, 287.05287, &mass), FREEAIR_OK);
    ck_assert_int_eq(freeair_blowdown_fill_time(&v, 1.01e5 + step, &t), FREEAIR_OK);
    expected = 0.3 * ((1.01e5 + step) - 1.01e5) / (exponent * 287.05287 * 300.0 * mass);
    ck_assert_double_le(relative(t, expected), 1e-6);
  }
}
END_TEST

/* Pressure falls and rises faster without heat from the shell; the exponents between lie between. */
START_TEST(a_fast_process_is_quicker)
{
  double last = INFINITY;
  double last_fill = INFINITY;
  for (int i = 0; i <= 20; i++) {
    freeair_blowdown_vessel v = example(12e5, 1.01e5, 1.0 + 0.02 * i);
    double t = time_to(&v, 1.5e5);
    ck_assert_double_lt(t, last);
    last = t;
    v = example(1.01e5, 12e5, 1.0 + 0.02 * i);
    ck_assert_int_eq(freeair_blowdown_fill_time(&v, 11e5, &t), FREEAIR_OK);
    ck_assert_double_lt(t, last_fill);
    last_fill = t;
  }
}
END_TEST

/* An exponent that tends to 1 gives the isothermal time. */
START_TEST(exponent_one_is_the_limit)
{
  freeair_blowdown_vessel a = example(12e5, 1.01e5, 1.0);
  freeair_blowdown_vessel b = example(12e5, 1.01e5, 1.0 + 1e-12);
  ck_assert_double_le(relative(time_to(&a, 1.2e5), time_to(&b, 1.2e5)), 1e-11);
}
END_TEST

/* Both ways end at the line pressure in a finite time and stay there. */
START_TEST(the_line_pressure_is_reached_and_kept)
{
  freeair_blowdown_vessel v = example(12e5, 1.01e5, 1.4);
  double t = time_to(&v, 1.01e5);
  double p;
  double warm;
  ck_assert(isfinite(t));
  ck_assert_int_eq(freeair_blowdown_pressure(&v, 2.0 * t, &p, &warm), FREEAIR_OK);
  ck_assert_double_eq(p, 1.01e5);
  ck_assert_double_le(relative(warm, 300.0 * pow(1.01 / 12.0, 0.4 / 1.4)), 1e-14);
  v = example(1.01e5, 12e5, 1.4);
  ck_assert_int_eq(freeair_blowdown_fill_time(&v, 12e5, &t), FREEAIR_OK);
  ck_assert_int_eq(freeair_blowdown_fill_pressure(&v, 2.0 * t, &p), FREEAIR_OK);
  ck_assert_double_eq(p, 12e5);
  v = example(5e5, 5e5, 1.2); /* nothing to do */
  ck_assert_double_eq(time_to(&v, 5e5), 0.0);
  ck_assert_int_eq(freeair_blowdown_pressure(&v, 10.0, &p, &warm), FREEAIR_OK);
  ck_assert(p == 5e5 && warm == 300.0);
}
END_TEST

/* What is not given is dry air. */
START_TEST(default_gas_is_dry_air)
{
  freeair_blowdown_vessel a = example(12e5, 1.01e5, 1.2);
  freeair_blowdown_vessel b = a;
  b.k = 1.4;
  b.r_j_kg_k = 287.05287;
  ck_assert_double_eq(time_to(&a, 2e5), time_to(&b, 2e5));
}
END_TEST

/* A smaller structure than the first release is refused, a larger one with an empty tail taken. */
START_TEST(structures_of_other_sizes)
{
  struct {
    freeair_blowdown_vessel v;
    double tail;
  } newer = {example(12e5, 1.01e5, 1.2), 0.0};
  double t;
  ck_assert_uint_eq(sizeof(freeair_blowdown_vessel), FREEAIR_BLOWDOWN_VESSEL_BASELINE);
  newer.v.struct_size = sizeof newer;
  ck_assert_int_eq(freeair_blowdown_time(&newer.v, 2e5, &t), FREEAIR_OK);
  newer.tail = 1.0;
  ck_assert_int_eq(freeair_blowdown_time(&newer.v, 2e5, &t), FREEAIR_ERR_VERSION);
  ck_assert(isnan(t));
  newer.v.struct_size = FREEAIR_BLOWDOWN_VESSEL_BASELINE - 8;
  ck_assert_int_eq(freeair_blowdown_time(&newer.v, 2e5, &t), FREEAIR_ERR_VERSION);
  freeair_blowdown_vessel v;
  ck_assert_int_eq(freeair_blowdown_vessel_init(&v, sizeof v), FREEAIR_OK);
  ck_assert(v.struct_size == sizeof v && v.flags == 0 && isnan(v.v_m3) && isnan(v.r_j_kg_k));
  ck_assert_int_eq(freeair_blowdown_vessel_init(&v, sizeof v - 8), FREEAIR_ERR_VERSION);
  ck_assert_int_eq(freeair_blowdown_vessel_init(NULL, sizeof v), FREEAIR_ERR_NULL);
}
END_TEST

/* Filled from empty the air is k times as hot as the line; the more there was, the less it warms. */
START_TEST(filling_warms_by_k_at_most)
{
  double t;
  ck_assert_int_eq(freeair_blowdown_fill_temperature(0.0, 300.0, 8e5, 300.0, 1.4, &t), FREEAIR_OK);
  ck_assert_double_le(relative(t, 420.0), 1e-15);
  double last = 420.0;
  for (int i = 1; i <= 8; i++) {
    ck_assert_int_eq(freeair_blowdown_fill_temperature(i * 1e5, 300.0, 8e5, 300.0, 1.4, &t), FREEAIR_OK);
    ck_assert_double_lt(t, last);
    last = t;
  }
  ck_assert_double_le(relative(last, 300.0), 1e-15);
}
END_TEST

/* Near the ultimate pressure the time grows without bound; with none it is additive. */
START_TEST(a_pump_that_leaks_never_gets_there)
{
  double a;
  double b;
  double c;
  ck_assert_int_eq(freeair_blowdown_evacuation_time(0.1, 0.01, 1e5, 1e3, 0.0, &a), FREEAIR_OK);
  ck_assert_int_eq(freeair_blowdown_evacuation_time(0.1, 0.01, 1e5, 1e4, 0.0, &b), FREEAIR_OK);
  ck_assert_int_eq(freeair_blowdown_evacuation_time(0.1, 0.01, 1e4, 1e3, 0.0, &c), FREEAIR_OK);
  ck_assert_double_le(relative(a, b + c), 1e-15);
  ck_assert_int_eq(freeair_blowdown_evacuation_time(0.1, 0.01, 1e5, 1e3, 999.0, &b), FREEAIR_OK);
  ck_assert_double_gt(b, 2.0 * a);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("blowdown");
  tcase_add_test(tc, pressure_returns_to_the_start);
  tcase_add_test(tc, times_add_up_across_the_junction);
  tcase_add_test(tc, a_small_step_agrees_with_the_balance);
  tcase_add_test(tc, a_fast_process_is_quicker);
  tcase_add_test(tc, exponent_one_is_the_limit);
  tcase_add_test(tc, the_line_pressure_is_reached_and_kept);
  tcase_add_test(tc, default_gas_is_dry_air);
  tcase_add_test(tc, structures_of_other_sizes);
  tcase_add_test(tc, filling_warms_by_k_at_most);
  tcase_add_test(tc, a_pump_that_leaks_never_gets_there);
  return run_case("blowdown", tc);
}
