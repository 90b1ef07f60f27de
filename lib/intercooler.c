/* SPDX-License-Identifier: MIT */
#include <freeair/intercooler.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/structure.h"

static const freeair_intercooler_stages initial = FREEAIR_INTERCOOLER_STAGES_INIT;

enum { TERMS = 320 }; /* enough for NTU = 100: Poisson's distribution of that mean ends before */
static const double ntu_most = 100.0;

/* 1 - exp(-a) sum over m <= n of a^m/m!, n = 0 ... TERMS - 1, from the small end so that nothing cancels */
static void poisson_tails(double a, double *tail)
{
  double mass[TERMS + 1];
  mass[0] = exp(-a);
  for (int m = 1; m <= TERMS; m++) mass[m] = mass[m - 1] * a / m;
  double sum = 0.0;
  for (int n = TERMS; n-- > 0;) tail[n] = sum += mass[n + 1];
}

/* Mason's series */
static double cross_unmixed(double ntu, double c)
{
  double hot[TERMS];
  double cold[TERMS];
  if (!(ntu > 0.0)) return 0.0;
  if (c * ntu < 1e-200) return -expm1(-ntu);
  poisson_tails(ntu, hot);
  poisson_tails(c * ntu, cold);
  double sum = 0.0;
  for (int n = TERMS; n-- > 0;) sum += hot[n] * cold[n];
  return sum / (c * ntu);
}

static int arrangement_valid(int32_t arrangement)
{
  return arrangement >= FREEAIR_INTERCOOLER_COUNTERFLOW && arrangement <= FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED;
}

static double effectiveness_of(int32_t arrangement, double ntu, double c)
{
  if (c < 1e-200) return -expm1(-ntu);
  switch (arrangement) {
  case FREEAIR_INTERCOOLER_COUNTERFLOW: {
    const double q = c < 1.0 ? -expm1(-ntu * (1.0 - c)) / (1.0 - c) : ntu;
    return q / (1.0 + c * q);
  }
  case FREEAIR_INTERCOOLER_PARALLEL: return -expm1(-ntu * (1.0 + c)) / (1.0 + c);
  case FREEAIR_INTERCOOLER_SHELL_AND_TUBE: {
    const double s = sqrt(1.0 + c * c);
    const double rest = -expm1(-ntu * s);
    return 2.0 * rest / ((1.0 + c) * rest + s * (2.0 - rest));
  }
  case FREEAIR_INTERCOOLER_CROSS_UNMIXED: return cross_unmixed(ntu, c);
  case FREEAIR_INTERCOOLER_CROSS_LARGER_MIXED: return -expm1(c * expm1(-ntu)) / c;
  default: return -expm1(expm1(-c * ntu) / c);
  }
}

/* Infinite or NaN where there is none. */
static double ntu_of(int32_t arrangement, double e, double c)
{
  if (!(e > 0.0)) return 0.0;
  if (c < 1e-200) return -log1p(-e);
  double x;
  switch (arrangement) {
  case FREEAIR_INTERCOOLER_COUNTERFLOW:
    x = e / (1.0 - c * e);
    return c < 1.0 ? -log1p(-x * (1.0 - c)) / (1.0 - c) : x;
  case FREEAIR_INTERCOOLER_PARALLEL:
    x = e * (1.0 + c);
    return x < 1.0 ? -log1p(-x) / (1.0 + c) : INFINITY;
  case FREEAIR_INTERCOOLER_SHELL_AND_TUBE: {
    const double s = sqrt(1.0 + c * c);
    x = 2.0 * e * s / (2.0 - e * (1.0 + c) + e * s);
    return x < 1.0 ? -log1p(-x) / s : INFINITY;
  }
  case FREEAIR_INTERCOOLER_CROSS_LARGER_MIXED:
    x = log1p(-c * e) / c;
    return x > -1.0 ? -log1p(x) : INFINITY;
  case FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED:
    x = c * log1p(-e);
    return x > -1.0 ? -log1p(x) / c : INFINITY;
  default: break;
  }
  if (cross_unmixed(ntu_most, c) < e) return INFINITY;
  double low = e * (1.0 - 1e-12); /* effectiveness is below NTU */
  double high = ntu_most;
  for (int step = 0; step < 200 && high - low > 1e-15 * high; step++) {
    const double middle = low > 0.1 * high ? 0.5 * (low + high) : sqrt(low * high);
    if (cross_unmixed(middle, c) < e)
      low = middle;
    else
      high = middle;
  }
  return 0.5 * (low + high);
}

