/* SPDX-License-Identifier: MIT */
/* Posterior over hypotheses that each hold one cause or two, with the same
 * posterior without each item of the evidence in turn. Weights are logarithms;
 * causes and items are small codes. */
#ifndef FREEAIR_INTERNAL_POSTERIOR_H
#define FREEAIR_INTERNAL_POSTERIOR_H

#include <stddef.h>

enum { FREEAIR__MAX_CAUSES = 32, FREEAIR__MAX_ITEMS = 96, FREEAIR__MOMENTS = 4 };

typedef struct freeair__posterior {
  size_t n_items;                                       /* item 0 stands for no item left out */
  double all[FREEAIR__MAX_ITEMS];
  double with[FREEAIR__MAX_CAUSES][FREEAIR__MAX_ITEMS]; /* hypotheses that hold the cause */
  double alone[FREEAIR__MAX_CAUSES];                    /* the hypothesis of the cause alone */
  double pairs;                                         /* hypotheses of two causes */
  double weight[FREEAIR__MAX_CAUSES];                   /* behind the moments */
  double moment[FREEAIR__MAX_CAUSES][FREEAIR__MOMENTS];
} freeair__posterior;

/* A running mean of n numbers and the logarithm of its weight: adds others. */
void freeair__blend(double *log_weight, double *mean, size_t n, double log_more, const double *more);

void freeair__posterior_start(freeair__posterior *p, size_t n_items);

/* Adds a hypothesis of the causes i and j, j = 0 for i alone: the logarithms of
 * prior times likelihood without each item. */
void freeair__posterior_add(freeair__posterior *p, int i, int j, const double *log_without);

/* Adds what a hypothesis says of one of its causes, to the mean over hypotheses. */
void freeair__posterior_moments(freeair__posterior *p, int cause, double log_weight, const double *moments);

/* Probability that the cause is present. */
double freeair__posterior_probability(const freeair__posterior *p, int cause);

/* What an item says: log-odds of the cause with it less those without it. Odds
 * are held within 1e12 to one. */
double freeair__posterior_reason(const freeair__posterior *p, int cause, size_t item);

#endif
