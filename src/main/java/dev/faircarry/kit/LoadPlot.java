package dev.faircarry.kit;

import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Morning;
import dev.faircarry.check.Verdict;
import dev.faircarry.kit.Svg.Anchor;
import dev.faircarry.kit.Svg.Look;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.MassText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Who is above target on which morning, and by how much.
 *
 * <p>One line for each hiker and morning. All targets stand under each other as one upright; a stem
 * runs from it to the load, to the right when it is above, to the left when it is below, so that
 * what sticks out to the right is what to look at. Full dots are above, open ones below.
 */
public final class LoadPlot {
  private static final int WIDTH = 760;
  private static final int TOP = 64;
  private static final int ROW = 20;
  private static final int GAP = 14;
  private static final int NAME_RIGHT = 170;
  private static final int AXIS_LEFT = 230;
  private static final int AXIS_RIGHT = 590;
  private static final int NAME_LENGTH = 20;
  private static final long NANOGRAMS_PER_MILLIGRAM = 1_000_000;
  private static final long STEP_THOUSANDTHS = 50;

  private final Svg svg = new Svg();
  private final StringBuilder words = new StringBuilder();
  private final Map<String, String> names = new HashMap<>();
  private final long reach;
  private int y = TOP;

  private LoadPlot(Trip trip, Verdict verdict) {
    for (Hiker hiker : trip.hikers()) {
      names.put(hiker.id(), hiker.name());
    }
    long most = STEP_THOUSANDTHS;
    for (HikerLoads loads : verdict.hikers()) {
      for (Morning morning : loads.mornings()) {
        most = Math.max(most, Math.abs(offThousandths(loads, morning)));
      }
    }
    reach = (most + STEP_THOUSANDTHS - 1) / STEP_THOUSANDTHS * STEP_THOUSANDTHS;
  }

  /**
   * The picture, as an SVG document. It shows loads against targets: not for every eye.
   *
   * @param caution a sentence to stand under it
   */
  public static String of(Trip trip, Verdict verdict, String caution) {
    LoadPlot plot = new LoadPlot(trip, verdict);
    verdict.hikers().forEach(plot::hiker);
    return plot.picture(trip, caution);
  }

  /**
   * How far a load is from its target, in thousandths of the target, rounded half away from
   * nothing.
   */
  static long offThousandths(HikerLoads loads, Morning morning) {
    long target = loads.targetNanograms();
    if (target <= 0) {
      return 0;
    }
    // Summed masses times a million times a thousand are beyond a long.
    return new BigDecimal(morning.countedMilligrams())
        .multiply(BigDecimal.valueOf(NANOGRAMS_PER_MILLIGRAM))
        .subtract(BigDecimal.valueOf(target))
        .multiply(BigDecimal.valueOf(1000))
        .divide(BigDecimal.valueOf(target), 0, RoundingMode.HALF_UP)
        .longValueExact();
  }

  private void hiker(HikerLoads loads) {
    String name = names.getOrDefault(loads.hiker(), loads.hiker());
    svg.text(NAME_RIGHT, y + 14, Anchor.END, 13, Look.INK, Svg.name(name, NAME_LENGTH));
    for (Morning morning : loads.mornings()) {
      morning(name, loads, morning);
      y += ROW;
    }
    y += GAP;
    svg.line(24, y - GAP / 2, WIDTH - 24, y - GAP / 2, 1, Look.FAINT);
  }

  private void morning(String name, HikerLoads loads, Morning morning) {
    long off = offThousandths(loads, morning);
    int middle = (AXIS_LEFT + AXIS_RIGHT) / 2;
    int x = middle + (int) (off * (AXIS_RIGHT - middle) / reach);
    boolean over = morning.countedMilligrams() * NANOGRAMS_PER_MILLIGRAM > loads.targetNanograms();
    svg.text(AXIS_LEFT - 14, y + 14, Anchor.END, 11, Look.QUIET, "day " + morning.day());
    svg.line(middle, y + 10, x, y + 10, 3, over ? Look.LINE : Look.STEM_UNDER);
    svg.dot(x, y + 10, 5, over ? Look.OVER : Look.UNDER);
    String load = MassText.kilograms(morning.loadMilligrams());
    String against = percent(off);
    svg.text(AXIS_RIGHT + 20, y + 14, Anchor.START, 12, Look.INK, load);
    svg.text(WIDTH - 24, y + 14, Anchor.END, 12, over ? Look.OVER : Look.QUIET, against);
    words
        .append(name)
        .append(", day ")
        .append(morning.day())
        .append(": ")
        .append(load)
        .append(", ")
        .append(against)
        .append(". ");
  }

  private static String percent(long thousandths) {
    String sign = thousandths > 0 ? "+" : thousandths < 0 ? "\u2212" : "\u00B1";
    long size = Math.abs(thousandths);
    return String.format(Locale.ROOT, "%s%d.%d %%", sign, size / 10, size % 10);
  }

  private String picture(Trip trip, String caution) {
    int middle = (AXIS_LEFT + AXIS_RIGHT) / 2;
    int bottom = Math.max(y, TOP + ROW);
    svg.line(middle, TOP - 8, middle, bottom - GAP, 2, Look.LINE);
    svg.text(24, 28, Anchor.START, 16, Look.INK, "Loads against target, morning by morning");
    svg.text(middle, TOP - 16, Anchor.MIDDLE, 11, Look.QUIET, "target");
    svg.text(AXIS_LEFT, TOP - 16, Anchor.MIDDLE, 11, Look.QUIET, percent(-reach));
    svg.text(AXIS_RIGHT, TOP - 16, Anchor.MIDDLE, 11, Look.QUIET, percent(reach));
    svg.text(24, bottom + 14, Anchor.START, 10, Look.QUIET, caution);
    return svg.picture(
        WIDTH, bottom + 28, "Loads against target: " + trip.name(), words.toString().strip());
  }
}
