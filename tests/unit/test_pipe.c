/* SPDX-License-Identifier: MIT */
#include <freeair/pipe.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

static double factor(double reynolds, double roughness)
{
  double f;
  int32_t status = freeair_pipe_friction_factor(reynolds, roughness, &f);
  ck_assert_int_eq(status, reynolds > 2300.0 && reynolds < 4000.0 ? FREEAIR_WARN_TRANSITION : FREEAIR_OK);
  return f;
}

/* What comes out solves the equation of Colebrook and White. */
START_TEST(the_root_is_a_root)
{
  for (int i = 0; i < 80; i++)
    for (int j = 0; j < 20; j++) {
      double reynolds = spread(i, 80, 4000.0, 1e12);
      double roughness = j == 0 ? 0.0 : spread(j, 20, 1e-8, 0.1);
      double x = 1.0 / sqrt(factor(reynolds, roughness));
      double other = -2.0 * log10(roughness / 3.7 + 2.51 * x / reynolds);
      ck_assert_double_le(fabs(other / x - 1.0), 5e-15);
    }
}
END_TEST

/* Limits: fully rough (von Karman) and smooth (Prandtl). */
START_TEST(limits_of_the_chart)
{
  for (int j = 0; j < 20; j++) {
    double roughness = spread(j, 20, 1e-4, 0.1);
    double rough = 1.0 / pow(2.0 * log10(3.7 / roughness), 2.0);
    ck_assert_double_le(fabs(factor(1e12, roughness) / rough - 1.0), 1e-5);
  }
  for (int i = 0; i < 20; i++) {
    double reynolds = spread(i, 20, 4000.0, 1e8);
    double f = factor(reynolds, 0.0);
    ck_assert_double_le(fabs(2.0 * log10(reynolds * sqrt(f) / 2.51) * sqrt(f) - 1.0), 1e-13);
  }
}
END_TEST

/* No jump from laminar to turbulent, and rougher pipes never flow easier. */
START_TEST(continuous_and_monotonic)
{
  for (int j = 0; j < 10; j++) {
    double roughness = spread(j, 10, 1e-6, 0.09);
    ck_assert_double_le(fabs(factor(2300.0 * (1.0 + 1e-12), roughness) / factor(2300.0, roughness) - 1.0), 1e-10);
    ck_assert_double_le(fabs(factor(4000.0 * (1.0 - 1e-12), roughness) / factor(4000.0, roughness) - 1.0), 1e-10);
    for (int i = 0; i < 100; i++) {
      double reynolds = spread(i, 100, 1.0, 1e9);
      ck_assert_double_ge(factor(reynolds, roughness * 1.1), factor(reynolds, roughness));
      /* more flow always takes more pressure */
      ck_assert_double_gt(factor(1.01 * reynolds, roughness) * 1.0201, factor(reynolds, roughness));
    }
  }
}
END_TEST

START_TEST(velocity_and_diameter_are_inverse)
{
  for (int i = 0; i < 50; i++) {
    double mass = spread(i, 50, 1e-6, 1e3);
    double velocity = spread((i * 7) % 50, 50, 0.01, 300.0);
    double d, back;
    ck_assert_int_eq(freeair_pipe_diameter_from_velocity(mass, velocity, 7e5, 293.0, 287.0, &d), FREEAIR_OK);
    if (d > 10.0) continue;
    ck_assert_int_eq(freeair_pipe_velocity(mass, d, 7e5, 293.0, 287.0, &back), FREEAIR_OK);
    ck_assert_double_le(fabs(back / velocity - 1.0), 1e-14);
  }
}
END_TEST

/* Each size is the answer for its own diameter, and a hair more asks for the next. */
START_TEST(sizes_in_order)
{
  const int32_t dn[] = {6, 8, 10, 15, 20, 25, 32, 40, 50, 65, 80, 100, 125, 150, 200};
  for (int32_t series = FREEAIR_PIPE_SCHEDULE_40; series <= FREEAIR_PIPE_EN_MEDIUM; series++) {
    const int n = series == FREEAIR_PIPE_EN_MEDIUM ? 14 : 15;
    for (int i = 0; i < n; i++) {
      double outer, wall, inner, found_inner;
      int32_t found;
      ck_assert_int_eq(freeair_pipe_size(series, dn[i], &outer, &wall, &inner), FREEAIR_OK);
      ck_assert(wall > 0.0 && inner > 0.0 && fabs(inner + 2.0 * wall - outer) < 1e-15);
      ck_assert_int_eq(freeair_pipe_size_from_diameter(series, inner, &found, &found_inner), FREEAIR_OK);
      ck_assert_int_eq(found, dn[i]);
      ck_assert_double_eq(found_inner, inner);
      int32_t status = freeair_pipe_size_from_diameter(series, inner * (1.0 + 1e-12), &found, &found_inner);
      if (i + 1 < n) {
        ck_assert_int_eq(status, FREEAIR_OK);
        ck_assert_int_eq(found, dn[i + 1]);
      } else {
        ck_assert_int_eq(status, FREEAIR_ERR_NOT_FOUND);
        ck_assert_int_eq(found, 0);
      }
    }
  }
  int32_t unused;
  double inner;
  ck_assert_int_eq(freeair_pipe_size_from_diameter(FREEAIR_PIPE_EN_MEDIUM, 0.0, &unused, &inner), FREEAIR_OK);
  ck_assert_int_eq(unused, 6);
}
END_TEST

/* The trade's formula and the physics agree within a third where the trade uses it: 1/2 to 3 in at 7 bar. */
START_TEST(harris_is_about_right)
{
  const int32_t dn[] = {15, 20, 25, 40, 50, 80};
  for (int i = 0; i < 6; i++) {
    double outer, wall, d, harris, darcy, reynolds;
    ck_assert_int_eq(freeair_pipe_size(FREEAIR_PIPE_SCHEDULE_40, dn[i], &outer, &wall, &d), FREEAIR_OK);
    double area = 0.25 * 3.14159265358979 * d * d;
    double mass = 10.0 * area * 8e5 / (287.05 * 293.15); /* at 10 m/s */
    double q = mass * 287.05 * 288.7 / 101325.0;
    ck_assert_int_eq(freeair_pipe_drop_harris(q, d, 30.0, 8e5, &harris), FREEAIR_OK);
    ck_assert_int_eq(freeair_pipe_reynolds(mass, d, 1.82e-5, &reynolds), FREEAIR_OK);
    ck_assert_int_eq(freeair_pipe_pressure_drop(mass, d, 30.0, factor(reynolds, 45e-6 / d), 0.0, 8e5, 293.15, 287.05,
                                                &darcy),
                     FREEAIR_OK);
    ck_assert_double_le(fabs(harris / darcy - 1.0), 0.33);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, the_root_is_a_root);
  tcase_add_test(all, limits_of_the_chart);
  tcase_add_test(all, continuous_and_monotonic);
  tcase_add_test(all, velocity_and_diameter_are_inverse);
  tcase_add_test(all, sizes_in_order);
  tcase_add_test(all, harris_is_about_right);
  return run_case("pipe", all);
}
