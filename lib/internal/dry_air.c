/* SPDX-License-Identifier: MIT */
#include "internal/dry_air.h"

#include <freeair/status.h>

#include "internal/check.h"

static const freeair__term terms[FREEAIR__DRY_AIR_TERMS] = {
    {0.118160747229, 0.0, 1, 0},     {0.713116392079, 0.33, 1, 0},    {-1.61824192067, 1.01, 1, 0},
    {0.0714140178971, 0.0, 2, 0},    {-0.0865421396646, 0.0, 3, 0},   {0.134211176704, 0.15, 3, 0},
    {0.0112626704218, 0.0, 4, 0},    {-0.0420533228842, 0.2, 4, 0},   {0.0349008431982, 0.35, 4, 0},
    {0.000164957183186, 1.35, 6, 0}, {-0.101365037912, 1.6, 1, 1},    {-0.17381369097, 0.8, 3, 1},
    {-0.0472103183731, 0.95, 5, 1},  {-0.0122523554253, 1.25, 6, 1},  {-0.146629609713, 3.6, 1, 2},
    {-0.0316055879821, 6.0, 3, 2},   {0.000233594806142, 3.25, 11, 2}, {0.0148287891978, 3.5, 1, 3},
    {-0.00938782884667, 15.0, 3, 3}};

void freeair__dry_air_isotherm_at(double t_k, freeair__dry_air_isotherm *isotherm)
{
  isotherm->t_k = t_k;
  isotherm->tau = FREEAIR__DRY_AIR_REDUCING_T / t_k;
  freeair__helmholtz_isotherm(terms, FREEAIR__DRY_AIR_TERMS, isotherm->tau, isotherm->amplitude);
}

void freeair__dry_air_density_slopes(const freeair__dry_air_isotherm *isotherm, double delta, double *d, double *dd)
{
  freeair__helmholtz_density(terms, FREEAIR__DRY_AIR_TERMS, isotherm->amplitude, delta, d, dd);
}

void freeair__dry_air_virials(double t_k, double *b_m3_mol, double *c_m6_mol2)
{
  const double molar_volume = 1.0 / FREEAIR__DRY_AIR_REDUCING_RHO;
  freeair__dry_air_isotherm isotherm;
  freeair__dry_air_isotherm_at(t_k, &isotherm);
  freeair__helmholtz_virials(terms, FREEAIR__DRY_AIR_TERMS, isotherm.amplitude, b_m3_mol, c_m6_mol2);
  *b_m3_mol *= molar_volume;
  *c_m6_mol2 *= molar_volume * molar_volume;
}

/* The two constants of integration are those of IAPWS G8-10: enthalpy and
 * entropy are zero at 273.15 K and 101325 Pa. */
