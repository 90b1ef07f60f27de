/* SPDX-License-Identifier: MIT */
#include <freeair/catalogue.h>
#include <freeair/caution.h>

#include "../suite.h"

#include <check.h>
#include <string.h>

/* Every caution is one bit of its own, with its name and one full sentence. */
START_TEST(every_caution_speaks)
{
  uint32_t seen = 0;
  size_t n = 0;
  for (size_t i = 0; i < freeair_constant_count(); i++) {
    if (strcmp(freeair_constant_enumeration(i), "freeair_caution") != 0) continue;
    uint32_t bit = (uint32_t)freeair_constant_value(i);
    ck_assert(bit != 0 && (bit & (bit - 1)) == 0);
    ck_assert((seen & bit) == 0);
    seen |= bit;
    ck_assert_str_eq(freeair_caution_name(bit), freeair_constant_name(i));
    const char *text = freeair_caution_text(bit);
    ck_assert_uint_gt(strlen(text), 20);
    ck_assert(text[0] >= 'A' && text[0] <= 'Z');
    ck_assert(text[strlen(text) - 1] == '.');
    n++;
  }
  ck_assert_uint_ge(n, 14);
  /* a front end walks the bits of a mask: those it does not know say nothing */
  for (uint32_t bit = 1; bit != 0; bit <<= 1) ck_assert_int_eq(freeair_caution_text(bit)[0] != '\0', (seen & bit) != 0);
}
END_TEST

START_TEST(anything_but_one_bit_is_empty)
{
  ck_assert_str_eq(freeair_caution_text(0), "");
  ck_assert_str_eq(freeair_caution_name(0), "");
  ck_assert_str_eq(freeair_caution_text(FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_HOT), "");
  ck_assert_str_eq(freeair_caution_name(UINT32_MAX), "");
}
END_TEST

/* What must never be missing from the words. */
START_TEST(texts_say_what_matters)
{
  static const struct {
    uint32_t caution;
    const char *word;
  } table[] = {{FREEAIR_CAUTION_ISOLATE, "lock it out"},     {FREEAIR_CAUTION_DEPRESSURISE, "zero"},
               {FREEAIR_CAUTION_STORED_ENERGY, "stamped"},   {FREEAIR_CAUTION_RELIEF_VALVE, "Never plug"},
               {FREEAIR_CAUTION_ROTATING, "guard"},          {FREEAIR_CAUTION_VESSEL, "inspector"},
               {FREEAIR_CAUTION_CAPACITOR, "discharges it"}, {FREEAIR_CAUTION_LIVE, "qualified"},
               {FREEAIR_CAUTION_OIL_MIST, "ignite"},         {FREEAIR_CAUTION_BREATHING, "rules"}};
  for (size_t i = 0; i < sizeof table / sizeof table[0]; i++)
    ck_assert_msg(strstr(freeair_caution_text(table[i].caution), table[i].word) != NULL, "%s lacks '%s'",
                  freeair_caution_name(table[i].caution), table[i].word);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, every_caution_speaks);
  tcase_add_test(all, anything_but_one_bit_is_empty);
  tcase_add_test(all, texts_say_what_matters);
  return run_case("caution", all);
}
