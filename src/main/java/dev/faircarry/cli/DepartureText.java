package dev.faircarry.cli;

import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.DepartureWords;
import dev.faircarry.app.MassUnits;
import dev.faircarry.check.Departure;
import dev.faircarry.check.Fairness;
import dev.faircarry.check.Finding;
import dev.faircarry.check.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Departure checks as people read them in a terminal. */
final class DepartureText {
  private final MassUnits units;
  private final DepartureWords words;
  private final Departure departure;
  private final CheckDeparture.Answer answer;

  DepartureText(CheckDeparture.Answer answer, MassUnits units) {
    this.units = units;
    this.words = new DepartureWords(answer.trip());
    this.departure = answer.departure();
    this.answer = answer;
  }

  /** What was found, gravest first: how grave and its code, then what it is and what to do. */
  void findings(Text text) {
    if (departure.findings().isEmpty()) {
      return;
    }
    text.line("Findings");
    for (Finding finding : departure.findings()) {
      String grave = word(finding.severity()) + " (" + finding.code().text() + "): ";
      text.wrapped("  ", grave + finding.message() + " " + finding.remedy());
    }
    text.blank();
  }

  /** Who is how far from the own target, and how far all are from the best possible. */
  void fairness(Text text) {
    departure.fairness().ifPresent(fairness -> standings(text, fairness));
    answer.best().ifPresent(best -> text.wrapped("", best.words()));
    departure
        .fairness()
        .ifPresent(
            fairness ->
                fairness
                    .gains()
                    .forEach(gain -> text.wrapped("  would gain: ", words.withGain(gain))));
  }

  private void standings(Text text, Fairness fairness) {
    List<List<String>> rows = new ArrayList<>();
    for (Fairness.Standing each : fairness.standings()) {
      long above = each.aboveMilligrams();
      rows.add(
          List.of(
              "  " + words.name(each),
              "day " + each.day(),
              units.text(Math.abs(above)) + (above > 0 ? " above target" : " below target")));
    }
    text.line("Heaviest morning of each:").table(rows);
    text.line(
            "  from highest to lowest ratio: " + DepartureWords.ratio(fairness.spreadThousandths()))
        .blank();
  }

  /** The answer in a line. */
  void readiness(Text text) {
    text.line(DepartureWords.of(departure.readiness()));
  }

  private static String word(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }
}
