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
NAMEPLATE_CODE_A = 65
NAMEPLATE_CODE_B = 66
NAMEPLATE_CODE_C = 67
NAMEPLATE_CODE_D = 68
NAMEPLATE_CODE_E = 69
NAMEPLATE_CODE_F = 70
NAMEPLATE_CODE_G = 71
NAMEPLATE_CODE_H = 72
NAMEPLATE_CODE_J = 74
NAMEPLATE_CODE_K = 75
NAMEPLATE_CODE_L = 76
NAMEPLATE_CODE_M = 77
NAMEPLATE_CODE_N = 78
NAMEPLATE_CODE_P = 80
NAMEPLATE_CODE_R = 82
NAMEPLATE_CODE_S = 83
NAMEPLATE_CODE_T = 84
NAMEPLATE_CODE_U = 85
NAMEPLATE_CODE_V = 86
NAMEPLATE_IE1 = 1
NAMEPLATE_IE2 = 2
NAMEPLATE_IE3 = 3
NAMEPLATE_IE4 = 4
CAPACITOR_RUN_5 = 1
CAPACITOR_RUN_6 = 2
CAPACITOR_RUN_10 = 3
CAPACITOR_RUN_15 = 4
CAPACITOR_START_20 = 5
CAPACITOR_START_23 = 6
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


class CapacitorMotorWindings(_runtime.Structure):
    """Constants of a capacitor motor, all referred to the main winding except those of the auxiliary winding itself.

    Fields:
        main_r_ohm: Resistance of the main winding. [ohm] Range [0;1000].
        main_x_ohm: Leakage reactance of the main winding. [ohm] Range [0;1000].
        auxiliary_r_ohm: Resistance of the auxiliary winding, with the capacitor's own. [ohm] Range
            [0;1000].
        auxiliary_x_ohm: Leakage reactance of the auxiliary winding. [ohm] Range [0;1000].
        turns_ratio: Effective turns of the auxiliary winding over the main. Range [0.01;100].
        rotor_r_ohm: Rotor resistance. [ohm] Range [0.001;1000].
        rotor_x_ohm: Rotor leakage reactance. [ohm] Range [0;1000].
        magnetising_x_ohm: Magnetising reactance. [ohm] Range [0.01;10000].
    """

    _c_name = "freeair_capacitor_motor_windings"
    __slots__ = ("_memory",)


class CapacitorMotorPerformance(_runtime.Structure):
    """What a capacitor motor does at a slip.

    Fields:
        torque_nm: Torque across the air gap; friction, windage and iron loss are still to come off.
            [N m]
        mechanical_w: That torque times the shaft speed. [W]
        input_w: Power from the supply, iron loss neglected. [W]
        power_factor: Power factor of the line current; leading is not told from lagging.
        line_a: Line current. [A]
        main_a: Current of the main winding. [A]
        auxiliary_a: Current of the auxiliary winding, through the capacitor. [A]
        capacitor_v: Voltage across the capacitor; with the winding open, across the gap. [V]
    """

    _c_name = "freeair_capacitor_motor_performance"
    __slots__ = ("_memory",)


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


_runtime.STRUCTURES["freeair_capacitor_motor_windings"] = CapacitorMotorWindings
_runtime.STRUCTURES["freeair_capacitor_motor_performance"] = CapacitorMotorPerformance
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


def supply_uncertainty_from_meter(*, reading_v, accuracy, counts, resolution_v):
    """Standard uncertainty of a voltage reading from the meter's data sheet.

    Model: u = (accuracy reading + counts resolution) / sqrt(3), limits of error as a rectangular
    distribution.

    Arguments:
        reading_v: What the meter shows. [V] Range [0;1000000].
        accuracy: Limit of error as a fraction of the reading. Range [0;1].
        counts: Limit of error in units of the last digit. Range [0;10000].
        resolution_v: Value of one unit of the last digit. [V] Range [0;1000].

    Returns:
        uncertainty_v: Standard uncertainty. [V]

    Raises:
        DomainError: an input is outside its range

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.7
    """
    return _runtime.call("freeair_supply_uncertainty_from_meter")((reading_v, accuracy, counts, resolution_v,))


def supply_deviation(*, measured_v, nameplate_v):
    """Deviation of a voltage from the motor's nameplate.

    Model: (U - U_n) / U_n; negative when the voltage is low. Measure at the motor, under load: the
    nameplate is the motor's voltage (230 V), not the system's (240 V).

    Arguments:
        measured_v: Voltage at the motor terminals. [V] Range [0;1000000].
        nameplate_v: Voltage on the nameplate. [V] Range [1;1000000].

    Returns:
        deviation: Deviation as a fraction of the nameplate.

    Raises:
        DomainError: an input is outside its range

    Caution: Live electrical work is for qualified people under local rules.

    Source: definition
    """
    return _runtime.call("freeair_supply_deviation")((measured_v, nameplate_v,))


SupplyVoltageVerdictResult = _collections.namedtuple(
    "SupplyVoltageVerdictResult", ['verdict', 'probability'])


def supply_voltage_verdict(*, measured_v, uncertainty_v, nameplate_v, tolerance, confidence):
    """Whether a voltage is within a tolerance of the nameplate, as a guarded decision.

    Model: the limits are U_n (1 - tolerance) and U_n (1 + tolerance); the decision is that of
    freeair_verdict_decide. NEMA MG 1 asks motors to run, not always at their best, with 0.10 at
    rated frequency.

    Arguments:
        measured_v: Voltage at the motor terminals. [V] Range [0;1000000].
        uncertainty_v: Standard uncertainty of the measurement. [V] Range [0;1000000].
        nameplate_v: Voltage on the nameplate. [V] Range [1;1000000].
        tolerance: Permitted deviation as a fraction of the nameplate. Range [0.000001;1].
        confidence: Probability required of a firm verdict. Range (0.5;1).

    Returns:
        verdict: The decision. One of VERDICT_* (enumeration freeair_verdict).
        probability: Probability that the voltage is within the tolerance.

    Raises:
        DomainError: an input is outside its range

    Caution: Live electrical work is for qualified people under local rules.

    Source: NEMA MG 1, 12.44 (plus or minus 10 percent at rated frequency); JCGM 106:2012, 8.3
    """
    return _runtime.call("freeair_supply_voltage_verdict")((measured_v, uncertainty_v, nameplate_v, tolerance, confidence,), SupplyVoltageVerdictResult)


def supply_combined_deviation(*, voltage_deviation, frequency_deviation):
    """Combined deviation of voltage and frequency.

    Model: |dU| + |df|. NEMA MG 1 permits 0.10 in all, of which at most 0.05 of frequency.

    Arguments:
        voltage_deviation: Deviation of the voltage as a fraction. Range [-1;1].
        frequency_deviation: Deviation of the frequency as a fraction. Range [-1;1].

    Returns:
        combined: Sum of the absolute deviations.

    Raises:
        DomainError: an input is outside its range

    Source: NEMA MG 1, 12.44, from memory
    """
    return _runtime.call("freeair_supply_combined_deviation")((voltage_deviation, frequency_deviation,))


def supply_voltage_drop(*, current_a, r_ohm, x_ohm, power_factor, phases):
    """Voltage drop of a run, by the usual approximation.

    Model: k I (R cos + X sin), k = 2 for one phase (out and back), sqrt(3) for three. Neglects the
    small angle between the voltages at the two ends; freeair_supply_voltage_at_load does not.

    Arguments:
        current_a: Line current. [A] Range [0;1000000].
        r_ohm: Resistance of one wire, one way. [ohm] Range [0;1000000].
        x_ohm: Reactance of one wire, one way. [ohm] Range [0;1000000].
        power_factor: Power factor of the load, lagging. Range [0;1].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        drop_v: Voltage drop. [V]

    Raises:
        DomainError: an input is outside its range

    Source: IEEE Std 141-1993, 3.11, approximate formula for voltage drop, from memory
    """
    return _runtime.call("freeair_supply_voltage_drop")((current_a, r_ohm, x_ohm, power_factor, phases,))


SupplyVoltageAtLoadResult = _collections.namedtuple(
    "SupplyVoltageAtLoadResult", ['load_v', 'drop_v'])


def supply_voltage_at_load(*, source_v, current_a, r_ohm, x_ohm, power_factor, phases):
    """Voltage at the load end of a run, exact for a known current and power factor.

    Model: U_load = sqrt(U^2 - (k I (X cos - R sin))^2) - k I (R cos + X sin), k as in
    freeair_supply_voltage_drop.

    Arguments:
        source_v: Voltage at the source end. [V] Range [1;1000000].
        current_a: Line current. [A] Range [0;1000000].
        r_ohm: Resistance of one wire, one way. [ohm] Range [0;1000000].
        x_ohm: Reactance of one wire, one way. [ohm] Range [0;1000000].
        power_factor: Power factor at the load, lagging. Range [0;1].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        load_v: Voltage at the load end. [V]
        drop_v: Difference of the two voltages. [V]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the run cannot carry that current

    Source: IEEE Std 141-1993, 3.11, exact formula for voltage drop, solved for the load end, from
    memory
    """
    return _runtime.call("freeair_supply_voltage_at_load")((source_v, current_a, r_ohm, x_ohm, power_factor, phases,), SupplyVoltageAtLoadResult)