int32_t freeair_intercooler_effectiveness(int32_t arrangement, double ntu, double ratio, double *effectiveness)
{
  freeair__set_nan(effectiveness);
  if (effectiveness == NULL) return FREEAIR_ERR_NULL;
  if (!arrangement_valid(arrangement) || !freeair__closed(ntu, 0.0, ntu_most) || !freeair__closed(ratio, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *effectiveness = effectiveness_of(arrangement, ntu, ratio);
  return FREEAIR_OK;
}

int32_t freeair_intercooler_ntu(int32_t arrangement, double effectiveness, double ratio, double *ntu)
{
  freeair__set_nan(ntu);
  if (ntu == NULL) return FREEAIR_ERR_NULL;
  if (!arrangement_valid(arrangement) || !freeair__from(effectiveness, 0.0, 1.0) || !freeair__closed(ratio, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  const double found = ntu_of(arrangement, effectiveness, ratio);
  if (!(found <= ntu_most)) return FREEAIR_ERR_NO_SOLUTION;
  *ntu = found;
  return FREEAIR_OK;
}

int32_t freeair_intercooler_outlet(int32_t arrangement, double ua_w_k, double air_w_k, double air_in_k,
                                   double coolant_w_k, double coolant_in_k, double *air_out_k, double *coolant_out_k,
                                   double *heat_w, double *effectiveness)
{
  freeair__set_nan(air_out_k);
  freeair__set_nan(coolant_out_k);
  freeair__set_nan(heat_w);
  freeair__set_nan(effectiveness);
  if (air_out_k == NULL || coolant_out_k == NULL || heat_w == NULL || effectiveness == NULL) return FREEAIR_ERR_NULL;
  if (!arrangement_valid(arrangement) || !freeair__closed(ua_w_k, 0.0, 1e7) ||
      !freeair__closed(air_w_k, 0.001, 1e7) || !freeair__closed(air_in_k, 50.0, 2000.0) ||
      !freeair__closed(coolant_w_k, 0.001, 1e9) || !freeair__closed(coolant_in_k, 50.0, 2000.0))
    return FREEAIR_ERR_DOMAIN;
  const double lesser = fmin(air_w_k, coolant_w_k);
  const double ntu = ua_w_k / lesser;
  if (!(ntu <= ntu_most)) return FREEAIR_ERR_DOMAIN;
  const double e = effectiveness_of(arrangement, ntu, lesser / fmax(air_w_k, coolant_w_k));
  const double heat = e * lesser * (air_in_k - coolant_in_k);
  *heat_w = heat;
  *air_out_k = air_in_k - heat / air_w_k;
  *coolant_out_k = coolant_in_k + heat / coolant_w_k;
  *effectiveness = e;
  return FREEAIR_OK;
}

int32_t freeair_intercooler_size_from_readings(int32_t arrangement, double air_w_k, double air_in_k,
                                               double air_out_k, double coolant_w_k, double coolant_in_k,
                                               double *ua_w_k, double *heat_w)
{
  freeair__set_nan(ua_w_k);
  freeair__set_nan(heat_w);
  if (ua_w_k == NULL || heat_w == NULL) return FREEAIR_ERR_NULL;
  if (!arrangement_valid(arrangement) || !freeair__closed(air_w_k, 0.001, 1e7) ||
      !freeair__closed(air_in_k, 50.0, 2000.0) || !freeair__closed(air_out_k, 50.0, 2000.0) ||
      !freeair__closed(coolant_w_k, 0.001, 1e9) || !freeair__closed(coolant_in_k, 50.0, 2000.0) ||
      !(fabs(air_in_k - coolant_in_k) > 0.0))
    return FREEAIR_ERR_DOMAIN;
  const double lesser = fmin(air_w_k, coolant_w_k);
  const double heat = air_w_k * (air_in_k - air_out_k);
  const double e = heat / lesser / (air_in_k - coolant_in_k);
  if (!(e >= 0.0 && e < 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  const double ntu = ntu_of(arrangement, e, lesser / fmax(air_w_k, coolant_w_k));
  if (!(ntu <= ntu_most)) return FREEAIR_ERR_NO_SOLUTION;
  *ua_w_k = ntu * lesser;
  *heat_w = heat;
  return FREEAIR_OK;
}

int32_t freeair_intercooler_approach(double air_in_k, double air_out_k, double coolant_in_k, double *approach_k,
                                     double *effectiveness)
{
  freeair__set_nan(approach_k);
  freeair__set_nan(effectiveness);
  if (approach_k == NULL || effectiveness == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(air_in_k, 50.0, 2000.0) || !freeair__closed(air_out_k, 50.0, 2000.0) ||
      !freeair__closed(coolant_in_k, 50.0, 2000.0) || coolant_in_k >= air_in_k)
    return FREEAIR_ERR_DOMAIN;
  *approach_k = air_out_k - coolant_in_k;
  *effectiveness = (air_in_k - air_out_k) / (air_in_k - coolant_in_k);
  return air_out_k < coolant_in_k || air_out_k > air_in_k ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

int32_t freeair_intercooler_mean_difference(double difference1_k, double difference2_k, double *mean_k)
{
  freeair__set_nan(mean_k);
  if (mean_k == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(difference1_k, 1e-6, 2000.0) || !freeair__closed(difference2_k, 1e-6, 2000.0))
    return FREEAIR_ERR_DOMAIN;
  const double x = (difference1_k - difference2_k) / difference2_k;
  const double log_ratio = fabs(x) < 0.5 ? log1p(x) : log(difference1_k / difference2_k);
  *mean_k = fabs(x) > 0.0 ? difference2_k * (x / log_ratio) : difference1_k;
  return FREEAIR_OK;
}

int32_t freeair_intercooler_coolant_flow(double heat_w, double cp_j_kg_k, double rise_k, double *mass_kg_s)
{
  freeair__set_nan(mass_kg_s);
  if (mass_kg_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(heat_w, 0.0, 1e9) || !freeair__closed(cp_j_kg_k, 10.0, 100000.0) ||
      !freeair__closed(rise_k, 0.01, 1000.0))
    return FREEAIR_ERR_DOMAIN;
  *mass_kg_s = heat_w / (cp_j_kg_k * rise_k);
  return FREEAIR_OK;
}

/* 1 + c - c r^(1/n); negative where nothing is delivered. */
static double volumetric(double clearance, double ratio, double n)
{
  return 1.0 - clearance * expm1(log(ratio) / n);
}

/* Mass that the first stage delivers less what the second takes, by one over the gas constant. */
static double surplus(const freeair_intercooler_stages *s, double p)
{
  const double inlet = p - s->drop_pa;
  return s->displacement1_m3_s * volumetric(s->clearance1, p / s->p1_pa, s->exponent) * s->p1_pa / s->t1_k -
         s->displacement2_m3_s * volumetric(s->clearance2, s->p2_pa / inlet, s->exponent) * inlet / s->t2_k;
}

int32_t freeair_intercooler_pressure(const freeair_intercooler_stages *stages, double *p_pa, double *efficiency1,
                                     double *efficiency2, double *delivery_m3_s)
{
  freeair__set_nan(p_pa);
  freeair__set_nan(efficiency1);
  freeair__set_nan(efficiency2);
  freeair__set_nan(delivery_m3_s);
  if (stages == NULL || p_pa == NULL || efficiency1 == NULL || efficiency2 == NULL || delivery_m3_s == NULL)
    return FREEAIR_ERR_NULL;
  freeair_intercooler_stages s = initial;
  const int32_t status = freeair__structure_read(&s, sizeof s, stages, FREEAIR_INTERCOOLER_STAGES_BASELINE);
  if (status < 0) return status;
  if (s.flags != 0) return FREEAIR_ERR_VERSION;
  s.clearance1 = freeair__or(s.clearance1, 0.0);
  s.clearance2 = freeair__or(s.clearance2, 0.0);
  s.exponent = freeair__or(s.exponent, 1.3);
  s.t1_k = freeair__or(s.t1_k, 293.15);
  s.t2_k = freeair__or(s.t2_k, s.t1_k);
  s.drop_pa = freeair__or(s.drop_pa, 0.0);
  if (!freeair__closed(s.displacement1_m3_s, 1e-9, 1e3) || !freeair__closed(s.clearance1, 0.0, 1.0) ||
      !freeair__closed(s.displacement2_m3_s, 1e-9, 1e3) || !freeair__closed(s.clearance2, 0.0, 1.0) ||
      !freeair__closed(s.exponent, 1.0, 2.0) || !freeair__closed(s.p1_pa, 1000.0, 1e7) ||
      !freeair__closed(s.t1_k, 50.0, 2000.0) || !freeair__closed(s.p2_pa, 1000.0, 1e8) ||
      !freeair__closed(s.t2_k, 50.0, 2000.0) || !freeair__closed(s.drop_pa, 0.0, 1e7) || s.p2_pa <= s.p1_pa)
    return FREEAIR_ERR_DOMAIN;

  double low = fmax(s.p1_pa, s.drop_pa * (1.0 + 1e-12));
  double high = s.p2_pa + s.drop_pa;
  const int first_alone = surplus(&s, high) > 0.0;
  if (first_alone) {
    low = high;
  } else if (surplus(&s, low) < 0.0) {
    high = low; /* the first stage breathes freely and the second does all */
  }
  for (int step = 0; step < 120 && high - low > 2e-16 * high; step++) {
    const double middle = 0.5 * (low + high);
    if (surplus(&s, middle) > 0.0)
      low = middle;
    else
      high = middle;
  }
  const double p = 0.5 * (low + high);
  const double e1 = volumetric(s.clearance1, p / s.p1_pa, s.exponent);
  const double e2 = volumetric(s.clearance2, s.p2_pa / (p - s.drop_pa), s.exponent);
  const double passes = first_alone ? s.displacement1_m3_s * e1
                                    : s.displacement2_m3_s * e2 * (p - s.drop_pa) / s.t2_k * s.t1_k / s.p1_pa;
  if (!(e1 > 0.0 && e2 > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *p_pa = p;
  *efficiency1 = e1;
  *efficiency2 = e2;
  *delivery_m3_s = passes;
  return first_alone || !(p > s.p1_pa) ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}
