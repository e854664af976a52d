/**
 * Addresses. Everything behind # stays in the browser, so a link's token may stand there: it is
 * never part of a request. `#/open/TRIP/TOKEN` is what is handed out; it is taken out of the
 * address as soon as it is read.
 */
import { keep } from "./keys.js";

/** Where an address leads: `{screen, trip, rest}`. */
export function read(hash) {
  const steps = hash.replace(/^#\/?/, "").split("/").filter(Boolean).map(decodeURIComponent);
  if (steps[0] === "open" && steps.length >= 3) {
    return { screen: "open", trip: steps[1], token: steps[2], rest: steps.slice(3) };
  }
  if (steps[0] === "t" && steps.length >= 2) {
    return { screen: steps[2] ?? "", trip: steps[1], rest: steps.slice(3) };
  }
  return { screen: steps[0] ?? "home", trip: "", rest: steps.slice(1) };
}

/** The address of a screen of a trip. */
export function at(trip, screen, ...rest) {
  return "#/" + ["t", trip, screen, ...rest].map(encodeURIComponent).join("/");
}

/** The link that is handed to somebody. */
export function handedOut(trip, token) {
  return `${location.origin}/#/open/${encodeURIComponent(trip)}/${encodeURIComponent(token)}`;
}

export function go(address) {
  location.hash = address;
}

/** The same without a step back to where one came from. */
export function goInstead(address) {
  history.replaceState(null, "", address);
  window.dispatchEvent(new HashChangeEvent("hashchange"));
}

/** Calls `arrived` now and whenever the address changes. */
export function follow(arrived) {
  const look = () => {
    const place = read(location.hash);
    if (place.screen === "open") {
      keep(place.trip, { token: place.token });
      goInstead(at(place.trip, "", ...place.rest));
      return;
    }
    arrived(place);
  };
  window.addEventListener("hashchange", look);
  look();
}
