#!/bin/sh
# SPDX-License-Identifier: MIT
#
# bindings/api.json keeps its schema.
set -u
"${PYTHON:-python3}" -c 'import jsonschema' 2>/dev/null || {
  echo "skipped: no Python with jsonschema"
  exit 77
}
exec "$PYTHON" "$top_srcdir/tests/abi/validate.py"
