/* SPDX-License-Identifier: MIT */
#include <freeair/prediction.h>
#include <freeair/status.h>

#include "internal/bracket.h"
#include "internal/check.h"
#include "internal/machine.h"
#include "internal/prediction.h"
#include "internal/structure.h"

/* Operating points where those asked for are too few. */
enum { hard_nodes = 19 };

static const freeair_prediction_run initial_run = FREEAIR_PREDICTION_RUN_INIT;
static const freeair_prediction_result initial_result = FREEAIR_PREDICTION_RESULT_INIT;

static int optional_open(double x, double lo, double hi)
{
  return !freeair__given(x) || freeair__open(x, lo, hi);
}

static int optional_closed(double x, double lo, double hi)
{
  return !freeair__given(x) || freeair__closed(x, lo, hi);
}

static int32_t read_run(const freeair_prediction_run *run, freeair_prediction_run *q)
{
  *q = initial_run;
  int32_t status = freeair__structure_read(q, sizeof *q, run, FREEAIR_PREDICTION_RUN_BASELINE);
  if (status < 0) return status;
  if (q->flags != 0u || !optional_open(q->from_pa, 0.0, 1e8) || !optional_open(q->to_pa, 0.0, 1e8) ||
      !optional_closed(q->gas_k, 150.0, 600.0) || !optional_closed(q->wall_k, 150.0, 600.0) ||
      !optional_closed(q->draw_down_s, 1.0, 1e5) || !optional_closed(q->most_s, 1.0, 1e7) ||
      !optional_closed(q->accuracy, 1e-6, 0.1) || q->start < FREEAIR_PREDICTION_SOAKED ||
      q->start > FREEAIR_PREDICTION_GIVEN || q->nodes < 3 || q->nodes > FREEAIR__NODES_MOST)
    return FREEAIR_ERR_DOMAIN;
  q->draw_down_s = freeair__or(q->draw_down_s, 60.0);
  q->most_s = freeair__or(q->most_s, 7200.0);
  q->accuracy = freeair__or(q->accuracy, 1e-3);
  return FREEAIR_OK;
}

static int32_t read_machine(const freeair_machine *machine, const freeair_machine_site *site, freeair__cycle *c)
{
  freeair_machine m;
  freeair_machine_site s;
  int32_t status = freeair__machine_read(machine, &m);
  if (status == FREEAIR_OK) status = freeair__machine_site_read(site, &m, &s);
  if (status == FREEAIR_OK) freeair__cycle_build(c, &m, &s, s.barometric_pa, s.ambient_k);
  return status;
}

static void describe_receiver(const freeair__cycle *c, freeair__receiver *r)
{
  r->c = c;
  r->map = NULL;
  r->volume = c->m.receiver_m3 - c->m.receiver_water_m3;
  r->leak_area = c->m.downstream_leak_m2;
  r->demand_kg_s = c->m.demand_m3_s * c->site.barometric_pa / (c->gas_r * c->site.ambient_k);
}

/* Whether so little is left at the end of the run that the error of a few
 * operating points is no longer small beside it. */
static int hardly_arrives(const freeair__receiver *r, const freeair__delivery_map *map, double to_p)
{
  const double *mass = map->value[FREEAIR__DELIVERY_MASS];
  double lost = r->demand_kg_s + freeair__receiver_orifice(r->c, r->leak_area, to_p, r->c->site.ambient_k);
  return mass[map->n - 1] - lost < 0.35 * mass[0];
}

