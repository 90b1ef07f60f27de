/* SPDX-License-Identifier: MIT */
/* A machine that cycles into a receiver with a leak and a demand, and a logger
 * that reads its pressure: noise, resolution, uneven steps, gaps, standstills.
 * Written for the tests alone, from the balances: nothing of the library is in it. */
#ifndef FREEAIR_TESTS_SYNTHETIC_PLANT_H
#define FREEAIR_TESTS_SYNTHETIC_PLANT_H

#include <math.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>

static const double plant_r = 287.05287;
static const double plant_cv = 287.05287 / 0.4;
static const double plant_cp = 287.05287 * 1.4 / 0.4;

typedef struct luck {
  uint64_t state;
} luck;

static inline double luck_uniform(luck *l)
{
  l->state ^= l->state << 13;
  l->state ^= l->state >> 7;
  l->state ^= l->state << 17;
  return (double)(l->state >> 11) / 9007199254740992.0;
}

static inline double luck_normal(luck *l)
{
  return sqrt(-2.0 * log(1.0 - luck_uniform(l))) * cos(6.283185307179586 * luck_uniform(l));
}

typedef struct plant {
  double v_m3;
  double p_a_pa;
  double t_a_k;
  double t_in_k;
  double ua_gas; /* at ambient pressure */
  double ua_wall;
  double c_wall;
  double w_kg_s; /* inflow at ambient pressure while loaded */
  double fall;   /* share of it lost up to p_full_pa */
  double bend;
  double p_full_pa;
  double leak_kg_s; /* at 10 bar, proportional to pressure */
  double demand_kg_s;
  double demand_from_s; /* of every demand_every_s, for demand_for_s */
  double demand_for_s;
  double demand_every_s;
} plant;

/* A plant with the walls that a receiver of this volume has. */
static inline plant plant_of(double v_m3, double free_air_m3_s, double p_full_pa)
{
  plant p = {.v_m3 = v_m3, .p_a_pa = 101325.0, .t_a_k = 293.15, .t_in_k = 353.15, .fall = 0.2, .p_full_pa = p_full_pa};
  p.ua_gas = 29.0 * cbrt(v_m3 * v_m3);
  p.ua_wall = 58.0 * cbrt(v_m3 * v_m3);
  p.c_wall = 0.1 * v_m3 * p_full_pa;
  p.w_kg_s = free_air_m3_s * p.p_a_pa / (plant_r * p.t_a_k);
  return p;
}

typedef struct gas {
  double m_kg;
  double u_j;
  double t_wall_k;
} gas;

static inline gas gas_at(const plant *p, double p_pa, double t_k, double t_wall_k)
{
  gas g = {p_pa * p->v_m3 / (plant_r * t_k), p_pa * p->v_m3 / 0.4, t_wall_k};
  return g;
}

static inline double gas_pressure(const plant *p, const gas *g)
{
  return 0.4 * g->u_j / p->v_m3;
}

static inline gas plant_rate(const plant *p, const gas *g, double time_s, int loaded)
{
  double t = g->u_j / (g->m_kg * plant_cv);
  double pressure = gas_pressure(p, g);
  double x = (pressure - p->p_a_pa) / (p->p_full_pa - p->p_a_pa);
  double in = loaded ? p->w_kg_s * (1.0 - p->fall * x + 4.0 * p->bend * x * (1.0 - x)) : 0.0;
  double out = p->leak_kg_s * pressure / 1e6;
  if (p->demand_kg_s > 0.0) {
    double phase = fmod(time_s, p->demand_every_s);
    if (phase >= p->demand_from_s && phase < p->demand_from_s + p->demand_for_s) out += p->demand_kg_s;
  }
  double heat = p->ua_gas * pow(pressure / p->p_a_pa, 2.0 / 3.0) * (t - g->t_wall_k);
  gas rate = {in - out, in * plant_cp * p->t_in_k - out * plant_cp * t - heat,
              (heat - p->ua_wall * (g->t_wall_k - p->t_a_k)) / p->c_wall};
  return rate;
}

static inline gas plant_moved(const gas *g, const gas *rate, double h)
{
  gas next = {g->m_kg + h * rate->m_kg, g->u_j + h * rate->u_j, g->t_wall_k + h * rate->t_wall_k};
  return next;
}

