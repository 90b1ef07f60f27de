/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_ATMOSPHERE_H
#define FREEAIR_ATMOSPHERE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup atmosphere Atmosphere
 * The standard atmosphere up to the tropopause: what the barometer reads, on
 * average, at the altitude of a site. Weather moves the true pressure by about
 * 2 %; read a barometer where that matters.
 *
 * Altitude is geopotential unless a name says geometric; below 3000 m the two
 * differ by less than 1.5 m.
 * @{
 */

/** Pressure of the standard atmosphere at a geopotential altitude.
 *
 * Model: p = p0 (1 - L H / T0)^(g0 / (L R)), with p0 = 101325 Pa, T0 = 288.15 K,
 * L = 0.0065 K/m, g0 = 9.80665 m/s2, R = 287.05287 J/(kg K). Troposphere only.
 *
 * @param[in]  altitude_m Geopotential altitude above mean sea level. @range{[-5000;11000]}
 * @param[out] p_pa       Pressure, absolute.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN altitude_m is outside its range
 * @source{ISO 2533:1975, Standard Atmosphere, 2.2; US Standard Atmosphere 1976, equation 33a}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_atmosphere_pressure_from_altitude(double altitude_m, double *p_pa);

/** Geopotential altitude at which the standard atmosphere has a pressure.
 *
 * Model: inverse of freeair_atmosphere_pressure_from_altitude, in closed form.
 *
 * @param[in]  p_pa       Pressure, absolute. @range{[22632;177688]}
 * @param[out] altitude_m Geopotential altitude above mean sea level.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   altitude_m is null
 * @retval FREEAIR_ERR_DOMAIN p_pa is outside its range
 * @source{ISO 2533:1975, Standard Atmosphere, 2.2, solved for altitude}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_atmosphere_altitude_from_pressure(double p_pa, double *altitude_m);

/** Temperature of the standard atmosphere at a geopotential altitude.
 *
 * Model: T = T0 - L H, T0 = 288.15 K, L = 0.0065 K/m. Troposphere only.
 *
 * @param[in]  altitude_m Geopotential altitude above mean sea level. @range{[-5000;11000]}
 * @param[out] t_k        Temperature.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   t_k is null
 * @retval FREEAIR_ERR_DOMAIN altitude_m is outside its range
 * @source{ISO 2533:1975, Standard Atmosphere, 2.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_atmosphere_temperature_from_altitude(double altitude_m, double *t_k);

/** Density of the standard atmosphere at a geopotential altitude.
 *
 * Model: rho = p / (R T) with pressure and temperature of the standard atmosphere.
 *
 * @param[in]  altitude_m  Geopotential altitude above mean sea level. @range{[-5000;11000]}
 * @param[out] rho_kg_m3   Density.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   rho_kg_m3 is null
 * @retval FREEAIR_ERR_DOMAIN altitude_m is outside its range
 * @source{ISO 2533:1975, Standard Atmosphere, 2.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_atmosphere_density_from_altitude(double altitude_m, double *rho_kg_m3);

/** Geopotential altitude of a geometric altitude.
 *
 * Model: H = r Z / (r + Z), r = 6356766 m, the nominal radius of the earth.
 *
 * @param[in]  geometric_m Geometric altitude above mean sea level. @range{[-5000;20000]}
 * @param[out] altitude_m  Geopotential altitude.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   altitude_m is null
 * @retval FREEAIR_ERR_DOMAIN geometric_m is outside its range
 * @source{ISO 2533:1975, Standard Atmosphere, 2.3; US Standard Atmosphere 1976, equation 18}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_atmosphere_altitude_from_geometric(double geometric_m, double *altitude_m);

/** Pressure of the standard atmosphere at a geometric altitude.
 *
 * Model: freeair_atmosphere_pressure_from_altitude at the geopotential altitude
 * r Z / (r + Z), r = 6356766 m.
 *
 * @param[in]  geometric_m Geometric altitude above mean sea level. @range{[-4996;11019]}
 * @param[out] p_pa        Pressure, absolute.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN geometric_m is outside its range
 * @source{US Standard Atmosphere 1976, equations 18 and 33a}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_atmosphere_pressure_from_geometric(double geometric_m, double *p_pa);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
