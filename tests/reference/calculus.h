/* SPDX-License-Identifier: MIT */
/* Integrals, derivatives and roots by the GNU Scientific Library. */
#ifndef FREEAIR_TESTS_REFERENCE_CALCULUS_H
#define FREEAIR_TESTS_REFERENCE_CALCULUS_H

#include <check.h>
#include <gsl/gsl_deriv.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_integration.h>
#include <gsl/gsl_roots.h>

static inline double integral_of(double (*f)(double, void *), void *of, double from, double to, double accuracy)
{
  enum { INTERVALS = 1000 };
  gsl_integration_workspace *space = gsl_integration_workspace_alloc(INTERVALS);
  gsl_function function = {f, of};
  double result;
  double error;
  const int status = gsl_integration_qag(&function, from, to, 0.0, accuracy, INTERVALS, GSL_INTEG_GAUSS61, space,
                                         &result, &error);
  gsl_integration_workspace_free(space);
  ck_assert_int_eq(status, GSL_SUCCESS);
  return result;
}

/* By differences over steps of a thousandth of x. */
static inline double slope_of(double (*f)(double, void *), void *of, double x)
{
  gsl_function function = {f, of};
  double result;
  double error;
  ck_assert_int_eq(gsl_deriv_central(&function, x, 1e-3 * x, &result, &error), GSL_SUCCESS);
  return result;
}

/* Brent's root between two ends, to within accuracy + relative |root| or as near as 500 steps come. */
static inline double root_of(double (*f)(double, void *), void *of, double from, double to, double accuracy,
                             double relative)
{
  gsl_function function = {f, of};
  gsl_root_fsolver *solver = gsl_root_fsolver_alloc(gsl_root_fsolver_brent);
  ck_assert_ptr_nonnull(solver);
  ck_assert_int_eq(gsl_root_fsolver_set(solver, &function, from, to), GSL_SUCCESS);
  int wide = GSL_CONTINUE;
  for (int i = 0; wide == GSL_CONTINUE && i < 500; i++) {
    ck_assert_int_eq(gsl_root_fsolver_iterate(solver), GSL_SUCCESS);
    wide = gsl_root_test_interval(gsl_root_fsolver_x_lower(solver), gsl_root_fsolver_x_upper(solver), accuracy,
                                  relative);
  }
  const double root = gsl_root_fsolver_root(solver);
  gsl_root_fsolver_free(solver);
  return root;
}

#endif
