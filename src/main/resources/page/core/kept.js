/**
 * Cards kept on this device, so that they can be read where there is no network; and the ticks made
 * on them. They go with the trip when it is forgotten here.
 */
const CARD = "faircarry.card.";
const TICKS = "faircarry.ticks.";

function read(key) {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "null");
  } catch {
    return null;
  }
}

function write(key, value) {
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // Without storage the card is there as long as the page is.
  }
}

/** What was kept of a trip: `{card, absences, at}`, or null. */
export function keptCard(trip) {
  return read(CARD + trip);
}

/** Keeps a card; the worker that keeps the page itself is started with the first one. */
export function keepCard(trip, card, absences) {
  write(CARD + trip, { card, absences, at: Date.now() });
  keepPage();
}

export function forgetCard(trip) {
  try {
    localStorage.removeItem(CARD + trip);
    localStorage.removeItem(TICKS + trip);
  } catch {
    // Nothing was kept.
  }
}

/** Whether something is ticked on the card of a split. */
export function ticked(trip, split, name) {
  const ticks = read(TICKS + trip);
  return ticks?.split === split && ticks.names.includes(name);
}

/** Ticks or unticks; ticks of another split are gone with it. */
export function tickOff(trip, split, name, on) {
  const ticks = read(TICKS + trip);
  const before = ticks?.split === split ? ticks.names : [];
  write(TICKS + trip, { split, names: before.filter((n) => n !== name).concat(on ? [name] : []) });
}

function keepPage() {
  if (!("serviceWorker" in navigator)) return;
  navigator.serviceWorker.register("/worker.js", { scope: "/" }).catch(() => {
    // Some browsers keep nothing in private windows; the card is then there online only.
  });
}
