/* SPDX-License-Identifier: MIT */
#include <freeair/rating.h>
#include <freeair/status.h>

#include "internal/bracket.h"
#include "internal/check.h"
#include "internal/cycle.h"
#include "internal/machine.h"
#include "internal/structure.h"

#include <string.h>

/* The problem: what was given, and the site. */
typedef struct problem {
  const freeair_machine *given;
  const freeair_machine_site *site;
  freeair__cycle_state state;
  freeair__cycle_work work;
} problem;

/* A description with some unknowns set by factors. */
typedef struct choice {
  double speed;
  double bore;
  double clearance; /* factors on the defaults */
  double valves;
  double heating;
} choice;

static void scale_missing(const double *given, double *field, double factor, double most)
{
  if (!freeair__given(*given)) *field = fmin(*field * factor, most);
}

static int32_t describe(const problem *q, const choice *x, freeair_machine *m)
{
  freeair_machine raw = *q->given;
  const freeair_machine *g = q->given;
  if (freeair__given(x->speed)) raw.speed_rev_s = x->speed;
  if (freeair__given(x->bore)) raw.lp_bore_m = x->bore;
  int32_t status = freeair__machine_read(&raw, m);
  if (status < 0) return status;
  scale_missing(&g->lp_clearance, &m->lp_clearance, x->clearance, 0.5);
  scale_missing(&g->hp_clearance, &m->hp_clearance, x->clearance, 0.5);
  scale_missing(&g->lp_suction_area_m2, &m->lp_suction_area_m2, x->valves, 1.0);
  scale_missing(&g->lp_discharge_area_m2, &m->lp_discharge_area_m2, x->valves, 1.0);
  scale_missing(&g->hp_suction_area_m2, &m->hp_suction_area_m2, x->valves, 1.0);
  scale_missing(&g->hp_discharge_area_m2, &m->hp_discharge_area_m2, x->valves, 1.0);
  scale_missing(&g->suction_ua_w_k, &m->suction_ua_w_k, x->heating, 1e6);
  freeair_machine check;
  return freeair__machine_read(m, &check);
}

/* Delivery over the rating, less one. */
static int32_t excess(problem *q, const choice *x, freeair_machine *m, double *delivery, double *miss)
{
  int32_t status = describe(q, x, m);
  freeair_machine_site s;
  if (status == FREEAIR_OK) status = freeair__machine_site_read(q->site, m, &s);
  if (status < 0) return status;
  freeair__cycle c;
  freeair__cycle_sums sums;
  freeair__cycle_effort effort;
  freeair__cycle_build(&c, m, &s, m->rated_pa, s.ambient_k);
  q->state.known = 0;
  status = freeair__cycle_solve(&c, 3e-4, &q->state, &q->work, &sums, &effort);
  if (status < 0) return status;
  double per_s = q->state.omega / 6.28318530717958647693;
  *delivery = sums.mass[c.link_check] * per_s * c.gas_r * s.ambient_k / s.barometric_pa;
  *miss = freeair__given(m->rated_delivery_m3_s) ? *delivery / m->rated_delivery_m3_s - 1.0 : 0.0;
  return FREEAIR_OK;
}

static const double close_enough = 5e-4;

/* Adjusts one member of the choice between two ends until the rating is met;
 * stays at the better end when it cannot be. */
static int32_t adjust(problem *q, choice *x, double *member, double lo, double hi, freeair_machine *m,
                      double *delivery, double *miss)
{
  freeair__bracket between = {lo, hi, NAN, NAN};
  *member = lo;
  int32_t status = excess(q, x, m, delivery, &between.at_lo);
  if (status < 0) return status;
  *member = hi;
  status = excess(q, x, m, delivery, &between.at_hi);
  if (status < 0) return status;
  if (between.at_lo * between.at_hi > 0.0) {
    *member = fabs(between.at_lo) < fabs(between.at_hi) ? lo : hi;
    return excess(q, x, m, delivery, miss);
  }
  for (int i = 0; i < 40; i++) {
    *member = freeair__bracket_next(&between, i, 4);
    status = excess(q, x, m, delivery, miss);
    if (status < 0 || fabs(*miss) < close_enough) return status;
    freeair__bracket_draw(&between, *member, *miss);
  }
  return FREEAIR_OK;
}

/* Adjusts factor after factor, in the order in which they are uncertain, until
 * the rating is met. */
