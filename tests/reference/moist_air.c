/* SPDX-License-Identifier: MIT */
/* Moist air by the quadrature and differentiation of the GNU Scientific Library:
 * integrals of heat capacity are enthalpies and entropies, mixed derivatives
 * agree, at every humidity. */
#include <freeair/enhancement.h>
#include <freeair/moist_air.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "../suite.h"
#include "calculus.h"

#include <check.h>
#include <gsl/gsl_deriv.h>
#include <gsl/gsl_errno.h>
#include <math.h>

typedef struct fixed {
  double other; /* the pressure or temperature that stays */
  double humidity;
} fixed;

static freeair_moist_air_properties at(double p, double t, double w)
{
  freeair_moist_air_properties q = FREEAIR_MOIST_AIR_PROPERTIES_INIT;
  ck_assert_int_ge(freeair_moist_air_state(p, t, w, &q), 0);
  return q;
}

static double cp_by_t(double t, void *f)
{
  return at(((fixed *)f)->other, t, ((fixed *)f)->humidity).cp_j_kg_k;
}

static double cp_over_t_by_t(double t, void *f)
{
  return cp_by_t(t, f) / t;
}

static double entropy_by_p(double p, void *f)
{
  return at(p, ((fixed *)f)->other, ((fixed *)f)->humidity).s_j_kg_k;
}

static double enthalpy_by_p(double p, void *f)
{
  return at(p, ((fixed *)f)->other, ((fixed *)f)->humidity).h_j_kg;
}

static double volume_by_t(double t, void *f)
{
  return 1.0 / at(((fixed *)f)->other, t, ((fixed *)f)->humidity).rho_kg_m3;
}

static double entropy_by_t(double t, void *f)
{
  return at(((fixed *)f)->other, t, ((fixed *)f)->humidity).s_j_kg_k;
}

static double energy_by_t(double t, void *f)
{
  freeair_moist_air_properties q = FREEAIR_MOIST_AIR_PROPERTIES_INIT;
  ck_assert_int_ge(freeair_moist_air_state_from_density(((fixed *)f)->other, t, ((fixed *)f)->humidity, &q), 0);
  return q.u_j_kg;
}

static double density_by_p(double p, void *f)
{
  return at(p, ((fixed *)f)->other, ((fixed *)f)->humidity).rho_kg_m3;
}

static double integral(double (*g)(double, void *), fixed f, double from, double to)
{
  return integral_of(g, &f, from, to, 1e-11);
}

static double slope(double (*g)(double, void *), fixed f, double x)
{
  return slope_of(g, &f, x);
}

START_TEST(integrals)
{
  static const double state[][3] = {{1e5, 300.0, 0.02}, {8e5, 310.0, 0.004}, {4e6, 320.0, 0.001}, {2e5, 380.0, 0.3}};
  for (size_t i = 0; i < sizeof state / sizeof state[0]; i++)
    for (double share = 0.0; share <= 1.0; share += 0.5) {
      const double p = state[i][0];
      const double t = state[i][1];
      const double w = share * state[i][2];
      const freeair_moist_air_properties a = at(p, t, w);
      const freeair_moist_air_properties b = at(p, 470.0, w);
      const fixed f = {p, w};
      ck_assert_double_eq_tol(b.h_j_kg - a.h_j_kg, integral(cp_by_t, f, t, 470.0), 1e-5);
      ck_assert_double_eq_tol(b.s_j_kg_k - a.s_j_kg_k, integral(cp_over_t_by_t, f, t, 470.0), 1e-7);
    }
}
END_TEST

