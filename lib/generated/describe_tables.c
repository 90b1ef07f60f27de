/* SPDX-License-Identifier: MIT */
/* Written by bindings/generate; do not edit. */
#include <freeair/freeair.h>

#include <math.h>

#include "internal/describe.h"


static void loop_freeair_verdict_probability(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  for (size_t i = 0;;) {
    int32_t s = freeair_verdict_probability(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, (double *)(void *)a4);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
  }
}

static const freeair_parameter parameters_freeair_verdict_probability[] = {
    {"value", "Estimate.", "any", "(-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"uncertainty", "Standard uncertainty of the estimate, in the unit of value.", "any", "[0;inf)", "", "", NULL, 0.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"lower", "Lower limit; -inf for none.", "any", "[-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"upper", "Upper limit, above lower; inf for none.", "any", "(-inf;inf]", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"probability", "Probability of conformance.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_verdict_probability[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_verdict_decide(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  char *a4 = args[4];
  char *a5 = args[5];
  for (size_t i = 0;;) {
    int32_t s = freeair_verdict_decide(*(double *)(void *)a0, *(double *)(void *)a1, *(double *)(void *)a2, *(double *)(void *)a3, *(double *)(void *)a4, (int32_t *)(void *)a5);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
    a4 += steps[4];
    a5 += steps[5];
  }
}

static const freeair_parameter parameters_freeair_verdict_decide[] = {
    {"value", "Estimate.", "any", "(-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"uncertainty", "Standard uncertainty of the estimate, in the unit of value.", "any", "[0;inf)", "", "", NULL, 0.0, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"lower", "Lower limit; -inf for none.", "any", "[-inf;inf)", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED, 0u, sizeof(double), -1, -1},
    {"upper", "Upper limit, above lower; inf for none.", "any", "(-inf;inf]", "", "", NULL, -INFINITY, INFINITY, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"confidence", "Probability required of a firm verdict.", "1", "(0.5;1)", "", "", NULL, 0.5, 1.0, FREEAIR_TYPE_DOUBLE, 0, 0u, sizeof(double), -1, -1},
    {"verdict", "The decision.", "1", "", "", "freeair_verdict", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_verdict_decide[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_units_is_gauge(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_is_gauge(*(const char **)(void *)a0, (int32_t *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_units_is_gauge[] = {
    {"symbol", "Symbol of a unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"gauge", "1 for a gauge pressure, 0 for every other unit.", "1", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_INT32, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(int32_t), -1, -1},
};

static const int32_t statuses_freeair_units_is_gauge[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_si_from(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_si_from(*(double *)(void *)a0, *(const char **)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_si_from[] = {
    {"value", "Value in the unit.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"symbol", "Symbol of the unit, such as \"psi\".", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"si", "Value in the coherent SI unit that freeair_units_si_symbol() names.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_si_from[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_from_si(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_from_si(*(double *)(void *)a0, *(const char **)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_from_si[] = {
    {"si", "Value in the unit that freeair_units_si_symbol() names.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"symbol", "Symbol of the unit, such as \"psi\".", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"value", "Value in the unit.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_from_si[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_convert(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_convert(*(double *)(void *)a0, *(const char **)(void *)a1, *(const char **)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_units_convert[] = {
    {"value", "Value in the first unit.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"from", "Symbol of the first unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"to", "Symbol of the second unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"converted", "Value in the second unit.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_convert[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_DIMENSION, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_convert_difference(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  char *a3 = args[3];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_convert_difference(*(double *)(void *)a0, *(const char **)(void *)a1, *(const char **)(void *)a2, (double *)(void *)a3);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
    a3 += steps[3];
  }
}

static const freeair_parameter parameters_freeair_units_convert_difference[] = {
    {"value", "Difference in the first unit.", "any", "[-1e100;1e100]", "", "", NULL, -1e+100, 1e+100, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"from", "Symbol of the first unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"to", "Symbol of the second unit.", "", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_TEXT, 0, 0u, sizeof(const char *), -1, -1},
    {"converted", "Difference in the second unit.", "any", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_convert_difference[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NOT_FOUND, FREEAIR_ERR_DIMENSION, FREEAIR_ERR_UNSUPPORTED};

static void loop_freeair_units_absolute_from_gauge(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_absolute_from_gauge(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_absolute_from_gauge[] = {
    {"gauge_pa", "Gauge pressure.", "Pa", "[-200000;1e9]", "", "", NULL, -200000.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"barometric_pa", "Pressure of the surrounding air, absolute.", "Pa", "[10000;200000]", "", "", NULL, 10000.0, 200000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_absolute_from_gauge[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN, FREEAIR_ERR_NO_SOLUTION};

static void loop_freeair_units_gauge_from_absolute(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  char *a2 = args[2];
  for (size_t i = 0;;) {
    int32_t s = freeair_units_gauge_from_absolute(*(double *)(void *)a0, *(double *)(void *)a1, (double *)(void *)a2);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
    a2 += steps[2];
  }
}

static const freeair_parameter parameters_freeair_units_gauge_from_absolute[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[0;1e9]", "", "", NULL, 0.0, 1000000000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"barometric_pa", "Pressure of the surrounding air, absolute.", "Pa", "[10000;200000]", "", "", NULL, 10000.0, 200000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"gauge_pa", "Gauge pressure.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_units_gauge_from_absolute[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_pressure_from_altitude(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_pressure_from_altitude(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_pressure_from_altitude[] = {
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "[-5000;11000]", "", "", NULL, -5000.0, 11000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"p_pa", "Pressure, absolute.", "Pa", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_pressure_from_altitude[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_altitude_from_pressure(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_altitude_from_pressure(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_altitude_from_pressure[] = {
    {"p_pa", "Pressure, absolute.", "Pa", "[22633;177687]", "", "", NULL, 22633.0, 177687.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_altitude_from_pressure[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_temperature_from_altitude(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_temperature_from_altitude(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_temperature_from_altitude[] = {
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "[-5000;11000]", "", "", NULL, -5000.0, 11000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"t_k", "Temperature.", "K", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_temperature_from_altitude[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_density_from_altitude(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_density_from_altitude(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_density_from_altitude[] = {
    {"altitude_m", "Geopotential altitude above mean sea level.", "m", "[-5000;11000]", "", "", NULL, -5000.0, 11000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"rho_kg_m3", "Density.", "kg/m3", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_density_from_altitude[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

static void loop_freeair_atmosphere_altitude_from_geometric(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, size_t *errors)
{
  if (n == 0) return;
  char *a0 = args[0];
  char *a1 = args[1];
  for (size_t i = 0;;) {
    int32_t s = freeair_atmosphere_altitude_from_geometric(*(double *)(void *)a0, (double *)(void *)a1);
    if (status != NULL) status[i] = s;
    *errors += s < 0;
    if (++i == n) return;
    a0 += steps[0];
    a1 += steps[1];
  }
}

static const freeair_parameter parameters_freeair_atmosphere_altitude_from_geometric[] = {
    {"geometric_m", "Geometric altitude above mean sea level.", "m", "[-5000;20000]", "", "", NULL, -5000.0, 20000.0, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_LOWER_CLOSED | FREEAIR_PARAMETER_UPPER_CLOSED, 0u, sizeof(double), -1, -1},
    {"altitude_m", "Geopotential altitude.", "m", "", "", "", NULL, NAN, NAN, FREEAIR_TYPE_DOUBLE, FREEAIR_PARAMETER_OUTPUT, 0u, sizeof(double), -1, -1},
};

static const int32_t statuses_freeair_atmosphere_altitude_from_geometric[] = {FREEAIR_OK, FREEAIR_ERR_NULL, FREEAIR_ERR_DOMAIN};

const freeair_function freeair__functions[] = {
    {"freeair_verdict_probability", "verdict", "Probability that a measured quantity lies within its limits.", "P = Phi((upper - value) / u) - Phi((lower - value) / u), Phi the standard normal distribution; evaluated in the tail where it is small. An infinite limit makes the requirement one-sided. u = 0 gives 0 or 1, a value on a limit counts as conforming.", "JCGM 106:2012, Evaluation of measurement data - The role of measurement uncertainty in conformity assessment, 7.2 to 7.4", parameters_freeair_verdict_probability, statuses_freeair_verdict_probability, loop_freeair_verdict_probability, 5u, 3u, 0},
    {"freeair_verdict_decide", "verdict", "Guarded decision on a measured quantity against its limits.", "MEETS when the probability of conformance is at least the confidence, FAILS when it is at most one minus the confidence, else CANNOT_TELL. With one limit and confidence 0.95 this is a guard band of 1.645 standard uncertainties on either side.", "JCGM 106:2012, 8.3, guarded acceptance and guarded rejection", parameters_freeair_verdict_decide, statuses_freeair_verdict_decide, loop_freeair_verdict_decide, 6u, 3u, 0},
    {"freeair_units_is_gauge", "units", "Whether a symbol means a pressure above that of the surrounding air.", "table look-up. Symbols that say so: psig, barg, kPag, kgf/cm2g, inHg vac and their spellings. A plain psi or bar says neither; here it is absolute.", "definition", parameters_freeair_units_is_gauge, statuses_freeair_units_is_gauge, loop_freeair_units_is_gauge, 2u, 4u, 0},
    {"freeair_units_si_from", "units", "Value in coherent SI of a value in a unit.", "si = zero + value x factor, the factor exact by definition of the unit wherever it has an exact one. Temperatures are readings of a scale: 20 degC is 293.15 K. A gauge pressure stays a gauge pressure, in pascal: ask freeair_units_is_gauge() before you use it as an absolute one.", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000", parameters_freeair_units_si_from, statuses_freeair_units_si_from, loop_freeair_units_si_from, 3u, 5u, 0},
    {"freeair_units_from_si", "units", "Value in a unit of a value in coherent SI.", "inverse of freeair_units_si_from().", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000", parameters_freeair_units_from_si, statuses_freeair_units_from_si, loop_freeair_units_from_si, 3u, 5u, 0},
    {"freeair_units_convert", "units", "Value in one unit of a value in another.", "through coherent SI. Temperatures are readings of a scale. A gauge pressure converts to gauge pressures only.", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000", parameters_freeair_units_convert, statuses_freeair_units_convert, loop_freeair_units_convert, 4u, 6u, 0},
    {"freeair_units_convert_difference", "units", "Difference in one unit of a difference in another.", "as freeair_units_convert(), but scales are compared by the size of their degrees alone: a difference of 1 degC is one of 1 K and of 1.8 degF. A difference between two gauge pressures is the same as that between the two absolute ones, so here gauge and absolute mix.", "NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, 4.2.1.1 and Appendix B", parameters_freeair_units_convert_difference, statuses_freeair_units_convert_difference, loop_freeair_units_convert_difference, 4u, 6u, 0},
    {"freeair_units_absolute_from_gauge", "units", "Absolute pressure of a gauge reading.", "p = gauge + barometric. The barometer of the site, not of the sea: at 1500 m it reads about 85 kPa (freeair_atmosphere_pressure_from_altitude()).", "definition", parameters_freeair_units_absolute_from_gauge, statuses_freeair_units_absolute_from_gauge, loop_freeair_units_absolute_from_gauge, 3u, 4u, 0},
    {"freeair_units_gauge_from_absolute", "units", "Gauge reading of an absolute pressure.", "gauge = p - barometric; negative below the barometer.", "definition", parameters_freeair_units_gauge_from_absolute, statuses_freeair_units_gauge_from_absolute, loop_freeair_units_gauge_from_absolute, 3u, 3u, 0},
    {"freeair_atmosphere_pressure_from_altitude", "atmosphere", "Pressure of the standard atmosphere at a geopotential altitude.", "p = p0 (1 - L H / T0)^(g0 / (L R)), with p0 = 101325 Pa, T0 = 288.15 K, L = 0.0065 K/m, g0 = 9.80665 m/s2, R = 287.05287 J/(kg K). Troposphere only.", "ISO 2533:1975, Standard Atmosphere, 2.2; US Standard Atmosphere 1976, equation 33a", parameters_freeair_atmosphere_pressure_from_altitude, statuses_freeair_atmosphere_pressure_from_altitude, loop_freeair_atmosphere_pressure_from_altitude, 2u, 3u, 0},
    {"freeair_atmosphere_altitude_from_pressure", "atmosphere", "Geopotential altitude at which the standard atmosphere has a pressure.", "inverse of freeair_atmosphere_pressure_from_altitude, in closed form.", "ISO 2533:1975, Standard Atmosphere, 2.2, solved for altitude", parameters_freeair_atmosphere_altitude_from_pressure, statuses_freeair_atmosphere_altitude_from_pressure, loop_freeair_atmosphere_altitude_from_pressure, 2u, 3u, 0},
    {"freeair_atmosphere_temperature_from_altitude", "atmosphere", "Temperature of the standard atmosphere at a geopotential altitude.", "T = T0 - L H, T0 = 288.15 K, L = 0.0065 K/m. Troposphere only.", "ISO 2533:1975, Standard Atmosphere, 2.2", parameters_freeair_atmosphere_temperature_from_altitude, statuses_freeair_atmosphere_temperature_from_altitude, loop_freeair_atmosphere_temperature_from_altitude, 2u, 3u, 0},
    {"freeair_atmosphere_density_from_altitude", "atmosphere", "Density of the standard atmosphere at a geopotential altitude.", "rho = p / (R T) with pressure and temperature of the standard atmosphere.", "ISO 2533:1975, Standard Atmosphere, 2.2", parameters_freeair_atmosphere_density_from_altitude, statuses_freeair_atmosphere_density_from_altitude, loop_freeair_atmosphere_density_from_altitude, 2u, 3u, 0},
    {"freeair_atmosphere_altitude_from_geometric", "atmosphere", "Geopotential altitude of a geometric altitude.", "H = r Z / (r + Z), r = 6356766 m, the nominal radius of the earth.", "ISO 2533:1975, Standard Atmosphere, 2.3; US Standard Atmosphere 1976, equation 18", parameters_freeair_atmosphere_altitude_from_geometric, statuses_freeair_atmosphere_altitude_from_geometric, loop_freeair_atmosphere_altitude_from_geometric, 2u, 3u, 0},
};

const size_t freeair__n_functions = sizeof freeair__functions / sizeof freeair__functions[0];

const freeair_structure *const freeair__structures[] = {NULL};

const size_t freeair__n_structures = 0;

const freeair__constant freeair__constants[] = {
    {"FREEAIR_OK", "freeair_status", "Computed.", FREEAIR_OK},
    {"FREEAIR_WARN_EXTRAPOLATED", "freeair_status", "Computed, but outside the range the correlation was fitted to.", FREEAIR_WARN_EXTRAPOLATED},
    {"FREEAIR_WARN_TRANSITION", "freeair_status", "Computed, but in a regime between laminar and turbulent where no formula is sure.", FREEAIR_WARN_TRANSITION},
    {"FREEAIR_WARN_INCONSISTENT", "freeair_status", "Computed, but the readings contradict one another.", FREEAIR_WARN_INCONSISTENT},
    {"FREEAIR_WARN_TRUNCATED", "freeair_status", "Computed, but the caller's array was too short to hold every result.", FREEAIR_WARN_TRUNCATED},
    {"FREEAIR_WARN_LIMIT", "freeair_status", "Computed, but a recommended limit of the trade or of a standard is exceeded.", FREEAIR_WARN_LIMIT},
    {"FREEAIR_ERR_NULL", "freeair_status", "A required pointer is null.", FREEAIR_ERR_NULL},
    {"FREEAIR_ERR_DOMAIN", "freeair_status", "An argument is not a number, infinite or outside its documented range.", FREEAIR_ERR_DOMAIN},
    {"FREEAIR_ERR_NO_SOLUTION", "freeair_status", "The arguments are in range but no state satisfies them together.", FREEAIR_ERR_NO_SOLUTION},
    {"FREEAIR_ERR_NO_CONVERGENCE", "freeair_status", "An iteration reached its documented limit.", FREEAIR_ERR_NO_CONVERGENCE},
    {"FREEAIR_ERR_OVERFLOW", "freeair_status", "The result is not representable.", FREEAIR_ERR_OVERFLOW},
    {"FREEAIR_ERR_VERSION", "freeair_status", "A structure's size is not one this library knows.", FREEAIR_ERR_VERSION},
    {"FREEAIR_ERR_DATA", "freeair_status", "Too few usable data points.", FREEAIR_ERR_DATA},
    {"FREEAIR_ERR_NOT_FOUND", "freeair_status", "No entry has this name.", FREEAIR_ERR_NOT_FOUND},
    {"FREEAIR_ERR_DIMENSION", "freeair_status", "The unit measures another kind of quantity.", FREEAIR_ERR_DIMENSION},
    {"FREEAIR_ERR_UNSUPPORTED", "freeair_status", "The function cannot be called in this way.", FREEAIR_ERR_UNSUPPORTED},
    {"FREEAIR_CAUTION_ISOLATE", "freeair_caution", "Isolate, lock out and tag out before touching the machine.", FREEAIR_CAUTION_ISOLATE},
    {"FREEAIR_CAUTION_DEPRESSURISE", "freeair_caution", "Depressurise to zero, on a gauge that is trusted, before opening.", FREEAIR_CAUTION_DEPRESSURISE},
    {"FREEAIR_CAUTION_STORED_ENERGY", "freeair_caution", "A receiver under pressure stores energy like an explosive.", FREEAIR_CAUTION_STORED_ENERGY},
    {"FREEAIR_CAUTION_RELIEF_VALVE", "freeair_caution", "Never plug, reset or weaken a relief valve.", FREEAIR_CAUTION_RELIEF_VALVE},
    {"FREEAIR_CAUTION_ROTATING", "freeair_caution", "Never run with the guard off; belts and flywheels seize hands.", FREEAIR_CAUTION_ROTATING},
    {"FREEAIR_CAUTION_VESSEL", "freeair_caution", "Vessels are judged by the authority's inspector, never by a calculation alone.", FREEAIR_CAUTION_VESSEL},
    {"FREEAIR_CAUTION_HOT", "freeair_caution", "Discharge parts burn; let them cool.", FREEAIR_CAUTION_HOT},
    {"FREEAIR_CAUTION_CAPACITOR", "freeair_caution", "A capacitor stays charged after the power is off.", FREEAIR_CAUTION_CAPACITOR},
    {"FREEAIR_CAUTION_LIVE", "freeair_caution", "Live electrical work is for qualified people under local rules.", FREEAIR_CAUTION_LIVE},
    {"FREEAIR_CAUTION_OIL_MIST", "freeair_caution", "Oil mist and hot carbon can ignite at high discharge temperature.", FREEAIR_CAUTION_OIL_MIST},
    {"FREEAIR_CAUTION_LIFTING", "freeair_caution", "Heads and motors are heavy; lift with help or tackle.", FREEAIR_CAUTION_LIFTING},
    {"FREEAIR_CAUTION_PROTECTION", "freeair_caution", "Wear hearing, eye, hand and foot protection.", FREEAIR_CAUTION_PROTECTION},
    {"FREEAIR_CAUTION_BREATHING", "freeair_caution", "Breathing air is governed by its own rules.", FREEAIR_CAUTION_BREATHING},
    {"FREEAIR_CAUTION_BLOWING", "freeair_caution", "Blow guns and hoses injure; limit their pressure as local rules say.", FREEAIR_CAUTION_BLOWING},
    {"FREEAIR_VERDICT_CANNOT_TELL", "freeair_verdict", "Neither conformance nor non-conformance is sure enough.", FREEAIR_VERDICT_CANNOT_TELL},
    {"FREEAIR_VERDICT_MEETS", "freeair_verdict", "Conformance is sure enough.", FREEAIR_VERDICT_MEETS},
    {"FREEAIR_VERDICT_FAILS", "freeair_verdict", "Non-conformance is sure enough.", FREEAIR_VERDICT_FAILS},
    {"FREEAIR_TYPE_DOUBLE", "freeair_type", "double", FREEAIR_TYPE_DOUBLE},
    {"FREEAIR_TYPE_INT32", "freeair_type", "int32_t", FREEAIR_TYPE_INT32},
    {"FREEAIR_TYPE_UINT32", "freeair_type", "uint32_t", FREEAIR_TYPE_UINT32},
    {"FREEAIR_TYPE_SIZE", "freeair_type", "size_t, also ptrdiff_t", FREEAIR_TYPE_SIZE},
    {"FREEAIR_TYPE_TEXT", "freeair_type", "const char *, a string that ends with a zero byte", FREEAIR_TYPE_TEXT},
    {"FREEAIR_TYPE_STRUCTURE", "freeair_type", "a structure, passed by pointer", FREEAIR_TYPE_STRUCTURE},
    {"FREEAIR_PARAMETER_OUTPUT", "freeair_parameter_flag", "Written by the call.", FREEAIR_PARAMETER_OUTPUT},
    {"FREEAIR_PARAMETER_ARRAY", "freeair_parameter_flag", "Points to as many elements as another parameter says.", FREEAIR_PARAMETER_ARRAY},
    {"FREEAIR_PARAMETER_OPTIONAL", "freeair_parameter_flag", "NaN stands for \"not given\"; fallback says what is then used.", FREEAIR_PARAMETER_OPTIONAL},
    {"FREEAIR_PARAMETER_LOWER_CLOSED", "freeair_parameter_flag", "The lower end belongs to the range.", FREEAIR_PARAMETER_LOWER_CLOSED},
    {"FREEAIR_PARAMETER_UPPER_CLOSED", "freeair_parameter_flag", "The upper end belongs to the range.", FREEAIR_PARAMETER_UPPER_CLOSED},
};

const size_t freeair__n_constants = sizeof freeair__constants / sizeof freeair__constants[0];

const uint16_t freeair__functions_by_name[] = {13, 10, 12, 9, 11, 7, 5, 6, 4, 8, 2, 3, 1, 0};

const uint16_t freeair__constants_by_name[] = {29, 28, 23, 17, 22, 16, 26, 24, 25, 27, 19, 20, 18, 21, 12, 14, 7, 13, 9, 8, 6, 10, 15, 11, 0, 40, 42, 41, 39, 43, 33, 34, 36, 38, 37, 35, 30, 32, 31, 1, 3, 5, 2, 4};
