/* SPDX-License-Identifier: MIT */
/* A diagnosis with room for everything, for the tests of its topics. */
#ifndef FREEAIR_TESTS_DIAGNOSIS_H
#define FREEAIR_TESTS_DIAGNOSIS_H

#include <freeair/diagnosis.h>
#include <freeair/evidence.h>
#include <freeair/status.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { ROOM = 40, ROOM_FOR_REASONS = 2000, MOST_ANSWERS = 60 };

typedef struct visit {
  freeair_diagnosis_subject subject;
  freeair_evidence_readings expected;
  freeair_evidence_readings found;
  int32_t observation[MOST_ANSWERS];
  int32_t answer[MOST_ANSWERS];
  size_t n_observations;
  double prior[ROOM];
  size_t n_prior;
  freeair_diagnosis_options options;
  /* the outcome */
  int32_t status;
  freeair_diagnosis_cause causes[ROOM];
  size_t n_causes;
  freeair_diagnosis_reason reasons[ROOM_FOR_REASONS];
  size_t n_reasons;
  freeair_diagnosis_finding findings[ROOM];
  size_t n_findings;
  freeair_diagnosis_summary summary;
} visit;

/* An invented two-stage machine of some 300 litres, as it should be. */
static inline freeair_evidence_readings sound_readings(void)
{
  freeair_evidence_readings r = FREEAIR_EVIDENCE_READINGS_INIT;
  r.delivery_m3_s = 0.0105;
  r.t_empty_to_cutout_s = 293.0;
  r.t_cutin_to_cutout_s = 62.0;
  r.p_interstage_pa = 4.2e5;
  r.t_lp_discharge_k = 445.0;
  r.t_hp_discharge_k = 446.0;
  r.t_intercooler_out_k = 346.0;
  r.motor_speed_rev_s = 29.0;
  r.pump_speed_rev_s = 13.3;
  r.supply_running_v = 230.0;
  r.supply_starting_v = 207.0;
  r.motor_current_a = 21.0;
  r.power_w = 4300.0;
  r.run_capacitance_f = 40e-6;
  r.start_capacitance_f = 250e-6;
  r.p_cutout_pa = 13.08e5;
  r.p_relief_opening_pa = 6.5e5;
  r.filter_drop_pa = 900.0;
  r.belt_deflection_m = 0.0125;
  r.duty = 0.5;
  r.t_ambient_k = 293.15;
  r.p_ambient_pa = 101325.0;
  return r;
}

static inline visit new_visit(void)
{
  visit v;
  memset(&v, 0, sizeof v);
  freeair_diagnosis_subject_init(&v.subject, sizeof v.subject);
  freeair_evidence_readings_init(&v.found, sizeof v.found);
  freeair_diagnosis_options_init(&v.options, sizeof v.options);
  freeair_diagnosis_summary_init(&v.summary, sizeof v.summary);
  v.expected = sound_readings();
  return v;
}

static inline void say(visit *v, int32_t observation, int32_t answer)
{
  v->observation[v->n_observations] = observation;
  v->answer[v->n_observations++] = answer;
}

static inline void diagnose(visit *v)
{
  for (size_t i = 0; i < ROOM; i++) {
    freeair_diagnosis_cause_init(&v->causes[i], sizeof v->causes[i]);
    freeair_diagnosis_finding_init(&v->findings[i], sizeof v->findings[i]);
  }
  for (size_t i = 0; i < ROOM_FOR_REASONS; i++) freeair_diagnosis_reason_init(&v->reasons[i], sizeof v->reasons[i]);
  freeair_diagnosis_summary_init(&v->summary, sizeof v->summary);
  v->status = freeair_diagnosis_rank(
      &v->subject, &v->expected, &v->found, v->observation, v->answer, v->n_observations, v->prior, v->n_prior,
      &v->options, v->causes, sizeof v->causes[0], ROOM, &v->n_causes, v->reasons, sizeof v->reasons[0],
      ROOM_FOR_REASONS, &v->n_reasons, v->findings, sizeof v->findings[0], ROOM, &v->n_findings, &v->summary);
}

/* The row of a cause; an empty one when this machine cannot have it. */
static inline const freeair_diagnosis_cause *row_of(const visit *v, int32_t cause)
{
  static const freeair_diagnosis_cause none = {0};
  for (size_t i = 0; i < v->n_causes; i++)
    if (v->causes[i].cause == cause) return &v->causes[i];
  return &none;
}

static inline double probability_of(const visit *v, int32_t cause)
{
  return row_of(v, cause)->probability;
}

static inline const freeair_diagnosis_finding *finding_of(const visit *v, int32_t reading)
{
  for (size_t i = 0; i < v->n_findings; i++)
    if (v->findings[i].reading == reading) return &v->findings[i];
  return NULL;
}

/* Numbers from a fixed sequence, so that every run sees the same. */
static inline double uniform(uint32_t *state)
{
  *state = *state * 1664525u + 1013904223u;
  return (*state >> 8) / 16777216.0;
}

static inline double normal(uint32_t *state)
{
  double sum = -6.0;
  for (int i = 0; i < 12; i++) sum += uniform(state);
  return sum;
}

#endif
