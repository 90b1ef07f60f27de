/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CYLINDER_H
#define FREEAIR_CYLINDER_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup cylinder Cylinder
 * A reciprocating cylinder in closed form: swept and clearance volume, the
 * volumetric efficiency that re-expansion of the clearance air leaves, the
 * pressure at which delivery stops, mean effective pressure and indicated
 * power. Ideal gas, valves without loss or leak, no heating on the way in: the
 * delivery topic adds these, the crank topic the motion, the indicator topic
 * the diagram. Clearance is a fraction of the swept volume throughout; a
 * cylinder end is one working chamber.
 * @{
 */

/** Swept volume of one cylinder end.
 *
 * Model: V = pi/4 D^2 L.
 *
 * @param[in]  bore_m   Bore D. @range{[0.0001;10]}
 * @param[in]  stroke_m Stroke L. @range{[0.0001;10]}
 * @param[out] v_m3     Swept volume.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   v_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_swept_volume(double bore_m, double stroke_m, double *v_m3);

/** Swept volume of both ends of a double-acting cylinder.
 *
 * Model: V = pi/4 L (2 D^2 - d^2), the piston rod taking its part of the crank end.
 *
 * @param[in]  bore_m         Bore D. @range{[0.0001;10]}
 * @param[in]  stroke_m       Stroke L. @range{[0.0001;10]}
 * @param[in]  rod_diameter_m Diameter d of the piston rod, below the bore; 0 to neglect it. @range{[0;10]}
 * @param[out] v_m3           Swept volume of one revolution.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   v_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or the rod is not thinner than the bore
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_swept_volume_double_acting(double bore_m, double stroke_m, double rod_diameter_m,
                                                                double *v_m3);

/** Clearance volume.
 *
 * Model: V = c Vs.
 *
 * @param[in]  swept_m3  Swept volume Vs. @range{[1e-12;1000]}
 * @param[in]  clearance Clearance c, a fraction of the swept volume. @range{[0;2]}
 * @param[out] v_m3      Clearance volume.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   v_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_clearance_volume(double swept_m3, double clearance, double *v_m3);

/** Clearance as a fraction of the swept volume.
 *
 * Model: c = V / Vs. The clearance volume of a head can be measured by filling it with oil.
 *
 * @param[in]  swept_m3     Swept volume Vs. @range{[1e-12;1000]}
 * @param[in]  clearance_m3 Clearance volume V. @range{[0;1000]}
 * @param[out] clearance    Clearance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   clearance is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_clearance_from_volume(double swept_m3, double clearance_m3, double *clearance);

/** Volumetric efficiency.
 *
 * Model: 1 + c - c (p2/p1)^(1/n), n the exponent of re-expansion (that of compression has no part in it). Refers to
 * air at p1 and at the temperature with which it lies in the cylinder. Absolute error below 1e-14.
 *
 * @param[in]  p1_pa      Suction pressure in the cylinder, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure in the cylinder, absolute, not below p1_pa. @range{[1;1e8]}
 * @param[in]  clearance  Clearance c, a fraction of the swept volume. @range{[0;2]}
 * @param[in]  n          Exponent of re-expansion. @range{[0.5;10]}
 * @param[out] efficiency Volumetric efficiency.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed: nothing is delivered against p2_pa, the result is 0
 * @retval FREEAIR_ERR_NULL   efficiency is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is below p1_pa
 * @source{Nag, Basic and Applied Thermodynamics, chapter 19, volumetric efficiency}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_volumetric_efficiency(double p1_pa, double p2_pa, double clearance, double n,
                                                           double *efficiency);

/** Pressure at which delivery falls to zero.
 *
 * Model: p = p1 ((1 + c)/c)^n: the clearance air fills the whole cylinder when it re-expands. With losses and leaks
 * a real cylinder stops sooner.
 *
 * @param[in]  p1_pa     Suction pressure, absolute. @range{[1;1e8]}
 * @param[in]  clearance Clearance c, a fraction of the swept volume. @range{[0.0001;2]}
 * @param[in]  n         Exponent of re-expansion. @range{[0.5;10]}
 * @param[out] p_pa      Discharge pressure of zero delivery, absolute.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Nag, Basic and Applied Thermodynamics, chapter 19, volumetric efficiency set to zero}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_zero_delivery_pressure(double p1_pa, double clearance, double n, double *p_pa);

/** Clearance from the pressure at which delivery falls to zero.
 *
 * Model: c = 1 / ((p_zero/p1)^(1/n) - 1). A leak makes it look larger. Never dead-head a machine to find out.
 *
 * @param[in]  p1_pa     Suction pressure, absolute. @range{[1;1e8]}
 * @param[in]  p_zero_pa Discharge pressure of zero delivery, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  n         Exponent of re-expansion. @range{[0.5;10]}
 * @param[out] clearance Clearance, a fraction of the swept volume.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   clearance is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_zero_pa is not above p1_pa
 * @source{Nag, Basic and Applied Thermodynamics, Example 19.4}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_clearance_from_zero_delivery(double p1_pa, double p_zero_pa, double n,
                                                                  double *clearance);

/** Clearance from a measured volumetric efficiency.
 *
 * Model: c = (1 - efficiency) / ((p2/p1)^(1/n) - 1). All that heating, valves and leaks cost is counted as clearance:
 * the value is an equivalent one, and its growth over the years shows wear.
 *
 * @param[in]  p1_pa      Suction pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute, above p1_pa. @range{[1;1e8]}
 * @param[in]  n          Exponent of re-expansion. @range{[0.5;10]}
 * @param[in]  efficiency Volumetric efficiency at the suction state. @range{[0;1]}
 * @param[out] clearance  Clearance, a fraction of the swept volume.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   clearance is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is not above p1_pa
 * @source{algebra: volumetric efficiency solved for the clearance}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_clearance_from_volumetric_efficiency(double p1_pa, double p2_pa, double n,
                                                                          double efficiency, double *clearance);

/** Mean effective pressure of the ideal cycle.
 *
 * Model: (1 + c) p1 nc/(nc-1) (r^((nc-1)/nc) - 1) - c r^(1/ne) p1 ne/(ne-1) (r^((ne-1)/ne) - 1), r = p2/p1: work of
 * compression and delivery, less what re-expansion returns, over the swept volume. With the pressures inside the
 * cylinder it contains the valve losses. Air is delivered if compression reaches p2 before top dead centre and
 * re-expansion p1 before bottom dead centre.
 *
 * @param[in]  p1_pa         Suction pressure in the cylinder, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa         Discharge pressure in the cylinder, absolute, not below p1_pa. @range{[1;1e8]}
 * @param[in]  clearance     Clearance c, a fraction of the swept volume. @range{[0;2]}
 * @param[in]  n_compression Exponent nc of compression. @range{[0.5;10]}
 * @param[in]  n_expansion   Exponent ne of re-expansion. @range{[0.5;10]}
 * @param[out] mep_pa        Mean effective pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed: nothing is delivered against p2_pa, the result is 0
 * @retval FREEAIR_ERR_NULL   mep_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is below p1_pa
 * @source{Rajput, A Textbook of Internal Combustion Engines, chapter 20, work with different indices}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_mean_effective_pressure(double p1_pa, double p2_pa, double clearance,
                                                             double n_compression, double n_expansion,
                                                             double *mep_pa);

/** Indicated power.
 *
 * Model: P = pm Vs N (the textbook's pm L A N).
 *
 * @param[in]  mep_pa      Mean effective pressure pm. @range{[-1e8;1e8]}
 * @param[in]  swept_m3    Swept volume of all ends together. @range{[1e-12;1000]}
 * @param[in]  speed_rev_s Crankshaft speed. @range{[0;1000]}
 * @param[out] power_w     Indicated power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   power_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_indicated_power(double mep_pa, double swept_m3, double speed_rev_s,
                                                     double *power_w);

/** Mean piston speed.
 *
 * Model: 2 L N.
 *
 * @param[in]  stroke_m    Stroke L. @range{[0.0001;10]}
 * @param[in]  speed_rev_s Crankshaft speed N. @range{[0;1000]}
 * @param[out] speed_m_s   Mean piston speed.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   speed_m_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cylinder_piston_speed(double stroke_m, double speed_rev_s, double *speed_m_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
