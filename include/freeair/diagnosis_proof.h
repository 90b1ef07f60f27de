/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DIAGNOSIS_PROOF_H
#define FREEAIR_DIAGNOSIS_PROOF_H

#include <freeair/diagnosis_check.h>
#include <freeair/diagnosis_finding.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup diagnosis_proof Diagnosis: proof of a repair
 * Is the repair proved? A clear answer from the diagnosis of the readings taken
 * afterwards: the repaired cause is gone, and the machine makes the air that it
 * should. What nobody looked at may still be wrong and is no part of the answer.
 * @{
 */

/** Whether a repair is proved.
 * @since 0.1
 */
typedef struct freeair_diagnosis_proof {
  uint32_t struct_size;        /**< Size of this structure as the caller knows it. */
  uint32_t flags;              /**< Reserved, 0. */
  double probability;          /**< That the repaired cause is still there. */
  double probability_even;     /**< The same from even odds, as if the repair had failed as often as not: what the
                                    evidence alone says. */
  double delivery;             /**< Share of the sound delivery that the test shows; NaN without a test. */
  double u_delivery;           /**< Its standard uncertainty. */
  double probability_delivery; /**< That it makes at least the least share. */
  int32_t verdict;             /**< Is the repair proved. @choice{freeair_verdict} */
  int32_t gone;                /**< Is the repaired cause gone. @choice{freeair_verdict} */
  int32_t delivers;            /**< Does it make what it should. @choice{freeair_verdict} */
  int32_t reading;             /**< The reading that says so, or 0. @choice{freeair_evidence_reading} */
} freeair_diagnosis_proof;

/** Initial value. */
#define FREEAIR_DIAGNOSIS_PROOF_INIT \
  { (uint32_t)sizeof(freeair_diagnosis_proof), 0u, NAN, NAN, NAN, NAN, NAN, 0, 0, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_PROOF_BASELINE 64

/** Initialises a proof.
 *
 * Model: assignment.
 *
 * @param[out] proof       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    proof is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_proof_init(freeair_diagnosis_proof *proof, size_t caller_size);

/** Judges whether a repair is proved by the diagnosis of the readings after it.
 *
 * Model: the cause is gone (MEETS) when its probability p and that from even
 * odds, 1/(1 + (1 - p) q/(p (1 - q))) with its prior q, are both at most one less
 * confidence; so a cause that was improbable before anybody looked is not gone
 * for want of evidence. It is not (FAILS) when that from even odds is at least
 * confidence. The machine delivers when its share of the sound delivery is at
 * least `least`, by a guarded decision on its logarithm: of delivery, time from
 * empty and time from cut-in that which is known best, the deviation of its
 * finding normal with the finding's spread. A level-off pressure without any of
 * these fails; a reading that contradicts the rest decides nothing. The repair is
 * proved when both meet, not proved when one fails.
 *
 * Run the test from the same start as before, and pass rows of
 * freeair_diagnosis_rank or freeair_inference_rank on the readings after.
 *
 * @param[in]  cause           What was repaired. @choice{freeair_evidence_cause}
 * @param[in]  causes          Causes after the repair. @shape{n_causes}
 * @param[in]  causes_stride   Bytes from one row to the next. @stride{causes} @range{[0;65536]}
 * @param[in]  n_causes        Number of causes there. @range{[0;1000]}
 * @param[in]  findings        Findings after the repair. @shape{n_findings} @default{none}
 * @param[in]  findings_stride Bytes from one row to the next. @stride{findings} @range{[0;65536]}
 * @param[in]  n_findings      Number of findings there. @range{[0;1000]}
 * @param[in]  least           Least share of the sound delivery that counts as sound. @range{(0;1]} @default{0.9}
 * @param[in]  confidence      Probability required of a firm verdict. @range{(0.5;1)} @default{0.9}
 * @param[out] proof           The proof.
 * @retval FREEAIR_OK            judged
 * @retval FREEAIR_ERR_NULL      a pointer is null, other than to an array of no elements
 * @retval FREEAIR_ERR_VERSION   a structure or row has an unknown size, or a row is longer than its stride
 * @retval FREEAIR_ERR_DOMAIN    an input, a probability or a spread is out of range
 * @retval FREEAIR_ERR_NOT_FOUND cause is not a fault that has an entry
 * @retval FREEAIR_ERR_DATA      there is no row of this cause, or it lacks a probability or a prior within (0;1)
 * @source{Kass, Raftery, Bayes factors, J. Am. Stat. Assoc. 90 (1995) 773; JCGM 106:2012, 8.3, guarded acceptance and
 * guarded rejection}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_proof_judge(int32_t cause, const freeair_diagnosis_cause *causes,
                                                  size_t causes_stride, size_t n_causes,
                                                  const freeair_diagnosis_finding *findings, size_t findings_stride,
                                                  size_t n_findings, double least, double confidence,
                                                  freeair_diagnosis_proof *proof);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
