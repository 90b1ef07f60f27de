/* SPDX-License-Identifier: MIT */
#include <freeair/cylinder.h>
#include <freeair/status.h>

#include "internal/circle.h"
#include "internal/gas.h"

static int is_length(double length_m)
{
  return freeair__closed(length_m, 0.0001, 10.0);
}

static int is_swept(double swept_m3)
{
  return freeair__closed(swept_m3, 1e-12, 1000.0);
}

static int is_clearance(double clearance)
{
  return freeair__closed(clearance, 0.0, 2.0);
}

static int is_speed(double speed_rev_s)
{
  return freeair__closed(speed_rev_s, 0.0, 1000.0);
}

/* Growth of the clearance volume by re-expansion, over the clearance volume: (p2/p1)^(1/n) - 1. */
static double growth(double p1_pa, double p2_pa, double n)
{
  return expm1(freeair__log_ratio(p2_pa, p1_pa) / n);
}

int32_t freeair_cylinder_swept_volume(double bore_m, double stroke_m, double *v_m3)
{
  if (v_m3 == NULL) return FREEAIR_ERR_NULL;
  *v_m3 = NAN;
  if (!is_length(bore_m) || !is_length(stroke_m)) return FREEAIR_ERR_DOMAIN;
  *v_m3 = 0.25 * FREEAIR__PI * bore_m * bore_m * stroke_m;
  return FREEAIR_OK;
}

int32_t freeair_cylinder_swept_volume_double_acting(double bore_m, double stroke_m, double rod_diameter_m,
                                                    double *v_m3)
{
  if (v_m3 == NULL) return FREEAIR_ERR_NULL;
  *v_m3 = NAN;
  if (!is_length(bore_m) || !is_length(stroke_m) || !freeair__closed(rod_diameter_m, 0.0, 10.0) ||
      !(rod_diameter_m < bore_m))
    return FREEAIR_ERR_DOMAIN;
  double both = bore_m * bore_m + (bore_m - rod_diameter_m) * (bore_m + rod_diameter_m);
  *v_m3 = 0.25 * FREEAIR__PI * both * stroke_m;
  return FREEAIR_OK;
}

int32_t freeair_cylinder_clearance_volume(double swept_m3, double clearance, double *v_m3)
{
  if (v_m3 == NULL) return FREEAIR_ERR_NULL;
  *v_m3 = NAN;
  if (!is_swept(swept_m3) || !is_clearance(clearance)) return FREEAIR_ERR_DOMAIN;
  *v_m3 = clearance * swept_m3;
  return FREEAIR_OK;
}

int32_t freeair_cylinder_clearance_from_volume(double swept_m3, double clearance_m3, double *clearance)
{
  if (clearance == NULL) return FREEAIR_ERR_NULL;
  *clearance = NAN;
  if (!is_swept(swept_m3) || !freeair__closed(clearance_m3, 0.0, 1000.0)) return FREEAIR_ERR_DOMAIN;
  *clearance = clearance_m3 / swept_m3;
  return FREEAIR_OK;
}

int32_t freeair_cylinder_volumetric_efficiency(double p1_pa, double p2_pa, double clearance, double n,
                                               double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !(p2_pa >= p1_pa) ||
      !is_clearance(clearance) || !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  double value = 1.0 - clearance * growth(p1_pa, p2_pa, n);
  *efficiency = fmax(value, 0.0);
  return value > 0.0 ? FREEAIR_OK : FREEAIR_WARN_LIMIT;
}

int32_t freeair_cylinder_zero_delivery_pressure(double p1_pa, double clearance, double n, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__closed(clearance, 0.0001, 2.0) || !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  *p_pa = p1_pa * exp(n * log1p(1.0 / clearance));
  return FREEAIR_OK;
}

int32_t freeair_cylinder_clearance_from_zero_delivery(double p1_pa, double p_zero_pa, double n, double *clearance)
{
  if (clearance == NULL) return FREEAIR_ERR_NULL;
  *clearance = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_pressure(p_zero_pa) || !(p_zero_pa > p1_pa) ||
      !freeair__is_exponent(n))
    return FREEAIR_ERR_DOMAIN;
  *clearance = 1.0 / growth(p1_pa, p_zero_pa, n);
  return FREEAIR_OK;
}

int32_t freeair_cylinder_clearance_from_volumetric_efficiency(double p1_pa, double p2_pa, double n, double efficiency,
                                                              double *clearance)
{
  if (clearance == NULL) return FREEAIR_ERR_NULL;
  *clearance = NAN;
  if (!freeair__is_pressure(p1_pa) || !freeair__is_pressure(p2_pa) || !(p2_pa > p1_pa) || !freeair__is_exponent(n) ||
      !freeair__closed(efficiency, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *clearance = (1.0 - efficiency) / growth(p1_pa, p2_pa, n);
  return FREEAIR_OK;
}

int32_t freeair_cylinder_mean_effective_pressure(double p1_pa, double p2_pa, double clearance, double n_compression,
                                                 double n_expansion, double *mep_pa)
{
  if (mep_pa == NULL) return FREEAIR_ERR_NULL;
  *mep_pa = NAN;
  if (!freeair__is_exponent(n_compression)) return FREEAIR_ERR_DOMAIN;
  double efficiency;
  int32_t status = freeair_cylinder_volumetric_efficiency(p1_pa, p2_pa, clearance, n_expansion, &efficiency);
  if (status < 0) return status;
  *mep_pa = 0.0;
  if (status == FREEAIR_WARN_LIMIT || !(clearance * growth(p1_pa, p2_pa, n_compression) < 1.0))
    return FREEAIR_WARN_LIMIT;
  /* the fresh air costs work of compression, the clearance air only the difference of two exponents */
  double compression = freeair__polytropic_head(p1_pa, p2_pa, n_compression);
  double expansion = freeair__polytropic_head(p1_pa, p2_pa, n_expansion);
  double expanded = clearance + clearance * growth(p1_pa, p2_pa, n_expansion);
  *mep_pa = p1_pa * (efficiency * compression + expanded * (compression - expansion));
  return status;
}

int32_t freeair_cylinder_indicated_power(double mep_pa, double swept_m3, double speed_rev_s, double *power_w)
{
  if (power_w == NULL) return FREEAIR_ERR_NULL;
  *power_w = NAN;
  if (!freeair__closed(mep_pa, -1e8, 1e8) || !is_swept(swept_m3) || !is_speed(speed_rev_s))
    return FREEAIR_ERR_DOMAIN;
  *power_w = mep_pa * swept_m3 * speed_rev_s;
  return FREEAIR_OK;
}

int32_t freeair_cylinder_piston_speed(double stroke_m, double speed_rev_s, double *speed_m_s)
{
  if (speed_m_s == NULL) return FREEAIR_ERR_NULL;
  *speed_m_s = NAN;
  if (!is_length(stroke_m) || !is_speed(speed_rev_s)) return FREEAIR_ERR_DOMAIN;
  *speed_m_s = 2.0 * stroke_m * speed_rev_s;
  return FREEAIR_OK;
}
