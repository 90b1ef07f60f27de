/* SPDX-License-Identifier: MIT */
/* Lemmon and Jacobsen (2004). Its molar mass, 28.9586 g/mol, stays with it. */
#include "internal/array.h"
#include "internal/dry_air.h"

#include <math.h>

/* Sum of the residual terms, less n delta^d tau^t exp(-delta^l) as in the equation of state. */
static double residual_sum(const freeair__term *terms, size_t n, double tau, double delta)
{
  double sum = 0.0;
  for (size_t i = 0; i < n; i++) {
    double term = terms[i].n * pow(tau, terms[i].t) * pow(delta, terms[i].d);
    if (terms[i].l > 0) term *= exp(-pow(delta, terms[i].l));
    sum += term;
  }
  return sum;
}

/* Viscosity at zero density, in micropascal seconds. */
static double dilute_viscosity(double t_k)
{
  const double x = log(t_k / 103.3);
  const double log_omega = 0.431 + x * (-0.4623 + x * (0.08406 + x * (0.005341 - 0.00331 * x)));
  return 0.0266958 * sqrt(28.9586 * t_k) / (0.360 * 0.360 * exp(log_omega));
}

double freeair__dry_air_viscosity(double t_k, double rho_kg_m3)
{
  static const freeair__term terms[] = {
      {10.72, 0.2, 1, 0}, {1.122, 0.05, 4, 0}, {0.002019, 2.4, 9, 0}, {-8.876, 0.6, 1, 1}, {-0.02916, 3.6, 8, 1}};
  const double tau = FREEAIR__DRY_AIR_REDUCING_T / t_k;
  const double delta = rho_kg_m3 / FREEAIR__DRY_AIR_REDUCING_KG_M3;
  return 1e-6 * (dilute_viscosity(t_k) + residual_sum(terms, FREEAIR__COUNT(terms), tau, delta));
}

/* The enhancement about the critical point, in W/(m K), after Olchowy and Sengers. */
static double critical_conductivity(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point,
                                    double viscosity)
{
  const double boltzmann = 1.380658e-23;
  const double pi = 3.14159265358979323846;
  const double reference_t = 265.262;
  const double maxcondentherm_pa = 3.78502e6; /* with this pressure, not the critical, the published table comes out */
  const double t = isotherm->t_k;
  const double delta = point->rho_kg_m3 / FREEAIR__DRY_AIR_REDUCING_KG_M3;
  const freeair__helmholtz *r = &point->residual;

  /* reduced susceptibility, p_c rho / rho_c^2 times the slope of density by pressure, less that of the reference */
  freeair__dry_air_isotherm reference;
  double d;
  double dd;
  freeair__dry_air_isotherm_at(reference_t, &reference);
  freeair__dry_air_density_slopes(&reference, delta, &d, &dd);
  const double scale = maxcondentherm_pa * delta / (FREEAIR__DRY_AIR_REDUCING_RHO * FREEAIR__DRY_AIR_R * t);
  const double excess = scale * (1.0 / (1.0 + 2.0 * r->d + r->dd) - 1.0 / (1.0 + 2.0 * d + dd));
  if (!(excess > 0.0)) return 0.0;

  const double correlation = 0.11e-9 * pow(excess / 0.055, 0.63 / 1.2415);
  const double y = correlation / 0.31e-9;
  const double cv_over_cp = freeair__dry_air_cv(point) / freeair__dry_air_cp(point);
  const double omega = (1.0 - cv_over_cp) * atan(y) + cv_over_cp * y;
  const double omega_0 = -expm1(-1.0 / (1.0 / y + y * y / (3.0 * delta * delta)));
  return 2.0 / pi * (omega - omega_0) * point->rho_kg_m3 * freeair__dry_air_cp(point) * boltzmann * 1.01 * t /
         (6.0 * pi * correlation * viscosity);
}

double freeair__dry_air_conductivity(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point)
{
  static const freeair__term terms[] = {{8.743, 0.1, 1, 0},  {14.76, 0.0, 2, 0},  {-16.62, 0.5, 3, 2},
                                        {3.793, 2.7, 7, 2}, {-6.142, 0.3, 7, 2}, {-0.3778, 1.3, 11, 2}};
  const double tau = isotherm->tau;
  const double delta = point->rho_kg_m3 / FREEAIR__DRY_AIR_REDUCING_KG_M3;
  const double dilute = 1.308 * dilute_viscosity(isotherm->t_k) + 1.405 * pow(tau, -1.1) - 1.036 * pow(tau, -0.3);
  const double background = 1e-3 * (dilute + residual_sum(terms, FREEAIR__COUNT(terms), tau, delta));
  const double viscosity = freeair__dry_air_viscosity(isotherm->t_k, point->rho_kg_m3);
  return background + critical_conductivity(isotherm, point, viscosity);
}
