/* SPDX-License-Identifier: MIT */
#include <freeair/catalogue.h>
#include <freeair/describe.h>
#include <freeair/status.h>
#include <freeair/units.h>

#include "../suite.h"

#include <check.h>
#include <fenv.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static double si_of(double value, const char *symbol)
{
  double si;
  int32_t status = freeair_units_si_from(value, symbol, &si);
  ck_assert_msg(status == FREEAIR_OK, "%s: %s", symbol, freeair_status_name(status));
  return si;
}

static double convert(double value, const char *from, const char *to)
{
  double converted;
  int32_t status = freeair_units_convert(value, from, to, &converted);
  ck_assert_msg(status == FREEAIR_OK, "%s to %s: %s", from, to, freeair_status_name(status));
  return converted;
}

static int32_t status_of(const char *symbol)
{
  double si = 1.0;
  int32_t status = freeair_units_si_from(1.0, symbol, &si);
  ck_assert(status >= 0 || isnan(si));
  return status;
}

static int close_to(double a, double b, double relative)
{
  return fabs(a - b) <= relative * fmax(fabs(a), fabs(b));
}

/* Every row of the table is complete, and goes to SI and back. */
START_TEST(every_unit_goes_round)
{
  const double values[] = {1.0, 3.7, 125.0, 0.0123456789, 300.0};
  ck_assert_uint_gt(freeair_units_count(), 250);
  for (size_t i = 0; i < freeair_units_count(); i++) {
    const char *symbol = freeair_units_symbol_at(i);
    const char *base = freeair_units_si_symbol_at(i);
    ck_assert_uint_gt(strlen(symbol), 0);
    ck_assert_uint_gt(strlen(freeair_units_name_at(i)), 0);
    for (const char *s = symbol; *s != '\0'; s++) ck_assert_int_lt((unsigned char)*s, 128);
    ck_assert_str_eq(freeair_units_si_symbol(base), base);
    for (size_t k = 0; k < sizeof values / sizeof values[0]; k++) {
      int32_t gauge;
      double there;
      double back;
      ck_assert_int_eq(freeair_units_is_gauge(symbol, &gauge), FREEAIR_OK);
      if (gauge)
        there = convert(values[k], symbol, "Pag"), back = convert(there, "Pag", symbol);
      else
        there = convert(values[k], symbol, base), back = convert(there, base, symbol);
      ck_assert_msg(close_to(back, values[k], strcmp(base, "K") == 0 ? 1e-11 : 5e-16), "%s: %.17g became %.17g", symbol,
                    values[k], back);
      ck_assert_int_eq(freeair_units_si_from(values[k], symbol, &there), FREEAIR_OK);
      ck_assert_int_eq(freeair_units_from_si(there, symbol, &back), FREEAIR_OK);
      ck_assert_msg(close_to(back, values[k], strcmp(base, "K") == 0 ? 1e-11 : 5e-16), "%s: %.17g became %.17g", symbol,
                    values[k], back);
    }
    ck_assert_double_eq(convert(7.7, symbol, symbol), 7.7);
  }
  ck_assert_str_eq(freeair_units_symbol_at(freeair_units_count()), "");
  ck_assert_str_eq(freeair_units_name_at(SIZE_MAX), "");
  ck_assert_str_eq(freeair_units_si_symbol_at(freeair_units_count()), "");
}
END_TEST

/* Whatever unit a parameter or field of the library has, this topic knows it, at size one. */
static void knows(const freeair_parameter *p, const char *where)
{
  if (p->unit[0] == '\0' || strcmp(p->unit, "any") == 0) return;
  ck_assert_msg(strcmp(freeair_units_si_symbol(p->unit), p->unit) == 0, "%s: %s is in '%s'", where, p->name, p->unit);
  ck_assert_double_eq(si_of(1.0, p->unit), 1.0);
}

