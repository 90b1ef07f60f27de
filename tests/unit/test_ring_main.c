/* SPDX-License-Identifier: MIT */
#include <freeair/isothermal.h>
#include <freeair/ring_main.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { N = 7 };

static const double length[N] = {25.0, 40.0, 10.0, 60.0, 35.0, 20.0, 45.0};
static const double diameter[N] = {0.0525, 0.0525, 0.0409, 0.0409, 0.0409, 0.0525, 0.0525};
static const double offtake[N] = {0.02, 0.05, 0.01, 0.0, 0.04, 0.03, 0.0};

static int32_t whole_ring(double *flow, double *p, double *lowest)
{
  return freeair_ring_main_flows(length, diameter, offtake, N, 45e-6, 8e5, 293.15, NAN, NAN, flow, p, lowest);
}

/* Walked the other way, a ring is the same ring. */
START_TEST(mirror_image)
{
  double flow[N], p[N], lowest, flow_back[N], p_back[N], lowest_back;
  double l[N], d[N], q[N];
  for (int i = 0; i < N; i++) {
    l[i] = length[N - 1 - i];
    d[i] = diameter[N - 1 - i];
    q[i] = i + 1 < N ? offtake[N - 2 - i] : 0.0;
  }
  ck_assert_int_eq(whole_ring(flow, p, &lowest), FREEAIR_OK);
  ck_assert_int_eq(freeair_ring_main_flows(l, d, q, N, 45e-6, 8e5, 293.15, NAN, NAN, flow_back, p_back, &lowest_back),
                   FREEAIR_OK);
  ck_assert_double_le(fabs(lowest / lowest_back - 1.0), 1e-13);
  for (int i = 0; i < N; i++) ck_assert_double_le(fabs(flow[i] + flow_back[N - 1 - i]), 1e-13);
  for (int i = 0; i + 1 < N; i++) ck_assert_double_le(fabs(p[i] / p_back[N - 2 - i] - 1.0), 1e-13);
}
END_TEST

/* Nothing is lost at an offtake, the pressure closes around the ring, and it falls with the flow. */
START_TEST(laws_of_a_network)
{
  double flow[N], p[N], lowest;
  ck_assert_int_eq(whole_ring(flow, p, &lowest), FREEAIR_OK);
  double least = 8e5;
  for (int i = 0; i < N; i++) {
    double before = i == 0 ? 8e5 : p[i - 1];
    if (i > 0) ck_assert_double_le(fabs(flow[i - 1] - offtake[i - 1] - flow[i]), 1e-15);
    ck_assert(flow[i] > 0.0 ? p[i] < before : p[i] > before);
    least = fmin(least, p[i]);
    /* each piece by the topic isothermal, whose acceleration term is small here */
    freeair_isothermal_pipe one = FREEAIR_ISOTHERMAL_PIPE_INIT;
    one.length_m = length[i];
    one.diameter_m = diameter[i];
    double end, velocity, factor;
    const double high = fmax(before, p[i]);
    ck_assert_int_ge(freeair_isothermal_outlet_pressure(&one, fabs(flow[i]), high, &end, &velocity, &factor), 0);
    ck_assert_double_le(fabs(end - fmin(before, p[i])), 1e-2 * fabs(before - p[i]) + 1e-3);
  }
  ck_assert_double_eq(lowest, least);
  ck_assert_double_le(fabs(p[N - 1] / 8e5 - 1.0), 1e-15);
}
END_TEST

/* A ring never serves worse than the same pipe cut open at its last piece. */
START_TEST(ring_beats_a_dead_end)
{
  double flow[N], p[N], lowest, cut_flow[N], cut_p[N], cut_lowest;
  ck_assert_int_eq(whole_ring(flow, p, &lowest), FREEAIR_OK);
  ck_assert_int_ge(freeair_ring_main_dead_end(length, diameter, offtake, N - 1, 45e-6, 8e5, 293.15, NAN, NAN, cut_flow,
                                              cut_p, &cut_lowest),
                   0);
  ck_assert_double_lt(cut_lowest, lowest);
  double sum = 0.0;
  for (int i = 0; i < N; i++) sum += offtake[i];
  ck_assert_double_le(fabs(cut_flow[0] - sum), 1e-16);
  for (int i = 1; i + 1 < N; i++) ck_assert_double_lt(cut_p[i], cut_p[i - 1] + 1e-9);
}
END_TEST

/* With equal friction factors two legs share as their resistances say; rough pipes and much flow come close. */
START_TEST(two_legs_share)
{
  const double l[] = {80.0, 120.0};
  const double d[] = {0.04, 0.0525};
  const double q[] = {0.3, 0.0};
  double share, flow[2], p[2], lowest;
  ck_assert_int_eq(freeair_ring_main_share(l[0], d[0], l[1], d[1], &share), FREEAIR_OK);
  ck_assert_int_ge(freeair_ring_main_flows(l, d, q, 2, 1e-4, 2e6, 293.15, NAN, NAN, flow, p, &lowest), 0);
  ck_assert_double_le(fabs(flow[0] / 0.3 - share), 0.02);
  ck_assert_double_le(fabs(flow[0] - flow[1] - 0.3), 1e-15);
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, mirror_image);
  tcase_add_test(all, laws_of_a_network);
  tcase_add_test(all, ring_beats_a_dead_end);
  tcase_add_test(all, two_legs_share);
  return run_case("ring_main", all);
}
