/* SPDX-License-Identifier: MIT */
#include <freeair/belt_section.h>
#include <freeair/status.h>

#include "internal/check.h"

#include <stdint.h>

static const double standard_gravity = 9.81; /* m/s2, of the table */

/* Khurmi and Gupta, A Textbook of Machine Design, Table 20.1 (IS 2494:1974) */
static const struct {
  int32_t section;
  double width_mm;
  double height_mm;
  double weight_n_m;
  double pulley_mm;
  double least_kw;
  double most_kw;
} sections[] = {
    {FREEAIR_BELT_SECTION_A, 13.0, 8.0, 1.06, 75.0, 0.7, 3.5},
    {FREEAIR_BELT_SECTION_B, 17.0, 11.0, 1.89, 125.0, 2.0, 15.0},
    {FREEAIR_BELT_SECTION_C, 22.0, 14.0, 3.43, 200.0, 7.5, 75.0},
    {FREEAIR_BELT_SECTION_D, 32.0, 19.0, 5.96, 355.0, 20.0, 150.0},
};

enum { COUNT = sizeof sections / sizeof sections[0] };

int32_t freeair_belt_section_data(int32_t section, double *width_m, double *height_m, double *mass_kg_m,
                                  double *pulley_m, double *least_w, double *most_w)
{
  freeair__set_nan(width_m);
  freeair__set_nan(height_m);
  freeair__set_nan(mass_kg_m);
  freeair__set_nan(pulley_m);
  freeair__set_nan(least_w);
  freeair__set_nan(most_w);
  if (width_m == NULL || height_m == NULL || mass_kg_m == NULL || pulley_m == NULL || least_w == NULL ||
      most_w == NULL)
    return FREEAIR_ERR_NULL;
  for (int i = 0; i < COUNT; i++)
    if (sections[i].section == section) {
      *width_m = sections[i].width_mm / 1000.0;
      *height_m = sections[i].height_mm / 1000.0;
      *mass_kg_m = sections[i].weight_n_m / standard_gravity;
      *pulley_m = sections[i].pulley_mm / 1000.0;
      *least_w = sections[i].least_kw * 1000.0;
      *most_w = sections[i].most_kw * 1000.0;
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_belt_section_from_width(double width_m, int32_t *section)
{
  if (section == NULL) return FREEAIR_ERR_NULL;
  *section = 0;
  if (!freeair__closed(width_m, 0.001, 0.1)) return FREEAIR_ERR_DOMAIN;
  for (int i = 0; i < COUNT; i++)
    if (fabs(1000.0 * width_m - sections[i].width_mm) <= 0.1 * sections[i].width_mm) {
      *section = sections[i].section;
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}
