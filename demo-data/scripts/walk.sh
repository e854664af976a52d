#!/bin/sh
# From the first split to the trailhead with plain requests, of which the service keeps nothing: split, what if somebody does not come,
# somebody does not come, who takes one more thing, the scale, the last look.
#
#   sh demo-data/scripts/walk.sh [ADDRESS]
#
# ADDRESS, or else FAIRCARRY_ADDRESS, is that of a running service; http://127.0.0.1:8080 if neither is given. More settings, all optional:
#   WALK_TRIP       file with the trip
#   WALK_WHO        id of the hiker who does not come
#   WALK_HANDOVERS  how many things may change hands; without it the service recommends
#   WALK_ITEM       file with one more thing for somebody to take; empty for none
#   WALK_READINGS   table (CSV) with the readings of the scale; empty for none
#
# Ends with 0 ready, 1 ready with cautions, 2 not ready or no split that keeps all rules, 3 something that was sent is refused, 4 the service
# cannot be reached or came to no answer.

here=$(dirname "$0")
address=${1:-${FAIRCARRY_ADDRESS:-http://127.0.0.1:8080}}
address=${address%/}
trip=${WALK_TRIP:-$here/trip.json}
who=${WALK_WHO:-sofi}
handovers=${WALK_HANDOVERS:-}
item=${WALK_ITEM-$here/item.json}
readings=${WALK_READINGS-$here/readings.csv}

. "$here/common.sh"

for file in "$trip" ${item:+"$item"} ${readings:+"$readings"}; do
  [ -r "$file" ] || fail 3 "Cannot read $file."
done

# pair TRIP SPLIT MORE: a document with a trip, a split and more fields, which start with a comma.
pair() {
  printf '{"trip":'
  cat "$1"
  printf ',"split":'
  cat "$2"
  printf '%s}' "$3"
}

# rebalance TRIP SPLIT CHANGES: asks what to hand over; prints it; leaves the trip and the split there are then in $work/trip and $work/split.
rebalance() {
  pair "$1" "$2" ",\"changes\":$3${handovers:+,\"maxHandovers\":$handovers}" >"$work/request"
  send "Rebalance" 200 "$work/rebalanced" /v1/rebalances "$work/request"
  found "$work/rebalanced" curve
  chosen "$work/rebalanced"
  need trip "$work/rebalanced" >"$work/trip" || exit
  need "$point/split" "$work/rebalanced" >"$work/split" || exit
}

heading Split
send Split 200 "$work/first" /v1/splits "$trip"
found "$work/first" split
carries "$work/first"
tell "Worst ratio" worst/targetRatio "$work/first"

heading If one of us does not come
pair "$trip" "$work/first" '' >"$work/request"
send "If one of us does not come" 200 "$work/absences" /v1/drop-outs "$work/request"
value 'dropOuts/*/text' "$work/absences"

heading "Without $who"
rebalance "$trip" "$work/first" "[{\"kind\":\"drops-out\",\"hiker\":\"$who\"}]"

if [ -n "$item" ]; then
  heading Who takes one more thing
  pair "$work/trip" "$work/split" ",\"item\":$(cat "$item")" >"$work/request"
  send "Who takes one more thing" 200 "$work/takers" /v1/takers "$work/request"
  takers "$work/takers"
fi

if [ -n "$readings" ]; then
  heading At the scale
  cp "$readings" "$work/readings.csv"
  send "At the scale" 200 "$work/read" /v1/tables/readings "$work/readings.csv"
  pair "$work/trip" "$work/split" ",\"readings\":$(need readings "$work/read"),\"accept\":\"all\"" >"$work/request"
  send "At the scale" 200 "$work/weighed" /v1/weigh-ins "$work/request"
  weighed "$work/weighed"
  need trip "$work/weighed" >"$work/trip.weighed" || exit
  cp "$work/split" "$work/split.before"

  heading As weighed
  rebalance "$work/trip.weighed" "$work/split.before" '[]'
fi

heading The last look
pair "$work/trip" "$work/split" ",\"madeFor\":$(cat "$work/trip")" >"$work/request"
send "The last look" 200 "$work/departure" /v1/departure-checks "$work/request"
ready "$work/departure"
