/* SPDX-License-Identifier: MIT */
#include <freeair/version.h>

#include <check.h>
#include <stdio.h>
#include <stdlib.h>

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
  Suite *suite = suite_create("version");
  suite_add_tcase(suite, tcase);
  SRunner *runner = srunner_create(suite);
  srunner_run_all(runner, CK_NORMAL);
  int failed = srunner_ntests_failed(runner);
  srunner_free(runner);
  return failed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
