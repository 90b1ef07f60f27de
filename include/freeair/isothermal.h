/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_ISOTHERMAL_H
#define FREEAIR_ISOTHERMAL_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup isothermal Isothermal pipe flow
 * Gas that expands on its way through a long pipe and keeps the temperature of its
 * surroundings: flow from pressures, pressures from flow, the diameter for an allowed
 * drop. With the acceleration of the gas, which the handbooks' short form leaves out,
 * and its limit: a pipe chokes where the gas leaves at 1/sqrt(k) of the speed of
 * sound, and no lower pressure behind it draws more. Ideal gas.
 *
 * The equation is G^2 R T (f L/d + K + 2 ln(p1/p2)) = p1^2 - p2^2, G = m/A, f the
 * friction factor of Darcy, K the loss coefficients of the fittings, taken as spread
 * over the length.
 * @{
 */

/** A pipe.
 * @since 0.1
 */
typedef struct freeair_isothermal_pipe {
  uint32_t struct_size;    /**< Size of this structure as the caller knows it. */
  uint32_t flags;          /**< Reserved, 0. */
  double length_m;         /**< Length. @range{[0;1e6]} */
  double diameter_m;       /**< Inner diameter; not used where it is the result. @range{[1e-6;10]} @default{none} */
  double roughness_m;      /**< Roughness of the inside. @range{[0;0.1]} @default{45e-6, commercial steel} */
  double loss_coefficient; /**< Sum of the loss coefficients of fittings. @range{[0;1e6]} @default{0} */
  double t_k;              /**< Temperature of the gas. @range{[50;2000]} @default{293.15} */
  double viscosity_pas;    /**< Dynamic viscosity. @range{[1e-8;1]} @default{air at t_k, US Standard Atmosphere 1976} */
  double r_j_kg_k;         /**< Specific gas constant. @range{[10;10000]} @default{287.05287, dry air} */
} freeair_isothermal_pipe;

/** Initial value of a pipe: everything not given. */
#define FREEAIR_ISOTHERMAL_PIPE_INIT {(uint32_t)sizeof(freeair_isothermal_pipe), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN}
/** Frozen size of the first release. */
#define FREEAIR_ISOTHERMAL_PIPE_BASELINE 64

/** Initialises a pipe.
 *
 * Model: assignment.
 *
 * @param[out] pipe        Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    pipe is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_isothermal_pipe_init(freeair_isothermal_pipe *pipe, size_t caller_size);

/** Mass flow from the pressures at both ends, for a known friction factor.
 *
 * Model: the equation above.
 *
 * @param[in]  p1_pa      Pressure at the inlet, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Pressure at the outlet, absolute, not above p1_pa. @range{[1;1e8]}
 * @param[in]  t_k        Temperature. @range{[50;2000]}
 * @param[in]  diameter_m Inner diameter. @range{[1e-6;10]}
 * @param[in]  loss_number f L/d + K. @range{[0;1e9]}
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[out] mass_kg_s  Mass flow.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        mass_kg_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or p2_pa is above p1_pa
 * @retval FREEAIR_ERR_NO_SOLUTION choked: the pressure at the outlet cannot fall so low
 * @source{Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete isothermal equation}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_isothermal_mass_flow(double p1_pa, double p2_pa, double t_k, double diameter_m,
                                                 double loss_number, double r_j_kg_k, double *mass_kg_s);

/** Where a pipe chokes, for a known friction factor.
 *
 * Model: the greatest flow of the equation above: G = p2 / sqrt(R T), (p1/p2)^2 - 1 - ln (p1/p2)^2 = loss_number, by
 * Newton's method, at most 100 steps, to rounding.
 *
 * @param[in]  p1_pa      Pressure at the inlet, absolute. @range{[1;1e8]}
 * @param[in]  t_k        Temperature. @range{[50;2000]}
 * @param[in]  diameter_m Inner diameter. @range{[1e-6;10]}
 * @param[in]  loss_number f L/d + K. @range{[0;1e9]}
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[out] p2_pa      Pressure at the outlet, below which nothing changes.
 * @param[out] mass_kg_s  The greatest flow.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: greatest flow of the isothermal equation}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_isothermal_choking(double p1_pa, double t_k, double diameter_m, double loss_number,
                                               double r_j_kg_k, double *p2_pa, double *mass_kg_s);

/** Mass flow from the pressures at both ends of a pipe.
 *
 * Model: the equation above with the friction factor of freeair_pipe_friction_factor, iterated at most 200 times to
 * 1e-14.
 *
 * @param[in]  pipe      The pipe.
 * @param[in]  p1_pa     Pressure at the inlet, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa     Pressure at the outlet, absolute, not above p1_pa. @range{[1;1e8]}
 * @param[out] mass_kg_s Mass flow.
 * @param[out] factor    Friction factor; infinite without flow.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_TRANSITION    computed, the flow is between laminar and turbulent
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range, or p2_pa is above p1_pa
 * @retval FREEAIR_ERR_VERSION        pipe has an unknown size or content
 * @retval FREEAIR_ERR_NO_SOLUTION    choked: the pressure at the outlet cannot fall so low
 * @source{Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete isothermal equation}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_isothermal_flow_from_pressures(const freeair_isothermal_pipe *pipe, double p1_pa,
                                                           double p2_pa, double *mass_kg_s, double *factor);

/** Pressure at the outlet of a pipe from the flow.
 *
 * Model: the equation above by Newton's method, at most 100 steps, to rounding.
 *
 * @param[in]  pipe         The pipe.
 * @param[in]  mass_kg_s    Mass flow. @range{[0;1e6]}
 * @param[in]  p1_pa        Pressure at the inlet, absolute. @range{[1;1e8]}
 * @param[out] p2_pa        Pressure at the outlet, absolute.
 * @param[out] velocity_m_s Velocity at the outlet, the greatest.
 * @param[out] factor       Friction factor; infinite without flow.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_TRANSITION computed, the flow is between laminar and turbulent
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_VERSION     pipe has an unknown size or content
 * @retval FREEAIR_ERR_NO_SOLUTION choked: so much cannot pass
 * @source{Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete isothermal equation}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_isothermal_outlet_pressure(const freeair_isothermal_pipe *pipe, double mass_kg_s,
                                                       double p1_pa, double *p2_pa, double *velocity_m_s,
                                                       double *factor);

/** Pressure at the inlet of a pipe from the flow.
 *
 * Model: the equation above by Newton's method, at most 100 steps, to rounding.
 *
 * @param[in]  pipe      The pipe.
 * @param[in]  mass_kg_s Mass flow. @range{[0;1e6]}
 * @param[in]  p2_pa     Pressure at the outlet, absolute. @range{[1;1e8]}
 * @param[out] p1_pa     Pressure at the inlet, absolute.
 * @param[out] factor    Friction factor; infinite without flow.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_TRANSITION computed, the flow is between laminar and turbulent
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_VERSION     pipe has an unknown size or content
 * @retval FREEAIR_ERR_NO_SOLUTION choked: so much does not leave at this pressure
 * @source{Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete isothermal equation}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_isothermal_inlet_pressure(const freeair_isothermal_pipe *pipe, double mass_kg_s,
                                                      double p2_pa, double *p1_pa, double *factor);

/** Diameter of a pipe for an allowed pressure drop.
 *
 * Model: the equation above, bisection of the logarithm of the diameter between 1e-6 and 10 m, to rounding.
 *
 * @param[in]  pipe       The pipe; its diameter is not used.
 * @param[in]  mass_kg_s  Mass flow. @range{[1e-9;1e6]}
 * @param[in]  p1_pa      Pressure at the inlet, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Pressure at the outlet, absolute, below p1_pa. @range{[1;1e8]}
 * @param[out] diameter_m Inner diameter; freeair_pipe_size_from_diameter gives the next that can be bought.
 * @param[out] factor     Friction factor.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_TRANSITION computed, the flow is between laminar and turbulent
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or p2_pa is not below p1_pa
 * @retval FREEAIR_ERR_VERSION     pipe has an unknown size or content
 * @retval FREEAIR_ERR_NO_SOLUTION no diameter from 1e-6 to 10 m, or the pipe would choke
 * @source{Massey and Ward-Smith, Mechanics of Fluids, chapter 11, isothermal flow}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_isothermal_diameter(const freeair_isothermal_pipe *pipe, double mass_kg_s, double p1_pa,
                                                double p2_pa, double *diameter_m, double *factor);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
