/* SPDX-License-Identifier: MIT */
#include "show.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { WIDTH = 96 };

/* How each kind of quantity is spoken: unit, decimals of a reading, in inch and metric reports. */
static const struct {
  const char *si;
  const char *unit[2];
  int decimals[2];
} units[] = {
    {"Pa", {"psi", "bar"}, {0, 2}}, {"K", {"degF", "degC"}, {0, 0}}, {"m3/s", {"cfm", "L/min"}, {1, 0}},
    {"m3", {"gal", "L"}, {0, 0}},   {"m", {"in", "mm"}, {2, 1}},     {"rev/s", {"rpm", "rpm"}, {0, 0}},
    {"F", {"uF", "uF"}, {1, 1}},    {"W", {"kW", "kW"}, {2, 2}},     {"V", {"V", "V"}, {0, 0}},
    {"A", {"A", "A"}, {1, 1}},      {"s", {"s", "s"}, {0, 0}},       {"Pa/s", {"psi/min", "bar/min"}, {1, 2}},
};

const char *show(const visit *v, double value, const char *si, show_kind kind, char text[SHOWN])
{
  if (isnan(value)) {
    snprintf(text, SHOWN, "-");
    return text;
  }
  if (strcmp(si, "1") == 0) return show_percent(value, text);
  for (size_t i = 0; i < sizeof units / sizeof units[0]; i++) {
    if (strcmp(units[i].si, si) != 0) continue;
    const char *unit = units[i].unit[v->metric];
    const int gauge = strcmp(si, "Pa") == 0 && kind == SHOW_READING;
    double x = gauge ? value - v->site.barometric_pa : value;
    double y = x;
    if (kind == SHOW_DIFFERENCE || gauge)
      freeair_units_convert_difference(x, si, unit, &y);
    else
      freeair_units_convert(x, si, unit, &y);
    int decimals = units[i].decimals[v->metric];
    /* a small reading or an uncertainty keeps a digit that a large one has no use for */
    if (decimals == 0 && fabs(y) < 10.0 && fabs(y) > 1e-9 && fabs(y - round(y)) > 0.04) decimals = 1;
    if (kind == SHOW_DIFFERENCE && fabs(y) < 1.0 && decimals < 2) decimals++;
    snprintf(text, SHOWN, "%.*f %s%s", decimals, fabs(y) < 1e-9 ? 0.0 : y, unit,
             !gauge      ? ""
             : v->metric ? " gauge"
                         : "g");
    return text;
  }
  snprintf(text, SHOWN, "%.3g %s", value, si);
  return text;
}

const char *show_time(double seconds, char text[SHOWN])
{
  if (isnan(seconds)) {
    snprintf(text, SHOWN, "-");
  } else {
    long whole = lround(seconds);
    if (whole >= 3600)
      snprintf(text, SHOWN, "%ld:%02ld:%02ld h", whole / 3600, whole / 60 % 60, whole % 60);
    else if (whole >= 60)
      snprintf(text, SHOWN, "%ld:%02ld min", whole / 60, whole % 60);
    else
      snprintf(text, SHOWN, "%ld s", whole);
  }
  return text;
}

const char *show_percent(double share, char text[SHOWN])
{
  const double percent = 100.0 * share;
  if (isnan(share))
    snprintf(text, SHOWN, "-");
  else
    snprintf(text, SHOWN, "%.*f %%", fabs(percent) < 9.95 ? 1 : 0, percent);
  return text;
}

const char *show_probability(double p, char text[SHOWN])
{
  if (isnan(p))
    snprintf(text, SHOWN, "-");
  else if (p > 0.99)
    snprintf(text, SHOWN, "over 99 %%");
  else if (p < 0.01)
    snprintf(text, SHOWN, "under 1 %%");
  else
    snprintf(text, SHOWN, "%.0f %%", 100.0 * p);
  return text;
}

void print_wrapped(const char *label, int indent, const char *text)
{
  int column = printf("%s", label);
  if (column < indent) column += printf("%*s", indent - column, "");
  for (const char *word = text + strspn(text, " "); *word != '\0';) {
    const int n = (int)strcspn(word, " ");
    if (column > indent && column + 1 + n > WIDTH) {
      printf("\n%*s", indent, "");
      column = indent;
    }
    column += printf("%s%.*s", column > indent ? " " : "", n, word);
    word += n;
    word += strspn(word, " ");
  }
  putchar('\n');
}
