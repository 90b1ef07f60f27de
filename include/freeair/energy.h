/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_ENERGY_H
#define FREEAIR_ENERGY_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup energy Energy
 * Power, energy, money and emissions of making compressed air: what a compressor takes
 * at part load by the way it is controlled, over a demand profile, in a year, and what
 * its heat is worth. What a lower pressure saves is freeair_performance_saving_from_pressure,
 * what a leak costs the topic leakage.
 *
 * A price a kilowatt-hour over 3.6e6 is a price a joule; the same for emissions.
 * @{
 */

/** Ways to match a compressor to the demand.
 * @since 0.1
 */
enum freeair_energy_control {
  FREEAIR_ENERGY_START_STOP = 1,     /**< The motor stops; nothing is taken without load. */
  FREEAIR_ENERGY_LOAD_UNLOAD = 2,    /**< Runs on unloaded, storage ample. */
  FREEAIR_ENERGY_MODULATION = 3,     /**< The inlet is throttled. */
  FREEAIR_ENERGY_VARIABLE_SPEED = 4  /**< The speed follows the demand. */
};

/** Power at no flow over power at full flow, as a starting point.
 *
 * Model: table: 0 start and stop, 0.25 load and unload, 0.7 modulation, 0.1 variable speed. Measure the machine at
 * hand: unloaded screw compressors take from 0.15 to 0.35.
 *
 * @param[in]  control How it is controlled. @choice{freeair_energy_control}
 * @param[out] share   Share of the full power.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   share is null
 * @retval FREEAIR_ERR_DOMAIN no such control
 * @source{US Department of Energy, Improving Compressed Air System Performance: a sourcebook for industry, part-load curves (from memory); common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_zero_load_share(int32_t control, double *share);

/** Power at part load.
 *
 * Model: straight line P = full (z + (1 - z) s), z the power at no flow over full, s the flow over full. The energy for
 * a cubic metre grows as (z + (1 - z) s)/s. With load and unload it holds for ample storage; every unloading blows a
 * sump or a line down and costs extra.
 *
 * @param[in]  full_w         Power at full flow. @range{[0;1e9]}
 * @param[in]  zero_load      Power at no flow over full power. @range{[0;1]}
 * @param[in]  flow_share     Flow over full flow. @range{[0;1]}
 * @param[out] power_w        Power.
 * @param[out] specific_ratio Energy for a cubic metre over that at full flow; infinite at no flow.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{US Department of Energy, Improving Compressed Air System Performance: a sourcebook for industry, part-load curves (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_part_load(double full_w, double zero_load, double flow_share, double *power_w,
                                             double *specific_ratio);

/** Mean power and energy from times on load and off load.
 *
 * Model: E = P_load t_load + P_unload t_unload, mean = E / (t_load + t_unload).
 *
 * @param[in]  load_w   Power on load. @range{[0;1e9]}
 * @param[in]  unload_w Power off load; 0 when stopped. @range{[0;1e9]}
 * @param[in]  load_s   Time on load. @range{[0;1e10]}
 * @param[in]  unload_s Time off load. @range{[0;1e10]}
 * @param[out] mean_w   Mean power.
 * @param[out] energy_j Energy.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or both times are zero
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_from_times(double load_w, double unload_w, double load_s, double unload_s,
                                              double *mean_w, double *energy_j);

/** Electrical power from shaft power.
 *
 * Model: P = shaft / (motor_efficiency drive_efficiency).
 *
 * @param[in]  shaft_w          Power at the compressor's shaft. @range{[0;1e9]}
 * @param[in]  motor_efficiency Efficiency of the motor. @range{[0.05;1]}
 * @param[in]  drive_efficiency Efficiency of belt, gear, converter; 1 for none. @range{[0.05;1]}
 * @param[out] input_w          Electrical power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   input_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_input_power(double shaft_w, double motor_efficiency, double drive_efficiency,
                                               double *input_w);

/** Energy, cost and emissions of a power over a time.
 *
 * Model: E = P t; cost = E price; emission = E factor.
 *
 * @param[in]  power_w       Power taken from the supply. @range{[0;1e9]}
 * @param[in]  running_s     Time. @range{[0;1e10]}
 * @param[in]  price_1_j     Price of a joule, in any currency. @range{[0;1]}
 * @param[in]  emission_kg_j Carbon dioxide for a joule; 0.4 kg/kWh is 1.1e-7. @range{[0;1e-3]}
 * @param[out] energy_j      Energy.
 * @param[out] cost          Cost, in the currency of the price. @unit{any}
 * @param[out] emission_kg   Carbon dioxide.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_cost(double power_w, double running_s, double price_1_j, double emission_kg_j,
                                        double *energy_j, double *cost, double *emission_kg);

/** Energy of a compressor over a demand profile.
 *
 * Model: freeair_energy_part_load for each step; demand above the capacity is not met.
 *
 * @param[in]  flow_m3_s     Flows, free air. @shape{n} @range{[0;1e4]}
 * @param[in]  duration_s    Time that each lasts. @shape{n} @range{[0;1e9]}
 * @param[in]  n             Number of steps. @range{[1;inf)}
 * @param[in]  capacity_m3_s Full flow of the compressor, free air. @range{[1e-9;1e4]}
 * @param[in]  full_w        Power at full flow. @range{[0;1e9]}
 * @param[in]  zero_load     Power at no flow over full power. @range{[0;1]}
 * @param[out] energy_j      Energy.
 * @param[out] air_m3        Air made.
 * @param[out] missing_m3    Air not made.
 * @param[out] specific_j_m3 Energy for a cubic metre made; infinite when none is.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed, but the demand exceeds the capacity at times
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @retval FREEAIR_ERR_DATA   no step that lasts
 * @source{algebra: sum over the steps}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_from_profile(const double *flow_m3_s, const double *duration_s, size_t n,
                                                double capacity_m3_s, double full_w, double zero_load,
                                                double *energy_j, double *air_m3, double *missing_m3,
                                                double *specific_j_m3);

/** Heat that can be recovered, and the fuel that it saves.
 *
 * Model: heat = P t recoverable used, fuel = heat / heater_efficiency. Nine tenths of the power leaves an air-cooled
 * machine as warm air, and as much as is wanted at the time is used.
 *
 * @param[in]  power_w           Power taken from the supply. @range{[0;1e9]}
 * @param[in]  running_s         Time. @range{[0;1e10]}
 * @param[in]  recoverable       Share of the power that can be recovered. @range{[0;1]}
 * @param[in]  used              Share of that which is wanted. @range{[0;1]}
 * @param[in]  heater_efficiency Efficiency of the heater that it spares. @range{[0.05;1]}
 * @param[out] heat_j            Heat recovered.
 * @param[out] fuel_j            Fuel or electricity spared.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{US Department of Energy, Improving Compressed Air System Performance: a sourcebook for industry, heat recovery (from memory)}
 * @caution{FREEAIR_CAUTION_HOT}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_heat_recovery(double power_w, double running_s, double recoverable, double used,
                                                 double heater_efficiency, double *heat_j, double *fuel_j);

/** Time in which a saving pays for what it cost.
 *
 * Model: simple = investment / saving; with interest i a period, n = -ln(1 - i investment/saving) / ln(1 + i).
 *
 * @param[in]  investment What it costs. @unit{any} @range{[0;1e15]}
 * @param[in]  saving     What it saves in a period, in the same currency. @unit{any} @range{[1e-6;1e15]}
 * @param[in]  interest   Interest in a period. @range{[0;1]}
 * @param[out] simple     Periods, interest neglected.
 * @param[out] discounted Periods with interest.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the saving does not pay the interest
 * @source{algebra: present value of an annuity}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_energy_payback(double investment, double saving, double interest, double *simple,
                                           double *discounted);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
