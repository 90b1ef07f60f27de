/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_NAMEPLATE_H
#define FREEAIR_NAMEPLATE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup nameplate Nameplate
 * What a motor's nameplate says or leaves out: the code letter and the starting current behind it, the full-load
 * current of the tables, the efficiency of its class, and the load that current or speed give away.
 *
 * Tables of a code give what that code wants wires and switches sized by; the current of the motor in hand is the one
 * on its nameplate.
 * @{
 */

/** Locked-rotor code letters; each value is the letter's ASCII code.
 * @since 0.1
 */
enum freeair_nameplate_code {
  FREEAIR_NAMEPLATE_CODE_A = 65, /**< Below 3.15 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_B = 66, /**< From 3.15 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_C = 67, /**< From 3.55 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_D = 68, /**< From 4.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_E = 69, /**< From 4.5 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_F = 70, /**< From 5.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_G = 71, /**< From 5.6 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_H = 72, /**< From 6.3 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_J = 74, /**< From 7.1 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_K = 75, /**< From 8.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_L = 76, /**< From 9.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_M = 77, /**< From 10.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_N = 78, /**< From 11.2 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_P = 80, /**< From 12.5 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_R = 82, /**< From 14.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_S = 83, /**< From 16.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_T = 84, /**< From 18.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_U = 85, /**< From 20.0 kVA per hp. */
  FREEAIR_NAMEPLATE_CODE_V = 86  /**< From 22.4 kVA per hp, without an upper end. */
};

/** Efficiency classes of three-phase motors.
 * @since 0.1
 */
enum freeair_nameplate_efficiency_class {
  FREEAIR_NAMEPLATE_IE1 = 1, /**< Standard efficiency. */
  FREEAIR_NAMEPLATE_IE2 = 2, /**< High efficiency. */
  FREEAIR_NAMEPLATE_IE3 = 3, /**< Premium efficiency. */
  FREEAIR_NAMEPLATE_IE4 = 4  /**< Super premium efficiency. */
};

/** Band of locked-rotor apparent power that a code letter stands for.
 *
 * Model: table of kVA per horsepower, turned into VA per W with 1 hp = 745.69987 W. The band includes its lower end.
 *
 * @param[in]  code  Code letter. @choice{freeair_nameplate_code}
 * @param[out] lower Lower end, locked-rotor apparent power over rated shaft power.
 * @param[out] upper Upper end; infinite for V.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND not a code letter
 * @source{NEMA MG 1, 10.37.2; NFPA 70 (NEC), table 430.7(B); all but G from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nameplate_code_band(int32_t code, double *lower, double *upper);

/** Code letter of a measured locked-rotor current.
 *
 * Model: the letter whose band holds m U I / P, m = 1 for one phase and sqrt(3) for three.
 *
 * @param[in]  locked_rotor_a Line current with locked rotor at that voltage. @range{[0;1000000]}
 * @param[in]  voltage_v      Line voltage. @range{[1;1000000]}
 * @param[in]  rated_w        Rated shaft power. @range{[1;1000000000]}
 * @param[in]  phases         1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] code           Code letter; 0 on error. @choice{freeair_nameplate_code}
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   code is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{NEMA MG 1, 10.37.2; NFPA 70 (NEC), table 430.7(B); all but G from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nameplate_code_from_current(double locked_rotor_a, double voltage_v, double rated_w,
                                                        int32_t phases, int32_t *code);

/** Starting current to expect from a code letter.
 *
 * Model: I = band P / (m U), m = 1 for one phase and sqrt(3) for three.
 *
 * @param[in]  code      Code letter. @choice{freeair_nameplate_code}
 * @param[in]  rated_w   Rated shaft power. @range{[1;1000000000]}
 * @param[in]  voltage_v Line voltage. @range{[1;1000000]}
 * @param[in]  phases    1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] lower_a   Lower end of the current.
 * @param[out] upper_a   Upper end; infinite for V.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_DOMAIN    an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND not a code letter
 * @source{Hubert, Electric Machines, 2nd edition, example 5.13}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nameplate_locked_rotor_current(int32_t code, double rated_w, double voltage_v,
                                                           int32_t phases, double *lower_a, double *upper_a);

/** Full-load current that the tables of the National Electrical Code give a motor.
 *
 * Model: table look-up. The power must be within 1 percent of a listed horsepower (1/6 to 10 hp single phase, 1/2 to
 * 500 hp three phase), the voltage in the range of a column: 110-120, 195-204 (200), 204-216 (208), 220-240, 440-480,
 * 550-600, 2200-2400 V. No interpolation. For sizing wires and switches, where that code applies.
 *
 * @param[in]  rated_w   Rated shaft power. @range{[1;1000000000]}
 * @param[in]  voltage_v Voltage of motor or system. @range{[1;1000000]}
 * @param[in]  phases    1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] current_a Full-load current.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      current_a is null
 * @retval FREEAIR_ERR_DOMAIN    an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND the table has no such motor
 * @source{NFPA 70 (NEC), 2008, tables 430.248 and 430.250, induction type}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nameplate_full_load_current(double rated_w, double voltage_v, int32_t phases,
                                                        double *current_a);

/** Nominal efficiency limit of an efficiency class at 50 Hz and full load.
 *
 * Model: A x^3 + B x^2 + C x + D, x = log10 of the rated power in kW, in percent, rounded to 0.1; it gives the
 * tabulated values back at the preferred powers. A motor in hand may be better; its losses may be 15 percent above.
 *
 * @param[in]  efficiency_class Class. @choice{freeair_nameplate_efficiency_class}
 * @param[in]  poles            2, 4 or 6; odd numbers are refused. @range{[2;6]}
 * @param[in]  rated_w          Rated shaft power. @range{[750;200000]}
 * @param[out] efficiency       Efficiency as a fraction.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      efficiency is null
 * @retval FREEAIR_ERR_DOMAIN    an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND not a class
 * @source{IEC 60034-30-1:2014, interpolation at 50 Hz; Regulation (EU) 2019/1781, annex I; coefficients from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nameplate_efficiency(int32_t efficiency_class, int32_t poles, double rated_w,
                                                 double *efficiency);

/** Load of a motor from its current.
 *
 * Model: load = (I / I_n) (U / U_n). Good above half load; below, magnetising current makes it read far too high.
 *
 * @param[in]  current_a   Line current measured. @range{[0;1000000]}
 * @param[in]  nameplate_a Current on the nameplate. @range{[0.001;1000000]}
 * @param[in]  voltage_v   Line voltage measured. @range{[0;1000000]}
 * @param[in]  nameplate_v Voltage on the nameplate. @range{[1;1000000]}
 * @param[out] load        Shaft power over rated shaft power.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed; below half load current says little
 * @retval FREEAIR_ERR_NULL          load is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{US Department of Energy, Determining Electric Motor Load and Efficiency, DOE/GO-10097-517, load from line current}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nameplate_load_from_current(double current_a, double nameplate_a, double voltage_v,
                                                        double nameplate_v, double *load);

/** Load of a motor from its speed.
 *
 * Model: load = (n_s - n) / (n_s - n_n) (U / U_n)^2: slip is proportional to torque and to the inverse square of the
 * voltage. Nameplate speeds are rounded and may be off by a fifth of the rated slip; the result is no better.
 *
 * @param[in]  speed_rev_s       Speed measured. @range{[0;1000]}
 * @param[in]  synchronous_rev_s Synchronous speed at the frequency measured. @range{[0.01;1000]}
 * @param[in]  nameplate_rev_s   Speed on the nameplate. @range{[0.01;1000]}
 * @param[in]  voltage_ratio     Voltage measured over that on the nameplate. @range{[0.1;2]}
 * @param[out] load              Shaft power over rated shaft power.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed; faster than synchronous speed
 * @retval FREEAIR_WARN_EXTRAPOLATED computed; above 1.5 slip is no longer proportional to load
 * @retval FREEAIR_ERR_NULL          load is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION   the nameplate speed is not below synchronous speed
 * @source{US Department of Energy, Determining Electric Motor Load and Efficiency, DOE/GO-10097-517, slip method with voltage compensation}
 * @caution{FREEAIR_CAUTION_ROTATING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_nameplate_load_from_speed(double speed_rev_s, double synchronous_rev_s,
                                                      double nameplate_rev_s, double voltage_ratio, double *load);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
