#!/bin/sh
# SPDX-License-Identifier: MIT
#
# Within a SONAME nothing is removed or altered: compares the library with the
# description of its last release. What is new is no difference.
set -u
library=$top_builddir/.libs/libfreeair.so
released=$top_srcdir/tests/abi/freeair-0.abi
[ -f "$library" ] || { echo "no shared library was built"; exit 77; }
[ -f "$released" ] || { echo "there is no release to compare with"; exit 77; }
command -v abidiff >/dev/null || { echo "abidiff is not installed"; exit 77; }
$OBJDUMP -h "$library" | grep -q debug_info || { echo "built without debug information"; exit 77; }

abidiff --no-added-syms --headers-dir2 "$top_srcdir/include" "$released" "$library" || {
  echo "the ABI differs from the release's; see the rules in configure.ac"
  exit 1
}
