/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/units.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/units_table.h"

/* Flows at a reference state: sizes that mean nothing before the state is named. */
static const char referred[] =
    "scfm;scf;scfh;scf/h;scf/hr;scf/min;scfs;nm3;nm3/s;nm3/min;nm3/h;nm3/hr;sm3;sm3/s;sm3/min;sm3/h;sm3/hr;nl;nl/s;"
    "nl/min;nl/h;nlpm;sl;sl/s;sl/min;slpm;slm;sccm;m3(n);m3(n)/h;m3(n)/min;m3(s)/h;ncmh;scmh;scmm;ncmm;l/min(anr);"
    "l/min anr;dm3/s(anr);l/s(anr);l/s anr;m3/h(anr);m3/min(anr)";

enum { LONGEST = 64 };

/* What UTF-8 signs and marks between letters are read as. */
static const struct {
  const char *sign;
  const char *reading;
} signs[] = {
    {"\xC2\xB5", "u"},            /* micro sign */
    {"\xCE\xBC", "u"},            /* Greek mu */
    {"\xC2\xB0", "deg"},          /* degree sign */
    {"\xC2\xBA", "deg"},          /* masculine ordinal, typed for it */
    {"\xE2\x84\x83", "degC"},     /* degree Celsius as one sign */
    {"\xE2\x84\x89", "degF"},     /* degree Fahrenheit as one sign */
    {"\xCE\xA9", "ohm"},          /* Greek omega */
    {"\xE2\x84\xA6", "ohm"},      /* ohm sign */
    {"\xC2\xB2", "2"},            /* superscript two */
    {"\xC2\xB3", "3"},            /* superscript three */
    {"\xC2\xB9", "1"},            /* superscript one */
    {"\xE2\x81\xBB", " "},        /* superscript minus, as in min-1 */
    {"\xE2\x82\x82", "2"},        /* subscript two */
    {"\xC2\xB7", " "},            /* middle dot */
    {"\xE2\x8B\x85", " "},        /* dot operator */
    {"\xC3\x97", " "},            /* multiplication sign */
    {"\xC2\xA0", " "},            /* no-break space */
    {"\xE2\x80\xAF", " "},        /* narrow no-break space */
    {"\xE2\x80\x89", " "},        /* thin space */
    {"\xE2\x80\xB2", "'"},        /* prime */
    {"\xE2\x80\xB3", "\""},       /* double prime */
    {"\xE2\x80\x99", "'"},        /* right single quotation mark */
    {"\xE2\x80\x9D", "\""},       /* right double quotation mark */
    {"^", ""},  {"*", " "},       {".", " "}, {"-", " "}, {"\t", " "},
};

static size_t length_of(const char *s)
{
  size_t n = 0;
  while (s[n] != '\0') n++;
  return n;
}

static int begins_with(const char *s, const char *prefix)
{
  while (*prefix != '\0')
    if (*s++ != *prefix++) return 0;
  return 1;
}

/* Appends to the canonical spelling: one blank at most, none at the start, after
 * '/', '(' and '"' or before '/', '(' and ')'. False when the buffer is full. */
static int append(char *out, size_t *n, char c)
{
  if (c == ' ' && (*n == 0 || out[*n - 1] == ' ' || out[*n - 1] == '/' || out[*n - 1] == '(' || out[*n - 1] == '"'))
    return 1;
  if ((c == '/' || c == '(' || c == ')') && *n > 0 && out[*n - 1] == ' ') (*n)--;
  if (*n + 1 >= LONGEST) return 0;
  out[(*n)++] = c;
  return 1;
}

/* Canonical spelling of a symbol; false when it is empty or too long to be one. */
static int canonical(const char *symbol, char *out)
{
  size_t n = 0;
  while (*symbol != '\0') {
    size_t i = 0;
    while (i < FREEAIR__COUNT(signs) && !begins_with(symbol, signs[i].sign)) i++;
    if (i < FREEAIR__COUNT(signs)) {
      for (const char *r = signs[i].reading; *r != '\0'; r++)
        if (!append(out, &n, *r)) return 0;
      symbol += length_of(signs[i].sign);
    } else if (!append(out, &n, *symbol++)) {
      return 0;
    }
  }
  if (n > 0 && out[n - 1] == ' ') n--;
  out[n] = '\0';
  return n > 0;
}

