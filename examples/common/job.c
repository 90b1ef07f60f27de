/* SPDX-License-Identifier: MIT */
#include "job.h"

#include "names.h"
#include "quantity.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const size_t first_field = 2; /* behind struct_size and flags */

static int refuse(job *j, const char *format, ...)
{
  va_list list;
  va_start(list, format);
  vsnprintf(j->message, sizeof j->message, format, list);
  va_end(list);
  return 0;
}

static void *allocate(size_t n, size_t size)
{
  void *p = calloc(n > 0 ? n : 1, size > 0 ? size : 1);
  if (p == NULL) {
    fputs("out of memory\n", stderr);
    exit(3);
  }
  return p;
}

static const char *short_name(const job *j)
{
  return freeair_function_name(j->f) + strlen("freeair_");
}

static int is_output(const freeair_parameter *p)
{
  return (p->flags & FREEAIR_PARAMETER_OUTPUT) != 0;
}

static int is_array(const freeair_parameter *p)
{
  return (p->flags & FREEAIR_PARAMETER_ARRAY) != 0;
}

static size_t fields_of(const freeair_parameter *p)
{
  return p->structure != NULL ? freeair_structure_field_count(p->structure) : 1;
}

/* Is the parameter a stride, or the length of an array that is given? Nobody types those. */
static int is_bookkeeping(const job *j, size_t i)
{
  for (size_t k = 0; k < j->n_parameters; k++) {
    const freeair_parameter *p = freeair_function_parameter(j->f, k);
    if (p->stride_index == (int32_t)i) return 1;
    if (is_array(p) && !is_output(p) && p->length_index == (int32_t)i) return 1;
  }
  return 0;
}

const freeair_function *job_function(const char *name)
{
  const freeair_function *f = freeair_function_find(name);
  if (f != NULL) return f;
  char full[256];
  snprintf(full, sizeof full, "freeair_%s", name);
  return freeair_function_find(full);
}

static void set_up(job *j, size_t i, size_t elements)
{
  const freeair_parameter *p = freeair_function_parameter(j->f, i);
  free(j->memory[i]);
  j->elements[i] = elements;
  j->memory[i] = allocate(j->rows * elements, p->size);
  for (size_t k = 0; k < j->rows * elements; k++) {
    char *at = j->memory[i] + k * p->size;
    if (p->structure != NULL)
      freeair_structure_init(p->structure, at, p->size);
    else if (p->type == FREEAIR_TYPE_DOUBLE)
      *(double *)(void *)at = NAN;
  }
}

int job_init(job *j, const freeair_function *f, size_t rows, double barometer_pa)
{
  *j = (job){.f = f, .n_parameters = freeair_function_parameter_count(f), .rows = rows, .barometer_pa = barometer_pa};
  if (j->n_parameters > JOB_PARAMETERS) return refuse(j, "%s has too many parameters", short_name(j));
  for (size_t i = 0; i < j->n_parameters; i++) {
    const freeair_parameter *p = freeair_function_parameter(f, i);
    if (is_array(p) && rows != 1)
      return refuse(j, "%s takes arrays; it works on one set of values at a time", short_name(j));
    if (is_array(p) && !is_output(p) && p->structure != NULL)
      return refuse(j, "%s takes an array of structures; call it from a program", short_name(j));
    j->given[i] = allocate(fields_of(p), 1);
    set_up(j, i, is_array(p) ? 0 : 1);
  }
  j->status = allocate(rows, sizeof *j->status);
  return 1;
}

void job_free(job *j)
{
  for (size_t i = 0; i < j->n_parameters; i++) {
    const freeair_parameter *p = freeair_function_parameter(j->f, i);
    if (p->type == FREEAIR_TYPE_TEXT && !is_output(p) && j->memory[i] != NULL)
      for (size_t k = 0; k < j->rows; k++) free(((char **)(void *)j->memory[i])[k]);
    free(j->memory[i]);
    free(j->given[i]);
  }
  free(j->status);
}

static place make_place(size_t i, const freeair_parameter *p, size_t field)
{
  place at = {.parameter = i, .leaf = p};
  if (p->structure != NULL) {
    at.parent = p;
    at.field = field;
    at.leaf = freeair_structure_field(p->structure, field);
    snprintf(at.name, sizeof at.name, "%s.%s", p->name, at.leaf->name);
  } else {
    snprintf(at.name, sizeof at.name, "%s", p->name);
  }
  return at;
}

void job_each(const job *j, int output, job_visit *visit, void *context)
{
  for (size_t i = 0; i < j->n_parameters; i++) {
    const freeair_parameter *p = freeair_function_parameter(j->f, i);
    if (is_output(p) != output || is_bookkeeping(j, i)) continue;
    for (size_t k = p->structure != NULL ? first_field : 0; k < fields_of(p); k++) {
      place at = make_place(i, p, k);
      visit(j, &at, context);
    }
  }
}

