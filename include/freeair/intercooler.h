/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_INTERCOOLER_H
#define FREEAIR_INTERCOOLER_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup intercooler Intercooler
 * Coolers between stages and behind the last: effectiveness and size (NTU method),
 * what one does with given flows and temperatures, what its readings say about its
 * size, and the pressure between the stages at which a machine settles. Heat capacity
 * rates are mass flow times specific heat: 1005 J/(kg K) for air, 4186 for water. Dry
 * air: condensing water adds its latent heat, and topic wet_cooler counts it.
 * @{
 */

/** How the two fluids pass each other.
 * @since 0.1
 */
enum freeair_intercooler_arrangement {
  FREEAIR_INTERCOOLER_COUNTERFLOW = 1,     /**< Against each other. */
  FREEAIR_INTERCOOLER_PARALLEL = 2,        /**< Side by side. */
  FREEAIR_INTERCOOLER_SHELL_AND_TUBE = 3,  /**< One shell pass, an even number of tube passes. */
  FREEAIR_INTERCOOLER_CROSS_UNMIXED = 4,   /**< Across, both in many channels: a finned cooler with a fan. */
  FREEAIR_INTERCOOLER_CROSS_LARGER_MIXED = 5, /**< Across, the fluid of the larger capacity rate mixed. */
  FREEAIR_INTERCOOLER_CROSS_LESSER_MIXED = 6  /**< Across, the fluid of the lesser capacity rate mixed. */
};

/** Two stages with a cooler between them.
 * @since 0.1
 */
typedef struct freeair_intercooler_stages {
  uint32_t struct_size;         /**< Size of this structure as the caller knows it. */
  uint32_t flags;               /**< Reserved, 0. */
  double displacement1_m3_s;    /**< Displacement of the first stage. @range{[1e-9;1e3]} */
  double clearance1;            /**< Its clearance, a fraction of its swept volume. @range{[0;1]} @default{0} */
  double displacement2_m3_s;    /**< Displacement of the second stage. @range{[1e-9;1e3]} */
  double clearance2;            /**< Its clearance. @range{[0;1]} @default{0} */
  double exponent;              /**< Exponent of re-expansion. @range{[1;2]} @default{1.3} */
  double p1_pa;                 /**< Suction pressure of the first stage, absolute. @range{[1000;1e7]} */
  double t1_k;                  /**< Temperature of the air in the first cylinder. @range{[50;2000]} @default{293.15} */
  double p2_pa;                 /**< Discharge pressure of the second stage, absolute. @range{[1000;1e8]} */
  double t2_k;                  /**< Temperature of the air in the second cylinder. @range{[50;2000]} @default{t1_k} */
  double drop_pa;               /**< Pressure lost in the cooler. @range{[0;1e7]} @default{0} */
} freeair_intercooler_stages;

/** Initial value of two stages: everything not given. */
#define FREEAIR_INTERCOOLER_STAGES_INIT \
  {(uint32_t)sizeof(freeair_intercooler_stages), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}
/** Frozen size of the first release. */
#define FREEAIR_INTERCOOLER_STAGES_BASELINE 88

/** Initialises two stages.
 *
 * Model: assignment.
 *
 * @param[out] stages      Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    stages is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_stages_init(freeair_intercooler_stages *stages, size_t caller_size);

/** Effectiveness of a cooler.
 *
 * Model: the heat passed over the most that could be, from NTU = UA/Cmin and c = Cmin/Cmax. Across with both unmixed by
 * the exact series, not by one of its fits; the others in closed form.
 *
 * @param[in]  arrangement   How the fluids pass. @choice{freeair_intercooler_arrangement}
 * @param[in]  ntu           Number of transfer units. @range{[0;100]}
 * @param[in]  ratio         Lesser over larger heat capacity rate. @range{[0;1]}
 * @param[out] effectiveness Effectiveness.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   effectiveness is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, Table 11.3; Mason, Heat transfer in crossflow, 2nd US National Congress of Applied Mechanics (1955) 801}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_effectiveness(int32_t arrangement, double ntu, double ratio,
                                                      double *effectiveness);

/** Number of transfer units that an effectiveness needs.
 *
 * Model: inverse of freeair_intercooler_effectiveness, in closed form but for the series, which is bisected.
 *
 * @param[in]  arrangement   How the fluids pass. @choice{freeair_intercooler_arrangement}
 * @param[in]  effectiveness Effectiveness. @range{[0;1)}
 * @param[in]  ratio         Lesser over larger heat capacity rate. @range{[0;1]}
 * @param[out] ntu           Number of transfer units.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        ntu is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION no cooler of this arrangement up to NTU = 100 is so effective
 * @source{Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, Table 11.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_ntu(int32_t arrangement, double effectiveness, double ratio, double *ntu);

/** What a cooler does.
 *
 * Model: Q = effectiveness Cmin (t_air - t_coolant); each outlet from Q over its capacity rate.
 *
 * @param[in]  arrangement     How the fluids pass. @choice{freeair_intercooler_arrangement}
 * @param[in]  ua_w_k          Size: heat transfer coefficient times area. @range{[0;1e7]}
 * @param[in]  air_w_k         Heat capacity rate of the air. @range{[0.001;1e7]}
 * @param[in]  air_in_k        Temperature of the air at the inlet. @range{[50;2000]}
 * @param[in]  coolant_w_k     Heat capacity rate of the coolant. @range{[0.001;1e9]}
 * @param[in]  coolant_in_k    Temperature of the coolant at the inlet. @range{[50;2000]}
 * @param[out] air_out_k       Temperature of the air at the outlet.
 * @param[out] coolant_out_k   Temperature of the coolant at the outlet.
 * @param[out] heat_w          Heat from air to coolant.
 * @param[out] effectiveness   Effectiveness.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or NTU is above 100
 * @source{Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4}
 * @caution{FREEAIR_CAUTION_HOT}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_outlet(int32_t arrangement, double ua_w_k, double air_w_k, double air_in_k,
                                               double coolant_w_k, double coolant_in_k, double *air_out_k,
                                               double *coolant_out_k, double *heat_w, double *effectiveness);

/** Size of a cooler from its readings: against the size when clean it tells fouling.
 *
 * Model: Q = air_w_k (air_in - air_out), effectiveness, NTU, UA = NTU Cmin.
 *
 * @param[in]  arrangement   How the fluids pass. @choice{freeair_intercooler_arrangement}
 * @param[in]  air_w_k       Heat capacity rate of the air. @range{[0.001;1e7]}
 * @param[in]  air_in_k      Temperature of the air at the inlet. @range{[50;2000]}
 * @param[in]  air_out_k     Temperature of the air at the outlet. @range{[50;2000]}
 * @param[in]  coolant_w_k   Heat capacity rate of the coolant. @range{[0.001;1e9]}
 * @param[in]  coolant_in_k  Temperature of the coolant at the inlet. @range{[50;2000]}
 * @param[out] ua_w_k        Size: heat transfer coefficient times area.
 * @param[out] heat_w        Heat from air to coolant.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range, or air and coolant enter equally warm
 * @retval FREEAIR_ERR_NO_SOLUTION no cooler of this arrangement gives such readings
 * @source{Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_size_from_readings(int32_t arrangement, double air_w_k, double air_in_k,
                                                           double air_out_k, double coolant_w_k, double coolant_in_k,
                                                           double *ua_w_k, double *heat_w);

/** Approach and temperature effectiveness of a cooler from three thermometers.
 *
 * Model: approach = air_out - coolant_in; effectiveness = (air_in - air_out)/(air_in - coolant_in). An approach of 5 K
 * to water and 10 K to ambient air is usual: common practice, no source.
 *
 * @param[in]  air_in_k      Temperature of the air at the inlet. @range{[50;2000]}
 * @param[in]  air_out_k     Temperature of the air at the outlet. @range{[50;2000]}
 * @param[in]  coolant_in_k  Temperature of the coolant at the inlet, below air_in_k. @range{[50;2000]}
 * @param[out] approach_k    Approach.
 * @param[out] effectiveness Temperature effectiveness of the air side.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but the air leaves colder than the coolant or hotter than it came
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range, or coolant_in_k is not below air_in_k
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_approach(double air_in_k, double air_out_k, double coolant_in_k,
                                                 double *approach_k, double *effectiveness);

/** Logarithmic mean of two temperature differences.
 *
 * Model: (d1 - d2)/ln(d1/d2), which is d1 where they are equal.
 *
 * @param[in]  difference1_k Difference at one end. @range{[1e-6;2000]}
 * @param[in]  difference2_k Difference at the other. @range{[1e-6;2000]}
 * @param[out] mean_k        Mean difference.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   mean_k is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_mean_difference(double difference1_k, double difference2_k, double *mean_k);

/** Flow of coolant that takes up a heat within a rise of its temperature.
 *
 * Model: m = Q/(cp rise).
 *
 * @param[in]  heat_w    Heat. @range{[0;1e9]}
 * @param[in]  cp_j_kg_k Specific heat of the coolant; 4186 for water, 1005 for air. @range{[10;100000]}
 * @param[in]  rise_k    Rise of its temperature. @range{[0.01;1000]}
 * @param[out] mass_kg_s Mass flow.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   mass_kg_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: first law for steady flow}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_coolant_flow(double heat_w, double cp_j_kg_k, double rise_k,
                                                     double *mass_kg_s);

/** Pressure between two stages at which a machine settles.
 *
 * Model: what the first stage delivers the second takes in, V1 e1 p1/T1 = V2 e2 (p - drop)/T2, with the volumetric
 * efficiencies e of freeair_cylinder_volumetric_efficiency, between p and p1 and between p2 and p - drop. Without
 * clearance p = drop + p1 (V1/V2)(T2/T1). Bisection, to rounding.
 *
 * @param[in]  stages        The two stages.
 * @param[out] p_pa          Pressure behind the first stage, absolute.
 * @param[out] efficiency1   Volumetric efficiency of the first stage.
 * @param[out] efficiency2   Volumetric efficiency of the second stage.
 * @param[out] delivery_m3_s Delivery, as volume at p1 and t1.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_LIMIT      computed, but one stage does nothing: the other alone reaches p2
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      a field is outside its range, or p2_pa is not above p1_pa
 * @retval FREEAIR_ERR_VERSION     stages has an unknown size or content
 * @retval FREEAIR_ERR_NO_SOLUTION nothing is delivered: the clearances are too large for so much pressure
 * @source{algebra: continuity between the stages}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_intercooler_pressure(const freeair_intercooler_stages *stages, double *p_pa,
                                                 double *efficiency1, double *efficiency2, double *delivery_m3_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
