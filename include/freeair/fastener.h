/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_FASTENER_H
#define FREEAIR_FASTENER_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup fastener Fastener
 * Bolts and studs: threads, strengths, and how torque and preload go together.
 *
 * Torque is a poor measure of preload: with the same wrench it scatters by a quarter and more. The manual's torque and
 * sequence for the part in hand come first; these are for the part whose manual is lost, and for judging.
 * @{
 */

/** Thread series.
 * @since 0.1
 */
enum freeair_fastener_thread {
  FREEAIR_FASTENER_ISO = 1, /**< ISO metric, coarse pitches in the table. */
  FREEAIR_FASTENER_UNC = 2, /**< Unified coarse. */
  FREEAIR_FASTENER_UNF = 3  /**< Unified fine. */
};

/** Grades of bolts.
 * @since 0.1
 */
enum freeair_fastener_grade {
  FREEAIR_FASTENER_SAE_2 = 1,     /**< SAE J429 grade 2, no marks on the head. */
  FREEAIR_FASTENER_SAE_5 = 2,     /**< SAE J429 grade 5, three marks. */
  FREEAIR_FASTENER_SAE_8 = 3,     /**< SAE J429 grade 8, six marks. */
  FREEAIR_FASTENER_ISO_4_6 = 4,   /**< ISO 898-1 property class 4.6. */
  FREEAIR_FASTENER_ISO_4_8 = 5,   /**< ISO 898-1 property class 4.8. */
  FREEAIR_FASTENER_ISO_5_6 = 6,   /**< ISO 898-1 property class 5.6. */
  FREEAIR_FASTENER_ISO_5_8 = 7,   /**< ISO 898-1 property class 5.8. */
  FREEAIR_FASTENER_ISO_6_8 = 8,   /**< ISO 898-1 property class 6.8. */
  FREEAIR_FASTENER_ISO_8_8 = 9,   /**< ISO 898-1 property class 8.8. */
  FREEAIR_FASTENER_ISO_9_8 = 10,  /**< ISO 898-1 property class 9.8, to M16. */
  FREEAIR_FASTENER_ISO_10_9 = 11, /**< ISO 898-1 property class 10.9. */
  FREEAIR_FASTENER_ISO_12_9 = 12  /**< ISO 898-1 property class 12.9. */
};

/** Pitch of a standard thread.
 *
 * Model: table look-up of the nominal diameter, within 0.5 percent: M3 to M39, No. 6 to 1-1/2 in.
 *
 * @param[in]  thread     Thread series. @choice{freeair_fastener_thread}
 * @param[in]  diameter_m Nominal diameter. @range{[0.001;0.2]}
 * @param[out] pitch_m    Pitch.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      pitch_m is null
 * @retval FREEAIR_ERR_DOMAIN    diameter_m is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND the series has no such diameter
 * @source{ISO 261 and ISO 262, coarse pitches; ASME B1.1, UNC and UNF, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_pitch(int32_t thread, double diameter_m, double *pitch_m);

/** Stress area of a thread.
 *
 * Model: pi / 4 (d - c p)^2, the circle of the mean of pitch and root diameter: c = 13 sqrt(3) / 24 = 0.9382 for ISO
 * threads, 9 sqrt(3) / 16 = 0.9743 for unified ones.
 *
 * @param[in]  thread     Thread series. @choice{freeair_fastener_thread}
 * @param[in]  diameter_m Nominal diameter. @range{[0.001;0.2]}
 * @param[in]  pitch_m    Pitch, at most half the diameter. @range{[0.0001;0.02]}
 * @param[out] area_m2    Stress area.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        area_m2 is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND   no such series
 * @retval FREEAIR_ERR_NO_SOLUTION the pitch is more than half the diameter
 * @source{ISO 898-1:2013, 9.1.6.1, nominal stress area; ASME B1.1, tensile stress area}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_stress_area(int32_t thread, double diameter_m, double pitch_m, double *area_m2);

/** Strength of a grade of bolt.
 *
 * Model: table look-up. Some grades are weaker in large diameters; none is defined outside 6.35 to 38.1 mm (SAE) or
 * 1.6 to 39 mm (ISO).
 *
 * @param[in]  grade      Grade. @choice{freeair_fastener_grade}
 * @param[in]  diameter_m Nominal diameter. @range{[0.001;0.2]}
 * @param[out] proof_pa   Stress under proof load.
 * @param[out] yield_pa   Least yield strength, or stress at 0.2 percent (ISO x.8: 0.0048 d) of lasting strain.
 * @param[out] tensile_pa Least tensile strength.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_DOMAIN    diameter_m is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND no such grade, or not in that diameter
 * @source{SAE J429, table 1; ISO 898-1:2013, table 3; from memory, proof stresses confirmed by public proof-load tables}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_strength(int32_t grade, double diameter_m, double *proof_pa, double *yield_pa,
                                              double *tensile_pa);

/** Preload and torque for a bolt of a grade.
 *
 * Model: F = fraction S_p A_s with the proof stress of the grade and the stress area of the standard thread; T = K d F.
 * 0.75 is usual for joints that are opened again, 0.90 for lasting ones. K about 0.20 dry and plain, 0.15 oiled.
 *
 * @param[in]  thread     Thread series. @choice{freeair_fastener_thread}
 * @param[in]  diameter_m Nominal diameter. @range{[0.001;0.2]}
 * @param[in]  grade      Grade. @choice{freeair_fastener_grade}
 * @param[in]  fraction   Preload over proof load. @range{[0;1]}
 * @param[in]  nut_factor Nut factor K. @range{[0.01;1]}
 * @param[out] torque_nm  Torque.
 * @param[out] preload_n  Preload.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_DOMAIN    an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND no such thread or grade in that diameter
 * @source{SAE J429 torque-tension charts; T = K d F, common practice}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_torque_for_grade(int32_t thread, double diameter_m, int32_t grade,
                                                      double fraction, double nut_factor, double *torque_nm,
                                                      double *preload_n);

/** Torque for a preload.
 *
 * Model: T = K d F.
 *
 * @param[in]  preload_n  Preload. @range{[0;10000000]}
 * @param[in]  nut_factor Nut factor K. @range{[0.01;1]}
 * @param[in]  diameter_m Nominal diameter. @range{[0.001;0.2]}
 * @param[out] torque_nm  Torque.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   torque_nm is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{common practice; SAE J429 torque-tension charts}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_torque(double preload_n, double nut_factor, double diameter_m,
                                            double *torque_nm);

/** Preload from a torque, with uncertainty.
 *
 * Model: F = T / (K d); u(F) = F sqrt((u(T)/T)^2 + (u(K)/K)^2). The nut factor is known to a tenth at best.
 *
 * @param[in]  torque_nm              Torque. @range{[0;1000000]}
 * @param[in]  torque_uncertainty_nm  Standard uncertainty of it. @range{[0;1000000]}
 * @param[in]  nut_factor             Nut factor K. @range{[0.01;1]}
 * @param[in]  nut_factor_uncertainty Standard uncertainty of it. @range{[0;1]}
 * @param[in]  diameter_m             Nominal diameter. @range{[0.001;0.2]}
 * @param[out] preload_n              Preload.
 * @param[out] uncertainty_n          Standard uncertainty of the preload.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{common practice; uncertainty by JCGM 100:2008, 5.1.6}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_preload(double torque_nm, double torque_uncertainty_nm, double nut_factor,
                                             double nut_factor_uncertainty, double diameter_m, double *preload_n,
                                             double *uncertainty_n);

/** Nut factor from friction.
 *
 * Model: K d = p / (2 pi) + mu_t d2 / (2 cos 30) + mu_b D_b / 2, with d2 = d - 3 sqrt(3) / 8 p the pitch diameter.
 *
 * @param[in]  diameter_m       Nominal diameter. @range{[0.001;0.2]}
 * @param[in]  pitch_m          Pitch, at most half the diameter. @range{[0.0001;0.02]}
 * @param[in]  thread_friction  Coefficient of friction in the thread. @range{[0;1]}
 * @param[in]  bearing_friction Coefficient of friction under the turned face. @range{[0;1]}
 * @param[in]  bearing_m        Effective diameter of that face, about 1.3 d. @range{[0;1]}
 * @param[out] nut_factor       Nut factor K.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        nut_factor is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the pitch is more than half the diameter
 * @source{ISO 16047:2005, torque and clamp force of threaded fasteners; VDI 2230 part 1, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_nut_factor(double diameter_m, double pitch_m, double thread_friction,
                                                double bearing_friction, double bearing_m, double *nut_factor);

/** Load that a pressure puts on each bolt of a cover.
 *
 * Model: F = p A / n, shared evenly. The preload has to be greater by what the gasket needs, and by a reserve.
 *
 * @param[in]  difference_pa Pressure within above that outside. @range{[0;100000000]}
 * @param[in]  area_m2       Area that the pressure acts on, to the gasket's mean line. @range{[0;100]}
 * @param[in]  bolts         Number of bolts. @range{[1;1000]}
 * @param[out] load_n        Load of each bolt.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   load_n is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{statics}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @caution{FREEAIR_CAUTION_VESSEL}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fastener_pressure_load(double difference_pa, double area_m2, int32_t bolts,
                                                   double *load_n);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
