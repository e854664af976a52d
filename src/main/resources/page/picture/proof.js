/** How good an arrangement is, in words. */
import { html, nothing } from "../core/view.js";
import { changedByHand, desk, handovers, withNobody } from "../core/desk.js";
import { Names, count, ratio } from "../core/words.js";
import { trip } from "../core/trip.js";
import { mass } from "../core/units.js";

/** The sentence the whole picture is about: who stands highest, and whether that is above target. */
export function headline() {
  const { verdict } = desk;
  const left = withNobody().length;
  if (verdict && left > 0 && left === desk.sheet.size) {
    return "Nothing is handed out yet: this is everybody’s own kit.";
  }
  const [first, ...others] = broken();
  if (first) {
    return `This cannot be carried so: ${first.message} ${first.remedy}${others.length > 0 ? ` And ${count(others.length, "more reason")} below.` : ""}`;
  }
  if (!verdict?.worst) {
    return verdict ? "Who carries what, morning by morning." : "Weighing it up …";
  }
  return ofWorst(verdict) + (left > 0 ? ` ${count(left, "thing")} ${left === 1 ? "is" : "are"} with nobody yet.` : "");
}

function ofWorst(verdict) {
  const { name, day, targetRatio } = verdict.worst;
  const where = trip.document.days > 1 ? `${name} on the morning of day ${day}` : name;
  const above = aboveTarget();
  if (above.length === 0) {
    return `Nobody is above target on any morning. The highest is ${where}, at ${ratio(targetRatio)} of target.`;
  }
  return `${where} is the most above target, at ${ratio(targetRatio)} of it; ${
    above.length === 1 ? "nobody else is" : `${count(above.length, "hiker")} are above on some morning`
  }.`;
}

/** What stands in the way of an arrangement. */
function broken() {
  return (desk.verdict?.findings ?? []).filter((f) => f.severity === "stop");
}

/** Hikers who are above target on some morning. */
export function aboveTarget() {
  return (desk.verdict?.hikers ?? []).filter((h) => h.mornings.some((m) => m.targetRatio > 1));
}

/** What is known of how good it could be. */
export function proof() {
  const { verdict, kept } = desk;
  if (!verdict) return nothing;
  const lines = [];
  if (kept?.proof && !kept.kept?.stale) lines.push(...ofSearch(kept, verdict));
  else if (kept && !kept.proof) lines.push("Made by hand; the service has not searched for a fairer one.");
  if (kept?.kept?.stale && !changedByHand()) {
    lines.push("The trip has changed since this split was made.");
  }
  return lines.map((line) => html`<p class="quiet-text">${line}</p>`);
}

function ofSearch(kept, verdict) {
  const { proof: p, worst } = kept;
  if (!worst || p.levels === undefined) {
    return [p.proved ? "Proved: no split is fairer, on any morning of anybody." : "Not proved to be the fairest."];
  }
  const lines = [];
  if (changedByHand() && verdict.worst) {
    const off = verdict.worst.targetRatio - worst.targetRatio;
    lines.push(
      off > 0.0005
        ? `Moved by hand: the worst morning of the kept split is at ${ratio(worst.targetRatio)}, so this is worse by ${ratio(off)} of a target.`
        : "Moved by hand: the worst morning is no worse than in the kept split.",
    );
  }
  if (p.proved) {
    lines.push("Proved: no split is fairer than the one found, on any morning of anybody.");
  } else if (p.provedLevels > 0) {
    lines.push(
      `No split can bring the worst morning below ${ratio(worst.targetRatio)} of target, give or take the grain; ` +
        (p.provedLevels === 1
          ? "the mornings after it are not proved."
          : `so much is proved for the ${p.provedLevels} heaviest of ${p.levels} mornings.`),
    );
  } else if (p.boundRatio !== undefined) {
    lines.push(`Not proved. No split can bring the worst morning to ${ratio(p.boundRatio)} of target or below.`);
  }
  if (p.cutByClock) lines.push("The safety clock ended the search: another run may answer otherwise.");
  return lines;
}

/** What breaks rules, passes caps or deserves a thought. */
export function findings() {
  const found = desk.verdict?.findings ?? [];
  if (found.length === 0) return nothing;
  const grave = broken().length > 0;
  return html`<section class=${grave ? "trouble" : "notes"} aria-live="polite">
    <h2>${grave ? "What stands in the way" : "To mind"}</h2>
    <ul>
      ${found.slice(0, 12).map((f) => html`<li>${f.message} <span class="quiet-text">${f.remedy}</span></li>`)}
      ${found.length > 12 ? html`<li>and ${found.length - 12} more</li>` : nothing}
    </ul>
  </section>`;
}

/** What has been moved by hand, one sentence each. */
export function moves() {
  const list = handovers();
  if (list.length === 0) return nothing;
  const names = new Names(trip.document);
  return html`<details class="moves">
    <summary>${count(list.length, "handover")} since the kept split</summary>
    <ul>
      ${list.map(
        (h) =>
          html`<li>
            ${names.hiker(h.from)} gives ${h.units > 1 ? `${h.units} of ` : ""}“${names.piece(h.piece)}” to
            ${names.hiker(h.to)}${weight(h)}.
          </li>`,
      )}
    </ul>
  </details>`;
}

function weight(h) {
  const grams = h.units * Math.max(0, ...(desk.sheet.get(h.piece)?.unitGrams ?? [0]));
  return grams > 0 ? ` (${mass(grams)})` : "";
}
