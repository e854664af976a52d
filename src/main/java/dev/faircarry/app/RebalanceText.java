package dev.faircarry.app;

import dev.faircarry.split.CurvePoint;

/** Changes of plans as a leader reads them out. */
public final class RebalanceText {
  private RebalanceText() {}

  /** Whether the chosen point is proved and within all caps. */
  public static boolean fine(Rebalanced result) {
    return result instanceof Rebalanced.Found found
        && found.curve().points().get(found.chosen()).proof().proved()
        && found.curve().points().get(found.chosen()).excessThousandths() == 0;
  }

  /** A few lines. */
  public static String of(Rebalanced result) {
    StringBuilder text = new StringBuilder();
    if (result instanceof Rebalanced.Found found) {
      found.notes().forEach(note -> text.append("Note: ").append(note.message()).append('\n'));
      for (int p = 0; p < found.curve().points().size(); p++) {
        CurvePoint point = found.curve().points().get(p);
        text.append(p == found.chosen() ? "* " : "  ")
            .append(point.handovers())
            .append(point.handovers() == 1 ? " handover" : " handovers");
        Worst.of(found.trip(), found.verdicts().get(p))
            .ifPresent(
                worst ->
                    text.append(": at worst ")
                        .append(IfOneStaysHome.percent(worst))
                        .append(" % of target"));
        text.append(point.proof().proved() ? ", proved\n" : ", not proved\n");
      }
      text.append(found.reason()).append('\n');
      found.sentences().get(found.chosen()).forEach(s -> text.append(s).append('\n'));
    } else if (result instanceof Rebalanced.Impossible impossible) {
      text.append("No split keeps all the rules:\n");
      DemandWords words = new DemandWords(impossible.trip());
      impossible.conflict().forEach(d -> text.append(words.words(d)).append('\n'));
    } else {
      text.append("No split was found within the effort.\n");
    }
    return text.toString();
  }
}
