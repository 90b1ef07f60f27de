/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_UNBALANCE_H
#define FREEAIR_UNBALANCE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup unbalance Unbalance
 * A three-phase supply whose phases are not alike, and what that does to a
 * motor: a few percent of voltage is several times that of current, and heat.
 *
 * Voltages are line to line, measured at the motor under load. Fractions are
 * fractions: 0.03 is three percent.
 * @{
 */

/** Voltage unbalance of a three-phase supply by the maximum-deviation definition.
 *
 * Model: the greatest deviation of a voltage from the mean of the three, over that mean. Not (max - min) / mean,
 * which is up to twice as much.
 *
 * @param[in]  u12_v     Voltage between lines 1 and 2. @range{[0;1000000]}
 * @param[in]  u23_v     Voltage between lines 2 and 3. @range{[0;1000000]}
 * @param[in]  u31_v     Voltage between lines 3 and 1. @range{[0;1000000]}
 * @param[out] unbalance Unbalance as a fraction.
 * @param[out] mean_v    Mean of the three.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION all three are zero
 * @source{NEMA MG 1, 14.36, definition of percent voltage unbalance (clause from memory)}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_unbalance_voltage(double u12_v, double u23_v, double u31_v, double *unbalance,
                                              double *mean_v);

/** Current unbalance of a three-phase motor, by the same definition.
 *
 * Model: as freeair_unbalance_voltage. At full load it is some six to ten times the voltage unbalance; where
 * it stays with the motor lead when two lines are rolled the motor is at fault, where it stays with the line the
 * supply is.
 *
 * @param[in]  i1_a      Current in line 1. @range{[0;1000000]}
 * @param[in]  i2_a      Current in line 2. @range{[0;1000000]}
 * @param[in]  i3_a      Current in line 3. @range{[0;1000000]}
 * @param[out] unbalance Unbalance as a fraction.
 * @param[out] mean_a    Mean of the three.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION all three are zero
 * @source{NEMA MG 1, 14.36, the definition applied to currents; rolling the leads is common practice}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_unbalance_current(double i1_a, double i2_a, double i3_a, double *unbalance, double *mean_a);

/** Voltage unbalance factor: negative-sequence over positive-sequence voltage.
 *
 * Model: sqrt((1 - sqrt(3 - 6 b)) / (1 + sqrt(3 - 6 b))), b the sum of the fourth powers of the line voltages over
 * the square of the sum of their squares; rearranged here so that nothing cancels. Line-to-line voltages hold no
 * zero sequence. For small unbalance it is close to the maximum-deviation figure.
 *
 * @param[in]  u12_v  Voltage between lines 1 and 2. @range{[0;1000000]}
 * @param[in]  u23_v  Voltage between lines 2 and 3. @range{[0;1000000]}
 * @param[in]  u31_v  Voltage between lines 3 and 1. @range{[0;1000000]}
 * @param[out] factor Unbalance factor, 0 to 1.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        factor is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the three voltages do not close a triangle, or all are zero
 * @source{IEC 61000-4-30, supply voltage unbalance from the three line-to-line voltages}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_unbalance_factor(double u12_v, double u23_v, double u31_v, double *factor);

/** Share of its rated power that a motor may give on an unbalanced supply.
 *
 * Model: straight lines through 1.00, 0.95, 0.88, 0.82 and 0.75 at 1, 2, 3, 4 and 5 percent, read from the standard's
 * curve to about 0.01 (some read 0.90 at 3 percent); 1 below 1 percent. Above 5 percent the standard gives no factor
 * and advises against running: the result is 0.
 *
 * @param[in]  unbalance Voltage unbalance by the maximum-deviation definition. @range{[0;2]}
 * @param[out] derating  Factor on rated power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed; above 5 percent, do not run
 * @retval FREEAIR_ERR_NULL   derating is null
 * @retval FREEAIR_ERR_DOMAIN unbalance is outside its range
 * @source{NEMA MG 1, figure 14-1, points from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_unbalance_derating(double unbalance, double *derating);

/** Temperature rise of a motor at the same load on an unbalanced supply.
 *
 * Model: rise (1 + 2 p^2 / 100), p the unbalance in percent. A rule of thumb for a few percent.
 *
 * @param[in]  rise_k            Rise of the windings on a balanced supply. @range{[0;500]}
 * @param[in]  unbalance         Voltage unbalance by the maximum-deviation definition. @range{[0;2]}
 * @param[out] unbalanced_rise_k Rise on the unbalanced supply, hottest phase.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed; the rule is for unbalance up to 0.05
 * @retval FREEAIR_ERR_NULL          unbalanced_rise_k is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, example 5.14}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_unbalance_temperature_rise(double rise_k, double unbalance, double *unbalanced_rise_k);

/** Line current of a three-phase motor after one line has opened, at the same shaft power.
 *
 * Model: sqrt(3) I cos / cos', the same voltage and efficiency. A lightly loaded motor
 * keeps running so, hot; it does not start.
 *
 * @param[in]  balanced_a            Line current with all three lines. @range{[0;1000000]}
 * @param[in]  balanced_power_factor Power factor then. @range{[0.01;1]}
 * @param[in]  single_power_factor   Power factor on two lines. @range{[0.01;1]}
 * @param[out] single_phasing_a      Line current on two lines.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   single_phasing_a is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, example 6.4}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_unbalance_single_phasing_current(double balanced_a, double balanced_power_factor,
                                                             double single_power_factor, double *single_phasing_a);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