START_TEST(every_unit_of_the_library_is_known)
{
  for (size_t i = 0; i < freeair_function_count(); i++) {
    const freeair_function *f = freeair_function_at(i);
    for (size_t k = 0; k < freeair_function_parameter_count(f); k++)
      knows(freeair_function_parameter(f, k), freeair_function_name(f));
  }
  for (size_t i = 0; i < freeair_structure_count(); i++) {
    const freeair_structure *s = freeair_structure_at(i);
    for (size_t k = 0; k < freeair_structure_field_count(s); k++)
      knows(freeair_structure_field(s, k), freeair_structure_name(s));
  }
}
END_TEST

/* The suffixes of names and their units: the table of the contract. */
START_TEST(every_coherent_unit_has_size_one)
{
  static const char *const coherent[] = {
      "1",     "Pa",        "K",     "m3",   "m3/s", "kg/s",  "kg",     "kg/m3",     "kg/m",  "m",         "m2",
      "m/s",   "s",         "W",     "J",    "J/kg", "N",     "N/m",    "J/(kg K)",  "J/m3",  "N m",       "V",
      "A",     "VA",        "F",     "ohm",  "Hz",   "rev/s", "ohm m",  "rad",       "rad/s", "W/(m K)",   "W/K",
      "Pa/s",  "Pa s",      "m2/s",  "1/K",  "1/s",  "K/s",   "m3/kg",  "m3/(s Pa)", "J/mol", "kg/(s Pa)", "mol/m3",
      "ohm/m", "K/Pa",      "1/Pa",  "m3/mol", "m6/mol2", "1/J",   "kg/J",   "1/m3"};
  for (size_t i = 0; i < sizeof coherent / sizeof coherent[0]; i++) {
    ck_assert_str_eq(freeair_units_si_symbol(coherent[i]), coherent[i]);
    ck_assert_double_eq(si_of(1.0, coherent[i]), 1.0);
  }
}
END_TEST

/* No unit without a check value from outside: each symbol stands in the data. */
START_TEST(every_size_is_checked)
{
  char path[4096];
  const char *folder = getenv("FREEAIR_TEST_DATA");
  snprintf(path, sizeof path, "%s/units.tsv", folder != NULL ? folder : "tests/data");
  FILE *file = fopen(path, "r");
  ck_assert_msg(file != NULL, "cannot open %s", path);
  static char data[200000];
  size_t n = fread(data, 1, sizeof data - 1, file);
  ck_assert(n > 0 && n < sizeof data - 1);
  ck_assert_int_eq(fclose(file), 0);
  for (size_t i = 0; i < freeair_units_count(); i++) {
    const char *symbol = freeair_units_symbol_at(i);
    if (strcmp(symbol, freeair_units_si_symbol_at(i)) == 0) continue; /* coherent: size one */
    char quoted[64];
    snprintf(quoted, sizeof quoted, "\"%s\"", symbol);
    ck_assert_msg(strstr(data, quoted) != NULL, "%s has no check value in %s", symbol, path);
  }
}
END_TEST

static int is_a_symbol(const char *text)
{
  for (size_t i = 0; i < freeair_units_count(); i++)
    if (strcmp(freeair_units_symbol_at(i), text) == 0) return 1;
  return 0;
}

/* A symbol in capitals or in small letters is another symbol, such as MW for mW,
 * or it is refused, or it means the same. */
