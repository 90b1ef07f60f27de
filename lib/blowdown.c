/* SPDX-License-Identifier: MIT */
#include <freeair/blowdown.h>
#include <freeair/flow.h>
#include <freeair/status.h>

#include "internal/air.h"
#include "internal/check.h"
#include "internal/structure.h"

/* Everything that both directions need. Times are in units of base_s / n, with
 * u = sqrt(1 - r^((k-1)/k)) and r the lower over the higher pressure, as in flow.c. */
typedef struct setting {
  freeair_blowdown_vessel in;
  double base_s;   /* V / (A sqrt(R T)) */
  double critical; /* critical pressure ratio */
  double choked;   /* C* */
  double scale;    /* sqrt(2k/(k-1)) */
  double bend;     /* m = (n-1)/(2n) */
  double power;    /* k (1-m)/(k-1) */
} setting;

enum direction { EMPTIES, FILLS };

/* A vessel whose pressure lies on the side of the line's that its direction asks for. */
static int32_t read_setting(const freeair_blowdown_vessel *vessel, enum direction direction, setting *s)
{
  if (vessel == NULL) return FREEAIR_ERR_NULL;
  const freeair_blowdown_vessel initial = FREEAIR_BLOWDOWN_VESSEL_INIT;
  s->in = initial;
  int32_t status = freeair__structure_read(&s->in, sizeof s->in, vessel, FREEAIR_BLOWDOWN_VESSEL_BASELINE);
  if (status < 0) return status;
  if (s->in.flags != 0) return FREEAIR_ERR_VERSION;
  s->in.k = freeair__or(s->in.k, FREEAIR__AIR_K);
  s->in.r_j_kg_k = freeair__or(s->in.r_j_kg_k, FREEAIR__AIR_R);
  if (!freeair__closed(s->in.v_m3, 1e-9, 1e6) || !freeair__closed(s->in.area_m2, 1e-15, 10.0) ||
      !freeair__closed(s->in.p_vessel_pa, 0.0, 1e8) || !freeair__closed(s->in.p_line_pa, 1.0, 1e8) ||
      !freeair__closed(s->in.t_k, 50.0, 2000.0) || !freeair__closed(s->in.exponent, 1.0, 2.0) ||
      !freeair__upto(s->in.k, 1.0, 2.0) || !freeair__closed(s->in.r_j_kg_k, 10.0, 10000.0) ||
      s->in.exponent > s->in.k)
    return FREEAIR_ERR_DOMAIN;
  if (direction == FILLS ? s->in.p_vessel_pa > s->in.p_line_pa : s->in.p_vessel_pa < s->in.p_line_pa)
    return FREEAIR_ERR_DOMAIN;
  s->base_s = s->in.v_m3 / (s->in.area_m2 * sqrt(s->in.r_j_kg_k * s->in.t_k));
  freeair_flow_critical_pressure_ratio(s->in.k, &s->critical);
  freeair_flow_critical_coefficient(s->in.k, &s->choked);
  s->scale = sqrt(2.0 * s->in.k / (s->in.k - 1.0));
  s->bend = (s->in.exponent - 1.0) / (2.0 * s->in.exponent);
  s->power = s->in.k * (1.0 - s->bend) / (s->in.k - 1.0);
  return FREEAIR_OK;
}

/* ln(high / low) */
static double log_ratio(double high, double low)
{
  return high < 2.0 * low ? log1p((high - low) / low) : log(high / low);
}

/* u between two pressures */
static double speed(const setting *s, double high, double low)
{
  return sqrt(-expm1(-(s->in.k - 1.0) / s->in.k * log_ratio(high, low)));
}

/* pressure over line pressure, or under it, at a speed */
static double pressure_factor(const setting *s, double u)
{
  return exp(-s->in.k / (s->in.k - 1.0) * log1p(-u * u));
}

/* (e^(bend x) - 1) / bend and its inverse, both x where bend is 0 */
static double bent(const setting *s, double x)
{
  return s->bend > 0.0 ? expm1(s->bend * x) / s->bend : x;
}

static double unbent(const setting *s, double y)
{
  return s->bend > 0.0 ? log1p(s->bend * y) / s->bend : y;
}

/* Integral of (1 - x^2)^-power from low to high, high - low given apart so that
 * nothing cancels. All terms are positive, and high^2 is at most 1/3. */
