/* SPDX-License-Identifier: MIT */
/* A reciprocating compressor over the crank angle, by other equations and another
 * method than the library's cycle: reeds with inertia, heat capacity that rises with
 * temperature, a choice of laws of wall heat, a motor with a breakdown torque; an
 * embedded explicit Runge-Kutta pair; periodicity by Anderson's mixing. */
#ifndef FREEAIR_INDEPENDENT_PUMP_H
#define FREEAIR_INDEPENDENT_PUMP_H

#include <freeair/freeair.h>

enum valve_law {
  VALVE_SMOOTH, /* opens with the pressure difference at once, along a smooth step */
  VALVE_LINEAR, /* in proportion to it */
  VALVE_REED    /* a mass on a spring that seeks the smooth step */
};

enum heat_law {
  HEAT_REYNOLDS, /* Nu = a Re^b, by the machine's heat_coefficient and heat_exponent */
  HEAT_PRESSURE  /* grows as p^0.8 T^-0.55, the form known from engines (Woschni) */
};

/* What the machine's description leaves open. */
typedef struct laws {
  int valve;
  double reed_hz;
  double reed_damping; /* share of the critical */
  int heat;
  double receiver_exponent; /* of the receiver's heat transfer over pressure */
} laws;

/* Means over a revolution. Doubles only: pump maps interpolate all of them alike. */
typedef struct pump_result {
  double delivery_kg_s;
  double delivery_m3_s; /* as free air */
  double delivery_w;    /* enthalpy that goes with it */
  double intake_kg_s;
  double inlet_backflow_kg_s;
  double interstage_mean_pa; /* NaN, as all of the second stage, in a single-stage machine */
  double interstage_min_pa;
  double interstage_max_pa;
  double intercooler_k;
  double lp_discharge_k; /* of what leaves the cylinders, weighted by flow */
  double hp_discharge_k;
  double lp_wall_k; /* first cylinder of the stage */
  double hp_wall_k;
  double motor_w;
  double motor_speed_rev_s;
  double speed_rev_s;
  double relief_kg_s;
  double unloader_kg_s;
  double lp_ring_kg_s;
  double hp_ring_kg_s;
} pump_result;

enum pump_status { PUMP_SETTLED, PUMP_UNSETTLED, PUMP_FAILED };

/* The periodic state at a receiver pressure, for a completed machine of at most four
 * cylinders; the receiver's air is at ambient temperature. An unsettled state is the
 * last of many revolutions: valves that hardly shut can keep such a machine hunting. */
int pump_point(const freeair_machine *m, const freeair_machine_site *site, const laws *by, double receiver_pa,
               pump_result *result);

#endif
