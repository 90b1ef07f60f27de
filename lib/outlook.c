/* SPDX-License-Identifier: MIT */
#include <freeair/outlook.h>
#include <freeair/status.h>

#include "internal/check.h"
#include "internal/prediction.h"
#include "internal/structure.h"

static const freeair_cycle_result blank = FREEAIR_CYCLE_RESULT_INIT;
static const freeair_prediction_result blank_result = FREEAIR_PREDICTION_RESULT_INIT;

static double quantity(const freeair_cycle_result *r, size_t at)
{
  double x;
  memcpy(&x, (const unsigned char *)r + at, sizeof x);
  return x;
}

/* Operating point at a true pressure: a cubic with central slopes through the
 * nodes about it, straight at the ends; the nearest node beyond them. */
static void interpolate(const freeair__delivery_map *map, const freeair_cycle_result *node, double p,
                        freeair_cycle_result *point)
{
  int n = map->n;
  double step = (map->root_p[n - 1] - map->root_p[0]) / (n - 1);
  double at = fmin(fmax((sqrt(fmax(p, 0.0)) - map->root_p[0]) / step, 0.0), (double)(n - 1));
  int i = (int)at;
  if (i > n - 2) i = n - 2;
  double x = at - i;
  *point = node[x < 0.5 ? i : i + 1];
  for (size_t f = offsetof(freeair_cycle_result, delivery_m3_s); f < offsetof(freeair_cycle_result, revolutions);
       f += sizeof(double)) {
    double y0 = quantity(&node[i], f);
    double y1 = quantity(&node[i + 1], f);
    double rise = y1 - y0;
    double left = i > 0 ? 0.5 * (y1 - quantity(&node[i - 1], f)) : rise;
    double right = i < n - 2 ? 0.5 * (quantity(&node[i + 2], f) - y0) : rise;
    double value = y0 + x * rise + x * (1.0 - x) * ((1.0 - x) * (left - rise) - x * (right - rise));
    memcpy((unsigned char *)point + f, &value, sizeof value);
  }
}

static int32_t write_point(freeair_cycle_result *points, size_t stride, size_t i, const freeair_cycle_result *point)
{
  return freeair__structure_write((unsigned char *)points + i * stride, point, sizeof *point,
                                  FREEAIR_CYCLE_RESULT_BASELINE);
}

int32_t freeair_outlook_readings(const freeair_machine *machine, const freeair_machine_site *site,
                                 const freeair_prediction_run *run, freeair_prediction_result *result,
                                 const double *p_pa, double *t_s, freeair_cycle_result *points,
                                 size_t points_stride, size_t n)
{
  freeair__pump_run q;
  freeair_cycle_result node[FREEAIR__NODES_MOST];
  freeair_prediction_result r = blank_result;
  int32_t status = points_stride < FREEAIR_CYCLE_RESULT_BASELINE ? FREEAIR_ERR_VERSION : FREEAIR_OK;
  for (size_t i = 0; t_s != NULL && i < n; i++) t_s[i] = NAN;
  for (size_t i = 0; points != NULL && i < n && status == FREEAIR_OK; i++)
    status = write_point(points, points_stride, i, &blank);
  if (result != NULL) {
    int32_t written = freeair__structure_write(result, &r, sizeof r, FREEAIR_PREDICTION_RESULT_BASELINE);
    if (status == FREEAIR_OK) status = written;
  }
  if (result == NULL || p_pa == NULL || t_s == NULL || points == NULL) return FREEAIR_ERR_NULL;
  if (status < 0) return status;
  status = freeair__pump_run_times(machine, site, run, p_pa, t_s, n, &q, node, &r);
  if (status < 0) return status;
  for (size_t i = 0; i < n; i++) {
    freeair_cycle_result point;
    interpolate(&q.map, node, p_pa[i] - q.c.m.gauge_error_pa, &point);
    write_point(points, points_stride, i, &point);
  }
  freeair__structure_write(result, &r, sizeof r, FREEAIR_PREDICTION_RESULT_BASELINE);
  return status;
}
