/* SPDX-License-Identifier: MIT */
#include <freeair/reference.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/pumpup.h"
#include "internal/saturation.h"
#include "internal/structure.h"

static const freeair_pumpup_test initial = FREEAIR_PUMPUP_TEST_INIT;

static int optional(double x, double lo, double hi)
{
  return !freeair__given(x) || freeair__closed(x, lo, hi);
}

static int in_range(const freeair_pumpup_test *t)
{
  return t->flags == 0u && (t->reference == 0 || freeair_reference_name(t->reference)[0] != '\0') &&
         t->start >= FREEAIR_PUMPUP_UNKNOWN && t->start <= FREEAIR_PUMPUP_CYCLING &&
         freeair__upto(t->v_receiver_m3, 0.0, 1e4) &&
         optional(t->v_piping_m3, 0.0, 1e4) && optional(t->v_water_m3, 0.0, 1e4) &&
         optional(t->v_uncertainty_m3, 0.0, 1e4) && freeair__closed(t->p_ambient_pa, 2e4, 2e5) &&
         optional(t->p_ambient_uncertainty_pa, 0.0, 5e3) && freeair__closed(t->t_ambient_k, 223.15, 350.0) &&
         optional(t->t_ambient_uncertainty_k, 0.0, 30.0) && optional(t->p_start_pa, 1e3, 1e8) &&
         optional(t->p_end_pa, 1e3, 1e8) && optional(t->duration_s, 0.01, 1e7) &&
         optional(t->duration_uncertainty_s, 0.0, 1e6) && optional(t->reading_uncertainty_pa, 0.0, 1e7) &&
         optional(t->gauge_scale_uncertainty, 0.0, 0.3) && optional(t->t_start_k, 150.0, 600.0) &&
         optional(t->t_end_k, 150.0, 600.0) && optional(t->t_gas_uncertainty_k, 0.0, 50.0) &&
         optional(t->t_wall_start_k, 150.0, 600.0) && optional(t->p_before_pa, 1e3, 1e8) &&
         optional(t->draw_s, 0.1, 1e6) && optional(t->rest_s, 0.1, 1e7) && optional(t->t_in_k, 200.0, 700.0) &&
         optional(t->t_in_uncertainty_k, 0.0, 100.0) && optional(t->ua_gas_w_k, 0.0, 1e6) &&
         optional(t->ua_wall_w_k, 0.0, 1e6) && optional(t->c_wall_j_k, 1.0, 1e9) &&
         optional(t->thermal_uncertainty, 0.0, 1.5) && optional(t->fall, 0.0, 1.0) &&
         optional(t->fall_uncertainty, 1e-3, 1.0) && optional(t->humidity, 0.0, 1.0) &&
         optional(t->humidity_uncertainty, 0.0, 0.5) && optional(t->p_reference_pa, 1e4, 1e7) &&
         optional(t->t_reference_k, 223.15, 473.15) && optional(t->humidity_reference, 0.0, 1.0);
}

static void set(double *field, double otherwise)
{
  *field = freeair__or(*field, otherwise);
}

static void complete(freeair_pumpup_test *t, double v_gas_m3, int table)
{
  /* walls: free convection inside and outside a cylinder three diameters long,
   * a thin steel shell at a working stress of 86 MPa */
  double surface_m2 = cbrt(t->v_receiver_m3 * t->v_receiver_m3);
  set(&t->v_uncertainty_m3, 0.03 * v_gas_m3);
  set(&t->p_ambient_uncertainty_pa, 300.0);
  set(&t->t_ambient_uncertainty_k, 1.0);
  set(&t->duration_uncertainty_s, table ? 1e-3 * t->duration_s : 1.0);
  set(&t->gauge_scale_uncertainty, 0.01);
  set(&t->t_gas_uncertainty_k, 1.0);
  set(&t->p_before_pa, t->p_end_pa);
  set(&t->draw_s, 60.0);
  set(&t->t_in_k, t->t_ambient_k + 60.0);
  set(&t->t_in_uncertainty_k, 23.0);
  set(&t->ua_gas_w_k, 29.0 * surface_m2);
  set(&t->ua_wall_w_k, 58.0 * surface_m2);
  set(&t->c_wall_j_k, 0.1 * t->v_receiver_m3 * t->p_end_pa);
  set(&t->thermal_uncertainty, 0.4);
  set(&t->fall, 0.2);
  set(&t->fall_uncertainty, 0.2);
  set(&t->humidity_uncertainty, freeair__given(t->humidity) ? 0.05 : 0.0);
  set(&t->humidity, 0.0);
  double p_pa;
  double t_k;
  double humidity;
  if (freeair_reference_conditions(t->reference, &p_pa, &t_k, &humidity) == FREEAIR_OK) {
    set(&t->p_reference_pa, p_pa);
    set(&t->t_reference_k, t_k);
    set(&t->humidity_reference, humidity);
  }
  set(&t->humidity_reference, 0.0);
}

