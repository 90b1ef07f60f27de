/* SPDX-License-Identifier: MIT */
#include "internal/check.h"
#include "internal/pressure_log.h"

static double median3(double a, double b, double c)
{
  return fmax(fmin(a, b), fmin(fmax(a, b), c));
}

freeair__log_legs freeair__log_turns(const freeair__log *log, size_t first, size_t last)
{
  freeair__log_legs legs = {.reader = freeair__log_read(log, first, last), .last = last, .turn = first, .turn_pa = NAN};
  return legs;
}

/* The median against outliers shifts a turn by a sample: the extreme itself, unless that is an outlier. */
static size_t sharpen(const freeair__log_legs *legs, size_t i, double p_pa)
{
  const freeair__log *log = legs->reader.log;
  size_t best = i;
  for (size_t k = i > legs->turn ? i - 1 : i; k <= i + 1 && k <= legs->last; k++) {
    double beyond = (log->p_pa[k] - log->p_pa[best]) * legs->direction;
    if ((isgreater(beyond, 0.0) || (beyond == 0.0 && legs->direction < 0)) &&
        fabs(log->p_pa[k] - p_pa) < 0.5 * log->band_pa)
      best = k;
  }
  return best;
}

static int leg_until(freeair__log_legs *legs, size_t i, double p_pa, int is_turn, freeair__log_leg *leg)
{
  if (i == legs->turn && is_turn) {
    legs->turn_pa = p_pa;
    return 0; /* the extreme is the very edge: no leg before that */
  }
  if (is_turn) i = sharpen(legs, i, p_pa);
  leg->first = legs->turn;
  leg->last = i;
  leg->p_first_pa = legs->turn_pa;
  leg->p_last_pa = p_pa;
  leg->direction = legs->direction;
  leg->first_turn = legs->has_turn;
  leg->last_turn = is_turn;
  legs->turn = i;
  legs->turn_pa = p_pa;
  legs->has_turn = is_turn;
  return 1;
}

/* Takes one smoothed sample; 1 when it completes a leg. */
static int feed(freeair__log_legs *legs, size_t i, double p, freeair__log_leg *leg)
{
  double band = legs->reader.log->band_pa;
  int found = 0;
  if (isnan(legs->turn_pa)) {
    legs->turn_pa = legs->low_pa = legs->high_pa = p;
    legs->low = legs->high = i;
  }
  if (p <= legs->low_pa) { /* the last of equal ones: the pressure leaves a bottom steeply, and a top slowly */
    legs->low = i;
    legs->low_pa = p;
  }
  if (p > legs->high_pa) {
    legs->high = i;
    legs->high_pa = p;
  }
  if (legs->direction <= 0 && p - legs->low_pa >= band) {
    legs->direction = -1;
    found = leg_until(legs, legs->low, legs->low_pa, 1, leg);
    legs->direction = 1;
    legs->high = i;
    legs->high_pa = p;
  } else if (legs->direction >= 0 && legs->high_pa - p >= band) {
    legs->direction = 1;
    found = leg_until(legs, legs->high, legs->high_pa, 1, leg);
    legs->direction = -1;
    legs->low = i;
    legs->low_pa = p;
  }
  return found;
}

/* Single outliers vanish: each sample is the median of itself and its two
 * neighbours; the first and the last one stand as they are. */
int freeair__log_leg_next(freeair__log_legs *legs, freeair__log_leg *leg)
{
  const double *p = legs->reader.log->p_pa;
  if (legs->done) return 0;
  for (size_t i; freeair__log_sample(&legs->reader, &i);) {
    legs->at[0] = legs->at[1];
    legs->at[1] = legs->at[2];
    legs->at[2] = i;
    legs->n_read++;
    if (legs->n_read < 3) continue;
    if (legs->n_read == 3)
      feed(legs, legs->at[0], median3(p[legs->at[0]], p[legs->at[1]], p[legs->at[2]]), leg);
    if (feed(legs, legs->at[1], median3(p[legs->at[0]], p[legs->at[1]], p[legs->at[2]]), leg)) return 1;
  }
  if (legs->n_read == 0) return 0;
  double p_last = p[legs->at[2]];
  if (legs->n_read >= 3) p_last = median3(p[legs->at[0]], p[legs->at[1]], p_last);
  if (isnan(legs->turn_pa)) legs->turn_pa = p[legs->n_read == 1 ? legs->at[2] : legs->at[1]];
  /* it has turned already, if not by a whole band yet */
  const freeair__log *log = legs->reader.log;
  double noticed = fmax(fmax(8.0 * log->noise_pa, 4.0 * log->quantum_pa), 0.25 * log->band_pa);
  size_t extreme = legs->direction > 0 ? legs->high : legs->low;
  double extreme_pa = legs->direction > 0 ? legs->high_pa : legs->low_pa;
  if (legs->direction != 0 && extreme > legs->turn && extreme < legs->at[2] &&
      (extreme_pa - p_last) * legs->direction >= noticed && leg_until(legs, extreme, extreme_pa, 2, leg)) {
    legs->direction = -legs->direction;
    legs->low_pa = legs->high_pa = p_last;
    return 1;
  }
  legs->done = 1;
  return leg_until(legs, legs->at[2], p_last, 0, leg);
}

