/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_INFERENCE_H
#define FREEAIR_INFERENCE_H

#include <freeair/diagnosis.h>
#include <freeair/machine.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup inference Diagnosis on the physical model
 * The same answer as freeair_diagnosis_rank, with the readings weighed by the
 * crank-angle model of the described machine instead of a table: what each fault
 * of each size would show on this machine here today, with the scatter from unit
 * to unit and the limits of the model carried along: a bore, a stroke, a speed and
 * a receiver will do.
 *
 * A diagnosis advises; it never replaces the nameplate, the manual, local codes
 * or licensed practice. Show the cautions of every cause and check. @{ */

/** How the readings were taken, and what air is worth.
 * @since 0.1
 */
typedef struct freeair_inference_visit {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags;       /**< Reserved, 0. */
  double receiver_pa; /**< Receiver pressure, absolute, at which interstage pressure, temperatures, speeds and power
                           were read. @range{(0;1e8]} @default{cut_out_pa of the machine} */
  double from_pa; /**< Gauge reading as the run from empty starts. @range{(0;1e8]} @default{log's at 0, or ambient} */
  double draw_down_s; /**< Duration of drawing down to cut-in before that run. @range{[1;1e5]} @default{60} */
  double u_log_s; /**< Standard uncertainty of a time of the log. @range{[0;1e5]} @default{0.5} */
  double u_log_pa; /**< The same of a pressure. @range{[0;1e7]} @default{0.3 % of gauge cut-out} */
  double motor_efficiency; /**< Shaft power over electrical power. @range{(0;1]} @default{0.83} */
  double air_m3_s; /**< Free air that is used, as a mean over time. @range{[0;1000]} @default{unknown} */
  double energy_price; /**< Price of a joule of electrical energy in the caller's money. @unit{any} @range{[0;1]}
                            @default{unknown} */
} freeair_inference_visit;

/** Initial value: nothing given. */
#define FREEAIR_INFERENCE_VISIT_INIT \
  { (uint32_t)sizeof(freeair_inference_visit), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_INFERENCE_VISIT_BASELINE 72

/** What is not known of a sound unit: relative standard uncertainties of description and model.
 * @since 0.1
 */
typedef struct freeair_inference_scatter {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags;       /**< Reserved, 0. */
  double rating; /**< Rated delivery, when the machine has one. @range{[0;1]} @default{0.04} */
  double clearance; /**< Clearances of each stage. @range{[0;1]} @default{0.17} */
  double valves; /**< Valve areas of each stage. @range{[0;1]} @default{0.14} */
  double valve_lift; /**< Pressure differences that open the valves. @range{[0;1]} @default{0.43} */
  double wall_heat; /**< Heat transfer in the cylinders. @range{[0;1]} @default{0.38} */
  double cooler_ua; /**< Heat transfer of the intercooler. @range{[0;1]} @default{0.28} */
  double suction_heating; /**< Heating of the intake air. @range{[0;1]} @default{0.38} */
  double filter; /**< Area of the clean filter. @range{[0;1]} @default{0.17} */
  double rings; /**< Leakage past sound rings. @range{[0;1]} @default{0.43} */
  double phase_rad; /**< Angle between the stages, for all that sets the flow there. @range{[0;1]} @default{0.22} */
  double delivery; /**< The model's delivery as a whole. @range{[0;1]} @default{0.022} */
  double delivery_slope; /**< Its fall from ambient to cut-out pressure. @range{[0;1]} @default{0.045} */
  double interstage; /**< The model's gauge interstage pressure. @range{[0;1]} @default{0.055} */
  double temperature_k; /**< Discharge temperatures; half of it is shared by all. @range{[0;100]} @default{8.5} */
  double receiver; /**< Volume of the receiver. @range{[0;1]} @default{0.014} */
  double receiver_ua; /**< Heat transfer of the receiver. @range{[0;1]} @default{0.38} */
  double receiver_wall; /**< Heat capacity of its wall. @range{[0;1]} @default{0.22} */
  double draw_down; /**< Duration of the drawing down. @range{[0;1]} @default{0.43} */
  double gauge; /**< Error of the gauge over gauge cut-out. @range{[0;1]} @default{0.0055} */
  double motor; /**< Motor speed under load. @range{[0;1]} @default{0.01} */
  double drive; /**< Pump speed over motor speed. @range{[0;1]} @default{0.009} */
  double motor_efficiency; /**< Electrical over shaft power. @range{[0;1]} @default{0.07} */
} freeair_inference_scatter;

/** Initial value: defaults. */
#define FREEAIR_INFERENCE_SCATTER_INIT \
  { (uint32_t)sizeof(freeair_inference_scatter), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_INFERENCE_SCATTER_BASELINE 184

/** What a cause does, if it is present: the row of the same number as that of the causes.
 * @since 0.1
 */
typedef struct freeair_inference_effect {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags;       /**< Reserved, 0. */
  double severity;      /**< Severity as in freeair_fault_apply, posterior median; NaN where there is none. */
  double severity_low;  /**< At least that much with probability 0.95. */
  double severity_high; /**< At most that much with probability 0.95. */
  double lost;          /**< Share of the delivery lost or taken, posterior median. */
  double lost_low;      /**< At least that much with probability 0.95. */
  double lost_high;     /**< At most that much with probability 0.95. */
  double lost_m3_s;     /**< Free air lost at the median. */
  double energy_j_m3;   /**< Electrical energy for a cubic metre of free air, with the cause at its median. */
  double sound_j_m3;    /**< The same of the sound machine. */
  double waste_w;       /**< Mean electrical power wasted at air_m3_s, at most that of running on; NaN if unknown. */
  double cost;          /**< Its price for each second, in the caller's money; NaN when unknown. @unit{any} */
  int32_t cause;        /**< Which. @choice{freeair_evidence_cause} */
  int32_t fault;        /**< The fault that the severity is of. @choice{freeair_fault} */
} freeair_inference_effect;

/** Initial value of a row. */
#define FREEAIR_INFERENCE_EFFECT_INIT \
  {(uint32_t)sizeof(freeair_inference_effect), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_INFERENCE_EFFECT_BASELINE 104

/** Initialises a visit to "nothing given".
 *
 * Model: assignment.
 *
 * @param[out] visit       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    visit is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_inference_visit_init(freeair_inference_visit *visit, size_t caller_size);

/** Initialises the scatter to its defaults.
 *
 * Model: assignment.
 *
 * @param[out] scatter     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    scatter is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_inference_scatter_init(freeair_inference_scatter *scatter, size_t caller_size);

/** Initialises a row of effects.
 *
 * Model: assignment.
 *
 * @param[out] effect      Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    effect is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_inference_effect_init(freeair_inference_effect *effect, size_t caller_size);

/** Ranks the causes of what was found on a described machine.
 *
 * Model: hypotheses are a sound machine, each cause alone, each pair of faults,
 * and something else, with the priors and answers of freeair_diagnosis_rank. A
 * fault of size y (prior y exp(-y/size), a tenth of it even over severities) shows what
 * freeair_fault_apply and the crank-angle model make of it: operating points at
 * four receiver pressures and up to five severities are interpolated, and the
 * receiver is run again for each size. The readings together have Student's t
 * distribution of 20 degrees of freedom about that; its covariance is of the
 * noise, of the scatter through the model's derivatives about the sound machine,
 * and of a relative error of the shift that the fault makes, which rates share
 * along the run. A machine with rated_delivery_m3_s is one that meets its rating
 * within its tolerance. One reading and one answer in fifty is wrong. Shifts of two
 * faults add. Readings outside the model move as freeair_likelihood_reading says.
 *
 * Level-off replaces the times that were never reached. The log belongs to the
 * run from empty; its first time counts from the start of the run. When the
 * nameplate has a rating, call freeair_rating_complete first.
 *
 * Causes, reasons, findings, verdict and groups are as in freeair_diagnosis_rank;
 * findings of the log and of several interstage readings are those of the
 * delivery and of the first; effects come in the order of the causes. Size,
 * severity and predicted values are those at the posterior median. Uses 350 kB of the stack.
 *
 * @param[in]  machine          The machine, sound as described. What the description holds of leaks is no fault.
 * @param[in]  site             The site, here and today; supply_v is not used.
 * @param[in]  subject          Drive, supply and service valve; what it says of stages and heads is not used.
 * @param[in]  visit            How the readings were taken.
 * @param[in]  scatter          What is not known of a sound unit.
 * @param[in]  expected         Expected voltages, current, capacitances, belt deflection and duty; no more is used.
 * @param[in]  found            What was read.
 * @param[in]  log_t_s          Times of a log of the run from empty. @shape{n_log} @range{[0;1e7]} @default{none}
 * @param[in]  log_p_pa         Gauge readings at these times. @shape{n_log} @range{(0;1e8]} @default{none}
 * @param[in]  n_log            Length of the log; 0 for none. @range{[0;1e6]}
 * @param[in]  interstage_at_pa Receiver pressures. @shape{n_interstage} @range{(0;1e8]} @default{none}
 * @param[in]  interstage_pa    Interstage pressures there. @shape{n_interstage} @range{(0;1e8]} @default{none}
 * @param[in]  n_interstage     Number of these; 0 for none, the first six count. @range{[0;1000]}
 * @param[in]  observation      Codes of freeair_evidence_observation. @shape{n_observations} @default{none}
 * @param[in]  answer           Answers of freeair_evidence_answer. @shape{n_observations} @default{none}
 * @param[in]  n_observations   Number of observations. @range{[0;1000]}
 * @param[in]  prior            Prior of each cause by its code; NaN for its default. @shape{n_prior}
 *                              @default{freeair_likelihood_prior}
 * @param[in]  n_prior          Number of priors; 0 for the defaults. @range{[0;1000]}
 * @param[in]  options          Options.
 * @param[out] causes           Causes. @shape{causes_capacity}
 * @param[in]  causes_stride    Bytes from one row to the next. @stride{causes} @range{[0;65536]}
 * @param[in]  causes_capacity  Rows there is room for. @range{[0;1e6]}
 * @param[out] n_causes         Number of causes.
 * @param[out] effects          What each cause does. @shape{effects_capacity}
 * @param[in]  effects_stride   Bytes from one row to the next. @stride{effects} @range{[0;65536]}
 * @param[in]  effects_capacity Rows there is room for. @range{[0;1e6]}
 * @param[out] n_effects        Number of effects: that of the causes.
 * @param[out] reasons          Reasons. @shape{reasons_capacity}
 * @param[in]  reasons_stride   Bytes from one row to the next. @stride{reasons} @range{[0;65536]}
 * @param[in]  reasons_capacity Rows there is room for. @range{[0;1e6]}
 * @param[out] n_reasons        Number of reasons.
 * @param[out] findings         One for each reading. @shape{findings_capacity}
 * @param[in]  findings_stride  Bytes from one row to the next. @stride{findings} @range{[0;65536]}
 * @param[in]  findings_capacity Rows there is room for. @range{[0;1e6]}
 * @param[out] n_findings       Number of readings.
 * @param[out] summary          Summary.
 * @retval FREEAIR_OK                 ranked
 * @retval FREEAIR_WARN_INCONSISTENT  ranked, but readings contradict one another: see the findings
 * @retval FREEAIR_WARN_TRUNCATED     ranked, but an array was too short for every row
 * @retval FREEAIR_ERR_NULL           a pointer is null, other than to an array of no elements
 * @retval FREEAIR_ERR_VERSION        a structure or row has an unknown size, or a row is longer than its stride
 * @retval FREEAIR_ERR_DOMAIN         an input is out of range, from_pa is not below cut-in, an answer is no answer, or
 *                                    one observation has both
 * @retval FREEAIR_ERR_NOT_FOUND      an observation is not a known code, or n_prior goes beyond the causes
 * @retval FREEAIR_ERR_NO_SOLUTION    the priors leave no cause that this machine can have, or it delivers nothing
 * @retval FREEAIR_ERR_NO_CONVERGENCE an operating point was not found
 * @source{Gelman et al., Bayesian Data Analysis, 3rd edition, chapters 1 and 4; rates and scatter from common practice}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_inference_rank(
    const freeair_machine *machine, const freeair_machine_site *site, const freeair_diagnosis_subject *subject,
    const freeair_inference_visit *visit, const freeair_inference_scatter *scatter,
    const freeair_evidence_readings *expected, const freeair_evidence_readings *found, const double *log_t_s,
    const double *log_p_pa, size_t n_log, const double *interstage_at_pa, const double *interstage_pa,
    size_t n_interstage, const int32_t *observation, const int32_t *answer, size_t n_observations,
    const double *prior, size_t n_prior, const freeair_diagnosis_options *options, freeair_diagnosis_cause *causes,
    size_t causes_stride, size_t causes_capacity, size_t *n_causes, freeair_inference_effect *effects,
    size_t effects_stride, size_t effects_capacity, size_t *n_effects, freeair_diagnosis_reason *reasons,
    size_t reasons_stride, size_t reasons_capacity, size_t *n_reasons, freeair_diagnosis_finding *findings,
    size_t findings_stride, size_t findings_capacity, size_t *n_findings, freeair_diagnosis_summary *summary);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
