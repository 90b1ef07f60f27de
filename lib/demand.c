/* SPDX-License-Identifier: MIT */
#include <freeair/demand.h>
#include <freeair/status.h>

#include "internal/check.h"

typedef struct profile {
  const double *flow;
  const double *duration;
  size_t n;
  double mean;
  double peak;
  double least;
  double air;
  double time;
} profile;

static int32_t read_profile(const double *flow, const double *duration, size_t n, profile *p)
{
  *p = (profile){flow, duration, n, NAN, 0.0, INFINITY, 0.0, 0.0};
  for (size_t i = 0; i < n; i++) {
    if (!freeair__closed(flow[i], 0.0, 1e4) || !freeair__closed(duration[i], 0.0, 1e9)) return FREEAIR_ERR_DOMAIN;
    if (!(duration[i] > 0.0)) continue;
    p->air += flow[i] * duration[i];
    p->time += duration[i];
    p->peak = fmax(p->peak, flow[i]);
    p->least = fmin(p->least, flow[i]);
  }
  if (!(p->time > 0.0)) return FREEAIR_ERR_DATA;
  p->mean = p->air / p->time;
  return FREEAIR_OK;
}

/* Greatest running deficit of a profile that repeats. Twice through: the first time ends as the second begins. */
static double deficit(const profile *p, double capacity)
{
  double now = 0.0;
  double most = 0.0;
  for (int round = 0; round < 2; round++)
    for (size_t i = 0; i < p->n; i++) {
      now = fmax(0.0, now + (p->flow[i] - capacity) * p->duration[i]);
      most = fmax(most, now);
    }
  return most;
}

int32_t freeair_demand_summary(const double *flow_m3_s, const double *duration_s, size_t n, double *mean_m3_s,
                               double *peak_m3_s, double *least_m3_s, double *air_m3, double *time_s)
{
  freeair__set_nan(mean_m3_s);
  freeair__set_nan(peak_m3_s);
  freeair__set_nan(least_m3_s);
  freeair__set_nan(air_m3);
  freeair__set_nan(time_s);
  if (flow_m3_s == NULL || duration_s == NULL || mean_m3_s == NULL || peak_m3_s == NULL || least_m3_s == NULL ||
      air_m3 == NULL || time_s == NULL)
    return FREEAIR_ERR_NULL;
  profile p;
  const int32_t status = read_profile(flow_m3_s, duration_s, n, &p);
  if (status < 0) return status;
  *mean_m3_s = p.mean;
  *peak_m3_s = p.peak;
  *least_m3_s = p.least;
  *air_m3 = p.air;
  *time_s = p.time;
  return FREEAIR_OK;
}

int32_t freeair_demand_store(const double *flow_m3_s, const double *duration_s, size_t n, double capacity_m3_s,
                             double *store_m3, double *short_s, double *duty)
{
  freeair__set_nan(store_m3);
  freeair__set_nan(short_s);
  freeair__set_nan(duty);
  if (flow_m3_s == NULL || duration_s == NULL || store_m3 == NULL || short_s == NULL || duty == NULL)
    return FREEAIR_ERR_NULL;
  profile p;
  const int32_t status = read_profile(flow_m3_s, duration_s, n, &p);
  if (status < 0) return status;
  if (!freeair__closed(capacity_m3_s, 0.0, 1e4)) return FREEAIR_ERR_DOMAIN;
  if (p.mean > capacity_m3_s) return FREEAIR_ERR_NO_SOLUTION;
  double over = 0.0;
  for (size_t i = 0; i < n; i++)
    if (flow_m3_s[i] > capacity_m3_s) over += duration_s[i];
  *store_m3 = deficit(&p, capacity_m3_s);
  *short_s = over;
  *duty = capacity_m3_s > 0.0 ? p.mean / capacity_m3_s : 0.0;
  return FREEAIR_OK;
}

int32_t freeair_demand_capacity(const double *flow_m3_s, const double *duration_s, size_t n, double store_m3,
                                double *capacity_m3_s)
{
  freeair__set_nan(capacity_m3_s);
  if (flow_m3_s == NULL || duration_s == NULL || capacity_m3_s == NULL) return FREEAIR_ERR_NULL;
  profile p;
  const int32_t status = read_profile(flow_m3_s, duration_s, n, &p);
  if (status < 0) return status;
  if (!freeair__closed(store_m3, 0.0, 1e12)) return FREEAIR_ERR_DOMAIN;
  double low = p.mean;
  double high = p.peak;
  if (deficit(&p, low) <= store_m3) high = low;
  for (int step = 0; step < 100 && high - low > 1e-15 * high; step++) {
    const double middle = 0.5 * (low + high);
    if (deficit(&p, middle) > store_m3)
      low = middle;
    else
      high = middle;
  }
  *capacity_m3_s = high;
  return FREEAIR_OK;
}

