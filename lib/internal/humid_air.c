/* SPDX-License-Identifier: MIT */
#include "internal/humid_air.h"

#include <math.h>

/* The cross coefficients and their first two derivatives by temperature. */
typedef struct cross {
  double aw[3];
  double aaw[3];
  double aww[3];
} cross;

static void cross_at(double t_k, cross *c)
{
  static const double aw[][2] = {{66.5687, -0.237}, {-238.834, -1.048}, {-176.755, -3.183}};
  static const double aaw[] = {0.482737e-3, 0.105678e-2, -0.656394e-2, 0.294442e-1, -0.319317e-1};
  static const double aww[] = {-10.728876, 34.7802, -38.3383, 33.406};
  const cross zero = {{0.0}, {0.0}, {0.0}};
  *c = zero;
  const double x = t_k / 100.0;
  const double log_x = log(x);
  for (int i = 0; i < 3; i++) {
    const double b = 1e-6 * aw[i][0] * exp(aw[i][1] * log_x);
    c->aw[0] += b;
    c->aw[1] += b * aw[i][1] / t_k;
    c->aw[2] += b * aw[i][1] * (aw[i][1] - 1.0) / (t_k * t_k);
  }
  double power = 1.0;
  double exponent[3] = {0.0, 0.0, 0.0};
  for (int i = 0; i < 5; i++) {
    const double a = 1e-6 * aaw[i] * power;
    c->aaw[0] += a;
    c->aaw[1] -= a * i / t_k;
    c->aaw[2] += a * i * (i + 1) / (t_k * t_k);
    if (i < 4) {
      exponent[0] += aww[i] * power;
      exponent[1] -= aww[i] * power * i / t_k;
      exponent[2] += aww[i] * power * i * (i + 1) / (t_k * t_k);
    }
    power /= x;
  }
  c->aww[0] = -1e-6 * exp(exponent[0]);
  c->aww[1] = c->aww[0] * exponent[1];
  c->aww[2] = c->aww[0] * (exponent[2] + exponent[1] * exponent[1]);
}

void freeair__humid_virials_at(double t_k, freeair__humid_virials *v)
{
  cross c;
  cross_at(t_k, &c);
  v->aw = c.aw[0];
  v->aaw = c.aaw[0];
  v->aww = c.aww[0];
  freeair__dry_air_virials(t_k, &v->aa, &v->aaa);
  freeair__water_virials(t_k, &v->ww, &v->www);
}

double freeair__humid_log_fugacity(const freeair__humid_virials *v, double t_k, double p_pa, double mole_fraction)
{
  const double x = mole_fraction;
  const double y = 1.0 - x;
  const double b = x * x * v->ww + 2.0 * x * y * v->aw + y * y * v->aa;
  const double beta = x * (2.0 - x) * v->ww + y * y * (2.0 * v->aw - v->aa);
  const double gamma =
      x * x * (3.0 - 2.0 * x) * v->www +
      y * y * (6.0 * x * v->aww + 3.0 * (1.0 - 2.0 * x) * v->aaw - 2.0 * y * v->aaa) +
      b * (x * (3.0 * x - 4.0) * v->ww + 2.0 * y * (3.0 * x - 2.0) * v->aw + 3.0 * y * y * v->aa);
  const double molar_density = p_pa / (8.314462 * t_k);
  return molar_density * (beta + 0.5 * gamma * molar_density);
}

/* Where water stays liquid no longer than it must, what is known of the liquid is held. */
static double supercooled_at_most(double t_k)
{
  return t_k > 253.15 ? t_k : 253.15;
}

/* Density of saturated liquid water, IAPWS SR1-86(1992). */
static double liquid_density(double t_k)
{
  const double root = cbrt(1.0 - t_k / 647.096);
  const double r2 = root * root;
  const double r5 = r2 * r2 * root;
  const double r16 = r5 * r5 * r5 * root;
  const double r43 = r16 * r16 * r5 * r5 * root;
  const double r110 = r43 * r43 * r16 * r5 * r2 * root;
  return 322.0 * (1.0 + 1.99274064 * root + 1.09965342 * r2 - 0.510839303 * r5 - 1.75493479 * r16 - 45.5170352 * r43 -
                  6.74694450e5 * r110);
}

/* Mole fraction of air dissolved in water for each pascal of it: nitrogen, oxygen
 * and argon by their Henry constants, IAPWS G7-04. */
static double solubility(double t_k)
{
  static const double gas[][4] = {{0.7812, -9.67578, 4.72162, 11.70585},
                                  {0.2096, -9.44833, 4.43822, 11.42005},
                                  {0.0092, -8.40954, 4.29587, 10.52779}};
  const double reduced = t_k / 647.096;
  const double tau = 1.0 - reduced;
  const double second = pow(tau, 0.355) / reduced;
  const double third = pow(reduced, -0.41) * exp(tau);
  const double vapour = freeair__saturation_over_pa(t_k, 0);
  double sum = 0.0;
  for (int i = 0; i < 3; i++)
    sum += gas[i][0] / (vapour * exp(gas[i][1] / reduced + gas[i][2] * second + gas[i][3] * third));
  return sum;
}

