/* SPDX-License-Identifier: MIT */
/* Reading a pressure log: which samples count, where it has to be cut, and how
 * the pressure turns. */
#ifndef FREEAIR_INTERNAL_PRESSURE_LOG_H
#define FREEAIR_INTERNAL_PRESSURE_LOG_H

#include <freeair/pressure_log.h>

typedef struct freeair__log {
  const double *t_s;
  const double *p_pa;
  const int32_t *state; /* may be null */
  size_t n;
  /* how it is read */
  double step_s; /* median step */
  double gap_s;
  double frozen_s;
  double noise_pa;
  double quantum_pa; /* resolution of the pressure, 0 when finer than it matters */
  double repeats;    /* share of readings that equal the one before, long standstills aside */
  double highest_pa; /* of all pressures, single outliers aside */
  double lowest_pa;
  double band_pa;
  double settle_s;
  double cut_in_pa; /* NaN until known */
  double cut_out_pa;
  double slack_pa; /* how far turns may miss these */
  double idle_fall_pa_s; /* how fast the pressure falls from the cut-out, 0 until known */
  size_t n_used;
  int regular; /* turns where a pressure switch may make them */
} freeair__log;

/* Walks through the samples [next, end) that count. */
typedef struct freeair__log_reader {
  const freeair__log *log;
  size_t next;
  size_t end;
  double last_s;
  size_t left_out;
  int set_back; /* the clock was set back just before the sample returned last */
} freeair__log_reader;

freeair__log_reader freeair__log_read(const freeair__log *log, size_t first, size_t last);
int freeair__log_sample(freeair__log_reader *reader, size_t *index);

/* Noise, steps, resolution: everything of a log that can be said before it is
 * cut. 0 when too few readings are usable. gap_s and noise_pa may be given. */
int freeair__log_measure(freeair__log *log);

/* A stretch without gaps (PIECE), a gap or a standstill. */
enum freeair__log_part_kind { FREEAIR__LOG_PIECE, FREEAIR__LOG_GAP, FREEAIR__LOG_FROZEN };
typedef struct freeair__log_part {
  int kind;
  size_t first; /* samples; of a gap, the last before and the first after it */
  size_t last;
} freeair__log_part;

typedef struct freeair__log_parts {
  freeair__log_reader reader;
  size_t ahead; /* sample read but not used yet */
  size_t checked; /* up to here standstills are known to be none */
  size_t previous;
  int has_ahead;
  int has_previous;
} freeair__log_parts;

freeair__log_parts freeair__log_cut(const freeair__log *log);
int freeair__log_part_next(freeair__log_parts *parts, freeair__log_part *part);

/* A stretch between two turns of the pressure by band_pa at least. Ends of the
 * stretch that was looked at count as turns. */
typedef struct freeair__log_leg {
  size_t first;
  size_t last;
  double p_first_pa;
  double p_last_pa;
  int direction; /* 1 rising, -1 falling, 0 when the whole stretch moves less */
  int first_turn; /* 1 when it begins at a turn, not at the edge */
  int last_turn; /* 2 when it has turned by less than band_pa so far */
} freeair__log_leg;

typedef struct freeair__log_legs {
  freeair__log_reader reader;
  size_t last;
  size_t at[3]; /* the last three samples, for a median against single outliers */
  size_t n_read;
  size_t turn;
  double turn_pa;
  size_t low;
  double low_pa;
  size_t high;
  double high_pa;
  int direction;
  int has_turn;
  int done;
} freeair__log_legs;

freeair__log_legs freeair__log_turns(const freeair__log *log, size_t first, size_t last);
int freeair__log_leg_next(freeair__log_legs *legs, freeair__log_leg *leg);

/* Finds cut-in and cut-out from the turns of the whole log, where not given;
 * tries narrower bands than the one set when that was not given and shows no turn. */
void freeair__log_find_switch(freeair__log *log, int band_given);

/* What the machine does in a leg: one of freeair_pressure_log_kind. A leg that
 * falls below the cut-in is split: *split is where it does, else leg->last. */
int32_t freeair__log_judge(const freeair__log *log, const freeair__log_leg *leg, size_t *split);

/* The phases of a log that is measured and whose switch is found. */
int32_t freeair__log_phases(const freeair__log *log, char *phases, size_t stride, size_t capacity, size_t *n_found);

/* Reads and checks the caller's options. */
int32_t freeair__log_options_read(const freeair_pressure_log_options *caller, freeair_pressure_log_options *o);

#endif
