/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_RING_MAIN_H
#define FREEAIR_RING_MAIN_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup ring_main Ring main
 * Compressed air mains with several offtakes: a ring that is fed at one point, so that
 * each offtake gets its air from both sides, and a main that ends dead. Flow in each
 * piece of pipe and pressure at each offtake.
 *
 * Pieces of pipe are listed from the supply onwards; an offtake stands at the end of
 * its piece. In a ring the last piece comes back to the supply. Isothermal, ideal gas,
 * the acceleration of the gas neglected: p1^2 - p2^2 = f L/d G^2 R T. Add the
 * equivalent lengths of fittings to the lengths.
 * @{
 */

/** Share of a flow that takes one of two parallel legs.
 *
 * Model: 1 / (1 + sqrt((L1/d1^5) / (L2/d2^5))), the same friction factor in both.
 *
 * @param[in]  length1_m   Length of the leg. @range{[0.001;1e6]}
 * @param[in]  diameter1_m Its inner diameter. @range{[0.001;10]}
 * @param[in]  length2_m   Length of the other. @range{[0.001;1e6]}
 * @param[in]  diameter2_m Its inner diameter. @range{[0.001;10]}
 * @param[out] share       Share that takes the leg.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   share is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 8.5.2, parallel pipes}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_ring_main_share(double length1_m, double diameter1_m, double length2_m,
                                            double diameter2_m, double *share);

/** Flows and pressures of a ring.
 *
 * Model: the flow into the first piece is sought for which the differences of p^2 around the ring add up to nothing
 * (what the method of Hardy Cross corrects step by step), by the false position method, at most 200 steps, to
 * rounding; friction factors as freeair_pipe_friction_factor.
 *
 * @param[in]  length_m      Length of each piece. @shape{n} @range{[0;1e6]}
 * @param[in]  diameter_m    Inner diameter of each piece. @shape{n} @range{[0.001;10]}
 * @param[in]  offtake_kg_s  Mass flow taken at the end of each piece; that of the last is taken at the supply itself.
 *                           @shape{n} @range{[0;1e4]}
 * @param[in]  n             Number of pieces. @range{[2;10000]}
 * @param[in]  roughness_m   Roughness of the inside; 45e-6 for steel. @range{[0;0.0001]}
 * @param[in]  p_supply_pa   Pressure at the supply, absolute. @range{[1000;1e8]}
 * @param[in]  t_k           Temperature. @range{[50;2000]}
 * @param[in]  viscosity_pas Dynamic viscosity. @range{[1e-8;1]} @default{air at t_k, US Standard Atmosphere 1976}
 * @param[in]  r_j_kg_k      Specific gas constant. @range{[10;10000]} @default{287.05287, dry air}
 * @param[out] flow_kg_s     Mass flow in each piece, negative against the order of the list. @shape{n}
 * @param[out] p_pa          Pressure at the end of each piece, absolute. @shape{n}
 * @param[out] lowest_pa     The lowest of them.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_LIMIT      computed, but the pressure falls by more than a tenth: pipes too narrow
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DATA        n is outside its range
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or no piece has a length
 * @retval FREEAIR_ERR_NO_SOLUTION the ring cannot bring so much
 * @source{Cross, Analysis of flow in networks of conduits or conductors, University of Illinois Bulletin 286 (1936)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_ring_main_flows(const double *length_m, const double *diameter_m,
                                            const double *offtake_kg_s, size_t n, double roughness_m,
                                            double p_supply_pa, double t_k, double viscosity_pas, double r_j_kg_k,
                                            double *flow_kg_s, double *p_pa, double *lowest_pa);

/** Flows and pressures of a main that ends dead.
 *
 * Model: each piece carries what is taken at its end and behind it.
 *
 * @param[in]  length_m      Length of each piece. @shape{n} @range{[0;1e6]}
 * @param[in]  diameter_m    Inner diameter of each piece. @shape{n} @range{[0.001;10]}
 * @param[in]  offtake_kg_s  Mass flow taken at the end of each piece. @shape{n} @range{[0;1e4]}
 * @param[in]  n             Number of pieces. @range{[1;10000]}
 * @param[in]  roughness_m   Roughness of the inside; 45e-6 for steel. @range{[0;0.0001]}
 * @param[in]  p_supply_pa   Pressure at the supply, absolute. @range{[1000;1e8]}
 * @param[in]  t_k           Temperature. @range{[50;2000]}
 * @param[in]  viscosity_pas Dynamic viscosity. @range{[1e-8;1]} @default{air at t_k, US Standard Atmosphere 1976}
 * @param[in]  r_j_kg_k      Specific gas constant. @range{[10;10000]} @default{287.05287, dry air}
 * @param[out] flow_kg_s     Mass flow in each piece. @shape{n}
 * @param[out] p_pa          Pressure at the end of each piece, absolute. @shape{n}
 * @param[out] lowest_pa     The lowest of them, at the dead end.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_LIMIT      computed, but the pressure falls by more than a tenth: pipes too narrow
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DATA        n is outside its range
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the main cannot bring so much
 * @source{algebra: continuity and the isothermal equation without acceleration}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_ring_main_dead_end(const double *length_m, const double *diameter_m,
                                               const double *offtake_kg_s, size_t n, double roughness_m,
                                               double p_supply_pa, double t_k, double viscosity_pas, double r_j_kg_k,
                                               double *flow_kg_s, double *p_pa, double *lowest_pa);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
