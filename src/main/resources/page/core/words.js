/** Ratios, names and lists in words, the same on every screen. */

/** A target ratio: 1 is exactly on target. */
export function ratio(value) {
  return value.toFixed(3);
}

/** A ratio as a rounded part of target, for places with little room. */
export function percent(value) {
  return `${Math.round(value * 100)} %`;
}

export function count(number, one, many = one + "s") {
  return `${number} ${number === 1 ? one : many}`;
}

/** "a, b and c". */
export function list(words) {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** Names of hikers and pieces of a trip document. */
export class Names {
  constructor(document) {
    this.hikers = new Map(document.hikers.map((h) => [h.id, h.name ?? h.id]));
    this.pieces = new Map();
    for (const item of document.shared ?? []) {
      const name = item.name ?? item.id;
      this.pieces.set(item.id, name);
      for (const part of item.parts ?? []) {
        this.pieces.set(`${item.id}/${part.id}`, `${name}, ${(part.name ?? part.id).toLowerCase()}`);
      }
    }
  }

  hiker(id) {
    return this.hikers.get(id) ?? id;
  }

  piece(reference) {
    return this.pieces.get(reference) ?? reference;
  }
}

/** What the history says somebody did, with names in place of ids: "changed “Pot”". */
export function happened(what, document) {
  const [, did, path] = /^(changed|added to|added|removed) (\S+)$/.exec(what) ?? [];
  if (path) return `${did} ${thing(path.split("/"), document)}`;
  if (what.startsWith("agreed on split ")) return "agreed on a split";
  if (what === "no split agreed on") return "took back the agreement on a split";
  if (what.startsWith("body mass of ")) {
    return what.endsWith(" private") ? "keeps the own body mass private" : "shows the own body mass to the leader";
  }
  if (what.startsWith("back to ")) return "went " + what;
  return what === "readings accepted" ? "took over readings of the scale" : what;
}

function thing([first, id, part, kit], document) {
  const names = new Names(document);
  if (first === "shared") return id ? `“${names.piece(id)}”` : "the shared gear";
  if (first === "rules") return id ? "a rule" : "the rules";
  if (first === "policy") return "what is aimed at";
  if (first !== "hikers") return first;
  if (!id) return "who comes";
  if (part !== "kit") return names.hiker(id);
  const own = document.hikers.find((h) => h.id === id)?.kit?.find((k) => k.id === kit);
  return `${own ? `“${own.name ?? own.id}” in ` : ""}the kit of ${names.hiker(id)}`;
}

/** "just now", "4 minutes ago", or the date. */
export function ago(time, now = Date.now()) {
  const seconds = Math.max(0, (now - new Date(time).getTime()) / 1000);
  if (seconds < 60) return "just now";
  if (seconds < 3600) return count(Math.floor(seconds / 60), "minute") + " ago";
  if (seconds < 86400) return count(Math.floor(seconds / 3600), "hour") + " ago";
  return new Date(time).toLocaleDateString();
}

/** What is safe to say to everybody who is shown a load; the service's own words are preferred. */
export const CAUTIONS = [
  "A fraction of body weight is a convention, not medical advice; everybody may set a lower one.",
  "Children, pregnancy, injury, illness, heat and height call for less, and for a professional's word.",
  "Local rules on food storage, fire and fuel come first.",
  "Everybody keeps water, warmth, a rain shell, light, a whistle and some food in their own pack.",
  "A party that can be separated needs its own means.",
];
