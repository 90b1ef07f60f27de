/* SPDX-License-Identifier: MIT */
#include <freeair/flow.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double relative(double a, double b)
{
  return a == b ? 0.0 : fabs(a - b) / fmax(fabs(a), fabs(b));
}

/* n values from low to high, evenly spaced on a logarithmic scale */
static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

static const double gas_constant = 287.05287;

static double flow(double area_m2, double p1_pa, double p2_pa, double k)
{
  double mass;
  ck_assert_int_eq(freeair_flow_mass_flow(area_m2, p1_pa, 300.0, p2_pa, k, gas_constant, &mass), FREEAIR_OK);
  return mass;
}

/* Area, outlet and inlet pressure that are computed from a flow give the flow back. */
START_TEST(inverses_return_to_the_start)
{
  for (int i = 0; i < 40; i++) {
    double k = 1.0 + spread(i % 7, 7, 1e-6, 1.0);
    double p1 = spread(i, 40, 2e3, 5e7);
    for (int j = 0; j < 40; j++) {
      double p2 = p1 * (1.0 - spread(j, 40, 1e-12, 1.0));
      double mass = flow(1e-5, p1, p2, k);
      double area;
      double back;
      ck_assert_int_eq(freeair_flow_area_from_mass_flow(mass, p1, 300.0, p2, k, gas_constant, &area), FREEAIR_OK);
      ck_assert_double_le(relative(area, 1e-5), 1e-14);
      ck_assert_int_eq(freeair_flow_inlet_pressure_from_mass_flow(mass, 1e-5, 300.0, p2, k, gas_constant, &back),
                       FREEAIR_OK);
      ck_assert_double_le(relative(back, p1), 1e-13);
      double less = 0.99 * mass; /* away from choking, where the inverse is ill conditioned */
      ck_assert_int_eq(freeair_flow_outlet_pressure_from_mass_flow(less, 1e-5, p1, 300.0, k, gas_constant, &back),
                       FREEAIR_OK);
      ck_assert_double_le(relative(flow(1e-5, p1, back, k), less), p2 > 0.999 * p1 ? 1e-4 : 1e-12);
    }
  }
}
END_TEST

/* As the drop vanishes the flow tends to A sqrt(2 rho dp), with no digit lost on the way. */
START_TEST(small_drop_is_incompressible)
{
  const double p1 = 700e3;
  for (int i = 0; i < 60; i++) {
    double p2 = p1 - spread(i, 60, 1e-9, 1e-3);
    double drop = p1 - p2; /* as it is in floating point */
    double density = p1 / (gas_constant * 300.0);
    ck_assert_double_le(relative(flow(1e-5, p1, p2, 1.4), 1e-5 * sqrt(2.0 * density * drop)), 2e-9);
  }
  ck_assert_double_eq(flow(1e-5, p1, p1, 1.4), 0.0);
}
END_TEST

/* Below the critical ratio nothing changes, and above it the flow falls. */
START_TEST(choked_flow_is_constant_and_joins_smoothly)
{
  for (int i = 0; i < 20; i++) {
    double k = 1.0 + spread(i, 20, 1e-9, 1.0);
    double ratio;
    double coefficient;
    ck_assert_int_eq(freeair_flow_critical_pressure_ratio(k, &ratio), FREEAIR_OK);
    ck_assert_int_eq(freeair_flow_critical_coefficient(k, &coefficient), FREEAIR_OK);
    double choked = flow(1e-5, 1e6, 0.0, k);
    ck_assert_double_le(relative(choked, coefficient * 1e-5 * 1e6 / sqrt(gas_constant * 300.0)), 1e-15);
    ck_assert_double_eq(flow(1e-5, 1e6, 0.5 * ratio * 1e6, k), choked);
    ck_assert_double_le(relative(flow(1e-5, 1e6, ratio * 1e6 * (1.0 + 1e-7), k), choked), 1e-12);
    double last = choked;
    for (int j = 1; j <= 100; j++) {
      double next = flow(1e-5, 1e6, 1e6 * (ratio + (1.0 - ratio) * j / 100.0), k);
      ck_assert_double_lt(next, last);
      last = next;
    }
  }
}
END_TEST

