/* SPDX-License-Identifier: MIT */
#include <freeair/condensate.h>
#include <freeair/enhancement.h>
#include <freeair/saturation.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/humid_air.h"
#include "internal/structure.h"

static const freeair_condensate_flow initial = FREEAIR_CONDENSATE_FLOW_INIT;

static int is_state(double p_pa, double t_k)
{
  return freeair__closed(p_pa, 1000.0, 1e7) && freeair__closed(t_k, 213.15, 573.15);
}

static int is_model(int32_t model)
{
  return model == FREEAIR_ENHANCEMENT_NONE || model == FREEAIR_ENHANCEMENT_VIRIAL;
}

static int is_over(int32_t over)
{
  return over == FREEAIR_SATURATION_OVER_WATER || over == FREEAIR_SATURATION_OVER_ICE;
}

/* Most vapour that dry air can hold. */
static double saturated_ratio(double p, double t, int ice, int real)
{
  const double x = freeair__humid_saturation(t, p, ice, real);
  return x < 1.0 ? freeair__humid_ratio_of_fraction(x) : INFINITY;
}

/* What follows from pressure, temperature, dry air, vapour and liquid. */
static void complete(freeair_condensate_flow *f)
{
  const int ice = f->over == FREEAIR_SATURATION_OVER_ICE;
  const int real = f->model == FREEAIR_ENHANCEMENT_VIRIAL;
  const double w = f->vapour_kg_s / f->dry_kg_s;
  const double x = freeair__humid_fraction_of_ratio(w);
  freeair__humid_isotherm isotherm;
  freeair__humid_point point;
  freeair__humid_isotherm_at(f->t_k, w, &isotherm);
  freeair__humid_point_at(&isotherm, freeair__humid_density(&isotherm, f->p_pa), &point);
  const double gas = f->dry_kg_s + f->vapour_kg_s;
  f->q_m3_s = gas / point.rho_kg_m3;
  f->enthalpy_w = gas * point.h_j_kg;
  if (f->liquid_kg_s > 0.0) f->enthalpy_w += f->liquid_kg_s * freeair__humid_condensed_enthalpy(f->p_pa, f->t_k, ice);
  f->relative_humidity = freeair__humid_relative(f->p_pa, f->t_k, x, real);
  f->dew_point_k = freeair__humid_dew_k(f->p_pa, x, ice, real);
}

static int32_t inlet(double q, double p, double t, double rh, int32_t model, int32_t over, freeair_condensate_flow *f)
{
  if (!freeair__upto(q, 0.0, 1e5) || !is_state(p, t) || !freeair__closed(rh, 0.0, 1.0) || !is_model(model) ||
      !is_over(over))
    return FREEAIR_ERR_DOMAIN;
  const double x = rh * freeair__humid_saturation(t, p, 0, model == FREEAIR_ENHANCEMENT_VIRIAL);
  if (!(x <= freeair__humid_fraction_of_ratio(10.0))) return FREEAIR_ERR_NO_SOLUTION;
  const double w = freeair__humid_ratio_of_fraction(x);
  freeair__humid_isotherm isotherm;
  freeair__humid_isotherm_at(t, w, &isotherm);
  f->p_pa = p;
  f->t_k = t;
  f->model = model;
  f->over = over;
  f->dry_kg_s = q * freeair__humid_density(&isotherm, p) / (1.0 + w);
  f->vapour_kg_s = w * f->dry_kg_s;
  f->liquid_kg_s = 0.0;
  f->condensed_kg_s = 0.0;
  f->removed_kg_s = 0.0;
  f->released_w = 0.0;
  complete(f);
  return freeair__humid_status(p, t);
}

