/** What must come along: each need, what meets it, what is missing, and what could stay at home. */
import { html, nothing, redraw, repeat } from "../core/view.js";
import { ask, Problem } from "../core/api.js";
import { partiesServed, thingsFor } from "../core/cover.js";
import { field, Issues } from "../core/fields.js";
import { edit, onTrip, trip } from "../core/trip.js";
import { at } from "../core/router.js";
import { entered } from "../core/units.js";
import { list, Names } from "../core/words.js";

/** Search steps for the lightest choice; the rest of the answer needs none. */
const EFFORT = 500_000;

const WORDS = {
  sleeping: "A place to sleep",
  pot: "A pot",
  flame: "A stove",
  "water-treatment": "Clean water",
  "first-aid": "First aid",
  navigation: "Finding the way",
  light: "Light",
  repair: "Mending things",
};

const issues = new Issues();
const adding = { covers: "", atLeast: "1" };
const state = { trip: "", answer: null, busy: false, trouble: "" };
let stop = () => {};

export function title() {
  return "Needs";
}

export async function enter() {
  if (state.trip !== trip.id) Object.assign(state, { trip: trip.id, answer: null, trouble: "" });
  issues.clear();
  stop();
  stop = onTrip(load);
  await load();
}

export function leave() {
  stop();
}

let asked = 0;

/**
 * Asks without any body mass: what a group needs does not depend on it, so the question works, and
 * says the same, whoever keeps theirs private. The service wants one or a target load; any will do.
 */
async function load() {
  const mine = ++asked;
  const hikers = trip.document.hikers.map(({ bodyMass, ...h }) => ({ ...h, targetLoad: "10 kg" }));
  try {
    const answer = await ask("POST", `/v1/choices?effort=${EFFORT}`, { body: { trip: { ...trip.document, hikers } } });
    if (mine !== asked) return;
    Object.assign(state, { answer: answer.body, trouble: "" });
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    if (mine !== asked) return;
    state.trouble = problem.issues[0]?.message ?? problem.message;
  }
  redraw();
}

export function view() {
  const { answer, trouble } = state;
  const rows = (answer?.needs ?? []).filter(asks).map(judged);
  const some = (standing) => rows.filter((row) => row.standing === standing);
  return html`
    <h1 tabindex="-1">What must come along</h1>
    <p>
      Most of this a group needs once, not once each. What meets a need is said with the thing, under
      <a href=${at(trip.id, "gear")}>Shared gear</a> and <a href=${at(trip.id, "people")}>People</a>.
    </p>
    ${trouble ? html`<p class="trouble" role="alert">${trouble}</p>` : nothing}
    ${answer || trouble ? nothing : html`<p class="waiting">Looking …</p>`}
    <p class="verdict" role="status">${headline(rows)}</p>
    ${group("Missing", some("missing"))} ${group("There more often than needed", some("double"))}
    ${lightest(answer)} ${group("Met", some("met"))} ${answer ? newNeed() : nothing} ${issues.leftOver()}
  `;
}

function asks(need) {
  return (need.atLeast ?? need.atLeastMilliliters) > 0 || (need.perParty ?? []).some((p) => p.atLeast > 0);
}

/** A need with what meets it and how it stands. */
function judged(need) {
  const { answer } = state;
  const things = thingsFor(need.covers, trip.document);
  const short = (answer.shortfalls ?? []).find((s) => s.covers === need.covers);
  const double = answer.doubles.find((d) => d.covers === need.covers);
  const served = partiesServed(need, things);
  const standing = short || !served || things.length === 0 ? "missing" : double ? "double" : "met";
  return { need, things, short, double, served, standing };
}

function headline(rows) {
  if (rows.length === 0) return nothing;
  const named = (standing) => list(rows.filter((r) => r.standing === standing).map((r) => inside(r.need.covers)));
  const missing = named("missing");
  const doubled = named("double");
  if (!missing && !doubled) return "Every need is met, and nothing is there twice without cause.";
  return [missing && `Missing or not enough: ${missing}.`, doubled && `More than is needed: ${doubled}.`].filter(Boolean).join(" ");
}

