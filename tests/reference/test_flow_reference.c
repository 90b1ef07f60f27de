/* SPDX-License-Identifier: MIT */
/* The inverses of isentropic flow against Brent's method of the GNU Scientific
 * Library on the textbook form of the equations. */
#include <freeair/flow.h>
#include <freeair/status.h>

#include "../suite.h"
#include "calculus.h"

#include <check.h>
#include <gsl/gsl_errno.h>
#include <math.h>

typedef struct nozzle {
  double area_m2;
  double p1_pa;
  double t1_k;
  double p2_pa;
  double k;
  double r_j_kg_k;
  double wanted;
} nozzle;

static double mass_flow(double area, double p1, double t1, double p2, double k, double r)
{
  double critical = pow(2.0 / (k + 1.0), k / (k - 1.0));
  double ratio = fmax(p2 / p1, critical);
  return area * p1 * sqrt(2.0 * k / ((k - 1.0) * r * t1) * (pow(ratio, 2.0 / k) - pow(ratio, (k + 1.0) / k)));
}

static double outlet_error(double p2, void *data)
{
  const nozzle *n = data;
  return mass_flow(n->area_m2, n->p1_pa, n->t1_k, p2, n->k, n->r_j_kg_k) - n->wanted;
}

static double inlet_error(double p1, void *data)
{
  const nozzle *n = data;
  return mass_flow(n->area_m2, p1, n->t1_k, n->p2_pa, n->k, n->r_j_kg_k) - n->wanted;
}

static double area_error(double mach, void *data)
{
  const nozzle *n = data;
  double base = 2.0 / (n->k + 1.0) * (1.0 + 0.5 * (n->k - 1.0) * mach * mach);
  return pow(base, 0.5 * (n->k + 1.0) / (n->k - 1.0)) / mach - n->wanted;
}

static double root(double (*function)(double, void *), nozzle *n, double low, double high)
{
  return root_of(function, n, low, high, 0.0, 1e-14);
}

static double relative(double a, double b)
{
  return fabs(a - b) / fabs(b);
}

START_TEST(pressures)
{
  for (int i = 0; i < 10; i++) {
    nozzle n = {2e-6 * (i + 1), 3e5 + 1e5 * i, 280.0 + 5.0 * i, 1e5, 1.1 + 0.06 * i, 200.0 + 50.0 * i, 0.0};
    double critical = pow(2.0 / (n.k + 1.0), n.k / (n.k - 1.0));
    double choked = mass_flow(n.area_m2, n.p1_pa, n.t1_k, 0.0, n.k, n.r_j_kg_k);
    for (int j = 1; j < 20; j++) {
      n.wanted = choked * j / 20.0;
      double p;
      ck_assert_int_eq(freeair_flow_outlet_pressure_from_mass_flow(n.wanted, n.area_m2, n.p1_pa, n.t1_k, n.k,
                                                                   n.r_j_kg_k, &p),
                       FREEAIR_OK);
      ck_assert_double_le(relative(p, root(outlet_error, &n, critical * n.p1_pa, n.p1_pa)), 1e-12);
      ck_assert_int_eq(
          freeair_flow_inlet_pressure_from_mass_flow(n.wanted, n.area_m2, n.t1_k, n.p2_pa, n.k, n.r_j_kg_k, &p),
          FREEAIR_OK);
      ck_assert_double_le(relative(p, root(inlet_error, &n, n.p2_pa, 1e7)), 1e-10);
    }
  }
}
END_TEST

START_TEST(mach_numbers)
{
  for (int i = 0; i < 10; i++) {
    nozzle n = {0.0, 0.0, 0.0, 0.0, 1.1 + 0.06 * i, 0.0, 0.0};
    for (int j = 1; j < 20; j++) {
      n.wanted = pow(1.5, j);
      double mach;
      ck_assert_int_eq(freeair_flow_mach_from_area_ratio(n.wanted, FREEAIR_FLOW_SUBSONIC, n.k, &mach), FREEAIR_OK);
      ck_assert_double_le(relative(mach, root(area_error, &n, 1e-6, 1.0)), 1e-11);
      ck_assert_int_eq(freeair_flow_mach_from_area_ratio(n.wanted, FREEAIR_FLOW_SUPERSONIC, n.k, &mach), FREEAIR_OK);
      ck_assert_double_le(relative(mach, root(area_error, &n, 1.0, 1000.0)), 1e-11);
    }
  }
}
END_TEST

int main(void)
{
  gsl_set_error_handler_off();
  TCase *tc = tcase_create("flow");
  tcase_add_test(tc, pressures);
  tcase_add_test(tc, mach_numbers);
  return run_case("flow against GSL", tc);
}
