/* SPDX-License-Identifier: MIT */
#include <freeair/nameplate.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/phases.h"

static const double horsepower = 745.69987158227022; /* W, 550 ft lbf/s */
static const double watts = 1e9;
static const double amperes = 1e6;
static const double volts = 1e6;

/* Lower ends of the bands, kVA per hp. */
static const struct {
  int32_t code;
  double kva_hp;
} codes[] = {
    {FREEAIR_NAMEPLATE_CODE_A, 0.0},  {FREEAIR_NAMEPLATE_CODE_B, 3.15}, {FREEAIR_NAMEPLATE_CODE_C, 3.55},
    {FREEAIR_NAMEPLATE_CODE_D, 4.0},  {FREEAIR_NAMEPLATE_CODE_E, 4.5},  {FREEAIR_NAMEPLATE_CODE_F, 5.0},
    {FREEAIR_NAMEPLATE_CODE_G, 5.6},  {FREEAIR_NAMEPLATE_CODE_H, 6.3},  {FREEAIR_NAMEPLATE_CODE_J, 7.1},
    {FREEAIR_NAMEPLATE_CODE_K, 8.0},  {FREEAIR_NAMEPLATE_CODE_L, 9.0},  {FREEAIR_NAMEPLATE_CODE_M, 10.0},
    {FREEAIR_NAMEPLATE_CODE_N, 11.2}, {FREEAIR_NAMEPLATE_CODE_P, 12.5}, {FREEAIR_NAMEPLATE_CODE_R, 14.0},
    {FREEAIR_NAMEPLATE_CODE_S, 16.0}, {FREEAIR_NAMEPLATE_CODE_T, 18.0}, {FREEAIR_NAMEPLATE_CODE_U, 20.0},
    {FREEAIR_NAMEPLATE_CODE_V, 22.4},
};

/* Full-load currents in ampere. A zero stands where the table has no entry. */
enum { COLUMNS = 7 };
static const struct {
  double lower_v, upper_v;
} columns[COLUMNS] = {
    {110.0, 120.0}, {195.0, 204.0}, {204.0, 216.0}, {220.0, 240.0}, {440.0, 480.0}, {550.0, 600.0}, {2200.0, 2400.0},
};
struct row {
  double hp;
  double current_a[COLUMNS];
};
static const struct row single_phase[] = {
    {1.0 / 6.0, {4.4, 2.5, 2.4, 2.2, 0, 0, 0}}, {0.25, {5.8, 3.3, 3.2, 2.9, 0, 0, 0}},
    {1.0 / 3.0, {7.2, 4.1, 4.0, 3.6, 0, 0, 0}}, {0.5, {9.8, 5.6, 5.4, 4.9, 0, 0, 0}},
    {0.75, {13.8, 7.9, 7.6, 6.9, 0, 0, 0}},     {1.0, {16.0, 9.2, 8.8, 8.0, 0, 0, 0}},
    {1.5, {20.0, 11.5, 11.0, 10.0, 0, 0, 0}},   {2.0, {24.0, 13.8, 13.2, 12.0, 0, 0, 0}},
    {3.0, {34.0, 19.6, 18.7, 17.0, 0, 0, 0}},   {5.0, {56.0, 32.2, 30.8, 28.0, 0, 0, 0}},
    {7.5, {80.0, 46.0, 44.0, 40.0, 0, 0, 0}},   {10.0, {100.0, 57.5, 55.0, 50.0, 0, 0, 0}},
};
static const struct row three_phase[] = {
    {0.5, {4.4, 2.5, 2.4, 2.2, 1.1, 0.9, 0}},
    {0.75, {6.4, 3.7, 3.5, 3.2, 1.6, 1.3, 0}},
    {1.0, {8.4, 4.8, 4.6, 4.2, 2.1, 1.7, 0}},
    {1.5, {12.0, 6.9, 6.6, 6.0, 3.0, 2.4, 0}},
    {2.0, {13.6, 7.8, 7.5, 6.8, 3.4, 2.7, 0}},
    {3.0, {0, 11.0, 10.6, 9.6, 4.8, 3.9, 0}},
    {5.0, {0, 17.5, 16.7, 15.2, 7.6, 6.1, 0}},
    {7.5, {0, 25.3, 24.2, 22.0, 11.0, 9.0, 0}},
    {10.0, {0, 32.2, 30.8, 28.0, 14.0, 11.0, 0}},
    {15.0, {0, 48.3, 46.2, 42.0, 21.0, 17.0, 0}},
    {20.0, {0, 62.1, 59.4, 54.0, 27.0, 22.0, 0}},
    {25.0, {0, 78.2, 74.8, 68.0, 34.0, 27.0, 0}},
    {30.0, {0, 92.0, 88.0, 80.0, 40.0, 32.0, 0}},
    {40.0, {0, 120.0, 114.0, 104.0, 52.0, 41.0, 0}},
    {50.0, {0, 150.0, 143.0, 130.0, 65.0, 52.0, 0}},
    {60.0, {0, 177.0, 169.0, 154.0, 77.0, 62.0, 16.0}},
    {75.0, {0, 221.0, 211.0, 192.0, 96.0, 77.0, 20.0}},
    {100.0, {0, 285.0, 273.0, 248.0, 124.0, 99.0, 26.0}},
    {125.0, {0, 359.0, 343.0, 312.0, 156.0, 125.0, 31.0}},
    {150.0, {0, 414.0, 396.0, 360.0, 180.0, 144.0, 37.0}},
    {200.0, {0, 552.0, 528.0, 480.0, 240.0, 192.0, 49.0}},
    {250.0, {0, 0, 0, 0, 302.0, 242.0, 60.0}},
    {300.0, {0, 0, 0, 0, 361.0, 289.0, 72.0}},
    {350.0, {0, 0, 0, 0, 414.0, 336.0, 83.0}},
    {400.0, {0, 0, 0, 0, 477.0, 382.0, 95.0}},
    {450.0, {0, 0, 0, 0, 515.0, 412.0, 103.0}},
    {500.0, {0, 0, 0, 0, 590.0, 472.0, 118.0}},
};

