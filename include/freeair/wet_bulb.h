/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_WET_BULB_H
#define FREEAIR_WET_BULB_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup wet_bulb Wet bulb
 * The temperature that evaporating water brings air to, and the humidity that a
 * psychrometer shows by it. The real gas of topic moist_air, at any pressure.
 *
 * This is the thermodynamic wet bulb, or adiabatic saturation temperature. A wick
 * in a draught of 3 m/s and more is within 0.1 K of it near atmospheric pressure;
 * in still air it reads too warm.
 * @{
 */

/** Wet bulb temperature of moist air.
 *
 * Model: h(p, T, w) + (ws - w) hw(p, T*) = h(p, T*, ws), ws the humidity ratio of
 * saturated air at the wet bulb T*, hw the enthalpy of water or ice there.
 * Newton's method in a bracket, at most 100 steps, to 1e-12. Where a wick could be
 * wet as well as frozen, it is wet.
 *
 * @param[in]  p_pa           Pressure, absolute. @range{[1000;1e7]}
 * @param[in]  t_k            Temperature. @range{[213.15;573.15]}
 * @param[in]  humidity_ratio Mass of vapour by mass of dry air. @range{[0;10]}
 * @param[in]  over           Wick wet (supercooled) or frozen below 0.01 degC. @choice{freeair_saturation_over}
 * @param[out] wet_bulb_k     Wet bulb temperature.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          wet_bulb_k is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   saturated air holds less vapour: some of it would condense
 * @source{ASHRAE Handbook Fundamentals 2017, chapter 1, thermodynamic wet-bulb temperature; properties of IAPWS G8-10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_wet_bulb_temperature(double p_pa, double t_k, double humidity_ratio, int32_t over,
                                                 double *wet_bulb_k);

/** Humidity ratio from dry and wet bulb.
 *
 * Model: the balance of freeair_wet_bulb_temperature() solved for w, at most 50 steps, to rounding.
 *
 * @param[in]  p_pa           Pressure, absolute. @range{[1000;1e7]}
 * @param[in]  t_k            Temperature, dry bulb. @range{[213.15;573.15]}
 * @param[in]  wet_bulb_k     Temperature, wet bulb. @range{[173.15;573.15]}
 * @param[in]  over           Wick wet (supercooled) or frozen below 0.01 degC. @choice{freeair_saturation_over}
 * @param[out] humidity_ratio Mass of vapour by mass of dry air.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K, below 193 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          humidity_ratio is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   the wet bulb is above the dry bulb, lower than dry air could bring it, or boiling
 * @source{ASHRAE Handbook Fundamentals 2017, chapter 1, thermodynamic wet-bulb temperature; properties of IAPWS G8-10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_wet_bulb_humidity_ratio(double p_pa, double t_k, double wet_bulb_k, int32_t over,
                                                    double *humidity_ratio);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
