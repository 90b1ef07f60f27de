/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_BELT_H
#define FREEAIR_BELT_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup belt Belt
 * Slip, tension and power of a flat or V-belt: whether it slips, what it can carry, how tight it is and should be.
 *
 * Tensions are those of one belt; for a set, divide the power by their number. Static tension is that of the belt at
 * rest; at work one span is tight, the other slack, and the mean stays. The belt maker's figures come first.
 * @{
 */

/** Slip of a belt from two measured speeds, with uncertainty.
 *
 * Model: s = 1 - (n2 / n1) (d2 / d1); u(s) = (1 - s) times the root of the sum of the squared relative uncertainties.
 * A sound V-belt shows some 0.5 to 2 percent; take the ratio from pitch diameters, or from the same drive when sound.
 *
 * @param[in]  driver_rev_s             Speed of the driving pulley. @range{[0.001;1000]}
 * @param[in]  driver_uncertainty_rev_s Standard uncertainty of it. @range{[0;1000]}
 * @param[in]  driven_rev_s             Speed of the driven pulley. @range{[0;1000]}
 * @param[in]  driven_uncertainty_rev_s Standard uncertainty of it. @range{[0;1000]}
 * @param[in]  ratio                    Pitch diameter of driven over driving pulley. @range{[0.001;1000]}
 * @param[in]  ratio_uncertainty        Standard uncertainty of that ratio. @range{[0;1000]}
 * @param[out] slip                     Slip as a fraction.
 * @param[out] slip_uncertainty         Standard uncertainty of the slip.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed; negative by more than two standard uncertainties, a belt cannot gain
 * @retval FREEAIR_ERR_NULL          an output is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{Khurmi and Gupta, Theory of Machines, chapter 11, slip of belt; uncertainty by JCGM 100:2008, 5.1.2}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_slip(double driver_rev_s, double driver_uncertainty_rev_s, double driven_rev_s,
                                      double driven_uncertainty_rev_s, double ratio, double ratio_uncertainty,
                                      double *slip, double *slip_uncertainty);

/** Greatest ratio of tight to slack tension before a belt slips.
 *
 * Model: R = exp(mu wrap / sin(groove / 2)), net of centrifugal tension.
 *
 * @param[in]  friction      Coefficient of friction; 0.3 is common. @range{[0;1.5]}
 * @param[in]  wrap_rad      Wrap on the pulley that slips first. @range{[0;20]}
 * @param[in]  groove_rad    Included angle of the groove; pi for a flat belt. @range{[0.3;3.141592653589793]}
 * @param[out] tension_ratio Tight over slack tension.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   tension_ratio is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Khurmi and Gupta, Theory of Machines, chapter 11, ratio of driving tensions}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_tension_ratio(double friction, double wrap_rad, double groove_rad,
                                               double *tension_ratio);

/** Tensions that a belt needs to carry a power without slipping.
 *
 * Model: T1 - T2 = P / v, (T1 - T_c) = R (T2 - T_c), T_c = m v^2; static tension is the mean of T1 and T2. These are
 * the least: multiply the power by a service factor for the pulses of a piston machine and for start.
 *
 * @param[in]  power_w       Power that the belt carries. @range{[0;10000000]}
 * @param[in]  belt_m_s      Speed of the belt. @range{[0.01;200]}
 * @param[in]  mass_kg_m     Mass of the belt for each metre; 0 neglects it. @range{[0;100]}
 * @param[in]  tension_ratio Greatest ratio of tight to slack tension. @range{[1.0001;1e12]}
 * @param[out] tight_n       Tension of the tight span.
 * @param[out] slack_n       Tension of the slack span.
 * @param[out] static_n      Static tension that gives them.
 * @param[out] centrifugal_n Part of each that the belt's own mass makes, T_c.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Khurmi and Gupta, Theory of Machines, chapter 11}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_tensions_from_power(double power_w, double belt_m_s, double mass_kg_m,
                                                     double tension_ratio, double *tight_n, double *slack_n,
                                                     double *static_n, double *centrifugal_n);

/** Power that a belt carries on the point of slipping at a tight-side tension.
 *
 * Model: P = (T1 - m v^2) (1 - 1 / R) v.
 *
 * @param[in]  tight_n       Tension of the tight span. @range{[0;10000000]}
 * @param[in]  belt_m_s      Speed of the belt. @range{[0;200]}
 * @param[in]  mass_kg_m     Mass of the belt for each metre; 0 neglects it. @range{[0;100]}
 * @param[in]  tension_ratio Greatest ratio of tight to slack tension. @range{[1;1e12]}
 * @param[out] power_w       Power.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        power_w is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION centrifugal tension alone is greater
 * @source{Khurmi and Gupta, Theory of Machines, chapter 11 and example 11.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_power_from_tight_tension(double tight_n, double belt_m_s, double mass_kg_m,
                                                          double tension_ratio, double *power_w);

/** Power that a belt carries on the point of slipping at a static tension.
 *
 * Model: P = 2 (T0 - m v^2) (R - 1) / (R + 1) v.
 *
 * @param[in]  static_n      Static tension. @range{[0;10000000]}
 * @param[in]  belt_m_s      Speed of the belt. @range{[0;200]}
 * @param[in]  mass_kg_m     Mass of the belt for each metre; 0 neglects it. @range{[0;100]}
 * @param[in]  tension_ratio Greatest ratio of tight to slack tension. @range{[1;1e12]}
 * @param[out] power_w       Power.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        power_w is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION centrifugal tension alone is greater
 * @source{Khurmi and Gupta, Theory of Machines, chapter 11 and examples 11.12 and 11.13}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_power_from_static_tension(double static_n, double belt_m_s, double mass_kg_m,
                                                           double tension_ratio, double *power_w);

/** Deflection for the force test, a sixty-fourth of the span.
 *
 * Model: span / 64: 1/64 inch for each inch, 16 mm for each metre.
 *
 * @param[in]  span_m       Free span, as by freeair_pulley_span. @range{[0.001;1000]}
 * @param[out] deflection_m Deflection at mid span.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   deflection_m is null
 * @retval FREEAIR_ERR_DOMAIN span_m is outside its range
 * @source{RMA/ARPM IP-20, classical V-belts, tensioning; common practice}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_deflection_distance(double span_m, double *deflection_m);

/** Force at mid span that deflects a belt of a static tension, by statics.
 *
 * Model: F = 4 q T / sqrt(L^2 + 4 q^2), where T = T0 + S (sqrt(L^2 + 4 q^2) - L) / L_b: a string, its stretch spread
 * over the whole belt, S its force for each unit of strain. A cold or stiff belt asks for more.
 *
 * @param[in]  static_n     Static tension. @range{[0;10000000]}
 * @param[in]  span_m       Free span. @range{[0.001;1000]}
 * @param[in]  deflection_m Deflection at mid span. @range{[0;100]}
 * @param[in]  stiffness_n  Force for each unit of strain; 0 neglects the stretch. @range{[0;1000000000]}
 * @param[in]  belt_m       Length of the whole belt. @range{[0.001;2000]}
 * @param[out] force_n      Force.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   force_n is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{statics of a string under a point load}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_deflection_force(double static_n, double span_m, double deflection_m,
                                                  double stiffness_n, double belt_m, double *force_n);

/** Static tension of a belt from the force that deflects it at mid span.
 *
 * Model: the inverse of freeair_belt_deflection_force, in closed form.
 *
 * @param[in]  force_n      Force at mid span. @range{[0;10000000]}
 * @param[in]  span_m       Free span. @range{[0.001;1000]}
 * @param[in]  deflection_m Deflection at mid span. @range{[0.000001;100]}
 * @param[in]  stiffness_n  Force for each unit of strain; 0 neglects the stretch. @range{[0;1000000000]}
 * @param[in]  belt_m       Length of the whole belt. @range{[0.001;2000]}
 * @param[out] static_n     Static tension.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        static_n is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the stretch alone asks for more force
 * @source{statics of a string under a point load}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_tension_from_deflection(double force_n, double span_m, double deflection_m,
                                                         double stiffness_n, double belt_m, double *static_n);

/** Force that deflects a belt by a sixty-fourth of its span, by the trade's formula.
 *
 * Model: F = (T0 + Y L / L_b) / 16, Y a constant of the belt section (its stiffness over 2048).
 *
 * @param[in]  static_n   Static tension. @range{[0;10000000]}
 * @param[in]  span_m     Free span. @range{[0.001;1000]}
 * @param[in]  constant_n Constant Y of the section, from the belt maker. @range{[0;1000000]}
 * @param[in]  belt_m     Length of the whole belt. @range{[0.001;2000]}
 * @param[out] force_n    Force.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   force_n is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{RMA/ARPM IP-20, deflection force, from memory}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_deflection_force_by_rule(double static_n, double span_m, double constant_n,
                                                          double belt_m, double *force_n);

/** Frequency of a span that is plucked.
 *
 * Model: f = sqrt(T0 / m) / (2 L), the first mode of a string at rest.
 *
 * @param[in]  static_n     Static tension. @range{[0;10000000]}
 * @param[in]  mass_kg_m    Mass of the belt for each metre. @range{[0.0001;100]}
 * @param[in]  span_m       Free span. @range{[0.001;1000]}
 * @param[out] frequency_hz Frequency.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   frequency_hz is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{vibrating string, as in belt makers' notes, T = 4 m L^2 f^2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_span_frequency(double static_n, double mass_kg_m, double span_m, double *frequency_hz);

/** Static tension of a span from its frequency.
 *
 * Model: T0 = 4 m L^2 f^2. Bending stiffness makes a short thick belt read high.
 *
 * @param[in]  frequency_hz Frequency of the plucked span, machine at rest and locked out. @range{[0;10000]}
 * @param[in]  mass_kg_m    Mass of the belt for each metre. @range{[0.0001;100]}
 * @param[in]  span_m       Free span. @range{[0.001;1000]}
 * @param[out] static_n     Static tension.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   static_n is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{vibrating string, as in belt makers' notes, T = 4 m L^2 f^2}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_tension_from_frequency(double frequency_hz, double mass_kg_m, double span_m,
                                                        double *static_n);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
