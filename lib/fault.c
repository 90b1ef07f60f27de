/* SPDX-License-Identifier: MIT */
#include <freeair/fault.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/machine.h"
#include "internal/structure.h"

static const char *const names[] = {
    "none",
    "intake filter",
    "suction valve, first stage",
    "discharge valve, first stage",
    "suction valve, second stage",
    "discharge valve, second stage",
    "head gasket between cylinders",
    "head gasket to outside, first stage",
    "head gasket to outside, second stage",
    "piston rings, first stage",
    "piston rings, second stage",
    "interstage leak",
    "intercooler fouled",
    "interstage relief valve weak",
    "unloader leak",
    "receiver check valve",
    "downstream leak",
    "demand",
    "water in the receiver",
    "belt slip",
    "wrong pulley",
    "low voltage",
    "weak run capacitor",
    "pressure switch",
    "pressure gauge",
};

int32_t freeair_fault_count(void)
{
  return (int32_t)FREEAIR__COUNT(names);
}

static int known(int32_t fault)
{
  return fault >= 0 && fault < (int32_t)FREEAIR__COUNT(names);
}

const char *freeair_fault_name(int32_t fault)
{
  return known(fault) ? names[fault] : "unknown";
}

static int applies_to(const freeair_machine *m, int32_t fault)
{
  switch (fault) {
    case FREEAIR_FAULT_HP_SUCTION_VALVE:
    case FREEAIR_FAULT_HP_DISCHARGE_VALVE:
    case FREEAIR_FAULT_HP_GASKET_OUTSIDE:
    case FREEAIR_FAULT_HP_RINGS:
    case FREEAIR_FAULT_INTERSTAGE_LEAK:
    case FREEAIR_FAULT_INTERCOOLER_FOULED:
    case FREEAIR_FAULT_RELIEF_WEAK: return m->stages == 2;
    case FREEAIR_FAULT_GASKET_BETWEEN:
      return m->arrangement == FREEAIR_MACHINE_SIDE_BY_SIDE && (m->stages == 2 || m->lp_cylinders >= 2);
    default: return 1;
  }
}

int32_t freeair_fault_applies(const freeair_machine *machine, int32_t fault, int32_t *applies)
{
  if (applies == NULL) return FREEAIR_ERR_NULL;
  *applies = 0;
  if (machine == NULL) return FREEAIR_ERR_NULL;
  freeair_machine m;
  int32_t status = freeair__machine_read(machine, &m);
  if (status < 0) return status;
  if (!known(fault)) return FREEAIR_ERR_NOT_FOUND;
  *applies = applies_to(&m, fault);
  return FREEAIR_OK;
}

static double bore_area(double bore)
{
  return 0.78539816339744830962 * bore * bore;
}

static double capped(double x, double cap)
{
  return x < cap ? x : cap;
}

/* Opens a valve for good by a share of what is left. With several cylinders
 * the fault is one of the first of them, until told otherwise. */
static void open_valve(double *leak, double area, double share, int32_t cylinders, double other_leak,
                       int32_t *leaking)
{
  if (*leaking == 0 && cylinders > 1 && *leak == 0.0 && other_leak == 0.0) *leaking = 1;
  *leak = capped(*leak + (area - *leak) * share, area);
}

static void apply_to_valves(freeair_machine *m, int32_t fault, double s2)
{
  switch (fault) {
    case FREEAIR_FAULT_LP_SUCTION_VALVE:
      open_valve(&m->lp_suction_leak_m2, m->lp_suction_area_m2, s2, m->lp_cylinders, m->lp_discharge_leak_m2,
                 &m->lp_leaking_cylinders);
      break;
    case FREEAIR_FAULT_LP_DISCHARGE_VALVE:
      open_valve(&m->lp_discharge_leak_m2, m->lp_discharge_area_m2, s2, m->lp_cylinders, m->lp_suction_leak_m2,
                 &m->lp_leaking_cylinders);
      break;
    case FREEAIR_FAULT_HP_SUCTION_VALVE:
      open_valve(&m->hp_suction_leak_m2, m->hp_suction_area_m2, s2, m->hp_cylinders, m->hp_discharge_leak_m2,
                 &m->hp_leaking_cylinders);
      break;
    case FREEAIR_FAULT_HP_DISCHARGE_VALVE:
      open_valve(&m->hp_discharge_leak_m2, m->hp_discharge_area_m2, s2, m->hp_cylinders, m->hp_suction_leak_m2,
                 &m->hp_leaking_cylinders);
      break;
    case FREEAIR_FAULT_CHECK_VALVE:
      m->check_valve_leak_m2 =
          capped(m->check_valve_leak_m2 + (m->check_valve_area_m2 - m->check_valve_leak_m2) * s2,
                 m->check_valve_area_m2);
      break;
    default: break;
  }
}

