/* SPDX-License-Identifier: MIT */
#include "rows.h"

#include <glob.h>
#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void fail(char *error, size_t size, const char *format, ...)
{
  va_list list;
  va_start(list, format);
  vsnprintf(error, size, format, list);
  va_end(list);
}

static void *need(void *p)
{
  if (p == NULL) {
    fputs("out of memory\n", stderr);
    exit(99);
  }
  return p;
}

static char *copy(const char *text)
{
  return strcpy(need(malloc(strlen(text) + 1)), text);
}

/* A row that fails is found by its id: no other row of its file may have it. */
static void refuse_twins(const rows *all, size_t from, const row *r)
{
  for (size_t i = from; i < all->n; i++)
    if (strcmp(all->row[i].cell[ROW_ID], r->cell[ROW_ID]) == 0) {
      fprintf(stderr, "%s: %s is the id of %s already\n", r->place, r->cell[ROW_ID], all->row[i].place);
      exit(99);
    }
}

static void read_file(const char *path, rows *all)
{
  FILE *file = fopen(path, "r");
  if (file == NULL) {
    perror(path);
    exit(99);
  }
  char *line = NULL;
  size_t room = 0;
  int header = 0;
  const size_t first = all->n;
  for (int number = 1; getline(&line, &room, file) >= 0; number++) {
    line[strcspn(line, "\r\n")] = '\0';
    if (line[0] == '#' && header == 0 && strncmp(line, "# id\t", 5) != 0) continue;
    if (line[0] == '\0' || line[0] == '#') {
      header |= strncmp(line, "# id\t", 5) == 0;
      continue;
    }
    if (strncmp(line, "id\t", 3) == 0) {
      header = 1;
      continue;
    }
    row r = {.place = need(malloc(strlen(path) + 16))};
    sprintf(r.place, "%s:%d", path, number);
    char *rest = line;
    for (int i = 0; i < ROW_COLUMNS; i++) {
      char *cell = strsep(&rest, "\t");
      if (cell == NULL) {
        fprintf(stderr, "%s: %d columns, wanted %d\n", r.place, i, ROW_COLUMNS);
        exit(99);
      }
      r.cell[i] = copy(cell);
    }
    refuse_twins(all, first, &r);
    all->row = need(realloc(all->row, (all->n + 1) * sizeof(row)));
    all->row[all->n++] = r;
  }
  free(line);
  fclose(file);
}

rows rows_read(const char *folder)
{
  rows all = {0};
  char pattern[4096];
  glob_t found;
  snprintf(pattern, sizeof pattern, "%s/*.tsv", folder);
  if (glob(pattern, 0, NULL, &found) != 0) {
    fprintf(stderr, "no data in %s\n", folder);
    exit(99);
  }
  for (size_t i = 0; i < found.gl_pathc; i++) read_file(found.gl_pathv[i], &all);
  globfree(&found);
  return all;
}

void rows_free(rows *r)
{
  for (size_t i = 0; i < r->n; i++) {
    for (int k = 0; k < ROW_COLUMNS; k++) free(r->row[i].cell[k]);
    free(r->row[i].place);
  }
  free(r->row);
}

int32_t status_of(const char *name)
{
  char full[64];
  snprintf(full, sizeof full, "%s%s", strncmp(name, "FREEAIR_", 8) == 0 ? "" : "FREEAIR_", name);
  size_t i = freeair_constant_find(full);
  if (i == freeair_constant_count() || strcmp(freeair_constant_enumeration(i), "freeair_status") != 0) return 1000;
  return freeair_constant_value(i);
}

double value_load(const freeair_parameter *p, const void *at)
{
  if (p->type == FREEAIR_TYPE_DOUBLE) return *(const double *)at;
  if (p->type == FREEAIR_TYPE_INT32) return *(const int32_t *)at;
  if (p->type == FREEAIR_TYPE_UINT32) return *(const uint32_t *)at;
  return (double)*(const size_t *)at;
}

