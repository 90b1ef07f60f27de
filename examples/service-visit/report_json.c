/* SPDX-License-Identifier: MIT */
#include "report.h"

#include <jansson.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

static json_t *number(double x)
{
  return isfinite(x) ? json_real(x) : json_null();
}

static const char *verdict_name(int32_t verdict)
{
  return verdict == FREEAIR_VERDICT_MEETS ? "meets" : verdict == FREEAIR_VERDICT_FAILS ? "fails" : "cannot_tell";
}

/* Every field of a structure by its name, as the library describes it. */
static json_t *structure(const char *name, const void *at)
{
  json_t *object = json_object();
  for (size_t i = 0; i < freeair_structure_count(); i++) {
    const freeair_structure *s = freeair_structure_at(i);
    if (strcmp(freeair_structure_name(s), name) != 0) continue;
    for (size_t k = 2; k < freeair_structure_field_count(s); k++) {
      const freeair_parameter *field = freeair_structure_field(s, k);
      const char *from = (const char *)at + field->offset;
      double x;
      int32_t n;
      if (field->type == FREEAIR_TYPE_DOUBLE) {
        memcpy(&x, from, sizeof x);
        if (!isnan(x)) json_object_set_new(object, field->name, number(x));
      } else {
        memcpy(&n, from, sizeof n);
        json_object_set_new(object, field->name, json_integer(n));
      }
    }
  }
  return object;
}

static json_t *name_of(int32_t kind, int32_t code)
{
  return json_string(freeair_evidence_name(kind, code));
}

static json_t *caution_texts(uint32_t mask)
{
  json_t *list = json_array();
  for (uint32_t bit = 1; bit != 0; bit <<= 1)
    if (mask & bit) json_array_append_new(list, json_string(freeair_caution_text(bit)));
  return list;
}

static json_t *runs(const assessment *a)
{
  json_t *list = json_array();
  for (size_t i = 0; i < a->n_runs; i++) {
    const assessed_run *r = &a->run[i];
    json_array_append_new(list, json_pack("{s:o, s:o, s:o, s:o, s:o, s:o, s:o, s:s}", "found",
                                          structure("freeair_pumpup_result", &r->found), "expected_s",
                                          number(r->expected_s), "expected_uncertainty_s", number(r->u_expected_s),
                                          "expected_m3_s", number(r->expected_m3_s), "ratio", number(r->ratio),
                                          "ratio_uncertainty", number(r->u_ratio), "probability_enough",
                                          number(r->probability_enough), "verdict", verdict_name(r->verdict)));
  }
  return list;
}

static json_t *causes(const assessment *a)
{
  json_t *list = json_array();
  for (size_t i = 0; i < a->n_causes; i++) {
    const freeair_diagnosis_cause *c = &a->cause[i];
    json_t *why = json_array();
    for (size_t k = 0; k < a->n_reasons; k++) {
      const freeair_diagnosis_reason *r = &a->reason[k];
      if (r->cause != c->cause) continue;
      json_t *item = json_pack("{s:o}", "log_odds", number(r->log_odds));
      if (!isnan(r->found)) json_object_set_new(item, "found", number(r->found));
      if (!isnan(r->expected)) json_object_set_new(item, "expected", number(r->expected));
      if (!isnan(r->predicted)) json_object_set_new(item, "predicted", number(r->predicted));
      if (!isnan(r->residual)) json_object_set_new(item, "residual", number(r->residual));
      if (r->reading > 0)
        json_object_set_new(item, "reading", name_of(FREEAIR_EVIDENCE_KIND_READING, r->reading));
      else
        json_object_set_new(item, "observation", name_of(FREEAIR_EVIDENCE_KIND_OBSERVATION, r->observation));
      json_array_append_new(why, item);
    }
    json_t *entry = structure("freeair_diagnosis_cause", c);
    json_object_set_new(entry, "cause", name_of(FREEAIR_EVIDENCE_KIND_CAUSE, c->cause));
    json_object_set_new(entry, "check", name_of(FREEAIR_EVIDENCE_KIND_CHECK, c->check));
    json_object_set_new(entry, "cautions", caution_texts(c->cautions));
    json_object_set_new(entry, "reasons", why);
    if (i < a->n_effects) {
      json_t *effect = structure("freeair_inference_effect", &a->effect[i]);
      json_object_del(effect, "cause");
      json_object_set_new(effect, "fault", json_string(freeair_fault_name(a->effect[i].fault)));
      json_object_set_new(entry, "effect", effect);
    }
    json_array_append_new(list, entry);
  }
  return list;
}

