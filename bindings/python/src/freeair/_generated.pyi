# SPDX-License-Identifier: MIT
# Written by bindings/generate; do not edit.
from typing import Any, NamedTuple, Sequence as _Sequence, Union, overload

from ._runtime import Structure

_Array = Any  # anything NumPy makes an array of

OK: int
WARN_EXTRAPOLATED: int
WARN_TRANSITION: int
WARN_INCONSISTENT: int
WARN_TRUNCATED: int
WARN_LIMIT: int
ERR_NULL: int
ERR_DOMAIN: int
ERR_NO_SOLUTION: int
ERR_NO_CONVERGENCE: int
ERR_OVERFLOW: int
ERR_VERSION: int
ERR_DATA: int
ERR_NOT_FOUND: int
ERR_DIMENSION: int
ERR_UNSUPPORTED: int
CAUTION_ISOLATE: int
CAUTION_DEPRESSURISE: int
CAUTION_STORED_ENERGY: int
CAUTION_RELIEF_VALVE: int
CAUTION_ROTATING: int
CAUTION_VESSEL: int
CAUTION_HOT: int
CAUTION_CAPACITOR: int
CAUTION_LIVE: int
CAUTION_OIL_MIST: int
CAUTION_LIFTING: int
CAUTION_PROTECTION: int
CAUTION_BREATHING: int
CAUTION_BLOWING: int
REFERENCE_ISO_1217: int
REFERENCE_ISO_8778: int
REFERENCE_DIN_1343: int
REFERENCE_ISO_13443: int
REFERENCE_ISO_2533: int
REFERENCE_SCFM_60F: int
REFERENCE_SCFM_68F: int
REFERENCE_SCFM_68F_36RH: int
REFERENCE_SCFM_70F: int
REFERENCE_NTP: int
REFERENCE_STP: int
VERDICT_CANNOT_TELL: int
VERDICT_MEETS: int
VERDICT_FAILS: int
COVERAGE_NORMAL: int
COVERAGE_RECTANGULAR: int
COVERAGE_TRIANGULAR: int
COVERAGE_ARCSINE: int
COVERAGE_STUDENT: int
SATURATION_OVER_WATER: int
SATURATION_OVER_ICE: int
ENHANCEMENT_NONE: int
ENHANCEMENT_VIRIAL: int
NAMEPLATE_CODE_A: int
NAMEPLATE_CODE_B: int
NAMEPLATE_CODE_C: int
NAMEPLATE_CODE_D: int
NAMEPLATE_CODE_E: int
NAMEPLATE_CODE_F: int
NAMEPLATE_CODE_G: int
NAMEPLATE_CODE_H: int
NAMEPLATE_CODE_J: int
NAMEPLATE_CODE_K: int
NAMEPLATE_CODE_L: int
NAMEPLATE_CODE_M: int
NAMEPLATE_CODE_N: int
NAMEPLATE_CODE_P: int
NAMEPLATE_CODE_R: int
NAMEPLATE_CODE_S: int
NAMEPLATE_CODE_T: int
NAMEPLATE_CODE_U: int
NAMEPLATE_CODE_V: int
NAMEPLATE_IE1: int
NAMEPLATE_IE2: int
NAMEPLATE_IE3: int
NAMEPLATE_IE4: int
CAPACITOR_RUN_5: int
CAPACITOR_RUN_6: int
CAPACITOR_RUN_10: int
CAPACITOR_RUN_15: int
CAPACITOR_START_20: int
CAPACITOR_START_23: int
BELT_SECTION_A: int
BELT_SECTION_B: int
BELT_SECTION_C: int
BELT_SECTION_D: int
FLOW_SUBSONIC: int
FLOW_SUPERSONIC: int
NOZZLE_SHARP_EDGED: int
NOZZLE_WELL_ROUNDED: int
NOZZLE_SHORT_TUBE: int
NOZZLE_ROUNDED_TUBE: int
NOZZLE_CONE: int
NOZZLE_TOROIDAL_ACCURATE: int
NOZZLE_TOROIDAL_NORMAL: int
NOZZLE_CYLINDRICAL: int
SAFETY_UNKNOWN: int
SAFETY_LOWER: int
SAFETY_HIGH: int
PIPE_DRAWN: int
PIPE_STEEL: int
PIPE_GALVANIZED: int
PIPE_CAST_IRON: int
PIPE_SMOOTH: int
PIPE_SCHEDULE_40: int
PIPE_SCHEDULE_80: int
PIPE_EN_MEDIUM: int
FITTING_ELBOW_90: int
FITTING_ELBOW_90_LONG: int
FITTING_ELBOW_45: int
FITTING_RETURN_BEND: int
FITTING_TEE_RUN: int
FITTING_TEE_BRANCH: int
FITTING_UNION: int
FITTING_GLOBE_VALVE: int
FITTING_ANGLE_VALVE: int
FITTING_GATE_VALVE: int
FITTING_BALL_VALVE: int
FITTING_SWING_CHECK: int
FITTING_ENTRANCE_SHARP: int
FITTING_ENTRANCE_INWARD: int
FITTING_ENTRANCE_ROUND: int
FITTING_EXIT: int
FITTING_THREADED: int
FITTING_FLANGED: int
CONDUCTOR_COPPER: int
CONDUCTOR_COPPER_FLEXIBLE: int
CONDUCTOR_ALUMINIUM: int
FASTENER_ISO: int
FASTENER_UNC: int
FASTENER_UNF: int
FASTENER_SAE_2: int
FASTENER_SAE_5: int
FASTENER_SAE_8: int
FASTENER_ISO_4_6: int
FASTENER_ISO_4_8: int
FASTENER_ISO_5_6: int
FASTENER_ISO_5_8: int
FASTENER_ISO_6_8: int
FASTENER_ISO_8_8: int
FASTENER_ISO_9_8: int
FASTENER_ISO_10_9: int
FASTENER_ISO_12_9: int
ENERGY_START_STOP: int
ENERGY_LOAD_UNLOAD: int
ENERGY_MODULATION: int
ENERGY_VARIABLE_SPEED: int
PURITY_CLASS_X: int
INTERCOOLER_COUNTERFLOW: int
INTERCOOLER_PARALLEL: int
INTERCOOLER_SHELL_AND_TUBE: int
INTERCOOLER_CROSS_UNMIXED: int
INTERCOOLER_CROSS_LARGER_MIXED: int
INTERCOOLER_CROSS_LESSER_MIXED: int
MACHINE_V: int
MACHINE_SIDE_BY_SIDE: int
FAULT_NONE: int
FAULT_INTAKE_FILTER: int
FAULT_LP_SUCTION_VALVE: int
FAULT_LP_DISCHARGE_VALVE: int
FAULT_HP_SUCTION_VALVE: int
FAULT_HP_DISCHARGE_VALVE: int
FAULT_GASKET_BETWEEN: int
FAULT_LP_GASKET_OUTSIDE: int
FAULT_HP_GASKET_OUTSIDE: int
FAULT_LP_RINGS: int
FAULT_HP_RINGS: int
FAULT_INTERSTAGE_LEAK: int
FAULT_INTERCOOLER_FOULED: int
FAULT_RELIEF_WEAK: int
FAULT_UNLOADER_LEAK: int
FAULT_CHECK_VALVE: int
FAULT_DOWNSTREAM_LEAK: int
FAULT_DEMAND: int
FAULT_RECEIVER_WATER: int
FAULT_BELT_SLIP: int
FAULT_PULLEY: int
FAULT_LOW_VOLTAGE: int
FAULT_RUN_CAPACITOR: int
FAULT_PRESSURE_SWITCH: int
FAULT_GAUGE: int
PREDICTION_SOAKED: int
PREDICTION_DRAWN_DOWN: int
PREDICTION_GIVEN: int
RATING_NOTHING: int
RATING_SPEED: int
RATING_BORE: int
RATING_CLEARANCE: int
RATING_VALVES: int
RATING_HEATING: int
PUMPUP_UNKNOWN: int
PUMPUP_SOAKED: int
PUMPUP_DRAWN_DOWN: int
PUMPUP_CYCLING: int
PRESSURE_LOG_UNKNOWN: int
PRESSURE_LOG_LOADED: int
PRESSURE_LOG_UNLOADED: int
PRESSURE_LOG_STOPPED: int
PRESSURE_LOG_IDLE: int
PRESSURE_LOG_GAP: int
PRESSURE_LOG_FROZEN: int
DUTY_NEVER_CUTS_OUT: int
DUTY_NEVER_LOADS: int
DUTY_HAS_FROZEN: int
DUTY_HAS_GAPS: int
DUTY_LEFT_OUT: int
DUTY_FEW_CYCLES: int
DUTY_AMBIGUOUS: int
DUTY_UNSETTLED: int
DUTY_SINKS_LOADED: int
EVIDENCE_KIND_CAUSE: int
EVIDENCE_KIND_OBSERVATION: int
EVIDENCE_KIND_READING: int
EVIDENCE_KIND_CHECK: int
EVIDENCE_NOT_CHECKED: int
EVIDENCE_YES: int
EVIDENCE_NO: int
EVIDENCE_CAUSE_NONE: int
EVIDENCE_HEALTHY: int
EVIDENCE_OTHER: int
EVIDENCE_INTAKE_FILTER: int
EVIDENCE_LP_SUCTION_VALVE: int
EVIDENCE_LP_DISCHARGE_VALVE: int
EVIDENCE_HP_SUCTION_VALVE: int
EVIDENCE_HP_DISCHARGE_VALVE: int
EVIDENCE_GASKET_BETWEEN: int
EVIDENCE_GASKET_OUTSIDE: int
EVIDENCE_PISTON_RINGS: int
EVIDENCE_INTERSTAGE_LEAK: int
EVIDENCE_INTERCOOLER_FOULED: int
EVIDENCE_RELIEF_WEAK: int
EVIDENCE_UNLOADER_LEAK: int
EVIDENCE_CHECK_VALVE: int
EVIDENCE_DOWNSTREAM: int
EVIDENCE_RECEIVER_WATER: int
EVIDENCE_BELT_SLIP: int
EVIDENCE_WRONG_PULLEY: int
EVIDENCE_LOW_VOLTAGE: int
EVIDENCE_RUN_CAPACITOR: int
EVIDENCE_START_CAPACITOR: int
EVIDENCE_MOTOR: int
EVIDENCE_GAUGE_OR_SWITCH: int
EVIDENCE_OBSERVATION_NONE: int
EVIDENCE_BLOW_BACK_AT_INLET: int
EVIDENCE_CHIRPING_AT_HEADS: int
EVIDENCE_INTERSTAGE_RELIEF_POPS: int
EVIDENCE_LP_HEAD_HOT: int
EVIDENCE_HP_HEAD_HOT: int
EVIDENCE_HOT_BETWEEN_BORES: int
EVIDENCE_AIR_AT_HEAD_JOINT: int
EVIDENCE_BREATHER_BLOWS: int
EVIDENCE_OIL_IN_DRAIN: int
EVIDENCE_OIL_USE_HIGH: int
EVIDENCE_BELT_DUST: int
EVIDENCE_BELT_SQUEALS: int
EVIDENCE_BELT_GLAZED: int
EVIDENCE_BELT_LOOSE: int
EVIDENCE_DRIVE_CHANGED: int
EVIDENCE_PUMP_SOUNDS_SLOW: int
EVIDENCE_HUMS_AT_START: int
EVIDENCE_BREAKER_TRIPS: int
EVIDENCE_CAPACITOR_BULGED: int
EVIDENCE_LIGHTS_DIM: int
EVIDENCE_HISS_AT_SWITCH: int
EVIDENCE_BETTER_UNLOADER_BLOCKED: int
EVIDENCE_UNLOADER_BLOWS_STOPPED: int
EVIDENCE_HARD_RESTART: int
EVIDENCE_FALLS_WHEN_STOPPED: int
EVIDENCE_DRAIN_PASSES: int
EVIDENCE_LEAKS_HEARD: int
EVIDENCE_DEMAND_ADDED: int
EVIDENCE_FINE_WHEN_ISOLATED: int
EVIDENCE_RUNS_AT_NIGHT: int
EVIDENCE_SYSTEM_STARVES: int
EVIDENCE_FILTER_DIRTY: int
EVIDENCE_BETTER_FILTER_OUT: int
EVIDENCE_INTERSTAGE_BUBBLES: int
EVIDENCE_INTERCOOLER_DIRTY: int
EVIDENCE_RELIEF_POPS_EARLY: int
EVIDENCE_WATER_DRAINED: int
EVIDENCE_SHORT_CYCLES: int
EVIDENCE_NEVER_REACHES_CUTOUT: int
EVIDENCE_STOPS_AT_WRONG_PRESSURE: int
EVIDENCE_SLOWER_NEAR_CUTOUT: int
EVIDENCE_CAME_SUDDENLY: int
EVIDENCE_HEADS_OPENED_LATELY: int
EVIDENCE_LP_VALVES_BAD: int
EVIDENCE_HP_VALVES_BAD: int
EVIDENCE_GASKET_BURNT: int
EVIDENCE_CHECK_NONE: int
EVIDENCE_ASK: int
EVIDENCE_LISTEN_AT_INLET: int
EVIDENCE_LISTEN_AT_HEADS: int
EVIDENCE_LOOK_AT_DRIVE: int
EVIDENCE_LOOK_AT_OIL: int
EVIDENCE_WALK_THE_SYSTEM: int
EVIDENCE_SECOND_GAUGE: int
EVIDENCE_PUMP_UP_TEST: int
EVIDENCE_STOP_AND_WATCH: int
EVIDENCE_LEAK_DOWN_OPEN: int
EVIDENCE_INTERSTAGE_GAUGE: int
EVIDENCE_TEMPERATURES: int
EVIDENCE_TACHOMETER: int
EVIDENCE_FILTER_OUT: int
EVIDENCE_SOAP_INTERSTAGE: int
EVIDENCE_BLOCK_UNLOADER: int
EVIDENCE_INSPECT_BELT: int
EVIDENCE_MEASURE_SUPPLY: int
EVIDENCE_MEASURE_CAPACITORS: int
EVIDENCE_WATCH_A_START: int
EVIDENCE_LOG_A_DAY: int
EVIDENCE_DRAIN_RECEIVER: int
EVIDENCE_HEADS_OFF: int
EVIDENCE_READ_SITE: int
EVIDENCE_READING_NONE: int
EVIDENCE_DELIVERY: int
EVIDENCE_TIME_FROM_EMPTY: int
EVIDENCE_TIME_FROM_CUTIN: int
EVIDENCE_LEVEL_OFF: int
EVIDENCE_INTERSTAGE: int
EVIDENCE_LP_DISCHARGE: int
EVIDENCE_HP_DISCHARGE: int
EVIDENCE_INTERCOOLER_OUTLET: int
EVIDENCE_MOTOR_SPEED: int
EVIDENCE_PUMP_SPEED: int
EVIDENCE_SUPPLY_RUNNING: int
EVIDENCE_SUPPLY_STARTING: int
EVIDENCE_MOTOR_CURRENT: int
EVIDENCE_POWER: int
EVIDENCE_RUN_CAPACITANCE: int
EVIDENCE_START_CAPACITANCE: int
EVIDENCE_LEAK_ISOLATED: int
EVIDENCE_LEAK_OPEN: int
EVIDENCE_GAUGE_DIFFERENCE: int
EVIDENCE_CUTOUT: int
EVIDENCE_RELIEF_OPENING: int
EVIDENCE_FILTER_DROP: int
EVIDENCE_BELT_DEFLECTION: int
EVIDENCE_WATER: int
EVIDENCE_DUTY: int
EVIDENCE_AMBIENT: int
EVIDENCE_BAROMETER: int
LIKELIHOOD_UNLISTED: int
LIKELIHOOD_PRACTICE: int
LIKELIHOOD_DERIVED: int
LIKELIHOOD_NO_SCALE: int
LIKELIHOOD_LOG: int
LIKELIHOOD_DIFFERENCE: int
LIKELIHOOD_SHARE: int
DIAGNOSIS_HEAD_UNKNOWN: int
DIAGNOSIS_HEAD_SEPARATE: int
DIAGNOSIS_HEAD_SHARED: int
DIAGNOSIS_DRIVE_UNKNOWN: int
DIAGNOSIS_DRIVE_BELT: int
DIAGNOSIS_DRIVE_DIRECT: int
DIAGNOSIS_SUPPLY_UNKNOWN: int
DIAGNOSIS_SINGLE_PHASE: int
DIAGNOSIS_THREE_PHASE: int
DIAGNOSIS_ENGINE: int
DIAGNOSIS_NOT_USED: int
DIAGNOSIS_USED: int
DIAGNOSIS_CONTRADICTS: int
DIAGNOSIS_NOT_APPLICABLE: int
TYPE_DOUBLE: int
TYPE_INT32: int
TYPE_UINT32: int
TYPE_SIZE: int
TYPE_TEXT: int
TYPE_STRUCTURE: int
PARAMETER_OUTPUT: int
PARAMETER_ARRAY: int
PARAMETER_OPTIONAL: int
PARAMETER_LOWER_CLOSED: int
PARAMETER_UPPER_CLOSED: int
MONTE_CARLO_SYMMETRIC: int
MONTE_CARLO_SHORTEST: int

class DryAirProperties(Structure):
    p_pa: float
    t_k: float
    rho_kg_m3: float
    compressibility_factor: float
    h_j_kg: float
    s_j_kg_k: float
    u_j_kg: float
    cp_j_kg_k: float
    cv_j_kg_k: float
    heat_capacity_ratio: float
    isentropic_exponent: float
    speed_of_sound_m_s: float
    joule_thomson_k_pa: float
    expansion_1_k: float
    compressibility_1_pa: float
    viscosity_pas: float
    conductivity_w_m_k: float
    prandtl_number: float
    def __init__(self, *, p_pa: float | None = ..., t_k: float | None = ..., rho_kg_m3: float | None = ..., compressibility_factor: float | None = ..., h_j_kg: float | None = ..., s_j_kg_k: float | None = ..., u_j_kg: float | None = ..., cp_j_kg_k: float | None = ..., cv_j_kg_k: float | None = ..., heat_capacity_ratio: float | None = ..., isentropic_exponent: float | None = ..., speed_of_sound_m_s: float | None = ..., joule_thomson_k_pa: float | None = ..., expansion_1_k: float | None = ..., compressibility_1_pa: float | None = ..., viscosity_pas: float | None = ..., conductivity_w_m_k: float | None = ..., prandtl_number: float | None = ...) -> None: ...

class EnhancementCoefficients(Structure):
    b_aa_m3_mol: float
    b_aw_m3_mol: float
    b_ww_m3_mol: float
    c_aaa_m6_mol2: float
    c_aaw_m6_mol2: float
    c_aww_m6_mol2: float
    c_www_m6_mol2: float
    def __init__(self, *, b_aa_m3_mol: float | None = ..., b_aw_m3_mol: float | None = ..., b_ww_m3_mol: float | None = ..., c_aaa_m6_mol2: float | None = ..., c_aaw_m6_mol2: float | None = ..., c_aww_m6_mol2: float | None = ..., c_www_m6_mol2: float | None = ...) -> None: ...

class MoistAirProperties(Structure):
    p_pa: float
    t_k: float
    humidity_ratio: float
    mole_fraction: float
    rho_kg_m3: float
    compressibility_factor: float
    h_j_kg: float
    s_j_kg_k: float
    u_j_kg: float
    cp_j_kg_k: float
    cv_j_kg_k: float
    heat_capacity_ratio: float
    isentropic_exponent: float
    speed_of_sound_m_s: float
    joule_thomson_k_pa: float
    h_dry_j_kg: float
    v_dry_m3_kg: float
    def __init__(self, *, p_pa: float | None = ..., t_k: float | None = ..., humidity_ratio: float | None = ..., mole_fraction: float | None = ..., rho_kg_m3: float | None = ..., compressibility_factor: float | None = ..., h_j_kg: float | None = ..., s_j_kg_k: float | None = ..., u_j_kg: float | None = ..., cp_j_kg_k: float | None = ..., cv_j_kg_k: float | None = ..., heat_capacity_ratio: float | None = ..., isentropic_exponent: float | None = ..., speed_of_sound_m_s: float | None = ..., joule_thomson_k_pa: float | None = ..., h_dry_j_kg: float | None = ..., v_dry_m3_kg: float | None = ...) -> None: ...

class HumidityGiven(Structure):
    p_pa: float
    t_k: float
    mole_fraction: float
    vapour_pressure_pa: float
    humidity_ratio: float
    specific_humidity: float
    relative_humidity: float
    dew_point_k: float
    frost_point_k: float
    wet_bulb_k: float
    vapour_density_kg_m3: float
    model: int
    wick: int
    def __init__(self, *, p_pa: float | None = ..., t_k: float | None = ..., mole_fraction: float | None = ..., vapour_pressure_pa: float | None = ..., humidity_ratio: float | None = ..., specific_humidity: float | None = ..., relative_humidity: float | None = ..., dew_point_k: float | None = ..., frost_point_k: float | None = ..., wet_bulb_k: float | None = ..., vapour_density_kg_m3: float | None = ..., model: int | None = ..., wick: int | None = ...) -> None: ...

class HumidityFound(Structure):
    mole_fraction: float
    vapour_pressure_pa: float
    humidity_ratio: float
    specific_humidity: float
    relative_humidity: float
    dew_point_k: float
    frost_point_k: float
    wet_bulb_k: float
    vapour_density_kg_m3: float
    rho_kg_m3: float
    h_dry_j_kg: float
    v_dry_m3_kg: float
    def __init__(self, *, mole_fraction: float | None = ..., vapour_pressure_pa: float | None = ..., humidity_ratio: float | None = ..., specific_humidity: float | None = ..., relative_humidity: float | None = ..., dew_point_k: float | None = ..., frost_point_k: float | None = ..., wet_bulb_k: float | None = ..., vapour_density_kg_m3: float | None = ..., rho_kg_m3: float | None = ..., h_dry_j_kg: float | None = ..., v_dry_m3_kg: float | None = ...) -> None: ...

class CondensateFlow(Structure):
    p_pa: float
    t_k: float
    dry_kg_s: float
    vapour_kg_s: float
    liquid_kg_s: float
    condensed_kg_s: float
    removed_kg_s: float
    q_m3_s: float
    relative_humidity: float
    dew_point_k: float
    enthalpy_w: float
    released_w: float
    model: int
    over: int
    def __init__(self, *, p_pa: float | None = ..., t_k: float | None = ..., dry_kg_s: float | None = ..., vapour_kg_s: float | None = ..., liquid_kg_s: float | None = ..., condensed_kg_s: float | None = ..., removed_kg_s: float | None = ..., q_m3_s: float | None = ..., relative_humidity: float | None = ..., dew_point_k: float | None = ..., enthalpy_w: float | None = ..., released_w: float | None = ..., model: int | None = ..., over: int | None = ...) -> None: ...

