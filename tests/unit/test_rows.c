/* SPDX-License-Identifier: MIT */
/* Every check value of tests/data, then each of those calls again with what a
 * caller may do wrong: nothing, not a number, infinite, out of range, null. */
#include "../rows/rows.h"

#include <check.h>
#include <fenv.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static rows all;

static int documented(const freeair_function *f, int32_t status)
{
  for (size_t i = 0; freeair_function_status_at(f, i) != 1000; i++)
    if (freeair_function_status_at(f, i) == status) return 1;
  return 0;
}

START_TEST(row_reproduces)
{
  const row *r = &all.row[_i];
  call c = call_of_row(r);
  ck_assert_msg(c.error[0] == '\0', "%s: %s", r->place, c.error);
  int32_t want = status_of(r->cell[ROW_STATUS]);
  ck_assert_msg(want != 1000, "%s: no status %s", r->place, r->cell[ROW_STATUS]);
  feclearexcept(FE_ALL_EXCEPT);
  call_run(&c);
  int raised = fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW);
  ck_assert_msg(c.status == want, "%s: %s: status %s, wanted %s", r->place, r->cell[ROW_ID],
                freeair_status_name(c.status), r->cell[ROW_STATUS]);
  ck_assert_msg(documented(c.f, want), "%s: %s does not document %s", r->place, r->cell[ROW_FUNCTION],
                r->cell[ROW_STATUS]);
  if (want < 0) {
    const char *left = call_output_not_nan(&c);
    ck_assert_msg(left == NULL, "%s: %s is not NaN after an error", r->place, left);
    ck_assert_msg(want == FREEAIR_ERR_OVERFLOW || raised == 0, "%s: raised floating-point flags %x", r->place,
                  (unsigned)raised);
  } else {
    ck_assert_msg(call_matches(&c, r), "%s: %s: %s", r->place, r->cell[ROW_ID], c.error);
  }
  const char *kinds[] = {"published", "independent", "identity", "practice"};
  int known = 0;
  for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++) known |= strcmp(r->cell[ROW_KIND], kinds[i]) == 0;
  ck_assert_msg(known, "%s: unknown kind '%s'", r->place, r->cell[ROW_KIND]);
  ck_assert_msg(r->cell[ROW_SOURCE][0] != '\0' || want < 0, "%s: no source", r->place);
  call_free(&c);
}
END_TEST

/* A changed call must fail with a documented code, NaN outputs and no flag raised. */
static void expect_rejected(call *c, const row *r, const char *what)
{
  feclearexcept(FE_ALL_EXCEPT);
  call_run(c);
  int raised = fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW);
  ck_assert_msg(c->status < 0, "%s: %s: accepted %s (%s)", r->place, r->cell[ROW_FUNCTION], what,
                freeair_status_name(c->status));
  ck_assert_msg(documented(c->f, c->status), "%s: %s: %s gives %s, which is not documented", r->place,
                r->cell[ROW_FUNCTION], what, freeair_status_name(c->status));
  const char *left = call_output_not_nan(c);
  ck_assert_msg(left == NULL, "%s: %s: %s is not NaN after %s", r->place, r->cell[ROW_FUNCTION], left, what);
  ck_assert_msg(raised == 0, "%s: %s: %s raises floating-point flags %x", r->place, r->cell[ROW_FUNCTION], what,
                (unsigned)raised);
}

static void probe_value(call *c, const row *r, const freeair_parameter *p, char *at)
{
  char before[8];
  char what[200];
  memcpy(before, at, p->size);
  if (p->type == FREEAIR_TYPE_DOUBLE && !(p->flags & FREEAIR_PARAMETER_OPTIONAL)) {
    value_store(p, NAN, at);
    snprintf(what, sizeof what, "%s = NaN", p->name);
    expect_rejected(c, r, what);
  }
  if (!isnan(p->lower) && (p->type == FREEAIR_TYPE_DOUBLE || p->type == FREEAIR_TYPE_INT32)) {
    const int whole = p->type != FREEAIR_TYPE_DOUBLE;
    const int low = (p->flags & FREEAIR_PARAMETER_LOWER_CLOSED) != 0;
    const int high = (p->flags & FREEAIR_PARAMETER_UPPER_CLOSED) != 0;
    double outside[4];
    size_t n = 0;
    const double below = whole ? p->lower - low : low ? nextafter(p->lower, -INFINITY) : p->lower;
    const double above = whole ? p->upper + high : high ? nextafter(p->upper, INFINITY) : p->upper;
    if (!(isinf(p->lower) && low)) outside[n++] = below;
    if (!(isinf(p->upper) && high)) outside[n++] = above;
    if (!whole && !(isinf(p->lower) && low)) outside[n++] = -INFINITY;
    if (!whole && !(isinf(p->upper) && high)) outside[n++] = INFINITY;
    for (size_t i = 0; i < n; i++) {
      value_store(p, outside[i], at);
      snprintf(what, sizeof what, "%s = %.17g outside %s", p->name, outside[i], p->range);
      expect_rejected(c, r, what);
    }
  }
  if (p->type == FREEAIR_TYPE_INT32 && p->choice[0] != '\0') {
    value_store(p, 987654321.0, at);
    snprintf(what, sizeof what, "%s = 987654321", p->name);
    expect_rejected(c, r, what);
  }
  memcpy(at, before, p->size);
}

