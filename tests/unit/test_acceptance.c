/* SPDX-License-Identifier: MIT */
#include <freeair/acceptance.h>
#include <freeair/multistage.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static freeair_acceptance_test two_stage(void)
{
  freeair_acceptance_test t = FREEAIR_ACCEPTANCE_TEST_INIT;
  t.flow_m3_s = 0.03;
  t.power_w = 22e3;
  t.speed_rev_s = 15.0;
  t.inlet_pa = 98e3;
  t.inlet_k = 301.0;
  t.discharge_pa = 1.05e6;
  t.coolant_k = 297.0;
  t.approach_k = 12.0;
  t.clearance = 0.05;
  t.exponent = 1.3;
  return t;
}

typedef struct corrected {
  double flow, power, specific, flow_factor, power_factor;
} corrected;

static corrected correct(const freeair_acceptance_test *t, int32_t stages)
{
  corrected c;
  ck_assert_int_ge(
    freeair_acceptance_correct(t, stages, &c.flow, &c.power, &c.specific, &c.flow_factor, &c.power_factor), 0);
  return c;
}

/* Corrected to other conditions and from there back, the test is itself again. */
START_TEST(there_and_back)
{
  for (int i = -5; i <= 5; i++) {
    freeair_acceptance_test t = two_stage();
    t.contract_speed_rev_s = 15.0 * (1.0 + 0.01 * i);
    t.contract_inlet_pa = 98e3 + 400.0 * i;
    t.contract_inlet_k = 301.0 - 1.3 * i;
    t.contract_discharge_pa = 1.05e6 + 7e3 * i;
    t.contract_coolant_k = 297.0 + 0.9 * i;
    const corrected out = correct(&t, 2);
    freeair_acceptance_test back = t;
    back.flow_m3_s = out.flow;
    back.power_w = out.power;
    back.speed_rev_s = t.contract_speed_rev_s;
    back.inlet_pa = t.contract_inlet_pa;
    back.inlet_k = t.contract_inlet_k;
    back.discharge_pa = t.contract_discharge_pa;
    back.coolant_k = t.contract_coolant_k;
    back.contract_speed_rev_s = t.speed_rev_s;
    back.contract_inlet_pa = t.inlet_pa;
    back.contract_inlet_k = t.inlet_k;
    back.contract_discharge_pa = t.discharge_pa;
    back.contract_coolant_k = t.coolant_k;
    const corrected again = correct(&back, 2);
    ck_assert_double_le(fabs(again.flow / 0.03 - 1.0), 1e-13);
    ck_assert_double_le(fabs(again.power / 22e3 - 1.0), 1e-13);
  }
}
END_TEST

/* Power changes with the pressures as the work of equal stages does. */
START_TEST(power_follows_the_work_of_the_stages)
{
  freeair_acceptance_test t = two_stage();
  t.clearance = 0.0;
  t.coolant_k = t.inlet_k;
  t.approach_k = 0.0;
  for (int i = 1; i <= 8; i++) {
    t.contract_discharge_pa = 1.05e6 + 2e4 * i;
    t.contract_inlet_pa = 98e3 + 500.0 * i;
    const corrected out = correct(&t, 2);
    double found, asked;
    ck_assert_int_eq(freeair_multistage_work_equal(287.0, 301.0, 98e3, 1.05e6, 1.3, 2, &found), FREEAIR_OK);
    ck_assert_int_eq(freeair_multistage_work_equal(287.0, 301.0, t.contract_inlet_pa, t.contract_discharge_pa, 1.3, 2,
                                                   &asked),
                     FREEAIR_OK);
    /* work for a kilogram times the density of what comes in */
    ck_assert_double_le(fabs(out.power_factor / (asked * t.contract_inlet_pa / (found * 98e3)) - 1.0), 1e-12);
    ck_assert_double_eq(out.flow_factor, 1.0);
  }
}
END_TEST

/* Harder conditions: less air, or more power, or both. */
START_TEST(directions)
{
  freeair_acceptance_test t = two_stage();
  t.contract_discharge_pa = 1.1e6;
  corrected c = correct(&t, 2);
  ck_assert(c.flow_factor < 1.0 && c.specific > 22e3 / 0.03);
  t = two_stage();
  t.contract_coolant_k = 305.0;
  c = correct(&t, 2);
  ck_assert(c.flow_factor == 1.0 && c.power_factor > 1.0);
  c = correct(&t, 1);
  ck_assert(c.power_factor == 1.0); /* one stage has no cooler between */
}
END_TEST

START_TEST(tolerance_saves_some_and_uncertainty_blurs)
{
  int32_t verdict;
  double deviation, probability;
  ck_assert_int_eq(freeair_acceptance_flow_verdict(0.048, 0.0, 0.05, 0.0, 0.95, &verdict, &deviation, &probability),
                   FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_FAILS);
  ck_assert_int_eq(freeair_acceptance_flow_verdict(0.048, 0.0, 0.05, 0.05, 0.95, &verdict, &deviation, &probability),
                   FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_MEETS);
  ck_assert_double_le(fabs(deviation + 0.04), 1e-15);
  ck_assert_int_eq(freeair_acceptance_flow_verdict(0.048, 0.001, 0.05, 0.05, 0.95, &verdict, &deviation, &probability),
                   FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_CANNOT_TELL);
  ck_assert_int_eq(freeair_acceptance_energy_verdict(3.9e5, 1e3, 4e5, 0.05, 0.95, &verdict, &deviation, &probability),
                   FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_MEETS); /* better than promised */
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, there_and_back);
  tcase_add_test(all, power_follows_the_work_of_the_stages);
  tcase_add_test(all, directions);
  tcase_add_test(all, tolerance_saves_some_and_uncertainty_blurs);
  return run_case("acceptance", all);
}
