/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DIAGNOSIS_CHECK_H
#define FREEAIR_DIAGNOSIS_CHECK_H

#include <freeair/diagnosis_subject.h>
#include <freeair/evidence_readings.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup diagnosis_check Diagnosis: next checks
 * Causes with their probabilities, and what to check next: the check that is
 * expected to tell most about them for its effort.
 *
 * An array of rows is the caller's: he initialises each row, so that its
 * struct_size is set, and passes the bytes from one row to the next.
 * @{
 */

/** A cause and how probable it is.
 * @since 0.1
 */
typedef struct freeair_diagnosis_cause {
  uint32_t struct_size;     /**< Size of this structure as the caller knows it. */
  uint32_t flags;           /**< Reserved, 0. */
  double probability;       /**< That this cause is present, alone or with another. */
  double probability_alone; /**< That it is the only one. */
  double prior;             /**< That it is present, before any evidence. */
  double support;           /**< Natural log-odds that speak for it: sum of the positive reasons. */
  double contradiction;     /**< Natural log-odds that speak against it: sum of the negative reasons, <= 0. */
  double severity;          /**< If present: share of the delivery lost or taken, posterior mean. */
  double u_severity;        /**< Its posterior standard deviation. */
  double size;              /**< If present: size of the fault as in freeair_likelihood_size, posterior mean. */
  double u_size;            /**< Its posterior standard deviation. */
  int32_t cause;            /**< Which. @choice{freeair_evidence_cause} */
  int32_t group;            /**< Causes of one group number cannot be told apart by this evidence; 0 for none. */
  int32_t check;            /**< Check that best splits the group for its effort. @choice{freeair_evidence_check} */
  uint32_t cautions;        /**< Bits of freeair_caution for its repair. */
} freeair_diagnosis_cause;

/** Initial value of a row. */
#define FREEAIR_DIAGNOSIS_CAUSE_INIT \
  { (uint32_t)sizeof(freeair_diagnosis_cause), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0, 0, 0u}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_CAUSE_BASELINE 96

/** A check worth making next.
 * @since 0.1
 */
typedef struct freeair_diagnosis_check {
  uint32_t struct_size;        /**< Size of this structure as the caller knows it. */
  uint32_t flags;              /**< Reserved, 0. */
  double information;          /**< Expected information about the cause, in bits. */
  double effort_s;             /**< Working time. */
  double information_rate_1_s; /**< Bits for each second of work. */
  int32_t check;               /**< Which. @choice{freeair_evidence_check} */
  int32_t qualification;       /**< 1 where an electrically qualified person must do it. */
  uint32_t cautions;           /**< Bits of freeair_caution. */
  uint32_t reserved;           /**< 0. */
} freeair_diagnosis_check;

/** Initial value of a row. */
#define FREEAIR_DIAGNOSIS_CHECK_INIT { (uint32_t)sizeof(freeair_diagnosis_check), 0u, NAN, NAN, NAN, 0, 0, 0u, 0u}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_CHECK_BASELINE 48

/** Initialises a row of causes.
 *
 * Model: assignment.
 *
 * @param[out] cause       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    cause is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_cause_init(freeair_diagnosis_cause *cause, size_t caller_size);

/** Initialises a row of checks.
 *
 * Model: assignment.
 *
 * @param[out] check       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    check is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_check_init(freeair_diagnosis_check *check, size_t caller_size);

/** What a check costs and what must be said beside it.
 *
 * Model: table.
 *
 * @param[in]  check         Check. @choice{freeair_evidence_check}
 * @param[out] effort_s      Working time.
 * @param[out] cautions      Bits of freeair_caution.
 * @param[out] qualification 1 where an electrically qualified person must do it, else 0.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND check is not a known check
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_check_effort(int32_t check, double *effort_s, uint32_t *cautions,
                                                   int32_t *qualification);

/** Ranks the checks not yet made by what they are expected to tell for their effort.
 *
 * Model: information is the mutual information of the causes, weighted by their
 * probabilities, and the outcomes that the check would bring: answers yes or no,
 * readings in five classes that part at 1 and 3 standard deviations either side
 * of the expectation. Outcomes are taken as independent given the cause, up to
 * 160 combinations of the most telling ones. Of one pump-up test only the
 * delivery is counted, and only observations that some cause in question brings.
 * A test with the service valve closed of which anything was read is made, and
 * not proposed again.
 * Checks come in descending information for each second of
 * work; checks that tell nothing are left out. Pass the rows of one group alone
 * to learn what splits it.
 *
 * @param[in]  subject         Machine and test.
 * @param[in]  found           What was read already.
 * @param[in]  observation     Codes of freeair_evidence_observation. @shape{n_observations} @default{none}
 * @param[in]  answer          Answers of freeair_evidence_answer. @shape{n_observations} @default{none}
 * @param[in]  n_observations  Number of observations. @range{[0;1000]}
 * @param[in]  causes          Causes as freeair_diagnosis_rank returned them. @shape{n_causes}
 * @param[in]  causes_stride   Bytes from one row to the next. @stride{causes} @range{[0;65536]}
 * @param[in]  n_causes        Number of causes there. @range{[0;1000]}
 * @param[in]  effort_s        Working time of each check by its code; NaN for its default. @shape{n_effort}
 *                             @default{freeair_diagnosis_check_effort}
 * @param[in]  n_effort        Number of working times; 0 for the defaults. @range{[0;1000]}
 * @param[out] checks          Checks. @shape{checks_capacity}
 * @param[in]  checks_stride   Bytes from one row to the next. @stride{checks} @range{[0;65536]}
 * @param[in]  checks_capacity Rows there is room for. @range{[0;1e6]}
 * @param[out] n_checks        Number of checks.
 * @retval FREEAIR_OK             ranked
 * @retval FREEAIR_WARN_TRUNCATED ranked, but the array was too short for every row
 * @retval FREEAIR_ERR_NULL       a pointer is null, other than to an array of no elements
 * @retval FREEAIR_ERR_VERSION    a structure or row has an unknown size, or a row is longer than its stride
 * @retval FREEAIR_ERR_DOMAIN     an input is out of range, an answer is no answer, or one observation has both
 * @retval FREEAIR_ERR_NOT_FOUND  a code is not known, or n_effort goes beyond the checks
 * @retval FREEAIR_ERR_DATA       no cause has a probability
 * @source{Lindley, On a measure of the information provided by an experiment, Annals of Mathematical Statistics 27
 * (1956) 986}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_check_rank(
    const freeair_diagnosis_subject *subject, const freeair_evidence_readings *found, const int32_t *observation,
    const int32_t *answer, size_t n_observations, const freeair_diagnosis_cause *causes, size_t causes_stride,
    size_t n_causes, const double *effort_s, size_t n_effort, freeair_diagnosis_check *checks, size_t checks_stride,
    size_t checks_capacity, size_t *n_checks);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
