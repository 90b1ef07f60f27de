/* SPDX-License-Identifier: MIT */
#include <freeair/cycle.h>
#include <freeair/diagnosis_expectation.h>
#include <freeair/prediction.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/structure.h"

static const double u_interstage = 0.10;
static const double u_temperature_k = 15.0;
static const double accuracy = 1e-3;

/* Times and delivery of a pump-up from the given start. */
static int32_t pump_up(const freeair_machine *machine, const freeair_machine_site *site, int32_t start, double from_pa,
                       freeair_prediction_result *result)
{
  freeair_prediction_run run = FREEAIR_PREDICTION_RUN_INIT;
  double t_s[2];
  double p_pa[2];
  double gas_k[2];
  double delivery_m3_s[2];
  run.start = start;
  run.from_pa = from_pa;
  run.accuracy = accuracy;
  return freeair_prediction_pumpup(machine, site, &run, result, t_s, p_pa, gas_k, delivery_m3_s, 2);
}

static int32_t expect_times(const freeair_machine *given, const freeair_machine *machine,
                            const freeair_machine_site *site, freeair_evidence_readings *expected)
{
  freeair_prediction_result result = FREEAIR_PREDICTION_RESULT_INIT;
  if (!freeair__given(given->receiver_m3) || !freeair__given(given->cut_out_pa)) return FREEAIR_OK;
  int32_t status = pump_up(machine, site, FREEAIR_PREDICTION_SOAKED, NAN, &result);
  if (status != FREEAIR_OK) return status;
  expected->t_empty_to_cutout_s = result.time_s;
  expected->delivery_m3_s = result.mean_delivery_m3_s;
  if (!freeair__given(given->cut_in_pa)) return FREEAIR_OK;
  status = pump_up(machine, site, FREEAIR_PREDICTION_DRAWN_DOWN, machine->cut_in_pa, &result);
  if (status == FREEAIR_OK) expected->t_cutin_to_cutout_s = result.time_s;
  return status;
}

static int32_t expect_point(const freeair_machine *given, const freeair_machine *machine,
                            const freeair_machine_site *site, double receiver_pa, freeair_evidence_readings *expected)
{
  freeair_cycle_result point = FREEAIR_CYCLE_RESULT_INIT;
  int32_t status = freeair_cycle_point(machine, site, receiver_pa, NAN, accuracy, &point);
  if (status < 0) return status;
  expected->t_lp_discharge_k = point.lp_discharge_k;
  expected->u_t_lp_discharge_k = u_temperature_k;
  if (machine->stages == 2) {
    expected->p_interstage_pa = point.interstage_mean_pa;
    expected->u_p_interstage_pa = u_interstage * point.interstage_mean_pa;
    expected->t_hp_discharge_k = point.hp_discharge_k;
    expected->u_t_hp_discharge_k = u_temperature_k;
    expected->t_intercooler_out_k = point.intercooler_k;
    expected->u_t_intercooler_out_k = u_temperature_k;
  }
  if (freeair__given(given->motor_synchronous_rev_s)) expected->motor_speed_rev_s = point.motor_speed_rev_s;
  expected->pump_speed_rev_s = point.speed_rev_s;
  expected->filter_drop_pa = fmax(site->barometric_pa - point.plenum_pa, 0.0);
  return status;
}

int32_t freeair_diagnosis_expectation_from_machine(const freeair_machine *machine, const freeair_machine_site *site,
                                                   double receiver_pa, freeair_diagnosis_subject *subject,
                                                   freeair_evidence_readings *expected)
{
  freeair_diagnosis_subject s = FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  freeair_evidence_readings e = FREEAIR_EVIDENCE_READINGS_INIT;
  int32_t status = FREEAIR_OK;
  if (subject != NULL)
    status = freeair__structure_write(subject, &s, sizeof s, FREEAIR_DIAGNOSIS_SUBJECT_BASELINE);
  if (expected != NULL) {
    int32_t other = freeair__structure_write(expected, &e, sizeof e, FREEAIR_EVIDENCE_READINGS_BASELINE);
    if (status == FREEAIR_OK) status = other;
  }
  if (machine == NULL || site == NULL || subject == NULL || expected == NULL) return FREEAIR_ERR_NULL;
  if (status < 0) return status;

  freeair_machine given = FREEAIR_MACHINE_INIT;
  freeair_machine whole = FREEAIR_MACHINE_INIT;
  freeair_machine_site here = FREEAIR_MACHINE_SITE_INIT;
  status = freeair__structure_read(&given, sizeof given, machine, FREEAIR_MACHINE_BASELINE);
  if (status == FREEAIR_OK) status = freeair__structure_read(&here, sizeof here, site, FREEAIR_MACHINE_SITE_BASELINE);
  if (status < 0) return status;
  if (freeair__given(here.supply_v) && !freeair__upto(here.supply_v, 0.0, 1e5)) return FREEAIR_ERR_DOMAIN;
  if (freeair__given(receiver_pa) && !freeair__upto(receiver_pa, 0.0, 1e8)) return FREEAIR_ERR_DOMAIN;
  given.struct_size = (uint32_t)sizeof given;
  here.struct_size = (uint32_t)sizeof here;
  status = freeair_machine_complete(&given, &whole);
  if (status < 0) return status;
  here.supply_v = NAN;
  here.barometric_pa = freeair__or(here.barometric_pa, 101325.0);
  here.ambient_k = freeair__or(here.ambient_k, 293.15);

  status = expect_point(&given, &whole, &here, freeair__or(receiver_pa, whole.cut_out_pa), &e);
  if (status < 0) return status;
  status = expect_times(&given, &whole, &here, &e);
  if (status < 0) return status;
  e.supply_running_v = given.motor_rated_v;
  e.p_cutout_pa = given.cut_out_pa;
  if (whole.stages == 2) e.p_relief_opening_pa = given.relief_set_pa;
  e.t_ambient_k = here.ambient_k;
  e.p_ambient_pa = here.barometric_pa;

  s.receiver_m3 = given.receiver_m3;
  s.stages = whole.stages;
  s.cylinders = whole.lp_cylinders + (whole.stages == 2 ? whole.hp_cylinders : 0);
  s.head = whole.arrangement == FREEAIR_MACHINE_SIDE_BY_SIDE ? FREEAIR_DIAGNOSIS_HEAD_SHARED
                                                             : FREEAIR_DIAGNOSIS_HEAD_SEPARATE;
  freeair__structure_write(subject, &s, sizeof s, FREEAIR_DIAGNOSIS_SUBJECT_BASELINE);
  freeair__structure_write(expected, &e, sizeof e, FREEAIR_EVIDENCE_READINGS_BASELINE);
  return status;
}
