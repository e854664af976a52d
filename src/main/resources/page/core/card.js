/** A hiker's card, on the screen and on paper. */
import { html, nothing, svg } from "./view.js";
import { mass } from "./units.js";
import { count, list, percent } from "./words.js";

/** From what is needed on the way down to what is needed last. */
const PLACES = [
  ["at-hand", "At hand"],
  ["top", "On top"],
  ["inside", "Inside"],
  ["bottom", "At the bottom"],
  ["outside", "Outside"],
];

/**
 * A card.
 *
 * @param card as the service tells it
 * @param about `tripName`, `days`, `kept` and `cautions` of it
 * @param absences what to do if somebody does not come; null while that is worked out
 * @param ticks `{is(name), change(name, on)}`; without it there are empty boxes, for paper
 */
export function cardSheet(card, about, absences, ticks) {
  return html`<article class="card" data-hiker=${card.hiker.id} aria-labelledby="card-${card.hiker.id}">
    <header>
      <h2 id="card-${card.hiker.id}">${card.hiker.name}</h2>
      <p>
        <span class="card-trip">${about.tripName}, </span>${count(about.days, "day")}; leaves with
        ${mass(card.mornings[0]?.loadGrams ?? 0)}
      </p>
    </header>
    ${about.kept.stale
      ? html`<p class="trouble stale">The trip has changed since this split was made. Ask for a new card before you leave.</p>`
      : nothing}
    ${findings(card)} ${carry(card, ticks)} ${giving(card, ticks)} ${atCamp(card)}
    <div class="card-columns">${mornings(card)} ${openings(card)}</div>
    ${without(card, absences)} ${kit(card)}
    <p class="card-cautions">${about.cautions.join(" ")}</p>
  </article>`;
}

function findings(card) {
  return card.findings
    .filter((f) => f.severity !== "advice")
    .map((f) => html`<p class="trouble">${f.message} ${f.remedy}</p>`);
}

const times = (units, name) => (units === 1 ? name : `${units} × ${name}`);

function box(ticks, name, words) {
  if (!ticks) return html`<span class="box" aria-hidden="true"></span>`;
  return html`<input
    type="checkbox"
    aria-label=${words}
    .checked=${ticks.is(name)}
    @change=${(e) => ticks.change(name, e.target.checked)}
  />`;
}

function carry(card, ticks) {
  if (card.things.length === 0) return html`<p class="card-none">Nothing of what is shared: own kit only.</p>`;
  return html`<table class="carry">
    <caption class="unseen">What ${card.hiker.name} carries of what is shared</caption>
    <thead>
      <tr><th scope="col">Got it</th><th scope="col">Packed</th><th scope="col">Carry</th><th scope="col" class="number">Mass</th></tr>
    </thead>
    ${PLACES.map(([stow, words]) => place(card, ticks, stow, words))}
  </table>`;
}

function place(card, ticks, stow, words) {
  const things = card.things.filter((t) => t.stow === stow);
  if (things.length === 0) return nothing;
  return html`<tbody>
    <tr class="place"><th scope="rowgroup" colspan="4">${words}</th></tr>
    ${things.map(
      (t) => html`<tr>
        <td>${t.from.length > 0 ? box(ticks, `got ${t.piece}`, `Got ${t.name}`) : nothing}</td>
        <td>${box(ticks, `packed ${t.piece}`, `Packed ${t.name}`)}</td>
        <td>
          <span class="thing">${times(t.units, t.name)}</span>
          <span class="whose">${whose(card, t)}</span>
        </td>
        <td class="number">${mass(t.grams)}</td>
      </tr>`,
    )}
  </tbody>`;
}

/** Whose a thing is, from whom it comes, and where it stays. */
function whose(card, t) {
  const words = [];
  if (t.from.length > 0) {
    words.push("from " + list(t.from.map((f) => (f.units === t.units ? f.hiker.name : `${f.hiker.name} (${f.units})`))));
  }
  if (t.owner) words.push(t.owner.id === card.hiker.id ? "yours" : `goes back to ${t.owner.name}`);
  if (t.into.length > 0) words.push(`in the ${list(t.into)}`);
  if (t.onDays.length > 0) words.push(`on day ${list(t.onDays.map(String))} only`);
  return words.join("; ");
}

function giving(card, ticks) {
  if (card.gives.length === 0) return nothing;
  return html`<h3>Give to others now</h3>
    <ul class="card-list">
      ${card.gives.map(
        (g) => html`<li>${box(ticks, `given ${g.piece} ${g.to.id}`, `Gave ${g.name} to ${g.to.name}`)}
          <span>${times(g.units, g.name)} to ${g.to.name}</span></li>`,
      )}
    </ul>`;
}

