/* SPDX-License-Identifier: MIT */
#include "inspect.h"

#include <math.h>

static int has(const visit *v, int which)
{
  for (int i = 0; i < v->n_faults; i++)
    if (v->fault[i] == which) return 1;
  return 0;
}

/* Two observations of three are made; one answer in fifty is plainly wrong. */
static void observe(inspection *in, int32_t what, double probability)
{
  visit *v = in->v;
  if (!dice_chance(in->d, 0.65)) return;
  if (dice_chance(in->d, 0.02)) probability = 1.0 - probability;
  v->observation[v->n_observations] = what;
  v->answer[v->n_observations++] = dice_chance(in->d, probability) ? FREEAIR_EVIDENCE_YES : FREEAIR_EVIDENCE_NO;
}

/* Chance to notice a flow: even odds between lo and hi at the middle. */
static double noticed(double flow, double middle, double lo, double hi)
{
  return lo + (hi - lo) / (1.0 + pow(middle / fmax(flow, 1e-12), 2.5));
}

void inspect_senses(inspection *in)
{
  const visit *v = in->v;
  const freeair_machine *m = &in->t->m;
  const freeair_machine_site *site = &in->t->site;
  const pump_result *r = &in->top;
  double whole_kg_s = truth_displacement_m3_s(m) * site->barometric_pa / (287.05 * site->ambient_k);
  int two_stage = v->family != 2;
  int valves = has(v, CLASS_LP_SUCTION) || has(v, CLASS_LP_DISCHARGE) || has(v, CLASS_HP_SUCTION) ||
               has(v, CLASS_HP_DISCHARGE);
  double blow_back = fmax(r->inlet_backflow_kg_s / whole_kg_s - 0.025, 0.0); /* a sound intake breathes too */
  double breather = (r->lp_ring_kg_s + r->hp_ring_kg_s) / whole_kg_s;

  observe(in, FREEAIR_EVIDENCE_BLOW_BACK_AT_INLET, noticed(blow_back, 0.04, 0.03, 0.92));
  observe(in, FREEAIR_EVIDENCE_CHIRPING_AT_HEADS, valves ? 0.4 : 0.06);
  if (two_stage)
    observe(in, FREEAIR_EVIDENCE_INTERSTAGE_RELIEF_POPS, noticed(r->relief_kg_s / whole_kg_s, 0.003, 0.02, 0.95));
  observe(in, FREEAIR_EVIDENCE_BREATHER_BLOWS, noticed(breather, 0.035, 0.05, 0.9));
  observe(in, FREEAIR_EVIDENCE_OIL_IN_DRAIN, has(v, CLASS_RINGS) ? 0.5 : 0.12);
  observe(in, FREEAIR_EVIDENCE_BELT_DUST, has(v, CLASS_BELT) ? 0.65 : 0.08);
  observe(in, FREEAIR_EVIDENCE_BELT_SQUEALS, has(v, CLASS_BELT) ? 0.55 : 0.06);
  observe(in, FREEAIR_EVIDENCE_HISS_AT_SWITCH, noticed(r->unloader_kg_s / whole_kg_s, 0.02, 0.04, 0.9));
  observe(in, FREEAIR_EVIDENCE_UNLOADER_BLOWS_STOPPED, has(v, CLASS_CHECK_VALVE) ? 0.8 : 0.03);
  /* use is no hiss, and sounds of leaks belong to every shop */
  double heard = !has(v, CLASS_DOWNSTREAM) ? 0.15 : m->downstream_leak_m2 > 0.0 ? 0.8 : 0.2;
  observe(in, FREEAIR_EVIDENCE_LEAKS_HEARD, heard);
  observe(in, FREEAIR_EVIDENCE_FILTER_DIRTY, has(v, CLASS_FILTER) ? 0.9 : 0.15);
  if (two_stage) observe(in, FREEAIR_EVIDENCE_INTERSTAGE_BUBBLES, has(v, CLASS_INTERSTAGE_LEAK) ? 0.85 : 0.03);
}
