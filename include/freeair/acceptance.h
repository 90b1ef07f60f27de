/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_ACCEPTANCE_H
#define FREEAIR_ACCEPTANCE_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup acceptance Acceptance
 * Whether a compressor is what was ordered: measured volume flow and specific energy,
 * corrected to the conditions of the contract, against the guarantee with its tolerance
 * and with the uncertainty of the measurement. The contract and the standard it names
 * decide; the tolerances here are those of small packaged compressors as data sheets
 * quote them, from memory: check them against the standard before relying on them.
 * @{
 */

/** A test and a contract. What is not given of the contract is as in the test.
 * @since 0.1
 */
typedef struct freeair_acceptance_test {
  uint32_t struct_size;       /**< Size of this structure as the caller knows it. */
  uint32_t flags;             /**< Reserved, 0. */
  double flow_m3_s;           /**< Measured volume flow, at the inlet state of the test. @range{[1e-6;1e4]} */
  double power_w;             /**< Measured power. @range{[0;1e9]} */
  double speed_rev_s;         /**< Speed in the test. @range{[0.1;1000]} @default{not corrected for} */
  double inlet_pa;            /**< Inlet pressure in the test, absolute. @range{[1e4;1e7]} */
  double inlet_k;             /**< Inlet temperature in the test. @range{[150;500]} @default{293.15} */
  double discharge_pa;        /**< Discharge pressure in the test, absolute. @range{[1e4;1e8]} */
  double coolant_k;           /**< Coolant temperature in the test. @range{[150;500]} @default{inlet_k} */
  double approach_k;          /**< Air behind the cooler less coolant at its inlet. @range{[0;200]} @default{10} */
  double contract_speed_rev_s; /**< Speed of the contract. @range{[0.1;1000]} @default{speed_rev_s} */
  double contract_inlet_pa;   /**< Inlet pressure of the contract. @range{[1e4;1e7]} @default{inlet_pa} */
  double contract_inlet_k;    /**< Inlet temperature of the contract. @range{[150;500]} @default{inlet_k} */
  double contract_discharge_pa; /**< Discharge pressure of the contract. @range{[1e4;1e8]} @default{discharge_pa} */
  double contract_coolant_k;  /**< Coolant temperature of the contract. @range{[150;500]} @default{coolant_k} */
  double clearance;           /**< Clearance of the first stage, a fraction of its swept volume; 0 for machines that
                                   have none. @range{[0;0.5]} @default{0} */
  double exponent;            /**< Exponent of compression and re-expansion. @range{[1;2]} @default{1.4} */
} freeair_acceptance_test;

/** Initial value of a test: everything not given. */
#define FREEAIR_ACCEPTANCE_TEST_INIT \
  {(uint32_t)sizeof(freeair_acceptance_test), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN}
/** Frozen size of the first release. */
#define FREEAIR_ACCEPTANCE_TEST_BASELINE 128

/** Initialises a test.
 *
 * Model: assignment.
 *
 * @param[out] test        Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    test is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_acceptance_test_init(freeair_acceptance_test *test, size_t caller_size);

/** Tolerances of a guarantee by the size of the compressor.
 *
 * Model: table of relative tolerances: flow +-7, 6, 5, 4 %, specific energy +-8, 7, 6, 5 %, for a flow below 0.5, below
 * 1.5, up to 15 and above 15 m3/min.
 *
 * @param[in]  flow_m3_s       Guaranteed volume flow. @range{[0;1e4]}
 * @param[out] flow_tolerance  Relative tolerance of the volume flow.
 * @param[out] energy_tolerance Relative tolerance of the specific energy.
 * @retval FREEAIR_OK         found
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN flow_m3_s is outside its range
 * @source{ISO 1217:2009, Displacement compressors - Acceptance tests, Annex C, as quoted on data sheets (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_acceptance_tolerances(double flow_m3_s, double *flow_tolerance,
                                                  double *energy_tolerance);

/** Measured flow and power at the conditions of the contract.
 *
 * Model: flow in proportion to the speed and to the volumetric efficiency 1 + c - c r^(1/(n N)) of the first of N
 * equal stages, r the whole pressure ratio; power in proportion to that flow, to p1 n/(n-1) (r^((n-1)/(n N)) - 1) and
 * to the mean over the stages of T_i/T_1, T_i = coolant + approach behind each cooler. The standard's factors serve
 * the same ends; the contract may prescribe them.
 *
 * @param[in]  test          Test and contract.
 * @param[in]  stages        Number of stages, with coolers between them. @range{[1;10]}
 * @param[out] flow_m3_s     Volume flow, at the inlet state of the contract.
 * @param[out] power_w       Power.
 * @param[out] specific_j_m3 Specific energy, power over flow.
 * @param[out] flow_factor   Flow over measured flow.
 * @param[out] power_factor  Power over measured power.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_WARN_LIMIT      computed, but a factor is more than a tenth off 1: test nearer the contract
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      a field is outside its range, or no pressure rise
 * @retval FREEAIR_ERR_VERSION     test has an unknown size or content
 * @retval FREEAIR_ERR_NO_SOLUTION nothing is delivered at one of the pressures
 * @source{algebra: similarity of displacement compressors; the purpose of ISO 1217:2009, correction to contract conditions}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_acceptance_correct(const freeair_acceptance_test *test, int32_t stages,
                                               double *flow_m3_s, double *power_w, double *specific_j_m3,
                                               double *flow_factor, double *power_factor);

/** Whether a volume flow keeps its guarantee.
 *
 * Model: limit = guarantee (1 - tolerance); the decision is that of freeair_verdict_decide with this lower limit.
 *
 * @param[in]  flow_m3_s        Flow, measured and corrected. @range{[0;1e4]}
 * @param[in]  uncertainty_m3_s Its standard uncertainty. @range{[0;1e4]}
 * @param[in]  guarantee_m3_s   Guaranteed flow. @range{[1e-6;1e4]}
 * @param[in]  tolerance        Relative tolerance; 0 for none. @range{[0;0.5]}
 * @param[in]  confidence       Probability required of a firm verdict. @range{(0.5;1)}
 * @param[out] verdict          The decision. @choice{freeair_verdict}
 * @param[out] deviation        Flow over guarantee, less 1.
 * @param[out] probability      Probability that the guarantee is kept.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ISO 1217:2009, comparison with specified values (from memory); JCGM 106:2012, 8.3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_acceptance_flow_verdict(double flow_m3_s, double uncertainty_m3_s, double guarantee_m3_s,
                                                    double tolerance, double confidence, int32_t *verdict,
                                                    double *deviation, double *probability);

/** Whether a specific energy keeps its guarantee.
 *
 * Model: limit = guarantee (1 + tolerance); the decision is that of freeair_verdict_decide with this upper limit.
 *
 * @param[in]  specific_j_m3    Specific energy, measured and corrected. @range{[0;1e9]}
 * @param[in]  uncertainty_j_m3 Its standard uncertainty. @range{[0;1e9]}
 * @param[in]  guarantee_j_m3   Guaranteed specific energy. @range{[1;1e9]}
 * @param[in]  tolerance        Relative tolerance; 0 for none. @range{[0;0.5]}
 * @param[in]  confidence       Probability required of a firm verdict. @range{(0.5;1)}
 * @param[out] verdict          The decision. @choice{freeair_verdict}
 * @param[out] deviation        Specific energy over guarantee, less 1.
 * @param[out] probability      Probability that the guarantee is kept.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{ISO 1217:2009, comparison with specified values (from memory); JCGM 106:2012, 8.3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_acceptance_energy_verdict(double specific_j_m3, double uncertainty_j_m3,
                                                      double guarantee_j_m3, double tolerance, double confidence,
                                                      int32_t *verdict, double *deviation, double *probability);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
