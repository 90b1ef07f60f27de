/* SPDX-License-Identifier: MIT */
#include "internal/likelihood.h"

#include "internal/array.h"

#include <math.h>

enum { practice = FREEAIR_LIKELIHOOD_PRACTICE, derived = FREEAIR_LIKELIHOOD_DERIVED };

/* In the order of their codes. */
static const freeair__likelihood_reading readings[] = {
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

#define CAUSE(x) FREEAIR_EVIDENCE_##x
#define READ(x) FREEAIR_EVIDENCE_##x

static const freeair__likelihood_slope slopes[] = {
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

const freeair__likelihood_reading *freeair__likelihood_reading_of(int32_t reading)
{
  return reading >= 1 && reading <= (int32_t)FREEAIR__COUNT(readings) ? &readings[reading - 1] : NULL;
}

const freeair__likelihood_slope *freeair__likelihood_slope_of(int32_t reading, int32_t cause)
{
  for (size_t i = 0; i < FREEAIR__COUNT(slopes); i++)
    if (slopes[i].reading == reading && slopes[i].cause == cause) return &slopes[i];
  return NULL;
}
