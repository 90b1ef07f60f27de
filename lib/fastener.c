/* SPDX-License-Identifier: MIT */
#include <freeair/fastener.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"

static const double pi = 3.14159265358979323846;
static const double root3 = 1.7320508075688772935;

/* ISO 261: coarse pitches in mm. */
static const struct {
  double mm, pitch_mm;
} iso[] = {
    {3.0, 0.5},  {3.5, 0.6},  {4.0, 0.7},  {5.0, 0.8},  {6.0, 1.0},  {7.0, 1.0},  {8.0, 1.25},
    {10.0, 1.5}, {12.0, 1.75}, {14.0, 2.0}, {16.0, 2.0}, {18.0, 2.5}, {20.0, 2.5}, {22.0, 2.5},
    {24.0, 3.0}, {27.0, 3.0}, {30.0, 3.5}, {33.0, 3.5}, {36.0, 4.0}, {39.0, 4.0},
};

/* ASME B1.1: threads per inch, coarse and fine. */
static const struct {
  double inch, coarse, fine;
} unified[] = {
    {0.138, 32, 40}, {0.164, 32, 36}, {0.190, 24, 32}, {0.25, 20, 28},  {0.3125, 18, 24}, {0.375, 16, 24},
    {0.4375, 14, 20}, {0.5, 13, 20},  {0.5625, 12, 18}, {0.625, 11, 18}, {0.75, 10, 16},   {0.875, 9, 14},
    {1.0, 8, 12},    {1.125, 7, 12},  {1.25, 7, 12},    {1.375, 6, 12},  {1.5, 6, 12},
};

/* Stresses in MPa (ISO) or ksi (SAE), for diameters up to and including the
 * given one. Rows of a grade stand together, thinnest first. */
static const struct {
  int32_t grade;
  double from_mm, to_mm, proof, yield, tensile;
} strengths[] = {
    {FREEAIR_FASTENER_SAE_2, 6.35, 19.05, 55, 57, 74},
    {FREEAIR_FASTENER_SAE_2, 6.35, 38.1, 33, 36, 60},
    {FREEAIR_FASTENER_SAE_5, 6.35, 25.4, 85, 92, 120},
    {FREEAIR_FASTENER_SAE_5, 6.35, 38.1, 74, 81, 105},
    {FREEAIR_FASTENER_SAE_8, 6.35, 38.1, 120, 130, 150},
    {FREEAIR_FASTENER_ISO_4_6, 1.6, 39.0, 225, 240, 400},
    {FREEAIR_FASTENER_ISO_4_8, 1.6, 39.0, 310, 340, 420},
    {FREEAIR_FASTENER_ISO_5_6, 1.6, 39.0, 280, 300, 500},
    {FREEAIR_FASTENER_ISO_5_8, 1.6, 39.0, 380, 420, 520},
    {FREEAIR_FASTENER_ISO_6_8, 1.6, 39.0, 440, 480, 600},
    {FREEAIR_FASTENER_ISO_8_8, 1.6, 16.0, 580, 640, 800},
    {FREEAIR_FASTENER_ISO_8_8, 1.6, 39.0, 600, 660, 830},
    {FREEAIR_FASTENER_ISO_9_8, 1.6, 16.0, 650, 720, 900},
    {FREEAIR_FASTENER_ISO_10_9, 1.6, 39.0, 830, 940, 1040},
    {FREEAIR_FASTENER_ISO_12_9, 1.6, 39.0, 970, 1100, 1220},
};

static const double ksi = 6894757.2931683613;
static const double mpa = 1e6;

static int diameter_valid(double diameter_m)
{
  return freeair__closed(diameter_m, 0.001, 0.2);
}

static int pitch_valid(double pitch_m)
{
  return freeair__closed(pitch_m, 0.0001, 0.02);
}

static int near(double a, double b)
{
  return fabs(a - b) <= 0.005 * b;
}