START_TEST(case_never_changes_the_size)
{
  for (size_t i = 0; i < freeair_units_count(); i++) {
    const char *symbol = freeair_units_symbol_at(i);
    for (int upper = 0; upper < 2; upper++) {
      char other[64] = "";
      for (size_t k = 0; symbol[k] != '\0'; k++) {
        char c = symbol[k];
        if (upper && c >= 'a' && c <= 'z') c = (char)(c - 'a' + 'A');
        if (!upper && c >= 'A' && c <= 'Z') c = (char)(c - 'A' + 'a');
        other[k] = c;
      }
      if (is_a_symbol(other)) continue;
      double same;
      double difference;
      int32_t status = freeair_units_convert_difference(1.0, other, symbol, &difference);
      if (status == FREEAIR_ERR_NOT_FOUND || status == FREEAIR_ERR_UNSUPPORTED) continue;
      ck_assert_msg(status == FREEAIR_OK, "%s and %s are different kinds", symbol, other);
      ck_assert_int_eq(freeair_units_convert_difference(1.0, symbol, symbol, &same), FREEAIR_OK);
      ck_assert_msg(difference == same, "%s and %s differ in size", symbol, other);
    }
  }
  static const char *const refused[] = {"mpa", "MPA", "mw", "Mw", "mWh", "mva", "MV", "MA", "Ma", "mj", "Ms", "MG",
                                        "MF",  "mF",  "M",  "G",  "S",   "H",   "c",  "k",  "P",  "B",  "mohM"};
  for (size_t i = 0; i < sizeof refused / sizeof refused[0]; i++)
    ck_assert_msg(status_of(refused[i]) == FREEAIR_ERR_NOT_FOUND, "%s is accepted", refused[i]);
}
END_TEST

/* Prefixes mean what the SI says. */
START_TEST(prefixes)
{
  static const struct {
    const char *prefix;
    double factor;
    const char *units[20];
  } table[] = {{"k", 1e3, {"Pa", "W", "J", "N", "V", "A", "VA", "ohm", "Hz", "m", "g", "Wh", "J/kg", "W/K", "N m",
                           "Pa/s", "J/mol", "J/(kg K)"}},
               {"M", 1e6, {"Pa", "W", "J", "VA", "ohm", "Hz", "Wh", "J/kg"}},
               {"m", 1e-3, {"Pa", "W", "J", "N", "V", "A", "ohm", "m", "g", "L", "s", "bar", "Pa s", "W/(m K)"}},
               {"u", 1e-6, {"F", "A", "ohm", "m", "s", "bar", "Pa s"}},
               {"n", 1e-9, {"F"}},
               {"p", 1e-12, {"F"}},
               {"c", 1e-2, {"m"}},
               {"h", 1e2, {"Pa", "L"}}};
  for (size_t i = 0; i < sizeof table / sizeof table[0]; i++)
    for (size_t k = 0; table[i].units[k] != NULL; k++) {
      char prefixed[32];
      strcat(strcpy(prefixed, table[i].prefix), table[i].units[k]);
      ck_assert_msg(close_to(si_of(1.0, prefixed), table[i].factor * si_of(1.0, table[i].units[k]), 1e-15), "%s",
                    prefixed);
    }
}
END_TEST

