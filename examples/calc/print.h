/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CALC_PRINT_H
#define FREEAIR_CALC_PRINT_H

#include "../common/job.h"

#include <jansson.h>

/* Outputs that are wanted in a unit other than SI, each "name=unit". */
typedef struct wanted_units {
  const char *const *text;
  size_t n;
} wanted_units;

/* Is every wanted unit one of its output's kind? Else 0 with a message in the job. */
int print_units_known(job *j, const wanted_units *units);

/* The unit of an output, and a value in it. */
const char *print_unit(const job *j, const wanted_units *units, const place *at);
double print_value(const job *j, const wanted_units *units, const place *at, size_t row, size_t element);

/* Functions by topic; those whose name, topic or sentence holds a word. Returns how many. */
size_t print_list(const char *word, int json);
void print_function(const freeair_function *f, int json);
void print_result(const job *j, const wanted_units *units, int json);

/* One row's outputs as a JSON object, by name. */
json_t *print_outputs(const job *j, const wanted_units *units, size_t row);
void print_json(json_t *object);

#endif
