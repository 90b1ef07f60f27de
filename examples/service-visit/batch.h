/* SPDX-License-Identifier: MIT */
/* Many visits at once, over threads of ours: the library keeps no state, and each
 * visit has its own memory. */
#ifndef FREEAIR_VISIT_BATCH_H
#define FREEAIR_VISIT_BATCH_H

#include "assess.h"

/* Assesses every visit and prints a line for each, in the order given. A visit that is refused is
 * told on standard error and holds up no other. Returns the number refused, or -1 without memory. */
int batch_run(char *const *paths, int n, int threads);

#endif
