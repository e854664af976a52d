/** Questions that are asked with the whole trip in hand and leave nothing behind. */
import { ask } from "./api.js";
import { trip } from "./trip.js";

/** Whether this link sees everything such a question needs: no body mass may be hidden from it. */
export function seesAll() {
  return trip.state !== null && trip.state.bodyMassHidden.length === 0;
}

/**
 * Asks `/v1/` + what, with the trip as it is and what else is told.
 *
 * @throws {Problem}
 */
export async function askWhole(what, told, how = {}) {
  return (await ask("POST", "/v1/" + what, { body: { trip: trip.document, ...told }, ...how })).body;
}
