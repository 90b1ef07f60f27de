/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DRY_AIR_IDEAL_H
#define FREEAIR_DRY_AIR_IDEAL_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup dry_air_ideal Dry air as an ideal gas
 * The ideal-gas set of the textbooks, with a heat capacity that depends on
 * temperature: what the air tables tabulate. It is the limit of the real gas of
 * topic dry_air at zero pressure, with the same zero of enthalpy and entropy.
 *
 * The gas constant is 8.31451/0.02896546 = 287.0491 J/(kg K). At 8 bar and 20
 * degC real air is 0.3 % denser and has 1.3 % more heat capacity.
 * @{
 */

/** Density of dry air as an ideal gas.
 *
 * Model: rho = p/(R T), R = 8.31451/0.02896546 J/(kg K).
 *
 * @param[in]  p_pa      Pressure, absolute. @range{(0;2e9]}
 * @param[in]  t_k       Temperature. @range{[60;2000]}
 * @param[out] rho_kg_m3 Density.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   rho_kg_m3 is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_density(double p_pa, double t_k, double *rho_kg_m3);

/** Heat capacity of dry air at constant pressure as an ideal gas.
 *
 * Model: the ideal-gas part of Lemmon et al. (2000): a power series in T and three
 * vibration terms, 60 K to 2000 K. That at constant volume is less by R.
 *
 * @param[in]  t_k       Temperature. @range{[60;2000]}
 * @param[out] cp_j_kg_k Heat capacity at constant pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   cp_j_kg_k is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas heat capacity}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_heat_capacity(double t_k, double *cp_j_kg_k);

/** Ratio of the heat capacities of dry air as an ideal gas, the isentropic exponent of the textbooks.
 *
 * Model: k = cp/(cp - R).
 *
 * @param[in]  t_k                 Temperature. @range{[60;2000]}
 * @param[out] heat_capacity_ratio cp/cv.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   heat_capacity_ratio is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas heat capacity}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_heat_capacity_ratio(double t_k, double *heat_capacity_ratio);

/** Speed of sound in dry air as an ideal gas.
 *
 * Model: w = sqrt(k R T).
 *
 * @param[in]  t_k                Temperature. @range{[60;2000]}
 * @param[out] speed_of_sound_m_s Speed of sound.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   speed_of_sound_m_s is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas heat capacity}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_speed_of_sound(double t_k, double *speed_of_sound_m_s);

/** Enthalpy of dry air as an ideal gas.
 *
 * Model: integral of cp in closed form, counted as in topic dry_air: real air has
 * none at 273.15 K and 101325 Pa, ideal gas there 277.8 J/kg.
 *
 * @param[in]  t_k    Temperature. @range{[60;2000]}
 * @param[out] h_j_kg Enthalpy.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   h_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN t_k is outside its range
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331; reference state of IAPWS G8-10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_enthalpy(double t_k, double *h_j_kg);

/** Entropy of dry air as an ideal gas.
 *
 * Model: integral of cp/T in closed form, less R ln p, counted as in topic dry_air.
 *
 * @param[in]  p_pa     Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  t_k      Temperature. @range{[60;2000]}
 * @param[out] s_j_kg_k Entropy.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   s_j_kg_k is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331; reference state of IAPWS G8-10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_entropy(double p_pa, double t_k, double *s_j_kg_k);

/** Temperature of dry air as an ideal gas from its enthalpy.
 *
 * Model: freeair_dry_air_ideal_enthalpy() solved by Newton's method, at most 30 steps, to rounding.
 *
 * @param[in]  h_j_kg Enthalpy. @range{[-214000;1980000]}
 * @param[out] t_k    Temperature.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           t_k is null
 * @retval FREEAIR_ERR_DOMAIN         h_j_kg is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    no temperature between 60 K and 2000 K has this enthalpy
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, solved for temperature}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_temperature_from_enthalpy(double h_j_kg, double *t_k);

/** Temperature of dry air as an ideal gas from its entropy.
 *
 * Model: freeair_dry_air_ideal_entropy() solved by Newton's method in ln T, at most 30 steps, to rounding.
 *
 * @param[in]  p_pa     Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  s_j_kg_k Entropy. @range{[-1e4;1e4]}
 * @param[out] t_k      Temperature.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        t_k is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION no temperature between 60 K and 2000 K has this entropy
 * @source{Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, solved for temperature}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_temperature_from_entropy(double p_pa, double s_j_kg_k, double *t_k);

/** Temperature after an isentropic change of pressure, by the air tables: their relative pressure.
 *
 * Model: s0(T2) = s0(T1) + R ln(p2/p1), cp varying with temperature; solved as in
 * freeair_dry_air_ideal_temperature_from_entropy(). From 300 K a constant k of 1.4 ends 5 K
 * too hot at a ratio of 10, 21 K at 30.
 *
 * @param[in]  t1_k           Temperature before. @range{[60;2000]}
 * @param[in]  pressure_ratio p2/p1, above 1 in compression. @range{[1e-6;1e6]}
 * @param[out] t2_k           Temperature after.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        t2_k is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the temperature after would lie outside 60 K to 2000 K
 * @source{Cengel, Boles, Thermodynamics: An Engineering Approach, isentropic processes of ideal gases, relative pressure}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_ideal_isentropic_temperature(double t1_k, double pressure_ratio, double *t2_k);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