/* How well a name that someone typed fits a place: the whole of it best, then
 * without the structure's name, then without the unit, since a value brings its own. */
static int fit(const char *name, const place *at)
{
  const char *candidates[] = {at->name, at->leaf->name};
  int best = 0;
  for (int i = 0; i < 2; i++) {
    int how = name_fits(name, candidates[i], at->leaf->unit);
    int rank = how == 0 ? 0 : 2 * how - i;
    if (rank > best) best = rank;
  }
  return best;
}

typedef struct search {
  const char *name;
  place best;
  int rank;
  int ties;
} search;

static void consider(const job *j, const place *at, void *context)
{
  search *s = context;
  int rank = fit(s->name, at);
  (void)j;
  if (rank == 0 || rank < s->rank) return;
  s->ties = rank == s->rank ? s->ties + 1 : 1;
  s->rank = rank;
  s->best = *at;
}

int job_find(job *j, const char *name, int output, place *found)
{
  search s = {.name = name};
  job_each(j, output, consider, &s);
  if (s.ties == 0)
    return refuse(j, "%s has no %s '%s'; calc show %s lists them", short_name(j), output ? "output" : "argument", name,
                  short_name(j));
  if (s.ties > 1) return refuse(j, "'%s' could be %s and others of its kind; write it out", name, s.best.name);
  *found = s.best;
  return 1;
}

static int store(job *j, const place *at, double x, char *to)
{
  const freeair_parameter *p = at->leaf;
  if (p->type == FREEAIR_TYPE_DOUBLE) {
    *(double *)(void *)to = x;
    return 1;
  }
  if (!(x >= (p->type == FREEAIR_TYPE_INT32 ? -2147483648.0 : 0.0) && x <= 2147483647.0) || floor(x) != x)
    return refuse(j, "%s takes a whole number", at->name);
  if (p->type == FREEAIR_TYPE_INT32)
    *(int32_t *)(void *)to = (int32_t)x;
  else if (p->type == FREEAIR_TYPE_UINT32)
    *(uint32_t *)(void *)to = (uint32_t)x;
  else
    *(size_t *)(void *)to = (size_t)x;
  return 1;
}

static int read_constant(job *j, const place *at, const char *text, double *x)
{
  char known[JOB_MESSAGE - 100];
  if (constant_read(at->leaf->choice, text, x)) return 1;
  constant_list(at->leaf->choice, known, sizeof known);
  return refuse(j, "%s: '%s' is none of %s", at->name, text, known);
}

static int read_one(job *j, const place *at, const char *text, const char *unit, char *to)
{
  const freeair_parameter *p = at->leaf;
  double x;
  if (p->choice[0] != '\0') return read_constant(j, at, text, &x) && store(j, at, x, to);
  quantity_context context = {p->unit, j->barometer_pa, quantity_is_difference(p->name)};
  char why[300];
  char both[200];
  char *end;
  strtod(text, &end);
  if (unit[0] != '\0' && end[strspn(end, " ")] == '\0') {
    snprintf(both, sizeof both, "%s %s", text, unit);
    text = both;
  }
  if (!quantity_read(text, &context, &x, why, sizeof why))
    return refuse(j, "%s: %s%s%s%s%s", at->name, why, p->range[0] != '\0' ? "; range " : "", p->range,
                  p->range[0] != '\0' ? " " : "", p->range[0] != '\0' ? p->unit : "");
  return store(j, at, x, to);
}

static int read_array(job *j, const place *at, const char *text, const char *unit)
{
  const freeair_parameter *p = at->leaf;
  char *list = strdup(text);
  size_t n = 1;
  if (list == NULL) return refuse(j, "out of memory");
  for (const char *c = list; *c != '\0'; c++) n += *c == ',';
  set_up(j, at->parameter, n);
  /* a unit behind the last number holds for all */
  char *last = strrchr(list, ',');
  char *end;
  strtod(last != NULL ? last + 1 : list, &end);
  char own[64];
  snprintf(own, sizeof own, "%s", end + strspn(end, " "));
  int ok = 1;
  size_t k = 0;
  for (char *rest = list, *item; ok && (item = strsep(&rest, ",")) != NULL; k++)
    ok = read_one(j, at, item, own[0] != '\0' ? own : unit, j->memory[at->parameter] + k * p->size);
  free(list);
  return ok;
}

int job_set(job *j, const place *at, size_t row, const char *text, const char *unit)
{
  j->given[at->parameter][at->field] = 1;
  if (is_array(at->parent != NULL ? at->parent : at->leaf)) return read_array(j, at, text, unit);
  const size_t first = row == (size_t)-1 ? 0 : row;
  const size_t end = row == (size_t)-1 ? j->rows : row + 1;
  const size_t size = (at->parent != NULL ? at->parent : at->leaf)->size;
  for (size_t k = first; k < end; k++) {
    char *to = j->memory[at->parameter] + k * size + (at->parent != NULL ? at->leaf->offset : 0);
    if (at->leaf->type == FREEAIR_TYPE_TEXT) {
      free(*(char **)(void *)to);
      *(char **)(void *)to = strdup(text);
    } else if (!read_one(j, at, text, unit, to)) {
      return 0;
    }
  }
  return 1;
}

