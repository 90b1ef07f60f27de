/* SPDX-License-Identifier: MIT */
#include <freeair/purity.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* What just keeps the limits of a class is of that class. */
START_TEST(limits_belong_to_their_class)
{
  for (int32_t c = 1; c <= 7; c++) {
    double small, medium, large, mass;
    int32_t found;
    ck_assert_int_eq(freeair_purity_particle_limits(c, &small, &medium, &large, &mass), FREEAIR_OK);
    ck_assert_int_eq(freeair_purity_particle_class(fmin(small, 1e12), fmin(medium, 1e12), fmin(large, 1e12),
                                                   fmin(mass, 1.0), &found),
                     FREEAIR_OK);
    ck_assert_int_eq(found, c);
  }
  for (int32_t c = 1; c <= 9; c++) {
    double dew_point, liquid;
    int32_t found;
    ck_assert_int_eq(freeair_purity_water_limits(c, &dew_point, &liquid), FREEAIR_OK);
    ck_assert_int_eq(freeair_purity_water_class(c <= 6 ? dew_point : NAN, c <= 6 ? NAN : liquid, &found), FREEAIR_OK);
    ck_assert_int_eq(found, c);
  }
  for (int32_t c = 1; c <= 4; c++) {
    double oil;
    int32_t found;
    ck_assert_int_eq(freeair_purity_oil_limit(c, &oil), FREEAIR_OK);
    ck_assert_int_eq(freeair_purity_oil_class(oil, &found), FREEAIR_OK);
    ck_assert_int_eq(found, c);
    ck_assert_int_eq(freeair_purity_oil_class(oil * (1.0 + 1e-12), &found), FREEAIR_OK);
    ck_assert_int_eq(found, c < 4 ? c + 1 : FREEAIR_PURITY_CLASS_X);
  }
}
END_TEST

/* Dirtier air is never of a better class, and knowing less never makes it better. */
START_TEST(dirt_and_ignorance_never_help)
{
  int32_t last = 0;
  for (double oil = 1e-9; oil < 1e-4; oil *= 1.3) {
    int32_t found;
    ck_assert_int_eq(freeair_purity_oil_class(oil, &found), FREEAIR_OK);
    ck_assert_int_ge(found, last);
    last = found;
  }
  for (double small = 10.0; small < 1e7; small *= 7.0)
    for (double medium = 1.0; medium < 1e6; medium *= 7.0)
      for (double large = 0.5; large < 1e6; large *= 7.0) {
        int32_t all, fewer;
        if (freeair_purity_particle_class(small, medium, large, NAN, &all) != FREEAIR_OK) continue;
        ck_assert_int_eq(freeair_purity_particle_class(NAN, medium, large, NAN, &fewer), FREEAIR_OK);
        ck_assert_int_ge(fewer, all);
        ck_assert_int_eq(freeair_purity_particle_class(NAN, NAN, large, NAN, &fewer), FREEAIR_OK);
        ck_assert_int_ge(fewer, all);
      }
}
END_TEST

START_TEST(errors_leave_no_class)
{
  int32_t found = 5;
  ck_assert_int_eq(freeair_purity_particle_class(NAN, NAN, NAN, NAN, &found), FREEAIR_ERR_DATA);
  ck_assert_int_eq(found, 0);
  found = 5;
  ck_assert_int_eq(freeair_purity_water_class(NAN, NAN, &found), FREEAIR_ERR_DATA);
  ck_assert_int_eq(found, 0);
  found = 5;
  ck_assert_int_eq(freeair_purity_oil_class(NAN, &found), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(found, 0);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, limits_belong_to_their_class);
  tcase_add_test(all, dirt_and_ignorance_never_help);
  tcase_add_test(all, errors_leave_no_class);
  return run_case("purity", all);
}
