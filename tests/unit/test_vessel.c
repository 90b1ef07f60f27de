/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/verdict.h>
#include <freeair/vessel.h>

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

/* Available and isentropic work below isothermal work; Brode, which no expansion gives, above isentropic. */
START_TEST(energies_are_in_order)
{
  for (int i = 0; i < 60; i++) {
    double p = 1e5 * (1.0 + spread(i, 60, 1e-9, 300.0));
    double brode;
    double isentropic;
    double isothermal;
    double available;
    ck_assert_int_eq(freeair_vessel_stored_energy(p, 1e5, 0.5, 1.4, &brode, &isentropic, &isothermal, &available),
                     FREEAIR_OK);
    ck_assert_double_gt(available, 0.0);
    ck_assert_double_lt(available, isothermal);
    ck_assert_double_lt(isentropic, isothermal);
    ck_assert_double_lt(isentropic, brode);
  }
}
END_TEST

/* With little pressure the available energy is half of V dp^2 / p0, with no digit lost. */
START_TEST(small_excess_stores_the_square)
{
  for (int i = 0; i < 30; i++) {
    double p = 1e5 + spread(i, 30, 1e-4, 1.0);
    double dp = p - 1e5;
    double other;
    double available;
    ck_assert_int_eq(freeair_vessel_stored_energy(p, 1e5, 2.0, 1.4, &other, &other, &other, &available), FREEAIR_OK);
    ck_assert_double_le(relative(available, dp * dp / 1e5), 4e-6);
  }
  double nothing;
  double all;
  ck_assert_int_eq(freeair_vessel_stored_energy(1e5, 1e5, 2.0, 1.4, &all, &all, &all, &nothing), FREEAIR_OK);
  ck_assert_double_eq(nothing, 0.0);
}
END_TEST

/* The two ways to reckon the available energy agree where they meet. */
START_TEST(series_and_formula_of_the_available_energy_meet)
{
  double other;
  double below;
  double above;
  ck_assert_int_eq(freeair_vessel_stored_energy(1.25e5, 1e5, 1.0, 1.4, &other, &other, &other, &below), FREEAIR_OK);
  ck_assert_int_eq(freeair_vessel_stored_energy(nextafter(1.25e5, 2e5), 1e5, 1.0, 1.4, &other, &other, &other, &above),
                   FREEAIR_OK);
  ck_assert_double_le(relative(below, above), 1e-14);
}
END_TEST

/* The formula for tests stands within 0.1 % of the isentropic energy with k = 1.4. */
START_TEST(test_energy_is_the_isentropic_one_rounded)
{
  for (int i = 0; i < 20; i++) {
    double p = spread(i, 20, 2e5, 1e8);
    double energy;
    double tnt;
    double isentropic;
    double other;
    ck_assert_int_eq(freeair_vessel_test_energy(p, 101e3, 3.0, &energy, &tnt), FREEAIR_OK);
    ck_assert_int_eq(freeair_vessel_stored_energy(p, 101e3, 3.0, 1.4, &other, &isentropic, &other, &other), FREEAIR_OK);
    ck_assert_double_le(relative(energy, isentropic), 1e-3);
    double alone;
    ck_assert_int_eq(freeair_vessel_tnt_equivalent(energy, 4266920.0, &alone), FREEAIR_OK);
    ck_assert_double_le(relative(alone, tnt), 1e-15);
  }
}
END_TEST

/* 30 m, then 60 m at least, and never less for more energy within a floor. */
START_TEST(distance_never_falls_below_its_floor)
{
  double last = 0.0;
  for (int i = 0; i < 100; i++) {
    double d;
    double energy = spread(i, 100, 1.0, 135.5e6);
    ck_assert_int_eq(freeair_vessel_test_distance(energy, &d), FREEAIR_OK);
    ck_assert_double_ge(d, 30.0);
    ck_assert_double_ge(d, last);
    last = d;
  }
  ck_assert_int_eq(freeair_vessel_test_distance(135.6e6, &last), FREEAIR_OK);
  ck_assert_double_ge(last, 60.0);
}
END_TEST

/* The pressure that the required wall allows is the pressure it was required for. */
START_TEST(wall_and_pressure_return_to_the_start)
{
  for (int i = 0; i < 60; i++) {
    double dp = spread(i, 60, 1e4, 3e7);
    const double corrosion = 0.0015;
    const double radius = 0.3;
    double wall;
    double back;
    ck_assert_int_eq(freeair_vessel_wall_required(dp, radius, 1.2e8, 0.85, corrosion, &wall), FREEAIR_OK);
    ck_assert_int_eq(freeair_vessel_pressure_allowable(wall, radius + wall, 1.2e8, 0.85, corrosion, &back), FREEAIR_OK);
    ck_assert_double_le(relative(back, dp), 1e-11);
  }
}
END_TEST

/* The code formula asks for more than hoop stress at the allowable value, by 0.6 p / (S E). */
START_TEST(code_wall_exceeds_the_thin_wall)
{
  double wall;
  double hoop;
  double along;
  ck_assert_int_eq(freeair_vessel_wall_required(1e6, 0.3, 1.2e8, 1.0, 0.0, &wall), FREEAIR_OK);
  ck_assert_int_eq(freeair_vessel_shell_stress(1e6, 0.3, wall, &hoop, &along), FREEAIR_OK);
  ck_assert_double_le(relative(hoop, 1.2e8 - 0.6 * 1e6), 1e-13);
  ck_assert_double_eq(along, 0.5 * hoop);
}
END_TEST

/* The verdict turns firm only where the uncertainty lets it, and says so either way. */
START_TEST(relief_verdict_is_guarded)
{
  double margin;
  int32_t verdict;
  double q;
  ck_assert_int_eq(freeair_vessel_relief_capacity(7.85e-5, 0.788, 14.5e5, 310.0, 1e5, 1e5, 293.15, &q), FREEAIR_OK);
  ck_assert_double_gt(q, 0.15); /* a 10 mm valve at 13.5 bar gauge: some 10 m3/min */
  ck_assert_double_lt(q, 0.2);
  ck_assert_int_eq(freeair_vessel_relief_verdict(q, 0.02 * q, 0.05, 0.002, 0.95, &margin, &verdict), FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_MEETS);
  ck_assert_int_eq(freeair_vessel_relief_verdict(q, 0.02 * q, q, 0.002, 0.95, &margin, &verdict), FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_CANNOT_TELL);
  ck_assert_double_eq(margin, 1.0);
  ck_assert_int_eq(freeair_vessel_relief_verdict(q, 0.02 * q, 2.0 * q, 0.002, 0.95, &margin, &verdict), FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_FAILS);
  ck_assert_int_eq(freeair_vessel_relief_verdict(q, 0.0, q, 0.0, 0.95, &margin, &verdict), FREEAIR_OK);
  ck_assert_int_eq(verdict, FREEAIR_VERDICT_MEETS); /* exactly enough, exactly known */
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("vessel");
  tcase_add_test(tc, energies_are_in_order);
  tcase_add_test(tc, small_excess_stores_the_square);
  tcase_add_test(tc, series_and_formula_of_the_available_energy_meet);
  tcase_add_test(tc, test_energy_is_the_isentropic_one_rounded);
  tcase_add_test(tc, distance_never_falls_below_its_floor);
  tcase_add_test(tc, wall_and_pressure_return_to_the_start);
  tcase_add_test(tc, code_wall_exceeds_the_thin_wall);
  tcase_add_test(tc, relief_verdict_is_guarded);
  return run_case("vessel", tc);
}
