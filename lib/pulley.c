/* SPDX-License-Identifier: MIT */
#include <freeair/pulley.h>
#include <freeair/status.h>

#include "internal/check.h"

static const double pi = 3.14159265358979323846;

static int diameter_valid(double diameter_m)
{
  return freeair__closed(diameter_m, 0.001, 100.0);
}

static int speed_valid(double speed_rev_s)
{
  return freeair__closed(speed_rev_s, 0.0, 1000.0);
}

int32_t freeair_pulley_driven_speed(double driver_rev_s, double driver_m, double driven_m, double slip,
                                    double *driven_rev_s)
{
  if (driven_rev_s == NULL) return FREEAIR_ERR_NULL;
  *driven_rev_s = NAN;
  if (!speed_valid(driver_rev_s) || !diameter_valid(driver_m) || !diameter_valid(driven_m) ||
      !freeair__closed(slip, 0.0, 1.0))
    return FREEAIR_ERR_DOMAIN;
  *driven_rev_s = driver_rev_s * (driver_m / driven_m) * (1.0 - slip);
  return FREEAIR_OK;
}

int32_t freeair_pulley_driver_diameter(double driver_rev_s, double driven_rev_s, double driven_m, double slip,
                                       double *driver_m)
{
  if (driver_m == NULL) return FREEAIR_ERR_NULL;
  *driver_m = NAN;
  if (!freeair__closed(driver_rev_s, 0.001, 1000.0) || !speed_valid(driven_rev_s) || !diameter_valid(driven_m) ||
      !freeair__closed(slip, 0.0, 0.9))
    return FREEAIR_ERR_DOMAIN;
  *driver_m = driven_m * (driven_rev_s / driver_rev_s) / (1.0 - slip);
  return FREEAIR_OK;
}

int32_t freeair_pulley_belt_speed(double diameter_m, double speed_rev_s, double *belt_m_s)
{
  if (belt_m_s == NULL) return FREEAIR_ERR_NULL;
  *belt_m_s = NAN;
  if (!diameter_valid(diameter_m) || !speed_valid(speed_rev_s)) return FREEAIR_ERR_DOMAIN;
  *belt_m_s = pi * diameter_m * speed_rev_s;
  return FREEAIR_OK;
}

int32_t freeair_pulley_best_belt_speed(double tight_n, double mass_kg_m, double *belt_m_s)
{
  if (belt_m_s == NULL) return FREEAIR_ERR_NULL;
  *belt_m_s = NAN;
  if (!freeair__closed(tight_n, 0.0, 1e7) || !freeair__closed(mass_kg_m, 1e-4, 100.0)) return FREEAIR_ERR_DOMAIN;
  *belt_m_s = sqrt(tight_n / (3.0 * mass_kg_m));
  return FREEAIR_OK;
}

/* Two pulleys and how far apart they stand. The span leaves each shaft at the
 * distance e from the tangent through the other: half the difference of the
 * diameters for an open belt, half their sum for a crossed one. */
struct drive {
  double sum;   /* of the diameters */
  double e;     /* as above */
  double rest;  /* what rounding took from e */
};

/* |a| + |b| or |a| - |b| with its rounding error. */
static struct drive drive_of(double first_m, double second_m, int crossed)
{
  double larger = first_m > second_m ? first_m : second_m;
  double smaller = first_m > second_m ? second_m : first_m;
  double added = crossed ? smaller : -smaller;
  double total = larger + added;
  return (struct drive){first_m + second_m, 0.5 * total, 0.5 * (added - (total - larger))};
}

/* Length of the free span; exact also where the distance is little more than e. */
static double span_of(const struct drive *d, double centre)
{
  return sqrt(((centre - d->e) - d->rest) * (centre + d->e));
}

static double length_of(const struct drive *d, double centre)
{
  double span = span_of(d, centre);
  return 2.0 * span + 0.5 * pi * d->sum + 2.0 * d->e * atan2(d->e, span);
}

/* Checks a drive and gives it with its span. */
static int32_t read_drive(double first_m, double second_m, double centre_m, int crossed, struct drive *d,
                          double *span)
{
  if (!diameter_valid(first_m) || !diameter_valid(second_m) || !freeair__closed(centre_m, 0.001, 1000.0))
    return FREEAIR_ERR_DOMAIN;
  struct drive apart = drive_of(first_m, second_m, 1);
  if (!((centre_m - apart.e) - apart.rest > 0.0)) return FREEAIR_ERR_NO_SOLUTION;
  *d = crossed ? apart : drive_of(first_m, second_m, 0);
  *span = span_of(d, centre_m);
  return FREEAIR_OK;
}