double freeair__pumpup_vapour(const freeair_pumpup_test *t)
{
  double humidity = fmin(fmax(t->humidity, 0.0), 1.0);
  return humidity > 0.0 ? humidity * freeair__saturation_pressure_pa(t->t_ambient_k) : 0.0;
}

double freeair__pumpup_dry(const freeair_pumpup_test *t, double p_pa)
{
  double outside_pa = freeair__pumpup_vapour(t);
  if (!(outside_pa > 0.0)) return p_pa;
  return p_pa - fmin(outside_pa * p_pa / t->p_ambient_pa, freeair__saturation_pressure_pa(t->t_ambient_k));
}

int32_t freeair__pumpup_read(const freeair_pumpup_test *caller, double p_start_pa, double p_end_pa, double duration_s,
                             freeair__pumpup_setup *setup)
{
  setup->cycle_known = 0;
  freeair_pumpup_test *t = &setup->test;
  *t = initial;
  int32_t status = freeair__structure_read(t, sizeof *t, caller, FREEAIR_PUMPUP_TEST_BASELINE);
  if (status < 0) return status;
  if (!in_range(t)) return FREEAIR_ERR_DOMAIN;
  int table = freeair__given(p_start_pa);
  t->p_start_pa = freeair__or(p_start_pa, t->p_start_pa);
  t->p_end_pa = freeair__or(p_end_pa, t->p_end_pa);
  t->duration_s = freeair__or(duration_s, t->duration_s);
  set(&t->v_piping_m3, 0.0);
  set(&t->v_water_m3, 0.0);
  setup->v_gas_m3 = t->v_receiver_m3 + t->v_piping_m3 - t->v_water_m3;
  if (!freeair__closed(t->duration_s, 0.01, 1e7) || !isless(t->p_start_pa, t->p_end_pa) ||
      !isgreater(t->p_end_pa, 1.1 * t->p_ambient_pa) ||
      !(setup->v_gas_m3 > 0.0) || (t->start == FREEAIR_PUMPUP_CYCLING && !freeair__given(t->rest_s)))
    return FREEAIR_ERR_DOMAIN;
  complete(t, setup->v_gas_m3, table);
  if (t->v_uncertainty_m3 > 0.5 * setup->v_gas_m3 || t->duration_uncertainty_s > 0.5 * t->duration_s ||
      freeair__pumpup_vapour(t) > 0.5 * t->p_ambient_pa ||
      (t->start == FREEAIR_PUMPUP_DRAWN_DOWN && !(t->p_before_pa > t->p_start_pa)))
    return FREEAIR_ERR_DOMAIN;
  setup->ambient_read_pa = t->p_ambient_pa;
  setup->scale = 1.0;
  setup->stretch = 1.0;
  setup->start_offset_k = 0.0;
  setup->start_uncertainty_k = 1.0;
  setup->cycle_gas_k = t->t_ambient_k;
  setup->cycle_wall_k = t->t_ambient_k;
  return FREEAIR_OK;
}

freeair__tank freeair__pumpup_tank(const freeair__pumpup_setup *setup)
{
  const freeair_pumpup_test *t = &setup->test;
  freeair__tank tank = {setup->v_gas_m3, t->p_ambient_pa,  t->t_ambient_k, t->t_in_k,
                            t->ua_gas_w_k,   t->ua_wall_w_k, t->c_wall_j_k};
  return tank;
}

freeair__fill_model freeair__pumpup_model(const freeair__pumpup_setup *setup)
{
  const freeair_pumpup_test *t = &setup->test;
  int given = freeair__given(t->reading_uncertainty_pa);
  double usual_pa = 0.005 * (t->p_end_pa - setup->ambient_read_pa);
  freeair__fill_model model = {.tank = freeair__pumpup_tank(setup),
                               .p0_pa = setup->ambient_read_pa,
                               .span_pa = t->p_end_pa - setup->ambient_read_pa,
                               .fall = t->fall,
                               .fall_uncertainty = t->fall_uncertainty,
                               .bend_uncertainty = 0.05,
                               .reading_pa = given ? t->reading_uncertainty_pa : usual_pa,
                               .use_scatter = !given};
  return model;
}