SupplyStartingVoltageResult = _collections.namedtuple(
    "SupplyStartingVoltageResult", ['start_v', 'start_a'])


def supply_starting_voltage(*, source_v, nameplate_v, locked_rotor_a, power_factor, r_ohm, x_ohm, phases):
    """Voltage at the motor, and its current, at the moment of starting.

    Model: the locked motor is a constant impedance U_n / (m I_n) at its power factor (m = 1 for one
    phase, sqrt(3) for three) in series with the run; the source does not sag. The starting torque
    goes with the square of this voltage.

    Arguments:
        source_v: Voltage at the source end, no load. [V] Range [1;1000000].
        nameplate_v: Voltage on the nameplate. [V] Range [1;1000000].
        locked_rotor_a: Line current with locked rotor at nameplate voltage. [A] Range
            [0.001;1000000].
        power_factor: Power factor with locked rotor, lagging; 0.2 to 0.6 is usual. Range [0;1].
        r_ohm: Resistance of one wire, one way. [ohm] Range [0;1000000].
        x_ohm: Reactance of one wire, one way. [ohm] Range [0;1000000].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        start_v: Voltage at the motor. [V]
        start_a: Line current. [A]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: voltage divider of two impedances
    """
    return _runtime.call("freeair_supply_starting_voltage")((source_v, nameplate_v, locked_rotor_a, power_factor, r_ohm, x_ohm, phases,), SupplyStartingVoltageResult)


UnbalanceVoltageResult = _collections.namedtuple(
    "UnbalanceVoltageResult", ['unbalance', 'mean_v'])


def unbalance_voltage(*, u12_v, u23_v, u31_v):
    """Voltage unbalance of a three-phase supply by the maximum-deviation definition.

    Model: the greatest deviation of a voltage from the mean of the three, over that mean. Not (max
    - min) / mean, which is up to twice as much.

    Arguments:
        u12_v: Voltage between lines 1 and 2. [V] Range [0;1000000].
        u23_v: Voltage between lines 2 and 3. [V] Range [0;1000000].
        u31_v: Voltage between lines 3 and 1. [V] Range [0;1000000].

    Returns:
        unbalance: Unbalance as a fraction.
        mean_v: Mean of the three. [V]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: all three are zero

    Caution: Live electrical work is for qualified people under local rules.

    Source: NEMA MG 1, 14.36, definition of percent voltage unbalance (clause from memory)
    """
    return _runtime.call("freeair_unbalance_voltage")((u12_v, u23_v, u31_v,), UnbalanceVoltageResult)


UnbalanceCurrentResult = _collections.namedtuple(
    "UnbalanceCurrentResult", ['unbalance', 'mean_a'])


def unbalance_current(*, i1_a, i2_a, i3_a):
    """Current unbalance of a three-phase motor, by the same definition.

    Model: as freeair_unbalance_voltage. At full load it is some six to ten times the voltage
    unbalance; where it stays with the motor lead when two lines are rolled the motor is at fault,
    where it stays with the line the supply is.

    Arguments:
        i1_a: Current in line 1. [A] Range [0;1000000].
        i2_a: Current in line 2. [A] Range [0;1000000].
        i3_a: Current in line 3. [A] Range [0;1000000].

    Returns:
        unbalance: Unbalance as a fraction.
        mean_a: Mean of the three. [A]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: all three are zero

    Caution: Live electrical work is for qualified people under local rules.

    Source: NEMA MG 1, 14.36, the definition applied to currents; rolling the leads is common
    practice
    """
    return _runtime.call("freeair_unbalance_current")((i1_a, i2_a, i3_a,), UnbalanceCurrentResult)


def unbalance_factor(*, u12_v, u23_v, u31_v):
    """Voltage unbalance factor: negative-sequence over positive-sequence voltage.

    Model: sqrt((1 - sqrt(3 - 6 b)) / (1 + sqrt(3 - 6 b))), b the sum of the fourth powers of the
    line voltages over the square of the sum of their squares; rearranged here so that nothing
    cancels. Line-to-line voltages hold no zero sequence. For small unbalance it is close to the
    maximum-deviation figure.

    Arguments:
        u12_v: Voltage between lines 1 and 2. [V] Range [0;1000000].
        u23_v: Voltage between lines 2 and 3. [V] Range [0;1000000].
        u31_v: Voltage between lines 3 and 1. [V] Range [0;1000000].

    Returns:
        factor: Unbalance factor, 0 to 1.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the three voltages do not close a triangle, or all are zero

    Source: IEC 61000-4-30, supply voltage unbalance from the three line-to-line voltages
    """
    return _runtime.call("freeair_unbalance_factor")((u12_v, u23_v, u31_v,))


def unbalance_derating(*, unbalance):
    """Share of its rated power that a motor may give on an unbalanced supply.

    Model: straight lines through 1.00, 0.95, 0.88, 0.82 and 0.75 at 1, 2, 3, 4 and 5 percent, read
    from the standard's curve to about 0.01 (some read 0.90 at 3 percent); 1 below 1 percent. Above
    5 percent the standard gives no factor and advises against running: the result is 0.

    Arguments:
        unbalance: Voltage unbalance by the maximum-deviation definition. Range [0;2].

    Returns:
        derating: Factor on rated power.

    Raises:
        DomainError: unbalance is outside its range

    Source: NEMA MG 1, figure 14-1, points from memory
    """
    return _runtime.call("freeair_unbalance_derating")((unbalance,))


def unbalance_temperature_rise(*, rise_k, unbalance):
    """Temperature rise of a motor at the same load on an unbalanced supply.

    Model: rise (1 + 2 p^2 / 100), p the unbalance in percent. A rule of thumb for a few percent.

    Arguments:
        rise_k: Rise of the windings on a balanced supply. [K] Range [0;500].
        unbalance: Voltage unbalance by the maximum-deviation definition. Range [0;2].

    Returns:
        unbalanced_rise_k: Rise on the unbalanced supply, hottest phase. [K]

    Raises:
        DomainError: an input is outside its range

    Source: Hubert, Electric Machines, 2nd edition, example 5.14
    """
    return _runtime.call("freeair_unbalance_temperature_rise")((rise_k, unbalance,))


def unbalance_single_phasing_current(*, balanced_a, balanced_power_factor, single_power_factor):
    """Line current of a three-phase motor after one line has opened, at the same shaft power.

    Model: sqrt(3) I cos / cos', the same voltage and efficiency. A lightly loaded motor keeps
    running so, hot; it does not start.

    Arguments:
        balanced_a: Line current with all three lines. [A] Range [0;1000000].
        balanced_power_factor: Power factor then. Range [0.01;1].
        single_power_factor: Power factor on two lines. Range [0.01;1].

    Returns:
        single_phasing_a: Line current on two lines. [A]

    Raises:
        DomainError: an input is outside its range

    Caution: Live electrical work is for qualified people under local rules.

    Source: Hubert, Electric Machines, 2nd edition, example 6.4
    """
    return _runtime.call("freeair_unbalance_single_phasing_current")((balanced_a, balanced_power_factor, single_power_factor,))


def motor_synchronous_speed(*, frequency_hz, poles):
    """Speed of the rotating field.

    Model: n = 2 f / poles.

    Arguments:
        frequency_hz: Supply frequency. [Hz] Range [0.1;1000].
        poles: Number of poles, even; an odd number is refused. Range [2;100].

    Returns:
        synchronous_rev_s: Synchronous speed. [rev/s]

    Raises:
        DomainError: an input is outside its range

    Source: Hubert, Electric Machines, 2nd edition, chapter 4, synchronous speed
    """
    return _runtime.call("freeair_motor_synchronous_speed")((frequency_hz, poles,))


def motor_poles_from_speed(*, frequency_hz, speed_rev_s):
    """Number of poles from the speed on a nameplate.

    Model: the largest even number whose synchronous speed is not below the given speed.

    Arguments:
        frequency_hz: Supply frequency. [Hz] Range [0.1;1000].
        speed_rev_s: Rated speed. [rev/s] Range [0.01;1000].

    Returns:
        poles: Number of poles; 0 on error.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no motor of 2 to 100 poles has that speed

    Source: definition
    """
    return _runtime.call("freeair_motor_poles_from_speed")((frequency_hz, speed_rev_s,))


def motor_slip(*, frequency_hz, poles, speed_rev_s):
    """Slip from a measured speed.

    Model: s = (n_s - n) / n_s. Negative above synchronous speed, where the load drives the motor.

    Arguments:
        frequency_hz: Supply frequency. [Hz] Range [0.1;1000].
        poles: Number of poles, even; an odd number is refused. Range [2;100].
        speed_rev_s: Shaft speed. [rev/s] Range [0;1000].

    Returns:
        slip: Slip as a fraction.

    Raises:
        DomainError: an input is outside its range

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: Hubert, Electric Machines, 2nd edition, chapter 4, example 4.2
    """
    return _runtime.call("freeair_motor_slip")((frequency_hz, poles, speed_rev_s,))


