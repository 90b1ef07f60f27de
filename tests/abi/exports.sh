#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The shared library exports the functions that bindings/api.json describes, no
# more and no less.
set -u
library=$top_builddir/.libs/libfreeair.so
[ -f "$library" ] || { echo "no shared library was built"; exit 77; }
[ -n "$PYTHON" ] || { echo "reading api.json takes Python"; exit 77; }

$NM -D --defined-only "$library" | awk '$2 != "A" { print $3 }' | sed 's/@.*//' | sort -u >exports.found
"$PYTHON" -c '
import json, sys
api = json.load(open(sys.argv[1], encoding="utf-8"))
print("\n".join(sorted(f["name"] for f in api["functions"])))' "$top_srcdir/bindings/api.json" >exports.described &&
  [ -s exports.described ] || exit 1
diff exports.described exports.found >exports.diff && status=0 || status=1
if [ $status != 0 ]; then
  echo "described (<) and exported (>) differ; run make regen, and build"
  cat exports.diff
fi
rm -f exports.described exports.found exports.diff
exit $status
