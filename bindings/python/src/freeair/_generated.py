# SPDX-License-Identifier: MIT
# Written by bindings/generate; do not edit.
"""The functions, structures and constants of the library."""

import collections as _collections
import ctypes as _c

from . import _runtime

# Constants: the C names less the prefix.
OK = 0
WARN_EXTRAPOLATED = 1
WARN_TRANSITION = 2
WARN_INCONSISTENT = 3
WARN_TRUNCATED = 4
WARN_LIMIT = 5
ERR_NULL = -1
ERR_DOMAIN = -2
ERR_NO_SOLUTION = -3
ERR_NO_CONVERGENCE = -4
ERR_OVERFLOW = -5
ERR_VERSION = -6
ERR_DATA = -7
ERR_NOT_FOUND = -8
ERR_DIMENSION = -9
ERR_UNSUPPORTED = -10
CAUTION_ISOLATE = 1
CAUTION_DEPRESSURISE = 2
CAUTION_STORED_ENERGY = 4
CAUTION_RELIEF_VALVE = 8
CAUTION_ROTATING = 16
CAUTION_VESSEL = 32
CAUTION_HOT = 64
CAUTION_CAPACITOR = 128
CAUTION_LIVE = 256
CAUTION_OIL_MIST = 512
CAUTION_LIFTING = 1024
CAUTION_PROTECTION = 2048
CAUTION_BREATHING = 4096
CAUTION_BLOWING = 8192
REFERENCE_ISO_1217 = 1
REFERENCE_ISO_8778 = 2
REFERENCE_DIN_1343 = 3
REFERENCE_ISO_13443 = 4
REFERENCE_ISO_2533 = 5
REFERENCE_SCFM_60F = 6
REFERENCE_SCFM_68F = 7
REFERENCE_SCFM_68F_36RH = 8
REFERENCE_SCFM_70F = 9
REFERENCE_NTP = 10
REFERENCE_STP = 11
VERDICT_CANNOT_TELL = 0
VERDICT_MEETS = 1
VERDICT_FAILS = 2
MACHINE_V = 0
MACHINE_SIDE_BY_SIDE = 1
FAULT_NONE = 0
FAULT_INTAKE_FILTER = 1
FAULT_LP_SUCTION_VALVE = 2
FAULT_LP_DISCHARGE_VALVE = 3
FAULT_HP_SUCTION_VALVE = 4
FAULT_HP_DISCHARGE_VALVE = 5
FAULT_GASKET_BETWEEN = 6
FAULT_LP_GASKET_OUTSIDE = 7
FAULT_HP_GASKET_OUTSIDE = 8
FAULT_LP_RINGS = 9
FAULT_HP_RINGS = 10
FAULT_INTERSTAGE_LEAK = 11
FAULT_INTERCOOLER_FOULED = 12
FAULT_RELIEF_WEAK = 13
FAULT_UNLOADER_LEAK = 14
FAULT_CHECK_VALVE = 15
FAULT_DOWNSTREAM_LEAK = 16
FAULT_DEMAND = 17
FAULT_RECEIVER_WATER = 18
FAULT_BELT_SLIP = 19
FAULT_PULLEY = 20
FAULT_LOW_VOLTAGE = 21
FAULT_RUN_CAPACITOR = 22
FAULT_PRESSURE_SWITCH = 23
FAULT_GAUGE = 24
PREDICTION_SOAKED = 0
PREDICTION_DRAWN_DOWN = 1
PREDICTION_GIVEN = 2
RATING_NOTHING = 0
RATING_SPEED = 1
RATING_BORE = 2
RATING_CLEARANCE = 4
RATING_VALVES = 8
RATING_HEATING = 16
TYPE_DOUBLE = 1
TYPE_INT32 = 2
TYPE_UINT32 = 3
TYPE_SIZE = 4
TYPE_TEXT = 5
TYPE_STRUCTURE = 6
PARAMETER_OUTPUT = 1
PARAMETER_ARRAY = 2
PARAMETER_OPTIONAL = 4
PARAMETER_LOWER_CLOSED = 8
PARAMETER_UPPER_CLOSED = 16


