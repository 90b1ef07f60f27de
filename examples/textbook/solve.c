/* SPDX-License-Identifier: MIT */
#include "solve.h"

#include "../common/job.h"
#include "../common/quantity.h"

#include <muParserDLL.h>

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int refuse(solution *s, const char *format, ...)
{
  va_list list;
  va_start(list, format);
  vsnprintf(s->message, sizeof s->message, format, list);
  va_end(list);
  return 0;
}

static const quantity *known(const solution *s, const char *name)
{
  for (size_t i = 0; i < s->n; i++)
    if (strcmp(s->quantity[i].name, name) == 0) return &s->quantity[i];
  return NULL;
}

static int learn(solution *s, const char *name, double value, const char *unit)
{
  if (s->n == SOLUTION_QUANTITIES) return refuse(s, "more than %d quantities", SOLUTION_QUANTITIES);
  if (known(s, name) != NULL) return refuse(s, "'%s' is known already", name);
  s->quantity[s->n++] = (quantity){name, unit, value};
  return 1;
}

/* The coherent SI unit of a unit's kind; "1" for none. */
static const char *si_of(const char *unit)
{
  if (unit[0] == '\0' || strcmp(unit, "1") == 0) return "1";
  return freeair_units_si_symbol(unit);
}

static int learn_given(solution *s)
{
  const char *name;
  json_t *item;
  double barometer = NAN;
  char why[300];
  quantity_context pressure = {"Pa", NAN, 0};
  if (s->p->barometer != NULL && !quantity_read(s->p->barometer, &pressure, &barometer, why, sizeof why))
    return refuse(s, "barometer: %s", why);
  json_object_foreach(s->p->given, name, item)
  {
    const char *text = json_string_value(item);
    const char *unit = text + strcspn(text, " ");
    const char *si = si_of(unit + strspn(unit, " "));
    if (si == NULL) return refuse(s, "%s: the unit of '%s' is not known", name, text);
    quantity_context context = {si, barometer, quantity_is_difference(name)};
    double value;
    if (!quantity_read(text, &context, &value, why, sizeof why)) return refuse(s, "%s: %s", name, why);
    if (!learn(s, name, value, si)) return 0;
  }
  return 1;
}

/* An expression of known quantities, all in SI. */
static int evaluate(solution *s, const char *expression, double *value)
{
  muParserHandle_t parser = mupCreate(muBASETYPE_FLOAT);
  for (size_t i = 0; i < s->n; i++) mupDefineVar(parser, s->quantity[i].name, &s->quantity[i].value);
  mupSetExpr(parser, expression);
  *value = mupEval(parser);
  const int failed = mupError(parser); /* reading it clears it */
  const int ok = !failed && isfinite(*value);
  if (!ok) refuse(s, "'%s': %s", expression, failed ? mupGetErrorMsg(parser) : "the result is not finite");
  mupRelease(parser);
  return ok;
}

/* A number in SI as text for a call. A quantity handed over by name must be of the kind that is wanted. */
static int write_number(solution *s, const place *at, const char *expression, char *text, size_t size)
{
  double value;
  const quantity *q = known(s, expression);
  if (q != NULL && strcmp(at->leaf->unit, "any") != 0 && strcmp(q->unit, at->leaf->unit) != 0)
    return refuse(s, "%s is in %s, but %s is in %s", at->name, at->leaf->unit, q->name, q->unit);
  if (strcmp(expression, "inf") == 0) value = INFINITY; /* as degrees of freedom */
  else if (!evaluate(s, expression, &value)) return 0;
  snprintf(text, size, "%.17g", value);
  return 1;
}

