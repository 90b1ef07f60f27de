/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PREDICTION_H
#define FREEAIR_PREDICTION_H

#include <freeair/export.h>
#include <freeair/machine.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup prediction Prediction
 * What a described machine will do with its receiver: the pump-up curve, the
 * times a technician reads off the gauge, the pressure at which it levels off,
 * the fall of pressure after it stops.
 *
 * The operating point of the crank-angle model is found at a few receiver
 * pressures, spaced evenly in the square root of pressure, and interpolated;
 * the receiver alone is then integrated: gas mass, gas energy, wall temperature.
 * Pressures are absolute and as the receiver gauge reads them: the true pressure
 * is the reading less gauge_error_pa of the machine.
 * @{
 */

/** State of the receiver before a run.
 * @since 0.1
 */
enum freeair_prediction_start {
  FREEAIR_PREDICTION_SOAKED = 0,     /**< At rest until gas and wall are at ambient temperature. */
  FREEAIR_PREDICTION_DRAWN_DOWN = 1, /**< Soaked at cut-out, then let down, pressure falling steadily, just before. */
  FREEAIR_PREDICTION_GIVEN = 2       /**< Temperatures are given. */
};

/** A run of the pump into its receiver.
 * @since 0.1
 */
typedef struct freeair_prediction_run {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double from_pa; /**< Gauge reading at the start, absolute. @range{(0;1e8)} @default{barometric plus gauge error} */
  double to_pa; /**< Gauge reading at the end. @range{(0;1e8)} @default{where the switch stops the pump} */
  double gas_k; /**< Gas temperature at the start, with FREEAIR_PREDICTION_GIVEN. @range{[150;600]} @default{ambient} */
  double wall_k; /**< Wall temperature at the start, likewise. @range{[150;600]} @default{ambient} */
  double draw_down_s; /**< Duration of the drawing down. @range{[1;1e5]} @default{60} */
  double most_s; /**< Give up after this time. @range{[1;1e7]} @default{7200} */
  double accuracy; /**< Accuracy of freeair_cycle_point. @range{[1e-6;0.1]} @default{1e-3} */
  int32_t start; /**< State before the run. @choice{freeair_prediction_start} */
  int32_t nodes; /**< Operating points along the way; at least 19 where it hardly reaches the end. @range{[3;32]} */
} freeair_prediction_run;

/** Initial value of a run: soaked, from ambient pressure to cut-out, seven operating points. */
#define FREEAIR_PREDICTION_RUN_INIT \
  {(uint32_t)sizeof(freeair_prediction_run), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 7}

/** Frozen size of the first release. */
#define FREEAIR_PREDICTION_RUN_BASELINE 72

/** What became of a run.
 * @since 0.1
 */
typedef struct freeair_prediction_result {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double time_s; /**< Time from start to end; infinite when the end is not reached. */
  double cut_in_s; /**< Time from start to the cut-in pressure; infinite when not reached, NaN when it starts above. */
  double end_pa; /**< Gauge reading at the end, absolute. */
  double start_gas_k; /**< Gas temperature at the start. */
  double end_gas_k; /**< Gas temperature at the end. */
  double end_wall_k; /**< Wall temperature of the receiver at the end. */
  double start_delivery_m3_s; /**< Free air delivery at the start. */
  double end_delivery_m3_s; /**< Free air delivery at the end. */
  double mean_delivery_m3_s; /**< Mean of the delivery over the run. */
  double apparent_m3_s; /**< What V dp / (p_a t) makes of the readings, V all of the receiver; reads too high. */
  double shaft_j; /**< Work at the pump shaft. */
  int32_t reached; /**< 1 when the end was reached. */
  int32_t evaluations; /**< Evaluations of the crank-angle rates. */
} freeair_prediction_result;

/** Initial value of a result. */
#define FREEAIR_PREDICTION_RESULT_INIT \
  {(uint32_t)sizeof(freeair_prediction_result), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_PREDICTION_RESULT_BASELINE 104

/** Initialises a run.
 *
 * Model: assignment.
 *
 * @param[out] run         Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    run is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_prediction_run_init(freeair_prediction_run *run, size_t caller_size);

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
FREEAIR_API int32_t freeair_prediction_result_init(freeair_prediction_result *result, size_t caller_size);

/** Pump-up of the receiver: the curve and what becomes of the run.
 *
 * Model: dm/dt = delivery - leak - demand; dU/dt = enthalpy in - enthalpy out -
 * UA (p/p_a)^(2/3) (T - Tw); C dTw/dt = the same heat - UA_wall (Tw - T_ambient);
 * U = p V / (k - 1). Demand fades over the last 2 % above ambient pressure.
 * Points lie at equal times from start to end of the run.
 *
 * @param[in]  machine      The machine.
 * @param[in]  site         The site.
 * @param[in]  run          The run.
 * @param[out] result       What became of it.
 * @param[out] t_s          Time. @shape{n}
 * @param[out] p_pa         Gauge reading, absolute. @shape{n}
 * @param[out] gas_k        Gas temperature. @shape{n}
 * @param[out] delivery_m3_s Delivery of the pump as free air. @shape{n}
 * @param[in]  n            Number of points, at least 2.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_LIMIT         computed, but the pressure levels off or the time ends below the end of the run
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, or the end is not above the start
 * @retval FREEAIR_ERR_NO_CONVERGENCE an operating point was not found
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state, or to walls above 3000 K
 * @source{common practice}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_prediction_pumpup(const freeair_machine *machine, const freeair_machine_site *site,
                                              const freeair_prediction_run *run, freeair_prediction_result *result,
                                              double *t_s, double *p_pa, double *gas_k, double *delivery_m3_s,
                                              size_t n);

/** Times at which the receiver gauge passes given readings.
 *
 * Model: as freeair_prediction_pumpup, read off at pressures instead of times.
 *
 * @param[in]  machine      The machine.
 * @param[in]  site         The site.
 * @param[in]  run          The run; it goes on to the highest of the readings, to_pa is ignored.
 * @param[out] result       What became of it.
 * @param[in]  p_pa         Gauge readings, absolute, in any order. @shape{n} @range{(0;1e8)}
 * @param[out] t_s          Time of each; infinite when not reached, 0 when at or below the start. @shape{n}
 * @param[in]  n            Number of readings, at least 1.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_LIMIT         computed, but some reading is not reached
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, or no reading is above the start
 * @retval FREEAIR_ERR_NO_CONVERGENCE an operating point was not found
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state, or to walls above 3000 K
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_prediction_times(const freeair_machine *machine, const freeair_machine_site *site,
                                             const freeair_prediction_run *run, freeair_prediction_result *result,
                                             const double *p_pa, double *t_s, size_t n);

/** Receiver pressure at which a machine levels off: delivery equals leaks and demand.
 *
 * Model: root of delivery - leak - demand over receiver pressure with gas at
 * ambient temperature, by bracketing; delivery below 5e-5 of the displacement
 * counts as none.
 *
 * @param[in]  machine  The machine.
 * @param[in]  site     The site.
 * @param[in]  upper_pa Highest pressure of interest, absolute. @range{(0;1e8]} @default{twice cut_out_pa}
 * @param[out] p_pa     Gauge reading, absolute; infinite when it still delivers at upper_pa.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_LIMIT         computed, but it still delivers at upper_pa
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, or upper_pa is not above barometric pressure
 * @retval FREEAIR_ERR_NO_CONVERGENCE an operating point was not found
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state, or to walls above 3000 K
 * @source{common practice}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_prediction_level_off(const freeair_machine *machine, const freeair_machine_site *site,
                                                 double upper_pa, double *p_pa);

/** Fall of the receiver pressure after the machine stops.
 *
 * Model: the receiver alone, as in freeair_prediction_pumpup; gas leaves through
 * the leak of the check valve to the vented discharge line (if with_check_valve)
 * and through the downstream leak (if with_downstream).
 *
 * @param[in]  machine          The machine.
 * @param[in]  site             The site.
 * @param[in]  from_pa          Gauge reading at the start, absolute. @range{(0;1e8)}
 * @param[in]  gas_k            Gas temperature at the start. @range{[150;600]} @default{ambient}
 * @param[in]  wall_k           Wall temperature at the start. @range{[150;600]} @default{ambient}
 * @param[in]  duration_s       Duration. @range{(0;1e7]}
 * @param[in]  with_check_valve 0 when the receiver is isolated from the pump, else 1. @range{[0;1]}
 * @param[in]  with_downstream  0 when the service valve is shut and nothing leaks behind it, else 1. @range{[0;1]}
 * @param[out] t_s              Time. @shape{n}
 * @param[out] p_pa             Gauge reading, absolute. @shape{n}
 * @param[in]  n                Number of points at equal times, at least 2.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_VERSION a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN  a value is outside its range, or n is below 2
 * @retval FREEAIR_ERR_NO_CONVERGENCE the integration did not come to its end
 * @source{common practice}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_prediction_leak_down(const freeair_machine *machine, const freeair_machine_site *site,
                                                 double from_pa, double gas_k, double wall_k, double duration_s,
                                                 int32_t with_check_valve, int32_t with_downstream, double *t_s,
                                                 double *p_pa, size_t n);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
