/* SPDX-License-Identifier: MIT */
/* Benchmark of the diagnosis on invented visits.
 *
 * usage: diagnosis [-m table|model] [-n visits] [-s series] [-l level] [-x width]
 *   [-f file] [-d] [-c] [-e] [-v]
 *
 * -m the first form by tables, or the inference on the physical model; -n visits
 * (100); -s series of visits (1); -l one level only, 0 to 4; -x factor on
 * all that is not known of a unit (1); -f visits of a file (independent/visits.jsonl) instead
 * of made ones; -d with the default priors instead of those
 * of the visits; -c confusion of the classes; -e with equal priors; -v lists what was not
 * named first. */
#include "score.h"
#include "visit.h"
#include "visit_json.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { ROWS = 32 };

static double now(void)
{
  return (double)clock() / CLOCKS_PER_SEC;
}

/* The shares of the visits as priors by cause; classes of several causes share. */
static void make_prior(int equal, double *prior, int32_t n)
{
  int members[N_CLASSES] = {0};
  for (int32_t c = 1; c < n; c++)
    if (visit_class_of(c) >= 0) members[visit_class_of(c)]++;
  prior[0] = NAN;
  for (int32_t c = 1; c < n; c++) {
    int which = visit_class_of(c);
    prior[c] = which < 0 ? 0.002 : (equal ? 1.0 / N_CLASSES : visit_share(which)) / members[which];
  }
}

typedef struct job {
  const visit *v;
  freeair_machine machine; /* completed from its rating */
  double prior[ROWS];
  int32_t n_prior;
} job;

static int rank_by_table(const job *j, freeair_diagnosis_cause *causes, size_t *n_causes)
{
  const visit *v = j->v;
  freeair_diagnosis_subject subject = FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  freeair_evidence_readings expected = FREEAIR_EVIDENCE_READINGS_INIT;
  freeair_evidence_readings found = v->readings;
  double at = v->n_interstage > 0 ? v->interstage_at_pa[v->n_interstage - 1] : v->receiver_pa;
  if (v->n_interstage > 0) found.p_interstage_pa = v->interstage_pa[v->n_interstage - 1];
  if (freeair_diagnosis_expectation_from_machine(&j->machine, &v->site, at, &subject, &expected) < 0) return 0;
  if (!isnan(found.power_w)) {
    freeair_cycle_result r = FREEAIR_CYCLE_RESULT_INIT;
    if (freeair_cycle_point(&j->machine, &v->site, at, NAN, 1e-3, &r) < 0) return 0;
    expected.power_w = r.motor_w / 0.83;
  }
  subject.drive = FREEAIR_DIAGNOSIS_DRIVE_BELT;
  subject.service_valve_closed = FREEAIR_EVIDENCE_NO;
  freeair_diagnosis_options options = FREEAIR_DIAGNOSIS_OPTIONS_INIT;
  freeair_diagnosis_summary summary = FREEAIR_DIAGNOSIS_SUMMARY_INIT;
  size_t n_reasons;
  size_t n_findings;
  return freeair_diagnosis_rank(&subject, &expected, &found, v->observation, v->answer, v->n_observations, j->prior,
                                (size_t)j->n_prior, &options, causes, sizeof *causes, ROWS, n_causes, NULL, 0, 0,
                                &n_reasons, NULL, 0, 0, &n_findings, &summary) >= 0;
}

static int rank_by_model(const job *j, freeair_diagnosis_cause *causes, size_t *n_causes)
{
  const visit *v = j->v;
  freeair_diagnosis_subject subject = FREEAIR_DIAGNOSIS_SUBJECT_INIT;
  freeair_inference_visit how = FREEAIR_INFERENCE_VISIT_INIT;
  freeair_inference_scatter scatter = FREEAIR_INFERENCE_SCATTER_INIT;
  freeair_evidence_readings expected = FREEAIR_EVIDENCE_READINGS_INIT;
  freeair_diagnosis_options options = FREEAIR_DIAGNOSIS_OPTIONS_INIT;
  freeair_diagnosis_summary summary = FREEAIR_DIAGNOSIS_SUMMARY_INIT;
  subject.drive = FREEAIR_DIAGNOSIS_DRIVE_BELT;
  subject.service_valve_closed = FREEAIR_EVIDENCE_NO;
  how.receiver_pa = v->receiver_pa;
  size_t n_effects;
  size_t n_reasons;
  size_t n_findings;
  return freeair_inference_rank(&j->machine, &v->site, &subject, &how, &scatter, &expected, &v->readings, v->log_t_s,
                                v->log_p_pa, v->n_log, v->interstage_at_pa, v->interstage_pa, v->n_interstage,
                                v->observation, v->answer, v->n_observations, j->prior, (size_t)j->n_prior, &options,
                                causes, sizeof *causes, ROWS, n_causes, NULL, 0, 0, &n_effects, NULL, 0, 0,
                                &n_reasons, NULL, 0, 0, &n_findings, &summary) >= 0;
}

/* A visit whose faults do not come first. */
static void list_miss(uint64_t n, int level, const visit *v, const double p[N_CLASSES])
{
  int order[N_CLASSES];
  for (int i = 0; i < N_CLASSES; i++) {
    int at = i;
    for (; at > 0 && p[order[at - 1]] < p[i]; at--) order[at] = order[at - 1];
    order[at] = i;
  }
  if (v->n_faults == 0 ? order[0] == CLASS_HEALTHY : order[0] == v->fault[0] && v->n_faults == 1) return;
  printf("visit %llu, family %d, level %d:", (unsigned long long)n, v->family, level);
  if (v->n_faults == 0) printf(" %s", visit_class_name(CLASS_HEALTHY));
  for (int i = 0; i < v->n_faults; i++)
    printf("%s %s %.2f (lost %.2f)", i > 0 ? " and" : "", visit_class_name(v->fault[i]), v->severity[i], v->lost[i]);
  printf(";");
  for (int i = 0; i < 4; i++) printf(" %s %.2f", visit_class_name(order[i]), p[order[i]]);
  printf("\n");
}

