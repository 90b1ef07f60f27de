/* SPDX-License-Identifier: MIT */
#include <freeair/fanno.h>
#include <freeair/flow.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/log_rest.h"
#include "internal/pipe.h"

/* Throughout, t = 2 (1 - 1/M^2) / (k + 1), in which the friction parameter is
 * (k + 1)/(2 k) (-t - log(1 - t)): negative below the speed of sound, 0 at it. */

static int k_valid(double k)
{
  return freeair__upto(k, 1.0, 2.0);
}

static double t_of(double mach, double k)
{
  return 2.0 / (k + 1.0) * ((mach - 1.0) / mach) * ((mach + 1.0) / mach);
}

static double mach_of(double t, double k)
{
  return 1.0 / sqrt(1.0 - 0.5 * (k + 1.0) * t);
}

static double parameter_of(double mach, double k)
{
  return 0.5 * (k + 1.0) / k * freeair__log_rest(-t_of(mach, k));
}

/* x = -t > 0 with x - log(1 + x) = value, value >= 0 */
static double subsonic_root(double value)
{
  double x = value + sqrt(2.0 * value) + log1p(value); /* above the root: Newton's method comes down */
  for (int step = 0; step < 100 && x > 0.0; step++) {
    const double change = (freeair__log_rest(x) - value) * (1.0 + x) / x;
    x -= change;
    if (fabs(change) <= 1e-15 * x) break;
  }
  return x;
}

/* t in [0;most] with -t - log(1 - t) = value */
static double supersonic_root(double value, double most)
{
  double low = 0.0;
  double high = most;
  double t = fmin(sqrt(2.0 * value), most);
  for (int step = 0; step < 100 && t > 0.0; step++) {
    const double error = freeair__log_rest(-t) - value;
    if (error > 0.0)
      high = t;
    else
      low = t;
    double next = t - error * (1.0 - t) / t;
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    const double change = fabs(next - t);
    t = next;
    if (change <= 1e-15 * t) break;
  }
  return t;
}

/* log of T/T*, p/p* */
static double log_temperature(double mach, double k)
{
  return -log1p((k - 1.0) / (k + 1.0) * (mach - 1.0) * (mach + 1.0));
}

static double log_pressure(double mach, double k)
{
  return 0.5 * log_temperature(mach, k) - log(mach);
}

int32_t freeair_fanno_parameter(double mach, double k, double *parameter)
{
  freeair__set_nan(parameter);
  if (parameter == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(mach, 1e-6, 100.0) || !k_valid(k)) return FREEAIR_ERR_DOMAIN;
  *parameter = parameter_of(mach, k);
  return FREEAIR_OK;
}

int32_t freeair_fanno_mach_from_parameter(double parameter, int32_t branch, double k, double *mach)
{
  freeair__set_nan(mach);
  if (mach == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(parameter, 0.0, 1e12) || !k_valid(k) ||
      (branch != FREEAIR_FLOW_SUBSONIC && branch != FREEAIR_FLOW_SUPERSONIC))
    return FREEAIR_ERR_DOMAIN;
  const double value = 2.0 * k / (k + 1.0) * parameter;
  if (branch == FREEAIR_FLOW_SUBSONIC) {
    *mach = mach_of(-subsonic_root(value), k);
    return FREEAIR_OK;
  }
  const double most = t_of(100.0, k);
  if (value > freeair__log_rest(-most)) return FREEAIR_ERR_NO_SOLUTION;
  *mach = mach_of(supersonic_root(value, most), k);
  return FREEAIR_OK;
}

int32_t freeair_fanno_ratios(double mach, double k, double *pressure_ratio, double *temperature_ratio,
                             double *density_ratio, double *stagnation_ratio)
{
  freeair__set_nan(pressure_ratio);
  freeair__set_nan(temperature_ratio);
  freeair__set_nan(density_ratio);
  freeair__set_nan(stagnation_ratio);
  if (pressure_ratio == NULL || temperature_ratio == NULL || density_ratio == NULL || stagnation_ratio == NULL)
    return FREEAIR_ERR_NULL;
  if (!freeair__closed(mach, 1e-6, 100.0) || !k_valid(k)) return FREEAIR_ERR_DOMAIN;
  const double heat = log_temperature(mach, k);
  const double power = -0.5 * (k + 1.0) / (k - 1.0) * heat;
  if (power > 700.0) return FREEAIR_ERR_OVERFLOW;
  *temperature_ratio = exp(heat);
  *pressure_ratio = exp(0.5 * heat) / mach;
  *density_ratio = exp(-0.5 * heat) / mach;
  *stagnation_ratio = exp(power) / mach;
  return FREEAIR_OK;
}

/* parameter_of(mach1) - parameter_of(mach2) for states in this order on one branch. With x = -t and
 * d = (x1 - x2)/(1 + x2) it is (k + 1)/(2 k) (x2 d + d - log(1 + d)), a sum of two that are not negative. */
static double parameter_between(double mach1, double mach2, double k)
{
  const double inverse1 = 1.0 / mach1;
  const double inverse2 = 1.0 / mach2;
  const double apart = 2.0 / (k + 1.0) * ((mach2 - mach1) * inverse1 * inverse2) * (inverse1 + inverse2);
  const double one_and_x2 = (2.0 * inverse2 * inverse2 + (k - 1.0)) / (k + 1.0);
  const double d = apart / one_and_x2;
  return 0.5 * (k + 1.0) / k * (-t_of(mach2, k) * d + freeair__log_rest(d));
}

