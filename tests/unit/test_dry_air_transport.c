/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air.h>
#include <freeair/dry_air_transport.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* By pressure and by the density at that pressure is the same. */
START_TEST(pressure_or_density)
{
  for (double t = 140.0; t <= 2000.0; t *= 1.2)
    for (double p = 1e3; p <= 1e9; p *= 5.0) {
      double rho;
      double a;
      double b;
      const int32_t want = p > 1e8 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
      ck_assert_int_eq(freeair_dry_air_density(p, t, &rho), FREEAIR_OK);
      ck_assert_int_eq(freeair_dry_air_transport_viscosity(p, t, &a), want);
      ck_assert_int_eq(freeair_dry_air_transport_viscosity_from_density(rho, t, &b), want);
      ck_assert_double_eq(a, b);
      ck_assert_int_eq(freeair_dry_air_transport_conductivity(p, t, &a), want);
      ck_assert_int_eq(freeair_dry_air_transport_conductivity_from_density(rho, t, &b), want);
      ck_assert_double_eq(a, b);
    }
}
END_TEST

/* Sutherland's law with the constants of the US Standard Atmosphere 1976, equation 51: within 1.5 %. */
START_TEST(sutherland)
{
  for (double t = 200.0; t <= 500.0; t += 10.0) {
    double eta;
    ck_assert_int_eq(freeair_dry_air_transport_viscosity(1e5, t, &eta), FREEAIR_OK);
    const double law = 1.458e-6 * t * sqrt(t) / (t + 110.4);
    ck_assert_double_eq_tol(eta, law, 0.015 * law);
  }
}
END_TEST

/* Dilute gas conducts and resists better when hotter; pressure adds to both. */
START_TEST(monotonic)
{
  double eta_last = 0.0;
  double lambda_last = 0.0;
  for (double t = 70.0; t <= 2000.0; t += 10.0) {
    double eta;
    double lambda;
    double dense;
    ck_assert_int_eq(freeair_dry_air_transport_viscosity_from_density(0.0, t, &eta), FREEAIR_OK);
    ck_assert_int_eq(freeair_dry_air_transport_conductivity_from_density(0.0, t, &lambda), FREEAIR_OK);
    ck_assert(eta > eta_last && lambda > lambda_last);
    eta_last = eta;
    lambda_last = lambda;
    if (t < 273.0 || t > 500.0) continue;
    ck_assert_int_eq(freeair_dry_air_transport_viscosity(1e6, t, &dense), FREEAIR_OK);
    ck_assert_double_gt(dense, eta);
    ck_assert_int_eq(freeair_dry_air_transport_conductivity(1e6, t, &dense), FREEAIR_OK);
    ck_assert_double_gt(dense, lambda);
  }
}
END_TEST

/* The enhancement is a peak at the critical density, at the temperature that the table of 2004 shows it. */
START_TEST(critical_enhancement)
{
  const double rho = 10400.0 * 0.02896546;
  double near;
  double far;
  ck_assert_int_eq(freeair_dry_air_transport_conductivity_from_density(rho, 132.64, &near), FREEAIR_OK);
  ck_assert_int_eq(freeair_dry_air_transport_conductivity_from_density(rho, 180.0, &far), FREEAIR_OK);
  ck_assert_double_gt(near, 1.5 * far);
  /* nothing jumps where the enhancement begins */
  double above;
  double below;
  ck_assert_int_eq(freeair_dry_air_transport_conductivity_from_density(50.0, 265.2621, &above), FREEAIR_OK);
  ck_assert_int_eq(freeair_dry_air_transport_conductivity_from_density(50.0, 265.2619, &below), FREEAIR_OK);
  ck_assert_double_eq_tol(above, below, 1e-5 * above);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, pressure_or_density);
  tcase_add_test(all, sutherland);
  tcase_add_test(all, monotonic);
  tcase_add_test(all, critical_enhancement);
  return run_case("dry_air_transport", all);
}
