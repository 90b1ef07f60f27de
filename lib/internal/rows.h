/* SPDX-License-Identifier: MIT */
/* Arrays of structures that the caller owns: each row says its own size, and
 * the rows lie stride bytes apart. */
#ifndef FREEAIR_INTERNAL_ROWS_H
#define FREEAIR_INTERNAL_ROWS_H

#include "internal/structure.h"

typedef struct freeair__rows {
  void *first;
  size_t stride;
  size_t capacity;
  size_t known_size;
  size_t baseline;
} freeair__rows;

/* Whether every row has a size that we know and that fits its stride. */
static inline int32_t freeair__rows_check(const freeair__rows *rows)
{
  if (rows->capacity == 0) return FREEAIR_OK;
  if (rows->first == NULL) return FREEAIR_ERR_NULL;
  if (rows->stride > 65536u || rows->capacity > 1000000u) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < rows->capacity; i++) {
    uint32_t size;
    memcpy(&size, (const unsigned char *)rows->first + i * rows->stride, sizeof size);
    if (size < rows->baseline || size > rows->stride) return FREEAIR_ERR_VERSION;
  }
  return FREEAIR_OK;
}

/* Writes row i when there is room for it. */
static inline void freeair__rows_put(const freeair__rows *rows, size_t i, const void *row)
{
  if (i < rows->capacity)
    freeair__structure_write((unsigned char *)rows->first + i * rows->stride, row, rows->known_size, rows->baseline);
}

/* Writes the same blank row everywhere. */
static inline void freeair__rows_blank(const freeair__rows *rows, const void *blank)
{
  for (size_t i = 0; i < rows->capacity; i++) freeair__rows_put(rows, i, blank);
}

#endif