/* Efficiency in percent as a polynomial in log10 of the power in kW, for two,
 * four and six poles, cubic coefficient first. */
static const double efficiencies[4][3][4] = {
    {{0.5234, -5.0499, 17.4180, 74.3171}, {0.5234, -5.0499, 17.4180, 74.3171}, {0.0786, -3.5838, 17.2918, 72.2383}},
    {{0.2972, -3.3454, 13.0651, 79.0770}, {0.0278, -1.9247, 10.4395, 80.9761}, {0.0148, -2.4978, 13.2470, 77.5603}},
    {{0.3569, -3.3076, 11.6108, 82.2503}, {0.0773, -1.8951, 9.2984, 83.7025}, {0.1252, -2.6130, 11.9963, 80.4769}},
    {{0.3400, -3.0479, 10.2930, 84.8208}, {0.2412, -2.3608, 8.4460, 86.8321}, {0.3598, -3.2107, 10.7933, 84.1079}},
};

int32_t freeair_nameplate_code_band(int32_t code, double *lower, double *upper)
{
  freeair__set_nan(lower);
  freeair__set_nan(upper);
  if (lower == NULL || upper == NULL) return FREEAIR_ERR_NULL;
  for (size_t i = 0; i < FREEAIR__COUNT(codes); i++)
    if (codes[i].code == code) {
      *lower = 1000.0 * codes[i].kva_hp / horsepower;
      *upper = i + 1 < FREEAIR__COUNT(codes) ? 1000.0 * codes[i + 1].kva_hp / horsepower : INFINITY;
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_nameplate_code_from_current(double locked_rotor_a, double voltage_v, double rated_w, int32_t phases,
                                            int32_t *code)
{
  if (code == NULL) return FREEAIR_ERR_NULL;
  *code = 0;
  if (!freeair__closed(locked_rotor_a, 0.0, amperes) || !freeair__closed(voltage_v, 1.0, volts) ||
      !freeair__closed(rated_w, 1.0, watts) || !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  double kva_hp = freeair__phases_power(phases) * voltage_v * locked_rotor_a / 1000.0 / (rated_w / horsepower);
  for (size_t i = 0; i < FREEAIR__COUNT(codes); i++)
    if (kva_hp >= codes[i].kva_hp) *code = codes[i].code;
  return FREEAIR_OK;
}

int32_t freeair_nameplate_locked_rotor_current(int32_t code, double rated_w, double voltage_v, int32_t phases,
                                               double *lower_a, double *upper_a)
{
  freeair__set_nan(lower_a);
  freeair__set_nan(upper_a);
  if (lower_a == NULL || upper_a == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(rated_w, 1.0, watts) || !freeair__closed(voltage_v, 1.0, volts) ||
      !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  double lower;
  double upper;
  int32_t status = freeair_nameplate_code_band(code, &lower, &upper);
  if (status < 0) return status;
  double rated_a = rated_w / (freeair__phases_power(phases) * voltage_v);
  *lower_a = lower * rated_a;
  *upper_a = upper * rated_a;
  return status;
}

int32_t freeair_nameplate_full_load_current(double rated_w, double voltage_v, int32_t phases, double *current_a)
{
  if (current_a == NULL) return FREEAIR_ERR_NULL;
  *current_a = NAN;
  if (!freeair__closed(rated_w, 1.0, watts) || !freeair__closed(voltage_v, 1.0, volts) ||
      !freeair__phases_valid(phases))
    return FREEAIR_ERR_DOMAIN;
  const struct row *rows = phases == 1 ? single_phase : three_phase;
  size_t n = phases == 1 ? FREEAIR__COUNT(single_phase) : FREEAIR__COUNT(three_phase);
  for (size_t i = 0; i < n; i++)
    for (size_t j = 0; j < COLUMNS; j++)
      if (fabs(rated_w / horsepower / rows[i].hp - 1.0) <= 0.01 && rows[i].current_a[j] > 0.0 &&
          freeair__closed(voltage_v, columns[j].lower_v, columns[j].upper_v)) {
        *current_a = rows[i].current_a[j];
        return FREEAIR_OK;
      }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_nameplate_efficiency(int32_t efficiency_class, int32_t poles, double rated_w, double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (efficiency_class < FREEAIR_NAMEPLATE_IE1 || efficiency_class > FREEAIR_NAMEPLATE_IE4)
    return FREEAIR_ERR_NOT_FOUND;
  if ((poles != 2 && poles != 4 && poles != 6) || !freeair__closed(rated_w, 750.0, 200000.0))
    return FREEAIR_ERR_DOMAIN;
  const double *c = efficiencies[efficiency_class - FREEAIR_NAMEPLATE_IE1][poles / 2 - 1];
  double x = log10(rated_w / 1000.0);
  double percent = ((c[0] * x + c[1]) * x + c[2]) * x + c[3];
  *efficiency = floor(10.0 * percent + 0.5) / 1000.0;
  return FREEAIR_OK;
}

int32_t freeair_nameplate_load_from_current(double current_a, double nameplate_a, double voltage_v,
                                            double nameplate_v, double *load)
{
  if (load == NULL) return FREEAIR_ERR_NULL;
  *load = NAN;
  if (!freeair__closed(current_a, 0.0, amperes) || !freeair__closed(nameplate_a, 0.001, amperes) ||
      !freeair__closed(voltage_v, 0.0, volts) || !freeair__closed(nameplate_v, 1.0, volts))
    return FREEAIR_ERR_DOMAIN;
  *load = current_a / nameplate_a * (voltage_v / nameplate_v);
  return *load < 0.5 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

int32_t freeair_nameplate_load_from_speed(double speed_rev_s, double synchronous_rev_s, double nameplate_rev_s,
                                          double voltage_ratio, double *load)
{
  if (load == NULL) return FREEAIR_ERR_NULL;
  *load = NAN;
  if (!freeair__closed(speed_rev_s, 0.0, 1000.0) || !freeair__closed(synchronous_rev_s, 0.01, 1000.0) ||
      !freeair__closed(nameplate_rev_s, 0.01, 1000.0) || !freeair__closed(voltage_ratio, 0.1, 2.0))
    return FREEAIR_ERR_DOMAIN;
  double rated = synchronous_rev_s - nameplate_rev_s;
  if (!(rated > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *load = (synchronous_rev_s - speed_rev_s) / rated * voltage_ratio * voltage_ratio;
  if (*load < 0.0) return FREEAIR_WARN_INCONSISTENT;
  return *load > 1.5 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}
