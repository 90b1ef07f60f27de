/* SPDX-License-Identifier: MIT */
#include <freeair/dew_point.h>
#include <freeair/enhancement.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/humid_air.h"

static int is_over(int32_t over)
{
  return over == FREEAIR_SATURATION_OVER_WATER || over == FREEAIR_SATURATION_OVER_ICE;
}

static int is_model(int32_t model)
{
  return model == FREEAIR_ENHANCEMENT_NONE || model == FREEAIR_ENHANCEMENT_VIRIAL;
}

static double saturated(double p_pa, double t_k, int32_t over, int32_t model)
{
  return freeair__humid_saturation(t_k, p_pa, over == FREEAIR_SATURATION_OVER_ICE,
                                   model == FREEAIR_ENHANCEMENT_VIRIAL);
}

/* The dew point of a mole fraction, and the status that goes with it. */
static int32_t dew(double p_pa, double mole_fraction, int32_t over, int32_t model, double *dew_k)
{
  const double t = freeair__humid_dew_k(p_pa, mole_fraction, over == FREEAIR_SATURATION_OVER_ICE,
                                        model == FREEAIR_ENHANCEMENT_VIRIAL);
  if (isnan(t)) return FREEAIR_ERR_NO_SOLUTION;
  *dew_k = t;
  return freeair__humid_status(p_pa, t);
}

int32_t freeair_dew_point_at_pressure(double p1_pa, double dew1_k, int32_t over1, double p2_pa, int32_t over2,
                                      int32_t model, double *dew2_k)
{
  if (dew2_k == NULL) return FREEAIR_ERR_NULL;
  *dew2_k = NAN;
  if (!freeair__humid_in_range(p1_pa, dew1_k) || !freeair__humid_in_range(p2_pa, 300.0) || !is_over(over1) ||
      !is_over(over2) || !is_model(model))
    return FREEAIR_ERR_DOMAIN;
  const double x = saturated(p1_pa, dew1_k, over1, model);
  if (!(x < 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  const int32_t first = freeair__humid_status(p1_pa, dew1_k);
  const int32_t second = dew(p2_pa, x, over2, model, dew2_k);
  return second != FREEAIR_OK ? second : first;
}

int32_t freeair_dew_point_from_ratio(double p_pa, double humidity_ratio, int32_t over, int32_t model, double *dew_k)
{
  if (dew_k == NULL) return FREEAIR_ERR_NULL;
  *dew_k = NAN;
  if (!freeair__humid_in_range(p_pa, 300.0) || !freeair__upto(humidity_ratio, 0.0, 10.0) || !is_over(over) ||
      !is_model(model))
    return FREEAIR_ERR_DOMAIN;
  return dew(p_pa, freeair__humid_fraction_of_ratio(humidity_ratio), over, model, dew_k);
}

int32_t freeair_dew_point_from_relative(double p_pa, double t_k, double relative_humidity, int32_t over, int32_t model,
                                        double *dew_k)
{
  if (dew_k == NULL) return FREEAIR_ERR_NULL;
  *dew_k = NAN;
  if (!freeair__humid_in_range(p_pa, t_k) || !freeair__upto(relative_humidity, 0.0, 1.0) || !is_over(over) ||
      !is_model(model))
    return FREEAIR_ERR_DOMAIN;
  const double x = relative_humidity * saturated(p_pa, t_k, FREEAIR_SATURATION_OVER_WATER, model);
  const int32_t status = dew(p_pa, x, over, model, dew_k);
  return status != FREEAIR_OK ? status : freeair__humid_status(p_pa, t_k);
}

int32_t freeair_dew_point_humidity_ratio(double p_pa, double dew_k, int32_t over, int32_t model,
                                         double *humidity_ratio)
{
  if (humidity_ratio == NULL) return FREEAIR_ERR_NULL;
  *humidity_ratio = NAN;
  if (!freeair__humid_in_range(p_pa, dew_k) || !is_over(over) || !is_model(model)) return FREEAIR_ERR_DOMAIN;
  const double x = saturated(p_pa, dew_k, over, model);
  if (!(x < freeair__humid_fraction_of_ratio(10.0))) return FREEAIR_ERR_NO_SOLUTION;
  *humidity_ratio = freeair__humid_ratio_of_fraction(x);
  return freeair__humid_status(p_pa, dew_k);
}

int32_t freeair_dew_point_relative_humidity(double p_pa, double t_k, double dew_k, int32_t over, int32_t model,
                                            double *relative_humidity)
{
  if (relative_humidity == NULL) return FREEAIR_ERR_NULL;
  *relative_humidity = NAN;
  if (!freeair__humid_in_range(p_pa, t_k) || !freeair__humid_in_range(p_pa, dew_k) || !is_over(over) ||
      !is_model(model))
    return FREEAIR_ERR_DOMAIN;
  const double x = saturated(p_pa, dew_k, over, model);
  if (!(x < 1.0)) return FREEAIR_ERR_NO_SOLUTION;
  const double rh = freeair__humid_relative(p_pa, t_k, x, model == FREEAIR_ENHANCEMENT_VIRIAL);
  if (!(rh <= 1.001)) return FREEAIR_ERR_NO_SOLUTION;
  *relative_humidity = rh;
  const int32_t status = freeair__humid_status(p_pa, t_k);
  return status != FREEAIR_OK ? status : freeair__humid_status(p_pa, dew_k);
}