function atCamp(card) {
  if (card.atCamp.length === 0) return nothing;
  return html`<h3>At camp</h3>
    <ul class="card-list">
      ${card.atCamp.map(
        (h) => html`<li>
          End of day ${h.afterDay}:
          ${h.from.id === card.hiker.id
            ? `give ${times(h.units, h.name)} to ${h.to.name}`
            : `take ${times(h.units, h.name)} from ${h.from.name}`}
        </li>`,
      )}
    </ul>`;
}

function mornings(card) {
  const most = Math.max(...card.mornings.map((m) => m.loadGrams), card.targetGrams ?? 0, 1);
  return html`<div>
    <h3>Load each morning</h3>
    <table class="card-mornings">
      <thead class="unseen"><tr><th scope="col">Day</th><th scope="col">Load</th><th scope="col">Of target</th><th scope="col">Picture</th></tr></thead>
      <tbody>
        ${card.mornings.map(
          (m) => html`<tr>
            <th scope="row">day ${m.day}</th>
            <td class="number">${mass(m.loadGrams)}</td>
            <td class="number">${ofTarget(card, m)}</td>
            <td class="bar">
              <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
                ${svg`<rect class="load-bar" y="1" height="6" width=${(100 * m.loadGrams) / most}></rect>`}
                ${card.targetGrams
                  ? svg`<rect class="target-mark" width="0.8" height="8" x=${Math.min(99.2, (100 * card.targetGrams) / most)}></rect>`
                  : nothing}
              </svg>
            </td>
          </tr>`,
        )}
      </tbody>
    </table>
    ${card.targetGrams ? html`<p class="hint">The mark is the target, ${mass(card.targetGrams)}.</p>` : nothing}
  </div>`;
}

function ofTarget(card, m) {
  if (m.targetRatio !== undefined) return percent(m.targetRatio);
  return m.withinTarget ? "within" : "above";
}

/** One line for each day and thing; the hiker's own bag stands out. */
function openings(card) {
  if (card.openings.length === 0) return nothing;
  const days = new Map();
  for (const o of card.openings) {
    const key = `${o.day} ${o.piece}`;
    if (!days.has(key)) days.set(key, { day: o.day, name: o.name, from: [] });
    days.get(key).from.push(o);
  }
  return html`<div>
    <h3>Whose bag is opened</h3>
    <table class="openings">
      <thead class="unseen"><tr><th scope="col">Day</th><th scope="col">What and whose</th></tr></thead>
      <tbody>
        ${[...days.values()].map(
          (d) => html`<tr>
            <th scope="row">day ${d.day}</th>
            <td>
              ${d.name}:
              ${d.from.map(
                (o, i) => html`${i > 0 ? ", " : ""}${o.hiker.id === card.hiker.id ? html`<strong>${o.units} of yours</strong>` : `${o.units} from ${o.hiker.name}`}`,
              )}
            </td>
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function without(card, absences) {
  if (absences === null) return html`<p class="hint no-print">Working out what to do if somebody does not come …</p>`;
  const others = absences.filter((a) => a.hiker.id !== card.hiker.id);
  if (others.length === 0) return nothing;
  return html`<h3>If somebody does not come</h3>
    <ul class="card-list">
      ${others.map((a) => html`<li><strong>Without ${a.hiker.name}:</strong> ${change(card, a)}</li>`)}
    </ul>`;
}

function change(card, a) {
  if (a.outcome === "impossible") return "the rules cannot all hold; talk it over.";
  if (a.outcome === "undecided") return "not worked out in time; ask again.";
  if (a.outcome === "unfit") return "the trip as it stands needs them; talk it over.";
  const mine = a.handovers.filter((h) => h.from.id === card.hiker.id || h.to.id === card.hiker.id);
  if (mine.length === 0) return "nothing changes for you.";
  const words = mine.map((h) => {
    const thing = times(h.units, h.name);
    if (h.from.id === card.hiker.id) return `give ${thing} to ${h.to.name}`;
    return h.from.id === a.hiker.id ? `take ${thing}` : `take ${thing} from ${h.from.name}`;
  });
  return list(words) + ".";
}

function kit(card) {
  if (card.kit.length === 0) return nothing;
  const packed = card.kit.filter((k) => !k.worn);
  const worn = card.kit.filter((k) => k.worn);
  const line = (items) => items.map((k) => `${k.name} ${mass(k.grams)}`).join(", ");
  return html`<h3>Own kit</h3>
    ${packed.length > 0 ? html`<p class="kit-line">${line(packed)}</p>` : nothing}
    ${worn.length > 0 ? html`<p class="kit-line">Worn: ${line(worn)}</p>` : nothing}`;
}
