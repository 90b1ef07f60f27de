/* SPDX-License-Identifier: MIT */
/* A service visit as a technician writes it down: one JSON file, quantities with
 * their units as text, anything left out that was not taken. */
#ifndef FREEAIR_VISIT_VISIT_H
#define FREEAIR_VISIT_VISIT_H

#include <freeair/freeair.h>

enum { VISIT_RUNS = 8, VISIT_POINTS = 256, VISIT_OBSERVATIONS = 96, VISIT_TEXT = 600 };

/* One timed rise of the receiver pressure. */
typedef struct visit_run {
  double p_from_pa;
  double p_to_pa;
  double duration_s;
  int32_t start;                /* freeair_pumpup_start */
  int32_t service_valve_closed; /* freeair_evidence_answer */
  size_t n_points;              /* more than two readings: times and pressures */
  double t_s[VISIT_POINTS];
  double p_pa[VISIT_POINTS];
} visit_run;

typedef struct visit_capacitor {
  int given;
  int is_start;
  double minimum_f;
  double maximum_f;
  double rated_f;
  double measured_f;
  double u_measured_f;
} visit_capacitor;

typedef struct visit_log {
  char file[VISIT_TEXT]; /* beside the visit's file unless absolute; empty for none */
  char time[80];         /* names of the columns */
  char pressure[80];
  char loaded[80]; /* optional: 1 while the machine compresses */
  char unit[24];
} visit_log;

typedef struct visit {
  const char *path;
  char title[VISIT_TEXT];
  char note[VISIT_TEXT];
  char complaint[VISIT_TEXT];
  int metric; /* report in bar, degC, L/min instead of psi, degF, cfm */
  double altitude_m;
  freeair_machine machine;
  freeair_machine_site site;
  double rated_uncertainty; /* of the rating, relative standard uncertainty */
  int32_t rated_reference;  /* freeair_reference_state of the rating */
  double u_receiver_m3;
  double piping_m3;
  freeair_evidence_readings readings;
  double readings_at_pa; /* receiver pressure at which they were taken; NaN for cut-out */
  int32_t observation[VISIT_OBSERVATIONS]; /* answers by freeair_evidence_observation */
  visit_run run[VISIT_RUNS];
  size_t n_runs;
  visit_capacitor capacitor[2];
  size_t n_capacitors;
  visit_log log;
  int32_t repaired;    /* the cause that was repaired before these readings; 0 for none */
  double air_m3_s;     /* free air that is used, as a mean over time */
  double energy_price; /* of a joule, in the currency named */
  char currency[16];
  char message[VISIT_TEXT]; /* what is wrong, with file and place */
} visit;

/* Reads a file. Returns 0 with message set when anything in it cannot be understood. */
int visit_read(visit *v, const char *path);

#endif
