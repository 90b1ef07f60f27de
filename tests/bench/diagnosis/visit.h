/* SPDX-License-Identifier: MIT */
/* Visits to invented machines: what is wrong, what the technician knows of the
 * machine, and what he reads, with scatter from unit to unit, noise, readings
 * that are missing or wrong, and laws of the true machine that nobody knows. */
#ifndef FREEAIR_BENCH_VISIT_H
#define FREEAIR_BENCH_VISIT_H

#include <freeair/freeair.h>

enum { VISIT_LOG = 16, VISIT_INTERSTAGE = 3, VISIT_OBSERVATIONS = 16 };

/* What can be wrong, as it is scored. */
enum visit_class {
  CLASS_HEALTHY,
  CLASS_FILTER,
  CLASS_LP_SUCTION,
  CLASS_LP_DISCHARGE,
  CLASS_HP_SUCTION,
  CLASS_HP_DISCHARGE,
  CLASS_GASKET,
  CLASS_RINGS,
  CLASS_INTERSTAGE_LEAK,
  CLASS_CHECK_VALVE,
  CLASS_DOWNSTREAM,
  CLASS_UNLOADER,
  CLASS_RELIEF,
  CLASS_BELT,
  CLASS_MOTOR,
  N_CLASSES
};

/* What is known on a visit; each level holds those before it. */
enum visit_level { LEVEL_TIMES, LEVEL_LOG, LEVEL_INTERSTAGE, LEVEL_TEMPERATURES, LEVEL_ALL, N_LEVELS };

typedef struct visit {
  freeair_machine nameplate;
  freeair_machine_site site;
  int family;      /* 0 two-stage V, 1 two-stage side by side, 2 single-stage twin */
  int n_faults;    /* 0 to 2 */
  int fault[2];    /* classes */
  double severity[2];
  double lost[2];  /* share of the delivery at seven tenths of the way to cut-out */
  double receiver_pa; /* at which interstage pressure, temperatures, speeds and power are read */
  freeair_evidence_readings readings;
  double log_t_s[VISIT_LOG];
  double log_p_pa[VISIT_LOG];
  size_t n_log;
  double interstage_at_pa[VISIT_INTERSTAGE];
  double interstage_pa[VISIT_INTERSTAGE];
  size_t n_interstage;
  int32_t observation[VISIT_OBSERVATIONS];
  int32_t answer[VISIT_OBSERVATIONS];
  size_t n_observations;
} visit;

const char *visit_class_name(int which);
const char *visit_level_name(int level);

/* The class of a cause; -1 where it has none. */
int visit_class_of(int32_t cause);

/* How often each class is the fault, of all visits. */
double visit_share(int which);

/* Makes visit number n of a series; width is a factor on all that is not known
 * of a unit. Returns 0 when that machine cannot be computed. */
int visit_make(uint64_t series, uint64_t n, double width, visit *v);

/* The same visit with no more than a level of evidence. */
void visit_reduce(const visit *all, int level, visit *v);

#endif
