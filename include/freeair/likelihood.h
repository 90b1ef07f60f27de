/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_LIKELIHOOD_H
#define FREEAIR_LIKELIHOOD_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup likelihood Likelihood
 * The numbers of a diagnosis: how common each cause is before any evidence, how
 * often each observation is made with and without each cause, how each reading
 * moves with the size of each fault. They are starting points from practice and
 * from the physics of the machine, not statistics of a fleet: who has records
 * of his own replaces the priors.
 *
 * The size y of a fault is measured by what it does to delivery in a pump-up
 * test with the service valve closed: y = -ln(delivery / sound delivery). For
 * causes that cost no delivery it is a share: of delivery leaking back, of the
 * receiver filled with water, of the gauge reading.
 * @{
 */

/** Where a number comes from.
 * @since 0.1
 */
enum freeair_likelihood_basis {
  FREEAIR_LIKELIHOOD_UNLISTED = 0, /**< The pair is not in the table: the cause does not touch it. */
  FREEAIR_LIKELIHOOD_PRACTICE = 1, /**< A signature of the trade. */
  FREEAIR_LIKELIHOOD_DERIVED = 2   /**< Derived from how the machine works. */
};

/** How a reading's deviation from its expected value is measured. @since 0.1 */
enum freeair_likelihood_scale {
  FREEAIR_LIKELIHOOD_NO_SCALE = 0,   /**< The reading has no deviation: the level-off pressure. */
  FREEAIR_LIKELIHOOD_LOG = 1,        /**< ln(found / expected). */
  FREEAIR_LIKELIHOOD_DIFFERENCE = 2, /**< found - expected, in kelvin. */
  FREEAIR_LIKELIHOOD_SHARE = 3       /**< (found - expected) / reference. */
};

/** Probability of a cause before any evidence, at a machine someone complains of.
 *
 * Model: table; the causes together make 1.
 *
 * @param[in]  cause Cause. @choice{freeair_evidence_cause}
 * @param[out] prior Probability.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      prior is null
 * @retval FREEAIR_ERR_NOT_FOUND cause is not a known cause
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_prior(int32_t cause, double *prior);

/** Typical size of a fault and what it costs.
 *
 * Model: size y has the density y exp(-y/size) / size^2 before any evidence,
 * mean 2 size. The user loses the share 1 - exp(-cost y) of the delivery.
 *
 * @param[in]  cause     Cause. @choice{freeair_evidence_cause}
 * @param[out] size      Most probable y; 0 for nothing wrong and for something else.
 * @param[out] cost      1 where the fault costs delivery or takes it, else 0.
 * @param[out] two_sided 1 where readings may move either way, else 0.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND cause is not a known cause
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_size(int32_t cause, double *size, double *cost, int32_t *two_sided);

/** How often an observation is made when a cause is present, and when none of its causes is.
 *
 * Model: table. For a pair that is not listed the hit rate is the false-alarm
 * rate. For something else it is the mean of the false-alarm rate and 0.3.
 *
 * @param[in]  cause       Cause. @choice{freeair_evidence_cause}
 * @param[in]  observation Observation. @choice{freeair_evidence_observation}
 * @param[out] hit         Probability of yes with the cause present.
 * @param[out] false_alarm Probability of yes with none of the observation's listed causes present.
 * @param[out] basis       Where the hit rate comes from. @choice{freeair_likelihood_basis}
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND cause or observation is not a known code
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_observation(int32_t cause, int32_t observation, double *hit,
                                                   double *false_alarm, int32_t *basis);

/** How a reading's deviation moves with the size of a fault.
 *
 * Model: deviation = slope y, held within -limit to limit, with a standard
 * uncertainty of spread times its magnitude. Slope 0 for a pair not listed.
 *
 * @param[in]  cause   Cause. @choice{freeair_evidence_cause}
 * @param[in]  reading Reading. @choice{freeair_evidence_reading}
 * @param[out] slope   Deviation for each unit of y, in the reading's scale. @unit{any}
 * @param[out] limit   Largest magnitude of the deviation, in the reading's scale. @unit{any}
 * @param[out] spread  Relative standard uncertainty of the deviation.
 * @param[out] basis   Where the slope comes from. @choice{freeair_likelihood_basis}
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND cause or reading is not a known code
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_reading(int32_t cause, int32_t reading, double *slope, double *limit,
                                               double *spread, int32_t *basis);

/** Scale of a reading's deviation and the spreads used where none is given.
 *
 * Model: table. Spreads are in the reading's scale.
 *
 * @param[in]  reading       Reading. @choice{freeair_evidence_reading}
 * @param[out] u_found       Standard uncertainty of the reading. @unit{any}
 * @param[out] u_expected    Standard uncertainty of the expected value: unit to unit, rating, model. @unit{any}
 * @param[out] expected      Expected share where none is given; NaN where one must be given. @unit{any}
 * @param[out] wide          Standard deviation when something else is wrong that affects it. @unit{any}
 * @param[out] affected      Probability that something else affects it.
 * @param[out] scale         How the deviation is measured. @choice{freeair_likelihood_scale}
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND reading is not a known reading
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_spread(int32_t reading, double *u_found, double *u_expected, double *expected,
                                              double *wide, double *affected, int32_t *scale);

/** Deviation of a reading from its expected value, and the standard uncertainty of that deviation.
 *
 * Model: by the reading's scale ln(found / expected), found - expected, or
 * (found - expected) / reference; the uncertainties add as squares, those of a
 * logarithm relative to their values. Not less than a tenth of the spread used
 * where none is given. On a logarithm, found and expected must be at least 1e-12.
 *
 * @param[in]  reading    Reading. @choice{freeair_evidence_reading}
 * @param[in]  found      Value read. @unit{any} @range{[-1e8;1e8]}
 * @param[in]  u_found    Its standard uncertainty. @unit{any} @range{[0;1e8]} @default{freeair_likelihood_spread}
 * @param[in]  expected   Value of a sound machine. @unit{any} @range{[-1e8;1e8]}
 *                        @default{freeair_likelihood_spread; there must be one}
 * @param[in]  u_expected Its standard uncertainty. @unit{any} @range{[0;1e8]} @default{freeair_likelihood_spread}
 * @param[in]  reference  What a share is of; not used on other scales. @unit{any} @range{[1e-9;1e8]}
 *                        @default{none; required for a share}
 * @param[out] deviation  Deviation in the reading's scale. @unit{any}
 * @param[out] spread     Its standard uncertainty. @unit{any}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_NOT_FOUND   reading is not a known reading
 * @retval FREEAIR_ERR_UNSUPPORTED the reading has no deviation
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or missing where it is required
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_deviation(int32_t reading, double found, double u_found, double expected,
                                                 double u_expected, double reference, double *deviation,
                                                 double *spread);

/** Pressure at which a machine with a cause levels off.
 *
 * Model: with probability rate it levels off below cut-out, at a gauge
 * pressure whose logarithm is normal about that of centre_pa with standard
 * deviation spread.
 *
 * @param[in]  cause     Cause. @choice{freeair_evidence_cause}
 * @param[out] rate      Probability that it levels off.
 * @param[out] centre_pa Median gauge pressure.
 * @param[out] spread    Standard deviation of the logarithm.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND cause is not a known cause
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_level_off(int32_t cause, double *rate, double *centre_pa, double *spread);

/** What must be said beside the repair of a cause.
 *
 * Model: table look-up.
 * @param[in] cause Cause. @choice{freeair_evidence_cause}
 * @return Bits of freeair_caution; 0 for an unknown cause.
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API uint32_t freeair_likelihood_cautions(int32_t cause);

/** Density of a standardised residual, with tails that forgive a misread instrument.
 *
 * Model: Student's t with 7 degrees of freedom, in units of its scale: density =
 * Gamma(4) / (Gamma(7/2) sqrt(7 pi)) (1 + z^2/7)^-4; almost normal near the
 * centre, some 7e9 times the normal density eight scales out.
 *
 * @param[in]  residual   Deviation from what a cause predicts, over its standard uncertainty. @range{[-1e6;1e6]}
 * @param[out] likelihood Probability density.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   likelihood is null
 * @retval FREEAIR_ERR_DOMAIN residual is outside its range
 * @source{Lange, Little, Taylor, Robust statistical modeling using the t distribution, Journal of the American
 * Statistical Association 84 (1989) 881}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_density(double residual, double *likelihood);

/** Probability of a cause after one observation.
 *
 * Model: Bayes' theorem, p = prior h / (prior h + (1 - prior) f) with h, f the
 * probabilities of the answer with and without the cause.
 *
 * @param[in]  prior       Probability before. @range{[0;1]}
 * @param[in]  hit         Probability of yes with the cause. @range{[0;1]}
 * @param[in]  false_alarm Probability of yes without it. @range{[0;1]}
 * @param[in]  answer      Answer. @choice{freeair_evidence_answer}
 * @param[out] posterior   Probability after.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        posterior is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range or answer is not an answer
 * @retval FREEAIR_ERR_NO_SOLUTION the answer is impossible with and without the cause
 * @source{Gelman et al., Bayesian Data Analysis, 3rd edition, section 1.3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_update(double prior, double hit, double false_alarm, int32_t answer,
                                              double *posterior);

/** Information that one yes-or-no observation is expected to bring about one cause.
 *
 * Model: mutual information I = H(q) - prior H(hit) - (1 - prior) H(false_alarm), q = prior hit + (1 - prior)
 * false_alarm, H(x) = -x log2 x - (1 - x) log2(1 - x).
 *
 * @param[in]  prior       Probability of the cause. @range{[0;1]}
 * @param[in]  hit         Probability of yes with the cause. @range{[0;1]}
 * @param[in]  false_alarm Probability of yes without it. @range{[0;1]}
 * @param[out] information Expected information in bits.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   information is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Cover, Thomas, Elements of Information Theory, 2nd edition, section 2.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_likelihood_information(double prior, double hit, double false_alarm,
                                                   double *information);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
