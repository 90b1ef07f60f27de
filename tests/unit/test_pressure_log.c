/* SPDX-License-Identifier: MIT */
#include <freeair/pressure_log.h>
#include <freeair/status.h>

#include "../suite.h"
#include "synthetic_plant.h"

#include <check.h>
#include <string.h>

enum { most = 400 };

static freeair_pressure_log_phase phases[most];

static size_t cut(const record *r, const int32_t *state, const freeair_pressure_log_options *options)
{
  freeair_pressure_log_options none = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;
  size_t n = 0;
  for (size_t i = 0; i < most; i++) phases[i] = (freeair_pressure_log_phase)FREEAIR_PRESSURE_LOG_PHASE_INIT;
  ck_assert_int_eq(freeair_pressure_log_segment(r->t_s, r->p_pa, state, r->n, options != NULL ? options : &none, phases,
                                                sizeof phases[0], most, &n),
                   FREEAIR_OK);
  ck_assert_uint_le(n, most);
  /* phases are in order, they meet, and cover every reading */
  uint32_t next = 0;
  for (size_t i = 0; i < n; i++) {
    const freeair_pressure_log_phase *p = &phases[i];
    if (p->kind == FREEAIR_PRESSURE_LOG_GAP) continue;
    ck_assert_uint_ge(p->first + p->count, next);
    next = p->first + p->count;
    if (i > 0 && p->start_seen) ck_assert_double_eq(p->start_s, phases[i - 1].end_s);
    ck_assert_int_eq(p->start_seen != 0, i > 0 && phases[i - 1].end_seen);
    ck_assert(p->end_s >= p->start_s);
  }
  return n;
}

static int count(size_t n, int32_t kind)
{
  int found = 0;
  for (size_t i = 0; i < n; i++) found += phases[i].kind == kind;
  return found;
}

static double loaded_s(size_t n)
{
  double sum = 0.0;
  for (size_t i = 0; i < n; i++)
    if (phases[i].kind == FREEAIR_PRESSURE_LOG_LOADED) sum += phases[i].end_s - phases[i].start_s;
  return sum;
}

/* Starts in the middle of a rest; loads of some 40 s, rests of some 740 s. */
static history shop_history(double duration_s, double run_on_s)
{
  plant p = plant_of(0.3, 0.012, 1.05e6);
  p.leak_kg_s = 0.0006 * 1.2;
  return plant_run(&p, 9.5e5, 0, 8.5e5, 10.5e5, run_on_s, duration_s, 0.25);
}

static int loads_that_begin(const history *h)
{
  int n = 0;
  for (size_t i = 1; i < h->n; i++) n += h->state[i] == 1 && h->state[i - 1] != 1;
  return n;
}

/* Every load that begins or ends, against the phases found. */
static void compare_instants(const history *h, size_t n, double allowed_s, double sigmas)
{
  for (size_t i = 1; i < h->n; i++) {
    int begins = h->state[i] == 1 && h->state[i - 1] != 1;
    int ends = h->state[i] != 1 && h->state[i - 1] == 1;
    if (!begins && !ends) continue;
    double t = (double)i * h->step_s;
    double nearest = INFINITY;
    double u = 0.0;
    for (size_t k = 0; k < n; k++) {
      if ((phases[k].kind == FREEAIR_PRESSURE_LOG_LOADED) != begins || !phases[k].start_seen) continue;
      if (!(fabs(phases[k].start_s - t) < fabs(nearest))) continue;
      nearest = phases[k].start_s - t;
      u = phases[k].start_uncertainty_s;
    }
    ck_assert_msg(fabs(nearest) < allowed_s + sigmas * u, "%s at %g s is off by %g s, said to be uncertain by %g s",
                  begins ? "load" : "end of load", t, nearest, u);
  }
}

