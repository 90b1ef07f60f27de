/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/describe.h"
#include "internal/structure.h"
#include "internal/text.h"

size_t freeair_function_count(void)
{
  return freeair__n_functions;
}

const freeair_function *freeair_function_at(size_t i)
{
  return i < freeair__n_functions ? &freeair__functions[i] : NULL;
}

const freeair_function *freeair_function_find(const char *name)
{
  if (name == NULL) return NULL;
  size_t lo = 0;
  size_t hi = freeair__n_functions;
  while (lo < hi) {
    size_t middle = lo + (hi - lo) / 2;
    const freeair_function *f = &freeair__functions[freeair__functions_by_name[middle]];
    int order = freeair__compare(name, f->name);
    if (order == 0) return f;
    if (order < 0)
      hi = middle;
    else
      lo = middle + 1;
  }
  return NULL;
}

const char *freeair_function_name(const freeair_function *f)
{
  return f != NULL ? f->name : "";
}

const char *freeair_function_topic(const freeair_function *f)
{
  return f != NULL ? f->topic : "";
}

const char *freeair_function_brief(const freeair_function *f)
{
  return f != NULL ? f->brief : "";
}

const char *freeair_function_model(const freeair_function *f)
{
  return f != NULL ? f->model : "";
}

const char *freeair_function_source(const freeair_function *f)
{
  return f != NULL ? f->source : "";
}

uint32_t freeair_function_cautions(const freeair_function *f)
{
  return f != NULL ? f->cautions : 0;
}

size_t freeair_function_parameter_count(const freeair_function *f)
{
  return f != NULL ? f->n_parameters : 0;
}

const freeair_parameter *freeair_function_parameter(const freeair_function *f, size_t i)
{
  return f != NULL && i < f->n_parameters ? &f->parameters[i] : NULL;
}

int32_t freeair_function_status_at(const freeair_function *f, size_t i)
{
  return f != NULL && i < f->n_statuses ? f->statuses[i] : 1000;
}

/* Fields 0 and 1 are struct_size and flags: the library's business. */
static const size_t first_field = 2;

static size_t leaves(const freeair_parameter *p)
{
  return p->structure != NULL ? p->structure->n_fields - first_field : 1;
}

static size_t count_leaves(const freeair_function *f, uint32_t output)
{
  size_t n = 0;
  if (f == NULL) return 0;
  for (size_t i = 0; i < f->n_parameters; i++)
    if ((f->parameters[i].flags & FREEAIR_PARAMETER_OUTPUT) == output) n += leaves(&f->parameters[i]);
  return n;
}

static const freeair_parameter *leaf(const freeair_function *f, uint32_t output, size_t i,
                                     const freeair_parameter **parent)
{
  *parent = NULL;
  if (f == NULL) return NULL;
  for (size_t k = 0; k < f->n_parameters; k++) {
    const freeair_parameter *p = &f->parameters[k];
    if ((p->flags & FREEAIR_PARAMETER_OUTPUT) != output) continue;
    size_t n = leaves(p);
    if (i >= n) {
      i -= n;
      continue;
    }
    if (p->structure == NULL) return p;
    *parent = p;
    return &p->structure->fields[first_field + i];
  }
  return NULL;
}

size_t freeair_function_input_count(const freeair_function *f)
{
  return count_leaves(f, 0);
}

size_t freeair_function_output_count(const freeair_function *f)
{
  return count_leaves(f, FREEAIR_PARAMETER_OUTPUT);
}

const freeair_parameter *freeair_function_input(const freeair_function *f, size_t i)
{
  const freeair_parameter *parent;
  return leaf(f, 0, i, &parent);
}

const freeair_parameter *freeair_function_output(const freeair_function *f, size_t i)
{
  const freeair_parameter *parent;
  return leaf(f, FREEAIR_PARAMETER_OUTPUT, i, &parent);
}

const freeair_parameter *freeair_function_input_parent(const freeair_function *f, size_t i)
{
  const freeair_parameter *parent;
  leaf(f, 0, i, &parent);
  return parent;
}

typedef union slot {
  double d;
  int32_t i;
  uint32_t u;
  size_t z;
} slot;

