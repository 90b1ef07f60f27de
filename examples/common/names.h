/* SPDX-License-Identifier: MIT */
/* Names as people type them: without the unit, without the enumeration's prefix. */
#ifndef FREEAIR_EXAMPLES_NAMES_H
#define FREEAIR_EXAMPLES_NAMES_H

#include <stddef.h>

/* Is typed the whole of full (2), or full without the suffix of its unit (1)? Else 0. */
int name_fits(const char *typed, const char *full, const char *unit);

/* A constant of an enumeration by its whole name or by its last words, in any case
 * ("meets", "VERDICT_MEETS"), or by number. Returns 0 where there is none. */
int constant_read(const char *enumeration, const char *text, double *value);

/* The names of an enumeration's constants less "FREEAIR_", for a message. */
void constant_list(const char *enumeration, char *text, size_t size);

#endif
