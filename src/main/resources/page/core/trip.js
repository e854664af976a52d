/**
 * The trip that is open: what the service last told of it, and the way every change goes. Others
 * may change the same trip meanwhile; what they did is seen within seconds, and a change of one's
 * own that comes too late is made again if it touches nothing they changed, and else put to whoever
 * made it, never lost.
 */
import { ask, freshKey, Problem } from "./api.js";
import { keep, tokenOf } from "./keys.js";
import { announce, focusOn, redraw } from "./view.js";
import { happened } from "./words.js";

const LOOK_MILLIS = 4000;

/** What is known of the open trip; screens read it and never write it. */
export const trip = {
  id: "",
  /** The trip document, as this link may see it. */
  document: null,
  /** Revision, role, agreed split and whose body mass is hidden. */
  state: null,
  tag: "",
  /** A change that met somebody else's: `{words, mine, theirs, insist, yield}`. */
  conflict: null,
  /** What somebody else just did, in a sentence. */
  news: "",
  /** The last {@link Problem} of reading the trip, or null. */
  trouble: null,
};

let watching = 0;
/** What whoever types right now saw when they began, or null. */
let begun = null;
/** Done when whoever came second has decided about the conflict that is shown. */
let decided = Promise.resolve();
const listeners = new Set();

/** Calls back whenever the trip was read anew; returns the way to stop that. */
export function onTrip(listener) {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function leads() {
  return trip.state?.you.role === "leader";
}

/** Opens a trip by its id, with the link this device has for it. */
export async function open(id) {
  if (trip.id === id && trip.document) return;
  begun = null;
  decided = Promise.resolve();
  Object.assign(trip, { id, document: null, state: null, tag: "", conflict: null, news: "", trouble: null });
  clearInterval(watching);
  watching = setInterval(look, LOOK_MILLIS);
  await refresh();
}

export function close() {
  clearInterval(watching);
  trip.id = "";
  trip.document = null;
}

/** Asks the service something about the open trip; the path begins behind its id. */
export function askTrip(method, path, how = {}) {
  return ask(method, `/v1/trips/${trip.id}${path}`, { token: tokenOf(trip.id), ...how });
}

/** Reads the trip anew. */
export async function refresh() {
  const id = trip.id;
  try {
    const [document, state] = await Promise.all([askTrip("GET", ""), askTrip("GET", "/state")]);
    if (trip.id !== id) return;
    take(document, state.body);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    trip.trouble = problem;
  }
  redraw();
}

function take(document, state) {
  trip.document = document.body;
  trip.tag = document.tag;
  trip.state = state;
  trip.trouble = null;
  keep(trip.id, { name: trip.document.name, role: state.you.role, hiker: state.you.hiker ?? "" });
  listeners.forEach((listener) => listener());
}

/** Looks whether others changed anything. */
async function look() {
  if (!trip.document || document.hidden) return;
  const tag = trip.tag;
  try {
    const answer = await askTrip("GET", "", { known: tag });
    if (answer.status === 304 || trip.tag !== tag) {
      if (trip.trouble) {
        trip.trouble = null;
        redraw();
      }
      return;
    }
    const lines = await askTrip("GET", "/history?limit=1");
    await refresh();
    tell(lines.body.items[0]);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    trip.trouble = problem;
    redraw();
  }
}

function tell(line) {
  if (!line) return;
  const who = line.by.hiker
    ? (trip.document.hikers.find((h) => h.id === line.by.hiker)?.name ?? "Somebody")
    : "A leader";
  trip.news = `${who} ${happened(line.what, trip.document)}.`;
  announce(trip.news);
  redraw();
}

export function newsRead() {
  trip.news = "";
  redraw();
}

/** Somebody begins to type: their change is held against what they see now. */
export function begin() {
  begun ??= trip.document;
}

/** What was typed is on its way, or given up. */
export function end() {
  begun = null;
}

/**
 * Makes a change. What others did since its author began is compared, not what they did since it
 * was sent: news that came while somebody was typing is no consent.
 *
 * @param {object} change `method`, `path`, `patch` or `body`; `touches`, a function from a trip
 *   document to what the change is about, compared to tell whether others changed the same;
 *   `words`, what it is in the words of whoever makes it; `mine`, what it makes of it, if patch
 *   and body do not say
 * @param before the trip document its author saw
 * @returns the answer, or null if somebody else's change stands instead
 * @throws {Problem} except for 412
 */
export async function edit(change, before = begun ?? trip.document) {
  const touched = change.touches ?? ((document) => document);
  if (!same(touched(before), touched(trip.document))) return settle(change, touched);
  const { tag } = trip;
  const how = { tag, patch: change.patch, body: change.body };
  if (change.method === "POST") how.key = freshKey();
  try {
    const answer = await askTrip(change.method, change.path, how);
    await refresh();
    return answer;
  } catch (problem) {
    if (!(problem instanceof Problem) || problem.status !== 412) throw problem;
    await refresh();
    if (trip.tag === tag) throw problem;
    // If they changed something else, both changes stand.
    return edit(change, before);
  }
}

function same(a, b) {
  return JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
}

/** Puts two changes of the same thing to whoever came second; one such question at a time. */
async function settle(change, touched) {
  decided = decided.then(() => insists(change, touched(trip.document)));
  return (await decided) ? edit(change, trip.document) : null;
}

function insists(change, theirs) {
  return new Promise((resolve) => {
    const decide = (insist) => () => {
      trip.conflict = null;
      redraw();
      resolve(insist);
    };
    trip.conflict = {
      words: change.words ?? "this",
      mine: change.mine ?? change.patch ?? change.body ?? "removed",
      theirs: theirs ?? "removed",
      insist: decide(true),
      yield: decide(false),
    };
    announce("Somebody else changed the same thing meanwhile.");
    redraw();
    focusOn("#conflict-title");
  });
}