class Machine(_runtime.Structure):
    """A machine with its receiver.

    Areas are effective areas: discharge coefficient times geometric area. A single-stage machine
    has a first stage alone; its hp_ fields are ignored.

    Fields:
        speed_rev_s: Pump speed with the motor at rated slip and a belt that does not slip. [rev/s]
            Range (0;100]. Default: motor speed at rated slip times pulley_ratio; one of the two is
            required.
        lp_bore_m: Bore of the first (or only) stage. [m] Range (0;2]. Default: none, required;
            freeair_rating_complete can find it.
        hp_bore_m: Bore of the second stage. [m] Range (0;2]. Default: 0.55 lp_bore_m.
        lp_stroke_m: Stroke of the first stage. Required. [m] Range (0;2].
        hp_stroke_m: Stroke of the second stage. [m] Range (0;2]. Default: lp_stroke_m.
        rod_ratio: Crank radius over connecting-rod length. Range [0;0.9]. Default: 0.25.
        lp_clearance: Clearance volume over swept volume, first stage. Range (0;0.5]. Default: 0.05.
        hp_clearance: Clearance volume over swept volume, second stage. Range (0;0.5]. Default:
            0.07.
        phase_rad: Crank angle by which the second cylinder lags the first. [rad] Range [-6.3;6.3].
            Default: pi/2 in a V, pi side by side.
        lp_spread_rad: Lag between successive cylinders of the first stage. [rad] Range [-6.3;6.3].
            Default: phase_rad for a single stage of two cylinders, else 2 pi / lp_cylinders.
        hp_spread_rad: Lag between successive cylinders of the second stage. [rad] Range [-6.3;6.3].
            Default: 2 pi / hp_cylinders.
        lp_suction_area_m2: Effective area of a fully open suction valve, first stage. [m2] Range
            (0;1]. Default: piston area times mean piston speed / (50 m/s).
        lp_suction_leak_m2: Effective area open, either way, when it should be shut. [m2] Range
            [0;1]. Default: 0.
        lp_suction_lift_pa: Pressure difference at which it is fully open. [Pa] Range (0;1e7].
            Default: 3 % of the nominal suction pressure.
        lp_discharge_area_m2: As above, discharge valve of the first stage. [m2] Range (0;1].
            Default: piston area times mean piston speed / (60 m/s).
        lp_discharge_leak_m2: As above. [m2] Range [0;1]. Default: 0.
        lp_discharge_lift_pa: As above. [Pa] Range (0;1e7]. Default: 3 % of the nominal discharge
            pressure.
        hp_suction_area_m2: As above, suction valve of the second stage. [m2] Range (0;1]. Default:
            piston area times mean piston speed / (50 m/s).
        hp_suction_leak_m2: As above. [m2] Range [0;1]. Default: 0.
        hp_suction_lift_pa: As above. [Pa] Range (0;1e7]. Default: 3 % of the nominal interstage
            pressure.
        hp_discharge_area_m2: As above, discharge valve of the second stage. [m2] Range (0;1].
            Default: piston area times mean piston speed / (60 m/s).
        hp_discharge_leak_m2: As above. [m2] Range [0;1]. Default: 0.
        hp_discharge_lift_pa: As above. [Pa] Range (0;1e7]. Default: 3 % of cut_out_pa.
        check_valve_area_m2: Effective area of the open receiver check valve. [m2] Range (0;1].
            Default: all discharge valves of the last stage together.
        check_valve_leak_m2: Effective area that stays open when it should be shut. [m2] Range
            [0;1]. Default: 0.
        check_valve_lift_pa: Pressure difference at which it is fully open. [Pa] Range (0;1e7].
            Default: 1e4.
        filter_area_m2: Effective area of the intake filter. [m2] Range (0;10]. Default:
            displacement times pi / (41 m/s).
        plenum_m3: Volume between filter and first-stage suction valves. [m3] Range (0;10]. Default:
            half the swept volume of the first stage.
        intercooler_m3: Volume between the stages. [m3] Range (0;10]. Default: 1.5 swept volumes of
            the first stage.
        intercooler_ua_w_k: Heat transfer of the intercooler to ambient. [W/K] Range [0;1e6].
            Default: 1.7 times the nominal heat capacity flow.
        intercooler_area_m2: Effective area of its flow resistance, in series with each second-stage
            suction valve. [m2] Range (0;10]. Default: 1.5 hp_suction_area_m2.
        relief_set_pa: Absolute pressure at which the intercooler relief valve begins to open; fully
            open at 1.1 times. [Pa] Range (0;1e8]. Default: 1.5 times the nominal interstage
            pressure.
        relief_area_m2: Effective area of the open relief valve. [m2] Range [0;1]. Default: passes
            1.5 times the displacement at relief_set_pa.
        intercooler_leak_m2: Leak from the intercooler to ambient. [m2] Range [0;1]. Default: 0.
        line_m3: Volume from the last discharge valve to the check valve. [m3] Range (0;10].
            Default: 0.3 swept volumes of the first stage.
        line_ua_w_k: Heat transfer of this line to ambient. [W/K] Range [0;1e6]. Default: 0.3 times
            the nominal heat capacity flow.
        unloader_leak_m2: Leak from this line to ambient through the unloader. [m2] Range [0;1].
            Default: 0.
        lp_wall_ua_w_k: Heat transfer from one first-stage cylinder to ambient. [W/K] Range (0;1e6].
            Default: 120 W/(m2 K) times pi bore (stroke + bore/2).
        hp_wall_ua_w_k: Heat transfer from one second-stage cylinder to ambient. [W/K] Range
            (0;1e6]. Default: 120 W/(m2 K) times pi bore (stroke + bore/2).
        suction_ua_w_k: Heat transfer from the first-stage walls to the inlet plenum. [W/K] Range
            [0;1e6]. Default: 0.12 times the nominal heat capacity flow.
        lp_ring_area_m2: Effective area past the rings of one first-stage cylinder to the crankcase.
            [m2] Range [0;1]. Default: 5e-7 m times bore.
        hp_ring_area_m2: Effective area past the rings of one second-stage cylinder to the
            crankcase. [m2] Range [0;1]. Default: 5e-7 m times bore.
        crankcase_k: Temperature of gas in the crankcase, which is at ambient pressure. [K] Range
            (0;1000]. Default: 330.
        heat_coefficient: Factor a of the wall heat transfer Nu = a Re^b. Range [0;100]. Default:
            0.7.
        heat_exponent: Exponent b of the wall heat transfer Nu = a Re^b. Range [0;1]. Default: 0.7.
        gasket_breach_m2: Opening between the first two cylinders: first of each stage, or the first
            two of a single stage. [m2] Range [0;1]. Default: 0.
        lp_gasket_leak_m2: Opening to outside, first cylinder of first stage. [m2] Range [0;1].
            Default: 0.
        hp_gasket_leak_m2: Opening to outside, first cylinder of second stage. [m2] Range [0;1].
            Default: 0.
        fmep_pa: Friction mean effective pressure on all swept volumes. [Pa] Range [0;1e7]. Default:
            3e4.
        belt_efficiency: Shaft power over motor power. Range (0;1]. Default: 0.95.
        belt_slip: Share of the pump speed lost by slip of the belt. Range [0;0.9]. Default: 0.
        pulley_ratio: Pump speed over motor speed without belt slip. Range (0;20]. Default:
            speed_rev_s over motor speed at rated slip.
        motor_synchronous_rev_s: Motor speed without load. [rev/s] Range (0;1000]. Default: 30.
        motor_rated_slip: Slip at rated power and voltage. Range [0;0.3]. Default: 0.035.
        motor_rated_v: Rated voltage. [V] Range (0;1e5]. Default: 230.
        motor_rated_w: Rated shaft power of the motor. [W] Range (0;1e8]. Default: 1.1 times a
            closed-form estimate at cut_out_pa.
        motor_torque_factor: Torque over a sound motor's, same slip and voltage. Range (0;2].
            Default: 1.
        receiver_m3: Volume of the receiver. [m3] Range (0;1e4]. Default: 20 s of displacement.
        receiver_water_m3: Volume of water in the receiver; less than receiver_m3. [m3] Range
            [0;1e4]. Default: 0.
        receiver_wall_j_k: Heat capacity of the receiver wall. [J/K] Range (0;1e9]. Default: 1e4
            J/(K m3) times receiver_m3 times cut_out_pa / (1 bar).
        receiver_gas_ua_w_k: Heat transfer from gas to wall at ambient pressure; grows as p^(2/3).
            [W/K] Range [0;1e6]. Default: 29 W/(m2 K) times receiver_m3^(2/3).
        receiver_wall_ua_w_k: Heat transfer from wall to ambient. [W/K] Range [0;1e6]. Default: 58
            W/(m2 K) times receiver_m3^(2/3).
        downstream_leak_m2: Leak from the receiver or the system behind it. [m2] Range [0;1].
            Default: 0.
        demand_m3_s: Air drawn from the receiver, as free air of the site. [m3/s] Range [0;1000].
            Default: 0.
        cut_in_pa: Pressure, absolute, at which the switch starts the pump. [Pa] Range (0;1e8].
            Default: 10.32 bar, single-stage 7.56 bar.
        cut_out_pa: Pressure, absolute, at which the switch stops the pump. [Pa] Range (0;1e8].
            Default: 13.08 bar, single-stage 9.63 bar.
        switch_error_pa: True minus set pressure at which the switch acts. [Pa] Range [-1e7;1e7].
            Default: 0.
        gauge_error_pa: Reading of the receiver gauge minus true pressure. [Pa] Range [-1e7;1e7].
            Default: 0.
        rated_delivery_m3_s: Free air delivery on the nameplate. [m3/s] Range (0;1000]. Default:
            none.
        rated_pa: Receiver pressure, absolute, of that rating. [Pa] Range (0;1e8]. Default:
            cut_out_pa.
        gas_constant_j_kg_k: Gas constant of the air. [J/(kg K)] Range (0;1e4]. Default: 287.05.
        heat_capacity_ratio: Heat capacity ratio of the air. Range (1;1.7]. Default: 1.4.
        stages: Number of stages. Range [1;2]. Default: 2.
        arrangement: Of the cylinders. One of MACHINE_ARRANGEMENT_* (enumeration
            freeair_machine_arrangement). Default: FREEAIR_MACHINE_V.
        lp_cylinders: Equal cylinders of the first stage. Range [1;4]. Default: 1.
        hp_cylinders: Equal cylinders of the second stage. Range [1;4]. Default: 1.
        lp_leaking_cylinders: How many cylinders of the first stage, from the first, have its valve
            leaks; 0 for all. Range [0;4]. Default: 0.
        hp_leaking_cylinders: The same of the second stage. Range [0;4]. Default: 0.
    """

    _c_name = "freeair_machine"
    __slots__ = ("_memory",)


class MachineSite(_runtime.Structure):
    """The site where the machine stands.

    Fields:
        barometric_pa: Barometric pressure. [Pa] Range [3e4;1.2e5]. Default: 101325.
        ambient_k: Temperature of intake and cooling air. [K] Range [220;340]. Default: 293.15.
        humidity: Relative humidity of the intake air; changes its gas constant. Range [0;1].
            Default: 0.
        supply_v: Voltage at the running motor. [V] Range (0;1e5]. Default: motor_rated_v of the
            machine.
    """

    _c_name = "freeair_machine_site"
    __slots__ = ("_memory",)


