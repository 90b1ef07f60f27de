/* SPDX-License-Identifier: MIT */
#include <freeair/belt_section.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>

/* Each section is larger than the one before in every respect, and found again by its width. */
START_TEST(in_order)
{
  double before[6] = {0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
  for (int32_t section = FREEAIR_BELT_SECTION_A; section <= FREEAIR_BELT_SECTION_D; section++) {
    double now[6];
    int32_t found;
    ck_assert_int_eq(freeair_belt_section_data(section, &now[0], &now[1], &now[2], &now[3], &now[4], &now[5]),
                     FREEAIR_OK);
    for (int i = 0; i < 6; i++) {
      ck_assert_double_gt(now[i], before[i]);
      before[i] = now[i];
    }
    /* rubber, cord and cover: about as dense as water, a trapezium of flanks at 40 degrees */
    const double area = now[1] * (now[0] - 0.36 * now[1]);
    ck_assert(now[2] / area > 1000.0 && now[2] / area < 1500.0);
    for (double worn = 0.92; worn < 1.09; worn += 0.02) {
      ck_assert_int_eq(freeair_belt_section_from_width(worn * now[0], &found), FREEAIR_OK);
      ck_assert_int_eq(found, section);
    }
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, in_order);
  return run_case("belt_section", all);
}