/* Spellings that people use, and what they mean. */
START_TEST(spellings)
{
  static const char *const same[][2] = {
      {"uF", "µF;μF;MFD;mfd;ufd;mike;microfarads"},
      {"degC", "°C;º C;℃;C;deg C;Celsius"},
      {"degF", "°F;℉;deg. F;F;Fahrenheit"},
      {"degR", "°R;Rankine;R"},
      {"K", "Kelvin"},
      {"m3", "m³;m^3;M3;cu. m"},
      {"m3/min", "m³/min;M3/MIN;m^3/min"},
      {"mm2", "mm²;sq. mm"},
      {"kohm", "kΩ;kilohm"},
      {"Mohm", "MΩ;megohm"},
      {"ohm m", "Ω·m;ohm*m"},
      {"psi", "PSI;Psi;lbf/in²;psi a;PSIA;psi(a);lb/sq. in."},
      {"psig", "PSIG;psi (g);psi g;Psi gauge"},
      {"barg", "Bar(g);bar g;bar (G);bar(ü);bar(e)"},
      {"bar", "BAR;bara;bar (a)"},
      {"mbar", "mBar;mb"},
      {"kPa", "KPA;Kpa;kpa"},
      {"kgf/cm2", "kgf/cm²;at;kg/cm2;kp/cm²"},
      {"inHg", "in. Hg;inches Hg;\"Hg;INHG"},
      {"inH2O", "in w.c.;\" WC;inH₂O;in. W.G.;inches of water"},
      {"cfm", "CFM;ft³/min;cu. ft./min;cu ft/min"},
      {"acfm", "ACFM"},
      {"icfm", "ICFM;cfm FAD"},
      {"L/min", "l/min;LPM;lpm;dm³/min"},
      {"L/s", "l/sec;l/s"},
      {"mL", "cc;cm³;ml"},
      {"gal", "Gal;gallons;US gal"},
      {"gal(UK)", "imp. gal;UK gal"},
      {"in", "\";″;IN;inches"},
      {"ft", "';′;feet"},
      {"mil", "thou;thousandths;mils"},
      {"hp", "HP;bhp"},
      {"hp(M)", "PS;metric hp"},
      {"kW", "kw;KW"},
      {"kWh", "kWhr;KWH;kW·h"},
      {"Btu/h", "BTU/hr;btuh"},
      {"N m", "N·m;Nm;N-m;N*m"},
      {"lbf ft", "lbf·ft;lb-ft;ft-lbs"},
      {"lbf in", "lbf-in;in-lbs"},
      {"ft lbf", "ft-lb;ft·lbf"},
      {"kgf m", "kgf.m;kgm"},
      {"lb", "lbs;lbm;LB"},
      {"A", "amps;a"},
      {"V", "volts;VAC"},
      {"Hz", "hz;HZ"},
      {"rpm", "RPM;r/min;rev/min"},
      {"h", "hrs;hr;hours"},
      {"s", "sec;seconds"},
      {"min", "Minutes;mins"},
      {"kW/(m3/min)", "kW/(m³/min);kW / ( m³ / min );kW/m3/min"},
      {"kW/100cfm", "kW/100 cfm;kW / (100 cfm)"},
      {"J/(kg K)", "J/(kg·K);J/(kg °C)"},
      {"kJ/(kg K)", "kJ/kg·°C;kJ/kgK"},
      {"Btu/(lb degF)", "Btu/(lb·°F);BTU/(lbm·°F)"},
      {"mm2/s", "cSt"},
      {"mPa s", "cP;mPa·s"},
      {"lb/ft3", "lb/ft³;lbm/ft3"},
      {"L/(s bar)", "dm³/(s·bar)"},
      {"%", "% RH;percent"},
  };
  for (size_t i = 0; i < sizeof same / sizeof same[0]; i++)
    for (const char *s = same[i][1]; *s != '\0'; s += strspn(s, ";")) {
      char spelling[64] = "  ";
      size_t length = strcspn(s, ";");
      memcpy(spelling + 2, s, length);
      strcpy(spelling + 2 + length, " ");
      ck_assert_msg(convert(125.0, spelling, same[i][0]) == 125.0, "%s is not %s", spelling, same[i][0]);
      s += length;
    }
  /* a speed as European nameplates give it, though alone it is a rate */
  ck_assert_double_eq(convert(1450.0, "min⁻¹", "rpm"), 1450.0);
  ck_assert_double_eq(convert(1450.0, "1/min", "rpm"), 1450.0);
  ck_assert_str_eq(freeair_units_si_symbol("1/min"), "1/s");
}
END_TEST

/* A symbol with two readings takes the one that the other unit calls for. */
START_TEST(two_readings)
{
  ck_assert_str_eq(freeair_units_si_symbol("F"), "F");
  ck_assert_double_eq(convert(68.0, "F", "K"), 293.15);
  ck_assert_double_eq(convert(68.0, "F", "C"), 20.0);
  ck_assert_double_eq(convert(1.0, "F", "uF"), 1e6);
  ck_assert_double_eq(convert(45.0, "F", "F"), 45.0);
  ck_assert_str_eq(freeair_units_si_symbol("lb"), "kg");
  ck_assert(close_to(convert(1.0, "lb", "lbf"), 1.0, 1e-15));
  ck_assert(close_to(convert(1.0, "kg", "N"), 9.80665, 1e-15));
  ck_assert(close_to(convert(128.0, "oz", "gal"), 1.0, 1e-15));
  ck_assert(close_to(convert(16.0, "oz", "lb"), 1.0, 1e-15));
  ck_assert(close_to(convert(1.0, "ft lb", "N m"), convert(1.0, "ft lb", "J"), 1e-15));
  ck_assert_str_eq(freeair_units_si_symbol("lb ft"), "N m");
  ck_assert_str_eq(freeair_units_si_symbol("ft lbf"), "J");
  double converted;
  ck_assert_int_eq(freeair_units_convert(1.0, "N m", "kWh", &converted), FREEAIR_OK);
  ck_assert_int_eq(freeair_units_convert(1.0, "lbf", "kg", &converted), FREEAIR_OK); /* a force, read in kg */
  ck_assert_int_eq(freeair_units_convert(1.0, "uF", "degC", &converted), FREEAIR_ERR_DIMENSION);
  ck_assert(isnan(converted));
}
END_TEST

