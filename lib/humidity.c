/* SPDX-License-Identifier: MIT */
#include <freeair/enhancement.h>
#include <freeair/humidity.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/humid_air.h"
#include "internal/structure.h"

static const freeair_humidity_given initial_given = FREEAIR_HUMIDITY_GIVEN_INIT;
static const freeair_humidity_found initial_found = FREEAIR_HUMIDITY_FOUND_INIT;

static int is_model(int32_t model)
{
  return model == FREEAIR_ENHANCEMENT_NONE || model == FREEAIR_ENHANCEMENT_VIRIAL;
}

static int32_t check(const freeair_humidity_given *g)
{
  const struct {
    double value;
    double most;
    double least;
  } measure[] = {{g->mole_fraction, 0.9414, 0.0},    {g->vapour_pressure_pa, 1e7, 0.0},
                 {g->humidity_ratio, 10.0, 0.0},    {g->specific_humidity, 0.909, 0.0},
                 {g->relative_humidity, 1.0, 0.0},  {g->dew_point_k, 573.15, 173.15},
                 {g->frost_point_k, 573.15, 173.15}, {g->wet_bulb_k, 573.15, 173.15},
                 {g->vapour_density_kg_m3, 100.0, 0.0}};
  int n = 0;
  for (size_t i = 0; i < FREEAIR__COUNT(measure); i++) {
    if (!freeair__given(measure[i].value)) continue;
    if (!freeair__closed(measure[i].value, measure[i].least, measure[i].most)) return FREEAIR_ERR_DOMAIN;
    n++;
  }
  if (g->flags != 0u || !freeair__closed(g->p_pa, 1000.0, 1e7) || !freeair__closed(g->t_k, 213.15, 573.15) ||
      !is_model(g->model) ||
      (g->wick != FREEAIR_SATURATION_OVER_WATER && g->wick != FREEAIR_SATURATION_OVER_ICE) || n > 1)
    return FREEAIR_ERR_DOMAIN;
  return n == 0 ? FREEAIR_ERR_DATA : FREEAIR_OK;
}

/* Mole fraction of the air that has a mass of vapour in a volume: in an ideal gas
 * the two are proportional, so the secant method soon arrives. NaN where steam
 * alone would be lighter. */
static double fraction_of_vapour_density(double p, double t, double vapour_density)
{
  const double most = freeair__humid_fraction_of_ratio(10.0);
  double last_x = 0.0;
  double last_missing = vapour_density;
  double x = fmin(vapour_density * FREEAIR__WATER_GAS_CONSTANT * t / p, most);
  for (int i = 0; i < 60; i++) {
    const double w = freeair__humid_ratio_of_fraction(x);
    freeair__humid_isotherm isotherm;
    freeair__humid_isotherm_at(t, w, &isotherm);
    const double missing = vapour_density - freeair__humid_density(&isotherm, p) * w / (1.0 + w);
    if (fabs(missing) <= 1e-14 * vapour_density) return x;
    if (x >= most && missing > 0.0) return NAN;
    const double next = x + missing * (x - last_x) / (last_missing - missing);
    if (fabs(next - x) <= 1e-13 * x) return next;
    last_x = x;
    last_missing = missing;
    x = next > 0.0 ? fmin(next, most) : 0.5 * x;
  }
  return x;
}

/* The mole fraction of the measure given; NaN or 1 and more where there is none. */
static double fraction(const freeair_humidity_given *g, int real)
{
  const double p = g->p_pa;
  const double t = g->t_k;
  if (freeair__given(g->mole_fraction)) return g->mole_fraction;
  if (freeair__given(g->vapour_pressure_pa)) return g->vapour_pressure_pa / p;
  if (freeair__given(g->humidity_ratio)) return freeair__humid_fraction_of_ratio(g->humidity_ratio);
  if (freeair__given(g->specific_humidity))
    return freeair__humid_fraction_of_ratio(g->specific_humidity / (1.0 - g->specific_humidity));
  if (freeair__given(g->relative_humidity))
    return g->relative_humidity * freeair__humid_saturation(t, p, 0, real);
  if (freeair__given(g->dew_point_k)) return freeair__humid_saturation(g->dew_point_k, p, 0, real);
  if (freeair__given(g->frost_point_k)) return freeair__humid_saturation(g->frost_point_k, p, 1, real);
  if (freeair__given(g->wet_bulb_k)) {
    if (g->wet_bulb_k > t) return NAN;
    return freeair__humid_fraction_of_ratio(
        freeair__humid_ratio_of_wet_bulb(p, t, g->wet_bulb_k, g->wick == FREEAIR_SATURATION_OVER_ICE));
  }
  return fraction_of_vapour_density(p, t, g->vapour_density_kg_m3);
}

