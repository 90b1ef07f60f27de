/* SPDX-License-Identifier: MIT */
/* Robust statistics without allocation: medians by passes or on small arrays,
 * and the line of Theil and Sen through the means of blocks. */
#ifndef FREEAIR_INTERNAL_ROBUST_H
#define FREEAIR_INTERNAL_ROBUST_H

#include <stddef.h>
#include <stdint.h>

/* Median of a small array, which is reordered; NaN when it is empty. */
double freeair__median(double *x, size_t n);

/* Magnitudes counted in classes an eighth of an octave wide, from 2^-64 to 2^64: a median
 * of any number of values in one pass, good to 5 %. Zero has its own class. */
#define FREEAIR__SPREAD_CLASSES 1024
typedef struct freeair__spread {
  size_t n;
  size_t n_zero;
  uint32_t count[FREEAIR__SPREAD_CLASSES];
} freeair__spread;

void freeair__spread_clear(freeair__spread *spread);
void freeair__spread_add(freeair__spread *spread, double x);
/* The value below which the given share of the magnitudes lies; 0 when empty. */
double freeair__spread_quantile(const freeair__spread *spread, double share);

/* Means of successive samples in at most FREEAIR__BLOCKS blocks: when these are
 * full, neighbours are merged two and two. Times are relative to the first. */
#define FREEAIR__BLOCKS 64
typedef struct freeair__blocks {
  double x[FREEAIR__BLOCKS];
  double y[FREEAIR__BLOCKS];
  double x0;
  size_t per_block; /* samples in a full block */
  size_t in_last;   /* samples in the last block */
  size_t n;         /* blocks */
} freeair__blocks;

void freeair__blocks_clear(freeair__blocks *blocks);
void freeair__blocks_add(freeair__blocks *blocks, double x, double y);

/* A line y = level + slope (x - centre), x relative to the first sample. */
typedef struct freeair__line {
  double slope;
  double slope_uncertainty; /* standard, allowing for residuals that hang together */
  double level;
  double centre;
  double scatter; /* robust standard deviation of the blocks about the line */
} freeair__line;

/* Theil-Sen line through blocks [from, to): the median of the slopes between
 * all pairs, the level the median of the residuals. Two blocks at least. noise
 * is the standard deviation known of one sample, at least that is assumed. */
int freeair__blocks_line(const freeair__blocks *blocks, size_t from, size_t to, double noise, freeair__line *line);

#endif