/* The fugacity of the vapour in the air equals that of the water or ice: its own
 * at saturation, raised by the pressure on it, lowered by the air dissolved. */
double freeair__humid_saturation(double t_k, double p_pa, int ice, int real)
{
  const double pure = freeair__saturation_over_pa(t_k, ice);
  if (!real || p_pa <= pure) return pure / p_pa;
  const int frozen = ice && t_k < FREEAIR__WATER_TRIPLE_T;
  const double excess = p_pa - pure;
  const double gas_constant_t = FREEAIR__WATER_GAS_CONSTANT * t_k;
  freeair__humid_virials v;
  freeair__humid_virials_at(t_k, &v);
  double fugacity = log(pure / p_pa) + freeair__humid_log_fugacity(&v, t_k, pure, 1.0);
  double dissolved = 0.0;
  if (frozen) {
    double volume;
    double enthalpy;
    freeair__ice(t_k, 0.5 * (p_pa + pure), &volume, &enthalpy);
    fugacity += volume * excess / gas_constant_t;
  } else {
    const double compressed = 0.5 * 4.6e-10 * excess;
    const double t = supercooled_at_most(t_k);
    fugacity += excess * (1.0 - compressed) / (liquid_density(t) * gas_constant_t);
    dissolved = solubility(t) * p_pa;
  }
  const double molar_density = p_pa / (8.314462 * t_k);
  double x = pure / p_pa;
  for (int i = 0; i < 50; i++) {
    const double y = 1.0 - x;
    const double missing = fugacity + log1p(-dissolved * y) - log(x) - freeair__humid_log_fugacity(&v, t_k, p_pa, x);
    const double slope = 1.0 + x * 2.0 * y * (v.ww - 2.0 * v.aw + v.aa) * molar_density;
    const double next = x * exp(missing / (slope > 0.5 ? slope : 0.5));
    const double step = fabs(next - x);
    x = next < 1.0 ? next : 1.0;
    if (step <= 1e-15 * x) break;
  }
  return x;
}

double freeair__humid_dew_k(double p_pa, double mole_fraction, int ice, int real)
{
  if (!(mole_fraction > 0.0) || !(mole_fraction < 1.0)) return NAN;
  double factor = 1.0;
  double t = NAN;
  for (int i = 0; i < 60; i++) {
    const double last = t;
    const double pressure = mole_fraction * p_pa / factor;
    if (!(pressure < 22e6)) return NAN;
    t = freeair__saturation_temperature_k(pressure, ice);
    /* the factor is known from 173.15 K on; searched for a little beyond, so that the end is found */
    if (!freeair__closed(t, 170.0, 580.0)) return NAN;
    if (!real || fabs(t - last) <= 1e-13 * t) break;
    factor = freeair__humid_saturation(t, p_pa, ice, 1) * p_pa / freeair__saturation_over_pa(t, ice);
  }
  return t >= 173.15 * (1.0 - 1e-12) && t <= 573.15 * (1.0 + 1e-12) ? t : NAN;
}

double freeair__humid_relative(double p_pa, double t_k, double mole_fraction, int real)
{
  return mole_fraction / freeair__humid_saturation(t_k, p_pa, 0, real);
}

void freeair__humid_isotherm_at(double t_k, double humidity_ratio, freeair__humid_isotherm *isotherm)
{
  const double dry = 1.0 / (1.0 + humidity_ratio);
  const double wet = humidity_ratio * dry;
  isotherm->dry_share = dry;
  isotherm->t_k = t_k;
  freeair__dry_air_isotherm_at(t_k, &isotherm->dry);
  if (wet > 0.0) freeair__water_isotherm_at(t_k, &isotherm->water);
  cross c;
  cross_at(t_k, &c);
  const double scale = 2.0 * dry * wet * 8.314472 / (FREEAIR__DRY_AIR_MOLAR_MASS * FREEAIR__WATER_MOLAR_MASS);
  double third[3];
  for (int i = 0; i < 3; i++)
    third[i] = 0.75 * (dry / FREEAIR__DRY_AIR_MOLAR_MASS * c.aaw[i] + wet / FREEAIR__WATER_MOLAR_MASS * c.aww[i]);
  isotherm->first[0] = scale * t_k * c.aw[0];
  isotherm->first[1] = scale * (c.aw[0] + t_k * c.aw[1]);
  isotherm->first[2] = scale * (2.0 * c.aw[1] + t_k * c.aw[2]);
  isotherm->second[0] = scale * t_k * third[0];
  isotherm->second[1] = scale * (third[0] + t_k * third[1]);
  isotherm->second[2] = scale * (2.0 * third[1] + t_k * third[2]);
}

