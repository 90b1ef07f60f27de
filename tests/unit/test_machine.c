/* SPDX-License-Identifier: MIT */
#include <freeair/fault.h>
#include <freeair/machine.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <fenv.h>
#include <string.h>

static freeair_machine shop_unit(void)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  m.lp_bore_m = 0.12;
  m.lp_stroke_m = 0.09;
  m.speed_rev_s = 15.0;
  return m;
}

static int same(double a, double b)
{
  return a == b || (isnan(a) && isnan(b));
}

/* How many doubles of two descriptions differ. */
static int differences(const void *a, const void *b, size_t size)
{
  int n = 0;
  for (size_t at = 8; at + 8 <= size; at += 8) {
    double x;
    double y;
    memcpy(&x, (const char *)a + at, 8);
    memcpy(&y, (const char *)b + at, 8);
    n += !same(x, y);
  }
  return n;
}

START_TEST(completion_is_idempotent_and_keeps_what_is_given)
{
  freeair_machine m = shop_unit();
  m.lp_clearance = 0.031;
  freeair_machine once = FREEAIR_MACHINE_INIT;
  freeair_machine twice = FREEAIR_MACHINE_INIT;
  ck_assert_int_eq(freeair_machine_complete(&m, &once), FREEAIR_OK);
  ck_assert_int_eq(freeair_machine_complete(&once, &twice), FREEAIR_OK);
  ck_assert_double_eq(once.lp_clearance, 0.031);
  ck_assert_double_eq_tol(once.speed_rev_s, 15.0, 1e-13);
  ck_assert_double_eq_tol(twice.speed_rev_s, once.speed_rev_s, 1e-13);
  twice.speed_rev_s = once.speed_rev_s;
  ck_assert_int_eq(differences(&once, &twice, 8 * 73), 0);
  ck_assert(isnan(once.rated_delivery_m3_s));
}
END_TEST

START_TEST(every_field_rejects_nonsense)
{
  freeair_machine m = shop_unit();
  for (size_t at = 8; at < 8 * 73; at += 8) {
    const double bad[] = {INFINITY, -INFINITY, 1e300, -1e300};
    for (size_t i = 0; i < 4; i++) {
      freeair_machine wrong = m;
      freeair_machine out = FREEAIR_MACHINE_INIT;
      memcpy((char *)&wrong + at, &bad[i], 8);
      feclearexcept(FE_ALL_EXCEPT);
      ck_assert_int_eq(freeair_machine_complete(&wrong, &out), FREEAIR_ERR_DOMAIN);
      ck_assert_int_eq(fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW), 0);
      ck_assert(isnan(out.lp_bore_m));
    }
  }
}
END_TEST

START_TEST(no_severity_is_no_change)
{
  freeair_machine m = shop_unit();
  m.arrangement = FREEAIR_MACHINE_SIDE_BY_SIDE;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  freeair_machine sound = FREEAIR_MACHINE_INIT;
  ck_assert_int_eq(freeair_machine_complete(&m, &sound), FREEAIR_OK);
  for (int32_t fault = 0; fault < freeair_fault_count(); fault++) {
    freeair_machine faulty = FREEAIR_MACHINE_INIT;
    freeair_machine_site faulty_site = FREEAIR_MACHINE_SITE_INIT;
    ck_assert_int_eq(freeair_fault_apply(&m, &site, fault, 0.0, &faulty, &faulty_site), FREEAIR_OK);
    ck_assert_int_eq(differences(&sound, &faulty, 8 * 73), 0);
    ck_assert_double_eq(faulty_site.supply_v, 230.0);
    int32_t status = freeair_fault_apply(&m, &site, fault, 0.5, &faulty, &faulty_site);
    ck_assert_int_eq(status, FREEAIR_OK);
    int changed = differences(&sound, &faulty, 8 * 73) + (faulty_site.supply_v != 230.0);
    if (fault == FREEAIR_FAULT_NONE)
      ck_assert_int_eq(changed, 0);
    else
      ck_assert_int_ge(changed, 1);
    ck_assert_int_gt((int)strlen(freeair_fault_name(fault)), 0);
  }
}
END_TEST

/* The extreme of every fault is still a valid description, and in place works. */
START_TEST(worst_faults_together_stay_valid)
{
  for (int32_t stages = 1; stages <= 2; stages++) {
    freeair_machine m = shop_unit();
    m.stages = stages;
    m.arrangement = FREEAIR_MACHINE_SIDE_BY_SIDE;
    m.lp_cylinders = 2;
    freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
    for (int32_t fault = 0; fault < freeair_fault_count(); fault++) {
      int32_t applies;
      ck_assert_int_eq(freeair_fault_applies(&m, fault, &applies), FREEAIR_OK);
      int32_t status = freeair_fault_apply(&m, &site, fault, 1.0, &m, &site);
      if (applies) {
        ck_assert_int_eq(status, FREEAIR_OK);
      } else {
        ck_assert_int_eq(status, FREEAIR_ERR_UNSUPPORTED);
        m = shop_unit();
        m.stages = stages;
        m.arrangement = FREEAIR_MACHINE_SIDE_BY_SIDE;
        m.lp_cylinders = 2;
        site = (freeair_machine_site)FREEAIR_MACHINE_SITE_INIT;
      }
    }
    freeair_machine out = FREEAIR_MACHINE_INIT;
    ck_assert_int_eq(freeair_machine_complete(&m, &out), FREEAIR_OK);
  }
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("machine");
  tcase_add_test(tc, completion_is_idempotent_and_keeps_what_is_given);
  tcase_add_test(tc, every_field_rejects_nonsense);
  tcase_add_test(tc, no_severity_is_no_change);
  tcase_add_test(tc, worst_faults_together_stay_valid);
  return run_case("machine", tc);
}
