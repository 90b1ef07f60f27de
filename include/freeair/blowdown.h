/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_BLOWDOWN_H
#define FREEAIR_BLOWDOWN_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup blowdown Blow-down
 * Emptying and filling a vessel through an orifice, choked and subsonic phase,
 * and pumping a vacuum. Time and pressure in closed form.
 *
 * The air in the vessel follows p v^n = constant as it leaves, and is warmed in
 * the same measure as it enters: exponent 1 for a slow process in which the
 * shell keeps it at its temperature, k for a fast one without heat from the
 * shell. A steel receiver vented in a minute lies between: take both as bounds.
 * Where the area is choked by a valve, its effective area counts, not its bore.
 * @{
 */

/** A vessel, the orifice on it and what lies beyond the orifice.
 * @since 0.1
 */
typedef struct freeair_blowdown_vessel {
  uint32_t struct_size; /**< Bytes of this structure as the caller knows it. */
  uint32_t flags;       /**< Zero. */
  double v_m3;          /**< Volume of the vessel. @range{[1e-9;1e6]} */
  double area_m2;       /**< Effective area, discharge coefficient times area. @range{[1e-15;10]} */
  double p_vessel_pa;   /**< Pressure in the vessel at the start, absolute. @range{[0;1e8]} */
  double p_line_pa;     /**< Constant pressure beyond the orifice, absolute. @range{[1;1e8]} */
  double t_k;           /**< Temperature before the orifice at the start: of the vessel, or of the line that fills it.
                             @range{[50;2000]} */
  double exponent;      /**< Exponent of the change of state in the vessel, 1 to k. @range{[1;2]} */
  double k;             /**< Heat-capacity ratio. @range{(1;2]} @default{1.4} */
  double r_j_kg_k;      /**< Gas constant. @range{[10;10000]} @default{287.05287} */
} freeair_blowdown_vessel;

/** Bytes of freeair_blowdown_vessel in its first release. */
#define FREEAIR_BLOWDOWN_VESSEL_BASELINE 72

/** Initial value of a freeair_blowdown_vessel: nothing given. */
#define FREEAIR_BLOWDOWN_VESSEL_INIT \
  {sizeof(freeair_blowdown_vessel), 0, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Initialises a vessel.
 *
 * Model: table look-up.
 *
 * @param[out] vessel      Structure to initialise.
 * @param[in]  caller_size Bytes of the structure as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    vessel is null
 * @retval FREEAIR_ERR_VERSION caller_size is not a size that this library knows
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_blowdown_vessel_init(freeair_blowdown_vessel *vessel, size_t caller_size);

/** Time to blow a vessel down to a pressure.
 *
 * Model: choked down to the critical pressure ratio, then subsonic until p2. Choked,
 * with B = V / (A sqrt(R T1)) and m = (n - 1) / (2 n): t = B / (n C*) ((p1/p2)^m - 1) /
 * m. Subsonic, with u = sqrt(1 - (line/p)^((k-1)/k)): t = B / n (p1/line)^m sqrt(2 k /
 * (k - 1)) times the integral of (1 - u^2)^(-k (1 - m) / (k - 1)) du, as its series of
 * positive terms.
 *
 * @param[in]  vessel Vessel, orifice and surroundings.
 * @param[in]  p2_pa  Pressure to reach, absolute, from p_line_pa to p_vessel_pa. @range{[1;1e8]}
 * @param[out] time_s Time.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, exponent above k, or vessel below line
 * @retval FREEAIR_ERR_NO_SOLUTION p2_pa is below p_line_pa or above p_vessel_pa
 * @retval FREEAIR_ERR_VERSION     the structure has a size or flags that this library does not know
 * @source{Bar-Meir, Fundamentals of Compressible Fluid Mechanics, evacuating chambers, for the choked phase; derived in the guide}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_blowdown_time(const freeair_blowdown_vessel *vessel, double p2_pa, double *time_s);

/** Pressure and temperature in a vessel after it has blown down for a time.
 *
 * Model: inverse of freeair_blowdown_time; a Newton iteration that converges from one
 * side in the subsonic phase, at most 100 steps. The line pressure once it is reached; T
 * = T1 (p/p1)^((n-1)/n).
 *
 * @param[in]  vessel     Vessel, orifice and surroundings.
 * @param[in]  duration_s Time since the start. @range{[0;1e12]}
 * @param[out] p2_pa      Pressure in the vessel, absolute.
 * @param[out] t2_k       Temperature in the vessel.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_DOMAIN  an input is outside its range, exponent above k, or vessel below line
 * @retval FREEAIR_ERR_VERSION the structure has a size or flags that this library does not know
 * @source{algebra}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_blowdown_pressure(const freeair_blowdown_vessel *vessel, double duration_s,
                                              double *p2_pa, double *t2_k);

/** Time to fill a vessel from a line at constant pressure.
 *
 * Model: dp/dt = n R T m / V with m the flow of the topic flow, T of the line. Choked: t
 * = B / (n C*) (p2 - p1) / line; then subsonic: t = B / n sqrt(2 k / (k - 1)) (u1 - u2).
 *
 * @param[in]  vessel Vessel, orifice and surroundings.
 * @param[in]  p2_pa  Pressure to reach, absolute, from p_vessel_pa to p_line_pa. @range{[0;1e8]}
 * @param[out] time_s Time.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, exponent above k, or vessel above line
 * @retval FREEAIR_ERR_NO_SOLUTION p2_pa is below p_vessel_pa or above p_line_pa
 * @retval FREEAIR_ERR_VERSION     the structure has a size or flags that this library does not know
 * @source{algebra}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_blowdown_fill_time(const freeair_blowdown_vessel *vessel, double p2_pa, double *time_s);

/** Pressure in a vessel after it has been filled from a line for a time.
 *
 * Model: inverse of freeair_blowdown_fill_time, in closed form. The line pressure once
 * it is reached.
 *
 * @param[in]  vessel     Vessel, orifice and surroundings.
 * @param[in]  duration_s Time since the start. @range{[0;1e12]}
 * @param[out] p2_pa      Pressure in the vessel, absolute.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_DOMAIN  an input is outside its range, exponent above k, or vessel above line
 * @retval FREEAIR_ERR_VERSION the structure has a size or flags that this library does not know
 * @source{algebra}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_blowdown_fill_pressure(const freeair_blowdown_vessel *vessel, double duration_s,
                                                   double *p2_pa);

/** Temperature in a vessel that was filled without heat loss.
 *
 * Model: T2 = p2 / (p1 / T1 + (p2 - p1) / (k T)), T of the line; k T when the vessel was
 * empty. Energy balance of an ideal gas, whatever the orifice.
 *
 * @param[in]  p1_pa    Pressure in the vessel at the start, absolute. @range{[0;1e8]}
 * @param[in]  t1_k     Temperature in the vessel at the start. @range{[50;2000]}
 * @param[in]  p2_pa    Pressure at the end, absolute, not below p1_pa. @range{[1;1e8]}
 * @param[in]  t_line_k Temperature of the air that enters. @range{[50;2000]}
 * @param[in]  k        Heat-capacity ratio. @range{(1;2]}
 * @param[out] t2_k     Temperature in the vessel at the end.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   t2_k is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is below p1_pa
 * @source{Rao, Chemical Engineering Thermodynamics, 1997, example 4.13, energy balance of a tank being filled}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_blowdown_fill_temperature(double p1_pa, double t1_k, double p2_pa, double t_line_k,
                                                      double k, double *t2_k);

/** Time for a vacuum pump of constant intake to lower the pressure in a vessel.
 *
 * Model: t = V / S ln((p1 - pu) / (p2 - pu)), S the intake volume flow at the pressure
 * of the moment, pu the pressure at which leaks or the pump hold it; temperature
 * constant.
 *
 * @param[in]  v_m3          Volume of the vessel. @range{[1e-9;1e6]}
 * @param[in]  speed_m3_s    Intake volume flow of the pump. @range{[1e-9;1e4]}
 * @param[in]  p1_pa         Pressure at the start, absolute. @range{[1e-6;1e8]}
 * @param[in]  p2_pa         Pressure at the end, absolute, not above p1_pa. @range{[1e-6;1e8]}
 * @param[in]  p_ultimate_pa Ultimate pressure, absolute. @range{[0;1e8]}
 * @param[out] time_s        Time.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        time_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or p2_pa is above p1_pa
 * @retval FREEAIR_ERR_NO_SOLUTION p2_pa is not above the ultimate pressure
 * @source{Esposito, Fluid Power with Applications, chapter 14, vacuum systems}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_blowdown_evacuation_time(double v_m3, double speed_m3_s, double p1_pa, double p2_pa,
                                                     double p_ultimate_pa, double *time_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
