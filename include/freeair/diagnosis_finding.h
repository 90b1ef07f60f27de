/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DIAGNOSIS_FINDING_H
#define FREEAIR_DIAGNOSIS_FINDING_H

#include <freeair/diagnosis_subject.h>
#include <freeair/evidence_readings.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup diagnosis_finding Diagnosis: findings
 * Readings against what a sound machine shows here today: how far off, in the
 * scale in which faults move them, and in standard deviations.
 * @{
 */

/** What became of a reading.
 * @since 0.1
 */
enum freeair_diagnosis_use {
  FREEAIR_DIAGNOSIS_NOT_USED = 0,     /**< An expected value, or what a share is of, is missing. */
  FREEAIR_DIAGNOSIS_USED = 1,         /**< Used, and in keeping with the rest. */
  FREEAIR_DIAGNOSIS_CONTRADICTS = 2,  /**< Used, but it contradicts the rest. */
  FREEAIR_DIAGNOSIS_NOT_APPLICABLE = 3 /**< The machine described has no such thing. */
};

/** A reading against what a sound machine shows, and against all other evidence.
 * @since 0.1
 */
typedef struct freeair_diagnosis_finding {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags;       /**< Reserved, 0. */
  double found;         /**< The reading. @unit{any} */
  double expected;      /**< Its expected value of a sound machine. @unit{any} */
  double deviation;     /**< Deviation as in freeair_likelihood_deviation. @unit{any} */
  double spread;        /**< Standard uncertainty of the deviation. @unit{any} */
  double reference;     /**< What a share is of; NaN on other scales. @unit{any} */
  double residual;      /**< Deviation over spread: standard deviations from a sound machine. */
  double predicted;     /**< What all other evidence says it should be; NaN from a comparison alone. @unit{any} */
  double disagreement;  /**< Standard deviations between it and all other evidence; NaN likewise. */
  int32_t reading;      /**< Which. @choice{freeair_evidence_reading} */
  int32_t use;          /**< What became of it. @choice{freeair_diagnosis_use} */
} freeair_diagnosis_finding;

/** Initial value of a row. */
#define FREEAIR_DIAGNOSIS_FINDING_INIT \
  { (uint32_t)sizeof(freeair_diagnosis_finding), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_FINDING_BASELINE 80

/** Initialises a row of findings.
 *
 * Model: assignment.
 *
 * @param[out] finding     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    finding is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_finding_init(freeair_diagnosis_finding *finding, size_t caller_size);

/** Compares readings with their expected values.
 *
 * Model: freeair_likelihood_deviation for each reading taken. Shares are of the
 * expected (else the found) delivery for leaks, of the gauge pressure at
 * cut-out for the gauge difference, of the barometric pressure for the filter
 * drop, of the receiver for water. Expectations that err together count once:
 * with k readings of one pump-up test, of the two discharge temperatures, or of
 * current and power, the variance of each expectation is multiplied by k. Where
 * ambient temperature or barometer differ from those of the expectation, the
 * expectations of the pump-up test, the interstage pressure and the
 * temperatures are wider by what that could move them.
 *
 * Findings come by code, one for each reading taken. The count is of all, also
 * of those for which there was no room.
 *
 * @param[in]  subject           Machine and test.
 * @param[in]  expected          What a sound machine shows here today.
 * @param[in]  found             What was read.
 * @param[out] findings          One for each reading. @shape{findings_capacity}
 * @param[in]  findings_stride   Bytes from one row to the next. @stride{findings} @range{[0;65536]}
 * @param[in]  findings_capacity Rows there is room for. @range{[0;1e6]}
 * @param[out] n_findings        Number of readings.
 * @retval FREEAIR_OK             compared
 * @retval FREEAIR_WARN_TRUNCATED compared, but the array was too short for every row
 * @retval FREEAIR_ERR_NULL       a pointer is null, other than to an array of no elements
 * @retval FREEAIR_ERR_VERSION    a structure or row has an unknown size, or a row is longer than its stride
 * @retval FREEAIR_ERR_DOMAIN     an input is out of range
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2 and 5.2.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_finding_compare(
    const freeair_diagnosis_subject *subject, const freeair_evidence_readings *expected,
    const freeair_evidence_readings *found, freeair_diagnosis_finding *findings, size_t findings_stride,
    size_t findings_capacity, size_t *n_findings);

/** Value of a reading that deviates from its expected value by so much.
 *
 * Model: the inverse of freeair_likelihood_deviation.
 *
 * @param[in]  reading   Reading. @choice{freeair_evidence_reading}
 * @param[in]  expected  Value of a sound machine. @unit{any} @range{[-1e8;1e8]}
 * @param[in]  reference What a share is of; not used on other scales. @unit{any} @range{[1e-9;1e8]}
 *                       @default{none; required for a share}
 * @param[in]  deviation Deviation in the reading's scale. @unit{any} @range{[-600;600]}
 * @param[out] value     The value. @unit{any}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        value is null
 * @retval FREEAIR_ERR_NOT_FOUND   reading is not a known reading
 * @retval FREEAIR_ERR_UNSUPPORTED the reading has no deviation
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or missing where it is required
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_finding_value(int32_t reading, double expected, double reference,
                                                    double deviation, double *value);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
