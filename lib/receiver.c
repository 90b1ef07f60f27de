/* SPDX-License-Identifier: MIT */
#include <freeair/receiver.h>
#include <freeair/status.h>

#include "internal/check.h"

static int volume_valid(double v_m3)
{
  return freeair__closed(v_m3, 1e-6, 1e6);
}

static int pressure_valid(double p_pa)
{
  return freeair__closed(p_pa, 1.0, 1e8);
}

static int temperature_valid(double t_k)
{
  return freeair__closed(t_k, 50.0, 2000.0);
}

static int reference_valid(double p_ref_pa, double t_ref_k)
{
  return freeair__closed(p_ref_pa, 1000.0, 1e6) && temperature_valid(t_ref_k);
}

static int band_valid(double p_high_pa, double p_low_pa, double t_k, double p_ref_pa, double t_ref_k)
{
  return pressure_valid(p_high_pa) && pressure_valid(p_low_pa) && p_low_pa < p_high_pa && temperature_valid(t_k) &&
         reference_valid(p_ref_pa, t_ref_k);
}

/* free air that raises one cubic metre by one pascal */
static double free_air_rate(double t_k, double p_ref_pa, double t_ref_k)
{
  return t_ref_k / (t_k * p_ref_pa);
}

int32_t freeair_receiver_volume_from_event(double shortfall_m3_s, double duration_s, double p_high_pa,
                                           double p_low_pa, double t_k, double p_ref_pa, double t_ref_k,
                                           double *v_m3)
{
  if (v_m3 == NULL) return FREEAIR_ERR_NULL;
  *v_m3 = NAN;
  if (!freeair__closed(shortfall_m3_s, 0.0, 1e4) || !freeair__closed(duration_s, 0.0, 1e7) ||
      !band_valid(p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  *v_m3 = shortfall_m3_s * duration_s / ((p_high_pa - p_low_pa) * free_air_rate(t_k, p_ref_pa, t_ref_k));
  return FREEAIR_OK;
}

int32_t freeair_receiver_volume_from_starts(double supply_m3_s, double starts_hz, double p_high_pa, double p_low_pa,
                                            double t_k, double p_ref_pa, double t_ref_k, double *v_m3)
{
  if (v_m3 == NULL) return FREEAIR_ERR_NULL;
  *v_m3 = NAN;
  if (!freeair__closed(supply_m3_s, 0.0, 1e4) || !freeair__closed(starts_hz, 1e-9, 10.0) ||
      !band_valid(p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  *v_m3 = supply_m3_s / (4.0 * starts_hz * (p_high_pa - p_low_pa) * free_air_rate(t_k, p_ref_pa, t_ref_k));
  return FREEAIR_OK;
}

int32_t freeair_receiver_cycle(double v_m3, double supply_m3_s, double demand_m3_s, double p_high_pa,
                               double p_low_pa, double t_k, double p_ref_pa, double t_ref_k, double *run_s,
                               double *rest_s, double *starts_hz)
{
  freeair__set_nan(run_s);
  freeair__set_nan(rest_s);
  freeair__set_nan(starts_hz);
  if (run_s == NULL || rest_s == NULL || starts_hz == NULL) return FREEAIR_ERR_NULL;
  if (!volume_valid(v_m3) || !freeair__upto(supply_m3_s, 0.0, 1e4) || !freeair__closed(demand_m3_s, 1e-12, 1e4) ||
      !band_valid(p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  if (demand_m3_s >= supply_m3_s) return FREEAIR_ERR_NO_SOLUTION;
  double air = v_m3 * (p_high_pa - p_low_pa) * free_air_rate(t_k, p_ref_pa, t_ref_k);
  *run_s = air / (supply_m3_s - demand_m3_s);
  *rest_s = air / demand_m3_s;
  *starts_hz = 1.0 / (*run_s + *rest_s);
  return FREEAIR_OK;
}

int32_t freeair_receiver_starts_maximum(double v_m3, double supply_m3_s, double p_high_pa, double p_low_pa,
                                        double t_k, double p_ref_pa, double t_ref_k, double *starts_hz)
{
  if (starts_hz == NULL) return FREEAIR_ERR_NULL;
  *starts_hz = NAN;
  if (!volume_valid(v_m3) || !freeair__closed(supply_m3_s, 0.0, 1e4) ||
      !band_valid(p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  *starts_hz = supply_m3_s / (4.0 * v_m3 * (p_high_pa - p_low_pa) * free_air_rate(t_k, p_ref_pa, t_ref_k));
  return FREEAIR_OK;
}

int32_t freeair_receiver_usable_air(double v_m3, double p_high_pa, double p_low_pa, double t_k, double p_ref_pa,
                                    double t_ref_k, double *air_m3)
{
  if (air_m3 == NULL) return FREEAIR_ERR_NULL;
  *air_m3 = NAN;
  if (!volume_valid(v_m3) || !band_valid(p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k)) return FREEAIR_ERR_DOMAIN;
  *air_m3 = v_m3 * (p_high_pa - p_low_pa) * free_air_rate(t_k, p_ref_pa, t_ref_k);
  return FREEAIR_OK;
}

int32_t freeair_receiver_pressure_after(double v_m3, double p1_pa, double net_m3_s, double duration_s, double t_k,
                                        double p_ref_pa, double t_ref_k, double *p2_pa)
{
  if (p2_pa == NULL) return FREEAIR_ERR_NULL;
  *p2_pa = NAN;
  if (!volume_valid(v_m3) || !pressure_valid(p1_pa) || !freeair__closed(net_m3_s, -1e4, 1e4) ||
      !freeair__closed(duration_s, 0.0, 1e9) || !temperature_valid(t_k) || !reference_valid(p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  double end = p1_pa + net_m3_s * duration_s / (v_m3 * free_air_rate(t_k, p_ref_pa, t_ref_k));
  if (end < 0.0) return FREEAIR_ERR_NO_SOLUTION;
  *p2_pa = end;
  return FREEAIR_OK;
}

int32_t freeair_receiver_fill_time(double v_m3, double p1_pa, double p2_pa, double net_m3_s, double t_k,
                                   double p_ref_pa, double t_ref_k, double *time_s)
{
  if (time_s == NULL) return FREEAIR_ERR_NULL;
  *time_s = NAN;
  if (!volume_valid(v_m3) || !pressure_valid(p1_pa) || !pressure_valid(p2_pa) ||
      !freeair__closed(net_m3_s, -1e4, 1e4) || !temperature_valid(t_k) || !reference_valid(p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  double rise = p2_pa - p1_pa;
  if (rise == 0.0) {
    *time_s = 0.0;
    return FREEAIR_OK;
  }
  if (!(rise > 0.0 ? net_m3_s > 0.0 : net_m3_s < 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  double air = v_m3 * rise * free_air_rate(t_k, p_ref_pa, t_ref_k);
  if (fabs(air) >= 1e300 * fabs(net_m3_s)) return FREEAIR_ERR_OVERFLOW;
  *time_s = air / net_m3_s;
  return FREEAIR_OK;
}

int32_t freeair_receiver_free_air_from_pump_up(double v_m3, double p1_pa, double t1_k, double p2_pa, double t2_k,
                                               double duration_s, double p_ref_pa, double t_ref_k, double *q_m3_s)
{
  if (q_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q_m3_s = NAN;
  if (!volume_valid(v_m3) || !pressure_valid(p1_pa) || !temperature_valid(t1_k) || !pressure_valid(p2_pa) ||
      !temperature_valid(t2_k) || !freeair__closed(duration_s, 1e-3, 1e7) || !reference_valid(p_ref_pa, t_ref_k))
    return FREEAIR_ERR_DOMAIN;
  /* p2/T2 - p1/T1, exact in the pressure rise where the temperature stays */
  double gained = ((p2_pa - p1_pa) - p1_pa * ((t2_k - t1_k) / t1_k)) / t2_k;
  *q_m3_s = v_m3 * gained * t_ref_k / (p_ref_pa * duration_s);
  return *q_m3_s > 0.0 ? FREEAIR_OK : FREEAIR_WARN_INCONSISTENT;
}

int32_t freeair_receiver_water_from_pump_up(double v_m3, double expected_s, double found_s, double *water_m3)
{
  if (water_m3 == NULL) return FREEAIR_ERR_NULL;
  *water_m3 = NAN;
  if (!volume_valid(v_m3) || !freeair__closed(expected_s, 1e-3, 1e7) || !freeair__closed(found_s, 1e-3, 1e7))
    return FREEAIR_ERR_DOMAIN;
  if (found_s > expected_s) return FREEAIR_ERR_NO_SOLUTION;
  *water_m3 = v_m3 * ((expected_s - found_s) / expected_s);
  return FREEAIR_OK;
}
