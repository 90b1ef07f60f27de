/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CONDUCTANCE_H
#define FREEAIR_CONDUCTANCE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup conductance Conductance
 * Flow through valves, fittings, filters and hoses from their sonic conductance C
 * and critical back-pressure ratio b of ISO 6358, one by one, in series and in
 * parallel. For data sheets with Kv or Cv: see coefficient.
 *
 * 1 dm3/(s bar) is 1e-8 m3/(s Pa). The constants of ISO 6358 are 293.15 K,
 * 100 kPa and 1.185 kg/m3; volume flows "ANR" are of that density.
 * @{
 */

/** Mass and volume flow through a component of known sonic conductance.
 *
 * Model: m = C rho0 p1 sqrt(T0 / T1) (1 - ((p2/p1 - b) / (1 - b))^2)^index,
 * choked below b; rho0 = 1.185 kg/m3, T0 = 293.15 K. An ellipse fitted to
 * measurements, good to a few per cent; static pressures in the pipe.
 *
 * @param[in]  c_m3_s_pa Sonic conductance. @range{[1e-15;0.01]}
 * @param[in]  b         Critical back-pressure ratio. @range{[0;0.99]}
 * @param[in]  index     Subsonic index; 0.5 where the data sheet has none. @range{[0.1;2]}
 * @param[in]  p1_pa     Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k      Inlet temperature. @range{[1;5000]}
 * @param[in]  p2_pa     Outlet pressure, absolute, not above p1_pa. @range{[0;1e8]}
 * @param[out] mass_kg_s Mass flow.
 * @param[out] anr_m3_s  Volume flow in the standard reference atmosphere (ANR).
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is above p1_pa
 * @source{ISO 6358-1:2013, flow-rate characteristics of components using compressible fluids}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductance_flow(double c_m3_s_pa, double b, double index, double p1_pa, double t1_k,
                                             double p2_pa, double *mass_kg_s, double *anr_m3_s);

/** Sonic conductance of a component from one measured point.
 *
 * Model: inverse of freeair_conductance_flow for C; choked points do not depend on b.
 *
 * @param[in]  mass_kg_s Mass flow. @range{(0;1e6]}
 * @param[in]  b         Critical back-pressure ratio. @range{[0;0.99]}
 * @param[in]  index     Subsonic index; 0.5 where unknown. @range{[0.1;2]}
 * @param[in]  p1_pa     Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k      Inlet temperature. @range{[1;5000]}
 * @param[in]  p2_pa     Outlet pressure, absolute, below p1_pa. @range{[0;1e8]}
 * @param[out] c_m3_s_pa Sonic conductance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   c_m3_s_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is not below p1_pa
 * @source{ISO 6358-1:2013, solved for the conductance}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductance_from_flow(double mass_kg_s, double b, double index, double p1_pa,
                                                  double t1_k, double p2_pa, double *c_m3_s_pa);

/** Outlet pressure of a component that passes a mass flow.
 *
 * Model: inverse of freeair_conductance_flow, in closed form; b p1 at exactly the choked flow.
 *
 * @param[in]  mass_kg_s Mass flow. @range{[0;1e6]}
 * @param[in]  c_m3_s_pa Sonic conductance. @range{[1e-15;0.01]}
 * @param[in]  b         Critical back-pressure ratio. @range{[0;0.99]}
 * @param[in]  index     Subsonic index. @range{[0.1;2]}
 * @param[in]  p1_pa     Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k      Inlet temperature. @range{[1;5000]}
 * @param[out] p2_pa     Outlet pressure, absolute.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        p2_pa is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the component chokes below this mass flow
 * @source{ISO 6358-1:2013, solved for the outlet pressure}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductance_outlet_pressure(double mass_kg_s, double c_m3_s_pa, double b, double index,
                                                        double p1_pa, double t1_k, double *p2_pa);

/** Conductance and critical ratio of components in series, first to last.
 *
 * Model: pair by pair from the inlet, each pair then taken as one ellipse of
 * index 0.5. The first chokes, C = C1, if C1 <= b1 C2; else the second does, and
 * C = C2 y with y the root of C2 y = C1 sqrt(1 - ((y - b1) / (1 - b1))^2).
 * b from the limit of small flow, (1 - b)/C^2 = sum (1 - bi)/Ci^2. Exact in
 * those two limits; temperature constant, velocity lost between components.
 *
 * @param[in]  c_m3_s_pa       Sonic conductances. @shape{n} @range{[1e-15;0.01]}
 * @param[in]  b               Critical back-pressure ratios. @shape{n} @range{[0;0.99]}
 * @param[in]  n               Number of components. @range{[1;10000]}
 * @param[out] c_total_m3_s_pa Sonic conductance of the whole.
 * @param[out] b_total         Critical back-pressure ratio of the whole.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ISO 6358-3:2014, systems of components; derived anew in the guide}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductance_series(const double *c_m3_s_pa, const double *b, size_t n,
                                               double *c_total_m3_s_pa, double *b_total);

/** Conductance and critical ratio of components in parallel.
 *
 * Model: C = sum Ci, and C / sqrt(1 - b) = sum Ci / sqrt(1 - bi), exact where
 * every component is choked and in the limit of small flow.
 *
 * @param[in]  c_m3_s_pa       Sonic conductances. @shape{n} @range{[1e-15;0.01]}
 * @param[in]  b               Critical back-pressure ratios. @shape{n} @range{[0;0.99]}
 * @param[in]  n               Number of components. @range{[1;10000]}
 * @param[out] c_total_m3_s_pa Sonic conductance of the whole.
 * @param[out] b_total         Critical back-pressure ratio of the whole.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ISO 6358-3:2014, systems of components; derived anew in the guide}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductance_parallel(const double *c_m3_s_pa, const double *b, size_t n,
                                                 double *c_total_m3_s_pa, double *b_total);

/** Sonic conductance of an effective area.
 *
 * Model: equal choked mass flow, C = C* A / (rho0 sqrt(R T0)); 5.02 mm2 of air a dm3/(s bar).
 *
 * @param[in]  area_m2   Effective area. @range{(0;100]}
 * @param[in]  k         Heat-capacity ratio. @range{(1;2]}
 * @param[in]  r_j_kg_k  Gas constant. @range{[10;10000]}
 * @param[out] c_m3_s_pa Sonic conductance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   c_m3_s_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductance_from_area(double area_m2, double k, double r_j_kg_k, double *c_m3_s_pa);

/** Effective area of a sonic conductance.
 *
 * Model: equal choked mass flow, A = C rho0 sqrt(R T0) / C*.
 *
 * @param[in]  c_m3_s_pa Sonic conductance. @range{(0;0.01]}
 * @param[in]  k         Heat-capacity ratio. @range{(1;2]}
 * @param[in]  r_j_kg_k  Gas constant. @range{[10;10000]}
 * @param[out] area_m2   Effective area.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   area_m2 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductance_area(double c_m3_s_pa, double k, double r_j_kg_k, double *area_m2);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
