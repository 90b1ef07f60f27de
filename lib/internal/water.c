/* SPDX-License-Identifier: MIT */
#include "internal/water.h"

#include "internal/array.h"
#include "internal/check.h"
#include "internal/saturation.h"

static const double critical_t = 647.096;
static const double critical_rho = 322.0;

static const freeair__term terms[FREEAIR__WATER_TERMS] = {
    {0.0125335479355233, -0.5, 1, 0},     {7.8957634722828, 0.875, 1, 0},       {-8.7803203303561, 1.0, 1, 0},
    {0.31802509345418, 0.5, 2, 0},        {-0.26145533859358, 0.75, 2, 0},      {-0.0078199751687981, 0.375, 3, 0},
    {0.0088089493102134, 1.0, 4, 0},      {-0.66856572307965, 4.0, 1, 1},       {0.20433810950965, 6.0, 1, 1},
    {-6.6212605039687e-05, 12.0, 1, 1},   {-0.19232721156002, 1.0, 2, 1},       {-0.25709043003438, 5.0, 2, 1},
    {0.16074868486251, 4.0, 3, 1},        {-0.040092828925807, 2.0, 4, 1},      {3.9343422603254e-07, 13.0, 4, 1},
    {-7.5941377088144e-06, 9.0, 5, 1},    {0.00056250979351888, 3.0, 7, 1},     {-1.5608652257135e-05, 4.0, 9, 1},
    {1.1537996422951e-09, 11.0, 10, 1},   {3.6582165144204e-07, 4.0, 11, 1},    {-1.3251180074668e-12, 13.0, 13, 1},
    {-6.2639586912454e-10, 1.0, 15, 1},   {-0.10793600908932, 7.0, 1, 2},       {0.017611491008752, 1.0, 2, 2},
    {0.22132295167546, 9.0, 2, 2},        {-0.40247669763528, 10.0, 2, 2},      {0.58083399985759, 10.0, 3, 2},
    {0.0049969146990806, 3.0, 4, 2},      {-0.031358700712549, 7.0, 4, 2},      {-0.74315929710341, 10.0, 4, 2},
    {0.4780732991548, 10.0, 5, 2},        {0.020527940895948, 6.0, 6, 2},       {-0.13636435110343, 10.0, 6, 2},
    {0.014180634400617, 10.0, 7, 2},      {0.0083326504880713, 1.0, 9, 2},      {-0.029052336009585, 2.0, 9, 2},
    {0.038615085574206, 3.0, 9, 2},       {-0.020393486513704, 4.0, 9, 2},      {-0.0016554050063734, 8.0, 9, 2},
    {0.0019955571979541, 6.0, 10, 2},     {0.00015870308324157, 9.0, 10, 2},    {-1.638856834253e-05, 8.0, 12, 2},
    {0.043613615723811, 16.0, 3, 3},      {0.034994005463765, 22.0, 4, 3},      {-0.076788197844621, 23.0, 4, 3},
    {0.022446277332006, 23.0, 5, 3},      {-6.2689710414685e-05, 10.0, 14, 4},  {-5.5711118565645e-10, 50.0, 3, 6},
    {-0.19905718354408, 44.0, 6, 6},      {0.31777497330738, 46.0, 6, 6},       {-0.11841182425981, 50.0, 6, 6}};

/* n delta^3 tau^t exp(-20 (delta - 1)^2 - beta (tau - gamma)^2) */
static const struct {
  double n;
  double t;
  double beta;
  double gamma;
} gaussian[] = {{-31.306260323435, 0.0, 150.0, 1.21}, {31.546140237781, 1.0, 150.0, 1.21},
                {-2521.3154341695, 4.0, 250.0, 1.25}};

void freeair__water_isotherm_at(double t_k, freeair__water_isotherm *isotherm)
{
  isotherm->t_k = t_k;
  isotherm->tau = critical_t / t_k;
  freeair__helmholtz_isotherm(terms, FREEAIR__WATER_TERMS, isotherm->tau, isotherm->amplitude);
}

