/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_SUPPLY_H
#define FREEAIR_SUPPLY_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup supply Supply
 * The voltage that reaches the motor: how far it is from the nameplate, and what the
 * wires take on the way.
 *
 * Voltages of a three-phase supply are line to line. Power factors are lagging,
 * as every induction motor's is. Fractions are fractions: 0.03 is three percent.
 * @{
 */

/** Standard uncertainty of a voltage reading from the meter's data sheet.
 *
 * Model: u = (accuracy reading + counts resolution) / sqrt(3), limits of error as a rectangular distribution.
 *
 * @param[in]  reading_v     What the meter shows. @range{[0;1000000]}
 * @param[in]  accuracy      Limit of error as a fraction of the reading. @range{[0;1]}
 * @param[in]  counts        Limit of error in units of the last digit. @range{[0;10000]}
 * @param[in]  resolution_v  Value of one unit of the last digit. @range{[0;1000]}
 * @param[out] uncertainty_v Standard uncertainty.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   uncertainty_v is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.7}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_supply_uncertainty_from_meter(double reading_v, double accuracy, double counts,
                                                          double resolution_v, double *uncertainty_v);

/** Deviation of a voltage from the motor's nameplate.
 *
 * Model: (U - U_n) / U_n; negative when the voltage is low. Measure at the motor, under load: the nameplate is the
 * motor's voltage (230 V), not the system's (240 V).
 *
 * @param[in]  measured_v  Voltage at the motor terminals. @range{[0;1000000]}
 * @param[in]  nameplate_v Voltage on the nameplate. @range{[1;1000000]}
 * @param[out] deviation   Deviation as a fraction of the nameplate.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   deviation is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_supply_deviation(double measured_v, double nameplate_v, double *deviation);

/** Whether a voltage is within a tolerance of the nameplate, as a guarded decision.
 *
 * Model: the limits are U_n (1 - tolerance) and U_n (1 + tolerance); the decision is that of freeair_verdict_decide.
 * NEMA MG 1 asks motors to run, not always at their best, with 0.10 at rated frequency.
 *
 * @param[in]  measured_v    Voltage at the motor terminals. @range{[0;1000000]}
 * @param[in]  uncertainty_v Standard uncertainty of the measurement. @range{[0;1000000]}
 * @param[in]  nameplate_v   Voltage on the nameplate. @range{[1;1000000]}
 * @param[in]  tolerance     Permitted deviation as a fraction of the nameplate. @range{[0.000001;1]}
 * @param[in]  confidence    Probability required of a firm verdict. @range{(0.5;1)}
 * @param[out] verdict       The decision. @choice{freeair_verdict}
 * @param[out] probability   Probability that the voltage is within the tolerance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   verdict or probability is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{NEMA MG 1, 12.44 (plus or minus 10 percent at rated frequency); JCGM 106:2012, 8.3}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_supply_voltage_verdict(double measured_v, double uncertainty_v, double nameplate_v,
                                                   double tolerance, double confidence, int32_t *verdict,
                                                   double *probability);

/** Combined deviation of voltage and frequency.
 *
 * Model: |dU| + |df|. NEMA MG 1 permits 0.10 in all, of which at most 0.05 of frequency.
 *
 * @param[in]  voltage_deviation   Deviation of the voltage as a fraction. @range{[-1;1]}
 * @param[in]  frequency_deviation Deviation of the frequency as a fraction. @range{[-1;1]}
 * @param[out] combined            Sum of the absolute deviations.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_WARN_LIMIT computed; more than NEMA MG 1 permits
 * @retval FREEAIR_ERR_NULL   combined is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{NEMA MG 1, 12.44, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_supply_combined_deviation(double voltage_deviation, double frequency_deviation,
                                                      double *combined);

/** Voltage drop of a run, by the usual approximation.
 *
 * Model: k I (R cos + X sin), k = 2 for one phase (out and back), sqrt(3) for three. Neglects the small angle between
 * the voltages at the two ends; freeair_supply_voltage_at_load does not.
 *
 * @param[in]  current_a    Line current. @range{[0;1000000]}
 * @param[in]  r_ohm        Resistance of one wire, one way. @range{[0;1000000]}
 * @param[in]  x_ohm        Reactance of one wire, one way. @range{[0;1000000]}
 * @param[in]  power_factor Power factor of the load, lagging. @range{[0;1]}
 * @param[in]  phases       1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] drop_v       Voltage drop.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   drop_v is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{IEEE Std 141-1993, 3.11, approximate formula for voltage drop, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_supply_voltage_drop(double current_a, double r_ohm, double x_ohm, double power_factor,
                                                int32_t phases, double *drop_v);

/** Voltage at the load end of a run, exact for a known current and power factor.
 *
 * Model: U_load = sqrt(U^2 - (k I (X cos - R sin))^2) - k I (R cos + X sin), k as in freeair_supply_voltage_drop.
 *
 * @param[in]  source_v     Voltage at the source end. @range{[1;1000000]}
 * @param[in]  current_a    Line current. @range{[0;1000000]}
 * @param[in]  r_ohm        Resistance of one wire, one way. @range{[0;1000000]}
 * @param[in]  x_ohm        Reactance of one wire, one way. @range{[0;1000000]}
 * @param[in]  power_factor Power factor at the load, lagging. @range{[0;1]}
 * @param[in]  phases       1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] load_v       Voltage at the load end.
 * @param[out] drop_v       Difference of the two voltages.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the run cannot carry that current
 * @source{IEEE Std 141-1993, 3.11, exact formula for voltage drop, solved for the load end, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_supply_voltage_at_load(double source_v, double current_a, double r_ohm, double x_ohm,
                                                   double power_factor, int32_t phases, double *load_v, double *drop_v);

/** Voltage at the motor, and its current, at the moment of starting.
 *
 * Model: the locked motor is a constant impedance U_n / (m I_n) at its power factor (m = 1 for one phase, sqrt(3) for
 * three) in series with the run; the source does not sag. The starting torque goes with the square of this voltage.
 *
 * @param[in]  source_v       Voltage at the source end, no load. @range{[1;1000000]}
 * @param[in]  nameplate_v    Voltage on the nameplate. @range{[1;1000000]}
 * @param[in]  locked_rotor_a Line current with locked rotor at nameplate voltage. @range{[0.001;1000000]}
 * @param[in]  power_factor   Power factor with locked rotor, lagging; 0.2 to 0.6 is usual. @range{[0;1]}
 * @param[in]  r_ohm          Resistance of one wire, one way. @range{[0;1000000]}
 * @param[in]  x_ohm          Reactance of one wire, one way. @range{[0;1000000]}
 * @param[in]  phases         1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] start_v        Voltage at the motor.
 * @param[out] start_a        Line current.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{algebra: voltage divider of two impedances}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_supply_starting_voltage(double source_v, double nameplate_v, double locked_rotor_a,
                                                    double power_factor, double r_ohm, double x_ohm, int32_t phases,
                                                    double *start_v, double *start_a);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