static int give(solution *s, job *j, const char *name, const json_t *input)
{
  place at;
  char text[2048] = "";
  if (!job_find(j, name, 0, &at)) return refuse(s, "%s", j->message);
  const int raw = at.leaf->type == FREEAIR_TYPE_TEXT || at.leaf->choice[0] != '\0';
  if (raw && json_is_string(input)) {
    snprintf(text, sizeof text, "%s", json_string_value(input));
  } else if (json_is_array(input)) {
    size_t i;
    json_t *element;
    json_array_foreach(input, i, element)
    {
      char one[40];
      if (!write_number(s, &at, json_is_string(element) ? json_string_value(element) : "", one, sizeof one)) return 0;
      const size_t used = strlen(text);
      snprintf(text + used, sizeof text - used, "%s%s", i > 0 ? "," : "", one);
    }
  } else if (!json_is_string(input) || !write_number(s, &at, json_string_value(input), text, sizeof text)) {
    return s->message[0] != '\0' ? 0 : refuse(s, "%s: an expression in quotes is wanted", name);
  }
  return job_set(j, &at, (size_t)-1, text, "") ? 1 : refuse(s, "%s", j->message);
}

/* Takes an output under a name: p_pa, or p_pa[2] for an element. */
static int take(solution *s, job *j, const char *name, const char *output)
{
  place at;
  char bare[160];
  const size_t length = strcspn(output, "[");
  const size_t element = output[length] == '[' ? strtoul(output + length + 1, NULL, 10) : 0;
  snprintf(bare, sizeof bare, "%.*s", (int)length, output);
  if (!job_find(j, bare, 1, &at)) return refuse(s, "%s", j->message);
  if (element >= j->elements[at.parameter]) return refuse(s, "%s: there is no such element", output);
  const double value = job_value(j, &at, 0, element);
  if (isnan(value)) return refuse(s, "%s is not a number", output);
  return learn(s, name, value, strcmp(at.leaf->unit, "any") == 0 ? "1" : at.leaf->unit); /* any: the caller's own */
}

/* What has no name but its own: a function with one output. */
static const char *only_output(const freeair_function *f)
{
  const char *name = NULL;
  for (size_t i = 0; i < freeair_function_parameter_count(f); i++) {
    const freeair_parameter *p = freeair_function_parameter(f, i);
    if (!(p->flags & FREEAIR_PARAMETER_OUTPUT)) continue;
    if (name != NULL || p->structure != NULL || (p->flags & FREEAIR_PARAMETER_ARRAY)) return NULL;
    name = p->name;
  }
  return name;
}

static int call(solution *s, const json_t *step, int32_t *status)
{
  const char *name = json_string_value(json_object_get(step, "call"));
  const json_t *get = json_object_get(step, "get");
  const freeair_function *f = job_function(name);
  if (f == NULL) return refuse(s, "no function '%s'", name);
  job j;
  int ok = job_init(&j, f, 1, NAN) || refuse(s, "%s", j.message);
  const char *key;
  json_t *value;
  json_object_foreach(json_object_get(step, "with"), key, value) if (ok) ok = give(s, &j, key, value);
  ok = ok && (job_run(&j) || refuse(s, "%s", j.message));
  if (ok && j.status[0] < 0) {
    char why[JOB_MESSAGE];
    job_explain(&j, 0, why, sizeof why);
    ok = refuse(s, "%s: %s", name, why);
  }
  if (ok) {
    *status = j.status[0];
    s->cautions |= freeair_function_cautions(f);
  }
  if (ok && json_is_string(get)) {
    const char *output = only_output(f);
    ok = output != NULL ? take(s, &j, json_string_value(get), output)
                        : refuse(s, "%s has several outputs: say which to get", name);
  }
  json_object_foreach((json_t *)get, key, value) if (ok) ok = take(s, &j, key, json_string_value(value));
  job_free(&j);
  return ok;
}

static int let(solution *s, const json_t *step)
{
  const char *name = json_string_value(json_object_get(step, "let"));
  const char *unit = json_string_value(json_object_get(step, "unit"));
  const char *si = si_of(unit);
  double value;
  if (si == NULL || strcmp(si, unit) != 0) return refuse(s, "%s: '%s' is no coherent SI unit", name, unit);
  return evaluate(s, json_string_value(json_object_get(step, "be")), &value) && learn(s, name, value, unit);
}

/* Decimals of a printed number and half a unit of its last digit. */
static double half_digit(const char *printed, int *decimals)
{
  const char *point = strchr(printed, '.');
  const char *exponent = strpbrk(printed, "eE");
  const size_t end = exponent != NULL ? (size_t)(exponent - printed) : strlen(printed);
  *decimals = point != NULL ? (int)(end - (size_t)(point - printed) - 1) : 0;
  return 0.5 * pow(10.0, (exponent != NULL ? strtod(exponent + 1, NULL) : 0.0) - *decimals);
}

