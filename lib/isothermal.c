/* SPDX-License-Identifier: MIT */
#include <freeair/isothermal.h>
#include <freeair/status.h>

#include "internal/air.h"
#include "internal/check.h"
#include "internal/log_rest.h"
#include "internal/pipe.h"
#include "internal/structure.h"
#include "internal/viscosity.h"

/* Throughout, N is f L/d + K, and G the mass flux, so that
 * G^2 R T (N + ln(p1^2/p2^2)) = p1^2 - p2^2. */

static const freeair_isothermal_pipe initial = FREEAIR_ISOTHERMAL_PIPE_INIT;

static int32_t read_pipe(const freeair_isothermal_pipe *caller, int with_diameter, freeair_isothermal_pipe *p)
{
  *p = initial;
  const int32_t status = freeair__structure_read(p, sizeof *p, caller, FREEAIR_ISOTHERMAL_PIPE_BASELINE);
  if (status < 0) return status;
  if (p->flags != 0) return FREEAIR_ERR_VERSION;
  p->roughness_m = freeair__or(p->roughness_m, 45e-6);
  p->loss_coefficient = freeair__or(p->loss_coefficient, 0.0);
  p->t_k = freeair__or(p->t_k, 293.15);
  p->r_j_kg_k = freeair__or(p->r_j_kg_k, FREEAIR__AIR_R);
  if (!freeair__closed(p->length_m, 0.0, 1e6) || !freeair__closed(p->roughness_m, 0.0, 0.1) ||
      !freeair__closed(p->loss_coefficient, 0.0, 1e6) || !freeair__closed(p->t_k, 50.0, 2000.0) ||
      !freeair__closed(p->r_j_kg_k, 10.0, 10000.0))
    return FREEAIR_ERR_DOMAIN;
  if ((with_diameter || freeair__given(p->diameter_m)) && !freeair__closed(p->diameter_m, 1e-6, 10.0))
    return FREEAIR_ERR_DOMAIN;
  p->viscosity_pas = freeair__or(p->viscosity_pas, freeair__air_viscosity(p->t_k));
  if (!freeair__closed(p->viscosity_pas, 1e-8, 1.0)) return FREEAIR_ERR_DOMAIN;
  return FREEAIR_OK;
}

static double reynolds_of(const freeair_isothermal_pipe *p, double mass)
{
  return freeair__pipe_flux(mass, p->diameter_m) * p->diameter_m / p->viscosity_pas;
}

static double factor_of(const freeair_isothermal_pipe *p, double mass)
{
  return freeair__pipe_factor(reynolds_of(p, mass), p->roughness_m / p->diameter_m);
}

static double loss_number_of(const freeair_isothermal_pipe *p, double factor)
{
  return factor * p->length_m / p->diameter_m + p->loss_coefficient;
}

static int32_t regime(const freeair_isothermal_pipe *p, double mass)
{
  return freeair__pipe_in_transition(reynolds_of(p, mass)) ? FREEAIR_WARN_TRANSITION : FREEAIR_OK;
}

/* p1^2/p2^2 - 1 */
static double excess(double p1, double p2)
{
  return (p1 - p2) / p2 * ((p1 + p2) / p2);
}

/* Whether a pipe that ends at p2 would be beyond choking. */
static int choked(double p1, double p2, double loss_number)
{
  return freeair__log_rest(excess(p1, p2)) > loss_number;
}

static double mass_flow(double p1, double p2, double rt, double diameter, double loss_number)
{
  const double x = excess(p1, p2);
  if (!(x > 0.0)) return 0.0;
  return 0.78539816339744830962 * diameter * diameter * p2 * sqrt(x / (rt * (loss_number + log1p(x))));
}

int32_t freeair_isothermal_mass_flow(double p1_pa, double p2_pa, double t_k, double diameter_m, double loss_number,
                                     double r_j_kg_k, double *mass_kg_s)
{
  freeair__set_nan(mass_kg_s);
  if (mass_kg_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(p1_pa, 1.0, 1e8) || !freeair__closed(p2_pa, 1.0, 1e8) || !freeair__closed(t_k, 50.0, 2000.0) ||
      !freeair__closed(diameter_m, 1e-6, 10.0) || !freeair__closed(loss_number, 0.0, 1e9) ||
      !freeair__closed(r_j_kg_k, 10.0, 10000.0) || p2_pa > p1_pa)
    return FREEAIR_ERR_DOMAIN;
  if (choked(p1_pa, p2_pa, loss_number)) return FREEAIR_ERR_NO_SOLUTION;
  *mass_kg_s = mass_flow(p1_pa, p2_pa, r_j_kg_k * t_k, diameter_m, loss_number);
  return FREEAIR_OK;
}

