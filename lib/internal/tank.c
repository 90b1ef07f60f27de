/* SPDX-License-Identifier: MIT */
#include "internal/tank.h"

static const double r_air = FREEAIR__AIR_R;
static const double k_air = FREEAIR__AIR_K;
static const double cv_air = FREEAIR__AIR_R / (FREEAIR__AIR_K - 1.0);
static const double cp_air = FREEAIR__AIR_K * FREEAIR__AIR_R / (FREEAIR__AIR_K - 1.0);

double freeair__inflow_at(const freeair__inflow *inflow, double p_pa)
{
  double x = (p_pa - inflow->p0_pa) / inflow->span_pa;
  return inflow->w_kg_s * (1.0 - inflow->fall * x + 4.0 * inflow->bend * x * (1.0 - x));
}

freeair__tank_state freeair__tank_at(const freeair__tank *tank, double p_pa, double t_k, double t_wall_k)
{
  freeair__tank_state state = {p_pa * tank->v_m3 / (r_air * t_k), p_pa * tank->v_m3 / (k_air - 1.0), t_wall_k};
  return state;
}

double freeair__tank_pressure(const freeair__tank *tank, const freeair__tank_state *state)
{
  return (k_air - 1.0) * state->u_j / tank->v_m3;
}

double freeair__tank_temperature(const freeair__tank_state *state)
{
  return state->u_j / (state->m_kg * cv_air);
}

/* Heat from the gas to the wall. */
static double wall_heat(const freeair__tank *tank, double p_pa, double t_k, double t_wall_k)
{
  double ratio = p_pa / tank->p_ambient_pa;
  return tank->ua_gas_w_k * cbrt(ratio * ratio) * (t_k - t_wall_k);
}

static double wall_rate(const freeair__tank *tank, double heat_w, double t_wall_k)
{
  return (heat_w - tank->ua_wall_w_k * (t_wall_k - tank->t_ambient_k)) / tank->c_wall_j_k;
}

freeair__tank_state freeair__tank_rate(const freeair__tank *tank, const freeair__tank_state *state,
                                           double w_kg_s)
{
  double t_k = freeair__tank_temperature(state);
  double heat_w = wall_heat(tank, freeair__tank_pressure(tank, state), t_k, state->t_wall_k);
  freeair__tank_state rate = {w_kg_s, w_kg_s * cp_air * (w_kg_s > 0.0 ? tank->t_in_k : t_k) - heat_w,
                                wall_rate(tank, heat_w, state->t_wall_k)};
  return rate;
}

double freeair__tank_pressure_rate(const freeair__tank *tank, const freeair__tank_state *rate)
{
  return (k_air - 1.0) * rate->u_j / tank->v_m3;
}

size_t freeair__tank_steps(const freeair__tank *tank, double p_low_pa, double p_high_pa, double duration_s)
{
  /* fastest decay: heat exchange of the least mass at the highest pressure */
  double ratio = p_high_pa / tank->p_ambient_pa;
  double ua_w_k = tank->ua_gas_w_k * cbrt(ratio * ratio);
  double c_j_k = p_low_pa * tank->v_m3 / ((k_air - 1.0) * tank->t_ambient_k);
  double decay_1_s = ua_w_k / c_j_k + (ua_w_k + tank->ua_wall_w_k) / tank->c_wall_j_k;
  double steps = ceil(2.0 * duration_s * decay_1_s);
  if (!(steps <= 16384.0)) return 0;
  return steps > 128.0 ? (size_t)steps : 128;
}

static freeair__tank_state moved(const freeair__tank_state *state, const freeair__tank_state *rate, double h_s)
{
  freeair__tank_state next = {state->m_kg + h_s * rate->m_kg, state->u_j + h_s * rate->u_j,
                                state->t_wall_k + h_s * rate->t_wall_k};
  return next;
}

static freeair__tank_state draw_rate(const freeair__tank *tank, const freeair__tank_state *state,
                                       double rate_pa_s)
{
  double t_k = freeair__tank_temperature(state);
  double heat_w = wall_heat(tank, freeair__tank_pressure(tank, state), t_k, state->t_wall_k);
  double u_w = rate_pa_s * tank->v_m3 / (k_air - 1.0);
  freeair__tank_state rate = {(u_w + heat_w) / (cp_air * t_k), u_w, wall_rate(tank, heat_w, state->t_wall_k)};
  return rate;
}

/* The three kinds of step differ in how the rate is found. */
enum kind { FOLLOWING, CONSTANT, DRAWING };

static freeair__tank_state rate_of(enum kind kind, const freeair__tank *tank, const freeair__inflow *inflow,
                                     double value, const freeair__tank_state *state)
{
  if (kind == DRAWING) return draw_rate(tank, state, value);
  if (kind == FOLLOWING) value = freeair__inflow_at(inflow, freeair__tank_pressure(tank, state));
  return freeair__tank_rate(tank, state, value);
}

static void step(enum kind kind, const freeair__tank *tank, const freeair__inflow *inflow, double value, double h_s,
                 freeair__tank_state *state)
{
  freeair__tank_state k1 = rate_of(kind, tank, inflow, value, state);
  freeair__tank_state y = moved(state, &k1, 0.5 * h_s);
  freeair__tank_state k2 = rate_of(kind, tank, inflow, value, &y);
  y = moved(state, &k2, 0.5 * h_s);
  freeair__tank_state k3 = rate_of(kind, tank, inflow, value, &y);
  y = moved(state, &k3, h_s);
  freeair__tank_state k4 = rate_of(kind, tank, inflow, value, &y);
  freeair__tank_state mean = {(k1.m_kg + 2.0 * (k2.m_kg + k3.m_kg) + k4.m_kg) / 6.0,
                                (k1.u_j + 2.0 * (k2.u_j + k3.u_j) + k4.u_j) / 6.0,
                                (k1.t_wall_k + 2.0 * (k2.t_wall_k + k3.t_wall_k) + k4.t_wall_k) / 6.0};
  *state = moved(state, &mean, h_s);
}

void freeair__tank_step(const freeair__tank *tank, const freeair__inflow *inflow, double h_s,
                          freeair__tank_state *state)
{
  step(FOLLOWING, tank, inflow, 0.0, h_s, state);
}

void freeair__tank_step_constant(const freeair__tank *tank, double w_kg_s, double h_s,
                                   freeair__tank_state *state)
{
  step(CONSTANT, tank, NULL, w_kg_s, h_s, state);
}

void freeair__tank_step_draw(const freeair__tank *tank, double rate_pa_s, double h_s,
                               freeair__tank_state *state)
{
  step(DRAWING, tank, NULL, rate_pa_s, h_s, state);
}
