/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "internal/check.h"

/* Phi(middle + width/2) - Phi(middle - width/2) for limits so close that the
 * difference of two tails would cancel: Gauss-Legendre, 8 points, each pair of
 * nodes taken together. Exact to rounding for width (|middle| + 1) <= 1. */
static double normal_narrow(double middle, double width)
{
  static const double node[] = {0.18343464249564980494, 0.52553240991632898582, 0.79666647741362673959,
                                0.96028985649753623168};
  static const double weight[] = {0.36268378337836198297, 0.31370664587788728734, 0.22238103445337447054,
                                  0.10122853629037625915};
  double sum = 0.0;
  for (size_t i = 0; i < 4; i++) {
    const double t = 0.5 * width * node[i];
    sum += weight[i] * exp(-0.5 * t * t) * cosh(middle * t);
  }
  return 0.39894228040143267794 * width * exp(-0.5 * middle * middle) * sum;
}

/* Phi(b) - Phi(a) for a < b without cancellation in either tail. */
static double normal_between(double a, double b)
{
  const double root_half = 0.70710678118654752440;
  if (a > 0.0) return 0.5 * (erfc(a * root_half) - erfc(b * root_half));
  if (b < 0.0) return 0.5 * (erfc(-b * root_half) - erfc(-a * root_half));
  return 1.0 - 0.5 * (erfc(-a * root_half) + erfc(b * root_half));
}

int32_t freeair_verdict_probability(double value, double uncertainty, double lower, double upper,
                                    double *probability)
{
  if (probability == NULL) return FREEAIR_ERR_NULL;
  *probability = NAN;
  if (!freeair__open(value, -INFINITY, INFINITY) || !freeair__from(uncertainty, 0.0, INFINITY) ||
      !freeair__from(lower, -INFINITY, INFINITY) || !freeair__upto(upper, -INFINITY, INFINITY) || !(lower < upper))
    return FREEAIR_ERR_DOMAIN;
  if (!(uncertainty > 0.0)) {
    *probability = value >= lower && value <= upper ? 1.0 : 0.0;
    return FREEAIR_OK;
  }
  const double a = (lower - value) / uncertainty;
  const double b = (upper - value) / uncertainty;
  const double width = (upper - lower) / uncertainty;
  const double middle = width <= 1.0 ? 0.5 * (a + b) : 0.0;
  const int narrow = width <= 1.0 && width * (fabs(middle) + 1.0) <= 1.0;
  *probability = narrow ? normal_narrow(middle, width) : normal_between(a, b);
  return FREEAIR_OK;
}

int32_t freeair_verdict_decide(double value, double uncertainty, double lower, double upper, double confidence,
                               int32_t *verdict)
{
  if (verdict == NULL) return FREEAIR_ERR_NULL;
  *verdict = FREEAIR_VERDICT_CANNOT_TELL;
  if (!freeair__open(confidence, 0.5, 1.0)) return FREEAIR_ERR_DOMAIN;
  double p;
  int32_t status = freeair_verdict_probability(value, uncertainty, lower, upper, &p);
  if (status < 0) return status;
  if (p >= confidence)
    *verdict = FREEAIR_VERDICT_MEETS;
  else if (p <= 1.0 - confidence)
    *verdict = FREEAIR_VERDICT_FAILS;
  return status;
}
