/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DEW_POINT_H
#define FREEAIR_DEW_POINT_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup dew_point Dew point
 * Dew point and frost point at any pressure, and from one pressure to another:
 * a dryer's pressure dew point of 3 degC at 8 bar is a frost point of -20.5 degC
 * once the air is at 1 bar.
 *
 * Over water is a dew point, supercooled below 0.01 degC; over ice is a frost
 * point, which above 0.01 degC is the dew point. Every function asks which.
 * Dew and frost points reach from 173.15 K (-100 degC) to 573.15 K; what lies
 * outside is FREEAIR_ERR_NO_SOLUTION. Made for 193 K to 473.15 K and 5 MPa; beyond,
 * results come with FREEAIR_WARN_EXTRAPOLATED.
 * @{
 */

/** Dew or frost point at one pressure from that at another: pressure dew point to atmospheric and back.
 *
 * Model: the mole fraction of vapour stays: f(p1, T1) e(T1)/p1 = f(p2, T2) e(T2)/p2,
 * e the saturation pressure and f the enhancement factor, or one without it.
 * Successive substitution, at most 60 steps, to rounding.
 *
 * @param[in]  p1_pa   Pressure at which the dew point is known, absolute. @range{[1;1e7]}
 * @param[in]  dew1_k  Dew or frost point there. @range{[173.15;573.15]}
 * @param[in]  over1   What it is over. @choice{freeair_saturation_over}
 * @param[in]  p2_pa   Pressure at which it is wanted, absolute. @range{[1;1e7]}
 * @param[in]  over2   What it shall be over. @choice{freeair_saturation_over}
 * @param[in]  model   With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] dew2_k  Dew or frost point at the second pressure.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but one of the states is below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          dew2_k is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   at the first dew point water would boil, or the second is out of range
 * @source{IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O in Humid Air; ISO 8573-3:1999, Measurement of
 *   humidity, for the terms}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dew_point_at_pressure(double p1_pa, double dew1_k, int32_t over1, double p2_pa,
                                                  int32_t over2, int32_t model, double *dew2_k);

/** Dew or frost point from the humidity ratio.
 *
 * Model: f(p, T) e(T) = x p, solved for T by successive substitution, at most 60 steps, to rounding.
 *
 * @param[in]  p_pa           Pressure, absolute. @range{[1;1e7]}
 * @param[in]  humidity_ratio Mass of vapour by mass of dry air. @range{(0;10]}
 * @param[in]  over           What it shall be over. @choice{freeair_saturation_over}
 * @param[in]  model          With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] dew_k          Dew or frost point.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          dew_k is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   the dew point is outside 173.15 K to 573.15 K
 * @source{IAPWS G9-15; definition of the dew point}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dew_point_from_ratio(double p_pa, double humidity_ratio, int32_t over, int32_t model,
                                                 double *dew_k);

/** Dew or frost point from the relative humidity.
 *
 * Model: as freeair_dew_point_from_ratio(), at the mole fraction rh f e/p of
 * freeair_humidity_ratio_from_relative().
 *
 * @param[in]  p_pa              Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k               Temperature. @range{[173.15;573.15]}
 * @param[in]  relative_humidity Relative humidity over water. @range{(0;1]}
 * @param[in]  over              What it shall be over. @choice{freeair_saturation_over}
 * @param[in]  model             With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] dew_k             Dew or frost point.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          dew_k is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   no air is left, or the dew point is outside 173.15 K to 573.15 K
 * @source{IAPWS G9-15; definitions of relative humidity and dew point}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dew_point_from_relative(double p_pa, double t_k, double relative_humidity, int32_t over,
                                                    int32_t model, double *dew_k);

/** Humidity ratio from the dew or frost point.
 *
 * Model: w = (Mw/Ma) x/(1 - x), x = f(p, T) e(T)/p.
 *
 * @param[in]  p_pa           Pressure, absolute. @range{[1;1e7]}
 * @param[in]  dew_k          Dew or frost point. @range{[173.15;573.15]}
 * @param[in]  over           What it is over. @choice{freeair_saturation_over}
 * @param[in]  model          With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] humidity_ratio Mass of vapour by mass of dry air.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          humidity_ratio is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   at the dew point water would boil, or the humidity ratio is above 10
 * @source{IAPWS G9-15; definition of the humidity ratio}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dew_point_humidity_ratio(double p_pa, double dew_k, int32_t over, int32_t model,
                                                     double *humidity_ratio);

/** Relative humidity from the dew or frost point.
 *
 * Model: rh = x/x_saturated, both by f e/p, at the dew point and over water at the
 * temperature; where water would boil, rh = x p/e.
 *
 * @param[in]  p_pa              Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k               Temperature. @range{[173.15;573.15]}
 * @param[in]  dew_k             Dew or frost point. @range{[173.15;573.15]}
 * @param[in]  over              What it is over. @choice{freeair_saturation_over}
 * @param[in]  model             With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] relative_humidity Relative humidity over water.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          relative_humidity is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   saturated above this temperature already, or water would boil at the dew point
 * @source{IAPWS G9-15; definitions of relative humidity and dew point}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dew_point_relative_humidity(double p_pa, double t_k, double dew_k, int32_t over,
                                                        int32_t model, double *relative_humidity);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
