/* SPDX-License-Identifier: MIT */
#include "internal/receiver_run.h"

#include "internal/check.h"
#include <freeair/status.h>

#include <string.h>

/* Slopes of a monotone cubic on evenly spaced nodes (Fritsch and Carlson). */
static void monotone_slopes(int n, double step, const double *y, double *slope)
{
  for (int i = 0; i < n; i++) {
    if (i == 0 || i == n - 1) {
      int a = i == 0 ? 0 : n - 2;
      int other = i == 0 ? 1 : n - 3;
      double d = (y[a + 1] - y[a]) / step;
      double next = (y[other + 1] - y[other]) / step;
      double end = 1.5 * d - 0.5 * next;
      if (end * d <= 0.0) end = 0.0;
      else if (fabs(end) > 3.0 * fabs(d)) end = 3.0 * d;
      slope[i] = end;
      continue;
    }
    double left = (y[i] - y[i - 1]) / step;
    double right = (y[i + 1] - y[i]) / step;
    slope[i] = left * right > 0.0 ? 2.0 * left * right / (left + right) : 0.0;
  }
}

/* What the search for operating points carries from one to the next. */
typedef struct searcher {
  freeair__cycle *c;
  double accuracy;
  freeair__cycle_start at;
  freeair__cycle_sums sums;
  freeair__cycle_effort effort;
  int32_t *evaluations;
} searcher;

/* One operating point; begins anew where the neighbour's state does not serve. */
static int32_t search(searcher *q, double root_p)
{
  freeair__cycle_receiver(q->c, root_p * root_p, q->c->site.ambient_k);
  int known = q->at.state.known;
  int32_t status = freeair__cycle_solve(q->c, q->accuracy, &q->at.state, &q->at.work, &q->sums, &q->effort);
  *q->evaluations += q->effort.evaluations;
  if (status < 0 && known) {
    q->at.state.known = 0;
    status = freeair__cycle_solve(q->c, q->accuracy, &q->at.state, &q->at.work, &q->sums, &q->effort);
    *q->evaluations += q->effort.evaluations;
  }
  return status;
}

/* The pressure at which it stalls, between a node that delivers and one that does not. */
static int32_t find_stall(searcher *q, double lo, double hi, double least, double *stall)
{
  for (int i = 0; i < 9; i++) {
    double middle = 0.5 * (lo + hi);
    int32_t status = search(q, middle);
    if (status < 0) return status;
    if (q->sums.mass[q->c->link_check] > least) lo = middle;
    else hi = middle;
  }
  *stall = hi;
  return FREEAIR_OK;
}

static void note_node(const searcher *q, freeair__delivery_map *map, int i, double root, freeair__cycle_start *starts,
                      freeair_cycle_result *points)
{
  double per_s = q->at.state.omega / 6.28318530717958647693;
  map->root_p[i] = root;
  int check = q->c->link_check;
  map->value[FREEAIR__DELIVERY_MASS][i] = q->sums.mass[check] * per_s;
  map->value[FREEAIR__DELIVERY_BACK][i] = (q->sums.forward_mass[check] - q->sums.mass[check]) * per_s;
  map->value[FREEAIR__DELIVERY_ENTHALPY][i] = freeair__cycle_delivered(q->c, &q->sums) * per_s;
  map->value[FREEAIR__DELIVERY_POWER][i] = freeair__cycle_shaft(q->c, &q->sums, q->at.state.omega);
  if (starts != NULL) starts[i] = q->at;
  if (points != NULL) freeair__cycle_report(q->c, &q->at.state, &q->sums, &q->effort, &points[i]);
}

