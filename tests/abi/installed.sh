#!/bin/sh
# SPDX-License-Identifier: MIT
#
# installed.sh PROGRAM.c  compiles PROGRAM.c as a user would against the installed
# library that pkg-config finds, shared and static, and runs it. Run by make
# installcheck, which sets CC, PKG_CONFIG and where pkg-config looks.
set -eu
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

cflags=$($PKG_CONFIG --cflags freeair)
libdir=${PKG_CONFIG_SYSROOT_DIR%/}$($PKG_CONFIG --variable=libdir freeair | sed "s|^${PKG_CONFIG_SYSROOT_DIR%/}||")
api=${PKG_CONFIG_SYSROOT_DIR%/}$($PKG_CONFIG --variable=apijson freeair | sed "s|^${PKG_CONFIG_SYSROOT_DIR%/}||")
[ -s "$api" ] || { echo "installcheck: there is no $api" >&2; exit 1; }

ran=
if ls "$libdir"/libfreeair.so >/dev/null 2>&1; then
  # shellcheck disable=SC2046,SC2086
  $CC -o "$scratch/shared" "$1" $cflags $($PKG_CONFIG --libs freeair)
  LD_LIBRARY_PATH=$libdir "$scratch/shared"
  ran=shared
fi
if [ -f "$libdir/libfreeair.a" ]; then
  # shellcheck disable=SC2086
  $CC -o "$scratch/static" "$1" $cflags "$libdir/libfreeair.a" -lm
  LD_LIBRARY_PATH=/nonexistent "$scratch/static"
  ran="$ran static"
fi
[ -n "$ran" ] || { echo "installcheck: no library in $libdir" >&2; exit 1; }
echo "installcheck: passed, linked $ran"