static int32_t step(const freeair_condensate_flow *before, double p, double t, double separation,
                    freeair_condensate_flow *f)
{
  const int ice = before->over == FREEAIR_SATURATION_OVER_ICE;
  const double water = before->vapour_kg_s + before->liquid_kg_s;
  const double most =
      before->dry_kg_s * saturated_ratio(p, t, ice, before->model == FREEAIR_ENHANCEMENT_VIRIAL);
  f->p_pa = p;
  f->t_k = t;
  f->model = before->model;
  f->over = before->over;
  f->dry_kg_s = before->dry_kg_s;
  f->vapour_kg_s = water < most ? water : most;
  if (!(f->vapour_kg_s <= 10.0 * f->dry_kg_s)) return FREEAIR_ERR_NO_SOLUTION;
  f->liquid_kg_s = water - f->vapour_kg_s;
  f->condensed_kg_s = before->vapour_kg_s - f->vapour_kg_s;
  complete(f);
  f->released_w = before->enthalpy_w - f->enthalpy_w;
  f->removed_kg_s = separation * f->liquid_kg_s;
  if (f->removed_kg_s > 0.0) {
    f->enthalpy_w -= f->removed_kg_s * freeair__humid_condensed_enthalpy(p, t, ice);
    f->liquid_kg_s -= f->removed_kg_s;
  }
  return freeair__humid_status(p, t);
}

int32_t freeair_condensate_inlet(double q_m3_s, double p_pa, double t_k, double relative_humidity, int32_t model,
                                 int32_t over, freeair_condensate_flow *flow)
{
  if (flow == NULL) return FREEAIR_ERR_NULL;
  freeair_condensate_flow q = initial;
  int32_t status = freeair__structure_write(flow, &q, sizeof q, FREEAIR_CONDENSATE_FLOW_BASELINE);
  if (status < 0) return status;
  status = inlet(q_m3_s, p_pa, t_k, relative_humidity, model, over, &q);
  if (status >= 0) freeair__structure_write(flow, &q, sizeof q, FREEAIR_CONDENSATE_FLOW_BASELINE);
  return status;
}

int32_t freeair_condensate_step(const freeair_condensate_flow *before, double p_pa, double t_k, double separation,
                                freeair_condensate_flow *after)
{
  freeair_condensate_flow b = initial;
  freeair_condensate_flow q = initial;
  /* before and after may be the same flow */
  int32_t status = before == NULL ? FREEAIR_ERR_NULL
                                  : freeair__structure_read(&b, sizeof b, before, FREEAIR_CONDENSATE_FLOW_BASELINE);
  if (after == NULL) return FREEAIR_ERR_NULL;
  const int32_t written = freeair__structure_write(after, &q, sizeof q, FREEAIR_CONDENSATE_FLOW_BASELINE);
  if (status < 0) return status;
  if (written < 0) return written;
  if (b.flags != 0u || !freeair__upto(b.dry_kg_s, 0.0, 1e6) || !freeair__closed(b.vapour_kg_s, 0.0, 1e6) ||
      !freeair__closed(b.liquid_kg_s, 0.0, 1e6) ||
      (freeair__given(b.enthalpy_w) && !freeair__closed(b.enthalpy_w, -1e12, 1e12)) || !is_model(b.model) ||
      !is_over(b.over) || !is_state(p_pa, t_k) || !freeair__closed(separation, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  freeair_condensate_flow result = initial;
  status = step(&b, p_pa, t_k, separation, &result);
  if (status >= 0) freeair__structure_write(after, &result, sizeof result, FREEAIR_CONDENSATE_FLOW_BASELINE);
  return status;
}

int32_t freeair_condensate_rate(double q1_m3_s, double p1_pa, double t1_k, double relative_humidity1, double p2_pa,
                                double t2_k, int32_t model, double *condensate_kg_s)
{
  if (condensate_kg_s == NULL) return FREEAIR_ERR_NULL;
  *condensate_kg_s = NAN;
  if (!is_state(p2_pa, t2_k)) return FREEAIR_ERR_DOMAIN;
  freeair_condensate_flow before = initial;
  freeair_condensate_flow after = initial;
  const int32_t first =
      inlet(q1_m3_s, p1_pa, t1_k, relative_humidity1, model, FREEAIR_SATURATION_OVER_WATER, &before);
  if (first < 0) return first;
  const int32_t second = step(&before, p2_pa, t2_k, 0.0, &after);
  if (second < 0) return second;
  *condensate_kg_s = after.liquid_kg_s;
  return second != FREEAIR_OK ? second : first;
}
