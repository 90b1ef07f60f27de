/* SPDX-License-Identifier: MIT */
/* A program of a user, against what was installed: the pressure on a mountain. */
#include <freeair/freeair.h>

#include <stdio.h>

int main(void)
{
  double p_pa;
  if (freeair_version_number() != FREEAIR_VERSION_NUMBER) return 1;
  int32_t status = freeair_atmosphere_pressure_from_altitude(1000.0, &p_pa);
  printf("freeair %s: %.0f Pa at 1000 m, %s\n", freeair_version_text(), p_pa, freeair_status_text(status));
  /* ISO 2533:1975, table of the standard atmosphere, geopotential altitude 1000 m: 898.746 hPa (from memory) */
  return status != FREEAIR_OK || !(p_pa > 89874.1 && p_pa < 89875.1);
}
