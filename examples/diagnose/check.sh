#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The Python example on the library that was just built. Exit status 77 without
# Python or without a shared library.
set -u
here=$(dirname "$0")
library=${top_builddir:-.}/.libs/libfreeair.so
if [ "${PYTHON:-python3}" = no ] || ! command -v "${PYTHON:-python3}" >/dev/null || [ ! -f "$library" ]; then
  echo "skipped: no Python, or no shared library"
  exit 77
fi
FREEAIR_LIBRARY=$(cd "$(dirname "$library")" && pwd)/libfreeair.so
PYTHONPATH=$here/../../bindings/python/src
PYTHONDONTWRITEBYTECODE=1
export FREEAIR_LIBRARY PYTHONPATH PYTHONDONTWRITEBYTECODE
program=$here/diagnose.py
# shellcheck source=examples/common/check.sh
. "${top_srcdir:-.}/examples/common/check.sh"

"${PYTHON:-python3}" -W error "$here/diagnose.py" >"$work/out" 2>"$work/err" || fail "exit status $?: $(cat "$work/err")"
# part HEADING: the first cause under it
first() { awk -v want="$1" 'found { print; exit } index($0, want) == 1 { found = 1 }' "$work/out"; }

# common practice, no source: low interstage pressure with air blowing back at the inlet is the LP suction valve
first '... and a hand at the intake' | grep -q 'LP suction valve' || fail "blow-back: $(first '... and a hand')"
first 'After the repair' | grep -q 'Nothing wrong' || fail "repaired: $(first 'After the repair')"
grep -q '^LP suction valve: 0\.[89].* is proved' "$work/out" || fail "the proof: $(grep proved "$work/out")"
grep -q '^Two times: not sound' "$work/out" || fail "two times: $(grep '^Two times' "$work/out")"
grep -q 'not told apart: .*LP suction valve' "$work/out" || fail "two times alone tell too much"
grep -q 'Isolate' "$work/out" || fail "no caution"
[ $failed = 0 ] || cat "$work/out"
exit $failed
