#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The visits that are shipped, what a person reads in their reports, and what the
# program says to input that is wrong. FREEAIR_TEST_LOGS names a folder with two
# measured logs, described in README.md; without it they are left out.
set -u
program=${top_builddir:-.}/examples/service-visit/service-visit
visits=${top_srcdir:-.}/examples/service-visit/visits
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT INT TERM
failed=0

complain()
{
  echo "$1"
  sed 's/^/  /' "$work/out" "$work/err" | head -n "${2:-12}"
  failed=1
}

# shows FILE PATTERN...  the report of a visit holds each extended pattern.
shows()
{
  file=$1
  shift
  if ! "$program" "$file" >"$work/out" 2>"$work/err" || [ -s "$work/err" ]; then
    complain "$file: failed"
    return
  fi
  for pattern in "$@"; do
    tr -s ' \n' '  ' <"$work/out" | grep -q -E -e "$pattern" || complain "$file: the report lacks: $pattern" 200
  done
  if grep -q -E '(^|[^a-z])(nan|inf)([^a-z]|$)| $' "$work/out"; then complain "$file: nan, inf or trailing space" 200; fi
  if ! "$program" --json "$file" >"$work/out" 2>"$work/err"; then complain "$file: --json failed"; fi
  if [ -n "${PYTHON:-}" ] && "$PYTHON" -c '' 2>/dev/null; then
    "$PYTHON" -c 'import json, sys; json.load(sys.stdin)' <"$work/out" || complain "$file: not JSON"
  fi
}

# refused PATTERN FILE  exit status 2, nothing printed, and a message with this pattern.
refused()
{
  "$program" "$2" >"$work/out" 2>"$work/err"
  status=$?
  if [ $status != 2 ] || [ -s "$work/out" ] || ! grep -q -E -e "$1" "$work/err"; then
    complain "$2: exit status $status; wanted 2 and the message: $1"
  fi
}

# change SCRIPT NAME  a copy of a good visit with one thing changed by sed.
change()
{
  sed "$1" "$visits/slipping-belt.json" >"$work/$2.json"
  cmp -s "$visits/slipping-belt.json" "$work/$2.json" && complain "$2: the visit was not changed"
}

shows "$visits/hot-and-high.json" 'Delivery: meets' '1\. Nothing wrong' 'the site alone makes the difference' \
  'too much, since the gas heats' 'Isolate the machine'
shows "$visits/lp-valve.json" 'Delivery: SHORT' 'SOMETHING IS WRONG' '1\. LP suction valve' 'Air blows back at the intake'
shows "$visits/lp-valve-repaired.json" 'Repaired: LP suction valve.* The repair is PROVED' '1\. Nothing wrong' 'EUR a year'
# common practice, no source: who finds the same slow rise and the same blow-back has not repaired it
sed 's/"5:55"/"9:20"/; s/"47 s"/"80 s"/; s/"blow_back_at_inlet": "no"/"blow_back_at_inlet": "yes"/' \
  "$visits/lp-valve-repaired.json" >"$work/not-repaired.json"
shows "$work/not-repaired.json" 'The repair is NOT PROVED: what was found speaks against it'
sed '/"pumpups"/,/^  \],/d' "$visits/lp-valve-repaired.json" >"$work/no-test.json"
shows "$work/no-test.json" 'Without a pump-up test from the same start nothing is proved.* NOT PROVED YET'
shows "$visits/slipping-belt.json" 'Delivery: SHORT' '1\. Belt slips' 'Belt slip from the two speeds: 19 %|Belt slip from the two speeds: 20 %'
shows "$visits/weak-capacitor.json" 'OUT of its limits' '1\. (Run capacitor weak|Low supply voltage)' 'MORE than 10 %' 'A capacitor can kill'
shows "$visits/leaking-system.json" '1\. Leak, open drain or demand' 'loaded 6[0-9] % of the time'
shows "$visits/contradiction.json" 'Contradiction: Interstage pressure' 'Read it again'

