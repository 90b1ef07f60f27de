/* SPDX-License-Identifier: MIT */
/* Written by bindings/generate; do not edit. */
#include <freeair/freeair.h>

#include "internal/structure.h"

int32_t freeair_dry_air_properties_init(freeair_dry_air_properties *properties, size_t caller_size)
{
  static const freeair_dry_air_properties initial = FREEAIR_DRY_AIR_PROPERTIES_INIT;
  return freeair__structure_init(properties, caller_size, &initial, sizeof initial,
                                 FREEAIR_DRY_AIR_PROPERTIES_BASELINE);
}

int32_t freeair_enhancement_coefficients_init(freeair_enhancement_coefficients *coefficients, size_t caller_size)
{
  static const freeair_enhancement_coefficients initial = FREEAIR_ENHANCEMENT_COEFFICIENTS_INIT;
  return freeair__structure_init(coefficients, caller_size, &initial, sizeof initial,
                                 FREEAIR_ENHANCEMENT_COEFFICIENTS_BASELINE);
}

int32_t freeair_moist_air_properties_init(freeair_moist_air_properties *properties, size_t caller_size)
{
  static const freeair_moist_air_properties initial = FREEAIR_MOIST_AIR_PROPERTIES_INIT;
  return freeair__structure_init(properties, caller_size, &initial, sizeof initial,
                                 FREEAIR_MOIST_AIR_PROPERTIES_BASELINE);
}

int32_t freeair_humidity_given_init(freeair_humidity_given *given, size_t caller_size)
{
  static const freeair_humidity_given initial = FREEAIR_HUMIDITY_GIVEN_INIT;
  return freeair__structure_init(given, caller_size, &initial, sizeof initial,
                                 FREEAIR_HUMIDITY_GIVEN_BASELINE);
}

int32_t freeair_humidity_found_init(freeair_humidity_found *found, size_t caller_size)
{
  static const freeair_humidity_found initial = FREEAIR_HUMIDITY_FOUND_INIT;
  return freeair__structure_init(found, caller_size, &initial, sizeof initial,
                                 FREEAIR_HUMIDITY_FOUND_BASELINE);
}

int32_t freeair_condensate_flow_init(freeair_condensate_flow *flow, size_t caller_size)
{
  static const freeair_condensate_flow initial = FREEAIR_CONDENSATE_FLOW_INIT;
  return freeair__structure_init(flow, caller_size, &initial, sizeof initial,
                                 FREEAIR_CONDENSATE_FLOW_BASELINE);
}

int32_t freeair_capacitor_motor_windings_init(freeair_capacitor_motor_windings *windings, size_t caller_size)
{
  static const freeair_capacitor_motor_windings initial = FREEAIR_CAPACITOR_MOTOR_WINDINGS_INIT;
  return freeair__structure_init(windings, caller_size, &initial, sizeof initial,
                                 FREEAIR_CAPACITOR_MOTOR_WINDINGS_BASELINE);
}

int32_t freeair_capacitor_motor_performance_init(freeair_capacitor_motor_performance *performance, size_t caller_size)
{
  static const freeair_capacitor_motor_performance initial = FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_INIT;
  return freeair__structure_init(performance, caller_size, &initial, sizeof initial,
                                 FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_BASELINE);
}

int32_t freeair_isothermal_pipe_init(freeair_isothermal_pipe *pipe, size_t caller_size)
{
  static const freeair_isothermal_pipe initial = FREEAIR_ISOTHERMAL_PIPE_INIT;
  return freeair__structure_init(pipe, caller_size, &initial, sizeof initial,
                                 FREEAIR_ISOTHERMAL_PIPE_BASELINE);
}

int32_t freeair_blowdown_vessel_init(freeair_blowdown_vessel *vessel, size_t caller_size)
{
  static const freeair_blowdown_vessel initial = FREEAIR_BLOWDOWN_VESSEL_INIT;
  return freeair__structure_init(vessel, caller_size, &initial, sizeof initial,
                                 FREEAIR_BLOWDOWN_VESSEL_BASELINE);
}

int32_t freeair_acceptance_test_init(freeair_acceptance_test *test, size_t caller_size)
{
  static const freeair_acceptance_test initial = FREEAIR_ACCEPTANCE_TEST_INIT;
  return freeair__structure_init(test, caller_size, &initial, sizeof initial,
                                 FREEAIR_ACCEPTANCE_TEST_BASELINE);
}

int32_t freeair_delivery_stage_init(freeair_delivery_stage *stage, size_t caller_size)
{
  static const freeair_delivery_stage initial = FREEAIR_DELIVERY_STAGE_INIT;
  return freeair__structure_init(stage, caller_size, &initial, sizeof initial,
                                 FREEAIR_DELIVERY_STAGE_BASELINE);
}

