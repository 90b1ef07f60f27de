/* SPDX-License-Identifier: MIT */
/* Isothermal and adiabatic pipe flow against the momentum equation, integrated
 * along the pipe by a Runge-Kutta method of the GNU Scientific Library: the closed
 * forms are not used on this side. */
#include <freeair/fanno.h>
#include <freeair/isothermal.h>
#include <freeair/pipe.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>
#include <math.h>
#include <stdlib.h>

typedef struct pipe {
  double flux;     /* kg/(s m2) */
  double friction; /* f/d */
  double r;
  double t;
  double k;
} pipe;

/* p' = -f/(2 d) rho v^2 / (1 - v^2/(R T)) */
static int isothermal(double x, const double *p, double *slope, void *data)
{
  const pipe *w = data;
  (void)x;
  double rt = w->r * w->t;
  double v = w->flux * rt / p[0];
  slope[0] = -0.5 * w->friction * w->flux * v / (1.0 - v * v / rt);
  return GSL_SUCCESS;
}

/* State p, T: momentum, continuity and constant stagnation temperature. */
static int adiabatic(double x, const double *y, double *slope, void *data)
{
  const pipe *w = data;
  (void)x;
  double v = w->flux * w->r * y[1] / y[0];
  double cp = w->r * w->k / (w->k - 1.0);
  /* G dv + dp = -f/(2d) G v dx, cp dT + v dv = 0, dv/v = dT/T - dp/p */
  double force = 0.5 * w->friction * w->flux * v;
  double a = v * v / (cp * y[1] + v * v); /* dT/T = -(v^2/(cp T)) dv/v, so that dv/v = -dp/p (1 - a) */
  double dp = -force / (1.0 - w->flux * v / y[0] * (1.0 - a));
  double dv = -dp / y[0] * (1.0 - a) * v;
  slope[0] = dp;
  slope[1] = -v * dv / cp;
  return GSL_SUCCESS;
}

static void integrate(int (*f)(double, const double *, double *, void *), size_t n, pipe *w, double length, double *y)
{
  gsl_odeiv2_system system = {f, NULL, n, w};
  gsl_odeiv2_driver *driver = gsl_odeiv2_driver_alloc_y_new(&system, gsl_odeiv2_step_rk8pd, 1e-4 * length, 0.0, 1e-13);
  ck_assert_ptr_nonnull(driver);
  double x = 0.0;
  ck_assert_int_eq(gsl_odeiv2_driver_apply(driver, &x, length, y), GSL_SUCCESS);
  gsl_odeiv2_driver_free(driver);
}

START_TEST(isothermal_by_integration)
{
  for (int i = 0; i < 12; i++) {
    freeair_isothermal_pipe p = FREEAIR_ISOTHERMAL_PIPE_INIT;
    p.length_m = 5.0 * pow(1.6, i);
    p.diameter_m = 0.03;
    p.t_k = 300.0;
    double mass, f, reached;
    double p2 = 8e5 * (i % 2 ? 0.95 : 0.4);
    int32_t status = freeair_isothermal_flow_from_pressures(&p, 8e5, p2, &mass, &f);
    if (status == FREEAIR_ERR_NO_SOLUTION) continue;
    ck_assert_int_eq(status, FREEAIR_OK);
    pipe w = {mass / (0.25 * 3.14159265358979323846 * 9e-4), f / 0.03, 287.05287, 300.0, 1.4};
    reached = 8e5;
    integrate(isothermal, 1, &w, p.length_m, &reached);
    ck_assert_double_le(fabs(reached / p2 - 1.0), 1e-9);
  }
}
END_TEST

START_TEST(adiabatic_by_integration)
{
  for (int i = 0; i < 12; i++) {
    double mach = 0.04 * (i + 1);
    double p1 = 6e5;
    double t1 = 310.0;
    double diameter = 0.02;
    double f = 0.024;
    double most, p2, t2, mach2;
    ck_assert_int_eq(freeair_fanno_parameter(mach, 1.4, &most), FREEAIR_OK);
    double length = 0.9 * most * diameter / f;
    double flux = mach * p1 * sqrt(1.4 / (287.05 * t1));
    double mass = flux * 0.25 * 3.14159265358979323846 * diameter * diameter;
    ck_assert_int_eq(freeair_fanno_outlet(mass, p1, t1, diameter, f * length / diameter, 1.4, 287.05, &p2, &t2, &mach2),
                     FREEAIR_OK);
    pipe w = {flux, f / diameter, 287.05, t1, 1.4};
    double y[2] = {p1, t1};
    integrate(adiabatic, 2, &w, length, y);
    ck_assert_double_le(fabs(y[0] / p2 - 1.0), 1e-9);
    ck_assert_double_le(fabs(y[1] / t2 - 1.0), 1e-10);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, isothermal_by_integration);
  tcase_add_test(all, adiabatic_by_integration);
  return run_case("pipe reference", all);
}
