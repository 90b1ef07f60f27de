/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/uncertainty.h>

#include "internal/check.h"
#include "internal/derivative.h"
#include "internal/uncertainty.h"

#include <string.h>

static void fill(double *x, size_t n, double value)
{
  for (size_t i = 0; x != NULL && i < n; i++) x[i] = value;
}

static int all_within(const double *x, size_t n, double low, double high)
{
  for (size_t i = 0; i < n; i++)
    if (!freeair__closed(x[i], low, high)) return 0;
  return 1;
}

int32_t freeair__measurement_find(const char *function, freeair__measurement *m)
{
  char full[128] = "freeair_";
  m->f = freeair_function_find(function);
  for (size_t i = 0; m->f == NULL && i < sizeof full - 8; i++) {
    full[8 + i] = function[i];
    if (function[i] == '\0') {
      m->f = freeair_function_find(full);
      break;
    }
  }
  if (m->f == NULL) return FREEAIR_ERR_NOT_FOUND;
  m->n_in = freeair_function_input_count(m->f);
  m->n_out = freeair_function_output_count(m->f);
  if (m->n_in > FREEAIR__INPUTS_MOST || m->n_out > FREEAIR__RESULTS_MOST) return FREEAIR_ERR_UNSUPPORTED;
  for (size_t i = 0; i < freeair_function_parameter_count(m->f); i++) {
    const freeair_parameter *p = freeair_function_parameter(m->f, i);
    if ((p->flags & FREEAIR_PARAMETER_ARRAY) || p->type == FREEAIR_TYPE_TEXT) return FREEAIR_ERR_UNSUPPORTED;
  }
  return FREEAIR_OK;
}

int32_t freeair__measurement_value(const void *context, const double *x, double *y)
{
  const freeair__measurement *m = context;
  return freeair_function_call(m->f, x, m->n_in, y, m->n_out);
}

int freeair__measurement_inputs_valid(const freeair__measurement *m, const double *x, const double *u)
{
  for (size_t i = 0; i < m->n_in; i++) {
    if (!freeair__closed(u[i], 0.0, 1e150)) return 0;
    if (u[i] > 0.0 && (freeair_function_input(m->f, i)->type != FREEAIR_TYPE_DOUBLE || !isfinite(x[i]))) return 0;
  }
  return 1;
}

int32_t freeair__correlation_check(const double *r, size_t n_r, size_t n)
{
  const double rounding = 1e-12;
  if (n_r == 0) return FREEAIR_OK;
  if (r == NULL) return FREEAIR_ERR_NULL;
  if (n_r != n * n) return FREEAIR_ERR_DATA;
  if (!all_within(r, n_r, -1.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++) {
    if (r[i * n + i] < 1.0 - rounding) return FREEAIR_ERR_DOMAIN;
    for (size_t k = 0; k < i; k++)
      if (fabs(r[i * n + k] - r[k * n + i]) > rounding) return FREEAIR_ERR_DOMAIN;
  }
  return FREEAIR_OK;
}

/* sum_i sum_j a_i u_i r_ij u_j b_j; size receives the sum of its absolute terms */
static double covariance_of(const double *a, const double *b, const double *u, size_t n, const double *r, size_t n_r,
                            double *size)
{
  double sum = 0.0;
  *size = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!(u[i] > 0.0)) continue;
    for (size_t k = n_r > 0 ? 0 : i; k < (n_r > 0 ? n : i + 1); k++) {
      if (!(u[k] > 0.0)) continue;
      const double term = a[i] * u[i] * (n_r > 0 ? r[i * n + k] : 1.0) * (b[k] * u[k]);
      sum += term;
      *size += fabs(term);
    }
  }
  return sum;
}

/* Standard uncertainty; NaN where the matrix of correlation makes a variance negative. */
static double combine(const double *c, const double *u, size_t n, const double *r, size_t n_r)
{
  double scale = 0.0;
  for (size_t i = 0; i < n; i++)
    if (u[i] > 0.0) scale = fmax(scale, fabs(c[i]) * u[i]);
  if (!(scale > 0.0)) return 0.0;
  double sum = 0.0;
  double size = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!(u[i] > 0.0)) continue;
    const double part = c[i] * u[i] / scale;
    for (size_t k = n_r > 0 ? 0 : i; k < (n_r > 0 ? n : i + 1); k++) {
      if (!(u[k] > 0.0)) continue;
      const double term = part * (n_r > 0 ? r[i * n + k] : 1.0) * (c[k] * u[k] / scale);
      sum += term;
      size += fabs(term);
    }
  }
  if (sum < -1e-9 * size) return NAN;
  return scale * sqrt(fmax(sum, 0.0));
}

