/* SPDX-License-Identifier: MIT */
/* Random numbers of a visit: the same on every machine for the same series and number. */
#ifndef FREEAIR_INDEPENDENT_DICE_H
#define FREEAIR_INDEPENDENT_DICE_H

#include <stdint.h>

typedef struct dice {
  uint64_t state;
} dice;

dice dice_for(uint64_t series, uint64_t visit);

double dice_uniform(dice *d, double lo, double hi);

/* Uniform in the logarithm. */
double dice_log_uniform(dice *d, double lo, double hi);

double dice_normal(dice *d, double sd);

/* A factor about 1, log-normal. */
double dice_factor(dice *d, double relative_sd);

int dice_chance(dice *d, double probability);

#endif
