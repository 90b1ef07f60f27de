/* SPDX-License-Identifier: MIT */
/* The tables behind the likelihoods, and how to look a line up: NULL where the
 * tables have none. */
#ifndef FREEAIR_INTERNAL_LIKELIHOOD_H
#define FREEAIR_INTERNAL_LIKELIHOOD_H

#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/likelihood.h>

/* delivery, empty, cutin: slopes of the pump-up test; level, psig, width: the
 * level-off pressure. */
typedef struct freeair__likelihood_cause {
  double prior;
  double size;
  double cost;
  double delivery;
  double empty;
  double cutin;
  double level;
  double psig;
  double width;
  uint32_t cautions;
  int32_t two_sided;
} freeair__likelihood_cause;

/* How likely an observation is with a cause. */
typedef struct freeair__likelihood_hit {
  int32_t observation;
  int32_t cause;
  double hit;
  int32_t basis;
} freeair__likelihood_hit;

/* Scale, standard uncertainty of the reading, of the expectation, expected share
 * where none need be given; when something else is wrong, the spread of the
 * reading if that affects it, and how often it does. */
typedef struct freeair__likelihood_reading {
  int32_t scale;
  double u_found;
  double u_expected;
  double expected;
  double wide;
  double affected;
} freeair__likelihood_reading;

/* How a reading answers to the size of a cause. */
typedef struct freeair__likelihood_slope {
  int32_t reading;
  int32_t cause;
  double slope;
  double limit;
  double spread;
  int32_t basis;
} freeair__likelihood_slope;

const freeair__likelihood_cause *freeair__likelihood_cause_of(int32_t cause);

/* The probability of yes with none of the listed causes present. */
const double *freeair__likelihood_false_alarm_of(int32_t observation);
const freeair__likelihood_hit *freeair__likelihood_hit_of(int32_t observation, int32_t cause);

const freeair__likelihood_reading *freeair__likelihood_reading_of(int32_t reading);
const freeair__likelihood_slope *freeair__likelihood_slope_of(int32_t reading, int32_t cause);

#endif
