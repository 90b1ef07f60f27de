/* SPDX-License-Identifier: MIT */
#include <freeair/belt.h>
#include <freeair/status.h>

#include "internal/check.h"

static const double newtons = 1e7;

static int mass_valid(double mass_kg_m)
{
  return freeair__closed(mass_kg_m, 0.0, 100.0);
}

static int speed_valid(double belt_m_s)
{
  return freeair__closed(belt_m_s, 0.0, 200.0);
}

static int tension_valid(double tension_n)
{
  return freeair__closed(tension_n, 0.0, newtons);
}

static int span_valid(double span_m)
{
  return freeair__closed(span_m, 0.001, 1000.0);
}

static int belt_valid(double belt_m)
{
  return freeair__closed(belt_m, 0.001, 2000.0);
}

int32_t freeair_belt_slip(double driver_rev_s, double driver_uncertainty_rev_s, double driven_rev_s,
                          double driven_uncertainty_rev_s, double ratio, double ratio_uncertainty, double *slip,
                          double *slip_uncertainty)
{
  freeair__set_nan(slip);
  freeair__set_nan(slip_uncertainty);
  if (slip == NULL || slip_uncertainty == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(driver_rev_s, 0.001, 1000.0) || !freeair__closed(driver_uncertainty_rev_s, 0.0, 1000.0) ||
      !freeair__closed(driven_rev_s, 0.0, 1000.0) || !freeair__closed(driven_uncertainty_rev_s, 0.0, 1000.0) ||
      !freeair__closed(ratio, 0.001, 1000.0) || !freeair__closed(ratio_uncertainty, 0.0, 1000.0))
    return FREEAIR_ERR_DOMAIN;
  /* as partial derivatives, since the driven speed may be zero */
  double by_driver = driven_rev_s / driver_rev_s * ratio * (driver_uncertainty_rev_s / driver_rev_s);
  double by_driven = ratio / driver_rev_s * driven_uncertainty_rev_s;
  double by_ratio = driven_rev_s / driver_rev_s * ratio_uncertainty;
  *slip = fma(-driven_rev_s, ratio, driver_rev_s) / driver_rev_s; /* one rounding in the difference */
  *slip_uncertainty = hypot(hypot(by_driver, by_driven), by_ratio);
  return *slip < -2.0 * *slip_uncertainty ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

int32_t freeair_belt_tension_ratio(double friction, double wrap_rad, double groove_rad, double *tension_ratio)
{
  if (tension_ratio == NULL) return FREEAIR_ERR_NULL;
  *tension_ratio = NAN;
  if (!freeair__closed(friction, 0.0, 1.5) || !freeair__closed(wrap_rad, 0.0, 20.0) ||
      !freeair__closed(groove_rad, 0.3, 3.141592653589793))
    return FREEAIR_ERR_DOMAIN;
  *tension_ratio = exp(friction * wrap_rad / sin(0.5 * groove_rad));
  return FREEAIR_OK;
}

int32_t freeair_belt_tensions_from_power(double power_w, double belt_m_s, double mass_kg_m, double tension_ratio,
                                         double *tight_n, double *slack_n, double *static_n, double *centrifugal_n)
{
  freeair__set_nan(tight_n);
  freeair__set_nan(slack_n);
  freeair__set_nan(static_n);
  freeair__set_nan(centrifugal_n);
  if (tight_n == NULL || slack_n == NULL || static_n == NULL || centrifugal_n == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(power_w, 0.0, 1e7) || !freeair__closed(belt_m_s, 0.01, 200.0) || !mass_valid(mass_kg_m) ||
      !freeair__closed(tension_ratio, 1.0001, 1e12))
    return FREEAIR_ERR_DOMAIN;
  double pull = power_w / belt_m_s;
  double centrifugal = mass_kg_m * belt_m_s * belt_m_s;
  double slack = pull / (tension_ratio - 1.0);
  *centrifugal_n = centrifugal;
  *slack_n = centrifugal + slack;
  *tight_n = centrifugal + slack * tension_ratio;
  *static_n = centrifugal + 0.5 * slack * (tension_ratio + 1.0);
  return FREEAIR_OK;
}

/* The belt holds on with what its tension leaves over its own mass. */
static int32_t power(double tension_n, double belt_m_s, double mass_kg_m, double tension_ratio, int at_rest,
                     double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!tension_valid(tension_n) || !speed_valid(belt_m_s) || !mass_valid(mass_kg_m) ||
      !freeair__closed(tension_ratio, 1.0, 1e12))
    return FREEAIR_ERR_DOMAIN;
  double net = tension_n - mass_kg_m * belt_m_s * belt_m_s;
  if (net < 0.0) return FREEAIR_ERR_NO_SOLUTION;
  double share = at_rest ? 2.0 * (tension_ratio - 1.0) / (tension_ratio + 1.0) : (tension_ratio - 1.0) / tension_ratio;
  *power_w = net * share * belt_m_s;
  return FREEAIR_OK;
}

