/** A hiker's own card: what to carry, kept on this device for where there is no network. */
import { announce, html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { askTrip, onTrip, trip } from "../core/trip.js";
import { cardSheet } from "../core/card.js";
import { keepCard, ticked, tickOff } from "../core/kept.js";
import { units } from "../core/units.js";

const state = { card: null, absences: null, none: "", sent: "" };
let stop = () => {};

export function title() {
  return "Your card";
}

export async function enter() {
  stop();
  stop = onTrip(load);
  await load();
}

export function leave() {
  stop();
}

async function load() {
  const me = trip.state.you.hiker;
  try {
    const { body } = await askTrip("GET", `/hikers/${me}/card`);
    if (state.card?.kept.id !== body.kept.id) Object.assign(state, { absences: null, sent: "" });
    Object.assign(state, { card: body, none: "" });
    keepCard(trip.id, body, state.absences);
    redraw();
    if (!state.absences) state.absences = (await askTrip("GET", "/absences")).body.absences;
    keepCard(trip.id, body, state.absences);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    if (problem.status === 404) state.card = null;
    state.none = problem.message;
  }
  redraw();
}

/** The ticks of the card that is shown. */
export function ticksOf(id, card) {
  return {
    is: (name) => ticked(id, card.kept.id, name),
    change: (name, on) => tickOff(id, card.kept.id, name, on),
  };
}

export function view() {
  if (!state.card) {
    return html`<h1 tabindex="-1">Your card</h1>
      <p>${state.none || "Reading your card …"}</p>
      ${state.none ? html`<p>It stands here as soon as a leader has chosen a split for the group.</p>` : nothing}`;
  }
  return html`<h1 tabindex="-1">Your card</h1>
    <p class="actions no-print">
      <button type="button" @click=${send}>Send as a message</button>
      <button type="button" class="quiet" @click=${() => window.print()}>Print</button>
    </p>
    ${state.sent
      ? html`<div class="field no-print">
          <label for="message">Copy this into a message</label>
          <textarea id="message" readonly rows="12" .value=${state.sent}></textarea>
        </div>`
      : nothing}
    ${cardSheet(state.card, state.card, state.absences, ticksOf(trip.id, state.card))}
    <p class="hint no-print">Kept on this device: once opened here, the card can be read without network.</p>`;
}

/** Through the system's own way of sharing, else as text to copy. */
async function send() {
  try {
    const { body } = await askTrip("GET", `/hikers/${trip.state.you.hiker}/card?units=${units()}`, { accept: "text/plain" });
    if (navigator.share) {
      await navigator.share({ text: body });
      return;
    }
    state.sent = body;
    redraw();
    announce("The text of the card stands below.");
  } catch (problem) {
    if (problem.name === "AbortError") return;
    if (!(problem instanceof Problem)) throw problem;
    announce(problem.message);
  }
}
