/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_EXPECTATION_H
#define FREEAIR_EXPECTATION_H

#include <freeair/pumpup.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup expectation Expected pump-up
 * How long a sound machine takes here and today, from its nameplate or from its
 * geometry in closed form, and how what was found compares with that. Altitude
 * and heat cost time and are no fault. The prediction topic does the same by the
 * crank-angle model, from a full description of the machine.
 *
 * Delivery as drawn in falls with the pressure through re-expansion from the
 * clearance of the first stage: eta = 1 + c - c (p / p_a)^(1 / (n stages)); of
 * two stages each is taken to make the square root of the whole ratio. The
 * receiver heats as in the pumpup topic.
 * @{
 */

/** A machine as its nameplate or its geometry describe it. One of rated_m3_s and swept_m3 with speed_rev_s is
 * required; the rating prevails. Uncertainties are relative standard uncertainties where no unit is in the name.
 * @since 0.1
 */
typedef struct freeair_expectation_machine {
  uint32_t struct_size;          /**< Size of this structure as the caller knows it. */
  uint32_t flags;                /**< Reserved, 0. */
  double rated_m3_s;             /**< Rated free air delivery, as drawn in. @range{(0;1000]} @default{from geometry} */
  double rated_pa;               /**< Receiver pressure of the rating. @range{[1e3;1e8]} @default{that of the end} */
  double rated_ambient_pa;       /**< Barometric pressure of the rating. @range{[2e4;2e5]} @default{1e5} */
  double rated_uncertainty;      /**< Of the rating. @range{[0;0.3]} @default{0.03, as for a tolerance of 5 %} */
  double swept_m3;               /**< Swept volume of a revolution, first stage. @range{(0;10]} @default{unknown} */
  double speed_rev_s;            /**< Speed. @range{(0;200]} @default{unknown} */
  double induction;              /**< Share of what re-expansion leaves room for that is delivered: heating, valves,
                                      leakage. @range{(0;1]} @default{0.85} */
  double induction_uncertainty;  /**< Of that. @range{[0;0.3]} @default{0.06} */
  double speed_ratio;            /**< Speed found over the speed of the rating. @range{(0;3]} @default{1} */
  double speed_ratio_uncertainty; /**< Of that. @range{[0;0.3]} @default{0.01} */
  double clearance;               /**< Clearance over swept volume, first stage. @range{[0;0.5]} @default{0.05} */
  double clearance_uncertainty;   /**< Standard uncertainty of it. @range{[0;0.2]} @default{0.015} */
  double n_expansion;             /**< Exponent of re-expansion. @range{[1;2]} @default{1.25} */
  int32_t stages;                 /**< Stages. @range{[1;2]} */
  int32_t reserved;               /**< 0. @range{[0;0]} */
} freeair_expectation_machine;

/** Initial value of a machine: nothing given, two stages. */
#define FREEAIR_EXPECTATION_MACHINE_INIT \
  { (uint32_t)sizeof(freeair_expectation_machine), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, 2, 0}

/** Frozen size of the first release. */
#define FREEAIR_EXPECTATION_MACHINE_BASELINE 120

/** What to expect of a run from p_start_pa to p_end_pa.
 * @since 0.1
 */
typedef struct freeair_expectation_result {
  uint32_t struct_size;             /**< Size of this structure as the caller knows it. */
  uint32_t flags;                   /**< Reserved, 0. */
  double time_s;                    /**< Time. */
  double time_uncertainty_s;        /**< Its standard uncertainty. */
  double time_from_machine_s;       /**< What the machine contributes to that: rating or geometry, speed, clearance. */
  double time_from_receiver_s;      /**< What the receiver contributes: volume, heat exchange, state before the run. */
  double time_from_readings_s;      /**< What gauge, barometer and thermometer contribute. */
  double delivery_m3_s;             /**< Mean free air delivery. */
  double delivery_uncertainty_m3_s; /**< Its standard uncertainty. */
  double start_delivery_m3_s;       /**< Free air delivery at p_start_pa. */
  double end_delivery_m3_s;         /**< Free air delivery at p_end_pa. */
  double t_end_k;                   /**< Gas temperature at the end. */
} freeair_expectation_result;

/** Initial value of a result. */
#define FREEAIR_EXPECTATION_RESULT_INIT \
  { (uint32_t)sizeof(freeair_expectation_result), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_EXPECTATION_RESULT_BASELINE 88

/** Initialises a machine to "nothing given", two stages.
 *
 * Model: assignment.
 *
 * @param[out] machine     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    machine is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_expectation_machine_init(freeair_expectation_machine *machine, size_t caller_size);

/** Initialises a result.
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
FREEAIR_API int32_t freeair_expectation_result_init(freeair_expectation_result *result, size_t caller_size);

/** Time and delivery to expect of a pump-up.
 *
 * Model: q(p) = speed_ratio rated_m3_s eta(p/p_a) / eta(rated_pa / rated_ambient_pa),
 * or speed_ratio swept_m3 speed_rev_s induction eta(p/p_a); with that inflow the
 * lumped receiver of the pumpup topic is integrated over pressure (fourth-order
 * Runge-Kutta, relative error below 1e-7). Uncertainty as in freeair_pumpup_analyse.
 *
 * @param[in]  test    Receiver, site, start and end of the run; duration_s matters for CYCLING alone, measured gas
 *                     temperatures at the end are not used.
 * @param[in]  machine The machine.
 * @param[out] result  What to expect.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a field is missing or outside its range, or as in freeair_pumpup_analyse
 * @retval FREEAIR_ERR_NO_SOLUTION    such a machine levels off below p_end_pa, now or within its uncertainty
 * @retval FREEAIR_ERR_NO_CONVERGENCE more than 100 iterations or 16384 steps would be needed
 * @source{common practice; volumetric efficiency with clearance: any textbook of thermodynamics, as Rogers and Mayhew,
 * Engineering Thermodynamics, reciprocating compressors}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_expectation_of_run(const freeair_pumpup_test *test,
                                               const freeair_expectation_machine *machine,
                                               freeair_expectation_result *result);

/** Times at which pressures are to be expected.
 *
 * Model: as freeair_expectation_of_run, one run through all pressures.
 *
 * @param[in]  test            Receiver, site, start of the run; the last pressure takes the place of p_end_pa.
 * @param[in]  machine         The machine.
 * @param[in]  p_pa            Pressures, absolute, increasing, the first above p_start_pa. @shape{n} @range{[1e3;1e8]}
 * @param[in]  n               Pressures, at least 1.
 * @param[out] t_s             Time of each. @shape{n}
 * @param[out] t_uncertainty_s Its standard uncertainty. @shape{n}
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a field is missing or outside its range, or as in freeair_pumpup_analyse
 * @retval FREEAIR_ERR_DATA           no pressure, or they do not increase from p_start_pa
 * @retval FREEAIR_ERR_NO_SOLUTION    such a machine levels off below the last pressure, now or within its uncertainty
 * @retval FREEAIR_ERR_NO_CONVERGENCE more than 100 iterations or 16384 steps would be needed
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_expectation_times(const freeair_pumpup_test *test,
                                              const freeair_expectation_machine *machine, const double *p_pa,
                                              size_t n, double *t_s, double *t_uncertainty_s);

/** What was found over what was to be expected, and whether that will do.
 *
 * Model: ratio = found / expected, relative uncertainties added in squares;
 * freeair_verdict_decide() on ratio >= required_ratio. FAILS means short.
 *
 * @param[in]  found_m3_s                Delivery found. @range{[0;1e6]}
 * @param[in]  found_uncertainty_m3_s    Its standard uncertainty. @range{[0;1e6]}
 * @param[in]  expected_m3_s             Delivery expected. @range{[1e-9;1e6]}
 * @param[in]  expected_uncertainty_m3_s Its standard uncertainty. @range{[0;1e6]}
 * @param[in]  required_ratio            Least ratio that will do. @range{(0;2]}
 * @param[in]  confidence                Probability required of a firm verdict. @range{(0.5;1)}
 * @param[out] ratio                     Found over expected.
 * @param[out] ratio_uncertainty         Its standard uncertainty.
 * @param[out] verdict                   The decision. @choice{freeair_verdict}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 100:2008, 5.1.6; JCGM 106:2012, 8.3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_expectation_compare(double found_m3_s, double found_uncertainty_m3_s,
                                                double expected_m3_s, double expected_uncertainty_m3_s,
                                                double required_ratio, double confidence, double *ratio,
                                                double *ratio_uncertainty, int32_t *verdict);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