function group(heading, rows) {
  if (rows.length === 0) return nothing;
  return html`<section>
    <h2>${heading}</h2>
    <ul class="needs">
      ${repeat(rows, (row) => row.need.covers, one)}
    </ul>
  </section>`;
}

const spoken = (need) => WORDS[need] ?? need.replaceAll("-", " ").replace(/^./, (c) => c.toUpperCase());
const inside = (need) => spoken(need).replace(/^./, (c) => c.toLowerCase());
const litres = (milliliters) => `${Number((milliliters / 1000).toFixed(2))} L`;
const amount = (need, value) => (need.atLeastMilliliters === undefined ? String(value) : litres(value));

function one({ need, things, short, double, served }) {
  const wanted = need.atLeast ?? need.atLeastMilliliters;
  const there = double?.met ?? short?.met;
  const standing = [
    wanted > 0 ? `${amount(need, wanted)} needed` : "",
    there === undefined ? "" : `${amount(need, there)} there`,
    served ? "" : "not enough for each party to have its own",
  ].filter(Boolean);
  return html`<li>
    <div class="need">
      <h3>${spoken(need.covers)}</h3>
      <p>${standing.join(", ")}</p>
      <p class="quiet-text">${why(need.reason)}</p>
    </div>
    ${things.length === 0
      ? html`<p class="quiet-text">Nothing in the trip is said to meet it.</p>`
      : html`<ul class="rows">
          ${repeat(things, (t) => t.ref, (t) => thing(t, double))}
        </ul>`}
    ${wish(need, wanted)}
  </li>`;
}

/** The service's reason in the words of this page. */
function why(reason) {
  const parties = trip.document.hikers.some((h) => h.party);
  return reason
    .split("; ")
    .map((part) => {
      if (part.startsWith("rule ")) return "a rule of yours";
      if (part === "stated in the plan") return "as you set it";
      return parties ? part : part.replace(/,? and one for each party$/, "").replace("one for each party", "one for the group");
    })
    .join("; ")
    .replace(/^./, (c) => c.toUpperCase());
}

function thing(t, double) {
  const names = new Names(trip.document);
  const kept = keeps().includes(t.ref);
  const spare = double?.canStay.includes(t.ref);
  const words = t.whose ? `${t.name} of ${names.hiker(t.whose)}` : t.name;
  return html`<li>
    <span>${t.name} <span class="quiet-text">${[t.whose ? `${names.hiker(t.whose)}’s own` : "shared", t.mass].filter(Boolean).join(", ")}</span></span>
    ${kept ? html`<span>comes along</span>
          <button type="button" class="plain" ?disabled=${state.busy} @click=${() => keep(keeps().filter((ref) => ref !== t.ref), words)}>
            Leave that open<span class="unseen"> of ${words}</span>
          </button>` : nothing}
    ${spare
      ? html`<span class="actions">
          <button type="button" class="quiet" ?disabled=${state.busy} @click=${() => leaveHome(t, words)}>
            Leave this one at home<span class="unseen">: ${words}</span>
          </button>
          <button type="button" class="quiet" ?disabled=${state.busy} @click=${() => keep([...keeps(), t.ref], words)}>
            Take this one<span class="unseen">: ${words}</span>
          </button>
        </span>`
      : nothing}
  </li>`;
}

const taking = (document) => document.plan?.taking ?? {};
const keeps = () => taking(trip.document).keep ?? [];

