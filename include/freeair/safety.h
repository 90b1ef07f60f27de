/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_SAFETY_H
#define FREEAIR_SAFETY_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup safety Safety thresholds
 * Figures at which a hot surface burns, compressed air may be used for cleaning,
 * and stored energy counts as a high hazard. Local law and the rules of the site
 * come first, and none of these makes a thing safe.
 * @{
 */

/** Hazard of stored energy.
 * @since 0.1
 */
enum freeair_safety_hazard {
  FREEAIR_SAFETY_UNKNOWN = 0, /**< Not judged. */
  FREEAIR_SAFETY_LOWER = 1,   /**< Not above the threshold; still able to injure. */
  FREEAIR_SAFETY_HIGH = 2     /**< Above the threshold: highly hazardous. */
};

/** Surface temperature at which bare smooth metal burns skin.
 *
 * Model: lower bound of the burn threshold: 65 degC at 1 s, 55 at 10 s, 51 at 1 min, 48
 * at 10 min, 43 from 8 h, straight lines over the logarithm of the time between.
 *
 * @param[in]  contact_s Time of contact. @range{[1;1e6]}
 * @param[out] t_k       Temperature of the surface.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   t_k is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ISO 13732-1:2006, burn thresholds, bare (uncoated) smooth metal (from memory; 1 s and 10 s are read from its curve)}
 * @caution{FREEAIR_CAUTION_HOT}
 * @caution{FREEAIR_CAUTION_PROTECTION}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_safety_burn_threshold(double contact_s, double *t_k);

/** Pressure below which compressed air for cleaning must stay, dead-ended.
 *
 * Model: less than 30 psi gauge with the nozzle blocked, with chip guarding and personal
 * protection.
 *
 * @param[in]  p_atm_pa Barometric pressure. @range{[1000;120000]}
 * @param[out] p_pa     Limit, absolute.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{US 29 CFR 1910.242(b)}
 * @caution{FREEAIR_CAUTION_BLOWING}
 * @caution{FREEAIR_CAUTION_PROTECTION}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_safety_cleaning_pressure(double p_atm_pa, double *p_pa);

/** Hazard class of an energy stored in compressed gas.
 *
 * Model: above 100 kJ a system counts as highly hazardous in one university's rule; no
 * law says so.
 *
 * @param[in]  energy_j Stored energy, isentropic. @range{[0;1e15]}
 * @param[out] hazard   Class. @choice{freeair_safety_hazard}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   hazard is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{University of California, Berkeley, Environment, Health and Safety, Calculating the Stored Energy of a Pressurized Gas Vessel}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_safety_stored_energy_hazard(double energy_j, int32_t *hazard);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
