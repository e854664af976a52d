/** What the group shares, entered fast: name, mass, how many, Enter. */
import { focusOn, html, nothing, redraw, repeat } from "../core/view.js";
import { Problem } from "../core/api.js";
import { choice, field, Issues } from "../core/fields.js";
import { edit, trip } from "../core/trip.js";
import { rowsOf, sendRows, sharedOf } from "../core/table.js";
import { entered, numberOr, usual } from "../core/units.js";
import { count, list } from "../core/words.js";
import { details } from "./geardetails.js";

const issues = new Issues();
const adding = { name: "", mass: "", how: "one", count: "" };
const state = { open: "", rest: [] };

const WAYS = [
  ["one", "one thing"],
  ["units", "so many units"],
  ["daily", "for each person and day"],
  ["parts", "in parts"],
];

export function title() {
  return "Shared gear";
}

export function enter() {
  issues.clear();
  state.rest = [];
}

export function view() {
  const shared = trip.document.shared ?? [];
  return html`
    <h1 tabindex="-1">Shared gear</h1>
    <p>
      Masses as they stand on the label or the scale: “2 lb 5 oz” or “1.05 kg”. A table from a spreadsheet can
      be pasted into the last line.
    </p>
    <table class="entry">
      <thead>
        <tr>
          <th>Thing</th>
          <th>Mass, of one</th>
          <th>How it comes</th>
          <th>How many</th>
          <th><span class="unseen">More</span></th>
        </tr>
      </thead>
      <tbody>
        ${repeat(shared, (s) => s.id, (s, i) => [row(s, i), state.open === s.id ? more(s, i) : nothing])} ${newRow(shared.length)}
      </tbody>
    </table>
    ${waiting()} ${issues.leftOver()}
  `;
}

/** Changes some fields of a shared item. */
function change(item, patch, words) {
  issues.clear();
  return edit({
    method: "PATCH",
    path: `/shared/${item.id}`,
    patch,
    touches: (d) => {
      const now = d.shared?.find((s) => s.id === item.id) ?? {};
      return Object.fromEntries(Object.keys(patch).map((name) => [name, now[name] ?? null]));
    },
    words: `${words} of “${item.name}”`,
  }).catch(told);
}

function told(problem) {
  if (!(problem instanceof Problem)) throw problem;
  issues.take(problem);
  redraw();
}

function wayOf(item) {
  if (item.parts) return "parts";
  if (item.perPerson) return "daily";
  return item.unitMass ? "units" : "one";
}

function row(s, i) {
  const at = `/shared/${i}`;
  const way = wayOf(s);
  const massField = way === "one" ? "mass" : "unitMass";
  return html`<tr>
    <td class="wide">${field({ label: "Thing", quiet: true, pointer: `${at}/name`, issues, value: s.name, changed: (name) => change(s, { name }, "the name") })}</td>
    <td>
      ${way === "parts"
        ? html`<span class="quiet-text">by part</span>`
        : field({ label: `Mass of ${s.name}`, quiet: true, pointer: `${at}/${massField}`, issues, value: s[massField], changed: (t) => change(s, { [massField]: entered(t, "gear") }, "the mass") })}
    </td>
    <td><span class="quiet-text">${WAYS.find(([w]) => w === way)[1]}</span></td>
    <td>
      ${way === "units"
        ? field({ label: `How many of ${s.name}`, quiet: true, pointer: `${at}/count`, issues, mode: "numeric", value: s.count, changed: (t) => change(s, { count: numberOr(t) }, "the number") })
        : way === "daily"
          ? field({ label: `For each person and day of ${s.name}`, quiet: true, pointer: `${at}/perPerson/countPerDay`, issues, mode: "numeric", value: s.perPerson.countPerDay, changed: (t) => change(s, { perPerson: { countPerDay: numberOr(t) } }, "the number") })
          : html`<span class="quiet-text">${way === "parts" ? s.parts.length + " parts" : ""}</span>`}
    </td>
    <td>
      <button
        type="button"
        class="plain"
        aria-expanded=${String(state.open === s.id)}
        @click=${() => {
          state.open = state.open === s.id ? "" : s.id;
          redraw();
        }}
      >
        More<span class="unseen"> about ${s.name}</span>
      </button>
    </td>
  </tr>`;
}

