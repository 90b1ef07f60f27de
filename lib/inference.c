/* SPDX-License-Identifier: MIT */
#include <freeair/inference.h>
#include <freeair/status.h>

#include "internal/answers.h"
#include "internal/array.h"
#include "internal/check.h"
#include "internal/inference_rows.h"
#include "internal/machine.h"

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
  static const double defaults[] = {0.04,  0.17,  0.14, 0.43,  0.38, 0.28, 0.38, 0.17,   0.43, 0.22,  0.022,
                                    0.045, 0.055, 8.5,  0.014, 0.38, 0.22, 0.43, 0.0055, 0.01, 0.009, 0.07};
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

/* ---- the call ---- */

typedef struct request {
  freeair_machine m;
  freeair_machine_site site;
  freeair_diagnosis_subject subject;
  freeair_inference_visit visit;
  freeair_inference_scatter scatter;
  freeair_diagnosis_options options;
  freeair__priors prior;
  int32_t answers[FREEAIR__OBSERVATIONS];
  freeair__symptom_input in;
} request;

static int32_t read_subject(const freeair_diagnosis_subject *from, request *q)
{
  double factor;
  int32_t status = freeair_diagnosis_subject_cause(from, FREEAIR_EVIDENCE_HEALTHY, &factor);
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
  freeair_inference_effect effects[FREEAIR__CAUSES];
  freeair_diagnosis_finding findings[FREEAIR__READINGS];
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
  freeair__covariance unknown;
  int32_t status = freeair__plant_start(&plant, &q->m, &q->site, highest_pressure(q));
  if (status == FREEAIR_OK) status = freeair__symptoms_start(&plant, &q->in, &symptoms);
  if (status == FREEAIR_OK) status = freeair__scatter_covariance(&symptoms, &q->scatter, &unknown);
  if (status < 0) return status;
  freeair__inference after;
  after.s = &symptoms;
  after.h = &hypotheses;
  after.unknown = &unknown;
  after.answers = q->answers;
  after.clearance = q->scatter.clearance;
  freeair__hypotheses_start(&symptoms, &q->subject, &q->prior, &hypotheses);
  status = freeair__inference_infer(&after, &q->prior);
  if (status < 0) return status;
  freeair__ranking_make(&q->prior, &after.posterior, &out->by);
  for (int i = 0; i < out->by.n; i++) freeair__inference_effect(&after, &q->visit, &out->by.row[i], &out->effects[i]);
  freeair__ranking_group(&q->subject, q->in.found, observation, given, n_observations, &out->by);
  freeair__summary_make(&after.posterior, &out->by, q->answers, &out->summary);
  out->n_findings = freeair__inference_findings(&after, q->in.found, &q->options, out->findings, &out->summary);
  freeair__verdict_make(out->findings, out->n_findings, &after.posterior, q->options.confidence, &out->summary);
  out->n_reasons = freeair__inference_reasons(&after, &out->by, out->findings, out->n_findings, reason_rows);
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
    status = freeair__answers_read(observation, answer, n_observations, FREEAIR__OBSERVATIONS, q.answers);
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