int32_t freeair_uncertainty_budget(const double *sensitivity, const double *u, size_t n, const double *correlation,
                                   size_t n_correlation, double *contribution, double *share, double *combined)
{
  const int sized = n >= 1 && n <= 65535;
  freeair__set_nan(combined);
  if (sized) {
    fill(contribution, n, NAN);
    fill(share, n, NAN);
  }
  if (sensitivity == NULL || u == NULL || contribution == NULL || share == NULL || combined == NULL)
    return FREEAIR_ERR_NULL;
  if (!sized) return FREEAIR_ERR_DATA;
  const int32_t status = freeair__correlation_check(correlation, n_correlation, n);
  if (status < 0) return status;
  if (!all_within(sensitivity, n, -1e150, 1e150) || !all_within(u, n, 0.0, 1e150)) return FREEAIR_ERR_DOMAIN;
  const double all = combine(sensitivity, u, n, correlation, n_correlation);
  if (isnan(all)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++) {
    double with = 0.0;
    contribution[i] = sensitivity[i] * u[i];
    for (size_t k = 0; all > 0.0 && n_correlation > 0 && k < n; k++)
      with += correlation[i * n + k] * (sensitivity[k] * u[k] / all);
    if (n_correlation == 0 && all > 0.0) with = contribution[i] / all;
    share[i] = all > 0.0 ? contribution[i] / all * with : 0.0;
  }
  *combined = all;
  return FREEAIR_OK;
}

int32_t freeair_uncertainty_covariance(const double *sensitivity, size_t n_sensitivity, const double *u, size_t n_in,
                                       const double *correlation, size_t n_correlation, double *covariance,
                                       double *dependence, size_t n_square)
{
  fill(covariance, n_square, NAN);
  fill(dependence, n_square, NAN);
  if (sensitivity == NULL || u == NULL || covariance == NULL || dependence == NULL) return FREEAIR_ERR_NULL;
  if (n_in < 1 || n_in > 65535 || n_sensitivity < n_in || n_sensitivity % n_in != 0) return FREEAIR_ERR_DATA;
  const size_t n_out = n_sensitivity / n_in;
  if (n_out > 65535 || n_square != n_out * n_out) return FREEAIR_ERR_DATA;
  const int32_t status = freeair__correlation_check(correlation, n_correlation, n_in);
  if (status < 0) return status;
  if (!all_within(sensitivity, n_sensitivity, -1e150, 1e150) || !all_within(u, n_in, 0.0, 1e150))
    return FREEAIR_ERR_DOMAIN;
  for (size_t a = 0; a < n_out; a++)
    if (isnan(combine(sensitivity + a * n_in, u, n_in, correlation, n_correlation))) return FREEAIR_ERR_DOMAIN;
  for (size_t a = 0; a < n_out; a++)
    for (size_t b = 0; b <= a; b++) {
      double size;
      const double v = covariance_of(sensitivity + a * n_in, sensitivity + b * n_in, u, n_in, correlation,
                                     n_correlation, &size);
      covariance[a * n_out + b] = v;
      covariance[b * n_out + a] = v;
    }
  for (size_t a = 0; a < n_out; a++)
    for (size_t b = 0; b < n_out; b++) {
      const double product = sqrt(covariance[a * n_out + a]) * sqrt(covariance[b * n_out + b]);
      if (product > 0.0)
        dependence[a * n_out + b] = a == b ? 1.0 : fmin(fmax(covariance[a * n_out + b] / product, -1.0), 1.0);
    }
  return FREEAIR_OK;
}

