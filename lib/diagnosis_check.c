/* SPDX-License-Identifier: MIT */
#include <freeair/caution.h>
#include <freeair/diagnosis_check.h>
#include <freeair/evidence.h>
#include <freeair/likelihood.h>
#include <freeair/status.h>

#include "internal/answers.h"
#include "internal/array.h"
#include "internal/check.h"
#include "internal/evidence_readings.h"
#include "internal/rows.h"

enum { MAX_ITEMS = 10, BINS = 5, OUTCOMES = 160 };

enum {
  open_up = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY |
            FREEAIR_CAUTION_PROTECTION,
  head_work = open_up | FREEAIR_CAUTION_HOT | FREEAIR_CAUTION_LIFTING | FREEAIR_CAUTION_OIL_MIST,
  drive_work = FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING | FREEAIR_CAUTION_PROTECTION,
  running = FREEAIR_CAUTION_ROTATING | FREEAIR_CAUTION_HOT | FREEAIR_CAUTION_PROTECTION
};

/* Working time and cautions in the order of the codes. */
static const struct {
  double minutes;
  uint32_t cautions;
  int32_t qualification;
} efforts[] = {
    {3, 0, 0},                                                                                 /* ask */
    {1, running, 0},                                                                           /* at the inlet */
    {3, running, 0},                                                                           /* at the heads */
    {2, running, 0},                                                                           /* at the drive */
    {3, running | FREEAIR_CAUTION_STORED_ENERGY, 0},                                           /* oil */
    {10, FREEAIR_CAUTION_BLOWING | FREEAIR_CAUTION_PROTECTION, 0},                             /* the system */
    {5, FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_PROTECTION, 0},                         /* second gauge */
    {10, running | FREEAIR_CAUTION_STORED_ENERGY, 0},                                          /* pump-up */
    {12, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_STORED_ENERGY, 0},                          /* stop and watch */
    {15, FREEAIR_CAUTION_STORED_ENERGY, 0},                                                    /* leak-down */
    {5, running | FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_RELIEF_VALVE, 0},             /* interstage */
    {5, running, 0},                                                                           /* temperatures */
    {5, running, 0},                                                                           /* tachometer */
    {10, running, 0},                                                                          /* filter out */
    {10, running, 0},                                                                          /* soap */
    {12, open_up | running, 0},                                                                /* block unloader */
    {15, drive_work, 0},                                                                       /* belt */
    {5, FREEAIR_CAUTION_LIVE | FREEAIR_CAUTION_PROTECTION, 1},                                 /* supply */
    {10, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_CAPACITOR | FREEAIR_CAUTION_LIVE, 1},       /* capacitors */
    {2, FREEAIR_CAUTION_ROTATING | FREEAIR_CAUTION_PROTECTION, 0},                             /* a start */
    {30, FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY, 0},                     /* log */
    {5, FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_BLOWING | FREEAIR_CAUTION_PROTECTION, 0}, /* drain */
    {75, head_work, 0},                                                                        /* heads off */
    {1, 0, 0},                                                                                 /* site */
};

int32_t freeair_diagnosis_check_effort(int32_t check, double *effort_s, uint32_t *cautions, int32_t *qualification)
{
  freeair__set_nan(effort_s);
  if (cautions != NULL) *cautions = 0;
  if (qualification != NULL) *qualification = 0;
  if (effort_s == NULL || cautions == NULL || qualification == NULL) return FREEAIR_ERR_NULL;
  if (check < 1 || (size_t)check > FREEAIR__COUNT(efforts)) return FREEAIR_ERR_NOT_FOUND;
  *effort_s = 60.0 * efforts[check - 1].minutes;
  *cautions = efforts[check - 1].cautions;
  *qualification = efforts[check - 1].qualification;
  return FREEAIR_OK;
}

/* What is left open, and how probable the causes are. */
typedef struct state {
  int open_reading[FREEAIR__READINGS];
  int32_t answers[FREEAIR__OBSERVATIONS];
  double weight[FREEAIR__CAUSES];
  double size[FREEAIR__CAUSES];
  double u_size[FREEAIR__CAUSES];
} state;

/* Of one pump-up test the delivery stands for all; power goes with current; the
 * site tells nothing of causes. */