int32_t freeair_humidity_convert(const freeair_humidity_given *given, freeair_humidity_found *found)
{
  freeair_humidity_given g = initial_given;
  freeair_humidity_found q = initial_found;
  int32_t status = found == NULL ? FREEAIR_ERR_NULL
                                 : freeair__structure_write(found, &q, sizeof q, FREEAIR_HUMIDITY_FOUND_BASELINE);
  if (status < 0) return status;
  if (given == NULL) return FREEAIR_ERR_NULL;
  status = freeair__structure_read(&g, sizeof g, given, FREEAIR_HUMIDITY_GIVEN_BASELINE);
  if (status == FREEAIR_OK) status = check(&g);
  if (status < 0) return status;

  const int real = g.model == FREEAIR_ENHANCEMENT_VIRIAL;
  const int frozen = g.wick == FREEAIR_SATURATION_OVER_ICE;
  const double x = fraction(&g, real);
  if (!freeair__from(x, 0.0, 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  const double w = freeair__humid_ratio_of_fraction(x);
  const double rh = freeair__humid_relative(g.p_pa, g.t_k, x, real);
  if (!(w <= 10.0) || !(rh <= 1.001)) return FREEAIR_ERR_NO_SOLUTION;

  freeair__humid_isotherm isotherm;
  freeair__humid_point point;
  freeair__humid_isotherm_at(g.t_k, w, &isotherm);
  freeair__humid_point_at(&isotherm, freeair__humid_density(&isotherm, g.p_pa), &point);
  q.mole_fraction = x;
  q.vapour_pressure_pa = x * g.p_pa;
  q.humidity_ratio = w;
  q.specific_humidity = w / (1.0 + w);
  q.relative_humidity = rh;
  q.dew_point_k = freeair__humid_dew_k(g.p_pa, x, 0, real);
  q.frost_point_k = freeair__humid_dew_k(g.p_pa, x, 1, real);
  if (x <= freeair__humid_saturation(g.t_k, g.p_pa, frozen, 1) * (1.0 + 1e-9))
    q.wet_bulb_k = freeair__humid_wet_bulb(g.p_pa, g.t_k, w, frozen);
  q.vapour_density_kg_m3 = point.rho_kg_m3 * q.specific_humidity;
  q.rho_kg_m3 = point.rho_kg_m3;
  q.h_dry_j_kg = point.h_j_kg * (1.0 + w);
  q.v_dry_m3_kg = (1.0 + w) / point.rho_kg_m3;
  freeair__structure_write(found, &q, sizeof q, FREEAIR_HUMIDITY_FOUND_BASELINE);
  status = freeair__humid_status(g.p_pa, g.t_k);
  return isless(q.dew_point_k, 193.0) ? FREEAIR_WARN_EXTRAPOLATED : status;
}

int32_t freeair_humidity_ratio_from_relative(double p_pa, double t_k, double relative_humidity, int32_t model,
                                             double *humidity_ratio)
{
  if (humidity_ratio == NULL) return FREEAIR_ERR_NULL;
  *humidity_ratio = NAN;
  if (!freeair__humid_in_range(p_pa, t_k) || !freeair__closed(relative_humidity, 0.0, 1.0) || !is_model(model))
    return FREEAIR_ERR_DOMAIN;
  const double x =
      relative_humidity * freeair__humid_saturation(t_k, p_pa, 0, model == FREEAIR_ENHANCEMENT_VIRIAL);
  if (!(x <= freeair__humid_fraction_of_ratio(10.0))) return FREEAIR_ERR_NO_SOLUTION;
  *humidity_ratio = freeair__humid_ratio_of_fraction(x);
  return freeair__humid_status(p_pa, t_k);
}

int32_t freeair_humidity_relative_from_ratio(double p_pa, double t_k, double humidity_ratio, int32_t model,
                                             double *relative_humidity)
{
  if (relative_humidity == NULL) return FREEAIR_ERR_NULL;
  *relative_humidity = NAN;
  if (!freeair__humid_in_range(p_pa, t_k) || !freeair__closed(humidity_ratio, 0.0, 10.0) || !is_model(model))
    return FREEAIR_ERR_DOMAIN;
  const double rh = freeair__humid_relative(p_pa, t_k, freeair__humid_fraction_of_ratio(humidity_ratio),
                                            model == FREEAIR_ENHANCEMENT_VIRIAL);
  if (!(rh <= 1.001)) return FREEAIR_ERR_NO_SOLUTION;
  *relative_humidity = rh;
  return freeair__humid_status(p_pa, t_k);
}