class CycleResult(_runtime.Structure):
    """The operating point of a machine.

    Flows are means over a revolution, net and positive outward unless said.

    Fields:
        delivery_m3_s: Net flow into the receiver as free air of the site; negative when it flows
            back. [m3/s]
        delivery_kg_s: The same as mass flow. [kg/s]
        intake_kg_s: Net flow in through the filter. [kg/s]
        inlet_backflow_kg_s: Flow that blows back out of the filter. [kg/s]
        interstage_mean_pa: Mean pressure of the intercooler, absolute; NaN for a single stage. [Pa]
        interstage_min_pa: Lowest pressure of the intercooler; NaN for a single stage. [Pa]
        interstage_max_pa: Highest pressure of the intercooler; NaN for a single stage. [Pa]
        intercooler_k: Mean temperature of the gas in the intercooler; NaN for a single stage. [K]
        plenum_pa: Mean pressure behind the filter. [Pa]
        plenum_k: Mean temperature behind the filter. [K]
        line_pa: Mean pressure before the check valve. [Pa]
        line_k: Mean temperature before the check valve. [K]
        lp_discharge_k: Mean temperature of gas leaving the first stage. [K]
        hp_discharge_k: Mean temperature of gas leaving the second stage; NaN for a single stage.
            [K]
        lp_wall_k: Wall temperature of the first cylinder of the first stage. [K]
        hp_wall_k: Wall temperature of the first cylinder of the second stage; NaN for a single
            stage. [K]
        lp_volumetric_efficiency: Net intake of the first stage over its displacement at ambient
            density.
        hp_volumetric_efficiency: Net intake of the second stage over its displacement at
            intercooler density.
        lp_indicated_w: Indicated power of the first stage. [W]
        hp_indicated_w: Indicated power of the second stage; 0 for a single stage. [W]
        friction_w: Friction power. [W]
        shaft_w: Power at the pump shaft. [W]
        motor_w: Power at the motor shaft. [W]
        speed_rev_s: Speed of the pump. [rev/s]
        motor_speed_rev_s: Speed of the motor. [rev/s]
        motor_slip: Slip of the motor.
        relief_kg_s: Flow through the interstage relief valve. [kg/s]
        interstage_leak_kg_s: Leak from the intercooler. [kg/s]
        unloader_kg_s: Leak through the unloader. [kg/s]
        lp_ring_kg_s: Flow past all rings of the first stage to the crankcase. [kg/s]
        hp_ring_kg_s: Flow past all rings of the second stage to the crankcase. [kg/s]
        gasket_breach_kg_s: Net flow through the breach from the first cylinder to the second.
            [kg/s]
        gasket_leak_kg_s: Flow from the cylinders to outside past the gaskets. [kg/s]
        lp_suction_backflow_kg_s: Flow back out through the suction valves of the first stage.
            [kg/s]
        hp_suction_backflow_kg_s: Flow back out through the suction valves of the second stage.
            [kg/s]
        wall_heat_w: Heat from the gas to all cylinder walls. [W]
        intercooler_w: Heat from the intercooler to ambient. [W]
        line_w: Heat from the line to ambient. [W]
        lp_rod_max_n: Largest gas load on a first-stage rod, compression positive. [N]
        lp_rod_min_n: Smallest gas load on a first-stage rod; negative is tension. [N]
        hp_rod_max_n: Largest gas load on a second-stage rod. [N]
        hp_rod_min_n: Smallest gas load on a second-stage rod. [N]
        mass_error: Imbalance of mass over the revolution, over the displacement's mass.
        energy_error: Imbalance of energy over the revolution, over the displacement's enthalpy.
        residual: Largest change of a state over the last revolution, over the displacement.
        revolutions: Revolutions integrated.
        steps: Steps taken in all of them.
        evaluations: Evaluations of the rates in all of them.
        stages: Stages of the machine.
    """

    _c_name = "freeair_cycle_result"
    __slots__ = ("_memory",)


class PredictionRun(_runtime.Structure):
    """A run of the pump into its receiver.

    Fields:
        from_pa: Gauge reading at the start, absolute. [Pa] Range (0;1e8). Default: barometric plus
            gauge error.
        to_pa: Gauge reading at the end. [Pa] Range (0;1e8). Default: where the switch stops the
            pump.
        gas_k: Gas temperature at the start, with FREEAIR_PREDICTION_GIVEN. [K] Range [150;600].
            Default: ambient.
        wall_k: Wall temperature at the start, likewise. [K] Range [150;600]. Default: ambient.
        draw_down_s: Duration of the drawing down. [s] Range [1;1e5]. Default: 60.
        most_s: Give up after this time. [s] Range [1;1e7]. Default: 7200.
        accuracy: Accuracy of freeair_cycle_point. Range [1e-6;0.1]. Default: 1e-3.
        start: State before the run. One of PREDICTION_START_* (enumeration
            freeair_prediction_start).
        nodes: Operating points along the way. Range [3;32].
    """

    _c_name = "freeair_prediction_run"
    __slots__ = ("_memory",)


class PredictionResult(_runtime.Structure):
    """What became of a run.

    Fields:
        time_s: Time from start to end; infinite when the end is not reached. [s]
        cut_in_s: Time from start to the cut-in pressure; infinite when not reached, NaN when it
            starts above. [s]
        end_pa: Gauge reading at the end, absolute. [Pa]
        start_gas_k: Gas temperature at the start. [K]
        end_gas_k: Gas temperature at the end. [K]
        end_wall_k: Wall temperature of the receiver at the end. [K]
        start_delivery_m3_s: Free air delivery at the start. [m3/s]
        end_delivery_m3_s: Free air delivery at the end. [m3/s]
        mean_delivery_m3_s: Mean of the delivery over the run. [m3/s]
        apparent_m3_s: What V dp / (p_a t) over gauge readings makes of the run; reads too high.
            [m3/s]
        shaft_j: Work at the pump shaft. [J]
        reached: 1 when the end was reached.
        evaluations: Evaluations of the crank-angle rates.
    """

    _c_name = "freeair_prediction_result"
    __slots__ = ("_memory",)


_runtime.STRUCTURES["freeair_machine"] = Machine
_runtime.STRUCTURES["freeair_machine_site"] = MachineSite
_runtime.STRUCTURES["freeair_cycle_result"] = CycleResult
_runtime.STRUCTURES["freeair_prediction_run"] = PredictionRun
_runtime.STRUCTURES["freeair_prediction_result"] = PredictionResult


def units_is_gauge(*, symbol):
    """Whether a symbol means a pressure above that of the surrounding air.

    Model: table look-up. Symbols that say so: psig, barg, kPag, kgf/cm2g, inHg vac and their
    spellings. A plain psi or bar says neither; here it is absolute.

    Arguments:
        symbol: Symbol of a unit.

    Returns:
        gauge: 1 for a gauge pressure, 0 for every other unit.

    Raises:
        NotFoundError: the symbol is not known
        UnsupportedError: the symbol names a flow at a reference state

    Source: definition
    """
    return _runtime.call("freeair_units_is_gauge")((symbol,))


def units_si_from(*, value, symbol):
    """Value in coherent SI of a value in a unit.

    Model: si = zero + value x factor, the factor exact by definition of the unit wherever it has an
    exact one. Temperatures are readings of a scale: 20 degC is 293.15 K. A gauge pressure stays a
    gauge pressure, in pascal: ask freeair_units_is_gauge() before you use it as an absolute one.

    Arguments:
        value: Value in the unit. [the caller's unit] Range [-1e100;1e100].
        symbol: Symbol of the unit, such as "psi".

    Returns:
        si: Value in the coherent SI unit that freeair_units_si_symbol() names. [the caller's unit]

    Raises:
        DomainError: value is outside its range, or a temperature below absolute zero
        NotFoundError: the symbol is not known
        UnsupportedError: the symbol names a flow at a reference state

    Source: NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO
    80000
    """
    return _runtime.call("freeair_units_si_from")((value, symbol,))


def units_from_si(*, si, symbol):
    """Value in a unit of a value in coherent SI.

    Model: inverse of freeair_units_si_from().

    Arguments:
        si: Value in the unit that freeair_units_si_symbol() names. [the caller's unit] Range
            [-1e100;1e100].
        symbol: Symbol of the unit, such as "psi".

    Returns:
        value: Value in the unit. [the caller's unit]

    Raises:
        DomainError: si is outside its range, or a temperature below absolute zero
        NotFoundError: the symbol is not known
        UnsupportedError: the symbol names a flow at a reference state

    Source: NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO
    80000
    """
    return _runtime.call("freeair_units_from_si")((si, symbol,))