void value_store(const freeair_parameter *p, double value, void *at)
{
  if (p->type == FREEAIR_TYPE_DOUBLE)
    *(double *)at = value;
  else if (p->type == FREEAIR_TYPE_INT32)
    *(int32_t *)at = (int32_t)value;
  else if (p->type == FREEAIR_TYPE_UINT32)
    *(uint32_t *)at = (uint32_t)value;
  else
    *(size_t *)at = (size_t)value;
}

static const char *skip_space(const char *s)
{
  return s + strspn(s, " ");
}

int value_read(const char *text, const freeair_parameter *p, int difference, double *value, char *error, size_t size)
{
  text = skip_space(text);
  char *end;
  double number = strtod(text, &end);
  if (end == text) {
    char name[128];
    snprintf(name, sizeof name, "%s", text);
    name[strcspn(name, " ")] = '\0';
    size_t i = freeair_constant_find(name);
    if (i == freeair_constant_count()) {
      fail(error, size, "%s: neither a number nor a constant: '%s'", p->name, text);
      return 0;
    }
    if (p->choice[0] != '\0' && strcmp(p->choice, freeair_constant_enumeration(i)) != 0) {
      fail(error, size, "%s takes one of %s, not %s", p->name, p->choice, name);
      return 0;
    }
    *value = freeair_constant_value(i);
    return 1;
  }
  const char *unit = skip_space(end);
  *value = number;
  if (unit[0] == '\0' || isnan(number)) return 1;
  const char *si = freeair_units_si_symbol(unit);
  if (strcmp(p->unit, "any") == 0) return 1;
  if (si == NULL || strcmp(si, p->unit) != 0) {
    fail(error, size, "%s is in %s, which '%s' does not measure", p->name, p->unit, unit);
    return 0;
  }
  int32_t status = difference ? freeair_units_convert_difference(number, unit, si, value)
                              : freeair_units_si_from(number, unit, value);
  if (status != FREEAIR_OK) fail(error, size, "%s: %s", p->name, freeair_status_text(status));
  return status == FREEAIR_OK;
}

static size_t index_of(const freeair_function *f, const char *name, size_t length)
{
  size_t n = freeair_function_parameter_count(f);
  for (size_t i = 0; i < n; i++) {
    const char *have = freeair_function_parameter(f, i)->name;
    if (strlen(have) == length && strncmp(have, name, length) == 0) return i;
  }
  return n;
}

void *call_at(call *c, const char *address, const freeair_parameter **leaf)
{
  size_t length = strcspn(address, ".[");
  size_t i = index_of(c->f, address, length);
  if (i == freeair_function_parameter_count(c->f)) {
    fail(c->error, sizeof c->error, "%s has no parameter %s", freeair_function_name(c->f), address);
    return NULL;
  }
  const freeair_parameter *p = freeair_function_parameter(c->f, i);
  const char *rest = address + length;
  size_t element = 0;
  if (*rest == '[') {
    char *end;
    element = strtoul(rest + 1, &end, 10);
    rest = *end == ']' ? end + 1 : end;
  }
  if (element >= c->count[i]) {
    fail(c->error, sizeof c->error, "%s: only %zu elements", address, c->count[i]);
    return NULL;
  }
  char *at = c->args[i] + element * p->size;
  *leaf = p;
  if (p->structure == NULL && *rest == '\0') return at;
  for (size_t k = 0; p->structure != NULL && k < freeair_structure_field_count(p->structure); k++) {
    const freeair_parameter *field = freeair_structure_field(p->structure, k);
    if (*rest == '.' && strcmp(field->name, rest + 1) == 0) {
      *leaf = field;
      return at + field->offset;
    }
  }
  fail(c->error, sizeof c->error, "no such value: %s", address);
  return NULL;
}