void freeair__humid_point_at(const freeair__humid_isotherm *isotherm, double rho_kg_m3, freeair__humid_point *point)
{
  const double t = isotherm->t_k;
  const double dry = isotherm->dry_share;
  const double wet = 1.0 - dry;
  const double rho = rho_kg_m3;
  const double *e = isotherm->first;
  const double *f = isotherm->second;
  point->rho_kg_m3 = rho;
  point->p_pa = rho * rho * (e[0] + 2.0 * rho * f[0]);
  point->pressure_by_density = rho * (2.0 * e[0] + 6.0 * rho * f[0]);
  point->pressure_by_temperature = rho * rho * (e[1] + 2.0 * rho * f[1]);
  point->throttling = t * point->pressure_by_temperature - rho * point->pressure_by_density;
  point->s_j_kg_k = -rho * (e[1] + rho * f[1]);
  point->cv_j_kg_k = -t * rho * (e[2] + rho * f[2]);
  double energy = rho * (e[0] - t * e[1] + rho * (f[0] - t * f[1]));

  freeair__dry_air_point a;
  freeair__dry_air_point_at(&isotherm->dry, dry * rho, &a);
  double scale = dry * FREEAIR__DRY_AIR_GAS_CONSTANT;
  point->p_pa += rho * scale * t * (1.0 + a.residual.d);
  point->pressure_by_density += scale * t * (1.0 + 2.0 * a.residual.d + a.residual.dd);
  point->pressure_by_temperature += rho * scale * (1.0 + a.residual.d - a.residual.dt);
  point->throttling -= rho * scale * t * (a.residual.d + a.residual.dd + a.residual.dt);
  point->s_j_kg_k += dry * freeair__dry_air_entropy(&a);
  point->cv_j_kg_k += dry * freeair__dry_air_cv(&a);
  energy += scale * t * (a.ideal.t + a.residual.t);

  if (wet > 0.0) {
    freeair__water_point w;
    freeair__water_point_at(&isotherm->water, wet * rho, &w);
    scale = wet * FREEAIR__WATER_GAS_CONSTANT;
    point->p_pa += rho * scale * t * (1.0 + w.residual.d);
    point->pressure_by_density += scale * t * (1.0 + 2.0 * w.residual.d + w.residual.dd);
    point->pressure_by_temperature += rho * scale * (1.0 + w.residual.d - w.residual.dt);
    point->throttling -= rho * scale * t * (w.residual.d + w.residual.dd + w.residual.dt);
    point->s_j_kg_k += scale * (w.ideal.t + w.residual.t - w.ideal.a - w.residual.a);
    point->cv_j_kg_k -= scale * (w.ideal.tt + w.residual.tt);
    energy += scale * t * (w.ideal.t + w.residual.t);
  }
  point->h_j_kg = energy + point->p_pa / rho;
  point->cp_j_kg_k = point->cv_j_kg_k + t * point->pressure_by_temperature * point->pressure_by_temperature /
                                            (rho * rho * point->pressure_by_density);
}

/* Newton's method on ln p against ln rho from the ideal gas; halved where it would leap. */
double freeair__humid_density(const freeair__humid_isotherm *isotherm, double p_pa)
{
  const double dry = isotherm->dry_share;
  const double gas_constant = dry * FREEAIR__DRY_AIR_GAS_CONSTANT + (1.0 - dry) * FREEAIR__WATER_GAS_CONSTANT;
  double rho = p_pa / (gas_constant * isotherm->t_k);
  for (int i = 0; i < 60; i++) {
    freeair__humid_point point;
    freeair__humid_point_at(isotherm, rho, &point);
    double step = log(p_pa / point.p_pa) * point.p_pa / (rho * point.pressure_by_density);
    if (!(step < 0.5)) step = 0.5;
    if (step < -0.5) step = -0.5;
    rho *= exp(step);
    if (fabs(step) <= 1e-10) break;
  }
  return rho;
}

double freeair__humid_enthalpy(double p_pa, double t_k, double humidity_ratio)
{
  freeair__humid_isotherm isotherm;
  freeair__humid_point point;
  freeair__humid_isotherm_at(t_k, humidity_ratio, &isotherm);
  freeair__humid_point_at(&isotherm, freeair__humid_density(&isotherm, p_pa), &point);
  return point.h_j_kg * (1.0 + humidity_ratio);
}

