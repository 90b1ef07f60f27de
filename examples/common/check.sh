# SPDX-License-Identifier: MIT
# shellcheck shell=sh disable=SC2034
#
# What the checks of the examples share: a folder for their files, and words for
# what a program must do. Read in by a check.sh that has set $program.
work=$(mktemp -d) || exit 99
trap 'rm -rf "$work"' EXIT INT TERM
failed=0

fail()
{
  echo "$(basename "$program"): $*"
  failed=1
}

# expect STATUS PATTERN ARGUMENT...  the exit status, and an extended pattern in what is printed.
expect()
{
  status=$1 pattern=$2
  shift 2
  "$program" "$@" >"$work/out" 2>"$work/err"
  got=$?
  if [ $got != "$status" ] || ! cat "$work/out" "$work/err" | grep -q -E -e "$pattern"; then
    fail "$*"
    echo "  exit status $got, wanted $status; wanted to see: $pattern"
    tail -n 30 "$work/out" "$work/err" | sed 's/^/  /'
  fi
  if [ "$status" = 2 ] && [ -s "$work/out" ]; then fail "$*: printed a result beside an error"; fi
}

# refuse ARGUMENT...  each of them alone is an error of the user, who is told.
refuse()
{
  for wrong in "$@"; do
    "$program" "$wrong" >"$work/out" 2>"$work/err"
    got=$?
    if [ $got != 2 ] || [ ! -s "$work/err" ]; then fail "'$wrong' gave status $got"; fi
  done
}
