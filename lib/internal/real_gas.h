/* SPDX-License-Identifier: MIT */
/* What the real-gas compressions share: a state of dry air with what a path
 * needs of it. Nothing here tests its arguments. */
#ifndef FREEAIR_INTERNAL_REAL_GAS_H
#define FREEAIR_INTERNAL_REAL_GAS_H

#include "internal/check.h"
#include "internal/dry_air.h"

#include <stdint.h>

/* Above the highest temperature at which air is liquid: one phase. */
#define FREEAIR__REAL_T_LEAST 133.0
#define FREEAIR__REAL_T_MOST 2000.0

typedef struct freeair__real_state {
  double p_pa;
  double t_k;
  double rho_kg_m3;
  double h_j_kg;
  double s_j_kg_k;
  double zr_cp; /* Z R/cp */
  double x;     /* T/v (dv/dT) - 1 at constant pressure */
  double y;     /* -p/v (dv/dp) at constant temperature */
} freeair__real_state;

static inline int freeair__is_real_pressure(double p_pa)
{
  return freeair__closed(p_pa, 100.0, 1e8);
}

static inline int freeair__is_real_temperature(double t_k)
{
  return freeair__closed(t_k, FREEAIR__REAL_T_LEAST, FREEAIR__REAL_T_MOST);
}

/* guess_kg_m3 may be NaN. */
int32_t freeair__real_state_at(double p_pa, double t_k, double guess_kg_m3, freeair__real_state *state);

#endif
