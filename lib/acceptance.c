/* SPDX-License-Identifier: MIT */
#include <freeair/acceptance.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "internal/check.h"
#include "internal/structure.h"

static const freeair_acceptance_test initial = FREEAIR_ACCEPTANCE_TEST_INIT;

int32_t freeair_acceptance_tolerances(double flow_m3_s, double *flow_tolerance, double *energy_tolerance)
{
  freeair__set_nan(flow_tolerance);
  freeair__set_nan(energy_tolerance);
  if (flow_tolerance == NULL || energy_tolerance == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(flow_m3_s, 0.0, 1e4)) return FREEAIR_ERR_DOMAIN;
  const double per_minute = flow_m3_s * 60.0;
  static const double flow[] = {0.07, 0.06, 0.05, 0.04};
  static const double energy[] = {0.08, 0.07, 0.06, 0.05};
  const int size = per_minute < 0.5 ? 0 : per_minute < 1.5 ? 1 : per_minute <= 15.0 ? 2 : 3;
  *flow_tolerance = flow[size];
  *energy_tolerance = energy[size];
  return FREEAIR_OK;
}

/* Conditions under which a machine runs, in the test or by the contract. */
typedef struct conditions {
  double speed;
  double inlet_pa;
  double inlet_k;
  double discharge_pa;
  double coolant_k;
} conditions;

static double log_stage_ratio(const conditions *c, int32_t stages)
{
  return log1p((c->discharge_pa - c->inlet_pa) / c->inlet_pa) / stages;
}

static double volumetric(const conditions *c, const freeair_acceptance_test *t, int32_t stages)
{
  return 1.0 - t->clearance * expm1(log_stage_ratio(c, stages) / t->exponent);
}

/* Work of all stages for the volume that comes in, over constants that cancel. */
static double work(const conditions *c, const freeair_acceptance_test *t, int32_t stages)
{
  const double a = (t->exponent - 1.0) / t->exponent;
  const double ratio = log_stage_ratio(c, stages);
  const double behind_cooler = (c->coolant_k + t->approach_k) / c->inlet_k;
  return c->inlet_pa * (a > 0.0 ? expm1(a * ratio) / a : ratio) * (1.0 + (stages - 1) * behind_cooler);
}

static int conditions_valid(const conditions *c)
{
  return freeair__closed(c->speed, 0.1, 1000.0) && freeair__closed(c->inlet_pa, 1e4, 1e7) &&
         freeair__closed(c->inlet_k, 150.0, 500.0) && freeair__closed(c->discharge_pa, 1e4, 1e8) &&
         freeair__closed(c->coolant_k, 150.0, 500.0) && c->discharge_pa > c->inlet_pa;
}

