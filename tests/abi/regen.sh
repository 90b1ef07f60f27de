#!/bin/sh
# SPDX-License-Identifier: MIT
#
# What is generated from the headers and committed is up to date.
set -u
[ -n "$PYTHON" ] || { echo "the generator takes Python"; exit 77; }
command -v doxygen >/dev/null || { echo "the generator takes doxygen"; exit 77; }

"$PYTHON" -B "$top_srcdir/bindings/generate/generate.py" --srcdir "$top_srcdir" --check
