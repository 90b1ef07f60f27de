/* SPDX-License-Identifier: MIT */
/* A call of one function on n rows of values, built from names and texts alone:
 * everything that is known about the function comes from the library. */
#ifndef FREEAIR_EXAMPLES_JOB_H
#define FREEAIR_EXAMPLES_JOB_H

#include <freeair/freeair.h>

enum { JOB_PARAMETERS = 48, JOB_MESSAGE = 512 };

typedef struct job {
  const freeair_function *f;
  size_t n_parameters;
  size_t rows;
  double barometer_pa;
  char *memory[JOB_PARAMETERS];   /* rows x elements of each parameter */
  size_t elements[JOB_PARAMETERS]; /* elements a row: 1, or the length of an array */
  unsigned char *given[JOB_PARAMETERS]; /* which of its values were set, one flag a field */
  int32_t *status;
  char message[JOB_MESSAGE];
} job;

/* One value of a job: a parameter, or a field of a structure. */
typedef struct place {
  size_t parameter;
  const freeair_parameter *leaf;
  const freeair_parameter *parent; /* the structure's parameter, or null */
  size_t field;
  char name[128];
} place;

/* A function by its name, with or without "freeair_"; null when there is none. */
const freeair_function *job_function(const char *name);

/* Prepares n rows. Returns 0 with a message where the function cannot be run from a command line. */
int job_init(job *j, const freeair_function *f, size_t rows, double barometer_pa);
void job_free(job *j);

/* Finds a value by name: p1_pa, p1, test.v_m3, v_m3. Outputs only where asked. */
int job_find(job *j, const char *name, int output, place *found);

/* Sets a value from text in one row, or in all where row is (size_t)-1; unit is used where the text has none. */
int job_set(job *j, const place *at, size_t row, const char *text, const char *unit);

/* Runs every row. Returns 0 with a message when a value is missing; else the statuses say how each went. */
int job_run(job *j);

/* Calls visit for every value, inputs or outputs, in order. */
typedef void job_visit(const job *j, const place *at, void *context);
void job_each(const job *j, int output, job_visit *visit, void *context);

double job_value(const job *j, const place *at, size_t row, size_t element);
const char *job_text(const job *j, const place *at, size_t row);

/* Why a row failed: names the argument, its value, unit and range where they tell. */
void job_explain(const job *j, size_t row, char *text, size_t size);

#endif
