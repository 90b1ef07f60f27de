/* SPDX-License-Identifier: MIT */
#include "visit_json.h"

#include <math.h>
#include <stddef.h>
#include <stdlib.h>
#include <string.h>

enum { LINE_BYTES = 16384, MOST_VISITS = 100000 };

/* ---- fields by name ---- */

typedef struct field {
  const char *name;
  size_t offset;
} field;

#define MACHINE(f) {#f, offsetof(freeair_machine, f)}
static const field machine_fields[] = {
    MACHINE(speed_rev_s),      MACHINE(lp_bore_m),  MACHINE(hp_bore_m),   MACHINE(lp_stroke_m),
    MACHINE(receiver_m3),      MACHINE(cut_in_pa),  MACHINE(cut_out_pa),  MACHINE(motor_synchronous_rev_s),
    MACHINE(motor_rated_slip), MACHINE(motor_rated_w), MACHINE(rated_pa), MACHINE(rated_delivery_m3_s),
    {NULL, 0},
};
static const field machine_integers[] = {
    MACHINE(stages), MACHINE(arrangement), MACHINE(lp_cylinders), MACHINE(hp_cylinders), {NULL, 0},
};
#define SITE(f) {#f, offsetof(freeair_machine_site, f)}
static const field site_fields[] = {SITE(barometric_pa), SITE(ambient_k), {NULL, 0}};
#define READING(f) {#f, offsetof(freeair_evidence_readings, f)}
static const field reading_fields[] = {
    READING(t_empty_to_cutout_s), READING(t_cutin_to_cutout_s), READING(p_level_off_pa),
    READING(t_lp_discharge_k),    READING(t_hp_discharge_k),    READING(t_intercooler_out_k),
    READING(motor_speed_rev_s),   READING(pump_speed_rev_s),    READING(power_w),
    READING(leak_isolated_m3_s),  READING(leak_open_m3_s),      {NULL, 0},
};

static const char *const families[] = {"two-stage V", "two-stage side by side", "single-stage twin"};

/* What is not known, a NaN, is left out. */
static void put_number(json_t *o, const char *name, double value)
{
  if (!isnan(value)) json_object_set_new(o, name, json_real(value));
}

static void put_fields(json_t *o, const field *fields, const void *from)
{
  for (const field *f = fields; f->name; f++) {
    double value;
    memcpy(&value, (const char *)from + f->offset, sizeof value);
    put_number(o, f->name, value);
  }
}

/* ---- writing ---- */

static double rounded(double value, double unit)
{
  return floor(value / unit + 0.5) * unit;
}

static json_t *reals(const double *values, size_t n)
{
  json_t *a = json_array();
  for (size_t i = 0; i < n; i++) json_array_append_new(a, json_real(values[i]));
  return a;
}

static json_t *pair(const char *x_name, const double *x, const char *y_name, const double *y, size_t n)
{
  json_t *o = json_object();
  json_object_set_new(o, x_name, reals(x, n));
  json_object_set_new(o, y_name, reals(y, n));
  return o;
}

static json_t *faults_to_json(const visit *v)
{
  json_t *a = json_array();
  for (int i = 0; i < v->n_faults; i++) {
    json_t *o = json_object();
    json_object_set_new(o, "class", json_string(visit_class_name(v->fault[i])));
    json_object_set_new(o, "severity", json_real(rounded(v->severity[i], 0.01)));
    json_array_append_new(a, o);
  }
  return a;
}

static json_t *nameplate_to_json(const freeair_machine *m)
{
  json_t *o = json_object();
  for (const field *f = machine_integers; f->name; f++) {
    int32_t value;
    memcpy(&value, (const char *)m + f->offset, sizeof value);
    json_object_set_new(o, f->name, json_integer(value));
  }
  put_fields(o, machine_fields, m);
  return o;
}

static json_t *observations_to_json(const visit *v)
{
  json_t *o = json_object();
  for (size_t i = 0; i < v->n_observations; i++)
    json_object_set_new(o, freeair_evidence_name(FREEAIR_EVIDENCE_KIND_OBSERVATION, v->observation[i]),
                        json_boolean(v->answer[i] == FREEAIR_EVIDENCE_YES));
  return o;
}

