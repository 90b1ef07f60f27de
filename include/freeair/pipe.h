/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PIPE_H
#define FREEAIR_PIPE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup pipe Pipe
 * Velocity, friction factor and pressure drop in a straight round pipe, and the
 * sizes that pipes come in. The friction factor is that of Darcy and Weisbach, four
 * times Fanning's. Where the drop is more than a tenth of the pressure the gas
 * expands noticeably on its way: topic isothermal.
 * @{
 */

/** Materials of the inside of a pipe, new and clean.
 * @since 0.1
 */
enum freeair_pipe_material {
  FREEAIR_PIPE_DRAWN = 1,      /**< Drawn tube: copper, brass, aluminium, stainless steel. */
  FREEAIR_PIPE_STEEL = 2,      /**< Commercial steel, wrought iron. */
  FREEAIR_PIPE_GALVANIZED = 3, /**< Galvanized steel. */
  FREEAIR_PIPE_CAST_IRON = 4,  /**< Cast iron. */
  FREEAIR_PIPE_SMOOTH = 5      /**< Plastic, glass. */
};

/** Series of pipe sizes.
 * @since 0.1
 */
enum freeair_pipe_series {
  FREEAIR_PIPE_SCHEDULE_40 = 1, /**< Steel, schedule 40 (ASME B36.10M), DN 6 to 200. */
  FREEAIR_PIPE_SCHEDULE_80 = 2, /**< Steel, schedule 80 (ASME B36.10M), DN 6 to 200. */
  FREEAIR_PIPE_EN_MEDIUM = 3    /**< Threaded steel tube, medium series (EN 10255), DN 6 to 150. */
};

/** Reynolds number.
 *
 * Model: Re = 4 m / (pi d viscosity).
 *
 * @param[in]  mass_kg_s     Mass flow. @range{[0;1e6]}
 * @param[in]  diameter_m    Inner diameter. @range{[1e-6;10]}
 * @param[in]  viscosity_pas Dynamic viscosity. @range{[1e-8;1e3]}
 * @param[out] reynolds      Reynolds number.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   reynolds is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 8}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_reynolds(double mass_kg_s, double diameter_m, double viscosity_pas, double *reynolds);

/** Mean velocity.
 *
 * Model: v = 4 m R T / (pi d^2 p), ideal gas. Six to ten metres a second are usual in mains, up to twenty in short
 * branches: common practice, no source.
 *
 * @param[in]  mass_kg_s    Mass flow. @range{[0;1e6]}
 * @param[in]  diameter_m   Inner diameter. @range{[1e-6;10]}
 * @param[in]  p_pa         Pressure, absolute. @range{[1;1e8]}
 * @param[in]  t_k          Temperature. @range{[50;2000]}
 * @param[in]  r_j_kg_k     Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[out] velocity_m_s Velocity.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   velocity_m_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: continuity and the ideal-gas law}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_velocity(double mass_kg_s, double diameter_m, double p_pa, double t_k,
                                          double r_j_kg_k, double *velocity_m_s);

/** Diameter for a velocity.
 *
 * Model: inverse of freeair_pipe_velocity.
 *
 * @param[in]  mass_kg_s    Mass flow. @range{[0;1e6]}
 * @param[in]  velocity_m_s Velocity. @range{[0.001;1000]}
 * @param[in]  p_pa         Pressure, absolute. @range{[1;1e8]}
 * @param[in]  t_k          Temperature. @range{[50;2000]}
 * @param[in]  r_j_kg_k     Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[out] diameter_m   Inner diameter.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   diameter_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: continuity and the ideal-gas law}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_diameter_from_velocity(double mass_kg_s, double velocity_m_s, double p_pa, double t_k,
                                                        double r_j_kg_k, double *diameter_m);

/** Friction factor (Darcy and Weisbach).
 *
 * Model: 64/Re below Re = 2300; from 4000 the root of 1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re sqrt(f))) (Colebrook and
 * White) by Newton's method, at most 50 steps, to rounding; between them, where no formula is sure, the straight line.
 *
 * @param[in]  reynolds  Reynolds number. @range{[1e-6;1e12]}
 * @param[in]  roughness Roughness over inner diameter, e. @range{[0;0.1]}
 * @param[out] factor    Friction factor.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_TRANSITION computed, Re is between 2300 and 4000
 * @retval FREEAIR_ERR_NULL        factor is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @source{Colebrook, Turbulent flow in pipes, Journal of the Institution of Civil Engineers 11 (1939) 133}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_friction_factor(double reynolds, double roughness, double *factor);

/** Pressure drop of a gas that hardly expands.
 *
 * Model: dp = (f L/d + K) rho v^2 / 2, density that of p and T all along.
 *
 * @param[in]  mass_kg_s        Mass flow. @range{[0;1e6]}
 * @param[in]  diameter_m       Inner diameter. @range{[1e-6;10]}
 * @param[in]  length_m         Length. @range{[0;1e6]}
 * @param[in]  factor           Friction factor. @range{[0;100]}
 * @param[in]  loss_coefficient K, sum of the loss coefficients of the fittings. @range{[0;1e6]}
 * @param[in]  p_pa             Pressure, absolute. @range{[1;1e8]}
 * @param[in]  t_k              Temperature. @range{[50;2000]}
 * @param[in]  r_j_kg_k         Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[out] drop_pa          Pressure drop.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed, but it is more than a tenth of p: use the topic isothermal
 * @retval FREEAIR_ERR_NULL   drop_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 8}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_pressure_drop(double mass_kg_s, double diameter_m, double length_m, double factor,
                                               double loss_coefficient, double p_pa, double t_k, double r_j_kg_k,
                                               double *drop_pa);

/** Pressure drop by the trade's formula of Harris.
 *
 * Model: dp = 0.1025 L q^2 / (3600 r d^5.31) in psi, ft, cubic feet of free air a minute, in; r the line pressure over
 * 14.7 psi. No Reynolds number: steel pipe, air near room temperature.
 *
 * @param[in]  q_m3_s     Flow of free air. @range{[0;1e4]}
 * @param[in]  diameter_m Inner diameter. @range{[0.001;1]}
 * @param[in]  length_m   Length. @range{[0;1e6]}
 * @param[in]  p_pa       Line pressure, absolute. @range{[1e4;1e8]}
 * @param[out] drop_pa    Pressure drop.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed, but it is more than a tenth of p: the formula overestimates
 * @retval FREEAIR_ERR_NULL   drop_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Esposito, Fluid Power with Applications, chapter 14, the Harris formula}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_drop_harris(double q_m3_s, double diameter_m, double length_m, double p_pa,
                                             double *drop_pa);

/** Roughness of a pipe, new and clean.
 *
 * Model: table. Rust and scale multiply it by ten and more.
 *
 * @param[in]  material    Material. @choice{freeair_pipe_material}
 * @param[out] roughness_m Equivalent sand roughness.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   roughness_m is null
 * @retval FREEAIR_ERR_DOMAIN no such material
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Table 8.1, after Moody (1944) and Colebrook (1939) (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_roughness(int32_t material, double *roughness_m);

/** Dimensions of a pipe by its nominal size.
 *
 * Model: table. DN 6, 8, 10, 15, 20, 25, 32, 40, 50, 65, 80, 100, 125, 150, 200 are 1/8, 1/4, 3/8, 1/2, 3/4, 1, 1 1/4,
 * 1 1/2, 2, 2 1/2, 3, 4, 5, 6 and 8 in.
 *
 * @param[in]  series  Series. @choice{freeair_pipe_series}
 * @param[in]  dn      Nominal size DN. @range{[6;200]}
 * @param[out] outer_m Outer diameter.
 * @param[out] wall_m  Wall thickness.
 * @param[out] inner_m Inner diameter.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      a pointer is null
 * @retval FREEAIR_ERR_DOMAIN    no such series, or dn is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND the series has no such size
 * @source{ASME B36.10M, Welded and Seamless Wrought Steel Pipe; EN 10255, Non-alloy steel tubes suitable for welding and threading (both from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_size(int32_t series, int32_t dn, double *outer_m, double *wall_m, double *inner_m);

/** Smallest pipe of a series that is wide enough.
 *
 * Model: table, the first whose inner diameter is not below the one asked for.
 *
 * @param[in]  series     Series. @choice{freeair_pipe_series}
 * @param[in]  diameter_m Inner diameter that is needed. @range{[0;10]}
 * @param[out] dn         Nominal size DN.
 * @param[out] inner_m    Its inner diameter.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      a pointer is null
 * @retval FREEAIR_ERR_DOMAIN    no such series, or diameter_m is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND no size is wide enough
 * @source{ASME B36.10M; EN 10255 (both from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pipe_size_from_diameter(int32_t series, double diameter_m, int32_t *dn, double *inner_m);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