int32_t freeair_fastener_pitch(int32_t thread, double diameter_m, double *pitch_m)
{
  if (pitch_m == NULL) return FREEAIR_ERR_NULL;
  *pitch_m = NAN;
  if (!diameter_valid(diameter_m)) return FREEAIR_ERR_DOMAIN;
  if (thread == FREEAIR_FASTENER_ISO)
    for (size_t i = 0; i < FREEAIR__COUNT(iso); i++)
      if (near(1000.0 * diameter_m, iso[i].mm)) {
        *pitch_m = iso[i].pitch_mm / 1000.0;
        return FREEAIR_OK;
      }
  if (thread == FREEAIR_FASTENER_UNC || thread == FREEAIR_FASTENER_UNF)
    for (size_t i = 0; i < FREEAIR__COUNT(unified); i++)
      if (near(diameter_m / 0.0254, unified[i].inch)) {
        *pitch_m = 0.0254 / (thread == FREEAIR_FASTENER_UNC ? unified[i].coarse : unified[i].fine);
        return FREEAIR_OK;
      }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_fastener_stress_area(int32_t thread, double diameter_m, double pitch_m, double *area_m2)
{
  if (area_m2 == NULL) return FREEAIR_ERR_NULL;
  *area_m2 = NAN;
  if (!diameter_valid(diameter_m) || !pitch_valid(pitch_m)) return FREEAIR_ERR_DOMAIN;
  if (thread < FREEAIR_FASTENER_ISO || thread > FREEAIR_FASTENER_UNF) return FREEAIR_ERR_NOT_FOUND;
  if (pitch_m > 0.5 * diameter_m) return FREEAIR_ERR_NO_SOLUTION;
  double c = thread == FREEAIR_FASTENER_ISO ? 13.0 * root3 / 24.0 : 9.0 * root3 / 16.0;
  double d = diameter_m - c * pitch_m;
  *area_m2 = 0.25 * pi * d * d;
  return FREEAIR_OK;
}

int32_t freeair_fastener_strength(int32_t grade, double diameter_m, double *proof_pa, double *yield_pa,
                                  double *tensile_pa)
{
  freeair__set_nan(proof_pa);
  freeair__set_nan(yield_pa);
  freeair__set_nan(tensile_pa);
  if (proof_pa == NULL || yield_pa == NULL || tensile_pa == NULL) return FREEAIR_ERR_NULL;
  if (!diameter_valid(diameter_m)) return FREEAIR_ERR_DOMAIN;
  const double hair = 1e-6; /* so that 25.4 mm is not more than one inch by rounding */
  for (size_t i = 0; i < FREEAIR__COUNT(strengths); i++)
    if (strengths[i].grade == grade && 1000.0 * diameter_m >= strengths[i].from_mm * (1.0 - hair) &&
        1000.0 * diameter_m <= strengths[i].to_mm * (1.0 + hair)) {
      double unit = grade <= FREEAIR_FASTENER_SAE_8 ? ksi : mpa;
      *proof_pa = strengths[i].proof * unit;
      *yield_pa = strengths[i].yield * unit;
      *tensile_pa = strengths[i].tensile * unit;
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_fastener_torque_for_grade(int32_t thread, double diameter_m, int32_t grade, double fraction,
                                          double nut_factor, double *torque_nm, double *preload_n)
{
  freeair__set_nan(torque_nm);
  freeair__set_nan(preload_n);
  if (torque_nm == NULL || preload_n == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(fraction, 0.0, 1.0) || !freeair__closed(nut_factor, 0.01, 1.0)) return FREEAIR_ERR_DOMAIN;
  double pitch;
  double area;
  double proof;
  double yield;
  double tensile;
  int32_t status = freeair_fastener_pitch(thread, diameter_m, &pitch);
  if (status < 0) return status;
  status = freeair_fastener_stress_area(thread, diameter_m, pitch, &area);
  if (status < 0) return status;
  status = freeair_fastener_strength(grade, diameter_m, &proof, &yield, &tensile);
  if (status < 0) return status;
  *preload_n = fraction * proof * area;
  *torque_nm = nut_factor * diameter_m * *preload_n;
  return status;
}

int32_t freeair_fastener_torque(double preload_n, double nut_factor, double diameter_m, double *torque_nm)
{
  if (torque_nm == NULL) return FREEAIR_ERR_NULL;
  *torque_nm = NAN;
  if (!freeair__closed(preload_n, 0.0, 1e7) || !freeair__closed(nut_factor, 0.01, 1.0) || !diameter_valid(diameter_m))
    return FREEAIR_ERR_DOMAIN;
  *torque_nm = nut_factor * diameter_m * preload_n;
  return FREEAIR_OK;
}

int32_t freeair_fastener_preload(double torque_nm, double torque_uncertainty_nm, double nut_factor,
                                 double nut_factor_uncertainty, double diameter_m, double *preload_n,
                                 double *uncertainty_n)
{
  freeair__set_nan(preload_n);
  freeair__set_nan(uncertainty_n);
  if (preload_n == NULL || uncertainty_n == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(torque_nm, 0.0, 1e6) || !freeair__closed(torque_uncertainty_nm, 0.0, 1e6) ||
      !freeair__closed(nut_factor, 0.01, 1.0) || !freeair__closed(nut_factor_uncertainty, 0.0, 1.0) ||
      !diameter_valid(diameter_m))
    return FREEAIR_ERR_DOMAIN;
  double by_unit = 1.0 / (nut_factor * diameter_m);
  *preload_n = torque_nm * by_unit;
  *uncertainty_n = by_unit * hypot(torque_uncertainty_nm, torque_nm * (nut_factor_uncertainty / nut_factor));
  return FREEAIR_OK;
}

int32_t freeair_fastener_nut_factor(double diameter_m, double pitch_m, double thread_friction,
                                    double bearing_friction, double bearing_m, double *nut_factor)
{
  if (nut_factor == NULL) return FREEAIR_ERR_NULL;
  *nut_factor = NAN;
  if (!diameter_valid(diameter_m) || !pitch_valid(pitch_m) || !freeair__closed(thread_friction, 0.0, 1.0) ||
      !freeair__closed(bearing_friction, 0.0, 1.0) || !freeair__closed(bearing_m, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  if (pitch_m > 0.5 * diameter_m) return FREEAIR_ERR_NO_SOLUTION;
  double pitch_diameter = diameter_m - 3.0 * root3 / 8.0 * pitch_m;
  double lever = pitch_m / (2.0 * pi) + thread_friction * pitch_diameter / root3 + 0.5 * bearing_friction * bearing_m;
  *nut_factor = lever / diameter_m;
  return FREEAIR_OK;
}

int32_t freeair_fastener_pressure_load(double difference_pa, double area_m2, int32_t bolts, double *load_n)
{
  if (load_n == NULL) return FREEAIR_ERR_NULL;
  *load_n = NAN;
  if (!freeair__closed(difference_pa, 0.0, 1e8) || !freeair__closed(area_m2, 0.0, 100.0) || bolts < 1 || bolts > 1000)
    return FREEAIR_ERR_DOMAIN;
  *load_n = difference_pa * area_m2 / bolts;
  return FREEAIR_OK;
}
