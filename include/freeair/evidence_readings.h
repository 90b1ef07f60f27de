/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_EVIDENCE_READINGS_H
#define FREEAIR_EVIDENCE_READINGS_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup evidence_readings Readings
 * What was read from instruments on a service visit, or what a sound machine
 * would show there: one structure serves for both, each value with its standard
 * uncertainty beside it. NaN means not taken. Absolute pressures, SI.
 *
 * The uncertainty of a reading is that of the instrument and its use. The
 * uncertainty of an expected value is that of the expectation: rating
 * tolerance, scatter from unit to unit, model; where it is NaN the spread of
 * freeair_likelihood_spread is used instead of the default given here.
 * @{
 */

/** Readings: the fields of freeair_evidence_readings, in their order.
 * @since 0.1
 */
enum freeair_evidence_reading {
  FREEAIR_EVIDENCE_READING_NONE = 0,       /**< No reading. */
  FREEAIR_EVIDENCE_DELIVERY = 1,           /**< Free air delivery from a pump-up test. */
  FREEAIR_EVIDENCE_TIME_FROM_EMPTY = 2,    /**< Time from empty to cut-out. */
  FREEAIR_EVIDENCE_TIME_FROM_CUTIN = 3,    /**< Time from cut-in to cut-out. */
  FREEAIR_EVIDENCE_LEVEL_OFF = 4,          /**< Pressure at which it levels off. */
  FREEAIR_EVIDENCE_INTERSTAGE = 5,         /**< Interstage pressure. */
  FREEAIR_EVIDENCE_LP_DISCHARGE = 6,       /**< LP discharge temperature. */
  FREEAIR_EVIDENCE_HP_DISCHARGE = 7,       /**< HP discharge temperature. */
  FREEAIR_EVIDENCE_INTERCOOLER_OUTLET = 8, /**< Intercooler outlet temperature. */
  FREEAIR_EVIDENCE_MOTOR_SPEED = 9,        /**< Motor speed. */
  FREEAIR_EVIDENCE_PUMP_SPEED = 10,        /**< Pump speed. */
  FREEAIR_EVIDENCE_SUPPLY_RUNNING = 11,    /**< Voltage at the running motor. */
  FREEAIR_EVIDENCE_SUPPLY_STARTING = 12,   /**< Voltage at the starting motor. */
  FREEAIR_EVIDENCE_MOTOR_CURRENT = 13,     /**< Motor current. */
  FREEAIR_EVIDENCE_POWER = 14,             /**< Electrical power. */
  FREEAIR_EVIDENCE_RUN_CAPACITANCE = 15,   /**< Capacitance of the run capacitor. */
  FREEAIR_EVIDENCE_START_CAPACITANCE = 16, /**< Capacitance of the start capacitor. */
  FREEAIR_EVIDENCE_LEAK_ISOLATED = 17,     /**< Leak with the service valve closed. */
  FREEAIR_EVIDENCE_LEAK_OPEN = 18,         /**< Leak with the system open. */
  FREEAIR_EVIDENCE_GAUGE_DIFFERENCE = 19,  /**< Machine's gauge less a second gauge. */
  FREEAIR_EVIDENCE_CUTOUT = 20,            /**< Pressure at which it cuts out. */
  FREEAIR_EVIDENCE_RELIEF_OPENING = 21,    /**< Pressure at which the interstage relief opens. */
  FREEAIR_EVIDENCE_FILTER_DROP = 22,       /**< Pressure drop of the intake filter. */
  FREEAIR_EVIDENCE_BELT_DEFLECTION = 23,   /**< Belt deflection under the stated force. */
  FREEAIR_EVIDENCE_WATER = 24,             /**< Water drained from the receiver. */
  FREEAIR_EVIDENCE_DUTY = 25,              /**< Share of time loaded. */
  FREEAIR_EVIDENCE_AMBIENT = 26,           /**< Ambient temperature. */
  FREEAIR_EVIDENCE_BAROMETER = 27          /**< Barometric pressure. */
};

/** Readings, or their expected values; each field u_x is the standard uncertainty of field x.
 * @since 0.1
 */
typedef struct freeair_evidence_readings {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double delivery_m3_s; /**< Free air delivery at the site's conditions from a pump-up test. @range{(0;1000]}
         @default{not taken} */
  double u_delivery_m3_s; /**< Its standard uncertainty. @range{[0;1000]} @default{3 % of it} */
  double t_empty_to_cutout_s; /**< Time from empty and cool to cut-out. @range{(0;1e7]} @default{not taken} */
  double u_t_empty_to_cutout_s; /**< Its standard uncertainty. @range{[0;1e7]} @default{2 % of it} */
  double t_cutin_to_cutout_s; /**< Time from cut-in to cut-out. @range{(0;1e7]} @default{not taken} */
  double u_t_cutin_to_cutout_s; /**< Its standard uncertainty. @range{[0;1e7]} @default{3 % of it} */
  double p_level_off_pa; /**< Receiver pressure, absolute, at which it levels off below cut-out. @range{(0;1e8]}
         @default{not taken} */
  double u_p_level_off_pa; /**< Its standard uncertainty. @range{[0;1e8]} @default{none is used} */
  double p_interstage_pa; /**< Interstage pressure, absolute, at one receiver pressure near cut-out. @range{(0;1e8]}
         @default{not taken} */
  double u_p_interstage_pa; /**< Its standard uncertainty. @range{[0;1e8]} @default{2 % of it} */
  double t_lp_discharge_k; /**< LP discharge temperature near cut-out. @range{(0;5000]} @default{not taken} */
  double u_t_lp_discharge_k; /**< Its standard uncertainty. @range{[0;2000]} @default{5} */
  double t_hp_discharge_k; /**< HP discharge temperature near cut-out. @range{(0;5000]} @default{not taken} */
  double u_t_hp_discharge_k; /**< Its standard uncertainty. @range{[0;2000]} @default{5} */
  double t_intercooler_out_k; /**< Intercooler outlet temperature near cut-out. @range{(0;5000]} @default{not taken} */
  double u_t_intercooler_out_k; /**< Its standard uncertainty. @range{[0;2000]} @default{3} */
  double motor_speed_rev_s; /**< Motor speed near cut-out. @range{(0;1000]} @default{not taken} */
  double u_motor_speed_rev_s; /**< Its standard uncertainty. @range{[0;1000]} @default{0.2 % of it} */
  double pump_speed_rev_s; /**< Pump speed near cut-out. @range{(0;1000]} @default{not taken} */
  double u_pump_speed_rev_s; /**< Its standard uncertainty. @range{[0;1000]} @default{0.3 % of it} */
  double supply_running_v; /**< Voltage at the motor, running near cut-out. @range{(0;1e5]} @default{not taken} */
  double u_supply_running_v; /**< Its standard uncertainty. @range{[0;1e5]} @default{0.5 % of it} */
  double supply_starting_v; /**< Lowest voltage at the motor during a start. @range{(0;1e5]} @default{not taken} */
  double u_supply_starting_v; /**< Its standard uncertainty. @range{[0;1e5]} @default{2 % of it} */
  double motor_current_a; /**< Motor current near cut-out. @range{(0;1e5]} @default{not taken} */
  double u_motor_current_a; /**< Its standard uncertainty. @range{[0;1e5]} @default{2 % of it} */
  double power_w; /**< Electrical power near cut-out. @range{(0;1e8]} @default{not taken} */
  double u_power_w; /**< Its standard uncertainty. @range{[0;1e8]} @default{3 % of it} */
  double run_capacitance_f; /**< Capacitance of the run capacitor; expected: as printed. @range{(0;1]}
         @default{not taken} */
  double u_run_capacitance_f; /**< Its standard uncertainty. @range{[0;1]} @default{1 % of it} */
  double start_capacitance_f; /**< Capacitance of the start capacitor; expected: as printed. @range{(0;1]}
         @default{not taken} */
  double u_start_capacitance_f; /**< Its standard uncertainty. @range{[0;1]} @default{2 % of it} */
  double leak_isolated_m3_s; /**< Leak as free air, stopped with the service valve closed. @range{[0;1000]}
         @default{not taken} */
  double u_leak_isolated_m3_s; /**< Its standard uncertainty. @range{[0;1000]} @default{0.5 % of delivery} */
  double leak_open_m3_s; /**< Leak as free air, system open without use. @range{[0;1000]} @default{not taken} */
  double u_leak_open_m3_s; /**< Its standard uncertainty. @range{[0;1000]} @default{1 % of delivery} */
  double gauge_difference_pa; /**< Machine's gauge less a tested gauge near cut-out. @range{[-1e7;1e7]}
         @default{not taken} */
  double u_gauge_difference_pa; /**< Its standard uncertainty. @range{[0;1e7]} @default{0.5 % of cut-out} */
  double p_cutout_pa; /**< Pressure, absolute, at which it cuts out by a tested gauge. @range{(0;1e8]}
         @default{not taken} */
  double u_p_cutout_pa; /**< Its standard uncertainty. @range{[0;1e8]} @default{1 % of it} */
  double p_relief_opening_pa; /**< Pressure, absolute, at which the interstage relief begins to lift; expected: its
         setting. @range{(0;1e8]} @default{not taken} */
  double u_p_relief_opening_pa; /**< Its standard uncertainty. @range{[0;1e8]} @default{3 % of it} */
  double filter_drop_pa; /**< Pressure drop of the intake filter. @range{[0;1e6]} @default{not taken} */
  double u_filter_drop_pa; /**< Its standard uncertainty. @range{[0;1e6]} @default{0.2 % of ambient} */
  double belt_deflection_m; /**< Belt deflection at mid span under the stated force. @range{(0;1]} @default{not taken}
         */
  double u_belt_deflection_m; /**< Its standard uncertainty. @range{[0;1]} @default{15 % of it} */
  double water_m3; /**< Water drained from the receiver. @range{[0;1e4]} @default{not taken} */
  double u_water_m3; /**< Its standard uncertainty. @range{[0;1e4]} @default{1 % of receiver} */
  double duty; /**< Share of time loaded in ordinary use. @range{[0;1]} @default{not taken} */
  double u_duty; /**< Its standard uncertainty. @range{[0;1]} @default{0.03} */
  double t_ambient_k; /**< Ambient temperature at the intake; expected: that for which the values hold.
         @range{[200;350]} @default{not taken} */
  double u_t_ambient_k; /**< Its standard uncertainty. @range{[0;350]} @default{1} */
  double p_ambient_pa; /**< Barometric pressure; expected: that for which the values hold. @range{[2e4;1.3e5]}
         @default{not taken} */
  double u_p_ambient_pa; /**< Its standard uncertainty. @range{[0;1.3e5]} @default{0.2 % of it} */
} freeair_evidence_readings;

/** Initial value: nothing taken. */
#define FREEAIR_EVIDENCE_READINGS_INIT \
  { (uint32_t)sizeof(freeair_evidence_readings), 0u, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_EVIDENCE_READINGS_BASELINE 440

/** Initialises readings to "nothing taken".
 *
 * Model: assignment.
 *
 * @param[out] readings    Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    readings is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_evidence_readings_init(freeair_evidence_readings *readings, size_t caller_size);

/** One reading and its uncertainty by code, so that a program can loop over them.
 *
 * Model: look-up; NaN where not taken or not given.
 *
 * @param[in]  readings    Readings.
 * @param[in]  reading     Which. @choice{freeair_evidence_reading}
 * @param[out] value       The field of that code. @unit{any}
 * @param[out] uncertainty Its u_ field. @unit{any}
 * @retval FREEAIR_OK            found, possibly NaN
 * @retval FREEAIR_ERR_NULL      a pointer is null
 * @retval FREEAIR_ERR_VERSION   readings has an unknown size
 * @retval FREEAIR_ERR_DOMAIN    a reading is out of range, or flags is not 0
 * @retval FREEAIR_ERR_NOT_FOUND reading is not a known code
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_evidence_readings_get(const freeair_evidence_readings *readings, int32_t reading,
                                                  double *value, double *uncertainty);

/** Whether every reading is in its documented range.
 *
 * Model: the ranges documented at the fields; NaN passes.
 *
 * @param[in]  readings Readings.
 * @param[out] reading  First code whose value or uncertainty is out of range; 0 when there is none.
 * @param[out] n_taken  Number of readings taken.
 * @retval FREEAIR_OK          all in range
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_VERSION readings has an unknown size
 * @retval FREEAIR_ERR_DOMAIN  the named reading is out of range, or flags is not 0
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_evidence_readings_check(const freeair_evidence_readings *readings, int32_t *reading,
                                                    int32_t *n_taken);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
