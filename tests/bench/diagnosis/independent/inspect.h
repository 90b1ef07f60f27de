/* SPDX-License-Identifier: MIT */
/* What a technician finds of a machine, in the order of his visit: he times the filling,
 * reads gauges and thermometers near the top, stops it and watches it leak down, and
 * looks, listens and feels. */
#ifndef FREEAIR_INDEPENDENT_INSPECT_H
#define FREEAIR_INDEPENDENT_INSPECT_H

#include "truth.h"

typedef struct inspection {
  dice *d;
  const truth *t;
  pump_map map;
  visit *v;
  double end_pa;   /* cut-out, or where it levels off short of that */
  pump_result top; /* the pump where temperatures, speeds and power are read */
} inspection;

/* before_m3_s is the delivery of the sound machine. */
void inspect_filling(inspection *in, double before_m3_s);
void inspect_running(inspection *in);
void inspect_stopped(inspection *in);
void inspect_senses(inspection *in);

#endif
