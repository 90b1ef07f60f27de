/* SPDX-License-Identifier: MIT */
#include "internal/posterior.h"

#include "internal/logsum.h"

void freeair__blend(double *log_weight, double *mean, size_t n, double log_more, const double *more)
{
  const double both = freeair__logsum(*log_weight, log_more);
  if (isinf(both)) return;
  const double old = isinf(*log_weight) ? 0.0 : exp(*log_weight - both);
  const double new = exp(log_more - both);
  for (size_t i = 0; i < n; i++) mean[i] = old * mean[i] + new * more[i];
  *log_weight = both;
}

void freeair__posterior_start(freeair__posterior *p, size_t n_items)
{
  *p = (freeair__posterior){.n_items = n_items, .pairs = -INFINITY};
  for (size_t k = 0; k < FREEAIR__MAX_ITEMS; k++) p->all[k] = -INFINITY;
  for (size_t c = 0; c < FREEAIR__MAX_CAUSES; c++) {
    p->alone[c] = p->weight[c] = -INFINITY;
    for (size_t k = 0; k < FREEAIR__MAX_ITEMS; k++) p->with[c][k] = -INFINITY;
  }
}

void freeair__posterior_add(freeair__posterior *p, int i, int j, const double *log_without)
{
  for (size_t k = 0; k < p->n_items; k++) {
    p->all[k] = freeair__logsum(p->all[k], log_without[k]);
    p->with[i][k] = freeair__logsum(p->with[i][k], log_without[k]);
    if (j != 0) p->with[j][k] = freeair__logsum(p->with[j][k], log_without[k]);
  }
  if (j != 0)
    p->pairs = freeair__logsum(p->pairs, log_without[0]);
  else
    p->alone[i] = freeair__logsum(p->alone[i], log_without[0]);
}

void freeair__posterior_moments(freeair__posterior *p, int cause, double log_weight, const double *moments)
{
  freeair__blend(&p->weight[cause], p->moment[cause], FREEAIR__MOMENTS, log_weight, moments);
}

double freeair__posterior_probability(const freeair__posterior *p, int cause)
{
  return fmin(exp(p->with[cause][0] - p->all[0]), 1.0);
}

static double log_odds(const freeair__posterior *p, int cause, size_t item)
{
  const double most = 27.631021115928547; /* ln 1e12 */
  const double d = p->all[item] - p->with[cause][item];
  if (isinf(d)) return -most;
  return fmax(-most, fmin(most, -log(expm1(fmax(d, 1e-15)))));
}

double freeair__posterior_reason(const freeair__posterior *p, int cause, size_t item)
{
  return log_odds(p, cause, 0) - log_odds(p, cause, item);
}
