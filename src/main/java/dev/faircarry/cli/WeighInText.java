package dev.faircarry.cli;

import dev.faircarry.app.MassUnits;
import dev.faircarry.app.WeighedIn;
import dev.faircarry.weigh.Reconciled;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Weigh-ins as people read them in a terminal. */
final class WeighInText {
  private final MassUnits units;
  private final Text text = new Text();

  WeighInText(MassUnits units) {
    this.units = units;
  }

  String told(WeighedIn.Told told) {
    text.line(told.tripName()).blank();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "stated", "read", "difference", ""));
    for (WeighedIn.Line line : told.lines()) {
      Reconciled r = line.reconciled();
      rows.add(
          List.of(
              line.name(),
              units.small(r.expectedMilligrams()),
              units.small(r.readMilligrams()),
              (r.differenceMilligrams() > 0 ? "+" : "") + units.small(r.differenceMilligrams()),
              words(r)));
    }
    text.table(rows).blank();
    told.lines().forEach(this::explained);
    text.line(
        "What differs by at most "
            + units.small(told.tolerance().milligrams())
            + ", or "
            + percent(told.tolerance().thousandths())
            + " %, agrees.");
    text.line(closing(told));
    return text.toString();
  }

  private static String words(Reconciled r) {
    return switch (r.result()) {
      case AGREES -> "agrees";
      case REPLACES -> "differs";
      case LABELS_COULD_EXPLAIN -> "labels could explain it";
      case UNEXPLAINED -> "unexplained";
      case QUESTIONED -> "look again";
    };
  }

  private void explained(WeighedIn.Line line) {
    Reconciled r = line.reconciled();
    if (r.question().isPresent()) {
      text.wrapped("  ", line.name() + ": " + r.question().get());
    }
    for (Reconciled.Suspect suspect : r.suspects()) {
      text.wrapped(
          "  ",
          line.name()
              + ": nobody weighed “"
              + suspect.thing()
              + "”, stated as "
              + units.small(suspect.statedMilligrams())
              + "; it alone would be off by "
              + percent(suspect.offThousandths())
              + " %.");
    }
    if (r.question().isPresent() || !r.suspects().isEmpty()) {
      text.blank();
    }
  }

  private static String closing(WeighedIn.Told told) {
    if (told.accepted().isPresent()) {
      return told.asks()
          ? "Taken over, except what has to be looked at again."
          : "Taken over; --trip prints the trip as it is now.";
    }
    if (told.agrees()) {
      return "Everything agrees.";
    }
    return told.changes().isEmpty()
        ? "Nothing can be taken over as it stands."
        : "Nothing is changed; with \"accept\": \"all\" the readings are taken over.";
  }

  private static String percent(long thousandths) {
    return BigDecimal.valueOf(thousandths, 1).stripTrailingZeros().toPlainString();
  }
}
