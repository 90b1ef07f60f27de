/* SPDX-License-Identifier: MIT */
#include "internal/inference_weights.h"

#include "internal/check.h"
#include "internal/logsum.h"

#include <freeair/evidence.h>

#include <string.h>

enum {
  N_CAUSES = FREEAIR__CAUSES,
  N_ITEMS = FREEAIR__ITEMS,
  SOUND = FREEAIR_EVIDENCE_HEALTHY,
  OTHER = FREEAIR_EVIDENCE_OTHER,
  FIRST_FAULT = FREEAIR__FIRST_FAULT,
  SIZES = FREEAIR__SIZES,
  OWN = FREEAIR__OWN,
  LEADERS = 5 /* causes that are tried together with every other */
};

static const double pair_form = 1.3;
static const double own_share = 0.02;
static const double own_solves = 1.0;
static const double pair_blend = 0.0;

/* Running sums of a hypothesis over its sizes. */
typedef struct sums {
  double all;
  double without[FREEAIR__GAUSS_BLOCKS];
} sums;

static void sums_start(const freeair__symptoms *s, sums *q)
{
  q->all = -INFINITY;
  for (int b = 0; b < s->blocks.n; b++) q->without[b] = -INFINITY;
}

static void sums_add(freeair__inference *to, const freeair__weighed *w, double log_prior, double flat, int predict, sums *q)
{
  freeair__logsum_add(&q->all, log_prior + w->all);
  for (int b = 0; b < to->s->blocks.n; b++) {
    freeair__logsum_add(&q->without[b], log_prior + w->without[b]);
    const double says[] = {w->below[b], w->mean[b]};
    freeair__prediction *p = &to->predictions[b];
    if (predict) freeair__blend(&p->log_weight, p->mean, 2, flat + log_prior + w->without[b], says);
  }
}

static void close_hypothesis(freeair__inference *to, int i, int j, double log_prior, const sums *q)
{
  double log_items[N_ITEMS] = {0.0};
  double flat = log_prior + freeair__practice_answers(to->answers, i, j, FREEAIR__WRONG_SHARE, log_items);
  for (int k = 0; k < N_ITEMS; k++) log_items[k] = flat + q->all - log_items[k];
  for (int b = 0; b < to->s->blocks.n; b++)
    log_items[to->s->symptom[to->s->blocks.first[b]].reading] = flat + q->without[b];
  freeair__posterior_add(&to->posterior, i, j, log_items);
}

static double flat_of(const freeair__inference *to, int i, int j, double log_prior)
{
  double none[N_ITEMS];
  return log_prior + freeair__practice_answers(to->answers, i, j, FREEAIR__WRONG_SHARE, none);
}

/* A sound machine, or something else: any reading may lie anywhere about that. */
static void add_plain(freeair__inference *to, int cause, double prior)
{
  if (!(prior > 0.0)) return;
  const freeair__symptoms *s = to->s;
  double variance[FREEAIR__SYMPTOMS] = {0.0};
  double along[FREEAIR__SYMPTOMS] = {0.0};
  freeair__weighed w;
  sums q;
  sums_start(s, &q);
  for (int i = 0; i < s->n && cause == OTHER; i++) variance[i] = 0.36 * s->symptom[i].wide * s->symptom[i].wide;
  if (freeair__weigh(s, &to->sound, s->sound, variance, along, NULL, 1.0, &w))
    sums_add(to, &w, 0.0, flat_of(to, cause, 0, log(prior)), cause == SOUND, &q);
  close_hypothesis(to, cause, 0, log(prior), &q);
}

/* How the prediction moves within the cell of a node: a uniform distribution of
 * its width, as a normal one. cells neighbours make a cell. */