static int32_t read_taken(const freeair_diagnosis_subject *subject, const freeair_evidence_readings *found, state *s)
{
  int32_t reading;
  int32_t n;
  int32_t status = freeair_evidence_readings_check(found, &reading, &n);
  if (status < 0) return status;
  int timed = 0;
  for (int r = 1; r < FREEAIR__READINGS; r++) {
    double value;
    double u;
    int32_t applies;
    status = freeair_diagnosis_subject_reading(subject, r, &applies);
    if (status < 0) return status;
    freeair_evidence_readings_get(found, r, &value, &u);
    s->open_reading[r] = applies && !freeair__given(value);
    if (r == FREEAIR_EVIDENCE_TIME_FROM_EMPTY || r == FREEAIR_EVIDENCE_TIME_FROM_CUTIN)
      timed = timed || freeair__given(value);
  }
  if (timed) s->open_reading[FREEAIR_EVIDENCE_DELIVERY] = 0;
  static const int never[] = {FREEAIR_EVIDENCE_TIME_FROM_EMPTY, FREEAIR_EVIDENCE_TIME_FROM_CUTIN,
                              FREEAIR_EVIDENCE_LEVEL_OFF, FREEAIR_EVIDENCE_POWER,
                              FREEAIR_EVIDENCE_AMBIENT, FREEAIR_EVIDENCE_BAROMETER};
  for (size_t i = 0; i < sizeof never / sizeof never[0]; i++) s->open_reading[never[i]] = 0;
  return FREEAIR_OK;
}

/* A pump-up test with the service valve closed brings all its observations. */
static void read_test(const freeair_diagnosis_subject *subject, const freeair_evidence_readings *found, state *s)
{
  static const int32_t any[] = {FREEAIR_EVIDENCE_DELIVERY, FREEAIR_EVIDENCE_TIME_FROM_EMPTY,
                                FREEAIR_EVIDENCE_TIME_FROM_CUTIN, FREEAIR_EVIDENCE_LEVEL_OFF};
  freeair_diagnosis_subject known = FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  freeair__structure_read(&known, sizeof known, subject, FREEAIR_DIAGNOSIS_SUBJECT_BASELINE);
  int tested = 0;
  for (size_t i = 0; i < FREEAIR__COUNT(any); i++) {
    double value;
    double u;
    freeair_evidence_readings_get(found, any[i], &value, &u);
    tested = tested || freeair__given(value);
  }
  if (!tested || known.service_valve_closed != FREEAIR_EVIDENCE_YES) return;
  s->open_reading[FREEAIR_EVIDENCE_DELIVERY] = 0;
  for (int32_t o = 1; o < FREEAIR__OBSERVATIONS; o++)
    if (freeair_evidence_check_for(FREEAIR_EVIDENCE_KIND_OBSERVATION, o) == FREEAIR_EVIDENCE_PUMP_UP_TEST &&
        s->answers[o] == FREEAIR_EVIDENCE_NOT_CHECKED)
      s->answers[o] = FREEAIR_EVIDENCE_NO;
}

static int32_t read_causes(const freeair_diagnosis_cause *causes, size_t stride, size_t n, state *s)
{
  if (n > 0 && causes == NULL) return FREEAIR_ERR_NULL;
  if (n > 1000u) return FREEAIR_ERR_DOMAIN;
  double total = 0.0;
  for (size_t i = 0; i < n; i++) {
    freeair_diagnosis_cause row = FREEAIR_DIAGNOSIS_CAUSE_INIT;
    int32_t status = freeair__structure_read(&row, sizeof row, (const unsigned char *)causes + i * stride,
                                             FREEAIR_DIAGNOSIS_CAUSE_BASELINE);
    if (status < 0) return status;
    if (row.struct_size > stride) return FREEAIR_ERR_VERSION;
    if (row.cause == FREEAIR_EVIDENCE_CAUSE_NONE) continue;
    if (row.cause < 1 || row.cause >= FREEAIR__CAUSES) return FREEAIR_ERR_NOT_FOUND;
    const double size = freeair__or(row.size, 0.0);
    const double u_size = freeair__or(row.u_size, 0.0);
    if (!freeair__closed(row.probability, 0.0, 1.0) || !freeair__closed(size, 0.0, 100.0) ||
        !freeair__closed(u_size, 0.0, 100.0))
      return FREEAIR_ERR_DOMAIN;
    s->weight[row.cause] = row.probability;
    s->size[row.cause] = size;
    s->u_size[row.cause] = u_size;
  }
  for (int c = 1; c < FREEAIR__CAUSES; c++) total += s->weight[c];
  if (!(total > 0.0)) return FREEAIR_ERR_DATA;
  for (int c = 1; c < FREEAIR__CAUSES; c++) s->weight[c] /= total;
  return FREEAIR_OK;
}

