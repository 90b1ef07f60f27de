/* SPDX-License-Identifier: MIT */
#include "report.h"

#include <freeair/freeair.h>

#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { WIDTH = 96, NUMBER = 64 };

static const char *text_of(const json_t *object, const char *key)
{
  const char *text = json_string_value(json_object_get(object, key));
  return text != NULL ? text : "";
}

static const char *function_of(const json_t *step)
{
  const char *name = text_of(step, "call");
  return strncmp(name, "freeair_", 8) == 0 ? name + 8 : name;
}

/* " kPa", or nothing for a pure number. */
static const char *spaced(const char *unit)
{
  static char text[NUMBER];
  snprintf(text, sizeof text, "%s%s", strcmp(unit, "1") == 0 || unit[0] == '\0' ? "" : " ",
           strcmp(unit, "1") == 0 ? "" : unit);
  return text;
}

static void wrap(const char *text, int indent)
{
  int column = 0;
  while (*text != '\0') {
    const int word = (int)strcspn(text, " ");
    if (column > 0 && column + 1 + word > WIDTH) {
      putchar('\n');
      column = 0;
    }
    if (column == 0) column = printf("%*s%.*s", indent, "", word, text);
    else column += printf(" %.*s", word, text);
    text += word;
    text += strspn(text, " ");
  }
  putchar('\n');
}

/* One input of a call: "t1_k = t1", "t_in_k = [t1, t3]". */
static void print_input(FILE *out, const char *name, const json_t *value)
{
  fprintf(out, "%s = ", name);
  if (!json_is_array(value)) {
    fputs(json_string_value(value), out);
    return;
  }
  size_t i;
  json_t *element;
  json_array_foreach((json_t *)value, i, element) fprintf(out, "%s%s", i > 0 ? ", " : "[", json_string_value(element));
  fputc(']', out);
}

static void print_inputs(FILE *out, const json_t *step)
{
  const char *name;
  json_t *value;
  const char *between = "";
  json_object_foreach(json_object_get(step, "with"), name, value)
  {
    fputs(between, out);
    print_input(out, name, value);
    between = ", ";
  }
}

/* "book 4.24 kW" beside "ours 4.24 kW". */
typedef struct row {
  const char *is;
  char book[NUMBER];
  char ours[NUMBER];
  const char *verdict;
} row;

static row row_of(const solution *s, size_t i)
{
  const json_t *answer = json_array_get(s->p->answers, i);
  const char *printed = text_of(answer, "printed");
  const char *ours = text_of(answer, "ours");
  const char *unit = spaced(text_of(answer, "unit"));
  char number[NUMBER];
  row r = {.is = text_of(answer, "is")};
  snprintf(r.book, sizeof r.book, "%.30s%.30s", printed, unit);
  print_like(s->answer[i].ours, ours[0] != '\0' ? ours : printed, number, sizeof number);
  snprintf(r.ours, sizeof r.ours, "%.30s%.30s", number, unit);
  r.verdict = s->answer[i].how == AGREES ? "agrees" : s->answer[i].how == EXPLAINED ? "differs" : "WRONG";
  return r;
}

static const char *trusted(const json_t *answer)
{
  const char *trust = text_of(answer, "trust");
  if (strcmp(trust, "ours") == 0) return "We trust ours.";
  if (strcmp(trust, "book") == 0) return "We trust the book.";
  return "Both are right.";
}

void tally_add(tally *t, const solution *s)
{
  const size_t n = json_array_size(s->p->answers);
  t->problems++;
  t->wrong += s->message[0] != '\0';
  t->answers += n;
  t->cautions |= s->cautions;
  for (size_t i = 0; i < n; i++) {
    t->agree += s->answer[i].how == AGREES;
    t->explained += s->answer[i].how == EXPLAINED;
  }
}

