/** Tables as they come out of spreadsheets: columns by tab, semicolon or comma, quotes as in RFC 4180. */
import { entered } from "./units.js";

/** Rows of cells; empty rows are left out. */
export function rowsOf(text) {
  const by = separator(text);
  const rows = [];
  let row = [];
  let cell = "";
  let quoted = false;
  const endCell = () => {
    row.push(cell.trim());
    cell = "";
  };
  const endRow = () => {
    endCell();
    if (row.some((each) => each !== "")) rows.push(row);
    row = [];
  };
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') cell += text[++i];
      else quoted = false;
    } else if (sign === '"' && cell.trim() === "") {
      quoted = true;
      cell = "";
    } else if (sign === by) {
      endCell();
    } else if (sign === "\n" || sign === "\r") {
      if (sign === "\r" && text[i + 1] === "\n") i++;
      endRow();
    } else {
      cell += sign;
    }
  }
  endRow();
  return rows;
}

/** The separator that most evenly divides the first lines. */
function separator(text) {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "").slice(0, 20);
  const divides = (sign) => Math.min(...lines.map((line) => line.split(sign).length - 1));
  return ["\t", ";", ","].find((sign) => lines.length > 0 && divides(sign) > 0) ?? ",";
}

const HEADINGS = {
  name: /^(name|thing|item|what|gear|who|hiker|person)$/i,
  mass: /^(unit ?)?(mass|weight|body ?mass|body ?weight)$/i,
  unit: /^units? of (mass|weight)$|^unit$/i,
  count: /^(count|number|how many|quantity|qty|pieces)$/i,
  pack: /^(empty )?pack$/i,
};

/**
 * What a table says, by column: by its headings if the first row has some, else name, mass, how
 * many. A heading may state a unit: "weight (oz)" or "mass in g".
 *
 * @returns rows of `{name, mass, count, pack}`, each a text, missing ones empty
 */
export function entriesOf(text) {
  const rows = rowsOf(text);
  if (rows.length === 0) return [];
  const headed = rows[0].some((cell) => Object.values(HEADINGS).some((h) => h.test(bare(cell))));
  const columns = headed ? named(rows[0]) : { name: 0, mass: 1, count: 2 };
  const stated = headed && columns.mass !== undefined ? unitIn(rows[0][columns.mass]) : "";
  return rows.slice(headed ? 1 : 0).map((row) => {
    const cell = (column) => (columns[column] === undefined ? "" : (row[columns[column]] ?? ""));
    const unit = cell("unit") || stated;
    const mass = cell("mass");
    return {
      name: cell("name"),
      mass: unit && /^[\d.,\s]+$/.test(mass) ? `${mass} ${unit}` : mass,
      count: cell("count"),
      pack: cell("pack"),
    };
  });
}

/** A heading without the unit it states. */
function bare(heading) {
  return heading.replace(/\s*(\(|\[| in ).*$/i, "").trim();
}

function unitIn(heading) {
  return /(?:\(|\[| in )\s*([a-z ]+?)\s*[)\]]?$/i.exec(heading)?.[1] ?? "";
}

function named(headings) {
  const columns = {};
  headings.forEach((heading, i) => {
    for (const [column, form] of Object.entries(HEADINGS)) {
      if (columns[column] === undefined && form.test(bare(heading))) columns[column] = i;
    }
  });
  return columns;
}

/** Shared items of a pasted table. */
export function sharedOf(text) {
  return entriesOf(text).map((e) => {
    const many = Number.parseInt(e.count, 10);
    const mass = entered(e.mass, "gear");
    return many > 1 ? { name: e.name, count: many, unitMass: mass } : { name: e.name, mass };
  });
}

/**
 * Sends rows one after the other with `send(row)` until one is refused.
 *
 * @returns `{left, problem}`: the rows that are not taken, the refused one first
 */
export async function sendRows(rows, send) {
  for (let i = 0; i < rows.length; i++) {
    try {
      await send(rows[i]);
    } catch (problem) {
      return { left: rows.slice(i), problem };
    }
  }
  return { left: [], problem: null };
}
