#!/bin/sh
# SPDX-License-Identifier: MIT
#
# Cards of a sound machine and of one with each valve fault; the CSV file and the picture.
set -u
program=${top_builddir:-.}/examples/indicator-card/indicator_card
# shellcheck source=examples/common/check.sh
. "${top_srcdir:-.}/examples/common/check.sh"

"$program" --csv "$work/card.csv" >"$work/out" || fail "exit status $?"
[ "$(wc -l <"$work/out")" = 5 ] || fail "five cards: $(cat "$work/out")"
[ "$(wc -l <"$work/card.csv")" = 1801 ] || fail "the CSV file has $(wc -l <"$work/card.csv") lines"
# common practice, no source: a first-stage suction valve blows back and drops the
# interstage pressure, second-stage valves raise it
awk '/^sound/ { for (i = 1; i < NF; i++) if ($i == "interstage") sound = $(i + 1) }
     /^suction valve, first/ { for (i = 1; i < NF; i++) if ($i == "interstage") first = $(i + 1); back = $(NF - 1) }
     /^discharge valve, second/ { for (i = 1; i < NF; i++) if ($i == "interstage") second = $(i + 1) }
     END { exit !(first < 0.6 * sound && second > 1.2 * sound && back > 3) }' "$work/out" || fail "$(cat "$work/out")"
# the area of each card in the CSV file is the indicated work, positive
awk -F'"' 'NR > 1 { split($3, c, ","); key = $2 c[2]; v = c[4]; p = c[5]
     if (key == last) work[key] -= 0.5 * (p + p0) * (v - v0)
     last = key; v0 = v; p0 = p }
     END { for (key in work) { n++; if (work[key] <= 0) exit 1 } exit n != 10 }' "$work/card.csv" ||
  fail "a card does not enclose work"

refuse 'speed=3 bar' 'fault=relief:2' 'stages=0'
"$program" stages=1 >"$work/out" || fail "a single stage: exit status $?"
[ "$(wc -l <"$work/out")" = 3 ] || fail "three cards of a single stage: $(cat "$work/out")"

if ! command -v gnuplot >/dev/null; then
  echo "no gnuplot: the picture is not drawn"
  [ $failed = 0 ] && exit 77
  exit 1
fi
"$program" --svg "$work/card.svg" >"$work/out" || fail "drawing: exit status $?"
grep -q 'second stage' "$work/card.svg" || fail "the picture does not name its stages"
exit $failed
