/* SPDX-License-Identifier: MIT */
#include <freeair/catalogue.h>
#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>
#include <string.h>

static const freeair_structure *structure(void)
{
  for (size_t i = 0; i < freeair_structure_count(); i++)
    if (strcmp(freeair_structure_name(freeair_structure_at(i)), "freeair_evidence_readings") == 0)
      return freeair_structure_at(i);
  ck_abort_msg("no structure");
}

static const freeair_parameter *field(int32_t reading, int uncertainty)
{
  return freeair_structure_field(structure(), (size_t)(2 * reading + uncertainty));
}

static void put(freeair_evidence_readings *r, const freeair_parameter *f, double value)
{
  memcpy((char *)r + f->offset, &value, sizeof value);
}

static int32_t n_readings(void)
{
  return freeair_evidence_count(FREEAIR_EVIDENCE_KIND_READING);
}

/* The fields are the codes in their order, each with its uncertainty beside it. */
START_TEST(fields_and_codes_agree)
{
  ck_assert_uint_eq(freeair_structure_field_count(structure()), (size_t)(2 * n_readings()));
  for (int32_t code = 1; code < n_readings(); code++) {
    char name[80] = "u_";
    strcat(name, field(code, 0)->name);
    ck_assert_str_eq(field(code, 1)->name, name);
    ck_assert_str_eq(field(code, 1)->unit, field(code, 0)->unit);
    freeair_evidence_readings r = FREEAIR_EVIDENCE_READINGS_INIT;
    double value;
    double u;
    ck_assert_int_eq(freeair_evidence_readings_get(&r, code, &value, &u), FREEAIR_OK);
    ck_assert(isnan(value) && isnan(u));
    put(&r, field(code, 0), field(code, 0)->upper);
    put(&r, field(code, 1), 0.125);
    ck_assert_int_eq(freeair_evidence_readings_get(&r, code, &value, &u), FREEAIR_OK);
    ck_assert_double_eq(value, field(code, 0)->upper);
    ck_assert_double_eq(u, 0.125);
  }
}
END_TEST

/* The documented range of every field is the one that is enforced. */
START_TEST(ranges_are_those_documented)
{
  for (int32_t code = 1; code < n_readings(); code++)
    for (int u = 0; u < 2; u++) {
      const freeair_parameter *f = field(code, u);
      const int low = (f->flags & FREEAIR_PARAMETER_LOWER_CLOSED) != 0;
      ck_assert(f->flags & FREEAIR_PARAMETER_UPPER_CLOSED);
      const double inside[] = {low ? f->lower : nextafter(f->lower, INFINITY), f->upper};
      const double outside[] = {low ? nextafter(f->lower, -INFINITY) : f->lower, nextafter(f->upper, INFINITY),
                                INFINITY, -INFINITY};
      for (size_t i = 0; i < 6; i++) {
        freeair_evidence_readings r = FREEAIR_EVIDENCE_READINGS_INIT;
        put(&r, f, i < 2 ? inside[i] : outside[i - 2]);
        int32_t reading = -1;
        int32_t n = -1;
        const int32_t status = freeair_evidence_readings_check(&r, &reading, &n);
        ck_assert_msg(status == (i < 2 ? FREEAIR_OK : FREEAIR_ERR_DOMAIN), "%s %zu", f->name, i);
        ck_assert_int_eq(reading, i < 2 ? 0 : code);
        ck_assert_int_eq(n, i < 2 ? 1 - u : 0);
      }
    }
}
END_TEST

START_TEST(nothing_and_everything)
{
  freeair_evidence_readings r;
  int32_t reading;
  int32_t n;
  ck_assert_int_eq(freeair_evidence_readings_init(&r, sizeof r), FREEAIR_OK);
  ck_assert_int_eq(freeair_evidence_readings_check(&r, &reading, &n), FREEAIR_OK);
  ck_assert_int_eq(n, 0);
  for (int32_t code = 1; code < n_readings(); code++) put(&r, field(code, 0), field(code, 0)->upper);
  ck_assert_int_eq(freeair_evidence_readings_check(&r, &reading, &n), FREEAIR_OK);
  ck_assert_int_eq(n, n_readings() - 1);
  r.flags = 1;
  ck_assert_int_eq(freeair_evidence_readings_check(&r, &reading, &n), FREEAIR_ERR_DOMAIN);
  ck_assert_int_eq(n, 0);
}
END_TEST

int main(void)
{
  TCase *fields = tcase_create("fields");
  tcase_add_test(fields, fields_and_codes_agree);
  tcase_add_test(fields, ranges_are_those_documented);
  tcase_add_test(fields, nothing_and_everything);
  return run_case("evidence_readings", fields);
}
