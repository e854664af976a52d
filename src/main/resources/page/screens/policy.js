/** What the group aims at: days, fractions, what is made fair. */
import { html, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { choice, field, Issues, tick } from "../core/fields.js";
import { edit, trip } from "../core/trip.js";
import { numberOr } from "../core/units.js";

const issues = new Issues();

/** Percent as people say it from a fraction. */
const percent = (fraction) => String(Math.round(fraction * 1e6) / 1e4);

function change(path, patch, words) {
  issues.clear();
  const names = Object.keys(patch);
  return edit({
    method: "PATCH",
    path,
    patch,
    touches: (d) => Object.fromEntries(names.map((name) => [name, (path ? d.policy : d)[name]])),
    words,
  }).catch((problem) => {
    if (!(problem instanceof Problem)) throw problem;
    issues.take(problem);
    redraw();
  });
}

/** A fraction from a percentage; what is no number goes as it is, for the service to refuse. */
function fraction(text) {
  const number = Number(text.replace("%", "").replace(",", ".").trim());
  return Number.isFinite(number) ? Math.round(number * 1e4) / 1e6 : text;
}

/** Days and policy, as a form that keeps what is entered at once. */
export function policy() {
  const { name, days, policy: p } = trip.document;
  return html`<section>
    <h2>The trip and what is aimed at</h2>
    <div class="form">
      ${field({ label: "Name of the trip", pointer: "/name", issues, value: name, changed: (text) => change("", { name: text }, "the name") })}
      ${field({ label: "Days", pointer: "/days", issues, mode: "numeric", value: days, changed: (text) => change("", { days: numberOr(text) }, "the days") })}
      ${field({ label: "Target: percent of body mass", pointer: "/policy/targetFraction", issues, value: percent(p.targetFraction), mode: "decimal", hint: "A convention, not medical advice.", changed: (t) => change("/policy", { targetFraction: fraction(t) }, "the target") })}
      ${field({ label: "Cap: never more than percent of body mass", pointer: "/policy/capFraction", issues, value: percent(p.capFraction), mode: "decimal", changed: (t) => change("/policy", { capFraction: fraction(t) }, "the cap") })}
      ${choice({
        label: "What is made fair",
        pointer: "/policy/basis",
        issues,
        value: p.basis,
        options: [
          ["load", "the whole load, own kit included"],
          ["shared", "the shared things alone"],
        ],
        changed: (basis) => change("/policy", { basis }, "what is made fair"),
      })}
      ${field({ label: "Grain, in thousandths of target", pointer: "/policy/grain", issues, value: p.grain, mode: "numeric", hint: "Loads closer than this count as equal.", changed: (t) => change("/policy", { grain: numberOr(t) }, "the grain") })}
      <div class="wide">
        ${tick({ label: "Minors may carry flame and fuel", pointer: "/policy/minorsMayCarryFlameAndFuel", value: p.minorsMayCarryFlameAndFuel, changed: (on) => change("/policy", { minorsMayCarryFlameAndFuel: on }, "what minors may carry") })}
      </div>
    </div>
    ${issues.leftOver()}
  </section>`;
}
