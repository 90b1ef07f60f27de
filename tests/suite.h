/* SPDX-License-Identifier: MIT */
/* How the main() of a program of tests ends. */
#ifndef FREEAIR_TESTS_SUITE_H
#define FREEAIR_TESTS_SUITE_H

#include <check.h>
#include <stdlib.h>

/* Runs what the suite holds, and gives what main() returns. */
static inline int run_suite(Suite *suite)
{
  SRunner *runner = srunner_create(suite);
  srunner_run_all(runner, CK_ENV);
  const int failed = srunner_ntests_failed(runner);
  srunner_free(runner);
  return failed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}

/* The same for a suite of one case. */
static inline int run_case(const char *name, TCase *tcase)
{
  Suite *suite = suite_create(name);
  suite_add_tcase(suite, tcase);
  return run_suite(suite);
}

#endif
