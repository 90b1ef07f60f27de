/* SPDX-License-Identifier: MIT */
#include <freeair/expectation.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "internal/check.h"
#include "internal/pumpup.h"
#include "internal/structure.h"

static const freeair_expectation_machine initial_machine = FREEAIR_EXPECTATION_MACHINE_INIT;
static const freeair_expectation_result initial_result = FREEAIR_EXPECTATION_RESULT_INIT;

static int optional(double x, double lo, double hi)
{
  return !freeair__given(x) || freeair__closed(x, lo, hi);
}

static int optional_above(double x, double hi)
{
  return !freeair__given(x) || freeair__upto(x, 0.0, hi);
}

static void set(double *field, double otherwise)
{
  *field = freeair__or(*field, otherwise);
}

static int32_t read_machine(const freeair_expectation_machine *caller, double p_end_pa, freeair_expectation_machine *m)
{
  *m = initial_machine;
  int32_t status = freeair__structure_read(m, sizeof *m, caller, FREEAIR_EXPECTATION_MACHINE_BASELINE);
  if (status < 0) return status;
  int geometry = freeair__given(m->swept_m3) && freeair__given(m->speed_rev_s);
  if (m->flags != 0u || m->reserved != 0 || m->stages < 1 || m->stages > 2 ||
      !(geometry || freeair__given(m->rated_m3_s)) || !optional_above(m->rated_m3_s, 1000.0) ||
      !optional(m->rated_pa, 1e3, 1e8) || !optional(m->rated_ambient_pa, 2e4, 2e5) ||
      !optional(m->rated_uncertainty, 0.0, 0.3) || !optional_above(m->swept_m3, 10.0) ||
      !optional_above(m->speed_rev_s, 200.0) || !optional_above(m->induction, 1.0) ||
      !optional(m->induction_uncertainty, 0.0, 0.3) || !optional_above(m->speed_ratio, 3.0) ||
      !optional(m->speed_ratio_uncertainty, 0.0, 0.3) || !optional(m->clearance, 0.0, 0.5) ||
      !optional(m->clearance_uncertainty, 0.0, 0.2) || !optional(m->n_expansion, 1.0, 2.0))
    return FREEAIR_ERR_DOMAIN;
  set(&m->rated_pa, p_end_pa);
  set(&m->rated_ambient_pa, 1e5);
  set(&m->rated_uncertainty, 0.03);
  set(&m->induction, 0.85);
  set(&m->induction_uncertainty, 0.06);
  set(&m->speed_ratio, 1.0);
  set(&m->speed_ratio_uncertainty, 0.01);
  set(&m->clearance, 0.05);
  set(&m->clearance_uncertainty, 0.015);
  set(&m->n_expansion, 1.25);
  return FREEAIR_OK;
}

/* Volumetric efficiency with respect to clearance alone. */
static double efficiency(const freeair_expectation_machine *m, double ratio)
{
  return 1.0 - m->clearance * expm1(log(ratio) / (m->n_expansion * m->stages));
}

/* A run on its way: the tank fills, and time is counted. */
typedef struct passage {
  freeair__pumpup_setup setup;
  freeair_expectation_machine machine;
  freeair__tank tank;
  double start_shift_pa; /* errors of single readings */
  double end_shift_pa;
  double drawn_m3_s; /* at an efficiency of one */
  double inflow_kg_m3; /* mass of a cubic metre drawn in */
  double p_pa;
  double t_s;
  double m_kg;
  double t_wall_k;
} passage;

static double true_pressure(const passage *p, double read_pa)
{
  return p->setup.test.p_ambient_pa + p->setup.scale * (read_pa - p->setup.ambient_read_pa);
}

static double delivery_at(const passage *p, double p_pa)
{
  return p->drawn_m3_s * efficiency(&p->machine, p_pa / p->setup.test.p_ambient_pa);
}