int32_t freeair_fanno_length(double mach1, double mach2, double diameter_m, double factor, double k, double *length_m)
{
  freeair__set_nan(length_m);
  if (length_m == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(mach1, 1e-6, 100.0) || !freeair__closed(mach2, 1e-6, 100.0) ||
      !freeair__closed(diameter_m, 1e-6, 10.0) || !freeair__closed(factor, 1e-4, 100.0) || !k_valid(k))
    return FREEAIR_ERR_DOMAIN;
  const int onward = mach1 < 1.0 ? mach2 >= mach1 && mach2 <= 1.0 : mach2 <= mach1 && mach2 >= 1.0;
  if (!onward) return FREEAIR_ERR_NO_SOLUTION;
  *length_m = diameter_m / factor * parameter_between(mach1, mach2, k);
  return FREEAIR_OK;
}

/* What a Mach number at the end of a pipe means at its beginning. */
static double inlet_mach(double mach2, double loss_number, double k)
{
  return mach_of(-subsonic_root(2.0 * k / (k + 1.0) * (parameter_of(mach2, k) + loss_number)), k);
}

/* log of the vessel's pressure over that at the end */
static double log_fall(double mach1, double mach2, double k)
{
  return k / (k - 1.0) * log1p(0.5 * (k - 1.0) * mach1 * mach1) + log_pressure(mach1, k) - log_pressure(mach2, k);
}

int32_t freeair_fanno_mass_flow(double p0_pa, double t0_k, double p2_pa, double diameter_m, double loss_number,
                                double k, double r_j_kg_k, double *mass_kg_s, double *mach1, double *mach2)
{
  freeair__set_nan(mass_kg_s);
  freeair__set_nan(mach1);
  freeair__set_nan(mach2);
  if (mass_kg_s == NULL || mach1 == NULL || mach2 == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(p0_pa, 1.0, 1e8) || !freeair__closed(t0_k, 50.0, 2000.0) || !freeair__closed(p2_pa, 0.0, 1e8) ||
      !freeair__closed(diameter_m, 1e-6, 10.0) || !freeair__closed(loss_number, 0.0, 1e9) || !k_valid(k) ||
      !freeair__closed(r_j_kg_k, 10.0, 10000.0) || p2_pa > p0_pa)
    return FREEAIR_ERR_DOMAIN;
  double last = 1.0;
  double first = inlet_mach(1.0, loss_number, k);
  const double fall = p2_pa > 0.0 ? -log1p((p2_pa - p0_pa) / p0_pa) : INFINITY;
  if (!(fall > 0.0)) {
    first = 0.0;
    last = 0.0;
  } else if (log_fall(first, 1.0, k) > fall) {
    double low = log(1e-12);
    double high = 0.0;
    for (int step = 0; step < 70; step++) {
      const double middle = 0.5 * (low + high);
      last = exp(middle);
      first = inlet_mach(last, loss_number, k);
      if (log_fall(first, last, k) < fall)
        low = middle;
      else
        high = middle;
    }
  }
  const double heating = log1p(0.5 * (k - 1.0) * first * first);
  const double flux = p0_pa / sqrt(r_j_kg_k * t0_k) * sqrt(k) * first * exp(-0.5 * (k + 1.0) / (k - 1.0) * heating);
  *mass_kg_s = flux * 0.78539816339744830962 * diameter_m * diameter_m;
  *mach1 = first;
  *mach2 = last;
  return FREEAIR_OK;
}

int32_t freeair_fanno_outlet(double mass_kg_s, double p1_pa, double t1_k, double diameter_m, double loss_number,
                             double k, double r_j_kg_k, double *p2_pa, double *t2_k, double *mach2)
{
  freeair__set_nan(p2_pa);
  freeair__set_nan(t2_k);
  freeair__set_nan(mach2);
  if (p2_pa == NULL || t2_k == NULL || mach2 == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(mass_kg_s, 1e-12, 1e6) || !freeair__closed(p1_pa, 1.0, 1e8) ||
      !freeair__closed(t1_k, 50.0, 2000.0) || !freeair__closed(diameter_m, 1e-6, 10.0) ||
      !freeair__closed(loss_number, 0.0, 1e9) || !k_valid(k) || !freeair__closed(r_j_kg_k, 10.0, 10000.0))
    return FREEAIR_ERR_DOMAIN;
  const double first = freeair__pipe_flux(mass_kg_s, diameter_m) * sqrt(r_j_kg_k * t1_k / k) / p1_pa;
  if (!(first <= 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  const double rest = parameter_of(first, k) - loss_number;
  if (!(rest >= 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  const double last = mach_of(-subsonic_root(2.0 * k / (k + 1.0) * rest), k);
  *p2_pa = p1_pa * exp(log_pressure(last, k) - log_pressure(first, k));
  *t2_k = t1_k * exp(log_temperature(last, k) - log_temperature(first, k));
  *mach2 = last;
  return FREEAIR_OK;
}
