/* SPDX-License-Identifier: MIT */
/* A logger's CSV file: a column of times, one of pressures, one that says "loaded" perhaps. */
#ifndef FREEAIR_VISIT_LOGFILE_H
#define FREEAIR_VISIT_LOGFILE_H

#include "visit.h"

typedef struct logfile {
  double *t_s;      /* from the first row on */
  double *p_pa;     /* absolute; NaN where the logger wrote nothing */
  double *loaded;   /* 1 or 0, NaN where unknown; null without such a column */
  size_t n;
} logfile;

/* Reads the log of a visit. Returns 0 with message set, which names file and line. */
int logfile_read(logfile *log, const visit *v, char message[VISIT_TEXT]);
void logfile_free(logfile *log);

#endif
