/* SPDX-License-Identifier: MIT */
/* Reading descriptions: version checked, ranges checked, defaults filled in. */
#ifndef FREEAIR_INTERNAL_MACHINE_H
#define FREEAIR_INTERNAL_MACHINE_H

#include <freeair/machine.h>

/* Swept volume of one cylinder. */
static inline double freeair__machine_swept(double bore, double stroke)
{
  return 0.78539816339744830962 * bore * bore * stroke;
}

int32_t freeair__machine_read(const freeair_machine *machine, freeair_machine *m);
int32_t freeair__machine_site_read(const freeair_machine_site *site, const freeair_machine *m,
                                   freeair_machine_site *s);
#endif
