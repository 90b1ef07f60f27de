/* SPDX-License-Identifier: MIT */
#include <freeair/compression.h>
#include <freeair/dry_air.h>
#include <freeair/multistage.h>
#include <freeair/real_compression.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

#define COUNT(a) (sizeof(a) / sizeof((a)[0]))

static const double starts_pa[] = {100.0, 1e4, 1e5, 2.5e6, 4e7};
static const double starts_k[] = {133.5, 180.0, 293.15, 420.0, 900.0};
static const double ratios[] = {1.0, 1.0 + 1e-9, 1.001, 1.2, 1.3498, 1.35, 3.0, 20.0};

static freeair_dry_air_properties at(double p, double t)
{
  freeair_dry_air_properties q = FREEAIR_DRY_AIR_PROPERTIES_INIT;
  ck_assert_int_ge(freeair_dry_air_state(p, t, &q), 0);
  return q;
}

/* Equal entropy, work by enthalpy, and back again. */
START_TEST(isentrope)
{
  for (size_t i = 0; i < COUNT(starts_pa); i++)
    for (size_t j = 0; j < COUNT(starts_k); j++)
      for (size_t k = 0; k < COUNT(ratios); k++) {
        const double p1 = starts_pa[i];
        const double t1 = starts_k[j];
        const double p2 = p1 * ratios[k];
        double w;
        double t2;
        double back;
        double t;
        if (p2 > 1e8) continue;
        if (freeair_real_compression_isentropic(p1, t1, p2, &w, &t2) == FREEAIR_ERR_NO_SOLUTION) {
          ck_assert_double_gt(t1 * pow(ratios[k], 0.25), 1500.0);
          continue;
        }
        const freeair_dry_air_properties a = at(p1, t1);
        const freeair_dry_air_properties b = at(p2, t2);
        ck_assert_double_eq_tol(a.s_j_kg_k, b.s_j_kg_k, 1e-9);
        ck_assert_double_eq_tol(w, b.h_j_kg - a.h_j_kg, 1e-8 + 1e-12 * w);
        ck_assert_double_ge(w, 0.0);
        ck_assert_int_eq(freeair_real_compression_isentropic(p2, t2, p1, &back, &t), FREEAIR_OK);
        ck_assert_double_eq_tol(back, -w, 1e-11 * w + 1e-300);
        ck_assert_double_eq_tol(t, t1, 1e-12 * t1);
        /* between near pressures the work is v dp */
        if (ratios[k] < 1.01)
          ck_assert_double_eq_tol(w, (p2 - p1) * 2.0 / (a.rho_kg_m3 + b.rho_kg_m3), 1e-6 * w + 1e-300);
      }
}
END_TEST

/* At low pressure air is ideal: the closed forms, with the exponent there. */
START_TEST(ideal_limit)
{
  for (double t = 200.0; t < 600.0; t += 50.0)
    for (double ratio = 1.01; ratio < 1.3; ratio += 0.05) {
      const freeair_dry_air_properties a = at(200.0, t);
      const double r = a.p_pa / (a.rho_kg_m3 * t);
      double w;
      double real;
      double other;
      ck_assert_int_eq(freeair_real_compression_isothermal(200.0, t, 200.0 * ratio, &real, &other), FREEAIR_OK);
      ck_assert_int_eq(freeair_compression_work_isothermal(r, t, 200.0, 200.0 * ratio, &w), FREEAIR_OK);
      ck_assert_double_eq_tol(real, w, 1e-5 * w);
      ck_assert_double_eq_tol(other, w, 3e-5 * w);
      /* the exponent changes on the way by some 1e-3 of itself, the work by half of that times ln(ratio) */
      ck_assert_int_eq(freeair_real_compression_isentropic(200.0, t, 200.0 * ratio, &real, &other), FREEAIR_OK);
      ck_assert_int_eq(freeair_compression_work_isentropic(r, t, 200.0, 200.0 * ratio, a.heat_capacity_ratio, &w),
                       FREEAIR_OK);
      ck_assert_double_eq_tol(real, w, 1e-4 * w);
      double q;
      ck_assert_int_eq(freeair_real_compression_from_exponent(200.0, t, 200.0 * ratio, 1.3, &real, &q, &other),
                       FREEAIR_OK);
      ck_assert_int_eq(freeair_compression_work_polytropic(r, t, 200.0, 200.0 * ratio, 1.3, &w), FREEAIR_OK);
      ck_assert_double_eq_tol(real, w, 1e-12 * w);
      ck_assert_int_eq(freeair_compression_temperature(t, 200.0, 200.0 * ratio, 1.3, &w), FREEAIR_OK);
      ck_assert_double_eq_tol(other, w, 1e-5 * w);
    }
}
END_TEST

/* Nothing compresses for less than the isothermal, nor without cooling for less than the isentropic work. */
START_TEST(order_of_works)
{
  for (double p1 = 1e4; p1 < 1e7; p1 *= 7.0)
    for (double ratio = 1.1; ratio < 12.0; ratio *= 1.6) {
      double isothermal;
      double isentropic;
      double q;
      double t2;
      ck_assert_int_eq(freeair_real_compression_isothermal(p1, 300.0, p1 * ratio, &isothermal, &q), FREEAIR_OK);
      ck_assert_int_eq(freeair_real_compression_isentropic(p1, 300.0, p1 * ratio, &isentropic, &t2), FREEAIR_OK);
      ck_assert_double_lt(isothermal, isentropic);
      ck_assert_double_gt(q, isothermal);
      double before = isothermal;
      for (double n = 1.05; n < 2.0; n += 0.05) {
        double w;
        ck_assert_int_eq(freeair_real_compression_from_exponent(p1, 300.0, p1 * ratio, n, &w, &q, &t2), FREEAIR_OK);
        ck_assert_double_gt(w, before);
        ck_assert_double_eq_tol(at(p1 * ratio, t2).h_j_kg - at(p1, 300.0).h_j_kg, w - q, 1e-6);
        ck_assert_double_eq_tol(at(p1 * ratio, t2).rho_kg_m3, at(p1, 300.0).rho_kg_m3 * pow(ratio, 1.0 / n),
                                1e-11 * at(p1 * ratio, t2).rho_kg_m3);
        before = w;
      }
    }
}
END_TEST

