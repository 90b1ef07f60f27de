/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_VESSEL_H
#define FREEAIR_VESSEL_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup vessel Vessel
 * The receiver as a pressure vessel: the energy it stores, the stress in its
 * shell, the wall that a code formula asks for, and its relief valve against the
 * compressor. These figures inform; they judge no vessel and replace no stamp,
 * inspection, local code or licensed practice.
 * @{
 */

/** Energy stored in compressed air, by the four usual formulas.
 *
 * Model: Brode (p - p0) V / (k - 1), an upper bound for a burst; isentropic expansion p
 * V / (k - 1) (1 - (p0/p)^((k-1)/k)), the usual figure; isothermal expansion p V
 * ln(p/p0), which takes heat from around; and what is available of that beyond pushing
 * back the atmosphere, p V ln(p/p0) - (p - p0) V. State which one is meant.
 *
 * @param[in]  p_pa         Pressure in the vessel, absolute, not below p_atm_pa. @range{[1;1e9]}
 * @param[in]  p_atm_pa     Barometric pressure. @range{[1000;120000]}
 * @param[in]  v_m3         Volume of the vessel. @range{[1e-9;1e6]}
 * @param[in]  k            Heat-capacity ratio. @range{(1;2]}
 * @param[out] brode_j      Brode energy.
 * @param[out] isentropic_j Work of isentropic expansion.
 * @param[out] isothermal_j Work of isothermal expansion.
 * @param[out] available_j  Available work of isothermal expansion.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_pa is below p_atm_pa
 * @source{Paulsen, Pressure Systems Stored-Energy Threshold Risk Analysis, PNNL-18696, 2009, for the choice of formulas}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_stored_energy(double p_pa, double p_atm_pa, double v_m3, double k,
                                                 double *brode_j, double *isentropic_j, double *isothermal_j,
                                                 double *available_j);

/** Stored energy of a pneumatic test, and its TNT equivalent.
 *
 * Model: E = 2.5 p V (1 - (p0/p)^0.286), for air and nitrogen; TNT = E / 4266920 J/kg.
 *
 * @param[in]  p_pa     Pressure in the vessel, absolute, not below p_atm_pa. @range{[1;1e9]}
 * @param[in]  p_atm_pa Barometric pressure. @range{[1000;120000]}
 * @param[in]  v_m3     Volume of the vessel. @range{[1e-9;1e6]}
 * @param[out] energy_j Stored energy.
 * @param[out] tnt_kg   Equivalent mass of TNT.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_pa is below p_atm_pa
 * @source{ASME PCC-2, Article 501, Mandatory Appendix 501-II, equations II-2 and II-3}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_test_energy(double p_pa, double p_atm_pa, double v_m3, double *energy_j,
                                               double *tnt_kg);

/** Mass of TNT that releases an energy.
 *
 * Model: division by the specific energy chosen: 4.184e6 J/kg by convention, 4.26692e6
 * J/kg in ASME PCC-2, 4.62e6 J/kg in some laboratory rules.
 *
 * @param[in]  energy_j Energy. @range{[0;1e15]}
 * @param[in]  tnt_j_kg Specific energy of TNT. @range{[1e6;1e7]}
 * @param[out] tnt_kg   Equivalent mass of TNT.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   tnt_kg is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_tnt_equivalent(double energy_j, double tnt_j_kg, double *tnt_kg);

/** Least distance of people from a pneumatic test.
 *
 * Model: the greater of R = 20 m/kg^(1/3) (2 TNT)^(1/3) with TNT = E / 4266920 J/kg and
 * a floor of 30 m up to 135.5 MJ, 60 m up to 271 MJ; R alone above.
 *
 * @param[in]  energy_j   Stored energy of the test. @range{[0;1e15]}
 * @param[out] distance_m Distance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   distance_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ASME PCC-2, Article 501, Mandatory Appendix 501-III, equation III-1}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_test_distance(double energy_j, double *distance_m);

/** Hoop and longitudinal membrane stress in a thin cylindrical shell.
 *
 * Model: hoop p r / t, longitudinal p r / (2 t), away from heads, nozzles and supports;
 * weld and corrosion not counted.
 *
 * @param[in]  dp_pa           Pressure inside above that outside. @range{[0;1e9]}
 * @param[in]  radius_m        Inside radius. @range{[1e-3;100]}
 * @param[in]  wall_m          Wall thickness. @range{[1e-5;10]}
 * @param[out] hoop_pa         Hoop stress.
 * @param[out] longitudinal_pa Longitudinal stress.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed, but the wall is thicker than a tenth of the radius: thin-wall theory reads low
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Gere, Mechanics of Materials, chapter 8, pressure vessels}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_shell_stress(double dp_pa, double radius_m, double wall_m, double *hoop_pa,
                                                double *longitudinal_pa);

/** Membrane stress in a thin spherical shell.
 *
 * Model: p r / (2 t), away from openings and supports.
 *
 * @param[in]  dp_pa     Pressure inside above that outside. @range{[0;1e9]}
 * @param[in]  radius_m  Inside radius. @range{[1e-3;100]}
 * @param[in]  wall_m    Wall thickness. @range{[1e-5;10]}
 * @param[out] stress_pa Stress, the same in each direction.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed, but the wall is thicker than a tenth of the radius: thin-wall theory reads low
 * @retval FREEAIR_ERR_NULL   stress_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Gere, Mechanics of Materials, chapter 8, pressure vessels}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_sphere_stress(double dp_pa, double radius_m, double wall_m, double *stress_pa);

/** Wall of a cylindrical shell that a code formula requires, corrosion allowance included.
 *
 * Model: t = P (R + c) / (S E - 0.6 P) + c, for P up to 0.385 S E. Circumferential
 * stress only: heads, nozzles, supports and minimum thicknesses have rules of their own.
 *
 * @param[in]  dp_pa            Design pressure, inside above outside. @range{[0;1e9]}
 * @param[in]  radius_m         Inside radius, new. @range{[1e-3;100]}
 * @param[in]  stress_pa        Allowable stress of the material at temperature. @range{[1e6;1e9]}
 * @param[in]  joint_efficiency Efficiency of the longitudinal joint. @range{[0.3;1]}
 * @param[in]  corrosion_m      Corrosion allowance. @range{[0;0.1]}
 * @param[out] wall_m           Required wall, new.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        wall_m is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pressure is beyond the range of the formula
 * @source{ASME Boiler and Pressure Vessel Code, Section VIII, Division 1, UG-27(c)(1)}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_wall_required(double dp_pa, double radius_m, double stress_pa,
                                                 double joint_efficiency, double corrosion_m, double *wall_m);

/** Pressure that a code formula allows a measured cylindrical wall.
 *
 * Model: with t the wall less the allowance for corrosion to come, P = S E t / (Ro - 0.4
 * t), the formula of UG-27(c)(1) on the outside radius, which corrosion inside leaves as
 * it was. For t up to half the inside radius. Measure at the thinnest place: the bottom,
 * beneath the water.
 *
 * @param[in]  wall_m           Least wall measured. @range{[1e-5;1]}
 * @param[in]  outside_radius_m Outside radius. @range{[1e-3;100]}
 * @param[in]  stress_pa        Allowable stress of the material at temperature. @range{[1e6;1e9]}
 * @param[in]  joint_efficiency Efficiency of the longitudinal joint. @range{[0.3;1]}
 * @param[in]  corrosion_m      Corrosion allowance. @range{[0;0.1]}
 * @param[out] dp_pa            Pressure inside above outside.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        dp_pa is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION no wall is left after the allowance, or it is too thick for the formula
 * @source{ASME Boiler and Pressure Vessel Code, Section VIII, Division 1, Mandatory Appendix 1-1(a)(1)}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_pressure_allowable(double wall_m, double outside_radius_m, double stress_pa,
                                                      double joint_efficiency, double corrosion_m, double *dp_pa);

/** Free air that a relief valve passes.
 *
 * Model: isentropic flow of dry air (k = 1.4, R = 287.05287 J/(kg K)) through
 * coefficient times area, choked wherever it blows off to the atmosphere above about 0.9
 * bar gauge. Use the derated coefficient on the certificate, and the set pressure with
 * its overpressure.
 *
 * @param[in]  area_m2        Actual discharge area. @range{[1e-9;1]}
 * @param[in]  coefficient    Derated coefficient of discharge. @range{[0.01;1]}
 * @param[in]  p_relieving_pa Relieving pressure, absolute, not below p_back_pa. @range{[1000;1e8]}
 * @param[in]  t_k            Temperature in the vessel. @range{[50;2000]}
 * @param[in]  p_back_pa      Pressure beyond the valve, absolute. @range{[0;1e8]}
 * @param[in]  p_ref_pa       Reference pressure of the free air. @range{[1000;1e6]}
 * @param[in]  t_ref_k        Reference temperature of the free air. @range{[50;2000]}
 * @param[out] q_m3_s         Capacity as free air.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p_relieving_pa is below p_back_pa
 * @source{API Standard 520 Part I, sizing for gas in critical flow}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_relief_capacity(double area_m2, double coefficient, double p_relieving_pa,
                                                   double t_k, double p_back_pa, double p_ref_pa, double t_ref_k,
                                                   double *q_m3_s);

/** Does a relief valve pass what the compressor delivers?
 *
 * Model: guarded decision on the difference capacity less delivery, with its standard
 * uncertainty: MEETS, FAILS or CANNOT_TELL.
 *
 * @param[in]  capacity_m3_s             Capacity of the relief valve, free air. @range{[0;1e4]}
 * @param[in]  capacity_uncertainty_m3_s Its standard uncertainty. @range{[0;1e4]}
 * @param[in]  delivery_m3_s             Delivery of every compressor on it, same reference. @range{[1e-12;1e4]}
 * @param[in]  delivery_uncertainty_m3_s Its standard uncertainty. @range{[0;1e4]}
 * @param[in]  confidence                Probability required of a firm verdict. @range{(0.5;1)}
 * @param[out] margin                    Capacity over delivery.
 * @param[out] verdict                   The decision. @choice{freeair_verdict}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 106:2012, 8.3, guarded decisions}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_vessel_relief_verdict(double capacity_m3_s, double capacity_uncertainty_m3_s,
                                                  double delivery_m3_s, double delivery_uncertainty_m3_s,
                                                  double confidence, double *margin, int32_t *verdict);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
