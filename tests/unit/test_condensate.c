/* SPDX-License-Identifier: MIT */
#include <freeair/condensate.h>
#include <freeair/enhancement.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { WATER = FREEAIR_SATURATION_OVER_WATER, ICE = FREEAIR_SATURATION_OVER_ICE };
enum { NONE = FREEAIR_ENHANCEMENT_NONE, VIRIAL = FREEAIR_ENHANCEMENT_VIRIAL };

static freeair_condensate_flow inlet(double p, double t, double rh, int32_t model, int32_t over)
{
  freeair_condensate_flow f = FREEAIR_CONDENSATE_FLOW_INIT;
  ck_assert_int_eq(freeair_condensate_inlet(0.1, p, t, rh, model, over, &f), FREEAIR_OK);
  return f;
}

static freeair_condensate_flow step(freeair_condensate_flow before, double p, double t, double separation)
{
  freeair_condensate_flow f = FREEAIR_CONDENSATE_FLOW_INIT;
  ck_assert_int_eq(freeair_condensate_step(&before, p, t, separation, &f), FREEAIR_OK);
  return f;
}

/* No water is lost and none is made, whatever happens to the flow. */
START_TEST(balance)
{
  static const double way[][3] = {{3e5, 313.15, 0.9}, {9e5, 308.15, 0.95}, {8.7e5, 298.15, 0.0}, {8.5e5, 276.15, 0.99},
                                  {8.4e5, 300.15, 0.0}, {1.2e5, 260.15, 0.3}, {1e5, 293.15, 0.0}};
  for (int32_t model = NONE; model <= VIRIAL; model++)
    for (int32_t over = WATER; over <= ICE; over++)
      for (double rh = 0.1; rh <= 1.0; rh += 0.3) {
        freeair_condensate_flow f = inlet(1e5, 303.15, rh, model, over);
        for (size_t i = 0; i < sizeof way / sizeof way[0]; i++) {
          const freeair_condensate_flow g = step(f, way[i][0], way[i][1], way[i][2]);
          const double in = f.vapour_kg_s + f.liquid_kg_s;
          ck_assert_double_eq_tol(g.vapour_kg_s + g.liquid_kg_s + g.removed_kg_s, in, 1e-15 * in);
          ck_assert_double_eq_tol(f.vapour_kg_s - g.condensed_kg_s, g.vapour_kg_s, 1e-15 * in);
          ck_assert_double_eq(g.dry_kg_s, f.dry_kg_s);
          ck_assert(g.liquid_kg_s >= 0.0 && g.vapour_kg_s >= 0.0);
          /* water only where the air is saturated */
          if (g.liquid_kg_s > 0.0 && (over == WATER || g.t_k > 273.16))
            ck_assert_double_eq_tol(g.relative_humidity, 1.0, 1e-12);
          if (g.liquid_kg_s > 0.0) ck_assert_double_eq_tol(g.dew_point_k, g.t_k, 1e-9);
          f = g;
        }
      }
}
END_TEST

/* A flow may take its own place. */
START_TEST(in_place)
{
  const freeair_condensate_flow first = inlet(1e5, 303.15, 0.6, VIRIAL, WATER);
  const freeair_condensate_flow want = step(first, 8e5, 308.15, 0.9);
  freeair_condensate_flow f = first;
  ck_assert_int_eq(freeair_condensate_step(&f, 8e5, 308.15, 0.9, &f), FREEAIR_OK);
  ck_assert_double_eq(f.vapour_kg_s, want.vapour_kg_s);
  ck_assert_double_eq(f.released_w, want.released_w);
  ck_assert_double_eq(f.liquid_kg_s, want.liquid_kg_s);
}
END_TEST

/* Colder and higher means more water; with the enhancement factor more vapour goes on. */
START_TEST(monotonic)
{
  double last = INFINITY;
  for (double t = 275.0; t <= 345.0; t += 5.0) {
    double with;
    double higher;
    ck_assert_int_eq(freeair_condensate_rate(0.1, 1e5, 303.15, 0.6, 8e5, t, VIRIAL, &with), FREEAIR_OK);
    ck_assert_int_eq(freeair_condensate_rate(0.1, 1e5, 303.15, 0.6, 12e5, t, VIRIAL, &higher), FREEAIR_OK);
    ck_assert(with <= last && higher >= with);
    const double vapour = step(inlet(1e5, 303.15, 0.6, VIRIAL, WATER), 8e5, t, 1.0).vapour_kg_s;
    const double alone = step(inlet(1e5, 303.15, 0.6, NONE, WATER), 8e5, t, 1.0).vapour_kg_s;
    if (with > 0.0) ck_assert_double_gt(vapour, 1.02 * alone);
    last = with;
  }
  ck_assert_double_eq(last, 0.0);
}
END_TEST

/* Cooling at constant pressure releases sensible heat and the latent heat of what condenses. */
START_TEST(cooler_duty)
{
  const freeair_condensate_flow f = inlet(8e5, 333.15, 0.9, VIRIAL, WATER);
  const freeair_condensate_flow g = step(f, 8e5, 303.15, 1.0);
  const double sensible = f.dry_kg_s * 1017.0 * 30.0 + f.vapour_kg_s * 1900.0 * 30.0;
  const double latent = g.condensed_kg_s * 2430e3;
  ck_assert_double_eq_tol(g.released_w, sensible + latent, 0.02 * g.released_w);
  /* and heating it back takes what the separated water no longer brings less */
  const freeair_condensate_flow h = step(g, 8e5, 333.15, 0.0);
  ck_assert_double_lt(h.released_w, 0.0);
  ck_assert_double_lt(-h.released_w, g.released_w);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, balance);
  tcase_add_test(all, in_place);
  tcase_add_test(all, monotonic);
  tcase_add_test(all, cooler_duty);
  return run_case("condensate", all);
}