START_TEST(cycles_under_noise_and_resolution)
{
  const double steps[] = {1.0, 5.0, 10.0, 20.0};
  const double noises[] = {0.0, 200.0, 1000.0, 3000.0};
  const double resolutions[] = {0.0, 200.0, 1000.0, 10000.0};
  history h = shop_history(6000.0, 0.0);
  int loads = loads_that_begin(&h);
  for (int k = 0; k < 16; k++) {
    logger l = {.step_s = steps[_i], .jitter = 0.2, .noise_pa = noises[k / 4], .resolution_pa = resolutions[k % 4],
                .chance = {.state = 1000u + (uint64_t)k}};
    record r = logger_read(&l, &h);
    size_t n = cut(&r, NULL, NULL);
    ck_assert_msg(count(n, FREEAIR_PRESSURE_LOG_LOADED) == loads, "%d loads of %d, step %g noise %g resolution %g",
                  count(n, FREEAIR_PRESSURE_LOG_LOADED), loads, l.step_s, l.noise_pa, l.resolution_pa);
    ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_IDLE), loads + 1);
    compare_instants(&h, n, 1.0 + 0.02 * l.resolution_pa / 200.0, 4.0);
    n = cut(&r, r.state, NULL);
    ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_LOADED), loads);
    compare_instants(&h, n, 1.0, 4.0);
    record_free(&r);
  }
  history_free(&h);
}
END_TEST

START_TEST(slopes_and_pressures)
{
  history h = shop_history(6000.0, 100.0);
  logger l = {.step_s = 5.0, .jitter = 0.1, .noise_pa = 300.0, .resolution_pa = 100.0, .chance = {.state = 4}};
  record r = logger_read(&l, &h);
  size_t n = cut(&r, r.state, NULL);
  for (size_t i = 1; i + 1 < n; i++) {
    const freeair_pressure_log_phase *p = &phases[i];
    size_t a = (size_t)(p->start_s / h.step_s);
    size_t b = (size_t)(p->end_s / h.step_s);
    double mean = (h.p_pa[b] - h.p_pa[a]) / (p->end_s - p->start_s);
    ck_assert_double_eq_tol(p->slope_pa_s / mean, 1.0, 0.2); /* a median slope, of a curve that bends */
    ck_assert_double_eq_tol(p->p_start_pa, h.p_pa[a], 6000.0);
    if (p->kind == FREEAIR_PRESSURE_LOG_LOADED) {
      ck_assert_double_eq_tol(p->p_start_pa, 8.5e5, 6000.0);
      ck_assert_double_eq_tol(p->p_end_pa, 10.5e5, 10000.0);
      ck_assert_double_gt(p->early_slope_pa_s, p->late_slope_pa_s); /* heating */
    }
    if (p->kind == FREEAIR_PRESSURE_LOG_UNLOADED) {
      ck_assert_int_eq(p->settled, 0); /* 100 s are not enough for the gas to cool */
      ck_assert_double_lt(p->early_slope_pa_s, p->late_slope_pa_s);
    }
    if (p->kind == FREEAIR_PRESSURE_LOG_STOPPED) ck_assert_int_eq(p->settled, 1);
  }
  record_free(&r);
  history_free(&h);
}
END_TEST

static record damaged_log(const history *h, uint64_t seed)
{
  logger l = {.step_s = 10.0, .jitter = 0.1, .noise_pa = 300.0, .resolution_pa = 200.0, .chance = {.state = seed}};
  return logger_read(&l, h);
}

static size_t index_at(const record *r, double t)
{
  size_t i = 0;
  while (i + 1 < r->n && r->t_s[i] < t) i++;
  return i;
}

static void drop(record *r, size_t from, size_t to)
{
  memmove(r->t_s + from, r->t_s + to, (r->n - to) * sizeof *r->t_s);
  memmove(r->p_pa + from, r->p_pa + to, (r->n - to) * sizeof *r->p_pa);
  memmove(r->state + from, r->state + to, (r->n - to) * sizeof *r->state);
  r->n -= to - from;
}

