/** The first screen: begin a trip, or go on with one. */
import { html, nothing, redraw } from "../core/view.js";
import { forget, known } from "../core/keys.js";
import { at } from "../core/router.js";
import { ago } from "../core/words.js";

const ROLE = { leader: "you lead it", hiker: "you walk along", viewer: "you look on" };

export function title() {
  return "";
}

export function view() {
  const trips = Object.entries(known()).sort((a, b) => b[1].opened - a[1].opened);
  return html`
    <div class="intro">
      <h1 tabindex="-1">Who carries what, so that it is fair</h1>
      <p>
        Say who comes, what each can carry, and what the group shares. Every load is kept as near as
        possible to the same part of what its carrier should carry, on every morning of the trip,
        and you see how good the answer is.
      </p>
      <p class="actions"><a class="button" href="#/new">Begin a trip</a></p>
    </div>
    ${trips.length > 0
      ? html`<section>
          <h2>Trips on this device</h2>
          <ul class="rows">
            ${trips.map(([id, told]) => one(id, told))}
          </ul>
        </section>`
      : nothing}
    <section class="aside">
      <h2>A link to a trip</h2>
      <p>
        Whoever leads a trip hands out links: one for each hiker, and one to look on. Open yours and
        the trip stands here from then on. The link is kept in this browser only.
      </p>
      <p><a href="/docs">For programs: how to ask the service</a></p>
    </section>
  `;
}

function one(id, told) {
  return html`<li>
    <a href=${at(id, "")}>${told.name ?? "A trip"}</a>
    <span class="quiet-text">${ROLE[told.role] ?? ""}, opened ${ago(told.opened)}</span>
    <button
      type="button"
      class="plain"
      @click=${() => {
        forget(id);
        redraw();
      }}
    >
      Forget on this device
    </button>
  </li>`;
}
