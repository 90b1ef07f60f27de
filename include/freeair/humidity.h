/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_HUMIDITY_H
#define FREEAIR_HUMIDITY_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup humidity Humidity
 * Every measure of humidity from every other, at any pressure: one call takes
 * whichever was measured and gives them all. A few conversions that are needed
 * all day have a function of their own; dew points have their own topic.
 *
 * Relative humidity is over liquid water at every temperature, as hygrometers
 * and weather services have it: rh = x/x_saturated. Where water would boil at the
 * temperature (a hot discharge) it is x p/e.
 *
 * Made for 193 K to 473.15 K and up to 5 MPa; beyond, results come with FREEAIR_WARN_EXTRAPOLATED.
 * @{
 */

/** What is known of the air: pressure, temperature, and one measure of humidity.
 * @since 0.1
 */
typedef struct freeair_humidity_given {
  uint32_t struct_size; /**< Bytes of this structure, set by the initialiser. */
  uint32_t flags;       /**< Must be 0. */
  double p_pa;          /**< Pressure, absolute. @range{[1000;1e7]} */
  double t_k;           /**< Temperature. @range{[213.15;573.15]} */
  double mole_fraction; /**< Moles of vapour in a mole of moist air. @range{[0;0.9414]} @default{not given} */
  double vapour_pressure_pa;   /**< Partial pressure of the vapour. @range{[0;1e7]} @default{not given} */
  double humidity_ratio;       /**< Mass of vapour by mass of dry air. @range{[0;10]} @default{not given} */
  double specific_humidity;    /**< Mass of vapour by mass of moist air. @range{[0;0.909]} @default{not given} */
  double relative_humidity;    /**< Relative humidity over water. @range{[0;1]} @default{not given} */
  double dew_point_k;          /**< Dew point, over water. @range{[173.15;573.15]} @default{not given} */
  double frost_point_k;        /**< Frost point, over ice. @range{[173.15;573.15]} @default{not given} */
  double wet_bulb_k;           /**< Wet bulb temperature. @range{[173.15;573.15]} @default{not given} */
  double vapour_density_kg_m3; /**< Vapour in a volume, absolute humidity. @range{[0;100]} @default{not given} */
  int32_t model;               /**< With the enhancement factor or without. @choice{freeair_enhancement_model} */
  int32_t wick;                /**< Wick below 0.01 degC: wet or frozen. @choice{freeair_saturation_over} */
} freeair_humidity_given;

/** Size in bytes of freeair_humidity_given in the release that introduced it. */
#define FREEAIR_HUMIDITY_GIVEN_BASELINE 104

/** Initial value of freeair_humidity_given: nothing given, FREEAIR_ENHANCEMENT_VIRIAL, FREEAIR_SATURATION_OVER_ICE. */
#define FREEAIR_HUMIDITY_GIVEN_INIT \
  { (uint32_t)sizeof(freeair_humidity_given), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 2, 2}

/** Initialises freeair_humidity_given; never writes past caller_size.
 *
 * Model: nothing given, with the enhancement factor, a frozen wick.
 *
 * @param[out] given       The structure.
 * @param[in]  caller_size Its size as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    given is null
 * @retval FREEAIR_ERR_VERSION caller_size is not the size of such a structure
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_humidity_given_init(freeair_humidity_given *given, size_t caller_size);

/** Every measure of the humidity of some air, and what goes with it.
 * @since 0.1
 */
typedef struct freeair_humidity_found {
  uint32_t struct_size;        /**< Bytes of this structure, set by the initialiser. */
  uint32_t flags;              /**< Must be 0. */
  double mole_fraction;        /**< Moles of vapour in a mole of moist air. */
  double vapour_pressure_pa;   /**< Partial pressure of the vapour, mole fraction times pressure. */
  double humidity_ratio;       /**< Mass of vapour by mass of dry air. */
  double specific_humidity;    /**< Mass of vapour by mass of moist air. */
  double relative_humidity;    /**< Relative humidity over water. */
  double dew_point_k;          /**< Dew point, over water; NaN below 173.15 K. */
  double frost_point_k;        /**< Frost point, over ice below 0.01 degC; NaN below 173.15 K. */
  double wet_bulb_k;           /**< Wet bulb temperature; NaN where the air is supersaturated over the wick's ice. */
  double vapour_density_kg_m3; /**< Mass of vapour in a volume, absolute humidity. */
  double rho_kg_m3;            /**< Density of the moist air. */
  double h_dry_j_kg;           /**< Enthalpy by mass of dry air, as in topic moist_air. */
  double v_dry_m3_kg;          /**< Volume by mass of dry air. */
} freeair_humidity_found;

/** Size in bytes of freeair_humidity_found in the release that introduced it. */
#define FREEAIR_HUMIDITY_FOUND_BASELINE 104

/** Initial value of freeair_humidity_found. */
#define FREEAIR_HUMIDITY_FOUND_INIT \
  { (uint32_t)sizeof(freeair_humidity_found), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Initialises freeair_humidity_found; never writes past caller_size.
 *
 * Model: every quantity not a number.
 *
 * @param[out] found       The structure.
 * @param[in]  caller_size Its size as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    found is null
 * @retval FREEAIR_ERR_VERSION caller_size is not the size of such a structure
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_humidity_found_init(freeair_humidity_found *found, size_t caller_size);

/** Every measure of humidity from the one that is given.
 *
 * Model: the one given is turned into a mole fraction, that into all others.
 * Saturation by freeair_enhancement_factor() or without it; density, enthalpy,
 * wet bulb and vapour density by the real gas of topic moist_air either way.
 *
 * @param[in]  given Pressure, temperature and exactly one measure of humidity.
 * @param[out] found All measures.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K or above 5 MPa, or one of the points is below 193 K
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_VERSION       a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        a value is outside its range, or more than one measure of humidity is given
 * @retval FREEAIR_ERR_DATA          no measure of humidity is given
 * @retval FREEAIR_ERR_NO_SOLUTION   such air cannot hold this much vapour, or no air is left
 * @source{IAPWS G8-10 (2010); IAPWS G9-15; definitions of the measures of humidity}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_humidity_convert(const freeair_humidity_given *given, freeair_humidity_found *found);

/** Humidity ratio from relative humidity.
 *
 * Model: w = (Mw/Ma) x/(1 - x), x = rh f e/p; where water would boil x = rh e/p.
 *
 * @param[in]  p_pa              Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k               Temperature. @range{[173.15;573.15]}
 * @param[in]  relative_humidity Relative humidity over water. @range{[0;1]}
 * @param[in]  model             With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] humidity_ratio    Mass of vapour by mass of dry air.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          humidity_ratio is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   the humidity ratio would be above 10
 * @source{IAPWS G9-15; definitions of relative humidity and humidity ratio}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_humidity_ratio_from_relative(double p_pa, double t_k, double relative_humidity,
                                                         int32_t model, double *humidity_ratio);

/** Relative humidity from humidity ratio.
 *
 * Model: rh = x p/(f e), x = w/(Mw/Ma + w); where water would boil rh = x p/e.
 *
 * @param[in]  p_pa              Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k               Temperature. @range{[173.15;573.15]}
 * @param[in]  humidity_ratio    Mass of vapour by mass of dry air. @range{[0;10]}
 * @param[in]  model             With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] relative_humidity Relative humidity over water.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          relative_humidity is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   saturated air holds less, by more than 0.1 %
 * @source{IAPWS G9-15; definitions of relative humidity and humidity ratio}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_humidity_relative_from_ratio(double p_pa, double t_k, double humidity_ratio, int32_t model,
                                                         double *relative_humidity);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
