/* SPDX-License-Identifier: MIT */
/* One revolution by the embedded pair of Dormand and Prince, orders 5 and 4. */
#include "balance.h"

#include <math.h>
#include <string.h>

enum { STAGES = 7, MOST_STEPS = 400000 };

static const double turn = 6.28318530717958647693;
static const double tolerance = 1e-6;

static const double weights[STAGES][STAGES - 1] = {
    {0},
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}};
static const double nodes[STAGES] = {0, 0.2, 0.3, 0.8, 8.0 / 9, 1, 1};
static const double error_weights[STAGES] = {71.0 / 57600,    0,          -71.0 / 16695, 71.0 / 1920,
                                             -17253.0 / 339200, 22.0 / 525, -1.0 / 40};

/* Rates at the stages; the last stage of a step is the first of the next. */
typedef struct stages {
  double state[STAGES][MOST_STATES];
  double sums[STAGES][N_SUMS];
} stages;

/* The new state after a step; 0 when the machine runs empty on the way. */
static int try_step(const pump *c, double angle, double h, const double *state, stages *k, double *next)
{
  for (int s = 1; s < STAGES; s++) {
    for (int i = 0; i < c->n_states; i++) {
      double slope = 0.0;
      for (int j = 0; j < s; j++) slope += weights[s][j] * k->state[j][i];
      next[i] = state[i] + h * slope;
    }
    if (!pump_rates(c, angle + nodes[s] * h, next, k->state[s], k->sums[s])) return 0;
  }
  return 1;
}

static double error_of(double h, const stages *k, int i)
{
  double slope = 0.0;
  for (int j = 0; j < STAGES; j++) slope += error_weights[j] * k->state[j][i];
  return fabs(h * slope);
}

/* Largest error over its tolerance. A reed's rate is not held to any: its lift is. */
static double relative_error(const pump *c, double h, const stages *k, const double *next)
{
  double most = 0.0;
  for (int i = 0; i < 2 * c->n_volumes; i++) {
    double floor = (i % 2 == 1 ? c->displaced_j : c->displaced_kg) * 0.02;
    most = fmax(most, error_of(h, k, i) / (tolerance * (next[i] + floor)));
  }
  for (int i = 2 * c->n_volumes; i < c->n_states; i += 2)
    most = fmax(most, error_of(h, k, i) / (tolerance * 30.0));
  return most;
}

static void integrate_sums(double h, const stages *k, double *sums)
{
  for (int i = 0; i < N_SUMS; i++) {
    double slope = 0.0;
    for (int j = 0; j < STAGES - 1; j++) slope += weights[STAGES - 1][j] * k->sums[j][i];
    sums[i] += h * slope;
  }
}

static void note_interstage(pump *c, const double *state)
{
  if (c->n_hp == 0) return;
  double kg = state[2 * c->intercooler];
  double k = air_temperature(&c->gas, state[2 * c->intercooler + 1] / kg);
  double pa = kg * c->gas.gas_j_kg_k * k / c->m->intercooler_m3;
  c->interstage_min_pa = fmin(c->interstage_min_pa, pa);
  c->interstage_max_pa = fmax(c->interstage_max_pa, pa);
}

int pump_revolve(pump *c, double *state, double *sums)
{
  stages k;
  double next[MOST_STATES];
  double angle = 0.0;
  double h = turn / 1440.0;
  memset(sums, 0, N_SUMS * sizeof *sums);
  c->interstage_min_pa = INFINITY;
  c->interstage_max_pa = 0.0;
  if (!pump_rates(c, angle, state, k.state[0], k.sums[0])) return 0;
  note_interstage(c, state);
  for (int steps = 0; steps < MOST_STEPS; steps++) {
    int last = angle + h >= turn * (1.0 - 1e-12);
    if (last) h = turn - angle;
    double error = try_step(c, angle, h, state, &k, next) ? relative_error(c, h, &k, next) : 1e6;
    if (error <= 1.0) {
      integrate_sums(h, &k, sums);
      memcpy(state, next, (size_t)c->n_states * sizeof *state);
      memcpy(k.state[0], k.state[STAGES - 1], sizeof k.state[0]);
      memcpy(k.sums[0], k.sums[STAGES - 1], sizeof k.sums[0]);
      angle += h;
      note_interstage(c, state);
      if (last) return 1;
    }
    if (!isfinite(error)) error = 1e6;
    h *= fmin(4.0, fmax(0.15, 0.9 * pow(error + 1e-10, -0.2)));
    h = fmin(h, turn / 240.0);
  }
  return 0;
}
