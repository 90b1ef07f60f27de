/* SPDX-License-Identifier: MIT */
/* Never a confident wrong answer on a sound machine: hot and cold days, altitude,
 * leaks that are known or measured, receivers that were not empty, over three
 * families of units that differ from their description as real ones do. */
#include "../suite.h"
#include "../unit/inference.h"

#include <check.h>

static const int32_t no = FREEAIR_EVIDENCE_NO;

static int32_t first(const visit *v)
{
  return v->causes[0].cause;
}

/* Numbers from a fixed sequence, near enough normal. */
static double scatter(uint32_t *state, double sd)
{
  double sum = -6.0;
  for (int i = 0; i < 12; i++) {
    *state = *state * 1664525u + 1013904223u;
    sum += (*state >> 8) / 16777216.0;
  }
  return exp(sd * sum);
}

/* A sound unit that is not quite what its description says. */
static freeair_machine unit_of(const freeair_machine *described, uint32_t *state)
{
  freeair_machine m = *described;
  m.lp_clearance *= scatter(state, 0.15);
  m.hp_clearance *= scatter(state, 0.15);
  m.lp_suction_area_m2 *= scatter(state, 0.1);
  m.lp_discharge_area_m2 *= scatter(state, 0.1);
  m.filter_area_m2 *= scatter(state, 0.15);
  m.heat_coefficient *= scatter(state, 0.3);
  m.suction_ua_w_k *= scatter(state, 0.3);
  m.intercooler_ua_w_k *= scatter(state, 0.25);
  m.speed_rev_s *= scatter(state, 0.008);
  m.receiver_m3 *= scatter(state, 0.012);
  m.receiver_gas_ua_w_k *= scatter(state, 0.3);
  m.receiver_wall_j_k *= scatter(state, 0.2);
  return m;
}

static void read_noise(visit *v, uint32_t *state)
{
  v->found.t_empty_to_cutout_s *= scatter(state, 0.01);
  v->found.t_cutin_to_cutout_s *= scatter(state, 0.015);
  v->found.p_interstage_pa *= scatter(state, 0.015);
  v->found.motor_speed_rev_s *= scatter(state, 0.002);
  v->found.pump_speed_rev_s *= scatter(state, 0.002);
  v->found.power_w *= scatter(state, 0.02);
  v->found.t_lp_discharge_k *= scatter(state, 0.01);
  v->found.t_hp_discharge_k *= scatter(state, 0.01);
}

/* Faults of the pump and its drive; what is wrong behind it, or with what was read, is another matter. */
static int of_the_pump(int32_t cause)
{
  switch (cause) {
    case FREEAIR_EVIDENCE_HEALTHY:
    case FREEAIR_EVIDENCE_OTHER:
    case FREEAIR_EVIDENCE_CHECK_VALVE:
    case FREEAIR_EVIDENCE_DOWNSTREAM:
    case FREEAIR_EVIDENCE_RECEIVER_WATER:
    case FREEAIR_EVIDENCE_START_CAPACITOR:
    case FREEAIR_EVIDENCE_GAUGE_OR_SWITCH: return 0;
    default: return 1;
  }
}

/* No fault of the pump comes first, and together they are less probable than not. */
static void assert_pump_is_not_accused(const visit *v, const char *what)
{
  double pump = 0.0;
  for (size_t i = 0; i < v->n_causes; i++)
    if (of_the_pump(v->causes[i].cause)) pump += v->causes[i].probability_alone;
  ck_assert_msg(!of_the_pump(first(v)), "%s: %s, %.2f", what,
                freeair_evidence_name(FREEAIR_EVIDENCE_KIND_CAUSE, first(v)), v->causes[0].probability);
  ck_assert_msg(pump < 0.5, "%s: something of the pump, %.2f", what, pump);
}

