/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_OUTLOOK_H
#define FREEAIR_OUTLOOK_H

#include <freeair/cycle.h>
#include <freeair/export.h>
#include <freeair/prediction.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup outlook Outlook
 * Everything that the gauges of a machine will show during one pump-up, from one
 * set of operating points: for whoever asks for times, interstage pressures,
 * temperatures, speeds and power together, again and again.
 * @{
 */

/** Times and operating points at which the receiver gauge passes given readings.
 *
 * Model: the times are those of freeair_prediction_times; the operating points
 * those of freeair_cycle_point, every quantity interpolated between the nodes of
 * the run by a cubic over the square root of pressure. With seven nodes the
 * interpolation adds less than 0.5 % to flows, pressures and power of a sound
 * machine. Above the pressure that the machine reaches, the point is that at the
 * highest pressure it reaches.
 *
 * @param[in]  machine The machine.
 * @param[in]  site    The site.
 * @param[in]  run     The run; it goes on to the highest of the readings, to_pa is ignored.
 * @param[out] result  What became of it.
 * @param[in]  p_pa    Gauge readings, absolute, in any order. @shape{n} @range{(0;1e8)}
 * @param[out] t_s     Time of each; infinite when not reached, 0 when at or below the start. @shape{n}
 * @param[out] points  Operating point at each. @shape{n}
 * @param[in]  points_stride Bytes from one point to the next. @stride{points}
 * @param[in]  n       Number of readings, at least 1.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_LIMIT         computed, but some reading is not reached
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size, or points_stride is smaller than one
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, or no reading is above the start
 * @retval FREEAIR_ERR_NO_CONVERGENCE an operating point was not found
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state, or to walls above 3000 K
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_outlook_readings(const freeair_machine *machine, const freeair_machine_site *site,
                                             const freeair_prediction_run *run, freeair_prediction_result *result,
                                             const double *p_pa, double *t_s, freeair_cycle_result *points,
                                             size_t points_stride, size_t n);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