/* Phi(x) */
static double normal_below(double x)
{
  return 0.5 * erfc(-x * 0.70710678118654752440);
}

/* Probabilities of the five classes of a reading not yet taken. */
static void classes_of_reading(const state *w, int cause, int r, double probability[BINS])
{
  static const double edges[] = {-3.0, -1.0, 1.0, 3.0};
  double u_found;
  double u_expected;
  double share;
  double wide;
  double affected;
  double slope;
  double limit;
  double spread;
  double typical;
  double cost;
  int32_t scale;
  int32_t basis;
  int32_t two_sided;
  freeair_likelihood_spread(r, &u_found, &u_expected, &share, &wide, &affected, &scale);
  freeair_likelihood_reading(cause, r, &slope, &limit, &spread, &basis);
  freeair_likelihood_size(cause, &typical, &cost, &two_sided);
  const double own = hypot(u_found, u_expected);
  double shift = slope * w->size[cause];
  double u = hypot(hypot(own, spread * shift), slope * w->u_size[cause]);
  if (fabs(shift) > limit) {
    shift = copysign(limit, shift);
    u = hypot(own, spread * shift);
  }
  for (int b = 0; b < BINS; b++) {
    probability[b] = 0.0;
    for (int side = 0; side < 2; side++) {
      /* Either way; or something else, which affects the reading or not. */
      const double at = two_sided && side == 1 ? -shift : shift;
      const double half = cause != FREEAIR_EVIDENCE_OTHER ? 0.5 : side == 1 ? affected : 1.0 - affected;
      if (cause == FREEAIR_EVIDENCE_OTHER) u = side == 1 ? hypot(own, wide) : own;
      const double upper = b < BINS - 1 ? normal_below((edges[b] * own - at) / u) : 1.0;
      const double lower = b > 0 ? normal_below((edges[b - 1] * own - at) / u) : 0.0;
      probability[b] += half * fmax(upper - lower, 0.0);
    }
  }
}

/* Mutual information in nats of the cause and outcomes, given their
 * probabilities for each cause. */
static double mutual_information(const double weight[FREEAIR__CAUSES], double (*probability)[OUTCOMES], int n)
{
  double information = 0.0;
  for (int o = 0; o < n; o++) {
    double total = 0.0;
    for (int c = 1; c < FREEAIR__CAUSES; c++) total += weight[c] * probability[c][o];
    for (int c = 1; c < FREEAIR__CAUSES; c++)
      if (weight[c] * probability[c][o] > 0.0)
        information += weight[c] * probability[c][o] * log(probability[c][o] / total);
  }
  return fmax(information, 0.0);
}

typedef struct item {
  double information;
  double probability[FREEAIR__CAUSES][BINS];
  int n;
} item;

/* Whether any cause in question brings the observation. */
static int in_question(const state *s, int observation)
{
  for (int c = 1; c < FREEAIR__CAUSES; c++) {
    double hit;
    double false_alarm;
    int32_t basis;
    freeair_likelihood_observation(c, observation, &hit, &false_alarm, &basis);
    if (s->weight[c] > 0.0 && basis != FREEAIR_LIKELIHOOD_UNLISTED) return 1;
  }
  return 0;
}

/* Adds an observation or a reading to the items that a check would bring. */
static void add_item(const state *s, int32_t kind, int code, item *it)
{
  double probability[FREEAIR__CAUSES][OUTCOMES];
  it->n = kind == FREEAIR_EVIDENCE_KIND_READING ? BINS : 2;
  for (int c = 1; c < FREEAIR__CAUSES; c++) {
    if (kind == FREEAIR_EVIDENCE_KIND_READING) {
      classes_of_reading(s, c, code, it->probability[c]);
    } else {
      double false_alarm;
      int32_t basis;
      freeair_likelihood_observation(c, code, &it->probability[c][0], &false_alarm, &basis);
      it->probability[c][1] = 1.0 - it->probability[c][0];
    }
    for (int b = 0; b < it->n; b++) probability[c][b] = it->probability[c][b];
  }
  it->information = mutual_information(s->weight, probability, it->n);
}

