/* SPDX-License-Identifier: MIT */
#include "internal/inference_weights.h"

#include "internal/check.h"
#include "internal/logsum.h"

#include <freeair/status.h>

enum {
  N_CAUSES = FREEAIR__CAUSES,
  N_ITEMS = FREEAIR__ITEMS,
  SOUND = FREEAIR_EVIDENCE_HEALTHY,
  OTHER = FREEAIR_EVIDENCE_OTHER,
  FIRST_FAULT = FREEAIR__FIRST_FAULT,
  SIZES = FREEAIR__SIZES,
  LEADERS = 9 /* causes that are tried together with every other */
};

/* of a family that is mapped no further: so much error of form, so far past its
 * best, or so far behind another that explains all */
static const double screen_form = 2.0;
static const double past = 12.0;
static const double far_behind = 9.0;

/* of the flow that is lost, in power: friction stays */
static const double power_share = 0.7;

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

static void sums_add(freeair__inference *to, const freeair__weighed *w, double log_prior, double flat, int predict,
                     sums *q)
{
  freeair__logsum_add(&q->all, log_prior + w->all);
  for (int b = 0; b < to->s->blocks.n; b++) {
    freeair__logsum_add(&q->without[b], log_prior + w->without[b]);
    const double says[] = {w->below[b], w->mean[b]};
    freeair__prediction *p = &to->predictions[b];
    freeair__logsum_add(&p->log_wrong, flat + log_prior + w->wrong[b]);
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
  freeair__doubt doubt = {.n = 0};
  freeair__weighed w;
  sums q;
  sums_start(s, &q);
  for (int i = 0; i < s->n && cause == OTHER; i++) doubt.variance[i] = 0.36 * s->symptom[i].wide * s->symptom[i].wide;
  if (freeair__weigh(s, to->unknown, s->sound, &doubt, 1.0, &w))
    sums_add(to, &w, 0.0, flat_of(to, cause, 0, log(prior)), cause == SOUND, &q);
  close_hypothesis(to, cause, 0, log(prior), &q);
}

/* What flow that is lost moves in a symptom: rates grow as they slow down, all else falls. */
static double seen_of(const freeair__symptoms *s, int i, double y, const float lost[FREEAIR__PLANT_POINTS])
{
  const freeair__symptom *q = &s->symptom[i];
  double share = 0.0;
  switch (q->kind) {
    case FREEAIR__SYMPTOM_DELIVERY:
    case FREEAIR__SYMPTOM_EMPTY:
    case FREEAIR__SYMPTOM_CUTIN: share = freeair__symptoms_gain(s, i, y); break;
    case FREEAIR__SYMPTOM_LEVEL: share = -fmax(y, 0.1); break;
    case FREEAIR__SYMPTOM_RATIO:
      if (q->quantity == FREEAIR__PLANT_POWER) share = -power_share;
      break;
    default: break;
  }
  if (share == 0.0) return 0.0;
  const freeair__plant *plant = s->plant;
  double p = q->from_p > 0.0 ? 0.5 * (q->from_p + q->to_p) : q->to_p;
  double x = fmin(fmax((sqrt(p) - plant->root_low) / plant->root_step, 0.0), FREEAIR__PLANT_POINTS - 1.001);
  int k = (int)x;
  return share * (lost[k] + (x - k) * ((double)lost[k + 1] - (double)lost[k]));
}

/* What is not known of a way at a node. Within the cell, of so many neighbours,
 * the prediction moves: a uniform distribution of its width, as a normal one. */
static void doubt_node(const freeair__inference *from, int w, int k, int cells, freeair__doubt *d)
{
  const freeair__symptoms *s = from->s;
  const freeair__trace *t = &from->traces[w];
  double none[FREEAIR__SYMPTOMS] = {0.0};
  int lo = k;
  int hi = k;
  if (k > 0 && isfinite(t->log_weight[k - 1])) lo = k - 1;
  if (k < SIZES - 1 && isfinite(t->log_weight[k + 1])) hi = k + 1;
  for (int i = 0; i < s->n; i++) {
    d->by[d->n][i] = hi > lo ? (double)(t->y[hi][i] - t->y[lo][i]) / (hi - lo) * cells / sqrt(12.0) : 0.0;
    d->by[d->n + 1][i] = seen_of(s, i, t->y[k][i], t->lost[k]);
  }
  d->n += 2;
  freeair__hypotheses_table(from->h, &from->h->way[w], t->size[k], none, d->variance);
}

static void predict_way(const freeair__hypotheses *h, const freeair__way *way, double clearance, freeair__trace *t)
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
    freeair__hypotheses_open(h, way, node.size, clearance, &c, t->lost[k]);
    for (int i = 0; i < h->symptoms->n; i++) t->y[k][i] = (float)y[i];
  }
  for (int k = 0; k < SIZES && norm > 0.0; k++) t->log_weight[k] -= (float)log(norm);
}