static int32_t adjust_details(problem *q, choice *x, freeair_machine *m, double *delivery, double *miss,
                              int32_t *adjusted)
{
  const freeair_machine *g = q->given;
  int two = g->stages == 2;
  int clearance = !freeair__given(g->lp_clearance) || (two && !freeair__given(g->hp_clearance));
  int valves = !freeair__given(g->lp_suction_area_m2) || !freeair__given(g->lp_discharge_area_m2) ||
               (two && (!freeair__given(g->hp_suction_area_m2) || !freeair__given(g->hp_discharge_area_m2)));
  struct {
    int free;
    int32_t bit;
    double *member;
    double more; /* factor that delivers most */
    double less;
  } steps[] = {{clearance, FREEAIR_RATING_CLEARANCE, &x->clearance, 0.4, 2.5},
               {valves, FREEAIR_RATING_VALVES, &x->valves, 2.0, 0.35},
               {!freeair__given(g->suction_ua_w_k), FREEAIR_RATING_HEATING, &x->heating, 0.0, 4.0}};
  int32_t status = excess(q, x, m, delivery, miss);
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++) {
    if (status < 0 || fabs(*miss) < close_enough) return status;
    if (!steps[i].free) continue;
    *adjusted |= steps[i].bit;
    double end = *miss > 0.0 ? steps[i].less : steps[i].more;
    status = adjust(q, x, steps[i].member, 1.0, end, m, delivery, miss);
  }
  return status;
}

static int32_t complete_from(problem *q, freeair_machine *m, int32_t *adjusted, double *delivery)
{
  choice x = {NAN, NAN, 1.0, 1.0, 1.0};
  double miss = 0.0;
  int32_t status;
  int rated = freeair__given(q->given->rated_delivery_m3_s);
  int no_speed = !freeair__given(q->given->speed_rev_s) && !freeair__given(q->given->pulley_ratio);
  int no_bore = !freeair__given(q->given->lp_bore_m);
  if (rated && no_bore && !no_speed && q->given->rated_delivery_m3_s > 0.0) {
    *adjusted = FREEAIR_RATING_BORE;
    /* from the displacement at full and at a fifth of it */
    double flow = q->given->rated_delivery_m3_s / fmax(q->given->lp_cylinders, 1);
    double speed = freeair__given(q->given->speed_rev_s) ? q->given->speed_rev_s : 15.0;
    double least = sqrt(flow / (0.7853981633974483 * q->given->lp_stroke_m * speed));
    if (!freeair__open(least, 0.0, 0.8)) return FREEAIR_ERR_DOMAIN;
    status = adjust(q, &x, &x.bore, least, 2.3 * least, m, delivery, &miss);
  } else if (rated && no_speed && !no_bore && q->given->rated_delivery_m3_s > 0.0) {
    *adjusted = FREEAIR_RATING_SPEED;
    double swept = q->given->lp_cylinders * freeair__machine_swept(q->given->lp_bore_m, q->given->lp_stroke_m);
    double least = q->given->rated_delivery_m3_s / swept;
    if (!freeair__open(least, 0.0, 20.0)) return FREEAIR_ERR_DOMAIN;
    status = adjust(q, &x, &x.speed, least, 5.0 * least, m, delivery, &miss);
  } else if (rated) {
    status = adjust_details(q, &x, m, delivery, &miss, adjusted);
  } else {
    status = excess(q, &x, m, delivery, &miss);
  }
  if (status < 0) return status;
  return fabs(miss) < 2.0 * close_enough ? FREEAIR_OK : FREEAIR_WARN_INCONSISTENT;
}

int32_t freeair_rating_complete(const freeair_machine *machine, const freeair_machine_site *site,
                                freeair_machine *complete, int32_t *adjusted, double *delivery_m3_s)
{
  freeair_machine m = FREEAIR_MACHINE_INIT;
  double delivery = NAN;
  int32_t what = FREEAIR_RATING_NOTHING;
  int32_t status = machine == NULL || site == NULL || complete == NULL || adjusted == NULL || delivery_m3_s == NULL
                       ? FREEAIR_ERR_NULL
                       : FREEAIR_OK;
  if (status == FREEAIR_OK) {
    freeair_machine given = FREEAIR_MACHINE_INIT;
    status = freeair__structure_read(&given, sizeof given, machine, FREEAIR_MACHINE_BASELINE);
    given.struct_size = (uint32_t)sizeof given;
    if (status == FREEAIR_OK) {
      problem q = {.given = &given, .site = site};
      status = complete_from(&q, &m, &what, &delivery);
    }
  }
  if (status < 0) {
    m = (freeair_machine)FREEAIR_MACHINE_INIT;
    delivery = NAN;
    what = FREEAIR_RATING_NOTHING;
  }
  if (adjusted != NULL) *adjusted = what;
  if (delivery_m3_s != NULL) *delivery_m3_s = delivery;
  if (complete == NULL) return status;
  int32_t written = freeair__structure_write(complete, &m, sizeof m, FREEAIR_MACHINE_BASELINE);
  return status < 0 ? status : written < 0 ? written : status;
}
