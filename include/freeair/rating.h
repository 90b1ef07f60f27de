/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_RATING_H
#define FREEAIR_RATING_H

#include <freeair/export.h>
#include <freeair/machine.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup rating Rating
 * A description that meets its nameplate. A technician knows stages, bores or
 * speed, and the rated delivery at a pressure; what he does not know is adjusted
 * until the crank-angle model delivers what the nameplate promises.
 * @{
 */

/** What was adjusted to meet the rating, as bits.
 * @since 0.1
 */
enum freeair_rating_adjusted {
  FREEAIR_RATING_NOTHING = 0,     /**< Nothing: the rating is met, or there is none. */
  FREEAIR_RATING_SPEED = 1,       /**< Speed: neither speed_rev_s nor pulley_ratio was given. */
  FREEAIR_RATING_BORE = 2,        /**< Bores: lp_bore_m was not given. */
  FREEAIR_RATING_CLEARANCE = 4,   /**< Clearances that were not given. */
  FREEAIR_RATING_VALVES = 8,      /**< Valve areas that were not given. */
  FREEAIR_RATING_HEATING = 16     /**< Suction heating, which was not given. */
};

/** Completes a description so that it meets its rated delivery.
 *
 * Model: one unknown is adjusted until freeair_cycle_point at rated_pa delivers
 * rated_delivery_m3_s within 0.1 % of displacement: the speed if it is not
 * given, else the bores if lp_bore_m is not given (hp_bore_m follows by its
 * default), else, as far as they are not given and as far as they must go, first
 * the clearances (0.4 to 2.5 times their defaults), then the valve areas (0.35
 * to 2 times), then the suction heating (0 to 4 times). Everything else takes
 * its default. Without a rating the defaults alone are filled in.
 *
 * @param[in]  machine  Description, possibly with NaN fields. lp_bore_m, or both speed_rev_s and pulley_ratio, may
 *                      be missing, when there is a rating.
 * @param[in]  site     The site at which the rating holds.
 * @param[out] complete The complete description.
 * @param[out] adjusted What was adjusted, bits of freeair_rating_adjusted added up.
 * @param[out] delivery_m3_s What the complete description delivers at rated_pa.
 * @retval FREEAIR_OK                 completed
 * @retval FREEAIR_WARN_INCONSISTENT  completed, but the rating is not met: no adjustment goes that far
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, or too much is missing
 * @retval FREEAIR_ERR_NO_CONVERGENCE an operating point was not found
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state, or to walls above 3000 K
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_rating_complete(const freeair_machine *machine, const freeair_machine_site *site,
                                            freeair_machine *complete, int32_t *adjusted, double *delivery_m3_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
