/* SPDX-License-Identifier: MIT */
/* A pump-up test made complete: what its analysis and the expectation share. */
#ifndef FREEAIR_INTERNAL_PUMPUP_H
#define FREEAIR_INTERNAL_PUMPUP_H

#include <freeair/pumpup.h>

#include "internal/fill_fit.h"

typedef struct freeair__pumpup_setup {
  freeair_pumpup_test test; /* every field given, except measured temperatures that were not taken */
  double v_gas_m3;
  double ambient_read_pa; /* the barometric pressure with which gauge readings were made absolute */
  double scale;           /* of the gauge */
  double stretch;         /* of the time */
  double start_offset_k;  /* of the temperatures at the start */
  double start_uncertainty_k;
  /* the regular cycle found last, and what a change of its start comes back as */
  double cycle_gas_k;
  double cycle_wall_k;
  double cycle_back[2][2];
  int32_t cycle_known;
} freeair__pumpup_setup;

/* Reads the caller's test, checks it and fills in the defaults. The pressures and
 * the duration take the place of the test's, except where they are NaN; a table is
 * known by a pressure at the start. */
int32_t freeair__pumpup_read(const freeair_pumpup_test *caller, double p_start_pa, double p_end_pa, double duration_s,
                             freeair__pumpup_setup *setup);

freeair__tank freeair__pumpup_tank(const freeair__pumpup_setup *setup);
/* The same without the temperatures at the start. */
freeair__fill_model freeair__pumpup_model(const freeair__pumpup_setup *setup);

/* Vapour pressure of the air drawn in; pressure of the dry air in the receiver. */
double freeair__pumpup_vapour(const freeair_pumpup_test *t);
double freeair__pumpup_dry(const freeair_pumpup_test *t, double p_pa);

/* Temperatures of gas and wall at the start; for regular cycles the readings
 * are fitted as well. */
int32_t freeair__pumpup_start(freeair__pumpup_setup *setup, const freeair__fill_readings *readings, int warm,
                              freeair__fill_fit *fit, double *t_gas_k, double *t_wall_k);

/* Inputs of the setup that carry an uncertainty. */
enum freeair__pumpup_input {
  FREEAIR__PUMPUP_VOLUME,
  FREEAIR__PUMPUP_SCALE,
  FREEAIR__PUMPUP_TIME,
  FREEAIR__PUMPUP_BAROMETER,
  FREEAIR__PUMPUP_AMBIENT,
  FREEAIR__PUMPUP_HUMIDITY,
  FREEAIR__PUMPUP_START,
  FREEAIR__PUMPUP_END,
  FREEAIR__PUMPUP_INLET,
  FREEAIR__PUMPUP_UA_GAS,
  FREEAIR__PUMPUP_UA_WALL,
  FREEAIR__PUMPUP_C_WALL,
  FREEAIR__PUMPUP_INPUTS
};

/* Moves one input by so many standard uncertainties; 0 when it has none. */
int freeair__pumpup_move(freeair__pumpup_setup *setup, int input, double sigmas);

#endif
