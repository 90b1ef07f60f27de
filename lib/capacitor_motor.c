/* SPDX-License-Identifier: MIT */
#include <freeair/capacitor_motor.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/structure.h"

static const double two_pi = 6.2831853071795864769;

static const freeair_capacitor_motor_windings initial_windings = FREEAIR_CAPACITOR_MOTOR_WINDINGS_INIT;
static const freeair_capacitor_motor_performance initial_performance = FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_INIT;

/* Complex numbers, without the compiler's helpers for infinities. */
struct complex_number {
  double re, im;
};
typedef struct complex_number cx;

static cx plus(cx a, cx b)
{
  return (cx){a.re + b.re, a.im + b.im};
}

static cx minus(cx a, cx b)
{
  return (cx){a.re - b.re, a.im - b.im};
}

static cx times(cx a, cx b)
{
  return (cx){a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re};
}

static cx scaled(double k, cx a)
{
  return (cx){k * a.re, k * a.im};
}

static double square(cx a)
{
  return a.re * a.re + a.im * a.im;
}

static cx over(cx a, cx b)
{
  cx n = times(a, (cx){b.re, -b.im});
  return scaled(1.0 / square(b), n);
}

static cx turned(cx a) /* j a */
{
  return (cx){-a.im, a.re};
}

int32_t freeair_capacitor_motor_quadrature(double main_r_ohm, double main_x_ohm, double auxiliary_r_ohm,
                                           double auxiliary_x_ohm, double frequency_hz, double *capacitance_f,
                                           double *reactance_ohm)
{
  freeair__set_nan(capacitance_f);
  freeair__set_nan(reactance_ohm);
  if (capacitance_f == NULL || reactance_ohm == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(main_r_ohm, 0.0, 1000.0) || !freeair__closed(main_x_ohm, 0.001, 1000.0) ||
      !freeair__closed(auxiliary_r_ohm, 0.0, 1000.0) || !freeair__closed(auxiliary_x_ohm, 0.001, 1000.0) ||
      !freeair__closed(frequency_hz, 0.1, 1000.0))
    return FREEAIR_ERR_DOMAIN;
  *reactance_ohm = auxiliary_x_ohm + auxiliary_r_ohm * main_r_ohm / main_x_ohm;
  *capacitance_f = 1.0 / (two_pi * frequency_hz * *reactance_ohm);
  return FREEAIR_OK;
}

