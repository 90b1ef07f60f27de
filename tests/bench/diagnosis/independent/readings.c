/* SPDX-License-Identifier: MIT */
#include "inspect.h"

#include <math.h>

enum { LEAK_DOWN_POINTS = 41 };

static const double patience_s = 6000.0;

/* Rarely a reading is simply wrong. */
static double misread(dice *d, double relative_sd)
{
  return dice_chance(d, 0.015) ? dice_factor(d, relative_sd) : 1.0;
}

static int taken(dice *d)
{
  return dice_chance(d, 0.9);
}

/* Displacement as mass of free air. */
static double displaced_kg_s(const truth *t)
{
  return truth_displacement_m3_s(&t->m) * t->site.barometric_pa / (287.05 * t->site.ambient_k);
}

/* ---- filling ---- */

/* True pressures when the gauge shows n even steps up to cut-out; the last is where the
 * switch acts. */
static void pressures_at_marks(inspection *in, int n, double *true_pa)
{
  const truth *t = in->t;
  double pa = t->site.barometric_pa;
  for (int i = 0; i < n; i++) {
    double shown_pa = pa + (t->m.cut_out_pa - pa) * (i + 1) / n;
    true_pa[i] = pa + (shown_pa - pa - t->gauge_bias_pa * (i + 1) / n) / (1.0 + t->gauge_span);
  }
  true_pa[n - 1] = t->m.cut_out_pa - t->gauge_bias_pa + dice_normal(in->d, 0.002) * t->m.cut_out_pa;
}

/* The log: hand on a stop watch, eyes on a needle. */
static void log_filling(inspection *in, int n, const double *true_s, double watch)
{
  visit *v = in->v;
  double pa = in->t->site.barometric_pa;
  double span_pa = in->t->m.cut_out_pa - pa;
  for (int i = 0; i < n && true_s[i] < patience_s; i++) {
    double s = true_s[i] * (1.0 + watch * 0.3) + dice_uniform(in->d, -0.7, 0.7);
    v->log_t_s[v->n_log] = s < 0.2 ? 0.2 + i * 0.2 : s;
    v->log_p_pa[v->n_log++] = pa + span_pa * (i + 1) / n + dice_normal(in->d, 0.003) * span_pa;
  }
  for (size_t i = 1; i < v->n_log; i++)
    if (v->log_t_s[i] <= v->log_t_s[i - 1]) v->log_t_s[i] = v->log_t_s[i - 1] + 0.1;
}

static void time_from_cut_in(inspection *in, double cut_out_pa)
{
  const truth *t = in->t;
  double during_s = dice_uniform(in->d, 25.0, 150.0);
  receiver_start from =
      receiver_drawn_down(&t->m, &t->site, &t->by, t->m.cut_out_pa, t->m.cut_in_pa, during_s);
  from.pa -= t->gauge_bias_pa;
  double s;
  receiver_fill(&t->m, &t->site, &t->by, &in->map, from, &cut_out_pa, 1, 7000.0, &s);
  if (!(s < patience_s) || !taken(in->d)) return;
  s = (s + dice_uniform(in->d, -0.7, 0.7)) * (1.0 + dice_normal(in->d, 0.008));
  in->v->readings.t_cutin_to_cutout_s = fmax(1.0, s * misread(in->d, 0.25));
}

/* Where hardly anything is delivered any more. */
static double level_off(const inspection *in, double before_m3_s)
{
  double p = in->t->site.barometric_pa * 1.02;
  for (; p < in->t->m.cut_out_pa; p *= 1.002) {
    pump_result r = pump_map_at(&in->map, p);
    if (!(truth_net_m3_s(in->t, &r, p) > 0.004 * before_m3_s)) break;
  }
  return p;
}

static void read_level_off(inspection *in)
{
  const truth *t = in->t;
  double pa = t->site.barometric_pa;
  double rise_pa = in->end_pa - pa;
  double shown_pa = pa + rise_pa * (1.0 + dice_normal(in->d, 0.01)) +
                    t->gauge_bias_pa * rise_pa / (t->m.cut_out_pa - pa);
  in->v->readings.p_level_off_pa = fmax(shown_pa, pa + 2e3);
}

