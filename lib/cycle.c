/* SPDX-License-Identifier: MIT */
#include <freeair/cycle.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/cycle.h"
#include "internal/machine.h"
#include "internal/structure.h"

static const freeair_cycle_result initial = FREEAIR_CYCLE_RESULT_INIT;

/* Whether a machine could stand this: motor slip and wall temperatures. */
static int32_t limits(const freeair__cycle *c, const freeair__cycle_state *s)
{
  double motor = s->omega / 6.28318530717958647693 / (c->m.pulley_ratio * (1.0 - c->m.belt_slip));
  if (1.0 - motor / c->m.motor_synchronous_rev_s > 0.2) return FREEAIR_WARN_LIMIT;
  for (int i = 0; i < c->n_cylinders; i++)
    if (s->wall[i] > 700.0) return FREEAIR_WARN_LIMIT;
  return FREEAIR_OK;
}

static int32_t set_up(const freeair_machine *machine, const freeair_machine_site *site, double receiver_pa,
                      double receiver_k, double *accuracy, freeair__cycle *c)
{
  if (machine == NULL || site == NULL) return FREEAIR_ERR_NULL;
  freeair_machine m;
  freeair_machine_site s;
  int32_t status = freeair__machine_read(machine, &m);
  if (status == FREEAIR_OK) status = freeair__machine_site_read(site, &m, &s);
  if (status < 0) return status;
  receiver_k = freeair__or(receiver_k, s.ambient_k);
  *accuracy = freeair__or(*accuracy, 1e-3);
  if (!freeair__upto(receiver_pa, 0.0, 1e8) || !freeair__upto(receiver_k, 0.0, 1000.0) ||
      !freeair__closed(*accuracy, 1e-6, 0.1))
    return FREEAIR_ERR_DOMAIN;
  freeair__cycle_build(c, &m, &s, receiver_pa, receiver_k);
  return FREEAIR_OK;
}

static double mean_discharge(const freeair__cycle *c, const freeair__cycle_sums *q, int stage)
{
  double mass = 0.0;
  double enthalpy = 0.0;
  for (int i = 0; i < c->n_cylinders; i++) {
    if (c->cylinder[i].stage != stage) continue;
    mass += q->forward_mass[c->cylinder[i].discharge];
    enthalpy += q->forward_enthalpy[c->cylinder[i].discharge];
  }
  if (!(mass > 1e-6 * c->mass_scale)) return NAN;
  return c->gas.warm ? freeair__gas_temperature_of_enthalpy(&c->gas, enthalpy / mass) : enthalpy / (mass * c->cp);
}

double freeair__cycle_delivered(const freeair__cycle *c, const freeair__cycle_sums *sums)
{
  double mass = sums->forward_mass[c->link_check];
  double back = mass - sums->mass[c->link_check];
  if (!c->gas.warm) return sums->enthalpy[c->link_check];
  double t = mass > 0.0 ? freeair__gas_temperature_of_enthalpy(&c->gas, sums->forward_enthalpy[c->link_check] / mass)
                        : 0.0;
  return c->cp * (mass * t - back * c->receiver_t);
}

