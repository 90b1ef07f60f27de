/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_VERDICT_H
#define FREEAIR_VERDICT_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup verdict Verdict
 * Guarded decisions. A measured value with a standard uncertainty either meets
 * a requirement, fails it, or the measurement cannot tell: never a bare
 * threshold. The measured quantity is taken as normally distributed about its
 * estimate.
 * @{
 */

/** Verdicts.
 * @since 0.1
 */
enum freeair_verdict {
  FREEAIR_VERDICT_CANNOT_TELL = 0, /**< Neither conformance nor non-conformance is sure enough. */
  FREEAIR_VERDICT_MEETS = 1,       /**< Conformance is sure enough. */
  FREEAIR_VERDICT_FAILS = 2        /**< Non-conformance is sure enough. */
};

/** Probability that a measured quantity lies within its limits.
 *
 * Model: P = Phi((upper - value) / u) - Phi((lower - value) / u), Phi the
 * standard normal distribution; evaluated in the tail where it is small. An
 * infinite limit makes the requirement one-sided. u = 0 gives 0 or 1, a value
 * on a limit counts as conforming.
 *
 * @param[in]  value       Estimate. @unit{any} @range{(-inf;inf)}
 * @param[in]  uncertainty Standard uncertainty of the estimate, in the unit of value. @unit{any} @range{[0;inf)}
 * @param[in]  lower       Lower limit; -inf for none. @unit{any} @range{[-inf;inf)}
 * @param[in]  upper       Upper limit, above lower; inf for none. @unit{any} @range{(-inf;inf]}
 * @param[out] probability Probability of conformance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   probability is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or upper is not above lower
 * @source{JCGM 106:2012, Evaluation of measurement data - The role of measurement uncertainty in conformity assessment, 7.2 to 7.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_verdict_probability(double value, double uncertainty, double lower, double upper,
                                                double *probability);

/** Guarded decision on a measured quantity against its limits.
 *
 * Model: MEETS when the probability of conformance is at least the confidence,
 * FAILS when it is at most one minus the confidence, else CANNOT_TELL. With one
 * limit and confidence 0.95 this is a guard band of 1.645 standard
 * uncertainties on either side.
 *
 * @param[in]  value       Estimate. @unit{any} @range{(-inf;inf)}
 * @param[in]  uncertainty Standard uncertainty of the estimate, in the unit of value. @unit{any} @range{[0;inf)}
 * @param[in]  lower       Lower limit; -inf for none. @unit{any} @range{[-inf;inf)}
 * @param[in]  upper       Upper limit, above lower; inf for none. @unit{any} @range{(-inf;inf]}
 * @param[in]  confidence  Probability required of a firm verdict. @range{(0.5;1)}
 * @param[out] verdict     The decision. @choice{freeair_verdict}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   verdict is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or upper is not above lower
 * @source{JCGM 106:2012, 8.3, guarded acceptance and guarded rejection}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_verdict_decide(double value, double uncertainty, double lower, double upper,
                                           double confidence, int32_t *verdict);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
