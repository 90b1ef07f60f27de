/* SPDX-License-Identifier: MIT */
#include <freeair/pumpup.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/pumpup.h"
#include "internal/saturation.h"
#include "internal/structure.h"

#define PARAMETERS FREEAIR__FILL_PARAMETERS

static const freeair_pumpup_result initial_result = FREEAIR_PUMPUP_RESULT_INIT;

/* What one set of inputs gives. */
typedef struct outcome {
  double t_start_k;
  double t_wall_start_k;
  double t_end_k;
  double mass_kg;
  double mass_flow_kg_s;
  double delivery_m3_s;
  double plain_m3_s;
  double bias;
} outcome;

/* Both temperatures measured, two readings: nothing is left to a model. */
static void take_readings(const freeair__pumpup_setup *setup, const freeair__fill_readings *readings,
                          freeair__fill_fit *fit)
{
  freeair__fill_model model = freeair__pumpup_model(setup);
  freeair__fill_fit none = {.duration_s = freeair__fill_time(readings, 1),
                            .p_start_pa = freeair__fill_pressure(readings, 0),
                            .p_end_pa = freeair__fill_pressure(readings, 1),
                            .t_end_k = NAN,
                            .scatter_pa = model.reading_pa,
                            .end.t_wall_k = NAN};
  none.p_start_gradient[0] = 1.0;
  none.p_end_gradient[1] = 1.0;
  none.from_readings[0][0] = none.from_readings[1][1] = model.reading_pa * model.reading_pa;
  *fit = none;
}

static int needs_model(const freeair__pumpup_setup *setup, const freeair__fill_readings *readings)
{
  return readings->n > 2 || !freeair__given(setup->test.t_start_k) || !freeair__given(setup->test.t_end_k);
}

