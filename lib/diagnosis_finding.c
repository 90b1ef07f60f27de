/* SPDX-License-Identifier: MIT */
#include <freeair/diagnosis_finding.h>
#include <freeair/likelihood.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/evidence_readings.h"
#include "internal/rows.h"

static const double standard_pressure = 101325.0;
static const double room_temperature = 293.15;

/* Values and uncertainties by code. */
typedef struct taken {
  double value[FREEAIR__READINGS];
  double u[FREEAIR__READINGS];
} taken;

static int32_t read_readings(const freeair_evidence_readings *from, taken *to)
{
  int32_t reading;
  int32_t n;
  int32_t status = freeair_evidence_readings_check(from, &reading, &n);
  if (status < 0) return status;
  for (int32_t r = 1; r < FREEAIR__READINGS; r++) freeair_evidence_readings_get(from, r, &to->value[r], &to->u[r]);
  return FREEAIR_OK;
}

/* Readings whose expectations err together: one pump-up test, one thermometer
 * and heat-transfer model, one motor load. */
enum { ALONE = 0, PUMP_UP = 1, TEMPERATURES = 2, LOAD = 3 };

static int family(int reading)
{
  switch (reading) {
  case FREEAIR_EVIDENCE_DELIVERY:
  case FREEAIR_EVIDENCE_TIME_FROM_EMPTY:
  case FREEAIR_EVIDENCE_TIME_FROM_CUTIN:
    return PUMP_UP;
  case FREEAIR_EVIDENCE_LP_DISCHARGE:
  case FREEAIR_EVIDENCE_HP_DISCHARGE:
    return TEMPERATURES;
  case FREEAIR_EVIDENCE_MOTOR_CURRENT:
  case FREEAIR_EVIDENCE_POWER:
    return LOAD;
  default:
    return ALONE;
  }
}

typedef struct comparison {
  const freeair_diagnosis_subject *subject;
  taken expected;
  taken found;
  int members[4];      /* readings of each family that were taken */
  double ambient_pa;
  double warmer_k;     /* site less that of the expectation */
  double ln_pressure;  /* logarithm of the ratio of its barometer */
} comparison;

static int can_read(const comparison *c, int reading)
{
  int32_t applies;
  freeair_diagnosis_subject_reading(c->subject, reading, &applies);
  return applies;
}

static void compare_sites(comparison *c)
{
  const double barometer = c->found.value[FREEAIR_EVIDENCE_BAROMETER];
  const double expected = c->expected.value[FREEAIR_EVIDENCE_BAROMETER];
  c->ambient_pa = freeair__or(freeair__or(barometer, expected), standard_pressure);
  c->ln_pressure = freeair__or(log(barometer / expected), 0.0);
  c->warmer_k =
      freeair__or(c->found.value[FREEAIR_EVIDENCE_AMBIENT] - c->expected.value[FREEAIR_EVIDENCE_AMBIENT], 0.0);
  for (int f = 0; f < 4; f++) c->members[f] = 0;
  for (int r = 1; r < FREEAIR__READINGS; r++)
    if (freeair__given(c->found.value[r]) && freeair__given(c->expected.value[r]) && can_read(c, r))
      c->members[family(r)]++;
}

/* What a reading's share is of; NaN where it is no share, or that is missing. */
static double reference_of(const comparison *c, int reading)
{
  switch (reading) {
  case FREEAIR_EVIDENCE_LEAK_ISOLATED:
  case FREEAIR_EVIDENCE_LEAK_OPEN:
    return freeair__or(c->expected.value[FREEAIR_EVIDENCE_DELIVERY], c->found.value[FREEAIR_EVIDENCE_DELIVERY]);
  case FREEAIR_EVIDENCE_GAUGE_DIFFERENCE:
    return freeair__or(c->expected.value[FREEAIR_EVIDENCE_CUTOUT], c->found.value[FREEAIR_EVIDENCE_CUTOUT]) -
           c->ambient_pa;
  case FREEAIR_EVIDENCE_FILTER_DROP:
    return c->ambient_pa;
  case FREEAIR_EVIDENCE_WATER:
    return c->subject->receiver_m3;
  case FREEAIR_EVIDENCE_DUTY:
    return 1.0;
  default:
    return NAN;
  }
}

/* Standard uncertainty of an expected value, in its unit: what its family
 * shares, and what a site unlike that of the expectation could move. */
static double expectation_spread(const comparison *c, int r, double usual, int32_t scale)
{
  const double expected = c->expected.value[r];
  if (family(r) == ALONE && r != FREEAIR_EVIDENCE_INTERSTAGE && r != FREEAIR_EVIDENCE_INTERCOOLER_OUTLET)
    return c->expected.u[r];
  const double own = freeair__or(c->expected.u[r], scale == FREEAIR_LIKELIHOOD_LOG ? usual * expected : usual);
  const double shared = family(r) != ALONE ? own * sqrt((double)c->members[family(r)]) : own;
  if (family(r) == PUMP_UP)
    return hypot(shared, expected * hypot(0.5 * c->warmer_k / room_temperature, c->ln_pressure));
  if (family(r) == TEMPERATURES || r == FREEAIR_EVIDENCE_INTERCOOLER_OUTLET) return hypot(shared, c->warmer_k);
  if (r == FREEAIR_EVIDENCE_INTERSTAGE) return hypot(shared, expected * c->ln_pressure);
  return shared;
}

