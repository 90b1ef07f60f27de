/* SPDX-License-Identifier: MIT */
#include "../../lib/internal/saturation.h"
#include "../suite.h"

#include <freeair/reference.h>
#include <freeair/status.h>

#include <check.h>
#include <math.h>
#include <string.h>

enum { FIRST = FREEAIR_REFERENCE_ISO_1217, LAST = FREEAIR_REFERENCE_STP };

/* IAPWS R7-97(2012), Table 35: saturation pressures to nine digits. */
START_TEST(saturation_pressure)
{
  ck_assert_double_eq_tol(freeair__saturation_pressure_pa(300.0), 0.353658941e-2 * 1e6, 0.5e-11 * 1e6);
  ck_assert_double_eq_tol(freeair__saturation_pressure_pa(500.0), 0.263889776e1 * 1e6, 0.5e-8 * 1e6);
  ck_assert_double_eq_tol(freeair__saturation_pressure_pa(600.0), 0.123443146e2 * 1e6, 0.5e-7 * 1e6);
  /* Murphy and Koop, Quarterly Journal of the Royal Meteorological Society 131
   * (2005) 1539, equation 10, over supercooled water; evaluated with mpmath. */
  ck_assert_double_eq_tol(freeair__saturation_pressure_pa(263.15), 286.45297, 286.45 * 1e-4);
  ck_assert_double_eq_tol(freeair__saturation_pressure_pa(243.15), 50.935615, 50.94 * 5e-4);
  ck_assert_double_eq_tol(freeair__saturation_pressure_pa(223.15), 6.3167773, 6.32 * 0.016);
}
END_TEST

START_TEST(every_state_is_named_and_found)
{
  for (int32_t state = FIRST; state <= LAST; state++) {
    double p;
    double t;
    double rh;
    int32_t found = 0;
    ck_assert_int_eq(freeair_reference_conditions(state, &p, &t, &rh), FREEAIR_OK);
    ck_assert(p > 99e3 && p < 102e3 && t >= 273.15 && t < 295.0 && rh >= 0.0 && rh < 1.0);
    ck_assert_uint_gt(strlen(freeair_reference_text(state)), 0);
    const char *name = freeair_reference_name(state);
    ck_assert_int_eq(strncmp(name, "FREEAIR_REFERENCE_", 18), 0);
    ck_assert_int_eq(freeair_reference_find(name, &found), FREEAIR_OK);
    ck_assert_int_eq(found, state);
    ck_assert_int_eq(freeair_reference_find(name + 18, &found), FREEAIR_OK);
    ck_assert_int_eq(found, state);
    char spoken[64] = "";
    for (size_t i = 18; name[i] != '\0'; i++) {
      char c = name[i];
      spoken[i - 18] = c == '_' ? ' ' : c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
    }
    ck_assert_int_eq(freeair_reference_find(spoken, &found), FREEAIR_OK);
    ck_assert_int_eq(found, state);
  }
  ck_assert_str_eq(freeair_reference_name(0), "");
  ck_assert_str_eq(freeair_reference_name(LAST + 1), "");
  ck_assert_str_eq(freeair_reference_text(INT32_MIN), "");
}
END_TEST

START_TEST(between_any_two_states_and_back)
{
  for (int32_t a = FIRST; a <= LAST; a++)
    for (int32_t b = FIRST; b <= LAST; b++) {
      double there;
      double back;
      ck_assert_int_eq(freeair_reference_flow_between_states(0.37, a, b, &there), FREEAIR_OK);
      ck_assert_int_eq(freeair_reference_flow_between_states(there, b, a, &back), FREEAIR_OK);
      ck_assert_double_eq_tol(back, 0.37, 0.37 * 5e-16);
      if (a == b) ck_assert_double_eq_tol(there, 0.37, 0.37 * 3e-16);
      for (int32_t c = FIRST; c <= LAST; c++) {
        double onwards;
        double direct;
        ck_assert_int_eq(freeair_reference_flow_between_states(there, b, c, &onwards), FREEAIR_OK);
        ck_assert_int_eq(freeair_reference_flow_between_states(0.37, a, c, &direct), FREEAIR_OK);
        ck_assert_double_eq_tol(onwards, direct, direct * 1e-15);
      }
    }
}
END_TEST

/* Site to state and back, over climates and altitudes. Moist air is lighter than
 * dry, and a flow of moist air has less dry air in it. */
