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
dumped_for=$(sed -n "s/^<abi-corpus .*architecture='elf-\([^']*\)'.*/\1/p" "$released")
case $dumped_for:$(uname -m) in
  amd-x86_64:x86_64) ;;
  *) echo "the description is of $dumped_for"; exit 77 ;;
esac

# Without the option the tool describes a function by the first declaration that
# it meets, finds that it is not defined there, and leaves it out.
exported=$($NM -D --defined-only "$library" | awk '$2 == "T"' | wc -l)
seen=$(abidw --exported-interfaces-only "$library" | grep -c "<function-decl .*elf-symbol-id=")
[ "$exported" = "$seen" ] || { echo "$exported functions are exported, but abidw describes $seen"; exit 1; }

abidiff --exported-interfaces-only --no-added-syms --suppressions "$top_srcdir/tests/abi/opaque.ini" \
  "$released" "$library" || {
  echo "the ABI differs from the release's; see the rules in configure.ac"
  exit 1
}
