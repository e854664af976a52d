package dev.faircarry.cli;

import dev.faircarry.app.Cautions;
import dev.faircarry.app.DemandWords;
import dev.faircarry.app.MassUnits;
import dev.faircarry.app.OverCap;
import dev.faircarry.app.ProofWords;
import dev.faircarry.app.SplitReport;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.Worst;
import dev.faircarry.check.Finding;
import dev.faircarry.check.FindingCode;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Morning;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Answers about splits as people read them in a terminal. */
final class SplitText {
  private final MassUnits units;
  private final Text text = new Text();

  SplitText(MassUnits units) {
    this.units = units;
  }

  /** A split that was found. */
  String found(SplitResult.Found found) {
    SplitReport report = SplitReport.of(found);
    text.line(report.tripName()).blank();
    loads(report);
    pieces(report);
    list("Opening plan", report.openings());
    list("Handed over at camp", report.handovers());
    overCap(report.overCap());
    findings(report.findings());
    worst(report);
    text.wrapped("", ProofWords.of(found));
    cautions();
    return text.toString();
  }

  /** What the check says of a split somebody made, and whether the group can leave with it. */
  String judged(SplitReport report, boolean keepsRules, DepartureText departure) {
    text.line(report.tripName()).blank();
    loads(report);
    pieces(report);
    overCap(report.overCap());
    departure.findings(text);
    departure.fairness(text);
    worst(report);
    text.line(keepsRules ? "Every rule holds." : "This split breaks rules.");
    departure.readiness(text);
    cautions();
    return text.toString();
  }

  /** Rules that cannot hold together. */
  String impossible(SplitResult.Impossible impossible) {
    text.line("No split keeps all rules. These cannot hold together:").blank();
    DemandWords.of(impossible).forEach(words -> text.wrapped("  - ", words));
    if (impossible.irreducible()) {
      text.blank().line("Without any one of them the others can hold.");
    }
    return text.toString();
  }

  String undecided() {
    return text.wrapped(
            "",
            "The search ended before it found a split or a proof that there is none. Allow more"
                + " effort with --effort.")
        .toString();
  }

  private void loads(SplitReport report) {
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("", "target"));
    for (int day = 1; day <= report.days(); day++) {
      head.add("day " + day);
    }
    head.add("ratio");
    rows.add(head);
    for (SplitReport.Person person : report.people()) {
      HikerLoads loads = person.loads();
      List<String> row = new ArrayList<>();
      row.add(person.name());
      row.add(units.textOfNanograms(loads.targetNanograms()));
      for (int day = 1; day <= report.days(); day++) {
        int wanted = day;
        row.add(
            loads.mornings().stream()
                .filter(m -> m.day() == wanted)
                .findFirst()
                .map(m -> units.text(m.loadMilligrams()))
                .orElse("-"));
      }
      row.add(highestRatio(loads));
      rows.add(row);
    }
    text.table(rows).blank();
  }

  private static String highestRatio(HikerLoads loads) {
    return loads.mornings().stream().mapToLong(Morning::countedMilligrams).max().stream()
        .mapToObj(counted -> ratio(counted, loads.targetNanograms()))
        .findFirst()
        .orElse("-");
  }

  private static String ratio(long milligrams, long targetNanograms) {
    return BigDecimal.valueOf(milligrams)
        .movePointRight(6)
        .divide(BigDecimal.valueOf(targetNanograms), 3, RoundingMode.HALF_UP)
        .toPlainString();
  }

  private void pieces(SplitReport report) {
    for (SplitReport.Person person : report.people()) {
      text.wrapped(
          person.name() + ": ",
          person.pieces().isEmpty()
              ? "nothing of the shared gear"
              : String.join("; ", person.pieces()));
    }
    text.blank();
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      text.line(title);
      lines.forEach(line -> text.wrapped("  ", line));
      text.blank();
    }
  }

  private void overCap(List<OverCap> overCap) {
    List<String> lines = new ArrayList<>();
    for (OverCap each : overCap) {
      String own =
          each.ownKitOverNanograms() > 0
              ? ", " + units.textOfNanograms(each.ownKitOverNanograms()) + " of it by own kit alone"
              : "";
      lines.add(
          each.name()
              + ", day "
              + each.day()
              + ": "
              + units.textOfNanograms(each.overNanograms())
              + " above the cap of "
              + units.textOfNanograms(each.capNanograms())
              + own);
    }
    list("Over the cap", lines);
  }

  /** What is over the cap has been told already, in the units asked for. */
  private void findings(List<Finding> findings) {
    list(
        "Findings",
        findings.stream()
            .filter(f -> f.code() != FindingCode.OVER_CAP)
            .filter(f -> f.code() != FindingCode.OWN_KIT_OVER_CAP)
            .map(f -> f.message() + " " + f.remedy())
            .toList());
  }

  private void worst(SplitReport report) {
    report.worst().ifPresent(this::worst);
  }

  private void worst(Worst worst) {
    text.line(
        "Heaviest for its target: "
            + worst.name()
            + " on day "
            + worst.day()
            + ", "
            + ratio(worst.countedMilligrams(), worst.targetNanograms())
            + " of it.");
  }

  private void cautions() {
    text.blank();
    Cautions.TEXT.forEach(caution -> text.wrapped("* ", caution));
  }
}
