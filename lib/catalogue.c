/* SPDX-License-Identifier: MIT */
#include <freeair/catalogue.h>

#include "internal/describe.h"
#include "internal/structure.h"
#include "internal/text.h"

size_t freeair_structure_count(void)
{
  return freeair__n_structures;
}

const freeair_structure *freeair_structure_at(size_t i)
{
  return i < freeair__n_structures ? freeair__structures[i] : NULL;
}

const char *freeair_structure_name(const freeair_structure *s)
{
  return s != NULL ? s->name : "";
}

size_t freeair_structure_size(const freeair_structure *s)
{
  return s != NULL ? s->size : 0;
}

size_t freeair_structure_field_count(const freeair_structure *s)
{
  return s != NULL ? s->n_fields : 0;
}

const freeair_parameter *freeair_structure_field(const freeair_structure *s, size_t i)
{
  return s != NULL && i < s->n_fields ? &s->fields[i] : NULL;
}

int32_t freeair_structure_init(const freeair_structure *s, void *instance, size_t caller_size)
{
  if (s == NULL) return FREEAIR_ERR_NULL;
  return freeair__structure_init(instance, caller_size, s->initial, s->size, s->baseline);
}

size_t freeair_constant_count(void)
{
  return freeair__n_constants;
}

const char *freeair_constant_name(size_t i)
{
  return i < freeair__n_constants ? freeair__constants[i].name : "";
}

const char *freeair_constant_enumeration(size_t i)
{
  return i < freeair__n_constants ? freeair__constants[i].enumeration : "";
}

const char *freeair_constant_brief(size_t i)
{
  return i < freeair__n_constants ? freeair__constants[i].brief : "";
}

int32_t freeair_constant_value(size_t i)
{
  return i < freeair__n_constants ? freeair__constants[i].value : 0;
}

size_t freeair_constant_find(const char *name)
{
  if (name == NULL) return freeair__n_constants;
  size_t lo = 0;
  size_t hi = freeair__n_constants;
  while (lo < hi) {
    size_t middle = lo + (hi - lo) / 2;
    size_t i = freeair__constants_by_name[middle];
    int order = freeair__compare(name, freeair__constants[i].name);
    if (order == 0) return i;
    if (order < 0)
      hi = middle;
    else
      lo = middle + 1;
  }
  return freeair__n_constants;
}