/* Bits that a check is expected to bring: its most telling items together. */
static double check_information(const state *s, int check)
{
  item items[MAX_ITEMS];
  int n_items = 0;
  for (int o = 1; o < FREEAIR__OBSERVATIONS && n_items < MAX_ITEMS; o++)
    if (s->answers[o] == FREEAIR_EVIDENCE_NOT_CHECKED &&
        freeair_evidence_check_for(FREEAIR_EVIDENCE_KIND_OBSERVATION, o) == check && in_question(s, o))
      add_item(s, FREEAIR_EVIDENCE_KIND_OBSERVATION, o, &items[n_items++]);
  for (int r = 1; r < FREEAIR__READINGS && n_items < MAX_ITEMS; r++)
    if (s->open_reading[r] && freeair_evidence_check_for(FREEAIR_EVIDENCE_KIND_READING, r) == check)
      add_item(s, FREEAIR_EVIDENCE_KIND_READING, r, &items[n_items++]);

  double joint[FREEAIR__CAUSES][OUTCOMES];
  int n = 1;
  for (int c = 1; c < FREEAIR__CAUSES; c++) joint[c][0] = 1.0;
  for (;;) {
    item *best = NULL;
    for (int k = 0; k < n_items; k++)
      if (n * items[k].n <= OUTCOMES && items[k].information > (best != NULL ? best->information : 0.0))
        best = &items[k];
    if (best == NULL) break;
    for (int c = 1; c < FREEAIR__CAUSES; c++)
      for (int o = n - 1; o >= 0; o--) {
        const double before = joint[c][o];
        for (int b = best->n - 1; b >= 0; b--) joint[c][o * best->n + b] = before * best->probability[c][b];
      }
    n *= best->n;
    best->information = 0.0;
  }
  return n > 1 ? mutual_information(s->weight, joint, n) * 1.4426950408889634 : 0.0;
}

int32_t freeair_diagnosis_check_rank(
    const freeair_diagnosis_subject *subject, const freeair_evidence_readings *found, const int32_t *observation,
    const int32_t *answer, size_t n_observations, const freeair_diagnosis_cause *causes, size_t causes_stride,
    size_t n_causes, const double *effort_s, size_t n_effort, freeair_diagnosis_check *checks, size_t checks_stride,
    size_t checks_capacity, size_t *n_checks)
{
  static const freeair_diagnosis_check blank = FREEAIR_DIAGNOSIS_CHECK_INIT;
  const freeair__rows rows = {checks, checks_stride, checks_capacity, sizeof blank, FREEAIR_DIAGNOSIS_CHECK_BASELINE};
  if (n_checks != NULL) *n_checks = 0;
  int32_t status = freeair__rows_check(&rows);
  if (status == FREEAIR_OK) freeair__rows_blank(&rows, &blank);
  if (subject == NULL || found == NULL || n_checks == NULL || (effort_s == NULL && n_effort > 0))
    return FREEAIR_ERR_NULL;
  state s = {.weight = {0.0}};
  if (status == FREEAIR_OK) status = read_taken(subject, found, &s);
  if (status == FREEAIR_OK)
    status = freeair__answers_read(observation, answer, n_observations, FREEAIR__OBSERVATIONS, s.answers);
  if (status == FREEAIR_OK) read_test(subject, found, &s);
  if (status == FREEAIR_OK) status = read_causes(causes, causes_stride, n_causes, &s);
  if (status < 0) return status;
  if (n_effort > FREEAIR__CHECKS) return FREEAIR_ERR_NOT_FOUND;
  for (size_t i = 1; i < n_effort; i++)
    if (freeair__given(effort_s[i]) && !freeair__closed(effort_s[i], 1.0, 1e7)) return FREEAIR_ERR_DOMAIN;

  freeair_diagnosis_check sorted[FREEAIR__CHECKS];
  size_t n = 0;
  for (int32_t check = 1; check < FREEAIR__CHECKS; check++) {
    freeair_diagnosis_check row = FREEAIR_DIAGNOSIS_CHECK_INIT;
    row.check = check;
    row.information = check_information(&s, check);
    if (row.information < 1e-6) continue;
    freeair_diagnosis_check_effort(check, &row.effort_s, &row.cautions, &row.qualification);
    if ((size_t)check < n_effort) row.effort_s = freeair__or(effort_s[check], row.effort_s);
    row.information_rate_1_s = row.information / row.effort_s;
    size_t at = n++;
    for (; at > 0 && sorted[at - 1].information_rate_1_s < row.information_rate_1_s; at--) sorted[at] = sorted[at - 1];
    sorted[at] = row;
  }
  for (size_t i = 0; i < n; i++) freeair__rows_put(&rows, i, &sorted[i]);
  *n_checks = n;
  return n > checks_capacity ? FREEAIR_WARN_TRUNCATED : FREEAIR_OK;
}
