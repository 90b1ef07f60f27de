/* SPDX-License-Identifier: MIT */
#include <freeair/energy.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* Full load costs the same whatever the control; below it, what idles cheaper is cheaper. */
START_TEST(controls_in_order)
{
  for (int i = 0; i <= 10; i++) {
    double s = i / 10.0;
    double last = -1.0;
    const int32_t order[] = {FREEAIR_ENERGY_START_STOP, FREEAIR_ENERGY_VARIABLE_SPEED, FREEAIR_ENERGY_LOAD_UNLOAD,
                             FREEAIR_ENERGY_MODULATION};
    for (int k = 0; k < 4; k++) {
      double z, power, ratio;
      ck_assert_int_eq(freeair_energy_zero_load_share(order[k], &z), FREEAIR_OK);
      ck_assert_int_eq(freeair_energy_part_load(1000.0, z, s, &power, &ratio), FREEAIR_OK);
      ck_assert(i == 10 ? fabs(power - 1000.0) < 1e-9 : power > last);
      ck_assert(ratio >= 1.0 - 1e-15);
      last = power;
    }
  }
}
END_TEST

/* Loads and unloads are the straight line of part load. */
START_TEST(times_and_line_agree)
{
  for (double load = 0.0; load <= 100.0; load += 12.5) {
    double mean, energy, power, ratio;
    ck_assert_int_eq(freeair_energy_from_times(80e3, 24e3, load, 100.0 - load, &mean, &energy), FREEAIR_OK);
    ck_assert_int_eq(freeair_energy_part_load(80e3, 0.3, load / 100.0, &power, &ratio), FREEAIR_OK);
    ck_assert_double_le(fabs(mean - power), 1e-9);
    ck_assert_double_le(fabs(energy - 100.0 * mean), 1e-6);
  }
}
END_TEST

/* A profile in one step or cut into many. */
START_TEST(profile_is_a_sum)
{
  double flow[20], duration[20], whole_flow = 0.06, whole_time = 2000.0;
  for (int i = 0; i < 20; i++) {
    flow[i] = 0.06;
    duration[i] = 100.0;
  }
  double e1, a1, m1, s1, e2, a2, m2, s2;
  ck_assert_int_eq(freeair_energy_from_profile(flow, duration, 20, 0.1, 5e4, 0.25, &e1, &a1, &m1, &s1), FREEAIR_OK);
  ck_assert_int_eq(freeair_energy_from_profile(&whole_flow, &whole_time, 1, 0.1, 5e4, 0.25, &e2, &a2, &m2, &s2),
                   FREEAIR_OK);
  ck_assert_double_le(fabs(e1 / e2 - 1.0), 1e-13);
  ck_assert_double_le(fabs(s1 / s2 - 1.0), 1e-13);
  ck_assert_double_le(fabs(a1 / a2 - 1.0), 1e-13);
  ck_assert_double_eq(m1 + m2, 0.0);
}
END_TEST

/* After the periods of the payback the investment with its interest is just paid off. */
START_TEST(payback_pays_off)
{
  for (double interest = 0.01; interest < 0.2; interest += 0.03) {
    double simple, periods;
    ck_assert_int_eq(freeair_energy_payback(9000.0, 2000.0, interest, &simple, &periods), FREEAIR_OK);
    double value = 2000.0 * (1.0 - pow(1.0 + interest, -periods)) / interest;
    ck_assert_double_le(fabs(value / 9000.0 - 1.0), 1e-12);
    ck_assert_double_gt(periods, simple);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, controls_in_order);
  tcase_add_test(all, times_and_line_agree);
  tcase_add_test(all, profile_is_a_sum);
  tcase_add_test(all, payback_pays_off);
  return run_case("energy", all);
}
