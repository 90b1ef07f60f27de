/* SPDX-License-Identifier: MIT */
#include "reader.h"

#include "../common/names.h"
#include "../common/quantity.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int refuse(reader *r, const char *format, ...)
{
  char text[400];
  va_list list;
  va_start(list, format);
  vsnprintf(text, sizeof text, format, list);
  va_end(list);
  snprintf(r->v->message, sizeof r->v->message, "%.180s: %.190s: %.220s", r->v->path,
           r->place[0] != '\0' ? r->place : "/", text);
  return 0;
}

size_t enter(reader *r, const char *key)
{
  const size_t before = strlen(r->place);
  snprintf(r->place + before, sizeof r->place - before, "/%s", key);
  return before;
}

void leave(reader *r, size_t before)
{
  r->place[before] = '\0';
}

int read_text(reader *r, const json_t *value, char *text, size_t size)
{
  if (!json_is_string(value)) return refuse(r, "a text is wanted");
  if (json_string_length(value) >= size) return refuse(r, "the text is too long");
  strcpy(text, json_string_value(value));
  return 1;
}

int read_quantity(reader *r, const json_t *value, const char *unit, int difference, double *x)
{
  quantity_context context = {unit, r->barometer_pa, difference};
  char why[300];
  if (json_is_number(value)) {
    if (strcmp(unit, "1") != 0) return refuse(r, "write the unit with the number, as in \"12 %s\"", unit);
    *x = json_number_value(value);
    return 1;
  }
  if (!json_is_string(value)) return refuse(r, "a quantity is wanted, as in \"12 %s\"", unit);
  const char *text = json_string_value(value);
  char *end;
  strtod(text, &end);
  if (strcmp(unit, "1") != 0 && *end == '\0' && strcmp(unit, "any") != 0)
    return refuse(r, "'%s' has no unit; write one of %s or its kind", text, unit);
  if (!quantity_read(text, &context, x, why, sizeof why)) return refuse(r, "%s", why);
  if (!isfinite(*x)) return refuse(r, "'%s' is not a finite number", text);
  return 1;
}

static int in_range(const freeair_parameter *p, double x)
{
  if (isnan(p->lower)) return 1;
  const int above = p->flags & FREEAIR_PARAMETER_LOWER_CLOSED ? x >= p->lower : x > p->lower;
  const int below = p->flags & FREEAIR_PARAMETER_UPPER_CLOSED ? x <= p->upper : x < p->upper;
  return above && below;
}

int set_field(reader *r, const freeair_parameter *field, const json_t *value, char *structure)
{
  double x;
  if (field->choice[0] != '\0') {
    if (!json_is_string(value) || !constant_read(field->choice, json_string_value(value), &x)) {
      char known[300];
      constant_list(field->choice, known, sizeof known);
      return refuse(r, "one of these is wanted: %s", known);
    }
  } else if (!read_quantity(r, value, field->unit, quantity_is_difference(field->name), &x)) {
    return 0;
  }
  if (!in_range(field, x))
    return refuse(r, "%.6g %s is outside the range %s", x, strcmp(field->unit, "1") == 0 ? "" : field->unit,
                  field->range);
  if (field->type == FREEAIR_TYPE_DOUBLE)
    memcpy(structure + field->offset, &x, sizeof x);
  else if (x == floor(x))
    memcpy(structure + field->offset, &(int32_t){(int32_t)x}, sizeof(int32_t));
  else
    return refuse(r, "a whole number is wanted");
  return 1;
}

/* Names that a technician uses where the library's are another's. */
static const struct {
  const char *typed;
  const char *field;
} aliases[] = {
    {"pump_speed", "speed_rev_s"},       {"rated_pressure", "rated_pa"},   {"bore", "lp_bore_m"},
    {"stroke", "lp_stroke_m"},           {"motor_power", "motor_rated_w"}, {"motor_voltage", "motor_rated_v"},
    {"temperature", "ambient_k"},        {"barometer", "barometric_pa"},   {"voltage", "supply_v"},
    {"relief_setting", "relief_set_pa"},
};

const freeair_parameter *find_field(const freeair_structure *s, const char *typed)
{
  for (size_t i = 0; i < sizeof aliases / sizeof aliases[0]; i++)
    if (strcmp(aliases[i].typed, typed) == 0) typed = aliases[i].field;
  const freeair_parameter *best = NULL;
  int rank = 0;
  for (size_t k = 2; k < freeair_structure_field_count(s); k++) {
    const freeair_parameter *field = freeair_structure_field(s, k);
    int how = name_fits(typed, field->name, field->unit);
    if (how > rank) {
      rank = how;
      best = field;
    }
  }
  return best;
}

const freeair_structure *find_structure(const char *name)
{
  for (size_t i = 0; i < freeair_structure_count(); i++)
    if (strcmp(freeair_structure_name(freeair_structure_at(i)), name) == 0) return freeair_structure_at(i);
  return NULL;
}

int each_key(reader *r, const json_t *object, read_key *each)
{
  const char *key;
  json_t *value;
  if (!json_is_object(object)) return refuse(r, "an object in braces is wanted");
  json_object_foreach((json_t *)object, key, value)
  {
    size_t before = enter(r, key);
    if (!each(r, key, value)) return 0;
    leave(r, before);
  }
  return 1;
}
