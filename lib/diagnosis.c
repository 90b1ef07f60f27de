/* SPDX-License-Identifier: MIT */
#include <freeair/diagnosis.h>
#include <freeair/evidence.h>
#include <freeair/likelihood.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "internal/answers.h"
#include "internal/check.h"
#include "internal/logsum.h"
#include "internal/diagnosis.h"

enum {
  SOUND = FREEAIR_EVIDENCE_HEALTHY,
  OTHER = FREEAIR_EVIDENCE_OTHER,
  NODES_ALONE = 48,
  NODES_IN_PAIR = 12
};

/* ---- the evidence ---- */

typedef struct signature {
  double slope;
  double limit;
  double spread;
} signature;

/* A reading that has a deviation. */
typedef struct used {
  int32_t reading;
  double deviation;
  double spread;
  double wide;
  double affected;
  signature signatures[FREEAIR__CAUSES];
} used;

typedef struct evidence {
  freeair_diagnosis_subject subject;
  int32_t answers[FREEAIR__OBSERVATIONS];
  freeair_diagnosis_finding findings[FREEAIR__READINGS];
  size_t n_findings;
  used readings[FREEAIR__READINGS];
  int n_readings;
  double level_off_pa; /* gauge pressure; NaN when there is none */
  double size[FREEAIR__CAUSES];
  double cost[FREEAIR__CAUSES];
  int32_t two_sided[FREEAIR__CAUSES];
} evidence;

/* The deviations and the tables that go with them. */
static void prepare(evidence *e)
{
  e->size[0] = e->cost[0] = 0.0;
  e->two_sided[0] = 0;
  for (int c = 1; c < FREEAIR__CAUSES; c++) freeair_likelihood_size(c, &e->size[c], &e->cost[c], &e->two_sided[c]);
  e->level_off_pa = NAN;
  e->n_readings = 0;
  for (size_t i = 0; i < e->n_findings; i++) {
    const freeair_diagnosis_finding *f = &e->findings[i];
    if (f->use != FREEAIR_DIAGNOSIS_USED) continue;
    if (f->reading == FREEAIR_EVIDENCE_LEVEL_OFF) {
      e->level_off_pa = fmax(f->found - f->reference, 1e3);
      continue;
    }
    used *u = &e->readings[e->n_readings++];
    double none;
    int32_t code;
    u->reading = f->reading;
    u->deviation = f->deviation;
    u->spread = f->spread;
    freeair_likelihood_spread(f->reading, &none, &none, &none, &u->wide, &u->affected, &code);
    for (int c = 1; c < FREEAIR__CAUSES; c++) {
      signature *s = &u->signatures[c];
      freeair_likelihood_reading(c, f->reading, &s->slope, &s->limit, &s->spread, &code);
    }
  }
}

static int from_pump_up(int32_t reading)
{
  return reading == FREEAIR_EVIDENCE_DELIVERY || reading == FREEAIR_EVIDENCE_TIME_FROM_EMPTY ||
         reading == FREEAIR_EVIDENCE_TIME_FROM_CUTIN;
}

/* ---- what a fault of one size predicts ---- */

typedef struct node {
  double weight;
  double size;
  double cell;              /* standard deviation of the sizes that it stands for */
  double shift[FREEAIR__READINGS]; /* of the used readings, in their order */
  double u2[FREEAIR__READINGS];    /* variance of that shift */
} node;

/* Node k of n over the size of a cause: denser where faults are small. Where a
 * cause can move readings in two ways, nodes take turns. */
static void make_node(const evidence *e, int cause, int k, int n, node *at)
{
  const double v = (k + 0.5) / n;
  const int turns = e->two_sided[cause] || (cause == FREEAIR_EVIDENCE_DOWNSTREAM &&
                                            e->subject.service_valve_closed == FREEAIR_EVIDENCE_NOT_CHECKED);
  at->size = 10.0 * e->size[cause] * v * v;
  at->weight = v * v * v * exp(-10.0 * v * v);
  at->cell = 20.0 * e->size[cause] * v / n / sqrt(12.0) * (turns ? 2.0 : 1.0);
  const double sign = e->two_sided[cause] && k % 2 == 1 ? -1.0 : 1.0;
  const double passing = cause == FREEAIR_EVIDENCE_DOWNSTREAM ? freeair__practice_seen(&e->subject, k % 2) : 1.0;
  for (int i = 0; i < e->n_readings; i++) {
    const signature *s = &e->readings[i].signatures[cause];
    const double slope = from_pump_up(e->readings[i].reading) ? s->slope * passing : s->slope;
    const double shift = slope * at->size;
    const int free = fabs(shift) < s->limit;
    at->shift[i] = sign * (free ? shift : copysign(s->limit, slope));
    const double u = s->spread * at->shift[i];
    const double c = free ? slope * at->cell : 0.0;
    at->u2[i] = u * u + c * c;
  }
}

