/** The kit of one hiker, entered fast: a name, a mass, Enter. A table can be pasted. */
import { focusOn, html, nothing, redraw, repeat } from "../core/view.js";
import { field, tick } from "../core/fields.js";
import { edit, trip } from "../core/trip.js";
import { entered, usual } from "../core/units.js";
import { rowsOf, sendRows } from "../core/table.js";
import { count } from "../core/words.js";

const adding = new Map();

/**
 * The kit of a hiker as a table.
 *
 * @param index of the hiker in the trip document
 * @param told takes over problems
 */
export function kitOf(hiker, index, issues, told) {
  const kit = hiker.kit ?? [];
  const change = (item, patch, words) => {
    issues.clear();
    return edit({
      method: "PATCH",
      path: `/hikers/${hiker.id}/kit/${item.id}`,
      patch,
      touches: (d) => {
        const now = find(d, hiker.id, item.id) ?? {};
        return Object.fromEntries(Object.keys(patch).map((name) => [name, now[name] ?? null]));
      },
      words: `${words} of “${item.name}”`,
    }).catch(told);
  };
  return html`<h3>Own kit of ${hiker.name}</h3>
    <table class="entry">
      <thead>
        <tr>
          <th>Thing</th>
          <th>Mass</th>
          <th>How it travels</th>
          <th><span class="unseen">Remove</span></th>
        </tr>
      </thead>
      <tbody>
        ${repeat(kit, (item) => item.id, (item, k) => {
          const at = `/hikers/${index}/kit/${k}`;
          return html`<tr>
            <td class="wide">${field({ label: "Thing", quiet: true, pointer: `${at}/name`, issues, value: item.name, changed: (name) => change(item, { name }, "the name") })}</td>
            <td>${field({ label: `Mass of ${item.name}`, quiet: true, pointer: `${at}/mass`, issues, value: item.mass, changed: (t) => change(item, { mass: entered(t, "gear") }, "the mass") })}</td>
            <td class="ticks">
              ${tick({ label: "worn", pointer: `${at}/worn`, value: item.worn, changed: (on) => change(item, { worn: on || null }, "being worn") })}
              ${tick({ label: "luxury", pointer: `${at}/luxury`, value: item.luxury, changed: (on) => change(item, { luxury: on || null }, "being a luxury") })}
            </td>
            <td>
              <button type="button" class="plain" @click=${() => edit({ method: "DELETE", path: `/hikers/${hiker.id}/kit/${item.id}`, touches: (d) => find(d, hiker.id, item.id), words: `“${item.name}”` }).catch(told)}>
                Remove<span class="unseen"> ${item.name}</span>
              </button>
            </td>
          </tr>`;
        })}
        ${newRow(hiker, index, kit.length, issues, told)}
      </tbody>
    </table>`;
}

function find(document, hiker, item) {
  return document.hikers.find((h) => h.id === hiker)?.kit?.find((k) => k.id === item);
}

function newRow(hiker, index, next, issues, told) {
  const at = `/hikers/${index}/kit/${next}`;
  if (!adding.has(hiker.id)) adding.set(hiker.id, { name: "", mass: "", rest: [] });
  const draft = adding.get(hiker.id);
  // A refused row comes into the last line, what follows it in the table waits.
  const add = async (items) => {
    issues.clear();
    const send = (body) => edit({ method: "POST", path: `/hikers/${hiker.id}/kit`, body, touches: () => null, words: "the kit" });
    const { left, problem } = await sendRows([...items, ...draft.rest], send);
    const [refused, ...rest] = left;
    Object.assign(draft, { name: refused?.name ?? "", mass: refused?.mass ?? "", rest });
    if (problem) told(problem);
    redraw();
    const length = trip.document.hikers[index]?.kit?.length ?? 0;
    focusOn(`[data-pointer="/hikers/${index}/kit/${length}/name"]`);
  };
  const one = () => add([{ name: draft.name.trim(), mass: entered(draft.mass, "gear") }]);
  const keyed = (e) => e.key === "Enter" && one();
  const pasted = (e) => {
    const rows = rowsOf(e.clipboardData.getData("text"));
    if (rows.length < 2 || rows[0].length < 2) return;
    e.preventDefault();
    add(rows.map(([name, mass]) => ({ name, mass: entered(mass, "gear") })));
  };
  return html`<tr class="adding">
    <td class="wide">${field({ label: "Next thing", quiet: true, pointer: `${at}/name`, issues, value: draft.name, placeholder: "Next thing, or paste two columns", typed: (t) => (draft.name = t), keyed, pasted })}</td>
    <td>${field({ label: "Mass of the next thing", quiet: true, pointer: `${at}/mass`, issues, value: draft.mass, placeholder: usual("gear"), typed: (t) => (draft.mass = t), keyed })}</td>
    <td class="quiet-text">${draft.rest.length > 0 ? `${count(draft.rest.length, "more row")} of the table` : nothing}</td>
    <td><button type="button" class="quiet" @click=${one}>Add</button></td>
  </tr>`;
}
