/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/dry_air.h"
#include "internal/structure.h"

static const freeair_dry_air_properties initial = FREEAIR_DRY_AIR_PROPERTIES_INIT;

static const double pressure_least = 1e-3;
static const double pressure_most = 2e9;
static const double temperature_least = 60.0;
static const double temperature_most = 2000.0;
static const double dew_pressure_most = 3.78502e6;

static void fill(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point,
                 freeair_dry_air_properties *q)
{
  const freeair__helmholtz *r = &point->residual;
  const double gas_constant_t = FREEAIR__DRY_AIR_GAS_CONSTANT * isotherm->t_k;
  /* the slope of pressure by density, over R T, and that by temperature, over R rho */
  const double by_density = 1.0 + 2.0 * r->d + r->dd;
  const double by_temperature = 1.0 + r->d - r->dt;
  const double rho = point->rho_kg_m3;
  q->t_k = isotherm->t_k;
  q->rho_kg_m3 = rho;
  q->compressibility_factor = 1.0 + r->d;
  q->p_pa = freeair__dry_air_pressure(isotherm, point);
  q->h_j_kg = freeair__dry_air_enthalpy(isotherm, point);
  q->s_j_kg_k = freeair__dry_air_entropy(point);
  q->u_j_kg = gas_constant_t * (point->ideal.t + r->t);
  q->cp_j_kg_k = freeair__dry_air_cp(point);
  q->cv_j_kg_k = freeair__dry_air_cv(point);
  q->heat_capacity_ratio = q->cp_j_kg_k / q->cv_j_kg_k;
  q->isentropic_exponent = by_density / (1.0 + r->d) * q->heat_capacity_ratio;
  q->speed_of_sound_m_s = sqrt(gas_constant_t * by_density * q->heat_capacity_ratio);
  /* (T expansion - 1)/(rho cp), with the ones of an ideal gas taken out before they cancel */
  q->joule_thomson_k_pa = -(r->d + r->dd + r->dt) / (by_density * rho * q->cp_j_kg_k);
  q->expansion_1_k = by_temperature / (by_density * isotherm->t_k);
  q->compressibility_1_pa = 1.0 / (rho * gas_constant_t * by_density);
  q->viscosity_pas = freeair__dry_air_viscosity(isotherm->t_k, rho);
  q->conductivity_w_m_k = freeair__dry_air_conductivity(isotherm, point);
  q->prandtl_number = q->viscosity_pas * q->cp_j_kg_k / q->conductivity_w_m_k;
}

static int32_t begin(freeair_dry_air_properties *properties, freeair_dry_air_properties *q)
{
  if (properties == NULL) return FREEAIR_ERR_NULL;
  *q = initial;
  return freeair__structure_write(properties, q, sizeof *q, FREEAIR_DRY_AIR_PROPERTIES_BASELINE);
}

