/* SPDX-License-Identifier: MIT */
/* What faults do to the crank-angle model: properties over their severity. */
#include "../suite.h"
#include "cycle.h"
#include "random_machine.h"

#include <freeair/fault.h>

#include <check.h>

static freeair_cycle_result faulty(int32_t fault, double severity, double receiver, double accuracy)
{
  freeair_machine m = shop_unit();
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  ck_assert_int_eq(freeair_fault_apply(&m, &s, fault, severity, &m, &s), FREEAIR_OK);
  return point_of(&m, &s, receiver, accuracy);
}

/* A machine at its site, and the pressure it works against. */
typedef struct installation {
  freeair_machine machine;
  freeair_machine_site site;
  double receiver_pa;
} installation;

static installation shop_unit_at(double receiver_pa)
{
  installation at = {shop_unit(), FREEAIR_MACHINE_SITE_INIT, receiver_pa};
  return at;
}

static installation random_installation(uint64_t seed)
{
  chance c = chance_of(seed);
  installation at;
  at.machine = random_machine(&c);
  at.site = random_site(&c);
  at.receiver_pa = log_between(&c, 1.1e5, at.machine.stages == 2 ? 16e5 : 10e5);
  return at;
}

/* Delivery with a fault over the displacement of the machine. */
static double share(const installation *at, int32_t fault, double severity)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  double displacement;
  ck_assert_int_eq(freeair_machine_displacement(&at->machine, &displacement), FREEAIR_OK);
  ck_assert_int_eq(freeair_fault_apply(&at->machine, &at->site, fault, severity, &m, &s), FREEAIR_OK);
  return point_of(&m, &s, at->receiver_pa, 1e-5).delivery_m3_s / displacement;
}

/* Faults that cost delivery from the first to the last bit of severity. */
static const int32_t always_costly[] = {
    FREEAIR_FAULT_INTAKE_FILTER,    FREEAIR_FAULT_HP_GASKET_OUTSIDE, FREEAIR_FAULT_HP_RINGS,
    FREEAIR_FAULT_INTERSTAGE_LEAK,  FREEAIR_FAULT_RELIEF_WEAK,       FREEAIR_FAULT_UNLOADER_LEAK,
    FREEAIR_FAULT_BELT_SLIP,        FREEAIR_FAULT_PULLEY,            FREEAIR_FAULT_LOW_VOLTAGE,
    FREEAIR_FAULT_RUN_CAPACITOR,
};

/* Paths that are open both ways: wide open they may throttle less than half open. */
static const int32_t open_both_ways[] = {
    FREEAIR_FAULT_LP_SUCTION_VALVE,   FREEAIR_FAULT_LP_DISCHARGE_VALVE, FREEAIR_FAULT_HP_SUCTION_VALVE,
    FREEAIR_FAULT_HP_DISCHARGE_VALVE, FREEAIR_FAULT_CHECK_VALVE,        FREEAIR_FAULT_GASKET_BETWEEN,
    FREEAIR_FAULT_LP_GASKET_OUTSIDE,
};

static const double kept = 1e-4; /* of the displacement: ten times the accuracy asked for */

/* One machine in sixteenths of the severity: nothing rises, nothing jumps. What
 * does rise is listed in the next test. */
START_TEST(faults_grow_smoothly)
{
  int32_t fault = _i;
  for (int pressure = 0; pressure < 2; pressure++) {
    installation at = shop_unit_at(pressure == 0 ? 4e5 : 10e5);
    double before = share(&at, fault, 0.0);
    for (int i = 1; i <= 16; i++) {
      double now = share(&at, fault, i / 16.0);
      ck_assert_msg(now >= before - 0.25, "%s at %d/16: %g after %g", freeair_fault_name(fault), i, now, before);
      int exempt = fault == FREEAIR_FAULT_LP_DISCHARGE_VALVE || fault == FREEAIR_FAULT_HP_DISCHARGE_VALVE ||
                   (fault == FREEAIR_FAULT_HP_SUCTION_VALVE && pressure == 0);
      if (!exempt)
        ck_assert_msg(now <= before + kept, "%s at %d/16: %g after %g", freeair_fault_name(fault), i, now, before);
      before = now;
    }
  }
}
END_TEST

/* The exceptions, as the reference solver has them too (tests/reference/test_cycle.c):
 * where the least delivery lies and how much the valve wide open regains. */
