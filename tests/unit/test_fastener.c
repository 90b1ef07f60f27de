/* SPDX-License-Identifier: MIT */
#include <freeair/fastener.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

START_TEST(torque_and_preload_are_inverses)
{
  for (double d = 0.003; d < 0.04; d *= 1.3) {
    double torque;
    double preload;
    double u;
    ck_assert_int_eq(freeair_fastener_torque(20000.0, 0.18, d, &torque), FREEAIR_OK);
    ck_assert_int_eq(freeair_fastener_preload(torque, 0.04 * torque, 0.18, 0.018, d, &preload, &u), FREEAIR_OK);
    ck_assert_double_eq_tol(preload, 20000.0, 1e-9);
    ck_assert_double_eq_tol(u / preload, sqrt(0.04 * 0.04 + 0.1 * 0.1), 1e-13);
  }
}
END_TEST

START_TEST(fine_threads_have_more_area)
{
  const double inches[] = {0.25, 0.3125, 0.375, 0.4375, 0.5, 0.5625, 0.625, 0.75, 0.875, 1.0, 1.125, 1.25, 1.375, 1.5};
  for (size_t i = 0; i < sizeof inches / sizeof inches[0]; i++) {
    double d = 0.0254 * inches[i];
    double coarse;
    double fine;
    double less;
    double more;
    ck_assert_int_eq(freeair_fastener_pitch(FREEAIR_FASTENER_UNC, d, &coarse), FREEAIR_OK);
    ck_assert_int_eq(freeair_fastener_pitch(FREEAIR_FASTENER_UNF, d, &fine), FREEAIR_OK);
    ck_assert_double_lt(fine, coarse);
    ck_assert_int_eq(freeair_fastener_stress_area(FREEAIR_FASTENER_UNC, d, coarse, &less), FREEAIR_OK);
    ck_assert_int_eq(freeair_fastener_stress_area(FREEAIR_FASTENER_UNF, d, fine, &more), FREEAIR_OK);
    ck_assert_double_gt(more, less);
    ck_assert_double_lt(more, 0.7853982 * d * d);
  }
}
END_TEST

START_TEST(proof_lies_below_yield_and_yield_below_tensile)
{
  for (int32_t grade = FREEAIR_FASTENER_SAE_2; grade <= FREEAIR_FASTENER_ISO_12_9; grade++) {
    int found = 0;
    for (double d = 0.0016; d <= 0.04; d += 0.0002) {
      double proof;
      double yield;
      double tensile;
      int32_t status = freeair_fastener_strength(grade, d, &proof, &yield, &tensile);
      if (status == FREEAIR_ERR_NOT_FOUND) {
        ck_assert(isnan(proof) && isnan(yield) && isnan(tensile));
        continue;
      }
      ck_assert_int_eq(status, FREEAIR_OK);
      ck_assert_double_lt(proof, yield);
      ck_assert_double_lt(yield, tensile);
      found++;
    }
    ck_assert_int_gt(found, 40);
  }
}
END_TEST

START_TEST(the_property_class_says_its_strengths)
{
  /* tensile in hundreds of MPa before the point, yield over tensile after it */
  const struct {
    int32_t grade;
    double hundreds, tenths;
  } classes[] = {{FREEAIR_FASTENER_ISO_4_6, 4, 6}, {FREEAIR_FASTENER_ISO_5_6, 5, 6}, {FREEAIR_FASTENER_ISO_6_8, 6, 8},
                 {FREEAIR_FASTENER_ISO_8_8, 8, 8}, {FREEAIR_FASTENER_ISO_9_8, 9, 8}, {FREEAIR_FASTENER_ISO_10_9, 10, 9},
                 {FREEAIR_FASTENER_ISO_12_9, 12, 9}};
  for (size_t i = 0; i < sizeof classes / sizeof classes[0]; i++) {
    double proof;
    double yield;
    double tensile;
    ck_assert_int_eq(freeair_fastener_strength(classes[i].grade, 0.01, &proof, &yield, &tensile), FREEAIR_OK);
    ck_assert_double_eq_tol(tensile / 1e8, classes[i].hundreds, 0.41);
    ck_assert_double_eq_tol(10.0 * yield / tensile, classes[i].tenths, 0.1);
  }
}
END_TEST

START_TEST(without_friction_only_the_pitch_is_left)
{
  double k;
  ck_assert_int_eq(freeair_fastener_nut_factor(0.012, 0.00175, 0.0, 0.0, 0.0, &k), FREEAIR_OK);
  ck_assert_double_eq_tol(k * 0.012 * 2.0 * 3.14159265358979323846, 0.00175, 1e-16);
  double more;
  ck_assert_int_eq(freeair_fastener_nut_factor(0.012, 0.00175, 0.12, 0.12, 0.0156, &more), FREEAIR_OK);
  ck_assert_double_gt(more, 5.0 * k);
  ck_assert_double_lt(more, 0.2);
}
END_TEST

START_TEST(the_grade_function_is_the_sum_of_its_parts)
{
  double torque;
  double preload;
  double pitch;
  double area;
  double proof;
  double yield;
  double tensile;
  ck_assert_int_eq(freeair_fastener_torque_for_grade(FREEAIR_FASTENER_ISO, 0.016, FREEAIR_FASTENER_ISO_10_9, 0.75, 0.17,
                                                     &torque, &preload),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_fastener_pitch(FREEAIR_FASTENER_ISO, 0.016, &pitch), FREEAIR_OK);
  ck_assert_int_eq(freeair_fastener_stress_area(FREEAIR_FASTENER_ISO, 0.016, pitch, &area), FREEAIR_OK);
  ck_assert_int_eq(freeair_fastener_strength(FREEAIR_FASTENER_ISO_10_9, 0.016, &proof, &yield, &tensile), FREEAIR_OK);
  ck_assert_double_eq_tol(preload, 0.75 * proof * area, 1e-9);
  ck_assert_double_eq_tol(torque, 0.17 * 0.016 * preload, 1e-11);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("fastener");
  tcase_add_test(tc, torque_and_preload_are_inverses);
  tcase_add_test(tc, fine_threads_have_more_area);
  tcase_add_test(tc, proof_lies_below_yield_and_yield_below_tensile);
  tcase_add_test(tc, the_property_class_says_its_strengths);
  tcase_add_test(tc, without_friction_only_the_pitch_is_left);
  tcase_add_test(tc, the_grade_function_is_the_sum_of_its_parts);
  return run_case("fastener", tc);
}
