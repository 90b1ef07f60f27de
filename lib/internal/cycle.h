/* SPDX-License-Identifier: MIT */
/* The crank-angle model: volumes joined by orifices and valves, integrated over
 * revolutions until they repeat. Volumes hold mass and internal energy; their
 * order is cylinders first, then inlet plenum, intercooler (two stages) and
 * delivery line. Boundaries follow: ambient, crankcase, receiver. */
#ifndef FREEAIR_INTERNAL_CYCLE_H
#define FREEAIR_INTERNAL_CYCLE_H

#include <freeair/cycle.h>
#include <freeair/machine.h>

#include "internal/cycle_gas.h"

enum {
  FREEAIR__CYLINDERS = 8,
  FREEAIR__VOLUMES = FREEAIR__CYLINDERS + 3,
  FREEAIR__NODES = FREEAIR__VOLUMES + 3,
  FREEAIR__STATES = 2 * FREEAIR__VOLUMES,
  FREEAIR__LINKS = 3 * FREEAIR__CYLINDERS + 8,
  FREEAIR__NOZZLE_TERMS = 13,
  FREEAIR__STEPS = 2048
};

/* Below this relative pressure difference the orifice law is continued by a
 * quadratic with equal value and slope. */
#define FREEAIR__SMOOTH_BELOW 1e-3

enum freeair__law { FREEAIR__ORIFICE, FREEAIR__VALVE, FREEAIR__RELIEF };

/* A flow path from node a to node b; positive flow is from a to b. */
typedef struct freeair__link {
  int a;
  int b;
  int law;
  double area;    /* fully open */
  double leak;    /* never less than this */
  double lift;    /* 1/pressure difference of full opening; relief: 1/(0.1 set) */
  double set;     /* relief: pressure of first opening */
  double series;  /* 1/area^2 of a resistance in series */
} freeair__link;

typedef struct freeair__cylinder {
  double area;       /* piston */
  double radius;     /* crank radius */
  double clearance;  /* volume */
  double lag_cos;
  double lag_sin;
  double bore;
  double wall_ua;
  double lag;
  double swept;
  int suction;       /* link */
  int discharge;     /* link */
  int ring;          /* link */
  int gasket;        /* link or -1 */
  int stage;
} freeair__cylinder;

typedef struct freeair__cycle {
  freeair_machine m;
  freeair_machine_site site;
  double receiver_p;
  double receiver_t;
  double gas_r;
  double k;
  double cv; /* constant ones, also the scale of others */
  double cp;
  freeair__gas gas;
  int n_cylinders;
  int n_volumes;
  int n_links;
  int plenum;
  int intercooler; /* -1 for a single stage */
  int line;
  int link_filter;
  int link_check;
  int link_unloader;
  int link_relief;   /* -1 for a single stage */
  int link_leak;     /* -1 for a single stage */
  int link_breach;   /* -1 when there is no second cylinder */
  freeair__cylinder cylinder[FREEAIR__CYLINDERS];
  freeair__link link[FREEAIR__LINKS];
  double volume[FREEAIR__VOLUMES];  /* of plenum, intercooler, line */
  double ua[FREEAIR__VOLUMES];      /* of intercooler and line to ambient */
  double node_p[FREEAIR__NODES];    /* boundaries */
  double node_t[FREEAIR__NODES];
  double node_h[FREEAIR__NODES];
  double nozzle[FREEAIR__NOZZLE_TERMS];
  double nozzle_critical;           /* 1 - critical pressure ratio */
  double nozzle_choked;
  double nozzle_linear;
  double nozzle_quadratic;
  double mass_scale;                /* displacement of a revolution as ambient air */
} freeair__cycle;

/* A periodic state, or a guess of one. */
typedef struct freeair__cycle_state {
  double y[FREEAIR__STATES];
  double wall[FREEAIR__CYLINDERS];
  double omega;
  int known; /* 0: make a guess */
} freeair__cycle_state;

/* Integrals over one revolution. */
typedef struct freeair__cycle_sums {
  double mass[FREEAIR__LINKS];
  double enthalpy[FREEAIR__LINKS];
  double heat[FREEAIR__VOLUMES];      /* out of the gas */
  double work[FREEAIR__CYLINDERS];    /* by the gas */
  double heat_slope[FREEAIR__CYLINDERS];
  double pressure[FREEAIR__VOLUMES];  /* time integrals */
  double temperature[FREEAIR__VOLUMES];
  double lowest[FREEAIR__VOLUMES];
  double highest[FREEAIR__VOLUMES];
  double forward_mass[FREEAIR__LINKS];     /* flow from a to b alone */
  double forward_enthalpy[FREEAIR__LINKS];
  double mass_error;
  double energy_error;
} freeair__cycle_sums;

/* Where to leave an indicator card of one volume: n points at equal angles. */
typedef struct freeair__cycle_card {
  int volume;
  size_t n;
  double *p;
  double *v;
  double *t;
} freeair__cycle_card;

/* The steps of a revolution, as fractions of the period, with the error of each
 * over the tolerance. n = 0: none known. */
typedef struct freeair__cycle_mesh {
  int n;
  float h[FREEAIR__STEPS];
  float error[FREEAIR__STEPS];
} freeair__cycle_mesh;

/* How the state at the end of a revolution, and the heat to the walls, answer
 * to the state at its start (columns first) and to the walls (columns after). */
