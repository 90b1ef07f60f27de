/* SPDX-License-Identifier: MIT */
#include <freeair/duty.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/pressure_log.h"
#include "internal/structure.h"

static const freeair_duty_summary initial_summary = FREEAIR_DUTY_SUMMARY_INIT;
static const freeair_pressure_log_phase initial_phase = FREEAIR_PRESSURE_LOG_PHASE_INIT;

/* how much the heating of the gas steepens the slope while loaded */
static const double steeper = 1.25;
static const double steeper_uncertainty = 0.15;

static int is_idle(int32_t kind)
{
  return kind == FREEAIR_PRESSURE_LOG_UNLOADED || kind == FREEAIR_PRESSURE_LOG_STOPPED ||
         kind == FREEAIR_PRESSURE_LOG_IDLE;
}

static double duration_of(const freeair_pressure_log_phase *p)
{
  return p->end_s - p->start_s;
}

/* The phases of the caller. */
typedef struct source {
  const char *phases;
  size_t stride;
  size_t n;
} source;

static int32_t phase_at(const source *s, size_t i, freeair_pressure_log_phase *p)
{
  *p = initial_phase;
  return freeair__structure_read(p, sizeof *p, s->phases + i * s->stride, FREEAIR_PRESSURE_LOG_PHASE_BASELINE);
}

/* Quantities that are seen in several phases. */
enum quantity { CUT_IN, CUT_OUT, LOAD_SLOPE, WHOLE_LOAD_SLOPE, IDLE_SLOPE, COOLING };

/* What a phase says of a quantity, and its uncertainty; NaN when nothing. */
static double quantity_of(enum quantity q, const freeair_pressure_log_phase *p,
                          const freeair_pressure_log_phase *before, double *uncertainty)
{
  int loaded = p->kind == FREEAIR_PRESSURE_LOG_LOADED;
  int after_load = is_idle(p->kind) && p->start_seen && before->kind == FREEAIR_PRESSURE_LOG_LOADED;
  double value = NAN;
  *uncertainty = 0.0;
  if ((q == CUT_IN && loaded && p->start_seen && is_idle(before->kind)) || (q == CUT_OUT && after_load)) {
    value = p->p_start_pa;
    *uncertainty = p->start_uncertainty_s * fabs(before->late_slope_pa_s);
  } else if ((q == LOAD_SLOPE && loaded) || (q == WHOLE_LOAD_SLOPE && loaded && p->start_seen && p->end_seen)) {
    value = p->slope_pa_s;
    *uncertainty = p->slope_uncertainty_pa_s;
  } else if (q == IDLE_SLOPE && is_idle(p->kind) && p->settled) {
    value = p->late_slope_pa_s;
    *uncertainty = p->late_slope_uncertainty_pa_s;
  } else if (q == COOLING && after_load && p->settled) {
    value = p->p_start_pa - p->p_end_pa + p->late_slope_pa_s * duration_of(p);
  }
  return value;
}

/* One walk through the values |x - centre| (x itself for a centre of NaN). */
typedef struct walk {
  double n;
  double low;
  double high;
  double at_most; /* number of values up to a limit */
  double variances;
} walk;

static walk walk_through(const source *s, enum quantity q, double centre, double limit)
{
  walk w = {.low = INFINITY, .high = -INFINITY};
  freeair_pressure_log_phase before = initial_phase;
  freeair_pressure_log_phase p;
  before.kind = FREEAIR_PRESSURE_LOG_GAP;
  for (size_t i = 0; i < s->n && phase_at(s, i, &p) == FREEAIR_OK; i++, before = p) {
    double u;
    double x = quantity_of(q, &p, &before, &u);
    if (isnan(x)) continue;
    if (!isnan(centre)) x = fabs(x - centre);
    w.n += 1.0;
    w.low = fmin(w.low, x);
    w.high = fmax(w.high, x);
    w.at_most += x <= limit;
    if (!isnan(u)) w.variances += u * u;
  }
  return w;
}

/* The value of which so many are not larger, by bisection. */
static double ranked(const source *s, enum quantity q, double centre, double rank, double low, double high)
{
  for (int i = 0; i < 60 && low < high; i++) {
    double middle = 0.5 * (low + high);
    if (!(middle > low && middle < high)) break;
    if (walk_through(s, q, centre, middle).at_most >= rank)
      high = middle;
    else
      low = middle;
  }
  return high;
}

static double median_of(const source *s, enum quantity q, double centre, walk *w)
{
  *w = walk_through(s, q, centre, INFINITY);
  if (!(w->n > 0.0)) return NAN;
  double rank = floor(0.5 * (w->n + 1.0));
  /* the bracket opens below the lowest value */
  double low = w->low - fmax(fabs(w->low), fabs(w->high)) * 1e-12;
  double lower = ranked(s, q, centre, rank, low, w->high);
  return fmod(w->n, 2.0) > 0.0 ? lower : 0.5 * (lower + ranked(s, q, centre, rank + 1.0, low, w->high));
}

/* Median, and its standard uncertainty from the scatter or from what each value
 * is uncertain by, whichever is larger. 1.2533: standard deviation of a median
 * over that of a mean, normal values. */