static void ideal_at(double tau, freeair__helmholtz *ideal)
{
  static const double vibration[][2] = {{0.012436, 1.28728967}, {0.97315, 3.53734222}, {1.2795, 7.74073708},
                                        {0.96956, 9.24437796}, {0.24873, 27.5075105}};
  const freeair__helmholtz start = {-8.32044648374969 + 6.68321052759323 * tau + 3.00632 * log(tau), 0.0, 0.0,
                                    6.68321052759323 * tau + 3.00632, -3.00632, 0.0};
  *ideal = start;
  for (size_t i = 0; i < FREEAIR__COUNT(vibration); i++)
    freeair__helmholtz_vibration(vibration[i][0], vibration[i][1] * tau, ideal);
}

static void add_gaussian(double tau, double delta, freeair__helmholtz *sum)
{
  for (size_t i = 0; i < FREEAIR__COUNT(gaussian); i++) {
    const double from_peak = tau - gaussian[i].gamma;
    const double a = gaussian[i].n * delta * delta * delta * pow(tau, gaussian[i].t) *
                     exp(-20.0 * (delta - 1.0) * (delta - 1.0) - gaussian[i].beta * from_peak * from_peak);
    const double d = 3.0 - 40.0 * delta * (delta - 1.0);
    const double t = gaussian[i].t - 2.0 * gaussian[i].beta * tau * from_peak;
    sum->a += a;
    sum->d += a * d;
    sum->dd += a * (d * d - 3.0 - 40.0 * delta * delta);
    sum->t += a * t;
    sum->tt += a * (t * t - gaussian[i].t - 2.0 * gaussian[i].beta * tau * tau);
    sum->dt += a * d * t;
  }
}

