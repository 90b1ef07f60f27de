# SPDX-License-Identifier: MIT
"""A whole service visit through the binding, on an invented machine."""

import math

import freeair
import pytest


@pytest.fixture(scope="module")
def machine():
    return freeair.machine_complete(
        machine=freeair.Machine(stages=2, arrangement=freeair.MACHINE_V, lp_cylinders=1, lp_bore_m=0.105,
                                lp_stroke_m=0.08, speed_rev_s=14.0, receiver_m3=0.3))


def read(machine, site):
    """What a machine shows, all that the model gives."""
    run = freeair.PredictionRun()
    empty = freeair.prediction_pumpup(machine=machine, site=site, run=run, n=8)
    run = freeair.PredictionRun(start=freeair.PREDICTION_DRAWN_DOWN, from_pa=machine.cut_in_pa)
    again = freeair.prediction_pumpup(machine=machine, site=site, run=run, n=2)
    point = freeair.cycle_point(machine=machine, site=site, receiver_pa=machine.cut_out_pa)
    found = freeair.EvidenceReadings(
        t_empty_to_cutout_s=empty.result.time_s, t_cutin_to_cutout_s=again.result.time_s,
        p_interstage_pa=point.interstage_mean_pa, t_lp_discharge_k=point.lp_discharge_k,
        t_hp_discharge_k=point.hp_discharge_k, motor_speed_rev_s=point.motor_speed_rev_s,
        pump_speed_rev_s=point.speed_rev_s)
    return found, [float(t) for t in empty.t_s][1:], [float(p) for p in empty.p_pa][1:]


def rank(machine, found, log_t_s, log_p_pa, answers):
    return freeair.inference_rank(
        machine=machine, site=freeair.MachineSite(),
        subject=freeair.DiagnosisSubject(drive=freeair.DIAGNOSIS_DRIVE_BELT,
                                         service_valve_closed=freeair.EVIDENCE_YES),
        visit=freeair.InferenceVisit(air_m3_s=3e-3, energy_price=0.2 / 3.6e6), scatter=freeair.InferenceScatter(),
        expected=freeair.EvidenceReadings(), found=found, log_t_s=log_t_s, log_p_pa=log_p_pa,
        observation=[o for o, _ in answers], answer=[a for _, a in answers], options=freeair.DiagnosisOptions(),
        causes_capacity=30, effects_capacity=30, reasons_capacity=600, findings_capacity=30)


def test_a_fault_is_named_with_its_effects_reasons_and_findings(machine):
    faulty = freeair.fault_apply(machine=machine, site=freeair.MachineSite(),
                                 fault=freeair.FAULT_LP_SUCTION_VALVE, severity=0.2)
    found, times, pressures = read(faulty.faulty_machine, faulty.faulty_site)
    answer = rank(machine, found, times, pressures,
                  [(freeair.EVIDENCE_BLOW_BACK_AT_INLET, freeair.EVIDENCE_YES)])
    first = answer.causes[0]
    effect = answer.effects[0]
    assert first.cause == effect.cause == freeair.EVIDENCE_LP_SUCTION_VALVE
    assert first.probability > 0.7 and first.cautions != 0
    assert effect.severity_low < 0.2 * 1.05 and effect.severity_high > 0.2 * 0.85
    assert 0.0 < effect.lost_low < effect.lost < effect.lost_high < 1.0
    assert effect.waste_w > 0.0 and math.isclose(effect.cost, effect.waste_w * 0.2 / 3.6e6)
    assert any(r.cause == first.cause and r.observation == freeair.EVIDENCE_BLOW_BACK_AT_INLET
               for r in answer.reasons)
    assert {f.reading for f in answer.findings} >= {freeair.EVIDENCE_TIME_FROM_EMPTY, freeair.EVIDENCE_INTERSTAGE}
    assert answer.summary.verdict == freeair.VERDICT_FAILS
    checks = freeair.diagnosis_check_rank(subject=freeair.DiagnosisSubject(), found=found, causes=answer.causes,
                                          checks_capacity=30)
    assert len(checks) > 0


def test_a_repair_is_proved_by_the_same_call(machine):
    found, times, pressures = read(machine, freeair.MachineSite())
    found.leak_isolated_m3_s = found.leak_open_m3_s = 0.0
    answer = rank(machine, found, times, pressures,
                  [(o, freeair.EVIDENCE_NO) for o in (freeair.EVIDENCE_BLOW_BACK_AT_INLET,
                                                      freeair.EVIDENCE_SYSTEM_STARVES)])
    assert answer.causes[0].cause == freeair.EVIDENCE_HEALTHY
    assert answer.summary.verdict != freeair.VERDICT_FAILS and answer.summary.contradictions == 0
    assert math.isclose(sum(c.probability_alone for c in answer.causes) + answer.summary.probability_pair, 1.0,
                        rel_tol=1e-9)
