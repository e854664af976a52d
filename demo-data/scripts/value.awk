# Prints what stands at a path of a JSON document: awk -v path=points/0/list/*/words -f value.awk FILE
#
# A path has names and places, separated by "/"; "*" is every child, each on a line of its own. Text comes without its quotes, everything
# else as it stands. Ends with 1 if there is nothing.
{ document = document $0 "\n" }

END {
  steps = split(path, step, "/")
  walk(blank(1), 1)
  exit !found
}

function walk(at, i,    child, open, key, place) {
  if (i > steps) {
    found = 1
    print printable(at)
    return
  }
  open = substr(document, at, 1)
  if (open != "{" && open != "[") {
    return
  }
  child = blank(at + 1)
  while (substr(document, child, 1) !~ /^[]}]?$/) {
    key = place++
    if (open == "{") {
      key = substr(document, child + 1, ending(child) - child - 2)
      child = blank(blank(ending(child)) + 1)
    }
    if (step[i] == "*" || step[i] == key "") {
      walk(child, i + 1)
    }
    child = blank(ending(child))
    if (substr(document, child, 1) == ",") {
      child = blank(child + 1)
    }
  }
}

# The first place from here on that is not blank.
function blank(at) {
  while (substr(document, at, 1) ~ /^[ \t\r\n]$/) {
    at++
  }
  return at
}

# The place behind the value that starts here.
function ending(at,    c, depth) {
  c = substr(document, at, 1)
  if (c == "\"") {
    for (at++; (c = substr(document, at, 1)) != "\"" && c != ""; at++) {
      if (c == "\\") {
        at++
      }
    }
    return at + 1
  }
  if (c != "{" && c != "[") {
    while (substr(document, at, 1) !~ /^[],} \t\r\n]?$/) {
      at++
    }
    return at
  }
  for (; (c = substr(document, at, 1)) != ""; at++) {
    if (c == "\"") {
      at = ending(at) - 1
    } else if (c == "{" || c == "[") {
      depth++
    } else if ((c == "}" || c == "]") && --depth == 0) {
      return at + 1
    }
  }
  return at
}

# Escaped control characters other than new lines are left out, for the answer may be shown on a terminal.
function printable(at,    end, c, out) {
  end = ending(at)
  if (substr(document, at, 1) != "\"") {
    return substr(document, at, end - at)
  }
  for (at++; at < end - 1; at++) {
    c = substr(document, at, 1)
    if (c == "\\") {
      at++
      c = substr(document, at, 1)
      if (c == "u") {
        at += 4
        c = ""
      } else if (c == "n") {
        c = "\n"
      } else if (c ~ /^[bfrt]$/) {
        c = " "
      }
    }
    out = out c
  }
  return out
}
