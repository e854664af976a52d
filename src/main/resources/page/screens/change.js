/** A change of plans: what happened, the ways to answer it as a picture, the handovers to read out. */
import { focusOn, html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { choice, field, Issues } from "../core/fields.js";
import * as desk from "../core/desk.js";
import { askTrip, edit, trip } from "../core/trip.js";
import { at } from "../core/router.js";
import { entered } from "../core/units.js";
import { count, list, Names, ratio } from "../core/words.js";
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
const state = { trip: "", busy: false, answer: null, about: null, pick: 0, done: false };

export function title() {
  return "Change of plans";
}

export async function enter() {
  if (state.trip !== trip.id) Object.assign(state, { trip: trip.id, busy: false, answer: null, pick: 0 });
  state.done = false;
  issues.clear();
}

export function view() {
  return html`
    <h1 tabindex="-1">Change of plans</h1>
    ${state.done ? html`<p class="notes" role="status">Done: the trip is changed and the new split is agreed on.</p>` : nothing}
    ${trip.state.agreedSplit
      ? [question(), outcome()]
      : html`<p>There is no split agreed on that a change could start from. <a href=${at(trip.id, "loads")}>Choose one first.</a></p>`}
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

/** The service starts from the newest document and the agreed split, whatever lies on the desk. */
function rebalance(more = {}) {
  return { method: "POST", path: `/rebalances?effort=${EFFORT}`, body: { changes: [state.about], ...more } };
}

async function ask() {
  issues.clear();
  Object.assign(state, { busy: true, answer: null, about: asked(), done: false });
  redraw();
  try {
    const { method, path, body } = rebalance();
    state.answer = (await askTrip(method, path, { body })).body;
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
      <b>${count(point.handovers, "handover")}</b>, ${count(point.people, "hiker")} involved${point.worst ? html`; the worst morning then is
      ${worst(point)}` : nothing}. ${pick === a.chosen ? a.reason : nothing}
      ${point.proof.proved ? "Proved: nothing fairer with so few." : ""}
    </p>
    ${point.worst || trip.state.bodyMassHidden.length === 0
      ? nothing
      : html`<p class="hint">How far from target the loads then are is not told: ${hiding()} a body mass private.</p>`}
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

function worst({ worst }) {
  const names = new Names(trip.document);
  return `${names.hiker(worst.hiker)}'s on day ${worst.day}, at ${ratio(worst.targetRatio)} of target`;
}

function hiding() {
  const names = new Names(trip.document);
  const hidden = trip.state.bodyMassHidden.map((id) => names.hiker(id));
  return `${list(hidden)} ${hidden.length === 1 ? "keeps" : "keep"}`;
}

/** Trip, split and agreement in one change: what is picked is found again, and kept. */
async function accept() {
  const point = state.answer.points[state.pick];
  issues.clear();
  state.busy = true;
  redraw();
  try {
    const change = rebalance({ maxHandovers: point.handovers, accept: true });
    const kept = await edit({ ...change, touches: (d) => d, words: "the change of plans" });
    if (kept?.body.kept) {
      await desk.layOut(kept.body.kept.id);
      Object.assign(state, { answer: null, done: true });
    } else if (kept) {
      state.answer = kept.body;
    }
  } catch (problem) {
    told(problem);
  }
  state.busy = false;
  redraw();
}
