/* SPDX-License-Identifier: MIT */
#include <freeair/capacitor.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "internal/check.h"
#include "internal/meter.h"

static const double two_pi = 6.2831853071795864769;
static const double volts = 1e6;

/* A capacitance that is divided by. */
static int positive_valid(double capacitance_f)
{
  return freeair__closed(capacitance_f, 1e-12, 1.0);
}

static int capacitance_valid(double capacitance_f)
{
  return freeair__closed(capacitance_f, 0.0, 1.0);
}

static int frequency_valid(double frequency_hz)
{
  return freeair__closed(frequency_hz, 0.1, 1e5);
}

static int resistance_valid(double r_ohm)
{
  return freeair__closed(r_ohm, 1e-6, 1e12);
}

/* ln(a / b), exact also where the two are close. */
static double log_ratio(double a, double b)
{
  double d = (a - b) / b;
  return d < 0.5 ? log1p(d) : log(a / b);
}

int32_t freeair_capacitor_current(double capacitance_f, double voltage_v, double frequency_hz, double *current_a)
{
  if (current_a == NULL) return FREEAIR_ERR_NULL;
  *current_a = NAN;
  if (!capacitance_valid(capacitance_f) || !freeair__closed(voltage_v, 0.0, volts) || !frequency_valid(frequency_hz))
    return FREEAIR_ERR_DOMAIN;
  *current_a = two_pi * frequency_hz * capacitance_f * voltage_v;
  return FREEAIR_OK;
}

int32_t freeair_capacitor_from_current(double current_a, double current_uncertainty_a, double voltage_v,
                                       double voltage_uncertainty_v, double frequency_hz, double *capacitance_f,
                                       double *uncertainty_f)
{
  freeair__set_nan(capacitance_f);
  freeair__set_nan(uncertainty_f);
  if (capacitance_f == NULL || uncertainty_f == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(current_a, 1e-6, 1e6) || !freeair__closed(current_uncertainty_a, 0.0, 1e6) ||
      !freeair__closed(voltage_v, 1e-3, volts) || !freeair__closed(voltage_uncertainty_v, 0.0, volts) ||
      !frequency_valid(frequency_hz))
    return FREEAIR_ERR_DOMAIN;
  double c = current_a / (two_pi * frequency_hz * voltage_v);
  *capacitance_f = c;
  *uncertainty_f = c * hypot(current_uncertainty_a / current_a, voltage_uncertainty_v / voltage_v);
  return FREEAIR_OK;
}

int32_t freeair_capacitor_uncertainty_from_meter(double reading_f, double accuracy, double counts,
                                                 double resolution_f, double *uncertainty_f)
{
  if (uncertainty_f == NULL) return FREEAIR_ERR_NULL;
  *uncertainty_f = NAN;
  if (!capacitance_valid(reading_f) || !freeair__closed(accuracy, 0.0, 1.0) || !freeair__closed(counts, 0.0, 1e4) ||
      !freeair__closed(resolution_f, 0.0, 1e-3))
    return FREEAIR_ERR_DOMAIN;
  *uncertainty_f = freeair__meter_uncertainty(reading_f, accuracy, counts, resolution_f);
  return FREEAIR_OK;
}

int32_t freeair_capacitor_limits(double rated_f, int32_t tolerance_class, double *minimum_f, double *maximum_f)
{
  static const struct {
    double below, above;
  } tolerances[] = {{0.05, 0.05}, {0.06, 0.06}, {0.10, 0.10}, {0.15, 0.15}, {0.0, 0.20}, {0.0, 0.23}};
  freeair__set_nan(minimum_f);
  freeair__set_nan(maximum_f);
  if (minimum_f == NULL || maximum_f == NULL) return FREEAIR_ERR_NULL;
  if (!positive_valid(rated_f)) return FREEAIR_ERR_DOMAIN;
  if (tolerance_class < FREEAIR_CAPACITOR_RUN_5 || tolerance_class > FREEAIR_CAPACITOR_START_23)
    return FREEAIR_ERR_NOT_FOUND;
  *minimum_f = rated_f * (1.0 - tolerances[tolerance_class - 1].below);
  *maximum_f = rated_f * (1.0 + tolerances[tolerance_class - 1].above);
  return FREEAIR_OK;
}

