/* SPDX-License-Identifier: MIT */
#include "internal/diagnosis.h"

#include "internal/check.h"
#include "internal/logsum.h"

#include <freeair/status.h>

enum { SOUND = FREEAIR_EVIDENCE_HEALTHY, OTHER = FREEAIR_EVIDENCE_OTHER };

_Static_assert((int)FREEAIR__CAUSES <= (int)FREEAIR__MAX_CAUSES, "room for every cause");
_Static_assert((int)FREEAIR__ITEMS <= (int)FREEAIR__MAX_ITEMS, "room for every item");

int32_t freeair__diagnosis_options_read(const freeair_diagnosis_options *from, freeair_diagnosis_options *to)
{
  *to = (freeair_diagnosis_options)FREEAIR_DIAGNOSIS_OPTIONS_INIT;
  int32_t status = freeair__structure_read(to, sizeof *to, from, FREEAIR_DIAGNOSIS_OPTIONS_BASELINE);
  if (status < 0) return status;
  to->pair_share = freeair__or(to->pair_share, 0.08);
  to->confidence = freeair__or(to->confidence, 0.9);
  to->contradiction = freeair__or(to->contradiction, 3.0);
  if (to->flags != 0 || !freeair__closed(to->pair_share, 0.0, 0.5) || !freeair__open(to->confidence, 0.5, 1.0) ||
      !freeair__closed(to->contradiction, 1.0, 20.0))
    return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

int32_t freeair__priors_make(const freeair_diagnosis_subject *s, const double *prior, size_t n_prior,
                             double pair_share, freeair__priors *p)
{
  if (n_prior > FREEAIR__CAUSES) return FREEAIR_ERR_NOT_FOUND;
  if (n_prior > 0 && prior == NULL) return FREEAIR_ERR_NULL;
  *p = (freeair__priors){.pair = 0.0};
  double given[FREEAIR__CAUSES] = {0.0};
  double before = 0.0;
  double total = 0.0;
  double faults = 0.0;
  for (int c = 1; c < FREEAIR__CAUSES; c++) {
    freeair_likelihood_prior(c, &given[c]);
    if ((size_t)c < n_prior && freeair__given(prior[c])) {
      if (!freeair__closed(prior[c], 0.0, 1e6)) return FREEAIR_ERR_DOMAIN;
      given[c] = prior[c];
    }
    total += given[c];
    if (c < FREEAIR__FIRST_FAULT) continue;
    double factor;
    freeair_diagnosis_subject_cause(s, c, &factor);
    before += given[c];
    p->fault[c] = given[c] * factor;
    faults += p->fault[c];
  }
  /* Faults that this machine cannot have leave their share to the other faults, not to health. */
  if (!(faults > 0.0)) total -= before;
  if (!(total > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  p->alone[SOUND] = p->marginal[SOUND] = given[SOUND] / total;
  p->alone[OTHER] = p->marginal[OTHER] = given[OTHER] / total;
  if (!(faults > 0.0)) return FREEAIR_OK;
  double squares = 0.0;
  for (int c = FREEAIR__FIRST_FAULT; c < FREEAIR__CAUSES; c++) {
    p->fault[c] /= faults;
    squares += p->fault[c] * p->fault[c];
  }
  const double share = before / total;
  const double pairs = 0.5 * (1.0 - squares); /* sum over pairs of fault[i] fault[j] */
  const double q = pairs > 1e-9 ? pair_share : 0.0;
  if (q > 0.0) p->pair = share * q / pairs;
  for (int c = FREEAIR__FIRST_FAULT; c < FREEAIR__CAUSES; c++) {
    p->alone[c] = share * (1.0 - q) * p->fault[c];
    p->marginal[c] = p->alone[c] + p->pair * p->fault[c] * (1.0 - p->fault[c]);
  }
  return FREEAIR_OK;
}

/* All of it with the service valve open, a passing drain when it is closed. */
double freeair__practice_seen(const freeair_diagnosis_subject *s, int turn)
{
  if (s->service_valve_closed == FREEAIR_EVIDENCE_NO) return 1.0;
  if (s->service_valve_closed == FREEAIR_EVIDENCE_YES) return 0.1;
  return turn ? 0.1 : 1.0;
}

static double rate(int cause, int observation)
{
  double hit;
  double false_alarm;
  int32_t basis;
  freeair_likelihood_observation(cause, observation, &hit, &false_alarm, &basis);
  return hit;
}

/* Probability of yes with two faults: either brings it, or one suppresses it. */
static double rate_of_pair(int i, int j, int observation)
{
  double hit;
  double none;
  int32_t basis;
  freeair_likelihood_observation(i, observation, &hit, &none, &basis);
  const double a = hit;
  const double b = rate(j, observation);
  if (a < none || b < none) return fmin(a, b);
  return 1.0 - (1.0 - a) * (1.0 - b) / (1.0 - none);
}

double freeair__practice_answers(const int32_t *answers, int i, int j, double wrong, double *log_items)
{
  double sum = 0.0;
  for (int o = 1; o < FREEAIR__OBSERVATIONS; o++) {
    if (answers[o] == FREEAIR_EVIDENCE_NOT_CHECKED) continue;
    const double yes = wrong + (1.0 - 2.0 * wrong) * (j != 0 ? rate_of_pair(i, j, o) : rate(i, o));
    log_items[FREEAIR__FIRST_OBSERVATION + o] = log(answers[o] == FREEAIR_EVIDENCE_YES ? yes : 1.0 - yes);
    sum += log_items[FREEAIR__FIRST_OBSERVATION + o];
  }
  return sum;
}

void freeair__ranking_make(const freeair__priors *prior, const freeair__posterior *p, freeair__ranking *out)
{
  out->n = 0;
  for (int c = 1; c < FREEAIR__CAUSES; c++) {
    if (!(prior->marginal[c] > 0.0)) continue;
    freeair_diagnosis_cause row = FREEAIR_DIAGNOSIS_CAUSE_INIT;
    row.cause = c;
    row.prior = prior->marginal[c];
    row.probability = freeair__posterior_probability(p, c);
    row.probability_alone = fmin(exp(p->alone[c] - p->all[0]), 1.0);
    row.cautions = freeair_likelihood_cautions(c);
    row.support = row.contradiction = 0.0;
    for (size_t k = 1; k < FREEAIR__ITEMS; k++) {
      const double says = freeair__posterior_reason(p, c, k);
      if (says > 0.0)
        row.support += says;
      else
        row.contradiction += says;
    }
    if (c != OTHER) {
      const double *m = p->moment[c];
      row.size = m[0];
      row.u_size = sqrt(fmax(m[1] - m[0] * m[0], 0.0));
      row.severity = m[2];
      row.u_severity = sqrt(fmax(m[3] - m[2] * m[2], 0.0));
    }
    int at = out->n++;
    for (; at > 0 && out->row[at - 1].probability < row.probability; at--) out->row[at] = out->row[at - 1];
    out->row[at] = row;
  }
}

/* Whether the evidence says the same of two causes, within a factor of 3. */
static int alike(const freeair_diagnosis_cause *a, const freeair_diagnosis_cause *b, double *ratio)
{
  const double undecided = 1.0986122886681098;
  const double together = 1.25; /* probabilities of causes that do not compete: both are present */
  *ratio = fabs(log(a->probability / a->prior) - log(b->probability / b->prior));
  return *ratio <= undecided && a->probability + b->probability <= together;
}

/* Numbers the groups whose members, none of them negligible, the evidence does
 * not tell from the most probable one. */
static void find_groups(freeair__ranking *by)
{
  double ratio;
  int32_t group = 1;
  for (int lead = 0; lead < by->n; lead++) {
    freeair_diagnosis_cause *first = &by->row[lead];
    if (first->group != 0 || first->probability < 0.02) continue;
    int members = 1;
    for (int i = lead + 1; i < by->n; i++) {
      freeair_diagnosis_cause *row = &by->row[i];
      if (row->group != 0 || row->probability < 0.02) continue;
      if (!alike(first, row, &ratio)) continue;
      row->group = group;
      members++;
    }
    if (members > 1) first->group = group++;
  }
  /* one that is left alone is not told from its neighbour that went elsewhere */
  for (int i = 0; i < by->n; i++) {
    double nearest = INFINITY;
    if (by->row[i].group != 0 || by->row[i].probability < 0.02) continue;
    for (int k = 0; k < by->n; k++) {
      if (by->row[k].group == 0 || !alike(&by->row[i], &by->row[k], &ratio) || !(ratio < nearest)) continue;
      nearest = ratio;
      by->row[i].group = by->row[k].group;
    }
  }
}

/* Names the check that best splits each group. */
static void split_groups(const freeair_diagnosis_subject *subject, const freeair_evidence_readings *found,
                         const int32_t *observation, const int32_t *answer, size_t n_observations, freeair__ranking *by)
{
  for (int lead = 0; lead < by->n; lead++) {
    const int32_t group = by->row[lead].group;
    if (group == 0 || by->row[lead].check != FREEAIR_EVIDENCE_CHECK_NONE) continue;
    freeair_diagnosis_cause members[FREEAIR__CAUSES];
    size_t n = 0;
    for (int i = lead; i < by->n; i++)
      if (by->row[i].group == group) members[n++] = by->row[i];
    freeair_diagnosis_check check = FREEAIR_DIAGNOSIS_CHECK_INIT;
    size_t n_checks;
    freeair_diagnosis_check_rank(subject, found, observation, answer, n_observations, members, sizeof members[0], n,
                                 NULL, 0, &check, sizeof check, 1, &n_checks);
    for (int i = lead; i < by->n; i++)
      if (by->row[i].group == group) by->row[i].check = check.check;
  }
}

void freeair__ranking_group(const freeair_diagnosis_subject *subject, const freeair_evidence_readings *found,
                            const int32_t *observation, const int32_t *answer, size_t n_observations,
                            freeair__ranking *by)
{
  find_groups(by);
  split_groups(subject, found, observation, answer, n_observations, by);
}

double freeair__finding_residual(const freeair_diagnosis_finding *f, double predicted)
{
  double none;
  int32_t scale;
  if (!isfinite(f->found) || !isfinite(predicted) || !isgreater(f->spread, 0.0)) return NAN;
  if (freeair_likelihood_spread(f->reading, &none, &none, &none, &none, &none, &scale) < 0) return NAN;
  switch (scale) {
  case FREEAIR_LIKELIHOOD_LOG:
    return f->found > 0.0 && predicted > 0.0 ? log(f->found / predicted) / f->spread : NAN;
  case FREEAIR_LIKELIHOOD_SHARE: return (f->found - predicted) / (f->reference * f->spread);
  case FREEAIR_LIKELIHOOD_NO_SCALE: return NAN;
  default: return (f->found - predicted) / f->spread;
  }
}

void freeair__reasons_of(const freeair__posterior *p, int cause, double *says)
{
  says[0] = 0.0;
  for (size_t k = 1; k < FREEAIR__ITEMS; k++) says[k] = freeair__posterior_reason(p, cause, k);
}

int freeair__reason_next(const int32_t *answers, const freeair_diagnosis_cause *cause, double *says,
                         freeair_diagnosis_reason *row)
{
  int best = 0;
  for (int k = 1; k < FREEAIR__ITEMS; k++)
    if (fabs(says[k]) > fabs(says[best])) best = k;
  if (fabs(says[best]) < 0.05) return 0;
  *row = (freeair_diagnosis_reason)FREEAIR_DIAGNOSIS_REASON_INIT;
  row->cause = cause->cause;
  row->log_odds = says[best];
  says[best] = 0.0;
  if (best >= FREEAIR__FIRST_OBSERVATION) {
    row->observation = best - FREEAIR__FIRST_OBSERVATION;
    row->answer = answers[row->observation];
  } else {
    row->reading = best;
  }
  return 1;
}

void freeair__summary_make(const freeair__posterior *p, const freeair__ranking *by, const int32_t *answers,
                           freeair_diagnosis_summary *summary)
{
  summary->probability_healthy = freeair__posterior_probability(p, SOUND);
  summary->probability_pair = fmin(exp(p->pairs - p->all[0]), 1.0);
  double total = 0.0;
  for (int i = 0; i < by->n; i++) total += by->row[i].probability;
  summary->doubt = 0.0;
  for (int i = 0; i < by->n; i++)
    summary->doubt -= freeair__xlogx(by->row[i].probability / total) * 1.4426950408889634;
  summary->cause = by->row[0].cause;
  for (int o = 1; o < FREEAIR__OBSERVATIONS; o++)
    summary->observations_used += answers[o] != FREEAIR_EVIDENCE_NOT_CHECKED;
}

void freeair__verdict_make(const freeair_diagnosis_finding *findings, size_t n_findings, const freeair__posterior *p,
                           double confidence, freeair_diagnosis_summary *summary)
{
  double least = summary->probability_healthy;
  double most = summary->probability_healthy;
  for (size_t i = 0; i < n_findings; i++) {
    if (findings[i].use != FREEAIR_DIAGNOSIS_CONTRADICTS) continue;
    const int32_t r = findings[i].reading;
    const double without = fmin(exp(p->with[SOUND][r] - p->all[r]), 1.0);
    least = fmin(least, without);
    most = fmax(most, without);
  }
  if (least >= confidence)
    summary->verdict = FREEAIR_VERDICT_MEETS;
  else if (most <= 1.0 - confidence)
    summary->verdict = FREEAIR_VERDICT_FAILS;
}

int32_t freeair__rows_start(const freeair__rows *rows, const void *blank, int32_t before)
{
  int32_t status = freeair__rows_check(rows);
  if (status == FREEAIR_OK) freeair__rows_blank(rows, blank);
  return before < 0 ? before : status;
}

double freeair__deviations_from(double below)
{
  const double tail = fmax(fmin(below, 1.0 - below), 1e-300);
  double lo = 0.0;
  double hi = 38.0;
  for (int k = 0; k < 60; k++) {
    const double z = 0.5 * (lo + hi);
    if (0.5 * erfc(z * 0.70710678118654752440) > tail)
      lo = z;
    else
      hi = z;
  }
  return below < 0.5 ? -lo : lo;
}
