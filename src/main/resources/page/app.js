/** Starts the page: reads the address, loads the screen, draws. */
import { drawWith, focusOn, html, redraw, render } from "./core/view.js";
import { at, follow, goInstead } from "./core/router.js";
import { close, open, trip } from "./core/trip.js";
import { forget, tokenOf } from "./core/keys.js";
import { keptCard } from "./core/kept.js";
import { shell } from "./core/shell.js";
import { firstScreen, SCREENS } from "./screens/list.js";

let here = { screen: "home", trip: "", rest: [] };
let screen = null;
let first = true;

document.getElementById("page").replaceChildren();
drawWith(() => {
  const content = here.trip && !trip.document ? waiting() : (screen?.view(here) ?? waiting());
  document.title = [screen?.title?.(here), trip.document && here.trip ? trip.document.name : "", "Faircarry"]
    .filter(Boolean)
    .join(" · ");
  render(shell(SCREENS, here, content), document.getElementById("page"));
});

follow(arrive);

async function arrive(place) {
  const before = screen;
  here = place;
  if (place.trip) {
    await open(place.trip);
  } else {
    close();
  }
  if (here !== place) return;
  if (place.trip && !trip.document && trip.trouble?.status === 0 && keptCard(place.trip)) {
    goInstead("#/kept/" + encodeURIComponent(place.trip));
    return;
  }
  if (place.trip && place.screen === "" && trip.state) {
    goInstead(at(place.trip, firstScreen(trip.state.you.role)));
    return;
  }
  const found = SCREENS.find((s) => s.path === place.screen && Boolean(s.roles.length) === Boolean(place.trip));
  const module = await (found ?? SCREENS[0]).load();
  if (here !== place) return;
  if (before !== module) before?.leave?.();
  screen = module;
  if (trip.document || !place.trip) await module.enter?.(place);
  redraw();
  if (!first) focusOn("#content h1");
  first = false;
}

function waiting() {
  if (!trip.trouble) return html`<p class="waiting">Reading the trip …</p>`;
  const unknown = trip.trouble.status === 404;
  return html`<h1 tabindex="-1">${unknown ? "This link opens nothing" : "The trip cannot be read"}</h1>
    <p>
      ${unknown
        ? tokenOf(here.trip)
          ? "It may have been ended by a leader, or the trip has been erased. Ask for a new link."
          : "This browser has no link for the trip. Open the link you were given once more."
        : trip.trouble.message}
    </p>
    <p class="actions">
      <button type="button" @click=${() => arriveAnew()}>Try again</button>
      <button
        type="button"
        class="quiet"
        @click=${() => {
          forget(here.trip);
          location.hash = "#/";
        }}
      >
        Forget it on this device
      </button>
    </p>`;
}

function arriveAnew() {
  trip.trouble = null;
  trip.id = "";
  redraw();
  arrive({ ...here });
}