def motor_speed_from_slip(*, frequency_hz, poles, slip):
    """Shaft speed at a slip.

    Model: n = n_s (1 - s).

    Arguments:
        frequency_hz: Supply frequency. [Hz] Range [0.1;1000].
        poles: Number of poles, even; an odd number is refused. Range [2;100].
        slip: Slip as a fraction. Range [-1;1].

    Returns:
        speed_rev_s: Shaft speed. [rev/s]

    Raises:
        DomainError: an input is outside its range

    Source: Hubert, Electric Machines, 2nd edition, chapter 4, example 4.5
    """
    return _runtime.call("freeair_motor_speed_from_slip")((frequency_hz, poles, slip,))


def motor_rotor_frequency(*, frequency_hz, slip):
    """Frequency of the currents in the rotor.

    Model: f_r = |s| f.

    Arguments:
        frequency_hz: Supply frequency. [Hz] Range [0.1;1000].
        slip: Slip as a fraction. Range [-1;1].

    Returns:
        rotor_hz: Rotor frequency. [Hz]

    Raises:
        DomainError: an input is outside its range

    Source: Hubert, Electric Machines, 2nd edition, chapter 4, example 4.2
    """
    return _runtime.call("freeair_motor_rotor_frequency")((frequency_hz, slip,))


def motor_slip_at_supply(*, slip, voltage_ratio, frequency_ratio, torque_ratio):
    """Slip at another voltage, frequency and torque.

    Model: s' = s t f / u^2 with u, f, t the ratios of voltage, frequency and load torque: torque
    proportional to slip, constant resistance. A piston compressor at a given pressure asks for
    nearly constant torque, t = 1.

    Arguments:
        slip: Slip that is known, as at rated load. Range [0;1).
        voltage_ratio: New voltage over that of the known slip. Range [0.1;2].
        frequency_ratio: New frequency over that of the known slip. Range [0.1;2].
        torque_ratio: New load torque over that of the known slip. Range [0;10].

    Returns:
        new_slip: Slip then.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the motor would stall

    Source: Hubert, Electric Machines, 2nd edition, chapter 5, example 5.6
    """
    return _runtime.call("freeair_motor_slip_at_supply")((slip, voltage_ratio, frequency_ratio, torque_ratio,))


def motor_torque_from_power(*, power_w, speed_rev_s):
    """Torque of a shaft that carries a power at a speed.

    Model: T = P / (2 pi n).

    Arguments:
        power_w: Shaft power. [W] Range [0;1000000000].
        speed_rev_s: Shaft speed. [rev/s] Range [0.001;1000].

    Returns:
        torque_nm: Torque. [N m]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_motor_torque_from_power")((power_w, speed_rev_s,))


def motor_power_from_torque(*, torque_nm, speed_rev_s):
    """Power of a shaft that carries a torque at a speed.

    Model: P = 2 pi n T.

    Arguments:
        torque_nm: Torque. [N m] Range [0;1000000000].
        speed_rev_s: Shaft speed. [rev/s] Range [0;1000].

    Returns:
        power_w: Shaft power. [W]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_motor_power_from_torque")((torque_nm, speed_rev_s,))


def motor_torque_at_slip(*, breakdown_nm, breakdown_slip, slip):
    """Torque at a slip from the breakdown point.

    Model: T = 2 T_b / (s / s_b + s_b / s), stator resistance neglected. Slower than breakdown,
    cages give more.

    Arguments:
        breakdown_nm: Greatest torque of the motor. [N m] Range [0;1000000000].
        breakdown_slip: Slip there; 0.1 to 0.3 is usual. Range [0.001;1].
        slip: Slip as a fraction. Range [0;1].

    Returns:
        torque_nm: Torque. [N m]

    Raises:
        DomainError: an input is outside its range

    Source: Kloss's formula, as in Fitzgerald, Kingsley, Umans, Electric Machinery, chapter 6, from
    memory
    """
    return _runtime.call("freeair_motor_torque_at_slip")((breakdown_nm, breakdown_slip, slip,))


def motor_locked_rotor_torque(*, torque_nm, voltage_ratio, frequency_ratio):
    """Locked-rotor (starting) torque at another voltage and frequency.

    Model: T' = T (u / f)^2 with u and f the ratios of voltage and frequency: ten percent less
    voltage leaves 81 percent of the torque. Valid near rated frequency; breakdown torque follows
    the same.

    Arguments:
        torque_nm: Locked-rotor torque that is known. [N m] Range [0;1000000000].
        voltage_ratio: New voltage over that of the known torque. Range [0.1;2].
        frequency_ratio: New frequency over that of the known torque. Range [0.1;2].

    Returns:
        new_torque_nm: Locked-rotor torque then. [N m]

    Raises:
        DomainError: an input is outside its range

    Source: Hubert, Electric Machines, 2nd edition, chapter 5, examples 5.4 and 5.8
    """
    return _runtime.call("freeair_motor_locked_rotor_torque")((torque_nm, voltage_ratio, frequency_ratio,))


def motor_locked_rotor_current(*, current_a, voltage_ratio, frequency_ratio):
    """Locked-rotor (starting) current at another voltage and frequency.

    Model: I' = I u / f with u and f the ratios of voltage and frequency. Valid near rated
    frequency, no saturation.

    Arguments:
        current_a: Locked-rotor current that is known. [A] Range [0;1000000].
        voltage_ratio: New voltage over that of the known current. Range [0.1;2].
        frequency_ratio: New frequency over that of the known current. Range [0.1;2].

    Returns:
        new_current_a: Locked-rotor current then. [A]

    Raises:
        DomainError: an input is outside its range

    Source: Hubert, Electric Machines, 2nd edition, chapter 5, example 5.7
    """
    return _runtime.call("freeair_motor_locked_rotor_current")((current_a, voltage_ratio, frequency_ratio,))


MotorShaftPowerResult = _collections.namedtuple(
    "MotorShaftPowerResult", ['shaft_w', 'input_w'])


def motor_shaft_power(*, voltage_v, current_a, power_factor, efficiency, phases):
    """Shaft power from electrical measurements.

    Model: P_in = m U I cos, P = efficiency P_in, m = 1 for one phase and sqrt(3) for three. With a
    clamp meter alone the power factor is a guess: nameplate values hold near full load only.

    Arguments:
        voltage_v: Line voltage. [V] Range [0;1000000].
        current_a: Line current. [A] Range [0;1000000].
        power_factor: Power factor, lagging. Range [0;1].
        efficiency: Efficiency at that load. Range [0;1].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        shaft_w: Power at the shaft. [W]
        input_w: Power from the supply. [W]

    Raises:
        DomainError: an input is outside its range

    Caution: Live electrical work is for qualified people under local rules.

    Source: definition
    """
    return _runtime.call("freeair_motor_shaft_power")((voltage_v, current_a, power_factor, efficiency, phases,), MotorShaftPowerResult)


def motor_line_current(*, shaft_w, voltage_v, power_factor, efficiency, phases):
    """Line current of a motor that gives a shaft power.

    Model: I = P / (m U cos efficiency), m = 1 for one phase and sqrt(3) for three.

    Arguments:
        shaft_w: Power at the shaft. [W] Range [0;1000000000].
        voltage_v: Line voltage. [V] Range [1;1000000].
        power_factor: Power factor, lagging. Range [0.01;1].
        efficiency: Efficiency at that load. Range [0.01;1].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        current_a: Line current. [A]

    Raises:
        DomainError: an input is outside its range

    Source: definition; Hubert, Electric Machines, 2nd edition, example 6.4
    """
    return _runtime.call("freeair_motor_line_current")((shaft_w, voltage_v, power_factor, efficiency, phases,))


def nameplate_efficiency(*, efficiency_class, poles, rated_w):
    """Nominal efficiency limit of an efficiency class at 50 Hz and full load.

    Model: A x^3 + B x^2 + C x + D, x = log10 of the rated power in kW, in percent, rounded to 0.1;
    it gives the tabulated values back at the preferred powers. A motor in hand may be better; its
    losses may be 15 percent above.

    Arguments:
        efficiency_class: Class. One of NAMEPLATE_EFFICIENCY_CLASS_* (enumeration
            freeair_nameplate_efficiency_class).
        poles: 2, 4 or 6; odd numbers are refused. Range [2;6].
        rated_w: Rated shaft power. [W] Range [750;200000].

    Returns:
        efficiency: Efficiency as a fraction.

    Raises:
        DomainError: an input is outside its range
        NotFoundError: not a class

    Source: IEC 60034-30-1:2014, interpolation at 50 Hz; Regulation (EU) 2019/1781, annex I;
    coefficients from memory
    """
    return _runtime.call("freeair_nameplate_efficiency")((efficiency_class, poles, rated_w,))


NameplateCodeBandResult = _collections.namedtuple(
    "NameplateCodeBandResult", ['lower', 'upper'])


