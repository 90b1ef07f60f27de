/* SPDX-License-Identifier: MIT */
#include "internal/cycle_gas.h"

#include "internal/chebyshev.h"
#include "internal/check.h"
#include "internal/dry_air.h"

static const double coldest = 180.0;
static const double hottest = 1300.0;
static const double reference = 293.15; /* where the heat capacity ratio is that of the description */

/* Internal energy of dry air over its gas constant, ideal gas, and its slope. */
static double dry_air(double t, double *slope)
{
  freeair__helmholtz ideal;
  freeair__dry_air_ideal(FREEAIR__DRY_AIR_REDUCING_T / t, &ideal);
  *slope = -ideal.tt;
  return t * ideal.t;
}

/* A temperature whose energy is wanted, by Newton's method: the energy is nearly
 * a straight line. */
static double invert_dry_air(double k, double share, double at_reference, double offset, double energy)
{
  double t = energy * (k - 1.0);
  for (int i = 0; i < 20; i++) {
    double slope;
    double u = dry_air(t, &slope);
    double value = t / (k - 1.0) + share * (u - offset - at_reference * (t - coldest));
    double step = (value - energy) / (1.0 / (k - 1.0) + share * (slope - at_reference));
    t = fmax(t - step, 0.5 * t);
    if (fabs(step) < 1e-13 * t) break;
  }
  return t;
}

void freeair__gas_build(freeair__gas *gas, double r, double k, double share)
{
  enum { n = FREEAIR__GAS_TERMS };
  *gas = (freeair__gas){.warm = share > 0.0, .r = r, .constant_cp = k * (r / (k - 1.0))};
  if (!gas->warm) return;
  double at_reference;
  double slope[2];
  dry_air(reference, &at_reference);
  double offset = dry_air(coldest, &slope[0]);
  double rise = dry_air(hottest, &slope[1]) - offset - at_reference * (hottest - coldest);
  double low = coldest / (k - 1.0);
  double high = hottest / (k - 1.0) + share * rise;
  gas->middle = 0.5 * (low + high);
  gas->scale = 2.0 / (high - low);
  double value[n];
  for (int i = 0; i < n; i++) {
    double energy = gas->middle + freeair__chebyshev_point(i, n) / gas->scale;
    value[i] = invert_dry_air(k, share, at_reference, offset, energy);
  }
  freeair__chebyshev_series(n, value, gas->series);
  for (int end = 0; end < 2; end++) {
    double s = end == 0 ? -1.0 : 1.0;
    double t = 0.0;
    double d = 0.0;
    for (int i = n - 1; i >= 0; i--) {
      d = d * s + t;
      t = t * s + gas->series[i];
    }
    gas->ends[end][0] = t;
    gas->ends[end][1] = d * gas->scale;
  }
}

/* Solves a T + b u/R = x for u/R: T alone, or the enthalpy. */
static double energy_where(const freeair__gas *gas, double share_of_energy, double x)
{
  double energy = share_of_energy > 0.0 ? x * (1.0 - gas->r / gas->constant_cp) : x * (gas->constant_cp / gas->r - 1.0);
  for (int i = 0; i < 30; i++) {
    double slope;
    double t = freeair__gas_temperature(gas, energy, &slope);
    double step = (t + share_of_energy * energy - x) / (slope + share_of_energy);
    energy -= step;
    if (fabs(step) < 1e-14 * energy) break;
  }
  return energy;
}

double freeair__gas_energy(const freeair__gas *gas, double t)
{
  return gas->warm ? energy_where(gas, 0.0, t) : t * (gas->constant_cp / gas->r - 1.0);
}

double freeair__gas_enthalpy(const freeair__gas *gas, double t)
{
  return gas->warm ? gas->r * (energy_where(gas, 0.0, t) + t) : gas->constant_cp * t;
}

double freeair__gas_temperature_of_enthalpy(const freeair__gas *gas, double h)
{
  if (!gas->warm) return h / gas->constant_cp;
  double slope;
  return freeair__gas_temperature(gas, energy_where(gas, 1.0, h / gas->r), &slope);
}
