/* SPDX-License-Identifier: MIT */
/* How good probabilities of causes are against what was wrong. */
#ifndef FREEAIR_BENCH_SCORE_H
#define FREEAIR_BENCH_SCORE_H

#include "visit.h"

enum { SCORE_BINS = 10 };

typedef struct score {
  int singles;         /* visits with one fault or none */
  int top1;
  int top2;
  int group;           /* the first is in the group of what is wrong, groups as in the guide */
  int stated;          /* what is wrong comes first, or the answer says that it is not told apart from the first */
  int stated_size;     /* classes that the answer does not tell apart from the first, itself included */
  int healthy;
  int accused;         /* healthy, yet something else comes first */
  int firmly_accused;  /* with a probability of health below a tenth */
  int doubles;
  int both;            /* both faults in the first three faults named */
  double log_loss;
  int in_bin[SCORE_BINS];
  int right[SCORE_BINS];
  double sum[SCORE_BINS];
  double seconds;
  double longest_s;
  int visits;
  int failed;
  int confusion[N_CLASSES][N_CLASSES]; /* by truth and by first */
} score;

/* Adds a visit; p is the probability of each class, stated the answer's group of
 * each, 0 for none. */
void score_add(score *s, const visit *v, int level, const double p[N_CLASSES], const int32_t stated[N_CLASSES],
               double seconds);

double score_calibration_error(const score *s);

void score_print(const score *s, int level);
void score_print_confusion(const score *s);

#endif
