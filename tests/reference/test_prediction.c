/* SPDX-License-Identifier: MIT */
/* A whole pump-up, every revolution integrated by SUNDIALS CVODE on the second
 * writing of the equations, against the prediction from a few operating points.
 * The prediction leaves out the gas that the line and the intercooler take up as
 * the pressure rises: some 0.3 % of the time with half this receiver. */
#include <cvode/cvode.h>

#include "../suite.h"
#include "crank_reference.h"

#include <freeair/fault.h>
#include <freeair/prediction.h>
#include <freeair/status.h>

#include <check.h>

typedef struct vessel {
  double mass, energy, wall;
} vessel;

static void vessel_rates(const crank *c, const vessel *v, vessel *rate)
{
  double p = (c->k - 1.0) * v->energy / c->m.receiver_m3;
  double t = v->energy / (v->mass * c->cv);
  double heat = c->m.receiver_gas_ua_w_k * pow(p / c->pa, 2.0 / 3.0) * (t - v->wall);
  rate->energy = -heat;
  rate->wall = (heat - c->m.receiver_wall_ua_w_k * (v->wall - c->ta)) / c->m.receiver_wall_j_k;
}

/* Half of the gas of a revolution before, half after the heat has flowed. */
static void vessel_fill(const crank *c, vessel *v, double mass, double enthalpy, double period)
{
  vessel first;
  vessel second;
  v->mass += 0.5 * mass;
  v->energy += 0.5 * enthalpy;
  vessel_rates(c, v, &first);
  vessel middle = *v;
  middle.energy += 0.5 * period * first.energy;
  middle.wall += 0.5 * period * first.wall;
  vessel_rates(c, &middle, &second);
  v->energy += period * second.energy + 0.5 * enthalpy;
  v->wall += period * second.wall;
  v->mass += 0.5 * mass;
}

static const struct {
  int32_t fault;
  double severity;
} cases[] = {{FREEAIR_FAULT_NONE, 0.0}};

START_TEST(direct_and_mapped_pump_up_agree)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  m.lp_bore_m = 0.105;
  m.lp_stroke_m = 0.08;
  m.speed_rev_s = 15.0;
  m.receiver_m3 = 0.3;
  ck_assert_int_eq(freeair_fault_apply(&m, &site, cases[_i].fault, cases[_i].severity, &m, &site), FREEAIR_OK);
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  freeair_prediction_result r = FREEAIR_PREDICTION_RESULT_INIT;
  double curve[4][8];
  ck_assert_int_eq(
      freeair_prediction_pumpup(&m, &site, &run, &r, curve[0], curve[1], curve[2], curve[3], 8), FREEAIR_OK);

  crank c;
  crank_integrator g;
  crank_answer a;
  crank_setup(&c, &m, 101325.0, 293.15, 101325.0);
  crank_begin(&c, &g, 1e-6);
  ck_assert_int_eq(crank_solve(&c, &g, 1e-4, 500, &a), 0);
  vessel v = {101325.0 * m.receiver_m3 / (c.R * c.ta), 101325.0 * m.receiver_m3 / (c.k - 1.0), c.ta};
  double t = 0.0;
  double cut_in = 0.0;
  double p = 101325.0;
  int revolutions = 0;
  while (p < m.cut_out_pa) {
    double period = 2.0 * CRANK_PI / c.omega;
    double before = p;
    c.p_receiver = p;
    ck_assert_int_eq(crank_revolution(&c, &g), 0);
    const double *q = N_VGetArrayPointer(g.y) + 2 * GAS_VOLUMES;
    vessel_fill(&c, &v, q[DELIVERED], q[DELIVERED_H], period);
    crank_settle(&c, q, period, 0.3);
    p = (c.k - 1.0) * v.energy / m.receiver_m3;
    ck_assert_double_gt(p, before);
    if (before < m.cut_in_pa && p >= m.cut_in_pa) cut_in = t + period * (m.cut_in_pa - before) / (p - before);
    t += p < m.cut_out_pa ? period : period * (m.cut_out_pa - before) / (p - before);
    ck_assert_int_lt(++revolutions, 20000);
  }
  double gas = v.energy / (v.mass * c.cv);
  crank_end(&g);
  printf("%d revolutions in %.2f s, predicted %.2f s (%+.3f %%); cut-in %.2f and %.2f s; gas %.2f and %.2f K\n",
         revolutions, t, r.time_s, 100.0 * (r.time_s / t - 1.0), cut_in, r.cut_in_s, gas, r.end_gas_k);
  ck_assert_double_eq_tol(r.time_s / t, 1.0, 3e-3);
  ck_assert_double_eq_tol(r.cut_in_s / cut_in, 1.0, 3e-3);
  ck_assert_double_eq_tol(r.end_gas_k, gas, 0.5);
}
END_TEST

int main(void)
{
  TCase *tcase = tcase_create("prediction");
  tcase_set_timeout(tcase, 600);
  tcase_add_loop_test(tcase, direct_and_mapped_pump_up_agree, 0, (int)(sizeof cases / sizeof cases[0]));
  return run_case("prediction", tcase);
}
