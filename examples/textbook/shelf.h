/* SPDX-License-Identifier: MIT */
/* The shelf: worked problems of published books, as the data describes them. */
#ifndef FREEAIR_TEXTBOOK_SHELF_H
#define FREEAIR_TEXTBOOK_SHELF_H

#include <jansson.h>

/* One problem. Texts and values belong to the shelf. */
typedef struct problem {
  const char *id;
  const char *title;
  const char *subject; /* name of the file it stands in */
  const char *text;    /* the problem, in our words */
  const char *author;
  const char *book;
  const char *place; /* example and page */
  const char *seen;  /* where the printed answers were seen */
  const char *barometer; /* turns gauge readings into absolute ones; null where there is none */
  json_t *given;   /* name: "value unit" */
  json_t *steps;   /* {call, with, get, why} or {let, be, unit, why} */
  json_t *answers; /* {of, is, unit, printed} and, where ours differs, {ours, trust, note, their_way} */
} problem;

typedef struct shelf {
  problem *problem;
  size_t n;
  json_t *root; /* keeps the texts */
} shelf;

/* Reads books.json and problems/ in a folder. Returns 0 with a message on standard error when anything is amiss. */
int shelf_read(shelf *s, const char *folder);
void shelf_free(shelf *s);

#endif
