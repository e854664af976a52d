/** Why there is no split: the rules that cannot all hold, each with a way to lift it. */
import { html, nothing } from "../core/view.js";
import { edit, leads, trip } from "../core/trip.js";
import { at } from "../core/router.js";

const LIMIT = {
  room: ["people", "Look at the packs' room"],
  "max-pieces": ["people", "Look at how many pieces each takes"],
  containers: ["gear", "Look at what goes into which container"],
};

/** The answer "impossible", with what to do about it. */
export function conflict(answer, lifted, failed) {
  return html`<section class="trouble" aria-labelledby="conflict-words">
    <h2 id="conflict-words">These cannot all hold together</h2>
    <p>
      ${answer.irreducible
        ? "Lifting any one of them makes the others possible."
        : "Lifting one of them may already be enough."}
    </p>
    <ul class="rows">
      ${answer.conflict.map((d) => html`<li><span>${d.words}</span> ${way(d, lifted, failed)}</li>`)}
    </ul>
  </section>`;
}

function way(demand, lifted, failed) {
  if (!leads()) return nothing;
  if (LIMIT[demand.kind]) {
    const [screen, words] = LIMIT[demand.kind];
    return html`<a class="button quiet" href=${at(trip.id, screen)}>${words}</a>`;
  }
  const change =
    demand.kind === "minor"
      ? {
          method: "PATCH",
          path: "/policy",
          patch: { minorsMayCarryFlameAndFuel: true },
          touches: (d) => d.policy,
          words: "what minors may carry",
        }
      : {
          method: "DELETE",
          path: `/rules/${demand.id}`,
          touches: (d) => (d.rules ?? []).find((r) => r.id === demand.id),
          words: "this rule",
        };
  return html`<button type="button" class="quiet" @click=${() => edit(change).then(lifted, failed)}>
    ${demand.kind === "minor" ? "Let minors carry flame and fuel" : "Lift this rule"}
  </button>`;
}
