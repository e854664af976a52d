/**
 * The numbers behind the picture. Everything is measured in parts of each hiker's target load, so
 * that all targets stand at the same height; for a hiker whose target is not told here, the
 * others' mean stands in, and no line is drawn.
 */
import { desk } from "../core/desk.js";
import { trip } from "../core/trip.js";

/** Below this part of the picture's height, pieces are drawn together as one. */
const SMALL = 0.038;

/** A cap above this ratio is told in words alone, or it would press the rest of the picture flat. */
const HIGHEST_CAP = 1.2;

/**
 * The picture of one morning.
 *
 * @returns `{columns, top, floor, even, days}`; `top` and `floor` are the ratios at the edges (the
 *   foot of all own kits is cut off, because it is not what differs), `even` the ratio at which
 *   everybody would stand if things could be divided at will (0 if it cannot be told)
 */
export function measure(day) {
  const { document } = trip;
  const told = new Map((desk.verdict?.hikers ?? []).map((h) => [h.hiker, h]));
  const holdings = desk.now.on(day);
  const present = document.hikers.filter((h) => (h.leavesAfterDay ?? document.days) >= day);
  const targets = [...told.values()].map((h) => h.targetGrams).filter(Boolean);
  const standIn = targets.length
    ? targets.reduce((a, b) => a + b, 0) / targets.length
    : heaviest(told) / 0.9 || 10000;
  const columns = present.map((h) => column(h, told.get(h.id), holdings.get(h.id), day, standIn));
  const top = Math.max(
    1.06,
    ...columns.map((c) => c.height + 0.07),
    ...columns.map((c) => (c.cap && c.cap < HIGHEST_CAP ? c.cap + 0.04 : 0)),
  );
  const floor = Math.max(0, Math.floor(Math.min(...columns.map((c) => c.own)) * 20 - 2) / 20);
  columns.forEach((c) => gather(c, top - floor));
  return { columns, top, floor, even: even(columns), days: document.days };
}

function heaviest(told) {
  return Math.max(0, ...[...told.values()].flatMap((h) => h.mornings.map((m) => m.loadGrams)));
}

function column(hiker, told, holding, day, standIn) {
  const morning = told?.mornings.find((m) => m.day === day);
  const target = told?.targetGrams ?? standIn;
  const blocks = [];
  for (const [piece, units] of holding?.held ?? []) {
    const line = desk.sheet.get(piece);
    const grams = units * (line?.unitGrams[day - 1] ?? 0);
    if (units > 0) blocks.push({ piece, units, grams, name: line?.name ?? piece, used: usedUp(line) });
  }
  let wrappings = 0;
  for (const [piece, units] of holding?.emptied ?? []) {
    wrappings += units * (desk.sheet.get(piece)?.leavesGrams ?? 0);
  }
  blocks.sort((a, b) => a.used - b.used || b.grams - a.grams);
  const shared = blocks.reduce((sum, b) => sum + b.grams, wrappings);
  const load = morning?.loadGrams ?? shared;
  const counted = morning?.countedGrams ?? load;
  const own = Math.max(0, counted - (morning?.sharedGrams ?? shared));
  return {
    id: hiker.id,
    name: hiker.name ?? hiker.id,
    told: told?.targetGrams !== undefined,
    target,
    load,
    ratio: morning?.targetRatio,
    within: morning?.withinTarget,
    height: (own + shared) / target,
    own: own / target,
    ownGrams: own,
    luxury: load - counted > 0 && trip.document.policy?.basis !== "shared" ? load - counted : 0,
    wrappings,
    cap: morning?.capGrams ? (morning.capGrams - (load - counted)) / target : 0,
    capGrams: morning?.capGrams,
    blocks: blocks.filter((b) => b.grams > 0),
    absent: blocks.filter((b) => b.grams === 0),
    mornings: told?.mornings ?? [],
  };
}

/** Whether a thing weighs less on the last morning than on the first. */
function usedUp(line) {
  if (!line) return 0;
  return line.usedOn || line.unitGrams.at(-1) < line.unitGrams[0] ? 1 : 0;
}

/** Splits a column into blocks to draw and the small ones that are drawn together. */
function gather(c, span) {
  const tall = (b) => b.grams / c.target / span >= SMALL;
  c.small = c.blocks.filter((b) => !tall(b));
  if (c.small.length === 1) c.small = [];
  c.drawn = c.blocks.filter((b) => !c.small.includes(b));
  c.smallGrams = c.small.reduce((sum, b) => sum + b.grams, c.wrappings);
}

function even(columns) {
  if (columns.length === 0 || columns.some((c) => !c.told)) return 0;
  const sum = (of) => columns.reduce((all, c) => all + of(c), 0);
  return sum((c) => c.height * c.target) / sum((c) => c.target);
}

/** The highest ratio of each morning and whose it is: `{day, ratio, hiker}`; told ones only. */
export function worstByDay() {
  const worst = [];
  for (let day = 1; day <= trip.document.days; day++) {
    let found = { day, ratio: 0, hiker: "" };
    for (const h of desk.verdict?.hikers ?? []) {
      const morning = h.mornings.find((m) => m.day === day);
      if (morning?.targetRatio > found.ratio) found = { day, ratio: morning.targetRatio, hiker: h.hiker };
    }
    worst.push(found);
  }
  return worst;
}
