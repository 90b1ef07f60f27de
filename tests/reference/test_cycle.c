/* SPDX-License-Identifier: MIT */
/* The operating point against the same equations written a second time and
 * integrated by SUNDIALS CVODE at tight tolerance, revolution after revolution
 * from a crude start, without any acceleration. */
#include <cvode/cvode.h>

#include "../suite.h"
#include "crank_reference.h"

#include <freeair/cycle.h>
#include <freeair/fault.h>
#include <freeair/status.h>

#include <check.h>

typedef struct machine_case {
  const char *name;
  int stages;
  int lp_cylinders;
  int arrangement;
  double receiver;
  int fault;
  double severity;
  double heat_capacity_rise;
} machine_case;

static const machine_case cases[] = {
    {"sound", 2, 1, FREEAIR_MACHINE_V, 9e5, FREEAIR_FAULT_NONE, 0.0, 0.0},
    {"sound at cut-out", 2, 1, FREEAIR_MACHINE_SIDE_BY_SIDE, 13e5, FREEAIR_FAULT_NONE, 0.0, 0.0},
    {"low receiver", 2, 1, FREEAIR_MACHINE_V, 2e5, FREEAIR_FAULT_NONE, 0.0, 0.0},
    {"single stage", 1, 1, FREEAIR_MACHINE_V, 8e5, FREEAIR_FAULT_NONE, 0.0, 0.0},
    {"twin", 1, 2, FREEAIR_MACHINE_SIDE_BY_SIDE, 8e5, FREEAIR_FAULT_NONE, 0.0, 0.0},
    {"filter", 2, 1, FREEAIR_MACHINE_V, 9e5, FREEAIR_FAULT_INTAKE_FILTER, 0.7, 0.0},
    {"first suction valve leaks", 2, 1, FREEAIR_MACHINE_V, 9e5, FREEAIR_FAULT_LP_SUCTION_VALVE, 0.3, 0.0},
    {"first suction valve stuck", 2, 1, FREEAIR_MACHINE_V, 6e5, FREEAIR_FAULT_LP_SUCTION_VALVE, 1.0, 0.0},
    {"second discharge valve", 2, 1, FREEAIR_MACHINE_V, 9e5, FREEAIR_FAULT_HP_DISCHARGE_VALVE, 0.4, 0.0},
    {"second suction valve stuck", 2, 1, FREEAIR_MACHINE_V, 5e5, FREEAIR_FAULT_HP_SUCTION_VALVE, 1.0, 0.0},
    {"gasket", 2, 1, FREEAIR_MACHINE_SIDE_BY_SIDE, 6e5, FREEAIR_FAULT_GASKET_BETWEEN, 0.6, 0.0},
    {"rings", 2, 1, FREEAIR_MACHINE_V, 9e5, FREEAIR_FAULT_HP_RINGS, 0.5, 0.0},
    {"unloader", 2, 1, FREEAIR_MACHINE_V, 9e5, FREEAIR_FAULT_UNLOADER_LEAK, 0.4, 0.0},
    {"twin, one suction valve", 1, 2, FREEAIR_MACHINE_SIDE_BY_SIDE, 8e5, FREEAIR_FAULT_LP_SUCTION_VALVE, 0.3, 0.0},
    {"warm gas", 2, 1, FREEAIR_MACHINE_V, 9e5, FREEAIR_FAULT_NONE, 0.0, 1.0},
    {"warm gas, valve stuck", 2, 1, FREEAIR_MACHINE_V, 6e5, FREEAIR_FAULT_HP_DISCHARGE_VALVE, 1.0, 1.0},
    {"warm gas, twin", 1, 2, FREEAIR_MACHINE_V, 8e5, FREEAIR_FAULT_LP_RINGS, 0.4, 0.5},
};

static void check_case(const machine_case *q, double accuracy, double delivery, double pressure, double kelvin)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  m.stages = q->stages;
  m.lp_cylinders = q->lp_cylinders;
  m.arrangement = q->arrangement;
  m.lp_bore_m = 0.105;
  m.lp_stroke_m = 0.08;
  m.speed_rev_s = 15.0;
  m.heat_capacity_rise = q->heat_capacity_rise;
  site.barometric_pa = 98000.0;
  site.ambient_k = 298.15;
  ck_assert_int_eq(freeair_fault_apply(&m, &site, q->fault, q->severity, &m, &site), FREEAIR_OK);
  freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
  ck_assert_int_eq(freeair_cycle_point(&m, &site, q->receiver, NAN, accuracy, &r), FREEAIR_OK);

  crank c;
  crank_integrator g;
  crank_answer a = {0};
  crank_setup(&c, &m, site.barometric_pa, site.ambient_k, q->receiver);
  crank_begin(&c, &g, 1e-8);
  int settled = crank_solve(&c, &g, 1e-7, 1500, &a);
  crank_end(&g);
  ck_assert_int_eq(settled, 0);
  double displacement;
  freeair_machine_displacement(&m, &displacement);
  printf("%-28s delivery %.6e differs by %.1e of displacement, interstage by %.1e, %.3f K; %d and %d revolutions\n",
         q->name, a.delivery_m3_s, (r.delivery_m3_s - a.delivery_m3_s) / displacement,
         q->stages == 2 ? r.interstage_mean_pa / a.interstage_pa - 1.0 : 0.0, r.lp_wall_k - a.wall_k[0],
         (int)r.revolutions, a.revolutions);
  ck_assert_double_eq_tol(r.delivery_m3_s, a.delivery_m3_s, delivery * displacement);
  ck_assert_double_eq_tol(r.shaft_w, a.shaft_w, 2.0 * delivery * a.shaft_w);
  ck_assert_double_eq_tol(r.speed_rev_s, a.speed_rev_s, 1e-4 * a.speed_rev_s);
  ck_assert_double_eq_tol(r.lp_wall_k, a.wall_k[0], kelvin);
  if (q->stages == 2) {
    ck_assert_double_eq_tol(r.interstage_mean_pa, a.interstage_pa, pressure * a.interstage_pa);
    ck_assert_double_eq_tol(r.intercooler_k, a.intercooler_k, kelvin);
    ck_assert_double_eq_tol(r.hp_wall_k, a.wall_k[1], kelvin);
  }
}

