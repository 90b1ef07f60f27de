/* SPDX-License-Identifier: MIT */
/* A calculator for every function of the library, by name and with any unit.
 * It knows none of them: all it shows comes from the library's description.
 *
 * Introduces: freeair_function_find, freeair_function_parameter, freeair_map.
 */
#include "../common/job.h"
#include "print.h"
#include "table.h"

#include "../common/quantity.h"

#include <argp.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { USAGE = 2, MOST_WORDS = 256 };

typedef struct options {
  const char *csv;
  const char *to[MOST_WORDS];
  size_t n_to;
  const char *words[MOST_WORDS];
  size_t n_words;
  double barometer_pa;
  int json;
} options;

static error_t option(int key, char *value, struct argp_state *state)
{
  options *o = state->input;
  switch (key) {
    case 'j':
      o->json = 1;
      return 0;
    case 'c':
      o->csv = value;
      return 0;
    case 'b': {
      quantity_context context = {"Pa", NAN, 0};
      char why[300];
      if (!quantity_read(value, &context, &o->barometer_pa, why, sizeof why))
        argp_error(state, "--barometer: %s", why);
      return 0;
    }
    case 't':
      if (o->n_to == MOST_WORDS || strchr(value, '=') == NULL) argp_error(state, "--to takes NAME=UNIT");
      o->to[o->n_to++] = value;
      return 0;
    case ARGP_KEY_ARG:
      if (o->n_words == MOST_WORDS) argp_error(state, "too many arguments");
      o->words[o->n_words++] = value;
      return 0;
    case ARGP_KEY_NO_ARGS:
      argp_usage(state);
      return 0;
    default:
      return ARGP_ERR_UNKNOWN;
  }
}

static int complain(const char *text)
{
  fprintf(stderr, "calc: %s\n", text);
  return USAGE;
}

static int unknown_function(const char *name)
{
  char text[300];
  snprintf(text, sizeof text, "no function '%s'; calc list shows them all, calc list WORD those about a word", name);
  return complain(text);
}

static int assign(job *j, const options *o)
{
  for (size_t i = 1; i < o->n_words; i++) {
    char name[160];
    const char *equals = strchr(o->words[i], '=');
    if (equals == NULL || (size_t)(equals - o->words[i]) >= sizeof name) {
      snprintf(j->message, sizeof j->message, "'%s': write name=value", o->words[i]);
      return 0;
    }
    snprintf(name, sizeof name, "%.*s", (int)(equals - o->words[i]), o->words[i]);
    place at;
    if (!job_find(j, name, 0, &at) || !job_set(j, &at, (size_t)-1, equals + 1, "")) return 0;
  }
  return 1;
}

static int run(const freeair_function *f, const options *o)
{
  table rows = {0};
  job j;
  char message[JOB_MESSAGE];
  if (o->csv != NULL && !table_read(&rows, o->csv, message, sizeof message)) return complain(message);
  int ok = job_init(&j, f, o->csv != NULL ? rows.n_rows : 1, o->barometer_pa) && assign(&j, o) &&
           (o->csv == NULL || table_apply(&rows, &j)) && job_run(&j);
  wanted_units units = {o->to, o->n_to};
  int result = EXIT_SUCCESS;
  if (!ok || !print_units_known(&j, &units)) {
    result = complain(j.message);
  } else if (o->csv != NULL) {
    result = table_print(&rows, &j, &units, o->json);
  } else if (j.status[0] < 0) {
    job_explain(&j, 0, message, sizeof message);
    char text[JOB_MESSAGE + 200];
    snprintf(text, sizeof text, "%s: %s", freeair_function_name(f) + strlen("freeair_"), message);
    result = complain(text);
  } else {
    print_result(&j, &units, o->json);
  }
  job_free(&j);
  table_free(&rows);
  return result;
}

int main(int argc, char **argv)
{
  static const struct argp_option known[] = {
      {"json", 'j', NULL, 0, "Print JSON", 0},
      {"csv", 'c', "FILE", 0, "Compute every row of a CSV file, whose first line names the arguments: p1 [psig]", 0},
      {"barometer", 'b', "PRESSURE", 0, "What the barometer reads, so that gauge pressures can be given", 0},
      {"to", 't', "NAME=UNIT", 0, "Print an output in this unit", 0},
      {0},
  };
  static const struct argp parser = {
      known, option, "list [WORD]\nshow FUNCTION\nFUNCTION NAME=VALUE...",
      "Calls a function of libfreeair by its name; a value may carry any unit of its kind.\v"
      "For example:\n"
      "  calc atmosphere_pressure_from_altitude altitude='5000 ft' --to p_pa=psi\n",
      NULL, NULL, NULL};
  options o = {.barometer_pa = NAN};
  if (argp_parse(&parser, argc, argv, 0, NULL, &o) != 0) return USAGE;
  const char *first = o.words[0];
  if (strcmp(first, "list") == 0) return print_list(o.n_words > 1 ? o.words[1] : NULL, o.json) ? EXIT_SUCCESS : USAGE;
  if (strcmp(first, "show") == 0) {
    if (o.n_words != 2) return complain("show takes the name of one function");
    const freeair_function *f = job_function(o.words[1]);
    if (f == NULL) return unknown_function(o.words[1]);
    print_function(f, o.json);
    return EXIT_SUCCESS;
  }
  const freeair_function *f = job_function(first);
  return f != NULL ? run(f, &o) : unknown_function(first);
}
