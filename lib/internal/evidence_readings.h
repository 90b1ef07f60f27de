/* SPDX-License-Identifier: MIT */
/* How many codes the evidence has of each kind. */
#ifndef FREEAIR_INTERNAL_EVIDENCE_READINGS_H
#define FREEAIR_INTERNAL_EVIDENCE_READINGS_H

#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>

/* Arrays are indexed by code; 0 is not a code. */
enum {
  FREEAIR__CAUSES = FREEAIR_EVIDENCE_GAUGE_OR_SWITCH + 1,
  FREEAIR__READINGS = FREEAIR_EVIDENCE_BAROMETER + 1,
  FREEAIR__OBSERVATIONS = FREEAIR_EVIDENCE_GASKET_BURNT + 1,
  FREEAIR__CHECKS = FREEAIR_EVIDENCE_READ_SITE + 1,
  FREEAIR__FIRST_FAULT = FREEAIR_EVIDENCE_INTAKE_FILTER
};

#endif
