/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CYCLE_H
#define FREEAIR_CYCLE_H

#include <freeair/export.h>
#include <freeair/machine.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup cycle Cycle
 * The crank-angle model: what a machine does, revolution after revolution,
 * against a receiver at constant pressure. Inlet plenum, every cylinder,
 * intercooler and delivery line hold mass and energy of ideal gas; orifices and
 * quasi-static valves join them; walls take heat by a Nusselt law and settle at
 * the temperature at which they lose what they take. The solver integrates
 * revolutions until one repeats.
 *
 * What the model is worth: delivery within 2 to 4 %, interstage pressure within
 * 10 %, discharge temperature within 15 K of a real machine whose dimensions
 * are known; wall heat, valve lift and intercooler volume decide. The guide
 * gives the equations.
 * @{
 */

/** The operating point of a machine. Flows are means over a revolution, net and positive outward unless said.
 * @since 0.1
 */
typedef struct freeair_cycle_result {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double delivery_m3_s; /**< Net flow into the receiver as free air of the site; negative when it flows back. */
  double delivery_kg_s; /**< The same as mass flow. */
  double intake_kg_s; /**< Net flow in through the filter. */
  double inlet_backflow_kg_s; /**< Flow that blows back out of the filter. */
  double interstage_mean_pa; /**< Mean pressure of the intercooler, absolute; NaN for a single stage. */
  double interstage_min_pa; /**< Lowest pressure of the intercooler; NaN for a single stage. */
  double interstage_max_pa; /**< Highest pressure of the intercooler; NaN for a single stage. */
  double intercooler_k; /**< Mean temperature of the gas in the intercooler; NaN for a single stage. */
  double plenum_pa; /**< Mean pressure behind the filter. */
  double plenum_k; /**< Mean temperature behind the filter. */
  double line_pa; /**< Mean pressure before the check valve. */
  double line_k; /**< Mean temperature before the check valve. */
  double lp_discharge_k; /**< Mean temperature of gas leaving the first stage. */
  double hp_discharge_k; /**< Mean temperature of gas leaving the second stage; NaN for a single stage. */
  double lp_wall_k; /**< Wall temperature of the first cylinder of the first stage. */
  double hp_wall_k; /**< Wall temperature of the first cylinder of the second stage; NaN for a single stage. */
  double lp_volumetric_efficiency; /**< Net intake of the first stage over its displacement at ambient density. */
  double hp_volumetric_efficiency; /**< Net intake of the second stage over its displacement at intercooler density. */
  double lp_indicated_w; /**< Indicated power of the first stage. */
  double hp_indicated_w; /**< Indicated power of the second stage; 0 for a single stage. */
  double friction_w; /**< Friction power. */
  double shaft_w; /**< Power at the pump shaft. */
  double motor_w; /**< Power at the motor shaft. */
  double speed_rev_s; /**< Speed of the pump. */
  double motor_speed_rev_s; /**< Speed of the motor. */
  double motor_slip; /**< Slip of the motor. */
  double relief_kg_s; /**< Flow through the interstage relief valve. */
  double interstage_leak_kg_s; /**< Leak from the intercooler. */
  double unloader_kg_s; /**< Leak through the unloader. */
  double lp_ring_kg_s; /**< Flow past all rings of the first stage to the crankcase. */
  double hp_ring_kg_s; /**< Flow past all rings of the second stage to the crankcase. */
  double gasket_breach_kg_s; /**< Net flow through the breach from the first cylinder to the second. */
  double gasket_leak_kg_s; /**< Flow from the cylinders to outside past the gaskets. */
  double lp_suction_backflow_kg_s; /**< Flow back out through the suction valves of the first stage. */
  double hp_suction_backflow_kg_s; /**< Flow back out through the suction valves of the second stage. */
  double wall_heat_w; /**< Heat from the gas to all cylinder walls. */
  double intercooler_w; /**< Heat from the intercooler to ambient. */
  double line_w; /**< Heat from the line to ambient. */
  double lp_rod_max_n; /**< Largest gas load on a first-stage rod, compression positive. */
  double lp_rod_min_n; /**< Smallest gas load on a first-stage rod; negative is tension. */
  double hp_rod_max_n; /**< Largest gas load on a second-stage rod. */
  double hp_rod_min_n; /**< Smallest gas load on a second-stage rod. */
  double mass_error; /**< Imbalance of mass over the revolution, over the displacement's mass. */
  double energy_error; /**< Imbalance of energy over the revolution, over the displacement's enthalpy. */
  double residual; /**< Largest change of a state over the last revolution, over the displacement. */
  int32_t revolutions; /**< Revolutions integrated. */
  int32_t steps; /**< Steps taken in all of them. */
  int32_t evaluations; /**< Evaluations of the rates in all of them. */
  int32_t stages; /**< Stages of the machine. */
} freeair_cycle_result;

/** Initial value of a result. */
#define FREEAIR_CYCLE_RESULT_INIT \
  { (uint32_t)sizeof(freeair_cycle_result), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_CYCLE_RESULT_BASELINE 384

/** Initialises a result.
 *
 * Model: assignment.
 *
 * @param[out] point       Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    point is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cycle_result_init(freeair_cycle_result *point, size_t caller_size);

/** Operating point of a machine against a receiver at constant pressure.
 *
 * Model: mass and energy balances dm/dt = sum m', dU/dt = sum m' h - Q - p dV/dt
 * of each volume over the crank angle, isentropic nozzles, quasi-static valves,
 * wall heat Nu = a Re^b, integrated with an L-stable pair of order 4(3) to
 * periodicity by Newton's method. At most 1000 revolutions, usually 6 to 12.
 *
 * @param[in]  machine     The machine.
 * @param[in]  site        The site.
 * @param[in]  receiver_pa Pressure in the receiver, absolute. @range{(0;1e8]}
 * @param[in]  receiver_k  Temperature of gas that flows back from the receiver. @range{(0;1000]} @default{ambient}
 * @param[in]  accuracy    Accuracy of the delivery, over the displacement. @range{[1e-6;0.1]} @default{1e-3}
 * @param[out] point       The operating point.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_LIMIT         computed, but the motor slips by 0.2 or a wall is above 700 K
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, see freeair_machine_complete
 * @retval FREEAIR_ERR_NO_CONVERGENCE no revolution repeated
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state, or to walls above 3000 K
 * @source{Annand, Heat transfer in the cylinders of reciprocating internal combustion engines, Proc. IMechE 177
 *         (1963), form of the wall heat law; the balances are common practice}
 * @caution{FREEAIR_CAUTION_HOT}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cycle_point(const freeair_machine *machine, const freeair_machine_site *site,
                                        double receiver_pa, double receiver_k, double accuracy,
                                        freeair_cycle_result *point);

/** Indicator card of one cylinder at an operating point.
 *
 * Model: as in freeair_cycle_point; n points at equal crank angles from the top
 * dead centre of the first cylinder, so that point i is at i/n of a revolution.
 *
 * @param[in]  machine     The machine.
 * @param[in]  site        The site.
 * @param[in]  receiver_pa Pressure in the receiver, absolute. @range{(0;1e8]}
 * @param[in]  receiver_k  Temperature of gas that flows back from the receiver. @range{(0;1000]} @default{ambient}
 * @param[in]  accuracy    Accuracy of the delivery, over the displacement. @range{[1e-6;0.1]} @default{1e-3}
 * @param[in]  cylinder    Which cylinder: first stage from 0, then second stage. @range{[0;7]}
 * @param[out] v_m3        Volume, clearance included. @shape{n}
 * @param[out] p_pa        Pressure, absolute. @shape{n}
 * @param[out] t_k         Temperature. @shape{n}
 * @param[in]  n           Number of points, at least 4.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_LIMIT         computed, but the motor slips by 0.2 or a wall is above 700 K
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a value is outside its range, or n is below 4
 * @retval FREEAIR_ERR_NOT_FOUND      the machine has no such cylinder
 * @retval FREEAIR_ERR_NO_CONVERGENCE no revolution repeated
 * @retval FREEAIR_ERR_NO_SOLUTION    the description leads to no physical state, or to walls above 3000 K
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_cycle_card(const freeair_machine *machine, const freeair_machine_site *site,
                                       double receiver_pa, double receiver_k, double accuracy, int32_t cylinder,
                                       double *v_m3, double *p_pa, double *t_k, size_t n);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
