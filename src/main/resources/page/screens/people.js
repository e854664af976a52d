/** Who comes, what each can carry, and what each brings anyway. */
import { focusOn, html, nothing, redraw, repeat } from "../core/view.js";
import { Problem } from "../core/api.js";
import { choice, field, Issues, tick } from "../core/fields.js";
import { edit, trip } from "../core/trip.js";
import { entered, usual } from "../core/units.js";
import { count } from "../core/words.js";
import { kitOf } from "./kit.js";
import { policy } from "./policy.js";

const issues = new Issues();
const adding = { name: "", bodyMass: "", pack: "" };
const state = { open: "" };

export function title() {
  return "People";
}

export function enter() {
  issues.clear();
}

export function view() {
  const { hikers } = trip.document;
  const hidden = new Set(trip.state.bodyMassHidden);
  return html`
    <h1 tabindex="-1">People</h1>
    <p>
      A body mass sets the target by the fractions below. Who would rather not say it can give it by an own
      link, seen by nobody else, or state a target load instead.
    </p>
    <table class="entry">
      <thead>
        <tr>
          <th>Name</th>
          <th>Body mass</th>
          <th>or target load</th>
          <th>Pack, empty</th>
          <th>Leaves after day</th>
          <th><span class="unseen">More</span></th>
        </tr>
      </thead>
      <tbody>
        ${repeat(hikers, (h) => h.id, (h, i) => [row(h, i, hidden.has(h.id)), state.open === h.id ? more(h, i) : nothing])}
        ${newRow(hikers.length)}
      </tbody>
    </table>
    ${issues.leftOver()} ${policy()}
  `;
}

function change(hiker, patch, words) {
  issues.clear();
  return edit({
    method: "PATCH",
    path: `/hikers/${hiker.id}`,
    patch,
    touches: (d) => {
      const now = d.hikers.find((h) => h.id === hiker.id) ?? {};
      return Object.fromEntries(Object.keys(patch).map((name) => [name, now[name] ?? null]));
    },
    words: `${words} of ${hiker.name}`,
  }).catch(told);
}

function told(problem) {
  if (!(problem instanceof Problem)) throw problem;
  issues.take(problem);
  redraw();
}

/** A field's text as it is sent: nothing typed takes the field away. */
const orNothing = (text, kind) => (text.trim() === "" ? null : entered(text, kind));

function row(h, i, hidden) {
  const at = `/hikers/${i}`;
  return html`<tr>
    <td class="wide">
      ${field({ label: "Name", quiet: true, pointer: `${at}/name`, issues, value: h.name, changed: (name) => change(h, { name }, "the name") })}
    </td>
    <td>
      ${field({
        label: `Body mass of ${h.name}`,
        quiet: true,
        pointer: `${at}/bodyMass`,
        issues,
        value: hidden ? "" : h.bodyMass,
        placeholder: hidden ? "kept private" : "",
        disabled: hidden,
        changed: (text) => change(h, { bodyMass: orNothing(text, "body") }, "the body mass"),
      })}
    </td>
    <td>
      ${field({
        label: `Target load of ${h.name}`,
        quiet: true,
        pointer: `${at}/targetLoad`,
        issues,
        value: h.targetLoad,
        changed: (text) => change(h, { targetLoad: orNothing(text, "body") }, "the target load"),
      })}
    </td>
    <td>
      ${field({
        label: `Empty pack of ${h.name}`,
        quiet: true,
        pointer: `${at}/pack/mass`,
        issues,
        value: h.pack?.mass,
        changed: (text) => change(h, { pack: text.trim() ? { mass: entered(text, "gear") } : null }, "the pack"),
      })}
    </td>
    <td>
      ${field({
        label: `Last day of ${h.name}`,
        quiet: true,
        pointer: `${at}/leavesAfterDay`,
        issues,
        mode: "numeric",
        value: h.leavesAfterDay,
        placeholder: "stays",
        changed: (text) => change(h, { leavesAfterDay: text.trim() ? wholeOr(text) : null }, "the last day"),
      })}
    </td>
    <td>
      <button
        type="button"
        class="plain"
        aria-expanded=${String(state.open === h.id)}
        @click=${() => {
          state.open = state.open === h.id ? "" : h.id;
          redraw();
        }}
      >
        ${count(h.kit?.length ?? 0, "own thing")}<span class="unseen"> of ${h.name}</span>
      </button>
    </td>
  </tr>`;
}

/** A whole number, or the text itself, so that the service can say what is wrong with it. */
export function wholeOr(text) {
  return /^\s*\d+\s*$/.test(text) ? Number.parseInt(text, 10) : text;
}

