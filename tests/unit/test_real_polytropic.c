/* SPDX-License-Identifier: MIT */
#include <freeair/dry_air.h>
#include <freeair/performance.h>
#include <freeair/real_compression.h>
#include <freeair/real_polytropic.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

/* Efficiency 1 is the isentrope, whose exponent topic dry_air knows. */
START_TEST(isentropic_limit)
{
  for (double p1 = 1e3; p1 < 2e7; p1 *= 6.0)
    for (double t1 = 135.0; t1 < 900.0; t1 *= 1.4) {
      freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
      double n;
      double m;
      double x;
      double y;
      ck_assert_int_ge(freeair_dry_air_state(p1, t1, &q), 0);
      ck_assert_int_eq(freeair_real_polytropic_exponents(p1, t1, 1.0, &n, &m, &x, &y), FREEAIR_OK);
      ck_assert_double_eq_tol(n, q.isentropic_exponent, 1e-12 * n);
      ck_assert_double_eq_tol(x, t1 * q.expansion_1_k - 1.0, 1e-13 * (1.0 + fabs(x)));
      ck_assert_double_eq_tol(y, p1 * q.compressibility_1_pa, 1e-13 * y);
      for (double ratio = 1.0; ratio < 5.0; ratio *= 1.4) {
        double w;
        double head;
        double t2;
        double isentropic;
        double t;
        ck_assert_int_eq(freeair_real_polytropic_work(p1, t1, p1 * ratio, 1.0, &w, &head, &t2), FREEAIR_OK);
        ck_assert_int_eq(freeair_real_compression_isentropic(p1, t1, p1 * ratio, &isentropic, &t), FREEAIR_OK);
        ck_assert_double_eq_tol(t2, t, 1e-11 * t);
        ck_assert_double_eq_tol(w, isentropic, 1e-11 * w + 1e-300);
        ck_assert_double_eq(w, head);
      }
    }
}
END_TEST

/* The first law: the work is the rise of enthalpy. An efficiency put in comes out again. */
START_TEST(round_trip)
{
  for (double p1 = 1e4; p1 < 2e7; p1 *= 8.0)
    for (double ratio = 1.05; ratio < 5.0; ratio *= 1.5)
      for (double e = 0.35; e < 1.0; e += 0.2) {
        double w;
        double head;
        double t2;
        double found;
        double again;
        double t;
        ck_assert_int_eq(freeair_real_polytropic_work(p1, 300.0, p1 * ratio, e, &w, &head, &t2), FREEAIR_OK);
        ck_assert_int_eq(freeair_real_compression_outlet(p1, 300.0, p1 * ratio, w, 0.0, &t), FREEAIR_OK);
        ck_assert_double_eq_tol(t, t2, 1e-10 * t2);
        ck_assert_int_eq(freeair_real_polytropic_efficiency(p1, 300.0, p1 * ratio, t2, &found, &again), FREEAIR_OK);
        ck_assert_double_eq_tol(found, e, 1e-10);
        ck_assert_double_eq_tol(again, head, 1e-10 * head);
      }
}
END_TEST

/* Two compressions one after the other are one. */
START_TEST(steps_add_up)
{
  for (double middle = 1.1e5; middle < 9e5; middle += 1e5) {
    double w;
    double head;
    double t;
    double first;
    double second;
    double t1;
    ck_assert_int_eq(freeair_real_polytropic_work(1e5, 300.0, 9e5, 0.8, &w, &head, &t), FREEAIR_OK);
    ck_assert_int_eq(freeair_real_polytropic_work(1e5, 300.0, middle, 0.8, &w, &first, &t1), FREEAIR_OK);
    ck_assert_int_eq(freeair_real_polytropic_work(middle, t1, 9e5, 0.8, &w, &second, &t1), FREEAIR_OK);
    ck_assert_double_eq_tol(t1, t, 1e-11 * t);
    ck_assert_double_eq_tol(first + second, head, 1e-11 * head);
  }
}
END_TEST

