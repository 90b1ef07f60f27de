/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DRY_AIR_TRANSPORT_H
#define FREEAIR_DRY_AIR_TRANSPORT_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup dry_air_transport Viscosity and conductivity of dry air
 * What pipe friction and coolers need. The equations of Lemmon and Jacobsen,
 * backed by data up to 100 MPa from 70 K on; about 1 % in viscosity and 2 % in
 * conductivity in a gas near room temperature, more in dense fluid.
 *
 * The dilute-gas part depends on temperature alone: up to 40 bar and near room
 * temperature pressure adds less than 5 % to viscosity, 8 % to conductivity.
 * @{
 */

/** Dynamic viscosity of dry air.
 *
 * Model: eta = eta0(T) + sum N tau^t delta^d exp(-gamma delta^l) of Lemmon and
 * Jacobsen (2004), eta0 by the collision integral, at the density of
 * freeair_dry_air_density().
 *
 * @param[in]  p_pa          Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  t_k           Temperature. @range{[60;2000]}
 * @param[out] viscosity_pas Dynamic viscosity.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, but above 100 MPa or below 70 K no data back it
 * @retval FREEAIR_ERR_NULL           viscosity_pas is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    the state lies between the dew and the bubble line, below 132.6312 K
 * @source{Lemmon, Jacobsen, Viscosity and Thermal Conductivity Equations for Nitrogen, Oxygen, Argon, and Air, Int. J.
 *   Thermophys. 25 (2004) 21, equations 1 to 3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_transport_viscosity(double p_pa, double t_k, double *viscosity_pas);

/** Thermal conductivity of dry air.
 *
 * Model: lambda = lambda0(T) + residual(tau, delta) + critical enhancement after
 * Olchowy and Sengers, of Lemmon and Jacobsen (2004), at the density of
 * freeair_dry_air_density(). Above 265.262 K and up to 150 MPa the enhancement is
 * zero; at 220 K and 40 bar it is 0.3 %.
 *
 * @param[in]  p_pa               Pressure, absolute. @range{[1e-3;2e9]}
 * @param[in]  t_k                Temperature. @range{[60;2000]}
 * @param[out] conductivity_w_m_k Thermal conductivity.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, but above 100 MPa or below 70 K no data back it
 * @retval FREEAIR_ERR_NULL           conductivity_w_m_k is null
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION    the state lies between the dew and the bubble line, below 132.6312 K
 * @source{Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 4 to 11}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_transport_conductivity(double p_pa, double t_k, double *conductivity_w_m_k);

/** Dynamic viscosity of dry air at a density; at zero density that of the dilute gas.
 *
 * Model: as freeair_dry_air_transport_viscosity(), without a search for the density.
 *
 * @param[in]  rho_kg_m3     Density. @range{[0;1530]}
 * @param[in]  t_k           Temperature. @range{[60;2000]}
 * @param[out] viscosity_pas Dynamic viscosity.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 100 MPa or below 70 K no data back it
 * @retval FREEAIR_ERR_NULL          viscosity_pas is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   the state lies between the dew and the bubble line, below 132.6312 K
 * @source{Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 1 to 3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_transport_viscosity_from_density(double rho_kg_m3, double t_k,
                                                                     double *viscosity_pas);

/** Thermal conductivity of dry air at a density; at zero density that of the dilute gas.
 *
 * Model: as freeair_dry_air_transport_conductivity(), without a search for the density.
 *
 * @param[in]  rho_kg_m3          Density. @range{[0;1530]}
 * @param[in]  t_k                Temperature. @range{[60;2000]}
 * @param[out] conductivity_w_m_k Thermal conductivity.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 100 MPa or below 70 K no data back it
 * @retval FREEAIR_ERR_NULL          conductivity_w_m_k is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   the state lies between the dew and the bubble line, below 132.6312 K
 * @source{Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 4 to 11}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_dry_air_transport_conductivity_from_density(double rho_kg_m3, double t_k,
                                                                        double *conductivity_w_m_k);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