/** How much of it the group wants: a number of its own in place of common practice. */
function wish(need, wanted) {
  const room = need.atLeastMilliliters !== undefined;
  return field({
    label: html`Needed${room ? ", in litres" : ""}<span class="unseen">: ${inside(need.covers)}</span>`,
    pointer: `need-${need.covers}`,
    issues,
    style: "wish",
    mode: room ? "decimal" : "numeric",
    width: 6,
    value: room ? litres(wanted) : String(wanted),
    changed: (text) => setNeed(need, room ? entered(text, "room") : Number(text.trim() || NaN)),
  });
}

function setNeed(need, atLeast) {
  if (Number.isNaN(atLeast)) {
    // Nothing was said: what was asked for stays, and is shown again.
    redraw();
    return undefined;
  }
  const { covers } = need;
  const parties = (need.perParty ?? []).map((p) => p.atLeast);
  const nothingAsked = atLeast === 0 || /^0+([.]0*)? L$/i.test(atLeast);
  const stated = parties.length > 0 && !nothingAsked ? { covers, atLeast, perParty: Math.min(...parties) } : { covers, atLeast };
  return plan({ needs: [...(taking(trip.document).needs ?? []).filter((n) => n.covers !== covers), stated] }, `how much of “${inside(covers)}” is needed`);
}

function keep(refs, words) {
  return plan({ keep: refs }, `“${words}”`);
}

/** Changes what the trip says of taking; lists go as a whole. */
function plan(patch, words) {
  return write({
    method: "PATCH",
    path: "",
    patch: { plan: { taking: patch } },
    touches: (d) => Object.keys(patch).map((name) => taking(d)[name] ?? null),
    words,
  });
}

function leaveHome(t, words) {
  const [hiker, item] = t.ref.split("/");
  const found = (d) =>
    t.whose ? d.hikers.find((h) => h.id === hiker)?.kit?.find((k) => k.id === item) : d.shared?.find((s) => s.id === t.ref);
  return write({ method: "DELETE", path: t.whose ? `/hikers/${hiker}/kit/${item}` : `/shared/${t.ref}`, touches: found, words: `“${words}”` });
}

async function write(change) {
  issues.clear();
  state.busy = true;
  redraw();
  try {
    return await edit(change);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    issues.take(problem);
    return null;
  } finally {
    state.busy = false;
    redraw();
  }
}

/** What the lightest choice leaves at home, where nothing has to be bought or fetched for it. */
function lightest(answer) {
  const c = answer?.chosen;
  if (!c || c.leftAtHome.length === 0 || c.bought.length + c.brought.length > 0) return nothing;
  const names = new Names(trip.document);
  const spoken = c.leftAtHome.map((ref) => nameOf(ref, names));
  return html`<p>Lightest, with every need still met: leave ${list(spoken)} at home${answer.complete ? "; proved" : ""}.</p>`;
}

function nameOf(ref, names) {
  const [hiker, item] = ref.split("/");
  if (!item) return names.piece(ref);
  const kit = trip.document.hikers.find((h) => h.id === hiker)?.kit ?? [];
  return `${kit.find((k) => k.id === item)?.name ?? item} of ${names.hiker(hiker)}`;
}

function newNeed() {
  const add = async () => {
    const covers = adding.covers.trim();
    if (!covers) return;
    const done = await setNeed({ covers }, Number(adding.atLeast) || adding.atLeast);
    if (done) Object.assign(adding, { covers: "", atLeast: "1" });
    redraw();
  };
  return html`<form
    @submit=${(e) => {
      e.preventDefault();
      add();
    }}
  >
    <h2>Something else that must come</h2>
    <div class="form">
      ${field({ label: "What for", pointer: "new-need", issues, value: adding.covers, hint: "In the word that things are said to meet, such as whistle", typed: (t) => (adding.covers = t) })}
      ${field({ label: "How many", pointer: "new-need-count", issues, mode: "numeric", value: adding.atLeast, typed: (t) => (adding.atLeast = t) })}
    </div>
    <p class="actions"><button type="submit" class="quiet" ?disabled=${state.busy}>Add this need</button></p>
  </form>`;
}
