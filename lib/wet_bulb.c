/* SPDX-License-Identifier: MIT */
#include <freeair/saturation.h>
#include <freeair/status.h>
#include <freeair/wet_bulb.h>

#include "internal/check.h"
#include "internal/humid_air.h"

static int in_range(double p_pa, double t_k, int32_t over)
{
  return freeair__closed(p_pa, 1000.0, 1e7) && freeair__closed(t_k, 213.15, 573.15) &&
         (over == FREEAIR_SATURATION_OVER_WATER || over == FREEAIR_SATURATION_OVER_ICE);
}

int32_t freeair_wet_bulb_temperature(double p_pa, double t_k, double humidity_ratio, int32_t over, double *wet_bulb_k)
{
  if (wet_bulb_k == NULL) return FREEAIR_ERR_NULL;
  *wet_bulb_k = NAN;
  if (!in_range(p_pa, t_k, over) || !freeair__closed(humidity_ratio, 0.0, 10.0)) return FREEAIR_ERR_DOMAIN;
  const int ice = over == FREEAIR_SATURATION_OVER_ICE;
  if (freeair__humid_fraction_of_ratio(humidity_ratio) > freeair__humid_saturation(t_k, p_pa, ice, 1) * (1.0 + 1e-9))
    return FREEAIR_ERR_NO_SOLUTION;
  const double t = freeair__humid_wet_bulb(p_pa, t_k, humidity_ratio, ice);
  if (isnan(t)) return FREEAIR_ERR_NO_SOLUTION;
  *wet_bulb_k = t;
  return freeair__humid_status(p_pa, t_k);
}

int32_t freeair_wet_bulb_humidity_ratio(double p_pa, double t_k, double wet_bulb_k, int32_t over,
                                        double *humidity_ratio)
{
  if (humidity_ratio == NULL) return FREEAIR_ERR_NULL;
  *humidity_ratio = NAN;
  if (!in_range(p_pa, t_k, over) || !freeair__closed(wet_bulb_k, 173.15, 573.15)) return FREEAIR_ERR_DOMAIN;
  if (wet_bulb_k > t_k) return FREEAIR_ERR_NO_SOLUTION;
  const double w = freeair__humid_ratio_of_wet_bulb(p_pa, t_k, wet_bulb_k, over == FREEAIR_SATURATION_OVER_ICE);
  if (!freeair__closed(w, 0.0, 10.0)) return FREEAIR_ERR_NO_SOLUTION;
  *humidity_ratio = w;
  const int32_t status = freeair__humid_status(p_pa, t_k);
  return status != FREEAIR_OK ? status : freeair__humid_status(p_pa, wet_bulb_k);
}
