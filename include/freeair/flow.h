/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_FLOW_H
#define FREEAIR_FLOW_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup flow Flow
 * One-dimensional isentropic flow of an ideal gas with constant heat-capacity
 * ratio: nozzles, orifices and leaks between two pressures, choked or not.
 *
 * The area is the effective area, discharge coefficient times geometric area.
 * The state before the restriction is the stagnation state; where the approach
 * is a wide pipe or a vessel this is what a gauge reads. Below about 100 Pa
 * air is no continuum in small holes and nothing here applies.
 * @{
 */

/** Branch of the relation between area and Mach number.
 * @since 0.1
 */
enum freeair_flow_branch {
  FREEAIR_FLOW_SUBSONIC = 0,  /**< Mach number up to 1. */
  FREEAIR_FLOW_SUPERSONIC = 1 /**< Mach number from 1 upwards. */
};

/** Critical pressure ratio, below which the flow through a nozzle is choked.
 *
 * Model: r = (2 / (k + 1))^(k / (k - 1)), outlet over inlet pressure; 0.528 for air.
 *
 * @param[in]  k     Heat-capacity ratio. @range{(1;2]}
 * @param[out] ratio Critical pressure ratio.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   ratio is null
 * @retval FREEAIR_ERR_DOMAIN k is outside its range
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 11, compressible flow}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_critical_pressure_ratio(double k, double *ratio);

/** Critical flow coefficient C*, the dimensionless choked mass flux.
 *
 * Model: C* = sqrt(k) (2 / (k + 1))^((k + 1) / (2 (k - 1))), so that the choked
 * mass flow is C* A p1 / sqrt(R T1). Ideal gas; 0.6847 for air.
 *
 * @param[in]  k           Heat-capacity ratio. @range{(1;2]}
 * @param[out] coefficient Critical flow coefficient.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   coefficient is null
 * @retval FREEAIR_ERR_DOMAIN k is outside its range
 * @source{ISO 9300:2005, critical flow function of a perfect gas}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_critical_coefficient(double k, double *coefficient);

/** Mass flow through an effective area between two pressures.
 *
 * Model: with r = p2 / p1, m = A p1 / sqrt(R T1) sqrt(2 k / (k - 1)) r^(1/k)
 * sqrt(1 - r^((k-1)/k)) down to the critical pressure ratio, constant below it.
 * The pressure difference is not formed from r, so no digit is lost as p2
 * approaches p1. Isentropic up to the throat.
 *
 * @param[in]  area_m2   Effective area. @range{(0;100]}
 * @param[in]  p1_pa     Inlet pressure, absolute, stagnation. @range{[1;1e8]}
 * @param[in]  t1_k      Inlet temperature, stagnation. @range{[1;5000]}
 * @param[in]  p2_pa     Outlet pressure, absolute, not above p1_pa. @range{[0;1e8]}
 * @param[in]  k         Heat-capacity ratio. @range{(1;2]}
 * @param[in]  r_j_kg_k  Gas constant. @range{[10;10000]}
 * @param[out] mass_kg_s Mass flow.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   mass_kg_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is above p1_pa
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 11, isentropic flow of an ideal gas}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_mass_flow(double area_m2, double p1_pa, double t1_k, double p2_pa, double k,
                                           double r_j_kg_k, double *mass_kg_s);

/** Effective area that passes a mass flow between two pressures.
 *
 * Model: inverse of freeair_flow_mass_flow, which is proportional to the area.
 *
 * @param[in]  mass_kg_s Mass flow. @range{(0;1e6]}
 * @param[in]  p1_pa     Inlet pressure, absolute, stagnation. @range{[1;1e8]}
 * @param[in]  t1_k      Inlet temperature, stagnation. @range{[1;5000]}
 * @param[in]  p2_pa     Outlet pressure, absolute, below p1_pa. @range{[0;1e8]}
 * @param[in]  k         Heat-capacity ratio. @range{(1;2]}
 * @param[in]  r_j_kg_k  Gas constant. @range{[10;10000]}
 * @param[out] area_m2   Effective area.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   area_m2 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is not below p1_pa
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_area_from_mass_flow(double mass_kg_s, double p1_pa, double t1_k, double p2_pa,
                                                     double k, double r_j_kg_k, double *area_m2);

/** Outlet pressure at which an effective area passes a mass flow.
 *
 * Model: inverse of freeair_flow_mass_flow on its subsonic branch by a bracketed
 * Newton iteration, at most 100 steps. At exactly the choked mass flow any lower
 * pressure does as well and the critical pressure is returned; close to it the
 * answer is as uncertain as the square root of the flow's uncertainty.
 *
 * @param[in]  mass_kg_s Mass flow. @range{[0;1e6]}
 * @param[in]  area_m2   Effective area. @range{[1e-15;100]}
 * @param[in]  p1_pa     Inlet pressure, absolute, stagnation. @range{[1;1e8]}
 * @param[in]  t1_k      Inlet temperature, stagnation. @range{[1;5000]}
 * @param[in]  k         Heat-capacity ratio. @range{(1;2]}
 * @param[in]  r_j_kg_k  Gas constant. @range{[10;10000]}
 * @param[out] p2_pa     Outlet pressure, absolute.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        p2_pa is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the area chokes below this mass flow
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_outlet_pressure_from_mass_flow(double mass_kg_s, double area_m2, double p1_pa,
                                                                double t1_k, double k, double r_j_kg_k,
                                                                double *p2_pa);

/** Inlet pressure needed to drive a mass flow through an effective area.
 *
 * Model: inverse of freeair_flow_mass_flow for p1, in closed form: choked,
 * p1 = m sqrt(R T1) / (C* A); else with G = m sqrt(R T1) / (A p2) and
 * u = sqrt(1 - r^((k-1)/k)), G = sqrt(2 k / (k - 1)) u / (1 - u^2), a quadratic in u.
 *
 * @param[in]  mass_kg_s Mass flow. @range{[0;1e6]}
 * @param[in]  area_m2   Effective area. @range{[1e-15;100]}
 * @param[in]  t1_k      Inlet temperature, stagnation. @range{[1;5000]}
 * @param[in]  p2_pa     Outlet pressure, absolute. @range{[0;1e8]}
 * @param[in]  k         Heat-capacity ratio. @range{(1;2]}
 * @param[in]  r_j_kg_k  Gas constant. @range{[10;10000]}
 * @param[out] p1_pa     Inlet pressure, absolute, stagnation.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p1_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_inlet_pressure_from_mass_flow(double mass_kg_s, double area_m2, double t1_k,
                                                               double p2_pa, double k, double r_j_kg_k,
                                                               double *p1_pa);

/** Ratios of the isentropic flow table at a Mach number.
 *
 * Model: T/T0 = 1 / (1 + (k - 1)/2 M^2), p/p0 = (T/T0)^(k/(k-1)),
 * rho/rho0 = (T/T0)^(1/(k-1)), A/A* = 1/M (2/(k+1) T0/T)^((k+1)/(2(k-1))).
 *
 * @param[in]  mach              Mach number. @range{[1e-6;10]}
 * @param[in]  k                 Heat-capacity ratio. @range{(1;2]}
 * @param[out] pressure_ratio    Static over stagnation pressure, p/p0.
 * @param[out] temperature_ratio Static over stagnation temperature, T/T0.
 * @param[out] density_ratio     Static over stagnation density.
 * @param[out] area_ratio        Area over critical area, A/A*.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{NACA Report 1135, Equations, Tables and Charts for Compressible Flow, equations 43 to 45 and 80}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_isentropic_ratios(double mach, double k, double *pressure_ratio,
                                                   double *temperature_ratio, double *density_ratio,
                                                   double *area_ratio);

/** Mach number at a ratio of static to stagnation pressure.
 *
 * Model: M = sqrt(2 / (k - 1) ((p/p0)^(-(k-1)/k) - 1)).
 *
 * @param[in]  pressure_ratio Static over stagnation pressure. @range{[1e-12;1]}
 * @param[in]  k              Heat-capacity ratio. @range{(1;2]}
 * @param[out] mach           Mach number.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   mach is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{NACA Report 1135, equation 44 solved for the Mach number}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_mach_from_pressure_ratio(double pressure_ratio, double k, double *mach);

/** Mach number at a ratio of area to critical area.
 *
 * Model: Newton iteration on the logarithm of A/A* as a convex function of the
 * logarithm of M, from the far side, so that every step approaches the root; at
 * most 100 steps.
 *
 * @param[in]  area_ratio Area over critical area, A/A*. @range{[1;1e6]}
 * @param[in]  branch     Subsonic or supersonic. @choice{freeair_flow_branch}
 * @param[in]  k          Heat-capacity ratio. @range{(1;2]}
 * @param[out] mach       Mach number.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   mach is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{NACA Report 1135, equation 80 solved for the Mach number}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_flow_mach_from_area_ratio(double area_ratio, int32_t branch, double k, double *mach);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
