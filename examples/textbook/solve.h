/* SPDX-License-Identifier: MIT */
/* Solves a problem step by step, each a call of the library by name or a line of
 * arithmetic, and compares with what the book prints. */
#ifndef FREEAIR_TEXTBOOK_SOLVE_H
#define FREEAIR_TEXTBOOK_SOLVE_H

#include "shelf.h"

#include <stdint.h>

enum { SOLUTION_QUANTITIES = 96, SOLUTION_ANSWERS = 24, SOLUTION_STEPS = 48, SOLUTION_MESSAGE = 700 };

/* A quantity that a problem knows: given, or found by a step. Value in coherent SI. */
typedef struct quantity {
  const char *name;
  const char *unit;
  double value;
} quantity;

typedef enum comparison {
  AGREES,    /* to the last digit that the book prints */
  EXPLAINED, /* differs, and the data says by how much and why */
  WRONG      /* differs from what the data says; message tells */
} comparison;

typedef struct compared {
  comparison how;
  double ours; /* in the unit that the book prints */
} compared;

typedef struct solution {
  const problem *p;
  quantity quantity[SOLUTION_QUANTITIES];
  size_t n;
  size_t first[SOLUTION_STEPS + 1]; /* quantities before each step */
  int32_t status[SOLUTION_STEPS];
  compared answer[SOLUTION_ANSWERS];
  uint32_t cautions;
  char message[SOLUTION_MESSAGE]; /* empty when all went well */
} solution;

/* Returns 1 when every answer agrees or is explained; else 0 with a message. */
int solve(solution *s, const problem *p);

/* Prints a value with as many digits as a printed one has. */
void print_like(double value, const char *printed, char *text, size_t size);

#endif
