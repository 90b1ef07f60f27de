/* SPDX-License-Identifier: MIT */
#include <freeair/status.h>
#include <freeair/unbalance.h>

#include "internal/check.h"

static const double largest = 1e6; /* V or A */

static int readable(double a, double b, double c)
{
  return freeair__closed(a, 0.0, largest) && freeair__closed(b, 0.0, largest) && freeair__closed(c, 0.0, largest);
}

/* Sorts three values, largest first. */
static void sort(double v[3])
{
  for (int i = 0; i < 2; i++)
    for (int j = 0; j < 2 - i; j++)
      if (v[j] < v[j + 1]) {
        double t = v[j];
        v[j] = v[j + 1];
        v[j + 1] = t;
      }
}

/* The deviation from the mean is greatest for the largest or the smallest of
 * the three; written as differences of readings, it does not cancel. */
static int32_t unbalance_of(double a, double b, double c, double *unbalance, double *mean)
{
  freeair__set_nan(unbalance);
  freeair__set_nan(mean);
  if (unbalance == NULL || mean == NULL) return FREEAIR_ERR_NULL;
  if (!readable(a, b, c)) return FREEAIR_ERR_DOMAIN;
  double v[3] = {a, b, c};
  sort(v);
  double sum = v[2] + v[1] + v[0];
  if (!(sum > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  double above = (v[0] - v[1]) + (v[0] - v[2]);
  double below = (v[1] - v[2]) + (v[0] - v[2]);
  *unbalance = (above > below ? above : below) / sum;
  *mean = sum / 3.0;
  return FREEAIR_OK;
}

int32_t freeair_unbalance_voltage(double u12_v, double u23_v, double u31_v, double *unbalance, double *mean_v)
{
  return unbalance_of(u12_v, u23_v, u31_v, unbalance, mean_v);
}

int32_t freeair_unbalance_current(double i1_a, double i2_a, double i3_a, double *unbalance, double *mean_a)
{
  return unbalance_of(i1_a, i2_a, i3_a, unbalance, mean_a);
}

/* With a, b, c the squares of the voltages, 3 - 6 beta = s^2 and 1 - s^2 = e:
 *   e = 2 ((a-b)^2 + (b-c)^2 + (c-a)^2) / (a+b+c)^2
 *   s = 4 sqrt(3) area of the triangle / (a+b+c)
 *   factor^2 = (1-s)/(1+s) = e / (1+s)^2
 * The differences of squares factor, and the area follows from the sorted sides
 * without cancellation. */
int32_t freeair_unbalance_factor(double u12_v, double u23_v, double u31_v, double *factor)
{
  if (factor == NULL) return FREEAIR_ERR_NULL;
  *factor = NAN;
  if (!readable(u12_v, u23_v, u31_v)) return FREEAIR_ERR_DOMAIN;
  double v[3] = {u12_v, u23_v, u31_v};
  sort(v);
  if (!(v[0] > 0.0) || !(v[2] >= v[0] - v[1])) return FREEAIR_ERR_NO_SOLUTION;
  double x = 1.0;
  double y = v[1] / v[0];
  double z = v[2] / v[0];
  double gap = (v[2] - (v[0] - v[1])) / v[0];
  double sum = x + y * y + z * z;
  double ab = (v[0] - v[1]) / v[0] * (x + y);
  double bc = (v[1] - v[2]) / v[0] * (y + z);
  double ca = (v[0] - v[2]) / v[0] * (x + z);
  double area16 = (x + (y + z)) * gap * (z + (x - y)) * (x + (y - z));
  double s = sqrt(3.0 * area16) / sum;
  *factor = sqrt(2.0 * (ab * ab + bc * bc + ca * ca)) / sum / (1.0 + s);
  return FREEAIR_OK;
}

int32_t freeair_unbalance_derating(double unbalance, double *derating)
{
  /* at 1, 2, 3, 4 and 5 percent */
  static const double factor[] = {1.00, 0.95, 0.88, 0.82, 0.75};
  if (derating == NULL) return FREEAIR_ERR_NULL;
  *derating = NAN;
  if (!freeair__closed(unbalance, 0.0, 2.0)) return FREEAIR_ERR_DOMAIN;
  double percent = 100.0 * unbalance;
  if (percent > 5.0) {
    *derating = 0.0;
    return FREEAIR_WARN_LIMIT;
  }
  *derating = 1.0;
  if (percent > 1.0) {
    size_t i = percent >= 4.0 ? 3 : (size_t)percent - 1;
    double t = percent - (double)(i + 1);
    *derating = factor[i] + t * (factor[i + 1] - factor[i]);
  }
  return FREEAIR_OK;
}

int32_t freeair_unbalance_temperature_rise(double rise_k, double unbalance, double *unbalanced_rise_k)
{
  if (unbalanced_rise_k == NULL) return FREEAIR_ERR_NULL;
  *unbalanced_rise_k = NAN;
  if (!freeair__closed(rise_k, 0.0, 500.0) || !freeair__closed(unbalance, 0.0, 2.0)) return FREEAIR_ERR_DOMAIN;
  *unbalanced_rise_k = rise_k * (1.0 + 200.0 * unbalance * unbalance);
  return unbalance > 0.05 ? FREEAIR_WARN_EXTRAPOLATED : FREEAIR_OK;
}

int32_t freeair_unbalance_single_phasing_current(double balanced_a, double balanced_power_factor,
                                                 double single_power_factor, double *single_phasing_a)
{
  if (single_phasing_a == NULL) return FREEAIR_ERR_NULL;
  *single_phasing_a = NAN;
  if (!freeair__closed(balanced_a, 0.0, largest) || !freeair__closed(balanced_power_factor, 0.01, 1.0) ||
      !freeair__closed(single_power_factor, 0.01, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *single_phasing_a = 1.7320508075688772935 * balanced_a * (balanced_power_factor / single_power_factor);
  return FREEAIR_OK;
}