void freeair__dry_air_ideal(double tau, freeair__helmholtz *ideal)
{
  static const double power[] = {6.057194e-8, -2.10274769e-5, -1.58860716e-4, 9.74502517439480, 10.0986147428912};
  const freeair__helmholtz zero = {0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
  *ideal = zero;
  double tau_to = 1.0 / (tau * tau * tau);
  for (int i = 0; i < 5; i++) {
    const double a = power[i] * tau_to;
    const double exponent = i - 3;
    ideal->a += a;
    ideal->t += exponent * a;
    ideal->tt += exponent * (exponent - 1.0) * a;
    tau_to *= tau;
  }
  const double a = -1.9536342e-4 * tau * sqrt(tau);
  ideal->a += a + 2.490888032 * log(tau);
  ideal->t += 1.5 * a + 2.490888032;
  ideal->tt += 0.75 * a - 2.490888032;
  freeair__helmholtz_vibration(0.791309509, 25.36365 * tau, ideal);
  freeair__helmholtz_vibration(0.212236768, 16.90741 * tau, ideal);
  /* ln(2/3 + exp(x)) */
  const double x = 87.31279 * tau;
  const double e = 2.0 / 3.0 * exp(-x);
  ideal->a += -0.197938904 * (x + log1p(e));
  ideal->t += -0.197938904 * x / (1.0 + e);
  ideal->tt += -0.197938904 * x * x * e / ((1.0 + e) * (1.0 + e));
}

void freeair__dry_air_point_at(const freeair__dry_air_isotherm *isotherm, double rho_kg_m3,
                               freeair__dry_air_point *point)
{
  const freeair__helmholtz zero = {0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
  const double delta = rho_kg_m3 / FREEAIR__DRY_AIR_REDUCING_KG_M3;
  point->rho_kg_m3 = rho_kg_m3;
  freeair__dry_air_ideal(isotherm->tau, &point->ideal);
  point->ideal.a += log(delta);
  point->residual = zero;
  freeair__helmholtz_add(terms, FREEAIR__DRY_AIR_TERMS, isotherm->amplitude, delta, &point->residual);
}

double freeair__dry_air_dew_pa(double t_k)
{
  const double theta = 1.0 - t_k / FREEAIR__DRY_AIR_REDUCING_T;
  const double root = sqrt(theta);
  const double square = theta * theta;
  const double sum = -0.1567266 * root - 5.539635 * theta + 0.7567212 * square * root - 3.514322 * square * square;
  return 3.78502e6 * exp(sum / (1.0 - theta));
}

double freeair__dry_air_bubble_pa(double t_k)
{
  const double theta = 1.0 - t_k / FREEAIR__DRY_AIR_REDUCING_T;
  const double root = sqrt(theta);
  return 3.78502e6 *
         exp(root *
             (0.2260724 +
              root * (-7.080499 + root * (5.700283 + root * (-12.44017 + root * (17.81926 - 10.81364 * root))))) /
             (1.0 - theta));
}

/* Reduced densities on the dew and bubble line, to a few percent: where to look. */
static double dew_delta(double theta)
{
  return exp(-2.0466 * pow(theta, 0.41) - 4.752 * theta - 13.259 * pow(theta, 2.8) - 47.652 * pow(theta, 6.5));
}

static double bubble_delta(double theta)
{
  return 1.0 + 44.3413 * pow(theta, 0.65) - 240.073 * pow(theta, 0.85) + 285.139 * pow(theta, 0.95) -
         88.3366 * pow(theta, 1.1) - 0.892181 * log1p(-theta);
}

/* The root of p(delta) = pressure, where p rises from lo to hi: Newton's method
 * on ln p against ln delta, which is nearly straight in a gas, or on p itself in
 * a liquid, kept between the ends; after 30 steps bisection alone, which ends. */
static double root(const freeair__dry_air_isotherm *isotherm, double pressure, double lo, double hi, int liquid,
                   double start, int *iterations)
{
  /* pressure over rho_r R T */
  const double target = pressure / (FREEAIR__DRY_AIR_REDUCING_RHO * FREEAIR__DRY_AIR_R * isotherm->t_k);
  double x = start;
  for (*iterations = 1; *iterations < 100; ++*iterations) {
    double d;
    double dd;
    freeair__dry_air_density_slopes(isotherm, x, &d, &dd);
    const double z = 1.0 + d;
    const double slope = 1.0 + 2.0 * d + dd;
    const double found = x * z;
    if (found < target)
      lo = x;
    else
      hi = x;
    if (hi - lo <= 4e-16 * hi) break;
    const double middle = 0.5 * (lo + hi);
    if (*iterations > 30 || !(slope > 0.0) || !(found > 0.0)) {
      x = middle;
      continue;
    }
    const double next = liquid ? x + (target - found) / slope : x * exp(log(target / found) * z / slope);
    if (fabs(next - x) <= 1e-9 * x) return next;
    x = next > lo && next < hi ? next : middle;
  }
  return x;
}

int32_t freeair__dry_air_density(const freeair__dry_air_isotherm *isotherm, double p_pa, double guess_kg_m3,
                                 double *rho_kg_m3, int *iterations)
{
  /* beyond the density at 2000 MPa, whatever the temperature */
  const double most = 53000.0 / FREEAIR__DRY_AIR_REDUCING_RHO;
  const double ideal = p_pa / (FREEAIR__DRY_AIR_REDUCING_RHO * FREEAIR__DRY_AIR_R * isotherm->t_k);
  double delta = guess_kg_m3 / FREEAIR__DRY_AIR_REDUCING_KG_M3;
  double lo = 0.5 * ideal < most ? 0.2 * ideal : 0.2 * most;
  double hi = most;
  double start = ideal / (1.0 + ideal * 0.25);
  int liquid = 0;
  if (isotherm->t_k < FREEAIR__DRY_AIR_REDUCING_T) {
    const double theta = 1.0 - isotherm->t_k / FREEAIR__DRY_AIR_REDUCING_T;
    if (p_pa <= freeair__dry_air_dew_pa(isotherm->t_k)) {
      lo = 0.9 * ideal;
      hi = 1.05 * dew_delta(theta);
      start = ideal;
    } else if (p_pa >= freeair__dry_air_bubble_pa(isotherm->t_k)) {
      lo = 0.97 * bubble_delta(theta);
      start = lo;
      liquid = 1;
    } else {
      return FREEAIR_ERR_NO_SOLUTION;
    }
  }
  if (!freeair__open(delta, lo, hi)) delta = start;
  int n;
  *rho_kg_m3 = root(isotherm, p_pa, lo, hi, liquid, delta, &n) * FREEAIR__DRY_AIR_REDUCING_KG_M3;
  if (iterations != NULL) *iterations = n;
  return FREEAIR_OK;
}

int freeair__dry_air_stable(const freeair__dry_air_isotherm *isotherm, double rho_kg_m3)
{
  if (isotherm->t_k >= FREEAIR__DRY_AIR_REDUCING_T) return 1;
  const double theta = 1.0 - isotherm->t_k / FREEAIR__DRY_AIR_REDUCING_T;
  const double delta = rho_kg_m3 / FREEAIR__DRY_AIR_REDUCING_KG_M3;
  double d;
  double dd;
  freeair__dry_air_density_slopes(isotherm, delta, &d, &dd);
  const double pressure = rho_kg_m3 * FREEAIR__DRY_AIR_GAS_CONSTANT * isotherm->t_k * (1.0 + d);
  if (delta < 1.05 * dew_delta(theta)) return pressure <= freeair__dry_air_dew_pa(isotherm->t_k);
  if (delta > 0.97 * bubble_delta(theta)) return pressure >= freeair__dry_air_bubble_pa(isotherm->t_k);
  return 0;
}

double freeair__dry_air_pressure(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point)
{
  return point->rho_kg_m3 * FREEAIR__DRY_AIR_GAS_CONSTANT * isotherm->t_k * (1.0 + point->residual.d);
}

double freeair__dry_air_enthalpy(const freeair__dry_air_isotherm *isotherm, const freeair__dry_air_point *point)
{
  return FREEAIR__DRY_AIR_GAS_CONSTANT * isotherm->t_k *
         (1.0 + point->ideal.t + point->residual.t + point->residual.d);
}

double freeair__dry_air_entropy(const freeair__dry_air_point *point)
{
  return FREEAIR__DRY_AIR_GAS_CONSTANT *
         (point->ideal.t + point->residual.t - point->ideal.a - point->residual.a);
}

double freeair__dry_air_cv(const freeair__dry_air_point *point)
{
  return -FREEAIR__DRY_AIR_GAS_CONSTANT * (point->ideal.tt + point->residual.tt);
}

double freeair__dry_air_cp(const freeair__dry_air_point *point)
{
  const freeair__helmholtz *r = &point->residual;
  const double expansion = 1.0 + r->d - r->dt;
  return freeair__dry_air_cv(point) +
         FREEAIR__DRY_AIR_GAS_CONSTANT * expansion * expansion / (1.0 + 2.0 * r->d + r->dd);
}