/* Stores x as the parameter's type; 0 where x is not a value of that type. */
static int store(const freeair_parameter *p, double x, void *at)
{
  if (p->type == FREEAIR_TYPE_DOUBLE) {
    memcpy(at, &x, sizeof x);
    return 1;
  }
  const double most = p->type == FREEAIR_TYPE_INT32 ? 2147483647.0 : 4294967295.0;
  const double least = p->type == FREEAIR_TYPE_INT32 ? -2147483648.0 : 0.0;
  if (!freeair__closed(x, least, most) || floor(x) != x) return 0;
  slot s;
  if (p->type == FREEAIR_TYPE_INT32)
    s.i = (int32_t)x;
  else if (p->type == FREEAIR_TYPE_UINT32)
    s.u = (uint32_t)x;
  else
    s.z = (size_t)x;
  memcpy(at, &s, p->size);
  return 1;
}

static double load(const freeair_parameter *p, const void *at)
{
  slot s;
  memcpy(&s, at, p->size);
  if (p->type == FREEAIR_TYPE_DOUBLE) return s.d;
  if (p->type == FREEAIR_TYPE_INT32) return s.i;
  if (p->type == FREEAIR_TYPE_UINT32) return s.u;
  return (double)s.z;
}

static int callable(const freeair_function *f)
{
  size_t structures = 0;
  if (f->n_parameters > FREEAIR__MAX_PARAMETERS) return 0;
  for (size_t i = 0; i < f->n_parameters; i++) {
    const freeair_parameter *p = &f->parameters[i];
    if ((p->flags & FREEAIR_PARAMETER_ARRAY) || p->type == FREEAIR_TYPE_TEXT) return 0;
    if (p->structure != NULL &&
        (++structures > FREEAIR__MAX_STRUCTURES || p->structure->size > FREEAIR__MAX_STRUCTURE_BYTES))
      return 0;
  }
  return 1;
}

int32_t freeair_function_call(const freeair_function *f, const double *in, size_t n_in, double *out, size_t n_out)
{
  if (out != NULL)
    for (size_t i = 0; i < n_out; i++) out[i] = NAN;
  if (f == NULL || (in == NULL && n_in > 0) || (out == NULL && n_out > 0)) return FREEAIR_ERR_NULL;
  if (!callable(f)) return FREEAIR_ERR_UNSUPPORTED;
  if (n_in != freeair_function_input_count(f) || n_out != freeair_function_output_count(f)) return FREEAIR_ERR_DATA;

  slot scalars[FREEAIR__MAX_PARAMETERS];
  double structures[FREEAIR__MAX_STRUCTURES][FREEAIR__MAX_STRUCTURE_BYTES / sizeof(double)];
  char *args[FREEAIR__MAX_PARAMETERS];
  const ptrdiff_t steps[FREEAIR__MAX_PARAMETERS] = {0};
  size_t n_structures = 0;
  size_t next = 0;

  for (size_t i = 0; i < f->n_parameters; i++) {
    const freeair_parameter *p = &f->parameters[i];
    const int output = (p->flags & FREEAIR_PARAMETER_OUTPUT) != 0;
    if (p->structure == NULL) {
      args[i] = (char *)&scalars[i];
      if (!output && !store(p, in[next++], &scalars[i])) return FREEAIR_ERR_DOMAIN;
      continue;
    }
    const freeair_structure *s = p->structure;
    args[i] = (char *)structures[n_structures++];
    int32_t status = freeair__structure_init(args[i], s->size, s->initial, s->size, s->baseline);
    if (status < 0) return status;
    for (size_t k = first_field; !output && k < s->n_fields; k++, next++) {
      const freeair_parameter *field = &s->fields[k];
      if (isnan(in[next]) && !(field->flags & FREEAIR_PARAMETER_OPTIONAL)) continue;
      if (!store(field, in[next], args[i] + field->offset)) return FREEAIR_ERR_DOMAIN;
    }
  }

  int32_t status = FREEAIR_ERR_UNSUPPORTED;
  freeair_map(f, 1, args, steps, &status);
  if (status < 0) return status;

  next = 0;
  for (size_t i = 0; i < f->n_parameters; i++) {
    const freeair_parameter *p = &f->parameters[i];
    if (!(p->flags & FREEAIR_PARAMETER_OUTPUT)) continue;
    if (p->structure == NULL) {
      out[next++] = load(p, args[i]);
      continue;
    }
    for (size_t k = first_field; k < p->structure->n_fields; k++)
      out[next++] = load(&p->structure->fields[k], args[i] + p->structure->fields[k].offset);
  }
  return status;
}

size_t freeair_map(const freeair_function *f, size_t n, char **args, const ptrdiff_t *steps, int32_t *status)
{
  if (f == NULL || args == NULL || steps == NULL) {
    for (size_t i = 0; status != NULL && i < n; i++) status[i] = FREEAIR_ERR_NULL;
    return n;
  }
  size_t errors = 0;
  f->loop(n, args, steps, status, &errors);
  return errors;
}