class CapacitorMotorWindings(Structure):
    main_r_ohm: float
    main_x_ohm: float
    auxiliary_r_ohm: float
    auxiliary_x_ohm: float
    turns_ratio: float
    rotor_r_ohm: float
    rotor_x_ohm: float
    magnetising_x_ohm: float
    def __init__(self, *, main_r_ohm: float | None = ..., main_x_ohm: float | None = ..., auxiliary_r_ohm: float | None = ..., auxiliary_x_ohm: float | None = ..., turns_ratio: float | None = ..., rotor_r_ohm: float | None = ..., rotor_x_ohm: float | None = ..., magnetising_x_ohm: float | None = ...) -> None: ...

class CapacitorMotorPerformance(Structure):
    torque_nm: float
    mechanical_w: float
    input_w: float
    power_factor: float
    line_a: float
    main_a: float
    auxiliary_a: float
    capacitor_v: float
    def __init__(self, *, torque_nm: float | None = ..., mechanical_w: float | None = ..., input_w: float | None = ..., power_factor: float | None = ..., line_a: float | None = ..., main_a: float | None = ..., auxiliary_a: float | None = ..., capacitor_v: float | None = ...) -> None: ...

class IsothermalPipe(Structure):
    length_m: float
    diameter_m: float
    roughness_m: float
    loss_coefficient: float
    t_k: float
    viscosity_pas: float
    r_j_kg_k: float
    def __init__(self, *, length_m: float | None = ..., diameter_m: float | None = ..., roughness_m: float | None = ..., loss_coefficient: float | None = ..., t_k: float | None = ..., viscosity_pas: float | None = ..., r_j_kg_k: float | None = ...) -> None: ...

class BlowdownVessel(Structure):
    v_m3: float
    area_m2: float
    p_vessel_pa: float
    p_line_pa: float
    t_k: float
    exponent: float
    k: float
    r_j_kg_k: float
    def __init__(self, *, v_m3: float | None = ..., area_m2: float | None = ..., p_vessel_pa: float | None = ..., p_line_pa: float | None = ..., t_k: float | None = ..., exponent: float | None = ..., k: float | None = ..., r_j_kg_k: float | None = ...) -> None: ...

class AcceptanceTest(Structure):
    flow_m3_s: float
    power_w: float
    speed_rev_s: float
    inlet_pa: float
    inlet_k: float
    discharge_pa: float
    coolant_k: float
    approach_k: float
    contract_speed_rev_s: float
    contract_inlet_pa: float
    contract_inlet_k: float
    contract_discharge_pa: float
    contract_coolant_k: float
    clearance: float
    exponent: float
    def __init__(self, *, flow_m3_s: float | None = ..., power_w: float | None = ..., speed_rev_s: float | None = ..., inlet_pa: float | None = ..., inlet_k: float | None = ..., discharge_pa: float | None = ..., coolant_k: float | None = ..., approach_k: float | None = ..., contract_speed_rev_s: float | None = ..., contract_inlet_pa: float | None = ..., contract_inlet_k: float | None = ..., contract_discharge_pa: float | None = ..., contract_coolant_k: float | None = ..., clearance: float | None = ..., exponent: float | None = ...) -> None: ...

class DeliveryStage(Structure):
    swept_m3: float
    speed_rev_s: float
    clearance: float
    p1_pa: float
    t1_k: float
    p2_pa: float
    p_free_pa: float
    t_free_k: float
    r_j_kg_k: float
    n_expansion: float
    n_compression: float
    t_cylinder_k: float
    suction_drop_pa: float
    discharge_drop_pa: float
    leakage: float
    def __init__(self, *, swept_m3: float | None = ..., speed_rev_s: float | None = ..., clearance: float | None = ..., p1_pa: float | None = ..., t1_k: float | None = ..., p2_pa: float | None = ..., p_free_pa: float | None = ..., t_free_k: float | None = ..., r_j_kg_k: float | None = ..., n_expansion: float | None = ..., n_compression: float | None = ..., t_cylinder_k: float | None = ..., suction_drop_pa: float | None = ..., discharge_drop_pa: float | None = ..., leakage: float | None = ...) -> None: ...

class DeliveryResult(Structure):
    fad_m3_s: float
    m_kg_s: float
    inlet_m3_s: float
    efficiency_cylinder: float
    efficiency_inlet: float
    efficiency_free: float
    mep_pa: float
    indicated_w: float
    def __init__(self, *, fad_m3_s: float | None = ..., m_kg_s: float | None = ..., inlet_m3_s: float | None = ..., efficiency_cylinder: float | None = ..., efficiency_inlet: float | None = ..., efficiency_free: float | None = ..., mep_pa: float | None = ..., indicated_w: float | None = ...) -> None: ...

class IntercoolerStages(Structure):
    displacement1_m3_s: float
    clearance1: float
    displacement2_m3_s: float
    clearance2: float
    exponent: float
    p1_pa: float
    t1_k: float
    p2_pa: float
    t2_k: float
    drop_pa: float
    def __init__(self, *, displacement1_m3_s: float | None = ..., clearance1: float | None = ..., displacement2_m3_s: float | None = ..., clearance2: float | None = ..., exponent: float | None = ..., p1_pa: float | None = ..., t1_k: float | None = ..., p2_pa: float | None = ..., t2_k: float | None = ..., drop_pa: float | None = ...) -> None: ...

class Machine(Structure):
    speed_rev_s: float
    lp_bore_m: float
    hp_bore_m: float
    lp_stroke_m: float
    hp_stroke_m: float
    rod_ratio: float
    lp_clearance: float
    hp_clearance: float
    phase_rad: float
    lp_spread_rad: float
    hp_spread_rad: float
    lp_suction_area_m2: float
    lp_suction_leak_m2: float
    lp_suction_lift_pa: float
    lp_discharge_area_m2: float
    lp_discharge_leak_m2: float
    lp_discharge_lift_pa: float
    hp_suction_area_m2: float
    hp_suction_leak_m2: float
    hp_suction_lift_pa: float
    hp_discharge_area_m2: float
    hp_discharge_leak_m2: float
    hp_discharge_lift_pa: float
    check_valve_area_m2: float
    check_valve_leak_m2: float
    check_valve_lift_pa: float
    filter_area_m2: float
    plenum_m3: float
    intercooler_m3: float
    intercooler_ua_w_k: float
    intercooler_area_m2: float
    relief_set_pa: float
    relief_area_m2: float
    intercooler_leak_m2: float
    line_m3: float
    line_ua_w_k: float
    unloader_leak_m2: float
    lp_wall_ua_w_k: float
    hp_wall_ua_w_k: float
    suction_ua_w_k: float
    lp_ring_area_m2: float
    hp_ring_area_m2: float
    crankcase_k: float
    heat_coefficient: float
    heat_exponent: float
    gasket_breach_m2: float
    lp_gasket_leak_m2: float
    hp_gasket_leak_m2: float
    fmep_pa: float
    belt_efficiency: float
    belt_slip: float
    pulley_ratio: float
    motor_synchronous_rev_s: float
    motor_rated_slip: float
    motor_rated_v: float
    motor_rated_w: float
    motor_torque_factor: float
    receiver_m3: float
    receiver_water_m3: float
    receiver_wall_j_k: float
    receiver_gas_ua_w_k: float
    receiver_wall_ua_w_k: float
    downstream_leak_m2: float
    demand_m3_s: float
    cut_in_pa: float
    cut_out_pa: float
    switch_error_pa: float
    gauge_error_pa: float
    rated_delivery_m3_s: float
    rated_pa: float
    gas_constant_j_kg_k: float
    heat_capacity_ratio: float
    heat_capacity_rise: float
    stages: int
    arrangement: int
    lp_cylinders: int
    hp_cylinders: int
    lp_leaking_cylinders: int
    hp_leaking_cylinders: int
    def __init__(self, *, speed_rev_s: float | None = ..., lp_bore_m: float | None = ..., hp_bore_m: float | None = ..., lp_stroke_m: float | None = ..., hp_stroke_m: float | None = ..., rod_ratio: float | None = ..., lp_clearance: float | None = ..., hp_clearance: float | None = ..., phase_rad: float | None = ..., lp_spread_rad: float | None = ..., hp_spread_rad: float | None = ..., lp_suction_area_m2: float | None = ..., lp_suction_leak_m2: float | None = ..., lp_suction_lift_pa: float | None = ..., lp_discharge_area_m2: float | None = ..., lp_discharge_leak_m2: float | None = ..., lp_discharge_lift_pa: float | None = ..., hp_suction_area_m2: float | None = ..., hp_suction_leak_m2: float | None = ..., hp_suction_lift_pa: float | None = ..., hp_discharge_area_m2: float | None = ..., hp_discharge_leak_m2: float | None = ..., hp_discharge_lift_pa: float | None = ..., check_valve_area_m2: float | None = ..., check_valve_leak_m2: float | None = ..., check_valve_lift_pa: float | None = ..., filter_area_m2: float | None = ..., plenum_m3: float | None = ..., intercooler_m3: float | None = ..., intercooler_ua_w_k: float | None = ..., intercooler_area_m2: float | None = ..., relief_set_pa: float | None = ..., relief_area_m2: float | None = ..., intercooler_leak_m2: float | None = ..., line_m3: float | None = ..., line_ua_w_k: float | None = ..., unloader_leak_m2: float | None = ..., lp_wall_ua_w_k: float | None = ..., hp_wall_ua_w_k: float | None = ..., suction_ua_w_k: float | None = ..., lp_ring_area_m2: float | None = ..., hp_ring_area_m2: float | None = ..., crankcase_k: float | None = ..., heat_coefficient: float | None = ..., heat_exponent: float | None = ..., gasket_breach_m2: float | None = ..., lp_gasket_leak_m2: float | None = ..., hp_gasket_leak_m2: float | None = ..., fmep_pa: float | None = ..., belt_efficiency: float | None = ..., belt_slip: float | None = ..., pulley_ratio: float | None = ..., motor_synchronous_rev_s: float | None = ..., motor_rated_slip: float | None = ..., motor_rated_v: float | None = ..., motor_rated_w: float | None = ..., motor_torque_factor: float | None = ..., receiver_m3: float | None = ..., receiver_water_m3: float | None = ..., receiver_wall_j_k: float | None = ..., receiver_gas_ua_w_k: float | None = ..., receiver_wall_ua_w_k: float | None = ..., downstream_leak_m2: float | None = ..., demand_m3_s: float | None = ..., cut_in_pa: float | None = ..., cut_out_pa: float | None = ..., switch_error_pa: float | None = ..., gauge_error_pa: float | None = ..., rated_delivery_m3_s: float | None = ..., rated_pa: float | None = ..., gas_constant_j_kg_k: float | None = ..., heat_capacity_ratio: float | None = ..., heat_capacity_rise: float | None = ..., stages: int | None = ..., arrangement: int | None = ..., lp_cylinders: int | None = ..., hp_cylinders: int | None = ..., lp_leaking_cylinders: int | None = ..., hp_leaking_cylinders: int | None = ...) -> None: ...

class MachineSite(Structure):
    barometric_pa: float
    ambient_k: float
    humidity: float
    supply_v: float
    def __init__(self, *, barometric_pa: float | None = ..., ambient_k: float | None = ..., humidity: float | None = ..., supply_v: float | None = ...) -> None: ...

class CycleResult(Structure):
    delivery_m3_s: float
    delivery_kg_s: float
    intake_kg_s: float
    inlet_backflow_kg_s: float
    interstage_mean_pa: float
    interstage_min_pa: float
    interstage_max_pa: float
    intercooler_k: float
    plenum_pa: float
    plenum_k: float
    line_pa: float
    line_k: float
    lp_discharge_k: float
    hp_discharge_k: float
    lp_wall_k: float
    hp_wall_k: float
    lp_volumetric_efficiency: float
    hp_volumetric_efficiency: float
    lp_indicated_w: float
    hp_indicated_w: float
    friction_w: float
    shaft_w: float
    motor_w: float
    speed_rev_s: float
    motor_speed_rev_s: float
    motor_slip: float
    relief_kg_s: float
    interstage_leak_kg_s: float
    unloader_kg_s: float
    lp_ring_kg_s: float
    hp_ring_kg_s: float
    gasket_breach_kg_s: float
    gasket_leak_kg_s: float
    lp_suction_backflow_kg_s: float
    hp_suction_backflow_kg_s: float
    wall_heat_w: float
    intercooler_w: float
    line_w: float
    lp_rod_max_n: float
    lp_rod_min_n: float
    hp_rod_max_n: float
    hp_rod_min_n: float
    mass_error: float
    energy_error: float
    residual: float
    revolutions: int
    steps: int
    evaluations: int
    stages: int
    def __init__(self, *, delivery_m3_s: float | None = ..., delivery_kg_s: float | None = ..., intake_kg_s: float | None = ..., inlet_backflow_kg_s: float | None = ..., interstage_mean_pa: float | None = ..., interstage_min_pa: float | None = ..., interstage_max_pa: float | None = ..., intercooler_k: float | None = ..., plenum_pa: float | None = ..., plenum_k: float | None = ..., line_pa: float | None = ..., line_k: float | None = ..., lp_discharge_k: float | None = ..., hp_discharge_k: float | None = ..., lp_wall_k: float | None = ..., hp_wall_k: float | None = ..., lp_volumetric_efficiency: float | None = ..., hp_volumetric_efficiency: float | None = ..., lp_indicated_w: float | None = ..., hp_indicated_w: float | None = ..., friction_w: float | None = ..., shaft_w: float | None = ..., motor_w: float | None = ..., speed_rev_s: float | None = ..., motor_speed_rev_s: float | None = ..., motor_slip: float | None = ..., relief_kg_s: float | None = ..., interstage_leak_kg_s: float | None = ..., unloader_kg_s: float | None = ..., lp_ring_kg_s: float | None = ..., hp_ring_kg_s: float | None = ..., gasket_breach_kg_s: float | None = ..., gasket_leak_kg_s: float | None = ..., lp_suction_backflow_kg_s: float | None = ..., hp_suction_backflow_kg_s: float | None = ..., wall_heat_w: float | None = ..., intercooler_w: float | None = ..., line_w: float | None = ..., lp_rod_max_n: float | None = ..., lp_rod_min_n: float | None = ..., hp_rod_max_n: float | None = ..., hp_rod_min_n: float | None = ..., mass_error: float | None = ..., energy_error: float | None = ..., residual: float | None = ..., revolutions: int | None = ..., steps: int | None = ..., evaluations: int | None = ..., stages: int | None = ...) -> None: ...

class PredictionRun(Structure):
    from_pa: float
    to_pa: float
    gas_k: float
    wall_k: float
    draw_down_s: float
    most_s: float
    accuracy: float
    start: int
    nodes: int
    def __init__(self, *, from_pa: float | None = ..., to_pa: float | None = ..., gas_k: float | None = ..., wall_k: float | None = ..., draw_down_s: float | None = ..., most_s: float | None = ..., accuracy: float | None = ..., start: int | None = ..., nodes: int | None = ...) -> None: ...

class PredictionResult(Structure):
    time_s: float
    cut_in_s: float
    end_pa: float
    start_gas_k: float
    end_gas_k: float
    end_wall_k: float
    start_delivery_m3_s: float
    end_delivery_m3_s: float
    mean_delivery_m3_s: float
    apparent_m3_s: float
    shaft_j: float
    reached: int
    evaluations: int
    def __init__(self, *, time_s: float | None = ..., cut_in_s: float | None = ..., end_pa: float | None = ..., start_gas_k: float | None = ..., end_gas_k: float | None = ..., end_wall_k: float | None = ..., start_delivery_m3_s: float | None = ..., end_delivery_m3_s: float | None = ..., mean_delivery_m3_s: float | None = ..., apparent_m3_s: float | None = ..., shaft_j: float | None = ..., reached: int | None = ..., evaluations: int | None = ...) -> None: ...

class PumpupTest(Structure):
    v_receiver_m3: float
    v_piping_m3: float
    v_water_m3: float
    v_uncertainty_m3: float
    p_ambient_pa: float
    p_ambient_uncertainty_pa: float
    t_ambient_k: float
    t_ambient_uncertainty_k: float
    p_start_pa: float
    p_end_pa: float
    duration_s: float
    duration_uncertainty_s: float
    reading_uncertainty_pa: float
    gauge_scale_uncertainty: float
    t_start_k: float
    t_end_k: float
    t_gas_uncertainty_k: float
    t_wall_start_k: float
    p_before_pa: float
    draw_s: float
    rest_s: float
    t_in_k: float
    t_in_uncertainty_k: float
    ua_gas_w_k: float
    ua_wall_w_k: float
    c_wall_j_k: float
    thermal_uncertainty: float
    fall: float
    fall_uncertainty: float
    humidity: float
    humidity_uncertainty: float
    p_reference_pa: float
    t_reference_k: float
    humidity_reference: float
    start: int
    reference: int
    def __init__(self, *, v_receiver_m3: float | None = ..., v_piping_m3: float | None = ..., v_water_m3: float | None = ..., v_uncertainty_m3: float | None = ..., p_ambient_pa: float | None = ..., p_ambient_uncertainty_pa: float | None = ..., t_ambient_k: float | None = ..., t_ambient_uncertainty_k: float | None = ..., p_start_pa: float | None = ..., p_end_pa: float | None = ..., duration_s: float | None = ..., duration_uncertainty_s: float | None = ..., reading_uncertainty_pa: float | None = ..., gauge_scale_uncertainty: float | None = ..., t_start_k: float | None = ..., t_end_k: float | None = ..., t_gas_uncertainty_k: float | None = ..., t_wall_start_k: float | None = ..., p_before_pa: float | None = ..., draw_s: float | None = ..., rest_s: float | None = ..., t_in_k: float | None = ..., t_in_uncertainty_k: float | None = ..., ua_gas_w_k: float | None = ..., ua_wall_w_k: float | None = ..., c_wall_j_k: float | None = ..., thermal_uncertainty: float | None = ..., fall: float | None = ..., fall_uncertainty: float | None = ..., humidity: float | None = ..., humidity_uncertainty: float | None = ..., p_reference_pa: float | None = ..., t_reference_k: float | None = ..., humidity_reference: float | None = ..., start: int | None = ..., reference: int | None = ...) -> None: ...

class PumpupResult(Structure):
    mass_kg: float
    mass_flow_kg_s: float
    mass_flow_uncertainty_kg_s: float
    delivery_m3_s: float
    delivery_uncertainty_m3_s: float
    reference_m3_s: float
    reference_uncertainty_m3_s: float
    plain_m3_s: float
    bias: float
    bias_uncertainty: float
    p_start_pa: float
    p_end_pa: float
    duration_s: float
    t_start_k: float
    t_end_k: float
    t_end_uncertainty_k: float
    t_wall_start_k: float
    t_wall_end_k: float
    fall: float
    fall_uncertainty: float
    scatter_pa: float
    from_volume_m3_s: float
    from_readings_m3_s: float
    from_scale_m3_s: float
    from_time_m3_s: float
    from_barometer_m3_s: float
    from_ambient_m3_s: float
    from_humidity_m3_s: float
    from_start_m3_s: float
    from_end_m3_s: float
    from_inlet_m3_s: float
    from_exchange_m3_s: float
    from_course_m3_s: float
    def __init__(self, *, mass_kg: float | None = ..., mass_flow_kg_s: float | None = ..., mass_flow_uncertainty_kg_s: float | None = ..., delivery_m3_s: float | None = ..., delivery_uncertainty_m3_s: float | None = ..., reference_m3_s: float | None = ..., reference_uncertainty_m3_s: float | None = ..., plain_m3_s: float | None = ..., bias: float | None = ..., bias_uncertainty: float | None = ..., p_start_pa: float | None = ..., p_end_pa: float | None = ..., duration_s: float | None = ..., t_start_k: float | None = ..., t_end_k: float | None = ..., t_end_uncertainty_k: float | None = ..., t_wall_start_k: float | None = ..., t_wall_end_k: float | None = ..., fall: float | None = ..., fall_uncertainty: float | None = ..., scatter_pa: float | None = ..., from_volume_m3_s: float | None = ..., from_readings_m3_s: float | None = ..., from_scale_m3_s: float | None = ..., from_time_m3_s: float | None = ..., from_barometer_m3_s: float | None = ..., from_ambient_m3_s: float | None = ..., from_humidity_m3_s: float | None = ..., from_start_m3_s: float | None = ..., from_end_m3_s: float | None = ..., from_inlet_m3_s: float | None = ..., from_exchange_m3_s: float | None = ..., from_course_m3_s: float | None = ...) -> None: ...

class ExpectationMachine(Structure):
    rated_m3_s: float
    rated_pa: float
    rated_ambient_pa: float
    rated_uncertainty: float
    swept_m3: float
    speed_rev_s: float
    induction: float
    induction_uncertainty: float
    speed_ratio: float
    speed_ratio_uncertainty: float
    clearance: float
    clearance_uncertainty: float
    n_expansion: float
    stages: int
    reserved: int
    def __init__(self, *, rated_m3_s: float | None = ..., rated_pa: float | None = ..., rated_ambient_pa: float | None = ..., rated_uncertainty: float | None = ..., swept_m3: float | None = ..., speed_rev_s: float | None = ..., induction: float | None = ..., induction_uncertainty: float | None = ..., speed_ratio: float | None = ..., speed_ratio_uncertainty: float | None = ..., clearance: float | None = ..., clearance_uncertainty: float | None = ..., n_expansion: float | None = ..., stages: int | None = ..., reserved: int | None = ...) -> None: ...

class ExpectationResult(Structure):
    time_s: float
    time_uncertainty_s: float
    time_from_machine_s: float
    time_from_receiver_s: float
    time_from_readings_s: float
    delivery_m3_s: float
    delivery_uncertainty_m3_s: float
    start_delivery_m3_s: float
    end_delivery_m3_s: float
    t_end_k: float
    def __init__(self, *, time_s: float | None = ..., time_uncertainty_s: float | None = ..., time_from_machine_s: float | None = ..., time_from_receiver_s: float | None = ..., time_from_readings_s: float | None = ..., delivery_m3_s: float | None = ..., delivery_uncertainty_m3_s: float | None = ..., start_delivery_m3_s: float | None = ..., end_delivery_m3_s: float | None = ..., t_end_k: float | None = ...) -> None: ...

