/* SPDX-License-Identifier: MIT */
/* What the library makes of a visit: what to expect of a sound machine here today,
 * what was found, what it means, and what to do next. */
#ifndef FREEAIR_VISIT_ASSESS_H
#define FREEAIR_VISIT_ASSESS_H

#include "logfile.h"
#include "visit.h"

enum { ASSESS_CAUSES = 32, ASSESS_REASONS = 800, ASSESS_FINDINGS = 64, ASSESS_CHECKS = 40, ASSESS_PHASES = 512 };

/* A timed rise: as measured, and as a sound machine would do it. */
typedef struct assessed_run {
  const visit_run *run;
  freeair_pumpup_result found;
  double expected_s;         /* time of a sound machine */
  double u_expected_s;
  double rated_site_s;       /* the same where the rating holds */
  double expected_m3_s;      /* its mean delivery */
  double ratio;              /* found over expected delivery */
  double u_ratio;
  double probability_enough; /* that the delivery is at least the limit */
  int32_t verdict;           /* MEETS, FAILS (short) or CANNOT_TELL */
} assessed_run;

typedef struct assessment {
  const visit *v;
  int has_machine;                    /* expectations could be computed */
  freeair_machine machine;            /* complete */
  int32_t adjusted;                   /* bits of freeair_rating_adjusted */
  int rating_inconsistent;
  freeair_cycle_result point;         /* a sound machine near cut-out */
  double p_rated_pa, t_rated_k;       /* reference state of the rating */
  char rated_state[80];
  double limit;                       /* share of the expected delivery that is enough */
  assessed_run run[VISIT_RUNS];
  size_t n_runs;
  freeair_evidence_readings expected;
  freeair_evidence_readings found;
  double slip, u_slip;                /* of the belt, from two speeds; NaN without them */
  int32_t supply_verdict;             /* of the running voltage; -1 without a reading */
  double supply_deviation;
  int32_t capacitor_verdict[2];
  double capacitor_low[2];            /* probability that it is below its limit */
  int has_log;
  logfile log;
  freeair_duty_summary log_summary;
  freeair_pressure_log_phase phase[ASSESS_PHASES];
  size_t n_phases;
  int32_t observation[VISIT_OBSERVATIONS];
  int32_t answer[VISIT_OBSERVATIONS];
  size_t n_observations;
  freeair_diagnosis_subject subject;
  freeair_diagnosis_summary summary;
  freeair_diagnosis_cause cause[ASSESS_CAUSES];
  freeair_inference_effect effect[ASSESS_CAUSES]; /* of each cause, where the machine is described */
  freeair_diagnosis_reason reason[ASSESS_REASONS];
  freeair_diagnosis_finding finding[ASSESS_FINDINGS];
  freeair_diagnosis_check check[ASSESS_CHECKS];
  size_t n_causes, n_effects, n_reasons, n_findings, n_checks;
  freeair_diagnosis_proof proof; /* of the repair, where one was made */
  uint32_t cautions; /* of all that is advised */
  char message[VISIT_TEXT];
} assessment;

/* Returns 0 with message set where the visit's numbers cannot be used together. */
int assess(assessment *a, const visit *v);
void assessment_free(assessment *a);

#endif
