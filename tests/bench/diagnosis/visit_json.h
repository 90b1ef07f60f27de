/* SPDX-License-Identifier: MIT */
/* Visits as JSON, one object a line; a line without "visit" is a head that says what
 * the file is, with the number of its visits under "visits". README.md has the format. */
#ifndef FREEAIR_BENCH_VISIT_JSON_H
#define FREEAIR_BENCH_VISIT_JSON_H

#include "visit.h"

#include <jansson.h>
#include <stdio.h>

/* A new reference. */
json_t *visit_to_json(uint64_t n, const visit *v);

/* One line, numbers to seven digits; 0, or -1 when it cannot be written. */
int visit_json_dump(const json_t *line, FILE *file);

typedef struct visit_set {
  visit *visits;
  uint64_t *numbers;
  size_t n;
} visit_set;

/* All visits of a file. Says what is wrong with it on standard error and returns 0 when
 * anything is not as it should be: then the set is empty. */
int visit_set_read(const char *name, visit_set *set);

void visit_set_free(visit_set *set);

#endif