double freeair__humid_condensed_enthalpy(double p_pa, double t_k, int ice)
{
  double volume;
  double enthalpy;
  if (ice && t_k < FREEAIR__WATER_TRIPLE_T) {
    freeair__ice(t_k, p_pa, &volume, &enthalpy);
    return enthalpy;
  }
  /* below -20 degC, where the equation of the liquid ends, along its heat capacity there */
  const double t = supercooled_at_most(t_k);
  freeair__water_isotherm isotherm;
  freeair__water_point point;
  freeair__water_isotherm_at(t, &isotherm);
  freeair__water_point_at(&isotherm, freeair__water_density(&isotherm, p_pa, 1), &point);
  return freeair__water_enthalpy(&isotherm, &point) + 4350.0 * (t_k - t);
}

/* Enthalpy that saturated air at the wet bulb has more than the air with the water that brought it there. */
static double wet_bulb_excess(double p_pa, double wet_bulb_k, int ice, double humidity_ratio, double enthalpy,
                              double *slope)
{
  const double x = freeair__humid_saturation(wet_bulb_k, p_pa, ice, 1);
  const double saturated = freeair__humid_ratio_of_fraction(x);
  const double water = freeair__humid_condensed_enthalpy(p_pa, wet_bulb_k, ice);
  const double rise = freeair__saturation_log_slope(wet_bulb_k, ice);
  *slope = 1006.0 + saturated / (1.0 - x) * rise * (2501e3 + 1860.0 * (wet_bulb_k - 273.15) - water);
  return freeair__humid_enthalpy(p_pa, wet_bulb_k, saturated) - (saturated - humidity_ratio) * water - enthalpy;
}

double freeair__humid_wet_bulb(double p_pa, double t_k, double humidity_ratio, int ice)
{
  const double enthalpy = freeair__humid_enthalpy(p_pa, t_k, humidity_ratio);
  const double dew = freeair__humid_dew_k(p_pa, freeair__humid_fraction_of_ratio(humidity_ratio), ice, 1);
  const double boiling = p_pa < 22e6 ? freeair__saturation_temperature_k(p_pa, ice) : t_k;
  double lo = dew > 173.15 ? dew : 173.15;
  double hi = t_k < boiling ? t_k : boiling;
  /* saturated already, give or take rounding; or so cold and dry that the wet bulb is below the range */
  if (!(hi > lo)) return fabs(hi - lo) < 1e-6 * hi ? hi : NAN;
  double slope;
  if (wet_bulb_excess(p_pa, lo, ice, humidity_ratio, enthalpy, &slope) > 0.0) return lo > 173.15 ? lo : NAN;
  /* a wick may be wet above freezing and frozen below it with the same air: wet goes first */
  const double triple = FREEAIR__WATER_TRIPLE_T;
  if (ice && lo < triple && triple < hi) {
    if (wet_bulb_excess(p_pa, triple, ice, humidity_ratio, enthalpy, &slope) <= 0.0)
      lo = triple;
    else
      hi = nextafter(triple, 0.0);
  }
  double t = lo + 0.4 * (hi - lo);
  for (int i = 0; i < 100; i++) {
    const double excess = wet_bulb_excess(p_pa, t, ice, humidity_ratio, enthalpy, &slope);
    if (excess > 0.0)
      hi = t;
    else
      lo = t;
    const double next = t - excess / slope;
    if (fabs(next - t) <= 1e-12 * t || hi - lo <= 1e-13 * t) return next > lo && next < hi ? next : t;
    t = next > lo && next < hi && i < 40 ? next : 0.5 * (lo + hi);
  }
  return t;
}

double freeair__humid_ratio_of_wet_bulb(double p_pa, double t_k, double wet_bulb_k, int ice)
{
  const double x = freeair__humid_saturation(wet_bulb_k, p_pa, ice, 1);
  if (!(x < 1.0)) return NAN;
  const double saturated = freeair__humid_ratio_of_fraction(x);
  const double water = freeair__humid_condensed_enthalpy(p_pa, wet_bulb_k, ice);
  const double target = freeair__humid_enthalpy(p_pa, wet_bulb_k, saturated) - saturated * water;
  /* what the vapour brings, nearly in proportion to the humidity ratio */
  const double vapour = 2501e3 + 1860.0 * (t_k - 273.15) - water;
  double w = saturated;
  for (int i = 0; i < 50; i++) {
    const double missing = target - freeair__humid_enthalpy(p_pa, t_k, w) + w * water;
    double next = w + missing / vapour;
    if (next < -0.01 * saturated) return NAN;
    if (next < 0.0) next = 0.0;
    const double step = fabs(next - w);
    w = next;
    if (step <= 1e-14 * saturated) break;
  }
  /* dry air, give or take rounding, or drier than that */
  return w > 0.0 || target >= freeair__humid_enthalpy(p_pa, t_k, 0.0) - 1e-9 * saturated * vapour ? w : NAN;
}
