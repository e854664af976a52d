/**
 * Who carries what, as somebody moves it about: never changed in place, so that every step can be
 * undone. Nothing is judged here; that is the service's part.
 */
export class Arrangement {
  /**
   * @param carries hiker id to Map of piece to units
   * @param opened `{day, piece, hiker, units}` of what is used by the unit
   * @param handovers `{afterDay, from, to, piece, units}` at camps where somebody leaves
   */
  constructor(carries, opened, handovers) {
    this.carries = carries;
    this.opened = opened;
    this.handovers = handovers;
  }

  /** From a split document. */
  static of(split) {
    const carries = new Map();
    for (const { hiker, pieces } of split.carries) {
      const held = new Map();
      for (const piece of pieces) {
        if (typeof piece === "string") held.set(piece, (held.get(piece) ?? 0) + 1);
        else held.set(piece.piece, (held.get(piece.piece) ?? 0) + piece.units);
      }
      carries.set(hiker, held);
    }
    return new Arrangement(
      carries,
      (split.opened ?? []).map((o) => ({ ...o })),
      (split.handoversAtCamp ?? []).map((h) => ({ ...h, units: h.units ?? 1 })),
    );
  }

  static empty() {
    return new Arrangement(new Map(), [], []);
  }

  /** As a split document. */
  document() {
    return {
      format: "faircarry-split/1",
      carries: [...this.carries].map(([hiker, held]) => ({
        hiker,
        pieces: [...held].map(([piece, units]) => (units === 1 ? piece : { piece, units })),
      })),
      opened: this.opened,
      handoversAtCamp: this.handovers.map(({ afterDay, from, to, piece, units }) =>
        units === 1 ? { afterDay, from, to, piece } : { afterDay, from, to, piece, units },
      ),
    };
  }

  units(hiker, piece) {
    return this.carries.get(hiker)?.get(piece) ?? 0;
  }

  /**
   * The arrangement after units have been given. An empty `from` takes them from the pile that is
   * with nobody, an empty `to` puts them there.
   *
   * @param lastDay hiker id to the last day they are there
   */
  given(piece, units, from, to, lastDay) {
    const carries = new Map([...this.carries].map(([hiker, held]) => [hiker, new Map(held)]));
    const add = (hiker, change) => {
      if (!hiker) return;
      const held = carries.get(hiker) ?? new Map();
      const left = (held.get(piece) ?? 0) + change;
      if (left > 0) held.set(piece, left);
      else held.delete(piece);
      carries.set(hiker, held);
    };
    add(from, -units);
    add(to, units);
    const next = new Arrangement(carries, this.opened, this.handovers);
    next.followCamps(piece, units, from, to, lastDay);
    next.followOpening(piece, from, to, lastDay);
    return next;
  }

  /** What a leaver no longer holds cannot be handed on at their camp; what they newly hold must. */
  followCamps(piece, units, from, to, lastDay) {
    const handovers = this.handovers.map((h) => ({ ...h }));
    let kept = Math.max(0, this.units(from, piece));
    for (const h of handovers) {
      if (h.piece === piece && h.from === from) {
        h.units = Math.min(h.units, kept);
        kept -= h.units;
      }
    }
    const last = Math.max(...lastDay.values());
    const leaves = lastDay.get(to) ?? last;
    if (to && leaves < last) {
      const stays = (id) => (lastDay.get(id) ?? 0) > leaves;
      const before = this.handovers.find((h) => h.from === to && stays(h.to));
      const heir = stays(from) ? from : (before?.to ?? [...lastDay.keys()].find(stays));
      if (heir) handovers.push({ afterDay: leaves, from: to, to: heir, piece, units });
    }
    this.handovers = handovers.filter((h) => h.units > 0);
  }

  /** Whose units are opened when: what the giver no longer holds is opened by the taker instead. */
  followOpening(piece, from, to, lastDay) {
    const opened = this.opened.map((o) => ({ ...o }));
    const sum = (list, hiker) =>
      list.filter((o) => o.piece === piece && o.hiker === hiker).reduce((n, o) => n + o.units, 0);
    const inherited = this.handovers
      .filter((h) => h.piece === piece && h.to === from)
      .reduce((n, h) => n + h.units, 0);
    let over = from ? sum(opened, from) - this.units(from, piece) - inherited : 0;
    for (const o of [...opened].sort((a, b) => b.day - a.day)) {
      if (over <= 0) break;
      if (o.piece !== piece || o.hiker !== from || o.day > (lastDay.get(to) ?? 0)) continue;
      const moved = Math.min(over, o.units);
      o.units -= moved;
      over -= moved;
      const theirs = opened.find((x) => x.piece === piece && x.hiker === to && x.day === o.day);
      if (theirs) theirs.units += moved;
      else opened.push({ day: o.day, piece, hiker: to, units: moved });
    }
    // A plan that cannot follow is left to the service, which fills in one for the whole item.
    this.opened =
      over > 0 || !from || !to
        ? opened.filter((o) => o.piece !== piece)
        : opened.filter((o) => o.units > 0);
  }

  /**
   * What everybody holds on a morning: hiker id to `{held, emptied}`, both Maps of piece to units.
   */
  on(day) {
    const now = new Map();
    const of = (hiker) => {
      if (!now.has(hiker)) now.set(hiker, { held: new Map(), emptied: new Map() });
      return now.get(hiker);
    };
    const change = (map, piece, by) => map.set(piece, (map.get(piece) ?? 0) + by);
    for (const [hiker, held] of this.carries) {
      held.forEach((units, piece) => change(of(hiker).held, piece, units));
    }
    for (let before = 1; before < day; before++) {
      for (const o of this.opened.filter((each) => each.day === before)) {
        change(of(o.hiker).held, o.piece, -o.units);
        change(of(o.hiker).emptied, o.piece, o.units);
      }
      for (const h of this.handovers.filter((each) => each.afterDay === before)) {
        change(of(h.from).held, h.piece, -h.units);
        change(of(h.to).held, h.piece, h.units);
      }
    }
    return now;
  }
}

/** Handovers between two arrangements, as `{piece, units, from, to}`; forced or not. */
export function handoversBetween(before, after) {
  const pieces = new Set([...before.carries, ...after.carries].flatMap(([, held]) => [...held.keys()]));
  const hikers = [...new Set([...before.carries.keys(), ...after.carries.keys()])];
  const list = [];
  for (const piece of pieces) {
    const change = hikers.map((h) => [h, after.units(h, piece) - before.units(h, piece)]);
    const givers = change.filter(([, c]) => c < 0);
    for (const [taker, gained] of change.filter(([, c]) => c > 0)) {
      let open = gained;
      for (const giver of givers) {
        const units = Math.min(open, -giver[1]);
        if (units > 0) list.push({ piece, units, from: giver[0], to: taker });
        giver[1] += units;
        open -= units;
      }
    }
  }
  return list;
}