void inspect_filling(inspection *in, double before_m3_s)
{
  const truth *t = in->t;
  double pa = t->site.barometric_pa;
  double soaked_k = t->site.ambient_k + dice_normal(in->d, 1.5);
  int n = 10 + (int)dice_uniform(in->d, 0.0, 6.0);
  double true_pa[VISIT_LOG];
  double true_s[VISIT_LOG];
  pressures_at_marks(in, n, true_pa);
  receiver_start empty = {pa * 1.0001, soaked_k, soaked_k};
  receiver_fill(&t->m, &t->site, &t->by, &in->map, empty, true_pa, n, 7000.0, true_s);
  double watch = dice_normal(in->d, 0.006);
  double wrong = misread(in->d, 0.25);
  log_filling(in, n, true_s, watch);
  int arrives = true_s[n - 1] < patience_s;
  if (arrives) {
    in->end_pa = t->m.cut_out_pa;
    if (taken(in->d))
      in->v->readings.t_empty_to_cutout_s =
          (true_s[n - 1] * (1.0 + watch) + dice_uniform(in->d, -1.0, 1.0)) * wrong;
    time_from_cut_in(in, true_pa[n - 1]);
  } else {
    in->end_pa = level_off(in, before_m3_s);
    read_level_off(in);
  }
  in->v->receiver_pa = arrives ? 0.97 * in->end_pa : fmax(0.97 * in->end_pa, 1.2 * pa);
  in->top = pump_map_at(&in->map, in->v->receiver_pa);
}

/* ---- running near the top ---- */

/* A needle that swings between the extremes is read somewhere near its middle. */
static void read_interstage(inspection *in)
{
  visit *v = in->v;
  double pa = in->t->site.barometric_pa;
  double gauge = 1.0 + dice_normal(in->d, 0.015);
  for (int i = 0; i < VISIT_INTERSTAGE && v->family != 2; i++) {
    double at_pa = pa + (v->receiver_pa - pa) * (i + 2) / (VISIT_INTERSTAGE + 1);
    pump_result r = pump_map_at(&in->map, at_pa);
    double p = pa + (r.interstage_mean_pa - pa) * gauge + dice_normal(in->d, 3e3);
    p += dice_uniform(in->d, -0.1, 0.1) * (r.interstage_max_pa - r.interstage_min_pa);
    if (!dice_chance(in->d, 0.92)) continue;
    v->interstage_at_pa[v->n_interstage] = at_pa;
    v->interstage_pa[v->n_interstage++] = fmax(p * misread(in->d, 0.25), 0.5 * pa);
  }
}

/* A thermometer on a pipe: the less air flows, the more it shows of the head. */
static double on_the_pipe(const truth *t, double flow_kg_s, double gas_k, double head_k)
{
  double share = flow_kg_s / (flow_kg_s + 0.03 * displaced_kg_s(t));
  if (!(share > 0.0)) share = 0.0;
  return share * gas_k + (1.0 - share) * head_k;
}

static void read_temperature(dice *d, double true_k, double bias_k, double sd_k, double *reading_k)
{
  /* pipes so hot lose much to everything about them */
  if (true_k > 640.0) true_k = 640.0 + (true_k - 640.0) * 0.2;
  if (!isfinite(true_k) || !taken(d)) return;
  *reading_k = true_k + bias_k + dice_normal(d, sd_k);
  if (dice_chance(d, 0.015)) *reading_k += dice_normal(d, 40.0);
}

