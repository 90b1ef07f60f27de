/* SPDX-License-Identifier: MIT */
#include <freeair/pipe.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/pipe.h"

typedef struct size {
  int32_t dn;
  double outer_m;
  double wall_m;
} size;

#define INCH 0.0254
static const size schedule_40[] = {
  {6, 0.405 * INCH, 0.068 * INCH},   {8, 0.540 * INCH, 0.088 * INCH},   {10, 0.675 * INCH, 0.091 * INCH},
  {15, 0.840 * INCH, 0.109 * INCH},  {20, 1.050 * INCH, 0.113 * INCH},  {25, 1.315 * INCH, 0.133 * INCH},
  {32, 1.660 * INCH, 0.140 * INCH},  {40, 1.900 * INCH, 0.145 * INCH},  {50, 2.375 * INCH, 0.154 * INCH},
  {65, 2.875 * INCH, 0.203 * INCH},  {80, 3.500 * INCH, 0.216 * INCH},  {100, 4.500 * INCH, 0.237 * INCH},
  {125, 5.563 * INCH, 0.258 * INCH}, {150, 6.625 * INCH, 0.280 * INCH}, {200, 8.625 * INCH, 0.322 * INCH},
};
static const size schedule_80[] = {
  {6, 0.405 * INCH, 0.095 * INCH},   {8, 0.540 * INCH, 0.119 * INCH},   {10, 0.675 * INCH, 0.126 * INCH},
  {15, 0.840 * INCH, 0.147 * INCH},  {20, 1.050 * INCH, 0.154 * INCH},  {25, 1.315 * INCH, 0.179 * INCH},
  {32, 1.660 * INCH, 0.191 * INCH},  {40, 1.900 * INCH, 0.200 * INCH},  {50, 2.375 * INCH, 0.218 * INCH},
  {65, 2.875 * INCH, 0.276 * INCH},  {80, 3.500 * INCH, 0.300 * INCH},  {100, 4.500 * INCH, 0.337 * INCH},
  {125, 5.563 * INCH, 0.375 * INCH}, {150, 6.625 * INCH, 0.432 * INCH}, {200, 8.625 * INCH, 0.500 * INCH},
};
#undef INCH
static const size en_medium[] = {
  {6, 0.0102, 0.0020},  {8, 0.0135, 0.0023},   {10, 0.0172, 0.0023},  {15, 0.0213, 0.0026},  {20, 0.0269, 0.0026},
  {25, 0.0337, 0.0032}, {32, 0.0424, 0.0032},  {40, 0.0483, 0.0032},  {50, 0.0603, 0.0036},  {65, 0.0761, 0.0036},
  {80, 0.0889, 0.0040}, {100, 0.1143, 0.0045}, {125, 0.1397, 0.0050}, {150, 0.1651, 0.0050},
};

static const size *series_of(int32_t series, size_t *n)
{
  switch (series) {
  case FREEAIR_PIPE_SCHEDULE_40: *n = FREEAIR__COUNT(schedule_40); return schedule_40;
  case FREEAIR_PIPE_SCHEDULE_80: *n = FREEAIR__COUNT(schedule_80); return schedule_80;
  case FREEAIR_PIPE_EN_MEDIUM: *n = FREEAIR__COUNT(en_medium); return en_medium;
  default: *n = 0; return NULL;
  }
}

static int state_valid(double p_pa, double t_k, double r_j_kg_k)
{
  return freeair__closed(p_pa, 1.0, 1e8) && freeair__closed(t_k, 50.0, 2000.0) &&
         freeair__closed(r_j_kg_k, 10.0, 10000.0);
}

/* Root of 1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re sqrt(f))). */
static double turbulent(double reynolds, double roughness)
{
  const double per_log10 = 0.86858896380650365530; /* 2/ln 10 */
  const double a = roughness / 3.7;
  const double b = 2.51 / reynolds;
  double x = -0.9 * per_log10 * log(pow(a, 1.11) + 6.9 / reynolds); /* Haaland's formula for 1/sqrt(f) */
  for (int step = 0; step < 50; step++) {
    const double inside = a + b * x;
    const double change = (x + per_log10 * log(inside)) / (1.0 + per_log10 * b / inside);
    x -= change;
    if (fabs(change) <= 1e-15 * x) break;
  }
  return 1.0 / (x * x);
}

double freeair__pipe_factor(double reynolds, double roughness)
{
  const double low = 2300.0;
  const double high = 4000.0;
  if (reynolds <= low) return 64.0 / reynolds;
  if (reynolds >= high) return turbulent(reynolds, roughness);
  const double laminar = 64.0 / low;
  return laminar + (reynolds - low) / (high - low) * (turbulent(high, roughness) - laminar);
}

int32_t freeair_pipe_reynolds(double mass_kg_s, double diameter_m, double viscosity_pas, double *reynolds)
{
  freeair__set_nan(reynolds);
  if (reynolds == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(diameter_m, 1e-6, 10.0) ||
      !freeair__closed(viscosity_pas, 1e-8, 1e3))
    return FREEAIR_ERR_DOMAIN;
  *reynolds = freeair__pipe_flux(mass_kg_s, diameter_m) * diameter_m / viscosity_pas;
  return FREEAIR_OK;
}

int32_t freeair_pipe_velocity(double mass_kg_s, double diameter_m, double p_pa, double t_k, double r_j_kg_k,
                              double *velocity_m_s)
{
  freeair__set_nan(velocity_m_s);
  if (velocity_m_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(diameter_m, 1e-6, 10.0) ||
      !state_valid(p_pa, t_k, r_j_kg_k))
    return FREEAIR_ERR_DOMAIN;
  *velocity_m_s = freeair__pipe_flux(mass_kg_s, diameter_m) * r_j_kg_k * t_k / p_pa;
  return FREEAIR_OK;
}

