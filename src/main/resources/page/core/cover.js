/** Which things of a trip meet which need, and whether each party can have what it must. */

const SLEEPING = "sleeping";

/**
 * Everything that meets a need: `{ref, name, whose, party, mass}`; `whose` is the id of a hiker for a
 * thing in a kit and empty for what is shared.
 */
export function thingsFor(need, document) {
  const shared = (document.shared ?? [])
    .filter((s) => meets(s, need))
    .map((s) => ({ ref: s.id, name: s.name ?? s.id, whose: "", party: null, mass: s.mass ?? "" }));
  const own = document.hikers.flatMap((h) =>
    (h.kit ?? [])
      .filter((k) => meets(k, need))
      .map((k) => ({ ref: `${h.id}/${k.id}`, name: k.name ?? k.id, whose: h.id, party: h.party ?? "", mass: k.mass })),
  );
  return [...shared, ...own];
}

function meets(thing, need) {
  return (
    (thing.covers ?? []).includes(need) ||
    thing.contains?.kind === need ||
    (need === SLEEPING && thing.sleeps !== undefined)
  );
}

/** Whether the parties that ask for a need can each have enough of it: one thing is with one party. */
export function partiesServed(need, things) {
  const shared = things.filter((t) => !t.whose).length;
  const lacking = (need.perParty ?? []).reduce((sum, { party, atLeast }) => {
    const own = things.filter((t) => t.whose && t.party === (party ?? "")).length;
    return sum + Math.max(0, atLeast - own);
  }, 0);
  return lacking <= shared;
}
