/* SPDX-License-Identifier: MIT */
#include "print.h"

#include "../common/quantity.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

static const char *wanted(const job *j, const wanted_units *units, const place *at)
{
  for (size_t i = 0; i < units->n; i++) {
    char name[160];
    const char *equals = strchr(units->text[i], '=');
    snprintf(name, sizeof name, "%.*s", (int)(equals - units->text[i]), units->text[i]);
    place found;
    job copy = *j; /* only its message is written */
    if (job_find(&copy, name, 1, &found) && strcmp(found.name, at->name) == 0) return equals + 1;
  }
  return NULL;
}

int print_units_known(job *j, const wanted_units *units)
{
  for (size_t i = 0; i < units->n; i++) {
    char name[160];
    const char *equals = strchr(units->text[i], '=');
    snprintf(name, sizeof name, "%.*s", (int)(equals - units->text[i]), units->text[i]);
    place found;
    if (!job_find(j, name, 1, &found)) return 0;
    const char *si = freeair_units_si_symbol(equals + 1);
    int32_t gauge = 0;
    if (si == NULL || strcmp(si, found.leaf->unit) != 0) {
      snprintf(j->message, sizeof j->message, "--to: %s is in %s, which '%s' does not measure", found.name,
               found.leaf->unit, equals + 1);
      return 0;
    }
    if (freeair_units_is_gauge(equals + 1, &gauge) == FREEAIR_OK && gauge && isnan(j->barometer_pa)) {
      snprintf(j->message, sizeof j->message, "--to: %s is absolute; a gauge pressure needs --barometer", found.name);
      return 0;
    }
  }
  return 1;
}

const char *print_unit(const job *j, const wanted_units *units, const place *at)
{
  const char *unit = wanted(j, units, at);
  return unit != NULL ? unit : at->leaf->unit;
}

double print_value(const job *j, const wanted_units *units, const place *at, size_t row, size_t element)
{
  double x = job_value(j, at, row, element);
  const char *unit = wanted(j, units, at);
  int32_t gauge = 0;
  double y = x;
  if (unit == NULL || isnan(x)) return x;
  if (quantity_is_difference(at->leaf->name)) {
    freeair_units_convert_difference(x, at->leaf->unit, unit, &y);
    return y;
  }
  freeair_units_is_gauge(unit, &gauge);
  if (gauge) freeair_units_gauge_from_absolute(x, j->barometer_pa, &x);
  freeair_units_from_si(x, unit, &y);
  return y;
}

static const char *short_name(const freeair_function *f)
{
  return freeair_function_name(f) + strlen("freeair_");
}

static int holds(const char *text, const char *word)
{
  for (size_t n = strlen(word); *text != '\0'; text++)
    if (strncasecmp(text, word, n) == 0) return 1;
  return 0;
}

size_t print_list(const char *word, int json)
{
  const char *topic = "";
  json_t *all = json_array();
  size_t shown = 0;
  for (size_t i = 0; i < freeair_function_count(); i++) {
    const freeair_function *f = freeair_function_at(i);
    if (word != NULL && !holds(freeair_function_name(f), word) && !holds(freeair_function_brief(f), word)) continue;
    shown++;
    if (json) {
      json_array_append_new(all, json_pack("{ssssss}", "name", short_name(f), "topic", freeair_function_topic(f),
                                           "brief", freeair_function_brief(f)));
      continue;
    }
    if (strcmp(topic, freeair_function_topic(f)) != 0) {
      printf("%s%s\n", topic[0] != '\0' ? "\n" : "", freeair_function_topic(f));
      topic = freeair_function_topic(f);
    }
    printf("  %s\n      %s\n", short_name(f), freeair_function_brief(f));
  }
  if (json) print_json(json_incref(all));
  json_decref(all);
  if (shown == 0) fprintf(stderr, "calc: no function is about '%s'\n", word);
  return shown;
}

typedef struct listing {
  json_t *json;
  int output;
} listing;

/* The constants that an argument takes, by what follows their prefix. */
static void print_choices(const char *enumeration)
{
  for (size_t i = 0; i < freeair_constant_count(); i++)
    if (strcmp(freeair_constant_enumeration(i), enumeration) == 0)
      printf("        %-34s %s\n", freeair_constant_name(i) + strlen("FREEAIR_"), freeair_constant_brief(i));
}

static void list_value(const job *j, const place *at, void *context)
{
  listing *l = context;
  const freeair_parameter *p = at->leaf;
  (void)j;
  const int array = ((at->parent != NULL ? at->parent : p)->flags & FREEAIR_PARAMETER_ARRAY) != 0;
  const int optional = (p->flags & FREEAIR_PARAMETER_OPTIONAL) != 0;
  if (l->json != NULL) {
    json_array_append_new(l->json, json_pack("{sssssssssbsb}", "name", at->name, "unit", p->unit, "range", p->range,
                                             "brief", p->brief, "optional", optional, "array", array));
    return;
  }
  const char *unit = strcmp(p->unit, "1") == 0 ? "" : p->unit;
  printf("    %-28s %s%s", at->name, unit, unit[0] != '\0' ? " " : "");
  printf("%s%s%s%s\n", p->range, array ? " (a list: 1,2,3)" : "", optional && !l->output ? " optional; default " : "",
         optional && !l->output ? p->fallback : "");
  printf("        %s\n", p->brief);
  if (p->choice[0] != '\0') print_choices(p->choice);
}

