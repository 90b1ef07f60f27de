/* SPDX-License-Identifier: MIT */
/* Shows solved problems: as text, as JSON, as a page of the documentation. */
#ifndef FREEAIR_TEXTBOOK_REPORT_H
#define FREEAIR_TEXTBOOK_REPORT_H

#include "solve.h"

typedef struct tally {
  size_t problems;
  size_t answers;
  size_t agree;
  size_t explained;
  size_t wrong; /* problems that did not come out */
  uint32_t cautions;
} tally;

void tally_add(tally *t, const solution *s);

void report_text(const solution *s);
void report_text_end(const tally *t);
/* Returns a new reference. */
json_t *report_json(const solution *s);
/* The page: what comes first, the answers that differ, each problem with the head of its subject. */
void report_page_begin(const tally *t);
void report_page_differences(const solution *s);
void report_page_problem(const solution *s, const char *subject_before);

#endif
