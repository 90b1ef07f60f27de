/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_NOZZLE_H
#define FREEAIR_NOZZLE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup nozzle Nozzle
 * Discharge coefficients of openings, the trade's table of air through an
 * orifice, and the critical flow nozzle as a meter of free air delivery. The
 * flow itself is in the topic flow; multiply the geometric area by a discharge
 * coefficient to get its effective area.
 * @{
 */

/** Shape of an opening from a large space.
 * @since 0.1
 */
enum freeair_nozzle_opening {
  FREEAIR_NOZZLE_SHARP_EDGED = 1,  /**< Thin plate with a sharp edge. */
  FREEAIR_NOZZLE_WELL_ROUNDED = 2, /**< Well-rounded entrance, shaped like the contracted jet. */
  FREEAIR_NOZZLE_SHORT_TUBE = 3,   /**< Short cylindrical tube with a sharp inner edge. */
  FREEAIR_NOZZLE_ROUNDED_TUBE = 4, /**< Short cylindrical tube, inner edge rounded. */
  FREEAIR_NOZZLE_CONE = 5          /**< Converging cone. */
};

/** Kind of critical flow nozzle.
 * @since 0.1
 */
enum freeair_nozzle_meter {
  FREEAIR_NOZZLE_TOROIDAL_ACCURATE = 1, /**< Toroidal throat, accurately machined. */
  FREEAIR_NOZZLE_TOROIDAL_NORMAL = 2,   /**< Toroidal throat, normally machined. */
  FREEAIR_NOZZLE_CYLINDRICAL = 3        /**< Cylindrical throat. */
};

/** Discharge coefficient of an opening: lowest, usual and highest.
 *
 * Model: table of coefficients for air, 0.97 usual for a well-rounded and 0.65
 * for a sharp-edged opening; elsewhere the middle of the spread. For a leak of
 * unknown shape the spread is the answer.
 *
 * @param[in]  opening Shape. @choice{freeair_nozzle_opening}
 * @param[out] lowest  Lowest coefficient observed.
 * @param[out] usual   Coefficient to reckon with.
 * @param[out] highest Highest coefficient observed.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND no such shape
 * @source{Encyclopaedia Britannica, 11th edition, volume 14, Hydraulics, coefficients for air by Weisbach; Trade table "Discharge of Air Through an Orifice", footnote, for 0.97 and 0.65}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nozzle_discharge_coefficient(int32_t opening, double *lowest, double *usual,
                                                         double *highest);

/** Discharge coefficient of a sharp-edged orifice at a pressure ratio.
 *
 * Model: fifth-degree polynomial in r = p2 / p1 fitted to measurements on air,
 * 0.60 as r approaches 1 and 0.84 into vacuum: the jet contracts less the more
 * it expands, so that a sharp edge never chokes fully.
 *
 * @param[in]  pressure_ratio Outlet over inlet pressure. @range{[0;1]}
 * @param[out] coefficient    Discharge coefficient for the isentropic formula of the topic flow.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   coefficient is null
 * @retval FREEAIR_ERR_DOMAIN pressure_ratio is outside its range
 * @source{Andersen, The Analysis and Design of Pneumatic Systems, 1967, fit to the measurements of Perry, 1949 (coefficients from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nozzle_sharp_edged_coefficient(double pressure_ratio, double *coefficient);

/** Free air through an orifice by the trade's approximate formula for choked flow.
 *
 * Model: w = 0.5303 C a p1 / sqrt(T1) in lb/s, in2, psia and degrees Rankine,
 * turned into free air of 0.07494 lb/ft3 (dry, 14.7 psia, 70 F). It stands
 * 0.3 % below the isentropic formula. Only for p1 of at least twice p_atm.
 *
 * @param[in]  diameter_m  Diameter of the hole. @range{(0;1]}
 * @param[in]  coefficient Discharge coefficient; 1 in the printed table. @range{(0;1]}
 * @param[in]  p1_pa       Pressure before the hole, absolute. @range{(0;1e8]}
 * @param[in]  t1_k        Temperature before the hole. @range{[1;5000]}
 * @param[in]  p_atm_pa    Barometric pressure. @range{(0;120000]}
 * @param[out] q_m3_s      Free air, dry, at 14.7 psia and 70 F.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p1_pa is below twice p_atm_pa
 * @source{Moss, approximate formula beneath the trade table "Discharge of Air Through an Orifice"}
 * @caution{FREEAIR_CAUTION_BLOWING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nozzle_trade_flow(double diameter_m, double coefficient, double p1_pa, double t1_k,
                                              double p_atm_pa, double *q_m3_s);

/** Discharge coefficient of a critical flow nozzle.
 *
 * Model: C = a - b Re^-n with Re on the throat diameter and the viscosity of
 * the stagnation state. Fitted for Re 2.1e4 to 1.4e6 (toroidal, accurate),
 * 2.1e4 to 3.2e7 (toroidal, normal), 3.5e5 to 1.1e7 (cylindrical).
 *
 * @param[in]  meter       Kind of nozzle. @choice{freeair_nozzle_meter}
 * @param[in]  reynolds    Reynolds number of the throat. @range{[1000;1e9]}
 * @param[out] coefficient Discharge coefficient.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed outside the range of the fit
 * @retval FREEAIR_ERR_NULL          coefficient is null
 * @retval FREEAIR_ERR_DOMAIN        reynolds is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND     no such kind
 * @source{ISO 9300:2005, discharge coefficients (constants from memory; take the certificate of the nozzle before them)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nozzle_meter_coefficient(int32_t meter, double reynolds, double *coefficient);

/** Mass flow measured by a critical flow nozzle.
 *
 * Model: m = C(Re) pi/4 d^2 C* p0 / sqrt(R T0) with Re = 4 m / (pi d mu), solved
 * by fixed-point iteration, at most 50 steps, to 1e-14. The nozzle must be
 * choked; the caller sees to that.
 *
 * @param[in]  meter                Kind of nozzle. @choice{freeair_nozzle_meter}
 * @param[in]  diameter_m           Throat diameter. @range{[1e-5;1]}
 * @param[in]  p0_pa                Stagnation pressure before the nozzle, absolute. @range{[100;1e8]}
 * @param[in]  t0_k                 Stagnation temperature before the nozzle. @range{[50;2000]}
 * @param[in]  critical_coefficient Critical flow coefficient C* of the gas in that state. @range{[0.5;1]}
 * @param[in]  r_j_kg_k             Gas constant. @range{[10;10000]}
 * @param[in]  viscosity_pas        Dynamic viscosity in that state. @range{[1e-6;0.001]}
 * @param[out] mass_kg_s            Mass flow.
 * @param[out] reynolds             Reynolds number of the throat.
 * @param[out] coefficient          Discharge coefficient.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, Reynolds number outside the range of the fit
 * @retval FREEAIR_ERR_NULL           an output is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND      no such kind
 * @retval FREEAIR_ERR_NO_SOLUTION    the Reynolds number is below 1000 or above 1e9
 * @retval FREEAIR_ERR_NO_CONVERGENCE the iteration reached its limit
 * @source{ISO 9300:2005, mass flow of a critical flow Venturi nozzle (constants from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nozzle_meter_mass_flow(int32_t meter, double diameter_m, double p0_pa, double t0_k,
                                                   double critical_coefficient, double r_j_kg_k,
                                                   double viscosity_pas, double *mass_kg_s, double *reynolds,
                                                   double *coefficient);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
