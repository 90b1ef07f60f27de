/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_UNCERTAINTY_H
#define FREEAIR_UNCERTAINTY_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup uncertainty Uncertainty
 * How the uncertainties of readings pass through a function: any function of this
 * library by its name, or a model of the caller's own by its derivatives. The law
 * of propagation of the GUM, first order with correlation, second order without.
 *
 * The inputs x of a named function are those of freeair_function_input, in that
 * order: arguments, and fields of structures one by one, NaN where a field is not
 * given. Their number must be freeair_function_input_count, that of the results
 * freeair_function_output_count. u holds a standard uncertainty for each input, 0
 * where it is exact; it must be 0 for whole numbers and for what is not given.
 * At most 512 inputs and 256 results.
 *
 * A correlation matrix has n x n elements, row after row; null or no elements
 * stands for independent inputs.
 * @{
 */

/** Results of a function and their standard uncertainties.
 *
 * Model: u_y^2 = sum_i sum_j c_i c_j u_i u_j r_ij, c_i = dy/dx_i by differences: steps from u_i (1e-3 of x_i where
 * that is 0, never below 1e-6 of x_i) downwards, extrapolated to none (Ridders), central where the range has room on
 * both sides, else one-sided. Exact for a function that is straight over a few u; see the second order, or Monte Carlo.
 *
 * @param[in]  function      Name of a function, with or without freeair_.
 * @param[in]  x             Inputs. @unit{any} @shape{n_in}
 * @param[in]  u             Their standard uncertainties. @unit{any} @shape{n_in} @range{[0;1e150]}
 * @param[in]  n_in          Number of inputs.
 * @param[in]  correlation   Correlation of the inputs. @shape{n_correlation} @default{none} @range{[-1;1]}
 * @param[in]  n_correlation n_in^2, or 0. @default{0}
 * @param[out] y             Results. @unit{any} @shape{n_out}
 * @param[out] u_y           Their standard uncertainties; NaN for a whole number. @unit{any} @shape{n_out}
 * @param[in]  n_out         Number of results.
 * @param[out] sensitivity   c, row after row, a row for each result; NaN where neither the input nor its
 *                           uncertainty gives a step. @unit{any} @shape{n_sensitivity}
 * @param[in]  n_sensitivity n_in n_out.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, the function warns so at x
 * @retval FREEAIR_WARN_TRANSITION    computed, the function warns so at x
 * @retval FREEAIR_WARN_INCONSISTENT  computed, the function warns so at x
 * @retval FREEAIR_WARN_LIMIT         computed, the function warns so at x
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_NOT_FOUND      there is no function of this name
 * @retval FREEAIR_ERR_UNSUPPORTED    the function takes text or arrays
 * @retval FREEAIR_ERR_DATA           a number of elements is wrong
 * @retval FREEAIR_ERR_DOMAIN         x, u or correlation is outside its range, or no matrix of correlation
 * @retval FREEAIR_ERR_NO_SOLUTION    the function has no value at x
 * @retval FREEAIR_ERR_OVERFLOW       the function overflows at x
 * @retval FREEAIR_ERR_NO_CONVERGENCE a result is not smooth at x: its uncertainty is not sure to a tenth
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 5.1 and 5.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_uncertainty_propagate(const char *function, const double *x, const double *u, size_t n_in,
                                                  const double *correlation, size_t n_correlation, double *y,
                                                  double *u_y, size_t n_out, double *sensitivity,
                                                  size_t n_sensitivity);

/** What each input contributes to the uncertainty of one result.
 *
 * Model: contribution_i = c_i u_i; share_i = contribution_i sum_j r_ij contribution_j / u_y^2. The shares add up to 1;
 * one can be negative where correlation makes inputs compensate.
 *
 * @param[in]  sensitivity   dy/dx of one result. @unit{any} @shape{n} @range{[-1e150;1e150]}
 * @param[in]  u             Standard uncertainties of the inputs. @unit{any} @shape{n} @range{[0;1e150]}
 * @param[in]  n             Number of inputs. @range{[1;65535]}
 * @param[in]  correlation   Correlation of the inputs. @shape{n_correlation} @default{none} @range{[-1;1]}
 * @param[in]  n_correlation n^2, or 0. @default{0}
 * @param[out] contribution  Contribution of each input, with its sign. @unit{any} @shape{n}
 * @param[out] share         Share of each in the variance; 0 where nothing is uncertain. @shape{n}
 * @param[out] combined      Combined standard uncertainty. @unit{any}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DATA   n_correlation is wrong, or n is outside its range
 * @retval FREEAIR_ERR_DOMAIN an element is outside its range, or correlation is no matrix of correlation
 * @source{JCGM 100:2008, GUM, 5.2.2, equation 16}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_uncertainty_budget(const double *sensitivity, const double *u, size_t n,
                                               const double *correlation, size_t n_correlation, double *contribution,
                                               double *share, double *combined);

/** Covariance and correlation of several results.
 *
 * Model: V = C U C', C the sensitivities, U_ij = u_i u_j r_ij.
 *
 * @param[in]  sensitivity   C, row after row, a row for each result. @unit{any} @shape{n_sensitivity}
 *                           @range{[-1e150;1e150]}
 * @param[in]  n_sensitivity Number of inputs times number of results.
 * @param[in]  u             Standard uncertainties of the inputs. @unit{any} @shape{n_in} @range{[0;1e150]}
 * @param[in]  n_in          Number of inputs. @range{[1;65535]}
 * @param[in]  correlation   Correlation of the inputs. @shape{n_correlation} @default{none} @range{[-1;1]}
 * @param[in]  n_correlation n_in^2, or 0. @default{0}
 * @param[out] covariance    V, row after row. @unit{any} @shape{n_square}
 * @param[out] dependence    Correlation of the results; NaN where one has no uncertainty. @shape{n_square}
 * @param[in]  n_square      Number of results squared.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DATA   a number of elements is wrong, or n_in is outside its range
 * @retval FREEAIR_ERR_DOMAIN an element is outside its range, or correlation is no matrix of correlation
 * @source{JCGM 100:2008, GUM, H.2.3; JCGM 102:2011, Extension to any number of output quantities, 6.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_uncertainty_covariance(const double *sensitivity, size_t n_sensitivity, const double *u,
                                                   size_t n_in, const double *correlation, size_t n_correlation,
                                                   double *covariance, double *dependence, size_t n_square);

/** Second order: uncertainty of a model from its derivatives up to the third.
 *
 * Model: u_y^2 = sum_i f_i^2 u_i^2 + sum_i sum_j (f_ij^2 / 2 + f_i f_ijj) u_i^2 u_j^2; the expected value is shifted
 * by sum_i f_ii u_i^2 / 2 from the value at the estimates. Inputs normal and independent.
 *
 * @param[in]  first    f_i. @unit{any} @shape{n} @range{[-1e75;1e75]}
 * @param[in]  u        Standard uncertainties of the inputs. @unit{any} @shape{n} @range{[0;1e75]}
 * @param[in]  n        Number of inputs. @range{[1;65535]}
 * @param[in]  second   f_ij, row after row. @unit{any} @shape{n_square} @range{[-1e75;1e75]}
 * @param[in]  third    f_ijj in row i, column j. @unit{any} @shape{n_square} @range{[-1e75;1e75]}
 * @param[in]  n_square n^2.
 * @param[out] combined Combined standard uncertainty. @unit{any}
 * @param[out] shift    Expected value less the value at the estimates. @unit{any}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DATA        a number of elements is wrong, or n is outside its range
 * @retval FREEAIR_ERR_DOMAIN      an element is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the sum is negative: the series does not hold for uncertainties so large
 * @source{JCGM 100:2008, GUM, 5.1.2, note, and H.1.7}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_uncertainty_second_order(const double *first, const double *u, size_t n,
                                                     const double *second, const double *third, size_t n_square,
                                                     double *combined, double *shift);

/** Second order: results of a function with their uncertainties and what they are shifted by.
 *
 * Model: as freeair_uncertainty_second_order, derivatives by differences over u_i and half of it, less where the range
 * has no room for twice u_i to either side. Inputs normal and independent.
 *
 * @param[in]  function Name of a function, with or without freeair_.
 * @param[in]  x        Inputs. @unit{any} @shape{n_in}
 * @param[in]  u        Their standard uncertainties. @unit{any} @shape{n_in} @range{[0;1e150]}
 * @param[in]  n_in     Number of inputs.
 * @param[out] y        Results at x. @unit{any} @shape{n_out}
 * @param[out] u_y      Their standard uncertainties; NaN for a whole number. @unit{any} @shape{n_out}
 * @param[out] shift    Expected values less the results at x; NaN for a whole number. @unit{any} @shape{n_out}
 * @param[in]  n_out    Number of results.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, the function warns so at x
 * @retval FREEAIR_WARN_TRANSITION    computed, the function warns so at x
 * @retval FREEAIR_WARN_INCONSISTENT  computed, the function warns so at x
 * @retval FREEAIR_WARN_LIMIT         computed, the function warns so at x
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_NOT_FOUND      there is no function of this name
 * @retval FREEAIR_ERR_UNSUPPORTED    the function takes text or arrays
 * @retval FREEAIR_ERR_DATA           a number of elements is wrong
 * @retval FREEAIR_ERR_DOMAIN         x or u is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    the function has no value at x, or no room about it
 * @retval FREEAIR_ERR_OVERFLOW       the function overflows at x
 * @retval FREEAIR_ERR_NO_CONVERGENCE the series does not hold for uncertainties so large
 * @source{JCGM 100:2008, GUM, 5.1.2, note, and H.1.7}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_uncertainty_propagate_second_order(const char *function, const double *x, const double *u,
                                                               size_t n_in, double *y, double *u_y, double *shift,
                                                               size_t n_out);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
