/* SPDX-License-Identifier: MIT */
#include <freeair/motor.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/phases.h"

static const double two_pi = 6.2831853071795864769;
static const double watts = 1e9;
static const double torques = 1e9; /* N m */
static const double amperes = 1e6;
static const double volts = 1e6;

static int frequency_valid(double frequency_hz)
{
  return freeair__closed(frequency_hz, 0.1, 1000.0);
}

static int poles_valid(int32_t poles)
{
  return poles >= 2 && poles <= 100 && poles % 2 == 0;
}

static int ratio_valid(double ratio)
{
  return freeair__closed(ratio, 0.1, 2.0);
}

int32_t freeair_motor_synchronous_speed(double frequency_hz, int32_t poles, double *synchronous_rev_s)
{
  if (synchronous_rev_s == NULL) return FREEAIR_ERR_NULL;
  *synchronous_rev_s = NAN;
  if (!frequency_valid(frequency_hz) || !poles_valid(poles)) return FREEAIR_ERR_DOMAIN;
  *synchronous_rev_s = 2.0 * frequency_hz / (double)poles;
  return FREEAIR_OK;
}

int32_t freeair_motor_poles_from_speed(double frequency_hz, double speed_rev_s, int32_t *poles)
{
  if (poles == NULL) return FREEAIR_ERR_NULL;
  *poles = 0;
  if (!frequency_valid(frequency_hz) || !freeair__closed(speed_rev_s, 0.01, 1000.0)) return FREEAIR_ERR_DOMAIN;
  /* the small excess lets a speed that was rounded up still be synchronous */
  double pairs = floor(frequency_hz / speed_rev_s * (1.0 + 1e-9));
  if (!freeair__closed(pairs, 1.0, 50.0)) return FREEAIR_ERR_NO_SOLUTION;
  *poles = 2 * (int32_t)pairs;
  return speed_rev_s * pairs < 0.85 * frequency_hz ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

int32_t freeair_motor_slip(double frequency_hz, int32_t poles, double speed_rev_s, double *slip)
{
  if (slip == NULL) return FREEAIR_ERR_NULL;
  *slip = NAN;
  if (!frequency_valid(frequency_hz) || !poles_valid(poles) || !freeair__closed(speed_rev_s, 0.0, 1000.0))
    return FREEAIR_ERR_DOMAIN;
  /* one rounding in the difference, however small the slip */
  *slip = fma(-speed_rev_s, (double)(poles / 2), frequency_hz) / frequency_hz;
  return FREEAIR_OK;
}

int32_t freeair_motor_speed_from_slip(double frequency_hz, int32_t poles, double slip, double *speed_rev_s)
{
  if (speed_rev_s == NULL) return FREEAIR_ERR_NULL;
  *speed_rev_s = NAN;
  if (!frequency_valid(frequency_hz) || !poles_valid(poles) || !freeair__closed(slip, -1.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *speed_rev_s = 2.0 * frequency_hz / (double)poles * (1.0 - slip);
  return FREEAIR_OK;
}

int32_t freeair_motor_rotor_frequency(double frequency_hz, double slip, double *rotor_hz)
{
  if (rotor_hz == NULL) return FREEAIR_ERR_NULL;
  *rotor_hz = NAN;
  if (!frequency_valid(frequency_hz) || !freeair__closed(slip, -1.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  *rotor_hz = fabs(slip) * frequency_hz;
  return FREEAIR_OK;
}

int32_t freeair_motor_slip_at_supply(double slip, double voltage_ratio, double frequency_ratio, double torque_ratio,
                                     double *new_slip)
{
  if (new_slip == NULL) return FREEAIR_ERR_NULL;
  *new_slip = NAN;
  if (!freeair__from(slip, 0.0, 1.0) || !ratio_valid(voltage_ratio) || !ratio_valid(frequency_ratio) ||
      !freeair__closed(torque_ratio, 0.0, 10.0))
    return FREEAIR_ERR_DOMAIN;
  double s = slip * torque_ratio * frequency_ratio / (voltage_ratio * voltage_ratio);
  if (!(s < 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  *new_slip = s;
  return s > 0.1 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

int32_t freeair_motor_torque_from_power(double power_w, double speed_rev_s, double *torque_nm)
{
  if (torque_nm == NULL) return FREEAIR_ERR_NULL;
  *torque_nm = NAN;
  if (!freeair__closed(power_w, 0.0, watts) || !freeair__closed(speed_rev_s, 0.001, 1000.0))
    return FREEAIR_ERR_DOMAIN;
  *torque_nm = power_w / (two_pi * speed_rev_s);
  return FREEAIR_OK;
}

int32_t freeair_motor_power_from_torque(double torque_nm, double speed_rev_s, double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!freeair__closed(torque_nm, 0.0, torques) || !freeair__closed(speed_rev_s, 0.0, 1000.0))
    return FREEAIR_ERR_DOMAIN;
  *power_w = two_pi * speed_rev_s * torque_nm;
  return FREEAIR_OK;
}

int32_t freeair_motor_torque_at_slip(double breakdown_nm, double breakdown_slip, double slip, double *torque_nm)
{
  if (torque_nm == NULL) return FREEAIR_ERR_NULL;
  *torque_nm = NAN;
  if (!freeair__closed(breakdown_nm, 0.0, torques) || !freeair__closed(breakdown_slip, 0.001, 1.0) ||
      !freeair__closed(slip, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  double r = slip / breakdown_slip;
  *torque_nm = breakdown_nm * (2.0 * r / (1.0 + r * r));
  return slip > breakdown_slip ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

int32_t freeair_motor_locked_rotor_torque(double torque_nm, double voltage_ratio, double frequency_ratio,
                                          double *new_torque_nm)
{
  if (new_torque_nm == NULL) return FREEAIR_ERR_NULL;
  *new_torque_nm = NAN;
  if (!freeair__closed(torque_nm, 0.0, torques) || !ratio_valid(voltage_ratio) || !ratio_valid(frequency_ratio))
    return FREEAIR_ERR_DOMAIN;
  double flux = voltage_ratio / frequency_ratio;
  *new_torque_nm = torque_nm * flux * flux;
  return FREEAIR_OK;
}

int32_t freeair_motor_locked_rotor_current(double current_a, double voltage_ratio, double frequency_ratio,
                                           double *new_current_a)
{
  if (new_current_a == NULL) return FREEAIR_ERR_NULL;
  *new_current_a = NAN;
  if (!freeair__closed(current_a, 0.0, amperes) || !ratio_valid(voltage_ratio) || !ratio_valid(frequency_ratio))
    return FREEAIR_ERR_DOMAIN;
  *new_current_a = current_a * voltage_ratio / frequency_ratio;
  return FREEAIR_OK;
}

int32_t freeair_motor_shaft_power(double voltage_v, double current_a, double power_factor, double efficiency,
                                  int32_t phases, double *shaft_w, double *input_w)
{
  freeair__set_nan(shaft_w);
  freeair__set_nan(input_w);
  if (shaft_w == NULL || input_w == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(voltage_v, 0.0, volts) || !freeair__closed(current_a, 0.0, amperes) ||
      !freeair__closed(power_factor, 0.0, 1.0) || !freeair__closed(efficiency, 0.0, 1.0) ||
      !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  *input_w = freeair__phases_power(phases) * voltage_v * current_a * power_factor;
  *shaft_w = efficiency * *input_w;
  return FREEAIR_OK;
}

int32_t freeair_motor_line_current(double shaft_w, double voltage_v, double power_factor, double efficiency,
                                   int32_t phases, double *current_a)
{
  if (current_a == NULL) return FREEAIR_ERR_NULL;
  *current_a = NAN;
  if (!freeair__closed(shaft_w, 0.0, watts) || !freeair__closed(voltage_v, 1.0, volts) ||
      !freeair__closed(power_factor, 0.01, 1.0) || !freeair__closed(efficiency, 0.01, 1.0) ||
      !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  *current_a = shaft_w / (freeair__phases_power(phases) * voltage_v * power_factor * efficiency);
  return FREEAIR_OK;
}