int32_t freeair_acceptance_correct(const freeair_acceptance_test *test, int32_t stages, double *flow_m3_s,
                                   double *power_w, double *specific_j_m3, double *flow_factor, double *power_factor)
{
  freeair__set_nan(flow_m3_s);
  freeair__set_nan(power_w);
  freeair__set_nan(specific_j_m3);
  freeair__set_nan(flow_factor);
  freeair__set_nan(power_factor);
  if (test == NULL || flow_m3_s == NULL || power_w == NULL || specific_j_m3 == NULL || flow_factor == NULL ||
      power_factor == NULL)
    return FREEAIR_ERR_NULL;
  freeair_acceptance_test t = initial;
  const int32_t status = freeair__structure_read(&t, sizeof t, test, FREEAIR_ACCEPTANCE_TEST_BASELINE);
  if (status < 0) return status;
  if (t.flags != 0) return FREEAIR_ERR_VERSION;
  if (!freeair__given(t.speed_rev_s) && freeair__given(t.contract_speed_rev_s)) return FREEAIR_ERR_DOMAIN;
  conditions found;
  found.speed = freeair__or(t.speed_rev_s, 1.0);
  found.inlet_pa = t.inlet_pa;
  found.inlet_k = freeair__or(t.inlet_k, 293.15);
  found.discharge_pa = t.discharge_pa;
  found.coolant_k = freeair__or(t.coolant_k, found.inlet_k);
  conditions asked;
  asked.speed = freeair__or(t.contract_speed_rev_s, found.speed);
  asked.inlet_pa = freeair__or(t.contract_inlet_pa, found.inlet_pa);
  asked.inlet_k = freeair__or(t.contract_inlet_k, found.inlet_k);
  asked.discharge_pa = freeair__or(t.contract_discharge_pa, found.discharge_pa);
  asked.coolant_k = freeair__or(t.contract_coolant_k, found.coolant_k);
  t.approach_k = freeair__or(t.approach_k, 10.0);
  t.clearance = freeair__or(t.clearance, 0.0);
  t.exponent = freeair__or(t.exponent, 1.4);
  if (!freeair__closed(t.flow_m3_s, 1e-6, 1e4) || !freeair__closed(t.power_w, 0.0, 1e9) ||
      !freeair__closed(t.approach_k, 0.0, 200.0) || !freeair__closed(t.clearance, 0.0, 0.5) ||
      !freeair__closed(t.exponent, 1.0, 2.0) || stages < 1 || stages > 10 || !conditions_valid(&found) ||
      !conditions_valid(&asked))
    return FREEAIR_ERR_DOMAIN;
  const double breathes = volumetric(&found, &t, stages);
  const double would_breathe = volumetric(&asked, &t, stages);
  if (!(breathes > 0.0 && would_breathe > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  const double flow = asked.speed / found.speed * (would_breathe / breathes);
  const double power = flow * (work(&asked, &t, stages) / work(&found, &t, stages));
  *flow_m3_s = t.flow_m3_s * flow;
  *power_w = t.power_w * power;
  *specific_j_m3 = *power_w / *flow_m3_s;
  *flow_factor = flow;
  *power_factor = power;
  return fabs(flow - 1.0) > 0.1 || fabs(power - 1.0) > 0.1 ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}

static int32_t judge(double found, double uncertainty, double guarantee, double lower, double upper, double confidence,
                     int32_t *verdict, double *deviation, double *probability)
{
  int32_t status = freeair_verdict_decide(found, uncertainty, lower, upper, confidence, verdict);
  if (status >= 0) status = freeair_verdict_probability(found, uncertainty, lower, upper, probability);
  if (status >= 0) *deviation = (found - guarantee) / guarantee;
  return status;
}

int32_t freeair_acceptance_flow_verdict(double flow_m3_s, double uncertainty_m3_s, double guarantee_m3_s,
                                        double tolerance, double confidence, int32_t *verdict, double *deviation,
                                        double *probability)
{
  if (verdict != NULL) *verdict = FREEAIR_VERDICT_CANNOT_TELL;
  freeair__set_nan(deviation);
  freeair__set_nan(probability);
  if (verdict == NULL || deviation == NULL || probability == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(flow_m3_s, 0.0, 1e4) || !freeair__closed(uncertainty_m3_s, 0.0, 1e4) ||
      !freeair__closed(guarantee_m3_s, 1e-6, 1e4) || !freeair__closed(tolerance, 0.0, 0.5) ||
      !freeair__open(confidence, 0.5, 1.0))
    return FREEAIR_ERR_DOMAIN;
  return judge(flow_m3_s, uncertainty_m3_s, guarantee_m3_s, guarantee_m3_s * (1.0 - tolerance), INFINITY, confidence,
               verdict, deviation, probability);
}

int32_t freeair_acceptance_energy_verdict(double specific_j_m3, double uncertainty_j_m3, double guarantee_j_m3,
                                          double tolerance, double confidence, int32_t *verdict, double *deviation,
                                          double *probability)
{
  if (verdict != NULL) *verdict = FREEAIR_VERDICT_CANNOT_TELL;
  freeair__set_nan(deviation);
  freeair__set_nan(probability);
  if (verdict == NULL || deviation == NULL || probability == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(specific_j_m3, 0.0, 1e9) || !freeair__closed(uncertainty_j_m3, 0.0, 1e9) ||
      !freeair__closed(guarantee_j_m3, 1.0, 1e9) || !freeair__closed(tolerance, 0.0, 0.5) ||
      !freeair__open(confidence, 0.5, 1.0))
    return FREEAIR_ERR_DOMAIN;
  return judge(specific_j_m3, uncertainty_j_m3, guarantee_j_m3, -INFINITY, guarantee_j_m3 * (1.0 + tolerance),
               confidence, verdict, deviation, probability);
}