static json_t *checks(const assessment *a)
{
  json_t *list = json_array();
  for (size_t i = 0; i < a->n_checks; i++) {
    json_t *entry = structure("freeair_diagnosis_check", &a->check[i]);
    json_object_del(entry, "reserved");
    json_object_set_new(entry, "check", name_of(FREEAIR_EVIDENCE_KIND_CHECK, a->check[i].check));
    json_object_set_new(entry, "cautions", caution_texts(a->check[i].cautions));
    json_array_append_new(list, entry);
  }
  return list;
}

static json_t *findings(const assessment *a)
{
  json_t *list = json_array();
  for (size_t i = 0; i < a->n_findings; i++) {
    json_t *entry = structure("freeair_diagnosis_finding", &a->finding[i]);
    json_object_set_new(entry, "reading", name_of(FREEAIR_EVIDENCE_KIND_READING, a->finding[i].reading));
    json_object_set_new(entry, "contradicts", json_boolean(a->finding[i].use == FREEAIR_DIAGNOSIS_CONTRADICTS));
    json_object_del(entry, "use");
    json_array_append_new(list, entry);
  }
  return list;
}

static json_t *parts(const assessment *a)
{
  json_t *object = json_object();
  if (!isnan(a->slip))
    json_object_set_new(object, "belt_slip",
                        json_pack("{s:o, s:o}", "value", number(a->slip), "uncertainty", number(a->u_slip)));
  if (a->supply_verdict >= 0)
    json_object_set_new(object, "supply",
                        json_pack("{s:o, s:s}", "deviation", number(a->supply_deviation), "verdict",
                                  verdict_name(a->supply_verdict)));
  for (size_t i = 0; i < a->v->n_capacitors; i++)
    json_object_set_new(object, a->v->capacitor[i].is_start ? "start_capacitor" : "run_capacitor",
                        json_pack("{s:o, s:o, s:s}", "measured_f", number(a->v->capacitor[i].measured_f),
                                  "probability_low", number(a->capacitor_low[i]), "verdict",
                                  verdict_name(a->capacitor_verdict[i])));
  return object;
}

void report_json(const assessment *a)
{
  json_t *root = json_pack("{s:s, s:o, s:o, s:o, s:o, s:o}", "title", a->v->title, "pumpups", runs(a), "readings",
                           findings(a), "causes", causes(a), "checks", checks(a), "parts", parts(a));
  json_t *summary = structure("freeair_diagnosis_summary", &a->summary);
  json_object_set_new(summary, "verdict", json_string(verdict_name(a->summary.verdict)));
  json_object_set_new(summary, "cause", name_of(FREEAIR_EVIDENCE_KIND_CAUSE, a->summary.cause));
  json_object_set_new(root, "summary", summary);
  if (a->v->repaired != FREEAIR_EVIDENCE_CAUSE_NONE) {
    json_t *proof = structure("freeair_diagnosis_proof", &a->proof);
    json_object_set_new(proof, "cause", name_of(FREEAIR_EVIDENCE_KIND_CAUSE, a->v->repaired));
    json_object_set_new(proof, "verdict", json_string(verdict_name(a->proof.verdict)));
    json_object_set_new(proof, "gone", json_string(verdict_name(a->proof.gone)));
    json_object_set_new(proof, "delivers", json_string(verdict_name(a->proof.delivers)));
    json_object_set_new(proof, "reading", name_of(FREEAIR_EVIDENCE_KIND_READING, a->proof.reading));
    json_object_set_new(root, "proof", proof);
  }
  if (a->has_machine) {
    json_object_set_new(root, "machine", structure("freeair_machine", &a->machine));
    json_object_set_new(root, "expected_point", structure("freeair_cycle_result", &a->point));
  }
  if (a->has_log) {
    json_t *phases = json_array();
    for (size_t i = 0; i < a->n_phases; i++)
      json_array_append_new(phases, structure("freeair_pressure_log_phase", &a->phase[i]));
    json_object_set_new(root, "log", structure("freeair_duty_summary", &a->log_summary));
    json_object_set_new(root, "log_phases", phases);
  }
  json_object_set_new(root, "cautions", caution_texts(a->cautions));
  json_dumpf(root, stdout, JSON_INDENT(1) | JSON_REAL_PRECISION(12));
  putchar('\n');
  json_decref(root);
}
