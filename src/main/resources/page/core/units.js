/**
 * Units. Quantities are entered as text and the service is their judge; what it computed comes in
 * grams and is shown in the units this device prefers.
 */
const PLACE = "faircarry.units";
const GRAMS_PER_OUNCE = 28.349523125;

let preferred = "metric";
try {
  preferred = localStorage.getItem(PLACE) ?? (navigator.language === "en-US" ? "us" : "metric");
} catch {
  // Without storage the choice lasts as long as the page.
}

/** "metric" or "us". */
export function units() {
  return preferred;
}

export function prefer(choice) {
  preferred = choice;
  try {
    localStorage.setItem(PLACE, choice);
  } catch {
    // See above.
  }
}

/** A mass for people: "640 g", "1.05 kg", "9 oz", "2 lb 5 oz". */
export function mass(grams) {
  if (preferred === "us") {
    const ounces = Math.round(grams / GRAMS_PER_OUNCE);
    if (Math.abs(ounces) < 16) {
      const fine = grams / GRAMS_PER_OUNCE;
      return (Math.abs(fine) < 4 ? fine.toFixed(1) : String(ounces)) + " oz";
    }
    const pounds = Math.trunc(ounces / 16);
    return ounces % 16 === 0 ? `${pounds} lb` : `${pounds} lb ${Math.abs(ounces % 16)} oz`;
  }
  return Math.abs(grams) < 999.5
    ? `${Math.round(grams)} g`
    : `${(grams / 1000).toFixed(Math.abs(grams) < 9995 ? 2 : 1)} kg`;
}

/** The same in as few signs as fit above a column: "9.8" with its unit said elsewhere. */
export function load(grams) {
  return preferred === "us"
    ? (grams / GRAMS_PER_OUNCE / 16).toFixed(1)
    : (grams / 1000).toFixed(1);
}

/** The unit of {@link load}. */
export function loadUnit() {
  return preferred === "us" ? "lb" : "kg";
}

const BARE = /^\s*[0-9]+([.,][0-9]+)?\s*$/;

/**
 * What is sent for what was typed: a bare number gets the unit that is usual for such a thing, and
 * a decimal comma becomes a point. Everything else goes as it is.
 *
 * @param {"body" | "gear" | "room"} kind
 */
export function entered(text, kind) {
  const tidy = text.trim().replace(/(\d),(\d)/g, "$1.$2");
  return BARE.test(tidy) ? `${tidy} ${usual(kind)}` : tidy;
}

/** A number that was typed, 0 as well; what is none goes as it is, for the service to refuse. */
export function numberOr(text) {
  const number = Number(text.replace(",", "."));
  return text.trim() !== "" && Number.isFinite(number) ? number : text;
}

/** The unit that a bare number gets. */
export function usual(kind) {
  if (kind === "room") return "L";
  if (kind === "body") return preferred === "us" ? "lb" : "kg";
  return preferred === "us" ? "oz" : "g";
}
