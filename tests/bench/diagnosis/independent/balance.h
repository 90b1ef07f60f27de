/* SPDX-License-Identifier: MIT */
/* Inside of the pump: its parts, their balances, one revolution. */
#ifndef FREEAIR_INDEPENDENT_BALANCE_H
#define FREEAIR_INDEPENDENT_BALANCE_H

#include "air.h"
#include "pump.h"

enum {
  MOST_CYLINDERS = 4,
  MOST_VOLUMES = 3 + MOST_CYLINDERS,
  MOST_STATES = 2 * MOST_VOLUMES + 4 * MOST_CYLINDERS,
  NO_VOLUME = -1,
  PLENUM = 0,
  LINE = 1
};

/* Integrals over a revolution. */
enum sum {
  SUM_INTAKE_KG,
  SUM_BLOW_BACK_KG,
  SUM_LP_OUT_KG, /* forward through the discharge valves, and times its temperature */
  SUM_LP_OUT_KG_K,
  SUM_HP_OUT_KG,
  SUM_HP_OUT_KG_K,
  SUM_LP_RING_KG,
  SUM_HP_RING_KG,
  SUM_RELIEF_KG,
  SUM_UNLOADER_KG,
  SUM_DELIVERED_KG,
  SUM_RETURNED_KG,
  SUM_DELIVERED_J,
  SUM_INTERSTAGE_PA_S,
  SUM_INTERSTAGE_K_S,
  SUM_PLENUM_K_S,
  SUM_LP_WORK_J,
  SUM_HP_WORK_J,
  SUM_HEAT_J, /* one for each cylinder */
  N_SUMS = SUM_HEAT_J + MOST_CYLINDERS
};

typedef struct valve {
  double area_m2;
  double leak_m2; /* open always, either way */
  double lift_pa; /* opens it wholly */
} valve;

typedef struct cylinder {
  int hp;
  double bore_m;
  double stroke_m;
  double clearance;
  double piston_m2;
  double swept_m3;
  double lag_rad;
  valve suction;
  valve discharge;
  double ring_m2;
  double gasket_leak_m2;
  double wall_ua_w_k;
  double wall_k;
} cylinder;

/* State: mass and internal energy of each volume (plenum, line, intercooler of a
 * two-stage machine, cylinders), then lift and its rate of each cylinder's suction
 * and discharge reed. */
typedef struct pump {
  const freeair_machine *m;
  const laws *by;
  air gas;
  double ambient_pa;
  double ambient_k;
  double receiver_pa;
  double receiver_k;
  int n_lp;
  int n_hp;
  int n_cylinders;
  cylinder cylinders[MOST_CYLINDERS];
  int intercooler; /* volume, or NO_VOLUME */
  int first_cylinder;
  int n_volumes;
  int n_states;
  double lp_swept_m3;
  double swept_m3;
  double displaced_kg; /* free air in the first stage's swept volume: the measure of masses */
  double displaced_j;  /* and of energies */
  double slip;         /* of the motor */
  double rev_s;
  double interstage_min_pa; /* over the last revolution */
  double interstage_max_pa;
} pump;

double pump_volume(const pump *c, const cylinder *y, double angle_rad, double *dm3_rad);

/* Time derivatives times seconds per radian; 0 when a volume has run empty. */
int pump_rates(const pump *c, double angle_rad, const double *state, double *rates, double *sum_rates);

/* Moves the state over one revolution; 0 when that fails. */
int pump_revolve(pump *c, double *state, double *sums);

#endif