static void along_nodes(const freeair__symptoms *s, const freeair__trace *t, int k, int cells, double *along)
{
  int lo = k;
  int hi = k;
  if (k > 0 && isfinite(t->log_weight[k - 1])) lo = k - 1;
  if (k < SIZES - 1 && isfinite(t->log_weight[k + 1])) hi = k + 1;
  for (int i = 0; i < s->n; i++)
    along[i] = hi > lo ? (double)(t->y[hi][i] - t->y[lo][i]) / (hi - lo) * cells / sqrt(12.0) : 0.0;
}

static void predict_way(const freeair__hypotheses *h, const freeair__way *way, freeair__trace *t)
{
  double norm = 0.0;
  for (int k = 0; k < SIZES; k++) {
    freeair__node node;
    freeair__condition c;
    double y[FREEAIR__SYMPTOMS];
    double variance[FREEAIR__SYMPTOMS] = {0.0};
    freeair__hypotheses_node(h, way, k, &node, &c);
    norm += node.counted;
    t->size[k] = node.size;
    t->log_weight[k] = -INFINITY;
    if (!(node.weight > 0.0)) continue;
    t->log_weight[k] = (float)log(node.weight);
    freeair__symptoms_predict(h->symptoms, &c, y);
    freeair__hypotheses_table(h, way, node.size, y, variance);
    for (int i = 0; i < h->symptoms->n; i++) t->y[k][i] = (float)y[i];
  }
  for (int k = 0; k < SIZES && norm > 0.0; k++) t->log_weight[k] -= (float)log(norm);
}

/* Variances that the table adds at a node. */
static void variance_at(const freeair__inference *from, int w, int k, double *variance)
{
  double none[FREEAIR__SYMPTOMS] = {0.0};
  for (int i = 0; i < from->s->n; i++) variance[i] = 0.0;
  freeair__hypotheses_table(from->h, &from->h->way[w], from->traces[w].size[k], none, variance);
}

static const freeair__own *own_of(const freeair__inference *from, int w)
{
  for (int k = 0; k < from->n_owned; k++)
    if (from->owned[k].way == w) return &from->owned[k];
  return NULL;
}

/* With the shares t of what two ways add, or one. */
static void covariance_of(const freeair__inference *from, const freeair__own *a, double t, const freeair__own *b, freeair__covariance *to)
{
  const freeair__scatter *sound = &from->scatter->of;
  const int n = from->s->n;
  memset(to, 0, sizeof *to);
  for (int k = 0; k < sound->n; k++) {
    double by[FREEAIR__SYMPTOMS];
    for (int i = 0; i < n; i++)
      by[i] = sound->by[k][i] + (a != NULL ? t * a->more.by[k][i] : 0.0) + (b != NULL ? t * b->more.by[k][i] : 0.0);
    for (int i = 0; i < n; i++)
      for (int j = 0; j <= i; j++) to->c[i][j] += by[i] * by[j];
  }
}

static void add_way(freeair__inference *to, int w, double prior)
{
  const freeair__own *o = own_of(to, w);
  freeair__covariance own_unknown;
  const freeair__way *way = &to->h->way[w];
  const freeair__symptoms *s = to->s;
  freeair__trace *t = &to->traces[w];
  double log_prior = log(prior * way->share);
  double flat = flat_of(to, way->cause, 0, log_prior);
  sums q;
  sums_start(s, &q);
  for (int k = 0; k < SIZES; k++) {
    if (!isfinite(t->log_weight[k])) continue;
    double y[FREEAIR__SYMPTOMS];
    double variance[FREEAIR__SYMPTOMS];
    double along[FREEAIR__SYMPTOMS];
    freeair__weighed at;
    for (int i = 0; i < s->n; i++) y[i] = t->y[k][i];
    variance_at(to, w, k, variance);
    along_nodes(s, t, k, 1, along);
    if (o != NULL) covariance_of(to, o, fmin((k + 0.5) / SIZES / o->position, 1.0), NULL, &own_unknown);
    if (!freeair__weigh(s, o != NULL ? &own_unknown : &to->sound, y, variance, along, NULL, 1.0, &at)) continue;
    sums_add(to, &at, t->log_weight[k], flat, 1, &q);
    freeair__logsum_add(&to->log_size[way->cause][k], flat + t->log_weight[k] + at.all);
  }
  to->log_way[w] = flat + q.all;
  close_hypothesis(to, way->cause, 0, log_prior, &q);
}

