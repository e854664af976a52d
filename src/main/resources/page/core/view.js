/**
 * How things are drawn: plain state, view functions that make templates of it, and redraw() after
 * every change. Nothing else keeps state in the document.
 */
import { noChange } from "../lit-html.js";
import { Directive, directive } from "../directive.js";

export { html, svg, nothing, render } from "../lit-html.js";
export { repeat } from "../directives/repeat.js";
export { live } from "../directives/live.js";
export { ref } from "../directives/ref.js";

/**
 * Computed sizes and places: `style=${sized({height: "40%"})}`. They are set through the object
 * model, because the policy of the page forbids style attributes.
 */
export const sized = directive(
  class extends Directive {
    update(part, [sizes]) {
      for (const [name, value] of Object.entries(sizes)) part.element.style.setProperty(name, value);
      return noChange;
    }
  },
);

/** A value that is set unless `keeps(element)`: `.value=${unless(keeps, "4 kg")}`. */
export const unless = directive(
  class extends Directive {
    update(part, [keeps, value]) {
      if (!keeps(part.element) && part.element.value !== String(value)) part.element.value = value;
      return noChange;
    }
  },
);

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
