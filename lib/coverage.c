/* SPDX-License-Identifier: MIT */
#include <freeair/coverage.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/student.h"

static int all_within(const double *x, size_t n, double low, double high)
{
  for (size_t i = 0; i < n; i++)
    if (!freeair__closed(x[i], low, high)) return 0;
  return 1;
}

/* From the first reading on, so that nothing is lost where readings differ in their last digits only. */
static double mean_of(const double *x, size_t n)
{
  double sum = 0.0;
  for (size_t i = 0; i < n; i++) sum += (x[i] - x[0]) / (double)n;
  return x[0] + sum;
}

int32_t freeair_coverage_mean(const double *reading, size_t n, double *mean, double *deviation, double *uncertainty,
                              double *nu)
{
  freeair__set_nan(mean);
  freeair__set_nan(deviation);
  freeair__set_nan(uncertainty);
  freeair__set_nan(nu);
  if (reading == NULL || mean == NULL || deviation == NULL || uncertainty == NULL || nu == NULL)
    return FREEAIR_ERR_NULL;
  if (n < 2) return FREEAIR_ERR_DATA;
  if (!all_within(reading, n, -1e150, 1e150)) return FREEAIR_ERR_DOMAIN;
  const double centre = mean_of(reading, n);
  double squares = 0.0;
  double rest = 0.0; /* what rounding of the mean left over */
  for (size_t i = 0; i < n; i++) {
    const double d = reading[i] - centre;
    squares += d * d;
    rest += d;
  }
  const double freedom = (double)(n - 1);
  const double variance = fmax((squares - rest * rest / (double)n) / freedom, 0.0);
  *mean = centre + rest / (double)n;
  *deviation = sqrt(variance);
  *uncertainty = sqrt(variance / (double)n);
  *nu = freedom;
  return FREEAIR_OK;
}

int32_t freeair_coverage_correlation(const double *a, const double *b, size_t n, double *r)
{
  freeair__set_nan(r);
  if (a == NULL || b == NULL || r == NULL) return FREEAIR_ERR_NULL;
  if (n < 2) return FREEAIR_ERR_DATA;
  if (!all_within(a, n, -1e150, 1e150) || !all_within(b, n, -1e150, 1e150)) return FREEAIR_ERR_DOMAIN;
  const double mean_a = mean_of(a, n);
  const double mean_b = mean_of(b, n);
  double widest_a = 0.0;
  double widest_b = 0.0;
  for (size_t i = 0; i < n; i++) {
    widest_a = fmax(widest_a, fabs(a[i] - a[0]));
    widest_b = fmax(widest_b, fabs(b[i] - b[0]));
  }
  if (!(widest_a > 0.0 && widest_b > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  double aa = 0.0;
  double bb = 0.0;
  double ab = 0.0;
  for (size_t i = 0; i < n; i++) {
    const double da = (a[i] - mean_a) / widest_a;
    const double db = (b[i] - mean_b) / widest_b;
    aa += da * da;
    bb += db * db;
    ab += da * db;
  }
  *r = fmin(fmax(ab / sqrt(aa * bb), -1.0), 1.0);
  return FREEAIR_OK;
}

int32_t freeair_coverage_pooled(const double *deviation, const double *freedom, size_t n, double *pooled, double *nu)
{
  freeair__set_nan(pooled);
  freeair__set_nan(nu);
  if (deviation == NULL || freedom == NULL || pooled == NULL || nu == NULL) return FREEAIR_ERR_NULL;
  if (n == 0) return FREEAIR_ERR_DATA;
  if (!all_within(deviation, n, 0.0, 1e150)) return FREEAIR_ERR_DOMAIN;
  double sum = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!freeair__upto(freedom[i], 0.0, 1e15)) return FREEAIR_ERR_DOMAIN;
    sum += freedom[i];
  }
  double variance = 0.0;
  for (size_t i = 0; i < n; i++) variance += freedom[i] / sum * deviation[i] * deviation[i];
  *pooled = sqrt(variance);
  *nu = sum;
  return FREEAIR_OK;
}

