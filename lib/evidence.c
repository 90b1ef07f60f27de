/* SPDX-License-Identifier: MIT */
#include <freeair/evidence.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/text.h"

typedef struct entry {
  const char *name;
  const char *title;
  const char *text;
} entry;

/* In the order of the codes; the first is code 1. */

static const entry causes[] = {
    {"healthy", "Nothing wrong",
     "The machine makes the air that it should here today. A hot day or altitude is not a fault."},
    {"other", "Something else",
     "None of the listed causes fits: look again with fresh eyes before replacing parts."},
    {"intake_filter", "Intake filter or intake blocked",
     "Slow everywhere, interstage pressure low, better with the element out."},
    {"lp_suction_valve", "LP suction valve",
     "Reed broken, bent, carboned or held open: slow, warm heads, air pulsing back out of the filter, low or no "
     "interstage pressure, chirping; levels off around 40 to 80 psig when any leak or use adds to it. The "
     "commonest cause of a unit that does not make pressure. On a single-stage machine: the suction valve."},
    {"lp_discharge_valve", "LP discharge valve",
     "Slow, interstage pressure low, LP head hot, little air blown back at the intake. On a single-stage machine: "
     "the discharge valve."},
    {"hp_suction_valve", "HP suction valve",
     "Interstage pressure high, interstage relief popping, HP head hot; may level off at 70 to 125 psig."},
    {"hp_discharge_valve", "HP discharge valve",
     "Interstage pressure high, interstage relief popping, HP head hot above all; may level off at 70 to 125 psig."},
    {"gasket_between", "Head gasket between the cylinders",
     "Side-by-side heads: air passes from bore to bore, nothing shows outside, hot between the bores; levels off "
     "near 80 psig."},
    {"gasket_outside", "Head or valve-plate gasket to outside",
     "Air ticks or hisses out at a head joint in time with the strokes; soap finds it."},
    {"piston_rings", "Piston rings or bores",
     "Breather blows, oil in the drain, oil use; slow at high pressure more than at low. Comes slowly."},
    {"interstage_leak", "Leak between the stages",
     "Joint, tube or drain of the intercooler leaks: slow, interstage pressure low, LP head not hot; soap alone "
     "tells it from an LP discharge valve."},
    {"intercooler_fouled", "Intercooler fouled",
     "Fins dirty, fan or shroud gone: HP air hot, little delivery lost; it shortens the life of valves and oil."},
    {"relief_weak", "Interstage relief valve weak",
     "Pops below its setting, or leaks, while the interstage pressure is normal or low."},
    {"unloader_leak", "Unloader leaks while loaded",
     "The unloader or pilot valve passes while the machine pumps: hiss at the switch, slow, right once it is "
     "blocked off for a test."},
    {"check_valve", "Receiver check valve",
     "Pump-up times are right, but pressure falls when stopped, air comes back at the unloader or the heads, and "
     "it restarts hard against pressure."},
    {"downstream", "Leak, open drain or demand behind the pump",
     "Right with the service valve closed, short with it open; long times at high pressure; duty high at night. "
     "Leaks, a drain stuck open, or more use than the machine was bought for."},
    {"receiver_water", "Water in the receiver",
     "Pump-up faster than expected and short cycles, because water takes the room of the air."},
    {"belt_slip", "Belt slips",
     "Squeal at start, black dust, glazing; all times longer alike, interstage pressure unmoved; the pump turns "
     "slower than motor speed and pulleys say."},
    {"wrong_pulley", "Wrong pulley or flywheel",
     "The pump turns slow with the belt tight and the motor right; usually after a motor or a pulley was changed."},
    {"low_voltage", "Low supply voltage",
     "Both speeds low; hum, slow start, breaker trips; low volts under load from a long or thin lead, a bad joint "
     "or a weak supply."},
    {"run_capacitor", "Run capacitor weak",
     "Both speeds low, current high, motor hot, slow start; microfarads below the printed tolerance."},
    {"start_capacitor", "Start capacitor or start switch",
     "Hums and does not come up, or comes up slowly and trips; once running it pumps in its usual time."},
    {"motor", "Motor itself",
     "Both speeds low with volts and capacitors right: wrong motor, wrong connection, bearings, windings, or a "
     "pump that turns hard."},
    {"gauge_or_switch", "Pressure gauge or pressure switch",
     "Contradictions: normal times to a wrong pressure; stops off its setting by a second gauge."},
};

