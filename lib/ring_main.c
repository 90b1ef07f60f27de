/* SPDX-License-Identifier: MIT */
#include <freeair/ring_main.h>
#include <freeair/status.h>

#include "internal/air.h"
#include "internal/check.h"
#include "internal/pipe.h"
#include "internal/viscosity.h"

typedef struct network {
  const double *length;
  const double *diameter;
  const double *offtake;
  size_t n;
  double roughness;
  double supply;
  double rt;
  double viscosity;
} network;

static void fill(double *x, size_t n, double value)
{
  for (size_t i = 0; x != NULL && i < n; i++) x[i] = value;
}

static int within(const double *x, size_t n, double low, double high)
{
  for (size_t i = 0; i < n; i++)
    if (!freeair__closed(x[i], low, high)) return 0;
  return 1;
}

/* p1^2 - p2^2 of a piece that carries mass, with its sign */
static double fall(const network *w, size_t i, double mass)
{
  const double d = w->diameter[i];
  const double flux = freeair__pipe_flux(fabs(mass), d);
  const double reynolds = flux * d / w->viscosity;
  if (!(reynolds > 1e-100)) return 0.0;
  const double squares = freeair__pipe_factor(reynolds, w->roughness / d) * w->length[i] / d * flux * flux * w->rt;
  return mass < 0.0 ? -squares : squares;
}

/* Sum around the ring when mass enters the first piece. */
static double closure(const network *w, double mass)
{
  double sum = 0.0;
  for (size_t i = 0; i < w->n; i++) {
    sum += fall(w, i, mass);
    mass -= w->offtake[i];
  }
  return sum;
}

/* What a call has to fill in. */
typedef struct answer {
  double *flow;
  double *p;
  double *lowest;
} answer;

static void no_answer(const network *w, const answer *a)
{
  fill(a->flow, w->n, NAN);
  fill(a->p, w->n, NAN);
  freeair__set_nan(a->lowest);
}

/* Tests the arguments of a network of at least so many pieces and sets its answer to not a number. */
static int32_t start(network *w, size_t least, double t_k, double r_j_kg_k, const answer *a)
{
  const int sized = w->n >= least && w->n <= 10000;
  freeair__set_nan(a->lowest);
  if (sized) no_answer(w, a);
  if (w->length == NULL || w->diameter == NULL || w->offtake == NULL || a->flow == NULL || a->p == NULL ||
      a->lowest == NULL)
    return FREEAIR_ERR_NULL;
  if (!sized) return FREEAIR_ERR_DATA;
  r_j_kg_k = freeair__or(r_j_kg_k, FREEAIR__AIR_R);
  if (!freeair__closed(t_k, 50.0, 2000.0) || !freeair__closed(r_j_kg_k, 10.0, 10000.0)) return FREEAIR_ERR_DOMAIN;
  w->viscosity = freeair__or(w->viscosity, freeair__air_viscosity(t_k));
  w->rt = r_j_kg_k * t_k;
  if (!freeair__closed(w->roughness, 0.0, 0.0001) || !freeair__closed(w->supply, 1000.0, 1e8) ||
      !freeair__closed(w->viscosity, 1e-8, 1.0) || !within(w->length, w->n, 0.0, 1e6) ||
      !within(w->diameter, w->n, 0.001, 10.0) || !within(w->offtake, w->n, 0.0, 1e4))
    return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

/* Pressures along the pieces from the flows. */
static int32_t finish(const network *w, const answer *a)
{
  double square = w->supply * w->supply;
  double least = square;
  for (size_t i = 0; i < w->n; i++) {
    square -= fall(w, i, a->flow[i]);
    if (!(square > 0.0)) {
      no_answer(w, a);
      return FREEAIR_ERR_NO_SOLUTION;
    }
    least = fmin(least, square);
    a->p[i] = sqrt(square);
  }
  *a->lowest = sqrt(least);
  return *a->lowest < 0.9 * w->supply ? FREEAIR_WARN_LIMIT : FREEAIR_OK;
}

int32_t freeair_ring_main_share(double length1_m, double diameter1_m, double length2_m, double diameter2_m,
                                double *share)
{
  freeair__set_nan(share);
  if (share == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(length1_m, 0.001, 1e6) || !freeair__closed(diameter1_m, 0.001, 10.0) ||
      !freeair__closed(length2_m, 0.001, 1e6) || !freeair__closed(diameter2_m, 0.001, 10.0))
    return FREEAIR_ERR_DOMAIN;
  const double wider = diameter2_m / diameter1_m;
  *share = 1.0 / (1.0 + wider * wider * sqrt(wider * length1_m / length2_m));
  return FREEAIR_OK;
}

int32_t freeair_ring_main_flows(const double *length_m, const double *diameter_m, const double *offtake_kg_s,
                                size_t n, double roughness_m, double p_supply_pa, double t_k, double viscosity_pas,
                                double r_j_kg_k, double *flow_kg_s, double *p_pa, double *lowest_pa)
{
  network w = {length_m, diameter_m, offtake_kg_s, n, roughness_m, p_supply_pa, 0.0, viscosity_pas};
  const answer a = {flow_kg_s, p_pa, lowest_pa};
  int32_t status = start(&w, 2, t_k, r_j_kg_k, &a);
  if (status < 0) return status;
  double all = 0.0;
  double whole = 0.0;
  for (size_t i = 0; i < n; i++) whole += length_m[i];
  if (!(whole > 0.0)) return FREEAIR_ERR_DOMAIN;
  for (size_t i = 0; i + 1 < n; i++) all += offtake_kg_s[i];

  double low = 0.0; /* all comes the other way */
  double high = all;
  double at_low = closure(&w, low);
  double at_high = closure(&w, high);
  double mass = at_low < 0.0 ? high : low;
  for (int step = 0; step < 200 && at_low < 0.0 && at_high > 0.0; step++) {
    mass = (low * at_high - high * at_low) / (at_high - at_low);
    if (step % 3 == 2 || !(mass > low && mass < high)) mass = 0.5 * (low + high);
    const double at = closure(&w, mass);
    if (at > 0.0) {
      high = mass;
      at_high = at;
      at_low *= 0.5;
    } else if (at < 0.0) {
      low = mass;
      at_low = at;
      at_high *= 0.5;
    } else {
      break;
    }
    if (high - low <= 2e-16 * all) break;
  }
  for (size_t i = 0; i < n; i++) {
    flow_kg_s[i] = mass;
    mass -= offtake_kg_s[i];
  }
  status = finish(&w, &a);
  if (status >= 0) p_pa[n - 1] = p_supply_pa;
  return status;
}

int32_t freeair_ring_main_dead_end(const double *length_m, const double *diameter_m, const double *offtake_kg_s,
                                   size_t n, double roughness_m, double p_supply_pa, double t_k, double viscosity_pas,
                                   double r_j_kg_k, double *flow_kg_s, double *p_pa, double *lowest_pa)
{
  network w = {length_m, diameter_m, offtake_kg_s, n, roughness_m, p_supply_pa, 0.0, viscosity_pas};
  const answer a = {flow_kg_s, p_pa, lowest_pa};
  const int32_t status = start(&w, 1, t_k, r_j_kg_k, &a);
  if (status < 0) return status;
  double mass = 0.0;
  for (size_t i = n; i-- > 0;) flow_kg_s[i] = mass += offtake_kg_s[i];
  return finish(&w, &a);
}
