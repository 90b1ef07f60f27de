/* SPDX-License-Identifier: MIT */
/* Makes visits with the independent pump and writes them as JSON, one a line.
 *
 * usage: visits [-s series] [-f first] [-n visits]
 *
 * -s series (1); -f number of the first visit (0); -n how many (10). Visits that cannot be
 * made (no fault of the class drawn shows on that machine) are left out and counted on
 * standard error. A visit takes a second or two. */
#include "../visit_json.h"
#include "inspect.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { ATTEMPTS = 10 };

/* Breaks the machine so that it is noticed: at least 4.5 % of the delivery before is gone
 * at seven tenths of the way, yet it still pumps. A leaking check valve takes nothing
 * from a running machine. */
static int break_noticeably(dice *d, truth *t, int which, double sound_m3_s, double *size, double *lost)
{
  const truth before = *t;
  double before_m3_s = sound_m3_s * (1.0 - *lost);
  double high_pa = truth_pressure_pa(t, 0.7);
  double low_pa = truth_pressure_pa(t, 0.15);
  for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
    pump_result r;
    *t = before;
    *size = dice_uniform(d, 0.0, 1.0);
    truth_break(d, t, which, *size);
    if (which == CLASS_CHECK_VALVE) return 1;
    if (!truth_point(t, high_pa, &r)) continue;
    double left_m3_s = truth_net_m3_s(t, &r, high_pa);
    if (left_m3_s > before_m3_s * (which == CLASS_MOTOR ? 0.98 : 0.955)) continue;
    if (!truth_point(t, low_pa, &r) || r.delivery_m3_s - t->m.demand_m3_s < 0.2 * sound_m3_s) continue;
    *lost = 1.0 - left_m3_s / sound_m3_s;
    return 1;
  }
  return 0;
}

static int break_some(dice *d, truth *t, double sound_m3_s, visit *v)
{
  double lost = 0.0;
  if (dice_chance(d, 0.22)) return 1;
  v->n_faults = dice_chance(d, 0.1) ? 2 : 1;
  v->fault[0] = truth_pick_fault(d, v->family, CLASS_HEALTHY);
  v->fault[1] = truth_pick_fault(d, v->family, v->fault[0]);
  for (int i = 0; i < v->n_faults; i++) {
    if (!break_noticeably(d, t, v->fault[i], sound_m3_s, &v->severity[i], &lost)) return 0;
    v->lost[i] = lost;
  }
  return 1;
}

static int make_visit(uint64_t series, uint64_t n, truth *t, visit *v)
{
  dice d = dice_for(series, n);
  memset(v, 0, sizeof *v);
  freeair_evidence_readings_init(&v->readings, sizeof v->readings);
  freeair_machine_site_init(&v->site, sizeof v->site);
  v->family = (int)dice_uniform(&d, 0.0, 3.0);
  if (!truth_make(&d, v->family, t, &v->nameplate)) return 0;
  truth_place(&d, t, &v->nameplate, &v->site);
  pump_result sound;
  if (!truth_point(t, truth_pressure_pa(t, 0.7), &sound)) return 0;
  if (!break_some(&d, t, sound.delivery_m3_s, v)) return 0;
  inspection in = {.d = &d, .t = t, .v = v};
  if (!truth_map(t, &in.map)) return 0;
  inspect_filling(&in, sound.delivery_m3_s);
  inspect_running(&in);
  inspect_stopped(&in);
  inspect_senses(&in);
  return 1;
}

/* What a reader may want to know of the laws; the bench does not read it. */
static json_t *laws_to_json(const truth *t)
{
  static const char *const valves[] = {"smooth", "linear", "reed"};
  static const char *const heats[] = {"reynolds", "pressure"};
  json_t *o = json_object();
  json_object_set_new(o, "valves", json_string(valves[t->by.valve]));
  if (t->by.valve == VALVE_REED) json_object_set_new(o, "reed_hz", json_real(floor(t->by.reed_hz + 0.5)));
  json_object_set_new(o, "wall_heat", json_string(heats[t->by.heat]));
  json_object_set_new(o, "heat_coefficient", json_real(floor(100.0 * t->m.heat_coefficient + 0.5) / 100.0));
  return o;
}

static int write_visit(uint64_t n, const visit *v, const truth *t)
{
  json_t *line = visit_to_json(n, v);
  json_object_set_new(line, "laws", laws_to_json(t));
  int failed = visit_json_dump(line, stdout);
  json_decref(line);
  return !failed;
}

int main(int argc, char **argv)
{
  uint64_t series = 1;
  uint64_t first = 0;
  uint64_t n = 10;
  int left_out = 0;
  for (int i = 1; i < argc; i++) {
    if (i + 1 == argc) return 2;
    if (strcmp(argv[i], "-s") == 0) series = strtoull(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "-f") == 0) first = strtoull(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "-n") == 0) n = strtoull(argv[++i], NULL, 10);
    else return 2;
  }
  for (uint64_t i = first; i < first + n; i++) {
    truth t;
    visit v;
    if (!make_visit(series, i, &t, &v)) left_out++;
    else if (!write_visit(i, &v, &t)) return 1;
  }
  fprintf(stderr, "%d of %llu visits left out\n", left_out, (unsigned long long)n);
  return 0;
}