static const struct {
  const char *remedy;
  const char *proof;
} cures[FREEAIR__COUNT(causes)] = {
    {"Nothing to replace. If users run short, look at demand and leaks.",
     "A pump-up test within its expected time, with the service valve closed and water drained."},
    {"Nothing until a cause is proved.", "Repeat the readings that disagree, then take those not yet taken."},
    {"Clean or replace the element; clear the intake pipe.",
     "One pump-up with the element out, then the same with the new one: times equal and as expected."},
    {"Replace the LP suction reeds, or the valve plate, with new gaskets; head bolts in sequence to the manual's "
     "torque, retorque as the manual says.",
     "Air no longer blows back at the intake, interstage pressure is back, and the same pump-up test from the same "
     "start meets its expected time."},
    {"Replace the LP discharge reeds, or the valve plate, with new gaskets; torque as the manual says.",
     "First soap the intercooler joints, to rule out a leak there; after the repair the LP head runs cooler and the "
     "same pump-up test meets its expected time."},
    {"Replace the HP suction reeds, or the valve plate, with new gaskets; torque as the manual says.",
     "Interstage pressure back to normal, relief quiet, same pump-up test meets its expected time."},
    {"Replace the HP discharge reeds, or the valve plate, with new gaskets; torque as the manual says.",
     "Interstage pressure back to normal, relief quiet, same pump-up test meets its expected time."},
    {"Replace the head and plate gaskets; check head and block for flatness and burnt channels; torque in sequence.",
     "With the head off, a burnt track between the bores; after the repair the same pump-up test reaches cut-out in "
     "its expected time."},
    {"Replace the gasket; check flatness; torque in sequence and retorque as the manual says.",
     "No bubbles at the joint when it pumps near cut-out; same pump-up test as before."},
    {"Rings, and the bores if worn: a matter of hours; compare with the price of a pump.",
     "Breather flow and oil use back to normal, same pump-up test meets its expected time."},
    {"Make the joint tight, or replace the tube, drain or cooler.",
     "No bubbles at two receiver pressures, interstage pressure back, same pump-up test meets its expected time."},
    {"Clean the fins, refit fan and shroud, give the machine room to breathe.",
     "Intercooler outlet within its usual distance of ambient."},
    {"Replace the relief valve by one of the same set pressure and capacity. Find out first that the interstage "
     "pressure is not high: then it does its duty, and the fault is an HP valve.",
     "Interstage gauge and relief watched together to cut-out: it stays shut below its setting."},
    {"Repair or replace the unloader or pilot valve; clear its line.",
     "With its line blocked off for one attended pump-up the time is right; after the repair it is right without, "
     "and the unloader opens after the stop. Never leave it blocked: the motor must start unloaded."},
    {"Clean or replace the check valve, with the receiver at zero.",
     "Stopped and isolated, pressure holds and the unloader is quiet after its short puff."},
    {"Repair leaks and drains, or bring machine and demand together: pressure, storage, or more machine.",
     "Leak-down with the system open before and after; night duty; pump-up right with the service valve closed."},
    {"Drain it, find out why it was not drained, repair the drain. Water inside rusts the vessel: have it inspected "
     "as the law says.",
     "After draining, cycle times are back to those expected."},
    {"Replace the belt, or set its tension; align the pulleys; replace pulleys worn hollow.",
     "Two tachometer speeds agree with the pulley ratio within a per cent or two, under load near cut-out."},
    {"Fit the pulley that gives the nameplate pump speed, never more.",
     "Pump speed on the nameplate's figure; motor current at or below its nameplate near cut-out."},
    {"Correct the supply: lead, joints, tap, circuit. A qualified electrician's work.",
     "Volts at the motor terminals, at start and at full load, within the nameplate's tolerance."},
    {"Replace the run capacitor by one of the same microfarads and at least the same voltage. Qualified person.",
     "Microfarads within the printed tolerance; motor speed and current back to the nameplate near cut-out."},
    {"Replace the start capacitor, or its switch or relay. Qualified person.",
     "Comes up briskly, several times, against the pressure that the unloader leaves."},
    {"Test the motor off load and its connections, bearings and windings; turn the pump by hand, locked out; "
     "repair or replace.",
     "Motor speed and current on the nameplate near cut-out, volts and capacitors being right."},
    {"Replace the gauge; set the switch as its maker says, never above what is stamped on the vessel.",
     "Machine's gauge and a tested gauge agree at three pressures; cut-in and cut-out where they belong."},
};

