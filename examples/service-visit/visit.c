/* SPDX-License-Identifier: MIT */
#include "visit.h"

#include "../common/names.h"
#include "reader.h"

#include <jansson.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

static int machine_key(reader *r, const char *key, const json_t *value)
{
  visit *v = r->v;
  if (strcmp(key, "rated_uncertainty") == 0) return read_quantity(r, value, "1", 1, &v->rated_uncertainty);
  if (strcmp(key, "receiver_uncertainty") == 0) return read_quantity(r, value, "m3", 1, &v->u_receiver_m3);
  if (strcmp(key, "piping") == 0) return read_quantity(r, value, "m3", 0, &v->piping_m3);
  if (strcmp(key, "rated_reference") == 0) {
    double code;
    char known[300];
    if (json_is_string(value) && constant_read("freeair_reference_state", json_string_value(value), &code)) {
      v->rated_reference = (int32_t)code;
      return 1;
    }
    constant_list("freeair_reference_state", known, sizeof known);
    return refuse(r, "one of these is wanted: %s", known);
  }
  const freeair_parameter *field = find_field(find_structure("freeair_machine"), key);
  if (field == NULL) return refuse(r, "there is no such entry in a machine's description");
  return set_field(r, field, value, (char *)&v->machine);
}

static int site_key(reader *r, const char *key, const json_t *value)
{
  if (strcmp(key, "altitude") == 0 || strcmp(key, "barometer") == 0) return 1; /* read first, by read_barometer */
  const freeair_parameter *field = find_field(find_structure("freeair_machine_site"), key);
  if (field == NULL) return refuse(r, "there is no such entry in a site's description");
  return set_field(r, field, value, (char *)&r->v->site);
}

/* Every gauge reading needs the barometer; so it comes first. */
static int read_barometer(reader *r, const json_t *root)
{
  visit *v = r->v;
  const json_t *site = json_object_get(root, "site");
  const json_t *altitude = json_object_get(site, "altitude");
  const json_t *barometer = json_object_get(site, "barometer");
  size_t before = enter(r, "site");
  if (site == NULL) return refuse(r, "missing: every reading of a gauge depends on the site");
  if (altitude == NULL && barometer == NULL)
    return refuse(r, "give the barometer, or the altitude to estimate it from");
  if (altitude != NULL) {
    size_t inner = enter(r, "altitude");
    if (!read_quantity(r, altitude, "m", 0, &v->altitude_m)) return 0;
    if (freeair_atmosphere_pressure_from_altitude(v->altitude_m, &r->barometer_pa) < 0)
      return refuse(r, "%.6g m is no altitude of a site", v->altitude_m);
    leave(r, inner);
  }
  if (barometer != NULL) {
    size_t inner = enter(r, "barometer");
    double p;
    r->barometer_pa = NAN;
    if (!read_quantity(r, barometer, "Pa", 0, &p)) return 0;
    if (!(p >= 3e4 && p <= 1.2e5)) return refuse(r, "%.6g Pa is outside the range [3e4;1.2e5]", p);
    r->barometer_pa = p;
    leave(r, inner);
  }
  leave(r, before);
  v->site.barometric_pa = r->barometer_pa;
  return 1;
}