START_TEST(heat_cold_and_altitude_accuse_no_pump)
{
  static const struct {
    double barometric_pa;
    double ambient_k;
    const char *what;
  } sites[] = {
      {101325.0, 318.15, "45 degC"},        {106500.0, 325.15, "below the sea, 52 degC"},
      {84556.0, 293.15, "1500 m"},          {70108.0, 308.15, "3000 m, 35 degC"},
      {59400.0, 268.15, "4200 m, -5 degC"}, {102500.0, 248.15, "-25 degC"},
  };
  for (int family = V; family <= TWIN; family++)
    for (int i = 0; i < (int)(sizeof sites / sizeof sites[0]); i++) {
      uint32_t state = (uint32_t)(1000 * family + 10 * i + 1);
      visit *v = new_visit(family);
      v->site.barometric_pa = sites[i].barometric_pa;
      v->site.ambient_k = sites[i].ambient_k;
      const freeair_machine unit = unit_of(&v->machine, &state);
      read_machine(v, &unit, &v->site, (i + family) % 2);
      read_noise(v, &state);
      diagnose(v);
      assert_pump_is_not_accused(v, sites[i].what);
      ck_assert_int_ne(v->summary.verdict, FREEAIR_VERDICT_FAILS);
    }
}
END_TEST

/* A leak that takes so much of the delivery: known to the description, or measured
 * with the system open. */
START_TEST(measured_leaks_accuse_no_pump)
{
  for (int family = V; family <= TWIN; family++)
    for (double share = 0.04; share < 0.4; share *= 2.0)
      for (int told = 0; told < 2; told++) {
        uint32_t state = (uint32_t)(100000.0 * share) + (uint32_t)(10 * family + 2 * told);
        visit *v = new_visit(family);
        v->subject.service_valve_closed = no;
        freeair_cycle_result point = FREEAIR_CYCLE_RESULT_INIT;
        ck_assert_int_ge(freeair_cycle_point(&v->machine, &v->site, v->machine.cut_out_pa, NAN, NAN, &point), 0);
        const double free_air = share * point.delivery_m3_s;
        const double rt = 287.05 * v->site.ambient_k;
        const double area = free_air * v->site.barometric_pa / (0.6847 * 0.9 * v->machine.cut_out_pa * sqrt(rt));
        freeair_machine unit = unit_of(&v->machine, &state);
        unit.downstream_leak_m2 = area;
        if (told) v->machine.downstream_leak_m2 = area;
        read_machine(v, &unit, &v->site, (told + family) % 2 == (share > 0.1));
        read_noise(v, &state);
        v->found.leak_open_m3_s = free_air;
        v->found.leak_isolated_m3_s = 0.0;
        diagnose(v);
        assert_pump_is_not_accused(v, told ? "a leak that is told" : "a leak that is measured");
      }
}
END_TEST

/* Not empty at the start, and told so; or with water in it, measured or not. */
START_TEST(a_receiver_not_drained_accuses_no_pump)
{
  static const double gauge_pa[] = {0.3e5, 1e5, 3e5, 6e5};
  static const double water[] = {0.03, 0.08, 0.2, 0.4};
  for (int family = V; family <= TWIN; family++)
    for (int i = 0; i < 4; i++) {
      uint32_t state = (uint32_t)(100 * family + 4 * i + 7);
      visit *v = new_visit(family);
      freeair_machine unit = unit_of(&v->machine, &state);
      v->how.from_pa = v->site.barometric_pa + gauge_pa[i];
      read_machine(v, &unit, &v->site, (i + family) % 2);
      read_noise(v, &state);
      diagnose(v);
      assert_pump_is_not_accused(v, "not empty at the start");
      ck_assert_int_ne(v->summary.verdict, FREEAIR_VERDICT_FAILS);
      v = new_visit(family);
      unit.receiver_water_m3 = water[i] * unit.receiver_m3;
      read_machine(v, &unit, &v->site, (i + family) % 2);
      read_noise(v, &state);
      diagnose(v);
      assert_pump_is_not_accused(v, "water in the receiver");
      v->found.water_m3 = unit.receiver_water_m3;
      diagnose(v);
      assert_pump_is_not_accused(v, "water in the receiver, drained and measured");
      if (i > 1) ck_assert_int_eq(first(v), FREEAIR_EVIDENCE_RECEIVER_WATER);
    }
}
END_TEST

int main(void)
{
  TCase *tests = tcase_create("sound machines");
  tcase_set_timeout(tests, 900);
  tcase_add_test(tests, heat_cold_and_altitude_accuse_no_pump);
  tcase_add_test(tests, measured_leaks_accuse_no_pump);
  tcase_add_test(tests, a_receiver_not_drained_accuses_no_pump);
  return run_case("inference_sound", tests);
}
