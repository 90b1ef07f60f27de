/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air_ideal.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static const double gas_constant = 8.31451 / 0.02896546;

static double enthalpy(double t)
{
  double h;
  ck_assert_int_eq(freeair_dry_air_ideal_enthalpy(t, &h), FREEAIR_OK);
  return h;
}

static double entropy(double p, double t)
{
  double s;
  ck_assert_int_eq(freeair_dry_air_ideal_entropy(p, t, &s), FREEAIR_OK);
  return s;
}

/* Cengel, Boles, Thermodynamics, Table A-17, ideal-gas properties of air: h in
 * kJ/kg and s0 in kJ/(kg K), from memory. The table counts from 0 K and rests on
 * older data, so differences are compared, to 0.1 %. */
START_TEST(air_table)
{
  static const double table[][3] = {{300.0, 300.19, 1.70203},  {400.0, 400.98, 1.99194},  {500.0, 503.02, 2.21952},
                                    {600.0, 607.02, 2.40902}, {800.0, 821.95, 2.71787}, {1000.0, 1046.04, 2.96770}};
  for (size_t i = 1; i < sizeof table / sizeof table[0]; i++) {
    const double h = table[i][1] - table[0][1];
    const double s = table[i][2] - table[0][2];
    ck_assert_double_eq_tol((enthalpy(table[i][0]) - enthalpy(300.0)) / 1e3, h, 1e-3 * h);
    ck_assert_double_eq_tol((entropy(1e5, table[i][0]) - entropy(1e5, 300.0)) / 1e3, s, 1e-3 * s);
  }
}
END_TEST

START_TEST(inverses)
{
  for (double t = 60.0; t <= 2000.0; t += 3.7) {
    double found;
    ck_assert_int_eq(freeair_dry_air_ideal_temperature_from_enthalpy(enthalpy(t + 1e-6), &found), FREEAIR_OK);
    ck_assert_double_eq_tol(found, t + 1e-6, 1e-11 * t);
    for (double p = 1e-3; p <= 2e9; p *= 1e3) {
      ck_assert_int_eq(freeair_dry_air_ideal_temperature_from_entropy(p, entropy(p, t) + 1e-9, &found), FREEAIR_OK);
      ck_assert_double_eq_tol(found, t, 1e-11 * t);
    }
  }
}
END_TEST

/* There and back, in one step or two; a ratio of one changes nothing. */
START_TEST(isentropic)
{
  for (double t = 150.0; t <= 600.0; t += 15.0)
    for (double r = 0.05; r <= 50.0; r *= 1.5) {
      double hot;
      double back;
      double half;
      double whole;
      ck_assert_int_eq(freeair_dry_air_ideal_isentropic_temperature(t, r, &hot), FREEAIR_OK);
      ck_assert(r > 1.0 ? hot > t : hot < t);
      ck_assert_int_eq(freeair_dry_air_ideal_isentropic_temperature(hot, 1.0 / r, &back), FREEAIR_OK);
      ck_assert_double_eq_tol(back, t, 1e-12 * t);
      ck_assert_int_eq(freeair_dry_air_ideal_isentropic_temperature(t, sqrt(r), &half), FREEAIR_OK);
      ck_assert_int_eq(freeair_dry_air_ideal_isentropic_temperature(half, sqrt(r), &whole), FREEAIR_OK);
      ck_assert_double_eq_tol(whole, hot, 1e-12 * hot);
      ck_assert_int_eq(freeair_dry_air_ideal_isentropic_temperature(t, 1.0, &back), FREEAIR_OK);
      ck_assert_double_eq_tol(back, t, 1e-14 * t);
    }
}
END_TEST

/* Heat capacity is the slope of enthalpy, and rises with temperature above 250 K; Mayer's relation. */
START_TEST(slopes)
{
  double last = 0.0;
  for (double t = 250.0; t <= 1990.0; t += 10.0) {
    double cp;
    double k;
    ck_assert_int_eq(freeair_dry_air_ideal_heat_capacity(t, &cp), FREEAIR_OK);
    ck_assert_int_eq(freeair_dry_air_ideal_heat_capacity_ratio(t, &k), FREEAIR_OK);
    ck_assert_double_gt(cp, last);
    last = cp;
    ck_assert_double_eq_tol(cp - cp / k, gas_constant, 1e-10);
    ck_assert_double_eq_tol((enthalpy(t + 0.01) - enthalpy(t - 0.01)) / 0.02, cp, 1e-5);
    ck_assert_double_eq_tol((entropy(1e5, t + 0.01) - entropy(1e5, t - 0.01)) / 0.02, cp / t, 1e-7);
    ck_assert_double_eq_tol(entropy(1e5, t) - entropy(2e5, t), gas_constant * log(2.0), 1e-10);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, air_table);
  tcase_add_test(all, inverses);
  tcase_add_test(all, isentropic);
  tcase_add_test(all, slopes);
  return run_case("dry_air_ideal", all);
}
