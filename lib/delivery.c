/* SPDX-License-Identifier: MIT */
#include <freeair/cylinder.h>
#include <freeair/delivery.h>
#include <freeair/status.h>

#include "internal/circle.h"
#include "internal/gas.h"
#include "internal/structure.h"

static const freeair_delivery_stage initial_stage = FREEAIR_DELIVERY_STAGE_INIT;
static const freeair_delivery_result initial_result = FREEAIR_DELIVERY_RESULT_INIT;

static int is_swept(double swept_m3)
{
  return freeair__closed(swept_m3, 1e-12, 1000.0);
}

static int is_speed(double speed_rev_s)
{
  return freeair__closed(speed_rev_s, 0.0, 1000.0);
}

/* A speed that is divided by. */
static int is_running(double speed_rev_s)
{
  return freeair__closed(speed_rev_s, 0.001, 1000.0);
}

static int is_flow(double flow_m3_s)
{
  return freeair__closed(flow_m3_s, 0.0, 1e6);
}

static int is_strokes(int32_t strokes)
{
  return strokes >= 1 && strokes <= 64;
}

/* Fills in the defaults; false where a field is missing or out of range. */
static int complete(freeair_delivery_stage *s)
{
  s->n_compression = freeair__or(s->n_compression, s->n_expansion);
  s->t_cylinder_k = freeair__or(s->t_cylinder_k, s->t1_k);
  s->suction_drop_pa = freeair__or(s->suction_drop_pa, 0.0);
  s->discharge_drop_pa = freeair__or(s->discharge_drop_pa, 0.0);
  s->leakage = freeair__or(s->leakage, 0.0);
  return s->flags == 0u && is_swept(s->swept_m3) && is_speed(s->speed_rev_s) &&
         freeair__closed(s->clearance, 0.0, 2.0) && freeair__is_pressure(s->p1_pa) &&
         freeair__is_temperature(s->t1_k) && freeair__is_pressure(s->p2_pa) && freeair__is_pressure(s->p_free_pa) &&
         freeair__is_temperature(s->t_free_k) && freeair__is_gas_constant(s->r_j_kg_k) &&
         freeair__is_exponent(s->n_expansion) && freeair__is_exponent(s->n_compression) &&
         freeair__is_temperature(s->t_cylinder_k) && freeair__closed(s->suction_drop_pa, 0.0, 1e8) &&
         freeair__closed(s->discharge_drop_pa, 0.0, 1e8) && freeair__closed(s->leakage, 0.0, 1.0);
}

static int32_t compute(const freeair_delivery_stage *s, freeair_delivery_result *r)
{
  double suction = s->p1_pa - s->suction_drop_pa;
  double discharge = s->p2_pa + s->discharge_drop_pa;
  int32_t status = freeair_cylinder_volumetric_efficiency(suction, discharge, s->clearance, s->n_expansion,
                                                          &r->efficiency_cylinder);
  if (status < 0) return status;
  status = freeair_cylinder_mean_effective_pressure(suction, discharge, s->clearance, s->n_compression,
                                                    s->n_expansion, &r->mep_pa);
  if (status == FREEAIR_WARN_LIMIT) r->efficiency_cylinder = 0.0;
  double rate = s->swept_m3 * s->speed_rev_s;
  r->indicated_w = r->mep_pa * rate;
  r->efficiency_inlet =
      r->efficiency_cylinder * (suction / s->p1_pa) * (s->t1_k / s->t_cylinder_k) * (1.0 - s->leakage);
  r->efficiency_free = r->efficiency_inlet * (s->p1_pa / s->p_free_pa) * (s->t_free_k / s->t1_k);
  r->inlet_m3_s = r->efficiency_inlet * rate;
  r->fad_m3_s = r->efficiency_free * rate;
  r->m_kg_s = r->inlet_m3_s * s->p1_pa / (s->r_j_kg_k * s->t1_k);
  return status;
}

