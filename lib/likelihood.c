/* SPDX-License-Identifier: MIT */
#include <freeair/caution.h>
#include <freeair/evidence.h>
#include <freeair/likelihood.h>
#include <freeair/evidence_readings.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"

enum { practice = FREEAIR_LIKELIHOOD_PRACTICE, derived = FREEAIR_LIKELIHOOD_DERIVED };

static const double psi = 6894.757293168361;

enum {
  open_up = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY |
            FREEAIR_CAUTION_PROTECTION,
  head_work = open_up | FREEAIR_CAUTION_HOT | FREEAIR_CAUTION_LIFTING | FREEAIR_CAUTION_OIL_MIST,
  drive_work = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING | FREEAIR_CAUTION_PROTECTION,
  electrical_work = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_LIVE
};

/* Causes in the order of their codes. delivery, empty, cutin: slopes of the
 * pump-up test; level, psig, width: the level-off pressure. */
static const struct {
  double prior;
  double size;
  double cost;
  double delivery;
  double empty;
  double cutin;
  double level;
  double psig;
  double width;
  uint32_t cautions;
  int32_t two_sided;
} causes[] = {
    /* healthy */
    {0.250, 0, 0, 0, 0, 0, 0.002, 100, 0.5, 0, 0},
    /* other */
    {0.030, 0, 0, 0, 0, 0, 0.150, 90, 0.6, 0, 0},
    /* intake filter */
    {0.050, 0.12, 1, -1, 1.08, 1, 0.030, 100, 0.5, FREEAIR_CAUTION_ISOLATE, 0},
    /* LP suction */
    {0.115, 0.25, 1, -1, 1.08, 1.18, 0.350, 57, 0.30, head_work, 0},
    /* LP discharge */
    {0.030, 0.20, 1, -1, 1.08, 1.2, 0.150, 70, 0.35, head_work, 0},
    /* HP suction */
    {0.025, 0.20, 1, -1, 1.1, 2.2, 0.300, 94, 0.25, head_work | FREEAIR_CAUTION_RELIEF_VALVE, 0},
    /* HP discharge */
    {0.030, 0.20, 1, -1, 1.1, 2.2, 0.300, 94, 0.25, head_work | FREEAIR_CAUTION_RELIEF_VALVE, 0},
    /* gasket between */
    {0.025, 0.25, 1, -1, 1.1, 1.6, 0.500, 80, 0.12, head_work, 0},
    /* gasket outside */
    {0.015, 0.12, 1, -1, 1.1, 1.4, 0.080, 100, 0.4, head_work, 0},
    /* rings */
    {0.040, 0.15, 1, -1, 1.1, 1.4, 0.120, 110, 0.35, head_work, 0},
    /* interstage leak */
    {0.020, 0.15, 1, -1, 1.08, 1.2, 0.100, 80, 0.5, open_up | FREEAIR_CAUTION_HOT, 0},
    /* cooler fouled */
    {0.010, 0.01, 1, -1, 1, 1, 0.004, 100, 0.5, drive_work | FREEAIR_CAUTION_HOT, 0},
    /* relief weak */
    {0.010, 0.15, 1, -1, 1.1, 1.4, 0.100, 90, 0.4, open_up | FREEAIR_CAUTION_RELIEF_VALVE, 0},
    /* unloader */
    {0.035, 0.15, 1, -1, 1.1, 1.85, 0.150, 100, 0.4, open_up, 0},
    /* check valve */
    {0.050, 0.08, 0, 0, 0, 0, 0.004, 100, 0.5, open_up | FREEAIR_CAUTION_HOT, 0},
    /* downstream */
    {0.100, 0.25, 1, -1, 1, 1.25, 0.250, 90, 0.5,
     FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_BLOWING | FREEAIR_CAUTION_PROTECTION, 0},
    /* water */
    {0.015, 0.10, 0, 1, -1, -1, 0.002, 100, 0.5,
     FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_VESSEL | FREEAIR_CAUTION_PROTECTION, 0},
    /* belt slip */
    {0.055, 0.10, 1, -1, 1.1, 1.2, 0.004, 100, 0.5, drive_work, 0},
    /* wrong pulley */
    {0.005, 0.10, 1, -1, 1.1, 1.2, 0.002, 100, 0.5, drive_work, 0},
    /* low voltage */
    {0.020, 0.012, 1, -1, 1.1, 1.3, 0.010, 120, 0.5, electrical_work, 0},
    /* run cap */
    {0.020, 0.015, 1, -1, 1.1, 1.3, 0.010, 120, 0.5, electrical_work | FREEAIR_CAUTION_CAPACITOR, 0},
    /* start cap */
    {0.010, 0.25, 0, 0, 0, 0, 0.002, 100, 0.5, electrical_work | FREEAIR_CAUTION_CAPACITOR, 0},
    /* motor */
    {0.015, 0.05, 1, -1, 1.1, 1.2, 0.010, 120, 0.5, electrical_work | drive_work | FREEAIR_CAUTION_LIFTING, 0},
    /* gauge or switch */
    {0.025, 0.05, 0, 1, -1, -1, 0.050, 100, 0.6, open_up | FREEAIR_CAUTION_VESSEL | FREEAIR_CAUTION_LIVE, 1},
};

enum { n_causes = (int)FREEAIR__COUNT(causes), other = FREEAIR_EVIDENCE_OTHER };

/* Observations in the order of their codes: probability of yes with none of
 * the listed causes present. */
static const double false_alarms[] = {
    0.03, 0.04, 0.02, 0.08, 0.08, 0.03, 0.02, 0.05, 0.08, 0.07, 0.05, 0.04, /* blow back ... belt squeals */
    0.10, 0.08, 0.03, 0.05, 0.04, 0.05, 0.02, 0.06, 0.03, 0.02, 0.04, 0.04, /* belt glazed ... hard restart */
    0.06, 0.05, 0.12, 0.08, 0.06, 0.07, 0.10, 0.20, 0.03, 0.03, 0.12, 0.01, /* falls when stopped ... pops early */
    0.08, 0.05, 0.08, 0.03, 0.15, 0.30, 0.08, 0.03, 0.03, 0.02,             /* water drained ... gasket burnt */
};

