/* SPDX-License-Identifier: MIT */
#include <freeair/nozzle.h>
#include <freeair/status.h>

#include "internal/check.h"

static const double pi = 3.14159265358979323846;

static const struct {
  double lowest;
  double usual;
  double highest;
} openings[] = {
  {0.563, 0.65, 0.788}, /* sharp-edged */
  {0.97, 0.97, 0.99},   /* well-rounded */
  {0.81, 0.825, 0.84},  /* short tube */
  {0.92, 0.925, 0.93},  /* rounded tube */
  {0.90, 0.945, 0.99},  /* cone */
};

static const struct {
  double a;
  double b;
  double n;
  double lowest_reynolds;
  double highest_reynolds;
} meters[] = {
  {0.9985, 3.412, 0.5, 2.1e4, 1.4e6},  /* toroidal, accurate */
  {0.9959, 2.720, 0.5, 2.1e4, 3.2e7},  /* toroidal, normal */
  {0.9976, 0.1388, 0.2, 3.5e5, 1.1e7}, /* cylindrical */
};

int32_t freeair_nozzle_discharge_coefficient(int32_t opening, double *lowest, double *usual, double *highest)
{
  freeair__set_nan(lowest);
  freeair__set_nan(usual);
  freeair__set_nan(highest);
  if (lowest == NULL || usual == NULL || highest == NULL) return FREEAIR_ERR_NULL;
  if (opening < FREEAIR_NOZZLE_SHARP_EDGED || opening > FREEAIR_NOZZLE_CONE) return FREEAIR_ERR_NOT_FOUND;
  *lowest = openings[opening - 1].lowest;
  *usual = openings[opening - 1].usual;
  *highest = openings[opening - 1].highest;
  return FREEAIR_OK;
}

int32_t freeair_nozzle_sharp_edged_coefficient(double pressure_ratio, double *coefficient)
{
  if (coefficient == NULL) return FREEAIR_ERR_NULL;
  *coefficient = NAN;
  if (!freeair__closed(pressure_ratio, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
  double r = pressure_ratio;
  *coefficient = 0.8414 + r * (-0.1002 + r * (0.8415 + r * (-3.9 + r * (4.6001 + r * -1.6827))));
  return FREEAIR_OK;
}

int32_t freeair_nozzle_trade_flow(double diameter_m, double coefficient, double p1_pa, double t1_k, double p_atm_pa,
                                  double *q_m3_s)
{
  if (q_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q_m3_s = NAN;
  if (!freeair__upto(diameter_m, 0.0, 1.0) || !freeair__upto(coefficient, 0.0, 1.0) ||
      !freeair__upto(p1_pa, 0.0, 1e8) || !freeair__closed(t1_k, 1.0, 5000.0) ||
      !freeair__upto(p_atm_pa, 0.0, 120000.0) || p1_pa < 2.0 * p_atm_pa)
    return FREEAIR_ERR_DOMAIN;
  /* The formula is in inches, pounds-force a square inch and degrees Rankine. */
  const double inch = 0.0254;
  const double psi = 4.4482216152605 / (inch * inch);
  const double cubic_foot = 0.3048 * 0.3048 * 0.3048;
  double area = 0.25 * pi * (diameter_m / inch) * (diameter_m / inch);
  *q_m3_s = 0.5303 * coefficient * area * (p1_pa / psi) / sqrt(1.8 * t1_k) / 0.07494 * cubic_foot;
  return FREEAIR_OK;
}

/* meter is valid */
static double meter_coefficient(int32_t meter, double reynolds)
{
  return meters[meter - 1].a - meters[meter - 1].b * pow(reynolds, -meters[meter - 1].n);
}

static int32_t meter_status(int32_t meter, double reynolds)
{
  int fitted = freeair__closed(reynolds, meters[meter - 1].lowest_reynolds, meters[meter - 1].highest_reynolds);
  return fitted ? FREEAIR_OK : FREEAIR_WARN_EXTRAPOLATED;
}

static int meter_known(int32_t meter)
{
  return meter >= FREEAIR_NOZZLE_TOROIDAL_ACCURATE && meter <= FREEAIR_NOZZLE_CYLINDRICAL;
}

int32_t freeair_nozzle_meter_coefficient(int32_t meter, double reynolds, double *coefficient)
{
  if (coefficient == NULL) return FREEAIR_ERR_NULL;
  *coefficient = NAN;
  if (!freeair__closed(reynolds, 1000.0, 1e9)) return FREEAIR_ERR_DOMAIN;
  if (!meter_known(meter)) return FREEAIR_ERR_NOT_FOUND;
  *coefficient = meter_coefficient(meter, reynolds);
  return meter_status(meter, reynolds);
}

int32_t freeair_nozzle_meter_mass_flow(int32_t meter, double diameter_m, double p0_pa, double t0_k,
                                       double critical_coefficient, double r_j_kg_k, double viscosity_pas,
                                       double *mass_kg_s, double *reynolds, double *coefficient)
{
  freeair__set_nan(mass_kg_s);
  freeair__set_nan(reynolds);
  freeair__set_nan(coefficient);
  if (mass_kg_s == NULL || reynolds == NULL || coefficient == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(diameter_m, 1e-5, 1.0) || !freeair__closed(p0_pa, 100.0, 1e8) ||
      !freeair__closed(t0_k, 50.0, 2000.0) || !freeair__closed(critical_coefficient, 0.5, 1.0) ||
      !freeair__closed(r_j_kg_k, 10.0, 10000.0) || !freeair__closed(viscosity_pas, 1e-6, 1e-3))
    return FREEAIR_ERR_DOMAIN;
  if (!meter_known(meter)) return FREEAIR_ERR_NOT_FOUND;
  double ideal = 0.25 * pi * diameter_m * diameter_m * critical_coefficient * p0_pa / sqrt(r_j_kg_k * t0_k);
  double ideal_reynolds = 4.0 * ideal / (pi * diameter_m * viscosity_pas);
  double re = ideal_reynolds;
  for (int step = 0; step < 50; step++) {
    if (!freeair__closed(re, 1000.0, 1e9)) return FREEAIR_ERR_NO_SOLUTION;
    double c = meter_coefficient(meter, re);
    double next = c * ideal_reynolds;
    if (fabs(next - re) <= 1e-14 * re) {
      *coefficient = c;
      *reynolds = next;
      *mass_kg_s = c * ideal;
      return meter_status(meter, next);
    }
    re = next;
  }
  return FREEAIR_ERR_NO_CONVERGENCE;
}
