#!/bin/sh
# SPDX-License-Identifier: MIT
#
# Writes sources.am, which Makefile.am includes: the files of every topic that
# Makefile.am lists, spelt out as automake wants them. Run by autoreconf from the
# top of the source tree, and by make when Makefile.am has changed.
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

# list VARIABLE FILE...  appends those files that exist to a make variable.
list()
{
  variable=$1
  shift
  for file in "$@"; do
    if [ -f "$file" ]; then printf '%s += %s\n' "$variable" "$file"; fi
  done
}

# program PREFIX FILE...  makes a program of each file, and lists it in PREFIX.
program()
{
  variable=$1
  shift
  for file in "$@"; do
    if [ -f "$file" ]; then
      name=${file%.c}
      printf '%s += %s\n' "$variable" "$name"
      printf '%s_SOURCES = %s\n' "$(printf %s "$name" | tr -c a-zA-Z0-9 _)" "$file"
    fi
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
  list row_files tests/data/*.tsv
  program unit_programs tests/unit/*.c
} >sources.am.new
mv -f sources.am.new sources.am