enum { n_observations = (int)FREEAIR__COUNT(false_alarms) };

#define CAUSE(x) FREEAIR_EVIDENCE_##x
#define SEEN(x) FREEAIR_EVIDENCE_##x

static const struct {
  int32_t observation;
  int32_t cause;
  double hit;
  int32_t basis;
} hits[] = {
    {SEEN(BLOW_BACK_AT_INLET), CAUSE(LP_SUCTION_VALVE), 0.85, practice},
    {SEEN(BLOW_BACK_AT_INLET), CAUSE(LP_DISCHARGE_VALVE), 0.12, practice},
    {SEEN(BLOW_BACK_AT_INLET), CAUSE(GASKET_BETWEEN), 0.20, derived},
    {SEEN(CHIRPING_AT_HEADS), CAUSE(LP_SUCTION_VALVE), 0.50, practice},
    {SEEN(CHIRPING_AT_HEADS), CAUSE(LP_DISCHARGE_VALVE), 0.35, derived},
    {SEEN(CHIRPING_AT_HEADS), CAUSE(HP_SUCTION_VALVE), 0.35, derived},
    {SEEN(CHIRPING_AT_HEADS), CAUSE(HP_DISCHARGE_VALVE), 0.35, derived},
    {SEEN(CHIRPING_AT_HEADS), CAUSE(GASKET_OUTSIDE), 0.30, derived},
    {SEEN(INTERSTAGE_RELIEF_POPS), CAUSE(HP_SUCTION_VALVE), 0.70, practice},
    {SEEN(INTERSTAGE_RELIEF_POPS), CAUSE(HP_DISCHARGE_VALVE), 0.70, practice},
    {SEEN(INTERSTAGE_RELIEF_POPS), CAUSE(RELIEF_WEAK), 0.85, practice},
    {SEEN(INTERSTAGE_RELIEF_POPS), CAUSE(GASKET_BETWEEN), 0.20, derived},
    {SEEN(INTERSTAGE_RELIEF_POPS), CAUSE(INTERCOOLER_FOULED), 0.08, derived},
    {SEEN(LP_HEAD_HOT), CAUSE(LP_DISCHARGE_VALVE), 0.70, practice},
    {SEEN(LP_HEAD_HOT), CAUSE(LP_SUCTION_VALVE), 0.45, practice},
    {SEEN(LP_HEAD_HOT), CAUSE(GASKET_BETWEEN), 0.50, derived},
    {SEEN(LP_HEAD_HOT), CAUSE(HP_SUCTION_VALVE), 0.20, derived},
    {SEEN(LP_HEAD_HOT), CAUSE(HP_DISCHARGE_VALVE), 0.20, derived},
    {SEEN(HP_HEAD_HOT), CAUSE(HP_SUCTION_VALVE), 0.65, practice},
    {SEEN(HP_HEAD_HOT), CAUSE(HP_DISCHARGE_VALVE), 0.75, practice},
    {SEEN(HP_HEAD_HOT), CAUSE(GASKET_BETWEEN), 0.50, derived},
    {SEEN(HP_HEAD_HOT), CAUSE(LP_SUCTION_VALVE), 0.30, derived},
    {SEEN(HP_HEAD_HOT), CAUSE(LP_DISCHARGE_VALVE), 0.30, derived},
    {SEEN(HP_HEAD_HOT), CAUSE(INTERCOOLER_FOULED), 0.40, derived},
    {SEEN(HP_HEAD_HOT), CAUSE(INTERSTAGE_LEAK), 0.25, derived},
    {SEEN(HP_HEAD_HOT), CAUSE(RELIEF_WEAK), 0.20, derived},
    {SEEN(HOT_BETWEEN_BORES), CAUSE(GASKET_BETWEEN), 0.80, practice},
    {SEEN(HOT_BETWEEN_BORES), CAUSE(HP_DISCHARGE_VALVE), 0.10, derived},
    {SEEN(AIR_AT_HEAD_JOINT), CAUSE(GASKET_OUTSIDE), 0.85, practice},
    {SEEN(BREATHER_BLOWS), CAUSE(PISTON_RINGS), 0.85, practice},
    {SEEN(OIL_IN_DRAIN), CAUSE(PISTON_RINGS), 0.70, practice},
    {SEEN(OIL_USE_HIGH), CAUSE(PISTON_RINGS), 0.70, practice},
    {SEEN(BELT_DUST), CAUSE(BELT_SLIP), 0.75, practice},
    {SEEN(BELT_SQUEALS), CAUSE(BELT_SLIP), 0.70, practice},
    {SEEN(BELT_GLAZED), CAUSE(BELT_SLIP), 0.75, practice},
    {SEEN(BELT_LOOSE), CAUSE(BELT_SLIP), 0.70, practice},
    {SEEN(DRIVE_CHANGED), CAUSE(WRONG_PULLEY), 0.80, derived},
    {SEEN(DRIVE_CHANGED), CAUSE(MOTOR), 0.15, derived},
    {SEEN(PUMP_SOUNDS_SLOW), CAUSE(BELT_SLIP), 0.45, derived},
    {SEEN(PUMP_SOUNDS_SLOW), CAUSE(WRONG_PULLEY), 0.40, derived},
    {SEEN(PUMP_SOUNDS_SLOW), CAUSE(LOW_VOLTAGE), 0.35, derived},
    {SEEN(PUMP_SOUNDS_SLOW), CAUSE(RUN_CAPACITOR), 0.40, derived},
    {SEEN(PUMP_SOUNDS_SLOW), CAUSE(MOTOR), 0.50, derived},
    {SEEN(HUMS_AT_START), CAUSE(START_CAPACITOR), 0.85, practice},
    {SEEN(HUMS_AT_START), CAUSE(RUN_CAPACITOR), 0.50, practice},
    {SEEN(HUMS_AT_START), CAUSE(LOW_VOLTAGE), 0.50, practice},
    {SEEN(HUMS_AT_START), CAUSE(MOTOR), 0.40, practice},
    {SEEN(HUMS_AT_START), CAUSE(CHECK_VALVE), 0.30, derived},
    {SEEN(BREAKER_TRIPS), CAUSE(START_CAPACITOR), 0.50, practice},
    {SEEN(BREAKER_TRIPS), CAUSE(RUN_CAPACITOR), 0.40, practice},
    {SEEN(BREAKER_TRIPS), CAUSE(LOW_VOLTAGE), 0.40, practice},
    {SEEN(BREAKER_TRIPS), CAUSE(MOTOR), 0.40, practice},
    {SEEN(BREAKER_TRIPS), CAUSE(CHECK_VALVE), 0.20, derived},
    {SEEN(CAPACITOR_BULGED), CAUSE(RUN_CAPACITOR), 0.50, practice},
    {SEEN(CAPACITOR_BULGED), CAUSE(START_CAPACITOR), 0.50, practice},
    {SEEN(LIGHTS_DIM), CAUSE(LOW_VOLTAGE), 0.70, practice},
    {SEEN(LIGHTS_DIM), CAUSE(START_CAPACITOR), 0.20, derived},
    {SEEN(HISS_AT_SWITCH), CAUSE(UNLOADER_LEAK), 0.75, practice},
    {SEEN(BETTER_UNLOADER_BLOCKED), CAUSE(UNLOADER_LEAK), 0.90, practice},
    {SEEN(UNLOADER_BLOWS_STOPPED), CAUSE(CHECK_VALVE), 0.80, practice},
    {SEEN(UNLOADER_BLOWS_STOPPED), CAUSE(UNLOADER_LEAK), 0.10, derived},
    {SEEN(HARD_RESTART), CAUSE(CHECK_VALVE), 0.50, practice},
    {SEEN(HARD_RESTART), CAUSE(START_CAPACITOR), 0.30, derived},
    {SEEN(HARD_RESTART), CAUSE(LOW_VOLTAGE), 0.20, derived},
    {SEEN(FALLS_WHEN_STOPPED), CAUSE(CHECK_VALVE), 0.85, practice},
    {SEEN(FALLS_WHEN_STOPPED), CAUSE(DOWNSTREAM), 0.20, derived},
    {SEEN(DRAIN_PASSES), CAUSE(DOWNSTREAM), 0.30, practice},
    {SEEN(LEAKS_HEARD), CAUSE(DOWNSTREAM), 0.65, practice},
    {SEEN(DEMAND_ADDED), CAUSE(DOWNSTREAM), 0.45, practice},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(HEALTHY), 0.95, practice},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(DOWNSTREAM), 0.92, practice},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(CHECK_VALVE), 0.90, practice},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(START_CAPACITOR), 0.90, derived},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(INTERCOOLER_FOULED), 0.75, derived},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(RECEIVER_WATER), 0.60, derived},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(GAUGE_OR_SWITCH), 0.60, derived},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(LOW_VOLTAGE), 0.60, derived},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(RUN_CAPACITOR), 0.50, derived},
    {SEEN(FINE_WHEN_ISOLATED), CAUSE(MOTOR), 0.25, derived},
    {SEEN(RUNS_AT_NIGHT), CAUSE(DOWNSTREAM), 0.65, practice},
    {SEEN(RUNS_AT_NIGHT), CAUSE(CHECK_VALVE), 0.40, derived},
    {SEEN(SYSTEM_STARVES), CAUSE(DOWNSTREAM), 0.75, practice},
    {SEEN(SYSTEM_STARVES), CAUSE(HEALTHY), 0.04, practice},
    {SEEN(SYSTEM_STARVES), CAUSE(RECEIVER_WATER), 0.30, derived},
    {SEEN(SYSTEM_STARVES), CAUSE(GAUGE_OR_SWITCH), 0.30, derived},
    {SEEN(FILTER_DIRTY), CAUSE(INTAKE_FILTER), 0.85, practice},
    {SEEN(BETTER_FILTER_OUT), CAUSE(INTAKE_FILTER), 0.85, practice},
    {SEEN(INTERSTAGE_BUBBLES), CAUSE(INTERSTAGE_LEAK), 0.90, practice},
    {SEEN(INTERSTAGE_BUBBLES), CAUSE(GASKET_OUTSIDE), 0.10, derived},
    {SEEN(INTERCOOLER_DIRTY), CAUSE(INTERCOOLER_FOULED), 0.80, practice},
    {SEEN(RELIEF_POPS_EARLY), CAUSE(RELIEF_WEAK), 0.85, practice},
    {SEEN(WATER_DRAINED), CAUSE(RECEIVER_WATER), 0.90, practice},
    {SEEN(SHORT_CYCLES), CAUSE(RECEIVER_WATER), 0.60, practice},
    {SEEN(SHORT_CYCLES), CAUSE(GAUGE_OR_SWITCH), 0.20, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(HEALTHY), 0.01, practice},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(LP_SUCTION_VALVE), 0.50, practice},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(LP_DISCHARGE_VALVE), 0.30, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(HP_SUCTION_VALVE), 0.35, practice},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(HP_DISCHARGE_VALVE), 0.35, practice},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(GASKET_BETWEEN), 0.60, practice},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(GASKET_OUTSIDE), 0.20, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(PISTON_RINGS), 0.20, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(UNLOADER_LEAK), 0.25, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(INTERSTAGE_LEAK), 0.20, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(RELIEF_WEAK), 0.15, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(GAUGE_OR_SWITCH), 0.15, derived},
    {SEEN(NEVER_REACHES_CUTOUT), CAUSE(DOWNSTREAM), 0.40, practice},
    {SEEN(STOPS_AT_WRONG_PRESSURE), CAUSE(GAUGE_OR_SWITCH), 0.85, practice},
    {SEEN(SLOWER_NEAR_CUTOUT), CAUSE(PISTON_RINGS), 0.65, practice},
    {SEEN(SLOWER_NEAR_CUTOUT), CAUSE(DOWNSTREAM), 0.50, practice},
    {SEEN(SLOWER_NEAR_CUTOUT), CAUSE(UNLOADER_LEAK), 0.45, derived},
    {SEEN(SLOWER_NEAR_CUTOUT), CAUSE(HP_SUCTION_VALVE), 0.40, derived},
    {SEEN(SLOWER_NEAR_CUTOUT), CAUSE(HP_DISCHARGE_VALVE), 0.40, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(LP_SUCTION_VALVE), 0.55, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(LP_DISCHARGE_VALVE), 0.50, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(HP_SUCTION_VALVE), 0.50, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(HP_DISCHARGE_VALVE), 0.50, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(GASKET_BETWEEN), 0.65, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(START_CAPACITOR), 0.60, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(WRONG_PULLEY), 0.90, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(PISTON_RINGS), 0.05, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(INTAKE_FILTER), 0.08, derived},
    {SEEN(CAME_SUDDENLY), CAUSE(INTERCOOLER_FOULED), 0.05, derived},
    {SEEN(HEADS_OPENED_LATELY), CAUSE(GASKET_BETWEEN), 0.25, derived},
    {SEEN(HEADS_OPENED_LATELY), CAUSE(GASKET_OUTSIDE), 0.30, derived},
    {SEEN(HEADS_OPENED_LATELY), CAUSE(LP_SUCTION_VALVE), 0.15, derived},
    {SEEN(HEADS_OPENED_LATELY), CAUSE(HP_SUCTION_VALVE), 0.15, derived},
    {SEEN(LP_VALVES_BAD), CAUSE(LP_SUCTION_VALVE), 0.92, practice},
    {SEEN(LP_VALVES_BAD), CAUSE(LP_DISCHARGE_VALVE), 0.92, practice},
    {SEEN(HP_VALVES_BAD), CAUSE(HP_SUCTION_VALVE), 0.92, practice},
    {SEEN(HP_VALVES_BAD), CAUSE(HP_DISCHARGE_VALVE), 0.92, practice},
    {SEEN(GASKET_BURNT), CAUSE(GASKET_BETWEEN), 0.95, practice},
    {SEEN(GASKET_BURNT), CAUSE(GASKET_OUTSIDE), 0.70, practice},
};