/* What one hypothesis says of the readings. Sums are over the nodes, relative
 * to readings that lie exactly where they are predicted. */
typedef struct fit {
  double all;
  double without[FREEAIR__READINGS];
  double moment[2][FREEAIR__MOMENTS]; /* of each cause: size, its square, severity, its square */
  double below[FREEAIR__READINGS];
  double mean[FREEAIR__READINGS];
} fit;

/* Density of a standardised residual relative to its peak, as in
 * freeair_likelihood_density. */
static double relative_density(double z)
{
  const double q = 1.0 + z * z / 7.0;
  return 1.0 / (q * q * q * q);
}

static double standardised(double deviation, double at, double u2)
{
  return fmax(-30.0, fmin(30.0, (deviation - at) / sqrt(u2)));
}

/* Adds the readings about one point; i and j are its nodes, j may be null. */
static void add_point(const evidence *e, const node *i, const node *j, const double cost[2], int predict, fit *f)
{
  double term[FREEAIR__READINGS];
  double z[FREEAIR__READINGS];
  double at[FREEAIR__READINGS];
  double product = i->weight * (j != NULL ? j->weight : 1.0);
  for (int k = 0; k < e->n_readings; k++) {
    const double own = e->readings[k].spread * e->readings[k].spread;
    const double u2 = own + i->u2[k] + (j != NULL ? j->u2[k] : 0.0);
    at[k] = i->shift[k] + (j != NULL ? j->shift[k] : 0.0);
    z[k] = standardised(e->readings[k].deviation, at[k], u2);
    term[k] = sqrt(own / u2) * relative_density(z[k]);
    product *= term[k];
  }
  f->all += product;
  for (int k = 0; k < e->n_readings; k++) {
    const double rest = product / term[k];
    f->without[k] += rest;
    if (!predict) continue;
    f->below[k] += rest * 0.5 * erfc(-z[k] * 0.70710678118654752440);
    f->mean[k] += rest * at[k];
  }
  for (int c = 0; c < 2; c++) {
    const node *n = c == 0 ? i : j;
    if (n == NULL) break;
    const double lost = -expm1(-cost[c] * n->size);
    f->moment[c][0] += product * n->size;
    f->moment[c][1] += product * (n->size * n->size + n->cell * n->cell);
    f->moment[c][2] += product * lost;
    f->moment[c][3] += product * lost * lost;
  }
}

/* Something else: each reading is either as of a sound machine or anywhere. */
static void fit_something_else(const evidence *e, fit *f)
{
  *f = (fit){.all = 1.0};
  double term[FREEAIR__READINGS];
  for (int k = 0; k < e->n_readings; k++) {
    const used *u = &e->readings[k];
    const double own = u->spread * u->spread;
    const double wide = own + u->wide * u->wide;
    term[k] = (1.0 - u->affected) * relative_density(standardised(u->deviation, 0.0, own)) +
              u->affected * sqrt(own / wide) * relative_density(standardised(u->deviation, 0.0, wide));
    f->all *= term[k];
  }
  for (int k = 0; k < e->n_readings; k++) f->without[k] = f->all / term[k];
}