function more(s, i) {
  return html`<tr class="more">
    <td colspan="5" class="wide">
      ${details(s, i, issues, (patch, words) => change(s, patch, words))}
      <p class="actions">
        <button type="button" class="quiet" @click=${() => remove(s)}>Leave “${s.name}” at home</button>
      </p>
    </td>
  </tr>`;
}

function remove(s) {
  issues.clear();
  return edit({ method: "DELETE", path: `/shared/${s.id}`, touches: (d) => d.shared?.find((x) => x.id === s.id), words: `“${s.name}”` }).catch(told);
}

function newRow(index) {
  const at = `/shared/${index}`;
  const keyed = (e) => e.key === "Enter" && add([drafted()]);
  const massField = adding.how === "one" ? "mass" : adding.how === "parts" ? "parts/0/mass" : "unitMass";
  const pasted = (e) => {
    const text = e.clipboardData.getData("text");
    const rows = rowsOf(text);
    if (rows.length < 2 || rows[0].length < 2) return;
    e.preventDefault();
    add(sharedOf(text));
  };
  return html`<tr class="adding">
    <td class="wide">${field({ label: "Next thing", quiet: true, pointer: `${at}/name`, issues, value: adding.name, placeholder: "Next thing, or paste a table", typed: (t) => (adding.name = t), keyed, pasted })}</td>
    <td>${field({ label: "Mass of the next thing", quiet: true, pointer: `${at}/${massField}`, issues, value: adding.mass, placeholder: usual("gear"), typed: (t) => (adding.mass = t), keyed })}</td>
    <td>
      ${choice({ label: "How the next thing comes", quiet: true, pointer: "new-way", value: adding.how, options: WAYS, changed: (how) => {
        adding.how = how;
        redraw();
      } })}
    </td>
    <td>
      ${["units", "daily"].includes(adding.how)
        ? field({ label: "How many of the next thing", quiet: true, pointer: adding.how === "units" ? `${at}/count` : `${at}/perPerson/countPerDay`, issues, mode: "numeric", value: adding.count, placeholder: "number", typed: (t) => (adding.count = t), keyed })
        : nothing}
    </td>
    <td><button type="button" class="quiet" @click=${() => add([drafted()])}>Add</button></td>
  </tr>`;
}

function drafted() {
  const name = adding.name.trim();
  const mass = entered(adding.mass, "gear");
  const many = numberOr(adding.count);
  if (adding.how === "units") return { name, unitMass: mass, count: many };
  if (adding.how === "daily") return { name, unitMass: mass, perPerson: { countPerDay: adding.count.trim() === "" ? 1 : many }, use: { kind: "units-per-day" } };
  if (adding.how === "parts") return { name, parts: [{ name: "First part", mass }] };
  return { name, mass };
}

/** Adds things; a refused one comes into the last line, what follows it in the table waits. */
async function add(items) {
  issues.clear();
  const send = (body) => edit({ method: "POST", path: "/shared", body, touches: () => null, words: "the shared gear" });
  const { left, problem } = await sendRows([...items, ...state.rest], send);
  const [refused, ...rest] = left;
  state.rest = rest;
  Object.assign(adding, refused ? draftOf(refused) : { name: "", mass: "", count: "" });
  if (problem) told(problem);
  redraw();
  focusOn(problem ? ".adding [aria-invalid]" : `[data-pointer="/shared/${trip.document.shared?.length ?? 0}/name"]`);
}

function draftOf(item) {
  const how = item.parts ? "parts" : item.perPerson ? "daily" : item.unitMass ? "units" : "one";
  const mass = item.parts?.[0].mass ?? item.unitMass ?? item.mass;
  return { name: item.name, mass, how, count: String(item.count ?? item.perPerson?.countPerDay ?? "") };
}

/** What a pasted table still holds behind a row that was refused. */
function waiting() {
  if (state.rest.length === 0) return nothing;
  return html`<p class="notes" role="status">
    ${count(state.rest.length, "more row")} of the table: ${list(state.rest.slice(0, 3).map((item) => item.name || "?"))}${state.rest.length > 3 ? " …" : ""}.
    They follow when the last line is right.
    <button
      type="button"
      class="plain"
      @click=${() => {
        state.rest = [];
        redraw();
      }}
    >
      Leave them out
    </button>
  </p>`;
}