START_TEST(exponent_near_one)
{
  double w;
  double q;
  double t2;
  double at_one;
  ck_assert_int_eq(freeair_real_compression_from_exponent(1e5, 300.0, 3e7, 1.0, &at_one, &q, &t2), FREEAIR_OK);
  for (int e = 4; e <= 52; e++) {
    const double step = ldexp(1.0, -e);
    ck_assert_int_eq(freeair_real_compression_from_exponent(1e5, 300.0, 3e7, 1.0 + step, &w, &q, &t2), FREEAIR_OK);
    ck_assert_double_eq_tol(w, at_one, (4.0 * step + 1e-15) * at_one);
  }
}
END_TEST

/* Throttling keeps the enthalpy, work raises it, heat lowers it; small steps follow the Joule-Thomson coefficient. */
START_TEST(first_law)
{
  for (double p1 = 1e5; p1 < 9e7; p1 *= 2.5)
    for (double t1 = 260.0; t1 < 900.0; t1 *= 1.2) {
      double t2;
      const freeair_dry_air_properties a = at(p1, t1);
      ck_assert_int_eq(freeair_real_compression_throttled(p1, t1, 1e4, &t2), FREEAIR_OK);
      ck_assert_double_eq_tol(at(1e4, t2).h_j_kg, a.h_j_kg, 1e-7);
      ck_assert_int_eq(freeair_real_compression_throttled(p1, t1, p1 * 1.0001, &t2), FREEAIR_OK);
      ck_assert_double_eq_tol(t2 - t1, 1e-4 * p1 * a.joule_thomson_k_pa,
                              1e-3 * fabs(t2 - t1) + 1e-4 * 1e-3 * p1 / (a.rho_kg_m3 * a.cp_j_kg_k) + 1e-11);
      ck_assert_int_eq(freeair_real_compression_outlet(p1, t1, p1, 300e3, 100e3, &t2), FREEAIR_OK);
      ck_assert_double_eq_tol(at(p1, t2).h_j_kg - a.h_j_kg, 200e3, 1e-6);
      ck_assert_double_gt(t2, t1);
    }
}
END_TEST

/* An efficiency put in comes out again. */
START_TEST(efficiency_returns)
{
  for (double p1 = 1e4; p1 < 1e7; p1 *= 5.0)
    for (double ratio = 1.1; ratio < 10.0; ratio *= 1.7)
      for (double wanted = 0.4; wanted < 1.0; wanted += 0.15) {
        double w;
        double t2;
        double found;
        ck_assert_int_eq(freeair_real_compression_isentropic(p1, 300.0, p1 * ratio, &w, &t2), FREEAIR_OK);
        ck_assert_int_eq(freeair_real_compression_outlet(p1, 300.0, p1 * ratio, w / wanted, 0.0, &t2), FREEAIR_OK);
        ck_assert_int_eq(freeair_real_compression_efficiency(p1, 300.0, p1 * ratio, t2, &found), FREEAIR_OK);
        ck_assert_double_eq_tol(found, wanted, 1e-10);
      }
}
END_TEST

/* The stages of the ideal gas at low pressure; the balance of the whole at any. */
START_TEST(stages)
{
  const double t[] = {290.0, 310.0, 320.0};
  const double e[] = {1.0, 0.8, 0.7};
  const double ones[] = {1.0, 1.0, 1.0};
  for (double p1 = 2e3; p1 < 2e6; p1 *= 10.0) {
    const double drop[] = {0.01 * p1, 0.05 * p1, 0.1 * p1};
    const double p[] = {3.0 * p1, 8.0 * p1, 20.0 * p1};
    double w[3];
    double t2[3];
    double q[3];
    double total;
    ck_assert_int_eq(freeair_real_compression_stages(p1, t, e, drop, p, 3, w, t2, q, &total), FREEAIR_OK);
    ck_assert_double_eq_tol(total, w[0] + w[1] + w[2], 1e-9);
    ck_assert_double_eq(q[0], 0.0);
    ck_assert_double_eq_tol(at(p[2], t2[2]).h_j_kg - at(p1 - drop[0], t[0]).h_j_kg, total - q[1] - q[2], 1e-6);
    if (p1 > 1e4) continue;
    const double n[] = {1.4, 1.4, 1.4};
    double ideal[3];
    double t_ideal[3];
    double total_ideal;
    ck_assert_int_eq(freeair_real_compression_stages(p1, t, ones, drop, p, 3, w, t2, q, &total), FREEAIR_OK);
    ck_assert_int_eq(freeair_multistage_work(287.05, p1, t, n, drop, p, 3, ideal, t_ideal, &total_ideal), FREEAIR_OK);
    ck_assert_double_eq_tol(total, total_ideal, 2e-3 * total);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, isentrope);
  tcase_add_test(all, ideal_limit);
  tcase_add_test(all, order_of_works);
  tcase_add_test(all, exponent_near_one);
  tcase_add_test(all, first_law);
  tcase_add_test(all, efficiency_returns);
  tcase_add_test(all, stages);
  return run_case("real_compression", all);
}
