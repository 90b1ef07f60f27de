/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_ENHANCEMENT_H
#define FREEAIR_ENHANCEMENT_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup enhancement Enhancement factor
 * Air under pressure holds more vapour than the saturation pressure of pure water
 * says: the air presses on the water, and attracts the vapour. The enhancement
 * factor is 1.004 at 1 bar, 1.025 at 8 bar, 1.13 at 40 bar (20 degC). Leaving it
 * out understates the vapour that an aftercooler of 8 bar passes on by 2.5 %.
 *
 * The equations are made for 193 K to 473.15 K and up to 5 MPa; beyond, results
 * come with FREEAIR_WARN_EXTRAPOLATED.
 * @{
 */

/** Whether saturation in air includes the enhancement factor.
 * @since 0.1
 */
enum freeair_enhancement_model {
  FREEAIR_ENHANCEMENT_NONE = 1,  /**< As if the vapour were alone: the textbooks. */
  FREEAIR_ENHANCEMENT_VIRIAL = 2 /**< With the factor: what really happens. */
};

/** Virial coefficients of moist air: a is dry air, w is water.
 * @since 0.1
 */
typedef struct freeair_enhancement_coefficients {
  uint32_t struct_size;  /**< Bytes of this structure, set by the initialiser. */
  uint32_t flags;        /**< Must be 0. */
  double b_aa_m3_mol;    /**< Second, air and air. */
  double b_aw_m3_mol;    /**< Second, air and water. */
  double b_ww_m3_mol;    /**< Second, water and water. */
  double c_aaa_m6_mol2;  /**< Third, air alone. */
  double c_aaw_m6_mol2;  /**< Third, two of air and one of water. */
  double c_aww_m6_mol2;  /**< Third, one of air and two of water. */
  double c_www_m6_mol2;  /**< Third, water alone. */
} freeair_enhancement_coefficients;

/** Size in bytes of freeair_enhancement_coefficients in the release that introduced it. */
#define FREEAIR_ENHANCEMENT_COEFFICIENTS_BASELINE 64

/** Initial value of freeair_enhancement_coefficients. */
#define FREEAIR_ENHANCEMENT_COEFFICIENTS_INIT \
  { (uint32_t)sizeof(freeair_enhancement_coefficients), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Initialises freeair_enhancement_coefficients; never writes past caller_size.
 *
 * Model: every quantity not a number.
 *
 * @param[out] coefficients The structure.
 * @param[in]  caller_size  Its size as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    coefficients is null
 * @retval FREEAIR_ERR_VERSION caller_size is not the size of such a structure
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_enhancement_coefficients_init(freeair_enhancement_coefficients *coefficients,
                                                          size_t caller_size);

/** Enhancement factor: how much more vapour saturated air holds than pure water gives off.
 *
 * Model: f = x p/e, where the fugacity of the vapour by its virial equation equals
 * that of the liquid or ice: the fugacity at saturation, raised by the pressure on
 * it (Poynting), lowered by the air dissolved (IAPWS G7-04). Newton's method, at
 * most 50 steps, to rounding. The fugacity of the vapour is within 5e-4 of that in
 * the equation of state to 16 bar while less than half of the gas is vapour, within
 * 0.15 % at 40 bar, 0.3 % at 50 bar and 2 % at 100 bar (1 % above 20 degC).
 *
 * @param[in]  p_pa   Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k    Temperature. @range{[173.15;573.15]}
 * @param[in]  over   What the vapour is in equilibrium with. @choice{freeair_saturation_over}
 * @param[out] factor Enhancement factor.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          factor is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or over is not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   the saturation pressure is above the pressure: water boils, and no air is left
 * @source{IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O in Humid Air (2015)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_enhancement_factor(double p_pa, double t_k, int32_t over, double *factor);

/** Fugacity of the vapour in moist air.
 *
 * Model: x p exp(beta p/(R T) + gamma/2 (p/(R T))^2), beta and gamma from the virial coefficients and x.
 *
 * @param[in]  p_pa          Pressure, absolute. @range{[1;1e7]}
 * @param[in]  t_k           Temperature. @range{[173.15;573.15]}
 * @param[in]  mole_fraction Mole fraction of vapour. @range{[0;1]}
 * @param[out] fugacity_pa   Fugacity of the vapour.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but below 193 K, above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          fugacity_pa is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   so much more vapour than at saturation that the virial equation says nothing: a
 *   fugacity coefficient below 0.135 or above 7.4
 * @source{IAPWS G9-15, equations 2 to 4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_enhancement_fugacity(double p_pa, double t_k, double mole_fraction, double *fugacity_pa);

/** Virial coefficients of dry air, water vapour and their mixture.
 *
 * Model: B_aa and C_aaa from Lemmon et al. (2000), B_ww and C_www from IAPWS-95,
 * both at zero density; the cross coefficients by the equations of the guideline.
 *
 * @param[in]  t_k          Temperature. @range{[173.15;573.15]}
 * @param[out] coefficients The coefficients.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_ERR_NULL    coefficients is null
 * @retval FREEAIR_ERR_VERSION coefficients has an unknown size
 * @retval FREEAIR_ERR_DOMAIN  t_k is outside its range
 * @source{IAPWS G9-15, equations 5 to 9, Table 7}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_enhancement_virials(double t_k, freeair_enhancement_coefficients *coefficients);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
