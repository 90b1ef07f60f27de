/* SPDX-License-Identifier: MIT */
/* Versioned structures. Every public structure starts with struct_size and
 * flags and grows at its tail only. A caller compiled against an older header
 * passes a smaller structure, one compiled against a newer header a larger one;
 * both work, as long as nothing is lost on the way. */
#ifndef FREEAIR_INTERNAL_STRUCTURE_H
#define FREEAIR_INTERNAL_STRUCTURE_H

#include <freeair/status.h>

#include <string.h>

/* Copies the caller's structure over the defaults in *known (of known_size
 * bytes, already initialised). Accepts a caller's size from baseline upwards;
 * bytes this library does not know must be zero. */
static inline int32_t freeair__structure_read(void *known, size_t known_size, const void *caller, size_t baseline)
{
  uint32_t size;
  memcpy(&size, caller, sizeof size);
  if (size < baseline) return FREEAIR_ERR_VERSION;
  for (size_t i = known_size; i < size; i++)
    if (((const unsigned char *)caller)[i] != 0) return FREEAIR_ERR_VERSION;
  memcpy(known, caller, size < known_size ? size : known_size);
  return FREEAIR_OK;
}

/* Copies *known into the caller's structure, at most as much as the caller has
 * room for, and leaves the caller's struct_size as it was. */
static inline int32_t freeair__structure_write(void *caller, const void *known, size_t known_size, size_t baseline)
{
  uint32_t size;
  memcpy(&size, caller, sizeof size);
  if (size < baseline) return FREEAIR_ERR_VERSION;
  size_t n = size < known_size ? size : known_size;
  memcpy((unsigned char *)caller + sizeof size, (const unsigned char *)known + sizeof size, n - sizeof size);
  return FREEAIR_OK;
}

/* The body of every freeair_<name>_init: writes at most caller_size bytes of
 * the initial value and records that size; a longer tail is zeroed. */
static inline int32_t freeair__structure_init(void *caller, size_t caller_size, const void *initial,
                                              size_t known_size, size_t baseline)
{
  if (caller == NULL) return FREEAIR_ERR_NULL;
  if (caller_size < baseline || caller_size > 65536u) return FREEAIR_ERR_VERSION;
  if (caller_size > known_size) memset((unsigned char *)caller + known_size, 0, caller_size - known_size);
  memcpy(caller, initial, caller_size < known_size ? caller_size : known_size);
  uint32_t size = (uint32_t)caller_size;
  memcpy(caller, &size, sizeof size);
  return FREEAIR_OK;
}

#endif