/* Soaked, then drawn down at a constant rate of fall. */
static int32_t drawn_down(const freeair__pumpup_setup *setup, double *t_gas_k, double *t_wall_k)
{
  const freeair_pumpup_test *t = &setup->test;
  freeair__tank tank = freeair__pumpup_tank(setup);
  size_t steps = freeair__tank_steps(&tank, t->p_start_pa, t->p_before_pa, t->draw_s);
  if (steps == 0) return FREEAIR_ERR_NO_CONVERGENCE;
  freeair__tank_state state = freeair__tank_at(&tank, t->p_before_pa, t->t_ambient_k, t->t_ambient_k);
  for (size_t i = 0; i < steps; i++)
    freeair__tank_step_draw(&tank, (t->p_start_pa - t->p_before_pa) / t->draw_s, t->draw_s / (double)steps, &state);
  *t_gas_k = freeair__tank_temperature(&state);
  *t_wall_k = state.t_wall_k;
  return *t_gas_k > 0.0 ? FREEAIR_OK : FREEAIR_ERR_NO_SOLUTION;
}

/* One load that meets the readings, then rest with a steady loss of mass: what
 * the next load starts from. */
static int32_t one_cycle(const freeair__pumpup_setup *setup, const freeair__fill_readings *readings, int warm,
                         freeair__fill_fit *fit, const double start[2], double next[2])
{
  freeair__fill_model model = freeair__pumpup_model(setup);
  model.t_start_k = start[0];
  model.t_wall_start_k = start[1];
  int32_t status = freeair__fill_fit_run(&model, readings, warm, fit);
  if (status < 0) return status;
  double rest_s = setup->test.rest_s;
  size_t steps = freeair__tank_steps(&model.tank, fit->p_start_pa, fit->p_end_pa, rest_s);
  if (steps == 0) return FREEAIR_ERR_NO_CONVERGENCE;
  freeair__tank_state state = fit->end;
  double lost_kg = state.m_kg - fit->p_start_pa * model.tank.v_m3 / (FREEAIR__AIR_R * start[0]);
  for (size_t i = 0; i < steps; i++)
    freeair__tank_step_constant(&model.tank, -lost_kg / rest_s, rest_s / (double)steps, &state);
  next[0] = freeair__tank_temperature(&state);
  next[1] = state.t_wall_k;
  return next[0] > 0.0 && next[0] < 1e4 ? FREEAIR_OK : FREEAIR_ERR_NO_SOLUTION;
}

/* The cycle that repeats itself: Newton's method on the temperatures at its
 * start, with the derivatives of the first pass. */
static int32_t cycling(freeair__pumpup_setup *setup, const freeair__fill_readings *readings, int warm,
                       freeair__fill_fit *fit, double *t_gas_k, double *t_wall_k)
{
  double x[2] = {setup->cycle_gas_k, setup->cycle_wall_k};
  for (int i = 0; i < 30; i++) {
    double next[2];
    int32_t status = one_cycle(setup, readings, warm || i > 0, fit, x, next);
    if (status < 0) return status;
    if (!setup->cycle_known) {
      for (int k = 0; k < 2; k++) {
        double moved[2] = {x[0] + (k == 0 ? 1.0 : 0.0), x[1] + (k == 1 ? 1.0 : 0.0)};
        double back[2];
        status = one_cycle(setup, readings, 1, fit, moved, back);
        if (status < 0) return status;
        setup->cycle_back[0][k] = back[0] - next[0];
        setup->cycle_back[1][k] = back[1] - next[1];
      }
      setup->cycle_known = 1;
    }
    double a = 1.0 - setup->cycle_back[0][0];
    double b = -setup->cycle_back[0][1];
    double c = -setup->cycle_back[1][0];
    double d = 1.0 - setup->cycle_back[1][1];
    double det = a * d - b * c;
    double off[2] = {next[0] - x[0], next[1] - x[1]};
    double move[2] = {(d * off[0] - b * off[1]) / det, (a * off[1] - c * off[0]) / det};
    x[0] += move[0];
    x[1] += move[1];
    if (!(x[0] > 50.0 && x[0] < 2000.0 && x[1] > 50.0 && x[1] < 2000.0)) return FREEAIR_ERR_NO_SOLUTION;
    if (fabs(move[0]) + fabs(move[1]) < 1e-8) {
      setup->cycle_gas_k = *t_gas_k = x[0];
      setup->cycle_wall_k = *t_wall_k = x[1];
      return FREEAIR_OK;
    }
  }
  return FREEAIR_ERR_NO_CONVERGENCE;
}