/* Cuts the next "name=value" off a list that semicolons separate. */
static char *next_item(char **list, char **value)
{
  while (*list != NULL) {
    char *p = *list;
    int quoted = 0;
    while (*p != '\0' && (quoted || *p != ';')) quoted ^= *p++ == '"';
    char *item = *list;
    *list = *p == ';' ? p + 1 : NULL;
    *p = '\0';
    item += strspn(item, " ");
    for (char *end = item + strlen(item); end > item && end[-1] == ' ';) *--end = '\0';
    if (*item == '\0') continue;
    *value = strchr(item, '=');
    if (*value != NULL) *(*value)++ = '\0';
    return item;
  }
  return NULL;
}

static char *memory(size_t bytes)
{
  return need(calloc(1, bytes + CALL_SPARE));
}

/* "[1, 2, 3] bar" into a new array. */
static int read_array(call *c, size_t i, const char *text)
{
  const freeair_parameter *p = freeair_function_parameter(c->f, i);
  const char *close = strrchr(text, ']');
  if (close == NULL) {
    fail(c->error, sizeof c->error, "%s: no ']'", p->name);
    return 0;
  }
  char *inside = copy(text + 1);
  inside[close - text - 1] = '\0';
  const char *unit = close + 1;
  size_t n = 0;
  for (char *rest = inside, *item; (item = strsep(&rest, ",")) != NULL;) {
    char both[160];
    double value;
    snprintf(both, sizeof both, "%s%s", item, unit);
    if (!value_read(both, p, 0, &value, c->error, sizeof c->error)) break;
    c->args[i] = need(realloc(c->args[i], (n + 1) * p->size + CALL_SPARE));
    value_store(p, value, c->args[i] + n++ * p->size);
  }
  free(inside);
  c->count[i] = n;
  return c->error[0] == '\0';
}

call call_of_row(const row *r)
{
  call c = {.f = freeair_function_find(r->cell[ROW_FUNCTION])};
  if (c.f == NULL) {
    fail(c.error, sizeof c.error, "no function %s", r->cell[ROW_FUNCTION]);
    return c;
  }
  const size_t n = freeair_function_parameter_count(c.f);
  unsigned char given[CALL_PARAMETERS] = {0};
  if (n > CALL_PARAMETERS) {
    fail(c.error, sizeof c.error, "more than %d parameters", CALL_PARAMETERS);
    return c;
  }
  for (size_t i = 0; i < n; i++) {
    const freeair_parameter *p = freeair_function_parameter(c.f, i);
    if (p->flags & FREEAIR_PARAMETER_ARRAY) continue;
    c.args[i] = memory(p->structure != NULL ? p->size : sizeof(double));
    c.count[i] = 1;
    if (p->structure != NULL) freeair_structure_init(p->structure, c.args[i], p->size);
  }
  char *inputs = copy(r->cell[ROW_INPUTS]);
  char *list = inputs;
  char *value;
  for (char *name; c.error[0] == '\0' && (name = next_item(&list, &value)) != NULL;) {
    if (value == NULL) {
      fail(c.error, sizeof c.error, "%s: no value", name);
      break;
    }
    size_t i = index_of(c.f, name, strcspn(name, ".["));
    const freeair_parameter *leaf = i < n ? freeair_function_parameter(c.f, i) : NULL;
    if (leaf != NULL) given[i] = 1;
    if (leaf != NULL && *value == '[') {
      read_array(&c, i, value);
    } else if (leaf != NULL && leaf->type == FREEAIR_TYPE_TEXT && *value == '"') {
      value[strlen(value) - 1] = '\0';
      char *text = copy(value + 1);
      memcpy(c.args[i], &text, sizeof text);
    } else if (leaf != NULL && (leaf->flags & FREEAIR_PARAMETER_ARRAY) && leaf->structure != NULL) {
      /* element k of an array of structures that the caller fills */
      size_t k = strtoul(name + strcspn(name, "[") + 1, NULL, 10);
      if (k >= c.count[i]) {
        c.args[i] = need(realloc(c.args[i], (k + 1) * leaf->size + CALL_SPARE));
        for (; c.count[i] <= k; c.count[i]++)
          freeair_structure_init(leaf->structure, c.args[i] + c.count[i] * leaf->size, leaf->size);
      }
      void *at = call_at(&c, name, &leaf);
      double number;
      if (at != NULL && value_read(value, leaf, 0, &number, c.error, sizeof c.error)) value_store(leaf, number, at);
    } else {
      double number;
      void *at = call_at(&c, name, &leaf);
      if (at != NULL && value_read(value, leaf, 0, &number, c.error, sizeof c.error)) value_store(leaf, number, at);
    }
  }
  free(inputs);

  for (size_t i = 0; c.error[0] == '\0' && i < n; i++) {
    const freeair_parameter *p = freeair_function_parameter(c.f, i);
    const int array = (p->flags & FREEAIR_PARAMETER_ARRAY) != 0;
    const int output = (p->flags & FREEAIR_PARAMETER_OUTPUT) != 0;
    if (p->stride_index >= 0 && !given[p->stride_index])
      *(size_t *)(void *)c.args[p->stride_index] = p->size, given[p->stride_index] = 1;
    if (!array || p->length_index < 0) continue;
    size_t *length = (size_t *)(void *)c.args[p->length_index];
    if (!given[p->length_index] && !output && c.args[i] != NULL) *length = c.count[i], given[p->length_index] = 1;
    if (output || (c.args[i] == NULL && (p->flags & FREEAIR_PARAMETER_OPTIONAL))) {
      if (!output) continue;
      c.count[i] = *length;
      c.args[i] = memory(c.count[i] * p->size);
    } else if (c.args[i] == NULL || *length > c.count[i]) {
      fail(c.error, sizeof c.error, "%s: %zu elements given, %zu wanted", p->name, c.count[i], *length);
    }
  }
  for (size_t i = 0; c.error[0] == '\0' && i < n; i++) {
    const freeair_parameter *p = freeair_function_parameter(c.f, i);
    if (!given[i] && p->structure == NULL &&
        !(p->flags & (FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL)))
      fail(c.error, sizeof c.error, "%s is not given", p->name);
    if (!given[i] && (p->flags & FREEAIR_PARAMETER_OPTIONAL) && p->type == FREEAIR_TYPE_DOUBLE &&
        !(p->flags & (FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY)))
      *(double *)(void *)c.args[i] = NAN;
  }
  return c;
}

