/* SPDX-License-Identifier: MIT */
/* What a meter's data sheet says about a reading, as a standard uncertainty:
 * the limits of error are taken as a rectangular distribution (JCGM 100:2008,
 * 4.3.7), whose standard deviation is half its width over the root of three. */
#ifndef FREEAIR_INTERNAL_METER_H
#define FREEAIR_INTERNAL_METER_H

static inline double freeair__meter_uncertainty(double reading, double accuracy, double counts, double resolution)
{
  return (accuracy * reading + counts * resolution) / 1.7320508075688772935;
}

#endif