void freeair__water_point_at(const freeair__water_isotherm *isotherm, double rho_kg_m3, freeair__water_point *point)
{
  const freeair__helmholtz zero = {0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
  const double delta = rho_kg_m3 / critical_rho;
  point->rho_kg_m3 = rho_kg_m3;
  ideal_at(isotherm->tau, &point->ideal);
  point->ideal.a += log(delta);
  point->residual = zero;
  freeair__helmholtz_add(terms, FREEAIR__WATER_TERMS, isotherm->amplitude, delta, &point->residual);
  add_gaussian(isotherm->tau, delta, &point->residual);
}

void freeair__water_virials(double t_k, double *b_m3_mol, double *c_m6_mol2)
{
  const double molar_volume = FREEAIR__WATER_MOLAR_MASS / critical_rho;
  freeair__water_isotherm isotherm;
  freeair__water_isotherm_at(t_k, &isotherm);
  freeair__helmholtz_virials(terms, FREEAIR__WATER_TERMS, isotherm.amplitude, b_m3_mol, c_m6_mol2);
  *b_m3_mol *= molar_volume;
  *c_m6_mol2 *= molar_volume * molar_volume;
}

/* Newton's method from the left in a vapour, where p is concave in rho, and from
 * the right in a liquid, where it is convex: both arrive without overshooting. */
double freeair__water_density(const freeair__water_isotherm *isotherm, double p_pa, int liquid)
{
  const double ideal = p_pa / (FREEAIR__WATER_GAS_CONSTANT * isotherm->t_k);
  double rho = liquid ? 1050.0 : ideal;
  for (int i = 0; i < 60; i++) {
    freeair__water_point point;
    freeair__water_point_at(isotherm, rho, &point);
    const double step =
        (ideal - rho * (1.0 + point.residual.d)) / (1.0 + 2.0 * point.residual.d + point.residual.dd);
    rho += step;
    if (fabs(step) <= 1e-10 * rho) break;
  }
  return rho;
}

double freeair__water_enthalpy(const freeair__water_isotherm *isotherm, const freeair__water_point *point)
{
  return FREEAIR__WATER_GAS_CONSTANT * isotherm->t_k *
         (1.0 + point->ideal.t + point->residual.t + point->residual.d);
}

/* IAPWS R10-06(2009). The Gibbs energy has two terms
 *   r [(t - theta) ln(t - theta) + (t + theta) ln(t + theta) - 2 t ln t - theta^2/t]
 * with complex r and t, theta = T/273.16 K. Here is the real part of r times the
 * bracket and of r times its derivative by theta. */
static void ice_term(double r_re, double r_im, double t_re, double t_im, double theta, double *value, double *slope)
{
  const double log_below_re = 0.5 * log((t_re - theta) * (t_re - theta) + t_im * t_im);
  const double log_below_im = atan2(t_im, t_re - theta);
  const double log_above_re = 0.5 * log((t_re + theta) * (t_re + theta) + t_im * t_im);
  const double log_above_im = atan2(t_im, t_re + theta);
  const double size = t_re * t_re + t_im * t_im;
  const double log_re = 0.5 * log(size);
  const double log_im = atan2(t_im, t_re);
  const double inverse_re = t_re / size;
  const double inverse_im = -t_im / size;
  const double re = (t_re - theta) * log_below_re - t_im * log_below_im + (t_re + theta) * log_above_re -
                    t_im * log_above_im - 2.0 * (t_re * log_re - t_im * log_im) - theta * theta * inverse_re;
  const double im = (t_re - theta) * log_below_im + t_im * log_below_re + (t_re + theta) * log_above_im +
                    t_im * log_above_re - 2.0 * (t_re * log_im + t_im * log_re) - theta * theta * inverse_im;
  const double slope_re = log_above_re - log_below_re - 2.0 * theta * inverse_re;
  const double slope_im = log_above_im - log_below_im - 2.0 * theta * inverse_im;
  *value = r_re * re - r_im * im;
  *slope = r_re * slope_re - r_im * slope_im;
}

void freeair__ice(double t_k, double p_pa, double *v_m3_kg, double *h_j_kg)
{
  static const double g0[] = {-632020.233335886, 0.655022213658955, -1.89369929326131e-8, 3.39746123271053e-15,
                              -5.56464869058991e-22};
  static const double r2[][2] = {{-72.5974574329220, -78.1008427112870},
                                 {-5.57107698030123e-5, 4.64578634580806e-5},
                                 {2.34801409215913e-11, -2.85651142904972e-11}};
  const double theta = t_k / FREEAIR__WATER_TRIPLE_T;
  const double pi = (p_pa - 101325.0) / FREEAIR__WATER_TRIPLE_PA;
  double g = 0.0;
  double g_by_pi = 0.0;
  for (int i = 4; i >= 0; i--) {
    g_by_pi = g_by_pi * pi + g;
    g = g * pi + g0[i];
  }
  double first;
  double first_slope;
  double second;
  double second_slope;
  double by_pi;
  double by_pi_slope;
  ice_term(44.7050716285388, 65.6876847463481, 0.0368017112855051, 0.0510878114959572, theta, &first, &first_slope);
  ice_term(r2[0][0] + pi * (r2[1][0] + pi * r2[2][0]), r2[0][1] + pi * (r2[1][1] + pi * r2[2][1]), 0.337315741065416,
           0.335449415919309, theta, &second, &second_slope);
  ice_term(r2[1][0] + 2.0 * pi * r2[2][0], r2[1][1] + 2.0 * pi * r2[2][1], 0.337315741065416, 0.335449415919309, theta,
           &by_pi, &by_pi_slope);
  /* the term in entropy, s0 T, drops out of h = g - T dg/dT */
  *h_j_kg = g + FREEAIR__WATER_TRIPLE_T * (first + second - theta * (first_slope + second_slope));
  *v_m3_kg = (g_by_pi + FREEAIR__WATER_TRIPLE_T * by_pi) / FREEAIR__WATER_TRIPLE_PA;
}

/* IAPWS R14-08(2011), sublimation. */
double freeair__ice_pressure_pa(double t_k)
{
  const double theta = t_k / FREEAIR__WATER_TRIPLE_T;
  const double log_theta = log(theta);
  const double sum = -21.2144006 * exp(0.00333333333 * log_theta) + 27.3203819 * exp(1.20666667 * log_theta) -
                     6.10598130 * exp(1.70333333 * log_theta);
  return FREEAIR__WATER_TRIPLE_PA * exp(sum / theta);
}

double freeair__ice_log_slope(double t_k)
{
  const double log_theta = log(t_k / FREEAIR__WATER_TRIPLE_T);
  const double sum = -21.2144006 * (0.00333333333 - 1.0) * exp((0.00333333333 - 2.0) * log_theta) +
                     27.3203819 * (1.20666667 - 1.0) * exp((1.20666667 - 2.0) * log_theta) -
                     6.10598130 * (1.70333333 - 1.0) * exp((1.70333333 - 2.0) * log_theta);
  return sum / FREEAIR__WATER_TRIPLE_T;
}

/* Murphy and Koop (2005), equation 10. */
double freeair__supercooled_pressure_pa(double t_k)
{
  const double log_t = log(t_k);
  return exp(54.842763 - 6763.22 / t_k - 4.210 * log_t + 0.000367 * t_k +
             tanh(0.0415 * (t_k - 218.8)) * (53.878 - 1331.22 / t_k - 9.44523 * log_t + 0.014025 * t_k));
}

double freeair__supercooled_log_slope(double t_k)
{
  const double log_t = log(t_k);
  const double step = tanh(0.0415 * (t_k - 218.8));
  return 6763.22 / (t_k * t_k) - 4.210 / t_k + 0.000367 +
         0.0415 * (1.0 - step * step) * (53.878 - 1331.22 / t_k - 9.44523 * log_t + 0.014025 * t_k) +
         step * (1331.22 / (t_k * t_k) - 9.44523 / t_k + 0.014025);
}

double freeair__saturation_over_pa(double t_k, int ice)
{
  if (t_k >= FREEAIR__WATER_TRIPLE_T) return freeair__saturation_pressure_pa(t_k);
  return ice ? freeair__ice_pressure_pa(t_k) : freeair__supercooled_pressure_pa(t_k);
}

double freeair__saturation_log_slope(double t_k, int ice)
{
  if (t_k < FREEAIR__WATER_TRIPLE_T) return ice ? freeair__ice_log_slope(t_k) : freeair__supercooled_log_slope(t_k);
  const double step = 1e-4 * t_k;
  return log(freeair__saturation_pressure_pa(t_k + step) / freeair__saturation_pressure_pa(t_k - step)) / (2.0 * step);
}

double freeair__saturation_temperature_k(double p_pa, int ice)
{
  const double triple = FREEAIR__WATER_TRIPLE_T;
  if (p_pa >= freeair__saturation_pressure_pa(triple)) return freeair__saturation_temperature(p_pa);
  const double least = ice ? 50.0 : 123.0;
  if (p_pa < freeair__saturation_over_pa(least, ice)) return NAN;
  /* ln p against 1/T is nearly straight */
  double t = 1.0 / (1.0 / triple - log(p_pa / FREEAIR__WATER_TRIPLE_PA) / 6140.0);
  t = t > least ? t : least;
  const double log_p = log(p_pa);
  for (int i = 0; i < 30; i++) {
    const double missing = log_p - log(ice ? freeair__ice_pressure_pa(t) : freeair__supercooled_pressure_pa(t));
    const double slope = ice ? freeair__ice_log_slope(t) : freeair__supercooled_log_slope(t);
    const double next = 1.0 / (1.0 / t - missing / (slope * t * t));
    const double step = fabs(next - t);
    t = next < triple ? next > least ? next : least : triple;
    if (step <= 1e-9 * t) break;
  }
  return t;
}
