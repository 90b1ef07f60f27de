/* SPDX-License-Identifier: MIT */
#include <freeair/machine.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/machine.h"
#include "internal/structure.h"

static const double pi = 3.14159265358979323846;
static const double nominal_suction = 101325.0;
static const double nominal_temperature = 293.15;
static const double nominal_density = 101325.0 / (287.05 * 293.15);
static const double nominal_heat_capacity = 1005.0;

#define FIELD(name, closed, lo, hi, required) {offsetof(freeair_machine, name), closed, required, lo, hi}

/* The documented range of every field; the upper end always belongs to it. */
static const struct {
  size_t offset;
  int closed;
  int required;
  double lo;
  double hi;
} fields[] = {
    FIELD(speed_rev_s, 0, 0.0, 100.0, 0),
    FIELD(lp_bore_m, 0, 0.0, 2.0, 1),
    FIELD(hp_bore_m, 0, 0.0, 2.0, 0),
    FIELD(lp_stroke_m, 0, 0.0, 2.0, 1),
    FIELD(hp_stroke_m, 0, 0.0, 2.0, 0),
    FIELD(rod_ratio, 1, 0.0, 0.9, 0),
    FIELD(lp_clearance, 0, 0.0, 0.5, 0),
    FIELD(hp_clearance, 0, 0.0, 0.5, 0),
    FIELD(phase_rad, 1, -6.3, 6.3, 0),
    FIELD(lp_spread_rad, 1, -6.3, 6.3, 0),
    FIELD(hp_spread_rad, 1, -6.3, 6.3, 0),
    FIELD(lp_suction_area_m2, 0, 0.0, 1.0, 0),
    FIELD(lp_suction_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(lp_suction_lift_pa, 0, 0.0, 1e7, 0),
    FIELD(lp_discharge_area_m2, 0, 0.0, 1.0, 0),
    FIELD(lp_discharge_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(lp_discharge_lift_pa, 0, 0.0, 1e7, 0),
    FIELD(hp_suction_area_m2, 0, 0.0, 1.0, 0),
    FIELD(hp_suction_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(hp_suction_lift_pa, 0, 0.0, 1e7, 0),
    FIELD(hp_discharge_area_m2, 0, 0.0, 1.0, 0),
    FIELD(hp_discharge_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(hp_discharge_lift_pa, 0, 0.0, 1e7, 0),
    FIELD(check_valve_area_m2, 0, 0.0, 1.0, 0),
    FIELD(check_valve_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(check_valve_lift_pa, 0, 0.0, 1e7, 0),
    FIELD(filter_area_m2, 0, 0.0, 10.0, 0),
    FIELD(plenum_m3, 0, 0.0, 10.0, 0),
    FIELD(intercooler_m3, 0, 0.0, 10.0, 0),
    FIELD(intercooler_ua_w_k, 1, 0.0, 1e6, 0),
    FIELD(intercooler_area_m2, 0, 0.0, 10.0, 0),
    FIELD(relief_set_pa, 0, 0.0, 1e8, 0),
    FIELD(relief_area_m2, 1, 0.0, 1.0, 0),
    FIELD(intercooler_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(line_m3, 0, 0.0, 10.0, 0),
    FIELD(line_ua_w_k, 1, 0.0, 1e6, 0),
    FIELD(unloader_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(lp_wall_ua_w_k, 0, 0.0, 1e6, 0),
    FIELD(hp_wall_ua_w_k, 0, 0.0, 1e6, 0),
    FIELD(suction_ua_w_k, 1, 0.0, 1e6, 0),
    FIELD(lp_ring_area_m2, 1, 0.0, 1.0, 0),
    FIELD(hp_ring_area_m2, 1, 0.0, 1.0, 0),
    FIELD(crankcase_k, 0, 0.0, 1000.0, 0),
    FIELD(heat_coefficient, 1, 0.0, 100.0, 0),
    FIELD(heat_exponent, 1, 0.0, 1.0, 0),
    FIELD(gasket_breach_m2, 1, 0.0, 1.0, 0),
    FIELD(lp_gasket_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(hp_gasket_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(fmep_pa, 1, 0.0, 1e7, 0),
    FIELD(belt_efficiency, 0, 0.0, 1.0, 0),
    FIELD(belt_slip, 1, 0.0, 0.9, 0),
    FIELD(pulley_ratio, 0, 0.0, 20.0, 0),
    FIELD(motor_synchronous_rev_s, 0, 0.0, 1000.0, 0),
    FIELD(motor_rated_slip, 1, 0.0, 0.3, 0),
    FIELD(motor_rated_v, 0, 0.0, 1e5, 0),
    FIELD(motor_rated_w, 0, 0.0, 1e8, 0),
    FIELD(motor_torque_factor, 0, 0.0, 2.0, 0),
    FIELD(receiver_m3, 0, 0.0, 1e4, 0),
    FIELD(receiver_water_m3, 1, 0.0, 1e4, 0),
    FIELD(receiver_wall_j_k, 0, 0.0, 1e9, 0),
    FIELD(receiver_gas_ua_w_k, 1, 0.0, 1e6, 0),
    FIELD(receiver_wall_ua_w_k, 1, 0.0, 1e6, 0),
    FIELD(downstream_leak_m2, 1, 0.0, 1.0, 0),
    FIELD(demand_m3_s, 1, 0.0, 1000.0, 0),
    FIELD(cut_in_pa, 0, 0.0, 1e8, 0),
    FIELD(cut_out_pa, 0, 0.0, 1e8, 0),
    FIELD(switch_error_pa, 1, -1e7, 1e7, 0),
    FIELD(gauge_error_pa, 1, -1e7, 1e7, 0),
    FIELD(rated_delivery_m3_s, 0, 0.0, 1000.0, 0),
    FIELD(rated_pa, 0, 0.0, 1e8, 0),
    FIELD(gas_constant_j_kg_k, 0, 0.0, 1e4, 0),
    FIELD(heat_capacity_ratio, 0, 1.0, 1.7, 0),
    FIELD(heat_capacity_rise, 1, 0.0, 1.0, 0)
};

#undef FIELD

static const freeair_machine initial_machine = FREEAIR_MACHINE_INIT;
static const freeair_machine_site initial_site = FREEAIR_MACHINE_SITE_INIT;

static int fields_in_range(const freeair_machine *m)
{
  for (size_t i = 0; i < FREEAIR__COUNT(fields); i++) {
    double x;
    memcpy(&x, (const unsigned char *)m + fields[i].offset, sizeof x);
    if (!freeair__given(x)) {
      if (fields[i].required) return 0;
      continue;
    }
    if (fields[i].closed ? !freeair__closed(x, fields[i].lo, fields[i].hi)
                         : !freeair__upto(x, fields[i].lo, fields[i].hi))
      return 0;
  }
  return m->flags == 0u && m->stages >= 1 && m->stages <= 2 && m->arrangement >= FREEAIR_MACHINE_V &&
         m->arrangement <= FREEAIR_MACHINE_SIDE_BY_SIDE && m->lp_cylinders >= 1 && m->lp_cylinders <= 4 &&
         m->hp_cylinders >= 1 && m->hp_cylinders <= 4 && m->lp_leaking_cylinders >= 0 &&
         m->lp_leaking_cylinders <= 4 && m->hp_leaking_cylinders >= 0 && m->hp_leaking_cylinders <= 4;
}

static void set(double *field, double otherwise)
{
  if (!freeair__given(*field)) *field = otherwise;
}

static void complete_drive(freeair_machine *m)
{
  set(&m->motor_synchronous_rev_s, 30.0);
  set(&m->motor_rated_slip, 0.035);
  double motor = m->motor_synchronous_rev_s * (1.0 - m->motor_rated_slip);
  set(&m->pulley_ratio, m->speed_rev_s / motor);
  m->speed_rev_s = m->pulley_ratio * motor;
  set(&m->motor_rated_v, 230.0);
  set(&m->motor_torque_factor, 1.0);
  set(&m->belt_slip, 0.0);
  set(&m->belt_efficiency, 0.95);
  set(&m->fmep_pa, 3e4);
}

static void complete_cylinders(freeair_machine *m)
{
  int two_in_one = m->stages == 1 && m->lp_cylinders == 2;
  set(&m->hp_bore_m, 0.55 * m->lp_bore_m);
  set(&m->hp_stroke_m, m->lp_stroke_m);
  set(&m->rod_ratio, 0.25);
  set(&m->lp_clearance, 0.05);
  set(&m->hp_clearance, 0.07);
  set(&m->phase_rad, m->arrangement == FREEAIR_MACHINE_V ? 0.5 * pi : pi);
  set(&m->lp_spread_rad, two_in_one ? m->phase_rad : 2.0 * pi / m->lp_cylinders);
  set(&m->hp_spread_rad, 2.0 * pi / m->hp_cylinders);
  set(&m->lp_wall_ua_w_k, 120.0 * pi * m->lp_bore_m * (m->lp_stroke_m + 0.5 * m->lp_bore_m));
  set(&m->hp_wall_ua_w_k, 120.0 * pi * m->hp_bore_m * (m->hp_stroke_m + 0.5 * m->hp_bore_m));
  set(&m->lp_ring_area_m2, 5e-7 * m->lp_bore_m);
  set(&m->hp_ring_area_m2, 5e-7 * m->hp_bore_m);
  set(&m->crankcase_k, 330.0);
  set(&m->heat_coefficient, 0.7);
  set(&m->heat_exponent, 0.7);
  set(&m->gasket_breach_m2, 0.0);
  set(&m->lp_gasket_leak_m2, 0.0);
  set(&m->hp_gasket_leak_m2, 0.0);
  set(&m->gas_constant_j_kg_k, 287.05);
  set(&m->heat_capacity_ratio, 1.4);
  set(&m->heat_capacity_rise, 0.0);
}

static void complete_valves(freeair_machine *m, double interstage)
{
  double lp_flow = 0.25 * pi * m->lp_bore_m * m->lp_bore_m * 2.0 * m->lp_stroke_m * m->speed_rev_s;
  double hp_flow = 0.25 * pi * m->hp_bore_m * m->hp_bore_m * 2.0 * m->hp_stroke_m * m->speed_rev_s;
  set(&m->lp_suction_area_m2, fmin(1.0, lp_flow / 50.0));
  set(&m->lp_discharge_area_m2, fmin(1.0, lp_flow / 60.0));
  set(&m->hp_suction_area_m2, fmin(1.0, hp_flow / 50.0));
  set(&m->hp_discharge_area_m2, fmin(1.0, hp_flow / 60.0));
  set(&m->lp_suction_leak_m2, 0.0);
  set(&m->lp_discharge_leak_m2, 0.0);
  set(&m->hp_suction_leak_m2, 0.0);
  set(&m->hp_discharge_leak_m2, 0.0);
  set(&m->lp_suction_lift_pa, 0.03 * nominal_suction);
  set(&m->lp_discharge_lift_pa, 0.03 * (m->stages == 2 ? interstage : m->cut_out_pa));
  set(&m->hp_suction_lift_pa, 0.03 * interstage);
  set(&m->hp_discharge_lift_pa, 0.03 * m->cut_out_pa);
  double last = m->stages == 2 ? m->hp_cylinders * m->hp_discharge_area_m2
                               : m->lp_cylinders * m->lp_discharge_area_m2;
  set(&m->check_valve_area_m2, fmin(1.0, last));
  set(&m->check_valve_leak_m2, 0.0);
  set(&m->check_valve_lift_pa, 1e4);
}

static void complete_system(freeair_machine *m, double swept, double interstage)
{
  double displacement = swept * m->speed_rev_s;
  double capacity = displacement * nominal_density * nominal_heat_capacity;
  set(&m->filter_area_m2, fmin(10.0, displacement * pi / 41.0));
  set(&m->plenum_m3, fmin(10.0, 0.5 * swept));
  set(&m->intercooler_m3, fmin(10.0, 1.5 * swept));
  set(&m->intercooler_ua_w_k, 1.7 * capacity);
  set(&m->intercooler_area_m2, 1.5 * m->hp_suction_area_m2);
  set(&m->relief_set_pa, 1.5 * interstage);
  /* choked flow of 1.5 displacements: 0.6847 p / sqrt(R T) */
  set(&m->relief_area_m2,
      fmin(1.0, 1.5 * displacement * nominal_density * sqrt(287.05 * nominal_temperature) /
                  (0.6847 * m->relief_set_pa)));
  set(&m->intercooler_leak_m2, 0.0);
  set(&m->line_m3, fmin(10.0, 0.3 * swept));
  set(&m->line_ua_w_k, 0.3 * capacity);
  set(&m->unloader_leak_m2, 0.0);
  set(&m->suction_ua_w_k, 0.12 * capacity);
  set(&m->receiver_m3, fmin(1e4, 20.0 * displacement));
  set(&m->receiver_water_m3, 0.0);
  set(&m->receiver_wall_j_k, 1e4 * m->receiver_m3 * m->cut_out_pa / 1e5);
  double area = cbrt(m->receiver_m3 * m->receiver_m3);
  set(&m->receiver_gas_ua_w_k, 29.0 * area);
  set(&m->receiver_wall_ua_w_k, 58.0 * area);
  set(&m->downstream_leak_m2, 0.0);
  set(&m->demand_m3_s, 0.0);
  set(&m->switch_error_pa, 0.0);
  set(&m->gauge_error_pa, 0.0);
  set(&m->rated_pa, m->cut_out_pa);
  /* isentropic work at 80 % volumetric and 80 % adiabatic efficiency, plus friction */
  double swept_all = swept + (m->stages == 2 ? m->hp_cylinders * freeair__machine_swept(m->hp_bore_m, m->hp_stroke_m)
                                             : 0.0);
  double lift = expm1(log(fmax(m->cut_out_pa / nominal_suction, 1.5)) / (3.5 * m->stages));
  set(&m->motor_rated_w, fmin(1e8, 1.1 * (3.5 * m->stages * displacement * nominal_suction * lift +
                                          m->fmep_pa * swept_all * m->speed_rev_s)));
}

int32_t freeair__machine_read(const freeair_machine *machine, freeair_machine *m)
{
  *m = initial_machine;
  int32_t status = freeair__structure_read(m, sizeof *m, machine, FREEAIR_MACHINE_BASELINE);
  if (status < 0) return status;
  m->struct_size = (uint32_t)sizeof *m;
  if (!fields_in_range(m) || (!freeair__given(m->speed_rev_s) && !freeair__given(m->pulley_ratio)))
    return FREEAIR_ERR_DOMAIN;
  complete_drive(m);
  complete_cylinders(m);
  set(&m->cut_out_pa, m->stages == 2 ? 13.08e5 : 9.63e5);
  set(&m->cut_in_pa, fmin(m->stages == 2 ? 10.32e5 : 7.56e5, 0.8 * m->cut_out_pa));
  double swept = m->lp_cylinders * freeair__machine_swept(m->lp_bore_m, m->lp_stroke_m);
  double swept_hp = m->hp_cylinders * freeair__machine_swept(m->hp_bore_m, m->hp_stroke_m);
  double interstage = nominal_suction * fmin(fmax(swept / swept_hp, 1.2), 50.0);
  complete_valves(m, interstage);
  complete_system(m, swept, interstage);
  if (!fields_in_range(m) || m->lp_suction_leak_m2 > m->lp_suction_area_m2 ||
      m->lp_discharge_leak_m2 > m->lp_discharge_area_m2 || m->hp_suction_leak_m2 > m->hp_suction_area_m2 ||
      m->hp_discharge_leak_m2 > m->hp_discharge_area_m2 || m->check_valve_leak_m2 > m->check_valve_area_m2 ||
      !(m->cut_in_pa < m->cut_out_pa) || !(m->receiver_water_m3 < m->receiver_m3))
    return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

int32_t freeair__machine_site_read(const freeair_machine_site *site, const freeair_machine *m,
                                   freeair_machine_site *s)
{
  *s = initial_site;
  int32_t status = freeair__structure_read(s, sizeof *s, site, FREEAIR_MACHINE_SITE_BASELINE);
  if (status < 0) return status;
  s->struct_size = (uint32_t)sizeof *s;
  set(&s->barometric_pa, 101325.0);
  set(&s->ambient_k, 293.15);
  set(&s->humidity, 0.0);
  set(&s->supply_v, m->motor_rated_v);
  if (s->flags != 0u || !freeair__closed(s->barometric_pa, 3e4, 1.2e5) ||
      !freeair__closed(s->ambient_k, 220.0, 340.0) || !freeair__closed(s->humidity, 0.0, 1.0) ||
      !freeair__upto(s->supply_v, 0.0, 1e5))
    return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

int32_t freeair_machine_complete(const freeair_machine *machine, freeair_machine *complete)
{
  if (complete == NULL) return FREEAIR_ERR_NULL;
  freeair_machine m = initial_machine;
  int32_t status = machine == NULL ? FREEAIR_ERR_NULL : freeair__machine_read(machine, &m);
  if (status < 0) m = initial_machine;
  int32_t written = freeair__structure_write(complete, &m, sizeof m, FREEAIR_MACHINE_BASELINE);
  return status < 0 ? status : written;
}

int32_t freeair_machine_displacement(const freeair_machine *machine, double *displacement_m3_s)
{
  if (displacement_m3_s == NULL) return FREEAIR_ERR_NULL;
  *displacement_m3_s = NAN;
  if (machine == NULL) return FREEAIR_ERR_NULL;
  freeair_machine m;
  int32_t status = freeair__machine_read(machine, &m);
  if (status < 0) return status;
  *displacement_m3_s = m.lp_cylinders * freeair__machine_swept(m.lp_bore_m, m.lp_stroke_m) * m.speed_rev_s;
  return FREEAIR_OK;
}
