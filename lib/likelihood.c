/* SPDX-License-Identifier: MIT */
#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/likelihood.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/likelihood.h"

static const double psi = 6894.757293168361;

int32_t freeair_likelihood_prior(int32_t cause, double *prior)
{
  if (prior == NULL) return FREEAIR_ERR_NULL;
  *prior = NAN;
  const freeair__likelihood_cause *c = freeair__likelihood_cause_of(cause);
  if (c == NULL) return FREEAIR_ERR_NOT_FOUND;
  *prior = c->prior;
  return FREEAIR_OK;
}

int32_t freeair_likelihood_size(int32_t cause, double *size, double *cost, int32_t *two_sided)
{
  freeair__set_nan(size);
  freeair__set_nan(cost);
  if (two_sided != NULL) *two_sided = 0;
  if (size == NULL || cost == NULL || two_sided == NULL) return FREEAIR_ERR_NULL;
  const freeair__likelihood_cause *c = freeair__likelihood_cause_of(cause);
  if (c == NULL) return FREEAIR_ERR_NOT_FOUND;
  *size = c->size;
  *cost = c->cost;
  *two_sided = c->two_sided;
  return FREEAIR_OK;
}

int32_t freeair_likelihood_observation(int32_t cause, int32_t observation, double *hit, double *false_alarm,
                                       int32_t *basis)
{
  freeair__set_nan(hit);
  freeair__set_nan(false_alarm);
  if (basis != NULL) *basis = FREEAIR_LIKELIHOOD_UNLISTED;
  if (hit == NULL || false_alarm == NULL || basis == NULL) return FREEAIR_ERR_NULL;
  const double *usual = freeair__likelihood_false_alarm_of(observation);
  if (freeair__likelihood_cause_of(cause) == NULL || usual == NULL) return FREEAIR_ERR_NOT_FOUND;
  *false_alarm = *usual;
  *hit = cause == FREEAIR_EVIDENCE_OTHER ? 0.5 * (*usual + 0.3) : *usual;
  const freeair__likelihood_hit *listed = freeair__likelihood_hit_of(observation, cause);
  if (listed != NULL) {
    *hit = listed->hit;
    *basis = listed->basis;
  }
  return FREEAIR_OK;
}

int32_t freeair_likelihood_reading(int32_t cause, int32_t reading, double *slope, double *limit, double *spread,
                                   int32_t *basis)
{
  freeair__set_nan(slope);
  freeair__set_nan(limit);
  freeair__set_nan(spread);
  if (basis != NULL) *basis = FREEAIR_LIKELIHOOD_UNLISTED;
  if (slope == NULL || limit == NULL || spread == NULL || basis == NULL) return FREEAIR_ERR_NULL;
  const freeair__likelihood_cause *c = freeair__likelihood_cause_of(cause);
  if (c == NULL || freeair__likelihood_reading_of(reading) == NULL) return FREEAIR_ERR_NOT_FOUND;
  *slope = *limit = *spread = 0.0;
  /* The pump-up test measures the size itself; a short machine runs longer. */
  const double pump_up[] = {c->delivery, c->empty, c->cutin};
  const double pump_up_spread[] = {0.05, 0.10, 0.25};
  if (reading >= FREEAIR_EVIDENCE_DELIVERY && reading <= FREEAIR_EVIDENCE_TIME_FROM_CUTIN) {
    const size_t r = (size_t)(reading - FREEAIR_EVIDENCE_DELIVERY);
    if (pump_up[r] < 0.0 || pump_up[r] > 0.0) {
      *slope = pump_up[r];
      *limit = 4.0;
      *spread = pump_up_spread[r];
      *basis = FREEAIR_LIKELIHOOD_DERIVED;
    }
  } else if (reading == FREEAIR_EVIDENCE_DUTY && c->cost > 0.0) {
    *slope = 0.6;
    *limit = 0.7;
    *spread = 0.8;
    *basis = FREEAIR_LIKELIHOOD_DERIVED;
  }
  const freeair__likelihood_slope *listed = freeair__likelihood_slope_of(reading, cause);
  if (listed != NULL) {
    *slope = listed->slope;
    *limit = listed->limit;
    *spread = listed->spread;
    *basis = listed->basis;
  }
  return FREEAIR_OK;
}

int32_t freeair_likelihood_spread(int32_t reading, double *u_found, double *u_expected, double *expected,
                                  double *wide, double *affected, int32_t *scale)
{
  freeair__set_nan(u_found);
  freeair__set_nan(u_expected);
  freeair__set_nan(expected);
  freeair__set_nan(wide);
  freeair__set_nan(affected);
  if (scale != NULL) *scale = FREEAIR_LIKELIHOOD_NO_SCALE;
  if (u_found == NULL || u_expected == NULL || expected == NULL || wide == NULL || affected == NULL || scale == NULL)
    return FREEAIR_ERR_NULL;
  const freeair__likelihood_reading *r = freeair__likelihood_reading_of(reading);
  if (r == NULL) return FREEAIR_ERR_NOT_FOUND;
  *u_found = r->u_found;
  *u_expected = r->u_expected;
  *expected = r->expected;
  *wide = r->wide;
  *affected = r->affected;
  *scale = r->scale;
  return FREEAIR_OK;
}

