import { html } from "../core/view.js";

export function title() {
  return "";
}

export function view() {
  return html`<h1 tabindex="-1">loads</h1>`;
}
