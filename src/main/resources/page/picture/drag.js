/**
 * A piece on its way with the pointer: a mouse drags at once, a finger after resting on the piece,
 * because else it scrolls. It is let go over a column.
 */
import { html, nothing, redraw, sized } from "../core/view.js";

const START_PIXELS = 6;
const REST_MILLIS = 350;

export const drag = {
  piece: "",
  from: "",
  words: "",
  /** The hiker it hangs over. */
  over: "",
  x: 0,
  y: 0,
};

/** To be called on pointerdown; `give(piece, units, from, to)` when it has been let go. */
export function lift(event, piece, words, from, give) {
  if (event.button !== 0) return;
  const start = { x: event.clientX, y: event.clientY };
  const finger = event.pointerType !== "mouse";
  let moving = false;
  const begin = () => {
    moving = true;
    Object.assign(drag, { piece, from, words, over: "", ...start });
    redraw();
  };
  const rest = finger ? setTimeout(begin, REST_MILLIS) : 0;

  const move = (e) => {
    const far = Math.hypot(e.clientX - start.x, e.clientY - start.y);
    if (!moving && far > START_PIXELS) {
      if (finger) return end();
      begin();
    }
    if (!moving) return;
    e.preventDefault();
    const column = document.elementFromPoint(e.clientX, e.clientY)?.closest(".column");
    Object.assign(drag, { x: e.clientX, y: e.clientY, over: column?.dataset.hiker ?? "" });
    redraw();
  };
  const drop = () => {
    const to = drag.over;
    if (moving) swallowClick();
    end();
    if (moving && to && to !== from) give(piece, 1, from, to);
  };
  const hold = (e) => {
    if (moving) e.preventDefault();
  };
  const escape = (e) => {
    if (e.key === "Escape") end();
  };
  const end = () => {
    clearTimeout(rest);
    window.removeEventListener("pointermove", move);
    window.removeEventListener("pointerup", drop);
    window.removeEventListener("pointercancel", end);
    window.removeEventListener("touchmove", hold);
    window.removeEventListener("keydown", escape);
    Object.assign(drag, { piece: "", from: "", words: "", over: "" });
    redraw();
  };
  window.addEventListener("pointermove", move);
  window.addEventListener("pointerup", drop);
  window.addEventListener("pointercancel", end);
  window.addEventListener("touchmove", hold, { passive: false });
  window.addEventListener("keydown", escape);
}

/** The click that follows a drag chooses nothing. */
function swallowClick() {
  const swallow = (e) => e.stopPropagation();
  window.addEventListener("click", swallow, { capture: true, once: true });
  setTimeout(() => window.removeEventListener("click", swallow, { capture: true }));
}

/** What hangs at the pointer. */
export function dragged() {
  if (!drag.piece) return nothing;
  return html`<div class="dragged" aria-hidden="true" style=${sized({ left: `${drag.x}px`, top: `${drag.y}px` })}>
    ${drag.words}
  </div>`;
}