void report_text(const solution *s)
{
  const problem *p = s->p;
  size_t i;
  json_t *item;
  const char *name;
  printf("%s: %s\n", p->id, p->title);
  printf("  %s, %s, %s\n  (%s)\n\n", p->author, p->book, p->place, p->seen);
  wrap(p->text, 2);
  printf("\n");
  json_object_foreach(p->given, name, item) printf("  %-12s %s\n", name, json_string_value(item));
  json_array_foreach(p->steps, i, item)
  {
    if (s->first[i + 1] == 0) break;
    printf("\n  %zu. ", i + 1);
    if (function_of(item)[0] != '\0') {
      printf("%s(", function_of(item));
      print_inputs(stdout, item);
      printf(")\n");
    } else {
      printf("%s\n", text_of(item, "be"));
    }
    if (text_of(item, "why")[0] != '\0') wrap(text_of(item, "why"), 5);
    for (size_t k = s->first[i]; k < s->first[i + 1]; k++)
      printf("     %-12s %.6g%s\n", s->quantity[k].name, s->quantity[k].value, spaced(s->quantity[k].unit));
    if (s->status[i] > 0) printf("     warning: %s\n", freeair_status_text(s->status[i]));
  }
  printf("\n");
  json_array_foreach(p->answers, i, item)
  {
    if (!isfinite(s->answer[i].ours)) continue;
    row r = row_of(s, i);
    printf("  %s: book %s, ours %s, %s\n", r.is, r.book, r.ours, r.verdict);
    if (s->answer[i].how == EXPLAINED) {
      wrap(text_of(item, "note"), 4);
      printf("    %s\n", trusted(item));
    }
  }
  if (s->message[0] != '\0') printf("  WRONG: %s\n", s->message);
  printf("\n");
}

void report_text_end(const tally *t)
{
  for (uint32_t bit = 1; bit != 0; bit <<= 1)
    if (t->cautions & bit) wrap(freeair_caution_text(bit), 0);
  printf("\n%zu problems, %zu answers: %zu agree to the printed digit, %zu differ and say why, %zu problems wrong\n",
         t->problems, t->answers, t->agree, t->explained, t->wrong);
}

json_t *report_json(const solution *s)
{
  const problem *p = s->p;
  json_t *steps = json_array();
  json_t *answers = json_array();
  size_t i;
  json_t *item;
  json_array_foreach(p->steps, i, item)
  {
    json_t *step = json_deep_copy(item);
    json_t *found = json_object();
    for (size_t k = s->first[i]; k < s->first[i + 1]; k++)
      json_object_set_new(found, s->quantity[k].name,
                          json_pack("{s:f, s:s}", "value", s->quantity[k].value, "unit", s->quantity[k].unit));
    json_object_set_new(step, "found", found);
    json_object_set_new(step, "status", json_string(freeair_status_name(s->status[i])));
    json_array_append_new(steps, step);
  }
  json_array_foreach(p->answers, i, item)
  {
    json_t *answer = json_deep_copy(item);
    if (isfinite(s->answer[i].ours)) json_object_set_new(answer, "value", json_real(s->answer[i].ours));
    json_object_set_new(answer, "verdict", json_string(row_of(s, i).verdict));
    json_array_append_new(answers, answer);
  }
  json_t *cautions = json_array();
  for (uint32_t bit = 1; bit != 0; bit <<= 1)
    if (s->cautions & bit) json_array_append_new(cautions, json_string(freeair_caution_text(bit)));
  return json_pack("{s:s, s:s, s:s, s:s, s:s, s:s, s:s, s:s, s:O, s:o, s:o, s:o, s:s, s:s}", "id", p->id, "title",
                   p->title, "subject", p->subject, "problem", p->text, "author", p->author, "book", p->book, "place",
                   p->place, "seen", p->seen, "given", p->given, "steps", steps, "answers", answers, "cautions",
                   cautions, "verdict", s->message[0] != '\0' ? "wrong" : "right", "message", s->message);
}

static void print_heading(const char *subject)
{
  printf("\n## ");
  for (const char *c = subject; *c != '\0'; c++)
    putchar(c == subject ? toupper((unsigned char)*c) : *c == '-' || *c == '_' ? ' ' : *c);
  printf("\n\n");
}