int32_t freeair_delivery_result_init(freeair_delivery_result *result, size_t caller_size)
{
  static const freeair_delivery_result initial = FREEAIR_DELIVERY_RESULT_INIT;
  return freeair__structure_init(result, caller_size, &initial, sizeof initial,
                                 FREEAIR_DELIVERY_RESULT_BASELINE);
}

int32_t freeair_intercooler_stages_init(freeair_intercooler_stages *stages, size_t caller_size)
{
  static const freeair_intercooler_stages initial = FREEAIR_INTERCOOLER_STAGES_INIT;
  return freeair__structure_init(stages, caller_size, &initial, sizeof initial,
                                 FREEAIR_INTERCOOLER_STAGES_BASELINE);
}

int32_t freeair_machine_init(freeair_machine *machine, size_t caller_size)
{
  static const freeair_machine initial = FREEAIR_MACHINE_INIT;
  return freeair__structure_init(machine, caller_size, &initial, sizeof initial,
                                 FREEAIR_MACHINE_BASELINE);
}

int32_t freeair_machine_site_init(freeair_machine_site *site, size_t caller_size)
{
  static const freeair_machine_site initial = FREEAIR_MACHINE_SITE_INIT;
  return freeair__structure_init(site, caller_size, &initial, sizeof initial,
                                 FREEAIR_MACHINE_SITE_BASELINE);
}

int32_t freeair_cycle_result_init(freeair_cycle_result *point, size_t caller_size)
{
  static const freeair_cycle_result initial = FREEAIR_CYCLE_RESULT_INIT;
  return freeair__structure_init(point, caller_size, &initial, sizeof initial,
                                 FREEAIR_CYCLE_RESULT_BASELINE);
}

int32_t freeair_prediction_run_init(freeair_prediction_run *run, size_t caller_size)
{
  static const freeair_prediction_run initial = FREEAIR_PREDICTION_RUN_INIT;
  return freeair__structure_init(run, caller_size, &initial, sizeof initial,
                                 FREEAIR_PREDICTION_RUN_BASELINE);
}

int32_t freeair_prediction_result_init(freeair_prediction_result *result, size_t caller_size)
{
  static const freeair_prediction_result initial = FREEAIR_PREDICTION_RESULT_INIT;
  return freeair__structure_init(result, caller_size, &initial, sizeof initial,
                                 FREEAIR_PREDICTION_RESULT_BASELINE);
}

int32_t freeair_pumpup_test_init(freeair_pumpup_test *test, size_t caller_size)
{
  static const freeair_pumpup_test initial = FREEAIR_PUMPUP_TEST_INIT;
  return freeair__structure_init(test, caller_size, &initial, sizeof initial,
                                 FREEAIR_PUMPUP_TEST_BASELINE);
}

int32_t freeair_pumpup_result_init(freeair_pumpup_result *result, size_t caller_size)
{
  static const freeair_pumpup_result initial = FREEAIR_PUMPUP_RESULT_INIT;
  return freeair__structure_init(result, caller_size, &initial, sizeof initial,
                                 FREEAIR_PUMPUP_RESULT_BASELINE);
}

int32_t freeair_expectation_machine_init(freeair_expectation_machine *machine, size_t caller_size)
{
  static const freeair_expectation_machine initial = FREEAIR_EXPECTATION_MACHINE_INIT;
  return freeair__structure_init(machine, caller_size, &initial, sizeof initial,
                                 FREEAIR_EXPECTATION_MACHINE_BASELINE);
}

int32_t freeair_expectation_result_init(freeair_expectation_result *result, size_t caller_size)
{
  static const freeair_expectation_result initial = FREEAIR_EXPECTATION_RESULT_INIT;
  return freeair__structure_init(result, caller_size, &initial, sizeof initial,
                                 FREEAIR_EXPECTATION_RESULT_BASELINE);
}

int32_t freeair_pumpup_curve_shape_init(freeair_pumpup_curve_shape *shape, size_t caller_size)
{
  static const freeair_pumpup_curve_shape initial = FREEAIR_PUMPUP_CURVE_SHAPE_INIT;
  return freeair__structure_init(shape, caller_size, &initial, sizeof initial,
                                 FREEAIR_PUMPUP_CURVE_SHAPE_BASELINE);
}

int32_t freeair_pressure_log_options_init(freeair_pressure_log_options *options, size_t caller_size)
{
  static const freeair_pressure_log_options initial = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;
  return freeair__structure_init(options, caller_size, &initial, sizeof initial,
                                 FREEAIR_PRESSURE_LOG_OPTIONS_BASELINE);
}

