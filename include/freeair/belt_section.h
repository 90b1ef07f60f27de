/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_BELT_SECTION_H
#define FREEAIR_BELT_SECTION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup belt_section Belt section
 * The table of V-belt sections: what stands on the belt, its width and thickness, the mass of a metre that tension by
 * frequency and centrifugal force ask for, and the smallest pulley that it endures. A belt maker's own figures come
 * first; masses of cogged belts are smaller by a tenth or so (common practice, no source).
 * @{
 */

/** V-belt sections.
 * @since 0.1
 */
enum freeair_belt_section_letter {
  FREEAIR_BELT_SECTION_A = 1, /**< Classical A, 13 mm wide. */
  FREEAIR_BELT_SECTION_B = 2, /**< Classical B, 17 mm wide. */
  FREEAIR_BELT_SECTION_C = 3, /**< Classical C, 22 mm wide. */
  FREEAIR_BELT_SECTION_D = 4  /**< Classical D, 32 mm wide. */
};

/** Data of a belt section.
 *
 * Model: table look-up; the mass is the weight that the table prints over 9.81 m/s2.
 *
 * @param[in]  section    Section. @choice{freeair_belt_section_letter}
 * @param[out] width_m    Width at the top.
 * @param[out] height_m   Thickness.
 * @param[out] mass_kg_m  Mass of one metre of one belt.
 * @param[out] pulley_m   Smallest pitch diameter of a pulley.
 * @param[out] least_w    Least power that the section is used for.
 * @param[out] most_w     Greatest power that the section is used for.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND no such section
 * @source{Khurmi and Gupta, A Textbook of Machine Design, Table 20.1, V-belts by IS 2494:1974 (seen quoted in public
 *   lecture notes)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_section_data(int32_t section, double *width_m, double *height_m, double *mass_kg_m,
                                              double *pulley_m, double *least_w, double *most_w);

/** Section by the width of a belt.
 *
 * Model: the section whose top width is within a tenth of the measured one. A worn belt is narrower: measure where it
 * does not run.
 *
 * @param[in]  width_m Width measured at the top. @range{[0.001;0.1]}
 * @param[out] section Section. @choice{freeair_belt_section_letter}
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      section is null
 * @retval FREEAIR_ERR_DOMAIN    width_m is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND no section is so wide
 * @source{Khurmi and Gupta, A Textbook of Machine Design, Table 20.1, V-belts by IS 2494:1974 (seen quoted in public
 *   lecture notes)}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_belt_section_from_width(double width_m, int32_t *section);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
