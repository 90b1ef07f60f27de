/* SPDX-License-Identifier: MIT */
#include <freeair/diagnosis_proof.h>
#include <freeair/evidence.h>
#include <freeair/status.h>
#include <freeair/verdict.h>

#include "internal/check.h"
#include "internal/structure.h"

enum { FIRST_FAULT = FREEAIR_EVIDENCE_OTHER + 1, LAST_FAULT = FREEAIR_EVIDENCE_GAUGE_OR_SWITCH };

/* Reads row i of an array of structures of the caller's. */
static int32_t read_row(void *row, size_t size, const void *first, size_t stride, size_t i, size_t baseline)
{
  int32_t status = freeair__structure_read(row, size, (const unsigned char *)first + i * stride, baseline);
  uint32_t said;
  memcpy(&said, row, sizeof said);
  return status == FREEAIR_OK && said > stride ? FREEAIR_ERR_VERSION : status;
}

static int32_t judge_cause(int32_t cause, const freeair_diagnosis_cause *causes, size_t stride, size_t n,
                           double confidence, freeair_diagnosis_proof *proof)
{
  for (size_t i = 0; i < n; i++) {
    freeair_diagnosis_cause row = FREEAIR_DIAGNOSIS_CAUSE_INIT;
    int32_t status = read_row(&row, sizeof row, causes, stride, i, FREEAIR_DIAGNOSIS_CAUSE_BASELINE);
    if (status < 0) return status;
    if (row.cause != cause) continue;
    if (!freeair__given(row.probability) || !freeair__given(row.prior)) return FREEAIR_ERR_DATA;
    if (!freeair__closed(row.probability, 0.0, 1.0) || !freeair__closed(row.prior, 0.0, 1.0)) return FREEAIR_ERR_DOMAIN;
    if (!freeair__open(row.prior, 0.0, 1.0)) return FREEAIR_ERR_DATA;
    const double for_it = row.probability * (1.0 - row.prior);
    const double against = (1.0 - row.probability) * row.prior;
    proof->probability = row.probability;
    proof->probability_even = for_it / (for_it + against);
    if (proof->probability_even <= 1.0 - confidence && row.probability <= 1.0 - confidence)
      proof->gone = FREEAIR_VERDICT_MEETS;
    else if (proof->probability_even >= confidence)
      proof->gone = FREEAIR_VERDICT_FAILS;
    return FREEAIR_OK;
  }
  return FREEAIR_ERR_DATA;
}

/* Share of the sound delivery that a finding shows; NaN where it shows none. */
static double share_of(const freeair_diagnosis_finding *row)
{
  switch (row->reading) {
  case FREEAIR_EVIDENCE_DELIVERY: return row->found / row->expected;
  case FREEAIR_EVIDENCE_TIME_FROM_EMPTY:
  case FREEAIR_EVIDENCE_TIME_FROM_CUTIN: return row->expected / row->found;
  default: return NAN;
  }
}

static int32_t judge_delivery(const freeair_diagnosis_finding *findings, size_t stride, size_t n, double least,
                              double confidence, freeair_diagnosis_proof *proof)
{
  double best = INFINITY;
  int levelled_off = 0;
  for (size_t i = 0; i < n; i++) {
    freeair_diagnosis_finding row = FREEAIR_DIAGNOSIS_FINDING_INIT;
    int32_t status = read_row(&row, sizeof row, findings, stride, i, FREEAIR_DIAGNOSIS_FINDING_BASELINE);
    if (status < 0) return status;
    if (row.use != FREEAIR_DIAGNOSIS_USED) continue;
    if (row.reading == FREEAIR_EVIDENCE_LEVEL_OFF) levelled_off = 1;
    if (!freeair__given(row.found) || !freeair__given(row.expected) || !freeair__given(row.spread)) continue;
    const double share = share_of(&row);
    if (!freeair__given(share)) continue;
    if (!freeair__open(share, 0.0, INFINITY) || !freeair__closed(row.spread, 0.0, 100.0)) return FREEAIR_ERR_DOMAIN;
    if (!(row.spread < best)) continue;
    best = row.spread;
    proof->delivery = share;
    proof->u_delivery = share * row.spread;
    proof->reading = row.reading;
  }
  if (proof->reading != 0) {
    freeair_verdict_probability(log(proof->delivery), best, log(least), INFINITY, &proof->probability_delivery);
    freeair_verdict_decide(log(proof->delivery), best, log(least), INFINITY, confidence, &proof->delivers);
  } else if (levelled_off) {
    proof->reading = FREEAIR_EVIDENCE_LEVEL_OFF;
    proof->delivers = FREEAIR_VERDICT_FAILS;
  }
  return FREEAIR_OK;
}

int32_t freeair_diagnosis_proof_judge(int32_t cause, const freeair_diagnosis_cause *causes, size_t causes_stride,
                                      size_t n_causes, const freeair_diagnosis_finding *findings,
                                      size_t findings_stride, size_t n_findings, double least, double confidence,
                                      freeair_diagnosis_proof *proof)
{
  freeair_diagnosis_proof made = FREEAIR_DIAGNOSIS_PROOF_INIT;
  if (proof == NULL) return FREEAIR_ERR_NULL;
  int32_t status = freeair__structure_write(proof, &made, sizeof made, FREEAIR_DIAGNOSIS_PROOF_BASELINE);
  if ((causes == NULL && n_causes > 0) || (findings == NULL && n_findings > 0)) return FREEAIR_ERR_NULL;
  if (status < 0) return status;
  const double lowest = freeair__or(least, 0.9);
  const double required = freeair__or(confidence, 0.9);
  if (!freeair__upto(lowest, 0.0, 1.0) || !freeair__open(required, 0.5, 1.0) || n_causes > 1000u ||
      n_findings > 1000u || causes_stride > 65536u || findings_stride > 65536u)
    return FREEAIR_ERR_DOMAIN;
  if (cause < FIRST_FAULT || cause > LAST_FAULT) return FREEAIR_ERR_NOT_FOUND;
  status = judge_cause(cause, causes, causes_stride, n_causes, required, &made);
  if (status == FREEAIR_OK) status = judge_delivery(findings, findings_stride, n_findings, lowest, required, &made);
  if (status < 0) return status;
  if (made.gone == FREEAIR_VERDICT_MEETS && made.delivers == FREEAIR_VERDICT_MEETS)
    made.verdict = FREEAIR_VERDICT_MEETS;
  else if (made.gone == FREEAIR_VERDICT_FAILS || made.delivers == FREEAIR_VERDICT_FAILS)
    made.verdict = FREEAIR_VERDICT_FAILS;
  freeair__structure_write(proof, &made, sizeof made, FREEAIR_DIAGNOSIS_PROOF_BASELINE);
  return FREEAIR_OK;
}
