/* SPDX-License-Identifier: MIT */
/* Student's t distribution for any number of degrees of freedom from 1 to
 * infinity, in full precision in its middle and in its tails. */
#ifndef FREEAIR_INTERNAL_STUDENT_H
#define FREEAIR_INTERNAL_STUDENT_H

/* P(|t| <= factor) into *within and P(|t| > factor) into *beyond, factor >= 0. */
void freeair__student(double factor, double nu, double *within, double *beyond);

/* The factor for which P(|t| <= factor) = probability, 0 < probability < 1. */
double freeair__student_factor(double probability, double nu);

#endif