int32_t freeair__pumpup_start(freeair__pumpup_setup *setup, const freeair__fill_readings *readings, int warm,
                              freeair__fill_fit *fit, double *t_gas_k, double *t_wall_k)
{
  const freeair_pumpup_test *t = &setup->test;
  int32_t status = FREEAIR_OK;
  *t_gas_k = *t_wall_k = t->t_ambient_k;
  setup->start_uncertainty_k = 1.0;
  if (t->start == FREEAIR_PUMPUP_DRAWN_DOWN) {
    /* how cold it is hangs on the heat exchange: a third of the chill is in doubt */
    status = drawn_down(setup, t_gas_k, t_wall_k);
    setup->start_uncertainty_k = 1.0 + 0.3 * fabs(t->t_ambient_k - *t_gas_k);
  } else if (t->start == FREEAIR_PUMPUP_CYCLING) {
    status = cycling(setup, readings, warm, fit, t_gas_k, t_wall_k);
    setup->start_uncertainty_k = 3.0;
  } else if (t->start == FREEAIR_PUMPUP_UNKNOWN) {
    setup->start_uncertainty_k = 8.660254037844386; /* 15 K / sqrt(3) */
  }
  /* at rest the wall shares the error; else the gas alone, which matters more */
  *t_gas_k += setup->start_offset_k;
  if (t->start == FREEAIR_PUMPUP_SOAKED) *t_wall_k += setup->start_offset_k;
  if (freeair__given(t->t_start_k)) {
    *t_gas_k = t->t_start_k + setup->start_offset_k;
    setup->start_uncertainty_k = t->t_gas_uncertainty_k;
  }
  if (freeair__given(t->t_wall_start_k)) *t_wall_k = t->t_wall_start_k;
  return status;
}

/* Moves a quantity that cannot become negative. */
static int move_ratio(double *x, double uncertainty, double sigmas)
{
  *x *= exp(uncertainty * sigmas);
  return uncertainty > 0.0;
}

static int move_by(double *x, double uncertainty, double sigmas)
{
  *x += uncertainty * sigmas;
  return uncertainty > 0.0;
}

int freeair__pumpup_move(freeair__pumpup_setup *setup, int input, double sigmas)
{
  freeair_pumpup_test *t = &setup->test;
  switch (input) {
    case FREEAIR__PUMPUP_VOLUME: return move_by(&setup->v_gas_m3, t->v_uncertainty_m3, sigmas);
    case FREEAIR__PUMPUP_SCALE: return move_by(&setup->scale, t->gauge_scale_uncertainty, sigmas);
    case FREEAIR__PUMPUP_TIME: return move_by(&setup->stretch, t->duration_uncertainty_s / t->duration_s, sigmas);
    case FREEAIR__PUMPUP_BAROMETER: return move_by(&t->p_ambient_pa, t->p_ambient_uncertainty_pa, sigmas);
    case FREEAIR__PUMPUP_AMBIENT: return move_by(&t->t_ambient_k, t->t_ambient_uncertainty_k, sigmas);
    case FREEAIR__PUMPUP_HUMIDITY: return move_by(&t->humidity, t->humidity_uncertainty, sigmas);
    case FREEAIR__PUMPUP_START: return move_by(&setup->start_offset_k, setup->start_uncertainty_k, sigmas);
    case FREEAIR__PUMPUP_END:
      return freeair__given(t->t_end_k) && move_by(&t->t_end_k, t->t_gas_uncertainty_k, sigmas);
    case FREEAIR__PUMPUP_INLET: return move_by(&t->t_in_k, t->t_in_uncertainty_k, sigmas);
    case FREEAIR__PUMPUP_UA_GAS: return move_ratio(&t->ua_gas_w_k, t->thermal_uncertainty, sigmas);
    case FREEAIR__PUMPUP_UA_WALL: return move_ratio(&t->ua_wall_w_k, t->thermal_uncertainty, sigmas);
    case FREEAIR__PUMPUP_C_WALL: return move_ratio(&t->c_wall_j_k, t->thermal_uncertainty, sigmas);
    default: return 0;
  }
}
