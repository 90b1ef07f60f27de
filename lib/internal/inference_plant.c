/* SPDX-License-Identifier: MIT */
#include "internal/inference_plant.h"

#include "internal/check.h"
#include "internal/inference.h"
#include "internal/receiver_run.h"

#include <freeair/status.h>

#include <string.h>

enum { POINTS = FREEAIR__PLANT_POINTS, QUANTITIES = FREEAIR__PLANT_QUANTITIES };

static const double accuracy = 1e-2;

static double discharge_k(const freeair__cycle *c, const freeair__cycle_sums *sums, int stage)
{
  double mass = 0.0;
  double enthalpy = 0.0;
  for (int i = 0; i < c->n_cylinders; i++) {
    if (c->cylinder[i].stage != stage) continue;
    mass += sums->forward_mass[c->cylinder[i].discharge];
    enthalpy += sums->forward_enthalpy[c->cylinder[i].discharge];
  }
  if (!(mass > 1e-4 * c->mass_scale)) return NAN;
  return c->gas.warm ? freeair__gas_temperature_of_enthalpy(&c->gas, enthalpy / mass) : enthalpy / (mass * c->cp);
}

static void keep(const freeair__cycle *c, const freeair__cycle_state *s, const freeair__cycle_sums *sums, double *q)
{
  double per_s = s->omega / 6.28318530717958647693;
  q[FREEAIR__PLANT_MASS] = sums->mass[c->link_check] * per_s;
  q[FREEAIR__PLANT_ENTHALPY] = freeair__cycle_delivered(c, sums) * per_s;
  q[FREEAIR__PLANT_POWER] = freeair__cycle_shaft(c, sums, s->omega) / c->m.belt_efficiency;
  q[FREEAIR__PLANT_SPEED] = per_s;
  q[FREEAIR__PLANT_PLENUM] = sums->pressure[c->plenum] * per_s;
  q[FREEAIR__PLANT_LINE_K] = sums->temperature[c->line] * per_s;
  q[FREEAIR__PLANT_LP_K] = freeair__or(discharge_k(c, sums, 1), s->wall[0]);
  q[FREEAIR__PLANT_HP_K] = q[FREEAIR__PLANT_COOLER_K] = c->site.ambient_k;
  q[FREEAIR__PLANT_INTERSTAGE] = c->site.barometric_pa;
  if (c->intercooler < 0) return;
  q[FREEAIR__PLANT_HP_K] = freeair__or(discharge_k(c, sums, 2), s->wall[c->m.lp_cylinders]);
  q[FREEAIR__PLANT_COOLER_K] = sums->temperature[c->intercooler] * per_s;
  q[FREEAIR__PLANT_INTERSTAGE] = sums->pressure[c->intercooler] * per_s;
}

static double pressure_of(const freeair__plant *plant, int point)
{
  double root = plant->root_low + plant->root_step * point;
  return root * root;
}

int32_t freeair__plant_map_build(const freeair__plant *plant, const freeair_machine *m,
                                 const freeair_machine_site *site, int32_t skip, freeair__plant_walk *walk,
                                 freeair__plant_map *map)
{
  freeair__cycle c;
  freeair__cycle_sums sums;
  freeair__cycle_effort effort;
  freeair__cycle_build(&c, m, site, site->barometric_pa, site->ambient_k);
  const int n = POINTS / skip;
  const int down = walk->at >= POINTS / 2;
  for (int k = 0; k < n; k++) {
    int i = skip * (down ? n - k : k + 1) - 1;
    freeair__cycle_receiver(&c, pressure_of(plant, i), site->ambient_k);
    int32_t status = freeair__cycle_solve(&c, accuracy, &walk->state, &walk->work, &sums, &effort);
    if (status < 0) {
      walk->state.known = 0;
      status = freeair__cycle_solve(&c, 0.3 * accuracy, &walk->state, &walk->work, &sums, &effort);
    }
    if (status < 0) return status;
    keep(&c, &walk->state, &sums, map->q[i]);
    walk->at = i;
  }
  return FREEAIR_OK;
}