/* What both ways of propagating do first: find, check, and compute the results. */
static int32_t begin(const char *function, const double *x, const double *u, size_t n_in, size_t n_out,
                     freeair__measurement *m, double *y)
{
  int32_t status = freeair__measurement_find(function, m);
  if (status < 0) return status;
  if (n_in != m->n_in || n_out != m->n_out) return FREEAIR_ERR_DATA;
  if (!freeair__measurement_inputs_valid(m, x, u)) return FREEAIR_ERR_DOMAIN;
  return freeair__measurement_value(m, x, y);
}

static int whole_number(const freeair__measurement *m, size_t k)
{
  return freeair_function_output(m->f, k)->type != FREEAIR_TYPE_DOUBLE;
}

/* Limits that a plain number has no more than its type. */
static void limits(const freeair__measurement *m, size_t i, double *lower, double *upper)
{
  const freeair_parameter *p = freeair_function_input(m->f, i);
  *lower = isnan(p->lower) ? -INFINITY : p->lower;
  *upper = isnan(p->upper) ? INFINITY : p->upper;
}

int32_t freeair_uncertainty_propagate(const char *function, const double *x, const double *u, size_t n_in,
                                      const double *correlation, size_t n_correlation, double *y, double *u_y,
                                      size_t n_out, double *sensitivity, size_t n_sensitivity)
{
  freeair__measurement m;
  double at[FREEAIR__INPUTS_MOST];
  double slope[FREEAIR__RESULTS_MOST];
  double error[FREEAIR__RESULTS_MOST];
  double doubt[FREEAIR__RESULTS_MOST] = {0.0};

  fill(y, n_out, NAN);
  fill(u_y, n_out, NAN);
  fill(sensitivity, n_sensitivity, NAN);
  if (function == NULL || x == NULL || u == NULL || y == NULL || u_y == NULL || sensitivity == NULL)
    return FREEAIR_ERR_NULL;
  int32_t status = freeair__correlation_check(correlation, n_correlation, n_in);
  if (status < 0) return status;
  const int32_t found = begin(function, x, u, n_in, n_out, &m, y);
  status = found;
  if (found >= 0 && n_sensitivity != n_in * n_out) status = FREEAIR_ERR_DATA;

  const freeair__function f = {freeair__measurement_value, &m, n_out};
  if (status >= 0) memcpy(at, x, n_in * sizeof *x);
  for (size_t i = 0; status >= 0 && i < n_in; i++) {
    const double step = !isfinite(x[i]) ? 0.0 : u[i] > 0.0 ? fmax(u[i], 1e-6 * fabs(x[i])) : 1e-3 * fabs(x[i]);
    if (freeair_function_input(m.f, i)->type != FREEAIR_TYPE_DOUBLE || !(step > 0.0)) continue;
    double lower;
    double upper;
    limits(&m, i, &lower, &upper);
    const int32_t side = freeair__derivative(&f, at, y, i, step, lower, upper, slope, error);
    if (side < 0 && u[i] > 0.0) status = side;
    for (size_t k = 0; side >= 0 && k < n_out; k++) {
      if (whole_number(&m, k)) continue;
      sensitivity[k * n_in + i] = slope[k];
      if (u[i] > 0.0) doubt[k] = hypot(doubt[k], error[k] * u[i]);
    }
  }
  for (size_t k = 0; status >= 0 && k < n_out; k++) {
    if (whole_number(&m, k) || isnan(y[k])) continue;
    u_y[k] = combine(sensitivity + k * n_in, u, n_in, correlation, n_correlation);
    if (isnan(u_y[k]))
      status = FREEAIR_ERR_DOMAIN;
    else if (isgreater(doubt[k], 0.1 * u_y[k]) && isgreater(doubt[k], 1e-8 * fabs(y[k])))
      status = FREEAIR_ERR_NO_CONVERGENCE;
  }
  if (status < 0) {
    fill(y, n_out, NAN);
    fill(u_y, n_out, NAN);
    fill(sensitivity, n_sensitivity, NAN);
    return status;
  }
  return found;
}