static double resistance(const setting *s, double high, double low, double difference)
{
  double odd = difference; /* coefficient times high^(2j+1) - low^(2j+1) */
  double low_odd = low;    /* coefficient times low^(2j+1) */
  double sum = difference;
  for (int j = 0; j < 400; j++) {
    double growth = (s->power + j) / (j + 1.0);
    odd = growth * (high * high * odd + low_odd * (high + low) * difference);
    low_odd *= growth * low * low;
    double term = odd / (2.0 * j + 3.0);
    sum += term;
    if (term <= 1e-17 * sum) break;
  }
  return sum;
}

/* base_s / n times this is the time of the subsonic phase */
static double subsonic_factor(const setting *s)
{
  return s->scale * exp(s->bend * log_ratio(s->in.p_vessel_pa, s->in.p_line_pa));
}

/* u1 - u2, from u1^2 - u2^2 = r2^g - r1^g with g = (k-1)/k */
static double speed_difference(const setting *s, double u1, double u2, double log_r2_over_r1)
{
  return (1.0 - u1 * u1) * expm1((s->in.k - 1.0) / s->in.k * log_r2_over_r1) / (u1 + u2);
}

int32_t freeair_blowdown_time(const freeair_blowdown_vessel *vessel, double p2_pa, double *time_s)
{
  if (time_s == NULL) return FREEAIR_ERR_NULL;
  *time_s = NAN;
  setting s;
  int32_t status = read_setting(vessel, EMPTIES, &s);
  if (status < 0) return status;
  double p1 = s.in.p_vessel_pa;
  double line = s.in.p_line_pa;
  if (!freeair__closed(p2_pa, 1.0, 1e8)) return FREEAIR_ERR_DOMAIN;
  if (p2_pa > p1 || p2_pa < line) return FREEAIR_ERR_NO_SOLUTION;
  double junction = line / s.critical;
  double time = 0.0;
  if (p1 > junction) time = bent(&s, log_ratio(p1, fmax(p2_pa, junction))) / s.choked;
  double start = fmin(p1, junction);
  if (p2_pa < start) {
    double u1 = speed(&s, start, line);
    double u2 = speed(&s, p2_pa, line);
    double difference = speed_difference(&s, u1, u2, log_ratio(start, p2_pa));
    time += subsonic_factor(&s) * resistance(&s, u1, u2, difference);
  }
  *time_s = s.base_s / s.in.exponent * time;
  return FREEAIR_OK;
}

int32_t freeair_blowdown_pressure(const freeair_blowdown_vessel *vessel, double duration_s, double *p2_pa,
                                  double *t2_k)
{
  freeair__set_nan(p2_pa);
  freeair__set_nan(t2_k);
  if (p2_pa == NULL || t2_k == NULL) return FREEAIR_ERR_NULL;
  setting s;
  int32_t status = read_setting(vessel, EMPTIES, &s);
  if (status < 0) return status;
  double p1 = s.in.p_vessel_pa;
  double line = s.in.p_line_pa;
  if (!freeair__closed(duration_s, 0.0, 1e12)) return FREEAIR_ERR_DOMAIN;
  double junction = line / s.critical;
  double left = duration_s * s.in.exponent / s.base_s;
  double fall = 0.0; /* ln(p1/p2) */
  double p2 = p1;
  if (p1 > junction) {
    double whole = log_ratio(p1, junction);
    fall = fmin(unbent(&s, left * s.choked), whole);
    p2 = fall < whole ? p1 * exp(-fall) : junction;
    left -= bent(&s, fall) / s.choked;
  }
  if (p2 <= junction && p2 > line && left > 0.0) {
    double u1 = speed(&s, p2, line);
    double wanted = resistance(&s, u1, 0.0, u1) - left / subsonic_factor(&s);
    double u = u1;
    /* convex and rising: Newton steps from the right never pass the root */
    for (int step = 0; wanted > 0.0 && step < 100; step++) {
      double error = resistance(&s, u, 0.0, u) - wanted;
      double next = u - error * exp(s.power * log1p(-u * u));
      if (!(next < u)) break;
      u = next;
    }
    p2 = wanted > 0.0 ? line * pressure_factor(&s, u) : line;
    fall = log_ratio(p1, p2);
  }
  *p2_pa = p2;
  *t2_k = s.in.t_k * exp(-2.0 * s.bend * fall);
  return FREEAIR_OK;
}