void call_free(call *c)
{
  if (c->f == NULL) return;
  for (size_t i = 0; i < freeair_function_parameter_count(c->f); i++) {
    const freeair_parameter *p = freeair_function_parameter(c->f, i);
    if (p->type == FREEAIR_TYPE_TEXT && !(p->flags & FREEAIR_PARAMETER_OUTPUT) && c->args[i] != NULL)
      free(*(char **)(void *)c->args[i]);
    free(c->args[i]);
  }
}

void call_run(call *c)
{
  for (size_t i = 0; i < freeair_function_parameter_count(c->f); i++) {
    const freeair_parameter *p = freeair_function_parameter(c->f, i);
    if (!(p->flags & FREEAIR_PARAMETER_OUTPUT) || c->args[i] == NULL) continue;
    for (size_t k = 0; k < c->count[i]; k++) {
      char *at = c->args[i] + k * p->size;
      if (p->structure != NULL)
        freeair_structure_init(p->structure, at, p->size);
      else if (p->type == FREEAIR_TYPE_DOUBLE)
        value_store(p, -12345.0, at); /* a value that no function returns: it must be overwritten */
      else
        value_store(p, 0.0, at);
    }
  }
  c->status = 1000;
  freeair_map(c->f, 1, c->args, c->steps, &c->status);
}

