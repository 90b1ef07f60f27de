/* SPDX-License-Identifier: MIT */
#include "quantity.h"

#include <freeair/freeair.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int quantity_is_difference(const char *name)
{
  static const char *const words[] = {"difference", "rise", "drop", "uncertainty", "approach", "tolerance"};
  for (size_t i = 0; i < sizeof words / sizeof words[0]; i++)
    if (strstr(name, words[i]) != NULL) return 1;
  return strncmp(name, "u_", 2) == 0 || strstr(name, "_u_") != NULL;
}

/* "1/2", "14 1/2", "-3.5e2": returns what follows the number, or null. */
static const char *read_number(const char *text, double *number)
{
  char *end;
  *number = strtod(text, &end);
  if (end == text) return NULL;
  char *more;
  if (*end == '/') {
    double below = strtod(end + 1, &more);
    if (more == end + 1 || !(below > 0.0)) return NULL;
    *number /= below;
    return more;
  }
  const char *next = end + strspn(end, " -");
  double above = strtod(next, &more);
  if (next > end && more > next && *more == '/') {
    char *last;
    double below = strtod(more + 1, &last);
    if (last == more + 1) return end; /* no fraction but a unit: "0.004 1/K" */
    if (!(below > 0.0)) return NULL;
    *number += *number < 0.0 ? -above / below : above / below;
    return last;
  }
  return end;
}

/* A stopwatch's "5:12" or "1:05:30", in seconds. */
static int read_clock(const char *text, double *seconds)
{
  double part[3];
  int n = 0;
  for (const char *at = text + strspn(text, " "); n < 3; at++) {
    char *end;
    if (!(*at >= '0' && *at <= '9')) return 0;
    part[n++] = strtod(at, &end);
    at = end;
    if (*at == '\0') break;
    if (*at != ':') return 0;
  }
  if (n < 2 || part[n - 1] >= 60.0 || (n == 3 && part[1] >= 60.0)) return 0;
  *seconds = n == 2 ? 60.0 * part[0] + part[1] : 3600.0 * part[0] + 60.0 * part[1] + part[2];
  return 1;
}

int quantity_read(const char *text, const quantity_context *context, double *value, char *why, size_t size)
{
  if (strcmp(context->unit, "s") == 0 && read_clock(text, value)) return 1;
  const char *rest = read_number(text + strspn(text, " "), value);
  if (rest == NULL) {
    snprintf(why, size, "'%s' does not begin with a number", text);
    return 0;
  }
  char symbol[64];
  rest += strspn(rest, " ");
  size_t length = strlen(rest);
  while (length > 0 && rest[length - 1] == ' ') length--;
  if (length >= sizeof symbol) {
    snprintf(why, size, "'%s' is no unit", rest);
    return 0;
  }
  memcpy(symbol, rest, length);
  symbol[length] = '\0';
  if (!isfinite(*value) && length > 0) {
    snprintf(why, size, "'%s' is not a finite number", text);
    return 0;
  }
  if (length == 0) return 1;
  if (strcmp(context->unit, "any") == 0) {
    snprintf(why, size, "'%s': write the number alone, in the unit of its companions", text);
    return 0;
  }
  const double number = *value;
  int32_t gauge = 0;
  int32_t status = freeair_units_is_gauge(symbol, &gauge);
  if (status == FREEAIR_OK && gauge && !context->difference) {
    double over;
    status = freeair_units_si_from(number, symbol, &over);
    if (status == FREEAIR_OK && strcmp(context->unit, "Pa") == 0) {
      if (isnan(context->barometer_pa)) {
        snprintf(why, size, "'%s' is a gauge pressure: give the barometer, or an absolute pressure", text);
        return 0;
      }
      status = freeair_units_absolute_from_gauge(over, context->barometer_pa, value);
      if (status == FREEAIR_OK) return 1;
      if (over < -context->barometer_pa)
        snprintf(why, size, "'%s' is below a perfect vacuum at a barometer of %.5g Pa", text, context->barometer_pa);
      else
        snprintf(why, size, "'%s' is no pressure of a compressed-air system", text);
      return 0;
    }
    status = FREEAIR_ERR_DIMENSION;
  } else if (status == FREEAIR_OK && context->difference) {
    status = gauge ? freeair_units_si_from(number, symbol, value)
                   : freeair_units_convert_difference(number, symbol, context->unit, value);
  } else if (status == FREEAIR_OK) {
    status = freeair_units_convert(number, symbol, context->unit, value);
  }
  if (status == FREEAIR_OK) return 1;
  if (status == FREEAIR_ERR_NOT_FOUND)
    snprintf(why, size, "'%s' is a unit that is not known", symbol);
  else if (status == FREEAIR_ERR_UNSUPPORTED)
    snprintf(why, size, "'%s' is a flow at a reference state, and which one is not said: give the flow of free air, or "
             "convert it with reference_flow_to_state", symbol);
  else if (status == FREEAIR_ERR_DIMENSION && strcmp(context->unit, "1") == 0)
    snprintf(why, size, "'%s' measures %s, but a number without a unit is wanted", text,
             freeair_units_si_symbol(symbol));
  else if (status == FREEAIR_ERR_DIMENSION)
    snprintf(why, size, "'%s' measures %s, but %s or a unit of that kind is wanted", text,
             freeair_units_si_symbol(symbol), context->unit);
  else
    snprintf(why, size, "'%s': %s", text, freeair_status_text(status));
  return 0;
}
