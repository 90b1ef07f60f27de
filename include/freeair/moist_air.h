/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_MOIST_AIR_H
#define FREEAIR_MOIST_AIR_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup moist_air Moist air
 * Air and water vapour together as a real gas, up to 100 bar: density, enthalpy
 * and the rest for a humidity ratio that the topic humidity finds from whatever
 * was measured.
 *
 * Dry air has no enthalpy at 0 degC and 101325 Pa, liquid water none at its
 * triple point: the zeros of psychrometric tables and of topic dry_air.
 *
 * The equations are made for 193 K to 473.15 K and up to 5 MPa; beyond, results
 * come with FREEAIR_WARN_EXTRAPOLATED. Air that holds more than saturated air
 * would (over liquid water, by more than 0.1 %) is not one gas any more:
 * FREEAIR_ERR_NO_SOLUTION.
 * @{
 */

/** All properties of moist air at one state; per kilogram of moist air unless the field says dry.
 * @since 0.1
 */
typedef struct freeair_moist_air_properties {
  uint32_t struct_size;          /**< Bytes of this structure, set by the initialiser. */
  uint32_t flags;                /**< Must be 0. */
  double p_pa;                   /**< Pressure, absolute. */
  double t_k;                    /**< Temperature. */
  double humidity_ratio;         /**< Mass of vapour by mass of dry air. */
  double mole_fraction;          /**< Moles of vapour in a mole of moist air. */
  double rho_kg_m3;              /**< Density. */
  double compressibility_factor; /**< Z = p/(rho R T) with the gas constant of the mixture. */
  double h_j_kg;                 /**< Enthalpy. */
  double s_j_kg_k;               /**< Entropy. */
  double u_j_kg;                 /**< Internal energy. */
  double cp_j_kg_k;              /**< Heat capacity at constant pressure, no water condensing. */
  double cv_j_kg_k;              /**< Heat capacity at constant volume. */
  double heat_capacity_ratio;    /**< cp/cv. */
  double isentropic_exponent;    /**< Of p v^k along an isentrope here: rho w^2/p. */
  double speed_of_sound_m_s;     /**< Speed of sound w. */
  double joule_thomson_k_pa;     /**< Temperature change by pressure at constant enthalpy. */
  double h_dry_j_kg;             /**< Enthalpy of the moist air that holds one kilogram of dry air. */
  double v_dry_m3_kg;            /**< Volume of the moist air that holds one kilogram of dry air. */
} freeair_moist_air_properties;

/** Size in bytes of freeair_moist_air_properties in the release that introduced it. */
#define FREEAIR_MOIST_AIR_PROPERTIES_BASELINE 144

/** Initial value of freeair_moist_air_properties. */
#define FREEAIR_MOIST_AIR_PROPERTIES_INIT \
  { \
    (uint32_t)sizeof(freeair_moist_air_properties), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
        NAN, NAN, NAN, NAN, NAN \
  }

/** Initialises freeair_moist_air_properties; never writes past caller_size.
 *
 * Model: every quantity not a number.
 *
 * @param[out] properties  The structure.
 * @param[in]  caller_size Its size as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    properties is null
 * @retval FREEAIR_ERR_VERSION caller_size is not the size of such a structure
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_properties_init(freeair_moist_air_properties *properties, size_t caller_size);

/** All properties of moist air at a pressure, a temperature and a humidity ratio.
 *
 * Model: Helmholtz energy of dry air (Lemmon et al. 2000) and of water vapour
 * (IAPWS-95), each at its own partial density, and cross virial coefficients to
 * the third; density by Newton's method, to rounding.
 *
 * @param[in]  p_pa           Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k            Temperature. @range{[173.15;573.15]}
 * @param[in]  humidity_ratio Mass of vapour by mass of dry air. @range{[0;10]}
 * @param[out] properties     All properties.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          properties is null
 * @retval FREEAIR_ERR_VERSION       properties has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   saturated air holds less vapour: some of it would condense
 * @source{IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_state(double p_pa, double t_k, double humidity_ratio,
                                            freeair_moist_air_properties *properties);

/** All properties of moist air at a density, a temperature and a humidity ratio.
 *
 * Model: as freeair_moist_air_state(), without a search and without a look at saturation.
 *
 * @param[in]  rho_kg_m3      Density. @range{(0;200]}
 * @param[in]  t_k            Temperature. @range{[173.15;573.15]}
 * @param[in]  humidity_ratio Mass of vapour by mass of dry air. @range{[0;10]}
 * @param[out] properties     All properties.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          properties is null
 * @retval FREEAIR_ERR_VERSION       properties has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   no gas is stable at this density: most of the vapour would condense
 * @source{IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_state_from_density(double rho_kg_m3, double t_k, double humidity_ratio,
                                                         freeair_moist_air_properties *properties);

/** Density of moist air from its relative humidity.
 *
 * Model: freeair_moist_air_state() at the mole fraction rh f e/p, e the saturation
 * pressure over liquid water (supercooled in frost), f the enhancement factor.
 *
 * @param[in]  p_pa              Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k               Temperature. @range{[173.15;573.15]}
 * @param[in]  relative_humidity Relative humidity over water. @range{[0;1]}
 * @param[out] rho_kg_m3         Density.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          rho_kg_m3 is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   the vapour would leave less than 6 % of the mixture to the air
 * @source{IAPWS G8-10 (2010); IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O in Humid Air}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_density(double p_pa, double t_k, double relative_humidity, double *rho_kg_m3);

/** Density of moist air near atmospheric pressure, as legal metrology has it.
 *
 * Model: CIPM-2007: rho = p Ma/(Z R T) (1 - xv (1 - Mv/Ma)); relative standard
 * uncertainty 22e-6. Not for line pressure.
 *
 * @param[in]  p_pa              Pressure, absolute. @range{[60000;110000]}
 * @param[in]  t_k               Temperature. @range{[288.15;300.15]}
 * @param[in]  relative_humidity Relative humidity. @range{[0;1]}
 * @param[in]  carbon_dioxide    Mole fraction of carbon dioxide. @range{[0;0.01]} @default{0.0004}
 * @param[out] rho_kg_m3         Density.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   rho_kg_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Picard, Davis, Glaeser, Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_density_cipm(double p_pa, double t_k, double relative_humidity,
                                                   double carbon_dioxide, double *rho_kg_m3);

/** Volume flow at one state of a flow given at another, as a real gas.
 *
 * Model: the same mass of dry air a second: q2 = q1 v2/v1, v as in
 * freeair_moist_air_volume(). With the conditions of a reference state this is the
 * real-gas version of freeair_reference_flow_convert().
 *
 * @param[in]  q1_m3_s            Volume flow at the first state. @range{[0;1e6]}
 * @param[in]  p1_pa              Pressure of the first state, absolute. @range{[1;1e7]}
 * @param[in]  t1_k               Temperature of the first state. @range{[173.15;573.15]}
 * @param[in]  relative_humidity1 Relative humidity of the first state. @range{[0;1]}
 * @param[in]  p2_pa              Pressure of the second state, absolute. @range{[1;1e7]}
 * @param[in]  t2_k               Temperature of the second state. @range{[173.15;573.15]}
 * @param[in]  relative_humidity2 Relative humidity of the second state. @range{[0;1]}
 * @param[out] q2_m3_s            Volume flow at the second state.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but a state is below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          q2_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   in one of the states the vapour would leave less than 6 % of the mixture to the air
 * @source{IAPWS G8-10 (2010); IAPWS G9-15; algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_flow_convert(double q1_m3_s, double p1_pa, double t1_k,
                                                   double relative_humidity1, double p2_pa, double t2_k,
                                                   double relative_humidity2, double *q2_m3_s);

/** Enthalpy of moist air, for each kilogram of dry air in it.
 *
 * Model: as freeair_moist_air_state(). Zero for dry air at 0 degC and 101325 Pa, and
 * for liquid water at its triple point.
 *
 * @param[in]  p_pa           Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k            Temperature. @range{[173.15;573.15]}
 * @param[in]  humidity_ratio Mass of vapour by mass of dry air. @range{[0;10]}
 * @param[out] h_dry_j_kg     Enthalpy by mass of dry air.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          h_dry_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   saturated air holds less vapour: some of it would condense
 * @source{IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_enthalpy(double p_pa, double t_k, double humidity_ratio, double *h_dry_j_kg);

/** Volume of moist air, for each kilogram of dry air in it.
 *
 * Model: as freeair_moist_air_state(): (1 + humidity ratio)/density.
 *
 * @param[in]  p_pa           Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k            Temperature. @range{[173.15;573.15]}
 * @param[in]  humidity_ratio Mass of vapour by mass of dry air. @range{[0;10]}
 * @param[out] v_dry_m3_kg    Volume by mass of dry air.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          v_dry_m3_kg is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   saturated air holds less vapour: some of it would condense
 * @source{IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_volume(double p_pa, double t_k, double humidity_ratio, double *v_dry_m3_kg);

/** Specific gas constant of moist air: what the ideal-gas topics ask for as r_j_kg_k.
 *
 * Model: R (1/Ma + w/Mw)/(1 + w), R = 8.314462618 J/(mol K), Ma = 28.96546 g/mol, Mw = 18.015268 g/mol.
 *
 * @param[in]  humidity_ratio Mass of vapour by mass of dry air; 0 for dry air. @range{[0;10]}
 * @param[out] r_j_kg_k       Specific gas constant, for each kilogram of moist air.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   r_j_kg_k is null
 * @retval FREEAIR_ERR_DOMAIN humidity_ratio is outside its range
 * @source{CODATA 2018, molar gas constant; molar masses of IAPWS G8-10 (2010)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_moist_air_gas_constant(double humidity_ratio, double *r_j_kg_k);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
