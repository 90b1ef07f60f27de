/* SPDX-License-Identifier: MIT */
#include <freeair/catalogue.h>
#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <ctype.h>
#include <math.h>
#include <string.h>

static const struct {
  int32_t kind;
  const char *enumeration;
} kinds[] = {{FREEAIR_EVIDENCE_KIND_CAUSE, "freeair_evidence_cause"},
             {FREEAIR_EVIDENCE_KIND_OBSERVATION, "freeair_evidence_observation"},
             {FREEAIR_EVIDENCE_KIND_READING, "freeair_evidence_reading"},
             {FREEAIR_EVIDENCE_KIND_CHECK, "freeair_evidence_check"}};

/* "FREEAIR_EVIDENCE_LP_SUCTION_VALVE" as "lp_suction_valve" */
static void lower(const char *constant, char *name)
{
  const char *from = constant + strlen("FREEAIR_EVIDENCE_");
  size_t i = 0;
  for (; from[i] != '\0'; i++) name[i] = (char)tolower((unsigned char)from[i]);
  name[i] = '\0';
}

START_TEST(every_constant_has_its_entry)
{
  for (size_t k = 0; k < sizeof kinds / sizeof kinds[0]; k++) {
    int32_t n = 0;
    for (size_t i = 0; i < freeair_constant_count(); i++) {
      if (strcmp(freeair_constant_enumeration(i), kinds[k].enumeration) != 0) continue;
      const int32_t code = freeair_constant_value(i);
      n++;
      if (code == 0) continue;
      char name[80];
      lower(freeair_constant_name(i), name);
      ck_assert_str_eq(freeair_evidence_name(kinds[k].kind, code), name);
    }
    ck_assert_int_eq(freeair_evidence_count(kinds[k].kind), n);
  }
}
END_TEST

START_TEST(names_find_their_codes)
{
  for (size_t k = 0; k < sizeof kinds / sizeof kinds[0]; k++)
    for (int32_t code = 1; code < freeair_evidence_count(kinds[k].kind); code++) {
      int32_t found = -1;
      ck_assert_int_eq(freeair_evidence_find(kinds[k].kind, freeair_evidence_name(kinds[k].kind, code), &found),
                       FREEAIR_OK);
      ck_assert_int_eq(found, code);
    }
  int32_t code = -1;
  ck_assert_int_eq(freeair_evidence_find(FREEAIR_EVIDENCE_KIND_CAUSE, "lp_suction", &code), FREEAIR_ERR_NOT_FOUND);
  ck_assert_int_eq(code, 0);
  ck_assert_int_eq(freeair_evidence_find(FREEAIR_EVIDENCE_KIND_CAUSE, "", &code), FREEAIR_ERR_NOT_FOUND);
  ck_assert_int_eq(freeair_evidence_find(99, "healthy", &code), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(freeair_evidence_find(FREEAIR_EVIDENCE_KIND_CAUSE, NULL, &code), FREEAIR_ERR_NULL);
  ck_assert_int_eq(freeair_evidence_find(FREEAIR_EVIDENCE_KIND_CAUSE, "healthy", NULL), FREEAIR_ERR_NULL);
}
END_TEST

/* Short titles, full sentences. */
START_TEST(entries_can_be_read)
{
  for (size_t k = 0; k < sizeof kinds / sizeof kinds[0]; k++)
    for (int32_t code = 1; code < freeair_evidence_count(kinds[k].kind); code++) {
      const char *title = freeair_evidence_title(kinds[k].kind, code);
      const char *text = freeair_evidence_text(kinds[k].kind, code);
      ck_assert_uint_gt(strlen(title), 2);
      ck_assert_uint_lt(strlen(title), 50);
      ck_assert(isupper((unsigned char)title[0]));
      ck_assert_uint_gt(strlen(text), 10);
      ck_assert_msg(text[strlen(text) - 1] == '.', "%s", text);
      ck_assert_ptr_null(strstr(text, "  "));
    }
  for (int32_t cause = 1; cause < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE); cause++) {
    const char *remedy = freeair_evidence_remedy(cause);
    const char *proof = freeair_evidence_proof(cause);
    ck_assert_uint_gt(strlen(remedy), 20);
    ck_assert_uint_gt(strlen(proof), 20);
    ck_assert(remedy[strlen(remedy) - 1] == '.' && proof[strlen(proof) - 1] == '.');
  }
}
END_TEST

