/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_IMPEDANCE_H
#define FREEAIR_IMPEDANCE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup impedance Impedance
 * Resistance, reactance and impedance of a winding, a capacitor or a motor with
 * its rotor held, from what meters read at its terminals. Sinusoidal voltage and
 * current, one phase.
 * @{
 */

/** Impedance from voltage, current and the phase angle between them.
 *
 * Model: z = V / I, r = z cos(phase), x = z sin(phase). Positive x is inductive: the current lags.
 *
 * @param[in]  voltage_v Voltage, rms or amplitude, as the current. @range{(0;1e6]}
 * @param[in]  current_a Current. @range{[1e-9;1e6]}
 * @param[in]  phase_rad Angle by which the current lags the voltage. @range{[-1.5708;1.5708]}
 * @param[out] r_ohm     Resistance.
 * @param[out] x_ohm     Reactance, negative when capacitive.
 * @param[out] z_ohm     Impedance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{JCGM 100:2008, Guide to the expression of uncertainty in measurement, H.2.1}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_impedance_from_phase(double voltage_v, double current_a, double phase_rad, double *r_ohm,
                                                 double *x_ohm, double *z_ohm);

/** Impedance from voltage, current and power.
 *
 * Model: z = V / I, r = P / I^2, x = sqrt(z^2 - r^2), power factor = P / (V I). The meters do not tell an inductive
 * from a capacitive reactance: x is not negative.
 *
 * @param[in]  voltage_v    Voltage, rms. @range{(0;1e6]}
 * @param[in]  current_a    Current, rms. @range{[1e-9;1e6]}
 * @param[in]  power_w      Power. @range{[0;1e12]}
 * @param[out] r_ohm        Resistance.
 * @param[out] x_ohm        Reactance.
 * @param[out] z_ohm        Impedance.
 * @param[out] power_factor Power factor.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the power is more than voltage times current
 * @source{definition}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_impedance_from_power(double voltage_v, double current_a, double power_w, double *r_ohm,
                                                 double *x_ohm, double *z_ohm, double *power_factor);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
