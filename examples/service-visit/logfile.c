/* SPDX-License-Identifier: MIT */
#include "logfile.h"

#include "../common/quantity.h"

#include <csv.h>
#include <errno.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { TIME, PRESSURE, LOADED, COLUMNS };

typedef struct reading {
  const visit *v;
  char *message; /* VISIT_TEXT long */
  logfile *log;
  char path[2 * VISIT_TEXT];
  size_t line;
  size_t column;
  size_t n_names;
  size_t position[COLUMNS]; /* of the columns that are wanted */
  size_t room;
  double first_s;
  double value[COLUMNS];
  int failed;
} reading;

static void refuse(reading *r, const char *format, const char *text)
{
  char why[300];
  if (r->failed) return;
  snprintf(why, sizeof why, format, text);
  snprintf(r->message, VISIT_TEXT, "%.280s:%zu: %.280s", r->path, r->line, why);
  r->failed = 1;
}

/* Seconds, or a date and time of day as loggers write it. */
static int read_time(const char *text, double *seconds)
{
  static const char *const forms[] = {"%Y-%m-%d %H:%M:%S", "%Y-%m-%dT%H:%M:%S", "%Y/%m/%d %H:%M:%S"};
  for (size_t i = 0; i < sizeof forms / sizeof forms[0]; i++) {
    struct tm when = {0};
    const char *rest = strptime(text, forms[i], &when);
    if (rest == NULL) continue;
    *seconds = (double)timegm(&when);
    if (*rest == '.') {
      char *end;
      *seconds += strtod(rest, &end);
      rest = end;
    }
    return *rest == '\0' || strcmp(rest, "Z") == 0;
  }
  quantity_context context = {"s", NAN, 0};
  char why[200];
  return quantity_read(text, &context, seconds, why, sizeof why) && isfinite(*seconds);
}

static void one_name(reading *r, const char *name)
{
  const char *wanted[COLUMNS] = {r->v->log.time, r->v->log.pressure, r->v->log.loaded};
  for (size_t i = 0; i < COLUMNS; i++)
    if (wanted[i][0] != '\0' && strcmp(wanted[i], name) == 0) r->position[i] = r->column;
}

static void one_value(reading *r, char *text)
{
  quantity_context context = {"Pa", r->v->site.barometric_pa, 0};
  char both[120];
  char why[200];
  char *end;
  if (r->column == r->position[TIME]) {
    if (!read_time(text, &r->value[TIME])) refuse(r, "'%s' is neither a number of seconds nor a date and time", text);
  } else if (r->column == r->position[PRESSURE]) {
    r->value[PRESSURE] = NAN;
    if (text[0] == '\0') return; /* loggers leave holes */
    snprintf(both, sizeof both, "%.60s %s", text, r->v->log.unit);
    double number = strtod(text, &end);
    if (end == text || *end != '\0')
      refuse(r, "'%s' is not a number", text);
    else if (isfinite(number) && !quantity_read(both, &context, &r->value[PRESSURE], why, sizeof why))
      refuse(r, "%s", why);
    else if (isfinite(number) && !(r->value[PRESSURE] < 1e8))
      refuse(r, "%s is no pressure of a compressed-air system", both);
  } else if (r->column == r->position[LOADED]) {
    r->value[LOADED] = strtod(text, &end);
    if (end == text) r->value[LOADED] = NAN;
  }
}

static void one_cell(void *data, size_t length, void *context)
{
  reading *r = context;
  char text[200];
  if (r->failed) return;
  snprintf(text, sizeof text, "%.*s", (int)(length < 199 ? length : 199), data != NULL ? (const char *)data : "");
  if (r->line == 1)
    one_name(r, text);
  else
    one_value(r, text);
  r->column++;
}

static int more_room(reading *r)
{
  logfile *log = r->log;
  if (log->n < r->room) return 1;
  const size_t room = r->room == 0 ? 1024 : 2 * r->room;
  double **arrays[] = {&log->t_s, &log->p_pa, &log->loaded};
  for (size_t i = 0; i < COLUMNS; i++) {
    double *more = realloc(*arrays[i], room * sizeof *more);
    if (more == NULL) {
      refuse(r, "%s", "out of memory");
      return 0;
    }
    *arrays[i] = more;
  }
  r->room = room;
  return 1;
}

static void one_row(int end, void *context)
{
  reading *r = context;
  (void)end;
  if (r->failed) return;
  if (r->line == 1) {
    const char *wanted[COLUMNS] = {r->v->log.time, r->v->log.pressure, r->v->log.loaded};
    r->n_names = r->column;
    for (size_t i = 0; i < COLUMNS; i++)
      if (wanted[i][0] != '\0' && r->position[i] == (size_t)-1) refuse(r, "no column '%s'", wanted[i]);
  } else if (r->column != r->n_names) {
    refuse(r, "%s", "the row has more or fewer values than the first line has names; was the file cut off?");
  } else if (more_room(r)) {
    logfile *log = r->log;
    if (log->n == 0) r->first_s = r->value[TIME];
    log->t_s[log->n] = r->value[TIME] - r->first_s;
    log->p_pa[log->n] = r->value[PRESSURE];
    log->loaded[log->n] = r->value[LOADED];
    log->n++;
  }
  r->column = 0;
  r->line++;
}

int logfile_read(logfile *log, const visit *v, char message[VISIT_TEXT])
{
  struct csv_parser parser;
  char chunk[65536];
  size_t n;
  *log = (logfile){0};
  reading r = {.v = v,
               .message = message,
               .log = log,
               .line = 1,
               .position = {(size_t)-1, (size_t)-1, (size_t)-1},
               .value = {NAN, NAN, NAN}};
  const char *slash = strrchr(v->path, '/');
  if (v->log.file[0] == '/' || slash == NULL)
    snprintf(r.path, sizeof r.path, "%s", v->log.file);
  else
    snprintf(r.path, sizeof r.path, "%.*s/%s", (int)(slash - v->path), v->path, v->log.file);
  FILE *file = fopen(r.path, "rb");
  if (file == NULL) {
    snprintf(message, VISIT_TEXT, "%.200s: /log/file: %.200s: %s", v->path, r.path, strerror(errno));
    return 0;
  }
  csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL);
  while (!r.failed && (n = fread(chunk, 1, sizeof chunk, file)) > 0)
    if (csv_parse(&parser, chunk, n, one_cell, one_row, &r) != n) refuse(&r, "%s", csv_strerror(csv_error(&parser)));
  if (!r.failed && csv_fini(&parser, one_cell, one_row, &r) != 0) refuse(&r, "%s", csv_strerror(csv_error(&parser)));
  csv_free(&parser);
  fclose(file);
  if (!r.failed && log->n < 3) refuse(&r, "%s", "fewer than three rows; was the file cut off?");
  for (size_t i = 1; !r.failed && i < log->n; i++) {
    r.line = i + 2;
    if (log->t_s[i] < log->t_s[i - 1]) refuse(&r, "%s", "the time runs backwards; was the file shuffled?");
  }
  if (r.failed || v->log.loaded[0] == '\0') {
    free(log->loaded);
    log->loaded = NULL;
  }
  if (r.failed) logfile_free(log);
  return !r.failed;
}

void logfile_free(logfile *log)
{
  free(log->t_s);
  free(log->p_pa);
  free(log->loaded);
  *log = (logfile){0};
}
