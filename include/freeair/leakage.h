/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_LEAKAGE_H
#define FREEAIR_LEAKAGE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup leakage Leakage
 * Compressed air that leaks: how much, from load and unload times, from a falling
 * pressure or from the size of a hole; what it becomes at another pressure; what
 * it costs. A few per cent of the capacity is usual in a kept system, a tenth or
 * more is worth a search: common practice, no source.
 *
 * Each volume flow is one of free air at a reference pressure and temperature.
 * Air is dry and ideal, k = 1.4, R = 287.05287 J/(kg K).
 * @{
 */

/** Share of a compressor's capacity that leaks, from load and unload times without demand.
 *
 * Model: s = load / (load + unload). Sum the times over several whole cycles.
 *
 * @param[in]  load_s   Time on load, demand off. @range{[0;1e7]}
 * @param[in]  unload_s Time off load, demand off. @range{[0;1e7]}
 * @param[out] share    Leak as a share of the capacity.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   share is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or both times are zero
 * @source{Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3, compressed air system, leakage test}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_share_from_cycle(double load_s, double unload_s, double *share);

/** Leak from load and unload times without demand.
 *
 * Model: q = Q load / (load + unload), Q the free air delivery at the pressure of the
 * test.
 *
 * @param[in]  load_s        Time on load, demand off. @range{[0;1e7]}
 * @param[in]  unload_s      Time off load, demand off. @range{[0;1e7]}
 * @param[in]  capacity_m3_s Free air delivery of the compressor. @range{[0;1e4]}
 * @param[out] q_m3_s        Leak as free air.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or both times are zero
 * @source{Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3, compressed air system, leakage test}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_flow_from_cycle(double load_s, double unload_s, double capacity_m3_s,
                                                    double *q_m3_s);

/** Mean leak from the fall of pressure in an isolated volume.
 *
 * Model: q = V (p1 / T1 - p2 / T2) t_ref / (p_ref t), counted as mass and as free air.
 * One kelvin of cooling looks like a leak of p/T: read the temperature or wait until it
 * rests.
 *
 * @param[in]  v_m3       Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  p1_pa      Pressure at the start, absolute. @range{[1;1e8]}
 * @param[in]  t1_k       Temperature of the air at the start. @range{[50;2000]}
 * @param[in]  p2_pa      Pressure at the end, absolute. @range{[1;1e8]}
 * @param[in]  t2_k       Temperature of the air at the end. @range{[50;2000]}
 * @param[in]  duration_s Time from start to end. @range{[1e-3;1e7]}
 * @param[in]  p_ref_pa   Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k    Reference temperature of the free air. @range{[50;2000]}
 * @param[out] q_m3_s     Leak as free air.
 * @param[out] mass_kg_s  Leak as mass flow.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but below zero: the volume gained air
 * @retval FREEAIR_ERR_NULL          an output is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_mean_from_decay(double v_m3, double p1_pa, double t1_k, double p2_pa,
                                                    double t2_k, double duration_s, double p_ref_pa, double t_ref_k,
                                                    double *q_m3_s, double *mass_kg_s);

/** Leak at a chosen pressure from the fall of pressure in an isolated volume.
 *
 * Model: leaks are choked, in proportion to the absolute pressure, so that it falls
 * exponentially: q = V ln(p1 / p2) / t p t_ref / (T p_ref). Good while both pressures
 * are above about 1.9 times the barometer.
 *
 * @param[in]  v_m3       Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  p1_pa      Pressure at the start, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Pressure at the end, absolute, not above p1_pa. @range{[1;1e8]}
 * @param[in]  duration_s Time from start to end. @range{[1e-3;1e7]}
 * @param[in]  t_k        Temperature of the air in the system. @range{[50;2000]}
 * @param[in]  p_pa       Pressure at which the leak is wanted, absolute. @range{[1;1e8]}
 * @param[in]  p_ref_pa   Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k    Reference temperature of the free air. @range{[50;2000]}
 * @param[out] q_m3_s     Leak as free air.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is above p1_pa
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_at_pressure_from_decay(double v_m3, double p1_pa, double p2_pa,
                                                           double duration_s, double t_k, double p_pa,
                                                           double p_ref_pa, double t_ref_k, double *q_m3_s);

/** Leak at one pressure from the leak at another.
 *
 * Model: isentropic flow through the same effective area, so in proportion to the
 * absolute pressure while choked at both. A seal that opens with pressure leaks more
 * than that.
 *
 * @param[in]  q1_m3_s  Leak at p1_pa, free air. @range{[0;1e4]}
 * @param[in]  p1_pa    Pressure, absolute, above p_atm_pa. @range{[1000;1e8]}
 * @param[in]  p2_pa    Another pressure, absolute, not below p_atm_pa. @range{[1000;1e8]}
 * @param[in]  p_atm_pa Barometric pressure. @range{[1000;120000]}
 * @param[out] q2_m3_s  Leak at p2_pa, free air.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q2_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, p1_pa is not above p_atm_pa or p2_pa is below it
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_flow_at_pressure(double q1_m3_s, double p1_pa, double p2_pa, double p_atm_pa,
                                                     double *q2_m3_s);

/** Leak at a pressure from leaks found at several pressures.
 *
 * Model: straight line of least squares through the readings, evaluated at p_pa. No
 * physics: it serves for systems whose leaks do not grow in proportion to the absolute
 * pressure.
 *
 * @param[in]  p_pa          Pressures, all gauge or all absolute. @shape{n} @range{[0;1e8]}
 * @param[in]  q_m3_s        Leaks at those pressures. @shape{n} @range{[-1e4;1e4]}
 * @param[in]  n             Number of readings. @range{[2;100000]}
 * @param[in]  p_at_pa       Pressure at which the leak is wanted. @range{[0;1e8]}
 * @param[out] q_at_m3_s     Leak there.
 * @param[out] slope_m3_s_pa Growth of the leak with pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @retval FREEAIR_ERR_DATA   fewer than two different pressures
 * @source{US Navy, MO-209, Maintenance of Steam, Hot Water, and Compressed Air Distribution Systems, chapter 5, calculation of losses}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_flow_from_readings(const double *p_pa, const double *q_m3_s, size_t n,
                                                       double p_at_pa, double *q_at_m3_s, double *slope_m3_s_pa);

/** Leak through a round hole.
 *
 * Model: isentropic flow through coefficient times pi/4 d^2, choked or not, as mass and
 * as free air.
 *
 * @param[in]  diameter_m  Diameter. @range{[1e-6;1]}
 * @param[in]  coefficient Discharge coefficient; 0.65 for a sharp edge. @range{[0.01;1]}
 * @param[in]  p_line_pa   Pressure before the hole, absolute, above p_atm_pa. @range{[1000;1e8]}
 * @param[in]  t_line_k    Temperature before the hole. @range{[50;2000]}
 * @param[in]  p_atm_pa    Barometric pressure. @range{[1000;120000]}
 * @param[in]  p_ref_pa    Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k     Reference temperature of the free air. @range{[50;2000]}
 * @param[out] q_m3_s      Leak as free air.
 * @param[out] mass_kg_s   Leak as mass flow.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_line_pa is not above p_atm_pa
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, example on repairing an air leak}
 * @caution{FREEAIR_CAUTION_BLOWING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_flow_from_hole(double diameter_m, double coefficient, double p_line_pa,
                                                   double t_line_k, double p_atm_pa, double p_ref_pa, double t_ref_k,
                                                   double *q_m3_s, double *mass_kg_s);

/** Diameter of the one round hole that leaks as much.
 *
 * Model: inverse of freeair_leakage_flow_from_hole.
 *
 * @param[in]  q_m3_s      Leak as free air. @range{[0;1e4]}
 * @param[in]  coefficient Discharge coefficient; 0.65 for a sharp edge. @range{[0.01;1]}
 * @param[in]  p_line_pa   Pressure before the hole, absolute, above p_atm_pa. @range{[1000;1e8]}
 * @param[in]  t_line_k    Temperature before the hole. @range{[50;2000]}
 * @param[in]  p_atm_pa    Barometric pressure. @range{[1000;120000]}
 * @param[in]  p_ref_pa    Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k     Reference temperature of the free air. @range{[50;2000]}
 * @param[out] diameter_m  Diameter.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   diameter_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_line_pa is not above p_atm_pa
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_hole_from_flow(double q_m3_s, double coefficient, double p_line_pa,
                                                   double t_line_k, double p_atm_pa, double p_ref_pa, double t_ref_k,
                                                   double *diameter_m);

/** Power that a leak takes at the compressor.
 *
 * Model: P = m k / (k - 1) R T_in ((p_line / p_in)^((k-1)/k) - 1) / efficiency:
 * isentropic compression in one stage over the efficiency from there to the meter. It is
 * saved only if the control of the compressor lets it be.
 *
 * @param[in]  q_m3_s     Leak as free air. @range{[0;1e4]}
 * @param[in]  p_ref_pa   Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k    Reference temperature of the free air. @range{[50;2000]}
 * @param[in]  p_in_pa    Inlet pressure of the compressor, absolute. @range{[1000;1e6]}
 * @param[in]  t_in_k     Inlet temperature of the compressor. @range{[50;2000]}
 * @param[in]  p_line_pa  Pressure it compresses to, absolute, not below p_in_pa. @range{[1000;1e8]}
 * @param[in]  efficiency Isentropic efficiency times motor efficiency. @range{[0.01;1]}
 * @param[out] power_w    Power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   power_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_line_pa is below p_in_pa
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, example on repairing an air leak}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_power(double q_m3_s, double p_ref_pa, double t_ref_k, double p_in_pa,
                                          double t_in_k, double p_line_pa, double efficiency, double *power_w);

/** Energy and money that a leak takes in a time.
 *
 * Model: energy = power times time, cost = energy times price. A price a kilowatt-hour
 * over 3.6e6 is a price a joule.
 *
 * @param[in]  power_w   Power that the leak takes. @range{[0;1e8]}
 * @param[in]  running_s Time under pressure. @range{[0;1e10]}
 * @param[in]  price_1_j Price of energy a joule, in any currency. @range{[0;1]}
 * @param[out] energy_j  Energy.
 * @param[out] cost      Cost, in the currency of the price. @unit{any}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_leakage_cost(double power_w, double running_s, double price_1_j, double *energy_j,
                                         double *cost);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
