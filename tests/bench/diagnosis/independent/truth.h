/* SPDX-License-Identifier: MIT */
/* What is true of the machine of a visit, and nobody knows. */
#ifndef FREEAIR_INDEPENDENT_TRUTH_H
#define FREEAIR_INDEPENDENT_TRUTH_H

#include "../visit.h"
#include "dice.h"
#include "receiver.h"

typedef struct truth {
  freeair_machine m;
  freeair_machine_site site;
  laws by;
  double belt_slip;       /* at cut-out */
  double belt_load_share; /* of it that grows with the receiver's gauge pressure */
  double gauge_bias_pa;   /* of the machine's gauge, on which pressures are read, at cut-out */
  double gauge_span;      /* and its error in proportion to what it shows */
} truth;

double truth_displacement_m3_s(const freeair_machine *m);

/* Receiver pressure at a share of the way from ambient to cut-out. */
double truth_pressure_pa(const truth *t, double share);

/* The pump at a receiver pressure, with the belt as it slips there; 0 when it fails. */
int truth_point(const truth *t, double receiver_pa, pump_result *r);

/* From ambient pressure to a little above cut-out; 0 when it fails. */
int truth_map(const truth *t, pump_map *map);

/* Delivery less what leaks and is used; the receiver's air is cool. */
double truth_net_m3_s(const truth *t, const pump_result *r, double receiver_pa);

/* A make: a design, its laws, and a nameplate that rounds and rates. 0 when it cannot run. */
int truth_make(dice *d, int family, truth *t, freeair_machine *nameplate);

/* A unit of the make and the place where it stands, as it is and as the technician
 * knows it. */
void truth_place(dice *d, truth *t, freeair_machine *nameplate, freeair_machine_site *known);

/* A class of fault that this family can have, other than one. */
int truth_pick_fault(dice *d, int family, int but);

/* Breaks a machine, by a share of the range of sizes that is met. */
void truth_break(dice *d, truth *t, int which, double size);

#endif