/* Readings in the order of their codes: scale, standard uncertainty of the
 * reading, of the expectation, expected share where none need be given; when
 * something else is wrong, the spread of the reading if that affects it, and
 * how often it does. */
static const struct {
  int32_t scale;
  double u_found;
  double u_expected;
  double expected;
  double wide;
  double affected;
} readings[] = {
    {FREEAIR_LIKELIHOOD_LOG, 0.03, 0.05, NAN, 0.35, 0.3},          /* delivery */
    {FREEAIR_LIKELIHOOD_LOG, 0.02, 0.05, NAN, 0.35, 0.3},          /* time from empty */
    {FREEAIR_LIKELIHOOD_LOG, 0.03, 0.07, NAN, 0.40, 0.3},          /* time from cut-in */
    {FREEAIR_LIKELIHOOD_NO_SCALE, NAN, NAN, NAN, NAN, NAN},        /* level-off */
    {FREEAIR_LIKELIHOOD_LOG, 0.02, 0.08, NAN, 0.35, 0.3},          /* interstage */
    {FREEAIR_LIKELIHOOD_DIFFERENCE, 5.0, 12.0, NAN, 35.0, 0.3},    /* LP discharge */
    {FREEAIR_LIKELIHOOD_DIFFERENCE, 5.0, 12.0, NAN, 35.0, 0.3},    /* HP discharge */
    {FREEAIR_LIKELIHOOD_DIFFERENCE, 3.0, 6.0, NAN, 20.0, 0.3},     /* intercooler outlet */
    {FREEAIR_LIKELIHOOD_LOG, 0.002, 0.008, NAN, 0.05, 0.15},       /* motor speed */
    {FREEAIR_LIKELIHOOD_LOG, 0.003, 0.012, NAN, 0.08, 0.15},       /* pump speed */
    {FREEAIR_LIKELIHOOD_LOG, 0.005, 0.025, NAN, 0.08, 0.05},       /* supply running */
    {FREEAIR_LIKELIHOOD_LOG, 0.02, 0.05, NAN, 0.15, 0.05},         /* supply starting */
    {FREEAIR_LIKELIHOOD_LOG, 0.02, 0.08, NAN, 0.20, 0.3},          /* motor current */
    {FREEAIR_LIKELIHOOD_LOG, 0.03, 0.07, NAN, 0.20, 0.3},          /* power */
    {FREEAIR_LIKELIHOOD_LOG, 0.01, 0.03, NAN, 0.20, 0.05},         /* run capacitance */
    {FREEAIR_LIKELIHOOD_LOG, 0.02, 0.07, NAN, 0.30, 0.05},         /* start capacitance */
    {FREEAIR_LIKELIHOOD_SHARE, 0.005, 0.01, 0.0, 0.10, 0.05},      /* leak isolated */
    {FREEAIR_LIKELIHOOD_SHARE, 0.01, 0.04, 0.05, 0.20, 0.05},      /* leak open */
    {FREEAIR_LIKELIHOOD_SHARE, 0.005, 0.012, 0.0, 0.08, 0.05},     /* gauge difference */
    {FREEAIR_LIKELIHOOD_LOG, 0.01, 0.025, NAN, 0.10, 0.05},        /* cut-out */
    {FREEAIR_LIKELIHOOD_LOG, 0.03, 0.05, NAN, 0.20, 0.05},         /* relief opening */
    {FREEAIR_LIKELIHOOD_SHARE, 0.002, 0.006, 0.01, 0.04, 0.05},    /* filter drop */
    {FREEAIR_LIKELIHOOD_LOG, 0.15, 0.20, NAN, 0.50, 0.05},         /* belt deflection */
    {FREEAIR_LIKELIHOOD_SHARE, 0.01, 0.01, 0.0, 0.10, 0.05},       /* water */
    {FREEAIR_LIKELIHOOD_SHARE, 0.03, 0.08, NAN, 0.25, 0.3},        /* duty */
    {FREEAIR_LIKELIHOOD_DIFFERENCE, 1.0, 3.0, NAN, 5.0, 0.00},     /* ambient */
    {FREEAIR_LIKELIHOOD_LOG, 0.002, 0.01, NAN, 0.02, 0.00},        /* barometer */
};

