/* SPDX-License-Identifier: MIT */
#include <freeair/fitting.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"

/* By enum freeair_fitting_kind; negative where a table has no value. */
typedef struct losses {
  double threaded;
  double flanged;
  double diameters;
} losses;

static const losses fittings[] = {
  {-1.0, -1.0, -1.0},
  {1.5, 0.3, 30.0},    /* elbow 90 */
  {0.7, 0.2, 14.0},    /* elbow 90, long radius */
  {0.4, -1.0, 16.0},   /* elbow 45 */
  {1.5, 0.2, 50.0},    /* return bend */
  {0.9, 0.2, 20.0},    /* tee, run */
  {2.0, 1.0, 60.0},    /* tee, branch */
  {0.08, -1.0, -1.0},  /* union */
  {10.0, 10.0, 340.0}, /* globe valve */
  {2.0, 2.0, 150.0},   /* angle valve */
  {0.15, 0.15, 8.0},   /* gate valve */
  {0.05, 0.05, 3.0},   /* ball valve */
  {2.0, 2.0, 100.0},   /* swing check */
  {0.5, 0.5, -1.0},    /* entrance, sharp */
  {0.8, 0.8, -1.0},    /* entrance, inward */
  {0.04, 0.04, -1.0},  /* entrance, round */
  {1.0, 1.0, -1.0},    /* exit */
};

static int known(int32_t kind)
{
  return kind >= 1 && kind < (int32_t)FREEAIR__COUNT(fittings);
}

static int32_t answer(double value, double *out)
{
  if (value < 0.0) return FREEAIR_ERR_NOT_FOUND;
  *out = value;
  return FREEAIR_OK;
}

int32_t freeair_fitting_loss_coefficient(int32_t fitting, int32_t joint, double *loss_coefficient)
{
  freeair__set_nan(loss_coefficient);
  if (loss_coefficient == NULL) return FREEAIR_ERR_NULL;
  if (!known(fitting) || (joint != FREEAIR_FITTING_THREADED && joint != FREEAIR_FITTING_FLANGED))
    return FREEAIR_ERR_DOMAIN;
  return answer(joint == FREEAIR_FITTING_THREADED ? fittings[fitting].threaded : fittings[fitting].flanged,
                loss_coefficient);
}

int32_t freeair_fitting_length_ratio(int32_t fitting, double *ratio)
{
  freeair__set_nan(ratio);
  if (ratio == NULL) return FREEAIR_ERR_NULL;
  if (!known(fitting)) return FREEAIR_ERR_DOMAIN;
  return answer(fittings[fitting].diameters, ratio);
}

int32_t freeair_fitting_equivalent_length(double loss_coefficient, double factor, double diameter_m, double *length_m)
{
  freeair__set_nan(length_m);
  if (length_m == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(loss_coefficient, 0.0, 1e6) || !freeair__closed(factor, 1e-4, 100.0) ||
      !freeair__closed(diameter_m, 1e-6, 10.0))
    return FREEAIR_ERR_DOMAIN;
  *length_m = loss_coefficient * diameter_m / factor;
  return FREEAIR_OK;
}

int32_t freeair_fitting_coefficient_from_length(double length_m, double factor, double diameter_m,
                                                double *loss_coefficient)
{
  freeair__set_nan(loss_coefficient);
  if (loss_coefficient == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(length_m, 0.0, 1e6) || !freeair__closed(factor, 0.0, 100.0) ||
      !freeair__closed(diameter_m, 1e-6, 10.0))
    return FREEAIR_ERR_DOMAIN;
  *loss_coefficient = factor * length_m / diameter_m;
  return FREEAIR_OK;
}

/* 1 - (narrow/wide)^2 without loss where they are nearly equal; negative or NaN where they are not in order. */
static double area_step(double narrow, double wide)
{
  return (wide - narrow) / wide * ((wide + narrow) / wide);
}

static int diameters_valid(double narrow, double wide)
{
  return freeair__closed(narrow, 1e-6, 10.0) && freeair__closed(wide, 1e-6, 10.0) && narrow <= wide;
}

int32_t freeair_fitting_expansion(double narrow_m, double wide_m, double *loss_coefficient)
{
  freeair__set_nan(loss_coefficient);
  if (loss_coefficient == NULL) return FREEAIR_ERR_NULL;
  if (!diameters_valid(narrow_m, wide_m)) return FREEAIR_ERR_DOMAIN;
  const double step = area_step(narrow_m, wide_m);
  *loss_coefficient = step * step;
  return FREEAIR_OK;
}

int32_t freeair_fitting_contraction(double wide_m, double narrow_m, double *loss_coefficient)
{
  freeair__set_nan(loss_coefficient);
  if (loss_coefficient == NULL) return FREEAIR_ERR_NULL;
  if (!diameters_valid(narrow_m, wide_m)) return FREEAIR_ERR_DOMAIN;
  *loss_coefficient = 0.5 * area_step(narrow_m, wide_m);
  return FREEAIR_OK;
}
