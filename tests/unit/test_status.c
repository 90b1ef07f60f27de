/* SPDX-License-Identifier: MIT */
#include <freeair/catalogue.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <string.h>

/* The numbers are part of the ABI: programs compiled long ago compare with them. */
START_TEST(codes_are_never_renumbered)
{
  static const struct {
    int32_t code;
    int32_t number;
    const char *name;
  } frozen[] = {{FREEAIR_OK, 0, "FREEAIR_OK"},
                {FREEAIR_WARN_EXTRAPOLATED, 1, "FREEAIR_WARN_EXTRAPOLATED"},
                {FREEAIR_WARN_TRANSITION, 2, "FREEAIR_WARN_TRANSITION"},
                {FREEAIR_WARN_INCONSISTENT, 3, "FREEAIR_WARN_INCONSISTENT"},
                {FREEAIR_WARN_TRUNCATED, 4, "FREEAIR_WARN_TRUNCATED"},
                {FREEAIR_WARN_LIMIT, 5, "FREEAIR_WARN_LIMIT"},
                {FREEAIR_ERR_NULL, -1, "FREEAIR_ERR_NULL"},
                {FREEAIR_ERR_DOMAIN, -2, "FREEAIR_ERR_DOMAIN"},
                {FREEAIR_ERR_NO_SOLUTION, -3, "FREEAIR_ERR_NO_SOLUTION"},
                {FREEAIR_ERR_NO_CONVERGENCE, -4, "FREEAIR_ERR_NO_CONVERGENCE"},
                {FREEAIR_ERR_OVERFLOW, -5, "FREEAIR_ERR_OVERFLOW"},
                {FREEAIR_ERR_VERSION, -6, "FREEAIR_ERR_VERSION"},
                {FREEAIR_ERR_DATA, -7, "FREEAIR_ERR_DATA"},
                {FREEAIR_ERR_NOT_FOUND, -8, "FREEAIR_ERR_NOT_FOUND"},
                {FREEAIR_ERR_DIMENSION, -9, "FREEAIR_ERR_DIMENSION"},
                {FREEAIR_ERR_UNSUPPORTED, -10, "FREEAIR_ERR_UNSUPPORTED"}};
  for (size_t i = 0; i < sizeof frozen / sizeof frozen[0]; i++) {
    ck_assert_int_eq(frozen[i].code, frozen[i].number);
    ck_assert_str_eq(freeair_status_name(frozen[i].number), frozen[i].name);
  }
}
END_TEST

/* Every constant of the enumeration has a name and a sentence of its own, and
 * says by its name and by its sign whether it is a warning or an error. */
START_TEST(every_code_speaks)
{
  size_t n = 0;
  for (size_t i = 0; i < freeair_constant_count(); i++) {
    if (strcmp(freeair_constant_enumeration(i), "freeair_status") != 0) continue;
    int32_t code = freeair_constant_value(i);
    ck_assert_str_eq(freeair_status_name(code), freeair_constant_name(i));
    ck_assert_uint_gt(strlen(freeair_status_text(code)), 4);
    ck_assert_int_eq(strncmp(freeair_status_name(code), "FREEAIR_WARN_", 13) == 0, code > 0);
    ck_assert_int_eq(strncmp(freeair_status_name(code), "FREEAIR_ERR_", 12) == 0, code < 0);
    for (size_t k = 0; k < i; k++)
      if (strcmp(freeair_constant_enumeration(k), "freeair_status") == 0)
        ck_assert_str_ne(freeair_status_text(freeair_constant_value(k)), freeair_status_text(code));
    n++;
  }
  ck_assert_uint_ge(n, 16);
}
END_TEST

START_TEST(unknown_codes_are_answered)
{
  static const int32_t unknown[] = {1000, -1000, INT32_MAX, INT32_MIN};
  for (size_t i = 0; i < sizeof unknown / sizeof unknown[0]; i++) {
    ck_assert_str_eq(freeair_status_name(unknown[i]), "FREEAIR_UNKNOWN");
    ck_assert_uint_gt(strlen(freeair_status_text(unknown[i])), 4);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, codes_are_never_renumbered);
  tcase_add_test(all, every_code_speaks);
  tcase_add_test(all, unknown_codes_are_answered);
  return run_case("status", all);
}