/* All sizes of one cause, or of two; j is 0 for one alone. */
static void fit_hypothesis(const evidence *e, int i, int j, int predict, fit *f)
{
  if (i == OTHER) {
    fit_something_else(e, f);
    return;
  }
  *f = (fit){.all = 0.0};
  const double cost[2] = {e->cost[i], e->cost[j]};
  const int n = j != 0 ? NODES_IN_PAIR : i >= FREEAIR__FIRST_FAULT ? NODES_ALONE : 1;
  node a;
  node b[NODES_IN_PAIR];
  double weights[2] = {0.0, 1.0};
  if (j != 0) {
    weights[1] = 0.0;
    for (int l = 0; l < n; l++) {
      make_node(e, j, l, n, &b[l]);
      weights[1] += b[l].weight;
    }
  }
  for (int k = 0; k < n; k++) {
    make_node(e, i, k, n, &a);
    weights[0] += a.weight;
    if (j == 0)
      add_point(e, &a, NULL, cost, predict, f);
    else
      for (int l = 0; l < n; l++) add_point(e, &a, &b[l], cost, predict, f);
  }
  const double all = weights[0] * weights[1];
  f->all /= all;
  for (int k = 0; k < e->n_readings; k++) {
    f->without[k] /= all;
    f->below[k] /= all;
    f->mean[k] /= all;
  }
  for (int c = 0; c < 2; c++)
    for (int m = 0; m < FREEAIR__MOMENTS; m++) f->moment[c][m] /= all;
}

/* Logarithm of the density of the level-off pressure, over ln pressure. */
static double log_level_off(const evidence *e, int i, int j)
{
  const int both[] = {i, j};
  const double x = log(e->level_off_pa);
  double density = 0.002 / 3.0; /* a gauge misread: anywhere over a factor of twenty */
  for (int k = 0; k < 2 && both[k] != 0; k++) {
    double often;
    double centre_pa;
    double width;
    freeair_likelihood_level_off(both[k], &often, &centre_pa, &width);
    if (both[k] == FREEAIR_EVIDENCE_DOWNSTREAM)
      often *= 0.5 * (freeair__practice_seen(&e->subject, 0) + freeair__practice_seen(&e->subject, 1));
    if (e->subject.stages == 1) width = fmax(width, 0.6);
    const double z = (x - log(centre_pa)) / width;
    density += often * 0.39894228040143268 / width * exp(-0.5 * z * z);
  }
  return log(density);
}

/* ---- all hypotheses ---- */

/* What the listed causes and all other evidence say of a reading. */
typedef struct prediction {
  double log_weight;
  double mean[2]; /* probability of lying below what was read; deviation */
} prediction;

typedef struct inference {
  freeair__posterior posterior;
  prediction predictions[FREEAIR__READINGS];
} inference;

/* Of the answers and the level-off pressure: log-likelihoods by item, and their sum. */
static double flat_items(const evidence *e, int i, int j, double log_items[FREEAIR__ITEMS])
{
  double sum = 0.0;
  for (int k = 0; k < FREEAIR__ITEMS; k++) log_items[k] = 0.0;
  freeair__practice_answers(e->answers, i, j, 0.0, log_items);
  if (freeair__given(e->level_off_pa)) log_items[FREEAIR_EVIDENCE_LEVEL_OFF] = log_level_off(e, i, j);
  for (int k = 0; k < FREEAIR__ITEMS; k++) sum += log_items[k];
  return sum;
}

/* One hypothesis: cause i, with j unless that is 0. */
static void add_hypothesis(const evidence *e, int i, int j, double prior, inference *to)
{
  if (!(prior > 0.0)) return;
  double log_without[FREEAIR__ITEMS];
  const double flat = log(prior) + flat_items(e, i, j, log_without);
  fit f;
  /* What the listed causes predict is wanted of those pairs only that carry
   * weight without the reading. */
  int predict = j == 0 && i != OTHER;
  fit_hypothesis(e, i, j, predict, &f);
  if (j != 0) {
    for (int k = 0; k < e->n_readings; k++)
      predict = predict || flat + log(f.without[k]) > to->predictions[k].log_weight - 9.0;
    if (predict) fit_hypothesis(e, i, j, predict, &f);
  }
  const double log_all = flat + log(f.all);
  for (int k = 0; k < FREEAIR__ITEMS; k++) log_without[k] = log_all - log_without[k];
  for (int k = 0; k < e->n_readings; k++) {
    const double log_weight = flat + log(f.without[k]);
    log_without[e->readings[k].reading] = log_weight;
    const double says[] = {f.below[k] / f.without[k], f.mean[k] / f.without[k]};
    prediction *p = &to->predictions[k];
    if (predict) freeair__blend(&p->log_weight, p->mean, 2, log_weight, says);
  }
  freeair__posterior_add(&to->posterior, i, j, log_without);
  for (int c = 0; c < (j != 0 ? 2 : 1); c++) {
    double moments[FREEAIR__MOMENTS];
    for (int m = 0; m < FREEAIR__MOMENTS; m++) moments[m] = f.moment[c][m] / f.all;
    freeair__posterior_moments(&to->posterior, c == 0 ? i : j, log_all, moments);
  }
}

