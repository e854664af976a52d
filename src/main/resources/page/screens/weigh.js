/**
 * Packs on the scale, one name after the other, with cold fingers: one big field, Enter, and the
 * answer at once. What agrees needs nothing; the rest asks.
 */
import { announce, focusOn, html, nothing, redraw } from "../core/view.js";
import { freshKey, Problem } from "../core/api.js";
import { askTrip, edit, leads, refresh, trip } from "../core/trip.js";
import { entered, mass, usual } from "../core/units.js";

const KINDS = [
  ["whole-pack", "Packed packs"],
  ["empty-pack", "Empty packs"],
];

const state = { kind: "whole-pack", hiker: "", typed: "", trouble: "", weighed: [], done: new Set(), busy: false };

export function title() {
  return "Weigh-in";
}

export async function enter() {
  Object.assign(state, { typed: "", trouble: "", done: new Set() });
  state.hiker = people()[0]?.id ?? "";
  await look();
}

/** Leaders weigh everybody, hikers themselves. */
function people() {
  const all = trip.document.hikers;
  return leads() ? all : all.filter((h) => h.id === trip.state.you.hiker);
}

async function look() {
  try {
    state.weighed = (await askTrip("GET", "/weigh-ins")).body.weighed;
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    state.trouble = problem.message;
  }
  redraw();
}

const subject = (hiker = state.hiker) => `${state.kind}/${hiker}`;
const told = (hiker) => state.weighed.find((w) => w.subject === subject(hiker));

/** Keeps a reading and hears what it comes to. */
async function read(text, confirmed) {
  if (state.busy || !text.trim()) return;
  Object.assign(state, { busy: true, trouble: "" });
  redraw();
  try {
    const reading = { kind: state.kind, hiker: state.hiker, mass: entered(text, "body") };
    if (confirmed) reading.confirmed = true;
    await askTrip("POST", "/readings", { body: { readings: [reading] }, key: freshKey() });
    await look();
    state.typed = "";
    const one = told(state.hiker);
    announce(one ? words(one) : "Kept.");
    if (one?.result === "agrees") next();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    state.trouble = [problem.message, ...problem.issues.map((i) => `${i.message} ${i.remedy}`)].join(" ");
  }
  state.busy = false;
  redraw();
  focusOn("#scale");
}

/** On to the next who is not done; the last name stays. */
function next() {
  const all = people();
  state.done.add(subject());
  const from = all.findIndex((h) => h.id === state.hiker);
  const after = [...all.slice(from + 1), ...all.slice(0, from)].find((h) => !state.done.has(subject(h.id)));
  if (after) state.hiker = after.id;
  state.typed = "";
  redraw();
  focusOn("#scale");
}

async function accept(one) {
  try {
    await edit({ method: "POST", path: "/weigh-ins", body: { accept: [one.subject] }, touches: (d) => d.hikers.find((h) => h.id === one.hiker)?.pack, words: one.name });
    await refresh();
    await look();
    announce("Taken over.");
    next();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    state.trouble = problem.message;
    redraw();
  }
}

export function view() {
  const who = trip.document.hikers.find((h) => h.id === state.hiker);
  if (!who) return html`<h1 tabindex="-1">Weigh-in</h1><p>There is nobody to weigh here.</p>`;
  const one = told(who.id);
  const open = one && !state.done.has(subject()) && state.typed === "";
  return html`<h1 tabindex="-1">Weigh-in</h1>
    <div class="segments" role="group" aria-label="What hangs on the scale">
      ${KINDS.map(
        ([kind, label]) => html`<button type="button" class=${kind === state.kind ? "" : "quiet"} aria-pressed=${String(kind === state.kind)} @click=${() => choose(kind)}>${label}</button>`,
      )}
    </div>
    <form class="scale" novalidate @submit=${(e) => { e.preventDefault(); read(state.typed, false); }}>
      <label for="scale">${state.kind === "whole-pack" ? "Whole pack of" : "Empty pack of"} <strong>${who.name}</strong></label>
      <div class="scale-row">
        <input id="scale" inputmode="decimal" autocomplete="off" .value=${state.typed} placeholder=${usual("body")} aria-describedby="scale-hint" @input=${(e) => { state.typed = e.target.value; redraw(); }} />
        <button type="submit" ?disabled=${state.busy}>Enter</button>
      </div>
      <p class="hint" id="scale-hint">A bare number counts as ${usual("body")}; “26 lb 4 oz” and “11.9 kg” are both fine.</p>
    </form>
    <div aria-live="polite">
      ${state.trouble ? html`<p class="trouble">${state.trouble}</p>` : nothing}
      ${open ? answer(one) : nothing}
    </div>
    <h2>So far</h2>
    <ul class="rows weighed">
      ${people().map((h) => line(h))}
    </ul>`;
}

function choose(kind) {
  Object.assign(state, { kind, typed: "", trouble: "" });
  state.hiker = people().find((h) => !state.done.has(`${kind}/${h.id}`))?.id ?? people()[0].id;
  redraw();
  focusOn("#scale");
}

function line(h) {
  const one = told(h.id);
  return html`<li class=${one ? one.result : "unread"}>
    <button type="button" class="plain" @click=${() => { state.hiker = h.id; state.typed = ""; state.done.delete(subject(h.id)); redraw(); focusOn("#scale"); }}>${h.name}</button>
    <span>${one ? words(one) : "not weighed"}</span>
  </li>`;
}

/** What a reading comes to, in a few words. */
function words(one) {
  const off = mass(Math.abs(one.differenceGrams));
  const more = one.differenceGrams > 0 ? "more" : "less";
  switch (one.result) {
    case "agrees":
      return `${mass(one.readGrams)}: agrees`;
    case "replaces":
      return `${mass(one.readGrams)} in place of ${mass(one.expectedGrams)}`;
    case "questioned":
      return `${mass(one.readGrams)}: look again`;
    default:
      return `${mass(one.readGrams)}: ${off} ${more} than the list`;
  }
}

function answer(one) {
  const last = one.readings.at(-1)?.mass ?? "";
  return html`<section class="reading ${one.result}">
    <p class="reading-word">${words(one)}</p>
    ${one.result === "questioned"
      ? html`<p>${one.question}</p>
          <p class="actions">
            <button type="button" @click=${() => read(last, true)}>It is so</button>
            <button type="button" class="quiet" @click=${() => focusOn("#scale")}>Weigh again</button>
          </p>`
      : nothing}
    ${one.result === "replaces"
      ? html`<p class="actions">
          ${leads() ? html`<button type="button" @click=${() => accept(one)}>Take it over</button>` : nothing}
          <button type="button" class="quiet" @click=${next}>Leave the list as it is</button>
        </p>`
      : nothing}
    ${one.result === "labels-could-explain" || one.result === "unexplained"
      ? html`<p>
            ${one.couldExplain.length > 0
              ? `Nobody has weighed ${one.couldExplain.slice(0, 3).map((c) => c.thing).join(", ")}; a label that is off could explain it.`
              : "Nothing on the list explains it. Is something in the pack that is not on the list, or missing?"}
          </p>
          <p class="actions">
            ${leads() && one.changes.length > 0 ? html`<button type="button" @click=${() => accept(one)}>Count the difference</button>` : nothing}
            <button type="button" class="quiet" @click=${next}>Go on</button>
          </p>`
      : nothing}
  </section>`;
}
