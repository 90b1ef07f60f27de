/* SPDX-License-Identifier: MIT */
/* Second opinion from the GNU Scientific Library on compressing real air: the
 * polytropic path by a Runge-Kutta method of its own in another variable, the
 * head by quadrature, the efficiency by a general root finder. */
#include <freeair/freeair.h>

#include "../suite.h"
#include "calculus.h"

#include <check.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>
#include <math.h>
#include <stdlib.h>

static const double cases[][4] = {
    {1e5, 293.15, 8e5, 0.8}, {1e5, 250.0, 1.5e5, 0.6}, {9e5, 313.15, 3.5e6, 0.75}, {1e7, 300.0, 6e7, 0.7},
    {1e5, 300.0, 1e7, 0.9}};

static freeair_dry_air_properties at(double p, double t)
{
  freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
  ck_assert_int_ge(freeair_dry_air_state(p, t, &q), 0);
  return q;
}

/* dh/dp = v/eta, with the temperature of that enthalpy */
static int enthalpy_by_pressure(double p, const double y[], double by_p[], void *of)
{
  double t;
  if (freeair_dry_air_temperature_from_enthalpy(p, y[0], &t) < 0) return GSL_FAILURE;
  const double v = 1.0 / at(p, t).rho_kg_m3;
  by_p[0] = v / *(double *)of;
  by_p[1] = v;
  return GSL_SUCCESS;
}

static void gsl_path(double p1, double t1, double p2, double efficiency, double *head, double *t2)
{
  gsl_odeiv2_system system = {enthalpy_by_pressure, NULL, 2, &efficiency};
  gsl_odeiv2_driver *driver = gsl_odeiv2_driver_alloc_y_new(&system, gsl_odeiv2_step_rk8pd, 0.01 * p1, 1e-6, 1e-12);
  double y[] = {at(p1, t1).h_j_kg, 0.0};
  double p = p1;
  ck_assert_int_eq(gsl_odeiv2_driver_apply(driver, &p, p2, y), GSL_SUCCESS);
  gsl_odeiv2_driver_free(driver);
  *head = y[1];
  ck_assert_int_eq(freeair_dry_air_temperature_from_enthalpy(p2, y[0], t2), FREEAIR_OK);
}

START_TEST(path)
{
  for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
    const double *c = cases[i];
    double w;
    double head;
    double t2;
    double gsl_head;
    double gsl_t2;
    ck_assert_int_eq(freeair_real_polytropic_work(c[0], c[1], c[2], c[3], &w, &head, &t2), FREEAIR_OK);
    gsl_path(c[0], c[1], c[2], c[3], &gsl_head, &gsl_t2);
    ck_assert_double_eq_tol(head, gsl_head, 2e-10 * head);
    ck_assert_double_eq_tol(w, gsl_head / c[3], 2e-10 * w);
    ck_assert_double_eq_tol(t2, gsl_t2, 2e-10 * t2);
  }
}
END_TEST

typedef struct measured {
  const double *c;
  double t2;
} measured;

static double missed(double efficiency, void *of)
{
  const measured *m = of;
  double head;
  double t2;
  gsl_path(m->c[0], m->c[1], m->c[2], efficiency, &head, &t2);
  return t2 - m->t2;
}

START_TEST(efficiency)
{
  for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
    double head;
    double found;
    measured m = {cases[i], cases[i][1] * pow(cases[i][2] / cases[i][0], 0.32)};
    ck_assert_int_ge(
        freeair_real_polytropic_efficiency(cases[i][0], cases[i][1], cases[i][2], m.t2, &found, &head), 0);
    ck_assert_double_eq_tol(found, root_of(missed, &m, 0.75, 1.6, 1e-12, 0.0), 1e-9);
  }
}
END_TEST

typedef struct line {
  double t1_k;
  double s;
  double v1;
  double p1;
  double n;
} line;

static double isothermal_volume(double log_p, void *of)
{
  const line *c = of;
  return exp(log_p) / at(exp(log_p), c->t1_k).rho_kg_m3;
}

static double isentropic_volume(double log_p, void *of)
{
  const line *c = of;
  double t;
  ck_assert_int_eq(freeair_dry_air_temperature_from_entropy(exp(log_p), c->s, &t), FREEAIR_OK);
  return exp(log_p) / at(exp(log_p), t).rho_kg_m3;
}

static double polytropic_volume(double log_p, void *of)
{
  const line *c = of;
  return exp(log_p) * c->v1 * pow(c->p1 / exp(log_p), 1.0 / c->n);
}

static double integral(double (*f)(double, void *), line *of, double p1, double p2)
{
  return integral_of(f, of, log(p1), log(p2), 1e-11);
}

START_TEST(work_is_the_integral_of_v_dp)
{
  const double ratios[] = {1.0001, 1.3, 1.4, 9.0, 300.0};
  for (size_t i = 0; i < sizeof ratios / sizeof ratios[0]; i++)
    for (double p1 = 1e4; p1 < 2e7; p1 *= 11.0) {
      const double p2 = p1 * ratios[i];
      double w;
      double other;
      double t2;
      if (p2 > 1e8) continue;
      line c = {300.0, at(p1, 300.0).s_j_kg_k, 1.0 / at(p1, 300.0).rho_kg_m3, p1, 1.27};
      ck_assert_int_eq(freeair_real_compression_isothermal(p1, 300.0, p2, &w, &other), FREEAIR_OK);
      ck_assert_double_eq_tol(w, integral(isothermal_volume, &c, p1, p2), 1e-11 * w);
      ck_assert_int_eq(freeair_real_compression_isentropic(p1, 300.0, p2, &w, &t2), FREEAIR_OK);
      ck_assert_double_eq_tol(w, integral(isentropic_volume, &c, p1, p2), 1e-11 * w);
      ck_assert_int_eq(freeair_real_compression_from_exponent(p1, 300.0, p2, 1.27, &w, &other, &t2), FREEAIR_OK);
      ck_assert_double_eq_tol(w, integral(polytropic_volume, &c, p1, p2), 1e-11 * w);
    }
}
END_TEST

int main(void)
{
  gsl_set_error_handler_off();
  TCase *all = tcase_create("all");
  tcase_set_timeout(all, 120);
  tcase_add_test(all, path);
  tcase_add_test(all, efficiency);
  tcase_add_test(all, work_is_the_integral_of_v_dp);
  return run_case("real-gas compression against GSL", all);
}
