#!/bin/sh
# SPDX-License-Identifier: MIT
#
# Every printed answer of every problem, the page of the documentation, and that
# the program notices what is amiss in its data.
set -u
top=${top_srcdir:-.}
program=${top_builddir:-.}/examples/textbook/textbook
TEXTBOOK_DATA=$top/examples/textbook
export TEXTBOOK_DATA
# shellcheck source=examples/common/check.sh
. "${top_srcdir:-.}/examples/common/check.sh"

# spoil FILE OLD NEW STATUS PATTERN  alters the data, which must not pass.
spoil()
{
  rm -rf "$work/data"
  mkdir "$work/data"
  cp -R "$TEXTBOOK_DATA/books.json" "$TEXTBOOK_DATA/problems" "$work/data/"
  chmod -R u+w "$work/data"
  sed "s|$2|$3|" "$TEXTBOOK_DATA/$1" >"$work/data/$1"
  if cmp -s "$work/data/$1" "$TEXTBOOK_DATA/$1"; then
    echo "$1: nothing to spoil in: $2"
    failed=1
  fi
  expect "$4" "$5" --data "$work/data"
}

# At least as many as there were: a file that is not read would go unnoticed.
expect 0 '^[0-9]+ problems, [0-9]+ answers: [0-9]+ agree .*, 0 problems wrong$'
[ "$(sed -n 's/^\([0-9]*\) problems, .*/\1/p' "$work/out")" -ge 200 ] || { echo "fewer than 200 problems"; failed=1; }
expect 0 'indicated power: book 4\.24 kW, ours 4\.24 kW, agrees' rajput-ic-20-1
expect 0 '^ramalingam-9-13 +multistage' --list saves
expect 0 '"verdict": "right"' --json rajput-ic-20-1
expect 0 'We trust ours' rajput-ic-20-7
expect 2 "no problem is about 'nonsense'" nonsense
expect 2 'books\.json' --data "$work/nowhere"

"$program" --markdown >"$work/page.md" || failed=1
cmp "$work/page.md" "$top/doc/guide/textbook.md" || {
  diff "$top/doc/guide/textbook.md" "$work/page.md" | head -n 20
  echo "doc/guide/textbook.md is not what the data says: make textbook-page"
  failed=1
}

file=problems/compression.json
spoil $file '"printed": "4.24"' '"printed": "4.25"' 1 'the book prints 4\.25 kW, ours is 4\.236'
spoil $file '"p2": "7 bar"' '"p2": "7 kg"' 1 'p2_pa is in Pa, but p2 is in kg'
spoil $file '"p2": "7 bar"' '"p2": "7 bra"' 1 'not known'
spoil $file '"p2": "7 bar"' '"p2": "7 psig"' 1 'gauge pressure: give the barometer'
spoil $file '"n": "1.35"' '"n": "13.5"' 1 'n = 13\.5 .*is outside its range'
spoil $file 'compression_power_from_free_air' 'compression_power' 1 "no function 'compression_power'"
spoil $file '"get": "power"' '"get": "n"' 1 "'n' is known already"
spoil $file '"of": "power"' '"of": "might"' 1 "no quantity 'might'"
spoil $file 'm \* cp \* (t2 - t1)' 'm * cp * (t2 - ' 1 'step 1: .*nexpected'
spoil $file '"unit": "kW"' '"unit": "kPa"' 1 "'kPa' does not measure W"
spoil $file '"title"' '"tilte"' 2 'rajput-ic-20-1: '
spoil $file '"id": "rajput-ic-20-2"' '"id": "rajput-ic-20-1"' 2 'this id is taken'
spoil $file '"book": "nag-bat"' '"book": "nag"' 2 'not in books\.json'
spoil $file '\[$' '{' 2 'compression\.json:'
file=problems/multistage.json
spoil $file '"ours": "25.37"' '"ours": "25.47"' 1 'ours is 25\.37.* not 25\.47 as the data says'
spoil $file '"printed": "19.06", "ours"' '"printed": "25.37", "ours"' 1 'agrees with the book, though'
spoil $file '(_pi / (p2 / p1))' '(_pi / (p2 / p1) * 1.01)' 1 'their way gives'
spoil $file '"trust": "ours"' '"trust": "us"' 2 'ours, book or both'
spoil $file '"trust": "ours", ' '' 2 'ours, trust and note, all three'
exit $failed
