/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_MULTISTAGE_H
#define FREEAIR_MULTISTAGE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup multistage Multistage
 * Compression of an ideal gas in several stages with cooling between them:
 * interstage pressures that cost least, work, power, what is saved, intercooler
 * heat. Stages are counted from the inlet. With intercooling back to the inlet
 * temperature and no pressure lost, equal ratios cost least; otherwise the
 * optimum shifts, and freeair_multistage_optimum finds it for any number of
 * stages. Where two given cylinders really settle is set by their swept
 * volumes, not by this optimum.
 * @{
 */

/** Interstage pressure of equal stage ratios.
 *
 * Model: p = p1 (p2/p1)^(after/stages). Least work when every stage starts at the same temperature with the same
 * exponent and no pressure is lost between stages.
 *
 * @param[in]  p1_pa  Inlet pressure of the first stage, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa  Discharge pressure of the last stage, absolute. @range{[1;1e8]}
 * @param[in]  stages Number of stages. @range{[1;100]}
 * @param[in]  after  Stage whose discharge pressure is wanted, at most stages; 0 gives p1. @range{[0;100]}
 * @param[out] p_pa   Pressure after that stage, absolute.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   p_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range, or after is above stages
 * @source{Joel, Basic Engineering Thermodynamics, chapter 14, multistage compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_pressure(double p1_pa, double p2_pa, int32_t stages, int32_t after,
                                                double *p_pa);

/** Interstage pressure of two stages with imperfect intercooling.
 *
 * Model: p = sqrt(p1 p2 / (1 - loss)) (T3/T1)^(n/(2(n-1))): least total work for the same exponent in both stages
 * and a second inlet at T3 and (1 - loss) p.
 *
 * @param[in]  p1_pa Inlet pressure of the first stage, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa Discharge pressure of the second stage, absolute. @range{[1;1e8]}
 * @param[in]  t1_k  Inlet temperature of the first stage. @range{[1;5000]}
 * @param[in]  t3_k  Inlet temperature of the second stage. @range{[1;5000]}
 * @param[in]  n     Polytropic exponent. @range{[1.01;10]}
 * @param[in]  loss  Fraction of the interstage pressure lost in the intercooler. @range{[0;0.9]}
 * @param[out] p_pa  Discharge pressure of the first stage, absolute.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        p_pa is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION one of the stages would have to expand: cooling this poor does not pay
 * @source{algebra: derivative of the work of two stages set to zero}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_pressure_from_temperatures(double p1_pa, double p2_pa, double t1_k, double t3_k,
                                                                  double n, double loss, double *p_pa);

/** Work per kilogram of equal stages with intercooling to the inlet temperature.
 *
 * Model: w = N n/(n-1) R T1 ((p2/p1)^((n-1)/(N n)) - 1).
 *
 * @param[in]  r_j_kg_k Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k     Inlet temperature of every stage. @range{[1;5000]}
 * @param[in]  p1_pa    Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa    Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n        Polytropic exponent. @range{[0.5;10]}
 * @param[in]  stages   Number of stages N. @range{[1;100]}
 * @param[out] w_j_kg   Work of all stages.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   w_j_kg is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, multistage with intercooling}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_work_equal(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa, double n,
                                                  int32_t stages, double *w_j_kg);

/** Power of equal stages with intercooling to the inlet temperature, from a mass flow.
 *
 * Model: P = m w / efficiency, w as freeair_multistage_work_equal.
 *
 * @param[in]  r_j_kg_k   Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  t1_k       Inlet temperature of every stage. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n          Polytropic exponent. @range{[0.5;10]}
 * @param[in]  stages     Number of stages. @range{[1;100]}
 * @param[in]  m_kg_s     Mass flow. @range{[0;1e6]}
 * @param[in]  efficiency All between this work and the power wanted, multiplied; 1 for the ideal. @range{[0.001;1]}
 * @param[out] power_w    Power of all stages.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   power_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_power_from_mass_flow(double r_j_kg_k, double t1_k, double p1_pa, double p2_pa,
                                                            double n, int32_t stages, double m_kg_s,
                                                            double efficiency, double *power_w);

/** Power of equal stages with intercooling to the inlet temperature, from a flow of free air.
 *
 * Model: P = fad p_free (t1/t_free) N n/(n-1) ((p2/p1)^((n-1)/(N n)) - 1) / efficiency.
 *
 * @param[in]  p_free_pa  Pressure of the free air, absolute. @range{[1;1e8]}
 * @param[in]  t_free_k   Temperature of the free air. @range{[1;5000]}
 * @param[in]  t1_k       Inlet temperature of every stage. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n          Polytropic exponent. @range{[0.5;10]}
 * @param[in]  stages     Number of stages N. @range{[1;100]}
 * @param[in]  fad_m3_s   Free air flow. @range{[0;1e6]}
 * @param[in]  efficiency All between this work and the power wanted, multiplied; 1 for the ideal. @range{[0.001;1]}
 * @param[out] power_w    Power of all stages.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   power_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_power_from_free_air(double p_free_pa, double t_free_k, double t1_k,
                                                           double p1_pa, double p2_pa, double n, int32_t stages,
                                                           double fad_m3_s, double efficiency, double *power_w);

/** Fraction of the single-stage work that equal stages with perfect intercooling save.
 *
 * Model: 1 - w(stages) / w(1), both between the same pressures with the same exponent.
 *
 * @param[in]  p1_pa  Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa  Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n      Polytropic exponent. @range{[0.5;10]}
 * @param[in]  stages Number of stages. @range{[1;100]}
 * @param[out] saving Fraction saved; 0 for equal pressures.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   saving is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_saving(double p1_pa, double p2_pa, double n, int32_t stages, double *saving);

/** Interstage pressures of least work, for any inlet temperatures, exponents and pressure losses.
 *
 * Model: the total work is convex in the logarithms of the interstage pressures p_i, and least where
 * T_out,i / p_i = T_out,i+1 / (p_i - drop_i+1). Given the first pressure this yields all others and a last one that
 * grows with the first, so one safeguarded Newton iteration, never more than 200 steps, finds the only solution.
 *
 * @param[in]  p1_pa    Pressure ahead of the first stage, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa    Discharge pressure of the last stage, absolute. @range{[1;1e8]}
 * @param[in]  t_in_k   Inlet temperature of each stage. @shape{stages} @range{[1;5000]}
 * @param[in]  n        Polytropic exponent of each stage. @shape{stages} @range{[1.01;10]}
 * @param[in]  drop_pa  Pressure lost ahead of each stage: filter, then intercoolers. @shape{stages} @range{[0;1e8]}
 * @param[in]  stages   Number of stages. @range{[1;100]}
 * @param[out] p_out_pa Discharge pressure of each stage, absolute; the last is p2_pa. @shape{stages}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION a stage would have to expand: it does not pay, leave it out; or a drop takes more
 *                                 than 0.9 of the pressure or leaves less than 1 Pa
 * @source{algebra: derivatives of the total work set to zero}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_optimum(double p1_pa, double p2_pa, const double *t_in_k, const double *n,
                                               const double *drop_pa, size_t stages, double *p_out_pa);

/** Work and temperatures of stages with any pressures, temperatures, exponents and losses.
 *
 * Model: each stage compresses from the discharge pressure of the one before, less the drop ahead of it, with
 * polytropic work n/(n-1) R T_in (r^((n-1)/n) - 1). Heat of an intercooler per kilogram: cp (t_out of the stage
 * before it - t_in of the stage after it).
 *
 * @param[in]  r_j_kg_k    Specific gas constant; 287.05 for dry air. @range{[10;10000]}
 * @param[in]  p1_pa       Pressure ahead of the first stage, absolute. @range{[1;1e8]}
 * @param[in]  t_in_k      Inlet temperature of each stage. @shape{stages} @range{[1;5000]}
 * @param[in]  n           Polytropic exponent of each stage. @shape{stages} @range{[0.5;10]}
 * @param[in]  drop_pa     Pressure lost ahead of each stage: filter, then intercoolers. @shape{stages} @range{[0;1e8]}
 * @param[in]  p_out_pa    Discharge pressure of each stage, absolute. @shape{stages} @range{[1;1e8]}
 * @param[in]  stages      Number of stages. @range{[1;100]}
 * @param[out] stage_j_kg  Work of each stage. @shape{stages}
 * @param[out] t_out_k     Discharge temperature of each stage. @shape{stages}
 * @param[out] w_j_kg      Work of all stages.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION a discharge pressure is below its stage's inlet, or a drop leaves less than 1 Pa
 * @source{algebra: sum of the polytropic works}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_work(double r_j_kg_k, double p1_pa, const double *t_in_k, const double *n,
                                            const double *drop_pa, const double *p_out_pa, size_t stages,
                                            double *stage_j_kg, double *t_out_k, double *w_j_kg);

/** Heat taken out by an intercooler.
 *
 * Model: Q = m cp (T1 (p2/p1)^((n-1)/n) - t_cooled). Dry air; condensing water adds its latent heat.
 *
 * @param[in]  m_kg_s     Mass flow. @range{[0;1e6]}
 * @param[in]  cp_j_kg_k  Specific heat at constant pressure; 1005 for air. @range{[10;100000]}
 * @param[in]  t1_k       Inlet temperature of the stage ahead of the cooler. @range{[1;5000]}
 * @param[in]  p1_pa      Inlet pressure of that stage, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa      Discharge pressure of that stage, absolute. @range{[1;1e8]}
 * @param[in]  n          Polytropic exponent of that stage. @range{[0.5;10]}
 * @param[in]  t_cooled_k Temperature after the cooler. @range{[1;5000]}
 * @param[out] heat_w     Heat.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   heat_w is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Nag, Basic and Applied Thermodynamics, chapter 19, heat rejected in the intercooler}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_intercooler_heat(double m_kg_s, double cp_j_kg_k, double t1_k, double p1_pa,
                                                        double p2_pa, double n, double t_cooled_k, double *heat_w);

/** Number of equal stages that keep the discharge temperature within a limit.
 *
 * Model: the smallest N with T1 (p2/p1)^((n-1)/(N n)) not above t_max, to within 1e-12 of N; perfect intercooling.
 *
 * @param[in]  t1_k    Inlet temperature of every stage. @range{[1;5000]}
 * @param[in]  p1_pa   Inlet pressure, absolute. @range{[1;1e8]}
 * @param[in]  p2_pa   Discharge pressure, absolute. @range{[1;1e8]}
 * @param[in]  n       Polytropic exponent. @range{[0.5;10]}
 * @param[in]  t_max_k Highest discharge temperature wanted. @range{[1;5000]}
 * @param[out] stages  Number of stages.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        stages is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION no number of stages up to 100 keeps the limit
 * @source{algebra: discharge temperature of equal stages}
 * @caution{FREEAIR_CAUTION_OIL_MIST}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_multistage_stages(double t1_k, double p1_pa, double p2_pa, double n, double t_max_k,
                                              int32_t *stages);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
