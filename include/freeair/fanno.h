/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_FANNO_H
#define FREEAIR_FANNO_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup fanno Adiabatic pipe flow
 * Gas in a pipe with friction and without heat (Fanno flow): right for short and fast
 * lines, such as a blow-off pipe or a hose. Friction drives the flow towards the speed
 * of sound; at the critical length, marked *, it is reached at the end of the pipe.
 * Ideal gas, constant k, constant friction factor (of Darcy, four times Fanning's).
 * @{
 */

/** Friction parameter up to the critical state.
 *
 * Model: f L star / d = (1 - M^2)/(k M^2) + (k+1)/(2k) ln((k+1) M^2 / (2 + (k-1) M^2)), without loss near M = 1.
 *
 * @param[in]  mach      Mach number. @range{[1e-6;100]}
 * @param[in]  k         Ratio of specific heats; 1.4 for air. @range{(1;2]}
 * @param[out] parameter f L star / d.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   parameter is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equation 11.98}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fanno_parameter(double mach, double k, double *parameter);

/** Mach number from the friction parameter.
 *
 * Model: inverse of freeair_fanno_parameter by Newton's method, at most 100 steps, to rounding.
 *
 * @param[in]  parameter f L star / d. @range{[0;1e12]}
 * @param[in]  branch    Below or above the speed of sound. @choice{freeair_flow_branch}
 * @param[in]  k         Ratio of specific heats; 1.4 for air. @range{(1;2]}
 * @param[out] mach      Mach number.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        mach is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION no supersonic flow has so large a parameter
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equation 11.98}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fanno_mach_from_parameter(double parameter, int32_t branch, double k, double *mach);

/** State over that at the critical length.
 *
 * Model: T/T* = (k+1)/(2 + (k-1) M^2); p/p* = sqrt(T/T*) / M; rho/rho* = (p/p*)/(T/T*); p0/p0* =
 * (T/T*)^(-(k+1)/(2(k-1))) / M.
 *
 * @param[in]  mach              Mach number. @range{[1e-6;100]}
 * @param[in]  k                 Ratio of specific heats; 1.4 for air. @range{(1;2]}
 * @param[out] pressure_ratio    p/p*.
 * @param[out] temperature_ratio T/T*.
 * @param[out] density_ratio     rho/rho*, also V* / V.
 * @param[out] stagnation_ratio  p0/p0*.
 * @retval FREEAIR_OK           computed
 * @retval FREEAIR_ERR_NULL     a pointer is null
 * @retval FREEAIR_ERR_DOMAIN   an input is outside its range
 * @retval FREEAIR_ERR_OVERFLOW p0/p0* is beyond any number
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equations 11.101 to 11.109}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fanno_ratios(double mach, double k, double *pressure_ratio, double *temperature_ratio,
                                         double *density_ratio, double *stagnation_ratio);

/** Length of pipe between two Mach numbers.
 *
 * Model: L = d/f ((f L star / d) of mach1 - that of mach2).
 *
 * @param[in]  mach1      Mach number at the inlet. @range{[1e-6;100]}
 * @param[in]  mach2      Mach number at the outlet. @range{[1e-6;100]}
 * @param[in]  diameter_m Inner diameter. @range{[1e-6;10]}
 * @param[in]  factor     Friction factor. @range{[1e-4;100]}
 * @param[in]  k          Ratio of specific heats; 1.4 for air. @range{(1;2]}
 * @param[out] length_m   Length.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        length_m is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION friction does not lead from the one to the other
 * @source{Murugaperumal, Gas Dynamics and Jet Propulsion, example 3.2}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fanno_length(double mach1, double mach2, double diameter_m, double factor, double k,
                                         double *length_m);

/** Mass flow from a vessel through a pipe.
 *
 * Model: isentropic into the pipe, Fanno along it. Choked at the end where the pressure behind it is below that of
 * M = 1; else solved for the Mach number at the end by bisection of its logarithm, to rounding.
 *
 * @param[in]  p0_pa      Pressure in the vessel, absolute. @range{[1;1e8]}
 * @param[in]  t0_k       Temperature in the vessel. @range{[50;2000]}
 * @param[in]  p2_pa      Pressure behind the pipe, absolute, not above p0_pa. @range{[0;1e8]}
 * @param[in]  diameter_m Inner diameter. @range{[1e-6;10]}
 * @param[in]  loss_number f L/d, the loss coefficients of fittings added. @range{[0;1e9]}
 * @param[in]  k          Ratio of specific heats; 1.4 for air. @range{(1;2]}
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[out] mass_kg_s  Mass flow.
 * @param[out] mach1      Mach number at the inlet of the pipe.
 * @param[out] mach2      Mach number at its end; 1 when choked.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or p2_pa is above p0_pa
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, examples 11.12 and 11.14}
 * @caution{FREEAIR_CAUTION_BLOWING}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fanno_mass_flow(double p0_pa, double t0_k, double p2_pa, double diameter_m,
                                            double loss_number, double k, double r_j_kg_k, double *mass_kg_s,
                                            double *mach1, double *mach2);

/** State at the end of a pipe from the flow and the state at its inlet.
 *
 * Model: Fanno flow over the loss number.
 *
 * @param[in]  mass_kg_s  Mass flow. @range{[1e-12;1e6]}
 * @param[in]  p1_pa      Static pressure at the inlet, absolute. @range{[1;1e8]}
 * @param[in]  t1_k       Static temperature at the inlet. @range{[50;2000]}
 * @param[in]  diameter_m Inner diameter. @range{[1e-6;10]}
 * @param[in]  loss_number f L/d, the loss coefficients of fittings added. @range{[0;1e9]}
 * @param[in]  k          Ratio of specific heats; 1.4 for air. @range{(1;2]}
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[out] p2_pa      Static pressure at the end, absolute.
 * @param[out] t2_k       Static temperature at the end.
 * @param[out] mach2      Mach number at the end.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION choked: the pipe is too long for so much flow, or the inlet is supersonic
 * @source{Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 11.5.1}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fanno_outlet(double mass_kg_s, double p1_pa, double t1_k, double diameter_m,
                                         double loss_number, double k, double r_j_kg_k, double *p2_pa, double *t2_k,
                                         double *mach2);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
