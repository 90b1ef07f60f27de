/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DELIVERY_H
#define FREEAIR_DELIVERY_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup delivery Delivery
 * What a reciprocating stage delivers, from its geometry and speed: free air
 * delivery and volumetric efficiency with heating on the way in, pressure lost
 * in the valves and leakage; and the bore that a wanted delivery needs. Free
 * air has a state of its own, which is always an argument. The model keeps
 * valve losses constant over the stroke; the cycle topic follows the crank.
 * @{
 */

/** A reciprocating stage at work.
 * @since 0.1
 */
typedef struct freeair_delivery_stage {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double swept_m3; /**< Swept volume of a revolution, all cylinders and ends. @range{[1e-12;1000]} */
  double speed_rev_s; /**< Crankshaft speed. @range{[0;1000]} */
  double clearance; /**< Clearance as a fraction of the swept volume. @range{[0;2]} */
  double p1_pa; /**< Pressure at the inlet, absolute. @range{[1;1e8]} */
  double t1_k; /**< Temperature at the inlet. @range{[1;5000]} */
  double p2_pa; /**< Pressure at the outlet, absolute. @range{[1;1e8]} */
  double p_free_pa; /**< Pressure of the free air, absolute. @range{[1;1e8]} */
  double t_free_k; /**< Temperature of the free air. @range{[1;5000]} */
  double r_j_kg_k; /**< Specific gas constant; 287.05 for dry air. @range{[10;10000]} */
  double n_expansion; /**< Exponent of re-expansion. @range{[0.5;10]} */
  double n_compression; /**< Exponent of compression. @range{[0.5;10]} @default{n_expansion} */
  double t_cylinder_k; /**< Temperature of the fresh charge in the cylinder. @range{[1;5000]} @default{t1_k} */
  double suction_drop_pa; /**< Pressure lost from inlet to cylinder. @range{[0;1e8]} @default{0} */
  double discharge_drop_pa; /**< Pressure lost from cylinder to outlet. @range{[0;1e8]} @default{0} */
  double leakage; /**< Fraction of the induced air that leaks back. @range{[0;1]} @default{0} */
} freeair_delivery_stage;

/** Initial value of a stage: nothing given. */
#define FREEAIR_DELIVERY_STAGE_INIT \
  { (uint32_t)sizeof(freeair_delivery_stage), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_DELIVERY_STAGE_BASELINE 128

/** What a stage delivers.
 * @since 0.1
 */
typedef struct freeair_delivery_result {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double fad_m3_s; /**< Free air delivery. */
  double m_kg_s; /**< Mass flow delivered. */
  double inlet_m3_s; /**< Delivery as a flow at the inlet state. */
  double efficiency_cylinder; /**< Volumetric efficiency at the state in the cylinder: re-expansion alone. */
  double efficiency_inlet; /**< Volumetric efficiency at the inlet state: heating, valves and leakage included. */
  double efficiency_free; /**< Volumetric efficiency at the state of free air. */
  double mep_pa; /**< Indicated mean effective pressure, valve losses included. */
  double indicated_w; /**< Indicated power. */
} freeair_delivery_result;

/** Initial value of a result: nothing computed. */
#define FREEAIR_DELIVERY_RESULT_INIT \
  { (uint32_t)sizeof(freeair_delivery_result), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_DELIVERY_RESULT_BASELINE 72

/** Initialises a stage to "nothing given".
 *
 * Model: assignment.
 *
 * @param[out] stage       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    stage is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_delivery_stage_init(freeair_delivery_stage *stage, size_t caller_size);

/** Initialises a result to "nothing computed".
 *
 * Model: assignment.
 *
 * @param[out] result      Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    result is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_delivery_result_init(freeair_delivery_result *result, size_t caller_size);

/** Delivery of a stage with heating, valve losses and leakage.
 *
 * Model: in the cylinder ps = p1 - suction drop, pd = p2 + discharge drop, eta = 1 + c - c (pd/ps)^(1/n_expansion).
 * Inlet efficiency = eta (ps/p1)(T1/T_cylinder)(1 - leakage), free = inlet (p1/p_free)(T_free/T1); flows = efficiency
 * times swept volume times speed. Indicated work as freeair_cylinder_mean_effective_pressure between ps and pd; the
 * work spent on leaking air is in it.
 *
 * @param[in]  stage  The stage.
 * @param[out] result What it delivers; zeros with the warning.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_WARN_LIMIT  computed: nothing is delivered against this pressure
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_VERSION a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN  a field is missing or outside its range, a drop leads outside 1 Pa to 1e8 Pa, or the
 *                             discharge pressure in the cylinder is below that of suction
 * @source{Rajput, A Textbook of Internal Combustion Engines, chapter 20, volumetric efficiency on free air}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_delivery_of_stage(const freeair_delivery_stage *stage, freeair_delivery_result *result);

/** Free air delivery from a volumetric efficiency.
 *
 * Model: fad = efficiency Vs N (p1/p_free)(T_free/T1), the efficiency being that at the inlet state.
 *
 * @param[in]  swept_m3    Swept volume Vs of a revolution. @range{[1e-12;1000]}
 * @param[in]  speed_rev_s Crankshaft speed N. @range{[0;1000]}
 * @param[in]  efficiency  Volumetric efficiency at the inlet state. @range{[0;1]}
 * @param[in]  p1_pa       Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  t1_k        Inlet temperature. @range{[1;5000]}
 * @param[in]  p_free_pa   Pressure of the free air, absolute. @range{[1;1e8]}
 * @param[in]  t_free_k    Temperature of the free air. @range{[1;5000]}
 * @param[out] fad_m3_s    Free air delivery.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   fad_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Joel, Basic Engineering Thermodynamics, Example 14.1}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_delivery_free_air(double swept_m3, double speed_rev_s, double efficiency, double p1_pa,
                                              double t1_k, double p_free_pa, double t_free_k, double *fad_m3_s);

/** Volumetric efficiency from a measured flow.
 *
 * Model: flow / (Vs N), at the state at which the flow is given: name it with the result.
 *
 * @param[in]  flow_m3_s   Flow delivered, at the inlet state or as free air. @range{[0;1e6]}
 * @param[in]  swept_m3    Swept volume Vs of a revolution. @range{[1e-12;1000]}
 * @param[in]  speed_rev_s Crankshaft speed N. @range{[0.001;1000]}
 * @param[out] efficiency  Volumetric efficiency at that state.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but above 1
 * @retval FREEAIR_ERR_NULL          efficiency is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_delivery_volumetric_efficiency(double flow_m3_s, double swept_m3, double speed_rev_s,
                                                           double *efficiency);

/** Bore for a wanted flow, stroke given.
 *
 * Model: D = sqrt(4 flow / (pi L N strokes efficiency)).
 *
 * @param[in]  flow_m3_s   Flow wanted, at the state to which the efficiency refers. @range{[0;1e6]}
 * @param[in]  efficiency  Volumetric efficiency at that state. @range{[0.001;1]}
 * @param[in]  stroke_m    Stroke L. @range{[0.0001;10]}
 * @param[in]  speed_rev_s Crankshaft speed N. @range{[0.001;1000]}
 * @param[in]  strokes     Suction strokes in a revolution: cylinders times 1, or 2 if double-acting. @range{[1;64]}
 * @param[out] bore_m      Bore D.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   bore_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: swept volume solved for the bore}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_delivery_bore_from_stroke(double flow_m3_s, double efficiency, double stroke_m,
                                                      double speed_rev_s, int32_t strokes, double *bore_m);

/** Bore for a wanted flow, stroke in proportion.
 *
 * Model: D = (4 flow / (pi stroke_ratio N strokes efficiency))^(1/3).
 *
 * @param[in]  flow_m3_s      Flow wanted, at the state to which the efficiency refers. @range{[0;1e6]}
 * @param[in]  efficiency     Volumetric efficiency at that state. @range{[0.001;1]}
 * @param[in]  stroke_ratio   Stroke over bore. @range{[0.01;100]}
 * @param[in]  speed_rev_s    Crankshaft speed N. @range{[0.001;1000]}
 * @param[in]  strokes        Suction strokes in a revolution: cylinders times 1, or 2 if double-acting. @range{[1;64]}
 * @param[out] bore_m         Bore D.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   bore_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: swept volume solved for the bore}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_delivery_bore_from_stroke_ratio(double flow_m3_s, double efficiency, double stroke_ratio,
                                                            double speed_rev_s, int32_t strokes, double *bore_m);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
