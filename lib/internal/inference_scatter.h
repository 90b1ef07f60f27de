/* SPDX-License-Identifier: MIT */
/* What is not known of a unit, as the steps that each unknown makes in the
 * readings, of the sound machine or of one that is at fault. */
#ifndef FREEAIR_INTERNAL_INFERENCE_SCATTER_H
#define FREEAIR_INTERNAL_INFERENCE_SCATTER_H

#include "internal/inference_symptoms.h"

enum { FREEAIR__SCATTER_COLUMNS = 32, FREEAIR__SCATTER_MACHINES = 11 };

/* A machine at fault, or the sound one with no faults. */
typedef struct freeair__scatter_base {
  int n_faults; /* that need operating points of their own */
  int32_t fault[2];
  double severity[2];
  freeair__condition condition;
} freeair__scatter_base;

typedef struct freeair__scatter {
  int n;
  double by[FREEAIR__SCATTER_COLUMNS][FREEAIR__SYMPTOMS]; /* what one standard deviation of each moves */
} freeair__scatter;

/* The sound machine. */
typedef struct freeair__scatter_sound {
  freeair__scatter of;
  int n_maps;
  freeair__plant_map map[FREEAIR__SCATTER_MACHINES]; /* of the machines that were stepped */
  double rating[FREEAIR__SCATTER_COLUMNS]; /* steps of ln delivery at the rated pressure, over what makes the root */
  double rating_root;
} freeair__scatter_sound;

int32_t freeair__scatter_start(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                               freeair__scatter_sound *sound);

/* About a machine at fault, whose steps are taken by the same unknowns. The
 * steps of rates are those of the rate itself, whatever is left of it. */
int32_t freeair__scatter_of(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                            const freeair__scatter_sound *sound, const freeair__scatter_base *base,
                            freeair__scatter *of);

#endif
