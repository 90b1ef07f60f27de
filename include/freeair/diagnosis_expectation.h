/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DIAGNOSIS_EXPECTATION_H
#define FREEAIR_DIAGNOSIS_EXPECTATION_H

#include <freeair/diagnosis_subject.h>
#include <freeair/evidence_readings.h>
#include <freeair/machine.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup diagnosis_expectation Diagnosis: expectation
 * What a sound machine would show here today, from its description: the
 * expected values that a diagnosis compares readings with. They carry the site,
 * so that a hot day or altitude is not taken for a fault.
 * @{
 */

/** Expected readings of a described machine at a site.
 *
 * Model: the crank-angle model, sound as described. Delivery and time from
 * empty by freeair_prediction_pumpup, soaked; time from cut-in drawn down just
 * before; interstage pressure (u 10 %), discharge and cooler temperatures
 * (u 15 K) and speeds by freeair_cycle_point at receiver_pa; the filter drop
 * from the mean pressure behind it; cut-out, relief setting, rated voltage and
 * site as described. The motor is taken at its rated voltage: low voltage is a
 * cause, not a site. An expectation that would rest on a mere default of the
 * description is left NaN: times and delivery without receiver_m3 and
 * cut_out_pa, the time from cut-in without cut_in_pa, motor speed without
 * motor_synchronous_rev_s, volts without motor_rated_v, relief without
 * relief_set_pa. Uncertainties that are NaN take the spreads of
 * freeair_likelihood_spread. When the nameplate has a rating, call
 * freeair_rating_complete first.
 *
 * The subject gets what the description knows: stages, cylinders, heads,
 * receiver. Drive, supply and service valve are left open; set them after.
 *
 * @param[in]  machine     Description, possibly with NaN fields.
 * @param[in]  site        Site.
 * @param[in]  receiver_pa Receiver pressure, absolute, at which interstage pressure, temperatures and speeds are
 *                         read. @range{(0;1e8]} @default{cut_out_pa of the machine}
 * @param[out] subject     What the causes depend on.
 * @param[out] expected    Expected readings.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_LIMIT         computed, but the machine as described does not reach its cut-out
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, or a required field is missing
 * @retval FREEAIR_ERR_NO_CONVERGENCE an operating point was not found
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_diagnosis_expectation_from_machine(const freeair_machine *machine,
                                                               const freeair_machine_site *site, double receiver_pa,
                                                               freeair_diagnosis_subject *subject,
                                                               freeair_evidence_readings *expected);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