static void apply_to_pump(freeair_machine *m, const freeair_machine_site *site, int32_t fault, double s)
{
  double s2 = s * s;
  double lp = bore_area(m->lp_bore_m);
  double hp = bore_area(m->hp_bore_m);
  switch (fault) {
    case FREEAIR_FAULT_INTAKE_FILTER: m->filter_area_m2 *= pow(0.03, s); break;
    case FREEAIR_FAULT_GASKET_BETWEEN:
      m->gasket_breach_m2 = capped(m->gasket_breach_m2 + 0.01 * s2 * (m->stages == 2 && hp < lp ? hp : lp), 1.0);
      break;
    case FREEAIR_FAULT_LP_GASKET_OUTSIDE:
      m->lp_gasket_leak_m2 = capped(m->lp_gasket_leak_m2 + 0.01 * s2 * lp, 1.0);
      break;
    case FREEAIR_FAULT_HP_GASKET_OUTSIDE:
      m->hp_gasket_leak_m2 = capped(m->hp_gasket_leak_m2 + 0.01 * s2 * hp, 1.0);
      break;
    case FREEAIR_FAULT_LP_RINGS: m->lp_ring_area_m2 = capped(m->lp_ring_area_m2 + 0.005 * s2 * lp, 1.0); break;
    case FREEAIR_FAULT_HP_RINGS: m->hp_ring_area_m2 = capped(m->hp_ring_area_m2 + 0.005 * s2 * hp, 1.0); break;
    case FREEAIR_FAULT_INTERSTAGE_LEAK:
      m->intercooler_leak_m2 =
          capped(m->intercooler_leak_m2 + 0.1 * s2 * m->lp_cylinders * m->lp_discharge_area_m2, 1.0);
      break;
    case FREEAIR_FAULT_INTERCOOLER_FOULED:
      m->intercooler_ua_w_k *= pow(0.1, s);
      m->intercooler_area_m2 *= pow(0.3, s);
      break;
    case FREEAIR_FAULT_RELIEF_WEAK:
      if (m->relief_set_pa > site->barometric_pa)
        m->relief_set_pa = site->barometric_pa + (m->relief_set_pa - site->barometric_pa) * (1.0 - 0.95 * s);
      break;
    case FREEAIR_FAULT_UNLOADER_LEAK:
      m->unloader_leak_m2 = capped(m->unloader_leak_m2 + 0.1 * s2 * m->check_valve_area_m2, 1.0);
      break;
    default: break;
  }
}

static void apply_to_system(freeair_machine *m, freeair_machine_site *site, int32_t fault, double s)
{
  double displacement = m->lp_cylinders * freeair__machine_swept(m->lp_bore_m, m->lp_stroke_m) * m->speed_rev_s;
  switch (fault) {
    case FREEAIR_FAULT_DOWNSTREAM_LEAK:
      /* choked flow at cut-out and 293.15 K, 0.6847 p A / sqrt(R T), as free air at 101325 Pa */
      m->downstream_leak_m2 = capped(
          m->downstream_leak_m2 + s * s * displacement * 101325.0 / (0.6847 * 290.08 * m->cut_out_pa), 1.0);
      break;
    case FREEAIR_FAULT_DEMAND: m->demand_m3_s = capped(m->demand_m3_s + s * displacement, 1000.0); break;
    case FREEAIR_FAULT_RECEIVER_WATER: m->receiver_water_m3 += 0.8 * s * (m->receiver_m3 - m->receiver_water_m3); break;
    case FREEAIR_FAULT_BELT_SLIP: m->belt_slip = capped(1.0 - (1.0 - m->belt_slip) * (1.0 - 0.4 * s), 0.9); break;
    case FREEAIR_FAULT_PULLEY:
      m->pulley_ratio *= 1.0 - 0.4 * s;
      m->speed_rev_s *= 1.0 - 0.4 * s;
      break;
    case FREEAIR_FAULT_LOW_VOLTAGE: site->supply_v *= 1.0 - 0.3 * s; break;
    case FREEAIR_FAULT_RUN_CAPACITOR: m->motor_torque_factor *= 1.0 - 0.6 * s; break;
    case FREEAIR_FAULT_PRESSURE_SWITCH:
      m->switch_error_pa = capped(m->switch_error_pa + 0.3 * s * fmax(m->cut_out_pa - site->barometric_pa, 0.0), 1e7);
      break;
    case FREEAIR_FAULT_GAUGE:
      m->gauge_error_pa = capped(m->gauge_error_pa + 0.3 * s * fmax(m->cut_out_pa - site->barometric_pa, 0.0), 1e7);
      break;
    default: break;
  }
}

int32_t freeair_fault_apply(const freeair_machine *machine, const freeair_machine_site *site, int32_t fault,
                            double severity, freeair_machine *faulty_machine, freeair_machine_site *faulty_site)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  freeair_machine_site s = FREEAIR_MACHINE_SITE_INIT;
  int32_t status = machine == NULL || site == NULL || faulty_machine == NULL || faulty_site == NULL
                       ? FREEAIR_ERR_NULL
                       : FREEAIR_OK;
  if (status == FREEAIR_OK) status = freeair__machine_read(machine, &m);
  if (status == FREEAIR_OK) status = freeair__machine_site_read(site, &m, &s);
  if (status == FREEAIR_OK && !freeair__closed(severity, 0.0, 1.0)) status = FREEAIR_ERR_DOMAIN;
  if (status == FREEAIR_OK && !known(fault)) status = FREEAIR_ERR_NOT_FOUND;
  if (status == FREEAIR_OK && !applies_to(&m, fault)) status = FREEAIR_ERR_UNSUPPORTED;
  if (status == FREEAIR_OK) {
    apply_to_valves(&m, fault, severity * severity);
    apply_to_pump(&m, &s, fault, severity);
    apply_to_system(&m, &s, fault, severity);
  } else {
    m = (freeair_machine)FREEAIR_MACHINE_INIT;
    s = (freeair_machine_site)FREEAIR_MACHINE_SITE_INIT;
  }
  int32_t written = faulty_machine == NULL ? FREEAIR_OK
                                           : freeair__structure_write(faulty_machine, &m, sizeof m,
                                                                      FREEAIR_MACHINE_BASELINE);
  if (faulty_site != NULL) {
    int32_t other = freeair__structure_write(faulty_site, &s, sizeof s, FREEAIR_MACHINE_SITE_BASELINE);
    if (written == FREEAIR_OK) written = other;
  }
  return status < 0 ? status : written;
}
