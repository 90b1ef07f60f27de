/* SPDX-License-Identifier: MIT */
/* Second opinion from the GNU Scientific Library: works, heats and cycles by
 * quadrature, the motion by numerical derivatives, the optimum by a general
 * minimiser, the exponent by its own straight line. */
#include <freeair/freeair.h>

#include "../suite.h"
#include "calculus.h"

#include <check.h>
#include <gsl/gsl_deriv.h>
#include <gsl/gsl_fit.h>
#include <gsl/gsl_multimin.h>
#include <math.h>

static void same(double a, double b, double relative)
{
  ck_assert_msg(fabs(a - b) <= relative * fmax(fabs(a), fabs(b)), "%.17g is not %.17g", a, b);
}

static double integral(double (*f)(double, void *), void *of, double from, double to)
{
  return integral_of(f, of, from, to, 1e-12);
}

struct path {
  double r;
  double t1;
  double p1;
  double n;
};

/* v(p) on p v^n = constant, integrated over ln p */
static double volume_by_log(double log_p, void *of)
{
  const struct path *c = of;
  double p = exp(log_p);
  double v = c->r * c->t1 / c->p1 * pow(c->p1 / p, 1.0 / c->n);
  return v * p;
}

/* -T ds/d(ln p) = -(cp dT - v dp) */
static double heat_by_log(double log_p, void *of)
{
  const struct path *c = of;
  double m = (c->n - 1.0) / c->n;
  double t = c->t1 * pow(exp(log_p) / c->p1, m);
  return c->r * t - 3.5 * c->r * m * t;
}

START_TEST(work_is_the_integral_of_v_dp)
{
  const double exponents[] = {0.8, 1.0, 1.0 + 1e-9, 1.1, 1.3, 1.4, 1.8};
  for (size_t i = 0; i < sizeof exponents / sizeof exponents[0]; i++)
    for (double p2 = 1.001e5; p2 < 1e8; p2 *= 3.0) {
      struct path c = {287.05, 300.0, 1e5, exponents[i]};
      double w;
      double q;
      ck_assert_int_eq(freeair_compression_work_polytropic(c.r, c.t1, c.p1, p2, c.n, &w), FREEAIR_OK);
      same(w, integral(volume_by_log, &c, log(c.p1), log(p2)), 2e-11);
      ck_assert_int_eq(freeair_compression_heat_rejected(c.r, c.t1, c.p1, p2, c.n, 1.4, &q), FREEAIR_OK);
      if (c.n != 1.4) same(q, integral(heat_by_log, &c, log(c.p1), log(p2)), 2e-11);
    }
}
END_TEST

struct curve {
  double p_at;
  double v_at;
  double n;
};

static double pressure(double v, void *of)
{
  const struct curve *c = of;
  return c->p_at * pow(c->v_at / v, c->n);
}

/* Closed loop of p dV: two strokes by hand, two curves by quadrature. */
START_TEST(mean_effective_pressure_is_the_area_of_the_loop)
{
  for (double c = 0.02; c < 0.1; c += 0.02)
    for (double p2 = 1.5e5; p2 < 13e5; p2 *= 1.6)
      for (double nc = 1.05; nc < 1.45; nc += 0.13)
        for (double ne = 1.05; ne < 1.45; ne += 0.13) {
          const double p1 = 0.97e5;
          struct curve compression = {p1, 1.0 + c, nc};
          struct curve expansion = {p2, c, ne};
          double v2 = (1.0 + c) * pow(p1 / p2, 1.0 / nc);
          double v4 = c * pow(p2 / p1, 1.0 / ne);
          double loop = integral(pressure, &compression, v2, 1.0 + c) + p2 * (v2 - c) -
                        integral(pressure, &expansion, c, v4) - p1 * (1.0 + c - v4);
          double mep;
          ck_assert_int_eq(freeair_cylinder_mean_effective_pressure(p1, p2, c, nc, ne, &mep), FREEAIR_OK);
          same(mep, loop, 1e-10);
        }
}
END_TEST

/* The blower and the vane machine: the same loop with a jump of pressure at the outlet. */
START_TEST(built_in_ratio_is_the_area_of_its_loop)
{
  for (double u = 0.2; u < 1.0; u += 0.11)
    for (double p2 = 1e5; p2 < 12e5; p2 *= 1.7) {
      struct curve compression = {1e5, 287.05 * 300.0 / 1e5, 1.4};
      double v1 = compression.v_at;
      double loop = integral(pressure, &compression, u * v1, v1) + p2 * u * v1 - 1e5 * v1;
      double w;
      ck_assert_int_eq(freeair_rotary_work(287.05, 300.0, 1e5, p2, 1.4, u, &w), FREEAIR_OK);
      ck_assert_double_eq_tol(w, loop, 1e-10 * p2 * v1);
    }
}
END_TEST

static double crank_position(double angle, void *of)
{
  double x;
  (void)of;
  freeair_crank_position(0.09, 0.17, angle, &x);
  return x;
}

