/* SPDX-License-Identifier: MIT */
/* Densities of several readings together, and without some of them. */
#ifndef FREEAIR_INTERNAL_GAUSS_H
#define FREEAIR_INTERNAL_GAUSS_H

#include <stddef.h>

enum { FREEAIR__GAUSS_MOST = 40, FREEAIR__GAUSS_BLOCKS = 40 };

/* Readings by blocks: block b holds first[b] up to first[b + 1]. */
typedef struct freeair__gauss_blocks {
  int n;
  int first[FREEAIR__GAUSS_BLOCKS + 1];
} freeair__gauss_blocks;

/* What a distribution says of the readings. Logarithms, without the constant
 * that depends on nothing but how many there are. */
typedef struct freeair__gauss_density {
  double all;
  double square;  /* of the residuals, in standard deviations */
  double without[FREEAIR__GAUSS_BLOCKS];  /* the density of the others */
  double residual[FREEAIR__GAUSS_BLOCKS]; /* of the first of the block given the other blocks, in standard deviations */
  double shift[FREEAIR__GAUSS_BLOCKS];    /* the same in its unit */
} freeair__gauss_density;

/* Student's t of several dimensions: residuals r of covariance c (lower triangle,
 * rows of FREEAIR__GAUSS_MOST), which is overwritten, and degrees of freedom.
 * Returns 0 when the covariance is not positive. */
int freeair__gauss_student(double c[][FREEAIR__GAUSS_MOST], const double *r, int n, int freedom,
                           const freeair__gauss_blocks *blocks, freeair__gauss_density *d);

#endif