static void want(const job *j, const place *at, void *context)
{
  job *mutable = context;
  const int optional = (at->leaf->flags & FREEAIR_PARAMETER_OPTIONAL) != 0;
  if (at->parent != NULL || optional || j->given[at->parameter][0] || mutable->message[0] != '\0') return;
  refuse(mutable, "%s is not given: %s%s%s%s%s", at->name, at->leaf->brief,
         at->leaf->unit[0] != '\0' && strcmp(at->leaf->unit, "1") != 0 ? " Unit " : "",
         strcmp(at->leaf->unit, "1") != 0 ? at->leaf->unit : "", at->leaf->range[0] != '\0' ? ", range " : "",
         at->leaf->range);
}

int job_run(job *j)
{
  char *args[JOB_PARAMETERS];
  ptrdiff_t steps[JOB_PARAMETERS];
  j->message[0] = '\0';
  job_each(j, 0, want, j);
  if (j->message[0] != '\0') return 0;
  for (size_t i = 0; i < j->n_parameters; i++) {
    const freeair_parameter *p = freeair_function_parameter(j->f, i);
    if (p->stride_index >= 0) *(size_t *)(void *)j->memory[p->stride_index] = p->size;
    if (!is_array(p) || p->length_index < 0) continue;
    size_t *length = (size_t *)(void *)j->memory[p->length_index];
    if (is_output(p)) {
      if (*length > 1000000) return refuse(j, "%s: more than a million elements", p->name);
      set_up(j, i, *length);
    } else if (*length != 0 && *length != j->elements[i]) {
      return refuse(j, "%s has %zu elements where another array has %zu", p->name, j->elements[i], *length);
    } else {
      *length = j->elements[i];
    }
  }
  for (size_t i = 0; i < j->n_parameters; i++) {
    const freeair_parameter *p = freeair_function_parameter(j->f, i);
    args[i] = j->memory[i];
    steps[i] = (ptrdiff_t)(p->size * (is_array(p) ? j->elements[i] : 1));
  }
  freeair_map(j->f, j->rows, args, steps, j->status);
  return 1;
}

static const char *address(const job *j, const place *at, size_t row, size_t element)
{
  const freeair_parameter *whole = at->parent != NULL ? at->parent : at->leaf;
  return j->memory[at->parameter] + (row * j->elements[at->parameter] + element) * whole->size +
         (at->parent != NULL ? at->leaf->offset : 0);
}

double job_value(const job *j, const place *at, size_t row, size_t element)
{
  const void *from = address(j, at, row, element);
  if (at->leaf->type == FREEAIR_TYPE_DOUBLE) return *(const double *)from;
  if (at->leaf->type == FREEAIR_TYPE_INT32) return *(const int32_t *)from;
  if (at->leaf->type == FREEAIR_TYPE_UINT32) return *(const uint32_t *)from;
  return (double)*(const size_t *)from;
}

const char *job_text(const job *j, const place *at, size_t row)
{
  const char *text = *(const char *const *)(const void *)address(j, at, row, 0);
  return text != NULL ? text : "";
}

typedef struct blame {
  size_t row;
  char *text;
  size_t size;
} blame;

static void accuse(const job *j, const place *at, void *context)
{
  blame *b = context;
  const freeair_parameter *p = at->leaf;
  if (b->text[0] != '\0' || isnan(p->lower) || is_array(at->parent != NULL ? at->parent : p)) return;
  double x = job_value(j, at, b->row, 0);
  if (isnan(x) && (p->flags & FREEAIR_PARAMETER_OPTIONAL)) return;
  const int above = p->flags & FREEAIR_PARAMETER_LOWER_CLOSED ? x >= p->lower : x > p->lower;
  const int below = p->flags & FREEAIR_PARAMETER_UPPER_CLOSED ? x <= p->upper : x < p->upper;
  if (above && below) return;
  const char *unit = strcmp(p->unit, "1") == 0 ? "" : p->unit;
  snprintf(b->text, b->size, "%s = %.10g %s is outside its range %s", at->name, x, unit, p->range);
}

void job_explain(const job *j, size_t row, char *text, size_t size)
{
  blame b = {row, text, size};
  text[0] = '\0';
  if (j->status[row] == FREEAIR_ERR_DOMAIN) job_each(j, 0, accuse, &b);
  if (text[0] == '\0') snprintf(text, size, "%s", freeair_status_text(j->status[row]));
}
