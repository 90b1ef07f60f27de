/* SPDX-License-Identifier: MIT */
#include "internal/likelihood.h"

#include "internal/array.h"

#include <freeair/caution.h>

enum {
  open_up = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY |
            FREEAIR_CAUTION_PROTECTION,
  head_work = open_up | FREEAIR_CAUTION_HOT | FREEAIR_CAUTION_LIFTING | FREEAIR_CAUTION_OIL_MIST,
  drive_work = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING | FREEAIR_CAUTION_PROTECTION,
  electrical_work = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_LIVE
};

/* In the order of their codes. */
static const freeair__likelihood_cause causes[] = {
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

const freeair__likelihood_cause *freeair__likelihood_cause_of(int32_t cause)
{
  return cause >= 1 && cause <= (int32_t)FREEAIR__COUNT(causes) ? &causes[cause - 1] : NULL;
}