function more(h, i) {
  const at = `/hikers/${i}`;
  const parts = new Set(trip.document.hikers.map((each) => each.party).filter(Boolean));
  return html`<tr class="more">
    <td colspan="6" class="wide">
      <div class="form">
        ${field({ label: "Party: who walks together and may lose sight of others", pointer: `${at}/party`, issues, value: h.party, list: "parties", changed: (t) => change(h, { party: t.trim() || null }, "the party") })}
        <datalist id="parties">${[...parts].map((p) => html`<option value=${p}></option>`)}</datalist>
        ${field({ label: "Own cap: never more than", pointer: `${at}/capLoad`, issues, value: h.capLoad, changed: (t) => change(h, { capLoad: orNothing(t, "body") }, "the cap") })}
        ${field({ label: "Room in the pack", pointer: `${at}/pack/volume`, issues, value: h.pack?.volume, disabled: !h.pack, changed: (t) => change(h, { pack: { volume: orNothing(t, "room") } }, "the pack") })}
        ${field({ label: "The pack is made for at most", pointer: `${at}/pack/loadRating`, issues, value: h.pack?.loadRating, disabled: !h.pack, changed: (t) => change(h, { pack: { loadRating: orNothing(t, "body") } }, "the pack") })}
        ${field({ label: "Takes at most so many shared pieces", pointer: `${at}/maxPieces`, issues, mode: "numeric", value: h.maxPieces, changed: (t) => change(h, { maxPieces: t.trim() ? wholeOr(t) : null }, "the number of pieces") })}
        ${choice({
          label: "Own target fraction of body mass",
          pointer: `${at}/targetFraction`,
          issues,
          value: String(h.targetFraction ?? ""),
          options: [["", "as the group's"], ...["0.1", "0.12", "0.15", "0.18", "0.2", "0.22", "0.25"].concat(h.targetFraction ? [String(h.targetFraction)] : []).filter((v, k, all) => all.indexOf(v) === k).map((v) => [v, `${Math.round(v * 1000) / 10} %`])],
          changed: (v) => change(h, { targetFraction: v ? Number(v) : null }, "the fraction"),
        })}
        <div class="wide">
          ${tick({ label: "A minor: lower target and cap, no flame and no fuel", pointer: `${at}/minor`, value: h.minor, changed: (on) => change(h, { minor: on || null }, "being a minor") })}
        </div>
      </div>
      ${kitOf(h, i, issues, told)}
      <p class="actions">
        ${trip.document.hikers.length > 1
          ? html`<button type="button" class="quiet" @click=${() => remove(h)}>Take ${h.name} off the trip</button>`
          : nothing}
      </p>
    </td>
  </tr>`;
}

function remove(h) {
  issues.clear();
  return edit({ method: "DELETE", path: `/hikers/${h.id}`, touches: (d) => d.hikers.find((x) => x.id === h.id), words: h.name }).catch(told);
}

function newRow(index) {
  const at = `/hikers/${index}`;
  const keyed = (e) => {
    if (e.key === "Enter") {
      e.target.dispatchEvent(new Event("change"));
      add(at);
    }
  };
  const box = (name, label, hint) =>
    field({ label, quiet: true, pointer: `${at}/${name}`, issues, value: adding[name.split("/")[0]], placeholder: hint, typed: (t) => (adding[name.split("/")[0]] = t), keyed });
  return html`<tr class="adding">
    <td class="wide">${box("name", "Name of the next", "Next name")}</td>
    <td>${box("bodyMass", "Body mass of the next", usual("body"))}</td>
    <td><span class="unseen">A target load can be stated afterwards</span></td>
    <td>${box("pack/mass", "Empty pack of the next", usual("gear"))}</td>
    <td></td>
    <td><button type="button" class="quiet" @click=${() => add(at)}>Add</button></td>
  </tr>`;
}

function add(at) {
  issues.clear();
  const body = { name: adding.name.trim() };
  if (adding.bodyMass.trim()) body.bodyMass = entered(adding.bodyMass, "body");
  if (adding.pack.trim()) body.pack = { mass: entered(adding.pack, "gear") };
  return edit({ method: "POST", path: "/hikers", body, touches: () => null, words: "who comes" }).then((answer) => {
    if (!answer) return;
    Object.assign(adding, { name: "", bodyMass: "", pack: "" });
    redraw();
    focusOn(`[data-pointer="/hikers/${trip.document.hikers.length}/name"]`);
  }, told);
}
