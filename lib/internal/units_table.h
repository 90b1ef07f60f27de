/* SPDX-License-Identifier: MIT */
/* The table of units of topic units, which alone includes it: the kinds of quantity, the sizes, the rows. */
#ifndef FREEAIR_INTERNAL_UNITS_TABLE_H
#define FREEAIR_INTERNAL_UNITS_TABLE_H

#include <math.h>
#include <stdint.h>

/* Exact by definition: yard and pound of 1959, standard gravity, International
 * Table calorie and Btu, gallon of 231 cubic inches (NIST SP 811, Appendix B;
 * NIST Handbook 44, Appendix C). */
#define LB 0.45359237
#define GN 9.80665
#define LBF 4.4482216152605 /* LB x GN, all digits */
#define INCH 0.0254
#define FOOT 0.3048
#define MILE 1609.344
#define INCH2 0.00064516
#define FOOT2 0.09290304
#define INCH3 1.6387064e-5
#define FOOT3 0.028316846592
#define GALLON 0.003785411784
#define GALLON_UK 0.00454609
#define BTU 1055.05585262
#define CAL 4.1868
#define HP 745.69987158227022 /* 550 ft lbf/s, all digits */
#define HP_METRIC 735.49875   /* 75 kgf m/s */
#define MMHG 133.322387415    /* mercury of 13595.1 kg/m3, standard gravity */
#define PI 3.14159265358979323846

#define KINDS(X)                                                                                          \
  X(ONE, "1") X(PRESSURE, "Pa") X(TEMPERATURE, "K") X(VOLUME, "m3") X(VOLUME_FLOW, "m3/s")                \
  X(MASS_FLOW, "kg/s") X(MASS, "kg") X(DENSITY, "kg/m3") X(LINEAR_DENSITY, "kg/m") X(LENGTH, "m")         \
  X(AREA, "m2") X(VELOCITY, "m/s") X(TIME, "s") X(POWER, "W") X(ENERGY, "J") X(SPECIFIC_ENERGY, "J/kg")   \
  X(SPECIFIC_HEAT, "J/(kg K)") X(ENERGY_DENSITY, "J/m3") X(FORCE, "N") X(STIFFNESS, "N/m")                \
  X(TORQUE, "N m") X(VOLTAGE, "V") X(CURRENT, "A") X(APPARENT_POWER, "VA") X(CAPACITANCE, "F")            \
  X(RESISTANCE, "ohm") X(RESISTIVITY, "ohm m") X(FREQUENCY, "Hz") X(SPEED, "rev/s") X(ANGLE, "rad")       \
  X(ANGULAR_VELOCITY, "rad/s") X(CONDUCTANCE, "W/K") X(CONDUCTIVITY, "W/(m K)") X(PRESSURE_SLOPE, "Pa/s") \
  X(VISCOSITY, "Pa s") X(KINEMATIC_VISCOSITY, "m2/s") X(SONIC_CONDUCTANCE, "m3/(s Pa)")                   \
  X(SPECIFIC_VOLUME, "m3/kg") X(MASS_CONDUCTANCE, "kg/(s Pa)") X(TEMPERATURE_COEFFICIENT, "1/K")          \
  X(RATE, "1/s") X(TEMPERATURE_SLOPE, "K/s") X(CONCENTRATION, "mol/m3") X(MOLAR_ENERGY, "J/mol")          \
  X(HEAT_CAPACITY, "J/K") X(LINEAR_RESISTANCE, "ohm/m") X(TEMPERATURE_BY_PRESSURE, "K/Pa")                \
  X(COMPRESSIBILITY, "1/Pa") X(MOLAR_VOLUME, "m3/mol") X(MOLAR_VOLUME_SQUARED, "m6/mol2")                 \
  X(ENERGY_PRICE, "1/J") X(EMISSION_FACTOR, "kg/J") X(NUMBER_DENSITY, "1/m3")

#define KIND_NAME(name, symbol) name,
#define KIND_SYMBOL(name, symbol) symbol,

enum kind { KINDS(KIND_NAME) KIND_COUNT };

static const char *const kind_symbol[KIND_COUNT] = {KINDS(KIND_SYMBOL)};

/* Where the zero of a unit lies. */
enum zero { TRUE_ZERO, BAROMETER, OWN_SCALE };

/* One unit a row. Its size in coherent SI is num / den; apart, they keep decimal
 * units correctly rounded. A temperature has its reading at 273.15 K and at
 * absolute zero as well. Aliases are separated by semicolons: the first list is
 * read as written, the second, in lower case, in any case. A symbol in several
 * rows has several readings, the first row its default. */
struct unit {
  const char *symbol;
  const char *name;
  const char *exact;
  const char *any_case;
  double num;
  double den;
  double ice;
  double lowest;
  uint8_t kind;
  uint8_t zero;
};

#define U(kind, symbol, num, den, name, exact, any_case) \
  {symbol, name, exact, any_case, num, den, 0.0, -INFINITY, kind, TRUE_ZERO},
#define G(symbol, num, den, name, exact, any_case) \
  {symbol, name, exact, any_case, num, den, 0.0, -INFINITY, PRESSURE, BAROMETER},
#define T(symbol, num, den, ice, lowest, zero, name, exact, any_case) \
  {symbol, name, exact, any_case, num, den, ice, lowest, TEMPERATURE, zero},

/* Any coherent SI unit, and kelvin. */
static const struct unit coherent[] = {
    U(ONE, "", 1, 1, "", "", "")
    T("K", 1, 1, 273.15, 0.0, TRUE_ZERO, "", "", "")
};

