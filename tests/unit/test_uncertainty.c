/* SPDX-License-Identifier: MIT */
#include "../rows/rows.h"
#include "../suite.h"

#include <check.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST = 512 };

static rows all;

/* The plain inputs of a row in the order of freeair_function_input; 0 where it has arrays or text. */
static size_t inputs_of(const call *c, double *x)
{
  size_t n = 0;
  for (size_t i = 0; i < freeair_function_parameter_count(c->f); i++) {
    const freeair_parameter *p = freeair_function_parameter(c->f, i);
    if ((p->flags & FREEAIR_PARAMETER_ARRAY) || p->type == FREEAIR_TYPE_TEXT) return 0;
    if (p->flags & FREEAIR_PARAMETER_OUTPUT) continue;
    if (p->structure == NULL) {
      x[n++] = value_load(p, c->args[i]);
      continue;
    }
    for (size_t k = 2; k < freeair_structure_field_count(p->structure); k++) {
      const freeair_parameter *field = freeair_structure_field(p->structure, k);
      x[n++] = value_load(field, c->args[i] + field->offset);
    }
  }
  return n;
}

/* Functions that solve a model of a whole machine take a second a call. */
static int slow(const freeair_function *f)
{
  const char *slow_topics[] = {"cycle", "prediction", "rating", "fault", "machine", "pumpup", "diagnosis"};
  for (size_t i = 0; i < sizeof slow_topics / sizeof slow_topics[0]; i++)
    if (strncmp(freeair_function_topic(f), slow_topics[i], strlen(slow_topics[i])) == 0) return 1;
  return 0;
}

/* Every function of the library that takes plain numbers can be propagated through, at every one of its check
 * values: the results are those of the call, the uncertainty grows in proportion to that of the inputs, and exact
 * inputs give exact results. */
START_TEST(any_function_by_name)
{
  double x[MOST], u[MOST], y[MOST], u_y[MOST], twice[MOST], plain[MOST];
  size_t tried = 0;
  size_t rough = 0;
  size_t unsteady = 0;
  for (size_t r = 0; r < all.n; r++) {
    if (status_of(all.row[r].cell[ROW_STATUS]) < 0) continue;
    call c = call_of_row(&all.row[r]);
    ck_assert_msg(c.error[0] == '\0', "%s: %s", all.row[r].place, c.error);
    const char *name = freeair_function_name(c.f);
    const size_t n = slow(c.f) ? 0 : inputs_of(&c, x);
    const size_t m = freeair_function_output_count(c.f);
    if (n > 0 && m > 0) {
      double *sensitivity = malloc(n * m * sizeof *sensitivity);
      const int32_t status = freeair_function_call(c.f, x, n, plain, m);
      for (size_t i = 0; i < n; i++) u[i] = 0.0;
      ck_assert_msg(freeair_uncertainty_propagate(name, x, u, n, NULL, 0, y, u_y, m, sensitivity, n * m) == status,
                    "%s: exact inputs", all.row[r].place);
      for (size_t k = 0; k < m; k++) {
        ck_assert_msg(y[k] == plain[k] || (isnan(y[k]) && isnan(plain[k])), "%s: y[%zu]", all.row[r].place, k);
        ck_assert(isnan(u_y[k]) || u_y[k] == 0.0);
      }
      for (size_t i = 0; i < n; i++)
        if (freeair_function_input(c.f, i)->type == FREEAIR_TYPE_DOUBLE && isfinite(x[i])) u[i] = 1e-5 * fabs(x[i]);
      int32_t got = freeair_uncertainty_propagate(name, x, u, n, NULL, 0, y, u_y, m, sensitivity, n * m);
      if (got == status) {
        for (size_t i = 0; i < n; i++) u[i] *= 2.0;
        got = freeair_uncertainty_propagate(name, x, u, n, NULL, 0, y, twice, m, sensitivity, n * m);
        for (size_t k = 0; k < m; k++) {
          ck_assert_msg(isnan(u_y[k]) || u_y[k] >= 0.0, "%s: u_y[%zu] = %g", all.row[r].place, k, u_y[k]);
          /* an infinite slope that goes unnoticed, as of x log x, must still be sure to a tenth */
          const double away = fabs(twice[k] - 2.0 * u_y[k]);
          ck_assert_msg(!(away > 0.2 * twice[k] + 1e-14 * fabs(y[k])), "%s: u_y[%zu]", all.row[r].place, k);
          unsteady += away > 1e-6 * twice[k] + 1e-14 * fabs(y[k]);
        }
      } else {
        /* a step or the edge of what has a value: refused, never wrong */
        ck_assert_msg(got == FREEAIR_ERR_NO_CONVERGENCE || got == FREEAIR_ERR_NO_SOLUTION || got == FREEAIR_ERR_DOMAIN,
                      "%s: %s", all.row[r].place, freeair_status_name(got));
        rough++;
      }
      tried++;
      free(sensitivity);
    }
    call_free(&c);
  }
  printf("propagated through %zu check values, %zu refused, %zu not in proportion\n", tried, rough, unsteady);
  ck_assert_uint_lt(unsteady * 100, tried);
  ck_assert_uint_gt(tried, 500);
  ck_assert_uint_lt(rough * 10, tried);
}
END_TEST

/* The limits on numbers of inputs and results leave no function out. */
START_TEST(no_function_is_too_large)
{
  for (size_t i = 0; i < freeair_function_count(); i++) {
    ck_assert_uint_le(freeair_function_input_count(freeair_function_at(i)), 512);
    ck_assert_uint_le(freeair_function_output_count(freeair_function_at(i)), 256);
  }
}
END_TEST

