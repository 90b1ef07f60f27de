/* SPDX-License-Identifier: MIT */
/* How often faults are met, and how they break a machine. Sizes are geometric over a
 * range from the smallest that anyone would notice. */
#include "truth.h"

#include <math.h>

static const double pi = 3.14159265358979323846;

static const double shares[N_CLASSES] = {0.22,  0.06, 0.14, 0.05, 0.035, 0.04, 0.035, 0.05,
                                         0.035, 0.05, 0.12, 0.05, 0.02,  0.07, 0.035};

static int can_have(int family, int which)
{
  switch (which) {
    case CLASS_HP_SUCTION:
    case CLASS_HP_DISCHARGE:
    case CLASS_INTERSTAGE_LEAK:
    case CLASS_RELIEF: return family != 2;
    case CLASS_GASKET: return family != 0;
    default: return 1;
  }
}

int truth_pick_fault(dice *d, int family, int but)
{
  double total = 0.0;
  for (int i = 1; i < N_CLASSES; i++)
    if (i != but && can_have(family, i)) total += shares[i];
  double at = dice_uniform(d, 0.0, total);
  for (int i = 1; i < N_CLASSES; i++) {
    if (i == but || !can_have(family, i)) continue;
    at -= shares[i];
    if (at <= 0.0) return i;
  }
  return CLASS_FILTER;
}

static double from_least(double least, double ratio, double size)
{
  return least * pow(ratio, size);
}

/* A broken or fouled valve leaks, and what still works of it opens less. */
static void break_valve(dice *d, double *area_m2, double *leak_m2, double least, double ratio, double size)
{
  *area_m2 *= dice_uniform(d, 0.8, 1.0);
  *leak_m2 = *area_m2 * from_least(least, ratio, size);
}

static void break_lp_valve(dice *d, freeair_machine *m, double *area_m2, double *leak_m2, double size)
{
  break_valve(d, area_m2, leak_m2, 0.006, 60.0, size);
  if (m->lp_cylinders > 1) m->lp_leaking_cylinders = dice_chance(d, 0.9) ? 1 : 2;
}

static void wear_rings(dice *d, freeair_machine *m, double size)
{
  double lp_piston_m2 = pi / 4.0 * m->lp_bore_m * m->lp_bore_m;
  double hp_piston_m2 = pi / 4.0 * m->hp_bore_m * m->hp_bore_m;
  m->lp_ring_area_m2 += lp_piston_m2 * from_least(1e-4, 30.0, size) * dice_uniform(d, 0.5, 1.3);
  if (m->stages == 2) m->hp_ring_area_m2 += hp_piston_m2 * from_least(1e-4, 30.0, size) * dice_uniform(d, 0.3, 1.5);
}

static void breach_gasket(freeair_machine *m, double size)
{
  double bore_m = m->stages == 2 ? m->hp_bore_m : m->lp_bore_m;
  m->gasket_breach_m2 = pi / 4.0 * bore_m * bore_m * from_least(5e-4, 16.0, size);
}

/* The opening that passes a share of the displacement at cut-out: choked, a square
 * metre passes some 200 m/s of free air for each atmosphere upstream. */
static double opening_for(const freeair_machine *m, double share)
{
  return truth_displacement_m3_s(m) * share * 1e5 / (200.0 * m->cut_out_pa);
}

static void use_or_leak(dice *d, freeair_machine *m, double size)
{
  if (dice_chance(d, 0.7)) m->downstream_leak_m2 = opening_for(m, from_least(0.07, 8.0, size));
  else m->demand_m3_s = truth_displacement_m3_s(m) * from_least(0.07, 7.0, size);
}

static void weaken_relief(dice *d, truth *t)
{
  double pa = t->site.barometric_pa;
  t->m.relief_set_pa = pa + (t->m.relief_set_pa - pa) * dice_uniform(d, 0.15, 0.75);
  if (dice_chance(d, 0.5)) t->m.relief_area_m2 *= dice_uniform(d, 0.3, 1.0);
}

/* Low voltage, a motor of another speed, or one that has lost torque. */
static void weaken_motor(dice *d, truth *t, double size)
{
  if (dice_chance(d, 0.45)) t->site.supply_v *= 1.0 - (0.08 + 0.17 * size);
  else if (dice_chance(d, 0.5)) t->m.motor_synchronous_rev_s *= 1.0 - (0.04 + 0.12 * size);
  else t->m.motor_torque_factor *= 1.0 - (0.3 + 0.35 * size);
}

void truth_break(dice *d, truth *t, int which, double size)
{
  freeair_machine *m = &t->m;
  switch (which) {
    case CLASS_FILTER: m->filter_area_m2 *= from_least(0.35, 0.1, size); break;
    case CLASS_LP_SUCTION: break_lp_valve(d, m, &m->lp_suction_area_m2, &m->lp_suction_leak_m2, size); break;
    case CLASS_LP_DISCHARGE: break_lp_valve(d, m, &m->lp_discharge_area_m2, &m->lp_discharge_leak_m2, size); break;
    case CLASS_HP_SUCTION:
      break_valve(d, &m->hp_suction_area_m2, &m->hp_suction_leak_m2, 0.004, 50.0, size);
      break;
    case CLASS_HP_DISCHARGE:
      break_valve(d, &m->hp_discharge_area_m2, &m->hp_discharge_leak_m2, 0.004, 50.0, size);
      break;
    case CLASS_GASKET: breach_gasket(m, size); break;
    case CLASS_RINGS: wear_rings(d, m, size); break;
    case CLASS_INTERSTAGE_LEAK: m->intercooler_leak_m2 = m->lp_discharge_area_m2 * from_least(0.005, 14.0, size); break;
    case CLASS_CHECK_VALVE: m->check_valve_leak_m2 = m->check_valve_area_m2 * from_least(8e-4, 30.0, size); break;
    case CLASS_DOWNSTREAM: use_or_leak(d, m, size); break;
    case CLASS_UNLOADER: m->unloader_leak_m2 = opening_for(m, from_least(0.06, 9.0, size)); break;
    case CLASS_RELIEF: weaken_relief(d, t); break;
    case CLASS_BELT:
      t->belt_slip += from_least(0.035, 9.0, size);
      t->belt_load_share = dice_uniform(d, 0.0, 0.8);
      break;
    case CLASS_MOTOR: weaken_motor(d, t, size); break;
    default: break;
  }
}