def nameplate_code_band(*, code):
    """Band of locked-rotor apparent power that a code letter stands for.

    Model: table of kVA per horsepower, turned into VA per W with 1 hp = 745.69987 W. The band
    includes its lower end.

    Arguments:
        code: Code letter. One of NAMEPLATE_CODE_* (enumeration freeair_nameplate_code).

    Returns:
        lower: Lower end, locked-rotor apparent power over rated shaft power.
        upper: Upper end; infinite for V.

    Raises:
        NotFoundError: not a code letter

    Source: NEMA MG 1, 10.37.2; NFPA 70 (NEC), table 430.7(B); all but G from memory
    """
    return _runtime.call("freeair_nameplate_code_band")((code,), NameplateCodeBandResult)


def nameplate_code_from_current(*, locked_rotor_a, voltage_v, rated_w, phases):
    """Code letter of a measured locked-rotor current.

    Model: the letter whose band holds m U I / P, m = 1 for one phase and sqrt(3) for three.

    Arguments:
        locked_rotor_a: Line current with locked rotor at that voltage. [A] Range [0;1000000].
        voltage_v: Line voltage. [V] Range [1;1000000].
        rated_w: Rated shaft power. [W] Range [1;1000000000].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        code: Code letter; 0 on error. One of NAMEPLATE_CODE_* (enumeration freeair_nameplate_code).

    Raises:
        DomainError: an input is outside its range

    Source: NEMA MG 1, 10.37.2; NFPA 70 (NEC), table 430.7(B); all but G from memory
    """
    return _runtime.call("freeair_nameplate_code_from_current")((locked_rotor_a, voltage_v, rated_w, phases,))


NameplateLockedRotorCurrentResult = _collections.namedtuple(
    "NameplateLockedRotorCurrentResult", ['lower_a', 'upper_a'])


def nameplate_locked_rotor_current(*, code, rated_w, voltage_v, phases):
    """Starting current to expect from a code letter.

    Model: I = band P / (m U), m = 1 for one phase and sqrt(3) for three.

    Arguments:
        code: Code letter. One of NAMEPLATE_CODE_* (enumeration freeair_nameplate_code).
        rated_w: Rated shaft power. [W] Range [1;1000000000].
        voltage_v: Line voltage. [V] Range [1;1000000].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        lower_a: Lower end of the current. [A]
        upper_a: Upper end; infinite for V. [A]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: not a code letter

    Source: Hubert, Electric Machines, 2nd edition, example 5.13
    """
    return _runtime.call("freeair_nameplate_locked_rotor_current")((code, rated_w, voltage_v, phases,), NameplateLockedRotorCurrentResult)


def nameplate_full_load_current(*, rated_w, voltage_v, phases):
    """Full-load current that the tables of the National Electrical Code give a motor.

    Model: table look-up. The power must be within 1 percent of a listed horsepower (1/6 to 10 hp
    single phase, 1/2 to 500 hp three phase), the voltage in the range of a column: 110-120, 195-204
    (200), 204-216 (208), 220-240, 440-480, 550-600, 2200-2400 V. No interpolation. For sizing wires
    and switches, where that code applies.

    Arguments:
        rated_w: Rated shaft power. [W] Range [1;1000000000].
        voltage_v: Voltage of motor or system. [V] Range [1;1000000].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        current_a: Full-load current. [A]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: the table has no such motor

    Source: NFPA 70 (NEC), 2008, tables 430.248 and 430.250, induction type
    """
    return _runtime.call("freeair_nameplate_full_load_current")((rated_w, voltage_v, phases,))


def nameplate_load_from_current(*, current_a, nameplate_a, voltage_v, nameplate_v):
    """Load of a motor from its current.

    Model: load = (I / I_n) (U / U_n). Good above half load; below, magnetising current makes it
    read far too high.

    Arguments:
        current_a: Line current measured. [A] Range [0;1000000].
        nameplate_a: Current on the nameplate. [A] Range [0.001;1000000].
        voltage_v: Line voltage measured. [V] Range [0;1000000].
        nameplate_v: Voltage on the nameplate. [V] Range [1;1000000].

    Returns:
        load: Shaft power over rated shaft power.

    Raises:
        DomainError: an input is outside its range

    Caution: Live electrical work is for qualified people under local rules.

    Source: US Department of Energy, Determining Electric Motor Load and Efficiency,
    DOE/GO-10097-517, load from line current
    """
    return _runtime.call("freeair_nameplate_load_from_current")((current_a, nameplate_a, voltage_v, nameplate_v,))


def nameplate_load_from_speed(*, speed_rev_s, synchronous_rev_s, nameplate_rev_s, voltage_ratio):
    """Load of a motor from its speed.

    Model: load = (n_s - n) / (n_s - n_n) (U / U_n)^2: slip is proportional to torque and to the
    inverse square of the voltage. Nameplate speeds are rounded and may be off by a fifth of the
    rated slip; the result is no better.

    Arguments:
        speed_rev_s: Speed measured. [rev/s] Range [0;1000].
        synchronous_rev_s: Synchronous speed at the frequency measured. [rev/s] Range [0.01;1000].
        nameplate_rev_s: Speed on the nameplate. [rev/s] Range [0.01;1000].
        voltage_ratio: Voltage measured over that on the nameplate. Range [0.1;2].

    Returns:
        load: Shaft power over rated shaft power.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the nameplate speed is not below synchronous speed

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: US Department of Energy, Determining Electric Motor Load and Efficiency,
    DOE/GO-10097-517, slip method with voltage compensation
    """
    return _runtime.call("freeair_nameplate_load_from_speed")((speed_rev_s, synchronous_rev_s, nameplate_rev_s, voltage_ratio,))