static void read_temperatures(inspection *in)
{
  const pump_result *r = &in->top;
  freeair_evidence_readings *o = &in->v->readings;
  dice *d = in->d;
  double thermometer_k = dice_normal(d, 4.0);
  double lp_k = dice_normal(d, 6.0) - 3.0;
  double hp_k = dice_normal(d, 6.0) - 3.0;
  double out_kg_s = r->delivery_m3_s * displaced_kg_s(in->t) / truth_displacement_m3_s(&in->t->m);
  double lp_kg_s = in->v->family == 2 ? out_kg_s : fmax(out_kg_s, r->intake_kg_s * 0.9);
  read_temperature(d, on_the_pipe(in->t, lp_kg_s, r->lp_discharge_k, r->lp_wall_k + 30.0), lp_k + thermometer_k, 4.0,
                   &o->t_lp_discharge_k);
  if (in->v->family == 2) return;
  read_temperature(d, on_the_pipe(in->t, fmax(out_kg_s, 0.0), r->hp_discharge_k, r->hp_wall_k + 20.0),
                   hp_k + thermometer_k, 4.0, &o->t_hp_discharge_k);
  read_temperature(d, r->intercooler_k, thermometer_k - 2.0, 3.0, &o->t_intercooler_out_k);
}

static void read_meter(dice *d, double value, double relative_sd, double *reading)
{
  if (!taken(d)) return;
  double error = 1.0 + dice_normal(d, relative_sd);
  *reading = value * error * misread(d, 0.2);
}

void inspect_running(inspection *in)
{
  const pump_result *r = &in->top;
  freeair_evidence_readings *o = &in->v->readings;
  read_interstage(in);
  read_temperatures(in);
  read_meter(in->d, r->motor_speed_rev_s, 0.002, &o->motor_speed_rev_s);
  read_meter(in->d, r->speed_rev_s, 0.003, &o->pump_speed_rev_s);
  double efficiency = dice_uniform(in->d, 0.76, 0.88);
  read_meter(in->d, r->motor_w / efficiency, 0.02, &o->power_w);
}

/* ---- stopped ---- */

/* V dp / (pa t) of a leak-down of ten minutes, or until 15 % of the pressure is
 * gone; the receiver still cools a little. Fittings leak a little everywhere. */
static double leak_found(inspection *in, int open)
{
  const truth *t = in->t;
  dice *d = in->d;
  double pa[LEAK_DOWN_POINTS];
  freeair_machine m = t->m;
  double per_share_m2 = truth_displacement_m3_s(&m) * 1e5 / (200.0 * m.cut_out_pa);
  m.demand_m3_s = 0.0;
  double fittings = fabs(dice_normal(d, open ? 0.015 : 0.002));
  if (open) m.downstream_leak_m2 += fittings * per_share_m2;
  else m.downstream_leak_m2 = fabs(dice_normal(d, 0.002)) * per_share_m2; /* behind a shut valve: its own fittings */
  receiver_start from = {in->end_pa, 0.0, 0.0};
  from.gas_k = t->site.ambient_k + fabs(dice_normal(d, 1.5));
  from.wall_k = t->site.ambient_k + fabs(dice_normal(d, 0.5));
  receiver_leak_down(&m, &t->site, &t->by, from, 600.0, LEAK_DOWN_POINTS, pa);
  int last = LEAK_DOWN_POINTS - 1;
  for (int i = 4; i < last; i++)
    if (pa[i] < 0.85 * in->end_pa) last = i;
  double during_s = 600.0 * last / (LEAK_DOWN_POINTS - 1);
  double drop_pa = pa[0] - pa[last] + dice_normal(d, 0.002) * in->end_pa;
  return fmax(0.0, in->v->nameplate.receiver_m3 * drop_pa / (t->site.barometric_pa * during_s));
}

void inspect_stopped(inspection *in)
{
  freeair_evidence_readings *o = &in->v->readings;
  for (int open = 0; open < 2; open++) {
    double leak_m3_s = leak_found(in, open);
    if (!taken(in->d)) continue;
    double error = 1.0 + dice_normal(in->d, 0.05);
    *(open ? &o->leak_open_m3_s : &o->leak_isolated_m3_s) = leak_m3_s * error * misread(in->d, 0.3);
  }
}