static void fill_flows(const freeair__cycle *c, const freeair__cycle_sums *q, double per_s, freeair_cycle_result *r)
{
  r->delivery_kg_s = q->mass[c->link_check] * per_s;
  r->delivery_m3_s = r->delivery_kg_s * c->gas_r * c->site.ambient_k / c->site.barometric_pa;
  r->intake_kg_s = q->mass[c->link_filter] * per_s;
  r->inlet_backflow_kg_s = (q->forward_mass[c->link_filter] - q->mass[c->link_filter]) * per_s;
  r->unloader_kg_s = q->mass[c->link_unloader] * per_s;
  r->relief_kg_s = c->link_relief >= 0 ? q->mass[c->link_relief] * per_s : 0.0;
  r->interstage_leak_kg_s = c->link_leak >= 0 ? q->mass[c->link_leak] * per_s : 0.0;
  r->gasket_breach_kg_s = c->link_breach >= 0 ? q->mass[c->link_breach] * per_s : 0.0;
  r->lp_ring_kg_s = r->hp_ring_kg_s = r->gasket_leak_kg_s = 0.0;
  r->lp_suction_backflow_kg_s = r->hp_suction_backflow_kg_s = 0.0;
  double lp_intake = 0.0;
  double hp_intake = 0.0;
  double lp_swept = 0.0;
  double hp_swept = 0.0;
  for (int i = 0; i < c->n_cylinders; i++) {
    const freeair__cylinder *y = &c->cylinder[i];
    int hp = y->stage == 2;
    double intake = q->mass[y->suction];
    double back = q->forward_mass[y->suction] - intake;
    *(hp ? &r->hp_ring_kg_s : &r->lp_ring_kg_s) += q->mass[y->ring] * per_s;
    *(hp ? &r->hp_suction_backflow_kg_s : &r->lp_suction_backflow_kg_s) += back * per_s;
    *(hp ? &hp_intake : &lp_intake) += intake;
    *(hp ? &hp_swept : &lp_swept) += y->swept;
    if (y->gasket >= 0) r->gasket_leak_kg_s += q->mass[y->gasket] * per_s;
  }
  r->lp_volumetric_efficiency = lp_intake / (lp_swept * c->site.barometric_pa / (c->gas_r * c->site.ambient_k));
  if (c->intercooler >= 0)
    r->hp_volumetric_efficiency =
        hp_intake / (hp_swept * r->interstage_mean_pa / (c->gas_r * r->intercooler_k));
}

static void fill_power(const freeair__cycle *c, const freeair__cycle_sums *q, double omega, double per_s,
                       freeair_cycle_result *r)
{
  r->lp_indicated_w = r->hp_indicated_w = r->friction_w = r->wall_heat_w = 0.0;
  for (int i = 0; i < c->n_cylinders; i++) {
    const freeair__cylinder *y = &c->cylinder[i];
    int hp = y->stage == 2;
    *(hp ? &r->hp_indicated_w : &r->lp_indicated_w) -= q->work[i] * per_s;
    r->friction_w += freeair__cycle_friction(c, i, omega);
    r->wall_heat_w += q->heat[i] * per_s;
    double most = (q->highest[i] - c->site.barometric_pa) * y->area;
    double least = (q->lowest[i] - c->site.barometric_pa) * y->area;
    double *max = hp ? &r->hp_rod_max_n : &r->lp_rod_max_n;
    double *min = hp ? &r->hp_rod_min_n : &r->lp_rod_min_n;
    *max = freeair__given(*max) ? fmax(*max, most) : most;
    *min = freeair__given(*min) ? fmin(*min, least) : least;
  }
  r->shaft_w = r->lp_indicated_w + r->hp_indicated_w + r->friction_w;
  r->motor_w = r->shaft_w / c->m.belt_efficiency;
  r->speed_rev_s = per_s;
  r->motor_speed_rev_s = per_s / (c->m.pulley_ratio * (1.0 - c->m.belt_slip));
  r->motor_slip = 1.0 - r->motor_speed_rev_s / c->m.motor_synchronous_rev_s;
  r->line_w = q->heat[c->line] * per_s;
  if (c->intercooler >= 0) r->intercooler_w = q->heat[c->intercooler] * per_s;
}