def capacitor_current(*, capacitance_f, voltage_v, frequency_hz):
    """Current that a sound capacitor draws.

    Model: I = 2 pi f C U, losses neglected.

    Arguments:
        capacitance_f: Capacitance. [F] Range [0;1].
        voltage_v: Voltage across the capacitor. [V] Range [0;1000000].
        frequency_hz: Frequency. [Hz] Range [0.1;100000].

    Returns:
        current_a: Current through it. [A]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_capacitor_current")((capacitance_f, voltage_v, frequency_hz,))


CapacitorFromCurrentResult = _collections.namedtuple(
    "CapacitorFromCurrentResult", ['capacitance_f', 'uncertainty_f'])


def capacitor_from_current(*, current_a, current_uncertainty_a, voltage_v, voltage_uncertainty_v, frequency_hz):
    """Capacitance from current and voltage on the running motor, with uncertainty.

    Model: C = I / (2 pi f U), losses neglected; u(C) = C sqrt((u(I)/I)^2 + (u(U)/U)^2). Clamp the
    wire of the capacitor (the start winding), not the line, and measure the voltage across the
    capacitor itself. Distorted currents read high. At 60 Hz this is the trade's C in uF = 2652 I /
    U.

    Arguments:
        current_a: Current through the capacitor. [A] Range [0.000001;1000000].
        current_uncertainty_a: Standard uncertainty of the current. [A] Range [0;1000000].
        voltage_v: Voltage across the capacitor. [V] Range [0.001;1000000].
        voltage_uncertainty_v: Standard uncertainty of the voltage. [V] Range [0;1000000].
        frequency_hz: Supply frequency. [Hz] Range [0.1;100000].

    Returns:
        capacitance_f: Capacitance. [F]
        uncertainty_f: Standard uncertainty of the capacitance. [F]

    Raises:
        DomainError: an input is outside its range

    Caution: Live electrical work is for qualified people under local rules.

    Caution: A capacitor stays charged after the power is off.

    Source: definition; uncertainty by JCGM 100:2008, 5.1.6
    """
    return _runtime.call("freeair_capacitor_from_current")((current_a, current_uncertainty_a, voltage_v, voltage_uncertainty_v, frequency_hz,), CapacitorFromCurrentResult)


def capacitor_uncertainty_from_meter(*, reading_f, accuracy, counts, resolution_f):
    """Standard uncertainty of a capacitance reading from the meter's data sheet.

    Model: u = (accuracy reading + counts resolution) / sqrt(3), limits of error as a rectangular
    distribution.

    Arguments:
        reading_f: What the meter shows. [F] Range [0;1].
        accuracy: Limit of error as a fraction of the reading. Range [0;1].
        counts: Limit of error in units of the last digit. Range [0;10000].
        resolution_f: Value of one unit of the last digit. [F] Range [0;0.001].

    Returns:
        uncertainty_f: Standard uncertainty. [F]

    Raises:
        DomainError: an input is outside its range

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.7
    """
    return _runtime.call("freeair_capacitor_uncertainty_from_meter")((reading_f, accuracy, counts, resolution_f,))


CapacitorLimitsResult = _collections.namedtuple(
    "CapacitorLimitsResult", ['minimum_f', 'maximum_f'])


def capacitor_limits(*, rated_f, tolerance_class):
    """Limits of a sound capacitor from its printed value and tolerance class.

    Model: rated value times one less and one plus the tolerance. Where a range is printed (43-53
    uF) it is the limits.

    Arguments:
        rated_f: Printed value; of a start capacitor the lower one. [F] Range [0.000000000001;1].
        tolerance_class: Tolerance class. One of CAPACITOR_TOLERANCE_* (enumeration
            freeair_capacitor_tolerance).

    Returns:
        minimum_f: Least sound value. [F]
        maximum_f: Greatest sound value. [F]

    Raises:
        DomainError: rated_f is outside its range
        NotFoundError: not a tolerance class

    Source: IEC 60252-1:2010, preferred tolerances 5, 10, 15 percent; EIA-463, -0 +20 percent; 6 and
    23 percent: common practice; all from memory
    """
    return _runtime.call("freeair_capacitor_limits")((rated_f, tolerance_class,), CapacitorLimitsResult)


CapacitorVerdictResult = _collections.namedtuple(
    "CapacitorVerdictResult", ['verdict', 'probability_in', 'probability_low'])


def capacitor_verdict(*, measured_f, uncertainty_f, minimum_f, maximum_f, confidence):
    """Whether a capacitor is within its limits, as a guarded decision.

    Model: the decision is that of freeair_verdict_decide on the measured value and its standard
    uncertainty. FAILS with probability_low near 1 is a weak capacitor.

    Arguments:
        measured_f: Value found. [F] Range [0;1].
        uncertainty_f: Standard uncertainty of it. [F] Range [0;1].
        minimum_f: Least sound value. [F] Range [0;1].
        maximum_f: Greatest sound value, above minimum_f. [F] Range (0;1].
        confidence: Probability required of a firm verdict. Range (0.5;1).

    Returns:
        verdict: The decision. One of VERDICT_* (enumeration freeair_verdict).
        probability_in: Probability that the value is within its limits.
        probability_low: Probability that it is below the least sound value.

    Raises:
        DomainError: an input is outside its range, or maximum_f is not above minimum_f

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: A capacitor stays charged after the power is off.

    Source: JCGM 106:2012, 8.3
    """
    return _runtime.call("freeair_capacitor_verdict")((measured_f, uncertainty_f, minimum_f, maximum_f, confidence,), CapacitorVerdictResult)


def capacitor_discharge_time(*, capacitance_f, r_ohm, start_v, safe_v):
    """Time for a capacitor to discharge through a resistor.

    Model: t = R C ln(U_0 / U). Dielectric absorption brings some voltage back later: prove dead,
    keep shorted.

    Arguments:
        capacitance_f: Capacitance. [F] Range [0.000000000001;1].
        r_ohm: Resistance. [ohm] Range [0.000001;1000000000000].
        start_v: Voltage at the start; the peak of an alternating voltage. [V] Range
            [0.000001;1000000].
        safe_v: Voltage at the end, not above start_v. [V] Range [0.000001;1000000].

    Returns:
        time_s: Time. [s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: safe_v is above start_v

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: A capacitor stays charged after the power is off.

    Source: definition
    """
    return _runtime.call("freeair_capacitor_discharge_time")((capacitance_f, r_ohm, start_v, safe_v,))


def capacitor_residual_voltage(*, capacitance_f, r_ohm, start_v, time_s):
    """Voltage left on a capacitor after a time.

    Model: U = U_0 exp(-t / (R C)).

    Arguments:
        capacitance_f: Capacitance. [F] Range [0.000000000001;1].
        r_ohm: Resistance. [ohm] Range [0.000001;1000000000000].
        start_v: Voltage at the start; the peak of an alternating voltage. [V] Range [0;1000000].
        time_s: Time since. [s] Range [0;1000000000].

    Returns:
        residual_v: Voltage left. [V]

    Raises:
        DomainError: an input is outside its range

    Caution: A capacitor stays charged after the power is off.

    Source: definition
    """
    return _runtime.call("freeair_capacitor_residual_voltage")((capacitance_f, r_ohm, start_v, time_s,))


CapacitorBleederResult = _collections.namedtuple(
    "CapacitorBleederResult", ['r_ohm', 'power_w'])


def capacitor_bleeder(*, capacitance_f, start_v, safe_v, time_s):
    """Bleeder resistor that discharges a capacitor in a time, and what it burns.

    Model: R = t / (C ln(U_0 / U)); power U_0^2 / (2 R) while the capacitor works on alternating
    voltage of peak U_0. Rules ask 50 V after 1 min (NEC 460.6), or 75 V after 3 min (IEC 60831-1).

    Arguments:
        capacitance_f: Capacitance. [F] Range [0.000000000001;1].
        start_v: Peak voltage at the start. [V] Range [0.000001;1000000].
        safe_v: Voltage at the end, below start_v. [V] Range [0.000001;1000000].
        time_s: Time allowed. [s] Range [0.000001;1000000000].

    Returns:
        r_ohm: Greatest resistance that does it. [ohm]
        power_w: Mean power in that resistor at work. [W]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: safe_v is not below start_v

    Caution: A capacitor stays charged after the power is off.

    Source: definition; limits from NFPA 70 (NEC), 460.6(A), and IEC 60831-1
    """
    return _runtime.call("freeair_capacitor_bleeder")((capacitance_f, start_v, safe_v, time_s,), CapacitorBleederResult)


def capacitor_energy(*, capacitance_f, voltage_v):
    """Energy stored in a capacitor.

    Model: E = C U^2 / 2, U the voltage at that instant.

    Arguments:
        capacitance_f: Capacitance. [F] Range [0;1].
        voltage_v: Voltage; the peak of an alternating voltage. [V] Range [0;1000000].

    Returns:
        energy_j: Energy. [J]

    Raises:
        DomainError: an input is outside its range

    Caution: A capacitor stays charged after the power is off.

    Source: definition
    """
    return _runtime.call("freeair_capacitor_energy")((capacitance_f, voltage_v,))


def capacitor_series(*, first_f, second_f):
    """Two capacitors in series.

    Model: C = C1 C2 / (C1 + C2).

    Arguments:
        first_f: Capacitance of the first. [F] Range [0.000000000001;1].
        second_f: Capacitance of the second. [F] Range [0.000000000001;1].

    Returns:
        capacitance_f: Capacitance of both. [F]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_capacitor_series")((first_f, second_f,))


def capacitor_parallel(*, first_f, second_f):
    """Two capacitors in parallel.

    Model: C = C1 + C2. Each must carry the full voltage.

    Arguments:
        first_f: Capacitance of the first. [F] Range [0;1].
        second_f: Capacitance of the second. [F] Range [0;1].

    Returns:
        capacitance_f: Capacitance of both. [F]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_capacitor_parallel")((first_f, second_f,))


CapacitorMotorQuadratureResult = _collections.namedtuple(
    "CapacitorMotorQuadratureResult", ['capacitance_f', 'reactance_ohm'])


def capacitor_motor_quadrature(*, main_r_ohm, main_x_ohm, auxiliary_r_ohm, auxiliary_x_ohm, frequency_hz):
    """Capacitor that sets the locked-rotor currents of the windings at right angles.

    Model: X_C = X_a + R_a R_m / X_m, C = 1 / (2 pi f X_C), with the impedances of the windings at
    standstill.

    Arguments:
        main_r_ohm: Resistance of the main winding, rotor locked. [ohm] Range [0;1000].
        main_x_ohm: Reactance of the main winding, rotor locked. [ohm] Range [0.001;1000].
        auxiliary_r_ohm: Resistance of the auxiliary winding, rotor locked. [ohm] Range [0;1000].
        auxiliary_x_ohm: Reactance of the auxiliary winding, rotor locked. [ohm] Range [0.001;1000].
        frequency_hz: Supply frequency. [Hz] Range [0.1;1000].

    Returns:
        capacitance_f: Capacitance in series with the auxiliary winding. [F]
        reactance_ohm: Its reactance, as a positive number. [ohm]

    Raises:
        DomainError: an input is outside its range

    Source: Hubert, Electric Machines, 2nd edition, example 6.2 (its reactance; its capacitance is
    misprinted)
    """
    return _runtime.call("freeair_capacitor_motor_quadrature")((main_r_ohm, main_x_ohm, auxiliary_r_ohm, auxiliary_x_ohm, frequency_hz,), CapacitorMotorQuadratureResult)


def capacitor_motor_starting_torque_ratio(*, main_r_ohm, main_x_ohm, auxiliary_r_ohm, auxiliary_x_ohm, frequency_hz, capacitance_f, rated_f):
    """Starting torque with one capacitor over that with another.

    Model: at standstill torque is proportional to the product of the two winding currents and the
    sine of the angle between them, hence to (X_m R_a - R_m X) / (R_a^2 + X^2) with X = X_a - X_C.
    Exact at standstill for given impedances; saturation makes a real motor lose a little less.

    Arguments:
        main_r_ohm: Resistance of the main winding, rotor locked. [ohm] Range [0;1000].
        main_x_ohm: Reactance of the main winding, rotor locked. [ohm] Range [0.001;1000].
        auxiliary_r_ohm: Resistance of the auxiliary winding, rotor locked. [ohm] Range
            [0.001;1000].
        auxiliary_x_ohm: Reactance of the auxiliary winding, rotor locked. [ohm] Range [0.001;1000].
        frequency_hz: Supply frequency. [Hz] Range [0.1;1000].
        capacitance_f: Capacitance found. [F] Range [0.000000001;1].
        rated_f: Capacitance that should be. [F] Range [0.000000001;1].

    Returns:
        torque_ratio: Starting torque over that with the rated capacitance; negative starts
            backwards.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: with rated_f the motor does not start forwards

    Source: Hubert, Electric Machines, 2nd edition, examples 6.1 and 6.2, torque of a split-phase
    motor
    """
    return _runtime.call("freeair_capacitor_motor_starting_torque_ratio")((main_r_ohm, main_x_ohm, auxiliary_r_ohm, auxiliary_x_ohm, frequency_hz, capacitance_f, rated_f,))


def capacitor_motor_run(*, windings, voltage_v, frequency_hz, poles, capacitance_f, slip):
    """Torque, currents and power of a capacitor motor at a slip.

    Model: two windings at right angles by the double revolving field. With Z_f and Z_b half the
    forward and backward rotor impedances in parallel with half the magnetising reactance and a the
    turns ratio, V = I_m (Z_m + Z_f + Z_b) - j a I_a (Z_f - Z_b) and V = I_a (Z_a + a^2 (Z_f + Z_b))
    + V_C + j a I_m (Z_f - Z_b); torque is (R_f |I_m - j a I_a|^2 - R_b |I_m + j a I_a|^2) /
    omega_s. Linear iron, no iron loss, fundamental only.

    Arguments:
        windings: Constants of the motor.
        voltage_v: Line voltage. [V] Range [0;1000000].
        frequency_hz: Supply frequency, at which the reactances hold. [Hz] Range [0.1;1000].
        poles: Number of poles, even; an odd number is refused. Range [2;100].
        capacitance_f: Capacitance; 0 opens the auxiliary winding. [F] Range [0;0.1].
        slip: Slip as a fraction; 1 is standstill. Range [0;1].

    Returns:
        performance: The result; initialise it first.

    Raises:
        DomainError: an input is outside its range
        StructureVersionError: a structure's size is unknown

    Source: Fitzgerald, Kingsley, Umans, Electric Machinery, 6th edition, sections 9.3 and 9.4, from
    memory
    """
    return _runtime.call("freeair_capacitor_motor_run")((windings, voltage_v, frequency_hz, poles, capacitance_f, slip,))


def capacitor_motor_slip(*, windings, voltage_v, frequency_hz, poles, capacitance_f, torque_nm):
    """Slip at which a capacitor motor carries a torque.

    Model: the smallest slip at which freeair_capacitor_motor_run gives the torque, searched upwards
    in steps of 0.002 and then by bisection to the last bit.

    Arguments:
        windings: Constants of the motor.
        voltage_v: Line voltage. [V] Range [0;1000000].
        frequency_hz: Supply frequency, at which the reactances hold. [Hz] Range [0.1;1000].
        poles: Number of poles, even; an odd number is refused. Range [2;100].
        capacitance_f: Capacitance; 0 opens the auxiliary winding. [F] Range [0;0.1].
        torque_nm: Torque across the air gap. [N m] Range [0;1000000].

    Returns:
        slip: Slip as a fraction.

    Raises:
        DomainError: an input is outside its range
        StructureVersionError: a structure's size is unknown
        NoSolutionError: the motor cannot carry that torque at any speed

    Source: algebra: inverse of freeair_capacitor_motor_run
    """
    return _runtime.call("freeair_capacitor_motor_slip")((windings, voltage_v, frequency_hz, poles, capacitance_f, torque_nm,))


def pulley_driven_speed(*, driver_rev_s, driver_m, driven_m, slip):
    """Speed of the driven pulley.

    Model: n2 = n1 d1 / d2 (1 - s), s the slip of the belt. For a train of drives, apply once for
    each.

    Arguments:
        driver_rev_s: Speed of the driving pulley. [rev/s] Range [0;1000].
        driver_m: Pitch diameter of the driving pulley. [m] Range [0.001;100].
        driven_m: Pitch diameter of the driven pulley. [m] Range [0.001;100].
        slip: Slip of the belt as a fraction; 0 for none. Range [0;1].

    Returns:
        driven_rev_s: Speed of the driven pulley. [rev/s]

    Raises:
        DomainError: an input is outside its range

    Source: Khurmi and Gupta, Theory of Machines, example 11.1
    """
    return _runtime.call("freeair_pulley_driven_speed")((driver_rev_s, driver_m, driven_m, slip,))


def pulley_driver_diameter(*, driver_rev_s, driven_rev_s, driven_m, slip):
    """Diameter of the driving pulley for a wanted speed of the driven one.

    Model: d1 = d2 n2 / (n1 (1 - s)). Never run a compressor above its greatest speed, nor its motor
    above its current.

    Arguments:
        driver_rev_s: Speed of the driving pulley. [rev/s] Range [0.001;1000].
        driven_rev_s: Speed wanted of the driven pulley. [rev/s] Range [0;1000].
        driven_m: Pitch diameter of the driven pulley. [m] Range [0.001;100].
        slip: Slip of the belt as a fraction; 0 for none. Range [0;0.9].

    Returns:
        driver_m: Pitch diameter of the driving pulley. [m]

    Raises:
        DomainError: an input is outside its range

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: Khurmi and Gupta, Theory of Machines, example 11.1, solved for the driver
    """
    return _runtime.call("freeair_pulley_driver_diameter")((driver_rev_s, driven_rev_s, driven_m, slip,))


def pulley_belt_speed(*, diameter_m, speed_rev_s):
    """Speed of the belt.

    Model: v = pi d n.

    Arguments:
        diameter_m: Pitch diameter of a pulley. [m] Range [0.001;100].
        speed_rev_s: Speed of that pulley. [rev/s] Range [0;1000].

    Returns:
        belt_m_s: Speed of the belt. [m/s]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_pulley_belt_speed")((diameter_m, speed_rev_s,))


def pulley_best_belt_speed(*, tight_n, mass_kg_m):
    """Speed at which a belt of a permitted tension carries most.

    Model: v = sqrt(T / (3 m)), where centrifugal tension takes a third.

    Arguments:
        tight_n: Greatest tension permitted. [N] Range [0;10000000].
        mass_kg_m: Mass of the belt for each metre. [kg/m] Range [0.0001;100].

    Returns:
        belt_m_s: Speed of the belt. [m/s]

    Raises:
        DomainError: an input is outside its range

    Source: Khurmi and Gupta, Theory of Machines, chapter 11 and example 11.10
    """
    return _runtime.call("freeair_pulley_best_belt_speed")((tight_n, mass_kg_m,))


def pulley_open_length(*, first_m, second_m, centre_m):
    """Length of an open belt.

    Model: L = 2 sqrt(C^2 - e^2) + pi (d1 + d2) / 2 + 2 e asin(e / C), e = |d1 - d2| / 2. Exact; the
    usual 2 C + pi (d1 + d2) / 2 + (d1 - d2)^2 / (4 C) is its first term in e / C and a little less.

    Arguments:
        first_m: Pitch diameter of one pulley. [m] Range [0.001;100].
        second_m: Pitch diameter of the other. [m] Range [0.001;100].
        centre_m: Distance between the shafts. [m] Range [0.001;1000].

    Returns:
        length_m: Pitch length of the belt. [m]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pulleys would touch

    Source: Shigley, Mechanical Engineering Design, flat-belt geometry of an open belt; geometry
    """
    return _runtime.call("freeair_pulley_open_length")((first_m, second_m, centre_m,))


def pulley_crossed_length(*, first_m, second_m, centre_m):
    """Length of a crossed belt.

    Model: L = 2 sqrt(C^2 - e^2) + (d1 + d2) (pi / 2 + asin(e / C)), e = (d1 + d2) / 2. Exact.

    Arguments:
        first_m: Pitch diameter of one pulley. [m] Range [0.001;100].
        second_m: Pitch diameter of the other. [m] Range [0.001;100].
        centre_m: Distance between the shafts. [m] Range [0.001;1000].

    Returns:
        length_m: Length of the belt. [m]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pulleys would touch

    Source: Shigley, Mechanical Engineering Design, flat-belt geometry of a crossed belt; geometry
    """
    return _runtime.call("freeair_pulley_crossed_length")((first_m, second_m, centre_m,))


def pulley_centre_from_open_length(*, first_m, second_m, length_m):
    """Distance between the shafts for an open belt of a length.

    Model: the exact inverse of freeair_pulley_open_length by Newton's method from above, which
    always arrives. The trade's (B + sqrt(B^2 - 32 (D - d)^2)) / 16 with B = 4 L - 6.28 (D + d) is
    its approximation.

    Arguments:
        first_m: Pitch diameter of one pulley. [m] Range [0.001;100].
        second_m: Pitch diameter of the other. [m] Range [0.001;100].
        length_m: Pitch length of the belt. [m] Range [0.001;2000].

    Returns:
        centre_m: Distance between the shafts. [m]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the belt is too short: the pulleys would touch

    Source: geometry; approximation in Wentzell, Machine Design, example 14.2
    """
    return _runtime.call("freeair_pulley_centre_from_open_length")((first_m, second_m, length_m,))


def pulley_centre_from_crossed_length(*, first_m, second_m, length_m):
    """Distance between the shafts for a crossed belt of a length.

    Model: the exact inverse of freeair_pulley_crossed_length by Newton's method from above, which
    always arrives; where the pulleys nearly touch the length says little about the distance.

    Arguments:
        first_m: Pitch diameter of one pulley. [m] Range [0.001;100].
        second_m: Pitch diameter of the other. [m] Range [0.001;100].
        length_m: Length of the belt. [m] Range [0.001;2000].

    Returns:
        centre_m: Distance between the shafts. [m]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the belt is too short: the pulleys would touch

    Source: geometry
    """
    return _runtime.call("freeair_pulley_centre_from_crossed_length")((first_m, second_m, length_m,))


PulleyOpenWrapResult = _collections.namedtuple(
    "PulleyOpenWrapResult", ['smaller_rad', 'larger_rad'])


def pulley_open_wrap(*, first_m, second_m, centre_m):
    """Wrap of an open belt on the smaller and the larger pulley.

    Model: pi - 2 asin(e / C) and pi + 2 asin(e / C), e = |d1 - d2| / 2. The smaller one slips
    first.

    Arguments:
        first_m: Pitch diameter of one pulley. [m] Range [0.001;100].
        second_m: Pitch diameter of the other. [m] Range [0.001;100].
        centre_m: Distance between the shafts. [m] Range [0.001;1000].

    Returns:
        smaller_rad: Wrap on the smaller pulley. [rad]
        larger_rad: Wrap on the larger pulley. [rad]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pulleys would touch

    Source: Wentzell, Machine Design, example 14.2; geometry
    """
    return _runtime.call("freeair_pulley_open_wrap")((first_m, second_m, centre_m,), PulleyOpenWrapResult)


def pulley_crossed_wrap(*, first_m, second_m, centre_m):
    """Wrap of a crossed belt, the same on both pulleys.

    Model: pi + 2 asin(e / C), e = (d1 + d2) / 2.

    Arguments:
        first_m: Pitch diameter of one pulley. [m] Range [0.001;100].
        second_m: Pitch diameter of the other. [m] Range [0.001;100].
        centre_m: Distance between the shafts. [m] Range [0.001;1000].

    Returns:
        wrap_rad: Wrap on each pulley. [rad]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pulleys would touch

    Source: Khurmi and Gupta, Theory of Machines, example 11.6; geometry
    """
    return _runtime.call("freeair_pulley_crossed_wrap")((first_m, second_m, centre_m,))


def pulley_span(*, first_m, second_m, centre_m):
    """Length of the free span of an open belt, from pulley to pulley.

    Model: sqrt(C^2 - e^2), e = |d1 - d2| / 2.

    Arguments:
        first_m: Pitch diameter of one pulley. [m] Range [0.001;100].
        second_m: Pitch diameter of the other. [m] Range [0.001;100].
        centre_m: Distance between the shafts. [m] Range [0.001;1000].

    Returns:
        span_m: Length of the span. [m]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pulleys would touch

    Source: geometry
    """
    return _runtime.call("freeair_pulley_span")((first_m, second_m, centre_m,))


BeltSlipResult = _collections.namedtuple(
    "BeltSlipResult", ['slip', 'slip_uncertainty'])


def belt_slip(*, driver_rev_s, driver_uncertainty_rev_s, driven_rev_s, driven_uncertainty_rev_s, ratio, ratio_uncertainty):
    """Slip of a belt from two measured speeds, with uncertainty.

    Model: s = 1 - (n2 / n1) (d2 / d1); u(s) = (1 - s) times the root of the sum of the squared
    relative uncertainties. A sound V-belt shows some 0.5 to 2 percent; take the ratio from pitch
    diameters, or from the same drive when sound.

    Arguments:
        driver_rev_s: Speed of the driving pulley. [rev/s] Range [0.001;1000].
        driver_uncertainty_rev_s: Standard uncertainty of it. [rev/s] Range [0;1000].
        driven_rev_s: Speed of the driven pulley. [rev/s] Range [0;1000].
        driven_uncertainty_rev_s: Standard uncertainty of it. [rev/s] Range [0;1000].
        ratio: Pitch diameter of driven over driving pulley. Range [0.001;1000].
        ratio_uncertainty: Standard uncertainty of that ratio. Range [0;1000].

    Returns:
        slip: Slip as a fraction.
        slip_uncertainty: Standard uncertainty of the slip.

    Raises:
        DomainError: an input is outside its range

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: Khurmi and Gupta, Theory of Machines, chapter 11, slip of belt; uncertainty by JCGM
    100:2008, 5.1.2
    """
    return _runtime.call("freeair_belt_slip")((driver_rev_s, driver_uncertainty_rev_s, driven_rev_s, driven_uncertainty_rev_s, ratio, ratio_uncertainty,), BeltSlipResult)


def belt_tension_ratio(*, friction, wrap_rad, groove_rad):
    """Greatest ratio of tight to slack tension before a belt slips.

    Model: R = exp(mu wrap / sin(groove / 2)), net of centrifugal tension.

    Arguments:
        friction: Coefficient of friction; 0.3 is common. Range [0;1.5].
        wrap_rad: Wrap on the pulley that slips first. [rad] Range [0;20].
        groove_rad: Included angle of the groove; pi for a flat belt. [rad] Range
            [0.3;3.141592653589793].

    Returns:
        tension_ratio: Tight over slack tension.

    Raises:
        DomainError: an input is outside its range

    Source: Khurmi and Gupta, Theory of Machines, chapter 11, ratio of driving tensions
    """
    return _runtime.call("freeair_belt_tension_ratio")((friction, wrap_rad, groove_rad,))


BeltTensionsFromPowerResult = _collections.namedtuple(
    "BeltTensionsFromPowerResult", ['tight_n', 'slack_n', 'static_n', 'centrifugal_n'])


def belt_tensions_from_power(*, power_w, belt_m_s, mass_kg_m, tension_ratio):
    """Tensions that a belt needs to carry a power without slipping.

    Model: T1 - T2 = P / v, (T1 - T_c) = R (T2 - T_c), T_c = m v^2; static tension is the mean of T1
    and T2. These are the least: multiply the power by a service factor for the pulses of a piston
    machine and for start.

    Arguments:
        power_w: Power that the belt carries. [W] Range [0;10000000].
        belt_m_s: Speed of the belt. [m/s] Range [0.01;200].
        mass_kg_m: Mass of the belt for each metre; 0 neglects it. [kg/m] Range [0;100].
        tension_ratio: Greatest ratio of tight to slack tension. Range [1.0001;1e12].

    Returns:
        tight_n: Tension of the tight span. [N]
        slack_n: Tension of the slack span. [N]
        static_n: Static tension that gives them. [N]
        centrifugal_n: Part of each that the belt's own mass makes, T_c. [N]

    Raises:
        DomainError: an input is outside its range

    Source: Khurmi and Gupta, Theory of Machines, chapter 11
    """
    return _runtime.call("freeair_belt_tensions_from_power")((power_w, belt_m_s, mass_kg_m, tension_ratio,), BeltTensionsFromPowerResult)


def belt_power_from_tight_tension(*, tight_n, belt_m_s, mass_kg_m, tension_ratio):
    """Power that a belt carries on the point of slipping at a tight-side tension.

    Model: P = (T1 - m v^2) (1 - 1 / R) v.

    Arguments:
        tight_n: Tension of the tight span. [N] Range [0;10000000].
        belt_m_s: Speed of the belt. [m/s] Range [0;200].
        mass_kg_m: Mass of the belt for each metre; 0 neglects it. [kg/m] Range [0;100].
        tension_ratio: Greatest ratio of tight to slack tension. Range [1;1e12].

    Returns:
        power_w: Power. [W]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: centrifugal tension alone is greater

    Source: Khurmi and Gupta, Theory of Machines, chapter 11 and example 11.4
    """
    return _runtime.call("freeair_belt_power_from_tight_tension")((tight_n, belt_m_s, mass_kg_m, tension_ratio,))


def belt_power_from_static_tension(*, static_n, belt_m_s, mass_kg_m, tension_ratio):
    """Power that a belt carries on the point of slipping at a static tension.

    Model: P = 2 (T0 - m v^2) (R - 1) / (R + 1) v.

    Arguments:
        static_n: Static tension. [N] Range [0;10000000].
        belt_m_s: Speed of the belt. [m/s] Range [0;200].
        mass_kg_m: Mass of the belt for each metre; 0 neglects it. [kg/m] Range [0;100].
        tension_ratio: Greatest ratio of tight to slack tension. Range [1;1e12].

    Returns:
        power_w: Power. [W]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: centrifugal tension alone is greater

    Source: Khurmi and Gupta, Theory of Machines, chapter 11 and examples 11.12 and 11.13
    """
    return _runtime.call("freeair_belt_power_from_static_tension")((static_n, belt_m_s, mass_kg_m, tension_ratio,))


def belt_deflection_distance(*, span_m):
    """Deflection for the force test, a sixty-fourth of the span.

    Model: span / 64: 1/64 inch for each inch, 16 mm for each metre.

    Arguments:
        span_m: Free span, as by freeair_pulley_span. [m] Range [0.001;1000].

    Returns:
        deflection_m: Deflection at mid span. [m]

    Raises:
        DomainError: span_m is outside its range

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: RMA/ARPM IP-20, classical V-belts, tensioning; common practice
    """
    return _runtime.call("freeair_belt_deflection_distance")((span_m,))


def belt_deflection_force(*, static_n, span_m, deflection_m, stiffness_n, belt_m):
    """Force at mid span that deflects a belt of a static tension, by statics.

    Model: F = 4 q T / sqrt(L^2 + 4 q^2), where T = T0 + S (sqrt(L^2 + 4 q^2) - L) / L_b: a string,
    its stretch spread over the whole belt, S its force for each unit of strain. A cold or stiff
    belt asks for more.

    Arguments:
        static_n: Static tension. [N] Range [0;10000000].
        span_m: Free span. [m] Range [0.001;1000].
        deflection_m: Deflection at mid span. [m] Range [0;100].
        stiffness_n: Force for each unit of strain; 0 neglects the stretch. [N] Range
            [0;1000000000].
        belt_m: Length of the whole belt. [m] Range [0.001;2000].

    Returns:
        force_n: Force. [N]

    Raises:
        DomainError: an input is outside its range

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: statics of a string under a point load
    """
    return _runtime.call("freeair_belt_deflection_force")((static_n, span_m, deflection_m, stiffness_n, belt_m,))


def belt_tension_from_deflection(*, force_n, span_m, deflection_m, stiffness_n, belt_m):
    """Static tension of a belt from the force that deflects it at mid span.

    Model: the inverse of freeair_belt_deflection_force, in closed form.

    Arguments:
        force_n: Force at mid span. [N] Range [0;10000000].
        span_m: Free span. [m] Range [0.001;1000].
        deflection_m: Deflection at mid span. [m] Range [0.000001;100].
        stiffness_n: Force for each unit of strain; 0 neglects the stretch. [N] Range
            [0;1000000000].
        belt_m: Length of the whole belt. [m] Range [0.001;2000].

    Returns:
        static_n: Static tension. [N]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the stretch alone asks for more force

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: statics of a string under a point load
    """
    return _runtime.call("freeair_belt_tension_from_deflection")((force_n, span_m, deflection_m, stiffness_n, belt_m,))


def belt_deflection_force_by_rule(*, static_n, span_m, constant_n, belt_m):
    """Force that deflects a belt by a sixty-fourth of its span, by the trade's formula.

    Model: F = (T0 + Y L / L_b) / 16, Y a constant of the belt section (its stiffness over 2048).

    Arguments:
        static_n: Static tension. [N] Range [0;10000000].
        span_m: Free span. [m] Range [0.001;1000].
        constant_n: Constant Y of the section, from the belt maker. [N] Range [0;1000000].
        belt_m: Length of the whole belt. [m] Range [0.001;2000].

    Returns:
        force_n: Force. [N]

    Raises:
        DomainError: an input is outside its range

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: RMA/ARPM IP-20, deflection force, from memory
    """
    return _runtime.call("freeair_belt_deflection_force_by_rule")((static_n, span_m, constant_n, belt_m,))


def belt_span_frequency(*, static_n, mass_kg_m, span_m):
    """Frequency of a span that is plucked.

    Model: f = sqrt(T0 / m) / (2 L), the first mode of a string at rest.

    Arguments:
        static_n: Static tension. [N] Range [0;10000000].
        mass_kg_m: Mass of the belt for each metre. [kg/m] Range [0.0001;100].
        span_m: Free span. [m] Range [0.001;1000].

    Returns:
        frequency_hz: Frequency. [Hz]

    Raises:
        DomainError: an input is outside its range

    Source: vibrating string, as in belt makers' notes, T = 4 m L^2 f^2
    """
    return _runtime.call("freeair_belt_span_frequency")((static_n, mass_kg_m, span_m,))


def belt_tension_from_frequency(*, frequency_hz, mass_kg_m, span_m):
    """Static tension of a span from its frequency.

    Model: T0 = 4 m L^2 f^2. Bending stiffness makes a short thick belt read high.

    Arguments:
        frequency_hz: Frequency of the plucked span, machine at rest and locked out. [Hz] Range
            [0;10000].
        mass_kg_m: Mass of the belt for each metre. [kg/m] Range [0.0001;100].
        span_m: Free span. [m] Range [0.001;1000].

    Returns:
        static_n: Static tension. [N]

    Raises:
        DomainError: an input is outside its range

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: vibrating string, as in belt makers' notes, T = 4 m L^2 f^2
    """
    return _runtime.call("freeair_belt_tension_from_frequency")((frequency_hz, mass_kg_m, span_m,))


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
    "BeltSlipResult",
    "BeltTensionsFromPowerResult",
    "CAPACITOR_RUN_10",
    "CAPACITOR_RUN_15",
    "CAPACITOR_RUN_5",
    "CAPACITOR_RUN_6",
    "CAPACITOR_START_20",
    "CAPACITOR_START_23",
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
    "CapacitorBleederResult",
    "CapacitorFromCurrentResult",
    "CapacitorLimitsResult",
    "CapacitorMotorPerformance",
    "CapacitorMotorQuadratureResult",
    "CapacitorMotorWindings",
    "CapacitorVerdictResult",
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
    "MotorShaftPowerResult",
    "NAMEPLATE_CODE_A",
    "NAMEPLATE_CODE_B",
    "NAMEPLATE_CODE_C",
    "NAMEPLATE_CODE_D",
    "NAMEPLATE_CODE_E",
    "NAMEPLATE_CODE_F",
    "NAMEPLATE_CODE_G",
    "NAMEPLATE_CODE_H",
    "NAMEPLATE_CODE_J",
    "NAMEPLATE_CODE_K",
    "NAMEPLATE_CODE_L",
    "NAMEPLATE_CODE_M",
    "NAMEPLATE_CODE_N",
    "NAMEPLATE_CODE_P",
    "NAMEPLATE_CODE_R",
    "NAMEPLATE_CODE_S",
    "NAMEPLATE_CODE_T",
    "NAMEPLATE_CODE_U",
    "NAMEPLATE_CODE_V",
    "NAMEPLATE_IE1",
    "NAMEPLATE_IE2",
    "NAMEPLATE_IE3",
    "NAMEPLATE_IE4",
    "NameplateCodeBandResult",
    "NameplateLockedRotorCurrentResult",
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
    "PulleyOpenWrapResult",
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
    "SupplyStartingVoltageResult",
    "SupplyVoltageAtLoadResult",
    "SupplyVoltageVerdictResult",
    "TYPE_DOUBLE",
    "TYPE_INT32",
    "TYPE_SIZE",
    "TYPE_STRUCTURE",
    "TYPE_TEXT",
    "TYPE_UINT32",
    "UnbalanceCurrentResult",
    "UnbalanceVoltageResult",
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
    "belt_deflection_distance",
    "belt_deflection_force",
    "belt_deflection_force_by_rule",
    "belt_power_from_static_tension",
    "belt_power_from_tight_tension",
    "belt_slip",
    "belt_span_frequency",
    "belt_tension_from_deflection",
    "belt_tension_from_frequency",
    "belt_tension_ratio",
    "belt_tensions_from_power",
    "capacitor_bleeder",
    "capacitor_current",
    "capacitor_discharge_time",
    "capacitor_energy",
    "capacitor_from_current",
    "capacitor_limits",
    "capacitor_motor_quadrature",
    "capacitor_motor_run",
    "capacitor_motor_slip",
    "capacitor_motor_starting_torque_ratio",
    "capacitor_parallel",
    "capacitor_residual_voltage",
    "capacitor_series",
    "capacitor_uncertainty_from_meter",
    "capacitor_verdict",
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
    "motor_line_current",
    "motor_locked_rotor_current",
    "motor_locked_rotor_torque",
    "motor_poles_from_speed",
    "motor_power_from_torque",
    "motor_rotor_frequency",
    "motor_shaft_power",
    "motor_slip",
    "motor_slip_at_supply",
    "motor_speed_from_slip",
    "motor_synchronous_speed",
    "motor_torque_at_slip",
    "motor_torque_from_power",
    "nameplate_code_band",
    "nameplate_code_from_current",
    "nameplate_efficiency",
    "nameplate_full_load_current",
    "nameplate_load_from_current",
    "nameplate_load_from_speed",
    "nameplate_locked_rotor_current",
    "prediction_leak_down",
    "prediction_level_off",
    "prediction_pumpup",
    "prediction_times",
    "pulley_belt_speed",
    "pulley_best_belt_speed",
    "pulley_centre_from_crossed_length",
    "pulley_centre_from_open_length",
    "pulley_crossed_length",
    "pulley_crossed_wrap",
    "pulley_driven_speed",
    "pulley_driver_diameter",
    "pulley_open_length",
    "pulley_open_wrap",
    "pulley_span",
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
    "supply_combined_deviation",
    "supply_deviation",
    "supply_starting_voltage",
    "supply_uncertainty_from_meter",
    "supply_voltage_at_load",
    "supply_voltage_drop",
    "supply_voltage_verdict",
    "unbalance_current",
    "unbalance_derating",
    "unbalance_factor",
    "unbalance_single_phasing_current",
    "unbalance_temperature_rise",
    "unbalance_voltage",
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
