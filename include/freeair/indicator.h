/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_INDICATOR_H
#define FREEAIR_INDICATOR_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup indicator Indicator
 * The indicator card, pressure against volume of one cylinder end over one
 * revolution: mean effective pressure and work from a paper card or from
 * measured points, the exponent along a stretch of it, and the ideal diagram to
 * draw behind it. Indicated power is work times speed
 * (freeair_cylinder_indicated_power).
 * @{
 */

/** Mean effective pressure from a paper card.
 *
 * Model: pm = area / length * scale_pa / scale_m, the spring scale given as a pressure and the height it draws.
 *
 * @param[in]  area_m2  Area of the card, by planimeter. @range{[0;1]}
 * @param[in]  length_m Length of the card. @range{[0.001;10]}
 * @param[in]  scale_pa Pressure that the spring shows as scale_m. @range{[1;1e8]}
 * @param[in]  scale_m  Height that scale_pa draws. @range{[0.00001;1]}
 * @param[out] mep_pa   Mean effective pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   mep_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_indicator_mep_from_card(double area_m2, double length_m, double scale_pa, double scale_m,
                                                    double *mep_pa);

/** Indicated work and mean effective pressure from points of a card.
 *
 * Model: w = -sum (p_i + p_i+1)/2 (V_i+1 - V_i) around the loop, which the last point closes to the first; positive
 * where work is put into the gas. pm = w over the greatest less the smallest volume. The trapezoids cut corners: the
 * ideal diagram at equal crank angles, ratio up to 12, errs by less than 0.06 % with 180 points and 0.005 % with 720.
 * A dead centre that is off by one degree costs far more: 2 % at a ratio of 3, 4 % at 8, up to 9 % at 12.
 *
 * @param[in]  p_pa   Pressures in order of time, absolute or gauge alike. @shape{points} @range{[-1e8;1e8]}
 * @param[in]  v_m3   Volumes. @shape{points} @range{[0;1000]}
 * @param[in]  points Number of points, at least 3. @range{[3;1e9]}
 * @param[out] w_j    Work of a revolution.
 * @param[out] mep_pa Mean effective pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DATA   there are fewer than 3 points, or all volumes are equal
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: closed integral of -p dV by the trapezoid rule}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_indicator_work(const double *p_pa, const double *v_m3, size_t points, double *w_j,
                                           double *mep_pa);

/** Polytropic exponent along a stretch of a card, by least squares.
 *
 * Model: ln p = a - n ln V fitted to the points of a compression or re-expansion, all valves shut. The standard
 * uncertainty comes from their scatter, points - 2 degrees of freedom; it does not contain an error of pressure or
 * clearance that all points share. An error of 0.01 in the clearance moves the exponent of compression by 0.02 to
 * 0.03, that of re-expansion by 0.06 to 0.3.
 *
 * @param[in]  p_pa          Pressures, absolute. @shape{points} @range{[1;1e8]}
 * @param[in]  v_m3          Volumes, clearance included. @shape{points} @range{[1e-12;1000]}
 * @param[in]  points        Number of points, at least 3. @range{[3;1e9]}
 * @param[out] n             Exponent.
 * @param[out] n_uncertainty Standard uncertainty of the exponent.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DATA        there are fewer than 3 points, or all volumes are equal
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the exponent is not from 0.5 to 10
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement, H.3, straight line by least squares}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_indicator_exponent(const double *p_pa, const double *v_m3, size_t points, double *n,
                                               double *n_uncertainty);

/** Ideal diagram, to be drawn.
 *
 * Model: compression, discharge, re-expansion, suction with instant valves, from bottom dead centre. Three eighths of
 * the steps on either curve, equal in ln p, the rest along the strokes; the last point is the first. The trapezoid
 * rule on these points overstates the work, by less than 0.02 % with 200 points at a ratio of 12.
 *
 * @param[in]  p1_pa         Suction pressure in the cylinder, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa         Discharge pressure in the cylinder, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  clearance     Clearance as a fraction of the swept volume. @range{[0;2]}
 * @param[in]  swept_m3      Swept volume of the cylinder end. @range{[1e-12;1000]}
 * @param[in]  n_compression Exponent of compression. @range{[0.5;10]}
 * @param[in]  n_expansion   Exponent of re-expansion. @range{[0.5;10]}
 * @param[out] p_pa          Pressures. @shape{points}
 * @param[out] v_m3          Volumes, clearance included. @shape{points}
 * @param[in]  points        Number of points, at least 9. @range{[9;1e9]}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DATA        there is room for fewer than 9 points
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or p2_pa is not above p1_pa
 * @retval FREEAIR_ERR_NO_SOLUTION nothing is delivered against p2_pa, or the curves cross: no diagram
 * @source{algebra: p V^n = constant on either curve}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_indicator_ideal(double p1_pa, double p2_pa, double clearance, double swept_m3,
                                            double n_compression, double n_expansion, double *p_pa, double *v_m3,
                                            size_t points);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