int32_t freeair_isothermal_choking(double p1_pa, double t_k, double diameter_m, double loss_number, double r_j_kg_k,
                                   double *p2_pa, double *mass_kg_s)
{
  freeair__set_nan(p2_pa);
  freeair__set_nan(mass_kg_s);
  if (p2_pa == NULL || mass_kg_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(p1_pa, 1.0, 1e8) || !freeair__closed(t_k, 50.0, 2000.0) ||
      !freeair__closed(diameter_m, 1e-6, 10.0) || !freeair__closed(loss_number, 0.0, 1e9) ||
      !freeair__closed(r_j_kg_k, 10.0, 10000.0))
    return FREEAIR_ERR_DOMAIN;
  /* x - log(1 + x) = N: convex, so that Newton's method comes down from above */
  double x = loss_number + sqrt(2.0 * loss_number) + log1p(loss_number);
  for (int step = 0; step < 100 && x > 0.0; step++) {
    const double change = (freeair__log_rest(x) - loss_number) * (1.0 + x) / x;
    x -= change;
    if (fabs(change) <= 1e-15 * x) break;
  }
  *p2_pa = p1_pa / sqrt(1.0 + x);
  *mass_kg_s = 0.78539816339744830962 * diameter_m * diameter_m * *p2_pa / sqrt(r_j_kg_k * t_k);
  return FREEAIR_OK;
}

int32_t freeair_isothermal_flow_from_pressures(const freeair_isothermal_pipe *pipe, double p1_pa, double p2_pa,
                                               double *mass_kg_s, double *factor)
{
  freeair_isothermal_pipe p;
  freeair__set_nan(mass_kg_s);
  freeair__set_nan(factor);
  if (pipe == NULL || mass_kg_s == NULL || factor == NULL) return FREEAIR_ERR_NULL;
  const int32_t status = read_pipe(pipe, 1, &p);
  if (status < 0) return status;
  if (!freeair__closed(p1_pa, 1.0, 1e8) || !freeair__closed(p2_pa, 1.0, 1e8) || p2_pa > p1_pa)
    return FREEAIR_ERR_DOMAIN;
  if (!(p2_pa < p1_pa)) {
    *mass_kg_s = 0.0;
    *factor = INFINITY;
    return FREEAIR_OK;
  }
  /* the friction factor falls at most as the inverse of the flow: a step at least halves the error of the logarithm */
  double f = 0.02;
  double mass = 0.0;
  for (int step = 0; step < 200; step++) {
    const double next = mass_flow(p1_pa, p2_pa, p.r_j_kg_k * p.t_k, p.diameter_m, loss_number_of(&p, f));
    const double change = fabs(next - mass);
    mass = next;
    f = factor_of(&p, mass);
    if (change <= 1e-14 * mass) break;
  }
  if (choked(p1_pa, p2_pa, loss_number_of(&p, f))) return FREEAIR_ERR_NO_SOLUTION;
  *mass_kg_s = mass;
  *factor = f;
  return regime(&p, mass);
}

int32_t freeair_isothermal_outlet_pressure(const freeair_isothermal_pipe *pipe, double mass_kg_s, double p1_pa,
                                           double *p2_pa, double *velocity_m_s, double *factor)
{
  freeair_isothermal_pipe p;
  freeair__set_nan(p2_pa);
  freeair__set_nan(velocity_m_s);
  freeair__set_nan(factor);
  if (pipe == NULL || p2_pa == NULL || velocity_m_s == NULL || factor == NULL) return FREEAIR_ERR_NULL;
  const int32_t status = read_pipe(pipe, 1, &p);
  if (status < 0) return status;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(p1_pa, 1.0, 1e8)) return FREEAIR_ERR_DOMAIN;
  double f = INFINITY;
  double y = 0.0; /* 1 - p2^2/p1^2 */
  const double rt = p.r_j_kg_k * p.t_k;
  const double flux = freeair__pipe_flux(mass_kg_s, p.diameter_m);
  if (mass_kg_s > 0.0) {
    /* y + F log(1 - y) = F N: concave, so that Newton's method comes up from below to the nearer root */
    f = factor_of(&p, mass_kg_s);
    const double loss_number = loss_number_of(&p, f);
    const double force = flux / p1_pa * (flux / p1_pa) * rt;
    if (!(force < 1.0) || 1.0 - force + force * (log(force) - loss_number) < 0.0) return FREEAIR_ERR_NO_SOLUTION;
    y = fmin(force * loss_number, 1.0 - force);
    for (int step = 0; step < 100; step++) {
      const double slope = 1.0 - force / (1.0 - y);
      if (!(slope > 0.0)) break;
      const double change = (force * (loss_number - log1p(-y)) - y) / slope;
      y = fmin(y + change, 1.0 - force);
      if (fabs(change) <= 1e-15 * y) break;
    }
  }
  *p2_pa = p1_pa * sqrt(1.0 - y);
  *velocity_m_s = flux * rt / *p2_pa;
  *factor = f;
  return mass_kg_s > 0.0 ? regime(&p, mass_kg_s) : FREEAIR_OK;
}

