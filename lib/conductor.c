/* SPDX-License-Identifier: MIT */
#include <freeair/conductor.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/phases.h"

/* IEC 60228:2004: nominal cross-section in mm2, greatest resistance in ohm/km
 * at 20 degC: plain copper of classes 1 and 2, plain copper of class 5,
 * aluminium of class 2. A zero stands where the standard has no entry. */
static const struct size {
  double mm2;
  double ohm_km[3];
} sizes[] = {
    {0.5, {36.0, 39.0, 0}},         {0.75, {24.5, 26.0, 0}},        {1.0, {18.1, 19.5, 0}},
    {1.5, {12.1, 13.3, 0}},         {2.5, {7.41, 7.98, 0}},         {4.0, {4.61, 4.95, 0}},
    {6.0, {3.08, 3.30, 0}},         {10.0, {1.83, 1.91, 3.08}},     {16.0, {1.15, 1.21, 1.91}},
    {25.0, {0.727, 0.780, 1.20}},   {35.0, {0.524, 0.554, 0.868}},  {50.0, {0.387, 0.386, 0.641}},
    {70.0, {0.268, 0.272, 0.443}},  {95.0, {0.193, 0.206, 0.320}},  {120.0, {0.153, 0.161, 0.253}},
    {150.0, {0.124, 0.129, 0.206}}, {185.0, {0.0991, 0.106, 0.164}}, {240.0, {0.0754, 0.0801, 0.125}},
    {300.0, {0.0601, 0.0641, 0.100}}, {400.0, {0.0470, 0.0486, 0.0778}}, {500.0, {0.0366, 0.0384, 0.0605}},
    {630.0, {0.0283, 0.0287, 0.0469}}, {800.0, {0.0221, 0, 0.0367}}, {1000.0, {0.0176, 0, 0.0291}},
};

static const double t20_k = 293.15;
static const double iec_coefficient = 0.004; /* 1/K, IEC 60228 */

static int kind_known(int32_t kind)
{
  return kind >= FREEAIR_CONDUCTOR_COPPER && kind <= FREEAIR_CONDUCTOR_ALUMINIUM;
}

static double table_ohm_m(const struct size *size, int32_t kind)
{
  return size->ohm_km[kind - FREEAIR_CONDUCTOR_COPPER] / 1000.0;
}

static int temperature_valid(double t_k)
{
  return freeair__closed(t_k, 200.0, 600.0);
}