void print_function(const freeair_function *f, int json)
{
  job j;
  if (!job_init(&j, f, 1, NAN)) {
    fprintf(stderr, "calc: %s\n", j.message);
    return;
  }
  listing in = {json ? json_array() : NULL, 0};
  listing out = {json ? json_array() : NULL, 1};
  if (!json) printf("%s\n  %s\n\n  Model: %s\n\n  Takes\n", short_name(f), freeair_function_brief(f),
                    freeair_function_model(f));
  job_each(&j, 0, list_value, &in);
  if (!json) printf("\n  Gives\n");
  job_each(&j, 1, list_value, &out);
  if (json) {
    print_json(json_pack("{sssssssssssoso}", "name", short_name(f), "topic", freeair_function_topic(f), "brief",
                         freeair_function_brief(f), "model", freeair_function_model(f), "source",
                         freeair_function_source(f), "takes", in.json, "gives", out.json));
  } else {
    printf("\n  Source: %s\n", freeair_function_source(f));
    for (uint32_t bit = 1; bit != 0; bit <<= 1)
      if (freeair_function_cautions(f) & bit) printf("\n  CAUTION: %s\n", freeair_caution_text(bit));
  }
  job_free(&j);
}

/* The name of a constant by its value, or null. */
static const char *constant_name(const char *enumeration, double value)
{
  for (size_t i = 0; i < freeair_constant_count(); i++)
    if (strcmp(freeair_constant_enumeration(i), enumeration) == 0 && freeair_constant_value(i) == (int32_t)value)
      return freeair_constant_name(i) + strlen("FREEAIR_");
  return NULL;
}

static json_t *number(double x)
{
  return isfinite(x) ? json_real(x) : json_null();
}

typedef struct printing {
  const wanted_units *units;
  json_t *json;
  size_t row;
} printing;

static json_t *value_json(const job *j, const place *at, const printing *p, size_t element)
{
  double x = print_value(j, p->units, at, p->row, element);
  const char *constant = at->leaf->choice[0] != '\0' ? constant_name(at->leaf->choice, x) : NULL;
  if (constant != NULL) return json_string(constant);
  return at->leaf->type == FREEAIR_TYPE_DOUBLE ? number(x) : json_integer((json_int_t)x);
}

static void output_json(const job *j, const place *at, void *context)
{
  printing *p = context;
  const size_t n = j->elements[at->parameter];
  const int array = ((at->parent != NULL ? at->parent : at->leaf)->flags & FREEAIR_PARAMETER_ARRAY) != 0;
  json_t *value;
  if (at->leaf->type == FREEAIR_TYPE_TEXT) {
    value = json_string(job_text(j, at, p->row));
  } else if (array) {
    value = json_array();
    for (size_t k = 0; k < n; k++) json_array_append_new(value, value_json(j, at, p, k));
  } else {
    value = value_json(j, at, p, 0);
  }
  json_object_set_new(p->json, at->name, json_pack("{soss}", "value", value, "unit", print_unit(j, p->units, at)));
}

json_t *print_outputs(const job *j, const wanted_units *units, size_t row)
{
  printing p = {units, json_object(), row};
  job_each(j, 1, output_json, &p);
  return p.json;
}

static void output_text(const job *j, const place *at, void *context)
{
  printing *p = context;
  const char *unit = print_unit(j, p->units, at);
  if (strcmp(unit, "1") == 0 || strcmp(unit, "any") == 0) unit = "";
  printf("%s =", at->name);
  if (at->leaf->type == FREEAIR_TYPE_TEXT) printf(" %s", job_text(j, at, p->row));
  for (size_t k = 0; at->leaf->type != FREEAIR_TYPE_TEXT && k < j->elements[at->parameter]; k++) {
    double x = print_value(j, p->units, at, p->row, k);
    const char *constant = at->leaf->choice[0] != '\0' ? constant_name(at->leaf->choice, x) : NULL;
    if (constant != NULL)
      printf("%s %s", k > 0 ? "," : "", constant);
    else
      printf("%s %.7g", k > 0 ? "," : "", x);
  }
  printf("%s%s\n", unit[0] != '\0' ? " " : "", unit);
}

void print_json(json_t *object)
{
  json_dumpf(object, stdout, JSON_INDENT(2) | JSON_REAL_PRECISION(15));
  putchar('\n');
  json_decref(object);
}

void print_result(const job *j, const wanted_units *units, int json)
{
  const uint32_t cautions = freeair_function_cautions(j->f);
  if (json) {
    json_t *texts = json_array();
    for (uint32_t bit = 1; bit != 0; bit <<= 1)
      if (cautions & bit) json_array_append_new(texts, json_string(freeair_caution_text(bit)));
    print_json(json_pack("{sssssoso}", "function", short_name(j->f), "status", freeair_status_name(j->status[0]),
                         "outputs", print_outputs(j, units, 0), "cautions", texts));
    return;
  }
  printing p = {units, NULL, 0};
  job_each(j, 1, output_text, &p);
  if (j->status[0] > 0) printf("note: %s\n", freeair_status_text(j->status[0]));
  for (uint32_t bit = 1; bit != 0; bit <<= 1)
    if (cautions & bit) printf("CAUTION: %s\n", freeair_caution_text(bit));
}