enum { n_readings = (int)FREEAIR__COUNT(readings) };

#define READ(x) FREEAIR_EVIDENCE_##x

static const struct {
  int32_t reading;
  int32_t cause;
  double slope;
  double limit;
  double spread;
  int32_t basis;
} slopes[] = {
    {READ(INTERSTAGE), CAUSE(INTAKE_FILTER), -0.9, 1.2, 0.2, practice},
    {READ(INTERSTAGE), CAUSE(LP_SUCTION_VALVE), -1.05, 1.3, 0.15, practice},
    {READ(INTERSTAGE), CAUSE(LP_DISCHARGE_VALVE), -1.05, 1.3, 0.15, practice},
    {READ(INTERSTAGE), CAUSE(HP_SUCTION_VALVE), 1.0, 0.25, 0.5, practice},
    {READ(INTERSTAGE), CAUSE(HP_DISCHARGE_VALVE), 1.0, 0.25, 0.5, practice},
    {READ(INTERSTAGE), CAUSE(GASKET_BETWEEN), -0.1, 0.3, 1.5, derived},
    {READ(INTERSTAGE), CAUSE(GASKET_OUTSIDE), -0.75, 1.0, 0.5, derived},
    {READ(INTERSTAGE), CAUSE(PISTON_RINGS), -0.75, 1.0, 0.5, derived},
    {READ(INTERSTAGE), CAUSE(INTERSTAGE_LEAK), -1.05, 1.2, 0.15, practice},
    {READ(INTERSTAGE), CAUSE(RELIEF_WEAK), -1.3, 1.2, 0.25, derived},
    {READ(INTERSTAGE), CAUSE(INTERCOOLER_FOULED), 5.0, 0.12, 0.5, derived},
    {READ(INTERSTAGE), CAUSE(BELT_SLIP), -0.09, 0.15, 0.5, practice},
    {READ(INTERSTAGE), CAUSE(WRONG_PULLEY), -0.09, 0.15, 0.5, practice},
    {READ(LP_DISCHARGE), CAUSE(INTAKE_FILTER), 60.0, 12.0, 1.0, derived},
    {READ(LP_DISCHARGE), CAUSE(LP_SUCTION_VALVE), -70.0, 110.0, 0.8, derived},
    {READ(LP_DISCHARGE), CAUSE(LP_DISCHARGE_VALVE), -20.0, 60.0, 4.0, derived},
    {READ(LP_DISCHARGE), CAUSE(HP_SUCTION_VALVE), 60.0, 25.0, 0.6, derived},
    {READ(LP_DISCHARGE), CAUSE(HP_DISCHARGE_VALVE), 80.0, 32.0, 0.6, derived},
    {READ(LP_DISCHARGE), CAUSE(GASKET_BETWEEN), 130.0, 130.0, 0.5, derived},
    {READ(LP_DISCHARGE), CAUSE(GASKET_OUTSIDE), -85.0, 90.0, 0.6, derived},
    {READ(LP_DISCHARGE), CAUSE(PISTON_RINGS), -80.0, 60.0, 0.6, derived},
    {READ(LP_DISCHARGE), CAUSE(INTERSTAGE_LEAK), -120.0, 110.0, 0.4, derived},
    {READ(LP_DISCHARGE), CAUSE(RELIEF_WEAK), -145.0, 110.0, 0.4, derived},
    {READ(LP_DISCHARGE), CAUSE(INTERCOOLER_FOULED), 600.0, 14.0, 0.6, derived},
    {READ(LP_DISCHARGE), CAUSE(BELT_SLIP), -26.0, 15.0, 0.7, derived},
    {READ(LP_DISCHARGE), CAUSE(WRONG_PULLEY), -26.0, 15.0, 0.7, derived},
    {READ(HP_DISCHARGE), CAUSE(INTAKE_FILTER), 85.0, 60.0, 0.6, derived},
    {READ(HP_DISCHARGE), CAUSE(LP_SUCTION_VALVE), 75.0, 110.0, 0.5, derived},
    {READ(HP_DISCHARGE), CAUSE(LP_DISCHARGE_VALVE), 105.0, 110.0, 0.5, derived},
    {READ(HP_DISCHARGE), CAUSE(HP_SUCTION_VALVE), 40.0, 80.0, 2.0, practice},
    {READ(HP_DISCHARGE), CAUSE(HP_DISCHARGE_VALVE), 40.0, 80.0, 2.5, practice},
    {READ(HP_DISCHARGE), CAUSE(GASKET_BETWEEN), 70.0, 70.0, 0.6, derived},
    {READ(HP_DISCHARGE), CAUSE(GASKET_OUTSIDE), 45.0, 60.0, 0.6, derived},
    {READ(HP_DISCHARGE), CAUSE(PISTON_RINGS), 42.0, 50.0, 0.6, derived},
    {READ(HP_DISCHARGE), CAUSE(INTERSTAGE_LEAK), 85.0, 80.0, 0.4, derived},
    {READ(HP_DISCHARGE), CAUSE(RELIEF_WEAK), 95.0, 60.0, 0.4, derived},
    {READ(HP_DISCHARGE), CAUSE(INTERCOOLER_FOULED), 2600.0, 75.0, 0.6, derived},
    {READ(HP_DISCHARGE), CAUSE(UNLOADER_LEAK), -18.0, 25.0, 1.0, derived},
    {READ(HP_DISCHARGE), CAUSE(BELT_SLIP), -55.0, 20.0, 0.6, derived},
    {READ(HP_DISCHARGE), CAUSE(WRONG_PULLEY), -55.0, 20.0, 0.6, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(LP_SUCTION_VALVE), -40.0, 50.0, 0.8, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(LP_DISCHARGE_VALVE), -20.0, 40.0, 1.5, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(HP_SUCTION_VALVE), 40.0, 18.0, 0.8, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(HP_DISCHARGE_VALVE), 20.0, 8.0, 1.0, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(GASKET_BETWEEN), 42.0, 50.0, 0.6, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(GASKET_OUTSIDE), -45.0, 40.0, 0.6, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(PISTON_RINGS), -45.0, 40.0, 0.6, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(INTERSTAGE_LEAK), -37.0, 35.0, 0.5, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(RELIEF_WEAK), -50.0, 35.0, 0.5, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(INTERCOOLER_FOULED), 2900.0, 80.0, 0.5, practice},
    {READ(INTERCOOLER_OUTLET), CAUSE(BELT_SLIP), -40.0, 15.0, 0.6, derived},
    {READ(INTERCOOLER_OUTLET), CAUSE(WRONG_PULLEY), -40.0, 15.0, 0.6, derived},
    {READ(MOTOR_SPEED), CAUSE(LOW_VOLTAGE), -1.25, 0.3, 0.2, practice},
    {READ(MOTOR_SPEED), CAUSE(RUN_CAPACITOR), -1.25, 0.3, 0.2, practice},
    {READ(MOTOR_SPEED), CAUSE(MOTOR), -1.05, 0.5, 0.1, practice},
    {READ(MOTOR_SPEED), CAUSE(BELT_SLIP), 0.03, 0.02, 1.0, derived},
    {READ(PUMP_SPEED), CAUSE(BELT_SLIP), -1.0, 1.5, 0.05, practice},
    {READ(PUMP_SPEED), CAUSE(WRONG_PULLEY), -1.0, 1.5, 0.05, practice},
    {READ(PUMP_SPEED), CAUSE(LOW_VOLTAGE), -1.25, 0.3, 0.2, practice},
    {READ(PUMP_SPEED), CAUSE(RUN_CAPACITOR), -1.25, 0.3, 0.2, practice},
    {READ(PUMP_SPEED), CAUSE(MOTOR), -1.05, 0.5, 0.1, practice},
    {READ(SUPPLY_RUNNING), CAUSE(LOW_VOLTAGE), -6.0, 0.5, 0.5, derived},
    {READ(SUPPLY_STARTING), CAUSE(LOW_VOLTAGE), -9.0, 0.7, 0.5, derived},
    {READ(SUPPLY_STARTING), CAUSE(START_CAPACITOR), -0.1, 0.15, 1.0, derived},
    {READ(MOTOR_CURRENT), CAUSE(LOW_VOLTAGE), 4.0, 0.3, 0.8, derived},
    {READ(MOTOR_CURRENT), CAUSE(RUN_CAPACITOR), 6.0, 0.4, 0.6, practice},
    {READ(MOTOR_CURRENT), CAUSE(MOTOR), 2.0, 0.4, 1.5, derived},
    {READ(MOTOR_CURRENT), CAUSE(BELT_SLIP), -0.9, 0.6, 0.3, derived},
    {READ(MOTOR_CURRENT), CAUSE(WRONG_PULLEY), -0.9, 0.6, 0.3, derived},
    {READ(MOTOR_CURRENT), CAUSE(INTAKE_FILTER), -0.25, 0.3, 1.0, derived},
    {READ(MOTOR_CURRENT), CAUSE(LP_SUCTION_VALVE), -0.4, 0.6, 0.5, derived},
    {READ(MOTOR_CURRENT), CAUSE(LP_DISCHARGE_VALVE), -0.3, 0.5, 0.6, derived},
    {READ(MOTOR_CURRENT), CAUSE(HP_SUCTION_VALVE), -0.05, 0.2, 2.0, derived},
    {READ(MOTOR_CURRENT), CAUSE(HP_DISCHARGE_VALVE), 0.05, 0.2, 2.0, derived},
    {READ(MOTOR_CURRENT), CAUSE(GASKET_OUTSIDE), -0.3, 0.4, 0.6, derived},
    {READ(MOTOR_CURRENT), CAUSE(INTERSTAGE_LEAK), -0.35, 0.5, 0.5, derived},
    {READ(MOTOR_CURRENT), CAUSE(RELIEF_WEAK), -0.35, 0.5, 0.5, derived},
    {READ(MOTOR_CURRENT), CAUSE(PISTON_RINGS), -0.3, 0.4, 0.6, derived},
    {READ(POWER), CAUSE(LOW_VOLTAGE), -1.3, 0.3, 0.6, derived},
    {READ(POWER), CAUSE(RUN_CAPACITOR), -0.6, 0.3, 1.5, derived},
    {READ(POWER), CAUSE(MOTOR), 0.5, 0.3, 2.0, derived},
    {READ(POWER), CAUSE(BELT_SLIP), -1.1, 0.8, 0.15, derived},
    {READ(POWER), CAUSE(WRONG_PULLEY), -1.1, 0.8, 0.15, derived},
    {READ(POWER), CAUSE(INTAKE_FILTER), -0.3, 0.4, 1.0, derived},
    {READ(POWER), CAUSE(LP_SUCTION_VALVE), -0.5, 0.8, 0.4, derived},
    {READ(POWER), CAUSE(LP_DISCHARGE_VALVE), -0.4, 0.7, 0.5, derived},
    {READ(POWER), CAUSE(HP_SUCTION_VALVE), -0.05, 0.2, 2.0, derived},
    {READ(POWER), CAUSE(HP_DISCHARGE_VALVE), 0.05, 0.2, 2.0, derived},
    {READ(POWER), CAUSE(GASKET_OUTSIDE), -0.35, 0.4, 0.5, derived},
    {READ(POWER), CAUSE(INTERSTAGE_LEAK), -0.45, 0.5, 0.4, derived},
    {READ(POWER), CAUSE(RELIEF_WEAK), -0.45, 0.5, 0.4, derived},
    {READ(POWER), CAUSE(PISTON_RINGS), -0.35, 0.4, 0.5, derived},
    {READ(RUN_CAPACITANCE), CAUSE(RUN_CAPACITOR), -12.0, 3.0, 0.6, practice},
    {READ(START_CAPACITANCE), CAUSE(START_CAPACITOR), -1.5, 5.0, 0.6, practice},
    {READ(LEAK_ISOLATED), CAUSE(CHECK_VALVE), 1.0, 0.9, 0.3, practice},
    {READ(LEAK_ISOLATED), CAUSE(DOWNSTREAM), 0.1, 0.3, 1.5, derived},
    {READ(LEAK_OPEN), CAUSE(CHECK_VALVE), 1.0, 0.9, 0.3, practice},
    {READ(LEAK_OPEN), CAUSE(DOWNSTREAM), 0.7, 0.95, 0.6, practice},
    {READ(GAUGE_DIFFERENCE), CAUSE(GAUGE_OR_SWITCH), 1.0, 0.5, 0.7, practice},
    {READ(CUTOUT), CAUSE(GAUGE_OR_SWITCH), 1.0, 0.5, 1.0, practice},
    {READ(RELIEF_OPENING), CAUSE(RELIEF_WEAK), -1.5, 0.8, 0.6, practice},
    {READ(FILTER_DROP), CAUSE(INTAKE_FILTER), 0.65, 0.7, 0.4, derived},
    {READ(BELT_DEFLECTION), CAUSE(BELT_SLIP), 4.0, 1.2, 0.7, practice},
    {READ(WATER), CAUSE(RECEIVER_WATER), 0.95, 0.9, 0.15, practice},
};

