/* SPDX-License-Identifier: MIT */
#include <freeair/compression.h>
#include <freeair/cylinder.h>
#include <freeair/delivery.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>
#include <string.h>

static void same(double a, double b, double relative)
{
  ck_assert_msg(fabs(a - b) <= relative * fmax(fabs(a), fabs(b)), "%.17g is not %.17g", a, b);
}

static freeair_delivery_stage shop_stage(void)
{
  freeair_delivery_stage s = FREEAIR_DELIVERY_STAGE_INIT;
  s.swept_m3 = 0.0015;
  s.speed_rev_s = 15.0;
  s.clearance = 0.05;
  s.p1_pa = 98000.0;
  s.t1_k = 303.15;
  s.p2_pa = 8.3e5;
  s.p_free_pa = 101325.0;
  s.t_free_k = 293.15;
  s.r_j_kg_k = 287.05;
  s.n_expansion = 1.25;
  return s;
}

static freeair_delivery_result deliver(const freeair_delivery_stage *s)
{
  freeair_delivery_result r = FREEAIR_DELIVERY_RESULT_INIT;
  ck_assert_int_eq(freeair_delivery_of_stage(s, &r), FREEAIR_OK);
  return r;
}

START_TEST(without_losses_it_is_the_closed_form)
{
  freeair_delivery_stage s = shop_stage();
  freeair_delivery_result r = deliver(&s);
  double e;
  double fad;
  double mep;
  double back;
  ck_assert_int_eq(freeair_cylinder_volumetric_efficiency(s.p1_pa, s.p2_pa, s.clearance, s.n_expansion, &e), 0);
  same(r.efficiency_cylinder, e, 1e-15);
  same(r.efficiency_inlet, e, 1e-15);
  ck_assert_int_eq(freeair_delivery_free_air(s.swept_m3, s.speed_rev_s, e, s.p1_pa, s.t1_k, s.p_free_pa, s.t_free_k,
                                             &fad),
                   FREEAIR_OK);
  same(r.fad_m3_s, fad, 1e-14);
  same(r.m_kg_s, fad * s.p_free_pa / (s.r_j_kg_k * s.t_free_k), 1e-14);
  ck_assert_int_eq(freeair_cylinder_mean_effective_pressure(s.p1_pa, s.p2_pa, s.clearance, s.n_expansion,
                                                            s.n_expansion, &mep),
                   FREEAIR_OK);
  same(r.mep_pa, mep, 1e-15);
  same(r.indicated_w, mep * s.swept_m3 * s.speed_rev_s, 1e-15);
  ck_assert_int_eq(freeair_delivery_volumetric_efficiency(fad, s.swept_m3, s.speed_rev_s, &back), FREEAIR_OK);
  same(back, r.efficiency_free, 1e-14);
}
END_TEST

/* The work is that of the mass delivered, whatever the clearance. */
START_TEST(work_belongs_to_the_air)
{
  freeair_delivery_stage s = shop_stage();
  for (s.clearance = 0.0; s.clearance < 0.12; s.clearance += 0.02) {
    freeair_delivery_result r = deliver(&s);
    double power;
    ck_assert_int_eq(freeair_compression_power_from_mass_flow(s.r_j_kg_k, s.t1_k, s.p1_pa, s.p2_pa, s.n_expansion,
                                                              r.m_kg_s, 1.0, &power),
                     FREEAIR_OK);
    same(r.indicated_w, power, 1e-13);
  }
}
END_TEST

START_TEST(every_loss_costs)
{
  freeair_delivery_stage s = shop_stage();
  double sound = deliver(&s).fad_m3_s;
  double specific = deliver(&s).indicated_w / sound;
  freeair_delivery_stage worse = s;
  worse.t_cylinder_k = 318.0;
  ck_assert_double_lt(deliver(&worse).fad_m3_s, sound);
  same(deliver(&worse).fad_m3_s, sound * s.t1_k / 318.0, 1e-14);
  worse = s;
  worse.suction_drop_pa = 3000.0;
  ck_assert_double_lt(deliver(&worse).fad_m3_s, sound);
  ck_assert_double_gt(deliver(&worse).indicated_w / deliver(&worse).fad_m3_s, specific);
  worse = s;
  worse.discharge_drop_pa = 40000.0;
  ck_assert_double_lt(deliver(&worse).fad_m3_s, sound);
  ck_assert_double_gt(deliver(&worse).indicated_w / deliver(&worse).fad_m3_s, specific);
  worse = s;
  worse.leakage = 0.04;
  same(deliver(&worse).fad_m3_s, 0.96 * sound, 1e-14);
  same(deliver(&worse).indicated_w, deliver(&s).indicated_w, 1e-15);
}
END_TEST

