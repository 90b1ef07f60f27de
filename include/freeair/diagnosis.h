/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DIAGNOSIS_H
#define FREEAIR_DIAGNOSIS_H

#include <freeair/diagnosis_check.h>
#include <freeair/diagnosis_finding.h>
#include <freeair/diagnosis_subject.h>
#include <freeair/evidence_readings.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup diagnosis Diagnosis
 * From readings and observations, any of which may be missing, to ranked causes
 * with probabilities and severities, the reasons for each, readings that
 * contradict the rest, and the next check that brings most for its effort.
 *
 * A diagnosis advises; it never replaces the nameplate, the manual, local codes
 * or licensed practice. Show the cautions of every cause and check.
 * @{
 */

/** Options of a diagnosis.
 * @since 0.1
 */
typedef struct freeair_diagnosis_options {
  uint32_t struct_size;    /**< Size of this structure as the caller knows it. */
  uint32_t flags;          /**< Reserved, 0. */
  double pair_share;       /**< Of faulty machines, the share with two faults. @range{[0;0.5]} @default{0.08} */
  double confidence;       /**< Probability required of a firm verdict. @range{(0.5;1)} @default{0.9} */
  double contradiction;    /**< Standard deviations from what all other evidence says, at which a reading
                                contradicts it. @range{[1;20]} @default{3} */
} freeair_diagnosis_options;

/** Initial value: defaults. */
#define FREEAIR_DIAGNOSIS_OPTIONS_INIT { (uint32_t)sizeof(freeair_diagnosis_options), 0u, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_OPTIONS_BASELINE 32

/** Why: what one reading or observation says about one cause.
 * @since 0.1
 */
typedef struct freeair_diagnosis_reason {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags;       /**< Reserved, 0. */
  double log_odds;      /**< Natural log-odds of the cause with this item less those without it. */
  double found;         /**< The reading; NaN for an observation. @unit{any} */
  double expected;      /**< Its expected value of a sound machine. @unit{any} */
  double predicted;     /**< Its value with the cause at its posterior mean size; NaN where there is none. @unit{any} */
  double residual;      /**< Reading less predicted over the spread of its finding; NaN where one is missing. */
  int32_t cause;        /**< The cause. @choice{freeair_evidence_cause} */
  int32_t reading;      /**< The reading, or 0. @choice{freeair_evidence_reading} */
  int32_t observation;  /**< The observation, or 0. @choice{freeair_evidence_observation} */
  int32_t answer;       /**< Its answer. @choice{freeair_evidence_answer} */
} freeair_diagnosis_reason;

/** Initial value of a row. */
#define FREEAIR_DIAGNOSIS_REASON_INIT \
  { (uint32_t)sizeof(freeair_diagnosis_reason), 0u, NAN, NAN, NAN, NAN, NAN, 0, 0, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_REASON_BASELINE 64

/** The whole in a few numbers.
 * @since 0.1
 */
typedef struct freeair_diagnosis_summary {
  uint32_t struct_size;       /**< Size of this structure as the caller knows it. */
  uint32_t flags;             /**< Reserved, 0. */
  double probability_healthy; /**< That nothing is wrong. */
  double probability_pair;    /**< That two faults are present. */
  double doubt;               /**< Entropy of the causes in bits: 0 when certain. */
  int32_t verdict;            /**< Is it sound: meets, fails, cannot tell. @choice{freeair_verdict} */
  int32_t cause;              /**< Most probable cause. @choice{freeair_evidence_cause} */
  int32_t readings_used;      /**< Readings that were used. */
  int32_t readings_unused;    /**< Readings that could not be used. */
  int32_t observations_used;  /**< Observations with an answer. */
  int32_t contradictions;     /**< Readings that contradict the rest. */
} freeair_diagnosis_summary;

/** Initial value. */
#define FREEAIR_DIAGNOSIS_SUMMARY_INIT \
  { (uint32_t)sizeof(freeair_diagnosis_summary), 0u, NAN, NAN, NAN, 0, 0, 0, 0, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_SUMMARY_BASELINE 56

/** Initialises options to their defaults.
 *
 * Model: assignment.
 *
 * @param[out] options     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    options is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_options_init(freeair_diagnosis_options *options, size_t caller_size);

/** Initialises a row of reasons.
 *
 * Model: assignment.
 *
 * @param[out] reason      Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    reason is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_reason_init(freeair_diagnosis_reason *reason, size_t caller_size);

/** Initialises a summary.
 *
 * Model: assignment.
 *
 * @param[out] summary     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    summary is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_summary_init(freeair_diagnosis_summary *summary, size_t caller_size);

/** Ranks the causes of what was found.
 *
 * Model: hypotheses are a sound machine, each cause alone, each pair of faults,
 * and something else. Each has its prior; its likelihood is the product of the
 * probabilities of the answers and of the densities of the readings' deviations
 * (freeair_likelihood_density) about what freeair_likelihood_reading predicts,
 * summed over the size of each fault. Pairs: deviations add, and answers come
 * from either fault (noisy or), the smaller rate if one of them suppresses it.
 * Deviations are those of freeair_diagnosis_finding_compare.
 * A reason is the log-odds of a cause with all evidence less those without that
 * item, held within 27.6 (a million million to one). A reading contradicts when,
 * by the distribution that all other evidence and the listed causes predict for
 * it, it lies beyond options.contradiction normal standard deviations. Causes
 * whose likelihoods are within a factor of 3 of the most probable one of their
 * group, and that are not both probable, are not told apart; one that is left
 * joins the group of the cause nearest to it within that factor.
 *
 * The verdict is firm when the probability of a sound machine is at least
 * options.confidence, or at most one less that, also without any one reading
 * that contradicts.
 *
 * Needs some 110 kB of stack, and at most about a tenth of a second.
 *
 * Causes come in descending probability, reasons by cause in that order and
 * then by weight (from 0.05 up), findings by reading. Counts are of all rows,
 * also of those for which there was no room.
 *
 * @param[in]  subject          Machine and test.
 * @param[in]  expected         What a sound machine shows here today.
 * @param[in]  found            What was read.
 * @param[in]  observation      Codes of freeair_evidence_observation. @shape{n_observations} @default{none}
 * @param[in]  answer           Answers of freeair_evidence_answer. @shape{n_observations} @default{none}
 * @param[in]  n_observations   Number of observations. @range{[0;1000]}
 * @param[in]  prior            Prior of each cause by its code; NaN for its default. @shape{n_prior}
 *                              @default{freeair_likelihood_prior}
 * @param[in]  n_prior          Number of priors; 0 for the defaults. @range{[0;1000]}
 * @param[in]  options          Options.
 * @param[out] causes           Causes. @shape{causes_capacity}
 * @param[in]  causes_stride    Bytes from one row to the next. @stride{causes} @range{[0;65536]}
 * @param[in]  causes_capacity  Rows there is room for. @range{[0;1e6]}
 * @param[out] n_causes         Number of causes.
 * @param[out] reasons          Reasons. @shape{reasons_capacity}
 * @param[in]  reasons_stride   Bytes from one row to the next. @stride{reasons} @range{[0;65536]}
 * @param[in]  reasons_capacity Rows there is room for. @range{[0;1e6]}
 * @param[out] n_reasons        Number of reasons.
 * @param[out] findings         One for each reading. @shape{findings_capacity}
 * @param[in]  findings_stride  Bytes from one row to the next. @stride{findings} @range{[0;65536]}
 * @param[in]  findings_capacity Rows there is room for. @range{[0;1e6]}
 * @param[out] n_findings       Number of readings.
 * @param[out] summary          Summary.
 * @retval FREEAIR_OK                ranked
 * @retval FREEAIR_WARN_INCONSISTENT ranked, but readings contradict one another: see the findings
 * @retval FREEAIR_WARN_TRUNCATED    ranked, but an array was too short for every row
 * @retval FREEAIR_ERR_NULL          a pointer is null, other than to an array of no elements
 * @retval FREEAIR_ERR_VERSION       a structure or row has an unknown size, or a row is longer than its stride
 * @retval FREEAIR_ERR_DOMAIN        an input is out of range, an answer is no answer, or one observation has both
 * @retval FREEAIR_ERR_NOT_FOUND     an observation is not a known code, or n_prior goes beyond the causes
 * @retval FREEAIR_ERR_NO_SOLUTION   the priors leave no cause that this machine can have
 * @source{Gelman et al., Bayesian Data Analysis, 3rd edition, chapter 1; rates from common practice}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_rank(
    const freeair_diagnosis_subject *subject, const freeair_evidence_readings *expected,
    const freeair_evidence_readings *found, const int32_t *observation, const int32_t *answer, size_t n_observations,
    const double *prior, size_t n_prior, const freeair_diagnosis_options *options, freeair_diagnosis_cause *causes,
    size_t causes_stride, size_t causes_capacity, size_t *n_causes, freeair_diagnosis_reason *reasons,
    size_t reasons_stride, size_t reasons_capacity, size_t *n_reasons, freeair_diagnosis_finding *findings,
    size_t findings_stride, size_t findings_capacity, size_t *n_findings, freeair_diagnosis_summary *summary);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
