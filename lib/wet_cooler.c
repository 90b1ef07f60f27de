/* SPDX-License-Identifier: MIT */
#include <freeair/condensate.h>
#include <freeair/intercooler.h>
#include <freeair/status.h>
#include <freeair/wet_cooler.h>

#include "internal/check.h"
#include "internal/structure.h"

static const freeair_condensate_flow empty = FREEAIR_CONDENSATE_FLOW_INIT;

static int is_temperature(double t_k)
{
  return freeair__closed(t_k, 213.15, 573.15);
}

/* A cooler as the search sees it. */
typedef struct cooler {
  int32_t arrangement;
  double p_pa;
  double coolant_w_k;
  double coolant_in_k;
  freeair_condensate_flow before;
  double dew_k; /* where the air begins to lose water at p_pa; 0 where it never does */
  /* by the last call of size() */
  double heat_w;
  double water_kg_s;
  double effectiveness;
} cooler;

/* The flow before, in equilibrium at its own pressure and temperature. */
static int32_t begin(const freeair_condensate_flow *before, freeair_condensate_flow *start)
{
  freeair_condensate_flow b = empty;
  int32_t status = freeair__structure_read(&b, sizeof b, before, FREEAIR_CONDENSATE_FLOW_BASELINE);
  if (status < 0) return status;
  b.struct_size = (uint32_t)sizeof b;
  *start = empty;
  return freeair_condensate_step(&b, b.p_pa, b.t_k, 0.0, start);
}

static int32_t begin_cooler(cooler *c)
{
  freeair_condensate_flow at = empty;
  const int32_t status = freeair_condensate_step(&c->before, c->p_pa, c->before.t_k, 0.0, &at);
  c->dew_k = freeair__or(at.dew_point_k, 0.0);
  return status;
}

/* Heat that the air gives up on its way to a temperature. */
static int32_t given_up(const cooler *c, double t_k, double *heat_w, double *water_kg_s)
{
  freeair_condensate_flow at = empty;
  const int32_t status = freeair_condensate_step(&c->before, c->p_pa, t_k, 0.0, &at);
  *heat_w = at.released_w;
  *water_kg_s = at.liquid_kg_s;
  return status;
}

/* Logarithmic mean of two positive differences; none where one is not positive. */
static double mean_difference(double a, double b)
{
  double mean;
  if (!(a > 0.0) || !(b > 0.0)) return 0.0;
  return freeair_intercooler_mean_difference(fmax(a, 1e-6), fmax(b, 1e-6), &mean) < 0 ? 0.0 : mean;
}

/* Size in counterflow of the piece of cooler between two air temperatures: the sum of heat over logarithmic mean
 * difference of that many parts. Infinite where air and coolant would meet. */
static int32_t piece(const cooler *c, double from_k, double to_k, int parts, double *ua_w_k)
{
  double before;
  double water;
  double sum = 0.0;
  double t = from_k;
  int32_t status = given_up(c, t, &before, &water);
  for (int i = 1; i <= parts && status >= 0; i++) {
    const double next = i < parts ? from_k + (to_k - from_k) * i / parts : to_k;
    double after;
    status = given_up(c, next, &after, &water);
    if (status < 0) break;
    const double here = t - c->coolant_in_k - (c->heat_w - before) / c->coolant_w_k;
    const double there = next - c->coolant_in_k - (c->heat_w - after) / c->coolant_w_k;
    const double mean = mean_difference(here, there);
    sum += mean > 0.0 ? (after - before) / mean : INFINITY;
    before = after;
    t = next;
  }
  *ua_w_k = sum;
  return status;
}

/* The same with the error of the parts extrapolated away. */
static int32_t extrapolated(const cooler *c, double from_k, double to_k, double *ua_w_k)
{
  double coarse;
  double fine;
  if (!(from_k > to_k)) return FREEAIR_OK;
  int32_t status = piece(c, from_k, to_k, 8, &coarse);
  if (status >= 0) status = piece(c, from_k, to_k, 16, &fine);
  if (status >= 0) *ua_w_k += isfinite(fine) && isfinite(coarse) ? fine + (fine - coarse) / 3.0 : INFINITY;
  return status;
}

/* The size that an outlet temperature asks for: in counterflow along the way of the air, dry and wet, over the
 * correction for the arrangement. Infinite where there is none. */
static int32_t size(cooler *c, double t_out_k, double *ua_w_k)
{
  const double span = c->before.t_k - c->coolant_in_k;
  const double middle = fmin(fmax(c->dew_k, t_out_k), c->before.t_k);
  int32_t status = given_up(c, t_out_k, &c->heat_w, &c->water_kg_s);
  if (status < 0) return status;
  *ua_w_k = 0.0;
  c->effectiveness = 0.0;
  if (!(c->heat_w > 0.0)) return FREEAIR_OK;
  const double air_w_k = c->heat_w / (c->before.t_k - t_out_k);
  const double lesser = fmin(air_w_k, c->coolant_w_k);
  const double ratio = lesser / fmax(air_w_k, c->coolant_w_k);
  double ntu;
  double ideal;
  c->effectiveness = c->heat_w / (lesser * span);
  if (freeair_intercooler_ntu(c->arrangement, c->effectiveness, ratio, &ntu) < 0 ||
      freeair_intercooler_ntu(FREEAIR_INTERCOOLER_COUNTERFLOW, c->effectiveness, ratio, &ideal) < 0) {
    *ua_w_k = INFINITY;
    return FREEAIR_OK;
  }
  status = extrapolated(c, c->before.t_k, middle, ua_w_k);
  if (status >= 0) status = extrapolated(c, middle, t_out_k, ua_w_k);
  if (ideal > 0.0) *ua_w_k *= ntu / ideal;
  return status;
}

