/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CONDENSATE_H
#define FREEAIR_CONDENSATE_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup condensate Condensate
 * Water on its way through a plant: what an inlet brings in, what each cooler,
 * receiver and dryer makes of it, what the separators catch and what is carried
 * on. A flow goes in steps from one pressure and temperature to the next.
 *
 * In each step vapour and water are in equilibrium, with the enhancement factor
 * unless the flow says otherwise. Real coolers leave some vapour supersaturated
 * or some water as mist: the separation of each step says how much of the water
 * is caught.
 * @{
 */

/** A flow of air with vapour and water in it. A step reads dry_kg_s, vapour_kg_s,
 * liquid_kg_s, enthalpy_w, model and over, and fills in all of another one.
 * @since 0.1
 */
typedef struct freeair_condensate_flow {
  uint32_t struct_size;     /**< Bytes of this structure, set by the initialiser. */
  uint32_t flags;           /**< Must be 0. */
  double p_pa;              /**< Pressure, absolute. @default{not read} */
  double t_k;               /**< Temperature. @default{not read} */
  double dry_kg_s;          /**< Dry air. @range{(0;1e6]} */
  double vapour_kg_s;       /**< Vapour in it. @range{[0;1e6]} */
  double liquid_kg_s;       /**< Water or ice that flows along. @range{[0;1e6]} */
  double condensed_kg_s;    /**< Vapour that became water in the step; negative: water evaporated. @default{not read} */
  double removed_kg_s;      /**< Water that was separated in the step. @default{not read} */
  double q_m3_s;            /**< Volume flow of the gas. @default{not read} */
  double relative_humidity; /**< Relative humidity over water. @default{not read} */
  double dew_point_k;       /**< Pressure dew or frost point by over; NaN below 173.15 K. @default{not read} */
  double enthalpy_w;        /**< Enthalpy of air, vapour and water that flow along, as in topic moist_air.
                                 @range{[-1e12;1e12]} @default{not known: released_w is NaN} */
  double released_w;        /**< Enthalpy that the flow gave up in the step, separated water included: the duty of a
                                 cooler; of compressor and cooler the heat less the work. @default{not read} */
  int32_t model;            /**< With the enhancement factor or without. @choice{freeair_enhancement_model} */
  int32_t over;             /**< What forms below 0.01 degC. @choice{freeair_saturation_over} */
} freeair_condensate_flow;

/** Size in bytes of freeair_condensate_flow in the release that introduced it. */
#define FREEAIR_CONDENSATE_FLOW_BASELINE 112

/** Initial value of freeair_condensate_flow: FREEAIR_ENHANCEMENT_VIRIAL, FREEAIR_SATURATION_OVER_WATER. */
#define FREEAIR_CONDENSATE_FLOW_INIT \
  { \
    (uint32_t)sizeof(freeair_condensate_flow), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 2, 1 \
  }

/** Initialises freeair_condensate_flow; never writes past caller_size.
 *
 * Model: every quantity not a number; with the enhancement factor, over water.
 *
 * @param[out] flow        The structure.
 * @param[in]  caller_size Its size as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    flow is null
 * @retval FREEAIR_ERR_VERSION caller_size is not the size of such a structure
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_condensate_flow_init(freeair_condensate_flow *flow, size_t caller_size);

/** The flow that enters a plant, from its volume and relative humidity.
 *
 * Model: dry air = q/v, v the volume by mass of dry air of freeair_moist_air_volume();
 * vapour = humidity ratio x dry air; no water.
 *
 * @param[in]  q_m3_s            Volume flow at the inlet, free air. @range{(0;1e5]}
 * @param[in]  p_pa              Pressure, absolute. @range{[1000;1e7]}
 * @param[in]  t_k               Temperature. @range{[213.15;573.15]}
 * @param[in]  relative_humidity Relative humidity over water. @range{[0;1]}
 * @param[in]  model             With the enhancement factor or not, in all steps. @choice{freeair_enhancement_model}
 * @param[in]  over              What forms below 0.01 degC, in all steps. @choice{freeair_saturation_over}
 * @param[out] flow              The flow.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          flow is null
 * @retval FREEAIR_ERR_VERSION       flow has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   the humidity ratio would be above 10
 * @source{IAPWS G8-10 (2010); IAPWS G9-15; algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_condensate_inlet(double q_m3_s, double p_pa, double t_k, double relative_humidity,
                                             int32_t model, int32_t over, freeair_condensate_flow *flow);

/** One step of a flow: compressed, cooled, stored, dried, expanded or heated to a pressure and temperature.
 *
 * Model: the air takes all water that it can hold there, ws = (Mw/Ma) xs/(1 - xs),
 * xs = f e/p; the rest is liquid, of which the share separation leaves.
 *
 * @param[in]  before     The flow before.
 * @param[in]  p_pa       Pressure after, absolute. @range{[1000;1e7]}
 * @param[in]  t_k        Temperature after. @range{[213.15;573.15]}
 * @param[in]  separation Share of the liquid that is caught and drained; 0 where there is no separator. @range{[0;1]}
 * @param[out] after      The flow after.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_VERSION       a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        an input or field is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   there would be more than ten times as much vapour as air
 * @source{IAPWS G8-10 (2010); IAPWS G9-15; algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_condensate_step(const freeair_condensate_flow *before, double p_pa, double t_k,
                                            double separation, freeair_condensate_flow *after);

/** Water that condenses from a flow of free air, compressed and cooled.
 *
 * Model: freeair_condensate_inlet() and one freeair_condensate_step(); nothing when the air stays unsaturated.
 *
 * @param[in]  q1_m3_s            Volume flow at the inlet, free air. @range{(0;1e5]}
 * @param[in]  p1_pa              Inlet pressure, absolute. @range{[1000;1e7]}
 * @param[in]  t1_k               Inlet temperature. @range{[213.15;573.15]}
 * @param[in]  relative_humidity1 Relative humidity at the inlet. @range{[0;1]}
 * @param[in]  p2_pa              Pressure after cooling, absolute. @range{[1000;1e7]}
 * @param[in]  t2_k               Temperature after cooling. @range{[213.15;573.15]}
 * @param[in]  model              With the enhancement factor or without. @choice{freeair_enhancement_model}
 * @param[out] condensate_kg_s    Water that condenses.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          condensate_kg_s is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range or not one of its constants
 * @retval FREEAIR_ERR_NO_SOLUTION   there would be more than ten times as much vapour as air
 * @source{IAPWS G8-10 (2010); IAPWS G9-15; algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_condensate_rate(double q1_m3_s, double p1_pa, double t1_k, double relative_humidity1,
                                            double p2_pa, double t2_k, int32_t model, double *condensate_kg_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
