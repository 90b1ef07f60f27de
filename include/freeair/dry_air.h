/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DRY_AIR_H
#define FREEAIR_DRY_AIR_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup dry_air Dry air
 * Dry air as a real gas: density, heat, work, speed of sound and the rest from
 * one equation, the Helmholtz energy of air as a single substance by Lemmon,
 * Jacobsen, Penoncello and Friend, from 60 K to 2000 K and up to 2000 MPa.
 *
 * At shop pressures air is nearly ideal (0.3 % denser at 8 bar and 20 degC, and
 * with 1.3 % more heat capacity); at 300 bar it is not. Differences of enthalpy and entropy are real work and
 * real heat, whatever the pressure.
 *
 * Enthalpy and entropy are zero at 273.15 K and 101325 Pa. The tables of 2000
 * count from elsewhere: their enthalpy is larger by 7914.1 J/mol, their entropy
 * by 196.11 J/(mol K), the same everywhere.
 *
 * Below 132.6312 K air is a gas up to the dew line and a liquid above the bubble
 * line; between the two, pressure and temperature do not fix the density, and
 * the answer is FREEAIR_ERR_NO_SOLUTION.
 *
 * Uncertainty, as the authors state it: density 0.1 %, speed of sound 0.2 %, heat
 * capacity 1 % in the range of the data, to 873 K and 70 MPa; density 1 % at
 * 2000 K and 2000 MPa. Air comes apart above about 2000 K and burns oil well below.
 * @{
 */

/** All properties of dry air at one state, filled by freeair_dry_air_state().
 * @since 0.1
 */
typedef struct freeair_dry_air_properties {
  uint32_t struct_size;           /**< Bytes of this structure, set by the initialiser. */
  uint32_t flags;                 /**< Must be 0. */
  double p_pa;                    /**< Pressure, absolute. */
  double t_k;                     /**< Temperature. */
  double rho_kg_m3;               /**< Density. */
  double compressibility_factor;  /**< Z = p/(rho R T). */
  double h_j_kg;                  /**< Enthalpy; 0 at 273.15 K and 101325 Pa. */
  double s_j_kg_k;                /**< Entropy; 0 at 273.15 K and 101325 Pa. */
  double u_j_kg;                  /**< Internal energy, h - p/rho. */
  double cp_j_kg_k;               /**< Heat capacity at constant pressure. */
  double cv_j_kg_k;               /**< Heat capacity at constant volume. */
  double heat_capacity_ratio;     /**< cp/cv. */
  double isentropic_exponent;     /**< Of p v^k along an isentrope here: rho w^2/p. Equal to cp/cv in an ideal gas. */
  double speed_of_sound_m_s;      /**< Speed of sound w. */
  double joule_thomson_k_pa;      /**< Temperature change by pressure at constant enthalpy. */
  double expansion_1_k;           /**< Isobaric expansion coefficient, 1/T in an ideal gas. */
  double compressibility_1_pa;    /**< Isothermal compressibility, 1/p in an ideal gas. */
  double viscosity_pas;           /**< Dynamic viscosity, by freeair_dry_air_transport_viscosity(). */
  double conductivity_w_m_k;      /**< Thermal conductivity, by freeair_dry_air_transport_conductivity(). */
  double prandtl_number;          /**< viscosity cp/conductivity. */
} freeair_dry_air_properties;

/** Size in bytes of freeair_dry_air_properties in the release that introduced it. */
#define FREEAIR_DRY_AIR_PROPERTIES_BASELINE 152

/** Initial value of freeair_dry_air_properties. */
#define FREEAIR_DRY_AIR_PROPERTIES_INIT \
  { \
    (uint32_t)sizeof(freeair_dry_air_properties), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
        NAN, NAN, NAN, NAN, NAN, NAN \
  }

/** Initialises freeair_dry_air_properties; never writes past caller_size.
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
FREEAIR_API int32_t freeair_dry_air_properties_init(freeair_dry_air_properties *properties, size_t caller_size);

/** All properties of dry air at a pressure and a temperature.
 *
 * Model: equation of state of Lemmon et al. (2000) with R = 8.31451 J/(mol K) and
 * M = 28.96546 g/mol; density as in freeair_dry_air_density(); viscosity and
 * conductivity of Lemmon and Jacobsen (2004).
 *
 * @param[in]  p_pa       Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  t_k        Temperature. @range{[60;2000]}
 * @param[out] properties All properties.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, but viscosity and conductivity are not backed by data above 100 MPa and
 *   below 70 K
 * @retval FREEAIR_ERR_NULL           properties is null
 * @retval FREEAIR_ERR_VERSION        properties has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    the state lies between the dew and the bubble line, below 132.6312 K
 * @source{Lemmon, Jacobsen, Penoncello, Friend, Thermodynamic Properties of Air..., J. Phys. Chem. Ref. Data 29 (2000)
 *   331; Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21; molar mass and reference state of IAPWS G8-10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_state(double p_pa, double t_k, freeair_dry_air_properties *properties);

/** All properties of dry air at a density and a temperature.
 *
 * Model: as freeair_dry_air_state(), without a search.
 *
 * @param[in]  rho_kg_m3  Density. @range{(0;1530]}
 * @param[in]  t_k        Temperature. @range{[60;2000]}
 * @param[out] properties All properties.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but the pressure is above 2000 MPa, or viscosity and conductivity are not
 *   backed by data above 100 MPa and below 70 K
 * @retval FREEAIR_ERR_NULL          properties is null
 * @retval FREEAIR_ERR_VERSION       properties has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   the state lies between the dew and the bubble line, below 132.6312 K
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_state_from_density(double rho_kg_m3, double t_k,
                                                       freeair_dry_air_properties *properties);

/** Density of dry air.
 *
 * Model: the root of p(rho, T) of Lemmon et al. (2000) in the stable phase, by
 * Newton's method on ln p against ln rho, kept in a bracket, to rounding. It ends
 * in every state: within 13 steps in a million of random ones, 3 on average.
 *
 * @param[in]  p_pa      Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  t_k       Temperature. @range{[60;2000]}
 * @param[out] rho_kg_m3 Density.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           rho_kg_m3 is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    the state lies between the dew and the bubble line, below 132.6312 K
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_density(double p_pa, double t_k, double *rho_kg_m3);

/** Temperature at which gaseous dry air has an enthalpy: throttling.
 *
 * Model: h(p, T) of freeair_dry_air_state() solved for T by Newton's method with
 * cp as slope, kept in a bracket, to 1e-12. Below 3.785 MPa no colder than the dew point.
 *
 * @param[in]  p_pa   Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  h_j_kg Enthalpy; 0 at 273.15 K and 101325 Pa. @range{[-1e6;5e6]}
 * @param[out] t_k    Temperature.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           t_k is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    no gas between 60 K and 2000 K has this enthalpy at this pressure
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_temperature_from_enthalpy(double p_pa, double h_j_kg, double *t_k);

/** Temperature at which gaseous dry air has an entropy: isentropic compression.
 *
 * Model: s(p, T) of freeair_dry_air_state() solved for ln T by Newton's method with cp as slope,
 * kept in a bracket, to 1e-12. Below 3.785 MPa no colder than the dew point.
 *
 * @param[in]  p_pa     Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  s_j_kg_k Entropy; 0 at 273.15 K and 101325 Pa. @range{[-1e4;1e4]}
 * @param[out] t_k      Temperature.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           t_k is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    no gas between 60 K and 2000 K has this entropy at this pressure
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_temperature_from_entropy(double p_pa, double s_j_kg_k, double *t_k);

/** Pressures at which dry air begins to condense and to boil.
 *
 * Model: the two ancillary equations of Lemmon et al. (2000) for the dew and bubble line, fitted within 0.1 %.
 *
 * @param[in]  t_k       Temperature. @range{[59.75;132.6312]}
 * @param[out] dew_pa    Pressure above which a gas begins to condense.
 * @param[out] bubble_pa Pressure below which a liquid begins to boil.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, equation 1, Table A1}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_saturation(double t_k, double *dew_pa, double *bubble_pa);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