static int reading_key(reader *r, const char *key, const json_t *value)
{
  const freeair_structure *s = find_structure("freeair_evidence_readings");
  int32_t code;
  const freeair_parameter *field;
  if (strcmp(key, "at") == 0) return read_quantity(r, value, "Pa", 0, &r->v->readings_at_pa);
  if (freeair_evidence_find(FREEAIR_EVIDENCE_KIND_READING, key, &code) == FREEAIR_OK && code > 0)
    field = freeair_structure_field(s, (size_t)(2 * code)); /* each reading is followed by its uncertainty */
  else
    field = find_field(s, key);
  if (field == NULL || strncmp(field->name, "u_", 2) == 0) return refuse(r, "there is no such reading");
  const json_t *uncertainty = NULL;
  if (json_is_object(value)) {
    const char *inner;
    json_t *part;
    json_object_foreach((json_t *)value, inner, part)
    {
      if (strcmp(inner, "value") != 0 && strcmp(inner, "uncertainty") != 0)
        return refuse(r, "'%s' is neither \"value\" nor \"uncertainty\"", inner);
    }
    uncertainty = json_object_get(value, "uncertainty");
    value = json_object_get(value, "value");
    if (value == NULL) return refuse(r, "no \"value\"");
  }
  if (!set_field(r, field, value, (char *)&r->v->readings)) return 0;
  if (uncertainty == NULL) return 1;
  char name[120];
  snprintf(name, sizeof name, "u_%s", field->name);
  const freeair_parameter *spread = find_field(s, name);
  size_t before = enter(r, "uncertainty");
  if (!set_field(r, spread, uncertainty, (char *)&r->v->readings)) return 0;
  leave(r, before);
  return 1;
}

static int read_answer(reader *r, const json_t *value, int32_t *answer)
{
  const char *text = json_is_string(value) ? json_string_value(value) : "";
  if (json_is_true(value) || strcmp(text, "yes") == 0)
    *answer = FREEAIR_EVIDENCE_YES;
  else if (json_is_false(value) || strcmp(text, "no") == 0)
    *answer = FREEAIR_EVIDENCE_NO;
  else if (json_is_null(value) || strcmp(text, "not checked") == 0)
    *answer = FREEAIR_EVIDENCE_NOT_CHECKED;
  else
    return refuse(r, "\"yes\", \"no\" or \"not checked\" is wanted");
  return 1;
}

static int observation_key(reader *r, const char *key, const json_t *value)
{
  int32_t code;
  if (freeair_evidence_find(FREEAIR_EVIDENCE_KIND_OBSERVATION, key, &code) != FREEAIR_OK || code < 1 ||
      code >= VISIT_OBSERVATIONS)
    return refuse(r, "there is no such observation; --vocabulary lists them");
  return read_answer(r, value, &r->v->observation[code]);
}

static int read_points(reader *r, const json_t *list, visit_run *run)
{
  if (!json_is_array(list) || json_array_size(list) < 2 || json_array_size(list) > VISIT_POINTS)
    return refuse(r, "a list of 2 to %d pairs is wanted, as in [[\"0:00\", \"0 psig\"], [\"1:00\", \"60 psig\"]]",
                  VISIT_POINTS);
  run->n_points = json_array_size(list);
  for (size_t i = 0; i < run->n_points; i++) {
    const json_t *pair = json_array_get(list, i);
    char number[24];
    snprintf(number, sizeof number, "%zu", i);
    size_t before = enter(r, number);
    if (!json_is_array(pair) || json_array_size(pair) != 2) return refuse(r, "a pair of time and pressure is wanted");
    if (!read_quantity(r, json_array_get(pair, 0), "s", 0, &run->t_s[i]) ||
        !read_quantity(r, json_array_get(pair, 1), "Pa", 0, &run->p_pa[i]))
      return 0;
    if (i > 0 && !(run->t_s[i] > run->t_s[i - 1]))
      return refuse(r, "the time does not increase; were lines shuffled?");
    leave(r, before);
  }
  run->p_from_pa = run->p_pa[0];
  run->p_to_pa = run->p_pa[run->n_points - 1];
  run->duration_s = run->t_s[run->n_points - 1] - run->t_s[0];
  return 1;
}

static int run_key(reader *r, const char *key, const json_t *value)
{
  visit_run *run = &r->v->run[r->v->n_runs];
  double code;
  if (strcmp(key, "from") == 0) return read_quantity(r, value, "Pa", 0, &run->p_from_pa);
  if (strcmp(key, "to") == 0) return read_quantity(r, value, "Pa", 0, &run->p_to_pa);
  if (strcmp(key, "time") == 0) return read_quantity(r, value, "s", 0, &run->duration_s);
  if (strcmp(key, "points") == 0) return read_points(r, value, run);
  if (strcmp(key, "service_valve_closed") == 0) return read_answer(r, value, &run->service_valve_closed);
  if (strcmp(key, "start") != 0) return refuse(r, "there is no such entry in a pump-up");
  if (!json_is_string(value) || !constant_read("freeair_pumpup_start", json_string_value(value), &code)) {
    char known[300];
    constant_list("freeair_pumpup_start", known, sizeof known);
    return refuse(r, "one of these is wanted: %s", known);
  }
  run->start = (int32_t)code;
  return 1;
}

