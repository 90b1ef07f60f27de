/* SPDX-License-Identifier: MIT */
/* Random valid machines, sites and faults from a seed, for property tests. */
#ifndef FREEAIR_TESTS_RANDOM_MACHINE_H
#define FREEAIR_TESTS_RANDOM_MACHINE_H

#include <freeair/fault.h>
#include <freeair/machine.h>

#include <math.h>
#include <stdint.h>

typedef struct chance {
  uint64_t state;
} chance;

static inline chance chance_of(uint64_t seed)
{
  chance c = {0x9E3779B97F4A7C15u * seed + 12345u};
  return c;
}

/* xorshift; uniform in [0;1) */
static inline double uniform(chance *c)
{
  c->state ^= c->state << 13;
  c->state ^= c->state >> 7;
  c->state ^= c->state << 17;
  return (double)(c->state >> 11) / 9007199254740992.0;
}

static inline double between(chance *c, double lo, double hi)
{
  return lo + (hi - lo) * uniform(c);
}

static inline double log_between(chance *c, double lo, double hi)
{
  return lo * pow(hi / lo, uniform(c));
}

static inline int32_t up_to(chance *c, int32_t most)
{
  return (int32_t)(uniform(c) * (most + 1));
}

/* Half of the time multiplies a parameter by up to a factor, either way. */
static inline void stray(chance *c, double *field, double factor)
{
  double x = log_between(c, 1.0 / factor, factor);
  if (uniform(c) < 0.5) *field *= x;
}

static inline freeair_machine random_machine(chance *c)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  for (int i = 0; i < 8; i++) uniform(c);
  m.stages = uniform(c) < 0.6 ? 2 : 1;
  m.arrangement = up_to(c, 1);
  m.lp_cylinders = uniform(c) < 0.6 ? 1 : 1 + up_to(c, 3);
  m.hp_cylinders = uniform(c) < 0.7 ? 1 : 1 + up_to(c, 1);
  m.lp_bore_m = log_between(c, 0.03, 0.4);
  m.hp_bore_m = m.lp_bore_m * between(c, 0.3, 0.9);
  m.lp_stroke_m = m.lp_bore_m * log_between(c, 0.4, 1.6);
  m.speed_rev_s = log_between(c, 3.0, 50.0) * sqrt(0.1 / m.lp_bore_m);
  m.lp_clearance = log_between(c, 0.01, 0.3);
  m.hp_clearance = log_between(c, 0.01, 0.3);
  m.rod_ratio = between(c, 0.0, 0.5);
  if (uniform(c) < 0.5) m.phase_rad = between(c, -6.0, 6.0);
  freeair_machine f = FREEAIR_MACHINE_INIT;
  if (freeair_machine_complete(&m, &f) != 0) return m;
  struct {
    double *field;
    double factor;
  } strays[] = {
      {&f.lp_suction_area_m2, 4},   {&f.lp_discharge_area_m2, 4}, {&f.hp_suction_area_m2, 4},
      {&f.hp_discharge_area_m2, 4}, {&f.lp_suction_lift_pa, 10},  {&f.lp_discharge_lift_pa, 10},
      {&f.hp_suction_lift_pa, 10},  {&f.hp_discharge_lift_pa, 10}, {&f.check_valve_area_m2, 4},
      {&f.check_valve_lift_pa, 10}, {&f.filter_area_m2, 4},       {&f.plenum_m3, 10},
      {&f.intercooler_m3, 10},      {&f.intercooler_ua_w_k, 10},  {&f.intercooler_area_m2, 4},
      {&f.relief_set_pa, 2},        {&f.line_m3, 20},             {&f.line_ua_w_k, 10},
      {&f.lp_wall_ua_w_k, 5},       {&f.hp_wall_ua_w_k, 5},       {&f.suction_ua_w_k, 5},
      {&f.lp_ring_area_m2, 10},     {&f.hp_ring_area_m2, 10},     {&f.heat_coefficient, 5},
      {&f.fmep_pa, 3},
  };
  for (size_t i = 0; i < sizeof strays / sizeof strays[0]; i++) stray(c, strays[i].field, strays[i].factor);
  return f;
}