enum { FREEAIR__COLUMNS = FREEAIR__STATES + FREEAIR__CYLINDERS };
typedef struct freeair__cycle_tangent {
  double state[FREEAIR__STATES][FREEAIR__COLUMNS];
  double heat[FREEAIR__CYLINDERS][FREEAIR__COLUMNS];
} freeair__cycle_tangent;

/* What one solution can leave to the next of a similar machine. */
typedef struct freeair__cycle_work {
  freeair__cycle_mesh mesh;
  double tolerance; /* of the mesh */
  int factored; /* whether the following is known */
  int order[FREEAIR__COLUMNS];
  double lu[FREEAIR__COLUMNS][FREEAIR__COLUMNS]; /* of identity minus the map's derivative */
} freeair__cycle_work;

/* A solution to begin from. */
typedef struct freeair__cycle_start {
  freeair__cycle_state state;
  freeair__cycle_work work;
} freeair__cycle_start;

typedef struct freeair__cycle_effort {
  int32_t revolutions;
  int32_t steps;
  int32_t evaluations;
  int32_t rejected;
  double residual;
} freeair__cycle_effort;

/* Rates at one instant, with their exact derivatives where asked for. */
typedef struct freeair__cycle_rates {
  double f[FREEAIR__STATES];
  double mass[FREEAIR__LINKS];
  double enthalpy[FREEAIR__LINKS];
  double heat[FREEAIR__VOLUMES];
  double work[FREEAIR__CYLINDERS];
  double p[FREEAIR__NODES];
  double t[FREEAIR__NODES];
  double h[FREEAIR__NODES];
  double over_cv[FREEAIR__VOLUMES]; /* gas constant over cv */
  double bend[FREEAIR__VOLUMES];    /* u over cv T: 1 when the heat capacity is constant */
} freeair__cycle_rates;

typedef struct freeair__cycle_slopes {
  double j[FREEAIR__STATES * FREEAIR__STATES]; /* by columns of 2 n_volumes */
  double ft[FREEAIR__STATES];
  double mass[FREEAIR__LINKS][5];              /* by m_a, u_a, m_b, u_b, time */
  double enthalpy[FREEAIR__LINKS][5];
  double heat[FREEAIR__VOLUMES][3];            /* by m, u, time */
  double work[FREEAIR__CYLINDERS][3];
  double heat_slope[FREEAIR__CYLINDERS];       /* by wall temperature, negative */
} freeair__cycle_slopes;

void freeair__cycle_build(freeair__cycle *c, const freeair_machine *m, const freeair_machine_site *site,
                          double receiver_p, double receiver_t);
void freeair__cycle_receiver(freeair__cycle *c, double receiver_p, double receiver_t);

/* Volume of a cylinder at shaft angle a, with its first two derivatives by angle. */
void freeair__cycle_cylinder_volume(const freeair__cycle *c, int i, double sin_a, double cos_a, double *v,
                                    double *dv, double *ddv);

/* Returns 0 when the state is not physical. */
int freeair__cycle_rates_at(const freeair__cycle *c, const freeair__cycle_state *s, double time, const double *y,
                            freeair__cycle_rates *r);
int freeair__cycle_slopes_at(const freeair__cycle *c, const freeair__cycle_state *s, double time,
                             const double *y, freeair__cycle_rates *r, freeair__cycle_slopes *d);

/* Finds the periodic state at the receiver pressure of c. accuracy is that of
 * the delivery relative to displacement. work holds nothing (all zero) or what
 * an earlier call left. */
int32_t freeair__cycle_solve(const freeair__cycle *c, double accuracy, freeair__cycle_state *s,
                             freeair__cycle_work *work, freeair__cycle_sums *sums, freeair__cycle_effort *effort);

/* One revolution from the state, integrated to a tolerance on the steps of
 * mesh, which it splits where they err too much; without steps, it finds its
 * own. The steps taken are left in mesh. y receives the state at the end. */
int freeair__cycle_revolution(const freeair__cycle *c, const freeair__cycle_state *s, double tolerance,
                              freeair__cycle_mesh *mesh, double *y, freeair__cycle_sums *sums, int full,
                              const freeair__cycle_card *card, freeair__cycle_tangent *tangent,
                              freeair__cycle_effort *effort);

/* Mass and energy of a volume at a pressure and a temperature. */
void freeair__cycle_fill(const freeair__cycle *c, double p, double volume, double t, double *y);

/* Enthalpy delivered in a revolution, as a gas of constant heat capacity would
 * carry at the same temperature: the receiver keeps to one. */
double freeair__cycle_delivered(const freeair__cycle *c, const freeair__cycle_sums *sums);

/* Spreads the error evenly over new steps for another tolerance. */
void freeair__cycle_remesh(freeair__cycle_mesh *mesh, double tolerance_ratio);

/* Fills the public result; its integers and sizes included. */
void freeair__cycle_report(const freeair__cycle *c, const freeair__cycle_state *s, const freeair__cycle_sums *q,
                           const freeair__cycle_effort *effort, freeair_cycle_result *r);

/* Friction power of a cylinder, and shaft power of the pump, at a shaft speed in rad/s. */
double freeair__cycle_friction(const freeair__cycle *c, int cylinder, double omega);
double freeair__cycle_shaft(const freeair__cycle *c, const freeair__cycle_sums *sums, double omega);

/* Motor speed over synchronous speed at a shaft power of the pump. */
double freeair__cycle_motor(const freeair__cycle *c, double shaft_w);

#endif
