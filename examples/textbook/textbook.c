/* SPDX-License-Identifier: MIT */
/* Solves worked problems of published books with the library and compares with
 * the answers that the books print. The problems are data: the program knows
 * neither them nor the functions that they call.
 *
 * Introduces: freeair_function_find, freeair_map, freeair_units_from_si.
 */
#include "report.h"

#include <argp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

enum { USAGE = 2 };

typedef struct options {
  const char *data;
  const char *word;
  int list;
  int json;
  int markdown;
} options;

static error_t option(int key, char *value, struct argp_state *state)
{
  options *o = state->input;
  switch (key) {
    case 'd': o->data = value; return 0;
    case 'l': o->list = 1; return 0;
    case 'j': o->json = 1; return 0;
    case 'm': o->markdown = 1; return 0;
    case ARGP_KEY_ARG:
      if (state->arg_num > 0) argp_usage(state);
      o->word = value;
      return 0;
    default: return ARGP_ERR_UNKNOWN;
  }
}

static int holds(const char *text, const char *word)
{
  return strcasestr(text, word) != NULL;
}

/* A problem of this id, or else those about a word. */
static int wanted(const shelf *all, const problem *p, const char *word)
{
  if (word == NULL) return 1;
  for (size_t i = 0; i < all->n; i++)
    if (strcmp(all->problem[i].id, word) == 0) return p == &all->problem[i];
  return holds(p->id, word) || holds(p->title, word) || holds(p->subject, word) || holds(p->text, word) ||
         holds(p->author, word);
}

static void list(const problem *p)
{
  printf("%-24s %-14s %s\n", p->id, p->subject, p->title);
}

/* The page needs to know the sum and the differences before the problems. */
enum { COUNT, DIFFERENCES, SHOW };

static void show(const solution *s, const options *o, int pass, const char *subject, json_t *results)
{
  if (pass == DIFFERENCES) report_page_differences(s);
  if (pass != SHOW) return;
  if (o->json) json_array_append_new(results, report_json(s));
  else if (o->markdown) report_page_problem(s, subject);
  else report_text(s);
}

static tally run(const shelf *all, const options *o)
{
  tally total = {0};
  json_t *results = json_array();
  const char *subject = "";
  for (int pass = o->markdown ? COUNT : SHOW; pass <= SHOW; pass++) {
    if (pass == DIFFERENCES) report_page_begin(&total);
    total = (tally){0};
    for (size_t i = 0; i < all->n; i++) {
      const problem *p = &all->problem[i];
      if (!wanted(all, p, o->word)) continue;
      solution s;
      if (!solve(&s, p) && pass == SHOW) fprintf(stderr, "textbook: %s: %s\n", p->id, s.message);
      tally_add(&total, &s);
      show(&s, o, pass, subject, results);
      if (pass == SHOW) subject = p->subject;
    }
  }
  if (o->json) {
    json_dumpf(results, stdout, JSON_INDENT(2) | JSON_REAL_PRECISION(12));
    printf("\n");
  } else if (!o->markdown) {
    report_text_end(&total);
  }
  json_decref(results);
  return total;
}

int main(int argc, char **argv)
{
  static const struct argp_option known[] = {
      {"list", 'l', NULL, 0, "List the problems", 0},
      {"json", 'j', NULL, 0, "Print JSON", 0},
      {"markdown", 'm', NULL, 0, "Print the page of the documentation", 0},
      {"data", 'd', "FOLDER", 0, "Where books.json and problems/ are", 0},
      {0},
  };
  static const struct argp parser = {
      known, option, "[ID | WORD]",
      "Solves worked problems of textbooks and compares with the books: all, one by its id, or those about a word.\v"
      "Exit status: 0, 1 when an answer is off, 2 when the input is wrong.",
      NULL, NULL, NULL};
  options o = {.data = getenv("TEXTBOOK_DATA") != NULL ? getenv("TEXTBOOK_DATA") : TEXTBOOK_DATA};
  if (argp_parse(&parser, argc, argv, 0, NULL, &o) != 0) return USAGE;
  shelf all;
  int result = USAGE;
  if (shelf_read(&all, o.data)) {
    size_t shown = 0;
    for (size_t i = 0; i < all.n; i++)
      if (wanted(&all, &all.problem[i], o.word)) {
        shown++;
        if (o.list) list(&all.problem[i]);
      }
    if (shown == 0)
      fprintf(stderr, "textbook: no problem is about '%s'\n", o.word != NULL ? o.word : "");
    else
      result = o.list ? EXIT_SUCCESS : run(&all, &o).wrong > 0 ? EXIT_FAILURE : EXIT_SUCCESS;
  }
  shelf_free(&all);
  return result;
}
