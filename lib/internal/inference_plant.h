/* SPDX-License-Identifier: MIT */
/* A machine under one fault of any size: its operating points at a few receiver
 * pressures, mapped once for each kind of fault at a few severities, and its
 * receiver, which costs nothing to run again. */
#ifndef FREEAIR_INTERNAL_INFERENCE_PLANT_H
#define FREEAIR_INTERNAL_INFERENCE_PLANT_H

#include "internal/cycle.h"

enum {
  FREEAIR__PLANT_POINTS = 4,   /* receiver pressures, evenly in the square root */
  FREEAIR__PLANT_NODES = 6,    /* severities, the sound machine included */
  FREEAIR__PLANT_TIMES = 12    /* pressures at which a run is timed, at most */
};

/* What is kept of an operating point. */
enum {
  FREEAIR__PLANT_MASS,     /* into the receiver */
  FREEAIR__PLANT_ENTHALPY, /* with it */
  FREEAIR__PLANT_POWER,    /* at the motor shaft */
  FREEAIR__PLANT_SPEED,    /* of the pump */
  FREEAIR__PLANT_PLENUM,   /* mean pressure behind the filter */
  FREEAIR__PLANT_LP_K,     /* discharge temperatures */
  FREEAIR__PLANT_HP_K,
  FREEAIR__PLANT_INTERSTAGE, /* mean pressure */
  FREEAIR__PLANT_COOLER_K,   /* mean temperature of the intercooler */
  FREEAIR__PLANT_LINE_K,
  FREEAIR__PLANT_QUANTITIES
};

/* Operating points at all pressures. */
typedef struct freeair__plant_map {
  double q[FREEAIR__PLANT_POINTS][FREEAIR__PLANT_QUANTITIES];
} freeair__plant_map;

/* A kind of fault at several severities s. abscissa is s, or s^2/(s^2 + bend),
 * in which the effect of an opening is nearly straight. */
typedef struct freeair__plant_family {
  int n;
  double abscissa[FREEAIR__PLANT_NODES];
  freeair__plant_map at[FREEAIR__PLANT_NODES];
  double bend;                       /* 0: the severity itself */
} freeair__plant_family;

/* A solution to begin the next from, and the point it is of. */
typedef struct freeair__plant_walk {
  freeair__cycle_state state;
  freeair__cycle_work work;
  int at;
} freeair__plant_walk;

typedef struct freeair__plant {
  freeair__cycle c; /* of the sound machine; its receiver is not in use */
  double root_low;
  double root_step;
  freeair__plant_map sound;
  freeair__plant_walk walk; /* of the sound machine */
} freeair__plant;

/* What differs in the system behind the pump. */
typedef struct freeair__plant_system {
  double volume;        /* of air in the receiver */
  double leak_area;     /* to ambient */
  double demand_kg_s;
  double unloader_area; /* before the check valve, while the pump runs */
  double gas_ua;        /* at ambient pressure */
  double wall_ua;
  double wall_j_k;
} freeair__plant_system;

/* Maps a machine at the pressures of the plant, from the end where the walk
 * stands; skip = 2 maps every second from the last and leaves the others to
 * freeair__plant_stretch. */
int32_t freeair__plant_map_build(const freeair__plant *plant, const freeair_machine *m,
                                 const freeair_machine_site *site, int32_t skip, freeair__plant_walk *walk,
                                 freeair__plant_map *map);

/* Fills the points that were left out, in proportion to the sound machine. */
void freeair__plant_stretch(const freeair__plant *plant, freeair__plant_map *map);

/* Prepares the plant for receiver pressures up to high_p, and maps the sound machine. */
int32_t freeair__plant_start(freeair__plant *plant, const freeair_machine *m, const freeair_machine_site *site,
                             double high_p);

/* Begins a family at the sound machine, and maps its fault at one more severity,
 * with so many cylinders of the first stage leaking; 0 for what the fault does.
 * skip as in freeair__plant_map_build. */
void freeair__plant_family_start(const freeair__plant *plant, double bend, freeair__plant_family *family);
int32_t freeair__plant_family_grow(const freeair__plant *plant, int32_t leaking, int32_t fault, double severity,
                                   int32_t skip, freeair__plant_walk *walk, freeair__plant_family *family);

/* Delivery over that of the sound machine, as a mean over the pressures. */
double freeair__plant_share(const freeair__plant *plant, const freeair__plant_map *map);

/* What so much more clearance of the second stage takes from the logarithm of
 * the flow at each point, beyond what it takes from the sound machine: the more
 * the first stage has lost, the higher the ratio over the second. */
void freeair__plant_clearance(const freeair__plant *plant, const freeair__plant_map *map, double relative,
                              float lost[FREEAIR__PLANT_POINTS]);

/* The map at a severity, and the severity of an abscissa. */
void freeair__plant_family_at(const freeair__plant_family *family, double severity, freeair__plant_map *map);
double freeair__plant_family_severity(const freeair__plant_family *family, double abscissa);

/* A quantity at a receiver pressure. */
double freeair__plant_at(const freeair__plant *plant, const freeair__plant_map *map, int quantity, double p);

void freeair__plant_system_of(const freeair__plant *plant, freeair__plant_system *s);

/* Runs the receiver from a state (gas mass and wall temperature at the first
 * pressure) through rising pressures; t receives the time at each, infinite from
 * where it levels off. The net mass taken up goes to gained. */
void freeair__plant_run(const freeair__plant *plant, const freeair__plant_map *map, const freeair__plant_system *s,
                        double mass, double wall_k, const double *p, int n, double *t, double *gained);

/* Mass flow into the receiver less what leaves it, gas at the ambient temperature. */
double freeair__plant_net(const freeair__plant *plant, const freeair__plant_map *map, const freeair__plant_system *s,
                          double p);

/* Choked or subsonic flow to ambient. */
double freeair__plant_orifice(const freeair__plant *plant, double area, double p, double t);

#endif
