/* SPDX-License-Identifier: MIT */
#include "shelf.h"

#include <glob.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int complain(const char *path, const char *where, const char *what)
{
  fprintf(stderr, "textbook: %s: %s%s%s\n", path, where, where[0] != '\0' ? ": " : "", what);
  return 0;
}

static json_t *load(const char *path)
{
  json_error_t error;
  json_t *root = json_load_file(path, JSON_REJECT_DUPLICATES, &error);
  if (root == NULL) fprintf(stderr, "textbook: %s:%d: %s\n", path, error.line, error.text);
  return root;
}

static int is_strings(const json_t *object)
{
  const char *key;
  json_t *value;
  json_object_foreach((json_t *)object, key, value) if (!json_is_string(value)) return 0;
  return json_is_object(object);
}

/* Looks at the form of one step and one answer only; solving tells whether they make sense. */
static int steps_well_formed(const problem *p, json_error_t *error)
{
  size_t i;
  json_t *step;
  json_array_foreach(p->steps, i, step)
  {
    const char *call, *let, *be, *unit, *why = NULL;
    json_t *with, *get;
    int formed = json_object_get(step, "call") != NULL
                     ? json_unpack_ex(step, error, JSON_STRICT, "{s:s, s:o, s:o, s?s}", "call", &call, "with", &with,
                                      "get", &get, "why", &why)
                     : json_unpack_ex(step, error, JSON_STRICT, "{s:s, s:s, s:s, s?s}", "let", &let, "be", &be, "unit",
                                      &unit, "why", &why);
    if (formed != 0) return 0;
  }
  json_t *answer;
  json_array_foreach(p->answers, i, answer)
  {
    const char *of, *is, *unit, *printed, *ours = NULL, *trust = NULL, *note = NULL, *their_way = NULL;
    if (json_unpack_ex(answer, error, JSON_STRICT, "{s:s, s:s, s:s, s:s, s?s, s?s, s?s, s?s}", "of", &of, "is", &is,
                       "unit", &unit, "printed", &printed, "ours", &ours, "trust", &trust, "note", &note, "their_way",
                       &their_way) != 0)
      return 0;
    if ((ours != NULL) != (note != NULL) || (ours != NULL) != (trust != NULL)) {
      snprintf(error->text, sizeof error->text, "'%s': an answer that differs has ours, trust and note, all three", is);
      return 0;
    }
    if (trust != NULL && strcmp(trust, "ours") != 0 && strcmp(trust, "book") != 0 && strcmp(trust, "both") != 0) {
      snprintf(error->text, sizeof error->text, "'%s': we trust ours, book or both, not '%s'", is, trust);
      return 0;
    }
  }
  return 1;
}

static int add(shelf *s, json_t *books, json_t *object, const char *path, const char *subject)
{
  problem p = {.subject = subject};
  const char *book;
  json_error_t error = {0};
  const char *id = json_string_value(json_object_get(object, "id"));
  if (json_unpack_ex(object, &error, JSON_STRICT, "{s:s, s:s, s:s, s:s, s:s, s:s, s?s, s:o, s:o, s:o}", "id", &p.id,
                     "title", &p.title, "problem", &p.text, "book", &book, "place", &p.place, "seen", &p.seen,
                     "barometer", &p.barometer, "given", &p.given, "steps", &p.steps, "answers", &p.answers) != 0 ||
      !steps_well_formed(&p, &error))
    return complain(path, id != NULL ? id : "a problem without id", error.text);
  if (!is_strings(p.given)) return complain(path, p.id, "given takes \"name\": \"value unit\"");
  if (json_array_size(p.answers) == 0) return complain(path, p.id, "no answers");
  if (json_unpack_ex(json_object_get(books, book), &error, JSON_STRICT, "{s:s, s:s}", "author", &p.author, "title",
                     &p.book) != 0)
    return complain(path, p.id, "its book is not in books.json");
  for (size_t i = 0; i < s->n; i++)
    if (strcmp(s->problem[i].id, p.id) == 0) return complain(path, p.id, "this id is taken");
  problem *more = realloc(s->problem, (s->n + 1) * sizeof *more);
  if (more == NULL) return complain(path, p.id, "out of memory");
  s->problem = more;
  s->problem[s->n++] = p;
  return 1;
}

static int add_file(shelf *s, json_t *books, const char *path)
{
  const char *name = strrchr(path, '/') + 1;
  json_t *subject = json_stringn(name, strcspn(name, "."));
  json_t *list = load(path);
  json_array_append_new(s->root, subject);
  if (list == NULL) return 0;
  json_array_append_new(s->root, list);
  if (!json_is_array(list)) return complain(path, "", "an array of problems is wanted");
  size_t i;
  json_t *object;
  json_array_foreach(list, i, object) if (!add(s, books, object, path, json_string_value(subject))) return 0;
  return 1;
}

int shelf_read(shelf *s, const char *folder)
{
  char path[4096];
  glob_t found = {0};
  *s = (shelf){.root = json_array()};
  snprintf(path, sizeof path, "%s/books.json", folder);
  json_t *books = load(path);
  if (books == NULL) return 0;
  json_array_append_new(s->root, books);
  snprintf(path, sizeof path, "%s/problems/*.json", folder);
  int ok = glob(path, 0, NULL, &found) == 0;
  if (!ok) complain(path, "", "no such file");
  for (size_t i = 0; ok && i < found.gl_pathc; i++) ok = add_file(s, books, found.gl_pathv[i]);
  globfree(&found);
  return ok;
}

void shelf_free(shelf *s)
{
  free(s->problem);
  json_decref(s->root);
}
