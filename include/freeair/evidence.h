/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_EVIDENCE_H
#define FREEAIR_EVIDENCE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup evidence Evidence
 * The words of a diagnosis: causes, what can be observed or read, and which
 * check brings it. Each has a code that never changes, a name for programs, a
 * title in the terms of the trade, and a text. Codes run without gaps from 1; 0
 * stands for none. On a single-stage machine the LP valves are its valves.
 * @{
 */

/** Kinds of entry.
 * @since 0.1
 */
enum freeair_evidence_kind {
  FREEAIR_EVIDENCE_KIND_CAUSE = 1,       /**< Codes of freeair_evidence_cause. */
  FREEAIR_EVIDENCE_KIND_OBSERVATION = 2, /**< Codes of freeair_evidence_observation. */
  FREEAIR_EVIDENCE_KIND_READING = 3,     /**< Codes of freeair_evidence_reading, in evidence_readings.h. */
  FREEAIR_EVIDENCE_KIND_CHECK = 4        /**< Codes of freeair_evidence_check. */
};

/** Answers to "was it observed?". @since 0.1 */
enum freeair_evidence_answer {
  FREEAIR_EVIDENCE_NOT_CHECKED = 0, /**< Nobody looked, or could not tell: no evidence. */
  FREEAIR_EVIDENCE_YES = 1,         /**< Looked for and observed. */
  FREEAIR_EVIDENCE_NO = 2           /**< Looked for and absent. */
};

/** Causes.
 * @since 0.1
 */
enum freeair_evidence_cause {
  FREEAIR_EVIDENCE_CAUSE_NONE = 0,        /**< No cause named. */
  FREEAIR_EVIDENCE_HEALTHY = 1,           /**< Machine and system are sound. */
  FREEAIR_EVIDENCE_OTHER = 2,             /**< Something that has no entry here. */
  FREEAIR_EVIDENCE_INTAKE_FILTER = 3,     /**< Intake filter or intake blocked. */
  FREEAIR_EVIDENCE_LP_SUCTION_VALVE = 4,  /**< LP suction valve broken, bent or held open. */
  FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE = 5, /**< LP discharge valve leaks. */
  FREEAIR_EVIDENCE_HP_SUCTION_VALVE = 6,  /**< HP suction valve leaks. */
  FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE = 7, /**< HP discharge valve leaks. */
  FREEAIR_EVIDENCE_GASKET_BETWEEN = 8,    /**< Head gasket breached between two cylinders. */
  FREEAIR_EVIDENCE_GASKET_OUTSIDE = 9,    /**< Head or valve-plate gasket leaks to outside. */
  FREEAIR_EVIDENCE_PISTON_RINGS = 10,     /**< Piston rings or bores worn. */
  FREEAIR_EVIDENCE_INTERSTAGE_LEAK = 11,  /**< Leak between the stages. */
  FREEAIR_EVIDENCE_INTERCOOLER_FOULED = 12, /**< Intercooler dirty, or its fan or shroud gone. */
  FREEAIR_EVIDENCE_RELIEF_WEAK = 13,      /**< Interstage relief valve opens early or leaks. */
  FREEAIR_EVIDENCE_UNLOADER_LEAK = 14,    /**< Unloader passes while the machine is loaded. */
  FREEAIR_EVIDENCE_CHECK_VALVE = 15,      /**< Receiver check valve leaks back. */
  FREEAIR_EVIDENCE_DOWNSTREAM = 16,       /**< Leak, open drain or demand behind the pump. */
  FREEAIR_EVIDENCE_RECEIVER_WATER = 17,   /**< Water fills part of the receiver. */
  FREEAIR_EVIDENCE_BELT_SLIP = 18,        /**< Belt slips. */
  FREEAIR_EVIDENCE_WRONG_PULLEY = 19,     /**< Wrong pulley: pump turns slow without slip. */
  FREEAIR_EVIDENCE_LOW_VOLTAGE = 20,      /**< Low supply voltage at the motor. */
  FREEAIR_EVIDENCE_RUN_CAPACITOR = 21,    /**< Run capacitor weak. */
  FREEAIR_EVIDENCE_START_CAPACITOR = 22,  /**< Start capacitor or its switch failed. */
  FREEAIR_EVIDENCE_MOTOR = 23,            /**< Motor itself slow or weak. */
  FREEAIR_EVIDENCE_GAUGE_OR_SWITCH = 24   /**< Pressure gauge or pressure switch off. */
};

/** Observations, each answered by freeair_evidence_answer.
 * @since 0.1
 */
enum freeair_evidence_observation {
  FREEAIR_EVIDENCE_OBSERVATION_NONE = 0,      /**< No observation. */
  FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET = 1,    /**< Air pulses back out of the intake. */
  FREEAIR_EVIDENCE_CHIRPING_AT_HEADS = 2,     /**< Chirping or clatter at the heads. */
  FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS = 3, /**< Interstage relief valve lifts. */
  FREEAIR_EVIDENCE_LP_HEAD_HOT = 4,           /**< LP head hotter than usual. */
  FREEAIR_EVIDENCE_HP_HEAD_HOT = 5,           /**< HP head hotter than usual. */
  FREEAIR_EVIDENCE_HOT_BETWEEN_BORES = 6,     /**< Head hottest between the bores. */
  FREEAIR_EVIDENCE_AIR_AT_HEAD_JOINT = 7,     /**< Air escapes at a head joint. */
  FREEAIR_EVIDENCE_BREATHER_BLOWS = 8,        /**< Crankcase breather blows strongly. */
  FREEAIR_EVIDENCE_OIL_IN_DRAIN = 9,          /**< Oily water or oil at the drain. */
  FREEAIR_EVIDENCE_OIL_USE_HIGH = 10,         /**< Pump uses oil. */
  FREEAIR_EVIDENCE_BELT_DUST = 11,            /**< Black dust at the belt guard. */
  FREEAIR_EVIDENCE_BELT_SQUEALS = 12,         /**< Belt squeals, at start above all. */
  FREEAIR_EVIDENCE_BELT_GLAZED = 13,          /**< Belt glazed, cracked or frayed. */
  FREEAIR_EVIDENCE_BELT_LOOSE = 14,           /**< Belt loose. */
  FREEAIR_EVIDENCE_DRIVE_CHANGED = 15,        /**< Motor, pulley or flywheel changed lately. */
  FREEAIR_EVIDENCE_PUMP_SOUNDS_SLOW = 16,     /**< Pump turns slow by ear or eye. */
  FREEAIR_EVIDENCE_HUMS_AT_START = 17,        /**< Motor hums or comes up slowly. */
  FREEAIR_EVIDENCE_BREAKER_TRIPS = 18,        /**< Breaker or overload trips. */
  FREEAIR_EVIDENCE_CAPACITOR_BULGED = 19,     /**< Capacitor bulged, cracked or leaking. */
  FREEAIR_EVIDENCE_LIGHTS_DIM = 20,           /**< Lights dim at start, or the lead is long or thin. */
  FREEAIR_EVIDENCE_HISS_AT_SWITCH = 21,       /**< Hiss at switch or unloader while loaded. */
  FREEAIR_EVIDENCE_BETTER_UNLOADER_BLOCKED = 22, /**< Right with the unloader line blocked off. */
  FREEAIR_EVIDENCE_UNLOADER_BLOWS_STOPPED = 23, /**< Unloader goes on blowing after the stop. */
  FREEAIR_EVIDENCE_HARD_RESTART = 24,         /**< Restarts hard while there is pressure. */
  FREEAIR_EVIDENCE_FALLS_WHEN_STOPPED = 25,   /**< Pressure falls, stopped and isolated. */
  FREEAIR_EVIDENCE_DRAIN_PASSES = 26,         /**< Drain passes air. */
  FREEAIR_EVIDENCE_LEAKS_HEARD = 27,          /**< Leaks heard in the system. */
  FREEAIR_EVIDENCE_DEMAND_ADDED = 28,         /**< Tools or machines added, or used more. */
  FREEAIR_EVIDENCE_FINE_WHEN_ISOLATED = 29,   /**< Pumps up in its usual time with the service valve closed. */
  FREEAIR_EVIDENCE_RUNS_AT_NIGHT = 30,        /**< Runs often when nobody uses air. */
  FREEAIR_EVIDENCE_SYSTEM_STARVES = 31,       /**< Machine reaches cut-out, yet users run short. */
  FREEAIR_EVIDENCE_FILTER_DIRTY = 32,         /**< Filter element dirty. */
  FREEAIR_EVIDENCE_BETTER_FILTER_OUT = 33,    /**< Faster with the filter element out. */
  FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES = 34,   /**< Soap bubbles at interstage joints or cooler. */
  FREEAIR_EVIDENCE_INTERCOOLER_DIRTY = 35,    /**< Cooler fins blocked, fan or shroud damaged. */
  FREEAIR_EVIDENCE_RELIEF_POPS_EARLY = 36,    /**< Interstage relief lifts below its setting. */
  FREEAIR_EVIDENCE_WATER_DRAINED = 37,        /**< Much water came out of the receiver. */
  FREEAIR_EVIDENCE_SHORT_CYCLES = 38,         /**< Pumps up fast and cycles often. */
  FREEAIR_EVIDENCE_NEVER_REACHES_CUTOUT = 39, /**< Never reaches cut-out. */
  FREEAIR_EVIDENCE_STOPS_AT_WRONG_PRESSURE = 40, /**< Stops off its setting by a second gauge. */
  FREEAIR_EVIDENCE_SLOWER_NEAR_CUTOUT = 41,   /**< Slow at high pressure more than at low. */
  FREEAIR_EVIDENCE_CAME_SUDDENLY = 42,        /**< Came from one day to the next. */
  FREEAIR_EVIDENCE_HEADS_OPENED_LATELY = 43,  /**< Heads were opened lately. */
  FREEAIR_EVIDENCE_LP_VALVES_BAD = 44,        /**< Head off: LP reeds or seats damaged. */
  FREEAIR_EVIDENCE_HP_VALVES_BAD = 45,        /**< Head off: HP reeds or seats damaged. */
  FREEAIR_EVIDENCE_GASKET_BURNT = 46          /**< Head off: gasket burnt through. */
};

/** Checks that bring observations and readings.
 * @since 0.1
 */
enum freeair_evidence_check {
  FREEAIR_EVIDENCE_CHECK_NONE = 0,         /**< No check. */
  FREEAIR_EVIDENCE_ASK = 1,                /**< Ask what changed and since when. */
  FREEAIR_EVIDENCE_LISTEN_AT_INLET = 2,    /**< Hand and ear at the intake. */
  FREEAIR_EVIDENCE_LISTEN_AT_HEADS = 3,    /**< Listen at heads, joints and relief valve. */
  FREEAIR_EVIDENCE_LOOK_AT_DRIVE = 4,      /**< Look and listen at the drive, guard on. */
  FREEAIR_EVIDENCE_LOOK_AT_OIL = 5,        /**< Oil level, breather, drain. */
  FREEAIR_EVIDENCE_WALK_THE_SYSTEM = 6,    /**< Walk the pipework, drains and hoses. */
  FREEAIR_EVIDENCE_SECOND_GAUGE = 7,       /**< Compare gauge and switch with a second gauge. */
  FREEAIR_EVIDENCE_PUMP_UP_TEST = 8,       /**< Time the pump-up with the service valve closed. */
  FREEAIR_EVIDENCE_STOP_AND_WATCH = 9,     /**< Stop, close the service valve, watch the gauge. */
  FREEAIR_EVIDENCE_LEAK_DOWN_OPEN = 10,    /**< Leak-down with the system open, no use. */
  FREEAIR_EVIDENCE_INTERSTAGE_GAUGE = 11,  /**< Read the interstage pressure. */
  FREEAIR_EVIDENCE_TEMPERATURES = 12,      /**< Discharge, head and cooler temperatures. */
  FREEAIR_EVIDENCE_TACHOMETER = 13,        /**< Motor and pump speed by tachometer. */
  FREEAIR_EVIDENCE_FILTER_OUT = 14,        /**< One pump-up with the filter element out. */
  FREEAIR_EVIDENCE_SOAP_INTERSTAGE = 15,   /**< Soap on interstage joints, cooler and heads. */
  FREEAIR_EVIDENCE_BLOCK_UNLOADER = 16,    /**< One pump-up with the unloader line blocked off. */
  FREEAIR_EVIDENCE_INSPECT_BELT = 17,      /**< Inspect belt, tension and pulleys, locked out. */
  FREEAIR_EVIDENCE_MEASURE_SUPPLY = 18,    /**< Volts, amperes and watts at the motor. */
  FREEAIR_EVIDENCE_MEASURE_CAPACITORS = 19, /**< Inspect and measure the capacitors, discharged. */
  FREEAIR_EVIDENCE_WATCH_A_START = 20,     /**< Watch a start against pressure. */
  FREEAIR_EVIDENCE_LOG_A_DAY = 21,         /**< Log the pressure over a day and night. */
  FREEAIR_EVIDENCE_DRAIN_RECEIVER = 22,    /**< Drain the receiver and measure the water. */
  FREEAIR_EVIDENCE_HEADS_OFF = 23,         /**< Heads off: valves, plates and gaskets. */
  FREEAIR_EVIDENCE_READ_SITE = 24          /**< Thermometer and barometer. */
};

/** Number of codes of a kind, 0 included: codes run from 1 to one less.
 *
 * Model: count.
 * @param[in] kind Kind of entry. @choice{freeair_evidence_kind}
 * @return The number; 0 for a kind this library does not know.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_evidence_count(int32_t kind);

/** Name of an entry for files and programs, such as "lp_suction_valve".
 *
 * Model: table look-up.
 * @param[in] kind Kind of entry. @choice{freeair_evidence_kind}
 * @param[in] code Code of that kind. @range{[0;1000]}
 * @return Static string, never null; empty for an unknown kind or code.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_evidence_name(int32_t kind, int32_t code);

/** Title of an entry in the terms of the trade, such as "LP suction valve".
 *
 * Model: table look-up.
 * @param[in] kind Kind of entry. @choice{freeair_evidence_kind}
 * @param[in] code Code of that kind. @range{[0;1000]}
 * @return Static string, never null; empty for an unknown kind or code.
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API const char *freeair_evidence_title(int32_t kind, int32_t code);

/** Explanation of an entry: how a cause shows, how to observe, read or check.
 *
 * Model: table look-up.
 * @param[in] kind Kind of entry. @choice{freeair_evidence_kind}
 * @param[in] code Code of that kind. @range{[0;1000]}
 * @return Static string, never null; empty for an unknown kind or code.
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API const char *freeair_evidence_text(int32_t kind, int32_t code);

/** What to replace or repair once a cause is confirmed.
 *
 * Model: table look-up.
 * @param[in] cause Cause. @choice{freeair_evidence_cause}
 * @return Static string, never null; empty for an unknown cause.
 * @source{common practice}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @since 0.1
 */
FREEAIR_API const char *freeair_evidence_remedy(int32_t cause);

/** How to prove a cause, before and after the repair.
 *
 * Model: table look-up.
 * @param[in] cause Cause. @choice{freeair_evidence_cause}
 * @return Static string, never null; empty for an unknown cause.
 * @source{common practice}
 * @caution{FREEAIR_CAUTION_ISOLATE}
 * @caution{FREEAIR_CAUTION_DEPRESSURISE}
 * @since 0.1
 */
FREEAIR_API const char *freeair_evidence_proof(int32_t cause);

/** Check that brings an observation or a reading.
 *
 * Model: table look-up.
 * @param[in] kind Observation or reading. @choice{freeair_evidence_kind}
 * @param[in] code Code of that kind. @range{[0;1000]}
 * @return A code of freeair_evidence_check; 0 for an unknown kind or code.
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_evidence_check_for(int32_t kind, int32_t code);

/** Code of an entry by its name.
 *
 * Model: table look-up; case matters.
 * @param[in]  kind Kind of entry. @choice{freeair_evidence_kind}
 * @param[in]  name Name, such as "lp_suction_valve".
 * @param[out] code Its code; 0 on error.
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      name or code is null
 * @retval FREEAIR_ERR_DOMAIN    kind is not a known kind
 * @retval FREEAIR_ERR_NOT_FOUND no entry of this kind has this name
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_evidence_find(int32_t kind, const char *name, int32_t *code);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
