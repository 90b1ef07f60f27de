/* SPDX-License-Identifier: MIT */
#include <freeair/diagnosis_subject.h>
#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/structure.h"

static int32_t read_subject(const freeair_diagnosis_subject *from, freeair_diagnosis_subject *to)
{
  *to = (freeair_diagnosis_subject)FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  int32_t status = freeair__structure_read(to, sizeof *to, from, FREEAIR_DIAGNOSIS_SUBJECT_BASELINE);
  if (status < 0) return status;
  if (to->flags != 0 || (freeair__given(to->receiver_m3) && !freeair__upto(to->receiver_m3, 0.0, 1e4)) ||
      to->stages < 0 || to->stages > 2 || to->cylinders < 0 || to->cylinders > 16 || to->head < 0 ||
      to->head > FREEAIR_DIAGNOSIS_HEAD_SHARED || to->drive < 0 || to->drive > FREEAIR_DIAGNOSIS_DRIVE_DIRECT ||
      to->supply < 0 || to->supply > FREEAIR_DIAGNOSIS_ENGINE || to->service_valve_closed < 0 ||
      to->service_valve_closed > FREEAIR_EVIDENCE_NO)
    return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

/* How much of a cause's prior is left on this machine. */
static double fits(const freeair_diagnosis_subject *s, int cause)
{
  switch (cause) {
  case FREEAIR_EVIDENCE_HP_SUCTION_VALVE:
  case FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE:
  case FREEAIR_EVIDENCE_INTERSTAGE_LEAK:
  case FREEAIR_EVIDENCE_INTERCOOLER_FOULED:
  case FREEAIR_EVIDENCE_RELIEF_WEAK:
    return s->stages == 1 ? 0.0 : 1.0;
  case FREEAIR_EVIDENCE_GASKET_BETWEEN:
    if (s->head == FREEAIR_DIAGNOSIS_HEAD_SEPARATE || s->cylinders == 1) return 0.0;
    return s->head == FREEAIR_DIAGNOSIS_HEAD_SHARED ? 2.0 : 1.0;
  case FREEAIR_EVIDENCE_BELT_SLIP:
  case FREEAIR_EVIDENCE_WRONG_PULLEY:
    return s->drive == FREEAIR_DIAGNOSIS_DRIVE_DIRECT ? 0.0 : 1.0;
  case FREEAIR_EVIDENCE_LOW_VOLTAGE:
    return s->supply == FREEAIR_DIAGNOSIS_ENGINE ? 0.0 : 1.0;
  case FREEAIR_EVIDENCE_RUN_CAPACITOR:
  case FREEAIR_EVIDENCE_START_CAPACITOR:
    return s->supply == FREEAIR_DIAGNOSIS_ENGINE || s->supply == FREEAIR_DIAGNOSIS_THREE_PHASE ? 0.0 : 1.0;
  default:
    return 1.0;
  }
}

/* Whether this machine has what a reading is read from. */
static int can_read(const freeair_diagnosis_subject *s, int reading)
{
  switch (reading) {
  case FREEAIR_EVIDENCE_INTERSTAGE:
  case FREEAIR_EVIDENCE_HP_DISCHARGE:
  case FREEAIR_EVIDENCE_INTERCOOLER_OUTLET:
  case FREEAIR_EVIDENCE_RELIEF_OPENING:
    return s->stages != 1;
  case FREEAIR_EVIDENCE_BELT_DEFLECTION:
    return s->drive != FREEAIR_DIAGNOSIS_DRIVE_DIRECT;
  case FREEAIR_EVIDENCE_SUPPLY_RUNNING:
  case FREEAIR_EVIDENCE_SUPPLY_STARTING:
  case FREEAIR_EVIDENCE_MOTOR_CURRENT:
  case FREEAIR_EVIDENCE_POWER:
    return s->supply != FREEAIR_DIAGNOSIS_ENGINE;
  case FREEAIR_EVIDENCE_RUN_CAPACITANCE:
  case FREEAIR_EVIDENCE_START_CAPACITANCE:
    return s->supply != FREEAIR_DIAGNOSIS_ENGINE && s->supply != FREEAIR_DIAGNOSIS_THREE_PHASE;
  default:
    return 1;
  }
}

int32_t freeair_diagnosis_subject_cause(const freeair_diagnosis_subject *subject, int32_t cause, double *factor)
{
  freeair__set_nan(factor);
  if (subject == NULL || factor == NULL) return FREEAIR_ERR_NULL;
  freeair_diagnosis_subject s;
  int32_t status = read_subject(subject, &s);
  if (status < 0) return status;
  if (cause < 1 || cause >= freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE)) return FREEAIR_ERR_NOT_FOUND;
  *factor = fits(&s, cause);
  return FREEAIR_OK;
}

int32_t freeair_diagnosis_subject_reading(const freeair_diagnosis_subject *subject, int32_t reading, int32_t *applies)
{
  if (applies != NULL) *applies = 0;
  if (subject == NULL || applies == NULL) return FREEAIR_ERR_NULL;
  freeair_diagnosis_subject s;
  int32_t status = read_subject(subject, &s);
  if (status < 0) return status;
  if (reading < 1 || reading >= freeair_evidence_count(FREEAIR_EVIDENCE_KIND_READING)) return FREEAIR_ERR_NOT_FOUND;
  *applies = can_read(&s, reading);
  return FREEAIR_OK;
}
