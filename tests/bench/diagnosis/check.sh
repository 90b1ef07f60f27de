#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The held-out visits parse and are as many as they say, and the benchmark names causes
# on the first of them. Not how good it is: that is for who runs all of them.
set -u
diagnosis=${top_builddir:-.}/tests/bench/diagnosis/diagnosis
visits=${top_srcdir:-.}/tests/bench/diagnosis/independent/visits.jsonl
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT INT TERM
failed=0

fail()
{
  echo "$*"
  sed 's/^/  /' "$work/out" "$work/err"
  failed=1
}

# run ARGUMENT...  the benchmark; what it says goes to files
run()
{
  "$diagnosis" "$@" >"$work/out" 2>"$work/err"
}

# With all that a visit can know, on twelve: no healthy machine accused, at least half
# of the single faults named first, no call failed.
run -f "$visits" -n 12 -l 4 || fail "the benchmark fails"
grep -q ' 12 visits, 0 of them skipped' "$work/out" || fail "not twelve visits"
awk '/^E / { for (i = 1; i <= NF; i++) {
               if ($i == "top-1") top = $(i + 1)
               if ($i == "healthy") split($(i + 1), accused, "/")
               if ($i == "failed") bad = 1
             }
             found = 1 }
     END { exit !(found && !bad && top >= 0.5 && accused[1] == 0) }' "$work/out" || fail "it names too little, or accuses"

# What is not as it says is refused, and said.
# refuse PATTERN  the benchmark must refuse the spoilt copy, and say why
refuse()
{
  run -f "$work/visits" -n 1 -l 0
  [ $? = 1 ] && grep -q -e "$1" "$work/err" || fail "not refused with: $1"
}
sed '$d' "$visits" >"$work/visits"
refuse 'its head says'
sed '3s/"lp_bore_m"/"bore"/' "$visits" >"$work/visits"
refuse ':3: a field is not known'
sed '4s/.\{40\}$//' "$visits" >"$work/visits"
refuse ':4: '
exit $failed
