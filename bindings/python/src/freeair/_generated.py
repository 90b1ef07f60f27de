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
COVERAGE_NORMAL = 1
COVERAGE_RECTANGULAR = 2
COVERAGE_TRIANGULAR = 3
COVERAGE_ARCSINE = 4
COVERAGE_STUDENT = 5
SATURATION_OVER_WATER = 1
SATURATION_OVER_ICE = 2
ENHANCEMENT_NONE = 1
ENHANCEMENT_VIRIAL = 2
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
BELT_SECTION_A = 1
BELT_SECTION_B = 2
BELT_SECTION_C = 3
BELT_SECTION_D = 4
FLOW_SUBSONIC = 0
FLOW_SUPERSONIC = 1
NOZZLE_SHARP_EDGED = 1
NOZZLE_WELL_ROUNDED = 2
NOZZLE_SHORT_TUBE = 3
NOZZLE_ROUNDED_TUBE = 4
NOZZLE_CONE = 5
NOZZLE_TOROIDAL_ACCURATE = 1
NOZZLE_TOROIDAL_NORMAL = 2
NOZZLE_CYLINDRICAL = 3
SAFETY_UNKNOWN = 0
SAFETY_LOWER = 1
SAFETY_HIGH = 2
PIPE_DRAWN = 1
PIPE_STEEL = 2
PIPE_GALVANIZED = 3
PIPE_CAST_IRON = 4
PIPE_SMOOTH = 5
PIPE_SCHEDULE_40 = 1
PIPE_SCHEDULE_80 = 2
PIPE_EN_MEDIUM = 3
FITTING_ELBOW_90 = 1
FITTING_ELBOW_90_LONG = 2
FITTING_ELBOW_45 = 3
FITTING_RETURN_BEND = 4
FITTING_TEE_RUN = 5
FITTING_TEE_BRANCH = 6
FITTING_UNION = 7
FITTING_GLOBE_VALVE = 8
FITTING_ANGLE_VALVE = 9
FITTING_GATE_VALVE = 10
FITTING_BALL_VALVE = 11
FITTING_SWING_CHECK = 12
FITTING_ENTRANCE_SHARP = 13
FITTING_ENTRANCE_INWARD = 14
FITTING_ENTRANCE_ROUND = 15
FITTING_EXIT = 16
FITTING_THREADED = 1
FITTING_FLANGED = 2
CONDUCTOR_COPPER = 1
CONDUCTOR_COPPER_FLEXIBLE = 2
CONDUCTOR_ALUMINIUM = 3
FASTENER_ISO = 1
FASTENER_UNC = 2
FASTENER_UNF = 3
FASTENER_SAE_2 = 1
FASTENER_SAE_5 = 2
FASTENER_SAE_8 = 3
FASTENER_ISO_4_6 = 4
FASTENER_ISO_4_8 = 5
FASTENER_ISO_5_6 = 6
FASTENER_ISO_5_8 = 7
FASTENER_ISO_6_8 = 8
FASTENER_ISO_8_8 = 9
FASTENER_ISO_9_8 = 10
FASTENER_ISO_10_9 = 11
FASTENER_ISO_12_9 = 12
ENERGY_START_STOP = 1
ENERGY_LOAD_UNLOAD = 2
ENERGY_MODULATION = 3
ENERGY_VARIABLE_SPEED = 4
PURITY_CLASS_X = 10
INTERCOOLER_COUNTERFLOW = 1
INTERCOOLER_PARALLEL = 2
INTERCOOLER_SHELL_AND_TUBE = 3
INTERCOOLER_CROSS_UNMIXED = 4
INTERCOOLER_CROSS_LARGER_MIXED = 5
INTERCOOLER_CROSS_LESSER_MIXED = 6
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
PUMPUP_UNKNOWN = 0
PUMPUP_SOAKED = 1
PUMPUP_DRAWN_DOWN = 2
PUMPUP_CYCLING = 3
PRESSURE_LOG_UNKNOWN = 0
PRESSURE_LOG_LOADED = 1
PRESSURE_LOG_UNLOADED = 2
PRESSURE_LOG_STOPPED = 3
PRESSURE_LOG_IDLE = 4
PRESSURE_LOG_GAP = 5
PRESSURE_LOG_FROZEN = 6
DUTY_NEVER_CUTS_OUT = 1
DUTY_NEVER_LOADS = 2
DUTY_HAS_FROZEN = 4
DUTY_HAS_GAPS = 8
DUTY_LEFT_OUT = 16
DUTY_FEW_CYCLES = 32
DUTY_AMBIGUOUS = 64
DUTY_UNSETTLED = 128
DUTY_SINKS_LOADED = 256
EVIDENCE_KIND_CAUSE = 1
EVIDENCE_KIND_OBSERVATION = 2
EVIDENCE_KIND_READING = 3
EVIDENCE_KIND_CHECK = 4
EVIDENCE_NOT_CHECKED = 0
EVIDENCE_YES = 1
EVIDENCE_NO = 2
EVIDENCE_CAUSE_NONE = 0
EVIDENCE_HEALTHY = 1
EVIDENCE_OTHER = 2
EVIDENCE_INTAKE_FILTER = 3
EVIDENCE_LP_SUCTION_VALVE = 4
EVIDENCE_LP_DISCHARGE_VALVE = 5
EVIDENCE_HP_SUCTION_VALVE = 6
EVIDENCE_HP_DISCHARGE_VALVE = 7
EVIDENCE_GASKET_BETWEEN = 8
EVIDENCE_GASKET_OUTSIDE = 9
EVIDENCE_PISTON_RINGS = 10
EVIDENCE_INTERSTAGE_LEAK = 11
EVIDENCE_INTERCOOLER_FOULED = 12
EVIDENCE_RELIEF_WEAK = 13
EVIDENCE_UNLOADER_LEAK = 14
EVIDENCE_CHECK_VALVE = 15
EVIDENCE_DOWNSTREAM = 16
EVIDENCE_RECEIVER_WATER = 17
EVIDENCE_BELT_SLIP = 18
EVIDENCE_WRONG_PULLEY = 19
EVIDENCE_LOW_VOLTAGE = 20
EVIDENCE_RUN_CAPACITOR = 21
EVIDENCE_START_CAPACITOR = 22
EVIDENCE_MOTOR = 23
EVIDENCE_GAUGE_OR_SWITCH = 24
EVIDENCE_OBSERVATION_NONE = 0
EVIDENCE_BLOW_BACK_AT_INLET = 1
EVIDENCE_CHIRPING_AT_HEADS = 2
EVIDENCE_INTERSTAGE_RELIEF_POPS = 3
EVIDENCE_LP_HEAD_HOT = 4
EVIDENCE_HP_HEAD_HOT = 5
EVIDENCE_HOT_BETWEEN_BORES = 6
EVIDENCE_AIR_AT_HEAD_JOINT = 7
EVIDENCE_BREATHER_BLOWS = 8
EVIDENCE_OIL_IN_DRAIN = 9
EVIDENCE_OIL_USE_HIGH = 10
EVIDENCE_BELT_DUST = 11
EVIDENCE_BELT_SQUEALS = 12
EVIDENCE_BELT_GLAZED = 13
EVIDENCE_BELT_LOOSE = 14
EVIDENCE_DRIVE_CHANGED = 15
EVIDENCE_PUMP_SOUNDS_SLOW = 16
EVIDENCE_HUMS_AT_START = 17
EVIDENCE_BREAKER_TRIPS = 18
EVIDENCE_CAPACITOR_BULGED = 19
EVIDENCE_LIGHTS_DIM = 20
EVIDENCE_HISS_AT_SWITCH = 21
EVIDENCE_BETTER_UNLOADER_BLOCKED = 22
EVIDENCE_UNLOADER_BLOWS_STOPPED = 23
EVIDENCE_HARD_RESTART = 24
EVIDENCE_FALLS_WHEN_STOPPED = 25
EVIDENCE_DRAIN_PASSES = 26
EVIDENCE_LEAKS_HEARD = 27
EVIDENCE_DEMAND_ADDED = 28
EVIDENCE_FINE_WHEN_ISOLATED = 29
EVIDENCE_RUNS_AT_NIGHT = 30
EVIDENCE_SYSTEM_STARVES = 31
EVIDENCE_FILTER_DIRTY = 32
EVIDENCE_BETTER_FILTER_OUT = 33
EVIDENCE_INTERSTAGE_BUBBLES = 34
EVIDENCE_INTERCOOLER_DIRTY = 35
EVIDENCE_RELIEF_POPS_EARLY = 36
EVIDENCE_WATER_DRAINED = 37
EVIDENCE_SHORT_CYCLES = 38
EVIDENCE_NEVER_REACHES_CUTOUT = 39
EVIDENCE_STOPS_AT_WRONG_PRESSURE = 40
EVIDENCE_SLOWER_NEAR_CUTOUT = 41
EVIDENCE_CAME_SUDDENLY = 42
EVIDENCE_HEADS_OPENED_LATELY = 43
EVIDENCE_LP_VALVES_BAD = 44
EVIDENCE_HP_VALVES_BAD = 45
EVIDENCE_GASKET_BURNT = 46
EVIDENCE_CHECK_NONE = 0
EVIDENCE_ASK = 1
EVIDENCE_LISTEN_AT_INLET = 2
EVIDENCE_LISTEN_AT_HEADS = 3
EVIDENCE_LOOK_AT_DRIVE = 4
EVIDENCE_LOOK_AT_OIL = 5
EVIDENCE_WALK_THE_SYSTEM = 6
EVIDENCE_SECOND_GAUGE = 7
EVIDENCE_PUMP_UP_TEST = 8
EVIDENCE_STOP_AND_WATCH = 9
EVIDENCE_LEAK_DOWN_OPEN = 10
EVIDENCE_INTERSTAGE_GAUGE = 11
EVIDENCE_TEMPERATURES = 12
EVIDENCE_TACHOMETER = 13
EVIDENCE_FILTER_OUT = 14
EVIDENCE_SOAP_INTERSTAGE = 15
EVIDENCE_BLOCK_UNLOADER = 16
EVIDENCE_INSPECT_BELT = 17
EVIDENCE_MEASURE_SUPPLY = 18
EVIDENCE_MEASURE_CAPACITORS = 19
EVIDENCE_WATCH_A_START = 20
EVIDENCE_LOG_A_DAY = 21
EVIDENCE_DRAIN_RECEIVER = 22
EVIDENCE_HEADS_OFF = 23
EVIDENCE_READ_SITE = 24
EVIDENCE_READING_NONE = 0
EVIDENCE_DELIVERY = 1
EVIDENCE_TIME_FROM_EMPTY = 2
EVIDENCE_TIME_FROM_CUTIN = 3
EVIDENCE_LEVEL_OFF = 4
EVIDENCE_INTERSTAGE = 5
EVIDENCE_LP_DISCHARGE = 6
EVIDENCE_HP_DISCHARGE = 7
EVIDENCE_INTERCOOLER_OUTLET = 8
EVIDENCE_MOTOR_SPEED = 9
EVIDENCE_PUMP_SPEED = 10
EVIDENCE_SUPPLY_RUNNING = 11
EVIDENCE_SUPPLY_STARTING = 12
EVIDENCE_MOTOR_CURRENT = 13
EVIDENCE_POWER = 14
EVIDENCE_RUN_CAPACITANCE = 15
EVIDENCE_START_CAPACITANCE = 16
EVIDENCE_LEAK_ISOLATED = 17
EVIDENCE_LEAK_OPEN = 18
EVIDENCE_GAUGE_DIFFERENCE = 19
EVIDENCE_CUTOUT = 20
EVIDENCE_RELIEF_OPENING = 21
EVIDENCE_FILTER_DROP = 22
EVIDENCE_BELT_DEFLECTION = 23
EVIDENCE_WATER = 24
EVIDENCE_DUTY = 25
EVIDENCE_AMBIENT = 26
EVIDENCE_BAROMETER = 27
LIKELIHOOD_UNLISTED = 0
LIKELIHOOD_PRACTICE = 1
LIKELIHOOD_DERIVED = 2
LIKELIHOOD_NO_SCALE = 0
LIKELIHOOD_LOG = 1
LIKELIHOOD_DIFFERENCE = 2
LIKELIHOOD_SHARE = 3
DIAGNOSIS_HEAD_UNKNOWN = 0
DIAGNOSIS_HEAD_SEPARATE = 1
DIAGNOSIS_HEAD_SHARED = 2
DIAGNOSIS_DRIVE_UNKNOWN = 0
DIAGNOSIS_DRIVE_BELT = 1
DIAGNOSIS_DRIVE_DIRECT = 2
DIAGNOSIS_SUPPLY_UNKNOWN = 0
DIAGNOSIS_SINGLE_PHASE = 1
DIAGNOSIS_THREE_PHASE = 2
DIAGNOSIS_ENGINE = 3
DIAGNOSIS_NOT_USED = 0
DIAGNOSIS_USED = 1
DIAGNOSIS_CONTRADICTS = 2
DIAGNOSIS_NOT_APPLICABLE = 3
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
MONTE_CARLO_SYMMETRIC = 1
MONTE_CARLO_SHORTEST = 2


class DryAirProperties(_runtime.Structure):
    """All properties of dry air at one state, filled by freeair_dry_air_state().

    Fields:
        p_pa: Pressure, absolute. [Pa]
        t_k: Temperature. [K]
        rho_kg_m3: Density. [kg/m3]
        compressibility_factor: Z = p/(rho R T).
        h_j_kg: Enthalpy; 0 at 273.15 K and 101325 Pa. [J/kg]
        s_j_kg_k: Entropy; 0 at 273.15 K and 101325 Pa. [J/(kg K)]
        u_j_kg: Internal energy, h - p/rho. [J/kg]
        cp_j_kg_k: Heat capacity at constant pressure. [J/(kg K)]
        cv_j_kg_k: Heat capacity at constant volume. [J/(kg K)]
        heat_capacity_ratio: cp/cv.
        isentropic_exponent: Of p v^k along an isentrope here: rho w^2/p. Equal to cp/cv in an ideal
            gas.
        speed_of_sound_m_s: Speed of sound w. [m/s]
        joule_thomson_k_pa: Temperature change by pressure at constant enthalpy. [K/Pa]
        expansion_1_k: Isobaric expansion coefficient, 1/T in an ideal gas. [1/K]
        compressibility_1_pa: Isothermal compressibility, 1/p in an ideal gas. [1/Pa]
        viscosity_pas: Dynamic viscosity, by freeair_dry_air_transport_viscosity(). [Pa s]
        conductivity_w_m_k: Thermal conductivity, by freeair_dry_air_transport_conductivity(). [W/(m
            K)]
        prandtl_number: viscosity cp/conductivity.
    """

    _c_name = "freeair_dry_air_properties"
    __slots__ = ("_memory",)


class EnhancementCoefficients(_runtime.Structure):
    """Virial coefficients of moist air: a is dry air, w is water.

    Fields:
        b_aa_m3_mol: Second, air and air. [m3/mol]
        b_aw_m3_mol: Second, air and water. [m3/mol]
        b_ww_m3_mol: Second, water and water. [m3/mol]
        c_aaa_m6_mol2: Third, air alone. [m6/mol2]
        c_aaw_m6_mol2: Third, two of air and one of water. [m6/mol2]
        c_aww_m6_mol2: Third, one of air and two of water. [m6/mol2]
        c_www_m6_mol2: Third, water alone. [m6/mol2]
    """

    _c_name = "freeair_enhancement_coefficients"
    __slots__ = ("_memory",)


class MoistAirProperties(_runtime.Structure):
    """All properties of moist air at one state; per kilogram of moist air unless the field says dry.

    Fields:
        p_pa: Pressure, absolute. [Pa]
        t_k: Temperature. [K]
        humidity_ratio: Mass of vapour by mass of dry air.
        mole_fraction: Moles of vapour in a mole of moist air.
        rho_kg_m3: Density. [kg/m3]
        compressibility_factor: Z = p/(rho R T) with the gas constant of the mixture.
        h_j_kg: Enthalpy. [J/kg]
        s_j_kg_k: Entropy. [J/(kg K)]
        u_j_kg: Internal energy. [J/kg]
        cp_j_kg_k: Heat capacity at constant pressure, no water condensing. [J/(kg K)]
        cv_j_kg_k: Heat capacity at constant volume. [J/(kg K)]
        heat_capacity_ratio: cp/cv.
        isentropic_exponent: Of p v^k along an isentrope here: rho w^2/p.
        speed_of_sound_m_s: Speed of sound w. [m/s]
        joule_thomson_k_pa: Temperature change by pressure at constant enthalpy. [K/Pa]
        h_dry_j_kg: Enthalpy of the moist air that holds one kilogram of dry air. [J/kg]
        v_dry_m3_kg: Volume of the moist air that holds one kilogram of dry air. [m3/kg]
    """

    _c_name = "freeair_moist_air_properties"
    __slots__ = ("_memory",)


class HumidityGiven(_runtime.Structure):
    """What is known of the air: pressure, temperature, and one measure of humidity.

    Fields:
        p_pa: Pressure, absolute. [Pa] Range [1000;1e7].
        t_k: Temperature. [K] Range [213.15;573.15].
        mole_fraction: Moles of vapour in a mole of moist air. Range [0;0.9414]. Default: not given.
        vapour_pressure_pa: Partial pressure of the vapour. [Pa] Range [0;1e7]. Default: not given.
        humidity_ratio: Mass of vapour by mass of dry air. Range [0;10]. Default: not given.
        specific_humidity: Mass of vapour by mass of moist air. Range [0;0.909]. Default: not given.
        relative_humidity: Relative humidity over water. Range [0;1]. Default: not given.
        dew_point_k: Dew point, over water. [K] Range [173.15;573.15]. Default: not given.
        frost_point_k: Frost point, over ice. [K] Range [173.15;573.15]. Default: not given.
        wet_bulb_k: Wet bulb temperature. [K] Range [173.15;573.15]. Default: not given.
        vapour_density_kg_m3: Vapour in a volume, absolute humidity. [kg/m3] Range [0;100]. Default:
            not given.
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).
        wick: Wick below 0.01 degC: wet or frozen. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).
    """

    _c_name = "freeair_humidity_given"
    __slots__ = ("_memory",)


class HumidityFound(_runtime.Structure):
    """Every measure of the humidity of some air, and what goes with it.

    Fields:
        mole_fraction: Moles of vapour in a mole of moist air.
        vapour_pressure_pa: Partial pressure of the vapour, mole fraction times pressure. [Pa]
        humidity_ratio: Mass of vapour by mass of dry air.
        specific_humidity: Mass of vapour by mass of moist air.
        relative_humidity: Relative humidity over water.
        dew_point_k: Dew point, over water; NaN below 173.15 K. [K]
        frost_point_k: Frost point, over ice below 0.01 degC; NaN below 173.15 K. [K]
        wet_bulb_k: Wet bulb temperature; NaN where the air is supersaturated over the wick's ice.
            [K]
        vapour_density_kg_m3: Mass of vapour in a volume, absolute humidity. [kg/m3]
        rho_kg_m3: Density of the moist air. [kg/m3]
        h_dry_j_kg: Enthalpy by mass of dry air, as in topic moist_air. [J/kg]
        v_dry_m3_kg: Volume by mass of dry air. [m3/kg]
    """

    _c_name = "freeair_humidity_found"
    __slots__ = ("_memory",)


class CondensateFlow(_runtime.Structure):
    """A flow of air with vapour and water in it.

    A step reads dry_kg_s, vapour_kg_s, liquid_kg_s, enthalpy_w, model and over, and fills in all of
    another one.

    Fields:
        p_pa: Pressure, absolute. [Pa] Default: not read.
        t_k: Temperature. [K] Default: not read.
        dry_kg_s: Dry air. [kg/s] Range (0;1e6].
        vapour_kg_s: Vapour in it. [kg/s] Range [0;1e6].
        liquid_kg_s: Water or ice that flows along. [kg/s] Range [0;1e6].
        condensed_kg_s: Vapour that became water in the step; negative: water evaporated. [kg/s]
            Default: not read.
        removed_kg_s: Water that was separated in the step. [kg/s] Default: not read.
        q_m3_s: Volume flow of the gas. [m3/s] Default: not read.
        relative_humidity: Relative humidity over water. Default: not read.
        dew_point_k: Pressure dew or frost point by over; NaN below 173.15 K. [K] Default: not read.
        enthalpy_w: Enthalpy of air, vapour and water that flow along, as in topic moist_air. [W]
            Range [-1e12;1e12]. Default: not known: released_w is NaN.
        released_w: Enthalpy that the flow gave up in the step, separated water included: the duty
            of a cooler; of compressor and cooler the heat less the work. [W] Default: not read.
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).
        over: What forms below 0.01 degC. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).
    """

    _c_name = "freeair_condensate_flow"
    __slots__ = ("_memory",)


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


class IsothermalPipe(_runtime.Structure):
    """A pipe.

    Fields:
        length_m: Length. [m] Range [0;1e6].
        diameter_m: Inner diameter; not used where it is the result. [m] Range [1e-6;10]. Default:
            none.
        roughness_m: Roughness of the inside. [m] Range [0;0.1]. Default: 45e-6, commercial steel.
        loss_coefficient: Sum of the loss coefficients of fittings. Range [0;1e6]. Default: 0.
        t_k: Temperature of the gas. [K] Range [50;2000]. Default: 293.15.
        viscosity_pas: Dynamic viscosity. [Pa s] Range [1e-8;1]. Default: air at t_k, US Standard
            Atmosphere 1976.
        r_j_kg_k: Specific gas constant. [J/(kg K)] Range [10;10000]. Default: 287.05287, dry air.
    """

    _c_name = "freeair_isothermal_pipe"
    __slots__ = ("_memory",)


class BlowdownVessel(_runtime.Structure):
    """A vessel, the orifice on it and what lies beyond the orifice.

    Fields:
        v_m3: Volume of the vessel. [m3] Range [1e-9;1e6].
        area_m2: Effective area, discharge coefficient times area. [m2] Range [1e-15;10].
        p_vessel_pa: Pressure in the vessel at the start, absolute. [Pa] Range [0;1e8].
        p_line_pa: Constant pressure beyond the orifice, absolute. [Pa] Range [1;1e8].
        t_k: Temperature before the orifice at the start: of the vessel, or of the line that fills
            it. [K] Range [50;2000].
        exponent: Exponent of the change of state in the vessel, 1 to k. Range [1;2].
        k: Heat-capacity ratio. Range (1;2]. Default: 1.4.
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000]. Default: 287.05287.
    """

    _c_name = "freeair_blowdown_vessel"
    __slots__ = ("_memory",)


class AcceptanceTest(_runtime.Structure):
    """A test and a contract.

    What is not given of the contract is as in the test.

    Fields:
        flow_m3_s: Measured volume flow, at the inlet state of the test. [m3/s] Range [1e-6;1e4].
        power_w: Measured power. [W] Range [0;1e9].
        speed_rev_s: Speed in the test. [rev/s] Range [0.1;1000]. Default: not corrected for.
        inlet_pa: Inlet pressure in the test, absolute. [Pa] Range [1e4;1e7].
        inlet_k: Inlet temperature in the test. [K] Range [150;500]. Default: 293.15.
        discharge_pa: Discharge pressure in the test, absolute. [Pa] Range [1e4;1e8].
        coolant_k: Coolant temperature in the test. [K] Range [150;500]. Default: inlet_k.
        approach_k: Air behind the cooler less coolant at its inlet. [K] Range [0;200]. Default: 10.
        contract_speed_rev_s: Speed of the contract. [rev/s] Range [0.1;1000]. Default: speed_rev_s.
        contract_inlet_pa: Inlet pressure of the contract. [Pa] Range [1e4;1e7]. Default: inlet_pa.
        contract_inlet_k: Inlet temperature of the contract. [K] Range [150;500]. Default: inlet_k.
        contract_discharge_pa: Discharge pressure of the contract. [Pa] Range [1e4;1e8]. Default:
            discharge_pa.
        contract_coolant_k: Coolant temperature of the contract. [K] Range [150;500]. Default:
            coolant_k.
        clearance: Clearance of the first stage, a fraction of its swept volume; 0 for machines that
            have none. Range [0;0.5]. Default: 0.
        exponent: Exponent of compression and re-expansion. Range [1;2]. Default: 1.4.
    """

    _c_name = "freeair_acceptance_test"
    __slots__ = ("_memory",)


class DeliveryStage(_runtime.Structure):
    """A reciprocating stage at work.

    Fields:
        swept_m3: Swept volume of a revolution, all cylinders and ends. [m3] Range [1e-12;1000].
        speed_rev_s: Crankshaft speed. [rev/s] Range [0;1000].
        clearance: Clearance as a fraction of the swept volume. Range [0;2].
        p1_pa: Pressure at the inlet, absolute. [Pa] Range [1;1e8].
        t1_k: Temperature at the inlet. [K] Range [1;5000].
        p2_pa: Pressure at the outlet, absolute. [Pa] Range [1;1e8].
        p_free_pa: Pressure of the free air, absolute. [Pa] Range [1;1e8].
        t_free_k: Temperature of the free air. [K] Range [1;5000].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        n_expansion: Exponent of re-expansion. Range [0.5;10].
        n_compression: Exponent of compression. Range [0.5;10]. Default: n_expansion.
        t_cylinder_k: Temperature of the fresh charge in the cylinder. [K] Range [1;5000]. Default:
            t1_k.
        suction_drop_pa: Pressure lost from inlet to cylinder. [Pa] Range [0;1e8]. Default: 0.
        discharge_drop_pa: Pressure lost from cylinder to outlet. [Pa] Range [0;1e8]. Default: 0.
        leakage: Fraction of the induced air that leaks back. Range [0;1]. Default: 0.
    """

    _c_name = "freeair_delivery_stage"
    __slots__ = ("_memory",)


class DeliveryResult(_runtime.Structure):
    """What a stage delivers.

    Fields:
        fad_m3_s: Free air delivery. [m3/s]
        m_kg_s: Mass flow delivered. [kg/s]
        inlet_m3_s: Delivery as a flow at the inlet state. [m3/s]
        efficiency_cylinder: Volumetric efficiency at the state in the cylinder: re-expansion alone.
        efficiency_inlet: Volumetric efficiency at the inlet state: heating, valves and leakage
            included.
        efficiency_free: Volumetric efficiency at the state of free air.
        mep_pa: Indicated mean effective pressure, valve losses included. [Pa]
        indicated_w: Indicated power. [W]
    """

    _c_name = "freeair_delivery_result"
    __slots__ = ("_memory",)


class IntercoolerStages(_runtime.Structure):
    """Two stages with a cooler between them.

    Fields:
        displacement1_m3_s: Displacement of the first stage. [m3/s] Range [1e-9;1e3].
        clearance1: Its clearance, a fraction of its swept volume. Range [0;1]. Default: 0.
        displacement2_m3_s: Displacement of the second stage. [m3/s] Range [1e-9;1e3].
        clearance2: Its clearance. Range [0;1]. Default: 0.
        exponent: Exponent of re-expansion. Range [1;2]. Default: 1.3.
        p1_pa: Suction pressure of the first stage, absolute. [Pa] Range [1000;1e7].
        t1_k: Temperature of the air in the first cylinder. [K] Range [50;2000]. Default: 293.15.
        p2_pa: Discharge pressure of the second stage, absolute. [Pa] Range [1000;1e8].
        t2_k: Temperature of the air in the second cylinder. [K] Range [50;2000]. Default: t1_k.
        drop_pa: Pressure lost in the cooler. [Pa] Range [0;1e7]. Default: 0.
    """

    _c_name = "freeair_intercooler_stages"
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
        crankcase_k: Temperature of gas in the crankcase, at ambient pressure. [K] Range (0;1000].
            Default: 330.
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
        heat_capacity_rise: Share of the rise of cp of dry air that the gas follows. Range [0;1].
            Default: 0.
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
        nodes: Operating points along the way; at least 19 where it hardly reaches the end. Range
            [3;32].
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
        apparent_m3_s: What V dp / (p_a t) makes of the readings, V all of the receiver; reads too
            high. [m3/s]
        shaft_j: Work at the pump shaft. [J]
        reached: 1 when the end was reached.
        evaluations: Evaluations of the crank-angle rates.
    """

    _c_name = "freeair_prediction_result"
    __slots__ = ("_memory",)


class PumpupTest(_runtime.Structure):
    """A timed pump-up test: receiver, site, readings and what is known of temperatures.

    Every pressure is absolute: what the gauge read plus p_ambient_pa. Every uncertainty is a
    standard uncertainty.

    Fields:
        v_receiver_m3: Volume of the receiver. [m3] Range (0;1e4].
        v_piping_m3: Volume of piping open to it. [m3] Range [0;1e4]. Default: 0.
        v_water_m3: Volume that water takes of it. [m3] Range [0;1e4]. Default: 0.
        v_uncertainty_m3: Uncertainty of the gas volume. [m3] Range [0;1e4]. Default: 3 % of it.
        p_ambient_pa: Barometric pressure. [Pa] Range [2e4;2e5].
        p_ambient_uncertainty_pa: Its uncertainty. [Pa] Range [0;5e3]. Default: 300.
        t_ambient_k: Temperature of the air drawn in and about the receiver. [K] Range [223.15;350].
        t_ambient_uncertainty_k: Its uncertainty. [K] Range [0;30]. Default: 1.
        p_start_pa: Pressure at the start. [Pa] Range [1e3;1e8]. Default: from the table.
        p_end_pa: Pressure at the end, higher. [Pa] Range [1e3;1e8]. Default: from the table.
        duration_s: Time from start to end. [s] Range [0.01;1e7]. Default: from the table.
        duration_uncertainty_s: Its uncertainty. [s] Range [0;1e6]. Default: 1; for a table 0.1 % of
            it.
        reading_uncertainty_pa: Random uncertainty of one pressure reading. [Pa] Range [0;1e7].
            Default: 0.5 % of the gauge pressure at the end; with eight readings or more their
            scatter.
        gauge_scale_uncertainty: Relative uncertainty of the scale of the gauge. Range [0;0.3].
            Default: 0.01.
        t_start_k: Gas temperature at the start. [K] Range [150;600]. Default: from start.
        t_end_k: Gas temperature at the end. [K] Range [150;600]. Default: from the lumped model.
        t_gas_uncertainty_k: Uncertainty of each of these two where given. [K] Range [0;50].
            Default: 1.
        t_wall_start_k: Wall temperature at the start. [K] Range [150;600]. Default: from start.
        p_before_pa: Pressure before drawing down. [Pa] Range [1e3;1e8]. Default: the pressure at
            the end.
        draw_s: How long the drawing down took. [s] Range [0.1;1e6]. Default: 60.
        rest_s: Rest between loads, required for CYCLING. [s] Range [0.1;1e7]. Default: not cycling.
        t_in_k: Temperature of the air that enters. [K] Range [200;700]. Default: 60 K above
            ambient.
        t_in_uncertainty_k: Its uncertainty. [K] Range [0;100]. Default: 23: anything within 40 K.
        ua_gas_w_k: Heat transfer gas to wall at ambient pressure. [W/K] Range [0;1e6]. Default: 29
            W/(m2 K) times the 2/3 power of the receiver's volume.
        ua_wall_w_k: Heat transfer wall to surroundings. [W/K] Range [0;1e6]. Default: 58 W/(m2 K)
            times the 2/3 power of the receiver's volume.
        c_wall_j_k: Heat capacity of the wall. [J/K] Range [1;1e9]. Default: 0.1 J/(K m3 Pa) times
            the receiver's volume and the pressure at the end.
        thermal_uncertainty: Uncertainty of the logarithm of these three. Range [0;1.5]. Default:
            0.4: anything within a factor of two.
        fall: Share of the inflow lost from ambient pressure to end. Range [0;1]. Default: 0.2.
        fall_uncertainty: Its uncertainty. Range [0.001;1]. Default: 0.2.
        humidity: Relative humidity of the air drawn in. Range [0;1]. Default: 0, dry.
        humidity_uncertainty: Its uncertainty. Range [0;0.5]. Default: 0.05 where it is given, else
            0.
        p_reference_pa: Pressure of the reference state. [Pa] Range [1e4;1e7]. Default: of
            reference.
        t_reference_k: Temperature of it. [K] Range [223.15;473.15]. Default: of reference.
        humidity_reference: Relative humidity of it. Range [0;1]. Default: of reference, else 0.
        start: State before the run. One of PUMPUP_START_* (enumeration freeair_pumpup_start).
        reference: Reference state; 0 for none or another. One of REFERENCE_STATE_* (enumeration
            freeair_reference_state).
    """

    _c_name = "freeair_pumpup_test"
    __slots__ = ("_memory",)


class PumpupResult(_runtime.Structure):
    """What a pump-up test says.

    The contributions from_... are standard uncertainties of delivery_m3_s; their root sum of
    squares is delivery_uncertainty_m3_s.

    Fields:
        mass_kg: Mass of dry air gained. [kg]
        mass_flow_kg_s: Net mass flow of dry air, mean of the run. [kg/s]
        mass_flow_uncertainty_kg_s: Its standard uncertainty. [kg/s]
        delivery_m3_s: Free air delivery: this flow as drawn in from the surroundings. [m3/s]
        delivery_uncertainty_m3_s: Its standard uncertainty. [m3/s]
        reference_m3_s: The same flow at the reference state; NaN when no reference is given. [m3/s]
        reference_uncertainty_m3_s: Its standard uncertainty. [m3/s]
        plain_m3_s: What the plain rule V (p2 - p1) / (p_a t) says. [m3/s]
        bias: plain_m3_s / delivery_m3_s - 1.
        bias_uncertainty: Its standard uncertainty.
        p_start_pa: Pressure at the start, smoothed when there are more than two readings. [Pa]
        p_end_pa: Pressure at the end, likewise. [Pa]
        duration_s: Time from start to end. [s]
        t_start_k: Gas temperature at the start, as measured or estimated. [K]
        t_end_k: Gas temperature at the end, likewise. [K]
        t_end_uncertainty_k: Standard uncertainty of that. [K]
        t_wall_start_k: Wall temperature at the start. [K]
        t_wall_end_k: Wall temperature at the end; NaN when no temperature had to be estimated. [K]
        fall: Share of the inflow lost from ambient pressure to the end, as found.
        fall_uncertainty: Its standard uncertainty; that of the test when the readings add nothing.
        scatter_pa: Standard deviation of one pressure reading, as used. [Pa]
        from_volume_m3_s: Contribution of the volume. [m3/s]
        from_readings_m3_s: Of the single pressure readings. [m3/s]
        from_scale_m3_s: Of the scale of the gauge. [m3/s]
        from_time_m3_s: Of the time. [m3/s]
        from_barometer_m3_s: Of the barometric pressure. [m3/s]
        from_ambient_m3_s: Of the ambient temperature. [m3/s]
        from_humidity_m3_s: Of the humidity. [m3/s]
        from_start_m3_s: Of the temperatures at the start. [m3/s]
        from_end_m3_s: Of a measured temperature at the end. [m3/s]
        from_inlet_m3_s: Of the temperature of the air that enters. [m3/s]
        from_exchange_m3_s: Of the heat exchange and the heat capacity of the wall. [m3/s]
        from_course_m3_s: Of the course of the inflow during the run. [m3/s]
    """

    _c_name = "freeair_pumpup_result"
    __slots__ = ("_memory",)


class ExpectationMachine(_runtime.Structure):
    """A machine as its nameplate or its geometry describe it.

    One of rated_m3_s and swept_m3 with speed_rev_s is required; the rating prevails. Uncertainties
    are relative standard uncertainties where no unit is in the name.

    Fields:
        rated_m3_s: Rated free air delivery, as drawn in. [m3/s] Range (0;1000]. Default: from
            geometry.
        rated_pa: Receiver pressure of the rating. [Pa] Range [1e3;1e8]. Default: that of the end.
        rated_ambient_pa: Barometric pressure of the rating. [Pa] Range [2e4;2e5]. Default: 1e5.
        rated_uncertainty: Of the rating. Range [0;0.3]. Default: 0.03, as for a tolerance of 5 %.
        swept_m3: Swept volume of a revolution, first stage. [m3] Range (0;10]. Default: unknown.
        speed_rev_s: Speed. [rev/s] Range (0;200]. Default: unknown.
        induction: Share of what re-expansion leaves room for that is delivered: heating, valves,
            leakage. Range (0;1]. Default: 0.85.
        induction_uncertainty: Of that. Range [0;0.3]. Default: 0.06.
        speed_ratio: Speed found over the speed of the rating. Range (0;3]. Default: 1.
        speed_ratio_uncertainty: Of that. Range [0;0.3]. Default: 0.01.
        clearance: Clearance over swept volume, first stage. Range [0;0.5]. Default: 0.05.
        clearance_uncertainty: Standard uncertainty of it. Range [0;0.2]. Default: 0.015.
        n_expansion: Exponent of re-expansion. Range [1;2]. Default: 1.25.
        stages: Stages. Range [1;2].
        reserved: 0. Range [0;0].
    """

    _c_name = "freeair_expectation_machine"
    __slots__ = ("_memory",)


class ExpectationResult(_runtime.Structure):
    """What to expect of a run from p_start_pa to p_end_pa.

    Fields:
        time_s: Time. [s]
        time_uncertainty_s: Its standard uncertainty. [s]
        time_from_machine_s: What the machine contributes to that: rating or geometry, speed,
            clearance. [s]
        time_from_receiver_s: What the receiver contributes: volume, heat exchange, state before the
            run. [s]
        time_from_readings_s: What gauge, barometer and thermometer contribute. [s]
        delivery_m3_s: Mean free air delivery. [m3/s]
        delivery_uncertainty_m3_s: Its standard uncertainty. [m3/s]
        start_delivery_m3_s: Free air delivery at p_start_pa. [m3/s]
        end_delivery_m3_s: Free air delivery at p_end_pa. [m3/s]
        t_end_k: Gas temperature at the end. [K]
    """

    _c_name = "freeair_expectation_result"
    __slots__ = ("_memory",)


class PumpupCurveShape(_runtime.Structure):
    """Shape of a pump-up curve.

    Uncertainties are standard uncertainties of the fit; that a real curve is not quite exponential
    comes on top where it is extrapolated far.

    Fields:
        slope_pa_s: Median slope of the whole curve. [Pa/s]
        early_slope_pa_s: Slope of the first third of the readings. [Pa/s]
        early_slope_uncertainty_pa_s: Its standard uncertainty. [Pa/s]
        late_slope_pa_s: Slope of the last third. [Pa/s]
        late_slope_uncertainty_pa_s: Its standard uncertainty. [Pa/s]
        slope_ratio: Early slope over late slope; NaN when the late slope is not positive.
        slope_ratio_uncertainty: Its standard uncertainty.
        curvature: Early less late slope over that of the whole: 0 straight, positive when it
            flattens.
        curvature_uncertainty: Its standard uncertainty.
        approach_1_s: Rate b at which it approaches its level; negative when it steepens. [1/s]
        approach_uncertainty_1_s: Its standard uncertainty. [1/s]
        level_off_pa: Pressure at which it would level off; NaN when none is in sight. [Pa]
        level_off_uncertainty_pa: Its standard uncertainty. [Pa]
        level_off_least_pa: At 95 % confidence it levels off no lower; NaN when it may never bend.
            [Pa]
        scatter_pa: Standard deviation of one reading about the fit, as used. [Pa]
        level_in_sight: 1 when the curve bends by more than twice the uncertainty of that.
        reserved: 0.
    """

    _c_name = "freeair_pumpup_curve_shape"
    __slots__ = ("_memory",)


class PressureLogOptions(_runtime.Structure):
    """How a log is read.

    Every field is optional.

    Fields:
        gap_s: A longer step is a gap. [s] Range (0;1e7]. Default: 5 median steps.
        frozen_s: Shorter standstill is not called frozen. [s] Range (0;1e7]. Default: 6 median
            steps, 60 s at least.
        band_pa: Least swing that a pressure switch makes. [Pa] Range (0;1e8]. Default: 3 % of the
            highest pressure, or 30 % of cut_out_pa - cut_in_pa when given; at least 8 times the
            noise or a quarter of the range of the log, whichever is less.
        settle_s: Time after cut-out in which the gas cools. [s] Range [0;1e6]. Default: 300.
        noise_pa: Standard deviation of the noise of one reading. [Pa] Range [0;1e7]. Default: from
            the log.
        cut_in_pa: Pressure, absolute, where it is set to load. [Pa] Range [1e3;1e8]. Default: from
            the log.
        cut_out_pa: The same to unload. [Pa] Range [1e3;1e8]. Default: from the log.
    """

    _c_name = "freeair_pressure_log_options"
    __slots__ = ("_memory",)


class PressureLogPhase(_runtime.Structure):
    """One phase of a log.

    Where two phases meet, the instant is that at which straight lines through the pressures on both
    sides cross. Slopes are NaN in gaps, frozen stretches and phases of one reading.

    Fields:
        start_s: Start, on the clock of the log. [s]
        end_s: End. [s]
        start_uncertainty_s: Standard uncertainty of the start. [s]
        end_uncertainty_s: Standard uncertainty of the end. [s]
        p_start_pa: Pressure at the start. [Pa]
        p_end_pa: Pressure at the end. [Pa]
        slope_pa_s: Median slope of the whole phase. [Pa/s]
        slope_uncertainty_pa_s: Its standard uncertainty. [Pa/s]
        early_slope_pa_s: Slope of the first half. [Pa/s]
        late_slope_pa_s: Slope of the second half; of an idle phase, once the gas has settled.
            [Pa/s]
        late_slope_uncertainty_pa_s: Its standard uncertainty. [Pa/s]
        kind: What the machine does. One of PRESSURE_LOG_KIND_* (enumeration
            freeair_pressure_log_kind).
        start_seen: 1 when it began in the log, 0 at an edge, gap or standstill.
        end_seen: 1 when it ended in the log.
        settled: 1 when late_slope_pa_s is free of the cooling after cut-out.
        first: Index of the first reading.
        count: Readings from the first to the last, those left out included.
        left_out: Readings among these that were left out.
        reserved: 0.
    """

    _c_name = "freeair_pressure_log_phase"
    __slots__ = ("_memory",)


class DutySummary(_runtime.Structure):
    """What a log adds up to.

    A value that the log does not tell is NaN. Uncertainties are standard uncertainties.

    Fields:
        observed_s: Time with readings. [s]
        loaded_s: Time loaded. [s]
        unloaded_s: Time run on unloaded. [s]
        stopped_s: Time stopped. [s]
        idle_s: Time not loaded, running on or stopped. [s]
        unknown_s: Time of which the pressure does not tell. [s]
        missing_s: Time in gaps and standstills. [s]
        duty: Loaded share of the time that is told.
        duty_uncertainty: Of duty.
        cycle_s: Mean time from one cut-in to the next. [s]
        cycle_uncertainty_s: Of cycle_s. [s]
        cut_in_pa: Median pressure at which it cuts in. [Pa]
        cut_in_uncertainty_pa: Of cut_in_pa. [Pa]
        cut_out_pa: Median pressure at which it cuts out. [Pa]
        cut_out_uncertainty_pa: Of cut_out_pa. [Pa]
        load_slope_pa_s: Median slope while loaded. [Pa/s]
        load_slope_uncertainty_pa_s: Of load_slope_pa_s. [Pa/s]
        idle_slope_pa_s: Median slope while idle, once the gas has settled. [Pa/s]
        idle_slope_uncertainty_pa_s: Of idle_slope_pa_s. [Pa/s]
        cooling_pa: Median fall after cut-out that is not lost air but cooling gas. [Pa]
        draw_share: Share of the capacity that leaks or is drawn.
        draw_share_uncertainty: Of draw_share.
        slope_share: The same from the slopes alone, to compare.
        slope_share_uncertainty: Of slope_share.
        n_loads: Loaded phases.
        n_cycles: Complete cycles.
        findings: Bits of freeair_duty_finding.
        left_out: Readings that were left out.
    """

    _c_name = "freeair_duty_summary"
    __slots__ = ("_memory",)


class EvidenceReadings(_runtime.Structure):
    """Readings, or their expected values; each field u_x is the standard uncertainty of field x.

    Fields:
        delivery_m3_s: Free air delivery at the site's conditions from a pump-up test. [m3/s] Range
            (0;1000]. Default: not taken.
        u_delivery_m3_s: Its standard uncertainty. [m3/s] Range [0;1000]. Default: 3 % of it.
        t_empty_to_cutout_s: Time from empty and cool to cut-out. [s] Range (0;1e7]. Default: not
            taken.
        u_t_empty_to_cutout_s: Its standard uncertainty. [s] Range [0;1e7]. Default: 2 % of it.
        t_cutin_to_cutout_s: Time from cut-in to cut-out. [s] Range (0;1e7]. Default: not taken.
        u_t_cutin_to_cutout_s: Its standard uncertainty. [s] Range [0;1e7]. Default: 3 % of it.
        p_level_off_pa: Receiver pressure, absolute, at which it levels off below cut-out. [Pa]
            Range (0;1e8]. Default: not taken.
        u_p_level_off_pa: Its standard uncertainty. [Pa] Range [0;1e8]. Default: none is used.
        p_interstage_pa: Interstage pressure, absolute, at one receiver pressure near cut-out. [Pa]
            Range (0;1e8]. Default: not taken.
        u_p_interstage_pa: Its standard uncertainty. [Pa] Range [0;1e8]. Default: 2 % of it.
        t_lp_discharge_k: LP discharge temperature near cut-out. [K] Range (0;5000]. Default: not
            taken.
        u_t_lp_discharge_k: Its standard uncertainty. [K] Range [0;2000]. Default: 5.
        t_hp_discharge_k: HP discharge temperature near cut-out. [K] Range (0;5000]. Default: not
            taken.
        u_t_hp_discharge_k: Its standard uncertainty. [K] Range [0;2000]. Default: 5.
        t_intercooler_out_k: Intercooler outlet temperature near cut-out. [K] Range (0;5000].
            Default: not taken.
        u_t_intercooler_out_k: Its standard uncertainty. [K] Range [0;2000]. Default: 3.
        motor_speed_rev_s: Motor speed near cut-out. [rev/s] Range (0;1000]. Default: not taken.
        u_motor_speed_rev_s: Its standard uncertainty. [rev/s] Range [0;1000]. Default: 0.2 % of it.
        pump_speed_rev_s: Pump speed near cut-out. [rev/s] Range (0;1000]. Default: not taken.
        u_pump_speed_rev_s: Its standard uncertainty. [rev/s] Range [0;1000]. Default: 0.3 % of it.
        supply_running_v: Voltage at the motor, running near cut-out. [V] Range (0;1e5]. Default:
            not taken.
        u_supply_running_v: Its standard uncertainty. [V] Range [0;1e5]. Default: 0.5 % of it.
        supply_starting_v: Lowest voltage at the motor during a start. [V] Range (0;1e5]. Default:
            not taken.
        u_supply_starting_v: Its standard uncertainty. [V] Range [0;1e5]. Default: 2 % of it.
        motor_current_a: Motor current near cut-out. [A] Range (0;1e5]. Default: not taken.
        u_motor_current_a: Its standard uncertainty. [A] Range [0;1e5]. Default: 2 % of it.
        power_w: Electrical power near cut-out. [W] Range (0;1e8]. Default: not taken.
        u_power_w: Its standard uncertainty. [W] Range [0;1e8]. Default: 3 % of it.
        run_capacitance_f: Capacitance of the run capacitor; expected: as printed. [F] Range (0;1].
            Default: not taken.
        u_run_capacitance_f: Its standard uncertainty. [F] Range [0;1]. Default: 1 % of it.
        start_capacitance_f: Capacitance of the start capacitor; expected: as printed. [F] Range
            (0;1]. Default: not taken.
        u_start_capacitance_f: Its standard uncertainty. [F] Range [0;1]. Default: 2 % of it.
        leak_isolated_m3_s: Leak as free air, stopped with the service valve closed. [m3/s] Range
            [0;1000]. Default: not taken.
        u_leak_isolated_m3_s: Its standard uncertainty. [m3/s] Range [0;1000]. Default: 0.5 % of
            delivery.
        leak_open_m3_s: Leak as free air, system open without use. [m3/s] Range [0;1000]. Default:
            not taken.
        u_leak_open_m3_s: Its standard uncertainty. [m3/s] Range [0;1000]. Default: 1 % of delivery.
        gauge_difference_pa: Machine's gauge less a tested gauge near cut-out. [Pa] Range
            [-1e7;1e7]. Default: not taken.
        u_gauge_difference_pa: Its standard uncertainty. [Pa] Range [0;1e7]. Default: 0.5 % of cut-
            out.
        p_cutout_pa: Pressure, absolute, at which it cuts out by a tested gauge. [Pa] Range (0;1e8].
            Default: not taken.
        u_p_cutout_pa: Its standard uncertainty. [Pa] Range [0;1e8]. Default: 1 % of it.
        p_relief_opening_pa: Pressure, absolute, at which the interstage relief begins to lift;
            expected: its setting. [Pa] Range (0;1e8]. Default: not taken.
        u_p_relief_opening_pa: Its standard uncertainty. [Pa] Range [0;1e8]. Default: 3 % of it.
        filter_drop_pa: Pressure drop of the intake filter. [Pa] Range [0;1e6]. Default: not taken.
        u_filter_drop_pa: Its standard uncertainty. [Pa] Range [0;1e6]. Default: 0.2 % of ambient.
        belt_deflection_m: Belt deflection at mid span under the stated force. [m] Range (0;1].
            Default: not taken.
        u_belt_deflection_m: Its standard uncertainty. [m] Range [0;1]. Default: 15 % of it.
        water_m3: Water drained from the receiver. [m3] Range [0;1e4]. Default: not taken.
        u_water_m3: Its standard uncertainty. [m3] Range [0;1e4]. Default: 1 % of receiver.
        duty: Share of time loaded in ordinary use. Range [0;1]. Default: not taken.
        u_duty: Its standard uncertainty. Range [0;1]. Default: 0.03.
        t_ambient_k: Ambient temperature at the intake; expected: that for which the values hold.
            [K] Range [200;350]. Default: not taken.
        u_t_ambient_k: Its standard uncertainty. [K] Range [0;350]. Default: 1.
        p_ambient_pa: Barometric pressure; expected: that for which the values hold. [Pa] Range
            [2e4;1.3e5]. Default: not taken.
        u_p_ambient_pa: Its standard uncertainty. [Pa] Range [0;1.3e5]. Default: 0.2 % of it.
    """

    _c_name = "freeair_evidence_readings"
    __slots__ = ("_memory",)


class DiagnosisSubject(_runtime.Structure):
    """The machine and how it was tested, as far as the causes depend on it.

    Fields:
        receiver_m3: Volume of the receiver; for the reading of water. [m3] Range (0;1e4]. Default:
            unknown.
        stages: Number of stages; 0 for unknown. Range [0;2].
        cylinders: Number of cylinders; 0 for unknown. Range [0;16].
        head: Arrangement of the heads. One of DIAGNOSIS_HEAD_* (enumeration
            freeair_diagnosis_head).
        drive: Drive. One of DIAGNOSIS_DRIVE_* (enumeration freeair_diagnosis_drive).
        supply: Supply. One of DIAGNOSIS_SUPPLY_* (enumeration freeair_diagnosis_supply).
        service_valve_closed: Was it closed in the pump-up test? One of EVIDENCE_ANSWER_*
            (enumeration freeair_evidence_answer).
    """

    _c_name = "freeair_diagnosis_subject"
    __slots__ = ("_memory",)


class DiagnosisFinding(_runtime.Structure):
    """A reading against what a sound machine shows, and against all other evidence.

    Fields:
        found: The reading. [the caller's unit]
        expected: Its expected value of a sound machine. [the caller's unit]
        deviation: Deviation as in freeair_likelihood_deviation. [the caller's unit]
        spread: Standard uncertainty of the deviation. [the caller's unit]
        reference: What a share is of; NaN on other scales. [the caller's unit]
        residual: Deviation over spread: standard deviations from a sound machine.
        predicted: What all other evidence says it should be; NaN from a comparison alone. [the
            caller's unit]
        disagreement: Standard deviations between it and all other evidence; NaN likewise.
        reading: Which. One of EVIDENCE_READING_* (enumeration freeair_evidence_reading).
        use: What became of it. One of DIAGNOSIS_USE_* (enumeration freeair_diagnosis_use).
    """

    _c_name = "freeair_diagnosis_finding"
    __slots__ = ("_memory",)


class DiagnosisCause(_runtime.Structure):
    """A cause and how probable it is.

    Fields:
        probability: That this cause is present, alone or with another.
        probability_alone: That it is the only one.
        prior: That it is present, before any evidence.
        support: Natural log-odds that speak for it: sum of the positive reasons.
        contradiction: Natural log-odds that speak against it: sum of the negative reasons, <= 0.
        severity: If present: share of the delivery lost or taken, posterior mean.
        u_severity: Its posterior standard deviation.
        size: If present: size of the fault as in freeair_likelihood_size, posterior mean.
        u_size: Its posterior standard deviation.
        cause: Which. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).
        group: Causes of one group number cannot be told apart by this evidence; 0 for none.
        check: Check that best splits the group for its effort. One of EVIDENCE_CHECK_* (enumeration
            freeair_evidence_check).
        cautions: Bits of freeair_caution for its repair.
    """

    _c_name = "freeair_diagnosis_cause"
    __slots__ = ("_memory",)


class DiagnosisCheck(_runtime.Structure):
    """A check worth making next.

    Fields:
        information: Expected information about the cause, in bits.
        effort_s: Working time. [s]
        information_rate_1_s: Bits for each second of work. [1/s]
        check: Which. One of EVIDENCE_CHECK_* (enumeration freeair_evidence_check).
        qualification: 1 where an electrically qualified person must do it.
        cautions: Bits of freeair_caution.
        reserved: 0.
    """

    _c_name = "freeair_diagnosis_check"
    __slots__ = ("_memory",)


class DiagnosisProof(_runtime.Structure):
    """Whether a repair is proved.

    Fields:
        probability: That the repaired cause is still there.
        probability_even: The same from even odds, as if the repair had failed as often as not: what
            the evidence alone says.
        delivery: Share of the sound delivery that the test shows; NaN without a test.
        u_delivery: Its standard uncertainty.
        probability_delivery: That it makes at least the least share.
        verdict: Is the repair proved. One of VERDICT_* (enumeration freeair_verdict).
        gone: Is the repaired cause gone. One of VERDICT_* (enumeration freeair_verdict).
        delivers: Does it make what it should. One of VERDICT_* (enumeration freeair_verdict).
        reading: The reading that says so, or 0. One of EVIDENCE_READING_* (enumeration
            freeair_evidence_reading).
    """

    _c_name = "freeair_diagnosis_proof"
    __slots__ = ("_memory",)


class DiagnosisOptions(_runtime.Structure):
    """Options of a diagnosis.

    Fields:
        pair_share: Of faulty machines, the share with two faults. Range [0;0.5]. Default: 0.08.
        confidence: Probability required of a firm verdict. Range (0.5;1). Default: 0.9.
        contradiction: Standard deviations from what all other evidence says, at which a reading
            contradicts it. Range [1;20]. Default: 3.
    """

    _c_name = "freeair_diagnosis_options"
    __slots__ = ("_memory",)


class DiagnosisReason(_runtime.Structure):
    """Why: what one reading or observation says about one cause.

    Fields:
        log_odds: Natural log-odds of the cause with this item less those without it.
        found: The reading; NaN for an observation. [the caller's unit]
        expected: Its expected value of a sound machine. [the caller's unit]
        predicted: Its value with the cause at its posterior mean size; NaN where there is none.
            [the caller's unit]
        residual: Reading less predicted over the spread of its finding; NaN where one is missing.
        cause: The cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).
        reading: The reading, or 0. One of EVIDENCE_READING_* (enumeration
            freeair_evidence_reading).
        observation: The observation, or 0. One of EVIDENCE_OBSERVATION_* (enumeration
            freeair_evidence_observation).
        answer: Its answer. One of EVIDENCE_ANSWER_* (enumeration freeair_evidence_answer).
    """

    _c_name = "freeair_diagnosis_reason"
    __slots__ = ("_memory",)


class DiagnosisSummary(_runtime.Structure):
    """The whole in a few numbers.

    Fields:
        probability_healthy: That nothing is wrong.
        probability_pair: That two faults are present.
        doubt: Entropy of the causes in bits: 0 when certain.
        verdict: Is it sound: meets, fails, cannot tell. One of VERDICT_* (enumeration
            freeair_verdict).
        cause: Most probable cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).
        readings_used: Readings that were used.
        readings_unused: Readings that could not be used.
        observations_used: Observations with an answer.
        contradictions: Readings that contradict the rest.
    """

    _c_name = "freeair_diagnosis_summary"
    __slots__ = ("_memory",)


class InferenceVisit(_runtime.Structure):
    """How the readings were taken, and what air is worth.

    Fields:
        receiver_pa: Receiver pressure, absolute, at which interstage pressure, temperatures, speeds
            and power were read. [Pa] Range (0;1e8]. Default: cut_out_pa of the machine.
        from_pa: Gauge reading as the run from empty starts. [Pa] Range (0;1e8]. Default: log's at
            0, or ambient.
        draw_down_s: Duration of drawing down to cut-in before that run. [s] Range [1;1e5]. Default:
            60.
        u_log_s: Standard uncertainty of a time of the log. [s] Range [0;1e5]. Default: 0.5.
        u_log_pa: The same of a pressure. [Pa] Range [0;1e7]. Default: 0.3 % of gauge cut-out.
        motor_efficiency: Shaft power over electrical power. Range (0;1]. Default: 0.83.
        air_m3_s: Free air that is used, as a mean over time. [m3/s] Range [0;1000]. Default:
            unknown.
        energy_price: Price of a joule of electrical energy in the caller's money. [the caller's
            unit] Range [0;1]. Default: unknown.
    """

    _c_name = "freeair_inference_visit"
    __slots__ = ("_memory",)


class InferenceScatter(_runtime.Structure):
    """What is not known of a sound unit: relative standard uncertainties of description and model.

    Fields:
        rating: Rated delivery, when the machine has one. Range [0;1]. Default: 0.04.
        clearance: Clearances of each stage. Range [0;1]. Default: 0.17.
        valves: Valve areas of each stage. Range [0;1]. Default: 0.14.
        valve_lift: Pressure differences that open the valves. Range [0;1]. Default: 0.43.
        wall_heat: Heat transfer in the cylinders. Range [0;1]. Default: 0.38.
        cooler_ua: Heat transfer of the intercooler. Range [0;1]. Default: 0.28.
        suction_heating: Heating of the intake air. Range [0;1]. Default: 0.38.
        filter: Area of the clean filter. Range [0;1]. Default: 0.17.
        rings: Leakage past sound rings. Range [0;1]. Default: 0.43.
        phase_rad: Angle between the stages, for all that sets the flow there. [rad] Range [0;1].
            Default: 0.22.
        delivery: The model's delivery as a whole. Range [0;1]. Default: 0.022.
        delivery_slope: Its fall from ambient to cut-out pressure. Range [0;1]. Default: 0.045.
        interstage: The model's gauge interstage pressure. Range [0;1]. Default: 0.055.
        temperature_k: Discharge temperatures; half of it is shared by all. [K] Range [0;100].
            Default: 8.5.
        receiver: Volume of the receiver. Range [0;1]. Default: 0.014.
        receiver_ua: Heat transfer of the receiver. Range [0;1]. Default: 0.38.
        receiver_wall: Heat capacity of its wall. Range [0;1]. Default: 0.22.
        draw_down: Duration of the drawing down. Range [0;1]. Default: 0.43.
        gauge: Error of the gauge over gauge cut-out. Range [0;1]. Default: 0.0055.
        motor: Motor speed under load. Range [0;1]. Default: 0.01.
        drive: Pump speed over motor speed. Range [0;1]. Default: 0.009.
        motor_efficiency: Electrical over shaft power. Range [0;1]. Default: 0.07.
    """

    _c_name = "freeair_inference_scatter"
    __slots__ = ("_memory",)


class InferenceEffect(_runtime.Structure):
    """What a cause does, if it is present: the row of the same number as that of the causes.

    Fields:
        severity: Severity as in freeair_fault_apply, posterior median; NaN where there is none.
        severity_low: At least that much with probability 0.95.
        severity_high: At most that much with probability 0.95.
        lost: Share of the delivery lost or taken, posterior median.
        lost_low: At least that much with probability 0.95.
        lost_high: At most that much with probability 0.95.
        lost_m3_s: Free air lost at the median. [m3/s]
        energy_j_m3: Electrical energy for a cubic metre of free air, with the cause at its median.
            [J/m3]
        sound_j_m3: The same of the sound machine. [J/m3]
        waste_w: Mean electrical power wasted at air_m3_s, at most that of running on; NaN if
            unknown. [W]
        cost: Its price for each second, in the caller's money; NaN when unknown. [the caller's
            unit]
        cause: Which. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).
        fault: The fault that the severity is of. One of FAULT_* (enumeration freeair_fault).
    """

    _c_name = "freeair_inference_effect"
    __slots__ = ("_memory",)


_runtime.STRUCTURES["freeair_dry_air_properties"] = DryAirProperties
_runtime.STRUCTURES["freeair_enhancement_coefficients"] = EnhancementCoefficients
_runtime.STRUCTURES["freeair_moist_air_properties"] = MoistAirProperties
_runtime.STRUCTURES["freeair_humidity_given"] = HumidityGiven
_runtime.STRUCTURES["freeair_humidity_found"] = HumidityFound
_runtime.STRUCTURES["freeair_condensate_flow"] = CondensateFlow
_runtime.STRUCTURES["freeair_capacitor_motor_windings"] = CapacitorMotorWindings
_runtime.STRUCTURES["freeair_capacitor_motor_performance"] = CapacitorMotorPerformance
_runtime.STRUCTURES["freeair_isothermal_pipe"] = IsothermalPipe
_runtime.STRUCTURES["freeair_blowdown_vessel"] = BlowdownVessel
_runtime.STRUCTURES["freeair_acceptance_test"] = AcceptanceTest
_runtime.STRUCTURES["freeair_delivery_stage"] = DeliveryStage
_runtime.STRUCTURES["freeair_delivery_result"] = DeliveryResult
_runtime.STRUCTURES["freeair_intercooler_stages"] = IntercoolerStages
_runtime.STRUCTURES["freeair_machine"] = Machine
_runtime.STRUCTURES["freeair_machine_site"] = MachineSite
_runtime.STRUCTURES["freeair_cycle_result"] = CycleResult
_runtime.STRUCTURES["freeair_prediction_run"] = PredictionRun
_runtime.STRUCTURES["freeair_prediction_result"] = PredictionResult
_runtime.STRUCTURES["freeair_pumpup_test"] = PumpupTest
_runtime.STRUCTURES["freeair_pumpup_result"] = PumpupResult
_runtime.STRUCTURES["freeair_expectation_machine"] = ExpectationMachine
_runtime.STRUCTURES["freeair_expectation_result"] = ExpectationResult
_runtime.STRUCTURES["freeair_pumpup_curve_shape"] = PumpupCurveShape
_runtime.STRUCTURES["freeair_pressure_log_options"] = PressureLogOptions
_runtime.STRUCTURES["freeair_pressure_log_phase"] = PressureLogPhase
_runtime.STRUCTURES["freeair_duty_summary"] = DutySummary
_runtime.STRUCTURES["freeair_evidence_readings"] = EvidenceReadings
_runtime.STRUCTURES["freeair_diagnosis_subject"] = DiagnosisSubject
_runtime.STRUCTURES["freeair_diagnosis_finding"] = DiagnosisFinding
_runtime.STRUCTURES["freeair_diagnosis_cause"] = DiagnosisCause
_runtime.STRUCTURES["freeair_diagnosis_check"] = DiagnosisCheck
_runtime.STRUCTURES["freeair_diagnosis_proof"] = DiagnosisProof
_runtime.STRUCTURES["freeair_diagnosis_options"] = DiagnosisOptions
_runtime.STRUCTURES["freeair_diagnosis_reason"] = DiagnosisReason
_runtime.STRUCTURES["freeair_diagnosis_summary"] = DiagnosisSummary
_runtime.STRUCTURES["freeair_inference_visit"] = InferenceVisit
_runtime.STRUCTURES["freeair_inference_scatter"] = InferenceScatter
_runtime.STRUCTURES["freeair_inference_effect"] = InferenceEffect


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


CoverageMeanResult = _collections.namedtuple(
    "CoverageMeanResult", ['mean', 'deviation', 'uncertainty', 'nu'])


def coverage_mean(*, reading):
    """Mean of repeated readings with its standard uncertainty (type A).

    Model: s^2 = sum (x - mean)^2 / (n - 1), u = s / sqrt(n), nu = n - 1; readings independent of
    one another.

    Arguments:
        reading: Readings. [the caller's unit] Range [-1e150;1e150].

    Returns:
        mean: Their mean. [the caller's unit]
        deviation: Standard deviation of one reading. [the caller's unit]
        uncertainty: Standard uncertainty of the mean. [the caller's unit]
        nu: Degrees of freedom.

    Raises:
        DomainError: a reading is outside its range
        DataError: fewer than two readings

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 4.2
    """
    return _runtime.call("freeair_coverage_mean")((reading,), CoverageMeanResult)


def coverage_correlation(*, a, b):
    """Correlation of two quantities from readings taken in pairs.

    Model: r = sum (a - mean a)(b - mean b) / sqrt(sum (a - mean a)^2 sum (b - mean b)^2); that of
    the means is the same as that of the readings.

    Arguments:
        a: Readings of one quantity. [the caller's unit] Range [-1e150;1e150].
        b: Readings of the other, taken together with those. [the caller's unit] Range
            [-1e150;1e150].

    Returns:
        r: Coefficient of correlation, from -1 to 1.

    Raises:
        DomainError: a reading is outside its range
        DataError: fewer than two pairs
        NoSolutionError: one of the two did not vary

    Source: JCGM 100:2008, GUM, 5.2.3 and C.3.6
    """
    return _runtime.call("freeair_coverage_correlation")((a, b,))


CoveragePooledResult = _collections.namedtuple(
    "CoveragePooledResult", ['pooled', 'nu'])


def coverage_pooled(*, deviation, freedom):
    """Standard deviation pooled from several series of readings.

    Model: s^2 = sum nu_i s_i^2 / sum nu_i, nu = sum nu_i: what earlier tests of the same kind say
    about the scatter of the one at hand.

    Arguments:
        deviation: Standard deviation of each series. [the caller's unit] Range [0;1e150].
        freedom: Degrees of freedom of each series. Range (0;1e15].

    Returns:
        pooled: Pooled standard deviation of one reading. [the caller's unit]
        nu: Its degrees of freedom.

    Raises:
        DomainError: an element is outside its range
        DataError: no series

    Source: JCGM 100:2008, GUM, 4.2.4 and H.3.6
    """
    return _runtime.call("freeair_coverage_pooled")((deviation, freedom,), CoveragePooledResult)


def coverage_uncertainty_from_limits(*, half_width, distribution):
    """Standard uncertainty from limits (type B).

    Model: half width over sqrt(3) when rectangular, sqrt(6) when triangular, sqrt(2) when arcsine.

    Arguments:
        half_width: Half the distance of the limits; of a display, half its last digit. [the
            caller's unit] Range [0;1e150].
        distribution: Rectangular, triangular or arcsine. One of COVERAGE_DISTRIBUTION_*
            (enumeration freeair_coverage_distribution).

    Returns:
        uncertainty: Standard uncertainty. [the caller's unit]

    Raises:
        DomainError: half_width is outside its range, or the distribution has no limits

    Source: JCGM 100:2008, GUM, 4.3.7 and 4.3.9; JCGM 101:2008, 6.4.6 for the arcsine
    """
    return _runtime.call("freeair_coverage_uncertainty_from_limits")((half_width, distribution,))


def coverage_degrees_of_freedom_from_doubt(*, doubt):
    """Degrees of freedom from how well an uncertainty is known.

    Model: nu = 1 / (2 doubt^2): an uncertainty that may be wrong by a quarter has 8.

    Arguments:
        doubt: Relative uncertainty of the standard uncertainty. Range [1e-9;0.7071].

    Returns:
        nu: Degrees of freedom.

    Raises:
        DomainError: doubt is outside its range

    Source: JCGM 100:2008, GUM, G.4.2, equation G.3
    """
    return _runtime.call("freeair_coverage_degrees_of_freedom_from_doubt")((doubt,))


def coverage_degrees_of_freedom(*, combined=None, contribution, freedom):
    """Effective degrees of freedom of a combined uncertainty (Welch and Satterthwaite).

    Model: nu_eff = u^4 / sum (contribution^4 / nu), inputs independent; never more than the sum of
    the nu. The GUM truncates the result to a whole number before looking up a factor, which is the
    more cautious.

    Arguments:
        combined: Combined standard uncertainty. [the caller's unit] Range [1e-75;1e75]. Default:
            root of the sum of the squares of the contributions.
        contribution: Sensitivity times standard uncertainty of each input. [the caller's unit]
            Range [-1e75;1e75].
        freedom: Degrees of freedom of each input; inf when its uncertainty is sure. Range (0;inf].

    Returns:
        nu_effective: Effective degrees of freedom; inf when nothing limits them.

    Raises:
        DomainError: an element or combined is outside its range
        DataError: no input, or no contribution but zeros

    Source: JCGM 100:2008, GUM, G.4.1, equation G.2b
    """
    return _runtime.call("freeair_coverage_degrees_of_freedom")((combined, contribution, freedom,))


def coverage_factor(*, probability, nu):
    """Coverage factor for a probability (Student's t, two-sided).

    Model: P(|t| <= factor) = probability; the normal distribution with nu = inf. A one-sided
    confidence c takes probability = 2 c - 1. Newton's method on the incomplete beta function, at
    most 200 steps, to rounding.

    Arguments:
        probability: Probability within the interval. Range (0;1).
        nu: Degrees of freedom; inf for a normal distribution. Range [1;inf].

    Returns:
        factor: Coverage factor.

    Raises:
        DomainError: an input is outside its range

    Source: JCGM 100:2008, GUM, G.3 and Table G.2
    """
    return _runtime.call("freeair_coverage_factor")((probability, nu,))


def coverage_probability(*, factor, nu):
    """Probability that a coverage factor gives (Student's t, two-sided).

    Model: P(|t| <= factor) = 1 - I_x(nu/2, 1/2), x = nu / (nu + factor^2), I the regularised
    incomplete beta function; the normal distribution with nu = inf.

    Arguments:
        factor: Coverage factor. Range [0;1e16].
        nu: Degrees of freedom; inf for a normal distribution. Range [1;inf].

    Returns:
        probability: Probability within the interval.

    Raises:
        DomainError: an input is outside its range

    Source: JCGM 100:2008, GUM, G.3; Abramowitz and Stegun, Handbook of Mathematical Functions,
    26.7.1
    """
    return _runtime.call("freeair_coverage_probability")((factor, nu,))


CoverageIntervalResult = _collections.namedtuple(
    "CoverageIntervalResult", ['expanded', 'low', 'high'])


def coverage_interval(*, y, uncertainty, probability, nu):
    """Coverage interval of an estimate.

    Model: expanded = factor(probability, nu) u, low and high = y -+ expanded.

    Arguments:
        y: Estimate. [the caller's unit] Range [-1e150;1e150].
        uncertainty: Its standard uncertainty. [the caller's unit] Range [0;1e130].
        probability: Probability within the interval. Range (0;1).
        nu: Degrees of freedom; inf for a normal distribution. Range [1;inf].

    Returns:
        expanded: Expanded uncertainty, half the width of the interval. [the caller's unit]
        low: Lower end. [the caller's unit]
        high: Upper end. [the caller's unit]

    Raises:
        DomainError: an input is outside its range

    Source: JCGM 100:2008, GUM, G.1.3 and G.6.4
    """
    return _runtime.call("freeair_coverage_interval")((y, uncertainty, probability, nu,), CoverageIntervalResult)


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


def dry_air_state(*, p_pa, t_k):
    """All properties of dry air at a pressure and a temperature.

    Model: equation of state of Lemmon et al. (2000) with R = 8.31451 J/(mol K) and M = 28.96546
    g/mol; density as in freeair_dry_air_density(); viscosity and conductivity of Lemmon and
    Jacobsen (2004).

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        properties: All properties.

    Raises:
        StructureVersionError: properties has an unknown size
        DomainError: an input is outside its range
        NoSolutionError: the state lies between the dew and the bubble line, below 132.6312 K

    Source: Lemmon, Jacobsen, Penoncello, Friend, Thermodynamic Properties of Air..., J. Phys. Chem.
    Ref. Data 29 (2000) 331; Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21; molar mass and
    reference state of IAPWS G8-10
    """
    return _runtime.call("freeair_dry_air_state")((p_pa, t_k,))


def dry_air_density(*, p_pa, t_k):
    """Density of dry air.

    Model: the root of p(rho, T) of Lemmon et al. (2000) in the stable phase, by Newton's method on
    ln p against ln rho, kept in a bracket, to rounding. It ends in every state: within 13 steps in
    a million of random ones, 3 on average.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        rho_kg_m3: Density. [kg/m3]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the state lies between the dew and the bubble line, below 132.6312 K

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_dry_air_density")((p_pa, t_k,))


def dry_air_state_from_density(*, rho_kg_m3, t_k):
    """All properties of dry air at a density and a temperature.

    Model: as freeair_dry_air_state(), without a search.

    Arguments:
        rho_kg_m3: Density. [kg/m3] Range (0;1530].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        properties: All properties.

    Raises:
        StructureVersionError: properties has an unknown size
        DomainError: an input is outside its range
        NoSolutionError: the state lies between the dew and the bubble line, below 132.6312 K

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_dry_air_state_from_density")((rho_kg_m3, t_k,))


def dry_air_temperature_from_enthalpy(*, p_pa, h_j_kg):
    """Temperature at which gaseous dry air has an enthalpy: throttling.

    Model: h(p, T) of freeair_dry_air_state() solved for T by Newton's method with cp as slope, kept
    in a bracket, to 1e-12. Below 3.785 MPa no colder than the dew point.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        h_j_kg: Enthalpy; 0 at 273.15 K and 101325 Pa. [J/kg] Range [-1e6;5e6].

    Returns:
        t_k: Temperature. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no gas between 60 K and 2000 K has this enthalpy at this pressure

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_dry_air_temperature_from_enthalpy")((p_pa, h_j_kg,))


def dry_air_temperature_from_entropy(*, p_pa, s_j_kg_k):
    """Temperature at which gaseous dry air has an entropy: isentropic compression.

    Model: s(p, T) of freeair_dry_air_state() solved for ln T by Newton's method with cp as slope,
    kept in a bracket, to 1e-12. Below 3.785 MPa no colder than the dew point.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        s_j_kg_k: Entropy; 0 at 273.15 K and 101325 Pa. [J/(kg K)] Range [-1e4;1e4].

    Returns:
        t_k: Temperature. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no gas between 60 K and 2000 K has this entropy at this pressure

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_dry_air_temperature_from_entropy")((p_pa, s_j_kg_k,))


DryAirSaturationResult = _collections.namedtuple(
    "DryAirSaturationResult", ['dew_pa', 'bubble_pa'])


def dry_air_saturation(*, t_k):
    """Pressures at which dry air begins to condense and to boil.

    Model: the two ancillary equations of Lemmon et al. (2000) for the dew and bubble line, fitted
    within 0.1 %.

    Arguments:
        t_k: Temperature. [K] Range [59.75;132.6312].

    Returns:
        dew_pa: Pressure above which a gas begins to condense. [Pa]
        bubble_pa: Pressure below which a liquid begins to boil. [Pa]

    Raises:
        DomainError: t_k is outside its range

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, equation
    1, Table A1
    """
    return _runtime.call("freeair_dry_air_saturation")((t_k,), DryAirSaturationResult)


def dry_air_ideal_density(*, p_pa, t_k):
    """Density of dry air as an ideal gas.

    Model: rho = p/(R T), R = 8.31451/0.02896546 J/(kg K).

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range (0;2e9].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        rho_kg_m3: Density. [kg/m3]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_dry_air_ideal_density")((p_pa, t_k,))


def dry_air_ideal_heat_capacity(*, t_k):
    """Heat capacity of dry air at constant pressure as an ideal gas.

    Model: the ideal-gas part of Lemmon et al. (2000): a power series in T and three vibration
    terms, 60 K to 2000 K. That at constant volume is less by R.

    Arguments:
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        cp_j_kg_k: Heat capacity at constant pressure. [J/(kg K)]

    Raises:
        DomainError: t_k is outside its range

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas
    heat capacity
    """
    return _runtime.call("freeair_dry_air_ideal_heat_capacity")((t_k,))


def dry_air_ideal_heat_capacity_ratio(*, t_k):
    """Ratio of the heat capacities of dry air as an ideal gas, the isentropic exponent of the textbooks.

    Model: k = cp/(cp - R).

    Arguments:
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        heat_capacity_ratio: cp/cv.

    Raises:
        DomainError: t_k is outside its range

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas
    heat capacity
    """
    return _runtime.call("freeair_dry_air_ideal_heat_capacity_ratio")((t_k,))


def dry_air_ideal_speed_of_sound(*, t_k):
    """Speed of sound in dry air as an ideal gas.

    Model: w = sqrt(k R T).

    Arguments:
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        speed_of_sound_m_s: Speed of sound. [m/s]

    Raises:
        DomainError: t_k is outside its range

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas
    heat capacity
    """
    return _runtime.call("freeair_dry_air_ideal_speed_of_sound")((t_k,))


def dry_air_ideal_enthalpy(*, t_k):
    """Enthalpy of dry air as an ideal gas.

    Model: integral of cp in closed form, counted as in topic dry_air: real air has none at 273.15 K
    and 101325 Pa, ideal gas there 277.8 J/kg.

    Arguments:
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        h_j_kg: Enthalpy. [J/kg]

    Raises:
        DomainError: t_k is outside its range

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331; reference
    state of IAPWS G8-10
    """
    return _runtime.call("freeair_dry_air_ideal_enthalpy")((t_k,))


def dry_air_ideal_entropy(*, p_pa, t_k):
    """Entropy of dry air as an ideal gas.

    Model: integral of cp/T in closed form, less R ln p, counted as in topic dry_air.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        s_j_kg_k: Entropy. [J/(kg K)]

    Raises:
        DomainError: an input is outside its range

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331; reference
    state of IAPWS G8-10
    """
    return _runtime.call("freeair_dry_air_ideal_entropy")((p_pa, t_k,))


def dry_air_ideal_temperature_from_enthalpy(*, h_j_kg):
    """Temperature of dry air as an ideal gas from its enthalpy.

    Model: freeair_dry_air_ideal_enthalpy() solved by Newton's method, at most 30 steps, to
    rounding.

    Arguments:
        h_j_kg: Enthalpy. [J/kg] Range [-214000;1980000].

    Returns:
        t_k: Temperature. [K]

    Raises:
        DomainError: h_j_kg is outside its range
        NoSolutionError: no temperature between 60 K and 2000 K has this enthalpy

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, solved for
    temperature
    """
    return _runtime.call("freeair_dry_air_ideal_temperature_from_enthalpy")((h_j_kg,))


def dry_air_ideal_temperature_from_entropy(*, p_pa, s_j_kg_k):
    """Temperature of dry air as an ideal gas from its entropy.

    Model: freeair_dry_air_ideal_entropy() solved by Newton's method in ln T, at most 30 steps, to
    rounding.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        s_j_kg_k: Entropy. [J/(kg K)] Range [-1e4;1e4].

    Returns:
        t_k: Temperature. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no temperature between 60 K and 2000 K has this entropy

    Source: Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, solved for
    temperature
    """
    return _runtime.call("freeair_dry_air_ideal_temperature_from_entropy")((p_pa, s_j_kg_k,))


def dry_air_ideal_isentropic_temperature(*, t1_k, pressure_ratio):
    """Temperature after an isentropic change of pressure, by the air tables: their relative pressure.

    Model: s0(T2) = s0(T1) + R ln(p2/p1), cp varying with temperature; solved as in
    freeair_dry_air_ideal_temperature_from_entropy(). From 300 K a constant k of 1.4 ends 5 K too
    hot at a ratio of 10, 21 K at 30.

    Arguments:
        t1_k: Temperature before. [K] Range [60;2000].
        pressure_ratio: p2/p1, above 1 in compression. Range [1e-6;1e6].

    Returns:
        t2_k: Temperature after. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the temperature after would lie outside 60 K to 2000 K

    Source: Cengel, Boles, Thermodynamics: An Engineering Approach, isentropic processes of ideal
    gases, relative pressure
    """
    return _runtime.call("freeair_dry_air_ideal_isentropic_temperature")((t1_k, pressure_ratio,))


def dry_air_transport_viscosity(*, p_pa, t_k):
    """Dynamic viscosity of dry air.

    Model: eta = eta0(T) + sum N tau^t delta^d exp(-gamma delta^l) of Lemmon and Jacobsen (2004),
    eta0 by the collision integral, at the density of freeair_dry_air_density().

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        viscosity_pas: Dynamic viscosity. [Pa s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the state lies between the dew and the bubble line, below 132.6312 K

    Source: Lemmon, Jacobsen, Viscosity and Thermal Conductivity Equations for Nitrogen, Oxygen,
    Argon, and Air, Int. J. Thermophys. 25 (2004) 21, equations 1 to 3
    """
    return _runtime.call("freeair_dry_air_transport_viscosity")((p_pa, t_k,))


def dry_air_transport_conductivity(*, p_pa, t_k):
    """Thermal conductivity of dry air.

    Model: lambda = lambda0(T) + residual(tau, delta) + critical enhancement after Olchowy and
    Sengers, of Lemmon and Jacobsen (2004), at the density of freeair_dry_air_density(). Above
    265.262 K and up to 150 MPa the enhancement is zero; at 220 K and 40 bar it is 0.3 %.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1e-3;2e9].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        conductivity_w_m_k: Thermal conductivity. [W/(m K)]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the state lies between the dew and the bubble line, below 132.6312 K

    Source: Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 4 to 11
    """
    return _runtime.call("freeair_dry_air_transport_conductivity")((p_pa, t_k,))


def dry_air_transport_viscosity_from_density(*, rho_kg_m3, t_k):
    """Dynamic viscosity of dry air at a density; at zero density that of the dilute gas.

    Model: as freeair_dry_air_transport_viscosity(), without a search for the density.

    Arguments:
        rho_kg_m3: Density. [kg/m3] Range [0;1530].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        viscosity_pas: Dynamic viscosity. [Pa s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the state lies between the dew and the bubble line, below 132.6312 K

    Source: Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 1 to 3
    """
    return _runtime.call("freeair_dry_air_transport_viscosity_from_density")((rho_kg_m3, t_k,))


def dry_air_transport_conductivity_from_density(*, rho_kg_m3, t_k):
    """Thermal conductivity of dry air at a density; at zero density that of the dilute gas.

    Model: as freeair_dry_air_transport_conductivity(), without a search for the density.

    Arguments:
        rho_kg_m3: Density. [kg/m3] Range [0;1530].
        t_k: Temperature. [K] Range [60;2000].

    Returns:
        conductivity_w_m_k: Thermal conductivity. [W/(m K)]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the state lies between the dew and the bubble line, below 132.6312 K

    Source: Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 4 to 11
    """
    return _runtime.call("freeair_dry_air_transport_conductivity_from_density")((rho_kg_m3, t_k,))


def saturation_pressure(*, t_k, over):
    """Saturation pressure of water.

    Model: from 273.16 K IAPWS-IF97 equation 30; below it over ice the sublimation equation of IAPWS
    R14-08, over supercooled water equation 10 of Murphy and Koop (2005). At 273.16 K the three
    agree within 1e-7.

    Arguments:
        t_k: Temperature; over water at least 123 K. [K] Range [50;647.096].
        over: What the vapour is in equilibrium with. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).

    Returns:
        p_pa: Saturation pressure. [Pa]

    Raises:
        DomainError: an input is outside its range, or over is not one of its constants

    Source: IAPWS R7-97(2012), equation 30; IAPWS R14-08(2011), equation 6; Murphy, Koop, Q. J. R.
    Meteorol. Soc. 131 (2005) 1539, equation 10
    """
    return _runtime.call("freeair_saturation_pressure")((t_k, over,))


def saturation_temperature(*, p_pa, over):
    """Saturation temperature of water: dew or frost point of pure vapour at a pressure.

    Model: freeair_saturation_pressure() solved for temperature: from the triple point IAPWS-IF97
    equation 31, which is the exact inverse; below it Newton's method in 1/T, at most 30 steps, to
    rounding.

    Arguments:
        p_pa: Pressure of the vapour. [Pa] Range (0;22.064e6].
        over: What the vapour is in equilibrium with. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).

    Returns:
        t_k: Saturation temperature. [K]

    Raises:
        DomainError: p_pa is outside its range, or over is not one of its constants
        NoSolutionError: below 123 K over water, 50 K over ice

    Source: IAPWS R7-97(2012), equation 31; IAPWS R14-08(2011), equation 6; Murphy, Koop, Q. J. R.
    Meteorol. Soc. 131 (2005) 1539, equation 10
    """
    return _runtime.call("freeair_saturation_temperature")((p_pa, over,))


def saturation_pressure_water(*, t_k):
    """Saturation pressure over liquid water by IAPWS-IF97 alone.

    Model: the quadratic form of region 4 solved for pressure.

    Arguments:
        t_k: Temperature. [K] Range [273.15;647.096].

    Returns:
        p_pa: Saturation pressure. [Pa]

    Raises:
        DomainError: t_k is outside its range

    Source: IAPWS R7-97(2012), Industrial Formulation 1997 for Water and Steam, equation 30
    """
    return _runtime.call("freeair_saturation_pressure_water")((t_k,))


def saturation_temperature_water(*, p_pa):
    """Saturation temperature over liquid water by IAPWS-IF97 alone.

    Model: the quadratic form of region 4 solved for temperature.

    Arguments:
        p_pa: Saturation pressure. [Pa] Range [611.213;22.064e6].

    Returns:
        t_k: Temperature. [K]

    Raises:
        DomainError: p_pa is outside its range

    Source: IAPWS R7-97(2012), Industrial Formulation 1997 for Water and Steam, equation 31
    """
    return _runtime.call("freeair_saturation_temperature_water")((p_pa,))


def saturation_pressure_ice(*, t_k):
    """Sublimation pressure of ice.

    Model: ln(p/611.657 Pa) = (1/theta) sum a theta^b, theta = T/273.16 K, three terms.

    Arguments:
        t_k: Temperature. [K] Range [50;273.16].

    Returns:
        p_pa: Sublimation pressure. [Pa]

    Raises:
        DomainError: t_k is outside its range

    Source: IAPWS R14-08(2011), Pressure along the Melting and Sublimation Curves of Ordinary Water
    Substance, equation 6
    """
    return _runtime.call("freeair_saturation_pressure_ice")((t_k,))


def saturation_pressure_supercooled(*, t_k):
    """Saturation pressure over supercooled water.

    Model: equation 10 of Murphy and Koop (2005), 123 K to 332 K; below 235 K water does not stay
    liquid for long.

    Arguments:
        t_k: Temperature. [K] Range [123;332].

    Returns:
        p_pa: Saturation pressure. [Pa]

    Raises:
        DomainError: t_k is outside its range

    Source: Murphy, Koop, Review of the vapour pressures of ice and supercooled water for
    atmospheric applications, Q. J. R. Meteorol. Soc. 131 (2005) 1539, equation 10
    """
    return _runtime.call("freeair_saturation_pressure_supercooled")((t_k,))


def saturation_latent_heat(*, t_k, over):
    """Latent heat of water at saturation: of vaporisation, or of sublimation over ice.

    Model: enthalpy of the vapour less that of the liquid by IAPWS-95, or less that of ice by IAPWS
    R10-06, both at the saturation pressure.

    Arguments:
        t_k: Temperature. [K] Range [238.15;573.15].
        over: What the vapour comes from. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).

    Returns:
        l_j_kg: Latent heat. [J/kg]

    Raises:
        DomainError: t_k is outside its range, or over is not one of its constants

    Source: IAPWS R6-95(2018), Thermodynamic Properties of Ordinary Water Substance for General and
    Scientific Use; IAPWS R10-06(2009), Equation of State 2006 for H2O Ice Ih
    """
    return _runtime.call("freeair_saturation_latent_heat")((t_k, over,))


def enhancement_factor(*, p_pa, t_k, over):
    """Enhancement factor: how much more vapour saturated air holds than pure water gives off.

    Model: f = x p/e, where the fugacity of the vapour by its virial equation equals that of the
    liquid or ice: the fugacity at saturation, raised by the pressure on it (Poynting), lowered by
    the air dissolved (IAPWS G7-04). Newton's method, at most 50 steps, to rounding. The fugacity of
    the vapour is within 5e-4 of that in the equation of state to 16 bar while less than half of the
    gas is vapour, within 0.15 % at 40 bar, 0.3 % at 50 bar and 2 % at 100 bar (1 % above 20 degC).

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        over: What the vapour is in equilibrium with. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).

    Returns:
        factor: Enhancement factor.

    Raises:
        DomainError: an input is outside its range, or over is not one of its constants
        NoSolutionError: the saturation pressure is above the pressure: water boils, and no air is
            left

    Source: IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O in Humid Air (2015)
    """
    return _runtime.call("freeair_enhancement_factor")((p_pa, t_k, over,))


def enhancement_fugacity(*, p_pa, t_k, mole_fraction):
    """Fugacity of the vapour in moist air.

    Model: x p exp(beta p/(R T) + gamma/2 (p/(R T))^2), beta and gamma from the virial coefficients
    and x.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        mole_fraction: Mole fraction of vapour. Range [0;1].

    Returns:
        fugacity_pa: Fugacity of the vapour. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: so much more vapour than at saturation that the virial equation says
            nothing: a fugacity coefficient below 0.135 or above 7.4

    Source: IAPWS G9-15, equations 2 to 4
    """
    return _runtime.call("freeair_enhancement_fugacity")((p_pa, t_k, mole_fraction,))


def enhancement_virials(*, t_k):
    """Virial coefficients of dry air, water vapour and their mixture.

    Model: B_aa and C_aaa from Lemmon et al. (2000), B_ww and C_www from IAPWS-95, both at zero
    density; the cross coefficients by the equations of the guideline.

    Arguments:
        t_k: Temperature. [K] Range [173.15;573.15].

    Returns:
        coefficients: The coefficients.

    Raises:
        StructureVersionError: coefficients has an unknown size
        DomainError: t_k is outside its range

    Source: IAPWS G9-15, equations 5 to 9, Table 7
    """
    return _runtime.call("freeair_enhancement_virials")((t_k,))


def moist_air_state(*, p_pa, t_k, humidity_ratio):
    """All properties of moist air at a pressure, a temperature and a humidity ratio.

    Model: Helmholtz energy of dry air (Lemmon et al. 2000) and of water vapour (IAPWS-95), each at
    its own partial density, and cross virial coefficients to the third; density by Newton's method,
    to rounding.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        humidity_ratio: Mass of vapour by mass of dry air. Range [0;10].

    Returns:
        properties: All properties.

    Raises:
        StructureVersionError: properties has an unknown size
        DomainError: an input is outside its range
        NoSolutionError: saturated air holds less vapour: some of it would condense

    Source: IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with
    Seawater and Ice
    """
    return _runtime.call("freeair_moist_air_state")((p_pa, t_k, humidity_ratio,))


def moist_air_state_from_density(*, rho_kg_m3, t_k, humidity_ratio):
    """All properties of moist air at a density, a temperature and a humidity ratio.

    Model: as freeair_moist_air_state(), without a search and without a look at saturation.

    Arguments:
        rho_kg_m3: Density. [kg/m3] Range (0;200].
        t_k: Temperature. [K] Range [173.15;573.15].
        humidity_ratio: Mass of vapour by mass of dry air. Range [0;10].

    Returns:
        properties: All properties.

    Raises:
        StructureVersionError: properties has an unknown size
        DomainError: an input is outside its range
        NoSolutionError: no gas is stable at this density: most of the vapour would condense

    Source: IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with
    Seawater and Ice
    """
    return _runtime.call("freeair_moist_air_state_from_density")((rho_kg_m3, t_k, humidity_ratio,))


def moist_air_density(*, p_pa, t_k, relative_humidity):
    """Density of moist air from its relative humidity.

    Model: freeair_moist_air_state() at the mole fraction rh f e/p, e the saturation pressure over
    liquid water (supercooled in frost), f the enhancement factor.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        relative_humidity: Relative humidity over water. Range [0;1].

    Returns:
        rho_kg_m3: Density. [kg/m3]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the vapour would leave less than 6 % of the mixture to the air

    Source: IAPWS G8-10 (2010); IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O
    in Humid Air
    """
    return _runtime.call("freeair_moist_air_density")((p_pa, t_k, relative_humidity,))


def moist_air_density_cipm(*, p_pa, t_k, relative_humidity, carbon_dioxide=None):
    """Density of moist air near atmospheric pressure, as legal metrology has it.

    Model: CIPM-2007: rho = p Ma/(Z R T) (1 - xv (1 - Mv/Ma)); relative standard uncertainty 22e-6.
    Not for line pressure.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [60000;110000].
        t_k: Temperature. [K] Range [288.15;300.15].
        relative_humidity: Relative humidity. Range [0;1].
        carbon_dioxide: Mole fraction of carbon dioxide. Range [0;0.01]. Default: 0.0004.

    Returns:
        rho_kg_m3: Density. [kg/m3]

    Raises:
        DomainError: an input is outside its range

    Source: Picard, Davis, Glaeser, Fujii, Revised formula for the density of moist air (CIPM-2007),
    Metrologia 45 (2008) 149
    """
    return _runtime.call("freeair_moist_air_density_cipm")((p_pa, t_k, relative_humidity, carbon_dioxide,))


def moist_air_volume(*, p_pa, t_k, humidity_ratio):
    """Volume of moist air, for each kilogram of dry air in it.

    Model: as freeair_moist_air_state(): (1 + humidity ratio)/density.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        humidity_ratio: Mass of vapour by mass of dry air. Range [0;10].

    Returns:
        v_dry_m3_kg: Volume by mass of dry air. [m3/kg]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: saturated air holds less vapour: some of it would condense

    Source: IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with
    Seawater and Ice
    """
    return _runtime.call("freeair_moist_air_volume")((p_pa, t_k, humidity_ratio,))


def moist_air_flow_convert(*, q1_m3_s, p1_pa, t1_k, relative_humidity1, p2_pa, t2_k, relative_humidity2):
    """Volume flow at one state of a flow given at another, as a real gas.

    Model: the same mass of dry air a second: q2 = q1 v2/v1, v as in freeair_moist_air_volume().
    With the conditions of a reference state this is the real-gas version of
    freeair_reference_flow_convert().

    Arguments:
        q1_m3_s: Volume flow at the first state. [m3/s] Range [0;1e6].
        p1_pa: Pressure of the first state, absolute. [Pa] Range [1;1e7].
        t1_k: Temperature of the first state. [K] Range [173.15;573.15].
        relative_humidity1: Relative humidity of the first state. Range [0;1].
        p2_pa: Pressure of the second state, absolute. [Pa] Range [1;1e7].
        t2_k: Temperature of the second state. [K] Range [173.15;573.15].
        relative_humidity2: Relative humidity of the second state. Range [0;1].

    Returns:
        q2_m3_s: Volume flow at the second state. [m3/s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: in one of the states the vapour would leave less than 6 % of the mixture to
            the air

    Source: IAPWS G8-10 (2010); IAPWS G9-15; algebra
    """
    return _runtime.call("freeair_moist_air_flow_convert")((q1_m3_s, p1_pa, t1_k, relative_humidity1, p2_pa, t2_k, relative_humidity2,))


def moist_air_enthalpy(*, p_pa, t_k, humidity_ratio):
    """Enthalpy of moist air, for each kilogram of dry air in it.

    Model: as freeair_moist_air_state(). Zero for dry air at 0 degC and 101325 Pa, and for liquid
    water at its triple point.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        humidity_ratio: Mass of vapour by mass of dry air. Range [0;10].

    Returns:
        h_dry_j_kg: Enthalpy by mass of dry air. [J/kg]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: saturated air holds less vapour: some of it would condense

    Source: IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with
    Seawater and Ice
    """
    return _runtime.call("freeair_moist_air_enthalpy")((p_pa, t_k, humidity_ratio,))


def moist_air_gas_constant(*, humidity_ratio):
    """Specific gas constant of moist air: what the ideal-gas topics ask for as r_j_kg_k.

    Model: R (1/Ma + w/Mw)/(1 + w), R = 8.314462618 J/(mol K), Ma = 28.96546 g/mol, Mw = 18.015268
    g/mol.

    Arguments:
        humidity_ratio: Mass of vapour by mass of dry air; 0 for dry air. Range [0;10].

    Returns:
        r_j_kg_k: Specific gas constant, for each kilogram of moist air. [J/(kg K)]

    Raises:
        DomainError: humidity_ratio is outside its range

    Source: CODATA 2018, molar gas constant; molar masses of IAPWS G8-10 (2010)
    """
    return _runtime.call("freeair_moist_air_gas_constant")((humidity_ratio,))


def dew_point_at_pressure(*, p1_pa, dew1_k, over1, p2_pa, over2, model):
    """Dew or frost point at one pressure from that at another: pressure dew point to atmospheric and back.

    Model: the mole fraction of vapour stays: f(p1, T1) e(T1)/p1 = f(p2, T2) e(T2)/p2, e the
    saturation pressure and f the enhancement factor, or one without it. Successive substitution, at
    most 60 steps, to rounding.

    Arguments:
        p1_pa: Pressure at which the dew point is known, absolute. [Pa] Range [1;1e7].
        dew1_k: Dew or frost point there. [K] Range [173.15;573.15].
        over1: What it is over. One of SATURATION_OVER_* (enumeration freeair_saturation_over).
        p2_pa: Pressure at which it is wanted, absolute. [Pa] Range [1;1e7].
        over2: What it shall be over. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        dew2_k: Dew or frost point at the second pressure. [K]

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: at the first dew point water would boil, or the second is out of range

    Source: IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O in Humid Air; ISO
    8573-3:1999, Measurement of humidity, for the terms
    """
    return _runtime.call("freeair_dew_point_at_pressure")((p1_pa, dew1_k, over1, p2_pa, over2, model,))


def dew_point_from_ratio(*, p_pa, humidity_ratio, over, model):
    """Dew or frost point from the humidity ratio.

    Model: f(p, T) e(T) = x p, solved for T by successive substitution, at most 60 steps, to
    rounding.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        humidity_ratio: Mass of vapour by mass of dry air. Range (0;10].
        over: What it shall be over. One of SATURATION_OVER_* (enumeration freeair_saturation_over).
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        dew_k: Dew or frost point. [K]

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: the dew point is outside 173.15 K to 573.15 K

    Source: IAPWS G9-15; definition of the dew point
    """
    return _runtime.call("freeair_dew_point_from_ratio")((p_pa, humidity_ratio, over, model,))


def dew_point_from_relative(*, p_pa, t_k, relative_humidity, over, model):
    """Dew or frost point from the relative humidity.

    Model: as freeair_dew_point_from_ratio(), at the mole fraction rh f e/p of
    freeair_humidity_ratio_from_relative().

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        relative_humidity: Relative humidity over water. Range (0;1].
        over: What it shall be over. One of SATURATION_OVER_* (enumeration freeair_saturation_over).
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        dew_k: Dew or frost point. [K]

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: no air is left, or the dew point is outside 173.15 K to 573.15 K

    Source: IAPWS G9-15; definitions of relative humidity and dew point
    """
    return _runtime.call("freeair_dew_point_from_relative")((p_pa, t_k, relative_humidity, over, model,))


def dew_point_humidity_ratio(*, p_pa, dew_k, over, model):
    """Humidity ratio from the dew or frost point.

    Model: w = (Mw/Ma) x/(1 - x), x = f(p, T) e(T)/p.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        dew_k: Dew or frost point. [K] Range [173.15;573.15].
        over: What it is over. One of SATURATION_OVER_* (enumeration freeair_saturation_over).
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        humidity_ratio: Mass of vapour by mass of dry air.

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: at the dew point water would boil, or the humidity ratio is above 10

    Source: IAPWS G9-15; definition of the humidity ratio
    """
    return _runtime.call("freeair_dew_point_humidity_ratio")((p_pa, dew_k, over, model,))


def dew_point_relative_humidity(*, p_pa, t_k, dew_k, over, model):
    """Relative humidity from the dew or frost point.

    Model: rh = x/x_saturated, both by f e/p, at the dew point and over water at the temperature;
    where water would boil, rh = x p/e.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        dew_k: Dew or frost point. [K] Range [173.15;573.15].
        over: What it is over. One of SATURATION_OVER_* (enumeration freeair_saturation_over).
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        relative_humidity: Relative humidity over water.

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: saturated above this temperature already, or water would boil at the dew
            point

    Source: IAPWS G9-15; definitions of relative humidity and dew point
    """
    return _runtime.call("freeair_dew_point_relative_humidity")((p_pa, t_k, dew_k, over, model,))


def wet_bulb_temperature(*, p_pa, t_k, humidity_ratio, over):
    """Wet bulb temperature of moist air.

    Model: h(p, T, w) + (ws - w) hw(p, T*) = h(p, T*, ws), ws the humidity ratio of saturated air at
    the wet bulb T*, hw the enthalpy of water or ice there. Newton's method in a bracket, at most
    100 steps, to 1e-12. Where a wick could be wet as well as frozen, it is wet.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1000;1e7].
        t_k: Temperature. [K] Range [213.15;573.15].
        humidity_ratio: Mass of vapour by mass of dry air. Range [0;10].
        over: Wick wet (supercooled) or frozen below 0.01 degC. One of SATURATION_OVER_*
            (enumeration freeair_saturation_over).

    Returns:
        wet_bulb_k: Wet bulb temperature. [K]

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: saturated air holds less vapour: some of it would condense

    Source: ASHRAE Handbook Fundamentals 2017, chapter 1, thermodynamic wet-bulb temperature;
    properties of IAPWS G8-10
    """
    return _runtime.call("freeair_wet_bulb_temperature")((p_pa, t_k, humidity_ratio, over,))


def wet_bulb_humidity_ratio(*, p_pa, t_k, wet_bulb_k, over):
    """Humidity ratio from dry and wet bulb.

    Model: the balance of freeair_wet_bulb_temperature() solved for w, at most 50 steps, to
    rounding.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1000;1e7].
        t_k: Temperature, dry bulb. [K] Range [213.15;573.15].
        wet_bulb_k: Temperature, wet bulb. [K] Range [173.15;573.15].
        over: Wick wet (supercooled) or frozen below 0.01 degC. One of SATURATION_OVER_*
            (enumeration freeair_saturation_over).

    Returns:
        humidity_ratio: Mass of vapour by mass of dry air.

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: the wet bulb is above the dry bulb, lower than dry air could bring it, or
            boiling

    Source: ASHRAE Handbook Fundamentals 2017, chapter 1, thermodynamic wet-bulb temperature;
    properties of IAPWS G8-10
    """
    return _runtime.call("freeair_wet_bulb_humidity_ratio")((p_pa, t_k, wet_bulb_k, over,))


def humidity_convert(*, given):
    """Every measure of humidity from the one that is given.

    Model: the one given is turned into a mole fraction, that into all others. Saturation by
    freeair_enhancement_factor() or without it; density, enthalpy, wet bulb and vapour density by
    the real gas of topic moist_air either way.

    Arguments:
        given: Pressure, temperature and exactly one measure of humidity.

    Returns:
        found: All measures.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or more than one measure of humidity is given
        DataError: no measure of humidity is given
        NoSolutionError: such air cannot hold this much vapour, or no air is left

    Source: IAPWS G8-10 (2010); IAPWS G9-15; definitions of the measures of humidity
    """
    return _runtime.call("freeair_humidity_convert")((given,))


def humidity_ratio_from_relative(*, p_pa, t_k, relative_humidity, model):
    """Humidity ratio from relative humidity.

    Model: w = (Mw/Ma) x/(1 - x), x = rh f e/p; where water would boil x = rh e/p.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        relative_humidity: Relative humidity over water. Range [0;1].
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        humidity_ratio: Mass of vapour by mass of dry air.

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: the humidity ratio would be above 10

    Source: IAPWS G9-15; definitions of relative humidity and humidity ratio
    """
    return _runtime.call("freeair_humidity_ratio_from_relative")((p_pa, t_k, relative_humidity, model,))


def humidity_relative_from_ratio(*, p_pa, t_k, humidity_ratio, model):
    """Relative humidity from humidity ratio.

    Model: rh = x p/(f e), x = w/(Mw/Ma + w); where water would boil rh = x p/e.

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [1;1e7].
        t_k: Temperature. [K] Range [173.15;573.15].
        humidity_ratio: Mass of vapour by mass of dry air. Range [0;10].
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        relative_humidity: Relative humidity over water.

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: saturated air holds less, by more than 0.1 %

    Source: IAPWS G9-15; definitions of relative humidity and humidity ratio
    """
    return _runtime.call("freeair_humidity_relative_from_ratio")((p_pa, t_k, humidity_ratio, model,))


def condensate_inlet(*, q_m3_s, p_pa, t_k, relative_humidity, model, over):
    """The flow that enters a plant, from its volume and relative humidity.

    Model: dry air = q/v, v the volume by mass of dry air of freeair_moist_air_volume(); vapour =
    humidity ratio x dry air; no water.

    Arguments:
        q_m3_s: Volume flow at the inlet, free air. [m3/s] Range (0;1e5].
        p_pa: Pressure, absolute. [Pa] Range [1000;1e7].
        t_k: Temperature. [K] Range [213.15;573.15].
        relative_humidity: Relative humidity over water. Range [0;1].
        model: With the enhancement factor or not, in all steps. One of ENHANCEMENT_MODEL_*
            (enumeration freeair_enhancement_model).
        over: What forms below 0.01 degC, in all steps. One of SATURATION_OVER_* (enumeration
            freeair_saturation_over).

    Returns:
        flow: The flow.

    Raises:
        StructureVersionError: flow has an unknown size
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: the humidity ratio would be above 10

    Source: IAPWS G8-10 (2010); IAPWS G9-15; algebra
    """
    return _runtime.call("freeair_condensate_inlet")((q_m3_s, p_pa, t_k, relative_humidity, model, over,))


def condensate_step(*, before, p_pa, t_k, separation):
    """One step of a flow: compressed, cooled, stored, dried, expanded or heated to a pressure and temperature.

    Model: the air takes all water that it can hold there, ws = (Mw/Ma) xs/(1 - xs), xs = f e/p; the
    rest is liquid, of which the share separation leaves.

    Arguments:
        before: The flow before.
        p_pa: Pressure after, absolute. [Pa] Range [1000;1e7].
        t_k: Temperature after. [K] Range [213.15;573.15].
        separation: Share of the liquid that is caught and drained; 0 where there is no separator.
            Range [0;1].

    Returns:
        after: The flow after.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: an input or field is outside its range or not one of its constants
        NoSolutionError: there would be more than ten times as much vapour as air

    Source: IAPWS G8-10 (2010); IAPWS G9-15; algebra
    """
    return _runtime.call("freeair_condensate_step")((before, p_pa, t_k, separation,))


def condensate_rate(*, q1_m3_s, p1_pa, t1_k, relative_humidity1, p2_pa, t2_k, model):
    """Water that condenses from a flow of free air, compressed and cooled.

    Model: freeair_condensate_inlet() and one freeair_condensate_step(); nothing when the air stays
    unsaturated.

    Arguments:
        q1_m3_s: Volume flow at the inlet, free air. [m3/s] Range (0;1e5].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1000;1e7].
        t1_k: Inlet temperature. [K] Range [213.15;573.15].
        relative_humidity1: Relative humidity at the inlet. Range [0;1].
        p2_pa: Pressure after cooling, absolute. [Pa] Range [1000;1e7].
        t2_k: Temperature after cooling. [K] Range [213.15;573.15].
        model: With the enhancement factor or without. One of ENHANCEMENT_MODEL_* (enumeration
            freeair_enhancement_model).

    Returns:
        condensate_kg_s: Water that condenses. [kg/s]

    Raises:
        DomainError: an input is outside its range or not one of its constants
        NoSolutionError: there would be more than ten times as much vapour as air

    Source: IAPWS G8-10 (2010); IAPWS G9-15; algebra
    """
    return _runtime.call("freeair_condensate_rate")((q1_m3_s, p1_pa, t1_k, relative_humidity1, p2_pa, t2_k, model,))


ImpedanceFromPhaseResult = _collections.namedtuple(
    "ImpedanceFromPhaseResult", ['r_ohm', 'x_ohm', 'z_ohm'])


def impedance_from_phase(*, voltage_v, current_a, phase_rad):
    """Impedance from voltage, current and the phase angle between them.

    Model: z = V / I, r = z cos(phase), x = z sin(phase). Positive x is inductive: the current lags.

    Arguments:
        voltage_v: Voltage, rms or amplitude, as the current. [V] Range (0;1e6].
        current_a: Current. [A] Range [1e-9;1e6].
        phase_rad: Angle by which the current lags the voltage. [rad] Range [-1.5708;1.5708].

    Returns:
        r_ohm: Resistance. [ohm]
        x_ohm: Reactance, negative when capacitive. [ohm]
        z_ohm: Impedance. [ohm]

    Raises:
        DomainError: an input is outside its range

    Caution: Live electrical work is for qualified people under local rules.

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, H.2.1
    """
    return _runtime.call("freeair_impedance_from_phase")((voltage_v, current_a, phase_rad,), ImpedanceFromPhaseResult)


ImpedanceFromPowerResult = _collections.namedtuple(
    "ImpedanceFromPowerResult", ['r_ohm', 'x_ohm', 'z_ohm', 'power_factor'])


def impedance_from_power(*, voltage_v, current_a, power_w):
    """Impedance from voltage, current and power.

    Model: z = V / I, r = P / I^2, x = sqrt(z^2 - r^2), power factor = P / (V I). The meters do not
    tell an inductive from a capacitive reactance: x is not negative.

    Arguments:
        voltage_v: Voltage, rms. [V] Range (0;1e6].
        current_a: Current, rms. [A] Range [1e-9;1e6].
        power_w: Power. [W] Range [0;1e12].

    Returns:
        r_ohm: Resistance. [ohm]
        x_ohm: Reactance. [ohm]
        z_ohm: Impedance. [ohm]
        power_factor: Power factor.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the power is more than voltage times current

    Caution: Live electrical work is for qualified people under local rules.

    Source: definition
    """
    return _runtime.call("freeair_impedance_from_power")((voltage_v, current_a, power_w,), ImpedanceFromPowerResult)


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


BeltSectionDataResult = _collections.namedtuple(
    "BeltSectionDataResult", ['width_m', 'height_m', 'mass_kg_m', 'pulley_m', 'least_w', 'most_w'])


def belt_section_data(*, section):
    """Data of a belt section.

    Model: table look-up; the mass is the weight that the table prints over 9.81 m/s2.

    Arguments:
        section: Section. One of BELT_SECTION_LETTER_* (enumeration freeair_belt_section_letter).

    Returns:
        width_m: Width at the top. [m]
        height_m: Thickness. [m]
        mass_kg_m: Mass of one metre of one belt. [kg/m]
        pulley_m: Smallest pitch diameter of a pulley. [m]
        least_w: Least power that the section is used for. [W]
        most_w: Greatest power that the section is used for. [W]

    Raises:
        NotFoundError: no such section

    Source: Khurmi and Gupta, A Textbook of Machine Design, Table 20.1, V-belts by IS 2494:1974
    (seen quoted in public lecture notes)
    """
    return _runtime.call("freeair_belt_section_data")((section,), BeltSectionDataResult)


def belt_section_from_width(*, width_m):
    """Section by the width of a belt.

    Model: the section whose top width is within a tenth of the measured one. A worn belt is
    narrower: measure where it does not run.

    Arguments:
        width_m: Width measured at the top. [m] Range [0.001;0.1].

    Returns:
        section: Section. One of BELT_SECTION_LETTER_* (enumeration freeair_belt_section_letter).

    Raises:
        DomainError: width_m is outside its range
        NotFoundError: no section is so wide

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: Khurmi and Gupta, A Textbook of Machine Design, Table 20.1, V-belts by IS 2494:1974
    (seen quoted in public lecture notes)
    """
    return _runtime.call("freeair_belt_section_from_width")((width_m,))


def flow_critical_pressure_ratio(*, k):
    """Critical pressure ratio, below which the flow through a nozzle is choked.

    Model: r = (2 / (k + 1))^(k / (k - 1)), outlet over inlet pressure; 0.528 for air.

    Arguments:
        k: Heat-capacity ratio. Range (1;2].

    Returns:
        ratio: Critical pressure ratio.

    Raises:
        DomainError: k is outside its range

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 11, compressible
    flow
    """
    return _runtime.call("freeair_flow_critical_pressure_ratio")((k,))


def flow_critical_coefficient(*, k):
    """Critical flow coefficient C*, the dimensionless choked mass flux.

    Model: C* = sqrt(k) (2 / (k + 1))^((k + 1) / (2 (k - 1))), so that the choked mass flow is C* A
    p1 / sqrt(R T1). Ideal gas; 0.6847 for air.

    Arguments:
        k: Heat-capacity ratio. Range (1;2].

    Returns:
        coefficient: Critical flow coefficient.

    Raises:
        DomainError: k is outside its range

    Source: ISO 9300:2005, critical flow function of a perfect gas
    """
    return _runtime.call("freeair_flow_critical_coefficient")((k,))


def flow_mass_flow(*, area_m2, p1_pa, t1_k, p2_pa, k, r_j_kg_k):
    """Mass flow through an effective area between two pressures.

    Model: with r = p2 / p1, m = A p1 / sqrt(R T1) sqrt(2 k / (k - 1)) r^(1/k) sqrt(1 - r^((k-1)/k))
    down to the critical pressure ratio, constant below it. The pressure difference is not formed
    from r, so no digit is lost as p2 approaches p1. Isentropic up to the throat.

    Arguments:
        area_m2: Effective area. [m2] Range (0;100].
        p1_pa: Inlet pressure, absolute, stagnation. [Pa] Range [1;1e8].
        t1_k: Inlet temperature, stagnation. [K] Range [1;5000].
        p2_pa: Outlet pressure, absolute, not above p1_pa. [Pa] Range [0;1e8].
        k: Heat-capacity ratio. Range (1;2].
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000].

    Returns:
        mass_kg_s: Mass flow. [kg/s]

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p1_pa

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 11, isentropic flow
    of an ideal gas
    """
    return _runtime.call("freeair_flow_mass_flow")((area_m2, p1_pa, t1_k, p2_pa, k, r_j_kg_k,))


def flow_area_from_mass_flow(*, mass_kg_s, p1_pa, t1_k, p2_pa, k, r_j_kg_k):
    """Effective area that passes a mass flow between two pressures.

    Model: inverse of freeair_flow_mass_flow, which is proportional to the area.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range (0;1e6].
        p1_pa: Inlet pressure, absolute, stagnation. [Pa] Range [1;1e8].
        t1_k: Inlet temperature, stagnation. [K] Range [1;5000].
        p2_pa: Outlet pressure, absolute, below p1_pa. [Pa] Range [0;1e8].
        k: Heat-capacity ratio. Range (1;2].
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000].

    Returns:
        area_m2: Effective area. [m2]

    Raises:
        DomainError: an input is outside its range, or p2_pa is not below p1_pa

    Source: algebra
    """
    return _runtime.call("freeair_flow_area_from_mass_flow")((mass_kg_s, p1_pa, t1_k, p2_pa, k, r_j_kg_k,))


def flow_outlet_pressure_from_mass_flow(*, mass_kg_s, area_m2, p1_pa, t1_k, k, r_j_kg_k):
    """Outlet pressure at which an effective area passes a mass flow.

    Model: inverse of freeair_flow_mass_flow on its subsonic branch by a bracketed Newton iteration,
    at most 100 steps. At exactly the choked mass flow any lower pressure does as well and the
    critical pressure is returned; close to it the answer is as uncertain as the square root of the
    flow's uncertainty.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        area_m2: Effective area. [m2] Range [1e-15;100].
        p1_pa: Inlet pressure, absolute, stagnation. [Pa] Range [1;1e8].
        t1_k: Inlet temperature, stagnation. [K] Range [1;5000].
        k: Heat-capacity ratio. Range (1;2].
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000].

    Returns:
        p2_pa: Outlet pressure, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the area chokes below this mass flow

    Source: algebra
    """
    return _runtime.call("freeair_flow_outlet_pressure_from_mass_flow")((mass_kg_s, area_m2, p1_pa, t1_k, k, r_j_kg_k,))


def flow_inlet_pressure_from_mass_flow(*, mass_kg_s, area_m2, t1_k, p2_pa, k, r_j_kg_k):
    """Inlet pressure needed to drive a mass flow through an effective area.

    Model: inverse of freeair_flow_mass_flow for p1, in closed form: choked, p1 = m sqrt(R T1) / (C*
    A); else with G = m sqrt(R T1) / (A p2) and u = sqrt(1 - r^((k-1)/k)), G = sqrt(2 k / (k - 1)) u
    / (1 - u^2), a quadratic in u.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        area_m2: Effective area. [m2] Range [1e-15;100].
        t1_k: Inlet temperature, stagnation. [K] Range [1;5000].
        p2_pa: Outlet pressure, absolute. [Pa] Range [0;1e8].
        k: Heat-capacity ratio. Range (1;2].
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000].

    Returns:
        p1_pa: Inlet pressure, absolute, stagnation. [Pa]

    Raises:
        DomainError: an input is outside its range

    Source: algebra
    """
    return _runtime.call("freeair_flow_inlet_pressure_from_mass_flow")((mass_kg_s, area_m2, t1_k, p2_pa, k, r_j_kg_k,))


FlowIsentropicRatiosResult = _collections.namedtuple(
    "FlowIsentropicRatiosResult", ['pressure_ratio', 'temperature_ratio', 'density_ratio', 'area_ratio'])


def flow_isentropic_ratios(*, mach, k):
    """Ratios of the isentropic flow table at a Mach number.

    Model: T/T0 = 1 / (1 + (k - 1)/2 M^2), p/p0 = (T/T0)^(k/(k-1)), rho/rho0 = (T/T0)^(1/(k-1)),
    A/A* = 1/M (2/(k+1) T0/T)^((k+1)/(2(k-1))).

    Arguments:
        mach: Mach number. Range [1e-6;10].
        k: Heat-capacity ratio. Range (1;2].

    Returns:
        pressure_ratio: Static over stagnation pressure, p/p0.
        temperature_ratio: Static over stagnation temperature, T/T0.
        density_ratio: Static over stagnation density.
        area_ratio: Area over critical area, A/A*.

    Raises:
        DomainError: an input is outside its range

    Source: NACA Report 1135, Equations, Tables and Charts for Compressible Flow, equations 43 to 45
    and 80
    """
    return _runtime.call("freeair_flow_isentropic_ratios")((mach, k,), FlowIsentropicRatiosResult)


def flow_mach_from_pressure_ratio(*, pressure_ratio, k):
    """Mach number at a ratio of static to stagnation pressure.

    Model: M = sqrt(2 / (k - 1) ((p/p0)^(-(k-1)/k) - 1)).

    Arguments:
        pressure_ratio: Static over stagnation pressure. Range [1e-12;1].
        k: Heat-capacity ratio. Range (1;2].

    Returns:
        mach: Mach number.

    Raises:
        DomainError: an input is outside its range

    Source: NACA Report 1135, equation 44 solved for the Mach number
    """
    return _runtime.call("freeair_flow_mach_from_pressure_ratio")((pressure_ratio, k,))


def flow_mach_from_area_ratio(*, area_ratio, branch, k):
    """Mach number at a ratio of area to critical area.

    Model: Newton iteration on the logarithm of A/A* as a convex function of the logarithm of M,
    from the far side, so that every step approaches the root; at most 100 steps.

    Arguments:
        area_ratio: Area over critical area, A/A*. Range [1;1e6].
        branch: Subsonic or supersonic. One of FLOW_BRANCH_* (enumeration freeair_flow_branch).
        k: Heat-capacity ratio. Range (1;2].

    Returns:
        mach: Mach number.

    Raises:
        DomainError: an input is outside its range

    Source: NACA Report 1135, equation 80 solved for the Mach number
    """
    return _runtime.call("freeair_flow_mach_from_area_ratio")((area_ratio, branch, k,))


NozzleDischargeCoefficientResult = _collections.namedtuple(
    "NozzleDischargeCoefficientResult", ['lowest', 'usual', 'highest'])


def nozzle_discharge_coefficient(*, opening):
    """Discharge coefficient of an opening: lowest, usual and highest.

    Model: table of coefficients for air, 0.97 usual for a well-rounded and 0.65 for a sharp-edged
    opening; elsewhere the middle of the spread. For a leak of unknown shape the spread is the
    answer.

    Arguments:
        opening: Shape. One of NOZZLE_OPENING_* (enumeration freeair_nozzle_opening).

    Returns:
        lowest: Lowest coefficient observed.
        usual: Coefficient to reckon with.
        highest: Highest coefficient observed.

    Raises:
        NotFoundError: no such shape

    Source: Encyclopaedia Britannica, 11th edition, volume 14, Hydraulics, coefficients for air by
    Weisbach; Trade table "Discharge of Air Through an Orifice", footnote, for 0.97 and 0.65
    """
    return _runtime.call("freeair_nozzle_discharge_coefficient")((opening,), NozzleDischargeCoefficientResult)


def nozzle_sharp_edged_coefficient(*, pressure_ratio):
    """Discharge coefficient of a sharp-edged orifice at a pressure ratio.

    Model: fifth-degree polynomial in r = p2 / p1 fitted to measurements on air, 0.60 as r
    approaches 1 and 0.84 into vacuum: the jet contracts less the more it expands, so that a sharp
    edge never chokes fully.

    Arguments:
        pressure_ratio: Outlet over inlet pressure. Range [0;1].

    Returns:
        coefficient: Discharge coefficient for the isentropic formula of the topic flow.

    Raises:
        DomainError: pressure_ratio is outside its range

    Source: Andersen, The Analysis and Design of Pneumatic Systems, 1967, fit to the measurements of
    Perry, 1949 (coefficients from memory)
    """
    return _runtime.call("freeair_nozzle_sharp_edged_coefficient")((pressure_ratio,))


def nozzle_trade_flow(*, diameter_m, coefficient, p1_pa, t1_k, p_atm_pa):
    """Free air through an orifice by the trade's approximate formula for choked flow.

    Model: w = 0.5303 C a p1 / sqrt(T1) in lb/s, in2, psia and degrees Rankine, turned into free air
    of 0.07494 lb/ft3 (dry, 14.7 psia, 70 F). It stands 0.3 % below the isentropic formula. Only for
    p1 of at least twice p_atm.

    Arguments:
        diameter_m: Diameter of the hole. [m] Range (0;1].
        coefficient: Discharge coefficient; 1 in the printed table. Range (0;1].
        p1_pa: Pressure before the hole, absolute. [Pa] Range (0;1e8].
        t1_k: Temperature before the hole. [K] Range [1;5000].
        p_atm_pa: Barometric pressure. [Pa] Range (0;120000].

    Returns:
        q_m3_s: Free air, dry, at 14.7 psia and 70 F. [m3/s]

    Raises:
        DomainError: an input is outside its range, or p1_pa is below twice p_atm_pa

    Caution: Blow guns and hoses injure; limit their pressure as local rules say.

    Source: Moss, approximate formula beneath the trade table "Discharge of Air Through an Orifice"
    """
    return _runtime.call("freeair_nozzle_trade_flow")((diameter_m, coefficient, p1_pa, t1_k, p_atm_pa,))


def nozzle_meter_coefficient(*, meter, reynolds):
    """Discharge coefficient of a critical flow nozzle.

    Model: C = a - b Re^-n with Re on the throat diameter and the viscosity of the stagnation state.
    Fitted for Re 2.1e4 to 1.4e6 (toroidal, accurate), 2.1e4 to 3.2e7 (toroidal, normal), 3.5e5 to
    1.1e7 (cylindrical).

    Arguments:
        meter: Kind of nozzle. One of NOZZLE_METER_* (enumeration freeair_nozzle_meter).
        reynolds: Reynolds number of the throat. Range [1000;1e9].

    Returns:
        coefficient: Discharge coefficient.

    Raises:
        DomainError: reynolds is outside its range
        NotFoundError: no such kind

    Source: ISO 9300:2005, discharge coefficients (constants from memory; take the certificate of
    the nozzle before them)
    """
    return _runtime.call("freeair_nozzle_meter_coefficient")((meter, reynolds,))


NozzleMeterMassFlowResult = _collections.namedtuple(
    "NozzleMeterMassFlowResult", ['mass_kg_s', 'reynolds', 'coefficient'])


def nozzle_meter_mass_flow(*, meter, diameter_m, p0_pa, t0_k, critical_coefficient, r_j_kg_k, viscosity_pas):
    """Mass flow measured by a critical flow nozzle.

    Model: m = C(Re) pi/4 d^2 C* p0 / sqrt(R T0) with Re = 4 m / (pi d mu), solved by fixed-point
    iteration, at most 50 steps, to 1e-14. The nozzle must be choked; the caller sees to that.

    Arguments:
        meter: Kind of nozzle. One of NOZZLE_METER_* (enumeration freeair_nozzle_meter).
        diameter_m: Throat diameter. [m] Range [1e-5;1].
        p0_pa: Stagnation pressure before the nozzle, absolute. [Pa] Range [100;1e8].
        t0_k: Stagnation temperature before the nozzle. [K] Range [50;2000].
        critical_coefficient: Critical flow coefficient C* of the gas in that state. Range [0.5;1].
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000].
        viscosity_pas: Dynamic viscosity in that state. [Pa s] Range [1e-6;0.001].

    Returns:
        mass_kg_s: Mass flow. [kg/s]
        reynolds: Reynolds number of the throat.
        coefficient: Discharge coefficient.

    Raises:
        DomainError: an input is outside its range
        NotFoundError: no such kind
        NoSolutionError: the Reynolds number is below 1000 or above 1e9
        NoConvergenceError: the iteration reached its limit

    Source: ISO 9300:2005, mass flow of a critical flow Venturi nozzle (constants from memory)
    """
    return _runtime.call("freeair_nozzle_meter_mass_flow")((meter, diameter_m, p0_pa, t0_k, critical_coefficient, r_j_kg_k, viscosity_pas,), NozzleMeterMassFlowResult)


ConductanceFlowResult = _collections.namedtuple(
    "ConductanceFlowResult", ['mass_kg_s', 'anr_m3_s'])


def conductance_flow(*, c_m3_s_pa, b, index, p1_pa, t1_k, p2_pa):
    """Mass and volume flow through a component of known sonic conductance.

    Model: m = C rho0 p1 sqrt(T0 / T1) (1 - ((p2/p1 - b) / (1 - b))^2)^index, choked below b; rho0 =
    1.185 kg/m3, T0 = 293.15 K. An ellipse fitted to measurements, good to a few per cent; static
    pressures in the pipe.

    Arguments:
        c_m3_s_pa: Sonic conductance. [m3/(s Pa)] Range [1e-15;0.01].
        b: Critical back-pressure ratio. Range [0;0.99].
        index: Subsonic index; 0.5 where the data sheet has none. Range [0.1;2].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p2_pa: Outlet pressure, absolute, not above p1_pa. [Pa] Range [0;1e8].

    Returns:
        mass_kg_s: Mass flow. [kg/s]
        anr_m3_s: Volume flow in the standard reference atmosphere (ANR). [m3/s]

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p1_pa

    Source: ISO 6358-1:2013, flow-rate characteristics of components using compressible fluids
    """
    return _runtime.call("freeair_conductance_flow")((c_m3_s_pa, b, index, p1_pa, t1_k, p2_pa,), ConductanceFlowResult)


def conductance_from_flow(*, mass_kg_s, b, index, p1_pa, t1_k, p2_pa):
    """Sonic conductance of a component from one measured point.

    Model: inverse of freeair_conductance_flow for C; choked points do not depend on b.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range (0;1e6].
        b: Critical back-pressure ratio. Range [0;0.99].
        index: Subsonic index; 0.5 where unknown. Range [0.1;2].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p2_pa: Outlet pressure, absolute, below p1_pa. [Pa] Range [0;1e8].

    Returns:
        c_m3_s_pa: Sonic conductance. [m3/(s Pa)]

    Raises:
        DomainError: an input is outside its range, or p2_pa is not below p1_pa

    Source: ISO 6358-1:2013, solved for the conductance
    """
    return _runtime.call("freeair_conductance_from_flow")((mass_kg_s, b, index, p1_pa, t1_k, p2_pa,))


def conductance_outlet_pressure(*, mass_kg_s, c_m3_s_pa, b, index, p1_pa, t1_k):
    """Outlet pressure of a component that passes a mass flow.

    Model: inverse of freeair_conductance_flow, in closed form; b p1 at exactly the choked flow.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        c_m3_s_pa: Sonic conductance. [m3/(s Pa)] Range [1e-15;0.01].
        b: Critical back-pressure ratio. Range [0;0.99].
        index: Subsonic index. Range [0.1;2].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].

    Returns:
        p2_pa: Outlet pressure, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the component chokes below this mass flow

    Source: ISO 6358-1:2013, solved for the outlet pressure
    """
    return _runtime.call("freeair_conductance_outlet_pressure")((mass_kg_s, c_m3_s_pa, b, index, p1_pa, t1_k,))


ConductanceSeriesResult = _collections.namedtuple(
    "ConductanceSeriesResult", ['c_total_m3_s_pa', 'b_total'])


def conductance_series(*, c_m3_s_pa, b):
    """Conductance and critical ratio of components in series, first to last.

    Model: pair by pair from the inlet, each pair then taken as one ellipse of index 0.5. The first
    chokes, C = C1, if C1 <= b1 C2; else the second does, and C = C2 y with y the root of C2 y = C1
    sqrt(1 - ((y - b1) / (1 - b1))^2). b from the limit of small flow, (1 - b)/C^2 = sum (1 -
    bi)/Ci^2. Exact in those two limits; temperature constant, velocity lost between components.

    Arguments:
        c_m3_s_pa: Sonic conductances. [m3/(s Pa)] Range [1e-15;0.01].
        b: Critical back-pressure ratios. Range [0;0.99].

    Returns:
        c_total_m3_s_pa: Sonic conductance of the whole. [m3/(s Pa)]
        b_total: Critical back-pressure ratio of the whole.

    Raises:
        DomainError: an input is outside its range

    Source: ISO 6358-3:2014, systems of components; derived anew in the guide
    """
    return _runtime.call("freeair_conductance_series")((c_m3_s_pa, b,), ConductanceSeriesResult)


ConductanceParallelResult = _collections.namedtuple(
    "ConductanceParallelResult", ['c_total_m3_s_pa', 'b_total'])


def conductance_parallel(*, c_m3_s_pa, b):
    """Conductance and critical ratio of components in parallel.

    Model: C = sum Ci, and C / sqrt(1 - b) = sum Ci / sqrt(1 - bi), exact where every component is
    choked and in the limit of small flow.

    Arguments:
        c_m3_s_pa: Sonic conductances. [m3/(s Pa)] Range [1e-15;0.01].
        b: Critical back-pressure ratios. Range [0;0.99].

    Returns:
        c_total_m3_s_pa: Sonic conductance of the whole. [m3/(s Pa)]
        b_total: Critical back-pressure ratio of the whole.

    Raises:
        DomainError: an input is outside its range

    Source: ISO 6358-3:2014, systems of components; derived anew in the guide
    """
    return _runtime.call("freeair_conductance_parallel")((c_m3_s_pa, b,), ConductanceParallelResult)


def conductance_from_area(*, area_m2, k, r_j_kg_k):
    """Sonic conductance of an effective area.

    Model: equal choked mass flow, C = C* A / (rho0 sqrt(R T0)); 5.02 mm2 of air a dm3/(s bar).

    Arguments:
        area_m2: Effective area. [m2] Range (0;100].
        k: Heat-capacity ratio. Range (1;2].
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000].

    Returns:
        c_m3_s_pa: Sonic conductance. [m3/(s Pa)]

    Raises:
        DomainError: an input is outside its range

    Source: algebra
    """
    return _runtime.call("freeair_conductance_from_area")((area_m2, k, r_j_kg_k,))


def conductance_area(*, c_m3_s_pa, k, r_j_kg_k):
    """Effective area of a sonic conductance.

    Model: equal choked mass flow, A = C rho0 sqrt(R T0) / C*.

    Arguments:
        c_m3_s_pa: Sonic conductance. [m3/(s Pa)] Range (0;0.01].
        k: Heat-capacity ratio. Range (1;2].
        r_j_kg_k: Gas constant. [J/(kg K)] Range [10;10000].

    Returns:
        area_m2: Effective area. [m2]

    Raises:
        DomainError: an input is outside its range

    Source: algebra
    """
    return _runtime.call("freeair_conductance_area")((c_m3_s_pa, k, r_j_kg_k,))


def coefficient_kv_from_cv(*, cv):
    """Flow coefficient Kv (m3/h of water at 1 bar) of a flow coefficient Cv (US gal/min at 1 psi).

    Model: Kv = 0.86497... Cv, from the definitions of gallon, inch and pound-force.

    Arguments:
        cv: Flow coefficient Cv. Range [0;1e9].

    Returns:
        kv: Flow coefficient Kv.

    Raises:
        DomainError: cv is outside its range

    Source: IEC 60534-1, definitions of the flow coefficients
    """
    return _runtime.call("freeair_coefficient_kv_from_cv")((cv,))


def coefficient_cv_from_kv(*, kv):
    """Flow coefficient Cv of a flow coefficient Kv.

    Model: inverse of freeair_coefficient_kv_from_cv.

    Arguments:
        kv: Flow coefficient Kv. Range [0;1e9].

    Returns:
        cv: Flow coefficient Cv.

    Raises:
        DomainError: kv is outside its range

    Source: IEC 60534-1, definitions of the flow coefficients
    """
    return _runtime.call("freeair_coefficient_cv_from_kv")((kv,))


CoefficientConductanceFromKvResult = _collections.namedtuple(
    "CoefficientConductanceFromKvResult", ['c_m3_s_pa', 'b'])


def coefficient_conductance_from_kv(*, kv, x_t):
    """Sonic conductance and critical ratio of a valve of known Kv and xT.

    Model: m = A Y sqrt(x p1 rho1), A = Kv sqrt(1000 / 1e5) / 3600 in m2, x = 1 - p2/p1, Y = 1 - x /
    (3 xT), choked at x = xT: equal choked flow gives C = (2/3) A sqrt(xT / (R T0)) / rho0, equal
    flow at small drop 1 - b = (8/9) xT. Air, R = 287.05287 J/(kg K), k = 1.4.

    Arguments:
        kv: Flow coefficient Kv. Range [1e-9;1e6].
        x_t: Pressure drop ratio factor xT, 0.7 for a globe valve. Range [0.02;1.1].

    Returns:
        c_m3_s_pa: Sonic conductance. [m3/(s Pa)]
        b: Critical back-pressure ratio.

    Raises:
        DomainError: an input is outside its range

    Source: IEC 60534-2-1, sizing equations for compressible fluids, matched to ISO 6358-1:2013 in
    the guide
    """
    return _runtime.call("freeair_coefficient_conductance_from_kv")((kv, x_t,), CoefficientConductanceFromKvResult)


CoefficientKvFromConductanceResult = _collections.namedtuple(
    "CoefficientKvFromConductanceResult", ['kv', 'x_t'])


def coefficient_kv_from_conductance(*, c_m3_s_pa, b):
    """Flow coefficient Kv and factor xT of a component of known C and b.

    Model: inverse of freeair_coefficient_conductance_from_kv.

    Arguments:
        c_m3_s_pa: Sonic conductance. [m3/(s Pa)] Range [1e-15;0.01].
        b: Critical back-pressure ratio. Range [0;0.98].

    Returns:
        kv: Flow coefficient Kv.
        x_t: Pressure drop ratio factor xT.

    Raises:
        DomainError: an input is outside its range

    Source: algebra
    """
    return _runtime.call("freeair_coefficient_kv_from_conductance")((c_m3_s_pa, b,), CoefficientKvFromConductanceResult)


def coefficient_air_flow_from_cv(*, cv, p1_pa, t1_k, p2_pa):
    """Air flow through a valve of known Cv by the fluid power formula.

    Model: Q = 22.7 Cv sqrt((p1 - p2) p2 / T1) in standard ft3/min (14.7 psia, 68 F), psia and
    degrees Rankine; choked at p2 = 0.53 p1 and constant below.

    Arguments:
        cv: Flow coefficient Cv. Range (0;1e6].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p2_pa: Outlet pressure, absolute, not above p1_pa. [Pa] Range [0;1e8].

    Returns:
        q_m3_s: Volume flow at 14.7 psia and 68 F. [m3/s]

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p1_pa

    Source: Esposito, Fluid Power with Applications, chapter 13, sizing of valves
    """
    return _runtime.call("freeair_coefficient_air_flow_from_cv")((cv, p1_pa, t1_k, p2_pa,))


def coefficient_cv_from_air_flow(*, q_m3_s, p1_pa, t1_k, p2_pa):
    """Cv that passes an air flow, by the fluid power formula.

    Model: inverse of freeair_coefficient_air_flow_from_cv.

    Arguments:
        q_m3_s: Volume flow at 14.7 psia and 68 F. [m3/s] Range (0;1e4].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p2_pa: Outlet pressure, absolute, below p1_pa. [Pa] Range [0;1e8].

    Returns:
        cv: Flow coefficient Cv.

    Raises:
        DomainError: an input is outside its range, or p2_pa is not below p1_pa

    Source: Esposito, Fluid Power with Applications, chapter 13, sizing of valves
    """
    return _runtime.call("freeair_coefficient_cv_from_air_flow")((q_m3_s, p1_pa, t1_k, p2_pa,))


def safety_burn_threshold(*, contact_s):
    """Surface temperature at which bare smooth metal burns skin.

    Model: lower bound of the burn threshold: 65 degC at 1 s, 55 at 10 s, 51 at 1 min, 48 at 10 min,
    43 from 8 h, straight lines over the logarithm of the time between.

    Arguments:
        contact_s: Time of contact. [s] Range [1;1e6].

    Returns:
        t_k: Temperature of the surface. [K]

    Raises:
        DomainError: an input is outside its range

    Caution: Discharge parts burn; let them cool.

    Caution: Wear hearing, eye, hand and foot protection.

    Source: ISO 13732-1:2006, burn thresholds, bare (uncoated) smooth metal (from memory; 1 s and 10
    s are read from its curve)
    """
    return _runtime.call("freeair_safety_burn_threshold")((contact_s,))


def safety_cleaning_pressure(*, p_atm_pa):
    """Pressure below which compressed air for cleaning must stay, dead-ended.

    Model: less than 30 psi gauge with the nozzle blocked, with chip guarding and personal
    protection.

    Arguments:
        p_atm_pa: Barometric pressure. [Pa] Range [1000;120000].

    Returns:
        p_pa: Limit, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range

    Caution: Blow guns and hoses injure; limit their pressure as local rules say.

    Caution: Wear hearing, eye, hand and foot protection.

    Source: US 29 CFR 1910.242(b)
    """
    return _runtime.call("freeair_safety_cleaning_pressure")((p_atm_pa,))


def safety_stored_energy_hazard(*, energy_j):
    """Hazard class of an energy stored in compressed gas.

    Model: above 100 kJ a system counts as highly hazardous in one university's rule; no law says
    so.

    Arguments:
        energy_j: Stored energy, isentropic. [J] Range [0;1e15].

    Returns:
        hazard: Class. One of SAFETY_HAZARD_* (enumeration freeair_safety_hazard).

    Raises:
        DomainError: an input is outside its range

    Caution: A receiver under pressure stores energy like an explosive.

    Source: University of California, Berkeley, Environment, Health and Safety, Calculating the
    Stored Energy of a Pressurized Gas Vessel
    """
    return _runtime.call("freeair_safety_stored_energy_hazard")((energy_j,))


def pipe_reynolds(*, mass_kg_s, diameter_m, viscosity_pas):
    """Reynolds number.

    Model: Re = 4 m / (pi d viscosity).

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        viscosity_pas: Dynamic viscosity. [Pa s] Range [1e-8;1e3].

    Returns:
        reynolds: Reynolds number.

    Raises:
        DomainError: an input is outside its range

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 8
    """
    return _runtime.call("freeair_pipe_reynolds")((mass_kg_s, diameter_m, viscosity_pas,))


def pipe_velocity(*, mass_kg_s, diameter_m, p_pa, t_k, r_j_kg_k):
    """Mean velocity.

    Model: v = 4 m R T / (pi d^2 p), ideal gas. Six to ten metres a second are usual in mains, up to
    twenty in short branches: common practice, no source.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        p_pa: Pressure, absolute. [Pa] Range [1;1e8].
        t_k: Temperature. [K] Range [50;2000].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].

    Returns:
        velocity_m_s: Velocity. [m/s]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: continuity and the ideal-gas law
    """
    return _runtime.call("freeair_pipe_velocity")((mass_kg_s, diameter_m, p_pa, t_k, r_j_kg_k,))


def pipe_diameter_from_velocity(*, mass_kg_s, velocity_m_s, p_pa, t_k, r_j_kg_k):
    """Diameter for a velocity.

    Model: inverse of freeair_pipe_velocity.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        velocity_m_s: Velocity. [m/s] Range [0.001;1000].
        p_pa: Pressure, absolute. [Pa] Range [1;1e8].
        t_k: Temperature. [K] Range [50;2000].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].

    Returns:
        diameter_m: Inner diameter. [m]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: continuity and the ideal-gas law
    """
    return _runtime.call("freeair_pipe_diameter_from_velocity")((mass_kg_s, velocity_m_s, p_pa, t_k, r_j_kg_k,))


def pipe_friction_factor(*, reynolds, roughness):
    """Friction factor (Darcy and Weisbach).

    Model: 64/Re below Re = 2300; from 4000 the root of 1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re
    sqrt(f))) (Colebrook and White) by Newton's method, at most 50 steps, to rounding; between them,
    where no formula is sure, the straight line.

    Arguments:
        reynolds: Reynolds number. Range [1e-6;1e12].
        roughness: Roughness over inner diameter, e. Range [0;0.1].

    Returns:
        factor: Friction factor.

    Raises:
        DomainError: an input is outside its range

    Source: Colebrook, Turbulent flow in pipes, Journal of the Institution of Civil Engineers 11
    (1939) 133
    """
    return _runtime.call("freeair_pipe_friction_factor")((reynolds, roughness,))


def pipe_pressure_drop(*, mass_kg_s, diameter_m, length_m, factor, loss_coefficient, p_pa, t_k, r_j_kg_k):
    """Pressure drop of a gas that hardly expands.

    Model: dp = (f L/d + K) rho v^2 / 2, density that of p and T all along.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        length_m: Length. [m] Range [0;1e6].
        factor: Friction factor. Range [0;100].
        loss_coefficient: K, sum of the loss coefficients of the fittings. Range [0;1e6].
        p_pa: Pressure, absolute. [Pa] Range [1;1e8].
        t_k: Temperature. [K] Range [50;2000].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].

    Returns:
        drop_pa: Pressure drop. [Pa]

    Raises:
        DomainError: an input is outside its range

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 8
    """
    return _runtime.call("freeair_pipe_pressure_drop")((mass_kg_s, diameter_m, length_m, factor, loss_coefficient, p_pa, t_k, r_j_kg_k,))


def pipe_drop_harris(*, q_m3_s, diameter_m, length_m, p_pa):
    """Pressure drop by the trade's formula of Harris.

    Model: dp = 0.1025 L q^2 / (3600 r d^5.31) in psi, ft, cubic feet of free air a minute, in; r
    the line pressure over 14.7 psi. No Reynolds number: steel pipe, air near room temperature.

    Arguments:
        q_m3_s: Flow of free air. [m3/s] Range [0;1e4].
        diameter_m: Inner diameter. [m] Range [0.001;1].
        length_m: Length. [m] Range [0;1e6].
        p_pa: Line pressure, absolute. [Pa] Range [1e4;1e8].

    Returns:
        drop_pa: Pressure drop. [Pa]

    Raises:
        DomainError: an input is outside its range

    Source: Esposito, Fluid Power with Applications, chapter 14, the Harris formula
    """
    return _runtime.call("freeair_pipe_drop_harris")((q_m3_s, diameter_m, length_m, p_pa,))


def pipe_roughness(*, material):
    """Roughness of a pipe, new and clean.

    Model: table. Rust and scale multiply it by ten and more.

    Arguments:
        material: Material. One of PIPE_MATERIAL_* (enumeration freeair_pipe_material).

    Returns:
        roughness_m: Equivalent sand roughness. [m]

    Raises:
        DomainError: no such material

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Table 8.1, after Moody
    (1944) and Colebrook (1939) (from memory)
    """
    return _runtime.call("freeair_pipe_roughness")((material,))


PipeSizeResult = _collections.namedtuple(
    "PipeSizeResult", ['outer_m', 'wall_m', 'inner_m'])


def pipe_size(*, series, dn):
    """Dimensions of a pipe by its nominal size.

    Model: table. DN 6, 8, 10, 15, 20, 25, 32, 40, 50, 65, 80, 100, 125, 150, 200 are 1/8, 1/4, 3/8,
    1/2, 3/4, 1, 1 1/4, 1 1/2, 2, 2 1/2, 3, 4, 5, 6 and 8 in.

    Arguments:
        series: Series. One of PIPE_SERIES_* (enumeration freeair_pipe_series).
        dn: Nominal size DN. Range [6;200].

    Returns:
        outer_m: Outer diameter. [m]
        wall_m: Wall thickness. [m]
        inner_m: Inner diameter. [m]

    Raises:
        DomainError: no such series, or dn is outside its range
        NotFoundError: the series has no such size

    Source: ASME B36.10M, Welded and Seamless Wrought Steel Pipe; EN 10255, Non-alloy steel tubes
    suitable for welding and threading (both from memory)
    """
    return _runtime.call("freeair_pipe_size")((series, dn,), PipeSizeResult)


PipeSizeFromDiameterResult = _collections.namedtuple(
    "PipeSizeFromDiameterResult", ['dn', 'inner_m'])


def pipe_size_from_diameter(*, series, diameter_m):
    """Smallest pipe of a series that is wide enough.

    Model: table, the first whose inner diameter is not below the one asked for.

    Arguments:
        series: Series. One of PIPE_SERIES_* (enumeration freeair_pipe_series).
        diameter_m: Inner diameter that is needed. [m] Range [0;10].

    Returns:
        dn: Nominal size DN.
        inner_m: Its inner diameter. [m]

    Raises:
        DomainError: no such series, or diameter_m is outside its range
        NotFoundError: no size is wide enough

    Source: ASME B36.10M; EN 10255 (both from memory)
    """
    return _runtime.call("freeair_pipe_size_from_diameter")((series, diameter_m,), PipeSizeFromDiameterResult)


def fitting_loss_coefficient(*, fitting, joint):
    """Loss coefficient of a fitting.

    Model: table; turbulent flow. Valves, entrances and the exit have one value for both joints.

    Arguments:
        fitting: Fitting. One of FITTING_KIND_* (enumeration freeair_fitting_kind).
        joint: How it is joined. One of FITTING_JOINT_* (enumeration freeair_fitting_joint).

    Returns:
        loss_coefficient: K.

    Raises:
        DomainError: no such fitting or joint
        NotFoundError: the table has no such fitting with such a joint

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Table 8.2 and Figures 8.22
    and 8.25 (from memory)
    """
    return _runtime.call("freeair_fitting_loss_coefficient")((fitting, joint,))


def fitting_length_ratio(*, fitting):
    """Equivalent length of a fitting, in diameters.

    Model: table of L/d; K = L/d times the friction factor of the pipe in fully turbulent flow.

    Arguments:
        fitting: Fitting. One of FITTING_KIND_* (enumeration freeair_fitting_kind).

    Returns:
        ratio: Equivalent length over inner diameter.

    Raises:
        DomainError: no such fitting
        NotFoundError: the table has no such fitting

    Source: Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, appendix
    A (from memory)
    """
    return _runtime.call("freeair_fitting_length_ratio")((fitting,))


def fitting_equivalent_length(*, loss_coefficient, factor, diameter_m):
    """Equivalent length of straight pipe from a loss coefficient.

    Model: L = K d / f.

    Arguments:
        loss_coefficient: K. Range [0;1e6].
        factor: Friction factor of the pipe. Range [1e-4;100].
        diameter_m: Inner diameter. [m] Range [1e-6;10].

    Returns:
        length_m: Equivalent length. [m]

    Raises:
        DomainError: an input is outside its range

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 8.4.2
    """
    return _runtime.call("freeair_fitting_equivalent_length")((loss_coefficient, factor, diameter_m,))


def fitting_coefficient_from_length(*, length_m, factor, diameter_m):
    """Loss coefficient from an equivalent length of straight pipe.

    Model: K = f L / d.

    Arguments:
        length_m: Equivalent length. [m] Range [0;1e6].
        factor: Friction factor of the pipe. Range [0;100].
        diameter_m: Inner diameter. [m] Range [1e-6;10].

    Returns:
        loss_coefficient: K.

    Raises:
        DomainError: an input is outside its range

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 8.4.2
    """
    return _runtime.call("freeair_fitting_coefficient_from_length")((length_m, factor, diameter_m,))


def fitting_expansion(*, narrow_m, wide_m):
    """Loss coefficient of a sudden widening.

    Model: K = (1 - (d1/d2)^2)^2 of the dynamic pressure in the narrow pipe (Borda and Carnot).

    Arguments:
        narrow_m: Inner diameter before. [m] Range [1e-6;10].
        wide_m: Inner diameter behind, not below narrow_m. [m] Range [1e-6;10].

    Returns:
        loss_coefficient: K.

    Raises:
        DomainError: an input is outside its range, or wide_m is below narrow_m

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equation 8.39
    """
    return _runtime.call("freeair_fitting_expansion")((narrow_m, wide_m,))


def fitting_contraction(*, wide_m, narrow_m):
    """Loss coefficient of a sudden narrowing.

    Model: K = (1 - (d2/d1)^2) / 2 of the dynamic pressure in the narrow pipe.

    Arguments:
        wide_m: Inner diameter before. [m] Range [1e-6;10].
        narrow_m: Inner diameter behind, not above wide_m. [m] Range [1e-6;10].

    Returns:
        loss_coefficient: K.

    Raises:
        DomainError: an input is outside its range, or narrow_m is above wide_m

    Source: Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, appendix
    A (from memory)
    """
    return _runtime.call("freeair_fitting_contraction")((wide_m, narrow_m,))


def isothermal_mass_flow(*, p1_pa, p2_pa, t_k, diameter_m, loss_number, r_j_kg_k):
    """Mass flow from the pressures at both ends, for a known friction factor.

    Model: the equation above.

    Arguments:
        p1_pa: Pressure at the inlet, absolute. [Pa] Range [1;1e8].
        p2_pa: Pressure at the outlet, absolute, not above p1_pa. [Pa] Range [1;1e8].
        t_k: Temperature. [K] Range [50;2000].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        loss_number: f L/d + K. Range [0;1e9].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].

    Returns:
        mass_kg_s: Mass flow. [kg/s]

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p1_pa
        NoSolutionError: choked: the pressure at the outlet cannot fall so low

    Source: Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete
    isothermal equation
    """
    return _runtime.call("freeair_isothermal_mass_flow")((p1_pa, p2_pa, t_k, diameter_m, loss_number, r_j_kg_k,))


IsothermalChokingResult = _collections.namedtuple(
    "IsothermalChokingResult", ['p2_pa', 'mass_kg_s'])


def isothermal_choking(*, p1_pa, t_k, diameter_m, loss_number, r_j_kg_k):
    """Where a pipe chokes, for a known friction factor.

    Model: the greatest flow of the equation above: G = p2 / sqrt(R T), (p1/p2)^2 - 1 - ln (p1/p2)^2
    = loss_number, by Newton's method, at most 100 steps, to rounding.

    Arguments:
        p1_pa: Pressure at the inlet, absolute. [Pa] Range [1;1e8].
        t_k: Temperature. [K] Range [50;2000].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        loss_number: f L/d + K. Range [0;1e9].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].

    Returns:
        p2_pa: Pressure at the outlet, below which nothing changes. [Pa]
        mass_kg_s: The greatest flow. [kg/s]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: greatest flow of the isothermal equation
    """
    return _runtime.call("freeair_isothermal_choking")((p1_pa, t_k, diameter_m, loss_number, r_j_kg_k,), IsothermalChokingResult)


IsothermalFlowFromPressuresResult = _collections.namedtuple(
    "IsothermalFlowFromPressuresResult", ['mass_kg_s', 'factor'])


def isothermal_flow_from_pressures(*, pipe, p1_pa, p2_pa):
    """Mass flow from the pressures at both ends of a pipe.

    Model: the equation above with the friction factor of freeair_pipe_friction_factor, iterated at
    most 200 times to 1e-14.

    Arguments:
        pipe: The pipe.
        p1_pa: Pressure at the inlet, absolute. [Pa] Range [1;1e8].
        p2_pa: Pressure at the outlet, absolute, not above p1_pa. [Pa] Range [1;1e8].

    Returns:
        mass_kg_s: Mass flow. [kg/s]
        factor: Friction factor; infinite without flow.

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p1_pa
        StructureVersionError: pipe has an unknown size or content
        NoSolutionError: choked: the pressure at the outlet cannot fall so low

    Source: Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete
    isothermal equation
    """
    return _runtime.call("freeair_isothermal_flow_from_pressures")((pipe, p1_pa, p2_pa,), IsothermalFlowFromPressuresResult)


IsothermalOutletPressureResult = _collections.namedtuple(
    "IsothermalOutletPressureResult", ['p2_pa', 'velocity_m_s', 'factor'])


def isothermal_outlet_pressure(*, pipe, mass_kg_s, p1_pa):
    """Pressure at the outlet of a pipe from the flow.

    Model: the equation above by Newton's method, at most 100 steps, to rounding.

    Arguments:
        pipe: The pipe.
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        p1_pa: Pressure at the inlet, absolute. [Pa] Range [1;1e8].

    Returns:
        p2_pa: Pressure at the outlet, absolute. [Pa]
        velocity_m_s: Velocity at the outlet, the greatest. [m/s]
        factor: Friction factor; infinite without flow.

    Raises:
        DomainError: an input is outside its range
        StructureVersionError: pipe has an unknown size or content
        NoSolutionError: choked: so much cannot pass

    Source: Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete
    isothermal equation
    """
    return _runtime.call("freeair_isothermal_outlet_pressure")((pipe, mass_kg_s, p1_pa,), IsothermalOutletPressureResult)


IsothermalInletPressureResult = _collections.namedtuple(
    "IsothermalInletPressureResult", ['p1_pa', 'factor'])


def isothermal_inlet_pressure(*, pipe, mass_kg_s, p2_pa):
    """Pressure at the inlet of a pipe from the flow.

    Model: the equation above by Newton's method, at most 100 steps, to rounding.

    Arguments:
        pipe: The pipe.
        mass_kg_s: Mass flow. [kg/s] Range [0;1e6].
        p2_pa: Pressure at the outlet, absolute. [Pa] Range [1;1e8].

    Returns:
        p1_pa: Pressure at the inlet, absolute. [Pa]
        factor: Friction factor; infinite without flow.

    Raises:
        DomainError: an input is outside its range
        StructureVersionError: pipe has an unknown size or content
        NoSolutionError: choked: so much does not leave at this pressure

    Source: Crane, Flow of Fluids through Valves, Fittings, and Pipe, Technical Paper 410, complete
    isothermal equation
    """
    return _runtime.call("freeair_isothermal_inlet_pressure")((pipe, mass_kg_s, p2_pa,), IsothermalInletPressureResult)


IsothermalDiameterResult = _collections.namedtuple(
    "IsothermalDiameterResult", ['diameter_m', 'factor'])


def isothermal_diameter(*, pipe, mass_kg_s, p1_pa, p2_pa):
    """Diameter of a pipe for an allowed pressure drop.

    Model: the equation above, bisection of the logarithm of the diameter between 1e-6 and 10 m, to
    rounding.

    Arguments:
        pipe: The pipe; its diameter is not used.
        mass_kg_s: Mass flow. [kg/s] Range [1e-9;1e6].
        p1_pa: Pressure at the inlet, absolute. [Pa] Range [1;1e8].
        p2_pa: Pressure at the outlet, absolute, below p1_pa. [Pa] Range [1;1e8].

    Returns:
        diameter_m: Inner diameter; freeair_pipe_size_from_diameter gives the next that can be
            bought. [m]
        factor: Friction factor.

    Raises:
        DomainError: an input is outside its range, or p2_pa is not below p1_pa
        StructureVersionError: pipe has an unknown size or content
        NoSolutionError: no diameter from 1e-6 to 10 m, or the pipe would choke

    Source: Massey and Ward-Smith, Mechanics of Fluids, chapter 11, isothermal flow
    """
    return _runtime.call("freeair_isothermal_diameter")((pipe, mass_kg_s, p1_pa, p2_pa,), IsothermalDiameterResult)


def fanno_parameter(*, mach, k):
    """Friction parameter up to the critical state.

    Model: f L star / d = (1 - M^2)/(k M^2) + (k+1)/(2k) ln((k+1) M^2 / (2 + (k-1) M^2)), without
    loss near M = 1.

    Arguments:
        mach: Mach number. Range [1e-6;100].
        k: Ratio of specific heats; 1.4 for air. Range (1;2].

    Returns:
        parameter: f L star / d.

    Raises:
        DomainError: an input is outside its range

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equation 11.98
    """
    return _runtime.call("freeair_fanno_parameter")((mach, k,))


def fanno_mach_from_parameter(*, parameter, branch, k):
    """Mach number from the friction parameter.

    Model: inverse of freeair_fanno_parameter by Newton's method, at most 100 steps, to rounding.

    Arguments:
        parameter: f L star / d. Range [0;1e12].
        branch: Below or above the speed of sound. One of FLOW_BRANCH_* (enumeration
            freeair_flow_branch).
        k: Ratio of specific heats; 1.4 for air. Range (1;2].

    Returns:
        mach: Mach number.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no supersonic flow has so large a parameter

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equation 11.98
    """
    return _runtime.call("freeair_fanno_mach_from_parameter")((parameter, branch, k,))


FannoRatiosResult = _collections.namedtuple(
    "FannoRatiosResult", ['pressure_ratio', 'temperature_ratio', 'density_ratio', 'stagnation_ratio'])


def fanno_ratios(*, mach, k):
    """State over that at the critical length.

    Model: T/T* = (k+1)/(2 + (k-1) M^2); p/p* = sqrt(T/T*) / M; rho/rho* = (p/p*)/(T/T*); p0/p0* =
    (T/T*)^(-(k+1)/(2(k-1))) / M.

    Arguments:
        mach: Mach number. Range [1e-6;100].
        k: Ratio of specific heats; 1.4 for air. Range (1;2].

    Returns:
        pressure_ratio: p/p*.
        temperature_ratio: T/T*.
        density_ratio: rho/rho*, also V* / V.
        stagnation_ratio: p0/p0*.

    Raises:
        DomainError: an input is outside its range
        ResultOverflowError: p0/p0* is beyond any number

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, equations 11.101 to 11.109
    """
    return _runtime.call("freeair_fanno_ratios")((mach, k,), FannoRatiosResult)


def fanno_length(*, mach1, mach2, diameter_m, factor, k):
    """Length of pipe between two Mach numbers.

    Model: L = d/f ((f L star / d) of mach1 - that of mach2).

    Arguments:
        mach1: Mach number at the inlet. Range [1e-6;100].
        mach2: Mach number at the outlet. Range [1e-6;100].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        factor: Friction factor. Range [1e-4;100].
        k: Ratio of specific heats; 1.4 for air. Range (1;2].

    Returns:
        length_m: Length. [m]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: friction does not lead from the one to the other

    Source: Murugaperumal, Gas Dynamics and Jet Propulsion, example 3.2
    """
    return _runtime.call("freeair_fanno_length")((mach1, mach2, diameter_m, factor, k,))


FannoMassFlowResult = _collections.namedtuple(
    "FannoMassFlowResult", ['mass_kg_s', 'mach1', 'mach2'])


def fanno_mass_flow(*, p0_pa, t0_k, p2_pa, diameter_m, loss_number, k, r_j_kg_k):
    """Mass flow from a vessel through a pipe.

    Model: isentropic into the pipe, Fanno along it. Choked at the end where the pressure behind it
    is below that of M = 1; else solved for the Mach number at the end by bisection of its
    logarithm, to rounding.

    Arguments:
        p0_pa: Pressure in the vessel, absolute. [Pa] Range [1;1e8].
        t0_k: Temperature in the vessel. [K] Range [50;2000].
        p2_pa: Pressure behind the pipe, absolute, not above p0_pa. [Pa] Range [0;1e8].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        loss_number: f L/d, the loss coefficients of fittings added. Range [0;1e9].
        k: Ratio of specific heats; 1.4 for air. Range (1;2].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].

    Returns:
        mass_kg_s: Mass flow. [kg/s]
        mach1: Mach number at the inlet of the pipe.
        mach2: Mach number at its end; 1 when choked.

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p0_pa

    Caution: Blow guns and hoses injure; limit their pressure as local rules say.

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, examples 11.12 and 11.14
    """
    return _runtime.call("freeair_fanno_mass_flow")((p0_pa, t0_k, p2_pa, diameter_m, loss_number, k, r_j_kg_k,), FannoMassFlowResult)


FannoOutletResult = _collections.namedtuple(
    "FannoOutletResult", ['p2_pa', 't2_k', 'mach2'])


def fanno_outlet(*, mass_kg_s, p1_pa, t1_k, diameter_m, loss_number, k, r_j_kg_k):
    """State at the end of a pipe from the flow and the state at its inlet.

    Model: Fanno flow over the loss number.

    Arguments:
        mass_kg_s: Mass flow. [kg/s] Range [1e-12;1e6].
        p1_pa: Static pressure at the inlet, absolute. [Pa] Range [1;1e8].
        t1_k: Static temperature at the inlet. [K] Range [50;2000].
        diameter_m: Inner diameter. [m] Range [1e-6;10].
        loss_number: f L/d, the loss coefficients of fittings added. Range [0;1e9].
        k: Ratio of specific heats; 1.4 for air. Range (1;2].
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].

    Returns:
        p2_pa: Static pressure at the end, absolute. [Pa]
        t2_k: Static temperature at the end. [K]
        mach2: Mach number at the end.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: choked: the pipe is too long for so much flow, or the inlet is supersonic

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 11.5.1
    """
    return _runtime.call("freeair_fanno_outlet")((mass_kg_s, p1_pa, t1_k, diameter_m, loss_number, k, r_j_kg_k,), FannoOutletResult)


def ring_main_share(*, length1_m, diameter1_m, length2_m, diameter2_m):
    """Share of a flow that takes one of two parallel legs.

    Model: 1 / (1 + sqrt((L1/d1^5) / (L2/d2^5))), the same friction factor in both.

    Arguments:
        length1_m: Length of the leg. [m] Range [0.001;1e6].
        diameter1_m: Its inner diameter. [m] Range [0.001;10].
        length2_m: Length of the other. [m] Range [0.001;1e6].
        diameter2_m: Its inner diameter. [m] Range [0.001;10].

    Returns:
        share: Share that takes the leg.

    Raises:
        DomainError: an input is outside its range

    Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, 8.5.2, parallel pipes
    """
    return _runtime.call("freeair_ring_main_share")((length1_m, diameter1_m, length2_m, diameter2_m,))


RingMainFlowsResult = _collections.namedtuple(
    "RingMainFlowsResult", ['flow_kg_s', 'p_pa', 'lowest_pa'])


def ring_main_flows(*, length_m, diameter_m, offtake_kg_s, roughness_m, p_supply_pa, t_k, viscosity_pas=None, r_j_kg_k=None):
    """Flows and pressures of a ring.

    Model: the flow into the first piece is sought for which the differences of p^2 around the ring
    add up to nothing (what the method of Hardy Cross corrects step by step), by the false position
    method, at most 200 steps, to rounding; friction factors as freeair_pipe_friction_factor.

    Arguments:
        length_m: Length of each piece. [m] Range [0;1e6].
        diameter_m: Inner diameter of each piece. [m] Range [0.001;10].
        offtake_kg_s: Mass flow taken at the end of each piece; that of the last is taken at the
            supply itself. [kg/s] Range [0;1e4].
        roughness_m: Roughness of the inside; 45e-6 for steel. [m] Range [0;0.0001].
        p_supply_pa: Pressure at the supply, absolute. [Pa] Range [1000;1e8].
        t_k: Temperature. [K] Range [50;2000].
        viscosity_pas: Dynamic viscosity. [Pa s] Range [1e-8;1]. Default: air at t_k, US Standard
            Atmosphere 1976.
        r_j_kg_k: Specific gas constant. [J/(kg K)] Range [10;10000]. Default: 287.05287, dry air.

    Returns:
        flow_kg_s: Mass flow in each piece, negative against the order of the list. [kg/s]
        p_pa: Pressure at the end of each piece, absolute. [Pa]
        lowest_pa: The lowest of them. [Pa]

    Raises:
        DataError: n is outside its range
        DomainError: an input is outside its range, or no piece has a length
        NoSolutionError: the ring cannot bring so much

    Source: Cross, Analysis of flow in networks of conduits or conductors, University of Illinois
    Bulletin 286 (1936)
    """
    return _runtime.call("freeair_ring_main_flows")((length_m, diameter_m, offtake_kg_s, roughness_m, p_supply_pa, t_k, viscosity_pas, r_j_kg_k,), RingMainFlowsResult)


RingMainDeadEndResult = _collections.namedtuple(
    "RingMainDeadEndResult", ['flow_kg_s', 'p_pa', 'lowest_pa'])


def ring_main_dead_end(*, length_m, diameter_m, offtake_kg_s, roughness_m, p_supply_pa, t_k, viscosity_pas=None, r_j_kg_k=None):
    """Flows and pressures of a main that ends dead.

    Model: each piece carries what is taken at its end and behind it.

    Arguments:
        length_m: Length of each piece. [m] Range [0;1e6].
        diameter_m: Inner diameter of each piece. [m] Range [0.001;10].
        offtake_kg_s: Mass flow taken at the end of each piece. [kg/s] Range [0;1e4].
        roughness_m: Roughness of the inside; 45e-6 for steel. [m] Range [0;0.0001].
        p_supply_pa: Pressure at the supply, absolute. [Pa] Range [1000;1e8].
        t_k: Temperature. [K] Range [50;2000].
        viscosity_pas: Dynamic viscosity. [Pa s] Range [1e-8;1]. Default: air at t_k, US Standard
            Atmosphere 1976.
        r_j_kg_k: Specific gas constant. [J/(kg K)] Range [10;10000]. Default: 287.05287, dry air.

    Returns:
        flow_kg_s: Mass flow in each piece. [kg/s]
        p_pa: Pressure at the end of each piece, absolute. [Pa]
        lowest_pa: The lowest of them, at the dead end. [Pa]

    Raises:
        DataError: n is outside its range
        DomainError: an input is outside its range
        NoSolutionError: the main cannot bring so much

    Source: algebra: continuity and the isothermal equation without acceleration
    """
    return _runtime.call("freeair_ring_main_dead_end")((length_m, diameter_m, offtake_kg_s, roughness_m, p_supply_pa, t_k, viscosity_pas, r_j_kg_k,), RingMainDeadEndResult)


def compression_work_isothermal(*, r_j_kg_k, t1_k, p1_pa, p2_pa):
    """Isothermal work per kilogram.

    Model: w = R T1 ln(p2/p1). The least that compression can cost from p1, T1 to p2.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].

    Returns:
        w_j_kg: Work. [J/kg]

    Raises:
        DomainError: an input is outside its range

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work
    of compression
    """
    return _runtime.call("freeair_compression_work_isothermal")((r_j_kg_k, t1_k, p1_pa, p2_pa,))


def compression_work_isentropic(*, r_j_kg_k, t1_k, p1_pa, p2_pa, k):
    """Isentropic work per kilogram.

    Model: w = k/(k-1) R T1 ((p2/p1)^((k-1)/k) - 1), constant specific heats, no friction, no heat.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].

    Returns:
        w_j_kg: Work. [J/kg]

    Raises:
        DomainError: an input is outside its range

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work
    of compression
    """
    return _runtime.call("freeair_compression_work_isentropic")((r_j_kg_k, t1_k, p1_pa, p2_pa, k,))


def compression_work_polytropic(*, r_j_kg_k, t1_k, p1_pa, p2_pa, n):
    """Polytropic work per kilogram.

    Model: w = n/(n-1) R T1 ((p2/p1)^((n-1)/n) - 1), which is R T1 ln(p2/p1) at n = 1.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent; 1 is isothermal. Range [0.5;10].

    Returns:
        w_j_kg: Work. [J/kg]

    Raises:
        DomainError: an input is outside its range

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work
    of compression
    """
    return _runtime.call("freeair_compression_work_polytropic")((r_j_kg_k, t1_k, p1_pa, p2_pa, n,))


def compression_free_air_work(*, p_free_pa, t_free_k, t1_k, p1_pa, p2_pa, n):
    """Work per cubic metre of free air.

    Model: w = p_free (t1/t_free) n/(n-1) ((p2/p1)^((n-1)/n) - 1): the polytropic work of the mass
    that fills one cubic metre at the free-air state. n = 1 is isothermal, n = k isentropic.

    Arguments:
        p_free_pa: Pressure of the free air, absolute. [Pa] Range [1;1e8].
        t_free_k: Temperature of the free air. [K] Range [1;5000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].

    Returns:
        w_j_m3: Work per cubic metre. [J/m3]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: polytropic work times the density of the free air
    """
    return _runtime.call("freeair_compression_free_air_work")((p_free_pa, t_free_k, t1_k, p1_pa, p2_pa, n,))


def compression_power_from_mass_flow(*, r_j_kg_k, t1_k, p1_pa, p2_pa, n, m_kg_s, efficiency):
    """Power from a mass flow.

    Model: P = m w / efficiency, w the polytropic work per kilogram.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent; 1 isothermal, k isentropic. Range [0.5;10].
        m_kg_s: Mass flow. [kg/s] Range [0;1e6].
        efficiency: All between this work and the power wanted, multiplied; 1 for the ideal. Range
            [0.001;1].

    Returns:
        power_w: Power. [W]

    Raises:
        DomainError: an input is outside its range

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work
    of compression
    """
    return _runtime.call("freeair_compression_power_from_mass_flow")((r_j_kg_k, t1_k, p1_pa, p2_pa, n, m_kg_s, efficiency,))


def compression_power_from_free_air(*, p_free_pa, t_free_k, t1_k, p1_pa, p2_pa, n, fad_m3_s, efficiency):
    """Power from a flow of free air.

    Model: P = fad w / efficiency, w as freeair_compression_free_air_work.

    Arguments:
        p_free_pa: Pressure of the free air, absolute. [Pa] Range [1;1e8].
        t_free_k: Temperature of the free air. [K] Range [1;5000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent; 1 isothermal, k isentropic. Range [0.5;10].
        fad_m3_s: Free air flow. [m3/s] Range [0;1e6].
        efficiency: All between this work and the power wanted, multiplied; 1 for the ideal. Range
            [0.001;1].

    Returns:
        power_w: Power. [W]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: free air flow times work per cubic metre of free air
    """
    return _runtime.call("freeair_compression_power_from_free_air")((p_free_pa, t_free_k, t1_k, p1_pa, p2_pa, n, fad_m3_s, efficiency,))


def compression_temperature(*, t1_k, p1_pa, p2_pa, n):
    """Discharge temperature.

    Model: T2 = T1 (p2/p1)^((n-1)/n).

    Arguments:
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent; k for isentropic. Range [0.5;10].

    Returns:
        t2_k: Discharge temperature. [K]

    Raises:
        DomainError: an input is outside its range

    Caution: Discharge parts burn; let them cool.

    Caution: Oil mist and hot carbon can ignite at high discharge temperature.

    Source: algebra: p v^n = constant with p v = R T
    """
    return _runtime.call("freeair_compression_temperature")((t1_k, p1_pa, p2_pa, n,))


def compression_pressure_from_temperature(*, t1_k, t2_k, p1_pa, n):
    """Pressure at which a temperature is reached.

    Model: p2 = p1 (T2/T1)^(n/(n-1)).

    Arguments:
        t1_k: Inlet temperature. [K] Range [1;5000].
        t2_k: Temperature reached. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent; k for isentropic. Range [0.5;10].

    Returns:
        p2_pa: Pressure, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: n is 1, or the pressure is not from 1 Pa to 1e8 Pa

    Source: algebra: p v^n = constant with p v = R T
    """
    return _runtime.call("freeair_compression_pressure_from_temperature")((t1_k, t2_k, p1_pa, n,))


def compression_exponent_from_temperatures(*, p1_pa, t1_k, p2_pa, t2_k):
    """Polytropic exponent from measured temperatures.

    Model: (n-1)/n = ln(T2/T1) / ln(p2/p1). The gas temperature inside the cylinder is meant; a
    thermometer in the discharge pipe reads lower, and so does the exponent.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        t2_k: Discharge temperature. [K] Range [1;5000].

    Returns:
        n: Polytropic exponent.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pressures are equal, or the exponent is not from 0.5 to 10

    Source: algebra: p v^n = constant with p v = R T
    """
    return _runtime.call("freeair_compression_exponent_from_temperatures")((p1_pa, t1_k, p2_pa, t2_k,))


def compression_exponent_from_volumes(*, p1_pa, v1_m3, p2_pa, v2_m3):
    """Polytropic exponent from two points of a card.

    Model: n = ln(p2/p1) / ln(V1/V2), for the same trapped mass at both points.
    freeair_indicator_exponent fits more than two points.

    Arguments:
        p1_pa: Pressure at the first point, absolute. [Pa] Range [1;1e8].
        v1_m3: Volume at the first point, clearance included. [m3] Range [1e-12;1e6].
        p2_pa: Pressure at the second point, absolute. [Pa] Range [1;1e8].
        v2_m3: Volume at the second point, clearance included. [m3] Range [1e-12;1e6].

    Returns:
        n: Polytropic exponent.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the volumes are equal, or the exponent is not from 0.5 to 10

    Source: definition
    """
    return _runtime.call("freeair_compression_exponent_from_volumes")((p1_pa, v1_m3, p2_pa, v2_m3,))


def compression_heat_rejected(*, r_j_kg_k, t1_k, p1_pa, p2_pa, n, k):
    """Heat given up by the gas during polytropic compression, per kilogram.

    Model: q = w (k-n) / (n (k-1)), w the polytropic work: cv (k-n)/(n-1) (T2-T1) for n other than
    1, R T1 ln(p2/p1) at n = 1, zero at n = k, negative above.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].

    Returns:
        q_j_kg: Heat rejected. [J/kg]

    Raises:
        DomainError: an input is outside its range

    Source: Rajput, A Textbook of Internal Combustion Engines, chapter 20, heat rejected during
    polytropic compression
    """
    return _runtime.call("freeair_compression_heat_rejected")((r_j_kg_k, t1_k, p1_pa, p2_pa, n, k,))


def performance_efficiency_isothermal(*, r_j_kg_k, t1_k, p1_pa, p2_pa, m_kg_s, power_w):
    """Isothermal efficiency from mass flow and power.

    Model: m R T1 ln(p2/p1) / P. With shaft power the overall isothermal efficiency of the machine,
    with indicated power that of its cycle.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [1;1e8].
        m_kg_s: Mass flow delivered. [kg/s] Range [0;1e6].
        power_w: Real power. [W] Range [0.001;1e12].

    Returns:
        efficiency: Isothermal efficiency.

    Raises:
        DomainError: an input is outside its range, or p2_pa is not above p1_pa

    Source: ISO 1217:2009, Displacement compressors - Acceptance tests, terms and definitions (from
    memory)
    """
    return _runtime.call("freeair_performance_efficiency_isothermal")((r_j_kg_k, t1_k, p1_pa, p2_pa, m_kg_s, power_w,))


def performance_efficiency_isentropic(*, r_j_kg_k, t1_k, p1_pa, p2_pa, k, m_kg_s, power_w):
    """Isentropic efficiency from mass flow and power.

    Model: m k/(k-1) R T1 ((p2/p1)^((k-1)/k) - 1) / P.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [1;1e8].
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].
        m_kg_s: Mass flow delivered. [kg/s] Range [0;1e6].
        power_w: Real power. [W] Range [0.001;1e12].

    Returns:
        efficiency: Isentropic efficiency.

    Raises:
        DomainError: an input is outside its range, or p2_pa is not above p1_pa

    Source: ISO 1217:2009, Displacement compressors - Acceptance tests, terms and definitions (from
    memory)
    """
    return _runtime.call("freeair_performance_efficiency_isentropic")((r_j_kg_k, t1_k, p1_pa, p2_pa, k, m_kg_s, power_w,))


def performance_efficiency_isothermal_from_exponent(*, p1_pa, p2_pa, n):
    """Isothermal efficiency of a polytropic compression.

    Model: ln(p2/p1) / (n/(n-1) ((p2/p1)^((n-1)/n) - 1)): isothermal over polytropic work, valves
    ideal. Below n = 1 it is above 1.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].

    Returns:
        efficiency: Isothermal efficiency.

    Raises:
        DomainError: an input is outside its range, or p2_pa is not above p1_pa

    Source: Joel, Basic Engineering Thermodynamics, chapter 14, isothermal efficiency
    """
    return _runtime.call("freeair_performance_efficiency_isothermal_from_exponent")((p1_pa, p2_pa, n,))


def performance_efficiency_isentropic_from_temperatures(*, k, p1_pa, t1_k, p2_pa, t2_k):
    """Isentropic efficiency from temperatures.

    Model: T1 ((p2/p1)^((k-1)/k) - 1) / (T2 - T1), for a machine that loses no heat between the two
    thermometers. A cooled cylinder looks better than it is.

    Arguments:
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [1;1e8].
        t2_k: Discharge temperature, above t1_k. [K] Range [1;5000].

    Returns:
        efficiency: Isentropic efficiency.

    Raises:
        DomainError: an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k

    Source: Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a compressor
    """
    return _runtime.call("freeair_performance_efficiency_isentropic_from_temperatures")((k, p1_pa, t1_k, p2_pa, t2_k,))


def performance_efficiency_polytropic_from_temperatures(*, k, p1_pa, t1_k, p2_pa, t2_k):
    """Polytropic (small-stage) efficiency from temperatures.

    Model: (k-1)/k ln(p2/p1) / ln(T2/T1), for a machine that loses no heat between the two
    thermometers.

    Arguments:
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [1;1e8].
        t2_k: Discharge temperature, above t1_k. [K] Range [1;5000].

    Returns:
        efficiency: Polytropic efficiency.

    Raises:
        DomainError: an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k

    Source: algebra: ratio of the exponents (k-1)/k and (n-1)/n
    """
    return _runtime.call("freeair_performance_efficiency_polytropic_from_temperatures")((k, p1_pa, t1_k, p2_pa, t2_k,))


def performance_efficiency_mechanical(*, indicated_w, shaft_w):
    """Mechanical efficiency.

    Model: indicated power over shaft power.

    Arguments:
        indicated_w: Indicated power. [W] Range [0;1e12].
        shaft_w: Shaft power. [W] Range [0.001;1e12].

    Returns:
        efficiency: Mechanical efficiency.

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_performance_efficiency_mechanical")((indicated_w, shaft_w,))


def performance_efficiency_overall(*, ideal_w, input_w):
    """Overall efficiency.

    Model: ideal power over the power put in. The ideal, isothermal or isentropic, and the place
    where the input is measured, shaft or terminals, name the efficiency.

    Arguments:
        ideal_w: Ideal power for the air delivered. [W] Range [0;1e12].
        input_w: Power put in. [W] Range [0.001;1e12].

    Returns:
        efficiency: Overall efficiency.

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_performance_efficiency_overall")((ideal_w, input_w,))


def performance_specific_power(*, power_w, fad_m3_s):
    """Specific power: energy for each cubic metre of free air.

    Model: P / fad. 1 kW/(m3/min) is 60 kJ/m3; the trade's kW per 100 cfm is 21.19 kJ/m3.

    Arguments:
        power_w: Power, shaft or electrical. [W] Range [0;1e12].
        fad_m3_s: Free air delivery. [m3/s] Range [1e-9;1e6].

    Returns:
        specific_j_m3: Specific power. [J/m3]

    Raises:
        DomainError: an input is outside its range

    Source: ISO 1217:2009, specific energy requirement (from memory)
    """
    return _runtime.call("freeair_performance_specific_power")((power_w, fad_m3_s,))


def performance_saving_from_pressure(*, p1_pa, p2_pa, p2_reduced_pa, n):
    """Fraction of the work saved by a lower discharge pressure.

    Model: 1 - w(p1, p2_reduced) / w(p1, p2), w the polytropic work; the same air delivered at both
    pressures. The air that is then used falls too, which is not counted. Negative when
    p2_reduced_pa is above p2_pa.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure now, absolute, above p1_pa. [Pa] Range [1;1e8].
        p2_reduced_pa: Discharge pressure then, absolute, not below p1_pa. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].

    Returns:
        saving: Fraction saved.

    Raises:
        DomainError: an input is outside its range, or the pressures are not in order

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, reducing the
    pressure setting
    """
    return _runtime.call("freeair_performance_saving_from_pressure")((p1_pa, p2_pa, p2_reduced_pa, n,))


def performance_temperature_from_efficiency(*, t1_k, p1_pa, p2_pa, k, efficiency):
    """Discharge temperature of an uncooled machine from its isentropic efficiency.

    Model: T2 = T1 (1 + ((p2/p1)^((k-1)/k) - 1) / efficiency).

    Arguments:
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].
        efficiency: Isentropic efficiency. Range [0.001;1].

    Returns:
        t2_k: Discharge temperature. [K]

    Raises:
        DomainError: an input is outside its range, or p2_pa is below p1_pa

    Caution: Discharge parts burn; let them cool.

    Caution: Oil mist and hot carbon can ignite at high discharge temperature.

    Source: Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a compressor
    """
    return _runtime.call("freeair_performance_temperature_from_efficiency")((t1_k, p1_pa, p2_pa, k, efficiency,))


def performance_heat_from_power(*, power_w, m_kg_s, cp_j_kg_k, t1_k, t2_k):
    """Heat that a machine gives up besides the warm air: first law from power and temperatures.

    Model: Q = P - m cp (T2 - T1). With shaft power: cylinder walls, crankcase and the coolers ahead
    of T2.

    Arguments:
        power_w: Power put in. [W] Range [0;1e12].
        m_kg_s: Mass flow. [kg/s] Range [0;1e6].
        cp_j_kg_k: Specific heat at constant pressure; 1005 for air. [J/(kg K)] Range [10;100000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        t2_k: Discharge temperature. [K] Range [1;5000].

    Returns:
        heat_w: Heat given up. [W]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: first law for steady flow
    """
    return _runtime.call("freeair_performance_heat_from_power")((power_w, m_kg_s, cp_j_kg_k, t1_k, t2_k,))


def multistage_pressure(*, p1_pa, p2_pa, stages, after):
    """Interstage pressure of equal stage ratios.

    Model: p = p1 (p2/p1)^(after/stages). Least work when every stage starts at the same temperature
    with the same exponent and no pressure is lost between stages.

    Arguments:
        p1_pa: Inlet pressure of the first stage, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure of the last stage, absolute. [Pa] Range [1;1e8].
        stages: Number of stages. Range [1;100].
        after: Stage whose discharge pressure is wanted, at most stages; 0 gives p1. Range [0;100].

    Returns:
        p_pa: Pressure after that stage, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range, or after is above stages

    Source: Joel, Basic Engineering Thermodynamics, chapter 14, multistage compression
    """
    return _runtime.call("freeair_multistage_pressure")((p1_pa, p2_pa, stages, after,))


def multistage_pressure_from_temperatures(*, p1_pa, p2_pa, t1_k, t3_k, n, loss):
    """Interstage pressure of two stages with imperfect intercooling.

    Model: p = sqrt(p1 p2 / (1 - loss)) (T3/T1)^(n/(2(n-1))): least total work for the same exponent
    in both stages and a second inlet at T3 and (1 - loss) p.

    Arguments:
        p1_pa: Inlet pressure of the first stage, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure of the second stage, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature of the first stage. [K] Range [1;5000].
        t3_k: Inlet temperature of the second stage. [K] Range [1;5000].
        n: Polytropic exponent. Range [1.01;10].
        loss: Fraction of the interstage pressure lost in the intercooler. Range [0;0.9].

    Returns:
        p_pa: Discharge pressure of the first stage, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: one of the stages would have to expand: cooling this poor does not pay

    Source: algebra: derivative of the work of two stages set to zero
    """
    return _runtime.call("freeair_multistage_pressure_from_temperatures")((p1_pa, p2_pa, t1_k, t3_k, n, loss,))


def multistage_work_equal(*, r_j_kg_k, t1_k, p1_pa, p2_pa, n, stages):
    """Work per kilogram of equal stages with intercooling to the inlet temperature.

    Model: w = N n/(n-1) R T1 ((p2/p1)^((n-1)/(N n)) - 1).

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature of every stage. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].
        stages: Number of stages N. Range [1;100].

    Returns:
        w_j_kg: Work of all stages. [J/kg]

    Raises:
        DomainError: an input is outside its range

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, multistage with
    intercooling
    """
    return _runtime.call("freeair_multistage_work_equal")((r_j_kg_k, t1_k, p1_pa, p2_pa, n, stages,))


def multistage_power_from_mass_flow(*, r_j_kg_k, t1_k, p1_pa, p2_pa, n, stages, m_kg_s, efficiency):
    """Power of equal stages with intercooling to the inlet temperature, from a mass flow.

    Model: P = m w / efficiency, w as freeair_multistage_work_equal.

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature of every stage. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].
        stages: Number of stages. Range [1;100].
        m_kg_s: Mass flow. [kg/s] Range [0;1e6].
        efficiency: All between this work and the power wanted, multiplied; 1 for the ideal. Range
            [0.001;1].

    Returns:
        power_w: Power of all stages. [W]

    Raises:
        DomainError: an input is outside its range

    Source: Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression
    """
    return _runtime.call("freeair_multistage_power_from_mass_flow")((r_j_kg_k, t1_k, p1_pa, p2_pa, n, stages, m_kg_s, efficiency,))


def multistage_power_from_free_air(*, p_free_pa, t_free_k, t1_k, p1_pa, p2_pa, n, stages, fad_m3_s, efficiency):
    """Power of equal stages with intercooling to the inlet temperature, from a flow of free air.

    Model: P = fad p_free (t1/t_free) N n/(n-1) ((p2/p1)^((n-1)/(N n)) - 1) / efficiency.

    Arguments:
        p_free_pa: Pressure of the free air, absolute. [Pa] Range [1;1e8].
        t_free_k: Temperature of the free air. [K] Range [1;5000].
        t1_k: Inlet temperature of every stage. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].
        stages: Number of stages N. Range [1;100].
        fad_m3_s: Free air flow. [m3/s] Range [0;1e6].
        efficiency: All between this work and the power wanted, multiplied; 1 for the ideal. Range
            [0.001;1].

    Returns:
        power_w: Power of all stages. [W]

    Raises:
        DomainError: an input is outside its range

    Source: Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression
    """
    return _runtime.call("freeair_multistage_power_from_free_air")((p_free_pa, t_free_k, t1_k, p1_pa, p2_pa, n, stages, fad_m3_s, efficiency,))


def multistage_saving(*, p1_pa, p2_pa, n, stages):
    """Fraction of the single-stage work that equal stages with perfect intercooling save.

    Model: 1 - w(stages) / w(1), both between the same pressures with the same exponent.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].
        stages: Number of stages. Range [1;100].

    Returns:
        saving: Fraction saved; 0 for equal pressures.

    Raises:
        DomainError: an input is outside its range

    Source: Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression
    """
    return _runtime.call("freeair_multistage_saving")((p1_pa, p2_pa, n, stages,))


def multistage_optimum(*, p1_pa, p2_pa, t_in_k, n, drop_pa):
    """Interstage pressures of least work, for any inlet temperatures, exponents and pressure losses.

    Model: the total work is convex in the logarithms of the interstage pressures p_i, and least
    where T_out,i / p_i = T_out,i+1 / (p_i - drop_i+1). Given the first pressure this yields all
    others and a last one that grows with the first, so one safeguarded Newton iteration, never more
    than 200 steps, finds the only solution.

    Arguments:
        p1_pa: Pressure ahead of the first stage, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure of the last stage, absolute. [Pa] Range [1;1e8].
        t_in_k: Inlet temperature of each stage. [K] Range [1;5000].
        n: Polytropic exponent of each stage. Range [1.01;10].
        drop_pa: Pressure lost ahead of each stage: filter, then intercoolers. [Pa] Range [0;1e8].

    Returns:
        p_out_pa: Discharge pressure of each stage, absolute; the last is p2_pa. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: a stage would have to expand: it does not pay, leave it out; or a drop
            takes more than 0.9 of the pressure or leaves less than 1 Pa

    Source: algebra: derivatives of the total work set to zero
    """
    return _runtime.call("freeair_multistage_optimum")((p1_pa, p2_pa, t_in_k, n, drop_pa,))


MultistageWorkResult = _collections.namedtuple(
    "MultistageWorkResult", ['stage_j_kg', 't_out_k', 'w_j_kg'])


def multistage_work(*, r_j_kg_k, p1_pa, t_in_k, n, drop_pa, p_out_pa):
    """Work and temperatures of stages with any pressures, temperatures, exponents and losses.

    Model: each stage compresses from the discharge pressure of the one before, less the drop ahead
    of it, with polytropic work n/(n-1) R T_in (r^((n-1)/n) - 1). Heat of an intercooler per
    kilogram: cp (t_out of the stage before it - t_in of the stage after it).

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        p1_pa: Pressure ahead of the first stage, absolute. [Pa] Range [1;1e8].
        t_in_k: Inlet temperature of each stage. [K] Range [1;5000].
        n: Polytropic exponent of each stage. Range [0.5;10].
        drop_pa: Pressure lost ahead of each stage: filter, then intercoolers. [Pa] Range [0;1e8].
        p_out_pa: Discharge pressure of each stage, absolute. [Pa] Range [1;1e8].

    Returns:
        stage_j_kg: Work of each stage. [J/kg]
        t_out_k: Discharge temperature of each stage. [K]
        w_j_kg: Work of all stages. [J/kg]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: a discharge pressure is below its stage's inlet, or a drop leaves less than
            1 Pa

    Source: algebra: sum of the polytropic works
    """
    return _runtime.call("freeair_multistage_work")((r_j_kg_k, p1_pa, t_in_k, n, drop_pa, p_out_pa,), MultistageWorkResult)


def multistage_intercooler_heat(*, m_kg_s, cp_j_kg_k, t1_k, p1_pa, p2_pa, n, t_cooled_k):
    """Heat taken out by an intercooler.

    Model: Q = m cp (T1 (p2/p1)^((n-1)/n) - t_cooled). Dry air; condensing water adds its latent
    heat.

    Arguments:
        m_kg_s: Mass flow. [kg/s] Range [0;1e6].
        cp_j_kg_k: Specific heat at constant pressure; 1005 for air. [J/(kg K)] Range [10;100000].
        t1_k: Inlet temperature of the stage ahead of the cooler. [K] Range [1;5000].
        p1_pa: Inlet pressure of that stage, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure of that stage, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent of that stage. Range [0.5;10].
        t_cooled_k: Temperature after the cooler. [K] Range [1;5000].

    Returns:
        heat_w: Heat. [W]

    Raises:
        DomainError: an input is outside its range

    Source: Nag, Basic and Applied Thermodynamics, chapter 19, heat rejected in the intercooler
    """
    return _runtime.call("freeair_multistage_intercooler_heat")((m_kg_s, cp_j_kg_k, t1_k, p1_pa, p2_pa, n, t_cooled_k,))


def multistage_stages(*, t1_k, p1_pa, p2_pa, n, t_max_k):
    """Number of equal stages that keep the discharge temperature within a limit.

    Model: the smallest N with T1 (p2/p1)^((n-1)/(N n)) not above t_max, to within 1e-12 of N;
    perfect intercooling.

    Arguments:
        t1_k: Inlet temperature of every stage. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute. [Pa] Range [1;1e8].
        n: Polytropic exponent. Range [0.5;10].
        t_max_k: Highest discharge temperature wanted. [K] Range [1;5000].

    Returns:
        stages: Number of stages.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no number of stages up to 100 keeps the limit

    Caution: Oil mist and hot carbon can ignite at high discharge temperature.

    Source: algebra: discharge temperature of equal stages
    """
    return _runtime.call("freeair_multistage_stages")((t1_k, p1_pa, p2_pa, n, t_max_k,))


RealCompressionIsentropicResult = _collections.namedtuple(
    "RealCompressionIsentropicResult", ['w_j_kg', 't2_k'])


def real_compression_isentropic(*, p1_pa, t1_k, p2_pa):
    """Isentropic work and end temperature.

    Model: s(p2, T2) = s(p1, T1), w = h(p2, T2) - h(p1, T1); between close pressures w is the
    integral of v dp at constant entropy, 8 points of Gauss, so that no digit is lost. Negative
    where the gas expands.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [100;1e8].
        t1_k: Inlet temperature. [K] Range [133;2000].
        p2_pa: Discharge pressure, absolute. [Pa] Range [100;1e8].

    Returns:
        w_j_kg: Work of the steady flow. [J/kg]
        t2_k: Discharge temperature. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the end is above 2000 K, or colder than the dew point

    Caution: Discharge parts burn; let them cool.

    Caution: Oil mist and hot carbon can ignite at high discharge temperature.

    Source: algebra: first and second law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J.
    Phys. Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_compression_isentropic")((p1_pa, t1_k, p2_pa,), RealCompressionIsentropicResult)


RealCompressionIsothermalResult = _collections.namedtuple(
    "RealCompressionIsothermalResult", ['w_j_kg', 'q_j_kg'])


def real_compression_isothermal(*, p1_pa, t_k, p2_pa):
    """Isothermal work and the heat that leaves: the least that compression can cost.

    Model: q = T (s1 - s2), w = h2 - h1 + q; between close pressures w is the integral of v dp, 8
    points of Gauss.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [100;1e8].
        t_k: Temperature. [K] Range [133;2000].
        p2_pa: Discharge pressure, absolute. [Pa] Range [100;1e8].

    Returns:
        w_j_kg: Work of the steady flow. [J/kg]
        q_j_kg: Heat rejected; larger than w, for real air also gives up enthalpy. [J/kg]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: first and second law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J.
    Phys. Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_compression_isothermal")((p1_pa, t_k, p2_pa,), RealCompressionIsothermalResult)


RealCompressionFromExponentResult = _collections.namedtuple(
    "RealCompressionFromExponentResult", ['w_j_kg', 'q_j_kg', 't2_k'])


def real_compression_from_exponent(*, p1_pa, t1_k, p2_pa, n):
    """Work, heat and end temperature of a compression p v^n = constant, as a card shows it.

    Model: v2 = v1 (p1/p2)^(1/n), w = n/(n-1) (p2 v2 - p1 v1), p1 v1 ln(p2/p1) at n = 1; T2 from p2
    and v2, q = w - (h2 - h1).

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [100;1e8].
        t1_k: Inlet temperature. [K] Range [133;2000].
        p2_pa: Discharge pressure, absolute. [Pa] Range [100;1e8].
        n: Exponent of the volume. Range [0.5;10].

    Returns:
        w_j_kg: Work of the steady flow. [J/kg]
        q_j_kg: Heat rejected on the way. [J/kg]
        t2_k: Discharge temperature. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the end is not from 133 K to 2000 K

    Caution: Discharge parts burn; let them cool.

    Caution: Oil mist and hot carbon can ignite at high discharge temperature.

    Source: algebra: integral of v dp; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref.
    Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_compression_from_exponent")((p1_pa, t1_k, p2_pa, n,), RealCompressionFromExponentResult)


def real_compression_outlet(*, p1_pa, t1_k, p2_pa, w_j_kg, q_j_kg):
    """Temperature after a work was done on the air and a heat taken out of it.

    Model: h(p2, T2) = h(p1, T1) + w - q. Without work and heat this is throttling; with p2 = p1 and
    heat alone a cooler.

    Arguments:
        p1_pa: Pressure before, absolute. [Pa] Range [100;1e8].
        t1_k: Temperature before. [K] Range [133;2000].
        p2_pa: Pressure after, absolute. [Pa] Range [100;1e8].
        w_j_kg: Work done on the air; 0 in a valve. [J/kg] Range [-5e6;5e6].
        q_j_kg: Heat taken out; 0 where nothing cools. [J/kg] Range [-5e6;5e6].

    Returns:
        t2_k: Temperature after. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the end is above 2000 K, or colder than the dew point

    Source: algebra: first law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem.
    Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_compression_outlet")((p1_pa, t1_k, p2_pa, w_j_kg, q_j_kg,))


def real_compression_throttled(*, p1_pa, t1_k, p2_pa):
    """Temperature behind a valve: what throttling makes of the air.

    Model: h(p2, T2) = h(p1, T1), the Joule-Thomson effect over the whole way. Velocities are small
    on both sides.

    Arguments:
        p1_pa: Pressure before, absolute. [Pa] Range [100;1e8].
        t1_k: Temperature before. [K] Range [133;2000].
        p2_pa: Pressure after, absolute. [Pa] Range [100;1e8].

    Returns:
        t2_k: Temperature after. [K]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the end is above 2000 K, or colder than the dew point

    Source: algebra: first law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem.
    Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_compression_throttled")((p1_pa, t1_k, p2_pa,))


def real_compression_efficiency(*, p1_pa, t1_k, p2_pa, t2_k):
    """Isentropic efficiency from pressures and temperatures.

    Model: (h2s - h1)/(h2 - h1), h2s at p2 and the entropy of the inlet; for a machine that loses no
    heat between the two thermometers. A cooled cylinder looks better than it is.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [100;1e8].
        t1_k: Inlet temperature. [K] Range [133;2000].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [100;1e8].
        t2_k: Discharge temperature, above t1_k. [K] Range [133;2000].

    Returns:
        efficiency: Isentropic efficiency.

    Raises:
        DomainError: an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
        NoSolutionError: the isentropic end is above 2000 K, or the enthalpy does not rise

    Source: Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a
    compressor; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_compression_efficiency")((p1_pa, t1_k, p2_pa, t2_k,))


RealCompressionStagesResult = _collections.namedtuple(
    "RealCompressionStagesResult", ['stage_j_kg', 't_out_k', 'cooler_j_kg', 'w_j_kg'])


def real_compression_stages(*, p1_pa, t_in_k, efficiency, drop_pa, p_out_pa):
    """Work, temperatures and cooling of several stages.

    Model: each stage compresses from the discharge pressure of the one before, less the drop ahead
    of it, with the isentropic work over the stage's efficiency, no heat lost; the cooler ahead of a
    stage takes h(p_out, t_out) of the stage before less h(inlet, t_in) of its own.

    Arguments:
        p1_pa: Pressure ahead of the first stage, absolute. [Pa] Range [100;1e8].
        t_in_k: Inlet temperature of each stage. [K] Range [133;2000].
        efficiency: Isentropic efficiency of each stage. Range [0.01;1].
        drop_pa: Pressure lost ahead of each stage: filter, then coolers. [Pa] Range [0;1e8].
        p_out_pa: Discharge pressure of each stage, absolute. [Pa] Range [100;1e8].

    Returns:
        stage_j_kg: Work of each stage. [J/kg]
        t_out_k: Discharge temperature of each stage. [K]
        cooler_j_kg: Heat taken out ahead of each stage; 0 ahead of the first. [J/kg]
        w_j_kg: Work of all stages. [J/kg]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: a stage would have to expand, a drop leaves less than 100 Pa, or a stage
            ends above 2000 K

    Caution: Discharge parts burn; let them cool.

    Caution: Oil mist and hot carbon can ignite at high discharge temperature.

    Source: algebra: first law for steady flow; Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem.
    Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_compression_stages")((p1_pa, t_in_k, efficiency, drop_pa, p_out_pa,), RealCompressionStagesResult)


RealPolytropicExponentsResult = _collections.namedtuple(
    "RealPolytropicExponentsResult", ['volume_exponent', 'temperature_exponent', 'x', 'y'])


def real_polytropic_exponents(*, p_pa, t_k, efficiency):
    """Exponents of a polytropic path at one point, and the compressibility functions behind them.

    Model: m = Z R/cp (1/efficiency + X), T ~ p^m; 1/n = Y - m (1 + X), p v^n = constant, with X =
    T/v (dv/dT)_p - 1 and Y = -p/v (dv/dp)_T. With efficiency 1 the isentropic exponents. For an
    ideal gas X = 0, Y = 1, n = 1/(1 - m).

    Arguments:
        p_pa: Pressure, absolute. [Pa] Range [100;1e8].
        t_k: Temperature. [K] Range [133;2000].
        efficiency: Polytropic efficiency. Range [0.01;1].

    Returns:
        volume_exponent: n, of p v^n.
        temperature_exponent: m, of T ~ p^m.
        x: Compressibility function X.
        y: Compressibility function Y.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the losses heat the gas so much that its volume does not shrink

    Source: Schultz, The Polytropic Analysis of Centrifugal Compressors, J. Eng. Power 84 (1962) 69;
    derived in guide
    """
    return _runtime.call("freeair_real_polytropic_exponents")((p_pa, t_k, efficiency,), RealPolytropicExponentsResult)


RealPolytropicWorkResult = _collections.namedtuple(
    "RealPolytropicWorkResult", ['w_j_kg', 'head_j_kg', 't2_k'])


def real_polytropic_work(*, p1_pa, t1_k, p2_pa, efficiency):
    """Work, head and end temperature of a compression whose every step is equally efficient.

    Model: dT/T = m dp/p with m of freeair_real_polytropic_exponents(), head = integral of v dp,
    work = head/efficiency. Integrated over ln p by extrapolated midpoint steps (Gragg, Bulirsch,
    Stoer) to 1e-12, at most 2000 steps.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [100;1e8].
        t1_k: Inlet temperature. [K] Range [133;2000].
        p2_pa: Discharge pressure, absolute, not below p1_pa. [Pa] Range [100;1e8].
        efficiency: Polytropic efficiency. Range [0.01;1].

    Returns:
        w_j_kg: Work of the steady flow. [J/kg]
        head_j_kg: Polytropic head. [J/kg]
        t2_k: Discharge temperature. [K]

    Raises:
        DomainError: an input is outside its range, or p2_pa is below p1_pa
        NoSolutionError: the end is above 2000 K
        NoConvergenceError: not within the steps

    Caution: Discharge parts burn; let them cool.

    Caution: Oil mist and hot carbon can ignite at high discharge temperature.

    Source: definition of the polytropic efficiency; Lemmon, Jacobsen, Penoncello, Friend, J. Phys.
    Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_polytropic_work")((p1_pa, t1_k, p2_pa, efficiency,), RealPolytropicWorkResult)


RealPolytropicEfficiencyResult = _collections.namedtuple(
    "RealPolytropicEfficiencyResult", ['efficiency', 'head_j_kg'])


def real_polytropic_efficiency(*, p1_pa, t1_k, p2_pa, t2_k):
    """Polytropic efficiency and head from pressures and temperatures, along the path.

    Model: the efficiency with which freeair_real_polytropic_work() ends at t2_k, by the secant
    method to 1e-11, at most 40 steps.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [100;1e8].
        t1_k: Inlet temperature. [K] Range [133;2000].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [100;1e8].
        t2_k: Discharge temperature, above t1_k. [K] Range [133;2000].

    Returns:
        efficiency: Polytropic efficiency.
        head_j_kg: Polytropic head. [J/kg]

    Raises:
        DomainError: an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
        NoSolutionError: no efficiency from 0.001 to 5 leads there
        NoConvergenceError: not within the steps

    Source: definition of the polytropic efficiency; Lemmon, Jacobsen, Penoncello, Friend, J. Phys.
    Chem. Ref. Data 29 (2000) 331
    """
    return _runtime.call("freeair_real_polytropic_efficiency")((p1_pa, t1_k, p2_pa, t2_k,), RealPolytropicEfficiencyResult)


RealPolytropicSchultzResult = _collections.namedtuple(
    "RealPolytropicSchultzResult", ['efficiency', 'head_j_kg', 'volume_exponent', 'factor'])


def real_polytropic_schultz(*, p1_pa, t1_k, p2_pa, t2_k):
    """Polytropic efficiency and head from the end points, by Schultz.

    Model: n = ln(p2/p1)/ln(v1/v2), head = f n/(n-1) (p2 v2 - p1 v1), efficiency = head/(h2 - h1).
    The factor f = (h2s - h1)/(ns/(ns-1) (p2 v2s - p1 v1)), ns = ln(p2/p1)/ln(v1/v2s), makes the
    same shortcut exact for the isentropic path. From 1 bar and 20 degC at 90 % efficiency 0.0001
    below the path at a ratio of 3, 0.0007 at 10; more at low efficiency and high pressure: the
    guide has the table.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [100;1e8].
        t1_k: Inlet temperature. [K] Range [133;2000].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [100;1e8].
        t2_k: Discharge temperature, above t1_k. [K] Range [133;2000].

    Returns:
        efficiency: Polytropic efficiency.
        head_j_kg: Polytropic head. [J/kg]
        volume_exponent: n, of p v^n between the ends.
        factor: Correction factor f; 1 for an ideal gas of constant heat capacity.

    Raises:
        DomainError: an input is outside its range, or p2_pa or t2_k is not above p1_pa or t1_k
        NoSolutionError: the isentropic end is above 2000 K, or the enthalpy or the density does not
            rise

    Source: Schultz, The Polytropic Analysis of Centrifugal Compressors, J. Eng. Power 84 (1962) 69;
    ASME PTC 10-1997 (from memory)
    """
    return _runtime.call("freeair_real_polytropic_schultz")((p1_pa, t1_k, p2_pa, t2_k,), RealPolytropicSchultzResult)


def rotary_work(*, r_j_kg_k, t1_k, p1_pa, p2_pa, k, volume_ratio):
    """Work per kilogram of a machine with a built-in volume ratio.

    Model: isentropic compression to the built-in ratio u, then against the outlet pressure at
    constant volume: w = k/(k-1) R T1 (u^(1-k) - 1) + R T1 (p2/p1 - u^(-k)) u. With u = 1 it is R T1
    (p2/p1 - 1).

    Arguments:
        r_j_kg_k: Specific gas constant; 287.05 for dry air. [J/(kg K)] Range [10;10000].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Outlet pressure, absolute, not below p1_pa. [Pa] Range [1;1e8].
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].
        volume_ratio: Chamber where it opens over chamber where it closes, u. Range [0.05;1].

    Returns:
        w_j_kg: Work. [J/kg]

    Raises:
        DomainError: an input is outside its range, or p2_pa is below p1_pa

    Source: Joel, Basic Engineering Thermodynamics, chapter 14, blower and vane compressor
    """
    return _runtime.call("freeair_rotary_work")((r_j_kg_k, t1_k, p1_pa, p2_pa, k, volume_ratio,))


def rotary_volume_ratio(*, p1_pa, p2_pa, k):
    """Built-in volume ratio that meets an outlet pressure.

    Model: u = (p1/p2)^(1/k): no work is lost at the outlet.

    Arguments:
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Outlet pressure, absolute, not below p1_pa. [Pa] Range [1;1e8].
        k: Ratio of specific heats; 1.4 for air. Range [1.01;5].

    Returns:
        volume_ratio: Chamber where it opens over chamber where it closes.

    Raises:
        DomainError: an input is outside its range, or p2_pa is below p1_pa

    Source: algebra: p v^k = constant
    """
    return _runtime.call("freeair_rotary_volume_ratio")((p1_pa, p2_pa, k,))


ConductorSizeResult = _collections.namedtuple(
    "ConductorSizeResult", ['area_m2', 'r20_ohm_m'])


def conductor_size(*, kind, place):
    """Standard size by its place in the table.

    Model: table look-up, sizes in rising order from 0.

    Arguments:
        kind: Kind of conductor. One of CONDUCTOR_KIND_* (enumeration freeair_conductor_kind).
        place: Place in the table, from 0. Range [0;63].

    Returns:
        area_m2: Nominal cross-section. [m2]
        r20_ohm_m: Greatest resistance at 20 degC. [ohm/m]

    Raises:
        DomainError: place is outside its range
        NotFoundError: no such kind, or no more sizes

    Source: IEC 60228:2004, Conductors of insulated cables, tables 1 to 3
    """
    return _runtime.call("freeair_conductor_size")((kind, place,), ConductorSizeResult)


def conductor_table_resistance(*, kind, area_m2):
    """Greatest resistance of a standard size at 20 degC.

    Model: table look-up of the nominal cross-section, within 0.1 percent; no interpolation. The
    table's copper is some 6 percent more than length over cross-section gives: nominal sizes are
    only nominal.

    Arguments:
        kind: Kind of conductor. One of CONDUCTOR_KIND_* (enumeration freeair_conductor_kind).
        area_m2: Nominal cross-section. [m2] Range [1e-8;0.01].

    Returns:
        r20_ohm_m: Greatest resistance at 20 degC. [ohm/m]

    Raises:
        DomainError: area_m2 is outside its range
        NotFoundError: no such kind or size

    Source: IEC 60228:2004, Conductors of insulated cables, tables 1 to 3
    """
    return _runtime.call("freeair_conductor_table_resistance")((kind, area_m2,))


def conductor_resistance(*, kind, area_m2, t_k):
    """Resistance of a wire of a true cross-section at a temperature.

    Model: rho (1 + alpha (T - 293.15 K)) / A; copper of 100 percent IACS, rho = 1 / 58 ohm mm2 / m,
    alpha = 0.00393; aluminium of 61 percent IACS, alpha = 0.00403. Direct current.

    Arguments:
        kind: Kind of conductor, of which the metal counts. One of CONDUCTOR_KIND_* (enumeration
            freeair_conductor_kind).
        area_m2: Cross-section. [m2] Range [1e-9;0.1].
        t_k: Temperature. [K] Range [200;600].

    Returns:
        r_ohm_m: Resistance. [ohm/m]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: no such kind

    Source: IEC 60028:1925, standard of resistance for copper; 61 percent IACS, ASTM B609;
    coefficients of IEC 60287-1-1, table 1, from memory
    """
    return _runtime.call("freeair_conductor_resistance")((kind, area_m2, t_k,))


def conductor_resistance_at(*, r20_ohm_m, coefficient_1_k, t_k):
    """Resistance at a temperature from that at 20 degC.

    Model: R20 (1 + alpha (T - 293.15 K)). IEC 60228 takes alpha = 0.004 for its corrections, tables
    of copper 0.00393; at 70 degC the two differ by 0.3 percent.

    Arguments:
        r20_ohm_m: Resistance at 20 degC. [ohm/m] Range [0;1000].
        coefficient_1_k: Temperature coefficient alpha at 20 degC. [1/K] Range [0;0.01].
        t_k: Temperature. [K] Range [200;600].

    Returns:
        r_ohm_m: Resistance. [ohm/m]

    Raises:
        DomainError: an input is outside its range

    Source: IEC 60228:2004, annex on correction factors
    """
    return _runtime.call("freeair_conductor_resistance_at")((r20_ohm_m, coefficient_1_k, t_k,))


ConductorGaugeResult = _collections.namedtuple(
    "ConductorGaugeResult", ['diameter_m', 'area_m2'])


def conductor_gauge(*, gauge):
    """Diameter and cross-section of an American wire gauge size.

    Model: d = 0.005 in 92^((36 - n) / 39), n = 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0; the
    metal of a solid wire, or of all strands together.

    Arguments:
        gauge: Gauge number. Range [-3;50].

    Returns:
        diameter_m: Diameter of the solid wire. [m]
        area_m2: Cross-section. [m2]

    Raises:
        DomainError: gauge is outside its range

    Source: ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid
    round wires
    """
    return _runtime.call("freeair_conductor_gauge")((gauge,), ConductorGaugeResult)


def conductor_gauge_from_area(*, area_m2):
    """Thinnest American wire gauge size that has at least a cross-section.

    Model: the greatest gauge number whose cross-section is not below area_m2, less a millionth.

    Arguments:
        area_m2: Cross-section wanted. [m2] Range [1e-8;0.0001073].

    Returns:
        gauge: Gauge number; 0 on error.

    Raises:
        DomainError: area_m2 is outside its range
        NoSolutionError: even 4/0 is thinner

    Source: ASTM B258, inverted
    """
    return _runtime.call("freeair_conductor_gauge_from_area")((area_m2,))


ConductorDropResult = _collections.namedtuple(
    "ConductorDropResult", ['drop_v', 'loss_w'])


def conductor_drop(*, length_m, r_ohm_m, x_ohm_m, current_a, power_factor, phases):
    """Voltage and power that a run of wire takes.

    Model: k I L (r cos + x sin), k = 2 for one phase (out and back), sqrt(3) for three; power w I^2
    r L with w = 2 or 3 wires. The usual approximation of the topic supply.

    Arguments:
        length_m: Length of the run, one way. [m] Range [0;100000].
        r_ohm_m: Resistance of one wire at its temperature. [ohm/m] Range [0;1000].
        x_ohm_m: Reactance of one wire; 0.00008 is usual in pipe or cable. [ohm/m] Range [0;1].
        current_a: Line current. [A] Range [0;100000].
        power_factor: Power factor of the load, lagging. Range [0;1].
        phases: 1 or 3; 2 is refused. Range [1;3].

    Returns:
        drop_v: Voltage drop. [V]
        loss_w: Power that heats the wires. [W]

    Raises:
        DomainError: an input is outside its range

    Source: IEEE Std 141-1993, 3.11, approximate formula for voltage drop, from memory
    """
    return _runtime.call("freeair_conductor_drop")((length_m, r_ohm_m, x_ohm_m, current_a, power_factor, phases,), ConductorDropResult)


ConductorSizeForDropResult = _collections.namedtuple(
    "ConductorSizeForDropResult", ['area_m2', 'drop_v'])


def conductor_size_for_drop(*, kind, length_m, t_k, x_ohm_m, current_a, power_factor, phases, allowed_v):
    """Smallest standard size whose drop is within a permitted one.

    Model: the first size of the table of IEC 60228 whose freeair_conductor_drop at its temperature
    (alpha = 0.004) is not above allowed_v. The drop only: current-carrying capacity, short circuit
    and the local code may ask for more.

    Arguments:
        kind: Kind of conductor. One of CONDUCTOR_KIND_* (enumeration freeair_conductor_kind).
        length_m: Length of the run, one way. [m] Range [0;100000].
        t_k: Temperature of the wire at work; 343.15 K is usual. [K] Range [200;600].
        x_ohm_m: Reactance of one wire; 0.00008 is usual in pipe or cable. [ohm/m] Range [0;1].
        current_a: Line current. [A] Range [0;100000].
        power_factor: Power factor of the load, lagging. Range [0;1].
        phases: 1 or 3; 2 is refused. Range [1;3].
        allowed_v: Permitted voltage drop. [V] Range [0;100000].

    Returns:
        area_m2: Nominal cross-section. [m2]
        drop_v: Its voltage drop. [V]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: no such kind
        NoSolutionError: no size of the table is thick enough

    Caution: Live electrical work is for qualified people under local rules.

    Source: IEC 60228:2004, tables 1 to 3, with the drop of freeair_conductor_drop
    """
    return _runtime.call("freeair_conductor_size_for_drop")((kind, length_m, t_k, x_ohm_m, current_a, power_factor, phases, allowed_v,), ConductorSizeForDropResult)


def fastener_pitch(*, thread, diameter_m):
    """Pitch of a standard thread.

    Model: table look-up of the nominal diameter, within 0.5 percent: M3 to M39, No. 6 to 1-1/2 in.

    Arguments:
        thread: Thread series. One of FASTENER_THREAD_* (enumeration freeair_fastener_thread).
        diameter_m: Nominal diameter. [m] Range [0.001;0.2].

    Returns:
        pitch_m: Pitch. [m]

    Raises:
        DomainError: diameter_m is outside its range
        NotFoundError: the series has no such diameter

    Source: ISO 261 and ISO 262, coarse pitches; ASME B1.1, UNC and UNF, from memory
    """
    return _runtime.call("freeair_fastener_pitch")((thread, diameter_m,))


def fastener_stress_area(*, thread, diameter_m, pitch_m):
    """Stress area of a thread.

    Model: pi / 4 (d - c p)^2, the circle of the mean of pitch and root diameter: c = 13 sqrt(3) /
    24 = 0.9382 for ISO threads, 9 sqrt(3) / 16 = 0.9743 for unified ones.

    Arguments:
        thread: Thread series. One of FASTENER_THREAD_* (enumeration freeair_fastener_thread).
        diameter_m: Nominal diameter. [m] Range [0.001;0.2].
        pitch_m: Pitch, at most half the diameter. [m] Range [0.0001;0.02].

    Returns:
        area_m2: Stress area. [m2]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: no such series
        NoSolutionError: the pitch is more than half the diameter

    Source: ISO 898-1:2013, 9.1.6.1, nominal stress area; ASME B1.1, tensile stress area
    """
    return _runtime.call("freeair_fastener_stress_area")((thread, diameter_m, pitch_m,))


FastenerStrengthResult = _collections.namedtuple(
    "FastenerStrengthResult", ['proof_pa', 'yield_pa', 'tensile_pa'])


def fastener_strength(*, grade, diameter_m):
    """Strength of a grade of bolt.

    Model: table look-up. Some grades are weaker in large diameters; none is defined outside 6.35 to
    38.1 mm (SAE) or 1.6 to 39 mm (ISO).

    Arguments:
        grade: Grade. One of FASTENER_GRADE_* (enumeration freeair_fastener_grade).
        diameter_m: Nominal diameter. [m] Range [0.001;0.2].

    Returns:
        proof_pa: Stress under proof load. [Pa]
        yield_pa: Least yield strength, or stress at 0.2 percent (ISO x.8: 0.0048 d) of lasting
            strain. [Pa]
        tensile_pa: Least tensile strength. [Pa]

    Raises:
        DomainError: diameter_m is outside its range
        NotFoundError: no such grade, or not in that diameter

    Source: SAE J429, table 1; ISO 898-1:2013, table 3; from memory, proof stresses confirmed by
    public proof-load tables
    """
    return _runtime.call("freeair_fastener_strength")((grade, diameter_m,), FastenerStrengthResult)


FastenerTorqueForGradeResult = _collections.namedtuple(
    "FastenerTorqueForGradeResult", ['torque_nm', 'preload_n'])


def fastener_torque_for_grade(*, thread, diameter_m, grade, fraction, nut_factor):
    """Preload and torque for a bolt of a grade.

    Model: F = fraction S_p A_s with the proof stress of the grade and the stress area of the
    standard thread; T = K d F. 0.75 is usual for joints that are opened again, 0.90 for lasting
    ones. K about 0.20 dry and plain, 0.15 oiled.

    Arguments:
        thread: Thread series. One of FASTENER_THREAD_* (enumeration freeair_fastener_thread).
        diameter_m: Nominal diameter. [m] Range [0.001;0.2].
        grade: Grade. One of FASTENER_GRADE_* (enumeration freeair_fastener_grade).
        fraction: Preload over proof load. Range [0;1].
        nut_factor: Nut factor K. Range [0.01;1].

    Returns:
        torque_nm: Torque. [N m]
        preload_n: Preload. [N]

    Raises:
        DomainError: an input is outside its range
        NotFoundError: no such thread or grade in that diameter

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Source: SAE J429 torque-tension charts; T = K d F, common practice
    """
    return _runtime.call("freeair_fastener_torque_for_grade")((thread, diameter_m, grade, fraction, nut_factor,), FastenerTorqueForGradeResult)


def fastener_torque(*, preload_n, nut_factor, diameter_m):
    """Torque for a preload.

    Model: T = K d F.

    Arguments:
        preload_n: Preload. [N] Range [0;10000000].
        nut_factor: Nut factor K. Range [0.01;1].
        diameter_m: Nominal diameter. [m] Range [0.001;0.2].

    Returns:
        torque_nm: Torque. [N m]

    Raises:
        DomainError: an input is outside its range

    Source: common practice; SAE J429 torque-tension charts
    """
    return _runtime.call("freeair_fastener_torque")((preload_n, nut_factor, diameter_m,))


FastenerPreloadResult = _collections.namedtuple(
    "FastenerPreloadResult", ['preload_n', 'uncertainty_n'])


def fastener_preload(*, torque_nm, torque_uncertainty_nm, nut_factor, nut_factor_uncertainty, diameter_m):
    """Preload from a torque, with uncertainty.

    Model: F = T / (K d); u(F) = F sqrt((u(T)/T)^2 + (u(K)/K)^2). The nut factor is known to a tenth
    at best.

    Arguments:
        torque_nm: Torque. [N m] Range [0;1000000].
        torque_uncertainty_nm: Standard uncertainty of it. [N m] Range [0;1000000].
        nut_factor: Nut factor K. Range [0.01;1].
        nut_factor_uncertainty: Standard uncertainty of it. Range [0;1].
        diameter_m: Nominal diameter. [m] Range [0.001;0.2].

    Returns:
        preload_n: Preload. [N]
        uncertainty_n: Standard uncertainty of the preload. [N]

    Raises:
        DomainError: an input is outside its range

    Source: common practice; uncertainty by JCGM 100:2008, 5.1.6
    """
    return _runtime.call("freeair_fastener_preload")((torque_nm, torque_uncertainty_nm, nut_factor, nut_factor_uncertainty, diameter_m,), FastenerPreloadResult)


def fastener_nut_factor(*, diameter_m, pitch_m, thread_friction, bearing_friction, bearing_m):
    """Nut factor from friction.

    Model: K d = p / (2 pi) + mu_t d2 / (2 cos 30) + mu_b D_b / 2, with d2 = d - 3 sqrt(3) / 8 p the
    pitch diameter.

    Arguments:
        diameter_m: Nominal diameter. [m] Range [0.001;0.2].
        pitch_m: Pitch, at most half the diameter. [m] Range [0.0001;0.02].
        thread_friction: Coefficient of friction in the thread. Range [0;1].
        bearing_friction: Coefficient of friction under the turned face. Range [0;1].
        bearing_m: Effective diameter of that face, about 1.3 d. [m] Range [0;1].

    Returns:
        nut_factor: Nut factor K.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pitch is more than half the diameter

    Source: ISO 16047:2005, torque and clamp force of threaded fasteners; VDI 2230 part 1, from
    memory
    """
    return _runtime.call("freeair_fastener_nut_factor")((diameter_m, pitch_m, thread_friction, bearing_friction, bearing_m,))


def fastener_pressure_load(*, difference_pa, area_m2, bolts):
    """Load that a pressure puts on each bolt of a cover.

    Model: F = p A / n, shared evenly. The preload has to be greater by what the gasket needs, and
    by a reserve.

    Arguments:
        difference_pa: Pressure within above that outside. [Pa] Range [0;100000000].
        area_m2: Area that the pressure acts on, to the gasket's mean line. [m2] Range [0;100].
        bolts: Number of bolts. Range [1;1000].

    Returns:
        load_n: Load of each bolt. [N]

    Raises:
        DomainError: an input is outside its range

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: statics
    """
    return _runtime.call("freeair_fastener_pressure_load")((difference_pa, area_m2, bolts,))


def receiver_volume_from_event(*, shortfall_m3_s, duration_s, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k):
    """Receiver volume that bridges an event in which demand exceeds supply.

    Model: V = q t p_ref T / (t_ref (p_high - p_low)), with q the demand less the supply during the
    event. The air in the receiver keeps its temperature.

    Arguments:
        shortfall_m3_s: Demand less supply during the event, free air. [m3/s] Range [0;1e4].
        duration_s: Duration of the event. [s] Range [0;1e7].
        p_high_pa: Upper pressure of the band, absolute. [Pa] Range [1;1e8].
        p_low_pa: Lower pressure of the band, absolute, below p_high_pa. [Pa] Range [1;1e8].
        t_k: Temperature of the air in the receiver. [K] Range [50;2000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        v_m3: Volume of receiver and piping. [m3]

    Raises:
        DomainError: an input is outside its range, or p_low_pa is not below p_high_pa

    Source: Esposito, Fluid Power with Applications, chapter 13, sizing of receivers
    """
    return _runtime.call("freeair_receiver_volume_from_event")((shortfall_m3_s, duration_s, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k,))


def receiver_volume_from_starts(*, supply_m3_s, starts_hz, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k):
    """Receiver volume that keeps an on/off compressor within a number of starts.

    Model: worst case, demand at half of the supply: V = q p_ref T / (4 f t_ref (p_high - p_low)), f
    the starts a second.

    Arguments:
        supply_m3_s: Free air delivery while the compressor runs. [m3/s] Range [0;1e4].
        starts_hz: Permitted starts a second; an hourly number over 3600. [Hz] Range [1e-9;10].
        p_high_pa: Upper pressure of the band, absolute. [Pa] Range [1;1e8].
        p_low_pa: Lower pressure of the band, absolute, below p_high_pa. [Pa] Range [1;1e8].
        t_k: Temperature of the air in the receiver. [K] Range [50;2000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        v_m3: Volume of receiver and piping. [m3]

    Raises:
        DomainError: an input is outside its range, or p_low_pa is not below p_high_pa

    Source: algebra
    """
    return _runtime.call("freeair_receiver_volume_from_starts")((supply_m3_s, starts_hz, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k,))


ReceiverCycleResult = _collections.namedtuple(
    "ReceiverCycleResult", ['run_s', 'rest_s', 'starts_hz'])


def receiver_cycle(*, v_m3, supply_m3_s, demand_m3_s, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k):
    """Running time, resting time and starts of a compressor that cycles between two pressures.

    Model: with the air A = V (p_high - p_low) t_ref / (T p_ref) between the pressures, run = A /
    (supply - demand), rest = A / demand, starts = 1 / (run + rest). Steady supply and demand.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        supply_m3_s: Free air delivery while the compressor runs. [m3/s] Range (0;1e4].
        demand_m3_s: Demand with leaks, free air, below the supply. [m3/s] Range [1e-12;1e4].
        p_high_pa: Upper pressure of the band, absolute. [Pa] Range [1;1e8].
        p_low_pa: Lower pressure of the band, absolute, below p_high_pa. [Pa] Range [1;1e8].
        t_k: Temperature of the air in the receiver. [K] Range [50;2000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        run_s: Time on load in a cycle. [s]
        rest_s: Time off load in a cycle. [s]
        starts_hz: Starts a second; times 3600 an hour. [Hz]

    Raises:
        DomainError: an input is outside its range, or p_low_pa is not below p_high_pa
        NoSolutionError: demand is not below supply: the compressor never stops

    Source: algebra
    """
    return _runtime.call("freeair_receiver_cycle")((v_m3, supply_m3_s, demand_m3_s, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k,), ReceiverCycleResult)


def receiver_starts_maximum(*, v_m3, supply_m3_s, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k):
    """Most starts that a steady demand can cause, at half of the supply.

    Model: f = q p_ref T / (4 V t_ref (p_high - p_low)).

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        supply_m3_s: Free air delivery while the compressor runs. [m3/s] Range [0;1e4].
        p_high_pa: Upper pressure of the band, absolute. [Pa] Range [1;1e8].
        p_low_pa: Lower pressure of the band, absolute, below p_high_pa. [Pa] Range [1;1e8].
        t_k: Temperature of the air in the receiver. [K] Range [50;2000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        starts_hz: Starts a second; times 3600 an hour. [Hz]

    Raises:
        DomainError: an input is outside its range, or p_low_pa is not below p_high_pa

    Source: algebra
    """
    return _runtime.call("freeair_receiver_starts_maximum")((v_m3, supply_m3_s, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k,))


def receiver_usable_air(*, v_m3, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k):
    """Free air that a receiver gives up between two pressures.

    Model: A = V (p_high - p_low) t_ref / (T p_ref), the receiver keeping its temperature.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        p_high_pa: Upper pressure of the band, absolute. [Pa] Range [1;1e8].
        p_low_pa: Lower pressure of the band, absolute, below p_high_pa. [Pa] Range [1;1e8].
        t_k: Temperature of the air in the receiver. [K] Range [50;2000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        air_m3: Volume of free air. [m3]

    Raises:
        DomainError: an input is outside its range, or p_low_pa is not below p_high_pa

    Source: algebra
    """
    return _runtime.call("freeair_receiver_usable_air")((v_m3, p_high_pa, p_low_pa, t_k, p_ref_pa, t_ref_k,))


def receiver_pressure_after(*, v_m3, p1_pa, net_m3_s, duration_s, t_k, p_ref_pa, t_ref_k):
    """Pressure in a receiver after a time of steady net inflow or outflow.

    Model: p2 = p1 + q t p_ref T / (t_ref V), temperature constant.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        p1_pa: Pressure at the start, absolute. [Pa] Range [1;1e8].
        net_m3_s: Supply less demand, free air; negative when emptying. [m3/s] Range [-1e4;1e4].
        duration_s: Time. [s] Range [0;1e9].
        t_k: Temperature of the air in the receiver. [K] Range [50;2000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        p2_pa: Pressure at the end, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the receiver would be empty before the time is over

    Source: algebra
    """
    return _runtime.call("freeair_receiver_pressure_after")((v_m3, p1_pa, net_m3_s, duration_s, t_k, p_ref_pa, t_ref_k,))


def receiver_fill_time(*, v_m3, p1_pa, p2_pa, net_m3_s, t_k, p_ref_pa, t_ref_k):
    """Time for a steady net flow to take a receiver from one pressure to another.

    Model: t = V (p2 - p1) t_ref / (q p_ref T), temperature constant; emptying takes a negative
    flow.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        p1_pa: Pressure at the start, absolute. [Pa] Range [1;1e8].
        p2_pa: Pressure at the end, absolute. [Pa] Range [1;1e8].
        net_m3_s: Supply less demand, free air. [m3/s] Range [-1e4;1e4].
        t_k: Temperature of the air in the receiver. [K] Range [50;2000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        time_s: Time. [s]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: this flow never reaches p2_pa
        ResultOverflowError: the time is not representable

    Source: algebra
    """
    return _runtime.call("freeair_receiver_fill_time")((v_m3, p1_pa, p2_pa, net_m3_s, t_k, p_ref_pa, t_ref_k,))


def receiver_free_air_from_pump_up(*, v_m3, p1_pa, t1_k, p2_pa, t2_k, duration_s, p_ref_pa, t_ref_k):
    """Free air delivery from the time to pump a receiver up.

    Model: q = V (p2 / T2 - p1 / T1) t_ref / (p_ref t), the mean over the test. Nothing may leave
    the receiver. The air comes in hotter than the shell: with T2 taken as T1 the plain rule reads
    high by as much as T2 stands above T1, and a volume with water in it reads high by the share of
    the water.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        p1_pa: Pressure at the start, absolute. [Pa] Range [1;1e8].
        t1_k: Temperature of the air in the receiver at the start. [K] Range [50;2000].
        p2_pa: Pressure at the end, absolute. [Pa] Range [1;1e8].
        t2_k: Temperature of the air in the receiver at the end. [K] Range [50;2000].
        duration_s: Time from start to end. [s] Range [1e-3;1e7].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        q_m3_s: Free air delivery. [m3/s]

    Raises:
        DomainError: an input is outside its range

    Source: Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3,
    compressed air system, pump-up test
    """
    return _runtime.call("freeair_receiver_free_air_from_pump_up")((v_m3, p1_pa, t1_k, p2_pa, t2_k, duration_s, p_ref_pa, t_ref_k,))


def receiver_water_from_pump_up(*, v_m3, expected_s, found_s):
    """Water in a receiver from a pump-up that is shorter than it should be.

    Model: W = V (1 - found / expected): the same delivery fills the free part of the volume.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        expected_s: Pump-up time of the drained receiver. [s] Range [1e-3;1e7].
        found_s: Pump-up time found, between the same pressures. [s] Range [1e-3;1e7].

    Returns:
        water_m3: Volume of water. [m3]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the time found is longer than the time expected

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Source: algebra
    """
    return _runtime.call("freeair_receiver_water_from_pump_up")((v_m3, expected_s, found_s,))


def blowdown_time(*, vessel, p2_pa):
    """Time to blow a vessel down to a pressure.

    Model: choked down to the critical pressure ratio, then subsonic until p2. Choked, with B = V /
    (A sqrt(R T1)) and m = (n - 1) / (2 n): t = B / (n C*) ((p1/p2)^m - 1) / m. Subsonic, with u =
    sqrt(1 - (line/p)^((k-1)/k)): t = B / n (p1/line)^m sqrt(2 k / (k - 1)) times the integral of (1
    - u^2)^(-k (1 - m) / (k - 1)) du, as its series of positive terms.

    Arguments:
        vessel: Vessel, orifice and surroundings.
        p2_pa: Pressure to reach, absolute, from p_line_pa to p_vessel_pa. [Pa] Range [1;1e8].

    Returns:
        time_s: Time. [s]

    Raises:
        DomainError: an input is outside its range, exponent above k, or vessel below line
        NoSolutionError: p2_pa is below p_line_pa or above p_vessel_pa
        StructureVersionError: the structure has a size or flags that this library does not know

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Caution: A receiver under pressure stores energy like an explosive.

    Source: Bar-Meir, Fundamentals of Compressible Fluid Mechanics, evacuating chambers, for the
    choked phase; derived in the guide
    """
    return _runtime.call("freeair_blowdown_time")((vessel, p2_pa,))


BlowdownPressureResult = _collections.namedtuple(
    "BlowdownPressureResult", ['p2_pa', 't2_k'])


def blowdown_pressure(*, vessel, duration_s):
    """Pressure and temperature in a vessel after it has blown down for a time.

    Model: inverse of freeair_blowdown_time; a Newton iteration that converges from one side in the
    subsonic phase, at most 100 steps. The line pressure once it is reached; T = T1
    (p/p1)^((n-1)/n).

    Arguments:
        vessel: Vessel, orifice and surroundings.
        duration_s: Time since the start. [s] Range [0;1e12].

    Returns:
        p2_pa: Pressure in the vessel, absolute. [Pa]
        t2_k: Temperature in the vessel. [K]

    Raises:
        DomainError: an input is outside its range, exponent above k, or vessel below line
        StructureVersionError: the structure has a size or flags that this library does not know

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Caution: A receiver under pressure stores energy like an explosive.

    Source: algebra
    """
    return _runtime.call("freeair_blowdown_pressure")((vessel, duration_s,), BlowdownPressureResult)


def blowdown_fill_time(*, vessel, p2_pa):
    """Time to fill a vessel from a line at constant pressure.

    Model: dp/dt = n R T m / V with m the flow of the topic flow, T of the line. Choked: t = B / (n
    C*) (p2 - p1) / line; then subsonic: t = B / n sqrt(2 k / (k - 1)) (u1 - u2).

    Arguments:
        vessel: Vessel, orifice and surroundings.
        p2_pa: Pressure to reach, absolute, from p_vessel_pa to p_line_pa. [Pa] Range [0;1e8].

    Returns:
        time_s: Time. [s]

    Raises:
        DomainError: an input is outside its range, exponent above k, or vessel above line
        NoSolutionError: p2_pa is below p_vessel_pa or above p_line_pa
        StructureVersionError: the structure has a size or flags that this library does not know

    Caution: A receiver under pressure stores energy like an explosive.

    Source: algebra
    """
    return _runtime.call("freeair_blowdown_fill_time")((vessel, p2_pa,))


def blowdown_fill_pressure(*, vessel, duration_s):
    """Pressure in a vessel after it has been filled from a line for a time.

    Model: inverse of freeair_blowdown_fill_time, in closed form. The line pressure once it is
    reached.

    Arguments:
        vessel: Vessel, orifice and surroundings.
        duration_s: Time since the start. [s] Range [0;1e12].

    Returns:
        p2_pa: Pressure in the vessel, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range, exponent above k, or vessel above line
        StructureVersionError: the structure has a size or flags that this library does not know

    Caution: A receiver under pressure stores energy like an explosive.

    Source: algebra
    """
    return _runtime.call("freeair_blowdown_fill_pressure")((vessel, duration_s,))


def blowdown_fill_temperature(*, p1_pa, t1_k, p2_pa, t_line_k, k):
    """Temperature in a vessel that was filled without heat loss.

    Model: T2 = p2 / (p1 / T1 + (p2 - p1) / (k T)), T of the line; k T when the vessel was empty.
    Energy balance of an ideal gas, whatever the orifice.

    Arguments:
        p1_pa: Pressure in the vessel at the start, absolute. [Pa] Range [0;1e8].
        t1_k: Temperature in the vessel at the start. [K] Range [50;2000].
        p2_pa: Pressure at the end, absolute, not below p1_pa. [Pa] Range [1;1e8].
        t_line_k: Temperature of the air that enters. [K] Range [50;2000].
        k: Heat-capacity ratio. Range (1;2].

    Returns:
        t2_k: Temperature in the vessel at the end. [K]

    Raises:
        DomainError: an input is outside its range, or p2_pa is below p1_pa

    Source: Rao, Chemical Engineering Thermodynamics, 1997, example 4.13, energy balance of a tank
    being filled
    """
    return _runtime.call("freeair_blowdown_fill_temperature")((p1_pa, t1_k, p2_pa, t_line_k, k,))


def blowdown_evacuation_time(*, v_m3, speed_m3_s, p1_pa, p2_pa, p_ultimate_pa):
    """Time for a vacuum pump of constant intake to lower the pressure in a vessel.

    Model: t = V / S ln((p1 - pu) / (p2 - pu)), S the intake volume flow at the pressure of the
    moment, pu the pressure at which leaks or the pump hold it; temperature constant.

    Arguments:
        v_m3: Volume of the vessel. [m3] Range [1e-9;1e6].
        speed_m3_s: Intake volume flow of the pump. [m3/s] Range [1e-9;1e4].
        p1_pa: Pressure at the start, absolute. [Pa] Range [1e-6;1e8].
        p2_pa: Pressure at the end, absolute, not above p1_pa. [Pa] Range [1e-6;1e8].
        p_ultimate_pa: Ultimate pressure, absolute. [Pa] Range [0;1e8].

    Returns:
        time_s: Time. [s]

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p1_pa
        NoSolutionError: p2_pa is not above the ultimate pressure

    Source: Esposito, Fluid Power with Applications, chapter 14, vacuum systems
    """
    return _runtime.call("freeair_blowdown_evacuation_time")((v_m3, speed_m3_s, p1_pa, p2_pa, p_ultimate_pa,))


VesselStoredEnergyResult = _collections.namedtuple(
    "VesselStoredEnergyResult", ['brode_j', 'isentropic_j', 'isothermal_j', 'available_j'])


def vessel_stored_energy(*, p_pa, p_atm_pa, v_m3, k):
    """Energy stored in compressed air, by the four usual formulas.

    Model: Brode (p - p0) V / (k - 1), an upper bound for a burst; isentropic expansion p V / (k -
    1) (1 - (p0/p)^((k-1)/k)), the usual figure; isothermal expansion p V ln(p/p0), which takes heat
    from around; and what is available of that beyond pushing back the atmosphere, p V ln(p/p0) - (p
    - p0) V. State which one is meant.

    Arguments:
        p_pa: Pressure in the vessel, absolute, not below p_atm_pa. [Pa] Range [1;1e9].
        p_atm_pa: Barometric pressure. [Pa] Range [1000;120000].
        v_m3: Volume of the vessel. [m3] Range [1e-9;1e6].
        k: Heat-capacity ratio. Range (1;2].

    Returns:
        brode_j: Brode energy. [J]
        isentropic_j: Work of isentropic expansion. [J]
        isothermal_j: Work of isothermal expansion. [J]
        available_j: Available work of isothermal expansion. [J]

    Raises:
        DomainError: an input is outside its range, or p_pa is below p_atm_pa

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: Paulsen, Pressure Systems Stored-Energy Threshold Risk Analysis, PNNL-18696, 2009, for
    the choice of formulas
    """
    return _runtime.call("freeair_vessel_stored_energy")((p_pa, p_atm_pa, v_m3, k,), VesselStoredEnergyResult)


VesselTestEnergyResult = _collections.namedtuple(
    "VesselTestEnergyResult", ['energy_j', 'tnt_kg'])


def vessel_test_energy(*, p_pa, p_atm_pa, v_m3):
    """Stored energy of a pneumatic test, and its TNT equivalent.

    Model: E = 2.5 p V (1 - (p0/p)^0.286), for air and nitrogen; TNT = E / 4266920 J/kg.

    Arguments:
        p_pa: Pressure in the vessel, absolute, not below p_atm_pa. [Pa] Range [1;1e9].
        p_atm_pa: Barometric pressure. [Pa] Range [1000;120000].
        v_m3: Volume of the vessel. [m3] Range [1e-9;1e6].

    Returns:
        energy_j: Stored energy. [J]
        tnt_kg: Equivalent mass of TNT. [kg]

    Raises:
        DomainError: an input is outside its range, or p_pa is below p_atm_pa

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: ASME PCC-2, Article 501, Mandatory Appendix 501-II, equations II-2 and II-3
    """
    return _runtime.call("freeair_vessel_test_energy")((p_pa, p_atm_pa, v_m3,), VesselTestEnergyResult)


def vessel_tnt_equivalent(*, energy_j, tnt_j_kg):
    """Mass of TNT that releases an energy.

    Model: division by the specific energy chosen: 4.184e6 J/kg by convention, 4.26692e6 J/kg in
    ASME PCC-2, 4.62e6 J/kg in some laboratory rules.

    Arguments:
        energy_j: Energy. [J] Range [0;1e15].
        tnt_j_kg: Specific energy of TNT. [J/kg] Range [1e6;1e7].

    Returns:
        tnt_kg: Equivalent mass of TNT. [kg]

    Raises:
        DomainError: an input is outside its range

    Caution: A receiver under pressure stores energy like an explosive.

    Source: definition
    """
    return _runtime.call("freeair_vessel_tnt_equivalent")((energy_j, tnt_j_kg,))


def vessel_test_distance(*, energy_j):
    """Least distance of people from a pneumatic test.

    Model: the greater of R = 20 m/kg^(1/3) (2 TNT)^(1/3) with TNT = E / 4266920 J/kg and a floor of
    30 m up to 135.5 MJ, 60 m up to 271 MJ; R alone above.

    Arguments:
        energy_j: Stored energy of the test. [J] Range [0;1e15].

    Returns:
        distance_m: Distance. [m]

    Raises:
        DomainError: an input is outside its range

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: ASME PCC-2, Article 501, Mandatory Appendix 501-III, equation III-1
    """
    return _runtime.call("freeair_vessel_test_distance")((energy_j,))


VesselShellStressResult = _collections.namedtuple(
    "VesselShellStressResult", ['hoop_pa', 'longitudinal_pa'])


def vessel_shell_stress(*, dp_pa, radius_m, wall_m):
    """Hoop and longitudinal membrane stress in a thin cylindrical shell.

    Model: hoop p r / t, longitudinal p r / (2 t), away from heads, nozzles and supports; weld and
    corrosion not counted.

    Arguments:
        dp_pa: Pressure inside above that outside. [Pa] Range [0;1e9].
        radius_m: Inside radius. [m] Range [1e-3;100].
        wall_m: Wall thickness. [m] Range [1e-5;10].

    Returns:
        hoop_pa: Hoop stress. [Pa]
        longitudinal_pa: Longitudinal stress. [Pa]

    Raises:
        DomainError: an input is outside its range

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: Gere, Mechanics of Materials, chapter 8, pressure vessels
    """
    return _runtime.call("freeair_vessel_shell_stress")((dp_pa, radius_m, wall_m,), VesselShellStressResult)


def vessel_sphere_stress(*, dp_pa, radius_m, wall_m):
    """Membrane stress in a thin spherical shell.

    Model: p r / (2 t), away from openings and supports.

    Arguments:
        dp_pa: Pressure inside above that outside. [Pa] Range [0;1e9].
        radius_m: Inside radius. [m] Range [1e-3;100].
        wall_m: Wall thickness. [m] Range [1e-5;10].

    Returns:
        stress_pa: Stress, the same in each direction. [Pa]

    Raises:
        DomainError: an input is outside its range

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: Gere, Mechanics of Materials, chapter 8, pressure vessels
    """
    return _runtime.call("freeair_vessel_sphere_stress")((dp_pa, radius_m, wall_m,))


def vessel_wall_required(*, dp_pa, radius_m, stress_pa, joint_efficiency, corrosion_m):
    """Wall of a cylindrical shell that a code formula requires, corrosion allowance included.

    Model: t = P (R + c) / (S E - 0.6 P) + c, for P up to 0.385 S E. Circumferential stress only:
    heads, nozzles, supports and minimum thicknesses have rules of their own.

    Arguments:
        dp_pa: Design pressure, inside above outside. [Pa] Range [0;1e9].
        radius_m: Inside radius, new. [m] Range [1e-3;100].
        stress_pa: Allowable stress of the material at temperature. [Pa] Range [1e6;1e9].
        joint_efficiency: Efficiency of the longitudinal joint. Range [0.3;1].
        corrosion_m: Corrosion allowance. [m] Range [0;0.1].

    Returns:
        wall_m: Required wall, new. [m]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the pressure is beyond the range of the formula

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: ASME Boiler and Pressure Vessel Code, Section VIII, Division 1, UG-27(c)(1)
    """
    return _runtime.call("freeair_vessel_wall_required")((dp_pa, radius_m, stress_pa, joint_efficiency, corrosion_m,))


def vessel_pressure_allowable(*, wall_m, outside_radius_m, stress_pa, joint_efficiency, corrosion_m):
    """Pressure that a code formula allows a measured cylindrical wall.

    Model: with t the wall less the allowance for corrosion to come, P = S E t / (Ro - 0.4 t), the
    formula of UG-27(c)(1) on the outside radius, which corrosion inside leaves as it was. For t up
    to half the inside radius. Measure at the thinnest place: the bottom, beneath the water.

    Arguments:
        wall_m: Least wall measured. [m] Range [1e-5;1].
        outside_radius_m: Outside radius. [m] Range [1e-3;100].
        stress_pa: Allowable stress of the material at temperature. [Pa] Range [1e6;1e9].
        joint_efficiency: Efficiency of the longitudinal joint. Range [0.3;1].
        corrosion_m: Corrosion allowance. [m] Range [0;0.1].

    Returns:
        dp_pa: Pressure inside above outside. [Pa]

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no wall is left after the allowance, or it is too thick for the formula

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Caution: A receiver under pressure stores energy like an explosive.

    Source: ASME Boiler and Pressure Vessel Code, Section VIII, Division 1, Mandatory Appendix
    1-1(a)(1)
    """
    return _runtime.call("freeair_vessel_pressure_allowable")((wall_m, outside_radius_m, stress_pa, joint_efficiency, corrosion_m,))


def vessel_relief_capacity(*, area_m2, coefficient, p_relieving_pa, t_k, p_back_pa, p_ref_pa, t_ref_k):
    """Free air that a relief valve passes.

    Model: isentropic flow of dry air (k = 1.4, R = 287.05287 J/(kg K)) through coefficient times
    area, choked wherever it blows off to the atmosphere above about 0.9 bar gauge. Use the derated
    coefficient on the certificate, and the set pressure with its overpressure.

    Arguments:
        area_m2: Actual discharge area. [m2] Range [1e-9;1].
        coefficient: Derated coefficient of discharge. Range [0.01;1].
        p_relieving_pa: Relieving pressure, absolute, not below p_back_pa. [Pa] Range [1000;1e8].
        t_k: Temperature in the vessel. [K] Range [50;2000].
        p_back_pa: Pressure beyond the valve, absolute. [Pa] Range [0;1e8].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        q_m3_s: Capacity as free air. [m3/s]

    Raises:
        DomainError: an input is outside its range, or p_relieving_pa is below p_back_pa

    Caution: Never plug, reset or weaken a relief valve.

    Source: API Standard 520 Part I, sizing for gas in critical flow
    """
    return _runtime.call("freeair_vessel_relief_capacity")((area_m2, coefficient, p_relieving_pa, t_k, p_back_pa, p_ref_pa, t_ref_k,))


VesselReliefVerdictResult = _collections.namedtuple(
    "VesselReliefVerdictResult", ['margin', 'verdict'])


def vessel_relief_verdict(*, capacity_m3_s, capacity_uncertainty_m3_s, delivery_m3_s, delivery_uncertainty_m3_s, confidence):
    """Does a relief valve pass what the compressor delivers?

    Model: guarded decision on the difference capacity less delivery, with its standard uncertainty:
    MEETS, FAILS or CANNOT_TELL.

    Arguments:
        capacity_m3_s: Capacity of the relief valve, free air. [m3/s] Range [0;1e4].
        capacity_uncertainty_m3_s: Its standard uncertainty. [m3/s] Range [0;1e4].
        delivery_m3_s: Delivery of every compressor on it, same reference. [m3/s] Range [1e-12;1e4].
        delivery_uncertainty_m3_s: Its standard uncertainty. [m3/s] Range [0;1e4].
        confidence: Probability required of a firm verdict. Range (0.5;1).

    Returns:
        margin: Capacity over delivery.
        verdict: The decision. One of VERDICT_* (enumeration freeair_verdict).

    Raises:
        DomainError: an input is outside its range

    Caution: Never plug, reset or weaken a relief valve.

    Source: JCGM 106:2012, 8.3, guarded decisions
    """
    return _runtime.call("freeair_vessel_relief_verdict")((capacity_m3_s, capacity_uncertainty_m3_s, delivery_m3_s, delivery_uncertainty_m3_s, confidence,), VesselReliefVerdictResult)


def leakage_share_from_cycle(*, load_s, unload_s):
    """Share of a compressor's capacity that leaks, from load and unload times without demand.

    Model: s = load / (load + unload). Sum the times over several whole cycles.

    Arguments:
        load_s: Time on load, demand off. [s] Range [0;1e7].
        unload_s: Time off load, demand off. [s] Range [0;1e7].

    Returns:
        share: Leak as a share of the capacity.

    Raises:
        DomainError: an input is outside its range, or both times are zero

    Source: Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3,
    compressed air system, leakage test
    """
    return _runtime.call("freeair_leakage_share_from_cycle")((load_s, unload_s,))


def leakage_flow_from_cycle(*, load_s, unload_s, capacity_m3_s):
    """Leak from load and unload times without demand.

    Model: q = Q load / (load + unload), Q the free air delivery at the pressure of the test.

    Arguments:
        load_s: Time on load, demand off. [s] Range [0;1e7].
        unload_s: Time off load, demand off. [s] Range [0;1e7].
        capacity_m3_s: Free air delivery of the compressor. [m3/s] Range [0;1e4].

    Returns:
        q_m3_s: Leak as free air. [m3/s]

    Raises:
        DomainError: an input is outside its range, or both times are zero

    Source: Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3,
    compressed air system, leakage test
    """
    return _runtime.call("freeair_leakage_flow_from_cycle")((load_s, unload_s, capacity_m3_s,))


LeakageMeanFromDecayResult = _collections.namedtuple(
    "LeakageMeanFromDecayResult", ['q_m3_s', 'mass_kg_s'])


def leakage_mean_from_decay(*, v_m3, p1_pa, t1_k, p2_pa, t2_k, duration_s, p_ref_pa, t_ref_k):
    """Mean leak from the fall of pressure in an isolated volume.

    Model: q = V (p1 / T1 - p2 / T2) t_ref / (p_ref t), counted as mass and as free air. One kelvin
    of cooling looks like a leak of p/T: read the temperature or wait until it rests.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        p1_pa: Pressure at the start, absolute. [Pa] Range [1;1e8].
        t1_k: Temperature of the air at the start. [K] Range [50;2000].
        p2_pa: Pressure at the end, absolute. [Pa] Range [1;1e8].
        t2_k: Temperature of the air at the end. [K] Range [50;2000].
        duration_s: Time from start to end. [s] Range [1e-3;1e7].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        q_m3_s: Leak as free air. [m3/s]
        mass_kg_s: Leak as mass flow. [kg/s]

    Raises:
        DomainError: an input is outside its range

    Source: algebra
    """
    return _runtime.call("freeair_leakage_mean_from_decay")((v_m3, p1_pa, t1_k, p2_pa, t2_k, duration_s, p_ref_pa, t_ref_k,), LeakageMeanFromDecayResult)


def leakage_at_pressure_from_decay(*, v_m3, p1_pa, p2_pa, duration_s, t_k, p_pa, p_ref_pa, t_ref_k):
    """Leak at a chosen pressure from the fall of pressure in an isolated volume.

    Model: leaks are choked, in proportion to the absolute pressure, so that it falls exponentially:
    q = V ln(p1 / p2) / t p t_ref / (T p_ref). Good while both pressures are above about 1.9 times
    the barometer.

    Arguments:
        v_m3: Volume of receiver and piping. [m3] Range [1e-6;1e6].
        p1_pa: Pressure at the start, absolute. [Pa] Range [1;1e8].
        p2_pa: Pressure at the end, absolute, not above p1_pa. [Pa] Range [1;1e8].
        duration_s: Time from start to end. [s] Range [1e-3;1e7].
        t_k: Temperature of the air in the system. [K] Range [50;2000].
        p_pa: Pressure at which the leak is wanted, absolute. [Pa] Range [1;1e8].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        q_m3_s: Leak as free air. [m3/s]

    Raises:
        DomainError: an input is outside its range, or p2_pa is above p1_pa

    Source: algebra
    """
    return _runtime.call("freeair_leakage_at_pressure_from_decay")((v_m3, p1_pa, p2_pa, duration_s, t_k, p_pa, p_ref_pa, t_ref_k,))


def leakage_flow_at_pressure(*, q1_m3_s, p1_pa, p2_pa, p_atm_pa):
    """Leak at one pressure from the leak at another.

    Model: isentropic flow through the same effective area, so in proportion to the absolute
    pressure while choked at both. A seal that opens with pressure leaks more than that.

    Arguments:
        q1_m3_s: Leak at p1_pa, free air. [m3/s] Range [0;1e4].
        p1_pa: Pressure, absolute, above p_atm_pa. [Pa] Range [1000;1e8].
        p2_pa: Another pressure, absolute, not below p_atm_pa. [Pa] Range [1000;1e8].
        p_atm_pa: Barometric pressure. [Pa] Range [1000;120000].

    Returns:
        q2_m3_s: Leak at p2_pa, free air. [m3/s]

    Raises:
        DomainError: an input is outside its range, p1_pa is not above p_atm_pa or p2_pa is below it

    Source: algebra
    """
    return _runtime.call("freeair_leakage_flow_at_pressure")((q1_m3_s, p1_pa, p2_pa, p_atm_pa,))


LeakageFlowFromReadingsResult = _collections.namedtuple(
    "LeakageFlowFromReadingsResult", ['q_at_m3_s', 'slope_m3_s_pa'])


def leakage_flow_from_readings(*, p_pa, q_m3_s, p_at_pa):
    """Leak at a pressure from leaks found at several pressures.

    Model: straight line of least squares through the readings, evaluated at p_pa. No physics: it
    serves for systems whose leaks do not grow in proportion to the absolute pressure.

    Arguments:
        p_pa: Pressures, all gauge or all absolute. [Pa] Range [0;1e8].
        q_m3_s: Leaks at those pressures. [m3/s] Range [-1e4;1e4].
        p_at_pa: Pressure at which the leak is wanted. [Pa] Range [0;1e8].

    Returns:
        q_at_m3_s: Leak there. [m3/s]
        slope_m3_s_pa: Growth of the leak with pressure. [m3/(s Pa)]

    Raises:
        DomainError: an input is outside its range
        DataError: fewer than two different pressures

    Source: US Navy, MO-209, Maintenance of Steam, Hot Water, and Compressed Air Distribution
    Systems, chapter 5, calculation of losses
    """
    return _runtime.call("freeair_leakage_flow_from_readings")((p_pa, q_m3_s, p_at_pa,), LeakageFlowFromReadingsResult)


LeakageFlowFromHoleResult = _collections.namedtuple(
    "LeakageFlowFromHoleResult", ['q_m3_s', 'mass_kg_s'])


def leakage_flow_from_hole(*, diameter_m, coefficient, p_line_pa, t_line_k, p_atm_pa, p_ref_pa, t_ref_k):
    """Leak through a round hole.

    Model: isentropic flow through coefficient times pi/4 d^2, choked or not, as mass and as free
    air.

    Arguments:
        diameter_m: Diameter. [m] Range [1e-6;1].
        coefficient: Discharge coefficient; 0.65 for a sharp edge. Range [0.01;1].
        p_line_pa: Pressure before the hole, absolute, above p_atm_pa. [Pa] Range [1000;1e8].
        t_line_k: Temperature before the hole. [K] Range [50;2000].
        p_atm_pa: Barometric pressure. [Pa] Range [1000;120000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        q_m3_s: Leak as free air. [m3/s]
        mass_kg_s: Leak as mass flow. [kg/s]

    Raises:
        DomainError: an input is outside its range, or p_line_pa is not above p_atm_pa

    Caution: Blow guns and hoses injure; limit their pressure as local rules say.

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, example on
    repairing an air leak
    """
    return _runtime.call("freeair_leakage_flow_from_hole")((diameter_m, coefficient, p_line_pa, t_line_k, p_atm_pa, p_ref_pa, t_ref_k,), LeakageFlowFromHoleResult)


def leakage_hole_from_flow(*, q_m3_s, coefficient, p_line_pa, t_line_k, p_atm_pa, p_ref_pa, t_ref_k):
    """Diameter of the one round hole that leaks as much.

    Model: inverse of freeair_leakage_flow_from_hole.

    Arguments:
        q_m3_s: Leak as free air. [m3/s] Range [0;1e4].
        coefficient: Discharge coefficient; 0.65 for a sharp edge. Range [0.01;1].
        p_line_pa: Pressure before the hole, absolute, above p_atm_pa. [Pa] Range [1000;1e8].
        t_line_k: Temperature before the hole. [K] Range [50;2000].
        p_atm_pa: Barometric pressure. [Pa] Range [1000;120000].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].

    Returns:
        diameter_m: Diameter. [m]

    Raises:
        DomainError: an input is outside its range, or p_line_pa is not above p_atm_pa

    Source: algebra
    """
    return _runtime.call("freeair_leakage_hole_from_flow")((q_m3_s, coefficient, p_line_pa, t_line_k, p_atm_pa, p_ref_pa, t_ref_k,))


def leakage_power(*, q_m3_s, p_ref_pa, t_ref_k, p_in_pa, t_in_k, p_line_pa, efficiency):
    """Power that a leak takes at the compressor.

    Model: P = m k / (k - 1) R T_in ((p_line / p_in)^((k-1)/k) - 1) / efficiency: isentropic
    compression in one stage over the efficiency from there to the meter. It is saved only if the
    control of the compressor lets it be.

    Arguments:
        q_m3_s: Leak as free air. [m3/s] Range [0;1e4].
        p_ref_pa: Reference pressure of the free air. [Pa] Range [1000;1e6].
        t_ref_k: Reference temperature of the free air. [K] Range [50;2000].
        p_in_pa: Inlet pressure of the compressor, absolute. [Pa] Range [1000;1e6].
        t_in_k: Inlet temperature of the compressor. [K] Range [50;2000].
        p_line_pa: Pressure it compresses to, absolute, not below p_in_pa. [Pa] Range [1000;1e8].
        efficiency: Isentropic efficiency times motor efficiency. Range [0.01;1].

    Returns:
        power_w: Power. [W]

    Raises:
        DomainError: an input is outside its range, or p_line_pa is below p_in_pa

    Source: Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, example on
    repairing an air leak
    """
    return _runtime.call("freeair_leakage_power")((q_m3_s, p_ref_pa, t_ref_k, p_in_pa, t_in_k, p_line_pa, efficiency,))


LeakageCostResult = _collections.namedtuple(
    "LeakageCostResult", ['energy_j', 'cost'])


def leakage_cost(*, power_w, running_s, price_1_j):
    """Energy and money that a leak takes in a time.

    Model: energy = power times time, cost = energy times price. A price a kilowatt-hour over 3.6e6
    is a price a joule.

    Arguments:
        power_w: Power that the leak takes. [W] Range [0;1e8].
        running_s: Time under pressure. [s] Range [0;1e10].
        price_1_j: Price of energy a joule, in any currency. [1/J] Range [0;1].

    Returns:
        energy_j: Energy. [J]
        cost: Cost, in the currency of the price. [the caller's unit]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_leakage_cost")((power_w, running_s, price_1_j,), LeakageCostResult)


DemandSummaryResult = _collections.namedtuple(
    "DemandSummaryResult", ['mean_m3_s', 'peak_m3_s', 'least_m3_s', 'air_m3', 'time_s'])


def demand_summary(*, flow_m3_s, duration_s):
    """Mean, greatest and least flow of a profile.

    Model: mean = sum q t / sum t.

    Arguments:
        flow_m3_s: Flows. [m3/s] Range [0;1e4].
        duration_s: Time that each lasts. [s] Range [0;1e9].

    Returns:
        mean_m3_s: Mean flow. [m3/s]
        peak_m3_s: Greatest flow of a step that lasts. [m3/s]
        least_m3_s: Least flow of a step that lasts. [m3/s]
        air_m3: Air used. [m3]
        time_s: Time of the whole profile. [s]

    Raises:
        DomainError: an element is outside its range
        DataError: no step that lasts

    Source: definition
    """
    return _runtime.call("freeair_demand_summary")((flow_m3_s, duration_s,), DemandSummaryResult)


DemandStoreResult = _collections.namedtuple(
    "DemandStoreResult", ['store_m3', 'short_s', 'duty'])


def demand_store(*, flow_m3_s, duration_s, capacity_m3_s):
    """Store that a capacity needs to serve a profile that repeats.

    Model: the running deficit d = max(0, d + (q - capacity) t), walked twice through the profile so
    that it begins as it ends; its greatest value is the store.

    Arguments:
        flow_m3_s: Flows. [m3/s] Range [0;1e4].
        duration_s: Time that each lasts. [s] Range [0;1e9].
        capacity_m3_s: Flow that the compressors can make. [m3/s] Range [0;1e4].

    Returns:
        store_m3: Free air to be stored. [m3]
        short_s: Time in which demand exceeds capacity. [s]
        duty: Mean demand over capacity: share of the time on load.

    Raises:
        DomainError: an input is outside its range
        DataError: no step that lasts
        NoSolutionError: the mean demand exceeds the capacity: no store is large enough

    Source: algebra: Rippl's mass curve, as for water reservoirs
    """
    return _runtime.call("freeair_demand_store")((flow_m3_s, duration_s, capacity_m3_s,), DemandStoreResult)


def demand_capacity(*, flow_m3_s, duration_s, store_m3):
    """Capacity that a store needs to serve a profile that repeats.

    Model: inverse of freeair_demand_store, bisected between mean and greatest demand, to rounding.

    Arguments:
        flow_m3_s: Flows. [m3/s] Range [0;1e4].
        duration_s: Time that each lasts. [s] Range [0;1e9].
        store_m3: Free air that can be stored. [m3] Range [0;1e12].

    Returns:
        capacity_m3_s: Flow that the compressors must make. [m3/s]

    Raises:
        DomainError: an input is outside its range
        DataError: no step that lasts

    Source: algebra: Rippl's mass curve, as for water reservoirs
    """
    return _runtime.call("freeair_demand_capacity")((flow_m3_s, duration_s, store_m3,))


DemandToolsResult = _collections.namedtuple(
    "DemandToolsResult", ['mean_m3_s', 'deviation_m3_s', 'connected_m3_s'])


def demand_tools(*, tools, flow_m3_s, use):
    """Demand of tools that are used now and then.

    Model: independent tools, each kind of so many with a flow and a share of the time in use: mean
    = sum n q u, deviation^2 = sum n q^2 u (1 - u), connected = sum n q.

    Arguments:
        tools: Tools of each kind, whole numbers. Range [0;1e6].
        flow_m3_s: Flow of one, in use. [m3/s] Range [0;1e3].
        use: Share of the time in use. Range [0;1].

    Returns:
        mean_m3_s: Mean demand. [m3/s]
        deviation_m3_s: Standard deviation of the demand. [m3/s]
        connected_m3_s: Demand of all at once. [m3/s]

    Raises:
        DomainError: an element is outside its range
        DataError: no kind

    Source: algebra: mean and variance of a sum of binomial variables
    """
    return _runtime.call("freeair_demand_tools")((tools, flow_m3_s, use,), DemandToolsResult)


DemandRunningResult = _collections.namedtuple(
    "DemandRunningResult", ['running', 'share'])


def demand_running(*, tools, use, confidence):
    """How many of a number of equal tools run at once at most, for so much of the time.

    Model: the least k with P(X <= k) at least the confidence, X binomial.

    Arguments:
        tools: Number of tools. Range [1;10000].
        use: Share of the time that each is in use. Range [0;1].
        confidence: Share of the time in which no more run. Range [0;1).

    Returns:
        running: Number that run at once.
        share: Probability that no more run.

    Raises:
        DomainError: an input is outside its range

    Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.1.20, binomial
    distribution
    """
    return _runtime.call("freeair_demand_running")((tools, use, confidence,), DemandRunningResult)


DemandSimultaneityResult = _collections.namedtuple(
    "DemandSimultaneityResult", ['simultaneity', 'diversity'])


def demand_simultaneity(*, group_m3_s, members_m3_s):
    """Simultaneity and diversity of a group of users.

    Model: simultaneity = greatest demand of the group / sum of the greatest demands of its members;
    diversity is its inverse.

    Arguments:
        group_m3_s: Greatest demand of the group. [m3/s] Range [0;1e6].
        members_m3_s: Sum of the greatest demands of the members. [m3/s] Range [1e-9;1e6].

    Returns:
        simultaneity: Simultaneity factor.
        diversity: Diversity factor; infinite without demand.

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_demand_simultaneity")((group_m3_s, members_m3_s,), DemandSimultaneityResult)


def demand_at_pressure(*, q1_m3_s, p1_pa, p2_pa, regulated):
    """Demand at another pressure.

    Model: q2 = q1 (regulated + (1 - regulated) p2/p1): users without a regulator, leaks and open
    nozzles, all choked, draw in proportion to the absolute pressure (the artificial demand of too
    high a pressure).

    Arguments:
        q1_m3_s: Demand at p1_pa. [m3/s] Range [0;1e4].
        p1_pa: Pressure, absolute. [Pa] Range [1e4;1e8].
        p2_pa: Another pressure, absolute. [Pa] Range [1e4;1e8].
        regulated: Share of the demand behind regulators set below both. Range [0;1].

    Returns:
        q2_m3_s: Demand at p2_pa. [m3/s]

    Raises:
        DomainError: an input is outside its range

    Source: US Department of Energy, Improving Compressed Air System Performance: a sourcebook for
    industry, artificial demand (from memory)
    """
    return _runtime.call("freeair_demand_at_pressure")((q1_m3_s, p1_pa, p2_pa, regulated,))


def energy_zero_load_share(*, control):
    """Power at no flow over power at full flow, as a starting point.

    Model: table: 0 start and stop, 0.25 load and unload, 0.7 modulation, 0.1 variable speed.
    Measure the machine at hand: unloaded screw compressors take from 0.15 to 0.35.

    Arguments:
        control: How it is controlled. One of ENERGY_CONTROL_* (enumeration freeair_energy_control).

    Returns:
        share: Share of the full power.

    Raises:
        DomainError: no such control

    Source: US Department of Energy, Improving Compressed Air System Performance: a sourcebook for
    industry, part-load curves (from memory); common practice
    """
    return _runtime.call("freeair_energy_zero_load_share")((control,))


EnergyPartLoadResult = _collections.namedtuple(
    "EnergyPartLoadResult", ['power_w', 'specific_ratio'])


def energy_part_load(*, full_w, zero_load, flow_share):
    """Power at part load.

    Model: straight line P = full (z + (1 - z) s), z the power at no flow over full, s the flow over
    full. The energy for a cubic metre grows as (z + (1 - z) s)/s. With load and unload it holds for
    ample storage; every unloading blows a sump or a line down and costs extra.

    Arguments:
        full_w: Power at full flow. [W] Range [0;1e9].
        zero_load: Power at no flow over full power. Range [0;1].
        flow_share: Flow over full flow. Range [0;1].

    Returns:
        power_w: Power. [W]
        specific_ratio: Energy for a cubic metre over that at full flow; infinite at no flow.

    Raises:
        DomainError: an input is outside its range

    Source: US Department of Energy, Improving Compressed Air System Performance: a sourcebook for
    industry, part-load curves (from memory)
    """
    return _runtime.call("freeair_energy_part_load")((full_w, zero_load, flow_share,), EnergyPartLoadResult)


EnergyFromTimesResult = _collections.namedtuple(
    "EnergyFromTimesResult", ['mean_w', 'energy_j'])


def energy_from_times(*, load_w, unload_w, load_s, unload_s):
    """Mean power and energy from times on load and off load.

    Model: E = P_load t_load + P_unload t_unload, mean = E / (t_load + t_unload).

    Arguments:
        load_w: Power on load. [W] Range [0;1e9].
        unload_w: Power off load; 0 when stopped. [W] Range [0;1e9].
        load_s: Time on load. [s] Range [0;1e10].
        unload_s: Time off load. [s] Range [0;1e10].

    Returns:
        mean_w: Mean power. [W]
        energy_j: Energy. [J]

    Raises:
        DomainError: an input is outside its range, or both times are zero

    Source: definition
    """
    return _runtime.call("freeair_energy_from_times")((load_w, unload_w, load_s, unload_s,), EnergyFromTimesResult)


def energy_input_power(*, shaft_w, motor_efficiency, drive_efficiency):
    """Electrical power from shaft power.

    Model: P = shaft / (motor_efficiency drive_efficiency).

    Arguments:
        shaft_w: Power at the compressor's shaft. [W] Range [0;1e9].
        motor_efficiency: Efficiency of the motor. Range [0.05;1].
        drive_efficiency: Efficiency of belt, gear, converter; 1 for none. Range [0.05;1].

    Returns:
        input_w: Electrical power. [W]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_energy_input_power")((shaft_w, motor_efficiency, drive_efficiency,))


EnergyCostResult = _collections.namedtuple(
    "EnergyCostResult", ['energy_j', 'cost', 'emission_kg'])


def energy_cost(*, power_w, running_s, price_1_j, emission_kg_j):
    """Energy, cost and emissions of a power over a time.

    Model: E = P t; cost = E price; emission = E factor.

    Arguments:
        power_w: Power taken from the supply. [W] Range [0;1e9].
        running_s: Time. [s] Range [0;1e10].
        price_1_j: Price of a joule, in any currency. [1/J] Range [0;1].
        emission_kg_j: Carbon dioxide for a joule; 0.4 kg/kWh is 1.1e-7. [kg/J] Range [0;1e-3].

    Returns:
        energy_j: Energy. [J]
        cost: Cost, in the currency of the price. [the caller's unit]
        emission_kg: Carbon dioxide. [kg]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_energy_cost")((power_w, running_s, price_1_j, emission_kg_j,), EnergyCostResult)


EnergyFromProfileResult = _collections.namedtuple(
    "EnergyFromProfileResult", ['energy_j', 'air_m3', 'missing_m3', 'specific_j_m3'])


def energy_from_profile(*, flow_m3_s, duration_s, capacity_m3_s, full_w, zero_load):
    """Energy of a compressor over a demand profile.

    Model: freeair_energy_part_load for each step; demand above the capacity is not met.

    Arguments:
        flow_m3_s: Flows, free air. [m3/s] Range [0;1e4].
        duration_s: Time that each lasts. [s] Range [0;1e9].
        capacity_m3_s: Full flow of the compressor, free air. [m3/s] Range [1e-9;1e4].
        full_w: Power at full flow. [W] Range [0;1e9].
        zero_load: Power at no flow over full power. Range [0;1].

    Returns:
        energy_j: Energy. [J]
        air_m3: Air made. [m3]
        missing_m3: Air not made. [m3]
        specific_j_m3: Energy for a cubic metre made; infinite when none is. [J/m3]

    Raises:
        DomainError: an input is outside its range
        DataError: no step that lasts

    Source: algebra: sum over the steps
    """
    return _runtime.call("freeair_energy_from_profile")((flow_m3_s, duration_s, capacity_m3_s, full_w, zero_load,), EnergyFromProfileResult)


EnergyHeatRecoveryResult = _collections.namedtuple(
    "EnergyHeatRecoveryResult", ['heat_j', 'fuel_j'])


def energy_heat_recovery(*, power_w, running_s, recoverable, used, heater_efficiency):
    """Heat that can be recovered, and the fuel that it saves.

    Model: heat = P t recoverable used, fuel = heat / heater_efficiency. Nine tenths of the power
    leaves an air-cooled machine as warm air, and as much as is wanted at the time is used.

    Arguments:
        power_w: Power taken from the supply. [W] Range [0;1e9].
        running_s: Time. [s] Range [0;1e10].
        recoverable: Share of the power that can be recovered. Range [0;1].
        used: Share of that which is wanted. Range [0;1].
        heater_efficiency: Efficiency of the heater that it spares. Range [0.05;1].

    Returns:
        heat_j: Heat recovered. [J]
        fuel_j: Fuel or electricity spared. [J]

    Raises:
        DomainError: an input is outside its range

    Caution: Discharge parts burn; let them cool.

    Source: US Department of Energy, Improving Compressed Air System Performance: a sourcebook for
    industry, heat recovery (from memory)
    """
    return _runtime.call("freeair_energy_heat_recovery")((power_w, running_s, recoverable, used, heater_efficiency,), EnergyHeatRecoveryResult)


EnergyPaybackResult = _collections.namedtuple(
    "EnergyPaybackResult", ['simple', 'discounted'])


def energy_payback(*, investment, saving, interest):
    """Time in which a saving pays for what it cost.

    Model: simple = investment / saving; with interest i a period, n = -ln(1 - i investment/saving)
    / ln(1 + i).

    Arguments:
        investment: What it costs. [the caller's unit] Range [0;1e15].
        saving: What it saves in a period, in the same currency. [the caller's unit] Range
            [1e-6;1e15].
        interest: Interest in a period. Range [0;1].

    Returns:
        simple: Periods, interest neglected.
        discounted: Periods with interest.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: the saving does not pay the interest

    Source: algebra: present value of an annuity
    """
    return _runtime.call("freeair_energy_payback")((investment, saving, interest,), EnergyPaybackResult)


def purity_particle_class(*, small_1_m3=None, medium_1_m3=None, large_1_m3=None, mass_kg_m3=None):
    """Particle class.

    Model: the best of the classes 1 to 5 whose limits hold for the numbers counted; a class that
    limits a size which was not counted is not given. Beyond them, or with nothing counted, 6 or 7
    by mass; X beyond that.

    Arguments:
        small_1_m3: Particles from 0.1 to 0.5 um in a cubic metre. [1/m3] Range [0;1e15]. Default:
            not counted.
        medium_1_m3: Particles from 0.5 to 1 um. [1/m3] Range [0;1e15]. Default: not counted.
        large_1_m3: Particles from 1 to 5 um. [1/m3] Range [0;1e15]. Default: not counted.
        mass_kg_m3: Mass of particles in a cubic metre. [kg/m3] Range [0;1]. Default: not weighed.

    Returns:
        class_code: Class, FREEAIR_PURITY_CLASS_X for X.

    Raises:
        DomainError: an input is outside its range
        DataError: nothing given decides

    Caution: Breathing air is governed by its own rules.

    Source: ISO 8573-1:2010, Compressed air - Contaminants and purity classes, Table 1
    """
    return _runtime.call("freeair_purity_particle_class")((small_1_m3, medium_1_m3, large_1_m3, mass_kg_m3,))


PurityParticleLimitsResult = _collections.namedtuple(
    "PurityParticleLimitsResult", ['small_1_m3', 'medium_1_m3', 'large_1_m3', 'mass_kg_m3'])


def purity_particle_limits(*, class_code):
    """Limits of a particle class.

    Model: table.

    Arguments:
        class_code: Class. Range [1;7].

    Returns:
        small_1_m3: Particles from 0.1 to 0.5 um in a cubic metre; infinite where not limited.
            [1/m3]
        medium_1_m3: Particles from 0.5 to 1 um. [1/m3]
        large_1_m3: Particles from 1 to 5 um. [1/m3]
        mass_kg_m3: Mass of particles in a cubic metre. [kg/m3]

    Raises:
        DomainError: class_code is outside its range

    Source: ISO 8573-1:2010, Table 1
    """
    return _runtime.call("freeair_purity_particle_limits")((class_code,), PurityParticleLimitsResult)


def purity_water_class(*, dew_point_k=None, liquid_kg_m3=None):
    """Water class.

    Model: 1 to 6 by the pressure dew point; where liquid water is present, or the dew point is
    above that of class 6, 7 to 9 by the liquid, X beyond.

    Arguments:
        dew_point_k: Pressure dew point. [K] Range [150;400]. Default: not measured.
        liquid_kg_m3: Liquid water in a cubic metre. [kg/m3] Range [0;1]. Default: none seen.

    Returns:
        class_code: Class, FREEAIR_PURITY_CLASS_X for X.

    Raises:
        DomainError: an input is outside its range
        DataError: nothing given decides

    Source: ISO 8573-1:2010, Table 2 and Table 3
    """
    return _runtime.call("freeair_purity_water_class")((dew_point_k, liquid_kg_m3,))


PurityWaterLimitsResult = _collections.namedtuple(
    "PurityWaterLimitsResult", ['dew_point_k', 'liquid_kg_m3'])


def purity_water_limits(*, class_code):
    """Limits of a water class.

    Model: table.

    Arguments:
        class_code: Class. Range [1;9].

    Returns:
        dew_point_k: Highest pressure dew point; infinite where not limited. [K]
        liquid_kg_m3: Most liquid water in a cubic metre; 0 for classes 1 to 6. [kg/m3]

    Raises:
        DomainError: class_code is outside its range

    Source: ISO 8573-1:2010, Table 2 and Table 3
    """
    return _runtime.call("freeair_purity_water_limits")((class_code,), PurityWaterLimitsResult)


def purity_oil_class(*, oil_kg_m3):
    """Oil class.

    Model: 1 to 4 by total oil, liquid, aerosol and vapour; X beyond.

    Arguments:
        oil_kg_m3: Total oil in a cubic metre. [kg/m3] Range [0;1].

    Returns:
        class_code: Class, FREEAIR_PURITY_CLASS_X for X.

    Raises:
        DomainError: oil_kg_m3 is outside its range

    Caution: Breathing air is governed by its own rules.

    Source: ISO 8573-1:2010, Table 4
    """
    return _runtime.call("freeair_purity_oil_class")((oil_kg_m3,))


def purity_oil_limit(*, class_code):
    """Limit of an oil class.

    Model: table.

    Arguments:
        class_code: Class. Range [1;4].

    Returns:
        oil_kg_m3: Most total oil in a cubic metre. [kg/m3]

    Raises:
        DomainError: class_code is outside its range

    Source: ISO 8573-1:2010, Table 4
    """
    return _runtime.call("freeair_purity_oil_limit")((class_code,))


def purity_concentration_at_reference(*, line, p_pa, t_k):
    """Concentration at the reference state of the classes from one in the line.

    Model: c_ref = c (1 bar / p) (T / 293.15 K), dry ideal gas. The same for numbers of particles.

    Arguments:
        line: Concentration, mass or number in a cubic metre of line air. [the caller's unit] Range
            [0;1e15].
        p_pa: Line pressure, absolute. [Pa] Range [1000;1e8].
        t_k: Line temperature. [K] Range [50;2000].

    Returns:
        reference: Concentration at 1 bar and 20 degC. [the caller's unit]

    Raises:
        DomainError: an input is outside its range

    Source: ISO 8573-1:2010, clause 4, reference conditions; algebra
    """
    return _runtime.call("freeair_purity_concentration_at_reference")((line, p_pa, t_k,))


AcceptanceTolerancesResult = _collections.namedtuple(
    "AcceptanceTolerancesResult", ['flow_tolerance', 'energy_tolerance'])


def acceptance_tolerances(*, flow_m3_s):
    """Tolerances of a guarantee by the size of the compressor.

    Model: table of relative tolerances: flow +-7, 6, 5, 4 %, specific energy +-8, 7, 6, 5 %, for a
    flow below 0.5, below 1.5, up to 15 and above 15 m3/min.

    Arguments:
        flow_m3_s: Guaranteed volume flow. [m3/s] Range [0;1e4].

    Returns:
        flow_tolerance: Relative tolerance of the volume flow.
        energy_tolerance: Relative tolerance of the specific energy.

    Raises:
        DomainError: flow_m3_s is outside its range

    Source: ISO 1217:2009, Displacement compressors - Acceptance tests, Annex C, as quoted on data
    sheets (from memory)
    """
    return _runtime.call("freeair_acceptance_tolerances")((flow_m3_s,), AcceptanceTolerancesResult)


AcceptanceCorrectResult = _collections.namedtuple(
    "AcceptanceCorrectResult", ['flow_m3_s', 'power_w', 'specific_j_m3', 'flow_factor', 'power_factor'])


def acceptance_correct(*, test, stages):
    """Measured flow and power at the conditions of the contract.

    Model: flow in proportion to the speed and to the volumetric efficiency 1 + c - c r^(1/(n N)) of
    the first of N equal stages, r the whole pressure ratio; power in proportion to that flow, to p1
    n/(n-1) (r^((n-1)/(n N)) - 1) and to the mean over the stages of T_i/T_1, T_i = coolant +
    approach behind each cooler. The standard's factors serve the same ends; the contract may
    prescribe them.

    Arguments:
        test: Test and contract.
        stages: Number of stages, with coolers between them. Range [1;10].

    Returns:
        flow_m3_s: Volume flow, at the inlet state of the contract. [m3/s]
        power_w: Power. [W]
        specific_j_m3: Specific energy, power over flow. [J/m3]
        flow_factor: Flow over measured flow.
        power_factor: Power over measured power.

    Raises:
        DomainError: a field is outside its range, or no pressure rise
        StructureVersionError: test has an unknown size or content
        NoSolutionError: nothing is delivered at one of the pressures

    Source: algebra: similarity of displacement compressors; the purpose of ISO 1217:2009,
    correction to contract conditions
    """
    return _runtime.call("freeair_acceptance_correct")((test, stages,), AcceptanceCorrectResult)


AcceptanceFlowVerdictResult = _collections.namedtuple(
    "AcceptanceFlowVerdictResult", ['verdict', 'deviation', 'probability'])


def acceptance_flow_verdict(*, flow_m3_s, uncertainty_m3_s, guarantee_m3_s, tolerance, confidence):
    """Whether a volume flow keeps its guarantee.

    Model: limit = guarantee (1 - tolerance); the decision is that of freeair_verdict_decide with
    this lower limit.

    Arguments:
        flow_m3_s: Flow, measured and corrected. [m3/s] Range [0;1e4].
        uncertainty_m3_s: Its standard uncertainty. [m3/s] Range [0;1e4].
        guarantee_m3_s: Guaranteed flow. [m3/s] Range [1e-6;1e4].
        tolerance: Relative tolerance; 0 for none. Range [0;0.5].
        confidence: Probability required of a firm verdict. Range (0.5;1).

    Returns:
        verdict: The decision. One of VERDICT_* (enumeration freeair_verdict).
        deviation: Flow over guarantee, less 1.
        probability: Probability that the guarantee is kept.

    Raises:
        DomainError: an input is outside its range

    Source: ISO 1217:2009, comparison with specified values (from memory); JCGM 106:2012, 8.3
    """
    return _runtime.call("freeair_acceptance_flow_verdict")((flow_m3_s, uncertainty_m3_s, guarantee_m3_s, tolerance, confidence,), AcceptanceFlowVerdictResult)


AcceptanceEnergyVerdictResult = _collections.namedtuple(
    "AcceptanceEnergyVerdictResult", ['verdict', 'deviation', 'probability'])


def acceptance_energy_verdict(*, specific_j_m3, uncertainty_j_m3, guarantee_j_m3, tolerance, confidence):
    """Whether a specific energy keeps its guarantee.

    Model: limit = guarantee (1 + tolerance); the decision is that of freeair_verdict_decide with
    this upper limit.

    Arguments:
        specific_j_m3: Specific energy, measured and corrected. [J/m3] Range [0;1e9].
        uncertainty_j_m3: Its standard uncertainty. [J/m3] Range [0;1e9].
        guarantee_j_m3: Guaranteed specific energy. [J/m3] Range [1;1e9].
        tolerance: Relative tolerance; 0 for none. Range [0;0.5].
        confidence: Probability required of a firm verdict. Range (0.5;1).

    Returns:
        verdict: The decision. One of VERDICT_* (enumeration freeair_verdict).
        deviation: Specific energy over guarantee, less 1.
        probability: Probability that the guarantee is kept.

    Raises:
        DomainError: an input is outside its range

    Source: ISO 1217:2009, comparison with specified values (from memory); JCGM 106:2012, 8.3
    """
    return _runtime.call("freeair_acceptance_energy_verdict")((specific_j_m3, uncertainty_j_m3, guarantee_j_m3, tolerance, confidence,), AcceptanceEnergyVerdictResult)


def cylinder_swept_volume(*, bore_m, stroke_m):
    """Swept volume of one cylinder end.

    Model: V = pi/4 D^2 L.

    Arguments:
        bore_m: Bore D. [m] Range [0.0001;10].
        stroke_m: Stroke L. [m] Range [0.0001;10].

    Returns:
        v_m3: Swept volume. [m3]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_cylinder_swept_volume")((bore_m, stroke_m,))


def cylinder_swept_volume_double_acting(*, bore_m, stroke_m, rod_diameter_m):
    """Swept volume of both ends of a double-acting cylinder.

    Model: V = pi/4 L (2 D^2 - d^2), the piston rod taking its part of the crank end.

    Arguments:
        bore_m: Bore D. [m] Range [0.0001;10].
        stroke_m: Stroke L. [m] Range [0.0001;10].
        rod_diameter_m: Diameter d of the piston rod, below the bore; 0 to neglect it. [m] Range
            [0;10].

    Returns:
        v_m3: Swept volume of one revolution. [m3]

    Raises:
        DomainError: an input is outside its range, or the rod is not thinner than the bore

    Source: definition
    """
    return _runtime.call("freeair_cylinder_swept_volume_double_acting")((bore_m, stroke_m, rod_diameter_m,))


def cylinder_clearance_volume(*, swept_m3, clearance):
    """Clearance volume.

    Model: V = c Vs.

    Arguments:
        swept_m3: Swept volume Vs. [m3] Range [1e-12;1000].
        clearance: Clearance c, a fraction of the swept volume. Range [0;2].

    Returns:
        v_m3: Clearance volume. [m3]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_cylinder_clearance_volume")((swept_m3, clearance,))


def cylinder_clearance_from_volume(*, swept_m3, clearance_m3):
    """Clearance as a fraction of the swept volume.

    Model: c = V / Vs. The clearance volume of a head can be measured by filling it with oil.

    Arguments:
        swept_m3: Swept volume Vs. [m3] Range [1e-12;1000].
        clearance_m3: Clearance volume V. [m3] Range [0;1000].

    Returns:
        clearance: Clearance.

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_cylinder_clearance_from_volume")((swept_m3, clearance_m3,))


def cylinder_volumetric_efficiency(*, p1_pa, p2_pa, clearance, n):
    """Volumetric efficiency.

    Model: 1 + c - c (p2/p1)^(1/n), n the exponent of re-expansion (that of compression has no part
    in it). Refers to air at p1 and at the temperature with which it lies in the cylinder. Absolute
    error below 1e-14.

    Arguments:
        p1_pa: Suction pressure in the cylinder, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure in the cylinder, absolute, not below p1_pa. [Pa] Range [1;1e8].
        clearance: Clearance c, a fraction of the swept volume. Range [0;2].
        n: Exponent of re-expansion. Range [0.5;10].

    Returns:
        efficiency: Volumetric efficiency.

    Raises:
        DomainError: an input is outside its range, or p2_pa is below p1_pa

    Source: Nag, Basic and Applied Thermodynamics, chapter 19, volumetric efficiency
    """
    return _runtime.call("freeair_cylinder_volumetric_efficiency")((p1_pa, p2_pa, clearance, n,))


def cylinder_zero_delivery_pressure(*, p1_pa, clearance, n):
    """Pressure at which delivery falls to zero.

    Model: p = p1 ((1 + c)/c)^n: the clearance air fills the whole cylinder when it re-expands. With
    losses and leaks a real cylinder stops sooner.

    Arguments:
        p1_pa: Suction pressure, absolute. [Pa] Range [1;1e8].
        clearance: Clearance c, a fraction of the swept volume. Range [0.0001;2].
        n: Exponent of re-expansion. Range [0.5;10].

    Returns:
        p_pa: Discharge pressure of zero delivery, absolute. [Pa]

    Raises:
        DomainError: an input is outside its range

    Caution: Never plug, reset or weaken a relief valve.

    Caution: Vessels are judged by an inspector under local codes, not by calculation.

    Source: Nag, Basic and Applied Thermodynamics, chapter 19, volumetric efficiency set to zero
    """
    return _runtime.call("freeair_cylinder_zero_delivery_pressure")((p1_pa, clearance, n,))


def cylinder_clearance_from_zero_delivery(*, p1_pa, p_zero_pa, n):
    """Clearance from the pressure at which delivery falls to zero.

    Model: c = 1 / ((p_zero/p1)^(1/n) - 1). A leak makes it look larger. Never dead-head a machine
    to find out.

    Arguments:
        p1_pa: Suction pressure, absolute. [Pa] Range [1;1e8].
        p_zero_pa: Discharge pressure of zero delivery, absolute, above p1_pa. [Pa] Range [1;1e8].
        n: Exponent of re-expansion. Range [0.5;10].

    Returns:
        clearance: Clearance, a fraction of the swept volume.

    Raises:
        DomainError: an input is outside its range, or p_zero_pa is not above p1_pa

    Caution: Never plug, reset or weaken a relief valve.

    Caution: A receiver under pressure stores energy like an explosive.

    Source: Nag, Basic and Applied Thermodynamics, Example 19.4
    """
    return _runtime.call("freeair_cylinder_clearance_from_zero_delivery")((p1_pa, p_zero_pa, n,))


def cylinder_clearance_from_volumetric_efficiency(*, p1_pa, p2_pa, n, efficiency):
    """Clearance from a measured volumetric efficiency.

    Model: c = (1 - efficiency) / ((p2/p1)^(1/n) - 1). All that heating, valves and leaks cost is
    counted as clearance: the value is an equivalent one, and its growth over the years shows wear.

    Arguments:
        p1_pa: Suction pressure, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure, absolute, above p1_pa. [Pa] Range [1;1e8].
        n: Exponent of re-expansion. Range [0.5;10].
        efficiency: Volumetric efficiency at the suction state. Range [0;1].

    Returns:
        clearance: Clearance, a fraction of the swept volume.

    Raises:
        DomainError: an input is outside its range, or p2_pa is not above p1_pa

    Source: algebra: volumetric efficiency solved for the clearance
    """
    return _runtime.call("freeair_cylinder_clearance_from_volumetric_efficiency")((p1_pa, p2_pa, n, efficiency,))


def cylinder_mean_effective_pressure(*, p1_pa, p2_pa, clearance, n_compression, n_expansion):
    """Mean effective pressure of the ideal cycle.

    Model: (1 + c) p1 nc/(nc-1) (r^((nc-1)/nc) - 1) - c r^(1/ne) p1 ne/(ne-1) (r^((ne-1)/ne) - 1), r
    = p2/p1: work of compression and delivery, less what re-expansion returns, over the swept
    volume. With the pressures inside the cylinder it contains the valve losses. Air is delivered if
    compression reaches p2 before top dead centre and re-expansion p1 before bottom dead centre.

    Arguments:
        p1_pa: Suction pressure in the cylinder, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure in the cylinder, absolute, not below p1_pa. [Pa] Range [1;1e8].
        clearance: Clearance c, a fraction of the swept volume. Range [0;2].
        n_compression: Exponent nc of compression. Range [0.5;10].
        n_expansion: Exponent ne of re-expansion. Range [0.5;10].

    Returns:
        mep_pa: Mean effective pressure. [Pa]

    Raises:
        DomainError: an input is outside its range, or p2_pa is below p1_pa

    Source: Rajput, A Textbook of Internal Combustion Engines, chapter 20, work with different
    indices
    """
    return _runtime.call("freeair_cylinder_mean_effective_pressure")((p1_pa, p2_pa, clearance, n_compression, n_expansion,))


def cylinder_indicated_power(*, mep_pa, swept_m3, speed_rev_s):
    """Indicated power.

    Model: P = pm Vs N (the textbook's pm L A N).

    Arguments:
        mep_pa: Mean effective pressure pm. [Pa] Range [-1e8;1e8].
        swept_m3: Swept volume of all ends together. [m3] Range [1e-12;1000].
        speed_rev_s: Crankshaft speed. [rev/s] Range [0;1000].

    Returns:
        power_w: Indicated power. [W]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_cylinder_indicated_power")((mep_pa, swept_m3, speed_rev_s,))


def cylinder_piston_speed(*, stroke_m, speed_rev_s):
    """Mean piston speed.

    Model: 2 L N.

    Arguments:
        stroke_m: Stroke L. [m] Range [0.0001;10].
        speed_rev_s: Crankshaft speed N. [rev/s] Range [0;1000].

    Returns:
        speed_m_s: Mean piston speed. [m/s]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_cylinder_piston_speed")((stroke_m, speed_rev_s,))


def delivery_of_stage(*, stage):
    """Delivery of a stage with heating, valve losses and leakage.

    Model: in the cylinder ps = p1 - suction drop, pd = p2 + discharge drop, eta = 1 + c - c
    (pd/ps)^(1/n_expansion). Inlet efficiency = eta (ps/p1)(T1/T_cylinder)(1 - leakage), free =
    inlet (p1/p_free)(T_free/T1); flows = efficiency times swept volume times speed. Indicated work
    as freeair_cylinder_mean_effective_pressure between ps and pd; the work spent on leaking air is
    in it.

    Arguments:
        stage: The stage.

    Returns:
        result: What it delivers; zeros with the warning.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a field is missing or outside its range, a drop leads outside 1 Pa to 1e8 Pa,
            or the discharge pressure in the cylinder is below that of suction

    Source: Rajput, A Textbook of Internal Combustion Engines, chapter 20, volumetric efficiency on
    free air
    """
    return _runtime.call("freeair_delivery_of_stage")((stage,))


def delivery_free_air(*, swept_m3, speed_rev_s, efficiency, p1_pa, t1_k, p_free_pa, t_free_k):
    """Free air delivery from a volumetric efficiency.

    Model: fad = efficiency Vs N (p1/p_free)(T_free/T1), the efficiency being that at the inlet
    state.

    Arguments:
        swept_m3: Swept volume Vs of a revolution. [m3] Range [1e-12;1000].
        speed_rev_s: Crankshaft speed N. [rev/s] Range [0;1000].
        efficiency: Volumetric efficiency at the inlet state. Range [0;1].
        p1_pa: Inlet pressure, absolute. [Pa] Range [1;1e8].
        t1_k: Inlet temperature. [K] Range [1;5000].
        p_free_pa: Pressure of the free air, absolute. [Pa] Range [1;1e8].
        t_free_k: Temperature of the free air. [K] Range [1;5000].

    Returns:
        fad_m3_s: Free air delivery. [m3/s]

    Raises:
        DomainError: an input is outside its range

    Source: Joel, Basic Engineering Thermodynamics, Example 14.1
    """
    return _runtime.call("freeair_delivery_free_air")((swept_m3, speed_rev_s, efficiency, p1_pa, t1_k, p_free_pa, t_free_k,))


def delivery_volumetric_efficiency(*, flow_m3_s, swept_m3, speed_rev_s):
    """Volumetric efficiency from a measured flow.

    Model: flow / (Vs N), at the state at which the flow is given: name it with the result.

    Arguments:
        flow_m3_s: Flow delivered, at the inlet state or as free air. [m3/s] Range [0;1e6].
        swept_m3: Swept volume Vs of a revolution. [m3] Range [1e-12;1000].
        speed_rev_s: Crankshaft speed N. [rev/s] Range [0.001;1000].

    Returns:
        efficiency: Volumetric efficiency at that state.

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_delivery_volumetric_efficiency")((flow_m3_s, swept_m3, speed_rev_s,))


def delivery_bore_from_stroke(*, flow_m3_s, efficiency, stroke_m, speed_rev_s, strokes):
    """Bore for a wanted flow, stroke given.

    Model: D = sqrt(4 flow / (pi L N strokes efficiency)).

    Arguments:
        flow_m3_s: Flow wanted, at the state to which the efficiency refers. [m3/s] Range [0;1e6].
        efficiency: Volumetric efficiency at that state. Range [0.001;1].
        stroke_m: Stroke L. [m] Range [0.0001;10].
        speed_rev_s: Crankshaft speed N. [rev/s] Range [0.001;1000].
        strokes: Suction strokes in a revolution: cylinders times 1, or 2 if double-acting. Range
            [1;64].

    Returns:
        bore_m: Bore D. [m]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: swept volume solved for the bore
    """
    return _runtime.call("freeair_delivery_bore_from_stroke")((flow_m3_s, efficiency, stroke_m, speed_rev_s, strokes,))


def delivery_bore_from_stroke_ratio(*, flow_m3_s, efficiency, stroke_ratio, speed_rev_s, strokes):
    """Bore for a wanted flow, stroke in proportion.

    Model: D = (4 flow / (pi stroke_ratio N strokes efficiency))^(1/3).

    Arguments:
        flow_m3_s: Flow wanted, at the state to which the efficiency refers. [m3/s] Range [0;1e6].
        efficiency: Volumetric efficiency at that state. Range [0.001;1].
        stroke_ratio: Stroke over bore. Range [0.01;100].
        speed_rev_s: Crankshaft speed N. [rev/s] Range [0.001;1000].
        strokes: Suction strokes in a revolution: cylinders times 1, or 2 if double-acting. Range
            [1;64].

    Returns:
        bore_m: Bore D. [m]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: swept volume solved for the bore
    """
    return _runtime.call("freeair_delivery_bore_from_stroke_ratio")((flow_m3_s, efficiency, stroke_ratio, speed_rev_s, strokes,))


def intercooler_effectiveness(*, arrangement, ntu, ratio):
    """Effectiveness of a cooler.

    Model: the heat passed over the most that could be, from NTU = UA/Cmin and c = Cmin/Cmax. Across
    with both unmixed by the exact series, not by one of its fits; the others in closed form.

    Arguments:
        arrangement: How the fluids pass. One of INTERCOOLER_ARRANGEMENT_* (enumeration
            freeair_intercooler_arrangement).
        ntu: Number of transfer units. Range [0;100].
        ratio: Lesser over larger heat capacity rate. Range [0;1].

    Returns:
        effectiveness: Effectiveness.

    Raises:
        DomainError: an input is outside its range

    Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, Table 11.3; Mason, Heat
    transfer in crossflow, 2nd US National Congress of Applied Mechanics (1955) 801
    """
    return _runtime.call("freeair_intercooler_effectiveness")((arrangement, ntu, ratio,))


def intercooler_ntu(*, arrangement, effectiveness, ratio):
    """Number of transfer units that an effectiveness needs.

    Model: inverse of freeair_intercooler_effectiveness, in closed form but for the series, which is
    bisected.

    Arguments:
        arrangement: How the fluids pass. One of INTERCOOLER_ARRANGEMENT_* (enumeration
            freeair_intercooler_arrangement).
        effectiveness: Effectiveness. Range [0;1).
        ratio: Lesser over larger heat capacity rate. Range [0;1].

    Returns:
        ntu: Number of transfer units.

    Raises:
        DomainError: an input is outside its range
        NoSolutionError: no cooler of this arrangement up to NTU = 100 is so effective

    Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, Table 11.4
    """
    return _runtime.call("freeair_intercooler_ntu")((arrangement, effectiveness, ratio,))


IntercoolerOutletResult = _collections.namedtuple(
    "IntercoolerOutletResult", ['air_out_k', 'coolant_out_k', 'heat_w', 'effectiveness'])


def intercooler_outlet(*, arrangement, ua_w_k, air_w_k, air_in_k, coolant_w_k, coolant_in_k):
    """What a cooler does.

    Model: Q = effectiveness Cmin (t_air - t_coolant); each outlet from Q over its capacity rate.

    Arguments:
        arrangement: How the fluids pass. One of INTERCOOLER_ARRANGEMENT_* (enumeration
            freeair_intercooler_arrangement).
        ua_w_k: Size: heat transfer coefficient times area. [W/K] Range [0;1e7].
        air_w_k: Heat capacity rate of the air. [W/K] Range [0.001;1e7].
        air_in_k: Temperature of the air at the inlet. [K] Range [50;2000].
        coolant_w_k: Heat capacity rate of the coolant. [W/K] Range [0.001;1e9].
        coolant_in_k: Temperature of the coolant at the inlet. [K] Range [50;2000].

    Returns:
        air_out_k: Temperature of the air at the outlet. [K]
        coolant_out_k: Temperature of the coolant at the outlet. [K]
        heat_w: Heat from air to coolant. [W]
        effectiveness: Effectiveness.

    Raises:
        DomainError: an input is outside its range, or NTU is above 100

    Caution: Discharge parts burn; let them cool.

    Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4
    """
    return _runtime.call("freeair_intercooler_outlet")((arrangement, ua_w_k, air_w_k, air_in_k, coolant_w_k, coolant_in_k,), IntercoolerOutletResult)


IntercoolerSizeFromReadingsResult = _collections.namedtuple(
    "IntercoolerSizeFromReadingsResult", ['ua_w_k', 'heat_w'])


def intercooler_size_from_readings(*, arrangement, air_w_k, air_in_k, air_out_k, coolant_w_k, coolant_in_k):
    """Size of a cooler from its readings: against the size when clean it tells fouling.

    Model: Q = air_w_k (air_in - air_out), effectiveness, NTU, UA = NTU Cmin.

    Arguments:
        arrangement: How the fluids pass. One of INTERCOOLER_ARRANGEMENT_* (enumeration
            freeair_intercooler_arrangement).
        air_w_k: Heat capacity rate of the air. [W/K] Range [0.001;1e7].
        air_in_k: Temperature of the air at the inlet. [K] Range [50;2000].
        air_out_k: Temperature of the air at the outlet. [K] Range [50;2000].
        coolant_w_k: Heat capacity rate of the coolant. [W/K] Range [0.001;1e9].
        coolant_in_k: Temperature of the coolant at the inlet. [K] Range [50;2000].

    Returns:
        ua_w_k: Size: heat transfer coefficient times area. [W/K]
        heat_w: Heat from air to coolant. [W]

    Raises:
        DomainError: an input is outside its range, or air and coolant enter equally warm
        NoSolutionError: no cooler of this arrangement gives such readings

    Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4
    """
    return _runtime.call("freeair_intercooler_size_from_readings")((arrangement, air_w_k, air_in_k, air_out_k, coolant_w_k, coolant_in_k,), IntercoolerSizeFromReadingsResult)


IntercoolerApproachResult = _collections.namedtuple(
    "IntercoolerApproachResult", ['approach_k', 'effectiveness'])


def intercooler_approach(*, air_in_k, air_out_k, coolant_in_k):
    """Approach and temperature effectiveness of a cooler from three thermometers.

    Model: approach = air_out - coolant_in; effectiveness = (air_in - air_out)/(air_in -
    coolant_in). An approach of 5 K to water and 10 K to ambient air is usual: common practice, no
    source.

    Arguments:
        air_in_k: Temperature of the air at the inlet. [K] Range [50;2000].
        air_out_k: Temperature of the air at the outlet. [K] Range [50;2000].
        coolant_in_k: Temperature of the coolant at the inlet, below air_in_k. [K] Range [50;2000].

    Returns:
        approach_k: Approach. [K]
        effectiveness: Temperature effectiveness of the air side.

    Raises:
        DomainError: an input is outside its range, or coolant_in_k is not below air_in_k

    Source: definition
    """
    return _runtime.call("freeair_intercooler_approach")((air_in_k, air_out_k, coolant_in_k,), IntercoolerApproachResult)


def intercooler_mean_difference(*, difference1_k, difference2_k):
    """Logarithmic mean of two temperature differences.

    Model: (d1 - d2)/ln(d1/d2), which is d1 where they are equal.

    Arguments:
        difference1_k: Difference at one end. [K] Range [1e-6;2000].
        difference2_k: Difference at the other. [K] Range [1e-6;2000].

    Returns:
        mean_k: Mean difference. [K]

    Raises:
        DomainError: an input is outside its range

    Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.3
    """
    return _runtime.call("freeair_intercooler_mean_difference")((difference1_k, difference2_k,))


def intercooler_coolant_flow(*, heat_w, cp_j_kg_k, rise_k):
    """Flow of coolant that takes up a heat within a rise of its temperature.

    Model: m = Q/(cp rise).

    Arguments:
        heat_w: Heat. [W] Range [0;1e9].
        cp_j_kg_k: Specific heat of the coolant; 4186 for water, 1005 for air. [J/(kg K)] Range
            [10;100000].
        rise_k: Rise of its temperature. [K] Range [0.01;1000].

    Returns:
        mass_kg_s: Mass flow. [kg/s]

    Raises:
        DomainError: an input is outside its range

    Source: algebra: first law for steady flow
    """
    return _runtime.call("freeair_intercooler_coolant_flow")((heat_w, cp_j_kg_k, rise_k,))


IntercoolerPressureResult = _collections.namedtuple(
    "IntercoolerPressureResult", ['p_pa', 'efficiency1', 'efficiency2', 'delivery_m3_s'])


def intercooler_pressure(*, stages):
    """Pressure between two stages at which a machine settles.

    Model: what the first stage delivers the second takes in, V1 e1 p1/T1 = V2 e2 (p - drop)/T2,
    with the volumetric efficiencies e of freeair_cylinder_volumetric_efficiency, between p and p1
    and between p2 and p - drop. Without clearance p = drop + p1 (V1/V2)(T2/T1). Bisection, to
    rounding.

    Arguments:
        stages: The two stages.

    Returns:
        p_pa: Pressure behind the first stage, absolute. [Pa]
        efficiency1: Volumetric efficiency of the first stage.
        efficiency2: Volumetric efficiency of the second stage.
        delivery_m3_s: Delivery, as volume at p1 and t1. [m3/s]

    Raises:
        DomainError: a field is outside its range, or p2_pa is not above p1_pa
        StructureVersionError: stages has an unknown size or content
        NoSolutionError: nothing is delivered: the clearances are too large for so much pressure

    Source: algebra: continuity between the stages
    """
    return _runtime.call("freeair_intercooler_pressure")((stages,), IntercoolerPressureResult)


WetCoolerOutletResult = _collections.namedtuple(
    "WetCoolerOutletResult", ['after', 'coolant_out_k', 'heat_w', 'effectiveness'])


def wet_cooler_outlet(*, arrangement, ua_w_k, before, p_pa, separation, coolant_w_k, coolant_in_k):
    """What a cooler does with moist air.

    Model: along the way of the air, dry and then wet, dUA = dQ/(T - Tc) in counterflow, Q by the
    enthalpies of freeair_condensate_step(), the coolant warmed by what the air gave up; 8 and 16
    parts dry, 8 and 16 wet, each with its logarithmic mean difference, extrapolated: within 1e-5.
    For another arrangement NTU over that of counterflow at the same effectiveness, as
    freeair_intercooler_ntu() has them with the mean heat capacity rate of the air. The outlet
    temperature that asks for ua_w_k by false position, at most 200 steps. The film of water and its
    resistance are part of ua_w_k.

    Arguments:
        arrangement: How the fluids pass. One of INTERCOOLER_ARRANGEMENT_* (enumeration
            freeair_intercooler_arrangement).
        ua_w_k: Size: heat transfer coefficient times area. [W/K] Range [0;1e7].
        before: The flow before; p_pa and t_k are needed.
        p_pa: Pressure after the cooler, absolute. [Pa] Range [1000;1e7].
        separation: Share of the water that is caught and drained behind the cooler. Range [0;1].
        coolant_w_k: Heat capacity rate of the coolant. [W/K] Range [0.001;1e9].
        coolant_in_k: Temperature of the coolant at the inlet, below that of the air. [K] Range
            [213.15;573.15].

    Returns:
        after: The flow after.
        coolant_out_k: Temperature of the coolant at the outlet. [K]
        heat_w: Heat from air to coolant. [W]
        effectiveness: Effectiveness: the heat over the most that the lesser heat capacity rate
            could take up.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: an input or field is outside its range, or the coolant is not colder than the
            air
        NoSolutionError: there would be more than ten times as much vapour as air

    Caution: Discharge parts burn; let them cool.

    Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4; IAPWS G8-10 (2010)
    """
    return _runtime.call("freeair_wet_cooler_outlet")((arrangement, ua_w_k, before, p_pa, separation, coolant_w_k, coolant_in_k,), WetCoolerOutletResult)


WetCoolerSizeFromReadingsResult = _collections.namedtuple(
    "WetCoolerSizeFromReadingsResult", ['ua_w_k', 'heat_w', 'condensate_kg_s'])


def wet_cooler_size_from_readings(*, arrangement, before, p_pa, air_out_k, coolant_w_k, coolant_in_k):
    """Size of a cooler from its readings, and the water that falls out of the air.

    Model: as freeair_wet_cooler_outlet(), without a search. Against the size when clean it tells
    fouling, on a damp day too.

    Arguments:
        arrangement: How the fluids pass. One of INTERCOOLER_ARRANGEMENT_* (enumeration
            freeair_intercooler_arrangement).
        before: The flow before; p_pa and t_k are needed.
        p_pa: Pressure after the cooler, absolute. [Pa] Range [1000;1e7].
        air_out_k: Temperature of the air after it. [K] Range [213.15;573.15].
        coolant_w_k: Heat capacity rate of the coolant. [W/K] Range [0.001;1e9].
        coolant_in_k: Temperature of the coolant at the inlet, below that of the air. [K] Range
            [213.15;573.15].

    Returns:
        ua_w_k: Size: heat transfer coefficient times area. [W/K]
        heat_w: Heat from air to coolant. [W]
        condensate_kg_s: Water that flows along behind the cooler, before a separator. [kg/s]

    Raises:
        StructureVersionError: before has an unknown size
        DomainError: an input or field is outside its range, or the coolant or the outlet is not
            colder than the inlet
        NoSolutionError: no cooler of this arrangement gives such readings, or there would be more
            than ten times as much vapour as air

    Source: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 11.4; IAPWS G8-10 (2010)
    """
    return _runtime.call("freeair_wet_cooler_size_from_readings")((arrangement, before, p_pa, air_out_k, coolant_w_k, coolant_in_k,), WetCoolerSizeFromReadingsResult)


def indicator_mep_from_card(*, area_m2, length_m, scale_pa, scale_m):
    """Mean effective pressure from a paper card.

    Model: pm = area / length * scale_pa / scale_m, the spring scale given as a pressure and the
    height it draws.

    Arguments:
        area_m2: Area of the card, by planimeter. [m2] Range [0;1].
        length_m: Length of the card. [m] Range [0.001;10].
        scale_pa: Pressure that the spring shows as scale_m. [Pa] Range [1;1e8].
        scale_m: Height that scale_pa draws. [m] Range [0.00001;1].

    Returns:
        mep_pa: Mean effective pressure. [Pa]

    Raises:
        DomainError: an input is outside its range

    Source: definition
    """
    return _runtime.call("freeair_indicator_mep_from_card")((area_m2, length_m, scale_pa, scale_m,))


IndicatorWorkResult = _collections.namedtuple(
    "IndicatorWorkResult", ['w_j', 'mep_pa'])


def indicator_work(*, p_pa, v_m3):
    """Indicated work and mean effective pressure from points of a card.

    Model: w = -sum (p_i + p_i+1)/2 (V_i+1 - V_i) around the loop, which the last point closes to
    the first; positive where work is put into the gas. pm = w over the greatest less the smallest
    volume. The trapezoids cut corners: the ideal diagram at equal crank angles, ratio up to 12,
    errs by less than 0.06 % with 180 points and 0.005 % with 720. A dead centre that is off by one
    degree costs far more: 2 % at a ratio of 3, 4 % at 8, up to 9 % at 12.

    Arguments:
        p_pa: Pressures in order of time, absolute or gauge alike. [Pa] Range [-1e8;1e8].
        v_m3: Volumes. [m3] Range [0;1000].

    Returns:
        w_j: Work of a revolution. [J]
        mep_pa: Mean effective pressure. [Pa]

    Raises:
        DataError: there are fewer than 3 points, or all volumes are equal
        DomainError: an input is outside its range

    Source: algebra: closed integral of -p dV by the trapezoid rule
    """
    return _runtime.call("freeair_indicator_work")((p_pa, v_m3,), IndicatorWorkResult)


IndicatorExponentResult = _collections.namedtuple(
    "IndicatorExponentResult", ['n', 'n_uncertainty'])


def indicator_exponent(*, p_pa, v_m3):
    """Polytropic exponent along a stretch of a card, by least squares.

    Model: ln p = a - n ln V fitted to the points of a compression or re-expansion, all valves shut.
    The standard uncertainty comes from their scatter, points - 2 degrees of freedom; it does not
    contain an error of pressure or clearance that all points share. An error of 0.01 in the
    clearance moves the exponent of compression by 0.02 to 0.03, that of re-expansion by 0.06 to
    0.3.

    Arguments:
        p_pa: Pressures, absolute. [Pa] Range [1;1e8].
        v_m3: Volumes, clearance included. [m3] Range [1e-12;1000].

    Returns:
        n: Exponent.
        n_uncertainty: Standard uncertainty of the exponent.

    Raises:
        DataError: there are fewer than 3 points, or all volumes are equal
        DomainError: an input is outside its range
        NoSolutionError: the exponent is not from 0.5 to 10

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, H.3, straight line
    by least squares
    """
    return _runtime.call("freeair_indicator_exponent")((p_pa, v_m3,), IndicatorExponentResult)


IndicatorIdealResult = _collections.namedtuple(
    "IndicatorIdealResult", ['p_pa', 'v_m3'])


def indicator_ideal(*, p1_pa, p2_pa, clearance, swept_m3, n_compression, n_expansion, points):
    """Ideal diagram, to be drawn.

    Model: compression, discharge, re-expansion, suction with instant valves, from bottom dead
    centre. Three eighths of the steps on either curve, equal in ln p, the rest along the strokes;
    the last point is the first. The trapezoid rule on these points overstates the work, by less
    than 0.02 % with 200 points at a ratio of 12.

    Arguments:
        p1_pa: Suction pressure in the cylinder, absolute. [Pa] Range [1;1e8].
        p2_pa: Discharge pressure in the cylinder, absolute, above p1_pa. [Pa] Range [1;1e8].
        clearance: Clearance as a fraction of the swept volume. Range [0;2].
        swept_m3: Swept volume of the cylinder end. [m3] Range [1e-12;1000].
        n_compression: Exponent of compression. Range [0.5;10].
        n_expansion: Exponent of re-expansion. Range [0.5;10].
        points: Number of points, at least 9. Range [9;1e9].

    Returns:
        p_pa: Pressures. [Pa]
        v_m3: Volumes, clearance included. [m3]

    Raises:
        DataError: there is room for fewer than 9 points
        DomainError: an input is outside its range, or p2_pa is not above p1_pa
        NoSolutionError: nothing is delivered against p2_pa, or the curves cross: no diagram

    Source: algebra: p V^n = constant on either curve
    """
    return _runtime.call("freeair_indicator_ideal")((p1_pa, p2_pa, clearance, swept_m3, n_compression, n_expansion, points,), IndicatorIdealResult)


def crank_position(*, stroke_m, rod_length_m, angle_rad):
    """Distance of the piston from top dead centre.

    Model: x = r (1 - cos a) + l (1 - sqrt(1 - (r/l)^2 sin^2 a)), r half the stroke, l the rod
    length.

    Arguments:
        stroke_m: Stroke. [m] Range [0.0001;10].
        rod_length_m: Length of the connecting rod, centre to centre, at least 0.6 strokes. [m]
            Range [0.00006;100].
        angle_rad: Crank angle from top dead centre. [rad] Range [-1000;1000].

    Returns:
        position_m: Distance from top dead centre. [m]

    Raises:
        DomainError: an input is outside its range, or the rod is too short

    Source: algebra: plane trigonometry of the slider-crank
    """
    return _runtime.call("freeair_crank_position")((stroke_m, rod_length_m, angle_rad,))


def crank_angle_from_position(*, stroke_m, rod_length_m, position_m):
    """Crank angle at which the piston has a position.

    Model: inverse of freeair_crank_position from the triangle of crank, rod and axis, from 0 to pi:
    the stroke away from top dead centre. The other angle is 2 pi minus this one.

    Arguments:
        stroke_m: Stroke. [m] Range [0.0001;10].
        rod_length_m: Length of the connecting rod, centre to centre, at least 0.6 strokes. [m]
            Range [0.00006;100].
        position_m: Distance from top dead centre, at most the stroke. [m] Range [0;10].

    Returns:
        angle_rad: Crank angle. [rad]

    Raises:
        DomainError: an input is outside its range, the rod is too short or the position beyond the
            stroke

    Source: algebra: plane trigonometry of the slider-crank
    """
    return _runtime.call("freeair_crank_angle_from_position")((stroke_m, rod_length_m, position_m,))


def crank_volume(*, bore_m, stroke_m, clearance, rod_length_m, angle_rad):
    """Volume in a cylinder at a crank angle.

    Model: V = pi/4 D^2 (x + c L), x the position, c the clearance, L the stroke.

    Arguments:
        bore_m: Bore D. [m] Range [0.0001;10].
        stroke_m: Stroke L. [m] Range [0.0001;10].
        clearance: Clearance c as a fraction of the swept volume. Range [0;2].
        rod_length_m: Length of the connecting rod, centre to centre, at least 0.6 strokes. [m]
            Range [0.00006;100].
        angle_rad: Crank angle from top dead centre. [rad] Range [-1000;1000].

    Returns:
        v_m3: Volume, clearance included. [m3]

    Raises:
        DomainError: an input is outside its range, or the rod is too short

    Source: algebra: plane trigonometry of the slider-crank
    """
    return _runtime.call("freeair_crank_volume")((bore_m, stroke_m, clearance, rod_length_m, angle_rad,))


def crank_velocity(*, stroke_m, rod_length_m, speed_rev_s, angle_rad):
    """Velocity of the piston.

    Model: v = w r sin a (1 + q cos a / sqrt(1 - q^2 sin^2 a)), w = 2 pi N, q = r/l; positive away
    from top dead centre.

    Arguments:
        stroke_m: Stroke. [m] Range [0.0001;10].
        rod_length_m: Length of the connecting rod, centre to centre, at least 0.6 strokes. [m]
            Range [0.00006;100].
        speed_rev_s: Crankshaft speed N. [rev/s] Range [0;1000].
        angle_rad: Crank angle from top dead centre. [rad] Range [-1000;1000].

    Returns:
        velocity_m_s: Velocity. [m/s]

    Raises:
        DomainError: an input is outside its range, or the rod is too short

    Source: algebra: derivative of the position
    """
    return _runtime.call("freeair_crank_velocity")((stroke_m, rod_length_m, speed_rev_s, angle_rad,))


def crank_gas_load(*, bore_m, rod_diameter_m, p_head_pa, p_crank_pa, p_ambient_pa):
    """Load of the gas on the connecting rod.

    Model: F = pi/4 (p_head D^2 - p_crank (D^2 - d^2) - p_ambient d^2); positive presses the rod. A
    trunk piston has d = 0 and the crankcase pressure below it. The greatest is at discharge
    pressure.

    Arguments:
        bore_m: Bore D. [m] Range [0.0001;10].
        rod_diameter_m: Diameter d of a piston rod, below the bore; 0 for a trunk piston. [m] Range
            [0;10].
        p_head_pa: Pressure on the head side, absolute. [Pa] Range [1;1e8].
        p_crank_pa: Pressure on the crank side, absolute. [Pa] Range [1;1e8].
        p_ambient_pa: Pressure on the end of the piston rod, absolute. [Pa] Range [1;1e8].

    Returns:
        load_n: Load. [N]

    Raises:
        DomainError: an input is outside its range, or the rod is not thinner than the bore

    Source: algebra: balance of forces on the piston
    """
    return _runtime.call("freeair_crank_gas_load")((bore_m, rod_diameter_m, p_head_pa, p_crank_pa, p_ambient_pa,))


def crank_inertia_load(*, mass_kg, stroke_m, rod_length_m, speed_rev_s, angle_rad):
    """Load of the reciprocating mass on the connecting rod.

    Model: F = -m w^2 r (cos a + q (cos 2a + q^2 sin^4 a) / (1 - q^2 sin^2 a)^1.5), q = r/l;
    positive presses the rod. At top dead centre it pulls with m w^2 r (1 + q), at bottom dead
    centre it presses with m w^2 r (1 - q).

    Arguments:
        mass_kg: Piston, pin, piston rod and the reciprocating part of the connecting rod. [kg]
            Range [0;10000].
        stroke_m: Stroke. [m] Range [0.0001;10].
        rod_length_m: Length of the connecting rod, centre to centre, at least 0.6 strokes. [m]
            Range [0.00006;100].
        speed_rev_s: Crankshaft speed. [rev/s] Range [0;1000].
        angle_rad: Crank angle from top dead centre. [rad] Range [-1000;1000].

    Returns:
        load_n: Load. [N]

    Raises:
        DomainError: an input is outside its range, or the rod is too short

    Source: algebra: second derivative of the position
    """
    return _runtime.call("freeair_crank_inertia_load")((mass_kg, stroke_m, rod_length_m, speed_rev_s, angle_rad,))


def crank_torque(*, load_n, stroke_m, rod_length_m, angle_rad):
    """Torque that a load on the connecting rod asks of the shaft.

    Model: T = -F dx/da, F the sum of gas and inertia load along the cylinder axis; positive is
    driven. Friction is left out. Its mean over a revolution times 2 pi N is the indicated power.

    Arguments:
        load_n: Load, positive pressing the rod. [N] Range [-1e9;1e9].
        stroke_m: Stroke. [m] Range [0.0001;10].
        rod_length_m: Length of the connecting rod, centre to centre, at least 0.6 strokes. [m]
            Range [0.00006;100].
        angle_rad: Crank angle from top dead centre. [rad] Range [-1000;1000].

    Returns:
        torque_nm: Torque. [N m]

    Raises:
        DomainError: an input is outside its range, or the rod is too short

    Source: algebra: virtual work
    """
    return _runtime.call("freeair_crank_torque")((load_n, stroke_m, rod_length_m, angle_rad,))


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


def fault_apply(*, machine, site=None, fault, severity):
    """Applies a fault to a description and its site.

    Model: the change documented at each code, in addition to what the description already holds;
    the parameter is continuous and monotone in the severity, and unchanged at severity 0. A valve
    fault of a stage of several cylinders affects the first of them, unless lp_leaking_cylinders or
    hp_leaking_cylinders says otherwise or the stage already leaks. The outputs may be the same
    structures as the inputs.

    Arguments:
        machine: Description, possibly with NaN fields.
        site: Site, possibly with NaN fields. Default: MachineSite().
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


def cycle_point(*, machine, site=None, receiver_pa, receiver_k=None, accuracy=None):
    """Operating point of a machine against a receiver at constant pressure.

    Model: mass and energy balances dm/dt = sum m', dU/dt = sum m' h - Q - p dV/dt of each volume
    over the crank angle, isentropic nozzles, quasi-static valves, wall heat Nu = a Re^b, integrated
    with an L-stable pair of order 4(3) to periodicity by Newton's method. At most 1000 revolutions,
    usually 6 to 12.

    Arguments:
        machine: The machine.
        site: The site. Default: MachineSite().
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
        NoSolutionError: the description leads to no physical state, or to walls above 3000 K

    Caution: Discharge parts burn; let them cool.

    Source: Annand, Heat transfer in the cylinders of reciprocating internal combustion engines,
    Proc. IMechE 177 (1963), form of the wall heat law; the balances are common practice
    """
    return _runtime.call("freeair_cycle_point")((machine, site, receiver_pa, receiver_k, accuracy,))


CycleCardResult = _collections.namedtuple(
    "CycleCardResult", ['v_m3', 'p_pa', 't_k'])


def cycle_card(*, machine, site=None, receiver_pa, receiver_k=None, accuracy=None, cylinder, n):
    """Indicator card of one cylinder at an operating point.

    Model: as in freeair_cycle_point; n points at equal crank angles from the top dead centre of the
    first cylinder, so that point i is at i/n of a revolution.

    Arguments:
        machine: The machine.
        site: The site. Default: MachineSite().
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
        NoSolutionError: the description leads to no physical state, or to walls above 3000 K

    Source: common practice
    """
    return _runtime.call("freeair_cycle_card")((machine, site, receiver_pa, receiver_k, accuracy, cylinder, n,), CycleCardResult)


PredictionPumpupResult = _collections.namedtuple(
    "PredictionPumpupResult", ['result', 't_s', 'p_pa', 'gas_k', 'delivery_m3_s'])


def prediction_pumpup(*, machine, site=None, run, n):
    """Pump-up of the receiver: the curve and what becomes of the run.

    Model: dm/dt = delivery - leak - demand; dU/dt = enthalpy in - enthalpy out - UA (p/p_a)^(2/3)
    (T - Tw); C dTw/dt = the same heat - UA_wall (Tw - T_ambient); U = p V / (k - 1). Demand fades
    over the last 2 % above ambient pressure. Points lie at equal times from start to end of the
    run.

    Arguments:
        machine: The machine.
        site: The site. Default: MachineSite().
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
        NoSolutionError: the description leads to no physical state, or to walls above 3000 K

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Never plug, reset or weaken a relief valve.

    Source: common practice
    """
    return _runtime.call("freeair_prediction_pumpup")((machine, site, run, n,), PredictionPumpupResult)


PredictionTimesResult = _collections.namedtuple(
    "PredictionTimesResult", ['result', 't_s'])


def prediction_times(*, machine, site=None, run, p_pa):
    """Times at which the receiver gauge passes given readings.

    Model: as freeair_prediction_pumpup, read off at pressures instead of times.

    Arguments:
        machine: The machine.
        site: The site. Default: MachineSite().
        run: The run; it goes on to the highest of the readings, to_pa is ignored.
        p_pa: Gauge readings, absolute, in any order. [Pa] Range (0;1e8).

    Returns:
        result: What became of it.
        t_s: Time of each; infinite when not reached, 0 when at or below the start. [s]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or no reading is above the start
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state, or to walls above 3000 K

    Source: common practice
    """
    return _runtime.call("freeair_prediction_times")((machine, site, run, p_pa,), PredictionTimesResult)


def prediction_level_off(*, machine, site=None, upper_pa=None):
    """Receiver pressure at which a machine levels off: delivery equals leaks and demand.

    Model: root of delivery - leak - demand over receiver pressure with gas at ambient temperature,
    by bracketing; delivery below 5e-5 of the displacement counts as none.

    Arguments:
        machine: The machine.
        site: The site. Default: MachineSite().
        upper_pa: Highest pressure of interest, absolute. [Pa] Range (0;1e8]. Default: twice
            cut_out_pa.

    Returns:
        p_pa: Gauge reading, absolute; infinite when it still delivers at upper_pa. [Pa]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or upper_pa is not above barometric pressure
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state, or to walls above 3000 K

    Caution: Never plug, reset or weaken a relief valve.

    Source: common practice
    """
    return _runtime.call("freeair_prediction_level_off")((machine, site, upper_pa,))


PredictionLeakDownResult = _collections.namedtuple(
    "PredictionLeakDownResult", ['t_s', 'p_pa'])


def prediction_leak_down(*, machine, site=None, from_pa, gas_k=None, wall_k=None, duration_s, with_check_valve, with_downstream, n):
    """Fall of the receiver pressure after the machine stops.

    Model: the receiver alone, as in freeair_prediction_pumpup; gas leaves through the leak of the
    check valve to the vented discharge line (if with_check_valve) and through the downstream leak
    (if with_downstream).

    Arguments:
        machine: The machine.
        site: The site. Default: MachineSite().
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


def rating_complete(*, machine, site=None):
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
        site: The site at which the rating holds. Default: MachineSite().

    Returns:
        complete: The complete description.
        adjusted: What was adjusted, bits of freeair_rating_adjusted added up.
        delivery_m3_s: What the complete description delivers at rated_pa. [m3/s]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or too much is missing
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state, or to walls above 3000 K

    Source: common practice
    """
    return _runtime.call("freeair_rating_complete")((machine, site,), RatingCompleteResult)


def pumpup_analyse(*, test):
    """Delivery from two pressures and the time between them.

    Model: net mass of dry air = V/R ((p2 - e2)/T2 - (p1 - e1)/T1), delivery = mass R T_a / ((p_a -
    e_a) t). The vapour pressure is e_a = humidity e_s(T_a) outside and e_s min(1, humidity p/p_a)
    in the receiver. A temperature that is not given comes from the lumped model of the receiver: an
    inflow w = w0 (1 - fall x), x = (p - p_a) / (p2 - p_a), is found that makes the pressure rise
    from p1 to p2 in this time (to 1e-10; the time steps leave 1e-9). Air drawn off or leaking away
    during the run is missing from the result: it is the net flow. Uncertainty by first-order
    propagation, each input moved up and down by its standard uncertainty (half the difference),
    inputs taken as independent.

    Arguments:
        test: Receiver, site, readings; p_start_pa, p_end_pa and duration_s are required.

    Returns:
        result: What the test says.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a field is missing or outside its range, p_end_pa is not above p_start_pa,
            water fills the receiver, an uncertainty is more than half of its quantity, rest_s is
            missing for CYCLING, or the vapour has more than half the pressure
        NoSolutionError: no mass flows in between these states, whatever the inflow
        NoConvergenceError: more than 100 iterations or 16384 time steps would be needed

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Never plug, reset or weaken a relief valve.

    Source: JCGM 100:2008, 5.1.3 note 2; Bureau of Energy Efficiency (India), Energy Performance
    Assessment, Compressors, capacity by filling a receiver (from memory)
    """
    return _runtime.call("freeair_pumpup_analyse")((test,))


def pumpup_analyse_table(*, test, t_s, p_pa):
    """Delivery from a table of times and pressures, or from a stretch of a log.

    Model: as freeair_pumpup_analyse, with the starting pressure, the inflow, its fall with pressure
    and a bend in that fitted to all readings by weighted least squares (Huber's weights from eight
    readings on). fall and a bend of 0 +- 0.05 are what is expected beforehand; readings that tell
    more prevail. Two rows give what freeair_pumpup_analyse gives. p_start_pa, p_end_pa and
    duration_s of the test are not used.

    Arguments:
        test: Receiver and site.
        t_s: Times, increasing. [s] Range [-1e12;1e12].
        p_pa: Pressures, absolute. [Pa] Range [1e3;1e8].

    Returns:
        result: What the test says, from the first row to the last.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: as in freeair_pumpup_analyse, or a row is outside its range
        DataError: fewer than two rows, times that do not increase, or a last pressure not above the
            first
        NoSolutionError: no mass flows in between these states, whatever the inflow
        NoConvergenceError: more than 100 iterations or 16384 time steps would be needed

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Never plug, reset or weaken a relief valve.

    Source: JCGM 100:2008, 5.1; P. J. Huber, Robust Statistics, chapter 7 (weights)
    """
    return _runtime.call("freeair_pumpup_analyse_table")((test, t_s, p_pa,))


def expectation_of_run(*, test, machine):
    """Time and delivery to expect of a pump-up.

    Model: q(p) = speed_ratio rated_m3_s eta(p/p_a) / eta(rated_pa / rated_ambient_pa), or
    speed_ratio swept_m3 speed_rev_s induction eta(p/p_a); with that inflow the lumped receiver of
    the pumpup topic is integrated over pressure (fourth-order Runge-Kutta, relative error below
    1e-7). Uncertainty as in freeair_pumpup_analyse.

    Arguments:
        test: Receiver, site, start and end of the run; duration_s matters for CYCLING alone,
            measured gas temperatures at the end are not used.
        machine: The machine.

    Returns:
        result: What to expect.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a field is missing or outside its range, or as in freeair_pumpup_analyse
        NoSolutionError: such a machine levels off below p_end_pa, now or within its uncertainty
        NoConvergenceError: more than 100 iterations or 16384 steps would be needed

    Caution: A receiver under pressure stores energy like an explosive.

    Source: common practice; volumetric efficiency with clearance: any textbook of thermodynamics,
    as Rogers and Mayhew, Engineering Thermodynamics, reciprocating compressors
    """
    return _runtime.call("freeair_expectation_of_run")((test, machine,))


ExpectationTimesResult = _collections.namedtuple(
    "ExpectationTimesResult", ['t_s', 't_uncertainty_s'])


def expectation_times(*, test, machine, p_pa):
    """Times at which pressures are to be expected.

    Model: as freeair_expectation_of_run, one run through all pressures.

    Arguments:
        test: Receiver, site, start of the run; the last pressure takes the place of p_end_pa.
        machine: The machine.
        p_pa: Pressures, absolute, increasing, the first above p_start_pa. [Pa] Range [1e3;1e8].

    Returns:
        t_s: Time of each. [s]
        t_uncertainty_s: Its standard uncertainty. [s]

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a field is missing or outside its range, or as in freeair_pumpup_analyse
        DataError: no pressure, or they do not increase from p_start_pa
        NoSolutionError: such a machine levels off below the last pressure, now or within its
            uncertainty
        NoConvergenceError: more than 100 iterations or 16384 steps would be needed

    Source: common practice
    """
    return _runtime.call("freeair_expectation_times")((test, machine, p_pa,), ExpectationTimesResult)


ExpectationCompareResult = _collections.namedtuple(
    "ExpectationCompareResult", ['ratio', 'ratio_uncertainty', 'verdict'])


def expectation_compare(*, found_m3_s, found_uncertainty_m3_s, expected_m3_s, expected_uncertainty_m3_s, required_ratio, confidence):
    """What was found over what was to be expected, and whether that will do.

    Model: ratio = found / expected, relative uncertainties added in squares;
    freeair_verdict_decide() on ratio >= required_ratio. FAILS means short.

    Arguments:
        found_m3_s: Delivery found. [m3/s] Range [0;1e6].
        found_uncertainty_m3_s: Its standard uncertainty. [m3/s] Range [0;1e6].
        expected_m3_s: Delivery expected. [m3/s] Range [1e-9;1e6].
        expected_uncertainty_m3_s: Its standard uncertainty. [m3/s] Range [0;1e6].
        required_ratio: Least ratio that will do. Range (0;2].
        confidence: Probability required of a firm verdict. Range (0.5;1).

    Returns:
        ratio: Found over expected.
        ratio_uncertainty: Its standard uncertainty.
        verdict: The decision. One of VERDICT_* (enumeration freeair_verdict).

    Raises:
        DomainError: an input is outside its range

    Source: JCGM 100:2008, 5.1.6; JCGM 106:2012, 8.3
    """
    return _runtime.call("freeair_expectation_compare")((found_m3_s, found_uncertainty_m3_s, expected_m3_s, expected_uncertainty_m3_s, required_ratio, confidence,), ExpectationCompareResult)


def pumpup_curve_shape_from_readings(*, t_s, p_pa, reading_uncertainty_pa=None):
    """Shape of a pump-up curve from its readings.

    Model: p = p0 + s0 (1 - exp(-b t)) / b, which solves dp/dt = s0 - b (p - p0); fitted by least
    squares (Gauss-Newton, at most 100 iterations, Huber's weights from eight readings on). Level-
    off p0 + s0 / b for b > 2 u(b). Early and late slopes are those of Theil and Sen over the first
    and last third.

    Arguments:
        t_s: Times, increasing. [s] Range [-1e12;1e12].
        p_pa: Pressures, absolute. [Pa] Range [1e3;1e8].
        reading_uncertainty_pa: Standard uncertainty of one reading. [Pa] Range [0;1e7]. Default:
            scatter about the fit with eight readings or more, else 0.5 % of the rise.

    Returns:
        shape: The shape.

    Raises:
        StructureVersionError: the structure has an unknown size
        DomainError: an input is outside its range
        DataError: fewer than four readings, times that do not increase, or no rise in all
        NoConvergenceError: the fit did not settle

    Source: common practice; algebra
    """
    return _runtime.call("freeair_pumpup_curve_shape_from_readings")((t_s, p_pa, reading_uncertainty_pa,))


def pressure_log_segment(*, t_s, p_pa, state=None, options=None, phases_capacity=None):
    """Cuts a log into phases.

    Model: where the state is known, runs of it are the phases. Elsewhere a pressure that turns by
    at least band_pa has turned: it rises while loaded; it falls while idle, unless it turned well
    below the cut-out and falls faster than other idle phases, rises again and again within the
    fall, or falls well below the cut-in: then it is loaded and more is drawn than delivered. Less
    movement than that is loaded when the pressure rises repeatedly faster than settled gas warms
    (2e-5 of it per second), else unknown. A standstill of frozen_s is frozen when the state changed
    during it, or it is the whole log of ten readings or more; and, where half the readings or more
    differ from the one before and chance makes it as long less than once in a million, also when
    the pressure moved on both sides of it.

    Arguments:
        t_s: Times. [s] Range [-1e12;1e12].
        p_pa: Pressures, absolute; NaN where missing. [Pa] Range [0;1e8].
        state: What another channel says of the machine. One of PRESSURE_LOG_KIND_* (enumeration
            freeair_pressure_log_kind). Default: null: from the pressure alone.
        options: How to read the log. Default: PressureLogOptions().
        phases_capacity: Phases that there is room for. Default: as many as there are.

    Returns:
        phases: The phases in order; struct_size of each is set by the caller.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a field, a time, a pressure or a state is outside its range, cut_in_pa is not
            below cut_out_pa, or there are more than 4294967295 readings
        DataError: fewer than 3 usable readings, or more than a quarter are out of order

    Source: H. Theil, A rank-invariant method of linear and polynomial regression analysis, 1950; P.
    K. Sen, Estimates of the regression coefficient based on Kendall's tau, 1968 (slopes); common
    practice (phases)
    """
    return _runtime.call("freeair_pressure_log_segment")((t_s, p_pa, state, options, phases_capacity,))


def pressure_log_state_from_current(*, current_a, stopped_below_a, loaded_above_a=None):
    """State from the motor current.

    Model: STOPPED below the first level, LOADED from the second up, UNLOADED between them; UNKNOWN
    where the current is NaN, and between the levels and above them when the second is not given.

    Arguments:
        current_a: Current; NaN where missing. [A] Range [0;1e6].
        stopped_below_a: Below this the motor stands. [A] Range (0;1e6].
        loaded_above_a: From this up the machine is loaded. [A] Range (0;1e6]. Default: not known.

    Returns:
        state: State of each reading. One of PRESSURE_LOG_KIND_* (enumeration
            freeair_pressure_log_kind).

    Raises:
        DomainError: a level or a current is outside its range, or the levels are not in order

    Source: common practice
    """
    return _runtime.call("freeair_pressure_log_state_from_current")((current_a, stopped_below_a, loaded_above_a,))


PressureLogCurrentLevelsResult = _collections.namedtuple(
    "PressureLogCurrentLevelsResult", ['stopped_below_a', 'loaded_above_a'])


def pressure_log_current_levels(*, current_a):
    """Levels that part the motor current of a log into stopped, unloaded and loaded.

    Model: stopped below 15 % of the current that 5 % of the readings exceed; above that the level
    that leaves the least variance within two classes (Otsu), taken when their means lie more than 4
    standard deviations within the classes and a fifth apart, else NaN: then only one running level
    was seen.

    Arguments:
        current_a: Current; NaN where missing. [A] Range [0;1e6].

    Returns:
        stopped_below_a: Below this the motor stands. [A]
        loaded_above_a: From this up the machine is loaded; NaN when that cannot be told. [A]

    Raises:
        DomainError: a current is outside its range
        DataError: fewer than 10 readings, or no current at all

    Source: N. Otsu, A threshold selection method from gray-level histograms, IEEE Trans. SMC 9
    (1979) 62
    """
    return _runtime.call("freeair_pressure_log_current_levels")((current_a,), PressureLogCurrentLevelsResult)


def pressure_log_state_from_switch(*, signal, when_high, when_low):
    """State from a switch or contact.

    Model: one state above a half, another below; UNKNOWN where the signal is NaN. A solenoid that
    loads: LOADED and IDLE; a valve that shuts the intake: IDLE and LOADED; a motor contactor:
    UNKNOWN and STOPPED.

    Arguments:
        signal: Signal, 0 or 1. Range [-1e6;1e6].
        when_high: State above a half. One of PRESSURE_LOG_KIND_* (enumeration
            freeair_pressure_log_kind).
        when_low: State below. One of PRESSURE_LOG_KIND_* (enumeration freeair_pressure_log_kind).

    Returns:
        state: State of each reading. One of PRESSURE_LOG_KIND_* (enumeration
            freeair_pressure_log_kind).

    Raises:
        DomainError: a signal is outside its range, or a state is not one of UNKNOWN to IDLE

    Source: definition
    """
    return _runtime.call("freeair_pressure_log_state_from_switch")((signal, when_high, when_low,))


def duty_from_phases(*, phases, options=None):
    """Sums up the phases of a log.

    Model: draw_share = sum of loaded times / sum of cycle times over complete cycles; its
    uncertainty is the scatter from cycle to cycle and that of the instants of loading and
    unloading, whose errors are taken as alike in all. Without a complete cycle it is slope_share =
    s_i / (s_l / 1.25 + s_i), s_l the slope loaded, s_i the fall idle; the gas heats while it is
    loaded, and 1.25 +- 0.15 is how much steeper that makes s_l (lumped model of the receiver, band
    from cut-in to cut-out). Where the machine never cuts out it is 1, without an uncertainty. Never
    cutting out: loaded for 95 % of at least five minutes, no cut-out seen, and the rise over a time
    as long as the last loaded phase, at 95 % confidence, less than what is missing to cut_out_pa,
    or band_pa when that is not given.

    Arguments:
        phases: Phases of one log, in order.
        options: Those with which the log was cut: cut_out_pa and band_pa (3 % of the highest
            pressure when not given) are used. Default: PressureLogOptions().

    Returns:
        summary: What they add up to.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a field of options is outside its range, or a phase has an unknown kind
        DataError: there is no phase

    Source: common practice: leakage = capacity T / (T + t), T loaded, t unloaded, no use; algebra
    """
    return _runtime.call("freeair_duty_from_phases")((phases, options,))


OutlookReadingsResult = _collections.namedtuple(
    "OutlookReadingsResult", ['result', 't_s', 'points'])


def outlook_readings(*, machine, site=None, run, p_pa):
    """Times and operating points at which the receiver gauge passes given readings.

    Model: the times are those of freeair_prediction_times; the operating points those of
    freeair_cycle_point, every quantity interpolated between the nodes of the run by a cubic over
    the square root of pressure. With seven nodes the interpolation adds less than 0.5 % to flows,
    pressures and power of a sound machine. Above the pressure that the machine reaches, the point
    is that at the highest pressure it reaches.

    Arguments:
        machine: The machine.
        site: The site. Default: MachineSite().
        run: The run; it goes on to the highest of the readings, to_pa is ignored.
        p_pa: Gauge readings, absolute, in any order. [Pa] Range (0;1e8).

    Returns:
        result: What became of it.
        t_s: Time of each; infinite when not reached, 0 when at or below the start. [s]
        points: Operating point at each.

    Raises:
        StructureVersionError: a structure has an unknown size, or points_stride is smaller than one
        DomainError: a value is outside its range, or no reading is above the start
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state, or to walls above 3000 K

    Source: common practice
    """
    return _runtime.call("freeair_outlook_readings")((machine, site, run, p_pa,), OutlookReadingsResult)


def evidence_find(*, kind, name):
    """Code of an entry by its name.

    Model: table look-up; case matters.

    Arguments:
        kind: Kind of entry. One of EVIDENCE_KIND_* (enumeration freeair_evidence_kind).
        name: Name, such as "lp_suction_valve".

    Returns:
        code: Its code; 0 on error.

    Raises:
        DomainError: kind is not a known kind
        NotFoundError: no entry of this kind has this name

    Source: definition
    """
    return _runtime.call("freeair_evidence_find")((kind, name,))


EvidenceReadingsGetResult = _collections.namedtuple(
    "EvidenceReadingsGetResult", ['value', 'uncertainty'])


def evidence_readings_get(*, readings=None, reading):
    """One reading and its uncertainty by code, so that a program can loop over them.

    Model: look-up; NaN where not taken or not given.

    Arguments:
        readings: Readings. Default: EvidenceReadings().
        reading: Which. One of EVIDENCE_READING_* (enumeration freeair_evidence_reading).

    Returns:
        value: The field of that code. [the caller's unit]
        uncertainty: Its u_ field. [the caller's unit]

    Raises:
        StructureVersionError: readings has an unknown size
        DomainError: a reading is out of range, or flags is not 0
        NotFoundError: reading is not a known code

    Source: definition
    """
    return _runtime.call("freeair_evidence_readings_get")((readings, reading,), EvidenceReadingsGetResult)


EvidenceReadingsCheckResult = _collections.namedtuple(
    "EvidenceReadingsCheckResult", ['reading', 'n_taken'])


def evidence_readings_check(*, readings=None):
    """Whether every reading is in its documented range.

    Model: the ranges documented at the fields; NaN passes.

    Arguments:
        readings: Readings. Default: EvidenceReadings().

    Returns:
        reading: First code whose value or uncertainty is out of range; 0 when there is none.
        n_taken: Number of readings taken.

    Raises:
        StructureVersionError: readings has an unknown size
        DomainError: the named reading is out of range, or flags is not 0

    Source: definition
    """
    return _runtime.call("freeair_evidence_readings_check")((readings,), EvidenceReadingsCheckResult)


def likelihood_prior(*, cause):
    """Probability of a cause before any evidence, at a machine someone complains of.

    Model: table; the causes together make 1.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).

    Returns:
        prior: Probability.

    Raises:
        NotFoundError: cause is not a known cause

    Source: common practice
    """
    return _runtime.call("freeair_likelihood_prior")((cause,))


LikelihoodSizeResult = _collections.namedtuple(
    "LikelihoodSizeResult", ['size', 'cost', 'two_sided'])


def likelihood_size(*, cause):
    """Typical size of a fault and what it costs.

    Model: size y has the density y exp(-y/size) / size^2 before any evidence, mean 2 size. The user
    loses the share 1 - exp(-cost y) of the delivery.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).

    Returns:
        size: Most probable y; 0 for nothing wrong and for something else.
        cost: 1 where the fault costs delivery or takes it, else 0.
        two_sided: 1 where readings may move either way, else 0.

    Raises:
        NotFoundError: cause is not a known cause

    Source: common practice
    """
    return _runtime.call("freeair_likelihood_size")((cause,), LikelihoodSizeResult)


LikelihoodObservationResult = _collections.namedtuple(
    "LikelihoodObservationResult", ['hit', 'false_alarm', 'basis'])


def likelihood_observation(*, cause, observation):
    """How often an observation is made when a cause is present, and when none of its causes is.

    Model: table. For a pair that is not listed the hit rate is the false-alarm rate. For something
    else it is the mean of the false-alarm rate and 0.3.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).
        observation: Observation. One of EVIDENCE_OBSERVATION_* (enumeration
            freeair_evidence_observation).

    Returns:
        hit: Probability of yes with the cause present.
        false_alarm: Probability of yes with none of the observation's listed causes present.
        basis: Where the hit rate comes from. One of LIKELIHOOD_BASIS_* (enumeration
            freeair_likelihood_basis).

    Raises:
        NotFoundError: cause or observation is not a known code

    Source: common practice
    """
    return _runtime.call("freeair_likelihood_observation")((cause, observation,), LikelihoodObservationResult)


LikelihoodReadingResult = _collections.namedtuple(
    "LikelihoodReadingResult", ['slope', 'limit', 'spread', 'basis'])


def likelihood_reading(*, cause, reading):
    """How a reading's deviation moves with the size of a fault.

    Model: deviation = slope y, held within -limit to limit, with a standard uncertainty of spread
    times its magnitude. Slope 0 for a pair not listed.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).
        reading: Reading. One of EVIDENCE_READING_* (enumeration freeair_evidence_reading).

    Returns:
        slope: Deviation for each unit of y, in the reading's scale. [the caller's unit]
        limit: Largest magnitude of the deviation, in the reading's scale. [the caller's unit]
        spread: Relative standard uncertainty of the deviation.
        basis: Where the slope comes from. One of LIKELIHOOD_BASIS_* (enumeration
            freeair_likelihood_basis).

    Raises:
        NotFoundError: cause or reading is not a known code

    Source: common practice
    """
    return _runtime.call("freeair_likelihood_reading")((cause, reading,), LikelihoodReadingResult)


LikelihoodSpreadResult = _collections.namedtuple(
    "LikelihoodSpreadResult", ['u_found', 'u_expected', 'expected', 'wide', 'affected', 'scale'])


def likelihood_spread(*, reading):
    """Scale of a reading's deviation and the spreads used where none is given.

    Model: table. Spreads are in the reading's scale.

    Arguments:
        reading: Reading. One of EVIDENCE_READING_* (enumeration freeair_evidence_reading).

    Returns:
        u_found: Standard uncertainty of the reading. [the caller's unit]
        u_expected: Standard uncertainty of the expected value: unit to unit, rating, model. [the
            caller's unit]
        expected: Expected share where none is given; NaN where one must be given. [the caller's
            unit]
        wide: Standard deviation when something else is wrong that affects it. [the caller's unit]
        affected: Probability that something else affects it.
        scale: How the deviation is measured. One of LIKELIHOOD_SCALE_* (enumeration
            freeair_likelihood_scale).

    Raises:
        NotFoundError: reading is not a known reading

    Source: common practice
    """
    return _runtime.call("freeair_likelihood_spread")((reading,), LikelihoodSpreadResult)


LikelihoodDeviationResult = _collections.namedtuple(
    "LikelihoodDeviationResult", ['deviation', 'spread'])


def likelihood_deviation(*, reading, found, u_found=None, expected=None, u_expected=None, reference=None):
    """Deviation of a reading from its expected value, and the standard uncertainty of that deviation.

    Model: by the reading's scale ln(found / expected), found - expected, or (found - expected) /
    reference; the uncertainties add as squares, those of a logarithm relative to their values. Not
    less than a tenth of the spread used where none is given. On a logarithm, found and expected
    must be at least 1e-12.

    Arguments:
        reading: Reading. One of EVIDENCE_READING_* (enumeration freeair_evidence_reading).
        found: Value read. [the caller's unit] Range [-1e8;1e8].
        u_found: Its standard uncertainty. [the caller's unit] Range [0;1e8]. Default:
            freeair_likelihood_spread.
        expected: Value of a sound machine. [the caller's unit] Range [-1e8;1e8]. Default:
            freeair_likelihood_spread; there must be one.
        u_expected: Its standard uncertainty. [the caller's unit] Range [0;1e8]. Default:
            freeair_likelihood_spread.
        reference: What a share is of; not used on other scales. [the caller's unit] Range
            [1e-9;1e8]. Default: none; required for a share.

    Returns:
        deviation: Deviation in the reading's scale. [the caller's unit]
        spread: Its standard uncertainty. [the caller's unit]

    Raises:
        NotFoundError: reading is not a known reading
        UnsupportedError: the reading has no deviation
        DomainError: an input is outside its range, or missing where it is required

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2
    """
    return _runtime.call("freeair_likelihood_deviation")((reading, found, u_found, expected, u_expected, reference,), LikelihoodDeviationResult)


LikelihoodLevelOffResult = _collections.namedtuple(
    "LikelihoodLevelOffResult", ['rate', 'centre_pa', 'spread'])


def likelihood_level_off(*, cause):
    """Pressure at which a machine with a cause levels off.

    Model: with probability rate it levels off below cut-out, at a gauge pressure whose logarithm is
    normal about that of centre_pa with standard deviation spread.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).

    Returns:
        rate: Probability that it levels off.
        centre_pa: Median gauge pressure. [Pa]
        spread: Standard deviation of the logarithm.

    Raises:
        NotFoundError: cause is not a known cause

    Source: common practice
    """
    return _runtime.call("freeair_likelihood_level_off")((cause,), LikelihoodLevelOffResult)


def likelihood_density(*, residual):
    """Density of a standardised residual, with tails that forgive a misread instrument.

    Model: Student's t with 7 degrees of freedom, in units of its scale: density = Gamma(4) /
    (Gamma(7/2) sqrt(7 pi)) (1 + z^2/7)^-4; almost normal near the centre, some 7e9 times the normal
    density eight scales out.

    Arguments:
        residual: Deviation from what a cause predicts, over its standard uncertainty. Range
            [-1e6;1e6].

    Returns:
        likelihood: Probability density.

    Raises:
        DomainError: residual is outside its range

    Source: Lange, Little, Taylor, Robust statistical modeling using the t distribution, Journal of
    the American Statistical Association 84 (1989) 881
    """
    return _runtime.call("freeair_likelihood_density")((residual,))


def likelihood_update(*, prior, hit, false_alarm, answer):
    """Probability of a cause after one observation.

    Model: Bayes' theorem, p = prior h / (prior h + (1 - prior) f) with h, f the probabilities of
    the answer with and without the cause.

    Arguments:
        prior: Probability before. Range [0;1].
        hit: Probability of yes with the cause. Range [0;1].
        false_alarm: Probability of yes without it. Range [0;1].
        answer: Answer. One of EVIDENCE_ANSWER_* (enumeration freeair_evidence_answer).

    Returns:
        posterior: Probability after.

    Raises:
        DomainError: an input is outside its range or answer is not an answer
        NoSolutionError: the answer is impossible with and without the cause

    Source: Gelman et al., Bayesian Data Analysis, 3rd edition, section 1.3
    """
    return _runtime.call("freeair_likelihood_update")((prior, hit, false_alarm, answer,))


def likelihood_information(*, prior, hit, false_alarm):
    """Information that one yes-or-no observation is expected to bring about one cause.

    Model: mutual information I = H(q) - prior H(hit) - (1 - prior) H(false_alarm), q = prior hit +
    (1 - prior) false_alarm, H(x) = -x log2 x - (1 - x) log2(1 - x).

    Arguments:
        prior: Probability of the cause. Range [0;1].
        hit: Probability of yes with the cause. Range [0;1].
        false_alarm: Probability of yes without it. Range [0;1].

    Returns:
        information: Expected information in bits.

    Raises:
        DomainError: an input is outside its range

    Source: Cover, Thomas, Elements of Information Theory, 2nd edition, section 2.4
    """
    return _runtime.call("freeair_likelihood_information")((prior, hit, false_alarm,))


def diagnosis_subject_cause(*, subject, cause):
    """How much of a cause's prior probability is left on this machine.

    Model: 0 for what it cannot have: faults of the second stage, the intercooler and its relief
    valve on a single stage; a gasket between cylinders with separate heads or one cylinder; belt
    and pulley with direct drive; capacitors with three phases; anything electrical with an engine.
    2 for the gasket between cylinders under a shared head. 1 for all else, and where nothing is
    said.

    Arguments:
        subject: The machine.
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).

    Returns:
        factor: Factor on the prior probability.

    Raises:
        StructureVersionError: subject has an unknown size
        DomainError: a field is out of range
        NotFoundError: cause is not a known cause

    Source: common practice
    """
    return _runtime.call("freeair_diagnosis_subject_cause")((subject, cause,))


def diagnosis_subject_reading(*, subject, reading):
    """Whether this machine has what a reading is read from.

    Model: no interstage pressure, second-stage temperature, intercooler or its relief valve on a
    single stage; no belt with direct drive; no capacitors with three phases; no supply with an
    engine.

    Arguments:
        subject: The machine.
        reading: Reading. One of EVIDENCE_READING_* (enumeration freeair_evidence_reading).

    Returns:
        applies: 1 if it can be read, else 0.

    Raises:
        StructureVersionError: subject has an unknown size
        DomainError: a field is out of range
        NotFoundError: reading is not a known reading

    Source: common practice
    """
    return _runtime.call("freeair_diagnosis_subject_reading")((subject, reading,))


DiagnosisExpectationFromMachineResult = _collections.namedtuple(
    "DiagnosisExpectationFromMachineResult", ['subject', 'expected'])


def diagnosis_expectation_from_machine(*, machine, site=None, receiver_pa=None):
    """Expected readings of a described machine at a site.

    Model: the crank-angle model, sound as described. Delivery and time from empty by
    freeair_prediction_pumpup, soaked; time from cut-in drawn down just before; interstage pressure
    (u 10 %), discharge and cooler temperatures (u 15 K) and speeds by freeair_cycle_point at
    receiver_pa; the filter drop from the mean pressure behind it; cut-out, relief setting, rated
    voltage and site as described. The motor is taken at its rated voltage: low voltage is a cause,
    not a site. An expectation that would rest on a mere default of the description is left NaN:
    times and delivery without receiver_m3 and cut_out_pa, the time from cut-in without cut_in_pa,
    motor speed without motor_synchronous_rev_s, volts without motor_rated_v, relief without
    relief_set_pa. Uncertainties that are NaN take the spreads of freeair_likelihood_spread. When
    the nameplate has a rating, call freeair_rating_complete first.

    The subject gets what the description knows: stages, cylinders, heads, receiver. Drive, supply
    and service valve are left open; set them after.

    Arguments:
        machine: Description, possibly with NaN fields.
        site: Site. Default: MachineSite().
        receiver_pa: Receiver pressure, absolute, at which interstage pressure, temperatures and
            speeds are read. [Pa] Range (0;1e8]. Default: cut_out_pa of the machine.

    Returns:
        subject: What the causes depend on.
        expected: Expected readings.

    Raises:
        StructureVersionError: a structure has an unknown size
        DomainError: a value is outside its range, or a required field is missing
        NoConvergenceError: an operating point was not found
        NoSolutionError: the description leads to no physical state

    Source: common practice
    """
    return _runtime.call("freeair_diagnosis_expectation_from_machine")((machine, site, receiver_pa,), DiagnosisExpectationFromMachineResult)


def diagnosis_finding_compare(*, subject, expected=None, found=None, findings_capacity=None):
    """Compares readings with their expected values.

    Model: freeair_likelihood_deviation for each reading taken. Shares are of the expected (else the
    found) delivery for leaks, of the gauge pressure at cut-out for the gauge difference, of the
    barometric pressure for the filter drop, of the receiver for water. Expectations that err
    together count once: with k readings of one pump-up test, of the two discharge temperatures, or
    of current and power, the variance of each expectation is multiplied by k. Where ambient
    temperature or barometer differ from those of the expectation, the expectations of the pump-up
    test, the interstage pressure and the temperatures are wider by what that could move them.

    Findings come by code, one for each reading taken. The count is of all, also of those for which
    there was no room.

    Arguments:
        subject: Machine and test.
        expected: What a sound machine shows here today. Default: EvidenceReadings().
        found: What was read. Default: EvidenceReadings().
        findings_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.

    Returns:
        findings: One for each reading.

    Raises:
        StructureVersionError: a structure or row has an unknown size, or a row is longer than its
            stride
        DomainError: an input is out of range

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2 and 5.2.2
    """
    return _runtime.call("freeair_diagnosis_finding_compare")((subject, expected, found, findings_capacity,))


def diagnosis_finding_value(*, reading, expected, reference=None, deviation):
    """Value of a reading that deviates from its expected value by so much.

    Model: the inverse of freeair_likelihood_deviation.

    Arguments:
        reading: Reading. One of EVIDENCE_READING_* (enumeration freeair_evidence_reading).
        expected: Value of a sound machine. [the caller's unit] Range [-1e8;1e8].
        reference: What a share is of; not used on other scales. [the caller's unit] Range
            [1e-9;1e8]. Default: none; required for a share.
        deviation: Deviation in the reading's scale. [the caller's unit] Range [-600;600].

    Returns:
        value: The value. [the caller's unit]

    Raises:
        NotFoundError: reading is not a known reading
        UnsupportedError: the reading has no deviation
        DomainError: an input is outside its range, or missing where it is required

    Source: algebra
    """
    return _runtime.call("freeair_diagnosis_finding_value")((reading, expected, reference, deviation,))


DiagnosisCheckEffortResult = _collections.namedtuple(
    "DiagnosisCheckEffortResult", ['effort_s', 'cautions', 'qualification'])


def diagnosis_check_effort(*, check):
    """What a check costs and what must be said beside it.

    Model: table.

    Arguments:
        check: Check. One of EVIDENCE_CHECK_* (enumeration freeair_evidence_check).

    Returns:
        effort_s: Working time. [s]
        cautions: Bits of freeair_caution.
        qualification: 1 where an electrically qualified person must do it, else 0.

    Raises:
        NotFoundError: check is not a known check

    Source: common practice
    """
    return _runtime.call("freeair_diagnosis_check_effort")((check,), DiagnosisCheckEffortResult)


def diagnosis_check_rank(*, subject, found=None, observation=None, answer=None, causes, effort_s=None, checks_capacity=None):
    """Ranks the checks not yet made by what they are expected to tell for their effort.

    Model: information is the mutual information of the causes, weighted by their probabilities, and
    the outcomes that the check would bring: answers yes or no, readings in five classes that part
    at 1 and 3 standard deviations either side of the expectation. Outcomes are taken as independent
    given the cause, up to 160 combinations of the most telling ones. Of one pump-up test only the
    delivery is counted, and only observations that some cause in question brings. A test with the
    service valve closed of which anything was read is made, and not proposed again. Checks come in
    descending information for each second of work; checks that tell nothing are left out. Pass the
    rows of one group alone to learn what splits it.

    Arguments:
        subject: Machine and test.
        found: What was read already. Default: EvidenceReadings().
        observation: Codes of freeair_evidence_observation. Default: none.
        answer: Answers of freeair_evidence_answer. Default: none.
        causes: Causes as freeair_diagnosis_rank returned them.
        effort_s: Working time of each check by its code; NaN for its default. [s] Default:
            freeair_diagnosis_check_effort.
        checks_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.

    Returns:
        checks: Checks.

    Raises:
        StructureVersionError: a structure or row has an unknown size, or a row is longer than its
            stride
        DomainError: an input is out of range, an answer is no answer, or one observation has both
        NotFoundError: a code is not known, or n_effort goes beyond the checks
        DataError: no cause has a probability

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: Lindley, On a measure of the information provided by an experiment, Annals of
    Mathematical Statistics 27 (1956) 986
    """
    return _runtime.call("freeair_diagnosis_check_rank")((subject, found, observation, answer, causes, effort_s, checks_capacity,))


def diagnosis_proof_judge(*, cause, causes, findings=None, least=None, confidence=None):
    """Judges whether a repair is proved by the diagnosis of the readings after it.

    Model: the cause is gone (MEETS) when its probability p and that from even odds, 1/(1 + (1 - p)
    q/(p (1 - q))) with its prior q, are both at most one less confidence; so a cause that was
    improbable before anybody looked is not gone for want of evidence. It is not (FAILS) when that
    from even odds is at least confidence. The machine delivers when its share of the sound delivery
    is at least least, by a guarded decision on its logarithm: of delivery, time from empty and time
    from cut-in that which is known best, the deviation of its finding normal with the finding's
    spread. A level-off pressure without any of these fails; a reading that contradicts the rest
    decides nothing. The repair is proved when both meet, not proved when one fails.

    Run the test from the same start as before, and pass rows of freeair_diagnosis_rank or
    freeair_inference_rank on the readings after.

    Arguments:
        cause: What was repaired. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).
        causes: Causes after the repair.
        findings: Findings after the repair. Default: none.
        least: Least share of the sound delivery that counts as sound. Range (0;1]. Default: 0.9.
        confidence: Probability required of a firm verdict. Range (0.5;1). Default: 0.9.

    Returns:
        proof: The proof.

    Raises:
        StructureVersionError: a structure or row has an unknown size, or a row is longer than its
            stride
        DomainError: an input, a probability or a spread is out of range
        NotFoundError: cause is not a fault that has an entry
        DataError: there is no row of this cause, or it lacks a probability or a prior within (0;1)

    Caution: A receiver under pressure stores energy like an explosive.

    Caution: Never run with the guard off; belts and flywheels seize hands.

    Source: Kass, Raftery, Bayes factors, J. Am. Stat. Assoc. 90 (1995) 773; JCGM 106:2012, 8.3,
    guarded acceptance and guarded rejection
    """
    return _runtime.call("freeair_diagnosis_proof_judge")((cause, causes, findings, least, confidence,))


DiagnosisRankResult = _collections.namedtuple(
    "DiagnosisRankResult", ['causes', 'reasons', 'findings', 'summary'])


def diagnosis_rank(*, subject, expected=None, found=None, observation=None, answer=None, prior=None, options=None, causes_capacity=None, reasons_capacity=None, findings_capacity=None):
    """Ranks the causes of what was found.

    Model: hypotheses are a sound machine, each cause alone, each pair of faults, and something
    else. Each has its prior; its likelihood is the product of the probabilities of the answers and
    of the densities of the readings' deviations (freeair_likelihood_density) about what
    freeair_likelihood_reading predicts, summed over the size of each fault. Pairs: deviations add,
    and answers come from either fault (noisy or), the smaller rate if one of them suppresses it.
    Deviations are those of freeair_diagnosis_finding_compare. A reason is the log-odds of a cause
    with all evidence less those without that item, held within 27.6 (a million million to one). A
    reading contradicts when, by the distribution that all other evidence and the listed causes
    predict for it, it lies beyond options.contradiction normal standard deviations. Causes whose
    likelihoods are within a factor of 3 of the most probable one of their group, and that are not
    both probable, are not told apart; one that is left joins the group of the cause nearest to it
    within that factor.

    The verdict is firm when the probability of a sound machine is at least options.confidence, or
    at most one less that, also without any one reading that contradicts.

    Needs some 110 kB of stack, and at most about a tenth of a second.

    Causes come in descending probability, reasons by cause in that order and then by weight (from
    0.05 up), findings by reading. Counts are of all rows, also of those for which there was no
    room.

    Arguments:
        subject: Machine and test.
        expected: What a sound machine shows here today. Default: EvidenceReadings().
        found: What was read. Default: EvidenceReadings().
        observation: Codes of freeair_evidence_observation. Default: none.
        answer: Answers of freeair_evidence_answer. Default: none.
        prior: Prior of each cause by its code; NaN for its default. Default:
            freeair_likelihood_prior.
        options: Options. Default: DiagnosisOptions().
        causes_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.
        reasons_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.
        findings_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.

    Returns:
        causes: Causes.
        reasons: Reasons.
        findings: One for each reading.
        summary: Summary.

    Raises:
        StructureVersionError: a structure or row has an unknown size, or a row is longer than its
            stride
        DomainError: an input is out of range, an answer is no answer, or one observation has both
        NotFoundError: an observation is not a known code, or n_prior goes beyond the causes
        NoSolutionError: the priors leave no cause that this machine can have

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Caution: A receiver under pressure stores energy like an explosive.

    Source: Gelman et al., Bayesian Data Analysis, 3rd edition, chapter 1; rates from common
    practice
    """
    return _runtime.call("freeair_diagnosis_rank")((subject, expected, found, observation, answer, prior, options, causes_capacity, reasons_capacity, findings_capacity,), DiagnosisRankResult)


InferenceRankResult = _collections.namedtuple(
    "InferenceRankResult", ['causes', 'effects', 'reasons', 'findings', 'summary'])


def inference_rank(*, machine, site=None, subject, visit=None, scatter=None, expected=None, found=None, log_t_s=None, log_p_pa=None, interstage_at_pa=None, interstage_pa=None, observation=None, answer=None, prior=None, options=None, causes_capacity=None, effects_capacity=None, reasons_capacity=None, findings_capacity=None):
    """Ranks the causes of what was found on a described machine.

    Model: hypotheses are a sound machine, each cause alone, each pair of faults, and something
    else, with the priors and answers of freeair_diagnosis_rank. A fault of size y (prior y
    exp(-y/size), a tenth of it even over severities) shows what freeair_fault_apply and the crank-
    angle model make of it: operating points at four receiver pressures and up to five severities
    are interpolated, and the receiver is run again for each size. The readings together have
    Student's t distribution of 20 degrees of freedom about that; its covariance is of the noise, of
    the scatter through the model's derivatives about the sound machine, and of a relative error of
    the shift that the fault makes, which rates share along the run. A machine with
    rated_delivery_m3_s is one that meets its rating within its tolerance. One reading and one
    answer in fifty is wrong. Shifts of two faults add. Readings outside the model move as
    freeair_likelihood_reading says.

    Level-off replaces the times that were never reached. The log belongs to the run from empty; its
    first time counts from the start of the run. When the nameplate has a rating, call
    freeair_rating_complete first.

    Causes, reasons, findings, verdict and groups are as in freeair_diagnosis_rank; findings of the
    log and of several interstage readings are those of the delivery and of the first; effects come
    in the order of the causes. Size, severity and predicted values are those at the posterior
    median. Uses 350 kB of the stack.

    Arguments:
        machine: The machine, sound as described. What the description holds of leaks is no fault.
        site: The site, here and today; supply_v is not used. Default: MachineSite().
        subject: Drive, supply and service valve; what it says of stages and heads is not used.
        visit: How the readings were taken. Default: InferenceVisit().
        scatter: What is not known of a sound unit. Default: InferenceScatter().
        expected: Expected voltages, current, capacitances, belt deflection and duty; no more is
            used. Default: EvidenceReadings().
        found: What was read. Default: EvidenceReadings().
        log_t_s: Times of a log of the run from empty. [s] Range [0;1e7]. Default: none.
        log_p_pa: Gauge readings at these times. [Pa] Range (0;1e8]. Default: none.
        interstage_at_pa: Receiver pressures. [Pa] Range (0;1e8]. Default: none.
        interstage_pa: Interstage pressures there. [Pa] Range (0;1e8]. Default: none.
        observation: Codes of freeair_evidence_observation. Default: none.
        answer: Answers of freeair_evidence_answer. Default: none.
        prior: Prior of each cause by its code; NaN for its default. Default:
            freeair_likelihood_prior.
        options: Options. Default: DiagnosisOptions().
        causes_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.
        effects_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.
        reasons_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.
        findings_capacity: Rows there is room for. Range [0;1e6]. Default: as many as there are.

    Returns:
        causes: Causes.
        effects: What each cause does.
        reasons: Reasons.
        findings: One for each reading.
        summary: Summary.

    Raises:
        StructureVersionError: a structure or row has an unknown size, or a row is longer than its
            stride
        DomainError: an input is out of range, from_pa is not below cut-in, an answer is no answer,
            or one observation has both
        NotFoundError: an observation is not a known code, or n_prior goes beyond the causes
        NoSolutionError: the priors leave no cause that this machine can have, or it delivers
            nothing
        NoConvergenceError: an operating point was not found

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Caution: A receiver under pressure stores energy like an explosive.

    Source: Gelman et al., Bayesian Data Analysis, 3rd edition, chapters 1 and 4; rates and scatter
    from common practice
    """
    return _runtime.call("freeair_inference_rank")((machine, site, subject, visit, scatter, expected, found, log_t_s, log_p_pa, interstage_at_pa, interstage_pa, observation, answer, prior, options, causes_capacity, effects_capacity, reasons_capacity, findings_capacity,), InferenceRankResult)


UncertaintyPropagateResult = _collections.namedtuple(
    "UncertaintyPropagateResult", ['y', 'u_y', 'sensitivity'])


def uncertainty_propagate(*, function, x, u, correlation=None, n_out, n_sensitivity):
    """Results of a function and their standard uncertainties.

    Model: u_y^2 = sum_i sum_j c_i c_j u_i u_j r_ij, c_i = dy/dx_i by differences: steps from u_i
    (1e-3 of x_i where that is 0, never below 1e-6 of x_i) downwards, extrapolated to none
    (Ridders), central where the range has room on both sides, else one-sided. Exact for a function
    that is straight over a few u; see the second order, or Monte Carlo.

    Arguments:
        function: Name of a function, with or without freeair_.
        x: Inputs. [the caller's unit]
        u: Their standard uncertainties. [the caller's unit] Range [0;1e150].
        correlation: Correlation of the inputs. Range [-1;1]. Default: none.
        n_out: Number of results.
        n_sensitivity: n_in n_out.

    Returns:
        y: Results. [the caller's unit]
        u_y: Their standard uncertainties; NaN for a whole number. [the caller's unit]
        sensitivity: c, row after row, a row for each result; NaN where neither the input nor its
            uncertainty gives a step. [the caller's unit]

    Raises:
        NotFoundError: there is no function of this name
        UnsupportedError: the function takes text or arrays
        DataError: a number of elements is wrong
        DomainError: x, u or correlation is outside its range, or no matrix of correlation
        NoSolutionError: the function has no value at x
        ResultOverflowError: the function overflows at x
        NoConvergenceError: a result is not smooth at x: its uncertainty is not sure to a tenth

    Source: JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 5.1 and 5.2
    """
    return _runtime.call("freeair_uncertainty_propagate")((function, x, u, correlation, n_out, n_sensitivity,), UncertaintyPropagateResult)


UncertaintyBudgetResult = _collections.namedtuple(
    "UncertaintyBudgetResult", ['contribution', 'share', 'combined'])


def uncertainty_budget(*, sensitivity, u, correlation=None):
    """What each input contributes to the uncertainty of one result.

    Model: contribution_i = c_i u_i; share_i = contribution_i sum_j r_ij contribution_j / u_y^2. The
    shares add up to 1; one can be negative where correlation makes inputs compensate.

    Arguments:
        sensitivity: dy/dx of one result. [the caller's unit] Range [-1e150;1e150].
        u: Standard uncertainties of the inputs. [the caller's unit] Range [0;1e150].
        correlation: Correlation of the inputs. Range [-1;1]. Default: none.

    Returns:
        contribution: Contribution of each input, with its sign. [the caller's unit]
        share: Share of each in the variance; 0 where nothing is uncertain.
        combined: Combined standard uncertainty. [the caller's unit]

    Raises:
        DataError: n_correlation is wrong, or n is outside its range
        DomainError: an element is outside its range, or correlation is no matrix of correlation

    Source: JCGM 100:2008, GUM, 5.2.2, equation 16
    """
    return _runtime.call("freeair_uncertainty_budget")((sensitivity, u, correlation,), UncertaintyBudgetResult)


UncertaintyCovarianceResult = _collections.namedtuple(
    "UncertaintyCovarianceResult", ['covariance', 'dependence'])


def uncertainty_covariance(*, sensitivity, u, correlation=None, n_square):
    """Covariance and correlation of several results.

    Model: V = C U C', C the sensitivities, U_ij = u_i u_j r_ij.

    Arguments:
        sensitivity: C, row after row, a row for each result. [the caller's unit] Range
            [-1e150;1e150].
        u: Standard uncertainties of the inputs. [the caller's unit] Range [0;1e150].
        correlation: Correlation of the inputs. Range [-1;1]. Default: none.
        n_square: Number of results squared.

    Returns:
        covariance: V, row after row. [the caller's unit]
        dependence: Correlation of the results; NaN where one has no uncertainty.

    Raises:
        DataError: a number of elements is wrong, or n_in is outside its range
        DomainError: an element is outside its range, or correlation is no matrix of correlation

    Source: JCGM 100:2008, GUM, H.2.3; JCGM 102:2011, Extension to any number of output quantities,
    6.2
    """
    return _runtime.call("freeair_uncertainty_covariance")((sensitivity, u, correlation, n_square,), UncertaintyCovarianceResult)


UncertaintySecondOrderResult = _collections.namedtuple(
    "UncertaintySecondOrderResult", ['combined', 'shift'])


def uncertainty_second_order(*, first, u, second, third):
    """Second order: uncertainty of a model from its derivatives up to the third.

    Model: u_y^2 = sum_i f_i^2 u_i^2 + sum_i sum_j (f_ij^2 / 2 + f_i f_ijj) u_i^2 u_j^2; the
    expected value is shifted by sum_i f_ii u_i^2 / 2 from the value at the estimates. Inputs normal
    and independent.

    Arguments:
        first: f_i. [the caller's unit] Range [-1e75;1e75].
        u: Standard uncertainties of the inputs. [the caller's unit] Range [0;1e75].
        second: f_ij, row after row. [the caller's unit] Range [-1e75;1e75].
        third: f_ijj in row i, column j. [the caller's unit] Range [-1e75;1e75].

    Returns:
        combined: Combined standard uncertainty. [the caller's unit]
        shift: Expected value less the value at the estimates. [the caller's unit]

    Raises:
        DataError: a number of elements is wrong, or n is outside its range
        DomainError: an element is outside its range
        NoSolutionError: the sum is negative: the series does not hold for uncertainties so large

    Source: JCGM 100:2008, GUM, 5.1.2, note, and H.1.7
    """
    return _runtime.call("freeair_uncertainty_second_order")((first, u, second, third,), UncertaintySecondOrderResult)


UncertaintyPropagateSecondOrderResult = _collections.namedtuple(
    "UncertaintyPropagateSecondOrderResult", ['y', 'u_y', 'shift'])


def uncertainty_propagate_second_order(*, function, x, u, n_out):
    """Second order: results of a function with their uncertainties and what they are shifted by.

    Model: as freeair_uncertainty_second_order, derivatives by differences over u_i and half of it,
    less where the range has no room for twice u_i to either side. Inputs normal and independent.

    Arguments:
        function: Name of a function, with or without freeair_.
        x: Inputs. [the caller's unit]
        u: Their standard uncertainties. [the caller's unit] Range [0;1e150].
        n_out: Number of results.

    Returns:
        y: Results at x. [the caller's unit]
        u_y: Their standard uncertainties; NaN for a whole number. [the caller's unit]
        shift: Expected values less the results at x; NaN for a whole number. [the caller's unit]

    Raises:
        NotFoundError: there is no function of this name
        UnsupportedError: the function takes text or arrays
        DataError: a number of elements is wrong
        DomainError: x or u is outside its range
        NoSolutionError: the function has no value at x, or no room about it
        ResultOverflowError: the function overflows at x
        NoConvergenceError: the series does not hold for uncertainties so large

    Source: JCGM 100:2008, GUM, 5.1.2, note, and H.1.7
    """
    return _runtime.call("freeair_uncertainty_propagate_second_order")((function, x, u, n_out,), UncertaintyPropagateSecondOrderResult)


MonteCarloIntervalResult = _collections.namedtuple(
    "MonteCarloIntervalResult", ['ordered', 'low', 'high', 'low_error', 'high_error'])


def monte_carlo_interval(*, y, probability, interval):
    """Coverage interval of a result from its trials.

    Model: with the m values in order and q = p m to the nearest whole number: symmetric from the
    value r to r + q, r = (m - q)/2; the shortest of all r. The standard error of an end is that of
    the order statistic: half the distance of the values sqrt(m F (1 - F)) places to either side, F
    the share of the values below.

    Arguments:
        y: Values; NaN is left out. [the caller's unit] Range [-1e150;1e150].
        probability: Probability within the interval. Range (0;1).
        interval: Symmetric or shortest. One of MONTE_CARLO_INTERVAL_* (enumeration
            freeair_monte_carlo_interval).

    Returns:
        ordered: The values from the least to the greatest, NaN last; may be y itself. [the caller's
            unit]
        low: Lower end. [the caller's unit]
        high: Upper end. [the caller's unit]
        low_error: Standard error of the lower end. [the caller's unit]
        high_error: Standard error of the upper end. [the caller's unit]

    Raises:
        DomainError: probability, interval or a value is outside its range
        DataError: too few values: fewer than ten would lie outside

    Source: JCGM 101:2008, 7.7
    """
    return _runtime.call("freeair_monte_carlo_interval")((y, probability, interval,), MonteCarloIntervalResult)


def monte_carlo_draw(*, x, u, distribution, nu, correlation=None, seed, first, n_sample):
    """Random values of inputs, for a model of the caller's own.

    Model: U1, U2 from the generator for each trial and input. Normal: sqrt(-2 ln U1) cos(2 pi U2)
    (Box and Muller); Student: sqrt(nu (U1^(-2/nu) - 1)) cos(2 pi U2) (Bailey); rectangular: 2 U1 -
    1; triangular: U1 - U2; arcsine: cos(2 pi U1); each stretched to the standard deviation u.
    Correlated normals by the Cholesky factor of the matrix.

    Arguments:
        x: Estimates; a distribution is centred there. [the caller's unit] Range [-1e150;1e150].
        u: Standard uncertainties. [the caller's unit] Range [0;1e130].
        distribution: Of each input. One of COVERAGE_DISTRIBUTION_* (enumeration
            freeair_coverage_distribution).
        nu: Degrees of freedom where Student's. Range [1;inf].
        correlation: Correlation of the inputs. Range [-1;1]. Default: none.
        seed: Seed. Range [0;4294967295].
        first: Number of the first trial. Range [0;4294967295].
        n_sample: n_in times the number of trials.

    Returns:
        sample: Values, trial after trial, n_in each. [the caller's unit]

    Raises:
        DataError: a number of elements is wrong
        DomainError: an element is outside its range, no matrix of correlation, or a correlated
            input is not normal
        UnsupportedError: more than 48 inputs are correlated

    Source: JCGM 101:2008, Evaluation of measurement data - Propagation of distributions using a
    Monte Carlo method, 6.4 and C; Salmon, Moraes, Dror and Shaw, Parallel random numbers: as easy
    as 1, 2, 3, SC11 (2011); Bailey, Mathematics of Computation 62 (1994) 779
    """
    return _runtime.call("freeair_monte_carlo_draw")((x, u, distribution, nu, correlation, seed, first, n_sample,))


MonteCarloPropagateResult = _collections.namedtuple(
    "MonteCarloPropagateResult", ['y', 'failed'])


def monte_carlo_propagate(*, function, x, u, distribution, nu, correlation=None, seed, first, output, n):
    """One result of a function for random values of its inputs.

    Model: y of each trial, in the order of the trials; NaN where the function has no value. An
    input whose u is 0 keeps its value, NaN when not given; its distribution does not matter.

    Arguments:
        function: Name of a function, with or without freeair_.
        x: Estimates of its inputs. [the caller's unit]
        u: Their standard uncertainties. [the caller's unit] Range [0;1e130].
        distribution: Of each input. One of COVERAGE_DISTRIBUTION_* (enumeration
            freeair_coverage_distribution).
        nu: Degrees of freedom where Student's. Range [1;inf].
        correlation: Correlation of the inputs. Range [-1;1]. Default: none.
        seed: Seed. Range [0;4294967295].
        first: Number of the first trial. Range [0;4294967295].
        output: Which result, from 0. Range [0;255].
        n: Number of trials.

    Returns:
        y: Its values. [the caller's unit]
        failed: Number of trials without a value.

    Raises:
        NotFoundError: there is no function of this name
        UnsupportedError: the function takes text or arrays, or more than 48 inputs are correlated
        DataError: a number of elements is wrong, or there is no such result
        DomainError: an element is outside its range, no matrix of correlation, or a correlated
            input is not normal
        NoSolutionError: no trial has a value

    Source: JCGM 101:2008, 7.4
    """
    return _runtime.call("freeair_monte_carlo_propagate")((function, x, u, distribution, nu, correlation, seed, first, output, n,), MonteCarloPropagateResult)


MonteCarloSummaryResult = _collections.namedtuple(
    "MonteCarloSummaryResult", ['mean', 'u_y', 'mean_error', 'u_error', 'skewness'])


def monte_carlo_summary(*, y):
    """Mean and standard uncertainty of a result from its trials, with their standard errors.

    Model: mean and standard deviation of the values; the errors from the number of trials, that of
    the uncertainty from the fourth moment: u_error = u sqrt((m4/u^4 - 1) / (4 n)). Quadruple the
    trials to halve them.

    Arguments:
        y: Values; NaN is left out. [the caller's unit] Range [-1e150;1e150].

    Returns:
        mean: Mean. [the caller's unit]
        u_y: Standard uncertainty. [the caller's unit]
        mean_error: Standard error of the mean. [the caller's unit]
        u_error: Standard error of the standard uncertainty. [the caller's unit]
        skewness: Third moment over u^3; 0 for a symmetric distribution.

    Raises:
        DataError: fewer than two values
        DomainError: a value is outside its range

    Source: JCGM 101:2008, 7.6
    """
    return _runtime.call("freeair_monte_carlo_summary")((y,), MonteCarloSummaryResult)


def monte_carlo_tolerance(*, u_y, digits):
    """Numerical tolerance of an uncertainty, to judge whether trials were enough or the law of propagation is.

    Model: u = c 10^l with c a whole number of so many digits; tolerance = 10^l / 2. Two intervals
    agree whose ends are no further apart than this.

    Arguments:
        u_y: Standard uncertainty. [the caller's unit] Range [1e-150;1e150].
        digits: Significant digits meant, 1 or 2. Range [1;9].

    Returns:
        tolerance: Numerical tolerance. [the caller's unit]

    Raises:
        DomainError: an input is outside its range

    Source: JCGM 101:2008, 7.9.2 and 8.1
    """
    return _runtime.call("freeair_monte_carlo_tolerance")((u_y, digits,))


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


def evidence_count(*, kind):
    """Number of codes of a kind, 0 included: codes run from 1 to one less.

    Model: count.

    Arguments:
        kind: Kind of entry. One of EVIDENCE_KIND_* (enumeration freeair_evidence_kind).

    Returns: The number; 0 for a kind this library does not know.

    Source: definition
    """
    return _runtime.query("freeair_evidence_count", _c.c_int32, [_c.c_int32], (kind,))


def evidence_name(*, kind, code):
    """Name of an entry for files and programs, such as "lp_suction_valve".

    Model: table look-up.

    Arguments:
        kind: Kind of entry. One of EVIDENCE_KIND_* (enumeration freeair_evidence_kind).
        code: Code of that kind. Range [0;1000].

    Returns: Static string, never null; empty for an unknown kind or code.

    Source: definition
    """
    return _runtime.query("freeair_evidence_name", _c.c_char_p, [_c.c_int32, _c.c_int32], (kind, code,))


def evidence_title(*, kind, code):
    """Title of an entry in the terms of the trade, such as "LP suction valve".

    Model: table look-up.

    Arguments:
        kind: Kind of entry. One of EVIDENCE_KIND_* (enumeration freeair_evidence_kind).
        code: Code of that kind. Range [0;1000].

    Returns: Static string, never null; empty for an unknown kind or code.

    Source: common practice
    """
    return _runtime.query("freeair_evidence_title", _c.c_char_p, [_c.c_int32, _c.c_int32], (kind, code,))


def evidence_text(*, kind, code):
    """Explanation of an entry: how a cause shows, how to observe, read or check.

    Model: table look-up.

    Arguments:
        kind: Kind of entry. One of EVIDENCE_KIND_* (enumeration freeair_evidence_kind).
        code: Code of that kind. Range [0;1000].

    Returns: Static string, never null; empty for an unknown kind or code.

    Source: common practice
    """
    return _runtime.query("freeair_evidence_text", _c.c_char_p, [_c.c_int32, _c.c_int32], (kind, code,))


def evidence_remedy(*, cause):
    """What to replace or repair once a cause is confirmed.

    Model: table look-up.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).

    Returns: Static string, never null; empty for an unknown cause.

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Source: common practice
    """
    return _runtime.query("freeair_evidence_remedy", _c.c_char_p, [_c.c_int32], (cause,))


def evidence_proof(*, cause):
    """How to prove a cause, before and after the repair.

    Model: table look-up.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).

    Returns: Static string, never null; empty for an unknown cause.

    Caution: Isolate, lock out and tag out before touching the machine.

    Caution: Depressurise to zero, on a gauge that is trusted, before opening.

    Source: common practice
    """
    return _runtime.query("freeair_evidence_proof", _c.c_char_p, [_c.c_int32], (cause,))


def evidence_check_for(*, kind, code):
    """Check that brings an observation or a reading.

    Model: table look-up.

    Arguments:
        kind: Observation or reading. One of EVIDENCE_KIND_* (enumeration freeair_evidence_kind).
        code: Code of that kind. Range [0;1000].

    Returns: A code of freeair_evidence_check; 0 for an unknown kind or code.

    Source: common practice
    """
    return _runtime.query("freeair_evidence_check_for", _c.c_int32, [_c.c_int32, _c.c_int32], (kind, code,))


def likelihood_cautions(*, cause):
    """What must be said beside the repair of a cause.

    Model: table look-up.

    Arguments:
        cause: Cause. One of EVIDENCE_CAUSE_* (enumeration freeair_evidence_cause).

    Returns: Bits of freeair_caution; 0 for an unknown cause.

    Source: common practice
    """
    return _runtime.query("freeair_likelihood_cautions", _c.c_uint32, [_c.c_int32], (cause,))


__all__ = [
    "AcceptanceCorrectResult",
    "AcceptanceEnergyVerdictResult",
    "AcceptanceFlowVerdictResult",
    "AcceptanceTest",
    "AcceptanceTolerancesResult",
    "BELT_SECTION_A",
    "BELT_SECTION_B",
    "BELT_SECTION_C",
    "BELT_SECTION_D",
    "BeltSectionDataResult",
    "BeltSlipResult",
    "BeltTensionsFromPowerResult",
    "BlowdownPressureResult",
    "BlowdownVessel",
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
    "CONDUCTOR_ALUMINIUM",
    "CONDUCTOR_COPPER",
    "CONDUCTOR_COPPER_FLEXIBLE",
    "COVERAGE_ARCSINE",
    "COVERAGE_NORMAL",
    "COVERAGE_RECTANGULAR",
    "COVERAGE_STUDENT",
    "COVERAGE_TRIANGULAR",
    "CapacitorBleederResult",
    "CapacitorFromCurrentResult",
    "CapacitorLimitsResult",
    "CapacitorMotorPerformance",
    "CapacitorMotorQuadratureResult",
    "CapacitorMotorWindings",
    "CapacitorVerdictResult",
    "CoefficientConductanceFromKvResult",
    "CoefficientKvFromConductanceResult",
    "CondensateFlow",
    "ConductanceFlowResult",
    "ConductanceParallelResult",
    "ConductanceSeriesResult",
    "ConductorDropResult",
    "ConductorGaugeResult",
    "ConductorSizeForDropResult",
    "ConductorSizeResult",
    "CoverageIntervalResult",
    "CoverageMeanResult",
    "CoveragePooledResult",
    "CycleCardResult",
    "CycleResult",
    "DIAGNOSIS_CONTRADICTS",
    "DIAGNOSIS_DRIVE_BELT",
    "DIAGNOSIS_DRIVE_DIRECT",
    "DIAGNOSIS_DRIVE_UNKNOWN",
    "DIAGNOSIS_ENGINE",
    "DIAGNOSIS_HEAD_SEPARATE",
    "DIAGNOSIS_HEAD_SHARED",
    "DIAGNOSIS_HEAD_UNKNOWN",
    "DIAGNOSIS_NOT_APPLICABLE",
    "DIAGNOSIS_NOT_USED",
    "DIAGNOSIS_SINGLE_PHASE",
    "DIAGNOSIS_SUPPLY_UNKNOWN",
    "DIAGNOSIS_THREE_PHASE",
    "DIAGNOSIS_USED",
    "DUTY_AMBIGUOUS",
    "DUTY_FEW_CYCLES",
    "DUTY_HAS_FROZEN",
    "DUTY_HAS_GAPS",
    "DUTY_LEFT_OUT",
    "DUTY_NEVER_CUTS_OUT",
    "DUTY_NEVER_LOADS",
    "DUTY_SINKS_LOADED",
    "DUTY_UNSETTLED",
    "DeliveryResult",
    "DeliveryStage",
    "DemandRunningResult",
    "DemandSimultaneityResult",
    "DemandStoreResult",
    "DemandSummaryResult",
    "DemandToolsResult",
    "DiagnosisCause",
    "DiagnosisCheck",
    "DiagnosisCheckEffortResult",
    "DiagnosisExpectationFromMachineResult",
    "DiagnosisFinding",
    "DiagnosisOptions",
    "DiagnosisProof",
    "DiagnosisRankResult",
    "DiagnosisReason",
    "DiagnosisSubject",
    "DiagnosisSummary",
    "DryAirProperties",
    "DryAirSaturationResult",
    "DutySummary",
    "ENERGY_LOAD_UNLOAD",
    "ENERGY_MODULATION",
    "ENERGY_START_STOP",
    "ENERGY_VARIABLE_SPEED",
    "ENHANCEMENT_NONE",
    "ENHANCEMENT_VIRIAL",
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
    "EVIDENCE_AIR_AT_HEAD_JOINT",
    "EVIDENCE_AMBIENT",
    "EVIDENCE_ASK",
    "EVIDENCE_BAROMETER",
    "EVIDENCE_BELT_DEFLECTION",
    "EVIDENCE_BELT_DUST",
    "EVIDENCE_BELT_GLAZED",
    "EVIDENCE_BELT_LOOSE",
    "EVIDENCE_BELT_SLIP",
    "EVIDENCE_BELT_SQUEALS",
    "EVIDENCE_BETTER_FILTER_OUT",
    "EVIDENCE_BETTER_UNLOADER_BLOCKED",
    "EVIDENCE_BLOCK_UNLOADER",
    "EVIDENCE_BLOW_BACK_AT_INLET",
    "EVIDENCE_BREAKER_TRIPS",
    "EVIDENCE_BREATHER_BLOWS",
    "EVIDENCE_CAME_SUDDENLY",
    "EVIDENCE_CAPACITOR_BULGED",
    "EVIDENCE_CAUSE_NONE",
    "EVIDENCE_CHECK_NONE",
    "EVIDENCE_CHECK_VALVE",
    "EVIDENCE_CHIRPING_AT_HEADS",
    "EVIDENCE_CUTOUT",
    "EVIDENCE_DELIVERY",
    "EVIDENCE_DEMAND_ADDED",
    "EVIDENCE_DOWNSTREAM",
    "EVIDENCE_DRAIN_PASSES",
    "EVIDENCE_DRAIN_RECEIVER",
    "EVIDENCE_DRIVE_CHANGED",
    "EVIDENCE_DUTY",
    "EVIDENCE_FALLS_WHEN_STOPPED",
    "EVIDENCE_FILTER_DIRTY",
    "EVIDENCE_FILTER_DROP",
    "EVIDENCE_FILTER_OUT",
    "EVIDENCE_FINE_WHEN_ISOLATED",
    "EVIDENCE_GASKET_BETWEEN",
    "EVIDENCE_GASKET_BURNT",
    "EVIDENCE_GASKET_OUTSIDE",
    "EVIDENCE_GAUGE_DIFFERENCE",
    "EVIDENCE_GAUGE_OR_SWITCH",
    "EVIDENCE_HARD_RESTART",
    "EVIDENCE_HEADS_OFF",
    "EVIDENCE_HEADS_OPENED_LATELY",
    "EVIDENCE_HEALTHY",
    "EVIDENCE_HISS_AT_SWITCH",
    "EVIDENCE_HOT_BETWEEN_BORES",
    "EVIDENCE_HP_DISCHARGE",
    "EVIDENCE_HP_DISCHARGE_VALVE",
    "EVIDENCE_HP_HEAD_HOT",
    "EVIDENCE_HP_SUCTION_VALVE",
    "EVIDENCE_HP_VALVES_BAD",
    "EVIDENCE_HUMS_AT_START",
    "EVIDENCE_INSPECT_BELT",
    "EVIDENCE_INTAKE_FILTER",
    "EVIDENCE_INTERCOOLER_DIRTY",
    "EVIDENCE_INTERCOOLER_FOULED",
    "EVIDENCE_INTERCOOLER_OUTLET",
    "EVIDENCE_INTERSTAGE",
    "EVIDENCE_INTERSTAGE_BUBBLES",
    "EVIDENCE_INTERSTAGE_GAUGE",
    "EVIDENCE_INTERSTAGE_LEAK",
    "EVIDENCE_INTERSTAGE_RELIEF_POPS",
    "EVIDENCE_KIND_CAUSE",
    "EVIDENCE_KIND_CHECK",
    "EVIDENCE_KIND_OBSERVATION",
    "EVIDENCE_KIND_READING",
    "EVIDENCE_LEAKS_HEARD",
    "EVIDENCE_LEAK_DOWN_OPEN",
    "EVIDENCE_LEAK_ISOLATED",
    "EVIDENCE_LEAK_OPEN",
    "EVIDENCE_LEVEL_OFF",
    "EVIDENCE_LIGHTS_DIM",
    "EVIDENCE_LISTEN_AT_HEADS",
    "EVIDENCE_LISTEN_AT_INLET",
    "EVIDENCE_LOG_A_DAY",
    "EVIDENCE_LOOK_AT_DRIVE",
    "EVIDENCE_LOOK_AT_OIL",
    "EVIDENCE_LOW_VOLTAGE",
    "EVIDENCE_LP_DISCHARGE",
    "EVIDENCE_LP_DISCHARGE_VALVE",
    "EVIDENCE_LP_HEAD_HOT",
    "EVIDENCE_LP_SUCTION_VALVE",
    "EVIDENCE_LP_VALVES_BAD",
    "EVIDENCE_MEASURE_CAPACITORS",
    "EVIDENCE_MEASURE_SUPPLY",
    "EVIDENCE_MOTOR",
    "EVIDENCE_MOTOR_CURRENT",
    "EVIDENCE_MOTOR_SPEED",
    "EVIDENCE_NEVER_REACHES_CUTOUT",
    "EVIDENCE_NO",
    "EVIDENCE_NOT_CHECKED",
    "EVIDENCE_OBSERVATION_NONE",
    "EVIDENCE_OIL_IN_DRAIN",
    "EVIDENCE_OIL_USE_HIGH",
    "EVIDENCE_OTHER",
    "EVIDENCE_PISTON_RINGS",
    "EVIDENCE_POWER",
    "EVIDENCE_PUMP_SOUNDS_SLOW",
    "EVIDENCE_PUMP_SPEED",
    "EVIDENCE_PUMP_UP_TEST",
    "EVIDENCE_READING_NONE",
    "EVIDENCE_READ_SITE",
    "EVIDENCE_RECEIVER_WATER",
    "EVIDENCE_RELIEF_OPENING",
    "EVIDENCE_RELIEF_POPS_EARLY",
    "EVIDENCE_RELIEF_WEAK",
    "EVIDENCE_RUNS_AT_NIGHT",
    "EVIDENCE_RUN_CAPACITANCE",
    "EVIDENCE_RUN_CAPACITOR",
    "EVIDENCE_SECOND_GAUGE",
    "EVIDENCE_SHORT_CYCLES",
    "EVIDENCE_SLOWER_NEAR_CUTOUT",
    "EVIDENCE_SOAP_INTERSTAGE",
    "EVIDENCE_START_CAPACITANCE",
    "EVIDENCE_START_CAPACITOR",
    "EVIDENCE_STOPS_AT_WRONG_PRESSURE",
    "EVIDENCE_STOP_AND_WATCH",
    "EVIDENCE_SUPPLY_RUNNING",
    "EVIDENCE_SUPPLY_STARTING",
    "EVIDENCE_SYSTEM_STARVES",
    "EVIDENCE_TACHOMETER",
    "EVIDENCE_TEMPERATURES",
    "EVIDENCE_TIME_FROM_CUTIN",
    "EVIDENCE_TIME_FROM_EMPTY",
    "EVIDENCE_UNLOADER_BLOWS_STOPPED",
    "EVIDENCE_UNLOADER_LEAK",
    "EVIDENCE_WALK_THE_SYSTEM",
    "EVIDENCE_WATCH_A_START",
    "EVIDENCE_WATER",
    "EVIDENCE_WATER_DRAINED",
    "EVIDENCE_WRONG_PULLEY",
    "EVIDENCE_YES",
    "EnergyCostResult",
    "EnergyFromProfileResult",
    "EnergyFromTimesResult",
    "EnergyHeatRecoveryResult",
    "EnergyPartLoadResult",
    "EnergyPaybackResult",
    "EnhancementCoefficients",
    "EvidenceReadings",
    "EvidenceReadingsCheckResult",
    "EvidenceReadingsGetResult",
    "ExpectationCompareResult",
    "ExpectationMachine",
    "ExpectationResult",
    "ExpectationTimesResult",
    "FASTENER_ISO",
    "FASTENER_ISO_10_9",
    "FASTENER_ISO_12_9",
    "FASTENER_ISO_4_6",
    "FASTENER_ISO_4_8",
    "FASTENER_ISO_5_6",
    "FASTENER_ISO_5_8",
    "FASTENER_ISO_6_8",
    "FASTENER_ISO_8_8",
    "FASTENER_ISO_9_8",
    "FASTENER_SAE_2",
    "FASTENER_SAE_5",
    "FASTENER_SAE_8",
    "FASTENER_UNC",
    "FASTENER_UNF",
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
    "FITTING_ANGLE_VALVE",
    "FITTING_BALL_VALVE",
    "FITTING_ELBOW_45",
    "FITTING_ELBOW_90",
    "FITTING_ELBOW_90_LONG",
    "FITTING_ENTRANCE_INWARD",
    "FITTING_ENTRANCE_ROUND",
    "FITTING_ENTRANCE_SHARP",
    "FITTING_EXIT",
    "FITTING_FLANGED",
    "FITTING_GATE_VALVE",
    "FITTING_GLOBE_VALVE",
    "FITTING_RETURN_BEND",
    "FITTING_SWING_CHECK",
    "FITTING_TEE_BRANCH",
    "FITTING_TEE_RUN",
    "FITTING_THREADED",
    "FITTING_UNION",
    "FLOW_SUBSONIC",
    "FLOW_SUPERSONIC",
    "FannoMassFlowResult",
    "FannoOutletResult",
    "FannoRatiosResult",
    "FastenerPreloadResult",
    "FastenerStrengthResult",
    "FastenerTorqueForGradeResult",
    "FaultApplyResult",
    "FlowIsentropicRatiosResult",
    "HumidityFound",
    "HumidityGiven",
    "INTERCOOLER_COUNTERFLOW",
    "INTERCOOLER_CROSS_LARGER_MIXED",
    "INTERCOOLER_CROSS_LESSER_MIXED",
    "INTERCOOLER_CROSS_UNMIXED",
    "INTERCOOLER_PARALLEL",
    "INTERCOOLER_SHELL_AND_TUBE",
    "ImpedanceFromPhaseResult",
    "ImpedanceFromPowerResult",
    "IndicatorExponentResult",
    "IndicatorIdealResult",
    "IndicatorWorkResult",
    "InferenceEffect",
    "InferenceRankResult",
    "InferenceScatter",
    "InferenceVisit",
    "IntercoolerApproachResult",
    "IntercoolerOutletResult",
    "IntercoolerPressureResult",
    "IntercoolerSizeFromReadingsResult",
    "IntercoolerStages",
    "IsothermalChokingResult",
    "IsothermalDiameterResult",
    "IsothermalFlowFromPressuresResult",
    "IsothermalInletPressureResult",
    "IsothermalOutletPressureResult",
    "IsothermalPipe",
    "LIKELIHOOD_DERIVED",
    "LIKELIHOOD_DIFFERENCE",
    "LIKELIHOOD_LOG",
    "LIKELIHOOD_NO_SCALE",
    "LIKELIHOOD_PRACTICE",
    "LIKELIHOOD_SHARE",
    "LIKELIHOOD_UNLISTED",
    "LeakageCostResult",
    "LeakageFlowFromHoleResult",
    "LeakageFlowFromReadingsResult",
    "LeakageMeanFromDecayResult",
    "LikelihoodDeviationResult",
    "LikelihoodLevelOffResult",
    "LikelihoodObservationResult",
    "LikelihoodReadingResult",
    "LikelihoodSizeResult",
    "LikelihoodSpreadResult",
    "MACHINE_SIDE_BY_SIDE",
    "MACHINE_V",
    "MONTE_CARLO_SHORTEST",
    "MONTE_CARLO_SYMMETRIC",
    "Machine",
    "MachineSite",
    "MoistAirProperties",
    "MonteCarloIntervalResult",
    "MonteCarloPropagateResult",
    "MonteCarloSummaryResult",
    "MotorShaftPowerResult",
    "MultistageWorkResult",
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
    "NOZZLE_CONE",
    "NOZZLE_CYLINDRICAL",
    "NOZZLE_ROUNDED_TUBE",
    "NOZZLE_SHARP_EDGED",
    "NOZZLE_SHORT_TUBE",
    "NOZZLE_TOROIDAL_ACCURATE",
    "NOZZLE_TOROIDAL_NORMAL",
    "NOZZLE_WELL_ROUNDED",
    "NameplateCodeBandResult",
    "NameplateLockedRotorCurrentResult",
    "NozzleDischargeCoefficientResult",
    "NozzleMeterMassFlowResult",
    "OK",
    "OutlookReadingsResult",
    "PARAMETER_ARRAY",
    "PARAMETER_LOWER_CLOSED",
    "PARAMETER_OPTIONAL",
    "PARAMETER_OUTPUT",
    "PARAMETER_UPPER_CLOSED",
    "PIPE_CAST_IRON",
    "PIPE_DRAWN",
    "PIPE_EN_MEDIUM",
    "PIPE_GALVANIZED",
    "PIPE_SCHEDULE_40",
    "PIPE_SCHEDULE_80",
    "PIPE_SMOOTH",
    "PIPE_STEEL",
    "PREDICTION_DRAWN_DOWN",
    "PREDICTION_GIVEN",
    "PREDICTION_SOAKED",
    "PRESSURE_LOG_FROZEN",
    "PRESSURE_LOG_GAP",
    "PRESSURE_LOG_IDLE",
    "PRESSURE_LOG_LOADED",
    "PRESSURE_LOG_STOPPED",
    "PRESSURE_LOG_UNKNOWN",
    "PRESSURE_LOG_UNLOADED",
    "PUMPUP_CYCLING",
    "PUMPUP_DRAWN_DOWN",
    "PUMPUP_SOAKED",
    "PUMPUP_UNKNOWN",
    "PURITY_CLASS_X",
    "PipeSizeFromDiameterResult",
    "PipeSizeResult",
    "PredictionLeakDownResult",
    "PredictionPumpupResult",
    "PredictionResult",
    "PredictionRun",
    "PredictionTimesResult",
    "PressureLogCurrentLevelsResult",
    "PressureLogOptions",
    "PressureLogPhase",
    "PulleyOpenWrapResult",
    "PumpupCurveShape",
    "PumpupResult",
    "PumpupTest",
    "PurityParticleLimitsResult",
    "PurityWaterLimitsResult",
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
    "RealCompressionFromExponentResult",
    "RealCompressionIsentropicResult",
    "RealCompressionIsothermalResult",
    "RealCompressionStagesResult",
    "RealPolytropicEfficiencyResult",
    "RealPolytropicExponentsResult",
    "RealPolytropicSchultzResult",
    "RealPolytropicWorkResult",
    "ReceiverCycleResult",
    "ReferenceConditionsResult",
    "ReferenceMassFlowFromVolumeFlowResult",
    "RingMainDeadEndResult",
    "RingMainFlowsResult",
    "SAFETY_HIGH",
    "SAFETY_LOWER",
    "SAFETY_UNKNOWN",
    "SATURATION_OVER_ICE",
    "SATURATION_OVER_WATER",
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
    "UncertaintyBudgetResult",
    "UncertaintyCovarianceResult",
    "UncertaintyPropagateResult",
    "UncertaintyPropagateSecondOrderResult",
    "UncertaintySecondOrderResult",
    "VERDICT_CANNOT_TELL",
    "VERDICT_FAILS",
    "VERDICT_MEETS",
    "VesselReliefVerdictResult",
    "VesselShellStressResult",
    "VesselStoredEnergyResult",
    "VesselTestEnergyResult",
    "WARN_EXTRAPOLATED",
    "WARN_INCONSISTENT",
    "WARN_LIMIT",
    "WARN_TRANSITION",
    "WARN_TRUNCATED",
    "WetCoolerOutletResult",
    "WetCoolerSizeFromReadingsResult",
    "acceptance_correct",
    "acceptance_energy_verdict",
    "acceptance_flow_verdict",
    "acceptance_tolerances",
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
    "belt_section_data",
    "belt_section_from_width",
    "belt_slip",
    "belt_span_frequency",
    "belt_tension_from_deflection",
    "belt_tension_from_frequency",
    "belt_tension_ratio",
    "belt_tensions_from_power",
    "blowdown_evacuation_time",
    "blowdown_fill_pressure",
    "blowdown_fill_temperature",
    "blowdown_fill_time",
    "blowdown_pressure",
    "blowdown_time",
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
    "coefficient_air_flow_from_cv",
    "coefficient_conductance_from_kv",
    "coefficient_cv_from_air_flow",
    "coefficient_cv_from_kv",
    "coefficient_kv_from_conductance",
    "coefficient_kv_from_cv",
    "compression_exponent_from_temperatures",
    "compression_exponent_from_volumes",
    "compression_free_air_work",
    "compression_heat_rejected",
    "compression_power_from_free_air",
    "compression_power_from_mass_flow",
    "compression_pressure_from_temperature",
    "compression_temperature",
    "compression_work_isentropic",
    "compression_work_isothermal",
    "compression_work_polytropic",
    "condensate_inlet",
    "condensate_rate",
    "condensate_step",
    "conductance_area",
    "conductance_flow",
    "conductance_from_area",
    "conductance_from_flow",
    "conductance_outlet_pressure",
    "conductance_parallel",
    "conductance_series",
    "conductor_drop",
    "conductor_gauge",
    "conductor_gauge_from_area",
    "conductor_resistance",
    "conductor_resistance_at",
    "conductor_size",
    "conductor_size_for_drop",
    "conductor_table_resistance",
    "coverage_correlation",
    "coverage_degrees_of_freedom",
    "coverage_degrees_of_freedom_from_doubt",
    "coverage_factor",
    "coverage_interval",
    "coverage_mean",
    "coverage_pooled",
    "coverage_probability",
    "coverage_uncertainty_from_limits",
    "crank_angle_from_position",
    "crank_gas_load",
    "crank_inertia_load",
    "crank_position",
    "crank_torque",
    "crank_velocity",
    "crank_volume",
    "cycle_card",
    "cycle_point",
    "cylinder_clearance_from_volume",
    "cylinder_clearance_from_volumetric_efficiency",
    "cylinder_clearance_from_zero_delivery",
    "cylinder_clearance_volume",
    "cylinder_indicated_power",
    "cylinder_mean_effective_pressure",
    "cylinder_piston_speed",
    "cylinder_swept_volume",
    "cylinder_swept_volume_double_acting",
    "cylinder_volumetric_efficiency",
    "cylinder_zero_delivery_pressure",
    "delivery_bore_from_stroke",
    "delivery_bore_from_stroke_ratio",
    "delivery_free_air",
    "delivery_of_stage",
    "delivery_volumetric_efficiency",
    "demand_at_pressure",
    "demand_capacity",
    "demand_running",
    "demand_simultaneity",
    "demand_store",
    "demand_summary",
    "demand_tools",
    "dew_point_at_pressure",
    "dew_point_from_ratio",
    "dew_point_from_relative",
    "dew_point_humidity_ratio",
    "dew_point_relative_humidity",
    "diagnosis_check_effort",
    "diagnosis_check_rank",
    "diagnosis_expectation_from_machine",
    "diagnosis_finding_compare",
    "diagnosis_finding_value",
    "diagnosis_proof_judge",
    "diagnosis_rank",
    "diagnosis_subject_cause",
    "diagnosis_subject_reading",
    "dry_air_density",
    "dry_air_ideal_density",
    "dry_air_ideal_enthalpy",
    "dry_air_ideal_entropy",
    "dry_air_ideal_heat_capacity",
    "dry_air_ideal_heat_capacity_ratio",
    "dry_air_ideal_isentropic_temperature",
    "dry_air_ideal_speed_of_sound",
    "dry_air_ideal_temperature_from_enthalpy",
    "dry_air_ideal_temperature_from_entropy",
    "dry_air_saturation",
    "dry_air_state",
    "dry_air_state_from_density",
    "dry_air_temperature_from_enthalpy",
    "dry_air_temperature_from_entropy",
    "dry_air_transport_conductivity",
    "dry_air_transport_conductivity_from_density",
    "dry_air_transport_viscosity",
    "dry_air_transport_viscosity_from_density",
    "duty_from_phases",
    "energy_cost",
    "energy_from_profile",
    "energy_from_times",
    "energy_heat_recovery",
    "energy_input_power",
    "energy_part_load",
    "energy_payback",
    "energy_zero_load_share",
    "enhancement_factor",
    "enhancement_fugacity",
    "enhancement_virials",
    "evidence_check_for",
    "evidence_count",
    "evidence_find",
    "evidence_name",
    "evidence_proof",
    "evidence_readings_check",
    "evidence_readings_get",
    "evidence_remedy",
    "evidence_text",
    "evidence_title",
    "expectation_compare",
    "expectation_of_run",
    "expectation_times",
    "fanno_length",
    "fanno_mach_from_parameter",
    "fanno_mass_flow",
    "fanno_outlet",
    "fanno_parameter",
    "fanno_ratios",
    "fastener_nut_factor",
    "fastener_pitch",
    "fastener_preload",
    "fastener_pressure_load",
    "fastener_strength",
    "fastener_stress_area",
    "fastener_torque",
    "fastener_torque_for_grade",
    "fault_applies",
    "fault_apply",
    "fault_count",
    "fault_name",
    "fitting_coefficient_from_length",
    "fitting_contraction",
    "fitting_equivalent_length",
    "fitting_expansion",
    "fitting_length_ratio",
    "fitting_loss_coefficient",
    "flow_area_from_mass_flow",
    "flow_critical_coefficient",
    "flow_critical_pressure_ratio",
    "flow_inlet_pressure_from_mass_flow",
    "flow_isentropic_ratios",
    "flow_mach_from_area_ratio",
    "flow_mach_from_pressure_ratio",
    "flow_mass_flow",
    "flow_outlet_pressure_from_mass_flow",
    "humidity_convert",
    "humidity_ratio_from_relative",
    "humidity_relative_from_ratio",
    "impedance_from_phase",
    "impedance_from_power",
    "indicator_exponent",
    "indicator_ideal",
    "indicator_mep_from_card",
    "indicator_work",
    "inference_rank",
    "intercooler_approach",
    "intercooler_coolant_flow",
    "intercooler_effectiveness",
    "intercooler_mean_difference",
    "intercooler_ntu",
    "intercooler_outlet",
    "intercooler_pressure",
    "intercooler_size_from_readings",
    "isothermal_choking",
    "isothermal_diameter",
    "isothermal_flow_from_pressures",
    "isothermal_inlet_pressure",
    "isothermal_mass_flow",
    "isothermal_outlet_pressure",
    "leakage_at_pressure_from_decay",
    "leakage_cost",
    "leakage_flow_at_pressure",
    "leakage_flow_from_cycle",
    "leakage_flow_from_hole",
    "leakage_flow_from_readings",
    "leakage_hole_from_flow",
    "leakage_mean_from_decay",
    "leakage_power",
    "leakage_share_from_cycle",
    "likelihood_cautions",
    "likelihood_density",
    "likelihood_deviation",
    "likelihood_information",
    "likelihood_level_off",
    "likelihood_observation",
    "likelihood_prior",
    "likelihood_reading",
    "likelihood_size",
    "likelihood_spread",
    "likelihood_update",
    "machine_complete",
    "machine_displacement",
    "moist_air_density",
    "moist_air_density_cipm",
    "moist_air_enthalpy",
    "moist_air_flow_convert",
    "moist_air_gas_constant",
    "moist_air_state",
    "moist_air_state_from_density",
    "moist_air_volume",
    "monte_carlo_draw",
    "monte_carlo_interval",
    "monte_carlo_propagate",
    "monte_carlo_summary",
    "monte_carlo_tolerance",
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
    "multistage_intercooler_heat",
    "multistage_optimum",
    "multistage_power_from_free_air",
    "multistage_power_from_mass_flow",
    "multistage_pressure",
    "multistage_pressure_from_temperatures",
    "multistage_saving",
    "multistage_stages",
    "multistage_work",
    "multistage_work_equal",
    "nameplate_code_band",
    "nameplate_code_from_current",
    "nameplate_efficiency",
    "nameplate_full_load_current",
    "nameplate_load_from_current",
    "nameplate_load_from_speed",
    "nameplate_locked_rotor_current",
    "nozzle_discharge_coefficient",
    "nozzle_meter_coefficient",
    "nozzle_meter_mass_flow",
    "nozzle_sharp_edged_coefficient",
    "nozzle_trade_flow",
    "outlook_readings",
    "performance_efficiency_isentropic",
    "performance_efficiency_isentropic_from_temperatures",
    "performance_efficiency_isothermal",
    "performance_efficiency_isothermal_from_exponent",
    "performance_efficiency_mechanical",
    "performance_efficiency_overall",
    "performance_efficiency_polytropic_from_temperatures",
    "performance_heat_from_power",
    "performance_saving_from_pressure",
    "performance_specific_power",
    "performance_temperature_from_efficiency",
    "pipe_diameter_from_velocity",
    "pipe_drop_harris",
    "pipe_friction_factor",
    "pipe_pressure_drop",
    "pipe_reynolds",
    "pipe_roughness",
    "pipe_size",
    "pipe_size_from_diameter",
    "pipe_velocity",
    "prediction_leak_down",
    "prediction_level_off",
    "prediction_pumpup",
    "prediction_times",
    "pressure_log_current_levels",
    "pressure_log_segment",
    "pressure_log_state_from_current",
    "pressure_log_state_from_switch",
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
    "pumpup_analyse",
    "pumpup_analyse_table",
    "pumpup_curve_shape_from_readings",
    "purity_concentration_at_reference",
    "purity_oil_class",
    "purity_oil_limit",
    "purity_particle_class",
    "purity_particle_limits",
    "purity_water_class",
    "purity_water_limits",
    "rating_complete",
    "real_compression_efficiency",
    "real_compression_from_exponent",
    "real_compression_isentropic",
    "real_compression_isothermal",
    "real_compression_outlet",
    "real_compression_stages",
    "real_compression_throttled",
    "real_polytropic_efficiency",
    "real_polytropic_exponents",
    "real_polytropic_schultz",
    "real_polytropic_work",
    "receiver_cycle",
    "receiver_fill_time",
    "receiver_free_air_from_pump_up",
    "receiver_pressure_after",
    "receiver_starts_maximum",
    "receiver_usable_air",
    "receiver_volume_from_event",
    "receiver_volume_from_starts",
    "receiver_water_from_pump_up",
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
    "ring_main_dead_end",
    "ring_main_flows",
    "ring_main_share",
    "rotary_volume_ratio",
    "rotary_work",
    "safety_burn_threshold",
    "safety_cleaning_pressure",
    "safety_stored_energy_hazard",
    "saturation_latent_heat",
    "saturation_pressure",
    "saturation_pressure_ice",
    "saturation_pressure_supercooled",
    "saturation_pressure_water",
    "saturation_temperature",
    "saturation_temperature_water",
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
    "uncertainty_budget",
    "uncertainty_covariance",
    "uncertainty_propagate",
    "uncertainty_propagate_second_order",
    "uncertainty_second_order",
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
    "vessel_pressure_allowable",
    "vessel_relief_capacity",
    "vessel_relief_verdict",
    "vessel_shell_stress",
    "vessel_sphere_stress",
    "vessel_stored_energy",
    "vessel_test_distance",
    "vessel_test_energy",
    "vessel_tnt_equivalent",
    "vessel_wall_required",
    "wet_bulb_humidity_ratio",
    "wet_bulb_temperature",
    "wet_cooler_outlet",
    "wet_cooler_size_from_readings",
]
