/* SPDX-License-Identifier: MIT */
#include "internal/check.h"
#include "internal/pressure_log.h"
#include "internal/robust.h"

freeair__log_reader freeair__log_read(const freeair__log *log, size_t first, size_t last)
{
  freeair__log_reader reader = {.log = log, .next = first, .end = last + 1, .last_s = -INFINITY};
  return reader;
}

/* The clock was set back for good: five times in order, all before the last one. */
static int clock_set_back(const freeair__log_reader *reader, size_t i)
{
  const double *t = reader->log->t_s;
  if (reader->end - i < 5) return 0;
  for (size_t k = 1; k < 5; k++)
    if (!isgreater(t[i + k], t[i + k - 1])) return 0;
  return islessequal(t[i + 4], reader->last_s);
}

int freeair__log_sample(freeair__log_reader *reader, size_t *index)
{
  const double *t = reader->log->t_s;
  reader->set_back = 0;
  while (reader->next < reader->end) {
    size_t i = reader->next++;
    int usable = !isnan(t[i]) && !isnan(reader->log->p_pa[i]);
    if (usable && !(t[i] > reader->last_s)) {
      usable = clock_set_back(reader, i);
      reader->set_back = usable;
    } else if (usable && i + 1 < reader->end && isless(t[i + 1], t[i]) && isgreater(t[i + 1], reader->last_s)) {
      usable = 0; /* this time alone runs ahead: the next one is back in order */
    }
    if (!usable) {
      reader->left_out++;
      continue;
    }
    reader->last_s = t[i];
    *index = i;
    return 1;
  }
  return 0;
}

int freeair__log_measure(freeair__log *log)
{
  freeair__spread steps;
  freeair__spread noise;
  freeair__spread_clear(&steps);
  freeair__spread_clear(&noise);
  freeair__log_reader reader = freeair__log_read(log, 0, log->n - 1);
  size_t at[3] = {0, 0, 0};
  size_t n = 0;
  size_t differences = 0;
  size_t same = 0;
  size_t run = 0;
  double quantum = INFINITY;
  log->highest_pa = 0.0;
  log->lowest_pa = INFINITY;
  for (size_t i; freeair__log_sample(&reader, &i);) {
    if (reader.set_back) n = 0;
    at[0] = at[1];
    at[1] = at[2];
    at[2] = i;
    n++;
    log->n_used++;
    if (n >= 3) {
      /* single outliers do not count */
      double a = log->p_pa[at[0]];
      double b = log->p_pa[at[1]];
      double middle = fmax(fmin(a, b), fmin(fmax(a, b), log->p_pa[i]));
      log->highest_pa = fmax(log->highest_pa, middle);
      log->lowest_pa = fmin(log->lowest_pa, middle);
    }
    if (n < 2) continue;
    double step = log->t_s[i] - log->t_s[at[1]];
    double rise = fabs(log->p_pa[i] - log->p_pa[at[1]]);
    freeair__spread_add(&steps, step);
    run = rise > 0.0 ? 0 : run + 1;
    if (run <= 50) {
      differences++;
      same += run > 0;
    }
    if (rise > 1e-9 * log->p_pa[i]) quantum = fmin(quantum, rise);
    if (n < 3 || run > 50) continue;
    /* the middle one of three against the line through its neighbours */
    double share = (log->t_s[at[1]] - log->t_s[at[0]]) / (log->t_s[i] - log->t_s[at[0]]);
    double off = log->p_pa[at[1]] - log->p_pa[at[0]] - share * (log->p_pa[i] - log->p_pa[at[0]]);
    freeair__spread_add(&noise, off / sqrt(1.0 + share * share + (1.0 - share) * (1.0 - share)));
  }
  if (log->n_used < 3 || differences == 0) return 0;
  log->step_s = freeair__spread_quantile(&steps, 0.5);
  log->repeats = (double)same / (double)differences;
  /* a resolution shows where readings repeat, or where none differ by less */
  log->quantum_pa = quantum < INFINITY ? quantum : 0.0;
  if (!freeair__given(log->gap_s)) log->gap_s = 5.0 * log->step_s;
  if (!freeair__given(log->frozen_s)) log->frozen_s = fmax(60.0, 6.0 * log->step_s);
  if (!freeair__given(log->noise_pa))
    log->noise_pa = fmax(1.4826 * freeair__spread_quantile(&noise, 0.5), 0.29 * log->quantum_pa);
  return 1;
}