static int middle(const source *s, enum quantity q, double *median, double *uncertainty)
{
  walk w;
  *median = median_of(s, q, NAN, &w);
  if (isnan(*median)) return 0;
  walk deviations;
  double several = w.n > 2.0 ? 1.2533 : 1.0;
  double scatter = w.n > 2.0 ? 1.4826 * median_of(s, q, *median, &deviations) * several / sqrt(w.n) : 0.0;
  *uncertainty = fmax(scatter, sqrt(w.variances) / w.n * several);
  return 1;
}

typedef struct sums {
  double instants; /* variance of the loaded time from the instants where it begins and ends */
  double cycles_s;
  double cycles_loaded_s;
  double cycles_squared;
  double ratio_square; /* scatter of loaded time about share times cycle */
  double cycle_instants;
  double highest_pa;
  int cut_out_seen;
  freeair_pressure_log_phase last_load;
} sums;

static void add_time(const freeair_pressure_log_phase *p, freeair_duty_summary *r)
{
  double *of_kind[] = {&r->unknown_s, &r->loaded_s,  &r->unloaded_s, &r->stopped_s,
                       &r->idle_s,    &r->missing_s, &r->missing_s};
  *of_kind[p->kind] += fmax(duration_of(p), 0.0);
}

static void add_phase(const freeair_pressure_log_phase *p, const freeair_pressure_log_phase *before, sums *s,
                      freeair_duty_summary *r)
{
  add_time(p, r);
  r->left_out += p->left_out;
  s->highest_pa = fmax(s->highest_pa, fmax(p->p_start_pa, p->p_end_pa));
  if (p->kind == FREEAIR_PRESSURE_LOG_LOADED) {
    r->n_loads++;
    s->last_load = *p;
    s->instants += p->start_uncertainty_s * p->start_uncertainty_s + p->end_uncertainty_s * p->end_uncertainty_s;
    if (p->slope_pa_s + 1.645 * p->slope_uncertainty_pa_s < 0.0) r->findings |= FREEAIR_DUTY_SINKS_LOADED;
  } else if (is_idle(p->kind) && p->start_seen && before->kind == FREEAIR_PRESSURE_LOG_LOADED) {
    s->cut_out_seen = 1;
  }
  if (p->kind == FREEAIR_PRESSURE_LOG_GAP) r->findings |= FREEAIR_DUTY_HAS_GAPS;
  if (p->kind == FREEAIR_PRESSURE_LOG_FROZEN) r->findings |= FREEAIR_DUTY_HAS_FROZEN;
}

static void finish_cycles(const sums *s, freeair_duty_summary *r)
{
  double n = r->n_cycles;
  if (r->n_cycles == 0) return;
  r->cycle_s = s->cycles_s / n;
  r->draw_share = s->cycles_loaded_s / s->cycles_s;
  /* errors of the instants are alike from cycle to cycle: they do not average out */
  double from_instants = sqrt(s->instants / fmax(1.0, r->n_loads)) / r->cycle_s;
  double scatter = 0.0;
  double cycle_scatter = 0.0;
  if (r->n_cycles > 1) {
    scatter = sqrt(fmax(s->ratio_square, 0.0) * n / (n - 1.0)) / s->cycles_s;
    cycle_scatter = sqrt(fmax(s->cycles_squared - n * r->cycle_s * r->cycle_s, 0.0) / (n - 1.0) / n);
  }
  r->draw_share_uncertainty = hypot(from_instants, scatter);
  r->cycle_uncertainty_s = fmax(cycle_scatter, sqrt(s->cycle_instants) / n);
}

static void finish_slopes(freeair_duty_summary *r)
{
  if (!(r->load_slope_pa_s > 0.0) || isnan(r->idle_slope_pa_s)) return;
  double load = r->load_slope_pa_s / steeper;
  double fall = fmax(-r->idle_slope_pa_s, 0.0);
  double total = load + fall;
  double u_load = load * hypot(r->load_slope_uncertainty_pa_s / r->load_slope_pa_s, steeper_uncertainty / steeper);
  r->slope_share = fall / total;
  r->slope_share_uncertainty = hypot(load * r->idle_slope_uncertainty_pa_s, fall * u_load) / (total * total);
}

static int never_cuts_out(const sums *s, const freeair_duty_summary *r, const freeair_pressure_log_options *o)
{
  const freeair_pressure_log_phase *p = &s->last_load;
  double band_pa = freeair__or(o->band_pa, 0.03 * s->highest_pa);
  double missing_pa = freeair__given(o->cut_out_pa) ? o->cut_out_pa - p->p_end_pa : band_pa;
  double rise_pa = (p->late_slope_pa_s + 0.5 * 1.645 * p->late_slope_uncertainty_pa_s) * duration_of(p);
  return !s->cut_out_seen && r->loaded_s >= 300.0 && r->loaded_s >= 0.95 * r->observed_s && rise_pa < missing_pa;
}

