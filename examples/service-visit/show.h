/* SPDX-License-Identifier: MIT */
/* Quantities in the units a technician speaks: gauge pressures, degrees, cubic feet or litres a minute. */
#ifndef FREEAIR_VISIT_SHOW_H
#define FREEAIR_VISIT_SHOW_H

#include "visit.h"

enum { SHOWN = 48 };

typedef enum show_kind {
  SHOW_READING,    /* of a scale: pressures as a gauge would read them */
  SHOW_DIFFERENCE, /* a difference or an uncertainty */
} show_kind;

/* Writes "175 psig" into text, which it returns. si is the unit of value as the library spells it. */
const char *show(const visit *v, double value, const char *si, show_kind kind, char text[SHOWN]);

/* A duration as a stopwatch shows it. */
const char *show_time(double seconds, char text[SHOWN]);

/* A share in percent. */
const char *show_percent(double share, char text[SHOWN]);

/* A probability in percent, without a false claim of certainty. */
const char *show_probability(double p, char text[SHOWN]);

/* Prints text wrapped to the width of a page, its first line behind a label, the rest below its beginning. */
void print_wrapped(const char *label, int indent, const char *text);

#endif