void print_like(double value, const char *printed, char *text, size_t size)
{
  int decimals;
  half_digit(printed, &decimals);
  snprintf(text, size, strpbrk(printed, "eE") != NULL ? "%.*e" : "%.*f", decimals, value);
}

/* Within half a digit, give or take what binary arithmetic loses at the very half. */
static int prints_as(double value, const char *printed)
{
  int decimals;
  char *end;
  const double half = half_digit(printed, &decimals);
  const double number = strtod(printed, &end);
  return *end == '\0' && fabs(value - number) <= half + 1e-9 * (half + fabs(number) * 1e-6);
}

static int in_unit(solution *s, double si, const char *from, const char *unit, double *value)
{
  const char *kind = si_of(unit);
  if (kind == NULL || strcmp(kind, from) != 0) return refuse(s, "'%s' does not measure %s", unit, from);
  *value = si;
  return strcmp(from, "1") == 0 && strcmp(unit, "1") == 0 ? 1 : freeair_units_from_si(si, unit, value) == FREEAIR_OK ||
                                                                   refuse(s, "cannot convert to %s", unit);
}

static int compare(solution *s, const json_t *answer, compared *c)
{
  const char *of = json_string_value(json_object_get(answer, "of"));
  const char *is = json_string_value(json_object_get(answer, "is"));
  const char *unit = json_string_value(json_object_get(answer, "unit"));
  const char *printed = json_string_value(json_object_get(answer, "printed"));
  const char *ours = json_string_value(json_object_get(answer, "ours"));
  const char *their_way = json_string_value(json_object_get(answer, "their_way"));
  const quantity *q = known(s, of);
  if (q == NULL) return refuse(s, "%s: no quantity '%s'", is, of);
  if (!in_unit(s, q->value, q->unit, unit, &c->ours)) return 0;
  const int same = prints_as(c->ours, printed);
  if (ours == NULL && !same)
    return refuse(s, "%s: the book prints %s %s, ours is %.10g", is, printed, unit, c->ours);
  if (ours != NULL && same) return refuse(s, "%s: agrees with the book, though the data says that it differs", is);
  if (ours != NULL && !prints_as(c->ours, ours))
    return refuse(s, "%s: ours is %.10g %s, not %s as the data says", is, c->ours, unit, ours);
  if (their_way != NULL) {
    double si, theirs;
    if (!evaluate(s, their_way, &si) || !in_unit(s, si, q->unit, unit, &theirs)) return 0;
    if (!prints_as(theirs, printed))
      return refuse(s, "%s: their way gives %.10g %s, but they print %s", is, theirs, unit, printed);
  }
  c->how = ours != NULL ? EXPLAINED : AGREES;
  return 1;
}

int solve(solution *s, const problem *p)
{
  *s = (solution){.p = p};
  size_t i;
  json_t *item;
  if (json_array_size(p->steps) > SOLUTION_STEPS || json_array_size(p->answers) > SOLUTION_ANSWERS)
    return refuse(s, "more than %d steps or %d answers", SOLUTION_STEPS, SOLUTION_ANSWERS);
  for (i = 0; i < json_array_size(p->answers); i++) s->answer[i] = (compared){WRONG, NAN};
  if (!learn_given(s)) return 0;
  s->first[0] = s->n;
  json_array_foreach(p->steps, i, item)
  {
    if (!(json_object_get(item, "call") != NULL ? call(s, item, &s->status[i]) : let(s, item))) {
      char why[SOLUTION_MESSAGE];
      memcpy(why, s->message, sizeof why);
      return refuse(s, "step %zu: %.600s", i + 1, why);
    }
    s->first[i + 1] = s->n;
  }
  char all[SOLUTION_MESSAGE] = "";
  json_array_foreach(p->answers, i, item)
  {
    const size_t used = strlen(all);
    if (!compare(s, item, &s->answer[i]))
      snprintf(all + used, sizeof all - used, "%s%.300s", used > 0 ? "; " : "", s->message);
  }
  memcpy(s->message, all, sizeof all);
  return all[0] == '\0';
}
