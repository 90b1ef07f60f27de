/* SPDX-License-Identifier: MIT */
#include "internal/student.h"

#include <math.h>

static const double root_half = 0.70710678118654752440;
static const double root_pi = 1.7724538509055160273;

/* Beyond this many degrees of freedom an expansion about the normal
 * distribution is exact to rounding, and the continued fraction loses digits. */
static const double nearly_normal = 1000.0;

/* Gamma(a + 1/2) / (Gamma(a) sqrt(a)): moved up to a >= 16 by the recurrence of the gamma function, and there
 * by the asymptotic series of its logarithm (NIST Digital Library of Mathematical Functions, 5.11.8). */
static double gamma_ratio(double a)
{
  double factor = 1.0;
  const double first = a;
  while (a < 16.0) {
    factor *= a / (a + 0.5);
    a += 1.0;
  }
  const double b = 1.0 / a;
  const double b2 = b * b;
  const double series = b * (-1.0 / 8.0 + b2 * (1.0 / 192.0 + b2 * (-1.0 / 640.0 + b2 * (17.0 / 14336.0 +
                        b2 * (-31.0 / 18432.0 + b2 * (691.0 / 180224.0 - b2 * (5461.0 / 425984.0)))))));
  return factor * sqrt(a / first) * exp(series);
}

/* Continued fraction of the incomplete beta function (the same handbook, 8.17.22), by the modified method of Lentz. */
static double beta_fraction(double a, double b, double x)
{
  const double tiny = 1e-300;
  double c = 1.0;
  double d = 1.0 - (a + b) * x / (a + 1.0);
  if (fabs(d) < tiny) d = tiny;
  d = 1.0 / d;
  double h = d;
  for (int m = 1; m <= 20000; m++) {
    const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1.0 + even * d;
    c = 1.0 + even / c;
    d = 1.0 / (fabs(d) < tiny ? tiny : d);
    h *= d * c;
    const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1.0 + odd * d;
    c = 1.0 + odd / c;
    d = 1.0 / (fabs(d) < tiny ? tiny : d);
    const double step = d * c;
    h *= step;
    if (fabs(step - 1.0) < 1e-16) break;
  }
  return h;
}

/* log(1 + t^2/nu) without loss or overflow */
static double spread(double t, double nu)
{
  const double s = t / sqrt(nu);
  return s < 1e100 ? log1p(s * s) : 2.0 * log(s);
}

static double density(double t, double nu)
{
  if (isinf(nu)) return 0.39894228040143267794 * exp(-0.5 * t * t);
  return root_half / root_pi * gamma_ratio(0.5 * nu) * exp(-0.5 * (nu + 1.0) * spread(t, nu));
}

void freeair__student(double factor, double nu, double *within, double *beyond)
{
  if (nu > nearly_normal) {
    double z = factor;
    if (!isinf(nu)) {
      /* Hill, Algorithm 396, Communications of the ACM 13 (1970) 619: the normal deviate of the same probability */
      const double b = 48.0 * (nu - 0.5) * (nu - 0.5);
      const double w = sqrt((nu - 0.5) * spread(factor, nu));
      if (w < 100.0) {
        const double w2 = w * w;
        const double third = ((((64.0 * w2 + 788.0) * w2 + 9801.0) * w2 + 89775.0) * w2 + 543375.0) * w2 + 1788885.0;
        z = w + w / b * (w2 + 3.0 - ((((4.0 * w2 + 33.0) * w2 + 240.0) * w2 + 855.0) / 10.0 - third / (210.0 * b)) / b);
      } else {
        z = w;
      }
    }
    *within = erf(z * root_half);
    *beyond = erfc(z * root_half);
    return;
  }
  const double a = 0.5 * nu;
  const double s = factor / sqrt(nu);
  const double x = 1.0 / (1.0 + s * s); /* nu / (nu + t^2) */
  const double y = s < 1.0 ? s * s * x : 1.0 / (1.0 + 1.0 / (s * s));
  const double front = gamma_ratio(a) * sqrt(a) / root_pi * exp(-a * spread(factor, nu)) * sqrt(y);
  if (x < (a + 1.0) / (a + 2.5)) {
    *beyond = fmin(front / a * beta_fraction(a, 0.5, x), 1.0);
    *within = 1.0 - *beyond;
  } else {
    *within = fmin(2.0 * front * beta_fraction(0.5, a, y), 1.0);
    *beyond = 1.0 - *within;
  }
}

double freeair__student_factor(double probability, double nu)
{
  const double rest = 1.0 - probability;
  const double near = probability / (2.0 * density(0.0, nu));
  if (probability < 1e-9) return near;
  double low = 0.0;
  double high = INFINITY;
  double t = near;
  for (int step = 0; step < 200; step++) {
    double within;
    double beyond;
    freeair__student(t, nu, &within, &beyond);
    const int tail = rest < 0.5;
    const double excess = tail ? rest - beyond : within - probability;
    if (excess > 0.0)
      high = t;
    else
      low = t;
    /* Newton's method on the smaller probability; in the tail on logarithms, where it hardly bends */
    const double slope = 2.0 * density(t, nu);
    double next;
    if (tail)
      next = t * exp(beyond > 0.0 ? beyond / (slope * t) * log(beyond / rest) : -1.0);
    else
      next = t - excess / slope;
    if (!(next > low && next < high)) next = isinf(high) ? 2.0 * t : 0.5 * (low + high);
    const double change = fabs(next - t);
    t = next;
    if (change <= 4e-16 * t) break;
  }
  return t;
}