int32_t freeair_delivery_of_stage(const freeair_delivery_stage *stage, freeair_delivery_result *result)
{
  if (result == NULL) return FREEAIR_ERR_NULL;
  freeair_delivery_result r = initial_result;
  int32_t status = freeair__structure_write(result, &r, sizeof r, FREEAIR_DELIVERY_RESULT_BASELINE);
  if (status < 0) return status;
  if (stage == NULL) return FREEAIR_ERR_NULL;
  freeair_delivery_stage s = initial_stage;
  status = freeair__structure_read(&s, sizeof s, stage, FREEAIR_DELIVERY_STAGE_BASELINE);
  if (status < 0) return status;
  if (!complete(&s)) return FREEAIR_ERR_DOMAIN;
  status = compute(&s, &r);
  if (status < 0) return status;
  freeair__structure_write(result, &r, sizeof r, FREEAIR_DELIVERY_RESULT_BASELINE);
  return status;
}

int32_t freeair_delivery_free_air(double swept_m3, double speed_rev_s, double efficiency, double p1_pa, double t1_k,
                                  double p_free_pa, double t_free_k, double *fad_m3_s)
{
  if (fad_m3_s == NULL) return FREEAIR_ERR_NULL;
  *fad_m3_s = NAN;
  if (!is_swept(swept_m3) || !is_speed(speed_rev_s) || !freeair__closed(efficiency, 0.0, 1.0) ||
      !freeair__is_pressure(p1_pa) || !freeair__is_temperature(t1_k) || !freeair__is_pressure(p_free_pa) ||
      !freeair__is_temperature(t_free_k))
    return FREEAIR_ERR_DOMAIN;
  *fad_m3_s = efficiency * swept_m3 * speed_rev_s * (p1_pa / p_free_pa) * (t_free_k / t1_k);
  return FREEAIR_OK;
}

int32_t freeair_delivery_volumetric_efficiency(double flow_m3_s, double swept_m3, double speed_rev_s,
                                               double *efficiency)
{
  if (efficiency == NULL) return FREEAIR_ERR_NULL;
  *efficiency = NAN;
  if (!is_flow(flow_m3_s) || !is_swept(swept_m3) || !is_running(speed_rev_s)) return FREEAIR_ERR_DOMAIN;
  *efficiency = flow_m3_s / (swept_m3 * speed_rev_s);
  return *efficiency > 1.0 ? FREEAIR_WARN_INCONSISTENT : FREEAIR_OK;
}

int32_t freeair_delivery_bore_from_stroke(double flow_m3_s, double efficiency, double stroke_m, double speed_rev_s,
                                          int32_t strokes, double *bore_m)
{
  if (bore_m == NULL) return FREEAIR_ERR_NULL;
  *bore_m = NAN;
  if (!is_flow(flow_m3_s) || !freeair__is_efficiency(efficiency) || !freeair__closed(stroke_m, 0.0001, 10.0) ||
      !is_running(speed_rev_s) || !is_strokes(strokes))
    return FREEAIR_ERR_DOMAIN;
  *bore_m = sqrt(4.0 * flow_m3_s / (FREEAIR__PI * stroke_m * speed_rev_s * strokes * efficiency));
  return FREEAIR_OK;
}

int32_t freeair_delivery_bore_from_stroke_ratio(double flow_m3_s, double efficiency, double stroke_ratio,
                                                double speed_rev_s, int32_t strokes, double *bore_m)
{
  if (bore_m == NULL) return FREEAIR_ERR_NULL;
  *bore_m = NAN;
  if (!is_flow(flow_m3_s) || !freeair__is_efficiency(efficiency) || !freeair__closed(stroke_ratio, 0.01, 100.0) ||
      !is_running(speed_rev_s) || !is_strokes(strokes))
    return FREEAIR_ERR_DOMAIN;
  *bore_m = cbrt(4.0 * flow_m3_s / (FREEAIR__PI * stroke_ratio * speed_rev_s * strokes * efficiency));
  return FREEAIR_OK;
}