static char lower(char c)
{
  return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

/* Whether a list of alternatives, separated by semicolons, holds the symbol. */
static int listed(const char *list, const char *symbol, int any_case)
{
  while (*list != '\0') {
    const char *s = symbol;
    while (*list != '\0' && *list != ';' && *list == (any_case ? lower(*s) : *s)) list++, s++;
    if ((*list == '\0' || *list == ';') && *s == '\0') return 1;
    while (*list != '\0' && *list != ';') list++;
    if (*list == ';') list++;
  }
  return 0;
}

/* The next row from start that reads the symbol; the number of rows if none. */
static size_t next_reading(const char *symbol, size_t start)
{
  size_t i = start;
  while (i < FREEAIR__COUNT(units) && !listed(units[i].symbol, symbol, 0) && !listed(units[i].exact, symbol, 0) &&
         !listed(units[i].any_case, symbol, 1))
    i++;
  return i;
}

/* A symbol as the table spells it, and the row of its default reading. */
struct reading {
  char symbol[LONGEST];
  size_t first;
};

static int32_t look_up(const char *symbol, struct reading *reading)
{
  if (!canonical(symbol, reading->symbol)) return FREEAIR_ERR_NOT_FOUND;
  reading->first = next_reading(reading->symbol, 0);
  if (reading->first < FREEAIR__COUNT(units)) return FREEAIR_OK;
  return listed(referred, reading->symbol, 1) ? FREEAIR_ERR_UNSUPPORTED : FREEAIR_ERR_NOT_FOUND;
}

/* The first pair of readings of one kind; gauge and absolute differ in kind,
 * unless differences are meant. */
static int32_t look_up_pair(const char *from, const char *to, int difference, const struct unit **a,
                            const struct unit **b)
{
  struct reading first;
  struct reading second;
  int32_t status = look_up(from, &first);
  if (status < 0) return status;
  status = look_up(to, &second);
  if (status < 0) return status;
  for (size_t i = first.first; i < FREEAIR__COUNT(units); i = next_reading(first.symbol, i + 1))
    for (size_t j = second.first; j < FREEAIR__COUNT(units); j = next_reading(second.symbol, j + 1))
      if (units[i].kind == units[j].kind &&
          (difference || (units[i].zero == BAROMETER) == (units[j].zero == BAROMETER))) {
        *a = &units[i];
        *b = &units[j];
        return FREEAIR_OK;
      }
  return FREEAIR_ERR_DIMENSION;
}

static int in_range(double value)
{
  return freeair__closed(value, -1e100, 1e100);
}

static double resize(double value, const struct unit *from, const struct unit *to)
{
  return from == to ? value : value * from->num / from->den * to->den / to->num;
}

/* Scales meet at 273.15 K, so that 20 degC is 68 degF to the last digit. */
static double rescale(double value, const struct unit *from, const struct unit *to)
{
  if (from == to || (from->zero != OWN_SCALE && to->zero != OWN_SCALE)) return resize(value, from, to);
  double result = resize(value - from->ice, from, to) + to->ice;
  return value > from->lowest ? result : to->lowest;
}

int32_t freeair_units_si_from(double value, const char *symbol, double *si)
{
  freeair__set_nan(si);
  if (symbol == NULL || si == NULL) return FREEAIR_ERR_NULL;
  if (!in_range(value)) return FREEAIR_ERR_DOMAIN;
  struct reading reading;
  int32_t status = look_up(symbol, &reading);
  if (status < 0) return status;
  const struct unit *unit = &units[reading.first];
  if (value < unit->lowest) return FREEAIR_ERR_DOMAIN;
  *si = rescale(value, unit, &coherent[unit->kind == TEMPERATURE]);
  return FREEAIR_OK;
}

int32_t freeair_units_from_si(double si, const char *symbol, double *value)
{
  freeair__set_nan(value);
  if (symbol == NULL || value == NULL) return FREEAIR_ERR_NULL;
  if (!in_range(si)) return FREEAIR_ERR_DOMAIN;
  struct reading reading;
  int32_t status = look_up(symbol, &reading);
  if (status < 0) return status;
  const struct unit *unit = &units[reading.first];
  const struct unit *base = &coherent[unit->kind == TEMPERATURE];
  if (si < base->lowest) return FREEAIR_ERR_DOMAIN;
  *value = rescale(si, base, unit);
  return FREEAIR_OK;
}

int32_t freeair_units_convert(double value, const char *from, const char *to, double *converted)
{
  freeair__set_nan(converted);
  if (from == NULL || to == NULL || converted == NULL) return FREEAIR_ERR_NULL;
  if (!in_range(value)) return FREEAIR_ERR_DOMAIN;
  const struct unit *a;
  const struct unit *b;
  int32_t status = look_up_pair(from, to, 0, &a, &b);
  if (status < 0) return status;
  if (value < a->lowest) return FREEAIR_ERR_DOMAIN;
  *converted = rescale(value, a, b);
  return FREEAIR_OK;
}

int32_t freeair_units_convert_difference(double value, const char *from, const char *to, double *converted)
{
  freeair__set_nan(converted);
  if (from == NULL || to == NULL || converted == NULL) return FREEAIR_ERR_NULL;
  if (!in_range(value)) return FREEAIR_ERR_DOMAIN;
  const struct unit *a;
  const struct unit *b;
  int32_t status = look_up_pair(from, to, 1, &a, &b);
  if (status < 0) return status;
  *converted = resize(value, a, b);
  return FREEAIR_OK;
}

int32_t freeair_units_absolute_from_gauge(double gauge_pa, double barometric_pa, double *p_pa)
{
  if (p_pa == NULL) return FREEAIR_ERR_NULL;
  *p_pa = NAN;
  if (!freeair__closed(gauge_pa, -200000.0, 1e9) || !freeair__closed(barometric_pa, 10000.0, 200000.0))
    return FREEAIR_ERR_DOMAIN;
  if (gauge_pa < -barometric_pa) return FREEAIR_ERR_NO_SOLUTION;
  *p_pa = gauge_pa + barometric_pa;
  return FREEAIR_OK;
}

int32_t freeair_units_gauge_from_absolute(double p_pa, double barometric_pa, double *gauge_pa)
{
  if (gauge_pa == NULL) return FREEAIR_ERR_NULL;
  *gauge_pa = NAN;
  if (!freeair__closed(p_pa, 0.0, 1e9) || !freeair__closed(barometric_pa, 10000.0, 200000.0))
    return FREEAIR_ERR_DOMAIN;
  *gauge_pa = p_pa - barometric_pa;
  return FREEAIR_OK;
}

int32_t freeair_units_is_gauge(const char *symbol, int32_t *gauge)
{
  if (gauge != NULL) *gauge = 0;
  if (symbol == NULL || gauge == NULL) return FREEAIR_ERR_NULL;
  struct reading reading;
  int32_t status = look_up(symbol, &reading);
  if (status < 0) return status;
  *gauge = units[reading.first].zero == BAROMETER;
  return FREEAIR_OK;
}

const char *freeair_units_si_symbol(const char *symbol)
{
  struct reading reading;
  if (symbol == NULL || look_up(symbol, &reading) < 0) return "";
  return kind_symbol[units[reading.first].kind];
}

size_t freeair_units_count(void)
{
  return FREEAIR__COUNT(units);
}

const char *freeair_units_symbol_at(size_t i)
{
  return i < FREEAIR__COUNT(units) ? units[i].symbol : "";
}

const char *freeair_units_name_at(size_t i)
{
  return i < FREEAIR__COUNT(units) ? units[i].name : "";
}

const char *freeair_units_si_symbol_at(size_t i)
{
  return i < FREEAIR__COUNT(units) ? kind_symbol[units[i].kind] : "";
}