class PumpupCurveShape(Structure):
    slope_pa_s: float
    early_slope_pa_s: float
    early_slope_uncertainty_pa_s: float
    late_slope_pa_s: float
    late_slope_uncertainty_pa_s: float
    slope_ratio: float
    slope_ratio_uncertainty: float
    curvature: float
    curvature_uncertainty: float
    approach_1_s: float
    approach_uncertainty_1_s: float
    level_off_pa: float
    level_off_uncertainty_pa: float
    level_off_least_pa: float
    scatter_pa: float
    level_in_sight: int
    reserved: int
    def __init__(self, *, slope_pa_s: float | None = ..., early_slope_pa_s: float | None = ..., early_slope_uncertainty_pa_s: float | None = ..., late_slope_pa_s: float | None = ..., late_slope_uncertainty_pa_s: float | None = ..., slope_ratio: float | None = ..., slope_ratio_uncertainty: float | None = ..., curvature: float | None = ..., curvature_uncertainty: float | None = ..., approach_1_s: float | None = ..., approach_uncertainty_1_s: float | None = ..., level_off_pa: float | None = ..., level_off_uncertainty_pa: float | None = ..., level_off_least_pa: float | None = ..., scatter_pa: float | None = ..., level_in_sight: int | None = ..., reserved: int | None = ...) -> None: ...

class PressureLogOptions(Structure):
    gap_s: float
    frozen_s: float
    band_pa: float
    settle_s: float
    noise_pa: float
    cut_in_pa: float
    cut_out_pa: float
    def __init__(self, *, gap_s: float | None = ..., frozen_s: float | None = ..., band_pa: float | None = ..., settle_s: float | None = ..., noise_pa: float | None = ..., cut_in_pa: float | None = ..., cut_out_pa: float | None = ...) -> None: ...

class PressureLogPhase(Structure):
    start_s: float
    end_s: float
    start_uncertainty_s: float
    end_uncertainty_s: float
    p_start_pa: float
    p_end_pa: float
    slope_pa_s: float
    slope_uncertainty_pa_s: float
    early_slope_pa_s: float
    late_slope_pa_s: float
    late_slope_uncertainty_pa_s: float
    kind: int
    start_seen: int
    end_seen: int
    settled: int
    first: int
    count: int
    left_out: int
    reserved: int
    def __init__(self, *, start_s: float | None = ..., end_s: float | None = ..., start_uncertainty_s: float | None = ..., end_uncertainty_s: float | None = ..., p_start_pa: float | None = ..., p_end_pa: float | None = ..., slope_pa_s: float | None = ..., slope_uncertainty_pa_s: float | None = ..., early_slope_pa_s: float | None = ..., late_slope_pa_s: float | None = ..., late_slope_uncertainty_pa_s: float | None = ..., kind: int | None = ..., start_seen: int | None = ..., end_seen: int | None = ..., settled: int | None = ..., first: int | None = ..., count: int | None = ..., left_out: int | None = ..., reserved: int | None = ...) -> None: ...

class DutySummary(Structure):
    observed_s: float
    loaded_s: float
    unloaded_s: float
    stopped_s: float
    idle_s: float
    unknown_s: float
    missing_s: float
    duty: float
    duty_uncertainty: float
    cycle_s: float
    cycle_uncertainty_s: float
    cut_in_pa: float
    cut_in_uncertainty_pa: float
    cut_out_pa: float
    cut_out_uncertainty_pa: float
    load_slope_pa_s: float
    load_slope_uncertainty_pa_s: float
    idle_slope_pa_s: float
    idle_slope_uncertainty_pa_s: float
    cooling_pa: float
    draw_share: float
    draw_share_uncertainty: float
    slope_share: float
    slope_share_uncertainty: float
    n_loads: int
    n_cycles: int
    findings: int
    left_out: int
    def __init__(self, *, observed_s: float | None = ..., loaded_s: float | None = ..., unloaded_s: float | None = ..., stopped_s: float | None = ..., idle_s: float | None = ..., unknown_s: float | None = ..., missing_s: float | None = ..., duty: float | None = ..., duty_uncertainty: float | None = ..., cycle_s: float | None = ..., cycle_uncertainty_s: float | None = ..., cut_in_pa: float | None = ..., cut_in_uncertainty_pa: float | None = ..., cut_out_pa: float | None = ..., cut_out_uncertainty_pa: float | None = ..., load_slope_pa_s: float | None = ..., load_slope_uncertainty_pa_s: float | None = ..., idle_slope_pa_s: float | None = ..., idle_slope_uncertainty_pa_s: float | None = ..., cooling_pa: float | None = ..., draw_share: float | None = ..., draw_share_uncertainty: float | None = ..., slope_share: float | None = ..., slope_share_uncertainty: float | None = ..., n_loads: int | None = ..., n_cycles: int | None = ..., findings: int | None = ..., left_out: int | None = ...) -> None: ...

class EvidenceReadings(Structure):
    delivery_m3_s: float
    u_delivery_m3_s: float
    t_empty_to_cutout_s: float
    u_t_empty_to_cutout_s: float
    t_cutin_to_cutout_s: float
    u_t_cutin_to_cutout_s: float
    p_level_off_pa: float
    u_p_level_off_pa: float
    p_interstage_pa: float
    u_p_interstage_pa: float
    t_lp_discharge_k: float
    u_t_lp_discharge_k: float
    t_hp_discharge_k: float
    u_t_hp_discharge_k: float
    t_intercooler_out_k: float
    u_t_intercooler_out_k: float
    motor_speed_rev_s: float
    u_motor_speed_rev_s: float
    pump_speed_rev_s: float
    u_pump_speed_rev_s: float
    supply_running_v: float
    u_supply_running_v: float
    supply_starting_v: float
    u_supply_starting_v: float
    motor_current_a: float
    u_motor_current_a: float
    power_w: float
    u_power_w: float
    run_capacitance_f: float
    u_run_capacitance_f: float
    start_capacitance_f: float
    u_start_capacitance_f: float
    leak_isolated_m3_s: float
    u_leak_isolated_m3_s: float
    leak_open_m3_s: float
    u_leak_open_m3_s: float
    gauge_difference_pa: float
    u_gauge_difference_pa: float
    p_cutout_pa: float
    u_p_cutout_pa: float
    p_relief_opening_pa: float
    u_p_relief_opening_pa: float
    filter_drop_pa: float
    u_filter_drop_pa: float
    belt_deflection_m: float
    u_belt_deflection_m: float
    water_m3: float
    u_water_m3: float
    duty: float
    u_duty: float
    t_ambient_k: float
    u_t_ambient_k: float
    p_ambient_pa: float
    u_p_ambient_pa: float
    def __init__(self, *, delivery_m3_s: float | None = ..., u_delivery_m3_s: float | None = ..., t_empty_to_cutout_s: float | None = ..., u_t_empty_to_cutout_s: float | None = ..., t_cutin_to_cutout_s: float | None = ..., u_t_cutin_to_cutout_s: float | None = ..., p_level_off_pa: float | None = ..., u_p_level_off_pa: float | None = ..., p_interstage_pa: float | None = ..., u_p_interstage_pa: float | None = ..., t_lp_discharge_k: float | None = ..., u_t_lp_discharge_k: float | None = ..., t_hp_discharge_k: float | None = ..., u_t_hp_discharge_k: float | None = ..., t_intercooler_out_k: float | None = ..., u_t_intercooler_out_k: float | None = ..., motor_speed_rev_s: float | None = ..., u_motor_speed_rev_s: float | None = ..., pump_speed_rev_s: float | None = ..., u_pump_speed_rev_s: float | None = ..., supply_running_v: float | None = ..., u_supply_running_v: float | None = ..., supply_starting_v: float | None = ..., u_supply_starting_v: float | None = ..., motor_current_a: float | None = ..., u_motor_current_a: float | None = ..., power_w: float | None = ..., u_power_w: float | None = ..., run_capacitance_f: float | None = ..., u_run_capacitance_f: float | None = ..., start_capacitance_f: float | None = ..., u_start_capacitance_f: float | None = ..., leak_isolated_m3_s: float | None = ..., u_leak_isolated_m3_s: float | None = ..., leak_open_m3_s: float | None = ..., u_leak_open_m3_s: float | None = ..., gauge_difference_pa: float | None = ..., u_gauge_difference_pa: float | None = ..., p_cutout_pa: float | None = ..., u_p_cutout_pa: float | None = ..., p_relief_opening_pa: float | None = ..., u_p_relief_opening_pa: float | None = ..., filter_drop_pa: float | None = ..., u_filter_drop_pa: float | None = ..., belt_deflection_m: float | None = ..., u_belt_deflection_m: float | None = ..., water_m3: float | None = ..., u_water_m3: float | None = ..., duty: float | None = ..., u_duty: float | None = ..., t_ambient_k: float | None = ..., u_t_ambient_k: float | None = ..., p_ambient_pa: float | None = ..., u_p_ambient_pa: float | None = ...) -> None: ...

class DiagnosisSubject(Structure):
    receiver_m3: float
    stages: int
    cylinders: int
    head: int
    drive: int
    supply: int
    service_valve_closed: int
    def __init__(self, *, receiver_m3: float | None = ..., stages: int | None = ..., cylinders: int | None = ..., head: int | None = ..., drive: int | None = ..., supply: int | None = ..., service_valve_closed: int | None = ...) -> None: ...

class DiagnosisFinding(Structure):
    found: float
    expected: float
    deviation: float
    spread: float
    reference: float
    residual: float
    predicted: float
    disagreement: float
    reading: int
    use: int
    def __init__(self, *, found: float | None = ..., expected: float | None = ..., deviation: float | None = ..., spread: float | None = ..., reference: float | None = ..., residual: float | None = ..., predicted: float | None = ..., disagreement: float | None = ..., reading: int | None = ..., use: int | None = ...) -> None: ...

class DiagnosisCause(Structure):
    probability: float
    probability_alone: float
    prior: float
    support: float
    contradiction: float
    severity: float
    u_severity: float
    size: float
    u_size: float
    cause: int
    group: int
    check: int
    cautions: int
    def __init__(self, *, probability: float | None = ..., probability_alone: float | None = ..., prior: float | None = ..., support: float | None = ..., contradiction: float | None = ..., severity: float | None = ..., u_severity: float | None = ..., size: float | None = ..., u_size: float | None = ..., cause: int | None = ..., group: int | None = ..., check: int | None = ..., cautions: int | None = ...) -> None: ...

class DiagnosisCheck(Structure):
    information: float
    effort_s: float
    information_rate_1_s: float
    check: int
    qualification: int
    cautions: int
    reserved: int
    def __init__(self, *, information: float | None = ..., effort_s: float | None = ..., information_rate_1_s: float | None = ..., check: int | None = ..., qualification: int | None = ..., cautions: int | None = ..., reserved: int | None = ...) -> None: ...

class DiagnosisProof(Structure):
    probability: float
    probability_even: float
    delivery: float
    u_delivery: float
    probability_delivery: float
    verdict: int
    gone: int
    delivers: int
    reading: int
    def __init__(self, *, probability: float | None = ..., probability_even: float | None = ..., delivery: float | None = ..., u_delivery: float | None = ..., probability_delivery: float | None = ..., verdict: int | None = ..., gone: int | None = ..., delivers: int | None = ..., reading: int | None = ...) -> None: ...

class DiagnosisOptions(Structure):
    pair_share: float
    confidence: float
    contradiction: float
    def __init__(self, *, pair_share: float | None = ..., confidence: float | None = ..., contradiction: float | None = ...) -> None: ...

class DiagnosisReason(Structure):
    log_odds: float
    found: float
    expected: float
    predicted: float
    residual: float
    cause: int
    reading: int
    observation: int
    answer: int
    def __init__(self, *, log_odds: float | None = ..., found: float | None = ..., expected: float | None = ..., predicted: float | None = ..., residual: float | None = ..., cause: int | None = ..., reading: int | None = ..., observation: int | None = ..., answer: int | None = ...) -> None: ...

class DiagnosisSummary(Structure):
    probability_healthy: float
    probability_pair: float
    doubt: float
    verdict: int
    cause: int
    readings_used: int
    readings_unused: int
    observations_used: int
    contradictions: int
    def __init__(self, *, probability_healthy: float | None = ..., probability_pair: float | None = ..., doubt: float | None = ..., verdict: int | None = ..., cause: int | None = ..., readings_used: int | None = ..., readings_unused: int | None = ..., observations_used: int | None = ..., contradictions: int | None = ...) -> None: ...

class InferenceVisit(Structure):
    receiver_pa: float
    from_pa: float
    draw_down_s: float
    u_log_s: float
    u_log_pa: float
    motor_efficiency: float
    air_m3_s: float
    energy_price: float
    def __init__(self, *, receiver_pa: float | None = ..., from_pa: float | None = ..., draw_down_s: float | None = ..., u_log_s: float | None = ..., u_log_pa: float | None = ..., motor_efficiency: float | None = ..., air_m3_s: float | None = ..., energy_price: float | None = ...) -> None: ...

class InferenceScatter(Structure):
    rating: float
    clearance: float
    valves: float
    valve_lift: float
    wall_heat: float
    cooler_ua: float
    suction_heating: float
    filter: float
    rings: float
    phase_rad: float
    delivery: float
    delivery_slope: float
    interstage: float
    temperature_k: float
    receiver: float
    receiver_ua: float
    receiver_wall: float
    draw_down: float
    gauge: float
    motor: float
    drive: float
    motor_efficiency: float
    def __init__(self, *, rating: float | None = ..., clearance: float | None = ..., valves: float | None = ..., valve_lift: float | None = ..., wall_heat: float | None = ..., cooler_ua: float | None = ..., suction_heating: float | None = ..., filter: float | None = ..., rings: float | None = ..., phase_rad: float | None = ..., delivery: float | None = ..., delivery_slope: float | None = ..., interstage: float | None = ..., temperature_k: float | None = ..., receiver: float | None = ..., receiver_ua: float | None = ..., receiver_wall: float | None = ..., draw_down: float | None = ..., gauge: float | None = ..., motor: float | None = ..., drive: float | None = ..., motor_efficiency: float | None = ...) -> None: ...

class InferenceEffect(Structure):
    severity: float
    severity_low: float
    severity_high: float
    lost: float
    lost_low: float
    lost_high: float
    lost_m3_s: float
    energy_j_m3: float
    sound_j_m3: float
    waste_w: float
    cost: float
    cause: int
    fault: int
    def __init__(self, *, severity: float | None = ..., severity_low: float | None = ..., severity_high: float | None = ..., lost: float | None = ..., lost_low: float | None = ..., lost_high: float | None = ..., lost_m3_s: float | None = ..., energy_j_m3: float | None = ..., sound_j_m3: float | None = ..., waste_w: float | None = ..., cost: float | None = ..., cause: int | None = ..., fault: int | None = ...) -> None: ...

def units_is_gauge(*, symbol: str) -> int: ...

@overload
def units_si_from(*, value: float, symbol: str) -> float: ...
@overload
def units_si_from(*, value: _Array, symbol: str) -> Any: ...

@overload
def units_from_si(*, si: float, symbol: str) -> float: ...
@overload
def units_from_si(*, si: _Array, symbol: str) -> Any: ...

@overload
def units_convert(*, value: float, from_: str, to: str) -> float: ...
@overload
def units_convert(*, value: _Array, from_: str, to: str) -> Any: ...

@overload
def units_convert_difference(*, value: float, from_: str, to: str) -> float: ...
@overload
def units_convert_difference(*, value: _Array, from_: str, to: str) -> Any: ...

@overload
def units_absolute_from_gauge(*, gauge_pa: float, barometric_pa: float) -> float: ...
@overload
def units_absolute_from_gauge(*, gauge_pa: _Array, barometric_pa: _Array) -> Any: ...

@overload
def units_gauge_from_absolute(*, p_pa: float, barometric_pa: float) -> float: ...
@overload
def units_gauge_from_absolute(*, p_pa: _Array, barometric_pa: _Array) -> Any: ...

class ReferenceConditionsResult(NamedTuple):
    p_pa: float
    t_k: float
    relative_humidity: float

@overload
def reference_conditions(*, state: int) -> ReferenceConditionsResult: ...
@overload
def reference_conditions(*, state: _Array) -> Any: ...

def reference_find(*, name: str) -> int: ...

@overload
def reference_density(*, p_pa: float, t_k: float, relative_humidity: float) -> float: ...
@overload
def reference_density(*, p_pa: _Array, t_k: _Array, relative_humidity: _Array) -> Any: ...

@overload
def reference_flow_convert(*, q1_m3_s: float, p1_pa: float, t1_k: float, relative_humidity1: float, p2_pa: float, t2_k: float, relative_humidity2: float) -> float: ...
@overload
def reference_flow_convert(*, q1_m3_s: _Array, p1_pa: _Array, t1_k: _Array, relative_humidity1: _Array, p2_pa: _Array, t2_k: _Array, relative_humidity2: _Array) -> Any: ...

@overload
def reference_flow_between_states(*, q1_m3_s: float, from_state: int, to_state: int) -> float: ...
@overload
def reference_flow_between_states(*, q1_m3_s: _Array, from_state: _Array, to_state: _Array) -> Any: ...

@overload
def reference_flow_to_state(*, q1_m3_s: float, p1_pa: float, t1_k: float, relative_humidity1: float, state: int) -> float: ...
@overload
def reference_flow_to_state(*, q1_m3_s: _Array, p1_pa: _Array, t1_k: _Array, relative_humidity1: _Array, state: _Array) -> Any: ...

@overload
def reference_flow_from_state(*, q1_m3_s: float, state: int, p2_pa: float, t2_k: float, relative_humidity2: float) -> float: ...
@overload
def reference_flow_from_state(*, q1_m3_s: _Array, state: _Array, p2_pa: _Array, t2_k: _Array, relative_humidity2: _Array) -> Any: ...

class ReferenceMassFlowFromVolumeFlowResult(NamedTuple):
    mass_kg_s: float
    dry_kg_s: float

@overload
def reference_mass_flow_from_volume_flow(*, q_m3_s: float, p_pa: float, t_k: float, relative_humidity: float) -> ReferenceMassFlowFromVolumeFlowResult: ...
@overload
def reference_mass_flow_from_volume_flow(*, q_m3_s: _Array, p_pa: _Array, t_k: _Array, relative_humidity: _Array) -> Any: ...

@overload
def reference_volume_flow_from_mass_flow(*, mass_kg_s: float, p_pa: float, t_k: float, relative_humidity: float) -> float: ...
@overload
def reference_volume_flow_from_mass_flow(*, mass_kg_s: _Array, p_pa: _Array, t_k: _Array, relative_humidity: _Array) -> Any: ...

@overload
def verdict_probability(*, value: float, uncertainty: float, lower: float, upper: float) -> float: ...
@overload
def verdict_probability(*, value: _Array, uncertainty: _Array, lower: _Array, upper: _Array) -> Any: ...

@overload
def verdict_decide(*, value: float, uncertainty: float, lower: float, upper: float, confidence: float) -> int: ...
@overload
def verdict_decide(*, value: _Array, uncertainty: _Array, lower: _Array, upper: _Array, confidence: _Array) -> Any: ...

class CoverageMeanResult(NamedTuple):
    mean: float
    deviation: float
    uncertainty: float
    nu: float

def coverage_mean(*, reading: _Sequence[float]) -> CoverageMeanResult: ...

def coverage_correlation(*, a: _Sequence[float], b: _Sequence[float]) -> float: ...

class CoveragePooledResult(NamedTuple):
    pooled: float
    nu: float

def coverage_pooled(*, deviation: _Sequence[float], freedom: _Sequence[float]) -> CoveragePooledResult: ...

@overload
def coverage_uncertainty_from_limits(*, half_width: float, distribution: int) -> float: ...
@overload
def coverage_uncertainty_from_limits(*, half_width: _Array, distribution: _Array) -> Any: ...

@overload
def coverage_degrees_of_freedom_from_doubt(*, doubt: float) -> float: ...
@overload
def coverage_degrees_of_freedom_from_doubt(*, doubt: _Array) -> Any: ...

def coverage_degrees_of_freedom(*, combined: float | None = ..., contribution: _Sequence[float], freedom: _Sequence[float]) -> float: ...

@overload
def coverage_factor(*, probability: float, nu: float) -> float: ...
@overload
def coverage_factor(*, probability: _Array, nu: _Array) -> Any: ...

@overload
def coverage_probability(*, factor: float, nu: float) -> float: ...
@overload
def coverage_probability(*, factor: _Array, nu: _Array) -> Any: ...

class CoverageIntervalResult(NamedTuple):
    expanded: float
    low: float
    high: float

@overload
def coverage_interval(*, y: float, uncertainty: float, probability: float, nu: float) -> CoverageIntervalResult: ...
@overload
def coverage_interval(*, y: _Array, uncertainty: _Array, probability: _Array, nu: _Array) -> Any: ...

@overload
def atmosphere_pressure_from_altitude(*, altitude_m: float) -> float: ...
@overload
def atmosphere_pressure_from_altitude(*, altitude_m: _Array) -> Any: ...

@overload
def atmosphere_altitude_from_pressure(*, p_pa: float) -> float: ...
@overload
def atmosphere_altitude_from_pressure(*, p_pa: _Array) -> Any: ...

@overload
def atmosphere_temperature_from_altitude(*, altitude_m: float) -> float: ...
@overload
def atmosphere_temperature_from_altitude(*, altitude_m: _Array) -> Any: ...

@overload
def atmosphere_density_from_altitude(*, altitude_m: float) -> float: ...
@overload
def atmosphere_density_from_altitude(*, altitude_m: _Array) -> Any: ...

@overload
def atmosphere_altitude_from_geometric(*, geometric_m: float) -> float: ...
@overload
def atmosphere_altitude_from_geometric(*, geometric_m: _Array) -> Any: ...

@overload
def atmosphere_pressure_from_geometric(*, geometric_m: float) -> float: ...
@overload
def atmosphere_pressure_from_geometric(*, geometric_m: _Array) -> Any: ...

