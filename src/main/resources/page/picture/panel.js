/** What is chosen in the picture, as a list: everything a hiker holds, and to whom it could go. */
import { html, live, nothing, redraw } from "../core/view.js";
import { desk, mayMove, withNobody } from "../core/desk.js";
import { trip } from "../core/trip.js";
import { count, ratio } from "../core/words.js";
import { mass } from "../core/units.js";
import { lift } from "./drag.js";
import { measure } from "./measure.js";

/** How many units are about to be given, by piece. */
const wanted = new Map();

/** The list for the chosen hiker; `does` as in the picture, and `freeze(piece)`. */
export function panel(looking, does) {
  const picture = measure(looking.day);
  const c = picture.columns.find((each) => each.id === looking.hiker);
  if (!c) return nothing;
  return html`<section class="panel" aria-labelledby="panel-title">
    <h2 id="panel-title" tabindex="-1">${c.name}, morning of day ${looking.day}</h2>
    <p class="quiet-text">${summary(c)}</p>
    ${c.blocks.length === 0 ? html`<p>Carries nothing of the group's on this morning.</p>` : nothing}
    <ul class="held">
      ${[...c.blocks, ...c.absent].map((b) => held(b, c, picture, looking, does))}
    </ul>
  </section>`;
}

function summary(c) {
  const parts = [`${mass(c.load)} in the pack, ${mass(c.ownGrams)} of it own kit`];
  if (c.told) parts.push(`target ${mass(c.target)}`);
  if (c.capGrams) parts.push(`cap ${mass(c.capGrams)}`);
  if (c.luxury > 0) parts.push(`${mass(c.luxury)} of luxuries do not count for the ratio`);
  if (!c.told) parts.push("the body mass is not shown here, so neither is the target");
  return parts.join("; ") + ".";
}

function held(b, c, picture, looking, does) {
  const open = looking.piece === b.piece;
  return html`<li class=${open ? "open" : ""}>
    <button
      type="button"
      class="line"
      aria-expanded=${mayMove() ? String(open) : nothing}
      ?disabled=${!mayMove()}
      @pointerdown=${(e) => mayMove() && lift(e, b.piece, b.name, c.id, does.give)}
      @click=${() => does.choose(c.id, open ? "" : b.piece)}
    >
      <i class=${b.used ? "k-used" : "k-stays"} aria-hidden="true"></i>
      <span>${b.name}${b.units > 1 ? ` × ${b.units}` : ""}</span>
      <span class="number">${b.grams > 0 ? mass(b.grams) : "not on this morning"}</span>
    </button>
    ${open && mayMove() ? giving(b, c.id, picture, does) : nothing}
  </li>`;
}

/** To whom a piece could go, and where each would then stand. */
export function giving(b, from, picture, does) {
  const most = Math.max(1, desk.now.units(from, b.piece) || b.units);
  const units = Math.min(most, wanted.get(b.piece) ?? 1);
  const each = b.units > 0 ? b.grams / b.units : 0;
  return html`<div class="giving" role="group" aria-label="Give ${b.name}">
    ${most > 1
      ? html`<label class="units"
          >Give
          <input
            type="number"
            min="1"
            max=${most}
            .value=${live(String(units))}
            @change=${(e) => {
              wanted.set(b.piece, Math.max(1, Math.min(most, Number.parseInt(e.target.value, 10) || 1)));
              redraw();
            }}
          />
          of ${most}, to</label
        >`
      : html`<span>Give to</span>`}
    ${picture.columns
      .filter((to) => to.id !== from)
      .map(
        (to) => html`<button
          type="button"
          class="quiet"
          @click=${() => {
            wanted.delete(b.piece);
            does.give(b.piece, units, from, to.id);
          }}
        >
          ${to.name}
          ${to.told
            ? html`<small class=${to.height + (units * each) / to.target > 1 ? "above" : ""}
                >then ${ratio(to.height + (units * each) / to.target)}</small
              >`
            : nothing}
        </button>`,
      )}
    ${from
      ? html`<button type="button" class="plain" aria-pressed=${desk.frozen.has(b.piece)} @click=${() => does.freeze(b.piece)}>
          ${desk.frozen.has(b.piece) ? "May move again when evening out" : "Leave where it is when evening out"}
        </button>`
      : nothing}
  </div>`;
}

/** The pile of what nobody holds. */
export function pile(looking, does) {
  const left = withNobody();
  if (left.length === 0 || !desk.verdict) return nothing;
  const picture = measure(looking.day);
  return html`<section class="panel pile">
    <h2>With nobody yet: ${count(left.length, "kind of thing", "kinds of things")}</h2>
    <ul class="held">
      ${left.map(({ piece, units }) => {
        const line = desk.sheet.get(piece);
        const b = { piece, units, name: line.name, grams: units * line.unitGrams[looking.day - 1] };
        return held(b, { id: "" }, picture, looking, does);
      })}
    </ul>
  </section>`;
}
