/* SPDX-License-Identifier: MIT */
/* What the generic ways of calling cost, as ratios to a loop of direct calls in
 * the same run: freeair_map over arrays, and freeair_function_call one by one. */
#include <freeair/freeair.h>

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { N = 200000, ROUNDS = 15 };

static double now(void)
{
  struct timespec t;
  timespec_get(&t, TIME_UTC);
  return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

static int by_value(const void *a, const void *b)
{
  const double x = *(const double *)a;
  const double y = *(const double *)b;
  return (x > y) - (x < y);
}

static double altitude_m[N];
static double out_pa[N];
static int32_t status[N];

static void direct(void)
{
  for (size_t i = 0; i < N; i++) status[i] = freeair_atmosphere_pressure_from_altitude(altitude_m[i], &out_pa[i]);
}

static void mapped(const freeair_function *f)
{
  char *args[2] = {(char *)altitude_m, (char *)out_pa};
  const ptrdiff_t steps[2] = {sizeof altitude_m[0], sizeof out_pa[0]};
  freeair_map(f, N, args, steps, status);
}

static void called(const freeair_function *f)
{
  for (size_t i = 0; i < N; i++) status[i] = freeair_function_call(f, &altitude_m[i], 1, &out_pa[i], 1);
}

int main(void)
{
  const freeair_function *f = freeair_function_find("freeair_atmosphere_pressure_from_altitude");
  double map_ratio[ROUNDS];
  double call_ratio[ROUNDS];
  double each = 1e9;
  if (f == NULL) return 1;
  for (size_t i = 0; i < N; i++) altitude_m[i] = -5000.0 + 16000.0 * (double)i / N;
  for (int i = 0; i < ROUNDS; i++) {
    const double t0 = now();
    direct();
    const double t1 = now();
    mapped(f);
    const double t2 = now();
    called(f);
    const double t3 = now();
    map_ratio[i] = (t2 - t1) / (t1 - t0);
    call_ratio[i] = (t3 - t2) / (t1 - t0);
    if ((t1 - t0) / N < each) each = (t1 - t0) / N;
  }
  qsort(map_ratio, ROUNDS, sizeof map_ratio[0], by_value);
  qsort(call_ratio, ROUNDS, sizeof call_ratio[0], by_value);
  printf("atmosphere_pressure_from_altitude, %d elements, median of %d rounds (direct call %.0f ns)\n", N, ROUNDS,
         1e9 * each);
  printf("  freeair_map           / loop of direct calls  %.2f\n", map_ratio[ROUNDS / 2]);
  printf("  freeair_function_call / loop of direct calls  %.2f\n", call_ratio[ROUNDS / 2]);
  return 0;
}
