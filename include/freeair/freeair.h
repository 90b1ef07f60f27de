/* SPDX-License-Identifier: MIT */
/* Written by bindings/generate from freeair.h.in; do not edit. */
/** @file
 * libfreeair: compressed-air engineering functions.
 *
 * Everything is coherent SI: pascal absolute, kelvin, cubic metre, second,
 * kilogram, watt. The unit of a parameter or field is the end of its name. A
 * pressure read on a gauge becomes absolute with the barometer
 * (freeair_units_absolute_from_gauge); a volume flow of "free", "normal" or
 * "standard" air means nothing without its reference state
 * (freeair_reference_conditions).
 *
 * A call returns FREEAIR_OK (0), a positive warning with a valid result, or a
 * negative error with every output NaN. Nothing is allocated, printed or kept:
 * every function may be called from any thread at any time.
 *
 * Each header below is one topic; start with the one whose name is the term in
 * your handbook.
 */
#ifndef FREEAIR_FREEAIR_H
#define FREEAIR_FREEAIR_H

#include <freeair/export.h>
#include <freeair/status.h>
#include <freeair/version.h>
#include <freeair/caution.h>
#include <freeair/units.h>
#include <freeair/reference.h>
#include <freeair/verdict.h>
#include <freeair/coverage.h>
#include <freeair/atmosphere.h>
#include <freeair/dry_air.h>
#include <freeair/dry_air_ideal.h>
#include <freeair/dry_air_transport.h>
#include <freeair/saturation.h>
#include <freeair/enhancement.h>
#include <freeair/moist_air.h>
#include <freeair/dew_point.h>
#include <freeair/wet_bulb.h>
#include <freeair/humidity.h>
#include <freeair/condensate.h>
#include <freeair/impedance.h>
#include <freeair/supply.h>
#include <freeair/unbalance.h>
#include <freeair/motor.h>
#include <freeair/nameplate.h>
#include <freeair/capacitor.h>
#include <freeair/capacitor_motor.h>
#include <freeair/pulley.h>
#include <freeair/belt.h>
#include <freeair/belt_section.h>
#include <freeair/flow.h>
#include <freeair/nozzle.h>
#include <freeair/conductance.h>
#include <freeair/coefficient.h>
#include <freeair/safety.h>
#include <freeair/pipe.h>
#include <freeair/fitting.h>
#include <freeair/isothermal.h>
#include <freeair/fanno.h>
#include <freeair/ring_main.h>
#include <freeair/compression.h>
#include <freeair/performance.h>
#include <freeair/multistage.h>
#include <freeair/real_compression.h>
#include <freeair/real_polytropic.h>
#include <freeair/rotary.h>
#include <freeair/conductor.h>
#include <freeair/fastener.h>
#include <freeair/receiver.h>
#include <freeair/blowdown.h>
#include <freeair/vessel.h>
#include <freeair/leakage.h>
#include <freeair/demand.h>
#include <freeair/energy.h>
#include <freeair/purity.h>
#include <freeair/acceptance.h>
#include <freeair/cylinder.h>
#include <freeair/delivery.h>
#include <freeair/intercooler.h>
#include <freeair/wet_cooler.h>
#include <freeair/indicator.h>
#include <freeair/crank.h>
#include <freeair/machine.h>
#include <freeair/fault.h>
#include <freeair/cycle.h>
#include <freeair/prediction.h>
#include <freeair/rating.h>
#include <freeair/pumpup.h>
#include <freeair/expectation.h>
#include <freeair/pumpup_curve.h>
#include <freeair/pressure_log.h>
#include <freeair/duty.h>
#include <freeair/outlook.h>
#include <freeair/evidence.h>
#include <freeair/evidence_readings.h>
#include <freeair/likelihood.h>
#include <freeair/diagnosis_subject.h>
#include <freeair/diagnosis_expectation.h>
#include <freeair/diagnosis_finding.h>
#include <freeair/diagnosis_check.h>
#include <freeair/diagnosis_proof.h>
#include <freeair/diagnosis.h>
#include <freeair/inference.h>
#include <freeair/describe.h>
#include <freeair/catalogue.h>
#include <freeair/uncertainty.h>
#include <freeair/monte_carlo.h>

#endif