int32_t freeair_uncertainty_second_order(const double *first, const double *u, size_t n, const double *second,
                                         const double *third, size_t n_square, double *combined, double *shift)
{
  freeair__set_nan(combined);
  freeair__set_nan(shift);
  if (first == NULL || u == NULL || second == NULL || third == NULL || combined == NULL || shift == NULL)
    return FREEAIR_ERR_NULL;
  if (n < 1 || n > 65535 || n_square != n * n) return FREEAIR_ERR_DATA;
  if (!all_within(first, n, -1e75, 1e75) || !all_within(u, n, 0.0, 1e75) ||
      !all_within(second, n_square, -1e75, 1e75) || !all_within(third, n_square, -1e75, 1e75))
    return FREEAIR_ERR_DOMAIN;
  double scale = 0.0;
  for (size_t i = 0; i < n; i++) {
    scale = fmax(scale, fabs(first[i]) * u[i]);
    for (size_t k = 0; k < n; k++) {
      scale = fmax(scale, fabs(second[i * n + k]) * u[i] * u[k]);
      scale = fmax(scale, fabs(third[i * n + k]) * u[i] * u[k] * u[k]);
    }
  }
  double sum = 0.0;
  double moved = 0.0;
  for (size_t i = 0; scale > 0.0 && i < n; i++) {
    const double f_i = first[i] * u[i] / scale;
    sum += f_i * f_i;
    moved += 0.5 * second[i * n + i] * u[i] * u[i];
    for (size_t k = 0; k < n; k++) {
      const double f_ik = second[i * n + k] * u[i] * u[k] / scale;
      sum += 0.5 * f_ik * f_ik + f_i * (third[i * n + k] * u[i] * u[k] * u[k] / scale);
    }
  }
  if (sum < 0.0) return FREEAIR_ERR_NO_SOLUTION;
  *combined = scale * sqrt(sum);
  *shift = moved;
  return FREEAIR_OK;
}

int32_t freeair_uncertainty_propagate_second_order(const char *function, const double *x, const double *u, size_t n_in,
                                                   double *y, double *u_y, double *shift, size_t n_out)
{
  freeair__measurement m;
  double step[FREEAIR__INPUTS_MOST];
  double fine[FREEAIR__RESULTS_MOST];
  double fine_shift[FREEAIR__RESULTS_MOST];
  double at[FREEAIR__INPUTS_MOST];

  fill(y, n_out, NAN);
  fill(u_y, n_out, NAN);
  fill(shift, n_out, NAN);
  if (function == NULL || x == NULL || u == NULL || y == NULL || u_y == NULL || shift == NULL) return FREEAIR_ERR_NULL;
  const int32_t found = begin(function, x, u, n_in, n_out, &m, y);
  int32_t status = found;
  for (size_t i = 0; status >= 0 && i < n_in; i++) {
    double lower;
    double upper;
    limits(&m, i, &lower, &upper);
    step[i] = u[i] > 0.0 ? fmin(u[i], 0.499 * fmin(x[i] - lower, upper - x[i])) : 0.0;
    if (u[i] > 0.0 && !(step[i] > 1e-3 * u[i])) status = FREEAIR_ERR_NO_SOLUTION;
  }
  const freeair__function f = {freeair__measurement_value, &m, n_out};
  if (status >= 0) {
    memcpy(at, x, n_in * sizeof *x);
    for (int halving = 0; halving < 12; halving++) {
      status = freeair__second_order(&f, at, n_in, u, step, y, u_y, shift);
      for (size_t i = 0; i < n_in; i++) step[i] *= 0.5;
      if (status >= 0) break;
    }
  }
  if (status >= 0) status = freeair__second_order(&f, at, n_in, u, step, y, fine, fine_shift);
  for (size_t k = 0; status >= 0 && k < n_out; k++) {
    /* both err by the square of the step */
    const double variance = (4.0 * fine[k] - u_y[k]) / 3.0;
    if (isless(variance, -1e-9 * fabs(fine[k]))) status = FREEAIR_ERR_NO_CONVERGENCE;
    u_y[k] = whole_number(&m, k) || isnan(variance) ? NAN : sqrt(fmax(variance, 0.0));
    shift[k] = whole_number(&m, k) ? NAN : (4.0 * fine_shift[k] - shift[k]) / 3.0;
  }
  if (status < 0) {
    fill(y, n_out, NAN);
    fill(u_y, n_out, NAN);
    fill(shift, n_out, NAN);
    return status;
  }
  return found;
}
