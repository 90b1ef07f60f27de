/* SPDX-License-Identifier: MIT */
/* Quantities as people write them: "90 psig", "20 C", "1/2 in", "14 1/2 in", "5:12". */
#ifndef FREEAIR_EXAMPLES_QUANTITY_H
#define FREEAIR_EXAMPLES_QUANTITY_H

#include <stddef.h>

typedef struct quantity_context {
  const char *unit;    /* coherent SI unit that is wanted, as the library spells it */
  double barometer_pa; /* turns gauge readings into absolute ones; NaN where it is not known */
  int difference;      /* the quantity is a difference or an uncertainty, not a reading of a scale */
} quantity_context;

/* Reads text into coherent SI. Returns 1; or 0 with the reason in why. A number
 * without a unit is taken as SI already. */
int quantity_read(const char *text, const quantity_context *context, double *value, char *why, size_t size);

/* Does the name of a parameter or field speak of a difference? */
int quantity_is_difference(const char *name);

#endif
