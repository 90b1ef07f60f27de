/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>

#include "internal/array.h"

static const struct {
  int32_t code;
  const char *name;
  const char *text;
} table[] = {
    {FREEAIR_OK, "FREEAIR_OK", "computed"},
    {FREEAIR_WARN_EXTRAPOLATED, "FREEAIR_WARN_EXTRAPOLATED",
     "computed, but outside the range the correlation was fitted to"},
    {FREEAIR_WARN_TRANSITION, "FREEAIR_WARN_TRANSITION",
     "computed, but between laminar and turbulent flow no formula is sure"},
    {FREEAIR_WARN_INCONSISTENT, "FREEAIR_WARN_INCONSISTENT",
     "computed, but the readings contradict one another"},
    {FREEAIR_WARN_TRUNCATED, "FREEAIR_WARN_TRUNCATED",
     "computed, but the array given was too short to hold every result"},
    {FREEAIR_WARN_LIMIT, "FREEAIR_WARN_LIMIT",
     "computed, but a recommended limit of the trade or of a standard is exceeded"},
    {FREEAIR_ERR_NULL, "FREEAIR_ERR_NULL", "a required pointer is null"},
    {FREEAIR_ERR_DOMAIN, "FREEAIR_ERR_DOMAIN",
     "an argument is not a number, infinite or outside its range"},
    {FREEAIR_ERR_NO_SOLUTION, "FREEAIR_ERR_NO_SOLUTION",
     "the arguments are in range but no state satisfies them together"},
    {FREEAIR_ERR_NO_CONVERGENCE, "FREEAIR_ERR_NO_CONVERGENCE", "an iteration reached its limit"},
    {FREEAIR_ERR_OVERFLOW, "FREEAIR_ERR_OVERFLOW", "the result is too large to represent"},
    {FREEAIR_ERR_VERSION, "FREEAIR_ERR_VERSION",
     "a structure's size is not one this library knows; was it initialised?"},
    {FREEAIR_ERR_DATA, "FREEAIR_ERR_DATA", "too few usable data points"},
    {FREEAIR_ERR_NOT_FOUND, "FREEAIR_ERR_NOT_FOUND", "no entry has this name"},
    {FREEAIR_ERR_DIMENSION, "FREEAIR_ERR_DIMENSION",
     "the unit measures another kind of quantity"},
    {FREEAIR_ERR_UNSUPPORTED, "FREEAIR_ERR_UNSUPPORTED",
     "the function cannot be called in this way"},
};

const char *freeair_status_name(int32_t status)
{
  for (size_t i = 0; i < FREEAIR__COUNT(table); i++)
    if (table[i].code == status) return table[i].name;
  return "FREEAIR_UNKNOWN";
}

const char *freeair_status_text(int32_t status)
{
  for (size_t i = 0; i < FREEAIR__COUNT(table); i++)
    if (table[i].code == status) return table[i].text;
  return "a code that this version of the library does not know";
}