static int32_t begin(passage *p)
{
  const freeair_pumpup_test *t = &p->setup.test;
  const freeair_expectation_machine *m = &p->machine;
  double two_t_s[2] = {0.0, t->duration_s};
  double two_p_pa[2] = {t->p_start_pa, t->p_end_pa};
  freeair__fill_readings readings = {.t_s = two_t_s, .p_pa = two_p_pa, .n = 2, .ambient_pa = t->p_ambient_pa,
                                     .ambient_read_pa = p->setup.ambient_read_pa, .scale = p->setup.scale,
                                     .stretch = 1.0};
  freeair__fill_fit fit;
  double t_gas_k;
  int32_t status = freeair__pumpup_start(&p->setup, &readings, 0, &fit, &t_gas_k, &p->t_wall_k);
  if (status < 0) return status;
  p->tank = freeair__pumpup_tank(&p->setup);
  p->drawn_m3_s = freeair__given(m->rated_m3_s)
                      ? m->rated_m3_s / efficiency(m, m->rated_pa / m->rated_ambient_pa) * m->speed_ratio
                      : m->swept_m3 * m->speed_rev_s * m->induction * m->speed_ratio;
  if (!(p->drawn_m3_s > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  p->inflow_kg_m3 = (t->p_ambient_pa - freeair__pumpup_vapour(t)) / (FREEAIR__AIR_R * t->t_ambient_k);
  p->p_pa = true_pressure(p, t->p_start_pa) + p->start_shift_pa;
  p->t_s = 0.0;
  freeair__tank_state state = freeair__tank_at(&p->tank, p->p_pa, t_gas_k, p->t_wall_k);
  p->m_kg = state.m_kg;
  return p->p_pa > 0.0 ? FREEAIR_OK : FREEAIR_ERR_DOMAIN;
}

/* Time, mass and wall temperature gained over pressure; 0 when it no longer rises. */
static int slope(const passage *p, const double y[3], double p_pa, double f[3])
{
  freeair__tank_state state = {y[1], p_pa * p->tank.v_m3 / (FREEAIR__AIR_K - 1.0), y[2]};
  double w_kg_s = p->inflow_kg_m3 * delivery_at(p, p_pa);
  freeair__tank_state rate = freeair__tank_rate(&p->tank, &state, w_kg_s);
  double rise_pa_s = freeair__tank_pressure_rate(&p->tank, &rate);
  if (!(w_kg_s > 0.0) || !(rise_pa_s > 0.0)) return 0;
  f[0] = 1.0 / rise_pa_s;
  f[1] = w_kg_s / rise_pa_s;
  f[2] = rate.t_wall_k / rise_pa_s;
  return 1;
}

/* Goes on until the gauge would read this pressure. */
static int32_t advance(passage *p, double read_pa)
{
  double end_pa = true_pressure(p, read_pa) + p->end_shift_pa;
  double least_m3_s = delivery_at(p, fmax(end_pa, p->p_pa));
  if (!(end_pa > p->p_pa)) return FREEAIR_ERR_DOMAIN;
  if (!(least_m3_s > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  double longest_s =
      p->tank.v_m3 * (end_pa - p->p_pa) / (FREEAIR__AIR_R * p->tank.t_ambient_k * p->inflow_kg_m3 * least_m3_s);
  size_t steps = freeair__tank_steps(&p->tank, p->p_pa, end_pa, longest_s);
  if (steps == 0) return FREEAIR_ERR_NO_CONVERGENCE;
  double from_pa = p->p_pa;
  double h = (end_pa - from_pa) / (double)steps;
  double y[3] = {p->t_s, p->m_kg, p->t_wall_k};
  for (size_t i = 0; i < steps; i++) {
    double at_pa = from_pa + h * (double)i;
    double k[4][3];
    for (int s = 0; s < 4; s++) {
      double share = s == 0 ? 0.0 : s == 3 ? 1.0 : 0.5;
      double z[3];
      for (int c = 0; c < 3; c++) z[c] = y[c] + (s == 0 ? 0.0 : share * h * k[s - 1][c]);
      if (!slope(p, z, at_pa + share * h, k[s])) return FREEAIR_ERR_NO_SOLUTION;
    }
    for (int c = 0; c < 3; c++) y[c] += h / 6.0 * (k[0][c] + 2.0 * (k[1][c] + k[2][c]) + k[3][c]);
  }
  p->p_pa = end_pa;
  p->t_s = y[0];
  p->m_kg = y[1];
  p->t_wall_k = y[2];
  return FREEAIR_OK;
}

static double gas_temperature(const passage *p)
{
  return p->p_pa * p->tank.v_m3 / (p->m_kg * FREEAIR__AIR_R);
}

/* What can be in error, beyond the inputs of a test. */
enum input { RATING = FREEAIR__PUMPUP_INPUTS, INDUCTION, SPEED, CLEARANCE, START_READING, END_READING, INPUTS };
enum group { OF_MACHINE, OF_RECEIVER, OF_READINGS, GROUPS };

static int move(passage *p, int input, double sigmas)
{
  freeair_expectation_machine *m = &p->machine;
  int rated = freeair__given(m->rated_m3_s);
  double reading_pa = freeair__pumpup_model(&p->setup).reading_pa;
  switch (input) {
    case RATING: m->rated_m3_s *= exp(sigmas * m->rated_uncertainty); return rated && m->rated_uncertainty > 0.0;
    case INDUCTION:
      m->induction *= exp(sigmas * m->induction_uncertainty);
      return !rated && m->induction_uncertainty > 0.0;
    case SPEED:
      m->speed_ratio *= exp(sigmas * m->speed_ratio_uncertainty);
      return m->speed_ratio_uncertainty > 0.0;
    case CLEARANCE:
      m->clearance = fmax(m->clearance + sigmas * m->clearance_uncertainty, 0.0);
      return m->clearance_uncertainty > 0.0;
    case START_READING: p->start_shift_pa = sigmas * reading_pa; return reading_pa > 0.0;
    case END_READING: p->end_shift_pa = sigmas * reading_pa; return reading_pa > 0.0;
    /* neither of these takes part in an expectation */
    case FREEAIR__PUMPUP_TIME:
    case FREEAIR__PUMPUP_END: return 0;
    default: return freeair__pumpup_move(&p->setup, input, sigmas);
  }
}

static enum group group_of(int input)
{
  switch (input) {
    case RATING:
    case INDUCTION:
    case SPEED:
    case CLEARANCE: return OF_MACHINE;
    case START_READING:
    case END_READING:
    case FREEAIR__PUMPUP_SCALE:
    case FREEAIR__PUMPUP_BAROMETER:
    case FREEAIR__PUMPUP_AMBIENT:
    case FREEAIR__PUMPUP_HUMIDITY: return OF_READINGS;
    default: return OF_RECEIVER;
  }
}

typedef struct outcome {
  double variance_s2[GROUPS];
  double delivery_variance;
  double delivery_m3_s;
  double t_end_k;
} outcome;

/* Mean delivery of a run from its beginning. */
static double mean_delivery(const passage *p, double m_start_kg)
{
  return (p->m_kg - m_start_kg) / (p->inflow_kg_m3 * p->t_s);
}

/* Runs through n pressures: times to t_s, variances of the times added to
 * variance_s2, both of n elements, and the outcome at the last. */
static int32_t run(const passage *origin, const double *p_pa, size_t n, double *t_s, double *variance_s2, outcome *o)
{
  passage base = *origin;
  int32_t status = begin(&base);
  double m_start_kg = base.m_kg;
  for (size_t i = 0; i < n && status == FREEAIR_OK; i++) {
    status = advance(&base, p_pa[i]);
    t_s[i] = base.t_s;
    variance_s2[i] = 0.0;
  }
  if (status < 0) return status;
  o->delivery_m3_s = mean_delivery(&base, m_start_kg);
  o->t_end_k = gas_temperature(&base);
  /* the uncertainty of the start is known only now */
  passage known = *origin;
  known.setup.start_uncertainty_k = base.setup.start_uncertainty_k;
  for (int input = 0; input < INPUTS; input++) {
    passage up = known;
    passage down = known;
    if (!move(&up, input, 1.0) || !move(&down, input, -1.0)) continue;
    status = begin(&up);
    if (status == FREEAIR_OK) status = begin(&down);
    double up_start_kg = up.m_kg;
    double down_start_kg = down.m_kg;
    double half = 0.0;
    for (size_t i = 0; i < n && status == FREEAIR_OK; i++) {
      status = advance(&up, p_pa[i]);
      if (status == FREEAIR_OK) status = advance(&down, p_pa[i]);
      half = 0.5 * (up.t_s - down.t_s);
      variance_s2[i] += half * half;
    }
    if (status < 0) return status;
    o->variance_s2[group_of(input)] += half * half;
    half = 0.5 * (mean_delivery(&up, up_start_kg) - mean_delivery(&down, down_start_kg));
    o->delivery_variance += half * half;
  }
  return FREEAIR_OK;
}

/* Reads test and machine; a pressure at the end of NaN takes the test's. */
static int32_t prepare(const freeair_pumpup_test *test, const freeair_expectation_machine *machine, double p_end_pa,
                       passage *p)
{
  /* how long it took is not known yet, unless the state before depends on it */
  freeair_pumpup_test copy = FREEAIR_PUMPUP_TEST_INIT;
  int32_t status = freeair__structure_read(&copy, sizeof copy, test, FREEAIR_PUMPUP_TEST_BASELINE);
  if (status < 0) return status;
  int cycling = copy.start == FREEAIR_PUMPUP_CYCLING;
  status = freeair__pumpup_read(test, NAN, p_end_pa, cycling || freeair__given(copy.duration_s) ? NAN : 1e3, &p->setup);
  if (status < 0) return status;
  p->start_shift_pa = p->end_shift_pa = 0.0;
  return read_machine(machine, p->setup.test.p_end_pa, &p->machine);
}

static int32_t of_run(const freeair_pumpup_test *test, const freeair_expectation_machine *machine,
                      freeair_expectation_result *r)
{
  passage origin;
  int32_t status = prepare(test, machine, NAN, &origin);
  if (status < 0) return status;
  double p_end_pa = origin.setup.test.p_end_pa;
  double variance_s2;
  outcome o = {.variance_s2 = {0.0}};
  status = run(&origin, &p_end_pa, 1, &r->time_s, &variance_s2, &o);
  if (status < 0) return status;
  passage first = origin;
  status = begin(&first);
  r->time_uncertainty_s = sqrt(variance_s2);
  r->time_from_machine_s = sqrt(o.variance_s2[OF_MACHINE]);
  r->time_from_receiver_s = sqrt(o.variance_s2[OF_RECEIVER]);
  r->time_from_readings_s = sqrt(o.variance_s2[OF_READINGS]);
  r->delivery_m3_s = o.delivery_m3_s;
  r->delivery_uncertainty_m3_s = sqrt(o.delivery_variance);
  r->start_delivery_m3_s = delivery_at(&first, origin.setup.test.p_start_pa);
  r->end_delivery_m3_s = delivery_at(&first, p_end_pa);
  r->t_end_k = o.t_end_k;
  return status;
}

int32_t freeair_expectation_of_run(const freeair_pumpup_test *test, const freeair_expectation_machine *machine,
                                   freeair_expectation_result *result)
{
  if (result == NULL) return FREEAIR_ERR_NULL;
  freeair_expectation_result r = initial_result;
  int32_t status = test == NULL || machine == NULL ? FREEAIR_ERR_NULL : of_run(test, machine, &r);
  if (status < 0) r = initial_result;
  int32_t written = freeair__structure_write(result, &r, sizeof r, FREEAIR_EXPECTATION_RESULT_BASELINE);
  return status < 0 ? status : written;
}

int32_t freeair_expectation_times(const freeair_pumpup_test *test, const freeair_expectation_machine *machine,
                                  const double *p_pa, size_t n, double *t_s, double *t_uncertainty_s)
{
  if (test == NULL || machine == NULL || p_pa == NULL || t_s == NULL || t_uncertainty_s == NULL)
    return FREEAIR_ERR_NULL;
  passage origin;
  int32_t status = FREEAIR_OK;
  for (size_t i = 0; i < n; i++)
    if (!freeair__closed(p_pa[i], 1e3, 1e8)) status = FREEAIR_ERR_DOMAIN;
  if (status == FREEAIR_OK && n == 0) status = FREEAIR_ERR_DATA;
  for (size_t i = 1; i < n && status == FREEAIR_OK; i++)
    if (!(p_pa[i] > p_pa[i - 1])) status = FREEAIR_ERR_DATA;
  if (status == FREEAIR_OK) status = prepare(test, machine, p_pa[n - 1], &origin);
  if (status == FREEAIR_OK && !(p_pa[0] > origin.setup.test.p_start_pa)) status = FREEAIR_ERR_DATA;
  outcome o = {.variance_s2 = {0.0}};
  if (status == FREEAIR_OK) status = run(&origin, p_pa, n, t_s, t_uncertainty_s, &o);
  for (size_t i = 0; i < n; i++) {
    t_uncertainty_s[i] = status < 0 ? NAN : sqrt(t_uncertainty_s[i]);
    if (status < 0) t_s[i] = NAN;
  }
  return status;
}

int32_t freeair_expectation_compare(double found_m3_s, double found_uncertainty_m3_s, double expected_m3_s,
                                    double expected_uncertainty_m3_s, double required_ratio, double confidence,
                                    double *ratio, double *ratio_uncertainty, int32_t *verdict)
{
  freeair__set_nan(ratio);
  freeair__set_nan(ratio_uncertainty);
  if (verdict != NULL) *verdict = FREEAIR_VERDICT_CANNOT_TELL;
  if (ratio == NULL || ratio_uncertainty == NULL || verdict == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(found_m3_s, 0.0, 1e6) || !freeair__closed(found_uncertainty_m3_s, 0.0, 1e6) ||
      !freeair__closed(expected_m3_s, 1e-9, 1e6) || !freeair__closed(expected_uncertainty_m3_s, 0.0, 1e6) ||
      !freeair__upto(required_ratio, 0.0, 2.0) || !freeair__open(confidence, 0.5, 1.0))
    return FREEAIR_ERR_DOMAIN;
  double r = found_m3_s / expected_m3_s;
  double u = hypot(found_uncertainty_m3_s, r * expected_uncertainty_m3_s) / expected_m3_s;
  int32_t status = freeair_verdict_decide(r, u, required_ratio, INFINITY, confidence, verdict);
  if (status < 0) return status;
  *ratio = r;
  *ratio_uncertainty = u;
  return status;
}
