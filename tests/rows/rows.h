/* SPDX-License-Identifier: MIT */
/* Check values as data: reads tests/data/<topic>.tsv and turns a row into a
 * call through the library's own description. The columns are explained in
 * DEVELOPERS.md. */
#ifndef FREEAIR_TESTS_ROWS_H
#define FREEAIR_TESTS_ROWS_H

#include <freeair/freeair.h>

enum { ROW_ID, ROW_FUNCTION, ROW_INPUTS, ROW_OUTPUTS, ROW_TOLERANCE, ROW_STATUS, ROW_KIND, ROW_SOURCE, ROW_COLUMNS };

typedef struct row {
  char *cell[ROW_COLUMNS];
  char *place; /* file:line */
} row;

typedef struct rows {
  row *row;
  size_t n;
} rows;

/* Reads every .tsv file of a folder. Ends the program with a message if one cannot be read. */
rows rows_read(const char *folder);
void rows_free(rows *r);

enum { CALL_PARAMETERS = 48, CALL_SPARE = 16 };

/* One call: an argument and, where the library writes or reads more than a
 * scalar, memory for it, with CALL_SPARE zero bytes behind. */
typedef struct call {
  const freeair_function *f;
  char *args[CALL_PARAMETERS];
  size_t count[CALL_PARAMETERS]; /* elements behind each argument */
  ptrdiff_t steps[CALL_PARAMETERS];
  int32_t status;
  char error[600]; /* why the row could not be understood; empty when it could */
} call;

/* A call with the inputs of a row; look at error before using it. */
call call_of_row(const row *r);
void call_free(call *c);
/* Runs it: outputs are set up anew, status is set. */
void call_run(call *c);

/* The memory of an argument's element, or of a field of its structure; null with
 * a message in c->error when there is none such. Address is name, name.field,
 * name[i] or name[i].field. */
void *call_at(call *c, const char *address, const freeair_parameter **leaf);

/* Reads "12.5 bar", "nan", "FREEAIR_VERDICT_MEETS" as a number in the unit of p; 0 with a message on failure. */
int value_read(const char *text, const freeair_parameter *p, int difference, double *value, char *error, size_t size);
double value_load(const freeair_parameter *p, const void *at);
void value_store(const freeair_parameter *p, double value, void *at);

/* Every double output must be NaN after an error: the name of one that is not, else null. */
const char *call_output_not_nan(call *c);
/* Compares the outputs a row lists; 0 with a message in c->error when one is off. */
int call_matches(call *c, const row *r);

/* Status code by name, with or without the prefix FREEAIR_; 1000 when unknown. */
int32_t status_of(const char *name);

#endif
