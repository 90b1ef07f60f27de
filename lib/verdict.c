/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "internal/check.h"

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
  if (uncertainty > 0.0)
    *probability = normal_between((lower - value) / uncertainty, (upper - value) / uncertainty);
  else
    *probability = value >= lower && value <= upper ? 1.0 : 0.0;
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
