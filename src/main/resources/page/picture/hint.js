/** Which single move helps: asked of the service, whose departure check tries them all. */
import { html, nothing, redraw } from "../core/view.js";
import { Problem } from "../core/api.js";
import { askWhole, seesAll } from "../core/whole.js";
import { desk, mayMove } from "../core/desk.js";
import { ratio } from "../core/words.js";

/** What a move must gain to be worth telling, in parts of target. */
const WORTH = 0.002;

const hint = { of: null, gains: [], asking: false };

/** The best single moves for what lies on the desk, or nothing while they are not known. */
export function helpful(does) {
  if (!mayMove() || !desk.verdict?.worst) return nothing;
  if (hint.of !== desk.verdict) ask();
  const best = hint.gains[0];
  if (!best || hint.of !== desk.verdict) return nothing;
  if (best.worstRatio > desk.verdict.worst.targetRatio - WORTH) return nothing;
  return html`<p class="helps">
    One move that helps: ${best.words.replace(/\.$/, "")}; the worst would then be
    ${ratio(best.worstRatio)}.
    <button type="button" class="quiet" @click=${() => take(best, does)}>Make this move</button>
  </p>`;
}

function ask() {
  const verdict = desk.verdict;
  Object.assign(hint, { of: verdict, gains: [] });
  if (!verdict.keepsRules || !seesAll()) return;
  askWhole("departure-checks", { split: desk.now.document() })
    .then((answer) => {
      if (hint.of !== verdict) return;
      hint.gains = answer.fairness?.gains ?? [];
      redraw();
    })
    .catch((problem) => {
      if (!(problem instanceof Problem)) throw problem;
    });
}

function take(gain, does) {
  if (gain.back) does.exchange(gain.piece, gain.from, gain.to, gain.back);
  else does.give(gain.piece, 1, gain.from, gain.to);
}