int32_t freeair__delivery_map_build(freeair__cycle *c, double low_p, double high_p, int n, double accuracy,
                                    freeair__delivery_map *map, freeair__cycle_start *starts,
                                    freeair_cycle_result *points, int32_t *evaluations)
{
  searcher q = {.c = c, .accuracy = accuracy, .evaluations = evaluations};
  double low = sqrt(low_p);
  double high = sqrt(high_p);
  double least = 2e-4 * c->mass_scale; /* less than this a revolution is no delivery */
  map->n = n;
  for (int pass = 0; pass < 2; pass++) {
    int last = -1; /* last node with delivery */
    for (int i = 0; i < n; i++) {
      double root = low + (high - low) * i / (n - 1);
      if (starts != NULL && starts[i].state.known) q.at = starts[i];
      int32_t status = search(&q, root);
      if (status < 0) return status;
      note_node(&q, map, i, root, starts, points);
      if (q.sums.mass[c->link_check] > least) last = i;
      else if (pass == 0 && last >= 0) break;
    }
    if (last < 0 || last == n - 1 || pass == 1) break;
    /* put the nodes below the pressure at which it stalls, the last one on it */
    int32_t status = find_stall(&q, map->root_p[last], map->root_p[last + 1], least, &high);
    if (status < 0) return status;
  }
  double step = (high - low) / (n - 1);
  for (int k = 0; k < FREEAIR__DELIVERY_QUANTITIES; k++) monotone_slopes(n, step, map->value[k], map->slope[k]);
  return FREEAIR_OK;
}

void freeair__delivery_map_at(const freeair__delivery_map *map, double p,
                              double quantity[FREEAIR__DELIVERY_QUANTITIES])
{
  int n = map->n;
  double root = sqrt(p);
  root = fmin(fmax(root, map->root_p[0]), map->root_p[n - 1]);
  double step = (map->root_p[n - 1] - map->root_p[0]) / (n - 1);
  int i = (int)((root - map->root_p[0]) / step);
  if (i > n - 2) i = n - 2;
  if (i < 0) i = 0;
  double x = (root - map->root_p[i]) / step;
  double h01 = x * x * (3.0 - 2.0 * x);
  double h10 = x * (1.0 - x) * (1.0 - x) * step;
  double h11 = x * x * (x - 1.0) * step;
  for (int k = 0; k < FREEAIR__DELIVERY_QUANTITIES; k++) {
    const double *v = map->value[k];
    const double *d = map->slope[k];
    quantity[k] = v[i] + h01 * (v[i + 1] - v[i]) + h10 * d[i] + h11 * d[i + 1];
  }
  /* below all nodes a pump that draws from its receiver fades with the pressure */
  double lowest = map->root_p[0] * map->root_p[0];
  if (p < lowest && quantity[FREEAIR__DELIVERY_MASS] < 0.0)
    for (int k = 0; k < FREEAIR__DELIVERY_POWER; k++) quantity[k] *= p / lowest;
}

double freeair__receiver_pressure(const freeair__receiver *r, const freeair__receiver_state *s)
{
  return (r->c->k - 1.0) * s->energy / r->volume;
}

void freeair__receiver_set(const freeair__receiver *r, double p, double gas_t, double wall_t,
                           freeair__receiver_state *s)
{
  memset(s, 0, sizeof *s);
  s->mass = p * r->volume / (r->c->gas_r * gas_t);
  s->energy = p * r->volume / (r->c->k - 1.0);
  s->wall = wall_t;
}

double freeair__receiver_orifice(const freeair__cycle *c, double area, double p, double t)
{
  double pa = c->site.barometric_pa;
  if (!(area > 0.0)) return 0.0;
  double up = fmax(p, pa);
  double r = fmin(p, pa) / up;
  if (r > 1.0 - 1e-12) return 0.0; /* rounding must not make the gas turn */
  double critical = pow(2.0 / (c->k + 1.0), c->k / (c->k - 1.0));
  r = fmax(r, critical);
  double psi;
  if (r > 1.0 - 1e-3) {
    /* quadratic below 1e-3, as in the crank-angle model */
    double x = 1.0 - r;
    psi = x * (c->nozzle_linear + c->nozzle_quadratic * x);
  } else {
    double y = pow(r, (c->k - 1.0) / c->k);
    psi = sqrt(2.0 * c->k / (c->k - 1.0) * (1.0 - y)) * r / y;
  }
  double flow = area * up * psi / sqrt(c->gas_r * (p >= pa ? t : c->site.ambient_k));
  return p >= pa ? flow : -flow;
}