int32_t freeair_likelihood_deviation(int32_t reading, double found, double u_found, double expected,
                                     double u_expected, double reference, double *deviation, double *spread)
{
  freeair__set_nan(deviation);
  freeair__set_nan(spread);
  if (deviation == NULL || spread == NULL) return FREEAIR_ERR_NULL;
  const freeair__likelihood_reading *r = freeair__likelihood_reading_of(reading);
  if (r == NULL) return FREEAIR_ERR_NOT_FOUND;
  double a = r->u_found;
  double b = r->u_expected;
  if (!freeair__closed(found, -1e8, 1e8) || (freeair__given(expected) && !freeair__closed(expected, -1e8, 1e8)) ||
      (freeair__given(u_found) && !freeair__closed(u_found, 0.0, 1e8)) ||
      (freeair__given(u_expected) && !freeair__closed(u_expected, 0.0, 1e8)) ||
      (freeair__given(reference) && !freeair__closed(reference, 1e-9, 1e8)))
    return FREEAIR_ERR_DOMAIN;
  if (r->scale == FREEAIR_LIKELIHOOD_NO_SCALE) return FREEAIR_ERR_UNSUPPORTED;
  double d;
  if (r->scale == FREEAIR_LIKELIHOOD_LOG) {
    if (!freeair__from(found, 1e-12, INFINITY) || !freeair__from(expected, 1e-12, INFINITY))
      return FREEAIR_ERR_DOMAIN;
    const double change = (found - expected) / expected;
    d = fabs(change) < 0.5 ? log1p(change) : log(found / expected);
    if (freeair__given(u_found)) a = u_found / found;
    if (freeair__given(u_expected)) b = u_expected / expected;
  } else {
    const double unit = r->scale == FREEAIR_LIKELIHOOD_SHARE ? reference : 1.0;
    if (!freeair__given(unit)) return FREEAIR_ERR_DOMAIN;
    if (!freeair__given(expected)) expected = r->expected * unit;
    if (!freeair__given(expected)) return FREEAIR_ERR_DOMAIN;
    d = (found - expected) / unit;
    if (freeair__given(u_found)) a = u_found / unit;
    if (freeair__given(u_expected)) b = u_expected / unit;
  }
  *deviation = d;
  *spread = fmax(hypot(a, b), 0.1 * r->u_expected);
  return FREEAIR_OK;
}

int32_t freeair_likelihood_level_off(int32_t cause, double *rate, double *centre_pa, double *spread)
{
  freeair__set_nan(rate);
  freeair__set_nan(centre_pa);
  freeair__set_nan(spread);
  if (rate == NULL || centre_pa == NULL || spread == NULL) return FREEAIR_ERR_NULL;
  const freeair__likelihood_cause *c = freeair__likelihood_cause_of(cause);
  if (c == NULL) return FREEAIR_ERR_NOT_FOUND;
  *rate = c->level;
  *centre_pa = c->psig * psi;
  *spread = c->width;
  return FREEAIR_OK;
}

uint32_t freeair_likelihood_cautions(int32_t cause)
{
  const freeair__likelihood_cause *c = freeair__likelihood_cause_of(cause);
  return c != NULL ? c->cautions : 0;
}

int32_t freeair_likelihood_density(double residual, double *likelihood)
{
  if (likelihood == NULL) return FREEAIR_ERR_NULL;
  *likelihood = NAN;
  if (!freeair__closed(residual, -1e6, 1e6)) return FREEAIR_ERR_DOMAIN;
  const double q = 1.0 + residual * residual / 7.0;
  *likelihood = 0.38499145083226733 / (q * q * q * q);
  return FREEAIR_OK;
}

int32_t freeair_likelihood_update(double prior, double hit, double false_alarm, int32_t answer, double *posterior)
{
  if (posterior == NULL) return FREEAIR_ERR_NULL;
  *posterior = NAN;
  if (!freeair__closed(prior, 0.0, 1.0) || !freeair__closed(hit, 0.0, 1.0) ||
      !freeair__closed(false_alarm, 0.0, 1.0) || answer < FREEAIR_EVIDENCE_NOT_CHECKED ||
      answer > FREEAIR_EVIDENCE_NO)
    return FREEAIR_ERR_DOMAIN;
  double with = 1.0;
  double without = 1.0;
  if (answer == FREEAIR_EVIDENCE_YES) {
    with = hit;
    without = false_alarm;
  } else if (answer == FREEAIR_EVIDENCE_NO) {
    with = 1.0 - hit;
    without = 1.0 - false_alarm;
  }
  const double total = prior * with + (1.0 - prior) * without;
  if (!(total > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *posterior = prior * with / total;
  return FREEAIR_OK;
}

/* (1 + x) ln(1 + x) - x, not negative, without cancellation near 0. */
static double excess(double x)
{
  if (fabs(x) > 0.25) return x > -1.0 ? (1.0 + x) * log1p(x) - x : 1.0;
  double sum = 0.0;
  for (int k = 27; k >= 2; k--) sum = 1.0 / (k * (k - 1)) - x * sum;
  return x * x * sum;
}

/* Relative entropy of the answers with probability a of yes to those with
 * probability b, where d = a - b: the terms linear in d cancel beforehand. */
static double relative_entropy(double d, double b, double not_b)
{
  return (b > 0.0 ? b * excess(d / b) : 0.0) + (not_b > 0.0 ? not_b * excess(-d / not_b) : 0.0);
}

int32_t freeair_likelihood_information(double prior, double hit, double false_alarm, double *information)
{
  if (information == NULL) return FREEAIR_ERR_NULL;
  *information = NAN;
  if (!freeair__closed(prior, 0.0, 1.0) || !freeair__closed(hit, 0.0, 1.0) || !freeair__closed(false_alarm, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  const double rest = 1.0 - prior;
  const double d = hit - false_alarm;
  const double q = prior * hit + rest * false_alarm;
  const double not_q = prior * (1.0 - hit) + rest * (1.0 - false_alarm);
  double nats = 0.0;
  if (prior > 0.0 && rest > 0.0)
    nats = prior * relative_entropy(rest * d, q, not_q) + rest * relative_entropy(-prior * d, q, not_q);
  *information = nats * 1.4426950408889634;
  return FREEAIR_OK;
}