def units_convert(*, value, from_, to):
    """Value in one unit of a value in another.

    Model: through coherent SI. Temperatures are readings of a scale. A gauge pressure converts to
    gauge pressures only.

    Arguments:
        value: Value in the first unit. [the caller's unit] Range [-1e100;1e100].
        from_: Symbol of the first unit.
        to: Symbol of the second unit.

    Returns:
        converted: Value in the second unit. [the caller's unit]

    Raises:
        DomainError: value is outside its range, or a temperature below absolute zero
        NotFoundError: a symbol is not known
        DimensionError: the units measure different kinds of quantity, or one is gauge and the other
            not
        UnsupportedError: a symbol names a flow at a reference state

    Source: NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO
    80000
    """
    return _runtime.call("freeair_units_convert")((value, from_, to,))


def units_convert_difference(*, value, from_, to):
    """Difference in one unit of a difference in another.

    Model: as freeair_units_convert(), but scales are compared by the size of their degrees alone: a
    difference of 1 degC is one of 1 K and of 1.8 degF. A difference between two gauge pressures is
    the same as that between the two absolute ones, so here gauge and absolute mix.

    Arguments:
        value: Difference in the first unit. [the caller's unit] Range [-1e100;1e100].
        from_: Symbol of the first unit.
        to: Symbol of the second unit.

    Returns:
        converted: Difference in the second unit. [the caller's unit]

    Raises:
        DomainError: value is outside its range
        NotFoundError: a symbol is not known
        DimensionError: the units measure different kinds of quantity
        UnsupportedError: a symbol names a flow at a reference state

    Source: NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, 4.2.1.1 and
    Appendix B
    """
    return _runtime.call("freeair_units_convert_difference")((value, from_, to,))


def units_absolute_from_gauge(*, gauge_pa, barometric_pa):
    """Absolute pressure of a gauge reading.

    Model: p = gauge + barometric. The barometer of the site, not of the sea: at 1500 m it reads
    about 85 kPa (freeair_atmosphere_pressure_from_altitude()).

    Arguments:
        gauge_pa: Gauge pressure. [Pa] Range [-200000;1e9].
        barometric_pa: Pressure of the surrounding air, absolute. [Pa] Range [10000;200000].

    Returns:
        p_pa: Pressure, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the gauge reading lies below perfect vacuum at this barometer

    Source: definition
    """
    return _runtime.call("freeair_units_absolute_from_gauge")((gauge_pa, barometric_pa,))


