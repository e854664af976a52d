/** A new trip in a few minutes: who comes, for how long, and a first table of what is shared. */
import { focusOn, html, nothing, redraw } from "../core/view.js";
import { ask, freshKey, Problem } from "../core/api.js";
import { field, Issues } from "../core/fields.js";
import { keep } from "../core/keys.js";
import { at, go } from "../core/router.js";
import { entriesOf, rowsOf, sharedOf } from "../core/table.js";
import { entered, numberOr, usual } from "../core/units.js";
import { count } from "../core/words.js";

const blank = () => ({ name: "", bodyMass: "", pack: "" });
const draft = { name: "", days: "2", target: "20", people: [blank(), blank(), blank()], shared: "", busy: false, key: freshKey() };
const issues = new Issues();

export function title() {
  return "New trip";
}

export function view() {
  const gear = sharedOf(draft.shared);
  return html`
    <h1 tabindex="-1">A new trip</h1>
    <form @submit=${submit}>
      <div class="form">
        <div class="wide">
          ${field({ label: "Name of the trip", pointer: "/name", issues, value: draft.name, typed: (t) => (draft.name = t) })}
        </div>
        ${field({ label: "Days", pointer: "/days", issues, mode: "numeric", value: draft.days, typed: (t) => (draft.days = t) })}
        ${field({ label: "Target: percent of body mass", pointer: "/policy/targetFraction", issues, mode: "decimal", value: draft.target, hint: "A convention, not medical advice. Everybody may set a lower one.", typed: (t) => (draft.target = t) })}
      </div>
      <h2>Who comes</h2>
      <p class="quiet-text">
        Enter goes to the next. A table with names and body masses can be pasted into a name. Who would rather not
        say a body mass here can be given a target load such as “12 kg” in its place.
      </p>
      <table class="entry">
        <thead>
          <tr>
            <th>Name</th>
            <th>Body mass, or “carries 12 kg”</th>
            <th>Empty pack</th>
          </tr>
        </thead>
        <tbody>
          ${draft.people.map(person)}
        </tbody>
      </table>
      <p><button type="button" class="plain" @click=${() => another()}>One more</button></p>
      <h2>What is shared</h2>
      <div class="field">
        <label for="shared-table">Paste or drop a table: name, mass, how many. It can also be entered on the next screen.</label>
        <textarea
          id="shared-table"
          rows="5"
          spellcheck="false"
          aria-invalid=${refused(gear).length > 0 ? "true" : nothing}
          aria-describedby="shared-issues"
          .value=${draft.shared}
          @input=${(e) => {
            draft.shared = e.target.value;
            redraw();
          }}
          @dragover=${(e) => e.preventDefault()}
          @drop=${dropped}
        ></textarea>
        <div id="shared-issues">
          ${refused(gear).map(({ name, issue }) => html`<p class="issue">“${name}”: ${issue.message} ${issue.remedy}</p>`)}
        </div>
      </div>
      <p class="quiet-text" aria-live="polite">${gear.length > 0 ? count(gear.length, "shared thing") + " read." : "Columns by tab, comma or semicolon, with or without headings."}</p>
      ${issues.leftOver()}
      <p class="actions"><button type="submit" ?disabled=${draft.busy}>Make the trip</button></p>
    </form>
  `;
}

function person(p, i) {
  const keyed = (e) => {
    if (e.key !== "Enter") return;
    e.preventDefault();
    if (i === draft.people.length - 1) another();
    focusOn(`[data-pointer="/hikers/${i + 1}/name"]`);
  };
  const box = (name, label, placeholder, pointer = name, extra = {}) =>
    field({ label: `${label} of person ${i + 1}`, quiet: true, pointer: `/hikers/${i}/${pointer}`, issues, value: p[name], placeholder, typed: (t) => (p[name] = t), keyed, ...extra });
  return html`<tr>
    <td class="wide">${box("name", "Name", i === 0 ? "You, for example" : "", "name", { pasted: (e) => pastedPeople(e, i) })}</td>
    <td>${box("bodyMass", "Body mass", usual("body"), carries(p.bodyMass) ? "targetLoad" : "bodyMass")}</td>
    <td>${box("pack", "Empty pack", usual("gear"), "pack/mass")}</td>
  </tr>`;
}

function another() {
  draft.people.push(blank());
  redraw();
}

const carries = (text) => /^\s*(carries|target)\b/i.test(text);

function pastedPeople(event, from) {
  const text = event.clipboardData.getData("text");
  if (rowsOf(text).length < 2) return;
  event.preventDefault();
  const people = entriesOf(text).map((e) => ({ name: e.name, bodyMass: e.mass, pack: e.pack }));
  draft.people.splice(from, people.length, ...people);
  redraw();
}

/** Issues of the table's rows, with the name that stands in the row. */
function refused(gear) {
  return issues.under("/shared/").map((issue) => ({ name: gear[Number(issue.pointer.split("/")[2])]?.name ?? "?", issue }));
}

async function dropped(event) {
  const file = event.dataTransfer.files[0];
  if (!file) return;
  event.preventDefault();
  draft.shared = (await file.text()).slice(0, 200_000);
  redraw();
}

function hikerOf(p) {
  const hiker = { name: p.name.trim() };
  if (carries(p.bodyMass)) hiker.targetLoad = entered(p.bodyMass.replace(/^\s*\w+:?/, ""), "body");
  else if (p.bodyMass.trim()) hiker.bodyMass = entered(p.bodyMass, "body");
  if (p.pack.trim()) hiker.pack = { mass: entered(p.pack, "gear") };
  return hiker;
}

async function submit(event) {
  event.preventDefault();
  if (draft.busy) return;
  draft.people = draft.people.filter((p, i) => i === 0 || p.name.trim() || p.bodyMass.trim());
  const target = Number(draft.target.replace(",", ".").replace("%", ""));
  const body = {
    format: "faircarry-trip/1",
    name: draft.name.trim(),
    days: numberOr(draft.days),
    policy: { targetFraction: Number.isFinite(target) ? Math.round(target * 1e4) / 1e6 : draft.target },
    hikers: draft.people.map(hikerOf),
    shared: sharedOf(draft.shared),
  };
  issues.clear();
  draft.busy = true;
  redraw();
  try {
    const made = (await ask("POST", "/v1/trips", { body, key: freshKey() })).body;
    keep(made.id, { token: made.token, name: body.name, role: "leader" });
    Object.assign(draft, { name: "", people: [blank(), blank(), blank()], shared: "" });
    go(at(made.id, body.shared.length > 0 ? "people" : "gear"));
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    issues.take(problem);
    focusOn("[aria-invalid], .trouble");
  }
  draft.busy = false;
  redraw();
}
