#!/bin/sh
# SPDX-License-Identifier: MIT
#
# Writes sources.am, which Makefile.am includes: the files of every topic that
# Makefile.am lists, and the programs of the tests, spelt out as automake wants
# them; it also takes in examples/*/local.am and tests/bench/*/local.am. Run from the top of the source tree
# by autoreconf, and by make when Makefile.am has changed: after adding a file to a
# topic that is listed already, run autoreconf.
set -eu
LC_ALL=C
export LC_ALL

topics=$(awk '/^FLOOR_[0-9]+ =/ { list = 1; next }
              list { for (i = 1; i <= NF; i++) if ($i ~ /^[a-z][a-z0-9_]*$/) print $i }
              !/\\$/ { list = 0 }' Makefile.am)

fail()
{
  echo "lib/sources.sh: $*" >&2
  exit 1
}

for file in lib/*.c; do
  topic=$(basename "$file" .c)
  echo "$topics" | grep -qx "$topic" || fail "$file: no floor in Makefile.am lists the topic $topic"
done

# list VARIABLE FILE...  appends those of the files that exist to a make variable.
list()
{
  variable=$1
  shift
  for file in "$@"; do
    if [ -f "$file" ]; then printf '%s += %s\n' "$variable" "$file"; fi
  done
}

# programs VARIABLE FILE...  makes a program of each file, built and listed in
# VARIABLE where the libraries are present whose headers the file includes.
programs()
{
  variable=$1
  shift
  for file in "$@"; do
    [ -f "$file" ] || continue
    name=${file%.c}
    canonical=$(printf %s "$name" | tr -c a-zA-Z0-9 _)
    libraries=
    condition=
    end=
    if grep -q '^#include "../rows/rows.h"' "$file"; then libraries=' tests/librows.la'; fi
    while read -r library header; do
      if grep -q "^#include <$header" "$file"; then
        libraries="$libraries \$(${library}_LIBS)"
        condition="${condition}if HAVE_$library
"
        end="${end}endif
"
      fi
    done <<LIBRARIES
CHECK check\.h
PTHREAD pthread\.h
CSV csv\.h
GSL gsl/
SUNDIALS cvode/
JANSSON jansson\.h
LIBRARIES
    printf '%s%s += %s\n%s' "$condition" "$variable" "$name" "$end"
    printf 'EXTRA_PROGRAMS += %s\n' "$name"
    printf '%s_SOURCES = %s\n' "$canonical" "$file"
    printf '%s_LDADD =%s libfreeair.la -lm\n' "$canonical" "$libraries"
  done
}

{
  echo '# Written by lib/sources.sh. Do not edit.'
  for topic in $topics; do
    [ -f "lib/$topic.c" ] || fail "Makefile.am lists the topic $topic, but there is no lib/$topic.c"
    [ -f "include/freeair/$topic.h" ] ||
      fail "Makefile.am lists the topic $topic, but there is no include/freeair/$topic.h"
    list libfreeair_la_SOURCES "lib/$topic.c"
  done
  list libfreeair_la_SOURCES lib/internal/*.h lib/internal/*.c lib/generated/*.h lib/generated/*.c
  list pkginclude_HEADERS include/freeair/*.h
  list EXTRA_DIST *.md lib/generated/*.map tests/abi/*.abi tests/data/*
  programs unit_tests tests/unit/test_*.c
  for file in tests/unit/*.c; do
    case $file in */test_*) ;; *) programs check_PROGRAMS "$file" ;; esac
  done
  for file in tests/generated/*.c; do
    [ -f "$file" ] || continue
    if grep -q '^int main(' "$file"; then
      programs generated_tests "$file"
    else
      list tests_libcompiled_la_SOURCES "$file"
    fi
  done
  list EXTRA_DIST tests/*.h tests/generated/*.h tests/unit/*.h tests/reference/*.h
  programs reference_tests tests/reference/*.c
  programs bench_programs tests/bench/*.c
  for file in examples/*/local.am tests/bench/*/local.am; do
    if [ -f "$file" ]; then echo "include $file"; fi
  done
  # shellcheck disable=SC2046
  find $(ls -d bindings doc examples 2>/dev/null) -type f ! -path '*/.*' ! -path '*/__pycache__/*' ! -path '*/build/*' ! -path '*.egg-info/*' \
    ! -name '*.o' ! -name '*.lo' ! -name '*~' ! -name local.am | sort | sed 's/^/EXTRA_DIST += /'
} >sources.am.new
# Left as it is when nothing has changed, so that automake need not run again.
if cmp -s sources.am.new sources.am; then rm -f sources.am.new; else mv -f sources.am.new sources.am; fi