START_TEST(gaps_are_not_bridged)
{
  history h = shop_history(6000.0, 0.0);
  record r = damaged_log(&h, 11);
  size_t n = cut(&r, NULL, NULL);
  int loads = count(n, FREEAIR_PRESSURE_LOG_LOADED);
  size_t from = index_at(&r, 1000.0);
  drop(&r, from, index_at(&r, 1250.0));
  n = cut(&r, NULL, NULL);
  ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_GAP), 1);
  ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_LOADED), loads);
  for (size_t i = 0; i < n; i++)
    if (phases[i].kind == FREEAIR_PRESSURE_LOG_GAP) {
      ck_assert_double_eq_tol(phases[i].end_s - phases[i].start_s, 250.0, 25.0);
      ck_assert_int_eq(phases[i - 1].end_seen, 0);
      ck_assert_int_eq(phases[i + 1].start_seen, 0);
    }
  record_free(&r);
  history_free(&h);
}
END_TEST

START_TEST(frozen_logger_is_seen)
{
  const double from[] = {2000.0, 2300.0, 5200.0, 0.0};
  const double to[] = {2600.0, 2600.0, 6000.0, 700.0}; /* across a cut-in, within a rest, to the end, from the start */
  for (int k = 0; k < 4; k++) {
    history h = shop_history(6000.0, 0.0);
    record r = damaged_log(&h, 20u + (uint64_t)k);
    size_t a = index_at(&r, from[k]);
    size_t b = index_at(&r, to[k]);
    for (size_t i = a; i <= b; i++) r.p_pa[i] = r.p_pa[a];
    size_t n = cut(&r, NULL, NULL);
    ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_FROZEN), 1);
    for (size_t i = 0; i < n; i++)
      if (phases[i].kind == FREEAIR_PRESSURE_LOG_FROZEN) {
        ck_assert_double_eq_tol(phases[i].start_s, r.t_s[a], 25.0);
        ck_assert_double_eq_tol(phases[i].end_s, r.t_s[b], 25.0);
        ck_assert(isnan(phases[i].slope_pa_s));
      }
    record_free(&r);
    history_free(&h);
  }
  /* a coarse gauge stands still honestly */
  plant tight = plant_of(0.3, 0.012, 1.05e6);
  history h = plant_run(&tight, 9.9e5, 1, 8.5e5, 10.5e5, 0.0, 6000.0, 0.25);
  logger l = {.step_s = 10.0, .resolution_pa = 10000.0, .chance = {.state = 3}};
  record r = logger_read(&l, &h);
  size_t n = cut(&r, NULL, NULL);
  ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_FROZEN), 0);
  for (size_t i = 0; i < r.n; i++) r.p_pa[i] = 9e5; /* but not through a whole log */
  n = cut(&r, NULL, NULL);
  ck_assert_uint_eq(n, 1);
  ck_assert_int_eq(phases[0].kind, FREEAIR_PRESSURE_LOG_FROZEN);
  record_free(&r);
  history_free(&h);
}
END_TEST