int32_t freeair_conductor_size(int32_t kind, int32_t place, double *area_m2, double *r20_ohm_m)
{
  freeair__set_nan(area_m2);
  freeair__set_nan(r20_ohm_m);
  if (area_m2 == NULL || r20_ohm_m == NULL) return FREEAIR_ERR_NULL;
  if (place < 0 || place > 63) return FREEAIR_ERR_DOMAIN;
  if (!kind_known(kind)) return FREEAIR_ERR_NOT_FOUND;
  for (size_t i = 0; i < FREEAIR__COUNT(sizes); i++)
    if (table_ohm_m(&sizes[i], kind) > 0.0 && place-- == 0) {
      *area_m2 = sizes[i].mm2 / 1e6;
      *r20_ohm_m = table_ohm_m(&sizes[i], kind);
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_conductor_table_resistance(int32_t kind, double area_m2, double *r20_ohm_m)
{
  if (r20_ohm_m == NULL) return FREEAIR_ERR_NULL;
  *r20_ohm_m = NAN;
  if (!freeair__closed(area_m2, 1e-8, 0.01)) return FREEAIR_ERR_DOMAIN;
  if (!kind_known(kind)) return FREEAIR_ERR_NOT_FOUND;
  for (size_t i = 0; i < FREEAIR__COUNT(sizes); i++)
    if (table_ohm_m(&sizes[i], kind) > 0.0 && fabs(1e6 * area_m2 - sizes[i].mm2) <= 1e-3 * sizes[i].mm2) {
      *r20_ohm_m = table_ohm_m(&sizes[i], kind);
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_conductor_resistance(int32_t kind, double area_m2, double t_k, double *r_ohm_m)
{
  if (r_ohm_m == NULL) return FREEAIR_ERR_NULL;
  *r_ohm_m = NAN;
  if (!freeair__closed(area_m2, 1e-9, 0.1) || !temperature_valid(t_k)) return FREEAIR_ERR_DOMAIN;
  if (!kind_known(kind)) return FREEAIR_ERR_NOT_FOUND;
  int aluminium = kind == FREEAIR_CONDUCTOR_ALUMINIUM;
  double conductivity = aluminium ? 0.61 * 58e6 : 58e6; /* S/m */
  double coefficient = aluminium ? 0.00403 : 0.00393;
  *r_ohm_m = (1.0 + coefficient * (t_k - t20_k)) / (conductivity * area_m2);
  return FREEAIR_OK;
}

int32_t freeair_conductor_resistance_at(double r20_ohm_m, double coefficient_1_k, double t_k, double *r_ohm_m)
{
  if (r_ohm_m == NULL) return FREEAIR_ERR_NULL;
  *r_ohm_m = NAN;
  if (!freeair__closed(r20_ohm_m, 0.0, 1000.0) || !freeair__closed(coefficient_1_k, 0.0, 0.01) ||
      !temperature_valid(t_k))
    return FREEAIR_ERR_DOMAIN;
  *r_ohm_m = r20_ohm_m * (1.0 + coefficient_1_k * (t_k - t20_k));
  return FREEAIR_OK;
}

static double gauge_area(int32_t gauge, double *diameter_m)
{
  const double pi = 3.14159265358979323846;
  *diameter_m = 0.000127 * pow(92.0, (36.0 - gauge) / 39.0);
  return 0.25 * pi * *diameter_m * *diameter_m;
}

int32_t freeair_conductor_gauge(int32_t gauge, double *diameter_m, double *area_m2)
{
  freeair__set_nan(diameter_m);
  freeair__set_nan(area_m2);
  if (diameter_m == NULL || area_m2 == NULL) return FREEAIR_ERR_NULL;
  if (gauge < -3 || gauge > 50) return FREEAIR_ERR_DOMAIN;
  *area_m2 = gauge_area(gauge, diameter_m);
  return FREEAIR_OK;
}

int32_t freeair_conductor_gauge_from_area(double area_m2, int32_t *gauge)
{
  if (gauge == NULL) return FREEAIR_ERR_NULL;
  *gauge = 0;
  if (!freeair__closed(area_m2, 1e-8, 0.0001073)) return FREEAIR_ERR_DOMAIN;
  for (int32_t n = 50; n >= -3; n--) {
    double diameter;
    if (gauge_area(n, &diameter) >= area_m2 * (1.0 - 1e-6)) {
      *gauge = n;
      return FREEAIR_OK;
    }
  }
  return FREEAIR_ERR_NO_SOLUTION;
}

int32_t freeair_conductor_drop(double length_m, double r_ohm_m, double x_ohm_m, double current_a,
                               double power_factor, int32_t phases, double *drop_v, double *loss_w)
{
  freeair__set_nan(drop_v);
  freeair__set_nan(loss_w);
  if (drop_v == NULL || loss_w == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(length_m, 0.0, 1e5) || !freeair__closed(r_ohm_m, 0.0, 1000.0) ||
      !freeair__closed(x_ohm_m, 0.0, 1.0) || !freeair__closed(current_a, 0.0, 1e5) ||
      !freeair__closed(power_factor, 0.0, 1.0) || !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  double wires = phases == 1 ? 2.0 : 3.0;
  *drop_v = freeair__phases_run(phases) * current_a * length_m *
            (r_ohm_m * power_factor + x_ohm_m * freeair__phases_sine(power_factor));
  *loss_w = wires * current_a * current_a * r_ohm_m * length_m;
  return FREEAIR_OK;
}

int32_t freeair_conductor_size_for_drop(int32_t kind, double length_m, double t_k, double x_ohm_m, double current_a,
                                        double power_factor, int32_t phases, double allowed_v, double *area_m2,
                                        double *drop_v)
{
  freeair__set_nan(area_m2);
  freeair__set_nan(drop_v);
  if (area_m2 == NULL || drop_v == NULL) return FREEAIR_ERR_NULL;
  if (!temperature_valid(t_k) || !freeair__closed(allowed_v, 0.0, 1e5)) return FREEAIR_ERR_DOMAIN;
  if (!kind_known(kind)) return FREEAIR_ERR_NOT_FOUND;
  for (size_t i = 0; i < FREEAIR__COUNT(sizes); i++) {
    double r20 = table_ohm_m(&sizes[i], kind);
    if (!(r20 > 0.0)) continue;
    double r = r20 * (1.0 + iec_coefficient * (t_k - t20_k));
    double drop;
    double loss;
    int32_t status = freeair_conductor_drop(length_m, r, x_ohm_m, current_a, power_factor, phases, &drop, &loss);
    if (status < 0) return status;
    if (drop <= allowed_v) {
      *area_m2 = sizes[i].mm2 / 1e6;
      *drop_v = drop;
      return status;
    }
  }
  return FREEAIR_ERR_NO_SOLUTION;
}