static const struct unit units[] = {
    U(ONE, "1", 1, 1, "one", "", "")
    U(ONE, "%", 1, 100, "percent", "", "%rh;% rh;percent;pct")
    U(ONE, "ppm", 1, 1e6, "part per million", "", "ppm")

    /* SP 811 B.8, pressure. Columns of liquid are the conventional ones: mercury
     * of 13595.1 kg/m3 (0 degC), water of 1000 kg/m3 (4 degC, rounded). */
    U(PRESSURE, "Pa", 1, 1, "pascal", "pa;N/m2", "")
    U(PRESSURE, "hPa", 100, 1, "hectopascal", "", "hpa")
    U(PRESSURE, "kPa", 1000, 1, "kilopascal", "kN/m2", "kpa;kpaa;kpa(a);kpa abs")
    U(PRESSURE, "MPa", 1e6, 1, "megapascal", "Mpa;N/mm2;MPa(a);MPa abs;MPaa", "")
    U(PRESSURE, "mPa", 1, 1000, "millipascal", "", "")
    U(PRESSURE, "bar", 1e5, 1, "bar", "", "bar;bara;bar(a);bar a;bar abs")
    U(PRESSURE, "mbar", 100, 1, "millibar", "mBar;mb;mbara;mbar(a);mbar a;mbar abs", "millibar")
    U(PRESSURE, "ubar", 1, 10, "microbar", "", "")
    U(PRESSURE, "psi", LBF, INCH2, "pound-force per square inch", "",
      "psi;psia;psid;psi(a);psi a;psi abs;lbf/in2;lb/in2;lbs/in2;lbf/sq in;lb/sq in;#/in2")
    U(PRESSURE, "ksi", LBF * 1000, INCH2, "thousand pounds-force per square inch", "", "ksi;kip/in2")
    U(PRESSURE, "lbf/ft2", LBF, FOOT2, "pound-force per square foot", "", "lbf/ft2;lb/ft2;psf")
    U(PRESSURE, "ozf/in2", LBF, 16 * INCH2, "ounce-force per square inch", "", "ozf/in2;oz/in2;osi")
    U(PRESSURE, "atm", 101325, 1, "standard atmosphere", "", "atm;atma")
    U(PRESSURE, "kgf/cm2", GN * 1e4, 1, "technical atmosphere, kilogram-force per square centimetre", "at;ata",
      "kgf/cm2;kg/cm2;kp/cm2;kgf/cm2a;kg/cm2a;kgf/cm2(a);kg/cm2(a);kg/sq cm;ksc")
    U(PRESSURE, "torr", 101325, 760, "torr", "", "torr")
    U(PRESSURE, "mmHg", MMHG, 1, "millimetre of mercury, conventional (0 degC)", "", "mmhg;mm hg")
    U(PRESSURE, "cmHg", MMHG * 10, 1, "centimetre of mercury, conventional (0 degC)", "", "cmhg;cm hg")
    U(PRESSURE, "inHg", MMHG * 25.4, 1, "inch of mercury, conventional (0 degC)", "\"Hg",
      "inhg;in hg;inhga;inhg(a);inhg abs;inches hg;inches of mercury")
    U(PRESSURE, "mmH2O", GN, 1, "millimetre of water, conventional (4 degC)", "",
      "mmh2o;mm h2o;mmwc;mm wc;mmwg;mm wg;mmws")
    U(PRESSURE, "cmH2O", GN * 10, 1, "centimetre of water, conventional (4 degC)", "", "cmh2o;cm h2o;cmwc;cm wc")
    U(PRESSURE, "mH2O", GN * 1000, 1, "metre of water, conventional (4 degC)", "m H2O;mWC;m WC;mWS;mwc;m wc", "")
    U(PRESSURE, "inH2O", GN * 25.4, 1, "inch of water, conventional (4 degC)", "\"H2O;\"WC;\"wc;\"WG;\"wg",
      "inh2o;in h2o;inwc;in wc;in w c;inwg;in wg;in w g;iwc;iwg;inches h2o;inches wc;inches of water")
    U(PRESSURE, "inH2O(60F)", 248.84, 1, "inch of water at 60 degF (SP 811, five digits)", "",
      "inh2o(60f);inh2o(60degf);inh2o 60f")
    U(PRESSURE, "ftH2O", GN * 304.8, 1, "foot of water, conventional (4 degC)", "", "fth2o;ft h2o;ftwc;ft wc")

    G("Pag", 1, 1, "pascal, gauge", "Pa(g);Pa g;Pa gauge", "")
    G("kPag", 1000, 1, "kilopascal, gauge", "", "kpag;kpa(g);kpa g;kpa gauge")
    G("MPag", 1e6, 1, "megapascal, gauge", "MPa(g);MPa g;MPa gauge;Mpag;Mpa(g)", "")
    G("barg", 1e5, 1, "bar, gauge", "bar\xC3\xBC;bar(\xC3\xBC);bar \xC3\xBC",
      "barg;bar(g);bar g;bar gauge;bar(gauge);bar(e);bar e")
    G("mbarg", 100, 1, "millibar, gauge", "mBarg;mbar(g);mbar g;mbar gauge", "")
    G("psig", LBF, INCH2, "pound-force per square inch, gauge", "",
      "psig;psi(g);psi g;psi gauge;psi(gauge);lbf/in2g;lb/in2g;lbf/in2(g)")
    G("kgf/cm2g", GN * 1e4, 1, "kilogram-force per square centimetre, gauge", "atu;at\xC3\xBC;atg",
      "kgf/cm2g;kg/cm2g;kgf/cm2(g);kg/cm2(g);kgf/cm2 g;kg/cm2 g")
    G("inHg vac", -MMHG * 25.4, 1, "inch of mercury of vacuum, below the barometer", "\"Hg vac",
      "inhg vac;in hg vac;inhg vacuum;in hg vacuum;inhgv;inhg(vac)")
    G("mmHg vac", -MMHG, 1, "millimetre of mercury of vacuum, below the barometer", "",
      "mmhg vac;mm hg vac;mmhg vacuum;mmhgv;mmhg(vac)")
    G("kPa vac", -1000, 1, "kilopascal of vacuum, below the barometer", "", "kpa vac;kpa vacuum;kpav;kpa(vac)")
    G("mbar vac", -100, 1, "millibar of vacuum, below the barometer", "mbar vacuum;mbar(vac)", "")
    G("inH2Og", GN * 25.4, 1, "inch of water, gauge", "", "inh2og;inh2o(g);inh2o g;inwcg;inwc g;in wc g")

    /* SP 811 B.8, temperature: exact */
    T("K", 1, 1, 273.15, 0.0, TRUE_ZERO, "kelvin", "degK", "kelvin")
    T("degC", 1, 1, 0.0, -273.15, OWN_SCALE, "degree Celsius", "C", "degc;deg c;celsius;centigrade;deg celsius")
    T("degR", 5, 9, 491.67, 0.0, TRUE_ZERO, "degree Rankine", "R;Ra", "degr;deg r;rankine")

    /* Lengths, areas, volumes: from the inch of 25.4 mm */
    U(LENGTH, "m", 1, 1, "metre", "", "metre;meter;metres;meters")
    U(LENGTH, "km", 1000, 1, "kilometre", "", "")
    U(LENGTH, "cm", 1, 100, "centimetre", "", "cm")
    U(LENGTH, "mm", 1, 1000, "millimetre", "", "millimetre;millimeter")
    U(LENGTH, "um", 1, 1e6, "micrometre", "", "micron;microns")
    U(LENGTH, "in", INCH, 1, "inch", "\";''", "in;inch;inches")
    U(LENGTH, "ft", FOOT, 1, "foot", "'", "ft;foot;feet")
    U(LENGTH, "yd", FOOT * 3, 1, "yard", "", "yd;yard;yards")
    U(LENGTH, "mi", MILE, 1, "mile", "", "mi;mile;miles")
    U(LENGTH, "mil", INCH, 1000, "thousandth of an inch", "", "mil;mils;thou;thousandth;thousandths")
    U(AREA, "m2", 1, 1, "square metre", "", "sq m;sqm")
    U(AREA, "cm2", 1, 1e4, "square centimetre", "", "cm2;sq cm")
    U(AREA, "mm2", 1, 1e6, "square millimetre", "", "sq mm;sqmm")
    U(AREA, "in2", INCH2, 1, "square inch", "", "in2;sq in;sqin;square inch;square inches")
    U(AREA, "ft2", FOOT2, 1, "square foot", "", "ft2;sq ft;sqft;square foot;square feet")
    U(AREA, "cmil", PI * INCH2, 4e6, "circular mil", "", "cmil;circular mil")
    U(AREA, "kcmil", PI * INCH2, 4e3, "thousand circular mils", "MCM", "kcmil")
    U(VOLUME, "m3", 1, 1, "cubic metre", "", "m3;cbm;cu m;cubic metre;cubic meter")
    U(VOLUME, "L", 1, 1000, "litre", "", "l;dm3;litre;liter;litres;liters;ltr")
    U(VOLUME, "hL", 1, 10, "hectolitre", "hl", "")
    U(VOLUME, "mL", 1, 1e6, "millilitre", "ml", "cm3;cc;ccm;cu cm")
    U(VOLUME, "mm3", 1, 1e9, "cubic millimetre", "", "cu mm")
    U(VOLUME, "in3", INCH3, 1, "cubic inch", "", "in3;cu in;cuin;cubic inch;cubic inches")
    U(VOLUME, "ft3", FOOT3, 1, "cubic foot", "", "ft3;cu ft;cuft;cf;cubic foot;cubic feet")
    U(VOLUME, "yd3", FOOT3 * 27, 1, "cubic yard", "", "yd3;cu yd")
    U(VOLUME, "gal", GALLON, 1, "gallon, US liquid", "",
      "gal;gallon;gallons;usgal;us gal;gal us;gal(us);us gallon;us gallons;usg")
    U(VOLUME, "gal(UK)", GALLON_UK, 1, "gallon, imperial", "",
      "gal(uk);gal uk;uk gal;imp gal;impgal;gal(imp);imperial gallon;imperial gallons;uk gallon")
    U(VOLUME, "qt", GALLON, 4, "quart, US liquid", "", "qt;quart;quarts;us qt")
    U(VOLUME, "pt", GALLON, 8, "pint, US liquid", "", "pt;pint;pints;us pt")
    U(VOLUME, "fl oz", GALLON, 128, "fluid ounce, US", "", "fl oz;floz;us fl oz")

    U(VOLUME_FLOW, "m3/s", 1, 1, "cubic metre per second", "", "")
    U(VOLUME_FLOW, "m3/min", 1, 60, "cubic metre per minute", "", "m3/min;cu m/min;cbm/min;m3/min fad")
    U(VOLUME_FLOW, "m3/h", 1, 3600, "cubic metre per hour", "cmh", "m3/h;m3/hr;cu m/h;cbm/h;m3/h fad")
    U(VOLUME_FLOW, "m3/d", 1, 86400, "cubic metre per day", "", "m3/day")
    U(VOLUME_FLOW, "L/s", 1, 1000, "litre per second", "", "l/s;l/sec;lps;dm3/s;litres/s;liters/s;l/s fad")
    U(VOLUME_FLOW, "L/min", 1, 6e4, "litre per minute", "", "l/min;lpm;dm3/min;ltr/min;litres/min;liters/min;l/min fad")
    U(VOLUME_FLOW, "L/h", 1, 3.6e6, "litre per hour", "", "l/h;l/hr;lph;dm3/h")
    U(VOLUME_FLOW, "mL/s", 1, 1e6, "millilitre per second", "ml/s", "cm3/s;cc/s;cc/sec")
    U(VOLUME_FLOW, "mL/min", 1, 6e7, "millilitre per minute", "ml/min", "cm3/min;cc/min;ccm/min")
    U(VOLUME_FLOW, "cfm", FOOT3, 60, "cubic foot per minute", "",
      "cfm;ft3/min;cu ft/min;cuft/min;cubic feet per minute")
    U(VOLUME_FLOW, "acfm", FOOT3, 60, "cubic foot per minute, at the state there", "", "acfm")
    U(VOLUME_FLOW, "icfm", FOOT3, 60, "cubic foot per minute, at the inlet's state", "",
      "icfm;cfm fad;cfm free air;cfm(fad)")
    U(VOLUME_FLOW, "ft3/s", FOOT3, 1, "cubic foot per second", "", "ft3/s;cfs;cu ft/s")
    U(VOLUME_FLOW, "ft3/h", FOOT3, 3600, "cubic foot per hour", "", "ft3/h;ft3/hr;cfh;cu ft/h;cu ft/hr;acfh")
    U(VOLUME_FLOW, "in3/min", INCH3, 60, "cubic inch per minute", "", "in3/min;cu in/min")
    U(VOLUME_FLOW, "gpm", GALLON, 60, "gallon per minute, US liquid", "", "gpm;gal/min;us gpm;usgpm")

    U(MASS, "kg", 1, 1, "kilogram", "", "kg;kgs;kilogram;kilograms")
    U(MASS, "g", 1, 1000, "gram", "", "gram;grams")
    U(MASS, "mg", 1, 1e6, "milligram", "", "")
    U(MASS, "t", 1000, 1, "tonne", "", "tonne;tonnes;metric ton")
    U(MASS, "lb", LB, 1, "pound", "#", "lb;lbs;lbm;pound;pounds")
    U(MASS, "oz", LB, 16, "ounce", "", "oz;ozm;ounce;ounces")
    U(MASS, "gr", LB, 7000, "grain", "", "gr;grain;grains")
    U(MASS_FLOW, "kg/s", 1, 1, "kilogram per second", "", "kg/s;kg/sec")
    U(MASS_FLOW, "kg/min", 1, 60, "kilogram per minute", "", "kg/min")
    U(MASS_FLOW, "kg/h", 1, 3600, "kilogram per hour", "", "kg/h;kg/hr")
    U(MASS_FLOW, "g/s", 1, 1000, "gram per second", "", "")
    U(MASS_FLOW, "g/min", 1, 6e4, "gram per minute", "", "")
    U(MASS_FLOW, "g/h", 1, 3.6e6, "gram per hour", "g/hr", "")
    U(MASS_FLOW, "t/h", 1, 3.6, "tonne per hour", "t/hr", "")
    U(MASS_FLOW, "lb/s", LB, 1, "pound per second", "", "lb/s;lbm/s;lb/sec")
    U(MASS_FLOW, "lb/min", LB, 60, "pound per minute", "", "lb/min;lbm/min;lbs/min")
    U(MASS_FLOW, "lb/h", LB, 3600, "pound per hour", "", "lb/h;lb/hr;lbm/h;lbm/hr;lbs/hr;pph")
    U(DENSITY, "kg/m3", 1, 1, "kilogram per cubic metre", "", "kg/m3")
    U(DENSITY, "g/L", 1, 1, "gram per litre", "g/l", "")
    U(DENSITY, "g/m3", 1, 1000, "gram per cubic metre", "", "")
    U(DENSITY, "mg/m3", 1, 1e6, "milligram per cubic metre", "", "")
    U(DENSITY, "g/cm3", 1000, 1, "gram per cubic centimetre", "g/mL;g/ml;g/cc", "kg/l;kg/dm3")
    U(DENSITY, "lb/ft3", LB, FOOT3, "pound per cubic foot", "", "lb/ft3;lbm/ft3;lb/cu ft;lbs/ft3;pcf")
    U(DENSITY, "lb/in3", LB, INCH3, "pound per cubic inch", "", "lb/in3;lbm/in3")
    U(DENSITY, "gr/ft3", LB, 7000 * FOOT3, "grain per cubic foot", "", "gr/ft3")
    U(SPECIFIC_VOLUME, "m3/kg", 1, 1, "cubic metre per kilogram", "", "m3/kg")
    U(SPECIFIC_VOLUME, "L/kg", 1, 1000, "litre per kilogram", "cm3/g", "l/kg;dm3/kg")
    U(SPECIFIC_VOLUME, "ft3/lb", FOOT3, LB, "cubic foot per pound", "", "ft3/lb;ft3/lbm;cu ft/lb")
    U(LINEAR_DENSITY, "kg/m", 1, 1, "kilogram per metre", "", "kg/m")
    U(LINEAR_DENSITY, "g/m", 1, 1000, "gram per metre", "", "")
    U(LINEAR_DENSITY, "lb/ft", LB, FOOT, "pound per foot", "", "lb/ft;lbm/ft;lbs/ft")

    U(TIME, "s", 1, 1, "second", "", "sec;second;seconds")
    U(TIME, "ms", 1, 1000, "millisecond", "", "")
    U(TIME, "us", 1, 1e6, "microsecond", "", "")
    U(TIME, "min", 60, 1, "minute", "", "min;mins;minute;minutes")
    U(TIME, "h", 3600, 1, "hour", "", "hr;hrs;hour;hours")
    U(TIME, "d", 86400, 1, "day", "", "day;days")
    U(RATE, "1/s", 1, 1, "per second", "", "1/s;/s;s 1;per second")
    U(RATE, "1/min", 1, 60, "per minute", "", "1/min;/min;per minute")
    U(RATE, "1/h", 1, 3600, "per hour", "", "1/h;1/hr;/h;/hr;per hour;starts/h;starts/hr")
    U(VELOCITY, "m/s", 1, 1, "metre per second", "", "m/s;m/sec")
    U(VELOCITY, "m/min", 1, 60, "metre per minute", "", "")
    U(VELOCITY, "mm/s", 1, 1000, "millimetre per second", "", "")
    U(VELOCITY, "km/h", 1, 3.6, "kilometre per hour", "", "km/h;kph;kmh")
    U(VELOCITY, "in/s", INCH, 1, "inch per second", "", "in/s;ips;in/sec")
    U(VELOCITY, "ft/s", FOOT, 1, "foot per second", "", "ft/s;fps;ft/sec")
    U(VELOCITY, "ft/min", FOOT, 60, "foot per minute", "", "ft/min;fpm")
    U(VELOCITY, "mph", MILE, 3600, "mile per hour", "", "mph;mi/h")

    U(FORCE, "N", 1, 1, "newton", "", "newton;newtons")
    U(FORCE, "kN", 1000, 1, "kilonewton", "", "kn")
    U(FORCE, "daN", 10, 1, "decanewton", "", "dan")
    U(FORCE, "mN", 1, 1000, "millinewton", "", "")
    U(FORCE, "kgf", GN, 1, "kilogram-force", "", "kgf;kp;kilopond")
    U(FORCE, "gf", GN, 1000, "gram-force", "", "gf;pond")
    U(FORCE, "lbf", LBF, 1, "pound-force", "", "lbf;lbsf;lb f")
    U(FORCE, "ozf", LBF, 16, "ounce-force", "", "ozf")
    U(STIFFNESS, "N/m", 1, 1, "newton per metre", "", "")
    U(STIFFNESS, "N/mm", 1000, 1, "newton per millimetre", "kN/m", "")
    U(STIFFNESS, "lbf/in", LBF, INCH, "pound-force per inch", "", "lbf/in;lb/in")
    U(TORQUE, "N m", 1, 1, "newton metre", "Nm", "")
    U(TORQUE, "N cm", 1, 100, "newton centimetre", "Ncm", "")
    U(TORQUE, "kN m", 1000, 1, "kilonewton metre", "kNm", "")
    U(TORQUE, "kgf m", GN, 1, "kilogram-force metre", "", "kgf m;kgfm;kgm;kg m;kp m;mkg;mkp;m kgf")
    U(TORQUE, "kgf cm", GN, 100, "kilogram-force centimetre", "", "kgf cm;kgfcm;kg cm")
    U(TORQUE, "lbf ft", LBF * FOOT, 1, "pound-force foot", "",
      "lbf ft;lb ft;lbs ft;lbfft;lbft;ft lbs;ftlbs;foot pound;foot pounds")
    U(TORQUE, "lbf in", LBF * INCH, 1, "pound-force inch", "", "lbf in;lb in;lbs in;lbfin;lbin;in lb;in lbs;inlb;inlbs")
    U(TORQUE, "ozf in", LBF * INCH, 16, "ounce-force inch", "", "ozf in;oz in;ozin")

    U(POWER, "W", 1, 1, "watt", "J/s", "w;watt;watts")
    U(POWER, "kW", 1000, 1, "kilowatt", "", "kw;kilowatt;kilowatts")
    U(POWER, "MW", 1e6, 1, "megawatt", "", "")
    U(POWER, "mW", 1, 1000, "milliwatt", "", "")
    U(POWER, "hp", HP, 1, "horsepower, mechanical (550 ft lbf/s)", "", "hp;bhp;hp(i);hp(mech);horsepower")
    U(POWER, "hp(M)", HP_METRIC, 1, "horsepower, metric (75 kgf m/s)", "PS;CV;cv;ch",
      "hp(m);hp m;metric hp;hp metric;hp(metric)")
    U(POWER, "hp(E)", 746, 1, "horsepower, electric", "", "hp(e);hp e;electric hp;hp(electric)")
    U(POWER, "ft lbf/s", LBF * FOOT, 1, "foot pound-force per second", "", "ft lbf/s;ft lb/s")
    U(POWER, "ft lbf/min", LBF * FOOT, 60, "foot pound-force per minute", "", "ft lbf/min;ft lb/min")
    U(POWER, "Btu/h", BTU, 3600, "British thermal unit (IT) per hour", "", "btu/h;btu/hr;btuh")
    U(POWER, "Btu/min", BTU, 60, "British thermal unit (IT) per minute", "", "btu/min")
    U(POWER, "kcal/h", CAL * 1000, 3600, "kilocalorie (IT) per hour", "", "kcal/h;kcal/hr")
    U(POWER, "TR", BTU * 12000, 3600, "ton of refrigeration (12000 Btu/h)", "RT;USRT",
      "ton of refrigeration;tonr;ton(r)")
    U(APPARENT_POWER, "VA", 1, 1, "volt ampere", "V A", "va")
    U(APPARENT_POWER, "kVA", 1000, 1, "kilovolt ampere", "kV A", "kva")
    U(APPARENT_POWER, "MVA", 1e6, 1, "megavolt ampere", "", "")
    U(ENERGY, "J", 1, 1, "joule", "W s;Ws", "joule;joules")
    U(ENERGY, "kJ", 1000, 1, "kilojoule", "", "kj")
    U(ENERGY, "MJ", 1e6, 1, "megajoule", "", "")
    U(ENERGY, "mJ", 1, 1000, "millijoule", "", "")
    U(ENERGY, "Wh", 3600, 1, "watt hour", "W h", "wh")
    U(ENERGY, "kWh", 3.6e6, 1, "kilowatt hour", "kW h", "kwh;kw h;kw hr;kwhr")
    U(ENERGY, "MWh", 3.6e9, 1, "megawatt hour", "MW h", "")
    U(ENERGY, "hp h", HP * 3600, 1, "horsepower hour, mechanical", "", "hp h;hp hr;hph")
    U(ENERGY, "cal", CAL, 1, "calorie (IT)", "", "")
    U(ENERGY, "kcal", CAL * 1000, 1, "kilocalorie (IT)", "", "kcal")
    U(ENERGY, "Btu", BTU, 1, "British thermal unit (IT)", "", "btu")
    U(ENERGY, "ft lbf", LBF * FOOT, 1, "foot pound-force", "", "ft lbf;ft lb;ftlbf;ftlb")
    U(ENERGY, "in lbf", LBF * INCH, 1, "inch pound-force", "", "in lbf;inlbf")
    U(ENERGY, "kgf m", GN, 1, "kilogram-force metre", "", "kgf m;kgfm;kgm;kg m")
    U(ENERGY, "kg TNT", 4.184e6, 1, "kilogram of TNT, by convention", "", "kg tnt;kg(tnt)")
    U(ENERGY, "g TNT", 4184, 1, "gram of TNT, by convention", "", "g tnt;g(tnt)")
    U(SPECIFIC_ENERGY, "J/kg", 1, 1, "joule per kilogram", "", "j/kg")
    U(SPECIFIC_ENERGY, "kJ/kg", 1000, 1, "kilojoule per kilogram", "J/g", "kj/kg")
    U(SPECIFIC_ENERGY, "MJ/kg", 1e6, 1, "megajoule per kilogram", "kJ/g", "")
    U(SPECIFIC_ENERGY, "kWh/kg", 3.6e6, 1, "kilowatt hour per kilogram", "", "kwh/kg")
    U(SPECIFIC_ENERGY, "kcal/kg", CAL * 1000, 1, "kilocalorie (IT) per kilogram", "cal/g", "kcal/kg")
    U(SPECIFIC_ENERGY, "Btu/lb", 2326, 1, "British thermal unit (IT) per pound", "", "btu/lb;btu/lbm")
    U(SPECIFIC_ENERGY, "ft lbf/lb", LBF * FOOT, LB, "foot pound-force per pound", "",
      "ft lbf/lb;ft lbf/lbm;ft lb/lb;ft lb/lbm")
    U(SPECIFIC_HEAT, "J/(kg K)", 1, 1, "joule per kilogram kelvin", "J/kg K;J/(kg degC);J/kgK;J/kg degC", "")
    U(SPECIFIC_HEAT, "kJ/(kg K)", 1000, 1, "kilojoule per kilogram kelvin",
      "kJ/kg K;kJ/(kg degC);kJ/kgK;kJ/kg degC", "")
    U(SPECIFIC_HEAT, "Btu/(lb degF)", 4186.8, 1, "British thermal unit (IT) per pound degree Fahrenheit",
      "kcal/(kg K)",
      "btu/(lb degf);btu/(lbm degf);btu/(lb f);btu/(lb degr);btu/(lbm degr);btu/(lb r);btu/lb f;btu/lbm degr")
    U(SPECIFIC_HEAT, "ft lbf/(lb degR)", LBF * FOOT * 1.8, LB, "foot pound-force per pound degree Rankine", "",
      "ft lbf/(lb degr);ft lbf/(lbm degr);ft lbf/(lb r);ft lbf/(lbm r);ft lb/(lb r);ft lb/(lbm r)")
    U(ENERGY_DENSITY, "J/m3", 1, 1, "joule per cubic metre", "W/(m3/s)", "")
    U(ENERGY_DENSITY, "kJ/m3", 1000, 1, "kilojoule per cubic metre", "J/L;J/l;kW/(m3/s);W/(L/s);W/(l/s)", "")
    U(ENERGY_DENSITY, "MJ/m3", 1e6, 1, "megajoule per cubic metre", "kJ/L", "kw/(l/s)")
    U(ENERGY_DENSITY, "kW/(m3/min)", 6e4, 1, "kilowatt per cubic metre per minute",
      "W/(L/min);W/(l/min)", "kw/(m3/min);kw/m3/min;kw min/m3")
    U(ENERGY_DENSITY, "kWh/m3", 3.6e6, 1, "kilowatt hour per cubic metre", "Wh/L;Wh/l", "kwh/m3;kw/(m3/h);kw h/m3")
    U(ENERGY_DENSITY, "Wh/m3", 3600, 1, "watt hour per cubic metre", "W/(m3/h);W h/m3", "wh/m3")
    U(ENERGY_DENSITY, "kW/100cfm", 600, FOOT3, "kilowatt per hundred cubic feet per minute", "",
      "kw/100cfm;kw/100 cfm;kw/(100 cfm);kw/(100cfm)")
    U(ENERGY_DENSITY, "kW/cfm", 6e4, FOOT3, "kilowatt per cubic foot per minute", "", "kw/cfm")
    U(ENERGY_DENSITY, "hp/100cfm", HP * 0.6, FOOT3, "horsepower per hundred cubic feet per minute", "",
      "hp/100cfm;hp/100 cfm;hp/(100 cfm);bhp/100cfm;bhp/100 cfm;bhp/(100 cfm)")

    U(VOLTAGE, "V", 1, 1, "volt", "", "v;volt;volts;vac;v ac;vdc;v dc")
    U(VOLTAGE, "kV", 1000, 1, "kilovolt", "", "kv")
    U(VOLTAGE, "mV", 1, 1000, "millivolt", "", "")
    U(CURRENT, "A", 1, 1, "ampere", "", "a;amp;amps;ampere;amperes")
    U(CURRENT, "kA", 1000, 1, "kiloampere", "", "ka")
    U(CURRENT, "mA", 1, 1000, "milliampere", "", "milliamp;milliamps")
    U(CURRENT, "uA", 1, 1e6, "microampere", "", "")
    U(CAPACITANCE, "F", 1, 1, "farad", "", "farad;farads")
    U(CAPACITANCE, "uF", 1, 1e6, "microfarad", "", "uf;ufd;mfd;mike;mikes;microfarad;microfarads")
    U(CAPACITANCE, "nF", 1, 1e9, "nanofarad", "", "nf")
    U(CAPACITANCE, "pF", 1, 1e12, "picofarad", "", "pf")
    U(RESISTANCE, "ohm", 1, 1, "ohm", "", "ohm;ohms")
    U(RESISTANCE, "kohm", 1000, 1, "kilohm", "", "kohm;kohms;kilohm;kilohms")
    U(RESISTANCE, "Mohm", 1e6, 1, "megohm", "Mohms", "megohm;megohms")
    U(RESISTANCE, "mohm", 1, 1000, "milliohm", "mohms", "milliohm;milliohms")
    U(RESISTANCE, "uohm", 1, 1e6, "microhm", "", "microhm;microhms")
    U(RESISTIVITY, "ohm m", 1, 1, "ohm metre", "", "")
    U(RESISTIVITY, "ohm mm2/m", 1, 1e6, "ohm square millimetre per metre", "", "")
    U(RESISTIVITY, "uohm cm", 1, 1e8, "microhm centimetre", "", "")
    U(LINEAR_RESISTANCE, "ohm/m", 1, 1, "ohm per metre", "", "")
    U(LINEAR_RESISTANCE, "ohm/km", 1, 1000, "ohm per kilometre", "mohm/m", "")
    U(LINEAR_RESISTANCE, "ohm/kft", 1, 304.8, "ohm per thousand feet", "ohm/1000ft;ohm/1000 ft", "")
    U(FREQUENCY, "Hz", 1, 1, "hertz", "", "hz;cps;hertz")
    U(FREQUENCY, "kHz", 1000, 1, "kilohertz", "", "khz")
    U(FREQUENCY, "MHz", 1e6, 1, "megahertz", "", "")
    U(SPEED, "rev/s", 1, 1, "revolution per second", "", "rev/s;rps;r/s")
    U(SPEED, "rpm", 1, 60, "revolution per minute", "", "rpm;rev/min;r/min;revs/min;1/min;min 1")
    U(ANGLE, "rad", 1, 1, "radian", "", "rad;radian;radians")
    U(ANGLE, "deg", PI, 180, "degree of angle", "", "deg;degree;degrees")
    U(ANGLE, "rev", 2 * PI, 1, "revolution", "", "rev;turn;turns")
    U(ANGULAR_VELOCITY, "rad/s", 1, 1, "radian per second", "", "")
    U(ANGULAR_VELOCITY, "deg/s", PI, 180, "degree per second", "", "")
    U(ANGULAR_VELOCITY, "rpm", PI, 30, "revolution per minute", "", "rpm;rev/min;r/min")

    U(PRESSURE_SLOPE, "Pa/s", 1, 1, "pascal per second", "", "")
    U(PRESSURE_SLOPE, "kPa/s", 1000, 1, "kilopascal per second", "", "kpa/s")
    U(PRESSURE_SLOPE, "kPa/min", 1000, 60, "kilopascal per minute", "", "kpa/min")
    U(PRESSURE_SLOPE, "MPa/min", 1e6, 60, "megapascal per minute", "", "")
    U(PRESSURE_SLOPE, "bar/s", 1e5, 1, "bar per second", "", "bar/s")
    U(PRESSURE_SLOPE, "bar/min", 1e5, 60, "bar per minute", "", "bar/min")
    U(PRESSURE_SLOPE, "bar/h", 1e5, 3600, "bar per hour", "", "bar/h;bar/hr")
    U(PRESSURE_SLOPE, "mbar/s", 100, 1, "millibar per second", "", "")
    U(PRESSURE_SLOPE, "mbar/min", 100, 60, "millibar per minute", "", "")
    U(PRESSURE_SLOPE, "psi/s", LBF, INCH2, "pound-force per square inch per second", "", "psi/s;psi/sec")
    U(PRESSURE_SLOPE, "psi/min", LBF, INCH2 * 60, "pound-force per square inch per minute", "", "psi/min")
    U(PRESSURE_SLOPE, "psi/h", LBF, INCH2 * 3600, "pound-force per square inch per hour", "", "psi/h;psi/hr")
    U(TEMPERATURE_SLOPE, "K/s", 1, 1, "kelvin per second", "degC/s", "")
    U(TEMPERATURE_SLOPE, "K/min", 1, 60, "kelvin per minute", "degC/min;C/min", "")
    U(TEMPERATURE_SLOPE, "K/h", 1, 3600, "kelvin per hour", "degC/h;C/h", "")
    U(TEMPERATURE_SLOPE, "degF/min", 5, 540, "degree Fahrenheit per minute", "F/min;degR/min", "")
    U(TEMPERATURE_COEFFICIENT, "1/K", 1, 1, "per kelvin", "1/degC;1/C", "")
    U(TEMPERATURE_COEFFICIENT, "1/degF", 9, 5, "per degree Fahrenheit", "1/F;1/degR", "")
    U(TEMPERATURE_COEFFICIENT, "%/K", 1, 100, "percent per kelvin", "%/degC;%/C", "")
    U(TEMPERATURE_COEFFICIENT, "ppm/K", 1, 1e6, "part per million per kelvin", "ppm/degC;ppm/C", "")

    U(HEAT_CAPACITY, "J/K", 1, 1, "joule per kelvin", "J/degC", "")
    U(HEAT_CAPACITY, "kJ/K", 1000, 1, "kilojoule per kelvin", "kJ/degC", "")
    U(HEAT_CAPACITY, "Btu/degF", BTU * 9, 5, "British thermal unit (IT) per degree Fahrenheit", "",
      "btu/degf;btu/f;btu/degr")
    U(CONDUCTANCE, "W/K", 1, 1, "watt per kelvin", "W/degC", "")
    U(CONDUCTANCE, "kW/K", 1000, 1, "kilowatt per kelvin", "kW/degC", "")
    U(CONDUCTANCE, "Btu/(h degF)", BTU * 9, 3600 * 5, "British thermal unit (IT) per hour degree Fahrenheit", "",
      "btu/(h degf);btu/(hr degf);btu/(h f);btu/(hr f)")
    U(CONDUCTIVITY, "W/(m K)", 1, 1, "watt per metre kelvin", "W/m K;W/(m degC);W/mK", "")
    U(CONDUCTIVITY, "mW/(m K)", 1, 1000, "milliwatt per metre kelvin", "mW/m K;mW/(m degC);mW/mK", "")
    U(CONDUCTIVITY, "Btu/(h ft degF)", BTU * 9, 3600 * 5 * FOOT,
      "British thermal unit (IT) per hour foot degree Fahrenheit", "",
      "btu/(h ft degf);btu/(hr ft degf);btu/(h ft f);btu/(hr ft f)")
    U(VISCOSITY, "Pa s", 1, 1, "pascal second", "Pas;kg/(m s);N s/m2", "")
    U(VISCOSITY, "mPa s", 1, 1000, "millipascal second", "mPas", "cp;centipoise")
    U(VISCOSITY, "uPa s", 1, 1e6, "micropascal second", "uPas", "")
    U(VISCOSITY, "lb/(ft s)", LB, FOOT, "pound per foot second", "", "lb/(ft s);lbm/(ft s)")
    U(KINEMATIC_VISCOSITY, "m2/s", 1, 1, "square metre per second", "", "")
    U(KINEMATIC_VISCOSITY, "mm2/s", 1, 1e6, "square millimetre per second", "", "cst;centistokes;centistoke")
    U(KINEMATIC_VISCOSITY, "ft2/s", FOOT2, 1, "square foot per second", "", "ft2/s")
    U(SONIC_CONDUCTANCE, "m3/(s Pa)", 1, 1, "cubic metre per second pascal", "", "")
    U(SONIC_CONDUCTANCE, "L/(s bar)", 1, 1e8, "litre per second bar", "L/s/bar;l/s/bar", "l/(s bar);dm3/(s bar)")
    U(SONIC_CONDUCTANCE, "L/(min bar)", 1, 6e9, "litre per minute bar", "", "l/(min bar);dm3/(min bar)")
    U(SONIC_CONDUCTANCE, "cfm/psi", FOOT3 * INCH2, 60 * LBF, "cubic foot per minute per psi", "", "cfm/psi;cfm/psia")
    U(MASS_CONDUCTANCE, "kg/(s Pa)", 1, 1, "kilogram per second pascal", "", "")
    U(MASS_CONDUCTANCE, "kg/(s bar)", 1, 1e5, "kilogram per second bar", "", "")
    U(MASS_CONDUCTANCE, "kg/(h bar)", 1, 3.6e8, "kilogram per hour bar", "", "")
    U(CONCENTRATION, "mol/m3", 1, 1, "mole per cubic metre", "mmol/L;mmol/l", "")
    U(CONCENTRATION, "mol/L", 1000, 1, "mole per litre", "mol/l;mol/dm3;kmol/m3", "")
    U(MOLAR_ENERGY, "J/mol", 1, 1, "joule per mole", "kJ/kmol", "")
    U(MOLAR_ENERGY, "kJ/mol", 1000, 1, "kilojoule per mole", "", "")
    U(MOLAR_VOLUME, "m3/mol", 1, 1, "cubic metre per mole", "", "")
    U(MOLAR_VOLUME, "L/mol", 1, 1000, "litre per mole", "l/mol;dm3/mol;m3/kmol", "")
    U(MOLAR_VOLUME, "cm3/mol", 1, 1e6, "cubic centimetre per mole", "mL/mol", "")
    U(MOLAR_VOLUME_SQUARED, "m6/mol2", 1, 1, "cubic metre per mole, squared", "", "")
    U(MOLAR_VOLUME_SQUARED, "cm6/mol2", 1, 1e12, "cubic centimetre per mole, squared", "", "")
    U(TEMPERATURE_BY_PRESSURE, "K/Pa", 1, 1, "kelvin per pascal", "degC/Pa", "")
    U(TEMPERATURE_BY_PRESSURE, "K/bar", 1, 1e5, "kelvin per bar", "degC/bar;C/bar", "")
    U(TEMPERATURE_BY_PRESSURE, "K/MPa", 1, 1e6, "kelvin per megapascal", "degC/MPa", "")
    U(TEMPERATURE_BY_PRESSURE, "degF/psi", 5 * INCH2, 9 * LBF, "degree Fahrenheit per psi", "F/psi;degR/psi", "")
    U(COMPRESSIBILITY, "1/Pa", 1, 1, "per pascal", "", "")
    U(COMPRESSIBILITY, "1/bar", 1, 1e5, "per bar", "", "")
    U(COMPRESSIBILITY, "1/MPa", 1, 1e6, "per megapascal", "", "")
    U(COMPRESSIBILITY, "1/psi", INCH2, LBF, "per psi", "", "")
    U(ENERGY_PRICE, "1/J", 1, 1, "per joule, in any currency", "", "")
    U(ENERGY_PRICE, "1/kWh", 1, 3.6e6, "per kilowatt-hour, in any currency", "", "")
    U(ENERGY_PRICE, "1/MWh", 1, 3.6e9, "per megawatt-hour, in any currency", "", "")
    U(EMISSION_FACTOR, "kg/J", 1, 1, "kilogram per joule", "", "")
    U(EMISSION_FACTOR, "kg/kWh", 1, 3.6e6, "kilogram per kilowatt-hour", "", "")
    U(EMISSION_FACTOR, "g/kWh", 1, 3.6e9, "gram per kilowatt-hour", "kg/MWh", "")
    U(EMISSION_FACTOR, "g/MJ", 1, 1e9, "gram per megajoule", "t/TJ", "")
    U(NUMBER_DENSITY, "1/m3", 1, 1, "per cubic metre", "", "")
    U(NUMBER_DENSITY, "1/L", 1000, 1, "per litre", "1/l;1/dm3", "")
    U(NUMBER_DENSITY, "1/cm3", 1e6, 1, "per cubic centimetre", "1/mL", "")
    U(NUMBER_DENSITY, "1/ft3", 1, FOOT * FOOT * FOOT, "per cubic foot", "", "")

    /* Second readings: what the symbol means when the other unit says so */
    T("degF", 5, 9, 32.0, -459.67, OWN_SCALE, "degree Fahrenheit", "F;f", "degf;deg f;fahrenheit;deg fahrenheit")
    U(SPEED, "rad/s", 1, 2 * PI, "radian per second, as a speed of revolution", "", "")
    U(FORCE, "lb", LBF, 1, "pound, for pound-force", "#", "lb;lbs;pound;pounds")
    U(FORCE, "kg", GN, 1, "kilogram, for kilogram-force", "", "kg;kgs")
    U(FORCE, "oz", LBF, 16, "ounce, for ounce-force", "", "oz;ounce;ounces")
    U(FORCE, "g", GN, 1000, "gram, for gram-force", "", "")
    U(TORQUE, "ft lbf", LBF * FOOT, 1, "pound-force foot", "", "ft lbf;ft lb;ftlbf;ftlb")
    U(TORQUE, "in lbf", LBF * INCH, 1, "pound-force inch", "", "in lbf;inlbf")
    U(ENERGY, "N m", 1, 1, "newton metre, for joule", "Nm", "")
    U(ENERGY, "lbf ft", LBF * FOOT, 1, "foot pound-force", "", "lbf ft;lb ft;ft lbs;ftlbs;foot pound;foot pounds")
    U(VOLUME, "oz", GALLON, 128, "ounce, for fluid ounce, US", "", "oz;ounce;ounces")
};

#endif
