/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_COEFFICIENT_H
#define FREEAIR_COEFFICIENT_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup coefficient Flow coefficients
 * The flow coefficients Kv and Cv of valves, what they are worth as sonic
 * conductance, and the air flow of a Cv by the fluid power formula. Kv counts m3/h
 * of water at a drop of 1 bar, Cv US gallons a minute at 1 psi. Both are measured
 * with water: what they say of air is a guess to 10 %.
 * @{
 */

/** Flow coefficient Kv (m3/h of water at 1 bar) of a flow coefficient Cv (US gal/min at 1 psi).
 *
 * Model: Kv = 0.86497... Cv, from the definitions of gallon, inch and pound-force.
 *
 * @param[in]  cv Flow coefficient Cv. @range{[0;1e9]}
 * @param[out] kv Flow coefficient Kv.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   kv is null
 * @retval FREEAIR_ERR_DOMAIN cv is outside its range
 * @source{IEC 60534-1, definitions of the flow coefficients}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coefficient_kv_from_cv(double cv, double *kv);

/** Flow coefficient Cv of a flow coefficient Kv.
 *
 * Model: inverse of freeair_coefficient_kv_from_cv.
 *
 * @param[in]  kv Flow coefficient Kv. @range{[0;1e9]}
 * @param[out] cv Flow coefficient Cv.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   cv is null
 * @retval FREEAIR_ERR_DOMAIN kv is outside its range
 * @source{IEC 60534-1, definitions of the flow coefficients}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coefficient_cv_from_kv(double kv, double *cv);

/** Sonic conductance and critical ratio of a valve of known Kv and xT.
 *
 * Model: m = A Y sqrt(x p1 rho1), A = Kv sqrt(1000 / 1e5) / 3600 in m2, x = 1 - p2/p1,
 * Y = 1 - x / (3 xT), choked at x = xT: equal choked flow gives
 * C = (2/3) A sqrt(xT / (R T0)) / rho0, equal flow at small drop 1 - b = (8/9) xT.
 * Air, R = 287.05287 J/(kg K), k = 1.4.
 *
 * @param[in]  kv        Flow coefficient Kv. @range{[1e-9;1e6]}
 * @param[in]  x_t       Pressure drop ratio factor xT, 0.7 for a globe valve. @range{[0.02;1.1]}
 * @param[out] c_m3_s_pa Sonic conductance.
 * @param[out] b         Critical back-pressure ratio.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{IEC 60534-2-1, sizing equations for compressible fluids, matched to ISO 6358-1:2013 in the guide}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coefficient_conductance_from_kv(double kv, double x_t, double *c_m3_s_pa, double *b);

/** Flow coefficient Kv and factor xT of a component of known C and b.
 *
 * Model: inverse of freeair_coefficient_conductance_from_kv.
 *
 * @param[in]  c_m3_s_pa Sonic conductance. @range{[1e-15;0.01]}
 * @param[in]  b         Critical back-pressure ratio. @range{[0;0.98]}
 * @param[out] kv        Flow coefficient Kv.
 * @param[out] x_t       Pressure drop ratio factor xT.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coefficient_kv_from_conductance(double c_m3_s_pa, double b, double *kv, double *x_t);

/** Air flow through a valve of known Cv by the fluid power formula.
 *
 * Model: Q = 22.7 Cv sqrt((p1 - p2) p2 / T1) in standard ft3/min (14.7 psia,
 * 68 F), psia and degrees Rankine; choked at p2 = 0.53 p1 and constant below.
 *
 * @param[in]  cv     Flow coefficient Cv. @range{(0;1e6]}
 * @param[in]  p1_pa  Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k   Inlet temperature. @range{[1;5000]}
 * @param[in]  p2_pa  Outlet pressure, absolute, not above p1_pa. @range{[0;1e8]}
 * @param[out] q_m3_s Volume flow at 14.7 psia and 68 F.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is above p1_pa
 * @source{Esposito, Fluid Power with Applications, chapter 13, sizing of valves}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coefficient_air_flow_from_cv(double cv, double p1_pa, double t1_k, double p2_pa,
                                                         double *q_m3_s);

/** Cv that passes an air flow, by the fluid power formula.
 *
 * Model: inverse of freeair_coefficient_air_flow_from_cv.
 *
 * @param[in]  q_m3_s Volume flow at 14.7 psia and 68 F. @range{(0;1e4]}
 * @param[in]  p1_pa  Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k   Inlet temperature. @range{[1;5000]}
 * @param[in]  p2_pa  Outlet pressure, absolute, below p1_pa. @range{[0;1e8]}
 * @param[out] cv     Flow coefficient Cv.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   cv is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is not below p1_pa
 * @source{Esposito, Fluid Power with Applications, chapter 13, sizing of valves}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_coefficient_cv_from_air_flow(double q_m3_s, double p1_pa, double t1_k, double p2_pa,
                                                         double *cv);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
