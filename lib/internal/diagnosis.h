/* SPDX-License-Identifier: MIT */
/* What every diagnosis shares, however it weighs the readings: priors, answers,
 * the ranking of the causes, the groups that are not told apart, the verdict. */
#ifndef FREEAIR_INTERNAL_DIAGNOSIS_H
#define FREEAIR_INTERNAL_DIAGNOSIS_H

#include "internal/evidence_readings.h"
#include "internal/posterior.h"
#include "internal/rows.h"

#include <freeair/diagnosis.h>
#include <freeair/likelihood.h>
#include <freeair/verdict.h>

/* Items of the evidence: 0 for none, readings by code, then observations. */
enum {
  FREEAIR__FIRST_OBSERVATION = FREEAIR__READINGS,
  FREEAIR__ITEMS = FREEAIR__READINGS + FREEAIR__OBSERVATIONS
};

int32_t freeair__diagnosis_options_read(const freeair_diagnosis_options *from, freeair_diagnosis_options *to);

typedef struct freeair__priors {
  double alone[FREEAIR__CAUSES];    /* that the cause is the only one */
  double marginal[FREEAIR__CAUSES]; /* that it is present */
  double pair;                      /* a pair has the prior pair * fault[i] * fault[j] */
  double fault[FREEAIR__CAUSES];
} freeair__priors;

int32_t freeair__priors_make(const freeair_diagnosis_subject *s, const double *prior, size_t n_prior,
                             double pair_share, freeair__priors *p);

/* Log-likelihoods of the answers with cause i, and j unless that is 0, into
 * their items; returns their sum. A share of all answers is plainly wrong. */
double freeair__practice_answers(const int32_t *answers, int i, int j, double wrong, double *log_items);

/* How much a test sees of what is behind the service valve, turn by turn where
 * nobody said. */
double freeair__practice_seen(const freeair_diagnosis_subject *s, int turn);

typedef struct freeair__ranking {
  freeair_diagnosis_cause row[FREEAIR__CAUSES];
  int n;
} freeair__ranking;

void freeair__ranking_make(const freeair__priors *prior, const freeair__posterior *p, freeair__ranking *out);

/* Numbers the groups that the evidence does not tell apart, and names the check
 * that best splits each. */
void freeair__ranking_group(const freeair_diagnosis_subject *subject, const freeair_evidence_readings *found,
                            const int32_t *observation, const int32_t *answer, size_t n_observations,
                            freeair__ranking *by);

/* Standard deviations between a reading and what is predicted for it; NaN where
 * that has no scale. */
double freeair__finding_residual(const freeair_diagnosis_finding *f, double predicted);

/* The reason of an item, without the reading's values. Returns 0 when none of
 * weight is left; says holds the log-odds not yet told. */
int freeair__reason_next(const int32_t *answers, const freeair_diagnosis_cause *cause, double *says,
                         freeair_diagnosis_reason *row);

void freeair__reasons_of(const freeair__posterior *p, int cause, double *says);

void freeair__summary_make(const freeair__posterior *p, const freeair__ranking *by, const int32_t *answers,
                           freeair_diagnosis_summary *summary);

/* A firm verdict must stand also without any one reading that contradicts the
 * rest. */
void freeair__verdict_make(const freeair_diagnosis_finding *findings, size_t n_findings, const freeair__posterior *p,
                           double confidence, freeair_diagnosis_summary *summary);

/* Blanks the rows; returns the first error of all. */
int32_t freeair__rows_start(const freeair__rows *rows, const void *blank, int32_t before);

/* Standard deviations from the middle of a normal distribution that leave as
 * much on the nearer side as the probability of lying below says. */
double freeair__deviations_from(double below);

#endif
