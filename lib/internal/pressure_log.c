/* SPDX-License-Identifier: MIT */
/* From stretches in which the machine does one thing to phases. */
#include "internal/check.h"
#include "internal/pressure_log.h"
#include "internal/robust.h"
#include "internal/structure.h"

static const freeair_pressure_log_phase initial_phase = FREEAIR_PRESSURE_LOG_PHASE_INIT;

/* A phase while its end is not known yet. */
typedef struct stretch {
  int32_t kind;
  size_t first;
  size_t last;
  double start_s;
  double start_uncertainty_s;
  double p_start_pa;
  int joined;  /* to the one before */
  int at_turn; /* its first sample is a turn, which belongs to both */
} stretch;

typedef struct emitter {
  const freeair__log *log;
  char *phases;
  size_t stride;
  size_t capacity;
  size_t n_found;
  int32_t status;
  stretch ready;   /* its start is known, its end waits for the next one */
  stretch growing; /* may be continued */
  int has_ready;
  int has_growing;
  double cut_out_s; /* when the machine unloaded last */
} emitter;

static int is_idle(int32_t kind)
{
  return kind == FREEAIR_PRESSURE_LOG_UNLOADED || kind == FREEAIR_PRESSURE_LOG_STOPPED ||
         kind == FREEAIR_PRESSURE_LOG_IDLE;
}

enum { most_beside = 200 };

/* Least-squares line through the samples next to a boundary. */
typedef struct side {
  double level; /* at the origin */
  double slope;
  double mean_x;
  double square; /* sum of squares about the mean */
  double n;
} side;

/* From the boundary on, samples are taken until the pressure has moved by 15
 * times the noise, but two at least and not more than so many. Those within
 * clear_pa of the pressure at the turn come first and are passed over: the
 * lowest of noisy readings lies somewhere on the flat side of the turn. */
static int fit_side(const freeair__log *log, size_t first, size_t last, size_t most, int backwards, double origin_s,
                    double turn_pa, double clear_pa, side *s)
{
  double x[most_beside];
  double y[most_beside];
  size_t n = 0;
  int clear = 0;
  if (backwards && last - first > 3 * most) first = last - 3 * most;
  freeair__log_reader reader = freeair__log_read(log, first, last);
  for (size_t i; freeair__log_sample(&reader, &i);) {
    int beyond = fabs(log->p_pa[i] - turn_pa) >= clear_pa;
    if (backwards && !beyond) break;
    clear |= beyond;
    if (!clear) continue;
    if (n == most && !backwards) break;
    if (n == most) {
      for (size_t k = 1; k < n; k++) {
        x[k - 1] = x[k];
        y[k - 1] = y[k];
      }
      n--;
    }
    x[n] = log->t_s[i] - origin_s;
    y[n++] = log->p_pa[i];
  }
  if (n < 2) return 0;
  size_t from = backwards ? n - 2 : 0;
  size_t to = backwards ? n : 2;
  while (to - from < n && fabs(y[to - 1] - y[from]) < 15.0 * log->noise_pa) {
    from -= backwards != 0;
    to += backwards == 0;
  }
  s->n = (double)(to - from);
  double mean_y = 0.0;
  s->mean_x = 0.0;
  for (size_t k = from; k < to; k++) {
    s->mean_x += x[k] / s->n;
    mean_y += y[k] / s->n;
  }
  double cross = 0.0;
  s->square = 0.0;
  for (size_t k = from; k < to; k++) {
    s->square += (x[k] - s->mean_x) * (x[k] - s->mean_x);
    cross += (x[k] - s->mean_x) * (y[k] - mean_y);
  }
  if (!(s->square > 0.0)) return 0;
  s->slope = cross / s->square;
  s->level = mean_y - s->slope * s->mean_x;
  return 1;
}

static double side_variance(const side *s, double x, double noise_pa)
{
  return noise_pa * noise_pa * (1.0 / s->n + (x - s->mean_x) * (x - s->mean_x) / s->square);
}

/* How many samples of a phase may say how it is at its boundary: a third of it,
 * and only a few of an idle phase that begins, where the pressure bends. */
static size_t samples_beside(const stretch *s, int at_start)
{
  size_t third = (s->last - s->first) / 3;
  size_t most = s->kind == FREEAIR_PRESSURE_LOG_LOADED ? most_beside : at_start ? 6 : 100;
  return third < 2 ? 2 : third > most ? most : third;
}