static int32_t length(double first_m, double second_m, double centre_m, int crossed, double *length_m)
{
  if (length_m == NULL) return FREEAIR_ERR_NULL;
  *length_m = NAN;
  struct drive d;
  double span;
  int32_t status = read_drive(first_m, second_m, centre_m, crossed, &d, &span);
  if (status < 0) return status;
  *length_m = length_of(&d, centre_m);
  return FREEAIR_OK;
}

int32_t freeair_pulley_open_length(double first_m, double second_m, double centre_m, double *length_m)
{
  return length(first_m, second_m, centre_m, 0, length_m);
}

int32_t freeair_pulley_crossed_length(double first_m, double second_m, double centre_m, double *length_m)
{
  return length(first_m, second_m, centre_m, 1, length_m);
}

/* Length grows with centre distance, ever faster (its slope is 2 cos of the
 * angle of the spans), and half of what the length leaves over two half turns is
 * no less than the answer: Newton's steps from there go down to it and turn
 * round only by rounding, so they end; where the pulleys nearly touch each still
 * takes two thirds of what is left. */
static int32_t centre_from(double first_m, double second_m, double length_m, int crossed, double *centre_m)
{
  if (centre_m == NULL) return FREEAIR_ERR_NULL;
  *centre_m = NAN;
  if (!diameter_valid(first_m) || !diameter_valid(second_m) || !freeair__closed(length_m, 0.001, 2000.0))
    return FREEAIR_ERR_DOMAIN;
  struct drive d = drive_of(first_m, second_m, crossed);
  double least = 0.5 * d.sum * (1.0 + 1e-15); /* a hair apart */
  if (!(length_m > length_of(&d, least))) return FREEAIR_ERR_NO_SOLUTION;
  double c = 0.5 * (length_m - 0.5 * pi * d.sum);
  for (int i = 0; i < 100; i++) {
    double step = (length_of(&d, c) - length_m) * c / (2.0 * span_of(&d, c));
    if (!(step > 1e-16 * c)) break;
    c = c - step > least ? c - step : 0.5 * (c + least);
  }
  *centre_m = c;
  return FREEAIR_OK;
}

int32_t freeair_pulley_centre_from_open_length(double first_m, double second_m, double length_m, double *centre_m)
{
  return centre_from(first_m, second_m, length_m, 0, centre_m);
}

int32_t freeair_pulley_centre_from_crossed_length(double first_m, double second_m, double length_m, double *centre_m)
{
  return centre_from(first_m, second_m, length_m, 1, centre_m);
}

int32_t freeair_pulley_open_wrap(double first_m, double second_m, double centre_m, double *smaller_rad,
                                 double *larger_rad)
{
  freeair__set_nan(smaller_rad);
  freeair__set_nan(larger_rad);
  if (smaller_rad == NULL || larger_rad == NULL) return FREEAIR_ERR_NULL;
  struct drive d;
  double span;
  int32_t status = read_drive(first_m, second_m, centre_m, 0, &d, &span);
  if (status < 0) return status;
  *smaller_rad = 2.0 * atan2(span, d.e); /* pi - 2 asin(e / C) */
  *larger_rad = pi + 2.0 * atan2(d.e, span);
  return FREEAIR_OK;
}

int32_t freeair_pulley_crossed_wrap(double first_m, double second_m, double centre_m, double *wrap_rad)
{
  if (wrap_rad == NULL) return FREEAIR_ERR_NULL;
  *wrap_rad = NAN;
  struct drive d;
  double span;
  int32_t status = read_drive(first_m, second_m, centre_m, 1, &d, &span);
  if (status < 0) return status;
  *wrap_rad = pi + 2.0 * atan2(d.e, span);
  return FREEAIR_OK;
}

int32_t freeair_pulley_span(double first_m, double second_m, double centre_m, double *span_m)
{
  if (span_m == NULL) return FREEAIR_ERR_NULL;
  *span_m = NAN;
  struct drive d;
  double span;
  int32_t status = read_drive(first_m, second_m, centre_m, 0, &d, &span);
  if (status < 0) return status;
  *span_m = span;
  return FREEAIR_OK;
}