json_t *visit_to_json(uint64_t n, const visit *v)
{
  json_t *o = json_object();
  json_t *site = json_object();
  json_t *readings = json_object();
  put_fields(site, site_fields, &v->site);
  put_fields(readings, reading_fields, &v->readings);
  json_object_set_new(o, "visit", json_integer((json_int_t)n));
  json_object_set_new(o, "family", json_string(families[v->family]));
  json_object_set_new(o, "faults", faults_to_json(v));
  json_object_set_new(o, "lost", json_real(rounded(v->n_faults > 0 ? v->lost[v->n_faults - 1] : 0.0, 0.001)));
  json_object_set_new(o, "nameplate", nameplate_to_json(&v->nameplate));
  json_object_set_new(o, "site", site);
  json_object_set_new(o, "readings", readings);
  json_object_set_new(o, "receiver_pa", json_real(v->receiver_pa));
  json_object_set_new(o, "log", pair("t_s", v->log_t_s, "p_pa", v->log_p_pa, v->n_log));
  json_object_set_new(o, "interstage", pair("at_pa", v->interstage_at_pa, "p_pa", v->interstage_pa, v->n_interstage));
  json_object_set_new(o, "observations", observations_to_json(v));
  return o;
}

int visit_json_dump(const json_t *line, FILE *file)
{
  if (json_dumpf(line, file, JSON_COMPACT | JSON_REAL_PRECISION(7)) != 0) return -1;
  return fputc('\n', file) == EOF ? -1 : 0;
}

/* ---- reading: each part returns what is wrong with it, or null ---- */

/* Every member must be a field that is known. */
static const char *get_fields(const json_t *o, const field *fields, const field *integers, void *to)
{
  const char *name;
  json_t *value;
  if (!json_is_object(o)) return "a part is missing";
  json_object_foreach((json_t *)o, name, value)
  {
    const field *f = fields;
    while (f->name && strcmp(f->name, name) != 0) f++;
    if (f->name) {
      double number = json_number_value(value);
      if (!json_is_number(value)) return "a field is no number";
      memcpy((char *)to + f->offset, &number, sizeof number);
      continue;
    }
    f = integers;
    while (f && f->name && strcmp(f->name, name) != 0) f++;
    if (!f || !f->name) return "a field is not known";
    int32_t number = (int32_t)json_integer_value(value);
    if (!json_is_integer(value)) return "a field is no integer";
    memcpy((char *)to + f->offset, &number, sizeof number);
  }
  return NULL;
}

static int get_reals(const json_t *a, double *values, size_t most, size_t *n)
{
  *n = json_array_size(a);
  if (!json_is_array(a) || *n > most) return 0;
  for (size_t i = 0; i < *n; i++) {
    const json_t *item = json_array_get(a, i);
    if (!json_is_number(item)) return 0;
    values[i] = json_number_value(item);
  }
  return 1;
}

static int get_pair(const json_t *o, const char *x_name, double *x, const char *y_name, double *y, size_t most,
                    size_t *n)
{
  size_t n_y;
  return get_reals(json_object_get(o, x_name), x, most, n) && get_reals(json_object_get(o, y_name), y, most, &n_y) &&
         *n == n_y;
}

static int class_by_name(const char *name)
{
  for (int i = 0; i < N_CLASSES; i++)
    if (name && strcmp(visit_class_name(i), name) == 0) return i;
  return -1;
}

static const char *get_faults(const json_t *line, visit *v)
{
  const json_t *faults = json_object_get(line, "faults");
  const json_t *lost = json_object_get(line, "lost");
  if (!json_is_array(faults) || json_array_size(faults) > 2 || !json_is_number(lost)) return "its faults";
  v->n_faults = (int)json_array_size(faults);
  for (int i = 0; i < v->n_faults; i++) {
    const json_t *fault = json_array_get(faults, (size_t)i);
    v->fault[i] = class_by_name(json_string_value(json_object_get(fault, "class")));
    v->severity[i] = json_number_value(json_object_get(fault, "severity"));
    v->lost[i] = json_number_value(lost);
    if (v->fault[i] < 0) return "a class of fault is not known";
  }
  return NULL;
}

static const char *get_observations(const json_t *line, visit *v)
{
  const char *name;
  json_t *seen;
  json_t *all = json_object_get(line, "observations");
  if (!json_is_object(all) || json_object_size(all) > VISIT_OBSERVATIONS) return "its observations";
  json_object_foreach(all, name, seen)
  {
    int32_t code;
    if (freeair_evidence_find(FREEAIR_EVIDENCE_KIND_OBSERVATION, name, &code) < 0) return "an observation is not known";
    if (!json_is_boolean(seen)) return "an observation is neither true nor false";
    v->observation[v->n_observations] = code;
    v->answer[v->n_observations++] = json_is_true(seen) ? FREEAIR_EVIDENCE_YES : FREEAIR_EVIDENCE_NO;
  }
  return NULL;
}

