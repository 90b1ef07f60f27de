/* SPDX-License-Identifier: MIT */
/* Thermodynamics that must hold whatever the equation, by the quadrature,
 * differentiation and root finding of the GNU Scientific Library: integrals of
 * heat capacity and volume are enthalpies and entropies, mixed derivatives agree,
 * Brent's root is our density. And a million random states. */
#include <freeair/dry_air.h>
#include <freeair/status.h>

#include "../suite.h"
#include "calculus.h"

#include <check.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_rng.h>
#include <math.h>

static freeair_dry_air_properties at(double p, double t)
{
  freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
  ck_assert_int_ge(freeair_dry_air_state(p, t, &q), 0);
  return q;
}

/* One coordinate runs, the other is fixed. */
static double cp_by_t(double t, void *p)
{
  return at(*(double *)p, t).cp_j_kg_k;
}

static double cp_over_t_by_t(double t, void *p)
{
  return at(*(double *)p, t).cp_j_kg_k / t;
}

static double enthalpy_slope_by_p(double p, void *t)
{
  const freeair_dry_air_properties q = at(p, *(double *)t);
  return (1.0 - q.t_k * q.expansion_1_k) / q.rho_kg_m3;
}

static double entropy_slope_by_p(double p, void *t)
{
  const freeair_dry_air_properties q = at(p, *(double *)t);
  return -q.expansion_1_k / q.rho_kg_m3;
}

static double integral(double (*f)(double, void *), double fixed, double from, double to)
{
  return integral_of(f, &fixed, from, to, 1e-11);
}

START_TEST(integrals)
{
  static const double pressure[] = {1e4, 1e5, 8e5, 4e6, 3e7, 2e8};
  static const double temperature[] = {200.0, 293.15, 400.0, 700.0, 1500.0};
  for (size_t i = 0; i < sizeof pressure / sizeof pressure[0]; i++)
    for (size_t k = 1; k < sizeof temperature / sizeof temperature[0]; k++) {
      const double p = pressure[i];
      const double t1 = temperature[k - 1];
      const double t2 = temperature[k];
      const freeair_dry_air_properties a = at(p, t1);
      const freeair_dry_air_properties b = at(p, t2);
      const freeair_dry_air_properties c = at(2e5, t1);
      ck_assert_double_eq_tol(b.h_j_kg - a.h_j_kg, integral(cp_by_t, p, t1, t2), 1e-6);
      ck_assert_double_eq_tol(b.s_j_kg_k - a.s_j_kg_k, integral(cp_over_t_by_t, p, t1, t2), 1e-8);
      ck_assert_double_eq_tol(a.h_j_kg - c.h_j_kg, integral(enthalpy_slope_by_p, t1, 2e5, p), 1e-5);
      ck_assert_double_eq_tol(a.s_j_kg_k - c.s_j_kg_k, integral(entropy_slope_by_p, t1, 2e5, p), 1e-8);
    }
}
END_TEST

static double entropy_by_p(double p, void *t)
{
  return at(p, *(double *)t).s_j_kg_k;
}

static double entropy_by_t(double t, void *p)
{
  return at(*(double *)p, t).s_j_kg_k;
}

static double volume_by_t(double t, void *p)
{
  return 1.0 / at(*(double *)p, t).rho_kg_m3;
}

static double density_by_p(double p, void *t)
{
  return at(p, *(double *)t).rho_kg_m3;
}

static double throttled_by_p(double p, void *h)
{
  double t;
  ck_assert_int_eq(freeair_dry_air_temperature_from_enthalpy(p, *(double *)h, &t), FREEAIR_OK);
  return t;
}

static double isentropic_density_by_p(double p, void *s)
{
  double t;
  ck_assert_int_eq(freeair_dry_air_temperature_from_entropy(p, *(double *)s, &t), FREEAIR_OK);
  return at(p, t).rho_kg_m3;
}

static double slope(double (*f)(double, void *), double fixed, double x)
{
  return slope_of(f, &fixed, x);
}

START_TEST(derivatives)
{
  for (double p = 2e4; p < 3e8; p *= 4.0)
    for (double t = 180.0; t < 1900.0; t *= 1.4) {
      freeair_dry_air_properties q = at(p, t);
      const double w = q.speed_of_sound_m_s;
      /* Maxwell's relation, both sides numerical, and against the analytic one */
      const double expansion = slope(volume_by_t, p, t);
      ck_assert_double_eq_tol(slope(entropy_by_p, t, p), -expansion, 1e-7 * expansion);
      ck_assert_double_eq_tol(q.expansion_1_k / q.rho_kg_m3, expansion, 1e-7 * expansion);
      ck_assert_double_eq_tol(t * slope(entropy_by_t, p, t), q.cp_j_kg_k, 1e-7 * q.cp_j_kg_k);
      ck_assert_double_eq_tol(slope(density_by_p, t, p), q.rho_kg_m3 * q.compressibility_1_pa,
                              1e-7 * q.rho_kg_m3 * q.compressibility_1_pa);
      ck_assert_double_eq_tol(slope(isentropic_density_by_p, q.s_j_kg_k, p), 1.0 / (w * w), 1e-6 / (w * w));
      ck_assert_double_eq_tol(slope(throttled_by_p, q.h_j_kg, p), q.joule_thomson_k_pa,
                              1e-6 * fabs(q.joule_thomson_k_pa) + 1e-8 * t / p);
    }
}
END_TEST

typedef struct target {
  double p;
  double t;
} target;

static double pressure_missing(double log_rho, void *parameters)
{
  const target *g = parameters;
  freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
  ck_assert_int_ge(freeair_dry_air_state_from_density(exp(log_rho), g->t, &q), 0);
  return log(q.p_pa / g->p);
}

START_TEST(roots)
{
  for (double t = 133.0; t < 2000.0; t *= 1.15)
    for (double p = 1.0; p < 2e9; p *= 9.0) {
      target g = {p, t};
      const double thin = fmin(p / (287.0 * t) * 0.2, 300.0);
      const double log_rho = root_of(pressure_missing, &g, log(thin), log(1529.0), 1e-15, 0.0);
      const freeair_dry_air_properties q = at(p, t);
      const double steep = fmax(1.0, p * q.compressibility_1_pa); /* flat about the critical point */
      ck_assert_double_eq_tol(q.rho_kg_m3, exp(log_rho), 1e-12 * steep * q.rho_kg_m3);
    }
}
END_TEST

START_TEST(a_million_states)
{
  gsl_rng *random = gsl_rng_alloc(gsl_rng_mt19937);
  int dome = 0;
  for (int i = 0; i < 1000000; i++) {
    const double t = 60.0 * pow(2000.0 / 60.0, gsl_rng_uniform(random));
    const double p = pow(10.0, -3.0 + gsl_rng_uniform(random) * 12.30102);
    double rho;
    const int32_t status = freeair_dry_air_density(p, t, &rho);
    if (status == FREEAIR_ERR_NO_SOLUTION) {
      ck_assert(t < 132.6312);
      dome++;
      continue;
    }
    ck_assert_int_eq(status, FREEAIR_OK);
    ck_assert(rho > 0.0 && rho < 1530.0);
  }
  ck_assert_int_lt(dome, 5000);
  gsl_rng_free(random);
}
END_TEST

int main(void)
{
  gsl_set_error_handler_off();
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 300);
  tcase_add_test(all, integrals);
  tcase_add_test(all, derivatives);
  tcase_add_test(all, roots);
  tcase_add_test(all, a_million_states);
  return run_case("dry_air against GSL", all);
}