static int is_cause(int32_t cause)
{
  return cause >= 1 && cause <= n_causes;
}

int32_t freeair_likelihood_prior(int32_t cause, double *prior)
{
  if (prior == NULL) return FREEAIR_ERR_NULL;
  *prior = NAN;
  if (!is_cause(cause)) return FREEAIR_ERR_NOT_FOUND;
  *prior = causes[cause - 1].prior;
  return FREEAIR_OK;
}

int32_t freeair_likelihood_size(int32_t cause, double *size, double *cost, int32_t *two_sided)
{
  freeair__set_nan(size);
  freeair__set_nan(cost);
  if (two_sided != NULL) *two_sided = 0;
  if (size == NULL || cost == NULL || two_sided == NULL) return FREEAIR_ERR_NULL;
  if (!is_cause(cause)) return FREEAIR_ERR_NOT_FOUND;
  *size = causes[cause - 1].size;
  *cost = causes[cause - 1].cost;
  *two_sided = causes[cause - 1].two_sided;
  return FREEAIR_OK;
}

int32_t freeair_likelihood_observation(int32_t cause, int32_t observation, double *hit, double *false_alarm,
                                       int32_t *basis)
{
  freeair__set_nan(hit);
  freeair__set_nan(false_alarm);
  if (basis != NULL) *basis = FREEAIR_LIKELIHOOD_UNLISTED;
  if (hit == NULL || false_alarm == NULL || basis == NULL) return FREEAIR_ERR_NULL;
  if (!is_cause(cause) || observation < 1 || observation > n_observations) return FREEAIR_ERR_NOT_FOUND;
  *false_alarm = false_alarms[observation - 1];
  *hit = cause == other ? 0.5 * (*false_alarm + 0.3) : *false_alarm;
  for (size_t i = 0; i < FREEAIR__COUNT(hits); i++)
    if (hits[i].observation == observation && hits[i].cause == cause) {
      *hit = hits[i].hit;
      *basis = hits[i].basis;
    }
  return FREEAIR_OK;
}