static int32_t compare_one(const comparison *c, int r, freeair_diagnosis_finding *row)
{
  double u_found;
  double usual;
  double share;
  double wide;
  double affected;
  int32_t scale;
  row->reading = r;
  row->found = c->found.value[r];
  row->expected = c->expected.value[r];
  if (!can_read(c, r)) {
    row->use = FREEAIR_DIAGNOSIS_NOT_APPLICABLE;
    return FREEAIR_OK;
  }
  if (r == FREEAIR_EVIDENCE_LEVEL_OFF) {
    row->use = FREEAIR_DIAGNOSIS_USED;
    row->reference = c->ambient_pa;
    return FREEAIR_OK;
  }
  freeair_likelihood_spread(r, &u_found, &usual, &share, &wide, &affected, &scale);
  row->reference = reference_of(c, r);
  if (scale == FREEAIR_LIKELIHOOD_SHARE) {
    if (!freeair__closed(row->reference, 1e-9, 1e8)) return FREEAIR_OK;
    row->expected = freeair__or(row->expected, share * row->reference);
  }
  if (!freeair__given(row->expected)) return FREEAIR_OK;
  int32_t status = freeair_likelihood_deviation(r, row->found, c->found.u[r], row->expected,
                                                expectation_spread(c, r, usual, scale), row->reference,
                                                &row->deviation, &row->spread);
  if (status < 0) return status;
  row->residual = row->deviation / row->spread;
  row->use = FREEAIR_DIAGNOSIS_USED;
  return FREEAIR_OK;
}

int32_t freeair_diagnosis_finding_compare(
    const freeair_diagnosis_subject *subject, const freeair_evidence_readings *expected,
    const freeair_evidence_readings *found, freeair_diagnosis_finding *findings, size_t findings_stride,
    size_t findings_capacity, size_t *n_findings)
{
  static const freeair_diagnosis_finding blank = FREEAIR_DIAGNOSIS_FINDING_INIT;
  const freeair__rows rows = {findings, findings_stride, findings_capacity, sizeof blank,
                              FREEAIR_DIAGNOSIS_FINDING_BASELINE};
  if (n_findings != NULL) *n_findings = 0;
  const int32_t usable = freeair__rows_check(&rows);
  if (usable == FREEAIR_OK) freeair__rows_blank(&rows, &blank);
  if (subject == NULL || expected == NULL || found == NULL || n_findings == NULL) return FREEAIR_ERR_NULL;
  if (usable < 0) return usable;
  int32_t applies;
  comparison c = {.subject = subject};
  int32_t status = freeair_diagnosis_subject_reading(subject, FREEAIR_EVIDENCE_DELIVERY, &applies);
  if (status == FREEAIR_OK) status = read_readings(expected, &c.expected);
  if (status == FREEAIR_OK) status = read_readings(found, &c.found);
  if (status < 0) return status;
  compare_sites(&c);

  freeair_diagnosis_finding all[FREEAIR__READINGS];
  size_t n = 0;
  for (int r = 1; r < FREEAIR__READINGS; r++) {
    if (!freeair__given(c.found.value[r])) continue;
    all[n] = blank;
    status = compare_one(&c, r, &all[n++]);
    if (status < 0) return status;
  }
  for (size_t i = 0; i < n; i++) freeair__rows_put(&rows, i, &all[i]);
  *n_findings = n;
  return n > findings_capacity ? FREEAIR_WARN_TRUNCATED : FREEAIR_OK;
}

int32_t freeair_diagnosis_finding_value(int32_t reading, double expected, double reference, double deviation,
                                        double *value)
{
  if (value == NULL) return FREEAIR_ERR_NULL;
  *value = NAN;
  double none;
  int32_t scale;
  int32_t status = freeair_likelihood_spread(reading, &none, &none, &none, &none, &none, &scale);
  if (status < 0) return status;
  if (!freeair__closed(expected, -1e8, 1e8) || !freeair__closed(deviation, -600.0, 600.0) ||
      (freeair__given(reference) && !freeair__closed(reference, 1e-9, 1e8)))
    return FREEAIR_ERR_DOMAIN;
  if (scale == FREEAIR_LIKELIHOOD_NO_SCALE) return FREEAIR_ERR_UNSUPPORTED;
  if (scale == FREEAIR_LIKELIHOOD_SHARE && !freeair__given(reference)) return FREEAIR_ERR_DOMAIN;
  if (scale == FREEAIR_LIKELIHOOD_LOG) {
    *value = expected * exp(deviation);
  } else {
    *value = expected + deviation * (scale == FREEAIR_LIKELIHOOD_SHARE ? reference : 1.0);
  }
  return FREEAIR_OK;
}