/* Whatever the documented ranges allow of machines that could be built: bores of
 * 10 to 500 mm, 1 to 60 revolutions a second, clearances of 0.5 to 40 %,
 * receivers of a litre to ten cubic metres; every parameter behind them strays by
 * up to a factor half of the time. */
static inline freeair_machine extreme_machine(chance *c, double factor)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  for (int i = 0; i < 8; i++) uniform(c);
  m.stages = 1 + up_to(c, 1);
  m.arrangement = up_to(c, 1);
  m.lp_cylinders = 1 + up_to(c, 3);
  m.hp_cylinders = 1 + up_to(c, 3);
  m.lp_bore_m = log_between(c, 0.01, 0.5);
  m.hp_bore_m = m.lp_bore_m * between(c, 0.2, 1.2);
  m.lp_stroke_m = m.lp_bore_m * log_between(c, 0.3, 2.5);
  m.hp_stroke_m = m.lp_stroke_m * log_between(c, 0.4, 1.6);
  m.speed_rev_s = log_between(c, 1.0, 60.0);
  m.lp_clearance = log_between(c, 0.005, 0.4);
  m.hp_clearance = log_between(c, 0.005, 0.4);
  m.rod_ratio = between(c, 0.0, 0.9);
  if (uniform(c) < 0.5) m.phase_rad = between(c, -6.3, 6.3);
  m.receiver_m3 = log_between(c, 1e-3, 10.0);
  if (uniform(c) < 0.2) m.heat_capacity_ratio = between(c, 1.02, 1.68);
  freeair_machine f = FREEAIR_MACHINE_INIT;
  if (factor <= 1.0 || freeair_machine_complete(&m, &f) != 0) return m;
  double *fields[] = {
      &f.lp_suction_area_m2,  &f.lp_discharge_area_m2, &f.hp_suction_area_m2,    &f.hp_discharge_area_m2,
      &f.lp_suction_lift_pa,  &f.lp_discharge_lift_pa, &f.hp_suction_lift_pa,    &f.hp_discharge_lift_pa,
      &f.check_valve_area_m2, &f.check_valve_lift_pa,  &f.filter_area_m2,        &f.plenum_m3,
      &f.intercooler_m3,      &f.intercooler_ua_w_k,   &f.intercooler_area_m2,   &f.relief_set_pa,
      &f.relief_area_m2,      &f.line_m3,              &f.line_ua_w_k,           &f.lp_wall_ua_w_k,
      &f.hp_wall_ua_w_k,      &f.suction_ua_w_k,       &f.lp_ring_area_m2,       &f.hp_ring_area_m2,
      &f.heat_coefficient,    &f.fmep_pa,              &f.receiver_wall_j_k,     &f.receiver_gas_ua_w_k,
      &f.motor_rated_w,       &f.receiver_wall_ua_w_k,
  };
  for (size_t i = 0; i < sizeof fields / sizeof fields[0]; i++) stray(c, fields[i], factor);
  freeair_machine complete = FREEAIR_MACHINE_INIT;
  return freeair_machine_complete(&f, &complete) == 0 ? f : m;
}

/* From the sea to 5000 m, -40 to 55 degC. */
static inline freeair_machine_site extreme_site(chance *c)
{
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  s.barometric_pa = between(c, 54e3, 101325.0);
  s.ambient_k = between(c, 233.15, 328.15);
  s.humidity = uniform(c);
  return s;
}

static inline freeair_machine_site random_site(chance *c)
{
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  s.barometric_pa = between(c, 6e4, 1.05e5);
  s.ambient_k = between(c, 250.0, 320.0);
  s.humidity = uniform(c);
  return s;
}

/* None, one or two faults. */
static inline void random_faults(chance *c, freeair_machine *m, freeair_machine_site *s)
{
  int32_t n = up_to(c, 2);
  for (int32_t i = 0; i < n; i++) {
    int32_t fault = up_to(c, freeair_fault_count() - 1);
    double severity = uniform(c);
    int32_t applies = 0;
    freeair_fault_applies(m, fault, &applies);
    if (applies) freeair_fault_apply(m, s, fault, severity, m, s);
  }
}

#endif
