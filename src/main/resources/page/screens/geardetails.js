/** What else can be said of a shared item: parts, use, needs, owner, place in the pack. */
import { html, nothing } from "../core/view.js";
import { choice, field } from "../core/fields.js";
import { trip } from "../core/trip.js";
import { entered, numberOr } from "../core/units.js";

const STOW = [
  ["", "anywhere inside"],
  ["at-hand", "at hand"],
  ["top", "on top"],
  ["outside", "outside"],
  ["bottom", "at the bottom"],
];

/**
 * @param change takes `(patch, words)`
 */
export function details(s, i, issues, change) {
  const at = `/shared/${i}`;
  const text = (name, label, more = {}) =>
    field({ label, pointer: `${at}/${name}`, issues, value: s[name], changed: (t) => change({ [name]: t.trim() || null }, "the details"), ...more });
  return html`<div class="form">
      ${choice({
        label: "Belongs to",
        pointer: `${at}/owner`,
        issues,
        value: s.owner ?? "",
        options: [["", "nobody in particular"], ...trip.document.hikers.map((h) => [h.id, h.name])],
        changed: (v) => change({ owner: v || null }, "the owner"),
      })}
      ${field({
        label: "Needs it covers, by comma",
        pointer: `${at}/covers`,
        issues,
        value: (s.covers ?? []).join(", "),
        hint: "For example: flame, fuel, water-treatment, first-aid",
        changed: (t) => change({ covers: words(t) }, "what it covers"),
      })}
      ${s.parts
        ? nothing
        : [
            choice({
              label: "Where it goes in the pack",
              pointer: `${at}/stow`,
              issues,
              value: s.stow && s.stow !== "inside" ? s.stow : "",
              options: STOW,
              changed: (v) => change({ stow: v || null }, "its place"),
            }),
            s.unitMass
              ? text("unitVolume", "Room one takes", { changed: (t) => change({ unitVolume: t.trim() ? entered(t, "room") : null }, "the room") })
              : text("volume", "Room it takes", { changed: (t) => change({ volume: t.trim() ? entered(t, "room") : null }, "the room") }),
            use(s, at, issues, change),
          ]}
      ${field({
        label: "Only there on these days, by comma",
        pointer: `${at}/onDays`,
        issues,
        value: (s.onDays ?? []).join(", "),
        changed: (t) => change({ onDays: words(t).length ? words(t).map(numberOr) : null }, "its days"),
      })}
      ${text("goesInto", "Travels in a container for")}
    </div>
    ${s.parts ? parts(s, at, issues, change) : nothing}`;
}

const words = (text) => text.split(/[,;]/).map((word) => word.trim()).filter(Boolean);

function use(s, at, issues, change) {
  const kind = s.use?.kind ?? "";
  const options = [
    ["", "stays as it is"],
    ["evenly", "gets used up evenly"],
  ];
  if (s.unitMass) options.push(["units-per-day", "whole units get used each day"]);
  return [
    choice({
      label: "Over the days it",
      pointer: `${at}/use`,
      issues,
      value: kind,
      options,
      changed: (v) => change({ use: v === "" ? null : v === "units-per-day" && s.count ? { kind: v, perDay: 1, leaves: null } : { kind: v } }, "its use"),
    }),
    kind
      ? field({ label: kind === "evenly" ? "What is left at the end" : "What each used unit leaves", pointer: `${at}/use/leaves`, issues, value: s.use.leaves, changed: (t) => change({ use: { leaves: t.trim() ? entered(t, "gear") : null } }, "what it leaves") })
      : nothing,
    kind === "units-per-day" && s.count
      ? field({ label: "Used on each day", pointer: `${at}/use/perDay`, issues, mode: "numeric", value: [s.use.perDay].flat().join(", "), hint: "One number, or one for each day by comma", changed: (t) => change({ use: { perDay: perDay(t) } }, "its use") })
      : nothing,
  ];
}

function perDay(text) {
  const numbers = words(text).map(numberOr);
  return numbers.length === 1 ? numbers[0] : numbers;
}

/** Parts are one list for the service: each change sends all of them. */
function parts(s, at, issues, change) {
  const send = (list) => change({ parts: list }, "the parts");
  const withPart = (k, patch) => s.parts.map((p, n) => (n === k ? { ...p, ...patch } : p));
  return html`<h3>Parts</h3>
    <table class="entry">
      <thead>
        <tr><th>Part</th><th>Mass</th><th><span class="unseen">Remove</span></th></tr>
      </thead>
      <tbody>
        ${s.parts.map(
          (p, k) => html`<tr>
            <td class="wide">${field({ label: "Part", quiet: true, pointer: `${at}/parts/${k}/name`, issues, value: p.name, changed: (name) => send(withPart(k, { name })) })}</td>
            <td>${field({ label: `Mass of ${p.name}`, quiet: true, pointer: `${at}/parts/${k}/mass`, issues, value: p.mass, changed: (t) => send(withPart(k, { mass: entered(t, "gear") })) })}</td>
            <td><button type="button" class="plain" ?disabled=${s.parts.length < 2} @click=${() => send(s.parts.filter((_, n) => n !== k))}>Remove<span class="unseen"> ${p.name}</span></button></td>
          </tr>`,
        )}
      </tbody>
    </table>
    <p><button type="button" class="quiet" @click=${() => send([...s.parts, { name: `Part ${s.parts.length + 1}`, mass: "0 g" }])}>One more part</button></p>`;
}