START_TEST(shares_add_up)
{
  const double c[] = {3.0, -1.5, 0.2, 7.0};
  const double u[] = {0.1, 0.4, 2.0, 0.05};
  double contribution[4], share[4], combined;
  for (int step = -8; step <= 8; step++) {
    double r[16] = {0.0};
    for (int i = 0; i < 4; i++) r[5 * i] = 1.0;
    r[1] = r[4] = step / 10.0;
    r[11] = r[14] = -step / 10.0;
    ck_assert_int_eq(freeair_uncertainty_budget(c, u, 4, r, 16, contribution, share, &combined), FREEAIR_OK);
    double sum = 0.0;
    double most = 0.0;
    for (int i = 0; i < 4; i++) {
      sum += share[i];
      most += fabs(contribution[i]);
    }
    ck_assert_double_le(fabs(sum - 1.0), 1e-14);
    ck_assert(combined > 0.0 && combined <= most);
  }
}
END_TEST

/* Readings of the same meter: full correlation adds with signs, none adds squares. */
START_TEST(correlation_from_none_to_full)
{
  const double c[] = {1.0, -1.0};
  const double u[] = {0.3, 0.4};
  double contribution[2], share[2], combined;
  double last = INFINITY;
  for (int step = -10; step <= 10; step++) {
    const double r[] = {1.0, step / 10.0, step / 10.0, 1.0};
    ck_assert_int_eq(freeair_uncertainty_budget(c, u, 2, r, 4, contribution, share, &combined), FREEAIR_OK);
    ck_assert_double_lt(combined, last);
    last = combined;
    if (step == -10) ck_assert_double_le(fabs(combined - 0.7), 1e-15);
    if (step == 0) ck_assert_double_le(fabs(combined - 0.5), 1e-15);
    if (step == 10) ck_assert_double_le(fabs(combined - 0.1), 1e-15);
  }
}
END_TEST

/* Covariance through two functions one after the other is that through both at once. */
START_TEST(covariance_passes_through_a_chain)
{
  const double first[] = {1.0, 2.0, -1.0, 0.5, 3.0, 1.0};
  const double u[] = {0.1, 0.2, 0.3};
  const double second[] = {2.0, 1.0, -1.0, 4.0};
  double v[4], d[4], both[6], direct[4], unused[4];
  ck_assert_int_eq(freeair_uncertainty_covariance(first, 6, u, 3, NULL, 0, v, d, 4), FREEAIR_OK);
  const double u1[] = {sqrt(v[0]), sqrt(v[3])};
  double chained[4];
  ck_assert_int_eq(freeair_uncertainty_covariance(second, 4, u1, 2, d, 4, chained, unused, 4), FREEAIR_OK);
  for (int a = 0; a < 2; a++)
    for (int i = 0; i < 3; i++) both[3 * a + i] = second[2 * a] * first[i] + second[2 * a + 1] * first[3 + i];
  ck_assert_int_eq(freeair_uncertainty_covariance(both, 6, u, 3, NULL, 0, direct, unused, 4), FREEAIR_OK);
  for (int k = 0; k < 4; k++) ck_assert_double_le(fabs(chained[k] - direct[k]), 1e-14);
}
END_TEST

/* As uncertainties shrink the second order fades. */
START_TEST(second_order_tends_to_first)
{
  const double x[] = {20.0, 3.0, 0.8};
  double last = INFINITY;
  for (double part = 0.1; part > 1e-3; part *= 0.5) {
    const double u[] = {20.0 * part, 3.0 * part, 0.8 * part};
    double y[3], u1[3], u2[3], shift[3], c[9];
    ck_assert_int_eq(freeair_uncertainty_propagate("impedance_from_phase", x, u, 3, NULL, 0, y, u1, 3, c, 9),
                     FREEAIR_OK);
    ck_assert_int_eq(freeair_uncertainty_propagate_second_order("impedance_from_phase", x, u, 3, y, u2, shift, 3),
                     FREEAIR_OK);
    double away = fabs(u2[2] / u1[2] - 1.0);
    ck_assert_double_lt(away, 0.3 * last);
    last = away;
    ck_assert_double_le(fabs(shift[2] / (y[2] * part * part) - 1.0), 20.0 * part * part); /* V/I: z (u_I/I)^2 */
  }
}
END_TEST

/* Limits of the range and places without a value leave derivatives one-sided, not wrong. */
START_TEST(derivatives_at_the_edge)
{
  const double u = 10.0;
  for (double at = 10990.0; at <= 11000.0; at += 2.5) { /* the range ends at 11000 m */
    double y, u_y, c;
    ck_assert_int_eq(freeair_uncertainty_propagate("atmosphere_pressure_from_altitude", &at, &u, 1, NULL, 0, &y,
                                                   &u_y, 1, &c, 1),
                     FREEAIR_OK);
    double slope = -y * 9.80665 / (287.05287 * (288.15 - 0.0065 * at)); /* hydrostatic equation */
    ck_assert_double_le(fabs(c / slope - 1.0), 1e-9);
  }
}
END_TEST

int main(void)
{
  const char *folder = getenv("FREEAIR_TEST_DATA");
  all = rows_read(folder != NULL ? folder : "tests/data");
  TCase *cases = tcase_create("all");
  tcase_set_timeout(cases, 120);
  tcase_add_test(cases, any_function_by_name);
  tcase_add_test(cases, no_function_is_too_large);
  tcase_add_test(cases, shares_add_up);
  tcase_add_test(cases, correlation_from_none_to_full);
  tcase_add_test(cases, covariance_passes_through_a_chain);
  tcase_add_test(cases, second_order_tends_to_first);
  tcase_add_test(cases, derivatives_at_the_edge);
  const int result = run_case("uncertainty", cases);
  rows_free(&all);
  return result;
}
