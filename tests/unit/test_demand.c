/* SPDX-License-Identifier: MIT */
#include <freeair/demand.h>
#include <freeair/receiver.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>

enum { N = 12 };

static const double flow[N] = {0.02, 0.11, 0.05, 0.2, 0.0, 0.08, 0.15, 0.01, 0.09, 0.12, 0.03, 0.07};
static const double duration[N] = {60, 30, 120, 15, 200, 45, 60, 90, 75, 30, 240, 20};

/* The store runs dry just once, and a smaller one would fail: the profile walked second by second for a day. */
START_TEST(the_store_suffices_and_no_less)
{
  for (double capacity = 0.06; capacity < 0.2; capacity += 0.013) {
    double store, shortage, duty;
    ck_assert_int_eq(freeair_demand_store(flow, duration, N, capacity, &store, &shortage, &duty), FREEAIR_OK);
    double left = store;
    double least = store;
    for (int round = 0; round < 50; round++)
      for (int i = 0; i < N; i++)
        for (int s = 0; s < (int)duration[i]; s++) {
          left = fmin(store, left + capacity - flow[i]);
          least = fmin(least, left);
        }
    ck_assert_double_le(fabs(least), 1e-10);
    double back;
    ck_assert_int_eq(freeair_demand_capacity(flow, duration, N, store, &back), FREEAIR_OK);
    ck_assert_double_le(fabs(back / capacity - 1.0), 1e-9);
  }
}
END_TEST

/* It does not matter where in the cycle one begins to count. */
START_TEST(a_cycle_has_no_beginning)
{
  double store, shortage, duty;
  ck_assert_int_eq(freeair_demand_store(flow, duration, N, 0.07, &store, &shortage, &duty), FREEAIR_OK);
  for (int turn = 1; turn < N; turn++) {
    double f[N], d[N], other;
    for (int i = 0; i < N; i++) {
      f[i] = flow[(i + turn) % N];
      d[i] = duration[(i + turn) % N];
    }
    ck_assert_int_eq(freeair_demand_store(f, d, N, 0.07, &other, &shortage, &duty), FREEAIR_OK);
    ck_assert_double_le(fabs(other / store - 1.0), 1e-12);
  }
}
END_TEST

/* One event is what the receiver's own rule sizes. */
START_TEST(one_event_as_the_receiver_has_it)
{
  const double f[] = {0.1, 0.0};
  const double d[] = {45.0, 600.0};
  double store, shortage, duty, v, air;
  ck_assert_int_eq(freeair_demand_store(f, d, 2, 0.04, &store, &shortage, &duty), FREEAIR_OK);
  ck_assert_int_eq(freeair_receiver_volume_from_event(0.06, 45.0, 8e5, 6e5, 303.15, 1e5, 293.15, &v), FREEAIR_OK);
  ck_assert_int_eq(freeair_receiver_usable_air(v, 8e5, 6e5, 303.15, 1e5, 293.15, &air), FREEAIR_OK);
  ck_assert_double_le(fabs(air / store - 1.0), 1e-13);
}
END_TEST

/* Many tools run as the normal distribution says; few as counting does. */
START_TEST(running_tools)
{
  int32_t k;
  double share;
  ck_assert_int_eq(freeair_demand_running(3, 0.5, 0.8, &k, &share), FREEAIR_OK);
  ck_assert_int_eq(k, 2); /* 7 of 8 patterns */
  ck_assert_double_le(fabs(share - 0.875), 1e-15);
  for (int32_t n = 1000; n <= 10000; n += 1000) {
    double mean, deviation, connected;
    const double tools = n, one = 1.0, use = 0.3;
    ck_assert_int_eq(freeair_demand_tools(&tools, &one, &use, 1, &mean, &deviation, &connected), FREEAIR_OK);
    ck_assert_int_eq(freeair_demand_running(n, 0.3, 0.95, &k, &share), FREEAIR_OK);
    ck_assert_double_le(fabs(k - (mean + 1.6449 * deviation)), 1.5);
    ck_assert_double_ge(share, 0.95);
  }
  for (int32_t n = 1; n <= 10000; n = n * 3 + 1) {
    ck_assert_int_eq(freeair_demand_running(n, 0.999999, 0.5, &k, &share), FREEAIR_OK);
    ck_assert_int_eq(k, n);
    ck_assert_int_eq(freeair_demand_running(n, 1e-300, 0.999999, &k, &share), FREEAIR_OK);
    ck_assert_int_eq(k, 0);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, the_store_suffices_and_no_less);
  tcase_add_test(all, a_cycle_has_no_beginning);
  tcase_add_test(all, one_event_as_the_receiver_has_it);
  tcase_add_test(all, running_tools);
  return run_case("demand", all);
}
