/* SPDX-License-Identifier: MIT */
#include <freeair/reference.h>
#include <freeair/status.h>

#include "internal/array.h"
#include "internal/check.h"
#include "internal/saturation.h"

static const double gas_constant_dry = 8.314462618 / 0.02896546;
static const double gas_constant_vapour = 8.314462618 / 0.01801528;

#define ATMOSPHERE 101325.0
#define PSI (4.4482216152605 / 0.00064516)
#define DEGREES_F(t) (((t) + 459.67) / 1.8)
#define PREFIX "FREEAIR_REFERENCE_"

static const struct {
  int32_t state;
  double p_pa;
  double t_k;
  double relative_humidity;
  const char *name;
  const char *alias;
  const char *text;
} table[] = {
    {FREEAIR_REFERENCE_ISO_1217, 1e5, 293.15, 0.0, PREFIX "ISO_1217", "",
     "1 bar, 20 degC, dry (ISO 1217, standard inlet of displacement compressors)"},
    {FREEAIR_REFERENCE_ISO_8778, 1e5, 293.15, 0.65, PREFIX "ISO_8778", "ANR",
     "1 bar, 20 degC, 65 % relative humidity (ISO 8778, standard reference atmosphere, ANR)"},
    {FREEAIR_REFERENCE_DIN_1343, ATMOSPHERE, 273.15, 0.0, PREFIX "DIN_1343", "NORMAL",
     "1.01325 bar, 0 degC, dry (DIN 1343, normal state)"},
    {FREEAIR_REFERENCE_ISO_13443, ATMOSPHERE, 288.15, 0.0, PREFIX "ISO_13443", "",
     "1.01325 bar, 15 degC, dry (ISO 13443, standard state of the gas trade)"},
    {FREEAIR_REFERENCE_ISO_2533, ATMOSPHERE, 288.15, 0.0, PREFIX "ISO_2533", "ICAO;ISA",
     "1.01325 bar, 15 degC, dry (ISO 2533, standard atmosphere at sea level)"},
    {FREEAIR_REFERENCE_SCFM_60F, ATMOSPHERE, DEGREES_F(60.0), 0.0, PREFIX "SCFM_60F", "",
     "14.696 psia, 60 degF, dry (standard cubic foot of the gas trade)"},
    {FREEAIR_REFERENCE_SCFM_68F, 14.5 * PSI, 293.15, 0.0, PREFIX "SCFM_68F", "",
     "14.5 psia, 68 degF, dry (standard cubic foot of the compressor trade)"},
    {FREEAIR_REFERENCE_SCFM_68F_36RH, 14.7 * PSI, 293.15, 0.36, PREFIX "SCFM_68F_36RH", "",
     "14.7 psia, 68 degF, 36 % relative humidity (standard air of older test codes)"},
    {FREEAIR_REFERENCE_SCFM_70F, ATMOSPHERE, DEGREES_F(70.0), 0.0, PREFIX "SCFM_70F", "",
     "14.696 psia, 70 degF, dry (standard cubic foot of fans and flow meters)"},
    {FREEAIR_REFERENCE_NTP, ATMOSPHERE, 293.15, 0.0, PREFIX "NTP", "",
     "1.01325 bar, 20 degC, dry (normal temperature and pressure)"},
    {FREEAIR_REFERENCE_STP, 1e5, 273.15, 0.0, PREFIX "STP", "",
     "1 bar, 0 degC, dry (standard temperature and pressure since 1982)"},
};

/* Row of a state; the number of rows when there is none. */
static size_t row_of(int32_t state)
{
  size_t i = 0;
  while (i < FREEAIR__COUNT(table) && table[i].state != state) i++;
  return i;
}