/* A hot day on a mountain: less mass, and hardly less volume of the air that is there. */
START_TEST(free_air_of_the_site_hides_the_altitude)
{
  freeair_delivery_stage s = shop_stage();
  s.p1_pa = s.p_free_pa = 101325.0;
  s.t1_k = s.t_free_k = 293.15;
  freeair_delivery_result low = deliver(&s);
  s.p1_pa = s.p_free_pa = 79500.0; /* about 2000 m */
  s.t1_k = s.t_free_k = 308.15;
  freeair_delivery_result high = deliver(&s);
  ck_assert_double_lt(high.m_kg_s, 0.75 * low.m_kg_s);
  ck_assert_double_gt(high.fad_m3_s, 0.90 * low.fad_m3_s);
}
END_TEST

START_TEST(bores_return_the_flow)
{
  for (int32_t strokes = 1; strokes <= 8; strokes *= 2) {
    double bore;
    double swept;
    ck_assert_int_eq(freeair_delivery_bore_from_stroke(0.02, 0.8, 0.09, 12.0, strokes, &bore), FREEAIR_OK);
    ck_assert_int_eq(freeair_cylinder_swept_volume(bore, 0.09, &swept), FREEAIR_OK);
    same(swept * 12.0 * strokes * 0.8, 0.02, 1e-14);
    ck_assert_int_eq(freeair_delivery_bore_from_stroke_ratio(0.02, 0.8, 0.7, 12.0, strokes, &bore), FREEAIR_OK);
    ck_assert_int_eq(freeair_cylinder_swept_volume(bore, 0.7 * bore, &swept), FREEAIR_OK);
    same(swept * 12.0 * strokes * 0.8, 0.02, 1e-14);
  }
}
END_TEST

START_TEST(null_and_versions)
{
  freeair_delivery_stage s = shop_stage();
  freeair_delivery_result r = FREEAIR_DELIVERY_RESULT_INIT;
  r.fad_m3_s = 1.0;
  ck_assert_int_eq(freeair_delivery_of_stage(NULL, &r), FREEAIR_ERR_NULL);
  ck_assert(isnan(r.fad_m3_s));
  ck_assert_int_eq(freeair_delivery_of_stage(&s, NULL), FREEAIR_ERR_NULL);
  s.struct_size = 16;
  r.fad_m3_s = 1.0;
  ck_assert_int_eq(freeair_delivery_of_stage(&s, &r), FREEAIR_ERR_VERSION);
  ck_assert(isnan(r.fad_m3_s));
  s = shop_stage();
  s.flags = 1;
  ck_assert_int_eq(freeair_delivery_of_stage(&s, &r), FREEAIR_ERR_DOMAIN);
  ck_assert_uint_eq(sizeof s, FREEAIR_DELIVERY_STAGE_BASELINE);
  ck_assert_uint_eq(sizeof r, FREEAIR_DELIVERY_RESULT_BASELINE);
  /* the macro and the function agree, and nothing is given */
  freeair_delivery_stage made;
  memset(&made, 1, sizeof made);
  ck_assert_int_eq(freeair_delivery_stage_init(&made, sizeof made), FREEAIR_OK);
  freeair_delivery_stage macro = FREEAIR_DELIVERY_STAGE_INIT;
  ck_assert(isnan(macro.leakage) && isnan(made.leakage) && isnan(macro.swept_m3) && isnan(made.swept_m3));
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("delivery");
  tcase_add_test(tc, without_losses_it_is_the_closed_form);
  tcase_add_test(tc, work_belongs_to_the_air);
  tcase_add_test(tc, every_loss_costs);
  tcase_add_test(tc, free_air_of_the_site_hides_the_altitude);
  tcase_add_test(tc, bores_return_the_flow);
  tcase_add_test(tc, null_and_versions);
  return run_case("delivery", tc);
}
