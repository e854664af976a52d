/**
 * The trade-off as a picture one can pick from: further right more changes hands, further down the
 * worst load is lighter. Each point is a button; the picture is the same list seen at once. Where a
 * body mass is kept private no ratio is told; then the points stand at equal heights apart, for
 * each is fairer than the one before.
 */
import { html, nothing, sized } from "../core/view.js";
import { count, ratio } from "../core/words.js";

/**
 * @param points of a rebalancing, by handovers
 * @param chosen index of the one picked
 * @param recommended index, or -1
 */
export function curve(points, chosen, recommended, pick) {
  const most = Math.max(1, ...points.map((p) => p.handovers));
  const told = points.every((p) => p.worst);
  const ratios = points.map((p, i) => (told ? p.worst.targetRatio : points.length - i));
  const high = Math.max(...ratios);
  const low = Math.min(...ratios);
  const span = Math.max(0.02, high - low);
  const across = (p) => `${(p.handovers / most) * 88 + 4}%`;
  const up = (value) => `${((value - low) / span) * 74 + 10}%`;
  const withTarget = told && high > 1 && low <= 1;
  return html`<figure class="curve">
    <figcaption>
      Each dot is one way to do it. Further right more things change hands; further down
      ${told ? "the heaviest load is lighter for its carrier" : "it is fairer"}.
    </figcaption>
    <div class="field-of-points" role="radiogroup" aria-label="Ways to do it">
      ${withTarget
        ? html`<div class="at-target" style=${sized({ bottom: up(1) })}><span>target</span></div>`
        : nothing}
      ${points.map(
        (p, i) => html`<button
          type="button"
          role="radio"
          aria-checked=${i === chosen}
          tabindex=${i === chosen ? 0 : -1}
          class="point"
          style=${sized({ left: across(p), bottom: up(ratios[i]) })}
          @click=${() => pick(i)}
          @keydown=${(e) => step(e, i, points.length, pick)}
        >
          <span class="tag ${i === chosen || points.length < 5 ? "" : "far"}"
            >${p.handovers}${told ? html`<small>${ratio(ratios[i])}</small>` : nothing}</span
          >
          <span class="unseen"
            >${count(p.handovers, "handover")}${told ? `, worst ${ratio(ratios[i])} of target` : ""}${i === recommended
              ? ", recommended"
              : ""}</span
          >
        </button>`,
      )}
    </div>
    <p class="axis"><span>fewer handovers</span><span>more handovers</span></p>
  </figure>`;
}

function step(event, at, length, pick) {
  const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (!by) return;
  event.preventDefault();
  const next = Math.min(length - 1, Math.max(0, at + by));
  pick(next);
  event.currentTarget.parentElement.querySelectorAll(".point")[next].focus();
}