int32_t freeair_reference_conditions(int32_t state, double *p_pa, double *t_k, double *relative_humidity)
{
  freeair__set_nan(p_pa);
  freeair__set_nan(t_k);
  freeair__set_nan(relative_humidity);
  if (p_pa == NULL || t_k == NULL || relative_humidity == NULL) return FREEAIR_ERR_NULL;
  size_t i = row_of(state);
  if (i == FREEAIR__COUNT(table)) return FREEAIR_ERR_NOT_FOUND;
  *p_pa = table[i].p_pa;
  *t_k = table[i].t_k;
  *relative_humidity = table[i].relative_humidity;
  return FREEAIR_OK;
}

const char *freeair_reference_name(int32_t state)
{
  size_t i = row_of(state);
  return i < FREEAIR__COUNT(table) ? table[i].name : "";
}

const char *freeair_reference_text(int32_t state)
{
  size_t i = row_of(state);
  return i < FREEAIR__COUNT(table) ? table[i].text : "";
}

/* Capital letters, with blanks and hyphens as underscores. */
static char plain(char c)
{
  if (c >= 'a' && c <= 'z') return (char)(c - 'a' + 'A');
  return c == ' ' || c == '-' ? '_' : c;
}

/* Whether a list of alternatives, separated by semicolons, holds the name. */
static int listed(const char *list, const char *name)
{
  while (*list != '\0') {
    size_t n = 0;
    while (list[n] != '\0' && list[n] != ';' && list[n] == plain(name[n])) n++;
    if ((list[n] == '\0' || list[n] == ';') && name[n] == '\0') return 1;
    list += n;
    while (*list != '\0' && *list != ';') list++;
    if (*list == ';') list++;
  }
  return 0;
}

int32_t freeair_reference_find(const char *name, int32_t *state)
{
  if (state != NULL) *state = 0;
  if (name == NULL || state == NULL) return FREEAIR_ERR_NULL;
  for (size_t i = 0; i < FREEAIR__COUNT(table); i++)
    if (listed(table[i].name, name) || listed(table[i].name + sizeof PREFIX - 1, name) ||
        listed(table[i].alias, name)) {
      *state = table[i].state;
      return FREEAIR_OK;
    }
  return FREEAIR_ERR_NOT_FOUND;
}

static int32_t check(double p_pa, double t_k, double relative_humidity)
{
  int ok = freeair__closed(p_pa, 1000.0, 1e8) && freeair__closed(t_k, 223.15, 473.15) &&
           freeair__closed(relative_humidity, 0.0, 1.0);
  return ok ? FREEAIR_OK : FREEAIR_ERR_DOMAIN;
}

/* Densities of dry air and of vapour, each alone in the volume. */
static int32_t densities(double p_pa, double t_k, double relative_humidity, double *dry, double *vapour)
{
  double e = relative_humidity > 0.0 ? relative_humidity * freeair__saturation_pressure_pa(t_k) : 0.0;
  if (!(e < p_pa)) return FREEAIR_ERR_NO_SOLUTION;
  *dry = (p_pa - e) / (gas_constant_dry * t_k);
  *vapour = e / (gas_constant_vapour * t_k);
  return FREEAIR_OK;
}

int32_t freeair_reference_density(double p_pa, double t_k, double relative_humidity, double *rho_kg_m3)
{
  if (rho_kg_m3 == NULL) return FREEAIR_ERR_NULL;
  *rho_kg_m3 = NAN;
  int32_t status = check(p_pa, t_k, relative_humidity);
  if (status < 0) return status;
  double dry;
  double vapour;
  status = densities(p_pa, t_k, relative_humidity, &dry, &vapour);
  if (status < 0) return status;
  *rho_kg_m3 = dry + vapour;
  return FREEAIR_OK;
}