void report_page_begin(const tally *t)
{
  printf("# Worked problems from textbooks {#guide_textbook}\n\n"
         "<!-- Written by examples/textbook/textbook with the option markdown: make textbook-page. -->\n\n"
         "%zu problems of published books with %zu printed answers, solved with this library. The problems are told in "
         "our own words with the data of the book. %zu answers agree to the last digit that is printed; %zu differ, "
         "and each says why, with the value that we get and, where it could be found, the slip that gives the printed "
         "one. `examples/textbook/textbook ID` shows one of them step by step, and all of them run in the tests.\n\n",
         t->problems, t->answers, t->agree, t->explained);
  printf("Where the answers were seen stands beside each problem. *Companion notebook* is the notebook of that name in "
         "the public collection of Python companions to textbooks (FOSSEE, Python Textbook Companions), which works "
         "the examples of the book anew: its data are the book's, its answers are computed by the notebook, and a slip "
         "may be of either.\n\n"
         "Quantities are in SI inside; pressures are absolute. The numbers are exercises, not advice: for a machine "
         "its nameplate, its manual, local codes and licensed practice come first. The cautions that belong to the "
         "functions of a problem are named below it; see the page on cautions.\n\n"
         "## Where the answers differ\n\n| problem | answer | book | ours | trusted |\n|---|---|---|---|---|\n");
}

/* The anchor of a problem: its id with underscores. */
static const char *anchor(const problem *p)
{
  static char text[160];
  snprintf(text, sizeof text, "textbook_%s", p->id);
  for (char *c = text; *c != '\0'; c++)
    if (!isalnum((unsigned char)*c)) *c = '_';
  return text;
}

void report_page_differences(const solution *s)
{
  for (size_t i = 0; i < json_array_size(s->p->answers); i++) {
    if (s->answer[i].how != EXPLAINED) continue;
    row r = row_of(s, i);
    printf("| [%s](#%s) | %s | %s | %s | %s |\n", s->p->id, anchor(s->p), r.is, r.book, r.ours,
           text_of(json_array_get(s->p->answers, i), "trust"));
  }
}

static void page_step(const solution *s, size_t i, const json_t *step)
{
  printf("%zu. ", i + 1);
  for (size_t k = s->first[i]; k < s->first[i + 1]; k++)
    printf("%s`%s`", k > s->first[i] ? ", " : "", s->quantity[k].name);
  if (function_of(step)[0] != '\0') {
    printf(" by freeair_%s(): `", function_of(step));
    print_inputs(stdout, step);
    printf("` gives ");
  } else {
    printf(" = `%s` = ", text_of(step, "be"));
  }
  for (size_t k = s->first[i]; k < s->first[i + 1]; k++)
    printf("%s%.5g%s", k > s->first[i] ? ", " : "", s->quantity[k].value, spaced(s->quantity[k].unit));
  printf("%s%s%s\n", text_of(step, "why")[0] != '\0' ? ". " : "", text_of(step, "why"),
         text_of(step, "why")[0] == '\0' ? "." : "");
  if (s->status[i] > 0) printf("   Warning: %s\n", freeair_status_text(s->status[i]));
}

void report_page_problem(const solution *s, const char *subject_before)
{
  const problem *p = s->p;
  size_t i;
  json_t *item;
  const char *name;
  const char *between = "";
  if (strcmp(subject_before, p->subject) != 0) print_heading(p->subject);
  printf("### %s {#%s}\n\n`%s`: %s, *%s*, %s; %s.\n\n%s\n\nGiven: ", p->title, anchor(p), p->id, p->author, p->book,
         p->place, p->seen, p->text);
  json_object_foreach(p->given, name, item)
  {
    printf("%s`%s` = %s", between, name, json_string_value(item));
    between = ", ";
  }
  printf("%s%s.\n\n", p->barometer != NULL ? "; barometer " : "", p->barometer != NULL ? p->barometer : "");
  json_array_foreach(p->steps, i, item) page_step(s, i, item);
  printf("\n| answer | book | ours | |\n|---|---|---|---|\n");
  json_array_foreach(p->answers, i, item)
  {
    row r = row_of(s, i);
    printf("| %s | %s | %s | %s |\n", r.is, r.book, r.ours, r.verdict);
  }
  printf("\n");
  json_array_foreach(p->answers, i, item) if (s->answer[i].how == EXPLAINED)
    printf("On the %s: %s %s\n\n", text_of(item, "is"), text_of(item, "note"), trusted(item));
  between = "Cautions: ";
  for (uint32_t bit = 1; bit != 0; bit <<= 1)
    if (s->cautions & bit) {
      printf("%s#%s", between, freeair_caution_name(bit));
      between = ", ";
    }
  if (s->cautions != 0) printf(".\n\n");
}
