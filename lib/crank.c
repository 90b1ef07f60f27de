/* SPDX-License-Identifier: MIT */
#include <freeair/crank.h>
#include <freeair/status.h>

#include "internal/circle.h"
#include "internal/gas.h"

static int is_length(double length_m)
{
  return freeair__closed(length_m, 0.0001, 10.0);
}

static int is_crank(double stroke_m, double rod_length_m)
{
  return is_length(stroke_m) && freeair__closed(rod_length_m, 0.00006, 100.0) && rod_length_m >= 0.6 * stroke_m;
}

static int is_angle(double angle_rad)
{
  return freeair__closed(angle_rad, -1000.0, 1000.0);
}

static int is_speed(double speed_rev_s)
{
  return freeair__closed(speed_rev_s, 0.0, 1000.0);
}

/* Both ends of the stroke keep their last digits: 1 - cos a = 2 sin^2(a/2), 1 - sqrt(1 - s) = s/(1 + sqrt(1 - s)). */
static double position(double stroke_m, double rod_length_m, double angle_rad)
{
  double r = 0.5 * stroke_m;
  double half = sin(0.5 * angle_rad);
  double lean = r / rod_length_m * sin(angle_rad); /* sine of the angle between rod and axis */
  return 2.0 * r * half * half + rod_length_m * lean * lean / (1.0 + sqrt(1.0 - lean * lean));
}

/* d x / d a */
static double slope(double stroke_m, double rod_length_m, double angle_rad)
{
  double r = 0.5 * stroke_m;
  double sine = sin(angle_rad);
  double lean = r / rod_length_m * sine;
  return r * sine * (1.0 + r / rod_length_m * cos(angle_rad) / sqrt(1.0 - lean * lean));
}

int32_t freeair_crank_position(double stroke_m, double rod_length_m, double angle_rad, double *position_m)
{
  if (position_m == NULL) return FREEAIR_ERR_NULL;
  *position_m = NAN;
  if (!is_crank(stroke_m, rod_length_m) || !is_angle(angle_rad)) return FREEAIR_ERR_DOMAIN;
  *position_m = position(stroke_m, rod_length_m, angle_rad);
  return FREEAIR_OK;
}

int32_t freeair_crank_angle_from_position(double stroke_m, double rod_length_m, double position_m, double *angle_rad)
{
  if (angle_rad == NULL) return FREEAIR_ERR_NULL;
  *angle_rad = NAN;
  if (!is_crank(stroke_m, rod_length_m) || !freeair__closed(position_m, 0.0, 10.0) || !(position_m <= stroke_m))
    return FREEAIR_ERR_DOMAIN;
  /* 4 r y sin^2(a/2) and 4 r y cos^2(a/2), y the distance from crankshaft to piston pin */
  double sine = position_m * (2.0 * rod_length_m - position_m);
  double cosine = (stroke_m - position_m) * (stroke_m - position_m + 2.0 * rod_length_m);
  *angle_rad = 2.0 * atan2(sqrt(sine), sqrt(cosine));
  return FREEAIR_OK;
}

int32_t freeair_crank_volume(double bore_m, double stroke_m, double clearance, double rod_length_m, double angle_rad,
                             double *v_m3)
{
  if (v_m3 == NULL) return FREEAIR_ERR_NULL;
  *v_m3 = NAN;
  if (!is_length(bore_m) || !is_crank(stroke_m, rod_length_m) || !freeair__closed(clearance, 0.0, 2.0) ||
      !is_angle(angle_rad))
    return FREEAIR_ERR_DOMAIN;
  *v_m3 = 0.25 * FREEAIR__PI * bore_m * bore_m *
          (position(stroke_m, rod_length_m, angle_rad) + clearance * stroke_m);
  return FREEAIR_OK;
}

int32_t freeair_crank_velocity(double stroke_m, double rod_length_m, double speed_rev_s, double angle_rad,
                               double *velocity_m_s)
{
  if (velocity_m_s == NULL) return FREEAIR_ERR_NULL;
  *velocity_m_s = NAN;
  if (!is_crank(stroke_m, rod_length_m) || !is_speed(speed_rev_s) || !is_angle(angle_rad)) return FREEAIR_ERR_DOMAIN;
  *velocity_m_s = 2.0 * FREEAIR__PI * speed_rev_s * slope(stroke_m, rod_length_m, angle_rad);
  return FREEAIR_OK;
}

int32_t freeair_crank_gas_load(double bore_m, double rod_diameter_m, double p_head_pa, double p_crank_pa,
                               double p_ambient_pa, double *load_n)
{
  if (load_n == NULL) return FREEAIR_ERR_NULL;
  *load_n = NAN;
  if (!is_length(bore_m) || !freeair__closed(rod_diameter_m, 0.0, 10.0) || !(rod_diameter_m < bore_m) ||
      !freeair__is_pressure(p_head_pa) || !freeair__is_pressure(p_crank_pa) || !freeair__is_pressure(p_ambient_pa))
    return FREEAIR_ERR_DOMAIN;
  double on_bore = (p_head_pa - p_crank_pa) * bore_m * bore_m;
  double on_rod = (p_crank_pa - p_ambient_pa) * rod_diameter_m * rod_diameter_m;
  *load_n = 0.25 * FREEAIR__PI * (on_bore + on_rod);
  return FREEAIR_OK;
}

int32_t freeair_crank_inertia_load(double mass_kg, double stroke_m, double rod_length_m, double speed_rev_s,
                                   double angle_rad, double *load_n)
{
  if (load_n == NULL) return FREEAIR_ERR_NULL;
  *load_n = NAN;
  if (!freeair__closed(mass_kg, 0.0, 10000.0) || !is_crank(stroke_m, rod_length_m) || !is_speed(speed_rev_s) ||
      !is_angle(angle_rad))
    return FREEAIR_ERR_DOMAIN;
  double r = 0.5 * stroke_m;
  double q = r / rod_length_m;
  double sine = sin(angle_rad);
  double square = sine * sine;
  double root = sqrt(1.0 - q * q * square);
  double turn = 2.0 * FREEAIR__PI * speed_rev_s;
  double curvature = cos(angle_rad) + q * (1.0 - 2.0 * square + q * q * square * square) / (root * root * root);
  *load_n = -mass_kg * turn * turn * r * curvature;
  return FREEAIR_OK;
}

int32_t freeair_crank_torque(double load_n, double stroke_m, double rod_length_m, double angle_rad, double *torque_nm)
{
  if (torque_nm == NULL) return FREEAIR_ERR_NULL;
  *torque_nm = NAN;
  if (!freeair__closed(load_n, -1e9, 1e9) || !is_crank(stroke_m, rod_length_m) || !is_angle(angle_rad))
    return FREEAIR_ERR_DOMAIN;
  *torque_nm = -load_n * slope(stroke_m, rod_length_m, angle_rad);
  return FREEAIR_OK;
}
