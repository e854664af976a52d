/** A card as it was kept on this device, where the service cannot be reached. */
import { html } from "../core/view.js";
import { at } from "../core/router.js";
import { cardSheet } from "../core/card.js";
import { keptCard } from "../core/kept.js";
import { ago } from "../core/words.js";
import { ticksOf } from "./card.js";

export function title() {
  return "Kept card";
}

export function view(place) {
  const id = place.rest[0] ?? "";
  const kept = keptCard(id);
  if (!kept) {
    return html`<h1 tabindex="-1">No card is kept here</h1>
      <p>A card is kept on a device once it has been opened there.</p>`;
  }
  return html`<h1 tabindex="-1">Your card</h1>
    <p class="news kept-note" role="status">
      No connection. The card is as it was ${ago(kept.at)}. <a href=${at(id, "card")}>Try again</a>
    </p>
    ${cardSheet(kept.card, kept.card, kept.absences ?? [], ticksOf(id, kept.card))}`;
}
