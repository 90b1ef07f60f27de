/* SPDX-License-Identifier: MIT */
#include "receiver.h"

#include "air.h"

#include <math.h>
#include <string.h>

_Static_assert(sizeof(pump_result) % sizeof(double) == 0, "a pump_result is an array of doubles");

enum { MASS, ENERGY, WALL, N_STATES };

static const double pi = 3.14159265358979323846;

/* ---- the map of the pump ---- */

pump_result pump_map_at(const pump_map *map, double receiver_pa)
{
  double a[sizeof(pump_result) / sizeof(double)];
  double b[sizeof(pump_result) / sizeof(double)];
  int i = 0;
  while (i < MAP_POINTS - 2 && map->pa[i + 1] < receiver_pa) i++;
  double u = fmin(1.0, fmax(0.0, (receiver_pa - map->pa[i]) / (map->pa[i + 1] - map->pa[i])));
  memcpy(a, &map->point[i], sizeof a);
  memcpy(b, &map->point[i + 1], sizeof b);
  for (size_t k = 0; k < sizeof a / sizeof a[0]; k++) a[k] += u * (b[k] - a[k]);
  pump_result r;
  memcpy(&r, a, sizeof a);
  return r;
}

/* Cubic through the four points about a pressure. */
static double smooth_flow(const pump_map *map, const double *values, double receiver_pa)
{
  double first = sqrt(map->pa[0]);
  double x = (sqrt(receiver_pa) - first) / (sqrt(map->pa[MAP_POINTS - 1]) - first) * (MAP_POINTS - 1);
  int i = (int)floor(x) - 1;
  if (i < 0) i = 0;
  if (i > MAP_POINTS - 4) i = MAP_POINTS - 4;
  double u = x - i;
  double sum = 0.0;
  for (int a = 0; a < 4; a++) {
    double weight = 1.0;
    for (int b = 0; b < 4; b++)
      if (b != a) weight *= (u - b) / (a - b);
    sum += weight * values[i + a];
  }
  return sum;
}

/* ---- the receiver ---- */

typedef struct tank {
  const freeair_machine *m;
  const pump_map *map; /* null when the pump stands */
  air gas;
  double receiver_exponent;
  double m3;
  double cv;
  double ambient_pa;
  double ambient_k;
  double drawn_kg_s;
  double system_leak_m2;
  double check_leak_m2;
  double demand_m3_s;
} tank;

static tank tank_of(const freeair_machine *m, const freeair_machine_site *site, const laws *by)
{
  tank t = {.m = m, .gas = air_at(m, site), .receiver_exponent = by->receiver_exponent,
            .m3 = m->receiver_m3 - m->receiver_water_m3, .ambient_pa = site->barometric_pa,
            .ambient_k = site->ambient_k};
  t.cv = t.gas.gas_j_kg_k / (AIR_K - 1.0);
  return t;
}

static void set_state(const tank *t, receiver_start at, double *y)
{
  y[MASS] = at.pa * t->m3 / (t->gas.gas_j_kg_k * at.gas_k);
  y[ENERGY] = y[MASS] * t->cv * at.gas_k;
  y[WALL] = at.wall_k;
}

static double gas_k(const tank *t, const double *y)
{
  return y[ENERGY] / (y[MASS] * t->cv);
}

static double pressure(const tank *t, const double *y)
{
  return y[ENERGY] * (AIR_K - 1.0) / t->m3;
}

static double outflow(const tank *t, double pa, double k)
{
  double kg_s = t->drawn_kg_s;
  if (pa > t->ambient_pa) kg_s += air_through(&t->gas, t->system_leak_m2, pa, k, t->ambient_pa);
  double free_kg_m3 = t->ambient_pa / (t->gas.gas_j_kg_k * t->ambient_k);
  kg_s += t->demand_m3_s * free_kg_m3 * smooth_step((pa / t->ambient_pa - 1.0) / 0.02);
  if (pa > t->ambient_pa) kg_s += air_through(&t->gas, t->check_leak_m2, pa, k, t->ambient_pa);
  return kg_s;
}

static void tank_rates(const tank *t, const double *y, double *rates)
{
  double k = gas_k(t, y);
  double pa = y[MASS] * t->gas.gas_j_kg_k * k / t->m3;
  double ua_w_k = t->m->receiver_gas_ua_w_k * pow(pa / t->ambient_pa, t->receiver_exponent);
  double to_wall_w = ua_w_k * (k - y[WALL]);
  double out_kg_s = outflow(t, pa, k);
  rates[MASS] = -out_kg_s;
  rates[ENERGY] = -to_wall_w - out_kg_s * (AIR_K * t->cv) * k;
  rates[WALL] = (to_wall_w - t->m->receiver_wall_ua_w_k * (y[WALL] - t->ambient_k)) / t->m->receiver_wall_j_k;
  if (t->map) {
    rates[MASS] += smooth_flow(t->map, t->map->flow_kg_s, pa);
    rates[ENERGY] += smooth_flow(t->map, t->map->flow_w, pa);
  }
}

