/* SPDX-License-Identifier: MIT */
#include "names.h"

#include <freeair/freeair.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/* Does the end of a name spell the unit, as m3_s spells m3/s? */
static int spells(const char *end, const char *unit)
{
  for (;; end++, unit++) {
    while (*end == '_') end++;
    while (*unit != '\0' && !isalnum((unsigned char)*unit)) unit++;
    if (*end == '\0' || *unit == '\0') return *end == *unit;
    if (tolower((unsigned char)*end) != tolower((unsigned char)*unit)) return 0;
  }
}

int name_fits(const char *typed, const char *full, const char *unit)
{
  const size_t n = strlen(typed);
  if (strncmp(typed, full, n) != 0) return 0;
  if (full[n] == '\0') return 2;
  return full[n] == '_' && strcmp(unit, "1") != 0 && spells(full + n, unit);
}

int constant_read(const char *enumeration, const char *text, double *value)
{
  const size_t typed = strlen(text);
  for (size_t i = 0; i < freeair_constant_count(); i++) {
    const char *name = freeair_constant_name(i);
    const size_t n = strlen(name);
    if (strcmp(freeair_constant_enumeration(i), enumeration) != 0 || typed > n) continue;
    const char *tail = name + n - typed;
    if ((tail == name || tail[-1] == '_') && strcasecmp(tail, text) == 0) {
      *value = freeair_constant_value(i);
      return 1;
    }
  }
  char *end;
  *value = strtod(text, &end);
  return end != text && *end == '\0';
}

void constant_list(const char *enumeration, char *text, size_t size)
{
  size_t used = 0;
  text[0] = '\0';
  for (size_t i = 0; i < freeair_constant_count() && used < size; i++)
    if (strcmp(freeair_constant_enumeration(i), enumeration) == 0) {
      int n = snprintf(text + used, size - used, "%s%s", used > 0 ? ", " : "",
                       freeair_constant_name(i) + strlen("FREEAIR_"));
      used += n > 0 ? (size_t)n : 0;
    }
}