/* As k tends to 1 the critical ratio tends to exp(-1/2), the coefficient to the same. */
START_TEST(limit_of_k_one_is_isothermal)
{
  double ratio;
  double coefficient;
  ck_assert_int_eq(freeair_flow_critical_pressure_ratio(1.0 + 1e-12, &ratio), FREEAIR_OK);
  ck_assert_int_eq(freeair_flow_critical_coefficient(1.0 + 1e-12, &coefficient), FREEAIR_OK);
  ck_assert_double_le(relative(ratio, exp(-0.5)), 1e-12);
  ck_assert_double_le(relative(coefficient, exp(-0.5)), 1e-12);
}
END_TEST

/* Flow is in proportion to area and pressure, and to one over the root of temperature. */
START_TEST(flow_scales)
{
  double a;
  double b;
  ck_assert_double_le(relative(flow(3e-5, 4e5, 2.9e5, 1.4), 3.0 * flow(1e-5, 4e5, 2.9e5, 1.4)), 1e-15);
  ck_assert_double_le(relative(flow(1e-5, 8e5, 5.8e5, 1.4), 2.0 * flow(1e-5, 4e5, 2.9e5, 1.4)), 1e-15);
  ck_assert_int_eq(freeair_flow_mass_flow(1e-5, 4e5, 300.0, 2e5, 1.4, 287.0, &a), FREEAIR_OK);
  ck_assert_int_eq(freeair_flow_mass_flow(1e-5, 4e5, 1200.0, 2e5, 1.4, 287.0, &b), FREEAIR_OK);
  ck_assert_double_le(relative(a, 2.0 * b), 1e-15);
}
END_TEST

/* Pressure and area ratio lead back to the Mach number, on the branch that is asked for. */
START_TEST(mach_numbers_return_to_the_start)
{
  for (int i = 0; i < 50; i++) {
    double k = 1.0 + spread(i % 9, 9, 1e-3, 1.0);
    double mach = spread(i, 50, 1e-3, 8.0);
    double p;
    double t;
    double rho;
    double a;
    double back;
    ck_assert_int_eq(freeair_flow_isentropic_ratios(mach, k, &p, &t, &rho, &a), FREEAIR_OK);
    ck_assert_double_le(relative(p, rho * t), 1e-13);
    ck_assert_double_ge(a, 1.0 - 1e-15);
    if (p >= 1e-12) {
      ck_assert_int_eq(freeair_flow_mach_from_pressure_ratio(p, k, &back), FREEAIR_OK);
      ck_assert_double_le(relative(back, mach), 1e-9);
    }
    if (a > 1.0 && a <= 1e6) {
      int32_t branch = mach < 1.0 ? FREEAIR_FLOW_SUBSONIC : FREEAIR_FLOW_SUPERSONIC;
      ck_assert_int_eq(freeair_flow_mach_from_area_ratio(a, branch, k, &back), FREEAIR_OK);
      ck_assert_double_le(relative(back, mach), 1e-10);
    }
  }
}
END_TEST

/* At Mach 1 the pressure is the critical one and the area least. */
START_TEST(throat_state_is_the_critical_one)
{
  double p;
  double t;
  double rho;
  double a;
  double critical;
  ck_assert_int_eq(freeair_flow_isentropic_ratios(1.0, 1.4, &p, &t, &rho, &a), FREEAIR_OK);
  ck_assert_int_eq(freeair_flow_critical_pressure_ratio(1.4, &critical), FREEAIR_OK);
  ck_assert_double_le(relative(p, critical), 1e-15);
  ck_assert_double_eq(a, 1.0);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("flow");
  tcase_add_test(tc, inverses_return_to_the_start);
  tcase_add_test(tc, small_drop_is_incompressible);
  tcase_add_test(tc, choked_flow_is_constant_and_joins_smoothly);
  tcase_add_test(tc, limit_of_k_one_is_isothermal);
  tcase_add_test(tc, flow_scales);
  tcase_add_test(tc, mach_numbers_return_to_the_start);
  tcase_add_test(tc, throat_state_is_the_critical_one);
  return run_case("flow", tc);
}
