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
    stages: int
    arrangement: int
    lp_cylinders: int
    hp_cylinders: int
    lp_leaking_cylinders: int
    hp_leaking_cylinders: int
    def __init__(self, *, speed_rev_s: float | None = ..., lp_bore_m: float | None = ..., hp_bore_m: float | None = ..., lp_stroke_m: float | None = ..., hp_stroke_m: float | None = ..., rod_ratio: float | None = ..., lp_clearance: float | None = ..., hp_clearance: float | None = ..., phase_rad: float | None = ..., lp_spread_rad: float | None = ..., hp_spread_rad: float | None = ..., lp_suction_area_m2: float | None = ..., lp_suction_leak_m2: float | None = ..., lp_suction_lift_pa: float | None = ..., lp_discharge_area_m2: float | None = ..., lp_discharge_leak_m2: float | None = ..., lp_discharge_lift_pa: float | None = ..., hp_suction_area_m2: float | None = ..., hp_suction_leak_m2: float | None = ..., hp_suction_lift_pa: float | None = ..., hp_discharge_area_m2: float | None = ..., hp_discharge_leak_m2: float | None = ..., hp_discharge_lift_pa: float | None = ..., check_valve_area_m2: float | None = ..., check_valve_leak_m2: float | None = ..., check_valve_lift_pa: float | None = ..., filter_area_m2: float | None = ..., plenum_m3: float | None = ..., intercooler_m3: float | None = ..., intercooler_ua_w_k: float | None = ..., intercooler_area_m2: float | None = ..., relief_set_pa: float | None = ..., relief_area_m2: float | None = ..., intercooler_leak_m2: float | None = ..., line_m3: float | None = ..., line_ua_w_k: float | None = ..., unloader_leak_m2: float | None = ..., lp_wall_ua_w_k: float | None = ..., hp_wall_ua_w_k: float | None = ..., suction_ua_w_k: float | None = ..., lp_ring_area_m2: float | None = ..., hp_ring_area_m2: float | None = ..., crankcase_k: float | None = ..., heat_coefficient: float | None = ..., heat_exponent: float | None = ..., gasket_breach_m2: float | None = ..., lp_gasket_leak_m2: float | None = ..., hp_gasket_leak_m2: float | None = ..., fmep_pa: float | None = ..., belt_efficiency: float | None = ..., belt_slip: float | None = ..., pulley_ratio: float | None = ..., motor_synchronous_rev_s: float | None = ..., motor_rated_slip: float | None = ..., motor_rated_v: float | None = ..., motor_rated_w: float | None = ..., motor_torque_factor: float | None = ..., receiver_m3: float | None = ..., receiver_water_m3: float | None = ..., receiver_wall_j_k: float | None = ..., receiver_gas_ua_w_k: float | None = ..., receiver_wall_ua_w_k: float | None = ..., downstream_leak_m2: float | None = ..., demand_m3_s: float | None = ..., cut_in_pa: float | None = ..., cut_out_pa: float | None = ..., switch_error_pa: float | None = ..., gauge_error_pa: float | None = ..., rated_delivery_m3_s: float | None = ..., rated_pa: float | None = ..., gas_constant_j_kg_k: float | None = ..., heat_capacity_ratio: float | None = ..., stages: int | None = ..., arrangement: int | None = ..., lp_cylinders: int | None = ..., hp_cylinders: int | None = ..., lp_leaking_cylinders: int | None = ..., hp_leaking_cylinders: int | None = ...) -> None: ...

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
def fault_apply(*, machine: Machine, site: MachineSite, fault: int, severity: float) -> FaultApplyResult: ...
@overload
def fault_apply(*, machine: Machine, site: MachineSite, fault: _Array, severity: _Array) -> Any: ...

@overload
def cycle_point(*, machine: Machine, site: MachineSite, receiver_pa: float, receiver_k: float | None = ..., accuracy: float | None = ...) -> CycleResult: ...
@overload
def cycle_point(*, machine: Machine, site: MachineSite, receiver_pa: _Array, receiver_k: _Array | None = ..., accuracy: _Array | None = ...) -> Any: ...

class CycleCardResult(NamedTuple):
    v_m3: _Sequence[float]
    p_pa: _Sequence[float]
    t_k: _Sequence[float]

def cycle_card(*, machine: Machine, site: MachineSite, receiver_pa: float, receiver_k: float | None = ..., accuracy: float | None = ..., cylinder: int, n: int) -> CycleCardResult: ...

class PredictionPumpupResult(NamedTuple):
    result: PredictionResult
    t_s: _Sequence[float]
    p_pa: _Sequence[float]
    gas_k: _Sequence[float]
    delivery_m3_s: _Sequence[float]

def prediction_pumpup(*, machine: Machine, site: MachineSite, run: PredictionRun, n: int) -> PredictionPumpupResult: ...

class PredictionTimesResult(NamedTuple):
    result: PredictionResult
    t_s: _Sequence[float]

def prediction_times(*, machine: Machine, site: MachineSite, run: PredictionRun, p_pa: _Sequence[float]) -> PredictionTimesResult: ...

@overload
def prediction_level_off(*, machine: Machine, site: MachineSite, upper_pa: float | None = ...) -> float: ...
@overload
def prediction_level_off(*, machine: Machine, site: MachineSite, upper_pa: _Array | None = ...) -> Any: ...

class PredictionLeakDownResult(NamedTuple):
    t_s: _Sequence[float]
    p_pa: _Sequence[float]

def prediction_leak_down(*, machine: Machine, site: MachineSite, from_pa: float, gas_k: float | None = ..., wall_k: float | None = ..., duration_s: float, with_check_valve: int, with_downstream: int, n: int) -> PredictionLeakDownResult: ...

class RatingCompleteResult(NamedTuple):
    complete: Machine
    adjusted: int
    delivery_m3_s: float

def rating_complete(*, machine: Machine, site: MachineSite) -> RatingCompleteResult: ...

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