void freeair__plant_stretch(const freeair__plant *plant, freeair__plant_map *map)
{
  for (int k = 0; k < QUANTITIES; k++) {
    double at1 = map->q[1][k] / plant->sound.q[1][k];
    double at3 = map->q[3][k] / plant->sound.q[3][k];
    map->q[0][k] = plant->sound.q[0][k] * (1.5 * at1 - 0.5 * at3);
    map->q[2][k] = plant->sound.q[2][k] * 0.5 * (at1 + at3);
  }
}

int32_t freeair__plant_start(freeair__plant *plant, const freeair_machine *m, const freeair_machine_site *site,
                             double high_p)
{
  double pa = site->barometric_pa;
  freeair__cycle_build(&plant->c, m, site, pa, site->ambient_k);
  plant->root_low = sqrt(pa);
  plant->root_step = (sqrt(fmax(high_p, 2.0 * pa)) - plant->root_low) / (POINTS - 1);
  plant->walk.state.known = plant->walk.work.factored = plant->walk.at = 0;
  plant->walk.work.mesh.n = 0;
  int32_t status = freeair__plant_map_build(plant, m, site, 1, &plant->walk, &plant->sound);
  if (status < 0) return status;
  for (int i = 0; i < POINTS; i++)
    if (!(plant->sound.q[i][FREEAIR__PLANT_MASS] > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  return FREEAIR_OK;
}

double freeair__plant_share(const freeair__plant *plant, const freeair__plant_map *map)
{
  static const double weight[POINTS] = {0.15, 0.25, 0.35, 0.25};
  double share = 0.0;
  for (int i = 0; i < POINTS; i++)
    share += weight[i] * fmax(map->q[i][FREEAIR__PLANT_MASS], 0.0) / plant->sound.q[i][FREEAIR__PLANT_MASS];
  return fmax(share, 1e-3);
}

/* Air that re-expands from the clearance keeps the swept volume 1 - c (r^(1/n) - 1). */
static double clearance_slope(double c, double ratio)
{
  double taken = c * (pow(fmax(ratio, 1.0), 1.0 / 1.3) - 1.0);
  return fmin(taken, 0.8) / (1.0 - fmin(taken, 0.8));
}

void freeair__plant_clearance(const freeair__plant *plant, const freeair__plant_map *map, double relative,
                              float lost[POINTS])
{
  for (int i = 0; i < POINTS; i++) {
    double c = plant->c.m.hp_clearance;
    double p = pressure_of(plant, i);
    double here = clearance_slope(c, p / map->q[i][FREEAIR__PLANT_INTERSTAGE]);
    double sound = clearance_slope(c, p / plant->sound.q[i][FREEAIR__PLANT_INTERSTAGE]);
    lost[i] = plant->c.m.stages == 2 ? (float)(relative * (here - sound)) : 0.0f;
  }
}

/* Monotone cubic through n uneven nodes (Fritsch and Carlson, harmonic means). */
static double slope_at(int n, const double *x, const double *y, int i)
{
  if (n == 2) return (y[1] - y[0]) / (x[1] - x[0]);
  int a = i == 0 ? 0 : i == n - 1 ? n - 2 : i - 1;
  double left = (y[a + 1] - y[a]) / (x[a + 1] - x[a]);
  if (i == 0 || i == n - 1) {
    int b = i == 0 ? 1 : n - 3;
    double next = (y[b + 1] - y[b]) / (x[b + 1] - x[b]);
    double h = x[a + 1] - x[a];
    double g = x[b + 1] - x[b];
    double end = ((2.0 * h + g) * left - h * next) / (h + g);
    if (end * left <= 0.0) return 0.0;
    return fabs(end) > 3.0 * fabs(left) ? 3.0 * left : end;
  }
  double right = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
  if (left * right <= 0.0) return 0.0;
  double h = x[i] - x[i - 1];
  double g = x[i + 1] - x[i];
  return 3.0 * (h + g) / ((2.0 * g + h) / left + (g + 2.0 * h) / right);
}

static double cubic(int n, const double *x, const double *y, double at)
{
  int i = 0;
  while (i < n - 2 && at > x[i + 1]) i++;
  double h = x[i + 1] - x[i];
  double u = fmin(fmax((at - x[i]) / h, 0.0), 1.0);
  double v = 1.0 - u;
  return y[i] + u * u * (3.0 - 2.0 * u) * (y[i + 1] - y[i]) +
         h * u * v * (v * slope_at(n, x, y, i) - u * slope_at(n, x, y, i + 1));
}

static void map_at(const freeair__plant_family *f, double abscissa, freeair__plant_map *map)
{
  for (int i = 0; i < POINTS; i++)
    for (int k = 0; k < QUANTITIES; k++) {
      double y[FREEAIR__PLANT_NODES];
      for (int n = 0; n < f->n; n++) y[n] = f->at[n].q[i][k];
      map->q[i][k] = cubic(f->n, f->abscissa, y, abscissa);
    }
}

static double abscissa_of(double bend, double severity)
{
  return bend > 0.0 ? severity * severity / (severity * severity + bend) : severity;
}

void freeair__plant_family_start(const freeair__plant *plant, double bend, freeair__plant_family *family)
{
  family->bend = bend;
  family->n = 1;
  family->abscissa[0] = 0.0;
  family->at[0] = plant->sound;
}

int32_t freeair__plant_family_grow(const freeair__plant *plant, int32_t leaking, int32_t fault, double severity,
                                   int32_t skip, freeair__plant_walk *walk, freeair__plant_family *family)
{
  freeair_machine m = plant->c.m;
  freeair_machine_site site = FREEAIR_MACHINE_SITE_INIT;
  if (leaking > 0) m.lp_leaking_cylinders = leaking;
  int32_t status = freeair_fault_apply(&m, &plant->c.site, fault, severity, &m, &site);
  freeair__plant_map *map = &family->at[family->n];
  if (status == FREEAIR_OK) status = freeair__plant_map_build(plant, &m, &site, skip, walk, map);
  if (status == FREEAIR_OK && skip > 1) freeair__plant_stretch(plant, map);
  if (status == FREEAIR_OK) family->abscissa[family->n++] = abscissa_of(family->bend, severity);
  return status;
}

void freeair__plant_family_at(const freeair__plant_family *family, double severity, freeair__plant_map *map)
{
  map_at(family, abscissa_of(family->bend, severity), map);
}

double freeair__plant_family_severity(const freeair__plant_family *family, double abscissa)
{
  return family->bend > 0.0 ? sqrt(family->bend * abscissa / (1.0 - abscissa)) : abscissa;
}

double freeair__plant_at(const freeair__plant *plant, const freeair__plant_map *map, int quantity, double p)
{
  /* third-degree Lagrange through the four points, held between its neighbours */
  double x = (sqrt(p) - plant->root_low) / plant->root_step;
  x = fmin(fmax(x, 0.0), (double)(POINTS - 1));
  double a = map->q[0][quantity];
  double b = map->q[1][quantity];
  double c = map->q[2][quantity];
  double d = map->q[3][quantity];
  double y = a * (x - 1.0) * (x - 2.0) * (x - 3.0) / -6.0 + b * x * (x - 2.0) * (x - 3.0) / 2.0 +
             c * x * (x - 1.0) * (x - 3.0) / -2.0 + d * x * (x - 1.0) * (x - 2.0) / 6.0;
  double lo = x < 1.0 ? a : x < 2.0 ? b : c;
  double hi = x < 1.0 ? b : x < 2.0 ? c : d;
  return fmin(fmax(y, fmin(lo, hi)), fmax(lo, hi));
}

void freeair__plant_system_of(const freeair__plant *plant, freeair__plant_system *s)
{
  const freeair_machine *m = &plant->c.m;
  s->volume = m->receiver_m3 - m->receiver_water_m3;
  s->leak_area = m->downstream_leak_m2;
  s->demand_kg_s = m->demand_m3_s * plant->c.site.barometric_pa / (plant->c.gas_r * plant->c.site.ambient_k);
  s->unloader_area = 0.0;
  s->gas_ua = m->receiver_gas_ua_w_k;
  s->wall_ua = m->receiver_wall_ua_w_k;
  s->wall_j_k = m->receiver_wall_j_k;
}

double freeair__plant_orifice(const freeair__plant *plant, double area, double p, double t)
{
  return freeair__receiver_orifice(&plant->c, area, p, t);
}

double freeair__plant_net(const freeair__plant *plant, const freeair__plant_map *map, const freeair__plant_system *s,
                          double p)
{
  double line_k = freeair__plant_at(plant, map, FREEAIR__PLANT_LINE_K, p);
  return freeair__plant_at(plant, map, FREEAIR__PLANT_MASS, p) -
         freeair__plant_orifice(plant, s->unloader_area, p, line_k) -
         freeair__plant_orifice(plant, s->leak_area, p, plant->c.site.ambient_k) - s->demand_kg_s;
}

/* Rates over the pressure: of time, gas mass, wall temperature. */
static int slopes(const freeair__plant *plant, const freeair__plant_map *map, const freeair__plant_system *s, double p,
                  double two_thirds, double least, const double y[3], double f[3])
{
  const freeair__cycle *c = &plant->c;
  double t = p * s->volume / (y[1] * c->gas_r);
  double in = freeair__plant_at(plant, map, FREEAIR__PLANT_MASS, p);
  double enthalpy = freeair__plant_at(plant, map, FREEAIR__PLANT_ENTHALPY, p);
  if (s->unloader_area > 0.0) {
    double line_k = freeair__plant_at(plant, map, FREEAIR__PLANT_LINE_K, p);
    double lost = freeair__plant_orifice(plant, s->unloader_area, p, line_k);
    in -= lost;
    enthalpy -= lost * c->cp * line_k;
  }
  double out = s->demand_kg_s;
  if (s->leak_area > 0.0) out += freeair__plant_orifice(plant, s->leak_area, p, t);
  double heat = s->gas_ua * two_thirds * (t - y[2]);
  double du = enthalpy - out * c->cp * t - heat;
  if (!(du > least) || !(in - out > 0.0)) return 0;
  f[0] = s->volume / (c->k - 1.0) / du;
  f[1] = (in - out) * f[0];
  f[2] = (heat - s->wall_ua * (y[2] - c->site.ambient_k)) / s->wall_j_k * f[0];
  return 1;
}

void freeair__plant_run(const freeair__plant *plant, const freeair__plant_map *map, const freeair__plant_system *s,
                        double mass, double wall_k, const double *p, int n, double *t, double *gained)
{
  double y[3] = {0.0, mass, wall_k};
  double pa = plant->c.site.barometric_pa;
  /* levelled off: a hundredth of the sound machine's flow of energy */
  double least = 0.01 * plant->sound.q[POINTS - 1][FREEAIR__PLANT_ENTHALPY];
  double whole = p[n - 1] - p[0];
  int stuck = 0;
  t[0] = 0.0;
  for (int i = 1; i < n; i++) {
    int steps = (int)ceil(10.0 * (p[i] - p[i - 1]) / whole);
    if (p[i - 1] < 2.0 * pa) steps += 3;
    double h = (p[i] - p[i - 1]) / (steps > 0 ? steps : 1);
    for (int k = 0; k < steps && !stuck; k++) {
      double at = p[i - 1] + h * k;
      double power[3] = {cbrt(at * at / (pa * pa)), cbrt((at + 0.5 * h) * (at + 0.5 * h) / (pa * pa)),
                         cbrt((at + h) * (at + h) / (pa * pa))};
      double f[4][3];
      for (int stage = 0; stage < 4 && !stuck; stage++) {
        double part = stage == 0 ? 0.0 : stage == 3 ? h : 0.5 * h;
        double z[3] = {y[0], y[1], y[2]};
        for (int q = 0; q < 3 && stage > 0; q++) z[q] += part * f[stage - 1][q];
        stuck = !slopes(plant, map, s, at + part, power[stage == 0 ? 0 : stage == 3 ? 2 : 1], least, z, f[stage]);
      }
      for (int q = 0; q < 3 && !stuck; q++)
        y[q] += h / 6.0 * (f[0][q] + 2.0 * f[1][q] + 2.0 * f[2][q] + f[3][q]);
    }
    t[i] = stuck ? INFINITY : y[0];
  }
  *gained = y[1] - mass;
}
