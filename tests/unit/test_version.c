/* SPDX-License-Identifier: MIT */
#include <freeair/version.h>

#include "../suite.h"

#include <check.h>
#include <stdio.h>

START_TEST(running_library_is_the_one_compiled_against)
{
  ck_assert_uint_eq(freeair_version_number(), FREEAIR_VERSION_NUMBER);
}
END_TEST

START_TEST(text_spells_the_number)
{
  char text[40];
  snprintf(text, sizeof text, "%d.%d.%d", FREEAIR_VERSION_MAJOR, FREEAIR_VERSION_MINOR, FREEAIR_VERSION_PATCH);
  ck_assert_str_eq(freeair_version_text(), text);
}
END_TEST

int main(void)
{
  TCase *tcase = tcase_create("version");
  tcase_add_test(tcase, running_library_is_the_one_compiled_against);
  tcase_add_test(tcase, text_spells_the_number);
  return run_case("version", tcase);
}
