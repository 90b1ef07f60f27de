/* SPDX-License-Identifier: MIT */
#include <freeair/evidence_readings.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/structure.h"

/* Ranges of the values in the order of the codes. Every upper end belongs to
 * the range. An uncertainty runs from 0 to most. */
static const struct {
  double lower;
  double upper;
  double most;
  int lower_open;
} ranges[] = {
    {0.0, 1000.0, 1000.0, 1}, /* delivery_m3_s */
    {0.0, 10000000.0, 10000000.0, 1}, /* t_empty_to_cutout_s */
    {0.0, 10000000.0, 10000000.0, 1}, /* t_cutin_to_cutout_s */
    {0.0, 100000000.0, 100000000.0, 1}, /* p_level_off_pa */
    {0.0, 100000000.0, 100000000.0, 1}, /* p_interstage_pa */
    {0.0, 5000.0, 2000.0, 1}, /* t_lp_discharge_k */
    {0.0, 5000.0, 2000.0, 1}, /* t_hp_discharge_k */
    {0.0, 5000.0, 2000.0, 1}, /* t_intercooler_out_k */
    {0.0, 1000.0, 1000.0, 1}, /* motor_speed_rev_s */
    {0.0, 1000.0, 1000.0, 1}, /* pump_speed_rev_s */
    {0.0, 100000.0, 100000.0, 1}, /* supply_running_v */
    {0.0, 100000.0, 100000.0, 1}, /* supply_starting_v */
    {0.0, 100000.0, 100000.0, 1}, /* motor_current_a */
    {0.0, 100000000.0, 100000000.0, 1}, /* power_w */
    {0.0, 1.0, 1.0, 1}, /* run_capacitance_f */
    {0.0, 1.0, 1.0, 1}, /* start_capacitance_f */
    {0.0, 1000.0, 1000.0, 0}, /* leak_isolated_m3_s */
    {0.0, 1000.0, 1000.0, 0}, /* leak_open_m3_s */
    {-10000000.0, 10000000.0, 10000000.0, 0}, /* gauge_difference_pa */
    {0.0, 100000000.0, 100000000.0, 1}, /* p_cutout_pa */
    {0.0, 100000000.0, 100000000.0, 1}, /* p_relief_opening_pa */
    {0.0, 1000000.0, 1000000.0, 0}, /* filter_drop_pa */
    {0.0, 1.0, 1.0, 1}, /* belt_deflection_m */
    {0.0, 10000.0, 10000.0, 0}, /* water_m3 */
    {0.0, 1.0, 1.0, 0}, /* duty */
    {200.0, 350.0, 350.0, 0}, /* t_ambient_k */
    {20000.0, 130000.0, 130000.0, 0}, /* p_ambient_pa */
};

_Static_assert(sizeof(freeair_evidence_readings) == FREEAIR_EVIDENCE_READINGS_BASELINE, "fields and codes agree");
_Static_assert(sizeof(freeair_evidence_readings) == 8 + 16 * FREEAIR__COUNT(ranges), "a range for every reading");

/* Field of a code: value and uncertainty stand side by side. */
static void get(const freeair_evidence_readings *r, size_t i, double pair[2])
{
  memcpy(pair, (const unsigned char *)r + offsetof(freeair_evidence_readings, delivery_m3_s) + i * 2 * sizeof(double),
         2 * sizeof(double));
}

/* Reads the caller's structure and looks at its ranges; names the reading that is out of range. */
static int32_t read(const freeair_evidence_readings *readings, freeair_evidence_readings *known, int32_t *reading,
                    int32_t *n_taken)
{
  *reading = FREEAIR_EVIDENCE_READING_NONE;
  *n_taken = 0;
  *known = (freeair_evidence_readings)FREEAIR_EVIDENCE_READINGS_INIT;
  int32_t status = freeair__structure_read(known, sizeof *known, readings, FREEAIR_EVIDENCE_READINGS_BASELINE);
  if (status < 0) return status;
  if (known->flags != 0) return FREEAIR_ERR_DOMAIN;
  int32_t taken = 0;
  for (size_t i = 0; i < FREEAIR__COUNT(ranges); i++) {
    double pair[2];
    get(known, i, pair);
    int in = ranges[i].lower_open ? freeair__upto(pair[0], ranges[i].lower, ranges[i].upper)
                                  : freeair__closed(pair[0], ranges[i].lower, ranges[i].upper);
    if ((freeair__given(pair[0]) && !in) ||
        (freeair__given(pair[1]) && !freeair__closed(pair[1], 0.0, ranges[i].most))) {
      *reading = (int32_t)i + 1;
      return FREEAIR_ERR_DOMAIN;
    }
    taken += freeair__given(pair[0]);
  }
  *n_taken = taken;
  return FREEAIR_OK;
}

int32_t freeair_evidence_readings_get(const freeair_evidence_readings *readings, int32_t reading, double *value,
                                      double *uncertainty)
{
  freeair__set_nan(value);
  freeair__set_nan(uncertainty);
  if (readings == NULL || value == NULL || uncertainty == NULL) return FREEAIR_ERR_NULL;
  freeair_evidence_readings known;
  int32_t first;
  int32_t n_taken;
  int32_t status = read(readings, &known, &first, &n_taken);
  if (status < 0) return status;
  if (reading < 1 || (size_t)reading > FREEAIR__COUNT(ranges)) return FREEAIR_ERR_NOT_FOUND;
  double pair[2];
  get(&known, (size_t)reading - 1, pair);
  *value = pair[0];
  *uncertainty = pair[1];
  return FREEAIR_OK;
}

int32_t freeair_evidence_readings_check(const freeair_evidence_readings *readings, int32_t *reading, int32_t *n_taken)
{
  if (reading != NULL) *reading = FREEAIR_EVIDENCE_READING_NONE;
  if (n_taken != NULL) *n_taken = 0;
  if (readings == NULL || reading == NULL || n_taken == NULL) return FREEAIR_ERR_NULL;
  freeair_evidence_readings known;
  return read(readings, &known, reading, n_taken);
}
