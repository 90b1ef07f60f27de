/* SPDX-License-Identifier: MIT */
/* Benchmark of the diagnosis on invented visits.
 *
 * usage: diagnosis [-m table|model] [-n visits] [-s series] [-l level] [-x width]
 *   [-d] [-c] [-e] [-v]
 *
 * -m the first form by tables, or the inference on the physical model; -n visits
 * (100); -s series of visits (1); -l one level only, 0 to 4; -x factor on
 * all that is not known of a unit (1); -d with the default priors instead of those
 * of the visits; -c confusion of the classes; -e with equal priors; -v lists what was not
 * named first. */
#include "score.h"
#include "visit.h"

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

int main(int argc, char **argv)
{
  uint64_t visits = 100;
  uint64_t series = 1;
  int only = -1;
  int confusion = 0;
  int equal = 0;
  int list = 0;
  int defaults = 0;
  double width = 1.0;
  const char *method = "model";
  for (int i = 1; i < argc; i++) {
    if (strcmp(argv[i], "-c") == 0) confusion = 1;
    else if (strcmp(argv[i], "-e") == 0) equal = 1;
    else if (strcmp(argv[i], "-v") == 0) list = 1;
    else if (strcmp(argv[i], "-d") == 0) defaults = 1;
    else if (i + 1 == argc) return 2;
    else if (strcmp(argv[i], "-m") == 0) method = argv[++i];
    else if (strcmp(argv[i], "-n") == 0) visits = strtoull(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "-s") == 0) series = strtoull(argv[++i], NULL, 10);
    else if (strcmp(argv[i], "-x") == 0) width = atof(argv[++i]);
    else if (strcmp(argv[i], "-l") == 0) only = atoi(argv[++i]);
    else return 2;
  }
  static score scores[N_LEVELS];
  int skipped = 0;
  job j;
  j.n_prior = freeair_evidence_count(FREEAIR_EVIDENCE_KIND_CAUSE);
  make_prior(equal, j.prior, j.n_prior);
  if (defaults) j.n_prior = 0;
  double making = 0.0;
  double completing = 0.0;
  for (uint64_t n = 0; n < visits; n++) {
    visit all;
    double t0 = now();
    if (!visit_make(series, n, width, &all)) {
      skipped++;
      continue;
    }
    double t1 = now();
    freeair_machine_site rating = FREEAIR_MACHINE_SITE_INIT;
    int32_t adjusted;
    double delivery;
    freeair_machine_init(&j.machine, sizeof j.machine);
    if (freeair_rating_complete(&all.nameplate, &rating, &j.machine, &adjusted, &delivery) < 0) {
      skipped++;
      continue;
    }
    making += t1 - t0;
    completing += now() - t1;
    for (int level = 0; level < N_LEVELS; level++) {
      if (only >= 0 && level != only) continue;
      visit v;
      visit_reduce(&all, level, &v);
      j.v = &v;
      freeair_diagnosis_cause causes[ROWS];
      size_t n_causes = 0;
      for (int i = 0; i < ROWS; i++) freeair_diagnosis_cause_init(&causes[i], sizeof causes[i]);
      double start = now();
      if (!(strcmp(method, "table") == 0 ? rank_by_table : rank_by_model)(&j, causes, &n_causes)) {
        scores[level].failed++;
        continue;
      }
      double p[N_CLASSES] = {0.0};
      for (size_t i = 0; i < n_causes && i < ROWS; i++) {
        int which = visit_class_of(causes[i].cause);
        if (which >= 0) p[which] += causes[i].probability;
      }
      score_add(&scores[level], &v, level, p, now() - start);
      if (list) list_miss(n, level, &v, p);
    }
  }
  printf("%s, series %llu, %llu visits, %d of them skipped; %.1f ms to make a visit, %.1f ms to complete a machine\n",
         method, (unsigned long long)series, (unsigned long long)visits, skipped, 1e3 * making / (double)visits,
         1e3 * completing / (double)visits);
  for (int level = 0; level < N_LEVELS; level++) {
    if (only >= 0 && level != only) continue;
    score_print(&scores[level], level);
    if (confusion) score_print_confusion(&scores[level]);
  }
  return 0;
}
