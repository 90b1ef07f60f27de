/* SPDX-License-Identifier: MIT */
/* What the topics of flow in pipes share. */
#ifndef FREEAIR_INTERNAL_PIPE_H
#define FREEAIR_INTERNAL_PIPE_H

#include <math.h>
#include <stdint.h>

/* Friction factor, continuous through the transition; Re > 0. */
double freeair__pipe_factor(double reynolds, double roughness);

static inline int freeair__pipe_in_transition(double reynolds)
{
  return reynolds > 2300.0 && reynolds < 4000.0;
}

/* Mass flux m/A. */
static inline double freeair__pipe_flux(double mass, double diameter)
{
  return mass / (0.78539816339744830962 * diameter * diameter);
}

#endif
