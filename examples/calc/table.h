/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CALC_TABLE_H
#define FREEAIR_CALC_TABLE_H

#include "print.h"

/* A CSV file whose first line names the columns. */
typedef struct table {
  const char *path;
  char **cell; /* n_rows + 1 lines of n_columns, the first being the names */
  size_t n_columns;
  size_t n_rows;
} table;

int table_read(table *t, const char *path, char *message, size_t size);
void table_free(table *t);

/* Gives the columns to the arguments they name; 0 with file, line and column in the job's message. */
int table_apply(table *t, job *j);

/* Prints the table with the outputs and a status behind. Exit status 1 when a row failed. */
int table_print(const table *t, const job *j, const wanted_units *units, int json);

#endif
