/* SPDX-License-Identifier: MIT */
/* The machine of an example, as its command line describes it. The figures of
 * the demonstration machine are our own. */
#ifndef FREEAIR_EXAMPLES_PLANT_H
#define FREEAIR_EXAMPLES_PLANT_H

#include <freeair/machine.h>

#include <stdio.h>

enum { PLANT_FAULTS_MOST = 16 };

typedef struct plant_fault {
  int32_t fault;
  double severity;
} plant_fault;

typedef struct plant {
  freeair_machine machine;
  freeair_machine_site site;
  plant_fault fault[PLANT_FAULTS_MOST];
  size_t n_faults;
} plant;

/* A side-by-side two-stage unit with a 300-litre receiver. */
void plant_demonstration(plant *p);

/* Takes "bore=120 mm", "stages=1", ... or "fault=belt slip:0.5". Returns 1; or 0
 * with the reason in why. */
int plant_set(plant *p, const char *setting, char *why, size_t size);

/* What may be set, for --help. */
extern const char plant_help[];

/* A pipe to gnuplot that draws into an SVG file, or null when there is none. */
FILE *plant_gnuplot(const char *svg, int width, int height);

/* Ends the drawing; returns 1 when gnuplot was content. */
int plant_gnuplot_end(FILE *pipe);

#endif