static void infer(const evidence *e, const freeair__priors *prior, inference *to)
{
  freeair__posterior_start(&to->posterior, FREEAIR__ITEMS);
  for (int k = 0; k < FREEAIR__READINGS; k++) to->predictions[k] = (prediction){-INFINITY, {0.0, 0.0}};
  for (int i = 1; i < FREEAIR__CAUSES; i++) add_hypothesis(e, i, 0, prior->alone[i], to);
  for (int i = FREEAIR__FIRST_FAULT; i < FREEAIR__CAUSES; i++)
    for (int j = i + 1; j < FREEAIR__CAUSES; j++)
      add_hypothesis(e, i, j, prior->pair * prior->fault[i] * prior->fault[j], to);
}

/* ---- the answer in rows ---- */

static void judge_findings(evidence *e, const inference *after, const freeair_diagnosis_options *options,
                           freeair_diagnosis_summary *summary)
{
  int k = 0;
  for (size_t i = 0; i < e->n_findings; i++) {
    freeair_diagnosis_finding *f = &e->findings[i];
    if (f->use != FREEAIR_DIAGNOSIS_USED) {
      summary->readings_unused++;
      continue;
    }
    summary->readings_used++;
    if (f->reading == FREEAIR_EVIDENCE_LEVEL_OFF) continue;
    const prediction *p = &after->predictions[k++];
    if (isinf(p->log_weight)) continue;
    freeair_diagnosis_finding_value(f->reading, f->expected, f->reference, p->mean[1], &f->predicted);
    f->disagreement = freeair__deviations_from(p->mean[0]);
    if (fabs(f->disagreement) < options->contradiction) continue;
    f->use = FREEAIR_DIAGNOSIS_CONTRADICTS;
    summary->contradictions++;
  }
}

/* A reading with the cause at its mean size. */
static double predicted_value(const evidence *e, const freeair_diagnosis_finding *f, const freeair_diagnosis_cause *row)
{
  double value = NAN;
  if (row->cause == OTHER || !freeair__given(f->deviation)) return NAN;
  signature s;
  int32_t basis;
  freeair_likelihood_reading(row->cause, f->reading, &s.slope, &s.limit, &s.spread, &basis);
  const double shift = s.slope * row->size;
  const double way = e->two_sided[row->cause] ? f->deviation : shift;
  freeair_diagnosis_finding_value(f->reading, f->expected, f->reference, copysign(fmin(fabs(shift), s.limit), way),
                                  &value);
  return value;
}

static size_t put_reasons(const evidence *e, const freeair__posterior *p, const freeair__ranking *by,
                          const freeair__rows *rows)
{
  size_t n = 0;
  for (int i = 0; i < by->n; i++) {
    double says[FREEAIR__ITEMS];
    freeair_diagnosis_reason row;
    freeair__reasons_of(p, by->row[i].cause, says);
    while (freeair__reason_next(e->answers, &by->row[i], says, &row)) {
      for (size_t k = 0; k < e->n_findings; k++) {
        if (row.reading == 0 || e->findings[k].reading != row.reading) continue;
        row.found = e->findings[k].found;
        row.expected = e->findings[k].expected;
        row.predicted = predicted_value(e, &e->findings[k], &by->row[i]);
        row.residual = freeair__finding_residual(&e->findings[k], row.predicted);
      }
      freeair__rows_put(rows, n++, &row);
    }
  }
  return n;
}

