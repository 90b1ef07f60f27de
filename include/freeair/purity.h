/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PURITY_H
#define FREEAIR_PURITY_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup purity Purity
 * Classes of compressed air by particles, water and oil after ISO 8573-1:2010, both ways:
 * the class of what was measured, and the limits of a class. Concentrations refer to
 * 1 bar, 20 degC and dry air, dew points to the pressure in the line. Class 0 is stricter
 * than class 1, as user and supplier agree; no measurement makes it. A class is judged
 * by measurements as the parts of ISO 8573 prescribe; a single reading near a limit
 * decides nothing: freeair_verdict_decide.
 * @{
 */

/** Class code of what is worse than every numbered class.
 * @since 0.1
 */
enum freeair_purity_class {
  FREEAIR_PURITY_CLASS_X = 10 /**< Class X. */
};

/** Particle class.
 *
 * Model: the best of the classes 1 to 5 whose limits hold for the numbers counted; a class that limits a size which
 * was not counted is not given. Beyond them, or with nothing counted, 6 or 7 by mass; X beyond that.
 *
 * @param[in]  small_1_m3  Particles from 0.1 to 0.5 um in a cubic metre. @range{[0;1e15]} @default{not counted}
 * @param[in]  medium_1_m3 Particles from 0.5 to 1 um. @range{[0;1e15]} @default{not counted}
 * @param[in]  large_1_m3  Particles from 1 to 5 um. @range{[0;1e15]} @default{not counted}
 * @param[in]  mass_kg_m3  Mass of particles in a cubic metre. @range{[0;1]} @default{not weighed}
 * @param[out] class_code  Class, FREEAIR_PURITY_CLASS_X for X.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   class_code is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @retval FREEAIR_ERR_DATA   nothing given decides
 * @source{ISO 8573-1:2010, Compressed air - Contaminants and purity classes, Table 1}
 * @caution{FREEAIR_CAUTION_BREATHING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_purity_particle_class(double small_1_m3, double medium_1_m3, double large_1_m3,
                                                  double mass_kg_m3, int32_t *class_code);

/** Limits of a particle class.
 *
 * Model: table.
 *
 * @param[in]  class_code  Class. @range{[1;7]}
 * @param[out] small_1_m3  Particles from 0.1 to 0.5 um in a cubic metre; infinite where not limited.
 * @param[out] medium_1_m3 Particles from 0.5 to 1 um.
 * @param[out] large_1_m3  Particles from 1 to 5 um.
 * @param[out] mass_kg_m3  Mass of particles in a cubic metre.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN class_code is outside its range
 * @source{ISO 8573-1:2010, Table 1}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_purity_particle_limits(int32_t class_code, double *small_1_m3, double *medium_1_m3,
                                                   double *large_1_m3, double *mass_kg_m3);

/** Water class.
 *
 * Model: 1 to 6 by the pressure dew point; where liquid water is present, or the dew point is above that of class 6,
 * 7 to 9 by the liquid, X beyond.
 *
 * @param[in]  dew_point_k   Pressure dew point. @range{[150;400]} @default{not measured}
 * @param[in]  liquid_kg_m3  Liquid water in a cubic metre. @range{[0;1]} @default{none seen}
 * @param[out] class_code    Class, FREEAIR_PURITY_CLASS_X for X.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   class_code is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @retval FREEAIR_ERR_DATA   nothing given decides
 * @source{ISO 8573-1:2010, Table 2 and Table 3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_purity_water_class(double dew_point_k, double liquid_kg_m3, int32_t *class_code);

/** Limits of a water class.
 *
 * Model: table.
 *
 * @param[in]  class_code   Class. @range{[1;9]}
 * @param[out] dew_point_k  Highest pressure dew point; infinite where not limited.
 * @param[out] liquid_kg_m3 Most liquid water in a cubic metre; 0 for classes 1 to 6.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN class_code is outside its range
 * @source{ISO 8573-1:2010, Table 2 and Table 3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_purity_water_limits(int32_t class_code, double *dew_point_k, double *liquid_kg_m3);

/** Oil class.
 *
 * Model: 1 to 4 by total oil, liquid, aerosol and vapour; X beyond.
 *
 * @param[in]  oil_kg_m3  Total oil in a cubic metre. @range{[0;1]}
 * @param[out] class_code Class, FREEAIR_PURITY_CLASS_X for X.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   class_code is null
 * @retval FREEAIR_ERR_DOMAIN oil_kg_m3 is outside its range
 * @source{ISO 8573-1:2010, Table 4}
 * @caution{FREEAIR_CAUTION_BREATHING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_purity_oil_class(double oil_kg_m3, int32_t *class_code);

/** Limit of an oil class.
 *
 * Model: table.
 *
 * @param[in]  class_code Class. @range{[1;4]}
 * @param[out] oil_kg_m3  Most total oil in a cubic metre.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   oil_kg_m3 is null
 * @retval FREEAIR_ERR_DOMAIN class_code is outside its range
 * @source{ISO 8573-1:2010, Table 4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_purity_oil_limit(int32_t class_code, double *oil_kg_m3);

/** Concentration at the reference state of the classes from one in the line.
 *
 * Model: c_ref = c (1 bar / p) (T / 293.15 K), dry ideal gas. The same for numbers of particles.
 *
 * @param[in]  line      Concentration, mass or number in a cubic metre of line air. @unit{any} @range{[0;1e15]}
 * @param[in]  p_pa      Line pressure, absolute. @range{[1000;1e8]}
 * @param[in]  t_k       Line temperature. @range{[50;2000]}
 * @param[out] reference Concentration at 1 bar and 20 degC. @unit{any}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   reference is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ISO 8573-1:2010, clause 4, reference conditions; algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_purity_concentration_at_reference(double line, double p_pa, double t_k,
                                                              double *reference);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
