/* SPDX-License-Identifier: MIT */
/* Which inflow explains pressures read while a tank fills: the lumped tank
 * is run forward, and its starting pressure, its inflow and the course of the
 * inflow with pressure are fitted to the readings by weighted least squares
 * (Gauss-Newton, damped when a step fails). Two readings are met exactly; the
 * course of the inflow then stays at its expected value. */
#ifndef FREEAIR_INTERNAL_FILL_FIT_H
#define FREEAIR_INTERNAL_FILL_FIT_H

#include <stddef.h>
#include <stdint.h>

#include "internal/tank.h"

#define FREEAIR__FILL_PARAMETERS 4

/* Readings and how they are to be taken: true pressure = ambient + scale
 * (reading - ambient_read), time from the first reading times stretch. */
typedef struct freeair__fill_readings {
  const double *t_s;
  const double *p_pa;
  size_t n;
  double ambient_pa;
  double ambient_read_pa;
  double scale;
  double stretch;
} freeair__fill_readings;

typedef struct freeair__fill_model {
  freeair__tank tank;
  double t_start_k;
  double t_wall_start_k;
  double p0_pa; /* the inflow is stated relative to its value at this pressure */
  double span_pa;
  double fall; /* expected course of the inflow and its standard uncertainty */
  double fall_uncertainty;
  double bend_uncertainty;
  double reading_pa;   /* standard uncertainty of one reading */
  int32_t use_scatter; /* let the scatter about the fit decide it, where there are eight readings or more */
} freeair__fill_model;

typedef struct freeair__fill_fit {
  double theta[FREEAIR__FILL_PARAMETERS]; /* starting pressure / span, inflow / scale, fall, bend */
  double w_scale_kg_s;
  double duration_s;
  double p_start_pa;
  double p_end_pa;
  double t_end_k;
  double scatter_pa; /* standard deviation of one reading as used */
  freeair__tank_state end;
  /* derivatives with respect to theta, and its covariance from the readings
   * and from what was expected of the course of the inflow */
  double p_start_gradient[FREEAIR__FILL_PARAMETERS];
  double p_end_gradient[FREEAIR__FILL_PARAMETERS];
  double t_end_gradient[FREEAIR__FILL_PARAMETERS];
  double from_readings[FREEAIR__FILL_PARAMETERS][FREEAIR__FILL_PARAMETERS];
  double from_course[FREEAIR__FILL_PARAMETERS][FREEAIR__FILL_PARAMETERS];
} freeair__fill_fit;

/* A reading as the model sees it. */
double freeair__fill_pressure(const freeair__fill_readings *readings, size_t i);
double freeair__fill_time(const freeair__fill_readings *readings, size_t i);

/* warm: start from the parameters and the scatter that fit holds. Status FREEAIR_OK,
 * FREEAIR_ERR_NO_CONVERGENCE or FREEAIR_ERR_NO_SOLUTION. */
int32_t freeair__fill_fit_run(const freeair__fill_model *model, const freeair__fill_readings *readings, int warm,
                              freeair__fill_fit *fit);

/* The inflow that a fit found. */
freeair__inflow freeair__fill_inflow(const freeair__fill_model *model, const freeair__fill_fit *fit);

/* Standard uncertainty of a result with this gradient under this covariance. */
double freeair__fill_uncertainty(const double covariance[FREEAIR__FILL_PARAMETERS][FREEAIR__FILL_PARAMETERS],
                                 const double *gradient);

#endif
