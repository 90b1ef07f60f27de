/* SPDX-License-Identifier: MIT */
#include <freeair/moist_air.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/humid_air.h"
#include "internal/structure.h"

static const freeair_moist_air_properties initial = FREEAIR_MOIST_AIR_PROPERTIES_INIT;

/* Whether the air can hold the vapour, give or take a thousandth. */
static int holds(double p_pa, double t_k, double mole_fraction)
{
  return mole_fraction * p_pa <= freeair__saturation_over_pa(t_k, 0) ||
         mole_fraction <= 1.001 * freeair__humid_saturation(t_k, p_pa, 0, 1);
}

/* The state at a pressure: checks, then the search for the density. */
static int32_t at_pressure(double p_pa, double t_k, double humidity_ratio, freeair__humid_isotherm *isotherm,
                           freeair__humid_point *point)
{
  if (!freeair__humid_in_range(p_pa, t_k) || !freeair__closed(humidity_ratio, 0.0, 10.0)) return FREEAIR_ERR_DOMAIN;
  if (!holds(p_pa, t_k, freeair__humid_fraction_of_ratio(humidity_ratio))) return FREEAIR_ERR_NO_SOLUTION;
  freeair__humid_isotherm_at(t_k, humidity_ratio, isotherm);
  freeair__humid_point_at(isotherm, freeair__humid_density(isotherm, p_pa), point);
  return freeair__humid_status(p_pa, t_k);
}

static void fill(const freeair__humid_isotherm *isotherm, const freeair__humid_point *point, double humidity_ratio,
                 freeair_moist_air_properties *q)
{
  const double dry = isotherm->dry_share;
  const double gas_constant = dry * FREEAIR__DRY_AIR_GAS_CONSTANT + (1.0 - dry) * FREEAIR__WATER_GAS_CONSTANT;
  const double rho = point->rho_kg_m3;
  q->p_pa = point->p_pa;
  q->t_k = isotherm->t_k;
  q->humidity_ratio = humidity_ratio;
  q->mole_fraction = freeair__humid_fraction_of_ratio(humidity_ratio);
  q->rho_kg_m3 = rho;
  q->compressibility_factor = point->p_pa / (rho * gas_constant * isotherm->t_k);
  q->h_j_kg = point->h_j_kg;
  q->s_j_kg_k = point->s_j_kg_k;
  q->u_j_kg = point->h_j_kg - point->p_pa / rho;
  q->cp_j_kg_k = point->cp_j_kg_k;
  q->cv_j_kg_k = point->cv_j_kg_k;
  q->heat_capacity_ratio = point->cp_j_kg_k / point->cv_j_kg_k;
  q->speed_of_sound_m_s = sqrt(q->heat_capacity_ratio * point->pressure_by_density);
  q->isentropic_exponent = rho / point->p_pa * q->heat_capacity_ratio * point->pressure_by_density;
  q->joule_thomson_k_pa = point->throttling / (rho * rho * point->pressure_by_density * point->cp_j_kg_k);
  q->h_dry_j_kg = point->h_j_kg * (1.0 + humidity_ratio);
  q->v_dry_m3_kg = (1.0 + humidity_ratio) / rho;
}

static int32_t begin(freeair_moist_air_properties *properties, freeair_moist_air_properties *q)
{
  if (properties == NULL) return FREEAIR_ERR_NULL;
  *q = initial;
  return freeair__structure_write(properties, q, sizeof *q, FREEAIR_MOIST_AIR_PROPERTIES_BASELINE);
}

int32_t freeair_moist_air_state(double p_pa, double t_k, double humidity_ratio,
                                freeair_moist_air_properties *properties)
{
  freeair_moist_air_properties q;
  int32_t status = begin(properties, &q);
  if (status < 0) return status;
  freeair__humid_isotherm isotherm;
  freeair__humid_point point;
  status = at_pressure(p_pa, t_k, humidity_ratio, &isotherm, &point);
  if (status < 0) return status;
  fill(&isotherm, &point, humidity_ratio, &q);
  q.p_pa = p_pa;
  freeair__structure_write(properties, &q, sizeof q, FREEAIR_MOIST_AIR_PROPERTIES_BASELINE);
  return status;
}

