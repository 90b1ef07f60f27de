/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CONDUCTOR_H
#define FREEAIR_CONDUCTOR_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup conductor Conductor
 * Wires: resistance by size, temperature and gauge, what a run takes of voltage and power, and the smallest size for a
 * permitted drop.
 *
 * A size for a drop says nothing of the current that heats a wire: that is the local code's table, and its larger size
 * prevails. Suffix _ohm_m is ohm for each metre of one wire.
 * @{
 */

/** Kinds of conductor of IEC 60228.
 * @since 0.1
 */
enum freeair_conductor_kind {
  FREEAIR_CONDUCTOR_COPPER = 1,          /**< Plain copper, classes 1 and 2 (2 from 185 mm2). */
  FREEAIR_CONDUCTOR_COPPER_FLEXIBLE = 2, /**< Plain copper, flexible, class 5. */
  FREEAIR_CONDUCTOR_ALUMINIUM = 3        /**< Aluminium, stranded, class 2, from 10 mm2. */
};

/** Standard size by its place in the table.
 *
 * Model: table look-up, sizes in rising order from 0.
 *
 * @param[in]  kind      Kind of conductor. @choice{freeair_conductor_kind}
 * @param[in]  place     Place in the table, from 0. @range{[0;63]}
 * @param[out] area_m2   Nominal cross-section.
 * @param[out] r20_ohm_m Greatest resistance at 20 degC.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_DOMAIN    place is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND no such kind, or no more sizes
 * @source{IEC 60228:2004, Conductors of insulated cables, tables 1 to 3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_size(int32_t kind, int32_t place, double *area_m2, double *r20_ohm_m);

/** Greatest resistance of a standard size at 20 degC.
 *
 * Model: table look-up of the nominal cross-section, within 0.1 percent; no interpolation. The table's copper is some 6
 * percent more than length over cross-section gives: nominal sizes are only nominal.
 *
 * @param[in]  kind      Kind of conductor. @choice{freeair_conductor_kind}
 * @param[in]  area_m2   Nominal cross-section. @range{[1e-8;0.01]}
 * @param[out] r20_ohm_m Greatest resistance at 20 degC.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      r20_ohm_m is null
 * @retval FREEAIR_ERR_DOMAIN    area_m2 is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND no such kind or size
 * @source{IEC 60228:2004, Conductors of insulated cables, tables 1 to 3}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_table_resistance(int32_t kind, double area_m2, double *r20_ohm_m);

/** Resistance of a wire of a true cross-section at a temperature.
 *
 * Model: rho (1 + alpha (T - 293.15 K)) / A; copper of 100 percent IACS, rho = 1 / 58 ohm mm2 / m, alpha = 0.00393;
 * aluminium of 61 percent IACS, alpha = 0.00403. Direct current.
 *
 * @param[in]  kind    Kind of conductor, of which the metal counts. @choice{freeair_conductor_kind}
 * @param[in]  area_m2 Cross-section. @range{[1e-9;0.1]}
 * @param[in]  t_k     Temperature. @range{[200;600]}
 * @param[out] r_ohm_m Resistance.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      r_ohm_m is null
 * @retval FREEAIR_ERR_DOMAIN    an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND no such kind
 * @source{IEC 60028:1925, standard of resistance for copper; 61 percent IACS, ASTM B609; coefficients of IEC 60287-1-1, table 1, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_resistance(int32_t kind, double area_m2, double t_k, double *r_ohm_m);

/** Resistance at a temperature from that at 20 degC.
 *
 * Model: R20 (1 + alpha (T - 293.15 K)). IEC 60228 takes alpha = 0.004 for its corrections, tables of copper 0.00393;
 * at 70 degC the two differ by 0.3 percent.
 *
 * @param[in]  r20_ohm_m       Resistance at 20 degC. @range{[0;1000]}
 * @param[in]  coefficient_1_k Temperature coefficient alpha at 20 degC. @range{[0;0.01]}
 * @param[in]  t_k             Temperature. @range{[200;600]}
 * @param[out] r_ohm_m         Resistance.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   r_ohm_m is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{IEC 60228:2004, annex on correction factors}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_resistance_at(double r20_ohm_m, double coefficient_1_k, double t_k,
                                                    double *r_ohm_m);

/** Diameter and cross-section of an American wire gauge size.
 *
 * Model: d = 0.005 in 92^((36 - n) / 39), n = 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0; the metal of a solid
 * wire, or of all strands together.
 *
 * @param[in]  gauge      Gauge number. @range{[-3;50]}
 * @param[out] diameter_m Diameter of the solid wire.
 * @param[out] area_m2    Cross-section.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN gauge is outside its range
 * @source{ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_gauge(int32_t gauge, double *diameter_m, double *area_m2);

/** Thinnest American wire gauge size that has at least a cross-section.
 *
 * Model: the greatest gauge number whose cross-section is not below area_m2, less a millionth.
 *
 * @param[in]  area_m2 Cross-section wanted. @range{[1e-8;0.0001073]}
 * @param[out] gauge   Gauge number; 0 on error.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        gauge is null
 * @retval FREEAIR_ERR_DOMAIN      area_m2 is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION even 4/0 is thinner
 * @source{ASTM B258, inverted}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_gauge_from_area(double area_m2, int32_t *gauge);

/** Voltage and power that a run of wire takes.
 *
 * Model: k I L (r cos + x sin), k = 2 for one phase (out and back), sqrt(3) for three; power w I^2 r L with w = 2 or 3
 * wires. The usual approximation of the topic supply.
 *
 * @param[in]  length_m     Length of the run, one way. @range{[0;100000]}
 * @param[in]  r_ohm_m      Resistance of one wire at its temperature. @range{[0;1000]}
 * @param[in]  x_ohm_m      Reactance of one wire; 0.00008 is usual in pipe or cable. @range{[0;1]}
 * @param[in]  current_a    Line current. @range{[0;100000]}
 * @param[in]  power_factor Power factor of the load, lagging. @range{[0;1]}
 * @param[in]  phases       1 or 3; 2 is refused. @range{[1;3]}
 * @param[out] drop_v       Voltage drop.
 * @param[out] loss_w       Power that heats the wires.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   an output is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{IEEE Std 141-1993, 3.11, approximate formula for voltage drop, from memory}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_drop(double length_m, double r_ohm_m, double x_ohm_m, double current_a,
                                           double power_factor, int32_t phases, double *drop_v, double *loss_w);

/** Smallest standard size whose drop is within a permitted one.
 *
 * Model: the first size of the table of IEC 60228 whose freeair_conductor_drop at its temperature (alpha = 0.004) is
 * not above allowed_v. The drop only: current-carrying capacity, short circuit and the local code may ask for more.
 *
 * @param[in]  kind         Kind of conductor. @choice{freeair_conductor_kind}
 * @param[in]  length_m     Length of the run, one way. @range{[0;100000]}
 * @param[in]  t_k          Temperature of the wire at work; 343.15 K is usual. @range{[200;600]}
 * @param[in]  x_ohm_m      Reactance of one wire; 0.00008 is usual in pipe or cable. @range{[0;1]}
 * @param[in]  current_a    Line current. @range{[0;100000]}
 * @param[in]  power_factor Power factor of the load, lagging. @range{[0;1]}
 * @param[in]  phases       1 or 3; 2 is refused. @range{[1;3]}
 * @param[in]  allowed_v    Permitted voltage drop. @range{[0;100000]}
 * @param[out] area_m2      Nominal cross-section.
 * @param[out] drop_v       Its voltage drop.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND   no such kind
 * @retval FREEAIR_ERR_NO_SOLUTION no size of the table is thick enough
 * @source{IEC 60228:2004, tables 1 to 3, with the drop of freeair_conductor_drop}
 * @caution{FREEAIR_CAUTION_LIVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_conductor_size_for_drop(int32_t kind, double length_m, double t_k, double x_ohm_m,
                                                    double current_a, double power_factor, int32_t phases,
                                                    double allowed_v, double *area_m2, double *drop_v);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