int32_t freeair_pipe_diameter_from_velocity(double mass_kg_s, double velocity_m_s, double p_pa, double t_k,
                                            double r_j_kg_k, double *diameter_m)
{
  freeair__set_nan(diameter_m);
  if (diameter_m == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(velocity_m_s, 0.001, 1000.0) ||
      !state_valid(p_pa, t_k, r_j_kg_k))
    return FREEAIR_ERR_DOMAIN;
  *diameter_m = sqrt(mass_kg_s * r_j_kg_k * t_k / (0.78539816339744830962 * velocity_m_s * p_pa));
  return FREEAIR_OK;
}

int32_t freeair_pipe_friction_factor(double reynolds, double roughness, double *factor)
{
  freeair__set_nan(factor);
  if (factor == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(reynolds, 1e-6, 1e12) || !freeair__closed(roughness, 0.0, 0.1)) return FREEAIR_ERR_DOMAIN;
  *factor = freeair__pipe_factor(reynolds, roughness);
  return freeair__pipe_in_transition(reynolds) ? FREEAIR_WARN_TRANSITION : FREEAIR_OK;
}

int32_t freeair_pipe_pressure_drop(double mass_kg_s, double diameter_m, double length_m, double factor,
                                   double loss_coefficient, double p_pa, double t_k, double r_j_kg_k, double *drop_pa)
{
  freeair__set_nan(drop_pa);
  if (drop_pa == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(diameter_m, 1e-6, 10.0) ||
      !freeair__closed(length_m, 0.0, 1e6) || !freeair__closed(factor, 0.0, 100.0) ||
      !freeair__closed(loss_coefficient, 0.0, 1e6) || !state_valid(p_pa, t_k, r_j_kg_k))
    return FREEAIR_ERR_DOMAIN;
  const double flux = freeair__pipe_flux(mass_kg_s, diameter_m);
  *drop_pa = (factor * length_m / diameter_m + loss_coefficient) * 0.5 * flux * flux * r_j_kg_k * t_k / p_pa;
  return *drop_pa > 0.1 * p_pa ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}

int32_t freeair_pipe_drop_harris(double q_m3_s, double diameter_m, double length_m, double p_pa, double *drop_pa)
{
  const double inch = 0.0254;
  const double foot = 0.3048;
  const double psi = 6894.757293168;
  freeair__set_nan(drop_pa);
  if (drop_pa == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(q_m3_s, 0.0, 1e4) || !freeair__closed(diameter_m, 0.001, 1.0) ||
      !freeair__closed(length_m, 0.0, 1e6) || !freeair__closed(p_pa, 1e4, 1e8))
    return FREEAIR_ERR_DOMAIN;
  const double q = q_m3_s * 60.0 / (foot * foot * foot);
  const double ratio = p_pa / (14.7 * psi);
  *drop_pa = 0.1025 * (length_m / foot) * q * q / (3600.0 * ratio * pow(diameter_m / inch, 5.31)) * psi;
  return *drop_pa > 0.1 * p_pa ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}

int32_t freeair_pipe_roughness(int32_t material, double *roughness_m)
{
  freeair__set_nan(roughness_m);
  if (roughness_m == NULL) return FREEAIR_ERR_NULL;
  switch (material) {
  case FREEAIR_PIPE_DRAWN: *roughness_m = 1.5e-6; return FREEAIR_OK;
  case FREEAIR_PIPE_STEEL: *roughness_m = 45e-6; return FREEAIR_OK;
  case FREEAIR_PIPE_GALVANIZED: *roughness_m = 150e-6; return FREEAIR_OK;
  case FREEAIR_PIPE_CAST_IRON: *roughness_m = 260e-6; return FREEAIR_OK;
  case FREEAIR_PIPE_SMOOTH: *roughness_m = 0.0; return FREEAIR_OK;
  default: return FREEAIR_ERR_DOMAIN;
  }
}

int32_t freeair_pipe_size(int32_t series, int32_t dn, double *outer_m, double *wall_m, double *inner_m)
{
  freeair__set_nan(outer_m);
  freeair__set_nan(wall_m);
  freeair__set_nan(inner_m);
  if (outer_m == NULL || wall_m == NULL || inner_m == NULL) return FREEAIR_ERR_NULL;
  size_t n;
  const size *list = series_of(series, &n);
  if (list == NULL || dn < 6 || dn > 200) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++) {
    if (list[i].dn != dn) continue;
    *outer_m = list[i].outer_m;
    *wall_m = list[i].wall_m;
    *inner_m = list[i].outer_m - 2.0 * list[i].wall_m;
    return FREEAIR_OK;
  }
  return FREEAIR_ERR_NOT_FOUND;
}

int32_t freeair_pipe_size_from_diameter(int32_t series, double diameter_m, int32_t *dn, double *inner_m)
{
  if (dn != NULL) *dn = 0;
  freeair__set_nan(inner_m);
  if (dn == NULL || inner_m == NULL) return FREEAIR_ERR_NULL;
  size_t n;
  const size *list = series_of(series, &n);
  if (list == NULL || !freeair__closed(diameter_m, 0.0, 10.0)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++) {
    const double inner = list[i].outer_m - 2.0 * list[i].wall_m;
    if (inner < diameter_m) continue;
    *dn = list[i].dn;
    *inner_m = inner;
    return FREEAIR_OK;
  }
  return FREEAIR_ERR_NOT_FOUND;
}
