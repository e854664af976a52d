package dev.faircarry.app;

import dev.faircarry.check.Verdict;
import dev.faircarry.split.Curve;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Recommendation;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * The split that was given, as the first point of a curve where nothing has to change hands. A
 * curve knows of it only who carries what; who opens what and what is handed over at camp may have
 * been worked out anew for that point, and worse.
 */
final class AsGiven {
  private AsGiven() {}

  /**
   * The curve with the given split where it is as good as the point without handovers, and without
   * points that gain nothing over it. What contradicts a proof is left as it is proved.
   *
   * @param trip the trip as it is now
   * @param earlier the split that was given
   */
  static Curve in(Trip trip, Split earlier, Curve curve, Judge judge) {
    CurvePoint first = curve.points().get(0);
    if (first.handovers() > 0) {
      return curve;
    }
    Split given = judge.completed(trip, earlier).split();
    Verdict verdict = judge.verdict(trip, given);
    int against = compare(verdict.excessThousandths(), verdict.steps(), first);
    if (!verdict.keepsRules() || against > 0 || (against < 0 && excluded(verdict, first))) {
      return curve;
    }
    CurvePoint kept =
        new CurvePoint(
            0, given, first.proof(), List.of(), verdict.steps(), verdict.excessThousandths(), 0, 0);
    List<CurvePoint> points = new ArrayList<>(List.of(kept));
    for (CurvePoint point : curve.points().subList(1, curve.points().size())) {
      if (compare(kept.excessThousandths(), kept.steps(), point) > 0) {
        points.add(point);
      }
    }
    return against == 0
        ? new Curve(points, curve.recommended(), curve.complete())
        : new Curve(points, Recommendation.among(points, trip.policy().grainThousandths()), false);
  }

  /** Whether the proof of a point says that there is no such split. */
  private static boolean excluded(Verdict better, CurvePoint than) {
    Proof proof = than.proof();
    if (better.excessThousandths() < than.excessThousandths()) {
      return proof.excessProved() || proof.provedLevels() > 0;
    }
    return difference(better.steps(), than.steps()) < proof.provedLevels();
  }

  /** Excess first, then the lists of steps: negative where this is better than the point. */
  private static int compare(long excessThousandths, List<Long> steps, CurvePoint point) {
    if (excessThousandths != point.excessThousandths()) {
      return Long.compare(excessThousandths, point.excessThousandths());
    }
    int at = difference(steps, point.steps());
    return at == steps.size() ? 0 : Long.compare(steps.get(at), point.steps().get(at));
  }

  private static int difference(List<Long> steps, List<Long> others) {
    int at = 0;
    while (at < steps.size() && steps.get(at).equals(others.get(at))) {
      at++;
    }
    return at;
  }
}