int32_t freeair_capacitor_verdict(double measured_f, double uncertainty_f, double minimum_f, double maximum_f,
                                  double confidence, int32_t *verdict, double *probability_in,
                                  double *probability_low)
{
  if (verdict != NULL) *verdict = FREEAIR_VERDICT_CANNOT_TELL;
  freeair__set_nan(probability_in);
  freeair__set_nan(probability_low);
  if (verdict == NULL || probability_in == NULL || probability_low == NULL) return FREEAIR_ERR_NULL;
  if (!capacitance_valid(measured_f) || !capacitance_valid(uncertainty_f) || !capacitance_valid(minimum_f) ||
      !freeair__upto(maximum_f, 0.0, 1.0) || !(minimum_f < maximum_f) || !freeair__open(confidence, 0.5, 1.0))
    return FREEAIR_ERR_DOMAIN;
  double in;
  double low;
  int32_t status = freeair_verdict_probability(measured_f, uncertainty_f, minimum_f, maximum_f, &in);
  if (status < 0) return status;
  /* a sharp value on the limit is within it, so its complement is not needed at zero uncertainty */
  if (uncertainty_f > 0.0)
    status = freeair_verdict_probability(measured_f, uncertainty_f, -INFINITY, minimum_f, &low);
  else
    low = measured_f < minimum_f ? 1.0 : 0.0;
  if (status < 0) return status;
  status = freeair_verdict_decide(measured_f, uncertainty_f, minimum_f, maximum_f, confidence, verdict);
  if (status < 0) return status;
  *probability_in = in;
  *probability_low = low;
  return status;
}

int32_t freeair_capacitor_discharge_time(double capacitance_f, double r_ohm, double start_v, double safe_v,
                                         double *time_s)
{
  if (time_s == NULL) return FREEAIR_ERR_NULL;
  *time_s = NAN;
  if (!positive_valid(capacitance_f) || !resistance_valid(r_ohm) || !freeair__closed(start_v, 1e-6, volts) ||
      !freeair__closed(safe_v, 1e-6, volts))
    return FREEAIR_ERR_DOMAIN;
  if (safe_v > start_v) return FREEAIR_ERR_NO_SOLUTION;
  *time_s = r_ohm * capacitance_f * log_ratio(start_v, safe_v);
  return FREEAIR_OK;
}

int32_t freeair_capacitor_residual_voltage(double capacitance_f, double r_ohm, double start_v, double time_s,
                                           double *residual_v)
{
  if (residual_v == NULL) return FREEAIR_ERR_NULL;
  *residual_v = NAN;
  if (!positive_valid(capacitance_f) || !resistance_valid(r_ohm) || !freeair__closed(start_v, 0.0, volts) ||
      !freeair__closed(time_s, 0.0, 1e9))
    return FREEAIR_ERR_DOMAIN;
  double n = time_s / (r_ohm * capacitance_f);
  *residual_v = n < 700.0 ? start_v * exp(-n) : 0.0; /* below 1e-298 V nothing is left to speak of */
  return FREEAIR_OK;
}

int32_t freeair_capacitor_bleeder(double capacitance_f, double start_v, double safe_v, double time_s, double *r_ohm,
                                  double *power_w)
{
  freeair__set_nan(r_ohm);
  freeair__set_nan(power_w);
  if (r_ohm == NULL || power_w == NULL) return FREEAIR_ERR_NULL;
  if (!positive_valid(capacitance_f) || !freeair__closed(start_v, 1e-6, volts) ||
      !freeair__closed(safe_v, 1e-6, volts) || !freeair__closed(time_s, 1e-6, 1e9))
    return FREEAIR_ERR_DOMAIN;
  if (!(safe_v < start_v)) return FREEAIR_ERR_NO_SOLUTION;
  *r_ohm = time_s / (capacitance_f * log_ratio(start_v, safe_v));
  *power_w = start_v * start_v / (2.0 * *r_ohm);
  return FREEAIR_OK;
}

int32_t freeair_capacitor_energy(double capacitance_f, double voltage_v, double *energy_j)
{
  if (energy_j == NULL) return FREEAIR_ERR_NULL;
  *energy_j = NAN;
  if (!capacitance_valid(capacitance_f) || !freeair__closed(voltage_v, 0.0, volts)) return FREEAIR_ERR_DOMAIN;
  *energy_j = 0.5 * capacitance_f * voltage_v * voltage_v;
  return FREEAIR_OK;
}

int32_t freeair_capacitor_series(double first_f, double second_f, double *capacitance_f)
{
  if (capacitance_f == NULL) return FREEAIR_ERR_NULL;
  *capacitance_f = NAN;
  if (!positive_valid(first_f) || !positive_valid(second_f)) return FREEAIR_ERR_DOMAIN;
  *capacitance_f = first_f * (second_f / (first_f + second_f));
  return FREEAIR_OK;
}

int32_t freeair_capacitor_parallel(double first_f, double second_f, double *capacitance_f)
{
  if (capacitance_f == NULL) return FREEAIR_ERR_NULL;
  *capacitance_f = NAN;
  if (!capacitance_valid(first_f) || !capacitance_valid(second_f)) return FREEAIR_ERR_DOMAIN;
  *capacitance_f = first_f + second_f;
  return FREEAIR_OK;
}
