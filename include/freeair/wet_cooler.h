/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_WET_COOLER_H
#define FREEAIR_WET_COOLER_H

#include <freeair/condensate.h>
#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup wet_cooler Wet cooler
 * Intercoolers and aftercoolers in which water condenses: where the air comes out, how
 * much water falls out of it, how much heat the coolant takes up, and what the readings
 * say about the size of the cooler, with the latent heat counted. The air is a flow of
 * topic condensate, before and after; topic intercooler has coolers that stay dry.
 * @{
 */

/** What a cooler does with moist air.
 *
 * Model: along the way of the air, dry and then wet, dUA = dQ/(T - Tc) in counterflow, Q by the enthalpies of
 * freeair_condensate_step(), the coolant warmed by what the air gave up; 8 and 16 parts dry, 8 and 16 wet, each with
 * its logarithmic mean difference, extrapolated: within 1e-5. For another arrangement NTU over that of counterflow at
 * the same effectiveness, as freeair_intercooler_ntu() has them with the mean heat capacity rate of the air. The outlet
 * temperature that asks for ua_w_k by false position, at most 200 steps. The film of water and its resistance are part
 * of ua_w_k.
 *
 * @param[in]  arrangement   How the fluids pass. @choice{freeair_intercooler_arrangement}
 * @param[in]  ua_w_k        Size: heat transfer coefficient times area. @range{[0;1e7]}
 * @param[in]  before        The flow before; p_pa and t_k are needed.
 * @param[in]  p_pa          Pressure after the cooler, absolute. @range{[1000;1e7]}
 * @param[in]  separation    Share of the water that is caught and drained behind the cooler. @range{[0;1]}
 * @param[in]  coolant_w_k   Heat capacity rate of the coolant. @range{[0.001;1e9]}
 * @param[in]  coolant_in_k  Temperature of the coolant at the inlet, below that of the air. @range{[213.15;573.15]}
 * @param[out] after         The flow after.
 * @param[out] coolant_out_k Temperature of the coolant at the outlet.
 * @param[out] heat_w        Heat from air to coolant.
 * @param[out] effectiveness Effectiveness: the heat over the most that the lesser heat capacity rate could take up.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_VERSION       a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        an input or field is outside its range, or the coolant is not colder than the air
 * @retval FREEAIR_ERR_NO_SOLUTION   there would be more than ten times as much vapour as air
 * @source{Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4; IAPWS G8-10 (2010)}
 * @caution{FREEAIR_CAUTION_HOT}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_wet_cooler_outlet(int32_t arrangement, double ua_w_k,
                                              const freeair_condensate_flow *before, double p_pa, double separation,
                                              double coolant_w_k, double coolant_in_k, freeair_condensate_flow *after,
                                              double *coolant_out_k, double *heat_w, double *effectiveness);

/** Size of a cooler from its readings, and the water that falls out of the air.
 *
 * Model: as freeair_wet_cooler_outlet(), without a search. Against the size when clean it tells fouling, on a damp day
 * too.
 *
 * @param[in]  arrangement     How the fluids pass. @choice{freeair_intercooler_arrangement}
 * @param[in]  before          The flow before; p_pa and t_k are needed.
 * @param[in]  p_pa            Pressure after the cooler, absolute. @range{[1000;1e7]}
 * @param[in]  air_out_k       Temperature of the air after it. @range{[213.15;573.15]}
 * @param[in]  coolant_w_k     Heat capacity rate of the coolant. @range{[0.001;1e9]}
 * @param[in]  coolant_in_k    Temperature of the coolant at the inlet, below that of the air. @range{[213.15;573.15]}
 * @param[out] ua_w_k          Size: heat transfer coefficient times area.
 * @param[out] heat_w          Heat from air to coolant.
 * @param[out] condensate_kg_s Water that flows along behind the cooler, before a separator.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed, but above 473.15 K or above 5 MPa
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_VERSION       before has an unknown size
 * @retval FREEAIR_ERR_DOMAIN        an input or field is outside its range, or the coolant or the outlet is not colder
 *   than the inlet
 * @retval FREEAIR_ERR_NO_SOLUTION   no cooler of this arrangement gives such readings, or there would be more than ten
 *   times as much vapour as air
 * @source{Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4; IAPWS G8-10 (2010)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_wet_cooler_size_from_readings(int32_t arrangement, const freeair_condensate_flow *before,
                                                          double p_pa, double air_out_k, double coolant_w_k,
                                                          double coolant_in_k, double *ua_w_k, double *heat_w,
                                                          double *condensate_kg_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