int32_t freeair__pump_run_prepare(const freeair_machine *machine, const freeair_machine_site *site,
                                  const freeair_prediction_run *run, double to_reading, freeair__pump_run *q,
                                  freeair__cycle_start *starts, freeair_cycle_result *points, int32_t *evaluations)
{
  if (machine == NULL || site == NULL || run == NULL) return FREEAIR_ERR_NULL;
  int32_t status = read_machine(machine, site, &q->c);
  if (status == FREEAIR_OK) status = read_run(run, &q->run);
  if (status < 0) return status;
  const freeair_machine *m = &q->c.m;
  double pa = q->c.site.barometric_pa;
  double ta = q->c.site.ambient_k;
  q->from_p = freeair__given(q->run.from_pa) ? q->run.from_pa - m->gauge_error_pa : pa;
  if (!freeair__given(to_reading)) to_reading = q->run.to_pa;
  q->to_p = freeair__given(to_reading) ? to_reading - m->gauge_error_pa : m->cut_out_pa + m->switch_error_pa;
  if (!(q->from_p > 0.0 && q->from_p < q->to_p && q->to_p <= 2e8)) return FREEAIR_ERR_DOMAIN;
  describe_receiver(&q->c, &q->receiver);
  if (q->run.start == FREEAIR_PREDICTION_DRAWN_DOWN) {
    if (freeair__receiver_draw_down(&q->receiver, m->cut_out_pa + m->switch_error_pa, q->from_p, q->run.draw_down_s,
                                    &q->start) < 0)
      return FREEAIR_ERR_NO_CONVERGENCE;
  } else if (q->run.start == FREEAIR_PREDICTION_GIVEN)
    freeair__receiver_set(&q->receiver, q->from_p, freeair__or(q->run.gas_k, ta), freeair__or(q->run.wall_k, ta),
                          &q->start);
  else
    freeair__receiver_set(&q->receiver, q->from_p, ta, ta, &q->start);
  q->start.t = 0.0;
  /* demand may draw the pressure below the start */
  double low = fmin(q->from_p, pa);
  if (q->from_p > pa && q->receiver.demand_kg_s == 0.0 && q->receiver.leak_area == 0.0) low = q->from_p;
  int n = q->run.nodes;
  status = freeair__delivery_map_build(&q->c, low, q->to_p, n, q->run.accuracy, &q->map, starts, points, evaluations);
  /* and so may a pump that lets back more than it brings */
  if (status == FREEAIR_OK && low > pa && q->map.value[FREEAIR__DELIVERY_MASS][0] < 0.0) {
    low = pa;
    status = freeair__delivery_map_build(&q->c, low, q->to_p, n, q->run.accuracy, &q->map, starts, points, evaluations);
  }
  if (status == FREEAIR_OK && starts == NULL && n < hard_nodes && hardly_arrives(&q->receiver, &q->map, q->to_p))
    status = freeair__delivery_map_build(&q->c, low, q->to_p, hard_nodes, q->run.accuracy, &q->map, NULL, points,
                                         evaluations);
  q->receiver.map = &q->map;
  return status;
}

static double reading(const freeair__pump_run *q, const freeair__receiver_state *s)
{
  return freeair__receiver_pressure(&q->receiver, s) + q->c.m.gauge_error_pa;
}

static double free_air(const freeair__cycle *c, double mass)
{
  return mass * c->gas_r * c->site.ambient_k / c->site.barometric_pa;
}

static double delivery_at(const freeair__pump_run *q, const freeair__receiver_state *s)
{
  double pump[FREEAIR__DELIVERY_QUANTITIES];
  freeair__delivery_map_at(&q->map, freeair__receiver_pressure(&q->receiver, s), pump);
  return free_air(&q->c, pump[FREEAIR__DELIVERY_MASS]);
}

static double gas_temperature(const freeair__pump_run *q, const freeair__receiver_state *s)
{
  return s->energy / (s->mass * q->c.cv);
}