static double least_rise(const freeair__log *log, double p_pa)
{
  return fmax(fmax(3.3 * log->noise_pa, 3.0 * log->quantum_pa), 1e-3 * p_pa);
}

/* How much the pressure rises within a stretch, in rises that are too large for
 * noise and too fast for settled gas that warms. Medians of three samples. */
static double rises(const freeair__log *log, size_t first, size_t last, double *largest_pa)
{
  freeair__log_reader reader = freeair__log_read(log, first, last);
  double sum = 0.0;
  double low = INFINITY;
  double low_s = 0.0;
  double high = -INFINITY;
  double three[3];
  double mean_s = 0.0;
  int in_block = 0;
  int rising = 0;
  *largest_pa = 0.0;
  for (size_t i; freeair__log_sample(&reader, &i);) {
    three[in_block] = log->p_pa[i];
    mean_s += log->t_s[i] / 3.0;
    if (++in_block < 3) continue;
    double mean = median3(three[0], three[1], three[2]);
    double least = least_rise(log, mean);
    if (rising && high - mean >= least) {
      sum += high - low;
      *largest_pa = fmax(*largest_pa, high - low);
      rising = 0;
      low = mean;
      low_s = mean_s;
    }
    if (!rising && mean < low) {
      low = mean;
      low_s = mean_s;
    }
    if (!rising && mean - low >= least && mean_s > low_s && (mean - low) / (mean_s - low_s) > 2e-5 * mean) {
      rising = 1;
      high = mean;
    }
    if (rising && mean > high) high = mean;
    mean_s = 0.0;
    in_block = 0;
  }
  if (rising) {
    sum += high - low;
    *largest_pa = fmax(*largest_pa, high - low);
  }
  return sum;
}

static int falls_cleanly(const freeair__log *log, const freeair__log_leg *leg)
{
  double largest;
  double sum = rises(log, leg->first, leg->last, &largest);
  double fall = leg->p_first_pa - leg->p_last_pa;
  return sum <= 0.3 * fall;
}

typedef struct tally {
  double n;
  double mean;
  double square;
  double largest;
} tally;

static void count(tally *t, double x)
{
  t->n += 1.0;
  double off = x - t->mean;
  t->mean += off / t->n;
  t->square += off * (x - t->mean);
  if (!(t->largest >= x)) t->largest = x;
}

static double deviation(const tally *t)
{
  return t->n > 1.0 ? sqrt(t->square / (t->n - 1.0)) : 0.0;
}

/* The turns of the whole log. */
typedef struct turns {
  tally tops;
  tally bottoms;
  tally swings;
  double per_step_pa; /* the steepest rise makes so much in one step */
} turns;

static turns count_turns(const freeair__log *log)
{
  turns t = {.tops = {.largest = NAN}, .bottoms = {.largest = NAN}, .swings = {.largest = NAN}, .per_step_pa = 0.0};
  freeair__log_parts parts = freeair__log_cut(log);
  for (freeair__log_part part; freeair__log_part_next(&parts, &part);) {
    if (part.kind != FREEAIR__LOG_PIECE) continue;
    freeair__log_legs legs = freeair__log_turns(log, part.first, part.last);
    for (freeair__log_leg leg; freeair__log_leg_next(&legs, &leg);) {
      if (leg.last_turn == 1) count(leg.direction > 0 ? &t.tops : &t.bottoms, leg.p_last_pa);
      if (leg.first_turn && leg.last_turn == 1) count(&t.swings, fabs(leg.p_last_pa - leg.p_first_pa));
      double duration_s = log->t_s[leg.last] - log->t_s[leg.first];
      if (leg.direction > 0 && leg.last_turn == 1 && duration_s > 0.0)
        t.per_step_pa = fmax(t.per_step_pa, (leg.p_last_pa - leg.p_first_pa) / duration_s * log->step_s);
    }
  }
  return t;
}

static double fall_rate(const freeair__log *log, const freeair__log_leg *leg)
{
  double duration_s = log->t_s[leg->last] - log->t_s[leg->first];
  return duration_s > 0.0 ? (leg->p_first_pa - leg->p_last_pa) / duration_s : 0.0;
}

/* Falls from the cut-out to a turn, where they are clean: the highest of those
 * turns is the cut-in, their mean rate that of an idle machine. */
static void look_at_falls(freeair__log *log, double *cut_in_pa)
{
  tally rates = {.largest = NAN};
  *cut_in_pa = NAN;
  freeair__log_parts parts = freeair__log_cut(log);
  for (freeair__log_part part; freeair__log_part_next(&parts, &part);) {
    if (part.kind != FREEAIR__LOG_PIECE) continue;
    freeair__log_legs legs = freeair__log_turns(log, part.first, part.last);
    for (freeair__log_leg leg; freeair__log_leg_next(&legs, &leg);) {
      if (leg.direction > 0 || !leg.first_turn || leg.last_turn != 1 ||
          leg.p_first_pa < log->cut_out_pa - log->slack_pa || !falls_cleanly(log, &leg))
        continue;
      count(&rates, fall_rate(log, &leg));
      if (!(leg.p_last_pa <= *cut_in_pa)) *cut_in_pa = leg.p_last_pa;
    }
  }
  log->idle_fall_pa_s = rates.n > 0.0 ? rates.mean : 0.0;
}