void freeair__cycle_report(const freeair__cycle *c, const freeair__cycle_state *s, const freeair__cycle_sums *q,
                           const freeair__cycle_effort *effort, freeair_cycle_result *r)
{
  *r = initial;
  double per_s = s->omega / 6.28318530717958647693;
  r->plenum_pa = q->pressure[c->plenum] * per_s;
  r->plenum_k = q->temperature[c->plenum] * per_s;
  r->line_pa = q->pressure[c->line] * per_s;
  r->line_k = q->temperature[c->line] * per_s;
  r->lp_wall_k = s->wall[0];
  r->lp_discharge_k = mean_discharge(c, q, 1);
  if (c->intercooler >= 0) {
    r->interstage_mean_pa = q->pressure[c->intercooler] * per_s;
    r->interstage_min_pa = q->lowest[c->intercooler];
    r->interstage_max_pa = q->highest[c->intercooler];
    r->intercooler_k = q->temperature[c->intercooler] * per_s;
    r->hp_wall_k = s->wall[c->m.lp_cylinders];
    r->hp_discharge_k = mean_discharge(c, q, 2);
  }
  fill_flows(c, q, per_s, r);
  fill_power(c, q, s->omega, per_s, r);
  r->mass_error = q->mass_error;
  r->energy_error = q->energy_error;
  r->residual = effort->residual;
  r->revolutions = effort->revolutions;
  r->steps = effort->steps;
  r->evaluations = effort->evaluations;
  r->stages = c->m.stages;
}

int32_t freeair_cycle_point(const freeair_machine *machine, const freeair_machine_site *site, double receiver_pa,
                            double receiver_k, double accuracy, freeair_cycle_result *point)
{
  if (point == NULL) return FREEAIR_ERR_NULL;
  freeair_cycle_result r = initial;
  freeair__cycle c;
  int32_t status = set_up(machine, site, receiver_pa, receiver_k, &accuracy, &c);
  if (status == FREEAIR_OK) {
    freeair__cycle_state s = {.known = 0};
    freeair__cycle_work work = {.factored = 0};
    freeair__cycle_sums sums;
    freeair__cycle_effort effort;
    status = freeair__cycle_solve(&c, accuracy, &s, &work, &sums, &effort);
    if (status == FREEAIR_OK) {
      freeair__cycle_report(&c, &s, &sums, &effort, &r);
      status = limits(&c, &s);
    }
  }
  int32_t written = freeair__structure_write(point, &r, sizeof r, FREEAIR_CYCLE_RESULT_BASELINE);
  return written < 0 ? written : status;
}

int32_t freeair_cycle_card(const freeair_machine *machine, const freeair_machine_site *site, double receiver_pa,
                           double receiver_k, double accuracy, int32_t cylinder, double *v_m3, double *p_pa,
                           double *t_k, size_t n)
{
  for (size_t i = 0; i < n; i++) {
    if (v_m3 != NULL) v_m3[i] = NAN;
    if (p_pa != NULL) p_pa[i] = NAN;
    if (t_k != NULL) t_k[i] = NAN;
  }
  if (v_m3 == NULL || p_pa == NULL || t_k == NULL) return FREEAIR_ERR_NULL;
  freeair__cycle c;
  int32_t status = set_up(machine, site, receiver_pa, receiver_k, &accuracy, &c);
  if (status < 0) return status;
  if (n < 4 || cylinder < 0 || cylinder > 7) return FREEAIR_ERR_DOMAIN;
  if (cylinder >= c.n_cylinders) return FREEAIR_ERR_NOT_FOUND;
  freeair__cycle_state s = {.known = 0};
  freeair__cycle_work work = {.factored = 0};
  freeair__cycle_sums sums;
  freeair__cycle_effort effort;
  status = freeair__cycle_solve(&c, accuracy, &s, &work, &sums, &effort);
  if (status < 0) return status;
  freeair__cycle_card card = {.volume = cylinder, .n = n, .p = p_pa, .v = v_m3, .t = t_k};
  double end[FREEAIR__STATES];
  if (!freeair__cycle_revolution(&c, &s, 0.1 * accuracy, &work.mesh, end, &sums, 0, &card, NULL, &effort)) {
    for (size_t i = 0; i < n; i++) v_m3[i] = p_pa[i] = t_k[i] = NAN;
    return FREEAIR_ERR_NO_CONVERGENCE;
  }
  return limits(&c, &s);
}