START_TEST(times_out_of_order_and_missing_readings)
{
  history h = shop_history(6000.0, 0.0);
  record clean = damaged_log(&h, 31);
  size_t n_clean = cut(&clean, NULL, NULL);
  record r = damaged_log(&h, 31);
  luck l = {.state = 9};
  uint32_t spoiled = 0;
  for (size_t i = 10; i + 10 < r.n; i += 7 + (size_t)(10.0 * luck_uniform(&l))) {
    int what = (int)(4.0 * luck_uniform(&l));
    if (what == 0) r.t_s[i] = r.t_s[i - 1];              /* repeats */
    if (what == 1) r.t_s[i] -= 50.0 + 500.0 * luck_uniform(&l); /* runs back */
    if (what == 2) r.t_s[i] += 1e6;                      /* far ahead */
    if (what == 3) r.p_pa[i] = NAN;                      /* missing */
    spoiled++;
  }
  size_t n = cut(&r, NULL, NULL);
  ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_LOADED), count(n_clean, FREEAIR_PRESSURE_LOG_LOADED));
  ck_assert_uint_eq(n, n_clean);
  uint32_t left_out = 0;
  for (size_t i = 0; i < n; i++) left_out += phases[i].left_out;
  ck_assert_uint_le(left_out, spoiled);
  ck_assert_uint_ge(left_out, spoiled - 3); /* at a boundary one may fall between two phases */
  record_free(&r);
  record_free(&clean);

  /* a clock set back by an hour starts a new piece, and nothing is lost */
  r = damaged_log(&h, 31);
  for (size_t i = 250; i < r.n; i++) r.t_s[i] -= 3600.0;
  size_t cut_n = cut(&r, NULL, NULL);
  ck_assert_int_eq(count(cut_n, FREEAIR_PRESSURE_LOG_GAP), 1);
  ck_assert_int_ge(count(cut_n, FREEAIR_PRESSURE_LOG_LOADED), loads_that_begin(&h) - 1);
  record_free(&r);

  /* shuffled readings are refused */
  r = damaged_log(&h, 31);
  for (size_t i = r.n - 1; i > 0; i--) {
    size_t k = (size_t)(luck_uniform(&l) * (double)(i + 1));
    double t = r.t_s[i];
    r.t_s[i] = r.t_s[k];
    r.t_s[k] = t;
  }
  freeair_pressure_log_options none = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;
  size_t found = 77;
  ck_assert_int_eq(
      freeair_pressure_log_segment(r.t_s, r.p_pa, NULL, r.n, &none, phases, sizeof phases[0], most, &found),
      FREEAIR_ERR_DATA);
  ck_assert_uint_eq(found, 0);
  record_free(&r);
  history_free(&h);
}
END_TEST

START_TEST(single_outliers_do_not_turn_the_pressure)
{
  history h = shop_history(6000.0, 0.0);
  record r = damaged_log(&h, 41);
  size_t n = cut(&r, NULL, NULL);
  int loads = count(n, FREEAIR_PRESSURE_LOG_LOADED);
  r.p_pa[50] = 20e5;
  r.p_pa[150] = 1e3;
  r.p_pa[333] = 0.0;
  n = cut(&r, NULL, NULL);
  ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_LOADED), loads);
  record_free(&r);
  history_free(&h);
}
END_TEST

/* A burst of demand above the capacity: the machine is loaded while the pressure falls. */
START_TEST(burst_of_demand_below_cut_in)
{
  plant p = plant_of(0.3, 0.012, 1.05e6);
  p.leak_kg_s = 0.0006 * 1.2;
  p.demand_kg_s = 0.02 * 1.2;
  p.demand_every_s = 1e6;
  p.demand_from_s = 3000.0;
  p.demand_for_s = 150.0;
  history h = plant_run(&p, 9.5e5, 0, 8.5e5, 10.5e5, 0.0, 6000.0, 0.25);
  record r = damaged_log(&h, 51);
  size_t n = cut(&r, NULL, NULL);
  double truth = 0.0;
  for (size_t i = 0; i < h.n; i++) truth += (h.state[i] == 1) * h.step_s;
  ck_assert_double_eq_tol(loaded_s(n), truth, 40.0);
  record_free(&r);
  history_free(&h);
}
END_TEST

/* Demand that swings about the delivery of a machine that never unloads. With
 * the pressures of the switch known that is seen; without, falls are not called idle. */