int32_t freeair_likelihood_reading(int32_t cause, int32_t reading, double *slope, double *limit, double *spread,
                                   int32_t *basis)
{
  freeair__set_nan(slope);
  freeair__set_nan(limit);
  freeair__set_nan(spread);
  if (basis != NULL) *basis = FREEAIR_LIKELIHOOD_UNLISTED;
  if (slope == NULL || limit == NULL || spread == NULL || basis == NULL) return FREEAIR_ERR_NULL;
  if (!is_cause(cause) || reading < 1 || reading > n_readings) return FREEAIR_ERR_NOT_FOUND;
  *slope = *limit = *spread = 0.0;
  const size_t c = (size_t)cause - 1;
  /* The pump-up test measures the size itself; a short machine runs longer. */
  const double pump_up[] = {causes[c].delivery, causes[c].empty, causes[c].cutin};
  const double pump_up_spread[] = {0.05, 0.10, 0.25};
  if (reading >= FREEAIR_EVIDENCE_DELIVERY && reading <= FREEAIR_EVIDENCE_TIME_FROM_CUTIN) {
    const size_t r = (size_t)(reading - FREEAIR_EVIDENCE_DELIVERY);
    if (pump_up[r] < 0.0 || pump_up[r] > 0.0) {
      *slope = pump_up[r];
      *limit = 4.0;
      *spread = pump_up_spread[r];
      *basis = FREEAIR_LIKELIHOOD_DERIVED;
    }
  } else if (reading == FREEAIR_EVIDENCE_DUTY && causes[c].cost > 0.0) {
    *slope = 0.6;
    *limit = 0.7;
    *spread = 0.8;
    *basis = FREEAIR_LIKELIHOOD_DERIVED;
  }
  for (size_t i = 0; i < FREEAIR__COUNT(slopes); i++)
    if (slopes[i].reading == reading && slopes[i].cause == cause) {
      *slope = slopes[i].slope;
      *limit = slopes[i].limit;
      *spread = slopes[i].spread;
      *basis = slopes[i].basis;
    }
  return FREEAIR_OK;
}

