/* SPDX-License-Identifier: MIT */
#include <freeair/fault.h>
#include <freeair/inference.h>
#include <freeair/likelihood.h>
#include <freeair/status.h>

#include "internal/answers.h"
#include "internal/array.h"
#include "internal/check.h"
#include "internal/inference_hypotheses.h"
#include "internal/logsum.h"
#include "internal/machine.h"

enum {
  N_CAUSES = FREEAIR__CAUSES,
  N_READINGS = FREEAIR__READINGS,
  N_OBSERVATIONS = FREEAIR__OBSERVATIONS,
  N_ITEMS = FREEAIR__ITEMS,
  SOUND = FREEAIR_EVIDENCE_HEALTHY,
  OTHER = FREEAIR_EVIDENCE_OTHER,
  FIRST_FAULT = FREEAIR__FIRST_FAULT,
  SIZES = FREEAIR__SIZES,
  FREEDOM = 12,
  LEADERS = 5 /* causes that are tried together with every other */
};

static const double wrong_share = 0.02;
/* beyond this a temperature that a fault makes is no less certain */
static const double most_shift_k = 120.0;

int32_t freeair_inference_visit_init(freeair_inference_visit *visit, size_t caller_size)
{
  static const freeair_inference_visit initial = FREEAIR_INFERENCE_VISIT_INIT;
  return freeair__structure_init(visit, caller_size, &initial, sizeof initial, FREEAIR_INFERENCE_VISIT_BASELINE);
}

int32_t freeair_inference_scatter_init(freeair_inference_scatter *scatter, size_t caller_size)
{
  static const freeair_inference_scatter initial = FREEAIR_INFERENCE_SCATTER_INIT;
  return freeair__structure_init(scatter, caller_size, &initial, sizeof initial, FREEAIR_INFERENCE_SCATTER_BASELINE);
}

int32_t freeair_inference_effect_init(freeair_inference_effect *effect, size_t caller_size)
{
  static const freeair_inference_effect initial = FREEAIR_INFERENCE_EFFECT_INIT;
  return freeair__structure_init(effect, caller_size, &initial, sizeof initial, FREEAIR_INFERENCE_EFFECT_BASELINE);
}

/* ---- what is asked ---- */

static int optional(double x, int closed, double lo, double hi)
{
  if (!freeair__given(x)) return 1;
  return closed ? freeair__closed(x, lo, hi) : freeair__upto(x, lo, hi);
}

