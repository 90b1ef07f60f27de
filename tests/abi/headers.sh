#!/bin/sh
# SPDX-License-Identifier: MIT
#
# Every public header compiles alone, as C11 and as C++17, without a warning, and
# can be read in one sitting; so does every initialiser that it defines.
set -u
status=0
longest=250
compilers=
for c in gcc clang; do
  if command -v $c >/dev/null; then compilers="$compilers $c:c11:c"; fi
done
for c in g++ clang++; do
  if command -v $c >/dev/null; then compilers="$compilers $c:c++17:c++"; fi
done
[ -n "$compilers" ] || { echo "there is no gcc and no clang"; exit 77; }
echo "compilers:$compilers"

scratch=$(mktemp -d) || exit 99
trap 'rm -rf "$scratch"' EXIT
for header in "$top_srcdir"/include/freeair/*.h; do
  name=$(basename "$header" .h)
  lines=$(wc -l <"$header")
  if [ "$lines" -gt $longest ]; then
    echo "include/freeair/$name.h has $lines lines, more than $longest"
    status=1
  fi
  {
    echo "#include <freeair/$name.h>"
    echo "#include <freeair/$name.h>"
    sed -n 's/^#define \(FREEAIR_[A-Z0-9_]*\)_INIT\( .*\)\{0,1\}$/\1/p' "$header" | while read -r macro; do
      type=$(echo "$macro" | tr A-Z a-z)
      echo "$type make_$type(void);"
      echo "$type make_$type(void) { $type made = ${macro}_INIT; return made; }"
    done
    echo "int after_$name(void);"
    echo "int after_$name(void) { return 0; }"
  } >"$scratch/$name.in"
  for compiler in $compilers; do
    IFS=: read -r command standard language <<LINE
$compiler
LINE
    warnings='-Wall -Wextra -Wpedantic -Wconversion -Wshadow -Werror'
    if [ "$language" = c ]; then warnings="$warnings -Wstrict-prototypes"; fi
    # shellcheck disable=SC2086
    if ! $command -x "$language" -std="$standard" $warnings -I"$top_srcdir/include" -fsyntax-only "$scratch/$name.in"; then
      echo "include/freeair/$name.h: $command -std=$standard fails"
      status=1
    fi
  done
done
exit $status
