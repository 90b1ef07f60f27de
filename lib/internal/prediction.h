/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_INTERNAL_PREDICTION_H
#define FREEAIR_INTERNAL_PREDICTION_H

#include "internal/receiver_run.h"
#include <freeair/prediction.h>

/* A run made ready: pump mapped, receiver in its first state. */
typedef struct freeair__pump_run {
  freeair__cycle c;
  freeair__delivery_map map;
  freeair__receiver receiver;
  freeair__receiver_state start;
  freeair_prediction_run run;
  double from_p; /* true pressures */
  double to_p;
} freeair__pump_run;

/* Reads and checks everything, and finds the operating points up to a gauge
 * reading (NaN: the end of the run). For inference, which asks again and again
 * about similar machines, starts takes as many solutions as the run has nodes:
 * all zero at first, then as the call before left them. points may be null, or
 * receives the operating points at the nodes. */
int32_t freeair__pump_run_prepare(const freeair_machine *machine, const freeair_machine_site *site,
                                  const freeair_prediction_run *run, double to_reading, freeair__pump_run *q,
                                  freeair__cycle_start *starts, freeair_cycle_result *points, int32_t *evaluations);

/* Prepares a run and goes through it to the times of readings. */
int32_t freeair__pump_run_times(const freeair_machine *machine, const freeair_machine_site *site,
                                const freeair_prediction_run *run, const double *p_pa, double *t_s, size_t n,
                                freeair__pump_run *q, freeair_cycle_result *points, freeair_prediction_result *r);

#endif