int32_t freeair_likelihood_spread(int32_t reading, double *u_found, double *u_expected, double *expected,
                                  double *wide, double *affected, int32_t *scale)
{
  freeair__set_nan(u_found);
  freeair__set_nan(u_expected);
  freeair__set_nan(expected);
  freeair__set_nan(wide);
  freeair__set_nan(affected);
  if (scale != NULL) *scale = FREEAIR_LIKELIHOOD_NO_SCALE;
  if (u_found == NULL || u_expected == NULL || expected == NULL || wide == NULL || affected == NULL || scale == NULL)
    return FREEAIR_ERR_NULL;
  if (reading < 1 || reading > n_readings) return FREEAIR_ERR_NOT_FOUND;
  *u_found = readings[reading - 1].u_found;
  *u_expected = readings[reading - 1].u_expected;
  *expected = readings[reading - 1].expected;
  *wide = readings[reading - 1].wide;
  *affected = readings[reading - 1].affected;
  *scale = readings[reading - 1].scale;
  return FREEAIR_OK;
}

int32_t freeair_likelihood_deviation(int32_t reading, double found, double u_found, double expected,
                                     double u_expected, double reference, double *deviation, double *spread)
{
  freeair__set_nan(deviation);
  freeair__set_nan(spread);
  if (deviation == NULL || spread == NULL) return FREEAIR_ERR_NULL;
  if (reading < 1 || reading > n_readings) return FREEAIR_ERR_NOT_FOUND;
  const int32_t scale = readings[reading - 1].scale;
  const double usual = readings[reading - 1].u_expected;
  double a = readings[reading - 1].u_found;
  double b = usual;
  if (!freeair__closed(found, -1e8, 1e8) || (freeair__given(expected) && !freeair__closed(expected, -1e8, 1e8)) ||
      (freeair__given(u_found) && !freeair__closed(u_found, 0.0, 1e8)) ||
      (freeair__given(u_expected) && !freeair__closed(u_expected, 0.0, 1e8)) ||
      (freeair__given(reference) && !freeair__closed(reference, 1e-9, 1e8)))
    return FREEAIR_ERR_DOMAIN;
  if (scale == FREEAIR_LIKELIHOOD_NO_SCALE) return FREEAIR_ERR_UNSUPPORTED;
  double d;
  if (scale == FREEAIR_LIKELIHOOD_LOG) {
    if (!freeair__from(found, 1e-12, INFINITY) || !freeair__from(expected, 1e-12, INFINITY))
      return FREEAIR_ERR_DOMAIN;
    const double change = (found - expected) / expected;
    d = fabs(change) < 0.5 ? log1p(change) : log(found / expected);
    if (freeair__given(u_found)) a = u_found / found;
    if (freeair__given(u_expected)) b = u_expected / expected;
  } else {
    const double unit = scale == FREEAIR_LIKELIHOOD_SHARE ? reference : 1.0;
    if (!freeair__given(unit)) return FREEAIR_ERR_DOMAIN;
    if (!freeair__given(expected)) expected = readings[reading - 1].expected * unit;
    if (!freeair__given(expected)) return FREEAIR_ERR_DOMAIN;
    d = (found - expected) / unit;
    if (freeair__given(u_found)) a = u_found / unit;
    if (freeair__given(u_expected)) b = u_expected / unit;
  }
  *deviation = d;
  *spread = fmax(hypot(a, b), 0.1 * usual);
  return FREEAIR_OK;
}

