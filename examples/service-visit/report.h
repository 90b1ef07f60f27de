/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_VISIT_REPORT_H
#define FREEAIR_VISIT_REPORT_H

#include "assess.h"

/* For a person. */
void report_text(const assessment *a);
/* For a program: everything in SI, with the units in the names. */
void report_json(const assessment *a);

#endif
