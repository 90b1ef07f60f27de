/* SPDX-License-Identifier: MIT */
#include "score.h"

#include <math.h>
#include <stdio.h>

/* Groups that a level of evidence cannot be expected to part, as documented in
 * the guide of the inference. */
static int group_of(int which, int level)
{
  enum { SOUND, SLOW, FLAT, STEEP, LOW_STAGE, HIGH_STAGE, DRIVE, LEAKS, BETWEEN, OWN };
  if (which == CLASS_HEALTHY || (which == CLASS_CHECK_VALVE && level < LEVEL_TEMPERATURES)) return SOUND;
  switch (level) {
    case LEVEL_TIMES: return SLOW;
    case LEVEL_LOG:
      switch (which) {
        case CLASS_HP_SUCTION:
        case CLASS_HP_DISCHARGE:
        case CLASS_GASKET:
        case CLASS_RINGS:
        case CLASS_DOWNSTREAM:
        case CLASS_UNLOADER: return STEEP;
        default: return FLAT;
      }
    case LEVEL_INTERSTAGE:
      switch (which) {
        case CLASS_FILTER:
        case CLASS_LP_SUCTION:
        case CLASS_LP_DISCHARGE:
        case CLASS_INTERSTAGE_LEAK:
        case CLASS_RELIEF:
        case CLASS_RINGS: return LOW_STAGE;
        case CLASS_HP_SUCTION:
        case CLASS_HP_DISCHARGE:
        case CLASS_GASKET: return HIGH_STAGE;
        case CLASS_BELT:
        case CLASS_MOTOR: return DRIVE;
        default: return LEAKS;
      }
    default:
      switch (which) {
        case CLASS_LP_DISCHARGE:
        case CLASS_INTERSTAGE_LEAK: return BETWEEN;
        case CLASS_HP_SUCTION:
        case CLASS_HP_DISCHARGE: return level == LEVEL_TEMPERATURES ? HIGH_STAGE : OWN + which;
        default: return OWN + which;
      }
  }
}

void score_add(score *s, const visit *v, int level, const double p[N_CLASSES], const int32_t stated[N_CLASSES],
               double seconds)
{
  int order[N_CLASSES];
  double total = 0.0;
  for (int i = 0; i < N_CLASSES; i++) {
    int at = i;
    for (; at > 0 && p[order[at - 1]] < p[i]; at--) order[at] = order[at - 1];
    order[at] = i;
    total += p[i];
  }
  s->visits++;
  s->seconds += seconds;
  s->longest_s = fmax(s->longest_s, seconds);
  if (v->n_faults == 2) {
    int named = 0;
    int ranked = 0;
    for (int i = 0; i < N_CLASSES && ranked < 3; i++) {
      if (order[i] == CLASS_HEALTHY) continue;
      ranked++;
      named += order[i] == v->fault[0] || order[i] == v->fault[1];
    }
    s->doubles++;
    s->both += named == 2;
    return;
  }
  int truth = v->n_faults == 0 ? CLASS_HEALTHY : v->fault[0];
  double first = p[order[0]] / total;
  int bin = (int)(first * SCORE_BINS);
  if (bin >= SCORE_BINS) bin = SCORE_BINS - 1;
  s->singles++;
  s->top1 += order[0] == truth;
  s->top2 += order[0] == truth || order[1] == truth;
  s->group += group_of(order[0], level) == group_of(truth, level);
  for (int i = 0; i < N_CLASSES; i++) {
    int with = i == order[0] || (stated[i] > 0 && stated[i] == stated[order[0]]);
    s->stated += with && i == truth;
    s->stated_size += with;
  }
  s->log_loss -= log(fmax(p[truth] / total, 1e-9));
  s->in_bin[bin]++;
  s->right[bin] += order[0] == truth;
  s->sum[bin] += first;
  s->confusion[truth][order[0]]++;
  if (truth == CLASS_HEALTHY) {
    s->healthy++;
    s->accused += order[0] != CLASS_HEALTHY;
    s->firmly_accused += p[CLASS_HEALTHY] < 0.1;
  }
}

double score_calibration_error(const score *s)
{
  double error = 0.0;
  for (int i = 0; i < SCORE_BINS; i++) error += fabs(s->sum[i] - s->right[i]);
  return error / s->singles;
}

void score_print(const score *s, int level)
{
  double n = s->singles;
  printf("%-32s top-1 %.3f  top-2 %.3f  group %.3f  stated group %.3f (of %.1f)  "
         "calibration error %.3f  log loss %.3f  accused when healthy %d/%d (firmly %d)  "
         "both of two %d/%d  ms %.1f (most %.1f)",
         visit_level_name(level), s->top1 / n, s->top2 / n, s->group / n, s->stated / n, s->stated_size / n,
         score_calibration_error(s), s->log_loss / n, s->accused, s->healthy, s->firmly_accused, s->both, s->doubles,
         1e3 * s->seconds / s->visits, 1e3 * s->longest_s);
  if (s->failed > 0) printf("  failed %d", s->failed);
  printf("\n");
}

void score_print_confusion(const score *s)
{
  printf("  said, right, visits:");
  for (int i = 0; i < SCORE_BINS; i++)
    if (s->in_bin[i] > 0)
      printf("  %.2f %.2f %d", s->sum[i] / s->in_bin[i], (double)s->right[i] / s->in_bin[i], s->in_bin[i]);
  printf("\n");
  printf("%-20s", "");
  for (int j = 0; j < N_CLASSES; j++) printf(" %5.5s", visit_class_name(j));
  printf("\n");
  for (int i = 0; i < N_CLASSES; i++) {
    printf("%-20s", visit_class_name(i));
    for (int j = 0; j < N_CLASSES; j++) printf(" %5d", s->confusion[i][j]);
    printf("\n");
  }
}
