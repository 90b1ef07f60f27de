#!/bin/sh
# SPDX-License-Identifier: MIT
#
# What every file of the project owes its reader: no path of somebody's machine,
# no host of a package registry, plain text with a last line that ends, sources
# of at most 120 columns without tabs that say their licence.
set -u
cd "$top_srcdir" || exit 99
status=0
files=$(mktemp) || exit 99
trap 'rm -f "$files"' EXIT

# complain TEXT LINES
complain()
{
  if [ -n "$2" ]; then
    echo "$1:"
    echo "$2" | cut -c1-160 | head -n 20
    status=1
  fi
}

if git rev-parse --is-inside-work-tree >/dev/null 2>&1 && [ -n "$(git ls-files configure.ac)" ]; then
  git ls-files --cached --others --exclude-standard | while read -r f; do [ -f "$f" ] && echo "$f"; done
else
  find README.md DEVELOPERS.md NEWS.md LICENSE configure.ac Makefile.am bootstrap include lib tests bindings examples doc \
    -type f ! -path '*/.*' ! -path '*/__pycache__/*' ! -name '*.o' ! -name '*.l[ao]' ! -name '*.log' ! -name '*.trs'
fi | sort >"$files" || exit 99
[ -s "$files" ] || { echo "no files found"; exit 99; }
# all GREP-OPTIONS...  searches every text file
all()
{
  xargs -d '\n' grep -I -n "$@" /dev/null <"$files" | grep -v '^tests/abi/text\.sh:'
}
sources=$(grep -E '\.(c|h)$' "$files")
# c GREP-OPTIONS...  searches every C file that is written by hand
c()
{
  echo "$sources" | grep -v -E '(^|/)generated/' | xargs -d '\n' grep -n "$@" /dev/null
}

complain "paths of a machine" "$(all -E '/(work|root|home|Users)/[A-Za-z]|/tmp/[a-z]|[A-Z]:\\\\')"
complain "hosts of package registries" \
  "$(all -i -E '(deb|security|snapshot|ftp)\.debian\.org|pypi\.org|pythonhosted\.org|npmjs\.(org|com)|crates\.io|proxy\.golang\.org|nodesource\.com')"
complain "markers of an unfinished merge" "$(all -E '^(<<<<<<<|>>>>>>>)( |$)')"
complain "lines longer than 120 columns" "$(c -E '^.{121,}$' | grep -v -F '@source{')"
complain "tabs" "$(c -F "$(printf '\t')")"
complain "space at the end of a line" "$(c -E '[[:space:]]$')"
complain "no licence in the first line" "$(echo "$sources" | while read -r f; do
  head -n 1 "$f" | grep -q -F '/* SPDX-License-Identifier: MIT */' || echo "$f"
done)"
complain "the last line does not end" "$(echo "$sources" | while read -r f; do
  [ -z "$(tail -c 1 "$f")" ] || echo "$f"
done)"
complain "not UTF-8" "$(LC_ALL=C.UTF-8 all -a -x -v '.*' | grep -v -E '\.(png|pdf)')"
exit $status
