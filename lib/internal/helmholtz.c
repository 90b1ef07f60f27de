/* SPDX-License-Identifier: MIT */
#include "internal/helmholtz.h"

#include <math.h>

enum { DENSITY_MOST = 15, EXPONENT_MOST = 6 };

/* power[i] = delta^i; cutoff[l] = exp(-delta^l), cutoff[0] = 1 */
typedef struct powers {
  double power[DENSITY_MOST + 1];
  double cutoff[EXPONENT_MOST + 1];
} powers;

static void powers_of(const freeair__term *terms, size_t n, double delta, powers *p)
{
  int most = 1;
  unsigned used = 0;
  for (size_t i = 0; i < n; i++) {
    if (terms[i].d > most) most = terms[i].d;
    used |= 1u << terms[i].l;
  }
  if (most < EXPONENT_MOST) most = EXPONENT_MOST;
  p->power[0] = 1.0;
  for (int i = 1; i <= most; i++) p->power[i] = p->power[i - 1] * delta;
  p->cutoff[0] = 1.0;
  for (int l = 1; l <= EXPONENT_MOST; l++)
    if (used & 1u << l) p->cutoff[l] = exp(-p->power[l]);
}

void freeair__helmholtz_isotherm(const freeair__term *terms, size_t n, double tau, double *amplitude)
{
  const double log_tau = log(tau);
  for (size_t i = 0; i < n; i++) amplitude[i] = terms[i].n * exp(terms[i].t * log_tau);
}

void freeair__helmholtz_density(const freeair__term *terms, size_t n, const double *amplitude, double delta, double *d,
                                double *dd)
{
  powers p;
  powers_of(terms, n, delta, &p);
  double first = 0.0;
  double second = 0.0;
  for (size_t i = 0; i < n; i++) {
    const double a = amplitude[i] * p.power[terms[i].d] * p.cutoff[terms[i].l];
    const double fall = terms[i].l * (terms[i].l > 0 ? p.power[terms[i].l] : 0.0);
    const double slope = terms[i].d - fall;
    first += a * slope;
    second += a * (slope * (slope - 1.0) - terms[i].l * fall);
  }
  *d = first;
  *dd = second;
}

void freeair__helmholtz_add(const freeair__term *terms, size_t n, const double *amplitude, double delta,
                            freeair__helmholtz *sum)
{
  powers p;
  powers_of(terms, n, delta, &p);
  for (size_t i = 0; i < n; i++) {
    const double a = amplitude[i] * p.power[terms[i].d] * p.cutoff[terms[i].l];
    const double fall = terms[i].l * (terms[i].l > 0 ? p.power[terms[i].l] : 0.0);
    const double slope = terms[i].d - fall;
    const double t = terms[i].t;
    sum->a += a;
    sum->d += a * slope;
    sum->dd += a * (slope * (slope - 1.0) - terms[i].l * fall);
    sum->t += a * t;
    sum->tt += a * t * (t - 1.0);
    sum->dt += a * slope * t;
  }
}

void freeair__helmholtz_virials(const freeair__term *terms, size_t n, const double *amplitude, double *first,
                                double *second)
{
  double b = 0.0;
  double c = 0.0;
  for (size_t i = 0; i < n; i++) {
    if (terms[i].d == 1) b += amplitude[i];
    if (terms[i].d == 1 && terms[i].l == 1) c -= 2.0 * amplitude[i];
    if (terms[i].d == 2) c += 2.0 * amplitude[i];
  }
  *first = b;
  *second = c;
}

void freeair__helmholtz_vibration(double weight, double x, freeair__helmholtz *sum)
{
  const double e = exp(-x);
  const double one_less = -expm1(-x);
  const double ratio = e / one_less;
  sum->a += weight * log(one_less);
  sum->t += weight * x * ratio;
  sum->tt -= weight * x * x * ratio / one_less;
}