static int32_t read_visit(const freeair_inference_visit *from, freeair_inference_visit *to)
{
  *to = (freeair_inference_visit)FREEAIR_INFERENCE_VISIT_INIT;
  int32_t status = freeair__structure_read(to, sizeof *to, from, FREEAIR_INFERENCE_VISIT_BASELINE);
  if (status < 0) return status;
  if (to->flags != 0 || !optional(to->receiver_pa, 0, 0.0, 1e8) || !optional(to->from_pa, 0, 0.0, 1e8) ||
      !optional(to->draw_down_s, 1, 1.0, 1e5) || !optional(to->u_log_s, 1, 0.0, 1e5) ||
      !optional(to->u_log_pa, 1, 0.0, 1e7) || !optional(to->motor_efficiency, 0, 0.0, 1.0) ||
      !optional(to->air_m3_s, 1, 0.0, 1000.0) || !optional(to->energy_price, 1, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

/* The defaults in the order of the fields. */
static int32_t read_scatter(const freeair_inference_scatter *from, freeair_inference_scatter *to)
{
  static const double defaults[] = {0.035, 0.15, 0.12,  0.4,  0.35, 0.25,  0.35, 0.15, 0.4, 0.2,   0.02,
                                    0.04, 0.05, 8.0,   0.012, 0.35, 0.2,  0.4,  0.005, 0.006, 0.008, 0.06};
  *to = (freeair_inference_scatter)FREEAIR_INFERENCE_SCATTER_INIT;
  int32_t status = freeair__structure_read(to, sizeof *to, from, FREEAIR_INFERENCE_SCATTER_BASELINE);
  if (status < 0) return status;
  if (to->flags != 0) return FREEAIR_ERR_DOMAIN;
  double *const field[] = {&to->rating, &to->clearance, &to->valves, &to->valve_lift, &to->wall_heat,
                           &to->cooler_ua, &to->suction_heating, &to->filter, &to->rings, &to->phase_rad,
                           &to->delivery, &to->delivery_slope, &to->interstage, &to->temperature_k, &to->receiver,
                           &to->receiver_ua, &to->receiver_wall, &to->draw_down, &to->gauge, &to->motor,
                           &to->drive, &to->motor_efficiency};
  _Static_assert(FREEAIR__COUNT(field) == FREEAIR__COUNT(defaults), "a default for every field");
  for (size_t i = 0; i < FREEAIR__COUNT(field); i++) {
    if (!optional(*field[i], 1, 0.0, field[i] == &to->temperature_k ? 100.0 : 1.0)) return FREEAIR_ERR_DOMAIN;
    *field[i] = freeair__or(*field[i], defaults[i]);
  }
  return FREEAIR_OK;
}

static int32_t read_arrays(const freeair__symptom_input *in)
{
  if (in->n_log > 1000000u || in->n_interstage > 1000u) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < in->n_log; i++)
    if (!freeair__closed(in->log_t_s[i], 0.0, 1e7) || !freeair__upto(in->log_p_pa[i], 0.0, 1e8))
      return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i < in->n_interstage; i++)
    if (!freeair__upto(in->interstage_at_pa[i], 0.0, 1e8) || !freeair__upto(in->interstage_pa[i], 0.0, 1e8))
      return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

/* ---- hypotheses weighed ---- */

/* What the listed causes and all other evidence say of a reading. */
typedef struct prediction {
  double log_weight;
  double mean[2]; /* probability of lying below what was read; prediction */
} prediction;

/* What a way predicts at each size, kept for the pairs. */
typedef struct trace {
  float y[SIZES][FREEAIR__SYMPTOMS];
  float log_weight[SIZES]; /* prior of the size */
  double size[SIZES];
} trace;

typedef struct inference {
  const freeair__symptoms *s;
  const freeair__hypotheses *h;
  const int32_t *answers;
  freeair__posterior posterior;
  prediction predictions[FREEAIR__GAUSS_BLOCKS];
  trace traces[FREEAIR__WAYS];
  double log_size[N_CAUSES][SIZES]; /* posterior of the size */
  double log_way[FREEAIR__WAYS];    /* posterior of the way */
} inference;

/* The evidence of one point: logarithms of the density of all readings and
 * without those of each block. A reading that is wrong lies anywhere. */
typedef struct weighed {
  double all;
  double without[FREEAIR__GAUSS_BLOCKS];
  double below[FREEAIR__GAUSS_BLOCKS];
  double mean[FREEAIR__GAUSS_BLOCKS];
} weighed;

static double log_wide(const freeair__symptoms *s, int block, const double *r)
{
  double sum = 0.0;
  for (int i = s->blocks.first[block]; i < s->blocks.first[block + 1]; i++) {
    double u2 = s->symptom[i].wide * s->symptom[i].wide;
    sum -= 0.5 * log(6.28318530717958647693 * u2) + 0.5 * r[i] * r[i] / u2;
  }
  return sum;
}

static int weigh(const freeair__symptoms *s, const double *y, const double *variance, const double *along,
                 const double *across, double form, weighed *out)
{
  double c[FREEAIR__SYMPTOMS][FREEAIR__SYMPTOMS];
  double r[FREEAIR__SYMPTOMS];
  double gain[FREEAIR__SYMPTOMS];
  freeair__gauss_density d;
  for (int i = 0; i < s->n; i++) {
    r[i] = s->symptom[i].found - y[i];
    gain[i] = freeair__symptoms_gain(s, i, y[i]);
    for (int j = 0; j <= i; j++) c[i][j] = s->covariance[i][j] * gain[i] * gain[j] + along[i] * along[j];
    if (across != NULL)
      for (int j = 0; j <= i; j++) c[i][j] += across[i] * across[j];
    double shift = fabs(y[i] - s->sound[i]);
    if (s->symptom[i].kind == FREEAIR__SYMPTOM_DIFFERENCE) shift = fmin(shift, most_shift_k);
    double u = form * s->symptom[i].form * shift;
    c[i][i] += variance[i] + u * u + (1.0 - gain[i] * gain[i]) * s->symptom[i].noise * s->symptom[i].noise;
  }
  if (!freeair__gauss_student(c, r, s->n, FREEDOM, &s->blocks, &d)) return 0;
  double wrong[FREEAIR__GAUSS_BLOCKS];
  double sum = 1.0;
  for (int b = 0; b < s->blocks.n; b++) {
    /* the constant of so many dimensions less was left out of both densities */
    wrong[b] = wrong_share * exp(fmin(log_wide(s, b, r) + d.without[b] - d.all, 300.0));
    sum += wrong[b];
  }
  out->all = d.all + log(sum);
  for (int b = 0; b < s->blocks.n; b++) {
    out->without[b] = d.without[b] + log(fmax(sum - wrong[b], 1.0));
    out->below[b] = 0.5 * erfc(-d.residual[b] * 0.70710678118654752440);
    out->mean[b] = s->symptom[s->blocks.first[b]].found - d.shift[b];
  }
  return 1;
}

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

static void sums_add(inference *to, const weighed *w, double log_prior, double flat, int predict, sums *q)
{
  freeair__logsum_add(&q->all, log_prior + w->all);
  for (int b = 0; b < to->s->blocks.n; b++) {
    freeair__logsum_add(&q->without[b], log_prior + w->without[b]);
    const double says[] = {w->below[b], w->mean[b]};
    prediction *p = &to->predictions[b];
    if (predict) freeair__blend(&p->log_weight, p->mean, 2, flat + log_prior + w->without[b], says);
  }
}

static void close_hypothesis(inference *to, int i, int j, double log_prior, const sums *q)
{
  double log_items[N_ITEMS] = {0.0};
  double flat = log_prior + freeair__practice_answers(to->answers, i, j, wrong_share, log_items);
  for (int k = 0; k < N_ITEMS; k++) log_items[k] = flat + q->all - log_items[k];
  for (int b = 0; b < to->s->blocks.n; b++)
    log_items[to->s->symptom[to->s->blocks.first[b]].reading] = flat + q->without[b];
  freeair__posterior_add(&to->posterior, i, j, log_items);
}

static double flat_of(const inference *to, int i, int j, double log_prior)
{
  double none[N_ITEMS];
  return log_prior + freeair__practice_answers(to->answers, i, j, wrong_share, none);
}

/* A sound machine, or something else: any reading may lie anywhere about that. */
static void add_plain(inference *to, int cause, double prior)
{
  if (!(prior > 0.0)) return;
  const freeair__symptoms *s = to->s;
  double variance[FREEAIR__SYMPTOMS] = {0.0};
  double along[FREEAIR__SYMPTOMS] = {0.0};
  weighed w;
  sums q;
  sums_start(s, &q);
  for (int i = 0; i < s->n && cause == OTHER; i++) variance[i] = 0.36 * s->symptom[i].wide * s->symptom[i].wide;
  if (weigh(s, s->sound, variance, along, NULL, 1.0, &w))
    sums_add(to, &w, 0.0, flat_of(to, cause, 0, log(prior)), cause == SOUND, &q);
  close_hypothesis(to, cause, 0, log(prior), &q);
}

/* How the prediction moves within the cell of a node: a uniform distribution of
 * its width, as a normal one. cells neighbours make a cell. */
static void along_nodes(const freeair__symptoms *s, const trace *t, int k, int cells, double *along)
{
  int lo = k;
  int hi = k;
  if (k > 0 && isfinite(t->log_weight[k - 1])) lo = k - 1;
  if (k < SIZES - 1 && isfinite(t->log_weight[k + 1])) hi = k + 1;
  for (int i = 0; i < s->n; i++)
    along[i] = hi > lo ? (double)(t->y[hi][i] - t->y[lo][i]) / (hi - lo) * cells / sqrt(12.0) : 0.0;
}

static void predict_way(const freeair__hypotheses *h, const freeair__way *way, trace *t)
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
static void variance_at(const inference *from, int w, int k, double *variance)
{
  double none[FREEAIR__SYMPTOMS] = {0.0};
  for (int i = 0; i < from->s->n; i++) variance[i] = 0.0;
  freeair__hypotheses_table(from->h, &from->h->way[w], from->traces[w].size[k], none, variance);
}

static void add_way(inference *to, int w, double prior)
{
  const freeair__way *way = &to->h->way[w];
  const freeair__symptoms *s = to->s;
  trace *t = &to->traces[w];
  double log_prior = log(prior * way->share);
  double flat = flat_of(to, way->cause, 0, log_prior);
  sums q;
  sums_start(s, &q);
  predict_way(to->h, way, t);
  for (int k = 0; k < SIZES; k++) {
    if (!isfinite(t->log_weight[k])) continue;
    double y[FREEAIR__SYMPTOMS];
    double variance[FREEAIR__SYMPTOMS];
    double along[FREEAIR__SYMPTOMS];
    weighed at;
    for (int i = 0; i < s->n; i++) y[i] = t->y[k][i];
    variance_at(to, w, k, variance);
    along_nodes(s, t, k, 1, along);
    if (!weigh(s, y, variance, along, NULL, 1.0, &at)) continue;
    sums_add(to, &at, t->log_weight[k], flat, 1, &q);
    freeair__logsum_add(&to->log_size[way->cause][k], flat + t->log_weight[k] + at.all);
  }
  to->log_way[w] = flat + q.all;
  close_hypothesis(to, way->cause, 0, log_prior, &q);
}

/* Two faults: their shifts add, about the sound machine. */
static void add_pair(inference *to, int a, int b, double prior)
{
  enum { step_a = 2, step_b = 3 };
  const freeair__way *first = &to->h->way[a];
  const freeair__way *second = &to->h->way[b];
  const freeair__symptoms *s = to->s;
  const trace *t = &to->traces[a];
  const trace *u = &to->traces[b];
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
    double along[FREEAIR__SYMPTOMS];
    double own[FREEAIR__SYMPTOMS];
    along_nodes(s, t, k, step_a, along);
    variance_at(to, a, k, own);
    for (int l = 1; l < SIZES; l += step_b) {
      if (!isfinite(u->log_weight[l])) continue;
      double across[FREEAIR__SYMPTOMS];
      double y[FREEAIR__SYMPTOMS];
      double variance[FREEAIR__SYMPTOMS];
      weighed at;
      along_nodes(s, u, l, step_b, across);
      variance_at(to, b, l, variance);
      for (int i = 0; i < s->n; i++) {
        y[i] = (double)t->y[k][i] + (double)u->y[l][i] - s->sound[i];
        variance[i] += own[i];
      }
      if (!weigh(s, y, variance, along, across, 1.3, &at)) continue;
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

static void infer(inference *to, const freeair__priors *prior)
{
  const freeair__hypotheses *h = to->h;
  freeair__posterior_start(&to->posterior, N_ITEMS);
  for (int b = 0; b < to->s->blocks.n; b++) to->predictions[b] = (prediction){-INFINITY, {0.0, 0.0}};
  for (int c = 0; c < N_CAUSES; c++)
    for (int k = 0; k < SIZES; k++) to->log_size[c][k] = -INFINITY;
  add_plain(to, SOUND, prior->alone[SOUND]);
  add_plain(to, OTHER, prior->alone[OTHER]);
  for (int w = 0; w < h->n_ways; w++) add_way(to, w, prior->alone[h->way[w].cause]);
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

/* ---- the answer in rows ---- */

/* Position below which a share of the posterior of a cause lies. */
static double position_at(const inference *from, int cause, double share)
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

static const freeair__way *best_way(const inference *from, int cause)
{
  const freeair__way *best = NULL;
  double most = -INFINITY;
  for (int w = 0; w < from->h->n_ways; w++) {
    if (from->h->way[w].cause != cause || (best != NULL && !(from->log_way[w] > most))) continue;
    best = &from->h->way[w];
    most = from->log_way[w];
  }
  return best;
}

static double energy_of(const inference *from, const freeair__condition *c)
{
  const freeair__plant *plant = from->s->plant;
  double p = 0.5 * (plant->c.m.cut_in_pa + plant->c.m.cut_out_pa);
  double mass = freeair__plant_net(plant, &c->map, &c->system, p);
  double power = freeair__plant_at(plant, &c->map, FREEAIR__PLANT_POWER, p) / from->s->motor_efficiency;
  if (!(mass > 0.0)) return INFINITY;
  return power / (mass * plant->c.gas_r * plant->c.site.ambient_k / plant->c.site.barometric_pa);
}

static void fill_effect(const inference *from, const freeair_inference_visit *visit, freeair_diagnosis_cause *cause,
                        freeair_inference_effect *effect)
{
  const freeair__plant *plant = from->s->plant;
  *effect = (freeair_inference_effect)FREEAIR_INFERENCE_EFFECT_INIT;
  effect->cause = cause->cause;
  effect->sound_j_m3 = energy_of(from, &from->h->sound);
  if (cause->cause == SOUND) {
    cause->size = cause->u_size = cause->severity = cause->u_severity = 0.0;
    effect->lost = effect->lost_low = effect->lost_high = effect->lost_m3_s = 0.0;
    effect->energy_j_m3 = effect->sound_j_m3;
  }
  const freeair__way *way = best_way(from, cause->cause);
  if (way == NULL) return;
  double typical;
  double cost;
  int32_t two_sided;
  freeair_likelihood_size(cause->cause, &typical, &cost, &two_sided);
  double position[3];
  double size[3];
  double severity[3];
  static const double shares[] = {0.05, 0.5, 0.95};
  freeair__condition c;
  for (int i = 0; i < 3; i++) {
    position[i] = position_at(from, cause->cause, shares[i]);
    if (!freeair__given(position[i])) return;
    freeair__hypotheses_condition(from->h, way, position[i], &size[i], &severity[i], &c);
  }
  freeair__hypotheses_condition(from->h, way, position[1], &size[1], &severity[1], &c);
  effect->fault = way->fault;
  effect->severity_low = severity[0];
  effect->severity = severity[1];
  effect->severity_high = severity[2];
  /* a worse valve need not cost more */
  effect->lost = -expm1(-cost * size[1]);
  effect->lost_low = fmin(-expm1(-cost * fmin(size[0], size[2])), effect->lost);
  effect->lost_high = fmax(-expm1(-cost * fmax(size[0], size[2])), effect->lost);
  double p = 0.5 * (plant->c.m.cut_in_pa + plant->c.m.cut_out_pa);
  double sound = freeair__plant_at(plant, &plant->sound, FREEAIR__PLANT_MASS, p) * plant->c.gas_r *
                 plant->c.site.ambient_k / plant->c.site.barometric_pa;
  effect->lost_m3_s = effect->lost * sound;
  effect->energy_j_m3 = energy_of(from, &c);
  if (way->kind == FREEAIR__WAY_GAUGE || way->kind == FREEAIR__WAY_WATER) effect->energy_j_m3 = effect->sound_j_m3;
  effect->waste_w = visit->air_m3_s * (effect->energy_j_m3 - effect->sound_j_m3);
  effect->cost = effect->waste_w * visit->energy_price;
  cause->size = size[1];
  cause->u_size = fabs(size[2] - size[0]) / 3.29;
  cause->severity = effect->lost;
  cause->u_severity = (effect->lost_high - effect->lost_low) / 3.29;
}

/* The symptom that stands for a reading; -1 where there is none. */
static int symptom_of(const freeair__symptoms *s, int32_t reading)
{
  for (int b = 0; b < s->blocks.n; b++)
    if (s->symptom[s->blocks.first[b]].reading == reading) return b;
  return -1;
}

/* A value in a reading's unit, of what is predicted in the symptom's scale. */
static double in_unit(const freeair__symptoms *s, const freeair__symptom *y, double predicted)
{
  double efficiency = y->reading == FREEAIR_EVIDENCE_POWER ? s->motor_efficiency : 1.0;
  double share;
  double value;
  switch (y->kind) {
    case FREEAIR__SYMPTOM_DELIVERY:
    case FREEAIR__SYMPTOM_EMPTY:
    case FREEAIR__SYMPTOM_CUTIN:
      share = fmax(exp(-predicted) - 0.03, 0.0);
      if (y->kind == FREEAIR__SYMPTOM_DELIVERY) return y->reference * share;
      return share > 0.0 ? y->reference / share : INFINITY;
    case FREEAIR__SYMPTOM_RATIO:
    case FREEAIR__SYMPTOM_MOTOR: return y->reference * exp(predicted) / efficiency;
    case FREEAIR__SYMPTOM_DIFFERENCE: return y->reference + predicted;
    case FREEAIR__SYMPTOM_FILTER: return y->reference + predicted * s->plant->c.site.barometric_pa;
    case FREEAIR__SYMPTOM_TABLE:
      value = NAN;
      freeair_diagnosis_finding_value(y->reading, y->reference, y->to_p, predicted, &value);
      return value;
    default: return NAN;
  }
}

static size_t find_all(const inference *from, const freeair_evidence_readings *found,
                       const freeair_diagnosis_options *options, freeair_diagnosis_finding *all,
                       freeair_diagnosis_summary *summary)
{
  const freeair__symptoms *s = from->s;
  size_t n = 0;
  for (int32_t r = 1; r < N_READINGS; r++) {
    double value;
    double u;
    freeair_evidence_readings_get(found, r, &value, &u);
    int b = symptom_of(s, r);
    if (!freeair__given(value) && (b < 0 || r == FREEAIR_EVIDENCE_DELIVERY)) {
      /* a log that contradicts is still counted */
      if (b >= 0 && fabs(freeair__deviations_from(from->predictions[b].mean[0])) >= options->contradiction)
        summary->contradictions++;
      continue;
    }
    freeair_diagnosis_finding *f = &all[n++];
    *f = (freeair_diagnosis_finding)FREEAIR_DIAGNOSIS_FINDING_INIT;
    f->reading = r;
    f->found = value;
    if (b < 0) {
      summary->readings_unused++;
      continue;
    }
    int i = s->blocks.first[b];
    const freeair__symptom *y = &s->symptom[i];
    const prediction *p = &from->predictions[b];
    summary->readings_used++;
    f->use = FREEAIR_DIAGNOSIS_USED;
    if (!freeair__given(value)) f->found = in_unit(s, y, y->found);
    f->expected = in_unit(s, y, s->sound[i]);
    f->deviation = y->found - s->sound[i];
    f->spread = sqrt(s->covariance[i][i]);
    f->residual = f->deviation / f->spread;
    if (y->kind == FREEAIR__SYMPTOM_TABLE) f->reference = y->to_p;
    if (isinf(p->log_weight)) continue;
    f->predicted = in_unit(s, y, p->mean[1]);
    f->disagreement = freeair__deviations_from(p->mean[0]);
    if (fabs(f->disagreement) < options->contradiction) continue;
    f->use = FREEAIR_DIAGNOSIS_CONTRADICTS;
    summary->contradictions++;
  }
  return n;
}

static size_t put_reasons(const inference *from, const freeair__ranking *by, const freeair_diagnosis_finding *findings,
                          size_t n_findings, const freeair__rows *rows)
{
  const freeair__symptoms *s = from->s;
  size_t n = 0;
  for (int c = 0; c < by->n; c++) {
    double says[N_ITEMS];
    double y[FREEAIR__SYMPTOMS];
    double variance[FREEAIR__SYMPTOMS] = {0.0};
    freeair_diagnosis_reason row;
    const freeair_diagnosis_cause *cause = &by->row[c];
    const freeair__way *way = best_way(from, cause->cause);
    int known = cause->cause == SOUND;
    for (int i = 0; i < s->n && known; i++) y[i] = s->sound[i];
    if (way != NULL && freeair__given(cause->size)) {
      freeair__condition at;
      double size;
      double severity;
      freeair__hypotheses_condition(from->h, way, position_at(from, cause->cause, 0.5), &size, &severity, &at);
      freeair__symptoms_predict(s, &at, y);
      freeair__hypotheses_table(from->h, way, size, y, variance);
      known = 1;
    }
    freeair__reasons_of(&from->posterior, cause->cause, says);
    while (freeair__reason_next(from->answers, cause, says, &row)) {
      int b = row.reading != 0 ? symptom_of(s, row.reading) : -1;
      for (size_t k = 0; k < n_findings; k++)
        if (row.reading != 0 && findings[k].reading == row.reading) {
          row.found = findings[k].found;
          row.expected = findings[k].expected;
        }
      if (b >= 0 && known && freeair__given(row.found))
        row.predicted = in_unit(s, &s->symptom[s->blocks.first[b]], y[s->blocks.first[b]]);
      freeair__rows_put(rows, n++, &row);
    }
  }
  return n;
}

/* ---- the call ---- */

typedef struct request {
  freeair_machine m;
  freeair_machine_site site;
  freeair_diagnosis_subject subject;
  freeair_inference_visit visit;
  freeair_inference_scatter scatter;
  freeair_diagnosis_options options;
  freeair__priors prior;
  int32_t answers[N_OBSERVATIONS];
  freeair__symptom_input in;
} request;

static int32_t read_subject(const freeair_diagnosis_subject *from, request *q)
{
  double factor;
  int32_t status = freeair_diagnosis_subject_cause(from, SOUND, &factor);
  if (status < 0) return status;
  q->subject = (freeair_diagnosis_subject)FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  freeair__structure_read(&q->subject, sizeof q->subject, from, FREEAIR_DIAGNOSIS_SUBJECT_BASELINE);
  q->subject.struct_size = (uint32_t)sizeof q->subject;
  q->subject.stages = q->m.stages;
  q->subject.cylinders = q->m.lp_cylinders + (q->m.stages == 2 ? q->m.hp_cylinders : 0);
  q->subject.head = q->m.arrangement == FREEAIR_MACHINE_SIDE_BY_SIDE ? FREEAIR_DIAGNOSIS_HEAD_SHARED
                                                                     : FREEAIR_DIAGNOSIS_HEAD_SEPARATE;
  q->subject.receiver_m3 = q->m.receiver_m3;
  return FREEAIR_OK;
}

static int32_t read_readings(const freeair_evidence_readings *from)
{
  int32_t reading;
  int32_t n;
  return freeair_evidence_readings_check(from, &reading, &n);
}

static double highest_pressure(const request *q)
{
  double level;
  double u;
  double high = fmax(q->m.cut_out_pa, freeair__or(q->visit.receiver_pa, 0.0));
  freeair_evidence_readings_get(q->in.found, FREEAIR_EVIDENCE_LEVEL_OFF, &level, &u);
  for (size_t i = 0; i < q->in.n_interstage; i++) high = fmax(high, q->in.interstage_at_pa[i]);
  high = fmax(high, freeair__or(level, 0.0));
  return fmin(high, 1.5 * q->m.cut_out_pa);
}

typedef struct answer_rows {
  freeair__ranking by;
  freeair_inference_effect effects[N_CAUSES];
  freeair_diagnosis_finding findings[N_READINGS];
  size_t n_findings;
  size_t n_reasons;
  freeair_diagnosis_summary summary;
} answer_rows;

static int32_t work_out(const request *q, const int32_t *observation, const int32_t *given, size_t n_observations,
                        const freeair__rows *reason_rows, answer_rows *out)
{
  freeair__plant plant;
  freeair__symptoms symptoms;
  freeair__hypotheses hypotheses;
  int32_t status = freeair__plant_start(&plant, &q->m, &q->site, highest_pressure(q));
  if (status == FREEAIR_OK) status = freeair__symptoms_start(&plant, &q->in, &symptoms);
  if (status == FREEAIR_OK) status = freeair__symptoms_scatter(&q->in, &symptoms);
  if (status == FREEAIR_OK) status = freeair__hypotheses_start(&symptoms, &q->subject, &q->prior, &hypotheses);
  if (status < 0) return status;
  inference after;
  after.s = &symptoms;
  after.h = &hypotheses;
  after.answers = q->answers;
  infer(&after, &q->prior);
  freeair__ranking_make(&q->prior, &after.posterior, &out->by);
  for (int i = 0; i < out->by.n; i++) fill_effect(&after, &q->visit, &out->by.row[i], &out->effects[i]);
  freeair__ranking_group(&q->subject, q->in.found, observation, given, n_observations, &out->by);
  freeair__summary_make(&after.posterior, &out->by, q->answers, &out->summary);
  out->n_findings = find_all(&after, q->in.found, &q->options, out->findings, &out->summary);
  freeair__verdict_make(out->findings, out->n_findings, &after.posterior, q->options.confidence, &out->summary);
  out->n_reasons = put_reasons(&after, &out->by, out->findings, out->n_findings, reason_rows);
  return FREEAIR_OK;
}

int32_t freeair_inference_rank(
    const freeair_machine *machine, const freeair_machine_site *site, const freeair_diagnosis_subject *subject,
    const freeair_inference_visit *visit, const freeair_inference_scatter *scatter,
    const freeair_evidence_readings *expected, const freeair_evidence_readings *found, const double *log_t_s,
    const double *log_p_pa, size_t n_log, const double *interstage_at_pa, const double *interstage_pa,
    size_t n_interstage, const int32_t *observation, const int32_t *answer, size_t n_observations,
    const double *prior, size_t n_prior, const freeair_diagnosis_options *options, freeair_diagnosis_cause *causes,
    size_t causes_stride, size_t causes_capacity, size_t *n_causes, freeair_inference_effect *effects,
    size_t effects_stride, size_t effects_capacity, size_t *n_effects, freeair_diagnosis_reason *reasons,
    size_t reasons_stride, size_t reasons_capacity, size_t *n_reasons, freeair_diagnosis_finding *findings,
    size_t findings_stride, size_t findings_capacity, size_t *n_findings, freeair_diagnosis_summary *summary)
{
  static const freeair_diagnosis_cause blank_cause = FREEAIR_DIAGNOSIS_CAUSE_INIT;
  static const freeair_inference_effect blank_effect = FREEAIR_INFERENCE_EFFECT_INIT;
  static const freeair_diagnosis_reason blank_reason = FREEAIR_DIAGNOSIS_REASON_INIT;
  static const freeair_diagnosis_finding blank_finding = FREEAIR_DIAGNOSIS_FINDING_INIT;
  static const freeair_diagnosis_summary blank_summary = FREEAIR_DIAGNOSIS_SUMMARY_INIT;
  const freeair__rows cause_rows = {causes, causes_stride, causes_capacity, sizeof blank_cause,
                                    FREEAIR_DIAGNOSIS_CAUSE_BASELINE};
  const freeair__rows effect_rows = {effects, effects_stride, effects_capacity, sizeof blank_effect,
                                     FREEAIR_INFERENCE_EFFECT_BASELINE};
  const freeair__rows reason_rows = {reasons, reasons_stride, reasons_capacity, sizeof blank_reason,
                                     FREEAIR_DIAGNOSIS_REASON_BASELINE};
  const freeair__rows finding_rows = {findings, findings_stride, findings_capacity, sizeof blank_finding,
                                      FREEAIR_DIAGNOSIS_FINDING_BASELINE};
  size_t *const counts[] = {n_causes, n_effects, n_reasons, n_findings};
  int missing = 0;
  for (size_t i = 0; i < FREEAIR__COUNT(counts); i++) {
    if (counts[i] == NULL) missing = 1;
    else *counts[i] = 0;
  }
  int32_t status = freeair__rows_start(&cause_rows, &blank_cause, FREEAIR_OK);
  status = freeair__rows_start(&effect_rows, &blank_effect, status);
  status = freeair__rows_start(&reason_rows, &blank_reason, status);
  status = freeair__rows_start(&finding_rows, &blank_finding, status);
  if (summary != NULL) {
    int32_t written = freeair__structure_write(summary, &blank_summary, sizeof blank_summary,
                                               FREEAIR_DIAGNOSIS_SUMMARY_BASELINE);
    if (status == FREEAIR_OK) status = written;
  }
  if (missing || machine == NULL || site == NULL || subject == NULL || visit == NULL || scatter == NULL ||
      expected == NULL || found == NULL || options == NULL || summary == NULL ||
      (n_log > 0 && (log_t_s == NULL || log_p_pa == NULL)) ||
      (n_interstage > 0 && (interstage_at_pa == NULL || interstage_pa == NULL)))
    return FREEAIR_ERR_NULL;
  if (status < 0) return status;

  request q;
  status = freeair__machine_read(machine, &q.m);
  if (status == FREEAIR_OK) status = freeair__machine_site_read(site, &q.m, &q.site);
  if (status == FREEAIR_OK) status = read_subject(subject, &q);
  if (status == FREEAIR_OK) status = read_visit(visit, &q.visit);
  if (status == FREEAIR_OK) status = read_scatter(scatter, &q.scatter);
  if (status == FREEAIR_OK) status = read_readings(expected);
  if (status == FREEAIR_OK) status = read_readings(found);
  if (status == FREEAIR_OK) status = freeair__diagnosis_options_read(options, &q.options);
  if (status == FREEAIR_OK)
    status = freeair__answers_read(observation, answer, n_observations, N_OBSERVATIONS, q.answers);
  if (status == FREEAIR_OK)
    status = freeair__priors_make(&q.subject, prior, n_prior, q.options.pair_share, &q.prior);
  if (status < 0) return status;
  q.site.supply_v = q.m.motor_rated_v;
  q.in = (freeair__symptom_input){found, expected, &q.visit, &q.scatter, log_t_s, log_p_pa, n_log,
                                  interstage_at_pa, interstage_pa, n_interstage};
  status = read_arrays(&q.in);
  if (status < 0) return status;

  answer_rows out;
  out.summary = blank_summary;
  status = work_out(&q, observation, answer, n_observations, &reason_rows, &out);
  if (status < 0) {
    freeair__rows_blank(&reason_rows, &blank_reason);
    return status;
  }
  *n_causes = *n_effects = (size_t)out.by.n;
  *n_findings = out.n_findings;
  *n_reasons = out.n_reasons;
  for (size_t i = 0; i < *n_causes; i++) {
    freeair__rows_put(&cause_rows, i, &out.by.row[i]);
    freeair__rows_put(&effect_rows, i, &out.effects[i]);
  }
  for (size_t i = 0; i < *n_findings; i++) freeair__rows_put(&finding_rows, i, &out.findings[i]);
  freeair__structure_write(summary, &out.summary, sizeof out.summary, FREEAIR_DIAGNOSIS_SUMMARY_BASELINE);
  if (out.summary.contradictions > 0) return FREEAIR_WARN_INCONSISTENT;
  if (*n_causes > causes_capacity || *n_effects > effects_capacity || *n_reasons > reasons_capacity ||
      *n_findings > findings_capacity)
    return FREEAIR_WARN_TRUNCATED;
  return FREEAIR_OK;
}
