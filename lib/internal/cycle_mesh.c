/* SPDX-License-Identifier: MIT */
/* New steps of a revolution from the errors of the old ones. */
#include "internal/cycle.h"

#include "internal/check.h"

#include <string.h>

void freeair__cycle_remesh(freeair__cycle_mesh *mesh, double tolerance_ratio)
{
  float need[FREEAIR__STEPS]; /* new steps wanted in the place of each */
  float old[FREEAIR__STEPS];
  double total = 0.0;
  int n = mesh->n;
  if (n <= 0) return;
  double scale = sqrt(sqrt(tolerance_ratio)) / 0.8;
  for (int i = 0; i < n; i++) {
    double e = (double)mesh->error[i];
    if (i > 0) e = fmax(e, 0.3 * (double)mesh->error[i - 1]);
    if (i < n - 1) e = fmax(e, 0.3 * (double)mesh->error[i + 1]);
    need[i] = (float)fmax(scale * fmax(sqrt(sqrt(e)), 0.2), 12.0 * (double)mesh->h[i]);
    total += (double)need[i];
  }
  int wanted = (int)ceil(total);
  if (wanted > FREEAIR__STEPS) {
    mesh->n = 0;
    return;
  }
  double share = total / wanted;
  memcpy(old, mesh->h, sizeof old[0] * (size_t)n);
  int made = 0;
  double last = 0.0;
  double where = 0.0;
  double done = 0.0;
  for (int i = 0; i < n; i++) {
    while (made < wanted - 1 && done + (double)need[i] >= share * (made + 1)) {
      double here = where + (double)old[i] * (share * (made + 1) - done) / (double)need[i];
      mesh->h[made++] = (float)(here - last);
      last = here;
    }
    done += (double)need[i];
    where += (double)old[i];
  }
  mesh->h[made++] = (float)(1.0 - last);
  mesh->n = made;
}
