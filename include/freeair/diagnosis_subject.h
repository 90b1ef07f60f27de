/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DIAGNOSIS_SUBJECT_H
#define FREEAIR_DIAGNOSIS_SUBJECT_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup diagnosis_subject Diagnosis: subject
 * The machine that is diagnosed and how it was tested, as far as the causes
 * depend on it. What is not said is left open.
 * @{
 */

/** How the cylinder heads are arranged.
 * @since 0.1
 */
enum freeair_diagnosis_head {
  FREEAIR_DIAGNOSIS_HEAD_UNKNOWN = 0, /**< Not said. */
  FREEAIR_DIAGNOSIS_HEAD_SEPARATE = 1, /**< A head for each cylinder, as in a V. */
  FREEAIR_DIAGNOSIS_HEAD_SHARED = 2   /**< Cylinders side by side under one head and gasket. */
};

/** How the pump is driven.
 * @since 0.1
 */
enum freeair_diagnosis_drive {
  FREEAIR_DIAGNOSIS_DRIVE_UNKNOWN = 0, /**< Not said. */
  FREEAIR_DIAGNOSIS_DRIVE_BELT = 1,   /**< By belt. */
  FREEAIR_DIAGNOSIS_DRIVE_DIRECT = 2  /**< By coupling or flange. */
};

/** What drives it.
 * @since 0.1
 */
enum freeair_diagnosis_supply {
  FREEAIR_DIAGNOSIS_SUPPLY_UNKNOWN = 0, /**< Not said. */
  FREEAIR_DIAGNOSIS_SINGLE_PHASE = 1, /**< Single-phase motor with capacitors. */
  FREEAIR_DIAGNOSIS_THREE_PHASE = 2,  /**< Three-phase motor. */
  FREEAIR_DIAGNOSIS_ENGINE = 3        /**< Engine. */
};

/** The machine and how it was tested, as far as the causes depend on it.
 * @since 0.1
 */
typedef struct freeair_diagnosis_subject {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags;       /**< Reserved, 0. */
  double receiver_m3;   /**< Volume of the receiver; for the reading of water. @range{(0;1e4]} @default{unknown} */
  int32_t stages;       /**< Number of stages; 0 for unknown. @range{[0;2]} */
  int32_t cylinders;    /**< Number of cylinders; 0 for unknown. @range{[0;16]} */
  int32_t head;         /**< Arrangement of the heads. @choice{freeair_diagnosis_head} */
  int32_t drive;        /**< Drive. @choice{freeair_diagnosis_drive} */
  int32_t supply;       /**< Supply. @choice{freeair_diagnosis_supply} */
  int32_t service_valve_closed; /**< Was it closed in the pump-up test? @choice{freeair_evidence_answer} */
} freeair_diagnosis_subject;

/** Initial value: nothing said. */
#define FREEAIR_DIAGNOSIS_SUBJECT_INIT { (uint32_t)sizeof(freeair_diagnosis_subject), 0u, NAN, 0, 0, 0, 0, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_DIAGNOSIS_SUBJECT_BASELINE 40

/** Initialises a subject to "nothing said".
 *
 * Model: assignment.
 *
 * @param[out] subject     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    subject is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_subject_init(freeair_diagnosis_subject *subject, size_t caller_size);

/** How much of a cause's prior probability is left on this machine.
 *
 * Model: 0 for what it cannot have: faults of the second stage, the intercooler
 * and its relief valve on a single stage; a gasket between cylinders with
 * separate heads or one cylinder; belt and pulley with direct drive; capacitors
 * with three phases; anything electrical with an engine. 2 for the gasket
 * between cylinders under a shared head. 1 for all else, and where nothing is said.
 *
 * @param[in]  subject The machine.
 * @param[in]  cause   Cause. @choice{freeair_evidence_cause}
 * @param[out] factor  Factor on the prior probability.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      a pointer is null
 * @retval FREEAIR_ERR_VERSION   subject has an unknown size
 * @retval FREEAIR_ERR_DOMAIN    a field is out of range
 * @retval FREEAIR_ERR_NOT_FOUND cause is not a known cause
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_subject_cause(const freeair_diagnosis_subject *subject, int32_t cause,
                                                    double *factor);

/** Whether this machine has what a reading is read from.
 *
 * Model: no interstage pressure, second-stage temperature, intercooler or its
 * relief valve on a single stage; no belt with direct drive; no capacitors with
 * three phases; no supply with an engine.
 *
 * @param[in]  subject The machine.
 * @param[in]  reading Reading. @choice{freeair_evidence_reading}
 * @param[out] applies 1 if it can be read, else 0.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      a pointer is null
 * @retval FREEAIR_ERR_VERSION   subject has an unknown size
 * @retval FREEAIR_ERR_DOMAIN    a field is out of range
 * @retval FREEAIR_ERR_NOT_FOUND reading is not a known reading
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_subject_reading(const freeair_diagnosis_subject *subject, int32_t reading,
                                                      int32_t *applies);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
