/**
 * The split on the desk: the kept one it began with, how it has been changed by hand since, and what
 * the service says of it as it lies there.
 */
import { Arrangement, handoversBetween } from "./arrangement.js";
import { Problem } from "./api.js";
import { askTrip, leads, trip } from "./trip.js";
import { announce, redraw } from "./view.js";

export const desk = {
  /** The trip this is about, and its revision, to notice when it has changed. */
  of: "",
  tag: "",
  /** The kept split it began with, as the service told it, or null. */
  kept: null,
  now: Arrangement.empty(),
  undone: [],
  done: [],
  /** What the independent check says of `now`, or null while it is asked. */
  verdict: null,
  /** What there is to hand out, by piece. */
  sheet: new Map(),
  /** Pieces that stay where they are when the rest is evened out. */
  frozen: new Set(),
  trouble: null,
};

/** Whether pieces lie otherwise than in the kept split. */
export function changedByHand() {
  return desk.done.length > 0;
}

let laid = 0;

/** Reads split and pieces of the open trip, unless they are on the desk already. */
export async function layOut(splitId = "") {
  if (desk.of === trip.id && desk.tag === trip.tag && !splitId && desk.verdict) return;
  const keepMoves = desk.of === trip.id && changedByHand() && !splitId;
  const mine = ++laid;
  try {
    const sheet = (await askTrip("GET", "/pieces")).body;
    desk.sheet = new Map(sheet.pieces.map((line) => [line.piece, line]));
    const kept = keepMoves ? desk.kept : await read(splitId);
    // Whatever was put on the desk while this was read is newer.
    if (mine !== laid) return;
    if (!keepMoves) {
      desk.kept = kept;
      lay(kept ? Arrangement.of(kept) : Arrangement.empty());
    }
    Object.assign(desk, { of: trip.id, tag: trip.tag, trouble: null });
    await judge();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    desk.trouble = problem;
  }
  redraw();
}

/** The split that is wanted, agreed on, or the newest; null where there is none. */
async function read(splitId) {
  let id = splitId || trip.state.agreedSplit;
  if (!id) id = (await askTrip("GET", "/splits?limit=1")).body.items[0]?.id;
  return id ? (await askTrip("GET", `/splits/${id}`)).body : null;
}

function lay(arrangement) {
  Object.assign(desk, { now: arrangement, done: [], undone: [], verdict: null });
}

/** Puts a split on the desk that has just been made and kept. */
export async function take(split) {
  laid++;
  desk.kept = split;
  lay(Arrangement.of(split));
  await judge();
}

/** Puts an arrangement in place of the one that lies there; can be undone. */
export async function rearrange(arrangement, words) {
  desk.done.push({ before: desk.now, words });
  desk.undone = [];
  desk.now = arrangement;
  redraw();
  await judge();
}

export async function undo() {
  const last = desk.done.pop();
  if (!last) return;
  desk.undone.push({ after: desk.now, words: last.words });
  desk.now = last.before;
  announce("Undone: " + last.words);
  await judge();
}

export async function redo() {
  const next = desk.undone.pop();
  if (!next) return;
  desk.done.push({ before: desk.now, words: next.words });
  desk.now = next.after;
  announce("Done again: " + next.words);
  await judge();
}

/** Back to the kept split. */
export async function putBack() {
  lay(desk.kept ? Arrangement.of(desk.kept) : Arrangement.empty());
  await judge();
}

/** Keeps what lies there with the trip, and takes it as agreed on if that is wished. */
export async function keepIt() {
  const answer = await askTrip("POST", "/splits", { body: desk.now.document() });
  desk.kept = answer.body;
  desk.done = [];
  desk.undone = [];
  await judge();
}

/** Days each hiker is there to, by id. */
export function lastDays() {
  const { days, hikers } = trip.document;
  return new Map(hikers.map((h) => [h.id, Math.min(days, h.leavesAfterDay ?? days)]));
}

let asked = 0;

/** Asks the service what it says of what lies there; only the last answer counts. */
async function judge() {
  const mine = ++asked;
  desk.trouble = null;
  redraw();
  try {
    const answer = await askTrip("POST", "/checks", { body: desk.now.document() });
    if (mine !== asked) return;
    desk.verdict = answer.body;
    // A plan of who opens what that was left open has been filled in.
    if (answer.body.opened) desk.now.opened = answer.body.opened;
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    desk.trouble = problem;
  }
  redraw();
}

/** Pieces and units that nobody holds. */
export function withNobody() {
  const left = [];
  for (const [piece, line] of desk.sheet) {
    let units = line.units;
    desk.now.carries.forEach((held) => (units -= held.get(piece) ?? 0));
    if (units > 0) left.push({ piece, units });
  }
  return left;
}

/** How many things have changed hands since the kept split. */
export function handovers() {
  return desk.kept ? handoversBetween(Arrangement.of(desk.kept), desk.now) : [];
}

/** Whether pieces may be moved about here. */
export function mayMove() {
  return leads();
}