typedef struct brought {
  entry said;
  int32_t check;
} brought;

static const brought observations[] = {
    {{"blow_back_at_inlet", "Air blows back at the intake",
      "Hold a hand or a strip of paper at the intake while it pumps: a sound valve only draws."},
     FREEAIR_EVIDENCE_LISTEN_AT_INLET},
    {{"chirping_at_heads", "Chirping at the heads",
      "Chirp, tick or clatter at a head in time with the strokes, unlike the other head."},
     FREEAIR_EVIDENCE_LISTEN_AT_HEADS},
    {{"interstage_relief_pops", "Interstage relief pops",
      "The relief valve on the intercooler lifts or spits while it pumps."},
     FREEAIR_EVIDENCE_LISTEN_AT_HEADS},
    {{"lp_head_hot", "LP head hot", "LP head hotter than usual, or than its neighbours of the same stage."},
     FREEAIR_EVIDENCE_TEMPERATURES},
    {{"hp_head_hot", "HP head hot", "HP head hotter than usual, or far hotter than the LP head."},
     FREEAIR_EVIDENCE_TEMPERATURES},
    {{"hot_between_bores", "Hot between the bores", "The head is hottest between two bores under one gasket."},
     FREEAIR_EVIDENCE_TEMPERATURES},
    {{"air_at_head_joint", "Air at a head joint",
      "Hiss, oil mist or soap bubbles where head, plate and cylinder meet."},
     FREEAIR_EVIDENCE_SOAP_INTERSTAGE},
    {{"breather_blows", "Breather blows",
      "Strong pulsing flow or oil mist from the crankcase breather, more near cut-out."},
     FREEAIR_EVIDENCE_LOOK_AT_OIL},
    {{"oil_in_drain", "Oil in the drain", "Oily or milky water, or oil, from the receiver drain."},
     FREEAIR_EVIDENCE_LOOK_AT_OIL},
    {{"oil_use_high", "Uses oil", "Oil has to be topped up between services."}, FREEAIR_EVIDENCE_LOOK_AT_OIL},
    {{"belt_dust", "Black belt dust", "Black dust on guard, floor or flywheel."}, FREEAIR_EVIDENCE_LOOK_AT_DRIVE},
    {{"belt_squeals", "Belt squeals", "Squeal at start or near cut-out."}, FREEAIR_EVIDENCE_LOOK_AT_DRIVE},
    {{"belt_glazed", "Belt glazed or cracked", "Sides shiny and hard, cracked, frayed, chunks missing."},
     FREEAIR_EVIDENCE_INSPECT_BELT},
    {{"belt_loose", "Belt loose", "Gives far more than its stated deflection under the stated force."},
     FREEAIR_EVIDENCE_INSPECT_BELT},
    {{"drive_changed", "Drive changed lately", "Motor, pulley or flywheel was replaced before the complaint."},
     FREEAIR_EVIDENCE_ASK},
    {{"pump_sounds_slow", "Pump turns slow", "By ear, or by the flywheel through the guard."},
     FREEAIR_EVIDENCE_LOOK_AT_DRIVE},
    {{"hums_at_start", "Hums or starts slowly", "Hum without turning, or takes seconds to come up."},
     FREEAIR_EVIDENCE_WATCH_A_START},
    {{"breaker_trips", "Breaker trips", "Breaker or motor overload trips, at start or after minutes."},
     FREEAIR_EVIDENCE_ASK},
    {{"capacitor_bulged", "Capacitor bulged", "Case bulged, cracked or leaking, seen isolated and discharged."},
     FREEAIR_EVIDENCE_MEASURE_CAPACITORS},
    {{"lights_dim", "Lights dim, long lead", "Lights dim when it starts, or it hangs on a long or thin lead."},
     FREEAIR_EVIDENCE_WATCH_A_START},
    {{"hiss_at_switch", "Hiss at the switch, loaded", "Air at switch, pilot or unloader while it pumps."},
     FREEAIR_EVIDENCE_BLOCK_UNLOADER},
    {{"better_unloader_blocked", "Right with unloader blocked",
      "Pump-up time right with the unloader line blocked off for one attended test."},
     FREEAIR_EVIDENCE_BLOCK_UNLOADER},
    {{"unloader_blows_stopped", "Unloader blows after the stop",
      "It goes on blowing long after the puff that empties the line."},
     FREEAIR_EVIDENCE_STOP_AND_WATCH},
    {{"hard_restart", "Hard restart", "Labours or stalls when it restarts with pressure in the receiver."},
     FREEAIR_EVIDENCE_WATCH_A_START},
    {{"falls_when_stopped", "Pressure falls when stopped",
      "Stopped, service valve closed: the gauge falls within minutes."},
     FREEAIR_EVIDENCE_STOP_AND_WATCH},
    {{"drain_passes", "Drain passes", "Air at the receiver's or a filter's drain that should be shut."},
     FREEAIR_EVIDENCE_WALK_THE_SYSTEM},
    {{"leaks_heard", "Leaks in the system", "Heard or soaped at hoses, couplings, tools, valves."},
     FREEAIR_EVIDENCE_WALK_THE_SYSTEM},
    {{"demand_added", "Demand added", "Tools, machines, shifts or blow guns added since it was sufficient."},
     FREEAIR_EVIDENCE_ASK},
    {{"fine_when_isolated", "Right when isolated",
      "With the service valve closed it reaches cut-out in its usual time."},
     FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {{"runs_at_night", "Runs at night", "Loads often when nobody uses air."}, FREEAIR_EVIDENCE_LOG_A_DAY},
    {{"system_starves", "Users run short",
      "The machine reaches cut-out in its usual time, yet tools run short of air."},
     FREEAIR_EVIDENCE_ASK},
    {{"filter_dirty", "Filter dirty", "Element dark, oily or clogged; intake pipe obstructed."},
     FREEAIR_EVIDENCE_FILTER_OUT},
    {{"better_filter_out", "Faster with filter out",
      "One pump-up with the element out is clearly faster."},
     FREEAIR_EVIDENCE_FILTER_OUT},
    {{"interstage_bubbles", "Interstage bubbles", "Soap bubbles at intercooler, its joints or drain."},
     FREEAIR_EVIDENCE_SOAP_INTERSTAGE},
    {{"intercooler_dirty", "Cooler dirty", "Fins blocked by dust or oil, fan or shroud damaged, or no room."},
     FREEAIR_EVIDENCE_TEMPERATURES},
    {{"relief_pops_early", "Relief pops early",
      "The interstage relief lifts while the interstage gauge stands below its set pressure."},
     FREEAIR_EVIDENCE_INTERSTAGE_GAUGE},
    {{"water_drained", "Much water drained", "Litres of water came out of the receiver."},
     FREEAIR_EVIDENCE_DRAIN_RECEIVER},
    {{"short_cycles", "Short cycles", "Pumps up faster than it used to, and cycles often."},
     FREEAIR_EVIDENCE_ASK},
    {{"never_reaches_cutout", "Never reaches cut-out", "Runs on without stopping, service valve closed."},
     FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {{"stops_at_wrong_pressure", "Stops at a wrong pressure",
      "By a second gauge it cuts out clearly off its setting, or the two gauges disagree."},
     FREEAIR_EVIDENCE_SECOND_GAUGE},
    {{"slower_near_cutout", "Slower near cut-out",
      "Pumps the first half in its usual time and the last part far too slowly."},
     FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {{"came_suddenly", "Came suddenly", "From one day to the next, rather than creeping over months."},
     FREEAIR_EVIDENCE_ASK},
    {{"heads_opened_lately", "Heads opened lately", "Heads, plates or valves were worked on before the complaint."},
     FREEAIR_EVIDENCE_ASK},
    {{"lp_valves_bad", "LP valves damaged", "Head off: reed broken, bent, worn or carboned, or its seat."},
     FREEAIR_EVIDENCE_HEADS_OFF},
    {{"hp_valves_bad", "HP valves damaged", "Head off: reed broken, bent, worn or carboned, or its seat."},
     FREEAIR_EVIDENCE_HEADS_OFF},
    {{"gasket_burnt", "Gasket burnt", "Head off: a burnt or blown track in the gasket."},
     FREEAIR_EVIDENCE_HEADS_OFF},
};

static const brought readings[] = {
    {{"delivery", "Free air delivery", "From a pump-up test with the service valve closed and water drained."},
     FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {{"time_from_empty", "Time from empty", "Empty receiver, cool, to cut-out, service valve closed."},
     FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {{"time_from_cutin", "Time from cut-in", "Cut-in to cut-out, service valve closed."},
     FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {{"level_off", "Level-off pressure", "Where the gauge stops rising for some minutes, below cut-out."},
     FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {{"interstage", "Interstage pressure", "At the receiver pressure for which the expected value holds."},
     FREEAIR_EVIDENCE_INTERSTAGE_GAUGE},
    {{"lp_discharge", "LP discharge temperature", "Near cut-out, on the pipe close to the head."},
     FREEAIR_EVIDENCE_TEMPERATURES},
    {{"hp_discharge", "HP discharge temperature", "Near cut-out, on the pipe close to the head."},
     FREEAIR_EVIDENCE_TEMPERATURES},
    {{"intercooler_outlet", "Intercooler outlet temperature", "Near cut-out, on the pipe to the HP head."},
     FREEAIR_EVIDENCE_TEMPERATURES},
    {{"motor_speed", "Motor speed", "By tachometer, loaded near cut-out."}, FREEAIR_EVIDENCE_TACHOMETER},
    {{"pump_speed", "Pump speed", "By tachometer, loaded near cut-out, at the same moment as the motor."},
     FREEAIR_EVIDENCE_TACHOMETER},
    {{"supply_running", "Supply volts, running", "At the motor terminals, loaded near cut-out."},
     FREEAIR_EVIDENCE_MEASURE_SUPPLY},
    {{"supply_starting", "Supply volts, starting", "At the motor terminals, lowest during a start."},
     FREEAIR_EVIDENCE_MEASURE_SUPPLY},
    {{"motor_current", "Motor current", "Loaded near cut-out."}, FREEAIR_EVIDENCE_MEASURE_SUPPLY},
    {{"power", "Electrical power", "Loaded near cut-out."}, FREEAIR_EVIDENCE_MEASURE_SUPPLY},
    {{"run_capacitance", "Run capacitor", "Isolated and discharged, or from current and voltage of a live circuit."},
     FREEAIR_EVIDENCE_MEASURE_CAPACITORS},
    {{"start_capacitance", "Start capacitor", "Isolated and discharged."}, FREEAIR_EVIDENCE_MEASURE_CAPACITORS},
    {{"leak_isolated", "Leak, isolated", "Leak-down of the receiver alone, stopped, service valve closed."},
     FREEAIR_EVIDENCE_STOP_AND_WATCH},
    {{"leak_open", "Leak, system open", "Leak-down of receiver and system without use, or from night cycles."},
     FREEAIR_EVIDENCE_LEAK_DOWN_OPEN},
    {{"gauge_difference", "Gauge difference", "Machine's gauge less a tested gauge near cut-out."},
     FREEAIR_EVIDENCE_SECOND_GAUGE},
    {{"cutout", "Cut-out pressure", "By a tested gauge."}, FREEAIR_EVIDENCE_SECOND_GAUGE},
    {{"relief_opening", "Relief opening pressure", "Interstage gauge when the relief valve begins to lift."},
     FREEAIR_EVIDENCE_INTERSTAGE_GAUGE},
    {{"filter_drop", "Filter pressure drop", "Across the element while it pumps."}, FREEAIR_EVIDENCE_FILTER_OUT},
    {{"belt_deflection", "Belt deflection", "At mid span under the stated force, locked out."},
     FREEAIR_EVIDENCE_INSPECT_BELT},
    {{"water", "Water drained", "Volume that came out of the receiver's drain."}, FREEAIR_EVIDENCE_DRAIN_RECEIVER},
    {{"duty", "Duty", "Share of time loaded, from a log in ordinary use."}, FREEAIR_EVIDENCE_LOG_A_DAY},
    {{"ambient", "Ambient temperature", "At the intake."}, FREEAIR_EVIDENCE_READ_SITE},
    {{"barometer", "Barometric pressure", "At the site, not reduced to sea level."}, FREEAIR_EVIDENCE_READ_SITE},
};

static const entry checks[] = {
    {"ask", "Ask", "What changed lately, since when, sudden or creeping, what was added, what was serviced."},
    {"listen_at_inlet", "Listen and feel at the intake", "While it pumps, a hand or paper strip before the filter."},
    {"listen_at_heads", "Listen at the heads", "While it pumps near cut-out: chirping, relief valve, joints."},
    {"look_at_drive", "Look at the drive", "Guard on: squeal at start, black dust, flywheel speed."},
    {"look_at_oil", "Look at the oil", "Oil level and look, breather flow while it pumps, oil at the drain."},
    {"walk_the_system", "Walk the system", "Drains, service valve, hoses, couplings, tools: ears, soap, patience."},
    {"second_gauge", "Second gauge", "A tested gauge at a test point or coupling; compare at cut-in and cut-out."},
    {"pump_up_test", "Pump-up test", "Drain water, close the service valve, time from empty to cut-out, then from "
                                     "cut-in to cut-out."},
    {"stop_and_watch", "Stop and watch", "At cut-out stop and isolate the supply, close the service valve, listen "
                                         "at the unloader, watch the gauge for ten minutes."},
    {"leak_down_open", "Leak-down, system open", "Stopped at cut-out, all users shut, system open: time the fall."},
    {"interstage_gauge", "Interstage gauge", "Read at two or three receiver pressures, and when the relief lifts."},
    {"temperatures", "Temperatures", "Contact thermometer on heads, discharge pipes, cooler outlet, near cut-out."},
    {"tachometer", "Tachometer", "Motor and pump speed, loaded near cut-out, from outside the guard."},
    {"filter_out", "Filter out", "Element out for one pump-up in clean air, then look at it."},
    {"soap_interstage", "Soap", "On intercooler, its joints and drain, and head joints, while it pumps; keep hands "
                                "from belt and hot pipes."},
    {"block_unloader", "Block the unloader", "Listen at the switch while loaded; depressurised, block the unloader "
                                             "line for one attended pump-up, start unloaded; then open it again."},
    {"inspect_belt", "Inspect the belt", "Locked out, guard off: faces, tension, alignment, pulleys; guard back on."},
    {"measure_supply", "Measure the supply", "Volts at the motor at start and loaded, amperes, watts; a qualified "
                                             "person with rated meters."},
    {"measure_capacitors", "Measure the capacitors", "Isolated, discharged through a resistor and proved dead; look, "
                                                     "then microfarads against what is printed. Qualified person."},
    {"watch_a_start", "Watch a start", "From cut-in: hum, time to come up, lights, breaker."},
    {"log_a_day", "Log a day", "Pressure logger over a day and a night: duty, cycles, leak share."},
    {"drain_receiver", "Drain the receiver", "Slowly, at low pressure, into a measure."},
    {"heads_off", "Heads off", "Locked out and at zero: reeds, seats, plates, gaskets; new gaskets always; bolts in "
                               "sequence to the manual's torque."},
    {"read_site", "Read the site", "Thermometer at the intake, barometer without reduction to sea level."},
};

static size_t count(int32_t kind)
{
  if (kind == FREEAIR_EVIDENCE_KIND_CAUSE) return FREEAIR__COUNT(causes);
  if (kind == FREEAIR_EVIDENCE_KIND_OBSERVATION) return FREEAIR__COUNT(observations);
  if (kind == FREEAIR_EVIDENCE_KIND_READING) return FREEAIR__COUNT(readings);
  if (kind == FREEAIR_EVIDENCE_KIND_CHECK) return FREEAIR__COUNT(checks);
  return 0;
}

static const entry *find(int32_t kind, int32_t code)
{
  if (code < 1 || (size_t)code > count(kind)) return NULL;
  if (kind == FREEAIR_EVIDENCE_KIND_CAUSE) return &causes[code - 1];
  if (kind == FREEAIR_EVIDENCE_KIND_OBSERVATION) return &observations[code - 1].said;
  if (kind == FREEAIR_EVIDENCE_KIND_READING) return &readings[code - 1].said;
  return &checks[code - 1];
}

int32_t freeair_evidence_count(int32_t kind)
{
  size_t n = count(kind);
  return n > 0 ? (int32_t)n + 1 : 0;
}

const char *freeair_evidence_name(int32_t kind, int32_t code)
{
  const entry *e = find(kind, code);
  return e != NULL ? e->name : "";
}

const char *freeair_evidence_title(int32_t kind, int32_t code)
{
  const entry *e = find(kind, code);
  return e != NULL ? e->title : "";
}

const char *freeair_evidence_text(int32_t kind, int32_t code)
{
  const entry *e = find(kind, code);
  return e != NULL ? e->text : "";
}

const char *freeair_evidence_remedy(int32_t cause)
{
  return find(FREEAIR_EVIDENCE_KIND_CAUSE, cause) != NULL ? cures[cause - 1].remedy : "";
}

const char *freeair_evidence_proof(int32_t cause)
{
  return find(FREEAIR_EVIDENCE_KIND_CAUSE, cause) != NULL ? cures[cause - 1].proof : "";
}

int32_t freeair_evidence_check_for(int32_t kind, int32_t code)
{
  if (find(kind, code) == NULL) return FREEAIR_EVIDENCE_CHECK_NONE;
  if (kind == FREEAIR_EVIDENCE_KIND_OBSERVATION) return observations[code - 1].check;
  if (kind == FREEAIR_EVIDENCE_KIND_READING) return readings[code - 1].check;
  return FREEAIR_EVIDENCE_CHECK_NONE;
}

int32_t freeair_evidence_find(int32_t kind, const char *name, int32_t *code)
{
  if (code == NULL) return FREEAIR_ERR_NULL;
  *code = 0;
  if (name == NULL) return FREEAIR_ERR_NULL;
  if (count(kind) == 0) return FREEAIR_ERR_DOMAIN;
  for (int32_t i = 1; i <= (int32_t)count(kind); i++)
    if (freeair__compare(find(kind, i)->name, name) == 0) {
      *code = i;
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}
