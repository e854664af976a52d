#!/bin/sh
# The same walk as walk.sh with a trip that the service keeps: it is made, split and agreed on, and every change is a revision of it.
#
#   sh demo-data/scripts/walk-stored.sh [ADDRESS]
#
# ADDRESS and the WALK_ settings are those of walk.sh, and so is what it ends with. Two more:
#   FAIRCARRY_CREATION_KEY  what the service wants to know before it keeps a trip, if anything
#   WALK_LINK               file for the leader's link, to go on with the trip; without it the trip is erased at the end

here=$(dirname "$0")
address=${1:-${FAIRCARRY_ADDRESS:-http://127.0.0.1:8080}}
address=${address%/}
trip=${WALK_TRIP:-$here/trip.json}
who=${WALK_WHO:-sofi}
handovers=${WALK_HANDOVERS:-}
item=${WALK_ITEM-$here/item.json}
readings=${WALK_READINGS-$here/readings.csv}
link=${WALK_LINK:-}

. "$here/common.sh"

for file in "$trip" ${item:+"$item"} ${readings:+"$readings"}; do
  [ -r "$file" ] || fail 3 "Cannot read $file."
done

# opens TOKEN: from now on curl sends this; by a file, so that nobody sees it.
opens() {
  printf 'header = "Authorization: Bearer %s"\n' "$1" >"$work/secret"
}

# newest: the tag of the newest revision, which a change has to name.
newest() {
  ask "The trip" 200 "$work/now" "$address$place"
  tag=$(header ETag "$work/now")
}

# leave: erases the trip, whatever came of it, and keeps the exit code.
leave() {
  ended=$?
  if [ -n "$place" ] && [ -z "$link" ]; then
    curl --disable --config "$work/secret" --silent --fail --max-time 120 --output /dev/null \
      --request POST --header 'If-Match: *' "$address$place/erase" || printf 'The trip could not be erased.\n' >&2
  fi
  rm -rf "$work"
  exit "$ended"
}
place=
trap leave EXIT

# rebalance CHANGES: asks what to hand over, and takes it over.
rebalance() {
  newest
  printf '{"changes":%s%s,"accept":true}' "$1" "${handovers:+,\"maxHandovers\":$handovers}" >"$work/request"
  send "Rebalance" "201 200" "$work/rebalanced" "$place/rebalances" "$work/request" --header "If-Match: $tag"
  found "$work/rebalanced" curve
  chosen "$work/rebalanced"
}

heading The trip is kept
[ -z "${FAIRCARRY_CREATION_KEY:-}" ] || opens "$FAIRCARRY_CREATION_KEY"
send "The trip" 201 "$work/made" /v1/trips "$trip"
place=$(header Location "$work/made")
token=$(need token "$work/made") || exit
opens "$token"
[ -z "$link" ] || printf '%s\n' "$token" >"$link" || fail 3 "Cannot write $link."
printf '%s%s\n' "$address" "$place"

heading Split
ask "Split" "200 201 202" "$work/first" --request POST --header 'Prefer: wait=30' "$address$place/splits"
solve=$(header Location "$work/first")
while [ "$status" = 202 ]; do
  sleep 1
  ask "Split" 200 "$work/first" "$address$solve"
  case $(value state "$work/first") in
    waiting | running) status=202 ;;
    failed) fail 4 "The search failed." ;;
    done) ask "Split" 200 "$work/first" "$address$place/splits/${solve##*/}" ;;
  esac
done
found "$work/first" split
carries "$work/first"
tell "Worst ratio" worst/targetRatio "$work/first"

heading Agreed
newest
split=$(need kept/id "$work/first") || exit
printf '{"split":"%s"}' "$split" >"$work/request"
send "Agreed" 204 "$work/agreed" "$place/agreed-split" "$work/request" --request PUT --header "If-Match: $tag"
printf '%s\n' "$split"

heading If one of us does not come
ask "If one of us does not come" 200 "$work/absences" --request POST "$address$place/drop-outs"
value 'dropOuts/*/text' "$work/absences"

heading "Without $who"
rebalance "[{\"kind\":\"drops-out\",\"hiker\":\"$who\"}]"

if [ -n "$item" ]; then
  heading Who takes one more thing
  printf '{"item":%s}' "$(cat "$item")" >"$work/request"
  send "Who takes one more thing" 200 "$work/takers" "$place/takers" "$work/request"
  takers "$work/takers"
fi

if [ -n "$readings" ]; then
  heading At the scale
  cp "$readings" "$work/readings.csv"
  send "At the scale" 201 "$work/read" "$place/readings" "$work/readings.csv"
  newest
  printf '{"accept":"all"}' >"$work/request"
  send "At the scale" 200 "$work/weighed" "$place/weigh-ins" "$work/request" --header "If-Match: $tag"
  weighed "$work/weighed"

  heading As weighed
  rebalance '[]'
fi

heading The last look
ask "The last look" 200 "$work/departure" "$address$place/departure-check"
ready "$work/departure"