/* Two faults: their shifts add, about the sound machine. */
static void add_pair(freeair__inference *to, int a, int b, double prior)
{
  enum { step_a = 2, step_b = 3 };
  const freeair__way *first = &to->h->way[a];
  const freeair__way *second = &to->h->way[b];
  const freeair__symptoms *s = to->s;
  const freeair__trace *t = &to->traces[a];
  const freeair__trace *u = &to->traces[b];
  double log_prior = log(prior * first->share * second->share);
  double flat = flat_of(to, first->cause, second->cause, log_prior);
  double norm_a = 0.0;
  double norm_b = 0.0;
  for (int k = 1; k < SIZES; k += step_a) norm_a += exp((double)t->log_weight[k]);
  for (int k = 1; k < SIZES; k += step_b) norm_b += exp((double)u->log_weight[k]);
  if (!(norm_a > 0.0 && norm_b > 0.0)) return;
  const freeair__own *o = own_of(to, a);
  const freeair__own *p = own_of(to, b);
  freeair__covariance own_unknown;
  const freeair__covariance *unknown = &to->sound;
  if (o != NULL || p != NULL) {
    covariance_of(to, o, pair_blend, p, &own_unknown);
    unknown = &own_unknown;
  }
  sums q;
  sums_start(s, &q);
  for (int k = 1; k < SIZES; k += step_a) {
    if (!isfinite(t->log_weight[k])) continue;
    double along[FREEAIR__SYMPTOMS];
    double own[FREEAIR__SYMPTOMS];
    along_nodes(s, t, k, step_a, along);
    variance_at(to, a, k, own);
    for (int l = 1; l < SIZES; l += step_b) {
      if (!isfinite(u->log_weight[l])) continue;
      double across[FREEAIR__SYMPTOMS];
      double y[FREEAIR__SYMPTOMS];
      double variance[FREEAIR__SYMPTOMS];
      freeair__weighed at;
      along_nodes(s, u, l, step_b, across);
      variance_at(to, b, l, variance);
      for (int i = 0; i < s->n; i++) {
        y[i] = (double)t->y[k][i] + (double)u->y[l][i] - s->sound[i];
        variance[i] += own[i];
      }
      if (!freeair__weigh(s, unknown, y, variance, along, across, pair_form, &at)) continue;
      double log_node = (double)t->log_weight[k] + (double)u->log_weight[l] - log(norm_a * norm_b);
      sums_add(to, &at, log_node, flat, 0, &q);
      freeair__logsum_add(&to->log_size[first->cause][k], flat + log_node + at.all);
      freeair__logsum_add(&to->log_size[second->cause][l], flat + log_node + at.all);
    }
  }
  freeair__logsum_add(&to->log_way[a], flat + q.all);
  freeair__logsum_add(&to->log_way[b], flat + q.all);
  close_hypothesis(to, first->cause, second->cause, log_prior, &q);
}

static void start(freeair__inference *to)
{
  freeair__posterior_start(&to->posterior, N_ITEMS);
  for (int b = 0; b < to->s->blocks.n; b++) to->predictions[b] = (freeair__prediction){-INFINITY, {0.0, 0.0}};
  for (int c = 0; c < N_CAUSES; c++)
    for (int k = 0; k < SIZES; k++) to->log_size[c][k] = -INFINITY;
}

