#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The calculator as a person uses it: what it prints, and what it says to a mistake.
set -u
program=${top_builddir:-.}/examples/calc/calc
# shellcheck source=examples/common/check.sh
. "${top_srcdir:-.}/examples/common/check.sh"

expect 0 '^atmosphere$' list
expect 0 'atmosphere_altitude_from_pressure' list altitude
expect 2 "about 'nonsense'" list nonsense
expect 0 'Model: p = p0' show atmosphere_pressure_from_altitude
expect 0 'Source: ISO 2533' show freeair_atmosphere_pressure_from_altitude
expect 0 '"range": "\[-5000;11000\]"' show atmosphere_pressure_from_altitude --json
# ASHRAE Handbook Fundamentals 2017, chapter 1, Table 1: 95 461 Pa at 500 m
expect 0 '^p_pa = 9546[01]' atmosphere_pressure_from_altitude altitude_m=500
expect 0 '^p_pa = 9546[01]' atmosphere_pressure_from_altitude altitude='0.5 km'
expect 0 '^p_pa = 12\.2[0-9]* psi' atmosphere_pressure_from_altitude 'altitude=5000 ft' --to p=psi
expect 0 '"value": 12\.2[0-9]*' atmosphere_pressure_from_altitude 'altitude=5000 ft' --to p=psi --json
expect 0 '^altitude_m = [-0-9.]+$|^altitude_m = .* m$' atmosphere_altitude_from_pressure 'p=0 psig' --barometer '980 mbar'
expect 2 'is a gauge pressure' atmosphere_altitude_from_pressure 'p=0 psig'
expect 2 'below a perfect vacuum' atmosphere_altitude_from_pressure 'p=-20 psig' --barometer '980 mbar'
expect 2 'altitude_m: .* measures kg, but m or a unit of that kind is wanted; range \[-5000;11000\] m' \
  atmosphere_pressure_from_altitude 'altitude=5 kg'
expect 2 'altitude_m = 50000 m is outside its range \[-5000;11000\]' atmosphere_pressure_from_altitude altitude='50 km'
expect 2 'altitude_m is not given' atmosphere_pressure_from_altitude
expect 2 'not known' atmosphere_pressure_from_altitude 'altitude=5 furlongs'
expect 2 'does not begin with a number' atmosphere_pressure_from_altitude altitude=high
expect 2 'altitude_m = nan' atmosphere_pressure_from_altitude altitude_m=nan
expect 2 "no argument 'hight'" atmosphere_pressure_from_altitude hight=5
expect 2 "no function 'atmosfere'" atmosfere
expect 2 'does not measure' atmosphere_pressure_from_altitude altitude_m=0 --to p=kg
expect 0 '^r_ohm_m = 0\.01[0-9]*' conductor_resistance_at r20=0.01 coefficient='0.00393 1/K' t='20 degC'
expect 0 'VERDICT_MEETS' verdict_decide value=5 uncertainty=0.1 lower=0 upper=inf confidence=0.95

printf 'altitude [ft],site\n0,shop\n' >"$work/extra.csv"
expect 2 "extra.csv:1: column 2: .*no argument 'site'" atmosphere_pressure_from_altitude --csv "$work/extra.csv"
printf 'altitude [ft]\n0\n5000\n' >"$work/good.csv"
expect 0 '^5000,84307.*,FREEAIR_OK' atmosphere_pressure_from_altitude --csv "$work/good.csv"
expect 0 '"status": "FREEAIR_OK"' atmosphere_pressure_from_altitude --csv "$work/good.csv" --json
printf 'altitude [ft]\n0\nhigh\n' >"$work/word.csv"
expect 2 'word.csv:3: column 1: altitude_m: .high. does not begin' atmosphere_pressure_from_altitude --csv "$work/word.csv"
printf 'altitude_m\n0\n99999\n' >"$work/range.csv"
expect 1 'range.csv:3: altitude_m = 99999 m is outside' atmosphere_pressure_from_altitude --csv "$work/range.csv"
printf 'altitude_m\n0\n1,2\n' >"$work/ragged.csv"
expect 2 'ragged.csv:3: 2 values where the first line names 1' atmosphere_pressure_from_altitude --csv "$work/ragged.csv"
printf 'altitude_m\n' >"$work/empty.csv"
expect 2 'no values' atmosphere_pressure_from_altitude --csv "$work/empty.csv"
expect 2 'missing.csv' atmosphere_pressure_from_altitude --csv "$work/missing.csv"
exit $failed