static void add_way(freeair__inference *to, int w, double prior)
{
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
    freeair__doubt doubt = {.n = 0};
    freeair__weighed at;
    for (int i = 0; i < s->n; i++) y[i] = t->y[k][i];
    doubt_node(to, w, k, 1, &doubt);
    if (!freeair__weigh(s, to->unknown, y, &doubt, 1.0, &at)) continue;
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
  sums q;
  sums_start(s, &q);
  for (int k = 1; k < SIZES; k += step_a) {
    if (!isfinite(t->log_weight[k])) continue;
    freeair__doubt first_doubt = {.n = 0};
    doubt_node(to, a, k, step_a, &first_doubt);
    for (int l = 1; l < SIZES; l += step_b) {
      if (!isfinite(u->log_weight[l])) continue;
      double y[FREEAIR__SYMPTOMS];
      freeair__doubt doubt = first_doubt;
      freeair__weighed at;
      doubt_node(to, b, l, step_b, &doubt);
      for (int i = 0; i < s->n; i++) y[i] = (double)t->y[k][i] + (double)u->y[l][i] - s->sound[i];
      if (!freeair__weigh(s, to->unknown, y, &doubt, 1.0, &at)) continue;
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
  static const freeair__prediction none = {-INFINITY, {0.0, 0.0}, -INFINITY};
  for (int b = 0; b < to->s->blocks.n; b++) to->predictions[b] = none;
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

/* How well the worst severity mapped of any way of a family explains all. */
static double worst_of(const freeair__inference *to, int family, const double *flat, double *square)
{
  const freeair__symptoms *s = to->s;
  double most = -INFINITY;
  for (int w = 0; w < to->h->n_ways; w++) {
    const freeair__way *way = &to->h->way[w];
    double y[FREEAIR__SYMPTOMS];
    freeair__doubt doubt = {.n = 0};
    freeair__condition c;
    freeair__weighed at;
    if (way->first != family && way->second != family) continue;
    freeair__hypotheses_worst(to->h, way, &c);
    freeair__symptoms_predict(s, &c, y);
    double size = fmax(-log(freeair__plant_share(s->plant, &c.map)), 0.0);
    freeair__hypotheses_table(to->h, way, size, y, doubt.variance);
    if (!freeair__weigh(s, to->unknown, y, &doubt, screen_form, &at)) continue;
    if (!(flat[w] + at.all > most)) continue;
    most = flat[w] + at.all;
    *square = at.square;
  }
  return most;
}

/* Maps each family as far as it may matter: no further than past its best when
 * another explains all far better, unless nothing alone explains it. */
static int32_t grow(freeair__inference *to, const freeair__priors *prior)
{
  freeair__hypotheses *h = to->h;
  const freeair__symptoms *s = to->s;
  double flat[FREEAIR__WAYS];
  double best = -INFINITY;
  double square = INFINITY;
  double last[FREEAIR__FAMILIES];
  double top[FREEAIR__FAMILIES];
  int falling[FREEAIR__FAMILIES];
  const freeair__doubt none = {.n = 0};
  freeair__weighed at;
  double sound = -INFINITY;
  if (freeair__weigh(s, to->unknown, s->sound, &none, 1.0, &at)) {
    sound = at.all;
    square = at.square;
    if (prior->alone[SOUND] > 0.0) best = flat_of(to, SOUND, 0, log(prior->alone[SOUND])) + at.all;
  }
  for (int w = 0; w < h->n_ways; w++) {
    const freeair__way *way = &h->way[w];
    flat[w] = flat_of(to, way->cause, 0, log(prior->alone[way->cause] * way->share));
    if (way->first >= 0) continue;
    predict_way(h, way, to->clearance, &to->traces[w]);
    for (int k = 0; k < SIZES; k++) {
      double y[FREEAIR__SYMPTOMS];
      freeair__doubt doubt = {.n = 0};
      if (!isfinite(to->traces[w].log_weight[k])) continue;
      for (int i = 0; i < s->n; i++) y[i] = to->traces[w].y[k][i];
      doubt_node(to, w, k, 1, &doubt);
      if (!freeair__weigh(s, to->unknown, y, &doubt, screen_form, &at)) continue;
      if (!(flat[w] + at.all > best)) continue;
      best = flat[w] + at.all;
      square = at.square;
    }
  }
  /* two severities of each first, then on with those that may be it */
  for (int turn = 0; turn < 2; turn++)
    for (int f = 0; f < FREEAIR__FAMILIES; f++) {
      if (!h->needed[f]) continue;
      if (turn == 0) {
        top[f] = -INFINITY;
        last[f] = sound;
        falling[f] = 0;
      }
      freeair__plant_walk walk = s->plant->walk;
      for (int k = 0; turn > 0 || k < 2; k++) {
        int explained = square < 2.0 * s->n + 10.0;
        if (turn > 0 && falling[f] && explained && (last[f] < top[f] - past || top[f] < best - far_behind))
          freeair__hypotheses_stop(h, f);
        if (h->finished[f]) break;
        int32_t status = freeair__hypotheses_grow(h, f, turn > 0 && !explained, &walk);
        if (status < 0) return status;
        double here_square = INFINITY;
        double here = worst_of(to, f, flat, &here_square);
        falling[f] = here < last[f];
        last[f] = here;
        top[f] = fmax(top[f], here);
        if (!(here > best)) continue;
        best = here;
        square = here_square;
      }
    }
  return FREEAIR_OK;
}

int32_t freeair__inference_infer(freeair__inference *to, const freeair__priors *prior)
{
  freeair__hypotheses *h = to->h;
  int32_t status = grow(to, prior);
  if (status < 0) return status;
  for (int w = 0; w < h->n_ways; w++)
    if (h->way[w].first >= 0) predict_way(h, &h->way[w], to->clearance, &to->traces[w]);
  add_singles(to, prior);
  if (!(prior->pair > 0.0)) return FREEAIR_OK;
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
  return FREEAIR_OK;
}