int32_t freeair_diagnosis_rank(
    const freeair_diagnosis_subject *subject, const freeair_evidence_readings *expected,
    const freeair_evidence_readings *found, const int32_t *observation, const int32_t *answer, size_t n_observations,
    const double *prior, size_t n_prior, const freeair_diagnosis_options *options, freeair_diagnosis_cause *causes,
    size_t causes_stride, size_t causes_capacity, size_t *n_causes, freeair_diagnosis_reason *reasons,
    size_t reasons_stride, size_t reasons_capacity, size_t *n_reasons, freeair_diagnosis_finding *findings,
    size_t findings_stride, size_t findings_capacity, size_t *n_findings, freeair_diagnosis_summary *summary)
{
  static const freeair_diagnosis_cause blank_cause = FREEAIR_DIAGNOSIS_CAUSE_INIT;
  static const freeair_diagnosis_reason blank_reason = FREEAIR_DIAGNOSIS_REASON_INIT;
  static const freeair_diagnosis_finding blank_finding = FREEAIR_DIAGNOSIS_FINDING_INIT;
  freeair_diagnosis_summary sum = FREEAIR_DIAGNOSIS_SUMMARY_INIT;
  const freeair__rows cause_rows = {causes, causes_stride, causes_capacity, sizeof blank_cause,
                                    FREEAIR_DIAGNOSIS_CAUSE_BASELINE};
  const freeair__rows reason_rows = {reasons, reasons_stride, reasons_capacity, sizeof blank_reason,
                                     FREEAIR_DIAGNOSIS_REASON_BASELINE};
  const freeair__rows finding_rows = {findings, findings_stride, findings_capacity, sizeof blank_finding,
                                      FREEAIR_DIAGNOSIS_FINDING_BASELINE};
  if (n_causes != NULL) *n_causes = 0;
  if (n_reasons != NULL) *n_reasons = 0;
  if (n_findings != NULL) *n_findings = 0;
  int32_t status = freeair__rows_start(&cause_rows, &blank_cause, FREEAIR_OK);
  status = freeair__rows_start(&reason_rows, &blank_reason, status);
  status = freeair__rows_start(&finding_rows, &blank_finding, status);
  if (summary != NULL) {
    int32_t written = freeair__structure_write(summary, &sum, sizeof sum, FREEAIR_DIAGNOSIS_SUMMARY_BASELINE);
    if (status == FREEAIR_OK) status = written;
  }
  if (subject == NULL || expected == NULL || found == NULL || options == NULL || summary == NULL || n_causes == NULL ||
      n_reasons == NULL || n_findings == NULL)
    return FREEAIR_ERR_NULL;
  if (status < 0) return status;

  evidence e;
  freeair_diagnosis_options chosen;
  freeair__priors before = {.pair = 0.0};
  double factor;
  status = freeair_diagnosis_subject_cause(subject, SOUND, &factor);
  if (status == FREEAIR_OK) status = freeair__diagnosis_options_read(options, &chosen);
  if (status == FREEAIR_OK)
    status = freeair__answers_read(observation, answer, n_observations, FREEAIR__OBSERVATIONS, e.answers);
  if (status == FREEAIR_OK) status = freeair__priors_make(subject, prior, n_prior, chosen.pair_share, &before);
  for (size_t i = 0; i < FREEAIR__READINGS; i++) e.findings[i] = blank_finding;
  if (status == FREEAIR_OK)
    status = freeair_diagnosis_finding_compare(subject, expected, found, e.findings, sizeof e.findings[0],
                                               FREEAIR__READINGS, &e.n_findings);
  if (status < 0) return status;
  e.subject = (freeair_diagnosis_subject)FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  freeair__structure_read(&e.subject, sizeof e.subject, subject, FREEAIR_DIAGNOSIS_SUBJECT_BASELINE);
  prepare(&e);

  inference after;
  freeair__ranking by;
  infer(&e, &before, &after);
  freeair__ranking_make(&before, &after.posterior, &by);
  freeair__ranking_group(subject, found, observation, answer, n_observations, &by);
  freeair__summary_make(&after.posterior, &by, e.answers, &sum);
  judge_findings(&e, &after, &chosen, &sum);
  freeair__verdict_make(e.findings, e.n_findings, &after.posterior, chosen.confidence, &sum);

  *n_causes = (size_t)by.n;
  *n_findings = e.n_findings;
  *n_reasons = put_reasons(&e, &after.posterior, &by, &reason_rows);
  for (size_t i = 0; i < *n_causes; i++) freeair__rows_put(&cause_rows, i, &by.row[i]);
  for (size_t i = 0; i < *n_findings; i++) freeair__rows_put(&finding_rows, i, &e.findings[i]);
  freeair__structure_write(summary, &sum, sizeof sum, FREEAIR_DIAGNOSIS_SUMMARY_BASELINE);
  if (sum.contradictions > 0) return FREEAIR_WARN_INCONSISTENT;
  if (*n_causes > causes_capacity || *n_reasons > reasons_capacity || *n_findings > findings_capacity)
    return FREEAIR_WARN_TRUNCATED;
  return FREEAIR_OK;
}
