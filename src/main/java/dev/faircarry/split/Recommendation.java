package dev.faircarry.split;

import java.util.List;

/** Which point of a trade-off curve is recommended. */
public final class Recommendation {
  /**
   * Further handovers are recommended while each lowers the worst ratio by at least so many
   * thousandths.
   */
  public static final int WORTH_THOUSANDTHS = 10;

  private Recommendation() {}

  /**
   * Index of the point after which further handovers gain little.
   *
   * @param points from fewest handovers on, at least one
   */
  public static int among(List<CurvePoint> points, int grainThousandths) {
    int chosen = 0;
    for (int p = 1; p < points.size(); p++) {
      CurvePoint from = points.get(chosen);
      CurvePoint to = points.get(p);
      long gain =
          (from.steps().get(0) - to.steps().get(0)) * grainThousandths
              + (from.excessThousandths() - to.excessThousandths());
      if (gain >= (long) WORTH_THOUSANDTHS * (to.handovers() - from.handovers())) {
        chosen = p;
      }
    }
    return chosen;
  }
}
