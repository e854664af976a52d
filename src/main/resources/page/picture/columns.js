/** Draws the columns: own kit at the foot, shared pieces above, all targets at one height. */
import { html, nothing, sized } from "../core/view.js";
import { desk, mayMove } from "../core/desk.js";
import { count, ratio } from "../core/words.js";
import { load, loadUnit, mass } from "../core/units.js";
import { measure } from "./measure.js";
import { drag, dragged, lift } from "./drag.js";
import { onColumnKey } from "./steps.js";

/**
 * The picture of one morning.
 *
 * @param looking `{day, hiker, piece}`: the morning shown, and what is chosen
 * @param does `choose(hiker, piece)`, `give(piece, units, from, to)`, `showDay(day)`
 */
export function columns(looking, does) {
  const picture = measure(looking.day);
  const span = picture.top - picture.floor;
  const up = (value) => `${Math.max(0, Math.min(100, ((value - picture.floor) / span) * 100))}%`;
  const anyTold = picture.columns.some((c) => c.told);
  return html`<div class="picture" role="group" aria-label="Loads on the morning of day ${looking.day}">
    <div class="plot">
      <div class="lines">${anyTold
        ? html`<div class="target-line" style=${sized({ bottom: up(1) })}><span>target</span></div>`
        : nothing}
      ${picture.even > 0.3
        ? html`<div class="even-line" style=${sized({ bottom: up(picture.even) })}>
            <span>even, ${ratio(picture.even)}</span>
          </div>`
        : nothing}</div>
      <ol class="columns" style=${sized({ "--columns": String(picture.columns.length) })}>
        ${picture.columns.map((c) => column(c, picture, looking, does, up))}
      </ol>
    </div>
    ${dragged()}
  </div>`;
}

function column(c, picture, looking, does, up) {
  const above = c.told && c.ratio > 1;
  const chosen = looking.hiker === c.id;
  return html`<li
    class="column ${above ? "above" : ""} ${chosen ? "chosen" : ""} ${drag.over === c.id ? "over" : ""}"
    data-hiker=${c.id}
    @keydown=${(e) => onColumnKey(e, c, does)}
  >
    <div class="stack ${picture.floor > 0 ? "cut" : ""}">
      <div class="standing" style=${sized({ bottom: up(c.height) })}>
        <b>${c.told ? ratio(c.ratio ?? 0) : c.within === false ? "above" : c.within ? "within" : "–"}</b>
        <span>${load(c.load)} <abbr class="unit">${loadUnit()}</abbr></span>
      </div>
      ${cap(c, picture, up)}
      ${above
        ? html`<div
            class="excess"
            style=${sized({ bottom: up(1), height: up(picture.floor + c.height - 1) })}
            aria-hidden="true"
          ></div>`
        : nothing}
      <div class="blocks" style=${sized({ height: up(c.height) })}>
        ${[...c.drawn].reverse().map((b) => block(b, c, looking, does))} ${small(c, does)}
        <div
          class="own"
          title="Own kit, ${mass(c.ownGrams)}"
          style=${sized({ "flex-grow": String(Math.max(0, c.own - picture.floor) * 1000) })}
        >
          <span>own kit</span> <span class="grams">${mass(c.ownGrams)}</span>
        </div>
      </div>
    </div>
    <button
      type="button"
      class="who"
      aria-pressed=${chosen}
      @click=${() => does.choose(c.id, "")}
    >
      ${c.name}<span class="unseen">, ${spoken(c)}</span>
    </button>
    ${mornings(c, looking, does)}
  </li>`;
}

function spoken(c) {
  const parts = [mass(c.load)];
  if (c.told) parts.push(`${ratio(c.ratio ?? 0)} of target`);
  if (c.told && c.ratio > 1) parts.push("above target");
  if (c.capGrams && c.load > c.capGrams) parts.push("above the cap");
  parts.push(count(c.blocks.length, "kind") + " of shared things");
  return parts.join(", ");
}

function cap(c, picture, up) {
  if (!c.cap) return nothing;
  const passed = c.load > c.capGrams;
  const words = `cap ${mass(c.capGrams)}`;
  if (c.cap > picture.top) return nothing;
  return html`<div class="cap ${passed ? "passed" : ""}" style=${sized({ bottom: up(c.cap) })} title=${words}>
    <span>cap</span>
  </div>`;
}

function block(b, c, looking, does) {
  const chosen = looking.hiker === c.id && looking.piece === b.piece;
  const frozen = desk.frozen.has(b.piece);
  return html`<button
    type="button"
    class="block ${b.used ? "used" : "stays"} ${chosen ? "chosen" : ""} ${frozen ? "frozen" : ""}"
    style=${sized({ "flex-grow": String((b.grams / c.target) * 1000) })}
    data-piece=${b.piece}
    title="${b.name}${b.units > 1 ? " × " + b.units : ""}, ${mass(b.grams)}"
    aria-pressed=${chosen}
    @pointerdown=${(e) => mayMove() && lift(e, b.piece, b.name, c.id, does.give)}
    @click=${() => does.choose(c.id, b.piece)}
  >
    <span class="what">${b.name}${b.units > 1 ? html` <i>× ${b.units}</i>` : nothing}</span>
    <span class="grams">${mass(b.grams)}</span>
    <span class="unseen">, with ${c.name}</span>
  </button>`;
}

/** Pieces too small for a block of their own. */
function small(c, does) {
  if (c.smallGrams <= 0) return nothing;
  const words = c.small.length > 0 ? count(c.small.length, "small piece") : "wrappings";
  return html`<button
    type="button"
    class="block small"
    style=${sized({ "flex-grow": String((c.smallGrams / c.target) * 1000) })}
    title="${c.small.map((b) => b.name).join(", ") || "what used things leave"}, ${mass(c.smallGrams)}"
    @click=${() => does.choose(c.id, "")}
  >
    <span class="what">${words}</span>
    <span class="grams">${mass(c.smallGrams)}</span>
    <span class="unseen">, with ${c.name}</span>
  </button>`;
}

/** All mornings of one hiker, small; the one shown is marked. */
function mornings(c, looking, does) {
  if (c.mornings.length < 2) return nothing;
  return html`<div class="mornings" aria-hidden="true">
    ${c.mornings.map((m) => {
      const value = m.targetRatio ?? m.loadGrams / c.target;
      return html`<button
        type="button"
        tabindex="-1"
        class="${m.day === looking.day ? "now" : ""} ${c.told && value > 1 ? "above" : ""}"
        title="Day ${m.day}: ${c.told ? ratio(value) : mass(m.loadGrams)}"
        @click=${() => does.showDay(m.day)}
      >
        <i style=${sized({ height: `${Math.min(100, (value / 1.3) * 100)}%` })}></i>
      </button>`;
    })}
  </div>`;
}