/* The ideal closed form at low pressure, over a ratio so small that the heat capacity is constant. */
START_TEST(ideal_limit)
{
  for (double t1 = 200.0; t1 < 700.0; t1 += 50.0)
    for (double e = 0.5; e <= 1.0; e += 0.1) {
      freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
      double w;
      double head;
      double t2;
      double ideal;
      double schultz;
      double n;
      double f;
      ck_assert_int_ge(freeair_dry_air_state(200.0, t1, &q), 0);
      ck_assert_int_eq(freeair_real_polytropic_work(200.0, t1, 220.0, e, &w, &head, &t2), FREEAIR_OK);
      ck_assert_int_ge(freeair_performance_efficiency_polytropic_from_temperatures(q.heat_capacity_ratio, 200.0, t1,
                                                                                   220.0, t2, &ideal),
                       0);
      ck_assert_double_eq_tol(ideal, e, 5e-3);
      ck_assert_int_ge(freeair_real_polytropic_schultz(200.0, t1, 220.0, t2, &schultz, &head, &n, &f), 0);
      ck_assert_double_eq_tol(schultz, e, 2e-5);
      ck_assert_double_eq_tol(f, 1.0, 2e-5);
    }
}
END_TEST

/* Schultz is exact on the isentrope, and near the path at the ratio of one casing, from 1 bar to 10 bar. */
START_TEST(schultz_and_path)
{
  for (double p1 = 1e5; p1 < 1.1e6; p1 *= 2.0)
    for (double ratio = 1.2; ratio <= 3.0; ratio += 0.3)
      for (double e = 0.7; e <= 0.95; e += 0.05) {
        double w;
        double head;
        double t2;
        double schultz;
        double other;
        double n;
        double f;
        ck_assert_int_eq(freeair_real_compression_isentropic(p1, 300.0, p1 * ratio, &w, &t2), FREEAIR_OK);
        ck_assert_int_ge(freeair_real_polytropic_schultz(p1, 300.0, p1 * ratio, t2, &schultz, &other, &n, &f), 0);
        ck_assert_double_eq_tol(schultz, 1.0, 1e-10);
        ck_assert_double_eq_tol(other, w, 1e-10 * w);
        ck_assert_int_eq(freeair_real_polytropic_work(p1, 300.0, p1 * ratio, e, &w, &head, &t2), FREEAIR_OK);
        ck_assert_int_eq(freeair_real_polytropic_schultz(p1, 300.0, p1 * ratio, t2, &schultz, &other, &n, &f),
                         FREEAIR_OK);
        ck_assert_double_eq_tol(schultz, e, 5e-4);
        ck_assert_double_le(schultz, e);
      }
}
END_TEST

/* The exponent of a small step is the local one; losses raise both exponents. */
START_TEST(exponents)
{
  for (double p = 1e5; p < 9e7; p *= 3.0)
    for (double t = 250.0; t < 800.0; t *= 1.3) {
      double before_n = 0.0;
      double before_m = 0.0;
      for (double e = 1.0; e > 0.55; e -= 0.1) {
        double n;
        double m;
        double x;
        double y;
        double w;
        double head;
        double t2;
        double f;
        double schultz;
        double end;
        ck_assert_int_eq(freeair_real_polytropic_exponents(p, t, e, &n, &m, &x, &y), FREEAIR_OK);
        ck_assert(n > before_n && m > before_m);
        before_n = n;
        before_m = m;
        ck_assert_int_eq(freeair_real_polytropic_work(p, t, p * 1.001, e, &w, &head, &t2), FREEAIR_OK);
        ck_assert_double_eq_tol(log(t2 / t) / log(1.001), m, 2e-3 * m);
        ck_assert_int_ge(freeair_real_polytropic_schultz(p, t, p * 1.001, t2, &schultz, &head, &end, &f), 0);
        ck_assert_double_eq_tol(end, n, 2e-3 * n);
      }
    }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, isentropic_limit);
  tcase_add_test(all, round_trip);
  tcase_add_test(all, steps_add_up);
  tcase_add_test(all, ideal_limit);
  tcase_add_test(all, schultz_and_path);
  tcase_add_test(all, exponents);
  return run_case("real_polytropic", all);
}