const char *call_output_not_nan(call *c)
{
  for (size_t i = 0; i < freeair_function_parameter_count(c->f); i++) {
    const freeair_parameter *p = freeair_function_parameter(c->f, i);
    if (!(p->flags & FREEAIR_PARAMETER_OUTPUT) || (p->flags & FREEAIR_PARAMETER_ARRAY) || c->args[i] == NULL) continue;
    if (p->structure == NULL) {
      if (p->type == FREEAIR_TYPE_DOUBLE && !isnan(value_load(p, c->args[i]))) return p->name;
      continue;
    }
    for (size_t k = 2; k < freeair_structure_field_count(p->structure); k++) {
      const freeair_parameter *field = freeair_structure_field(p->structure, k);
      if (field->type == FREEAIR_TYPE_DOUBLE && !isnan(value_load(field, c->args[i] + field->offset)))
        return field->name;
    }
  }
  return NULL;
}

/* "rel:1e-9" or "abs:0.5 kPa" as an absolute tolerance about want. */
static int tolerance_read(const char *text, const freeair_parameter *p, double want, double *tolerance, call *c)
{
  text = skip_space(text);
  if (strncmp(text, "rel:", 4) == 0) {
    char *end;
    *tolerance = strtod(text + 4, &end) * fabs(want);
    if (*skip_space(end) == '\0' && end != text + 4) return 1;
  } else if (strncmp(text, "abs:", 4) == 0) {
    return value_read(text + 4, p, 1, tolerance, c->error, sizeof c->error);
  }
  fail(c->error, sizeof c->error, "cannot read the tolerance '%s'", text);
  return 0;
}

static int element_matches(call *c, const char *name, char *value, const char *tolerance)
{
  const freeair_parameter *leaf;
  void *at = call_at(c, name, &leaf);
  if (at == NULL) return 0;
  if (leaf->type == FREEAIR_TYPE_TEXT) {
    value[strlen(value) - 1] = '\0';
    const char *got = *(const char **)at;
    if (got != NULL && strcmp(got, value + 1) == 0) return 1;
    fail(c->error, sizeof c->error, "%s is '%s', not '%s'", name, got != NULL ? got : "(null)", value + 1);
    return 0;
  }
  char *own = strchr(value, '@');
  if (own != NULL) *own++ = '\0';
  double want;
  double allowed = 0.0;
  if (!value_read(value, leaf, 0, &want, c->error, sizeof c->error)) return 0;
  double got = value_load(leaf, at);
  if (isnan(want) && isnan(got)) return 1;
  if (isinf(want) && got == want) return 1;
  if (leaf->type == FREEAIR_TYPE_DOUBLE &&
      !tolerance_read(own != NULL ? own : tolerance, leaf, want, &allowed, c))
    return 0;
  if (fabs(got - want) <= allowed) return 1;
  fail(c->error, sizeof c->error, "%s is %.17g %s, wanted %.17g within %.3g (off by %.3g, relative %.3g)", name, got,
       leaf->unit, want, allowed, got - want, (got - want) / want);
  return 0;
}

int call_matches(call *c, const row *r)
{
  char *outputs = copy(r->cell[ROW_OUTPUTS]);
  char *list = outputs;
  char *value;
  int ok = 1;
  size_t compared = 0;
  for (char *name; ok && (name = next_item(&list, &value)) != NULL; compared++) {
    if (value == NULL) {
      fail(c->error, sizeof c->error, "%s: no value", name);
      ok = 0;
    } else if (*value != '[') {
      ok = element_matches(c, name, value, r->cell[ROW_TOLERANCE]);
    } else {
      char *close = strrchr(value, ']');
      size_t k = 0;
      if (close == NULL) close = value + strlen(value) - 1;
      *close = '\0';
      for (char *rest = value + 1, *item; ok && (item = strsep(&rest, ",")) != NULL; k++) {
        char address[160];
        char both[160];
        snprintf(address, sizeof address, "%s[%zu]", name, k);
        snprintf(both, sizeof both, "%s%s", item, close + 1);
        ok = element_matches(c, address, both, r->cell[ROW_TOLERANCE]);
      }
    }
  }
  if (ok && compared == 0 && c->status >= 0) {
    fail(c->error, sizeof c->error, "the row compares nothing");
    ok = 0;
  }
  free(outputs);
  return ok;
}