static void summarise(const freeair__pump_run *q, const freeair__receiver_state *end, int reached,
                      freeair_prediction_result *r)
{
  r->time_s = reached ? end->t : INFINITY;
  r->end_pa = reading(q, end);
  r->start_gas_k = gas_temperature(q, &q->start);
  r->end_gas_k = gas_temperature(q, end);
  r->end_wall_k = end->wall;
  r->start_delivery_m3_s = delivery_at(q, &q->start);
  r->end_delivery_m3_s = delivery_at(q, end);
  r->mean_delivery_m3_s = free_air(&q->c, end->delivered / end->t);
  r->apparent_m3_s = q->c.m.receiver_m3 * (r->end_pa - reading(q, &q->start)) / (q->c.site.barometric_pa * end->t);
  r->shaft_j = end->work;
  r->reached = reached;
}

/* Runs to the end, noting when the cut-in pressure goes by. */
static int run_through(const freeair__pump_run *q, freeair__receiver_state *s, freeair_prediction_result *r)
{
  double cut_in = q->c.m.cut_in_pa + q->c.m.switch_error_pa;
  *s = q->start;
  if (q->from_p <= cut_in && cut_in < q->to_p) {
    int reached = freeair__receiver_advance(&q->receiver, q->run.most_s, cut_in, s);
    if (reached < 0) return reached;
    r->cut_in_s = reached ? s->t : INFINITY;
    if (!reached) return 0;
  }
  return freeair__receiver_advance(&q->receiver, q->run.most_s, q->to_p, s);
}

int32_t freeair_prediction_pumpup(const freeair_machine *machine, const freeair_machine_site *site,
                                  const freeair_prediction_run *run, freeair_prediction_result *result, double *t_s,
                                  double *p_pa, double *gas_k, double *delivery_m3_s, size_t n)
{
  double *arrays[] = {t_s, p_pa, gas_k, delivery_m3_s};
  int missing = result == NULL;
  for (size_t a = 0; a < 4; a++) {
    if (arrays[a] == NULL) missing = 1;
    for (size_t i = 0; arrays[a] != NULL && i < n; i++) arrays[a][i] = NAN;
  }
  freeair_prediction_result r = initial_result;
  int32_t status = missing ? FREEAIR_ERR_NULL : n < 2 ? FREEAIR_ERR_DOMAIN : FREEAIR_OK;
  freeair__pump_run q;
  if (status == FREEAIR_OK) status = freeair__pump_run_prepare(machine, site, run, NAN, &q, NULL, NULL, &r.evaluations);
  if (status == FREEAIR_OK) {
    freeair__receiver_state end;
    int reached = run_through(&q, &end, &r);
    freeair__receiver_state s = q.start;
    for (size_t i = 0; reached >= 0 && i < n; i++) {
      double t = i == n - 1 ? end.t : end.t * (double)i / (double)(n - 1);
      if (i == n - 1) s = end;
      else if (freeair__receiver_advance(&q.receiver, t, INFINITY, &s) < 0) reached = -1;
      t_s[i] = t;
      p_pa[i] = reading(&q, &s);
      gas_k[i] = gas_temperature(&q, &s);
      delivery_m3_s[i] = delivery_at(&q, &s);
    }
    if (reached >= 0) summarise(&q, &end, reached, &r);
    status = reached < 0 ? FREEAIR_ERR_NO_CONVERGENCE : reached == 0 ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
  }
  if (status < 0) {
    r = initial_result;
    for (size_t a = 0; a < 4; a++)
      for (size_t i = 0; arrays[a] != NULL && i < n; i++) arrays[a][i] = NAN;
  }
  if (result == NULL) return status;
  int32_t written = freeair__structure_write(result, &r, sizeof r, FREEAIR_PREDICTION_RESULT_BASELINE);
  return status < 0 ? status : written < 0 ? written : status;
}

static int32_t highest_reading(const double *p_pa, size_t n, double *highest)
{
  *highest = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!freeair__open(p_pa[i], 0.0, 1e8)) return FREEAIR_ERR_DOMAIN;
    if (p_pa[i] > *highest) *highest = p_pa[i];
  }
  return n > 0 ? FREEAIR_OK : FREEAIR_ERR_DOMAIN;
}

