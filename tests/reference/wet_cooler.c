/* SPDX-License-Identifier: MIT */
/* A counterflow cooler by quadrature along the temperatures of the air, with the
 * water condensing where it does. */
#include <freeair/freeair.h>

#include "../suite.h"
#include "calculus.h"

#include <check.h>
#include <gsl/gsl_errno.h>
#include <math.h>

typedef struct exchanger {
  freeair_condensate_flow before;
  double p_pa;
  double coolant_w_k;
  double coolant_in_k;
  double total_w;
} exchanger;

static double given_up(const exchanger *x, double t_k)
{
  freeair_condensate_flow after = FREEAIR_CONDENSATE_FLOW_INIT;
  ck_assert_int_ge(freeair_condensate_step(&x->before, x->p_pa, t_k, 0.0, &after), 0);
  return after.released_w;
}

/* dUA = dQ/(T - Tc), the coolant at this place having yet to take up what the air gave before */
static double size_by_temperature(double t_k, void *of)
{
  const exchanger *x = of;
  const double step = 0.01;
  const double rate = (given_up(x, t_k - step) - given_up(x, t_k + step)) / (2.0 * step);
  const double coolant = x->coolant_in_k + (x->total_w - given_up(x, t_k)) / x->coolant_w_k;
  return rate / (t_k - coolant);
}

START_TEST(counterflow)
{
  /* inlet temperature, relative humidity there, pressure, air in, air out, water flow W/K */
  static const double cases[][6] = {{293.15, 0.5, 3.5e5, 420.0, 308.15, 400.0},
                                    {303.15, 0.7, 3.5e5, 430.0, 313.15, 400.0},
                                    {308.15, 0.9, 9e5, 440.0, 310.15, 300.0},
                                    {303.15, 0.0, 3.5e5, 430.0, 313.15, 400.0},
                                    {303.15, 0.9, 9e5, 350.0, 306.15, 250.0}};
  for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
    const double *c = cases[i];
    freeair_condensate_flow inlet = FREEAIR_CONDENSATE_FLOW_INIT;
    exchanger x = {FREEAIR_CONDENSATE_FLOW_INIT, c[2], c[5], 298.15, 0.0};
    ck_assert_int_eq(freeair_condensate_inlet(0.1, 1e5, c[0], c[1], FREEAIR_ENHANCEMENT_VIRIAL,
                                              FREEAIR_SATURATION_OVER_WATER, &inlet),
                     FREEAIR_OK);
    ck_assert_int_eq(freeair_condensate_step(&inlet, c[2], c[3], 0.0, &x.before), FREEAIR_OK);
    x.total_w = given_up(&x, c[4]);
    const double along = integral_of(size_by_temperature, &x, c[4], c[3], 1e-7);
    double ua;
    double heat;
    double water;
    ck_assert_int_eq(freeair_wet_cooler_size_from_readings(FREEAIR_INTERCOOLER_COUNTERFLOW, &x.before, c[2], c[4], c[5],
                                                           298.15, &ua, &heat, &water),
                     FREEAIR_OK);
    ck_assert_double_eq_tol(heat, x.total_w, 1e-9 * heat);
    /* and the outlet with the size along the length */
    freeair_condensate_flow after = FREEAIR_CONDENSATE_FLOW_INIT;
    double coolant;
    double e;
    ck_assert_int_eq(freeair_wet_cooler_outlet(FREEAIR_INTERCOOLER_COUNTERFLOW, along, &x.before, c[2], 0.0, c[5],
                                               298.15, &after, &coolant, &heat, &e),
                     FREEAIR_OK);
    ck_assert_double_eq_tol(ua, along, 1e-5 * along);
    ck_assert_double_eq_tol(after.t_k, c[4], 1e-4);
    ck_assert_double_eq_tol(after.liquid_kg_s, water, 1e-5 * water + 1e-12);
  }
}
END_TEST

int main(void)
{
  gsl_set_error_handler_off();
  TCase *all = tcase_create("all");
  tcase_add_test(all, counterflow);
  return run_case("wet_cooler against GSL", all);
}