@overload
def dry_air_state(*, p_pa: float, t_k: float) -> DryAirProperties: ...
@overload
def dry_air_state(*, p_pa: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_density(*, p_pa: float, t_k: float) -> float: ...
@overload
def dry_air_density(*, p_pa: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_state_from_density(*, rho_kg_m3: float, t_k: float) -> DryAirProperties: ...
@overload
def dry_air_state_from_density(*, rho_kg_m3: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_temperature_from_enthalpy(*, p_pa: float, h_j_kg: float) -> float: ...
@overload
def dry_air_temperature_from_enthalpy(*, p_pa: _Array, h_j_kg: _Array) -> Any: ...

@overload
def dry_air_temperature_from_entropy(*, p_pa: float, s_j_kg_k: float) -> float: ...
@overload
def dry_air_temperature_from_entropy(*, p_pa: _Array, s_j_kg_k: _Array) -> Any: ...

class DryAirSaturationResult(NamedTuple):
    dew_pa: float
    bubble_pa: float

@overload
def dry_air_saturation(*, t_k: float) -> DryAirSaturationResult: ...
@overload
def dry_air_saturation(*, t_k: _Array) -> Any: ...

@overload
def dry_air_ideal_density(*, p_pa: float, t_k: float) -> float: ...
@overload
def dry_air_ideal_density(*, p_pa: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_ideal_heat_capacity(*, t_k: float) -> float: ...
@overload
def dry_air_ideal_heat_capacity(*, t_k: _Array) -> Any: ...

@overload
def dry_air_ideal_heat_capacity_ratio(*, t_k: float) -> float: ...
@overload
def dry_air_ideal_heat_capacity_ratio(*, t_k: _Array) -> Any: ...

@overload
def dry_air_ideal_speed_of_sound(*, t_k: float) -> float: ...
@overload
def dry_air_ideal_speed_of_sound(*, t_k: _Array) -> Any: ...

@overload
def dry_air_ideal_enthalpy(*, t_k: float) -> float: ...
@overload
def dry_air_ideal_enthalpy(*, t_k: _Array) -> Any: ...

@overload
def dry_air_ideal_entropy(*, p_pa: float, t_k: float) -> float: ...
@overload
def dry_air_ideal_entropy(*, p_pa: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_ideal_temperature_from_enthalpy(*, h_j_kg: float) -> float: ...
@overload
def dry_air_ideal_temperature_from_enthalpy(*, h_j_kg: _Array) -> Any: ...

@overload
def dry_air_ideal_temperature_from_entropy(*, p_pa: float, s_j_kg_k: float) -> float: ...
@overload
def dry_air_ideal_temperature_from_entropy(*, p_pa: _Array, s_j_kg_k: _Array) -> Any: ...

@overload
def dry_air_ideal_isentropic_temperature(*, t1_k: float, pressure_ratio: float) -> float: ...
@overload
def dry_air_ideal_isentropic_temperature(*, t1_k: _Array, pressure_ratio: _Array) -> Any: ...

@overload
def dry_air_transport_viscosity(*, p_pa: float, t_k: float) -> float: ...
@overload
def dry_air_transport_viscosity(*, p_pa: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_transport_conductivity(*, p_pa: float, t_k: float) -> float: ...
@overload
def dry_air_transport_conductivity(*, p_pa: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_transport_viscosity_from_density(*, rho_kg_m3: float, t_k: float) -> float: ...
@overload
def dry_air_transport_viscosity_from_density(*, rho_kg_m3: _Array, t_k: _Array) -> Any: ...

@overload
def dry_air_transport_conductivity_from_density(*, rho_kg_m3: float, t_k: float) -> float: ...
@overload
def dry_air_transport_conductivity_from_density(*, rho_kg_m3: _Array, t_k: _Array) -> Any: ...

@overload
def saturation_pressure(*, t_k: float, over: int) -> float: ...
@overload
def saturation_pressure(*, t_k: _Array, over: _Array) -> Any: ...

@overload
def saturation_temperature(*, p_pa: float, over: int) -> float: ...
@overload
def saturation_temperature(*, p_pa: _Array, over: _Array) -> Any: ...

@overload
def saturation_pressure_water(*, t_k: float) -> float: ...
@overload
def saturation_pressure_water(*, t_k: _Array) -> Any: ...

@overload
def saturation_temperature_water(*, p_pa: float) -> float: ...
@overload
def saturation_temperature_water(*, p_pa: _Array) -> Any: ...

@overload
def saturation_pressure_ice(*, t_k: float) -> float: ...
@overload
def saturation_pressure_ice(*, t_k: _Array) -> Any: ...

@overload
def saturation_pressure_supercooled(*, t_k: float) -> float: ...
@overload
def saturation_pressure_supercooled(*, t_k: _Array) -> Any: ...

@overload
def saturation_latent_heat(*, t_k: float, over: int) -> float: ...
@overload
def saturation_latent_heat(*, t_k: _Array, over: _Array) -> Any: ...

@overload
def enhancement_factor(*, p_pa: float, t_k: float, over: int) -> float: ...
@overload
def enhancement_factor(*, p_pa: _Array, t_k: _Array, over: _Array) -> Any: ...

@overload
def enhancement_fugacity(*, p_pa: float, t_k: float, mole_fraction: float) -> float: ...
@overload
def enhancement_fugacity(*, p_pa: _Array, t_k: _Array, mole_fraction: _Array) -> Any: ...

@overload
def enhancement_virials(*, t_k: float) -> EnhancementCoefficients: ...
@overload
def enhancement_virials(*, t_k: _Array) -> Any: ...

@overload
def moist_air_state(*, p_pa: float, t_k: float, humidity_ratio: float) -> MoistAirProperties: ...
@overload
def moist_air_state(*, p_pa: _Array, t_k: _Array, humidity_ratio: _Array) -> Any: ...

@overload
def moist_air_state_from_density(*, rho_kg_m3: float, t_k: float, humidity_ratio: float) -> MoistAirProperties: ...
@overload
def moist_air_state_from_density(*, rho_kg_m3: _Array, t_k: _Array, humidity_ratio: _Array) -> Any: ...

@overload
def moist_air_density(*, p_pa: float, t_k: float, relative_humidity: float) -> float: ...
@overload
def moist_air_density(*, p_pa: _Array, t_k: _Array, relative_humidity: _Array) -> Any: ...

@overload
def moist_air_density_cipm(*, p_pa: float, t_k: float, relative_humidity: float, carbon_dioxide: float | None = ...) -> float: ...
@overload
def moist_air_density_cipm(*, p_pa: _Array, t_k: _Array, relative_humidity: _Array, carbon_dioxide: _Array | None = ...) -> Any: ...

@overload
def moist_air_volume(*, p_pa: float, t_k: float, humidity_ratio: float) -> float: ...
@overload
def moist_air_volume(*, p_pa: _Array, t_k: _Array, humidity_ratio: _Array) -> Any: ...

@overload
def moist_air_flow_convert(*, q1_m3_s: float, p1_pa: float, t1_k: float, relative_humidity1: float, p2_pa: float, t2_k: float, relative_humidity2: float) -> float: ...
@overload
def moist_air_flow_convert(*, q1_m3_s: _Array, p1_pa: _Array, t1_k: _Array, relative_humidity1: _Array, p2_pa: _Array, t2_k: _Array, relative_humidity2: _Array) -> Any: ...

@overload
def moist_air_enthalpy(*, p_pa: float, t_k: float, humidity_ratio: float) -> float: ...
@overload
def moist_air_enthalpy(*, p_pa: _Array, t_k: _Array, humidity_ratio: _Array) -> Any: ...

@overload
def moist_air_gas_constant(*, humidity_ratio: float) -> float: ...
@overload
def moist_air_gas_constant(*, humidity_ratio: _Array) -> Any: ...

@overload
def dew_point_at_pressure(*, p1_pa: float, dew1_k: float, over1: int, p2_pa: float, over2: int, model: int) -> float: ...
@overload
def dew_point_at_pressure(*, p1_pa: _Array, dew1_k: _Array, over1: _Array, p2_pa: _Array, over2: _Array, model: _Array) -> Any: ...

@overload
def dew_point_from_ratio(*, p_pa: float, humidity_ratio: float, over: int, model: int) -> float: ...
@overload
def dew_point_from_ratio(*, p_pa: _Array, humidity_ratio: _Array, over: _Array, model: _Array) -> Any: ...

@overload
def dew_point_from_relative(*, p_pa: float, t_k: float, relative_humidity: float, over: int, model: int) -> float: ...
@overload
def dew_point_from_relative(*, p_pa: _Array, t_k: _Array, relative_humidity: _Array, over: _Array, model: _Array) -> Any: ...

@overload
def dew_point_humidity_ratio(*, p_pa: float, dew_k: float, over: int, model: int) -> float: ...
@overload
def dew_point_humidity_ratio(*, p_pa: _Array, dew_k: _Array, over: _Array, model: _Array) -> Any: ...

@overload
def dew_point_relative_humidity(*, p_pa: float, t_k: float, dew_k: float, over: int, model: int) -> float: ...
@overload
def dew_point_relative_humidity(*, p_pa: _Array, t_k: _Array, dew_k: _Array, over: _Array, model: _Array) -> Any: ...

@overload
def wet_bulb_temperature(*, p_pa: float, t_k: float, humidity_ratio: float, over: int) -> float: ...
@overload
def wet_bulb_temperature(*, p_pa: _Array, t_k: _Array, humidity_ratio: _Array, over: _Array) -> Any: ...

@overload
def wet_bulb_humidity_ratio(*, p_pa: float, t_k: float, wet_bulb_k: float, over: int) -> float: ...
@overload
def wet_bulb_humidity_ratio(*, p_pa: _Array, t_k: _Array, wet_bulb_k: _Array, over: _Array) -> Any: ...

def humidity_convert(*, given: HumidityGiven) -> HumidityFound: ...

@overload
def humidity_ratio_from_relative(*, p_pa: float, t_k: float, relative_humidity: float, model: int) -> float: ...
@overload
def humidity_ratio_from_relative(*, p_pa: _Array, t_k: _Array, relative_humidity: _Array, model: _Array) -> Any: ...

@overload
def humidity_relative_from_ratio(*, p_pa: float, t_k: float, humidity_ratio: float, model: int) -> float: ...
@overload
def humidity_relative_from_ratio(*, p_pa: _Array, t_k: _Array, humidity_ratio: _Array, model: _Array) -> Any: ...

@overload
def condensate_inlet(*, q_m3_s: float, p_pa: float, t_k: float, relative_humidity: float, model: int, over: int) -> CondensateFlow: ...
@overload
def condensate_inlet(*, q_m3_s: _Array, p_pa: _Array, t_k: _Array, relative_humidity: _Array, model: _Array, over: _Array) -> Any: ...

@overload
def condensate_step(*, before: CondensateFlow, p_pa: float, t_k: float, separation: float) -> CondensateFlow: ...
@overload
def condensate_step(*, before: CondensateFlow, p_pa: _Array, t_k: _Array, separation: _Array) -> Any: ...

@overload
def condensate_rate(*, q1_m3_s: float, p1_pa: float, t1_k: float, relative_humidity1: float, p2_pa: float, t2_k: float, model: int) -> float: ...
@overload
def condensate_rate(*, q1_m3_s: _Array, p1_pa: _Array, t1_k: _Array, relative_humidity1: _Array, p2_pa: _Array, t2_k: _Array, model: _Array) -> Any: ...

class ImpedanceFromPhaseResult(NamedTuple):
    r_ohm: float
    x_ohm: float
    z_ohm: float

@overload
def impedance_from_phase(*, voltage_v: float, current_a: float, phase_rad: float) -> ImpedanceFromPhaseResult: ...
@overload
def impedance_from_phase(*, voltage_v: _Array, current_a: _Array, phase_rad: _Array) -> Any: ...

class ImpedanceFromPowerResult(NamedTuple):
    r_ohm: float
    x_ohm: float
    z_ohm: float
    power_factor: float

@overload
def impedance_from_power(*, voltage_v: float, current_a: float, power_w: float) -> ImpedanceFromPowerResult: ...
@overload
def impedance_from_power(*, voltage_v: _Array, current_a: _Array, power_w: _Array) -> Any: ...

@overload
def supply_uncertainty_from_meter(*, reading_v: float, accuracy: float, counts: float, resolution_v: float) -> float: ...
@overload
def supply_uncertainty_from_meter(*, reading_v: _Array, accuracy: _Array, counts: _Array, resolution_v: _Array) -> Any: ...

@overload
def supply_deviation(*, measured_v: float, nameplate_v: float) -> float: ...
@overload
def supply_deviation(*, measured_v: _Array, nameplate_v: _Array) -> Any: ...

class SupplyVoltageVerdictResult(NamedTuple):
    verdict: int
    probability: float

@overload
def supply_voltage_verdict(*, measured_v: float, uncertainty_v: float, nameplate_v: float, tolerance: float, confidence: float) -> SupplyVoltageVerdictResult: ...
@overload
def supply_voltage_verdict(*, measured_v: _Array, uncertainty_v: _Array, nameplate_v: _Array, tolerance: _Array, confidence: _Array) -> Any: ...

@overload
def supply_combined_deviation(*, voltage_deviation: float, frequency_deviation: float) -> float: ...
@overload
def supply_combined_deviation(*, voltage_deviation: _Array, frequency_deviation: _Array) -> Any: ...

@overload
def supply_voltage_drop(*, current_a: float, r_ohm: float, x_ohm: float, power_factor: float, phases: int) -> float: ...
@overload
def supply_voltage_drop(*, current_a: _Array, r_ohm: _Array, x_ohm: _Array, power_factor: _Array, phases: _Array) -> Any: ...

class SupplyVoltageAtLoadResult(NamedTuple):
    load_v: float
    drop_v: float

@overload
def supply_voltage_at_load(*, source_v: float, current_a: float, r_ohm: float, x_ohm: float, power_factor: float, phases: int) -> SupplyVoltageAtLoadResult: ...
@overload
def supply_voltage_at_load(*, source_v: _Array, current_a: _Array, r_ohm: _Array, x_ohm: _Array, power_factor: _Array, phases: _Array) -> Any: ...

class SupplyStartingVoltageResult(NamedTuple):
    start_v: float
    start_a: float

@overload
def supply_starting_voltage(*, source_v: float, nameplate_v: float, locked_rotor_a: float, power_factor: float, r_ohm: float, x_ohm: float, phases: int) -> SupplyStartingVoltageResult: ...
@overload
def supply_starting_voltage(*, source_v: _Array, nameplate_v: _Array, locked_rotor_a: _Array, power_factor: _Array, r_ohm: _Array, x_ohm: _Array, phases: _Array) -> Any: ...

class UnbalanceVoltageResult(NamedTuple):
    unbalance: float
    mean_v: float

@overload
def unbalance_voltage(*, u12_v: float, u23_v: float, u31_v: float) -> UnbalanceVoltageResult: ...
@overload
def unbalance_voltage(*, u12_v: _Array, u23_v: _Array, u31_v: _Array) -> Any: ...

class UnbalanceCurrentResult(NamedTuple):
    unbalance: float
    mean_a: float

@overload
def unbalance_current(*, i1_a: float, i2_a: float, i3_a: float) -> UnbalanceCurrentResult: ...
@overload
def unbalance_current(*, i1_a: _Array, i2_a: _Array, i3_a: _Array) -> Any: ...

@overload
def unbalance_factor(*, u12_v: float, u23_v: float, u31_v: float) -> float: ...
@overload
def unbalance_factor(*, u12_v: _Array, u23_v: _Array, u31_v: _Array) -> Any: ...

@overload
def unbalance_derating(*, unbalance: float) -> float: ...
@overload
def unbalance_derating(*, unbalance: _Array) -> Any: ...

@overload
def unbalance_temperature_rise(*, rise_k: float, unbalance: float) -> float: ...
@overload
def unbalance_temperature_rise(*, rise_k: _Array, unbalance: _Array) -> Any: ...

@overload
def unbalance_single_phasing_current(*, balanced_a: float, balanced_power_factor: float, single_power_factor: float) -> float: ...
@overload
def unbalance_single_phasing_current(*, balanced_a: _Array, balanced_power_factor: _Array, single_power_factor: _Array) -> Any: ...

@overload
def motor_synchronous_speed(*, frequency_hz: float, poles: int) -> float: ...
@overload
def motor_synchronous_speed(*, frequency_hz: _Array, poles: _Array) -> Any: ...

@overload
def motor_poles_from_speed(*, frequency_hz: float, speed_rev_s: float) -> int: ...
@overload
def motor_poles_from_speed(*, frequency_hz: _Array, speed_rev_s: _Array) -> Any: ...

@overload
def motor_slip(*, frequency_hz: float, poles: int, speed_rev_s: float) -> float: ...
@overload
def motor_slip(*, frequency_hz: _Array, poles: _Array, speed_rev_s: _Array) -> Any: ...

@overload
def motor_speed_from_slip(*, frequency_hz: float, poles: int, slip: float) -> float: ...
@overload
def motor_speed_from_slip(*, frequency_hz: _Array, poles: _Array, slip: _Array) -> Any: ...

@overload
def motor_rotor_frequency(*, frequency_hz: float, slip: float) -> float: ...
@overload
def motor_rotor_frequency(*, frequency_hz: _Array, slip: _Array) -> Any: ...

@overload
def motor_slip_at_supply(*, slip: float, voltage_ratio: float, frequency_ratio: float, torque_ratio: float) -> float: ...
@overload
def motor_slip_at_supply(*, slip: _Array, voltage_ratio: _Array, frequency_ratio: _Array, torque_ratio: _Array) -> Any: ...

@overload
def motor_torque_from_power(*, power_w: float, speed_rev_s: float) -> float: ...
@overload
def motor_torque_from_power(*, power_w: _Array, speed_rev_s: _Array) -> Any: ...

@overload
def motor_power_from_torque(*, torque_nm: float, speed_rev_s: float) -> float: ...
@overload
def motor_power_from_torque(*, torque_nm: _Array, speed_rev_s: _Array) -> Any: ...

@overload
def motor_torque_at_slip(*, breakdown_nm: float, breakdown_slip: float, slip: float) -> float: ...
@overload
def motor_torque_at_slip(*, breakdown_nm: _Array, breakdown_slip: _Array, slip: _Array) -> Any: ...

@overload
def motor_locked_rotor_torque(*, torque_nm: float, voltage_ratio: float, frequency_ratio: float) -> float: ...
@overload
def motor_locked_rotor_torque(*, torque_nm: _Array, voltage_ratio: _Array, frequency_ratio: _Array) -> Any: ...

@overload
def motor_locked_rotor_current(*, current_a: float, voltage_ratio: float, frequency_ratio: float) -> float: ...
@overload
def motor_locked_rotor_current(*, current_a: _Array, voltage_ratio: _Array, frequency_ratio: _Array) -> Any: ...

class MotorShaftPowerResult(NamedTuple):
    shaft_w: float
    input_w: float

@overload
def motor_shaft_power(*, voltage_v: float, current_a: float, power_factor: float, efficiency: float, phases: int) -> MotorShaftPowerResult: ...
@overload
def motor_shaft_power(*, voltage_v: _Array, current_a: _Array, power_factor: _Array, efficiency: _Array, phases: _Array) -> Any: ...

@overload
def motor_line_current(*, shaft_w: float, voltage_v: float, power_factor: float, efficiency: float, phases: int) -> float: ...
@overload
def motor_line_current(*, shaft_w: _Array, voltage_v: _Array, power_factor: _Array, efficiency: _Array, phases: _Array) -> Any: ...

@overload
def nameplate_efficiency(*, efficiency_class: int, poles: int, rated_w: float) -> float: ...
@overload
def nameplate_efficiency(*, efficiency_class: _Array, poles: _Array, rated_w: _Array) -> Any: ...

class NameplateCodeBandResult(NamedTuple):
    lower: float
    upper: float

@overload
def nameplate_code_band(*, code: int) -> NameplateCodeBandResult: ...
@overload
def nameplate_code_band(*, code: _Array) -> Any: ...

@overload
def nameplate_code_from_current(*, locked_rotor_a: float, voltage_v: float, rated_w: float, phases: int) -> int: ...
@overload
def nameplate_code_from_current(*, locked_rotor_a: _Array, voltage_v: _Array, rated_w: _Array, phases: _Array) -> Any: ...

class NameplateLockedRotorCurrentResult(NamedTuple):
    lower_a: float
    upper_a: float

@overload
def nameplate_locked_rotor_current(*, code: int, rated_w: float, voltage_v: float, phases: int) -> NameplateLockedRotorCurrentResult: ...
@overload
def nameplate_locked_rotor_current(*, code: _Array, rated_w: _Array, voltage_v: _Array, phases: _Array) -> Any: ...

@overload
def nameplate_full_load_current(*, rated_w: float, voltage_v: float, phases: int) -> float: ...
@overload
def nameplate_full_load_current(*, rated_w: _Array, voltage_v: _Array, phases: _Array) -> Any: ...

@overload
def nameplate_load_from_current(*, current_a: float, nameplate_a: float, voltage_v: float, nameplate_v: float) -> float: ...
@overload
def nameplate_load_from_current(*, current_a: _Array, nameplate_a: _Array, voltage_v: _Array, nameplate_v: _Array) -> Any: ...

@overload
def nameplate_load_from_speed(*, speed_rev_s: float, synchronous_rev_s: float, nameplate_rev_s: float, voltage_ratio: float) -> float: ...
@overload
def nameplate_load_from_speed(*, speed_rev_s: _Array, synchronous_rev_s: _Array, nameplate_rev_s: _Array, voltage_ratio: _Array) -> Any: ...

@overload
def capacitor_current(*, capacitance_f: float, voltage_v: float, frequency_hz: float) -> float: ...
@overload
def capacitor_current(*, capacitance_f: _Array, voltage_v: _Array, frequency_hz: _Array) -> Any: ...

class CapacitorFromCurrentResult(NamedTuple):
    capacitance_f: float
    uncertainty_f: float

@overload
def capacitor_from_current(*, current_a: float, current_uncertainty_a: float, voltage_v: float, voltage_uncertainty_v: float, frequency_hz: float) -> CapacitorFromCurrentResult: ...
@overload
def capacitor_from_current(*, current_a: _Array, current_uncertainty_a: _Array, voltage_v: _Array, voltage_uncertainty_v: _Array, frequency_hz: _Array) -> Any: ...

@overload
def capacitor_uncertainty_from_meter(*, reading_f: float, accuracy: float, counts: float, resolution_f: float) -> float: ...
@overload
def capacitor_uncertainty_from_meter(*, reading_f: _Array, accuracy: _Array, counts: _Array, resolution_f: _Array) -> Any: ...

class CapacitorLimitsResult(NamedTuple):
    minimum_f: float
    maximum_f: float

@overload
def capacitor_limits(*, rated_f: float, tolerance_class: int) -> CapacitorLimitsResult: ...
@overload
def capacitor_limits(*, rated_f: _Array, tolerance_class: _Array) -> Any: ...

class CapacitorVerdictResult(NamedTuple):
    verdict: int
    probability_in: float
    probability_low: float

@overload
def capacitor_verdict(*, measured_f: float, uncertainty_f: float, minimum_f: float, maximum_f: float, confidence: float) -> CapacitorVerdictResult: ...
@overload
def capacitor_verdict(*, measured_f: _Array, uncertainty_f: _Array, minimum_f: _Array, maximum_f: _Array, confidence: _Array) -> Any: ...

@overload
def capacitor_discharge_time(*, capacitance_f: float, r_ohm: float, start_v: float, safe_v: float) -> float: ...
@overload
def capacitor_discharge_time(*, capacitance_f: _Array, r_ohm: _Array, start_v: _Array, safe_v: _Array) -> Any: ...

@overload
def capacitor_residual_voltage(*, capacitance_f: float, r_ohm: float, start_v: float, time_s: float) -> float: ...
@overload
def capacitor_residual_voltage(*, capacitance_f: _Array, r_ohm: _Array, start_v: _Array, time_s: _Array) -> Any: ...

class CapacitorBleederResult(NamedTuple):
    r_ohm: float
    power_w: float

@overload
def capacitor_bleeder(*, capacitance_f: float, start_v: float, safe_v: float, time_s: float) -> CapacitorBleederResult: ...
@overload
def capacitor_bleeder(*, capacitance_f: _Array, start_v: _Array, safe_v: _Array, time_s: _Array) -> Any: ...

@overload
def capacitor_energy(*, capacitance_f: float, voltage_v: float) -> float: ...
@overload
def capacitor_energy(*, capacitance_f: _Array, voltage_v: _Array) -> Any: ...

@overload
def capacitor_series(*, first_f: float, second_f: float) -> float: ...
@overload
def capacitor_series(*, first_f: _Array, second_f: _Array) -> Any: ...

@overload
def capacitor_parallel(*, first_f: float, second_f: float) -> float: ...
@overload
def capacitor_parallel(*, first_f: _Array, second_f: _Array) -> Any: ...

class CapacitorMotorQuadratureResult(NamedTuple):
    capacitance_f: float
    reactance_ohm: float

@overload
def capacitor_motor_quadrature(*, main_r_ohm: float, main_x_ohm: float, auxiliary_r_ohm: float, auxiliary_x_ohm: float, frequency_hz: float) -> CapacitorMotorQuadratureResult: ...
@overload
def capacitor_motor_quadrature(*, main_r_ohm: _Array, main_x_ohm: _Array, auxiliary_r_ohm: _Array, auxiliary_x_ohm: _Array, frequency_hz: _Array) -> Any: ...

@overload
def capacitor_motor_starting_torque_ratio(*, main_r_ohm: float, main_x_ohm: float, auxiliary_r_ohm: float, auxiliary_x_ohm: float, frequency_hz: float, capacitance_f: float, rated_f: float) -> float: ...
@overload
def capacitor_motor_starting_torque_ratio(*, main_r_ohm: _Array, main_x_ohm: _Array, auxiliary_r_ohm: _Array, auxiliary_x_ohm: _Array, frequency_hz: _Array, capacitance_f: _Array, rated_f: _Array) -> Any: ...

@overload
def capacitor_motor_run(*, windings: CapacitorMotorWindings, voltage_v: float, frequency_hz: float, poles: int, capacitance_f: float, slip: float) -> CapacitorMotorPerformance: ...
@overload
def capacitor_motor_run(*, windings: CapacitorMotorWindings, voltage_v: _Array, frequency_hz: _Array, poles: _Array, capacitance_f: _Array, slip: _Array) -> Any: ...

@overload
def capacitor_motor_slip(*, windings: CapacitorMotorWindings, voltage_v: float, frequency_hz: float, poles: int, capacitance_f: float, torque_nm: float) -> float: ...
@overload
def capacitor_motor_slip(*, windings: CapacitorMotorWindings, voltage_v: _Array, frequency_hz: _Array, poles: _Array, capacitance_f: _Array, torque_nm: _Array) -> Any: ...

@overload
def pulley_driven_speed(*, driver_rev_s: float, driver_m: float, driven_m: float, slip: float) -> float: ...
@overload
def pulley_driven_speed(*, driver_rev_s: _Array, driver_m: _Array, driven_m: _Array, slip: _Array) -> Any: ...

@overload
def pulley_driver_diameter(*, driver_rev_s: float, driven_rev_s: float, driven_m: float, slip: float) -> float: ...
@overload
def pulley_driver_diameter(*, driver_rev_s: _Array, driven_rev_s: _Array, driven_m: _Array, slip: _Array) -> Any: ...

@overload
def pulley_belt_speed(*, diameter_m: float, speed_rev_s: float) -> float: ...
@overload
def pulley_belt_speed(*, diameter_m: _Array, speed_rev_s: _Array) -> Any: ...

@overload
def pulley_best_belt_speed(*, tight_n: float, mass_kg_m: float) -> float: ...
@overload
def pulley_best_belt_speed(*, tight_n: _Array, mass_kg_m: _Array) -> Any: ...

@overload
def pulley_open_length(*, first_m: float, second_m: float, centre_m: float) -> float: ...
@overload
def pulley_open_length(*, first_m: _Array, second_m: _Array, centre_m: _Array) -> Any: ...

@overload
def pulley_crossed_length(*, first_m: float, second_m: float, centre_m: float) -> float: ...
@overload
def pulley_crossed_length(*, first_m: _Array, second_m: _Array, centre_m: _Array) -> Any: ...

@overload
def pulley_centre_from_open_length(*, first_m: float, second_m: float, length_m: float) -> float: ...
@overload
def pulley_centre_from_open_length(*, first_m: _Array, second_m: _Array, length_m: _Array) -> Any: ...

@overload
def pulley_centre_from_crossed_length(*, first_m: float, second_m: float, length_m: float) -> float: ...
@overload
def pulley_centre_from_crossed_length(*, first_m: _Array, second_m: _Array, length_m: _Array) -> Any: ...

class PulleyOpenWrapResult(NamedTuple):
    smaller_rad: float
    larger_rad: float

@overload
def pulley_open_wrap(*, first_m: float, second_m: float, centre_m: float) -> PulleyOpenWrapResult: ...
@overload
def pulley_open_wrap(*, first_m: _Array, second_m: _Array, centre_m: _Array) -> Any: ...

@overload
def pulley_crossed_wrap(*, first_m: float, second_m: float, centre_m: float) -> float: ...
@overload
def pulley_crossed_wrap(*, first_m: _Array, second_m: _Array, centre_m: _Array) -> Any: ...

@overload
def pulley_span(*, first_m: float, second_m: float, centre_m: float) -> float: ...
@overload
def pulley_span(*, first_m: _Array, second_m: _Array, centre_m: _Array) -> Any: ...

class BeltSlipResult(NamedTuple):
    slip: float
    slip_uncertainty: float

@overload
def belt_slip(*, driver_rev_s: float, driver_uncertainty_rev_s: float, driven_rev_s: float, driven_uncertainty_rev_s: float, ratio: float, ratio_uncertainty: float) -> BeltSlipResult: ...
@overload
def belt_slip(*, driver_rev_s: _Array, driver_uncertainty_rev_s: _Array, driven_rev_s: _Array, driven_uncertainty_rev_s: _Array, ratio: _Array, ratio_uncertainty: _Array) -> Any: ...

@overload
def belt_tension_ratio(*, friction: float, wrap_rad: float, groove_rad: float) -> float: ...
@overload
def belt_tension_ratio(*, friction: _Array, wrap_rad: _Array, groove_rad: _Array) -> Any: ...

class BeltTensionsFromPowerResult(NamedTuple):
    tight_n: float
    slack_n: float
    static_n: float
    centrifugal_n: float

@overload
def belt_tensions_from_power(*, power_w: float, belt_m_s: float, mass_kg_m: float, tension_ratio: float) -> BeltTensionsFromPowerResult: ...
@overload
def belt_tensions_from_power(*, power_w: _Array, belt_m_s: _Array, mass_kg_m: _Array, tension_ratio: _Array) -> Any: ...

@overload
def belt_power_from_tight_tension(*, tight_n: float, belt_m_s: float, mass_kg_m: float, tension_ratio: float) -> float: ...
@overload
def belt_power_from_tight_tension(*, tight_n: _Array, belt_m_s: _Array, mass_kg_m: _Array, tension_ratio: _Array) -> Any: ...

@overload
def belt_power_from_static_tension(*, static_n: float, belt_m_s: float, mass_kg_m: float, tension_ratio: float) -> float: ...
@overload
def belt_power_from_static_tension(*, static_n: _Array, belt_m_s: _Array, mass_kg_m: _Array, tension_ratio: _Array) -> Any: ...

@overload
def belt_deflection_distance(*, span_m: float) -> float: ...
@overload
def belt_deflection_distance(*, span_m: _Array) -> Any: ...

@overload
def belt_deflection_force(*, static_n: float, span_m: float, deflection_m: float, stiffness_n: float, belt_m: float) -> float: ...
@overload
def belt_deflection_force(*, static_n: _Array, span_m: _Array, deflection_m: _Array, stiffness_n: _Array, belt_m: _Array) -> Any: ...

@overload
def belt_tension_from_deflection(*, force_n: float, span_m: float, deflection_m: float, stiffness_n: float, belt_m: float) -> float: ...
@overload
def belt_tension_from_deflection(*, force_n: _Array, span_m: _Array, deflection_m: _Array, stiffness_n: _Array, belt_m: _Array) -> Any: ...

@overload
def belt_deflection_force_by_rule(*, static_n: float, span_m: float, constant_n: float, belt_m: float) -> float: ...
@overload
def belt_deflection_force_by_rule(*, static_n: _Array, span_m: _Array, constant_n: _Array, belt_m: _Array) -> Any: ...

@overload
def belt_span_frequency(*, static_n: float, mass_kg_m: float, span_m: float) -> float: ...
@overload
def belt_span_frequency(*, static_n: _Array, mass_kg_m: _Array, span_m: _Array) -> Any: ...

@overload
def belt_tension_from_frequency(*, frequency_hz: float, mass_kg_m: float, span_m: float) -> float: ...
@overload
def belt_tension_from_frequency(*, frequency_hz: _Array, mass_kg_m: _Array, span_m: _Array) -> Any: ...

class BeltSectionDataResult(NamedTuple):
    width_m: float
    height_m: float
    mass_kg_m: float
    pulley_m: float
    least_w: float
    most_w: float

@overload
def belt_section_data(*, section: int) -> BeltSectionDataResult: ...
@overload
def belt_section_data(*, section: _Array) -> Any: ...

@overload
def belt_section_from_width(*, width_m: float) -> int: ...
@overload
def belt_section_from_width(*, width_m: _Array) -> Any: ...

@overload
def flow_critical_pressure_ratio(*, k: float) -> float: ...
@overload
def flow_critical_pressure_ratio(*, k: _Array) -> Any: ...

@overload
def flow_critical_coefficient(*, k: float) -> float: ...
@overload
def flow_critical_coefficient(*, k: _Array) -> Any: ...

@overload
def flow_mass_flow(*, area_m2: float, p1_pa: float, t1_k: float, p2_pa: float, k: float, r_j_kg_k: float) -> float: ...
@overload
def flow_mass_flow(*, area_m2: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def flow_area_from_mass_flow(*, mass_kg_s: float, p1_pa: float, t1_k: float, p2_pa: float, k: float, r_j_kg_k: float) -> float: ...
@overload
def flow_area_from_mass_flow(*, mass_kg_s: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def flow_outlet_pressure_from_mass_flow(*, mass_kg_s: float, area_m2: float, p1_pa: float, t1_k: float, k: float, r_j_kg_k: float) -> float: ...
@overload
def flow_outlet_pressure_from_mass_flow(*, mass_kg_s: _Array, area_m2: _Array, p1_pa: _Array, t1_k: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def flow_inlet_pressure_from_mass_flow(*, mass_kg_s: float, area_m2: float, t1_k: float, p2_pa: float, k: float, r_j_kg_k: float) -> float: ...
@overload
def flow_inlet_pressure_from_mass_flow(*, mass_kg_s: _Array, area_m2: _Array, t1_k: _Array, p2_pa: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

class FlowIsentropicRatiosResult(NamedTuple):
    pressure_ratio: float
    temperature_ratio: float
    density_ratio: float
    area_ratio: float

@overload
def flow_isentropic_ratios(*, mach: float, k: float) -> FlowIsentropicRatiosResult: ...
@overload
def flow_isentropic_ratios(*, mach: _Array, k: _Array) -> Any: ...

@overload
def flow_mach_from_pressure_ratio(*, pressure_ratio: float, k: float) -> float: ...
@overload
def flow_mach_from_pressure_ratio(*, pressure_ratio: _Array, k: _Array) -> Any: ...

@overload
def flow_mach_from_area_ratio(*, area_ratio: float, branch: int, k: float) -> float: ...
@overload
def flow_mach_from_area_ratio(*, area_ratio: _Array, branch: _Array, k: _Array) -> Any: ...

class NozzleDischargeCoefficientResult(NamedTuple):
    lowest: float
    usual: float
    highest: float

@overload
def nozzle_discharge_coefficient(*, opening: int) -> NozzleDischargeCoefficientResult: ...
@overload
def nozzle_discharge_coefficient(*, opening: _Array) -> Any: ...

@overload
def nozzle_sharp_edged_coefficient(*, pressure_ratio: float) -> float: ...
@overload
def nozzle_sharp_edged_coefficient(*, pressure_ratio: _Array) -> Any: ...

@overload
def nozzle_trade_flow(*, diameter_m: float, coefficient: float, p1_pa: float, t1_k: float, p_atm_pa: float) -> float: ...
@overload
def nozzle_trade_flow(*, diameter_m: _Array, coefficient: _Array, p1_pa: _Array, t1_k: _Array, p_atm_pa: _Array) -> Any: ...

@overload
def nozzle_meter_coefficient(*, meter: int, reynolds: float) -> float: ...
@overload
def nozzle_meter_coefficient(*, meter: _Array, reynolds: _Array) -> Any: ...

class NozzleMeterMassFlowResult(NamedTuple):
    mass_kg_s: float
    reynolds: float
    coefficient: float

@overload
def nozzle_meter_mass_flow(*, meter: int, diameter_m: float, p0_pa: float, t0_k: float, critical_coefficient: float, r_j_kg_k: float, viscosity_pas: float) -> NozzleMeterMassFlowResult: ...
@overload
def nozzle_meter_mass_flow(*, meter: _Array, diameter_m: _Array, p0_pa: _Array, t0_k: _Array, critical_coefficient: _Array, r_j_kg_k: _Array, viscosity_pas: _Array) -> Any: ...

class ConductanceFlowResult(NamedTuple):
    mass_kg_s: float
    anr_m3_s: float

@overload
def conductance_flow(*, c_m3_s_pa: float, b: float, index: float, p1_pa: float, t1_k: float, p2_pa: float) -> ConductanceFlowResult: ...
@overload
def conductance_flow(*, c_m3_s_pa: _Array, b: _Array, index: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array) -> Any: ...

@overload
def conductance_from_flow(*, mass_kg_s: float, b: float, index: float, p1_pa: float, t1_k: float, p2_pa: float) -> float: ...
@overload
def conductance_from_flow(*, mass_kg_s: _Array, b: _Array, index: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array) -> Any: ...

@overload
def conductance_outlet_pressure(*, mass_kg_s: float, c_m3_s_pa: float, b: float, index: float, p1_pa: float, t1_k: float) -> float: ...
@overload
def conductance_outlet_pressure(*, mass_kg_s: _Array, c_m3_s_pa: _Array, b: _Array, index: _Array, p1_pa: _Array, t1_k: _Array) -> Any: ...

class ConductanceSeriesResult(NamedTuple):
    c_total_m3_s_pa: float
    b_total: float

def conductance_series(*, c_m3_s_pa: _Sequence[float], b: _Sequence[float]) -> ConductanceSeriesResult: ...

class ConductanceParallelResult(NamedTuple):
    c_total_m3_s_pa: float
    b_total: float

def conductance_parallel(*, c_m3_s_pa: _Sequence[float], b: _Sequence[float]) -> ConductanceParallelResult: ...

@overload
def conductance_from_area(*, area_m2: float, k: float, r_j_kg_k: float) -> float: ...
@overload
def conductance_from_area(*, area_m2: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def conductance_area(*, c_m3_s_pa: float, k: float, r_j_kg_k: float) -> float: ...
@overload
def conductance_area(*, c_m3_s_pa: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def coefficient_kv_from_cv(*, cv: float) -> float: ...
@overload
def coefficient_kv_from_cv(*, cv: _Array) -> Any: ...

@overload
def coefficient_cv_from_kv(*, kv: float) -> float: ...
@overload
def coefficient_cv_from_kv(*, kv: _Array) -> Any: ...

class CoefficientConductanceFromKvResult(NamedTuple):
    c_m3_s_pa: float
    b: float

@overload
def coefficient_conductance_from_kv(*, kv: float, x_t: float) -> CoefficientConductanceFromKvResult: ...
@overload
def coefficient_conductance_from_kv(*, kv: _Array, x_t: _Array) -> Any: ...

class CoefficientKvFromConductanceResult(NamedTuple):
    kv: float
    x_t: float

@overload
def coefficient_kv_from_conductance(*, c_m3_s_pa: float, b: float) -> CoefficientKvFromConductanceResult: ...
@overload
def coefficient_kv_from_conductance(*, c_m3_s_pa: _Array, b: _Array) -> Any: ...

@overload
def coefficient_air_flow_from_cv(*, cv: float, p1_pa: float, t1_k: float, p2_pa: float) -> float: ...
@overload
def coefficient_air_flow_from_cv(*, cv: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array) -> Any: ...

@overload
def coefficient_cv_from_air_flow(*, q_m3_s: float, p1_pa: float, t1_k: float, p2_pa: float) -> float: ...
@overload
def coefficient_cv_from_air_flow(*, q_m3_s: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array) -> Any: ...

@overload
def safety_burn_threshold(*, contact_s: float) -> float: ...
@overload
def safety_burn_threshold(*, contact_s: _Array) -> Any: ...

@overload
def safety_cleaning_pressure(*, p_atm_pa: float) -> float: ...
@overload
def safety_cleaning_pressure(*, p_atm_pa: _Array) -> Any: ...

@overload
def safety_stored_energy_hazard(*, energy_j: float) -> int: ...
@overload
def safety_stored_energy_hazard(*, energy_j: _Array) -> Any: ...

@overload
def pipe_reynolds(*, mass_kg_s: float, diameter_m: float, viscosity_pas: float) -> float: ...
@overload
def pipe_reynolds(*, mass_kg_s: _Array, diameter_m: _Array, viscosity_pas: _Array) -> Any: ...

@overload
def pipe_velocity(*, mass_kg_s: float, diameter_m: float, p_pa: float, t_k: float, r_j_kg_k: float) -> float: ...
@overload
def pipe_velocity(*, mass_kg_s: _Array, diameter_m: _Array, p_pa: _Array, t_k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def pipe_diameter_from_velocity(*, mass_kg_s: float, velocity_m_s: float, p_pa: float, t_k: float, r_j_kg_k: float) -> float: ...
@overload
def pipe_diameter_from_velocity(*, mass_kg_s: _Array, velocity_m_s: _Array, p_pa: _Array, t_k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def pipe_friction_factor(*, reynolds: float, roughness: float) -> float: ...
@overload
def pipe_friction_factor(*, reynolds: _Array, roughness: _Array) -> Any: ...

@overload
def pipe_pressure_drop(*, mass_kg_s: float, diameter_m: float, length_m: float, factor: float, loss_coefficient: float, p_pa: float, t_k: float, r_j_kg_k: float) -> float: ...
@overload
def pipe_pressure_drop(*, mass_kg_s: _Array, diameter_m: _Array, length_m: _Array, factor: _Array, loss_coefficient: _Array, p_pa: _Array, t_k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def pipe_drop_harris(*, q_m3_s: float, diameter_m: float, length_m: float, p_pa: float) -> float: ...
@overload
def pipe_drop_harris(*, q_m3_s: _Array, diameter_m: _Array, length_m: _Array, p_pa: _Array) -> Any: ...

@overload
def pipe_roughness(*, material: int) -> float: ...
@overload
def pipe_roughness(*, material: _Array) -> Any: ...

class PipeSizeResult(NamedTuple):
    outer_m: float
    wall_m: float
    inner_m: float

@overload
def pipe_size(*, series: int, dn: int) -> PipeSizeResult: ...
@overload
def pipe_size(*, series: _Array, dn: _Array) -> Any: ...

class PipeSizeFromDiameterResult(NamedTuple):
    dn: int
    inner_m: float

@overload
def pipe_size_from_diameter(*, series: int, diameter_m: float) -> PipeSizeFromDiameterResult: ...
@overload
def pipe_size_from_diameter(*, series: _Array, diameter_m: _Array) -> Any: ...

@overload
def fitting_loss_coefficient(*, fitting: int, joint: int) -> float: ...
@overload
def fitting_loss_coefficient(*, fitting: _Array, joint: _Array) -> Any: ...

@overload
def fitting_length_ratio(*, fitting: int) -> float: ...
@overload
def fitting_length_ratio(*, fitting: _Array) -> Any: ...

@overload
def fitting_equivalent_length(*, loss_coefficient: float, factor: float, diameter_m: float) -> float: ...
@overload
def fitting_equivalent_length(*, loss_coefficient: _Array, factor: _Array, diameter_m: _Array) -> Any: ...

@overload
def fitting_coefficient_from_length(*, length_m: float, factor: float, diameter_m: float) -> float: ...
@overload
def fitting_coefficient_from_length(*, length_m: _Array, factor: _Array, diameter_m: _Array) -> Any: ...

@overload
def fitting_expansion(*, narrow_m: float, wide_m: float) -> float: ...
@overload
def fitting_expansion(*, narrow_m: _Array, wide_m: _Array) -> Any: ...

@overload
def fitting_contraction(*, wide_m: float, narrow_m: float) -> float: ...
@overload
def fitting_contraction(*, wide_m: _Array, narrow_m: _Array) -> Any: ...

@overload
def isothermal_mass_flow(*, p1_pa: float, p2_pa: float, t_k: float, diameter_m: float, loss_number: float, r_j_kg_k: float) -> float: ...
@overload
def isothermal_mass_flow(*, p1_pa: _Array, p2_pa: _Array, t_k: _Array, diameter_m: _Array, loss_number: _Array, r_j_kg_k: _Array) -> Any: ...

class IsothermalChokingResult(NamedTuple):
    p2_pa: float
    mass_kg_s: float

@overload
def isothermal_choking(*, p1_pa: float, t_k: float, diameter_m: float, loss_number: float, r_j_kg_k: float) -> IsothermalChokingResult: ...
@overload
def isothermal_choking(*, p1_pa: _Array, t_k: _Array, diameter_m: _Array, loss_number: _Array, r_j_kg_k: _Array) -> Any: ...

class IsothermalFlowFromPressuresResult(NamedTuple):
    mass_kg_s: float
    factor: float

@overload
def isothermal_flow_from_pressures(*, pipe: IsothermalPipe, p1_pa: float, p2_pa: float) -> IsothermalFlowFromPressuresResult: ...
@overload
def isothermal_flow_from_pressures(*, pipe: IsothermalPipe, p1_pa: _Array, p2_pa: _Array) -> Any: ...

class IsothermalOutletPressureResult(NamedTuple):
    p2_pa: float
    velocity_m_s: float
    factor: float

@overload
def isothermal_outlet_pressure(*, pipe: IsothermalPipe, mass_kg_s: float, p1_pa: float) -> IsothermalOutletPressureResult: ...
@overload
def isothermal_outlet_pressure(*, pipe: IsothermalPipe, mass_kg_s: _Array, p1_pa: _Array) -> Any: ...

class IsothermalInletPressureResult(NamedTuple):
    p1_pa: float
    factor: float

@overload
def isothermal_inlet_pressure(*, pipe: IsothermalPipe, mass_kg_s: float, p2_pa: float) -> IsothermalInletPressureResult: ...
@overload
def isothermal_inlet_pressure(*, pipe: IsothermalPipe, mass_kg_s: _Array, p2_pa: _Array) -> Any: ...

class IsothermalDiameterResult(NamedTuple):
    diameter_m: float
    factor: float

@overload
def isothermal_diameter(*, pipe: IsothermalPipe, mass_kg_s: float, p1_pa: float, p2_pa: float) -> IsothermalDiameterResult: ...
@overload
def isothermal_diameter(*, pipe: IsothermalPipe, mass_kg_s: _Array, p1_pa: _Array, p2_pa: _Array) -> Any: ...

@overload
def fanno_parameter(*, mach: float, k: float) -> float: ...
@overload
def fanno_parameter(*, mach: _Array, k: _Array) -> Any: ...

@overload
def fanno_mach_from_parameter(*, parameter: float, branch: int, k: float) -> float: ...
@overload
def fanno_mach_from_parameter(*, parameter: _Array, branch: _Array, k: _Array) -> Any: ...

class FannoRatiosResult(NamedTuple):
    pressure_ratio: float
    temperature_ratio: float
    density_ratio: float
    stagnation_ratio: float

@overload
def fanno_ratios(*, mach: float, k: float) -> FannoRatiosResult: ...
@overload
def fanno_ratios(*, mach: _Array, k: _Array) -> Any: ...

@overload
def fanno_length(*, mach1: float, mach2: float, diameter_m: float, factor: float, k: float) -> float: ...
@overload
def fanno_length(*, mach1: _Array, mach2: _Array, diameter_m: _Array, factor: _Array, k: _Array) -> Any: ...

class FannoMassFlowResult(NamedTuple):
    mass_kg_s: float
    mach1: float
    mach2: float

@overload
def fanno_mass_flow(*, p0_pa: float, t0_k: float, p2_pa: float, diameter_m: float, loss_number: float, k: float, r_j_kg_k: float) -> FannoMassFlowResult: ...
@overload
def fanno_mass_flow(*, p0_pa: _Array, t0_k: _Array, p2_pa: _Array, diameter_m: _Array, loss_number: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

class FannoOutletResult(NamedTuple):
    p2_pa: float
    t2_k: float
    mach2: float

@overload
def fanno_outlet(*, mass_kg_s: float, p1_pa: float, t1_k: float, diameter_m: float, loss_number: float, k: float, r_j_kg_k: float) -> FannoOutletResult: ...
@overload
def fanno_outlet(*, mass_kg_s: _Array, p1_pa: _Array, t1_k: _Array, diameter_m: _Array, loss_number: _Array, k: _Array, r_j_kg_k: _Array) -> Any: ...

@overload
def ring_main_share(*, length1_m: float, diameter1_m: float, length2_m: float, diameter2_m: float) -> float: ...
@overload
def ring_main_share(*, length1_m: _Array, diameter1_m: _Array, length2_m: _Array, diameter2_m: _Array) -> Any: ...

class RingMainFlowsResult(NamedTuple):
    flow_kg_s: _Sequence[float]
    p_pa: _Sequence[float]
    lowest_pa: float

def ring_main_flows(*, length_m: _Sequence[float], diameter_m: _Sequence[float], offtake_kg_s: _Sequence[float], roughness_m: float, p_supply_pa: float, t_k: float, viscosity_pas: float | None = ..., r_j_kg_k: float | None = ...) -> RingMainFlowsResult: ...

class RingMainDeadEndResult(NamedTuple):
    flow_kg_s: _Sequence[float]
    p_pa: _Sequence[float]
    lowest_pa: float

def ring_main_dead_end(*, length_m: _Sequence[float], diameter_m: _Sequence[float], offtake_kg_s: _Sequence[float], roughness_m: float, p_supply_pa: float, t_k: float, viscosity_pas: float | None = ..., r_j_kg_k: float | None = ...) -> RingMainDeadEndResult: ...

@overload
def compression_work_isothermal(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float) -> float: ...
@overload
def compression_work_isothermal(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array) -> Any: ...

@overload
def compression_work_isentropic(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, k: float) -> float: ...
@overload
def compression_work_isentropic(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, k: _Array) -> Any: ...

@overload
def compression_work_polytropic(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float) -> float: ...
@overload
def compression_work_polytropic(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array) -> Any: ...

@overload
def compression_free_air_work(*, p_free_pa: float, t_free_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float) -> float: ...
@overload
def compression_free_air_work(*, p_free_pa: _Array, t_free_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array) -> Any: ...

@overload
def compression_power_from_mass_flow(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float, m_kg_s: float, efficiency: float) -> float: ...
@overload
def compression_power_from_mass_flow(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, m_kg_s: _Array, efficiency: _Array) -> Any: ...

@overload
def compression_power_from_free_air(*, p_free_pa: float, t_free_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float, fad_m3_s: float, efficiency: float) -> float: ...
@overload
def compression_power_from_free_air(*, p_free_pa: _Array, t_free_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, fad_m3_s: _Array, efficiency: _Array) -> Any: ...

@overload
def compression_temperature(*, t1_k: float, p1_pa: float, p2_pa: float, n: float) -> float: ...
@overload
def compression_temperature(*, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array) -> Any: ...

@overload
def compression_pressure_from_temperature(*, t1_k: float, t2_k: float, p1_pa: float, n: float) -> float: ...
@overload
def compression_pressure_from_temperature(*, t1_k: _Array, t2_k: _Array, p1_pa: _Array, n: _Array) -> Any: ...

@overload
def compression_exponent_from_temperatures(*, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float) -> float: ...
@overload
def compression_exponent_from_temperatures(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array) -> Any: ...

@overload
def compression_exponent_from_volumes(*, p1_pa: float, v1_m3: float, p2_pa: float, v2_m3: float) -> float: ...
@overload
def compression_exponent_from_volumes(*, p1_pa: _Array, v1_m3: _Array, p2_pa: _Array, v2_m3: _Array) -> Any: ...

@overload
def compression_heat_rejected(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float, k: float) -> float: ...
@overload
def compression_heat_rejected(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, k: _Array) -> Any: ...

@overload
def performance_efficiency_isothermal(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, m_kg_s: float, power_w: float) -> float: ...
@overload
def performance_efficiency_isothermal(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, m_kg_s: _Array, power_w: _Array) -> Any: ...

@overload
def performance_efficiency_isentropic(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, k: float, m_kg_s: float, power_w: float) -> float: ...
@overload
def performance_efficiency_isentropic(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, k: _Array, m_kg_s: _Array, power_w: _Array) -> Any: ...

@overload
def performance_efficiency_isothermal_from_exponent(*, p1_pa: float, p2_pa: float, n: float) -> float: ...
@overload
def performance_efficiency_isothermal_from_exponent(*, p1_pa: _Array, p2_pa: _Array, n: _Array) -> Any: ...

@overload
def performance_efficiency_isentropic_from_temperatures(*, k: float, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float) -> float: ...
@overload
def performance_efficiency_isentropic_from_temperatures(*, k: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array) -> Any: ...

@overload
def performance_efficiency_polytropic_from_temperatures(*, k: float, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float) -> float: ...
@overload
def performance_efficiency_polytropic_from_temperatures(*, k: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array) -> Any: ...

@overload
def performance_efficiency_mechanical(*, indicated_w: float, shaft_w: float) -> float: ...
@overload
def performance_efficiency_mechanical(*, indicated_w: _Array, shaft_w: _Array) -> Any: ...

@overload
def performance_efficiency_overall(*, ideal_w: float, input_w: float) -> float: ...
@overload
def performance_efficiency_overall(*, ideal_w: _Array, input_w: _Array) -> Any: ...

@overload
def performance_specific_power(*, power_w: float, fad_m3_s: float) -> float: ...
@overload
def performance_specific_power(*, power_w: _Array, fad_m3_s: _Array) -> Any: ...

@overload
def performance_saving_from_pressure(*, p1_pa: float, p2_pa: float, p2_reduced_pa: float, n: float) -> float: ...
@overload
def performance_saving_from_pressure(*, p1_pa: _Array, p2_pa: _Array, p2_reduced_pa: _Array, n: _Array) -> Any: ...

@overload
def performance_temperature_from_efficiency(*, t1_k: float, p1_pa: float, p2_pa: float, k: float, efficiency: float) -> float: ...
@overload
def performance_temperature_from_efficiency(*, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, k: _Array, efficiency: _Array) -> Any: ...

@overload
def performance_heat_from_power(*, power_w: float, m_kg_s: float, cp_j_kg_k: float, t1_k: float, t2_k: float) -> float: ...
@overload
def performance_heat_from_power(*, power_w: _Array, m_kg_s: _Array, cp_j_kg_k: _Array, t1_k: _Array, t2_k: _Array) -> Any: ...

@overload
def multistage_pressure(*, p1_pa: float, p2_pa: float, stages: int, after: int) -> float: ...
@overload
def multistage_pressure(*, p1_pa: _Array, p2_pa: _Array, stages: _Array, after: _Array) -> Any: ...

@overload
def multistage_pressure_from_temperatures(*, p1_pa: float, p2_pa: float, t1_k: float, t3_k: float, n: float, loss: float) -> float: ...
@overload
def multistage_pressure_from_temperatures(*, p1_pa: _Array, p2_pa: _Array, t1_k: _Array, t3_k: _Array, n: _Array, loss: _Array) -> Any: ...

@overload
def multistage_work_equal(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float, stages: int) -> float: ...
@overload
def multistage_work_equal(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, stages: _Array) -> Any: ...

@overload
def multistage_power_from_mass_flow(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float, stages: int, m_kg_s: float, efficiency: float) -> float: ...
@overload
def multistage_power_from_mass_flow(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, stages: _Array, m_kg_s: _Array, efficiency: _Array) -> Any: ...

@overload
def multistage_power_from_free_air(*, p_free_pa: float, t_free_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float, stages: int, fad_m3_s: float, efficiency: float) -> float: ...
@overload
def multistage_power_from_free_air(*, p_free_pa: _Array, t_free_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, stages: _Array, fad_m3_s: _Array, efficiency: _Array) -> Any: ...

@overload
def multistage_saving(*, p1_pa: float, p2_pa: float, n: float, stages: int) -> float: ...
@overload
def multistage_saving(*, p1_pa: _Array, p2_pa: _Array, n: _Array, stages: _Array) -> Any: ...

def multistage_optimum(*, p1_pa: float, p2_pa: float, t_in_k: _Sequence[float], n: _Sequence[float], drop_pa: _Sequence[float]) -> _Sequence[float]: ...

class MultistageWorkResult(NamedTuple):
    stage_j_kg: _Sequence[float]
    t_out_k: _Sequence[float]
    w_j_kg: float

def multistage_work(*, r_j_kg_k: float, p1_pa: float, t_in_k: _Sequence[float], n: _Sequence[float], drop_pa: _Sequence[float], p_out_pa: _Sequence[float]) -> MultistageWorkResult: ...

@overload
def multistage_intercooler_heat(*, m_kg_s: float, cp_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, n: float, t_cooled_k: float) -> float: ...
@overload
def multistage_intercooler_heat(*, m_kg_s: _Array, cp_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, t_cooled_k: _Array) -> Any: ...

@overload
def multistage_stages(*, t1_k: float, p1_pa: float, p2_pa: float, n: float, t_max_k: float) -> int: ...
@overload
def multistage_stages(*, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, n: _Array, t_max_k: _Array) -> Any: ...

class RealCompressionIsentropicResult(NamedTuple):
    w_j_kg: float
    t2_k: float

@overload
def real_compression_isentropic(*, p1_pa: float, t1_k: float, p2_pa: float) -> RealCompressionIsentropicResult: ...
@overload
def real_compression_isentropic(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array) -> Any: ...

class RealCompressionIsothermalResult(NamedTuple):
    w_j_kg: float
    q_j_kg: float

@overload
def real_compression_isothermal(*, p1_pa: float, t_k: float, p2_pa: float) -> RealCompressionIsothermalResult: ...
@overload
def real_compression_isothermal(*, p1_pa: _Array, t_k: _Array, p2_pa: _Array) -> Any: ...

class RealCompressionFromExponentResult(NamedTuple):
    w_j_kg: float
    q_j_kg: float
    t2_k: float

@overload
def real_compression_from_exponent(*, p1_pa: float, t1_k: float, p2_pa: float, n: float) -> RealCompressionFromExponentResult: ...
@overload
def real_compression_from_exponent(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, n: _Array) -> Any: ...

@overload
def real_compression_outlet(*, p1_pa: float, t1_k: float, p2_pa: float, w_j_kg: float, q_j_kg: float) -> float: ...
@overload
def real_compression_outlet(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, w_j_kg: _Array, q_j_kg: _Array) -> Any: ...

@overload
def real_compression_throttled(*, p1_pa: float, t1_k: float, p2_pa: float) -> float: ...
@overload
def real_compression_throttled(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array) -> Any: ...

@overload
def real_compression_efficiency(*, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float) -> float: ...
@overload
def real_compression_efficiency(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array) -> Any: ...

class RealCompressionStagesResult(NamedTuple):
    stage_j_kg: _Sequence[float]
    t_out_k: _Sequence[float]
    cooler_j_kg: _Sequence[float]
    w_j_kg: float

def real_compression_stages(*, p1_pa: float, t_in_k: _Sequence[float], efficiency: _Sequence[float], drop_pa: _Sequence[float], p_out_pa: _Sequence[float]) -> RealCompressionStagesResult: ...

class RealPolytropicExponentsResult(NamedTuple):
    volume_exponent: float
    temperature_exponent: float
    x: float
    y: float

@overload
def real_polytropic_exponents(*, p_pa: float, t_k: float, efficiency: float) -> RealPolytropicExponentsResult: ...
@overload
def real_polytropic_exponents(*, p_pa: _Array, t_k: _Array, efficiency: _Array) -> Any: ...

class RealPolytropicWorkResult(NamedTuple):
    w_j_kg: float
    head_j_kg: float
    t2_k: float

@overload
def real_polytropic_work(*, p1_pa: float, t1_k: float, p2_pa: float, efficiency: float) -> RealPolytropicWorkResult: ...
@overload
def real_polytropic_work(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, efficiency: _Array) -> Any: ...

class RealPolytropicEfficiencyResult(NamedTuple):
    efficiency: float
    head_j_kg: float

@overload
def real_polytropic_efficiency(*, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float) -> RealPolytropicEfficiencyResult: ...
@overload
def real_polytropic_efficiency(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array) -> Any: ...

class RealPolytropicSchultzResult(NamedTuple):
    efficiency: float
    head_j_kg: float
    volume_exponent: float
    factor: float

@overload
def real_polytropic_schultz(*, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float) -> RealPolytropicSchultzResult: ...
@overload
def real_polytropic_schultz(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array) -> Any: ...

@overload
def rotary_work(*, r_j_kg_k: float, t1_k: float, p1_pa: float, p2_pa: float, k: float, volume_ratio: float) -> float: ...
@overload
def rotary_work(*, r_j_kg_k: _Array, t1_k: _Array, p1_pa: _Array, p2_pa: _Array, k: _Array, volume_ratio: _Array) -> Any: ...

@overload
def rotary_volume_ratio(*, p1_pa: float, p2_pa: float, k: float) -> float: ...
@overload
def rotary_volume_ratio(*, p1_pa: _Array, p2_pa: _Array, k: _Array) -> Any: ...

class ConductorSizeResult(NamedTuple):
    area_m2: float
    r20_ohm_m: float

@overload
def conductor_size(*, kind: int, place: int) -> ConductorSizeResult: ...
@overload
def conductor_size(*, kind: _Array, place: _Array) -> Any: ...

@overload
def conductor_table_resistance(*, kind: int, area_m2: float) -> float: ...
@overload
def conductor_table_resistance(*, kind: _Array, area_m2: _Array) -> Any: ...

@overload
def conductor_resistance(*, kind: int, area_m2: float, t_k: float) -> float: ...
@overload
def conductor_resistance(*, kind: _Array, area_m2: _Array, t_k: _Array) -> Any: ...

@overload
def conductor_resistance_at(*, r20_ohm_m: float, coefficient_1_k: float, t_k: float) -> float: ...
@overload
def conductor_resistance_at(*, r20_ohm_m: _Array, coefficient_1_k: _Array, t_k: _Array) -> Any: ...

class ConductorGaugeResult(NamedTuple):
    diameter_m: float
    area_m2: float

@overload
def conductor_gauge(*, gauge: int) -> ConductorGaugeResult: ...
@overload
def conductor_gauge(*, gauge: _Array) -> Any: ...

@overload
def conductor_gauge_from_area(*, area_m2: float) -> int: ...
@overload
def conductor_gauge_from_area(*, area_m2: _Array) -> Any: ...

class ConductorDropResult(NamedTuple):
    drop_v: float
    loss_w: float

@overload
def conductor_drop(*, length_m: float, r_ohm_m: float, x_ohm_m: float, current_a: float, power_factor: float, phases: int) -> ConductorDropResult: ...
@overload
def conductor_drop(*, length_m: _Array, r_ohm_m: _Array, x_ohm_m: _Array, current_a: _Array, power_factor: _Array, phases: _Array) -> Any: ...

class ConductorSizeForDropResult(NamedTuple):
    area_m2: float
    drop_v: float

@overload
def conductor_size_for_drop(*, kind: int, length_m: float, t_k: float, x_ohm_m: float, current_a: float, power_factor: float, phases: int, allowed_v: float) -> ConductorSizeForDropResult: ...
@overload
def conductor_size_for_drop(*, kind: _Array, length_m: _Array, t_k: _Array, x_ohm_m: _Array, current_a: _Array, power_factor: _Array, phases: _Array, allowed_v: _Array) -> Any: ...

@overload
def fastener_pitch(*, thread: int, diameter_m: float) -> float: ...
@overload
def fastener_pitch(*, thread: _Array, diameter_m: _Array) -> Any: ...

@overload
def fastener_stress_area(*, thread: int, diameter_m: float, pitch_m: float) -> float: ...
@overload
def fastener_stress_area(*, thread: _Array, diameter_m: _Array, pitch_m: _Array) -> Any: ...

class FastenerStrengthResult(NamedTuple):
    proof_pa: float
    yield_pa: float
    tensile_pa: float

@overload
def fastener_strength(*, grade: int, diameter_m: float) -> FastenerStrengthResult: ...
@overload
def fastener_strength(*, grade: _Array, diameter_m: _Array) -> Any: ...

class FastenerTorqueForGradeResult(NamedTuple):
    torque_nm: float
    preload_n: float

@overload
def fastener_torque_for_grade(*, thread: int, diameter_m: float, grade: int, fraction: float, nut_factor: float) -> FastenerTorqueForGradeResult: ...
@overload
def fastener_torque_for_grade(*, thread: _Array, diameter_m: _Array, grade: _Array, fraction: _Array, nut_factor: _Array) -> Any: ...

@overload
def fastener_torque(*, preload_n: float, nut_factor: float, diameter_m: float) -> float: ...
@overload
def fastener_torque(*, preload_n: _Array, nut_factor: _Array, diameter_m: _Array) -> Any: ...

class FastenerPreloadResult(NamedTuple):
    preload_n: float
    uncertainty_n: float

@overload
def fastener_preload(*, torque_nm: float, torque_uncertainty_nm: float, nut_factor: float, nut_factor_uncertainty: float, diameter_m: float) -> FastenerPreloadResult: ...
@overload
def fastener_preload(*, torque_nm: _Array, torque_uncertainty_nm: _Array, nut_factor: _Array, nut_factor_uncertainty: _Array, diameter_m: _Array) -> Any: ...

@overload
def fastener_nut_factor(*, diameter_m: float, pitch_m: float, thread_friction: float, bearing_friction: float, bearing_m: float) -> float: ...
@overload
def fastener_nut_factor(*, diameter_m: _Array, pitch_m: _Array, thread_friction: _Array, bearing_friction: _Array, bearing_m: _Array) -> Any: ...

@overload
def fastener_pressure_load(*, difference_pa: float, area_m2: float, bolts: int) -> float: ...
@overload
def fastener_pressure_load(*, difference_pa: _Array, area_m2: _Array, bolts: _Array) -> Any: ...

@overload
def receiver_volume_from_event(*, shortfall_m3_s: float, duration_s: float, p_high_pa: float, p_low_pa: float, t_k: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def receiver_volume_from_event(*, shortfall_m3_s: _Array, duration_s: _Array, p_high_pa: _Array, p_low_pa: _Array, t_k: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def receiver_volume_from_starts(*, supply_m3_s: float, starts_hz: float, p_high_pa: float, p_low_pa: float, t_k: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def receiver_volume_from_starts(*, supply_m3_s: _Array, starts_hz: _Array, p_high_pa: _Array, p_low_pa: _Array, t_k: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

class ReceiverCycleResult(NamedTuple):
    run_s: float
    rest_s: float
    starts_hz: float

@overload
def receiver_cycle(*, v_m3: float, supply_m3_s: float, demand_m3_s: float, p_high_pa: float, p_low_pa: float, t_k: float, p_ref_pa: float, t_ref_k: float) -> ReceiverCycleResult: ...
@overload
def receiver_cycle(*, v_m3: _Array, supply_m3_s: _Array, demand_m3_s: _Array, p_high_pa: _Array, p_low_pa: _Array, t_k: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def receiver_starts_maximum(*, v_m3: float, supply_m3_s: float, p_high_pa: float, p_low_pa: float, t_k: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def receiver_starts_maximum(*, v_m3: _Array, supply_m3_s: _Array, p_high_pa: _Array, p_low_pa: _Array, t_k: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def receiver_usable_air(*, v_m3: float, p_high_pa: float, p_low_pa: float, t_k: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def receiver_usable_air(*, v_m3: _Array, p_high_pa: _Array, p_low_pa: _Array, t_k: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def receiver_pressure_after(*, v_m3: float, p1_pa: float, net_m3_s: float, duration_s: float, t_k: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def receiver_pressure_after(*, v_m3: _Array, p1_pa: _Array, net_m3_s: _Array, duration_s: _Array, t_k: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def receiver_fill_time(*, v_m3: float, p1_pa: float, p2_pa: float, net_m3_s: float, t_k: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def receiver_fill_time(*, v_m3: _Array, p1_pa: _Array, p2_pa: _Array, net_m3_s: _Array, t_k: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def receiver_free_air_from_pump_up(*, v_m3: float, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float, duration_s: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def receiver_free_air_from_pump_up(*, v_m3: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array, duration_s: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def receiver_water_from_pump_up(*, v_m3: float, expected_s: float, found_s: float) -> float: ...
@overload
def receiver_water_from_pump_up(*, v_m3: _Array, expected_s: _Array, found_s: _Array) -> Any: ...

@overload
def blowdown_time(*, vessel: BlowdownVessel, p2_pa: float) -> float: ...
@overload
def blowdown_time(*, vessel: BlowdownVessel, p2_pa: _Array) -> Any: ...

class BlowdownPressureResult(NamedTuple):
    p2_pa: float
    t2_k: float

@overload
def blowdown_pressure(*, vessel: BlowdownVessel, duration_s: float) -> BlowdownPressureResult: ...
@overload
def blowdown_pressure(*, vessel: BlowdownVessel, duration_s: _Array) -> Any: ...

@overload
def blowdown_fill_time(*, vessel: BlowdownVessel, p2_pa: float) -> float: ...
@overload
def blowdown_fill_time(*, vessel: BlowdownVessel, p2_pa: _Array) -> Any: ...

@overload
def blowdown_fill_pressure(*, vessel: BlowdownVessel, duration_s: float) -> float: ...
@overload
def blowdown_fill_pressure(*, vessel: BlowdownVessel, duration_s: _Array) -> Any: ...

@overload
def blowdown_fill_temperature(*, p1_pa: float, t1_k: float, p2_pa: float, t_line_k: float, k: float) -> float: ...
@overload
def blowdown_fill_temperature(*, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t_line_k: _Array, k: _Array) -> Any: ...

@overload
def blowdown_evacuation_time(*, v_m3: float, speed_m3_s: float, p1_pa: float, p2_pa: float, p_ultimate_pa: float) -> float: ...
@overload
def blowdown_evacuation_time(*, v_m3: _Array, speed_m3_s: _Array, p1_pa: _Array, p2_pa: _Array, p_ultimate_pa: _Array) -> Any: ...

class VesselStoredEnergyResult(NamedTuple):
    brode_j: float
    isentropic_j: float
    isothermal_j: float
    available_j: float

@overload
def vessel_stored_energy(*, p_pa: float, p_atm_pa: float, v_m3: float, k: float) -> VesselStoredEnergyResult: ...
@overload
def vessel_stored_energy(*, p_pa: _Array, p_atm_pa: _Array, v_m3: _Array, k: _Array) -> Any: ...

class VesselTestEnergyResult(NamedTuple):
    energy_j: float
    tnt_kg: float

@overload
def vessel_test_energy(*, p_pa: float, p_atm_pa: float, v_m3: float) -> VesselTestEnergyResult: ...
@overload
def vessel_test_energy(*, p_pa: _Array, p_atm_pa: _Array, v_m3: _Array) -> Any: ...

@overload
def vessel_tnt_equivalent(*, energy_j: float, tnt_j_kg: float) -> float: ...
@overload
def vessel_tnt_equivalent(*, energy_j: _Array, tnt_j_kg: _Array) -> Any: ...

@overload
def vessel_test_distance(*, energy_j: float) -> float: ...
@overload
def vessel_test_distance(*, energy_j: _Array) -> Any: ...

class VesselShellStressResult(NamedTuple):
    hoop_pa: float
    longitudinal_pa: float

@overload
def vessel_shell_stress(*, dp_pa: float, radius_m: float, wall_m: float) -> VesselShellStressResult: ...
@overload
def vessel_shell_stress(*, dp_pa: _Array, radius_m: _Array, wall_m: _Array) -> Any: ...

@overload
def vessel_sphere_stress(*, dp_pa: float, radius_m: float, wall_m: float) -> float: ...
@overload
def vessel_sphere_stress(*, dp_pa: _Array, radius_m: _Array, wall_m: _Array) -> Any: ...

@overload
def vessel_wall_required(*, dp_pa: float, radius_m: float, stress_pa: float, joint_efficiency: float, corrosion_m: float) -> float: ...
@overload
def vessel_wall_required(*, dp_pa: _Array, radius_m: _Array, stress_pa: _Array, joint_efficiency: _Array, corrosion_m: _Array) -> Any: ...

@overload
def vessel_pressure_allowable(*, wall_m: float, outside_radius_m: float, stress_pa: float, joint_efficiency: float, corrosion_m: float) -> float: ...
@overload
def vessel_pressure_allowable(*, wall_m: _Array, outside_radius_m: _Array, stress_pa: _Array, joint_efficiency: _Array, corrosion_m: _Array) -> Any: ...

@overload
def vessel_relief_capacity(*, area_m2: float, coefficient: float, p_relieving_pa: float, t_k: float, p_back_pa: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def vessel_relief_capacity(*, area_m2: _Array, coefficient: _Array, p_relieving_pa: _Array, t_k: _Array, p_back_pa: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

class VesselReliefVerdictResult(NamedTuple):
    margin: float
    verdict: int

@overload
def vessel_relief_verdict(*, capacity_m3_s: float, capacity_uncertainty_m3_s: float, delivery_m3_s: float, delivery_uncertainty_m3_s: float, confidence: float) -> VesselReliefVerdictResult: ...
@overload
def vessel_relief_verdict(*, capacity_m3_s: _Array, capacity_uncertainty_m3_s: _Array, delivery_m3_s: _Array, delivery_uncertainty_m3_s: _Array, confidence: _Array) -> Any: ...

@overload
def leakage_share_from_cycle(*, load_s: float, unload_s: float) -> float: ...
@overload
def leakage_share_from_cycle(*, load_s: _Array, unload_s: _Array) -> Any: ...

@overload
def leakage_flow_from_cycle(*, load_s: float, unload_s: float, capacity_m3_s: float) -> float: ...
@overload
def leakage_flow_from_cycle(*, load_s: _Array, unload_s: _Array, capacity_m3_s: _Array) -> Any: ...

class LeakageMeanFromDecayResult(NamedTuple):
    q_m3_s: float
    mass_kg_s: float

@overload
def leakage_mean_from_decay(*, v_m3: float, p1_pa: float, t1_k: float, p2_pa: float, t2_k: float, duration_s: float, p_ref_pa: float, t_ref_k: float) -> LeakageMeanFromDecayResult: ...
@overload
def leakage_mean_from_decay(*, v_m3: _Array, p1_pa: _Array, t1_k: _Array, p2_pa: _Array, t2_k: _Array, duration_s: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def leakage_at_pressure_from_decay(*, v_m3: float, p1_pa: float, p2_pa: float, duration_s: float, t_k: float, p_pa: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def leakage_at_pressure_from_decay(*, v_m3: _Array, p1_pa: _Array, p2_pa: _Array, duration_s: _Array, t_k: _Array, p_pa: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def leakage_flow_at_pressure(*, q1_m3_s: float, p1_pa: float, p2_pa: float, p_atm_pa: float) -> float: ...
@overload
def leakage_flow_at_pressure(*, q1_m3_s: _Array, p1_pa: _Array, p2_pa: _Array, p_atm_pa: _Array) -> Any: ...

class LeakageFlowFromReadingsResult(NamedTuple):
    q_at_m3_s: float
    slope_m3_s_pa: float

def leakage_flow_from_readings(*, p_pa: _Sequence[float], q_m3_s: _Sequence[float], p_at_pa: float) -> LeakageFlowFromReadingsResult: ...

class LeakageFlowFromHoleResult(NamedTuple):
    q_m3_s: float
    mass_kg_s: float

@overload
def leakage_flow_from_hole(*, diameter_m: float, coefficient: float, p_line_pa: float, t_line_k: float, p_atm_pa: float, p_ref_pa: float, t_ref_k: float) -> LeakageFlowFromHoleResult: ...
@overload
def leakage_flow_from_hole(*, diameter_m: _Array, coefficient: _Array, p_line_pa: _Array, t_line_k: _Array, p_atm_pa: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def leakage_hole_from_flow(*, q_m3_s: float, coefficient: float, p_line_pa: float, t_line_k: float, p_atm_pa: float, p_ref_pa: float, t_ref_k: float) -> float: ...
@overload
def leakage_hole_from_flow(*, q_m3_s: _Array, coefficient: _Array, p_line_pa: _Array, t_line_k: _Array, p_atm_pa: _Array, p_ref_pa: _Array, t_ref_k: _Array) -> Any: ...

@overload
def leakage_power(*, q_m3_s: float, p_ref_pa: float, t_ref_k: float, p_in_pa: float, t_in_k: float, p_line_pa: float, efficiency: float) -> float: ...
@overload
def leakage_power(*, q_m3_s: _Array, p_ref_pa: _Array, t_ref_k: _Array, p_in_pa: _Array, t_in_k: _Array, p_line_pa: _Array, efficiency: _Array) -> Any: ...

class LeakageCostResult(NamedTuple):
    energy_j: float
    cost: float

@overload
def leakage_cost(*, power_w: float, running_s: float, price_1_j: float) -> LeakageCostResult: ...
@overload
def leakage_cost(*, power_w: _Array, running_s: _Array, price_1_j: _Array) -> Any: ...

class DemandSummaryResult(NamedTuple):
    mean_m3_s: float
    peak_m3_s: float
    least_m3_s: float
    air_m3: float
    time_s: float

def demand_summary(*, flow_m3_s: _Sequence[float], duration_s: _Sequence[float]) -> DemandSummaryResult: ...

class DemandStoreResult(NamedTuple):
    store_m3: float
    short_s: float
    duty: float

def demand_store(*, flow_m3_s: _Sequence[float], duration_s: _Sequence[float], capacity_m3_s: float) -> DemandStoreResult: ...

def demand_capacity(*, flow_m3_s: _Sequence[float], duration_s: _Sequence[float], store_m3: float) -> float: ...

class DemandToolsResult(NamedTuple):
    mean_m3_s: float
    deviation_m3_s: float
    connected_m3_s: float

def demand_tools(*, tools: _Sequence[float], flow_m3_s: _Sequence[float], use: _Sequence[float]) -> DemandToolsResult: ...

class DemandRunningResult(NamedTuple):
    running: int
    share: float

@overload
def demand_running(*, tools: int, use: float, confidence: float) -> DemandRunningResult: ...
@overload
def demand_running(*, tools: _Array, use: _Array, confidence: _Array) -> Any: ...

class DemandSimultaneityResult(NamedTuple):
    simultaneity: float
    diversity: float

@overload
def demand_simultaneity(*, group_m3_s: float, members_m3_s: float) -> DemandSimultaneityResult: ...
@overload
def demand_simultaneity(*, group_m3_s: _Array, members_m3_s: _Array) -> Any: ...

@overload
def demand_at_pressure(*, q1_m3_s: float, p1_pa: float, p2_pa: float, regulated: float) -> float: ...
@overload
def demand_at_pressure(*, q1_m3_s: _Array, p1_pa: _Array, p2_pa: _Array, regulated: _Array) -> Any: ...

@overload
def energy_zero_load_share(*, control: int) -> float: ...
@overload
def energy_zero_load_share(*, control: _Array) -> Any: ...

class EnergyPartLoadResult(NamedTuple):
    power_w: float
    specific_ratio: float

@overload
def energy_part_load(*, full_w: float, zero_load: float, flow_share: float) -> EnergyPartLoadResult: ...
@overload
def energy_part_load(*, full_w: _Array, zero_load: _Array, flow_share: _Array) -> Any: ...

class EnergyFromTimesResult(NamedTuple):
    mean_w: float
    energy_j: float

@overload
def energy_from_times(*, load_w: float, unload_w: float, load_s: float, unload_s: float) -> EnergyFromTimesResult: ...
@overload
def energy_from_times(*, load_w: _Array, unload_w: _Array, load_s: _Array, unload_s: _Array) -> Any: ...

@overload
def energy_input_power(*, shaft_w: float, motor_efficiency: float, drive_efficiency: float) -> float: ...
@overload
def energy_input_power(*, shaft_w: _Array, motor_efficiency: _Array, drive_efficiency: _Array) -> Any: ...

class EnergyCostResult(NamedTuple):
    energy_j: float
    cost: float
    emission_kg: float

@overload
def energy_cost(*, power_w: float, running_s: float, price_1_j: float, emission_kg_j: float) -> EnergyCostResult: ...
@overload
def energy_cost(*, power_w: _Array, running_s: _Array, price_1_j: _Array, emission_kg_j: _Array) -> Any: ...

class EnergyFromProfileResult(NamedTuple):
    energy_j: float
    air_m3: float
    missing_m3: float
    specific_j_m3: float

def energy_from_profile(*, flow_m3_s: _Sequence[float], duration_s: _Sequence[float], capacity_m3_s: float, full_w: float, zero_load: float) -> EnergyFromProfileResult: ...

class EnergyHeatRecoveryResult(NamedTuple):
    heat_j: float
    fuel_j: float

@overload
def energy_heat_recovery(*, power_w: float, running_s: float, recoverable: float, used: float, heater_efficiency: float) -> EnergyHeatRecoveryResult: ...
@overload
def energy_heat_recovery(*, power_w: _Array, running_s: _Array, recoverable: _Array, used: _Array, heater_efficiency: _Array) -> Any: ...

class EnergyPaybackResult(NamedTuple):
    simple: float
    discounted: float

@overload
def energy_payback(*, investment: float, saving: float, interest: float) -> EnergyPaybackResult: ...
@overload
def energy_payback(*, investment: _Array, saving: _Array, interest: _Array) -> Any: ...

@overload
def purity_particle_class(*, small_1_m3: float | None = ..., medium_1_m3: float | None = ..., large_1_m3: float | None = ..., mass_kg_m3: float | None = ...) -> int: ...
@overload
def purity_particle_class(*, small_1_m3: _Array | None = ..., medium_1_m3: _Array | None = ..., large_1_m3: _Array | None = ..., mass_kg_m3: _Array | None = ...) -> Any: ...

class PurityParticleLimitsResult(NamedTuple):
    small_1_m3: float
    medium_1_m3: float
    large_1_m3: float
    mass_kg_m3: float

@overload
def purity_particle_limits(*, class_code: int) -> PurityParticleLimitsResult: ...
@overload
def purity_particle_limits(*, class_code: _Array) -> Any: ...

@overload
def purity_water_class(*, dew_point_k: float | None = ..., liquid_kg_m3: float | None = ...) -> int: ...
@overload
def purity_water_class(*, dew_point_k: _Array | None = ..., liquid_kg_m3: _Array | None = ...) -> Any: ...

class PurityWaterLimitsResult(NamedTuple):
    dew_point_k: float
    liquid_kg_m3: float

@overload
def purity_water_limits(*, class_code: int) -> PurityWaterLimitsResult: ...
@overload
def purity_water_limits(*, class_code: _Array) -> Any: ...

@overload
def purity_oil_class(*, oil_kg_m3: float) -> int: ...
@overload
def purity_oil_class(*, oil_kg_m3: _Array) -> Any: ...

@overload
def purity_oil_limit(*, class_code: int) -> float: ...
@overload
def purity_oil_limit(*, class_code: _Array) -> Any: ...

@overload
def purity_concentration_at_reference(*, line: float, p_pa: float, t_k: float) -> float: ...
@overload
def purity_concentration_at_reference(*, line: _Array, p_pa: _Array, t_k: _Array) -> Any: ...

class AcceptanceTolerancesResult(NamedTuple):
    flow_tolerance: float
    energy_tolerance: float

@overload
def acceptance_tolerances(*, flow_m3_s: float) -> AcceptanceTolerancesResult: ...
@overload
def acceptance_tolerances(*, flow_m3_s: _Array) -> Any: ...

class AcceptanceCorrectResult(NamedTuple):
    flow_m3_s: float
    power_w: float
    specific_j_m3: float
    flow_factor: float
    power_factor: float

@overload
def acceptance_correct(*, test: AcceptanceTest, stages: int) -> AcceptanceCorrectResult: ...
@overload
def acceptance_correct(*, test: AcceptanceTest, stages: _Array) -> Any: ...

class AcceptanceFlowVerdictResult(NamedTuple):
    verdict: int
    deviation: float
    probability: float

@overload
def acceptance_flow_verdict(*, flow_m3_s: float, uncertainty_m3_s: float, guarantee_m3_s: float, tolerance: float, confidence: float) -> AcceptanceFlowVerdictResult: ...
@overload
def acceptance_flow_verdict(*, flow_m3_s: _Array, uncertainty_m3_s: _Array, guarantee_m3_s: _Array, tolerance: _Array, confidence: _Array) -> Any: ...

class AcceptanceEnergyVerdictResult(NamedTuple):
    verdict: int
    deviation: float
    probability: float

@overload
def acceptance_energy_verdict(*, specific_j_m3: float, uncertainty_j_m3: float, guarantee_j_m3: float, tolerance: float, confidence: float) -> AcceptanceEnergyVerdictResult: ...
@overload
def acceptance_energy_verdict(*, specific_j_m3: _Array, uncertainty_j_m3: _Array, guarantee_j_m3: _Array, tolerance: _Array, confidence: _Array) -> Any: ...

@overload
def cylinder_swept_volume(*, bore_m: float, stroke_m: float) -> float: ...
@overload
def cylinder_swept_volume(*, bore_m: _Array, stroke_m: _Array) -> Any: ...

@overload
def cylinder_swept_volume_double_acting(*, bore_m: float, stroke_m: float, rod_diameter_m: float) -> float: ...
@overload
def cylinder_swept_volume_double_acting(*, bore_m: _Array, stroke_m: _Array, rod_diameter_m: _Array) -> Any: ...

@overload
def cylinder_clearance_volume(*, swept_m3: float, clearance: float) -> float: ...
@overload
def cylinder_clearance_volume(*, swept_m3: _Array, clearance: _Array) -> Any: ...

@overload
def cylinder_clearance_from_volume(*, swept_m3: float, clearance_m3: float) -> float: ...
@overload
def cylinder_clearance_from_volume(*, swept_m3: _Array, clearance_m3: _Array) -> Any: ...

@overload
def cylinder_volumetric_efficiency(*, p1_pa: float, p2_pa: float, clearance: float, n: float) -> float: ...
@overload
def cylinder_volumetric_efficiency(*, p1_pa: _Array, p2_pa: _Array, clearance: _Array, n: _Array) -> Any: ...

@overload
def cylinder_zero_delivery_pressure(*, p1_pa: float, clearance: float, n: float) -> float: ...
@overload
def cylinder_zero_delivery_pressure(*, p1_pa: _Array, clearance: _Array, n: _Array) -> Any: ...

@overload
def cylinder_clearance_from_zero_delivery(*, p1_pa: float, p_zero_pa: float, n: float) -> float: ...
@overload
def cylinder_clearance_from_zero_delivery(*, p1_pa: _Array, p_zero_pa: _Array, n: _Array) -> Any: ...

@overload
def cylinder_clearance_from_volumetric_efficiency(*, p1_pa: float, p2_pa: float, n: float, efficiency: float) -> float: ...
@overload
def cylinder_clearance_from_volumetric_efficiency(*, p1_pa: _Array, p2_pa: _Array, n: _Array, efficiency: _Array) -> Any: ...

@overload
def cylinder_mean_effective_pressure(*, p1_pa: float, p2_pa: float, clearance: float, n_compression: float, n_expansion: float) -> float: ...
@overload
def cylinder_mean_effective_pressure(*, p1_pa: _Array, p2_pa: _Array, clearance: _Array, n_compression: _Array, n_expansion: _Array) -> Any: ...

@overload
def cylinder_indicated_power(*, mep_pa: float, swept_m3: float, speed_rev_s: float) -> float: ...
@overload
def cylinder_indicated_power(*, mep_pa: _Array, swept_m3: _Array, speed_rev_s: _Array) -> Any: ...

@overload
def cylinder_piston_speed(*, stroke_m: float, speed_rev_s: float) -> float: ...
@overload
def cylinder_piston_speed(*, stroke_m: _Array, speed_rev_s: _Array) -> Any: ...

def delivery_of_stage(*, stage: DeliveryStage) -> DeliveryResult: ...

@overload
def delivery_free_air(*, swept_m3: float, speed_rev_s: float, efficiency: float, p1_pa: float, t1_k: float, p_free_pa: float, t_free_k: float) -> float: ...
@overload
def delivery_free_air(*, swept_m3: _Array, speed_rev_s: _Array, efficiency: _Array, p1_pa: _Array, t1_k: _Array, p_free_pa: _Array, t_free_k: _Array) -> Any: ...

@overload
def delivery_volumetric_efficiency(*, flow_m3_s: float, swept_m3: float, speed_rev_s: float) -> float: ...
@overload
def delivery_volumetric_efficiency(*, flow_m3_s: _Array, swept_m3: _Array, speed_rev_s: _Array) -> Any: ...

@overload
def delivery_bore_from_stroke(*, flow_m3_s: float, efficiency: float, stroke_m: float, speed_rev_s: float, strokes: int) -> float: ...
@overload
def delivery_bore_from_stroke(*, flow_m3_s: _Array, efficiency: _Array, stroke_m: _Array, speed_rev_s: _Array, strokes: _Array) -> Any: ...

@overload
def delivery_bore_from_stroke_ratio(*, flow_m3_s: float, efficiency: float, stroke_ratio: float, speed_rev_s: float, strokes: int) -> float: ...
@overload
def delivery_bore_from_stroke_ratio(*, flow_m3_s: _Array, efficiency: _Array, stroke_ratio: _Array, speed_rev_s: _Array, strokes: _Array) -> Any: ...

@overload
def intercooler_effectiveness(*, arrangement: int, ntu: float, ratio: float) -> float: ...
@overload
def intercooler_effectiveness(*, arrangement: _Array, ntu: _Array, ratio: _Array) -> Any: ...

@overload
def intercooler_ntu(*, arrangement: int, effectiveness: float, ratio: float) -> float: ...
@overload
def intercooler_ntu(*, arrangement: _Array, effectiveness: _Array, ratio: _Array) -> Any: ...

class IntercoolerOutletResult(NamedTuple):
    air_out_k: float
    coolant_out_k: float
    heat_w: float
    effectiveness: float

@overload
def intercooler_outlet(*, arrangement: int, ua_w_k: float, air_w_k: float, air_in_k: float, coolant_w_k: float, coolant_in_k: float) -> IntercoolerOutletResult: ...
@overload
def intercooler_outlet(*, arrangement: _Array, ua_w_k: _Array, air_w_k: _Array, air_in_k: _Array, coolant_w_k: _Array, coolant_in_k: _Array) -> Any: ...

class IntercoolerSizeFromReadingsResult(NamedTuple):
    ua_w_k: float
    heat_w: float

@overload
def intercooler_size_from_readings(*, arrangement: int, air_w_k: float, air_in_k: float, air_out_k: float, coolant_w_k: float, coolant_in_k: float) -> IntercoolerSizeFromReadingsResult: ...
@overload
def intercooler_size_from_readings(*, arrangement: _Array, air_w_k: _Array, air_in_k: _Array, air_out_k: _Array, coolant_w_k: _Array, coolant_in_k: _Array) -> Any: ...

class IntercoolerApproachResult(NamedTuple):
    approach_k: float
    effectiveness: float

@overload
def intercooler_approach(*, air_in_k: float, air_out_k: float, coolant_in_k: float) -> IntercoolerApproachResult: ...
@overload
def intercooler_approach(*, air_in_k: _Array, air_out_k: _Array, coolant_in_k: _Array) -> Any: ...

@overload
def intercooler_mean_difference(*, difference1_k: float, difference2_k: float) -> float: ...
@overload
def intercooler_mean_difference(*, difference1_k: _Array, difference2_k: _Array) -> Any: ...

@overload
def intercooler_coolant_flow(*, heat_w: float, cp_j_kg_k: float, rise_k: float) -> float: ...
@overload
def intercooler_coolant_flow(*, heat_w: _Array, cp_j_kg_k: _Array, rise_k: _Array) -> Any: ...

class IntercoolerPressureResult(NamedTuple):
    p_pa: float
    efficiency1: float
    efficiency2: float
    delivery_m3_s: float

def intercooler_pressure(*, stages: IntercoolerStages) -> IntercoolerPressureResult: ...

class WetCoolerOutletResult(NamedTuple):
    after: CondensateFlow
    coolant_out_k: float
    heat_w: float
    effectiveness: float

@overload
def wet_cooler_outlet(*, arrangement: int, ua_w_k: float, before: CondensateFlow, p_pa: float, separation: float, coolant_w_k: float, coolant_in_k: float) -> WetCoolerOutletResult: ...
@overload
def wet_cooler_outlet(*, arrangement: _Array, ua_w_k: _Array, before: CondensateFlow, p_pa: _Array, separation: _Array, coolant_w_k: _Array, coolant_in_k: _Array) -> Any: ...

class WetCoolerSizeFromReadingsResult(NamedTuple):
    ua_w_k: float
    heat_w: float
    condensate_kg_s: float

@overload
def wet_cooler_size_from_readings(*, arrangement: int, before: CondensateFlow, p_pa: float, air_out_k: float, coolant_w_k: float, coolant_in_k: float) -> WetCoolerSizeFromReadingsResult: ...
@overload
def wet_cooler_size_from_readings(*, arrangement: _Array, before: CondensateFlow, p_pa: _Array, air_out_k: _Array, coolant_w_k: _Array, coolant_in_k: _Array) -> Any: ...

@overload
def indicator_mep_from_card(*, area_m2: float, length_m: float, scale_pa: float, scale_m: float) -> float: ...
@overload
def indicator_mep_from_card(*, area_m2: _Array, length_m: _Array, scale_pa: _Array, scale_m: _Array) -> Any: ...

class IndicatorWorkResult(NamedTuple):
    w_j: float
    mep_pa: float

def indicator_work(*, p_pa: _Sequence[float], v_m3: _Sequence[float]) -> IndicatorWorkResult: ...

class IndicatorExponentResult(NamedTuple):
    n: float
    n_uncertainty: float

def indicator_exponent(*, p_pa: _Sequence[float], v_m3: _Sequence[float]) -> IndicatorExponentResult: ...

class IndicatorIdealResult(NamedTuple):
    p_pa: _Sequence[float]
    v_m3: _Sequence[float]

def indicator_ideal(*, p1_pa: float, p2_pa: float, clearance: float, swept_m3: float, n_compression: float, n_expansion: float, points: int) -> IndicatorIdealResult: ...

@overload
def crank_position(*, stroke_m: float, rod_length_m: float, angle_rad: float) -> float: ...
@overload
def crank_position(*, stroke_m: _Array, rod_length_m: _Array, angle_rad: _Array) -> Any: ...

@overload
def crank_angle_from_position(*, stroke_m: float, rod_length_m: float, position_m: float) -> float: ...
@overload
def crank_angle_from_position(*, stroke_m: _Array, rod_length_m: _Array, position_m: _Array) -> Any: ...

@overload
def crank_volume(*, bore_m: float, stroke_m: float, clearance: float, rod_length_m: float, angle_rad: float) -> float: ...
@overload
def crank_volume(*, bore_m: _Array, stroke_m: _Array, clearance: _Array, rod_length_m: _Array, angle_rad: _Array) -> Any: ...

@overload
def crank_velocity(*, stroke_m: float, rod_length_m: float, speed_rev_s: float, angle_rad: float) -> float: ...
@overload
def crank_velocity(*, stroke_m: _Array, rod_length_m: _Array, speed_rev_s: _Array, angle_rad: _Array) -> Any: ...

@overload
def crank_gas_load(*, bore_m: float, rod_diameter_m: float, p_head_pa: float, p_crank_pa: float, p_ambient_pa: float) -> float: ...
@overload
def crank_gas_load(*, bore_m: _Array, rod_diameter_m: _Array, p_head_pa: _Array, p_crank_pa: _Array, p_ambient_pa: _Array) -> Any: ...

@overload
def crank_inertia_load(*, mass_kg: float, stroke_m: float, rod_length_m: float, speed_rev_s: float, angle_rad: float) -> float: ...
@overload
def crank_inertia_load(*, mass_kg: _Array, stroke_m: _Array, rod_length_m: _Array, speed_rev_s: _Array, angle_rad: _Array) -> Any: ...

@overload
def crank_torque(*, load_n: float, stroke_m: float, rod_length_m: float, angle_rad: float) -> float: ...
@overload
def crank_torque(*, load_n: _Array, stroke_m: _Array, rod_length_m: _Array, angle_rad: _Array) -> Any: ...

def machine_complete(*, machine: Machine) -> Machine: ...

def machine_displacement(*, machine: Machine) -> float: ...

@overload
def fault_applies(*, machine: Machine, fault: int) -> int: ...
@overload
def fault_applies(*, machine: Machine, fault: _Array) -> Any: ...

class FaultApplyResult(NamedTuple):
    faulty_machine: Machine
    faulty_site: MachineSite

@overload
def fault_apply(*, machine: Machine, site: MachineSite | None = ..., fault: int, severity: float) -> FaultApplyResult: ...
@overload
def fault_apply(*, machine: Machine, site: MachineSite | None = ..., fault: _Array, severity: _Array) -> Any: ...

@overload
def cycle_point(*, machine: Machine, site: MachineSite | None = ..., receiver_pa: float, receiver_k: float | None = ..., accuracy: float | None = ...) -> CycleResult: ...
@overload
def cycle_point(*, machine: Machine, site: MachineSite | None = ..., receiver_pa: _Array, receiver_k: _Array | None = ..., accuracy: _Array | None = ...) -> Any: ...

class CycleCardResult(NamedTuple):
    v_m3: _Sequence[float]
    p_pa: _Sequence[float]
    t_k: _Sequence[float]

def cycle_card(*, machine: Machine, site: MachineSite | None = ..., receiver_pa: float, receiver_k: float | None = ..., accuracy: float | None = ..., cylinder: int, n: int) -> CycleCardResult: ...

class PredictionPumpupResult(NamedTuple):
    result: PredictionResult
    t_s: _Sequence[float]
    p_pa: _Sequence[float]
    gas_k: _Sequence[float]
    delivery_m3_s: _Sequence[float]

def prediction_pumpup(*, machine: Machine, site: MachineSite | None = ..., run: PredictionRun, n: int) -> PredictionPumpupResult: ...

class PredictionTimesResult(NamedTuple):
    result: PredictionResult
    t_s: _Sequence[float]

def prediction_times(*, machine: Machine, site: MachineSite | None = ..., run: PredictionRun, p_pa: _Sequence[float]) -> PredictionTimesResult: ...

@overload
def prediction_level_off(*, machine: Machine, site: MachineSite | None = ..., upper_pa: float | None = ...) -> float: ...
@overload
def prediction_level_off(*, machine: Machine, site: MachineSite | None = ..., upper_pa: _Array | None = ...) -> Any: ...

class PredictionLeakDownResult(NamedTuple):
    t_s: _Sequence[float]
    p_pa: _Sequence[float]

def prediction_leak_down(*, machine: Machine, site: MachineSite | None = ..., from_pa: float, gas_k: float | None = ..., wall_k: float | None = ..., duration_s: float, with_check_valve: int, with_downstream: int, n: int) -> PredictionLeakDownResult: ...

class RatingCompleteResult(NamedTuple):
    complete: Machine
    adjusted: int
    delivery_m3_s: float

def rating_complete(*, machine: Machine, site: MachineSite | None = ...) -> RatingCompleteResult: ...

def pumpup_analyse(*, test: PumpupTest) -> PumpupResult: ...

def pumpup_analyse_table(*, test: PumpupTest, t_s: _Sequence[float], p_pa: _Sequence[float]) -> PumpupResult: ...

def expectation_of_run(*, test: PumpupTest, machine: ExpectationMachine) -> ExpectationResult: ...

class ExpectationTimesResult(NamedTuple):
    t_s: _Sequence[float]
    t_uncertainty_s: _Sequence[float]

def expectation_times(*, test: PumpupTest, machine: ExpectationMachine, p_pa: _Sequence[float]) -> ExpectationTimesResult: ...

class ExpectationCompareResult(NamedTuple):
    ratio: float
    ratio_uncertainty: float
    verdict: int

@overload
def expectation_compare(*, found_m3_s: float, found_uncertainty_m3_s: float, expected_m3_s: float, expected_uncertainty_m3_s: float, required_ratio: float, confidence: float) -> ExpectationCompareResult: ...
@overload
def expectation_compare(*, found_m3_s: _Array, found_uncertainty_m3_s: _Array, expected_m3_s: _Array, expected_uncertainty_m3_s: _Array, required_ratio: _Array, confidence: _Array) -> Any: ...

def pumpup_curve_shape_from_readings(*, t_s: _Sequence[float], p_pa: _Sequence[float], reading_uncertainty_pa: float | None = ...) -> PumpupCurveShape: ...

def pressure_log_segment(*, t_s: _Sequence[float], p_pa: _Sequence[float], state: _Sequence[int] | None = ..., options: PressureLogOptions | None = ..., phases_capacity: int | None = ...) -> _Sequence[PressureLogPhase]: ...

def pressure_log_state_from_current(*, current_a: _Sequence[float], stopped_below_a: float, loaded_above_a: float | None = ...) -> _Sequence[int]: ...

class PressureLogCurrentLevelsResult(NamedTuple):
    stopped_below_a: float
    loaded_above_a: float

def pressure_log_current_levels(*, current_a: _Sequence[float]) -> PressureLogCurrentLevelsResult: ...

def pressure_log_state_from_switch(*, signal: _Sequence[float], when_high: int, when_low: int) -> _Sequence[int]: ...

def duty_from_phases(*, phases: _Sequence[PressureLogPhase], options: PressureLogOptions | None = ...) -> DutySummary: ...

class OutlookReadingsResult(NamedTuple):
    result: PredictionResult
    t_s: _Sequence[float]
    points: _Sequence[CycleResult]

def outlook_readings(*, machine: Machine, site: MachineSite | None = ..., run: PredictionRun, p_pa: _Sequence[float]) -> OutlookReadingsResult: ...

@overload
def evidence_find(*, kind: int, name: str) -> int: ...
@overload
def evidence_find(*, kind: _Array, name: str) -> Any: ...

class EvidenceReadingsGetResult(NamedTuple):
    value: float
    uncertainty: float

@overload
def evidence_readings_get(*, readings: EvidenceReadings | None = ..., reading: int) -> EvidenceReadingsGetResult: ...
@overload
def evidence_readings_get(*, readings: EvidenceReadings | None = ..., reading: _Array) -> Any: ...

class EvidenceReadingsCheckResult(NamedTuple):
    reading: int
    n_taken: int

def evidence_readings_check(*, readings: EvidenceReadings | None = ...) -> EvidenceReadingsCheckResult: ...

@overload
def likelihood_prior(*, cause: int) -> float: ...
@overload
def likelihood_prior(*, cause: _Array) -> Any: ...

class LikelihoodSizeResult(NamedTuple):
    size: float
    cost: float
    two_sided: int

@overload
def likelihood_size(*, cause: int) -> LikelihoodSizeResult: ...
@overload
def likelihood_size(*, cause: _Array) -> Any: ...

class LikelihoodObservationResult(NamedTuple):
    hit: float
    false_alarm: float
    basis: int

@overload
def likelihood_observation(*, cause: int, observation: int) -> LikelihoodObservationResult: ...
@overload
def likelihood_observation(*, cause: _Array, observation: _Array) -> Any: ...

class LikelihoodReadingResult(NamedTuple):
    slope: float
    limit: float
    spread: float
    basis: int

@overload
def likelihood_reading(*, cause: int, reading: int) -> LikelihoodReadingResult: ...
@overload
def likelihood_reading(*, cause: _Array, reading: _Array) -> Any: ...

class LikelihoodSpreadResult(NamedTuple):
    u_found: float
    u_expected: float
    expected: float
    wide: float
    affected: float
    scale: int

@overload
def likelihood_spread(*, reading: int) -> LikelihoodSpreadResult: ...
@overload
def likelihood_spread(*, reading: _Array) -> Any: ...

class LikelihoodDeviationResult(NamedTuple):
    deviation: float
    spread: float

@overload
def likelihood_deviation(*, reading: int, found: float, u_found: float | None = ..., expected: float | None = ..., u_expected: float | None = ..., reference: float | None = ...) -> LikelihoodDeviationResult: ...
@overload
def likelihood_deviation(*, reading: _Array, found: _Array, u_found: _Array | None = ..., expected: _Array | None = ..., u_expected: _Array | None = ..., reference: _Array | None = ...) -> Any: ...

class LikelihoodLevelOffResult(NamedTuple):
    rate: float
    centre_pa: float
    spread: float

@overload
def likelihood_level_off(*, cause: int) -> LikelihoodLevelOffResult: ...
@overload
def likelihood_level_off(*, cause: _Array) -> Any: ...

@overload
def likelihood_density(*, residual: float) -> float: ...
@overload
def likelihood_density(*, residual: _Array) -> Any: ...

@overload
def likelihood_update(*, prior: float, hit: float, false_alarm: float, answer: int) -> float: ...
@overload
def likelihood_update(*, prior: _Array, hit: _Array, false_alarm: _Array, answer: _Array) -> Any: ...

@overload
def likelihood_information(*, prior: float, hit: float, false_alarm: float) -> float: ...
@overload
def likelihood_information(*, prior: _Array, hit: _Array, false_alarm: _Array) -> Any: ...

@overload
def diagnosis_subject_cause(*, subject: DiagnosisSubject, cause: int) -> float: ...
@overload
def diagnosis_subject_cause(*, subject: DiagnosisSubject, cause: _Array) -> Any: ...

@overload
def diagnosis_subject_reading(*, subject: DiagnosisSubject, reading: int) -> int: ...
@overload
def diagnosis_subject_reading(*, subject: DiagnosisSubject, reading: _Array) -> Any: ...

class DiagnosisExpectationFromMachineResult(NamedTuple):
    subject: DiagnosisSubject
    expected: EvidenceReadings

@overload
def diagnosis_expectation_from_machine(*, machine: Machine, site: MachineSite | None = ..., receiver_pa: float | None = ...) -> DiagnosisExpectationFromMachineResult: ...
@overload
def diagnosis_expectation_from_machine(*, machine: Machine, site: MachineSite | None = ..., receiver_pa: _Array | None = ...) -> Any: ...

def diagnosis_finding_compare(*, subject: DiagnosisSubject, expected: EvidenceReadings | None = ..., found: EvidenceReadings | None = ..., findings_capacity: int | None = ...) -> _Sequence[DiagnosisFinding]: ...

@overload
def diagnosis_finding_value(*, reading: int, expected: float, reference: float | None = ..., deviation: float) -> float: ...
@overload
def diagnosis_finding_value(*, reading: _Array, expected: _Array, reference: _Array | None = ..., deviation: _Array) -> Any: ...

class DiagnosisCheckEffortResult(NamedTuple):
    effort_s: float
    cautions: int
    qualification: int

@overload
def diagnosis_check_effort(*, check: int) -> DiagnosisCheckEffortResult: ...
@overload
def diagnosis_check_effort(*, check: _Array) -> Any: ...

def diagnosis_check_rank(*, subject: DiagnosisSubject, found: EvidenceReadings | None = ..., observation: _Sequence[int] | None = ..., answer: _Sequence[int] | None = ..., causes: _Sequence[DiagnosisCause], effort_s: _Sequence[float] | None = ..., checks_capacity: int | None = ...) -> _Sequence[DiagnosisCheck]: ...

def diagnosis_proof_judge(*, cause: int, causes: _Sequence[DiagnosisCause], findings: _Sequence[DiagnosisFinding] | None = ..., least: float | None = ..., confidence: float | None = ...) -> DiagnosisProof: ...

class DiagnosisRankResult(NamedTuple):
    causes: _Sequence[DiagnosisCause]
    reasons: _Sequence[DiagnosisReason]
    findings: _Sequence[DiagnosisFinding]
    summary: DiagnosisSummary

def diagnosis_rank(*, subject: DiagnosisSubject, expected: EvidenceReadings | None = ..., found: EvidenceReadings | None = ..., observation: _Sequence[int] | None = ..., answer: _Sequence[int] | None = ..., prior: _Sequence[float] | None = ..., options: DiagnosisOptions | None = ..., causes_capacity: int | None = ..., reasons_capacity: int | None = ..., findings_capacity: int | None = ...) -> DiagnosisRankResult: ...

class InferenceRankResult(NamedTuple):
    causes: _Sequence[DiagnosisCause]
    effects: _Sequence[InferenceEffect]
    reasons: _Sequence[DiagnosisReason]
    findings: _Sequence[DiagnosisFinding]
    summary: DiagnosisSummary

def inference_rank(*, machine: Machine, site: MachineSite | None = ..., subject: DiagnosisSubject, visit: InferenceVisit | None = ..., scatter: InferenceScatter | None = ..., expected: EvidenceReadings | None = ..., found: EvidenceReadings | None = ..., log_t_s: _Sequence[float] | None = ..., log_p_pa: _Sequence[float] | None = ..., interstage_at_pa: _Sequence[float] | None = ..., interstage_pa: _Sequence[float] | None = ..., observation: _Sequence[int] | None = ..., answer: _Sequence[int] | None = ..., prior: _Sequence[float] | None = ..., options: DiagnosisOptions | None = ..., causes_capacity: int | None = ..., effects_capacity: int | None = ..., reasons_capacity: int | None = ..., findings_capacity: int | None = ...) -> InferenceRankResult: ...

class UncertaintyPropagateResult(NamedTuple):
    y: _Sequence[float]
    u_y: _Sequence[float]
    sensitivity: _Sequence[float]

def uncertainty_propagate(*, function: str, x: _Sequence[float], u: _Sequence[float], correlation: _Sequence[float] | None = ..., n_out: int, n_sensitivity: int) -> UncertaintyPropagateResult: ...

class UncertaintyBudgetResult(NamedTuple):
    contribution: _Sequence[float]
    share: _Sequence[float]
    combined: float

def uncertainty_budget(*, sensitivity: _Sequence[float], u: _Sequence[float], correlation: _Sequence[float] | None = ...) -> UncertaintyBudgetResult: ...

class UncertaintyCovarianceResult(NamedTuple):
    covariance: _Sequence[float]
    dependence: _Sequence[float]

def uncertainty_covariance(*, sensitivity: _Sequence[float], u: _Sequence[float], correlation: _Sequence[float] | None = ..., n_square: int) -> UncertaintyCovarianceResult: ...

class UncertaintySecondOrderResult(NamedTuple):
    combined: float
    shift: float

def uncertainty_second_order(*, first: _Sequence[float], u: _Sequence[float], second: _Sequence[float], third: _Sequence[float]) -> UncertaintySecondOrderResult: ...

class UncertaintyPropagateSecondOrderResult(NamedTuple):
    y: _Sequence[float]
    u_y: _Sequence[float]
    shift: _Sequence[float]

def uncertainty_propagate_second_order(*, function: str, x: _Sequence[float], u: _Sequence[float], n_out: int) -> UncertaintyPropagateSecondOrderResult: ...

class MonteCarloIntervalResult(NamedTuple):
    ordered: _Sequence[float]
    low: float
    high: float
    low_error: float
    high_error: float

def monte_carlo_interval(*, y: _Sequence[float], probability: float, interval: int) -> MonteCarloIntervalResult: ...

def monte_carlo_draw(*, x: _Sequence[float], u: _Sequence[float], distribution: _Sequence[int], nu: _Sequence[float], correlation: _Sequence[float] | None = ..., seed: int, first: int, n_sample: int) -> _Sequence[float]: ...

class MonteCarloPropagateResult(NamedTuple):
    y: _Sequence[float]
    failed: int

def monte_carlo_propagate(*, function: str, x: _Sequence[float], u: _Sequence[float], distribution: _Sequence[int], nu: _Sequence[float], correlation: _Sequence[float] | None = ..., seed: int, first: int, output: int, n: int) -> MonteCarloPropagateResult: ...

class MonteCarloSummaryResult(NamedTuple):
    mean: float
    u_y: float
    mean_error: float
    u_error: float
    skewness: float

def monte_carlo_summary(*, y: _Sequence[float]) -> MonteCarloSummaryResult: ...

@overload
def monte_carlo_tolerance(*, u_y: float, digits: int) -> float: ...
@overload
def monte_carlo_tolerance(*, u_y: _Array, digits: _Array) -> Any: ...

def status_name(*, status: int) -> str: ...

def status_text(*, status: int) -> str: ...

def version_number() -> int: ...

def version_text() -> str: ...

def caution_text(*, caution: int) -> str: ...

def caution_name(*, caution: int) -> str: ...

def units_si_symbol(*, symbol: str) -> str: ...

def units_count() -> int: ...

def units_symbol_at(*, i: int) -> str: ...

def units_name_at(*, i: int) -> str: ...

def units_si_symbol_at(*, i: int) -> str: ...

def reference_name(*, state: int) -> str: ...

def reference_text(*, state: int) -> str: ...

def fault_count() -> int: ...

def fault_name(*, fault: int) -> str: ...

def evidence_count(*, kind: int) -> int: ...

def evidence_name(*, kind: int, code: int) -> str: ...

def evidence_title(*, kind: int, code: int) -> str: ...

def evidence_text(*, kind: int, code: int) -> str: ...

def evidence_remedy(*, cause: int) -> str: ...

def evidence_proof(*, cause: int) -> str: ...

def evidence_check_for(*, kind: int, code: int) -> int: ...

def likelihood_cautions(*, cause: int) -> int: ...
