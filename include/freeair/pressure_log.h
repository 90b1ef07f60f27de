/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PRESSURE_LOG_H
#define FREEAIR_PRESSURE_LOG_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup pressure_log Pressure log
 * A logged receiver pressure is cut into phases: loaded, running on unloaded,
 * stopped; from the pressure alone, or with what another channel says of the
 * machine. What the phases add up to is in the topic duty.
 *
 * Times need not be even. Readings that are NaN, and times that repeat or run
 * backwards, are left out and counted; a clock that was set back starts a new
 * piece. Slopes are those of Theil and Sen over at most 64 means of blocks; their
 * uncertainty allows for residuals that hang together. Nothing is allocated, and
 * the time is proportional to the length. One machine is taken to feed the system.
 * A phase needs three readings to be seen in the pressure alone.
 * @{
 */

/** What the machine does in a phase.
 * @since 0.1
 */
enum freeair_pressure_log_kind {
  FREEAIR_PRESSURE_LOG_UNKNOWN = 0,  /**< The pressure does not tell; in a state channel, not known. */
  FREEAIR_PRESSURE_LOG_LOADED = 1,   /**< Air is delivered. */
  FREEAIR_PRESSURE_LOG_UNLOADED = 2, /**< Runs on without delivering. */
  FREEAIR_PRESSURE_LOG_STOPPED = 3,  /**< Stands. */
  FREEAIR_PRESSURE_LOG_IDLE = 4,     /**< Does not deliver; whether it runs on or stands is not known. */
  FREEAIR_PRESSURE_LOG_GAP = 5,      /**< No readings, or the clock was set back. */
  FREEAIR_PRESSURE_LOG_FROZEN = 6    /**< The readings stand still where they should move. */
};

/** How a log is read. Every field is optional.
 * @since 0.1
 */
typedef struct freeair_pressure_log_options {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags;       /**< Reserved, 0. */
  double gap_s;         /**< A longer step is a gap. @range{(0;1e7]} @default{5 median steps} */
  double frozen_s;      /**< Shorter standstill is not called frozen. @range{(0;1e7]}
                             @default{6 median steps, 60 s at least} */
  double band_pa;       /**< Least swing that a pressure switch makes. @range{(0;1e8]} @default{3 % of the highest
                             pressure, or 30 % of cut_out_pa - cut_in_pa when given; at least 8 times the noise or a
                             quarter of the range of the log, whichever is less} */
  double settle_s;      /**< Time after cut-out in which the gas cools. @range{[0;1e6]} @default{300} */
  double noise_pa;      /**< Standard deviation of the noise of one reading. @range{[0;1e7]} @default{from the log} */
  double cut_in_pa;     /**< Pressure, absolute, where it is set to load. @range{[1e3;1e8]} @default{from the log} */
  double cut_out_pa;    /**< The same to unload. @range{[1e3;1e8]} @default{from the log} */
} freeair_pressure_log_options;

/** Initial value of options: nothing given. */
#define FREEAIR_PRESSURE_LOG_OPTIONS_INIT \
  { (uint32_t)sizeof(freeair_pressure_log_options), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_PRESSURE_LOG_OPTIONS_BASELINE 64

/** One phase of a log. Where two phases meet, the instant is that at which straight lines through the pressures on
 * both sides cross. Slopes are NaN in gaps, frozen stretches and phases of one reading.
 * @since 0.1
 */
typedef struct freeair_pressure_log_phase {
  uint32_t struct_size;               /**< Size of this structure as the caller knows it. */
  uint32_t flags;                     /**< Reserved, 0. */
  double start_s;                     /**< Start, on the clock of the log. */
  double end_s;                       /**< End. */
  double start_uncertainty_s;         /**< Standard uncertainty of the start. */
  double end_uncertainty_s;           /**< Standard uncertainty of the end. */
  double p_start_pa;                  /**< Pressure at the start. */
  double p_end_pa;                    /**< Pressure at the end. */
  double slope_pa_s;                  /**< Median slope of the whole phase. */
  double slope_uncertainty_pa_s;      /**< Its standard uncertainty. */
  double early_slope_pa_s;            /**< Slope of the first half. */
  double late_slope_pa_s;             /**< Slope of the second half; of an idle phase, once the gas has settled. */
  double late_slope_uncertainty_pa_s; /**< Its standard uncertainty. */
  int32_t kind;                       /**< What the machine does. @choice{freeair_pressure_log_kind} */
  int32_t start_seen;                 /**< 1 when it began in the log, 0 at an edge, gap or standstill. */
  int32_t end_seen;                   /**< 1 when it ended in the log. */
  int32_t settled;                    /**< 1 when late_slope_pa_s is free of the cooling after cut-out. */
  uint32_t first;                     /**< Index of the first reading. */
  uint32_t count;                     /**< Readings from the first to the last, those left out included. */
  uint32_t left_out;                  /**< Readings among these that were left out. */
  uint32_t reserved;                  /**< 0. */
} freeair_pressure_log_phase;

/** Initial value of a phase. */
#define FREEAIR_PRESSURE_LOG_PHASE_INIT \
  { (uint32_t)sizeof(freeair_pressure_log_phase), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0, 0, \
   0, 0u, 0u, 0u, 0u}

/** Frozen size of the first release. */
#define FREEAIR_PRESSURE_LOG_PHASE_BASELINE 128

/** Initialises options to "nothing given".
 *
 * Model: assignment.
 *
 * @param[out] options     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    options is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pressure_log_options_init(freeair_pressure_log_options *options, size_t caller_size);

/** Initialises a phase.
 *
 * Model: assignment.
 *
 * @param[out] phase       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    phase is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pressure_log_phase_init(freeair_pressure_log_phase *phase, size_t caller_size);

/** Cuts a log into phases.
 *
 * Model: where the state is known, runs of it are the phases. Elsewhere a
 * pressure that turns by at least band_pa has turned: it rises while loaded; it
 * falls while idle, unless it turned well below the cut-out and falls faster than
 * other idle phases, rises again and again within the fall, or falls well below the
 * cut-in: then it is loaded and more is drawn than delivered. Less movement than that is loaded when the pressure
 * rises repeatedly faster than settled gas warms (2e-5 of it per second), else
 * unknown. A standstill of frozen_s is frozen when the state changed during it, or
 * it is the whole log of ten readings or more; and, where half the readings or
 * more differ from the one before and chance makes it as long less than once in a
 * million, also when the pressure moved on both sides of it.
 *
 * @param[in]  t_s            Times. @shape{n} @range{[-1e12;1e12]}
 * @param[in]  p_pa           Pressures, absolute; NaN where missing. @shape{n} @range{[0;1e8]}
 * @param[in]  state          What another channel says of the machine. @shape{n} @choice{freeair_pressure_log_kind}
 *                            @default{null: from the pressure alone}
 * @param[in]  n              Readings.
 * @param[in]  options        How to read the log.
 * @param[out] phases         The phases in order; struct_size of each is set by the caller. @shape{phases_capacity}
 * @param[in]  phases_stride  Bytes from one phase to the next. @stride{phases}
 * @param[in]  phases_capacity Phases that there is room for.
 * @param[out] n_phases        Phases found, also where there was no room for them.
 * @retval FREEAIR_OK             computed
 * @retval FREEAIR_WARN_TRUNCATED computed, but there was no room for every phase
 * @retval FREEAIR_ERR_NULL       a required pointer is null
 * @retval FREEAIR_ERR_VERSION    a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN     a field, a time, a pressure or a state is outside its range, cut_in_pa is not below
 *                                cut_out_pa, or there are more than 4294967295 readings
 * @retval FREEAIR_ERR_DATA       fewer than 3 usable readings, or more than a quarter are out of order
 * @source{H. Theil, A rank-invariant method of linear and polynomial regression analysis, 1950; P. K. Sen, Estimates of
 * the regression coefficient based on Kendall's tau, 1968 (slopes); common practice (phases)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pressure_log_segment(const double *t_s, const double *p_pa, const int32_t *state, size_t n,
                                                 const freeair_pressure_log_options *options,
                                                 freeair_pressure_log_phase *phases, size_t phases_stride,
                                                 size_t phases_capacity, size_t *n_phases);

/** State from the motor current.
 *
 * Model: STOPPED below the first level, LOADED from the second up, UNLOADED
 * between them; UNKNOWN where the current is NaN, and between the levels and above
 * them when the second is not given.
 *
 * @param[in]  current_a       Current; NaN where missing. @shape{n} @range{[0;1e6]}
 * @param[in]  n               Readings.
 * @param[in]  stopped_below_a Below this the motor stands. @range{(0;1e6]}
 * @param[in]  loaded_above_a  From this up the machine is loaded. @range{(0;1e6]} @default{not known}
 * @param[out] state           State of each reading. @shape{n} @choice{freeair_pressure_log_kind}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN a level or a current is outside its range, or the levels are not in order
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pressure_log_state_from_current(const double *current_a, size_t n, double stopped_below_a,
                                                            double loaded_above_a, int32_t *state);

/** Levels that part the motor current of a log into stopped, unloaded and loaded.
 *
 * Model: stopped below 15 % of the current that 5 % of the readings exceed;
 * above that the level that leaves the least variance within two classes (Otsu),
 * taken when their means lie more than 4 standard deviations within the classes
 * and a fifth apart, else NaN: then only one running level was seen.
 *
 * @param[in]  current_a       Current; NaN where missing. @shape{n} @range{[0;1e6]}
 * @param[in]  n               Readings.
 * @param[out] stopped_below_a Below this the motor stands.
 * @param[out] loaded_above_a  From this up the machine is loaded; NaN when that cannot be told.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN a current is outside its range
 * @retval FREEAIR_ERR_DATA   fewer than 10 readings, or no current at all
 * @source{N. Otsu, A threshold selection method from gray-level histograms, IEEE Trans. SMC 9 (1979) 62}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pressure_log_current_levels(const double *current_a, size_t n, double *stopped_below_a,
                                                        double *loaded_above_a);

/** State from a switch or contact.
 *
 * Model: one state above a half, another below; UNKNOWN where the signal is NaN.
 * A solenoid that loads: LOADED and IDLE; a valve that shuts the intake: IDLE and
 * LOADED; a motor contactor: UNKNOWN and STOPPED.
 *
 * @param[in]  signal     Signal, 0 or 1. @shape{n} @range{[-1e6;1e6]}
 * @param[in]  n          Readings.
 * @param[in]  when_high  State above a half. @choice{freeair_pressure_log_kind}
 * @param[in]  when_low   State below. @choice{freeair_pressure_log_kind}
 * @param[out] state      State of each reading. @shape{n} @choice{freeair_pressure_log_kind}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN a signal is outside its range, or a state is not one of UNKNOWN to IDLE
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pressure_log_state_from_switch(const double *signal, size_t n, int32_t when_high,
                                                           int32_t when_low, int32_t *state);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
