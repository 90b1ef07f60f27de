/* SPDX-License-Identifier: MIT */
/* From what a technician wrote down on a visit to what it means: what the machine
 * should do here today, what it does, which part explains it, what to check next,
 * and how to prove the repair. On the public interface alone.
 *
 * Introduces: freeair_rating_complete, freeair_cycle_point, freeair_prediction_pumpup,
 * freeair_pumpup_analyse, freeair_pressure_log_segment, freeair_inference_rank,
 * freeair_diagnosis_rank, freeair_diagnosis_check_rank, freeair_diagnosis_proof_judge.
 */
#include "batch.h"
#include "report.h"

#include <argp.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>

enum { WRONG_INPUT = 2 };

typedef struct options {
  char **paths;
  int n;
  int threads;
  int json;
  int vocabulary;
} options;

static error_t option(int key, char *value, struct argp_state *state)
{
  options *o = state->input;
  switch (key) {
    case 'j':
      o->json = 1;
      return 0;
    case 'v':
      o->vocabulary = 1;
      return 0;
    case 't': {
      char *end;
      const long n = strtol(value, &end, 10);
      if (*end != '\0' || n < 1 || n > INT_MAX) argp_error(state, "'%s' is no number of threads", value);
      o->threads = (int)n;
      return 0;
    }
    case ARGP_KEY_ARGS:
      o->paths = state->argv + state->next;
      o->n = state->argc - state->next;
      if (o->n > 1 && o->json) argp_error(state, "--json takes one visit at a time");
      return 0;
    case ARGP_KEY_NO_ARGS:
      if (!o->vocabulary) argp_error(state, "which visit?");
      return 0;
    default:
      return ARGP_ERR_UNKNOWN;
  }
}

static void list(int32_t kind, const char *title)
{
  printf("%s\n", title);
  for (int32_t i = 1; i < freeair_evidence_count(kind); i++)
    printf("  %-28s %s\n", freeair_evidence_name(kind, i), freeair_evidence_title(kind, i));
}

int main(int argc, char **argv)
{
  static const struct argp_option known[] = {
      {"json", 'j', NULL, 0, "Print everything as JSON, in SI", 0},
      {"threads", 't', "N", 0, "Threads for a batch of visits (default 4)", 0},
      {"vocabulary", 'v', NULL, 0, "List the names of readings, observations and causes", 0},
      {0},
  };
  static const struct argp parser = {
      known, option, "VISIT.json...",
      "Assesses service visits to reciprocating compressors: one in full, a batch in a line each.", NULL, NULL, NULL};
  static visit v;
  static assessment a;
  options o = {.threads = 4};
  if (argp_parse(&parser, argc, argv, 0, NULL, &o) != 0) return WRONG_INPUT;
  if (o.vocabulary) {
    list(FREEAIR_EVIDENCE_KIND_READING, "readings");
    list(FREEAIR_EVIDENCE_KIND_OBSERVATION, "observations");
    list(FREEAIR_EVIDENCE_KIND_CAUSE, "causes");
    return EXIT_SUCCESS;
  }
  if (o.n > 1) return batch_run(o.paths, o.n, o.threads) == 0 ? EXIT_SUCCESS : WRONG_INPUT;
  if (!visit_read(&v, o.paths[0])) {
    fprintf(stderr, "service-visit: %s\n", v.message);
    return WRONG_INPUT;
  }
  const int ok = assess(&a, &v);
  if (!ok)
    fprintf(stderr, "service-visit: %s\n", a.message);
  else if (o.json)
    report_json(&a);
  else
    report_text(&a);
  assessment_free(&a);
  return ok ? EXIT_SUCCESS : WRONG_INPUT;
}
