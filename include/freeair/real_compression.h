/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_REAL_COMPRESSION_H
#define FREEAIR_REAL_COMPRESSION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup real_compression Real-gas compression
 * Compression, cooling and throttling of dry air as the real gas that it is, by the
 * equation of state of topic dry_air: work and heat are differences of enthalpy, not
 * products of a constant heat capacity. At 8 bar the closed forms of topic compression
 * are as good; at the 300 bar of a filling station they are not: its last cooler takes
 * out 18 % more than an ideal gas holds, and a valve takes the air from 20 degC to
 * -24 degC. Air is taken at 133 K or above, where it is a gas at every pressure.
 * @{
 */

/** Isentropic work and end temperature.
 *
 * Model: s(p2, T2) = s(p1, T1), w = h(p2, T2) - h(p1, T1); between close pressures w is the integral of v dp at
 * constant entropy, 8 points of Gauss, so that no digit is lost. Negative where the gas expands.
 *
 * @param[in]  p1_pa  Inlet pressure, absolute. @range{[100;1e8]}
 * @param[in]  t1_k   Inlet temperature. @range{[133;2000]}
 * @param[in]  p2_pa  Discharge pressure, absolute. @range{[100;1e8]}
 * @param[out] w_j_kg Work of the steady flow.
 * @param[out] t2_k   Discharge temperature.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the end is above 2000 K, or colder than the dew point
 * @source{algebra: first and second law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data
 *   29 (2000) 331}
 * @caution{FREEAIR_CAUTION_HOT}
 * @caution{FREEAIR_CAUTION_OIL_MIST}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_compression_isentropic(double p1_pa, double t1_k, double p2_pa, double *w_j_kg,
                                                        double *t2_k);

/** Isothermal work and the heat that leaves: the least that compression can cost.
 *
 * Model: q = T (s1 - s2), w = h2 - h1 + q; between close pressures w is the integral of v dp, 8 points of Gauss.
 *
 * @param[in]  p1_pa  Inlet pressure, absolute. @range{[100;1e8]}
 * @param[in]  t_k    Temperature. @range{[133;2000]}
 * @param[in]  p2_pa  Discharge pressure, absolute. @range{[100;1e8]}
 * @param[out] w_j_kg Work of the steady flow.
 * @param[out] q_j_kg Heat rejected; larger than w, for real air also gives up enthalpy.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: first and second law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data
 *   29 (2000) 331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_compression_isothermal(double p1_pa, double t_k, double p2_pa, double *w_j_kg,
                                                        double *q_j_kg);

/** Work, heat and end temperature of a compression p v^n = constant, as a card shows it.
 *
 * Model: v2 = v1 (p1/p2)^(1/n), w = n/(n-1) (p2 v2 - p1 v1), p1 v1 ln(p2/p1) at n = 1; T2 from p2 and v2,
 * q = w - (h2 - h1).
 *
 * @param[in]  p1_pa  Inlet pressure, absolute. @range{[100;1e8]}
 * @param[in]  t1_k   Inlet temperature. @range{[133;2000]}
 * @param[in]  p2_pa  Discharge pressure, absolute. @range{[100;1e8]}
 * @param[in]  n      Exponent of the volume. @range{[0.5;10]}
 * @param[out] w_j_kg Work of the steady flow.
 * @param[out] q_j_kg Heat rejected on the way.
 * @param[out] t2_k   Discharge temperature.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the end is not from 133 K to 2000 K
 * @source{algebra: integral of v dp; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331}
 * @caution{FREEAIR_CAUTION_HOT}
 * @caution{FREEAIR_CAUTION_OIL_MIST}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_compression_from_exponent(double p1_pa, double t1_k, double p2_pa, double n,
                                                           double *w_j_kg, double *q_j_kg, double *t2_k);

/** Temperature after a work was done on the air and a heat taken out of it.
 *
 * Model: h(p2, T2) = h(p1, T1) + w - q. Without work and heat this is throttling; with p2 = p1 and heat alone a cooler.
 *
 * @param[in]  p1_pa  Pressure before, absolute. @range{[100;1e8]}
 * @param[in]  t1_k   Temperature before. @range{[133;2000]}
 * @param[in]  p2_pa  Pressure after, absolute. @range{[100;1e8]}
 * @param[in]  w_j_kg Work done on the air; 0 in a valve. @range{[-5e6;5e6]}
 * @param[in]  q_j_kg Heat taken out; 0 where nothing cools. @range{[-5e6;5e6]}
 * @param[out] t2_k   Temperature after.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        t2_k is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the end is above 2000 K, or colder than the dew point
 * @source{algebra: first law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000)
 *   331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_compression_outlet(double p1_pa, double t1_k, double p2_pa, double w_j_kg,
                                                    double q_j_kg, double *t2_k);

/** Temperature behind a valve: what throttling makes of the air.
 *
 * Model: h(p2, T2) = h(p1, T1), the Joule-Thomson effect over the whole way. Velocities are small on both sides.
 *
 * @param[in]  p1_pa Pressure before, absolute. @range{[100;1e8]}
 * @param[in]  t1_k  Temperature before. @range{[133;2000]}
 * @param[in]  p2_pa Pressure after, absolute. @range{[100;1e8]}
 * @param[out] t2_k  Temperature after.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        t2_k is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the end is above 2000 K, or colder than the dew point
 * @source{algebra: first law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000)
 *   331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_compression_throttled(double p1_pa, double t1_k, double p2_pa, double *t2_k);

/** Isentropic efficiency from pressures and temperatures.
 *
 * Model: (h2s - h1)/(h2 - h1), h2s at p2 and the entropy of the inlet; for a machine that loses no heat between the two
 * thermometers. A cooled cylinder looks better than it is.
 *
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[100;1e8]}
 * @param[in]  t1_k       Inlet temperature. @range{[133;2000]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[100;1e8]}
 * @param[in]  t2_k       Discharge temperature, above t1_k. @range{[133;2000]}
 * @param[out] efficiency Isentropic efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1: heat was lost, or a reading is wrong
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
 * @retval FREEAIR_ERR_NO_SOLUTION   the isentropic end is above 2000 K, or the enthalpy does not rise
 * @source{Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a compressor; Lemmon, Jacobsen,
 *   Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_compression_efficiency(double p1_pa, double t1_k, double p2_pa, double t2_k,
                                                        double *efficiency);

/** Work, temperatures and cooling of several stages.
 *
 * Model: each stage compresses from the discharge pressure of the one before, less the drop ahead of it, with the
 * isentropic work over the stage's efficiency, no heat lost; the cooler ahead of a stage takes h(p_out, t_out) of the
 * stage before less h(inlet, t_in) of its own.
 *
 * @param[in]  p1_pa       Pressure ahead of the first stage, absolute. @range{[100;1e8]}
 * @param[in]  t_in_k      Inlet temperature of each stage. @shape{stages} @range{[133;2000]}
 * @param[in]  efficiency  Isentropic efficiency of each stage. @shape{stages} @range{[0.01;1]}
 * @param[in]  drop_pa     Pressure lost ahead of each stage: filter, then coolers. @shape{stages} @range{[0;1e8]}
 * @param[in]  p_out_pa    Discharge pressure of each stage, absolute. @shape{stages} @range{[100;1e8]}
 * @param[in]  stages      Number of stages. @range{[1;100]}
 * @param[out] stage_j_kg  Work of each stage. @shape{stages}
 * @param[out] t_out_k     Discharge temperature of each stage. @shape{stages}
 * @param[out] cooler_j_kg Heat taken out ahead of each stage; 0 ahead of the first. @shape{stages}
 * @param[out] w_j_kg      Work of all stages.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION a stage would have to expand, a drop leaves less than 100 Pa, or a stage ends above
 *   2000 K
 * @source{algebra: first law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000)
 *   331}
 * @caution{FREEAIR_CAUTION_HOT}
 * @caution{FREEAIR_CAUTION_OIL_MIST}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_real_compression_stages(double p1_pa, const double *t_in_k, const double *efficiency,
                                                    const double *drop_pa, const double *p_out_pa, size_t stages,
                                                    double *stage_j_kg, double *t_out_k, double *cooler_j_kg,
                                                    double *w_j_kg);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