/* The classical Runge-Kutta step: nothing in a receiver is stiff. */
static void step(const tank *t, double *y, double h)
{
  double k[4][N_STATES];
  double z[N_STATES];
  tank_rates(t, y, k[0]);
  for (int s = 1; s < 4; s++) {
    double a = s == 3 ? h : h / 2.0;
    for (int i = 0; i < N_STATES; i++) z[i] = y[i] + a * k[s - 1][i];
    tank_rates(t, z, k[s]);
  }
  for (int i = 0; i < N_STATES; i++) y[i] += h / 6.0 * (k[0][i] + 2.0 * k[1][i] + 2.0 * k[2][i] + k[3][i]);
}

/* Part of a step after which a pressure is reached that the whole step passes. */
static double time_within(const tank *t, const double *y, double h, double to_pa)
{
  double lo = 0.0;
  double hi = h;
  for (int i = 0; i < 50; i++) {
    double z[N_STATES];
    double middle = (lo + hi) / 2.0;
    memcpy(z, y, sizeof z);
    step(t, z, middle);
    if (pressure(t, z) >= to_pa) hi = middle;
    else lo = middle;
  }
  return hi;
}

void receiver_fill(const freeair_machine *m, const freeair_machine_site *site, const laws *by, const pump_map *map,
                   receiver_start from, const double *to_pa, int n, double most_s, double *s)
{
  tank t = tank_of(m, site, by);
  t.map = map;
  t.system_leak_m2 = m->downstream_leak_m2;
  t.demand_m3_s = m->demand_m3_s;
  double y[N_STATES];
  set_state(&t, from, y);
  double displacement_m3_s = m->lp_cylinders * pi / 4.0 * m->lp_bore_m * m->lp_bore_m * m->lp_stroke_m * m->speed_rev_s;
  double h = t.m3 * 1e5 / site->barometric_pa / displacement_m3_s / 100.0; /* a hundredth of a bar or so */
  int i = 0;
  while (i < n && to_pa[i] <= from.pa) s[i++] = 0.0;
  for (double now_s = 0.0; i < n && now_s <= most_s; now_s += h) {
    double z[N_STATES];
    memcpy(z, y, sizeof z);
    step(&t, z, h);
    for (; i < n && pressure(&t, z) >= to_pa[i]; i++) s[i] = now_s + time_within(&t, y, h, to_pa[i]);
    memcpy(y, z, sizeof y);
  }
  while (i < n) s[i++] = INFINITY;
}

receiver_start receiver_drawn_down(const freeair_machine *m, const freeair_machine_site *site, const laws *by,
                                   double from_pa, double to_pa, double during_s)
{
  tank t = tank_of(m, site, by);
  receiver_start soaked = {from_pa, t.ambient_k, t.ambient_k};
  receiver_start end = soaked;
  double y[N_STATES];
  set_state(&t, soaked, y);
  double full_kg = y[MASS];
  double lo = 0.0;
  double hi = full_kg / during_s;
  for (int i = 0; i < 50; i++) {
    t.drawn_kg_s = (lo + hi) / 2.0;
    set_state(&t, soaked, y);
    for (int j = 0; j < 600 && y[MASS] > 0.02 * full_kg; j++) step(&t, y, during_s / 600.0);
    if (!(y[MASS] > 0.02 * full_kg) || pressure(&t, y) < to_pa) hi = t.drawn_kg_s;
    else lo = t.drawn_kg_s;
    end = (receiver_start){to_pa, gas_k(&t, y), y[WALL]};
  }
  return end;
}

void receiver_leak_down(const freeair_machine *m, const freeair_machine_site *site, const laws *by,
                        receiver_start from, double during_s, int n, double *pa)
{
  tank t = tank_of(m, site, by);
  t.system_leak_m2 = m->downstream_leak_m2;
  t.check_leak_m2 = m->check_valve_leak_m2;
  t.demand_m3_s = m->demand_m3_s;
  double y[N_STATES];
  set_state(&t, from, y);
  pa[0] = from.pa;
  for (int i = 1; i < n; i++) {
    for (int j = 0; j < 400; j++) step(&t, y, during_s / (n - 1) / 400.0);
    pa[i] = pressure(&t, y);
  }
}
