package dev.faircarry.kit;

import dev.faircarry.kit.Svg.Anchor;
import dev.faircarry.kit.Svg.Look;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.MassText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What each load is made of on the first morning.
 *
 * <p>A table of bars on one scale: a line for each purpose, the group's heaviest first, a column
 * for each hiker. Reading across answers who carries most of one kind; reading down answers what
 * makes one load heavy. Every bar has its mass beside it, so that nothing has to be guessed from a
 * length or a colour.
 */
public final class MakeupPlot {
  private static final int COLUMNS = 5;
  private static final int PURPOSES = 14;
  private static final String REST = "everything else";
  private static final int LABEL_RIGHT = 150;
  private static final int COLUMN = 120;
  private static final int BAR_MOST = 52;
  private static final int ROW = 22;
  private static final int TOP = 76;
  private static final int WIDTH = LABEL_RIGHT + 20 + COLUMNS * COLUMN + 10;

  private final Svg svg = new Svg();
  private final StringBuilder words = new StringBuilder();
  private final List<String> purposes = new ArrayList<>();
  private final List<Map<String, Long>> cells = new ArrayList<>();
  private long most = 1;

  private MakeupPlot(KitReport report) {
    List<Share> all = report.group().byPurpose();
    boolean cut = all.size() > PURPOSES;
    all.stream().limit(cut ? PURPOSES - 1 : PURPOSES).map(Share::name).forEach(purposes::add);
    if (cut) {
      purposes.add(REST);
    }
    for (KitOf kit : report.hikers()) {
      Map<String, Long> row = new TreeMap<>();
      for (Share share : kit.byPurpose()) {
        row.merge(
            purposes.contains(share.name()) ? share.name() : REST,
            share.massMilligrams(),
            Long::sum);
      }
      row.values().forEach(mass -> most = Math.max(most, mass));
      cells.add(row);
    }
  }

  /**
   * The picture, as an SVG document.
   *
   * @param caution a sentence to stand under it
   */
  public static String of(Trip trip, KitReport report, String caution) {
    return new MakeupPlot(report).picture(trip, caution);
  }

  private String picture(Trip trip, String caution) {
    svg.text(24, 28, Anchor.START, 16, Look.INK, "What each load is made of");
    svg.text(
        24,
        46,
        Anchor.START,
        11,
        Look.QUIET,
        "first morning, what is worn included, all bars on one scale");
    int y = TOP;
    for (int from = 0; from < cells.size(); from += COLUMNS) {
      y = block(trip.hikers(), from, Math.min(cells.size(), from + COLUMNS), y);
    }
    int bottom = Math.max(y, TOP + ROW);
    svg.text(24, bottom, Anchor.START, 10, Look.QUIET, caution);
    return svg.picture(
        WIDTH, bottom + 16, "What each load is made of: " + trip.name(), words.toString().strip());
  }

  /** So many hikers side by side; returns where the next block begins. */
  private int block(List<Hiker> hikers, int from, int to, int top) {
    for (int i = from; i < to; i++) {
      svg.text(
          column(i - from), top, Anchor.START, 12, Look.INK, Svg.name(hikers.get(i).name(), 14));
    }
    int y = top + 10;
    for (String purpose : purposes) {
      svg.text(LABEL_RIGHT, y + 15, Anchor.END, 12, Look.QUIET, Svg.name(purpose, 18));
      for (int i = from; i < to; i++) {
        cell(hikers.get(i), purpose, cells.get(i).getOrDefault(purpose, 0L), column(i - from), y);
      }
      y += ROW;
      svg.line(LABEL_RIGHT + 8, y, WIDTH - 10, y, 1, Look.FAINT);
    }
    svg.text(LABEL_RIGHT, y + 17, Anchor.END, 12, Look.INK, "together");
    for (int i = from; i < to; i++) {
      long sum = cells.get(i).values().stream().mapToLong(m -> m).sum();
      svg.text(column(i - from), y + 17, Anchor.START, 12, Look.INK, MassText.kilograms(sum));
    }
    return y + ROW + 40;
  }

  private static int column(int index) {
    return LABEL_RIGHT + 20 + index * COLUMN;
  }

  private void cell(Hiker hiker, String purpose, long milligrams, int x, int y) {
    if (milligrams == 0) {
      return;
    }
    int width = Math.max(1, Math.toIntExact(milligrams * BAR_MOST / most));
    svg.bar(x, y + 5, width, ROW - 10, Look.BAR);
    String mass = MassText.kilograms(milligrams);
    svg.text(x + width + 6, y + 15, Anchor.START, 11, Look.INK, mass);
    words.append(hiker.name()).append(", ").append(purpose).append(": ").append(mass).append(". ");
  }
}
