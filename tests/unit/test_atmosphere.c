/* SPDX-License-Identifier: MIT */
#include <freeair/atmosphere.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double pressure(double altitude)
{
  double p;
  ck_assert_int_eq(freeair_atmosphere_pressure_from_altitude(altitude, &p), FREEAIR_OK);
  return p;
}

static double temperature(double altitude)
{
  double t;
  ck_assert_int_eq(freeair_atmosphere_temperature_from_altitude(altitude, &t), FREEAIR_OK);
  return t;
}

static double density(double altitude)
{
  double rho;
  ck_assert_int_eq(freeair_atmosphere_density_from_altitude(altitude, &rho), FREEAIR_OK);
  return rho;
}

static double geopotential(double geometric)
{
  double altitude;
  ck_assert_int_eq(freeair_atmosphere_altitude_from_geometric(geometric, &altitude), FREEAIR_OK);
  return altitude;
}

START_TEST(altitude_goes_round)
{
  for (double altitude = -5000.0; altitude <= 11000.0; altitude += 12.5) {
    double back;
    ck_assert_int_eq(freeair_atmosphere_altitude_from_pressure(pressure(altitude), &back), FREEAIR_OK);
    ck_assert_double_eq_tol(back, altitude, 1e-10);
  }
  double back;
  ck_assert_int_eq(freeair_atmosphere_altitude_from_pressure(101325.0, &back), FREEAIR_OK);
  ck_assert_double_eq(back, 0.0);
}
END_TEST

START_TEST(everything_falls_with_altitude)
{
  for (double altitude = -4999.0; altitude <= 11000.0; altitude += 1.0) {
    ck_assert(pressure(altitude) < pressure(altitude - 1.0));
    ck_assert(temperature(altitude) < temperature(altitude - 1.0));
    ck_assert(density(altitude) < density(altitude - 1.0));
  }
}
END_TEST

/* dp/dH = - rho g: the air column carries itself. */
START_TEST(hydrostatic_balance)
{
  const double step = 1.0;
  for (double altitude = -4990.0; altitude <= 10990.0; altitude += 340.0) {
    double slope = (pressure(altitude + step) - pressure(altitude - step)) / (2.0 * step);
    ck_assert_double_eq_tol(-slope / (density(altitude) * 9.80665), 1.0, 1e-7);
  }
}
END_TEST

/* US Standard Atmosphere 1976, Table I, at geometric altitude. */
START_TEST(published_at_geometric_altitude)
{
  static const struct {
    double geometric, p, half_p, t;
  } table[] = {{-2000.0, 127780.0, 5.0, 301.15}, {2000.0, 79501.0, 0.5, 275.15}, {4000.0, 61660.0, 0.5, 262.17},
               {10000.0, 26499.9, 0.05, 223.25}};
  for (size_t i = 0; i < sizeof table / sizeof table[0]; i++) {
    double altitude = geopotential(table[i].geometric);
    ck_assert_double_eq_tol(pressure(altitude), table[i].p, table[i].half_p);
    ck_assert_double_eq_tol(temperature(altitude), table[i].t, 0.005);
  }
}
END_TEST

START_TEST(geopotential_and_geometric_part_slowly)
{
  ck_assert_double_eq(geopotential(0.0), 0.0);
  for (double geometric = -5000.0; geometric <= 20000.0; geometric += 100.0) {
    double difference = geometric - geopotential(geometric);
    ck_assert_double_eq_tol(difference, geometric * geometric / (6356766.0 + geometric), 1e-10);
    ck_assert(fabs(geometric) > 3000.0 || difference < 1.5);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, altitude_goes_round);
  tcase_add_test(all, everything_falls_with_altitude);
  tcase_add_test(all, hydrostatic_balance);
  tcase_add_test(all, published_at_geometric_altitude);
  tcase_add_test(all, geopotential_and_geometric_part_slowly);
  return run_case("atmosphere", all);
}