static const char *get_visit(const json_t *line, visit *v)
{
  memset(v, 0, sizeof *v);
  freeair_machine_init(&v->nameplate, sizeof v->nameplate);
  freeair_machine_site_init(&v->site, sizeof v->site);
  freeair_evidence_readings_init(&v->readings, sizeof v->readings);
  const char *family = json_string_value(json_object_get(line, "family"));
  v->family = -1;
  for (int i = 0; family && i < 3; i++)
    if (strcmp(families[i], family) == 0) v->family = i;
  if (v->family < 0) return "its family";
  const char *wrong = get_faults(line, v);
  if (!wrong) wrong = get_fields(json_object_get(line, "nameplate"), machine_fields, machine_integers, &v->nameplate);
  if (!wrong) wrong = get_fields(json_object_get(line, "site"), site_fields, NULL, &v->site);
  if (!wrong) wrong = get_fields(json_object_get(line, "readings"), reading_fields, NULL, &v->readings);
  if (!wrong) wrong = get_observations(line, v);
  if (wrong) return wrong;
  if (!json_is_number(json_object_get(line, "receiver_pa"))) return "its receiver_pa";
  v->receiver_pa = json_number_value(json_object_get(line, "receiver_pa"));
  if (!get_pair(json_object_get(line, "log"), "t_s", v->log_t_s, "p_pa", v->log_p_pa, VISIT_LOG, &v->n_log))
    return "its log";
  if (!get_pair(json_object_get(line, "interstage"), "at_pa", v->interstage_at_pa, "p_pa", v->interstage_pa,
                VISIT_INTERSTAGE, &v->n_interstage))
    return "its interstage pressures";
  return NULL;
}

static int append(visit_set *set, uint64_t n, const visit *v)
{
  if (set->n == MOST_VISITS) return 0;
  visit *visits = realloc(set->visits, (set->n + 1) * sizeof *visits);
  if (visits) set->visits = visits;
  uint64_t *numbers = realloc(set->numbers, (set->n + 1) * sizeof *numbers);
  if (numbers) set->numbers = numbers;
  if (!visits || !numbers) return 0;
  set->visits[set->n] = *v;
  set->numbers[set->n++] = n;
  return 1;
}

static const char *take_line(const json_t *line, visit_set *set, json_int_t *promised)
{
  const json_t *number = json_object_get(line, "visit");
  if (!number) {
    if (!json_is_integer(json_object_get(line, "visits"))) return "neither a visit nor a head";
    *promised = json_integer_value(json_object_get(line, "visits"));
    return NULL;
  }
  visit v;
  const char *wrong = json_is_integer(number) ? get_visit(line, &v) : "its number";
  if (wrong) return wrong;
  return append(set, (uint64_t)json_integer_value(number), &v) ? NULL : "no memory";
}

static int read_lines(FILE *file, const char *name, visit_set *set)
{
  char text[LINE_BYTES];
  json_int_t promised = -1;
  for (int at = 1; fgets(text, sizeof text, file); at++) {
    json_error_t error;
    json_t *line = json_loads(text, 0, &error);
    const char *wrong = line ? take_line(line, set, &promised) : error.text;
    if (wrong) fprintf(stderr, "%s:%d: %s\n", name, at, wrong);
    json_decref(line);
    if (wrong) return 0;
  }
  if (ferror(file)) {
    perror(name);
    return 0;
  }
  if (set->n == 0) {
    fprintf(stderr, "%s: no visits\n", name);
    return 0;
  }
  if (promised >= 0 && (size_t)promised != set->n) {
    fprintf(stderr, "%s: its head says %lld visits, it has %zu\n", name, (long long)promised, set->n);
    return 0;
  }
  return 1;
}

int visit_set_read(const char *name, visit_set *set)
{
  memset(set, 0, sizeof *set);
  FILE *file = fopen(name, "r");
  if (!file) {
    perror(name);
    return 0;
  }
  int good = read_lines(file, name, set);
  fclose(file);
  if (!good) visit_set_free(set);
  return good;
}

void visit_set_free(visit_set *set)
{
  free(set->visits);
  free(set->numbers);
  memset(set, 0, sizeof *set);
}
