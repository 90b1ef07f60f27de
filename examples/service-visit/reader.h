/* SPDX-License-Identifier: MIT */
/* Reading a visit's JSON: texts, quantities with their units, fields of structures
 * by the names that people type. What is refused is said with its place in the
 * file; each function then returns 0. */
#ifndef FREEAIR_VISIT_READER_H
#define FREEAIR_VISIT_READER_H

#include "visit.h"

#include <jansson.h>
#include <stddef.h>

/* Where in the file the reader stands, such as /machine/lp_bore. */
typedef struct reader {
  visit *v;
  char place[200];
  double barometer_pa;
} reader;

/* Puts the message of what is wrong into the visit. */
int refuse(reader *r, const char *format, ...);

/* Steps into a key, and back to where the place ended before. */
size_t enter(reader *r, const char *key);
void leave(reader *r, size_t before);

int read_text(reader *r, const json_t *value, char *text, size_t size);

/* "12 psig", or a plain number where the quantity has no unit. */
int read_quantity(reader *r, const json_t *value, const char *unit, int difference, double *x);

/* Reads a value into the field of a structure that the library describes. */
int set_field(reader *r, const freeair_parameter *field, const json_t *value, char *structure);

/* By the library's name, short or whole, or the technician's; null when there is none. */
const freeair_parameter *find_field(const freeair_structure *s, const char *typed);
const freeair_structure *find_structure(const char *name);

typedef int read_key(reader *r, const char *key, const json_t *value);

/* Calls each for every key of an object. */
int each_key(reader *r, const json_t *object, read_key *each);

#endif
