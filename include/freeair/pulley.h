/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PULLEY_H
#define FREEAIR_PULLEY_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup pulley Pulley
 * Geometry of a belt drive: what two pulleys make of a speed, how long a belt they need, how far apart they stand,
 * how much of each the belt wraps.
 *
 * Diameters are pitch diameters: of a V-belt where its cord runs, a little inside the outside diameter; of a flat belt
 * the pulley and one belt thickness. Either pulley may be the larger.
 * @{
 */

/** Speed of the driven pulley.
 *
 * Model: n2 = n1 d1 / d2 (1 - s), s the slip of the belt. For a train of drives, apply once for each.
 *
 * @param[in]  driver_rev_s Speed of the driving pulley. @range{[0;1000]}
 * @param[in]  driver_m     Pitch diameter of the driving pulley. @range{[0.001;100]}
 * @param[in]  driven_m     Pitch diameter of the driven pulley. @range{[0.001;100]}
 * @param[in]  slip         Slip of the belt as a fraction; 0 for none. @range{[0;1]}
 * @param[out] driven_rev_s Speed of the driven pulley.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   driven_rev_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Khurmi and Gupta, Theory of Machines, example 11.1}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_driven_speed(double driver_rev_s, double driver_m, double driven_m, double slip,
                                                double *driven_rev_s);

/** Diameter of the driving pulley for a wanted speed of the driven one.
 *
 * Model: d1 = d2 n2 / (n1 (1 - s)). Never run a compressor above its greatest speed, nor its motor above its current.
 *
 * @param[in]  driver_rev_s Speed of the driving pulley. @range{[0.001;1000]}
 * @param[in]  driven_rev_s Speed wanted of the driven pulley. @range{[0;1000]}
 * @param[in]  driven_m     Pitch diameter of the driven pulley. @range{[0.001;100]}
 * @param[in]  slip         Slip of the belt as a fraction; 0 for none. @range{[0;0.9]}
 * @param[out] driver_m     Pitch diameter of the driving pulley.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   driver_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Khurmi and Gupta, Theory of Machines, example 11.1, solved for the driver}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_driver_diameter(double driver_rev_s, double driven_rev_s, double driven_m,
                                                   double slip, double *driver_m);

/** Speed of the belt.
 *
 * Model: v = pi d n.
 *
 * @param[in]  diameter_m  Pitch diameter of a pulley. @range{[0.001;100]}
 * @param[in]  speed_rev_s Speed of that pulley. @range{[0;1000]}
 * @param[out] belt_m_s    Speed of the belt.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   belt_m_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_belt_speed(double diameter_m, double speed_rev_s, double *belt_m_s);

/** Speed at which a belt of a permitted tension carries most.
 *
 * Model: v = sqrt(T / (3 m)), where centrifugal tension takes a third.
 *
 * @param[in]  tight_n   Greatest tension permitted. @range{[0;10000000]}
 * @param[in]  mass_kg_m Mass of the belt for each metre. @range{[0.0001;100]}
 * @param[out] belt_m_s  Speed of the belt.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   belt_m_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Khurmi and Gupta, Theory of Machines, chapter 11 and example 11.10}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_best_belt_speed(double tight_n, double mass_kg_m, double *belt_m_s);

/** Length of an open belt.
 *
 * Model: L = 2 sqrt(C^2 - e^2) + pi (d1 + d2) / 2 + 2 e asin(e / C), e = |d1 - d2| / 2. Exact; the usual
 * 2 C + pi (d1 + d2) / 2 + (d1 - d2)^2 / (4 C) is its first term in e / C and a little less.
 *
 * @param[in]  first_m  Pitch diameter of one pulley. @range{[0.001;100]}
 * @param[in]  second_m Pitch diameter of the other. @range{[0.001;100]}
 * @param[in]  centre_m Distance between the shafts. @range{[0.001;1000]}
 * @param[out] length_m Pitch length of the belt.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        length_m is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pulleys would touch
 * @source{Shigley, Mechanical Engineering Design, flat-belt geometry of an open belt; geometry}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_open_length(double first_m, double second_m, double centre_m, double *length_m);

/** Length of a crossed belt.
 *
 * Model: L = 2 sqrt(C^2 - e^2) + (d1 + d2) (pi / 2 + asin(e / C)), e = (d1 + d2) / 2. Exact.
 *
 * @param[in]  first_m  Pitch diameter of one pulley. @range{[0.001;100]}
 * @param[in]  second_m Pitch diameter of the other. @range{[0.001;100]}
 * @param[in]  centre_m Distance between the shafts. @range{[0.001;1000]}
 * @param[out] length_m Length of the belt.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        length_m is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pulleys would touch
 * @source{Shigley, Mechanical Engineering Design, flat-belt geometry of a crossed belt; geometry}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_crossed_length(double first_m, double second_m, double centre_m, double *length_m);

/** Distance between the shafts for an open belt of a length.
 *
 * Model: the exact inverse of freeair_pulley_open_length by Newton's method from above, which always arrives.
 * The trade's (B + sqrt(B^2 - 32 (D - d)^2)) / 16 with B = 4 L - 6.28 (D + d) is its approximation.
 *
 * @param[in]  first_m  Pitch diameter of one pulley. @range{[0.001;100]}
 * @param[in]  second_m Pitch diameter of the other. @range{[0.001;100]}
 * @param[in]  length_m Pitch length of the belt. @range{[0.001;2000]}
 * @param[out] centre_m Distance between the shafts.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        centre_m is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the belt is too short: the pulleys would touch
 * @source{geometry; approximation in Wentzell, Machine Design, example 14.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_centre_from_open_length(double first_m, double second_m, double length_m,
                                                           double *centre_m);

/** Distance between the shafts for a crossed belt of a length.
 *
 * Model: the exact inverse of freeair_pulley_crossed_length by Newton's method from above, which always
 * arrives; where the pulleys nearly touch the length says little about the distance.
 *
 * @param[in]  first_m  Pitch diameter of one pulley. @range{[0.001;100]}
 * @param[in]  second_m Pitch diameter of the other. @range{[0.001;100]}
 * @param[in]  length_m Length of the belt. @range{[0.001;2000]}
 * @param[out] centre_m Distance between the shafts.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        centre_m is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the belt is too short: the pulleys would touch
 * @source{geometry}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_centre_from_crossed_length(double first_m, double second_m, double length_m,
                                                              double *centre_m);

/** Wrap of an open belt on the smaller and the larger pulley.
 *
 * Model: pi - 2 asin(e / C) and pi + 2 asin(e / C), e = |d1 - d2| / 2. The smaller one slips first.
 *
 * @param[in]  first_m     Pitch diameter of one pulley. @range{[0.001;100]}
 * @param[in]  second_m    Pitch diameter of the other. @range{[0.001;100]}
 * @param[in]  centre_m    Distance between the shafts. @range{[0.001;1000]}
 * @param[out] smaller_rad Wrap on the smaller pulley.
 * @param[out] larger_rad  Wrap on the larger pulley.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pulleys would touch
 * @source{Wentzell, Machine Design, example 14.2; geometry}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_open_wrap(double first_m, double second_m, double centre_m, double *smaller_rad,
                                             double *larger_rad);

/** Wrap of a crossed belt, the same on both pulleys.
 *
 * Model: pi + 2 asin(e / C), e = (d1 + d2) / 2.
 *
 * @param[in]  first_m  Pitch diameter of one pulley. @range{[0.001;100]}
 * @param[in]  second_m Pitch diameter of the other. @range{[0.001;100]}
 * @param[in]  centre_m Distance between the shafts. @range{[0.001;1000]}
 * @param[out] wrap_rad Wrap on each pulley.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        wrap_rad is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pulleys would touch
 * @source{Khurmi and Gupta, Theory of Machines, example 11.6; geometry}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_crossed_wrap(double first_m, double second_m, double centre_m, double *wrap_rad);

/** Length of the free span of an open belt, from pulley to pulley.
 *
 * Model: sqrt(C^2 - e^2), e = |d1 - d2| / 2.
 *
 * @param[in]  first_m  Pitch diameter of one pulley. @range{[0.001;100]}
 * @param[in]  second_m Pitch diameter of the other. @range{[0.001;100]}
 * @param[in]  centre_m Distance between the shafts. @range{[0.001;1000]}
 * @param[out] span_m   Length of the span.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        span_m is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pulleys would touch
 * @source{geometry}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pulley_span(double first_m, double second_m, double centre_m, double *span_m);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