int32_t freeair_coverage_uncertainty_from_limits(double half_width, int32_t distribution, double *uncertainty)
{
  freeair__set_nan(uncertainty);
  if (uncertainty == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(half_width, 0.0, 1e150)) return FREEAIR_ERR_DOMAIN;
  switch (distribution) {
  case FREEAIR_COVERAGE_RECTANGULAR: *uncertainty = half_width / sqrt(3.0); return FREEAIR_OK;
  case FREEAIR_COVERAGE_TRIANGULAR: *uncertainty = half_width / sqrt(6.0); return FREEAIR_OK;
  case FREEAIR_COVERAGE_ARCSINE: *uncertainty = half_width / sqrt(2.0); return FREEAIR_OK;
  default: return FREEAIR_ERR_DOMAIN;
  }
}

int32_t freeair_coverage_degrees_of_freedom_from_doubt(double doubt, double *nu)
{
  freeair__set_nan(nu);
  if (nu == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(doubt, 1e-9, 0.7071)) return FREEAIR_ERR_DOMAIN;
  *nu = 0.5 / (doubt * doubt);
  return FREEAIR_OK;
}

int32_t freeair_coverage_degrees_of_freedom(double combined, const double *contribution, const double *freedom,
                                            size_t n, double *nu_effective)
{
  freeair__set_nan(nu_effective);
  if (contribution == NULL || freedom == NULL || nu_effective == NULL) return FREEAIR_ERR_NULL;
  if (n == 0) return FREEAIR_ERR_DATA;
  if (freeair__given(combined) && !freeair__closed(combined, 1e-75, 1e75)) return FREEAIR_ERR_DOMAIN;
  double largest = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!freeair__closed(contribution[i], -1e75, 1e75) || !freeair__upto(freedom[i], 0.0, INFINITY))
      return FREEAIR_ERR_DOMAIN;
    largest = fmax(largest, fabs(contribution[i]));
  }
  if (!(largest > 0.0)) return FREEAIR_ERR_DATA;
  double squares = 0.0;
  double fourths = 0.0;
  for (size_t i = 0; i < n; i++) {
    const double part = contribution[i] / largest;
    squares += part * part;
    fourths += part * part * part * part / freedom[i];
  }
  if (freeair__given(combined)) squares = combined / largest * (combined / largest);
  *nu_effective = fourths > 0.0 ? squares * squares / fourths : INFINITY;
  return FREEAIR_OK;
}

int32_t freeair_coverage_factor(double probability, double nu, double *factor)
{
  freeair__set_nan(factor);
  if (factor == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__open(probability, 0.0, 1.0) || !freeair__closed(nu, 1.0, INFINITY)) return FREEAIR_ERR_DOMAIN;
  *factor = freeair__student_factor(probability, nu);
  return FREEAIR_OK;
}

int32_t freeair_coverage_probability(double factor, double nu, double *probability)
{
  freeair__set_nan(probability);
  if (probability == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(factor, 0.0, 1e16) || !freeair__closed(nu, 1.0, INFINITY)) return FREEAIR_ERR_DOMAIN;
  double beyond;
  freeair__student(factor, nu, probability, &beyond);
  return FREEAIR_OK;
}

int32_t freeair_coverage_interval(double y, double uncertainty, double probability, double nu, double *expanded,
                                  double *low, double *high)
{
  freeair__set_nan(expanded);
  freeair__set_nan(low);
  freeair__set_nan(high);
  if (expanded == NULL || low == NULL || high == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(y, -1e150, 1e150) || !freeair__closed(uncertainty, 0.0, 1e130) ||
      !freeair__open(probability, 0.0, 1.0) || !freeair__closed(nu, 1.0, INFINITY))
    return FREEAIR_ERR_DOMAIN;
  *expanded = uncertainty * freeair__student_factor(probability, nu);
  *low = y - *expanded;
  *high = y + *expanded;
  return FREEAIR_OK;
}
