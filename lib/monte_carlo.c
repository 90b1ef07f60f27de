/* SPDX-License-Identifier: MIT */
#include <freeair/coverage.h>
#include <freeair/monte_carlo.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/derivative.h"
#include "internal/order.h"
#include "internal/philox.h"
#include "internal/uncertainty.h"

#include <string.h>

enum { CORRELATED_MOST = 48 };

/* The inputs as their distributions say, ready to be drawn. */
typedef struct inputs {
  const double *x;
  const double *u;
  const int32_t *distribution;
  const double *nu;
  size_t n;
  uint32_t seed;
  size_t n_correlated;
  size_t correlated[CORRELATED_MOST];                 /* which they are */
  double factor[CORRELATED_MOST][CORRELATED_MOST]; /* lower triangle: correlation = factor factor' */
} inputs;

static void fill(double *x, size_t n, double value)
{
  for (size_t i = 0; x != NULL && i < n; i++) x[i] = value;
}

/* Cholesky factor of a matrix that may be semidefinite; 0 when it is not even that. */
static int factorise(inputs *in, const double *r)
{
  const double rounding = 1e-10;
  for (size_t a = 0; a < in->n_correlated; a++) {
    const size_t i = in->correlated[a];
    for (size_t b = 0; b <= a; b++) {
      double sum = a == b ? 1.0 : r[i * in->n + in->correlated[b]];
      for (size_t k = 0; k < b; k++) sum -= in->factor[a][k] * in->factor[b][k];
      if (a == b) {
        if (sum < -rounding) return 0;
        in->factor[a][a] = sum > rounding ? sqrt(sum) : 0.0;
      } else if (in->factor[b][b] > 0.0) {
        in->factor[a][b] = sum / in->factor[b][b];
      } else {
        if (fabs(sum) > 1e-5) return 0;
        in->factor[a][b] = 0.0;
      }
    }
  }
  return 1;
}

static int32_t prepare(inputs *in, const double *correlation, size_t n_correlation)
{
  int32_t status = freeair__correlation_check(correlation, n_correlation, in->n);
  if (status < 0) return status;
  for (size_t i = 0; i < in->n; i++) {
    if (!freeair__closed(in->u[i], 0.0, 1e130)) return FREEAIR_ERR_DOMAIN;
    if (!(in->u[i] > 0.0)) continue;
    if (!freeair__closed(in->x[i], -1e150, 1e150)) return FREEAIR_ERR_DOMAIN;
    if (in->distribution[i] < FREEAIR_COVERAGE_NORMAL || in->distribution[i] > FREEAIR_COVERAGE_STUDENT)
      return FREEAIR_ERR_DOMAIN;
    if (in->distribution[i] == FREEAIR_COVERAGE_STUDENT && !freeair__closed(in->nu[i], 1.0, INFINITY))
      return FREEAIR_ERR_DOMAIN;
  }
  in->n_correlated = 0;
  for (size_t i = 0; n_correlation > 0 && i < in->n; i++) {
    int alone = 1;
    for (size_t k = 0; k < in->n; k++)
      alone &= k == i || !(in->u[k] > 0.0) || fabs(correlation[i * in->n + k]) < 1e-300;
    if (alone || !(in->u[i] > 0.0)) continue;
    if (in->distribution[i] != FREEAIR_COVERAGE_NORMAL) return FREEAIR_ERR_DOMAIN;
    if (in->n_correlated == CORRELATED_MOST) return FREEAIR_ERR_UNSUPPORTED;
    in->correlated[in->n_correlated++] = i;
  }
  return factorise(in, correlation) ? FREEAIR_OK : FREEAIR_ERR_DOMAIN;
}

/* Deviation of one input, in units of u. */
static double deviate(const inputs *in, uint64_t trial, size_t i)
{
  const double turn = 6.2831853071795864769;
  double a;
  double b;
  freeair__philox(trial, i, in->seed, &a, &b);
  switch (in->distribution[i]) {
  case FREEAIR_COVERAGE_RECTANGULAR: return 1.7320508075688772935 * (2.0 * a - 1.0);
  case FREEAIR_COVERAGE_TRIANGULAR: return 2.4494897427831780982 * (a - b);
  case FREEAIR_COVERAGE_ARCSINE: return 1.4142135623730950488 * cos(turn * a);
  case FREEAIR_COVERAGE_STUDENT:
    if (!isinf(in->nu[i])) return sqrt(in->nu[i] * expm1(-2.0 / in->nu[i] * log(a))) * cos(turn * b);
    break;
  default: break;
  }
  return sqrt(-2.0 * log(a)) * cos(turn * b);
}