/* At the default accuracy: 0.05 % in delivery, 0.1 % in interstage pressure, 0.5 K. */
START_TEST(default_accuracy_agrees)
{
  check_case(&cases[_i], NAN, 5e-4, 1e-3, 0.5);
}
END_TEST

/* The tight setting reaches 1e-5. */
START_TEST(tight_accuracy_agrees)
{
  check_case(&cases[_i], 1e-5, 1e-5, 2e-5, 0.01);
}
END_TEST

/* A path that is open both ways costs less wide open than half open, in this
 * solver as in the library: the least delivery and that at severity 1. */
static const struct {
  int twin;
  int32_t fault;
  double receiver;
  double least; /* severity */
  double regained;
} rises[] = {
    {0, FREEAIR_FAULT_HP_DISCHARGE_VALVE, 4e5, 0.375, 0.0010},
    {0, FREEAIR_FAULT_HP_DISCHARGE_VALVE, 10e5, 0.4375, 0.0276},
    {0, FREEAIR_FAULT_LP_DISCHARGE_VALVE, 10e5, 0.5625, 0.0037},
    {0, FREEAIR_FAULT_CHECK_VALVE, 2e5, 0.0, 0.0007},
    {1, FREEAIR_FAULT_LP_SUCTION_VALVE, 7e5, 0.3125, 0.0410},
    {1, FREEAIR_FAULT_LP_DISCHARGE_VALVE, 10e5, 0.1875, 0.0879},
    {1, FREEAIR_FAULT_LP_GASKET_OUTSIDE, 7e5, 0.75, 0.0024},
};

START_TEST(wide_open_regains_in_both_solvers)
{
  double share[2];
  for (int i = 0; i < 2; i++) {
    freeair_machine m = FREEAIR_MACHINE_INIT;
    freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
    m.lp_bore_m = 0.12;
    m.lp_stroke_m = 0.09;
    m.speed_rev_s = 13.0;
    m.arrangement = FREEAIR_MACHINE_SIDE_BY_SIDE;
    if (rises[_i].twin) {
      m.stages = 1;
      m.lp_cylinders = 2;
    }
    double displacement;
    freeair_machine_displacement(&m, &displacement);
    double severity = i == 0 ? rises[_i].least : 1.0;
    ck_assert_int_eq(freeair_fault_apply(&m, &site, rises[_i].fault, severity, &m, &site), FREEAIR_OK);
    freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
    ck_assert_int_eq(freeair_cycle_point(&m, &site, rises[_i].receiver, NAN, 1e-5, &r), FREEAIR_OK);
    crank c;
    crank_integrator g;
    crank_answer a = {0};
    crank_setup(&c, &m, 101325.0, 293.15, rises[_i].receiver);
    crank_begin(&c, &g, 1e-8);
    int settled = crank_solve(&c, &g, 1e-7, 1500, &a);
    crank_end(&g);
    ck_assert_int_eq(settled, 0);
    share[i] = a.delivery_m3_s / displacement;
    printf("%s at %.4f: %.6f of the displacement, the library differs by %.1e\n", freeair_fault_name(rises[_i].fault),
           severity, share[i], r.delivery_m3_s / displacement - share[i]);
    ck_assert_double_eq_tol(r.delivery_m3_s / displacement, share[i], 1e-5);
  }
  ck_assert_double_eq_tol(share[1] - share[0], rises[_i].regained, 1e-4);
}
END_TEST

int main(void)
{
  TCase *tcase = tcase_create("cycle");
  tcase_set_timeout(tcase, 300);
  tcase_add_loop_test(tcase, default_accuracy_agrees, 0, (int)(sizeof cases / sizeof cases[0]));
  tcase_add_loop_test(tcase, tight_accuracy_agrees, 0, (int)(sizeof cases / sizeof cases[0]));
  tcase_add_loop_test(tcase, wide_open_regains_in_both_solvers, 0, (int)(sizeof rises / sizeof rises[0]));
  return run_case("cycle", tcase);
}
