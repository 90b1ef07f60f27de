/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_REAL_POLYTROPIC_H
#define FREEAIR_REAL_POLYTROPIC_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup real_polytropic Real-gas polytropic compression
 * Polytropic head and efficiency of dry air as a real gas: the path on which each small
 * step is equally efficient, by integration, and its shortcut from the end points alone by
 * Schultz, as acceptance tests of turbocompressors use it. No heat is lost on the way. Air
 * is taken at 133 K or above, where it is a gas at every pressure.
 * @{
 */

/** Exponents of a polytropic path at one point, and the compressibility functions behind them.
 *
 * Model: m = Z R/cp (1/efficiency + X), T ~ p^m; 1/n = Y - m (1 + X), p v^n = constant, with X = T/v (dv/dT)_p - 1 and
 * Y = -p/v (dv/dp)_T. With efficiency 1 the isentropic exponents. For an ideal gas X = 0, Y = 1, n = 1/(1 - m).
 *
 * @param[in]  p_pa                 Pressure, absolute. @range{[100;1e8]}
 * @param[in]  t_k                  Temperature. @range{[133;2000]}
 * @param[in]  efficiency           Polytropic efficiency. @range{[0.01;1]}
 * @param[out] volume_exponent      n, of p v^n.
 * @param[out] temperature_exponent m, of T ~ p^m.
 * @param[out] x                    Compressibility function X.
 * @param[out] y                    Compressibility function Y.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the losses heat the gas so much that its volume does not shrink
 * @source{Schultz, The Polytropic Analysis of Centrifugal Compressors, J. Eng. Power 84 (1962) 69; derived in guide}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_polytropic_exponents(double p_pa, double t_k, double efficiency,
                                                      double *volume_exponent, double *temperature_exponent, double *x,
                                                      double *y);

/** Work, head and end temperature of a compression whose every step is equally efficient.
 *
 * Model: dT/T = m dp/p with m of freeair_real_polytropic_exponents(), head = integral of v dp, work = head/efficiency.
 * Integrated over ln p by extrapolated midpoint steps (Gragg, Bulirsch, Stoer) to 1e-12, at most 2000 steps.
 *
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[100;1e8]}
 * @param[in]  t1_k       Inlet temperature. @range{[133;2000]}
 * @param[in]  p2_pa      Discharge pressure, absolute, not below p1_pa. @range{[100;1e8]}
 * @param[in]  efficiency Polytropic efficiency. @range{[0.01;1]}
 * @param[out] w_j_kg     Work of the steady flow.
 * @param[out] head_j_kg  Polytropic head.
 * @param[out] t2_k       Discharge temperature.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range, or p2_pa is below p1_pa
 * @retval FREEAIR_ERR_NO_SOLUTION    the end is above 2000 K
 * @retval FREEAIR_ERR_NO_CONVERGENCE not within the steps
 * @source{definition of the polytropic efficiency; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29
 *   (2000) 331}
 * @caution{FREEAIR_CAUTION_HOT}
 * @caution{FREEAIR_CAUTION_OIL_MIST}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_polytropic_work(double p1_pa, double t1_k, double p2_pa, double efficiency,
                                                 double *w_j_kg, double *head_j_kg, double *t2_k);

/** Polytropic efficiency and head from pressures and temperatures, along the path.
 *
 * Model: the efficiency with which freeair_real_polytropic_work() ends at t2_k, by the secant method to 1e-11, at most
 * 40 steps.
 *
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[100;1e8]}
 * @param[in]  t1_k       Inlet temperature. @range{[133;2000]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[100;1e8]}
 * @param[in]  t2_k       Discharge temperature, above t1_k. @range{[133;2000]}
 * @param[out] efficiency Polytropic efficiency.
 * @param[out] head_j_kg  Polytropic head.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_INCONSISTENT  computed, but above 1: heat was lost, or a reading is wrong
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
 * @retval FREEAIR_ERR_NO_SOLUTION    no efficiency from 0.001 to 5 leads there
 * @retval FREEAIR_ERR_NO_CONVERGENCE not within the steps
 * @source{definition of the polytropic efficiency; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29
 *   (2000) 331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_polytropic_efficiency(double p1_pa, double t1_k, double p2_pa, double t2_k,
                                                       double *efficiency, double *head_j_kg);

/** Polytropic efficiency and head from the end points, by Schultz.
 *
 * Model: n = ln(p2/p1)/ln(v1/v2), head = f n/(n-1) (p2 v2 - p1 v1), efficiency = head/(h2 - h1). The factor
 * f = (h2s - h1)/(ns/(ns-1) (p2 v2s - p1 v1)), ns = ln(p2/p1)/ln(v1/v2s), makes the same shortcut exact for the
 * isentropic path. From 1 bar and 20 degC at 90 % efficiency 0.0001 below the path at a ratio of 3, 0.0007 at 10; more
 * at low efficiency and high pressure: the guide has the table.
 *
 * @param[in]  p1_pa           Inlet pressure, absolute. @range{[100;1e8]}
 * @param[in]  t1_k            Inlet temperature. @range{[133;2000]}
 * @param[in]  p2_pa           Discharge pressure, absolute, above p1_pa. @range{[100;1e8]}
 * @param[in]  t2_k            Discharge temperature, above t1_k. @range{[133;2000]}
 * @param[out] efficiency      Polytropic efficiency.
 * @param[out] head_j_kg       Polytropic head.
 * @param[out] volume_exponent n, of p v^n between the ends.
 * @param[out] factor          Correction factor f; 1 for an ideal gas of constant heat capacity.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but the efficiency is above 1: heat was lost, or a reading is wrong
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
 * @retval FREEAIR_ERR_NO_SOLUTION   the isentropic end is above 2000 K, or the enthalpy or the density does not rise
 * @source{Schultz, The Polytropic Analysis of Centrifugal Compressors, J. Eng. Power 84 (1962) 69; ASME PTC 10-1997
 *   (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_polytropic_schultz(double p1_pa, double t1_k, double p2_pa, double t2_k,
                                                    double *efficiency, double *head_j_kg, double *volume_exponent,
                                                    double *factor);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