static void draw(const inputs *in, uint64_t trial, double *value)
{
  double z[CORRELATED_MOST];
  for (size_t i = 0; i < in->n; i++)
    value[i] = in->u[i] > 0.0 ? in->x[i] + in->u[i] * deviate(in, trial, i) : in->x[i];
  for (size_t a = 0; a < in->n_correlated; a++) {
    const size_t i = in->correlated[a];
    z[a] = deviate(in, trial, i);
    double sum = 0.0;
    for (size_t k = 0; k <= a; k++) sum += in->factor[a][k] * z[k];
    value[i] = in->x[i] + in->u[i] * sum;
  }
}

int32_t freeair_monte_carlo_draw(const double *x, const double *u, const int32_t *distribution, const double *nu,
                                 size_t n_in, const double *correlation, size_t n_correlation, uint32_t seed,
                                 uint32_t first, double *sample, size_t n_sample)
{
  fill(sample, n_sample, NAN);
  if (x == NULL || u == NULL || distribution == NULL || nu == NULL || sample == NULL) return FREEAIR_ERR_NULL;
  if (n_in < 1 || n_in > FREEAIR__INPUTS_MOST || n_sample % n_in != 0) return FREEAIR_ERR_DATA;
  inputs in = {.x = x, .u = u, .distribution = distribution, .nu = nu, .n = n_in, .seed = seed};
  for (size_t i = 0; i < n_in; i++)
    if (!freeair__closed(x[i], -1e150, 1e150)) return FREEAIR_ERR_DOMAIN;
  const int32_t status = prepare(&in, correlation, n_correlation);
  if (status < 0) return status;
  for (size_t t = 0; t < n_sample / n_in; t++) draw(&in, (uint64_t)first + t, sample + t * n_in);
  return FREEAIR_OK;
}

int32_t freeair_monte_carlo_propagate(const char *function, const double *x, const double *u,
                                      const int32_t *distribution, const double *nu, size_t n_in,
                                      const double *correlation, size_t n_correlation, uint32_t seed, uint32_t first,
                                      size_t output, double *y, size_t n, int32_t *failed)
{
  freeair__measurement m;
  double at[FREEAIR__INPUTS_MOST];
  double result[FREEAIR__RESULTS_MOST];

  fill(y, n, NAN);
  if (failed != NULL) *failed = 0;
  if (function == NULL || x == NULL || u == NULL || distribution == NULL || nu == NULL || y == NULL || failed == NULL)
    return FREEAIR_ERR_NULL;
  int32_t status = freeair__measurement_find(function, &m);
  if (status < 0) return status;
  if (n_in != m.n_in || output >= m.n_out || n < 1 || n > INT32_MAX) return FREEAIR_ERR_DATA;
  inputs in = {.x = x, .u = u, .distribution = distribution, .nu = nu, .n = n_in, .seed = seed};
  status = prepare(&in, correlation, n_correlation);
  if (status < 0) return status;
  if (!freeair__measurement_inputs_valid(&m, x, u)) return FREEAIR_ERR_DOMAIN;
  int32_t without = 0;
  for (size_t t = 0; t < n; t++) {
    draw(&in, (uint64_t)first + t, at);
    if (freeair__measurement_value(&m, at, result) >= 0) y[t] = result[output];
    without += isnan(y[t]) ? 1 : 0;
  }
  if ((size_t)without == n) return FREEAIR_ERR_NO_SOLUTION;
  *failed = without;
  return without > 0 ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

int32_t freeair_monte_carlo_summary(const double *y, size_t n, double *mean, double *u_y, double *mean_error,
                                    double *u_error, double *skewness)
{
  freeair__set_nan(mean);
  freeair__set_nan(u_y);
  freeair__set_nan(mean_error);
  freeair__set_nan(u_error);
  freeair__set_nan(skewness);
  if (y == NULL || mean == NULL || u_y == NULL || mean_error == NULL || u_error == NULL || skewness == NULL)
    return FREEAIR_ERR_NULL;
  size_t count = 0;
  double origin = 0.0;
  double widest = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (isnan(y[i])) continue;
    if (!freeair__closed(y[i], -1e150, 1e150)) return FREEAIR_ERR_DOMAIN;
    if (count++ == 0) origin = y[i];
    widest = fmax(widest, fabs(y[i] - origin));
  }
  if (count < 2) return FREEAIR_ERR_DATA;
  const double m = (double)count;
  double sum = 0.0;
  for (size_t i = 0; i < n; i++)
    if (!isnan(y[i])) sum += y[i] - origin;
  const double centre = origin + sum / m;
  double second = 0.0;
  double third = 0.0;
  double fourth = 0.0;
  for (size_t i = 0; widest > 0.0 && i < n; i++) {
    if (isnan(y[i])) continue;
    const double d = (y[i] - centre) / widest;
    second += d * d;
    third += d * d * d;
    fourth += d * d * d * d;
  }
  const double spread = widest * sqrt(second / (m - 1.0));
  const double moment = second / m;
  *mean = centre;
  *u_y = spread;
  *mean_error = spread / sqrt(m);
  *u_error = moment > 0.0 ? spread * sqrt(fmax(fourth / m / (moment * moment) - 1.0, 0.0) / (4.0 * m)) : 0.0;
  *skewness = moment > 0.0 ? third / m / (moment * sqrt(moment)) : 0.0;
  return FREEAIR_OK;
}

