/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CAPACITOR_H
#define FREEAIR_CAPACITOR_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup capacitor Capacitor
 * Run and start capacitors of single-phase motors: the value found, on the bench or on the running motor, against the
 * value printed; and how a charged one is made safe.
 *
 * A run capacitor is printed with a value and a tolerance, a start capacitor with a range such as 43-53 uF. Voltages
 * are effective values, except where a charged capacitor is discharged: that starts from the peak, 1.414 times as much.
 * @{
 */

/** Tolerance classes as printed on capacitors.
 * @since 0.1
 */
enum freeair_capacitor_tolerance {
  FREEAIR_CAPACITOR_RUN_5 = 1,     /**< Run capacitor, plus or minus 5 percent (letter J). */
  FREEAIR_CAPACITOR_RUN_6 = 2,     /**< Run capacitor, plus or minus 6 percent. */
  FREEAIR_CAPACITOR_RUN_10 = 3,    /**< Run capacitor, plus or minus 10 percent (letter K). */
  FREEAIR_CAPACITOR_RUN_15 = 4,    /**< Run capacitor, plus or minus 15 percent. */
  FREEAIR_CAPACITOR_START_20 = 5,  /**< Start capacitor, minus 0 to plus 20 percent of the lower printed value. */
  FREEAIR_CAPACITOR_START_23 = 6   /**< Start capacitor, minus 0 to plus 23 percent, as 43-53 uF is. */
};

/** Current that a sound capacitor draws.
 *
 * Model: I = 2 pi f C U, losses neglected.
 *
 * @param[in]  capacitance_f Capacitance. @range{[0;1]}
 * @param[in]  voltage_v     Voltage across the capacitor. @range{[0;1000000]}
 * @param[in]  frequency_hz  Frequency. @range{[0.1;100000]}
 * @param[out] current_a     Current through it.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   current_a is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_current(double capacitance_f, double voltage_v, double frequency_hz,
                                              double *current_a);

/** Capacitance from current and voltage on the running motor, with uncertainty.
 *
 * Model: C = I / (2 pi f U), losses neglected; u(C) = C sqrt((u(I)/I)^2 + (u(U)/U)^2). Clamp the wire of the capacitor
 * (the start winding), not the line, and measure the voltage across the capacitor itself. Distorted currents read high.
 * At 60 Hz this is the trade's C in uF = 2652 I / U.
 *
 * @param[in]  current_a             Current through the capacitor. @range{[0.000001;1000000]}
 * @param[in]  current_uncertainty_a Standard uncertainty of the current. @range{[0;1000000]}
 * @param[in]  voltage_v             Voltage across the capacitor. @range{[0.001;1000000]}
 * @param[in]  voltage_uncertainty_v Standard uncertainty of the voltage. @range{[0;1000000]}
 * @param[in]  frequency_hz          Supply frequency. @range{[0.1;100000]}
 * @param[out] capacitance_f         Capacitance.
 * @param[out] uncertainty_f         Standard uncertainty of the capacitance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition; uncertainty by JCGM 100:2008, 5.1.6}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @caution{FREEAIR_CAUTION_CAPACITOR}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_from_current(double current_a, double current_uncertainty_a, double voltage_v,
                                                   double voltage_uncertainty_v, double frequency_hz,
                                                   double *capacitance_f, double *uncertainty_f);

/** Standard uncertainty of a capacitance reading from the meter's data sheet.
 *
 * Model: u = (accuracy reading + counts resolution) / sqrt(3), limits of error as a rectangular distribution.
 *
 * @param[in]  reading_f     What the meter shows. @range{[0;1]}
 * @param[in]  accuracy      Limit of error as a fraction of the reading. @range{[0;1]}
 * @param[in]  counts        Limit of error in units of the last digit. @range{[0;10000]}
 * @param[in]  resolution_f  Value of one unit of the last digit. @range{[0;0.001]}
 * @param[out] uncertainty_f Standard uncertainty.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   uncertainty_f is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.7}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_uncertainty_from_meter(double reading_f, double accuracy, double counts,
                                                             double resolution_f, double *uncertainty_f);

/** Limits of a sound capacitor from its printed value and tolerance class.
 *
 * Model: rated value times one less and one plus the tolerance. Where a range is printed (43-53 uF) it is the limits.
 *
 * @param[in]  rated_f         Printed value; of a start capacitor the lower one. @range{[0.000000000001;1]}
 * @param[in]  tolerance_class Tolerance class. @choice{freeair_capacitor_tolerance}
 * @param[out] minimum_f       Least sound value.
 * @param[out] maximum_f       Greatest sound value.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_DOMAIN    rated_f is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND not a tolerance class
 * @source{IEC 60252-1:2010, preferred tolerances 5, 10, 15 percent; EIA-463, -0 +20 percent; 6 and 23 percent: common practice; all from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_limits(double rated_f, int32_t tolerance_class, double *minimum_f,
                                             double *maximum_f);

/** Whether a capacitor is within its limits, as a guarded decision.
 *
 * Model: the decision is that of freeair_verdict_decide on the measured value and its standard uncertainty. FAILS with
 * probability_low near 1 is a weak capacitor.
 *
 * @param[in]  measured_f      Value found. @range{[0;1]}
 * @param[in]  uncertainty_f   Standard uncertainty of it. @range{[0;1]}
 * @param[in]  minimum_f       Least sound value. @range{[0;1]}
 * @param[in]  maximum_f       Greatest sound value, above minimum_f. @range{(0;1]}
 * @param[in]  confidence      Probability required of a firm verdict. @range{(0.5;1)}
 * @param[out] verdict         The decision. @choice{freeair_verdict}
 * @param[out] probability_in  Probability that the value is within its limits.
 * @param[out] probability_low Probability that it is below the least sound value.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or maximum_f is not above minimum_f
 * @source{JCGM 106:2012, 8.3}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_CAPACITOR}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_verdict(double measured_f, double uncertainty_f, double minimum_f,
                                              double maximum_f, double confidence, int32_t *verdict,
                                              double *probability_in, double *probability_low);

/** Time for a capacitor to discharge through a resistor.
 *
 * Model: t = R C ln(U_0 / U). Dielectric absorption brings some voltage back later: prove dead, keep shorted.
 *
 * @param[in]  capacitance_f Capacitance. @range{[0.000000000001;1]}
 * @param[in]  r_ohm         Resistance. @range{[0.000001;1000000000000]}
 * @param[in]  start_v       Voltage at the start; the peak of an alternating voltage. @range{[0.000001;1000000]}
 * @param[in]  safe_v        Voltage at the end, not above start_v. @range{[0.000001;1000000]}
 * @param[out] time_s        Time.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        time_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION safe_v is above start_v
 * @source{definition}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_CAPACITOR}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_discharge_time(double capacitance_f, double r_ohm, double start_v, double safe_v,
                                                     double *time_s);

/** Voltage left on a capacitor after a time.
 *
 * Model: U = U_0 exp(-t / (R C)).
 *
 * @param[in]  capacitance_f Capacitance. @range{[0.000000000001;1]}
 * @param[in]  r_ohm         Resistance. @range{[0.000001;1000000000000]}
 * @param[in]  start_v       Voltage at the start; the peak of an alternating voltage. @range{[0;1000000]}
 * @param[in]  time_s        Time since. @range{[0;1000000000]}
 * @param[out] residual_v    Voltage left.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   residual_v is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @caution{FREEAIR_CAUTION_CAPACITOR}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_residual_voltage(double capacitance_f, double r_ohm, double start_v,
                                                       double time_s, double *residual_v);

/** Bleeder resistor that discharges a capacitor in a time, and what it burns.
 *
 * Model: R = t / (C ln(U_0 / U)); power U_0^2 / (2 R) while the capacitor works on alternating voltage of peak U_0.
 * Rules ask 50 V after 1 min (NEC 460.6), or 75 V after 3 min (IEC 60831-1).
 *
 * @param[in]  capacitance_f Capacitance. @range{[0.000000000001;1]}
 * @param[in]  start_v       Peak voltage at the start. @range{[0.000001;1000000]}
 * @param[in]  safe_v        Voltage at the end, below start_v. @range{[0.000001;1000000]}
 * @param[in]  time_s        Time allowed. @range{[0.000001;1000000000]}
 * @param[out] r_ohm         Greatest resistance that does it.
 * @param[out] power_w       Mean power in that resistor at work.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION safe_v is not below start_v
 * @source{definition; limits from NFPA 70 (NEC), 460.6(A), and IEC 60831-1}
 * @caution{FREEAIR_CAUTION_CAPACITOR}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_bleeder(double capacitance_f, double start_v, double safe_v, double time_s,
                                              double *r_ohm, double *power_w);

/** Energy stored in a capacitor.
 *
 * Model: E = C U^2 / 2, U the voltage at that instant.
 *
 * @param[in]  capacitance_f Capacitance. @range{[0;1]}
 * @param[in]  voltage_v     Voltage; the peak of an alternating voltage. @range{[0;1000000]}
 * @param[out] energy_j      Energy.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   energy_j is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @caution{FREEAIR_CAUTION_CAPACITOR}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_energy(double capacitance_f, double voltage_v, double *energy_j);

/** Two capacitors in series.
 *
 * Model: C = C1 C2 / (C1 + C2).
 *
 * @param[in]  first_f       Capacitance of the first. @range{[0.000000000001;1]}
 * @param[in]  second_f      Capacitance of the second. @range{[0.000000000001;1]}
 * @param[out] capacitance_f Capacitance of both.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   capacitance_f is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_series(double first_f, double second_f, double *capacitance_f);

/** Two capacitors in parallel.
 *
 * Model: C = C1 + C2. Each must carry the full voltage.
 *
 * @param[in]  first_f       Capacitance of the first. @range{[0;1]}
 * @param[in]  second_f      Capacitance of the second. @range{[0;1]}
 * @param[out] capacitance_f Capacitance of both.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   capacitance_f is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_parallel(double first_f, double second_f, double *capacitance_f);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
