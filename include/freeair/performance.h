/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PERFORMANCE_H
#define FREEAIR_PERFORMANCE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup performance Performance
 * What a running compressor achieves: efficiencies after the definitions of the
 * standards, specific power, heat balance, and what a lower set pressure saves.
 * An efficiency is an ideal power or work over a real one. Say which power is
 * meant: indicated (in the cylinder), shaft, or electrical at the terminals.
 * A result above 1 means that the readings contradict one another; it is
 * returned with a warning.
 * @{
 */

/** Isothermal efficiency from mass flow and power.
 *
 * Model: m R T1 ln(p2/p1) / P. With shaft power the overall isothermal efficiency of the machine, with indicated
 * power that of its cycle.
 *
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k       Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  m_kg_s     Mass flow delivered. @range{[0;1e6]}
 * @param[in]  power_w    Real power. @range{[0.001;1e12]}
 * @param[out] efficiency Isothermal efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or p2_pa is not above p1_pa
 * @source{ISO 1217:2009, Displacement compressors - Acceptance tests, terms and definitions (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_efficiency_isothermal(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                              double m_kg_s, double power_w, double *efficiency);

/** Isentropic efficiency from mass flow and power.
 *
 * Model: m k/(k-1) R T1 ((p2/p1)^((k-1)/k) - 1) / P.
 *
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k       Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  k          Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[in]  m_kg_s     Mass flow delivered. @range{[0;1e6]}
 * @param[in]  power_w    Real power. @range{[0.001;1e12]}
 * @param[out] efficiency Isentropic efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or p2_pa is not above p1_pa
 * @source{ISO 1217:2009, Displacement compressors - Acceptance tests, terms and definitions (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_efficiency_isentropic(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                              double k, double m_kg_s, double power_w,
                                                              double *efficiency);

/** Isothermal efficiency of a polytropic compression.
 *
 * Model: ln(p2/p1) / (n/(n-1) ((p2/p1)^((n-1)/n) - 1)): isothermal over polytropic work, valves ideal. Below n = 1
 * it is above 1.
 *
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  n          Polytropic exponent. @range{[0.5;10]}
 * @param[out] efficiency Isothermal efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or p2_pa is not above p1_pa
 * @source{Joel, Basic Engineering Thermodynamics, chapter 14, isothermal efficiency}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_efficiency_isothermal_from_exponent(double p1_pa, double p2_pa, double n,
                                                                            double *efficiency);

/** Isentropic efficiency from temperatures.
 *
 * Model: T1 ((p2/p1)^((k-1)/k) - 1) / (T2 - T1), for a machine that loses no heat between the two thermometers. A
 * cooled cylinder looks better than it is.
 *
 * @param[in]  k          Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k       Inlet temperature. @range{[1;5000]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  t2_k       Discharge temperature, above t1_k. @range{[1;5000]}
 * @param[out] efficiency Isentropic efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1: heat was lost, or a reading is wrong
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
 * @source{Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a compressor}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_efficiency_isentropic_from_temperatures(double k, double p1_pa, double t1_k,
                                                                                double p2_pa, double t2_k,
                                                                                double *efficiency);

/** Polytropic (small-stage) efficiency from temperatures.
 *
 * Model: (k-1)/k ln(p2/p1) / ln(T2/T1), for a machine that loses no heat between the two thermometers.
 *
 * @param[in]  k          Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k       Inlet temperature. @range{[1;5000]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  t2_k       Discharge temperature, above t1_k. @range{[1;5000]}
 * @param[out] efficiency Polytropic efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1: heat was lost, or a reading is wrong
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
 * @source{algebra: ratio of the exponents (k-1)/k and (n-1)/n}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_efficiency_polytropic_from_temperatures(double k, double p1_pa, double t1_k,
                                                                                double p2_pa, double t2_k,
                                                                                double *efficiency);

/** Mechanical efficiency.
 *
 * Model: indicated power over shaft power.
 *
 * @param[in]  indicated_w Indicated power. @range{[0;1e12]}
 * @param[in]  shaft_w     Shaft power. @range{[0.001;1e12]}
 * @param[out] efficiency  Mechanical efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_efficiency_mechanical(double indicated_w, double shaft_w, double *efficiency);

/** Overall efficiency.
 *
 * Model: ideal power over the power put in. The ideal, isothermal or isentropic, and the place where the input is
 * measured, shaft or terminals, name the efficiency.
 *
 * @param[in]  ideal_w    Ideal power for the air delivered. @range{[0;1e12]}
 * @param[in]  input_w    Power put in. @range{[0.001;1e12]}
 * @param[out] efficiency Overall efficiency.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_efficiency_overall(double ideal_w, double input_w, double *efficiency);

/** Specific power: energy for each cubic metre of free air.
 *
 * Model: P / fad. 1 kW/(m3/min) is 60 kJ/m3; the trade's kW per 100 cfm is 21.19 kJ/m3.
 *
 * @param[in]  power_w         Power, shaft or electrical. @range{[0;1e12]}
 * @param[in]  fad_m3_s        Free air delivery. @range{[1e-9;1e6]}
 * @param[out] specific_j_m3   Specific power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   specific_j_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ISO 1217:2009, specific energy requirement (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_specific_power(double power_w, double fad_m3_s, double *specific_j_m3);

/** Fraction of the work saved by a lower discharge pressure.
 *
 * Model: 1 - w(p1, p2_reduced) / w(p1, p2), w the polytropic work; the same air delivered at both pressures. The
 * air that is then used falls too, which is not counted. Negative when p2_reduced_pa is above p2_pa.
 *
 * @param[in]  p1_pa         Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa         Discharge pressure now, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  p2_reduced_pa Discharge pressure then, absolute, not below p1_pa. @range{[1;1e8]}
 * @param[in]  n             Polytropic exponent. @range{[0.5;10]}
 * @param[out] saving        Fraction saved.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   saving is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the pressures are not in order
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, reducing the pressure setting}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_saving_from_pressure(double p1_pa, double p2_pa, double p2_reduced_pa,
                                                             double n, double *saving);

/** Discharge temperature of an uncooled machine from its isentropic efficiency.
 *
 * Model: T2 = T1 (1 + ((p2/p1)^((k-1)/k) - 1) / efficiency).
 *
 * @param[in]  t1_k       Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  k          Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[in]  efficiency Isentropic efficiency. @range{[0.001;1]}
 * @param[out] t2_k       Discharge temperature.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   t2_k is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is below p1_pa
 * @source{Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a compressor}
 * @caution{FREEAIR_CAUTION_HOT}
 * @caution{FREEAIR_CAUTION_OIL_MIST}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_temperature_from_efficiency(double t1_k, double p1_pa, double p2_pa, double k,
                                                                    double efficiency, double *t2_k);

/** Heat that a machine gives up besides the warm air: first law from power and temperatures.
 *
 * Model: Q = P - m cp (T2 - T1). With shaft power: cylinder walls, crankcase and the coolers ahead of T2.
 *
 * @param[in]  power_w   Power put in. @range{[0;1e12]}
 * @param[in]  m_kg_s    Mass flow. @range{[0;1e6]}
 * @param[in]  cp_j_kg_k Specific heat at constant pressure; 1005 for air. @range{[10;100000]}
 * @param[in]  t1_k      Inlet temperature. @range{[1;5000]}
 * @param[in]  t2_k      Discharge temperature. @range{[1;5000]}
 * @param[out] heat_w    Heat given up.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   heat_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: first law for steady flow}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_performance_heat_from_power(double power_w, double m_kg_s, double cp_j_kg_k, double t1_k,
                                                        double t2_k, double *heat_w);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