/* The sample beside one, within its stretch; the sample itself when there is none. */
static size_t neighbour(const freeair__log *log, const stretch *s, size_t i, int forward)
{
  size_t found = i;
  size_t from = i - s->first > 20 ? i - 20 : s->first;
  freeair__log_reader reader = forward ? freeair__log_read(log, i, s->last) : freeair__log_read(log, from, i);
  for (size_t k; freeair__log_sample(&reader, &k);) {
    if (forward ? k > i : k < i) found = k;
    if (forward && k > i) break;
  }
  return found;
}

/* Where two stretches meet: the instant, its uncertainty and the pressure. */
static void meet(const freeair__log *log, const stretch *left, const stretch *right, double *at_s, double *u_s,
                 double *p_pa)
{
  size_t before = left->last;
  size_t after = right->first;
  if (right->at_turn) {
    /* a turn that is read lies on the flat side of the true one, which is within the step on the steep side */
    if (right->kind == FREEAIR_PRESSURE_LOG_LOADED)
      after = neighbour(log, right, after, 1);
    else if (left->kind == FREEAIR_PRESSURE_LOG_LOADED)
      before = neighbour(log, left, before, 0);
  }
  double lo = log->t_s[before];
  double hi = log->t_s[after];
  double step = hi > lo ? hi - lo : log->step_s;
  double middle = 0.5 * (lo + hi);
  *at_s = middle;
  *u_s = 0.29 * step; /* evenly likely within the step */
  *p_pa = right->at_turn ? log->p_pa[left->last] : 0.5 * (log->p_pa[before] + log->p_pa[after]);
  if ((left->kind == FREEAIR_PRESSURE_LOG_LOADED) == (right->kind == FREEAIR_PRESSURE_LOG_LOADED)) return;
  side l;
  side r;
  /* the sample at the turn belongs to neither line, nor does the one at the other end of a load */
  size_t skip = right->at_turn ? 1 : 0;
  double turn_pa = log->p_pa[left->last];
  double clear_pa = right->at_turn ? 8.0 * log->noise_pa : 0.0;
  int loads = right->kind == FREEAIR_PRESSURE_LOG_LOADED;
  size_t left_from = left->first + (loads ? 0 : skip);
  size_t right_to = right->last - (loads ? skip : 0);
  if (left->last < left_from + 1 + skip || right_to < right->first + 1 + skip ||
      !fit_side(log, left_from, left->last - skip, samples_beside(left, 0), 1, middle, turn_pa,
                loads ? 0.0 : clear_pa, &l) ||
      !fit_side(log, right->first + skip, right_to, samples_beside(right, 1), 0, middle, turn_pa,
                loads ? clear_pa : 0.0, &r))
    return;
  double bend = l.slope - r.slope;
  if (!(fabs(bend) > 0.0)) return;
  double x = (r.level - l.level) / bend;
  double u = sqrt(side_variance(&l, x, log->noise_pa) + side_variance(&r, x, log->noise_pa)) / fabs(bend);
  /* noise moves the extreme along the flatter side; a state channel may lag a step */
  int left_flat = fabs(l.slope) < fabs(r.slope);
  double flat = left_flat ? fabs(l.slope) : fabs(r.slope);
  double longest = 0.3 * (left_flat ? lo - log->t_s[left->first] : log->t_s[right->last] - hi);
  double astray = fmin(flat > 0.0 ? 6.0 * log->noise_pa / flat : INFINITY, longest);
  if (!(fabs(x) <= fmax(1.5 * step, astray)) || !(u < fmax(longest, step))) {
    *u_s = hypot(*u_s, 0.5 * astray);
    return;
  }
  *at_s = middle + x;
  *u_s = fmax(u, 0.15 * step);
  *p_pa = l.level + l.slope * x;
}

/* Means of the samples of a stretch in some time. */
static void gather(const freeair__log *log, const stretch *s, double from_s, double to_s, freeair__blocks *blocks)
{
  freeair__blocks_clear(blocks);
  freeair__log_reader reader = freeair__log_read(log, s->first, s->last);
  for (size_t i; freeair__log_sample(&reader, &i);)
    if (log->t_s[i] >= from_s && log->t_s[i] <= to_s) freeair__blocks_add(blocks, log->t_s[i], log->p_pa[i]);
}