static void probe_structure(call *c, const row *r, const freeair_parameter *p, char *at, int output)
{
  char what[200];
  char before[8];
  if (!output)
    for (size_t k = 2; k < freeair_structure_field_count(p->structure); k++) {
      const freeair_parameter *field = freeair_structure_field(p->structure, k);
      probe_value(c, r, field, at + field->offset);
    }
  if (output) return; /* call_run initialises outputs; their sizes are probed in test_structures */
  memcpy(before, at, 8);
  uint32_t size = 8;
  memcpy(at, &size, 4);
  snprintf(what, sizeof what, "%s.struct_size = 8", p->name);
  expect_rejected(c, r, what);
  /* a newer caller's tail: zeros pass, anything else would be lost */
  size = p->size + 8;
  memcpy(at, &size, 4);
  call_run(c);
  ck_assert_msg(c->status >= 0, "%s: %s: a longer %s with a zero tail is refused", r->place, r->cell[ROW_FUNCTION],
                p->name);
  at[p->size] = 1;
  snprintf(what, sizeof what, "an unknown field in %s", p->name);
  expect_rejected(c, r, what);
  at[p->size] = 0;
  memcpy(at, before, 8);
  uint32_t flags = 0x80000000u;
  memcpy(before, at + 4, 4);
  memcpy(at + 4, &flags, 4);
  snprintf(what, sizeof what, "an unknown flag in %s", p->name);
  expect_rejected(c, r, what);
  memcpy(at + 4, before, 4);
}

START_TEST(wrong_inputs_are_rejected)
{
  const row *r = &all.row[_i];
  if (status_of(r->cell[ROW_STATUS]) < 0) return;
  call c = call_of_row(r);
  ck_assert_msg(c.error[0] == '\0', "%s: %s", r->place, c.error);
  for (size_t i = 0; i < freeair_function_parameter_count(c.f); i++) {
    const freeair_parameter *p = freeair_function_parameter(c.f, i);
    const int output = (p->flags & FREEAIR_PARAMETER_OUTPUT) != 0;
    const int array = (p->flags & FREEAIR_PARAMETER_ARRAY) != 0;
    if (p->structure != NULL && !array && c.args[i] != NULL)
      probe_structure(&c, r, p, c.args[i], output);
    else if (!output && !array && p->type != FREEAIR_TYPE_TEXT && p->structure == NULL)
      probe_value(&c, r, p, c.args[i]);
    if ((p->structure != NULL || output || array) && !(p->flags & FREEAIR_PARAMETER_OPTIONAL)) {
      char what[200];
      char *before = c.args[i];
      c.args[i] = NULL;
      snprintf(what, sizeof what, "null for %s", p->name);
      expect_rejected(&c, r, what);
      c.args[i] = before;
    }
    if (p->type == FREEAIR_TYPE_TEXT && !output && !array) {
      char *before = c.args[i];
      const char *none = NULL;
      c.args[i] = (char *)&none;
      expect_rejected(&c, r, "null text");
      c.args[i] = before;
    }
  }
  call_run(&c);
  ck_assert_msg(c.status == status_of(r->cell[ROW_STATUS]), "%s: the probes changed the row", r->place);
  call_free(&c);
}
END_TEST

