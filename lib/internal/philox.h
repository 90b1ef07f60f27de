/* SPDX-License-Identifier: MIT */
/* Philox 4x64-10, a random number generator that is a function of a counter and
 * a key: Salmon, Moraes, Dror and Shaw, Parallel random numbers: as easy as
 * 1, 2, 3, SC11 (2011). */
#ifndef FREEAIR_INTERNAL_PHILOX_H
#define FREEAIR_INTERNAL_PHILOX_H

#include <stdint.h>

/* 64 x 64 -> 128 bits */
static inline uint64_t freeair__multiply(uint64_t a, uint64_t b, uint64_t *high)
{
  const uint64_t low_mask = 0xffffffffu;
  const uint64_t a0 = a & low_mask, a1 = a >> 32, b0 = b & low_mask, b1 = b >> 32;
  const uint64_t middle = a1 * b0 + (a0 * b0 >> 32);
  const uint64_t other = a0 * b1 + (middle & low_mask);
  *high = a1 * b1 + (middle >> 32) + (other >> 32);
  return a * b;
}

/* Two numbers in (0;1) of 53 bits for a counter of two words and a key of one. */
static inline void freeair__philox(uint64_t counter0, uint64_t counter1, uint64_t key, double *first, double *second)
{
  uint64_t c0 = counter0, c1 = counter1, c2 = 0, c3 = 0, k0 = key, k1 = 0;
  for (int round = 0; round < 10; round++) {
    uint64_t high0, high1;
    const uint64_t low0 = freeair__multiply(0xD2E7470EE14C6C93u, c0, &high0);
    const uint64_t low1 = freeair__multiply(0xCA5A826395121157u, c2, &high1);
    c0 = high1 ^ c1 ^ k0;
    c1 = low1;
    c2 = high0 ^ c3 ^ k1;
    c3 = low0;
    k0 += 0x9E3779B97F4A7C15u;
    k1 += 0xBB67AE8584CAA73Bu;
  }
  *first = ((double)(c0 >> 11) + 0.5) * 0x1p-53;
  *second = ((double)(c1 >> 11) + 0.5) * 0x1p-53;
}

#endif
