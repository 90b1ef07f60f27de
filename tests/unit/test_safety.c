/* SPDX-License-Identifier: MIT */
#include <freeair/safety.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* The threshold never rises with the time of contact. */
START_TEST(a_longer_touch_burns_at_a_lower_temperature)
{
  double last = 1000.0;
  for (int i = 0; i < 200; i++) {
    double t;
    ck_assert_int_eq(freeair_safety_burn_threshold(pow(10.0, 6.0 * i / 199.0), &t), FREEAIR_OK);
    ck_assert_double_le(t, last);
    ck_assert_double_ge(t, 316.15);
    last = t;
  }
}
END_TEST

/* The limit is a gauge pressure: it moves with the barometer. */
START_TEST(cleaning_pressure_follows_the_barometer)
{
  double low;
  double high;
  ck_assert_int_eq(freeair_safety_cleaning_pressure(80e3, &low), FREEAIR_OK);
  ck_assert_int_eq(freeair_safety_cleaning_pressure(101e3, &high), FREEAIR_OK);
  ck_assert_double_le(fabs((high - low) - 21e3), 1e-9);
}
END_TEST

/* The class changes once, above 100 kJ. */
START_TEST(more_energy_is_no_smaller_hazard)
{
  int32_t hazard;
  ck_assert_int_eq(freeair_safety_stored_energy_hazard(1e5, &hazard), FREEAIR_OK);
  ck_assert_int_eq(hazard, FREEAIR_SAFETY_LOWER);
  ck_assert_int_eq(freeair_safety_stored_energy_hazard(nextafter(1e5, 2e5), &hazard), FREEAIR_OK);
  ck_assert_int_eq(hazard, FREEAIR_SAFETY_HIGH);
  ck_assert_int_eq(freeair_safety_stored_energy_hazard(NAN, &hazard), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(hazard, FREEAIR_SAFETY_UNKNOWN);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("safety");
  tcase_add_test(tc, a_longer_touch_burns_at_a_lower_temperature);
  tcase_add_test(tc, cleaning_pressure_follows_the_barometer);
  tcase_add_test(tc, more_energy_is_no_smaller_hazard);
  return run_case("safety", tc);
}
