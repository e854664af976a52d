/** A search on the service: asked for, followed while it runs, stopped, and what came of it. */
import { followEvents, freshKey, Problem } from "./api.js";
import { askTrip, trip } from "./trip.js";
import { tokenOf } from "./keys.js";
import { redraw } from "./view.js";

/** The search that runs, or null: `{id, state, progress, stopAsked}` as the service tells it. */
export const search = { job: null };

/**
 * Has the fairest split searched for.
 *
 * @returns `{split}` with its id, or the service's answer `{result: "impossible" | "undecided"}`
 * @throws {Problem}
 */
export async function solve(effort) {
  const asked = await askTrip("POST", `/splits?effort=${effort}`, {
    key: freshKey(),
    prefer: "wait=1",
  });
  if (asked.status === 201) return { split: asked.body };
  if (asked.status === 200) return asked.body;
  search.job = asked.body;
  redraw();
  try {
    await watched(asked.body.id);
    return await ended(asked.body.id);
  } finally {
    search.job = null;
    redraw();
  }
}

/** Asks the search to end; its best so far is kept. */
export async function stop() {
  if (!search.job) return;
  search.job = (await askTrip("POST", `/solves/${search.job.id}/stop`)).body;
  redraw();
}

async function watched(id) {
  const path = `/v1/trips/${trip.id}/solves/${id}/events`;
  for (let broken = 0; broken < 5; ) {
    let over = false;
    try {
      await followEvents(path, tokenOf(trip.id), (kind, job) => {
        search.job = job;
        over = kind === "over";
        redraw();
      });
    } catch (problem) {
      if (problem instanceof Problem && problem.status >= 400) throw problem;
    }
    if (over || (await askTrip("GET", `/solves/${id}`)).body.state === undefined) return;
    if (["done", "failed", "stopped"].includes(search.job?.state)) return;
    broken++;
  }
}

async function ended(id) {
  const answer = await askTrip("GET", `/solves/${id}`);
  if (answer.location) {
    return { split: (await askTrip("GET", answer.location.split(trip.id)[1])).body };
  }
  return answer.body;
}
