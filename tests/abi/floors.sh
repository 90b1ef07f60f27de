#!/bin/sh
# SPDX-License-Identifier: MIT
#
# The house stands: a topic includes only what lies below it. FLOORS has the
# topics from the ground up, floors apart by a slash; on one floor a topic may use
# those listed before it. Everyone may use export.h. A file of lib/internal/ that
# is named after a topic belongs to it; the others may use the ground floor only.
set -u
ground=${FLOORS%%/*}
order=$(echo "$FLOORS" | tr '/' ' ')

# includes FILE  lists the topics whose headers FILE includes.
includes()
{
  sed -n 's/^ *# *include *[<"]freeair\/\([a-z0-9_]*\)\.h[>"].*/\1/p' "$1"
}

status=0
# hold FILE TOPICS  complains of what FILE includes beyond export.h and TOPICS.
hold()
{
  for used in $(includes "$1"); do
    case " $2 export " in
      *" $used "*) ;;
      *)
        echo "${1#"$top_srcdir"/} includes $used.h, which is not below it"
        status=1
        ;;
    esac
  done
}

known=
for topic in $order; do
  known="$known $topic"
  for file in "$top_srcdir/include/freeair/$topic.h" "$top_srcdir/lib/$topic.c" "$top_srcdir/lib/internal/$topic".*; do
    if [ -f "$file" ]; then hold "$file" "$known"; fi
  done
done
for file in "$top_srcdir"/lib/internal/*; do
  name=$(basename "$file")
  case " $known " in
    *" ${name%.*} "*) ;;
    *) hold "$file" "$ground" ;;
  esac
done
[ -n "$known" ] || { echo "no topics in FLOORS"; status=1; }
exit $status
