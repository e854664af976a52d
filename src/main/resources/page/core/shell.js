/** What stands around every screen: where one is, where one can go, what others did. */
import { html, nothing, redraw } from "./view.js";
import { newsRead, trip } from "./trip.js";
import { at } from "./router.js";
import { prefer, units } from "./units.js";
import { CAUTIONS } from "./words.js";

/** The whole page around the content of a screen. */
export function shell(screens, here, content) {
  return html`
    <a class="skip" href="#content" @click=${skip}>To the content</a>
    <header class="head">
      <a class="brand" href="#/">Faircarry</a>
      ${trip.document && here.trip ? html`<span class="trip-name">${trip.document.name}</span>` : nothing}
      <span class="settings">
        <button
          type="button"
          class="plain"
          @click=${() => {
            prefer(units() === "us" ? "metric" : "us");
            redraw();
          }}
        >
          <span class="unseen">Units: </span>${units() === "us" ? "lb, oz" : "kg, g"}
        </button>
      </span>
    </header>
    ${trip.state && here.trip ? tabs(screens, here) : nothing} ${news()} ${conflict()}
    <main id="content" tabindex="-1" class="screen-${here.screen}">${content}</main>
    ${here.trip ? cautions() : nothing}
  `;
}

function skip(event) {
  event.preventDefault();
  document.getElementById("content").focus();
}

function tabs(screens, here) {
  const role = trip.state.you.role;
  return html`<nav class="tabs" aria-label="Trip">
    <ul>
      ${screens
        .filter((screen) => screen.tab && screen.roles.includes(role))
        .map(
          (screen) => html`<li>
            <a href=${at(trip.id, screen.path)} aria-current=${screen.path === here.screen ? "page" : nothing}
              >${screen.name}</a
            >
          </li>`,
        )}
    </ul>
  </nav>`;
}

function news() {
  if (trip.trouble && trip.document) {
    return html`<p class="news" role="status">
      ${trip.trouble.status === 0
        ? "No connection. What you see is as it was; changes have to wait."
        : trip.trouble.message}
    </p>`;
  }
  if (!trip.news) return nothing;
  return html`<p class="news">
    ${trip.news} <button type="button" class="plain" @click=${newsRead}>Seen</button>
  </p>`;
}

function conflict() {
  const c = trip.conflict;
  if (!c) return nothing;
  return html`<section class="conflict" role="alertdialog" aria-labelledby="conflict-title">
    <h2 id="conflict-title" tabindex="-1">While you changed ${c.words}, somebody else did too</h2>
    <dl>
      <dt>Yours</dt>
      <dd>${told(c.mine)}</dd>
      <dt>As it is now</dt>
      <dd>${told(c.theirs)}</dd>
    </dl>
    <p class="actions">
      <button type="button" @click=${c.insist}>Put yours in its place</button>
      <button type="button" class="quiet" @click=${c.yield}>Leave it as it is</button>
    </p>
  </section>`;
}

/** A value of the document, short, for people; its ids are not for them. */
function told(value) {
  if (value === null || value === undefined) return "none";
  if (typeof value !== "object") return String(value);
  if (Array.isArray(value)) {
    return value.some((each) => typeof each === "object") ? String(value.length) : value.join(", ") || "none";
  }
  return Object.entries(value)
    .filter(([name]) => name !== "id")
    .map(([name, v]) => `${name.replace(/[A-Z]/g, (c) => " " + c.toLowerCase())}: ${told(v)}`)
    .join(", ");
}

function cautions() {
  return html`<footer class="cautions">
    <details>
      <summary>${CAUTIONS[0]} <span class="more">More to mind</span></summary>
      <ul>
        ${CAUTIONS.slice(1).map((text) => html`<li>${text}</li>`)}
      </ul>
    </details>
  </footer>`;
}
