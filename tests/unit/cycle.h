/* SPDX-License-Identifier: MIT */
/* Machines whose cycle the tests solve. */
#ifndef FREEAIR_TESTS_CYCLE_H
#define FREEAIR_TESTS_CYCLE_H

#include <freeair/cycle.h>
#include <freeair/machine.h>
#include <freeair/status.h>

#include <check.h>
#include <math.h>
#include <stdlib.h>

static inline freeair_machine shop_unit(void)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  m.lp_bore_m = 0.12;
  m.lp_stroke_m = 0.09;
  m.speed_rev_s = 13.0;
  m.arrangement = FREEAIR_MACHINE_SIDE_BY_SIDE;
  return m;
}

static inline freeair_cycle_result point_of(const freeair_machine *m, const freeair_machine_site *s, double receiver,
                                     double accuracy)
{
  freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
  ck_assert_int_ge(freeair_cycle_point(m, s, receiver, NAN, accuracy, &r), FREEAIR_OK);
  return r;
}

/* FREEAIR_LONG in the environment asks for many. */
static inline int how_many(int few, int many)
{
  return getenv("FREEAIR_LONG") != NULL ? many : few;
}

/* Large valves, no heat, no leaks: the closed forms of an ideal compressor,
 * volumetric efficiency 1 + c - c r^(1/k) and work k/(k-1) p1 V1 (r^((k-1)/k) - 1). */
static inline freeair_machine ideal_machine(int32_t stages)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  m.stages = stages;
  m.lp_bore_m = 0.1;
  m.lp_stroke_m = 0.08;
  m.speed_rev_s = 2.0;
  m.motor_rated_slip = 0.0;
  m.hp_bore_m = 0.055;
  m.lp_suction_area_m2 = m.lp_discharge_area_m2 = 0.05;
  m.hp_suction_area_m2 = m.hp_discharge_area_m2 = 0.05;
  m.lp_suction_lift_pa = m.lp_discharge_lift_pa = m.hp_suction_lift_pa = m.hp_discharge_lift_pa = 50.0;
  m.filter_area_m2 = 0.5;
  m.check_valve_area_m2 = 0.5;
  m.check_valve_lift_pa = 50.0;
  m.plenum_m3 = 0.01;
  m.line_m3 = 0.01;
  m.line_ua_w_k = 0.0;
  m.suction_ua_w_k = 0.0;
  m.heat_coefficient = 0.0;
  m.lp_ring_area_m2 = m.hp_ring_area_m2 = 0.0;
  m.intercooler_m3 = 3.0;
  m.intercooler_ua_w_k = 1e5;
  m.intercooler_area_m2 = 0.5;
  m.relief_set_pa = 9e5;
  return m;
}

#endif