START_TEST(derivatives)
{
  static const double state[][3] = {{1e5, 280.0, 0.005}, {1e5, 330.0, 0.1},   {8e5, 310.0, 0.004}, {8e5, 450.0, 0.03},
                                    {4e6, 320.0, 0.001}, {2e5, 380.0, 0.3}, {9e6, 290.0, 1e-4},  {1e5, 200.0, 1e-7}};
  for (size_t i = 0; i < sizeof state / sizeof state[0]; i++) {
    const double p = state[i][0];
    const double t = state[i][1];
    const double w = state[i][2];
    const freeair_moist_air_properties q = at(p, t, w);
    const fixed by_t = {p, w};
    const fixed by_p = {t, w};
    const fixed at_density = {q.rho_kg_m3, w};
    const double expansion = slope(volume_by_t, by_t, t);
    const double bulk = slope(density_by_p, by_p, p);
    ck_assert_double_eq_tol(slope(entropy_by_p, by_p, p), -expansion, 1e-7 * expansion);
    ck_assert_double_eq_tol(t * slope(entropy_by_t, by_t, t), q.cp_j_kg_k, 1e-7 * q.cp_j_kg_k);
    ck_assert_double_eq_tol(slope(energy_by_t, at_density, t), q.cv_j_kg_k, 1e-7 * q.cv_j_kg_k);
    ck_assert_double_eq_tol(q.speed_of_sound_m_s, sqrt(q.heat_capacity_ratio / bulk), 1e-7 * q.speed_of_sound_m_s);
    const double through = slope(enthalpy_by_p, by_p, p);
    ck_assert_double_eq_tol(-through / q.cp_j_kg_k, q.joule_thomson_k_pa, 1e-6 * fabs(q.joule_thomson_k_pa));
  }
}
END_TEST

/* What vapour adds to the Gibbs energy of air that holds it, w the humidity ratio. */
static double gibbs_by_w(double w, void *f)
{
  const freeair_moist_air_properties q = at(((fixed *)f)->other, ((fixed *)f)->humidity, w);
  return (1.0 + w) * (q.h_j_kg - q.t_k * q.s_j_kg_k);
}

static double chemical_potential(double p, double t, double w)
{
  fixed f = {p, t};
  gsl_function function = {gibbs_by_w, &f};
  double result;
  double error;
  ck_assert_int_eq(gsl_deriv_central(&function, w, 0.01 * w, &result, &error), GSL_SUCCESS);
  return result;
}

/* The fugacity of the vapour by the equation of state against that by the virial
 * equation, near saturation: the chemical potential, counted from a gas that is as
 * good as ideal. This is the agreement that the header of topic enhancement states. */
START_TEST(fugacity)
{
  const double r = 461.51805; /* of IAPWS-95 */
  static const double bars[] = {1.0, 4.0, 8.0, 16.0, 40.0, 50.0, 100.0};
  static const double within[] = {1e-4, 1e-4, 2e-4, 5e-4, 1.5e-3, 3e-3, 2e-2};
  for (size_t i = 0; i < sizeof bars / sizeof bars[0]; i++) {
    double worst = 0.0;
    for (double t = 203.15; t < 473.2; t += 10.0) {
      double e;
      double f;
      double virial;
      const double p = bars[i] * 1e5;
      ck_assert_int_eq(freeair_saturation_pressure(t, FREEAIR_SATURATION_OVER_WATER, &e), FREEAIR_OK);
      if (e > 0.5 * p) continue;
      ck_assert_int_ge(freeair_enhancement_factor(p, t, FREEAIR_SATURATION_OVER_WATER, &f), 0);
      const double x = 0.95 * f * e / p;
      if (x > 0.5) continue;
      const double w = 0.018015268 / 0.02896546 * x / (1.0 - x);
      const double thin = 10.0;
      const double ideal = log(thin * x) + (chemical_potential(p, t, w) - chemical_potential(thin, t, w)) / (r * t);
      ck_assert_int_ge(freeair_enhancement_fugacity(p, t, x, &virial), 0);
      worst = fmax(worst, fabs(ideal - log(virial)));
    }
    ck_assert_msg(worst < within[i] && worst > 0.3 * within[i], "%g bar: %g", bars[i], worst);
  }
}
END_TEST

int main(void)
{
  gsl_set_error_handler_off();
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 120);
  tcase_add_test(all, integrals);
  tcase_add_test(all, derivatives);
  tcase_add_test(all, fugacity);
  return run_case("moist_air against GSL", all);
}