int32_t freeair_demand_tools(const double *tools, const double *flow_m3_s, const double *use, size_t kinds,
                             double *mean_m3_s, double *deviation_m3_s, double *connected_m3_s)
{
  freeair__set_nan(mean_m3_s);
  freeair__set_nan(deviation_m3_s);
  freeair__set_nan(connected_m3_s);
  if (tools == NULL || flow_m3_s == NULL || use == NULL || mean_m3_s == NULL || deviation_m3_s == NULL ||
      connected_m3_s == NULL)
    return FREEAIR_ERR_NULL;
  if (kinds == 0) return FREEAIR_ERR_DATA;
  double mean = 0.0;
  double variance = 0.0;
  double connected = 0.0;
  for (size_t i = 0; i < kinds; i++) {
    if (!freeair__closed(tools[i], 0.0, 1e6) || floor(tools[i]) < tools[i] ||
        !freeair__closed(flow_m3_s[i], 0.0, 1e3) || !freeair__closed(use[i], 0.0, 1.0))
      return FREEAIR_ERR_DOMAIN;
    const double all = tools[i] * flow_m3_s[i];
    connected += all;
    mean += all * use[i];
    variance += all * flow_m3_s[i] * use[i] * (1.0 - use[i]);
  }
  *mean_m3_s = mean;
  *deviation_m3_s = sqrt(variance);
  *connected_m3_s = connected;
  return FREEAIR_OK;
}

int32_t freeair_demand_running(int32_t tools, double use, double confidence, int32_t *running, double *share)
{
  if (running != NULL) *running = 0;
  freeair__set_nan(share);
  if (running == NULL || share == NULL) return FREEAIR_ERR_NULL;
  if (tools < 1 || tools > 10000 || !freeair__closed(use, 0.0, 1.0) || !freeair__from(confidence, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  if (!(use < 1.0)) {
    *running = tools;
    *share = 1.0;
    return FREEAIR_OK;
  }
  /* P(X = k), k = 0, 1, ... kept as a mantissa with its power of two, so that (1 - use)^tools does not underflow */
  const double odds = use / (1.0 - use);
  double log2_mass = tools * (log1p(-use) / 0.69314718055994530942);
  int scale = (int)floor(log2_mass);
  double mass = exp2(log2_mass - scale);
  double sum = ldexp(mass, scale);
  int32_t k = 0;
  while (k < tools && sum < confidence) {
    mass *= odds * (tools - k) / (k + 1.0);
    k++;
    int shift;
    mass = frexp(mass, &shift);
    scale += shift;
    sum += ldexp(mass, scale);
  }
  *running = k;
  *share = k < tools ? fmin(sum, 1.0) : 1.0;
  return FREEAIR_OK;
}

int32_t freeair_demand_simultaneity(double group_m3_s, double members_m3_s, double *simultaneity, double *diversity)
{
  freeair__set_nan(simultaneity);
  freeair__set_nan(diversity);
  if (simultaneity == NULL || diversity == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(group_m3_s, 0.0, 1e6) || !freeair__closed(members_m3_s, 1e-9, 1e6)) return FREEAIR_ERR_DOMAIN;
  *simultaneity = group_m3_s / members_m3_s;
  *diversity = group_m3_s > 0.0 ? members_m3_s / group_m3_s : INFINITY;
  return group_m3_s > members_m3_s ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

int32_t freeair_demand_at_pressure(double q1_m3_s, double p1_pa, double p2_pa, double regulated, double *q2_m3_s)
{
  freeair__set_nan(q2_m3_s);
  if (q2_m3_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(q1_m3_s, 0.0, 1e4) || !freeair__closed(p1_pa, 1e4, 1e8) || !freeair__closed(p2_pa, 1e4, 1e8) ||
      !freeair__closed(regulated, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *q2_m3_s = q1_m3_s * (regulated + (1.0 - regulated) * p2_pa / p1_pa);
  return FREEAIR_OK;
}