int32_t freeair_capacitor_motor_starting_torque_ratio(double main_r_ohm, double main_x_ohm, double auxiliary_r_ohm,
                                                      double auxiliary_x_ohm, double frequency_hz,
                                                      double capacitance_f, double rated_f, double *torque_ratio)
{
  if (torque_ratio == NULL) return FREEAIR_ERR_NULL;
  *torque_ratio = NAN;
  if (!freeair__closed(main_r_ohm, 0.0, 1000.0) || !freeair__closed(main_x_ohm, 0.001, 1000.0) ||
      !freeair__closed(auxiliary_r_ohm, 0.001, 1000.0) || !freeair__closed(auxiliary_x_ohm, 0.001, 1000.0) ||
      !freeair__closed(frequency_hz, 0.1, 1000.0) || !freeair__closed(capacitance_f, 1e-9, 1.0) ||
      !freeair__closed(rated_f, 1e-9, 1.0))
    return FREEAIR_ERR_DOMAIN;
  double x = auxiliary_x_ohm - 1.0 / (two_pi * frequency_hz * capacitance_f);
  double rated_x = auxiliary_x_ohm - 1.0 / (two_pi * frequency_hz * rated_f);
  double r2 = auxiliary_r_ohm * auxiliary_r_ohm;
  double torque = (main_x_ohm * auxiliary_r_ohm - main_r_ohm * x) / (r2 + x * x);
  double rated_torque = (main_x_ohm * auxiliary_r_ohm - main_r_ohm * rated_x) / (r2 + rated_x * rated_x);
  if (!(rated_torque > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *torque_ratio = torque / rated_torque;
  return FREEAIR_OK;
}

/* Half the rotor branch beside half the magnetising reactance, for a slip of
 * that field; multiplied through by the slip, so that zero is no special case. */
static cx field_impedance(const freeair_capacitor_motor_windings *w, double slip)
{
  cx rotor = {w->rotor_r_ohm, slip * w->rotor_x_ohm};
  cx both = {w->rotor_r_ohm, slip * (w->rotor_x_ohm + w->magnetising_x_ohm)};
  return over(times((cx){0.0, 0.5 * w->magnetising_x_ohm}, rotor), both);
}

struct supply {
  double voltage_v, frequency_hz, capacitance_f;
  int32_t poles;
};

static void solve(const freeair_capacitor_motor_windings *w, const struct supply *supply, double slip,
                  freeair_capacitor_motor_performance *result)
{
  double a = w->turns_ratio;
  double v = supply->voltage_v;
  double y = two_pi * supply->frequency_hz * supply->capacitance_f; /* susceptance of the capacitor */
  cx zf = field_impedance(w, slip);
  cx zb = field_impedance(w, 2.0 - slip);
  cx sum = plus(zf, zb);
  cx difference = minus(zf, zb);
  cx zm = plus((cx){w->main_r_ohm, w->main_x_ohm}, sum);
  cx za = plus((cx){w->auxiliary_r_ohm, w->auxiliary_x_ohm}, scaled(a * a, sum));

  /* the equation of the auxiliary winding times j y, so that y = 0 opens it:
   *   v   = im zm        - j a difference ia
   *   jyv = im (-a y difference) + ia (1 + j y za)                         */
  cx one_plus = plus((cx){1.0, 0.0}, scaled(y, turned(za)));
  cx ad = scaled(a, difference);
  cx determinant = minus(times(zm, one_plus), scaled(y, turned(times(ad, ad))));
  cx main_a = scaled(v, over(minus(one_plus, scaled(y, ad)), determinant));
  cx auxiliary_a = scaled(v * y, over(plus(turned(zm), ad), determinant));

  cx across = scaled(a, turned(auxiliary_a));
  double forward_w = zf.re * square(minus(main_a, across));
  double backward_w = zb.re * square(plus(main_a, across));
  double synchronous_rad_s = 2.0 * two_pi * supply->frequency_hz / (double)supply->poles;
  cx line_a = plus(main_a, auxiliary_a);

  result->torque_nm = (forward_w - backward_w) / synchronous_rad_s;
  result->mechanical_w = (forward_w - backward_w) * (1.0 - slip);
  result->main_a = sqrt(square(main_a));
  result->auxiliary_a = sqrt(square(auxiliary_a));
  result->line_a = sqrt(square(line_a));
  result->capacitor_v = v * sqrt(square(over(plus(turned(zm), ad), determinant)));
  result->input_w = v * line_a.re;
  result->power_factor = result->line_a > 0.0 ? line_a.re / result->line_a : 0.0;
}

static int32_t read_arguments(const freeair_capacitor_motor_windings *windings, const struct supply *supply,
                              freeair_capacitor_motor_windings *w)
{
  *w = initial_windings;
  int32_t status = freeair__structure_read(w, sizeof *w, windings, FREEAIR_CAPACITOR_MOTOR_WINDINGS_BASELINE);
  if (status < 0) return status;
  int valid = w->flags == 0u && freeair__closed(w->main_r_ohm, 0.0, 1000.0) &&
              freeair__closed(w->main_x_ohm, 0.0, 1000.0) && freeair__closed(w->auxiliary_r_ohm, 0.0, 1000.0) &&
              freeair__closed(w->auxiliary_x_ohm, 0.0, 1000.0) && freeair__closed(w->turns_ratio, 0.01, 100.0) &&
              freeair__closed(w->rotor_r_ohm, 0.001, 1000.0) && freeair__closed(w->rotor_x_ohm, 0.0, 1000.0) &&
              freeair__closed(w->magnetising_x_ohm, 0.01, 10000.0) &&
              freeair__closed(supply->voltage_v, 0.0, 1e6) && freeair__closed(supply->frequency_hz, 0.1, 1000.0) &&
              supply->poles >= 2 && supply->poles <= 100 && supply->poles % 2 == 0 &&
              freeair__closed(supply->capacitance_f, 0.0, 0.1);
  return valid ? FREEAIR_OK : FREEAIR_ERR_DOMAIN;
}

int32_t freeair_capacitor_motor_run(const freeair_capacitor_motor_windings *windings, double voltage_v,
                                    double frequency_hz, int32_t poles, double capacitance_f, double slip,
                                    freeair_capacitor_motor_performance *performance)
{
  if (performance == NULL) return FREEAIR_ERR_NULL;
  freeair_capacitor_motor_performance result = initial_performance;
  int32_t status = freeair__structure_write(performance, &result, sizeof result,
                                            FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_BASELINE);
  if (status < 0) return status;
  if (windings == NULL) return FREEAIR_ERR_NULL;
  struct supply supply = {voltage_v, frequency_hz, capacitance_f, poles};
  freeair_capacitor_motor_windings w;
  status = read_arguments(windings, &supply, &w);
  if (status < 0) return status;
  if (!freeair__closed(slip, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  solve(&w, &supply, slip, &result);
  return freeair__structure_write(performance, &result, sizeof result, FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_BASELINE);
}

int32_t freeair_capacitor_motor_slip(const freeair_capacitor_motor_windings *windings, double voltage_v,
                                     double frequency_hz, int32_t poles, double capacitance_f, double torque_nm,
                                     double *slip)
{
  enum { STEPS = 500, HALVINGS = 60 };
  freeair__set_nan(slip);
  if (windings == NULL || slip == NULL) return FREEAIR_ERR_NULL;
  struct supply supply = {voltage_v, frequency_hz, capacitance_f, poles};
  freeair_capacitor_motor_windings w;
  int32_t status = read_arguments(windings, &supply, &w);
  if (status < 0) return status;
  if (!freeair__closed(torque_nm, 0.0, 1e6)) return FREEAIR_ERR_DOMAIN;
  freeair_capacitor_motor_performance at = initial_performance;
  double below = 0.0;
  double above = -1.0;
  for (int i = 0; i <= STEPS; i++) {
    double s = (double)i / STEPS;
    solve(&w, &supply, s, &at);
    if (at.torque_nm >= torque_nm) {
      above = s;
      break;
    }
    below = s;
  }
  if (above < 0.0) return FREEAIR_ERR_NO_SOLUTION;
  for (int i = 0; i < HALVINGS && above > 0.0; i++) {
    double middle = 0.5 * (below + above);
    solve(&w, &supply, middle, &at);
    if (at.torque_nm >= torque_nm)
      above = middle;
    else
      below = middle;
  }
  *slip = above;
  return FREEAIR_OK;
}
