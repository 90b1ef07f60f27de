/* SPDX-License-Identifier: MIT */
/* Readings as numbers that a machine in any condition predicts, with what is
 * not known of a sound unit: scatter, laws of the model, gauges. */
#ifndef FREEAIR_INTERNAL_INFERENCE_SYMPTOMS_H
#define FREEAIR_INTERNAL_INFERENCE_SYMPTOMS_H

#include "internal/gauss.h"
#include "internal/inference.h"
#include "internal/inference_plant.h"

enum {
  FREEAIR__SYMPTOMS = FREEAIR__GAUSS_MOST,
  FREEAIR__SYMPTOM_SEGMENTS = 6,
  FREEAIR__SYMPTOM_INTERSTAGE = 6
};

enum freeair__symptom_kind {
  FREEAIR__SYMPTOM_DELIVERY,  /* net free air over the run from empty */
  FREEAIR__SYMPTOM_EMPTY,     /* time between two pressures of that run */
  FREEAIR__SYMPTOM_CUTIN,     /* time of the run from cut-in */
  FREEAIR__SYMPTOM_LEVEL,     /* no delivery is left at a pressure */
  FREEAIR__SYMPTOM_RATIO,     /* logarithm of a quantity at a pressure */
  FREEAIR__SYMPTOM_DIFFERENCE, /* a temperature at a pressure */
  FREEAIR__SYMPTOM_MOTOR,     /* logarithm of the motor speed */
  FREEAIR__SYMPTOM_FILTER,    /* drop of the filter over ambient pressure */
  FREEAIR__SYMPTOM_TABLE      /* moves as the practice table says */
};

typedef struct freeair__symptom {
  int32_t reading;
  int32_t kind;
  int32_t quantity;
  double from_p;    /* pressures as read */
  double to_p;
  double reference; /* of the sound machine, in the reading's unit */
  double found;     /* in the scale in which it is compared */
  double noise;     /* standard uncertainty of that */
  double form;      /* of a shift by a fault: relative standard uncertainty */
  double wide;      /* standard deviation of a wrong reading */
} freeair__symptom;

/* A condition of machine and system. */
typedef struct freeair__condition {
  freeair__plant_map map;
  freeair__plant_system system;
  double gauge_pa;    /* reading less true pressure at cut-out; in proportion below */
  double motor_ratio; /* motor speed over pump speed */
  double warm_k;      /* gas and wall of the receiver at cut-in, just drawn down */
  double wall_k;
} freeair__condition;

typedef struct freeair__symptoms {
  const freeair__plant *plant;
  int n;
  freeair__symptom symptom[FREEAIR__SYMPTOMS];
  freeair__gauss_blocks blocks;        /* by reading */
  double from_p;                       /* start of the run from empty */
  double motor_efficiency;
  double draw_down_s;
  double sound[FREEAIR__SYMPTOMS];     /* what the sound machine predicts */
  float shared[FREEAIR__SYMPTOMS][FREEAIR__SYMPTOMS]; /* correlation of the errors of form, j < i */
} freeair__symptoms;

/* What was read, as it came. */
typedef struct freeair__symptom_input {
  const freeair_evidence_readings *found;
  const freeair_evidence_readings *expected; /* of what the description does not have */
  const freeair_inference_visit *visit;
  const freeair_inference_scatter *scatter;
  const double *log_t_s;
  const double *log_p_pa;
  size_t n_log;
  const double *interstage_at_pa;
  const double *interstage_pa;
  size_t n_interstage;
} freeair__symptom_input;

/* Lists the symptoms of what was read, with the sound machine's predictions. */
int32_t freeair__symptoms_start(const freeair__plant *plant, const freeair__symptom_input *in, freeair__symptoms *s);

/* Gas and wall of the receiver at cut-in, just drawn down from cut-out. */
void freeair__symptoms_draw_down(const freeair__plant *plant, const freeair__plant_system *system, double duration,
                                 double *gas_k, double *wall_k);

void freeair__symptoms_condition(const freeair__symptoms *s, freeair__condition *sound);

/* What a condition predicts; those of the table as if sound. */
void freeair__symptoms_predict(const freeair__symptoms *s, const freeair__condition *c, double *y);

/* The share of the sound rate that a rate's prediction stands for; 1 for others. */
double freeair__symptoms_gain(const freeair__symptoms *s, int i, double y);

#endif