static int read_runs(reader *r, const json_t *list)
{
  visit *v = r->v;
  if (!json_is_array(list) || json_array_size(list) > VISIT_RUNS)
    return refuse(r, "a list of at most %d pump-ups in brackets is wanted", VISIT_RUNS);
  for (size_t i = 0; i < json_array_size(list); i++, v->n_runs++) {
    char number[24];
    visit_run *run = &v->run[v->n_runs];
    *run = (visit_run){.p_from_pa = NAN, .p_to_pa = NAN, .duration_s = NAN};
    snprintf(number, sizeof number, "%zu", i);
    size_t before = enter(r, number);
    if (!each_key(r, json_array_get(list, i), run_key)) return 0;
    if (isnan(run->p_from_pa) || isnan(run->p_to_pa) || isnan(run->duration_s))
      return refuse(r, "\"from\", \"to\" and \"time\", or \"points\", are wanted");
    if (!(run->p_to_pa > run->p_from_pa)) return refuse(r, "the pressure does not rise");
    if (!(run->duration_s > 0.0)) return refuse(r, "the time is not positive");
    leave(r, before);
  }
  return 1;
}

static int read_capacitor(reader *r, const json_t *object)
{
  static const char *const known[] = {"kind",     "printed", "tolerance", "minimum",   "maximum",
                                      "measured", "current", "voltage",   "frequency", "meter_accuracy"};
  visit_capacitor *c = &r->v->capacitor[r->v->n_capacitors];
  double tolerance = NAN, current = NAN, voltage = NAN, frequency = NAN, accuracy = 0.02;
  struct {
    const char *key;
    const char *unit;
    double *to;
  } table[] = {
      {"printed", "F", &c->rated_f},   {"tolerance", "1", &tolerance},    {"minimum", "F", &c->minimum_f},
      {"maximum", "F", &c->maximum_f}, {"measured", "F", &c->measured_f}, {"current", "A", &current},
      {"voltage", "V", &voltage},      {"frequency", "Hz", &frequency},   {"meter_accuracy", "1", &accuracy},
  };
  *c = (visit_capacitor){.given = 1, .minimum_f = NAN, .maximum_f = NAN, .rated_f = NAN, .measured_f = NAN};
  if (!json_is_object(object)) return refuse(r, "an object in braces is wanted");
  const char *key;
  json_t *value;
  json_object_foreach((json_t *)object, key, value)
  {
    int found = 0;
    for (size_t i = 0; i < sizeof known / sizeof known[0]; i++) found |= strcmp(known[i], key) == 0;
    if (!found) {
      enter(r, key);
      return refuse(r, "there is no such entry in a capacitor");
    }
  }
  const json_t *kind = json_object_get(object, "kind");
  if (kind != NULL) {
    const char *text = json_is_string(kind) ? json_string_value(kind) : "";
    c->is_start = strcmp(text, "start") == 0;
    if (!c->is_start && strcmp(text, "run") != 0) return refuse(r, "\"kind\" is \"run\" or \"start\"");
  }
  for (size_t i = 0; i < sizeof table / sizeof table[0]; i++) {
    const json_t *entry = json_object_get(object, table[i].key);
    if (entry == NULL) continue;
    size_t before = enter(r, table[i].key);
    if (!read_quantity(r, entry, table[i].unit, 1, table[i].to)) return 0;
    if (!(*table[i].to > 0.0)) return refuse(r, "it is not positive");
    leave(r, before);
  }
  if (isnan(c->minimum_f) && !isnan(c->rated_f)) {
    if (isnan(tolerance)) tolerance = c->is_start ? 0.2 : 0.06;
    c->minimum_f = c->rated_f * (c->is_start ? 1.0 : 1.0 - tolerance);
    c->maximum_f = c->rated_f * (1.0 + tolerance);
  }
  if (isnan(c->rated_f)) c->rated_f = 0.5 * (c->minimum_f + c->maximum_f);
  if (!(c->minimum_f < c->maximum_f)) return refuse(r, "\"printed\", or \"minimum\" and \"maximum\", are wanted");
  if (!isnan(c->measured_f)) {
    c->u_measured_f = accuracy * c->measured_f / sqrt(3.0);
  } else if (freeair_capacitor_from_current(current, accuracy * current / sqrt(3.0), voltage,
                                            accuracy * voltage / sqrt(3.0), frequency, &c->measured_f,
                                            &c->u_measured_f) < 0) {
    return refuse(r, "\"measured\", or \"current\", \"voltage\" and \"frequency\", are wanted");
  }
  r->v->n_capacitors++;
  return 1;
}