int32_t freeair_isothermal_inlet_pressure(const freeair_isothermal_pipe *pipe, double mass_kg_s, double p2_pa,
                                          double *p1_pa, double *factor)
{
  freeair_isothermal_pipe p;
  freeair__set_nan(p1_pa);
  freeair__set_nan(factor);
  if (pipe == NULL || p1_pa == NULL || factor == NULL) return FREEAIR_ERR_NULL;
  const int32_t status = read_pipe(pipe, 1, &p);
  if (status < 0) return status;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || !freeair__closed(p2_pa, 1.0, 1e8)) return FREEAIR_ERR_DOMAIN;
  double f = INFINITY;
  double x = 0.0; /* p1^2/p2^2 - 1 */
  if (mass_kg_s > 0.0) {
    /* x - F log(1 + x) = F N: convex, so that Newton's method comes down from above */
    f = factor_of(&p, mass_kg_s);
    const double loss_number = loss_number_of(&p, f);
    const double flux = freeair__pipe_flux(mass_kg_s, p.diameter_m);
    const double force = flux / p2_pa * (flux / p2_pa) * p.r_j_kg_k * p.t_k;
    if (!(force < 1.0)) return FREEAIR_ERR_NO_SOLUTION;
    x = force * loss_number / (1.0 - force);
    for (int step = 0; step < 100; step++) {
      const double change = (x - force * (loss_number + log1p(x))) / (1.0 - force / (1.0 + x));
      x -= change;
      if (fabs(change) <= 1e-15 * x) break;
    }
  }
  *p1_pa = p2_pa * sqrt(1.0 + x);
  *factor = f;
  return mass_kg_s > 0.0 ? regime(&p, mass_kg_s) : FREEAIR_OK;
}

int32_t freeair_isothermal_diameter(const freeair_isothermal_pipe *pipe, double mass_kg_s, double p1_pa, double p2_pa,
                                    double *diameter_m, double *factor)
{
  freeair_isothermal_pipe p;
  freeair__set_nan(diameter_m);
  freeair__set_nan(factor);
  if (pipe == NULL || diameter_m == NULL || factor == NULL) return FREEAIR_ERR_NULL;
  const int32_t status = read_pipe(pipe, 0, &p);
  if (status < 0) return status;
  if (!freeair__closed(mass_kg_s, 1e-9, 1e6) || !freeair__closed(p1_pa, 1.0, 1e8) ||
      !freeair__closed(p2_pa, 1.0, 1e8) || p2_pa >= p1_pa)
    return FREEAIR_ERR_DOMAIN;
  double low = log(1e-6);
  double high = log(10.0);
  for (int side = 0; side < 2; side++) {
    p.diameter_m = side == 0 ? 1e-6 : 10.0;
    const double most = mass_flow(p1_pa, p2_pa, p.r_j_kg_k * p.t_k, p.diameter_m,
                                  loss_number_of(&p, factor_of(&p, mass_kg_s)));
    if (side == 0 ? most > mass_kg_s : most < mass_kg_s) return FREEAIR_ERR_NO_SOLUTION;
  }
  for (int step = 0; step < 70; step++) {
    const double middle = 0.5 * (low + high);
    p.diameter_m = exp(middle);
    const double passes = mass_flow(p1_pa, p2_pa, p.r_j_kg_k * p.t_k, p.diameter_m,
                                    loss_number_of(&p, factor_of(&p, mass_kg_s)));
    if (passes < mass_kg_s)
      low = middle;
    else
      high = middle;
  }
  const double f = factor_of(&p, mass_kg_s);
  if (choked(p1_pa, p2_pa, loss_number_of(&p, f))) return FREEAIR_ERR_NO_SOLUTION;
  *diameter_m = p.diameter_m;
  *factor = f;
  return regime(&p, mass_kg_s);
}