START_TEST(wide_open_regains_what_the_guide_says)
{
  static const struct {
    int twin;
    int32_t fault;
    double receiver;
    int least; /* sixteenths */
    double regained;
  } rises[] = {
      {0, FREEAIR_FAULT_LP_DISCHARGE_VALVE, 4e5, 9, 0.0035},  {0, FREEAIR_FAULT_LP_DISCHARGE_VALVE, 10e5, 9, 0.0037},
      {0, FREEAIR_FAULT_HP_SUCTION_VALVE, 4e5, 11, 0.0002},   {0, FREEAIR_FAULT_HP_DISCHARGE_VALVE, 4e5, 6, 0.0010},
      {0, FREEAIR_FAULT_HP_DISCHARGE_VALVE, 10e5, 7, 0.0276}, {1, FREEAIR_FAULT_LP_SUCTION_VALVE, 7e5, 5, 0.0410},
      {1, FREEAIR_FAULT_LP_DISCHARGE_VALVE, 10e5, 3, 0.0879}, {1, FREEAIR_FAULT_LP_GASKET_OUTSIDE, 7e5, 12, 0.0024},
  };
  installation at = shop_unit_at(rises[_i].receiver);
  if (rises[_i].twin) {
    at.machine.stages = 1;
    at.machine.lp_cylinders = 2;
  }
  double least = INFINITY;
  double last = INFINITY;
  int where = 0;
  for (int i = 0; i <= 16; i++) {
    double now = share(&at, rises[_i].fault, i / 16.0);
    if (now < least) {
      least = now;
      where = i;
    } else {
      ck_assert_double_gt(now, last - kept); /* one turn, no more */
    }
    last = now;
  }
  ck_assert_msg(abs(where - rises[_i].least) <= 1, "least at %d/16", where);
  ck_assert_double_eq_tol(last - least, rises[_i].regained, 2e-4);
}
END_TEST

START_TEST(random_machines_lose_more_by_every_bit)
{
  int n = how_many(3, 100);
  for (int i = 0; i < n; i++) {
    installation at = random_installation(900000u + (uint64_t)i);
    const double sound = share(&at, FREEAIR_FAULT_NONE, 0.0);
    for (size_t f = 0; f < sizeof always_costly / sizeof always_costly[0]; f++) {
      int32_t applies = 0;
      freeair_fault_applies(&at.machine, always_costly[f], &applies);
      double least = sound;
      for (int k = 1; applies && k <= 8; k++) {
        double now = share(&at, always_costly[f], k / 8.0);
        ck_assert_msg(now <= least + kept, "machine %d, %s at %d/8: %g after %g", i,
                      freeair_fault_name(always_costly[f]), k, now, least);
        least = fmin(least, now);
      }
    }
  }
}
END_TEST

/* Delivery falls to its least and from there may rise once; what the rise takes
 * back in the end stays below 0.3 %. */
START_TEST(random_machines_turn_but_once)
{
  int n = how_many(3, 100);
  for (int i = 0; i < n; i++) {
    installation at = random_installation(300000u + (uint64_t)i);
    const double sound = share(&at, FREEAIR_FAULT_NONE, 0.0);
    for (size_t f = 0; f < sizeof open_both_ways / sizeof open_both_ways[0]; f++) {
      int32_t applies = 0;
      freeair_fault_applies(&at.machine, open_both_ways[f], &applies);
      double least = sound;
      double highest = sound; /* since the least */
      for (int k = 1; applies && k <= 16; k++) {
        double now = share(&at, open_both_ways[f], k / 16.0);
        if (now < least && !(highest > least + kept)) {
          least = now;
          highest = now;
        }
        highest = fmax(highest, now);
        ck_assert_msg(!(highest > least + kept) || now > highest - 3e-3, "machine %d, %s turns again at %d/16: %g",
                      i, freeair_fault_name(open_both_ways[f]), k, now);
        ck_assert_double_lt(now, sound + 0.2);
      }
    }
  }
}
END_TEST

/* A discharge valve that is stuck open makes one cylinder of cylinder and line,
 * and the check valve its discharge valve: volumetric efficiency
 * 1 + c' - c' r^(1/k), c' the clearance and the line over the swept volume. Half
 * open it throttles both ways and delivers less. */
START_TEST(a_stuck_discharge_valve_leaves_its_work_to_the_check_valve)
{
  freeair_machine m = ideal_machine(1);
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  double swept = 0.25 * 3.14159265358979323846 * m.lp_bore_m * m.lp_bore_m * m.lp_stroke_m;
  m.line_m3 = 0.2 * swept;
  m.check_valve_area_m2 = 0.05;
  for (double ratio = 2.0; ratio <= 5.0; ratio += 1.0) {
    m.lp_discharge_leak_m2 = m.lp_discharge_area_m2;
    double efficiency = 1.25 - 0.25 * pow(ratio, 1.0 / 1.4);
    double open = point_of(&m, &s, ratio * 101325.0, 1e-5).delivery_m3_s;
    ck_assert_double_eq_tol(open / (swept * m.speed_rev_s), efficiency, 3e-4);
    m.lp_discharge_leak_m2 = 3.2e-6;
    ck_assert_double_lt(point_of(&m, &s, ratio * 101325.0, 1e-5).delivery_m3_s, 0.99 * open);
  }
}
END_TEST