/* freeair_function_call on plain numbers gives what freeair_map gives. */
START_TEST(call_equals_map)
{
  const row *r = &all.row[_i];
  call c = call_of_row(r);
  ck_assert_msg(c.error[0] == '\0', "%s: %s", r->place, c.error);
  call_run(&c);
  const size_t n_in = freeair_function_input_count(c.f);
  const size_t n_out = freeair_function_output_count(c.f);
  double *in = calloc(n_in + 1, sizeof *in);
  double *out = calloc(n_out + 1, sizeof *out);
  size_t k = 0;
  int plain = 1;
  for (size_t i = 0; i < freeair_function_parameter_count(c.f); i++) {
    const freeair_parameter *p = freeair_function_parameter(c.f, i);
    plain &= p->type != FREEAIR_TYPE_TEXT && !(p->flags & FREEAIR_PARAMETER_ARRAY);
    if (!plain || (p->flags & FREEAIR_PARAMETER_OUTPUT)) continue;
    if (p->structure == NULL) {
      in[k++] = value_load(p, c.args[i]);
      continue;
    }
    /* plain numbers carry neither a size nor flags */
    plain &= *(uint32_t *)(void *)c.args[i] == p->size && *(uint32_t *)(void *)(c.args[i] + 4) == 0;
    for (size_t m = 2; m < freeair_structure_field_count(p->structure); m++) {
      const freeair_parameter *field = freeair_structure_field(p->structure, m);
      in[k++] = value_load(field, c.args[i] + field->offset);
    }
  }
  int32_t status = freeair_function_call(c.f, in, n_in, out, n_out);
  if (plain) ck_assert_int_eq(status, c.status);
  k = 0;
  for (size_t i = 0; plain && i < freeair_function_parameter_count(c.f); i++) {
    const freeair_parameter *p = freeair_function_parameter(c.f, i);
    if (!(p->flags & FREEAIR_PARAMETER_OUTPUT)) continue;
    size_t m = 2;
    do {
      const freeair_parameter *leaf = p->structure != NULL ? freeair_structure_field(p->structure, m) : p;
      double want = value_load(leaf, c.args[i] + leaf->offset);
      if (status < 0) want = NAN;
      ck_assert_msg((isnan(want) && isnan(out[k])) || want == out[k], "%s: %s differs", r->place, leaf->name);
      k++;
    } while (p->structure != NULL && ++m < freeair_structure_field_count(p->structure));
  }
  free(in);
  free(out);
  call_free(&c);
}
END_TEST

/* Every function has a row from outside this project, and one for each error it documents. Where the source is
 * common practice or a definition there is no outside: a row of practice or an identity will do. */
START_TEST(coverage)
{
  size_t missing = 0;
  for (size_t i = 0; i < freeair_function_count(); i++) {
    const freeair_function *f = freeair_function_at(i);
    const char *name = freeair_function_name(f);
    const char *source = freeair_function_source(f);
    int outside = 0;
    const int within = strcmp(source, "common practice") == 0 || strcmp(source, "definition") == 0;
    for (size_t k = 0; k < all.n; k++)
      outside |= strcmp(all.row[k].cell[ROW_FUNCTION], name) == 0 && status_of(all.row[k].cell[ROW_STATUS]) >= 0 &&
                 (within || strcmp(all.row[k].cell[ROW_KIND], "published") == 0 ||
                  strcmp(all.row[k].cell[ROW_KIND], "independent") == 0);
    if (!outside) missing++, fprintf(stderr, "%s: no published or independent row\n", name);
    for (size_t s = 0; freeair_function_status_at(f, s) != 1000; s++) {
      int32_t status = freeair_function_status_at(f, s);
      /* no convergence is a net under an iteration: a row where a call is known that falls into it */
      int seen = status >= 0 || status == FREEAIR_ERR_NULL || status == FREEAIR_ERR_VERSION ||
                 status == FREEAIR_ERR_NO_CONVERGENCE;
      for (size_t k = 0; k < all.n; k++)
        seen |= strcmp(all.row[k].cell[ROW_FUNCTION], name) == 0 && status_of(all.row[k].cell[ROW_STATUS]) == status;
      if (!seen) missing++, fprintf(stderr, "%s: no row for %s\n", name, freeair_status_name(status));
    }
  }
  ck_assert_msg(missing == 0, "%zu rows are missing", missing);
}
END_TEST

int main(void)
{
  const char *folder = getenv("FREEAIR_TEST_DATA");
  all = rows_read(folder != NULL ? folder : "tests/data");
  Suite *suite = suite_create("rows");
  TCase *values = tcase_create("values");
  tcase_set_timeout(values, 300);
  tcase_add_loop_test(values, row_reproduces, 0, (int)all.n);
  tcase_add_loop_test(values, wrong_inputs_are_rejected, 0, (int)all.n);
  tcase_add_loop_test(values, call_equals_map, 0, (int)all.n);
  tcase_add_test(values, coverage);
  suite_add_tcase(suite, values);
  SRunner *runner = srunner_create(suite);
  srunner_set_fork_status(runner, CK_NOFORK);
  srunner_run_all(runner, CK_NORMAL);
  int failed = srunner_ntests_failed(runner);
  srunner_free(runner);
  rows_free(&all);
  return failed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