START_TEST(site_and_back)
{
  for (double p = 60e3; p <= 110e3; p += 5e3)
    for (double t = 243.15; t <= 328.15; t += 5.0)
      for (double rh = 0.0; rh <= 1.0; rh += 0.25) {
        double reference;
        double site;
        double mass;
        double dry;
        double volume;
        double rho;
        double rho_dry;
        ck_assert_int_eq(freeair_reference_flow_to_state(0.1, p, t, rh, FREEAIR_REFERENCE_ISO_1217, &reference),
                         FREEAIR_OK);
        ck_assert_int_eq(freeair_reference_flow_from_state(reference, FREEAIR_REFERENCE_ISO_1217, p, t, rh, &site),
                         FREEAIR_OK);
        ck_assert_double_eq_tol(site, 0.1, 1e-16);
        ck_assert_int_eq(freeair_reference_mass_flow_from_volume_flow(0.1, p, t, rh, &mass, &dry), FREEAIR_OK);
        ck_assert_int_eq(freeair_reference_volume_flow_from_mass_flow(mass, p, t, rh, &volume), FREEAIR_OK);
        ck_assert_double_eq_tol(volume, 0.1, 1e-16);
        ck_assert_int_eq(freeair_reference_density(p, t, rh, &rho), FREEAIR_OK);
        ck_assert_int_eq(freeair_reference_density(p, t, 0.0, &rho_dry), FREEAIR_OK);
        ck_assert_double_eq_tol(mass, 0.1 * rho, 1e-16);
        ck_assert(rh > 0.0 ? rho < rho_dry && dry < mass : rho == rho_dry && dry == mass);
        /* the dry air is the same in both places */
        double reference_mass;
        double reference_dry;
        ck_assert_int_eq(freeair_reference_mass_flow_from_volume_flow(reference, 1e5, 293.15, 0.0, &reference_mass,
                                                                      &reference_dry),
                         FREEAIR_OK);
        ck_assert_double_eq_tol(reference_dry, dry, dry * 1e-15);
      }
}
END_TEST

/* Without vapour this is Boyle and Charles. */
START_TEST(dry_flow_follows_the_gas_laws)
{
  double q;
  ck_assert_int_eq(freeair_reference_flow_convert(1.0, 2e5, 300.0, 0.0, 1e5, 300.0, 0.0, &q), FREEAIR_OK);
  ck_assert_double_eq_tol(q, 2.0, 1e-15);
  ck_assert_int_eq(freeair_reference_flow_convert(1.0, 1e5, 300.0, 0.0, 1e5, 330.0, 0.0, &q), FREEAIR_OK);
  ck_assert_double_eq_tol(q, 1.1, 1e-15);
}
END_TEST

/* Doubling a flow doubles the answer; more humidity at the site means less at the reference. */
START_TEST(proportional_and_monotonic)
{
  double last = INFINITY;
  for (double rh = 0.0; rh <= 1.0; rh += 0.125) {
    double one;
    double two;
    ck_assert_int_eq(freeair_reference_flow_to_state(1.0, 95e3, 308.15, rh, FREEAIR_REFERENCE_NTP, &one), FREEAIR_OK);
    ck_assert_int_eq(freeair_reference_flow_to_state(2.0, 95e3, 308.15, rh, FREEAIR_REFERENCE_NTP, &two), FREEAIR_OK);
    ck_assert_double_eq(two, 2.0 * one);
    ck_assert(one < last);
    last = one;
  }
}
END_TEST

START_TEST(all_outputs_are_cleared)
{
  double a = 1.0;
  double b = 1.0;
  int32_t state = 5;
  ck_assert_int_eq(freeair_reference_conditions(1, &a, NULL, &b), FREEAIR_ERR_NULL);
  ck_assert(isnan(a) && isnan(b));
  a = 1.0;
  ck_assert_int_eq(freeair_reference_mass_flow_from_volume_flow(1.0, 1e5, 300.0, 0.0, NULL, &a), FREEAIR_ERR_NULL);
  ck_assert(isnan(a));
  ck_assert_int_eq(freeair_reference_find("no such state", &state), FREEAIR_ERR_NOT_FOUND);
  ck_assert_int_eq(state, 0);
  ck_assert_int_eq(freeair_reference_find(NULL, &state), FREEAIR_ERR_NULL);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, saturation_pressure);
  tcase_add_test(all, every_state_is_named_and_found);
  tcase_add_test(all, between_any_two_states_and_back);
  tcase_add_test(all, site_and_back);
  tcase_add_test(all, dry_flow_follows_the_gas_laws);
  tcase_add_test(all, proportional_and_monotonic);
  tcase_add_test(all, all_outputs_are_cleared);
  return run_case("reference", all);
}
