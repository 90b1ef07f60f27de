/* SPDX-License-Identifier: MIT */
#include <freeair/pressure_log.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/pressure_log.h"
#include "internal/robust.h"
#include "internal/structure.h"

static const freeair_pressure_log_options initial_options = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;

static int optional_above(double x, double hi)
{
  return !freeair__given(x) || freeair__upto(x, 0.0, hi);
}

static int optional(double x, double lo, double hi)
{
  return !freeair__given(x) || freeair__closed(x, lo, hi);
}

int32_t freeair__log_options_read(const freeair_pressure_log_options *caller, freeair_pressure_log_options *o)
{
  *o = initial_options;
  int32_t status = freeair__structure_read(o, sizeof *o, caller, FREEAIR_PRESSURE_LOG_OPTIONS_BASELINE);
  if (status < 0) return status;
  int in_range = o->flags == 0u && optional_above(o->gap_s, 1e7) && optional_above(o->frozen_s, 1e7) &&
                 optional_above(o->band_pa, 1e8) && optional(o->settle_s, 0.0, 1e6) &&
                 optional(o->noise_pa, 0.0, 1e7) && optional(o->cut_in_pa, 1e3, 1e8) &&
                 optional(o->cut_out_pa, 1e3, 1e8) && !isgreaterequal(o->cut_in_pa, o->cut_out_pa);
  return in_range ? FREEAIR_OK : FREEAIR_ERR_DOMAIN;
}

static int readings_in_range(const double *t_s, const double *p_pa, const int32_t *state, size_t n)
{
  for (size_t i = 0; i < n; i++)
    if (!freeair__closed(t_s[i], -1e12, 1e12) || !optional(p_pa[i], 0.0, 1e8) ||
        (state != NULL && (state[i] < FREEAIR_PRESSURE_LOG_UNKNOWN || state[i] > FREEAIR_PRESSURE_LOG_IDLE)))
      return 0;
  return n <= UINT32_MAX;
}

int32_t freeair_pressure_log_segment(const double *t_s, const double *p_pa, const int32_t *state, size_t n,
                                     const freeair_pressure_log_options *options, freeair_pressure_log_phase *phases,
                                     size_t phases_stride, size_t phases_capacity, size_t *n_phases)
{
  if (n_phases == NULL) return FREEAIR_ERR_NULL;
  *n_phases = 0;
  if (t_s == NULL || p_pa == NULL || options == NULL || (phases == NULL && phases_capacity > 0))
    return FREEAIR_ERR_NULL;
  freeair_pressure_log_options o;
  int32_t status = freeair__log_options_read(options, &o);
  if (status < 0) return status;
  if (phases_capacity > 0 && phases_stride < FREEAIR_PRESSURE_LOG_PHASE_BASELINE) return FREEAIR_ERR_VERSION;
  if (!readings_in_range(t_s, p_pa, state, n)) return FREEAIR_ERR_DOMAIN;
  if (n < 3) return FREEAIR_ERR_DATA;

  freeair__log log = {.t_s = t_s, .p_pa = p_pa, .state = state, .n = n};
  log.gap_s = o.gap_s;
  log.frozen_s = o.frozen_s;
  log.noise_pa = o.noise_pa;
  log.settle_s = freeair__or(o.settle_s, 300.0);
  log.cut_in_pa = o.cut_in_pa;
  log.cut_out_pa = o.cut_out_pa;
  if (!freeair__log_measure(&log)) return FREEAIR_ERR_DATA;
  size_t missing = 0;
  for (size_t i = 0; i < n; i++) missing += isnan(p_pa[i]) != 0;
  if (n - missing - log.n_used > (n - missing) / 4) return FREEAIR_ERR_DATA;
  double usual_pa = freeair__given(o.cut_in_pa) && freeair__given(o.cut_out_pa)
                        ? 0.3 * (o.cut_out_pa - o.cut_in_pa)
                        : 0.03 * log.highest_pa;
  /* what looks like noise is the pressure itself where readings are sparse */
  double noisy_pa = fmin(8.0 * log.noise_pa, 0.25 * fmax(log.highest_pa - log.lowest_pa, 0.0));
  log.band_pa = freeair__or(o.band_pa, fmax(usual_pa, noisy_pa));
  freeair__log_find_switch(&log, freeair__given(o.band_pa));
  status = freeair__log_phases(&log, (char *)phases, phases_stride, phases_capacity, n_phases);
  if (status < 0) *n_phases = 0;
  return status;
}

