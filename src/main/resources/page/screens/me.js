/** What a hiker says of themselves by their own link: body mass, pack, kit. */
import { html, nothing, redraw } from "../core/view.js";
import { freshKey, Problem } from "../core/api.js";
import { field, Issues } from "../core/fields.js";
import { askTrip, edit, refresh, trip } from "../core/trip.js";
import { keep, tokenOf } from "../core/keys.js";
import { handedOut } from "../core/router.js";
import { code, readyForCodes } from "../core/qr.js";
import { entered, usual } from "../core/units.js";
import { kitOf } from "./kit.js";

const issues = new Issues();
const state = { link: "", busy: false };

export function title() {
  return "About you";
}

export async function enter() {
  issues.clear();
  state.link = "";
  await readyForCodes();
}

function told(problem) {
  if (!(problem instanceof Problem)) throw problem;
  issues.take(problem);
  redraw();
}

const orNothing = (text, kind) => (text.trim() === "" ? null : entered(text, kind));

function change(me, patch, words) {
  issues.clear();
  return edit({
    method: "PATCH",
    path: `/hikers/${me.id}`,
    patch,
    touches: (d) => {
      const now = d.hikers.find((h) => h.id === me.id) ?? {};
      return Object.fromEntries(Object.keys(patch).map((name) => [name, now[name] ?? null]));
    },
    words,
  }).catch(told);
}

/**
 * Keeps the body mass from the leader. The leader has made, and so has seen, the link one was given:
 * first comes a link of one's own, which replaces it on this device.
 */
async function keepPrivate(me) {
  state.busy = true;
  redraw();
  try {
    const { body } = await askTrip("POST", "/links", { body: { role: "hiker", hiker: me.id }, key: freshKey() });
    keep(trip.id, { token: body.token });
    await refresh();
    await edit({ method: "PUT", path: `/hikers/${me.id}/privacy`, body: { bodyMass: "private" }, touches: () => null, words: "who sees your body mass" });
    state.link = handedOut(trip.id, tokenOf(trip.id));
    await refresh();
  } catch (problem) {
    told(problem);
  }
  state.busy = false;
  redraw();
}

async function open(me) {
  await edit({ method: "PUT", path: `/hikers/${me.id}/privacy`, body: { bodyMass: "open" }, touches: () => null, words: "who sees your body mass" }).catch(told);
  redraw();
}

export function view() {
  const index = trip.document.hikers.findIndex((h) => h.id === trip.state.you.hiker);
  const me = trip.document.hikers[index];
  const at = `/hikers/${index}`;
  const hidden = trip.state.bodyMassHidden.includes(me.id);
  const kept = trip.state.bodyMassPrivate.includes(me.id);
  return html`<h1 tabindex="-1">About you, ${me.name}</h1>
    <section>
      <h2>What you can carry</h2>
      <div class="form">
        ${field({ label: "Your body mass", pointer: `${at}/bodyMass`, issues, value: hidden ? "" : me.bodyMass, disabled: hidden, placeholder: hidden ? "not shown by this link" : usual("body"), mode: "decimal", hint: "It sets your target. Other hikers never see it.", changed: (t) => change(me, { bodyMass: orNothing(t, "body") }, "your body mass") })}
        ${field({ label: "or the load you want to aim at", pointer: `${at}/targetLoad`, issues, value: me.targetLoad, placeholder: usual("body"), mode: "decimal", hint: "In place of a body mass; everybody can see it.", changed: (t) => change(me, { targetLoad: orNothing(t, "body") }, "your target load") })}
        ${field({ label: "Never more than", pointer: `${at}/capLoad`, issues, value: me.capLoad, placeholder: usual("body"), mode: "decimal", changed: (t) => change(me, { capLoad: orNothing(t, "body") }, "your cap") })}
        ${field({ label: "Your pack, empty", pointer: `${at}/pack/mass`, issues, value: me.pack?.mass, placeholder: usual("gear"), mode: "decimal", changed: (t) => change(me, { pack: t.trim() ? { mass: entered(t, "gear") } : null }, "your pack") })}
      </div>
      ${privacy(me, hidden, kept)}
    </section>
    ${issues.leftOver()} ${kitOf(me, index, issues, told)}`;
}

function privacy(me, hidden, kept) {
  const words =
    "Kept private, your body mass is used for the split and shown to nobody else, not even to the leader; " +
    "what the group sees of you is what you carry and whether it is within your target.";
  if (hidden) {
    return html`<div class="private">
      <p>Your body mass is kept private. The leader made this link, so it does not show it; open the link you made yourself.</p>
    </div>`;
  }
  if (kept) {
    return html`<div class="private">
      <p><strong>Your body mass is private.</strong> ${words}</p>
      <p class="actions"><button type="button" class="quiet" @click=${() => open(me)}>Show it to the leader</button></p>
      ${ownLink()}
    </div>`;
  }
  return html`<div class="private">
    <p>${words} You get a new link for that: the one you were given has been in the leader’s hands.</p>
    <p class="actions"><button type="button" ?disabled=${state.busy} @click=${() => keepPrivate(me)}>Keep my body mass private</button></p>
  </div>`;
}

function ownLink() {
  const link = state.link || handedOut(trip.id, tokenOf(trip.id));
  return html`<details ?open=${Boolean(state.link)}>
    <summary>Your own link, for another phone of yours</summary>
    <p>Nobody else has it, and nobody can make it again. This device remembers it; keep it if you may change devices.</p>
    <div class="own-link">${code(link, "Your own link as a QR code")}
      <div class="field"><label for="own-link">The link</label><input id="own-link" readonly .value=${link} @focus=${(e) => e.target.select()} /></div>
    </div>
  </details>`;
}
