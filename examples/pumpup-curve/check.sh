#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The curve of a sound machine and of faulty ones; the CSV file and the picture.
set -u
program=${top_builddir:-.}/examples/pumpup-curve/pumpup_curve
# shellcheck source=examples/common/check.sh
. "${top_srcdir:-.}/examples/common/check.sh"

"$program" --csv "$work/curve.csv" 'fault=belt slip:0.5' 'fault=unloader:1' >"$work/out" || fail "exit status $?"
# common practice, no source: five minutes, a good minute of it from cut-in
grep -qE '^sound +(2[89]|3[0-3])[0-9]\.[0-9] s, of which +[67][0-9]\.' "$work/out" || fail "a sound machine: $(cat "$work/out")"
grep -qE '^belt slip, severity 0.5 +(3[6-9]|4[0-2])[0-9]\.' "$work/out" || fail "belt slip: $(cat "$work/out")"
grep -qE '^unloader leak, severity 1 +not in 1800 s' "$work/out" || fail "unloader leak: $(cat "$work/out")"
grep -q 'stores\|holds energy' "$work/out" || fail "no caution"
[ "$(wc -l <"$work/curve.csv")" = 184 ] || fail "the CSV file has $(wc -l <"$work/curve.csv") lines"
awk -F, 'NR > 1 && $1 == "\"sound\"" { if ($3 + 0 <= last) exit 1; last = $3 }' "$work/curve.csv" ||
  fail "the pressure does not rise"

refuse 'bore=12 kg' 'fault=nothing' 'fault=belt slip:3' 'stages=3' nonsense

if ! command -v gnuplot >/dev/null; then
  echo "no gnuplot: the picture is not drawn"
  [ $failed = 0 ] && exit 77
  exit 1
fi
"$program" --svg "$work/curve.svg" 'fault=belt slip:0.5' >"$work/out" || fail "drawing: exit status $?"
grep -q 'belt slip, severity 0.5' "$work/curve.svg" || fail "the picture does not name its curves"
exit $failed