static double crank_velocity(double angle, void *of)
{
  double x;
  (void)of;
  freeair_crank_velocity(0.09, 0.17, 1.0, angle, &x);
  return x;
}

START_TEST(motion_by_derivatives)
{
  const double turn = 2.0 * 3.14159265358979323846;
  gsl_function position = {crank_position, NULL};
  gsl_function velocity = {crank_velocity, NULL};
  for (double a = -6.0; a < 6.0; a += 0.17) {
    double slope;
    double error;
    double found;
    gsl_deriv_central(&position, a, 1e-2, &slope, &error);
    ck_assert_int_eq(freeair_crank_velocity(0.09, 0.17, 1.0, a, &found), FREEAIR_OK);
    ck_assert_double_eq_tol(found, turn * slope, 10.0 * turn * error + 1e-10);
    gsl_deriv_central(&velocity, a, 1e-2, &slope, &error);
    ck_assert_int_eq(freeair_crank_inertia_load(1.0, 0.09, 0.17, 1.0, a, &found), FREEAIR_OK);
    ck_assert_double_eq_tol(found, -turn * slope, 10.0 * turn * error + 1e-8);
  }
}
END_TEST

static const double t_in[] = {298.0, 313.0, 318.0};
static const double exponents[] = {1.32, 1.3, 1.28};
static const double drops[] = {2000.0, 8000.0, 20000.0};

static double total_work(const gsl_vector *x, void *of)
{
  const double p[] = {exp(gsl_vector_get(x, 0)), exp(gsl_vector_get(x, 1)), 40e5};
  double each[3];
  double t[3];
  double w;
  (void)of;
  return freeair_multistage_work(287.05, 1e5, t_in, exponents, drops, p, 3, each, t, &w) < 0 ? 1e12 : w;
}

START_TEST(optimum_by_a_general_minimiser)
{
  double p[3];
  ck_assert_int_eq(freeair_multistage_optimum(1e5, 40e5, t_in, exponents, drops, 3, p), FREEAIR_OK);
  gsl_multimin_function function = {total_work, 2, NULL};
  gsl_vector *x = gsl_vector_alloc(2);
  gsl_vector *step = gsl_vector_alloc(2);
  gsl_vector_set(x, 0, log(3e5));
  gsl_vector_set(x, 1, log(11e5));
  gsl_vector_set_all(step, 0.05);
  gsl_multimin_fminimizer *search = gsl_multimin_fminimizer_alloc(gsl_multimin_fminimizer_nmsimplex2, 2);
  ck_assert_int_eq(gsl_multimin_fminimizer_set(search, &function, x, step), 0);
  for (int i = 0; i < 2000 && gsl_multimin_test_size(gsl_multimin_fminimizer_size(search), 1e-12) != 0; i++)
    if (gsl_multimin_fminimizer_iterate(search) != 0) break;
  /* a minimum is flat: its place is known to the root of the rounding of its value */
  same(exp(gsl_vector_get(search->x, 0)), p[0], 1e-6);
  same(exp(gsl_vector_get(search->x, 1)), p[1], 1e-6);
  gsl_vector_set(x, 0, log(p[0]));
  gsl_vector_set(x, 1, log(p[1]));
  ck_assert_double_le(total_work(x, NULL), search->fval * (1.0 + 1e-15));
  gsl_multimin_fminimizer_free(search);
  gsl_vector_free(step);
  gsl_vector_free(x);
}
END_TEST

START_TEST(exponent_by_a_straight_line)
{
  enum { POINTS = 20 };
  double p[POINTS];
  double v[POINTS];
  double x[POINTS];
  double y[POINTS];
  for (int i = 0; i < POINTS; i++) {
    v[i] = 1e-3 * (1.0 - 0.03 * i);
    p[i] = 1e5 * pow(v[0] / v[i], 1.32) * (1.0 + 0.01 * sin(9.0 * i));
    x[i] = log(v[i]);
    y[i] = log(p[i]);
  }
  double c0;
  double c1;
  double cov00;
  double cov01;
  double cov11;
  double squares;
  ck_assert_int_eq(gsl_fit_linear(x, 1, y, 1, POINTS, &c0, &c1, &cov00, &cov01, &cov11, &squares), 0);
  double n;
  double u;
  ck_assert_int_eq(freeair_indicator_exponent(p, v, POINTS, &n, &u), FREEAIR_OK);
  same(n, -c1, 1e-11);
  same(u, sqrt(cov11), 1e-10);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("gsl");
  tcase_set_timeout(tc, 60);
  tcase_add_test(tc, work_is_the_integral_of_v_dp);
  tcase_add_test(tc, mean_effective_pressure_is_the_area_of_the_loop);
  tcase_add_test(tc, built_in_ratio_is_the_area_of_its_loop);
  tcase_add_test(tc, motion_by_derivatives);
  tcase_add_test(tc, optimum_by_a_general_minimiser);
  tcase_add_test(tc, exponent_by_a_straight_line);
  return run_case("compression reference", tc);
}
