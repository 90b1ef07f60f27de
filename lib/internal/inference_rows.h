/* SPDX-License-Identifier: MIT */
/* What was inferred, as rows of the answer. */
#ifndef FREEAIR_INTERNAL_INFERENCE_ROWS_H
#define FREEAIR_INTERNAL_INFERENCE_ROWS_H

#include "internal/inference_weights.h"

/* What a cause does, with the size and severity of its row. */
void freeair__inference_effect(const freeair__inference *from, const freeair_inference_visit *visit,
                               freeair_diagnosis_cause *cause, freeair_inference_effect *effect);

/* One finding for each reading; returns how many. */
size_t freeair__inference_findings(const freeair__inference *from, const freeair_evidence_readings *found,
                                   const freeair_diagnosis_options *options, freeair_diagnosis_finding *all,
                                   freeair_diagnosis_summary *summary);

/* Puts the reasons of each cause; returns how many there are. */
size_t freeair__inference_reasons(const freeair__inference *from, const freeair__ranking *by,
                                  const freeair_diagnosis_finding *findings, size_t n_findings,
                                  const freeair__rows *rows);

#endif
