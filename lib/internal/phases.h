/* SPDX-License-Identifier: MIT */
/* Circuits of one phase (out and back on two wires) and of three. */
#ifndef FREEAIR_INTERNAL_PHASES_H
#define FREEAIR_INTERNAL_PHASES_H

#include <math.h>
#include <stdint.h>

static inline int freeair__phases_valid(int32_t phases)
{
  return phases == 1 || phases == 3;
}

/* Apparent power is this times line voltage times line current. */
static inline double freeair__phases_power(int32_t phases)
{
  return phases == 1 ? 1.0 : 1.7320508075688772935;
}

/* Line voltage lost is this times line current times the impedance of one wire. */
static inline double freeair__phases_run(int32_t phases)
{
  return phases == 1 ? 2.0 : 1.7320508075688772935;
}

/* Sine of the angle whose cosine is the power factor, exact near one. */
static inline double freeair__phases_sine(double power_factor)
{
  return sqrt((1.0 - power_factor) * (1.0 + power_factor));
}

#endif
