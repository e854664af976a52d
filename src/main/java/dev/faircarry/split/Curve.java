package dev.faircarry.split;

import java.util.List;

/**
 * What further handovers gain: the points that no other point beats in both, from fewest handovers
 * on.
 *
 * @param recommended index of the point after which further handovers gain little
 * @param complete whether the last point is as fair as any number of handovers can make it, every
 *     point being proved
 */
public record Curve(List<CurvePoint> points, int recommended, boolean complete) {
  public Curve {
    points = List.copyOf(points);
  }
}
