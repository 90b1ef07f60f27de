/* SPDX-License-Identifier: MIT */
/* The receiver behind the pump: filling, drawing down, leaking down, with the heat
 * that its air exchanges with its wall. */
#ifndef FREEAIR_INDEPENDENT_RECEIVER_H
#define FREEAIR_INDEPENDENT_RECEIVER_H

#include "pump.h"

enum { MAP_POINTS = 12 };

/* The pump over the receiver pressure, at points evenly spaced in its root. */
typedef struct pump_map {
  double pa[MAP_POINTS];
  pump_result point[MAP_POINTS];
  double flow_kg_s[MAP_POINTS]; /* into the receiver, and the enthalpy that comes with it */
  double flow_w[MAP_POINTS];
} pump_map;

/* All results between the points, linearly. */
pump_result pump_map_at(const pump_map *map, double receiver_pa);

/* A receiver at rest. */
typedef struct receiver_start {
  double pa;
  double gas_k;
  double wall_k;
} receiver_start;

/* When the receiver reaches each of the rising pressures; infinite beyond most_s. */
void receiver_fill(const freeair_machine *m, const freeair_machine_site *site, const laws *by, const pump_map *map,
                   receiver_start from, const double *to_pa, int n, double most_s, double *s);

/* Air drawn at a constant mass flow, in so many seconds, from a receiver that has soaked
 * at ambient temperature. */
receiver_start receiver_drawn_down(const freeair_machine *m, const freeair_machine_site *site, const laws *by,
                                   double from_pa, double to_pa, double during_s);

/* Pressures at n evenly spaced times, the first of them 0, of a stopped machine. */
void receiver_leak_down(const freeair_machine *m, const freeair_machine_site *site, const laws *by,
                        receiver_start from, double during_s, int n, double *pa);

#endif
