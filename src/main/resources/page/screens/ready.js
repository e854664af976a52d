/** The last look before leaving: ready or not, and what to do. */
import { html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { askTrip, leads, onTrip, trip } from "../core/trip.js";
import { at } from "../core/router.js";
import { list, Names } from "../core/words.js";

const state = { answer: null, none: "" };
let stop = () => {};

const VERDICT = {
  ready: ["Ready to leave", "Everything is carried, by somebody who may, and nothing is forgotten."],
  "ready-with-cautions": ["Ready, with care", "Nothing stands in the way; look at these before you go."],
  "not-ready": ["Not ready yet", "Do this first:"],
};

const GRAVITY = [
  ["stop", "Stands in the way"],
  ["caution", "To look at"],
  ["advice", "Good to know"],
];

export function title() {
  return "Leaving";
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
    Object.assign(state, { answer: (await askTrip("GET", "/departure-check")).body, none: "" });
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    if (problem.status === 404) state.answer = null;
    state.none = problem.message;
  }
  redraw();
}

export function view() {
  const { answer } = state;
  if (!answer) {
    return html`<h1 tabindex="-1">Can we leave?</h1>
      <p>${state.none || "Looking …"}</p>
      ${state.none && leads() ? html`<p class="actions"><a class="button" href=${at(trip.id, "loads")}>Choose a split</a></p>` : nothing}`;
  }
  const [verdict, words] = VERDICT[answer.readiness];
  const names = new Names(trip.document);
  return html`<h1 tabindex="-1">Can we leave?</h1>
    <div class="verdict ${answer.readiness}">
      <p class="verdict-word">${verdict}</p>
      <p>${words}</p>
    </div>
    ${GRAVITY.map(([severity, heading]) => group(answer.findings.filter((f) => f.severity === severity), heading, severity))}
    ${gains(answer)}
    ${answer.bodyMassHidden?.length > 0
      ? html`<p class="hint">
          ${list(answer.bodyMassHidden.map((id) => names.hiker(id)))}: the body mass is not shown to you, so targets
          and caps are judged on their own cards only.
        </p>`
      : nothing}
    <p class="actions no-print">
      <button type="button" @click=${load}>Look again</button>
      ${leads()
        ? html`<a class="button quiet" href=${at(trip.id, "weigh")}>Weigh in</a>
            <a class="button quiet" href=${at(trip.id, "cards")}>Cards</a>`
        : nothing}
    </p>`;
}

function group(findings, heading, severity) {
  if (findings.length === 0) return nothing;
  return html`<section class="findings ${severity}">
    <h2>${heading}</h2>
    <ul class="rows">
      ${findings.map(
        (f) => html`<li>
          <span class="finding">${f.message}</span> <span class="remedy">${f.remedy}</span>
        </li>`,
      )}
    </ul>
  </section>`;
}

function gains(answer) {
  const all = answer.fairness?.gains ?? [];
  if (all.length === 0) return nothing;
  return html`<section>
    <h2>Would make it fairer</h2>
    <ul class="rows">
      ${all.map((g) => html`<li>${g.words}</li>`)}
    </ul>
  </section>`;
}