int32_t freeair_likelihood_level_off(int32_t cause, double *rate, double *centre_pa, double *spread)
{
  freeair__set_nan(rate);
  freeair__set_nan(centre_pa);
  freeair__set_nan(spread);
  if (rate == NULL || centre_pa == NULL || spread == NULL) return FREEAIR_ERR_NULL;
  if (!is_cause(cause)) return FREEAIR_ERR_NOT_FOUND;
  *rate = causes[cause - 1].level;
  *centre_pa = causes[cause - 1].psig * psi;
  *spread = causes[cause - 1].width;
  return FREEAIR_OK;
}

uint32_t freeair_likelihood_cautions(int32_t cause)
{
  return is_cause(cause) ? causes[cause - 1].cautions : 0;
}

int32_t freeair_likelihood_density(double residual, double *likelihood)
{
  if (likelihood == NULL) return FREEAIR_ERR_NULL;
  *likelihood = NAN;
  if (!freeair__closed(residual, -1e6, 1e6)) return FREEAIR_ERR_DOMAIN;
  const double q = 1.0 + residual * residual / 7.0;
  *likelihood = 0.38499145083226733 / (q * q * q * q);
  return FREEAIR_OK;
}

int32_t freeair_likelihood_update(double prior, double hit, double false_alarm, int32_t answer, double *posterior)
{
  if (posterior == NULL) return FREEAIR_ERR_NULL;
  *posterior = NAN;
  if (!freeair__closed(prior, 0.0, 1.0) || !freeair__closed(hit, 0.0, 1.0) ||
      !freeair__closed(false_alarm, 0.0, 1.0) || answer < FREEAIR_EVIDENCE_NOT_CHECKED ||
      answer > FREEAIR_EVIDENCE_NO)
    return FREEAIR_ERR_DOMAIN;
  double with = 1.0;
  double without = 1.0;
  if (answer == FREEAIR_EVIDENCE_YES) {
    with = hit;
    without = false_alarm;
  } else if (answer == FREEAIR_EVIDENCE_NO) {
    with = 1.0 - hit;
    without = 1.0 - false_alarm;
  }
  const double total = prior * with + (1.0 - prior) * without;
  if (!(total > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *posterior = prior * with / total;
  return FREEAIR_OK;
}

/* (1 + x) ln(1 + x) - x, not negative, without cancellation near 0. */
static double excess(double x)
{
  if (fabs(x) > 0.25) return x > -1.0 ? (1.0 + x) * log1p(x) - x : 1.0;
  double sum = 0.0;
  for (int k = 27; k >= 2; k--) sum = 1.0 / (k * (k - 1)) - x * sum;
  return x * x * sum;
}

/* Relative entropy of the answers with probability a of yes to those with
 * probability b, where d = a - b: the terms linear in d cancel beforehand. */
static double relative_entropy(double d, double b, double not_b)
{
  return (b > 0.0 ? b * excess(d / b) : 0.0) + (not_b > 0.0 ? not_b * excess(-d / not_b) : 0.0);
}

int32_t freeair_likelihood_information(double prior, double hit, double false_alarm, double *information)
{
  if (information == NULL) return FREEAIR_ERR_NULL;
  *information = NAN;
  if (!freeair__closed(prior, 0.0, 1.0) || !freeair__closed(hit, 0.0, 1.0) || !freeair__closed(false_alarm, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  const double rest = 1.0 - prior;
  const double d = hit - false_alarm;
  const double q = prior * hit + rest * false_alarm;
  const double not_q = prior * (1.0 - hit) + rest * (1.0 - false_alarm);
  double nats = 0.0;
  if (prior > 0.0 && rest > 0.0)
    nats = prior * relative_entropy(rest * d, q, not_q) + rest * relative_entropy(-prior * d, q, not_q);
  *information = nats * 1.4426950408889634;
  return FREEAIR_OK;
}
