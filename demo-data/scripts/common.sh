# What the walks share. Read by them with ".", not run by itself.
#
# Nothing secret stands in an address or in the list of processes: what a link opens with goes to curl in a file that only its owner reads.

set -u
umask 077

work=$(mktemp -d) || exit 4
trap 'rm -rf "$work"' EXIT
trap 'exit 4' HUP INT TERM
: >"$work/secret"

# Says what went wrong and ends: 2 no split, 3 the request was refused, 4 the service did not answer as it should.
fail() {
  code=$1
  shift
  printf '%s\n' "$*" >&2
  exit "$code"
}

# value PATH FILE: what stands there in a JSON document.
value() {
  awk -v path="$1" -f "$here/value.awk" "$2"
}

# need PATH FILE: the same of what has to be there.
need() {
  value "$1" "$2" || fail 4 "The answer of the service has no $1."
}

# tell WORDS PATH FILE: prints what has to be there.
tell() {
  told=$(need "$2" "$3") || exit
  printf '%s: %s\n' "$1" "$told"
}

# ask WHAT STATUS ANSWER ARGUMENTS...: one request. STATUS is what it has to be answered with, ANSWER the file for the body; the head of the
# answer goes to ANSWER.head.
ask() {
  what=$1 wanted=$2 answer=$3
  shift 3
  status=$(curl --disable --config "$work/secret" --silent --show-error --max-time 120 \
    --header 'Accept: application/json' --output "$answer" --dump-header "$answer.head" --write-out '%{http_code}' "$@") ||
    fail 4 "$what: the service at $address cannot be reached."
  case " $wanted " in
    *" $status "*) return ;;
  esac
  printf '%s: answered with %s.\n' "$what" "$status" >&2
  for line in title detail 'issues/*/pointer' 'issues/*/message'; do
    value "$line" "$answer" >&2
  done
  case $status in
    4*) exit 3 ;;
    *) exit 4 ;;
  esac
}

# send WHAT STATUS ANSWER PATH BODY ARGUMENTS...: a request with a body, which is a file: a table if it ends in .csv, else JSON.
send() {
  step=$1 ok=$2 to=$3 path=$4 body=$5
  shift 5
  case $body in
    *.csv) kind=text/csv ;;
    *) kind=application/json ;;
  esac
  ask "$step" "$ok" "$to" --header "Content-Type: $kind" --data-binary "@$body" "$@" "$address$path"
}

# header NAME ANSWER: what stands in the head of an answer.
header() {
  grep -i "^$1:" "$2.head" | tail -n 1 | sed 's/^[^:]*: *//' | tr -d '\r'
}

# heading WORDS...
heading() {
  printf '\n%s\n' "$*"
}

# found ANSWER WANTED: ends with 2 or 4 unless the search came to a result.
found() {
  result=$(need result "$1") || exit
  case $result in
    "$2") ;;
    impossible)
      printf 'The rules cannot all hold. In conflict are:\n' >&2
      value 'conflict/*/words' "$1" >&2
      exit 2
      ;;
    *) fail 4 "The search came to no split: $result." ;;
  esac
}

# carries SPLIT: who carries what.
carries() {
  i=0
  while name=$(value "carries/$i/name" "$1"); do
    printf '%s: %s\n' "$name" "$(value "carries/$i/pieces/*" "$1" | tr -s '\n ' ' ')"
    i=$((i + 1))
  done
}

# chosen ANSWER: who gives what to whom at the chosen point of a curve; $point is its path.
chosen() {
  point=points/$(need chosen "$1") || exit
  value 'notes/*/message' "$1"
  value "$point/list/*/words" "$1"
  tell Handovers "$point/handovers" "$1"
  tell "Worst ratio" "$point/worst/targetRatio" "$1"
}

# takers ANSWER: who could take it, the best first, and why others cannot.
takers() {
  i=0
  while hiker=$(value "takers/$i/hiker" "$1"); do
    if rank=$(value "takers/$i/rank" "$1"); then
      tell "$rank. $hiker, worst ratio then" "takers/$i/worst/targetRatio" "$1"
    else
      printf '%s cannot: %s\n' "$hiker" "$(value "takers/$i/findings/*/message" "$1" | tr '\n' ' ')"
    fi
    i=$((i + 1))
  done
}

# weighed ANSWER: what each reading comes to.
weighed() {
  i=0
  while kind=$(value "weighed/$i/kind" "$1"); do
    printf '%s %s: %s, %s g read, %s g expected\n' "$kind" "$(value "weighed/$i/hiker" "$1" || value "weighed/$i/piece" "$1")" \
      "$(need "weighed/$i/result" "$1")" "$(value "weighed/$i/readGrams" "$1")" "$(value "weighed/$i/expectedGrams" "$1")"
    i=$((i + 1))
  done
  value 'notes/*/message' "$1"
}

# ready ANSWER: prints what a departure check says, and ends the walk with it.
ready() {
  value 'findings/*/message' "$1"
  tell Departure readiness "$1"
  case $told in
    ready) exit 0 ;;
    ready-with-cautions) exit 1 ;;
    *) exit 2 ;;
  esac
}