/* Goes from reading to reading upwards, whatever their order. */
static int find_times(const freeair__pump_run *q, const double *p_pa, double *t_s, size_t n, freeair__receiver_state *s)
{
  int reached = 1;
  double done = 0.0;
  *s = q->start;
  for (size_t found = 0; found < n;) {
    double next = INFINITY;
    for (size_t i = 0; i < n; i++)
      if (p_pa[i] > done && p_pa[i] < next) next = p_pa[i];
    if (reached == 1) reached = freeair__receiver_advance(&q->receiver, q->run.most_s,
                                                          next - q->c.m.gauge_error_pa, s);
    if (reached < 0) return reached;
    for (size_t i = 0; i < n; i++)
      if (p_pa[i] == next) {
        t_s[i] = reached ? s->t : INFINITY;
        found++;
      }
    done = next;
  }
  return reached;
}

int32_t freeair__pump_run_times(const freeair_machine *machine, const freeair_machine_site *site,
                                const freeair_prediction_run *run, const double *p_pa, double *t_s, size_t n,
                                freeair__pump_run *q, freeair_cycle_result *points, freeair_prediction_result *r)
{
  double highest;
  *r = initial_result;
  int32_t status = highest_reading(p_pa, n, &highest);
  if (status == FREEAIR_OK)
    status = freeair__pump_run_prepare(machine, site, run, highest, q, NULL, points, &r->evaluations);
  if (status == FREEAIR_OK) {
    freeair__receiver_state end;
    int reached = run_through(q, &end, r);
    if (reached >= 0) {
      summarise(q, &end, reached, r);
      reached = find_times(q, p_pa, t_s, n, &end);
    }
    status = reached < 0 ? FREEAIR_ERR_NO_CONVERGENCE : reached == 0 ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
  }
  if (status < 0) {
    *r = initial_result;
    for (size_t i = 0; i < n; i++) t_s[i] = NAN;
  }
  return status;
}

int32_t freeair_prediction_times(const freeair_machine *machine, const freeair_machine_site *site,
                                 const freeair_prediction_run *run, freeair_prediction_result *result,
                                 const double *p_pa, double *t_s, size_t n)
{
  for (size_t i = 0; t_s != NULL && i < n; i++) t_s[i] = NAN;
  freeair_prediction_result r = initial_result;
  freeair__pump_run q;
  int32_t status = FREEAIR_ERR_NULL;
  if (result != NULL && p_pa != NULL && t_s != NULL)
    status = freeair__pump_run_times(machine, site, run, p_pa, t_s, n, &q, NULL, &r);
  if (result == NULL) return status;
  int32_t written = freeair__structure_write(result, &r, sizeof r, FREEAIR_PREDICTION_RESULT_BASELINE);
  return status < 0 ? status : written < 0 ? written : status;
}

/* Net flow into the receiver at a pressure, over the displacement. */
static int32_t net_flow(freeair__cycle *c, const freeair__receiver *r, double p, freeair__cycle_state *s,
                        freeair__cycle_work *work, double *net)
{
  freeair__cycle_sums sums;
  freeair__cycle_effort effort;
  freeair__cycle_receiver(c, p, c->site.ambient_k);
  int32_t status = freeair__cycle_solve(c, 1e-4, s, work, &sums, &effort);
  if (status < 0) {
    s->known = 0;
    status = freeair__cycle_solve(c, 1e-4, s, work, &sums, &effort);
  }
  double per_s = s->omega / 6.28318530717958647693;
  double out = freeair__receiver_orifice(c, r->leak_area, p, c->site.ambient_k) + r->demand_kg_s;
  *net = (sums.mass[c->link_check] * per_s - out) / (c->mass_scale * per_s) - 5e-5;
  return status;
}