START_TEST(gauge_needs_a_barometer)
{
  static const char *const gauges[] = {"psig", "barg", "kPag", "MPag", "mbarg", "kgf/cm2g", "inHg vac", "Pag"};
  static const char *const others[] = {"psi", "bar", "kPa", "MPa", "mbar", "kgf/cm2", "inHg", "Pa"};
  for (size_t i = 0; i < sizeof gauges / sizeof gauges[0]; i++) {
    int32_t gauge = -1;
    double value;
    ck_assert_int_eq(freeair_units_is_gauge(gauges[i], &gauge), FREEAIR_OK);
    ck_assert_int_eq(gauge, 1);
    ck_assert_int_eq(freeair_units_is_gauge(others[i], &gauge), FREEAIR_OK);
    ck_assert_int_eq(gauge, 0);
    for (size_t k = 0; k < sizeof others / sizeof others[0]; k++) {
      ck_assert_int_eq(freeair_units_convert(1.0, gauges[i], others[k], &value), FREEAIR_ERR_DIMENSION);
      ck_assert_int_eq(freeair_units_convert(1.0, others[k], gauges[i], &value), FREEAIR_ERR_DIMENSION);
      ck_assert_int_eq(freeair_units_convert(1.0, gauges[i], gauges[k], &value), FREEAIR_OK);
    }
    ck_assert_int_eq(freeair_units_convert_difference(1.0, gauges[i], others[i], &value), FREEAIR_OK);
    ck_assert_double_eq(value, strcmp(gauges[i], "inHg vac") == 0 ? -1.0 : 1.0);
  }
  for (double gauge = -80e3; gauge < 2e6; gauge += 17e3) {
    double p;
    double back;
    ck_assert_int_eq(freeair_units_absolute_from_gauge(gauge, 84556.0, &p), FREEAIR_OK);
    ck_assert_int_eq(freeair_units_gauge_from_absolute(p, 84556.0, &back), FREEAIR_OK);
    ck_assert_double_eq_tol(back, gauge, 1e-9);
  }
  double p = 1.0;
  ck_assert_int_eq(freeair_units_absolute_from_gauge(-84557.0, 84556.0, &p), FREEAIR_ERR_NO_SOLUTION);
  ck_assert(isnan(p));
}
END_TEST

/* A difference is the difference of readings. */
START_TEST(differences)
{
  static const char *const scales[] = {"K", "degC", "degF", "degR"};
  for (size_t i = 0; i < 4; i++)
    for (size_t k = 0; k < 4; k++) {
      double d;
      ck_assert_int_eq(freeair_units_convert_difference(30.0, scales[i], scales[k], &d), FREEAIR_OK);
      ck_assert_double_eq_tol(d, convert(530.0, scales[i], scales[k]) - convert(500.0, scales[i], scales[k]), 1e-11);
    }
  ck_assert_double_eq(convert(0.0, "degC", "degF"), 32.0);
  ck_assert_double_eq(convert(32.0, "degF", "degC"), 0.0);
  ck_assert_double_eq(convert(-459.67, "degF", "K"), 0.0);
  ck_assert_double_eq(convert(-273.15, "degC", "degR"), 0.0);
  ck_assert_double_eq(convert(0.0, "K", "degC"), -273.15);
}
END_TEST

