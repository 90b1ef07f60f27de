/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_FAULT_H
#define FREEAIR_FAULT_H

#include <freeair/export.h>
#include <freeair/machine.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup fault Fault
 * What can be wrong with a machine, as changes of the physical parameters of
 * its description: areas, clearances, speeds, voltages, restrictions, set
 * points. Each fault has a severity from 0, as described, to 1, the worst that
 * is found in the field. Faults combine by applying one after the other.
 *
 * The parameter always grows with the severity, and so does what the fault costs
 * in delivery, with one exception that is physics: a valve, a check valve or a
 * gasket passes air both ways, and wide open it throttles less than half open.
 * The loss of these grows to a greatest one and may then shrink, once, by less
 * than 1 % of the displacement with most machines; up to 3 % with a discharge
 * valve of the second stage near cut-out, 9 % with one valve of a twin (whose
 * other cylinder breathes what the first has heated). The guide has the figures.
 * @{
 */

/** Faults, with the parameter each changes at severity s.
 * @since 0.1
 */
enum freeair_fault {
  FREEAIR_FAULT_NONE = 0, /**< Nothing wrong. */
  FREEAIR_FAULT_INTAKE_FILTER = 1, /**< Intake filter clogged: area times 0.03^s. */
  FREEAIR_FAULT_LP_SUCTION_VALVE = 2, /**< Suction valve, first stage: open area grows by s^2 up to fully open. */
  FREEAIR_FAULT_LP_DISCHARGE_VALVE = 3, /**< Discharge valve, first stage: the same. */
  FREEAIR_FAULT_HP_SUCTION_VALVE = 4, /**< Suction valve, second stage: the same. */
  FREEAIR_FAULT_HP_DISCHARGE_VALVE = 5, /**< Discharge valve, second stage: the same. */
  FREEAIR_FAULT_GASKET_BETWEEN = 6, /**< Gasket between two cylinders: s^2 / 100 of the smaller bore area opens. */
  FREEAIR_FAULT_LP_GASKET_OUTSIDE = 7, /**< Head gasket to outside, first stage: s^2 / 100 of the bore area opens. */
  FREEAIR_FAULT_HP_GASKET_OUTSIDE = 8, /**< Head gasket to outside, second stage: the same. */
  FREEAIR_FAULT_LP_RINGS = 9, /**< Rings, first stage: area grows by s^2 / 200 of the bore area. */
  FREEAIR_FAULT_HP_RINGS = 10, /**< Rings, second stage: the same. */
  FREEAIR_FAULT_INTERSTAGE_LEAK = 11, /**< Leak between the stages: s^2 / 10 of the discharge valves of the first. */
  FREEAIR_FAULT_INTERCOOLER_FOULED = 12, /**< Intercooler dirty: UA times 0.1^s, flow area times 0.3^s. */
  FREEAIR_FAULT_RELIEF_WEAK = 13, /**< Interstage relief opens early: gauge set pressure times 1 - 0.95 s. */
  FREEAIR_FAULT_UNLOADER_LEAK = 14, /**< Unloader passes while loaded: s^2 times a tenth of check_valve_area_m2. */
  FREEAIR_FAULT_CHECK_VALVE = 15, /**< Receiver check valve leaks back: open area grows by s^2 up to fully open. */
  FREEAIR_FAULT_DOWNSTREAM_LEAK = 16, /**< Leak behind the pump: the area that passes s^2 times the displacement, choked
                                           at cut_out_pa, both as air of 101325 Pa and 293.15 K at rest. */
  FREEAIR_FAULT_DEMAND = 17, /**< Air used during the test: s times the displacement. */
  FREEAIR_FAULT_RECEIVER_WATER = 18, /**< Receiver partly full of water: 0.8 s of what is not yet. */
  FREEAIR_FAULT_BELT_SLIP = 19, /**< Belt slips: remaining speed times 1 - 0.4 s. */
  FREEAIR_FAULT_PULLEY = 20, /**< Motor pulley too small or flywheel too large: ratio times 1 - 0.4 s. */
  FREEAIR_FAULT_LOW_VOLTAGE = 21, /**< Voltage at the motor times 1 - 0.3 s. */
  FREEAIR_FAULT_RUN_CAPACITOR = 22, /**< Run capacitor weak: motor torque at given slip times 1 - 0.6 s. */
  FREEAIR_FAULT_PRESSURE_SWITCH = 23, /**< Switch acts late: error grows by 0.3 s of the gauge cut-out. */
  FREEAIR_FAULT_GAUGE = 24 /**< Receiver gauge reads high: error grows by 0.3 s of the gauge cut-out. */
};

/** Number of fault codes, FREEAIR_FAULT_NONE included.
 *
 * Model: count.
 *
 * @return The number; codes run from 0 to one less.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fault_count(void);

/** Name of a fault in plain words, such as "intake filter".
 *
 * Model: table look-up.
 *
 * @param[in] fault A fault. @choice{freeair_fault}
 * @return Static string, never null; "unknown" for a code this library does not know.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_fault_name(int32_t fault);

/** Whether a machine can have a fault at all.
 *
 * Model: faults of the second stage and between the stages need two stages; a
 * gasket between two cylinders needs two cylinders side by side under one head.
 *
 * @param[in]  machine Description, possibly with NaN fields.
 * @param[in]  fault   A fault. @choice{freeair_fault}
 * @param[out] applies 1 if it can, else 0.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      a pointer is null
 * @retval FREEAIR_ERR_VERSION   the structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN    the description is invalid
 * @retval FREEAIR_ERR_NOT_FOUND fault is not a known code
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fault_applies(const freeair_machine *machine, int32_t fault, int32_t *applies);

/** Applies a fault to a description and its site.
 *
 * Model: the change documented at each code, in addition to what the
 * description already holds; the parameter is continuous and monotone in the
 * severity, and unchanged at severity 0. A valve fault of a stage of several cylinders affects the first
 * of them, unless lp_leaking_cylinders or hp_leaking_cylinders says otherwise
 * or the stage already leaks.
 * The outputs may be the same structures as the inputs.
 *
 * @param[in]  machine        Description, possibly with NaN fields.
 * @param[in]  site           Site, possibly with NaN fields.
 * @param[in]  fault          A fault. @choice{freeair_fault}
 * @param[in]  severity       Severity. @range{[0;1]}
 * @param[out] faulty_machine The complete description with the fault.
 * @param[out] faulty_site    The complete site with the fault.
 * @retval FREEAIR_OK              applied
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_VERSION     a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN      the description is invalid, or severity is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND   fault is not a known code
 * @retval FREEAIR_ERR_UNSUPPORTED the machine cannot have this fault
 * @source{common practice}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_fault_apply(const freeair_machine *machine, const freeair_machine_site *site,
                                        int32_t fault, double severity, freeair_machine *faulty_machine,
                                        freeair_machine_site *faulty_site);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