/* Slope through a few samples on one side of sample i; 0 when there are too few. */
static double slope_beside(const freeair__log *log, size_t i, int forward)
{
  enum { few = 8 };
  size_t far = i;
  double t0 = log->t_s[i];
  double last = t0;
  int n = 0;
  for (size_t k = i; n < few;) {
    if (forward ? k + 1 >= log->n : k == 0) break;
    k = forward ? k + 1 : k - 1;
    double t = log->t_s[k];
    if (isnan(t) || isnan(log->p_pa[k])) continue;
    if (!(forward ? t > last : t < last) || fabs(t - last) > log->gap_s) break;
    last = t;
    far = k;
    n++;
  }
  return n < 3 ? 0.0 : (log->p_pa[far] - log->p_pa[i]) / (last - t0);
}

/* Whether the pressures that repeat from sample first to last are a standstill. */
static int is_frozen(const freeair__log *log, size_t first, size_t last, size_t count)
{
  double duration = log->t_s[last] - log->t_s[first];
  if (!(duration >= log->frozen_s) || count < 4) return 0;
  if (count == log->n_used && count >= 10) return 1;
  int has_loaded = 0;
  int has_other = 0;
  for (size_t i = first; log->state != NULL && i <= last; i++) {
    has_loaded |= log->state[i] == FREEAIR_PRESSURE_LOG_LOADED;
    has_other |= log->state[i] > FREEAIR_PRESSURE_LOG_LOADED;
  }
  if (has_loaded && has_other) return 1;
  if (log->repeats > 0.5) return 0;
  if (pow(fmax(log->repeats, 1e-3), (double)(count - 1)) > 1e-6) return 0;
  double moved = 5.0 * log->quantum_pa + 6.0 * log->noise_pa;
  int at_start = first == 0 || slope_beside(log, first, 0) == 0.0;
  int at_end = last + 1 >= log->n || slope_beside(log, last, 1) == 0.0;
  int before = fabs(slope_beside(log, first, 0)) * duration > moved;
  int after = fabs(slope_beside(log, last, 1)) * duration > moved;
  return (before && after) || (before && at_end) || (after && at_start);
}

freeair__log_parts freeair__log_cut(const freeair__log *log)
{
  freeair__log_parts parts = {.reader = freeair__log_read(log, 0, log->n - 1)};
  return parts;
}

/* Reads a sample ahead; 0 at the end. */
static int look(freeair__log_parts *parts)
{
  if (!parts->has_ahead) parts->has_ahead = freeair__log_sample(&parts->reader, &parts->ahead);
  return parts->has_ahead;
}

/* Extent of the equal pressures that begin at the sample ahead, when they are a standstill. */
static int standstill(freeair__log_parts *parts, size_t *last)
{
  const freeair__log *log = parts->reader.log;
  size_t first = parts->ahead;
  if (first < parts->checked) return 0;
  freeair__log_reader reader = parts->reader;
  size_t count = 1;
  *last = first;
  for (size_t i; freeair__log_sample(&reader, &i); count++) {
    if (reader.set_back || log->p_pa[i] != log->p_pa[first] || log->t_s[i] - log->t_s[*last] > log->gap_s) break;
    *last = i;
  }
  parts->checked = *last + 1;
  return is_frozen(log, first, *last, count);
}

int freeair__log_part_next(freeair__log_parts *parts, freeair__log_part *part)
{
  const freeair__log *log = parts->reader.log;
  if (!look(parts)) return 0;
  if (parts->has_previous &&
      (parts->reader.set_back || log->t_s[parts->ahead] - log->t_s[parts->previous] > log->gap_s)) {
    part->kind = FREEAIR__LOG_GAP;
    part->first = parts->previous;
    part->last = parts->ahead;
    parts->has_previous = 0;
    return 1;
  }
  size_t last;
  part->first = parts->ahead;
  if (standstill(parts, &last)) {
    part->kind = FREEAIR__LOG_FROZEN;
    while (look(parts) && parts->ahead <= last) parts->has_ahead = 0;
    parts->previous = last;
    parts->has_previous = 1;
    part->last = last;
    return 1;
  }
  part->kind = FREEAIR__LOG_PIECE;
  while (look(parts)) {
    if (parts->has_previous) {
      if (parts->reader.set_back || log->t_s[parts->ahead] - log->t_s[parts->previous] > log->gap_s) break;
      if (parts->ahead != part->first && standstill(parts, &last)) {
        parts->checked = parts->ahead; /* to be found again as the next part */
        break;
      }
    }
    parts->previous = parts->ahead;
    parts->has_previous = 1;
    parts->has_ahead = 0;
  }
  part->last = parts->previous;
  return 1;
}