static int log_key(reader *r, const char *key, const json_t *value)
{
  visit_log *log = &r->v->log;
  if (strcmp(key, "file") == 0) return read_text(r, value, log->file, sizeof log->file);
  if (strcmp(key, "time") == 0) return read_text(r, value, log->time, sizeof log->time);
  if (strcmp(key, "pressure") == 0) return read_text(r, value, log->pressure, sizeof log->pressure);
  if (strcmp(key, "loaded") == 0) return read_text(r, value, log->loaded, sizeof log->loaded);
  if (strcmp(key, "unit") == 0) return read_text(r, value, log->unit, sizeof log->unit);
  return refuse(r, "there is no such entry in a log");
}

/* What the air is used for is nobody's business, how much of it and at what price says what a fault costs. */
static int energy_key(reader *r, const char *key, const json_t *value)
{
  visit *v = r->v;
  if (strcmp(key, "currency") == 0) return read_text(r, value, v->currency, sizeof v->currency);
  if (strcmp(key, "air_used") == 0) {
    if (!read_quantity(r, value, "m3/s", 0, &v->air_m3_s)) return 0;
    return v->air_m3_s >= 0.0 && v->air_m3_s <= 1000.0 ? 1 : refuse(r, "%.6g m3/s cannot be", v->air_m3_s);
  }
  if (strcmp(key, "price_per_kwh") != 0) return refuse(r, "there is no such entry in the energy");
  if (!json_is_number(value) || !(json_number_value(value) >= 0.0) || !(json_number_value(value) <= 3.6e6))
    return refuse(r, "a number is wanted, the price of a kilowatt-hour");
  v->energy_price = json_number_value(value) / 3.6e6;
  return 1;
}

static int read_repaired(reader *r, const json_t *value)
{
  const char *text = json_is_string(value) ? json_string_value(value) : "";
  if (freeair_evidence_find(FREEAIR_EVIDENCE_KIND_CAUSE, text, &r->v->repaired) == FREEAIR_OK &&
      r->v->repaired > FREEAIR_EVIDENCE_OTHER)
    return 1;
  return refuse(r, "there is no such cause to repair; --vocabulary lists them");
}