/* What could hurt is said in the words themselves. */
START_TEST(words_of_caution)
{
  ck_assert_ptr_nonnull(strstr(freeair_evidence_remedy(FREEAIR_EVIDENCE_RELIEF_WEAK), "same set pressure"));
  ck_assert_ptr_nonnull(strstr(freeair_evidence_remedy(FREEAIR_EVIDENCE_GAUGE_OR_SWITCH), "stamped"));
  ck_assert_ptr_nonnull(strstr(freeair_evidence_proof(FREEAIR_EVIDENCE_UNLOADER_LEAK), "Never leave it blocked"));
  ck_assert_ptr_nonnull(strstr(freeair_evidence_remedy(FREEAIR_EVIDENCE_RUN_CAPACITOR), "Qualified"));
  ck_assert_ptr_nonnull(strstr(freeair_evidence_remedy(FREEAIR_EVIDENCE_RECEIVER_WATER), "inspected"));
  ck_assert_ptr_nonnull(
      strstr(freeair_evidence_text(FREEAIR_EVIDENCE_KIND_CHECK, FREEAIR_EVIDENCE_MEASURE_CAPACITORS), "discharged"));
  ck_assert_ptr_nonnull(
      strstr(freeair_evidence_text(FREEAIR_EVIDENCE_KIND_CHECK, FREEAIR_EVIDENCE_HEADS_OFF), "Locked out"));
}
END_TEST

/* Every observation and reading is brought by a check, and every check brings something. */
START_TEST(checks_bring_evidence)
{
  int brings[64] = {0};
  for (int32_t kind = FREEAIR_EVIDENCE_KIND_OBSERVATION; kind <= FREEAIR_EVIDENCE_KIND_READING; kind++)
    for (int32_t code = 1; code < freeair_evidence_count(kind); code++) {
      const int32_t check = freeair_evidence_check_for(kind, code);
      ck_assert_int_gt(check, 0);
      ck_assert_int_lt(check, freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CHECK));
      brings[check]++;
    }
  for (int32_t check = 1; check < freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CHECK); check++)
    ck_assert_msg(brings[check] > 0, "%s", freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CHECK, check));
}
END_TEST

START_TEST(unknown_codes_are_empty)
{
  const int32_t codes[] = {-1, 0, 1000, INT32_MAX, INT32_MIN};
  for (size_t i = 0; i < sizeof codes / sizeof codes[0]; i++) {
    ck_assert_str_eq(freeair_evidence_name(FREEAIR_EVIDENCE_KIND_OBSERVATION, codes[i]), "");
    ck_assert_str_eq(freeair_evidence_title(FREEAIR_EVIDENCE_KIND_READING, codes[i]), "");
    ck_assert_str_eq(freeair_evidence_text(FREEAIR_EVIDENCE_KIND_CHECK, codes[i]), "");
    ck_assert_str_eq(freeair_evidence_remedy(codes[i]), "");
    ck_assert_str_eq(freeair_evidence_proof(codes[i]), "");
    ck_assert_int_eq(freeair_evidence_check_for(FREEAIR_EVIDENCE_KIND_READING, codes[i]), 0);
    ck_assert_int_eq(freeair_evidence_count(codes[i]), codes[i] == 1 ? freeair_evidence_count(1) : 0);
    ck_assert_str_eq(freeair_evidence_name(codes[i], 1), "");
  }
  ck_assert_int_eq(freeair_evidence_check_for(FREEAIR_EVIDENCE_KIND_CAUSE, 1), 0);
}
END_TEST

int main(void)
{
  TCase *entries = tcase_create("entries");
  tcase_add_test(entries, every_constant_has_its_entry);
  tcase_add_test(entries, names_find_their_codes);
  tcase_add_test(entries, entries_can_be_read);
  tcase_add_test(entries, words_of_caution);
  tcase_add_test(entries, checks_bring_evidence);
  tcase_add_test(entries, unknown_codes_are_empty);
  return run_case("evidence", entries);
}
