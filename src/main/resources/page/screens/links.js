/** The links of a trip: handed out, and ended. A link is shown once; the service keeps only a hash. */
import { announce, focusOn, html, nothing, redraw } from "../core/view.js";
import { freshKey, Problem } from "../core/api.js";
import { tokenOf } from "../core/keys.js";
import { code, readyForCodes } from "../core/qr.js";
import { handedOut } from "../core/router.js";
import { askTrip, trip } from "../core/trip.js";
import { ago } from "../core/words.js";

const state = { links: [], fresh: [], trouble: "" };

export function title() {
  return "Links";
}

export async function enter() {
  state.fresh = [];
  await Promise.all([readyForCodes(), read()]);
}

async function read() {
  try {
    state.links = (await askTrip("GET", "/links")).body.items;
    state.trouble = "";
  } catch (problem) {
    fail(problem);
  }
  redraw();
}

function fail(problem) {
  if (!(problem instanceof Problem)) throw problem;
  state.trouble = problem.message;
  redraw();
}

export function view() {
  return html`
    <h1 tabindex="-1">Links</h1>
    <p>
      Whoever has a link may do what it is for. Hand each hiker their own: with it they enter their body mass and
      kit, see their card, and nobody else's body mass.
    </p>
    ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : nothing}
    <section>
      <h2>Your own link</h2>
      <p>Keep it somewhere safe. It is the only way back to leading this trip, and it is stored in this browser alone.</p>
      ${shown("Your own link, as leader", handedOut(trip.id, tokenOf(trip.id)))}
    </section>
    <section>
      <h2>Hand out</h2>
      <ul class="rows">
        ${trip.document.hikers.map(
          (h) => html`<li>
            <span>${h.name}</span>
            <button type="button" class="plain" @click=${() => make({ role: "hiker", hiker: h.id }, h.name)}>
              Make a link<span class="unseen"> for ${h.name}</span>
            </button>
          </li>`,
        )}
        <li>
          <span>Whoever wants to look on</span>
          <button type="button" class="plain" @click=${() => make({ role: "viewer" }, "looking on")}>Make a link<span class="unseen"> for looking on</span></button>
        </li>
        <li>
          <span>Another leader</span>
          <button type="button" class="plain" @click=${() => make({ role: "leader" }, "another leader")}>Make a link<span class="unseen"> for another leader</span></button>
        </li>
      </ul>
      ${state.fresh.map((f) => html`<div class="fresh"><h3 tabindex="-1">For ${f.words}</h3>${shown(`Link for ${f.words}`, f.address)}
        <p class="quiet-text">To be read from the screen by a phone’s camera:</p>
        ${code(f.address, `Link for ${f.words} as a square code`)}</div>`)}
    </section>
    <section>
      <h2>Handed out so far</h2>
      <ul class="rows">
        ${state.links.map(
          (link) => html`<li>
            <span>${whose(link)}</span>
            <span class="quiet-text">made ${ago(link.created)}${link.revoked ? ", ended" : ""}</span>
            ${link.revoked || tokenOf(trip.id).startsWith(link.id + ".")
              ? nothing
              : html`<button type="button" class="plain" @click=${() => end(link)}>End it<span class="unseen">: ${whose(link)}</span></button>`}
          </li>`,
        )}
      </ul>
    </section>
  `;
}

function shown(label, address) {
  return html`<p class="actions">
    <input readonly aria-label=${label} .value=${address} @focus=${(e) => e.target.select()} />
    <button
      type="button"
      class="quiet"
      @click=${async (e) => {
        e.target.closest("p").querySelector("input").select();
        try {
          await navigator.clipboard.writeText(address);
          announce("Copied");
        } catch {
          announce("Selected, ready to be copied");
        }
      }}
    >
      Copy
    </button>
  </p>`;
}

function whose(link) {
  if (link.role === "hiker") return trip.document.hikers.find((h) => h.id === link.hiker)?.name ?? "Somebody who is gone";
  return link.role === "leader" ? "A leader" : "Looking on";
}

async function make(body, words) {
  try {
    const made = (await askTrip("POST", "/links", { body, key: freshKey() })).body;
    state.fresh.unshift({ words, address: handedOut(trip.id, made.token) });
    announce(`A link for ${words} is ready to be copied.`);
    await read();
    focusOn(".fresh h3");
  } catch (problem) {
    fail(problem);
  }
}

async function end(link) {
  try {
    await askTrip("DELETE", `/links/${link.id}`);
    await read();
  } catch (problem) {
    fail(problem);
  }
}
