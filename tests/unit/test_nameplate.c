/* SPDX-License-Identifier: MIT */
#include <freeair/nameplate.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

START_TEST(the_bands_of_the_code_letters_join)
{
  double last = 0.0;
  int n = 0;
  for (int32_t code = 'A'; code <= 'V'; code++) {
    double lower;
    double upper;
    int32_t status = freeair_nameplate_code_band(code, &lower, &upper);
    if (code == 'I' || code == 'O' || code == 'Q') {
      ck_assert_int_eq(status, FREEAIR_ERR_NOT_FOUND);
      ck_assert(isnan(lower) && isnan(upper));
      continue;
    }
    ck_assert_int_eq(status, FREEAIR_OK);
    ck_assert_double_eq(lower, last);
    ck_assert_double_gt(upper, lower);
    last = upper;
    n++;
  }
  ck_assert_int_eq(n, 19);
  ck_assert(isinf(last));
}
END_TEST

START_TEST(a_current_within_a_band_has_its_letter)
{
  for (int32_t code = 'A'; code <= 'V'; code++) {
    double lower;
    double upper;
    if (freeair_nameplate_locked_rotor_current(code, 3728.5, 230.0, 1, &lower, &upper) < 0) continue;
    double middle = isinf(upper) ? 2.0 * lower : 0.5 * (lower + upper);
    int32_t found;
    ck_assert_int_eq(freeair_nameplate_code_from_current(middle, 230.0, 3728.5, 1, &found), FREEAIR_OK);
    ck_assert_int_eq(found, code);
  }
}
END_TEST

START_TEST(full_load_current_grows_with_power_and_falls_with_voltage)
{
  const double hp = 745.69987158227022;
  const double powers[] = {0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200};
  const double volts[] = {200.0, 208.0, 230.0, 460.0, 575.0};
  for (size_t j = 0; j < 5; j++) {
    double last = 0.0;
    for (size_t i = 0; i < sizeof powers / sizeof powers[0]; i++) {
      double a;
      ck_assert_int_eq(freeair_nameplate_full_load_current(powers[i] * hp, volts[j], 3, &a), FREEAIR_OK);
      ck_assert_double_gt(a, last);
      last = a;
      double previous;
      if (j == 0) continue;
      ck_assert_int_eq(freeair_nameplate_full_load_current(powers[i] * hp, volts[j - 1], 3, &previous), FREEAIR_OK);
      ck_assert_double_lt(a, previous);
    }
  }
}
END_TEST

START_TEST(better_classes_and_larger_motors_are_more_efficient)
{
  for (int32_t poles = 2; poles <= 6; poles += 2)
    for (int32_t c = FREEAIR_NAMEPLATE_IE1; c <= FREEAIR_NAMEPLATE_IE4; c++) {
      double last = 0.0;
      for (double w = 750.0; w <= 200000.0; w *= 1.05) {
        double efficiency;
        ck_assert_int_eq(freeair_nameplate_efficiency(c, poles, w, &efficiency), FREEAIR_OK);
        ck_assert_double_ge(efficiency, last);
        ck_assert_double_lt(efficiency, 0.97);
        last = efficiency;
        double worse;
        if (c == FREEAIR_NAMEPLATE_IE1) continue;
        ck_assert_int_eq(freeair_nameplate_efficiency(c - 1, poles, w, &worse), FREEAIR_OK);
        ck_assert_double_gt(efficiency, worse);
      }
    }
}
END_TEST

START_TEST(the_nameplate_itself_is_full_load)
{
  double load;
  ck_assert_int_eq(freeair_nameplate_load_from_current(28.0, 28.0, 230.0, 230.0, &load), FREEAIR_OK);
  ck_assert_double_eq(load, 1.0);
  ck_assert_int_eq(freeair_nameplate_load_from_speed(29.25, 30.0, 29.25, 1.0, &load), FREEAIR_OK);
  ck_assert_double_eq(load, 1.0);
  ck_assert_int_eq(freeair_nameplate_load_from_speed(30.0, 30.0, 29.25, 0.9, &load), FREEAIR_OK);
  ck_assert_double_eq(load, 0.0);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("nameplate");
  tcase_add_test(tc, the_bands_of_the_code_letters_join);
  tcase_add_test(tc, a_current_within_a_band_has_its_letter);
  tcase_add_test(tc, full_load_current_grows_with_power_and_falls_with_voltage);
  tcase_add_test(tc, better_classes_and_larger_motors_are_more_efficient);
  tcase_add_test(tc, the_nameplate_itself_is_full_load);
  return run_case("nameplate", tc);
}