int32_t freeair_prediction_level_off(const freeair_machine *machine, const freeair_machine_site *site,
                                     double upper_pa, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (machine == NULL || site == NULL) return FREEAIR_ERR_NULL;
  freeair__cycle c;
  int32_t status = read_machine(machine, site, &c);
  if (status < 0) return status;
  if (freeair__given(upper_pa) && !freeair__upto(upper_pa, 0.0, 1e8)) return FREEAIR_ERR_DOMAIN;
  freeair__receiver r;
  describe_receiver(&c, &r);
  freeair__bracket p = {c.site.barometric_pa, freeair__or(upper_pa, 2.0 * c.m.cut_out_pa), NAN, NAN};
  if (!(p.hi > p.lo)) return FREEAIR_ERR_DOMAIN;
  freeair__cycle_state s = {.known = 0};
  freeair__cycle_work work = {.factored = 0};
  status = net_flow(&c, &r, p.lo, &s, &work, &p.at_lo);
  if (status < 0) return status;
  if (p.at_lo <= 0.0) {
    *p_pa = p.lo + c.m.gauge_error_pa;
    return FREEAIR_OK;
  }
  status = net_flow(&c, &r, p.hi, &s, &work, &p.at_hi);
  if (status < 0) return status;
  if (p.at_hi > 0.0) {
    *p_pa = INFINITY;
    return FREEAIR_WARN_LIMIT;
  }
  for (int i = 0; i < 60 && p.hi - p.lo > 1e-4 * p.hi; i++) {
    const double x = freeair__bracket_next(&p, i, 3);
    double at_x;
    status = net_flow(&c, &r, x, &s, &work, &at_x);
    if (status < 0) return status;
    freeair__bracket_draw(&p, x, at_x);
  }
  *p_pa = 0.5 * (p.lo + p.hi) + c.m.gauge_error_pa;
  return FREEAIR_OK;
}

int32_t freeair_prediction_leak_down(const freeair_machine *machine, const freeair_machine_site *site,
                                     double from_pa, double gas_k, double wall_k, double duration_s,
                                     int32_t with_check_valve, int32_t with_downstream, double *t_s, double *p_pa,
                                     size_t n)
{
  for (size_t i = 0; i < n; i++) {
    if (t_s != NULL) t_s[i] = NAN;
    if (p_pa != NULL) p_pa[i] = NAN;
  }
  if (machine == NULL || site == NULL || t_s == NULL || p_pa == NULL) return FREEAIR_ERR_NULL;
  freeair__cycle c;
  int32_t status = read_machine(machine, site, &c);
  if (status < 0) return status;
  if (!freeair__open(from_pa, 0.0, 1e8) || !optional_closed(gas_k, 150.0, 600.0) ||
      !optional_closed(wall_k, 150.0, 600.0) || !freeair__upto(duration_s, 0.0, 1e7) || with_check_valve < 0 ||
      with_check_valve > 1 || with_downstream < 0 || with_downstream > 1 || n < 2 ||
      !(from_pa - c.m.gauge_error_pa > 0.0))
    return FREEAIR_ERR_DOMAIN;
  freeair__receiver r;
  describe_receiver(&c, &r);
  if (!with_downstream) {
    r.leak_area = 0.0;
    r.demand_kg_s = 0.0;
  }
  if (with_check_valve) r.leak_area += c.m.check_valve_leak_m2;
  freeair__receiver_state s;
  double ta = c.site.ambient_k;
  freeair__receiver_set(&r, from_pa - c.m.gauge_error_pa, freeair__or(gas_k, ta), freeair__or(wall_k, ta), &s);
  for (size_t i = 0; i < n; i++) {
    double t = duration_s * (double)i / (double)(n - 1);
    if (status == FREEAIR_OK && i > 0 && freeair__receiver_advance(&r, t, INFINITY, &s) < 0)
      status = FREEAIR_ERR_NO_CONVERGENCE;
    t_s[i] = t;
    p_pa[i] = freeair__receiver_pressure(&r, &s) + c.m.gauge_error_pa;
  }
  for (size_t i = 0; status < 0 && i < n; i++) t_s[i] = p_pa[i] = NAN;
  return status;
}
