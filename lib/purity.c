/* SPDX-License-Identifier: MIT */
#include <freeair/purity.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"

/* ISO 8573-1:2010, Table 1: numbers in a cubic metre from 0.1, 0.5 and 1 um upwards, by class from 1. */
static const double particles[5][3] = {
  {20e3, 400.0, 10.0},          {400e3, 6e3, 100.0},           {INFINITY, 90e3, 1e3},
  {INFINITY, INFINITY, 10e3}, {INFINITY, INFINITY, 100e3},
};
static const double particle_mass[] = {5e-6, 10e-6}; /* classes 6 and 7 */

static const double dew_point[] = {203.15, 233.15, 253.15, 276.15, 280.15, 283.15}; /* Table 2 */
static const double liquid[] = {0.5e-3, 5e-3, 10e-3};                               /* Table 3, classes 7 to 9 */
static const double oil[] = {0.01e-6, 0.1e-6, 1e-6, 5e-6};                          /* Table 4 */

/* Position of the first limit that holds x, or n. */
static int32_t first_that_holds(const double *limit, int32_t n, double x)
{
  int32_t i = 0;
  while (i < n && x > limit[i]) i++;
  return i;
}

static int optional_valid(double x, double low, double high)
{
  return !freeair__given(x) || freeair__closed(x, low, high);
}

int32_t freeair_purity_particle_class(double small_1_m3, double medium_1_m3, double large_1_m3, double mass_kg_m3,
                                      int32_t *class_code)
{
  if (class_code == NULL) return FREEAIR_ERR_NULL;
  *class_code = 0;
  const double counted[3] = {small_1_m3, medium_1_m3, large_1_m3};
  for (int k = 0; k < 3; k++)
    if (!optional_valid(counted[k], 0.0, 1e15)) return FREEAIR_ERR_DOMAIN;
  if (!optional_valid(mass_kg_m3, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  int any = 0;
  for (int k = 0; k < 3; k++) any |= freeair__given(counted[k]);
  for (int32_t i = 0; any && i < 5; i++) {
    int holds = 1;
    for (int k = 0; k < 3; k++)
      if (!isinf(particles[i][k])) holds &= freeair__given(counted[k]) && islessequal(counted[k], particles[i][k]);
    if (holds) {
      *class_code = i + 1;
      return FREEAIR_OK;
    }
  }
  if (freeair__given(mass_kg_m3)) {
    const int32_t i = first_that_holds(particle_mass, 2, mass_kg_m3);
    *class_code = i < 2 ? 6 + i : FREEAIR_PURITY_CLASS_X;
    return FREEAIR_OK;
  }
  return FREEAIR_ERR_DATA;
}

int32_t freeair_purity_particle_limits(int32_t class_code, double *small_1_m3, double *medium_1_m3,
                                       double *large_1_m3, double *mass_kg_m3)
{
  freeair__set_nan(small_1_m3);
  freeair__set_nan(medium_1_m3);
  freeair__set_nan(large_1_m3);
  freeair__set_nan(mass_kg_m3);
  if (small_1_m3 == NULL || medium_1_m3 == NULL || large_1_m3 == NULL || mass_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  if (class_code < 1 || class_code > 7) return FREEAIR_ERR_DOMAIN;
  const int counted = class_code <= 5;
  *small_1_m3 = counted ? particles[class_code - 1][0] : INFINITY;
  *medium_1_m3 = counted ? particles[class_code - 1][1] : INFINITY;
  *large_1_m3 = counted ? particles[class_code - 1][2] : INFINITY;
  *mass_kg_m3 = counted ? INFINITY : particle_mass[class_code - 6];
  return FREEAIR_OK;
}

int32_t freeair_purity_water_class(double dew_point_k, double liquid_kg_m3, int32_t *class_code)
{
  if (class_code == NULL) return FREEAIR_ERR_NULL;
  *class_code = 0;
  if (!optional_valid(dew_point_k, 150.0, 400.0) || !optional_valid(liquid_kg_m3, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  const int wet = freeair__given(liquid_kg_m3) && liquid_kg_m3 > 0.0;
  if (freeair__given(dew_point_k) && !wet) {
    const int32_t i = first_that_holds(dew_point, (int32_t)FREEAIR__COUNT(dew_point), dew_point_k);
    if (i < (int32_t)FREEAIR__COUNT(dew_point)) {
      *class_code = i + 1;
      return FREEAIR_OK;
    }
  }
  if (!freeair__given(liquid_kg_m3)) return FREEAIR_ERR_DATA;
  const int32_t i = first_that_holds(liquid, (int32_t)FREEAIR__COUNT(liquid), liquid_kg_m3);
  *class_code = i < (int32_t)FREEAIR__COUNT(liquid) ? 7 + i : FREEAIR_PURITY_CLASS_X;
  return FREEAIR_OK;
}

int32_t freeair_purity_water_limits(int32_t class_code, double *dew_point_k, double *liquid_kg_m3)
{
  freeair__set_nan(dew_point_k);
  freeair__set_nan(liquid_kg_m3);
  if (dew_point_k == NULL || liquid_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  if (class_code < 1 || class_code > 9) return FREEAIR_ERR_DOMAIN;
  *dew_point_k = class_code <= 6 ? dew_point[class_code - 1] : INFINITY;
  *liquid_kg_m3 = class_code <= 6 ? 0.0 : liquid[class_code - 7];
  return FREEAIR_OK;
}

int32_t freeair_purity_oil_class(double oil_kg_m3, int32_t *class_code)
{
  if (class_code == NULL) return FREEAIR_ERR_NULL;
  *class_code = 0;
  if (!freeair__closed(oil_kg_m3, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  const int32_t i = first_that_holds(oil, (int32_t)FREEAIR__COUNT(oil), oil_kg_m3);
  *class_code = i < (int32_t)FREEAIR__COUNT(oil) ? i + 1 : FREEAIR_PURITY_CLASS_X;
  return FREEAIR_OK;
}

int32_t freeair_purity_oil_limit(int32_t class_code, double *oil_kg_m3)
{
  freeair__set_nan(oil_kg_m3);
  if (oil_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  if (class_code < 1 || class_code > 4) return FREEAIR_ERR_DOMAIN;
  *oil_kg_m3 = oil[class_code - 1];
  return FREEAIR_OK;
}

int32_t freeair_purity_concentration_at_reference(double line, double p_pa, double t_k, double *reference)
{
  freeair__set_nan(reference);
  if (reference == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(line, 0.0, 1e15) || !freeair__closed(p_pa, 1000.0, 1e8) || !freeair__closed(t_k, 50.0, 2000.0))
    return FREEAIR_ERR_DOMAIN;
  *reference = line * (1e5 / p_pa) * (t_k / 293.15);
  return FREEAIR_OK;
}