static void slopes(const emitter *e, const stretch *s, freeair_pressure_log_phase *phase)
{
  const freeair__log *log = e->log;
  freeair__blocks blocks;
  freeair__line line;
  /* samples at its edges may belong to its neighbours */
  double first_s = fmax(log->t_s[s->first], phase->start_s);
  double last_s = fmin(log->t_s[s->last], phase->end_s);
  gather(log, s, first_s, last_s, &blocks);
  if (blocks.n < 2) {
    first_s = log->t_s[s->first];
    last_s = log->t_s[s->last];
    gather(log, s, first_s, last_s, &blocks);
  }
  if (!freeair__blocks_line(&blocks, 0, blocks.n, log->noise_pa, &line)) return;
  phase->slope_pa_s = phase->early_slope_pa_s = phase->late_slope_pa_s = line.slope;
  phase->slope_uncertainty_pa_s = phase->late_slope_uncertainty_pa_s = line.slope_uncertainty;
  double middle_s = 0.5 * (first_s + last_s);
  double late_s = middle_s;
  if (is_idle(s->kind)) {
    double settled_s = e->cut_out_s + log->settle_s;
    double needed_s = fmax(4.0 * log->step_s, 0.2 * log->settle_s);
    phase->settled = last_s - fmax(settled_s, first_s) >= needed_s;
    if (phase->settled) late_s = fmax(settled_s, first_s);
  }
  gather(log, s, first_s, middle_s, &blocks);
  if (freeair__blocks_line(&blocks, 0, blocks.n, log->noise_pa, &line)) phase->early_slope_pa_s = line.slope;
  gather(log, s, late_s, last_s, &blocks);
  if (freeair__blocks_line(&blocks, 0, blocks.n, log->noise_pa, &line)) {
    phase->late_slope_pa_s = line.slope;
    phase->late_slope_uncertainty_pa_s = line.slope_uncertainty;
  }
}

static void put(emitter *e, const freeair_pressure_log_phase *phase)
{
  if (e->n_found < e->capacity) {
    int32_t status = freeair__structure_write(e->phases + e->n_found * e->stride, phase, sizeof *phase,
                                              FREEAIR_PRESSURE_LOG_PHASE_BASELINE);
    if (status < 0) e->status = status;
  }
  e->n_found++;
}

/* The end of the ready stretch is known: it becomes a phase. */
static void emit(emitter *e, double end_s, double end_uncertainty_s, double p_end_pa, int seen)
{
  const freeair__log *log = e->log;
  const stretch *s = &e->ready;
  freeair_pressure_log_phase phase = initial_phase;
  phase.start_s = s->start_s;
  phase.end_s = end_s;
  phase.start_uncertainty_s = s->start_uncertainty_s;
  phase.end_uncertainty_s = end_uncertainty_s;
  phase.p_start_pa = s->p_start_pa;
  phase.p_end_pa = p_end_pa;
  phase.kind = s->kind;
  phase.start_seen = s->joined;
  phase.end_seen = seen;
  if (isnan(e->cut_out_s)) e->cut_out_s = s->start_s;
  if (s->kind == FREEAIR_PRESSURE_LOG_GAP) {
    phase.first = (uint32_t)(s->first + 1);
    phase.count = phase.left_out = (uint32_t)(s->last - s->first - 1);
  } else {
    phase.first = (uint32_t)s->first;
    phase.count = (uint32_t)(s->last - s->first + 1);
    freeair__log_reader reader = freeair__log_read(log, s->first, s->last);
    for (size_t i; freeair__log_sample(&reader, &i);) {}
    phase.left_out = (uint32_t)reader.left_out;
    if (s->kind != FREEAIR_PRESSURE_LOG_FROZEN) slopes(e, s, &phase);
  }
  if (s->kind == FREEAIR_PRESSURE_LOG_LOADED) e->cut_out_s = end_s;
  put(e, &phase);
  if (s->kind == FREEAIR_PRESSURE_LOG_GAP || s->kind == FREEAIR_PRESSURE_LOG_FROZEN) e->cut_out_s = NAN;
}

/* The extent of the growing stretch is final. */
static void settle(emitter *e)
{
  if (!e->has_growing) return;
  const freeair__log *log = e->log;
  if (e->has_ready) {
    const stretch *l = &e->ready;
    if (e->growing.joined) {
      double at_s;
      double u_s;
      double p_pa;
      meet(log, l, &e->growing, &at_s, &u_s, &p_pa);
      e->growing.start_s = at_s;
      e->growing.start_uncertainty_s = u_s;
      e->growing.p_start_pa = p_pa;
      emit(e, at_s, u_s, p_pa, 1);
    } else {
      emit(e, log->t_s[l->last], 0.0, log->p_pa[l->last], 0);
    }
  }
  e->ready = e->growing;
  e->has_ready = 1;
  e->has_growing = 0;
}