START_TEST(a_small_fault_is_a_small_change)
{
  double displacement;
  freeair_machine m = shop_unit();
  freeair_machine_displacement(&m, &displacement);
  double sound = faulty(FREEAIR_FAULT_NONE, 0.0, 9e5, 1e-5).delivery_m3_s;
  for (int32_t fault = 1; fault < freeair_fault_count(); fault++) {
    double slightly = faulty(fault, 1e-4, 9e5, 1e-5).delivery_m3_s;
    ck_assert_double_lt(fabs(slightly - sound) / displacement, 1e-4);
  }
}
END_TEST

/* Common practice, no source. */
START_TEST(broken_first_suction_valve_blows_back)
{
  freeair_cycle_result sound = faulty(FREEAIR_FAULT_NONE, 0.0, 5e5, 1e-3);
  freeair_cycle_result broken = faulty(FREEAIR_FAULT_LP_SUCTION_VALVE, 1.0, 5e5, 1e-3);
  ck_assert_double_lt(sound.inlet_backflow_kg_s, 0.03 * sound.intake_kg_s);
  ck_assert_double_gt(broken.inlet_backflow_kg_s, 0.5 * sound.intake_kg_s);
  ck_assert_double_lt(broken.interstage_mean_pa, 1.05 * 101325.0);
  ck_assert_double_lt(broken.delivery_m3_s, 0.4 * sound.delivery_m3_s);
}
END_TEST

/* Common practice, no source. */
START_TEST(second_stage_valves_lift_the_interstage_relief)
{
  freeair_cycle_result sound = faulty(FREEAIR_FAULT_NONE, 0.0, 9e5, 1e-3);
  ck_assert_double_lt(sound.relief_kg_s, 1e-3 * sound.intake_kg_s);
  static const int32_t valves[] = {FREEAIR_FAULT_HP_SUCTION_VALVE, FREEAIR_FAULT_HP_DISCHARGE_VALVE};
  for (int i = 0; i < 2; i++) {
    freeair_cycle_result bad = faulty(valves[i], 0.5, 9e5, 1e-3);
    ck_assert_double_gt(bad.interstage_mean_pa, 1.2 * sound.interstage_mean_pa);
    ck_assert_double_gt(bad.relief_kg_s, 0.05 * sound.intake_kg_s);
  }
}
END_TEST

/* Common practice, no source: slip leaves the interstage pressure almost alone;
 * a restricted filter and a worn first stage lower it. */
START_TEST(interstage_pressure_tells_the_stage)
{
  double sound = faulty(FREEAIR_FAULT_NONE, 0.0, 9e5, 1e-3).interstage_mean_pa;
  ck_assert_double_eq_tol(faulty(FREEAIR_FAULT_BELT_SLIP, 0.5, 9e5, 1e-3).interstage_mean_pa / sound, 1.0, 0.03);
  ck_assert_double_eq_tol(faulty(FREEAIR_FAULT_DOWNSTREAM_LEAK, 0.7, 9e5, 1e-3).interstage_mean_pa / sound, 1.0, 1e-3);
  ck_assert_double_lt(faulty(FREEAIR_FAULT_INTAKE_FILTER, 0.7, 9e5, 1e-3).interstage_mean_pa, 0.9 * sound);
  ck_assert_double_lt(faulty(FREEAIR_FAULT_LP_RINGS, 0.7, 9e5, 1e-3).interstage_mean_pa, 0.9 * sound);
  ck_assert_double_lt(faulty(FREEAIR_FAULT_LP_DISCHARGE_VALVE, 0.4, 9e5, 1e-3).interstage_mean_pa, 0.8 * sound);
}
END_TEST

int main(void)
{
  TCase *tcase = tcase_create("cycle_faults");
  tcase_set_timeout(tcase, 1800);
  tcase_add_loop_test(tcase, faults_grow_smoothly, 1, freeair_fault_count());
  tcase_add_loop_test(tcase, wide_open_regains_what_the_guide_says, 0, 8);
  tcase_add_test(tcase, random_machines_lose_more_by_every_bit);
  tcase_add_test(tcase, random_machines_turn_but_once);
  tcase_add_test(tcase, a_stuck_discharge_valve_leaves_its_work_to_the_check_valve);
  tcase_add_test(tcase, a_small_fault_is_a_small_change);
  tcase_add_test(tcase, broken_first_suction_valve_blows_back);
  tcase_add_test(tcase, second_stage_valves_lift_the_interstage_relief);
  tcase_add_test(tcase, interstage_pressure_tells_the_stage);
  return run_case("cycle_faults", tcase);
}
