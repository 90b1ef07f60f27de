/* SPDX-License-Identifier: MIT */
/* Text without the C library: the core calls mathematics and memory functions alone. */
#ifndef FREEAIR_INTERNAL_TEXT_H
#define FREEAIR_INTERNAL_TEXT_H

/* The order of two texts by their bytes, as strcmp. */
static inline int freeair__compare(const char *a, const char *b)
{
  while (*a != '\0' && *a == *b) {
    a++;
    b++;
  }
  return (unsigned char)*a - (unsigned char)*b;
}

#endif
