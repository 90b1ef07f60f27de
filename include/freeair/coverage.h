/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_COVERAGE_H
#define FREEAIR_COVERAGE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup coverage Coverage
 * The statistics of one measured quantity: standard uncertainty from repeated
 * readings (type A) or from limits (type B), degrees of freedom, coverage factor,
 * interval. How uncertainties pass through a function is the topic uncertainty.
 * @{
 */

/** Distributions of a quantity about its estimate.
 * @since 0.1
 */
enum freeair_coverage_distribution {
  FREEAIR_COVERAGE_NORMAL = 1,      /**< Normal, of standard deviation u. */
  FREEAIR_COVERAGE_RECTANGULAR = 2, /**< Anywhere within limits: data sheets, resolution of a display. */
  FREEAIR_COVERAGE_TRIANGULAR = 3,  /**< Within limits, the middle more likely. */
  FREEAIR_COVERAGE_ARCSINE = 4,     /**< Within limits, the ends more likely: what swings, such as a regulated value. */
  FREEAIR_COVERAGE_STUDENT = 5      /**< Student's t scaled by u, with degrees of freedom: the mean of few readings. */
};

/** Mean of repeated readings with its standard uncertainty (type A).
 *
 * Model: s^2 = sum (x - mean)^2 / (n - 1), u = s / sqrt(n), nu = n - 1; readings independent of one another.
 *
 * @param[in]  reading     Readings. @unit{any} @shape{n} @range{[-1e150;1e150]}
 * @param[in]  n           Number of readings. @range{[2;inf)}
 * @param[out] mean        Their mean. @unit{any}
 * @param[out] deviation   Standard deviation of one reading. @unit{any}
 * @param[out] uncertainty Standard uncertainty of the mean. @unit{any}
 * @param[out] nu          Degrees of freedom.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN a reading is outside its range
 * @retval FREEAIR_ERR_DATA   fewer than two readings
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 4.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_mean(const double *reading, size_t n, double *mean, double *deviation,
                                          double *uncertainty, double *nu);

/** Correlation of two quantities from readings taken in pairs.
 *
 * Model: r = sum (a - mean a)(b - mean b) / sqrt(sum (a - mean a)^2 sum (b - mean b)^2); that of the means is the
 * same as that of the readings.
 *
 * @param[in]  a Readings of one quantity. @unit{any} @shape{n} @range{[-1e150;1e150]}
 * @param[in]  b Readings of the other, taken together with those. @unit{any} @shape{n} @range{[-1e150;1e150]}
 * @param[in]  n Number of pairs. @range{[2;inf)}
 * @param[out] r Coefficient of correlation, from -1 to 1.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      a reading is outside its range
 * @retval FREEAIR_ERR_DATA        fewer than two pairs
 * @retval FREEAIR_ERR_NO_SOLUTION one of the two did not vary
 * @source{JCGM 100:2008, GUM, 5.2.3 and C.3.6}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_correlation(const double *a, const double *b, size_t n, double *r);

/** Standard deviation pooled from several series of readings.
 *
 * Model: s^2 = sum nu_i s_i^2 / sum nu_i, nu = sum nu_i: what earlier tests of the same kind say about the scatter
 * of the one at hand.
 *
 * @param[in]  deviation Standard deviation of each series. @unit{any} @shape{n} @range{[0;1e150]}
 * @param[in]  freedom   Degrees of freedom of each series. @shape{n} @range{(0;1e15]}
 * @param[in]  n         Number of series. @range{[1;inf)}
 * @param[out] pooled    Pooled standard deviation of one reading. @unit{any}
 * @param[out] nu        Its degrees of freedom.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an element is outside its range
 * @retval FREEAIR_ERR_DATA   no series
 * @source{JCGM 100:2008, GUM, 4.2.4 and H.3.6}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_pooled(const double *deviation, const double *freedom, size_t n, double *pooled,
                                            double *nu);

/** Standard uncertainty from limits (type B).
 *
 * Model: half width over sqrt(3) when rectangular, sqrt(6) when triangular, sqrt(2) when arcsine.
 *
 * @param[in]  half_width   Half the distance of the limits; of a display, half its last digit. @unit{any}
 *                          @range{[0;1e150]}
 * @param[in]  distribution Rectangular, triangular or arcsine. @choice{freeair_coverage_distribution}
 * @param[out] uncertainty  Standard uncertainty. @unit{any}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   uncertainty is null
 * @retval FREEAIR_ERR_DOMAIN half_width is outside its range, or the distribution has no limits
 * @source{JCGM 100:2008, GUM, 4.3.7 and 4.3.9; JCGM 101:2008, 6.4.6 for the arcsine}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_uncertainty_from_limits(double half_width, int32_t distribution,
                                                             double *uncertainty);

/** Degrees of freedom from how well an uncertainty is known.
 *
 * Model: nu = 1 / (2 doubt^2): an uncertainty that may be wrong by a quarter has 8.
 *
 * @param[in]  doubt Relative uncertainty of the standard uncertainty. @range{[1e-9;0.7071]}
 * @param[out] nu    Degrees of freedom.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   nu is null
 * @retval FREEAIR_ERR_DOMAIN doubt is outside its range
 * @source{JCGM 100:2008, GUM, G.4.2, equation G.3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_degrees_of_freedom_from_doubt(double doubt, double *nu);

/** Effective degrees of freedom of a combined uncertainty (Welch and Satterthwaite).
 *
 * Model: nu_eff = u^4 / sum (contribution^4 / nu), inputs independent; never more than the sum of the nu. The GUM
 * truncates the result to a whole number before looking up a factor, which is the more cautious.
 *
 * @param[in]  combined     Combined standard uncertainty. @unit{any} @range{[1e-75;1e75]}
 *                          @default{root of the sum of the squares of the contributions}
 * @param[in]  contribution Sensitivity times standard uncertainty of each input. @unit{any} @shape{n}
 *                          @range{[-1e75;1e75]}
 * @param[in]  freedom      Degrees of freedom of each input; inf when its uncertainty is sure. @shape{n}
 *                          @range{(0;inf]}
 * @param[in]  n            Number of inputs. @range{[1;inf)}
 * @param[out] nu_effective Effective degrees of freedom; inf when nothing limits them.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an element or combined is outside its range
 * @retval FREEAIR_ERR_DATA   no input, or no contribution but zeros
 * @source{JCGM 100:2008, GUM, G.4.1, equation G.2b}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_degrees_of_freedom(double combined, const double *contribution,
                                                        const double *freedom, size_t n, double *nu_effective);

/** Coverage factor for a probability (Student's t, two-sided).
 *
 * Model: P(|t| <= factor) = probability; the normal distribution with nu = inf. A one-sided confidence c takes
 * probability = 2 c - 1. Newton's method on the incomplete beta function, at most 200 steps, to rounding.
 *
 * @param[in]  probability Probability within the interval. @range{(0;1)}
 * @param[in]  nu          Degrees of freedom; inf for a normal distribution. @range{[1;inf]}
 * @param[out] factor      Coverage factor.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   factor is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 100:2008, GUM, G.3 and Table G.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_factor(double probability, double nu, double *factor);

/** Probability that a coverage factor gives (Student's t, two-sided).
 *
 * Model: P(|t| <= factor) = 1 - I_x(nu/2, 1/2), x = nu / (nu + factor^2), I the regularised incomplete beta function;
 * the normal distribution with nu = inf.
 *
 * @param[in]  factor      Coverage factor. @range{[0;1e16]}
 * @param[in]  nu          Degrees of freedom; inf for a normal distribution. @range{[1;inf]}
 * @param[out] probability Probability within the interval.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   probability is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 100:2008, GUM, G.3; Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_probability(double factor, double nu, double *probability);

/** Coverage interval of an estimate.
 *
 * Model: expanded = factor(probability, nu) u, low and high = y -+ expanded.
 *
 * @param[in]  y           Estimate. @unit{any} @range{[-1e150;1e150]}
 * @param[in]  uncertainty Its standard uncertainty. @unit{any} @range{[0;1e130]}
 * @param[in]  probability Probability within the interval. @range{(0;1)}
 * @param[in]  nu          Degrees of freedom; inf for a normal distribution. @range{[1;inf]}
 * @param[out] expanded    Expanded uncertainty, half the width of the interval. @unit{any}
 * @param[out] low         Lower end. @unit{any}
 * @param[out] high        Upper end. @unit{any}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 100:2008, GUM, G.1.3 and G.6.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coverage_interval(double y, double uncertainty, double probability, double nu,
                                              double *expanded, double *low, double *high);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
