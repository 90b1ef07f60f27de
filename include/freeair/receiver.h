/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_RECEIVER_H
#define FREEAIR_RECEIVER_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup receiver Receiver
 * The receiver as a store of air: its size, the time to fill it, the starts of
 * its compressor, and what a rising pressure says of the free air delivery.
 * Falling pressure: see leakage.
 *
 * Air is an ideal gas. Each volume flow is one of free air, counted at the
 * reference pressure and temperature that are given with it: the mass flow is
 * p_ref q / (R t_ref). All pressures are absolute. Water lying in a receiver
 * makes it smaller: drain it before any test.
 * @{
 */

/** Receiver volume that bridges an event in which demand exceeds supply.
 *
 * Model: V = q t p_ref T / (t_ref (p_high - p_low)), with q the demand less the supply
 * during the event. The air in the receiver keeps its temperature.
 *
 * @param[in]  shortfall_m3_s Demand less supply during the event, free air. @range{[0;1e4]}
 * @param[in]  duration_s     Duration of the event. @range{[0;1e7]}
 * @param[in]  p_high_pa      Upper pressure of the band, absolute. @range{[1;1e8]}
 * @param[in]  p_low_pa       Lower pressure of the band, absolute, below p_high_pa. @range{[1;1e8]}
 * @param[in]  t_k            Temperature of the air in the receiver. @range{[50;2000]}
 * @param[in]  p_ref_pa       Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k        Reference temperature of the free air. @range{[50;2000]}
 * @param[out] v_m3           Volume of receiver and piping.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   v_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_low_pa is not below p_high_pa
 * @source{Esposito, Fluid Power with Applications, chapter 13, sizing of receivers}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_volume_from_event(double shortfall_m3_s, double duration_s, double p_high_pa,
                                                       double p_low_pa, double t_k, double p_ref_pa, double t_ref_k,
                                                       double *v_m3);

/** Receiver volume that keeps an on/off compressor within a number of starts.
 *
 * Model: worst case, demand at half of the supply: V = q p_ref T / (4 f t_ref (p_high -
 * p_low)), f the starts a second.
 *
 * @param[in]  supply_m3_s Free air delivery while the compressor runs. @range{[0;1e4]}
 * @param[in]  starts_hz   Permitted starts a second; an hourly number over 3600. @range{[1e-9;10]}
 * @param[in]  p_high_pa   Upper pressure of the band, absolute. @range{[1;1e8]}
 * @param[in]  p_low_pa    Lower pressure of the band, absolute, below p_high_pa. @range{[1;1e8]}
 * @param[in]  t_k         Temperature of the air in the receiver. @range{[50;2000]}
 * @param[in]  p_ref_pa    Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k     Reference temperature of the free air. @range{[50;2000]}
 * @param[out] v_m3        Volume of receiver and piping.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   v_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_low_pa is not below p_high_pa
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_volume_from_starts(double supply_m3_s, double starts_hz, double p_high_pa,
                                                        double p_low_pa, double t_k, double p_ref_pa, double t_ref_k,
                                                        double *v_m3);

/** Running time, resting time and starts of a compressor that cycles between two pressures.
 *
 * Model: with the air A = V (p_high - p_low) t_ref / (T p_ref) between the pressures,
 * run = A / (supply - demand), rest = A / demand, starts = 1 / (run + rest). Steady
 * supply and demand.
 *
 * @param[in]  v_m3        Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  supply_m3_s Free air delivery while the compressor runs. @range{(0;1e4]}
 * @param[in]  demand_m3_s Demand with leaks, free air, below the supply. @range{[1e-12;1e4]}
 * @param[in]  p_high_pa   Upper pressure of the band, absolute. @range{[1;1e8]}
 * @param[in]  p_low_pa    Lower pressure of the band, absolute, below p_high_pa. @range{[1;1e8]}
 * @param[in]  t_k         Temperature of the air in the receiver. @range{[50;2000]}
 * @param[in]  p_ref_pa    Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k     Reference temperature of the free air. @range{[50;2000]}
 * @param[out] run_s       Time on load in a cycle.
 * @param[out] rest_s      Time off load in a cycle.
 * @param[out] starts_hz   Starts a second; times 3600 an hour.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or p_low_pa is not below p_high_pa
 * @retval FREEAIR_ERR_NO_SOLUTION demand is not below supply: the compressor never stops
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_cycle(double v_m3, double supply_m3_s, double demand_m3_s, double p_high_pa,
                                           double p_low_pa, double t_k, double p_ref_pa, double t_ref_k,
                                           double *run_s, double *rest_s, double *starts_hz);

/** Most starts that a steady demand can cause, at half of the supply.
 *
 * Model: f = q p_ref T / (4 V t_ref (p_high - p_low)).
 *
 * @param[in]  v_m3        Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  supply_m3_s Free air delivery while the compressor runs. @range{[0;1e4]}
 * @param[in]  p_high_pa   Upper pressure of the band, absolute. @range{[1;1e8]}
 * @param[in]  p_low_pa    Lower pressure of the band, absolute, below p_high_pa. @range{[1;1e8]}
 * @param[in]  t_k         Temperature of the air in the receiver. @range{[50;2000]}
 * @param[in]  p_ref_pa    Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k     Reference temperature of the free air. @range{[50;2000]}
 * @param[out] starts_hz   Starts a second; times 3600 an hour.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   starts_hz is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_low_pa is not below p_high_pa
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_starts_maximum(double v_m3, double supply_m3_s, double p_high_pa,
                                                    double p_low_pa, double t_k, double p_ref_pa, double t_ref_k,
                                                    double *starts_hz);

/** Free air that a receiver gives up between two pressures.
 *
 * Model: A = V (p_high - p_low) t_ref / (T p_ref), the receiver keeping its temperature.
 *
 * @param[in]  v_m3      Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  p_high_pa Upper pressure of the band, absolute. @range{[1;1e8]}
 * @param[in]  p_low_pa  Lower pressure of the band, absolute, below p_high_pa. @range{[1;1e8]}
 * @param[in]  t_k       Temperature of the air in the receiver. @range{[50;2000]}
 * @param[in]  p_ref_pa  Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k   Reference temperature of the free air. @range{[50;2000]}
 * @param[out] air_m3    Volume of free air.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   air_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_low_pa is not below p_high_pa
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_usable_air(double v_m3, double p_high_pa, double p_low_pa, double t_k,
                                                double p_ref_pa, double t_ref_k, double *air_m3);

/** Pressure in a receiver after a time of steady net inflow or outflow.
 *
 * Model: p2 = p1 + q t p_ref T / (t_ref V), temperature constant.
 *
 * @param[in]  v_m3       Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  p1_pa      Pressure at the start, absolute. @range{[1;1e8]}
 * @param[in]  net_m3_s   Supply less demand, free air; negative when emptying. @range{[-1e4;1e4]}
 * @param[in]  duration_s Time. @range{[0;1e9]}
 * @param[in]  t_k        Temperature of the air in the receiver. @range{[50;2000]}
 * @param[in]  p_ref_pa   Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k    Reference temperature of the free air. @range{[50;2000]}
 * @param[out] p2_pa      Pressure at the end, absolute.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        p2_pa is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the receiver would be empty before the time is over
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_pressure_after(double v_m3, double p1_pa, double net_m3_s, double duration_s,
                                                    double t_k, double p_ref_pa, double t_ref_k, double *p2_pa);

/** Time for a steady net flow to take a receiver from one pressure to another.
 *
 * Model: t = V (p2 - p1) t_ref / (q p_ref T), temperature constant; emptying takes a
 * negative flow.
 *
 * @param[in]  v_m3     Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  p1_pa    Pressure at the start, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa    Pressure at the end, absolute. @range{[1;1e8]}
 * @param[in]  net_m3_s Supply less demand, free air. @range{[-1e4;1e4]}
 * @param[in]  t_k      Temperature of the air in the receiver. @range{[50;2000]}
 * @param[in]  p_ref_pa Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k  Reference temperature of the free air. @range{[50;2000]}
 * @param[out] time_s   Time.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        time_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION this flow never reaches p2_pa
 * @retval FREEAIR_ERR_OVERFLOW    the time is not representable
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_fill_time(double v_m3, double p1_pa, double p2_pa, double net_m3_s, double t_k,
                                               double p_ref_pa, double t_ref_k, double *time_s);

/** Free air delivery from the time to pump a receiver up.
 *
 * Model: q = V (p2 / T2 - p1 / T1) t_ref / (p_ref t), the mean over the test. Nothing
 * may leave the receiver. The air comes in hotter than the shell: with T2 taken as T1
 * the plain rule reads high by as much as T2 stands above T1, and a volume with water in
 * it reads high by the share of the water.
 *
 * @param[in]  v_m3       Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  p1_pa      Pressure at the start, absolute. @range{[1;1e8]}
 * @param[in]  t1_k       Temperature of the air in the receiver at the start. @range{[50;2000]}
 * @param[in]  p2_pa      Pressure at the end, absolute. @range{[1;1e8]}
 * @param[in]  t2_k       Temperature of the air in the receiver at the end. @range{[50;2000]}
 * @param[in]  duration_s Time from start to end. @range{[1e-3;1e7]}
 * @param[in]  p_ref_pa   Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k    Reference temperature of the free air. @range{[50;2000]}
 * @param[out] q_m3_s     Free air delivery.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but not above zero: the receiver gained no air
 * @retval FREEAIR_ERR_NULL          q_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3, compressed air system, pump-up test}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_free_air_from_pump_up(double v_m3, double p1_pa, double t1_k, double p2_pa,
                                                           double t2_k, double duration_s, double p_ref_pa,
                                                           double t_ref_k, double *q_m3_s);

/** Water in a receiver from a pump-up that is shorter than it should be.
 *
 * Model: W = V (1 - found / expected): the same delivery fills the free part of the
 * volume.
 *
 * @param[in]  v_m3       Volume of receiver and piping. @range{[1e-6;1e6]}
 * @param[in]  expected_s Pump-up time of the drained receiver. @range{[1e-3;1e7]}
 * @param[in]  found_s    Pump-up time found, between the same pressures. @range{[1e-3;1e7]}
 * @param[out] water_m3   Volume of water.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        water_m3 is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the time found is longer than the time expected
 * @source{algebra}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_receiver_water_from_pump_up(double v_m3, double expected_s, double found_s,
                                                        double *water_m3);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
