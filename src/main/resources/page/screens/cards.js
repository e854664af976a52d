/** The cards of the whole group, two on a sheet of paper. */
import { html, nothing, redraw, repeat } from "../core/view.js";
import { Problem } from "../core/api.js";
import { askTrip, leads, onTrip, trip } from "../core/trip.js";
import { at } from "../core/router.js";
import { cardSheet } from "../core/card.js";

const state = { answer: null, absences: null, none: "" };
let stop = () => {};

export function title() {
  return "Cards";
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
  try {
    const { body } = await askTrip("GET", "/cards");
    if (state.answer?.kept.id !== body.kept.id) state.absences = null;
    Object.assign(state, { answer: body, none: "" });
    redraw();
    if (!state.absences) state.absences = (await askTrip("GET", "/absences")).body.absences;
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    if (problem.status === 404) state.answer = null;
    state.none = problem.message;
  }
  redraw();
}

export function view() {
  if (!state.answer) {
    return html`<h1 tabindex="-1">Cards</h1>
      <p>${state.none || "Reading the cards …"}</p>
      ${state.none && leads() ? html`<p class="actions"><a class="button" href=${at(trip.id, "loads")}>Choose a split</a></p>` : nothing}`;
  }
  return html`<h1 tabindex="-1" class="no-print">Cards</h1>
    <p class="no-print">
      One for everybody, two to a sheet; cut along the middle. Everybody also has their own on the link you gave them.
    </p>
    <p class="actions no-print">
      <button type="button" @click=${() => window.print()} ?disabled=${!state.absences && !state.none}>Print all cards</button>
    </p>
    <div class="cards">
      ${repeat(state.answer.cards, (card) => card.hiker.id, (card) => cardSheet(card, state.answer, state.absences, null))}
    </div>`;
}
