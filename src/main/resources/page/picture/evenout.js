/** "Even out from here": the fairest with at most so many handovers, beginning with what lies there. */
import { html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { Arrangement } from "../core/arrangement.js";
import { changedByHand, desk, rearrange } from "../core/desk.js";
import { askTrip, trip } from "../core/trip.js";
import { askWhole, seesAll } from "../core/whole.js";
import { count, ratio } from "../core/words.js";
import { curve } from "./curve.js";

/** Search steps for an answer within a few seconds. */
const EFFORT = 6_000_000;

const asked = { open: false, most: 3, busy: false, answer: null, pick: 0, trouble: "", of: null };

export function evenOut() {
  if (!seesAll() && !fromAgreed()) return nothing;
  if (!asked.open) {
    return html`<button type="button" class="quiet" @click=${() => show(true)}>Even out from here</button>`;
  }
  return nothing;
}

/** Whether what lies there is the agreed split: the service can start from that by itself. */
function fromAgreed() {
  return !changedByHand() && desk.kept?.kept?.id === trip.state.agreedSplit;
}

function show(open) {
  Object.assign(asked, { open, answer: null, trouble: "" });
  redraw();
}

/** The question and its answer, below the buttons. */
export function evenOutPanel() {
  if (!asked.open) return nothing;
  if (asked.answer && asked.of !== desk.now) asked.answer = null;
  return html`<section class="panel" aria-labelledby="even-title">
    <h2 id="even-title">Even out from here</h2>
    <p>
      Pieces that a rule pins stay with whom they are, and so do those you left where they are
      (${desk.frozen.size === 0 ? "none so far; choose a piece to leave it" : count(desk.frozen.size, "piece")}).
    </p>
    <form
      class="actions"
      @submit=${(e) => {
        e.preventDefault();
        ask();
      }}
    >
      <label for="most-handovers">At most</label>
      <input
        id="most-handovers"
        class="short"
        type="number"
        min="0"
        max="99"
        .value=${String(asked.most)}
        @change=${(e) => (asked.most = Math.max(0, Number.parseInt(e.target.value, 10) || 0))}
      />
      <span>handovers</span>
      <button type="submit" ?disabled=${asked.busy}>${asked.busy ? "Searching …" : "Show what that gains"}</button>
      <button type="button" class="plain" @click=${() => show(false)}>Close</button>
    </form>
    ${asked.trouble ? html`<p class="trouble" role="alert">${asked.trouble}</p>` : nothing} ${answer()}
  </section>`;
}

function answer() {
  const { answer: a, pick } = asked;
  if (!a) return nothing;
  if (a.result !== "curve") {
    return html`<p class="trouble">
      ${a.result === "impossible"
        ? "With those pieces left where they are, the rules cannot all hold."
        : "No split was found within the effort."}
    </p>`;
  }
  const point = a.points[pick];
  const now = desk.verdict?.worst?.targetRatio ?? 0;
  if (a.points.every((p) => p.handovers === 0 || p.worst?.targetRatio >= now)) {
    return html`<p role="status">Nothing fairer was found from here; it may lie further away than the search went.</p>`;
  }
  return html`
    ${a.points.length > 1
      ? curve(a.points, pick, a.recommended, (i) => {
          asked.pick = i;
          redraw();
        })
      : nothing}
    <p aria-live="polite">
      ${count(point.handovers, "handover")}${point.worst ? `: the worst morning at ${ratio(point.worst.targetRatio)} of target` : ""}.
    </p>
    <ol class="handovers">
      ${point.list.map((h) => html`<li>${h.words}</li>`)}
    </ol>
    <p class="actions">
      <button
        type="button"
        ?disabled=${point.handovers === 0}
        @click=${() => {
          asked.open = false;
          rearrange(Arrangement.of(point.split), `evened out with ${count(point.handovers, "handover")}`);
        }}
      >
        Do it so
      </button>
    </p>
  `;
}

async function ask() {
  Object.assign(asked, { busy: true, trouble: "", answer: null, of: desk.now });
  redraw();
  try {
    const how = { changes: [], frozen: [...desk.frozen], maxHandovers: asked.most };
    const path = `rebalances?effort=${EFFORT}`;
    const a = seesAll()
      ? await askWhole(path, { ...how, split: desk.now.document() })
      : (await askTrip("POST", "/" + path, { body: how })).body;
    asked.answer = a;
    asked.pick = a.chosen ?? 0;
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    asked.trouble = problem.issues[0]?.message ?? problem.message;
  }
  asked.busy = false;
  redraw();
}
