/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/supply.h>
#include <freeair/verdict.h>

#include "internal/check.h"
#include "internal/meter.h"
#include "internal/phases.h"

static const double volts = 1e6;
static const double amperes = 1e6;
static const double ohms = 1e6;

int32_t freeair_supply_uncertainty_from_meter(double reading_v, double accuracy, double counts, double resolution_v,
                                              double *uncertainty_v)
{
  if (uncertainty_v == NULL) return FREEAIR_ERR_NULL;
  *uncertainty_v = NAN;
  if (!freeair__closed(reading_v, 0.0, volts) || !freeair__closed(accuracy, 0.0, 1.0) ||
      !freeair__closed(counts, 0.0, 1e4) || !freeair__closed(resolution_v, 0.0, 1e3))
    return FREEAIR_ERR_DOMAIN;
  *uncertainty_v = freeair__meter_uncertainty(reading_v, accuracy, counts, resolution_v);
  return FREEAIR_OK;
}

int32_t freeair_supply_deviation(double measured_v, double nameplate_v, double *deviation)
{
  if (deviation == NULL) return FREEAIR_ERR_NULL;
  *deviation = NAN;
  if (!freeair__closed(measured_v, 0.0, volts) || !freeair__closed(nameplate_v, 1.0, volts)) return FREEAIR_ERR_DOMAIN;
  *deviation = (measured_v - nameplate_v) / nameplate_v;
  return FREEAIR_OK;
}

int32_t freeair_supply_voltage_verdict(double measured_v, double uncertainty_v, double nameplate_v, double tolerance,
                                       double confidence, int32_t *verdict, double *probability)
{
  if (verdict != NULL) *verdict = FREEAIR_VERDICT_CANNOT_TELL;
  freeair__set_nan(probability);
  if (verdict == NULL || probability == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(measured_v, 0.0, volts) || !freeair__closed(uncertainty_v, 0.0, volts) ||
      !freeair__closed(nameplate_v, 1.0, volts) || !freeair__closed(tolerance, 1e-6, 1.0) ||
      !freeair__open(confidence, 0.5, 1.0))
    return FREEAIR_ERR_DOMAIN;
  double lower = nameplate_v * (1.0 - tolerance);
  double upper = nameplate_v * (1.0 + tolerance);
  int32_t status = freeair_verdict_probability(measured_v, uncertainty_v, lower, upper, probability);
  if (status < 0) return status;
  return freeair_verdict_decide(measured_v, uncertainty_v, lower, upper, confidence, verdict);
}

int32_t freeair_supply_combined_deviation(double voltage_deviation, double frequency_deviation, double *combined)
{
  if (combined == NULL) return FREEAIR_ERR_NULL;
  *combined = NAN;
  if (!freeair__closed(voltage_deviation, -1.0, 1.0) || !freeair__closed(frequency_deviation, -1.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *combined = fabs(voltage_deviation) + fabs(frequency_deviation);
  return *combined > 0.10 || fabs(frequency_deviation) > 0.05 ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}

int32_t freeair_supply_voltage_drop(double current_a, double r_ohm, double x_ohm, double power_factor, int32_t phases,
                                    double *drop_v)
{
  if (drop_v == NULL) return FREEAIR_ERR_NULL;
  *drop_v = NAN;
  if (!freeair__closed(current_a, 0.0, amperes) || !freeair__closed(r_ohm, 0.0, ohms) ||
      !freeair__closed(x_ohm, 0.0, ohms) || !freeair__closed(power_factor, 0.0, 1.0) ||
      !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  *drop_v = freeair__phases_run(phases) * current_a *
            (r_ohm * power_factor + x_ohm * freeair__phases_sine(power_factor));
  return FREEAIR_OK;
}

int32_t freeair_supply_voltage_at_load(double source_v, double current_a, double r_ohm, double x_ohm,
                                       double power_factor, int32_t phases, double *load_v, double *drop_v)
{
  freeair__set_nan(load_v);
  freeair__set_nan(drop_v);
  if (load_v == NULL || drop_v == NULL) return FREEAIR_ERR_NULL;
  double along;
  if (!freeair__closed(source_v, 1.0, volts)) return FREEAIR_ERR_DOMAIN;
  int32_t status = freeair_supply_voltage_drop(current_a, r_ohm, x_ohm, power_factor, phases, &along);
  if (status < 0) return status;
  double across = freeair__phases_run(phases) * current_a *
                  (x_ohm * power_factor - r_ohm * freeair__phases_sine(power_factor));
  if (!(fabs(across) < source_v)) return FREEAIR_ERR_NO_SOLUTION;
  double inner = sqrt((source_v - across) * (source_v + across));
  if (!(inner > along)) return FREEAIR_ERR_NO_SOLUTION;
  *load_v = inner - along;
  *drop_v = across * across / (source_v + inner) + along; /* source_v - load_v without cancellation */
  return FREEAIR_OK;
}

int32_t freeair_supply_starting_voltage(double source_v, double nameplate_v, double locked_rotor_a,
                                        double power_factor, double r_ohm, double x_ohm, int32_t phases,
                                        double *start_v, double *start_a)
{
  freeair__set_nan(start_v);
  freeair__set_nan(start_a);
  if (start_v == NULL || start_a == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(source_v, 1.0, volts) || !freeair__closed(nameplate_v, 1.0, volts) ||
      !freeair__closed(locked_rotor_a, 1e-3, amperes) || !freeair__closed(power_factor, 0.0, 1.0) ||
      !freeair__closed(r_ohm, 0.0, ohms) || !freeair__closed(x_ohm, 0.0, ohms) || !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  /* one loop: wires there and back for one phase, one wire for each of three */
  double wires = phases == 1 ? 2.0 : 1.0;
  double motor_ohm = nameplate_v / (freeair__phases_power(phases) * locked_rotor_a);
  double loop_ohm = hypot(motor_ohm * power_factor + wires * r_ohm,
                          motor_ohm * freeair__phases_sine(power_factor) + wires * x_ohm);
  *start_v = source_v * (motor_ohm / loop_ohm);
  *start_a = source_v / (freeair__phases_power(phases) * loop_ohm);
  return FREEAIR_OK;
}