static void refuse(const char *symbol, int32_t status)
{
  double out = 1.0;
  int32_t gauge = 7;
  feclearexcept(FE_ALL_EXCEPT);
  ck_assert_msg(freeair_units_si_from(1.0, symbol, &out) == status, "'%s'", symbol);
  ck_assert(isnan(out));
  out = 1.0;
  ck_assert_int_eq(freeair_units_from_si(1.0, symbol, &out), status);
  ck_assert(isnan(out));
  out = 1.0;
  ck_assert_int_eq(freeair_units_convert(1.0, symbol, "m", &out), status);
  ck_assert(isnan(out));
  ck_assert_int_eq(freeair_units_convert(1.0, "m", symbol, &out), status);
  ck_assert_int_eq(freeair_units_convert_difference(1.0, symbol, "m", &out), status);
  ck_assert_int_eq(freeair_units_is_gauge(symbol, &gauge), status);
  ck_assert_int_eq(gauge, 0);
  ck_assert_str_eq(freeair_units_si_symbol(symbol), "");
  ck_assert_int_eq(fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW), 0);
}

START_TEST(what_is_no_unit_is_refused)
{
  static const char *const none[] = {
      "",    " ",   ";",       "psi;bar", "ps", "psii", "\xC2", "\xFF\xFE", "/",      "()",
      "^",   "1/2", "psi psi", "bar bar", "cfm;", "p si", "m3\n/s", "\xE2\x84", "Nm3/h/s",
      "degree Celsius and then a great deal of other text that no unit has"};
  for (size_t i = 0; i < sizeof none / sizeof none[0]; i++)
    refuse(none[i], FREEAIR_ERR_NOT_FOUND);
  static const char *const referred[] = {"scfm", "SCFM", "scfh", "Nm3/h", "Nm³/h", "Nl/min", "NL/min", "Sm3/h",
                                         "slpm", "SLPM", "sccm", "m3(n)/h", "m³ (n)/h", "scf", "L/min (ANR)"};
  for (size_t i = 0; i < sizeof referred / sizeof referred[0]; i++) refuse(referred[i], FREEAIR_ERR_UNSUPPORTED);
  char longest[2001];
  memset(longest, 'm', sizeof longest - 1);
  longest[sizeof longest - 1] = '\0';
  refuse(longest, FREEAIR_ERR_NOT_FOUND);
  ck_assert_str_eq(freeair_units_si_symbol(NULL), "");
}
END_TEST

/* Bytes at random never crash, and what they give is one of the documented answers. */
START_TEST(random_bytes)
{
  static const char pieces[][8] = {"psi", "m",    "3",    "/", "(", ")", " ", "\xC2",
                                   "\xB0", "\xE2", "\x84", "k", "g", "s", "^", "bar"};
  uint32_t state = 2463534242u;
  for (int n = 0; n < 20000; n++) {
    char symbol[160] = "";
    state ^= state << 13, state ^= state >> 17, state ^= state << 5;
    for (uint32_t bits = state, k = 0; k < 8; k++, bits >>= 4) strcat(symbol, pieces[bits & 15]);
    int32_t status = status_of(symbol);
    ck_assert(status == FREEAIR_OK || status == FREEAIR_ERR_NOT_FOUND || status == FREEAIR_ERR_UNSUPPORTED);
  }
}
END_TEST

int main(void)
{
  TCase *all = tcase_create("all");
  tcase_add_test(all, every_unit_goes_round);
  tcase_add_test(all, every_unit_of_the_library_is_known);
  tcase_add_test(all, every_coherent_unit_has_size_one);
  tcase_add_test(all, every_size_is_checked);
  tcase_add_test(all, case_never_changes_the_size);
  tcase_add_test(all, prefixes);
  tcase_add_test(all, spellings);
  tcase_add_test(all, two_readings);
  tcase_add_test(all, gauge_needs_a_barometer);
  tcase_add_test(all, differences);
  tcase_add_test(all, what_is_no_unit_is_refused);
  tcase_add_test(all, random_bytes);
  return run_case("units", all);
}
