/* SPDX-License-Identifier: MIT */
/* A receiver as three lumps: gas, wall, surroundings. Ideal gas with constant
 * heat capacities. Mass and energy of the gas are the states, because they close
 * the energy balance to round-off. */
#ifndef FREEAIR_INTERNAL_TANK_H
#define FREEAIR_INTERNAL_TANK_H

#include "internal/air.h"

#include <math.h>
#include <stddef.h>

typedef struct freeair__tank {
  double v_m3;         /* gas volume */
  double p_ambient_pa; /* pressure at which ua_gas_w_k holds */
  double t_ambient_k;
  double t_in_k;      /* temperature of the air that flows in */
  double ua_gas_w_k;  /* gas to wall; grows as (p / p_ambient)^(2/3) */
  double ua_wall_w_k; /* wall to surroundings */
  double c_wall_j_k;  /* heat capacity of the wall */
} freeair__tank;

typedef struct freeair__tank_state {
  double m_kg;
  double u_j;
  double t_wall_k;
} freeair__tank_state;

/* Mass flow into the tank as a function of its pressure:
 * w = w0 (1 - fall x + 4 bend x (1 - x)), x = (p - p0) / span. */
typedef struct freeair__inflow {
  double w_kg_s;
  double fall;
  double bend;
  double p0_pa;
  double span_pa;
} freeair__inflow;

double freeair__inflow_at(const freeair__inflow *inflow, double p_pa);

/* The state at a pressure and temperatures, and back. */
freeair__tank_state freeair__tank_at(const freeair__tank *tank, double p_pa, double t_k, double t_wall_k);
double freeair__tank_pressure(const freeair__tank *tank, const freeair__tank_state *state);
double freeair__tank_temperature(const freeair__tank_state *state);

/* Rate of change at mass flow w (positive in), and of the pressure. */
freeair__tank_state freeair__tank_rate(const freeair__tank *tank, const freeair__tank_state *state,
                                           double w_kg_s);
double freeair__tank_pressure_rate(const freeair__tank *tank, const freeair__tank_state *rate);

/* Steps of the fourth-order Runge-Kutta scheme for a run of this duration, so
 * that heat exchange and filling are both resolved; 0 when more than the cap of
 * 16384 would be needed. p_low_pa and p_high_pa bound the pressure. */
size_t freeair__tank_steps(const freeair__tank *tank, double p_low_pa, double p_high_pa, double duration_s);

/* One step at a mass flow that follows the pressure, or at a constant one. */
void freeair__tank_step(const freeair__tank *tank, const freeair__inflow *inflow, double h_s,
                          freeair__tank_state *state);
void freeair__tank_step_constant(const freeair__tank *tank, double w_kg_s, double h_s,
                                   freeair__tank_state *state);

/* One step while the pressure is made to fall at a constant rate by drawing
 * gas off: the mass flow follows from the energy balance. */
void freeair__tank_step_draw(const freeair__tank *tank, double rate_pa_s, double h_s,
                               freeair__tank_state *state);

#endif
