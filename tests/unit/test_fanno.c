/* SPDX-License-Identifier: MIT */
#include <freeair/fanno.h>
#include <freeair/flow.h>
#include <freeair/isothermal.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

static double parameter(double mach, double k)
{
  double p;
  ck_assert_int_eq(freeair_fanno_parameter(mach, k, &p), FREEAIR_OK);
  return p;
}

START_TEST(mach_and_parameter_are_inverse)
{
  for (int i = 0; i < 30; i++) {
    double k = 1.0 + spread(i, 30, 1e-6, 1.0);
    for (int j = 0; j < 60; j++) {
      double away = spread(j, 60, 1e-6, 0.99);
      double mach;
      ck_assert_int_eq(freeair_fanno_mach_from_parameter(parameter(1.0 - away, k), FREEAIR_FLOW_SUBSONIC, k, &mach),
                       FREEAIR_OK);
      ck_assert_double_le(fabs(mach - (1.0 - away)), 1e-13);
      ck_assert_int_eq(
        freeair_fanno_mach_from_parameter(parameter(1.0 + 20.0 * away, k), FREEAIR_FLOW_SUPERSONIC, k, &mach),
        FREEAIR_OK);
      ck_assert_double_le(fabs(mach / (1.0 + 20.0 * away) - 1.0), 1e-10);
    }
  }
}
END_TEST

/* The parameter vanishes at the speed of sound, as the square of the distance, and rises to both sides. */
START_TEST(least_at_the_speed_of_sound)
{
  ck_assert_double_eq(parameter(1.0, 1.4), 0.0);
  for (int j = 0; j < 60; j++) {
    double away = spread(j, 60, 1e-12, 1e-3);
    for (int side = -1; side <= 1; side += 2) {
      double mach = 1.0 + side * away;
      double near = 4.0 / (1.4 * 2.4) * (mach - 1.0) * (mach - 1.0); /* leading term of the series */
      ck_assert_double_le(fabs(parameter(mach, 1.4) / near - 1.0), 5.0 * away + 1e-14);
    }
  }
}
END_TEST

/* The ratios are those of continuity, the gas law and constant enthalpy. */
START_TEST(ratios_keep_the_laws)
{
  for (int i = 0; i < 60; i++) {
    double mach = spread(i, 60, 0.01, 20.0);
    double p, t, rho, p0;
    ck_assert_int_eq(freeair_fanno_ratios(mach, 1.3, &p, &t, &rho, &p0), FREEAIR_OK);
    ck_assert_double_le(fabs(p / (rho * t) - 1.0), 1e-13);
    ck_assert_double_le(fabs(rho * mach * sqrt(t) - 1.0), 1e-13);
    ck_assert_double_le(fabs(t * (1.0 + 0.15 * mach * mach) / 1.15 - 1.0), 1e-13);
    double isentropic = p * pow((1.0 + 0.15 * mach * mach) / 1.15, 1.3 / 0.3);
    ck_assert_double_le(fabs(p0 / isentropic - 1.0), 1e-12);
    ck_assert_double_ge(p0, 1.0 - 1e-15);
  }
}
END_TEST

/* The flow from a vessel falls with friction, stops growing when choked, and agrees with the nozzle without it. */
START_TEST(flow_from_a_vessel)
{
  double mass, m1, m2, nozzle;
  for (int i = 0; i < 20; i++) {
    double p2 = 8e5 * (i + 0.5) / 20.0;
    ck_assert_int_eq(freeair_fanno_mass_flow(8e5, 300.0, p2, 0.02, 0.0, 1.4, 287.05, &mass, &m1, &m2), FREEAIR_OK);
    ck_assert_int_eq(freeair_flow_mass_flow(0.25 * 3.14159265358979323846 * 4e-4, 8e5, 300.0, p2, 1.4, 287.05, &nozzle),
                     FREEAIR_OK);
    ck_assert_double_le(fabs(mass / nozzle - 1.0), 1e-11);
    double last = INFINITY;
    for (int j = 0; j < 20; j++) {
      ck_assert_int_eq(freeair_fanno_mass_flow(8e5, 300.0, p2, 0.02, spread(j, 20, 1e-3, 1e4), 1.4, 287.05, &mass, &m1,
                                               &m2),
                       FREEAIR_OK);
      ck_assert(mass < last && m1 < m2 && m2 <= 1.0);
      last = mass;
    }
  }
}
END_TEST

/* The end of a pipe from its beginning, and back through the vessel. */
START_TEST(outlet_matches_the_vessel)
{
  for (int i = 1; i < 20; i++) {
    double mass, m1, m2, p2, t2, last;
    double behind = 8e5 * (0.5 + 0.025 * i);
    ck_assert_int_eq(freeair_fanno_mass_flow(8e5, 300.0, behind, 0.02, 5.0, 1.4, 287.05, &mass, &m1, &m2), FREEAIR_OK);
    double heating = 1.0 + 0.2 * m1 * m1;
    ck_assert_int_eq(freeair_fanno_outlet(mass, 8e5 * pow(heating, -3.5), 300.0 / heating, 0.02, 5.0, 1.4, 287.05, &p2,
                                          &t2, &last),
                     FREEAIR_OK);
    ck_assert_double_le(fabs(p2 / behind - 1.0), 1e-10);
    ck_assert_double_le(fabs(last / m2 - 1.0), 1e-9);
    ck_assert_double_le(fabs(t2 * (1.0 + 0.2 * m2 * m2) / 300.0 - 1.0), 1e-10);
  }
}
END_TEST

/* Slow flow has no time to notice: adiabatic and isothermal agree. */
START_TEST(slow_flow_is_isothermal_too)
{
  double mass, m1, m2, other;
  ck_assert_int_eq(freeair_fanno_mass_flow(8e5, 300.0, 7.9e5, 0.05, 2000.0, 1.4, 287.05, &mass, &m1, &m2), FREEAIR_OK);
  ck_assert_int_eq(freeair_isothermal_mass_flow(8e5, 7.9e5, 300.0, 0.05, 2001.0, 287.05, &other), FREEAIR_OK);
  ck_assert_double_le(fabs(mass / other - 1.0), 1e-5); /* 1: the pressure that makes the speed at the inlet */
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, mach_and_parameter_are_inverse);
  tcase_add_test(all, least_at_the_speed_of_sound);
  tcase_add_test(all, ratios_keep_the_laws);
  tcase_add_test(all, flow_from_a_vessel);
  tcase_add_test(all, outlet_matches_the_vessel);
  tcase_add_test(all, slow_flow_is_isothermal_too);
  return run_case("fanno", all);
}
