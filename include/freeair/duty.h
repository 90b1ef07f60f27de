/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DUTY_H
#define FREEAIR_DUTY_H

#include <freeair/pressure_log.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup duty Duty
 * What the phases of a pressure log add up to: the loaded share of the time, the
 * cycles, where the machine cuts in and out, how fast the pressure rises and
 * falls, and what share of the capacity leaks or is drawn.
 *
 * From one cut-in to the next the receiver ends as it began, warm or cold, so
 * that what was delivered while loaded was lost over the whole cycle: the loaded
 * share of complete cycles is the share of the capacity, free of the heating of
 * the gas that bends the slopes. After cut-out the gas cools for minutes, and that
 * looks like a leak; the slope of idle phases is taken once it has settled.
 *
 * Leaks of a few percent of the capacity are ordinary (common practice). Judge the
 * share with its uncertainty by freeair_verdict_decide(). For two times read off a
 * watch there is freeair_leakage_share_from_cycle().
 * @{
 */

/** What a summary found, as bits.
 * @since 0.1
 */
enum freeair_duty_finding {
  FREEAIR_DUTY_NEVER_CUTS_OUT = 1, /**< Loaded throughout and not rising enough to cut out: it falls short of what is
                                        drawn. */
  FREEAIR_DUTY_NEVER_LOADS = 2,    /**< No load in the whole log. */
  FREEAIR_DUTY_HAS_FROZEN = 4,     /**< Readings stand still where they should move: a frozen logger. */
  FREEAIR_DUTY_HAS_GAPS = 8,       /**< Some time has no readings. */
  FREEAIR_DUTY_LEFT_OUT = 16,      /**< Readings were left out: missing, or their times out of order. */
  FREEAIR_DUTY_FEW_CYCLES = 32,    /**< Fewer than three complete cycles: means over them say little. */
  FREEAIR_DUTY_AMBIGUOUS = 64,     /**< Some time the pressure does not tell whether the machine is loaded. */
  FREEAIR_DUTY_UNSETTLED = 128,    /**< No idle phase outlasts the cooling of the gas: no slope of leaks. */
  FREEAIR_DUTY_SINKS_LOADED = 256  /**< The pressure falls in a loaded phase: more is drawn than delivered. */
};

/** What a log adds up to. A value that the log does not tell is NaN. Uncertainties are standard uncertainties.
 * @since 0.1
 */
typedef struct freeair_duty_summary {
  uint32_t struct_size;            /**< Size of this structure as the caller knows it. */
  uint32_t flags;                  /**< Reserved, 0. */
  double observed_s;               /**< Time with readings. */
  double loaded_s;                 /**< Time loaded. */
  double unloaded_s;               /**< Time run on unloaded. */
  double stopped_s;                /**< Time stopped. */
  double idle_s;                   /**< Time not loaded, running on or stopped. */
  double unknown_s;                /**< Time of which the pressure does not tell. */
  double missing_s;                /**< Time in gaps and standstills. */
  double duty;                     /**< Loaded share of the time that is told. */
  double duty_uncertainty;         /**< Of duty. */
  double cycle_s;                  /**< Mean time from one cut-in to the next. */
  double cycle_uncertainty_s;      /**< Of cycle_s. */
  double cut_in_pa;                /**< Median pressure at which it cuts in. */
  double cut_in_uncertainty_pa;    /**< Of cut_in_pa. */
  double cut_out_pa;               /**< Median pressure at which it cuts out. */
  double cut_out_uncertainty_pa;   /**< Of cut_out_pa. */
  double load_slope_pa_s;          /**< Median slope while loaded. */
  double load_slope_uncertainty_pa_s; /**< Of load_slope_pa_s. */
  double idle_slope_pa_s;             /**< Median slope while idle, once the gas has settled. */
  double idle_slope_uncertainty_pa_s; /**< Of idle_slope_pa_s. */
  double cooling_pa;                  /**< Median fall after cut-out that is not lost air but cooling gas. */
  double draw_share;                  /**< Share of the capacity that leaks or is drawn. */
  double draw_share_uncertainty;      /**< Of draw_share. */
  double slope_share;                 /**< The same from the slopes alone, to compare. */
  double slope_share_uncertainty;     /**< Of slope_share. */
  int32_t n_loads;                    /**< Loaded phases. */
  int32_t n_cycles;                   /**< Complete cycles. */
  uint32_t findings;                  /**< Bits of freeair_duty_finding. */
  uint32_t left_out;                  /**< Readings that were left out. */
} freeair_duty_summary;

/** Initial value of a summary. */
#define FREEAIR_DUTY_SUMMARY_INIT \
  { (uint32_t)sizeof(freeair_duty_summary), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0, 0u, 0u}

/** Frozen size of the first release. */
#define FREEAIR_DUTY_SUMMARY_BASELINE 216

/** Initialises a summary.
 *
 * Model: assignment.
 *
 * @param[out] summary     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    summary is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_duty_summary_init(freeair_duty_summary *summary, size_t caller_size);

/** Sums up the phases of a log.
 *
 * Model: draw_share = sum of loaded times / sum of cycle times over complete
 * cycles; its uncertainty is the scatter from cycle to cycle and that of the
 * instants of loading and unloading, whose errors are taken as alike in all. Without a complete
 * cycle it is slope_share = s_i / (s_l / 1.25 + s_i), s_l the slope loaded, s_i
 * the fall idle; the gas heats while it is loaded, and 1.25 +- 0.15 is how much
 * steeper that makes s_l (lumped model of the receiver, band from cut-in to
 * cut-out). Where the machine never cuts out it is 1, without an uncertainty.
 * Never cutting out: loaded for 95 % of at least five minutes, no cut-out seen,
 * and the rise over a time as long as the last loaded phase, at 95 % confidence,
 * less than what is missing to cut_out_pa, or band_pa when that is not given.
 *
 * @param[in]  phases        Phases of one log, in order. @shape{n}
 * @param[in]  phases_stride Bytes from one phase to the next. @stride{phases}
 * @param[in]  n             Phases.
 * @param[in]  options       Those with which the log was cut: cut_out_pa and band_pa (3 % of the highest pressure when
 *                           not given) are used.
 * @param[out] summary       What they add up to.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_VERSION a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN  a field of options is outside its range, or a phase has an unknown kind
 * @retval FREEAIR_ERR_DATA    there is no phase
 * @source{common practice: leakage = capacity T / (T + t), T loaded, t unloaded, no use; algebra}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_duty_from_phases(const freeair_pressure_log_phase *phases, size_t phases_stride, size_t n,
                                             const freeair_pressure_log_options *options,
                                             freeair_duty_summary *summary);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