START_TEST(overloaded_machine)
{
  plant p = plant_of(0.3, 0.012, 1.05e6);
  p.leak_kg_s = 0.0085 * 1.2;
  p.demand_kg_s = 0.006 * 1.2;
  p.demand_every_s = 250.0;
  p.demand_for_s = 140.0;
  history h = plant_run(&p, 9e5, 1, 8.5e5, 10.5e5, 0.0, 5000.0, 0.25);
  for (size_t i = 0; i < h.n; i++) ck_assert_int_eq(h.state[i], 1);
  record r = damaged_log(&h, 61);
  freeair_pressure_log_options o = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;
  o.cut_in_pa = 8.5e5;
  o.cut_out_pa = 10.5e5;
  size_t n = cut(&r, NULL, &o);
  const double loaded = loaded_s(n);
  ck_assert_double_gt(loaded, 0.95 * 5000.0);
  record_free(&r);
  history_free(&h);
}
END_TEST

START_TEST(narrow_band_is_found_by_itself)
{
  plant p = plant_of(0.3, 0.012, 1.05e6);
  p.leak_kg_s = 0.0006 * 1.2;
  history h = plant_run(&p, 9.95e5, 0, 9.9e5, 10.1e5, 0.0, 3000.0, 0.25);
  logger l = {.step_s = 2.0, .jitter = 0.1, .noise_pa = 300.0, .resolution_pa = 200.0, .chance = {.state = 71}};
  record r = logger_read(&l, &h);
  size_t n = cut(&r, NULL, NULL);
  ck_assert_int_eq(count(n, FREEAIR_PRESSURE_LOG_LOADED), loads_that_begin(&h));
  record_free(&r);
  history_free(&h);
}
END_TEST

START_TEST(room_for_fewer_phases)
{
  history h = shop_history(6000.0, 0.0);
  record r = damaged_log(&h, 81);
  size_t n = cut(&r, NULL, NULL);
  freeair_pressure_log_options none = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;
  freeair_pressure_log_phase few[3];
  for (int i = 0; i < 3; i++) few[i] = (freeair_pressure_log_phase)FREEAIR_PRESSURE_LOG_PHASE_INIT;
  size_t found;
  ck_assert_int_eq(freeair_pressure_log_segment(r.t_s, r.p_pa, NULL, r.n, &none, few, sizeof few[0], 3, &found),
                   FREEAIR_WARN_TRUNCATED);
  ck_assert_uint_eq(found, n);
  for (int i = 0; i < 3; i++) ck_assert_double_eq(few[i].end_s, phases[i].end_s);
  ck_assert_int_eq(freeair_pressure_log_segment(r.t_s, r.p_pa, NULL, r.n, &none, NULL, 0, 0, &found),
                   FREEAIR_WARN_TRUNCATED); /* only to count them */
  ck_assert_uint_eq(found, n);
  record_free(&r);
  history_free(&h);
}
END_TEST

/* Any start, any length: never a crash, always a partition. */
START_TEST(every_stretch_of_a_log)
{
  history h = shop_history(3000.0, 60.0);
  record r = damaged_log(&h, 91);
  for (size_t from = 0; from + 3 <= r.n; from += 13)
    for (size_t length = 3; from + length <= r.n; length += 17) {
      record part = {length, r.t_s + from, r.p_pa + from, r.state + from};
      cut(&part, NULL, NULL);
      cut(&part, part.state, NULL);
    }
  record_free(&r);
  history_free(&h);
}
END_TEST

int main(void)
{
  TCase *tc = tcase_create("pressure_log");
  tcase_set_timeout(tc, 120);
  tcase_add_loop_test(tc, cycles_under_noise_and_resolution, 0, 4);
  tcase_add_test(tc, slopes_and_pressures);
  tcase_add_test(tc, gaps_are_not_bridged);
  tcase_add_test(tc, frozen_logger_is_seen);
  tcase_add_test(tc, times_out_of_order_and_missing_readings);
  tcase_add_test(tc, single_outliers_do_not_turn_the_pressure);
  tcase_add_test(tc, burst_of_demand_below_cut_in);
  tcase_add_test(tc, overloaded_machine);
  tcase_add_test(tc, narrow_band_is_found_by_itself);
  tcase_add_test(tc, room_for_fewer_phases);
  tcase_add_test(tc, every_stretch_of_a_log);
  return run_case("pressure_log", tc);
}