change 's/"receiver": "80 gal",//' no-receiver
refused 'no-receiver.json: /: missing: "machine"/"receiver"' "$work/no-receiver.json"
change 's/"80 gal"/"80 galoons"/' unknown-unit
refused "unknown-unit.json: /machine/receiver: 'galoons' is a unit that is not known" "$work/unknown-unit.json"
change 's/"80 gal"/"80 psi"/' wrong-unit
refused '/machine/receiver: .80 psi. measures Pa, but m3' "$work/wrong-unit.json"
change 's/"80 gal"/"80"/' no-unit
refused '/machine/receiver: .80. has no unit' "$work/no-unit.json"
change 's/"80 gal"/80/' bare-number
refused '/machine/receiver: write the unit' "$work/bare-number.json"
change 's/"45 psig"/"-20 psig"/' below-vacuum
refused '/readings/interstage: .-20 psig. is below a perfect vacuum' "$work/below-vacuum.json"
change 's/"45 psig"/"nan psig"/' not-a-number
refused "/readings/interstage: 'nan psig' is not a finite number" "$work/not-a-number.json"
change 's/"68 F"/"680 F"/' absurd
refused '/site/temperature: .* is outside the range' "$work/absurd.json"
change 's/"7:12"/"7:72"/' clock
refused '/pumpups/0/time' "$work/clock.json"
change 's/"belt_squeals": "yes"/"belt_sings": "yes"/' unknown-observation
refused '/observations/belt_sings: there is no such observation' "$work/unknown-observation.json"
change 's/"belt_squeals": "yes"/"belt_squeals": "perhaps"/' unknown-answer
refused '/observations/belt_squeals: "yes", "no"' "$work/unknown-answer.json"
change 's/"to": "175 psig"/"to": "-1 psig"/' falling
refused '/pumpups/0: the pressure does not rise' "$work/falling.json"
change 's/"stages": 2/"stages": 3/' stages
refused '/machine/stages: 3 .*outside the range \[1;2\]' "$work/stages.json"
change 's/"report_units"/"repaired": "belt_snapped", "report_units"/' unknown-cause
refused '/repaired: there is no such cause' "$work/unknown-cause.json"
change 's/"stages": 2/"stages": 1/; s/"hp_bore": "[^"]*",//; s/"report_units"/"repaired": "hp_suction_valve", "report_units"/' cannot-have
refused '/repaired: this machine cannot have that' "$work/cannot-have.json"
change 's/"report_units"/"energy": {"price_per_kwh": "cheap"}, "report_units"/' price
refused '/energy/price_per_kwh: a number is wanted' "$work/price.json"
change 's/"report_units"/"energy": {"air_used": "-3 cfm"}, "report_units"/' air
refused '/energy/air_used: .* cannot be' "$work/air.json"
change '$d' truncated
refused 'truncated.json:[0-9]+:[0-9]+: ' "$work/truncated.json"
refused 'missing.json' "$work/missing.json"
printf '[]\n' >"$work/list.json"
refused 'an object in braces is wanted' "$work/list.json"
printf '{"site": {"barometer": "29.9 inHg"}}\n' >"$work/empty.json"
refused 'missing: "machine"' "$work/empty.json"
change 's/"barometer": "29.8 inHg",//' no-barometer
refused '/site: give the barometer, or the altitude' "$work/no-barometer.json"

# A batch over threads: a line each in the order given, the same as one after the other; one refused holds up none.
"$program" --threads 1 "$visits"/*.json >"$work/one" 2>"$work/err" || complain "a batch on one thread"
"$program" --threads 5 "$visits"/*.json >"$work/out" 2>"$work/err" || complain "a batch on five threads"
cmp -s "$work/one" "$work/out" || complain "a batch differs among threads" 30
[ "$(wc -l <"$work/out")" = "$(ls "$visits"/*.json | wc -l)" ] || complain "a batch lacks visits" 30
grep -q '^NOT SOUND .*LP suction valve .*Body shop: runs and never shuts off' "$work/out" || complain "a batch" 30
if "$program" "$visits/lp-valve.json" "$work/empty.json" "$visits/slipping-belt.json" >"$work/out" 2>"$work/err"; then
  complain "a batch with one refused succeeds"
fi
[ "$(wc -l <"$work/out")" = 2 ] && grep -q 'empty.json: .*missing: "machine"' "$work/err" || complain "a batch with one refused"
if "$program" --json "$visits"/*.json >"$work/out" 2>"$work/err"; then complain "a batch as JSON"; fi

# Logs that are damaged.
log()
{
  cp "$visits/leaking-system.json" "$work/log.json"
  cp "$work/log.csv" "$work/leaking-night.csv"
  refused "$1" "$work/log.json"
}
good=$visits/leaking-night.csv
head -n 700 "$good" | sed '$s/,[^,]*$//' >"$work/log.csv"
log 'leaking-night.csv:[0-9]+: the row has more or fewer values'
{ head -n 1 "$good"; sed 1d "$good" | sort -t, -k2; } >"$work/log.csv"
log 'leaking-night.csv:[0-9]+: the time runs backwards'
sed '9s/,[^,]*,/,high,/' "$good" >"$work/log.csv"
log "leaking-night.csv:9: 'high' is not a number"
sed '9s/,[^,]*,/,-30,/' "$good" >"$work/log.csv"
log 'leaking-night.csv:9: .* below a perfect vacuum'
sed '9s/,[^,]*,/,1e12,/' "$good" >"$work/log.csv"
log 'leaking-night.csv:9: .* no pressure'
sed '9s/^[^,]*/yesterday/' "$good" >"$work/log.csv"
log "leaking-night.csv:9: 'yesterday' is neither"
sed '1s/receiver_psig/pressure/' "$good" >"$work/log.csv"
log "leaking-night.csv:1: no column 'receiver_psig'"
rm -f "$work/leaking-night.csv"
refused '/log/file: .*leaking-night.csv' "$work/log.json"

# Measured logs of an air production unit, if they are at hand.
measured()
{
  cat >"$work/measured.json" <<EOF
{"title": "measured log", "report_units": "metric", "site": {"barometer": "1013 mbar"},
 "log": {"file": "$FREEAIR_TEST_LOGS/$1", "time": "timestamp", "pressure": "$2", "unit": "bar g"$3}}
EOF
  shift 3
  shows "$work/measured.json" "$@"
}
if [ -d "${FREEAIR_TEST_LOGS:-/nonexistent}" ]; then
  for column in Reservoirs TP3; do
    for channel in '' ', "loaded": "DV_eletric"'; do
      measured metropt3_2020-02-01_00h_normal.csv $column "$channel" 'one cycle 3[2-5]:' 'rising 1\.[234][0-9] bar/min' \
        'take [2-9]\.[0-9] % of what' 'A few percent is ordinary: not a fault'
      measured metropt3_2020-04-18_12h_airleak.csv $column "$channel" '0 complete cycles' \
        'LOADED ALL THE TIME and never reaching cut-out'
    done
  done
else
  echo "skipped: measured logs, data not present"
fi
exit $failed
