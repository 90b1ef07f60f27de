/* SPDX-License-Identifier: MIT */
#include "table.h"

#include <csv.h>
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

typedef struct reading {
  table *t;
  size_t n_cells;
  size_t room;
  size_t in_row;
  size_t line;
  char *message;
  size_t size;
  int failed;
} reading;

static void refuse(reading *r, const char *text)
{
  if (!r->failed) snprintf(r->message, r->size, "%s:%zu: %s", r->t->path, r->line, text);
  r->failed = 1;
}

static void one_cell(void *data, size_t length, void *context)
{
  reading *r = context;
  if (r->n_cells == r->room) {
    r->room = r->room == 0 ? 256 : 2 * r->room;
    char **more = realloc(r->t->cell, r->room * sizeof *more);
    if (more == NULL) {
      refuse(r, "out of memory");
      return;
    }
    r->t->cell = more;
  }
  char *copy = malloc(length + 1);
  if (copy == NULL) {
    refuse(r, "out of memory");
    return;
  }
  memcpy(copy, data, length);
  copy[length] = '\0';
  r->t->cell[r->n_cells++] = copy;
  r->in_row++;
}

static void one_row(int end, void *context)
{
  reading *r = context;
  char text[120];
  (void)end;
  if (r->t->n_columns == 0) {
    r->t->n_columns = r->in_row;
  } else if (r->in_row != r->t->n_columns) {
    snprintf(text, sizeof text, "%zu values where the first line names %zu", r->in_row, r->t->n_columns);
    refuse(r, text);
  } else {
    r->t->n_rows++;
  }
  r->in_row = 0;
  r->line++;
}

int table_read(table *t, const char *path, char *message, size_t size)
{
  struct csv_parser parser;
  char chunk[65536];
  size_t n;
  *t = (table){.path = path};
  reading r = {.t = t, .line = 1, .message = message, .size = size};
  FILE *file = fopen(path, "rb");
  if (file == NULL) {
    snprintf(message, size, "%s: %s", path, strerror(errno));
    return 0;
  }
  csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL);
  while (!r.failed && (n = fread(chunk, 1, sizeof chunk, file)) > 0)
    if (csv_parse(&parser, chunk, n, one_cell, one_row, &r) != n) refuse(&r, csv_strerror(csv_error(&parser)));
  if (!r.failed && csv_fini(&parser, one_cell, one_row, &r) != 0) refuse(&r, csv_strerror(csv_error(&parser)));
  csv_free(&parser);
  fclose(file);
  if (!r.failed && t->n_rows == 0) refuse(&r, "no values below the names");
  if (r.failed) {
    for (size_t i = 0; i < r.n_cells; i++) free(t->cell[i]);
    free(t->cell);
    *t = (table){0};
  }
  return !r.failed;
}

void table_free(table *t)
{
  for (size_t i = 0; i < (t->cell != NULL ? (t->n_rows + 1) * t->n_columns : 0); i++) free(t->cell[i]);
  free(t->cell);
}

int table_apply(table *t, job *j)
{
  char message[JOB_MESSAGE];
  for (size_t c = 0; c < t->n_columns; c++) {
    char name[160];
    char unit[64] = "";
    snprintf(name, sizeof name, "%s", t->cell[c]);
    char *open = strchr(name, '[');
    if (open != NULL) {
      snprintf(unit, sizeof unit, "%.*s", (int)strcspn(open + 1, "]"), open + 1);
      *open = '\0';
    }
    for (char *end = name + strlen(name); end > name && end[-1] == ' ';) *--end = '\0';
    place at;
    int ok = job_find(j, name, 0, &at);
    size_t line = 1;
    while (ok && line <= t->n_rows) {
      ok = job_set(j, &at, line - 1, t->cell[line * t->n_columns + c], unit);
      line++;
    }
    if (!ok) {
      snprintf(message, sizeof message, "%s", j->message);
      snprintf(j->message, sizeof j->message, "%s:%zu: column %zu: %.400s", t->path, line, c + 1, message);
      return 0;
    }
  }
  return 1;
}

typedef struct line {
  const wanted_units *units;
  size_t row;
  int names;
} line;

static void column(const job *j, const place *at, void *context)
{
  const line *l = context;
  const char *unit = print_unit(j, l->units, at);
  if (!l->names) {
    printf("%.10g,", print_value(j, l->units, at, l->row, 0));
  } else if (strcmp(unit, at->leaf->unit) == 0) {
    printf("%s,", at->name);
  } else {
    printf("%s [%s],", at->name, unit);
  }
}

int table_print(const table *t, const job *j, const wanted_units *units, int json)
{
  int failed = 0;
  json_t *all = json ? json_array() : NULL;
  char why[JOB_MESSAGE];
  for (size_t row = 0; row <= t->n_rows; row++) {
    line l = {units, row - 1, row == 0};
    if (!json) {
      for (size_t c = 0; c < t->n_columns; c++) {
        const char *cell = t->cell[row * t->n_columns + c];
        if (cell[strcspn(cell, ",\"\r\n")] != '\0')
          csv_fwrite(stdout, cell, strlen(cell));
        else
          fputs(cell, stdout);
        putchar(',');
      }
      job_each(j, 1, column, &l);
      puts(row == 0 ? "status" : freeair_status_name(j->status[row - 1]));
    } else if (row > 0) {
      json_array_append_new(all, json_pack("{ssso}", "status", freeair_status_name(j->status[row - 1]), "outputs",
                                           print_outputs(j, units, row - 1)));
    }
    if (row > 0 && j->status[row - 1] < 0) {
      job_explain(j, row - 1, why, sizeof why);
      fprintf(stderr, "calc: %s:%zu: %s\n", t->path, row + 1, why);
      failed = 1;
    }
  }
  if (json) print_json(all);
  return failed;
}
