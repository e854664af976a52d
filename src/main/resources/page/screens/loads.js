/** The central screen: the picture of one morning, what is chosen in it, and how good it all is. */
import { announce, focusOn, html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import * as desk from "../core/desk.js";
import { search, solve, stop } from "../core/solve.js";
import { edit, onTrip, trip } from "../core/trip.js";
import { Names, ratio } from "../core/words.js";
import { columns } from "../picture/columns.js";
import { conflict } from "../picture/conflict.js";
import { evenOut, evenOutPanel } from "../picture/evenout.js";
import { helpful } from "../picture/hint.js";
import { worstByDay } from "../picture/measure.js";
import { panel, pile } from "../picture/panel.js";
import { findings, headline, moves, proof } from "../picture/proof.js";

const EFFORTS = { quick: 2_000_000, thorough: 20_000_000, long: 200_000_000 };

const looking = { day: 1, hiker: "", piece: "" };
const state = { trip: "", impossible: null, trouble: "", busy: false };
let unlisten = () => {};

export function title() {
  return "Loads";
}

export async function enter() {
  if (state.trip !== trip.id) {
    Object.assign(state, { trip: trip.id, impossible: null, trouble: "", busy: false });
    Object.assign(looking, { day: 1, hiker: "", piece: "" });
  }
  unlisten = onTrip(() => desk.layOut());
  window.addEventListener("keydown", onKey);
  desk.layOut();
}

export function leave() {
  unlisten();
  window.removeEventListener("keydown", onKey);
}

/** Ctrl+Z and Ctrl+Shift+Z, unless something is being typed. */
function onKey(event) {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
  if (event.target.closest("input, textarea, select")) return;
  event.preventDefault();
  if (event.shiftKey) desk.redo();
  else desk.undo();
}

const does = {
  choose(hiker, piece) {
    Object.assign(looking, { hiker, piece });
    redraw();
    if (piece) focusOn(".giving button, .giving input");
  },
  give(piece, units, from, to) {
    const names = new Names(trip.document);
    const words = `${units > 1 ? units + " of " : ""}“${names.piece(piece)}” ${
      from ? `from ${names.hiker(from)} ` : ""
    }to ${names.hiker(to)}`;
    Object.assign(looking, { hiker: to, piece });
    announce(words);
    desk.rearrange(desk.desk.now.given(piece, units, from, to, desk.lastDays()), words);
  },
  exchange(piece, from, to, back) {
    const days = desk.lastDays();
    const names = new Names(trip.document);
    desk.rearrange(
      desk.desk.now.given(piece, 1, from, to, days).given(back, 1, to, from, days),
      `“${names.piece(piece)}” for “${names.piece(back)}”`,
    );
  },
  showDay(day) {
    looking.day = day;
    redraw();
  },
  freeze(piece) {
    const { frozen } = desk.desk;
    if (!frozen.delete(piece)) frozen.add(piece);
    redraw();
  },
};

export function view() {
  const { verdict, kept, trouble } = desk.desk;
  looking.day = Math.min(looking.day, trip.document.days);
  return html`
    <h1 class="unseen" tabindex="-1">Loads</h1>
    <p class="verdict" aria-live="polite">${headline()}</p>
    ${proof()} ${helpful(does)} ${trouble ? html`<p class="trouble" role="alert">${trouble.message}</p>` : nothing}
    ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : nothing}
    ${state.impossible ? conflict(state.impossible, lifted, fail) : nothing} ${progress()}
    ${verdict ? [days(), columns(looking, does), key()] : nothing} ${buttons(kept)} ${findings()} ${moves()}
    ${evenOutPanel()} ${verdict ? [pile(looking, does), panel(looking, does)] : nothing}
  `;
}

function days() {
  if (trip.document.days < 2) return nothing;
  const names = new Names(trip.document);
  return html`<fieldset class="days">
    <legend>Morning of day</legend>
    ${worstByDay().map(
      ({ day, ratio: worst, hiker }) => html`<button
        type="button"
        class=${worst > 1 ? "above" : ""}
        aria-pressed=${day === looking.day}
        @click=${() => does.showDay(day)}
      >
        ${day}<small>${hiker ? `${names.hiker(hiker)} ${ratio(worst)}` : ""}</small>
      </button>`,
    )}
  </fieldset>`;
}

function key() {
  return html`<ul class="key">
    <li><i class="k-own"></i>own kit</li>
    <li><i class="k-stays"></i>shared, stays</li>
    <li><i class="k-used"></i>shared, gets used up</li>
    <li><i class="k-above"></i>above target</li>
    <li><i class="k-even"></i>even, if things could be divided at will</li>
  </ul>`;
}

function buttons(kept) {
  if (!desk.mayMove() || search.job) return nothing;
  const moved = desk.changedByHand();
  const { done, undone, verdict } = desk.desk;
  const agreed = kept && trip.state.agreedSplit === kept.kept?.id;
  return html`<div class="actions below">
    ${moved
      ? html`<button type="button" ?disabled=${!verdict?.keepsRules || state.busy} @click=${keepIt}>Keep it so</button>`
      : html`<button type="button" class=${kept && !kept.kept?.stale ? "quiet" : ""} ?disabled=${state.busy} @click=${() => find("thorough")}>
          Find the fairest split
        </button>`}
    ${!moved && kept && !agreed && !kept.kept?.stale
      ? html`<button type="button" ?disabled=${state.busy} @click=${agree}>Agree on this split</button>`
      : nothing}
    ${agreed && !moved ? html`<span class="agreed">Agreed on: everybody's card shows this split.</span>` : nothing}
    ${kept ? evenOut() : nothing}
    <button type="button" class="quiet" ?disabled=${done.length === 0} @click=${desk.undo}>Undo</button>
    ${undone.length > 0 ? html`<button type="button" class="quiet" @click=${desk.redo}>Do again</button>` : nothing}
    ${moved ? html`<button type="button" class="plain" @click=${desk.putBack}>Back to the kept split</button>` : nothing}
    ${!moved && kept?.proof && !kept.proof.proved
      ? html`<button type="button" class="plain" @click=${() => find("long")}>Search ten times longer</button>`
      : nothing}
  </div>`;
}

function progress() {
  const { job } = search;
  if (!job) return state.busy ? html`<p class="search" role="status">Searching …</p>` : nothing;
  const grain = (trip.document.policy?.grain ?? 5) / 1000;
  const p = job.progress;
  return html`<section class="search" role="status">
    <p>
      ${p?.worstSteps >= 0
        ? `Best so far: the worst morning at ${ratio(p.worstSteps * grain)} of target or less. ${
            p.boundSteps > 0 ? `No split can be at ${ratio((p.boundSteps - 1) * grain)} or below.` : ""
          }`
        : job.state === "waiting"
          ? "Waiting for its turn …"
          : "Searching …"}
    </p>
    <progress max=${job.effort} value=${p?.effortSteps ?? nothing} aria-label="Part of the search that is done"></progress>
    <p class="actions">
      <button type="button" class="quiet" ?disabled=${job.stopAsked} @click=${() => stop().catch(fail)}>
        ${job.stopAsked ? "Stopping …" : "Stop, keep the best so far"}
      </button>
    </p>
  </section>`;
}

async function find(how) {
  Object.assign(state, { busy: true, trouble: "", impossible: null });
  redraw();
  try {
    const answer = await solve(EFFORTS[how]);
    if (answer.split) {
      await desk.take(answer.split);
      announce(headline());
    } else if (answer.result === "impossible") {
      state.impossible = answer;
    } else {
      state.trouble = "No split was found within the effort. A longer search may find one.";
    }
  } catch (problem) {
    fail(problem);
  }
  state.busy = false;
  redraw();
}

function lifted() {
  state.impossible = null;
  find("thorough");
}

function keepIt() {
  return desk.keepIt().catch(fail);
}

function agree() {
  return edit({
    method: "PUT",
    path: "/agreed-split",
    body: { split: desk.desk.kept.kept.id },
    touches: () => null,
    words: "the agreed split",
  }).catch(fail);
}

function fail(problem) {
  if (!(problem instanceof Problem)) throw problem;
  state.trouble = problem.issues[0] ? `${problem.issues[0].message} ${problem.issues[0].remedy}` : problem.message;
  redraw();
}