/* Classical fourth-order Runge-Kutta step. */
static inline void plant_step(const plant *p, double time_s, double h, int loaded, gas *g)
{
  gas k1 = plant_rate(p, g, time_s, loaded);
  gas y = plant_moved(g, &k1, 0.5 * h);
  gas k2 = plant_rate(p, &y, time_s + 0.5 * h, loaded);
  y = plant_moved(g, &k2, 0.5 * h);
  gas k3 = plant_rate(p, &y, time_s + 0.5 * h, loaded);
  y = plant_moved(g, &k3, h);
  gas k4 = plant_rate(p, &y, time_s + h, loaded);
  gas mean = {(k1.m_kg + 2.0 * k2.m_kg + 2.0 * k3.m_kg + k4.m_kg) / 6.0,
              (k1.u_j + 2.0 * k2.u_j + 2.0 * k3.u_j + k4.u_j) / 6.0,
              (k1.t_wall_k + 2.0 * k2.t_wall_k + 2.0 * k3.t_wall_k + k4.t_wall_k) / 6.0};
  *g = plant_moved(g, &mean, h);
}

/* What really happened, every step of a fine grid. */
typedef struct history {
  double step_s;
  size_t n;
  double *p_pa;
  int32_t *state; /* 1 loaded, 2 running on, 3 stopped */
} history;

static inline history plant_run(const plant *p, double p_start_pa, int loaded, double cut_in_pa, double cut_out_pa,
                                double run_on_s, double duration_s, double step_s)
{
  history h = {.step_s = step_s, .n = (size_t)(duration_s / step_s)};
  h.p_pa = malloc(h.n * sizeof *h.p_pa);
  h.state = malloc(h.n * sizeof *h.state);
  gas g = gas_at(p, p_start_pa, p->t_a_k, p->t_a_k);
  double stops_s = 0.0;
  for (size_t i = 0; i < h.n; i++) {
    double t = (double)i * step_s;
    h.p_pa[i] = gas_pressure(p, &g);
    if (loaded && h.p_pa[i] >= cut_out_pa) {
      loaded = 0;
      stops_s = t + run_on_s;
    } else if (!loaded && h.p_pa[i] <= cut_in_pa) {
      loaded = 1;
    }
    h.state[i] = loaded ? 1 : t < stops_s ? 2 : 3;
    plant_step(p, t, step_s, loaded, &g);
  }
  return h;
}

static inline void history_free(history *h)
{
  free(h->p_pa);
  free(h->state);
}

/* Loaded share and number of complete cycles, from the first load that begins to the last. */
static inline double history_share(const history *h, int *cycles)
{
  size_t first = 0;
  size_t last = 0;
  int n = 0;
  for (size_t i = 1; i < h->n; i++)
    if (h->state[i] == 1 && h->state[i - 1] != 1) {
      if (n++ == 0) first = i;
      last = i;
    }
  *cycles = n - 1;
  double loaded = 0.0;
  for (size_t i = first; i < last; i++) loaded += h->state[i] == 1;
  return loaded / (double)(last - first);
}

typedef struct logger {
  double step_s;
  double jitter; /* of a step, either way */
  double noise_pa;
  double resolution_pa;
  luck chance;
} logger;

typedef struct record {
  size_t n;
  double *t_s;
  double *p_pa;
  int32_t *state;
} record;

static inline record logger_read(logger *l, const history *h)
{
  double end_s = (double)(h->n - 1) * h->step_s;
  record r = {.n = 0};
  size_t room = (size_t)(end_s / l->step_s) + 2;
  r.t_s = malloc(room * sizeof *r.t_s);
  r.p_pa = malloc(room * sizeof *r.p_pa);
  r.state = malloc(room * sizeof *r.state);
  for (size_t i = 0; i < room; i++) {
    double t = ((double)i + l->jitter * (2.0 * luck_uniform(&l->chance) - 1.0)) * l->step_s;
    double noise = l->noise_pa * luck_normal(&l->chance);
    if (t < 0.0 || t >= end_s) continue;
    double x = t / h->step_s;
    size_t k = (size_t)x;
    double p = h->p_pa[k] + (x - (double)k) * (h->p_pa[k + 1] - h->p_pa[k]) + noise;
    r.t_s[r.n] = t;
    r.p_pa[r.n] = l->resolution_pa > 0.0 ? round(p / l->resolution_pa) * l->resolution_pa : p;
    r.state[r.n++] = h->state[k];
  }
  return r;
}

static inline void record_free(record *r)
{
  free(r->t_s);
  free(r->p_pa);
  free(r->state);
}

#endif