typedef struct options {
  uint64_t visits; /* 0: a hundred, or all of the file */
  uint64_t series;
  int only; /* level, or -1 */
  int confusion;
  int equal;
  int list;
  int defaults;
  double width;
  const char *method;
  const char *file; /* null: visits are made */
} options;

static int read_options(int argc, char **argv, options *o)
{
  for (int i = 1; i < argc; i++) {
    if (strcmp(argv[i], "-c") == 0) o->confusion = 1;
    else if (strcmp(argv[i], "-e") == 0) o->equal = 1;
    else if (strcmp(argv[i], "-v") == 0) o->list = 1;
    else if (strcmp(argv[i], "-d") == 0) o->defaults = 1;
    else if (i + 1 == argc) return 0;
    else if (strcmp(argv[i], "-m") == 0) o->method = argv[++i];
    else if (strcmp(argv[i], "-n") == 0) o->visits = strtoull(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "-s") == 0) o->series = strtoull(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "-x") == 0) o->width = atof(argv[++i]);
    else if (strcmp(argv[i], "-l") == 0) o->only = atoi(argv[++i]);
    else if (strcmp(argv[i], "-f") == 0) o->file = argv[++i];
    else return 0;
  }
  return 1;
}

/* Ranks the causes of a visit at one level of what is known. */
static void score_visit(const options *o, job *j, uint64_t n, const visit *all, int level, score *s)
{
  visit v;
  freeair_diagnosis_cause causes[ROWS];
  size_t n_causes = 0;
  visit_reduce(all, level, &v);
  j->v = &v;
  for (int i = 0; i < ROWS; i++) freeair_diagnosis_cause_init(&causes[i], sizeof causes[i]);
  double start = now();
  if (!(strcmp(o->method, "table") == 0 ? rank_by_table : rank_by_model)(j, causes, &n_causes)) {
    s->failed++;
    return;
  }
  double p[N_CLASSES] = {0.0};
  int32_t stated[N_CLASSES] = {0};
  for (size_t i = 0; i < n_causes && i < ROWS; i++) {
    int which = visit_class_of(causes[i].cause);
    if (which < 0) continue;
    p[which] += causes[i].probability;
    if (stated[which] == 0) stated[which] = causes[i].group; /* of its most probable cause */
  }
  score_add(s, &v, level, p, stated, now() - start);
  if (o->list) list_miss(n, level, &v, p);
}

typedef struct run {
  score scores[N_LEVELS];
  int skipped;
  double making_s;
  double completing_s;
} run;

/* The visit at a position of the file or series; 0 when it cannot be made. */
static int get_visit(const options *o, const visit_set *set, uint64_t at, uint64_t *n, visit *v)
{
  *n = o->file ? set->numbers[at] : at;
  if (!o->file) return visit_make(o->series, at, o->width, v);
  *v = set->visits[at];
  return 1;
}

static void run_visits(const options *o, const visit_set *set, job *j, run *r)
{
  for (uint64_t at = 0; at < o->visits; at++) {
    visit all;
    uint64_t n;
    double t0 = now();
    if (!get_visit(o, set, at, &n, &all)) {
      r->skipped++;
      continue;
    }
    double t1 = now();
    freeair_machine_site rating = FREEAIR_MACHINE_SITE_INIT;
    int32_t adjusted;
    double delivery;
    freeair_machine_init(&j->machine, sizeof j->machine);
    if (freeair_rating_complete(&all.nameplate, &rating, &j->machine, &adjusted, &delivery) < 0) {
      r->skipped++;
      continue;
    }
    r->making_s += t1 - t0;
    r->completing_s += now() - t1;
    for (int level = 0; level < N_LEVELS; level++)
      if (o->only < 0 || level == o->only) score_visit(o, j, n, &all, level, &r->scores[level]);
  }
}

static void print_run(const options *o, const run *r)
{
  printf("%s, ", o->method);
  if (o->file) printf("%s", o->file);
  else printf("series %llu", (unsigned long long)o->series);
  printf(", %llu visits, %d of them skipped; %.1f ms to make a visit, %.1f ms to complete a machine\n",
         (unsigned long long)o->visits, r->skipped, 1e3 * r->making_s / (double)o->visits,
         1e3 * r->completing_s / (double)o->visits);
  for (int level = 0; level < N_LEVELS; level++) {
    if (o->only >= 0 && level != o->only) continue;
    score_print(&r->scores[level], level);
    if (o->confusion) score_print_confusion(&r->scores[level]);
  }
}

int main(int argc, char **argv)
{
  options o = {.series = 1, .only = -1, .width = 1.0, .method = "model"};
  visit_set set = {NULL, NULL, 0};
  static run r;
  job j;
  if (!read_options(argc, argv, &o)) return 2;
  if (o.file && !visit_set_read(o.file, &set)) return 1;
  if (o.visits == 0 || (o.file && o.visits > set.n)) o.visits = o.file ? set.n : 100;
  j.n_prior = freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE);
  make_prior(o.equal, j.prior, j.n_prior);
  if (o.defaults) j.n_prior = 0;
  run_visits(&o, &set, &j, &r);
  print_run(&o, &r);
  visit_set_free(&set);
  return 0;
}
