/* SPDX-License-Identifier: MIT */
/* Written by bindings/generate; do not edit. */
#include <freeair/freeair.h>

#include <math.h>

#include "internal/describe.h"

static const freeair_structure structure_freeair_dry_air_properties;
static const freeair_structure structure_freeair_enhancement_coefficients;
static const freeair_structure structure_freeair_moist_air_properties;
static const freeair_structure structure_freeair_capacitor_motor_windings;
static const freeair_structure structure_freeair_capacitor_motor_performance;
static const freeair_structure structure_freeair_blowdown_vessel;
static const freeair_structure structure_freeair_delivery_stage;
static const freeair_structure structure_freeair_delivery_result;
static const freeair_structure structure_freeair_machine;
static const freeair_structure structure_freeair_machine_site;
static const freeair_structure structure_freeair_cycle_result;
static const freeair_structure structure_freeair_prediction_run;
static const freeair_structure structure_freeair_prediction_result;
static const freeair_structure structure_freeair_pumpup_test;
static const freeair_structure structure_freeair_pumpup_result;
static const freeair_structure structure_freeair_expectation_machine;
static const freeair_structure structure_freeair_expectation_result;
static const freeair_structure structure_freeair_pumpup_curve_shape;
static const freeair_structure structure_freeair_pressure_log_options;
static const freeair_structure structure_freeair_pressure_log_phase;
static const freeair_structure structure_freeair_duty_summary;
static const freeair_structure structure_freeair_evidence_readings;
static const freeair_structure structure_freeair_diagnosis_subject;
static const freeair_structure structure_freeair_diagnosis_finding;
static const freeair_structure structure_freeair_diagnosis_cause;
static const freeair_structure structure_freeair_diagnosis_check;
static const freeair_structure structure_freeair_diagnosis_options;
static const freeair_structure structure_freeair_diagnosis_reason;
static const freeair_structure structure_freeair_diagnosis_summary;
static const freeair_structure structure_freeair_inference_visit;
static const freeair_structure structure_freeair_inference_scatter;
static const freeair_structure structure_freeair_inference_effect;

static const freeair_parameter fields_freeair_dry_air_properties[] = {
    {"struct_size", "Bytes of this structure, set by the initialiser.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Must be 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"compressibility_factor", "Z = p/(rho R T).", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"h_j_kg", "Enthalpy; 0 at 273.15 K and 101325 Pa.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"s_j_kg_k", "Entropy; 0 at 273.15 K and 101325 Pa.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"u_j_kg", "Internal energy, h - p/rho.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"cp_j_kg_k", "Heat capacity at constant pressure.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"cv_j_kg_k", "Heat capacity at constant volume.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"heat_capacity_ratio", "cp/cv.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"isentropic_exponent", "Of p v^k along an isentrope here: rho w^2/p. Equal to cp/cv in an ideal gas.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"speed_of_sound_m_s", "Speed of sound w.", "m/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 96u, sizeof(double), -1, -1},
    {"joule_thomson_k_pa", "Temperature change by pressure at constant enthalpy.", "K/Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 104u, sizeof(double), -1, -1},
    {"expansion_1_k", "Isobaric expansion coefficient, 1/T in an ideal gas.", "1/K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 112u, sizeof(double), -1, -1},
    {"compressibility_1_pa", "Isothermal compressibility, 1/p in an ideal gas.", "1/Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 120u, sizeof(double), -1, -1},
    {"viscosity_pas", "Dynamic viscosity, by freeair_dry_air_transport_viscosity().", "Pa s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 128u, sizeof(double), -1, -1},
    {"conductivity_w_m_k", "Thermal conductivity, by freeair_dry_air_transport_conductivity().", "W/(m K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 136u, sizeof(double), -1, -1},
    {"prandtl_number", "viscosity cp/conductivity.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 144u, sizeof(double), -1, -1},
};

static const freeair_dry_air_properties initial_freeair_dry_air_properties = FREEAIR_DRY_AIR_PROPERTIES_INIT;

static const freeair_structure structure_freeair_dry_air_properties = {
    "freeair_dry_air_properties", fields_freeair_dry_air_properties, &initial_freeair_dry_air_properties, sizeof(freeair_dry_air_properties), 152u, 20u};

static const freeair_parameter fields_freeair_enhancement_coefficients[] = {
    {"struct_size", "Bytes of this structure, set by the initialiser.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Must be 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"b_aa_m3_mol", "Second, air and air.", "m3/mol", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"b_aw_m3_mol", "Second, air and water.", "m3/mol", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"b_ww_m3_mol", "Second, water and water.", "m3/mol", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"c_aaa_m6_mol2", "Third, air alone.", "m6/mol2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"c_aaw_m6_mol2", "Third, two of air and one of water.", "m6/mol2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"c_aww_m6_mol2", "Third, one of air and two of water.", "m6/mol2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"c_www_m6_mol2", "Third, water alone.", "m6/mol2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
};

static const freeair_enhancement_coefficients initial_freeair_enhancement_coefficients = FREEAIR_ENHANCEMENT_COEFFICIENTS_INIT;

static const freeair_structure structure_freeair_enhancement_coefficients = {
    "freeair_enhancement_coefficients", fields_freeair_enhancement_coefficients, &initial_freeair_enhancement_coefficients, sizeof(freeair_enhancement_coefficients), 64u, 9u};

static const freeair_parameter fields_freeair_moist_air_properties[] = {
    {"struct_size", "Bytes of this structure, set by the initialiser.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Must be 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"humidity_ratio", "Mass of vapour by mass of dry air.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"mole_fraction", "Moles of vapour in a mole of moist air.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"compressibility_factor", "Z = p/(rho R T) with the gas constant of the mixture.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"h_j_kg", "Enthalpy.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"s_j_kg_k", "Entropy.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"u_j_kg", "Internal energy.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"cp_j_kg_k", "Heat capacity at constant pressure, no water condensing.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"cv_j_kg_k", "Heat capacity at constant volume.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"heat_capacity_ratio", "cp/cv.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 96u, sizeof(double), -1, -1},
    {"isentropic_exponent", "Of p v^k along an isentrope here: rho w^2/p.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 104u, sizeof(double), -1, -1},
    {"speed_of_sound_m_s", "Speed of sound w.", "m/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 112u, sizeof(double), -1, -1},
    {"joule_thomson_k_pa", "Temperature change by pressure at constant enthalpy.", "K/Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 120u, sizeof(double), -1, -1},
    {"h_dry_j_kg", "Enthalpy of the moist air that holds one kilogram of dry air.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 128u, sizeof(double), -1, -1},
    {"v_dry_m3_kg", "Volume of the moist air that holds one kilogram of dry air.", "m3/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 136u, sizeof(double), -1, -1},
};

static const freeair_moist_air_properties initial_freeair_moist_air_properties = FREEAIR_MOIST_AIR_PROPERTIES_INIT;

static const freeair_structure structure_freeair_moist_air_properties = {
    "freeair_moist_air_properties", fields_freeair_moist_air_properties, &initial_freeair_moist_air_properties, sizeof(freeair_moist_air_properties), 144u, 19u};

static const freeair_parameter fields_freeair_capacitor_motor_windings[] = {
    {"struct_size", "Size of the structure that the caller knows.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Must be 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"main_r_ohm", "Resistance of the main winding.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"main_x_ohm", "Leakage reactance of the main winding.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"auxiliary_r_ohm", "Resistance of the auxiliary winding, with the capacitor's own.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"auxiliary_x_ohm", "Leakage reactance of the auxiliary winding.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"turns_ratio", "Effective turns of the auxiliary winding over the main.", "1", "[0.01;100]", "", "", NULL, 0.01, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"rotor_r_ohm", "Rotor resistance.", "ohm", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"rotor_x_ohm", "Rotor leakage reactance.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"magnetising_x_ohm", "Magnetising reactance.", "ohm", "[0.01;10000]", "", "", NULL, 0.01, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
};

static const freeair_capacitor_motor_windings initial_freeair_capacitor_motor_windings = FREEAIR_CAPACITOR_MOTOR_WINDINGS_INIT;

static const freeair_structure structure_freeair_capacitor_motor_windings = {
    "freeair_capacitor_motor_windings", fields_freeair_capacitor_motor_windings, &initial_freeair_capacitor_motor_windings, sizeof(freeair_capacitor_motor_windings), 72u, 10u};

static const freeair_parameter fields_freeair_capacitor_motor_performance[] = {
    {"struct_size", "Size of the structure that the caller knows.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Must be 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"torque_nm", "Torque across the air gap; friction, windage and iron loss are still to come off.", "N m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"mechanical_w", "That torque times the shaft speed.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"input_w", "Power from the supply, iron loss neglected.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"power_factor", "Power factor of the line current; leading is not told from lagging.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"line_a", "Line current.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"main_a", "Current of the main winding.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"auxiliary_a", "Current of the auxiliary winding, through the capacitor.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"capacitor_v", "Voltage across the capacitor; with the winding open, across the gap.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
};

static const freeair_capacitor_motor_performance initial_freeair_capacitor_motor_performance = FREEAIR_CAPACITOR_MOTOR_PERFORMANCE_INIT;

static const freeair_structure structure_freeair_capacitor_motor_performance = {
    "freeair_capacitor_motor_performance", fields_freeair_capacitor_motor_performance, &initial_freeair_capacitor_motor_performance, sizeof(freeair_capacitor_motor_performance), 72u, 10u};

static const freeair_parameter fields_freeair_blowdown_vessel[] = {
    {"struct_size", "Bytes of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Zero.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"v_m3", "Volume of the vessel.", "m3", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"area_m2", "Effective area, discharge coefficient times area.", "m2", "[1e-15;10]", "", "", NULL, 1e-15, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"p_vessel_pa", "Pressure in the vessel at the start, absolute.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"p_line_pa", "Constant pressure beyond the orifice, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"t_k", "Temperature before the orifice at the start: of the vessel, or of the line that fills it.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"exponent", "Exponent of the change of state in the vessel, 1 to k.", "1", "[1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "1.4", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "287.05287", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
};

static const freeair_blowdown_vessel initial_freeair_blowdown_vessel = FREEAIR_BLOWDOWN_VESSEL_INIT;

static const freeair_structure structure_freeair_blowdown_vessel = {
    "freeair_blowdown_vessel", fields_freeair_blowdown_vessel, &initial_freeair_blowdown_vessel, sizeof(freeair_blowdown_vessel), 72u, 10u};

static const freeair_parameter fields_freeair_delivery_stage[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"swept_m3", "Swept volume of a revolution, all cylinders and ends.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"clearance", "Clearance as a fraction of the swept volume.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the inlet, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"t1_k", "Temperature at the inlet.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the outlet, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"p_free_pa", "Pressure of the free air, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"t_free_k", "Temperature of the free air.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 72u, sizeof(double), -1, -1},
    {"n_expansion", "Exponent of re-expansion.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 80u, sizeof(double), -1, -1},
    {"n_compression", "Exponent of compression.", "1", "[0.5;10]", "n_expansion", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 88u, sizeof(double), -1, -1},
    {"t_cylinder_k", "Temperature of the fresh charge in the cylinder.", "K", "[1;5000]", "t1_k", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 96u, sizeof(double), -1, -1},
    {"suction_drop_pa", "Pressure lost from inlet to cylinder.", "Pa", "[0;1e8]", "0", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 104u, sizeof(double), -1, -1},
    {"discharge_drop_pa", "Pressure lost from cylinder to outlet.", "Pa", "[0;1e8]", "0", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 112u, sizeof(double), -1, -1},
    {"leakage", "Fraction of the induced air that leaks back.", "1", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 120u, sizeof(double), -1, -1},
};

static const freeair_delivery_stage initial_freeair_delivery_stage = FREEAIR_DELIVERY_STAGE_INIT;

static const freeair_structure structure_freeair_delivery_stage = {
    "freeair_delivery_stage", fields_freeair_delivery_stage, &initial_freeair_delivery_stage, sizeof(freeair_delivery_stage), 128u, 17u};

static const freeair_parameter fields_freeair_delivery_result[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"fad_m3_s", "Free air delivery.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"m_kg_s", "Mass flow delivered.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"inlet_m3_s", "Delivery as a flow at the inlet state.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"efficiency_cylinder", "Volumetric efficiency at the state in the cylinder: re-expansion alone.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"efficiency_inlet", "Volumetric efficiency at the inlet state: heating, valves and leakage included.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"efficiency_free", "Volumetric efficiency at the state of free air.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"mep_pa", "Indicated mean effective pressure, valve losses included.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"indicated_w", "Indicated power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
};

static const freeair_delivery_result initial_freeair_delivery_result = FREEAIR_DELIVERY_RESULT_INIT;

static const freeair_structure structure_freeair_delivery_result = {
    "freeair_delivery_result", fields_freeair_delivery_result, &initial_freeair_delivery_result, sizeof(freeair_delivery_result), 72u, 10u};

static const freeair_parameter fields_freeair_machine[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"speed_rev_s", "Pump speed with the motor at rated slip and a belt that does not slip.", "rev/s", "(0;100]", "motor speed at rated slip times pulley_ratio; one of the two is required", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"lp_bore_m", "Bore of the first (or only) stage.", "m", "(0;2]", "none, required; freeair_rating_complete can find it", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"hp_bore_m", "Bore of the second stage.", "m", "(0;2]", "0.55 lp_bore_m", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"lp_stroke_m", "Stroke of the first stage. Required.", "m", "(0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"hp_stroke_m", "Stroke of the second stage.", "m", "(0;2]", "lp_stroke_m", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"rod_ratio", "Crank radius over connecting-rod length.", "1", "[0;0.9]", "0.25", "", NULL, 0.0, 0.9, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"lp_clearance", "Clearance volume over swept volume, first stage.", "1", "(0;0.5]", "0.05", "", NULL, 0.0, 0.5, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"hp_clearance", "Clearance volume over swept volume, second stage.", "1", "(0;0.5]", "0.07", "", NULL, 0.0, 0.5, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
    {"phase_rad", "Crank angle by which the second cylinder lags the first.", "rad", "[-6.3;6.3]", "pi/2 in a V, pi side by side", "", NULL, -6.3, 6.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 72u, sizeof(double), -1, -1},
    {"lp_spread_rad", "Lag between successive cylinders of the first stage.", "rad", "[-6.3;6.3]", "phase_rad for a single stage of two cylinders, else 2 pi / lp_cylinders", "", NULL, -6.3, 6.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 80u, sizeof(double), -1, -1},
    {"hp_spread_rad", "Lag between successive cylinders of the second stage.", "rad", "[-6.3;6.3]", "2 pi / hp_cylinders", "", NULL, -6.3, 6.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 88u, sizeof(double), -1, -1},
    {"lp_suction_area_m2", "Effective area of a fully open suction valve, first stage.", "m2", "(0;1]", "piston area times mean piston speed / (50 m/s)", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 96u, sizeof(double), -1, -1},
    {"lp_suction_leak_m2", "Effective area open, either way, when it should be shut.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 104u, sizeof(double), -1, -1},
    {"lp_suction_lift_pa", "Pressure difference at which it is fully open.", "Pa", "(0;1e7]", "3 % of the nominal suction pressure", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 112u, sizeof(double), -1, -1},
    {"lp_discharge_area_m2", "As above, discharge valve of the first stage.", "m2", "(0;1]", "piston area times mean piston speed / (60 m/s)", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 120u, sizeof(double), -1, -1},
    {"lp_discharge_leak_m2", "As above.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 128u, sizeof(double), -1, -1},
    {"lp_discharge_lift_pa", "As above.", "Pa", "(0;1e7]", "3 % of the nominal discharge pressure", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 136u, sizeof(double), -1, -1},
    {"hp_suction_area_m2", "As above, suction valve of the second stage.", "m2", "(0;1]", "piston area times mean piston speed / (50 m/s)", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 144u, sizeof(double), -1, -1},
    {"hp_suction_leak_m2", "As above.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 152u, sizeof(double), -1, -1},
    {"hp_suction_lift_pa", "As above.", "Pa", "(0;1e7]", "3 % of the nominal interstage pressure", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 160u, sizeof(double), -1, -1},
    {"hp_discharge_area_m2", "As above, discharge valve of the second stage.", "m2", "(0;1]", "piston area times mean piston speed / (60 m/s)", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 168u, sizeof(double), -1, -1},
    {"hp_discharge_leak_m2", "As above.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 176u, sizeof(double), -1, -1},
    {"hp_discharge_lift_pa", "As above.", "Pa", "(0;1e7]", "3 % of cut_out_pa", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 184u, sizeof(double), -1, -1},
    {"check_valve_area_m2", "Effective area of the open receiver check valve.", "m2", "(0;1]", "all discharge valves of the last stage together", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 192u, sizeof(double), -1, -1},
    {"check_valve_leak_m2", "Effective area that stays open when it should be shut.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 200u, sizeof(double), -1, -1},
    {"check_valve_lift_pa", "Pressure difference at which it is fully open.", "Pa", "(0;1e7]", "1e4", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 208u, sizeof(double), -1, -1},
    {"filter_area_m2", "Effective area of the intake filter.", "m2", "(0;10]", "displacement times pi / (41 m/s)", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 216u, sizeof(double), -1, -1},
    {"plenum_m3", "Volume between filter and first-stage suction valves.", "m3", "(0;10]", "half the swept volume of the first stage", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 224u, sizeof(double), -1, -1},
    {"intercooler_m3", "Volume between the stages.", "m3", "(0;10]", "1.5 swept volumes of the first stage", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 232u, sizeof(double), -1, -1},
    {"intercooler_ua_w_k", "Heat transfer of the intercooler to ambient.", "W/K", "[0;1e6]", "1.7 times the nominal heat capacity flow", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 240u, sizeof(double), -1, -1},
    {"intercooler_area_m2", "Effective area of its flow resistance, in series with each second-stage suction valve.", "m2", "(0;10]", "1.5 hp_suction_area_m2", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 248u, sizeof(double), -1, -1},
    {"relief_set_pa", "Absolute pressure at which the intercooler relief valve begins to open; fully open at 1.1 times.", "Pa", "(0;1e8]", "1.5 times the nominal interstage pressure", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 256u, sizeof(double), -1, -1},
    {"relief_area_m2", "Effective area of the open relief valve.", "m2", "[0;1]", "passes 1.5 times the displacement at relief_set_pa", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 264u, sizeof(double), -1, -1},
    {"intercooler_leak_m2", "Leak from the intercooler to ambient.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 272u, sizeof(double), -1, -1},
    {"line_m3", "Volume from the last discharge valve to the check valve.", "m3", "(0;10]", "0.3 swept volumes of the first stage", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 280u, sizeof(double), -1, -1},
    {"line_ua_w_k", "Heat transfer of this line to ambient.", "W/K", "[0;1e6]", "0.3 times the nominal heat capacity flow", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 288u, sizeof(double), -1, -1},
    {"unloader_leak_m2", "Leak from this line to ambient through the unloader.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 296u, sizeof(double), -1, -1},
    {"lp_wall_ua_w_k", "Heat transfer from one first-stage cylinder to ambient.", "W/K", "(0;1e6]", "120 W/(m2 K) times pi bore (stroke + bore/2)", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 304u, sizeof(double), -1, -1},
    {"hp_wall_ua_w_k", "Heat transfer from one second-stage cylinder to ambient.", "W/K", "(0;1e6]", "120 W/(m2 K) times pi bore (stroke + bore/2)", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 312u, sizeof(double), -1, -1},
    {"suction_ua_w_k", "Heat transfer from the first-stage walls to the inlet plenum.", "W/K", "[0;1e6]", "0.12 times the nominal heat capacity flow", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 320u, sizeof(double), -1, -1},
    {"lp_ring_area_m2", "Effective area past the rings of one first-stage cylinder to the crankcase.", "m2", "[0;1]", "5e-7 m times bore", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 328u, sizeof(double), -1, -1},
    {"hp_ring_area_m2", "Effective area past the rings of one second-stage cylinder to the crankcase.", "m2", "[0;1]", "5e-7 m times bore", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 336u, sizeof(double), -1, -1},
    {"crankcase_k", "Temperature of gas in the crankcase, which is at ambient pressure.", "K", "(0;1000]", "330", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 344u, sizeof(double), -1, -1},
    {"heat_coefficient", "Factor a of the wall heat transfer Nu = a Re^b.", "1", "[0;100]", "0.7", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 352u, sizeof(double), -1, -1},
    {"heat_exponent", "Exponent b of the wall heat transfer Nu = a Re^b.", "1", "[0;1]", "0.7", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 360u, sizeof(double), -1, -1},
    {"gasket_breach_m2", "Opening between the first two cylinders: first of each stage, or the first two of a single stage.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 368u, sizeof(double), -1, -1},
    {"lp_gasket_leak_m2", "Opening to outside, first cylinder of first stage.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 376u, sizeof(double), -1, -1},
    {"hp_gasket_leak_m2", "Opening to outside, first cylinder of second stage.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 384u, sizeof(double), -1, -1},
    {"fmep_pa", "Friction mean effective pressure on all swept volumes.", "Pa", "[0;1e7]", "3e4", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 392u, sizeof(double), -1, -1},
    {"belt_efficiency", "Shaft power over motor power.", "1", "(0;1]", "0.95", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 400u, sizeof(double), -1, -1},
    {"belt_slip", "Share of the pump speed lost by slip of the belt.", "1", "[0;0.9]", "0", "", NULL, 0.0, 0.9, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 408u, sizeof(double), -1, -1},
    {"pulley_ratio", "Pump speed over motor speed without belt slip.", "1", "(0;20]", "speed_rev_s over motor speed at rated slip", "", NULL, 0.0, 20.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 416u, sizeof(double), -1, -1},
    {"motor_synchronous_rev_s", "Motor speed without load.", "rev/s", "(0;1000]", "30", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 424u, sizeof(double), -1, -1},
    {"motor_rated_slip", "Slip at rated power and voltage.", "1", "[0;0.3]", "0.035", "", NULL, 0.0, 0.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 432u, sizeof(double), -1, -1},
    {"motor_rated_v", "Rated voltage.", "V", "(0;1e5]", "230", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 440u, sizeof(double), -1, -1},
    {"motor_rated_w", "Rated shaft power of the motor.", "W", "(0;1e8]", "1.1 times a closed-form estimate at cut_out_pa", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 448u, sizeof(double), -1, -1},
    {"motor_torque_factor", "Torque over a sound motor's, same slip and voltage.", "1", "(0;2]", "1", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 456u, sizeof(double), -1, -1},
    {"receiver_m3", "Volume of the receiver.", "m3", "(0;1e4]", "20 s of displacement", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 464u, sizeof(double), -1, -1},
    {"receiver_water_m3", "Volume of water in the receiver; less than receiver_m3.", "m3", "[0;1e4]", "0", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 472u, sizeof(double), -1, -1},
    {"receiver_wall_j_k", "Heat capacity of the receiver wall.", "J/K", "(0;1e9]", "1e4 J/(K m3) times receiver_m3 times cut_out_pa / (1 bar)", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 480u, sizeof(double), -1, -1},
    {"receiver_gas_ua_w_k", "Heat transfer from gas to wall at ambient pressure; grows as p^(2/3).", "W/K", "[0;1e6]", "29 W/(m2 K) times receiver_m3^(2/3)", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 488u, sizeof(double), -1, -1},
    {"receiver_wall_ua_w_k", "Heat transfer from wall to ambient.", "W/K", "[0;1e6]", "58 W/(m2 K) times receiver_m3^(2/3)", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 496u, sizeof(double), -1, -1},
    {"downstream_leak_m2", "Leak from the receiver or the system behind it.", "m2", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 504u, sizeof(double), -1, -1},
    {"demand_m3_s", "Air drawn from the receiver, as free air of the site.", "m3/s", "[0;1000]", "0", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 512u, sizeof(double), -1, -1},
    {"cut_in_pa", "Pressure, absolute, at which the switch starts the pump.", "Pa", "(0;1e8]", "10.32 bar, single-stage 7.56 bar", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 520u, sizeof(double), -1, -1},
    {"cut_out_pa", "Pressure, absolute, at which the switch stops the pump.", "Pa", "(0;1e8]", "13.08 bar, single-stage 9.63 bar", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 528u, sizeof(double), -1, -1},
    {"switch_error_pa", "True minus set pressure at which the switch acts.", "Pa", "[-1e7;1e7]", "0", "", NULL, -10000000.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 536u, sizeof(double), -1, -1},
    {"gauge_error_pa", "Reading of the receiver gauge minus true pressure.", "Pa", "[-1e7;1e7]", "0", "", NULL, -10000000.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 544u, sizeof(double), -1, -1},
    {"rated_delivery_m3_s", "Free air delivery on the nameplate.", "m3/s", "(0;1000]", "none", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 552u, sizeof(double), -1, -1},
    {"rated_pa", "Receiver pressure, absolute, of that rating.", "Pa", "(0;1e8]", "cut_out_pa", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 560u, sizeof(double), -1, -1},
    {"gas_constant_j_kg_k", "Gas constant of the air.", "J/(kg K)", "(0;1e4]", "287.05", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 568u, sizeof(double), -1, -1},
    {"heat_capacity_ratio", "Heat capacity ratio of the air.", "1", "(1;1.7]", "1.4", "", NULL, 1.0, 1.7, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 576u, sizeof(double), -1, -1},
    {"stages", "Number of stages.", "1", "[1;2]", "2", "", NULL, 1.0, 2.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 584u, sizeof(int32_t), -1, -1},
    {"arrangement", "Of the cylinders.", "1", "", "FREEAIR_MACHINE_V", "freeair_machine_arrangement", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OPTIONAL, 588u, sizeof(int32_t), -1, -1},
    {"lp_cylinders", "Equal cylinders of the first stage.", "1", "[1;4]", "1", "", NULL, 1.0, 4.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 592u, sizeof(int32_t), -1, -1},
    {"hp_cylinders", "Equal cylinders of the second stage.", "1", "[1;4]", "1", "", NULL, 1.0, 4.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 596u, sizeof(int32_t), -1, -1},
    {"lp_leaking_cylinders", "How many cylinders of the first stage, from the first, have its valve leaks; 0 for all.", "1", "[0;4]", "0", "", NULL, 0.0, 4.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 600u, sizeof(int32_t), -1, -1},
    {"hp_leaking_cylinders", "The same of the second stage.", "1", "[0;4]", "0", "", NULL, 0.0, 4.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 604u, sizeof(int32_t), -1, -1},
};

static const freeair_machine initial_freeair_machine = FREEAIR_MACHINE_INIT;

static const freeair_structure structure_freeair_machine = {
    "freeair_machine", fields_freeair_machine, &initial_freeair_machine, sizeof(freeair_machine), 608u, 80u};

static const freeair_parameter fields_freeair_machine_site[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"barometric_pa", "Barometric pressure.", "Pa", "[3e4;1.2e5]", "101325", "", NULL, 30000.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"ambient_k", "Temperature of intake and cooling air.", "K", "[220;340]", "293.15", "", NULL, 220.0, 340.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"humidity", "Relative humidity of the intake air; changes its gas constant.", "1", "[0;1]", "0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"supply_v", "Voltage at the running motor.", "V", "(0;1e5]", "motor_rated_v of the machine", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
};

static const freeair_machine_site initial_freeair_machine_site = FREEAIR_MACHINE_SITE_INIT;

static const freeair_structure structure_freeair_machine_site = {
    "freeair_machine_site", fields_freeair_machine_site, &initial_freeair_machine_site, sizeof(freeair_machine_site), 40u, 6u};

static const freeair_parameter fields_freeair_cycle_result[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"delivery_m3_s", "Net flow into the receiver as free air of the site; negative when it flows back.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"delivery_kg_s", "The same as mass flow.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"intake_kg_s", "Net flow in through the filter.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"inlet_backflow_kg_s", "Flow that blows back out of the filter.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"interstage_mean_pa", "Mean pressure of the intercooler, absolute; NaN for a single stage.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"interstage_min_pa", "Lowest pressure of the intercooler; NaN for a single stage.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"interstage_max_pa", "Highest pressure of the intercooler; NaN for a single stage.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"intercooler_k", "Mean temperature of the gas in the intercooler; NaN for a single stage.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"plenum_pa", "Mean pressure behind the filter.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"plenum_k", "Mean temperature behind the filter.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"line_pa", "Mean pressure before the check valve.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"line_k", "Mean temperature before the check valve.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 96u, sizeof(double), -1, -1},
    {"lp_discharge_k", "Mean temperature of gas leaving the first stage.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 104u, sizeof(double), -1, -1},
    {"hp_discharge_k", "Mean temperature of gas leaving the second stage; NaN for a single stage.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 112u, sizeof(double), -1, -1},
    {"lp_wall_k", "Wall temperature of the first cylinder of the first stage.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 120u, sizeof(double), -1, -1},
    {"hp_wall_k", "Wall temperature of the first cylinder of the second stage; NaN for a single stage.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 128u, sizeof(double), -1, -1},
    {"lp_volumetric_efficiency", "Net intake of the first stage over its displacement at ambient density.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 136u, sizeof(double), -1, -1},
    {"hp_volumetric_efficiency", "Net intake of the second stage over its displacement at intercooler density.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 144u, sizeof(double), -1, -1},
    {"lp_indicated_w", "Indicated power of the first stage.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 152u, sizeof(double), -1, -1},
    {"hp_indicated_w", "Indicated power of the second stage; 0 for a single stage.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 160u, sizeof(double), -1, -1},
    {"friction_w", "Friction power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 168u, sizeof(double), -1, -1},
    {"shaft_w", "Power at the pump shaft.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 176u, sizeof(double), -1, -1},
    {"motor_w", "Power at the motor shaft.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 184u, sizeof(double), -1, -1},
    {"speed_rev_s", "Speed of the pump.", "rev/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 192u, sizeof(double), -1, -1},
    {"motor_speed_rev_s", "Speed of the motor.", "rev/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 200u, sizeof(double), -1, -1},
    {"motor_slip", "Slip of the motor.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 208u, sizeof(double), -1, -1},
    {"relief_kg_s", "Flow through the interstage relief valve.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 216u, sizeof(double), -1, -1},
    {"interstage_leak_kg_s", "Leak from the intercooler.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 224u, sizeof(double), -1, -1},
    {"unloader_kg_s", "Leak through the unloader.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 232u, sizeof(double), -1, -1},
    {"lp_ring_kg_s", "Flow past all rings of the first stage to the crankcase.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 240u, sizeof(double), -1, -1},
    {"hp_ring_kg_s", "Flow past all rings of the second stage to the crankcase.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 248u, sizeof(double), -1, -1},
    {"gasket_breach_kg_s", "Net flow through the breach from the first cylinder to the second.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 256u, sizeof(double), -1, -1},
    {"gasket_leak_kg_s", "Flow from the cylinders to outside past the gaskets.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 264u, sizeof(double), -1, -1},
    {"lp_suction_backflow_kg_s", "Flow back out through the suction valves of the first stage.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 272u, sizeof(double), -1, -1},
    {"hp_suction_backflow_kg_s", "Flow back out through the suction valves of the second stage.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 280u, sizeof(double), -1, -1},
    {"wall_heat_w", "Heat from the gas to all cylinder walls.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 288u, sizeof(double), -1, -1},
    {"intercooler_w", "Heat from the intercooler to ambient.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 296u, sizeof(double), -1, -1},
    {"line_w", "Heat from the line to ambient.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 304u, sizeof(double), -1, -1},
    {"lp_rod_max_n", "Largest gas load on a first-stage rod, compression positive.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 312u, sizeof(double), -1, -1},
    {"lp_rod_min_n", "Smallest gas load on a first-stage rod; negative is tension.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 320u, sizeof(double), -1, -1},
    {"hp_rod_max_n", "Largest gas load on a second-stage rod.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 328u, sizeof(double), -1, -1},
    {"hp_rod_min_n", "Smallest gas load on a second-stage rod.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 336u, sizeof(double), -1, -1},
    {"mass_error", "Imbalance of mass over the revolution, over the displacement's mass.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 344u, sizeof(double), -1, -1},
    {"energy_error", "Imbalance of energy over the revolution, over the displacement's enthalpy.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 352u, sizeof(double), -1, -1},
    {"residual", "Largest change of a state over the last revolution, over the displacement.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 360u, sizeof(double), -1, -1},
    {"revolutions", "Revolutions integrated.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 368u, sizeof(int32_t), -1, -1},
    {"steps", "Steps taken in all of them.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 372u, sizeof(int32_t), -1, -1},
    {"evaluations", "Evaluations of the rates in all of them.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 376u, sizeof(int32_t), -1, -1},
    {"stages", "Stages of the machine.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 380u, sizeof(int32_t), -1, -1},
};

static const freeair_cycle_result initial_freeair_cycle_result = FREEAIR_CYCLE_RESULT_INIT;

static const freeair_structure structure_freeair_cycle_result = {
    "freeair_cycle_result", fields_freeair_cycle_result, &initial_freeair_cycle_result, sizeof(freeair_cycle_result), 384u, 51u};

static const freeair_parameter fields_freeair_prediction_run[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"from_pa", "Gauge reading at the start, absolute.", "Pa", "(0;1e8)", "barometric plus gauge error", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL, 8u, sizeof(double), -1, -1},
    {"to_pa", "Gauge reading at the end.", "Pa", "(0;1e8)", "where the switch stops the pump", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL, 16u, sizeof(double), -1, -1},
    {"gas_k", "Gas temperature at the start, with FREEAIR_PREDICTION_GIVEN.", "K", "[150;600]", "ambient", "", NULL, 150.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"wall_k", "Wall temperature at the start, likewise.", "K", "[150;600]", "ambient", "", NULL, 150.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"draw_down_s", "Duration of the drawing down.", "s", "[1;1e5]", "60", "", NULL, 1.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"most_s", "Give up after this time.", "s", "[1;1e7]", "7200", "", NULL, 1.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"accuracy", "Accuracy of freeair_cycle_point.", "1", "[1e-6;0.1]", "1e-3", "", NULL, 1e-06, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"start", "State before the run.", "1", "", "", "freeair_prediction_start", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 64u, sizeof(int32_t), -1, -1},
    {"nodes", "Operating points along the way.", "1", "[3;32]", "", "", NULL, 3.0, 32.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 68u, sizeof(int32_t), -1, -1},
};

static const freeair_prediction_run initial_freeair_prediction_run = FREEAIR_PREDICTION_RUN_INIT;

static const freeair_structure structure_freeair_prediction_run = {
    "freeair_prediction_run", fields_freeair_prediction_run, &initial_freeair_prediction_run, sizeof(freeair_prediction_run), 72u, 11u};

static const freeair_parameter fields_freeair_prediction_result[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"time_s", "Time from start to end; infinite when the end is not reached.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"cut_in_s", "Time from start to the cut-in pressure; infinite when not reached, NaN when it starts above.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"end_pa", "Gauge reading at the end, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"start_gas_k", "Gas temperature at the start.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"end_gas_k", "Gas temperature at the end.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"end_wall_k", "Wall temperature of the receiver at the end.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"start_delivery_m3_s", "Free air delivery at the start.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"end_delivery_m3_s", "Free air delivery at the end.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"mean_delivery_m3_s", "Mean of the delivery over the run.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"apparent_m3_s", "What V dp / (p_a t) over gauge readings makes of the run; reads too high.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"shaft_j", "Work at the pump shaft.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"reached", "1 when the end was reached.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 96u, sizeof(int32_t), -1, -1},
    {"evaluations", "Evaluations of the crank-angle rates.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 100u, sizeof(int32_t), -1, -1},
};

static const freeair_prediction_result initial_freeair_prediction_result = FREEAIR_PREDICTION_RESULT_INIT;

static const freeair_structure structure_freeair_prediction_result = {
    "freeair_prediction_result", fields_freeair_prediction_result, &initial_freeair_prediction_result, sizeof(freeair_prediction_result), 104u, 15u};

static const freeair_parameter fields_freeair_pumpup_test[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"v_receiver_m3", "Volume of the receiver.", "m3", "(0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"v_piping_m3", "Volume of piping open to it.", "m3", "[0;1e4]", "0", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"v_water_m3", "Volume that water takes of it.", "m3", "[0;1e4]", "0", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"v_uncertainty_m3", "Uncertainty of the gas volume.", "m3", "[0;1e4]", "3 % of it", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"p_ambient_pa", "Barometric pressure.", "Pa", "[2e4;2e5]", "", "", NULL, 20000.0, 200000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"p_ambient_uncertainty_pa", "Its uncertainty.", "Pa", "[0;5e3]", "300", "", NULL, 0.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"t_ambient_k", "Temperature of the air drawn in and about the receiver.", "K", "[223.15;350]", "", "", NULL, 223.15, 350.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"t_ambient_uncertainty_k", "Its uncertainty.", "K", "[0;30]", "1", "", NULL, 0.0, 30.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
    {"p_start_pa", "Pressure at the start.", "Pa", "[1e3;1e8]", "from the table", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 72u, sizeof(double), -1, -1},
    {"p_end_pa", "Pressure at the end, higher.", "Pa", "[1e3;1e8]", "from the table", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 80u, sizeof(double), -1, -1},
    {"duration_s", "Time from start to end.", "s", "[0.01;1e7]", "from the table", "", NULL, 0.01, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 88u, sizeof(double), -1, -1},
    {"duration_uncertainty_s", "Its uncertainty.", "s", "[0;1e6]", "1; for a table 0.1 % of it", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 96u, sizeof(double), -1, -1},
    {"reading_uncertainty_pa", "Random uncertainty of one pressure reading.", "Pa", "[0;1e7]", "0.5 % of the gauge pressure at the end; with eight readings or more their scatter", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 104u, sizeof(double), -1, -1},
    {"gauge_scale_uncertainty", "Relative uncertainty of the scale of the gauge.", "1", "[0;0.3]", "0.01", "", NULL, 0.0, 0.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 112u, sizeof(double), -1, -1},
    {"t_start_k", "Gas temperature at the start.", "K", "[150;600]", "from start", "", NULL, 150.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 120u, sizeof(double), -1, -1},
    {"t_end_k", "Gas temperature at the end.", "K", "[150;600]", "from the lumped model", "", NULL, 150.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 128u, sizeof(double), -1, -1},
    {"t_gas_uncertainty_k", "Uncertainty of each of these two where given.", "K", "[0;50]", "1", "", NULL, 0.0, 50.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 136u, sizeof(double), -1, -1},
    {"t_wall_start_k", "Wall temperature at the start.", "K", "[150;600]", "from start", "", NULL, 150.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 144u, sizeof(double), -1, -1},
    {"p_before_pa", "Pressure before drawing down.", "Pa", "[1e3;1e8]", "the pressure at the end", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 152u, sizeof(double), -1, -1},
    {"draw_s", "How long the drawing down took.", "s", "[0.1;1e6]", "60", "", NULL, 0.1, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 160u, sizeof(double), -1, -1},
    {"rest_s", "Rest between loads, required for CYCLING.", "s", "[0.1;1e7]", "not cycling", "", NULL, 0.1, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 168u, sizeof(double), -1, -1},
    {"t_in_k", "Temperature of the air that enters.", "K", "[200;700]", "60 K above ambient", "", NULL, 200.0, 700.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 176u, sizeof(double), -1, -1},
    {"t_in_uncertainty_k", "Its uncertainty.", "K", "[0;100]", "23: anything within 40 K", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 184u, sizeof(double), -1, -1},
    {"ua_gas_w_k", "Heat transfer gas to wall at ambient pressure.", "W/K", "[0;1e6]", "29 W/(m2 K) times the 2/3 power of the receiver's volume", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 192u, sizeof(double), -1, -1},
    {"ua_wall_w_k", "Heat transfer wall to surroundings.", "W/K", "[0;1e6]", "58 W/(m2 K) times the 2/3 power of the receiver's volume", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 200u, sizeof(double), -1, -1},
    {"c_wall_j_k", "Heat capacity of the wall.", "J/K", "[1;1e9]", "0.1 J/(K m3 Pa) times the receiver's volume and the pressure at the end", "", NULL, 1.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 208u, sizeof(double), -1, -1},
    {"thermal_uncertainty", "Uncertainty of the logarithm of these three.", "1", "[0;1.5]", "0.4: anything within a factor of two", "", NULL, 0.0, 1.5, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 216u, sizeof(double), -1, -1},
    {"fall", "Share of the inflow lost from ambient pressure to end.", "1", "[0;1]", "0.2", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 224u, sizeof(double), -1, -1},
    {"fall_uncertainty", "Its uncertainty.", "1", "[0.001;1]", "0.2", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 232u, sizeof(double), -1, -1},
    {"humidity", "Relative humidity of the air drawn in.", "1", "[0;1]", "0, dry", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 240u, sizeof(double), -1, -1},
    {"humidity_uncertainty", "Its uncertainty.", "1", "[0;0.5]", "0.05 where it is given, else 0", "", NULL, 0.0, 0.5, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 248u, sizeof(double), -1, -1},
    {"p_reference_pa", "Pressure of the reference state.", "Pa", "[1e4;1e7]", "of reference", "", NULL, 10000.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 256u, sizeof(double), -1, -1},
    {"t_reference_k", "Temperature of it.", "K", "[223.15;473.15]", "of reference", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 264u, sizeof(double), -1, -1},
    {"humidity_reference", "Relative humidity of it.", "1", "[0;1]", "of reference, else 0", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 272u, sizeof(double), -1, -1},
    {"start", "State before the run.", "1", "", "", "freeair_pumpup_start", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 280u, sizeof(int32_t), -1, -1},
    {"reference", "Reference state; 0 for none or another.", "1", "", "", "freeair_reference_state", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 284u, sizeof(int32_t), -1, -1},
};

static const freeair_pumpup_test initial_freeair_pumpup_test = FREEAIR_PUMPUP_TEST_INIT;

static const freeair_structure structure_freeair_pumpup_test = {
    "freeair_pumpup_test", fields_freeair_pumpup_test, &initial_freeair_pumpup_test, sizeof(freeair_pumpup_test), 288u, 38u};

static const freeair_parameter fields_freeair_pumpup_result[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"mass_kg", "Mass of dry air gained.", "kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"mass_flow_kg_s", "Net mass flow of dry air, mean of the run.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"mass_flow_uncertainty_kg_s", "Its standard uncertainty.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"delivery_m3_s", "Free air delivery: this flow as drawn in from the surroundings.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"delivery_uncertainty_m3_s", "Its standard uncertainty.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"reference_m3_s", "The same flow at the reference state; NaN when no reference is given.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"reference_uncertainty_m3_s", "Its standard uncertainty.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"plain_m3_s", "What the plain rule V (p2 - p1) / (p_a t) says.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"bias", "plain_m3_s / delivery_m3_s - 1.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"bias_uncertainty", "Its standard uncertainty.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"p_start_pa", "Pressure at the start, smoothed when there are more than two readings.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"p_end_pa", "Pressure at the end, likewise.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 96u, sizeof(double), -1, -1},
    {"duration_s", "Time from start to end.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 104u, sizeof(double), -1, -1},
    {"t_start_k", "Gas temperature at the start, as measured or estimated.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 112u, sizeof(double), -1, -1},
    {"t_end_k", "Gas temperature at the end, likewise.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 120u, sizeof(double), -1, -1},
    {"t_end_uncertainty_k", "Standard uncertainty of that.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 128u, sizeof(double), -1, -1},
    {"t_wall_start_k", "Wall temperature at the start.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 136u, sizeof(double), -1, -1},
    {"t_wall_end_k", "Wall temperature at the end; NaN when no temperature had to be estimated.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 144u, sizeof(double), -1, -1},
    {"fall", "Share of the inflow lost from ambient pressure to the end, as found.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 152u, sizeof(double), -1, -1},
    {"fall_uncertainty", "Its standard uncertainty; that of the test when the readings add nothing.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 160u, sizeof(double), -1, -1},
    {"scatter_pa", "Standard deviation of one pressure reading, as used.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 168u, sizeof(double), -1, -1},
    {"from_volume_m3_s", "Contribution of the volume.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 176u, sizeof(double), -1, -1},
    {"from_readings_m3_s", "Of the single pressure readings.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 184u, sizeof(double), -1, -1},
    {"from_scale_m3_s", "Of the scale of the gauge.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 192u, sizeof(double), -1, -1},
    {"from_time_m3_s", "Of the time.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 200u, sizeof(double), -1, -1},
    {"from_barometer_m3_s", "Of the barometric pressure.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 208u, sizeof(double), -1, -1},
    {"from_ambient_m3_s", "Of the ambient temperature.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 216u, sizeof(double), -1, -1},
    {"from_humidity_m3_s", "Of the humidity.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 224u, sizeof(double), -1, -1},
    {"from_start_m3_s", "Of the temperatures at the start.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 232u, sizeof(double), -1, -1},
    {"from_end_m3_s", "Of a measured temperature at the end.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 240u, sizeof(double), -1, -1},
    {"from_inlet_m3_s", "Of the temperature of the air that enters.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 248u, sizeof(double), -1, -1},
    {"from_exchange_m3_s", "Of the heat exchange and the heat capacity of the wall.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 256u, sizeof(double), -1, -1},
    {"from_course_m3_s", "Of the course of the inflow during the run.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 264u, sizeof(double), -1, -1},
};

static const freeair_pumpup_result initial_freeair_pumpup_result = FREEAIR_PUMPUP_RESULT_INIT;

static const freeair_structure structure_freeair_pumpup_result = {
    "freeair_pumpup_result", fields_freeair_pumpup_result, &initial_freeair_pumpup_result, sizeof(freeair_pumpup_result), 272u, 35u};

static const freeair_parameter fields_freeair_expectation_machine[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"rated_m3_s", "Rated free air delivery, as drawn in.", "m3/s", "(0;1000]", "from geometry", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"rated_pa", "Receiver pressure of the rating.", "Pa", "[1e3;1e8]", "that of the end", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"rated_ambient_pa", "Barometric pressure of the rating.", "Pa", "[2e4;2e5]", "1e5", "", NULL, 20000.0, 200000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"rated_uncertainty", "Of the rating.", "1", "[0;0.3]", "0.03, as for a tolerance of 5 %", "", NULL, 0.0, 0.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"swept_m3", "Swept volume of a revolution, first stage.", "m3", "(0;10]", "unknown", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"speed_rev_s", "Speed.", "rev/s", "(0;200]", "unknown", "", NULL, 0.0, 200.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"induction", "Share of what re-expansion leaves room for that is delivered: heating, valves, leakage.", "1", "(0;1]", "0.85", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"induction_uncertainty", "Of that.", "1", "[0;0.3]", "0.06", "", NULL, 0.0, 0.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
    {"speed_ratio", "Speed found over the speed of the rating.", "1", "(0;3]", "1", "", NULL, 0.0, 3.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 72u, sizeof(double), -1, -1},
    {"speed_ratio_uncertainty", "Of that.", "1", "[0;0.3]", "0.01", "", NULL, 0.0, 0.3, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 80u, sizeof(double), -1, -1},
    {"clearance", "Clearance over swept volume, first stage.", "1", "[0;0.5]", "0.05", "", NULL, 0.0, 0.5, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 88u, sizeof(double), -1, -1},
    {"clearance_uncertainty", "Standard uncertainty of it.", "1", "[0;0.2]", "0.015", "", NULL, 0.0, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 96u, sizeof(double), -1, -1},
    {"n_expansion", "Exponent of re-expansion.", "1", "[1;2]", "1.25", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 104u, sizeof(double), -1, -1},
    {"stages", "Stages.", "1", "[1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 112u, sizeof(int32_t), -1, -1},
    {"reserved", "0.", "1", "[0;0]", "", "", NULL, 0.0, 0.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 116u, sizeof(int32_t), -1, -1},
};

static const freeair_expectation_machine initial_freeair_expectation_machine = FREEAIR_EXPECTATION_MACHINE_INIT;

static const freeair_structure structure_freeair_expectation_machine = {
    "freeair_expectation_machine", fields_freeair_expectation_machine, &initial_freeair_expectation_machine, sizeof(freeair_expectation_machine), 120u, 17u};

static const freeair_parameter fields_freeair_expectation_result[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"time_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"time_uncertainty_s", "Its standard uncertainty.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"time_from_machine_s", "What the machine contributes to that: rating or geometry, speed, clearance.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"time_from_receiver_s", "What the receiver contributes: volume, heat exchange, state before the run.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"time_from_readings_s", "What gauge, barometer and thermometer contribute.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"delivery_m3_s", "Mean free air delivery.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"delivery_uncertainty_m3_s", "Its standard uncertainty.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"start_delivery_m3_s", "Free air delivery at p_start_pa.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"end_delivery_m3_s", "Free air delivery at p_end_pa.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"t_end_k", "Gas temperature at the end.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
};

static const freeair_expectation_result initial_freeair_expectation_result = FREEAIR_EXPECTATION_RESULT_INIT;

static const freeair_structure structure_freeair_expectation_result = {
    "freeair_expectation_result", fields_freeair_expectation_result, &initial_freeair_expectation_result, sizeof(freeair_expectation_result), 88u, 12u};

static const freeair_parameter fields_freeair_pumpup_curve_shape[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"slope_pa_s", "Median slope of the whole curve.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"early_slope_pa_s", "Slope of the first third of the readings.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"early_slope_uncertainty_pa_s", "Its standard uncertainty.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"late_slope_pa_s", "Slope of the last third.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"late_slope_uncertainty_pa_s", "Its standard uncertainty.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"slope_ratio", "Early slope over late slope; NaN when the late slope is not positive.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"slope_ratio_uncertainty", "Its standard uncertainty.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"curvature", "Early less late slope over that of the whole: 0 straight, positive when it flattens.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"curvature_uncertainty", "Its standard uncertainty.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"approach_1_s", "Rate b at which it approaches its level; negative when it steepens.", "1/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"approach_uncertainty_1_s", "Its standard uncertainty.", "1/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"level_off_pa", "Pressure at which it would level off; NaN when none is in sight.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 96u, sizeof(double), -1, -1},
    {"level_off_uncertainty_pa", "Its standard uncertainty.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 104u, sizeof(double), -1, -1},
    {"level_off_least_pa", "At 95 % confidence it levels off no lower; NaN when it may never bend.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 112u, sizeof(double), -1, -1},
    {"scatter_pa", "Standard deviation of one reading about the fit, as used.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 120u, sizeof(double), -1, -1},
    {"level_in_sight", "1 when the curve bends by more than twice the uncertainty of that.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 128u, sizeof(int32_t), -1, -1},
    {"reserved", "0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 132u, sizeof(int32_t), -1, -1},
};

static const freeair_pumpup_curve_shape initial_freeair_pumpup_curve_shape = FREEAIR_PUMPUP_CURVE_SHAPE_INIT;

static const freeair_structure structure_freeair_pumpup_curve_shape = {
    "freeair_pumpup_curve_shape", fields_freeair_pumpup_curve_shape, &initial_freeair_pumpup_curve_shape, sizeof(freeair_pumpup_curve_shape), 136u, 19u};

static const freeair_parameter fields_freeair_pressure_log_options[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"gap_s", "A longer step is a gap.", "s", "(0;1e7]", "5 median steps", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"frozen_s", "Shorter standstill is not called frozen.", "s", "(0;1e7]", "6 median steps, 60 s at least", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"band_pa", "Least swing that a pressure switch makes.", "Pa", "(0;1e8]", "3 % of the highest pressure, or 30 % of cut_out_pa - cut_in_pa when given; at least 8 times the noise or a quarter of the range of the log, whichever is less", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"settle_s", "Time after cut-out in which the gas cools.", "s", "[0;1e6]", "300", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"noise_pa", "Standard deviation of the noise of one reading.", "Pa", "[0;1e7]", "from the log", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"cut_in_pa", "Pressure, absolute, where it is set to load.", "Pa", "[1e3;1e8]", "from the log", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"cut_out_pa", "The same to unload.", "Pa", "[1e3;1e8]", "from the log", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
};

static const freeair_pressure_log_options initial_freeair_pressure_log_options = FREEAIR_PRESSURE_LOG_OPTIONS_INIT;

static const freeair_structure structure_freeair_pressure_log_options = {
    "freeair_pressure_log_options", fields_freeair_pressure_log_options, &initial_freeair_pressure_log_options, sizeof(freeair_pressure_log_options), 64u, 9u};

static const freeair_parameter fields_freeair_pressure_log_phase[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"start_s", "Start, on the clock of the log.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"end_s", "End.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"start_uncertainty_s", "Standard uncertainty of the start.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"end_uncertainty_s", "Standard uncertainty of the end.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"p_start_pa", "Pressure at the start.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"p_end_pa", "Pressure at the end.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"slope_pa_s", "Median slope of the whole phase.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"slope_uncertainty_pa_s", "Its standard uncertainty.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"early_slope_pa_s", "Slope of the first half.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"late_slope_pa_s", "Slope of the second half; of an idle phase, once the gas has settled.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"late_slope_uncertainty_pa_s", "Its standard uncertainty.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"kind", "What the machine does.", "1", "", "", "freeair_pressure_log_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 96u, sizeof(int32_t), -1, -1},
    {"start_seen", "1 when it began in the log, 0 at an edge, gap or standstill.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 100u, sizeof(int32_t), -1, -1},
    {"end_seen", "1 when it ended in the log.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 104u, sizeof(int32_t), -1, -1},
    {"settled", "1 when late_slope_pa_s is free of the cooling after cut-out.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 108u, sizeof(int32_t), -1, -1},
    {"first", "Index of the first reading.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 112u, sizeof(uint32_t), -1, -1},
    {"count", "Readings from the first to the last, those left out included.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 116u, sizeof(uint32_t), -1, -1},
    {"left_out", "Readings among these that were left out.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 120u, sizeof(uint32_t), -1, -1},
    {"reserved", "0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 124u, sizeof(uint32_t), -1, -1},
};

static const freeair_pressure_log_phase initial_freeair_pressure_log_phase = FREEAIR_PRESSURE_LOG_PHASE_INIT;

static const freeair_structure structure_freeair_pressure_log_phase = {
    "freeair_pressure_log_phase", fields_freeair_pressure_log_phase, &initial_freeair_pressure_log_phase, sizeof(freeair_pressure_log_phase), 128u, 21u};

static const freeair_parameter fields_freeair_duty_summary[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"observed_s", "Time with readings.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"loaded_s", "Time loaded.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"unloaded_s", "Time run on unloaded.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"stopped_s", "Time stopped.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"idle_s", "Time not loaded, running on or stopped.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"unknown_s", "Time of which the pressure does not tell.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"missing_s", "Time in gaps and standstills.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"duty", "Loaded share of the time that is told.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"duty_uncertainty", "Of duty.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"cycle_s", "Mean time from one cut-in to the next.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"cycle_uncertainty_s", "Of cycle_s.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"cut_in_pa", "Median pressure at which it cuts in.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 96u, sizeof(double), -1, -1},
    {"cut_in_uncertainty_pa", "Of cut_in_pa.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 104u, sizeof(double), -1, -1},
    {"cut_out_pa", "Median pressure at which it cuts out.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 112u, sizeof(double), -1, -1},
    {"cut_out_uncertainty_pa", "Of cut_out_pa.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 120u, sizeof(double), -1, -1},
    {"load_slope_pa_s", "Median slope while loaded.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 128u, sizeof(double), -1, -1},
    {"load_slope_uncertainty_pa_s", "Of load_slope_pa_s.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 136u, sizeof(double), -1, -1},
    {"idle_slope_pa_s", "Median slope while idle, once the gas has settled.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 144u, sizeof(double), -1, -1},
    {"idle_slope_uncertainty_pa_s", "Of idle_slope_pa_s.", "Pa/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 152u, sizeof(double), -1, -1},
    {"cooling_pa", "Median fall after cut-out that is not lost air but cooling gas.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 160u, sizeof(double), -1, -1},
    {"draw_share", "Share of the capacity that leaks or is drawn.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 168u, sizeof(double), -1, -1},
    {"draw_share_uncertainty", "Of draw_share.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 176u, sizeof(double), -1, -1},
    {"slope_share", "The same from the slopes alone, to compare.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 184u, sizeof(double), -1, -1},
    {"slope_share_uncertainty", "Of slope_share.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 192u, sizeof(double), -1, -1},
    {"n_loads", "Loaded phases.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 200u, sizeof(int32_t), -1, -1},
    {"n_cycles", "Complete cycles.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 204u, sizeof(int32_t), -1, -1},
    {"findings", "Bits of freeair_duty_finding.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 208u, sizeof(uint32_t), -1, -1},
    {"left_out", "Readings that were left out.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 212u, sizeof(uint32_t), -1, -1},
};

static const freeair_duty_summary initial_freeair_duty_summary = FREEAIR_DUTY_SUMMARY_INIT;

static const freeair_structure structure_freeair_duty_summary = {
    "freeair_duty_summary", fields_freeair_duty_summary, &initial_freeair_duty_summary, sizeof(freeair_duty_summary), 216u, 30u};

static const freeair_parameter fields_freeair_evidence_readings[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"delivery_m3_s", "Free air delivery at the site's conditions from a pump-up test.", "m3/s", "(0;1000]", "not taken", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"u_delivery_m3_s", "Its standard uncertainty.", "m3/s", "[0;1000]", "3 % of it", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"t_empty_to_cutout_s", "Time from empty and cool to cut-out.", "s", "(0;1e7]", "not taken", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"u_t_empty_to_cutout_s", "Its standard uncertainty.", "s", "[0;1e7]", "2 % of it", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"t_cutin_to_cutout_s", "Time from cut-in to cut-out.", "s", "(0;1e7]", "not taken", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"u_t_cutin_to_cutout_s", "Its standard uncertainty.", "s", "[0;1e7]", "3 % of it", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"p_level_off_pa", "Receiver pressure, absolute, at which it levels off below cut-out.", "Pa", "(0;1e8]", "not taken", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"u_p_level_off_pa", "Its standard uncertainty.", "Pa", "[0;1e8]", "none is used", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
    {"p_interstage_pa", "Interstage pressure, absolute, at one receiver pressure near cut-out.", "Pa", "(0;1e8]", "not taken", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 72u, sizeof(double), -1, -1},
    {"u_p_interstage_pa", "Its standard uncertainty.", "Pa", "[0;1e8]", "2 % of it", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 80u, sizeof(double), -1, -1},
    {"t_lp_discharge_k", "LP discharge temperature near cut-out.", "K", "(0;2000]", "not taken", "", NULL, 0.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 88u, sizeof(double), -1, -1},
    {"u_t_lp_discharge_k", "Its standard uncertainty.", "K", "[0;2000]", "5", "", NULL, 0.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 96u, sizeof(double), -1, -1},
    {"t_hp_discharge_k", "HP discharge temperature near cut-out.", "K", "(0;2000]", "not taken", "", NULL, 0.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 104u, sizeof(double), -1, -1},
    {"u_t_hp_discharge_k", "Its standard uncertainty.", "K", "[0;2000]", "5", "", NULL, 0.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 112u, sizeof(double), -1, -1},
    {"t_intercooler_out_k", "Intercooler outlet temperature near cut-out.", "K", "(0;2000]", "not taken", "", NULL, 0.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 120u, sizeof(double), -1, -1},
    {"u_t_intercooler_out_k", "Its standard uncertainty.", "K", "[0;2000]", "3", "", NULL, 0.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 128u, sizeof(double), -1, -1},
    {"motor_speed_rev_s", "Motor speed near cut-out.", "rev/s", "(0;1000]", "not taken", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 136u, sizeof(double), -1, -1},
    {"u_motor_speed_rev_s", "Its standard uncertainty.", "rev/s", "[0;1000]", "0.2 % of it", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 144u, sizeof(double), -1, -1},
    {"pump_speed_rev_s", "Pump speed near cut-out.", "rev/s", "(0;1000]", "not taken", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 152u, sizeof(double), -1, -1},
    {"u_pump_speed_rev_s", "Its standard uncertainty.", "rev/s", "[0;1000]", "0.3 % of it", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 160u, sizeof(double), -1, -1},
    {"supply_running_v", "Voltage at the motor, running near cut-out.", "V", "(0;1e5]", "not taken", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 168u, sizeof(double), -1, -1},
    {"u_supply_running_v", "Its standard uncertainty.", "V", "[0;1e5]", "0.5 % of it", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 176u, sizeof(double), -1, -1},
    {"supply_starting_v", "Lowest voltage at the motor during a start.", "V", "(0;1e5]", "not taken", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 184u, sizeof(double), -1, -1},
    {"u_supply_starting_v", "Its standard uncertainty.", "V", "[0;1e5]", "2 % of it", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 192u, sizeof(double), -1, -1},
    {"motor_current_a", "Motor current near cut-out.", "A", "(0;1e5]", "not taken", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 200u, sizeof(double), -1, -1},
    {"u_motor_current_a", "Its standard uncertainty.", "A", "[0;1e5]", "2 % of it", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 208u, sizeof(double), -1, -1},
    {"power_w", "Electrical power near cut-out.", "W", "(0;1e8]", "not taken", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 216u, sizeof(double), -1, -1},
    {"u_power_w", "Its standard uncertainty.", "W", "[0;1e8]", "3 % of it", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 224u, sizeof(double), -1, -1},
    {"run_capacitance_f", "Capacitance of the run capacitor; expected: as printed.", "F", "(0;1]", "not taken", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 232u, sizeof(double), -1, -1},
    {"u_run_capacitance_f", "Its standard uncertainty.", "F", "[0;1]", "1 % of it", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 240u, sizeof(double), -1, -1},
    {"start_capacitance_f", "Capacitance of the start capacitor; expected: as printed.", "F", "(0;1]", "not taken", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 248u, sizeof(double), -1, -1},
    {"u_start_capacitance_f", "Its standard uncertainty.", "F", "[0;1]", "2 % of it", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 256u, sizeof(double), -1, -1},
    {"leak_isolated_m3_s", "Leak as free air, stopped with the service valve closed.", "m3/s", "[0;1000]", "not taken", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 264u, sizeof(double), -1, -1},
    {"u_leak_isolated_m3_s", "Its standard uncertainty.", "m3/s", "[0;1000]", "0.5 % of delivery", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 272u, sizeof(double), -1, -1},
    {"leak_open_m3_s", "Leak as free air, system open without use.", "m3/s", "[0;1000]", "not taken", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 280u, sizeof(double), -1, -1},
    {"u_leak_open_m3_s", "Its standard uncertainty.", "m3/s", "[0;1000]", "1 % of delivery", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 288u, sizeof(double), -1, -1},
    {"gauge_difference_pa", "Machine's gauge less a tested gauge near cut-out.", "Pa", "[-1e7;1e7]", "not taken", "", NULL, -10000000.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 296u, sizeof(double), -1, -1},
    {"u_gauge_difference_pa", "Its standard uncertainty.", "Pa", "[0;1e7]", "0.5 % of cut-out", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 304u, sizeof(double), -1, -1},
    {"p_cutout_pa", "Pressure, absolute, at which it cuts out by a tested gauge.", "Pa", "(0;1e8]", "not taken", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 312u, sizeof(double), -1, -1},
    {"u_p_cutout_pa", "Its standard uncertainty.", "Pa", "[0;1e8]", "1 % of it", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 320u, sizeof(double), -1, -1},
    {"p_relief_opening_pa", "Pressure, absolute, at which the interstage relief begins to lift; expected: its setting.", "Pa", "(0;1e8]", "not taken", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 328u, sizeof(double), -1, -1},
    {"u_p_relief_opening_pa", "Its standard uncertainty.", "Pa", "[0;1e8]", "3 % of it", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 336u, sizeof(double), -1, -1},
    {"filter_drop_pa", "Pressure drop of the intake filter.", "Pa", "[0;1e6]", "not taken", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 344u, sizeof(double), -1, -1},
    {"u_filter_drop_pa", "Its standard uncertainty.", "Pa", "[0;1e6]", "0.2 % of ambient", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 352u, sizeof(double), -1, -1},
    {"belt_deflection_m", "Belt deflection at mid span under the stated force.", "m", "(0;1]", "not taken", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 360u, sizeof(double), -1, -1},
    {"u_belt_deflection_m", "Its standard uncertainty.", "m", "[0;1]", "15 % of it", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 368u, sizeof(double), -1, -1},
    {"water_m3", "Water drained from the receiver.", "m3", "[0;1e4]", "not taken", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 376u, sizeof(double), -1, -1},
    {"u_water_m3", "Its standard uncertainty.", "m3", "[0;1e4]", "1 % of receiver", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 384u, sizeof(double), -1, -1},
    {"duty", "Share of time loaded in ordinary use.", "1", "[0;1]", "not taken", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 392u, sizeof(double), -1, -1},
    {"u_duty", "Its standard uncertainty.", "1", "[0;1]", "0.03", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 400u, sizeof(double), -1, -1},
    {"t_ambient_k", "Ambient temperature at the intake; expected: that for which the values hold.", "K", "[200;350]", "not taken", "", NULL, 200.0, 350.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 408u, sizeof(double), -1, -1},
    {"u_t_ambient_k", "Its standard uncertainty.", "K", "[0;350]", "1", "", NULL, 0.0, 350.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 416u, sizeof(double), -1, -1},
    {"p_ambient_pa", "Barometric pressure; expected: that for which the values hold.", "Pa", "[2e4;1.3e5]", "not taken", "", NULL, 20000.0, 130000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 424u, sizeof(double), -1, -1},
    {"u_p_ambient_pa", "Its standard uncertainty.", "Pa", "[0;1.3e5]", "0.2 % of it", "", NULL, 0.0, 130000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 432u, sizeof(double), -1, -1},
};

static const freeair_evidence_readings initial_freeair_evidence_readings = FREEAIR_EVIDENCE_READINGS_INIT;

static const freeair_structure structure_freeair_evidence_readings = {
    "freeair_evidence_readings", fields_freeair_evidence_readings, &initial_freeair_evidence_readings, sizeof(freeair_evidence_readings), 440u, 56u};

static const freeair_parameter fields_freeair_diagnosis_subject[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"receiver_m3", "Volume of the receiver; for the reading of water.", "m3", "(0;1e4]", "unknown", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"stages", "Number of stages; 0 for unknown.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(int32_t), -1, -1},
    {"cylinders", "Number of cylinders; 0 for unknown.", "1", "[0;16]", "", "", NULL, 0.0, 16.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 20u, sizeof(int32_t), -1, -1},
    {"head", "Arrangement of the heads.", "1", "", "", "freeair_diagnosis_head", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 24u, sizeof(int32_t), -1, -1},
    {"drive", "Drive.", "1", "", "", "freeair_diagnosis_drive", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 28u, sizeof(int32_t), -1, -1},
    {"supply", "Supply.", "1", "", "", "freeair_diagnosis_supply", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 32u, sizeof(int32_t), -1, -1},
    {"service_valve_closed", "Was it closed in the pump-up test?", "1", "", "", "freeair_evidence_answer", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 36u, sizeof(int32_t), -1, -1},
};

static const freeair_diagnosis_subject initial_freeair_diagnosis_subject = FREEAIR_DIAGNOSIS_SUBJECT_INIT;

static const freeair_structure structure_freeair_diagnosis_subject = {
    "freeair_diagnosis_subject", fields_freeair_diagnosis_subject, &initial_freeair_diagnosis_subject, sizeof(freeair_diagnosis_subject), 40u, 9u};

static const freeair_parameter fields_freeair_diagnosis_finding[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"found", "The reading.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"expected", "Its expected value of a sound machine.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"deviation", "Deviation as in freeair_likelihood_deviation.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"spread", "Standard uncertainty of the deviation.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"reference", "What a share is of; NaN on other scales.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"residual", "Deviation over spread: standard deviations from a sound machine.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"predicted", "What all other evidence says it should be; NaN from a comparison alone.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"disagreement", "Standard deviations between it and all other evidence; NaN likewise.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"reading", "Which.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 72u, sizeof(int32_t), -1, -1},
    {"use", "What became of it.", "1", "", "", "freeair_diagnosis_use", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 76u, sizeof(int32_t), -1, -1},
};

static const freeair_diagnosis_finding initial_freeair_diagnosis_finding = FREEAIR_DIAGNOSIS_FINDING_INIT;

static const freeair_structure structure_freeair_diagnosis_finding = {
    "freeair_diagnosis_finding", fields_freeair_diagnosis_finding, &initial_freeair_diagnosis_finding, sizeof(freeair_diagnosis_finding), 80u, 12u};

static const freeair_parameter fields_freeair_diagnosis_cause[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"probability", "That this cause is present, alone or with another.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"probability_alone", "That it is the only one.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"prior", "That it is present, before any evidence.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"support", "Natural log-odds that speak for it: sum of the positive reasons.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"contradiction", "Natural log-odds that speak against it: sum of the negative reasons, <= 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"severity", "If present: share of the delivery lost or taken, posterior mean.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"u_severity", "Its posterior standard deviation.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"size", "If present: size of the fault as in freeair_likelihood_size, posterior mean.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"u_size", "Its posterior standard deviation.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"cause", "Which.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 80u, sizeof(int32_t), -1, -1},
    {"group", "Causes of one group number cannot be told apart by this evidence; 0 for none.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 84u, sizeof(int32_t), -1, -1},
    {"check", "Check that best splits the group for its effort.", "1", "", "", "freeair_evidence_check", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 88u, sizeof(int32_t), -1, -1},
    {"cautions", "Bits of freeair_caution for its repair.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 92u, sizeof(uint32_t), -1, -1},
};

static const freeair_diagnosis_cause initial_freeair_diagnosis_cause = FREEAIR_DIAGNOSIS_CAUSE_INIT;

static const freeair_structure structure_freeair_diagnosis_cause = {
    "freeair_diagnosis_cause", fields_freeair_diagnosis_cause, &initial_freeair_diagnosis_cause, sizeof(freeair_diagnosis_cause), 96u, 15u};

static const freeair_parameter fields_freeair_diagnosis_check[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"information", "Expected information about the cause, in bits.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"effort_s", "Working time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"information_rate_1_s", "Bits for each second of work.", "1/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"check", "Which.", "1", "", "", "freeair_evidence_check", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 32u, sizeof(int32_t), -1, -1},
    {"qualification", "1 where an electrically qualified person must do it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 36u, sizeof(int32_t), -1, -1},
    {"cautions", "Bits of freeair_caution.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 40u, sizeof(uint32_t), -1, -1},
    {"reserved", "0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 44u, sizeof(uint32_t), -1, -1},
};

static const freeair_diagnosis_check initial_freeair_diagnosis_check = FREEAIR_DIAGNOSIS_CHECK_INIT;

static const freeair_structure structure_freeair_diagnosis_check = {
    "freeair_diagnosis_check", fields_freeair_diagnosis_check, &initial_freeair_diagnosis_check, sizeof(freeair_diagnosis_check), 48u, 9u};

static const freeair_parameter fields_freeair_diagnosis_options[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"pair_share", "Of faulty machines, the share with two faults.", "1", "[0;0.5]", "0.08", "", NULL, 0.0, 0.5, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"confidence", "Probability required of a firm verdict.", "1", "(0.5;1)", "0.9", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL, 16u, sizeof(double), -1, -1},
    {"contradiction", "Standard deviations from what all other evidence says, at which a reading contradicts it.", "1", "[1;20]", "3", "", NULL, 1.0, 20.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
};

static const freeair_diagnosis_options initial_freeair_diagnosis_options = FREEAIR_DIAGNOSIS_OPTIONS_INIT;

static const freeair_structure structure_freeair_diagnosis_options = {
    "freeair_diagnosis_options", fields_freeair_diagnosis_options, &initial_freeair_diagnosis_options, sizeof(freeair_diagnosis_options), 32u, 5u};

static const freeair_parameter fields_freeair_diagnosis_reason[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"log_odds", "Natural log-odds of the cause with this item less those without it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"found", "The reading; NaN for an observation.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"expected", "Its expected value of a sound machine.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"predicted", "Its value with the cause at its posterior mean size; NaN where there is none.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"cause", "The cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 40u, sizeof(int32_t), -1, -1},
    {"reading", "The reading, or 0.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 44u, sizeof(int32_t), -1, -1},
    {"observation", "The observation, or 0.", "1", "", "", "freeair_evidence_observation", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 48u, sizeof(int32_t), -1, -1},
    {"answer", "Its answer.", "1", "", "", "freeair_evidence_answer", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 52u, sizeof(int32_t), -1, -1},
};

static const freeair_diagnosis_reason initial_freeair_diagnosis_reason = FREEAIR_DIAGNOSIS_REASON_INIT;

static const freeair_structure structure_freeair_diagnosis_reason = {
    "freeair_diagnosis_reason", fields_freeair_diagnosis_reason, &initial_freeair_diagnosis_reason, sizeof(freeair_diagnosis_reason), 56u, 10u};

static const freeair_parameter fields_freeair_diagnosis_summary[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"probability_healthy", "That nothing is wrong.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"probability_pair", "That two faults are present.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"doubt", "Entropy of the causes in bits: 0 when certain.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"verdict", "Is it sound: meets, fails, cannot tell.", "1", "", "", "freeair_verdict", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 32u, sizeof(int32_t), -1, -1},
    {"cause", "Most probable cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 36u, sizeof(int32_t), -1, -1},
    {"readings_used", "Readings that were used.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 40u, sizeof(int32_t), -1, -1},
    {"readings_unused", "Readings that could not be used.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 44u, sizeof(int32_t), -1, -1},
    {"observations_used", "Observations with an answer.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 48u, sizeof(int32_t), -1, -1},
    {"contradictions", "Readings that contradict the rest.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 52u, sizeof(int32_t), -1, -1},
};

static const freeair_diagnosis_summary initial_freeair_diagnosis_summary = FREEAIR_DIAGNOSIS_SUMMARY_INIT;

static const freeair_structure structure_freeair_diagnosis_summary = {
    "freeair_diagnosis_summary", fields_freeair_diagnosis_summary, &initial_freeair_diagnosis_summary, sizeof(freeair_diagnosis_summary), 56u, 11u};

static const freeair_parameter fields_freeair_inference_visit[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"receiver_pa", "Receiver pressure, absolute, at which interstage pressure, temperatures, speeds and power were read.", "Pa", "(0;1e8]", "cut_out_pa of the machine", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"from_pa", "Gauge reading at the start of the run from empty.", "Pa", "(0;1e8]", "barometric", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"draw_down_s", "Duration of drawing down to cut-in before that run.", "s", "[1;1e5]", "60", "", NULL, 1.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"u_log_s", "Standard uncertainty of a time of the log.", "s", "[0;1e5]", "0.5", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"u_log_pa", "The same of a pressure.", "Pa", "[0;1e7]", "0.3 % of gauge cut-out", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"motor_efficiency", "Shaft power over electrical power.", "1", "(0;1]", "0.83", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"air_m3_s", "Free air that is used, as a mean over time.", "m3/s", "[0;1000]", "unknown", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"energy_price", "Price of a joule of electrical energy in the caller's money.", "any", "[0;1]", "unknown", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
};

static const freeair_inference_visit initial_freeair_inference_visit = FREEAIR_INFERENCE_VISIT_INIT;

static const freeair_structure structure_freeair_inference_visit = {
    "freeair_inference_visit", fields_freeair_inference_visit, &initial_freeair_inference_visit, sizeof(freeair_inference_visit), 72u, 10u};

static const freeair_parameter fields_freeair_inference_scatter[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"rating", "Rated delivery, when the machine has one.", "1", "[0;1]", "0.035", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 8u, sizeof(double), -1, -1},
    {"clearance", "Clearances of each stage.", "1", "[0;1]", "0.15", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 16u, sizeof(double), -1, -1},
    {"valves", "Valve areas of each stage.", "1", "[0;1]", "0.12", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 24u, sizeof(double), -1, -1},
    {"valve_lift", "Pressure differences that open the valves.", "1", "[0;1]", "0.4", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 32u, sizeof(double), -1, -1},
    {"wall_heat", "Heat transfer in the cylinders.", "1", "[0;1]", "0.35", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 40u, sizeof(double), -1, -1},
    {"cooler_ua", "Heat transfer of the intercooler.", "1", "[0;1]", "0.25", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 48u, sizeof(double), -1, -1},
    {"suction_heating", "Heating of the intake air.", "1", "[0;1]", "0.35", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 56u, sizeof(double), -1, -1},
    {"filter", "Area of the clean filter.", "1", "[0;1]", "0.15", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 64u, sizeof(double), -1, -1},
    {"rings", "Leakage past sound rings.", "1", "[0;1]", "0.4", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 72u, sizeof(double), -1, -1},
    {"phase_rad", "Angle between the stages, for all that sets the flow there.", "rad", "[0;1]", "0.2", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 80u, sizeof(double), -1, -1},
    {"delivery", "The model's delivery as a whole.", "1", "[0;1]", "0.02", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 88u, sizeof(double), -1, -1},
    {"delivery_slope", "Its fall from ambient to cut-out pressure.", "1", "[0;1]", "0.04", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 96u, sizeof(double), -1, -1},
    {"interstage", "The model's gauge interstage pressure.", "1", "[0;1]", "0.05", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 104u, sizeof(double), -1, -1},
    {"temperature_k", "Discharge temperatures; half of it is shared by all.", "K", "[0;100]", "8", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 112u, sizeof(double), -1, -1},
    {"receiver", "Volume of the receiver.", "1", "[0;1]", "0.012", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 120u, sizeof(double), -1, -1},
    {"receiver_ua", "Heat transfer of the receiver.", "1", "[0;1]", "0.35", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 128u, sizeof(double), -1, -1},
    {"receiver_wall", "Heat capacity of its wall.", "1", "[0;1]", "0.2", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 136u, sizeof(double), -1, -1},
    {"draw_down", "Duration of the drawing down.", "1", "[0;1]", "0.4", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 144u, sizeof(double), -1, -1},
    {"gauge", "Error of the gauge over gauge cut-out.", "1", "[0;1]", "0.005", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 152u, sizeof(double), -1, -1},
    {"motor", "Motor speed under load.", "1", "[0;1]", "0.006", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 160u, sizeof(double), -1, -1},
    {"drive", "Pump speed over motor speed.", "1", "[0;1]", "0.008", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 168u, sizeof(double), -1, -1},
    {"motor_efficiency", "Electrical over shaft power.", "1", "[0;1]", "0.06", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 176u, sizeof(double), -1, -1},
};

static const freeair_inference_scatter initial_freeair_inference_scatter = FREEAIR_INFERENCE_SCATTER_INIT;

static const freeair_structure structure_freeair_inference_scatter = {
    "freeair_inference_scatter", fields_freeair_inference_scatter, &initial_freeair_inference_scatter, sizeof(freeair_inference_scatter), 184u, 24u};

static const freeair_parameter fields_freeair_inference_effect[] = {
    {"struct_size", "Size of this structure as the caller knows it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 0u, sizeof(uint32_t), -1, -1},
    {"flags", "Reserved, 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, 0, 4u, sizeof(uint32_t), -1, -1},
    {"severity", "Severity as in freeair_fault_apply, posterior median; NaN where there is none.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 8u, sizeof(double), -1, -1},
    {"severity_low", "At least that much with probability 0.95.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 16u, sizeof(double), -1, -1},
    {"severity_high", "At most that much with probability 0.95.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 24u, sizeof(double), -1, -1},
    {"lost", "Share of the delivery lost or taken, posterior median.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 32u, sizeof(double), -1, -1},
    {"lost_low", "At least that much with probability 0.95.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 40u, sizeof(double), -1, -1},
    {"lost_high", "At most that much with probability 0.95.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 48u, sizeof(double), -1, -1},
    {"lost_m3_s", "Free air lost at the median.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 56u, sizeof(double), -1, -1},
    {"energy_j_m3", "Electrical energy for a cubic metre of free air, with the cause at its median.", "J/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 64u, sizeof(double), -1, -1},
    {"sound_j_m3", "The same of the sound machine.", "J/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 72u, sizeof(double), -1, -1},
    {"waste_w", "Electrical power wasted at air_m3_s, as a mean over time; NaN when that is unknown.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 80u, sizeof(double), -1, -1},
    {"cost", "Its price for each second, in the caller's money; NaN when unknown.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, 0, 88u, sizeof(double), -1, -1},
    {"cause", "Which.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 96u, sizeof(int32_t), -1, -1},
    {"fault", "The fault that the severity is of.", "1", "", "", "freeair_fault", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 100u, sizeof(int32_t), -1, -1},
};

static const freeair_inference_effect initial_freeair_inference_effect = FREEAIR_INFERENCE_EFFECT_INIT;

static const freeair_structure structure_freeair_inference_effect = {
    "freeair_inference_effect", fields_freeair_inference_effect, &initial_freeair_inference_effect, sizeof(freeair_inference_effect), 104u, 15u};

static void loop_freeair_units_is_gauge(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_is_gauge(*(const char **)(void *)a0, (int32_t *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_units_is_gauge[] = {
    {"symbol", "Symbol of a unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"gauge", "1 for a gauge pressure, 0 for every other unit.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_units_is_gauge[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_si_from(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_si_from(*(double *)(void *)a0, *(const char **)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_si_from[] = {
    {"value", "Value in the unit.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"symbol", "Symbol of the unit, such as \"psi\".", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"si", "Value in the coherent SI unit that freeair_units_si_symbol() names.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_si_from[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_from_si(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_from_si(*(double *)(void *)a0, *(const char **)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_from_si[] = {
    {"si", "Value in the unit that freeair_units_si_symbol() names.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"symbol", "Symbol of the unit, such as \"psi\".", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"value", "Value in the unit.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_from_si[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_convert(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_convert(*(double *)(void *)a0, *(const char **)(void *)a1, *(const char **)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_units_convert[] = {
    {"value", "Value in the first unit.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"from", "Symbol of the first unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"to", "Symbol of the second unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"converted", "Value in the second unit.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_convert[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_DIMENSION, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_convert_difference(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_convert_difference(*(double *)(void *)a0, *(const char **)(void *)a1, *(const char **)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_units_convert_difference[] = {
    {"value", "Difference in the first unit.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"from", "Symbol of the first unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"to", "Symbol of the second unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"converted", "Difference in the second unit.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_convert_difference[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_DIMENSION, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_absolute_from_gauge(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_absolute_from_gauge(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_absolute_from_gauge[] = {
    {"gauge_pa", "Gauge pressure.", "Pa", "[-200000;1e9]", "", "", NULL, -200000.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"barometric_pa", "Pressure of the surrounding air, absolute.", "Pa", "[10000;200000]", "", "", NULL, 10000.0, 200000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_absolute_from_gauge[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_units_gauge_from_absolute(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_gauge_from_absolute(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_gauge_from_absolute[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"barometric_pa", "Pressure of the surrounding air, absolute.", "Pa", "[10000;200000]", "", "", NULL, 10000.0, 200000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"gauge_pa", "Gauge pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_gauge_from_absolute[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_reference_conditions(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_conditions(*(int32_t *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_reference_conditions[] = {
    {"state", "A reference state.", "1", "", "", "freeair_reference_state", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"relative_humidity", "Relative humidity, 0 to 1.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_conditions[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_reference_find(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_find(*(const char **)(void *)a0, (int32_t *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_reference_find[] = {
    {"name", "Name of a state.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"state", "The state; 0 when there is none.", "1", "", "", "freeair_reference_state", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_reference_find[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_reference_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_density(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_reference_density[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[223.15;473.15]", "", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity", "Relative humidity; 0 for dry air.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_density[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_reference_flow_convert(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_flow_convert(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_reference_flow_convert[] = {
    {"q1_m3_s", "Volume flow at the first state.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure of the first state, absolute.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Temperature of the first state.", "K", "[223.15;473.15]", "", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity1", "Relative humidity of the first state.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure of the second state, absolute.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature of the second state.", "K", "[223.15;473.15]", "", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity2", "Relative humidity of the second state.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q2_m3_s", "Volume flow at the second state.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_flow_convert[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_reference_flow_between_states(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_flow_between_states(*(double *)(void *)a0, *(int32_t *)(void *)a1, *(int32_t *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_reference_flow_between_states[] = {
    {"q1_m3_s", "Volume flow at the first state.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"from_state", "The first state.", "1", "", "", "freeair_reference_state", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"to_state", "The second state.", "1", "", "", "freeair_reference_state", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"q2_m3_s", "Volume flow at the second state.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_flow_between_states[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_reference_flow_to_state(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_flow_to_state(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(int32_t *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_reference_flow_to_state[] = {
    {"q1_m3_s", "Volume flow at the site's conditions.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the site, absolute.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Temperature at the site.", "K", "[223.15;473.15]", "", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity1", "Relative humidity at the site.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"state", "The reference state.", "1", "", "", "freeair_reference_state", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"q2_m3_s", "Volume flow at the reference state.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_flow_to_state[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_reference_flow_from_state(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_flow_from_state(*(double *)(void *)a0, *(int32_t *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_reference_flow_from_state[] = {
    {"q1_m3_s", "Volume flow at the reference state.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"state", "The reference state.", "1", "", "", "freeair_reference_state", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"p2_pa", "Pressure at the site, absolute.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature at the site.", "K", "[223.15;473.15]", "", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity2", "Relative humidity at the site.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q2_m3_s", "Volume flow at the site's conditions.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_flow_from_state[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_reference_mass_flow_from_volume_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_mass_flow_from_volume_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_reference_mass_flow_from_volume_flow[] = {
    {"q_m3_s", "Volume flow at the state.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[223.15;473.15]", "", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity", "Relative humidity.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_s", "Mass flow of moist air.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"dry_kg_s", "Mass flow of the dry air in it.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_mass_flow_from_volume_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_reference_volume_flow_from_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_reference_volume_flow_from_mass_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_reference_volume_flow_from_mass_flow[] = {
    {"mass_kg_s", "Mass flow of moist air, vapour included.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[223.15;473.15]", "", "", NULL, 223.15, 473.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity", "Relative humidity.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Volume flow at the state.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_reference_volume_flow_from_mass_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_verdict_probability(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_verdict_probability(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_verdict_probability[] = {
    {"value", "Estimate.", "any", "(-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"uncertainty", "Standard uncertainty of the estimate, in the unit of value.", "any", "[0;inf)", "", "", NULL, 0.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"lower", "Lower limit; -inf for none.", "any", "[-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"upper", "Upper limit, above lower; inf for none.", "any", "(-inf;inf]", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"probability", "Probability of conformance.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_verdict_probability[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_verdict_decide(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_verdict_decide(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (int32_t *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_verdict_decide[] = {
    {"value", "Estimate.", "any", "(-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"uncertainty", "Standard uncertainty of the estimate, in the unit of value.", "any", "[0;inf)", "", "", NULL, 0.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"lower", "Lower limit; -inf for none.", "any", "[-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"upper", "Upper limit, above lower; inf for none.", "any", "(-inf;inf]", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"confidence", "Probability required of a firm verdict.", "1", "(0.5;1)", "", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"verdict", "The decision.", "1", "", "", "freeair_verdict", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_verdict_decide[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coverage_mean(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_mean((const double *)(void *)a0, *(size_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_coverage_mean[] = {
    {"reading", "Readings.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 1, -1},
    {"n", "Number of readings.", "1", "[2;inf)", "", "", NULL, 2.0, INFINITY, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"mean", "Their mean.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"deviation", "Standard deviation of one reading.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"uncertainty", "Standard uncertainty of the mean.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"nu", "Degrees of freedom.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_mean[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_coverage_correlation(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_correlation((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_coverage_correlation[] = {
    {"a", "Readings of one quantity.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"b", "Readings of the other, taken together with those.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Number of pairs.", "1", "[2;inf)", "", "", NULL, 2.0, INFINITY, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"r", "Coefficient of correlation, from -1 to 1.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_correlation[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_coverage_pooled(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_pooled((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_coverage_pooled[] = {
    {"deviation", "Standard deviation of each series.", "any", "[0;1e150]", "", "", NULL, 0.0, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"freedom", "Degrees of freedom of each series.", "1", "(0;1e15]", "", "", NULL, 0.0, 1000000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Number of series.", "1", "[1;inf)", "", "", NULL, 1.0, INFINITY, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"pooled", "Pooled standard deviation of one reading.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"nu", "Its degrees of freedom.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_pooled[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_coverage_uncertainty_from_limits(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_uncertainty_from_limits(*(double *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_coverage_uncertainty_from_limits[] = {
    {"half_width", "Half the distance of the limits; of a display, half its last digit.", "any", "[0;1e150]", "", "", NULL, 0.0, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"distribution", "Rectangular, triangular or arcsine.", "1", "", "", "freeair_coverage_distribution", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"uncertainty", "Standard uncertainty.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_uncertainty_from_limits[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coverage_degrees_of_freedom_from_doubt(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_degrees_of_freedom_from_doubt(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_coverage_degrees_of_freedom_from_doubt[] = {
    {"doubt", "Relative uncertainty of the standard uncertainty.", "1", "[1e-9;0.7071]", "", "", NULL, 1e-09, 0.7071, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nu", "Degrees of freedom.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_degrees_of_freedom_from_doubt[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coverage_degrees_of_freedom(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_degrees_of_freedom(*(double *)(void *)a0, (const double *)(void *)a1, (const double *)(void *)a2, *(size_t *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_coverage_degrees_of_freedom[] = {
    {"combined", "Combined standard uncertainty.", "any", "[1e-75;1e75]", "root of the sum of the squares of the contributions", "", NULL, 1e-75, 1e+75, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"contribution", "Sensitivity times standard uncertainty of each input.", "any", "[-1e75;1e75]", "", "", NULL, -1e+75, 1e+75, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"freedom", "Degrees of freedom of each input; inf when its uncertainty is sure.", "1", "(0;inf]", "", "", NULL, 0.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"n", "Number of inputs.", "1", "[1;inf)", "", "", NULL, 1.0, INFINITY, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"nu_effective", "Effective degrees of freedom; inf when nothing limits them.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_degrees_of_freedom[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_coverage_factor(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_factor(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_coverage_factor[] = {
    {"probability", "Probability within the interval.", "1", "(0;1)", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"nu", "Degrees of freedom; inf for a normal distribution.", "1", "[1;inf]", "", "", NULL, 1.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"factor", "Coverage factor.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_factor[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coverage_probability(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_probability(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_coverage_probability[] = {
    {"factor", "Coverage factor.", "1", "[0;1e16]", "", "", NULL, 0.0, 1e+16, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nu", "Degrees of freedom; inf for a normal distribution.", "1", "[1;inf]", "", "", NULL, 1.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"probability", "Probability within the interval.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_probability[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coverage_interval(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_coverage_interval(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_coverage_interval[] = {
    {"y", "Estimate.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"uncertainty", "Its standard uncertainty.", "any", "[0;1e130]", "", "", NULL, 0.0, 1e+130, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"probability", "Probability within the interval.", "1", "(0;1)", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"nu", "Degrees of freedom; inf for a normal distribution.", "1", "[1;inf]", "", "", NULL, 1.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"expanded", "Expanded uncertainty, half the width of the interval.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"low", "Lower end.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"high", "Upper end.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coverage_interval[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_pressure_from_altitude(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_pressure_from_altitude(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_pressure_from_altitude[] = {
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "[-5000;11000]", "", "", NULL, -5000.0, 11000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_pressure_from_altitude[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_altitude_from_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_altitude_from_pressure(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_altitude_from_pressure[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[22632;177688]", "", "", NULL, 22632.0, 177688.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_altitude_from_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_temperature_from_altitude(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_temperature_from_altitude(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_temperature_from_altitude[] = {
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "[-5000;11000]", "", "", NULL, -5000.0, 11000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_temperature_from_altitude[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_density_from_altitude(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_density_from_altitude(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_density_from_altitude[] = {
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "[-5000;11000]", "", "", NULL, -5000.0, 11000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_density_from_altitude[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_altitude_from_geometric(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_altitude_from_geometric(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_altitude_from_geometric[] = {
    {"geometric_m", "Geometric altitude above mean sea level.", "m", "[-5000;20000]", "", "", NULL, -5000.0, 20000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"altitude_m", "Geopotential altitude.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_altitude_from_geometric[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_pressure_from_geometric(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_pressure_from_geometric(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_pressure_from_geometric[] = {
    {"geometric_m", "Geometric altitude above mean sea level.", "m", "[-4996;11019]", "", "", NULL, -4996.0, 11019.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_pressure_from_geometric[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_state(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_state(*(double *)(void *)a0, *(double *)(void *)a1, (freeair_dry_air_properties *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_state[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"properties", "All properties.", "", "", "", "", &structure_freeair_dry_air_properties, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_dry_air_properties), -1, -1},
};

static const int32_t statuses_freeair_dry_air_state[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_density(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_density[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_density[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_state_from_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_state_from_density(*(double *)(void *)a0, *(double *)(void *)a1, (freeair_dry_air_properties *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_state_from_density[] = {
    {"rho_kg_m3", "Density.", "kg/m3", "(0;1530]", "", "", NULL, 0.0, 1530.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"properties", "All properties.", "", "", "", "", &structure_freeair_dry_air_properties, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_dry_air_properties), -1, -1},
};

static const int32_t statuses_freeair_dry_air_state_from_density[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_temperature_from_enthalpy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_temperature_from_enthalpy(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_temperature_from_enthalpy[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"h_j_kg", "Enthalpy; 0 at 273.15 K and 101325 Pa.", "J/kg", "[-1e6;5e6]", "", "", NULL, -1000000.0, 5000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_temperature_from_enthalpy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_temperature_from_entropy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_temperature_from_entropy(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_temperature_from_entropy[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"s_j_kg_k", "Entropy; 0 at 273.15 K and 101325 Pa.", "J/(kg K)", "[-1e4;1e4]", "", "", NULL, -10000.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_temperature_from_entropy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_saturation(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_saturation(*(double *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_saturation[] = {
    {"t_k", "Temperature.", "K", "[59.75;132.6312]", "", "", NULL, 59.75, 132.6312, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"dew_pa", "Pressure above which a gas begins to condense.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"bubble_pa", "Pressure below which a liquid begins to boil.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_saturation[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_ideal_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_density(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_density[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "(0;2e9]", "", "", NULL, 0.0, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_density[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_ideal_heat_capacity(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_heat_capacity(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_heat_capacity[] = {
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"cp_j_kg_k", "Heat capacity at constant pressure.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_heat_capacity[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_ideal_heat_capacity_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_heat_capacity_ratio(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_heat_capacity_ratio[] = {
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"heat_capacity_ratio", "cp/cv.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_heat_capacity_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_ideal_speed_of_sound(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_speed_of_sound(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_speed_of_sound[] = {
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_of_sound_m_s", "Speed of sound.", "m/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_speed_of_sound[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_ideal_enthalpy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_enthalpy(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_enthalpy[] = {
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"h_j_kg", "Enthalpy.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_enthalpy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_ideal_entropy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_entropy(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_entropy[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"s_j_kg_k", "Entropy.", "J/(kg K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_entropy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_dry_air_ideal_temperature_from_enthalpy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_temperature_from_enthalpy(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_temperature_from_enthalpy[] = {
    {"h_j_kg", "Enthalpy.", "J/kg", "[-214000;1980000]", "", "", NULL, -214000.0, 1980000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_temperature_from_enthalpy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_ideal_temperature_from_entropy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_temperature_from_entropy(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_temperature_from_entropy[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"s_j_kg_k", "Entropy.", "J/(kg K)", "[-1e4;1e4]", "", "", NULL, -10000.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_temperature_from_entropy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_ideal_isentropic_temperature(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_ideal_isentropic_temperature(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_ideal_isentropic_temperature[] = {
    {"t1_k", "Temperature before.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"pressure_ratio", "p2/p1, above 1 in compression.", "1", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature after.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_ideal_isentropic_temperature[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_transport_viscosity(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_transport_viscosity(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_transport_viscosity[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"viscosity_pas", "Dynamic viscosity.", "Pa s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_transport_viscosity[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_transport_conductivity(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_transport_conductivity(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_transport_conductivity[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1e-3;2e9]", "", "", NULL, 0.001, 2000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"conductivity_w_m_k", "Thermal conductivity.", "W/(m K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_transport_conductivity[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_transport_viscosity_from_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_transport_viscosity_from_density(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_transport_viscosity_from_density[] = {
    {"rho_kg_m3", "Density.", "kg/m3", "[0;1530]", "", "", NULL, 0.0, 1530.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"viscosity_pas", "Dynamic viscosity.", "Pa s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_transport_viscosity_from_density[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_dry_air_transport_conductivity_from_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_dry_air_transport_conductivity_from_density(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_dry_air_transport_conductivity_from_density[] = {
    {"rho_kg_m3", "Density.", "kg/m3", "[0;1530]", "", "", NULL, 0.0, 1530.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[60;2000]", "", "", NULL, 60.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"conductivity_w_m_k", "Thermal conductivity.", "W/(m K)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_dry_air_transport_conductivity_from_density[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_saturation_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_saturation_pressure(*(double *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_saturation_pressure[] = {
    {"t_k", "Temperature; over water at least 123 K.", "K", "[50;647.096]", "", "", NULL, 50.0, 647.096, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"over", "What the vapour is in equilibrium with.", "1", "", "", "freeair_saturation_over", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"p_pa", "Saturation pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_saturation_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_saturation_temperature(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_saturation_temperature(*(double *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_saturation_temperature[] = {
    {"p_pa", "Pressure of the vapour.", "Pa", "(0;22.064e6]", "", "", NULL, 0.0, 22064000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"over", "What the vapour is in equilibrium with.", "1", "", "", "freeair_saturation_over", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"t_k", "Saturation temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_saturation_temperature[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_saturation_pressure_water(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_saturation_pressure_water(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_saturation_pressure_water[] = {
    {"t_k", "Temperature.", "K", "[273.15;647.096]", "", "", NULL, 273.15, 647.096, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Saturation pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_saturation_pressure_water[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_saturation_temperature_water(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_saturation_temperature_water(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_saturation_temperature_water[] = {
    {"p_pa", "Saturation pressure.", "Pa", "[611.213;22.064e6]", "", "", NULL, 611.213, 22064000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_saturation_temperature_water[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_saturation_pressure_ice(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_saturation_pressure_ice(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_saturation_pressure_ice[] = {
    {"t_k", "Temperature.", "K", "[50;273.16]", "", "", NULL, 50.0, 273.16, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Sublimation pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_saturation_pressure_ice[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_saturation_pressure_supercooled(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_saturation_pressure_supercooled(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_saturation_pressure_supercooled[] = {
    {"t_k", "Temperature.", "K", "[123;332]", "", "", NULL, 123.0, 332.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Saturation pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_saturation_pressure_supercooled[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_saturation_latent_heat(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_saturation_latent_heat(*(double *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_saturation_latent_heat[] = {
    {"t_k", "Temperature.", "K", "[238.15;573.15]", "", "", NULL, 238.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"over", "What the vapour comes from.", "1", "", "", "freeair_saturation_over", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"l_j_kg", "Latent heat.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_saturation_latent_heat[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_enhancement_factor(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_enhancement_factor(*(double *)(void *)a0, *(double *)(void *)a1, *(int32_t *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_enhancement_factor[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1;1e7]", "", "", NULL, 1.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"over", "What the vapour is in equilibrium with.", "1", "", "", "freeair_saturation_over", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"factor", "Enhancement factor.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_enhancement_factor[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_enhancement_fugacity(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_enhancement_fugacity(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_enhancement_fugacity[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1;1e7]", "", "", NULL, 1.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mole_fraction", "Mole fraction of vapour.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"fugacity_pa", "Fugacity of the vapour.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_enhancement_fugacity[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_enhancement_virials(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_enhancement_virials(*(double *)(void *)a0, (freeair_enhancement_coefficients *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_enhancement_virials[] = {
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficients", "The coefficients.", "", "", "", "", &structure_freeair_enhancement_coefficients, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_enhancement_coefficients), -1, -1},
};

static const int32_t statuses_freeair_enhancement_virials[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN};

static void loop_freeair_moist_air_state(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_moist_air_state(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (freeair_moist_air_properties *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_moist_air_state[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1;1e7]", "", "", NULL, 1.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"humidity_ratio", "Mass of vapour by mass of dry air.", "1", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"properties", "All properties.", "", "", "", "", &structure_freeair_moist_air_properties, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_moist_air_properties), -1, -1},
};

static const int32_t statuses_freeair_moist_air_state[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_moist_air_state_from_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_moist_air_state_from_density(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (freeair_moist_air_properties *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_moist_air_state_from_density[] = {
    {"rho_kg_m3", "Density.", "kg/m3", "(0;200]", "", "", NULL, 0.0, 200.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"humidity_ratio", "Mass of vapour by mass of dry air.", "1", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"properties", "All properties.", "", "", "", "", &structure_freeair_moist_air_properties, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_moist_air_properties), -1, -1},
};

static const int32_t statuses_freeair_moist_air_state_from_density[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_moist_air_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_moist_air_density(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_moist_air_density[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1;1e7]", "", "", NULL, 1.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity", "Relative humidity over water.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_moist_air_density[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_moist_air_density_cipm(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_moist_air_density_cipm(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_moist_air_density_cipm[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[60000;110000]", "", "", NULL, 60000.0, 110000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[288.15;300.15]", "", "", NULL, 288.15, 300.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"relative_humidity", "Relative humidity.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"carbon_dioxide", "Mole fraction of carbon dioxide.", "1", "[0;0.01]", "0.0004", "", NULL, 0.0, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_moist_air_density_cipm[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_moist_air_enthalpy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_moist_air_enthalpy(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_moist_air_enthalpy[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1;1e7]", "", "", NULL, 1.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"humidity_ratio", "Mass of vapour by mass of dry air.", "1", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"h_dry_j_kg", "Enthalpy by mass of dry air.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_moist_air_enthalpy[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_moist_air_volume(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_moist_air_volume(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_moist_air_volume[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[1;1e7]", "", "", NULL, 1.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[173.15;573.15]", "", "", NULL, 173.15, 573.15, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"humidity_ratio", "Mass of vapour by mass of dry air.", "1", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_dry_m3_kg", "Volume by mass of dry air.", "m3/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_moist_air_volume[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_impedance_from_phase(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_impedance_from_phase(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_impedance_from_phase[] = {
    {"voltage_v", "Voltage, rms or amplitude, as the current.", "V", "(0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_a", "Current.", "A", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phase_rad", "Angle by which the current lags the voltage.", "rad", "[-1.5708;1.5708]", "", "", NULL, -1.5708, 1.5708, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Resistance.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"x_ohm", "Reactance, negative when capacitive.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"z_ohm", "Impedance.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_impedance_from_phase[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_impedance_from_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_impedance_from_power(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_impedance_from_power[] = {
    {"voltage_v", "Voltage, rms.", "V", "(0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_a", "Current, rms.", "A", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power.", "W", "[0;1e12]", "", "", NULL, 0.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Resistance.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"x_ohm", "Reactance.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"z_ohm", "Impedance.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_impedance_from_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_supply_uncertainty_from_meter(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_supply_uncertainty_from_meter(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_supply_uncertainty_from_meter[] = {
    {"reading_v", "What the meter shows.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"accuracy", "Limit of error as a fraction of the reading.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"counts", "Limit of error in units of the last digit.", "1", "[0;10000]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"resolution_v", "Value of one unit of the last digit.", "V", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"uncertainty_v", "Standard uncertainty.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_supply_uncertainty_from_meter[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_supply_deviation(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_supply_deviation(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_supply_deviation[] = {
    {"measured_v", "Voltage at the motor terminals.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nameplate_v", "Voltage on the nameplate.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"deviation", "Deviation as a fraction of the nameplate.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_supply_deviation[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_supply_voltage_verdict(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_supply_voltage_verdict(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (int32_t *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_supply_voltage_verdict[] = {
    {"measured_v", "Voltage at the motor terminals.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"uncertainty_v", "Standard uncertainty of the measurement.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nameplate_v", "Voltage on the nameplate.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tolerance", "Permitted deviation as a fraction of the nameplate.", "1", "[0.000001;1]", "", "", NULL, 1e-06, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"confidence", "Probability required of a firm verdict.", "1", "(0.5;1)", "", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"verdict", "The decision.", "1", "", "", "freeair_verdict", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
    {"probability", "Probability that the voltage is within the tolerance.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_supply_voltage_verdict[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_supply_combined_deviation(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_supply_combined_deviation(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_supply_combined_deviation[] = {
    {"voltage_deviation", "Deviation of the voltage as a fraction.", "1", "[-1;1]", "", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_deviation", "Deviation of the frequency as a fraction.", "1", "[-1;1]", "", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"combined", "Sum of the absolute deviations.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_supply_combined_deviation[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_supply_voltage_drop(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_supply_voltage_drop(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(int32_t *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_supply_voltage_drop[] = {
    {"current_a", "Line current.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Resistance of one wire, one way.", "ohm", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"x_ohm", "Reactance of one wire, one way.", "ohm", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor of the load, lagging.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"drop_v", "Voltage drop.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_supply_voltage_drop[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_supply_voltage_at_load(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_supply_voltage_at_load(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(int32_t *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_supply_voltage_at_load[] = {
    {"source_v", "Voltage at the source end.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_a", "Line current.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Resistance of one wire, one way.", "ohm", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"x_ohm", "Reactance of one wire, one way.", "ohm", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor at the load, lagging.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"load_v", "Voltage at the load end.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"drop_v", "Difference of the two voltages.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_supply_voltage_at_load[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_supply_starting_voltage(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_supply_starting_voltage(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(int32_t *)(void *)a6, (double *)(void *)a7, (double *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_supply_starting_voltage[] = {
    {"source_v", "Voltage at the source end, no load.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nameplate_v", "Voltage on the nameplate.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"locked_rotor_a", "Line current with locked rotor at nameplate voltage.", "A", "[0.001;1000000]", "", "", NULL, 0.001, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor with locked rotor, lagging; 0.2 to 0.6 is usual.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Resistance of one wire, one way.", "ohm", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"x_ohm", "Reactance of one wire, one way.", "ohm", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"start_v", "Voltage at the motor.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"start_a", "Line current.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_supply_starting_voltage[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_unbalance_voltage(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_unbalance_voltage(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_unbalance_voltage[] = {
    {"u12_v", "Voltage between lines 1 and 2.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"u23_v", "Voltage between lines 2 and 3.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"u31_v", "Voltage between lines 3 and 1.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"unbalance", "Unbalance as a fraction.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"mean_v", "Mean of the three.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_unbalance_voltage[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_unbalance_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_unbalance_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_unbalance_current[] = {
    {"i1_a", "Current in line 1.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"i2_a", "Current in line 2.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"i3_a", "Current in line 3.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"unbalance", "Unbalance as a fraction.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"mean_a", "Mean of the three.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_unbalance_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_unbalance_factor(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_unbalance_factor(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_unbalance_factor[] = {
    {"u12_v", "Voltage between lines 1 and 2.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"u23_v", "Voltage between lines 2 and 3.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"u31_v", "Voltage between lines 3 and 1.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"factor", "Unbalance factor, 0 to 1.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_unbalance_factor[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_unbalance_derating(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_unbalance_derating(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_unbalance_derating[] = {
    {"unbalance", "Voltage unbalance by the maximum-deviation definition.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"derating", "Factor on rated power.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_unbalance_derating[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_unbalance_temperature_rise(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_unbalance_temperature_rise(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_unbalance_temperature_rise[] = {
    {"rise_k", "Rise of the windings on a balanced supply.", "K", "[0;500]", "", "", NULL, 0.0, 500.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"unbalance", "Voltage unbalance by the maximum-deviation definition.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"unbalanced_rise_k", "Rise on the unbalanced supply, hottest phase.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_unbalance_temperature_rise[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_unbalance_single_phasing_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_unbalance_single_phasing_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_unbalance_single_phasing_current[] = {
    {"balanced_a", "Line current with all three lines.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"balanced_power_factor", "Power factor then.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"single_power_factor", "Power factor on two lines.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"single_phasing_a", "Line current on two lines.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_unbalance_single_phasing_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_synchronous_speed(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_synchronous_speed(*(double *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_motor_synchronous_speed[] = {
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"poles", "Number of poles, even; an odd number is refused.", "1", "[2;100]", "", "", NULL, 2.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"synchronous_rev_s", "Synchronous speed.", "rev/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_synchronous_speed[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_poles_from_speed(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_poles_from_speed(*(double *)(void *)a0, *(double *)(void *)a1, (int32_t *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_motor_poles_from_speed[] = {
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Rated speed.", "rev/s", "[0.01;1000]", "", "", NULL, 0.01, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"poles", "Number of poles; 0 on error.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_motor_poles_from_speed[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_motor_slip(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_slip(*(double *)(void *)a0, *(int32_t *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_motor_slip[] = {
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"poles", "Number of poles, even; an odd number is refused.", "1", "[2;100]", "", "", NULL, 2.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"speed_rev_s", "Shaft speed.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip as a fraction.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_slip[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_speed_from_slip(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_speed_from_slip(*(double *)(void *)a0, *(int32_t *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_motor_speed_from_slip[] = {
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"poles", "Number of poles, even; an odd number is refused.", "1", "[2;100]", "", "", NULL, 2.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"slip", "Slip as a fraction.", "1", "[-1;1]", "", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Shaft speed.", "rev/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_speed_from_slip[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_rotor_frequency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_rotor_frequency(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_motor_rotor_frequency[] = {
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip as a fraction.", "1", "[-1;1]", "", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rotor_hz", "Rotor frequency.", "Hz", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_rotor_frequency[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_slip_at_supply(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_slip_at_supply(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_motor_slip_at_supply[] = {
    {"slip", "Slip that is known, as at rated load.", "1", "[0;1)", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_ratio", "New voltage over that of the known slip.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_ratio", "New frequency over that of the known slip.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_ratio", "New load torque over that of the known slip.", "1", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"new_slip", "Slip then.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_slip_at_supply[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_motor_torque_from_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_torque_from_power(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_motor_torque_from_power[] = {
    {"power_w", "Shaft power.", "W", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Shaft speed.", "rev/s", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_nm", "Torque.", "N m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_torque_from_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_power_from_torque(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_power_from_torque(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_motor_power_from_torque[] = {
    {"torque_nm", "Torque.", "N m", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Shaft speed.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Shaft power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_power_from_torque[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_torque_at_slip(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_torque_at_slip(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_motor_torque_at_slip[] = {
    {"breakdown_nm", "Greatest torque of the motor.", "N m", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"breakdown_slip", "Slip there; 0.1 to 0.3 is usual.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip as a fraction.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_nm", "Torque.", "N m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_torque_at_slip[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_locked_rotor_torque(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_locked_rotor_torque(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_motor_locked_rotor_torque[] = {
    {"torque_nm", "Locked-rotor torque that is known.", "N m", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_ratio", "New voltage over that of the known torque.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_ratio", "New frequency over that of the known torque.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"new_torque_nm", "Locked-rotor torque then.", "N m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_locked_rotor_torque[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_locked_rotor_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_locked_rotor_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_motor_locked_rotor_current[] = {
    {"current_a", "Locked-rotor current that is known.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_ratio", "New voltage over that of the known current.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_ratio", "New frequency over that of the known current.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"new_current_a", "Locked-rotor current then.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_locked_rotor_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_shaft_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_shaft_power(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(int32_t *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_motor_shaft_power[] = {
    {"voltage_v", "Line voltage.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_a", "Line current.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor, lagging.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Efficiency at that load.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"shaft_w", "Power at the shaft.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"input_w", "Power from the supply.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_shaft_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_motor_line_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_motor_line_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(int32_t *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_motor_line_current[] = {
    {"shaft_w", "Power at the shaft.", "W", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Line voltage.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor, lagging.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Efficiency at that load.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"current_a", "Line current.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_motor_line_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_nameplate_efficiency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_nameplate_efficiency(*(int32_t *)(void *)a0, *(int32_t *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_nameplate_efficiency[] = {
    {"efficiency_class", "Class.", "1", "", "", "freeair_nameplate_efficiency_class", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"poles", "2, 4 or 6; odd numbers are refused.", "1", "[2;6]", "", "", NULL, 2.0, 6.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"rated_w", "Rated shaft power.", "W", "[750;200000]", "", "", NULL, 750.0, 200000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Efficiency as a fraction.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nameplate_efficiency[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_nameplate_code_band(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_nameplate_code_band(*(int32_t *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_nameplate_code_band[] = {
    {"code", "Code letter.", "1", "", "", "freeair_nameplate_code", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"lower", "Lower end, locked-rotor apparent power over rated shaft power.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"upper", "Upper end; infinite for V.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nameplate_code_band[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_nameplate_code_from_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_nameplate_code_from_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(int32_t *)(void *)a3, (int32_t *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_nameplate_code_from_current[] = {
    {"locked_rotor_a", "Line current with locked rotor at that voltage.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Line voltage.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rated_w", "Rated shaft power.", "W", "[1;1000000000]", "", "", NULL, 1.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"code", "Code letter; 0 on error.", "1", "", "", "freeair_nameplate_code", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_nameplate_code_from_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_nameplate_locked_rotor_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_nameplate_locked_rotor_current(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(int32_t *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_nameplate_locked_rotor_current[] = {
    {"code", "Code letter.", "1", "", "", "freeair_nameplate_code", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"rated_w", "Rated shaft power.", "W", "[1;1000000000]", "", "", NULL, 1.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Line voltage.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"lower_a", "Lower end of the current.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"upper_a", "Upper end; infinite for V.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nameplate_locked_rotor_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_nameplate_full_load_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_nameplate_full_load_current(*(double *)(void *)a0, *(double *)(void *)a1, *(int32_t *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_nameplate_full_load_current[] = {
    {"rated_w", "Rated shaft power.", "W", "[1;1000000000]", "", "", NULL, 1.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Voltage of motor or system.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"current_a", "Full-load current.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nameplate_full_load_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_nameplate_load_from_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_nameplate_load_from_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_nameplate_load_from_current[] = {
    {"current_a", "Line current measured.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nameplate_a", "Current on the nameplate.", "A", "[0.001;1000000]", "", "", NULL, 0.001, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Line voltage measured.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nameplate_v", "Voltage on the nameplate.", "V", "[1;1000000]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"load", "Shaft power over rated shaft power.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nameplate_load_from_current[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_nameplate_load_from_speed(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_nameplate_load_from_speed(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_nameplate_load_from_speed[] = {
    {"speed_rev_s", "Speed measured.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"synchronous_rev_s", "Synchronous speed at the frequency measured.", "rev/s", "[0.01;1000]", "", "", NULL, 0.01, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nameplate_rev_s", "Speed on the nameplate.", "rev/s", "[0.01;1000]", "", "", NULL, 0.01, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_ratio", "Voltage measured over that on the nameplate.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"load", "Shaft power over rated shaft power.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nameplate_load_from_speed[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_capacitor_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_capacitor_current[] = {
    {"capacitance_f", "Capacitance.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Voltage across the capacitor.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_hz", "Frequency.", "Hz", "[0.1;100000]", "", "", NULL, 0.1, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_a", "Current through it.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_from_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_from_current(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_capacitor_from_current[] = {
    {"current_a", "Current through the capacitor.", "A", "[0.000001;1000000]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_uncertainty_a", "Standard uncertainty of the current.", "A", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Voltage across the capacitor.", "V", "[0.001;1000000]", "", "", NULL, 0.001, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_uncertainty_v", "Standard uncertainty of the voltage.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;100000]", "", "", NULL, 0.1, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"capacitance_f", "Capacitance.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"uncertainty_f", "Standard uncertainty of the capacitance.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_from_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_uncertainty_from_meter(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_uncertainty_from_meter(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_capacitor_uncertainty_from_meter[] = {
    {"reading_f", "What the meter shows.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"accuracy", "Limit of error as a fraction of the reading.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"counts", "Limit of error in units of the last digit.", "1", "[0;10000]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"resolution_f", "Value of one unit of the last digit.", "F", "[0;0.001]", "", "", NULL, 0.0, 0.001, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"uncertainty_f", "Standard uncertainty.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_uncertainty_from_meter[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_limits(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_limits(*(double *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_capacitor_limits[] = {
    {"rated_f", "Printed value; of a start capacitor the lower one.", "F", "[0.000000000001;1]", "", "", NULL, 1e-12, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tolerance_class", "Tolerance class.", "1", "", "", "freeair_capacitor_tolerance", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"minimum_f", "Least sound value.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"maximum_f", "Greatest sound value.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_limits[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_capacitor_verdict(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_verdict(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (int32_t *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_capacitor_verdict[] = {
    {"measured_f", "Value found.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"uncertainty_f", "Standard uncertainty of it.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"minimum_f", "Least sound value.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"maximum_f", "Greatest sound value, above minimum_f.", "F", "(0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"confidence", "Probability required of a firm verdict.", "1", "(0.5;1)", "", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"verdict", "The decision.", "1", "", "", "freeair_verdict", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
    {"probability_in", "Probability that the value is within its limits.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"probability_low", "Probability that it is below the least sound value.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_verdict[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_discharge_time(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_discharge_time(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_capacitor_discharge_time[] = {
    {"capacitance_f", "Capacitance.", "F", "[0.000000000001;1]", "", "", NULL, 1e-12, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Resistance.", "ohm", "[0.000001;1000000000000]", "", "", NULL, 1e-06, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"start_v", "Voltage at the start; the peak of an alternating voltage.", "V", "[0.000001;1000000]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"safe_v", "Voltage at the end, not above start_v.", "V", "[0.000001;1000000]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"time_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_discharge_time[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_capacitor_residual_voltage(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_residual_voltage(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_capacitor_residual_voltage[] = {
    {"capacitance_f", "Capacitance.", "F", "[0.000000000001;1]", "", "", NULL, 1e-12, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Resistance.", "ohm", "[0.000001;1000000000000]", "", "", NULL, 1e-06, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"start_v", "Voltage at the start; the peak of an alternating voltage.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"time_s", "Time since.", "s", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"residual_v", "Voltage left.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_residual_voltage[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_bleeder(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_bleeder(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_capacitor_bleeder[] = {
    {"capacitance_f", "Capacitance.", "F", "[0.000000000001;1]", "", "", NULL, 1e-12, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"start_v", "Peak voltage at the start.", "V", "[0.000001;1000000]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"safe_v", "Voltage at the end, below start_v.", "V", "[0.000001;1000000]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"time_s", "Time allowed.", "s", "[0.000001;1000000000]", "", "", NULL, 1e-06, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm", "Greatest resistance that does it.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"power_w", "Mean power in that resistor at work.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_bleeder[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_capacitor_energy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_energy(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_capacitor_energy[] = {
    {"capacitance_f", "Capacitance.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"voltage_v", "Voltage; the peak of an alternating voltage.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"energy_j", "Energy.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_energy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_series(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_series(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_capacitor_series[] = {
    {"first_f", "Capacitance of the first.", "F", "[0.000000000001;1]", "", "", NULL, 1e-12, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_f", "Capacitance of the second.", "F", "[0.000000000001;1]", "", "", NULL, 1e-12, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"capacitance_f", "Capacitance of both.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_series[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_parallel(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_parallel(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_capacitor_parallel[] = {
    {"first_f", "Capacitance of the first.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_f", "Capacitance of the second.", "F", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"capacitance_f", "Capacitance of both.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_parallel[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_motor_quadrature(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_motor_quadrature(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_capacitor_motor_quadrature[] = {
    {"main_r_ohm", "Resistance of the main winding, rotor locked.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"main_x_ohm", "Reactance of the main winding, rotor locked.", "ohm", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"auxiliary_r_ohm", "Resistance of the auxiliary winding, rotor locked.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"auxiliary_x_ohm", "Reactance of the auxiliary winding, rotor locked.", "ohm", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"capacitance_f", "Capacitance in series with the auxiliary winding.", "F", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"reactance_ohm", "Its reactance, as a positive number.", "ohm", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_motor_quadrature[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_capacitor_motor_starting_torque_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_motor_starting_torque_ratio(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_capacitor_motor_starting_torque_ratio[] = {
    {"main_r_ohm", "Resistance of the main winding, rotor locked.", "ohm", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"main_x_ohm", "Reactance of the main winding, rotor locked.", "ohm", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"auxiliary_r_ohm", "Resistance of the auxiliary winding, rotor locked.", "ohm", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"auxiliary_x_ohm", "Reactance of the auxiliary winding, rotor locked.", "ohm", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_hz", "Supply frequency.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"capacitance_f", "Capacitance found.", "F", "[0.000000001;1]", "", "", NULL, 1e-09, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rated_f", "Capacitance that should be.", "F", "[0.000000001;1]", "", "", NULL, 1e-09, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_ratio", "Starting torque over that with the rated capacitance; negative starts backwards.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_motor_starting_torque_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_capacitor_motor_run(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_motor_run((const freeair_capacitor_motor_windings *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(int32_t *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (freeair_capacitor_motor_performance *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_capacitor_motor_run[] = {
    {"windings", "Constants of the motor.", "", "", "", "", &structure_freeair_capacitor_motor_windings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_capacitor_motor_windings), -1, -1},
    {"voltage_v", "Line voltage.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_hz", "Supply frequency, at which the reactances hold.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"poles", "Number of poles, even; an odd number is refused.", "1", "[2;100]", "", "", NULL, 2.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"capacitance_f", "Capacitance; 0 opens the auxiliary winding.", "F", "[0;0.1]", "", "", NULL, 0.0, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip as a fraction; 1 is standstill.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"performance", "The result; initialise it first.", "", "", "", "", &structure_freeair_capacitor_motor_performance, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_capacitor_motor_performance), -1, -1},
};

static const int32_t statuses_freeair_capacitor_motor_run[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_VERSION};

static void loop_freeair_capacitor_motor_slip(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_capacitor_motor_slip((const freeair_capacitor_motor_windings *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(int32_t *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_capacitor_motor_slip[] = {
    {"windings", "Constants of the motor.", "", "", "", "", &structure_freeair_capacitor_motor_windings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_capacitor_motor_windings), -1, -1},
    {"voltage_v", "Line voltage.", "V", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_hz", "Supply frequency, at which the reactances hold.", "Hz", "[0.1;1000]", "", "", NULL, 0.1, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"poles", "Number of poles, even; an odd number is refused.", "1", "[2;100]", "", "", NULL, 2.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"capacitance_f", "Capacitance; 0 opens the auxiliary winding.", "F", "[0;0.1]", "", "", NULL, 0.0, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_nm", "Torque across the air gap.", "N m", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip as a fraction.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_capacitor_motor_slip[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_VERSION, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pulley_driven_speed(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_driven_speed(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_pulley_driven_speed[] = {
    {"driver_rev_s", "Speed of the driving pulley.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driver_m", "Pitch diameter of the driving pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driven_m", "Pitch diameter of the driven pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip of the belt as a fraction; 0 for none.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driven_rev_s", "Speed of the driven pulley.", "rev/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_driven_speed[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_pulley_driver_diameter(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_driver_diameter(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_pulley_driver_diameter[] = {
    {"driver_rev_s", "Speed of the driving pulley.", "rev/s", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driven_rev_s", "Speed wanted of the driven pulley.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driven_m", "Pitch diameter of the driven pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip of the belt as a fraction; 0 for none.", "1", "[0;0.9]", "", "", NULL, 0.0, 0.9, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driver_m", "Pitch diameter of the driving pulley.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_driver_diameter[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_pulley_belt_speed(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_belt_speed(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_pulley_belt_speed[] = {
    {"diameter_m", "Pitch diameter of a pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Speed of that pulley.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m_s", "Speed of the belt.", "m/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_belt_speed[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_pulley_best_belt_speed(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_best_belt_speed(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_pulley_best_belt_speed[] = {
    {"tight_n", "Greatest tension permitted.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_m", "Mass of the belt for each metre.", "kg/m", "[0.0001;100]", "", "", NULL, 0.0001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m_s", "Speed of the belt.", "m/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_best_belt_speed[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_pulley_open_length(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_open_length(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_pulley_open_length[] = {
    {"first_m", "Pitch diameter of one pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_m", "Pitch diameter of the other.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"centre_m", "Distance between the shafts.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"length_m", "Pitch length of the belt.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_open_length[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pulley_crossed_length(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_crossed_length(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_pulley_crossed_length[] = {
    {"first_m", "Pitch diameter of one pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_m", "Pitch diameter of the other.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"centre_m", "Distance between the shafts.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"length_m", "Length of the belt.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_crossed_length[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pulley_centre_from_open_length(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_centre_from_open_length(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_pulley_centre_from_open_length[] = {
    {"first_m", "Pitch diameter of one pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_m", "Pitch diameter of the other.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"length_m", "Pitch length of the belt.", "m", "[0.001;2000]", "", "", NULL, 0.001, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"centre_m", "Distance between the shafts.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_centre_from_open_length[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pulley_centre_from_crossed_length(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_centre_from_crossed_length(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_pulley_centre_from_crossed_length[] = {
    {"first_m", "Pitch diameter of one pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_m", "Pitch diameter of the other.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"length_m", "Length of the belt.", "m", "[0.001;2000]", "", "", NULL, 0.001, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"centre_m", "Distance between the shafts.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_centre_from_crossed_length[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pulley_open_wrap(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_open_wrap(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_pulley_open_wrap[] = {
    {"first_m", "Pitch diameter of one pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_m", "Pitch diameter of the other.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"centre_m", "Distance between the shafts.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"smaller_rad", "Wrap on the smaller pulley.", "rad", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"larger_rad", "Wrap on the larger pulley.", "rad", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_open_wrap[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pulley_crossed_wrap(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_crossed_wrap(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_pulley_crossed_wrap[] = {
    {"first_m", "Pitch diameter of one pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_m", "Pitch diameter of the other.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"centre_m", "Distance between the shafts.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"wrap_rad", "Wrap on each pulley.", "rad", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_crossed_wrap[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pulley_span(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_pulley_span(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_pulley_span[] = {
    {"first_m", "Pitch diameter of one pulley.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"second_m", "Pitch diameter of the other.", "m", "[0.001;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"centre_m", "Distance between the shafts.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"span_m", "Length of the span.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pulley_span[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_belt_slip(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_slip(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_belt_slip[] = {
    {"driver_rev_s", "Speed of the driving pulley.", "rev/s", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driver_uncertainty_rev_s", "Standard uncertainty of it.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driven_rev_s", "Speed of the driven pulley.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"driven_uncertainty_rev_s", "Standard uncertainty of it.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"ratio", "Pitch diameter of driven over driving pulley.", "1", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"ratio_uncertainty", "Standard uncertainty of that ratio.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"slip", "Slip as a fraction.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"slip_uncertainty", "Standard uncertainty of the slip.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_slip[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_belt_tension_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_tension_ratio(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_belt_tension_ratio[] = {
    {"friction", "Coefficient of friction; 0.3 is common.", "1", "[0;1.5]", "", "", NULL, 0.0, 1.5, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"wrap_rad", "Wrap on the pulley that slips first.", "rad", "[0;20]", "", "", NULL, 0.0, 20.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"groove_rad", "Included angle of the groove; pi for a flat belt.", "rad", "[0.3;3.141592653589793]", "", "", NULL, 0.3, 3.141592653589793, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tension_ratio", "Tight over slack tension.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_tension_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_belt_tensions_from_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_tensions_from_power(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_belt_tensions_from_power[] = {
    {"power_w", "Power that the belt carries.", "W", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m_s", "Speed of the belt.", "m/s", "[0.01;200]", "", "", NULL, 0.01, 200.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_m", "Mass of the belt for each metre; 0 neglects it.", "kg/m", "[0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tension_ratio", "Greatest ratio of tight to slack tension.", "1", "[1.0001;1e12]", "", "", NULL, 1.0001, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tight_n", "Tension of the tight span.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"slack_n", "Tension of the slack span.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"static_n", "Static tension that gives them.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"centrifugal_n", "Part of each that the belt's own mass makes, T_c.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_tensions_from_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_belt_power_from_tight_tension(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_power_from_tight_tension(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_belt_power_from_tight_tension[] = {
    {"tight_n", "Tension of the tight span.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m_s", "Speed of the belt.", "m/s", "[0;200]", "", "", NULL, 0.0, 200.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_m", "Mass of the belt for each metre; 0 neglects it.", "kg/m", "[0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tension_ratio", "Greatest ratio of tight to slack tension.", "1", "[1;1e12]", "", "", NULL, 1.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_power_from_tight_tension[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_belt_power_from_static_tension(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_power_from_static_tension(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_belt_power_from_static_tension[] = {
    {"static_n", "Static tension.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m_s", "Speed of the belt.", "m/s", "[0;200]", "", "", NULL, 0.0, 200.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_m", "Mass of the belt for each metre; 0 neglects it.", "kg/m", "[0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tension_ratio", "Greatest ratio of tight to slack tension.", "1", "[1;1e12]", "", "", NULL, 1.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_power_from_static_tension[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_belt_deflection_distance(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_deflection_distance(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_belt_deflection_distance[] = {
    {"span_m", "Free span, as by freeair_pulley_span.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"deflection_m", "Deflection at mid span.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_deflection_distance[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_belt_deflection_force(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_deflection_force(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_belt_deflection_force[] = {
    {"static_n", "Static tension.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"span_m", "Free span.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"deflection_m", "Deflection at mid span.", "m", "[0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stiffness_n", "Force for each unit of strain; 0 neglects the stretch.", "N", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m", "Length of the whole belt.", "m", "[0.001;2000]", "", "", NULL, 0.001, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"force_n", "Force.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_deflection_force[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_belt_tension_from_deflection(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_tension_from_deflection(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_belt_tension_from_deflection[] = {
    {"force_n", "Force at mid span.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"span_m", "Free span.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"deflection_m", "Deflection at mid span.", "m", "[0.000001;100]", "", "", NULL, 1e-06, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stiffness_n", "Force for each unit of strain; 0 neglects the stretch.", "N", "[0;1000000000]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m", "Length of the whole belt.", "m", "[0.001;2000]", "", "", NULL, 0.001, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"static_n", "Static tension.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_tension_from_deflection[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_belt_deflection_force_by_rule(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_deflection_force_by_rule(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_belt_deflection_force_by_rule[] = {
    {"static_n", "Static tension.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"span_m", "Free span.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"constant_n", "Constant Y of the section, from the belt maker.", "N", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"belt_m", "Length of the whole belt.", "m", "[0.001;2000]", "", "", NULL, 0.001, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"force_n", "Force.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_deflection_force_by_rule[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_belt_span_frequency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_span_frequency(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_belt_span_frequency[] = {
    {"static_n", "Static tension.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_m", "Mass of the belt for each metre.", "kg/m", "[0.0001;100]", "", "", NULL, 0.0001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"span_m", "Free span.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"frequency_hz", "Frequency.", "Hz", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_span_frequency[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_belt_tension_from_frequency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_belt_tension_from_frequency(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_belt_tension_from_frequency[] = {
    {"frequency_hz", "Frequency of the plucked span, machine at rest and locked out.", "Hz", "[0;10000]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_m", "Mass of the belt for each metre.", "kg/m", "[0.0001;100]", "", "", NULL, 0.0001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"span_m", "Free span.", "m", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"static_n", "Static tension.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_belt_tension_from_frequency[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_critical_pressure_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_critical_pressure_ratio(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_flow_critical_pressure_ratio[] = {
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"ratio", "Critical pressure ratio.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_critical_pressure_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_critical_coefficient(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_critical_coefficient(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_flow_critical_coefficient[] = {
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient", "Critical flow coefficient.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_critical_coefficient[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_mass_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_flow_mass_flow[] = {
    {"area_m2", "Effective area.", "m2", "(0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute, stagnation.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature, stagnation.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, not above p1_pa.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_s", "Mass flow.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_mass_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_area_from_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_area_from_mass_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_flow_area_from_mass_flow[] = {
    {"mass_kg_s", "Mass flow.", "kg/s", "(0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute, stagnation.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature, stagnation.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, below p1_pa.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"area_m2", "Effective area.", "m2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_area_from_mass_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_outlet_pressure_from_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_outlet_pressure_from_mass_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_flow_outlet_pressure_from_mass_flow[] = {
    {"mass_kg_s", "Mass flow.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"area_m2", "Effective area.", "m2", "[1e-15;100]", "", "", NULL, 1e-15, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute, stagnation.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature, stagnation.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_outlet_pressure_from_mass_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_flow_inlet_pressure_from_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_inlet_pressure_from_mass_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_flow_inlet_pressure_from_mass_flow[] = {
    {"mass_kg_s", "Mass flow.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"area_m2", "Effective area.", "m2", "[1e-15;100]", "", "", NULL, 1e-15, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature, stagnation.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute, stagnation.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_inlet_pressure_from_mass_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_isentropic_ratios(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_isentropic_ratios(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_flow_isentropic_ratios[] = {
    {"mach", "Mach number.", "1", "[1e-6;10]", "", "", NULL, 1e-06, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"pressure_ratio", "Static over stagnation pressure, p/p0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"temperature_ratio", "Static over stagnation temperature, T/T0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"density_ratio", "Static over stagnation density.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"area_ratio", "Area over critical area, A/A*.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_isentropic_ratios[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_mach_from_pressure_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_mach_from_pressure_ratio(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_flow_mach_from_pressure_ratio[] = {
    {"pressure_ratio", "Static over stagnation pressure.", "1", "[1e-12;1]", "", "", NULL, 1e-12, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mach", "Mach number.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_mach_from_pressure_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_flow_mach_from_area_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_flow_mach_from_area_ratio(*(double *)(void *)a0, *(int32_t *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_flow_mach_from_area_ratio[] = {
    {"area_ratio", "Area over critical area, A/A*.", "1", "[1;1e6]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"branch", "Subsonic or supersonic.", "1", "", "", "freeair_flow_branch", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mach", "Mach number.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_flow_mach_from_area_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_nozzle_discharge_coefficient(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_nozzle_discharge_coefficient(*(int32_t *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_nozzle_discharge_coefficient[] = {
    {"opening", "Shape.", "1", "", "", "freeair_nozzle_opening", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"lowest", "Lowest coefficient observed.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"usual", "Coefficient to reckon with.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"highest", "Highest coefficient observed.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nozzle_discharge_coefficient[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_nozzle_sharp_edged_coefficient(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_nozzle_sharp_edged_coefficient(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_nozzle_sharp_edged_coefficient[] = {
    {"pressure_ratio", "Outlet over inlet pressure.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient", "Discharge coefficient for the isentropic formula of the topic flow.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nozzle_sharp_edged_coefficient[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_nozzle_trade_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_nozzle_trade_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_nozzle_trade_flow[] = {
    {"diameter_m", "Diameter of the hole.", "m", "(0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient", "Discharge coefficient; 1 in the printed table.", "1", "(0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure before the hole, absolute.", "Pa", "(0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Temperature before the hole.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_atm_pa", "Barometric pressure.", "Pa", "(0;120000]", "", "", NULL, 0.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Free air, dry, at 14.7 psia and 70 F.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nozzle_trade_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_nozzle_meter_coefficient(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_nozzle_meter_coefficient(*(int32_t *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_nozzle_meter_coefficient[] = {
    {"meter", "Kind of nozzle.", "1", "", "", "freeair_nozzle_meter", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"reynolds", "Reynolds number of the throat.", "1", "[1000;1e9]", "", "", NULL, 1000.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient", "Discharge coefficient.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nozzle_meter_coefficient[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_nozzle_meter_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  for (size_t i = 0;;) {
    int32_t s = freeair_nozzle_meter_mass_flow(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7, (double *)(void *)a8, (double *)(void *)a9);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
  }
}

static const freeair_parameter parameters_freeair_nozzle_meter_mass_flow[] = {
    {"meter", "Kind of nozzle.", "1", "", "", "freeair_nozzle_meter", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"diameter_m", "Throat diameter.", "m", "[1e-5;1]", "", "", NULL, 1e-05, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p0_pa", "Stagnation pressure before the nozzle, absolute.", "Pa", "[100;1e8]", "", "", NULL, 100.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t0_k", "Stagnation temperature before the nozzle.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"critical_coefficient", "Critical flow coefficient C* of the gas in that state.", "1", "[0.5;1]", "", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"viscosity_pas", "Dynamic viscosity in that state.", "Pa s", "[1e-6;0.001]", "", "", NULL, 1e-06, 0.001, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_s", "Mass flow.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"reynolds", "Reynolds number of the throat.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"coefficient", "Discharge coefficient.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_nozzle_meter_mass_flow[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_conductance_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductance_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_conductance_flow[] = {
    {"c_m3_s_pa", "Sonic conductance.", "m3/(s Pa)", "[1e-15;0.01]", "", "", NULL, 1e-15, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"b", "Critical back-pressure ratio.", "1", "[0;0.99]", "", "", NULL, 0.0, 0.99, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"index", "Subsonic index; 0.5 where the data sheet has none.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, not above p1_pa.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mass_kg_s", "Mass flow.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"anr_m3_s", "Volume flow in the standard reference atmosphere (ANR).", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductance_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductance_from_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductance_from_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_conductance_from_flow[] = {
    {"mass_kg_s", "Mass flow.", "kg/s", "(0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"b", "Critical back-pressure ratio.", "1", "[0;0.99]", "", "", NULL, 0.0, 0.99, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"index", "Subsonic index; 0.5 where unknown.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, below p1_pa.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"c_m3_s_pa", "Sonic conductance.", "m3/(s Pa)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductance_from_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductance_outlet_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductance_outlet_pressure(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_conductance_outlet_pressure[] = {
    {"mass_kg_s", "Mass flow.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"c_m3_s_pa", "Sonic conductance.", "m3/(s Pa)", "[1e-15;0.01]", "", "", NULL, 1e-15, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"b", "Critical back-pressure ratio.", "1", "[0;0.99]", "", "", NULL, 0.0, 0.99, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"index", "Subsonic index.", "1", "[0.1;2]", "", "", NULL, 0.1, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductance_outlet_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_conductance_series(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductance_series((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_conductance_series[] = {
    {"c_m3_s_pa", "Sonic conductances.", "m3/(s Pa)", "[1e-15;0.01]", "", "", NULL, 1e-15, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"b", "Critical back-pressure ratios.", "1", "[0;0.99]", "", "", NULL, 0.0, 0.99, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Number of components.", "1", "[1;10000]", "", "", NULL, 1.0, 10000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"c_total_m3_s_pa", "Sonic conductance of the whole.", "m3/(s Pa)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"b_total", "Critical back-pressure ratio of the whole.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductance_series[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductance_parallel(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductance_parallel((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_conductance_parallel[] = {
    {"c_m3_s_pa", "Sonic conductances.", "m3/(s Pa)", "[1e-15;0.01]", "", "", NULL, 1e-15, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"b", "Critical back-pressure ratios.", "1", "[0;0.99]", "", "", NULL, 0.0, 0.99, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Number of components.", "1", "[1;10000]", "", "", NULL, 1.0, 10000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"c_total_m3_s_pa", "Sonic conductance of the whole.", "m3/(s Pa)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"b_total", "Critical back-pressure ratio of the whole.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductance_parallel[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductance_from_area(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductance_from_area(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_conductance_from_area[] = {
    {"area_m2", "Effective area.", "m2", "(0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"c_m3_s_pa", "Sonic conductance.", "m3/(s Pa)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductance_from_area[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductance_area(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductance_area(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_conductance_area[] = {
    {"c_m3_s_pa", "Sonic conductance.", "m3/(s Pa)", "(0;0.01]", "", "", NULL, 0.0, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_j_kg_k", "Gas constant.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"area_m2", "Effective area.", "m2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductance_area[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coefficient_kv_from_cv(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_coefficient_kv_from_cv(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_coefficient_kv_from_cv[] = {
    {"cv", "Flow coefficient Cv.", "1", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"kv", "Flow coefficient Kv.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coefficient_kv_from_cv[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coefficient_cv_from_kv(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_coefficient_cv_from_kv(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_coefficient_cv_from_kv[] = {
    {"kv", "Flow coefficient Kv.", "1", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"cv", "Flow coefficient Cv.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coefficient_cv_from_kv[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coefficient_conductance_from_kv(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_coefficient_conductance_from_kv(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_coefficient_conductance_from_kv[] = {
    {"kv", "Flow coefficient Kv.", "1", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"x_t", "Pressure drop ratio factor xT, 0.7 for a globe valve.", "1", "[0.02;1.1]", "", "", NULL, 0.02, 1.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"c_m3_s_pa", "Sonic conductance.", "m3/(s Pa)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"b", "Critical back-pressure ratio.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coefficient_conductance_from_kv[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coefficient_kv_from_conductance(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_coefficient_kv_from_conductance(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_coefficient_kv_from_conductance[] = {
    {"c_m3_s_pa", "Sonic conductance.", "m3/(s Pa)", "[1e-15;0.01]", "", "", NULL, 1e-15, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"b", "Critical back-pressure ratio.", "1", "[0;0.98]", "", "", NULL, 0.0, 0.98, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"kv", "Flow coefficient Kv.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"x_t", "Pressure drop ratio factor xT.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coefficient_kv_from_conductance[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coefficient_air_flow_from_cv(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_coefficient_air_flow_from_cv(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_coefficient_air_flow_from_cv[] = {
    {"cv", "Flow coefficient Cv.", "1", "(0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, not above p1_pa.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Volume flow at 14.7 psia and 68 F.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coefficient_air_flow_from_cv[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_coefficient_cv_from_air_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_coefficient_cv_from_air_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_coefficient_cv_from_air_flow[] = {
    {"q_m3_s", "Volume flow at 14.7 psia and 68 F.", "m3/s", "(0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, below p1_pa.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"cv", "Flow coefficient Cv.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_coefficient_cv_from_air_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_safety_burn_threshold(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_safety_burn_threshold(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_safety_burn_threshold[] = {
    {"contact_s", "Time of contact.", "s", "[1;1e6]", "", "", NULL, 1.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the surface.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_safety_burn_threshold[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_safety_cleaning_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_safety_cleaning_pressure(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_safety_cleaning_pressure[] = {
    {"p_atm_pa", "Barometric pressure.", "Pa", "[1000;120000]", "", "", NULL, 1000.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Limit, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_safety_cleaning_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_safety_stored_energy_hazard(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_safety_stored_energy_hazard(*(double *)(void *)a0, (int32_t *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_safety_stored_energy_hazard[] = {
    {"energy_j", "Stored energy, isentropic.", "J", "[0;1e15]", "", "", NULL, 0.0, 1000000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"hazard", "Class.", "1", "", "", "freeair_safety_hazard", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_safety_stored_energy_hazard[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_work_isothermal(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_work_isothermal(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_compression_work_isothermal[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"w_j_kg", "Work.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_work_isothermal[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_work_isentropic(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_work_isentropic(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_compression_work_isentropic[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"w_j_kg", "Work.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_work_isentropic[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_work_polytropic(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_work_polytropic(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_compression_work_polytropic[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent; 1 is isothermal.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"w_j_kg", "Work.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_work_polytropic[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_free_air_work(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_free_air_work(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_compression_free_air_work[] = {
    {"p_free_pa", "Pressure of the free air, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_free_k", "Temperature of the free air.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"w_j_m3", "Work per cubic metre.", "J/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_free_air_work[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_power_from_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_power_from_mass_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_compression_power_from_mass_flow[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent; 1 isothermal, k isentropic.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"m_kg_s", "Mass flow.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "All between this work and the power wanted, multiplied; 1 for the ideal.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_power_from_mass_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_power_from_free_air(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_power_from_free_air(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, *(double *)(void *)a7, (double *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_compression_power_from_free_air[] = {
    {"p_free_pa", "Pressure of the free air, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_free_k", "Temperature of the free air.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent; 1 isothermal, k isentropic.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"fad_m3_s", "Free air flow.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "All between this work and the power wanted, multiplied; 1 for the ideal.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_power_from_free_air[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_temperature(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_temperature(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_compression_temperature[] = {
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent; k for isentropic.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Discharge temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_temperature[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_compression_pressure_from_temperature(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_pressure_from_temperature(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_compression_pressure_from_temperature[] = {
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature reached.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent; k for isentropic.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_pressure_from_temperature[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_compression_exponent_from_temperatures(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_exponent_from_temperatures(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_compression_exponent_from_temperatures[] = {
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Discharge temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_exponent_from_temperatures[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_compression_exponent_from_volumes(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_exponent_from_volumes(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_compression_exponent_from_volumes[] = {
    {"p1_pa", "Pressure at the first point, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v1_m3", "Volume at the first point, clearance included.", "m3", "[1e-12;1e6]", "", "", NULL, 1e-12, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the second point, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v2_m3", "Volume at the second point, clearance included.", "m3", "[1e-12;1e6]", "", "", NULL, 1e-12, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_exponent_from_volumes[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_compression_heat_rejected(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_compression_heat_rejected(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_compression_heat_rejected[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_j_kg", "Heat rejected.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_compression_heat_rejected[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_efficiency_isothermal(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_efficiency_isothermal(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_performance_efficiency_isothermal[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"m_kg_s", "Mass flow delivered.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Real power.", "W", "[0.001;1e12]", "", "", NULL, 0.001, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Isothermal efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_efficiency_isothermal[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_efficiency_isentropic(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_efficiency_isentropic(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_performance_efficiency_isentropic[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"m_kg_s", "Mass flow delivered.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Real power.", "W", "[0.001;1e12]", "", "", NULL, 0.001, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Isentropic efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_efficiency_isentropic[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_efficiency_isothermal_from_exponent(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_efficiency_isothermal_from_exponent(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_performance_efficiency_isothermal_from_exponent[] = {
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Isothermal efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_efficiency_isothermal_from_exponent[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_efficiency_isentropic_from_temperatures(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_efficiency_isentropic_from_temperatures(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_performance_efficiency_isentropic_from_temperatures[] = {
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Discharge temperature, above t1_k.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Isentropic efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_efficiency_isentropic_from_temperatures[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_efficiency_polytropic_from_temperatures(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_efficiency_polytropic_from_temperatures(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_performance_efficiency_polytropic_from_temperatures[] = {
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Discharge temperature, above t1_k.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Polytropic efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_efficiency_polytropic_from_temperatures[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_efficiency_mechanical(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_efficiency_mechanical(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_performance_efficiency_mechanical[] = {
    {"indicated_w", "Indicated power.", "W", "[0;1e12]", "", "", NULL, 0.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"shaft_w", "Shaft power.", "W", "[0.001;1e12]", "", "", NULL, 0.001, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Mechanical efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_efficiency_mechanical[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_efficiency_overall(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_efficiency_overall(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_performance_efficiency_overall[] = {
    {"ideal_w", "Ideal power for the air delivered.", "W", "[0;1e12]", "", "", NULL, 0.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"input_w", "Power put in.", "W", "[0.001;1e12]", "", "", NULL, 0.001, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Overall efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_efficiency_overall[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_specific_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_specific_power(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_performance_specific_power[] = {
    {"power_w", "Power, shaft or electrical.", "W", "[0;1e12]", "", "", NULL, 0.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"fad_m3_s", "Free air delivery.", "m3/s", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"specific_j_m3", "Specific power.", "J/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_specific_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_saving_from_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_saving_from_pressure(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_performance_saving_from_pressure[] = {
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure now, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_reduced_pa", "Discharge pressure then, absolute, not below p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"saving", "Fraction saved.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_saving_from_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_temperature_from_efficiency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_temperature_from_efficiency(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_performance_temperature_from_efficiency[] = {
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Isentropic efficiency.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Discharge temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_temperature_from_efficiency[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_performance_heat_from_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_performance_heat_from_power(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_performance_heat_from_power[] = {
    {"power_w", "Power put in.", "W", "[0;1e12]", "", "", NULL, 0.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"m_kg_s", "Mass flow.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"cp_j_kg_k", "Specific heat at constant pressure; 1005 for air.", "J/(kg K)", "[10;100000]", "", "", NULL, 10.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Discharge temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"heat_w", "Heat given up.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_performance_heat_from_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_multistage_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_pressure(*(double *)(void *)a0, *(double *)(void *)a1, *(int32_t *)(void *)a2, *(int32_t *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_multistage_pressure[] = {
    {"p1_pa", "Inlet pressure of the first stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure of the last stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stages", "Number of stages.", "1", "[1;100]", "", "", NULL, 1.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"after", "Stage whose discharge pressure is wanted, at most stages; 0 gives p1.", "1", "[0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"p_pa", "Pressure after that stage, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_multistage_pressure_from_temperatures(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_pressure_from_temperatures(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_multistage_pressure_from_temperatures[] = {
    {"p1_pa", "Inlet pressure of the first stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure of the second stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature of the first stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t3_k", "Inlet temperature of the second stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[1.01;10]", "", "", NULL, 1.01, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"loss", "Fraction of the interstage pressure lost in the intercooler.", "1", "[0;0.9]", "", "", NULL, 0.0, 0.9, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Discharge pressure of the first stage, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_pressure_from_temperatures[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_multistage_work_equal(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_work_equal(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(int32_t *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_multistage_work_equal[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature of every stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stages", "Number of stages N.", "1", "[1;100]", "", "", NULL, 1.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"w_j_kg", "Work of all stages.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_work_equal[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_multistage_power_from_mass_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_power_from_mass_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(int32_t *)(void *)a5, *(double *)(void *)a6, *(double *)(void *)a7, (double *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_multistage_power_from_mass_flow[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature of every stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stages", "Number of stages.", "1", "[1;100]", "", "", NULL, 1.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"m_kg_s", "Mass flow.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "All between this work and the power wanted, multiplied; 1 for the ideal.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power of all stages.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_power_from_mass_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_multistage_power_from_free_air(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_power_from_free_air(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(int32_t *)(void *)a6, *(double *)(void *)a7, *(double *)(void *)a8, (double *)(void *)a9);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
  }
}

static const freeair_parameter parameters_freeair_multistage_power_from_free_air[] = {
    {"p_free_pa", "Pressure of the free air, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_free_k", "Temperature of the free air.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature of every stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stages", "Number of stages N.", "1", "[1;100]", "", "", NULL, 1.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"fad_m3_s", "Free air flow.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "All between this work and the power wanted, multiplied; 1 for the ideal.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power of all stages.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_power_from_free_air[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_multistage_saving(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_saving(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(int32_t *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_multistage_saving[] = {
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stages", "Number of stages.", "1", "[1;100]", "", "", NULL, 1.0, 100.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"saving", "Fraction saved; 0 for equal pressures.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_saving[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_multistage_optimum(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_optimum(*(double *)(void *)a0, *(double *)(void *)a1, (const double *)(void *)a2, (const double *)(void *)a3, (const double *)(void *)a4, *(size_t *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_multistage_optimum[] = {
    {"p1_pa", "Pressure ahead of the first stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure of the last stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_in_k", "Inlet temperature of each stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"n", "Polytropic exponent of each stage.", "1", "[1.01;10]", "", "", NULL, 1.01, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"drop_pa", "Pressure lost ahead of each stage: filter, then intercoolers.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"stages", "Number of stages.", "1", "[1;100]", "", "", NULL, 1.0, 100.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"p_out_pa", "Discharge pressure of each stage, absolute; the last is p2_pa.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 5, -1},
};

static const int32_t statuses_freeair_multistage_optimum[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_multistage_work(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_work(*(double *)(void *)a0, *(double *)(void *)a1, (const double *)(void *)a2, (const double *)(void *)a3, (const double *)(void *)a4, (const double *)(void *)a5, *(size_t *)(void *)a6, (double *)(void *)a7, (double *)(void *)a8, (double *)(void *)a9);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
  }
}

static const freeair_parameter parameters_freeair_multistage_work[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure ahead of the first stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_in_k", "Inlet temperature of each stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 6, -1},
    {"n", "Polytropic exponent of each stage.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 6, -1},
    {"drop_pa", "Pressure lost ahead of each stage: filter, then intercoolers.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 6, -1},
    {"p_out_pa", "Discharge pressure of each stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 6, -1},
    {"stages", "Number of stages.", "1", "[1;100]", "", "", NULL, 1.0, 100.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"stage_j_kg", "Work of each stage.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 6, -1},
    {"t_out_k", "Discharge temperature of each stage.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 6, -1},
    {"w_j_kg", "Work of all stages.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_work[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_multistage_intercooler_heat(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_intercooler_heat(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_multistage_intercooler_heat[] = {
    {"m_kg_s", "Mass flow.", "kg/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"cp_j_kg_k", "Specific heat at constant pressure; 1005 for air.", "J/(kg K)", "[10;100000]", "", "", NULL, 10.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature of the stage ahead of the cooler.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure of that stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure of that stage, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent of that stage.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_cooled_k", "Temperature after the cooler.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"heat_w", "Heat.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_multistage_intercooler_heat[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_multistage_stages(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_multistage_stages(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (int32_t *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_multistage_stages[] = {
    {"t1_k", "Inlet temperature of every stage.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Polytropic exponent.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_max_k", "Highest discharge temperature wanted.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stages", "Number of stages.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_multistage_stages[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_rotary_work(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_rotary_work(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_rotary_work[] = {
    {"r_j_kg_k", "Specific gas constant; 287.05 for dry air.", "J/(kg K)", "[10;10000]", "", "", NULL, 10.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, not below p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"volume_ratio", "Chamber where it opens over chamber where it closes, u.", "1", "[0.05;1]", "", "", NULL, 0.05, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"w_j_kg", "Work.", "J/kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_rotary_work[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_rotary_volume_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_rotary_volume_ratio(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_rotary_volume_ratio[] = {
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Outlet pressure, absolute, not below p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Ratio of specific heats; 1.4 for air.", "1", "[1.01;5]", "", "", NULL, 1.01, 5.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"volume_ratio", "Chamber where it opens over chamber where it closes.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_rotary_volume_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductor_size(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_size(*(int32_t *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_conductor_size[] = {
    {"kind", "Kind of conductor.", "1", "", "", "freeair_conductor_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"place", "Place in the table, from 0.", "1", "[0;63]", "", "", NULL, 0.0, 63.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"area_m2", "Nominal cross-section.", "m2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"r20_ohm_m", "Greatest resistance at 20 degC.", "ohm/m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductor_size[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_conductor_table_resistance(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_table_resistance(*(int32_t *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_conductor_table_resistance[] = {
    {"kind", "Kind of conductor.", "1", "", "", "freeair_conductor_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"area_m2", "Nominal cross-section.", "m2", "[1e-8;0.01]", "", "", NULL, 1e-08, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r20_ohm_m", "Greatest resistance at 20 degC.", "ohm/m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductor_table_resistance[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_conductor_resistance(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_resistance(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_conductor_resistance[] = {
    {"kind", "Kind of conductor, of which the metal counts.", "1", "", "", "freeair_conductor_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"area_m2", "Cross-section.", "m2", "[1e-9;0.1]", "", "", NULL, 1e-09, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[200;600]", "", "", NULL, 200.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm_m", "Resistance.", "ohm/m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductor_resistance[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_conductor_resistance_at(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_resistance_at(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_conductor_resistance_at[] = {
    {"r20_ohm_m", "Resistance at 20 degC.", "ohm/m", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient_1_k", "Temperature coefficient alpha at 20 degC.", "1/K", "[0;0.01]", "", "", NULL, 0.0, 0.01, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "[200;600]", "", "", NULL, 200.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm_m", "Resistance.", "ohm/m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductor_resistance_at[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductor_gauge(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_gauge(*(int32_t *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_conductor_gauge[] = {
    {"gauge", "Gauge number.", "1", "[-3;50]", "", "", NULL, -3.0, 50.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"diameter_m", "Diameter of the solid wire.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"area_m2", "Cross-section.", "m2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductor_gauge[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductor_gauge_from_area(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_gauge_from_area(*(double *)(void *)a0, (int32_t *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_conductor_gauge_from_area[] = {
    {"area_m2", "Cross-section wanted.", "m2", "[1e-8;0.0001073]", "", "", NULL, 1e-08, 0.0001073, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"gauge", "Gauge number; 0 on error.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_conductor_gauge_from_area[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_conductor_drop(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_drop(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(int32_t *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_conductor_drop[] = {
    {"length_m", "Length of the run, one way.", "m", "[0;100000]", "", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"r_ohm_m", "Resistance of one wire at its temperature.", "ohm/m", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"x_ohm_m", "Reactance of one wire; 0.00008 is usual in pipe or cable.", "ohm/m", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_a", "Line current.", "A", "[0;100000]", "", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor of the load, lagging.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"drop_v", "Voltage drop.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"loss_w", "Power that heats the wires.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductor_drop[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_conductor_size_for_drop(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  for (size_t i = 0;;) {
    int32_t s = freeair_conductor_size_for_drop(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(int32_t *)(void *)a6, *(double *)(void *)a7, (double *)(void *)a8, (double *)(void *)a9);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
  }
}

static const freeair_parameter parameters_freeair_conductor_size_for_drop[] = {
    {"kind", "Kind of conductor.", "1", "", "", "freeair_conductor_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"length_m", "Length of the run, one way.", "m", "[0;100000]", "", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the wire at work; 343.15 K is usual.", "K", "[200;600]", "", "", NULL, 200.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"x_ohm_m", "Reactance of one wire; 0.00008 is usual in pipe or cable.", "ohm/m", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"current_a", "Line current.", "A", "[0;100000]", "", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_factor", "Power factor of the load, lagging.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"phases", "1 or 3; 2 is refused.", "1", "[1;3]", "", "", NULL, 1.0, 3.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"allowed_v", "Permitted voltage drop.", "V", "[0;100000]", "", "", NULL, 0.0, 100000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"area_m2", "Nominal cross-section.", "m2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"drop_v", "Its voltage drop.", "V", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_conductor_size_for_drop[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_fastener_pitch(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_pitch(*(int32_t *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_fastener_pitch[] = {
    {"thread", "Thread series.", "1", "", "", "freeair_fastener_thread", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"diameter_m", "Nominal diameter.", "m", "[0.001;0.2]", "", "", NULL, 0.001, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"pitch_m", "Pitch.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_pitch[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_fastener_stress_area(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_stress_area(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_fastener_stress_area[] = {
    {"thread", "Thread series.", "1", "", "", "freeair_fastener_thread", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"diameter_m", "Nominal diameter.", "m", "[0.001;0.2]", "", "", NULL, 0.001, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"pitch_m", "Pitch, at most half the diameter.", "m", "[0.0001;0.02]", "", "", NULL, 0.0001, 0.02, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"area_m2", "Stress area.", "m2", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_stress_area[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_fastener_strength(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_strength(*(int32_t *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_fastener_strength[] = {
    {"grade", "Grade.", "1", "", "", "freeair_fastener_grade", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"diameter_m", "Nominal diameter.", "m", "[0.001;0.2]", "", "", NULL, 0.001, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"proof_pa", "Stress under proof load.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"yield_pa", "Least yield strength, or stress at 0.2 percent (ISO x.8: 0.0048 d) of lasting strain.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"tensile_pa", "Least tensile strength.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_strength[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_fastener_torque_for_grade(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_torque_for_grade(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(int32_t *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_fastener_torque_for_grade[] = {
    {"thread", "Thread series.", "1", "", "", "freeair_fastener_thread", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"diameter_m", "Nominal diameter.", "m", "[0.001;0.2]", "", "", NULL, 0.001, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"grade", "Grade.", "1", "", "", "freeair_fastener_grade", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"fraction", "Preload over proof load.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nut_factor", "Nut factor K.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_nm", "Torque.", "N m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"preload_n", "Preload.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_torque_for_grade[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_fastener_torque(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_torque(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_fastener_torque[] = {
    {"preload_n", "Preload.", "N", "[0;10000000]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nut_factor", "Nut factor K.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"diameter_m", "Nominal diameter.", "m", "[0.001;0.2]", "", "", NULL, 0.001, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_nm", "Torque.", "N m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_torque[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_fastener_preload(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_preload(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_fastener_preload[] = {
    {"torque_nm", "Torque.", "N m", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_uncertainty_nm", "Standard uncertainty of it.", "N m", "[0;1000000]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nut_factor", "Nut factor K.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nut_factor_uncertainty", "Standard uncertainty of it.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"diameter_m", "Nominal diameter.", "m", "[0.001;0.2]", "", "", NULL, 0.001, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"preload_n", "Preload.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"uncertainty_n", "Standard uncertainty of the preload.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_preload[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_fastener_nut_factor(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_nut_factor(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_fastener_nut_factor[] = {
    {"diameter_m", "Nominal diameter.", "m", "[0.001;0.2]", "", "", NULL, 0.001, 0.2, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"pitch_m", "Pitch, at most half the diameter.", "m", "[0.0001;0.02]", "", "", NULL, 0.0001, 0.02, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"thread_friction", "Coefficient of friction in the thread.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"bearing_friction", "Coefficient of friction under the turned face.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"bearing_m", "Effective diameter of that face, about 1.3 d.", "m", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"nut_factor", "Nut factor K.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_nut_factor[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_fastener_pressure_load(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_fastener_pressure_load(*(double *)(void *)a0, *(double *)(void *)a1, *(int32_t *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_fastener_pressure_load[] = {
    {"difference_pa", "Pressure within above that outside.", "Pa", "[0;100000000]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"area_m2", "Area that the pressure acts on, to the gasket's mean line.", "m2", "[0;100]", "", "", NULL, 0.0, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"bolts", "Number of bolts.", "1", "[1;1000]", "", "", NULL, 1.0, 1000.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"load_n", "Load of each bolt.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_fastener_pressure_load[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_receiver_volume_from_event(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_volume_from_event(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_receiver_volume_from_event[] = {
    {"shortfall_m3_s", "Demand less supply during the event, free air.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"duration_s", "Duration of the event.", "s", "[0;1e7]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_high_pa", "Upper pressure of the band, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_low_pa", "Lower pressure of the band, absolute, below p_high_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the receiver.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Volume of receiver and piping.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_volume_from_event[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_receiver_volume_from_starts(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_volume_from_starts(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_receiver_volume_from_starts[] = {
    {"supply_m3_s", "Free air delivery while the compressor runs.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"starts_hz", "Permitted starts a second; an hourly number over 3600.", "Hz", "[1e-9;10]", "", "", NULL, 1e-09, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_high_pa", "Upper pressure of the band, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_low_pa", "Lower pressure of the band, absolute, below p_high_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the receiver.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Volume of receiver and piping.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_volume_from_starts[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_receiver_cycle(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_cycle(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, *(double *)(void *)a7, (double *)(void *)a8, (double *)(void *)a9, (double *)(void *)a10);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
  }
}

static const freeair_parameter parameters_freeair_receiver_cycle[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"supply_m3_s", "Free air delivery while the compressor runs.", "m3/s", "(0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"demand_m3_s", "Demand with leaks, free air, below the supply.", "m3/s", "[1e-12;1e4]", "", "", NULL, 1e-12, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_high_pa", "Upper pressure of the band, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_low_pa", "Lower pressure of the band, absolute, below p_high_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the receiver.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"run_s", "Time on load in a cycle.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"rest_s", "Time off load in a cycle.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"starts_hz", "Starts a second; times 3600 an hour.", "Hz", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_cycle[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_receiver_starts_maximum(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_starts_maximum(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_receiver_starts_maximum[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"supply_m3_s", "Free air delivery while the compressor runs.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_high_pa", "Upper pressure of the band, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_low_pa", "Lower pressure of the band, absolute, below p_high_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the receiver.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"starts_hz", "Starts a second; times 3600 an hour.", "Hz", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_starts_maximum[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_receiver_usable_air(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_usable_air(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_receiver_usable_air[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_high_pa", "Upper pressure of the band, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_low_pa", "Lower pressure of the band, absolute, below p_high_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the receiver.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"air_m3", "Volume of free air.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_usable_air[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_receiver_pressure_after(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_pressure_after(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_receiver_pressure_after[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the start, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"net_m3_s", "Supply less demand, free air; negative when emptying.", "m3/s", "[-1e4;1e4]", "", "", NULL, -10000.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"duration_s", "Time.", "s", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the receiver.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the end, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_pressure_after[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_receiver_fill_time(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_fill_time(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_receiver_fill_time[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the start, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the end, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"net_m3_s", "Supply less demand, free air.", "m3/s", "[-1e4;1e4]", "", "", NULL, -10000.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the receiver.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"time_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_fill_time[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_OVERFLOW};

static void loop_freeair_receiver_free_air_from_pump_up(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_free_air_from_pump_up(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, *(double *)(void *)a7, (double *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_receiver_free_air_from_pump_up[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the start, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Temperature of the air in the receiver at the start.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the end, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature of the air in the receiver at the end.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"duration_s", "Time from start to end.", "s", "[1e-3;1e7]", "", "", NULL, 0.001, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Free air delivery.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_free_air_from_pump_up[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_receiver_water_from_pump_up(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_receiver_water_from_pump_up(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_receiver_water_from_pump_up[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"expected_s", "Pump-up time of the drained receiver.", "s", "[1e-3;1e7]", "", "", NULL, 0.001, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"found_s", "Pump-up time found, between the same pressures.", "s", "[1e-3;1e7]", "", "", NULL, 0.001, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"water_m3", "Volume of water.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_receiver_water_from_pump_up[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_blowdown_time(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_blowdown_time((const freeair_blowdown_vessel *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_blowdown_time[] = {
    {"vessel", "Vessel, orifice and surroundings.", "", "", "", "", &structure_freeair_blowdown_vessel, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_blowdown_vessel), -1, -1},
    {"p2_pa", "Pressure to reach, absolute, from p_line_pa to p_vessel_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"time_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_blowdown_time[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_VERSION};

static void loop_freeair_blowdown_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_blowdown_pressure((const freeair_blowdown_vessel *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_blowdown_pressure[] = {
    {"vessel", "Vessel, orifice and surroundings.", "", "", "", "", &structure_freeair_blowdown_vessel, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_blowdown_vessel), -1, -1},
    {"duration_s", "Time since the start.", "s", "[0;1e12]", "", "", NULL, 0.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure in the vessel, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature in the vessel.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_blowdown_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_VERSION};

static void loop_freeair_blowdown_fill_time(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_blowdown_fill_time((const freeair_blowdown_vessel *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_blowdown_fill_time[] = {
    {"vessel", "Vessel, orifice and surroundings.", "", "", "", "", &structure_freeair_blowdown_vessel, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_blowdown_vessel), -1, -1},
    {"p2_pa", "Pressure to reach, absolute, from p_vessel_pa to p_line_pa.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"time_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_blowdown_fill_time[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_VERSION};

static void loop_freeair_blowdown_fill_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_blowdown_fill_pressure((const freeair_blowdown_vessel *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_blowdown_fill_pressure[] = {
    {"vessel", "Vessel, orifice and surroundings.", "", "", "", "", &structure_freeair_blowdown_vessel, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_blowdown_vessel), -1, -1},
    {"duration_s", "Time since the start.", "s", "[0;1e12]", "", "", NULL, 0.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure in the vessel, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_blowdown_fill_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_VERSION};

static void loop_freeair_blowdown_fill_temperature(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_blowdown_fill_temperature(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_blowdown_fill_temperature[] = {
    {"p1_pa", "Pressure in the vessel at the start, absolute.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Temperature in the vessel at the start.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the end, absolute, not below p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_line_k", "Temperature of the air that enters.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature in the vessel at the end.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_blowdown_fill_temperature[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_blowdown_evacuation_time(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_blowdown_evacuation_time(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_blowdown_evacuation_time[] = {
    {"v_m3", "Volume of the vessel.", "m3", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_m3_s", "Intake volume flow of the pump.", "m3/s", "[1e-9;1e4]", "", "", NULL, 1e-09, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the start, absolute.", "Pa", "[1e-6;1e8]", "", "", NULL, 1e-06, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the end, absolute, not above p1_pa.", "Pa", "[1e-6;1e8]", "", "", NULL, 1e-06, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ultimate_pa", "Ultimate pressure, absolute.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"time_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_blowdown_evacuation_time[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_vessel_stored_energy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_stored_energy(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_vessel_stored_energy[] = {
    {"p_pa", "Pressure in the vessel, absolute, not below p_atm_pa.", "Pa", "[1;1e9]", "", "", NULL, 1.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_atm_pa", "Barometric pressure.", "Pa", "[1000;120000]", "", "", NULL, 1000.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Volume of the vessel.", "m3", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"k", "Heat-capacity ratio.", "1", "(1;2]", "", "", NULL, 1.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"brode_j", "Brode energy.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"isentropic_j", "Work of isentropic expansion.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"isothermal_j", "Work of isothermal expansion.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"available_j", "Available work of isothermal expansion.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_stored_energy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_vessel_test_energy(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_test_energy(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_vessel_test_energy[] = {
    {"p_pa", "Pressure in the vessel, absolute, not below p_atm_pa.", "Pa", "[1;1e9]", "", "", NULL, 1.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_atm_pa", "Barometric pressure.", "Pa", "[1000;120000]", "", "", NULL, 1000.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Volume of the vessel.", "m3", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"energy_j", "Stored energy.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"tnt_kg", "Equivalent mass of TNT.", "kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_test_energy[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_vessel_tnt_equivalent(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_tnt_equivalent(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_vessel_tnt_equivalent[] = {
    {"energy_j", "Energy.", "J", "[0;1e15]", "", "", NULL, 0.0, 1000000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tnt_j_kg", "Specific energy of TNT.", "J/kg", "[1e6;1e7]", "", "", NULL, 1000000.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"tnt_kg", "Equivalent mass of TNT.", "kg", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_tnt_equivalent[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_vessel_test_distance(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_test_distance(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_vessel_test_distance[] = {
    {"energy_j", "Stored energy of the test.", "J", "[0;1e15]", "", "", NULL, 0.0, 1000000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"distance_m", "Distance.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_test_distance[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_vessel_shell_stress(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_shell_stress(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_vessel_shell_stress[] = {
    {"dp_pa", "Pressure inside above that outside.", "Pa", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"radius_m", "Inside radius.", "m", "[1e-3;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"wall_m", "Wall thickness.", "m", "[1e-5;10]", "", "", NULL, 1e-05, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"hoop_pa", "Hoop stress.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"longitudinal_pa", "Longitudinal stress.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_shell_stress[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_vessel_sphere_stress(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_sphere_stress(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_vessel_sphere_stress[] = {
    {"dp_pa", "Pressure inside above that outside.", "Pa", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"radius_m", "Inside radius.", "m", "[1e-3;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"wall_m", "Wall thickness.", "m", "[1e-5;10]", "", "", NULL, 1e-05, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stress_pa", "Stress, the same in each direction.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_sphere_stress[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_vessel_wall_required(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_wall_required(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_vessel_wall_required[] = {
    {"dp_pa", "Design pressure, inside above outside.", "Pa", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"radius_m", "Inside radius, new.", "m", "[1e-3;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stress_pa", "Allowable stress of the material at temperature.", "Pa", "[1e6;1e9]", "", "", NULL, 1000000.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"joint_efficiency", "Efficiency of the longitudinal joint.", "1", "[0.3;1]", "", "", NULL, 0.3, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"corrosion_m", "Corrosion allowance.", "m", "[0;0.1]", "", "", NULL, 0.0, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"wall_m", "Required wall, new.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_wall_required[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_vessel_pressure_allowable(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_pressure_allowable(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_vessel_pressure_allowable[] = {
    {"wall_m", "Least wall measured.", "m", "[1e-5;1]", "", "", NULL, 1e-05, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"outside_radius_m", "Outside radius.", "m", "[1e-3;100]", "", "", NULL, 0.001, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stress_pa", "Allowable stress of the material at temperature.", "Pa", "[1e6;1e9]", "", "", NULL, 1000000.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"joint_efficiency", "Efficiency of the longitudinal joint.", "1", "[0.3;1]", "", "", NULL, 0.3, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"corrosion_m", "Corrosion allowance.", "m", "[0;0.1]", "", "", NULL, 0.0, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"dp_pa", "Pressure inside above outside.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_pressure_allowable[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_vessel_relief_capacity(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_relief_capacity(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_vessel_relief_capacity[] = {
    {"area_m2", "Actual discharge area.", "m2", "[1e-9;1]", "", "", NULL, 1e-09, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient", "Derated coefficient of discharge.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_relieving_pa", "Relieving pressure, absolute, not below p_back_pa.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature in the vessel.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_back_pa", "Pressure beyond the valve, absolute.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Capacity as free air.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_vessel_relief_capacity[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_vessel_relief_verdict(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_vessel_relief_verdict(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5, (int32_t *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_vessel_relief_verdict[] = {
    {"capacity_m3_s", "Capacity of the relief valve, free air.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"capacity_uncertainty_m3_s", "Its standard uncertainty.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"delivery_m3_s", "Delivery of every compressor on it, same reference.", "m3/s", "[1e-12;1e4]", "", "", NULL, 1e-12, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"delivery_uncertainty_m3_s", "Its standard uncertainty.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"confidence", "Probability required of a firm verdict.", "1", "(0.5;1)", "", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"margin", "Capacity over delivery.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"verdict", "The decision.", "1", "", "", "freeair_verdict", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_vessel_relief_verdict[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_share_from_cycle(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_share_from_cycle(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_leakage_share_from_cycle[] = {
    {"load_s", "Time on load, demand off.", "s", "[0;1e7]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"unload_s", "Time off load, demand off.", "s", "[0;1e7]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"share", "Leak as a share of the capacity.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_share_from_cycle[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_flow_from_cycle(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_flow_from_cycle(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_leakage_flow_from_cycle[] = {
    {"load_s", "Time on load, demand off.", "s", "[0;1e7]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"unload_s", "Time off load, demand off.", "s", "[0;1e7]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"capacity_m3_s", "Free air delivery of the compressor.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Leak as free air.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_flow_from_cycle[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_mean_from_decay(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_mean_from_decay(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, *(double *)(void *)a7, (double *)(void *)a8, (double *)(void *)a9);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
  }
}

static const freeair_parameter parameters_freeair_leakage_mean_from_decay[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the start, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Temperature of the air at the start.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the end, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t2_k", "Temperature of the air at the end.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"duration_s", "Time from start to end.", "s", "[1e-3;1e7]", "", "", NULL, 0.001, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Leak as free air.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"mass_kg_s", "Leak as mass flow.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_mean_from_decay[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_at_pressure_from_decay(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_at_pressure_from_decay(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, *(double *)(void *)a7, (double *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_leakage_at_pressure_from_decay[] = {
    {"v_m3", "Volume of receiver and piping.", "m3", "[1e-6;1e6]", "", "", NULL, 1e-06, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure at the start, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Pressure at the end, absolute, not above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"duration_s", "Time from start to end.", "s", "[1e-3;1e7]", "", "", NULL, 0.001, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature of the air in the system.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure at which the leak is wanted, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Leak as free air.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_at_pressure_from_decay[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_flow_at_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_flow_at_pressure(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_leakage_flow_at_pressure[] = {
    {"q1_m3_s", "Leak at p1_pa, free air.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Pressure, absolute, above p_atm_pa.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Another pressure, absolute, not below p_atm_pa.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_atm_pa", "Barometric pressure.", "Pa", "[1000;120000]", "", "", NULL, 1000.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q2_m3_s", "Leak at p2_pa, free air.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_flow_at_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_flow_from_readings(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_flow_from_readings((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_leakage_flow_from_readings[] = {
    {"p_pa", "Pressures, all gauge or all absolute.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"q_m3_s", "Leaks at those pressures.", "m3/s", "[-1e4;1e4]", "", "", NULL, -10000.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Number of readings.", "1", "[2;100000]", "", "", NULL, 2.0, 100000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"p_at_pa", "Pressure at which the leak is wanted.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_at_m3_s", "Leak there.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"slope_m3_s_pa", "Growth of the leak with pressure.", "m3/(s Pa)", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_flow_from_readings[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_leakage_flow_from_hole(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_flow_from_hole(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7, (double *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_leakage_flow_from_hole[] = {
    {"diameter_m", "Diameter.", "m", "[1e-6;1]", "", "", NULL, 1e-06, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient", "Discharge coefficient; 0.65 for a sharp edge.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_line_pa", "Pressure before the hole, absolute, above p_atm_pa.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_line_k", "Temperature before the hole.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_atm_pa", "Barometric pressure.", "Pa", "[1000;120000]", "", "", NULL, 1000.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"q_m3_s", "Leak as free air.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"mass_kg_s", "Leak as mass flow.", "kg/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_flow_from_hole[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_hole_from_flow(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_hole_from_flow(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_leakage_hole_from_flow[] = {
    {"q_m3_s", "Leak as free air.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"coefficient", "Discharge coefficient; 0.65 for a sharp edge.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_line_pa", "Pressure before the hole, absolute, above p_atm_pa.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_line_k", "Temperature before the hole.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_atm_pa", "Barometric pressure.", "Pa", "[1000;120000]", "", "", NULL, 1000.0, 120000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"diameter_m", "Diameter.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_hole_from_flow[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_power(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_leakage_power[] = {
    {"q_m3_s", "Leak as free air.", "m3/s", "[0;1e4]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ref_pa", "Reference pressure of the free air.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_ref_k", "Reference temperature of the free air.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_in_pa", "Inlet pressure of the compressor, absolute.", "Pa", "[1000;1e6]", "", "", NULL, 1000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_in_k", "Inlet temperature of the compressor.", "K", "[50;2000]", "", "", NULL, 50.0, 2000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_line_pa", "Pressure it compresses to, absolute, not below p_in_pa.", "Pa", "[1000;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Isentropic efficiency times motor efficiency.", "1", "[0.01;1]", "", "", NULL, 0.01, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_leakage_cost(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_leakage_cost(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_leakage_cost[] = {
    {"power_w", "Power that the leak takes.", "W", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"running_s", "Time under pressure.", "s", "[0;1e10]", "", "", NULL, 0.0, 10000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"price_1_j", "Price of energy a joule, in any currency.", "J", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"energy_j", "Energy.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"cost", "Cost, in the currency of the price.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_leakage_cost[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_swept_volume(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_swept_volume(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_cylinder_swept_volume[] = {
    {"bore_m", "Bore D.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stroke_m", "Stroke L.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Swept volume.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_swept_volume[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_swept_volume_double_acting(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_swept_volume_double_acting(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_cylinder_swept_volume_double_acting[] = {
    {"bore_m", "Bore D.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stroke_m", "Stroke L.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_diameter_m", "Diameter d of the piston rod, below the bore; 0 to neglect it.", "m", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Swept volume of one revolution.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_swept_volume_double_acting[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_clearance_volume(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_clearance_volume(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_cylinder_clearance_volume[] = {
    {"swept_m3", "Swept volume Vs.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance c, a fraction of the swept volume.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Clearance volume.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_clearance_volume[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_clearance_from_volume(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_clearance_from_volume(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_cylinder_clearance_from_volume[] = {
    {"swept_m3", "Swept volume Vs.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance_m3", "Clearance volume V.", "m3", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_clearance_from_volume[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_volumetric_efficiency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_volumetric_efficiency(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_cylinder_volumetric_efficiency[] = {
    {"p1_pa", "Suction pressure in the cylinder, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure in the cylinder, absolute, not below p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance c, a fraction of the swept volume.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Exponent of re-expansion.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Volumetric efficiency.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_volumetric_efficiency[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_zero_delivery_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_zero_delivery_pressure(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_cylinder_zero_delivery_pressure[] = {
    {"p1_pa", "Suction pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance c, a fraction of the swept volume.", "1", "[0.0001;2]", "", "", NULL, 0.0001, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Exponent of re-expansion.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Discharge pressure of zero delivery, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_zero_delivery_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_clearance_from_zero_delivery(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_clearance_from_zero_delivery(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_cylinder_clearance_from_zero_delivery[] = {
    {"p1_pa", "Suction pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_zero_pa", "Discharge pressure of zero delivery, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Exponent of re-expansion.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance, a fraction of the swept volume.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_clearance_from_zero_delivery[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_clearance_from_volumetric_efficiency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_clearance_from_volumetric_efficiency(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_cylinder_clearance_from_volumetric_efficiency[] = {
    {"p1_pa", "Suction pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n", "Exponent of re-expansion.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Volumetric efficiency at the suction state.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance, a fraction of the swept volume.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_clearance_from_volumetric_efficiency[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_mean_effective_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_mean_effective_pressure(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_cylinder_mean_effective_pressure[] = {
    {"p1_pa", "Suction pressure in the cylinder, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure in the cylinder, absolute, not below p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance c, a fraction of the swept volume.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n_compression", "Exponent nc of compression.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n_expansion", "Exponent ne of re-expansion.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mep_pa", "Mean effective pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_mean_effective_pressure[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_indicated_power(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_indicated_power(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_cylinder_indicated_power[] = {
    {"mep_pa", "Mean effective pressure pm.", "Pa", "[-1e8;1e8]", "", "", NULL, -100000000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"swept_m3", "Swept volume of all ends together.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"power_w", "Indicated power.", "W", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_indicated_power[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_cylinder_piston_speed(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_cylinder_piston_speed(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_cylinder_piston_speed[] = {
    {"stroke_m", "Stroke L.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed N.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_m_s", "Mean piston speed.", "m/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_cylinder_piston_speed[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_delivery_of_stage(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_delivery_of_stage((const freeair_delivery_stage *)(void *)a0, (freeair_delivery_result *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_delivery_of_stage[] = {
    {"stage", "The stage.", "", "", "", "", &structure_freeair_delivery_stage, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_delivery_stage), -1, -1},
    {"result", "What it delivers; zeros with the warning.", "", "", "", "", &structure_freeair_delivery_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_delivery_result), -1, -1},
};

static const int32_t statuses_freeair_delivery_of_stage[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN};

static void loop_freeair_delivery_free_air(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_delivery_free_air(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_delivery_free_air[] = {
    {"swept_m3", "Swept volume Vs of a revolution.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed N.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Volumetric efficiency at the inlet state.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p1_pa", "Inlet pressure, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t1_k", "Inlet temperature.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_free_pa", "Pressure of the free air, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_free_k", "Temperature of the free air.", "K", "[1;5000]", "", "", NULL, 1.0, 5000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"fad_m3_s", "Free air delivery.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_delivery_free_air[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_delivery_volumetric_efficiency(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_delivery_volumetric_efficiency(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_delivery_volumetric_efficiency[] = {
    {"flow_m3_s", "Flow delivered, at the inlet state or as free air.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"swept_m3", "Swept volume Vs of a revolution.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed N.", "rev/s", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Volumetric efficiency at that state.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_delivery_volumetric_efficiency[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_delivery_bore_from_stroke(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_delivery_bore_from_stroke(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(int32_t *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_delivery_bore_from_stroke[] = {
    {"flow_m3_s", "Flow wanted, at the state to which the efficiency refers.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Volumetric efficiency at that state.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stroke_m", "Stroke L.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed N.", "rev/s", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"strokes", "Suction strokes in a revolution: cylinders times 1, or 2 if double-acting.", "1", "[1;64]", "", "", NULL, 1.0, 64.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"bore_m", "Bore D.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_delivery_bore_from_stroke[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_delivery_bore_from_stroke_ratio(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_delivery_bore_from_stroke_ratio(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(int32_t *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_delivery_bore_from_stroke_ratio[] = {
    {"flow_m3_s", "Flow wanted, at the state to which the efficiency refers.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"efficiency", "Volumetric efficiency at that state.", "1", "[0.001;1]", "", "", NULL, 0.001, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stroke_ratio", "Stroke over bore.", "1", "[0.01;100]", "", "", NULL, 0.01, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed N.", "rev/s", "[0.001;1000]", "", "", NULL, 0.001, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"strokes", "Suction strokes in a revolution: cylinders times 1, or 2 if double-acting.", "1", "[1;64]", "", "", NULL, 1.0, 64.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"bore_m", "Bore D.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_delivery_bore_from_stroke_ratio[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_indicator_mep_from_card(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_indicator_mep_from_card(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_indicator_mep_from_card[] = {
    {"area_m2", "Area of the card, by planimeter.", "m2", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"length_m", "Length of the card.", "m", "[0.001;10]", "", "", NULL, 0.001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"scale_pa", "Pressure that the spring shows as scale_m.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"scale_m", "Height that scale_pa draws.", "m", "[0.00001;1]", "", "", NULL, 1e-05, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"mep_pa", "Mean effective pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_indicator_mep_from_card[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_indicator_work(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_indicator_work((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_indicator_work[] = {
    {"p_pa", "Pressures in order of time, absolute or gauge alike.", "Pa", "[-1e8;1e8]", "", "", NULL, -100000000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"v_m3", "Volumes.", "m3", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"points", "Number of points, at least 3.", "1", "[3;1e9]", "", "", NULL, 3.0, 1000000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"w_j", "Work of a revolution.", "J", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"mep_pa", "Mean effective pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_indicator_work[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN};

static void loop_freeair_indicator_exponent(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_indicator_exponent((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_indicator_exponent[] = {
    {"p_pa", "Pressures, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"v_m3", "Volumes, clearance included.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"points", "Number of points, at least 3.", "1", "[3;1e9]", "", "", NULL, 3.0, 1000000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n", "Exponent.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"n_uncertainty", "Standard uncertainty of the exponent.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_indicator_exponent[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_indicator_ideal(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_indicator_ideal(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7, *(size_t *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_indicator_ideal[] = {
    {"p1_pa", "Suction pressure in the cylinder, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p2_pa", "Discharge pressure in the cylinder, absolute, above p1_pa.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance as a fraction of the swept volume.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"swept_m3", "Swept volume of the cylinder end.", "m3", "[1e-12;1000]", "", "", NULL, 1e-12, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n_compression", "Exponent of compression.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"n_expansion", "Exponent of re-expansion.", "1", "[0.5;10]", "", "", NULL, 0.5, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressures.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"v_m3", "Volumes, clearance included.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"points", "Number of points, at least 9.", "1", "[9;1e9]", "", "", NULL, 9.0, 1000000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_indicator_ideal[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_crank_position(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_crank_position(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_crank_position[] = {
    {"stroke_m", "Stroke.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_length_m", "Length of the connecting rod, centre to centre, at least 0.6 strokes.", "m", "[0.00006;100]", "", "", NULL, 6e-05, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"angle_rad", "Crank angle from top dead centre.", "rad", "[-1000;1000]", "", "", NULL, -1000.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"position_m", "Distance from top dead centre.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_crank_position[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_crank_angle_from_position(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_crank_angle_from_position(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_crank_angle_from_position[] = {
    {"stroke_m", "Stroke.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_length_m", "Length of the connecting rod, centre to centre, at least 0.6 strokes.", "m", "[0.00006;100]", "", "", NULL, 6e-05, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"position_m", "Distance from top dead centre, at most the stroke.", "m", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"angle_rad", "Crank angle.", "rad", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_crank_angle_from_position[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_crank_volume(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_crank_volume(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_crank_volume[] = {
    {"bore_m", "Bore D.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stroke_m", "Stroke L.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"clearance", "Clearance c as a fraction of the swept volume.", "1", "[0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_length_m", "Length of the connecting rod, centre to centre, at least 0.6 strokes.", "m", "[0.00006;100]", "", "", NULL, 6e-05, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"angle_rad", "Crank angle from top dead centre.", "rad", "[-1000;1000]", "", "", NULL, -1000.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"v_m3", "Volume, clearance included.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_crank_volume[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_crank_velocity(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_crank_velocity(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_crank_velocity[] = {
    {"stroke_m", "Stroke.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_length_m", "Length of the connecting rod, centre to centre, at least 0.6 strokes.", "m", "[0.00006;100]", "", "", NULL, 6e-05, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed N.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"angle_rad", "Crank angle from top dead centre.", "rad", "[-1000;1000]", "", "", NULL, -1000.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"velocity_m_s", "Velocity.", "m/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_crank_velocity[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_crank_gas_load(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_crank_gas_load(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_crank_gas_load[] = {
    {"bore_m", "Bore D.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_diameter_m", "Diameter d of a piston rod, below the bore; 0 for a trunk piston.", "m", "[0;10]", "", "", NULL, 0.0, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_head_pa", "Pressure on the head side, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_crank_pa", "Pressure on the crank side, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_ambient_pa", "Pressure on the end of the piston rod, absolute.", "Pa", "[1;1e8]", "", "", NULL, 1.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"load_n", "Load.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_crank_gas_load[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_crank_inertia_load(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_crank_inertia_load(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_crank_inertia_load[] = {
    {"mass_kg", "Piston, pin, piston rod and the reciprocating part of the connecting rod.", "kg", "[0;10000]", "", "", NULL, 0.0, 10000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stroke_m", "Stroke.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_length_m", "Length of the connecting rod, centre to centre, at least 0.6 strokes.", "m", "[0.00006;100]", "", "", NULL, 6e-05, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"speed_rev_s", "Crankshaft speed.", "rev/s", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"angle_rad", "Crank angle from top dead centre.", "rad", "[-1000;1000]", "", "", NULL, -1000.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"load_n", "Load.", "N", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_crank_inertia_load[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_crank_torque(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_crank_torque(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_crank_torque[] = {
    {"load_n", "Load, positive pressing the rod.", "N", "[-1e9;1e9]", "", "", NULL, -1000000000.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"stroke_m", "Stroke.", "m", "[0.0001;10]", "", "", NULL, 0.0001, 10.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rod_length_m", "Length of the connecting rod, centre to centre, at least 0.6 strokes.", "m", "[0.00006;100]", "", "", NULL, 6e-05, 100.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"angle_rad", "Crank angle from top dead centre.", "rad", "[-1000;1000]", "", "", NULL, -1000.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"torque_nm", "Torque.", "N m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_crank_torque[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_machine_complete(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_machine_complete((const freeair_machine *)(void *)a0, (freeair_machine *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_machine_complete[] = {
    {"machine", "Description, possibly with NaN fields.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"complete", "The same, complete.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_machine), -1, -1},
};

static const int32_t statuses_freeair_machine_complete[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN};

static void loop_freeair_machine_displacement(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_machine_displacement((const freeair_machine *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_machine_displacement[] = {
    {"machine", "Description, possibly with NaN fields.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"displacement_m3_s", "Displacement.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_machine_displacement[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN};

static void loop_freeair_fault_applies(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_fault_applies((const freeair_machine *)(void *)a0, *(int32_t *)(void *)a1, (int32_t *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_fault_applies[] = {
    {"machine", "Description, possibly with NaN fields.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"fault", "A fault.", "1", "", "", "freeair_fault", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"applies", "1 if it can, else 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_fault_applies[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_fault_apply(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_fault_apply((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, *(int32_t *)(void *)a2, *(double *)(void *)a3, (freeair_machine *)(void *)a4, (freeair_machine_site *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_fault_apply[] = {
    {"machine", "Description, possibly with NaN fields.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "Site, possibly with NaN fields.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"fault", "A fault.", "1", "", "", "freeair_fault", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"severity", "Severity.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"faulty_machine", "The complete description with the fault.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_machine), -1, -1},
    {"faulty_site", "The complete site with the fault.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_machine_site), -1, -1},
};

static const int32_t statuses_freeair_fault_apply[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_cycle_point(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_cycle_point((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (freeair_cycle_result *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_cycle_point[] = {
    {"machine", "The machine.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"receiver_pa", "Pressure in the receiver, absolute.", "Pa", "(0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"receiver_k", "Temperature of gas that flows back from the receiver.", "K", "(0;1000]", "ambient", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"accuracy", "Accuracy of the delivery, over the displacement.", "1", "[1e-6;0.1]", "1e-3", "", NULL, 1e-06, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"point", "The operating point.", "", "", "", "", &structure_freeair_cycle_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_cycle_result), -1, -1},
};

static const int32_t statuses_freeair_cycle_point[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_cycle_card(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  for (size_t i = 0;;) {
    int32_t s = freeair_cycle_card((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(int32_t *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7, (double *)(void *)a8, *(size_t *)(void *)a9);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
  }
}

static const freeair_parameter parameters_freeair_cycle_card[] = {
    {"machine", "The machine.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"receiver_pa", "Pressure in the receiver, absolute.", "Pa", "(0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"receiver_k", "Temperature of gas that flows back from the receiver.", "K", "(0;1000]", "ambient", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"accuracy", "Accuracy of the delivery, over the displacement.", "1", "[1e-6;0.1]", "1e-3", "", NULL, 1e-06, 0.1, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"cylinder", "Which cylinder: first stage from 0, then second stage.", "1", "[0;7]", "", "", NULL, 0.0, 7.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"v_m3", "Volume, clearance included.", "m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 9, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 9, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 9, -1},
    {"n", "Number of points, at least 4.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_cycle_card[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_prediction_pumpup(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_prediction_pumpup((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, (const freeair_prediction_run *)(void *)a2, (freeair_prediction_result *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7, *(size_t *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_prediction_pumpup[] = {
    {"machine", "The machine.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"run", "The run.", "", "", "", "", &structure_freeair_prediction_run, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_prediction_run), -1, -1},
    {"result", "What became of it.", "", "", "", "", &structure_freeair_prediction_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_prediction_result), -1, -1},
    {"t_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"p_pa", "Gauge reading, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"gas_k", "Gas temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"delivery_m3_s", "Delivery of the pump as free air.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"n", "Number of points, at least 2.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_prediction_pumpup[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_prediction_times(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_prediction_times((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, (const freeair_prediction_run *)(void *)a2, (freeair_prediction_result *)(void *)a3, (const double *)(void *)a4, (double *)(void *)a5, *(size_t *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_prediction_times[] = {
    {"machine", "The machine.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"run", "The run; it goes on to the highest of the readings, to_pa is ignored.", "", "", "", "", &structure_freeair_prediction_run, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_prediction_run), -1, -1},
    {"result", "What became of it.", "", "", "", "", &structure_freeair_prediction_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_prediction_result), -1, -1},
    {"p_pa", "Gauge readings, absolute, in any order.", "Pa", "(0;1e8)", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 6, -1},
    {"t_s", "Time of each; infinite when not reached, 0 when at or below the start.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 6, -1},
    {"n", "Number of readings, at least 1.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_prediction_times[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_prediction_level_off(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_prediction_level_off((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_prediction_level_off[] = {
    {"machine", "The machine.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"upper_pa", "Highest pressure of interest, absolute.", "Pa", "(0;1e8]", "twice cut_out_pa", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Gauge reading, absolute; infinite when it still delivers at upper_pa.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_prediction_level_off[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_prediction_leak_down(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  for (size_t i = 0;;) {
    int32_t s = freeair_prediction_leak_down((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, *(int32_t *)(void *)a6, *(int32_t *)(void *)a7, (double *)(void *)a8, (double *)(void *)a9, *(size_t *)(void *)a10);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
  }
}

static const freeair_parameter parameters_freeair_prediction_leak_down[] = {
    {"machine", "The machine.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"from_pa", "Gauge reading at the start, absolute.", "Pa", "(0;1e8)", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"gas_k", "Gas temperature at the start.", "K", "[150;600]", "ambient", "", NULL, 150.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"wall_k", "Wall temperature at the start.", "K", "[150;600]", "ambient", "", NULL, 150.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"duration_s", "Duration.", "s", "(0;1e7]", "", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"with_check_valve", "0 when the receiver is isolated from the pump, else 1.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"with_downstream", "0 when the service valve is shut and nothing leaks behind it, else 1.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"t_s", "Time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 10, -1},
    {"p_pa", "Gauge reading, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 10, -1},
    {"n", "Number of points at equal times, at least 2.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_prediction_leak_down[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_rating_complete(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_rating_complete((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, (freeair_machine *)(void *)a2, (int32_t *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_rating_complete[] = {
    {"machine", "Description, possibly with NaN fields. lp_bore_m, or both speed_rev_s and pulley_ratio, may be missing, when there is a rating.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site at which the rating holds.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"complete", "The complete description.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_machine), -1, -1},
    {"adjusted", "What was adjusted, bits of freeair_rating_adjusted added up.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
    {"delivery_m3_s", "What the complete description delivers at rated_pa.", "m3/s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_rating_complete[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_pumpup_analyse(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_pumpup_analyse((const freeair_pumpup_test *)(void *)a0, (freeair_pumpup_result *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_pumpup_analyse[] = {
    {"test", "Receiver, site, readings; p_start_pa, p_end_pa and duration_s are required.", "", "", "", "", &structure_freeair_pumpup_test, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_pumpup_test), -1, -1},
    {"result", "What the test says.", "", "", "", "", &structure_freeair_pumpup_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_pumpup_result), -1, -1},
};

static const int32_t statuses_freeair_pumpup_analyse[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_pumpup_analyse_table(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_pumpup_analyse_table((const freeair_pumpup_test *)(void *)a0, (const double *)(void *)a1, (const double *)(void *)a2, *(size_t *)(void *)a3, (freeair_pumpup_result *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_pumpup_analyse_table[] = {
    {"test", "Receiver and site.", "", "", "", "", &structure_freeair_pumpup_test, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_pumpup_test), -1, -1},
    {"t_s", "Times, increasing.", "s", "[-1e12;1e12]", "", "", NULL, -1000000000000.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"p_pa", "Pressures, absolute.", "Pa", "[1e3;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"n", "Rows, at least 2.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"result", "What the test says, from the first row to the last.", "", "", "", "", &structure_freeair_pumpup_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_pumpup_result), -1, -1},
};

static const int32_t statuses_freeair_pumpup_analyse_table[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_expectation_of_run(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_expectation_of_run((const freeair_pumpup_test *)(void *)a0, (const freeair_expectation_machine *)(void *)a1, (freeair_expectation_result *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_expectation_of_run[] = {
    {"test", "Receiver, site, start and end of the run; duration_s matters for CYCLING alone, measured gas temperatures at the end are not used.", "", "", "", "", &structure_freeair_pumpup_test, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_pumpup_test), -1, -1},
    {"machine", "The machine.", "", "", "", "", &structure_freeair_expectation_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_expectation_machine), -1, -1},
    {"result", "What to expect.", "", "", "", "", &structure_freeair_expectation_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_expectation_result), -1, -1},
};

static const int32_t statuses_freeair_expectation_of_run[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_expectation_times(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_expectation_times((const freeair_pumpup_test *)(void *)a0, (const freeair_expectation_machine *)(void *)a1, (const double *)(void *)a2, *(size_t *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_expectation_times[] = {
    {"test", "Receiver, site, start of the run; the last pressure takes the place of p_end_pa.", "", "", "", "", &structure_freeair_pumpup_test, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_pumpup_test), -1, -1},
    {"machine", "The machine.", "", "", "", "", &structure_freeair_expectation_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_expectation_machine), -1, -1},
    {"p_pa", "Pressures, absolute, increasing, the first above p_start_pa.", "Pa", "[1e3;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"n", "Pressures, at least 1.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"t_s", "Time of each.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 3, -1},
    {"t_uncertainty_s", "Its standard uncertainty.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 3, -1},
};

static const int32_t statuses_freeair_expectation_times[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_expectation_compare(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_expectation_compare(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7, (int32_t *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_expectation_compare[] = {
    {"found_m3_s", "Delivery found.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"found_uncertainty_m3_s", "Its standard uncertainty.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"expected_m3_s", "Delivery expected.", "m3/s", "[1e-9;1e6]", "", "", NULL, 1e-09, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"expected_uncertainty_m3_s", "Its standard uncertainty.", "m3/s", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"required_ratio", "Least ratio that will do.", "1", "(0;2]", "", "", NULL, 0.0, 2.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"confidence", "Probability required of a firm verdict.", "1", "(0.5;1)", "", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"ratio", "Found over expected.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"ratio_uncertainty", "Its standard uncertainty.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"verdict", "The decision.", "1", "", "", "freeair_verdict", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_expectation_compare[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_pumpup_curve_shape_from_readings(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_pumpup_curve_shape_from_readings((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, *(double *)(void *)a3, (freeair_pumpup_curve_shape *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_pumpup_curve_shape_from_readings[] = {
    {"t_s", "Times, increasing.", "s", "[-1e12;1e12]", "", "", NULL, -1000000000000.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"p_pa", "Pressures, absolute.", "Pa", "[1e3;1e8]", "", "", NULL, 1000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Readings, at least 4.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"reading_uncertainty_pa", "Standard uncertainty of one reading.", "Pa", "[0;1e7]", "scatter about the fit with eight readings or more, else 0.5 % of the rise", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"shape", "The shape.", "", "", "", "", &structure_freeair_pumpup_curve_shape, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_pumpup_curve_shape), -1, -1},
};

static const int32_t statuses_freeair_pumpup_curve_shape_from_readings[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_pressure_log_segment(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_pressure_log_segment((const double *)(void *)a0, (const double *)(void *)a1, (const int32_t *)(void *)a2, *(size_t *)(void *)a3, (const freeair_pressure_log_options *)(void *)a4, (freeair_pressure_log_phase *)(void *)a5, *(size_t *)(void *)a6, *(size_t *)(void *)a7, (size_t *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_pressure_log_segment[] = {
    {"t_s", "Times.", "s", "[-1e12;1e12]", "", "", NULL, -1000000000000.0, 1000000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"p_pa", "Pressures, absolute; NaN where missing.", "Pa", "[0;1e8]", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"state", "What another channel says of the machine.", "1", "", "null: from the pressure alone", "freeair_pressure_log_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(int32_t), 3, -1},
    {"n", "Readings.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"options", "How to read the log.", "", "", "", "", &structure_freeair_pressure_log_options, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_pressure_log_options), -1, -1},
    {"phases", "The phases in order; struct_size of each is set by the caller.", "", "", "", "", &structure_freeair_pressure_log_phase, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_pressure_log_phase), 7, 6},
    {"phases_stride", "Bytes from one phase to the next.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"phases_capacity", "Phases that there is room for.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"n_phases", "Phases found, also where there was no room for them.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_pressure_log_segment[] = {FREEAIR_OK, FREEAIR_WARN_TRUNCATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_pressure_log_state_from_current(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_pressure_log_state_from_current((const double *)(void *)a0, *(size_t *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (int32_t *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_pressure_log_state_from_current[] = {
    {"current_a", "Current; NaN where missing.", "A", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 1, -1},
    {"n", "Readings.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"stopped_below_a", "Below this the motor stands.", "A", "(0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"loaded_above_a", "From this up the machine is loaded.", "A", "(0;1e6]", "not known", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"state", "State of each reading.", "1", "", "", "freeair_pressure_log_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(int32_t), 1, -1},
};

static const int32_t statuses_freeair_pressure_log_state_from_current[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_pressure_log_current_levels(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_pressure_log_current_levels((const double *)(void *)a0, *(size_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_pressure_log_current_levels[] = {
    {"current_a", "Current; NaN where missing.", "A", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 1, -1},
    {"n", "Readings.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"stopped_below_a", "Below this the motor stands.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"loaded_above_a", "From this up the machine is loaded; NaN when that cannot be told.", "A", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_pressure_log_current_levels[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_pressure_log_state_from_switch(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_pressure_log_state_from_switch((const double *)(void *)a0, *(size_t *)(void *)a1, *(int32_t *)(void *)a2, *(int32_t *)(void *)a3, (int32_t *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_pressure_log_state_from_switch[] = {
    {"signal", "Signal, 0 or 1.", "1", "[-1e6;1e6]", "", "", NULL, -1000000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 1, -1},
    {"n", "Readings.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"when_high", "State above a half.", "1", "", "", "freeair_pressure_log_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"when_low", "State below.", "1", "", "", "freeair_pressure_log_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"state", "State of each reading.", "1", "", "", "freeair_pressure_log_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(int32_t), 1, -1},
};

static const int32_t statuses_freeair_pressure_log_state_from_switch[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_duty_from_phases(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_duty_from_phases((const freeair_pressure_log_phase *)(void *)a0, *(size_t *)(void *)a1, *(size_t *)(void *)a2, (const freeair_pressure_log_options *)(void *)a3, (freeair_duty_summary *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_duty_from_phases[] = {
    {"phases", "Phases of one log, in order.", "", "", "", "", &structure_freeair_pressure_log_phase, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_pressure_log_phase), 2, 1},
    {"phases_stride", "Bytes from one phase to the next.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"n", "Phases.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"options", "Those with which the log was cut: cut_out_pa and band_pa (3 % of the highest pressure when not given) are used.", "", "", "", "", &structure_freeair_pressure_log_options, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_pressure_log_options), -1, -1},
    {"summary", "What they add up to.", "", "", "", "", &structure_freeair_duty_summary, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_duty_summary), -1, -1},
};

static const int32_t statuses_freeair_duty_from_phases[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_outlook_readings(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_outlook_readings((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, (const freeair_prediction_run *)(void *)a2, (freeair_prediction_result *)(void *)a3, (const double *)(void *)a4, (double *)(void *)a5, (freeair_cycle_result *)(void *)a6, *(size_t *)(void *)a7, *(size_t *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_outlook_readings[] = {
    {"machine", "The machine.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"run", "The run; it goes on to the highest of the readings, to_pa is ignored.", "", "", "", "", &structure_freeair_prediction_run, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_prediction_run), -1, -1},
    {"result", "What became of it.", "", "", "", "", &structure_freeair_prediction_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_prediction_result), -1, -1},
    {"p_pa", "Gauge readings, absolute, in any order.", "Pa", "(0;1e8)", "", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"t_s", "Time of each; infinite when not reached, 0 when at or below the start.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"points", "Operating point at each.", "", "", "", "", &structure_freeair_cycle_result, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_cycle_result), 8, 7},
    {"points_stride", "Bytes from one point to the next.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"n", "Number of readings, at least 1.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_outlook_readings[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_evidence_find(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_evidence_find(*(int32_t *)(void *)a0, *(const char **)(void *)a1, (int32_t *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_evidence_find[] = {
    {"kind", "Kind of entry.", "1", "", "", "freeair_evidence_kind", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"name", "Name, such as \"lp_suction_valve\".", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"code", "Its code; 0 on error.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_evidence_find[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_evidence_readings_get(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_evidence_readings_get((const freeair_evidence_readings *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_evidence_readings_get[] = {
    {"readings", "Readings.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"reading", "Which.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"value", "The field of that code.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"uncertainty", "Its u_ field.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_evidence_readings_get[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_evidence_readings_check(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_evidence_readings_check((const freeair_evidence_readings *)(void *)a0, (int32_t *)(void *)a1, (int32_t *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_evidence_readings_check[] = {
    {"readings", "Readings.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"reading", "First code whose value or uncertainty is out of range; 0 when there is none.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
    {"n_taken", "Number of readings taken.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_evidence_readings_check[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN};

static void loop_freeair_likelihood_prior(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_prior(*(int32_t *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_likelihood_prior[] = {
    {"cause", "Cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"prior", "Probability.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_likelihood_prior[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_likelihood_size(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_size(*(int32_t *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2, (int32_t *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_likelihood_size[] = {
    {"cause", "Cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"size", "Most probable y; 0 for nothing wrong and for something else.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"cost", "1 where the fault costs delivery or takes it, else 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"two_sided", "1 where readings may move either way, else 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_likelihood_size[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_likelihood_observation(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_observation(*(int32_t *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3, (int32_t *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_likelihood_observation[] = {
    {"cause", "Cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"observation", "Observation.", "1", "", "", "freeair_evidence_observation", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"hit", "Probability of yes with the cause present.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"false_alarm", "Probability of yes with none of the observation's listed causes present.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"basis", "Where the hit rate comes from.", "1", "", "", "freeair_likelihood_basis", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_likelihood_observation[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_likelihood_reading(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_reading(*(int32_t *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4, (int32_t *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_likelihood_reading[] = {
    {"cause", "Cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"reading", "Reading.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"slope", "Deviation for each unit of y, in the reading's scale.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"limit", "Largest magnitude of the deviation, in the reading's scale.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"spread", "Relative standard uncertainty of the deviation.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"basis", "Where the slope comes from.", "1", "", "", "freeair_likelihood_basis", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_likelihood_reading[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_likelihood_spread(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_spread(*(int32_t *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (int32_t *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_likelihood_spread[] = {
    {"reading", "Reading.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"u_found", "Standard uncertainty of the reading.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"u_expected", "Standard uncertainty of the expected value: unit to unit, rating, model.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"expected", "Expected share where none is given; NaN where one must be given.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"wide", "Standard deviation when something else is wrong that affects it.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"affected", "Probability that something else affects it.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"scale", "How the deviation is measured.", "1", "", "", "freeair_likelihood_scale", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_likelihood_spread[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_likelihood_deviation(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_deviation(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, *(double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_likelihood_deviation[] = {
    {"reading", "Reading.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"found", "Value read.", "any", "[-1e8;1e8]", "", "", NULL, -100000000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"u_found", "Its standard uncertainty.", "any", "[0;1e8]", "freeair_likelihood_spread", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"expected", "Value of a sound machine.", "any", "[-1e8;1e8]", "freeair_likelihood_spread; there must be one", "", NULL, -100000000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"u_expected", "Its standard uncertainty.", "any", "[0;1e8]", "freeair_likelihood_spread", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"reference", "What a share is of; not used on other scales.", "any", "[1e-9;1e8]", "none; required for a share", "", NULL, 1e-09, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"deviation", "Deviation in the reading's scale.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"spread", "Its standard uncertainty.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_likelihood_deviation[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED, FREEAIR_ERR_DOMAIN};

static void loop_freeair_likelihood_level_off(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_level_off(*(int32_t *)(void *)a0, (double *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_likelihood_level_off[] = {
    {"cause", "Cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"rate", "Probability that it levels off.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"centre_pa", "Median gauge pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"spread", "Standard deviation of the logarithm.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_likelihood_level_off[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_likelihood_density(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_density(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_likelihood_density[] = {
    {"residual", "Deviation from what a cause predicts, over its standard uncertainty.", "1", "[-1e6;1e6]", "", "", NULL, -1000000.0, 1000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"likelihood", "Probability density.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_likelihood_density[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_likelihood_update(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_update(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(int32_t *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_likelihood_update[] = {
    {"prior", "Probability before.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"hit", "Probability of yes with the cause.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"false_alarm", "Probability of yes without it.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"answer", "Answer.", "1", "", "", "freeair_evidence_answer", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"posterior", "Probability after.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_likelihood_update[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_likelihood_information(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_likelihood_information(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_likelihood_information[] = {
    {"prior", "Probability of the cause.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"hit", "Probability of yes with the cause.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"false_alarm", "Probability of yes without it.", "1", "[0;1]", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"information", "Expected information in bits.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_likelihood_information[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_diagnosis_subject_cause(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_subject_cause((const freeair_diagnosis_subject *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_subject_cause[] = {
    {"subject", "The machine.", "", "", "", "", &structure_freeair_diagnosis_subject, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_subject), -1, -1},
    {"cause", "Cause.", "1", "", "", "freeair_evidence_cause", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"factor", "Factor on the prior probability.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_subject_cause[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_diagnosis_subject_reading(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_subject_reading((const freeair_diagnosis_subject *)(void *)a0, *(int32_t *)(void *)a1, (int32_t *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_subject_reading[] = {
    {"subject", "The machine.", "", "", "", "", &structure_freeair_diagnosis_subject, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_subject), -1, -1},
    {"reading", "Reading.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"applies", "1 if it can be read, else 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_subject_reading[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_diagnosis_expectation_from_machine(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_expectation_from_machine((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, *(double *)(void *)a2, (freeair_diagnosis_subject *)(void *)a3, (freeair_evidence_readings *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_expectation_from_machine[] = {
    {"machine", "Description, possibly with NaN fields.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "Site.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"receiver_pa", "Receiver pressure, absolute, at which interstage pressure, temperatures and speeds are read.", "Pa", "(0;1e8]", "cut_out_pa of the machine", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"subject", "What the causes depend on.", "", "", "", "", &structure_freeair_diagnosis_subject, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_diagnosis_subject), -1, -1},
    {"expected", "Expected readings.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_evidence_readings), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_expectation_from_machine[] = {FREEAIR_OK, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_CONVERGENCE, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_diagnosis_finding_compare(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_finding_compare((const freeair_diagnosis_subject *)(void *)a0, (const freeair_evidence_readings *)(void *)a1, (const freeair_evidence_readings *)(void *)a2, (freeair_diagnosis_finding *)(void *)a3, *(size_t *)(void *)a4, *(size_t *)(void *)a5, (size_t *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_finding_compare[] = {
    {"subject", "Machine and test.", "", "", "", "", &structure_freeair_diagnosis_subject, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_subject), -1, -1},
    {"expected", "What a sound machine shows here today.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"found", "What was read.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"findings", "One for each reading.", "", "", "", "", &structure_freeair_diagnosis_finding, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_finding), 5, 4},
    {"findings_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"findings_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_findings", "Number of readings.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_finding_compare[] = {FREEAIR_OK, FREEAIR_WARN_TRUNCATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN};

static void loop_freeair_diagnosis_finding_value(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_finding_value(*(int32_t *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_finding_value[] = {
    {"reading", "Reading.", "1", "", "", "freeair_evidence_reading", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"expected", "Value of a sound machine.", "any", "[-1e8;1e8]", "", "", NULL, -100000000.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"reference", "What a share is of; not used on other scales.", "any", "[1e-9;1e8]", "none; required for a share", "", NULL, 1e-09, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"deviation", "Deviation in the reading's scale.", "any", "[-600;600]", "", "", NULL, -600.0, 600.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"value", "The value.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_finding_value[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED, FREEAIR_ERR_DOMAIN};

static void loop_freeair_diagnosis_check_effort(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_check_effort(*(int32_t *)(void *)a0, (double *)(void *)a1, (uint32_t *)(void *)a2, (int32_t *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_check_effort[] = {
    {"check", "Check.", "1", "", "", "freeair_evidence_check", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"effort_s", "Working time.", "s", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"cautions", "Bits of freeair_caution.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_UINT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(uint32_t), -1, -1},
    {"qualification", "1 where an electrically qualified person must do it, else 0.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_check_effort[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND};

static void loop_freeair_diagnosis_check_rank(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  char *a11 = args[11];
  char *a12 = args[12];
  char *a13 = args[13];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_check_rank((const freeair_diagnosis_subject *)(void *)a0, (const freeair_evidence_readings *)(void *)a1, (const int32_t *)(void *)a2, (const int32_t *)(void *)a3, *(size_t *)(void *)a4, (const freeair_diagnosis_cause *)(void *)a5, *(size_t *)(void *)a6, *(size_t *)(void *)a7, (const double *)(void *)a8, *(size_t *)(void *)a9, (freeair_diagnosis_check *)(void *)a10, *(size_t *)(void *)a11, *(size_t *)(void *)a12, (size_t *)(void *)a13);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
    a11 += steps[11];
    a12 += steps[12];
    a13 += steps[13];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_check_rank[] = {
    {"subject", "Machine and test.", "", "", "", "", &structure_freeair_diagnosis_subject, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_subject), -1, -1},
    {"found", "What was read already.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"observation", "Codes of freeair_evidence_observation.", "1", "", "none", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(int32_t), 4, -1},
    {"answer", "Answers of freeair_evidence_answer.", "1", "", "none", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(int32_t), 4, -1},
    {"n_observations", "Number of observations.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"causes", "Causes as freeair_diagnosis_rank returned them.", "", "", "", "", &structure_freeair_diagnosis_cause, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_cause), 7, 6},
    {"causes_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_causes", "Number of causes there.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"effort_s", "Working time of each check by its code; NaN for its default.", "s", "", "freeair_diagnosis_check_effort", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(double), 9, -1},
    {"n_effort", "Number of working times; 0 for the defaults.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"checks", "Checks.", "", "", "", "", &structure_freeair_diagnosis_check, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_check), 12, 11},
    {"checks_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"checks_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_checks", "Number of checks.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_check_rank[] = {FREEAIR_OK, FREEAIR_WARN_TRUNCATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_DATA};

static void loop_freeair_diagnosis_rank(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  char *a11 = args[11];
  char *a12 = args[12];
  char *a13 = args[13];
  char *a14 = args[14];
  char *a15 = args[15];
  char *a16 = args[16];
  char *a17 = args[17];
  char *a18 = args[18];
  char *a19 = args[19];
  char *a20 = args[20];
  char *a21 = args[21];
  for (size_t i = 0;;) {
    int32_t s = freeair_diagnosis_rank((const freeair_diagnosis_subject *)(void *)a0, (const freeair_evidence_readings *)(void *)a1, (const freeair_evidence_readings *)(void *)a2, (const int32_t *)(void *)a3, (const int32_t *)(void *)a4, *(size_t *)(void *)a5, (const double *)(void *)a6, *(size_t *)(void *)a7, (const freeair_diagnosis_options *)(void *)a8, (freeair_diagnosis_cause *)(void *)a9, *(size_t *)(void *)a10, *(size_t *)(void *)a11, (size_t *)(void *)a12, (freeair_diagnosis_reason *)(void *)a13, *(size_t *)(void *)a14, *(size_t *)(void *)a15, (size_t *)(void *)a16, (freeair_diagnosis_finding *)(void *)a17, *(size_t *)(void *)a18, *(size_t *)(void *)a19, (size_t *)(void *)a20, (freeair_diagnosis_summary *)(void *)a21);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
    a11 += steps[11];
    a12 += steps[12];
    a13 += steps[13];
    a14 += steps[14];
    a15 += steps[15];
    a16 += steps[16];
    a17 += steps[17];
    a18 += steps[18];
    a19 += steps[19];
    a20 += steps[20];
    a21 += steps[21];
  }
}

static const freeair_parameter parameters_freeair_diagnosis_rank[] = {
    {"subject", "Machine and test.", "", "", "", "", &structure_freeair_diagnosis_subject, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_subject), -1, -1},
    {"expected", "What a sound machine shows here today.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"found", "What was read.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"observation", "Codes of freeair_evidence_observation.", "1", "", "none", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(int32_t), 5, -1},
    {"answer", "Answers of freeair_evidence_answer.", "1", "", "none", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(int32_t), 5, -1},
    {"n_observations", "Number of observations.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"prior", "Prior of each cause by its code; NaN for its default.", "1", "", "freeair_likelihood_prior", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(double), 7, -1},
    {"n_prior", "Number of priors; 0 for the defaults.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"options", "Options.", "", "", "", "", &structure_freeair_diagnosis_options, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_options), -1, -1},
    {"causes", "Causes.", "", "", "", "", &structure_freeair_diagnosis_cause, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_cause), 11, 10},
    {"causes_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"causes_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_causes", "Number of causes.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
    {"reasons", "Reasons.", "", "", "", "", &structure_freeair_diagnosis_reason, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_reason), 15, 14},
    {"reasons_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"reasons_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_reasons", "Number of reasons.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
    {"findings", "One for each reading.", "", "", "", "", &structure_freeair_diagnosis_finding, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_finding), 19, 18},
    {"findings_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"findings_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_findings", "Number of readings.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
    {"summary", "Summary.", "", "", "", "", &structure_freeair_diagnosis_summary, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_diagnosis_summary), -1, -1},
};

static const int32_t statuses_freeair_diagnosis_rank[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_WARN_TRUNCATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_inference_rank(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  char *a11 = args[11];
  char *a12 = args[12];
  char *a13 = args[13];
  char *a14 = args[14];
  char *a15 = args[15];
  char *a16 = args[16];
  char *a17 = args[17];
  char *a18 = args[18];
  char *a19 = args[19];
  char *a20 = args[20];
  char *a21 = args[21];
  char *a22 = args[22];
  char *a23 = args[23];
  char *a24 = args[24];
  char *a25 = args[25];
  char *a26 = args[26];
  char *a27 = args[27];
  char *a28 = args[28];
  char *a29 = args[29];
  char *a30 = args[30];
  char *a31 = args[31];
  char *a32 = args[32];
  char *a33 = args[33];
  char *a34 = args[34];
  char *a35 = args[35];
  for (size_t i = 0;;) {
    int32_t s = freeair_inference_rank((const freeair_machine *)(void *)a0, (const freeair_machine_site *)(void *)a1, (const freeair_diagnosis_subject *)(void *)a2, (const freeair_inference_visit *)(void *)a3, (const freeair_inference_scatter *)(void *)a4, (const freeair_evidence_readings *)(void *)a5, (const freeair_evidence_readings *)(void *)a6, (const double *)(void *)a7, (const double *)(void *)a8, *(size_t *)(void *)a9, (const double *)(void *)a10, (const double *)(void *)a11, *(size_t *)(void *)a12, (const int32_t *)(void *)a13, (const int32_t *)(void *)a14, *(size_t *)(void *)a15, (const double *)(void *)a16, *(size_t *)(void *)a17, (const freeair_diagnosis_options *)(void *)a18, (freeair_diagnosis_cause *)(void *)a19, *(size_t *)(void *)a20, *(size_t *)(void *)a21, (size_t *)(void *)a22, (freeair_inference_effect *)(void *)a23, *(size_t *)(void *)a24, *(size_t *)(void *)a25, (size_t *)(void *)a26, (freeair_diagnosis_reason *)(void *)a27, *(size_t *)(void *)a28, *(size_t *)(void *)a29, (size_t *)(void *)a30, (freeair_diagnosis_finding *)(void *)a31, *(size_t *)(void *)a32, *(size_t *)(void *)a33, (size_t *)(void *)a34, (freeair_diagnosis_summary *)(void *)a35);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
    a11 += steps[11];
    a12 += steps[12];
    a13 += steps[13];
    a14 += steps[14];
    a15 += steps[15];
    a16 += steps[16];
    a17 += steps[17];
    a18 += steps[18];
    a19 += steps[19];
    a20 += steps[20];
    a21 += steps[21];
    a22 += steps[22];
    a23 += steps[23];
    a24 += steps[24];
    a25 += steps[25];
    a26 += steps[26];
    a27 += steps[27];
    a28 += steps[28];
    a29 += steps[29];
    a30 += steps[30];
    a31 += steps[31];
    a32 += steps[32];
    a33 += steps[33];
    a34 += steps[34];
    a35 += steps[35];
  }
}

static const freeair_parameter parameters_freeair_inference_rank[] = {
    {"machine", "The machine, sound as described. What the description holds of leaks is no fault.", "", "", "", "", &structure_freeair_machine, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine), -1, -1},
    {"site", "The site, here and today; supply_v is not used.", "", "", "", "", &structure_freeair_machine_site, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_machine_site), -1, -1},
    {"subject", "Drive, supply and service valve; what it says of stages and heads is not used.", "", "", "", "", &structure_freeair_diagnosis_subject, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_subject), -1, -1},
    {"visit", "How the readings were taken.", "", "", "", "", &structure_freeair_inference_visit, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_inference_visit), -1, -1},
    {"scatter", "What is not known of a sound unit.", "", "", "", "", &structure_freeair_inference_scatter, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_inference_scatter), -1, -1},
    {"expected", "Expected voltages, current, capacitances, belt deflection and duty; no more is used.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"found", "What was read.", "", "", "", "", &structure_freeair_evidence_readings, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_evidence_readings), -1, -1},
    {"log_t_s", "Times of a log of the run from empty.", "s", "[0;1e7]", "none", "", NULL, 0.0, 10000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 9, -1},
    {"log_p_pa", "Gauge readings at these times.", "Pa", "(0;1e8]", "none", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 9, -1},
    {"n_log", "Length of the log; 0 for none.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"interstage_at_pa", "Receiver pressures.", "Pa", "(0;1e8]", "none", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 12, -1},
    {"interstage_pa", "Interstage pressures there.", "Pa", "(0;1e8]", "none", "", NULL, 0.0, 100000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 12, -1},
    {"n_interstage", "Number of these; 0 for none, the first six count.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"observation", "Codes of freeair_evidence_observation.", "1", "", "none", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(int32_t), 15, -1},
    {"answer", "Answers of freeair_evidence_answer.", "1", "", "none", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(int32_t), 15, -1},
    {"n_observations", "Number of observations.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"prior", "Prior of each cause by its code; NaN for its default.", "1", "", "freeair_likelihood_prior", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(double), 17, -1},
    {"n_prior", "Number of priors; 0 for the defaults.", "1", "[0;1000]", "", "", NULL, 0.0, 1000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"options", "Options.", "", "", "", "", &structure_freeair_diagnosis_options, NAN, NAN, FREEAIR_TYPE_STRUCTURE, 0, 0u, sizeof(freeair_diagnosis_options), -1, -1},
    {"causes", "Causes.", "", "", "", "", &structure_freeair_diagnosis_cause, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_cause), 21, 20},
    {"causes_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"causes_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_causes", "Number of causes.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
    {"effects", "What each cause does.", "", "", "", "", &structure_freeair_inference_effect, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_inference_effect), 25, 24},
    {"effects_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"effects_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_effects", "Number of effects: that of the causes.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
    {"reasons", "Reasons.", "", "", "", "", &structure_freeair_diagnosis_reason, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_reason), 29, 28},
    {"reasons_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"reasons_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_reasons", "Number of reasons.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
    {"findings", "One for each reading.", "", "", "", "", &structure_freeair_diagnosis_finding, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(freeair_diagnosis_finding), 33, 32},
    {"findings_stride", "Bytes from one row to the next.", "1", "[0;65536]", "", "", NULL, 0.0, 65536.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"findings_capacity", "Rows there is room for.", "1", "[0;1e6]", "", "", NULL, 0.0, 1000000.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"n_findings", "Number of readings.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(size_t), -1, -1},
    {"summary", "Summary.", "", "", "", "", &structure_freeair_diagnosis_summary, NAN, NAN, FREEAIR_TYPE_STRUCTURE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(freeair_diagnosis_summary), -1, -1},
};

static const int32_t statuses_freeair_inference_rank[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_WARN_TRUNCATED, FREEAIR_ERR_NULL, FREEAIR_ERR_VERSION, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_uncertainty_propagate(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  for (size_t i = 0;;) {
    int32_t s = freeair_uncertainty_propagate(*(const char **)(void *)a0, (const double *)(void *)a1, (const double *)(void *)a2, *(size_t *)(void *)a3, (const double *)(void *)a4, *(size_t *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7, *(size_t *)(void *)a8, (double *)(void *)a9, *(size_t *)(void *)a10);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
  }
}

static const freeair_parameter parameters_freeair_uncertainty_propagate[] = {
    {"function", "Name of a function, with or without freeair_.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"x", "Inputs.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 3, -1},
    {"u", "Their standard uncertainties.", "any", "[0;1e150]", "", "", NULL, 0.0, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"n_in", "Number of inputs.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"correlation", "Correlation of the inputs.", "1", "[-1;1]", "none", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"n_correlation", "n_in^2, or 0.", "1", "", "0", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(size_t), -1, -1},
    {"y", "Results.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"u_y", "Their standard uncertainties; NaN for a whole number.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"n_out", "Number of results.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"sensitivity", "c, row after row, a row for each result; NaN where neither the input nor its uncertainty gives a step.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 10, -1},
    {"n_sensitivity", "n_in n_out.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_uncertainty_propagate[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_WARN_TRANSITION, FREEAIR_WARN_INCONSISTENT, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_OVERFLOW, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_uncertainty_budget(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_uncertainty_budget((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (const double *)(void *)a3, *(size_t *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_uncertainty_budget[] = {
    {"sensitivity", "dy/dx of one result.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"u", "Standard uncertainties of the inputs.", "any", "[0;1e150]", "", "", NULL, 0.0, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Number of inputs.", "1", "[1;65535]", "", "", NULL, 1.0, 65535.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"correlation", "Correlation of the inputs.", "1", "[-1;1]", "none", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 4, -1},
    {"n_correlation", "n^2, or 0.", "1", "", "0", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(size_t), -1, -1},
    {"contribution", "Contribution of each input, with its sign.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 2, -1},
    {"share", "Share of each in the variance; 0 where nothing is uncertain.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 2, -1},
    {"combined", "Combined standard uncertainty.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_uncertainty_budget[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN};

static void loop_freeair_uncertainty_covariance(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_uncertainty_covariance((const double *)(void *)a0, *(size_t *)(void *)a1, (const double *)(void *)a2, *(size_t *)(void *)a3, (const double *)(void *)a4, *(size_t *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7, *(size_t *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_uncertainty_covariance[] = {
    {"sensitivity", "C, row after row, a row for each result.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 1, -1},
    {"n_sensitivity", "Number of inputs times number of results.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"u", "Standard uncertainties of the inputs.", "any", "[0;1e150]", "", "", NULL, 0.0, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"n_in", "Number of inputs.", "1", "[1;65535]", "", "", NULL, 1.0, 65535.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"correlation", "Correlation of the inputs.", "1", "[-1;1]", "none", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"n_correlation", "n_in^2, or 0.", "1", "", "0", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(size_t), -1, -1},
    {"covariance", "V, row after row.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"dependence", "Correlation of the results; NaN where one has no uncertainty.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 8, -1},
    {"n_square", "Number of results squared.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_uncertainty_covariance[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN};

static void loop_freeair_uncertainty_second_order(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_uncertainty_second_order((const double *)(void *)a0, (const double *)(void *)a1, *(size_t *)(void *)a2, (const double *)(void *)a3, (const double *)(void *)a4, *(size_t *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_uncertainty_second_order[] = {
    {"first", "f_i.", "any", "[-1e75;1e75]", "", "", NULL, -1e+75, 1e+75, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"u", "Standard uncertainties of the inputs.", "any", "[0;1e75]", "", "", NULL, 0.0, 1e+75, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 2, -1},
    {"n", "Number of inputs.", "1", "[1;65535]", "", "", NULL, 1.0, 65535.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"second", "f_ij, row after row.", "any", "[-1e75;1e75]", "", "", NULL, -1e+75, 1e+75, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"third", "f_ijj in row i, column j.", "any", "[-1e75;1e75]", "", "", NULL, -1e+75, 1e+75, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"n_square", "n^2.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"combined", "Combined standard uncertainty.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"shift", "Expected value less the value at the estimates.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_uncertainty_second_order[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_uncertainty_propagate_second_order(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  for (size_t i = 0;;) {
    int32_t s = freeair_uncertainty_propagate_second_order(*(const char **)(void *)a0, (const double *)(void *)a1, (const double *)(void *)a2, *(size_t *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6, *(size_t *)(void *)a7);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
  }
}

static const freeair_parameter parameters_freeair_uncertainty_propagate_second_order[] = {
    {"function", "Name of a function, with or without freeair_.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"x", "Inputs.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 3, -1},
    {"u", "Their standard uncertainties.", "any", "[0;1e150]", "", "", NULL, 0.0, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 3, -1},
    {"n_in", "Number of inputs.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"y", "Results at x.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 7, -1},
    {"u_y", "Their standard uncertainties; NaN for a whole number.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 7, -1},
    {"shift", "Expected values less the results at x; NaN for a whole number.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 7, -1},
    {"n_out", "Number of results.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_uncertainty_propagate_second_order[] = {FREEAIR_OK, FREEAIR_WARN_EXTRAPOLATED, FREEAIR_WARN_TRANSITION, FREEAIR_WARN_INCONSISTENT, FREEAIR_WARN_LIMIT, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION, FREEAIR_ERR_OVERFLOW, FREEAIR_ERR_NO_CONVERGENCE};

static void loop_freeair_monte_carlo_interval(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  for (size_t i = 0;;) {
    int32_t s = freeair_monte_carlo_interval((const double *)(void *)a0, *(size_t *)(void *)a1, *(double *)(void *)a2, *(int32_t *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6, (double *)(void *)a7, (double *)(void *)a8);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
  }
}

static const freeair_parameter parameters_freeair_monte_carlo_interval[] = {
    {"y", "Values; NaN is left out.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 1, -1},
    {"n", "Number of trials.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"probability", "Probability within the interval.", "1", "(0;1)", "", "", NULL, 0.0, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"interval", "Symmetric or shortest.", "1", "", "", "freeair_monte_carlo_interval", NULL, NAN, NAN, FREEAIR_TYPE_INT32, 0, 0u, sizeof(int32_t), -1, -1},
    {"ordered", "The values from the least to the greatest, NaN last; may be y itself.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 1, -1},
    {"low", "Lower end.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"high", "Upper end.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"low_error", "Standard error of the lower end.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"high_error", "Standard error of the upper end.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_monte_carlo_interval[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_DATA};

static void loop_freeair_monte_carlo_draw(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  for (size_t i = 0;;) {
    int32_t s = freeair_monte_carlo_draw((const double *)(void *)a0, (const double *)(void *)a1, (const int32_t *)(void *)a2, (const double *)(void *)a3, *(size_t *)(void *)a4, (const double *)(void *)a5, *(size_t *)(void *)a6, *(uint32_t *)(void *)a7, *(uint32_t *)(void *)a8, (double *)(void *)a9, *(size_t *)(void *)a10);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
  }
}

static const freeair_parameter parameters_freeair_monte_carlo_draw[] = {
    {"x", "Estimates; a distribution is centred there.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 4, -1},
    {"u", "Standard uncertainties.", "any", "[0;1e130]", "", "", NULL, 0.0, 1e+130, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 4, -1},
    {"distribution", "Of each input.", "1", "", "", "freeair_coverage_distribution", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(int32_t), 4, -1},
    {"nu", "Degrees of freedom where Student's.", "1", "[1;inf]", "", "", NULL, 1.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 4, -1},
    {"n_in", "Number of inputs.", "1", "[1;512]", "", "", NULL, 1.0, 512.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"correlation", "Correlation of the inputs.", "1", "[-1;1]", "none", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 6, -1},
    {"n_correlation", "n_in^2, or 0.", "1", "", "0", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(size_t), -1, -1},
    {"seed", "Seed.", "1", "[0;4294967295]", "", "", NULL, 0.0, 4294967295.0, FREEAIR_TYPE_UINT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(uint32_t), -1, -1},
    {"first", "Number of the first trial.", "1", "[0;4294967295]", "", "", NULL, 0.0, 4294967295.0, FREEAIR_TYPE_UINT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(uint32_t), -1, -1},
    {"sample", "Values, trial after trial, n_in each.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 10, -1},
    {"n_sample", "n_in times the number of trials.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
};

static const int32_t statuses_freeair_monte_carlo_draw[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_monte_carlo_propagate(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  char *a7 = args[7];
  char *a8 = args[8];
  char *a9 = args[9];
  char *a10 = args[10];
  char *a11 = args[11];
  char *a12 = args[12];
  char *a13 = args[13];
  for (size_t i = 0;;) {
    int32_t s = freeair_monte_carlo_propagate(*(const char **)(void *)a0, (const double *)(void *)a1, (const double *)(void *)a2, (const int32_t *)(void *)a3, (const double *)(void *)a4, *(size_t *)(void *)a5, (const double *)(void *)a6, *(size_t *)(void *)a7, *(uint32_t *)(void *)a8, *(uint32_t *)(void *)a9, *(size_t *)(void *)a10, (double *)(void *)a11, *(size_t *)(void *)a12, (int32_t *)(void *)a13);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
    a7 += steps[7];
    a8 += steps[8];
    a9 += steps[9];
    a10 += steps[10];
    a11 += steps[11];
    a12 += steps[12];
    a13 += steps[13];
  }
}

static const freeair_parameter parameters_freeair_monte_carlo_propagate[] = {
    {"function", "Name of a function, with or without freeair_.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"x", "Estimates of its inputs.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 5, -1},
    {"u", "Their standard uncertainties.", "any", "[0;1e130]", "", "", NULL, 0.0, 1e+130, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"distribution", "Of each input.", "1", "", "", "freeair_coverage_distribution", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_ARRAY, 0u, sizeof(int32_t), 5, -1},
    {"nu", "Degrees of freedom where Student's.", "1", "[1;inf]", "", "", NULL, 1.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 5, -1},
    {"n_in", "Number of inputs.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"correlation", "Correlation of the inputs.", "1", "[-1;1]", "none", "", NULL, -1.0, 1.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_OPTIONAL | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 7, -1},
    {"n_correlation", "n_in^2, or 0.", "1", "", "0", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_OPTIONAL, 0u, sizeof(size_t), -1, -1},
    {"seed", "Seed.", "1", "[0;4294967295]", "", "", NULL, 0.0, 4294967295.0, FREEAIR_TYPE_UINT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(uint32_t), -1, -1},
    {"first", "Number of the first trial.", "1", "[0;4294967295]", "", "", NULL, 0.0, 4294967295.0, FREEAIR_TYPE_UINT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(uint32_t), -1, -1},
    {"output", "Which result, from 0.", "1", "[0;255]", "", "", NULL, 0.0, 255.0, FREEAIR_TYPE_SIZE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(size_t), -1, -1},
    {"y", "Its values.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT | FREEAIR_PARAMETER_ARRAY, 0u, sizeof(double), 12, -1},
    {"n", "Number of trials.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"failed", "Number of trials without a value.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_monte_carlo_propagate[] = {FREEAIR_OK, FREEAIR_WARN_INCONSISTENT, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_monte_carlo_summary(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  char *a6 = args[6];
  for (size_t i = 0;;) {
    int32_t s = freeair_monte_carlo_summary((const double *)(void *)a0, *(size_t *)(void *)a1, (double *)(void *)a2, (double *)(void *)a3, (double *)(void *)a4, (double *)(void *)a5, (double *)(void *)a6);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
    a6 += steps[6];
  }
}

static const freeair_parameter parameters_freeair_monte_carlo_summary[] = {
    {"y", "Values; NaN is left out.", "any", "[-1e150;1e150]", "", "", NULL, -1e+150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_ARRAY | FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), 1, -1},
    {"n", "Number of trials.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_SIZE, 0, 0u, sizeof(size_t), -1, -1},
    {"mean", "Mean.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"u_y", "Standard uncertainty.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"mean_error", "Standard error of the mean.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"u_error", "Standard error of the standard uncertainty.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
    {"skewness", "Third moment over u^3; 0 for a symmetric distribution.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_monte_carlo_summary[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DATA, FREEAIR_ERR_DOMAIN};

static void loop_freeair_monte_carlo_tolerance(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_monte_carlo_tolerance(*(double *)(void *)a0, *(int32_t *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_monte_carlo_tolerance[] = {
    {"u_y", "Standard uncertainty.", "any", "[1e-150;1e150]", "", "", NULL, 1e-150, 1e+150, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"digits", "Significant digits meant, 1 or 2.", "1", "[1;9]", "", "", NULL, 1.0, 9.0, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(int32_t), -1, -1},
    {"tolerance", "Numerical tolerance.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_monte_carlo_tolerance[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

const freeair_function freeair__functions[] = {
    {"freeair_units_is_gauge", "units", "Whether a symbol means a pressure above that of the surrounding air.", "table look-up. Symbols that say so: psig, barg, kPag, kgf/cm2g, inHg vac and their spellings. A plain psi or bar says neither; here it is absolute.", "definition", parameters_freeair_units_is_gauge, statuses_freeair_units_is_gauge, loop_freeair_units_is_gauge, 2u, 4u, 0},
    {"freeair_units_si_from", "units", "Value in coherent SI of a value in a unit.", "si = zero + value x factor, the factor exact by definition of the unit wherever it has an exact one. Temperatures are readings of a scale: 20 degC is 293.15 K. A gauge pressure stays a gauge pressure, in pascal: ask freeair_units_is_gauge() before you use it as an absolute one.", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000", parameters_freeair_units_si_from, statuses_freeair_units_si_from, loop_freeair_units_si_from, 3u, 5u, 0},
    {"freeair_units_from_si", "units", "Value in a unit of a value in coherent SI.", "inverse of freeair_units_si_from().", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000", parameters_freeair_units_from_si, statuses_freeair_units_from_si, loop_freeair_units_from_si, 3u, 5u, 0},
    {"freeair_units_convert", "units", "Value in one unit of a value in another.", "through coherent SI. Temperatures are readings of a scale. A gauge pressure converts to gauge pressures only.", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000", parameters_freeair_units_convert, statuses_freeair_units_convert, loop_freeair_units_convert, 4u, 6u, 0},
    {"freeair_units_convert_difference", "units", "Difference in one unit of a difference in another.", "as freeair_units_convert(), but scales are compared by the size of their degrees alone: a difference of 1 degC is one of 1 K and of 1.8 degF. A difference between two gauge pressures is the same as that between the two absolute ones, so here gauge and absolute mix.", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, 4.2.1.1 and Appendix B", parameters_freeair_units_convert_difference, statuses_freeair_units_convert_difference, loop_freeair_units_convert_difference, 4u, 6u, 0},
    {"freeair_units_absolute_from_gauge", "units", "Absolute pressure of a gauge reading.", "p = gauge + barometric. The barometer of the site, not of the sea: at 1500 m it reads about 85 kPa (freeair_atmosphere_pressure_from_altitude()).", "definition", parameters_freeair_units_absolute_from_gauge, statuses_freeair_units_absolute_from_gauge, loop_freeair_units_absolute_from_gauge, 3u, 4u, 0},
    {"freeair_units_gauge_from_absolute", "units", "Gauge reading of an absolute pressure.", "gauge = p - barometric; negative below the barometer.", "definition", parameters_freeair_units_gauge_from_absolute, statuses_freeair_units_gauge_from_absolute, loop_freeair_units_gauge_from_absolute, 3u, 3u, 0},
    {"freeair_reference_conditions", "reference", "Pressure, temperature and humidity of a reference state.", "table look-up.", "ISO 1217:2009; ISO 8778:2003; DIN 1343:1990; ISO 13443:1996; ISO 2533:1975; common practice for the rest", parameters_freeair_reference_conditions, statuses_freeair_reference_conditions, loop_freeair_reference_conditions, 4u, 3u, 0},
    {"freeair_reference_find", "reference", "Reference state by name, in any case.", "table look-up: the full name, the rest of it with '_' or blanks (\"iso 1217\"), ANR, normal, ICAO, ISA. Not scfm: people mean different states by it.", "definition", parameters_freeair_reference_find, statuses_freeair_reference_find, loop_freeair_reference_find, 2u, 3u, 0},
    {"freeair_reference_density", "reference", "Density of moist air.", "rho = (p - e)/(Rd T) + e/(Rv T), e = relative humidity x saturation pressure over water (IAPWS-IF97, equation 30, extrapolated below 0 degC); Rd = 8.314462618/0.02896546 and Rv = 8.314462618/0.01801528 J/(kg K).", "IAPWS R7-97(2012), Industrial Formulation 1997, equation 30; molar masses of Picard et al., Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149", parameters_freeair_reference_density, statuses_freeair_reference_density, loop_freeair_reference_density, 4u, 4u, 0},
    {"freeair_reference_flow_convert", "reference", "Volume flow at one state of a flow given at another.", "the same mass of dry air a second, so q2/q1 = (p1 - e1)/(p2 - e2) x T2/T1, e = relative humidity x saturation pressure of water.", "algebra: ideal gas law for dry air at its partial pressure", parameters_freeair_reference_flow_convert, statuses_freeair_reference_flow_convert, loop_freeair_reference_flow_convert, 8u, 4u, 0},
    {"freeair_reference_flow_between_states", "reference", "Volume flow at one reference state of a flow given at another.", "freeair_reference_flow_convert() with the conditions of both states.", "algebra: ideal gas law for dry air at its partial pressure", parameters_freeair_reference_flow_between_states, statuses_freeair_reference_flow_between_states, loop_freeair_reference_flow_between_states, 4u, 4u, 0},
    {"freeair_reference_flow_to_state", "reference", "Volume flow at a reference state of a flow measured at the site.", "freeair_reference_flow_convert() with the conditions of the state as the second.", "algebra: ideal gas law for dry air at its partial pressure", parameters_freeair_reference_flow_to_state, statuses_freeair_reference_flow_to_state, loop_freeair_reference_flow_to_state, 6u, 5u, 0},
    {"freeair_reference_flow_from_state", "reference", "Volume flow at the site of a flow given at a reference state.", "freeair_reference_flow_convert() with the conditions of the state as the first.", "algebra: ideal gas law for dry air at its partial pressure", parameters_freeair_reference_flow_from_state, statuses_freeair_reference_flow_from_state, loop_freeair_reference_flow_from_state, 6u, 5u, 0},
    {"freeair_reference_mass_flow_from_volume_flow", "reference", "Mass flow of a volume flow at a state, vapour included, and the dry air in it.", "q x rho for the whole, q (p - e)/(Rd T) for the dry air, as in freeair_reference_density().", "algebra: ideal gas law for dry air and vapour at their partial pressures", parameters_freeair_reference_mass_flow_from_volume_flow, statuses_freeair_reference_mass_flow_from_volume_flow, loop_freeair_reference_mass_flow_from_volume_flow, 6u, 4u, 0},
    {"freeair_reference_volume_flow_from_mass_flow", "reference", "Volume flow at a state of a mass flow of moist air.", "q = mass flow / rho, as in freeair_reference_density().", "algebra: ideal gas law for dry air and vapour at their partial pressures", parameters_freeair_reference_volume_flow_from_mass_flow, statuses_freeair_reference_volume_flow_from_mass_flow, loop_freeair_reference_volume_flow_from_mass_flow, 5u, 4u, 0},
    {"freeair_verdict_probability", "verdict", "Probability that a measured quantity lies within its limits.", "P = Phi((upper - value) / u) - Phi((lower - value) / u), Phi the standard normal distribution; evaluated in the tail where it is small. An infinite limit makes the requirement one-sided. u = 0 gives 0 or 1, a value on a limit counts as conforming.", "JCGM 106:2012, Evaluation of measurement data - The role of measurement uncertainty in conformity assessment, 7.2 to 7.4", parameters_freeair_verdict_probability, statuses_freeair_verdict_probability, loop_freeair_verdict_probability, 5u, 3u, 0},
    {"freeair_verdict_decide", "verdict", "Guarded decision on a measured quantity against its limits.", "MEETS when the probability of conformance is at least the confidence, FAILS when it is at most one minus the confidence, else CANNOT_TELL. With one limit and confidence 0.95 this is a guard band of 1.645 standard uncertainties on either side.", "JCGM 106:2012, 8.3, guarded acceptance and guarded rejection", parameters_freeair_verdict_decide, statuses_freeair_verdict_decide, loop_freeair_verdict_decide, 6u, 3u, 0},
    {"freeair_coverage_mean", "coverage", "Mean of repeated readings with its standard uncertainty (type A).", "s^2 = sum (x - mean)^2 / (n - 1), u = s / sqrt(n), nu = n - 1; readings independent of one another.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 4.2", parameters_freeair_coverage_mean, statuses_freeair_coverage_mean, loop_freeair_coverage_mean, 6u, 4u, 0},
    {"freeair_coverage_correlation", "coverage", "Correlation of two quantities from readings taken in pairs.", "r = sum (a - mean a)(b - mean b) / sqrt(sum (a - mean a)^2 sum (b - mean b)^2); that of the means is the same as that of the readings.", "JCGM 100:2008, GUM, 5.2.3 and C.3.6", parameters_freeair_coverage_correlation, statuses_freeair_coverage_correlation, loop_freeair_coverage_correlation, 4u, 5u, 0},
    {"freeair_coverage_pooled", "coverage", "Standard deviation pooled from several series of readings.", "s^2 = sum nu_i s_i^2 / sum nu_i, nu = sum nu_i: what earlier tests of the same kind say about the scatter of the one at hand.", "JCGM 100:2008, GUM, 4.2.4 and H.3.6", parameters_freeair_coverage_pooled, statuses_freeair_coverage_pooled, loop_freeair_coverage_pooled, 5u, 4u, 0},
    {"freeair_coverage_uncertainty_from_limits", "coverage", "Standard uncertainty from limits (type B).", "half width over sqrt(3) when rectangular, sqrt(6) when triangular, sqrt(2) when arcsine.", "JCGM 100:2008, GUM, 4.3.7 and 4.3.9; JCGM 101:2008, 6.4.6 for the arcsine", parameters_freeair_coverage_uncertainty_from_limits, statuses_freeair_coverage_uncertainty_from_limits, loop_freeair_coverage_uncertainty_from_limits, 3u, 3u, 0},
    {"freeair_coverage_degrees_of_freedom_from_doubt", "coverage", "Degrees of freedom from how well an uncertainty is known.", "nu = 1 / (2 doubt^2): an uncertainty that may be wrong by a quarter has 8.", "JCGM 100:2008, GUM, G.4.2, equation G.3", parameters_freeair_coverage_degrees_of_freedom_from_doubt, statuses_freeair_coverage_degrees_of_freedom_from_doubt, loop_freeair_coverage_degrees_of_freedom_from_doubt, 2u, 3u, 0},
    {"freeair_coverage_degrees_of_freedom", "coverage", "Effective degrees of freedom of a combined uncertainty (Welch and Satterthwaite).", "nu_eff = u^4 / sum (contribution^4 / nu), inputs independent; never more than the sum of the nu. The GUM truncates the result to a whole number before looking up a factor, which is the more cautious.", "JCGM 100:2008, GUM, G.4.1, equation G.2b", parameters_freeair_coverage_degrees_of_freedom, statuses_freeair_coverage_degrees_of_freedom, loop_freeair_coverage_degrees_of_freedom, 5u, 4u, 0},
    {"freeair_coverage_factor", "coverage", "Coverage factor for a probability (Student's t, two-sided).", "P(|t| <= factor) = probability; the normal distribution with nu = inf. A one-sided confidence c takes probability = 2 c - 1. Newton's method on the incomplete beta function, at most 200 steps, to rounding.", "JCGM 100:2008, GUM, G.3 and Table G.2", parameters_freeair_coverage_factor, statuses_freeair_coverage_factor, loop_freeair_coverage_factor, 3u, 3u, 0},
    {"freeair_coverage_probability", "coverage", "Probability that a coverage factor gives (Student's t, two-sided).", "P(|t| <= factor) = 1 - I_x(nu/2, 1/2), x = nu / (nu + factor^2), I the regularised incomplete beta function; the normal distribution with nu = inf.", "JCGM 100:2008, GUM, G.3; Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1", parameters_freeair_coverage_probability, statuses_freeair_coverage_probability, loop_freeair_coverage_probability, 3u, 3u, 0},
    {"freeair_coverage_interval", "coverage", "Coverage interval of an estimate.", "expanded = factor(probability, nu) u, low and high = y -+ expanded.", "JCGM 100:2008, GUM, G.1.3 and G.6.4", parameters_freeair_coverage_interval, statuses_freeair_coverage_interval, loop_freeair_coverage_interval, 7u, 3u, 0},
    {"freeair_atmosphere_pressure_from_altitude", "atmosphere", "Pressure of the standard atmosphere at a geopotential altitude.", "p = p0 (1 - L H / T0)^(g0 / (L R)), with p0 = 101325 Pa, T0 = 288.15 K, L = 0.0065 K/m, g0 = 9.80665 m/s2, R = 287.05287 J/(kg K). Troposphere only.", "ISO 2533:1975, Standard Atmosphere, 2.2; US Standard Atmosphere 1976, equation 33a", parameters_freeair_atmosphere_pressure_from_altitude, statuses_freeair_atmosphere_pressure_from_altitude, loop_freeair_atmosphere_pressure_from_altitude, 2u, 3u, 0},
    {"freeair_atmosphere_altitude_from_pressure", "atmosphere", "Geopotential altitude at which the standard atmosphere has a pressure.", "inverse of freeair_atmosphere_pressure_from_altitude, in closed form.", "ISO 2533:1975, Standard Atmosphere, 2.2, solved for altitude", parameters_freeair_atmosphere_altitude_from_pressure, statuses_freeair_atmosphere_altitude_from_pressure, loop_freeair_atmosphere_altitude_from_pressure, 2u, 3u, 0},
    {"freeair_atmosphere_temperature_from_altitude", "atmosphere", "Temperature of the standard atmosphere at a geopotential altitude.", "T = T0 - L H, T0 = 288.15 K, L = 0.0065 K/m. Troposphere only.", "ISO 2533:1975, Standard Atmosphere, 2.2", parameters_freeair_atmosphere_temperature_from_altitude, statuses_freeair_atmosphere_temperature_from_altitude, loop_freeair_atmosphere_temperature_from_altitude, 2u, 3u, 0},
    {"freeair_atmosphere_density_from_altitude", "atmosphere", "Density of the standard atmosphere at a geopotential altitude.", "rho = p / (R T) with pressure and temperature of the standard atmosphere.", "ISO 2533:1975, Standard Atmosphere, 2.2", parameters_freeair_atmosphere_density_from_altitude, statuses_freeair_atmosphere_density_from_altitude, loop_freeair_atmosphere_density_from_altitude, 2u, 3u, 0},
    {"freeair_atmosphere_altitude_from_geometric", "atmosphere", "Geopotential altitude of a geometric altitude.", "H = r Z / (r + Z), r = 6356766 m, the nominal radius of the earth.", "ISO 2533:1975, Standard Atmosphere, 2.3; US Standard Atmosphere 1976, equation 18", parameters_freeair_atmosphere_altitude_from_geometric, statuses_freeair_atmosphere_altitude_from_geometric, loop_freeair_atmosphere_altitude_from_geometric, 2u, 3u, 0},
    {"freeair_atmosphere_pressure_from_geometric", "atmosphere", "Pressure of the standard atmosphere at a geometric altitude.", "freeair_atmosphere_pressure_from_altitude at the geopotential altitude r Z / (r + Z), r = 6356766 m.", "US Standard Atmosphere 1976, equations 18 and 33a", parameters_freeair_atmosphere_pressure_from_geometric, statuses_freeair_atmosphere_pressure_from_geometric, loop_freeair_atmosphere_pressure_from_geometric, 2u, 3u, 0},
    {"freeair_dry_air_state", "dry_air", "All properties of dry air at a pressure and a temperature.", "equation of state of Lemmon et al. (2000) with R = 8.31451 J/(mol K) and M = 28.96546 g/mol; density as in freeair_dry_air_density(); viscosity and conductivity of Lemmon and Jacobsen (2004).", "Lemmon, Jacobsen, Penoncello, Friend, Thermodynamic Properties of Air..., J. Phys. Chem. Ref. Data 29 (2000) 331; Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21; molar mass and reference state of IAPWS G8-10", parameters_freeair_dry_air_state, statuses_freeair_dry_air_state, loop_freeair_dry_air_state, 3u, 6u, 0},
    {"freeair_dry_air_density", "dry_air", "Density of dry air.", "the root of p(rho, T) of Lemmon et al. (2000) in the stable phase, by Newton's method on ln p against ln rho, kept in a bracket, to rounding. It ends in every state: within 13 steps in a million of random ones, 3 on average.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331", parameters_freeair_dry_air_density, statuses_freeair_dry_air_density, loop_freeair_dry_air_density, 3u, 4u, 0},
    {"freeair_dry_air_state_from_density", "dry_air", "All properties of dry air at a density and a temperature.", "as freeair_dry_air_state(), without a search.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331", parameters_freeair_dry_air_state_from_density, statuses_freeair_dry_air_state_from_density, loop_freeair_dry_air_state_from_density, 3u, 6u, 0},
    {"freeair_dry_air_temperature_from_enthalpy", "dry_air", "Temperature at which gaseous dry air has an enthalpy: throttling.", "h(p, T) of freeair_dry_air_state() solved for T by Newton's method with cp as slope, kept in a bracket, to 1e-12. Below 3.785 MPa no colder than the dew point.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331", parameters_freeair_dry_air_temperature_from_enthalpy, statuses_freeair_dry_air_temperature_from_enthalpy, loop_freeair_dry_air_temperature_from_enthalpy, 3u, 4u, 0},
    {"freeair_dry_air_temperature_from_entropy", "dry_air", "Temperature at which gaseous dry air has an entropy: isentropic compression.", "s(p, T) of freeair_dry_air_state() solved for ln T by Newton's method with cp as slope, kept in a bracket, to 1e-12. Below 3.785 MPa no colder than the dew point.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331", parameters_freeair_dry_air_temperature_from_entropy, statuses_freeair_dry_air_temperature_from_entropy, loop_freeair_dry_air_temperature_from_entropy, 3u, 4u, 0},
    {"freeair_dry_air_saturation", "dry_air", "Pressures at which dry air begins to condense and to boil.", "the two ancillary equations of Lemmon et al. (2000) for the dew and bubble line, fitted within 0.1 %.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, equation 1, Table A1", parameters_freeair_dry_air_saturation, statuses_freeair_dry_air_saturation, loop_freeair_dry_air_saturation, 3u, 3u, 0},
    {"freeair_dry_air_ideal_density", "dry_air_ideal", "Density of dry air as an ideal gas.", "rho = p/(R T), R = 8.31451/0.02896546 J/(kg K).", "definition", parameters_freeair_dry_air_ideal_density, statuses_freeair_dry_air_ideal_density, loop_freeair_dry_air_ideal_density, 3u, 3u, 0},
    {"freeair_dry_air_ideal_heat_capacity", "dry_air_ideal", "Heat capacity of dry air at constant pressure as an ideal gas.", "the ideal-gas part of Lemmon et al. (2000): a power series in T and three vibration terms, 60 K to 2000 K. That at constant volume is less by R.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas heat capacity", parameters_freeair_dry_air_ideal_heat_capacity, statuses_freeair_dry_air_ideal_heat_capacity, loop_freeair_dry_air_ideal_heat_capacity, 2u, 3u, 0},
    {"freeair_dry_air_ideal_heat_capacity_ratio", "dry_air_ideal", "Ratio of the heat capacities of dry air as an ideal gas, the isentropic exponent of the textbooks.", "k = cp/(cp - R).", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas heat capacity", parameters_freeair_dry_air_ideal_heat_capacity_ratio, statuses_freeair_dry_air_ideal_heat_capacity_ratio, loop_freeair_dry_air_ideal_heat_capacity_ratio, 2u, 3u, 0},
    {"freeair_dry_air_ideal_speed_of_sound", "dry_air_ideal", "Speed of sound in dry air as an ideal gas.", "w = sqrt(k R T).", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas heat capacity", parameters_freeair_dry_air_ideal_speed_of_sound, statuses_freeair_dry_air_ideal_speed_of_sound, loop_freeair_dry_air_ideal_speed_of_sound, 2u, 3u, 0},
    {"freeair_dry_air_ideal_enthalpy", "dry_air_ideal", "Enthalpy of dry air as an ideal gas.", "integral of cp in closed form, counted as in topic dry_air: real air has none at 273.15 K and 101325 Pa, ideal gas there 277.8 J/kg.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331; reference state of IAPWS G8-10", parameters_freeair_dry_air_ideal_enthalpy, statuses_freeair_dry_air_ideal_enthalpy, loop_freeair_dry_air_ideal_enthalpy, 2u, 3u, 0},
    {"freeair_dry_air_ideal_entropy", "dry_air_ideal", "Entropy of dry air as an ideal gas.", "integral of cp/T in closed form, less R ln p, counted as in topic dry_air.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331; reference state of IAPWS G8-10", parameters_freeair_dry_air_ideal_entropy, statuses_freeair_dry_air_ideal_entropy, loop_freeair_dry_air_ideal_entropy, 3u, 3u, 0},
    {"freeair_dry_air_ideal_temperature_from_enthalpy", "dry_air_ideal", "Temperature of dry air as an ideal gas from its enthalpy.", "freeair_dry_air_ideal_enthalpy() solved by Newton's method, at most 30 steps, to rounding.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, solved for temperature", parameters_freeair_dry_air_ideal_temperature_from_enthalpy, statuses_freeair_dry_air_ideal_temperature_from_enthalpy, loop_freeair_dry_air_ideal_temperature_from_enthalpy, 2u, 4u, 0},
    {"freeair_dry_air_ideal_temperature_from_entropy", "dry_air_ideal", "Temperature of dry air as an ideal gas from its entropy.", "freeair_dry_air_ideal_entropy() solved by Newton's method in ln T, at most 30 steps, to rounding.", "Lemmon, Jacobsen, Penoncello, Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, solved for temperature", parameters_freeair_dry_air_ideal_temperature_from_entropy, statuses_freeair_dry_air_ideal_temperature_from_entropy, loop_freeair_dry_air_ideal_temperature_from_entropy, 3u, 4u, 0},
    {"freeair_dry_air_ideal_isentropic_temperature", "dry_air_ideal", "Temperature after an isentropic change of pressure, by the air tables: their relative pressure.", "s0(T2) = s0(T1) + R ln(p2/p1), cp varying with temperature; solved as in freeair_dry_air_ideal_temperature_from_entropy(). From 300 K a constant k of 1.4 ends 5 K too hot at a ratio of 10, 21 K at 30.", "Cengel, Boles, Thermodynamics: An Engineering Approach, isentropic processes of ideal gases, relative pressure", parameters_freeair_dry_air_ideal_isentropic_temperature, statuses_freeair_dry_air_ideal_isentropic_temperature, loop_freeair_dry_air_ideal_isentropic_temperature, 3u, 4u, 0},
    {"freeair_dry_air_transport_viscosity", "dry_air_transport", "Dynamic viscosity of dry air.", "eta = eta0(T) + sum N tau^t delta^d exp(-gamma delta^l) of Lemmon and Jacobsen (2004), eta0 by the collision integral, at the density of freeair_dry_air_density().", "Lemmon, Jacobsen, Viscosity and Thermal Conductivity Equations for Nitrogen, Oxygen, Argon, and Air, Int. J. Thermophys. 25 (2004) 21, equations 1 to 3", parameters_freeair_dry_air_transport_viscosity, statuses_freeair_dry_air_transport_viscosity, loop_freeair_dry_air_transport_viscosity, 3u, 5u, 0},
    {"freeair_dry_air_transport_conductivity", "dry_air_transport", "Thermal conductivity of dry air.", "lambda = lambda0(T) + residual(tau, delta) + critical enhancement after Olchowy and Sengers, of Lemmon and Jacobsen (2004), at the density of freeair_dry_air_density(). Above 265.262 K and up to 150 MPa the enhancement is zero; at 220 K and 40 bar it is 0.3 %.", "Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 4 to 11", parameters_freeair_dry_air_transport_conductivity, statuses_freeair_dry_air_transport_conductivity, loop_freeair_dry_air_transport_conductivity, 3u, 5u, 0},
    {"freeair_dry_air_transport_viscosity_from_density", "dry_air_transport", "Dynamic viscosity of dry air at a density; at zero density that of the dilute gas.", "as freeair_dry_air_transport_viscosity(), without a search for the density.", "Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 1 to 3", parameters_freeair_dry_air_transport_viscosity_from_density, statuses_freeair_dry_air_transport_viscosity_from_density, loop_freeair_dry_air_transport_viscosity_from_density, 3u, 5u, 0},
    {"freeair_dry_air_transport_conductivity_from_density", "dry_air_transport", "Thermal conductivity of dry air at a density; at zero density that of the dilute gas.", "as freeair_dry_air_transport_conductivity(), without a search for the density.", "Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, equations 4 to 11", parameters_freeair_dry_air_transport_conductivity_from_density, statuses_freeair_dry_air_transport_conductivity_from_density, loop_freeair_dry_air_transport_conductivity_from_density, 3u, 5u, 0},
    {"freeair_saturation_pressure", "saturation", "Saturation pressure of water.", "from 273.16 K IAPWS-IF97 equation 30; below it over ice the sublimation equation of IAPWS R14-08, over supercooled water equation 10 of Murphy and Koop (2005). At 273.16 K the three agree within 1e-7.", "IAPWS R7-97(2012), equation 30; IAPWS R14-08(2011), equation 6; Murphy, Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539, equation 10", parameters_freeair_saturation_pressure, statuses_freeair_saturation_pressure, loop_freeair_saturation_pressure, 3u, 3u, 0},
    {"freeair_saturation_temperature", "saturation", "Saturation temperature of water: dew or frost point of pure vapour at a pressure.", "freeair_saturation_pressure() solved for temperature: from the triple point IAPWS-IF97 equation 31, which is the exact inverse; below it Newton's method in 1/T, at most 30 steps, to rounding.", "IAPWS R7-97(2012), equation 31; IAPWS R14-08(2011), equation 6; Murphy, Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539, equation 10", parameters_freeair_saturation_temperature, statuses_freeair_saturation_temperature, loop_freeair_saturation_temperature, 3u, 4u, 0},
    {"freeair_saturation_pressure_water", "saturation", "Saturation pressure over liquid water by IAPWS-IF97 alone.", "the quadratic form of region 4 solved for pressure.", "IAPWS R7-97(2012), Industrial Formulation 1997 for Water and Steam, equation 30", parameters_freeair_saturation_pressure_water, statuses_freeair_saturation_pressure_water, loop_freeair_saturation_pressure_water, 2u, 3u, 0},
    {"freeair_saturation_temperature_water", "saturation", "Saturation temperature over liquid water by IAPWS-IF97 alone.", "the quadratic form of region 4 solved for temperature.", "IAPWS R7-97(2012), Industrial Formulation 1997 for Water and Steam, equation 31", parameters_freeair_saturation_temperature_water, statuses_freeair_saturation_temperature_water, loop_freeair_saturation_temperature_water, 2u, 3u, 0},
    {"freeair_saturation_pressure_ice", "saturation", "Sublimation pressure of ice.", "ln(p/611.657 Pa) = (1/theta) sum a theta^b, theta = T/273.16 K, three terms.", "IAPWS R14-08(2011), Pressure along the Melting and Sublimation Curves of Ordinary Water Substance, equation 6", parameters_freeair_saturation_pressure_ice, statuses_freeair_saturation_pressure_ice, loop_freeair_saturation_pressure_ice, 2u, 3u, 0},
    {"freeair_saturation_pressure_supercooled", "saturation", "Saturation pressure over supercooled water.", "equation 10 of Murphy and Koop (2005), 123 K to 332 K; below 235 K water does not stay liquid for long.", "Murphy, Koop, Review of the vapour pressures of ice and supercooled water for atmospheric applications, Q. J. R. Meteorol. Soc. 131 (2005) 1539, equation 10", parameters_freeair_saturation_pressure_supercooled, statuses_freeair_saturation_pressure_supercooled, loop_freeair_saturation_pressure_supercooled, 2u, 3u, 0},
    {"freeair_saturation_latent_heat", "saturation", "Latent heat of water at saturation: of vaporisation, or of sublimation over ice.", "enthalpy of the vapour less that of the liquid by IAPWS-95, or less that of ice by IAPWS R10-06, both at the saturation pressure.", "IAPWS R6-95(2018), Thermodynamic Properties of Ordinary Water Substance for General and Scientific Use; IAPWS R10-06(2009), Equation of State 2006 for H2O Ice Ih", parameters_freeair_saturation_latent_heat, statuses_freeair_saturation_latent_heat, loop_freeair_saturation_latent_heat, 3u, 3u, 0},
    {"freeair_enhancement_factor", "enhancement", "Enhancement factor: how much more vapour saturated air holds than pure water gives off.", "f = x p/e, where the fugacity of the vapour by its virial equation equals that of the liquid or ice: the fugacity at saturation, raised by the pressure on it (Poynting), lowered by the air dissolved (IAPWS G7-04). Newton's method, at most 50 steps, to rounding. Within 3e-4 of the equality of chemical potentials in the equation of state to 16 bar, 0.3 % at 50 bar, 0.9 % at 100 bar.", "IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O in Humid Air (2015)", parameters_freeair_enhancement_factor, statuses_freeair_enhancement_factor, loop_freeair_enhancement_factor, 4u, 5u, 0},
    {"freeair_enhancement_fugacity", "enhancement", "Fugacity of the vapour in moist air.", "x p exp(beta p/(R T) + gamma/2 (p/(R T))^2), beta and gamma from the virial coefficients and x.", "IAPWS G9-15, equations 2 to 4", parameters_freeair_enhancement_fugacity, statuses_freeair_enhancement_fugacity, loop_freeair_enhancement_fugacity, 4u, 5u, 0},
    {"freeair_enhancement_virials", "enhancement", "Virial coefficients of dry air, water vapour and their mixture.", "B_aa and C_aaa from Lemmon et al. (2000), B_ww and C_www from IAPWS-95, both at zero density; the cross coefficients by the equations of the guideline.", "IAPWS G9-15, equations 5 to 9, Table 7", parameters_freeair_enhancement_virials, statuses_freeair_enhancement_virials, loop_freeair_enhancement_virials, 2u, 4u, 0},
    {"freeair_moist_air_state", "moist_air", "All properties of moist air at a pressure, a temperature and a humidity ratio.", "Helmholtz energy of dry air (Lemmon et al. 2000) and of water vapour (IAPWS-95), each at its own partial density, and cross virial coefficients to the third; density by Newton's method, to rounding.", "IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice", parameters_freeair_moist_air_state, statuses_freeair_moist_air_state, loop_freeair_moist_air_state, 4u, 6u, 0},
    {"freeair_moist_air_state_from_density", "moist_air", "All properties of moist air at a density, a temperature and a humidity ratio.", "as freeair_moist_air_state(), without a search and without a look at saturation.", "IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice", parameters_freeair_moist_air_state_from_density, statuses_freeair_moist_air_state_from_density, loop_freeair_moist_air_state_from_density, 4u, 6u, 0},
    {"freeair_moist_air_density", "moist_air", "Density of moist air from its relative humidity.", "freeair_moist_air_state() at the mole fraction rh f e/p, e the saturation pressure over liquid water (supercooled in frost), f the enhancement factor.", "IAPWS G8-10 (2010); IAPWS G9-15, Guideline on a Virial Equation for the Fugacity of H2O in Humid Air", parameters_freeair_moist_air_density, statuses_freeair_moist_air_density, loop_freeair_moist_air_density, 4u, 5u, 0},
    {"freeair_moist_air_density_cipm", "moist_air", "Density of moist air near atmospheric pressure, as legal metrology has it.", "CIPM-2007: rho = p Ma/(Z R T) (1 - xv (1 - Mv/Ma)); relative standard uncertainty 22e-6. Not for line pressure.", "Picard, Davis, Glaeser, Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149", parameters_freeair_moist_air_density_cipm, statuses_freeair_moist_air_density_cipm, loop_freeair_moist_air_density_cipm, 5u, 3u, 0},
    {"freeair_moist_air_enthalpy", "moist_air", "Enthalpy of moist air, for each kilogram of dry air in it.", "as freeair_moist_air_state(). Zero for dry air at 0 degC and 101325 Pa, and for liquid water at its triple point.", "IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice", parameters_freeair_moist_air_enthalpy, statuses_freeair_moist_air_enthalpy, loop_freeair_moist_air_enthalpy, 4u, 5u, 0},
    {"freeair_moist_air_volume", "moist_air", "Volume of moist air, for each kilogram of dry air in it.", "as freeair_moist_air_state(): (1 + humidity ratio)/density.", "IAPWS G8-10 (2010), Guideline on an Equation of State for Humid Air in Contact with Seawater and Ice", parameters_freeair_moist_air_volume, statuses_freeair_moist_air_volume, loop_freeair_moist_air_volume, 4u, 5u, 0},
    {"freeair_impedance_from_phase", "impedance", "Impedance from voltage, current and the phase angle between them.", "z = V / I, r = z cos(phase), x = z sin(phase). Positive x is inductive: the current lags.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement, H.2.1", parameters_freeair_impedance_from_phase, statuses_freeair_impedance_from_phase, loop_freeair_impedance_from_phase, 6u, 3u, FREEAIR_CAUTION_LIVE},
    {"freeair_impedance_from_power", "impedance", "Impedance from voltage, current and power.", "z = V / I, r = P / I^2, x = sqrt(z^2 - r^2), power factor = P / (V I). The meters do not tell an inductive from a capacitive reactance: x is not negative.", "definition", parameters_freeair_impedance_from_power, statuses_freeair_impedance_from_power, loop_freeair_impedance_from_power, 7u, 4u, FREEAIR_CAUTION_LIVE},
    {"freeair_supply_uncertainty_from_meter", "supply", "Standard uncertainty of a voltage reading from the meter's data sheet.", "u = (accuracy reading + counts resolution) / sqrt(3), limits of error as a rectangular distribution.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.7", parameters_freeair_supply_uncertainty_from_meter, statuses_freeair_supply_uncertainty_from_meter, loop_freeair_supply_uncertainty_from_meter, 5u, 3u, 0},
    {"freeair_supply_deviation", "supply", "Deviation of a voltage from the motor's nameplate.", "(U - U_n) / U_n; negative when the voltage is low. Measure at the motor, under load: the nameplate is the motor's voltage (230 V), not the system's (240 V).", "definition", parameters_freeair_supply_deviation, statuses_freeair_supply_deviation, loop_freeair_supply_deviation, 3u, 3u, FREEAIR_CAUTION_LIVE},
    {"freeair_supply_voltage_verdict", "supply", "Whether a voltage is within a tolerance of the nameplate, as a guarded decision.", "the limits are U_n (1 - tolerance) and U_n (1 + tolerance); the decision is that of freeair_verdict_decide. NEMA MG 1 asks motors to run, not always at their best, with 0.10 at rated frequency.", "NEMA MG 1, 12.44 (plus or minus 10 percent at rated frequency); JCGM 106:2012, 8.3", parameters_freeair_supply_voltage_verdict, statuses_freeair_supply_voltage_verdict, loop_freeair_supply_voltage_verdict, 7u, 3u, FREEAIR_CAUTION_LIVE},
    {"freeair_supply_combined_deviation", "supply", "Combined deviation of voltage and frequency.", "|dU| + |df|. NEMA MG 1 permits 0.10 in all, of which at most 0.05 of frequency.", "NEMA MG 1, 12.44, from memory", parameters_freeair_supply_combined_deviation, statuses_freeair_supply_combined_deviation, loop_freeair_supply_combined_deviation, 3u, 4u, 0},
    {"freeair_supply_voltage_drop", "supply", "Voltage drop of a run, by the usual approximation.", "k I (R cos + X sin), k = 2 for one phase (out and back), sqrt(3) for three. Neglects the small angle between the voltages at the two ends; freeair_supply_voltage_at_load does not.", "IEEE Std 141-1993, 3.11, approximate formula for voltage drop, from memory", parameters_freeair_supply_voltage_drop, statuses_freeair_supply_voltage_drop, loop_freeair_supply_voltage_drop, 6u, 3u, 0},
    {"freeair_supply_voltage_at_load", "supply", "Voltage at the load end of a run, exact for a known current and power factor.", "U_load = sqrt(U^2 - (k I (X cos - R sin))^2) - k I (R cos + X sin), k as in freeair_supply_voltage_drop.", "IEEE Std 141-1993, 3.11, exact formula for voltage drop, solved for the load end, from memory", parameters_freeair_supply_voltage_at_load, statuses_freeair_supply_voltage_at_load, loop_freeair_supply_voltage_at_load, 8u, 4u, 0},
    {"freeair_supply_starting_voltage", "supply", "Voltage at the motor, and its current, at the moment of starting.", "the locked motor is a constant impedance U_n / (m I_n) at its power factor (m = 1 for one phase, sqrt(3) for three) in series with the run; the source does not sag. The starting torque goes with the square of this voltage.", "algebra: voltage divider of two impedances", parameters_freeair_supply_starting_voltage, statuses_freeair_supply_starting_voltage, loop_freeair_supply_starting_voltage, 9u, 3u, 0},
    {"freeair_unbalance_voltage", "unbalance", "Voltage unbalance of a three-phase supply by the maximum-deviation definition.", "the greatest deviation of a voltage from the mean of the three, over that mean. Not (max - min) / mean, which is up to twice as much.", "NEMA MG 1, 14.36, definition of percent voltage unbalance (clause from memory)", parameters_freeair_unbalance_voltage, statuses_freeair_unbalance_voltage, loop_freeair_unbalance_voltage, 5u, 4u, FREEAIR_CAUTION_LIVE},
    {"freeair_unbalance_current", "unbalance", "Current unbalance of a three-phase motor, by the same definition.", "as freeair_unbalance_voltage. At full load it is some six to ten times the voltage unbalance; where it stays with the motor lead when two lines are rolled the motor is at fault, where it stays with the line the supply is.", "NEMA MG 1, 14.36, the definition applied to currents; rolling the leads is common practice", parameters_freeair_unbalance_current, statuses_freeair_unbalance_current, loop_freeair_unbalance_current, 5u, 4u, FREEAIR_CAUTION_LIVE},
    {"freeair_unbalance_factor", "unbalance", "Voltage unbalance factor: negative-sequence over positive-sequence voltage.", "sqrt((1 - sqrt(3 - 6 b)) / (1 + sqrt(3 - 6 b))), b the sum of the fourth powers of the line voltages over the square of the sum of their squares; rearranged here so that nothing cancels. Line-to-line voltages hold no zero sequence. For small unbalance it is close to the maximum-deviation figure.", "IEC 61000-4-30, supply voltage unbalance from the three line-to-line voltages", parameters_freeair_unbalance_factor, statuses_freeair_unbalance_factor, loop_freeair_unbalance_factor, 4u, 4u, 0},
    {"freeair_unbalance_derating", "unbalance", "Share of its rated power that a motor may give on an unbalanced supply.", "straight lines through 1.00, 0.95, 0.88, 0.82 and 0.75 at 1, 2, 3, 4 and 5 percent, read from the standard's curve to about 0.01 (some read 0.90 at 3 percent); 1 below 1 percent. Above 5 percent the standard gives no factor and advises against running: the result is 0.", "NEMA MG 1, figure 14-1, points from memory", parameters_freeair_unbalance_derating, statuses_freeair_unbalance_derating, loop_freeair_unbalance_derating, 2u, 4u, 0},
    {"freeair_unbalance_temperature_rise", "unbalance", "Temperature rise of a motor at the same load on an unbalanced supply.", "rise (1 + 2 p^2 / 100), p the unbalance in percent. A rule of thumb for a few percent.", "Hubert, Electric Machines, 2nd edition, example 5.14", parameters_freeair_unbalance_temperature_rise, statuses_freeair_unbalance_temperature_rise, loop_freeair_unbalance_temperature_rise, 3u, 4u, 0},
    {"freeair_unbalance_single_phasing_current", "unbalance", "Line current of a three-phase motor after one line has opened, at the same shaft power.", "sqrt(3) I cos / cos', the same voltage and efficiency. A lightly loaded motor keeps running so, hot; it does not start.", "Hubert, Electric Machines, 2nd edition, example 6.4", parameters_freeair_unbalance_single_phasing_current, statuses_freeair_unbalance_single_phasing_current, loop_freeair_unbalance_single_phasing_current, 4u, 3u, FREEAIR_CAUTION_LIVE},
    {"freeair_motor_synchronous_speed", "motor", "Speed of the rotating field.", "n = 2 f / poles.", "Hubert, Electric Machines, 2nd edition, chapter 4, synchronous speed", parameters_freeair_motor_synchronous_speed, statuses_freeair_motor_synchronous_speed, loop_freeair_motor_synchronous_speed, 3u, 3u, 0},
    {"freeair_motor_poles_from_speed", "motor", "Number of poles from the speed on a nameplate.", "the largest even number whose synchronous speed is not below the given speed.", "definition", parameters_freeair_motor_poles_from_speed, statuses_freeair_motor_poles_from_speed, loop_freeair_motor_poles_from_speed, 3u, 5u, 0},
    {"freeair_motor_slip", "motor", "Slip from a measured speed.", "s = (n_s - n) / n_s. Negative above synchronous speed, where the load drives the motor.", "Hubert, Electric Machines, 2nd edition, chapter 4, example 4.2", parameters_freeair_motor_slip, statuses_freeair_motor_slip, loop_freeair_motor_slip, 4u, 3u, FREEAIR_CAUTION_ROTATING},
    {"freeair_motor_speed_from_slip", "motor", "Shaft speed at a slip.", "n = n_s (1 - s).", "Hubert, Electric Machines, 2nd edition, chapter 4, example 4.5", parameters_freeair_motor_speed_from_slip, statuses_freeair_motor_speed_from_slip, loop_freeair_motor_speed_from_slip, 4u, 3u, 0},
    {"freeair_motor_rotor_frequency", "motor", "Frequency of the currents in the rotor.", "f_r = |s| f.", "Hubert, Electric Machines, 2nd edition, chapter 4, example 4.2", parameters_freeair_motor_rotor_frequency, statuses_freeair_motor_rotor_frequency, loop_freeair_motor_rotor_frequency, 3u, 3u, 0},
    {"freeair_motor_slip_at_supply", "motor", "Slip at another voltage, frequency and torque.", "s' = s t f / u^2 with u, f, t the ratios of voltage, frequency and load torque: torque proportional to slip, constant resistance. A piston compressor at a given pressure asks for nearly constant torque, t = 1.", "Hubert, Electric Machines, 2nd edition, chapter 5, example 5.6", parameters_freeair_motor_slip_at_supply, statuses_freeair_motor_slip_at_supply, loop_freeair_motor_slip_at_supply, 5u, 5u, 0},
    {"freeair_motor_torque_from_power", "motor", "Torque of a shaft that carries a power at a speed.", "T = P / (2 pi n).", "definition", parameters_freeair_motor_torque_from_power, statuses_freeair_motor_torque_from_power, loop_freeair_motor_torque_from_power, 3u, 3u, 0},
    {"freeair_motor_power_from_torque", "motor", "Power of a shaft that carries a torque at a speed.", "P = 2 pi n T.", "definition", parameters_freeair_motor_power_from_torque, statuses_freeair_motor_power_from_torque, loop_freeair_motor_power_from_torque, 3u, 3u, 0},
    {"freeair_motor_torque_at_slip", "motor", "Torque at a slip from the breakdown point.", "T = 2 T_b / (s / s_b + s_b / s), stator resistance neglected. Slower than breakdown, cages give more.", "Kloss's formula, as in Fitzgerald, Kingsley, Umans, Electric Machinery, chapter 6, from memory", parameters_freeair_motor_torque_at_slip, statuses_freeair_motor_torque_at_slip, loop_freeair_motor_torque_at_slip, 4u, 4u, 0},
    {"freeair_motor_locked_rotor_torque", "motor", "Locked-rotor (starting) torque at another voltage and frequency.", "T' = T (u / f)^2 with u and f the ratios of voltage and frequency: ten percent less voltage leaves 81 percent of the torque. Valid near rated frequency; breakdown torque follows the same.", "Hubert, Electric Machines, 2nd edition, chapter 5, examples 5.4 and 5.8", parameters_freeair_motor_locked_rotor_torque, statuses_freeair_motor_locked_rotor_torque, loop_freeair_motor_locked_rotor_torque, 4u, 3u, 0},
    {"freeair_motor_locked_rotor_current", "motor", "Locked-rotor (starting) current at another voltage and frequency.", "I' = I u / f with u and f the ratios of voltage and frequency. Valid near rated frequency, no saturation.", "Hubert, Electric Machines, 2nd edition, chapter 5, example 5.7", parameters_freeair_motor_locked_rotor_current, statuses_freeair_motor_locked_rotor_current, loop_freeair_motor_locked_rotor_current, 4u, 3u, 0},
    {"freeair_motor_shaft_power", "motor", "Shaft power from electrical measurements.", "P_in = m U I cos, P = efficiency P_in, m = 1 for one phase and sqrt(3) for three. With a clamp meter alone the power factor is a guess: nameplate values hold near full load only.", "definition", parameters_freeair_motor_shaft_power, statuses_freeair_motor_shaft_power, loop_freeair_motor_shaft_power, 7u, 3u, FREEAIR_CAUTION_LIVE},
    {"freeair_motor_line_current", "motor", "Line current of a motor that gives a shaft power.", "I = P / (m U cos efficiency), m = 1 for one phase and sqrt(3) for three.", "definition; Hubert, Electric Machines, 2nd edition, example 6.4", parameters_freeair_motor_line_current, statuses_freeair_motor_line_current, loop_freeair_motor_line_current, 6u, 3u, 0},
    {"freeair_nameplate_efficiency", "nameplate", "Nominal efficiency limit of an efficiency class at 50 Hz and full load.", "A x^3 + B x^2 + C x + D, x = log10 of the rated power in kW, in percent, rounded to 0.1; it gives the tabulated values back at the preferred powers. A motor in hand may be better; its losses may be 15 percent above.", "IEC 60034-30-1:2014, interpolation at 50 Hz; Regulation (EU) 2019/1781, annex I; coefficients from memory", parameters_freeair_nameplate_efficiency, statuses_freeair_nameplate_efficiency, loop_freeair_nameplate_efficiency, 4u, 4u, 0},
    {"freeair_nameplate_code_band", "nameplate", "Band of locked-rotor apparent power that a code letter stands for.", "table of kVA per horsepower, turned into VA per W with 1 hp = 745.69987 W. The band includes its lower end.", "NEMA MG 1, 10.37.2; NFPA 70 (NEC), table 430.7(B); all but G from memory", parameters_freeair_nameplate_code_band, statuses_freeair_nameplate_code_band, loop_freeair_nameplate_code_band, 3u, 3u, 0},
    {"freeair_nameplate_code_from_current", "nameplate", "Code letter of a measured locked-rotor current.", "the letter whose band holds m U I / P, m = 1 for one phase and sqrt(3) for three.", "NEMA MG 1, 10.37.2; NFPA 70 (NEC), table 430.7(B); all but G from memory", parameters_freeair_nameplate_code_from_current, statuses_freeair_nameplate_code_from_current, loop_freeair_nameplate_code_from_current, 5u, 3u, 0},
    {"freeair_nameplate_locked_rotor_current", "nameplate", "Starting current to expect from a code letter.", "I = band P / (m U), m = 1 for one phase and sqrt(3) for three.", "Hubert, Electric Machines, 2nd edition, example 5.13", parameters_freeair_nameplate_locked_rotor_current, statuses_freeair_nameplate_locked_rotor_current, loop_freeair_nameplate_locked_rotor_current, 6u, 4u, 0},
    {"freeair_nameplate_full_load_current", "nameplate", "Full-load current that the tables of the National Electrical Code give a motor.", "table look-up. The power must be within 1 percent of a listed horsepower (1/6 to 10 hp single phase, 1/2 to 500 hp three phase), the voltage in the range of a column: 110-120, 195-204 (200), 204-216 (208), 220-240, 440-480, 550-600, 2200-2400 V. No interpolation. For sizing wires and switches, where that code applies.", "NFPA 70 (NEC), 2008, tables 430.248 and 430.250, induction type", parameters_freeair_nameplate_full_load_current, statuses_freeair_nameplate_full_load_current, loop_freeair_nameplate_full_load_current, 4u, 4u, 0},
    {"freeair_nameplate_load_from_current", "nameplate", "Load of a motor from its current.", "load = (I / I_n) (U / U_n). Good above half load; below, magnetising current makes it read far too high.", "US Department of Energy, Determining Electric Motor Load and Efficiency, DOE/GO-10097-517, load from line current", parameters_freeair_nameplate_load_from_current, statuses_freeair_nameplate_load_from_current, loop_freeair_nameplate_load_from_current, 5u, 4u, FREEAIR_CAUTION_LIVE},
    {"freeair_nameplate_load_from_speed", "nameplate", "Load of a motor from its speed.", "load = (n_s - n) / (n_s - n_n) (U / U_n)^2: slip is proportional to torque and to the inverse square of the voltage. Nameplate speeds are rounded and may be off by a fifth of the rated slip; the result is no better.", "US Department of Energy, Determining Electric Motor Load and Efficiency, DOE/GO-10097-517, slip method with voltage compensation", parameters_freeair_nameplate_load_from_speed, statuses_freeair_nameplate_load_from_speed, loop_freeair_nameplate_load_from_speed, 5u, 6u, FREEAIR_CAUTION_ROTATING},
    {"freeair_capacitor_current", "capacitor", "Current that a sound capacitor draws.", "I = 2 pi f C U, losses neglected.", "definition", parameters_freeair_capacitor_current, statuses_freeair_capacitor_current, loop_freeair_capacitor_current, 4u, 3u, 0},
    {"freeair_capacitor_from_current", "capacitor", "Capacitance from current and voltage on the running motor, with uncertainty.", "C = I / (2 pi f U), losses neglected; u(C) = C sqrt((u(I)/I)^2 + (u(U)/U)^2). Clamp the wire of the capacitor (the start winding), not the line, and measure the voltage across the capacitor itself. Distorted currents read high. At 60 Hz this is the trade's C in uF = 2652 I / U.", "definition; uncertainty by JCGM 100:2008, 5.1.6", parameters_freeair_capacitor_from_current, statuses_freeair_capacitor_from_current, loop_freeair_capacitor_from_current, 7u, 3u, FREEAIR_CAUTION_LIVE | FREEAIR_CAUTION_CAPACITOR},
    {"freeair_capacitor_uncertainty_from_meter", "capacitor", "Standard uncertainty of a capacitance reading from the meter's data sheet.", "u = (accuracy reading + counts resolution) / sqrt(3), limits of error as a rectangular distribution.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.7", parameters_freeair_capacitor_uncertainty_from_meter, statuses_freeair_capacitor_uncertainty_from_meter, loop_freeair_capacitor_uncertainty_from_meter, 5u, 3u, 0},
    {"freeair_capacitor_limits", "capacitor", "Limits of a sound capacitor from its printed value and tolerance class.", "rated value times one less and one plus the tolerance. Where a range is printed (43-53 uF) it is the limits.", "IEC 60252-1:2010, preferred tolerances 5, 10, 15 percent; EIA-463, -0 +20 percent; 6 and 23 percent: common practice; all from memory", parameters_freeair_capacitor_limits, statuses_freeair_capacitor_limits, loop_freeair_capacitor_limits, 4u, 4u, 0},
    {"freeair_capacitor_verdict", "capacitor", "Whether a capacitor is within its limits, as a guarded decision.", "the decision is that of freeair_verdict_decide on the measured value and its standard uncertainty. FAILS with probability_low near 1 is a weak capacitor.", "JCGM 106:2012, 8.3", parameters_freeair_capacitor_verdict, statuses_freeair_capacitor_verdict, loop_freeair_capacitor_verdict, 8u, 3u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_CAPACITOR},
    {"freeair_capacitor_discharge_time", "capacitor", "Time for a capacitor to discharge through a resistor.", "t = R C ln(U_0 / U). Dielectric absorption brings some voltage back later: prove dead, keep shorted.", "definition", parameters_freeair_capacitor_discharge_time, statuses_freeair_capacitor_discharge_time, loop_freeair_capacitor_discharge_time, 5u, 4u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_CAPACITOR},
    {"freeair_capacitor_residual_voltage", "capacitor", "Voltage left on a capacitor after a time.", "U = U_0 exp(-t / (R C)).", "definition", parameters_freeair_capacitor_residual_voltage, statuses_freeair_capacitor_residual_voltage, loop_freeair_capacitor_residual_voltage, 5u, 3u, FREEAIR_CAUTION_CAPACITOR},
    {"freeair_capacitor_bleeder", "capacitor", "Bleeder resistor that discharges a capacitor in a time, and what it burns.", "R = t / (C ln(U_0 / U)); power U_0^2 / (2 R) while the capacitor works on alternating voltage of peak U_0. Rules ask 50 V after 1 min (NEC 460.6), or 75 V after 3 min (IEC 60831-1).", "definition; limits from NFPA 70 (NEC), 460.6(A), and IEC 60831-1", parameters_freeair_capacitor_bleeder, statuses_freeair_capacitor_bleeder, loop_freeair_capacitor_bleeder, 6u, 4u, FREEAIR_CAUTION_CAPACITOR},
    {"freeair_capacitor_energy", "capacitor", "Energy stored in a capacitor.", "E = C U^2 / 2, U the voltage at that instant.", "definition", parameters_freeair_capacitor_energy, statuses_freeair_capacitor_energy, loop_freeair_capacitor_energy, 3u, 3u, FREEAIR_CAUTION_CAPACITOR},
    {"freeair_capacitor_series", "capacitor", "Two capacitors in series.", "C = C1 C2 / (C1 + C2).", "definition", parameters_freeair_capacitor_series, statuses_freeair_capacitor_series, loop_freeair_capacitor_series, 3u, 3u, 0},
    {"freeair_capacitor_parallel", "capacitor", "Two capacitors in parallel.", "C = C1 + C2. Each must carry the full voltage.", "definition", parameters_freeair_capacitor_parallel, statuses_freeair_capacitor_parallel, loop_freeair_capacitor_parallel, 3u, 3u, 0},
    {"freeair_capacitor_motor_quadrature", "capacitor_motor", "Capacitor that sets the locked-rotor currents of the windings at right angles.", "X_C = X_a + R_a R_m / X_m, C = 1 / (2 pi f X_C), with the impedances of the windings at standstill.", "Hubert, Electric Machines, 2nd edition, example 6.2 (its reactance; its capacitance is misprinted)", parameters_freeair_capacitor_motor_quadrature, statuses_freeair_capacitor_motor_quadrature, loop_freeair_capacitor_motor_quadrature, 7u, 3u, 0},
    {"freeair_capacitor_motor_starting_torque_ratio", "capacitor_motor", "Starting torque with one capacitor over that with another.", "at standstill torque is proportional to the product of the two winding currents and the sine of the angle between them, hence to (X_m R_a - R_m X) / (R_a^2 + X^2) with X = X_a - X_C. Exact at standstill for given impedances; saturation makes a real motor lose a little less.", "Hubert, Electric Machines, 2nd edition, examples 6.1 and 6.2, torque of a split-phase motor", parameters_freeair_capacitor_motor_starting_torque_ratio, statuses_freeair_capacitor_motor_starting_torque_ratio, loop_freeair_capacitor_motor_starting_torque_ratio, 8u, 4u, 0},
    {"freeair_capacitor_motor_run", "capacitor_motor", "Torque, currents and power of a capacitor motor at a slip.", "two windings at right angles by the double revolving field. With Z_f and Z_b half the forward and backward rotor impedances in parallel with half the magnetising reactance and a the turns ratio, V = I_m (Z_m + Z_f + Z_b) - j a I_a (Z_f - Z_b) and V = I_a (Z_a + a^2 (Z_f + Z_b)) + V_C + j a I_m (Z_f - Z_b); torque is (R_f |I_m - j a I_a|^2 - R_b |I_m + j a I_a|^2) / omega_s. Linear iron, no iron loss, fundamental only.", "Fitzgerald, Kingsley, Umans, Electric Machinery, 6th edition, sections 9.3 and 9.4, from memory", parameters_freeair_capacitor_motor_run, statuses_freeair_capacitor_motor_run, loop_freeair_capacitor_motor_run, 7u, 4u, 0},
    {"freeair_capacitor_motor_slip", "capacitor_motor", "Slip at which a capacitor motor carries a torque.", "the smallest slip at which freeair_capacitor_motor_run gives the torque, searched upwards in steps of 0.002 and then by bisection to the last bit.", "algebra: inverse of freeair_capacitor_motor_run", parameters_freeair_capacitor_motor_slip, statuses_freeair_capacitor_motor_slip, loop_freeair_capacitor_motor_slip, 7u, 5u, 0},
    {"freeair_pulley_driven_speed", "pulley", "Speed of the driven pulley.", "n2 = n1 d1 / d2 (1 - s), s the slip of the belt. For a train of drives, apply once for each.", "Khurmi and Gupta, Theory of Machines, example 11.1", parameters_freeair_pulley_driven_speed, statuses_freeair_pulley_driven_speed, loop_freeair_pulley_driven_speed, 5u, 3u, 0},
    {"freeair_pulley_driver_diameter", "pulley", "Diameter of the driving pulley for a wanted speed of the driven one.", "d1 = d2 n2 / (n1 (1 - s)). Never run a compressor above its greatest speed, nor its motor above its current.", "Khurmi and Gupta, Theory of Machines, example 11.1, solved for the driver", parameters_freeair_pulley_driver_diameter, statuses_freeair_pulley_driver_diameter, loop_freeair_pulley_driver_diameter, 5u, 3u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING},
    {"freeair_pulley_belt_speed", "pulley", "Speed of the belt.", "v = pi d n.", "definition", parameters_freeair_pulley_belt_speed, statuses_freeair_pulley_belt_speed, loop_freeair_pulley_belt_speed, 3u, 3u, 0},
    {"freeair_pulley_best_belt_speed", "pulley", "Speed at which a belt of a permitted tension carries most.", "v = sqrt(T / (3 m)), where centrifugal tension takes a third.", "Khurmi and Gupta, Theory of Machines, chapter 11 and example 11.10", parameters_freeair_pulley_best_belt_speed, statuses_freeair_pulley_best_belt_speed, loop_freeair_pulley_best_belt_speed, 3u, 3u, 0},
    {"freeair_pulley_open_length", "pulley", "Length of an open belt.", "L = 2 sqrt(C^2 - e^2) + pi (d1 + d2) / 2 + 2 e asin(e / C), e = |d1 - d2| / 2. Exact; the usual 2 C + pi (d1 + d2) / 2 + (d1 - d2)^2 / (4 C) is its first term in e / C and a little less.", "Shigley, Mechanical Engineering Design, flat-belt geometry of an open belt; geometry", parameters_freeair_pulley_open_length, statuses_freeair_pulley_open_length, loop_freeair_pulley_open_length, 4u, 4u, 0},
    {"freeair_pulley_crossed_length", "pulley", "Length of a crossed belt.", "L = 2 sqrt(C^2 - e^2) + (d1 + d2) (pi / 2 + asin(e / C)), e = (d1 + d2) / 2. Exact.", "Shigley, Mechanical Engineering Design, flat-belt geometry of a crossed belt; geometry", parameters_freeair_pulley_crossed_length, statuses_freeair_pulley_crossed_length, loop_freeair_pulley_crossed_length, 4u, 4u, 0},
    {"freeair_pulley_centre_from_open_length", "pulley", "Distance between the shafts for an open belt of a length.", "the exact inverse of freeair_pulley_open_length by Newton's method from above, which always arrives. The trade's (B + sqrt(B^2 - 32 (D - d)^2)) / 16 with B = 4 L - 6.28 (D + d) is its approximation.", "geometry; approximation in Wentzell, Machine Design, example 14.2", parameters_freeair_pulley_centre_from_open_length, statuses_freeair_pulley_centre_from_open_length, loop_freeair_pulley_centre_from_open_length, 4u, 4u, 0},
    {"freeair_pulley_centre_from_crossed_length", "pulley", "Distance between the shafts for a crossed belt of a length.", "the exact inverse of freeair_pulley_crossed_length by Newton's method from above, which always arrives; where the pulleys nearly touch the length says little about the distance.", "geometry", parameters_freeair_pulley_centre_from_crossed_length, statuses_freeair_pulley_centre_from_crossed_length, loop_freeair_pulley_centre_from_crossed_length, 4u, 4u, 0},
    {"freeair_pulley_open_wrap", "pulley", "Wrap of an open belt on the smaller and the larger pulley.", "pi - 2 asin(e / C) and pi + 2 asin(e / C), e = |d1 - d2| / 2. The smaller one slips first.", "Wentzell, Machine Design, example 14.2; geometry", parameters_freeair_pulley_open_wrap, statuses_freeair_pulley_open_wrap, loop_freeair_pulley_open_wrap, 5u, 4u, 0},
    {"freeair_pulley_crossed_wrap", "pulley", "Wrap of a crossed belt, the same on both pulleys.", "pi + 2 asin(e / C), e = (d1 + d2) / 2.", "Khurmi and Gupta, Theory of Machines, example 11.6; geometry", parameters_freeair_pulley_crossed_wrap, statuses_freeair_pulley_crossed_wrap, loop_freeair_pulley_crossed_wrap, 4u, 4u, 0},
    {"freeair_pulley_span", "pulley", "Length of the free span of an open belt, from pulley to pulley.", "sqrt(C^2 - e^2), e = |d1 - d2| / 2.", "geometry", parameters_freeair_pulley_span, statuses_freeair_pulley_span, loop_freeair_pulley_span, 4u, 4u, 0},
    {"freeair_belt_slip", "belt", "Slip of a belt from two measured speeds, with uncertainty.", "s = 1 - (n2 / n1) (d2 / d1); u(s) = (1 - s) times the root of the sum of the squared relative uncertainties. A sound V-belt shows some 0.5 to 2 percent; take the ratio from pitch diameters, or from the same drive when sound.", "Khurmi and Gupta, Theory of Machines, chapter 11, slip of belt; uncertainty by JCGM 100:2008, 5.1.2", parameters_freeair_belt_slip, statuses_freeair_belt_slip, loop_freeair_belt_slip, 8u, 4u, FREEAIR_CAUTION_ROTATING},
    {"freeair_belt_tension_ratio", "belt", "Greatest ratio of tight to slack tension before a belt slips.", "R = exp(mu wrap / sin(groove / 2)), net of centrifugal tension.", "Khurmi and Gupta, Theory of Machines, chapter 11, ratio of driving tensions", parameters_freeair_belt_tension_ratio, statuses_freeair_belt_tension_ratio, loop_freeair_belt_tension_ratio, 4u, 3u, 0},
    {"freeair_belt_tensions_from_power", "belt", "Tensions that a belt needs to carry a power without slipping.", "T1 - T2 = P / v, (T1 - T_c) = R (T2 - T_c), T_c = m v^2; static tension is the mean of T1 and T2. These are the least: multiply the power by a service factor for the pulses of a piston machine and for start.", "Khurmi and Gupta, Theory of Machines, chapter 11", parameters_freeair_belt_tensions_from_power, statuses_freeair_belt_tensions_from_power, loop_freeair_belt_tensions_from_power, 8u, 3u, 0},
    {"freeair_belt_power_from_tight_tension", "belt", "Power that a belt carries on the point of slipping at a tight-side tension.", "P = (T1 - m v^2) (1 - 1 / R) v.", "Khurmi and Gupta, Theory of Machines, chapter 11 and example 11.4", parameters_freeair_belt_power_from_tight_tension, statuses_freeair_belt_power_from_tight_tension, loop_freeair_belt_power_from_tight_tension, 5u, 4u, 0},
    {"freeair_belt_power_from_static_tension", "belt", "Power that a belt carries on the point of slipping at a static tension.", "P = 2 (T0 - m v^2) (R - 1) / (R + 1) v.", "Khurmi and Gupta, Theory of Machines, chapter 11 and examples 11.12 and 11.13", parameters_freeair_belt_power_from_static_tension, statuses_freeair_belt_power_from_static_tension, loop_freeair_belt_power_from_static_tension, 5u, 4u, 0},
    {"freeair_belt_deflection_distance", "belt", "Deflection for the force test, a sixty-fourth of the span.", "span / 64: 1/64 inch for each inch, 16 mm for each metre.", "RMA/ARPM IP-20, classical V-belts, tensioning; common practice", parameters_freeair_belt_deflection_distance, statuses_freeair_belt_deflection_distance, loop_freeair_belt_deflection_distance, 2u, 3u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING},
    {"freeair_belt_deflection_force", "belt", "Force at mid span that deflects a belt of a static tension, by statics.", "F = 4 q T / sqrt(L^2 + 4 q^2), where T = T0 + S (sqrt(L^2 + 4 q^2) - L) / L_b: a string, its stretch spread over the whole belt, S its force for each unit of strain. A cold or stiff belt asks for more.", "statics of a string under a point load", parameters_freeair_belt_deflection_force, statuses_freeair_belt_deflection_force, loop_freeair_belt_deflection_force, 6u, 3u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING},
    {"freeair_belt_tension_from_deflection", "belt", "Static tension of a belt from the force that deflects it at mid span.", "the inverse of freeair_belt_deflection_force, in closed form.", "statics of a string under a point load", parameters_freeair_belt_tension_from_deflection, statuses_freeair_belt_tension_from_deflection, loop_freeair_belt_tension_from_deflection, 6u, 4u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING},
    {"freeair_belt_deflection_force_by_rule", "belt", "Force that deflects a belt by a sixty-fourth of its span, by the trade's formula.", "F = (T0 + Y L / L_b) / 16, Y a constant of the belt section (its stiffness over 2048).", "RMA/ARPM IP-20, deflection force, from memory", parameters_freeair_belt_deflection_force_by_rule, statuses_freeair_belt_deflection_force_by_rule, loop_freeair_belt_deflection_force_by_rule, 5u, 3u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING},
    {"freeair_belt_span_frequency", "belt", "Frequency of a span that is plucked.", "f = sqrt(T0 / m) / (2 L), the first mode of a string at rest.", "vibrating string, as in belt makers' notes, T = 4 m L^2 f^2", parameters_freeair_belt_span_frequency, statuses_freeair_belt_span_frequency, loop_freeair_belt_span_frequency, 4u, 3u, 0},
    {"freeair_belt_tension_from_frequency", "belt", "Static tension of a span from its frequency.", "T0 = 4 m L^2 f^2. Bending stiffness makes a short thick belt read high.", "vibrating string, as in belt makers' notes, T = 4 m L^2 f^2", parameters_freeair_belt_tension_from_frequency, statuses_freeair_belt_tension_from_frequency, loop_freeair_belt_tension_from_frequency, 4u, 3u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING},
    {"freeair_flow_critical_pressure_ratio", "flow", "Critical pressure ratio, below which the flow through a nozzle is choked.", "r = (2 / (k + 1))^(k / (k - 1)), outlet over inlet pressure; 0.528 for air.", "Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 11, compressible flow", parameters_freeair_flow_critical_pressure_ratio, statuses_freeair_flow_critical_pressure_ratio, loop_freeair_flow_critical_pressure_ratio, 2u, 3u, 0},
    {"freeair_flow_critical_coefficient", "flow", "Critical flow coefficient C*, the dimensionless choked mass flux.", "C* = sqrt(k) (2 / (k + 1))^((k + 1) / (2 (k - 1))), so that the choked mass flow is C* A p1 / sqrt(R T1). Ideal gas; 0.6847 for air.", "ISO 9300:2005, critical flow function of a perfect gas", parameters_freeair_flow_critical_coefficient, statuses_freeair_flow_critical_coefficient, loop_freeair_flow_critical_coefficient, 2u, 3u, 0},
    {"freeair_flow_mass_flow", "flow", "Mass flow through an effective area between two pressures.", "with r = p2 / p1, m = A p1 / sqrt(R T1) sqrt(2 k / (k - 1)) r^(1/k) sqrt(1 - r^((k-1)/k)) down to the critical pressure ratio, constant below it. The pressure difference is not formed from r, so no digit is lost as p2 approaches p1. Isentropic up to the throat.", "Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 11, isentropic flow of an ideal gas", parameters_freeair_flow_mass_flow, statuses_freeair_flow_mass_flow, loop_freeair_flow_mass_flow, 7u, 3u, 0},
    {"freeair_flow_area_from_mass_flow", "flow", "Effective area that passes a mass flow between two pressures.", "inverse of freeair_flow_mass_flow, which is proportional to the area.", "algebra", parameters_freeair_flow_area_from_mass_flow, statuses_freeair_flow_area_from_mass_flow, loop_freeair_flow_area_from_mass_flow, 7u, 3u, 0},
    {"freeair_flow_outlet_pressure_from_mass_flow", "flow", "Outlet pressure at which an effective area passes a mass flow.", "inverse of freeair_flow_mass_flow on its subsonic branch by a bracketed Newton iteration, at most 100 steps. At exactly the choked mass flow any lower pressure does as well and the critical pressure is returned; close to it the answer is as uncertain as the square root of the flow's uncertainty.", "algebra", parameters_freeair_flow_outlet_pressure_from_mass_flow, statuses_freeair_flow_outlet_pressure_from_mass_flow, loop_freeair_flow_outlet_pressure_from_mass_flow, 7u, 4u, 0},
    {"freeair_flow_inlet_pressure_from_mass_flow", "flow", "Inlet pressure needed to drive a mass flow through an effective area.", "inverse of freeair_flow_mass_flow for p1, in closed form: choked, p1 = m sqrt(R T1) / (C* A); else with G = m sqrt(R T1) / (A p2) and u = sqrt(1 - r^((k-1)/k)), G = sqrt(2 k / (k - 1)) u / (1 - u^2), a quadratic in u.", "algebra", parameters_freeair_flow_inlet_pressure_from_mass_flow, statuses_freeair_flow_inlet_pressure_from_mass_flow, loop_freeair_flow_inlet_pressure_from_mass_flow, 7u, 3u, 0},
    {"freeair_flow_isentropic_ratios", "flow", "Ratios of the isentropic flow table at a Mach number.", "T/T0 = 1 / (1 + (k - 1)/2 M^2), p/p0 = (T/T0)^(k/(k-1)), rho/rho0 = (T/T0)^(1/(k-1)), A/A* = 1/M (2/(k+1) T0/T)^((k+1)/(2(k-1))).", "NACA Report 1135, Equations, Tables and Charts for Compressible Flow, equations 43 to 45 and 80", parameters_freeair_flow_isentropic_ratios, statuses_freeair_flow_isentropic_ratios, loop_freeair_flow_isentropic_ratios, 6u, 3u, 0},
    {"freeair_flow_mach_from_pressure_ratio", "flow", "Mach number at a ratio of static to stagnation pressure.", "M = sqrt(2 / (k - 1) ((p/p0)^(-(k-1)/k) - 1)).", "NACA Report 1135, equation 44 solved for the Mach number", parameters_freeair_flow_mach_from_pressure_ratio, statuses_freeair_flow_mach_from_pressure_ratio, loop_freeair_flow_mach_from_pressure_ratio, 3u, 3u, 0},
    {"freeair_flow_mach_from_area_ratio", "flow", "Mach number at a ratio of area to critical area.", "Newton iteration on the logarithm of A/A* as a convex function of the logarithm of M, from the far side, so that every step approaches the root; at most 100 steps.", "NACA Report 1135, equation 80 solved for the Mach number", parameters_freeair_flow_mach_from_area_ratio, statuses_freeair_flow_mach_from_area_ratio, loop_freeair_flow_mach_from_area_ratio, 4u, 3u, 0},
    {"freeair_nozzle_discharge_coefficient", "nozzle", "Discharge coefficient of an opening: lowest, usual and highest.", "table of coefficients for air, 0.97 usual for a well-rounded and 0.65 for a sharp-edged opening; elsewhere the middle of the spread. For a leak of unknown shape the spread is the answer.", "Encyclopaedia Britannica, 11th edition, volume 14, Hydraulics, coefficients for air by Weisbach; Trade table \"Discharge of Air Through an Orifice\", footnote, for 0.97 and 0.65", parameters_freeair_nozzle_discharge_coefficient, statuses_freeair_nozzle_discharge_coefficient, loop_freeair_nozzle_discharge_coefficient, 4u, 3u, 0},
    {"freeair_nozzle_sharp_edged_coefficient", "nozzle", "Discharge coefficient of a sharp-edged orifice at a pressure ratio.", "fifth-degree polynomial in r = p2 / p1 fitted to measurements on air, 0.60 as r approaches 1 and 0.84 into vacuum: the jet contracts less the more it expands, so that a sharp edge never chokes fully.", "Andersen, The Analysis and Design of Pneumatic Systems, 1967, fit to the measurements of Perry, 1949 (coefficients from memory)", parameters_freeair_nozzle_sharp_edged_coefficient, statuses_freeair_nozzle_sharp_edged_coefficient, loop_freeair_nozzle_sharp_edged_coefficient, 2u, 3u, 0},
    {"freeair_nozzle_trade_flow", "nozzle", "Free air through an orifice by the trade's approximate formula for choked flow.", "w = 0.5303 C a p1 / sqrt(T1) in lb/s, in2, psia and degrees Rankine, turned into free air of 0.07494 lb/ft3 (dry, 14.7 psia, 70 F). It stands 0.3 % below the isentropic formula. Only for p1 of at least twice p_atm.", "Moss, approximate formula beneath the trade table \"Discharge of Air Through an Orifice\"", parameters_freeair_nozzle_trade_flow, statuses_freeair_nozzle_trade_flow, loop_freeair_nozzle_trade_flow, 6u, 3u, FREEAIR_CAUTION_BLOWING},
    {"freeair_nozzle_meter_coefficient", "nozzle", "Discharge coefficient of a critical flow nozzle.", "C = a - b Re^-n with Re on the throat diameter and the viscosity of the stagnation state. Fitted for Re 2.1e4 to 1.4e6 (toroidal, accurate), 2.1e4 to 3.2e7 (toroidal, normal), 3.5e5 to 1.1e7 (cylindrical).", "ISO 9300:2005, discharge coefficients (constants from memory; take the certificate of the nozzle before them)", parameters_freeair_nozzle_meter_coefficient, statuses_freeair_nozzle_meter_coefficient, loop_freeair_nozzle_meter_coefficient, 3u, 5u, 0},
    {"freeair_nozzle_meter_mass_flow", "nozzle", "Mass flow measured by a critical flow nozzle.", "m = C(Re) pi/4 d^2 C* p0 / sqrt(R T0) with Re = 4 m / (pi d mu), solved by fixed-point iteration, at most 50 steps, to 1e-14. The nozzle must be choked; the caller sees to that.", "ISO 9300:2005, mass flow of a critical flow Venturi nozzle (constants from memory)", parameters_freeair_nozzle_meter_mass_flow, statuses_freeair_nozzle_meter_mass_flow, loop_freeair_nozzle_meter_mass_flow, 10u, 7u, 0},
    {"freeair_conductance_flow", "conductance", "Mass and volume flow through a component of known sonic conductance.", "m = C rho0 p1 sqrt(T0 / T1) (1 - ((p2/p1 - b) / (1 - b))^2)^index, choked below b; rho0 = 1.185 kg/m3, T0 = 293.15 K. An ellipse fitted to measurements, good to a few per cent; static pressures in the pipe.", "ISO 6358-1:2013, flow-rate characteristics of components using compressible fluids", parameters_freeair_conductance_flow, statuses_freeair_conductance_flow, loop_freeair_conductance_flow, 8u, 3u, 0},
    {"freeair_conductance_from_flow", "conductance", "Sonic conductance of a component from one measured point.", "inverse of freeair_conductance_flow for C; choked points do not depend on b.", "ISO 6358-1:2013, solved for the conductance", parameters_freeair_conductance_from_flow, statuses_freeair_conductance_from_flow, loop_freeair_conductance_from_flow, 7u, 3u, 0},
    {"freeair_conductance_outlet_pressure", "conductance", "Outlet pressure of a component that passes a mass flow.", "inverse of freeair_conductance_flow, in closed form; b p1 at exactly the choked flow.", "ISO 6358-1:2013, solved for the outlet pressure", parameters_freeair_conductance_outlet_pressure, statuses_freeair_conductance_outlet_pressure, loop_freeair_conductance_outlet_pressure, 7u, 4u, 0},
    {"freeair_conductance_series", "conductance", "Conductance and critical ratio of components in series, first to last.", "pair by pair from the inlet, each pair then taken as one ellipse of index 0.5. The first chokes, C = C1, if C1 <= b1 C2; else the second does, and C = C2 y with y the root of C2 y = C1 sqrt(1 - ((y - b1) / (1 - b1))^2). b from the limit of small flow, (1 - b)/C^2 = sum (1 - bi)/Ci^2. Exact in those two limits; temperature constant, velocity lost between components.", "ISO 6358-3:2014, systems of components; derived anew in the guide", parameters_freeair_conductance_series, statuses_freeair_conductance_series, loop_freeair_conductance_series, 5u, 3u, 0},
    {"freeair_conductance_parallel", "conductance", "Conductance and critical ratio of components in parallel.", "C = sum Ci, and C / sqrt(1 - b) = sum Ci / sqrt(1 - bi), exact where every component is choked and in the limit of small flow.", "ISO 6358-3:2014, systems of components; derived anew in the guide", parameters_freeair_conductance_parallel, statuses_freeair_conductance_parallel, loop_freeair_conductance_parallel, 5u, 3u, 0},
    {"freeair_conductance_from_area", "conductance", "Sonic conductance of an effective area.", "equal choked mass flow, C = C* A / (rho0 sqrt(R T0)); 5.02 mm2 of air a dm3/(s bar).", "algebra", parameters_freeair_conductance_from_area, statuses_freeair_conductance_from_area, loop_freeair_conductance_from_area, 4u, 3u, 0},
    {"freeair_conductance_area", "conductance", "Effective area of a sonic conductance.", "equal choked mass flow, A = C rho0 sqrt(R T0) / C*.", "algebra", parameters_freeair_conductance_area, statuses_freeair_conductance_area, loop_freeair_conductance_area, 4u, 3u, 0},
    {"freeair_coefficient_kv_from_cv", "coefficient", "Flow coefficient Kv (m3/h of water at 1 bar) of a flow coefficient Cv (US gal/min at 1 psi).", "Kv = 0.86497... Cv, from the definitions of gallon, inch and pound-force.", "IEC 60534-1, definitions of the flow coefficients", parameters_freeair_coefficient_kv_from_cv, statuses_freeair_coefficient_kv_from_cv, loop_freeair_coefficient_kv_from_cv, 2u, 3u, 0},
    {"freeair_coefficient_cv_from_kv", "coefficient", "Flow coefficient Cv of a flow coefficient Kv.", "inverse of freeair_coefficient_kv_from_cv.", "IEC 60534-1, definitions of the flow coefficients", parameters_freeair_coefficient_cv_from_kv, statuses_freeair_coefficient_cv_from_kv, loop_freeair_coefficient_cv_from_kv, 2u, 3u, 0},
    {"freeair_coefficient_conductance_from_kv", "coefficient", "Sonic conductance and critical ratio of a valve of known Kv and xT.", "m = A Y sqrt(x p1 rho1), A = Kv sqrt(1000 / 1e5) / 3600 in m2, x = 1 - p2/p1, Y = 1 - x / (3 xT), choked at x = xT: equal choked flow gives C = (2/3) A sqrt(xT / (R T0)) / rho0, equal flow at small drop 1 - b = (8/9) xT. Air, R = 287.05287 J/(kg K), k = 1.4.", "IEC 60534-2-1, sizing equations for compressible fluids, matched to ISO 6358-1:2013 in the guide", parameters_freeair_coefficient_conductance_from_kv, statuses_freeair_coefficient_conductance_from_kv, loop_freeair_coefficient_conductance_from_kv, 4u, 3u, 0},
    {"freeair_coefficient_kv_from_conductance", "coefficient", "Flow coefficient Kv and factor xT of a component of known C and b.", "inverse of freeair_coefficient_conductance_from_kv.", "algebra", parameters_freeair_coefficient_kv_from_conductance, statuses_freeair_coefficient_kv_from_conductance, loop_freeair_coefficient_kv_from_conductance, 4u, 3u, 0},
    {"freeair_coefficient_air_flow_from_cv", "coefficient", "Air flow through a valve of known Cv by the fluid power formula.", "Q = 22.7 Cv sqrt((p1 - p2) p2 / T1) in standard ft3/min (14.7 psia, 68 F), psia and degrees Rankine; choked at p2 = 0.53 p1 and constant below.", "Esposito, Fluid Power with Applications, chapter 13, sizing of valves", parameters_freeair_coefficient_air_flow_from_cv, statuses_freeair_coefficient_air_flow_from_cv, loop_freeair_coefficient_air_flow_from_cv, 5u, 3u, 0},
    {"freeair_coefficient_cv_from_air_flow", "coefficient", "Cv that passes an air flow, by the fluid power formula.", "inverse of freeair_coefficient_air_flow_from_cv.", "Esposito, Fluid Power with Applications, chapter 13, sizing of valves", parameters_freeair_coefficient_cv_from_air_flow, statuses_freeair_coefficient_cv_from_air_flow, loop_freeair_coefficient_cv_from_air_flow, 5u, 3u, 0},
    {"freeair_safety_burn_threshold", "safety", "Surface temperature at which bare smooth metal burns skin.", "lower bound of the burn threshold: 65 degC at 1 s, 55 at 10 s, 51 at 1 min, 48 at 10 min, 43 from 8 h, straight lines over the logarithm of the time between.", "ISO 13732-1:2006, burn thresholds, bare (uncoated) smooth metal (from memory; 1 s and 10 s are read from its curve)", parameters_freeair_safety_burn_threshold, statuses_freeair_safety_burn_threshold, loop_freeair_safety_burn_threshold, 2u, 3u, FREEAIR_CAUTION_HOT | FREEAIR_CAUTION_PROTECTION},
    {"freeair_safety_cleaning_pressure", "safety", "Pressure below which compressed air for cleaning must stay, dead-ended.", "less than 30 psi gauge with the nozzle blocked, with chip guarding and personal protection.", "US 29 CFR 1910.242(b)", parameters_freeair_safety_cleaning_pressure, statuses_freeair_safety_cleaning_pressure, loop_freeair_safety_cleaning_pressure, 2u, 3u, FREEAIR_CAUTION_BLOWING | FREEAIR_CAUTION_PROTECTION},
    {"freeair_safety_stored_energy_hazard", "safety", "Hazard class of an energy stored in compressed gas.", "above 100 kJ a system counts as highly hazardous in one university's rule; no law says so.", "University of California, Berkeley, Environment, Health and Safety, Calculating the Stored Energy of a Pressurized Gas Vessel", parameters_freeair_safety_stored_energy_hazard, statuses_freeair_safety_stored_energy_hazard, loop_freeair_safety_stored_energy_hazard, 2u, 3u, FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_compression_work_isothermal", "compression", "Isothermal work per kilogram.", "w = R T1 ln(p2/p1). The least that compression can cost from p1, T1 to p2.", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression", parameters_freeair_compression_work_isothermal, statuses_freeair_compression_work_isothermal, loop_freeair_compression_work_isothermal, 5u, 3u, 0},
    {"freeair_compression_work_isentropic", "compression", "Isentropic work per kilogram.", "w = k/(k-1) R T1 ((p2/p1)^((k-1)/k) - 1), constant specific heats, no friction, no heat.", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression", parameters_freeair_compression_work_isentropic, statuses_freeair_compression_work_isentropic, loop_freeair_compression_work_isentropic, 6u, 3u, 0},
    {"freeair_compression_work_polytropic", "compression", "Polytropic work per kilogram.", "w = n/(n-1) R T1 ((p2/p1)^((n-1)/n) - 1), which is R T1 ln(p2/p1) at n = 1.", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression", parameters_freeair_compression_work_polytropic, statuses_freeair_compression_work_polytropic, loop_freeair_compression_work_polytropic, 6u, 3u, 0},
    {"freeair_compression_free_air_work", "compression", "Work per cubic metre of free air.", "w = p_free (t1/t_free) n/(n-1) ((p2/p1)^((n-1)/n) - 1): the polytropic work of the mass that fills one cubic metre at the free-air state. n = 1 is isothermal, n = k isentropic.", "algebra: polytropic work times the density of the free air", parameters_freeair_compression_free_air_work, statuses_freeair_compression_free_air_work, loop_freeair_compression_free_air_work, 7u, 3u, 0},
    {"freeair_compression_power_from_mass_flow", "compression", "Power from a mass flow.", "P = m w / efficiency, w the polytropic work per kilogram.", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, steady-flow work of compression", parameters_freeair_compression_power_from_mass_flow, statuses_freeair_compression_power_from_mass_flow, loop_freeair_compression_power_from_mass_flow, 8u, 3u, 0},
    {"freeair_compression_power_from_free_air", "compression", "Power from a flow of free air.", "P = fad w / efficiency, w as freeair_compression_free_air_work.", "algebra: free air flow times work per cubic metre of free air", parameters_freeair_compression_power_from_free_air, statuses_freeair_compression_power_from_free_air, loop_freeair_compression_power_from_free_air, 9u, 3u, 0},
    {"freeair_compression_temperature", "compression", "Discharge temperature.", "T2 = T1 (p2/p1)^((n-1)/n).", "algebra: p v^n = constant with p v = R T", parameters_freeair_compression_temperature, statuses_freeair_compression_temperature, loop_freeair_compression_temperature, 5u, 3u, FREEAIR_CAUTION_HOT | FREEAIR_CAUTION_OIL_MIST},
    {"freeair_compression_pressure_from_temperature", "compression", "Pressure at which a temperature is reached.", "p2 = p1 (T2/T1)^(n/(n-1)).", "algebra: p v^n = constant with p v = R T", parameters_freeair_compression_pressure_from_temperature, statuses_freeair_compression_pressure_from_temperature, loop_freeair_compression_pressure_from_temperature, 5u, 4u, 0},
    {"freeair_compression_exponent_from_temperatures", "compression", "Polytropic exponent from measured temperatures.", "(n-1)/n = ln(T2/T1) / ln(p2/p1). The gas temperature inside the cylinder is meant; a thermometer in the discharge pipe reads lower, and so does the exponent.", "algebra: p v^n = constant with p v = R T", parameters_freeair_compression_exponent_from_temperatures, statuses_freeair_compression_exponent_from_temperatures, loop_freeair_compression_exponent_from_temperatures, 5u, 4u, 0},
    {"freeair_compression_exponent_from_volumes", "compression", "Polytropic exponent from two points of a card.", "n = ln(p2/p1) / ln(V1/V2), for the same trapped mass at both points. freeair_indicator_exponent fits more than two points.", "definition", parameters_freeair_compression_exponent_from_volumes, statuses_freeair_compression_exponent_from_volumes, loop_freeair_compression_exponent_from_volumes, 5u, 4u, 0},
    {"freeair_compression_heat_rejected", "compression", "Heat given up by the gas during polytropic compression, per kilogram.", "q = w (k-n) / (n (k-1)), w the polytropic work: cv (k-n)/(n-1) (T2-T1) for n other than 1, R T1 ln(p2/p1) at n = 1, zero at n = k, negative above.", "Rajput, A Textbook of Internal Combustion Engines, chapter 20, heat rejected during polytropic compression", parameters_freeair_compression_heat_rejected, statuses_freeair_compression_heat_rejected, loop_freeair_compression_heat_rejected, 7u, 3u, 0},
    {"freeair_performance_efficiency_isothermal", "performance", "Isothermal efficiency from mass flow and power.", "m R T1 ln(p2/p1) / P. With shaft power the overall isothermal efficiency of the machine, with indicated power that of its cycle.", "ISO 1217:2009, Displacement compressors - Acceptance tests, terms and definitions (from memory)", parameters_freeair_performance_efficiency_isothermal, statuses_freeair_performance_efficiency_isothermal, loop_freeair_performance_efficiency_isothermal, 7u, 4u, 0},
    {"freeair_performance_efficiency_isentropic", "performance", "Isentropic efficiency from mass flow and power.", "m k/(k-1) R T1 ((p2/p1)^((k-1)/k) - 1) / P.", "ISO 1217:2009, Displacement compressors - Acceptance tests, terms and definitions (from memory)", parameters_freeair_performance_efficiency_isentropic, statuses_freeair_performance_efficiency_isentropic, loop_freeair_performance_efficiency_isentropic, 8u, 4u, 0},
    {"freeair_performance_efficiency_isothermal_from_exponent", "performance", "Isothermal efficiency of a polytropic compression.", "ln(p2/p1) / (n/(n-1) ((p2/p1)^((n-1)/n) - 1)): isothermal over polytropic work, valves ideal. Below n = 1 it is above 1.", "Joel, Basic Engineering Thermodynamics, chapter 14, isothermal efficiency", parameters_freeair_performance_efficiency_isothermal_from_exponent, statuses_freeair_performance_efficiency_isothermal_from_exponent, loop_freeair_performance_efficiency_isothermal_from_exponent, 4u, 4u, 0},
    {"freeair_performance_efficiency_isentropic_from_temperatures", "performance", "Isentropic efficiency from temperatures.", "T1 ((p2/p1)^((k-1)/k) - 1) / (T2 - T1), for a machine that loses no heat between the two thermometers. A cooled cylinder looks better than it is.", "Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a compressor", parameters_freeair_performance_efficiency_isentropic_from_temperatures, statuses_freeair_performance_efficiency_isentropic_from_temperatures, loop_freeair_performance_efficiency_isentropic_from_temperatures, 6u, 4u, 0},
    {"freeair_performance_efficiency_polytropic_from_temperatures", "performance", "Polytropic (small-stage) efficiency from temperatures.", "(k-1)/k ln(p2/p1) / ln(T2/T1), for a machine that loses no heat between the two thermometers.", "algebra: ratio of the exponents (k-1)/k and (n-1)/n", parameters_freeair_performance_efficiency_polytropic_from_temperatures, statuses_freeair_performance_efficiency_polytropic_from_temperatures, loop_freeair_performance_efficiency_polytropic_from_temperatures, 6u, 4u, 0},
    {"freeair_performance_efficiency_mechanical", "performance", "Mechanical efficiency.", "indicated power over shaft power.", "definition", parameters_freeair_performance_efficiency_mechanical, statuses_freeair_performance_efficiency_mechanical, loop_freeair_performance_efficiency_mechanical, 3u, 4u, 0},
    {"freeair_performance_efficiency_overall", "performance", "Overall efficiency.", "ideal power over the power put in. The ideal, isothermal or isentropic, and the place where the input is measured, shaft or terminals, name the efficiency.", "definition", parameters_freeair_performance_efficiency_overall, statuses_freeair_performance_efficiency_overall, loop_freeair_performance_efficiency_overall, 3u, 4u, 0},
    {"freeair_performance_specific_power", "performance", "Specific power: energy for each cubic metre of free air.", "P / fad. 1 kW/(m3/min) is 60 kJ/m3; the trade's kW per 100 cfm is 21.19 kJ/m3.", "ISO 1217:2009, specific energy requirement (from memory)", parameters_freeair_performance_specific_power, statuses_freeair_performance_specific_power, loop_freeair_performance_specific_power, 3u, 3u, 0},
    {"freeair_performance_saving_from_pressure", "performance", "Fraction of the work saved by a lower discharge pressure.", "1 - w(p1, p2_reduced) / w(p1, p2), w the polytropic work; the same air delivered at both pressures. The air that is then used falls too, which is not counted. Negative when p2_reduced_pa is above p2_pa.", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, reducing the pressure setting", parameters_freeair_performance_saving_from_pressure, statuses_freeair_performance_saving_from_pressure, loop_freeair_performance_saving_from_pressure, 5u, 3u, 0},
    {"freeair_performance_temperature_from_efficiency", "performance", "Discharge temperature of an uncooled machine from its isentropic efficiency.", "T2 = T1 (1 + ((p2/p1)^((k-1)/k) - 1) / efficiency).", "Nag, Basic and Applied Thermodynamics, chapter 19, isentropic efficiency of a compressor", parameters_freeair_performance_temperature_from_efficiency, statuses_freeair_performance_temperature_from_efficiency, loop_freeair_performance_temperature_from_efficiency, 6u, 3u, FREEAIR_CAUTION_HOT | FREEAIR_CAUTION_OIL_MIST},
    {"freeair_performance_heat_from_power", "performance", "Heat that a machine gives up besides the warm air: first law from power and temperatures.", "Q = P - m cp (T2 - T1). With shaft power: cylinder walls, crankcase and the coolers ahead of T2.", "algebra: first law for steady flow", parameters_freeair_performance_heat_from_power, statuses_freeair_performance_heat_from_power, loop_freeair_performance_heat_from_power, 6u, 3u, 0},
    {"freeair_multistage_pressure", "multistage", "Interstage pressure of equal stage ratios.", "p = p1 (p2/p1)^(after/stages). Least work when every stage starts at the same temperature with the same exponent and no pressure is lost between stages.", "Joel, Basic Engineering Thermodynamics, chapter 14, multistage compression", parameters_freeair_multistage_pressure, statuses_freeair_multistage_pressure, loop_freeair_multistage_pressure, 5u, 3u, 0},
    {"freeair_multistage_pressure_from_temperatures", "multistage", "Interstage pressure of two stages with imperfect intercooling.", "p = sqrt(p1 p2 / (1 - loss)) (T3/T1)^(n/(2(n-1))): least total work for the same exponent in both stages and a second inlet at T3 and (1 - loss) p.", "algebra: derivative of the work of two stages set to zero", parameters_freeair_multistage_pressure_from_temperatures, statuses_freeair_multistage_pressure_from_temperatures, loop_freeair_multistage_pressure_from_temperatures, 7u, 4u, 0},
    {"freeair_multistage_work_equal", "multistage", "Work per kilogram of equal stages with intercooling to the inlet temperature.", "w = N n/(n-1) R T1 ((p2/p1)^((n-1)/(N n)) - 1).", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, multistage with intercooling", parameters_freeair_multistage_work_equal, statuses_freeair_multistage_work_equal, loop_freeair_multistage_work_equal, 7u, 3u, 0},
    {"freeair_multistage_power_from_mass_flow", "multistage", "Power of equal stages with intercooling to the inlet temperature, from a mass flow.", "P = m w / efficiency, w as freeair_multistage_work_equal.", "Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression", parameters_freeair_multistage_power_from_mass_flow, statuses_freeair_multistage_power_from_mass_flow, loop_freeair_multistage_power_from_mass_flow, 9u, 3u, 0},
    {"freeair_multistage_power_from_free_air", "multistage", "Power of equal stages with intercooling to the inlet temperature, from a flow of free air.", "P = fad p_free (t1/t_free) N n/(n-1) ((p2/p1)^((n-1)/(N n)) - 1) / efficiency.", "Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression", parameters_freeair_multistage_power_from_free_air, statuses_freeair_multistage_power_from_free_air, loop_freeair_multistage_power_from_free_air, 10u, 3u, 0},
    {"freeair_multistage_saving", "multistage", "Fraction of the single-stage work that equal stages with perfect intercooling save.", "1 - w(stages) / w(1), both between the same pressures with the same exponent.", "Rajput, A Textbook of Internal Combustion Engines, chapter 20, multistage compression", parameters_freeair_multistage_saving, statuses_freeair_multistage_saving, loop_freeair_multistage_saving, 5u, 3u, 0},
    {"freeair_multistage_optimum", "multistage", "Interstage pressures of least work, for any inlet temperatures, exponents and pressure losses.", "the total work is convex in the logarithms of the interstage pressures p_i, and least where T_out,i / p_i = T_out,i+1 / (p_i - drop_i+1). Given the first pressure this yields all others and a last one that grows with the first, so one safeguarded Newton iteration, never more than 200 steps, finds the only solution.", "algebra: derivatives of the total work set to zero", parameters_freeair_multistage_optimum, statuses_freeair_multistage_optimum, loop_freeair_multistage_optimum, 7u, 4u, 0},
    {"freeair_multistage_work", "multistage", "Work and temperatures of stages with any pressures, temperatures, exponents and losses.", "each stage compresses from the discharge pressure of the one before, less the drop ahead of it, with polytropic work n/(n-1) R T_in (r^((n-1)/n) - 1). Heat of an intercooler per kilogram: cp (t_out of the stage before it - t_in of the stage after it).", "algebra: sum of the polytropic works", parameters_freeair_multistage_work, statuses_freeair_multistage_work, loop_freeair_multistage_work, 10u, 4u, 0},
    {"freeair_multistage_intercooler_heat", "multistage", "Heat taken out by an intercooler.", "Q = m cp (T1 (p2/p1)^((n-1)/n) - t_cooled). Dry air; condensing water adds its latent heat.", "Nag, Basic and Applied Thermodynamics, chapter 19, heat rejected in the intercooler", parameters_freeair_multistage_intercooler_heat, statuses_freeair_multistage_intercooler_heat, loop_freeair_multistage_intercooler_heat, 8u, 3u, 0},
    {"freeair_multistage_stages", "multistage", "Number of equal stages that keep the discharge temperature within a limit.", "the smallest N with T1 (p2/p1)^((n-1)/(N n)) not above t_max, to within 1e-12 of N; perfect intercooling.", "algebra: discharge temperature of equal stages", parameters_freeair_multistage_stages, statuses_freeair_multistage_stages, loop_freeair_multistage_stages, 6u, 4u, FREEAIR_CAUTION_OIL_MIST},
    {"freeair_rotary_work", "rotary", "Work per kilogram of a machine with a built-in volume ratio.", "isentropic compression to the built-in ratio u, then against the outlet pressure at constant volume: w = k/(k-1) R T1 (u^(1-k) - 1) + R T1 (p2/p1 - u^(-k)) u. With u = 1 it is R T1 (p2/p1 - 1).", "Joel, Basic Engineering Thermodynamics, chapter 14, blower and vane compressor", parameters_freeair_rotary_work, statuses_freeair_rotary_work, loop_freeair_rotary_work, 7u, 3u, 0},
    {"freeair_rotary_volume_ratio", "rotary", "Built-in volume ratio that meets an outlet pressure.", "u = (p1/p2)^(1/k): no work is lost at the outlet.", "algebra: p v^k = constant", parameters_freeair_rotary_volume_ratio, statuses_freeair_rotary_volume_ratio, loop_freeair_rotary_volume_ratio, 4u, 3u, 0},
    {"freeair_conductor_size", "conductor", "Standard size by its place in the table.", "table look-up, sizes in rising order from 0.", "IEC 60228:2004, Conductors of insulated cables, tables 1 to 3", parameters_freeair_conductor_size, statuses_freeair_conductor_size, loop_freeair_conductor_size, 4u, 4u, 0},
    {"freeair_conductor_table_resistance", "conductor", "Greatest resistance of a standard size at 20 degC.", "table look-up of the nominal cross-section, within 0.1 percent; no interpolation. The table's copper is some 6 percent more than length over cross-section gives: nominal sizes are only nominal.", "IEC 60228:2004, Conductors of insulated cables, tables 1 to 3", parameters_freeair_conductor_table_resistance, statuses_freeair_conductor_table_resistance, loop_freeair_conductor_table_resistance, 3u, 4u, 0},
    {"freeair_conductor_resistance", "conductor", "Resistance of a wire of a true cross-section at a temperature.", "rho (1 + alpha (T - 293.15 K)) / A; copper of 100 percent IACS, rho = 1 / 58 ohm mm2 / m, alpha = 0.00393; aluminium of 61 percent IACS, alpha = 0.00403. Direct current.", "IEC 60028:1925, standard of resistance for copper; 61 percent IACS, ASTM B609; coefficients of IEC 60287-1-1, table 1, from memory", parameters_freeair_conductor_resistance, statuses_freeair_conductor_resistance, loop_freeair_conductor_resistance, 4u, 4u, 0},
    {"freeair_conductor_resistance_at", "conductor", "Resistance at a temperature from that at 20 degC.", "R20 (1 + alpha (T - 293.15 K)). IEC 60228 takes alpha = 0.004 for its corrections, tables of copper 0.00393; at 70 degC the two differ by 0.3 percent.", "IEC 60228:2004, annex on correction factors", parameters_freeair_conductor_resistance_at, statuses_freeair_conductor_resistance_at, loop_freeair_conductor_resistance_at, 4u, 3u, 0},
    {"freeair_conductor_gauge", "conductor", "Diameter and cross-section of an American wire gauge size.", "d = 0.005 in 92^((36 - n) / 39), n = 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0; the metal of a solid wire, or of all strands together.", "ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires", parameters_freeair_conductor_gauge, statuses_freeair_conductor_gauge, loop_freeair_conductor_gauge, 3u, 3u, 0},
    {"freeair_conductor_gauge_from_area", "conductor", "Thinnest American wire gauge size that has at least a cross-section.", "the greatest gauge number whose cross-section is not below area_m2, less a millionth.", "ASTM B258, inverted", parameters_freeair_conductor_gauge_from_area, statuses_freeair_conductor_gauge_from_area, loop_freeair_conductor_gauge_from_area, 2u, 4u, 0},
    {"freeair_conductor_drop", "conductor", "Voltage and power that a run of wire takes.", "k I L (r cos + x sin), k = 2 for one phase (out and back), sqrt(3) for three; power w I^2 r L with w = 2 or 3 wires. The usual approximation of the topic supply.", "IEEE Std 141-1993, 3.11, approximate formula for voltage drop, from memory", parameters_freeair_conductor_drop, statuses_freeair_conductor_drop, loop_freeair_conductor_drop, 8u, 3u, 0},
    {"freeair_conductor_size_for_drop", "conductor", "Smallest standard size whose drop is within a permitted one.", "the first size of the table of IEC 60228 whose freeair_conductor_drop at its temperature (alpha = 0.004) is not above allowed_v. The drop only: current-carrying capacity, short circuit and the local code may ask for more.", "IEC 60228:2004, tables 1 to 3, with the drop of freeair_conductor_drop", parameters_freeair_conductor_size_for_drop, statuses_freeair_conductor_size_for_drop, loop_freeair_conductor_size_for_drop, 10u, 5u, FREEAIR_CAUTION_LIVE},
    {"freeair_fastener_pitch", "fastener", "Pitch of a standard thread.", "table look-up of the nominal diameter, within 0.5 percent: M3 to M39, No. 6 to 1-1/2 in.", "ISO 261 and ISO 262, coarse pitches; ASME B1.1, UNC and UNF, from memory", parameters_freeair_fastener_pitch, statuses_freeair_fastener_pitch, loop_freeair_fastener_pitch, 3u, 4u, 0},
    {"freeair_fastener_stress_area", "fastener", "Stress area of a thread.", "pi / 4 (d - c p)^2, the circle of the mean of pitch and root diameter: c = 13 sqrt(3) / 24 = 0.9382 for ISO threads, 9 sqrt(3) / 16 = 0.9743 for unified ones.", "ISO 898-1:2013, 9.1.6.1, nominal stress area; ASME B1.1, tensile stress area", parameters_freeair_fastener_stress_area, statuses_freeair_fastener_stress_area, loop_freeair_fastener_stress_area, 4u, 5u, 0},
    {"freeair_fastener_strength", "fastener", "Strength of a grade of bolt.", "table look-up. Some grades are weaker in large diameters; none is defined outside 6.35 to 38.1 mm (SAE) or 1.6 to 39 mm (ISO).", "SAE J429, table 1; ISO 898-1:2013, table 3; from memory, proof stresses confirmed by public proof-load tables", parameters_freeair_fastener_strength, statuses_freeair_fastener_strength, loop_freeair_fastener_strength, 5u, 4u, 0},
    {"freeair_fastener_torque_for_grade", "fastener", "Preload and torque for a bolt of a grade.", "F = fraction S_p A_s with the proof stress of the grade and the stress area of the standard thread; T = K d F. 0.75 is usual for joints that are opened again, 0.90 for lasting ones. K about 0.20 dry and plain, 0.15 oiled.", "SAE J429 torque-tension charts; T = K d F, common practice", parameters_freeair_fastener_torque_for_grade, statuses_freeair_fastener_torque_for_grade, loop_freeair_fastener_torque_for_grade, 7u, 4u, FREEAIR_CAUTION_DEPRESSURISE},
    {"freeair_fastener_torque", "fastener", "Torque for a preload.", "T = K d F.", "common practice; SAE J429 torque-tension charts", parameters_freeair_fastener_torque, statuses_freeair_fastener_torque, loop_freeair_fastener_torque, 4u, 3u, 0},
    {"freeair_fastener_preload", "fastener", "Preload from a torque, with uncertainty.", "F = T / (K d); u(F) = F sqrt((u(T)/T)^2 + (u(K)/K)^2). The nut factor is known to a tenth at best.", "common practice; uncertainty by JCGM 100:2008, 5.1.6", parameters_freeair_fastener_preload, statuses_freeair_fastener_preload, loop_freeair_fastener_preload, 7u, 3u, 0},
    {"freeair_fastener_nut_factor", "fastener", "Nut factor from friction.", "K d = p / (2 pi) + mu_t d2 / (2 cos 30) + mu_b D_b / 2, with d2 = d - 3 sqrt(3) / 8 p the pitch diameter.", "ISO 16047:2005, torque and clamp force of threaded fasteners; VDI 2230 part 1, from memory", parameters_freeair_fastener_nut_factor, statuses_freeair_fastener_nut_factor, loop_freeair_fastener_nut_factor, 6u, 4u, 0},
    {"freeair_fastener_pressure_load", "fastener", "Load that a pressure puts on each bolt of a cover.", "F = p A / n, shared evenly. The preload has to be greater by what the gasket needs, and by a reserve.", "statics", parameters_freeair_fastener_pressure_load, statuses_freeair_fastener_pressure_load, loop_freeair_fastener_pressure_load, 4u, 3u, FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_VESSEL},
    {"freeair_receiver_volume_from_event", "receiver", "Receiver volume that bridges an event in which demand exceeds supply.", "V = q t p_ref T / (t_ref (p_high - p_low)), with q the demand less the supply during the event. The air in the receiver keeps its temperature.", "Esposito, Fluid Power with Applications, chapter 13, sizing of receivers", parameters_freeair_receiver_volume_from_event, statuses_freeair_receiver_volume_from_event, loop_freeair_receiver_volume_from_event, 8u, 3u, 0},
    {"freeair_receiver_volume_from_starts", "receiver", "Receiver volume that keeps an on/off compressor within a number of starts.", "worst case, demand at half of the supply: V = q p_ref T / (4 f t_ref (p_high - p_low)), f the starts a second.", "algebra", parameters_freeair_receiver_volume_from_starts, statuses_freeair_receiver_volume_from_starts, loop_freeair_receiver_volume_from_starts, 8u, 3u, 0},
    {"freeair_receiver_cycle", "receiver", "Running time, resting time and starts of a compressor that cycles between two pressures.", "with the air A = V (p_high - p_low) t_ref / (T p_ref) between the pressures, run = A / (supply - demand), rest = A / demand, starts = 1 / (run + rest). Steady supply and demand.", "algebra", parameters_freeair_receiver_cycle, statuses_freeair_receiver_cycle, loop_freeair_receiver_cycle, 11u, 4u, 0},
    {"freeair_receiver_starts_maximum", "receiver", "Most starts that a steady demand can cause, at half of the supply.", "f = q p_ref T / (4 V t_ref (p_high - p_low)).", "algebra", parameters_freeair_receiver_starts_maximum, statuses_freeair_receiver_starts_maximum, loop_freeair_receiver_starts_maximum, 8u, 3u, 0},
    {"freeair_receiver_usable_air", "receiver", "Free air that a receiver gives up between two pressures.", "A = V (p_high - p_low) t_ref / (T p_ref), the receiver keeping its temperature.", "algebra", parameters_freeair_receiver_usable_air, statuses_freeair_receiver_usable_air, loop_freeair_receiver_usable_air, 7u, 3u, 0},
    {"freeair_receiver_pressure_after", "receiver", "Pressure in a receiver after a time of steady net inflow or outflow.", "p2 = p1 + q t p_ref T / (t_ref V), temperature constant.", "algebra", parameters_freeair_receiver_pressure_after, statuses_freeair_receiver_pressure_after, loop_freeair_receiver_pressure_after, 8u, 4u, 0},
    {"freeair_receiver_fill_time", "receiver", "Time for a steady net flow to take a receiver from one pressure to another.", "t = V (p2 - p1) t_ref / (q p_ref T), temperature constant; emptying takes a negative flow.", "algebra", parameters_freeair_receiver_fill_time, statuses_freeair_receiver_fill_time, loop_freeair_receiver_fill_time, 8u, 5u, 0},
    {"freeair_receiver_free_air_from_pump_up", "receiver", "Free air delivery from the time to pump a receiver up.", "q = V (p2 / T2 - p1 / T1) t_ref / (p_ref t), the mean over the test. Nothing may leave the receiver. The air comes in hotter than the shell: with T2 taken as T1 the plain rule reads high by as much as T2 stands above T1, and a volume with water in it reads high by the share of the water.", "Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3, compressed air system, pump-up test", parameters_freeair_receiver_free_air_from_pump_up, statuses_freeair_receiver_free_air_from_pump_up, loop_freeair_receiver_free_air_from_pump_up, 9u, 4u, 0},
    {"freeair_receiver_water_from_pump_up", "receiver", "Water in a receiver from a pump-up that is shorter than it should be.", "W = V (1 - found / expected): the same delivery fills the free part of the volume.", "algebra", parameters_freeair_receiver_water_from_pump_up, statuses_freeair_receiver_water_from_pump_up, loop_freeair_receiver_water_from_pump_up, 4u, 4u, FREEAIR_CAUTION_DEPRESSURISE},
    {"freeair_blowdown_time", "blowdown", "Time to blow a vessel down to a pressure.", "choked down to the critical pressure ratio, then subsonic until p2. Choked, with B = V / (A sqrt(R T1)) and m = (n - 1) / (2 n): t = B / (n C*) ((p1/p2)^m - 1) / m. Subsonic, with u = sqrt(1 - (line/p)^((k-1)/k)): t = B / n (p1/line)^m sqrt(2 k / (k - 1)) times the integral of (1 - u^2)^(-k (1 - m) / (k - 1)) du, as its series of positive terms.", "Bar-Meir, Fundamentals of Compressible Fluid Mechanics, evacuating chambers, for the choked phase; derived in the guide", parameters_freeair_blowdown_time, statuses_freeair_blowdown_time, loop_freeair_blowdown_time, 3u, 5u, FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_blowdown_pressure", "blowdown", "Pressure and temperature in a vessel after it has blown down for a time.", "inverse of freeair_blowdown_time; a Newton iteration that converges from one side in the subsonic phase, at most 100 steps. The line pressure once it is reached; T = T1 (p/p1)^((n-1)/n).", "algebra", parameters_freeair_blowdown_pressure, statuses_freeair_blowdown_pressure, loop_freeair_blowdown_pressure, 4u, 4u, FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_blowdown_fill_time", "blowdown", "Time to fill a vessel from a line at constant pressure.", "dp/dt = n R T m / V with m the flow of the topic flow, T of the line. Choked: t = B / (n C*) (p2 - p1) / line; then subsonic: t = B / n sqrt(2 k / (k - 1)) (u1 - u2).", "algebra", parameters_freeair_blowdown_fill_time, statuses_freeair_blowdown_fill_time, loop_freeair_blowdown_fill_time, 3u, 5u, FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_blowdown_fill_pressure", "blowdown", "Pressure in a vessel after it has been filled from a line for a time.", "inverse of freeair_blowdown_fill_time, in closed form. The line pressure once it is reached.", "algebra", parameters_freeair_blowdown_fill_pressure, statuses_freeair_blowdown_fill_pressure, loop_freeair_blowdown_fill_pressure, 3u, 4u, FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_blowdown_fill_temperature", "blowdown", "Temperature in a vessel that was filled without heat loss.", "T2 = p2 / (p1 / T1 + (p2 - p1) / (k T)), T of the line; k T when the vessel was empty. Energy balance of an ideal gas, whatever the orifice.", "Rao, Chemical Engineering Thermodynamics, 1997, example 4.13, energy balance of a tank being filled", parameters_freeair_blowdown_fill_temperature, statuses_freeair_blowdown_fill_temperature, loop_freeair_blowdown_fill_temperature, 6u, 3u, 0},
    {"freeair_blowdown_evacuation_time", "blowdown", "Time for a vacuum pump of constant intake to lower the pressure in a vessel.", "t = V / S ln((p1 - pu) / (p2 - pu)), S the intake volume flow at the pressure of the moment, pu the pressure at which leaks or the pump hold it; temperature constant.", "Esposito, Fluid Power with Applications, chapter 14, vacuum systems", parameters_freeair_blowdown_evacuation_time, statuses_freeair_blowdown_evacuation_time, loop_freeair_blowdown_evacuation_time, 6u, 4u, 0},
    {"freeair_vessel_stored_energy", "vessel", "Energy stored in compressed air, by the four usual formulas.", "Brode (p - p0) V / (k - 1), an upper bound for a burst; isentropic expansion p V / (k - 1) (1 - (p0/p)^((k-1)/k)), the usual figure; isothermal expansion p V ln(p/p0), which takes heat from around; and what is available of that beyond pushing back the atmosphere, p V ln(p/p0) - (p - p0) V. State which one is meant.", "Paulsen, Pressure Systems Stored-Energy Threshold Risk Analysis, PNNL-18696, 2009, for the choice of formulas", parameters_freeair_vessel_stored_energy, statuses_freeair_vessel_stored_energy, loop_freeair_vessel_stored_energy, 8u, 3u, FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_VESSEL},
    {"freeair_vessel_test_energy", "vessel", "Stored energy of a pneumatic test, and its TNT equivalent.", "E = 2.5 p V (1 - (p0/p)^0.286), for air and nitrogen; TNT = E / 4266920 J/kg.", "ASME PCC-2, Article 501, Mandatory Appendix 501-II, equations II-2 and II-3", parameters_freeair_vessel_test_energy, statuses_freeair_vessel_test_energy, loop_freeair_vessel_test_energy, 5u, 3u, FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_VESSEL},
    {"freeair_vessel_tnt_equivalent", "vessel", "Mass of TNT that releases an energy.", "division by the specific energy chosen: 4.184e6 J/kg by convention, 4.26692e6 J/kg in ASME PCC-2, 4.62e6 J/kg in some laboratory rules.", "definition", parameters_freeair_vessel_tnt_equivalent, statuses_freeair_vessel_tnt_equivalent, loop_freeair_vessel_tnt_equivalent, 3u, 3u, FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_vessel_test_distance", "vessel", "Least distance of people from a pneumatic test.", "the greater of R = 20 m/kg^(1/3) (2 TNT)^(1/3) with TNT = E / 4266920 J/kg and a floor of 30 m up to 135.5 MJ, 60 m up to 271 MJ; R alone above.", "ASME PCC-2, Article 501, Mandatory Appendix 501-III, equation III-1", parameters_freeair_vessel_test_distance, statuses_freeair_vessel_test_distance, loop_freeair_vessel_test_distance, 2u, 3u, FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_VESSEL},
    {"freeair_vessel_shell_stress", "vessel", "Hoop and longitudinal membrane stress in a thin cylindrical shell.", "hoop p r / t, longitudinal p r / (2 t), away from heads, nozzles and supports; weld and corrosion not counted.", "Gere, Mechanics of Materials, chapter 8, pressure vessels", parameters_freeair_vessel_shell_stress, statuses_freeair_vessel_shell_stress, loop_freeair_vessel_shell_stress, 5u, 4u, FREEAIR_CAUTION_VESSEL},
    {"freeair_vessel_sphere_stress", "vessel", "Membrane stress in a thin spherical shell.", "p r / (2 t), away from openings and supports.", "Gere, Mechanics of Materials, chapter 8, pressure vessels", parameters_freeair_vessel_sphere_stress, statuses_freeair_vessel_sphere_stress, loop_freeair_vessel_sphere_stress, 4u, 4u, FREEAIR_CAUTION_VESSEL},
    {"freeair_vessel_wall_required", "vessel", "Wall of a cylindrical shell that a code formula requires, corrosion allowance included.", "t = P (R + c) / (S E - 0.6 P) + c, for P up to 0.385 S E. Circumferential stress only: heads, nozzles, supports and minimum thicknesses have rules of their own.", "ASME Boiler and Pressure Vessel Code, Section VIII, Division 1, UG-27(c)(1)", parameters_freeair_vessel_wall_required, statuses_freeair_vessel_wall_required, loop_freeair_vessel_wall_required, 6u, 4u, FREEAIR_CAUTION_VESSEL},
    {"freeair_vessel_pressure_allowable", "vessel", "Pressure that a code formula allows a measured cylindrical wall.", "with t the wall less the allowance for corrosion to come, P = S E t / (Ro - 0.4 t), the formula of UG-27(c)(1) on the outside radius, which corrosion inside leaves as it was. For t up to half the inside radius. Measure at the thinnest place: the bottom, beneath the water.", "ASME Boiler and Pressure Vessel Code, Section VIII, Division 1, Mandatory Appendix 1-1(a)(1)", parameters_freeair_vessel_pressure_allowable, statuses_freeair_vessel_pressure_allowable, loop_freeair_vessel_pressure_allowable, 6u, 4u, FREEAIR_CAUTION_VESSEL | FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_vessel_relief_capacity", "vessel", "Free air that a relief valve passes.", "isentropic flow of dry air (k = 1.4, R = 287.05287 J/(kg K)) through coefficient times area, choked wherever it blows off to the atmosphere above about 0.9 bar gauge. Use the derated coefficient on the certificate, and the set pressure with its overpressure.", "API Standard 520 Part I, sizing for gas in critical flow", parameters_freeair_vessel_relief_capacity, statuses_freeair_vessel_relief_capacity, loop_freeair_vessel_relief_capacity, 8u, 3u, FREEAIR_CAUTION_RELIEF_VALVE},
    {"freeair_vessel_relief_verdict", "vessel", "Does a relief valve pass what the compressor delivers?", "guarded decision on the difference capacity less delivery, with its standard uncertainty: MEETS, FAILS or CANNOT_TELL.", "JCGM 106:2012, 8.3, guarded decisions", parameters_freeair_vessel_relief_verdict, statuses_freeair_vessel_relief_verdict, loop_freeair_vessel_relief_verdict, 7u, 3u, FREEAIR_CAUTION_RELIEF_VALVE},
    {"freeair_leakage_share_from_cycle", "leakage", "Share of a compressor's capacity that leaks, from load and unload times without demand.", "s = load / (load + unload). Sum the times over several whole cycles.", "Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3, compressed air system, leakage test", parameters_freeair_leakage_share_from_cycle, statuses_freeair_leakage_share_from_cycle, loop_freeair_leakage_share_from_cycle, 3u, 3u, 0},
    {"freeair_leakage_flow_from_cycle", "leakage", "Leak from load and unload times without demand.", "q = Q load / (load + unload), Q the free air delivery at the pressure of the test.", "Bureau of Energy Efficiency (India), Guide book for energy auditors, volume 3, compressed air system, leakage test", parameters_freeair_leakage_flow_from_cycle, statuses_freeair_leakage_flow_from_cycle, loop_freeair_leakage_flow_from_cycle, 4u, 3u, 0},
    {"freeair_leakage_mean_from_decay", "leakage", "Mean leak from the fall of pressure in an isolated volume.", "q = V (p1 / T1 - p2 / T2) t_ref / (p_ref t), counted as mass and as free air. One kelvin of cooling looks like a leak of p/T: read the temperature or wait until it rests.", "algebra", parameters_freeair_leakage_mean_from_decay, statuses_freeair_leakage_mean_from_decay, loop_freeair_leakage_mean_from_decay, 10u, 4u, 0},
    {"freeair_leakage_at_pressure_from_decay", "leakage", "Leak at a chosen pressure from the fall of pressure in an isolated volume.", "leaks are choked, in proportion to the absolute pressure, so that it falls exponentially: q = V ln(p1 / p2) / t p t_ref / (T p_ref). Good while both pressures are above about 1.9 times the barometer.", "algebra", parameters_freeair_leakage_at_pressure_from_decay, statuses_freeair_leakage_at_pressure_from_decay, loop_freeair_leakage_at_pressure_from_decay, 9u, 3u, 0},
    {"freeair_leakage_flow_at_pressure", "leakage", "Leak at one pressure from the leak at another.", "isentropic flow through the same effective area, so in proportion to the absolute pressure while choked at both. A seal that opens with pressure leaks more than that.", "algebra", parameters_freeair_leakage_flow_at_pressure, statuses_freeair_leakage_flow_at_pressure, loop_freeair_leakage_flow_at_pressure, 5u, 3u, 0},
    {"freeair_leakage_flow_from_readings", "leakage", "Leak at a pressure from leaks found at several pressures.", "straight line of least squares through the readings, evaluated at p_pa. No physics: it serves for systems whose leaks do not grow in proportion to the absolute pressure.", "US Navy, MO-209, Maintenance of Steam, Hot Water, and Compressed Air Distribution Systems, chapter 5, calculation of losses", parameters_freeair_leakage_flow_from_readings, statuses_freeair_leakage_flow_from_readings, loop_freeair_leakage_flow_from_readings, 6u, 4u, 0},
    {"freeair_leakage_flow_from_hole", "leakage", "Leak through a round hole.", "isentropic flow through coefficient times pi/4 d^2, choked or not, as mass and as free air.", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, example on repairing an air leak", parameters_freeair_leakage_flow_from_hole, statuses_freeair_leakage_flow_from_hole, loop_freeair_leakage_flow_from_hole, 9u, 3u, FREEAIR_CAUTION_BLOWING},
    {"freeair_leakage_hole_from_flow", "leakage", "Diameter of the one round hole that leaks as much.", "inverse of freeair_leakage_flow_from_hole.", "algebra", parameters_freeair_leakage_hole_from_flow, statuses_freeair_leakage_hole_from_flow, loop_freeair_leakage_hole_from_flow, 8u, 3u, 0},
    {"freeair_leakage_power", "leakage", "Power that a leak takes at the compressor.", "P = m k / (k - 1) R T_in ((p_line / p_in)^((k-1)/k) - 1) / efficiency: isentropic compression in one stage over the efficiency from there to the meter. It is saved only if the control of the compressor lets it be.", "Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 7, example on repairing an air leak", parameters_freeair_leakage_power, statuses_freeair_leakage_power, loop_freeair_leakage_power, 8u, 3u, 0},
    {"freeair_leakage_cost", "leakage", "Energy and money that a leak takes in a time.", "energy = power times time, cost = energy times price. A price a kilowatt-hour over 3.6e6 is a price a joule.", "definition", parameters_freeair_leakage_cost, statuses_freeair_leakage_cost, loop_freeair_leakage_cost, 5u, 3u, 0},
    {"freeair_cylinder_swept_volume", "cylinder", "Swept volume of one cylinder end.", "V = pi/4 D^2 L.", "definition", parameters_freeair_cylinder_swept_volume, statuses_freeair_cylinder_swept_volume, loop_freeair_cylinder_swept_volume, 3u, 3u, 0},
    {"freeair_cylinder_swept_volume_double_acting", "cylinder", "Swept volume of both ends of a double-acting cylinder.", "V = pi/4 L (2 D^2 - d^2), the piston rod taking its part of the crank end.", "definition", parameters_freeair_cylinder_swept_volume_double_acting, statuses_freeair_cylinder_swept_volume_double_acting, loop_freeair_cylinder_swept_volume_double_acting, 4u, 3u, 0},
    {"freeair_cylinder_clearance_volume", "cylinder", "Clearance volume.", "V = c Vs.", "definition", parameters_freeair_cylinder_clearance_volume, statuses_freeair_cylinder_clearance_volume, loop_freeair_cylinder_clearance_volume, 3u, 3u, 0},
    {"freeair_cylinder_clearance_from_volume", "cylinder", "Clearance as a fraction of the swept volume.", "c = V / Vs. The clearance volume of a head can be measured by filling it with oil.", "definition", parameters_freeair_cylinder_clearance_from_volume, statuses_freeair_cylinder_clearance_from_volume, loop_freeair_cylinder_clearance_from_volume, 3u, 3u, 0},
    {"freeair_cylinder_volumetric_efficiency", "cylinder", "Volumetric efficiency.", "1 + c - c (p2/p1)^(1/n), n the exponent of re-expansion (that of compression has no part in it). Refers to air at p1 and at the temperature with which it lies in the cylinder. Absolute error below 1e-14.", "Nag, Basic and Applied Thermodynamics, chapter 19, volumetric efficiency", parameters_freeair_cylinder_volumetric_efficiency, statuses_freeair_cylinder_volumetric_efficiency, loop_freeair_cylinder_volumetric_efficiency, 5u, 4u, 0},
    {"freeair_cylinder_zero_delivery_pressure", "cylinder", "Pressure at which delivery falls to zero.", "p = p1 ((1 + c)/c)^n: the clearance air fills the whole cylinder when it re-expands. With losses and leaks a real cylinder stops sooner.", "Nag, Basic and Applied Thermodynamics, chapter 19, volumetric efficiency set to zero", parameters_freeair_cylinder_zero_delivery_pressure, statuses_freeair_cylinder_zero_delivery_pressure, loop_freeair_cylinder_zero_delivery_pressure, 4u, 3u, FREEAIR_CAUTION_RELIEF_VALVE | FREEAIR_CAUTION_VESSEL},
    {"freeair_cylinder_clearance_from_zero_delivery", "cylinder", "Clearance from the pressure at which delivery falls to zero.", "c = 1 / ((p_zero/p1)^(1/n) - 1). A leak makes it look larger. Never dead-head a machine to find out.", "Nag, Basic and Applied Thermodynamics, Example 19.4", parameters_freeair_cylinder_clearance_from_zero_delivery, statuses_freeair_cylinder_clearance_from_zero_delivery, loop_freeair_cylinder_clearance_from_zero_delivery, 4u, 3u, FREEAIR_CAUTION_RELIEF_VALVE | FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_cylinder_clearance_from_volumetric_efficiency", "cylinder", "Clearance from a measured volumetric efficiency.", "c = (1 - efficiency) / ((p2/p1)^(1/n) - 1). All that heating, valves and leaks cost is counted as clearance: the value is an equivalent one, and its growth over the years shows wear.", "algebra: volumetric efficiency solved for the clearance", parameters_freeair_cylinder_clearance_from_volumetric_efficiency, statuses_freeair_cylinder_clearance_from_volumetric_efficiency, loop_freeair_cylinder_clearance_from_volumetric_efficiency, 5u, 3u, 0},
    {"freeair_cylinder_mean_effective_pressure", "cylinder", "Mean effective pressure of the ideal cycle.", "(1 + c) p1 nc/(nc-1) (r^((nc-1)/nc) - 1) - c r^(1/ne) p1 ne/(ne-1) (r^((ne-1)/ne) - 1), r = p2/p1: work of compression and delivery, less what re-expansion returns, over the swept volume. With the pressures inside the cylinder it contains the valve losses. Air is delivered if compression reaches p2 before top dead centre and re-expansion p1 before bottom dead centre.", "Rajput, A Textbook of Internal Combustion Engines, chapter 20, work with different indices", parameters_freeair_cylinder_mean_effective_pressure, statuses_freeair_cylinder_mean_effective_pressure, loop_freeair_cylinder_mean_effective_pressure, 6u, 4u, 0},
    {"freeair_cylinder_indicated_power", "cylinder", "Indicated power.", "P = pm Vs N (the textbook's pm L A N).", "definition", parameters_freeair_cylinder_indicated_power, statuses_freeair_cylinder_indicated_power, loop_freeair_cylinder_indicated_power, 4u, 3u, 0},
    {"freeair_cylinder_piston_speed", "cylinder", "Mean piston speed.", "2 L N.", "definition", parameters_freeair_cylinder_piston_speed, statuses_freeair_cylinder_piston_speed, loop_freeair_cylinder_piston_speed, 3u, 3u, 0},
    {"freeair_delivery_of_stage", "delivery", "Delivery of a stage with heating, valve losses and leakage.", "in the cylinder ps = p1 - suction drop, pd = p2 + discharge drop, eta = 1 + c - c (pd/ps)^(1/n_expansion). Inlet efficiency = eta (ps/p1)(T1/T_cylinder)(1 - leakage), free = inlet (p1/p_free)(T_free/T1); flows = efficiency times swept volume times speed. Indicated work as freeair_cylinder_mean_effective_pressure between ps and pd; the work spent on leaking air is in it.", "Rajput, A Textbook of Internal Combustion Engines, chapter 20, volumetric efficiency on free air", parameters_freeair_delivery_of_stage, statuses_freeair_delivery_of_stage, loop_freeair_delivery_of_stage, 2u, 5u, 0},
    {"freeair_delivery_free_air", "delivery", "Free air delivery from a volumetric efficiency.", "fad = efficiency Vs N (p1/p_free)(T_free/T1), the efficiency being that at the inlet state.", "Joel, Basic Engineering Thermodynamics, Example 14.1", parameters_freeair_delivery_free_air, statuses_freeair_delivery_free_air, loop_freeair_delivery_free_air, 8u, 3u, 0},
    {"freeair_delivery_volumetric_efficiency", "delivery", "Volumetric efficiency from a measured flow.", "flow / (Vs N), at the state at which the flow is given: name it with the result.", "definition", parameters_freeair_delivery_volumetric_efficiency, statuses_freeair_delivery_volumetric_efficiency, loop_freeair_delivery_volumetric_efficiency, 4u, 4u, 0},
    {"freeair_delivery_bore_from_stroke", "delivery", "Bore for a wanted flow, stroke given.", "D = sqrt(4 flow / (pi L N strokes efficiency)).", "algebra: swept volume solved for the bore", parameters_freeair_delivery_bore_from_stroke, statuses_freeair_delivery_bore_from_stroke, loop_freeair_delivery_bore_from_stroke, 6u, 3u, 0},
    {"freeair_delivery_bore_from_stroke_ratio", "delivery", "Bore for a wanted flow, stroke in proportion.", "D = (4 flow / (pi stroke_ratio N strokes efficiency))^(1/3).", "algebra: swept volume solved for the bore", parameters_freeair_delivery_bore_from_stroke_ratio, statuses_freeair_delivery_bore_from_stroke_ratio, loop_freeair_delivery_bore_from_stroke_ratio, 6u, 3u, 0},
    {"freeair_indicator_mep_from_card", "indicator", "Mean effective pressure from a paper card.", "pm = area / length * scale_pa / scale_m, the spring scale given as a pressure and the height it draws.", "definition", parameters_freeair_indicator_mep_from_card, statuses_freeair_indicator_mep_from_card, loop_freeair_indicator_mep_from_card, 5u, 3u, 0},
    {"freeair_indicator_work", "indicator", "Indicated work and mean effective pressure from points of a card.", "w = -sum (p_i + p_i+1)/2 (V_i+1 - V_i) around the loop, which the last point closes to the first; positive where work is put into the gas. pm = w over the greatest less the smallest volume. The trapezoids cut corners: the ideal diagram at equal crank angles, ratio up to 12, errs by less than 0.06 % with 180 points and 0.005 % with 720. A dead centre that is off by one degree costs far more: 2 % at a ratio of 3, 4 % at 8, up to 9 % at 12.", "algebra: closed integral of -p dV by the trapezoid rule", parameters_freeair_indicator_work, statuses_freeair_indicator_work, loop_freeair_indicator_work, 5u, 4u, 0},
    {"freeair_indicator_exponent", "indicator", "Polytropic exponent along a stretch of a card, by least squares.", "ln p = a - n ln V fitted to the points of a compression or re-expansion, all valves shut. The standard uncertainty comes from their scatter, points - 2 degrees of freedom; it does not contain an error of pressure or clearance that all points share. An error of 0.01 in the clearance moves the exponent of compression by 0.02 to 0.03, that of re-expansion by 0.06 to 0.3.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement, H.3, straight line by least squares", parameters_freeair_indicator_exponent, statuses_freeair_indicator_exponent, loop_freeair_indicator_exponent, 5u, 5u, 0},
    {"freeair_indicator_ideal", "indicator", "Ideal diagram, to be drawn.", "compression, discharge, re-expansion, suction with instant valves, from bottom dead centre. Three eighths of the steps on either curve, equal in ln p, the rest along the strokes; the last point is the first. The trapezoid rule on these points overstates the work, by less than 0.02 % with 200 points at a ratio of 12.", "algebra: p V^n = constant on either curve", parameters_freeair_indicator_ideal, statuses_freeair_indicator_ideal, loop_freeair_indicator_ideal, 9u, 5u, 0},
    {"freeair_crank_position", "crank", "Distance of the piston from top dead centre.", "x = r (1 - cos a) + l (1 - sqrt(1 - (r/l)^2 sin^2 a)), r half the stroke, l the rod length.", "algebra: plane trigonometry of the slider-crank", parameters_freeair_crank_position, statuses_freeair_crank_position, loop_freeair_crank_position, 4u, 3u, 0},
    {"freeair_crank_angle_from_position", "crank", "Crank angle at which the piston has a position.", "inverse of freeair_crank_position from the triangle of crank, rod and axis, from 0 to pi: the stroke away from top dead centre. The other angle is 2 pi minus this one.", "algebra: plane trigonometry of the slider-crank", parameters_freeair_crank_angle_from_position, statuses_freeair_crank_angle_from_position, loop_freeair_crank_angle_from_position, 4u, 3u, 0},
    {"freeair_crank_volume", "crank", "Volume in a cylinder at a crank angle.", "V = pi/4 D^2 (x + c L), x the position, c the clearance, L the stroke.", "algebra: plane trigonometry of the slider-crank", parameters_freeair_crank_volume, statuses_freeair_crank_volume, loop_freeair_crank_volume, 6u, 3u, 0},
    {"freeair_crank_velocity", "crank", "Velocity of the piston.", "v = w r sin a (1 + q cos a / sqrt(1 - q^2 sin^2 a)), w = 2 pi N, q = r/l; positive away from top dead centre.", "algebra: derivative of the position", parameters_freeair_crank_velocity, statuses_freeair_crank_velocity, loop_freeair_crank_velocity, 5u, 3u, 0},
    {"freeair_crank_gas_load", "crank", "Load of the gas on the connecting rod.", "F = pi/4 (p_head D^2 - p_crank (D^2 - d^2) - p_ambient d^2); positive presses the rod. A trunk piston has d = 0 and the crankcase pressure below it. The greatest is at discharge pressure.", "algebra: balance of forces on the piston", parameters_freeair_crank_gas_load, statuses_freeair_crank_gas_load, loop_freeair_crank_gas_load, 6u, 3u, 0},
    {"freeair_crank_inertia_load", "crank", "Load of the reciprocating mass on the connecting rod.", "F = -m w^2 r (cos a + q (cos 2a + q^2 sin^4 a) / (1 - q^2 sin^2 a)^1.5), q = r/l; positive presses the rod. At top dead centre it pulls with m w^2 r (1 + q), at bottom dead centre it presses with m w^2 r (1 - q).", "algebra: second derivative of the position", parameters_freeair_crank_inertia_load, statuses_freeair_crank_inertia_load, loop_freeair_crank_inertia_load, 6u, 3u, 0},
    {"freeair_crank_torque", "crank", "Torque that a load on the connecting rod asks of the shaft.", "T = -F dx/da, F the sum of gas and inertia load along the cylinder axis; positive is driven. Friction is left out. Its mean over a revolution times 2 pi N is the indicated power.", "algebra: virtual work", parameters_freeair_crank_torque, statuses_freeair_crank_torque, loop_freeair_crank_torque, 5u, 3u, 0},
    {"freeair_machine_complete", "machine", "Fills every field that is not given with its default.", "the defaults documented at each field. Idempotent: a complete description is returned unchanged. rated_delivery_m3_s stays NaN when not given.", "common practice", parameters_freeair_machine_complete, statuses_freeair_machine_complete, loop_freeair_machine_complete, 2u, 4u, 0},
    {"freeair_machine_displacement", "machine", "Displacement: swept volume of the first stage times nominal speed.", "lp_cylinders * pi/4 * bore^2 * stroke * speed, at rated motor slip and without belt slip.", "definition", parameters_freeair_machine_displacement, statuses_freeair_machine_displacement, loop_freeair_machine_displacement, 2u, 4u, 0},
    {"freeair_fault_applies", "fault", "Whether a machine can have a fault at all.", "faults of the second stage and between the stages need two stages; a gasket between two cylinders needs two cylinders side by side under one head.", "definition", parameters_freeair_fault_applies, statuses_freeair_fault_applies, loop_freeair_fault_applies, 3u, 5u, 0},
    {"freeair_fault_apply", "fault", "Applies a fault to a description and its site.", "the change documented at each code, in addition to what the description already holds; continuous and monotone in the severity, and none at severity 0. A valve fault of a stage of several cylinders affects the first of them, unless lp_leaking_cylinders or hp_leaking_cylinders says otherwise or the stage already leaks. The outputs may be the same structures as the inputs.", "common practice", parameters_freeair_fault_apply, statuses_freeair_fault_apply, loop_freeair_fault_apply, 6u, 6u, FREEAIR_CAUTION_RELIEF_VALVE},
    {"freeair_cycle_point", "cycle", "Operating point of a machine against a receiver at constant pressure.", "mass and energy balances dm/dt = sum m', dU/dt = sum m' h - Q - p dV/dt of each volume over the crank angle, isentropic nozzles, quasi-static valves, wall heat Nu = a Re^b, integrated with an L-stable pair of order 4(3) to periodicity by Newton's method. At most 1000 revolutions, usually 6 to 12.", "Annand, Heat transfer in the cylinders of reciprocating internal combustion engines, Proc. IMechE 177 (1963), form of the wall heat law; the balances are common practice", parameters_freeair_cycle_point, statuses_freeair_cycle_point, loop_freeair_cycle_point, 6u, 7u, FREEAIR_CAUTION_HOT},
    {"freeair_cycle_card", "cycle", "Indicator card of one cylinder at an operating point.", "as in freeair_cycle_point; n points at equal crank angles from the top dead centre of the first cylinder, so that point i is at i/n of a revolution.", "common practice", parameters_freeair_cycle_card, statuses_freeair_cycle_card, loop_freeair_cycle_card, 10u, 8u, 0},
    {"freeair_prediction_pumpup", "prediction", "Pump-up of the receiver: the curve and what becomes of the run.", "dm/dt = delivery - leak - demand; dU/dt = enthalpy in - enthalpy out - UA (p/p_a)^(2/3) (T - Tw); C dTw/dt = the same heat - UA_wall (Tw - T_ambient); U = p V / (k - 1). Demand fades over the last 2 % above ambient pressure. Points lie at equal times from start to end of the run.", "common practice", parameters_freeair_prediction_pumpup, statuses_freeair_prediction_pumpup, loop_freeair_prediction_pumpup, 9u, 7u, FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_RELIEF_VALVE},
    {"freeair_prediction_times", "prediction", "Times at which the receiver gauge passes given readings.", "as freeair_prediction_pumpup, read off at pressures instead of times.", "common practice", parameters_freeair_prediction_times, statuses_freeair_prediction_times, loop_freeair_prediction_times, 7u, 7u, 0},
    {"freeair_prediction_level_off", "prediction", "Receiver pressure at which a machine levels off: delivery equals leaks and demand.", "root of delivery - leak - demand over receiver pressure with gas at ambient temperature, by bracketing; delivery below 5e-5 of the displacement counts as none.", "common practice", parameters_freeair_prediction_level_off, statuses_freeair_prediction_level_off, loop_freeair_prediction_level_off, 4u, 7u, FREEAIR_CAUTION_RELIEF_VALVE},
    {"freeair_prediction_leak_down", "prediction", "Fall of the receiver pressure after the machine stops.", "the receiver alone, as in freeair_prediction_pumpup; gas leaves through the leak of the check valve to the vented discharge line (if with_check_valve) and through the downstream leak (if with_downstream).", "common practice", parameters_freeair_prediction_leak_down, statuses_freeair_prediction_leak_down, loop_freeair_prediction_leak_down, 11u, 5u, FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_rating_complete", "rating", "Completes a description so that it meets its rated delivery.", "one unknown is adjusted until freeair_cycle_point at rated_pa delivers rated_delivery_m3_s within 0.1 % of displacement: the speed if it is not given, else the bores if lp_bore_m is not given (hp_bore_m follows by its default), else, as far as they are not given and as far as they must go, first the clearances (0.4 to 2.5 times their defaults), then the valve areas (0.35 to 2 times), then the suction heating (0 to 4 times). Everything else takes its default. Without a rating the defaults alone are filled in.", "common practice", parameters_freeair_rating_complete, statuses_freeair_rating_complete, loop_freeair_rating_complete, 5u, 7u, 0},
    {"freeair_pumpup_analyse", "pumpup", "Delivery from two pressures and the time between them.", "net mass of dry air = V/R ((p2 - e2)/T2 - (p1 - e1)/T1), delivery = mass R T_a / ((p_a - e_a) t). The vapour pressure is e_a = humidity e_s(T_a) outside and e_s min(1, humidity p/p_a) in the receiver. A temperature that is not given comes from the lumped model of the receiver: an inflow w = w0 (1 - fall x), x = (p - p_a) / (p2 - p_a), is found that makes the pressure rise from p1 to p2 in this time (to 1e-10; the time steps leave 1e-9). Air drawn off or leaking away during the run is missing from the result: it is the net flow. Uncertainty by first-order propagation, each input moved up and down by its standard uncertainty (half the difference), inputs taken as independent.", "JCGM 100:2008, 5.1.3 note 2; Bureau of Energy Efficiency (India), Energy Performance Assessment, Compressors, capacity by filling a receiver (from memory)", parameters_freeair_pumpup_analyse, statuses_freeair_pumpup_analyse, loop_freeair_pumpup_analyse, 2u, 7u, FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_RELIEF_VALVE},
    {"freeair_pumpup_analyse_table", "pumpup", "Delivery from a table of times and pressures, or from a stretch of a log.", "as freeair_pumpup_analyse, with the starting pressure, the inflow, its fall with pressure and a bend in that fitted to all readings by weighted least squares (Huber's weights from eight readings on). fall and a bend of 0 +- 0.05 are what is expected beforehand; readings that tell more prevail. Two rows give what freeair_pumpup_analyse gives. p_start_pa, p_end_pa and duration_s of the test are not used.", "JCGM 100:2008, 5.1; P. J. Huber, Robust Statistics, chapter 7 (weights)", parameters_freeair_pumpup_analyse_table, statuses_freeair_pumpup_analyse_table, loop_freeair_pumpup_analyse_table, 5u, 8u, FREEAIR_CAUTION_STORED_ENERGY | FREEAIR_CAUTION_RELIEF_VALVE},
    {"freeair_expectation_of_run", "expectation", "Time and delivery to expect of a pump-up.", "q(p) = speed_ratio rated_m3_s eta(p/p_a) / eta(rated_pa / rated_ambient_pa), or speed_ratio swept_m3 speed_rev_s induction eta(p/p_a); with that inflow the lumped receiver of the pumpup topic is integrated over pressure (fourth-order Runge-Kutta, relative error below 1e-7). Uncertainty as in freeair_pumpup_analyse.", "common practice; volumetric efficiency with clearance: any textbook of thermodynamics, as Rogers and Mayhew, Engineering Thermodynamics, reciprocating compressors", parameters_freeair_expectation_of_run, statuses_freeair_expectation_of_run, loop_freeair_expectation_of_run, 3u, 6u, FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_expectation_times", "expectation", "Times at which pressures are to be expected.", "as freeair_expectation_of_run, one run through all pressures.", "common practice", parameters_freeair_expectation_times, statuses_freeair_expectation_times, loop_freeair_expectation_times, 6u, 7u, 0},
    {"freeair_expectation_compare", "expectation", "What was found over what was to be expected, and whether that will do.", "ratio = found / expected, relative uncertainties added in squares; freeair_verdict_decide() on ratio >= required_ratio. FAILS means short.", "JCGM 100:2008, 5.1.6; JCGM 106:2012, 8.3", parameters_freeair_expectation_compare, statuses_freeair_expectation_compare, loop_freeair_expectation_compare, 9u, 3u, 0},
    {"freeair_pumpup_curve_shape_from_readings", "pumpup_curve", "Shape of a pump-up curve from its readings.", "p = p0 + s0 (1 - exp(-b t)) / b, which solves dp/dt = s0 - b (p - p0); fitted by least squares (Gauss-Newton, at most 100 iterations, Huber's weights from eight readings on). Level-off p0 + s0 / b for b > 2 u(b). Early and late slopes are those of Theil and Sen over the first and last third.", "common practice; algebra", parameters_freeair_pumpup_curve_shape_from_readings, statuses_freeair_pumpup_curve_shape_from_readings, loop_freeair_pumpup_curve_shape_from_readings, 5u, 6u, 0},
    {"freeair_pressure_log_segment", "pressure_log", "Cuts a log into phases.", "where the state is known, runs of it are the phases. Elsewhere a pressure that turns by at least band_pa has turned: it rises while loaded; it falls while idle, unless it turned well below the cut-out and falls faster than other idle phases, rises again and again within the fall, or falls well below the cut-in: then it is loaded and more is drawn than delivered. Less movement than that is loaded when the pressure rises repeatedly faster than settled gas warms (2e-5 of it per second), else unknown. A standstill of frozen_s is frozen when the state changed during it, or it is the whole log of ten readings or more; and, where half the readings or more differ from the one before and chance makes it as long less than once in a million, also when the pressure moved on both sides of it.", "H. Theil, A rank-invariant method of linear and polynomial regression analysis, 1950; P. K. Sen, Estimates of the regression coefficient based on Kendall's tau, 1968 (slopes); common practice (phases)", parameters_freeair_pressure_log_segment, statuses_freeair_pressure_log_segment, loop_freeair_pressure_log_segment, 9u, 6u, 0},
    {"freeair_pressure_log_state_from_current", "pressure_log", "State from the motor current.", "STOPPED below the first level, LOADED from the second up, UNLOADED between them; UNKNOWN where the current is NaN, and between the levels and above them when the second is not given.", "common practice", parameters_freeair_pressure_log_state_from_current, statuses_freeair_pressure_log_state_from_current, loop_freeair_pressure_log_state_from_current, 5u, 3u, 0},
    {"freeair_pressure_log_current_levels", "pressure_log", "Levels that part the motor current of a log into stopped, unloaded and loaded.", "stopped below 15 % of the current that 5 % of the readings exceed; above that the level that leaves the least variance within two classes (Otsu), taken when their means lie more than 4 standard deviations within the classes and a fifth apart, else NaN: then only one running level was seen.", "N. Otsu, A threshold selection method from gray-level histograms, IEEE Trans. SMC 9 (1979) 62", parameters_freeair_pressure_log_current_levels, statuses_freeair_pressure_log_current_levels, loop_freeair_pressure_log_current_levels, 4u, 4u, 0},
    {"freeair_pressure_log_state_from_switch", "pressure_log", "State from a switch or contact.", "one state above a half, another below; UNKNOWN where the signal is NaN. A solenoid that loads: LOADED and IDLE; a valve that shuts the intake: IDLE and LOADED; a motor contactor: UNKNOWN and STOPPED.", "definition", parameters_freeair_pressure_log_state_from_switch, statuses_freeair_pressure_log_state_from_switch, loop_freeair_pressure_log_state_from_switch, 5u, 3u, 0},
    {"freeair_duty_from_phases", "duty", "Sums up the phases of a log.", "draw_share = sum of loaded times / sum of cycle times over complete cycles; its uncertainty is the scatter from cycle to cycle and that of the instants of loading and unloading, whose errors are taken as alike in all. Without a complete cycle it is slope_share = s_i / (s_l / 1.25 + s_i), s_l the slope loaded, s_i the fall idle; the gas heats while it is loaded, and 1.25 +- 0.15 is how much steeper that makes s_l (lumped model of the receiver, band from cut-in to cut-out). Where the machine never cuts out it is 1, without an uncertainty. Never cutting out: loaded for 95 % of at least five minutes, no cut-out seen, and the rise over a time as long as the last loaded phase, at 95 % confidence, less than what is missing to cut_out_pa, or band_pa when that is not given.", "common practice: leakage = capacity T / (T + t), T loaded, t unloaded, no use; algebra", parameters_freeair_duty_from_phases, statuses_freeair_duty_from_phases, loop_freeair_duty_from_phases, 5u, 5u, 0},
    {"freeair_outlook_readings", "outlook", "Times and operating points at which the receiver gauge passes given readings.", "the times are those of freeair_prediction_times; the operating points those of freeair_cycle_point, every quantity interpolated between the nodes of the run by a cubic over the square root of pressure. With seven nodes the interpolation adds less than 0.5 % to flows, pressures and power of a sound machine. Above the pressure that the machine reaches, the point is that at the highest pressure it reaches.", "common practice", parameters_freeair_outlook_readings, statuses_freeair_outlook_readings, loop_freeair_outlook_readings, 9u, 7u, 0},
    {"freeair_evidence_find", "evidence", "Code of an entry by its name.", "table look-up; case matters.", "definition", parameters_freeair_evidence_find, statuses_freeair_evidence_find, loop_freeair_evidence_find, 3u, 4u, 0},
    {"freeair_evidence_readings_get", "evidence_readings", "One reading and its uncertainty by code, so that a program can loop over them.", "look-up; NaN where not taken or not given.", "definition", parameters_freeair_evidence_readings_get, statuses_freeair_evidence_readings_get, loop_freeair_evidence_readings_get, 4u, 5u, 0},
    {"freeair_evidence_readings_check", "evidence_readings", "Whether every reading is in its documented range.", "the ranges documented at the fields; NaN passes.", "definition", parameters_freeair_evidence_readings_check, statuses_freeair_evidence_readings_check, loop_freeair_evidence_readings_check, 3u, 4u, 0},
    {"freeair_likelihood_prior", "likelihood", "Probability of a cause before any evidence, at a machine someone complains of.", "table; the causes together make 1.", "common practice", parameters_freeair_likelihood_prior, statuses_freeair_likelihood_prior, loop_freeair_likelihood_prior, 2u, 3u, 0},
    {"freeair_likelihood_size", "likelihood", "Typical size of a fault and what it costs.", "size y has the density y exp(-y/size) / size^2 before any evidence, mean 2 size. The user loses the share 1 - exp(-cost y) of the delivery.", "common practice", parameters_freeair_likelihood_size, statuses_freeair_likelihood_size, loop_freeair_likelihood_size, 4u, 3u, 0},
    {"freeair_likelihood_observation", "likelihood", "How often an observation is made when a cause is present, and when none of its causes is.", "table. For a pair that is not listed the hit rate is the false-alarm rate. For something else it is the mean of the false-alarm rate and 0.3.", "common practice", parameters_freeair_likelihood_observation, statuses_freeair_likelihood_observation, loop_freeair_likelihood_observation, 5u, 3u, 0},
    {"freeair_likelihood_reading", "likelihood", "How a reading's deviation moves with the size of a fault.", "deviation = slope y, held within -limit to limit, with a standard uncertainty of spread times its magnitude. Slope 0 for a pair not listed.", "common practice", parameters_freeair_likelihood_reading, statuses_freeair_likelihood_reading, loop_freeair_likelihood_reading, 6u, 3u, 0},
    {"freeair_likelihood_spread", "likelihood", "Scale of a reading's deviation and the spreads used where none is given.", "table. Spreads are in the reading's scale.", "common practice", parameters_freeair_likelihood_spread, statuses_freeair_likelihood_spread, loop_freeair_likelihood_spread, 7u, 3u, 0},
    {"freeair_likelihood_deviation", "likelihood", "Deviation of a reading from its expected value, and the standard uncertainty of that deviation.", "by the reading's scale ln(found / expected), found - expected, or (found - expected) / reference; the uncertainties add as squares, those of a logarithm relative to their values. Not less than a tenth of the spread used where none is given. On a logarithm, found and expected must be at least 1e-12.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2", parameters_freeair_likelihood_deviation, statuses_freeair_likelihood_deviation, loop_freeair_likelihood_deviation, 8u, 5u, 0},
    {"freeair_likelihood_level_off", "likelihood", "Pressure at which a machine with a cause levels off.", "with probability rate it levels off below cut-out, at a gauge pressure whose logarithm is normal about that of centre_pa with standard deviation spread.", "common practice", parameters_freeair_likelihood_level_off, statuses_freeair_likelihood_level_off, loop_freeair_likelihood_level_off, 4u, 3u, 0},
    {"freeair_likelihood_density", "likelihood", "Density of a standardised residual, with tails that forgive a misread instrument.", "Student's t with 7 degrees of freedom, in units of its scale: density = Gamma(4) / (Gamma(7/2) sqrt(7 pi)) (1 + z^2/7)^-4; almost normal near the centre, some 7e9 times the normal density eight scales out.", "Lange, Little, Taylor, Robust statistical modeling using the t distribution, Journal of the American Statistical Association 84 (1989) 881", parameters_freeair_likelihood_density, statuses_freeair_likelihood_density, loop_freeair_likelihood_density, 2u, 3u, 0},
    {"freeair_likelihood_update", "likelihood", "Probability of a cause after one observation.", "Bayes' theorem, p = prior h / (prior h + (1 - prior) f) with h, f the probabilities of the answer with and without the cause.", "Gelman et al., Bayesian Data Analysis, 3rd edition, section 1.3", parameters_freeair_likelihood_update, statuses_freeair_likelihood_update, loop_freeair_likelihood_update, 5u, 4u, 0},
    {"freeair_likelihood_information", "likelihood", "Information that one yes-or-no observation is expected to bring about one cause.", "mutual information I = H(q) - prior H(hit) - (1 - prior) H(false_alarm), q = prior hit + (1 - prior) false_alarm, H(x) = -x log2 x - (1 - x) log2(1 - x).", "Cover, Thomas, Elements of Information Theory, 2nd edition, section 2.4", parameters_freeair_likelihood_information, statuses_freeair_likelihood_information, loop_freeair_likelihood_information, 4u, 3u, 0},
    {"freeair_diagnosis_subject_cause", "diagnosis_subject", "How much of a cause's prior probability is left on this machine.", "0 for what it cannot have: faults of the second stage, the intercooler and its relief valve on a single stage; a gasket between cylinders with separate heads or one cylinder; belt and pulley with direct drive; capacitors with three phases; anything electrical with an engine. 2 for the gasket between cylinders under a shared head. 1 for all else, and where nothing is said.", "common practice", parameters_freeair_diagnosis_subject_cause, statuses_freeair_diagnosis_subject_cause, loop_freeair_diagnosis_subject_cause, 3u, 5u, 0},
    {"freeair_diagnosis_subject_reading", "diagnosis_subject", "Whether this machine has what a reading is read from.", "no interstage pressure, second-stage temperature, intercooler or its relief valve on a single stage; no belt with direct drive; no capacitors with three phases; no supply with an engine.", "common practice", parameters_freeair_diagnosis_subject_reading, statuses_freeair_diagnosis_subject_reading, loop_freeair_diagnosis_subject_reading, 3u, 5u, 0},
    {"freeair_diagnosis_expectation_from_machine", "diagnosis_expectation", "Expected readings of a described machine at a site.", "the crank-angle model, sound as described. Delivery and time from empty by freeair_prediction_pumpup, soaked; time from cut-in drawn down just before; interstage pressure (u 10 %), discharge and cooler temperatures (u 15 K) and speeds by freeair_cycle_point at receiver_pa; the filter drop from the mean pressure behind it; cut-out, relief setting, rated voltage and site as described. The motor is taken at its rated voltage: low voltage is a cause, not a site. An expectation that would rest on a mere default of the description is left NaN: times and delivery without receiver_m3 and cut_out_pa, the time from cut-in without cut_in_pa, motor speed without motor_synchronous_rev_s, volts without motor_rated_v, relief without relief_set_pa. Uncertainties that are NaN take the spreads of freeair_likelihood_spread. When the nameplate has a rating, call freeair_rating_complete first.", "common practice", parameters_freeair_diagnosis_expectation_from_machine, statuses_freeair_diagnosis_expectation_from_machine, loop_freeair_diagnosis_expectation_from_machine, 5u, 7u, 0},
    {"freeair_diagnosis_finding_compare", "diagnosis_finding", "Compares readings with their expected values.", "freeair_likelihood_deviation for each reading taken. Shares are of the expected (else the found) delivery for leaks, of the gauge pressure at cut-out for the gauge difference, of the barometric pressure for the filter drop, of the receiver for water. Expectations that err together count once: with k readings of one pump-up test, of the two discharge temperatures, or of current and power, the variance of each expectation is multiplied by k. Where ambient temperature or barometer differ from those of the expectation, the expectations of the pump-up test, the interstage pressure and the temperatures are wider by what that could move them.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2 and 5.2.2", parameters_freeair_diagnosis_finding_compare, statuses_freeair_diagnosis_finding_compare, loop_freeair_diagnosis_finding_compare, 7u, 5u, 0},
    {"freeair_diagnosis_finding_value", "diagnosis_finding", "Value of a reading that deviates from its expected value by so much.", "the inverse of freeair_likelihood_deviation.", "algebra", parameters_freeair_diagnosis_finding_value, statuses_freeair_diagnosis_finding_value, loop_freeair_diagnosis_finding_value, 5u, 5u, 0},
    {"freeair_diagnosis_check_effort", "diagnosis_check", "What a check costs and what must be said beside it.", "table.", "common practice", parameters_freeair_diagnosis_check_effort, statuses_freeair_diagnosis_check_effort, loop_freeair_diagnosis_check_effort, 4u, 3u, 0},
    {"freeair_diagnosis_check_rank", "diagnosis_check", "Ranks the checks not yet made by what they are expected to tell for their effort.", "information is the mutual information of the causes, weighted by their probabilities, and the outcomes that the check would bring: answers yes or no, readings in five classes that part at 1 and 3 standard deviations either side of the expectation. Outcomes are taken as independent given the cause, up to 160 combinations of the most telling ones. Of one pump-up test only the delivery is counted, and only observations that some cause in question brings. Checks come in descending information for each second of work; checks that tell nothing are left out. Pass the rows of one group alone to learn what splits it.", "Lindley, On a measure of the information provided by an experiment, Annals of Mathematical Statistics 27 (1956) 986", parameters_freeair_diagnosis_check_rank, statuses_freeair_diagnosis_check_rank, loop_freeair_diagnosis_check_rank, 14u, 7u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_ROTATING},
    {"freeair_diagnosis_rank", "diagnosis", "Ranks the causes of what was found.", "hypotheses are a sound machine, each cause alone, each pair of faults, and something else. Each has its prior; its likelihood is the product of the probabilities of the answers and of the densities of the readings' deviations (freeair_likelihood_density) about what freeair_likelihood_reading predicts, summed over the size of each fault. Pairs: deviations add, and answers come from either fault (noisy or), the smaller rate if one of them suppresses it. Deviations are those of freeair_diagnosis_finding_compare. A reason is the log-odds of a cause with all evidence less those without that item, held within 27.6 (a million million to one). A reading contradicts when, by the distribution that all other evidence and the listed causes predict for it, it lies beyond options.contradiction normal standard deviations. Causes whose likelihoods are within a factor of 3 of the most probable one of their group are not told apart.", "Gelman et al., Bayesian Data Analysis, 3rd edition, chapter 1; rates from common practice", parameters_freeair_diagnosis_rank, statuses_freeair_diagnosis_rank, loop_freeair_diagnosis_rank, 22u, 8u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_inference_rank", "inference", "Ranks the causes of what was found on a described machine.", "hypotheses are a sound machine, each cause alone, each pair of faults, and something else, with the priors and answers of freeair_diagnosis_rank. A fault of size y (prior y exp(-y/size), freeair_likelihood_size) shows what freeair_fault_apply and the crank-angle model make of it: operating points at four receiver pressures and up to four severities are interpolated, and the receiver is run again for each size. The readings together have Student's t distribution of 12 degrees of freedom about that; its covariance is of the noise, of the scatter through the model's derivatives about the sound machine, and of a relative error of the shift that the fault makes. A machine with rated_delivery_m3_s is one that meets its rating within its tolerance. One reading and one answer in fifty is wrong. Shifts of two faults add. Readings that the model does not have move as freeair_likelihood_reading says.", "Gelman et al., Bayesian Data Analysis, 3rd edition, chapters 1 and 4; rates and scatter from common practice", parameters_freeair_inference_rank, statuses_freeair_inference_rank, loop_freeair_inference_rank, 36u, 9u, FREEAIR_CAUTION_ISOLATE | FREEAIR_CAUTION_DEPRESSURISE | FREEAIR_CAUTION_STORED_ENERGY},
    {"freeair_uncertainty_propagate", "uncertainty", "Results of a function and their standard uncertainties.", "u_y^2 = sum_i sum_j c_i c_j u_i u_j r_ij, c_i = dy/dx_i by differences: steps from u_i (1e-3 of x_i where that is 0, never below 1e-6 of x_i) downwards, extrapolated to none (Ridders), central where the range has room on both sides, else one-sided. Exact for a function that is straight over a few u; see the second order, or Monte Carlo.", "JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM), 5.1 and 5.2", parameters_freeair_uncertainty_propagate, statuses_freeair_uncertainty_propagate, loop_freeair_uncertainty_propagate, 11u, 13u, 0},
    {"freeair_uncertainty_budget", "uncertainty", "What each input contributes to the uncertainty of one result.", "contribution_i = c_i u_i; share_i = contribution_i sum_j r_ij contribution_j / u_y^2. The shares add up to 1; one can be negative where correlation makes inputs compensate.", "JCGM 100:2008, GUM, 5.2.2, equation 16", parameters_freeair_uncertainty_budget, statuses_freeair_uncertainty_budget, loop_freeair_uncertainty_budget, 8u, 4u, 0},
    {"freeair_uncertainty_covariance", "uncertainty", "Covariance and correlation of several results.", "V = C U C', C the sensitivities, U_ij = u_i u_j r_ij.", "JCGM 100:2008, GUM, H.2.3; JCGM 102:2011, Extension to any number of output quantities, 6.2", parameters_freeair_uncertainty_covariance, statuses_freeair_uncertainty_covariance, loop_freeair_uncertainty_covariance, 9u, 4u, 0},
    {"freeair_uncertainty_second_order", "uncertainty", "Second order: uncertainty of a model from its derivatives up to the third.", "u_y^2 = sum_i f_i^2 u_i^2 + sum_i sum_j (f_ij^2 / 2 + f_i f_ijj) u_i^2 u_j^2; the expected value is shifted by sum_i f_ii u_i^2 / 2 from the value at the estimates. Inputs normal and independent.", "JCGM 100:2008, GUM, 5.1.2, note, and H.1.7", parameters_freeair_uncertainty_second_order, statuses_freeair_uncertainty_second_order, loop_freeair_uncertainty_second_order, 8u, 5u, 0},
    {"freeair_uncertainty_propagate_second_order", "uncertainty", "Second order: results of a function with their uncertainties and what they are shifted by.", "as freeair_uncertainty_second_order, derivatives by differences over u_i and half of it, less where the range has no room for twice u_i to either side. Inputs normal and independent.", "JCGM 100:2008, GUM, 5.1.2, note, and H.1.7", parameters_freeair_uncertainty_propagate_second_order, statuses_freeair_uncertainty_propagate_second_order, loop_freeair_uncertainty_propagate_second_order, 8u, 13u, 0},
    {"freeair_monte_carlo_interval", "monte_carlo", "Coverage interval of a result from its trials.", "with the m values in order and q = p m to the nearest whole number: symmetric from the value r to r + q, r = (m - q)/2; the shortest of all r. The standard error of an end is that of the order statistic: half the distance of the values sqrt(m F (1 - F)) places to either side, F the share of the values below.", "JCGM 101:2008, 7.7", parameters_freeair_monte_carlo_interval, statuses_freeair_monte_carlo_interval, loop_freeair_monte_carlo_interval, 9u, 4u, 0},
    {"freeair_monte_carlo_draw", "monte_carlo", "Random values of inputs, for a model of the caller's own.", "U1, U2 from the generator for each trial and input. Normal: sqrt(-2 ln U1) cos(2 pi U2) (Box and Muller); Student: sqrt(nu (U1^(-2/nu) - 1)) cos(2 pi U2) (Bailey); rectangular: 2 U1 - 1; triangular: U1 - U2; arcsine: cos(2 pi U1); each stretched to the standard deviation u. Correlated normals by the Cholesky factor of the matrix.", "JCGM 101:2008, Evaluation of measurement data - Propagation of distributions using a Monte Carlo method, 6.4 and C; Salmon, Moraes, Dror and Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11 (2011); Bailey, Mathematics of Computation 62 (1994) 779", parameters_freeair_monte_carlo_draw, statuses_freeair_monte_carlo_draw, loop_freeair_monte_carlo_draw, 11u, 5u, 0},
    {"freeair_monte_carlo_propagate", "monte_carlo", "One result of a function for random values of its inputs.", "y of each trial, in the order of the trials; NaN where the function has no value. An input whose u is 0 keeps its value, NaN when not given; its distribution does not matter.", "JCGM 101:2008, 7.4", parameters_freeair_monte_carlo_propagate, statuses_freeair_monte_carlo_propagate, loop_freeair_monte_carlo_propagate, 14u, 8u, 0},
    {"freeair_monte_carlo_summary", "monte_carlo", "Mean and standard uncertainty of a result from its trials, with their standard errors.", "mean and standard deviation of the values; the errors from the number of trials, that of the uncertainty from the fourth moment: u_error = u sqrt((m4/u^4 - 1) / (4 n)). Quadruple the trials to halve them.", "JCGM 101:2008, 7.6", parameters_freeair_monte_carlo_summary, statuses_freeair_monte_carlo_summary, loop_freeair_monte_carlo_summary, 7u, 4u, 0},
    {"freeair_monte_carlo_tolerance", "monte_carlo", "Numerical tolerance of an uncertainty, to judge whether trials were enough or the law of propagation is.", "u = c 10^l with c a whole number of so many digits; tolerance = 10^l / 2. Two intervals agree whose ends are no further apart than this.", "JCGM 101:2008, 7.9.2 and 8.1", parameters_freeair_monte_carlo_tolerance, statuses_freeair_monte_carlo_tolerance, loop_freeair_monte_carlo_tolerance, 3u, 3u, 0},
};

const size_t freeair__n_functions = sizeof freeair__functions / sizeof freeair__functions[0];

const freeair_structure *const freeair__structures[] = {
    &structure_freeair_dry_air_properties,
    &structure_freeair_enhancement_coefficients,
    &structure_freeair_moist_air_properties,
    &structure_freeair_capacitor_motor_windings,
    &structure_freeair_capacitor_motor_performance,
    &structure_freeair_blowdown_vessel,
    &structure_freeair_delivery_stage,
    &structure_freeair_delivery_result,
    &structure_freeair_machine,
    &structure_freeair_machine_site,
    &structure_freeair_cycle_result,
    &structure_freeair_prediction_run,
    &structure_freeair_prediction_result,
    &structure_freeair_pumpup_test,
    &structure_freeair_pumpup_result,
    &structure_freeair_expectation_machine,
    &structure_freeair_expectation_result,
    &structure_freeair_pumpup_curve_shape,
    &structure_freeair_pressure_log_options,
    &structure_freeair_pressure_log_phase,
    &structure_freeair_duty_summary,
    &structure_freeair_evidence_readings,
    &structure_freeair_diagnosis_subject,
    &structure_freeair_diagnosis_finding,
    &structure_freeair_diagnosis_cause,
    &structure_freeair_diagnosis_check,
    &structure_freeair_diagnosis_options,
    &structure_freeair_diagnosis_reason,
    &structure_freeair_diagnosis_summary,
    &structure_freeair_inference_visit,
    &structure_freeair_inference_scatter,
    &structure_freeair_inference_effect,
};

const size_t freeair__n_structures = 32;

const freeair__constant freeair__constants[] = {
    {"FREEAIR_OK", "freeair_status", "Computed.", FREEAIR_OK},
    {"FREEAIR_WARN_EXTRAPOLATED", "freeair_status", "Computed, but outside the range the correlation was fitted to.", FREEAIR_WARN_EXTRAPOLATED},
    {"FREEAIR_WARN_TRANSITION", "freeair_status", "Computed, but between laminar and turbulent flow, where no formula is sure.", FREEAIR_WARN_TRANSITION},
    {"FREEAIR_WARN_INCONSISTENT", "freeair_status", "Computed, but the readings contradict one another.", FREEAIR_WARN_INCONSISTENT},
    {"FREEAIR_WARN_TRUNCATED", "freeair_status", "Computed, but the caller's array was too short to hold every result.", FREEAIR_WARN_TRUNCATED},
    {"FREEAIR_WARN_LIMIT", "freeair_status", "Computed, but a recommended limit of the trade or of a standard is exceeded.", FREEAIR_WARN_LIMIT},
    {"FREEAIR_ERR_NULL", "freeair_status", "A required pointer is null.", FREEAIR_ERR_NULL},
    {"FREEAIR_ERR_DOMAIN", "freeair_status", "An argument is not a number, infinite or outside its documented range.", FREEAIR_ERR_DOMAIN},
    {"FREEAIR_ERR_NO_SOLUTION", "freeair_status", "The arguments are in range but no state satisfies them together.", FREEAIR_ERR_NO_SOLUTION},
    {"FREEAIR_ERR_NO_CONVERGENCE", "freeair_status", "An iteration reached its documented limit.", FREEAIR_ERR_NO_CONVERGENCE},
    {"FREEAIR_ERR_OVERFLOW", "freeair_status", "The result is not representable.", FREEAIR_ERR_OVERFLOW},
    {"FREEAIR_ERR_VERSION", "freeair_status", "A structure's size is not one this library knows.", FREEAIR_ERR_VERSION},
    {"FREEAIR_ERR_DATA", "freeair_status", "Too few usable data points.", FREEAIR_ERR_DATA},
    {"FREEAIR_ERR_NOT_FOUND", "freeair_status", "No entry has this name.", FREEAIR_ERR_NOT_FOUND},
    {"FREEAIR_ERR_DIMENSION", "freeair_status", "The unit measures another kind of quantity.", FREEAIR_ERR_DIMENSION},
    {"FREEAIR_ERR_UNSUPPORTED", "freeair_status", "The function cannot be called in this way.", FREEAIR_ERR_UNSUPPORTED},
    {"FREEAIR_CAUTION_ISOLATE", "freeair_caution", "Isolate, lock out and tag out before touching the machine.", FREEAIR_CAUTION_ISOLATE},
    {"FREEAIR_CAUTION_DEPRESSURISE", "freeair_caution", "Depressurise to zero, on a gauge that is trusted, before opening.", FREEAIR_CAUTION_DEPRESSURISE},
    {"FREEAIR_CAUTION_STORED_ENERGY", "freeair_caution", "A receiver under pressure stores energy like an explosive.", FREEAIR_CAUTION_STORED_ENERGY},
    {"FREEAIR_CAUTION_RELIEF_VALVE", "freeair_caution", "Never plug, reset or weaken a relief valve.", FREEAIR_CAUTION_RELIEF_VALVE},
    {"FREEAIR_CAUTION_ROTATING", "freeair_caution", "Never run with the guard off; belts and flywheels seize hands.", FREEAIR_CAUTION_ROTATING},
    {"FREEAIR_CAUTION_VESSEL", "freeair_caution", "Vessels are judged by an inspector under local codes, not by calculation.", FREEAIR_CAUTION_VESSEL},
    {"FREEAIR_CAUTION_HOT", "freeair_caution", "Discharge parts burn; let them cool.", FREEAIR_CAUTION_HOT},
    {"FREEAIR_CAUTION_CAPACITOR", "freeair_caution", "A capacitor stays charged after the power is off.", FREEAIR_CAUTION_CAPACITOR},
    {"FREEAIR_CAUTION_LIVE", "freeair_caution", "Live electrical work is for qualified people under local rules.", FREEAIR_CAUTION_LIVE},
    {"FREEAIR_CAUTION_OIL_MIST", "freeair_caution", "Oil mist and hot carbon can ignite at high discharge temperature.", FREEAIR_CAUTION_OIL_MIST},
    {"FREEAIR_CAUTION_LIFTING", "freeair_caution", "Heads and motors are heavy; lift with help or tackle.", FREEAIR_CAUTION_LIFTING},
    {"FREEAIR_CAUTION_PROTECTION", "freeair_caution", "Wear hearing, eye, hand and foot protection.", FREEAIR_CAUTION_PROTECTION},
    {"FREEAIR_CAUTION_BREATHING", "freeair_caution", "Breathing air is governed by its own rules.", FREEAIR_CAUTION_BREATHING},
    {"FREEAIR_CAUTION_BLOWING", "freeair_caution", "Blow guns and hoses injure; limit their pressure as local rules say.", FREEAIR_CAUTION_BLOWING},
    {"FREEAIR_REFERENCE_ISO_1217", "freeair_reference_state", "1 bar, 20 degC, dry: standard inlet of displacement compressors.", FREEAIR_REFERENCE_ISO_1217},
    {"FREEAIR_REFERENCE_ISO_8778", "freeair_reference_state", "1 bar, 20 degC, 65 %: standard reference atmosphere of pneumatics, ANR.", FREEAIR_REFERENCE_ISO_8778},
    {"FREEAIR_REFERENCE_DIN_1343", "freeair_reference_state", "1 atm, 0 degC, dry: normal state, as in Nm3.", FREEAIR_REFERENCE_DIN_1343},
    {"FREEAIR_REFERENCE_ISO_13443", "freeair_reference_state", "1 atm, 15 degC, dry: standard state of the gas trade, as in Sm3.", FREEAIR_REFERENCE_ISO_13443},
    {"FREEAIR_REFERENCE_ISO_2533", "freeair_reference_state", "1 atm, 15 degC, dry: standard atmosphere at sea level.", FREEAIR_REFERENCE_ISO_2533},
    {"FREEAIR_REFERENCE_SCFM_60F", "freeair_reference_state", "14.696 psia, 60 degF, dry: standard cubic foot of the gas trade.", FREEAIR_REFERENCE_SCFM_60F},
    {"FREEAIR_REFERENCE_SCFM_68F", "freeair_reference_state", "14.5 psia, 68 degF, dry: standard cubic foot of the compressor trade.", FREEAIR_REFERENCE_SCFM_68F},
    {"FREEAIR_REFERENCE_SCFM_68F_36RH", "freeair_reference_state", "14.7 psia, 68 degF, 36 %: standard air of older test codes.", FREEAIR_REFERENCE_SCFM_68F_36RH},
    {"FREEAIR_REFERENCE_SCFM_70F", "freeair_reference_state", "14.696 psia, 70 degF, dry: standard cubic foot of fans and flow meters.", FREEAIR_REFERENCE_SCFM_70F},
    {"FREEAIR_REFERENCE_NTP", "freeair_reference_state", "1 atm, 20 degC, dry: normal temperature and pressure.", FREEAIR_REFERENCE_NTP},
    {"FREEAIR_REFERENCE_STP", "freeair_reference_state", "1 bar, 0 degC, dry: standard temperature and pressure since 1982.", FREEAIR_REFERENCE_STP},
    {"FREEAIR_VERDICT_CANNOT_TELL", "freeair_verdict", "Neither conformance nor non-conformance is sure enough.", FREEAIR_VERDICT_CANNOT_TELL},
    {"FREEAIR_VERDICT_MEETS", "freeair_verdict", "Conformance is sure enough.", FREEAIR_VERDICT_MEETS},
    {"FREEAIR_VERDICT_FAILS", "freeair_verdict", "Non-conformance is sure enough.", FREEAIR_VERDICT_FAILS},
    {"FREEAIR_COVERAGE_NORMAL", "freeair_coverage_distribution", "Normal, of standard deviation u.", FREEAIR_COVERAGE_NORMAL},
    {"FREEAIR_COVERAGE_RECTANGULAR", "freeair_coverage_distribution", "Anywhere within limits: data sheets, resolution of a display.", FREEAIR_COVERAGE_RECTANGULAR},
    {"FREEAIR_COVERAGE_TRIANGULAR", "freeair_coverage_distribution", "Within limits, the middle more likely.", FREEAIR_COVERAGE_TRIANGULAR},
    {"FREEAIR_COVERAGE_ARCSINE", "freeair_coverage_distribution", "Within limits, the ends more likely: what swings, such as a regulated value.", FREEAIR_COVERAGE_ARCSINE},
    {"FREEAIR_COVERAGE_STUDENT", "freeair_coverage_distribution", "Student's t scaled by u, with degrees of freedom: the mean of few readings.", FREEAIR_COVERAGE_STUDENT},
    {"FREEAIR_SATURATION_OVER_WATER", "freeair_saturation_over", "Liquid water, supercooled below 0.01 degC: the dew point.", FREEAIR_SATURATION_OVER_WATER},
    {"FREEAIR_SATURATION_OVER_ICE", "freeair_saturation_over", "Ice below 0.01 degC, liquid water above: the frost point.", FREEAIR_SATURATION_OVER_ICE},
    {"FREEAIR_ENHANCEMENT_NONE", "freeair_enhancement_model", "As if the vapour were alone: the textbooks.", FREEAIR_ENHANCEMENT_NONE},
    {"FREEAIR_ENHANCEMENT_VIRIAL", "freeair_enhancement_model", "With the factor: what really happens.", FREEAIR_ENHANCEMENT_VIRIAL},
    {"FREEAIR_NAMEPLATE_CODE_A", "freeair_nameplate_code", "Below 3.15 kVA per hp.", FREEAIR_NAMEPLATE_CODE_A},
    {"FREEAIR_NAMEPLATE_CODE_B", "freeair_nameplate_code", "From 3.15 kVA per hp.", FREEAIR_NAMEPLATE_CODE_B},
    {"FREEAIR_NAMEPLATE_CODE_C", "freeair_nameplate_code", "From 3.55 kVA per hp.", FREEAIR_NAMEPLATE_CODE_C},
    {"FREEAIR_NAMEPLATE_CODE_D", "freeair_nameplate_code", "From 4.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_D},
    {"FREEAIR_NAMEPLATE_CODE_E", "freeair_nameplate_code", "From 4.5 kVA per hp.", FREEAIR_NAMEPLATE_CODE_E},
    {"FREEAIR_NAMEPLATE_CODE_F", "freeair_nameplate_code", "From 5.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_F},
    {"FREEAIR_NAMEPLATE_CODE_G", "freeair_nameplate_code", "From 5.6 kVA per hp.", FREEAIR_NAMEPLATE_CODE_G},
    {"FREEAIR_NAMEPLATE_CODE_H", "freeair_nameplate_code", "From 6.3 kVA per hp.", FREEAIR_NAMEPLATE_CODE_H},
    {"FREEAIR_NAMEPLATE_CODE_J", "freeair_nameplate_code", "From 7.1 kVA per hp.", FREEAIR_NAMEPLATE_CODE_J},
    {"FREEAIR_NAMEPLATE_CODE_K", "freeair_nameplate_code", "From 8.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_K},
    {"FREEAIR_NAMEPLATE_CODE_L", "freeair_nameplate_code", "From 9.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_L},
    {"FREEAIR_NAMEPLATE_CODE_M", "freeair_nameplate_code", "From 10.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_M},
    {"FREEAIR_NAMEPLATE_CODE_N", "freeair_nameplate_code", "From 11.2 kVA per hp.", FREEAIR_NAMEPLATE_CODE_N},
    {"FREEAIR_NAMEPLATE_CODE_P", "freeair_nameplate_code", "From 12.5 kVA per hp.", FREEAIR_NAMEPLATE_CODE_P},
    {"FREEAIR_NAMEPLATE_CODE_R", "freeair_nameplate_code", "From 14.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_R},
    {"FREEAIR_NAMEPLATE_CODE_S", "freeair_nameplate_code", "From 16.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_S},
    {"FREEAIR_NAMEPLATE_CODE_T", "freeair_nameplate_code", "From 18.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_T},
    {"FREEAIR_NAMEPLATE_CODE_U", "freeair_nameplate_code", "From 20.0 kVA per hp.", FREEAIR_NAMEPLATE_CODE_U},
    {"FREEAIR_NAMEPLATE_CODE_V", "freeair_nameplate_code", "From 22.4 kVA per hp, without an upper end.", FREEAIR_NAMEPLATE_CODE_V},
    {"FREEAIR_NAMEPLATE_IE1", "freeair_nameplate_efficiency_class", "Standard efficiency.", FREEAIR_NAMEPLATE_IE1},
    {"FREEAIR_NAMEPLATE_IE2", "freeair_nameplate_efficiency_class", "High efficiency.", FREEAIR_NAMEPLATE_IE2},
    {"FREEAIR_NAMEPLATE_IE3", "freeair_nameplate_efficiency_class", "Premium efficiency.", FREEAIR_NAMEPLATE_IE3},
    {"FREEAIR_NAMEPLATE_IE4", "freeair_nameplate_efficiency_class", "Super premium efficiency.", FREEAIR_NAMEPLATE_IE4},
    {"FREEAIR_CAPACITOR_RUN_5", "freeair_capacitor_tolerance", "Run capacitor, plus or minus 5 percent (letter J).", FREEAIR_CAPACITOR_RUN_5},
    {"FREEAIR_CAPACITOR_RUN_6", "freeair_capacitor_tolerance", "Run capacitor, plus or minus 6 percent.", FREEAIR_CAPACITOR_RUN_6},
    {"FREEAIR_CAPACITOR_RUN_10", "freeair_capacitor_tolerance", "Run capacitor, plus or minus 10 percent (letter K).", FREEAIR_CAPACITOR_RUN_10},
    {"FREEAIR_CAPACITOR_RUN_15", "freeair_capacitor_tolerance", "Run capacitor, plus or minus 15 percent.", FREEAIR_CAPACITOR_RUN_15},
    {"FREEAIR_CAPACITOR_START_20", "freeair_capacitor_tolerance", "Start capacitor, minus 0 to plus 20 percent of the lower printed value.", FREEAIR_CAPACITOR_START_20},
    {"FREEAIR_CAPACITOR_START_23", "freeair_capacitor_tolerance", "Start capacitor, minus 0 to plus 23 percent, as 43-53 uF is.", FREEAIR_CAPACITOR_START_23},
    {"FREEAIR_FLOW_SUBSONIC", "freeair_flow_branch", "Mach number up to 1.", FREEAIR_FLOW_SUBSONIC},
    {"FREEAIR_FLOW_SUPERSONIC", "freeair_flow_branch", "Mach number from 1 upwards.", FREEAIR_FLOW_SUPERSONIC},
    {"FREEAIR_NOZZLE_SHARP_EDGED", "freeair_nozzle_opening", "Thin plate with a sharp edge.", FREEAIR_NOZZLE_SHARP_EDGED},
    {"FREEAIR_NOZZLE_WELL_ROUNDED", "freeair_nozzle_opening", "Well-rounded entrance, shaped like the contracted jet.", FREEAIR_NOZZLE_WELL_ROUNDED},
    {"FREEAIR_NOZZLE_SHORT_TUBE", "freeair_nozzle_opening", "Short cylindrical tube with a sharp inner edge.", FREEAIR_NOZZLE_SHORT_TUBE},
    {"FREEAIR_NOZZLE_ROUNDED_TUBE", "freeair_nozzle_opening", "Short cylindrical tube, inner edge rounded.", FREEAIR_NOZZLE_ROUNDED_TUBE},
    {"FREEAIR_NOZZLE_CONE", "freeair_nozzle_opening", "Converging cone.", FREEAIR_NOZZLE_CONE},
    {"FREEAIR_NOZZLE_TOROIDAL_ACCURATE", "freeair_nozzle_meter", "Toroidal throat, accurately machined.", FREEAIR_NOZZLE_TOROIDAL_ACCURATE},
    {"FREEAIR_NOZZLE_TOROIDAL_NORMAL", "freeair_nozzle_meter", "Toroidal throat, normally machined.", FREEAIR_NOZZLE_TOROIDAL_NORMAL},
    {"FREEAIR_NOZZLE_CYLINDRICAL", "freeair_nozzle_meter", "Cylindrical throat.", FREEAIR_NOZZLE_CYLINDRICAL},
    {"FREEAIR_SAFETY_UNKNOWN", "freeair_safety_hazard", "Not judged.", FREEAIR_SAFETY_UNKNOWN},
    {"FREEAIR_SAFETY_LOWER", "freeair_safety_hazard", "Not above the threshold; still able to injure.", FREEAIR_SAFETY_LOWER},
    {"FREEAIR_SAFETY_HIGH", "freeair_safety_hazard", "Above the threshold: highly hazardous.", FREEAIR_SAFETY_HIGH},
    {"FREEAIR_CONDUCTOR_COPPER", "freeair_conductor_kind", "Plain copper, classes 1 and 2 (2 from 185 mm2).", FREEAIR_CONDUCTOR_COPPER},
    {"FREEAIR_CONDUCTOR_COPPER_FLEXIBLE", "freeair_conductor_kind", "Plain copper, flexible, class 5.", FREEAIR_CONDUCTOR_COPPER_FLEXIBLE},
    {"FREEAIR_CONDUCTOR_ALUMINIUM", "freeair_conductor_kind", "Aluminium, stranded, class 2, from 10 mm2.", FREEAIR_CONDUCTOR_ALUMINIUM},
    {"FREEAIR_FASTENER_ISO", "freeair_fastener_thread", "ISO metric, coarse pitches in the table.", FREEAIR_FASTENER_ISO},
    {"FREEAIR_FASTENER_UNC", "freeair_fastener_thread", "Unified coarse.", FREEAIR_FASTENER_UNC},
    {"FREEAIR_FASTENER_UNF", "freeair_fastener_thread", "Unified fine.", FREEAIR_FASTENER_UNF},
    {"FREEAIR_FASTENER_SAE_2", "freeair_fastener_grade", "SAE J429 grade 2, no marks on the head.", FREEAIR_FASTENER_SAE_2},
    {"FREEAIR_FASTENER_SAE_5", "freeair_fastener_grade", "SAE J429 grade 5, three marks.", FREEAIR_FASTENER_SAE_5},
    {"FREEAIR_FASTENER_SAE_8", "freeair_fastener_grade", "SAE J429 grade 8, six marks.", FREEAIR_FASTENER_SAE_8},
    {"FREEAIR_FASTENER_ISO_4_6", "freeair_fastener_grade", "ISO 898-1 property class 4.6.", FREEAIR_FASTENER_ISO_4_6},
    {"FREEAIR_FASTENER_ISO_4_8", "freeair_fastener_grade", "ISO 898-1 property class 4.8.", FREEAIR_FASTENER_ISO_4_8},
    {"FREEAIR_FASTENER_ISO_5_6", "freeair_fastener_grade", "ISO 898-1 property class 5.6.", FREEAIR_FASTENER_ISO_5_6},
    {"FREEAIR_FASTENER_ISO_5_8", "freeair_fastener_grade", "ISO 898-1 property class 5.8.", FREEAIR_FASTENER_ISO_5_8},
    {"FREEAIR_FASTENER_ISO_6_8", "freeair_fastener_grade", "ISO 898-1 property class 6.8.", FREEAIR_FASTENER_ISO_6_8},
    {"FREEAIR_FASTENER_ISO_8_8", "freeair_fastener_grade", "ISO 898-1 property class 8.8.", FREEAIR_FASTENER_ISO_8_8},
    {"FREEAIR_FASTENER_ISO_9_8", "freeair_fastener_grade", "ISO 898-1 property class 9.8, to M16.", FREEAIR_FASTENER_ISO_9_8},
    {"FREEAIR_FASTENER_ISO_10_9", "freeair_fastener_grade", "ISO 898-1 property class 10.9.", FREEAIR_FASTENER_ISO_10_9},
    {"FREEAIR_FASTENER_ISO_12_9", "freeair_fastener_grade", "ISO 898-1 property class 12.9.", FREEAIR_FASTENER_ISO_12_9},
    {"FREEAIR_MACHINE_V", "freeair_machine_arrangement", "Banks at 90 degrees on one crank pin; separate heads.", FREEAIR_MACHINE_V},
    {"FREEAIR_MACHINE_SIDE_BY_SIDE", "freeair_machine_arrangement", "Cylinders in line under one head and one gasket.", FREEAIR_MACHINE_SIDE_BY_SIDE},
    {"FREEAIR_FAULT_NONE", "freeair_fault", "Nothing wrong.", FREEAIR_FAULT_NONE},
    {"FREEAIR_FAULT_INTAKE_FILTER", "freeair_fault", "Intake filter clogged: area times 0.03^s.", FREEAIR_FAULT_INTAKE_FILTER},
    {"FREEAIR_FAULT_LP_SUCTION_VALVE", "freeair_fault", "Suction valve, first stage: open area grows by s^2 up to fully open.", FREEAIR_FAULT_LP_SUCTION_VALVE},
    {"FREEAIR_FAULT_LP_DISCHARGE_VALVE", "freeair_fault", "Discharge valve, first stage: the same.", FREEAIR_FAULT_LP_DISCHARGE_VALVE},
    {"FREEAIR_FAULT_HP_SUCTION_VALVE", "freeair_fault", "Suction valve, second stage: the same.", FREEAIR_FAULT_HP_SUCTION_VALVE},
    {"FREEAIR_FAULT_HP_DISCHARGE_VALVE", "freeair_fault", "Discharge valve, second stage: the same.", FREEAIR_FAULT_HP_DISCHARGE_VALVE},
    {"FREEAIR_FAULT_GASKET_BETWEEN", "freeair_fault", "Gasket between two cylinders: s^2 / 100 of the smaller bore area opens.", FREEAIR_FAULT_GASKET_BETWEEN},
    {"FREEAIR_FAULT_LP_GASKET_OUTSIDE", "freeair_fault", "Head gasket to outside, first stage: s^2 / 100 of the bore area opens.", FREEAIR_FAULT_LP_GASKET_OUTSIDE},
    {"FREEAIR_FAULT_HP_GASKET_OUTSIDE", "freeair_fault", "Head gasket to outside, second stage: the same.", FREEAIR_FAULT_HP_GASKET_OUTSIDE},
    {"FREEAIR_FAULT_LP_RINGS", "freeair_fault", "Rings, first stage: area grows by s^2 / 200 of the bore area.", FREEAIR_FAULT_LP_RINGS},
    {"FREEAIR_FAULT_HP_RINGS", "freeair_fault", "Rings, second stage: the same.", FREEAIR_FAULT_HP_RINGS},
    {"FREEAIR_FAULT_INTERSTAGE_LEAK", "freeair_fault", "Leak between the stages: s^2 / 10 of the discharge valves of the first.", FREEAIR_FAULT_INTERSTAGE_LEAK},
    {"FREEAIR_FAULT_INTERCOOLER_FOULED", "freeair_fault", "Intercooler dirty: UA times 0.1^s, flow area times 0.3^s.", FREEAIR_FAULT_INTERCOOLER_FOULED},
    {"FREEAIR_FAULT_RELIEF_WEAK", "freeair_fault", "Interstage relief opens early: gauge set pressure times 1 - 0.95 s.", FREEAIR_FAULT_RELIEF_WEAK},
    {"FREEAIR_FAULT_UNLOADER_LEAK", "freeair_fault", "Unloader passes while loaded: s^2 times a tenth of check_valve_area_m2.", FREEAIR_FAULT_UNLOADER_LEAK},
    {"FREEAIR_FAULT_CHECK_VALVE", "freeair_fault", "Receiver check valve leaks back: open area grows by s^2 up to fully open.", FREEAIR_FAULT_CHECK_VALVE},
    {"FREEAIR_FAULT_DOWNSTREAM_LEAK", "freeair_fault", "Leak behind the pump: s^2 times the displacement at cut_out_pa.", FREEAIR_FAULT_DOWNSTREAM_LEAK},
    {"FREEAIR_FAULT_DEMAND", "freeair_fault", "Air used during the test: s times the displacement.", FREEAIR_FAULT_DEMAND},
    {"FREEAIR_FAULT_RECEIVER_WATER", "freeair_fault", "Receiver partly full of water: 0.8 s of what is not yet.", FREEAIR_FAULT_RECEIVER_WATER},
    {"FREEAIR_FAULT_BELT_SLIP", "freeair_fault", "Belt slips: remaining speed times 1 - 0.4 s.", FREEAIR_FAULT_BELT_SLIP},
    {"FREEAIR_FAULT_PULLEY", "freeair_fault", "Motor pulley too small or flywheel too large: ratio times 1 - 0.4 s.", FREEAIR_FAULT_PULLEY},
    {"FREEAIR_FAULT_LOW_VOLTAGE", "freeair_fault", "Voltage at the motor times 1 - 0.3 s.", FREEAIR_FAULT_LOW_VOLTAGE},
    {"FREEAIR_FAULT_RUN_CAPACITOR", "freeair_fault", "Run capacitor weak: motor torque at given slip times 1 - 0.6 s.", FREEAIR_FAULT_RUN_CAPACITOR},
    {"FREEAIR_FAULT_PRESSURE_SWITCH", "freeair_fault", "Switch acts late: error grows by 0.3 s of the gauge cut-out.", FREEAIR_FAULT_PRESSURE_SWITCH},
    {"FREEAIR_FAULT_GAUGE", "freeair_fault", "Receiver gauge reads high: error grows by 0.3 s of the gauge cut-out.", FREEAIR_FAULT_GAUGE},
    {"FREEAIR_PREDICTION_SOAKED", "freeair_prediction_start", "At rest until gas and wall are at ambient temperature.", FREEAIR_PREDICTION_SOAKED},
    {"FREEAIR_PREDICTION_DRAWN_DOWN", "freeair_prediction_start", "Soaked at cut-out, then drawn down at a steady rate just before.", FREEAIR_PREDICTION_DRAWN_DOWN},
    {"FREEAIR_PREDICTION_GIVEN", "freeair_prediction_start", "Temperatures are given.", FREEAIR_PREDICTION_GIVEN},
    {"FREEAIR_RATING_NOTHING", "freeair_rating_adjusted", "Nothing: the rating is met, or there is none.", FREEAIR_RATING_NOTHING},
    {"FREEAIR_RATING_SPEED", "freeair_rating_adjusted", "Speed: neither speed_rev_s nor pulley_ratio was given.", FREEAIR_RATING_SPEED},
    {"FREEAIR_RATING_BORE", "freeair_rating_adjusted", "Bores: lp_bore_m was not given.", FREEAIR_RATING_BORE},
    {"FREEAIR_RATING_CLEARANCE", "freeair_rating_adjusted", "Clearances that were not given.", FREEAIR_RATING_CLEARANCE},
    {"FREEAIR_RATING_VALVES", "freeair_rating_adjusted", "Valve areas that were not given.", FREEAIR_RATING_VALVES},
    {"FREEAIR_RATING_HEATING", "freeair_rating_adjusted", "Suction heating, which was not given.", FREEAIR_RATING_HEATING},
    {"FREEAIR_PUMPUP_UNKNOWN", "freeair_pumpup_start", "Not known: gas at ambient temperature, give or take 15 K.", FREEAIR_PUMPUP_UNKNOWN},
    {"FREEAIR_PUMPUP_SOAKED", "freeair_pumpup_start", "At rest long enough that gas and wall are at ambient temperature.", FREEAIR_PUMPUP_SOAKED},
    {"FREEAIR_PUMPUP_DRAWN_DOWN", "freeair_pumpup_start", "Soaked, then drawn down just now: the gas is cold.", FREEAIR_PUMPUP_DRAWN_DOWN},
    {"FREEAIR_PUMPUP_CYCLING", "freeair_pumpup_start", "In the middle of regular cycles of load and rest.", FREEAIR_PUMPUP_CYCLING},
    {"FREEAIR_PRESSURE_LOG_UNKNOWN", "freeair_pressure_log_kind", "The pressure does not tell; in a state channel, not known.", FREEAIR_PRESSURE_LOG_UNKNOWN},
    {"FREEAIR_PRESSURE_LOG_LOADED", "freeair_pressure_log_kind", "Air is delivered.", FREEAIR_PRESSURE_LOG_LOADED},
    {"FREEAIR_PRESSURE_LOG_UNLOADED", "freeair_pressure_log_kind", "Runs on without delivering.", FREEAIR_PRESSURE_LOG_UNLOADED},
    {"FREEAIR_PRESSURE_LOG_STOPPED", "freeair_pressure_log_kind", "Stands.", FREEAIR_PRESSURE_LOG_STOPPED},
    {"FREEAIR_PRESSURE_LOG_IDLE", "freeair_pressure_log_kind", "Does not deliver; whether it runs on or stands is not known.", FREEAIR_PRESSURE_LOG_IDLE},
    {"FREEAIR_PRESSURE_LOG_GAP", "freeair_pressure_log_kind", "No readings, or the clock was set back.", FREEAIR_PRESSURE_LOG_GAP},
    {"FREEAIR_PRESSURE_LOG_FROZEN", "freeair_pressure_log_kind", "The readings stand still where they should move.", FREEAIR_PRESSURE_LOG_FROZEN},
    {"FREEAIR_DUTY_NEVER_CUTS_OUT", "freeair_duty_finding", "Loaded throughout and not rising enough to cut out: it falls short of what is drawn.", FREEAIR_DUTY_NEVER_CUTS_OUT},
    {"FREEAIR_DUTY_NEVER_LOADS", "freeair_duty_finding", "No load in the whole log.", FREEAIR_DUTY_NEVER_LOADS},
    {"FREEAIR_DUTY_HAS_FROZEN", "freeair_duty_finding", "Readings stand still where they should move: a frozen logger.", FREEAIR_DUTY_HAS_FROZEN},
    {"FREEAIR_DUTY_HAS_GAPS", "freeair_duty_finding", "Some time has no readings.", FREEAIR_DUTY_HAS_GAPS},
    {"FREEAIR_DUTY_LEFT_OUT", "freeair_duty_finding", "Readings were left out: missing, or their times out of order.", FREEAIR_DUTY_LEFT_OUT},
    {"FREEAIR_DUTY_FEW_CYCLES", "freeair_duty_finding", "Fewer than three complete cycles: means over them say little.", FREEAIR_DUTY_FEW_CYCLES},
    {"FREEAIR_DUTY_AMBIGUOUS", "freeair_duty_finding", "Some time the pressure does not tell whether the machine is loaded.", FREEAIR_DUTY_AMBIGUOUS},
    {"FREEAIR_DUTY_UNSETTLED", "freeair_duty_finding", "No idle phase outlasts the cooling of the gas: no slope of leaks.", FREEAIR_DUTY_UNSETTLED},
    {"FREEAIR_DUTY_SINKS_LOADED", "freeair_duty_finding", "The pressure falls in a loaded phase: more is drawn than delivered.", FREEAIR_DUTY_SINKS_LOADED},
    {"FREEAIR_EVIDENCE_KIND_CAUSE", "freeair_evidence_kind", "Codes of freeair_evidence_cause.", FREEAIR_EVIDENCE_KIND_CAUSE},
    {"FREEAIR_EVIDENCE_KIND_OBSERVATION", "freeair_evidence_kind", "Codes of freeair_evidence_observation.", FREEAIR_EVIDENCE_KIND_OBSERVATION},
    {"FREEAIR_EVIDENCE_KIND_READING", "freeair_evidence_kind", "Codes of freeair_evidence_reading, in evidence_readings.h.", FREEAIR_EVIDENCE_KIND_READING},
    {"FREEAIR_EVIDENCE_KIND_CHECK", "freeair_evidence_kind", "Codes of freeair_evidence_check.", FREEAIR_EVIDENCE_KIND_CHECK},
    {"FREEAIR_EVIDENCE_NOT_CHECKED", "freeair_evidence_answer", "Nobody looked, or could not tell: no evidence.", FREEAIR_EVIDENCE_NOT_CHECKED},
    {"FREEAIR_EVIDENCE_YES", "freeair_evidence_answer", "Looked for and observed.", FREEAIR_EVIDENCE_YES},
    {"FREEAIR_EVIDENCE_NO", "freeair_evidence_answer", "Looked for and absent.", FREEAIR_EVIDENCE_NO},
    {"FREEAIR_EVIDENCE_CAUSE_NONE", "freeair_evidence_cause", "No cause named.", FREEAIR_EVIDENCE_CAUSE_NONE},
    {"FREEAIR_EVIDENCE_HEALTHY", "freeair_evidence_cause", "Machine and system are sound.", FREEAIR_EVIDENCE_HEALTHY},
    {"FREEAIR_EVIDENCE_OTHER", "freeair_evidence_cause", "Something that has no entry here.", FREEAIR_EVIDENCE_OTHER},
    {"FREEAIR_EVIDENCE_INTAKE_FILTER", "freeair_evidence_cause", "Intake filter or intake blocked.", FREEAIR_EVIDENCE_INTAKE_FILTER},
    {"FREEAIR_EVIDENCE_LP_SUCTION_VALVE", "freeair_evidence_cause", "LP suction valve broken, bent or held open.", FREEAIR_EVIDENCE_LP_SUCTION_VALVE},
    {"FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE", "freeair_evidence_cause", "LP discharge valve leaks.", FREEAIR_EVIDENCE_LP_DISCHARGE_VALVE},
    {"FREEAIR_EVIDENCE_HP_SUCTION_VALVE", "freeair_evidence_cause", "HP suction valve leaks.", FREEAIR_EVIDENCE_HP_SUCTION_VALVE},
    {"FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE", "freeair_evidence_cause", "HP discharge valve leaks.", FREEAIR_EVIDENCE_HP_DISCHARGE_VALVE},
    {"FREEAIR_EVIDENCE_GASKET_BETWEEN", "freeair_evidence_cause", "Head gasket breached between two cylinders.", FREEAIR_EVIDENCE_GASKET_BETWEEN},
    {"FREEAIR_EVIDENCE_GASKET_OUTSIDE", "freeair_evidence_cause", "Head or valve-plate gasket leaks to outside.", FREEAIR_EVIDENCE_GASKET_OUTSIDE},
    {"FREEAIR_EVIDENCE_PISTON_RINGS", "freeair_evidence_cause", "Piston rings or bores worn.", FREEAIR_EVIDENCE_PISTON_RINGS},
    {"FREEAIR_EVIDENCE_INTERSTAGE_LEAK", "freeair_evidence_cause", "Leak between the stages.", FREEAIR_EVIDENCE_INTERSTAGE_LEAK},
    {"FREEAIR_EVIDENCE_INTERCOOLER_FOULED", "freeair_evidence_cause", "Intercooler dirty, or its fan or shroud gone.", FREEAIR_EVIDENCE_INTERCOOLER_FOULED},
    {"FREEAIR_EVIDENCE_RELIEF_WEAK", "freeair_evidence_cause", "Interstage relief valve opens early or leaks.", FREEAIR_EVIDENCE_RELIEF_WEAK},
    {"FREEAIR_EVIDENCE_UNLOADER_LEAK", "freeair_evidence_cause", "Unloader passes while the machine is loaded.", FREEAIR_EVIDENCE_UNLOADER_LEAK},
    {"FREEAIR_EVIDENCE_CHECK_VALVE", "freeair_evidence_cause", "Receiver check valve leaks back.", FREEAIR_EVIDENCE_CHECK_VALVE},
    {"FREEAIR_EVIDENCE_DOWNSTREAM", "freeair_evidence_cause", "Leak, open drain or demand behind the pump.", FREEAIR_EVIDENCE_DOWNSTREAM},
    {"FREEAIR_EVIDENCE_RECEIVER_WATER", "freeair_evidence_cause", "Water fills part of the receiver.", FREEAIR_EVIDENCE_RECEIVER_WATER},
    {"FREEAIR_EVIDENCE_BELT_SLIP", "freeair_evidence_cause", "Belt slips.", FREEAIR_EVIDENCE_BELT_SLIP},
    {"FREEAIR_EVIDENCE_WRONG_PULLEY", "freeair_evidence_cause", "Wrong pulley: pump turns slow without slip.", FREEAIR_EVIDENCE_WRONG_PULLEY},
    {"FREEAIR_EVIDENCE_LOW_VOLTAGE", "freeair_evidence_cause", "Low supply voltage at the motor.", FREEAIR_EVIDENCE_LOW_VOLTAGE},
    {"FREEAIR_EVIDENCE_RUN_CAPACITOR", "freeair_evidence_cause", "Run capacitor weak.", FREEAIR_EVIDENCE_RUN_CAPACITOR},
    {"FREEAIR_EVIDENCE_START_CAPACITOR", "freeair_evidence_cause", "Start capacitor or its switch failed.", FREEAIR_EVIDENCE_START_CAPACITOR},
    {"FREEAIR_EVIDENCE_MOTOR", "freeair_evidence_cause", "Motor itself slow or weak.", FREEAIR_EVIDENCE_MOTOR},
    {"FREEAIR_EVIDENCE_GAUGE_OR_SWITCH", "freeair_evidence_cause", "Pressure gauge or pressure switch off.", FREEAIR_EVIDENCE_GAUGE_OR_SWITCH},
    {"FREEAIR_EVIDENCE_OBSERVATION_NONE", "freeair_evidence_observation", "No observation.", FREEAIR_EVIDENCE_OBSERVATION_NONE},
    {"FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET", "freeair_evidence_observation", "Air pulses back out of the intake.", FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET},
    {"FREEAIR_EVIDENCE_CHIRPING_AT_HEADS", "freeair_evidence_observation", "Chirping or clatter at the heads.", FREEAIR_EVIDENCE_CHIRPING_AT_HEADS},
    {"FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS", "freeair_evidence_observation", "Interstage relief valve lifts.", FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS},
    {"FREEAIR_EVIDENCE_LP_HEAD_HOT", "freeair_evidence_observation", "LP head hotter than usual.", FREEAIR_EVIDENCE_LP_HEAD_HOT},
    {"FREEAIR_EVIDENCE_HP_HEAD_HOT", "freeair_evidence_observation", "HP head hotter than usual.", FREEAIR_EVIDENCE_HP_HEAD_HOT},
    {"FREEAIR_EVIDENCE_HOT_BETWEEN_BORES", "freeair_evidence_observation", "Head hottest between the bores.", FREEAIR_EVIDENCE_HOT_BETWEEN_BORES},
    {"FREEAIR_EVIDENCE_AIR_AT_HEAD_JOINT", "freeair_evidence_observation", "Air escapes at a head joint.", FREEAIR_EVIDENCE_AIR_AT_HEAD_JOINT},
    {"FREEAIR_EVIDENCE_BREATHER_BLOWS", "freeair_evidence_observation", "Crankcase breather blows strongly.", FREEAIR_EVIDENCE_BREATHER_BLOWS},
    {"FREEAIR_EVIDENCE_OIL_IN_DRAIN", "freeair_evidence_observation", "Oily water or oil at the drain.", FREEAIR_EVIDENCE_OIL_IN_DRAIN},
    {"FREEAIR_EVIDENCE_OIL_USE_HIGH", "freeair_evidence_observation", "Pump uses oil.", FREEAIR_EVIDENCE_OIL_USE_HIGH},
    {"FREEAIR_EVIDENCE_BELT_DUST", "freeair_evidence_observation", "Black dust at the belt guard.", FREEAIR_EVIDENCE_BELT_DUST},
    {"FREEAIR_EVIDENCE_BELT_SQUEALS", "freeair_evidence_observation", "Belt squeals, at start above all.", FREEAIR_EVIDENCE_BELT_SQUEALS},
    {"FREEAIR_EVIDENCE_BELT_GLAZED", "freeair_evidence_observation", "Belt glazed, cracked or frayed.", FREEAIR_EVIDENCE_BELT_GLAZED},
    {"FREEAIR_EVIDENCE_BELT_LOOSE", "freeair_evidence_observation", "Belt loose.", FREEAIR_EVIDENCE_BELT_LOOSE},
    {"FREEAIR_EVIDENCE_DRIVE_CHANGED", "freeair_evidence_observation", "Motor, pulley or flywheel changed lately.", FREEAIR_EVIDENCE_DRIVE_CHANGED},
    {"FREEAIR_EVIDENCE_PUMP_SOUNDS_SLOW", "freeair_evidence_observation", "Pump turns slow by ear or eye.", FREEAIR_EVIDENCE_PUMP_SOUNDS_SLOW},
    {"FREEAIR_EVIDENCE_HUMS_AT_START", "freeair_evidence_observation", "Motor hums or comes up slowly.", FREEAIR_EVIDENCE_HUMS_AT_START},
    {"FREEAIR_EVIDENCE_BREAKER_TRIPS", "freeair_evidence_observation", "Breaker or overload trips.", FREEAIR_EVIDENCE_BREAKER_TRIPS},
    {"FREEAIR_EVIDENCE_CAPACITOR_BULGED", "freeair_evidence_observation", "Capacitor bulged, cracked or leaking.", FREEAIR_EVIDENCE_CAPACITOR_BULGED},
    {"FREEAIR_EVIDENCE_LIGHTS_DIM", "freeair_evidence_observation", "Lights dim at start, or the lead is long or thin.", FREEAIR_EVIDENCE_LIGHTS_DIM},
    {"FREEAIR_EVIDENCE_HISS_AT_SWITCH", "freeair_evidence_observation", "Hiss at switch or unloader while loaded.", FREEAIR_EVIDENCE_HISS_AT_SWITCH},
    {"FREEAIR_EVIDENCE_BETTER_UNLOADER_BLOCKED", "freeair_evidence_observation", "Right with the unloader line blocked off.", FREEAIR_EVIDENCE_BETTER_UNLOADER_BLOCKED},
    {"FREEAIR_EVIDENCE_UNLOADER_BLOWS_STOPPED", "freeair_evidence_observation", "Unloader goes on blowing after the stop.", FREEAIR_EVIDENCE_UNLOADER_BLOWS_STOPPED},
    {"FREEAIR_EVIDENCE_HARD_RESTART", "freeair_evidence_observation", "Restarts hard while there is pressure.", FREEAIR_EVIDENCE_HARD_RESTART},
    {"FREEAIR_EVIDENCE_FALLS_WHEN_STOPPED", "freeair_evidence_observation", "Pressure falls, stopped and isolated.", FREEAIR_EVIDENCE_FALLS_WHEN_STOPPED},
    {"FREEAIR_EVIDENCE_DRAIN_PASSES", "freeair_evidence_observation", "Drain passes air.", FREEAIR_EVIDENCE_DRAIN_PASSES},
    {"FREEAIR_EVIDENCE_LEAKS_HEARD", "freeair_evidence_observation", "Leaks heard in the system.", FREEAIR_EVIDENCE_LEAKS_HEARD},
    {"FREEAIR_EVIDENCE_DEMAND_ADDED", "freeair_evidence_observation", "Tools or machines added, or used more.", FREEAIR_EVIDENCE_DEMAND_ADDED},
    {"FREEAIR_EVIDENCE_FINE_WHEN_ISOLATED", "freeair_evidence_observation", "Pumps up in its usual time with the service valve closed.", FREEAIR_EVIDENCE_FINE_WHEN_ISOLATED},
    {"FREEAIR_EVIDENCE_RUNS_AT_NIGHT", "freeair_evidence_observation", "Runs often when nobody uses air.", FREEAIR_EVIDENCE_RUNS_AT_NIGHT},
    {"FREEAIR_EVIDENCE_SYSTEM_STARVES", "freeair_evidence_observation", "Machine reaches cut-out, yet users run short.", FREEAIR_EVIDENCE_SYSTEM_STARVES},
    {"FREEAIR_EVIDENCE_FILTER_DIRTY", "freeair_evidence_observation", "Filter element dirty.", FREEAIR_EVIDENCE_FILTER_DIRTY},
    {"FREEAIR_EVIDENCE_BETTER_FILTER_OUT", "freeair_evidence_observation", "Faster with the filter element out.", FREEAIR_EVIDENCE_BETTER_FILTER_OUT},
    {"FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES", "freeair_evidence_observation", "Soap bubbles at interstage joints or cooler.", FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES},
    {"FREEAIR_EVIDENCE_INTERCOOLER_DIRTY", "freeair_evidence_observation", "Cooler fins blocked, fan or shroud damaged.", FREEAIR_EVIDENCE_INTERCOOLER_DIRTY},
    {"FREEAIR_EVIDENCE_RELIEF_POPS_EARLY", "freeair_evidence_observation", "Interstage relief lifts below its setting.", FREEAIR_EVIDENCE_RELIEF_POPS_EARLY},
    {"FREEAIR_EVIDENCE_WATER_DRAINED", "freeair_evidence_observation", "Much water came out of the receiver.", FREEAIR_EVIDENCE_WATER_DRAINED},
    {"FREEAIR_EVIDENCE_SHORT_CYCLES", "freeair_evidence_observation", "Pumps up fast and cycles often.", FREEAIR_EVIDENCE_SHORT_CYCLES},
    {"FREEAIR_EVIDENCE_NEVER_REACHES_CUTOUT", "freeair_evidence_observation", "Never reaches cut-out.", FREEAIR_EVIDENCE_NEVER_REACHES_CUTOUT},
    {"FREEAIR_EVIDENCE_STOPS_AT_WRONG_PRESSURE", "freeair_evidence_observation", "Stops off its setting by a second gauge.", FREEAIR_EVIDENCE_STOPS_AT_WRONG_PRESSURE},
    {"FREEAIR_EVIDENCE_SLOWER_NEAR_CUTOUT", "freeair_evidence_observation", "Slow at high pressure more than at low.", FREEAIR_EVIDENCE_SLOWER_NEAR_CUTOUT},
    {"FREEAIR_EVIDENCE_CAME_SUDDENLY", "freeair_evidence_observation", "Came from one day to the next.", FREEAIR_EVIDENCE_CAME_SUDDENLY},
    {"FREEAIR_EVIDENCE_HEADS_OPENED_LATELY", "freeair_evidence_observation", "Heads were opened lately.", FREEAIR_EVIDENCE_HEADS_OPENED_LATELY},
    {"FREEAIR_EVIDENCE_LP_VALVES_BAD", "freeair_evidence_observation", "Head off: LP reeds or seats damaged.", FREEAIR_EVIDENCE_LP_VALVES_BAD},
    {"FREEAIR_EVIDENCE_HP_VALVES_BAD", "freeair_evidence_observation", "Head off: HP reeds or seats damaged.", FREEAIR_EVIDENCE_HP_VALVES_BAD},
    {"FREEAIR_EVIDENCE_GASKET_BURNT", "freeair_evidence_observation", "Head off: gasket burnt through.", FREEAIR_EVIDENCE_GASKET_BURNT},
    {"FREEAIR_EVIDENCE_CHECK_NONE", "freeair_evidence_check", "No check.", FREEAIR_EVIDENCE_CHECK_NONE},
    {"FREEAIR_EVIDENCE_ASK", "freeair_evidence_check", "Ask what changed and since when.", FREEAIR_EVIDENCE_ASK},
    {"FREEAIR_EVIDENCE_LISTEN_AT_INLET", "freeair_evidence_check", "Hand and ear at the intake.", FREEAIR_EVIDENCE_LISTEN_AT_INLET},
    {"FREEAIR_EVIDENCE_LISTEN_AT_HEADS", "freeair_evidence_check", "Listen at heads, joints and relief valve.", FREEAIR_EVIDENCE_LISTEN_AT_HEADS},
    {"FREEAIR_EVIDENCE_LOOK_AT_DRIVE", "freeair_evidence_check", "Look and listen at the drive, guard on.", FREEAIR_EVIDENCE_LOOK_AT_DRIVE},
    {"FREEAIR_EVIDENCE_LOOK_AT_OIL", "freeair_evidence_check", "Oil level, breather, drain.", FREEAIR_EVIDENCE_LOOK_AT_OIL},
    {"FREEAIR_EVIDENCE_WALK_THE_SYSTEM", "freeair_evidence_check", "Walk the pipework, drains and hoses.", FREEAIR_EVIDENCE_WALK_THE_SYSTEM},
    {"FREEAIR_EVIDENCE_SECOND_GAUGE", "freeair_evidence_check", "Compare gauge and switch with a second gauge.", FREEAIR_EVIDENCE_SECOND_GAUGE},
    {"FREEAIR_EVIDENCE_PUMP_UP_TEST", "freeair_evidence_check", "Time the pump-up with the service valve closed.", FREEAIR_EVIDENCE_PUMP_UP_TEST},
    {"FREEAIR_EVIDENCE_STOP_AND_WATCH", "freeair_evidence_check", "Stop, close the service valve, watch the gauge.", FREEAIR_EVIDENCE_STOP_AND_WATCH},
    {"FREEAIR_EVIDENCE_LEAK_DOWN_OPEN", "freeair_evidence_check", "Leak-down with the system open, no use.", FREEAIR_EVIDENCE_LEAK_DOWN_OPEN},
    {"FREEAIR_EVIDENCE_INTERSTAGE_GAUGE", "freeair_evidence_check", "Read the interstage pressure.", FREEAIR_EVIDENCE_INTERSTAGE_GAUGE},
    {"FREEAIR_EVIDENCE_TEMPERATURES", "freeair_evidence_check", "Discharge, head and cooler temperatures.", FREEAIR_EVIDENCE_TEMPERATURES},
    {"FREEAIR_EVIDENCE_TACHOMETER", "freeair_evidence_check", "Motor and pump speed by tachometer.", FREEAIR_EVIDENCE_TACHOMETER},
    {"FREEAIR_EVIDENCE_FILTER_OUT", "freeair_evidence_check", "One pump-up with the filter element out.", FREEAIR_EVIDENCE_FILTER_OUT},
    {"FREEAIR_EVIDENCE_SOAP_INTERSTAGE", "freeair_evidence_check", "Soap on interstage joints, cooler and heads.", FREEAIR_EVIDENCE_SOAP_INTERSTAGE},
    {"FREEAIR_EVIDENCE_BLOCK_UNLOADER", "freeair_evidence_check", "One pump-up with the unloader line blocked off.", FREEAIR_EVIDENCE_BLOCK_UNLOADER},
    {"FREEAIR_EVIDENCE_INSPECT_BELT", "freeair_evidence_check", "Inspect belt, tension and pulleys, locked out.", FREEAIR_EVIDENCE_INSPECT_BELT},
    {"FREEAIR_EVIDENCE_MEASURE_SUPPLY", "freeair_evidence_check", "Volts, amperes and watts at the motor.", FREEAIR_EVIDENCE_MEASURE_SUPPLY},
    {"FREEAIR_EVIDENCE_MEASURE_CAPACITORS", "freeair_evidence_check", "Inspect and measure the capacitors, discharged.", FREEAIR_EVIDENCE_MEASURE_CAPACITORS},
    {"FREEAIR_EVIDENCE_WATCH_A_START", "freeair_evidence_check", "Watch a start against pressure.", FREEAIR_EVIDENCE_WATCH_A_START},
    {"FREEAIR_EVIDENCE_LOG_A_DAY", "freeair_evidence_check", "Log the pressure over a day and night.", FREEAIR_EVIDENCE_LOG_A_DAY},
    {"FREEAIR_EVIDENCE_DRAIN_RECEIVER", "freeair_evidence_check", "Drain the receiver and measure the water.", FREEAIR_EVIDENCE_DRAIN_RECEIVER},
    {"FREEAIR_EVIDENCE_HEADS_OFF", "freeair_evidence_check", "Heads off: valves, plates and gaskets.", FREEAIR_EVIDENCE_HEADS_OFF},
    {"FREEAIR_EVIDENCE_READ_SITE", "freeair_evidence_check", "Thermometer and barometer.", FREEAIR_EVIDENCE_READ_SITE},
    {"FREEAIR_EVIDENCE_READING_NONE", "freeair_evidence_reading", "No reading.", FREEAIR_EVIDENCE_READING_NONE},
    {"FREEAIR_EVIDENCE_DELIVERY", "freeair_evidence_reading", "Free air delivery from a pump-up test.", FREEAIR_EVIDENCE_DELIVERY},
    {"FREEAIR_EVIDENCE_TIME_FROM_EMPTY", "freeair_evidence_reading", "Time from empty to cut-out.", FREEAIR_EVIDENCE_TIME_FROM_EMPTY},
    {"FREEAIR_EVIDENCE_TIME_FROM_CUTIN", "freeair_evidence_reading", "Time from cut-in to cut-out.", FREEAIR_EVIDENCE_TIME_FROM_CUTIN},
    {"FREEAIR_EVIDENCE_LEVEL_OFF", "freeair_evidence_reading", "Pressure at which it levels off.", FREEAIR_EVIDENCE_LEVEL_OFF},
    {"FREEAIR_EVIDENCE_INTERSTAGE", "freeair_evidence_reading", "Interstage pressure.", FREEAIR_EVIDENCE_INTERSTAGE},
    {"FREEAIR_EVIDENCE_LP_DISCHARGE", "freeair_evidence_reading", "LP discharge temperature.", FREEAIR_EVIDENCE_LP_DISCHARGE},
    {"FREEAIR_EVIDENCE_HP_DISCHARGE", "freeair_evidence_reading", "HP discharge temperature.", FREEAIR_EVIDENCE_HP_DISCHARGE},
    {"FREEAIR_EVIDENCE_INTERCOOLER_OUTLET", "freeair_evidence_reading", "Intercooler outlet temperature.", FREEAIR_EVIDENCE_INTERCOOLER_OUTLET},
    {"FREEAIR_EVIDENCE_MOTOR_SPEED", "freeair_evidence_reading", "Motor speed.", FREEAIR_EVIDENCE_MOTOR_SPEED},
    {"FREEAIR_EVIDENCE_PUMP_SPEED", "freeair_evidence_reading", "Pump speed.", FREEAIR_EVIDENCE_PUMP_SPEED},
    {"FREEAIR_EVIDENCE_SUPPLY_RUNNING", "freeair_evidence_reading", "Voltage at the running motor.", FREEAIR_EVIDENCE_SUPPLY_RUNNING},
    {"FREEAIR_EVIDENCE_SUPPLY_STARTING", "freeair_evidence_reading", "Voltage at the starting motor.", FREEAIR_EVIDENCE_SUPPLY_STARTING},
    {"FREEAIR_EVIDENCE_MOTOR_CURRENT", "freeair_evidence_reading", "Motor current.", FREEAIR_EVIDENCE_MOTOR_CURRENT},
    {"FREEAIR_EVIDENCE_POWER", "freeair_evidence_reading", "Electrical power.", FREEAIR_EVIDENCE_POWER},
    {"FREEAIR_EVIDENCE_RUN_CAPACITANCE", "freeair_evidence_reading", "Capacitance of the run capacitor.", FREEAIR_EVIDENCE_RUN_CAPACITANCE},
    {"FREEAIR_EVIDENCE_START_CAPACITANCE", "freeair_evidence_reading", "Capacitance of the start capacitor.", FREEAIR_EVIDENCE_START_CAPACITANCE},
    {"FREEAIR_EVIDENCE_LEAK_ISOLATED", "freeair_evidence_reading", "Leak with the service valve closed.", FREEAIR_EVIDENCE_LEAK_ISOLATED},
    {"FREEAIR_EVIDENCE_LEAK_OPEN", "freeair_evidence_reading", "Leak with the system open.", FREEAIR_EVIDENCE_LEAK_OPEN},
    {"FREEAIR_EVIDENCE_GAUGE_DIFFERENCE", "freeair_evidence_reading", "Machine's gauge less a second gauge.", FREEAIR_EVIDENCE_GAUGE_DIFFERENCE},
    {"FREEAIR_EVIDENCE_CUTOUT", "freeair_evidence_reading", "Pressure at which it cuts out.", FREEAIR_EVIDENCE_CUTOUT},
    {"FREEAIR_EVIDENCE_RELIEF_OPENING", "freeair_evidence_reading", "Pressure at which the interstage relief opens.", FREEAIR_EVIDENCE_RELIEF_OPENING},
    {"FREEAIR_EVIDENCE_FILTER_DROP", "freeair_evidence_reading", "Pressure drop of the intake filter.", FREEAIR_EVIDENCE_FILTER_DROP},
    {"FREEAIR_EVIDENCE_BELT_DEFLECTION", "freeair_evidence_reading", "Belt deflection under the stated force.", FREEAIR_EVIDENCE_BELT_DEFLECTION},
    {"FREEAIR_EVIDENCE_WATER", "freeair_evidence_reading", "Water drained from the receiver.", FREEAIR_EVIDENCE_WATER},
    {"FREEAIR_EVIDENCE_DUTY", "freeair_evidence_reading", "Share of time loaded.", FREEAIR_EVIDENCE_DUTY},
    {"FREEAIR_EVIDENCE_AMBIENT", "freeair_evidence_reading", "Ambient temperature.", FREEAIR_EVIDENCE_AMBIENT},
    {"FREEAIR_EVIDENCE_BAROMETER", "freeair_evidence_reading", "Barometric pressure.", FREEAIR_EVIDENCE_BAROMETER},
    {"FREEAIR_LIKELIHOOD_UNLISTED", "freeair_likelihood_basis", "The pair is not in the table: the cause does not touch it.", FREEAIR_LIKELIHOOD_UNLISTED},
    {"FREEAIR_LIKELIHOOD_PRACTICE", "freeair_likelihood_basis", "A signature of the trade.", FREEAIR_LIKELIHOOD_PRACTICE},
    {"FREEAIR_LIKELIHOOD_DERIVED", "freeair_likelihood_basis", "Derived from how the machine works.", FREEAIR_LIKELIHOOD_DERIVED},
    {"FREEAIR_LIKELIHOOD_NO_SCALE", "freeair_likelihood_scale", "The reading has no deviation: the level-off pressure.", FREEAIR_LIKELIHOOD_NO_SCALE},
    {"FREEAIR_LIKELIHOOD_LOG", "freeair_likelihood_scale", "ln(found / expected).", FREEAIR_LIKELIHOOD_LOG},
    {"FREEAIR_LIKELIHOOD_DIFFERENCE", "freeair_likelihood_scale", "found - expected, in kelvin.", FREEAIR_LIKELIHOOD_DIFFERENCE},
    {"FREEAIR_LIKELIHOOD_SHARE", "freeair_likelihood_scale", "(found - expected) / reference.", FREEAIR_LIKELIHOOD_SHARE},
    {"FREEAIR_DIAGNOSIS_HEAD_UNKNOWN", "freeair_diagnosis_head", "Not said.", FREEAIR_DIAGNOSIS_HEAD_UNKNOWN},
    {"FREEAIR_DIAGNOSIS_HEAD_SEPARATE", "freeair_diagnosis_head", "A head for each cylinder, as in a V.", FREEAIR_DIAGNOSIS_HEAD_SEPARATE},
    {"FREEAIR_DIAGNOSIS_HEAD_SHARED", "freeair_diagnosis_head", "Cylinders side by side under one head and gasket.", FREEAIR_DIAGNOSIS_HEAD_SHARED},
    {"FREEAIR_DIAGNOSIS_DRIVE_UNKNOWN", "freeair_diagnosis_drive", "Not said.", FREEAIR_DIAGNOSIS_DRIVE_UNKNOWN},
    {"FREEAIR_DIAGNOSIS_DRIVE_BELT", "freeair_diagnosis_drive", "By belt.", FREEAIR_DIAGNOSIS_DRIVE_BELT},
    {"FREEAIR_DIAGNOSIS_DRIVE_DIRECT", "freeair_diagnosis_drive", "By coupling or flange.", FREEAIR_DIAGNOSIS_DRIVE_DIRECT},
    {"FREEAIR_DIAGNOSIS_SUPPLY_UNKNOWN", "freeair_diagnosis_supply", "Not said.", FREEAIR_DIAGNOSIS_SUPPLY_UNKNOWN},
    {"FREEAIR_DIAGNOSIS_SINGLE_PHASE", "freeair_diagnosis_supply", "Single-phase motor with capacitors.", FREEAIR_DIAGNOSIS_SINGLE_PHASE},
    {"FREEAIR_DIAGNOSIS_THREE_PHASE", "freeair_diagnosis_supply", "Three-phase motor.", FREEAIR_DIAGNOSIS_THREE_PHASE},
    {"FREEAIR_DIAGNOSIS_ENGINE", "freeair_diagnosis_supply", "Engine.", FREEAIR_DIAGNOSIS_ENGINE},
    {"FREEAIR_DIAGNOSIS_NOT_USED", "freeair_diagnosis_use", "An expected value, or what a share is of, is missing.", FREEAIR_DIAGNOSIS_NOT_USED},
    {"FREEAIR_DIAGNOSIS_USED", "freeair_diagnosis_use", "Used, and in keeping with the rest.", FREEAIR_DIAGNOSIS_USED},
    {"FREEAIR_DIAGNOSIS_CONTRADICTS", "freeair_diagnosis_use", "Used, but it contradicts the rest.", FREEAIR_DIAGNOSIS_CONTRADICTS},
    {"FREEAIR_DIAGNOSIS_NOT_APPLICABLE", "freeair_diagnosis_use", "The machine described has no such thing.", FREEAIR_DIAGNOSIS_NOT_APPLICABLE},
    {"FREEAIR_TYPE_DOUBLE", "freeair_type", "double", FREEAIR_TYPE_DOUBLE},
    {"FREEAIR_TYPE_INT32", "freeair_type", "int32_t", FREEAIR_TYPE_INT32},
    {"FREEAIR_TYPE_UINT32", "freeair_type", "uint32_t", FREEAIR_TYPE_UINT32},
    {"FREEAIR_TYPE_SIZE", "freeair_type", "size_t, also ptrdiff_t", FREEAIR_TYPE_SIZE},
    {"FREEAIR_TYPE_TEXT", "freeair_type", "const char *, a string that ends with a zero byte", FREEAIR_TYPE_TEXT},
    {"FREEAIR_TYPE_STRUCTURE", "freeair_type", "a structure, passed by pointer", FREEAIR_TYPE_STRUCTURE},
    {"FREEAIR_PARAMETER_OUTPUT", "freeair_parameter_flag", "Written by the call.", FREEAIR_PARAMETER_OUTPUT},
    {"FREEAIR_PARAMETER_ARRAY", "freeair_parameter_flag", "Points to as many elements as another parameter says.", FREEAIR_PARAMETER_ARRAY},
    {"FREEAIR_PARAMETER_OPTIONAL", "freeair_parameter_flag", "NaN stands for \"not given\"; fallback says what is then used.", FREEAIR_PARAMETER_OPTIONAL},
    {"FREEAIR_PARAMETER_LOWER_CLOSED", "freeair_parameter_flag", "The lower end belongs to the range.", FREEAIR_PARAMETER_LOWER_CLOSED},
    {"FREEAIR_PARAMETER_UPPER_CLOSED", "freeair_parameter_flag", "The upper end belongs to the range.", FREEAIR_PARAMETER_UPPER_CLOSED},
    {"FREEAIR_MONTE_CARLO_SYMMETRIC", "freeair_monte_carlo_interval", "As much probability below as above.", FREEAIR_MONTE_CARLO_SYMMETRIC},
    {"FREEAIR_MONTE_CARLO_SHORTEST", "freeair_monte_carlo_interval", "The shortest of all; it holds the mode of a skew distribution.", FREEAIR_MONTE_CARLO_SHORTEST},
};

const size_t freeair__n_constants = sizeof freeair__constants / sizeof freeair__constants[0];

const uint16_t freeair__functions_by_name[] = {31, 28, 30, 27, 32, 29, 134, 135, 137, 133, 132, 129, 138, 136, 139, 130, 131, 234, 232, 233, 231, 230, 229, 110, 103, 108, 111, 104, 106, 114, 116, 117, 115, 113, 109, 112, 105, 107, 165, 163, 166, 162, 164, 161, 178, 179, 173, 180, 175, 174, 177, 176, 171, 170, 172, 160, 154, 159, 155, 156, 158, 157, 210, 208, 209, 206, 207, 204, 211, 205, 19, 23, 22, 24, 26, 18, 20, 25, 21, 276, 279, 280, 275, 281, 278, 277, 287, 286, 258, 262, 261, 257, 264, 263, 265, 255, 256, 259, 260, 269, 270, 267, 266, 268, 323, 324, 320, 321, 322, 325, 318, 319, 34, 39, 43, 44, 40, 41, 47, 42, 45, 46, 38, 33, 35, 36, 37, 49, 51, 48, 50, 303, 59, 60, 61, 305, 307, 306, 297, 295, 296, 218, 212, 217, 219, 214, 213, 216, 215, 284, 285, 143, 141, 140, 145, 146, 148, 147, 142, 144, 68, 69, 273, 274, 271, 272, 326, 248, 254, 249, 246, 251, 250, 252, 247, 253, 245, 315, 313, 317, 314, 310, 308, 311, 309, 312, 316, 282, 283, 64, 65, 66, 62, 63, 67, 333, 332, 334, 335, 336, 95, 93, 92, 84, 90, 87, 94, 85, 88, 86, 83, 91, 89, 200, 198, 196, 195, 192, 193, 197, 201, 199, 194, 97, 98, 96, 100, 101, 102, 99, 149, 152, 153, 150, 151, 304, 182, 184, 181, 183, 186, 187, 185, 191, 189, 188, 190, 291, 290, 288, 289, 301, 299, 300, 302, 120, 121, 125, 124, 123, 127, 118, 119, 122, 126, 128, 293, 294, 298, 292, 222, 226, 227, 225, 223, 224, 220, 221, 228, 7, 9, 8, 11, 10, 13, 12, 14, 15, 203, 202, 167, 168, 169, 58, 52, 56, 57, 54, 53, 55, 73, 71, 76, 70, 75, 74, 72, 78, 80, 79, 82, 81, 77, 328, 329, 327, 331, 330, 5, 3, 4, 2, 6, 0, 1, 17, 16, 242, 243, 244, 239, 240, 235, 238, 236, 237, 241};

const uint16_t freeair__constants_by_name[] = {78, 79, 76, 77, 80, 81, 29, 28, 23, 17, 22, 16, 26, 24, 25, 27, 19, 20, 18, 21, 97, 95, 96, 47, 44, 45, 48, 46, 320, 312, 313, 311, 317, 309, 310, 308, 321, 318, 315, 314, 316, 319, 166, 165, 162, 163, 164, 160, 161, 168, 167, 51, 52, 12, 14, 7, 13, 9, 8, 6, 10, 15, 11, 208, 299, 249, 300, 296, 212, 214, 215, 194, 213, 234, 223, 264, 202, 219, 209, 243, 220, 176, 248, 191, 203, 293, 274, 229, 192, 227, 270, 216, 298, 226, 233, 295, 262, 230, 184, 247, 185, 292, 200, 225, 271, 244, 177, 222, 207, 280, 183, 206, 182, 246, 218, 265, 179, 236, 188, 281, 278, 235, 259, 187, 204, 169, 172, 170, 171, 228, 258, 290, 291, 277, 221, 251, 250, 269, 252, 253, 196, 279, 181, 205, 180, 245, 267, 266, 199, 286, 282, 240, 175, 173, 201, 210, 211, 178, 186, 287, 217, 283, 256, 273, 272, 193, 294, 237, 189, 231, 288, 197, 255, 239, 242, 263, 289, 198, 241, 257, 284, 285, 232, 261, 260, 276, 275, 224, 190, 254, 268, 297, 238, 195, 174, 98, 111, 112, 104, 105, 106, 107, 108, 109, 110, 101, 102, 103, 99, 100, 134, 130, 132, 131, 121, 139, 120, 123, 125, 119, 116, 127, 126, 136, 118, 122, 124, 117, 115, 138, 135, 133, 128, 137, 129, 82, 83, 303, 306, 305, 304, 302, 307, 301, 114, 113, 334, 333, 53, 54, 55, 56, 57, 58, 59, 60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75, 88, 91, 87, 84, 86, 89, 90, 85, 0, 329, 331, 330, 328, 332, 141, 142, 140, 159, 158, 157, 154, 156, 153, 155, 152, 151, 150, 149, 145, 146, 148, 143, 144, 147, 32, 30, 33, 34, 31, 39, 35, 36, 37, 38, 40, 94, 93, 92, 50, 49, 322, 323, 325, 327, 326, 324, 41, 43, 42, 1, 3, 5, 2, 4};
