/* SPDX-License-Identifier: MIT */
/* What is not known of a sound unit, and how it moves the readings together. */
#ifndef FREEAIR_INTERNAL_INFERENCE_SCATTER_H
#define FREEAIR_INTERNAL_INFERENCE_SCATTER_H

#include "internal/inference_symptoms.h"

/* Lower triangle. The rows of rates are those of the rate itself, whatever is left of it. */
typedef struct freeair__covariance {
  double c[FREEAIR__SYMPTOMS][FREEAIR__SYMPTOMS];
} freeair__covariance;

/* Steps each unknown by its standard deviation, about the sound machine. */
int32_t freeair__scatter_covariance(const freeair__symptoms *s, const freeair_inference_scatter *sd,
                                    freeair__covariance *of);

#endif
