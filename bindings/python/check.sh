#!/bin/sh
# SPDX-License-Identifier: MIT
#
# Installs the Python binding from the tree, offline, into a virtual environment
# of its own, and runs its tests there. Exit status 77 where Python lacks what
# that needs.
set -eu
top=$(cd "${top_srcdir:-$(dirname "$0")/../..}" && pwd)
python=${PYTHON:-python3}
"$python" -c 'import venv, setuptools, wheel, pytest' 2>/dev/null || {
  echo "skipped: $python lacks venv, setuptools, wheel or pytest"
  exit 77
}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT INT TERM
unset PYTHONPATH FREEAIR_LIBRARY || true
export PYTHONDONTWRITEBYTECODE=1
"$python" -m venv --system-site-packages "$work/venv" || { echo "skipped: no venv"; exit 77; }
# pip leaves its build folders beside the sources, which may be read-only: work on a copy
mkdir -p "$work/tree/bindings"
cp -R "$top/include" "$top/lib" "$work/tree/"
cp -R "$top/bindings/python" "$work/tree/bindings/"
chmod -R u+w "$work/tree"
"$work/venv/bin/pip" --disable-pip-version-check install --quiet --no-index --no-build-isolation --no-deps \
  "$work/tree/bindings/python"
cd "$work"
FREEAIR_TEST_DATA="$top/tests/data" FREEAIR_API_JSON="$top/bindings/api.json" \
  "$work/venv/bin/python" -m pytest -q -p no:cacheprovider "$top/bindings/python/tests"
