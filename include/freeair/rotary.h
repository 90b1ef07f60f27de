/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_ROTARY_H
#define FREEAIR_ROTARY_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup rotary Rotary
 * The positive displacement machine without valves: it closes a chamber, makes
 * it smaller by a built-in ratio and opens it to whatever pressure stands at
 * the outlet. With the ratio 1 it is the lobe blower, which compresses by back
 * flow alone; vane and screw machines compress inside. Where the pressure
 * inside does not meet that of the outlet, work is lost. Ideal gas, no leaks.
 * @{
 */

/** Work per kilogram of a machine with a built-in volume ratio.
 *
 * Model: isentropic compression to the built-in ratio u, then against the outlet pressure at constant volume:
 * w = k/(k-1) R T1 (u^(1-k) - 1) + R T1 (p2/p1 - u^(-k)) u. With u = 1 it is R T1 (p2/p1 - 1).
 *
 * @param[in]  r_j_kg_k     Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k         Inlet temperature. @range{[1;5000]}
 * @param[in]  p1_pa        Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa        Outlet pressure, absolute, not below p1_pa. @range{[1;1e8]}
 * @param[in]  k            Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[in]  volume_ratio Chamber where it opens over chamber where it closes, u. @range{[0.05;1]}
 * @param[out] w_j_kg       Work.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   w_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is below p1_pa
 * @source{Joel, Basic Engineering Thermodynamics, chapter 14, blower and vane compressor}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_rotary_work(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double k,
                                        double volume_ratio, double *w_j_kg);

/** Built-in volume ratio that meets an outlet pressure.
 *
 * Model: u = (p1/p2)^(1/k): no work is lost at the outlet.
 *
 * @param[in]  p1_pa        Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa        Outlet pressure, absolute, not below p1_pa. @range{[1;1e8]}
 * @param[in]  k            Ratio of specific heats; 1.4 for air. @range{[1.01;5]}
 * @param[out] volume_ratio Chamber where it opens over chamber where it closes.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   volume_ratio is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is below p1_pa
 * @source{algebra: p v^k = constant}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_rotary_volume_ratio(double p1_pa, double p2_pa, double k, double *volume_ratio);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
