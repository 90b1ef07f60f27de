/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_MOTOR_H
#define FREEAIR_MOTOR_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup motor Motor
 * The induction motor: speed and slip, torque, and what voltage and frequency do to them.
 *
 * Slip is the fraction by which the shaft lags the field. In the working range torque is nearly proportional to slip,
 * and to the square of the voltage: low voltage costs speed and, more, starting torque. Voltages are line to line.
 * @{
 */

/** Speed of the rotating field.
 *
 * Model: n = 2 f / poles.
 *
 * @param[in]  frequency_hz      Supply frequency. @range{[0.1;1000]}
 * @param[in]  poles             Number of poles, even; an odd number is refused. @range{[2;100]}
 * @param[out] synchronous_rev_s Synchronous speed.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   synchronous_rev_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, chapter 4, synchronous speed}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_synchronous_speed(double frequency_hz, int32_t poles, double *synchronous_rev_s);

/** Number of poles from the speed on a nameplate.
 *
 * Model: the largest even number whose synchronous speed is not below the given speed.
 *
 * @param[in]  frequency_hz Supply frequency. @range{[0.1;1000]}
 * @param[in]  speed_rev_s  Rated speed. @range{[0.01;1000]}
 * @param[out] poles        Number of poles; 0 on error.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed; a slip above 0.15 is no rated speed
 * @retval FREEAIR_ERR_NULL          poles is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   no motor of 2 to 100 poles has that speed
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_poles_from_speed(double frequency_hz, double speed_rev_s, int32_t *poles);

/** Slip from a measured speed.
 *
 * Model: s = (n_s - n) / n_s. Negative above synchronous speed, where the load drives the motor.
 *
 * @param[in]  frequency_hz Supply frequency. @range{[0.1;1000]}
 * @param[in]  poles        Number of poles, even; an odd number is refused. @range{[2;100]}
 * @param[in]  speed_rev_s  Shaft speed. @range{[0;1000]}
 * @param[out] slip         Slip as a fraction.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   slip is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, chapter 4, example 4.2}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_slip(double frequency_hz, int32_t poles, double speed_rev_s, double *slip);

/** Shaft speed at a slip.
 *
 * Model: n = n_s (1 - s).
 *
 * @param[in]  frequency_hz Supply frequency. @range{[0.1;1000]}
 * @param[in]  poles        Number of poles, even; an odd number is refused. @range{[2;100]}
 * @param[in]  slip         Slip as a fraction. @range{[-1;1]}
 * @param[out] speed_rev_s  Shaft speed.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   speed_rev_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, chapter 4, example 4.5}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_speed_from_slip(double frequency_hz, int32_t poles, double slip, double *speed_rev_s);

/** Frequency of the currents in the rotor.
 *
 * Model: f_r = |s| f.
 *
 * @param[in]  frequency_hz Supply frequency. @range{[0.1;1000]}
 * @param[in]  slip         Slip as a fraction. @range{[-1;1]}
 * @param[out] rotor_hz     Rotor frequency.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   rotor_hz is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, chapter 4, example 4.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_rotor_frequency(double frequency_hz, double slip, double *rotor_hz);

/** Slip at another voltage, frequency and torque.
 *
 * Model: s' = s t f / u^2 with u, f, t the ratios of voltage, frequency and load torque: torque proportional to slip,
 * constant resistance. A piston compressor at a given pressure asks for nearly constant torque, t = 1.
 *
 * @param[in]  slip            Slip that is known, as at rated load. @range{[0;1)}
 * @param[in]  voltage_ratio   New voltage over that of the known slip. @range{[0.1;2]}
 * @param[in]  frequency_ratio New frequency over that of the known slip. @range{[0.1;2]}
 * @param[in]  torque_ratio    New load torque over that of the known slip. @range{[0;10]}
 * @param[out] new_slip        Slip then.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed; above 0.1 torque is no longer proportional to slip
 * @retval FREEAIR_ERR_NULL          new_slip is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   the motor would stall
 * @source{Hubert, Electric Machines, 2nd edition, chapter 5, example 5.6}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_slip_at_supply(double slip, double voltage_ratio, double frequency_ratio,
                                                 double torque_ratio, double *new_slip);

/** Torque of a shaft that carries a power at a speed.
 *
 * Model: T = P / (2 pi n).
 *
 * @param[in]  power_w     Shaft power. @range{[0;1000000000]}
 * @param[in]  speed_rev_s Shaft speed. @range{[0.001;1000]}
 * @param[out] torque_nm   Torque.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   torque_nm is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_torque_from_power(double power_w, double speed_rev_s, double *torque_nm);

/** Power of a shaft that carries a torque at a speed.
 *
 * Model: P = 2 pi n T.
 *
 * @param[in]  torque_nm   Torque. @range{[0;1000000000]}
 * @param[in]  speed_rev_s Shaft speed. @range{[0;1000]}
 * @param[out] power_w     Shaft power.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   power_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_power_from_torque(double torque_nm, double speed_rev_s, double *power_w);

/** Torque at a slip from the breakdown point.
 *
 * Model: T = 2 T_b / (s / s_b + s_b / s), stator resistance neglected. Slower than breakdown, cages give more.
 *
 * @param[in]  breakdown_nm   Greatest torque of the motor. @range{[0;1000000000]}
 * @param[in]  breakdown_slip Slip there; 0.1 to 0.3 is usual. @range{[0.001;1]}
 * @param[in]  slip           Slip as a fraction. @range{[0;1]}
 * @param[out] torque_nm      Torque.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed; slip is beyond breakdown
 * @retval FREEAIR_ERR_NULL          torque_nm is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{Kloss's formula, as in Fitzgerald, Kingsley, Umans, Electric Machinery, chapter 6, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_torque_at_slip(double breakdown_nm, double breakdown_slip, double slip,
                                                 double *torque_nm);

/** Locked-rotor (starting) torque at another voltage and frequency.
 *
 * Model: T' = T (u / f)^2 with u and f the ratios of voltage and frequency: ten percent less voltage leaves 81 percent
 * of the torque. Valid near rated frequency; breakdown torque follows the same.
 *
 * @param[in]  torque_nm       Locked-rotor torque that is known. @range{[0;1000000000]}
 * @param[in]  voltage_ratio   New voltage over that of the known torque. @range{[0.1;2]}
 * @param[in]  frequency_ratio New frequency over that of the known torque. @range{[0.1;2]}
 * @param[out] new_torque_nm   Locked-rotor torque then.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   new_torque_nm is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, chapter 5, examples 5.4 and 5.8}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_locked_rotor_torque(double torque_nm, double voltage_ratio, double frequency_ratio,
                                                      double *new_torque_nm);

/** Locked-rotor (starting) current at another voltage and frequency.
 *
 * Model: I' = I u / f with u and f the ratios of voltage and frequency. Valid near rated frequency, no saturation.
 *
 * @param[in]  current_a       Locked-rotor current that is known. @range{[0;1000000]}
 * @param[in]  voltage_ratio   New voltage over that of the known current. @range{[0.1;2]}
 * @param[in]  frequency_ratio New frequency over that of the known current. @range{[0.1;2]}
 * @param[out] new_current_a   Locked-rotor current then.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   new_current_a is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, chapter 5, example 5.7}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_locked_rotor_current(double current_a, double voltage_ratio, double frequency_ratio,
                                                       double *new_current_a);

/** Shaft power from electrical measurements.
 *
 * Model: P_in = m U I cos, P = efficiency P_in, m = 1 for one phase and sqrt(3) for three. With a clamp meter alone
 * the power factor is a guess: nameplate values hold near full load only.
 *
 * @param[in]  voltage_v    Line voltage. @range{[0;1000000]}
 * @param[in]  current_a    Line current. @range{[0;1000000]}
 * @param[in]  power_factor Power factor, lagging. @range{[0;1]}
 * @param[in]  efficiency   Efficiency at that load. @range{[0;1]}
 * @param[in]  phases       1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] shaft_w      Power at the shaft.
 * @param[out] input_w      Power from the supply.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_shaft_power(double voltage_v, double current_a, double power_factor,
                                              double efficiency, int32_t phases, double *shaft_w, double *input_w);

/** Line current of a motor that gives a shaft power.
 *
 * Model: I = P / (m U cos efficiency), m = 1 for one phase and sqrt(3) for three.
 *
 * @param[in]  shaft_w      Power at the shaft. @range{[0;1000000000]}
 * @param[in]  voltage_v    Line voltage. @range{[1;1000000]}
 * @param[in]  power_factor Power factor, lagging. @range{[0.01;1]}
 * @param[in]  efficiency   Efficiency at that load. @range{[0.01;1]}
 * @param[in]  phases       1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] current_a    Line current.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   current_a is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition; Hubert, Electric Machines, 2nd edition, example 6.4}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_motor_line_current(double shaft_w, double voltage_v, double power_factor, double efficiency,
                                               int32_t phases, double *current_a);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
