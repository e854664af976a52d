/** Links as QR codes, drawn by the library in vendor/ once somebody wants to see one. */
import { html, nothing, svg } from "./view.js";

const QUIET = 4; // modules of margin, as the standard asks

let library = null;

/** Fetches the library; a screen that shows codes does so when it is entered. */
export async function readyForCodes() {
  library = (await import("../vendor/qrcode.js")).qrcode;
}

/**
 * A code as a picture.
 *
 * @param text what it says
 * @param name for whoever cannot see it
 */
export function code(text, name) {
  if (!library) return nothing;
  const qr = library(0, "M");
  qr.addData(text);
  qr.make();
  const count = qr.getModuleCount();
  let path = "";
  for (let row = 0; row < count; row++) {
    for (let column = 0; column < count; column++) {
      if (qr.isDark(row, column)) path += `M${column + QUIET} ${row + QUIET}h1v1h-1z`;
    }
  }
  const size = count + 2 * QUIET;
  return html`<svg class="code" viewBox="0 0 ${size} ${size}" role="img" aria-label=${name} shape-rendering="crispEdges">
    ${svg`<rect width=${size} height=${size} fill="#fff"></rect><path d=${path} fill="#000"></path>`}
  </svg>`;
}
