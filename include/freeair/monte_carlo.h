/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_MONTE_CARLO_H
#define FREEAIR_MONTE_CARLO_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup monte_carlo Monte Carlo
 * Distributions passed through a function by trial, where the law of propagation is
 * in doubt: curved functions, uncertainties that are not small, a rectangular part
 * that dominates. JCGM 101 with the caller's memory and seed.
 *
 * Random numbers come from Philox 4x64-10 with the seed as its key: a function of the
 * seed, the number of the trial and that of the input, without state. The same seed
 * gives the same trials on every machine and, split by first over threads or calls,
 * the same as in one go. freeair_monte_carlo_draw serves a model of the caller's own.
 *
 * Inputs of a named function, and matrices of correlation, are as in the topic
 * uncertainty; correlated inputs must be normal. u is the standard deviation, for
 * Student's t the scale (the type A uncertainty of a mean).
 * @{
 */

/** Kinds of coverage interval.
 * @since 0.1
 */
enum freeair_monte_carlo_interval {
  FREEAIR_MONTE_CARLO_SYMMETRIC = 1, /**< As much probability below as above. */
  FREEAIR_MONTE_CARLO_SHORTEST = 2   /**< The shortest of all; it holds the mode of a skew distribution. */
};

/** Random values of inputs, for a model of the caller's own.
 *
 * Model: U1, U2 from the generator for each trial and input. Normal: sqrt(-2 ln U1) cos(2 pi U2) (Box and Muller);
 * Student: sqrt(nu (U1^(-2/nu) - 1)) cos(2 pi U2) (Bailey); rectangular: 2 U1 - 1; triangular: U1 - U2; arcsine:
 * cos(2 pi U1); each stretched to the standard deviation u. Correlated normals by the Cholesky factor of the matrix.
 *
 * @param[in]  x             Estimates; a distribution is centred there. @unit{any} @shape{n_in} @range{[-1e150;1e150]}
 * @param[in]  u             Standard uncertainties. @unit{any} @shape{n_in} @range{[0;1e130]}
 * @param[in]  distribution  Of each input. @shape{n_in} @choice{freeair_coverage_distribution}
 * @param[in]  nu            Degrees of freedom where Student's. @shape{n_in} @range{[1;inf]}
 * @param[in]  n_in          Number of inputs. @range{[1;512]}
 * @param[in]  correlation   Correlation of the inputs. @shape{n_correlation} @default{none} @range{[-1;1]}
 * @param[in]  n_correlation n_in^2, or 0. @default{0}
 * @param[in]  seed          Seed. @range{[0;4294967295]}
 * @param[in]  first         Number of the first trial. @range{[0;4294967295]}
 * @param[out] sample        Values, trial after trial, n_in each. @unit{any} @shape{n_sample}
 * @param[in]  n_sample      n_in times the number of trials.
 * @retval FREEAIR_OK              drawn
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DATA        a number of elements is wrong
 * @retval FREEAIR_ERR_DOMAIN      an element is outside its range, no matrix of correlation, or a correlated input is
 *                                 not normal
 * @retval FREEAIR_ERR_UNSUPPORTED more than 48 inputs are correlated
 * @source{JCGM 101:2008, Evaluation of measurement data - Propagation of distributions using a Monte Carlo method, 6.4 and C; Salmon, Moraes, Dror and Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11 (2011); Bailey, Mathematics of Computation 62 (1994) 779}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_monte_carlo_draw(const double *x, const double *u, const int32_t *distribution,
                                             const double *nu, size_t n_in, const double *correlation,
                                             size_t n_correlation, uint32_t seed, uint32_t first, double *sample,
                                             size_t n_sample);

/** One result of a function for random values of its inputs.
 *
 * Model: y of each trial, in the order of the trials; NaN where the function has no value. An input whose u is 0 keeps
 * its value, NaN when not given; its distribution does not matter.
 *
 * @param[in]  function      Name of a function, with or without freeair_.
 * @param[in]  x             Estimates of its inputs. @unit{any} @shape{n_in}
 * @param[in]  u             Their standard uncertainties. @unit{any} @shape{n_in} @range{[0;1e130]}
 * @param[in]  distribution  Of each input. @shape{n_in} @choice{freeair_coverage_distribution}
 * @param[in]  nu            Degrees of freedom where Student's. @shape{n_in} @range{[1;inf]}
 * @param[in]  n_in          Number of inputs.
 * @param[in]  correlation   Correlation of the inputs. @shape{n_correlation} @default{none} @range{[-1;1]}
 * @param[in]  n_correlation n_in^2, or 0. @default{0}
 * @param[in]  seed          Seed. @range{[0;4294967295]}
 * @param[in]  first         Number of the first trial. @range{[0;4294967295]}
 * @param[in]  output        Which result, from 0. @range{[0;255]}
 * @param[out] y             Its values. @unit{any} @shape{n}
 * @param[in]  n             Number of trials.
 * @param[out] failed        Number of trials without a value.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but some trials have no value: the distributions reach too far
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_NOT_FOUND     there is no function of this name
 * @retval FREEAIR_ERR_UNSUPPORTED   the function takes text or arrays, or more than 48 inputs are correlated
 * @retval FREEAIR_ERR_DATA          a number of elements is wrong, or there is no such result
 * @retval FREEAIR_ERR_DOMAIN        an element is outside its range, no matrix of correlation, or a correlated input is
 *                                   not normal
 * @retval FREEAIR_ERR_NO_SOLUTION   no trial has a value
 * @source{JCGM 101:2008, 7.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_monte_carlo_propagate(const char *function, const double *x, const double *u,
                                                  const int32_t *distribution, const double *nu, size_t n_in,
                                                  const double *correlation, size_t n_correlation, uint32_t seed,
                                                  uint32_t first, size_t output, double *y, size_t n, int32_t *failed);

/** Mean and standard uncertainty of a result from its trials, with their standard errors.
 *
 * Model: mean and standard deviation of the values; the errors from the number of trials, that of the
 * uncertainty from the fourth moment: u_error = u sqrt((m4/u^4 - 1) / (4 n)). Quadruple the trials to halve them.
 *
 * @param[in]  y          Values; NaN is left out. @unit{any} @shape{n} @range{[-1e150;1e150]}
 * @param[in]  n          Number of trials.
 * @param[out] mean       Mean. @unit{any}
 * @param[out] u_y        Standard uncertainty. @unit{any}
 * @param[out] mean_error Standard error of the mean. @unit{any}
 * @param[out] u_error    Standard error of the standard uncertainty. @unit{any}
 * @param[out] skewness   Third moment over u^3; 0 for a symmetric distribution.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DATA   fewer than two values
 * @retval FREEAIR_ERR_DOMAIN a value is outside its range
 * @source{JCGM 101:2008, 7.6}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_monte_carlo_summary(const double *y, size_t n, double *mean, double *u_y,
                                                double *mean_error, double *u_error, double *skewness);

/** Coverage interval of a result from its trials.
 *
 * Model: with the m values in order and q = p m to the nearest whole number: symmetric from the value r to r + q,
 * r = (m - q)/2; the shortest of all r. The standard error of an end is that of the order statistic: half the
 * distance of the values sqrt(m F (1 - F)) places to either side, F the share of the values below.
 *
 * @param[in]  y           Values; NaN is left out. @unit{any} @shape{n} @range{[-1e150;1e150]}
 * @param[in]  n           Number of trials.
 * @param[in]  probability Probability within the interval. @range{(0;1)}
 * @param[in]  interval    Symmetric or shortest. @choice{freeair_monte_carlo_interval}
 * @param[out] ordered     The values from the least to the greatest, NaN last; may be y itself. @unit{any} @shape{n}
 * @param[out] low         Lower end. @unit{any}
 * @param[out] high        Upper end. @unit{any}
 * @param[out] low_error   Standard error of the lower end. @unit{any}
 * @param[out] high_error  Standard error of the upper end. @unit{any}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN probability, interval or a value is outside its range
 * @retval FREEAIR_ERR_DATA   too few values: fewer than ten would lie outside
 * @source{JCGM 101:2008, 7.7}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_monte_carlo_interval(const double *y, size_t n, double probability, int32_t interval,
                                                 double *ordered, double *low, double *high, double *low_error,
                                                 double *high_error);

/** Numerical tolerance of an uncertainty, to judge whether trials were enough or the law of propagation is.
 *
 * Model: u = c 10^l with c a whole number of so many digits; tolerance = 10^l / 2. Two intervals agree whose ends are
 * no further apart than this.
 *
 * @param[in]  u_y       Standard uncertainty. @unit{any} @range{[1e-150;1e150]}
 * @param[in]  digits    Significant digits meant, 1 or 2. @range{[1;9]}
 * @param[out] tolerance Numerical tolerance. @unit{any}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   tolerance is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 101:2008, 7.9.2 and 8.1}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_monte_carlo_tolerance(double u_y, int32_t digits, double *tolerance);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