void freeair__log_find_switch(freeair__log *log, int band_given)
{
  turns t = count_turns(log);
  double band_pa = log->band_pa;
  /* a switch with a narrow band shows by turns that repeat closely */
  double least_pa = fmax(fmax(8.0 * log->noise_pa, 4.0 * log->quantum_pa), 4e-3 * log->highest_pa);
  while (t.tops.n == 0.0 && !band_given && 0.5 * log->band_pa >= least_pa) {
    log->band_pa *= 0.5;
    turns narrow = count_turns(log);
    if (narrow.tops.n < 3.0) continue;
    double allowed = 0.25 * narrow.swings.mean;
    if (deviation(&narrow.tops) > allowed || deviation(&narrow.bottoms) > allowed) break;
    t = narrow;
  }
  if (t.tops.n == 0.0) log->band_pa = band_pa;
  double allowed = 0.25 * t.swings.mean;
  int given = freeair__given(log->cut_out_pa);
  log->regular = given || !(t.tops.n >= 3.0 && t.bottoms.n >= 2.0 && deviation(&t.tops) > allowed &&
                            deviation(&t.bottoms) > allowed);
  if (!given && log->regular) log->cut_out_pa = t.tops.largest;
  /* how far a turn may miss the pressure of the switch */
  double width_pa = log->cut_out_pa - log->cut_in_pa;
  if (!freeair__given(width_pa)) width_pa = fmax(t.swings.mean, log->band_pa);
  log->slack_pa = 0.2 * width_pa + fmin(t.per_step_pa, 0.5 * width_pa);
  log->idle_fall_pa_s = 0.0;
  if (!freeair__given(log->cut_out_pa)) return;
  double cut_in_pa;
  look_at_falls(log, &cut_in_pa);
  log->cut_in_pa = freeair__or(log->cut_in_pa, cut_in_pa);
}

/* Less movement than a switch makes. */
static int32_t judge_level(const freeair__log *log, const freeair__log_leg *leg)
{
  double largest;
  double sum = rises(log, leg->first, leg->last, &largest);
  double rise = leg->p_last_pa - leg->p_first_pa;
  double noticed = 4.0 * log->noise_pa + 2.0 * log->quantum_pa;
  if (rise >= log->band_pa) return FREEAIR_PRESSURE_LOG_LOADED;
  if (-rise >= log->band_pa) return sum <= -0.3 * rise ? FREEAIR_PRESSURE_LOG_IDLE : FREEAIR_PRESSURE_LOG_LOADED;
  if (sum >= 3.0 * least_rise(log, leg->p_first_pa)) return FREEAIR_PRESSURE_LOG_LOADED;
  if (!log->regular || !freeair__given(log->cut_out_pa)) return FREEAIR_PRESSURE_LOG_UNKNOWN;
  /* the rest of the log shows cycles: this is a bit of one */
  if (rise > noticed && sum > 0.0) return FREEAIR_PRESSURE_LOG_LOADED;
  if (-rise > noticed && sum <= 0.0 && leg->p_first_pa < log->cut_out_pa + log->band_pa)
    return FREEAIR_PRESSURE_LOG_IDLE;
  return FREEAIR_PRESSURE_LOG_UNKNOWN;
}

int32_t freeair__log_judge(const freeair__log *log, const freeair__log_leg *leg, size_t *split)
{
  *split = leg->last;
  if (leg->direction > 0) return FREEAIR_PRESSURE_LOG_LOADED;
  if (leg->direction == 0) return judge_level(log, leg);
  if (leg->first_turn && freeair__given(log->cut_out_pa) && leg->p_first_pa < log->cut_out_pa - log->slack_pa &&
      fall_rate(log, leg) > 1.5 * log->idle_fall_pa_s)
    return FREEAIR_PRESSURE_LOG_LOADED; /* it turned where no switch does, and falls faster than at rest */
  if (!falls_cleanly(log, leg)) return FREEAIR_PRESSURE_LOG_LOADED;
  if (!log->regular && leg->first_turn) return FREEAIR_PRESSURE_LOG_UNKNOWN;
  if (freeair__given(log->cut_in_pa) && leg->p_last_pa < log->cut_in_pa - log->slack_pa) {
    freeair__log_reader reader = freeair__log_read(log, leg->first, leg->last);
    for (size_t i; freeair__log_sample(&reader, &i);)
      if (log->p_pa[i] < log->cut_in_pa) {
        *split = i;
        break;
      }
  }
  return FREEAIR_PRESSURE_LOG_IDLE;
}
