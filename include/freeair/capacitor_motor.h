/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CAPACITOR_MOTOR_H
#define FREEAIR_CAPACITOR_MOTOR_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup capacitor_motor Capacitor motor
 * The single-phase motor with a capacitor in its auxiliary (start) winding: what capacitor it wants, and what a weak
 * one costs in starting torque, running torque and speed.
 *
 * The winding constants come from tests or from the maker; with typical ones the results tell the direction and the
 * order of an effect, not the figure for the motor in hand.
 * @{
 */

/** Constants of a capacitor motor, all referred to the main winding except those of the auxiliary winding itself.
 * @since 0.1
 */
typedef struct freeair_capacitor_motor_windings {
  uint32_t struct_size;      /**< Size of the structure that the caller knows. */
  uint32_t flags;            /**< Must be 0. */
  double main_r_ohm;         /**< Resistance of the main winding. @range{[0;1000]} */
  double main_x_ohm;         /**< Leakage reactance of the main winding. @range{[0;1000]} */
  double auxiliary_r_ohm;    /**< Resistance of the auxiliary winding, with the capacitor's own. @range{[0;1000]} */
  double auxiliary_x_ohm;    /**< Leakage reactance of the auxiliary winding. @range{[0;1000]} */
  double turns_ratio;        /**< Effective turns of the auxiliary winding over the main. @range{[0.01;100]} */
  double rotor_r_ohm;        /**< Rotor resistance. @range{[0.001;1000]} */
  double rotor_x_ohm;        /**< Rotor leakage reactance. @range{[0;1000]} */
  double magnetising_x_ohm;  /**< Magnetising reactance. @range{[0.01;10000]} */
} freeair_capacitor_motor_windings;

/** Initial value of freeair_capacitor_motor_windings: everything still to be given. */
#define FREEAIR_CAPACITOR_MOTOR_WINDINGS_INIT \
  { (uint32_t)sizeof(freeair_capacitor_motor_windings), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_CAPACITOR_MOTOR_WINDINGS_BASELINE 72

/** What a capacitor motor does at a slip.
 * @since 0.1
 */
typedef struct freeair_capacitor_motor_performance {
  uint32_t struct_size; /**< Size of the structure that the caller knows. */
  uint32_t flags;       /**< Must be 0. */
  double torque_nm;     /**< Torque across the air gap; friction, windage and iron loss are still to come off. */
  double mechanical_w;  /**< That torque times the shaft speed. */
  double input_w;       /**< Power from the supply, iron loss neglected. */
  double power_factor;  /**< Power factor of the line current; leading is not told from lagging. */
  double line_a;        /**< Line current. */
  double main_a;        /**< Current of the main winding. */
  double auxiliary_a;   /**< Current of the auxiliary winding, through the capacitor. */
  double capacitor_v;   /**< Voltage across the capacitor; with the winding open, across the gap. */
} freeair_capacitor_motor_performance;

/** Initial value of freeair_capacitor_motor_performance. */
#define FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_INIT \
  { (uint32_t)sizeof(freeair_capacitor_motor_performance), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_BASELINE 72

/** Initialises winding constants as FREEAIR_CAPACITOR_MOTOR_WINDINGS_INIT does.
 *
 * Model: writes at most caller_size bytes.
 *
 * @param[out] windings    The structure.
 * @param[in]  caller_size Its size as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    windings is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the first release's size
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_motor_windings_init(freeair_capacitor_motor_windings *windings,
                                                          size_t caller_size);

/** Initialises a result as FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_INIT does.
 *
 * Model: writes at most caller_size bytes.
 *
 * @param[out] performance The structure.
 * @param[in]  caller_size Its size as the caller knows it.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    performance is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the first release's size
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_motor_performance_init(freeair_capacitor_motor_performance *performance,
                                                             size_t caller_size);

/** Capacitor that sets the locked-rotor currents of the windings at right angles.
 *
 * Model: X_C = X_a + R_a R_m / X_m, C = 1 / (2 pi f X_C), with the impedances of the windings at standstill.
 *
 * @param[in]  main_r_ohm      Resistance of the main winding, rotor locked. @range{[0;1000]}
 * @param[in]  main_x_ohm      Reactance of the main winding, rotor locked. @range{[0.001;1000]}
 * @param[in]  auxiliary_r_ohm Resistance of the auxiliary winding, rotor locked. @range{[0;1000]}
 * @param[in]  auxiliary_x_ohm Reactance of the auxiliary winding, rotor locked. @range{[0.001;1000]}
 * @param[in]  frequency_hz    Supply frequency. @range{[0.1;1000]}
 * @param[out] capacitance_f   Capacitance in series with the auxiliary winding.
 * @param[out] reactance_ohm   Its reactance, as a positive number.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Hubert, Electric Machines, 2nd edition, example 6.2 (its reactance; its capacitance is misprinted)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_motor_quadrature(double main_r_ohm, double main_x_ohm, double auxiliary_r_ohm,
                                                       double auxiliary_x_ohm, double frequency_hz,
                                                       double *capacitance_f, double *reactance_ohm);

/** Starting torque with one capacitor over that with another.
 *
 * Model: at standstill torque is proportional to the product of the two winding currents and the sine of the angle
 * between them, hence to (X_m R_a - R_m X) / (R_a^2 + X^2) with X = X_a - X_C. Exact at standstill for given
 * impedances; saturation makes a real motor lose a little less.
 *
 * @param[in]  main_r_ohm      Resistance of the main winding, rotor locked. @range{[0;1000]}
 * @param[in]  main_x_ohm      Reactance of the main winding, rotor locked. @range{[0.001;1000]}
 * @param[in]  auxiliary_r_ohm Resistance of the auxiliary winding, rotor locked. @range{[0.001;1000]}
 * @param[in]  auxiliary_x_ohm Reactance of the auxiliary winding, rotor locked. @range{[0.001;1000]}
 * @param[in]  frequency_hz    Supply frequency. @range{[0.1;1000]}
 * @param[in]  capacitance_f   Capacitance found. @range{[0.000000001;1]}
 * @param[in]  rated_f         Capacitance that should be. @range{[0.000000001;1]}
 * @param[out] torque_ratio    Starting torque over that with the rated capacitance; negative starts backwards.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        torque_ratio is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION with rated_f the motor does not start forwards
 * @source{Hubert, Electric Machines, 2nd edition, examples 6.1 and 6.2, torque of a split-phase motor}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_motor_starting_torque_ratio(double main_r_ohm, double main_x_ohm,
                                                                  double auxiliary_r_ohm, double auxiliary_x_ohm,
                                                                  double frequency_hz, double capacitance_f,
                                                                  double rated_f, double *torque_ratio);

/** Torque, currents and power of a capacitor motor at a slip.
 *
 * Model: two windings at right angles by the double revolving field. With Z_f and Z_b half the forward and backward
 * rotor impedances in parallel with half the magnetising reactance and a the turns ratio,
 * V = I_m (Z_m + Z_f + Z_b) - j a I_a (Z_f - Z_b) and
 * V = I_a (Z_a + a^2 (Z_f + Z_b)) + V_C + j a I_m (Z_f - Z_b);
 * torque is (R_f |I_m - j a I_a|^2 - R_b |I_m + j a I_a|^2) / omega_s. Linear iron, no iron loss, fundamental only.
 *
 * @param[in]  windings      Constants of the motor.
 * @param[in]  voltage_v     Line voltage. @range{[0;1000000]}
 * @param[in]  frequency_hz  Supply frequency, at which the reactances hold. @range{[0.1;1000]}
 * @param[in]  poles         Number of poles, even; an odd number is refused. @range{[2;100]}
 * @param[in]  capacitance_f Capacitance; 0 opens the auxiliary winding. @range{[0;0.1]}
 * @param[in]  slip          Slip as a fraction; 1 is standstill. @range{[0;1]}
 * @param[out] performance   The result; initialise it first.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_ERR_NULL    windings or performance is null
 * @retval FREEAIR_ERR_DOMAIN  an input is outside its range
 * @retval FREEAIR_ERR_VERSION a structure's size is unknown
 * @source{Fitzgerald, Kingsley, Umans, Electric Machinery, 6th edition, sections 9.3 and 9.4, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_motor_run(const freeair_capacitor_motor_windings *windings, double voltage_v,
                                                double frequency_hz, int32_t poles, double capacitance_f, double slip,
                                                freeair_capacitor_motor_performance *performance);

/** Slip at which a capacitor motor carries a torque.
 *
 * Model: the smallest slip at which freeair_capacitor_motor_run gives the torque, searched upwards in steps of 0.002
 * and then by bisection to the last bit.
 *
 * @param[in]  windings      Constants of the motor.
 * @param[in]  voltage_v     Line voltage. @range{[0;1000000]}
 * @param[in]  frequency_hz  Supply frequency, at which the reactances hold. @range{[0.1;1000]}
 * @param[in]  poles         Number of poles, even; an odd number is refused. @range{[2;100]}
 * @param[in]  capacitance_f Capacitance; 0 opens the auxiliary winding. @range{[0;0.1]}
 * @param[in]  torque_nm     Torque across the air gap. @range{[0;1000000]}
 * @param[out] slip          Slip as a fraction.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        windings or slip is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_VERSION     a structure's size is unknown
 * @retval FREEAIR_ERR_NO_SOLUTION the motor cannot carry that torque at any speed
 * @source{algebra: inverse of freeair_capacitor_motor_run}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_capacitor_motor_slip(const freeair_capacitor_motor_windings *windings, double voltage_v,
                                                 double frequency_hz, int32_t poles, double capacitance_f,
                                                 double torque_nm, double *slip);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