static void add_singles(freeair__inference *to, const freeair__priors *prior)
{
  start(to);
  add_plain(to, SOUND, prior->alone[SOUND]);
  add_plain(to, OTHER, prior->alone[OTHER]);
  for (int w = 0; w < to->h->n_ways; w++) add_way(to, w, prior->alone[to->h->way[w].cause]);
}

/* Position below which a share of the posterior of a cause lies. */
double freeair__inference_position(const freeair__inference *from, int cause, double share)
{
  double most = -INFINITY;
  double total = 0.0;
  for (int k = 0; k < SIZES; k++) most = fmax(most, from->log_size[cause][k]);
  if (isinf(most)) return NAN;
  for (int k = 0; k < SIZES; k++) total += exp(from->log_size[cause][k] - most);
  double below = 0.0;
  for (int k = 0; k < SIZES; k++) {
    double here = exp(from->log_size[cause][k] - most) / total;
    if (below + here >= share && here > 0.0) return (k + (share - below) / here) / SIZES;
    below += here;
  }
  return 1.0;
}

/* Steps what is not known about the ways that may be the one: about a machine
 * that has lost much, it moves the readings otherwise than about a sound one. */
static void step_anew(freeair__inference *to, const freeair_inference_scatter *sd)
{
  int taken[FREEAIR__WAYS] = {0};
  to->n_owned = 0;
  while (to->n_owned < OWN) {
    int best = -1;
    for (int w = 0; w < to->h->n_ways; w++)
      if (!taken[w] && (best < 0 || to->log_way[w] > to->log_way[best])) best = w;
    if (best < 0 || !(to->log_way[best] > to->posterior.all[0] + log(own_share))) return;
    taken[best] = 1;
    const freeair__way *way = &to->h->way[best];
    freeair__own *o = &to->owned[to->n_owned];
    freeair__scatter_base base;
    double size;
    double severity;
    o->way = best;
    o->position = freeair__inference_position(to, way->cause, 0.5);
    if (!(o->position > 0.0)) continue;
    freeair__hypotheses_condition(to->h, way, o->position, &size, &severity, &base.condition);
    freeair__hypotheses_faults(to->h, way, o->position, &base.n_faults, base.fault, base.severity);
    if (own_solves < 0.5) base.n_faults = 0;
    if (freeair__scatter_of(to->s, sd, to->scatter, &base, &o->more) < 0 || o->more.n != to->scatter->of.n) continue;
    for (int k = 0; k < o->more.n; k++)
      for (int i = 0; i < to->s->n; i++) o->more.by[k][i] -= to->scatter->of.by[k][i];
    to->n_owned++;
  }
}

void freeair__inference_infer(freeair__inference *to, const freeair__priors *prior, const freeair_inference_scatter *sd)
{
  const freeair__hypotheses *h = to->h;
  to->n_owned = 0;
  covariance_of(to, NULL, 0.0, NULL, &to->sound);
  for (int w = 0; w < h->n_ways; w++) predict_way(h, &h->way[w], &to->traces[w]);
  add_singles(to, prior);
  if (own_share < 1.0) {
    step_anew(to, sd);
    if (to->n_owned > 0) add_singles(to, prior);
  }
  if (!(prior->pair > 0.0)) return;
  /* pairs of the leading causes alone, each with every other */
  int leader[N_CAUSES] = {0};
  for (int n = 0; n < LEADERS; n++) {
    int best = 0;
    for (int c = FIRST_FAULT; c < N_CAUSES; c++)
      if (!leader[c] && (best == 0 || to->posterior.alone[c] > to->posterior.alone[best])) best = c;
    leader[best] = 1;
  }
  for (int a = 0; a < h->n_ways; a++)
    for (int b = a + 1; b < h->n_ways; b++) {
      int i = h->way[a].cause;
      int j = h->way[b].cause;
      if (i == j || !(leader[i] || leader[j])) continue;
      add_pair(to, leader[i] ? a : b, leader[i] ? b : a, prior->pair * prior->fault[i] * prior->fault[j]);
    }
}