/* The outlet temperature between coolant and inlet that asks for a size: the share wanted/(wanted + asked) is 0.5
 * there, 0 where the coolant is met and 1 at the inlet. */
static int32_t balance(cooler *c, double wanted_w_k, double *t_out_k)
{
  double lo = c->coolant_in_k;
  double hi = c->before.t_k;
  double at_lo = -0.5;
  double at_hi = 0.5;
  *t_out_k = hi;
  if (!(wanted_w_k > 0.0)) return FREEAIR_OK;
  for (int i = 0; i < 200 && hi - lo > 1e-12 * hi; i++) {
    double asked;
    double t = i % 3 == 2 ? 0.5 * (lo + hi) : lo + (hi - lo) * (at_lo / (at_lo - at_hi));
    if (!(t > lo && t < hi)) t = 0.5 * (lo + hi);
    const int32_t status = size(c, t, &asked);
    if (status < 0) return status;
    *t_out_k = t;
    const double at = isfinite(asked) ? wanted_w_k / (wanted_w_k + asked) - 0.5 : -0.5;
    if (!(fabs(at) > 1e-12)) break;
    /* the end that stays counts half, so that both move */
    if (at < 0.0) {
      lo = t;
      at_lo = at;
      at_hi *= 0.5;
    } else {
      hi = t;
      at_hi = at;
      at_lo *= 0.5;
    }
  }
  return FREEAIR_OK;
}

static int is_arrangement(int32_t arrangement)
{
  return arrangement >= FREEAIR_INTERCOOLER_COUNTERFLOW && arrangement <= FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED;
}

int32_t freeair_wet_cooler_outlet(int32_t arrangement, double ua_w_k, const freeair_condensate_flow *before,
                                  double p_pa, double separation, double coolant_w_k, double coolant_in_k,
                                  freeair_condensate_flow *after, double *coolant_out_k, double *heat_w,
                                  double *effectiveness)
{
  cooler c = {arrangement, p_pa, coolant_w_k, coolant_in_k, empty, 0.0, 0.0, 0.0, 0.0};
  /* before and after may be the same flow */
  const int32_t first = before == NULL ? FREEAIR_ERR_NULL : begin(before, &c.before);
  freeair__set_nan(coolant_out_k);
  freeair__set_nan(heat_w);
  freeair__set_nan(effectiveness);
  if (after == NULL) return FREEAIR_ERR_NULL;
  const int32_t written = freeair__structure_write(after, &empty, sizeof empty, FREEAIR_CONDENSATE_FLOW_BASELINE);
  if (before == NULL || coolant_out_k == NULL || heat_w == NULL || effectiveness == NULL) return FREEAIR_ERR_NULL;
  if (first < 0) return first;
  if (written < 0) return written;
  if (!is_arrangement(arrangement) || !freeair__closed(ua_w_k, 0.0, 1e7) || !freeair__closed(p_pa, 1000.0, 1e7) ||
      !freeair__closed(separation, 0.0, 1.0) || !freeair__closed(coolant_w_k, 0.001, 1e9) ||
      !is_temperature(coolant_in_k) || !(coolant_in_k < c.before.t_k))
    return FREEAIR_ERR_DOMAIN;
  double t;
  freeair_condensate_flow end = empty;
  int32_t status = begin_cooler(&c);
  if (status >= 0) status = balance(&c, ua_w_k, &t);
  if (status >= 0) status = freeair_condensate_step(&c.before, p_pa, t, separation, &end);
  if (status < 0) return status;
  freeair__structure_write(after, &end, sizeof end, FREEAIR_CONDENSATE_FLOW_BASELINE);
  *heat_w = end.released_w;
  *coolant_out_k = coolant_in_k + end.released_w / coolant_w_k;
  *effectiveness = c.effectiveness;
  return status != FREEAIR_OK ? status : first;
}

int32_t freeair_wet_cooler_size_from_readings(int32_t arrangement, const freeair_condensate_flow *before, double p_pa,
                                              double air_out_k, double coolant_w_k, double coolant_in_k,
                                              double *ua_w_k, double *heat_w, double *condensate_kg_s)
{
  freeair__set_nan(ua_w_k);
  freeair__set_nan(heat_w);
  freeair__set_nan(condensate_kg_s);
  if (before == NULL || ua_w_k == NULL || heat_w == NULL || condensate_kg_s == NULL) return FREEAIR_ERR_NULL;
  cooler c = {arrangement, p_pa, coolant_w_k, coolant_in_k, empty, 0.0, 0.0, 0.0, 0.0};
  const int32_t first = begin(before, &c.before);
  if (first < 0) return first;
  if (!is_arrangement(arrangement) || !freeair__closed(p_pa, 1000.0, 1e7) || !is_temperature(air_out_k) ||
      !freeair__closed(coolant_w_k, 0.001, 1e9) || !is_temperature(coolant_in_k) || !(coolant_in_k < c.before.t_k) ||
      !(air_out_k < c.before.t_k))
    return FREEAIR_ERR_DOMAIN;
  double ua;
  int32_t status = begin_cooler(&c);
  if (status >= 0) status = size(&c, air_out_k, &ua);
  if (status < 0) return status;
  if (!(ua <= 1e12) || !(c.heat_w > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *ua_w_k = ua;
  *heat_w = c.heat_w;
  *condensate_kg_s = c.water_kg_s;
  return freeair_condensate_step(&c.before, p_pa, air_out_k, 0.0, &c.before) > 0 ? FREEAIR_WARN_EXTRAPOLATED : first;
}
