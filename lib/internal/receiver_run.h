/* SPDX-License-Identifier: MIT */
/* The receiver alone: gas mass, gas energy, wall temperature, fed by a pump whose
 * flow is known at a few receiver pressures. */
#ifndef FREEAIR_INTERNAL_RECEIVER_RUN_H
#define FREEAIR_INTERNAL_RECEIVER_RUN_H

#include "internal/cycle.h"

enum { FREEAIR__NODES_MOST = 32 };

/* What passes between line and receiver, and the power it takes. */
enum freeair__delivery_quantity {
  FREEAIR__DELIVERY_MASS,     /* net, into the receiver */
  FREEAIR__DELIVERY_BACK,     /* that part of it which goes back, positive */
  FREEAIR__DELIVERY_ENTHALPY, /* net, with a receiver at ambient temperature */
  FREEAIR__DELIVERY_POWER,
  FREEAIR__DELIVERY_QUANTITIES
};

/* These over the square root of the receiver's pressure: value and slope at each
 * node of a monotone cubic. */
typedef struct freeair__delivery_map {
  int n;
  double root_p[FREEAIR__NODES_MOST];
  double value[FREEAIR__DELIVERY_QUANTITIES][FREEAIR__NODES_MOST];
  double slope[FREEAIR__DELIVERY_QUANTITIES][FREEAIR__NODES_MOST];
} freeair__delivery_map;

typedef struct freeair__receiver {
  const freeair__cycle *c;
  const freeair__delivery_map *map; /* null when the pump stands */
  double volume;
  double leak_area;   /* to ambient */
  double demand_kg_s;
} freeair__receiver;

typedef struct freeair__receiver_state {
  double t;
  double mass;
  double energy;
  double wall;
  double delivered; /* mass */
  double work;      /* of the shaft */
} freeair__receiver_state;

/* Fills the map at n pressures from low to high; returns a status. starts and
 * points may be null: solutions at n nodes to begin from, left behind for a
 * similar machine, and the operating points at the nodes. */
int32_t freeair__delivery_map_build(freeair__cycle *c, double low_p, double high_p, int n, double accuracy,
                                    freeair__delivery_map *map, freeair__cycle_start *starts,
                                    freeair_cycle_result *points, int32_t *evaluations);
void freeair__delivery_map_at(const freeair__delivery_map *map, double p,
                              double quantity[FREEAIR__DELIVERY_QUANTITIES]);

double freeair__receiver_pressure(const freeair__receiver *r, const freeair__receiver_state *s);
void freeair__receiver_set(const freeair__receiver *r, double p, double gas_t, double wall_t,
                           freeair__receiver_state *s);

/* Steady flow through an orifice from p, t to ambient. */
double freeair__receiver_orifice(const freeair__cycle *c, double area, double p, double t);

/* Integrates until the time end_t or until the pressure end_p (infinite: never).
 * Returns 1 when end_p was reached, 0 when end_t was, -1 on failure. */
int freeair__receiver_advance(const freeair__receiver *r, double end_t, double end_p,
                              freeair__receiver_state *s);

/* Draws the receiver, soaked, down from one pressure to another at a steady rate;
 * negative on failure. */
int freeair__receiver_draw_down(const freeair__receiver *r, double from_p, double to_p, double duration,
                                freeair__receiver_state *s);

#endif
