# SPDX-License-Identifier: MIT
"""From readings to ranked causes and the next check, on an invented machine.

Three visits to one machine, each knowing more than the one before; then the
proof of the repair; then a fleet of visits over threads, for the library keeps
no state and a call of it lets other threads run.
"""

import concurrent.futures
import math
import sys
import time

import freeair as fa

BAR, MINUTE, KWH = 1e5, 60.0, 3.6e6
BAROMETER = 84.5e3  # some 1500 m above the sea

# What the nameplate says of this demonstration machine: the rest is fitted to its rating.
NAMEPLATE = fa.Machine(
    stages=2, lp_bore_m=0.1143, hp_bore_m=0.0635, lp_stroke_m=0.0762, speed_rev_s=14.5, receiver_m3=0.300,
    rated_delivery_m3_s=0.540 / MINUTE, rated_pa=13.0 * BAR,
    cut_in_pa=9.5 * BAR + BAROMETER, cut_out_pa=12.3 * BAR + BAROMETER)
SITE = fa.MachineSite(barometric_pa=BAROMETER, ambient_k=308.15)
SUBJECT = fa.DiagnosisSubject(
    receiver_m3=0.300, stages=2, cylinders=2, head=fa.DIAGNOSIS_HEAD_SEPARATE, drive=fa.DIAGNOSIS_DRIVE_BELT,
    supply=fa.DIAGNOSIS_SINGLE_PHASE, service_valve_closed=fa.EVIDENCE_YES)
VISIT = fa.InferenceVisit(air_m3_s=0.240 / MINUTE, energy_price=0.30 / KWH)


VERDICT = {fa.VERDICT_MEETS: "sound", fa.VERDICT_FAILS: "not sound", fa.VERDICT_CANNOT_TELL: "cannot tell"}


def title(kind, code):
    return fa.evidence_title(kind=kind, code=code)


def diagnose(machine, found, seen=()):
    """The ranking, and the checks worth making next."""
    observation, answer = zip(*seen) if seen else (None, None)
    ranking = fa.inference_rank(machine=machine, site=SITE, subject=SUBJECT, visit=VISIT, found=found,
                                observation=observation, answer=answer)
    checks = fa.diagnosis_check_rank(subject=SUBJECT, found=found, observation=observation, answer=answer,
                                     causes=ranking.causes)
    return ranking, checks


def report(heading, ranking, checks):
    print(f"{heading}: {VERDICT[ranking.summary.verdict]}, "
          f"sound with probability {ranking.summary.probability_healthy:.3g}")
    for cause, effect in zip(ranking.causes, ranking.effects):
        if cause.probability < 0.05:
            break
        line = f"  {cause.probability:4.2f}  {title(fa.EVIDENCE_KIND_CAUSE, cause.cause)}"
        if not math.isnan(effect.lost):
            line += (f", {100 * effect.lost:.0f} % of the delivery lost "
                     f"({100 * effect.lost_low:.0f} to {100 * effect.lost_high:.0f})")
        if not math.isnan(effect.cost):
            line += f", {effect.cost * 3600 * 24 * 365:.0f} a year"
        print(line)
    groups = {}
    for cause in ranking.causes:
        if cause.group and cause.probability >= 0.02:
            groups.setdefault(cause.group, []).append(cause)
    for group in groups.values():
        if len(group) > 1:
            names = ", ".join(title(fa.EVIDENCE_KIND_CAUSE, c.cause) for c in group)
            print(f"  not told apart: {names}; what splits them: {title(fa.EVIDENCE_KIND_CHECK, group[0].check)}")
    for reason in ranking.reasons[:3]:
        if reason.cause == ranking.summary.cause and reason.reading:
            print(f"  because: {title(fa.EVIDENCE_KIND_READING, reason.reading)} {reason.found:.4g}, "
                  f"expected {reason.expected:.4g}, with this cause {reason.predicted:.4g}")
    for check in checks[:2]:
        print(f"  next: {title(fa.EVIDENCE_KIND_CHECK, check.check)}, {check.effort_s / 60:.0f} min, "
              f"{check.information:.2f} bit" + (", by a qualified electrician" if check.qualification else ""))
    print()


def cautions(ranking, checks):
    """Everything that must be said beside this answer, once."""
    bits = 0
    for row in [c for c in ranking.causes if c.probability >= 0.05] + list(checks[:2]):
        bits |= row.cautions
    return [fa.caution_text(caution=1 << k) for k in range(32) if bits >> k & 1]


def prove(cause, before, after):
    """Is the repair of this cause proved? Not the same as: is everything sound?"""
    proof = fa.diagnosis_proof_judge(cause=cause, causes=after.causes, findings=after.findings)
    was = next(c.probability for c in before.causes if c.cause == cause)
    says = {fa.VERDICT_MEETS: "is proved", fa.VERDICT_FAILS: "did not take", fa.VERDICT_CANNOT_TELL: "is not proved yet"}
    print(f"{title(fa.EVIDENCE_KIND_CAUSE, cause)}: {was:.2f} before, {proof.probability:.1g} now; "
          f"it makes {100 * proof.delivery:.0f} % of what a sound machine would, at least 90 % "
          f"with probability {proof.probability_delivery:.2f}: the repair {says[proof.verdict]}. "
          "What is left to doubt was not looked at.\n")


def main():
    machine, adjusted, delivery = fa.rating_complete(machine=NAMEPLATE)
    print("Demonstration: machine, site and readings are invented.\n")

    times = dict(t_empty_to_cutout_s=640.0, t_cutin_to_cutout_s=118.0)
    report("Two times", *diagnose(machine, fa.EvidenceReadings(**times)))

    gauge = dict(times, p_interstage_pa=2.60 * BAR)
    report("... and the interstage gauge", *diagnose(machine, fa.EvidenceReadings(**gauge)))

    hand = [(fa.EVIDENCE_BLOW_BACK_AT_INLET, fa.EVIDENCE_YES)]
    ranking, checks = diagnose(machine, fa.EvidenceReadings(**gauge), hand)
    report("... and a hand at the intake", ranking, checks)
    print("Before anything is opened:")
    for text in cautions(ranking, checks):
        print(f"  - {text}")
    print()

    repaired = fa.EvidenceReadings(t_empty_to_cutout_s=424.0, t_cutin_to_cutout_s=66.0, p_interstage_pa=3.57 * BAR)
    nothing = [(fa.EVIDENCE_BLOW_BACK_AT_INLET, fa.EVIDENCE_NO)]
    after, checks = diagnose(machine, repaired, nothing)
    report("After the repair, from the same start", after, checks)
    prove(ranking.summary.cause, ranking, after)

    fleet = [fa.EvidenceReadings(t_empty_to_cutout_s=400.0 + 12.0 * k, t_cutin_to_cutout_s=62.0 + 2.5 * k)
             for k in range(24)]
    begun = time.monotonic()
    with concurrent.futures.ThreadPoolExecutor() as pool:
        answers = list(pool.map(lambda found: diagnose(machine, found)[0].summary, fleet))
    short = sum(a.verdict == fa.VERDICT_FAILS for a in answers)
    print(f"{len(fleet)} visits over threads: {short} machines short beyond doubt")
    print(f"{(time.monotonic() - begun) / len(fleet):.2f} s a visit", file=sys.stderr)


if __name__ == "__main__":
    main()