int32_t freeair_pressure_log_state_from_current(const double *current_a, size_t n, double stopped_below_a,
                                                double loaded_above_a, int32_t *state)
{
  if (current_a == NULL || state == NULL) return FREEAIR_ERR_NULL;
  for (size_t i = 0; i < n; i++) state[i] = FREEAIR_PRESSURE_LOG_UNKNOWN;
  if (!freeair__upto(stopped_below_a, 0.0, 1e6) || !optional_above(loaded_above_a, 1e6) ||
      isless(loaded_above_a, stopped_below_a))
    return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++)
    if (!optional(current_a[i], 0.0, 1e6)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++) {
    if (isless(current_a[i], stopped_below_a))
      state[i] = FREEAIR_PRESSURE_LOG_STOPPED;
    else if (isgreaterequal(current_a[i], loaded_above_a))
      state[i] = FREEAIR_PRESSURE_LOG_LOADED;
    else if (isless(current_a[i], loaded_above_a))
      state[i] = FREEAIR_PRESSURE_LOG_UNLOADED;
  }
  return FREEAIR_OK;
}

int32_t freeair_pressure_log_state_from_switch(const double *signal, size_t n, int32_t when_high, int32_t when_low,
                                               int32_t *state)
{
  if (signal == NULL || state == NULL) return FREEAIR_ERR_NULL;
  for (size_t i = 0; i < n; i++) state[i] = FREEAIR_PRESSURE_LOG_UNKNOWN;
  if (when_high < FREEAIR_PRESSURE_LOG_UNKNOWN || when_high > FREEAIR_PRESSURE_LOG_IDLE ||
      when_low < FREEAIR_PRESSURE_LOG_UNKNOWN || when_low > FREEAIR_PRESSURE_LOG_IDLE)
    return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++)
    if (!optional(signal[i], -1e6, 1e6)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < n; i++)
    if (freeair__given(signal[i])) state[i] = signal[i] > 0.5 ? when_high : when_low;
  return FREEAIR_OK;
}

/* Otsu's threshold between the stopped level and the highest current. */
static double part_running(const double *current_a, size_t n, double from_a, double to_a)
{
  enum { classes = 256 };
  double count[classes] = {0.0};
  double width = (to_a - from_a) / classes;
  if (!(width > 0.0)) return NAN;
  double all = 0.0;
  double all_sum = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!isgreaterequal(current_a[i], from_a)) continue;
    double k = floor((current_a[i] - from_a) / width);
    size_t at = k >= classes ? classes - 1 : (size_t)k;
    count[at] += 1.0;
    all += 1.0;
    all_sum += (double)at + 0.5;
  }
  double below = 0.0;
  double below_sum = 0.0;
  double best = 0.0;
  double best_from = NAN;
  double best_to = NAN;
  for (size_t k = 0; k + 1 < classes; k++) {
    below += count[k];
    below_sum += count[k] * ((double)k + 0.5);
    if (below == 0.0 || below == all) continue;
    double apart = below_sum / below - (all_sum - below_sum) / (all - below);
    double between = below * (all - below) * apart * apart;
    if (between > best * (1.0 + 1e-12)) {
      best = between;
      best_from = best_to = (double)k + 1.0;
    } else if (between >= best * (1.0 - 1e-12)) {
      best_to = (double)k + 1.0;
    }
  }
  if (isnan(best_from)) return NAN;
  double threshold = from_a + 0.5 * (best_from + best_to) * width;
  double number[2] = {0.0, 0.0};
  double mean[2] = {0.0, 0.0};
  double square = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!isgreaterequal(current_a[i], from_a)) continue;
    int side_of = current_a[i] >= threshold;
    number[side_of] += 1.0;
    double off = current_a[i] - mean[side_of];
    mean[side_of] += off / number[side_of];
    square += off * (current_a[i] - mean[side_of]);
  }
  double within = sqrt(square / fmax(all - 2.0, 1.0));
  if (!(number[0] >= 2.0 && number[1] >= 2.0 && mean[1] - mean[0] > 4.0 * within && mean[1] > 1.2 * mean[0]))
    return NAN;
  return threshold;
}

int32_t freeair_pressure_log_current_levels(const double *current_a, size_t n, double *stopped_below_a,
                                            double *loaded_above_a)
{
  freeair__set_nan(stopped_below_a);
  freeair__set_nan(loaded_above_a);
  if (current_a == NULL || stopped_below_a == NULL || loaded_above_a == NULL) return FREEAIR_ERR_NULL;
  freeair__spread spread;
  freeair__spread_clear(&spread);
  double highest = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (!optional(current_a[i], 0.0, 1e6)) return FREEAIR_ERR_DOMAIN;
    if (!freeair__given(current_a[i])) continue;
    freeair__spread_add(&spread, current_a[i]);
    highest = fmax(highest, current_a[i]);
  }
  double usual = freeair__spread_quantile(&spread, 0.95);
  if (spread.n < 10 || !(usual > 0.0)) return FREEAIR_ERR_DATA;
  *stopped_below_a = 0.15 * usual;
  *loaded_above_a = part_running(current_a, n, *stopped_below_a, fmin(highest, 1.5 * usual));
  return FREEAIR_OK;
}
