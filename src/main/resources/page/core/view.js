/**
 * How things are drawn: plain state, view functions that make templates of it, and redraw() after
 * every change. Nothing else keeps state in the document.
 */
export { html, svg, nothing, render } from "../lit-html.js";
export { repeat } from "../directives/repeat.js";
export { live } from "../directives/live.js";
export { ref } from "../directives/ref.js";
export { styleMap } from "../directives/style-map.js";

let draw = () => {};
let waiting = false;

/** Names the function that draws the whole page. */
export function drawWith(whole) {
  draw = whole;
}

/** Draws the page again, once, however often it is called before the next frame. */
export function redraw() {
  if (waiting) return;
  waiting = true;
  queueMicrotask(() => {
    waiting = false;
    draw();
  });
}

/** Says something to screen readers that is not where the focus is. */
export function announce(text) {
  const place = document.getElementById("announcements");
  place.textContent = "";
  // The same text twice is a change only if there was another text in between.
  requestAnimationFrame(() => (place.textContent = text));
}

/** Puts the focus on the first element that matches, once the page is drawn. */
export function focusOn(selector) {
  requestAnimationFrame(() => document.querySelector(selector)?.focus());
}