def units_gauge_from_absolute(*, p_pa, barometric_pa):
    """Gauge reading of an absolute pressure.

    Model: gauge = p - barometric; negative below the barometer.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [0;1e9].
        barometric_pa: Pressure of the surrounding air, absolute. [Pa] Range [10000;200000].

    Returns:
        gauge_pa: Gauge pressure. [Pa]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_units_gauge_from_absolute")((p_pa, barometric_pa,))


ReferenceConditionsResult = _collections.namedtuple(
    "ReferenceConditionsResult", ['p_pa', 't_k', 'relative_humidity'])


def reference_conditions(*, state):
    """Pressure, temperature and humidity of a reference state.

    Model: table look-up.

    Arguments:
        state: A reference state. One of REFERENCE_STATE_* (enumeration freeair_reference_state).

    Returns:
        p_pa: Pressure, absolute. [Pa]
        t_k: Temperature. [K]
        relative_humidity: Relative humidity, 0 to 1.

    Raises:
        NotFoundError: there is no such state

    Source: ISO 1217:2009; ISO 8778:2003; DIN 1343:1990; ISO 13443:1996; ISO 2533:1975; common
    practice for the rest
    """
    return _runtime.call("freeair_reference_conditions")((state,), ReferenceConditionsResult)


def reference_find(*, name):
    """Reference state by name, in any case.

    Model: table look-up: the full name, the rest of it with '_' or blanks ("iso 1217"), ANR,
    normal, ICAO, ISA. Not scfm: people mean different states by it.

    Arguments:
        name: Name of a state.

    Returns:
        state: The state; 0 when there is none. One of REFERENCE_STATE_* (enumeration
            freeair_reference_state).

    Raises:
        NotFoundError: there is no state of this name

    Source: definition
    """
    return _runtime.call("freeair_reference_find")((name,))


def reference_density(*, p_pa, t_k, relative_humidity):
    """Density of moist air.

    Model: rho = (p - e)/(Rd T) + e/(Rv T), e = relative humidity x saturation pressure over water
    (IAPWS-IF97, equation 30, extrapolated below 0 degC); Rd = 8.314462618/0.02896546 and Rv =
    8.314462618/0.01801528 J/(kg K).

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1000;1e8].
        t_k: Temperature. [K] Range [223.15;473.15].
        relative_humidity: Relative humidity; 0 for dry air. Range [0;1].

    Returns:
        rho_kg_m3: Density. [kg/m3]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the vapour alone would have at least the whole pressure

    Source: IAPWS R7-97(2012), Industrial Formulation 1997, equation 30; molar masses of Picard et
    al., Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149
    """
    return _runtime.call("freeair_reference_density")((p_pa, t_k, relative_humidity,))


def reference_flow_convert(*, q1_m3_s, p1_pa, t1_k, relative_humidity1, p2_pa, t2_k, relative_humidity2):
    """Volume flow at one state of a flow given at another.

    Model: the same mass of dry air a second, so q2/q1 = (p1 - e1)/(p2 - e2) x T2/T1, e = relative
    humidity x saturation pressure of water.

    Arguments:
        q1_m3_s: Volume flow at the first state. [m3/s] Range [0;1e6].
        p1_pa: Pressure of the first state, absolute. [Pa] Range [1000;1e8].
        t1_k: Temperature of the first state. [K] Range [223.15;473.15].
        relative_humidity1: Relative humidity of the first state. Range [0;1].
        p2_pa: Pressure of the second state, absolute. [Pa] Range [1000;1e8].
        t2_k: Temperature of the second state. [K] Range [223.15;473.15].
        relative_humidity2: Relative humidity of the second state. Range [0;1].

    Returns:
        q2_m3_s: Volume flow at the second state. [m3/s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: in one of the states the vapour alone would have at least the whole
            pressure

    Source: algebra: ideal gas law for dry air at its partial pressure
    """
    return _runtime.call("freeair_reference_flow_convert")((q1_m3_s, p1_pa, t1_k, relative_humidity1, p2_pa, t2_k, relative_humidity2,))


def reference_flow_between_states(*, q1_m3_s, from_state, to_state):
    """Volume flow at one reference state of a flow given at another.

    Model: freeair_reference_flow_convert() with the conditions of both states.

    Arguments:
        q1_m3_s: Volume flow at the first state. [m3/s] Range [0;1e6].
        from_state: The first state. One of REFERENCE_STATE_* (enumeration freeair_reference_state).
        to_state: The second state. One of REFERENCE_STATE_* (enumeration freeair_reference_state).

    Returns:
        q2_m3_s: Volume flow at the second state. [m3/s]

    Raises:
        DomainError: q1_m3_s is outside its range
        NotFoundError: there is no such state

    Source: algebra: ideal gas law for dry air at its partial pressure
    """
    return _runtime.call("freeair_reference_flow_between_states")((q1_m3_s, from_state, to_state,))


def reference_flow_to_state(*, q1_m3_s, p1_pa, t1_k, relative_humidity1, state):
    """Volume flow at a reference state of a flow measured at the site.

    Model: freeair_reference_flow_convert() with the conditions of the state as the second.

    Arguments:
        q1_m3_s: Volume flow at the site's conditions. [m3/s] Range [0;1e6].
        p1_pa: Pressure at the site, absolute. [Pa] Range [1000;1e8].
        t1_k: Temperature at the site. [K] Range [223.15;473.15].
        relative_humidity1: Relative humidity at the site. Range [0;1].
        state: The reference state. One of REFERENCE_STATE_* (enumeration freeair_reference_state).

    Returns:
        q2_m3_s: Volume flow at the reference state. [m3/s]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: there is no such state
        NoSolutionError: at the site the vapour alone would have at least the whole pressure

    Source: algebra: ideal gas law for dry air at its partial pressure
    """
    return _runtime.call("freeair_reference_flow_to_state")((q1_m3_s, p1_pa, t1_k, relative_humidity1, state,))


def reference_flow_from_state(*, q1_m3_s, state, p2_pa, t2_k, relative_humidity2):
    """Volume flow at the site of a flow given at a reference state.

    Model: freeair_reference_flow_convert() with the conditions of the state as the first.

    Arguments:
        q1_m3_s: Volume flow at the reference state. [m3/s] Range [0;1e6].
        state: The reference state. One of REFERENCE_STATE_* (enumeration freeair_reference_state).
        p2_pa: Pressure at the site, absolute. [Pa] Range [1000;1e8].
        t2_k: Temperature at the site. [K] Range [223.15;473.15].
        relative_humidity2: Relative humidity at the site. Range [0;1].

    Returns:
        q2_m3_s: Volume flow at the site's conditions. [m3/s]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: there is no such state
        NoSolutionError: at the site the vapour alone would have at least the whole pressure

    Source: algebra: ideal gas law for dry air at its partial pressure
    """
    return _runtime.call("freeair_reference_flow_from_state")((q1_m3_s, state, p2_pa, t2_k, relative_humidity2,))


ReferenceMassFlowFromVolumeFlowResult = _collections.namedtuple(
    "ReferenceMassFlowFromVolumeFlowResult", ['mass_kg_s', 'dry_kg_s'])


def reference_mass_flow_from_volume_flow(*, q_m3_s, p_pa, t_k, relative_humidity):
    """Mass flow of a volume flow at a state, vapour included, and the dry air in it.

    Model: q x rho for the whole, q (p - e)/(Rd T) for the dry air, as in
    freeair_reference_density().

    Arguments:
        q_m3_s: Volume flow at the state. [m3/s] Range [0;1e6].
        p_pa: Pressure, absolute. [Pa] Range [1000;1e8].
        t_k: Temperature. [K] Range [223.15;473.15].
        relative_humidity: Relative humidity. Range [0;1].

    Returns:
        mass_kg_s: Mass flow of moist air. [kg/s]
        dry_kg_s: Mass flow of the dry air in it. [kg/s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the vapour alone would have at least the whole pressure

    Source: algebra: ideal gas law for dry air and vapour at their partial pressures
    """
    return _runtime.call("freeair_reference_mass_flow_from_volume_flow")((q_m3_s, p_pa, t_k, relative_humidity,), ReferenceMassFlowFromVolumeFlowResult)


def reference_volume_flow_from_mass_flow(*, mass_kg_s, p_pa, t_k, relative_humidity):
    """Volume flow at a state of a mass flow of moist air.

    Model: q = mass flow / rho, as in freeair_reference_density().

    Arguments:
        mass_kg_s: Mass flow of moist air, vapour included. [kg/s] Range [0;1e6].
        p_pa: Pressure, absolute. [Pa] Range [1000;1e8].
        t_k: Temperature. [K] Range [223.15;473.15].
        relative_humidity: Relative humidity. Range [0;1].

    Returns:
        q_m3_s: Volume flow at the state. [m3/s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the vapour alone would have at least the whole pressure

    Source: algebra: ideal gas law for dry air and vapour at their partial pressures
    """
    return _runtime.call("freeair_reference_volume_flow_from_mass_flow")((mass_kg_s, p_pa, t_k, relative_humidity,))


def verdict_probability(*, value, uncertainty, lower, upper):
    """Probability that a measured quantity lies within its limits.

    Model: P = Phi((upper - value) / u) - Phi((lower - value) / u), Phi the standard normal
    distribution; evaluated in the tail where it is small. An infinite limit makes the requirement
    one-sided. u = 0 gives 0 or 1, a value on a limit counts as conforming.

    Arguments:
        value: Estimate. [the caller's unit] Range (-inf;inf).
        uncertainty: Standard uncertainty of the estimate, in the unit of value. [the caller's unit]
            Range [0;inf).
        lower: Lower limit; -inf for none. [the caller's unit] Range [-inf;inf).
        upper: Upper limit, above lower; inf for none. [the caller's unit] Range (-inf;inf].

    Returns:
        probability: Probability of conformance.

    Raises:
        DomainError: an input is outside its range, or upper is not above lower

    Source: JCGM 106:2012, Evaluation of measurement data - The role of measurement uncertainty in
    conformity assessment, 7.2 to 7.4
    """
    return _runtime.call("freeair_verdict_probability")((value, uncertainty, lower, upper,))


def verdict_decide(*, value, uncertainty, lower, upper, confidence):
    """Guarded decision on a measured quantity against its limits.

    Model: MEETS when the probability of conformance is at least the confidence, FAILS when it is at
    most one minus the confidence, else CANNOT_TELL. With one limit and confidence 0.95 this is a
    guard band of 1.645 standard uncertainties on either side.

    Arguments:
        value: Estimate. [the caller's unit] Range (-inf;inf).
        uncertainty: Standard uncertainty of the estimate, in the unit of value. [the caller's unit]
            Range [0;inf).
        lower: Lower limit; -inf for none. [the caller's unit] Range [-inf;inf).
        upper: Upper limit, above lower; inf for none. [the caller's unit] Range (-inf;inf].
        confidence: Probability required of a firm verdict. Range (0.5;1).

    Returns:
        verdict: The decision. One of VERDICT_* (enumeration freeair_verdict).

    Raises:
        DomainError: an input is outside its range, or upper is not above lower

    Source: JCGM 106:2012, 8.3, guarded acceptance and guarded rejection
    """
    return _runtime.call("freeair_verdict_decide")((value, uncertainty, lower, upper, confidence,))


def atmosphere_pressure_from_altitude(*, altitude_m):
    """Pressure of the standard atmosphere at a geopotential altitude.

    Model: p = p0 (1 - L H / T0)^(g0 / (L R)), with p0 = 101325 Pa, T0 = 288.15 K, L = 0.0065 K/m,
    g0 = 9.80665 m/s2, R = 287.05287 J/(kg K). Troposphere only.

    Arguments:
        altitude_m: Geopotential altitude above mean sea level. [m] Range [-5000;11000].

    Returns:
        p_pa: Pressure, absolute. [Pa]

    Raises:
        DomainError: altitude_m is outside its range

    Source: ISO 2533:1975, Standard Atmosphere, 2.2; US Standard Atmosphere 1976, equation 33a
    """
    return _runtime.call("freeair_atmosphere_pressure_from_altitude")((altitude_m,))


def atmosphere_altitude_from_pressure(*, p_pa):
    """Geopotential altitude at which the standard atmosphere has a pressure.

    Model: inverse of freeair_atmosphere_pressure_from_altitude, in closed form.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [22632;177688].

    Returns:
        altitude_m: Geopotential altitude above mean sea level. [m]

    Raises:
        DomainError: p_pa is outside its range

    Source: ISO 2533:1975, Standard Atmosphere, 2.2, solved for altitude
    """
    return _runtime.call("freeair_atmosphere_altitude_from_pressure")((p_pa,))


def atmosphere_temperature_from_altitude(*, altitude_m):
    """Temperature of the standard atmosphere at a geopotential altitude.

    Model: T = T0 - L H, T0 = 288.15 K, L = 0.0065 K/m. Troposphere only.

    Arguments:
        altitude_m: Geopotential altitude above mean sea level. [m] Range [-5000;11000].

    Returns:
        t_k: Temperature. [K]

    Raises:
        DomainError: altitude_m is outside its range

    Source: ISO 2533:1975, Standard Atmosphere, 2.2
    """
    return _runtime.call("freeair_atmosphere_temperature_from_altitude")((altitude_m,))


def atmosphere_density_from_altitude(*, altitude_m):
    """Density of the standard atmosphere at a geopotential altitude.

    Model: rho = p / (R T) with pressure and temperature of the standard atmosphere.

    Arguments:
        altitude_m: Geopotential altitude above mean sea level. [m] Range [-5000;11000].

    Returns:
        rho_kg_m3: Density. [kg/m3]

    Raises:
        DomainError: altitude_m is outside its range

    Source: ISO 2533:1975, Standard Atmosphere, 2.2
    """
    return _runtime.call("freeair_atmosphere_density_from_altitude")((altitude_m,))


def atmosphere_altitude_from_geometric(*, geometric_m):
    """Geopotential altitude of a geometric altitude.

    Model: H = r Z / (r + Z), r = 6356766 m, the nominal radius of the earth.

    Arguments:
        geometric_m: Geometric altitude above mean sea level. [m] Range [-5000;20000].

    Returns:
        altitude_m: Geopotential altitude. [m]

    Raises:
        DomainError: geometric_m is outside its range

    Source: ISO 2533:1975, Standard Atmosphere, 2.3; US Standard Atmosphere 1976, equation 18
    """
    return _runtime.call("freeair_atmosphere_altitude_from_geometric")((geometric_m,))


def atmosphere_pressure_from_geometric(*, geometric_m):
    """Pressure of the standard atmosphere at a geometric altitude.

    Model: freeair_atmosphere_pressure_from_altitude at the geopotential altitude r Z / (r + Z), r =
    6356766 m.

    Arguments:
        geometric_m: Geometric altitude above mean sea level. [m] Range [-4996;11019].

    Returns:
        p_pa: Pressure, absolute. [Pa]

    Raises:
        DomainError: geometric_m is outside its range

    Source: US Standard Atmosphere 1976, equations 18 and 33a
    """
    return _runtime.call("freeair_atmosphere_pressure_from_geometric")((geometric_m,))


def machine_complete(*, machine):
    """Fills every field that is not given with its default.

    Model: the defaults documented at each field. Idempotent: a complete description is returned
    unchanged. rated_delivery_m3_s stays NaN when not given.

    Arguments:
        machine: Description, possibly with NaN fields.

    Returns:
        complete: The same, complete.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a required field is missing, a field is outside its range, a leak is larger
            than its valve, cut_in_pa is not below cut_out_pa, or water fills the receiver

    Source: common practice
    """
    return _runtime.call("freeair_machine_complete")((machine,))


def machine_displacement(*, machine):
    """Displacement: swept volume of the first stage times nominal speed.

    Model: lp_cylinders * pi/4 * bore^2 * stroke * speed, at rated motor slip and without belt slip.

    Arguments:
        machine: Description, possibly with NaN fields.

    Returns:
        displacement_m3_s: Displacement. [m3/s]

    Raises:
        StructureVersionError: the structure has an unknown size
        DomainError: as in freeair_machine_complete

    Source: definition
    """
    return _runtime.call("freeair_machine_displacement")((machine,))


def fault_applies(*, machine, fault):
    """Whether a machine can have a fault at all.

    Model: faults of the second stage and between the stages need two stages; a gasket between two
    cylinders needs two cylinders side by side under one head.

    Arguments:
        machine: Description, possibly with NaN fields.
        fault: A fault. One of FAULT_* (enumeration freeair_fault).

    Returns:
        applies: 1 if it can, else 0.

    Raises:
        StructureVersionError: the structure has an unknown size
        DomainError: the description is invalid
        NotFoundError: fault is not a known code

    Source: definition
    """
    return _runtime.call("freeair_fault_applies")((machine, fault,))


FaultApplyResult = _collections.namedtuple(
    "FaultApplyResult", ['faulty_machine', 'faulty_site'])


def fault_apply(*, machine, site, fault, severity):
    """Applies a fault to a description and its site.

    Model: the change documented at each code, in addition to what the description already holds;
    continuous and monotone in the severity, and none at severity 0. A valve fault of a stage of
    several cylinders affects the first of them, unless lp_leaking_cylinders or hp_leaking_cylinders
    says otherwise or the stage already leaks. The outputs may be the same structures as the inputs.

    Arguments:
        machine: Description, possibly with NaN fields.
        site: Site, possibly with NaN fields.
        fault: A fault. One of FAULT_* (enumeration freeair_fault).
        severity: Severity. Range [0;1].

    Returns:
        faulty_machine: The complete description with the fault.
        faulty_site: The complete site with the fault.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: the description is invalid, or severity is outside its range
        NotFoundError: fault is not a known code
        UnsupportedError: the machine cannot have this fault

    Caution: Never plug, reset or weaken a relief valve.

    Source: common practice
    """
    return _runtime.call("freeair_fault_apply")((machine, site, fault, severity,), FaultApplyResult)


def cycle_point(*, machine, site, receiver_pa, receiver_k=None, accuracy=None):
    """Operating point of a machine against a receiver at constant pressure.

    Model: mass and energy balances dm/dt = sum m', dU/dt = sum m' h - Q - p dV/dt of each volume
    over the crank angle, isentropic nozzles, quasi-static valves, wall heat Nu = a Re^b, integrated
    with an L-stable pair of order 4(3) to periodicity by Newton's method. At most 400 revolutions,
    usually 6 to 12.

    Arguments:
        machine: The machine.
        site: The site.
        receiver_pa: Pressure in the receiver, absolute. [Pa] Range (0;1e8].
        receiver_k: Temperature of gas that flows back from the receiver. [K] Range (0;1000].
            Default: ambient.
        accuracy: Accuracy of the delivery, over the displacement. Range [1e-6;0.1]. Default: 1e-3.

    Returns:
        point: The operating point.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, see freeair_machine_complete
        NoConvergenceError: no revolution repeated
        NoSolutionError: the description leads to no physical state

    Caution: Discharge parts burn; let them cool.

    Source: Annand, Heat transfer in the cylinders of reciprocating internal combustion engines,
    Proc. IMechE 177 (1963), form of the wall heat law; the balances are common practice
    """
    return _runtime.call("freeair_cycle_point")((machine, site, receiver_pa, receiver_k, accuracy,))


CycleCardResult = _collections.namedtuple(
    "CycleCardResult", ['v_m3', 'p_pa', 't_k'])


def cycle_card(*, machine, site, receiver_pa, receiver_k=None, accuracy=None, cylinder, n):
    """Indicator card of one cylinder at an operating point.

    Model: as in freeair_cycle_point; n points at equal crank angles from the top dead centre of the
    first cylinder, so that point i is at i/n of a revolution.

    Arguments:
        machine: The machine.
        site: The site.
        receiver_pa: Pressure in the receiver, absolute. [Pa] Range (0;1e8].
        receiver_k: Temperature of gas that flows back from the receiver. [K] Range (0;1000].
            Default: ambient.
        accuracy: Accuracy of the delivery, over the displacement. Range [1e-6;0.1]. Default: 1e-3.
        cylinder: Which cylinder: first stage from 0, then second stage. Range [0;7].
        n: Number of points, at least 4.

    Returns:
        v_m3: Volume, clearance included. [m3]
        p_pa: Pressure, absolute. [Pa]
        t_k: Temperature. [K]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or n is below 4
        NotFoundError: the machine has no such cylinder
        NoConvergenceError: no revolution repeated
        NoSolutionError: the description leads to no physical state

    Source: common practice
    """
    return _runtime.call("freeair_cycle_card")((machine, site, receiver_pa, receiver_k, accuracy, cylinder, n,), CycleCardResult)


PredictionPumpupResult = _collections.namedtuple(
    "PredictionPumpupResult", ['result', 't_s', 'p_pa', 'gas_k', 'delivery_m3_s'])


def prediction_pumpup(*, machine, site, run, n):
    """Pump-up of the receiver: the curve and what becomes of the run.

    Model: dm/dt = delivery - leak - demand; dU/dt = enthalpy in - enthalpy out - UA (p/p_a)^(2/3)
    (T - Tw); C dTw/dt = the same heat - UA_wall (Tw - T_ambient); U = p V / (k - 1). Demand fades
    over the last 2 % above ambient pressure. Points lie at equal times from start to end of the
    run.

    Arguments:
        machine: The machine.
        site: The site.
        run: The run.
        n: Number of points, at least 2.

    Returns:
        result: What became of it.
        t_s: Time. [s]
        p_pa: Gauge reading, absolute. [Pa]
        gas_k: Gas temperature. [K]
        delivery_m3_s: Delivery of the pump as free air. [m3/s]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or the end is not above the start
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Never plug, reset or weaken a relief valve.

    Source: common practice
    """
    return _runtime.call("freeair_prediction_pumpup")((machine, site, run, n,), PredictionPumpupResult)


PredictionTimesResult = _collections.namedtuple(
    "PredictionTimesResult", ['result', 't_s'])


def prediction_times(*, machine, site, run, p_pa):
    """Times at which the receiver gauge passes given readings.

    Model: as freeair_prediction_pumpup, read off at pressures instead of times.

    Arguments:
        machine: The machine.
        site: The site.
        run: The run; it goes on to the highest of the readings, to_pa is ignored.
        p_pa: Gauge readings, absolute, in any order. [Pa] Range (0;1e8).

    Returns:
        result: What became of it.
        t_s: Time of each; infinite when not reached, 0 when at or below the start. [s]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or no reading is above the start
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state

    Source: common practice
    """
    return _runtime.call("freeair_prediction_times")((machine, site, run, p_pa,), PredictionTimesResult)


def prediction_level_off(*, machine, site, upper_pa=None):
    """Receiver pressure at which a machine levels off: delivery equals leaks and demand.

    Model: root of delivery - leak - demand over receiver pressure with gas at ambient temperature,
    by bracketing; delivery below 5e-5 of the displacement counts as none.

    Arguments:
        machine: The machine.
        site: The site.
        upper_pa: Highest pressure of interest, absolute. [Pa] Range (0;1e8]. Default: twice
            cut_out_pa.

    Returns:
        p_pa: Gauge reading, absolute; infinite when it still delivers at upper_pa. [Pa]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or upper_pa is not above barometric pressure
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state

    Caution: Never plug, reset or weaken a relief valve.

    Source: common practice
    """
    return _runtime.call("freeair_prediction_level_off")((machine, site, upper_pa,))


PredictionLeakDownResult = _collections.namedtuple(
    "PredictionLeakDownResult", ['t_s', 'p_pa'])


def prediction_leak_down(*, machine, site, from_pa, gas_k=None, wall_k=None, duration_s, with_check_valve, with_downstream, n):
    """Fall of the receiver pressure after the machine stops.

    Model: the receiver alone, as in freeair_prediction_pumpup; gas leaves through the leak of the
    check valve to the vented discharge line (if with_check_valve) and through the downstream leak
    (if with_downstream).

    Arguments:
        machine: The machine.
        site: The site.
        from_pa: Gauge reading at the start, absolute. [Pa] Range (0;1e8).
        gas_k: Gas temperature at the start. [K] Range [150;600]. Default: ambient.
        wall_k: Wall temperature at the start. [K] Range [150;600]. Default: ambient.
        duration_s: Duration. [s] Range (0;1e7].
        with_check_valve: 0 when the receiver is isolated from the pump, else 1. Range [0;1].
        with_downstream: 0 when the service valve is shut and nothing leaks behind it, else 1. Range
            [0;1].
        n: Number of points at equal times, at least 2.

    Returns:
        t_s: Time. [s]
        p_pa: Gauge reading, absolute. [Pa]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or n is below 2
        NoConvergenceError: the integration did not come to its end

    Caution: A receiver under pressure stores energy like an explosive.

    Source: common practice
    """
    return _runtime.call("freeair_prediction_leak_down")((machine, site, from_pa, gas_k, wall_k, duration_s, with_check_valve, with_downstream, n,), PredictionLeakDownResult)


RatingCompleteResult = _collections.namedtuple(
    "RatingCompleteResult", ['complete', 'adjusted', 'delivery_m3_s'])


def rating_complete(*, machine, site):
    """Completes a description so that it meets its rated delivery.

    Model: one unknown is adjusted until freeair_cycle_point at rated_pa delivers
    rated_delivery_m3_s within 0.1 % of displacement: the speed if it is not given, else the bores
    if lp_bore_m is not given (hp_bore_m follows by its default), else, as far as they are not given
    and as far as they must go, first the clearances (0.4 to 2.5 times their defaults), then the
    valve areas (0.35 to 2 times), then the suction heating (0 to 4 times). Everything else takes
    its default. Without a rating the defaults alone are filled in.

    Arguments:
        machine: Description, possibly with NaN fields. lp_bore_m, or both speed_rev_s and
            pulley_ratio, may be missing, when there is a rating.
        site: The site at which the rating holds.

    Returns:
        complete: The complete description.
        adjusted: What was adjusted, bits of freeair_rating_adjusted added up.
        delivery_m3_s: What the complete description delivers at rated_pa. [m3/s]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or too much is missing
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state

    Source: common practice
    """
    return _runtime.call("freeair_rating_complete")((machine, site,), RatingCompleteResult)


def status_name(*, status):
    """Name of a status code, such as "FREEAIR_ERR_DOMAIN".

    Model: table look-up.

    Arguments:
        status: A status code. One of STATUS_* (enumeration freeair_status).

    Returns: Static string, never null; "FREEAIR_UNKNOWN" for a code this library does not know.

    Source: definition
    """
    return _runtime.query("freeair_status_name", _c.c_char_p, [_c.c_int32], (status,))


def status_text(*, status):
    """Meaning of a status code as one English sentence.

    Model: table look-up.

    Arguments:
        status: A status code. One of STATUS_* (enumeration freeair_status).

    Returns: Static string, never null.

    Source: definition
    """
    return _runtime.query("freeair_status_text", _c.c_char_p, [_c.c_int32], (status,))


def version_number():
    """Release of the library that is running, as a number.

    Model: major x 10000 + minor x 100 + patch.

    Returns: The number; at least FREEAIR_VERSION_NUMBER when the library is new enough.

    Source: definition
    """
    return _runtime.query("freeair_version_number", _c.c_uint32, [], ())


def version_text():
    """Release of the library that is running, as text.

    Model: "major.minor.patch".

    Returns: Static string.

    Source: definition
    """
    return _runtime.query("freeair_version_text", _c.c_char_p, [], ())


def caution_text(*, caution):
    """Text of one caution, as one English sentence.

    Model: table look-up.

    Arguments:
        caution: One caution bit. One of CAUTION_* (enumeration freeair_caution).

    Returns: Static string, never null; an empty string when caution is not one known bit.

    Source: common practice
    """
    return _runtime.query("freeair_caution_text", _c.c_char_p, [_c.c_uint32], (caution,))


def caution_name(*, caution):
    """Name of one caution, such as "FREEAIR_CAUTION_HOT".

    Model: table look-up.

    Arguments:
        caution: One caution bit. One of CAUTION_* (enumeration freeair_caution).

    Returns: Static string, never null; an empty string when caution is not one known bit.

    Source: definition
    """
    return _runtime.query("freeair_caution_name", _c.c_char_p, [_c.c_uint32], (caution,))


def units_si_symbol(*, symbol):
    """Symbol of the coherent SI unit of the quantity that a unit measures.

    Model: table look-up; "psi" gives "Pa", "degF" gives "K", "%" gives "1".

    Arguments:
        symbol: Symbol of a unit.

    Returns: Static string, never null; an empty string when symbol is null or not known.

    Source: definition
    """
    return _runtime.query("freeair_units_si_symbol", _c.c_char_p, [_c.c_char_p], (symbol,))


def units_count():
    """Number of units in the table.

    Model: count of rows; a symbol with two readings has two.

    Returns: Number of units.

    Source: definition
    """
    return _runtime.query("freeair_units_count", _c.c_size_t, [], ())


def units_symbol_at(*, i):
    """Symbol of a unit in the table, in ASCII.

    Model: table look-up.

    Arguments:
        i: Position in the table, from 0. Range [0;inf).

    Returns: Static string, never null; an empty string beyond the end of the table.

    Source: definition
    """
    return _runtime.query("freeair_units_symbol_at", _c.c_char_p, [_c.c_size_t], (i,))


def units_name_at(*, i):
    """English name of a unit in the table.

    Model: table look-up.

    Arguments:
        i: Position in the table, from 0. Range [0;inf).

    Returns: Static string, never null; an empty string beyond the end of the table.

    Source: definition
    """
    return _runtime.query("freeair_units_name_at", _c.c_char_p, [_c.c_size_t], (i,))


def units_si_symbol_at(*, i):
    """Symbol of the coherent SI unit of the quantity that a unit in the table measures.

    Model: table look-up.

    Arguments:
        i: Position in the table, from 0. Range [0;inf).

    Returns: Static string, never null; an empty string beyond the end of the table.

    Source: definition
    """
    return _runtime.query("freeair_units_si_symbol_at", _c.c_char_p, [_c.c_size_t], (i,))


def reference_name(*, state):
    """Name of a reference state, such as "FREEAIR_REFERENCE_ISO_1217".

    Model: table look-up.

    Arguments:
        state: A reference state. One of REFERENCE_STATE_* (enumeration freeair_reference_state).

    Returns: Static string, never null; an empty string when there is no such state.

    Source: definition
    """
    return _runtime.query("freeair_reference_name", _c.c_char_p, [_c.c_int32], (state,))


def reference_text(*, state):
    """Conditions and standard of a reference state, for a report.

    Model: table look-up.

    Arguments:
        state: A reference state. One of REFERENCE_STATE_* (enumeration freeair_reference_state).

    Returns: Static string, never null; an empty string when there is no such state.

    Source: definition
    """
    return _runtime.query("freeair_reference_text", _c.c_char_p, [_c.c_int32], (state,))


def fault_count():
    """Number of fault codes, FREEAIR_FAULT_NONE included.

    Model: count.

    Returns: The number; codes run from 0 to one less.

    Source: definition
    """
    return _runtime.query("freeair_fault_count", _c.c_int32, [], ())


def fault_name(*, fault):
    """Name of a fault in plain words, such as "intake filter".

    Model: table look-up.

    Arguments:
        fault: A fault. One of FAULT_* (enumeration freeair_fault).

    Returns: Static string, never null; "unknown" for a code this library does not know.

    Source: definition
    """
    return _runtime.query("freeair_fault_name", _c.c_char_p, [_c.c_int32], (fault,))


__all__ = [
    "CAUTION_BLOWING",
    "CAUTION_BREATHING",
    "CAUTION_CAPACITOR",
    "CAUTION_DEPRESSURISE",
    "CAUTION_HOT",
    "CAUTION_ISOLATE",
    "CAUTION_LIFTING",
    "CAUTION_LIVE",
    "CAUTION_OIL_MIST",
    "CAUTION_PROTECTION",
    "CAUTION_RELIEF_VALVE",
    "CAUTION_ROTATING",
    "CAUTION_STORED_ENERGY",
    "CAUTION_VESSEL",
    "CycleCardResult",
    "CycleResult",
    "ERR_DATA",
    "ERR_DIMENSION",
    "ERR_DOMAIN",
    "ERR_NOT_FOUND",
    "ERR_NO_CONVERGENCE",
    "ERR_NO_SOLUTION",
    "ERR_NULL",
    "ERR_OVERFLOW",
    "ERR_UNSUPPORTED",
    "ERR_VERSION",
    "FAULT_BELT_SLIP",
    "FAULT_CHECK_VALVE",
    "FAULT_DEMAND",
    "FAULT_DOWNSTREAM_LEAK",
    "FAULT_GASKET_BETWEEN",
    "FAULT_GAUGE",
    "FAULT_HP_DISCHARGE_VALVE",
    "FAULT_HP_GASKET_OUTSIDE",
    "FAULT_HP_RINGS",
    "FAULT_HP_SUCTION_VALVE",
    "FAULT_INTAKE_FILTER",
    "FAULT_INTERCOOLER_FOULED",
    "FAULT_INTERSTAGE_LEAK",
    "FAULT_LOW_VOLTAGE",
    "FAULT_LP_DISCHARGE_VALVE",
    "FAULT_LP_GASKET_OUTSIDE",
    "FAULT_LP_RINGS",
    "FAULT_LP_SUCTION_VALVE",
    "FAULT_NONE",
    "FAULT_PRESSURE_SWITCH",
    "FAULT_PULLEY",
    "FAULT_RECEIVER_WATER",
    "FAULT_RELIEF_WEAK",
    "FAULT_RUN_CAPACITOR",
    "FAULT_UNLOADER_LEAK",
    "FaultApplyResult",
    "MACHINE_SIDE_BY_SIDE",
    "MACHINE_V",
    "Machine",
    "MachineSite",
    "OK",
    "PARAMETER_ARRAY",
    "PARAMETER_LOWER_CLOSED",
    "PARAMETER_OPTIONAL",
    "PARAMETER_OUTPUT",
    "PARAMETER_UPPER_CLOSED",
    "PREDICTION_DRAWN_DOWN",
    "PREDICTION_GIVEN",
    "PREDICTION_SOAKED",
    "PredictionLeakDownResult",
    "PredictionPumpupResult",
    "PredictionResult",
    "PredictionRun",
    "PredictionTimesResult",
    "RATING_BORE",
    "RATING_CLEARANCE",
    "RATING_HEATING",
    "RATING_NOTHING",
    "RATING_SPEED",
    "RATING_VALVES",
    "REFERENCE_DIN_1343",
    "REFERENCE_ISO_1217",
    "REFERENCE_ISO_13443",
    "REFERENCE_ISO_2533",
    "REFERENCE_ISO_8778",
    "REFERENCE_NTP",
    "REFERENCE_SCFM_60F",
    "REFERENCE_SCFM_68F",
    "REFERENCE_SCFM_68F_36RH",
    "REFERENCE_SCFM_70F",
    "REFERENCE_STP",
    "RatingCompleteResult",
    "ReferenceConditionsResult",
    "ReferenceMassFlowFromVolumeFlowResult",
    "TYPE_DOUBLE",
    "TYPE_INT32",
    "TYPE_SIZE",
    "TYPE_STRUCTURE",
    "TYPE_TEXT",
    "TYPE_UINT32",
    "VERDICT_CANNOT_TELL",
    "VERDICT_FAILS",
    "VERDICT_MEETS",
    "WARN_EXTRAPOLATED",
    "WARN_INCONSISTENT",
    "WARN_LIMIT",
    "WARN_TRANSITION",
    "WARN_TRUNCATED",
    "atmosphere_altitude_from_geometric",
    "atmosphere_altitude_from_pressure",
    "atmosphere_density_from_altitude",
    "atmosphere_pressure_from_altitude",
    "atmosphere_pressure_from_geometric",
    "atmosphere_temperature_from_altitude",
    "caution_name",
    "caution_text",
    "cycle_card",
    "cycle_point",
    "fault_applies",
    "fault_apply",
    "fault_count",
    "fault_name",
    "machine_complete",
    "machine_displacement",
    "prediction_leak_down",
    "prediction_level_off",
    "prediction_pumpup",
    "prediction_times",
    "rating_complete",
    "reference_conditions",
    "reference_density",
    "reference_find",
    "reference_flow_between_states",
    "reference_flow_convert",
    "reference_flow_from_state",
    "reference_flow_to_state",
    "reference_mass_flow_from_volume_flow",
    "reference_name",
    "reference_text",
    "reference_volume_flow_from_mass_flow",
    "status_name",
    "status_text",
    "units_absolute_from_gauge",
    "units_convert",
    "units_convert_difference",
    "units_count",
    "units_from_si",
    "units_gauge_from_absolute",
    "units_is_gauge",
    "units_name_at",
    "units_si_from",
    "units_si_symbol",
    "units_si_symbol_at",
    "units_symbol_at",
    "verdict_decide",
    "verdict_probability",
    "version_number",
    "version_text",
]
