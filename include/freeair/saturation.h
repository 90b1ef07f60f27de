/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_SATURATION_H
#define FREEAIR_SATURATION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup saturation Saturation of water
 * Pressure of pure vapour in equilibrium with liquid water or ice, and the
 * temperature for a pressure: the root of every dew point. In air at pressure
 * the vapour is a little denser than that: see the enhancement factor of topic
 * moist_air.
 *
 * Below 0.01 degC there are two answers. Over ice the pressure is lower than over
 * supercooled water, by 10 % at -10 degC, 34 % at -30 degC. Frost forms on
 * surfaces; dew point mirrors and humidity sensors often mean supercooled water.
 * A dew point below freezing says nothing before it says which.
 * @{
 */

/** What the vapour is in equilibrium with. They differ below 0.01 degC only.
 * @since 0.1
 */
enum freeair_saturation_over {
  FREEAIR_SATURATION_OVER_WATER = 1, /**< Liquid water, supercooled below 0.01 degC: the dew point. */
  FREEAIR_SATURATION_OVER_ICE = 2    /**< Ice below 0.01 degC, liquid water above: the frost point. */
};

/** Saturation pressure of water.
 *
 * Model: from 273.16 K IAPWS-IF97 equation 30; below it over ice the sublimation
 * equation of IAPWS R14-08, over supercooled water equation 10 of Murphy and Koop
 * (2005). At 273.16 K the three agree within 1e-7.
 *
 * @param[in]  t_k  Temperature; over water at least 123 K. @range{[50;647.096]}
 * @param[in]  over What the vapour is in equilibrium with. @choice{freeair_saturation_over}
 * @param[out] p_pa Saturation pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or over is not one of its constants
 * @source{IAPWS R7-97(2012), equation 30; IAPWS R14-08(2011), equation 6; Murphy, Koop, Q. J. R. Meteorol. Soc. 131 (2005)
 *   1539, equation 10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_saturation_pressure(double t_k, int32_t over, double *p_pa);

/** Saturation temperature of water: dew or frost point of pure vapour at a pressure.
 *
 * Model: freeair_saturation_pressure() solved for temperature: from the triple
 * point IAPWS-IF97 equation 31, which is the exact inverse; below it Newton's
 * method in 1/T, at most 30 steps, to rounding.
 *
 * @param[in]  p_pa Pressure of the vapour. @range{(0;22.064e6]}
 * @param[in]  over What the vapour is in equilibrium with. @choice{freeair_saturation_over}
 * @param[out] t_k  Saturation temperature.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        t_k is null
 * @retval FREEAIR_ERR_DOMAIN      p_pa is outside its range, or over is not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION below 123 K over water, 50 K over ice
 * @source{IAPWS R7-97(2012), equation 31; IAPWS R14-08(2011), equation 6; Murphy, Koop, Q. J. R. Meteorol. Soc. 131 (2005)
 *   1539, equation 10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_saturation_temperature(double p_pa, int32_t over, double *t_k);

/** Saturation pressure over liquid water by IAPWS-IF97 alone.
 *
 * Model: the quadratic form of region 4 solved for pressure.
 *
 * @param[in]  t_k  Temperature. @range{[273.15;647.096]}
 * @param[out] p_pa Saturation pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{IAPWS R7-97(2012), Industrial Formulation 1997 for Water and Steam, equation 30}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_saturation_pressure_water(double t_k, double *p_pa);

/** Saturation temperature over liquid water by IAPWS-IF97 alone.
 *
 * Model: the quadratic form of region 4 solved for temperature.
 *
 * @param[in]  p_pa Saturation pressure. @range{[611.213;22.064e6]}
 * @param[out] t_k  Temperature.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   t_k is null
 * @retval FREEAIR_ERR_DOMAIN p_pa is outside its range
 * @source{IAPWS R7-97(2012), Industrial Formulation 1997 for Water and Steam, equation 31}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_saturation_temperature_water(double p_pa, double *t_k);

/** Sublimation pressure of ice.
 *
 * Model: ln(p/611.657 Pa) = (1/theta) sum a theta^b, theta = T/273.16 K, three terms.
 *
 * @param[in]  t_k  Temperature. @range{[50;273.16]}
 * @param[out] p_pa Sublimation pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{IAPWS R14-08(2011), Pressure along the Melting and Sublimation Curves of Ordinary Water Substance, equation 6}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_saturation_pressure_ice(double t_k, double *p_pa);

/** Saturation pressure over supercooled water.
 *
 * Model: equation 10 of Murphy and Koop (2005), 123 K to 332 K; below 235 K water
 * does not stay liquid for long.
 *
 * @param[in]  t_k  Temperature. @range{[123;332]}
 * @param[out] p_pa Saturation pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{Murphy, Koop, Review of the vapour pressures of ice and supercooled water for atmospheric applications, Q. J. R.
 *   Meteorol. Soc. 131 (2005) 1539, equation 10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_saturation_pressure_supercooled(double t_k, double *p_pa);

/** Latent heat of water at saturation: of vaporisation, or of sublimation over ice.
 *
 * Model: enthalpy of the vapour less that of the liquid by IAPWS-95, or less that
 * of ice by IAPWS R10-06, both at the saturation pressure.
 *
 * @param[in]  t_k    Temperature. @range{[238.15;573.15]}
 * @param[in]  over   What the vapour comes from. @choice{freeair_saturation_over}
 * @param[out] l_j_kg Latent heat.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   l_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range, or over is not one of its constants
 * @source{IAPWS R6-95(2018), Thermodynamic Properties of Ordinary Water Substance for General and Scientific Use; IAPWS
 *   R10-06(2009), Equation of State 2006 for H2O Ice Ih}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_saturation_latent_heat(double t_k, int32_t over, double *l_j_kg);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
