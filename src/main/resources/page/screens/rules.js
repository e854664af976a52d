/** The rules, in plain words: each is a sentence, and a new one is a sentence with gaps. */
import { html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { choice, field, Issues } from "../core/fields.js";
import { edit, trip } from "../core/trip.js";
import { list, Names } from "../core/words.js";

const KINDS = [
  ["pinned", "one hiker carries it"],
  ["only", "only some may carry it"],
  ["barred", "some do not carry it"],
  ["together", "things stay in one pack"],
  ["apart", "things are in different packs"],
  ["party-has", "each party has something"],
];

const issues = new Issues();
const draft = { kind: "pinned", pieces: [], hikers: [], covers: "", parties: [], atLeast: "1" };

export function title() {
  return "Rules";
}

export function enter() {
  issues.clear();
}

export function view() {
  const rules = trip.document.rules ?? [];
  const names = new Names(trip.document);
  return html`
    <h1 tabindex="-1">Rules</h1>
    <p>Rules always hold. If they cannot all hold, you are told which of them conflict.</p>
    <ul class="rows">
      ${rules.map(
        (rule) => html`<li>
          <span>${sentence(rule, names)}</span>
          <button type="button" class="plain" @click=${() => remove(rule, names)}>Lift<span class="unseen">: ${sentence(rule, names)}</span></button>
        </li>`,
      )}
      ${rules.length === 0 ? html`<li class="quiet-text">None yet.</li>` : nothing}
    </ul>
    <form
      @submit=${(e) => {
        e.preventDefault();
        add();
      }}
    >
      <h2>A new rule</h2>
      ${choice({
        label: "What it says",
        pointer: "new-rule-kind",
        value: draft.kind,
        options: KINDS,
        changed: (kind) => {
          Object.assign(draft, { kind, hikers: [] });
          redraw();
        },
      })}
      ${gaps(names, `/rules/${rules.length}`)}
      <p class="made" aria-live="polite">${complete() ? sentence(drafted(), names) : nothing}</p>
      ${issues.leftOver()}
      <p class="actions"><button type="submit" ?disabled=${!complete()}>Add this rule</button></p>
    </form>
  `;
}

/** A rule as one would say it. */
export function sentence(rule, names) {
  const things = list((rule.pieces ?? []).map((p) => `“${names.piece(p)}”`));
  const people = list((rule.hikers ?? []).map((h) => names.hiker(h)));
  switch (rule.kind) {
    case "pinned":
      return `${names.hiker(rule.hiker)} carries ${things}.`;
    case "only":
      return `Only ${people} may carry ${things}.`;
    case "barred":
      return `${people} ${rule.hikers.length === 1 ? "does" : "do"} not carry ${things}.`;
    case "together":
      return `${things} stay in one pack.`;
    case "apart":
      return `${things} are in different packs.`;
    default: {
      const who = rule.parties ? `${rule.parties.length > 1 ? "Each of the parties" : "The party"} ${list(rule.parties)}` : "Each party";
      return `${who} has ${(rule.atLeast ?? 1) > 1 ? `${rule.atLeast} things` : "something"} for ${rule.covers} on every morning.`;
    }
  }
}

function gaps(names, at) {
  if (draft.kind === "party-has") return needs(at);
  const pieces = [...names.pieces].map(([id, name]) => [id, name]);
  return html`
    ${picker("What", "pieces", pieces, `${at}/pieces/0`)}
    ${["pinned", "only", "barred"].includes(draft.kind)
      ? picker("Who", "hikers", [...names.hikers], `${at}/hikers/0`, draft.kind === "pinned" ? 1 : 99)
      : nothing}
  `;
}

function needs(at) {
  const known = new Set((trip.document.shared ?? []).flatMap((s) => s.covers ?? []));
  const parties = [...new Set(trip.document.hikers.map((h) => h.party).filter(Boolean))];
  return html`<div class="form">
    ${field({ label: "Something for", pointer: `${at}/covers`, issues, value: draft.covers, list: "needs-known", hint: "A need that gear covers, such as first-aid", typed: (t) => {
      draft.covers = t;
      redraw();
    } })}
    <datalist id="needs-known">${[...known].map((need) => html`<option value=${need}></option>`)}</datalist>
    ${field({ label: "How many at least", pointer: `${at}/atLeast`, issues, mode: "numeric", value: draft.atLeast, typed: (t) => (draft.atLeast = t) })}
    ${parties.length > 0 ? html`<div class="wide">${picker("Which parties (none: all)", "parties", parties.map((p) => [p, p]), `${at}/parties/0`)}</div>` : nothing}
  </div>`;
}

/** Several of a list: each chosen one can be taken out again. */
function picker(label, into, options, pointer, most = 99) {
  const chosen = draft[into];
  const left = options.filter(([id]) => !chosen.includes(id));
  const words = new Map(options);
  return html`<div class="picker">
    ${chosen.map(
      (id) => html`<button type="button" class="quiet chosen" @click=${() => pick(into, chosen.filter((c) => c !== id))}>
        ${words.get(id) ?? id} <span aria-hidden="true">×</span><span class="unseen">take out</span>
      </button>`,
    )}
    ${chosen.length < most && left.length > 0
      ? choice({
          label: chosen.length === 0 ? label : `${label}, another`,
          pointer,
          issues,
          value: "",
          options: [["", "choose …"], ...left],
          changed: (id) => id && pick(into, [...chosen, id]),
        })
      : nothing}
  </div>`;
}

function pick(into, ids) {
  draft[into] = ids;
  redraw();
}

function complete() {
  if (draft.kind === "party-has") return draft.covers.trim() !== "";
  const enough = draft.pieces.length >= (["together", "apart"].includes(draft.kind) ? 2 : 1);
  return enough && (["together", "apart"].includes(draft.kind) || draft.hikers.length > 0);
}

function drafted() {
  const { kind, pieces, hikers, covers, parties, atLeast } = draft;
  if (kind === "party-has") {
    const rule = { kind, covers: covers.trim(), atLeast: Number(atLeast) || atLeast };
    return parties.length > 0 ? { ...rule, parties } : rule;
  }
  if (kind === "pinned") return { kind, pieces, hiker: hikers[0] };
  return ["only", "barred"].includes(kind) ? { kind, pieces, hikers } : { kind, pieces };
}

function add() {
  issues.clear();
  return edit({ method: "POST", path: "/rules", body: drafted(), touches: () => null, words: "the rules" }).then((answer) => {
    if (answer) Object.assign(draft, { pieces: [], hikers: [], covers: "", parties: [], atLeast: "1" });
    redraw();
  }, told);
}

function remove(rule, names) {
  issues.clear();
  return edit({ method: "DELETE", path: `/rules/${rule.id}`, touches: (d) => d.rules?.find((r) => r.id === rule.id), words: `the rule “${sentence(rule, names)}”` }).catch(told);
}

function told(problem) {
  if (!(problem instanceof Problem)) throw problem;
  issues.take(problem);
  redraw();
}
