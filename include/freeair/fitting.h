/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_FITTING_H
#define FREEAIR_FITTING_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup fitting Fitting
 * What elbows, tees and valves cost: loss coefficients K, of dynamic pressures
 * rho v^2 / 2 in the pipe, and equivalent lengths of straight pipe. Handbook values
 * spread by a third and more, and a particular valve differs from its table: use the
 * maker's coefficient where there is one.
 * @{
 */

/** Fittings.
 * @since 0.1
 */
enum freeair_fitting_kind {
  FREEAIR_FITTING_ELBOW_90 = 1,         /**< Elbow, 90 degrees, regular. */
  FREEAIR_FITTING_ELBOW_90_LONG = 2,    /**< Elbow, 90 degrees, long radius. */
  FREEAIR_FITTING_ELBOW_45 = 3,         /**< Elbow, 45 degrees. */
  FREEAIR_FITTING_RETURN_BEND = 4,      /**< Return bend, 180 degrees. */
  FREEAIR_FITTING_TEE_RUN = 5,          /**< Tee, flow along the run. */
  FREEAIR_FITTING_TEE_BRANCH = 6,       /**< Tee, flow through the branch. */
  FREEAIR_FITTING_UNION = 7,            /**< Union. */
  FREEAIR_FITTING_GLOBE_VALVE = 8,      /**< Globe valve, open. */
  FREEAIR_FITTING_ANGLE_VALVE = 9,      /**< Angle valve, open. */
  FREEAIR_FITTING_GATE_VALVE = 10,      /**< Gate valve, open. */
  FREEAIR_FITTING_BALL_VALVE = 11,      /**< Ball valve, full bore, open. */
  FREEAIR_FITTING_SWING_CHECK = 12,     /**< Swing check valve, forward. */
  FREEAIR_FITTING_ENTRANCE_SHARP = 13,  /**< From a receiver into a pipe, sharp edge. */
  FREEAIR_FITTING_ENTRANCE_INWARD = 14, /**< From a receiver into a pipe that stands into it. */
  FREEAIR_FITTING_ENTRANCE_ROUND = 15,  /**< From a receiver into a pipe, well rounded. */
  FREEAIR_FITTING_EXIT = 16             /**< From a pipe into a receiver or the open. */
};

/** Ways that fittings are joined.
 * @since 0.1
 */
enum freeair_fitting_joint {
  FREEAIR_FITTING_THREADED = 1, /**< Threaded. */
  FREEAIR_FITTING_FLANGED = 2   /**< Flanged or welded. */
};

/** Loss coefficient of a fitting.
 *
 * Model: table; turbulent flow. Valves, entrances and the exit have one value for both joints.
 *
 * @param[in]  fitting          Fitting. @choice{freeair_fitting_kind}
 * @param[in]  joint            How it is joined. @choice{freeair_fitting_joint}
 * @param[out] loss_coefficient K.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      loss_coefficient is null
 * @retval FREEAIR_ERR_DOMAIN    no such fitting or joint
 * @retval FREEAIR_ERR_NOT_FOUND the table has no such fitting with such a joint
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Table 8.2 and Figures 8.22 and 8.25 (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fitting_loss_coefficient(int32_t fitting, int32_t joint, double *loss_coefficient);

/** Equivalent length of a fitting, in diameters.
 *
 * Model: table of L/d; K = L/d times the friction factor of the pipe in fully turbulent flow.
 *
 * @param[in]  fitting Fitting. @choice{freeair_fitting_kind}
 * @param[out] ratio   Equivalent length over inner diameter.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      ratio is null
 * @retval FREEAIR_ERR_DOMAIN    no such fitting
 * @retval FREEAIR_ERR_NOT_FOUND the table has no such fitting
 * @source{Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, appendix A (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fitting_length_ratio(int32_t fitting, double *ratio);

/** Equivalent length of straight pipe from a loss coefficient.
 *
 * Model: L = K d / f.
 *
 * @param[in]  loss_coefficient K. @range{[0;1e6]}
 * @param[in]  factor           Friction factor of the pipe. @range{[1e-4;100]}
 * @param[in]  diameter_m       Inner diameter. @range{[1e-6;10]}
 * @param[out] length_m         Equivalent length.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   length_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 8.4.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fitting_equivalent_length(double loss_coefficient, double factor, double diameter_m,
                                                      double *length_m);

/** Loss coefficient from an equivalent length of straight pipe.
 *
 * Model: K = f L / d.
 *
 * @param[in]  length_m         Equivalent length. @range{[0;1e6]}
 * @param[in]  factor           Friction factor of the pipe. @range{[0;100]}
 * @param[in]  diameter_m       Inner diameter. @range{[1e-6;10]}
 * @param[out] loss_coefficient K.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   loss_coefficient is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 8.4.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fitting_coefficient_from_length(double length_m, double factor, double diameter_m,
                                                            double *loss_coefficient);

/** Loss coefficient of a sudden widening.
 *
 * Model: K = (1 - (d1/d2)^2)^2 of the dynamic pressure in the narrow pipe (Borda and Carnot).
 *
 * @param[in]  narrow_m         Inner diameter before. @range{[1e-6;10]}
 * @param[in]  wide_m           Inner diameter behind, not below narrow_m. @range{[1e-6;10]}
 * @param[out] loss_coefficient K.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   loss_coefficient is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or wide_m is below narrow_m
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equation 8.39}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fitting_expansion(double narrow_m, double wide_m, double *loss_coefficient);

/** Loss coefficient of a sudden narrowing.
 *
 * Model: K = (1 - (d2/d1)^2) / 2 of the dynamic pressure in the narrow pipe.
 *
 * @param[in]  wide_m           Inner diameter before. @range{[1e-6;10]}
 * @param[in]  narrow_m         Inner diameter behind, not above wide_m. @range{[1e-6;10]}
 * @param[out] loss_coefficient K.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   loss_coefficient is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or narrow_m is above wide_m
 * @source{Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, appendix A (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fitting_contraction(double wide_m, double narrow_m, double *loss_coefficient);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
