/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_COMPRESSION_H
#define FREEAIR_COMPRESSION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup compression Compression
 * Compression of an ideal gas in one stage: work, power, temperature, exponent,
 * heat. Every change of state is p v^n = constant: n = 1 is isothermal, n = k
 * isentropic, between them the gas is cooled while it is compressed. Nothing is
 * lost in the last digits where the pressures are close or n is close to 1.
 * Work is that of a steady flow machine (induction, compression, delivery),
 * clearance does not change it, and expansion (p2 below p1) makes it negative.
 * Air up to about 15 bar is ideal within 1 %.
 * @{
 */

/** Isothermal work per kilogram.
 *
 * Model: w = R T1 ln(p2/p1). The least that compression can cost from p1, T1 to p2.
 *
 * @param[in]  r_j_kg_k Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k     Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa    Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa    Discharge pressure, absolute. @range{[1;1e8]}
 * @param[out] w_j_kg   Work.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   w_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_work_isothermal(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                        double *w_j_kg);

/** Isentropic work per kilogram.
 *
 * Model: w = k/(k-1) R T1 ((p2/p1)^((k-1)/k) - 1), constant specific heats, no friction, no heat.
 *
 * @param[in]  r_j_kg_k Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k     Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa    Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa    Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  k        Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[out] w_j_kg   Work.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   w_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_work_isentropic(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                        double k, double *w_j_kg);

/** Polytropic work per kilogram.
 *
 * Model: w = n/(n-1) R T1 ((p2/p1)^((n-1)/n) - 1), which is R T1 ln(p2/p1) at n = 1.
 *
 * @param[in]  r_j_kg_k Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k     Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa    Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa    Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n        Polytropic exponent; 1 is isothermal. @range{[0.5;10]}
 * @param[out] w_j_kg   Work.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   w_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_work_polytropic(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                        double n, double *w_j_kg);

/** Work per cubic metre of free air.
 *
 * Model: w = p_free (t1/t_free) n/(n-1) ((p2/p1)^((n-1)/n) - 1): the polytropic work of the mass that fills
 * one cubic metre at the free-air state. n = 1 is isothermal, n = k isentropic.
 *
 * @param[in]  p_free_pa Pressure of the free air, absolute. @range{[1;1e8]}
 * @param[in]  t_free_k  Temperature of the free air. @range{[1;5000]}
 * @param[in]  t1_k      Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa     Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa     Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n         Polytropic exponent. @range{[0.5;10]}
 * @param[out] w_j_m3    Work per cubic metre.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   w_j_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: polytropic work times the density of the free air}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_free_air_work(double p_free_pa, double t_free_k, double t1_k, double p1_pa,
                                                      double p2_pa, double n, double *w_j_m3);

/** Power from a mass flow.
 *
 * Model: P = m w / efficiency, w the polytropic work per kilogram.
 *
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k       Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n          Polytropic exponent; 1 isothermal, k isentropic. @range{[0.5;10]}
 * @param[in]  m_kg_s     Mass flow. @range{[0;1e6]}
 * @param[in]  efficiency All between this work and the power wanted, multiplied; 1 for the ideal. @range{[0.001;1]}
 * @param[out] power_w    Power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   power_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_power_from_mass_flow(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                             double n, double m_kg_s, double efficiency,
                                                             double *power_w);

/** Power from a flow of free air.
 *
 * Model: P = fad w / efficiency, w as freeair_compression_free_air_work.
 *
 * @param[in]  p_free_pa  Pressure of the free air, absolute. @range{[1;1e8]}
 * @param[in]  t_free_k   Temperature of the free air. @range{[1;5000]}
 * @param[in]  t1_k       Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n          Polytropic exponent; 1 isothermal, k isentropic. @range{[0.5;10]}
 * @param[in]  fad_m3_s   Free air flow. @range{[0;1e6]}
 * @param[in]  efficiency All between this work and the power wanted, multiplied; 1 for the ideal. @range{[0.001;1]}
 * @param[out] power_w    Power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   power_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: free air flow times work per cubic metre of free air}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_power_from_free_air(double p_free_pa, double t_free_k, double t1_k,
                                                            double p1_pa, double p2_pa, double n, double fad_m3_s,
                                                            double efficiency, double *power_w);

/** Discharge temperature.
 *
 * Model: T2 = T1 (p2/p1)^((n-1)/n).
 *
 * @param[in]  t1_k  Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n     Polytropic exponent; k for isentropic. @range{[0.5;10]}
 * @param[out] t2_k  Discharge temperature.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   t2_k is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: p v^n = constant with p v = R T}
 * @caution{FREEAIR_CAUTION_HOT}
 * @caution{FREEAIR_CAUTION_OIL_MIST}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_temperature(double t1_k, double p1_pa, double p2_pa, double n, double *t2_k);

/** Pressure at which a temperature is reached.
 *
 * Model: p2 = p1 (T2/T1)^(n/(n-1)).
 *
 * @param[in]  t1_k  Inlet temperature. @range{[1;5000]}
 * @param[in]  t2_k  Temperature reached. @range{[1;5000]}
 * @param[in]  p1_pa Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  n     Polytropic exponent; k for isentropic. @range{[0.5;10]}
 * @param[out] p2_pa Pressure, absolute.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        p2_pa is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION n is 1, or the pressure is not from 1 Pa to 1e8 Pa
 * @source{algebra: p v^n = constant with p v = R T}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_pressure_from_temperature(double t1_k, double t2_k, double p1_pa, double n,
                                                                  double *p2_pa);

/** Polytropic exponent from measured temperatures.
 *
 * Model: (n-1)/n = ln(T2/T1) / ln(p2/p1). The gas temperature inside the cylinder is meant; a thermometer in the
 * discharge pipe reads lower, and so does the exponent.
 *
 * @param[in]  p1_pa Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k  Inlet temperature. @range{[1;5000]}
 * @param[in]  p2_pa Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  t2_k  Discharge temperature. @range{[1;5000]}
 * @param[out] n     Polytropic exponent.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        n is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pressures are equal, or the exponent is not from 0.5 to 10
 * @source{algebra: p v^n = constant with p v = R T}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_exponent_from_temperatures(double p1_pa, double t1_k, double p2_pa,
                                                                   double t2_k, double *n);

/** Polytropic exponent from two points of a card.
 *
 * Model: n = ln(p2/p1) / ln(V1/V2), for the same trapped mass at both points. freeair_indicator_exponent fits
 * more than two points.
 *
 * @param[in]  p1_pa Pressure at the first point, absolute. @range{[1;1e8]}
 * @param[in]  v1_m3 Volume at the first point, clearance included. @range{[1e-12;1e6]}
 * @param[in]  p2_pa Pressure at the second point, absolute. @range{[1;1e8]}
 * @param[in]  v2_m3 Volume at the second point, clearance included. @range{[1e-12;1e6]}
 * @param[out] n     Polytropic exponent.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        n is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the volumes are equal, or the exponent is not from 0.5 to 10
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_exponent_from_volumes(double p1_pa, double v1_m3, double p2_pa, double v2_m3,
                                                              double *n);

/** Heat given up by the gas during polytropic compression, per kilogram.
 *
 * Model: q = w (k-n) / (n (k-1)), w the polytropic work: cv (k-n)/(n-1) (T2-T1) for n other than 1, R T1 ln(p2/p1)
 * at n = 1, zero at n = k, negative above.
 *
 * @param[in]  r_j_kg_k Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k     Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa    Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa    Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n        Polytropic exponent. @range{[0.5;10]}
 * @param[in]  k        Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[out] q_j_kg   Heat rejected.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Rajput, A Textbook of Internal Combustion Engines, chapter 20, heat rejected during polytropic compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_compression_heat_rejected(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                      double n, double k, double *q_j_kg);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