static int32_t sum_up(const source *from, const freeair_pressure_log_options *o, freeair_duty_summary *r)
{
  sums s = {.instants = 0.0, .last_load = initial_phase};
  r->loaded_s = r->unloaded_s = r->stopped_s = r->idle_s = r->unknown_s = r->missing_s = 0.0;
  /* two passes: the scatter of the cycles is about their common share */
  for (int pass = 0; pass < 2; pass++) {
    freeair_pressure_log_phase before = initial_phase;
    before.kind = FREEAIR_PRESSURE_LOG_GAP;
    freeair_pressure_log_phase load = initial_phase;
    int in_cycle = 0;
    for (size_t i = 0; i < from->n; i++) {
      freeair_pressure_log_phase p;
      int32_t status = phase_at(from, i, &p);
      if (status < 0) return status;
      if (p.kind < FREEAIR_PRESSURE_LOG_UNKNOWN || p.kind > FREEAIR_PRESSURE_LOG_FROZEN) return FREEAIR_ERR_DOMAIN;
      if (pass == 0) add_phase(&p, &before, &s, r);
      if (p.kind == FREEAIR_PRESSURE_LOG_LOADED && p.start_seen && is_idle(before.kind)) {
        if (in_cycle) {
          double cycle_s = p.start_s - load.start_s;
          double loaded_s = duration_of(&load);
          if (pass == 0) {
            r->n_cycles++;
            s.cycles_s += cycle_s;
            s.cycles_squared += cycle_s * cycle_s;
            s.cycles_loaded_s += loaded_s;
            s.cycle_instants += 2.0 * load.start_uncertainty_s * load.start_uncertainty_s;
          } else {
            double off = loaded_s - r->draw_share * cycle_s;
            s.ratio_square += off * off;
          }
        }
        in_cycle = 1;
        load = p;
      } else if (!is_idle(p.kind)) {
        in_cycle = 0;
      }
      before = p;
    }
    finish_cycles(&s, r);
  }
  r->observed_s = r->loaded_s + r->unloaded_s + r->stopped_s + r->idle_s + r->unknown_s;
  double told_s = r->observed_s - r->unknown_s;
  if (told_s > 0.0) {
    r->duty = r->loaded_s / told_s;
    r->duty_uncertainty = sqrt(s.instants * fmax(1.0, r->n_loads)) / told_s;
  }
  middle(from, CUT_IN, &r->cut_in_pa, &r->cut_in_uncertainty_pa);
  middle(from, CUT_OUT, &r->cut_out_pa, &r->cut_out_uncertainty_pa);
  if (!middle(from, WHOLE_LOAD_SLOPE, &r->load_slope_pa_s, &r->load_slope_uncertainty_pa_s))
    middle(from, LOAD_SLOPE, &r->load_slope_pa_s, &r->load_slope_uncertainty_pa_s);
  int settled = middle(from, IDLE_SLOPE, &r->idle_slope_pa_s, &r->idle_slope_uncertainty_pa_s);
  double unused;
  middle(from, COOLING, &r->cooling_pa, &unused);
  finish_slopes(r);
  if (never_cuts_out(&s, r, o)) r->findings |= FREEAIR_DUTY_NEVER_CUTS_OUT;
  if (r->n_loads == 0 && !(r->unknown_s > 0.0) && r->observed_s > 0.0) r->findings |= FREEAIR_DUTY_NEVER_LOADS;
  if (r->n_cycles < 3) r->findings |= FREEAIR_DUTY_FEW_CYCLES;
  if (r->unknown_s > 0.01 * r->observed_s) r->findings |= FREEAIR_DUTY_AMBIGUOUS;
  if (!settled) r->findings |= FREEAIR_DUTY_UNSETTLED;
  if (r->left_out > 0) r->findings |= FREEAIR_DUTY_LEFT_OUT;
  if (r->n_cycles == 0) {
    r->draw_share = r->slope_share;
    r->draw_share_uncertainty = r->slope_share_uncertainty;
    if (r->findings & FREEAIR_DUTY_NEVER_CUTS_OUT) {
      r->draw_share = 1.0;
      r->draw_share_uncertainty = NAN;
    }
  }
  return FREEAIR_OK;
}

int32_t freeair_duty_from_phases(const freeair_pressure_log_phase *phases, size_t phases_stride, size_t n,
                                 const freeair_pressure_log_options *options, freeair_duty_summary *summary)
{
  if (summary == NULL) return FREEAIR_ERR_NULL;
  freeair_duty_summary r = initial_summary;
  freeair_pressure_log_options o;
  int32_t status = phases == NULL || options == NULL ? FREEAIR_ERR_NULL : freeair__log_options_read(options, &o);
  if (status == FREEAIR_OK && n == 0) status = FREEAIR_ERR_DATA;
  if (status == FREEAIR_OK && phases_stride < FREEAIR_PRESSURE_LOG_PHASE_BASELINE) status = FREEAIR_ERR_VERSION;
  source from = {(const char *)phases, phases_stride, n};
  if (status == FREEAIR_OK) status = sum_up(&from, &o, &r);
  if (status < 0) r = initial_summary;
  int32_t written = freeair__structure_write(summary, &r, sizeof r, FREEAIR_DUTY_SUMMARY_BASELINE);
  return status < 0 ? status : written;
}
