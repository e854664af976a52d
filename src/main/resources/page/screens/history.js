/** What was changed by whom, and the way back. */
import { html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { askTrip, edit, onTrip, trip } from "../core/trip.js";
import { ago, happened } from "../core/words.js";

const state = { lines: [], next: "", trouble: "" };
let unlisten = () => {};

export function title() {
  return "History";
}

export function enter() {
  unlisten = onTrip(read);
  return read();
}

export function leave() {
  unlisten();
}

async function read() {
  try {
    const page = (await askTrip("GET", "/history?limit=50")).body;
    Object.assign(state, { lines: page.items, trouble: "" });
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    state.trouble = problem.message;
  }
  redraw();
}

export function view() {
  return html`
    <h1 tabindex="-1">History</h1>
    <p>Going back is a change like any other: nothing is lost by it.</p>
    ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : nothing}
    <ol class="rows history">
      ${state.lines.map(
        (line, i) => html`<li>
          <span>${who(line.by)} ${happened(line.what, trip.document)}</span>
          <span class="quiet-text">${ago(line.at)}</span>
          ${i === 0 || line.erased
            ? nothing
            : html`<button type="button" class="plain" @click=${() => back(line)}>
                Back to how it was then<span class="unseen">, ${ago(line.at)}, ${happened(line.what, trip.document)}</span>
              </button>`}
        </li>`,
      )}
    </ol>
  `;
}

function who(by) {
  if (by.hiker) return trip.document.hikers.find((h) => h.id === by.hiker)?.name ?? "Somebody who is gone";
  return "A leader";
}

function back(line) {
  return edit({ method: "POST", path: `/history/${line.number}/undo`, mine: `as it was at line ${line.number}`, words: "the trip" }).catch((problem) => {
    if (!(problem instanceof Problem)) throw problem;
    state.trouble = problem.message;
    redraw();
  });
}