static int32_t evaluate(freeair__pumpup_setup *setup, freeair__fill_readings *readings, int warm,
                        freeair__fill_fit *fit, outcome *o)
{
  const freeair_pumpup_test *t = &setup->test;
  readings->ambient_pa = t->p_ambient_pa;
  readings->ambient_read_pa = setup->ambient_read_pa;
  readings->scale = setup->scale;
  readings->stretch = setup->stretch;
  int32_t status;
  if (needs_model(setup, readings)) {
    status = freeair__pumpup_start(setup, readings, warm, fit, &o->t_start_k, &o->t_wall_start_k);
    if (status < 0) return status;
    freeair__fill_model model = freeair__pumpup_model(setup);
    model.t_start_k = o->t_start_k;
    model.t_wall_start_k = o->t_wall_start_k;
    status = freeair__fill_fit_run(&model, readings, warm || t->start == FREEAIR_PUMPUP_CYCLING, fit);
    if (status < 0) return status;
  } else {
    take_readings(setup, readings, fit);
    o->t_start_k = t->t_start_k + setup->start_offset_k;
    o->t_wall_start_k = NAN;
    setup->start_uncertainty_k = t->t_gas_uncertainty_k;
  }
  o->t_end_k = freeair__or(t->t_end_k, fit->t_end_k);
  double gain = setup->v_gas_m3 * (freeair__pumpup_dry(t, fit->p_end_pa) / o->t_end_k -
                                   freeair__pumpup_dry(t, fit->p_start_pa) / o->t_start_k);
  o->mass_kg = gain / FREEAIR__AIR_R;
  if (!(o->mass_kg > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  o->mass_flow_kg_s = o->mass_kg / fit->duration_s;
  o->delivery_m3_s = gain * t->t_ambient_k / ((t->p_ambient_pa - freeair__pumpup_vapour(t)) * fit->duration_s);
  o->plain_m3_s = setup->v_gas_m3 * (fit->p_end_pa - fit->p_start_pa) / (t->p_ambient_pa * fit->duration_s);
  o->bias = o->plain_m3_s / o->delivery_m3_s - 1.0;
  return FREEAIR_OK;
}

/* Variances of the outcome, and the contributions to the delivery. */
typedef struct budget {
  double delivery;
  double mass_flow;
  double bias;
  double t_end;
  double contribution[FREEAIR__PUMPUP_INPUTS];
  double from_readings;
  double from_course;
} budget;

/* The two sources that act through the fitted parameters. */
static double through_fit(const freeair__fill_fit *fit, const outcome *o, const freeair__pumpup_setup *setup,
                          const double covariance[PARAMETERS][PARAMETERS], budget *b)
{
  double mass[PARAMETERS];
  double bias[PARAMETERS];
  double v_r = setup->v_gas_m3 / FREEAIR__AIR_R;
  int end_given = freeair__given(setup->test.t_end_k);
  for (size_t i = 0; i < PARAMETERS; i++) {
    double rise = fit->p_end_gradient[i] - fit->p_start_gradient[i];
    double t_end = end_given ? 0.0 : fit->t_end_gradient[i];
    mass[i] = v_r * (fit->p_end_gradient[i] / o->t_end_k - fit->p_end_pa * t_end / (o->t_end_k * o->t_end_k) -
                     fit->p_start_gradient[i] / o->t_start_k);
    bias[i] = (1.0 + o->bias) * (rise / (fit->p_end_pa - fit->p_start_pa) - mass[i] / o->mass_kg);
  }
  double u_mass = freeair__fill_uncertainty(covariance, mass) / o->mass_kg;
  double u_bias = freeair__fill_uncertainty(covariance, bias);
  double u_t_end = end_given ? 0.0 : freeair__fill_uncertainty(covariance, fit->t_end_gradient);
  b->delivery += u_mass * u_mass * o->delivery_m3_s * o->delivery_m3_s;
  b->mass_flow += u_mass * u_mass * o->mass_flow_kg_s * o->mass_flow_kg_s;
  b->bias += u_bias * u_bias;
  b->t_end += u_t_end * u_t_end;
  return u_mass * o->delivery_m3_s;
}

static int32_t propagate(const freeair__pumpup_setup *setup, freeair__fill_readings *readings,
                         const freeair__fill_fit *fit, budget *b)
{
  for (int input = 0; input < FREEAIR__PUMPUP_INPUTS; input++) {
    outcome o[2];
    int moved = 1;
    for (int side = 0; side < 2 && moved; side++) {
      freeair__pumpup_setup s = *setup;
      freeair__fill_fit f = *fit;
      moved = freeair__pumpup_move(&s, input, side == 0 ? 1.0 : -1.0);
      int32_t status = moved ? evaluate(&s, readings, 1, &f, &o[side]) : FREEAIR_OK;
      if (status < 0) return status;
    }
    if (!moved) continue;
    double delivery = 0.5 * (o[0].delivery_m3_s - o[1].delivery_m3_s);
    double mass_flow = 0.5 * (o[0].mass_flow_kg_s - o[1].mass_flow_kg_s);
    double bias = 0.5 * (o[0].bias - o[1].bias);
    double t_end = 0.5 * (o[0].t_end_k - o[1].t_end_k);
    b->contribution[input] = fabs(delivery);
    b->delivery += delivery * delivery;
    b->mass_flow += mass_flow * mass_flow;
    b->bias += bias * bias;
    b->t_end += t_end * t_end;
  }
  return FREEAIR_OK;
}

/* Dry air in a cubic metre at the reference state; NaN without one. */
static double reference_density(const freeair_pumpup_test *t)
{
  if (!freeair__given(t->p_reference_pa) || !freeair__given(t->t_reference_k)) return NAN;
  double vapour_pa =
      t->humidity_reference > 0.0 ? t->humidity_reference * freeair__saturation_pressure_pa(t->t_reference_k) : 0.0;
  return (t->p_reference_pa - vapour_pa) / (FREEAIR__AIR_R * t->t_reference_k);
}

static int32_t analyse(const freeair_pumpup_test *caller, const double *t_s, const double *p_pa, size_t n,
                       freeair_pumpup_result *r)
{
  freeair__pumpup_setup setup;
  int32_t status = n > 0 ? freeair__pumpup_read(caller, p_pa[0], p_pa[n - 1], t_s[n - 1] - t_s[0], &setup)
                         : freeair__pumpup_read(caller, NAN, NAN, NAN, &setup);
  if (status < 0) return status;
  const freeair_pumpup_test *t = &setup.test;
  double two_t_s[2] = {0.0, t->duration_s};
  double two_p_pa[2] = {t->p_start_pa, t->p_end_pa};
  freeair__fill_readings readings = {.t_s = n > 0 ? t_s : two_t_s, .p_pa = n > 0 ? p_pa : two_p_pa, .n = n > 0 ? n : 2};

  freeair__fill_fit fit;
  outcome o;
  double density_kg_m3 = reference_density(t);
  if (islessequal(density_kg_m3, 0.0)) return FREEAIR_ERR_DOMAIN; /* all of it vapour */
  status = evaluate(&setup, &readings, 0, &fit, &o);
  if (status < 0) return status;
  budget b = {.delivery = 0.0};
  b.from_readings = through_fit(&fit, &o, &setup, (const double(*)[PARAMETERS])fit.from_readings, &b);
  b.from_course = through_fit(&fit, &o, &setup, (const double(*)[PARAMETERS])fit.from_course, &b);
  status = propagate(&setup, &readings, &fit, &b);
  if (status < 0) return status;

  int modelled = needs_model(&setup, &readings);
  double exchange = 0.0;
  for (int i = FREEAIR__PUMPUP_UA_GAS; i <= FREEAIR__PUMPUP_C_WALL; i++)
    exchange += b.contribution[i] * b.contribution[i];
  r->mass_kg = o.mass_kg;
  r->mass_flow_kg_s = o.mass_flow_kg_s;
  r->mass_flow_uncertainty_kg_s = sqrt(b.mass_flow);
  r->delivery_m3_s = o.delivery_m3_s;
  r->delivery_uncertainty_m3_s = sqrt(b.delivery);
  r->reference_m3_s = o.mass_flow_kg_s / density_kg_m3;
  r->reference_uncertainty_m3_s = sqrt(b.mass_flow) / density_kg_m3;
  r->plain_m3_s = o.plain_m3_s;
  r->bias = o.bias;
  r->bias_uncertainty = sqrt(b.bias);
  r->p_start_pa = fit.p_start_pa;
  r->p_end_pa = fit.p_end_pa;
  r->duration_s = fit.duration_s;
  r->t_start_k = o.t_start_k;
  r->t_end_k = o.t_end_k;
  r->t_end_uncertainty_k = sqrt(b.t_end);
  r->t_wall_start_k = o.t_wall_start_k;
  r->t_wall_end_k = modelled ? fit.end.t_wall_k : NAN;
  r->fall = modelled ? fit.theta[2] : NAN;
  r->fall_uncertainty = modelled ? sqrt(fit.from_readings[2][2] + fit.from_course[2][2]) : NAN;
  r->scatter_pa = fit.scatter_pa;
  r->from_volume_m3_s = b.contribution[FREEAIR__PUMPUP_VOLUME];
  r->from_readings_m3_s = b.from_readings;
  r->from_scale_m3_s = b.contribution[FREEAIR__PUMPUP_SCALE];
  r->from_time_m3_s = b.contribution[FREEAIR__PUMPUP_TIME];
  r->from_barometer_m3_s = b.contribution[FREEAIR__PUMPUP_BAROMETER];
  r->from_ambient_m3_s = b.contribution[FREEAIR__PUMPUP_AMBIENT];
  r->from_humidity_m3_s = b.contribution[FREEAIR__PUMPUP_HUMIDITY];
  r->from_start_m3_s = b.contribution[FREEAIR__PUMPUP_START];
  r->from_end_m3_s = b.contribution[FREEAIR__PUMPUP_END];
  r->from_inlet_m3_s = b.contribution[FREEAIR__PUMPUP_INLET];
  r->from_exchange_m3_s = sqrt(exchange);
  r->from_course_m3_s = b.from_course;
  return t->p_end_pa > 1e7 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

/* Rows in range; times that increase and a pressure that has risen. */
static int32_t check_table(const double *t_s, const double *p_pa, size_t n)
{
  for (size_t i = 0; i < n; i++)
    if (!freeair__closed(t_s[i], -1e12, 1e12) || !freeair__closed(p_pa[i], 1e3, 1e8)) return FREEAIR_ERR_DOMAIN;
  if (n < 2 || !(p_pa[n - 1] > p_pa[0])) return FREEAIR_ERR_DATA;
  for (size_t i = 1; i < n; i++)
    if (!(t_s[i] > t_s[i - 1])) return FREEAIR_ERR_DATA;
  return FREEAIR_OK;
}

/* Writes the result of an analysis, or its blank when that failed. */
static int32_t finish(int32_t status, freeair_pumpup_result *r, freeair_pumpup_result *result)
{
  if (status < 0) *r = initial_result;
  int32_t written = freeair__structure_write(result, r, sizeof *r, FREEAIR_PUMPUP_RESULT_BASELINE);
  return status < 0 ? status : written < 0 ? written : status;
}

int32_t freeair_pumpup_analyse(const freeair_pumpup_test *test, freeair_pumpup_result *result)
{
  if (result == NULL) return FREEAIR_ERR_NULL;
  freeair_pumpup_result r = initial_result;
  int32_t status = test == NULL ? FREEAIR_ERR_NULL : analyse(test, NULL, NULL, 0, &r);
  return finish(status, &r, result);
}

int32_t freeair_pumpup_analyse_table(const freeair_pumpup_test *test, const double *t_s, const double *p_pa, size_t n,
                                     freeair_pumpup_result *result)
{
  if (result == NULL) return FREEAIR_ERR_NULL;
  freeair_pumpup_result r = initial_result;
  int32_t status = test == NULL || t_s == NULL || p_pa == NULL ? FREEAIR_ERR_NULL : check_table(t_s, p_pa, n);
  if (status == FREEAIR_OK) status = analyse(test, t_s, p_pa, n, &r);
  return finish(status, &r, result);
}
