/* SPDX-License-Identifier: MIT */
#include "internal/inference_rows.h"

#include "internal/check.h"

#include <freeair/status.h>

enum {
  N_READINGS = FREEAIR__READINGS,
  N_ITEMS = FREEAIR__ITEMS,
  SOUND = FREEAIR_EVIDENCE_HEALTHY
};

static const freeair__way *best_way(const freeair__inference *from, int cause)
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

/* Electrical power while it runs, half way between cut-in and cut-out. */
static double power_of(const freeair__inference *from, const freeair__condition *c)
{
  const freeair__plant *plant = from->s->plant;
  double p = 0.5 * (plant->c.m.cut_in_pa + plant->c.m.cut_out_pa);
  return freeair__plant_at(plant, &c->map, FREEAIR__PLANT_POWER, p) / from->s->motor_efficiency;
}

static double energy_of(const freeair__inference *from, const freeair__condition *c)
{
  const freeair__plant *plant = from->s->plant;
  double p = 0.5 * (plant->c.m.cut_in_pa + plant->c.m.cut_out_pa);
  double mass = freeair__plant_net(plant, &c->map, &c->system, p);
  double power = power_of(from, c);
  if (!(mass > 0.0)) return INFINITY;
  return power / (mass * plant->c.gas_r * plant->c.site.ambient_k / plant->c.site.barometric_pa);
}

void freeair__inference_effect(const freeair__inference *from, const freeair_inference_visit *visit,
                               freeair_diagnosis_cause *cause, freeair_inference_effect *effect)
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
    position[i] = freeair__inference_position(from, cause->cause, shares[i]);
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
  /* it cannot take more than running all the time */
  if (freeair__given(visit->air_m3_s)) {
    double taken = visit->air_m3_s > 0.0 ? fmin(visit->air_m3_s * effect->energy_j_m3, power_of(from, &c)) : 0.0;
    effect->waste_w = taken - visit->air_m3_s * effect->sound_j_m3;
  }
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

/* The delivery that the first part of a log shows. */
static double mean_delivery(const freeair__symptoms *s, const freeair__symptom *y, double predicted)
{
  const freeair__plant *plant = s->plant;
  double mass = freeair__plant_at(plant, &plant->sound, FREEAIR__PLANT_MASS, 0.5 * (y->from_p + y->to_p));
  double free_air = mass * plant->c.gas_r * plant->c.site.ambient_k / plant->c.site.barometric_pa;
  return free_air * fmax(exp(-predicted) - 0.03, 0.0);
}

/* Far from what all else says, and not because it alone found a rare fault. */
static int contradicts(const freeair__inference *from, int block, double disagreement,
                       const freeair_diagnosis_options *options)
{
  double log_wrong = from->predictions[block].log_wrong - from->posterior.all[0];
  return fabs(disagreement) >= options->contradiction && log_wrong > -1.2;
}

size_t freeair__inference_findings(const freeair__inference *from, const freeair_evidence_readings *found,
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
    if (!freeair__given(value) && b < 0) continue;
    /* a log has a finding only where it contradicts */
    int log = !freeair__given(value) && r == FREEAIR_EVIDENCE_DELIVERY;
    if (log && !contradicts(from, b, freeair__deviations_from(from->predictions[b].mean[0]), options)) continue;
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
    const freeair__prediction *p = &from->predictions[b];
    summary->readings_used++;
    f->use = FREEAIR_DIAGNOSIS_USED;
    if (!freeair__given(value)) f->found = log ? mean_delivery(s, y, y->found) : in_unit(s, y, y->found);
    f->expected = log ? mean_delivery(s, y, s->sound[i]) : in_unit(s, y, s->sound[i]);
    f->deviation = y->found - s->sound[i];
    f->spread = sqrt(from->unknown->c[i][i] + y->noise * y->noise);
    f->residual = f->deviation / f->spread;
    if (y->kind == FREEAIR__SYMPTOM_TABLE) f->reference = y->to_p;
    if (isinf(p->log_weight)) continue;
    f->predicted = log ? mean_delivery(s, y, p->mean[1]) : in_unit(s, y, p->mean[1]);
    f->disagreement = freeair__deviations_from(p->mean[0]);
    if (!contradicts(from, b, f->disagreement, options)) continue;
    f->use = FREEAIR_DIAGNOSIS_CONTRADICTS;
    summary->contradictions++;
  }
  return n;
}

size_t freeair__inference_reasons(const freeair__inference *from, const freeair__ranking *by,
                                  const freeair_diagnosis_finding *findings, size_t n_findings,
                                  const freeair__rows *rows)
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
      double middle = freeair__inference_position(from, cause->cause, 0.5);
      freeair__hypotheses_condition(from->h, way, middle, &size, &severity, &at);
      freeair__symptoms_predict(s, &at, y);
      freeair__hypotheses_table(from->h, way, size, y, variance);
      known = 1;
    }
    freeair__reasons_of(&from->posterior, cause->cause, says);
    while (freeair__reason_next(from->answers, cause, says, &row)) {
      int b = row.reading != 0 ? symptom_of(s, row.reading) : -1;
      const freeair_diagnosis_finding *f = NULL;
      for (size_t k = 0; k < n_findings; k++)
        if (row.reading != 0 && findings[k].reading == row.reading) f = &findings[k];
      if (f != NULL) {
        row.found = f->found;
        row.expected = f->expected;
      }
      if (b >= 0 && known && f != NULL && freeair__given(f->found)) {
        row.predicted = in_unit(s, &s->symptom[s->blocks.first[b]], y[s->blocks.first[b]]);
        row.residual = freeair__finding_residual(f, row.predicted);
      }
      freeair__rows_put(rows, n++, &row);
    }
  }
  return n;
}