int32_t freeair_reference_flow_convert(double q1_m3_s, double p1_pa, double t1_k, double relative_humidity1,
                                       double p2_pa, double t2_k, double relative_humidity2, double *q2_m3_s)
{
  if (q2_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q2_m3_s = NAN;
  if (!freeair__closed(q1_m3_s, 0.0, 1e6) || check(p1_pa, t1_k, relative_humidity1) < 0 ||
      check(p2_pa, t2_k, relative_humidity2) < 0)
    return FREEAIR_ERR_DOMAIN;
  double dry1;
  double dry2;
  double vapour;
  int32_t status = densities(p1_pa, t1_k, relative_humidity1, &dry1, &vapour);
  if (status < 0) return status;
  status = densities(p2_pa, t2_k, relative_humidity2, &dry2, &vapour);
  if (status < 0) return status;
  *q2_m3_s = q1_m3_s * dry1 / dry2;
  return FREEAIR_OK;
}

int32_t freeair_reference_flow_between_states(double q1_m3_s, int32_t from_state, int32_t to_state, double *q2_m3_s)
{
  if (q2_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q2_m3_s = NAN;
  size_t i = row_of(from_state);
  size_t k = row_of(to_state);
  if (i == FREEAIR__COUNT(table) || k == FREEAIR__COUNT(table)) return FREEAIR_ERR_NOT_FOUND;
  return freeair_reference_flow_convert(q1_m3_s, table[i].p_pa, table[i].t_k, table[i].relative_humidity,
                                        table[k].p_pa, table[k].t_k, table[k].relative_humidity, q2_m3_s);
}

int32_t freeair_reference_flow_to_state(double q1_m3_s, double p1_pa, double t1_k, double relative_humidity1,
                                        int32_t state, double *q2_m3_s)
{
  if (q2_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q2_m3_s = NAN;
  size_t i = row_of(state);
  if (i == FREEAIR__COUNT(table)) return FREEAIR_ERR_NOT_FOUND;
  return freeair_reference_flow_convert(q1_m3_s, p1_pa, t1_k, relative_humidity1, table[i].p_pa, table[i].t_k,
                                        table[i].relative_humidity, q2_m3_s);
}

int32_t freeair_reference_flow_from_state(double q1_m3_s, int32_t state, double p2_pa, double t2_k,
                                          double relative_humidity2, double *q2_m3_s)
{
  if (q2_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q2_m3_s = NAN;
  size_t i = row_of(state);
  if (i == FREEAIR__COUNT(table)) return FREEAIR_ERR_NOT_FOUND;
  return freeair_reference_flow_convert(q1_m3_s, table[i].p_pa, table[i].t_k, table[i].relative_humidity, p2_pa,
                                        t2_k, relative_humidity2, q2_m3_s);
}

int32_t freeair_reference_mass_flow_from_volume_flow(double q_m3_s, double p_pa, double t_k,
                                                     double relative_humidity, double *mass_kg_s, double *dry_kg_s)
{
  freeair__set_nan(mass_kg_s);
  freeair__set_nan(dry_kg_s);
  if (mass_kg_s == NULL || dry_kg_s == NULL) return FREEAIR_ERR_NULL;
  if (!freeair__closed(q_m3_s, 0.0, 1e6) || check(p_pa, t_k, relative_humidity) < 0) return FREEAIR_ERR_DOMAIN;
  double dry;
  double vapour;
  int32_t status = densities(p_pa, t_k, relative_humidity, &dry, &vapour);
  if (status < 0) return status;
  *mass_kg_s = q_m3_s * (dry + vapour);
  *dry_kg_s = q_m3_s * dry;
  return FREEAIR_OK;
}

int32_t freeair_reference_volume_flow_from_mass_flow(double mass_kg_s, double p_pa, double t_k,
                                                     double relative_humidity, double *q_m3_s)
{
  if (q_m3_s == NULL) return FREEAIR_ERR_NULL;
  *q_m3_s = NAN;
  if (!freeair__closed(mass_kg_s, 0.0, 1e6) || check(p_pa, t_k, relative_humidity) < 0) return FREEAIR_ERR_DOMAIN;
  double dry;
  double vapour;
  int32_t status = densities(p_pa, t_k, relative_humidity, &dry, &vapour);
  if (status < 0) return status;
  *q_m3_s = mass_kg_s / (dry + vapour);
  return FREEAIR_OK;
}
