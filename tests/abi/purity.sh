#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The library calls nothing but the mathematics of libm and the memory functions
# of C, and holds no data that can be written.
set -u
library=$top_builddir/.libs/libfreeair.so
archive=$top_builddir/.libs/libfreeair.a
[ -f "$library" ] || { echo "no shared library was built"; exit 77; }

$NM -D --undefined-only "$library" | sed 's/.* //; s/@.*//' | sort -u >purity.found
if grep -q -E '^__(asan|ubsan|tsan)_' purity.found; then
  echo "built with a sanitizer, which calls its own run time"
  rm -f purity.found
  exit 77
fi

# The names with two underscores and _ITM_ are the toolchain's own, and strlen is
# what compilers make of a loop that measures a text.
strange=$(grep -v -x -F -f "$top_srcdir/tests/abi/libm.txt" purity.found |
  grep -v -x -E 'mem(chr|cmp|cpy|move|set)|strlen|__mem(cpy|move|set)_chk|__cxa_finalize|__gmon_start__|__stack_chk_fail|_ITM_(de)?registerTMCloneTable')
rm -f purity.found
status=0
if [ -n "$strange" ]; then
  echo "the library calls what it must not (to compare text: lib/internal/text.h):"
  echo "$strange"
  status=1
fi

if [ -f "$archive" ]; then
  written=$($OBJDUMP -h "$archive" | awk '/file format/ { object = $1 }
    $2 ~ /^\.(data|bss|tdata|tbss)$/ && $3 !~ /^0+$/ { print object, $2, $3 }')
  if [ -n "$written" ]; then
    echo "these objects hold data that can be written:"
    echo "$written"
    status=1
  fi
fi
exit $status
