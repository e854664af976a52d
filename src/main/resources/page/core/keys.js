/**
 * The links this device knows. A token is kept in this browser's storage, because who loses a
 * leader's link loses the trip; "forget on this device" takes it out. Another tab may have another
 * link of the same trip open, so a tab remembers which one it was opened with.
 */
import { forgetCard } from "./kept.js";

const PLACE = "faircarry.trips";
const TAB = "faircarry.tab.";

function stored(place, key) {
  try {
    return place.getItem(key);
  } catch {
    return null; // storage is switched off: the link works until the tab is closed
  }
}

function store(place, key, value) {
  try {
    place.setItem(key, value);
  } catch {
    // See above.
  }
}

const inMemory = {};

/** All trips of this device: id to `{token, name, role, opened}`. */
export function known() {
  try {
    return JSON.parse(stored(localStorage, PLACE) ?? "{}");
  } catch {
    return {};
  }
}

/** Keeps what is told of a trip; a new token also becomes that of this tab. */
export function keep(trip, told) {
  const all = known();
  all[trip] = { ...all[trip], ...told, opened: Date.now() };
  store(localStorage, PLACE, JSON.stringify(all));
  if (told.token) {
    inMemory[trip] = told.token;
    store(sessionStorage, TAB + trip, told.token);
  }
}

/** The token to ask for a trip with; empty if this device has none. */
export function tokenOf(trip) {
  return inMemory[trip] ?? stored(sessionStorage, TAB + trip) ?? known()[trip]?.token ?? "";
}

/** Takes a trip and its token off this device. */
export function forget(trip) {
  forgetCard(trip);
  const all = known();
  delete all[trip];
  store(localStorage, PLACE, JSON.stringify(all));
  delete inMemory[trip];
  try {
    sessionStorage.removeItem(TAB + trip);
  } catch {
    // Nothing was kept.
  }
}
