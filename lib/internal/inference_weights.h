/* SPDX-License-Identifier: MIT */
/* How well each hypothesis explains what was read and seen. */
#ifndef FREEAIR_INTERNAL_INFERENCE_WEIGHTS_H
#define FREEAIR_INTERNAL_INFERENCE_WEIGHTS_H

#include "internal/inference_hypotheses.h"
#include "internal/inference_scatter.h"

enum { FREEAIR__OWN = 6 /* ways about which what is not known is stepped anew */ };

/* Readings and answers that are plainly wrong. */
#define FREEAIR__WRONG_SHARE 0.02

/* Of what is not known of a unit. */
typedef struct freeair__covariance {
  double c[FREEAIR__SYMPTOMS][FREEAIR__SYMPTOMS];
} freeair__covariance;

/* The evidence of one point: logarithms of the density of all readings and
 * without those of each block. A reading that is wrong lies anywhere. */
typedef struct freeair__weighed {
  double all;
  double without[FREEAIR__GAUSS_BLOCKS];
  double below[FREEAIR__GAUSS_BLOCKS];
  double mean[FREEAIR__GAUSS_BLOCKS];
} freeair__weighed;

/* Weighs the readings about a prediction y. form is a factor on the relative
 * error of what faults do. Returns 0 where nothing can be said. */
int freeair__weigh(const freeair__symptoms *s, const freeair__covariance *unknown, const double *y,
                   const double *variance, const double *along, const double *across, double form,
                   freeair__weighed *out);

/* What the listed causes and all other evidence say of a reading. */
typedef struct freeair__prediction {
  double log_weight;
  double mean[2]; /* probability of lying below what was read; prediction */
} freeair__prediction;

/* What a way predicts at each size, kept for the pairs. */
typedef struct freeair__trace {
  float y[FREEAIR__SIZES][FREEAIR__SYMPTOMS];
  float log_weight[FREEAIR__SIZES]; /* prior of the size */
  double size[FREEAIR__SIZES];
} freeair__trace;

/* What is not known about a way at one of its sizes, less that about the sound machine. */
typedef struct freeair__own {
  int way;
  double position;
  freeair__scatter more;
} freeair__own;

typedef struct freeair__inference {
  const freeair__symptoms *s;
  const freeair__hypotheses *h;
  const freeair__scatter_sound *scatter;
  const int32_t *answers;
  freeair__covariance sound; /* of what is not known of a sound unit */
  freeair__own owned[FREEAIR__OWN];
  int n_owned;
  freeair__posterior posterior;
  freeair__prediction predictions[FREEAIR__GAUSS_BLOCKS];
  freeair__trace traces[FREEAIR__WAYS];
  double log_size[FREEAIR__CAUSES][FREEAIR__SIZES]; /* posterior of the size */
  double log_way[FREEAIR__WAYS];    /* posterior of the way */
} freeair__inference;

/* Weighs every hypothesis; s, h, scatter and answers of to are set. */
void freeair__inference_infer(freeair__inference *to, const freeair__priors *prior,
                              const freeair_inference_scatter *sd);

/* Position below which a share of the posterior of a cause lies; NaN where it
 * has no size. */
double freeair__inference_position(const freeair__inference *from, int cause, double share);

#endif
