/** Form fields with a label, a hint and, where the service found one, its issue. */
import { html, live, nothing, redraw, unless } from "./view.js";
import { begin, end } from "./trip.js";

/**
 * The issues of one form: fields find theirs by the JSON pointer of the trip document, and what no
 * field shows is listed by {@link leftOver}.
 */
export class Issues {
  constructor() {
    this.clear();
  }

  clear() {
    this.list = [];
    this.detail = "";
    this.shown = new Set();
  }

  /** Takes over a problem; what is not one goes on. */
  take(problem) {
    if (problem?.code === undefined) throw problem;
    this.list = problem.issues;
    this.detail = problem.issues.length > 0 ? "" : problem.message;
    this.shown = new Set();
  }

  at(pointer) {
    const found = this.list.find((issue) => issue.pointer === pointer);
    if (found) this.shown.add(found);
    return found;
  }

  /** All issues below a place, for what shows them itself. */
  under(pointer) {
    const found = this.list.filter((issue) => issue.pointer?.startsWith(pointer));
    found.forEach((issue) => this.shown.add(issue));
    return found;
  }

  /** What no field has shown, and what concerns the whole; call it after the fields. */
  leftOver() {
    const rest = this.list.filter((issue) => !this.shown.has(issue));
    if (rest.length === 0 && !this.detail) return nothing;
    return html`<div class="trouble" role="alert">
      ${this.detail ? html`<p>${this.detail}</p>` : nothing}
      ${rest.map((issue) => html`<p>${issue.message} ${issue.remedy}</p>`)}
    </div>`;
  }
}

let numbered = 0;
const ids = new Map();

/** The same id for the same field each time it is drawn. */
function idOf(pointer) {
  if (!ids.has(pointer)) ids.set(pointer, `f${++numbered}`);
  return ids.get(pointer);
}

/** Fields whose text is not that of the trip: "typed" so far, or "sent" and not answered. */
const own = new WeakMap();

/** A text that is being typed, is on its way or was refused stays when the page is drawn. */
function keeps(element, issue) {
  const how = own.get(element);
  if (how === "sent" || (how && (issue || element === document.activeElement))) return true;
  own.delete(element);
  return false;
}

function type(element) {
  own.set(element, "typed");
  begin();
}

async function send(element, f) {
  own.set(element, "sent");
  const answered = f.changed(element.value);
  end();
  await answered;
  // Whoever has typed on meanwhile is left alone.
  if (own.get(element) === "sent") {
    if (f.issues?.at(f.pointer)) own.set(element, "typed");
    else own.delete(element);
  }
  redraw();
}

/**
 * A field for text.
 *
 * @param {object} field `label`, `pointer` (or any unique name), `value`, `changed` (called with the
 *   text when the field is left or Enter is pressed), `typed` (at every key); optional: `issues`,
 *   `hint`, `quiet` (the label is for screen readers alone), `kind` (input type), `mode` (inputmode),
 *   `placeholder`, `complete` (autocomplete), `width` (in characters), `list`
 */
export function field(f) {
  const id = idOf(f.pointer);
  const issue = f.issues?.at(f.pointer);
  const about = [f.hint ? `${id}-hint` : "", issue ? `${id}-issue` : ""].filter(Boolean).join(" ");
  return html`<div class="field ${f.style ?? ""}">
    <label for=${id} class=${f.quiet ? "unseen" : ""}>${f.label}</label>
    <input
      id=${id}
      data-pointer=${f.pointer}
      type=${f.kind ?? "text"}
      inputmode=${f.mode ?? nothing}
      size=${f.width ?? nothing}
      list=${f.list ?? nothing}
      min=${f.min ?? nothing}
      max=${f.max ?? nothing}
      step=${f.step ?? nothing}
      placeholder=${f.placeholder ?? nothing}
      autocomplete=${f.complete ?? "off"}
      autocapitalize=${f.mode ? "off" : nothing}
      ?disabled=${f.disabled}
      aria-invalid=${issue ? "true" : nothing}
      aria-describedby=${about || nothing}
      .value=${f.typed ? live(f.value ?? "") : unless((element) => keeps(element, issue), f.value ?? "")}
      @change=${(e) => f.changed && send(e.target, f)}
      @input=${(e) => (f.typed ? f.typed(e.target.value) : type(e.target))}
      @blur=${f.typed ? nothing : end}
      @paste=${(e) => f.pasted?.(e)}
      @keydown=${(e) => f.keyed?.(e)}
    />
    ${f.hint ? html`<p class="hint" id="${id}-hint">${f.hint}</p>` : nothing}
    ${issue
      ? html`<p class="issue" id="${id}-issue">${issue.message} ${issue.remedy}</p>`
      : nothing}
  </div>`;
}

/** A choice of one among few; `options` are `[value, words]`. */
export function choice(f) {
  const id = idOf(f.pointer);
  const issue = f.issues?.at(f.pointer);
  return html`<div class="field ${f.style ?? ""}">
    <label for=${id} class=${f.quiet ? "unseen" : ""}>${f.label}</label>
    <select
      id=${id}
      data-pointer=${f.pointer}
      ?disabled=${f.disabled}
      aria-invalid=${issue ? "true" : nothing}
      aria-describedby=${issue ? `${id}-issue` : nothing}
      @change=${(e) => f.changed(e.target.value)}
    >
      ${f.options.map(
        ([value, words]) =>
          html`<option value=${value} .selected=${live(value === f.value)}>${words}</option>`,
      )}
    </select>
    ${issue
      ? html`<p class="issue" id="${id}-issue">${issue.message} ${issue.remedy}</p>`
      : nothing}
  </div>`;
}

/** A tick box with its sentence. */
export function tick(f) {
  const id = idOf(f.pointer);
  return html`<div class="tick">
    <input
      id=${id}
      type="checkbox"
      ?disabled=${f.disabled}
      .checked=${live(Boolean(f.value))}
      @change=${(e) => f.changed(e.target.checked)}
    />
    <label for=${id}>${f.label}</label>
  </div>`;
}
