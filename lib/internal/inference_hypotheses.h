/* SPDX-License-Identifier: MIT */
/* What can be wrong, as conditions of the machine: each cause in one or more
 * ways, each way over its sizes. */
#ifndef FREEAIR_INTERNAL_INFERENCE_HYPOTHESES_H
#define FREEAIR_INTERNAL_INFERENCE_HYPOTHESES_H

#include "internal/diagnosis.h"
#include "internal/inference_symptoms.h"

enum {
  FREEAIR__FAMILIES = 15,
  FREEAIR__WAYS = 40,
  FREEAIR__SIZES = 16 /* nodes over the size of a fault */
};

enum freeair__way_kind {
  FREEAIR__WAY_TABLE,    /* pump and system as sound */
  FREEAIR__WAY_FAMILY,   /* of the crank-angle model */
  FREEAIR__WAY_BELT,     /* the speed family with the motor at its speed */
  FREEAIR__WAY_LEAK,     /* behind the pump */
  FREEAIR__WAY_DEMAND,
  FREEAIR__WAY_UNLOADER,
  FREEAIR__WAY_WATER,
  FREEAIR__WAY_GAUGE
};

/* One way in which a cause shows. */
typedef struct freeair__way {
  int32_t cause;
  int32_t kind;
  int32_t fault;     /* whose severity it is told in */
  double share;      /* of the cause */
  int first;         /* family, or -1 */
  int second;        /* another one that shares the size, or -1 */
  double sign;       /* of readings that the table moves */
  double seen;       /* how much the test sees of it */
  double typical;    /* most probable size; 0: severities are equally probable */
} freeair__way;

typedef struct freeair__hypotheses {
  const freeair__symptoms *symptoms;
  freeair__condition sound;
  freeair__plant_family family[FREEAIR__FAMILIES];
  int needed[FREEAIR__FAMILIES];
  int finished[FREEAIR__FAMILIES]; /* mapped as far as it goes */
  int stopped[FREEAIR__FAMILIES]; /* larger severities would contradict the times */
  freeair__way way[FREEAIR__WAYS];
  int n_ways;
  double least_share; /* of the sound delivery that the times leave room for */
} freeair__hypotheses;

/* One size of one way: a cell of its position from 0 to 1. */
typedef struct freeair__node {
  double weight; /* prior of the cell; 0: this size cannot be */
  double counted; /* what it counts in the norm */
  double size;
} freeair__node;

/* Lists the ways of the causes with a prior. */
void freeair__hypotheses_start(const freeair__symptoms *symptoms, const freeair_diagnosis_subject *subject,
                                  const freeair__priors *prior, freeair__hypotheses *h);

/* Maps a family at one severity more, coarsely in the pressure if it may; the
 * walk goes with the family. */
int32_t freeair__hypotheses_grow(freeair__hypotheses *h, int family, int coarse, freeair__plant_walk *walk);

/* Maps no more of it: what is worse does not fit. */
void freeair__hypotheses_stop(freeair__hypotheses *h, int family);

/* The condition at the worst severity that is mapped. */
void freeair__hypotheses_worst(const freeair__hypotheses *h, const freeair__way *way, freeair__condition *condition);

/* Node k of a way, and its condition. */
void freeair__hypotheses_node(const freeair__hypotheses *h, const freeair__way *way, int k, freeair__node *node,
                              freeair__condition *condition);

/* Size, severity (NaN for none) and condition of a way at a position. */
void freeair__hypotheses_condition(const freeair__hypotheses *h, const freeair__way *way, double position,
                                   double *size, double *severity, freeair__condition *condition);

/* Of ln flow at each point, a standard deviation of what a way leaves open at
 * its condition: the second stage's clearance (of so much), or how a belt's slip
 * grows with load. */
void freeair__hypotheses_open(const freeair__hypotheses *h, const freeair__way *way, double size, double clearance,
                              const freeair__condition *c, float lost[FREEAIR__PLANT_POINTS]);

/* Adds what the table says of a way at a size: shifts of the predictions, and
 * the variances of these. */
void freeair__hypotheses_table(const freeair__hypotheses *h, const freeair__way *way, double size, double *y,
                               double *variance);

#endif