static int root_key(reader *r, const char *key, const json_t *value)
{
  visit *v = r->v;
  if (strcmp(key, "title") == 0) return read_text(r, value, v->title, sizeof v->title);
  if (strcmp(key, "note") == 0) return read_text(r, value, v->note, sizeof v->note);
  if (strcmp(key, "complaint") == 0) return read_text(r, value, v->complaint, sizeof v->complaint);
  if (strcmp(key, "report_units") == 0) {
    const char *text = json_is_string(value) ? json_string_value(value) : "";
    v->metric = strcmp(text, "metric") == 0;
    return v->metric || strcmp(text, "inch") == 0 ? 1 : refuse(r, "\"metric\" or \"inch\" is wanted");
  }
  if (strcmp(key, "machine") == 0) return each_key(r, value, machine_key);
  if (strcmp(key, "site") == 0) return each_key(r, value, site_key);
  if (strcmp(key, "readings") == 0) return each_key(r, value, reading_key);
  if (strcmp(key, "observations") == 0) return each_key(r, value, observation_key);
  if (strcmp(key, "pumpups") == 0) return read_runs(r, value);
  if (strcmp(key, "log") == 0) return each_key(r, value, log_key);
  if (strcmp(key, "energy") == 0) return each_key(r, value, energy_key);
  if (strcmp(key, "repaired") == 0) return read_repaired(r, value);
  if (strcmp(key, "capacitors") == 0) {
    if (!json_is_array(value) || json_array_size(value) > 2) return refuse(r, "a list of one or two is wanted");
    for (size_t i = 0; i < json_array_size(value); i++) {
      char number[24];
      snprintf(number, sizeof number, "%zu", i);
      size_t before = enter(r, number);
      if (!read_capacitor(r, json_array_get(value, i))) return 0;
      leave(r, before);
    }
    return 1;
  }
  return refuse(r, "there is no such entry in a visit");
}

static int require(reader *r, int given, const char *what)
{
  return given ? 1 : refuse(r, "missing: %s", what);
}

int visit_read(visit *v, const char *path)
{
  json_error_t error;
  *v = (visit){.path = path,
               .altitude_m = NAN,
               .machine = FREEAIR_MACHINE_INIT,
               .site = FREEAIR_MACHINE_SITE_INIT,
               .rated_uncertainty = 0.04,
               .rated_reference = -1,
               .u_receiver_m3 = NAN,
               .piping_m3 = 0.0,
               .readings = FREEAIR_EVIDENCE_READINGS_INIT,
               .readings_at_pa = NAN,
               .air_m3_s = NAN,
               .energy_price = NAN};
  reader r = {.v = v, .barometer_pa = NAN};
  json_t *root = json_load_file(path, JSON_REJECT_DUPLICATES, &error);
  if (root == NULL) {
    if (error.line > 0)
      snprintf(v->message, sizeof v->message, "%.200s:%d:%d: %s", path, error.line, error.column, error.text);
    else
      snprintf(v->message, sizeof v->message, "%.400s", error.text);
    return 0;
  }
  int ok = json_is_object(root) ? 1 : refuse(&r, "an object in braces is wanted");
  ok = ok && read_barometer(&r, root) && each_key(&r, root, root_key);
  if (ok) {
    const int measured = v->n_runs > 0 || v->log.file[0] != '\0';
    r.place[0] = '\0';
    ok = require(&r, json_object_get(root, "machine") != NULL || v->log.file[0] != '\0', "\"machine\"") &&
         require(&r, !(v->n_runs > 0 && isnan(v->machine.receiver_m3)),
                 "\"machine\"/\"receiver\", without which a pump-up says nothing") &&
         require(&r, !(v->n_runs > 0 && isnan(v->site.ambient_k)), "\"site\"/\"temperature\"") &&
         require(&r,
                 measured || json_object_get(root, "readings") != NULL ||
                     json_object_get(root, "observations") != NULL || v->n_capacitors > 0,
                 "anything that was read or seen: \"pumpups\", \"readings\", \"observations\", \"log\"");
  }
  if (ok && v->log.file[0] != '\0') {
    snprintf(r.place, sizeof r.place, "/log");
    ok = require(&r, v->log.time[0] != '\0' && v->log.pressure[0] != '\0' && v->log.unit[0] != '\0',
                 "\"time\" and \"pressure\" (names of columns) and \"unit\"");
    const char *si = freeair_units_si_symbol(v->log.unit);
    if (ok && (si == NULL || strcmp(si, "Pa") != 0)) ok = refuse(&r, "'%s' is no unit of pressure", v->log.unit);
  }
  json_decref(root);
  return ok;
}