/* Standard error of the value at place r of m, counted from 1. */
static double order_error(const double *ordered, size_t m, size_t r)
{
  const double share = ((double)r - 0.5) / (double)m;
  const size_t away = (size_t)fmax(1.0, floor(sqrt((double)m * share * (1.0 - share)) + 0.5));
  const size_t below = r > away ? r - away : 1;
  const size_t above = m - r > away ? r + away : m;
  return 0.5 * (ordered[above - 1] - ordered[below - 1]);
}

int32_t freeair_monte_carlo_interval(const double *y, size_t n, double probability, int32_t interval, double *ordered,
                                     double *low, double *high, double *low_error, double *high_error)
{
  freeair__set_nan(low);
  freeair__set_nan(high);
  freeair__set_nan(low_error);
  freeair__set_nan(high_error);
  if (y == NULL || ordered == NULL || low == NULL || high == NULL || low_error == NULL || high_error == NULL)
    return FREEAIR_ERR_NULL;
  int valid = freeair__open(probability, 0.0, 1.0) &&
              (interval == FREEAIR_MONTE_CARLO_SYMMETRIC || interval == FREEAIR_MONTE_CARLO_SHORTEST);
  for (size_t i = 0; i < n; i++) valid &= isnan(y[i]) || freeair__closed(y[i], -1e150, 1e150);
  if (!valid) {
    if (ordered != y) fill(ordered, n, NAN);
    return FREEAIR_ERR_DOMAIN;
  }
  if (ordered != y) memcpy(ordered, y, n * sizeof *y);
  const size_t m = freeair__order(ordered, n);
  const size_t q = (size_t)floor(probability * (double)m + 0.5);
  if (m < q + 10 || q < 1) {
    if (ordered != y) fill(ordered, n, NAN);
    return FREEAIR_ERR_DATA;
  }
  size_t r = (m - q + 1) / 2;
  for (size_t k = 1; interval == FREEAIR_MONTE_CARLO_SHORTEST && k <= m - q; k++)
    if (ordered[k + q - 1] - ordered[k - 1] < ordered[r + q - 1] - ordered[r - 1]) r = k;
  *low = ordered[r - 1];
  *high = ordered[r + q - 1];
  *low_error = order_error(ordered, m, r);
  *high_error = order_error(ordered, m, r + q);
  return FREEAIR_OK;
}

int32_t freeair_monte_carlo_tolerance(double u_y, int32_t digits, double *tolerance)
{
  freeair__set_nan(tolerance);
  if (tolerance == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(u_y, 1e-150, 1e150) || digits < 1 || digits > 9) return FREEAIR_ERR_DOMAIN;
  double power = floor(log10(u_y)) - digits + 1.0;
  /* u that rounds up to the next power of ten has one more digit before the point */
  if (floor(u_y / pow(10.0, power) + 0.5) >= pow(10.0, digits)) power += 1.0;
  *tolerance = 0.5 * pow(10.0, power);
  return FREEAIR_OK;
}