static int32_t finish(freeair_dry_air_properties *properties, const freeair_dry_air_properties *q)
{
  int32_t status = freeair__structure_write(properties, q, sizeof *q, FREEAIR_DRY_AIR_PROPERTIES_BASELINE);
  if (status < 0) return status;
  return q->p_pa > 1e8 || q->t_k < 70.0 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

int32_t freeair_dry_air_state(double p_pa, double t_k, freeair_dry_air_properties *properties)
{
  freeair_dry_air_properties q;
  int32_t status = begin(properties, &q);
  if (status < 0) return status;
  if (!freeair__closed(p_pa, pressure_least, pressure_most) ||
      !freeair__closed(t_k, temperature_least, temperature_most))
    return FREEAIR_ERR_DOMAIN;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  double rho;
  freeair__dry_air_isotherm_at(t_k, &isotherm);
  status = freeair__dry_air_density(&isotherm, p_pa, NAN, &rho, NULL);
  if (status < 0) return status;
  freeair__dry_air_point_at(&isotherm, rho, &point);
  fill(&isotherm, &point, &q);
  q.p_pa = p_pa;
  return finish(properties, &q);
}

int32_t freeair_dry_air_state_from_density(double rho_kg_m3, double t_k, freeair_dry_air_properties *properties)
{
  freeair_dry_air_properties q;
  int32_t status = begin(properties, &q);
  if (status < 0) return status;
  if (!freeair__upto(rho_kg_m3, 0.0, 1530.0) || !freeair__closed(t_k, temperature_least, temperature_most))
    return FREEAIR_ERR_DOMAIN;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  freeair__dry_air_isotherm_at(t_k, &isotherm);
  if (!freeair__dry_air_stable(&isotherm, rho_kg_m3)) return FREEAIR_ERR_NO_SOLUTION;
  freeair__dry_air_point_at(&isotherm, rho_kg_m3, &point);
  fill(&isotherm, &point, &q);
  return finish(properties, &q);
}

int32_t freeair_dry_air_density(double p_pa, double t_k, double *rho_kg_m3)
{
  if (rho_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  *rho_kg_m3 = NAN;
  if (!freeair__closed(p_pa, pressure_least, pressure_most) ||
      !freeair__closed(t_k, temperature_least, temperature_most))
    return FREEAIR_ERR_DOMAIN;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_isotherm_at(t_k, &isotherm);
  return freeair__dry_air_density(&isotherm, p_pa, NAN, rho_kg_m3, NULL);
}

/* Enthalpy or entropy, and the heat capacity that is its slope by T or by ln T. */
typedef struct caloric {
  double p_pa;
  int entropy;
  double rho; /* the last density, where the search for the next starts */
  double value;
  double cp;
} caloric;

static int32_t caloric_at(caloric *c, double t_k)
{
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_point point;
  freeair__dry_air_isotherm_at(t_k, &isotherm);
  int32_t status = freeair__dry_air_density(&isotherm, c->p_pa, c->rho, &c->rho, NULL);
  if (status < 0) return status;
  freeair__dry_air_point_at(&isotherm, c->rho, &point);
  c->value = c->entropy ? freeair__dry_air_entropy(&point) : freeair__dry_air_enthalpy(&isotherm, &point);
  c->cp = freeair__dry_air_cp(&point);
  return FREEAIR_OK;
}

/* The coldest gas at a pressure: the dew point where there is one. */
static double coldest_gas(double p_pa)
{
  double lo = temperature_least;
  if (p_pa >= dew_pressure_most || p_pa <= freeair__dry_air_dew_pa(lo)) return lo;
  double hi = FREEAIR__DRY_AIR_REDUCING_T;
  while (hi - lo > 4e-16 * hi) {
    const double middle = 0.5 * (lo + hi);
    if (middle <= lo || middle >= hi) break;
    if (freeair__dry_air_dew_pa(middle) >= p_pa)
      hi = middle;
    else
      lo = middle;
  }
  return hi;
}

/* Newton's method in a bracket; after 40 steps bisection alone, which ends. */
static int32_t temperature(double p_pa, double target, int entropy, double start, double *t_k)
{
  caloric c = {.p_pa = p_pa, .entropy = entropy, .rho = NAN};
  double lo = coldest_gas(p_pa);
  double hi = temperature_most;
  int below = 0; /* has lo been evaluated, and lies below the target */
  int above = 0;
  double t = start > lo ? start < hi ? start : hi : lo;
  for (int i = 0; i < 100; i++) {
    int32_t status = caloric_at(&c, t);
    if (status < 0) return status;
    const double missing = target - c.value;
    double next = entropy ? t * exp(missing / c.cp) : t + missing / c.cp;
    if (fabs(next - t) <= 1e-9 * t) {
      *t_k = next > lo ? next < hi ? next : hi : lo;
      return FREEAIR_OK;
    }
    if (missing > 0.0) {
      if (t >= hi) return FREEAIR_ERR_NO_SOLUTION;
      lo = t;
      below = 1;
    } else {
      if (t <= lo) return FREEAIR_ERR_NO_SOLUTION;
      hi = t;
      above = 1;
    }
    if (!(next > lo)) next = below ? 0.5 * (lo + hi) : lo;
    if (!(next < hi)) next = above ? 0.5 * (lo + hi) : hi;
    if (i > 40 && below && above) next = 0.5 * (lo + hi);
    c.rho *= t / next;
    t = next;
  }
  *t_k = t;
  return FREEAIR_OK;
}

int32_t freeair_dry_air_temperature_from_enthalpy(double p_pa, double h_j_kg, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__closed(p_pa, pressure_least, pressure_most) || !freeair__closed(h_j_kg, -1e6, 5e6))
    return FREEAIR_ERR_DOMAIN;
  return temperature(p_pa, h_j_kg, 0, 273.15 + h_j_kg / 1010.0, t_k);
}

int32_t freeair_dry_air_temperature_from_entropy(double p_pa, double s_j_kg_k, double *t_k)
{
  if (t_k == NULL) return FREEAIR_ERR_NULL;
  *t_k = NAN;
  if (!freeair__closed(p_pa, pressure_least, pressure_most) || !freeair__closed(s_j_kg_k, -1e4, 1e4))
    return FREEAIR_ERR_DOMAIN;
  const double start =
      273.15 * exp((s_j_kg_k + FREEAIR__DRY_AIR_GAS_CONSTANT * log(p_pa / 101325.0)) / 1010.0);
  return temperature(p_pa, s_j_kg_k, 1, start, t_k);
}

int32_t freeair_dry_air_saturation(double t_k, double *dew_pa, double *bubble_pa)
{
  freeair__set_nan(dew_pa);
  freeair__set_nan(bubble_pa);
  if (dew_pa == NULL || bubble_pa == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(t_k, 59.75, FREEAIR__DRY_AIR_REDUCING_T)) return FREEAIR_ERR_DOMAIN;
  *dew_pa = freeair__dry_air_dew_pa(t_k);
  *bubble_pa = freeair__dry_air_bubble_pa(t_k);
  return FREEAIR_OK;
}
