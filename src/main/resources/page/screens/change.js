/** A change of plans: what happened, the ways to answer it as a picture, the handovers to read out. */
import { focusOn, html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { choice, field, Issues } from "../core/fields.js";
import * as desk from "../core/desk.js";
import { edit, trip } from "../core/trip.js";
import { at } from "../core/router.js";
import { entered } from "../core/units.js";
import { askWhole, seesAll } from "../core/whole.js";
import { count, Names, ratio } from "../core/words.js";
import { curve } from "../picture/curve.js";

const EFFORT = 8_000_000;
const KINDS = [
  ["drops-out", "Someone is not coming"],
  ["leaves-after", "Someone leaves early"],
  ["item-gone", "Something is not there"],
  ["item-weighs", "Something weighs otherwise"],
];

const issues = new Issues();
const draft = { kind: "drops-out", hiker: "", day: "1", piece: "", mass: "" };
const state = { trip: "", busy: false, answer: null, pick: 0, done: false };

export function title() {
  return "Change of plans";
}

export async function enter() {
  if (state.trip !== trip.id) Object.assign(state, { trip: trip.id, busy: false, answer: null, pick: 0 });
  state.done = false;
  issues.clear();
  desk.layOut();
}

export function view() {
  const { kept } = desk.desk;
  return html`
    <h1 tabindex="-1">Change of plans</h1>
    ${state.done ? html`<p class="notes" role="status">Done: the trip is changed and the new split is agreed on.</p>` : nothing}
    ${!kept
      ? html`<p>There is no split yet that a change could start from. <a href=${at(trip.id, "loads")}>Find one first.</a></p>`
      : !seesAll()
        ? html`<p>
            A hiker keeps their body mass private, so the ways to answer a change cannot be compared here. Change the
            trip under People, and find a new split under Loads.
          </p>`
        : [question(), outcome()]}
  `;
}

function question() {
  const names = new Names(trip.document);
  const set = (name) => (value) => {
    draft[name] = value;
    state.answer = null;
    redraw();
  };
  const { kind } = draft;
  if (!names.hikers.has(draft.hiker)) draft.hiker = trip.document.hikers[0].id;
  if (!names.pieces.has(draft.piece)) draft.piece = [...names.pieces.keys()][0] ?? "";
  return html`<form
    class="form"
    @submit=${(e) => {
      e.preventDefault();
      ask();
    }}
  >
    ${choice({ label: "What happened", pointer: "what-happened", value: kind, options: KINDS, changed: set("kind") })}
    ${["drops-out", "leaves-after"].includes(kind)
      ? choice({ label: "Who", pointer: "/changes/0/hiker", issues, value: draft.hiker, options: [...names.hikers], changed: set("hiker") })
      : choice({ label: "What", pointer: "/changes/0/piece", issues, value: draft.piece, options: [...names.pieces], changed: set("piece") })}
    ${kind === "leaves-after"
      ? field({ label: "After day", pointer: "/changes/0/day", issues, mode: "numeric", value: draft.day, typed: (t) => (draft.day = t) })
      : nothing}
    ${kind === "item-weighs"
      ? field({ label: "It weighs", pointer: "/changes/0/mass", issues, value: draft.mass, typed: (t) => (draft.mass = t) })
      : nothing}
    <div class="wide">
      ${issues.leftOver()}
      <p class="actions">
        <button type="submit" ?disabled=${state.busy}>${state.busy ? "Searching …" : "What now?"}</button>
      </p>
    </div>
  </form>`;
}

function asked() {
  const { kind, hiker, day, piece, mass } = draft;
  if (kind === "drops-out") return { kind, hiker };
  if (kind === "leaves-after") return { kind, hiker, day: Number(day) || day };
  if (kind === "item-gone") return { kind, piece };
  return { kind, piece, mass: entered(mass, "gear") };
}

async function ask() {
  issues.clear();
  Object.assign(state, { busy: true, answer: null, done: false });
  redraw();
  try {
    state.answer = await askWhole(`rebalances?effort=${EFFORT}`, {
      split: desk.desk.now.document(),
      changes: [asked()],
    });
    state.pick = state.answer.chosen ?? 0;
    focusOn(".outcome h2");
  } catch (problem) {
    told(problem);
  }
  state.busy = false;
  redraw();
}

function told(problem) {
  if (!(problem instanceof Problem)) throw problem;
  issues.take(problem);
  redraw();
}

function outcome() {
  const { answer: a, pick } = state;
  if (!a) return nothing;
  const notes = (a.notes ?? []).map((note) => html`<li>${note.message}</li>`);
  if (a.result !== "curve") {
    return html`<section class="outcome trouble">
      <h2 tabindex="-1">${a.result === "impossible" ? "Then the rules cannot all hold" : "No split was found within the effort"}</h2>
      <ul>
        ${notes} ${(a.conflict ?? []).map((d) => html`<li>${d.words}</li>`)}
      </ul>
      <p><a href=${at(trip.id, "rules")}>Look at the rules</a></p>
    </section>`;
  }
  const point = a.points[pick];
  return html`<section class="outcome">
    <h2 tabindex="-1">${a.points.length === 1 ? "One way to do it" : `${count(a.points.length, "way")} to do it`}</h2>
    ${notes.length > 0 ? html`<ul class="notes">${notes}</ul>` : nothing}
    ${a.points.length > 1
      ? curve(a.points, pick, a.recommended, (i) => {
          state.pick = i;
          redraw();
        })
      : nothing}
    <p aria-live="polite">
      <b>${count(point.handovers, "handover")}</b>, ${count(point.people, "hiker")} involved; the worst morning then is
      ${worst(point, a)}. ${pick === a.chosen ? a.reason : nothing}
      ${point.proof.proved ? "Proved: nothing fairer with so few." : ""}
    </p>
    <ol class="handovers">
      ${point.list.map((h) => html`<li>${h.words}</li>`)}
    </ol>
    <p class="actions">
      <button type="button" ?disabled=${state.busy} @click=${accept}>Accept: change the trip and agree on this split</button>
      <button
        type="button"
        class="quiet"
        @click=${() => {
          state.answer = null;
          redraw();
        }}
      >
        Leave everything as it is
      </button>
    </p>
  </section>`;
}

function worst(point, a) {
  if (!point.worst) return "nobody's";
  const names = new Names(a.trip);
  return `${names.hiker(point.worst.hiker)}'s on day ${point.worst.day}, at ${ratio(point.worst.targetRatio)} of target`;
}

/** The trip as changed, then the split, then the agreement: three changes, each in the history. */
async function accept() {
  const { answer: a, pick } = state;
  issues.clear();
  state.busy = true;
  redraw();
  try {
    const changed = await edit({ method: "PUT", path: "", body: a.trip, touches: (d) => d, words: "the trip" });
    if (changed) {
      desk.desk.now = desk.desk.now.constructor.of(a.points[pick].split);
      await desk.keepIt();
      await edit({ method: "PUT", path: "/agreed-split", body: { split: desk.desk.kept.kept.id }, touches: () => null, words: "the agreed split" });
      Object.assign(state, { answer: null, done: true });
    }
  } catch (problem) {
    told(problem);
  }
  state.busy = false;
  redraw();
}
