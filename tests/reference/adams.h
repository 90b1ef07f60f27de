/* SPDX-License-Identifier: MIT */
/* An initial value problem solved closely by the Adams method of SUNDIALS. */
#ifndef FREEAIR_TESTS_REFERENCE_ADAMS_H
#define FREEAIR_TESTS_REFERENCE_ADAMS_H

#include <check.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

typedef struct initial_value {
  CVRhsFn slope;
  CVRootFn end; /* has a root where the integration ends; null where it ends at a time */
  void *of;     /* what both are given */
  double absolute_tolerance;
  int n;
} initial_value;

/* Carries y from time 0 to the end, which is at until_s at the latest; returns the time. */
static inline double adams(const initial_value *problem, double *y, double until_s)
{
  SUNContext context;
  ck_assert_int_eq(SUNContext_Create(NULL, &context), 0);
  N_Vector at = N_VNew_Serial(problem->n, context);
  for (int i = 0; i < problem->n; i++) NV_Ith_S(at, i) = y[i];
  void *cvode = CVodeCreate(CV_ADAMS, context);
  SUNMatrix matrix = SUNDenseMatrix(problem->n, problem->n, context);
  SUNLinearSolver solver = SUNLinSol_Dense(at, matrix, context);
  ck_assert_int_eq(CVodeInit(cvode, problem->slope, 0.0, at), CV_SUCCESS);
  ck_assert_int_eq(CVodeSStolerances(cvode, 1e-12, problem->absolute_tolerance), CV_SUCCESS);
  ck_assert_int_eq(CVodeSetUserData(cvode, problem->of), CV_SUCCESS);
  ck_assert_int_eq(CVodeSetLinearSolver(cvode, solver, matrix), CV_SUCCESS);
  ck_assert_int_eq(CVodeSetMaxNumSteps(cvode, 1000000), CV_SUCCESS);
  if (problem->end != NULL)
    ck_assert_int_eq(CVodeRootInit(cvode, 1, problem->end), CV_SUCCESS);
  else
    ck_assert_int_eq(CVodeSetStopTime(cvode, until_s), CV_SUCCESS);
  realtype time = 0.0;
  const int ended = CVode(cvode, until_s, at, &time, CV_NORMAL);
  ck_assert(problem->end != NULL ? ended == CV_ROOT_RETURN : ended >= 0);
  for (int i = 0; i < problem->n; i++) y[i] = NV_Ith_S(at, i);
  SUNLinSolFree(solver);
  SUNMatDestroy(matrix);
  CVodeFree(&cvode);
  N_VDestroy(at);
  SUNContext_Free(&context);
  return time;
}

#endif
