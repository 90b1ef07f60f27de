/* SPDX-License-Identifier: MIT */
#include <freeair/receiver.h>
#include <freeair/status.h>

#include "../suite.h"

#include <check.h>
#include <math.h>
#include <stdlib.h>

static double relative(double a, double b)
{
  return a == b ? 0.0 : fabs(a - b) / fmax(fabs(a), fabs(b));
}

/* n values from low to high, evenly spaced on a logarithmic scale */
static double spread(int i, int n, double low, double high)
{
  return low * pow(high / low, (double)i / (n - 1));
}

/* a shop unit of our invention: 270 l, 500 l/min, 8 to 10 bar gauge */
static const double volume = 0.27;
static const double supply = 500e-3 / 60.0;
static const double low = 9e5;
static const double high = 11e5;
static const double temperature = 308.0;
static const double p_ref = 1e5;
static const double t_ref = 293.15;

/* No demand gives more starts than half of the supply, where the formula for the most agrees. */
START_TEST(most_starts_come_at_half_demand)
{
  double most;
  double best = 0.0;
  double at = 0.0;
  ck_assert_int_eq(freeair_receiver_starts_maximum(volume, supply, high, low, temperature, p_ref, t_ref, &most),
                   FREEAIR_OK);
  for (int i = 1; i < 200; i++) {
    double run;
    double rest;
    double starts;
    ck_assert_int_eq(freeair_receiver_cycle(volume, supply, supply * i / 200.0, high, low, temperature, p_ref, t_ref,
                                            &run, &rest, &starts),
                     FREEAIR_OK);
    ck_assert_double_le(relative(run / (run + rest), i / 200.0), 1e-13); /* duty is the share of demand */
    ck_assert_double_le(starts, most * (1.0 + 1e-14));
    if (starts > best) best = starts, at = i / 200.0;
  }
  ck_assert_double_eq(at, 0.5);
  ck_assert_double_le(relative(best, most), 1e-14);
}
END_TEST

/* The volume for a number of starts has that number as its most. */
START_TEST(sizing_by_starts_returns_to_the_start)
{
  double v;
  double starts;
  ck_assert_int_eq(
      freeair_receiver_volume_from_starts(supply, 10.0 / 3600.0, high, low, temperature, p_ref, t_ref, &v), FREEAIR_OK);
  ck_assert_int_eq(freeair_receiver_starts_maximum(v, supply, high, low, temperature, p_ref, t_ref, &starts),
                   FREEAIR_OK);
  ck_assert_double_le(relative(starts, 10.0 / 3600.0), 1e-15);
}
END_TEST

/* The receiver for an event ends it at the lower pressure, and gives up the missing air. */
START_TEST(sizing_by_event_holds_through_the_event)
{
  double v;
  double end;
  double air;
  ck_assert_int_eq(freeair_receiver_volume_from_event(0.01, 75.0, high, low, temperature, p_ref, t_ref, &v),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_receiver_pressure_after(v, high, -0.01, 75.0, temperature, p_ref, t_ref, &end), FREEAIR_OK);
  ck_assert_double_le(relative(end, low), 1e-14);
  ck_assert_int_eq(freeair_receiver_usable_air(v, high, low, temperature, p_ref, t_ref, &air), FREEAIR_OK);
  ck_assert_double_le(relative(air, 0.01 * 75.0), 1e-14);
}
END_TEST

/* Pressure after the time of a change is the pressure that was asked for, up and down. */
START_TEST(filling_and_emptying_return_to_the_start)
{
  for (int i = 0; i < 40; i++) {
    double target = 1e5 + spread(i, 40, 1e-3, 2e6);
    double net = target > 5e5 ? 0.004 : -0.004;
    double t;
    double end;
    ck_assert_int_eq(freeair_receiver_fill_time(volume, 5e5, target, net, temperature, p_ref, t_ref, &t), FREEAIR_OK);
    ck_assert_double_ge(t, 0.0);
    ck_assert_int_eq(freeair_receiver_pressure_after(volume, 5e5, net, t, temperature, p_ref, t_ref, &end), FREEAIR_OK);
    ck_assert_double_le(relative(end, target), 1e-14);
  }
}
END_TEST

/* The free air delivery that fills the receiver is found from the time it takes. */
START_TEST(pump_up_finds_the_delivery)
{
  double t;
  double q;
  ck_assert_int_eq(freeair_receiver_fill_time(volume, 1e5, high, supply, temperature, p_ref, t_ref, &t), FREEAIR_OK);
  double t2 = temperature;
  ck_assert_int_eq(freeair_receiver_free_air_from_pump_up(volume, 1e5, temperature, high, t2, t, p_ref, t_ref, &q),
                   FREEAIR_OK);
  ck_assert_double_le(relative(q, supply), 1e-14);
  /* air that is 10 K warmer at the end is about 3 % less air */
  double warm;
  t2 += 10.0;
  ck_assert_int_eq(freeair_receiver_free_air_from_pump_up(volume, 1e5, temperature, high, t2, t, p_ref, t_ref, &warm),
                   FREEAIR_OK);
  ck_assert_double_gt(1.0 - warm / q, 0.03);
  ck_assert_double_lt(1.0 - warm / q, 0.04);
}
END_TEST

/* A receiver a fifth full of water pumps up in four fifths of the time. */
START_TEST(water_is_the_share_of_time_that_is_missing)
{
  double drained;
  double wet;
  double water;
  ck_assert_int_eq(freeair_receiver_fill_time(volume, 1e5, high, supply, temperature, p_ref, t_ref, &drained),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_receiver_fill_time(0.8 * volume, 1e5, high, supply, temperature, p_ref, t_ref, &wet),
                   FREEAIR_OK);
  ck_assert_int_eq(freeair_receiver_water_from_pump_up(volume, drained, wet, &water), FREEAIR_OK);
  ck_assert_double_le(relative(water, 0.2 * volume), 1e-13);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("receiver");
  tcase_add_test(tc, most_starts_come_at_half_demand);
  tcase_add_test(tc, sizing_by_starts_returns_to_the_start);
  tcase_add_test(tc, sizing_by_event_holds_through_the_event);
  tcase_add_test(tc, filling_and_emptying_return_to_the_start);
  tcase_add_test(tc, pump_up_finds_the_delivery);
  tcase_add_test(tc, water_is_the_share_of_time_that_is_missing);
  return run_case("receiver", tc);
}
