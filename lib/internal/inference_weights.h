/* SPDX-License-Identifier: MIT */
/* How well each hypothesis explains what was read and seen. */
#ifndef FREEAIR_INTERNAL_INFERENCE_WEIGHTS_H
#define FREEAIR_INTERNAL_INFERENCE_WEIGHTS_H

#include "internal/inference_hypotheses.h"
#include "internal/inference_scatter.h"

enum { FREEAIR__DOUBTS = 4 };

/* Readings and answers that are plainly wrong. */
#define FREEAIR__WRONG_SHARE 0.02

/* The evidence of one point: logarithms of the density of all readings and
 * without those of each block. A reading that is wrong lies anywhere. */
typedef struct freeair__weighed {
  double all;
  double square; /* of the residuals, in standard deviations */
  double without[FREEAIR__GAUSS_BLOCKS];
  double below[FREEAIR__GAUSS_BLOCKS];
  double mean[FREEAIR__GAUSS_BLOCKS];
  double wrong[FREEAIR__GAUSS_BLOCKS]; /* with this block plainly wrong */
} freeair__weighed;

/* What is not known of a prediction besides the unit: what one standard
 * deviation of each further unknown moves, and variances of single symptoms. */
typedef struct freeair__doubt {
  int n;
  double by[FREEAIR__DOUBTS][FREEAIR__SYMPTOMS];
  double variance[FREEAIR__SYMPTOMS];
} freeair__doubt;

/* Weighs the readings about a prediction y. form is a factor on the relative
 * error of what faults do. Returns 0 where nothing can be said. */
int freeair__weigh(const freeair__symptoms *s, const freeair__covariance *unknown, const double *y,
                   const freeair__doubt *doubt, double form, freeair__weighed *out);

/* What the listed causes and all other evidence say of a reading. */
typedef struct freeair__prediction {
  double log_weight;
  double mean[2]; /* probability of lying below what was read; prediction */
  double log_wrong; /* weight of its being plainly wrong, all evidence considered */
} freeair__prediction;

/* What a way predicts at each size, kept for the pairs. */
typedef struct freeair__trace {
  float y[FREEAIR__SIZES][FREEAIR__SYMPTOMS];
  float log_weight[FREEAIR__SIZES]; /* prior of the size */
  float lost[FREEAIR__SIZES][FREEAIR__PLANT_POINTS]; /* of ln flow, a standard deviation of what this way leaves open */
  double size[FREEAIR__SIZES];
} freeair__trace;

typedef struct freeair__inference {
  const freeair__symptoms *s;
  freeair__hypotheses *h;
  const freeair__covariance *unknown; /* of a sound unit */
  const int32_t *answers;
  double clearance;                   /* standard deviation of its logarithm */
  freeair__posterior posterior;
  freeair__prediction predictions[FREEAIR__GAUSS_BLOCKS];
  freeair__trace traces[FREEAIR__WAYS];
  double log_size[FREEAIR__CAUSES][FREEAIR__SIZES]; /* posterior of the size */
  double log_way[FREEAIR__WAYS];    /* posterior of the way */
} freeair__inference;

/* Weighs every hypothesis; s, h, unknown, answers and clearance of to are set. */
int32_t freeair__inference_infer(freeair__inference *to, const freeair__priors *prior);

/* Position below which a share of the posterior of a cause lies; NaN where it
 * has no size. */
double freeair__inference_position(const freeair__inference *from, int cause, double share);

#endif