int32_t freeair_moist_air_state_from_density(double rho_kg_m3, double t_k, double humidity_ratio,
                                             freeair_moist_air_properties *properties)
{
  freeair_moist_air_properties q;
  int32_t status = begin(properties, &q);
  if (status < 0) return status;
  if (!freeair__upto(rho_kg_m3, 0.0, 200.0) || !freeair__humid_in_range(1e5, t_k) ||
      !freeair__closed(humidity_ratio, 0.0, 10.0))
    return FREEAIR_ERR_DOMAIN;
  freeair__humid_isotherm isotherm;
  freeair__humid_point point;
  freeair__humid_isotherm_at(t_k, humidity_ratio, &isotherm);
  freeair__humid_point_at(&isotherm, rho_kg_m3, &point);
  if (!(point.p_pa > 0.0 && point.pressure_by_density > 0.0 && point.cv_j_kg_k > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  fill(&isotherm, &point, humidity_ratio, &q);
  freeair__structure_write(properties, &q, sizeof q, FREEAIR_MOIST_AIR_PROPERTIES_BASELINE);
  return freeair__humid_status(point.p_pa, t_k);
}

/* Density and humidity ratio of a relative humidity. */
static int32_t at_relative(double p_pa, double t_k, double relative_humidity, double *rho_kg_m3,
                           double *humidity_ratio)
{
  if (!freeair__humid_in_range(p_pa, t_k) || !freeair__closed(relative_humidity, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  const double x =
      relative_humidity > 0.0 ? relative_humidity * freeair__humid_saturation(t_k, p_pa, 0, 1) : 0.0;
  *humidity_ratio = x < 1.0 ? freeair__humid_ratio_of_fraction(x) : INFINITY;
  if (!(*humidity_ratio <= 10.0)) return FREEAIR_ERR_NO_SOLUTION;
  freeair__humid_isotherm isotherm;
  freeair__humid_isotherm_at(t_k, *humidity_ratio, &isotherm);
  *rho_kg_m3 = freeair__humid_density(&isotherm, p_pa);
  return freeair__humid_status(p_pa, t_k);
}

int32_t freeair_moist_air_density(double p_pa, double t_k, double relative_humidity, double *rho_kg_m3)
{
  if (rho_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  *rho_kg_m3 = NAN;
  double humidity_ratio;
  return at_relative(p_pa, t_k, relative_humidity, rho_kg_m3, &humidity_ratio);
}

int32_t freeair_moist_air_flow_convert(double q1_m3_s, double p1_pa, double t1_k, double relative_humidity1,
                                       double p2_pa, double t2_k, double relative_humidity2, double *q2_m3_s)
{
  if (q2_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q2_m3_s = NAN;
  if (!freeair__closed(q1_m3_s, 0.0, 1e6)) return FREEAIR_ERR_DOMAIN;
  double rho1;
  double rho2;
  double w1;
  double w2;
  const int32_t first = at_relative(p1_pa, t1_k, relative_humidity1, &rho1, &w1);
  const int32_t second = at_relative(p2_pa, t2_k, relative_humidity2, &rho2, &w2);
  if (first == FREEAIR_ERR_DOMAIN || second == FREEAIR_ERR_DOMAIN) return FREEAIR_ERR_DOMAIN;
  if (first < 0) return first;
  if (second < 0) return second;
  *q2_m3_s = q1_m3_s * (rho1 / (1.0 + w1)) / (rho2 / (1.0 + w2));
  return second != FREEAIR_OK ? second : first;
}

int32_t freeair_moist_air_density_cipm(double p_pa, double t_k, double relative_humidity, double carbon_dioxide,
                                       double *rho_kg_m3)
{
  if (rho_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  *rho_kg_m3 = NAN;
  const double carbon = freeair__or(carbon_dioxide, 0.0004);
  if (!freeair__closed(p_pa, 60000.0, 110000.0) || !freeair__closed(t_k, 288.15, 300.15) ||
      !freeair__closed(relative_humidity, 0.0, 1.0) || !freeair__closed(carbon, 0.0, 0.01))
    return FREEAIR_ERR_DOMAIN;
  const double t = t_k - 273.15;
  const double dry_molar_mass = 0.02896546 + 0.012011 * (carbon - 0.0004);
  const double water_molar_mass = 0.01801528;
  const double saturation = exp(1.2378847e-5 * t_k * t_k - 1.9121316e-2 * t_k + 33.93711047 - 6343.1645 / t_k);
  const double factor = 1.00062 + 3.14e-8 * p_pa + 5.6e-7 * t * t;
  const double x = relative_humidity * factor * saturation / p_pa;
  const double z = 1.0 -
                   p_pa / t_k *
                       (1.58123e-6 + t * (-2.9331e-8 + 1.1043e-10 * t) + (5.707e-6 - 2.051e-8 * t) * x +
                        (1.9898e-4 - 2.376e-6 * t) * x * x) +
                   p_pa * p_pa / (t_k * t_k) * (1.83e-11 - 0.765e-8 * x * x);
  *rho_kg_m3 = p_pa * dry_molar_mass / (z * 8.314472 * t_k) * (1.0 - x * (1.0 - water_molar_mass / dry_molar_mass));
  return FREEAIR_OK;
}

int32_t freeair_moist_air_enthalpy(double p_pa, double t_k, double humidity_ratio, double *h_dry_j_kg)
{
  if (h_dry_j_kg == NULL) return FREEAIR_ERR_NULL;
  *h_dry_j_kg = NAN;
  freeair__humid_isotherm isotherm;
  freeair__humid_point point;
  int32_t status = at_pressure(p_pa, t_k, humidity_ratio, &isotherm, &point);
  if (status >= 0) *h_dry_j_kg = point.h_j_kg * (1.0 + humidity_ratio);
  return status;
}

int32_t freeair_moist_air_volume(double p_pa, double t_k, double humidity_ratio, double *v_dry_m3_kg)
{
  if (v_dry_m3_kg == NULL) return FREEAIR_ERR_NULL;
  *v_dry_m3_kg = NAN;
  freeair__humid_isotherm isotherm;
  freeair__humid_point point;
  int32_t status = at_pressure(p_pa, t_k, humidity_ratio, &isotherm, &point);
  if (status >= 0) *v_dry_m3_kg = (1.0 + humidity_ratio) / point.rho_kg_m3;
  return status;
}

int32_t freeair_moist_air_gas_constant(double humidity_ratio, double *r_j_kg_k)
{
  const double molar_gas_constant = 8.314462618; /* CODATA 2018 */
  if (r_j_kg_k == NULL) return FREEAIR_ERR_NULL;
  *r_j_kg_k = NAN;
  if (!freeair__closed(humidity_ratio, 0.0, 10.0)) return FREEAIR_ERR_DOMAIN;
  *r_j_kg_k = molar_gas_constant * (1.0 / FREEAIR__DRY_AIR_MOLAR_MASS + humidity_ratio / FREEAIR__WATER_MOLAR_MASS) /
              (1.0 + humidity_ratio);
  return FREEAIR_OK;
}