int32_t freeair_blowdown_fill_time(const freeair_blowdown_vessel *vessel, double p2_pa, double *time_s)
{
  if (time_s == NULL) return FREEAIR_ERR_NULL;
  *time_s = NAN;
  setting s;
  int32_t status = read_setting(vessel, FILLS, &s);
  if (status < 0) return status;
  double p1 = s.in.p_vessel_pa;
  double line = s.in.p_line_pa;
  if (!freeair__closed(p2_pa, 0.0, 1e8)) return FREEAIR_ERR_DOMAIN;
  if (p2_pa < p1 || p2_pa > line) return FREEAIR_ERR_NO_SOLUTION;
  double junction = line * s.critical;
  double time = 0.0;
  if (p1 < junction) time = (fmin(p2_pa, junction) - p1) / (line * s.choked);
  double start = fmax(p1, junction);
  if (p2_pa > start) {
    double u1 = speed(&s, line, start);
    double u2 = speed(&s, line, p2_pa);
    time += s.scale * speed_difference(&s, u1, u2, log_ratio(p2_pa, start));
  }
  *time_s = s.base_s / s.in.exponent * time;
  return FREEAIR_OK;
}

int32_t freeair_blowdown_fill_pressure(const freeair_blowdown_vessel *vessel, double duration_s, double *p2_pa)
{
  if (p2_pa == NULL) return FREEAIR_ERR_NULL;
  *p2_pa = NAN;
  setting s;
  int32_t status = read_setting(vessel, FILLS, &s);
  if (status < 0) return status;
  double p2 = s.in.p_vessel_pa;
  double line = s.in.p_line_pa;
  if (!freeair__closed(duration_s, 0.0, 1e12)) return FREEAIR_ERR_DOMAIN;
  double junction = line * s.critical;
  double left = duration_s * s.in.exponent / s.base_s;
  if (p2 < junction) {
    double whole = (junction - p2) / (line * s.choked);
    p2 = left < whole ? fmin(p2 + left * s.choked * line, junction) : junction;
    left -= whole;
  }
  if (p2 >= junction && p2 < line && left > 0.0) {
    double u = speed(&s, line, p2) - left / s.scale;
    p2 = u > 0.0 ? line / pressure_factor(&s, u) : line;
  }
  *p2_pa = p2;
  return FREEAIR_OK;
}

int32_t freeair_blowdown_fill_temperature(double p1_pa, double t1_k, double p2_pa, double t_line_k, double k,
                                          double *t2_k)
{
  if (t2_k == NULL) return FREEAIR_ERR_NULL;
  *t2_k = NAN;
  if (!freeair__closed(p1_pa, 0.0, 1e8) || !freeair__closed(t1_k, 50.0, 2000.0) ||
      !freeair__closed(p2_pa, 1.0, 1e8) || !freeair__closed(t_line_k, 50.0, 2000.0) || !freeair__upto(k, 1.0, 2.0) ||
      p2_pa < p1_pa)
    return FREEAIR_ERR_DOMAIN;
  *t2_k = p2_pa / (p1_pa / t1_k + (p2_pa - p1_pa) / (k * t_line_k));
  return FREEAIR_OK;
}

int32_t freeair_blowdown_evacuation_time(double v_m3, double speed_m3_s, double p1_pa, double p2_pa,
                                         double p_ultimate_pa, double *time_s)
{
  if (time_s == NULL) return FREEAIR_ERR_NULL;
  *time_s = NAN;
  if (!freeair__closed(v_m3, 1e-9, 1e6) || !freeair__closed(speed_m3_s, 1e-9, 1e4) ||
      !freeair__closed(p1_pa, 1e-6, 1e8) || !freeair__closed(p2_pa, 1e-6, 1e8) ||
      !freeair__closed(p_ultimate_pa, 0.0, 1e8) || p2_pa > p1_pa)
    return FREEAIR_ERR_DOMAIN;
  if (p2_pa <= p_ultimate_pa) return FREEAIR_ERR_NO_SOLUTION;
  double above = p2_pa - p_ultimate_pa;
  *time_s = v_m3 / speed_m3_s * (p1_pa - p2_pa < above ? log1p((p1_pa - p2_pa) / above)
                                                       : log((p1_pa - p_ultimate_pa) / above));
  return FREEAIR_OK;
}
