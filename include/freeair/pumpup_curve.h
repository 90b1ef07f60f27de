/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PUMPUP_CURVE_H
#define FREEAIR_PUMPUP_CURVE_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup pumpup_curve Pump-up curve
 * The shape of a pump-up curve: how much slower the pressure rises late than
 * early, and where it would level off if it went on so. A machine that loses
 * part of what it compresses (a valve that passes, a leak, a demand) bends its
 * curve more than a sound one and levels off below its cut-out. Slip and wrong
 * speed stretch the time and leave the shape alone.
 *
 * A sound curve bends a little as well: delivery falls with pressure, and the gas
 * heats most at first. Compare with the curve expected of a sound machine from
 * the same state of the receiver before the run, not with a straight line.
 * @{
 */

/** Shape of a pump-up curve. Uncertainties are standard uncertainties of the fit; that a real curve is not quite
 * exponential comes on top where it is extrapolated far.
 * @since 0.1
 */
typedef struct freeair_pumpup_curve_shape {
  uint32_t struct_size;               /**< Size of this structure as the caller knows it. */
  uint32_t flags;                     /**< Reserved, 0. */
  double slope_pa_s;                  /**< Median slope of the whole curve. */
  double early_slope_pa_s;            /**< Slope of the first third of the readings. */
  double early_slope_uncertainty_pa_s; /**< Its standard uncertainty. */
  double late_slope_pa_s;              /**< Slope of the last third. */
  double late_slope_uncertainty_pa_s;  /**< Its standard uncertainty. */
  double slope_ratio;                  /**< Early slope over late slope; NaN when the late slope is not positive. */
  double slope_ratio_uncertainty;      /**< Its standard uncertainty. */
  double curvature;                    /**< Early less late slope over that of the whole: 0 straight, positive when it
                                            flattens. */
  double curvature_uncertainty;        /**< Its standard uncertainty. */
  double approach_1_s;                 /**< Rate b at which it approaches its level; negative when it steepens. */
  double approach_uncertainty_1_s;     /**< Its standard uncertainty. */
  double level_off_pa;                 /**< Pressure at which it would level off; NaN when none is in sight. */
  double level_off_uncertainty_pa;     /**< Its standard uncertainty. */
  double level_off_least_pa;           /**< At 95 % confidence it levels off no lower; NaN when it may never bend. */
  double scatter_pa;                   /**< Standard deviation of one reading about the fit, as used. */
  int32_t level_in_sight;              /**< 1 when the curve bends by more than twice the uncertainty of that. */
  int32_t reserved;                    /**< 0. */
} freeair_pumpup_curve_shape;

/** Initial value of a shape. */
#define FREEAIR_PUMPUP_CURVE_SHAPE_INIT \
  { (uint32_t)sizeof(freeair_pumpup_curve_shape), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_PUMPUP_CURVE_SHAPE_BASELINE 136

/** Initialises a shape.
 *
 * Model: assignment.
 *
 * @param[out] shape       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    shape is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pumpup_curve_shape_init(freeair_pumpup_curve_shape *shape, size_t caller_size);

/** Shape of a pump-up curve from its readings.
 *
 * Model: p = p0 + s0 (1 - exp(-b t)) / b, which solves dp/dt = s0 - b (p - p0);
 * fitted by least squares (Gauss-Newton, at most 100 iterations, Huber's weights
 * from eight readings on). Level-off p0 + s0 / b for b > 2 u(b). Early and late
 * slopes are those of Theil and Sen over the first and last third.
 *
 * @param[in]  t_s    Times, increasing. @shape{n} @range{[-1e12;1e12]}
 * @param[in]  p_pa   Pressures, absolute. @shape{n} @range{[1e3;1e8]}
 * @param[in]  n      Readings, at least 4.
 * @param[in]  reading_uncertainty_pa Standard uncertainty of one reading. @range{[0;1e7]}
 *                    @default{scatter about the fit with eight readings or more, else 0.5 % of the rise}
 * @param[out] shape  The shape.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        the structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         an input is outside its range
 * @retval FREEAIR_ERR_DATA           fewer than four readings, times that do not increase, or no rise in all
 * @retval FREEAIR_ERR_NO_CONVERGENCE the fit did not settle
 * @source{common practice; algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pumpup_curve_shape_from_readings(const double *t_s, const double *p_pa, size_t n,
                                                             double reading_uncertainty_pa,
                                                             freeair_pumpup_curve_shape *shape);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
