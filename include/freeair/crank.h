/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CRANK_H
#define FREEAIR_CRANK_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup crank Crank
 * Motion of the slider-crank: where the piston is, how fast it moves, what the
 * gas and its own mass press into the connecting rod, and what torque that
 * asks of the shaft. The angle counts from top dead centre, where the clearance
 * alone is left, in the direction of rotation; the position counts from there
 * towards the crank. The cylinder axis meets the crankshaft. The rod is at
 * least 0.6 strokes long; real ones are 1.5 to 2.5.
 * @{
 */

/** Distance of the piston from top dead centre.
 *
 * Model: x = r (1 - cos a) + l (1 - sqrt(1 - (r/l)^2 sin^2 a)), r half the stroke, l the rod length.
 *
 * @param[in]  stroke_m     Stroke. @range{[0.0001;10]}
 * @param[in]  rod_length_m Length of the connecting rod, centre to centre, at least 0.6 strokes. @range{[0.00006;100]}
 * @param[in]  angle_rad    Crank angle from top dead centre. @range{[-1000;1000]}
 * @param[out] position_m   Distance from top dead centre.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   position_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the rod is too short
 * @source{algebra: plane trigonometry of the slider-crank}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_crank_position(double stroke_m, double rod_length_m, double angle_rad,
                                           double *position_m);

/** Crank angle at which the piston has a position.
 *
 * Model: inverse of freeair_crank_position from the triangle of crank, rod and axis, from 0 to pi: the stroke away
 * from top dead centre. The other angle is 2 pi minus this one.
 *
 * @param[in]  stroke_m     Stroke. @range{[0.0001;10]}
 * @param[in]  rod_length_m Length of the connecting rod, centre to centre, at least 0.6 strokes. @range{[0.00006;100]}
 * @param[in]  position_m   Distance from top dead centre, at most the stroke. @range{[0;10]}
 * @param[out] angle_rad    Crank angle.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   angle_rad is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, the rod is too short or the position beyond the stroke
 * @source{algebra: plane trigonometry of the slider-crank}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_crank_angle_from_position(double stroke_m, double rod_length_m, double position_m,
                                                      double *angle_rad);

/** Volume in a cylinder at a crank angle.
 *
 * Model: V = pi/4 D^2 (x + c L), x the position, c the clearance, L the stroke.
 *
 * @param[in]  bore_m       Bore D. @range{[0.0001;10]}
 * @param[in]  stroke_m     Stroke L. @range{[0.0001;10]}
 * @param[in]  clearance    Clearance c as a fraction of the swept volume. @range{[0;2]}
 * @param[in]  rod_length_m Length of the connecting rod, centre to centre, at least 0.6 strokes. @range{[0.00006;100]}
 * @param[in]  angle_rad    Crank angle from top dead centre. @range{[-1000;1000]}
 * @param[out] v_m3         Volume, clearance included.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   v_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the rod is too short
 * @source{algebra: plane trigonometry of the slider-crank}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_crank_volume(double bore_m, double stroke_m, double clearance, double rod_length_m,
                                         double angle_rad, double *v_m3);

/** Velocity of the piston.
 *
 * Model: v = w r sin a (1 + q cos a / sqrt(1 - q^2 sin^2 a)), w = 2 pi N, q = r/l; positive away from top dead centre.
 *
 * @param[in]  stroke_m     Stroke. @range{[0.0001;10]}
 * @param[in]  rod_length_m Length of the connecting rod, centre to centre, at least 0.6 strokes. @range{[0.00006;100]}
 * @param[in]  speed_rev_s  Crankshaft speed N. @range{[0;1000]}
 * @param[in]  angle_rad    Crank angle from top dead centre. @range{[-1000;1000]}
 * @param[out] velocity_m_s Velocity.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   velocity_m_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the rod is too short
 * @source{algebra: derivative of the position}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_crank_velocity(double stroke_m, double rod_length_m, double speed_rev_s, double angle_rad,
                                           double *velocity_m_s);

/** Load of the gas on the connecting rod.
 *
 * Model: F = pi/4 (p_head D^2 - p_crank (D^2 - d^2) - p_ambient d^2); positive presses the rod. A trunk piston has
 * d = 0 and the crankcase pressure below it. The greatest is at discharge pressure.
 *
 * @param[in]  bore_m         Bore D. @range{[0.0001;10]}
 * @param[in]  rod_diameter_m Diameter d of a piston rod, below the bore; 0 for a trunk piston. @range{[0;10]}
 * @param[in]  p_head_pa      Pressure on the head side, absolute. @range{[1;1e8]}
 * @param[in]  p_crank_pa     Pressure on the crank side, absolute. @range{[1;1e8]}
 * @param[in]  p_ambient_pa   Pressure on the end of the piston rod, absolute. @range{[1;1e8]}
 * @param[out] load_n         Load.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   load_n is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the rod is not thinner than the bore
 * @source{algebra: balance of forces on the piston}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_crank_gas_load(double bore_m, double rod_diameter_m, double p_head_pa, double p_crank_pa,
                                           double p_ambient_pa, double *load_n);

/** Load of the reciprocating mass on the connecting rod.
 *
 * Model: F = -m w^2 r (cos a + q (cos 2a + q^2 sin^4 a) / (1 - q^2 sin^2 a)^1.5), q = r/l; positive presses the rod.
 * At top dead centre it pulls with m w^2 r (1 + q), at bottom dead centre it presses with m w^2 r (1 - q).
 *
 * @param[in]  mass_kg      Piston, pin, piston rod and the reciprocating part of the connecting rod. @range{[0;10000]}
 * @param[in]  stroke_m     Stroke. @range{[0.0001;10]}
 * @param[in]  rod_length_m Length of the connecting rod, centre to centre, at least 0.6 strokes. @range{[0.00006;100]}
 * @param[in]  speed_rev_s  Crankshaft speed. @range{[0;1000]}
 * @param[in]  angle_rad    Crank angle from top dead centre. @range{[-1000;1000]}
 * @param[out] load_n       Load.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   load_n is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the rod is too short
 * @source{algebra: second derivative of the position}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_crank_inertia_load(double mass_kg, double stroke_m, double rod_length_m,
                                               double speed_rev_s, double angle_rad, double *load_n);

/** Torque that a load on the connecting rod asks of the shaft.
 *
 * Model: T = -F dx/da, F the sum of gas and inertia load along the cylinder axis; positive is driven. Friction is left
 * out. Its mean over a revolution times 2 pi N is the indicated power.
 *
 * @param[in]  load_n       Load, positive pressing the rod. @range{[-1e9;1e9]}
 * @param[in]  stroke_m     Stroke. @range{[0.0001;10]}
 * @param[in]  rod_length_m Length of the connecting rod, centre to centre, at least 0.6 strokes. @range{[0.00006;100]}
 * @param[in]  angle_rad    Crank angle from top dead centre. @range{[-1000;1000]}
 * @param[out] torque_nm    Torque.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   torque_nm is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the rod is too short
 * @source{algebra: virtual work}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_crank_torque(double load_n, double stroke_m, double rod_length_m, double angle_rad,
                                         double *torque_nm);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