int32_t freeair_belt_power_from_tight_tension(double tight_n, double belt_m_s, double mass_kg_m,
                                              double tension_ratio, double *power_w)
{
  return power(tight_n, belt_m_s, mass_kg_m, tension_ratio, 0, power_w);
}

int32_t freeair_belt_power_from_static_tension(double static_n, double belt_m_s, double mass_kg_m,
                                               double tension_ratio, double *power_w)
{
  return power(static_n, belt_m_s, mass_kg_m, tension_ratio, 1, power_w);
}

int32_t freeair_belt_deflection_distance(double span_m, double *deflection_m)
{
  if (deflection_m == NULL) return FREEAIR_ERR_NULL;
  *deflection_m = NAN;
  if (!span_valid(span_m)) return FREEAIR_ERR_DOMAIN;
  *deflection_m = span_m / 64.0;
  return FREEAIR_OK;
}

/* The span bent to a triangle: its length, and what it is longer by. */
static double bent(double span_m, double deflection_m, double *longer_m)
{
  double length = hypot(span_m, 2.0 * deflection_m);
  *longer_m = 4.0 * deflection_m * deflection_m / (length + span_m);
  return length;
}

int32_t freeair_belt_deflection_force(double static_n, double span_m, double deflection_m, double stiffness_n,
                                      double belt_m, double *force_n)
{
  if (force_n == NULL) return FREEAIR_ERR_NULL;
  *force_n = NAN;
  if (!tension_valid(static_n) || !span_valid(span_m) || !freeair__closed(deflection_m, 0.0, 100.0) ||
      !freeair__closed(stiffness_n, 0.0, 1e9) || !belt_valid(belt_m))
    return FREEAIR_ERR_DOMAIN;
  double longer;
  double length = bent(span_m, deflection_m, &longer);
  *force_n = 4.0 * deflection_m * (static_n + stiffness_n * (longer / belt_m)) / length;
  return FREEAIR_OK;
}

int32_t freeair_belt_tension_from_deflection(double force_n, double span_m, double deflection_m, double stiffness_n,
                                             double belt_m, double *static_n)
{
  if (static_n == NULL) return FREEAIR_ERR_NULL;
  *static_n = NAN;
  if (!tension_valid(force_n) || !span_valid(span_m) || !freeair__closed(deflection_m, 1e-6, 100.0) ||
      !freeair__closed(stiffness_n, 0.0, 1e9) || !belt_valid(belt_m))
    return FREEAIR_ERR_DOMAIN;
  double longer;
  double length = bent(span_m, deflection_m, &longer);
  double tension = force_n * length / (4.0 * deflection_m) - stiffness_n * (longer / belt_m);
  if (!(tension >= 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *static_n = tension;
  return FREEAIR_OK;
}

int32_t freeair_belt_deflection_force_by_rule(double static_n, double span_m, double constant_n, double belt_m,
                                              double *force_n)
{
  if (force_n == NULL) return FREEAIR_ERR_NULL;
  *force_n = NAN;
  if (!tension_valid(static_n) || !span_valid(span_m) || !freeair__closed(constant_n, 0.0, 1e6) ||
      !belt_valid(belt_m))
    return FREEAIR_ERR_DOMAIN;
  *force_n = (static_n + constant_n * (span_m / belt_m)) / 16.0;
  return FREEAIR_OK;
}

int32_t freeair_belt_span_frequency(double static_n, double mass_kg_m, double span_m, double *frequency_hz)
{
  if (frequency_hz == NULL) return FREEAIR_ERR_NULL;
  *frequency_hz = NAN;
  if (!tension_valid(static_n) || !freeair__closed(mass_kg_m, 1e-4, 100.0) || !span_valid(span_m))
    return FREEAIR_ERR_DOMAIN;
  *frequency_hz = sqrt(static_n / mass_kg_m) / (2.0 * span_m);
  return FREEAIR_OK;
}

int32_t freeair_belt_tension_from_frequency(double frequency_hz, double mass_kg_m, double span_m, double *static_n)
{
  if (static_n == NULL) return FREEAIR_ERR_NULL;
  *static_n = NAN;
  if (!freeair__closed(frequency_hz, 0.0, 1e4) || !freeair__closed(mass_kg_m, 1e-4, 100.0) || !span_valid(span_m))
    return FREEAIR_ERR_DOMAIN;
  double wave = 2.0 * span_m * frequency_hz; /* m/s along the span */
  *static_n = mass_kg_m * wave * wave;
  return FREEAIR_OK;
}