static void add(emitter *e, int32_t kind, size_t first, size_t last, int joined, int at_turn)
{
  if (e->has_growing && joined && e->growing.kind == kind) {
    e->growing.last = last;
    return;
  }
  settle(e);
  stretch s = {.kind = kind, .first = first, .last = last, .start_s = e->log->t_s[first],
               .p_start_pa = e->log->p_pa[first], .joined = joined, .at_turn = at_turn};
  e->growing = s;
  e->has_growing = 1;
}

static void by_pressure(emitter *e, size_t first, size_t last, int joined)
{
  freeair__log_legs legs = freeair__log_turns(e->log, first, last);
  int first_leg = 1;
  double noticed = fmax(6.0 * e->log->noise_pa, 3.0 * e->log->quantum_pa);
  for (freeair__log_leg leg; freeair__log_leg_next(&legs, &leg); first_leg = 0) {
    if (first_leg && leg.last_turn && fabs(leg.p_last_pa - leg.p_first_pa) < noticed) {
      /* noise before the first turn: no leg of its own */
      if (!freeair__log_leg_next(&legs, &leg)) return;
      leg.first = first;
      leg.first_turn = 0;
    }
    size_t split;
    int32_t kind = freeair__log_judge(e->log, &leg, &split);
    add(e, kind, leg.first, split, joined || !first_leg, !first_leg);
    if (split < leg.last) add(e, FREEAIR_PRESSURE_LOG_LOADED, split, leg.last, 1, 1);
  }
}

static int32_t state_at(const freeair__log *log, size_t i)
{
  return log->state == NULL ? FREEAIR_PRESSURE_LOG_UNKNOWN : log->state[i];
}

/* Runs of one state; a single reading of another state within a run is a glitch,
 * as a rule. */
static void piece(emitter *e, size_t first, size_t last)
{
  const freeair__log *log = e->log;
  freeair__log_reader reader = freeair__log_read(log, first, last);
  size_t begin = first;
  size_t previous = first;
  int joined = 0;
  size_t i;
  int more = freeair__log_sample(&reader, &i);
  int32_t kind = state_at(log, first);
  while (more) {
    more = freeair__log_sample(&reader, &i);
    if (more && state_at(log, i) == kind) {
      previous = i;
      continue;
    }
    if (more) {
      /* a glitch, unless the pressure shows a short load */
      freeair__log_reader ahead = reader;
      size_t next;
      double rise = fmax(8.0 * log->noise_pa, 0.25 * log->band_pa);
      if (freeair__log_sample(&ahead, &next) && state_at(log, next) == kind &&
          !(state_at(log, i) == FREEAIR_PRESSURE_LOG_LOADED && log->p_pa[next] - log->p_pa[previous] > rise)) {
        previous = i;
        continue;
      }
    }
    if (kind == FREEAIR_PRESSURE_LOG_UNKNOWN)
      by_pressure(e, begin, previous, joined);
    else
      add(e, kind, begin, previous, joined, 0);
    joined = 1;
    if (!more) return;
    begin = previous = i;
    kind = state_at(log, i);
  }
}

int32_t freeair__log_phases(const freeair__log *log, char *phases, size_t stride, size_t capacity, size_t *n_found)
{
  emitter e = {.log = log, .phases = phases, .stride = stride, .capacity = capacity, .cut_out_s = NAN};
  freeair__log_parts parts = freeair__log_cut(log);
  for (freeair__log_part part; freeair__log_part_next(&parts, &part);) {
    if (part.kind == FREEAIR__LOG_GAP)
      add(&e, FREEAIR_PRESSURE_LOG_GAP, part.first, part.last, 0, 0);
    else if (part.kind == FREEAIR__LOG_FROZEN)
      add(&e, FREEAIR_PRESSURE_LOG_FROZEN, part.first, part.last, 0, 0);
    else
      piece(&e, part.first, part.last);
  }
  settle(&e);
  if (e.has_ready) emit(&e, log->t_s[e.ready.last], 0.0, log->p_pa[e.ready.last], 0);
  *n_found = e.n_found;
  if (e.status < 0) return e.status;
  return e.n_found > capacity ? FREEAIR_WARN_TRUNCATED : FREEAIR_OK;
}