int32_t freeair_pressure_log_phase_init(freeair_pressure_log_phase *phase, size_t caller_size)
{
  static const freeair_pressure_log_phase initial = FREEAIR_PRESSURE_LOG_PHASE_INIT;
  return freeair__structure_init(phase, caller_size, &initial, sizeof initial,
                                 FREEAIR_PRESSURE_LOG_PHASE_BASELINE);
}

int32_t freeair_duty_summary_init(freeair_duty_summary *summary, size_t caller_size)
{
  static const freeair_duty_summary initial = FREEAIR_DUTY_SUMMARY_INIT;
  return freeair__structure_init(summary, caller_size, &initial, sizeof initial,
                                 FREEAIR_DUTY_SUMMARY_BASELINE);
}

int32_t freeair_evidence_readings_init(freeair_evidence_readings *readings, size_t caller_size)
{
  static const freeair_evidence_readings initial = FREEAIR_EVIDENCE_READINGS_INIT;
  return freeair__structure_init(readings, caller_size, &initial, sizeof initial,
                                 FREEAIR_EVIDENCE_READINGS_BASELINE);
}

int32_t freeair_diagnosis_subject_init(freeair_diagnosis_subject *subject, size_t caller_size)
{
  static const freeair_diagnosis_subject initial = FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  return freeair__structure_init(subject, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_SUBJECT_BASELINE);
}

int32_t freeair_diagnosis_finding_init(freeair_diagnosis_finding *finding, size_t caller_size)
{
  static const freeair_diagnosis_finding initial = FREEAIR_DIAGNOSIS_FINDING_INIT;
  return freeair__structure_init(finding, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_FINDING_BASELINE);
}

int32_t freeair_diagnosis_cause_init(freeair_diagnosis_cause *cause, size_t caller_size)
{
  static const freeair_diagnosis_cause initial = FREEAIR_DIAGNOSIS_CAUSE_INIT;
  return freeair__structure_init(cause, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_CAUSE_BASELINE);
}

int32_t freeair_diagnosis_check_init(freeair_diagnosis_check *check, size_t caller_size)
{
  static const freeair_diagnosis_check initial = FREEAIR_DIAGNOSIS_CHECK_INIT;
  return freeair__structure_init(check, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_CHECK_BASELINE);
}

int32_t freeair_diagnosis_proof_init(freeair_diagnosis_proof *proof, size_t caller_size)
{
  static const freeair_diagnosis_proof initial = FREEAIR_DIAGNOSIS_PROOF_INIT;
  return freeair__structure_init(proof, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_PROOF_BASELINE);
}

int32_t freeair_diagnosis_options_init(freeair_diagnosis_options *options, size_t caller_size)
{
  static const freeair_diagnosis_options initial = FREEAIR_DIAGNOSIS_OPTIONS_INIT;
  return freeair__structure_init(options, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_OPTIONS_BASELINE);
}

int32_t freeair_diagnosis_reason_init(freeair_diagnosis_reason *reason, size_t caller_size)
{
  static const freeair_diagnosis_reason initial = FREEAIR_DIAGNOSIS_REASON_INIT;
  return freeair__structure_init(reason, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_REASON_BASELINE);
}

int32_t freeair_diagnosis_summary_init(freeair_diagnosis_summary *summary, size_t caller_size)
{
  static const freeair_diagnosis_summary initial = FREEAIR_DIAGNOSIS_SUMMARY_INIT;
  return freeair__structure_init(summary, caller_size, &initial, sizeof initial,
                                 FREEAIR_DIAGNOSIS_SUMMARY_BASELINE);
}

int32_t freeair_inference_visit_init(freeair_inference_visit *visit, size_t caller_size)
{
  static const freeair_inference_visit initial = FREEAIR_INFERENCE_VISIT_INIT;
  return freeair__structure_init(visit, caller_size, &initial, sizeof initial,
                                 FREEAIR_INFERENCE_VISIT_BASELINE);
}

int32_t freeair_inference_scatter_init(freeair_inference_scatter *scatter, size_t caller_size)
{
  static const freeair_inference_scatter initial = FREEAIR_INFERENCE_SCATTER_INIT;
  return freeair__structure_init(scatter, caller_size, &initial, sizeof initial,
                                 FREEAIR_INFERENCE_SCATTER_BASELINE);
}

int32_t freeair_inference_effect_init(freeair_inference_effect *effect, size_t caller_size)
{
  static const freeair_inference_effect initial = FREEAIR_INFERENCE_EFFECT_INIT;
  return freeair__structure_init(effect, caller_size, &initial, sizeof initial,
                                 FREEAIR_INFERENCE_EFFECT_BASELINE);
}
