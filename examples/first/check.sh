#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The README shows this program and what it prints, both to the letter.
set -u
here=${top_srcdir:-.}/examples/first
readme=${top_srcdir:-.}/README.md
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT INT TERM
block() { awk -v want="$1" '$0 == "```" want { show = 1; next } /^```/ { if (show) exit } show' "$readme"; }
block c >"$work/program"
block text >"$work/wanted"
"${top_builddir:-.}/examples/first/first" >"$work/printed" || exit 1
cmp "$here/first.c" "$work/program" && cmp "$work/wanted" "$work/printed"
